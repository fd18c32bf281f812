package hear

import (
	"slices"

	"saywright/grammar/act"
	"saywright/solver"
)

// ValuedAny are acts that set a value, try it, hold it against the rest, or ask why it is or is not so.
var ValuedAny = KindOf(act.State, act.Check, act.WhatIf, act.Why, act.WhyNot)

// KindOf tells acts of some kinds.
func KindOf(kinds ...act.Kind) func(act.Act) bool {
	return func(a act.Act) bool { return slices.Contains(kinds, a.Kind) }
}

// StockTold: what is sold is told anew, not changed.
func StockTold(a act.Act) bool { return Stated(solver.Stock)(a) && a.Statements[0].Op == solver.Eq }
