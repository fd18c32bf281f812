package grammar

import (
	"slices"

	"saywright/solver"
)

// Of what one and the same person or paper says at two times only the last is held against the wall: "last week he told me six boards, now
// he says five". What is taken up in the breath in which it is told is set. Plain English, no source.

// adoptsClaims sets what is claimed and taken up at once, and leaves out what somebody no longer claims.
func adoptsClaims(r Reading, atoms []atom) Reading {
	if r.Ask != nil || len(r.Acts) < 2 {
		return r
	}
	for i := 0; i+1 < len(r.Acts); i++ {
		a, b := r.Acts[i], r.Acts[i+1]
		switch {
		case a.Kind == Check && b.Kind == TakeThat && !slices.ContainsFunc(a.Statements, onlyClaimed):
			acts := slices.Clone(r.Acts[:i])
			for _, st := range a.Statements {
				acts = append(acts, Act{Kind: State, Statements: []solver.Statement{st}, At: a.At, End: a.End})
			}
			r.Acts = append(acts, r.Acts[i+2:]...)
		case a.Kind == State && b.Kind == TakeThat && theirsTold(atoms):
			r.Acts = slices.Delete(slices.Clone(r.Acts), i+1, i+2) // what they want is set as it is told
		case a.Kind == Check && b.Kind == Undo && theirsTold(atoms):
			q := wantedHere(a, r.Acts)
			return Reading{Ask: &q} // "he says six rails, forget that" takes nothing back that was said before
		case claimsOne(a) && claimsOne(b) && a.Statements[0].Name == b.Statements[0].Name && saysOtherwiseNow(atoms, a, b):
			r.Acts = slices.Delete(slices.Clone(r.Acts), i, i+1)
		}
	}
	return r
}

// onlyClaimed reports whether a statement can only be claimed, and not be set.
func onlyClaimed(s solver.Statement) bool {
	switch s.Name.Quantity {
	case solver.CutOf, solver.MarksOf, solver.Boards, solver.CostOf:
		return true
	}
	return false
}

// claimsOne reports whether an act claims one value.
func claimsOne(a Act) bool {
	return a.Kind == Check && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq
}

// saysOtherwiseNow reports whether the first of two claims is told of another time, and the second of now and of the same speaker or paper.
func saysOtherwiseNow(atoms []atom, a, b Act) bool {
	cut := 0
	for cut < len(atoms) && (atoms[cut].end < a.End || !breaksClause(atoms, cut) && !claimJoints[atoms[cut].text]) {
		cut++
	}
	if cut >= len(atoms) || slices.ContainsFunc(atoms, func(x atom) bool { return x.text == "?" || weighsClaims[x.text] }) {
		return false
	}
	was, now := atoms[:cut], withoutJoint(atoms[cut:])
	if !holdsRow(was, onceTold) && !slices.ContainsFunc(was, func(x atom) bool { return goneBy[x.text] }) {
		return false
	}
	if !slices.ContainsFunc(now, func(x atom) bool { return ofNow[x.text] }) {
		return false
	}
	w := wordsOnly(now)
	for len(w) > 1 && (ofNow[w[0]] || vocab().articles[w[0]] || owned[w[0]] || fillersBefore[w[0]]) {
		w = w[1:]
	}
	return len(w) > 0 && (w[0] == "it" || w[0] == "is" || slices.ContainsFunc(was, func(x atom) bool { return x.text == w[0] }))
}

var (
	claimJoints  = wordSet("but and then now yet while whereas though")
	weighsClaims = wordSet("which whether who right wrong true believe trust either or")
	goneBy       = wordSet("old used first original originally previous previously earlier before once initially former formerly prior last yesterday ago monday tuesday wednesday thursday friday saturday sunday")
	ofNow        = wordSet("now new today latest current currently revised updated newest lately tonight newer")
)
