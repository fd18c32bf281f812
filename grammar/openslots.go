package grammar

import "strings"

// Some places of a sentence take any word of their kind, known or not, and mean the same with each: "it would be … if you made the gap
// two", "what if I … four boards", "my … says the gap is two", "for the … we need 34 inches". A word of no table that stands in such a
// place is taken for a plain one of its kind, or left out where it only adds. It must be an English word that can be no misspelling, and
// neither deny, doubt, change nor compare (heavyWords).

const mostSlots = 2 // the most words of a line that are taken so

// openSlots puts plain words into the open places of a line.
func openSlots(in []atom, c Context) ([]atom, bool) {
	atoms := append([]atom{}, in...)
	filled, unknown := 0, map[int]bool{}
	for _, t := range lex(atoms, c) {
		unknown[t.at] = t.kind == kUnknown && foreign(&t)
	}
	for i := 0; i < len(atoms); i++ {
		if !unknown[atoms[i].at] || !openWord(atoms[i]) {
			continue
		}
		left, ok := slotAt(atoms, i)
		if !ok {
			continue
		}
		if filled++; filled > mostSlots {
			return nil, false
		}
		atoms = left
	}
	return atoms, filled > 0 && len(atoms) > 1
}

// openWord reports whether an atom is a word of no table that may stand for any other of its kind.
func openWord(a atom) bool {
	return a.kind == aWord && len(a.text) > 3 && (english()[a.text] || len(a.text) > 5) && !weighs(a.text)
}

// slotAt puts a plain word into the place at an atom, or leaves out what only adds there.
func slotAt(atoms []atom, i int) ([]atom, bool) {
	word := func(k int) string {
		if k < 0 || k >= len(atoms) {
			return ""
		}
		return atoms[k].text
	}
	without := func(from, to int) []atom {
		return append(append([]atom{}, atoms[:from]...), atoms[to:]...)
	}
	put := func(w string) []atom {
		out := append([]atom{}, atoms...)
		out[i].text = w
		return out
	}
	before := i - 1
	for before > 0 && slotDegrees[atoms[before].text] {
		before--
	}
	determined := vocab().articles[word(i-1)] || owned[word(i-1)]
	switch {
	case word(before) == "be" && word(i+1) == "for" && (word(i+2) == "us" || word(i+2) == "me") && word(i+3) == "if" && (word(before-1) == "would" || word(before-1) == "will"):
		out := append([]atom{}, atoms[:before+1]...)
		return append(append(out, worded(atoms[i], "nice")), atoms[i+3:]...), true // "it would be convenient for us if"
	case word(before) == "be" && word(i+1) == "if" && (word(before-1) == "would" || word(before-1) == "will"):
		out := append([]atom{}, atoms[:before+1]...)
		return append(append(out, worded(atoms[i], "nice")), atoms[i+1:]...), true // "it would be simply marvelous if"
	case determined && word(i-2) == "for" && clauseBeginsAt(atoms, i-2) && (word(i+1) == "," || word(i+1) == "i" || word(i+1) == "we"):
		to := i + 1
		if word(to) == "," {
			to++
		}
		return without(i-2, to), to < len(atoms) // "for the tricycle we need 34 inches"
	case supposesHere(atoms[:i]) && speakers[word(before)] && startsAmount(atoms, i+1):
		return append(append(append([]atom{}, atoms[:before+1]...), worded(atoms[i], "had")), atoms[i+1:]...), true // "what if I slung four boards in there"
	case determined && i+1 < len(atoms) && isOf(word(i+1), vocab().ids["SAYS"]) && clauseBeginsAt(atoms, i-1):
		return put("builder"), true // "my pharmacist reckons six rails would do"
	case determined && (word(i+1) == "'s" && isOf(word(i+2), vocab().ids["PAPER"]) || word(i+1) == "'" && word(i+2) == "s" && isOf(word(i+3), vocab().ids["PAPER"])):
		return put("builder"), true // "the pharmacist's sketch has six rails"
	case bidsHere(atoms, i) && handsFigure(atoms, i+1):
		return put("set"), true // "peg the gap at two"
	case determined && adjectival(word(i)) && i+1 < len(atoms) && partAt(atoms, i+1):
		return without(i, i+1), true // "the rickety posts are 4x4"
	}
	return nil, false
}

// bidsHere reports whether a verb at an atom bids, or is wished: "peg the gap", "I would like to peg the gap".
func bidsHere(atoms []atom, i int) bool {
	return clauseBeginsAt(atoms, i) || atoms[i-1].text == "please" || atoms[i-1].text == "us" && i > 1 && atoms[i-2].text == "let" ||
		atoms[i-1].text == "to" && i > 1 && (atoms[i-2].text == "like" || atoms[i-2].text == "want" || atoms[i-2].text == "going")
}

