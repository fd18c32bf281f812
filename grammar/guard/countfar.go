package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// "What if six rails", "lower it to 40": no wall has forty rails, so "it" is none of them. What can be lowered to forty is the wall, if it is higher than that now
// and not twice as high; else it is asked what the figure is of. A carpenter's feel, no source.

// mostCounted is how many of a part may be meant where only what was spoken of before tells that the figure counts it.
var mostCounted = map[solver.Quantity]int{solver.Rails: 16, solver.AddedPosts: 9, solver.Bays: 10, solver.Openings: 4, solver.Stiffeners: 9}

// The verbs of moving the top edge, by themselves and with a word of direction behind them.
var (
	lowers    = scan.WordSet("lower lowering lowered drop dropping")
	raises    = scan.WordSet("raise raising raised lift heighten")
	movesAway = scan.WordSet("bring bringing take taking move get cut")
)

// CountFar holds the count of a part that the line does not name against what can be counted.
func CountFar(r act.Reading, atoms []scan.Atom, c act.Context) act.Reading {
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != act.State && r.Acts[0].Kind != act.WhatIf || len(r.Acts[0].Statements) != 1 {
		return r
	}
	st := r.Acts[0].Statements[0]
	most, counted := mostCounted[st.Name.Quantity]
	if !counted || st.Op != solver.Eq || st.Value.Of != nil || !exact.Int(most).Less(st.Value.Num) {
		return r
	}
	figure := -1
	for i, a := range atoms {
		if chunk.NamesPart(atoms, i) || measure.CountNouns[a.Text] {
			return r
		}
		if figure < 0 && (chunk.Numeric(a) || chunk.SpelledNumber(a.Text)) {
			figure = i
		}
	}
	wall := solver.Value{Num: st.Value.Num, Unit: solver.Inch}
	if c.Metric {
		wall = solver.Value{Num: st.Value.Num.Div(solver.PerInch), Unit: solver.Millimeter}
	}
	if high, ok := heightNow(c); ok && moves(atoms, wall.Num, high) {
		lower := solver.Of(solver.WallHeight, solver.Eq, wall)
		lower.Name.Wall = st.Name.Wall
		r.Acts = slices.Clone(r.Acts)
		r.Acts[0].Statements = []solver.Statement{lower}
		return r
	}
	if figure < 0 {
		return askback.BackAt(atoms[0].At, askback.Meant.Ask())
	}
	return askback.BackAt(atoms[figure].At, askback.FigureOf.Ask(atoms[figure].Text))
}

func heightNow(c act.Context) (exact.Rat, bool) {
	if c.Now == nil {
		return exact.Rat{}, false
	}
	return c.Now(solver.Name{Quantity: solver.WallHeight})
}

// moves reports whether a line lowers something to what is less than the wall has now, or raises it to what is more, within what a wall is changed by.
func moves(atoms []scan.Atom, to, now exact.Rat) bool {
	two := exact.Int(2)
	for i, a := range atoms {
		away := func(way string) bool {
			return movesAway[a.Text] && slices.ContainsFunc(atoms[i:min(i+3, len(atoms))], func(b scan.Atom) bool { return b.Text == way })
		}
		if (lowers[a.Text] || away("down")) && to.Less(now) && now.Less(to.Mul(two)) || (raises[a.Text] || away("up")) && now.Less(to) && to.Less(now.Mul(two)) {
			return true
		}
	}
	return false
}
