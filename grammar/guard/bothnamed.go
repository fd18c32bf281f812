package guard

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/scan"
	"saywright/solver"
)

// BothNamed asks back where the gap and the bottom gap were named together and only one of them was heard: "raise the gap and the bottom
// gap to three". The name of the one is part of the name of the other, and was taken for it.
func BothNamed(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil {
		return r
	}
	at := gapsNamed(atoms)
	if at < 0 {
		return r
	}
	gap, bottom := false, false
	see := func(n solver.Name) {
		gap = gap || n.Quantity == solver.Gap
		bottom = bottom || n.Quantity == solver.BottomGap
	}
	for _, a := range r.Acts {
		if a.Name != nil {
			see(*a.Name)
		}
		for _, st := range a.Statements {
			see(st.Name)
			if st.Value.Of != nil {
				see(*st.Value.Of)
			}
		}
	}
	if gap == bottom {
		return r
	}
	return act.Reading{Ask: &solver.Question{At: &at, Text: "Is that for the gap, the bottom gap, or both of them?", Example: "gap 3, bottom gap 3"}}
}

// gapsNamed finds the gap and the bottom gap joined by an "and", or told as both gaps; -1 where they are not.
func gapsNamed(atoms []scan.Atom) int {
	for i := range atoms {
		if at := chunk.SkipArticle(atoms, i+1); bothWords[atoms[i].Text] && at < len(atoms) {
			if atoms[at].Text == "of" {
				at = chunk.SkipArticle(atoms, at+1)
			}
			if at < len(atoms) && chunk.IsClass(atoms[at].Text, "GAP") && !(at+1 < len(atoms) && (atoms[at+1].Text == "and" || atoms[at+1].Text == "between")) {
				return atoms[i].At // "both gaps under 3"
			}
		}
	}
	for i := 1; i+2 < len(atoms); i++ {
		if atoms[i].Text != "and" {
			continue
		}
		before := chunk.IsClass(atoms[i-1].Text, "GAP") || i > 2 && chunk.IsClass(atoms[i-1].Text, "RAIL") && (atoms[i-2].Text == "between" || atoms[i-3].Text == "between")
		j := chunk.SkipArticle(atoms, i+1)
		if !before || j+1 >= len(atoms) {
			continue
		}
		switch next := atoms[j+1].Text; {
		case lowestWords[atoms[j].Text] && chunk.IsClass(next, "GAP"), chunk.IsClass(atoms[j].Text, "GAP") && (next == "under" || next == "below" || next == "beneath"):
			return atoms[i-1].At
		}
	}
	return -1
}

// bothWords are words of two.
var bothWords = scan.WordSet("both neither either")

// lowestWords are words that make a gap the bottom gap.
var lowestWords = scan.WordSet("bottom lower lowest bottommost floor")
