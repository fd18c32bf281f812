package contrast

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// Of what one and the same person or paper says at two times only the last is held against the wall: "last week he told me six boards, now
// he says five". What is taken up in the breath in which it is told is set. Plain English, no source.

// OnlyClaimed reports whether a statement can only be claimed, and not be set.
func OnlyClaimed(s solver.Statement) bool {
	switch s.Name.Quantity {
	case solver.CutOf, solver.MarksOf, solver.Boards, solver.CostOf:
		return true
	}
	return false
}

// NamesAgain reports whether what is taken back is named where it is: "he says six rails, forget the gap".
func NamesAgain(atoms []scan.Atom, b act.Act) bool {
	from := 0
	for i := range atoms {
		if chunk.BreaksClause(atoms, i) && i+2 < len(atoms) {
			from = i
		}
	}
	return b.Kind == act.Forget && slices.ContainsFunc(atoms[from:], func(x scan.Atom) bool {
		return len(lexicon.Vocab().Classes[x.Text]) > 0 && (chunk.IsClass(x.Text, "RAIL") || chunk.IsClass(x.Text, "GAP") || chunk.IsClass(x.Text, "OPENING") || chunk.IsClass(x.Text, "STIFF") || chunk.IsClass(x.Text, "BAY") || chunk.IsClass(x.Text, "POST") || chunk.IsClass(x.Text, "WALL"))
	})
}

// ClaimsOne reports whether an act claims one value.
func ClaimsOne(a act.Act) bool {
	return a.Kind == act.Check && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq
}

// SaysOtherwiseNow reports whether the first of two claims is told of another time, and the second of now and of the same speaker or paper.
func SaysOtherwiseNow(atoms []scan.Atom, a, b act.Act) bool {
	cut := 0
	for cut < len(atoms) && (atoms[cut].End < a.End || !chunk.BreaksClause(atoms, cut) && !claimJoints[atoms[cut].Text]) {
		cut++
	}
	if cut >= len(atoms) || slices.ContainsFunc(atoms, func(x scan.Atom) bool { return x.Text == "?" || weighsClaims[x.Text] }) {
		return false
	}
	was, now := atoms[:cut], aside.WithoutJoint(atoms[cut:])
	once := holdsRow(was, onceTold) || slices.ContainsFunc(was, func(x scan.Atom) bool { return goneBy[x.Text] })
	if !once && !(slices.ContainsFunc(was, func(x scan.Atom) bool { return pastSaid[x.Text] }) && phrase.SaidBeforeOf(ofToday)(now, nil)) || !phrase.SaidBeforeOf(ofNow)(now, nil) {
		return false
	}
	w := WordsOnly(now)
	for len(w) > 1 && (ofNow[w[0]] || lexicon.Vocab().Articles[w[0]] || lex.Owned[w[0]] || FillersBefore[w[0]]) {
		w = w[1:]
	}
	if len(w) > 0 && (w[0] == "he" || w[0] == "she" || w[0] == "they") && slices.ContainsFunc(was[:min(3, len(was))], func(x scan.Atom) bool { return chunk.IsClass(x.Text, "PERSON") }) {
		return true
	}
	return len(w) > 0 && (w[0] == "it" || w[0] == "is" || slices.ContainsFunc(was, func(x scan.Atom) bool { return x.Text == w[0] }))
}

var (
	pastSaid     = scan.WordSet("had said told claimed showed wrote drew put gave thought figured reckoned made")
	claimJoints  = scan.WordSet("but and then now yet while whereas though")
	weighsClaims = scan.WordSet("which whether who right wrong true believe trust either or")
	goneBy       = scan.WordSet("old used first original originally previous previously earlier before once initially former formerly prior last yesterday ago monday tuesday wednesday thursday friday saturday sunday")
	ofNow        = scan.WordSet("now new today latest current currently revised updated newest lately tonight newer")
)
