package hear

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What is there, and what somebody measured, fixed, bought or has at hand, is a fact whoever tells it: "he's got rail 1 screwed on, its top
// at 8", "the brackets my brother gave me are 3/32 thick". It is a claim only where a word of saying, of paper or of doubt makes it one, or
// where the line asks whether it is right.

// facts are the quantities that tell what is there.
var facts = map[solver.Quantity]bool{
	solver.Measured: true, solver.FixedRail: true, solver.BracketThickness: true, solver.BracketEar: true, solver.BracketReach: true, solver.BracketClearance: true,
	solver.Kerf: true, solver.Tape: true, solver.FloorAtRight: true, solver.FloorFalls: true, solver.PostLeans: true, solver.Drop: true, solver.RailFace: true,
	solver.Price: true, solver.Have: true, solver.Stock: true,
}

// claiming are words of saying, of paper and of doubt, besides those by which a view is told.
var claiming = scan.WordSet(`
	stated states state swear swears supposedly allegedly apparently maintains maintain asserts contends declares announces mentions mentioned reports reported writes print prints printed document documents
	certificate brochure manual label schedule section detail sheet sheets page pages email contract permit permits submittal submitted issued page napkin board whiteboard survey surveys surveyor calls lists report reportedly per but though
	check checks verify confirm correct right true agree agrees accurate believable plausible possible ok okay hold holds stand stands sound really honest truth believe sure certain whether if or
	marked marks stamped labeled labelled advertised promised vowed guessed guesses supposed meant architect engineer inspector designer drafter reviewer consultant manufacturer
`)

// FactsStated states what is claimed of facts by nobody's word, and the units that somebody asks for.
func FactsStated(r act.Reading, atoms []scan.Atom) act.Reading {
	for i, a := range r.Acts {
		if a.Kind == act.WhatIf && len(a.Statements) == 1 && a.Statements[0].Name.Quantity == solver.Units {
			r.Acts[i].Kind = act.State // nobody tries units: "can we do that in centimeters"
		}
	}
	if !slices.ContainsFunc(r.Acts, func(a act.Act) bool { return a.Kind == act.Check }) || wordOfClaim(atoms) {
		return r
	}
	for i := 0; i < len(r.Acts); i++ {
		a := r.Acts[i]
		if a.Kind != act.Check || slices.ContainsFunc(a.Statements, func(st solver.Statement) bool {
			return !facts[st.Name.Quantity] || parse.ToldElsewhere(r.Acts, i, st.Name.Quantity)
		}) {
			continue
		}
		r.Acts = slices.Replace(r.Acts, i, i+1, parse.EachStated(a)...)
		i += len(a.Statements) - 1
	}
	return r
}

// wordOfClaim reports whether a line holds a word of saying, of paper or of doubt, or asks.
func wordOfClaim(atoms []scan.Atom) bool {
	for i, a := range atoms {
		switch {
		case a.Text == "?", claiming[a.Text]:
			return true
		case idiom.Viewed[a.Text] && !(a.Text == "rule" && i > 0 && lex.Owned[atoms[i-1].Text]):
			return true
		case lex.Helping[a.Text] == act.Check && (i == 0 || chunk.BreaksClause(atoms, i-1) || chunk.Joints[atoms[i-1].Text]):
			return true
		}
	}
	return strings.Contains(scan.Text(atoms), "up to code")
}
