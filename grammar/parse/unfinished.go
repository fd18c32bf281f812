package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// unfinished takes a correction for the rest of what was broken off at a figure: "the new post two inches, no, three inches higher than
// the wall", "it leans a quarter, no, three eighths to the right". ok is false where the figure did not stand at the break.
func (a *amended) unfinished(chunk, part []Item) (list []Item, ok bool) {
	n := len(a.acc)
	for n > 0 && a.acc[n-1].breaks() {
		n--
	}
	if n < 2 || len(chunk) == 0 || !chunk[0].value() || !a.acc[n-1].value() {
		return nil, false
	}
	was, now := a.acc[n-1].lim, chunk[0].lim
	if was.of != nil || was.hi != nil || len(was.tail) > 0 || was.lo.Size != "" || now.lo.Size != "" || was.lo.Times || now.hi != nil || len(now.lead) > 0 {
		return nil, false
	}
	if was.lo.Unit != now.lo.Unit && was.lo.Unit != measure.Bare && now.lo.Unit != measure.Bare {
		return nil, false
	}
	from := n - 1
	for from > 0 && !a.acc[from-1].breaks() {
		from--
	}
	leans := false
	for _, it := range a.acc[from : n-1] {
		if it.value() {
			return nil, false
		}
		leans = leans || !it.value() && (it.Kind == lexicon.Lean || it.Kind == lexicon.Fall || it.Kind == lexicon.Part && it.Key() == "floor")
	}
	if now.of == nil && !(leans && len(chunk) > 1) {
		return nil, false
	}
	if now.lo.Unit == measure.Bare && was.lo.Unit != measure.Bare {
		lim := *now
		v := likeBefore(*now.lo, was.lo)
		lim.lo = &v
		part = append([]Item{}, part...)
		for i := range part {
			if part[i].value() {
				part[i].lim = &lim
				break
			}
		}
	}
	return append(append([]Item{}, a.acc[:n-1]...), part...), true
}

// namesAnew reports whether a correction is no more than the right name for what was told: "…, no, that's outside to outside".
func namesAnew(part []Item) bool {
	part = strip(part)
	if len(part) != 1 || part[0].value() || part[0].Kind != lexicon.Part {
		return false
	}
	w := strings.Fields(part[0].Before)
	return len(w) > 1 && (w[0] == "that" || w[0] == "it" || w[0] == "this" || w[0] == "those") && (w[1] == "is" || w[1] == "was" || w[1] == "are" || w[1] == "were")
}

// takenApart finds the size of all posts where a correction tells that of the end posts and that of the added ones instead, -1 where
// it does not.
func takenApart(done, fresh []made) int {
	end, added := false, false
	for _, f := range fresh {
		end = end || f.st.Name.Quantity == solver.EndPostSize
		added = added || f.st.Name.Quantity == solver.AddedPostSize
	}
	for i, d := range done {
		if end && added && d.st.Name.Quantity == solver.PostSize {
			return i
		}
	}
	return -1
}

// keptAfterAll reports whether item i takes something back that was just said, with a word of correction right before it: "drop the
// gap limit, no wait, keep it". What is tried may be kept so.
func (g *grouping) keptAfterAll(i int) bool {
	k, fixed := i-1, false
	for ; k >= 0 && (g.list[k].breaks() || !g.list[k].value() && (g.list[k].Kind == lexicon.Fix || g.list[k].Kind == lexicon.No)); k-- {
		fixed = fixed || g.list[k].Kind == lexicon.Fix || g.list[k].Kind == lexicon.No
	}
	if !fixed || k < 0 {
		return false
	}
	for _, p := range g.s.groups {
		if p.force == act.WhatIf {
			return false
		}
	}
	return g.g.force != act.WhatIf
}
