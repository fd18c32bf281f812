package paraphrase

import (
	"slices"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/lumberlist"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Some turns go round about a thing. They are set to the plain one before a line is read.

// roundTurns are the steps, each of which knows one turn.
var roundTurns = []func([]scan.Atom) []scan.Atom{boundByNote, themParts, theLongOne, hasNoNeed, aCouple, theOnlyOne, letOut, forWhom, whatThereIs, whenTheyMeet, wishedWithReason, asItLooks, besideWhat, whatIsUsed, pretended, ofOne, thatCosts, saidBefore, openThat, secondOne, heldUp, madeOf}

// roundabout sets turns that go round about a thing to the plain one.
func roundabout(atoms []scan.Atom) []scan.Atom {
	for _, turn := range roundTurns {
		atoms = turn(atoms)
	}
	return atoms
}

// notes are what somebody writes to have it done.
var notes = scan.WordSet("note notes memo remark remarks comment comments reminder instruction instructions order orders requirement requirements condition conditions")

// boundByNote leaves out whose note it is that bids something: "inspector's note: the opening shall not exceed 42".
func boundByNote(atoms []scan.Atom) []scan.Atom {
	for i := 0; i < 6 && i+2 < len(atoms); i++ {
		if atoms[i].Text == ":" && i > 0 && notes[atoms[i-1].Text] {
			for _, a := range atoms[i:] {
				if a.Text == "shall" || a.Text == "must" {
					return atoms[i+1:]
				}
			}
			return atoms
		}
		if w := atoms[i].Text; !notes[w] && !chunk.IsPerson(w) && w != "'s" && w != "'" && w != "s" && !lexicon.Vocab().Articles[w] {
			return atoms
		}
	}
	return atoms
}

// themParts sets "them stiffeners" to "the stiffeners".
func themParts(atoms []scan.Atom) []scan.Atom {
	for i := range atoms {
		if atoms[i].Text == "them" && i+1 < len(atoms) && measure.CountNouns[atoms[i+1].Text] && strings.HasSuffix(atoms[i+1].Text, "s") {
			return scan.Reworded(atoms, i, i+1, "the")
		}
	}
	return atoms
}

// toldApart are what one bay or board is called to tell it from others.
var toldApart = scan.WordSet("long short wide narrow big small large little main odd middle end first last longer shorter wider bigger smaller longest shortest widest biggest smallest tricky worst bad weak")

// theLongOne leaves out "is the long one" between a part and what is said of it: "bay two is the long one so it has to have three".
func theLongOne(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+5 < len(atoms); i++ {
		if atoms[i].Text != "is" && atoms[i].Text != "'s" || atoms[i+1].Text != "the" || !toldApart[atoms[i+2].Text] || atoms[i+3].Text != "one" {
			continue
		}
		j := i + 4
		if atoms[j].Text == "," {
			j++
		}
		if j+2 < len(atoms) && (atoms[j].Text == "so" || atoms[j].Text == "and") && atoms[j+1].Text == "it" {
			return scan.CutOut(atoms, i, j+2)
		}
	}
	return atoms
}

// behindNone are words that may stand behind what somebody has no need of.
var behindNone = scan.WordSet("in for per at because since here there and but so as")

// hasNoNeed sets "doesn't need any stiffener" to "gets no stiffener".
func hasNoNeed(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		if atoms[i].Text != "do" && atoms[i].Text != "does" || atoms[i+1].Text != "not" {
			continue
		}
		switch atoms[i+2].Text {
		case "need", "get", "want", "take", "require", "have":
		default:
			continue
		}
		j := i + 3
		for j < len(atoms) && (atoms[j].Text == "any" || atoms[j].Text == "a" || atoms[j].Text == "an" || atoms[j].Text == "even" || atoms[j].Text == "single") {
			j++
		}
		key, next := chunk.PartKey(atoms, j)
		if j == i+3 || key != "stiffener" && key != "opening" || !chunk.EndsPart(atoms, next) && !behindNone[atoms[next].Text] {
			continue
		}
		if i > 0 && (atoms[i-1].Text == "why" || atoms[i-1].Text == "how") || next < len(atoms) && atoms[next].Text == "?" {
			continue
		}
		if i == 1 && (atoms[0].Text == "we" || atoms[0].Text == "i") {
			return scan.Reworded(atoms, 0, j, "no") // "we don't need an opening"
		}
		return scan.Reworded(atoms, i, j, "gets", "no")
	}
	return atoms
}

