package solver

import (
	"slices"

	"saywright/solver/exact"
)

// mostRails keeps the greatest rail count that leaves an eighth over the clearance; else the greatest.
func (ch *chooser) mostRails() {
	if ch.s.f&upField == 0 || len(ch.left) == 0 {
		return
	}
	counts := map[int]bool{}
	for _, c := range ch.left {
		counts[c.c.rails] = true
	}
	if len(counts) > 1 {
		ch.chose = append(ch.chose, "most rails")
	}
	best := -1
	for i := len(ch.left) - 1; i >= 0 && best < 0; i-- {
		if ch.roomy(i) {
			best = ch.left[i].c.rails
		}
	}
	if best < 0 {
		best = ch.left[len(ch.left)-1].c.rails
	}
	kept := ch.left[:0]
	for _, c := range ch.left {
		if c.c.rails == best {
			kept = append(kept, c)
		}
	}
	ch.left = kept
}

// roomy reports whether candidate i can leave every gap an eighth over the clearance. A single rail leaves no gap.
func (ch *chooser) roomy(i int) bool {
	if ch.left[i].c.rails < 2 {
		return false
	}
	sh := ch.sheet(i)
	at := len(sh.sys.Rows)
	for j, g := range sh.segs {
		if sh.gapsIn(j) > 0 {
			sh.truth(exact.GE, spareRoom, one(g), minus(vClearance))
		}
	}
	point, _ := exact.Solve(&sh.sys)
	sh.sys.Rows = sh.sys.Rows[:at]
	return point != nil
}

func (ch *chooser) fewestPosts() {
	if ch.s.f&alongField == 0 || len(ch.left) == 0 {
		return
	}
	least := ch.left[0].c.posts()
	for _, c := range ch.left {
		least = min(least, c.c.posts())
	}
	ch.left = slices.DeleteFunc(ch.left, func(c candidate) bool { return c.c.posts() != least })
}

// saidLimits takes each length that is still free at the nearest limit that was said of it, in the order said: at the
// least where a least was said, else at the most.
func (ch *chooser) saidLimits() {
	for i := range ch.s.p.laws {
		l := &ch.s.p.laws[i]
		if !ch.on.has(i) || l.Kind != Yours || l.said.Op == Eq || KindOf(l.said.Name.Quantity) != Length || l.field&ch.s.f == 0 ||
			l.said.Name.Quantity == StiffenerSpacing { // it follows from the bay, which nobody chooses by it
			continue
		}
		way := -1
		if l.said.sides() == upper {
			way = 1
			if ch.s.p.hasLower(ch.on, l.said.Name) {
				continue
			}
		}
		ch.optimize(func(sh *sheet) ([]exact.Term, bool) { return sh.distance(l.said.Name, way, Value{}) })
	}
}

func (p *problem) hasLower(on set, n Name) bool {
	for i := range p.laws {
		s := p.laws[i].said
		if on.has(i) && p.laws[i].Kind == Yours && s.Name.String() == n.String() && s.Op != Eq && s.sides()&lower != 0 {
			return true
		}
	}
	return false
}

// nearDefaults: a default that could not be kept still draws.
func (ch *chooser) nearDefaults(dropped []int) {
	for _, i := range dropped {
		l := &ch.s.p.laws[i]
		if l.said.Op == Eq && KindOf(l.said.Name.Quantity) == Length && len(ch.left) > 0 {
			if ch.reaches(l.said) {
				ch.optimize(func(sh *sheet) ([]exact.Term, bool) { return sh.distance(l.said.Name, 0, l.said.Value) })
			} else {
				ch.pin(l.said.Name)
			}
		}
	}
}

// reaches reports whether a statement's nearest is attained, and not only approached.
func (ch *chooser) reaches(st Statement) bool {
	sh := ch.sheet(0)
	rows, vars := len(sh.sys.Rows), sh.vars
	obj, ok := sh.distance(st.Name, 0, st.Value)
	best, _ := exact.Prepare(&sh.sys).Min(obj)
	sh.sys.Rows, sh.vars = sh.sys.Rows[:rows], vars
	sh.sys.Vars = vars
	return ok && !best.Open
}

// pin takes a length whose end is not reached at the tape mark next to that end, or in the middle.
func (ch *chooser) pin(n Name) {
	for i := range ch.left {
		sh := ch.sheet(i)
		fs := sh.forms(n, false)
		if len(fs) != 1 || len(fs[0].terms) == 0 {
			continue
		}
		prep := exact.Prepare(&sh.sys)
		lo, _ := prep.Min(fs[0].terms)
		hi, _ := prep.Max(fs[0].terms)
		if lo.None || hi.None || lo.Val.Eq(hi.Val) || !lo.Open && !hi.Open {
			continue
		}
		tape := ch.tape()
		mark := lo.Val.Div(tape).Floor().Add(exact.Int(1)).Mul(tape)
		if hi.Open {
			mark = hi.Val.Div(tape).Ceil().Sub(exact.Int(1)).Mul(tape)
		}
		if mark.Cmp(lo.Val) <= 0 || mark.Cmp(hi.Val) >= 0 {
			mark = lo.Val.Add(hi.Val).Mul(exact.New(1, 2))
		}
		sh.truth(exact.EQ, mark, fs[0].terms...)
	}
}

// usualOpening is the width of a walk-through that nobody gave a width, inches: the trade notes, common practice.
var usualOpening = inches("36")

// openingWidth gives an opening without a width the usual one, or what comes nearest to it.
func (ch *chooser) openingWidth() {
	if ch.s.f&alongField == 0 || len(ch.left) == 0 || ch.left[0].c.openings == 0 || ch.s.p.speaksOf(Opening) {
		return
	}
	ch.optimize(func(sh *sheet) ([]exact.Term, bool) { return sh.distance(Name{Quantity: Opening}, 0, usualOpening) })
	ch.chose = append(ch.chose, "opening")
}

// evenBays makes the longest and the shortest bay differ as little as can be.
func (ch *chooser) evenBays() {
	if ch.s.f&alongField == 0 || len(ch.left) == 0 || len(ch.sheet(0).pieces) < 2 {
		return
	}
	ch.optimize(func(sh *sheet) ([]exact.Term, bool) {
		low, spread := sh.fresh(), sh.fresh()
		sh.sys.Vars = sh.vars
		for _, pc := range sh.pieces {
			if pc.opening == 0 {
				sh.truth(exact.GE, zero, one(pc.v), times(low, -pc.bays))
				sh.truth(exact.LE, zero, one(pc.v), times(low, -pc.bays), times(spread, -pc.bays))
			}
		}
		return []exact.Term{one(spread)}, true
	})
}
