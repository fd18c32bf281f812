package reread

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// mostLoose is the number of unknown words that a line may have and still be read without them.
const mostLoose = 2

// withoutLooseWords leaves out the words of a line that no table knows where their place shows that they change nothing: an
// adverb ("terribly"), what a width is for ("for the wheelbarrow"), a verb after its pronoun ("the saw we borrowed"). It
// reports whether there were some, and whether one was a verb. It is asked only where the line as a whole could not be read.
func withoutLooseWords(atoms []scan.Atom, c act.Context) (left []scan.Atom, ok, verb bool) {
	drop := map[int]bool{}
	tokens := lex.Tokens(atoms, c)
	seen := 0
	for i := range atoms {
		for k := i + 1; k < placeOfWall(atoms, i); k++ {
			drop[k] = true
		}
	}
	for i := range tokens {
		t := &tokens[i]
		if t.Kind != lexicon.Unknown {
			continue
		}
		at := hear.AtomAt(atoms, t.At)
		if at < 0 || drop[at] {
			continue
		}
		w := atoms[at].Text
		if lex.Outsiders[w] {
			if from, to := purposeAt(atoms, at); from < to {
				for k := from; k < to; k++ {
					drop[k] = true
				}
				continue
			}
		}
		if seen++; seen > mostLoose || atoms[at].Kind != scan.Word || !hear.Foreign(t) || lex.Words().Numberish(w) || phrase.Turning[w] || idiom.Withheld[w] || idiom.Viewed[w] || idiom.Bending[w] {
			return nil, false, false
		}
		switch from, to := purposeAt(atoms, at); {
		case strings.HasSuffix(w, "ly") && len(w) > 4 && !(at > 0 && judgedBy[atoms[at-1].Text]): // "six rails would be folly" judges
			drop[at] = true
		case from < to:
			for k := from; k < to; k++ {
				drop[k] = true
			}
		case at > 0 && at+1 < len(atoms) && (lexicon.Vocab().Articles[atoms[at-1].Text] || lex.Owned[atoms[at-1].Text]) && whoeverIs(atoms[at+1].Text) && (!strings.HasSuffix(w, "est") || idiom.IsOf(atoms[at+1].Text, lexicon.Vocab().Ids["STORE"])):
			drop[at] = true // "our local store", "the friendly clerk"
		case at > 1 && Tellers[atoms[at-1].Text] && atoms[at-2].Kind == scan.Word && namesThing(atoms, at-2) && (strings.HasSuffix(w, "ed") || strings.HasSuffix(w, "ought")):
			drop[at], drop[at-1] = true, true // "the saw we borrowed"
		case at > 0 && Doers[atoms[at-1].Text] && at+1 < len(atoms) && atoms[at+1].Kind != scan.Sign && !(idiom.Weighs(w) && startsAmount(atoms, at+1)): // "what if I removed four boards"
			drop[at], verb = true, true
		default:
			return nil, false, false
		}
	}
	for i, a := range atoms {
		if !drop[i] {
			left = append(left, a)
		}
	}
	return left, len(drop) > 0 && len(left) > 0, verb
}

// placeOfWall finds where the words end that tell only where the wall at an atom is built: "a wall round the kiosk, 40 high". It returns 0
// where there are none.
func placeOfWall(atoms []scan.Atom, i int) int {
	if atoms[i].Text != "wall" || i+3 >= len(atoms) || !placesAround[atoms[i+1].Text] || !lexicon.Vocab().Articles[atoms[i+2].Text] && !lex.Owned[atoms[i+2].Text] {
		return 0
	}
	for k := i + 3; k < len(atoms) && k < i+5; k++ {
		if atoms[k].Kind != scan.Word || !lex.ForeignWord(atoms[k].Text) || idiom.Weighs(atoms[k].Text) {
			return 0
		}
		if chunk.EndsPart(atoms, k+1) {
			return k + 1
		}
	}
	return 0
}

// placesAround are words that lead to the place where a wall is built.
var placesAround = scan.WordSet("on round around along by beside outside behind at near")

// whoeverIs reports whether a word names a shop, somebody, or what one stands on, whatever it is like.
func whoeverIs(w string) bool {
	for _, class := range []string{"STORE", "SELLER", "PERSON", "ORG", "FLOOR", "EARTH", "PAPER", "LUMBER"} {
		if idiom.IsOf(w, lexicon.Vocab().Ids[class]) {
			return true
		}
	}
	return false
}

// Tellers are the subjects of "the saw we borrowed".
var Tellers = scan.WordSet("i we you they he she")

// namesThing reports whether a thing is named by the word at an atom, and no joint of a sentence stands there.
func namesThing(atoms []scan.Atom, i int) bool {
	f := lexicon.Vocab().Match(atoms, i)
	return len(f) > 0 && (f[0].Entry.Kind == lexicon.Part || f[0].Entry.Kind == lexicon.Item)
}

// judgedBy are words after which an unknown word judges what was said.
var judgedBy = scan.WordSet("be is are was were looks look seems seem sounds sound feels feel being been 's a an")

// Doers are words after which an unknown word is a verb.
var Doers = scan.WordSet("i we you to can could will would should must let please us")

// purposeAt finds the stretch "for the wheelbarrow", "for my leaf blower" that holds the unknown word at an atom and ends a clause.
func purposeAt(atoms []scan.Atom, at int) (from, to int) {
	from = at - 1
	for from >= 0 && at-from <= 3 && atoms[from].Text != "for" {
		if w := atoms[from].Text; !lex.Owned[w] && !chunk.Noun[w] && !lex.ForeignWord(w) {
			return 0, 0
		}
		from--
	}
	if from < 1 || atoms[from].Text != "for" {
		return 0, 0
	}
	to = at + 1
	for to < len(atoms) && atoms[to].Kind == scan.Word && lex.ForeignWord(atoms[to].Text) {
		to++
	}
	if to < len(atoms) && (atoms[to].Kind != scan.Sign || atoms[to].Text == "-") {
		return 0, 0
	}
	return from, to
}

// ReadLoosely reads a line without the words that change nothing. Where one of them was a verb, nothing is commanded or
// forgotten, and a value is set only where a word says that it is one: "at", "to", "is".
func ReadLoosely(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	left, ok, verb := withoutLooseWords(atoms, c)
	if !ok {
		return act.Reading{}, false
	}
	r := hear.Atoms(left, c)
	if r.Ask != nil {
		return r, false
	}
	for _, a := range r.Acts {
		switch a.Kind {
		case act.Ask, act.Why, act.WhyNot, act.WhatIf, act.Teach:
		case act.State:
			for _, st := range a.Statements {
				if verb && !firm(st, left) {
					return r, false
				}
			}
		default:
			if verb {
				return r, false
			}
		}
	}
	return r, true
}

// firm reports whether a statement does not rest on a verb: a goal, a limit, or a value that a word hands over.
func firm(st solver.Statement, atoms []scan.Atom) bool {
	switch st.Op {
	case solver.LT, solver.LE, solver.GT, solver.GE, solver.In, "":
		return true
	case solver.Eq, solver.Near:
	default:
		return false
	}
	for i := 1; i < len(atoms); i++ {
		if atoms[i].Kind == scan.Digits || atoms[i].Kind == scan.Vulgar || scan.Ones[atoms[i].Text] > 0 {
			switch atoms[i-1].Text {
			case "at", "to", "is", "are", "be":
				return true
			}
		}
	}
	return false
}