// aCouple sets "a couple stiffeners, two of them," to "two stiffeners".
func aCouple(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+5 < len(atoms); i++ {
		switch atoms[i].Text {
		case "couple", "pair", "few", "bunch", "handful":
		default:
			continue
		}
		j := i + 1
		if atoms[j].Text == "of" {
			j++
		}
		key, next := chunk.PartKey(atoms, j)
		if key == "" || atoms[i-1].Text != "a" || !scan.StandAt(atoms, next, ",") || !scan.StandAt(atoms, next+2, "of") || next+3 >= len(atoms) {
			continue
		}
		if _, n, ok := (measure.Reader{Atoms: atoms}).Whole(next + 1); !ok || n != next+2 || atoms[next+3].Text != "them" && atoms[next+3].Text != "em" && atoms[next+3].Text != "those" {
			continue
		}
		end := next + 4
		if end < len(atoms) && atoms[end].Text == "," {
			end++
		}
		out := append(append([]scan.Atom{}, atoms[:i-1]...), atoms[next+1])
		return append(append(out, atoms[j:next]...), atoms[end:]...)
	}
	return atoms
}

// theOnlyOne sets "just the single opening" to "just one opening".
func theOnlyOne(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+2 < len(atoms); i++ {
		if w := atoms[i].Text; (w == "just" || w == "only") && atoms[i+1].Text == "the" {
			if w := atoms[i+2].Text; w == "single" || w == "one" || w == "lone" || w == "sole" {
				if key, _ := chunk.PartKey(atoms, i+3); key != "" {
					return scan.Reworded(atoms, i+1, i+3, "one")
				}
			}
		}
	}
	return atoms
}

// letOut sets "let the opening out by an inch", as a tailor says it, to "widen the opening by an inch".
func letOut(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		if atoms[i].Text != "let" && atoms[i].Text != "letting" && !widenedOut[atoms[i].Text] {
			continue
		}
		if atoms[i+1].Text == "out" {
			if key, next := chunk.PartKey(atoms, chunk.SkipArticle(atoms, i+2)); tailored[key] && (scan.StandAt(atoms, next, "by") || phrase.StartsLength(measure.Reader{Atoms: atoms}, next)) {
				return scan.Reworded(atoms, i, i+2, "widen")
			}
			continue
		}
		key, next := chunk.PartKey(atoms, chunk.SkipArticle(atoms, i+1))
		if tailored[key] && scan.StandAt(atoms, next, "out") && (scan.StandAt(atoms, next+1, "by") || phrase.StartsLength(measure.Reader{Atoms: atoms}, next+1)) {
			return scan.Reworded(scan.CutOut(atoms, next, next+1), i, i+1, "widen")
		}
	}
	return atoms
}

// widenedOut are verbs that make the opening wider with an "out" behind it.
var widenedOut = scan.WordSet("bump bumping stretch stretching spread spreading push pushing ease easing open opening kick")

var tailored = map[string]bool{"opening": true, "gap": true, "bay": true}

// whomWords are words that name who something is for.
var whomWords = scan.WordSet("me us him her them you myself ourselves the a an my our his their and of it guests company other others everybody")

// forWhom leaves out who each of two is for: "two doorways, one for us and one for the dogs".
func forWhom(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+6 < len(atoms); i++ {
		if atoms[i].Text != "," || !scan.StandAt(atoms, i+1, "one", "for") {
			continue
		}
		ones, j := 0, i+1
		for ; j < len(atoms) && atoms[j].Kind == scan.Word; j++ {
			w := atoms[j].Text
			if (w == "one" || w == "another") && scan.StandAt(atoms, j+1, "for") || w == "other" && scan.StandAt(atoms, j-1, "the") && scan.StandAt(atoms, j+1, "for") {
				ones++
				continue
			}
			if w != "for" && !whomWords[w] && !lex.Outsiders[w] && !chunk.IsPerson(w) {
				break
			}
		}
		if ones == 2 && chunk.EndsPart(atoms, j) {
			return scan.CutOut(atoms, i, j)
		}
	}
	return atoms
}

