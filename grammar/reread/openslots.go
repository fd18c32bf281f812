package reread

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
)

// Some places of a sentence take any word of their kind, known or not, and mean the same with each: "it would be … if you made the gap
// two", "what if I … four boards", "my … says the gap is two", "for the … we need 34 inches". A word of no table that stands in such a
// place is taken for a plain one of its kind, or left out where it only adds. It must be an English word that can be no misspelling, and
// neither deny, doubt, change nor compare (heavyWords).

const mostSlots = 2 // the most words of a line that are taken so

// openSlots puts plain words into the open places of a line.
func openSlots(in []scan.Atom, c act.Context) ([]scan.Atom, bool) {
	atoms := append([]scan.Atom{}, in...)
	filled, unknown := 0, map[int]bool{}
	for _, t := range lex.Tokens(atoms, c) {
		unknown[t.At] = t.Kind == lexicon.Unknown && hear.Foreign(&t)
	}
	for i := 0; i < len(atoms); i++ {
		if !unknown[atoms[i].At] || !openWord(atoms[i]) {
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
func openWord(a scan.Atom) bool {
	return a.Kind == scan.Word && len(a.Text) > 3 && (spelling.English()[a.Text] || len(a.Text) > 5) && !idiom.Weighs(a.Text)
}

// slotAt puts a plain word into the place at an atom, or leaves out what only adds there.
func slotAt(atoms []scan.Atom, i int) ([]scan.Atom, bool) {
	word := func(k int) string {
		if k < 0 || k >= len(atoms) {
			return ""
		}
		return atoms[k].Text
	}
	without := func(from, to int) []scan.Atom {
		return append(append([]scan.Atom{}, atoms[:from]...), atoms[to:]...)
	}
	put := func(w string) []scan.Atom {
		out := append([]scan.Atom{}, atoms...)
		out[i].Text = w
		return out
	}
	before := i - 1
	for before > 0 && SlotDegrees[atoms[before].Text] {
		before--
	}
	determined := lexicon.Vocab().Articles[word(i-1)] || lex.Owned[word(i-1)]
	switch {
	case word(before) == "be" && word(i+1) == "for" && (word(i+2) == "us" || word(i+2) == "me") && word(i+3) == "if" && (word(before-1) == "would" || word(before-1) == "will"):
		out := append([]scan.Atom{}, atoms[:before+1]...)
		return append(append(out, chunk.Worded(atoms[i], "nice")), atoms[i+3:]...), true // "it would be convenient for us if"
	case word(before) == "be" && word(i+1) == "if" && (word(before-1) == "would" || word(before-1) == "will"):
		out := append([]scan.Atom{}, atoms[:before+1]...)
		return append(append(out, chunk.Worded(atoms[i], "nice")), atoms[i+1:]...), true // "it would be simply marvelous if"
	case determined && word(i-2) == "for" && chunk.ClauseBeginsAt(atoms, i-2) && (word(i+1) == "," || word(i+1) == "i" || word(i+1) == "we"):
		to := i + 1
		if word(to) == "," {
			to++
		}
		return without(i-2, to), to < len(atoms) // "for the tricycle we need 34 inches"
	case supposesHere(atoms[:i]) && lex.Speakers[word(before)] && startsAmount(atoms, i+1):
		return append(append(append([]scan.Atom{}, atoms[:before+1]...), chunk.Worded(atoms[i], "had")), atoms[i+1:]...), true // "what if I slung four boards in there"
	case determined && i+1 < len(atoms) && idiom.IsOf(word(i+1), lexicon.Vocab().Ids["SAYS"]) && chunk.ClauseBeginsAt(atoms, i-1):
		return put("builder"), true // "my pharmacist reckons six rails would do"
	case determined && (word(i+1) == "'s" && idiom.IsOf(word(i+2), lexicon.Vocab().Ids["PAPER"]) || word(i+1) == "'" && word(i+2) == "s" && idiom.IsOf(word(i+3), lexicon.Vocab().Ids["PAPER"])):
		return put("builder"), true // "the pharmacist's sketch has six rails"
	case bidsHere(atoms, i) && handsFigure(atoms, i+1):
		return put("set"), true // "peg the gap at two"
	case determined && adjectival(word(i)) && i+1 < len(atoms) && chunk.PartAt(atoms, i+1):
		return without(i, i+1), true // "the rickety posts are 4x4"
	}
	return nil, false
}

// bidsHere reports whether a verb at an atom bids, or is wished: "peg the gap", "I would like to peg the gap".
func bidsHere(atoms []scan.Atom, i int) bool {
	return chunk.ClauseBeginsAt(atoms, i) || atoms[i-1].Text == "please" || atoms[i-1].Text == "us" && i > 1 && atoms[i-2].Text == "let" ||
		atoms[i-1].Text == "to" && i > 1 && (atoms[i-2].Text == "like" || atoms[i-2].Text == "want" || atoms[i-2].Text == "going")
}

// handsFigure reports whether a part is named at an atom, and a word that hands it a figure stands behind it.
func handsFigure(atoms []scan.Atom, i int) bool {
	for i < len(atoms) && (lexicon.Vocab().Articles[atoms[i].Text] || lex.Owned[atoms[i].Text]) {
		i++
	}
	if i >= len(atoms) {
		return false
	}
	f := lexicon.Vocab().Match(atoms, i)
	if len(f) == 0 || f[0].Entry.Kind != lexicon.Part || f[0].Next+1 >= len(atoms) {
		return false
	}
	w := atoms[f[0].Next].Text
	return (w == "at" || w == "to") && phrase.StartsLength(measure.Reader{Atoms: atoms}, f[0].Next+1)
}

// reasonsLead are words that lead to why something is wished, and purposes what does so with a verb.
var (
	reasonsLead = [][]string{{"because", "of"}, {"due", "to"}, {"thanks", "to"}, {"on", "account", "of"}, {"owing", "to"}, {"considering"}, {"what", "with"}, {"out", "of", "respect", "for"}, {"for", "the", "sake", "of"}}
	purposes    = scan.WordSet("keep please suit satisfy humor humour spare save help oblige appease")
)

// withoutLeadReason leaves out why something is wished, where it opens a line and ends at a comma: "owing to the salt air, …", "to keep my
// aunt happy, …". It names no figure, and nothing of the wall.
func withoutLeadReason(atoms []scan.Atom, c act.Context) ([]scan.Atom, bool) {
	n := 0
	for _, lead := range reasonsLead {
		if len(atoms) > len(lead)+3 && scan.Text(atoms[:len(lead)]) == strings.Join(lead, " ") {
			n = len(lead)
		}
	}
	if len(atoms) > 4 && atoms[0].Text == "to" && purposes[atoms[1].Text] {
		n = 2
	}
	if n == 0 {
		return nil, false
	}
	to := n
	for to < len(atoms) && atoms[to].Text != "," {
		to++
	}
	if to+2 >= len(atoms) || to-n > 7 {
		return nil, false
	}
	for _, t := range lex.Tokens(atoms[n:to], c) {
		if t.Kind != lexicon.Unknown && t.Kind != lexicon.It && t.Kind != lexicon.And || t.Kind == lexicon.Unknown && !hear.Foreign(&t) {
			return nil, false
		}
	}
	return atoms[to+1:], true
}

// supposesHere reports whether a line supposes something up to here, in the same clause.
func supposesHere(before []scan.Atom) bool {
	for k := len(before) - 1; k >= 0 && !chunk.Breaks(before[k]); k-- {
		if before[k].Text == "if" || before[k].Text == "suppose" || before[k].Text == "supposing" {
			return true
		}
	}
	return false
}

// startsAmount reports whether an amount begins at an atom, past words that only narrow it.
func startsAmount(atoms []scan.Atom, i int) bool {
	for i < len(atoms) && (atoms[i].Text == "just" || atoms[i].Text == "only" || atoms[i].Text == "in" || atoms[i].Text == "up") {
		i++
	}
	return i < len(atoms) && atoms[i].Text != "a" && atoms[i].Text != "an" && phrase.StartsLength(measure.Reader{Atoms: atoms}, i)
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

// ReadOpenly reads a line with plain words in its open places.
func ReadOpenly(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	led, cut := withoutLeadReason(atoms, c)
	if cut {
		if r := hear.Atoms(led, c); r.Ask == nil && DoneByWish(r.Acts) {
			return r, true
		}
		atoms = led
	}
	left, ok := openSlots(atoms, c)
	if !ok {
		return act.Reading{}, false
	}
	r := hear.Atoms(left, c)
	for _, a := range r.Acts {
		if a.Kind != act.State && a.Kind != act.Ask && a.Kind != act.WhatIf && a.Kind != act.Check && a.Kind != act.Why && a.Kind != act.WhyNot {
			return r, false
		}
	}
	return r, r.Ask == nil
}

// SlotDegrees are words that only heighten the one behind them.
var SlotDegrees = scan.WordSet("very so really most quite just simply absolutely truly rather too awfully terribly perfectly such a an")