// handsFigure reports whether a part is named at an atom, and a word that hands it a figure stands behind it.
func handsFigure(atoms []atom, i int) bool {
	for i < len(atoms) && (vocab().articles[atoms[i].text] || owned[atoms[i].text]) {
		i++
	}
	if i >= len(atoms) {
		return false
	}
	f := vocab().match(atoms, i)
	if len(f) == 0 || f[0].entry.kind != kPart || f[0].next+1 >= len(atoms) {
		return false
	}
	w := atoms[f[0].next].text
	return (w == "at" || w == "to") && startsLength(reader{atoms}, f[0].next+1)
}

// reasonsLead are words that lead to why something is wished, and purposes what does so with a verb.
var (
	reasonsLead = [][]string{{"because", "of"}, {"due", "to"}, {"thanks", "to"}, {"on", "account", "of"}, {"owing", "to"}, {"considering"}, {"what", "with"}, {"out", "of", "respect", "for"}, {"for", "the", "sake", "of"}}
	purposes    = wordSet("keep please suit satisfy humor humour spare save help oblige appease")
)

// withoutLeadReason leaves out why something is wished, where it opens a line and ends at a comma: "owing to the salt air, …", "to keep my
// aunt happy, …". It names no figure, and nothing of the wall.
func withoutLeadReason(atoms []atom, c Context) ([]atom, bool) {
	n := 0
	for _, lead := range reasonsLead {
		if len(atoms) > len(lead)+3 && textOf(atoms[:len(lead)]) == strings.Join(lead, " ") {
			n = len(lead)
		}
	}
	if len(atoms) > 4 && atoms[0].text == "to" && purposes[atoms[1].text] {
		n = 2
	}
	if n == 0 {
		return nil, false
	}
	to := n
	for to < len(atoms) && atoms[to].text != "," {
		to++
	}
	if to+2 >= len(atoms) || to-n > 7 {
		return nil, false
	}
	for _, t := range lex(atoms[n:to], c) {
		if t.kind != kUnknown && t.kind != kIt && t.kind != kAnd || t.kind == kUnknown && !foreign(&t) {
			return nil, false
		}
	}
	return atoms[to+1:], true
}

// supposesHere reports whether a line supposes something up to here, in the same clause.
func supposesHere(before []atom) bool {
	for k := len(before) - 1; k >= 0 && !breaks(before[k]); k-- {
		if before[k].text == "if" || before[k].text == "suppose" || before[k].text == "supposing" {
			return true
		}
	}
	return false
}

// startsAmount reports whether an amount begins at an atom, past words that only narrow it.
func startsAmount(atoms []atom, i int) bool {
	for i < len(atoms) && (atoms[i].text == "just" || atoms[i].text == "only" || atoms[i].text == "in" || atoms[i].text == "up") {
		i++
	}
	return i < len(atoms) && atoms[i].text != "a" && atoms[i].text != "an" && startsLength(reader{atoms}, i)
}

// adjectival reports whether a word has the ending of one that tells what something is like.
func adjectival(w string) bool {
	for _, end := range []string{"y", "ful", "ous", "ish", "ic", "al", "ive", "ed", "ing", "ten"} {
		if strings.HasSuffix(w, end) {
			return true
		}
	}
	return false
}

// partAt reports whether a part of the wall is named at an atom.
func partAt(atoms []atom, i int) bool {
	f := vocab().match(atoms, i)
	return len(f) > 0 && f[0].entry.kind == kPart
}

// readOpenly reads a line with plain words in its open places.
func readOpenly(atoms []atom, c Context) (Reading, bool) {
	led, cut := withoutLeadReason(atoms, c)
	if cut {
		if r := readAtoms(led, c); r.Ask == nil && doneByWish(r.Acts) {
			return r, true
		}
		atoms = led
	}
	left, ok := openSlots(atoms, c)
	if !ok {
		return Reading{}, false
	}
	r := readAtoms(left, c)
	for _, a := range r.Acts {
		if a.Kind != State && a.Kind != Ask && a.Kind != WhatIf && a.Kind != Check && a.Kind != Why && a.Kind != WhyNot {
			return r, false
		}
	}
	return r, r.Ask == nil
}

// slotDegrees are words that only heighten the one behind them.
var slotDegrees = wordSet("very so really most quite just simply absolutely truly rather too awfully terribly perfectly such a an")