// didSo are what others did, behind "because that's what".
var didSo = scan.WordSet("did do does want wants wanted like likes liked prefer prefers preferred need needs use uses used chose picked next door across street too")

// whatThereIs leaves out that something is what there is: "because that's what's in the shed".
func whatThereIs(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+3 < len(atoms); i++ {
		switch atoms[i].Text {
		case "because", "since", "as", "cause", "cos", "cuz":
		default:
			continue
		}
		if w := atoms[i+1].Text; w != "that" && w != "it" && w != "those" && w != "they" && w != "these" {
			continue
		}
		if w := atoms[i+2].Text; w != "is" && w != "are" && w != "'s" && w != "was" && w != "were" {
			continue
		}
		if w := atoms[i+3].Text; w != "what" && w != "all" && w != "the" {
			continue
		}
		j := i + 3
		for j < len(atoms) && atoms[j].Kind == scan.Word && (lumberlist.HandWords[atoms[j].Text] || j > i+3 && (chunk.IsPerson(atoms[j].Text) || didSo[atoms[j].Text])) {
			j++
		}
		if chunk.EndsPart(atoms, j) {
			return scan.CutOut(atoms, i, j)
		}
	}
	return atoms
}

// whenTheyMeet sets "when the gap is under two inches the brackets touch" to "under two inches of gap the brackets touch": it tells what
// brackets do, and tries nothing.
func whenTheyMeet(atoms []scan.Atom) []scan.Atom {
	clash := -1
	for i := range atoms {
		if hits[atoms[i].Text] && i > 0 {
			clash = i
		}
	}
	if clash < 0 || atoms[len(atoms)-1].Text == "?" {
		return atoms
	}
	bracket := false
	for _, a := range atoms[:clash] {
		bracket = bracket || slices.Contains(lexicon.Vocab().Classes[a.Text], lexicon.Vocab().Ids["BRACKET"])
	}
	for i := 0; bracket && i+3 < len(atoms); i++ {
		switch atoms[i].Text {
		case "if", "when", "whenever", "once", "where", "wherever":
		default:
			continue
		}
		j := chunk.SkipArticle(atoms, i+1)
		if key, next := chunk.PartKey(atoms, j); key == "gap" && next < len(atoms) && (i == 0 || i > clash) && (i > 0 || !scan.StandAt(atoms, i, "what", "if")) {
			if w := atoms[next].Text; w == "is" || w == "are" || w == "gets" || w == "goes" || w == "drops" || w == "falls" {
				next++
			}
			if next < len(atoms) && (atoms[next].Text == "under" || atoms[next].Text == "below" || scan.StandAt(atoms, next, "less", "than")) {
				return scan.CutOut(atoms, i, next)
			}
		}
	}
	return atoms
}

var hits = scan.WordSet("clash meet bump touch foul collide hit overlap interfere into together bind rub")

// wishedWithReason sets "can we have the doorway on the left so the grill fits", which is no question, to a wish.
func wishedWithReason(atoms []scan.Atom) []scan.Atom {
	if len(atoms) < 7 || atoms[len(atoms)-1].Text == "?" || !idiom.Beggars[atoms[0].Text] || atoms[1].Text != "we" && atoms[1].Text != "i" || atoms[2].Text != "have" && atoms[2].Text != "get" {
		return atoms
	}
	for i := 4; i+2 < len(atoms); i++ {
		if (atoms[i].Text == "so" || atoms[i].Text == "because") && SubjectAt(atoms, i+1) && !atoms[i].Glued {
			return scan.Reworded(atoms, 0, 3, "we", "want")
		}
	}
	return atoms
}
