package grammar

import (
	"slices"
	"strings"
)

// Some turns go round about a thing. They are set to the plain one before a line is read.

// roundTurns are the steps, each of which knows one turn.
var roundTurns = []func([]atom) []atom{boundByNote, themParts, theLongOne, hasNoNeed, aCouple, theOnlyOne, letOut, forWhom, whatThereIs, whenTheyMeet, wishedWithReason, asItLooks, besideWhat, whatIsUsed, pretended, ofOne, thatCosts, saidBefore, openThat, secondOne, heldUp, madeOf}

// roundabout sets turns that go round about a thing to the plain one.
func roundabout(atoms []atom) []atom {
	for _, turn := range roundTurns {
		atoms = turn(atoms)
	}
	return atoms
}

// cutOut leaves out the atoms from one place up to another.
func cutOut(atoms []atom, from, to int) []atom {
	return append(append(make([]atom, 0, len(atoms)), atoms[:from]...), atoms[to:]...)
}

// reworded puts words in the place of the atoms from one place up to another.
func reworded(atoms []atom, from, to int, words ...string) []atom {
	out := append(make([]atom, 0, len(atoms)+len(words)), atoms[:from]...)
	for _, w := range words {
		out = append(out, atom{text: w, kind: aWord, at: atoms[from].at, end: atoms[to-1].end})
	}
	return append(out, atoms[to:]...)
}

// standAt reports whether words stand at an atom.
func standAt(atoms []atom, i int, words ...string) bool {
	if i < 0 || i+len(words) > len(atoms) {
		return false
	}
	for k, w := range words {
		if atoms[i+k].text != w {
			return false
		}
	}
	return true
}

// partKey is the key of the part that is named at an atom, "" where none is, and the atom behind it.
func partKey(atoms []atom, i int) (key string, next int) {
	if i >= len(atoms) || atoms[i].kind != aWord {
		return "", i
	}
	named := atoms[i:]
	if compounded[named[0].text] {
		named = fold(named)
	}
	f := vocab().match(named, 0)
	if len(f) == 0 || f[0].entry.kind != kPart {
		return "", i
	}
	for next = i + f[0].next; next < len(atoms) && atoms[next].at < named[f[0].next-1].end; next++ {
	}
	return f[0].entry.key, next
}

// compounded begin names that are made of several words.
var compounded = wordSet("walk pass step way horizontal vertical upright cross")

// endsPart reports whether nothing, or a sign that ends a clause, stands at an atom.
func endsPart(atoms []atom, i int) bool {
	return i >= len(atoms) || atoms[i].kind == aSign && breaksClause(atoms, i)
}

// notes are what somebody writes to have it done.
var notes = wordSet("note notes memo remark remarks comment comments reminder instruction instructions order orders requirement requirements condition conditions")

// boundByNote leaves out whose note it is that bids something: "inspector's note: the opening shall not exceed 42".
func boundByNote(atoms []atom) []atom {
	for i := 0; i < 6 && i+2 < len(atoms); i++ {
		if atoms[i].text == ":" && i > 0 && notes[atoms[i-1].text] {
			for _, a := range atoms[i:] {
				if a.text == "shall" || a.text == "must" {
					return atoms[i+1:]
				}
			}
			return atoms
		}
		if w := atoms[i].text; !notes[w] && !isPerson(w) && w != "'s" && w != "'" && w != "s" && !vocab().articles[w] {
			return atoms
		}
	}
	return atoms
}

// themParts sets "them stiffeners" to "the stiffeners".
func themParts(atoms []atom) []atom {
	for i := range atoms {
		if atoms[i].text == "them" && i+1 < len(atoms) && countNouns[atoms[i+1].text] && strings.HasSuffix(atoms[i+1].text, "s") {
			return reworded(atoms, i, i+1, "the")
		}
	}
	return atoms
}

// toldApart are what one bay or board is called to tell it from others.
var toldApart = wordSet("long short wide narrow big small large little main odd middle end first last longer shorter wider bigger smaller longest shortest widest biggest smallest tricky worst bad weak")

// theLongOne leaves out "is the long one" between a part and what is said of it: "bay two is the long one so it has to have three".
func theLongOne(atoms []atom) []atom {
	for i := 1; i+5 < len(atoms); i++ {
		if atoms[i].text != "is" && atoms[i].text != "'s" || atoms[i+1].text != "the" || !toldApart[atoms[i+2].text] || atoms[i+3].text != "one" {
			continue
		}
		j := i + 4
		if atoms[j].text == "," {
			j++
		}
		if j+2 < len(atoms) && (atoms[j].text == "so" || atoms[j].text == "and") && atoms[j+1].text == "it" {
			return cutOut(atoms, i, j+2)
		}
	}
	return atoms
}

