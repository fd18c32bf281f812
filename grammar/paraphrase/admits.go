package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// admitting are verbs of what an opening is for, and obliging the words before them.
var (
	admitting = scan.WordSet("admit fit take let allow pass handle accommodate clear swallow hold accept suit serve welcome fits takes admits lets allows passes clears")
	obliging  = scan.WordSet("has have needs need must should will ought got gotta is to can just also really be able in through past by out")
)

// admits leaves out whom or what an opening is to let through: "the entrance has to fit a wheelchair, so 38 inches" is an entrance of
// 38 inches, whatever was spoken of before.
func admits(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return admitting[a.Text] }) {
		return atoms
	}
	for i := 0; i+4 < len(atoms); i++ {
		if !lexicon.Vocab().Articles[atoms[i].Text] && !lex.Owned[atoms[i].Text] {
			continue
		}
		f := lexicon.Vocab().Match(atoms, i+1)
		if len(f) == 0 || f[0].Entry.Kind != lexicon.Part || f[0].Entry.Key != "opening" {
			continue
		}
		from := f[0].Next
		to := admitted(atoms, from)
		if to > from && figureAhead(atoms[to:]) {
			return append(append([]scan.Atom{}, atoms[:from]...), atoms[to:]...)
		}
	}
	return atoms
}

// admitted finds the end of "has to fit a wheelchair", and from where there is none.
func admitted(atoms []scan.Atom, from int) int {
	j, verb := from, false
	for j < len(atoms) && atoms[j].Kind == scan.Word && (obliging[atoms[j].Text] || admitting[atoms[j].Text]) {
		verb = verb || admitting[atoms[j].Text]
		j++
	}
	if !verb {
		return from
	}
	whom := 0
	for j < len(atoms) && atoms[j].Kind == scan.Word && atoms[j].Text != "so" {
		switch w := atoms[j].Text; {
		case lex.Outsiders[w] || Creatures[w]:
			whom++
		case lexicon.Vocab().Articles[w] || lex.Owned[w] || LeadingWords[w] || w == "and" || w == "through" || w == "in" || w == "by" || w == "past":
		default:
			return from
		}
		j++
	}
	if whom == 0 || j >= len(atoms) {
		return from
	}
	return j
}

// figureAhead reports whether a figure comes before the next full stop.
func figureAhead(atoms []scan.Atom) bool {
	for i, a := range atoms {
		if a.Kind == scan.Sign && (a.Text == "." || a.Text == "?") && i > 0 {
			return false
		}
		if a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) {
			return true
		}
	}
	return false
}
