package explain

import "saywright/solver"

// onTape says how gaps that no tape shows are marked out: the holes, how far the worst is off, and the gaps that come
// of it.
func (v *voice) onTape(u *solver.Up) {
	v.markedSo(u)
	v.tapeSums(u)
}

// offTape reports whether the gaps are such as no tape shows.
func (v *voice) offTape(u *solver.Up) bool {
	_, ok := v.line("off the mark")
	_, on := v.Near(u.Gap)
	return (ok || !on) && !v.uneven(u)
}

// markedSo says right behind a gap that no tape shows where the holes go: who holds the tape needs no more of it.
func (v *voice) markedSo(u *solver.Up) {
	if !v.offTape(u) {
		return
	}
	text := "No tape shows that gap"
	if _, on := v.Near(u.Gap); on {
		text = "Not every mark falls on a line of the tape"
	}
	v.p.note(text + ", so mark each rail from the floor" + v.holes(u))
}

// tapeSums says behind the sums how far the worst mark is off, and which gaps come of it.
func (v *voice) tapeSums(u *solver.Up) {
	if v.offTape(u) {
		worst, ok := v.line("off the mark")
		switch {
		case ok && worst.Expr.Value.Sign() == 0:
			v.p.note("Every one of these marks a tape shows")
		case ok:
			v.p.note("No mark is off by more than " + v.atMost(worst.Expr.Value) + ", and none adds to the next")
		}
		if t, ok := v.line("tape gaps"); ok {
			v.p.note("The gaps come out " + v.tally(t.Expr) + ": " + v.sentenceSum(t.Expr))
		}
	}
	if !v.uneven(u) {
		v.brokenByTape()
	}
}

// holes lists the brackets' top holes as a tape shows them.
func (v *voice) holes(u *solver.Up) string {
	if len(u.Marks) == 0 || len(u.Marks) > 24 {
		return ""
	}
	var list []string
	for _, m := range u.Marks {
		list = append(list, mark(nearest, m.String()))
	}
	return ". Bracket holes: " + and(list)
}

// tally says how many there are of each width: "four of 2-13/16 and two of 2-7/8".
func (v *voice) tally(e solver.Expr) string {
	terms := []solver.Expr{e}
	if e.Op == "+" {
		terms = e.Args
	}
	var list []string
	for _, t := range terms {
		if t.Op == "*" {
			n, _ := t.Args[0].Value.Int64()
			list = append(list, count(int(n))+" of "+v.length(t.Args[1].Value))
		}
	}
	return and(list)
}

func (v *voice) brokenByTape() {
	if f, ok := v.fact("tape breaks rule"); ok && len(f.Nums) > 0 {
		v.p.note("Rounded to the tape the gaps would no longer all keep to what was said (the least comes to " + v.length(f.Nums[0]) +
			"), so the figures stay exact and each mark is rounded by itself")
	}
}