// behindNone are words that may stand behind what somebody has no need of.
var behindNone = wordSet("in for per at because since here there and but so as")

// hasNoNeed sets "doesn't need any stiffener" to "gets no stiffener".
func hasNoNeed(atoms []atom) []atom {
	for i := 0; i+3 < len(atoms); i++ {
		if atoms[i].text != "do" && atoms[i].text != "does" || atoms[i+1].text != "not" {
			continue
		}
		switch atoms[i+2].text {
		case "need", "get", "want", "take", "require", "have":
		default:
			continue
		}
		j := i + 3
		for j < len(atoms) && (atoms[j].text == "any" || atoms[j].text == "a" || atoms[j].text == "an" || atoms[j].text == "even" || atoms[j].text == "single") {
			j++
		}
		key, next := partKey(atoms, j)
		if j == i+3 || key != "stiffener" && key != "opening" || !endsPart(atoms, next) && !behindNone[atoms[next].text] {
			continue
		}
		if i > 0 && (atoms[i-1].text == "why" || atoms[i-1].text == "how") || next < len(atoms) && atoms[next].text == "?" {
			continue
		}
		if i == 1 && (atoms[0].text == "we" || atoms[0].text == "i") {
			return reworded(atoms, 0, j, "no") // "we don't need an opening"
		}
		return reworded(atoms, i, j, "gets", "no")
	}
	return atoms
}

// aCouple sets "a couple stiffeners, two of them," to "two stiffeners".
func aCouple(atoms []atom) []atom {
	for i := 1; i+5 < len(atoms); i++ {
		switch atoms[i].text {
		case "couple", "pair", "few", "bunch", "handful":
		default:
			continue
		}
		j := i + 1
		if atoms[j].text == "of" {
			j++
		}
		key, next := partKey(atoms, j)
		if key == "" || atoms[i-1].text != "a" || !standAt(atoms, next, ",") || !standAt(atoms, next+2, "of") || next+3 >= len(atoms) {
			continue
		}
		if _, n, ok := (reader{atoms}).whole(next + 1); !ok || n != next+2 || atoms[next+3].text != "them" && atoms[next+3].text != "em" && atoms[next+3].text != "those" {
			continue
		}
		end := next + 4
		if end < len(atoms) && atoms[end].text == "," {
			end++
		}
		out := append(append([]atom{}, atoms[:i-1]...), atoms[next+1])
		return append(append(out, atoms[j:next]...), atoms[end:]...)
	}
	return atoms
}

// theOnlyOne sets "just the single opening" to "just one opening".
func theOnlyOne(atoms []atom) []atom {
	for i := 0; i+2 < len(atoms); i++ {
		if w := atoms[i].text; (w == "just" || w == "only") && atoms[i+1].text == "the" {
			if w := atoms[i+2].text; w == "single" || w == "one" || w == "lone" || w == "sole" {
				if key, _ := partKey(atoms, i+3); key != "" {
					return reworded(atoms, i+1, i+3, "one")
				}
			}
		}
	}
	return atoms
}

// letOut sets "let the opening out by an inch", as a tailor says it, to "widen the opening by an inch".
func letOut(atoms []atom) []atom {
	for i := 0; i+3 < len(atoms); i++ {
		if atoms[i].text != "let" && atoms[i].text != "letting" && !widenedOut[atoms[i].text] {
			continue
		}
		if atoms[i+1].text == "out" {
			if key, next := partKey(atoms, skipArticle(atoms, i+2)); tailored[key] && (standAt(atoms, next, "by") || startsLength(reader{atoms}, next)) {
				return reworded(atoms, i, i+2, "widen")
			}
			continue
		}
		key, next := partKey(atoms, skipArticle(atoms, i+1))
		if tailored[key] && standAt(atoms, next, "out") && (standAt(atoms, next+1, "by") || startsLength(reader{atoms}, next+1)) {
			return reworded(cutOut(atoms, next, next+1), i, i+1, "widen")
		}
	}
	return atoms
}

// widenedOut are verbs that make the opening wider with an "out" behind it.
var widenedOut = wordSet("bump bumping stretch stretching spread spreading push pushing ease easing open opening kick")

var tailored = map[string]bool{"opening": true, "gap": true, "bay": true}

// skipArticle steps over articles, and over "that" and "this".
func skipArticle(atoms []atom, i int) int {
	for i < len(atoms) && (vocab().articles[atoms[i].text] || atoms[i].text == "that" || atoms[i].text == "this") {
		i++
	}
	return i
}

// whomWords are words that name who something is for.
var whomWords = wordSet("me us him her them you myself ourselves the a an my our his their and of it guests company other others everybody")

