package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What is heard of a line by its gist, by its sound or without some of its words may have lost one of its clauses, or have taken the words of
// one for another's: "144 apart outside to outside, wall 42" made 42 the overall length. A clause that stands by itself still says what it says
// alone; where that is missing from what was heard, the line is asked back.

// losesClause reports whether what was heard of a line that could not be read as a whole leaves out what one of its clauses says alone.
func losesClause(atoms []scan.Atom, c act.Context, r act.Reading) bool {
	if !mayBeParted(atoms, c) || slices.ContainsFunc(r.Acts, toldInParts) {
		return false
	}
	heard, alone := saidIn(r.Acts), ofAPart(c, atoms)
	for _, cut := range partings(atoms) {
		right := atoms[cut.next:]
		if !ofItself(right, cut.onward) || goesOn(right) {
			continue
		}
		then := readSpoken("", right, alone)
		if !saysAlone(then) || leadsToNext(then.Acts, right) {
			continue
		}
		if leavesOut(heard, then.Acts) {
			return true
		}
		if first := readSpoken("", atoms[:cut.end], alone); saysAlone(first) && leavesOut(heard, first.Acts) {
			return true
		}
	}
	return false
}

// toldInParts reports whether an act tells what people tell piece by piece, each leaning on the one before: measurements, the floor, lengths on sale.
func toldInParts(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(st solver.Statement) bool {
		switch st.Name.Quantity {
		case solver.Measured, solver.FloorAtRight, solver.FloorFalls, solver.Stock:
			return true
		}
		return false
	})
}

// leavesOut reports whether something that acts say is not among what was heard.
func leavesOut(heard []string, acts []act.Act) bool {
	return slices.ContainsFunc(saidIn(acts), func(s string) bool { return !slices.Contains(heard, s) })
}

// saidIn lists what acts set, ask and order, whether they state, try or check it.
func saidIn(acts []act.Act) (out []string) {
	for _, a := range acts {
		if len(a.Statements) == 0 {
			out = append(out, a.String())
		}
		for _, st := range a.Statements {
			st.Name.Wall = ""
			out = append(out, act.Act{Kind: act.State, Statements: []solver.Statement{st}}.String())
		}
	}
	return out
}
