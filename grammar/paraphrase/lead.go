package paraphrase

import (
	"saywright/grammar/act"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
)

// A line is read without the words that only lead it on: "so", "and", "ok, well", "you know". What they lead to must mean the same with
// them and without.

// leadsOut are words that end a line and say nothing, longest first.
var leadsOut = [][]string{
	{",", "mind"}, {",", "mind", "you"}, {"fyi"}, {"just", "so", "you", "know"}, {"for", "the", "record"},
	{"please", "and", "thank", "you"}, {"thank", "you", "very", "much"}, {"thanks", "very", "much"}, {"thanks", "so", "much"}, {"thank", "you", "so", "much"}, {"if", "you", "would", "please"},
	{"if", "you", "do", "not", "mind"}, {"if", "you", "would"}, {"if", "you", "could"}, {"if", "you", "can"}, {"if", "you", "please"}, {"thanks", "a", "lot"}, {"thank", "you"}, {"many", "thanks"},
	{",", "nothing", "exact"}, {",", "nothing", "too", "exact"}, {",", "nothing", "precise"}, {",", "nothing", "fancy"}, {",", "nothing", "special"}, {",", "no", "more", "no", "less"},
	{"kindly"}, {"for", "me"}, {"for", "us"}, {"for", "now"}, {"please"}, {"thanks"}, {"thx"}, {"cheers"}, {"ta"}, {"then"}, {"right", "now"}, {"now"},
}

// PastTail leaves out what only ends a line: thanks, a please, a "then". A question keeps its mark.
func PastTail(atoms []scan.Atom) []scan.Atom {
	end := len(atoms)
	for end > 0 && atoms[end-1].Kind == scan.Sign && (atoms[end-1].Text == "." || atoms[end-1].Text == "!" || atoms[end-1].Text == "?") {
		end--
	}
	marks, rest := atoms[end:], atoms[:end]
	for {
		n := tailAt(rest)
		if n == 0 {
			break
		}
		rest = rest[:len(rest)-n]
		for len(rest) > 1 && rest[len(rest)-1].Kind == scan.Sign && (rest[len(rest)-1].Text == "," || rest[len(rest)-1].Text == "." || rest[len(rest)-1].Text == "!") {
			rest = rest[:len(rest)-1]
		}
	}
	if len(rest) == end {
		return atoms
	}
	return append(append([]scan.Atom{}, rest...), marks...)
}

// LeansOn are words that need the word after them: "than now", "from then".
var LeansOn = scan.WordSet("than from until till by since as of to and or but is are was what how where why when so no back next even")

// tailAt is how many atoms at the end of a line only end it: 0 where there are none, or nothing stands before them.
func tailAt(atoms []scan.Atom) int {
	for _, t := range leadsOut {
		n := len(t)
		if len(atoms) < n+2 {
			continue
		}
		same := true
		for i, w := range t {
			same = same && atoms[len(atoms)-n+i].Text == w
		}
		if n == 2 && t[0] == "right" && saysSide(atoms[:len(atoms)-1]) {
			continue // "on the left, sorry, right now"
		}
		if same && !(n == 1 && LeansOn[atoms[len(atoms)-2].Text]) {
			return n
		}
	}
	return 0
}

// PastOK leaves out an "ok" at the end of what is no question.
func PastOK(atoms []scan.Atom) ([]scan.Atom, bool) {
	end := len(atoms)
	for end > 0 && atoms[end-1].Kind == scan.Sign && (atoms[end-1].Text == "." || atoms[end-1].Text == "!") {
		end--
	}
	if end < 3 || atoms[end-1].Text != "ok" && atoms[end-1].Text != "okay" || LeansOn[atoms[end-2].Text] || atoms[end-2].Text == "that" || atoms[end-2].Text == "it" {
		return nil, false
	}
	end--
	if atoms[end-1].Text == "," {
		end--
	}
	return atoms[:end], true
}

// States reports whether something is set or tried, and nothing else done.
func States(r act.Reading) bool {
	for _, a := range r.Acts {
		if a.Kind != act.State && a.Kind != act.WhatIf && a.Kind != act.Check {
			return false
		}
	}
	return true
}

// SetsStock reports whether lengths on sale are told: an "also" adds to them.
func SetsStock(r act.Reading) bool {
	for _, a := range r.Acts {
		for _, s := range a.Statements {
			if s.Name.Quantity == solver.Stock && s.Op == solver.Eq {
				return true
			}
		}
	}
	return false
}

// endsBehind parts the point of "max." and "min." from them where they stand behind their value: there it ends the sentence.
func endsBehind(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(atoms); i++ {
		if w := atoms[i].Text; (w == "max" || w == "min") && atoms[i+1].Text == "." && (atoms[i-1].Kind != scan.Word || atoms[i-1].Text == "wide" || atoms[i-1].Text == "high" || atoms[i-1].Text == "tall" || measure.InchWords[atoms[i-1].Text] || measure.FootWords[atoms[i-1].Text]) {
			atoms = append([]scan.Atom{}, atoms...)
			atoms[i].Text += "imum"
		}
	}
	return atoms
}

// saysSide reports whether a line speaks of sides, so that "right" may be one.
func saysSide(atoms []scan.Atom) bool {
	for i, a := range atoms {
		if a.Text == "left" || a.Text == "side" || a.Text == "middle" || a.Text == "right" && i > 0 && (atoms[i-1].Text == "the" || atoms[i-1].Text == "on") {
			return true
		}
	}
	return false
}