// forWhom leaves out who each of two is for: "two doorways, one for us and one for the dogs".
func forWhom(atoms []atom) []atom {
	for i := 1; i+6 < len(atoms); i++ {
		if atoms[i].text != "," || !standAt(atoms, i+1, "one", "for") {
			continue
		}
		ones, j := 0, i+1
		for ; j < len(atoms) && atoms[j].kind == aWord; j++ {
			w := atoms[j].text
			if (w == "one" || w == "another") && standAt(atoms, j+1, "for") || w == "other" && standAt(atoms, j-1, "the") && standAt(atoms, j+1, "for") {
				ones++
				continue
			}
			if w != "for" && !whomWords[w] && !outsiders[w] && !isPerson(w) {
				break
			}
		}
		if ones == 2 && endsPart(atoms, j) {
			return cutOut(atoms, i, j)
		}
	}
	return atoms
}

// handWords are words that tell that something is there, and where.
var handWords = wordSet(`what all ones that which they it those these i we he she you they have has had got 've left over is are was were in on at from the my our his their dad 's shed garage shop barn truck basement yard store
	rack here there around hand lying already can could get find afford bought sell sells sold carry carries stock leftover last job pile attic workshop stuff only mill mills saws sawmill merchant delivers makes`)

// didSo are what others did, behind "because that's what".
var didSo = wordSet("did do does want wants wanted like likes liked prefer prefers preferred need needs use uses used chose picked next door across street too")

// whatThereIs leaves out that something is what there is: "because that's what's in the shed".
func whatThereIs(atoms []atom) []atom {
	for i := 1; i+3 < len(atoms); i++ {
		switch atoms[i].text {
		case "because", "since", "as", "cause", "cos", "cuz":
		default:
			continue
		}
		if w := atoms[i+1].text; w != "that" && w != "it" && w != "those" && w != "they" && w != "these" {
			continue
		}
		if w := atoms[i+2].text; w != "is" && w != "are" && w != "'s" && w != "was" && w != "were" {
			continue
		}
		if w := atoms[i+3].text; w != "what" && w != "all" && w != "the" {
			continue
		}
		j := i + 3
		for j < len(atoms) && atoms[j].kind == aWord && (handWords[atoms[j].text] || j > i+3 && (isPerson(atoms[j].text) || didSo[atoms[j].text])) {
			j++
		}
		if endsPart(atoms, j) {
			return cutOut(atoms, i, j)
		}
	}
	return atoms
}

// whenTheyMeet sets "when the gap is under two inches the brackets touch" to "under two inches of gap the brackets touch": it tells what
// brackets do, and tries nothing.
func whenTheyMeet(atoms []atom) []atom {
	clash := -1
	for i := range atoms {
		if hits[atoms[i].text] && i > 0 {
			clash = i
		}
	}
	if clash < 0 || atoms[len(atoms)-1].text == "?" {
		return atoms
	}
	bracket := false
	for _, a := range atoms[:clash] {
		bracket = bracket || slices.Contains(vocab().classes[a.text], vocab().ids["BRACKET"])
	}
	for i := 0; bracket && i+3 < len(atoms); i++ {
		switch atoms[i].text {
		case "if", "when", "whenever", "once", "where", "wherever":
		default:
			continue
		}
		j := skipArticle(atoms, i+1)
		if key, next := partKey(atoms, j); key == "gap" && next < len(atoms) && (i == 0 || i > clash) && (i > 0 || !standAt(atoms, i, "what", "if")) {
			if w := atoms[next].text; w == "is" || w == "are" || w == "gets" || w == "goes" || w == "drops" || w == "falls" {
				next++
			}
			if next < len(atoms) && (atoms[next].text == "under" || atoms[next].text == "below" || standAt(atoms, next, "less", "than")) {
				return cutOut(atoms, i, next)
			}
		}
	}
	return atoms
}

var hits = wordSet("clash meet bump touch foul collide hit overlap interfere into together bind rub")

// wishedWithReason sets "can we have the doorway on the left so the grill fits", which is no question, to a wish.
func wishedWithReason(atoms []atom) []atom {
	if len(atoms) < 7 || atoms[len(atoms)-1].text == "?" || !beggars[atoms[0].text] || atoms[1].text != "we" && atoms[1].text != "i" || atoms[2].text != "have" && atoms[2].text != "get" {
		return atoms
	}
	for i := 4; i+2 < len(atoms); i++ {
		if (atoms[i].text == "so" || atoms[i].text == "because") && subjectAt(atoms, i+1) && !atoms[i].glued {
			return reworded(atoms, 0, 3, "we", "want")
		}
	}
	return atoms
}
