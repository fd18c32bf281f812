package grammar

import (
	"strings"

	"saywright/solver"
)

// mostLoose is the number of unknown words that a line may have and still be read without them.
const mostLoose = 2

// withoutLooseWords leaves out the words of a line that no table knows where their place shows that they change nothing: an
// adverb ("terribly"), what a width is for ("for the wheelbarrow"), a verb after its pronoun ("the saw we borrowed"). It
// reports whether there were some, and whether one was a verb. It is asked only where the line as a whole could not be read.
func withoutLooseWords(atoms []atom, c Context) (left []atom, ok, verb bool) {
	drop := map[int]bool{}
	tokens := lex(atoms, c)
	seen := 0
	for i := range atoms {
		for k := i + 1; k < placeOfWall(atoms, i); k++ {
			drop[k] = true
		}
	}
	for i := range tokens {
		t := &tokens[i]
		if t.kind != kUnknown {
			continue
		}
		at := atomAt(atoms, t.at)
		if at < 0 || drop[at] {
			continue
		}
		w := atoms[at].text
		if outsiders[w] {
			if from, to := purposeAt(atoms, at); from < to {
				for k := from; k < to; k++ {
					drop[k] = true
				}
				continue
			}
		}
		if seen++; seen > mostLoose || atoms[at].kind != aWord || !foreign(t) || words().numberish(w) || turning[w] || withheld[w] || viewed[w] || bending[w] {
			return nil, false, false
		}
		switch from, to := purposeAt(atoms, at); {
		case strings.HasSuffix(w, "ly") && len(w) > 4 && !(at > 0 && judgedBy[atoms[at-1].text]): // "six rails would be folly" judges
			drop[at] = true
		case from < to:
			for k := from; k < to; k++ {
				drop[k] = true
			}
		case at > 0 && at+1 < len(atoms) && (vocab().articles[atoms[at-1].text] || owned[atoms[at-1].text]) && whoeverIs(atoms[at+1].text) && (!strings.HasSuffix(w, "est") || isOf(atoms[at+1].text, vocab().ids["STORE"])):
			drop[at] = true // "our local store", "the friendly clerk"
		case at > 1 && tellers[atoms[at-1].text] && atoms[at-2].kind == aWord && namesThing(atoms, at-2) && (strings.HasSuffix(w, "ed") || strings.HasSuffix(w, "ought")):
			drop[at], drop[at-1] = true, true // "the saw we borrowed"
		case at > 0 && doers[atoms[at-1].text] && at+1 < len(atoms) && atoms[at+1].kind != aSign && !(weighs(w) && startsAmount(atoms, at+1)): // "what if I removed four boards"
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
func placeOfWall(atoms []atom, i int) int {
	if atoms[i].text != "wall" || i+3 >= len(atoms) || !placesAround[atoms[i+1].text] || !vocab().articles[atoms[i+2].text] && !owned[atoms[i+2].text] {
		return 0
	}
	for k := i + 3; k < len(atoms) && k < i+5; k++ {
		if atoms[k].kind != aWord || !foreignWord(atoms[k].text) || weighs(atoms[k].text) {
			return 0
		}
		if endsPart(atoms, k+1) {
			return k + 1
		}
	}
	return 0
}

// placesAround are words that lead to the place where a wall is built.
var placesAround = wordSet("on round around along by beside outside behind at near")

// whoeverIs reports whether a word names a shop, somebody, or what one stands on, whatever it is like.
func whoeverIs(w string) bool {
	for _, class := range []string{"STORE", "SELLER", "PERSON", "ORG", "FLOOR", "EARTH", "PAPER", "LUMBER"} {
		if isOf(w, vocab().ids[class]) {
			return true
		}
	}
	return false
}

// tellers are the subjects of "the saw we borrowed".
var tellers = wordSet("i we you they he she")

// namesThing reports whether a thing is named by the word at an atom, and no joint of a sentence stands there.
func namesThing(atoms []atom, i int) bool {
	f := vocab().match(atoms, i)
	return len(f) > 0 && (f[0].entry.kind == kPart || f[0].entry.kind == kItem)
}

// judgedBy are words after which an unknown word judges what was said.
var judgedBy = wordSet("be is are was were looks look seems seem sounds sound feels feel being been 's a an")

// doers are words after which an unknown word is a verb.
var doers = wordSet("i we you to can could will would should must let please us")

// bending are words that change, deny, bound or doubt though no table knows them.
var bending = wordSet(`
	avoid avoids prevent prevents exclude excludes refuse ban bans banned lack lacks miss fail fails failed reject abandon abandoned veto vetoed replace replaced swap swapped
	dread detest despise abhor regret fear worry hesitate pretend dream dreamed dreamt gamble bet
	slash slashed hike hiked hack chop chopped shave whittle halve multiply multiplied divide divided subtract deduct exceed exceeds top tops beat beats
	supposedly allegedly reportedly purportedly presumably apparently seemingly ostensibly evidently partly partially mostly barely hardly scarcely nearly almost roughly
	doubly triply only merely solely early
	restrict restricts restricted confine confined cap capped ceiling floor stop stops
`)

// purposeAt finds the stretch "for the wheelbarrow", "for my leaf blower" that holds the unknown word at an atom and ends a clause.
func purposeAt(atoms []atom, at int) (from, to int) {
	from = at - 1
	for from >= 0 && at-from <= 3 && atoms[from].text != "for" {
		if w := atoms[from].text; !owned[w] && !noun[w] && !foreignWord(w) {
			return 0, 0
		}
		from--
	}
	if from < 1 || atoms[from].text != "for" {
		return 0, 0
	}
	to = at + 1
	for to < len(atoms) && atoms[to].kind == aWord && foreignWord(atoms[to].text) {
		to++
	}
	if to < len(atoms) && (atoms[to].kind != aSign || atoms[to].text == "-") {
		return 0, 0
	}
	return from, to
}

// foreignWord reports whether a word is of no table and can be no misspelling.
func foreignWord(w string) bool {
	return outsiders[w] || !vocab().known[w] && !vocab().neutral[w] && len(w) > 2 && len(words().near(w)) == 0 && !words().numberish(w)
}

// atomAt is the number of the atom at a place in the line.
func atomAt(atoms []atom, at int) int {
	for i := range atoms {
		if atoms[i].at == at {
			return i
		}
	}
	return -1
}

// readLoosely reads a line without the words that change nothing. Where one of them was a verb, nothing is commanded or
// forgotten, and a value is set only where a word says that it is one: "at", "to", "is".
func readLoosely(atoms []atom, c Context) (Reading, bool) {
	left, ok, verb := withoutLooseWords(atoms, c)
	if !ok {
		return Reading{}, false
	}
	r := readAtoms(left, c)
	if r.Ask != nil {
		return r, false
	}
	for _, a := range r.Acts {
		switch a.Kind {
		case Ask, Why, WhyNot, WhatIf, Teach:
		case State:
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
func firm(st solver.Statement, atoms []atom) bool {
	switch st.Op {
	case solver.LT, solver.LE, solver.GT, solver.GE, solver.In, "":
		return true
	case solver.Eq, solver.Near:
	default:
		return false
	}
	for i := 1; i < len(atoms); i++ {
		if atoms[i].kind == aDigits || atoms[i].kind == aVulgar || units[atoms[i].text] > 0 {
			switch atoms[i-1].text {
			case "at", "to", "is", "are", "be":
				return true
			}
		}
	}
	return false
}
