package draw

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// fullJob is the upstream wall with everything that a job sheet shows. The cuts and boards are worked out by hand: each
// rail is its bay less two brackets (3/16 in) less 1/8 in of play; a post on a base of 1 in is cut at 42 − 1.
func fullJob() *solver.Answer {
	a := walls()["upstream"]
	ft := func(feet int) exact.Rat { return n(12 * feet) }
	length := func(r exact.Rat) *exact.Rat { return &r }
	cash := func(s string) *solver.Cash { return &solver.Cash{Rat: q(s)} }
	for i, l := range []string{"921/8", "1841/16", "115", "1839/16", "919/8"} {
		a.Cuts = append(a.Cuts, solver.Cut{Piece: "rail", Bay: 1, Rail: i + 1, Size: "2x6", Length: q(l), Exact: q(l), Count: 1, Ends: "square"})
	}
	a.Cuts = append(a.Cuts,
		solver.Cut{Piece: "stiffener", Bay: 1, Size: "1x4", Length: q("75/2"), Exact: q("75/2"), Count: 2, Ends: "square"},
		solver.Cut{Piece: "post", Post: 1, Size: "4x4", Length: n(41), Exact: n(41), Count: 1, Ends: "square"})
	board := func(size string, long exact.Rat, have bool, times int, left string, pieces ...string) {
		b := solver.Board{Size: size, Board: long, Times: times, Left: q(left), Have: have}
		for _, p := range pieces {
			b.Pieces = append(b.Pieces, q(p))
		}
		a.Plan = append(a.Plan, b)
	}
	board("2x6", ft(16), true, 1, "615/8", "115")                                     // 192 − 115 − 1/8
	board("2x6", ft(10), false, 2, "5", "919/8")                                      // 120 − 114-7/8 − 1/8
	board("1x4", ft(8), false, 1, "83/4", "75/2", "75/2")                             // 96 − 2 × (37-1/2 + 1/8)
	board("4x4", ft(8), false, 1, "439/8", "41")                                      // 96 − 41 − 1/8
	board("2x6", ft(16), true, 1, "40", "24", "24", "24", "24", "24", "24", "6", "1") // 192 − 151 − 8 × 1/8
	a.Shopping = []solver.Buy{
		{Item: "2x6", Length: length(ft(10)), Count: 3, Each: cash("11.20"), Amount: cash("33.60")},
		{Item: "1x4", Length: length(ft(8)), Count: 1, Each: cash("4.75"), Amount: cash("4.75")},
		{Item: "4x4", Length: length(ft(8)), Count: 1, Each: cash("13.90"), Amount: cash("13.90")},
		{Item: "bracket", Count: 10}, {Item: "screw 1-5/8 in, exterior", Count: 60}, {Item: "post base", Count: 1},
	}
	a.Cost = &solver.Cost{Total: solver.Cash{Rat: q("52.25")}, Proven: true, AtLeast: solver.Cash{Rat: q("52.25")}}
	a.Steps = []solver.StepOf{
		{Do: "Lay out the center line between the end posts; the added post's near face is 115-1/2 from the left one."},
		{Do: "Set the base, drill its anchor holes, stand the post plumb and fix it.", Caution: "Drilling concrete makes silica dust: a shroud and a vacuum, eyes and ears. Locate utilities before any hole."},
		{Do: "Mark every post, each mark from its own floor."},
		{Do: "Measure the bay at each rail; cut one rail, try it, cut the rest."},
		{Do: "Bottom rail first on spacers of 2-1/2; top holes at the marks, level and plumb, then the bottom holes. Upward, rail by rail.", Caution: "A helper or a spacer block under a long board."},
	}
	a.Cautions = []solver.Caution{{Text: "The added post is held only at its foot; a base holds it down, not upright. Without the base's rating it cannot be called safe: tie its top, or get a base made for it.", Source: "common practice, no source"}}
	a.Assumed = []string{"rail size = 2x6", "bottom gap = gap", "floor at right = 0 in", "bracket thickness = 3/32 in"}
	a.Work = []solver.Work{
		{Of: "wall height", Says: "5 × 5-1/2 = 27-1/2"},
		solver.Line("wall height", "sum", solver.Sum(solver.Num(q("55/2")), solver.Num(q("25/2")))),
		solver.Line("bay 1", "bays", solver.Less(solver.Num(n(149)), solver.Num(n(30)), solver.Num(q("7/2")))),
		solver.Line("bay 1", "", solver.Compare(solver.Num(n(2)), "<=", solver.Num(q("5/2")))),
	}
	return a
}

// blockedJob is a wall that does not fit.
func blockedJob() *solver.Answer {
	return &solver.Answer{Verdict: solver.Blocked, Tape: q("1/16"), Conflicts: []solver.Conflict{conflicts()["seven"], conflicts()["count"]}}
}
