package grammar

import (
	"slices"

	"saywright/solver"
)

// Of what one and the same person or paper says at two times only the last is held against the wall: "last week he told me six boards, now
// he says five". What is taken up in the breath in which it is told is set. Plain English, no source.

// adoptsClaims sets what is claimed and taken up at once, and leaves out what somebody no longer claims.
func adoptsClaims(r Reading, atoms []atom) Reading {
	if r.Ask == nil && len(r.Acts) == 1 && r.Acts[0].Kind == Forget && len(r.Acts[0].Statements) == 0 && figured(atoms) && theirsTold(atoms) && claimBefore(atoms[:min(len(atoms), 6)], nil) && !namesAgain(atoms, r.Acts[0]) {
		q := wantedHere(r.Acts[0], r.Acts)
		return Reading{Ask: &q} // what they said is put aside, not what was said before
	}
	if r.Ask != nil || len(r.Acts) < 2 {
		return r
	}
	for i := 0; i+1 < len(r.Acts); i++ {
		a, b := r.Acts[i], r.Acts[i+1]
		switch {
		case a.Kind == Check && b.Kind == TakeThat && slices.ContainsFunc(atoms, func(x atom) bool { return x.text == "mind" }):
			r.Acts = slices.Delete(slices.Clone(r.Acts), i+1, i+2) // "keep that in mind"
		case a.Kind == Check && b.Kind == TakeThat && !slices.ContainsFunc(a.Statements, onlyClaimed):
			acts := slices.Clone(r.Acts[:i])
			for _, st := range a.Statements {
				acts = append(acts, Act{Kind: State, Statements: []solver.Statement{st}, At: a.At, End: a.End})
			}
			r.Acts = append(acts, r.Acts[i+2:]...)
		case a.Kind == State && b.Kind == TakeThat && theirsTold(atoms):
			r.Acts = slices.Delete(slices.Clone(r.Acts), i+1, i+2) // what they want is set as it is told
		case (a.Kind == Check || a.Kind == State) && (b.Kind == Undo || b.Kind == Forget && b.Name != nil && *b.Name == a.Statements[0].Name) && theirsTold(atoms) && !namesAgain(atoms, b):
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

// namesAgain reports whether what is taken back is named where it is: "he says six rails, forget the gap".
func namesAgain(atoms []atom, b Act) bool {
	from := 0
	for i := range atoms {
		if breaksClause(atoms, i) && i+2 < len(atoms) {
			from = i
		}
	}
	return b.Kind == Forget && slices.ContainsFunc(atoms[from:], func(x atom) bool {
		return len(vocab().classes[x.text]) > 0 && (isClass(x.text, "RAIL") || isClass(x.text, "GAP") || isClass(x.text, "OPENING") || isClass(x.text, "STIFF") || isClass(x.text, "BAY") || isClass(x.text, "POST") || isClass(x.text, "WALL"))
	})
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
	once := holdsRow(was, onceTold) || slices.ContainsFunc(was, func(x atom) bool { return goneBy[x.text] })
	if !once && !(slices.ContainsFunc(was, func(x atom) bool { return pastSaid[x.text] }) && saidBeforeOf(ofToday)(now, nil)) || !saidBeforeOf(ofNow)(now, nil) {
		return false
	}
	w := wordsOnly(now)
	for len(w) > 1 && (ofNow[w[0]] || vocab().articles[w[0]] || owned[w[0]] || fillersBefore[w[0]]) {
		w = w[1:]
	}
	if len(w) > 0 && (w[0] == "he" || w[0] == "she" || w[0] == "they") && slices.ContainsFunc(was[:min(3, len(was))], func(x atom) bool { return isClass(x.text, "PERSON") }) {
		return true
	}
	return len(w) > 0 && (w[0] == "it" || w[0] == "is" || slices.ContainsFunc(was, func(x atom) bool { return x.text == w[0] }))
}

var (
	pastSaid     = wordSet("had said told claimed showed wrote drew put gave thought figured reckoned made")
	claimJoints  = wordSet("but and then now yet while whereas though")
	weighsClaims = wordSet("which whether who right wrong true believe trust either or")
	goneBy       = wordSet("old used first original originally previous previously earlier before once initially former formerly prior last yesterday ago monday tuesday wednesday thursday friday saturday sunday")
	ofNow        = wordSet("now new today latest current currently revised updated newest lately tonight newer")
)
