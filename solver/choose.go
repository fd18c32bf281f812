package solver

import (
	"slices"

	"saywright/solver/exact"
)

// candidate is a cell that is still in the running, with what was fixed of its lengths so far.
type candidate struct {
	c  *cell
	sh *sheet
}

// chooser picks one layout where several remain: nearest to the wishes in the order said; then the most rails that
// leave the gap an eighth over the brackets' clearance; then the fewest posts; then lengths at the nearest said limit;
// then an opening without a side against the right end post; then equal bays. It narrows candidates, never the laws.
type chooser struct {
	s       *search
	on      set
	left    []candidate
	endless bool     // the rail counts were not all listed: nothing bounds them
	chose   []string // what was chosen, as normal forms
}

// spare room over the clearance that a layout keeps if it can, inches: the trade notes, common practice, no source.
var spareRoom = exact.New(1, 8)

// choose returns the candidate chosen, its lengths all fixed, or false where too little is known for a layout.
// What a default that had to be set aside leaves free comes as near to it as can be.
func (s *search) choose(on set, dropped []int) (*chooser, bool) {
	ch := &chooser{s: s, on: on}
	ch.enter()
	if len(ch.left) == 0 {
		return ch, false
	}
	last := ch.left[len(ch.left)-1].c
	for _, w := range s.p.wishes {
		ch.wish(w)
	}
	if len(ch.left) > 0 && ch.left[len(ch.left)-1].c != last {
		ch.endless = false // a wish bounds the counts, where no rule does
	}
	ch.mostRails()
	ch.fewestPosts()
	ch.saidLimits()
	ch.nearDefaults(dropped)
	ch.openingWidth()
	ch.evenBays()
	return ch, true
}

// enter lists every cell that holds, rails ascending, posts ascending.
func (ch *chooser) enter() {
	s := ch.s
	if s.f&upField == 0 {
		ch.enterBays(&cell{})
		return
	}
	c := s.p.limits(Rails, ch.on, 1)
	for n := c.lo; n <= c.hi; n++ {
		if _, refused := s.tailRefused(n, ch.on); refused {
			return
		}
		if n-c.lo >= mostRailsListed {
			ch.endless = true
			return
		}
		hit, _ := s.at(n, false, ch.on)
		switch {
		case hit == nil:
			if n < c.hi {
				s.closeRails(n+1, ch.on)
			}
		case s.f == upField:
			ch.left = append(ch.left, candidate{c: &cell{rails: n}})
		default:
			ch.enterBays(&cell{rails: n})
		}
	}
	if c.hi >= most {
		ch.endless = true
	}
}

func (ch *chooser) enterBays(base *cell) {
	s := ch.s
	ks, _ := s.p.openingCounts(ch.on)
	for _, k := range ks {
		before := len(ch.left)
		from := max(s.p.limits(Bays, ch.on, 1).lo, s.p.limits(AddedPosts, ch.on, 0).lo-k+1, 1)
		for b := from; b < from+mostPostsListed+1; b++ {
			s.eachArrangement(base, b, k, ch.on, func(c *cell) {
				if hit, _ := s.try(c, ch.on); hit != nil {
					ch.left = append(ch.left, candidate{c: c})
				}
			})
			if len(ch.left) > before && !ch.wishesAlong() {
				break // the fewest posts are chosen, and no wish looks further
			}
			if len(ch.left) == before && s.noMore(base, b+1, k, ch.on) {
				break
			}
		}
		if len(ch.left) > before {
			return // as many openings as were spoken of come first
		}
	}
	if len(ch.left) == 0 { // only with more posts than the list of options shows
		if hit, _ := s.overBays(ch.on, base, &set{}); hit != nil {
			ch.left = append(ch.left, candidate{c: hit})
		}
	}
}

func (ch *chooser) wishesAlong() bool {
	return slices.ContainsFunc(ch.s.p.wishes, func(w Statement) bool {
		q := w.Name.Quantity
		_, about, goal := GoalOf(w)
		if goal {
			q = about
		}
		return alongQuantities[q] && q != AddedPosts && (goal || !followsBays[q])
	})
}

func (ch *chooser) sheet(i int) *sheet {
	if ch.left[i].sh == nil {
		ch.left[i].sh = ch.s.p.lay(ch.left[i].c, ch.s.f, ch.on, set{}, -1, 0)
	}
	return ch.left[i].sh
}

// followsBays is what is chosen once the bays are, and never chooses them: stiffeners are set into any bay.
var followsBays = map[Quantity]bool{Stiffeners: true, StiffenerSpacing: true}

// wish narrows to what comes nearest to one soft wish or goal.
func (ch *chooser) wish(w Statement) {
	way, q, goal := GoalOf(w)
	if !goal {
		q = w.Name.Quantity
	}
	if fieldOf(q)&ch.s.f == 0 || followsBays[q] && !goal {
		return
	}
	if KindOf(q) == Count {
		ch.wishCount(q, way, w)
		return
	}
	n := w.Name
	if goal {
		n = Name{Quantity: q}
	}
	ch.optimize(func(sh *sheet) ([]exact.Term, bool) { return sh.distance(n, way, w.Value) })
}

// wishCount keeps the cells whose count is nearest to the wish, least or greatest.
func (ch *chooser) wishCount(q Quantity, way int, w Statement) {
	best, kept := exact.Rat{}, []candidate(nil)
	for _, c := range ch.left {
		n, ok := c.c.count(q)
		if !ok {
			continue
		}
		d := exact.Int(-way * n)
		if way == 0 {
			d = exact.Int(n).Sub(w.Value.Num).Abs()
		}
		if kept == nil || d.Less(best) {
			best, kept = d, nil
		}
		if d.Eq(best) {
			kept = append(kept, c)
		}
	}
	if kept == nil || ch.endless && way > 0 && q == Rails {
		return
	}
	ch.left = kept
	if q == Rails {
		ch.endless = false
	}
}

// distance gives an objective to be made least: the distance of a quantity to v (way 0), the greatest of its parts
// (way -1), or its least part with the sign turned (way +1).
func (s *sheet) distance(n Name, way int, v Value) ([]exact.Term, bool) {
	forms := s.forms(n, false)
	if len(forms) == 0 {
		return nil, false
	}
	t := s.fresh()
	s.sys.Vars = s.vars
	for _, f := range forms {
		per := exact.New(1, int64(f.copies))
		mean := f.each(per)
		plus := f.plus.Mul(per)
		if way == 0 {
			targets := []form{{copies: 1}}
			if v.Of != nil {
				targets = s.forms(*v.Of, false)
			}
			for _, g := range targets {
				k := exact.New(1, int64(g.copies)).Mul(v.Factor())
				diff := append(slices.Clone(mean), g.each(k.Neg())...)
				off := v.Num.Add(g.plus.Mul(k)).Sub(plus)
				s.truth(exact.LE, off, append(slices.Clone(diff), minus(t))...)
				s.truth(exact.GE, off, append(slices.Clone(diff), one(t))...)
			}
			continue
		}
		// way −1: t is at least each; way +1: −t is at most each
		if way < 0 {
			s.truth(exact.GE, plus, append([]exact.Term{one(t)}, negate(mean)...)...)
		} else {
			s.truth(exact.GE, plus.Neg(), append([]exact.Term{one(t)}, mean...)...)
		}
	}
	return []exact.Term{one(t)}, true
}

func negate(terms []exact.Term) []exact.Term {
	out := make([]exact.Term, len(terms))
	for i, t := range terms {
		out[i] = exact.Term{Var: t.Var, Coef: t.Coef.Neg()}
	}
	return out
}

// optimize keeps the candidates in which the objective can be least, and fixes it there. An end that cannot be reached
// is taken at the next tape mark inside it.
func (ch *chooser) optimize(objective func(*sheet) ([]exact.Term, bool)) {
	type found struct {
		c    candidate
		obj  []exact.Term
		best exact.Bound
	}
	var all []found
	for i := range ch.left {
		sh := ch.sheet(i)
		obj, ok := objective(sh)
		if !ok {
			return
		}
		b, _ := exact.Prepare(&sh.sys).Min(obj)
		if b.None {
			return // nothing bounds it: the wish cannot choose
		}
		all = append(all, found{ch.left[i], obj, b})
	}
	best := all[0].best
	for _, f := range all[1:] {
		if c := f.best.Val.Cmp(best.Val); c < 0 || c == 0 && best.Open && !f.best.Open {
			best = f.best
		}
	}
	ch.left = ch.left[:0]
	for _, f := range all {
		if f.best.Val.Eq(best.Val) && f.best.Open == best.Open {
			f.c.sh.fix(f.obj, f.best, ch.tape(), +1)
			ch.left = append(ch.left, f.c)
		}
	}
}

func (ch *chooser) tape() exact.Rat { return ch.s.p.tape() }

// millimeter is the mark that somebody who works in metric works to, unless told otherwise; inches.
var millimeter = exact.Int(1).Div(PerInch)

func (p *problem) tape() exact.Rat {
	if t, ok := p.parts[Tape]; ok && t.Sign() > 0 && (p.speaksOf(Tape) || !p.book.Metric()) {
		return t
	}
	if p.book.Metric() {
		return millimeter
	}
	return exact.New(1, 16)
}

// fix sets an objective to its bound; where the bound is not reached, to the next tape mark inside, or else to some
// value inside. way is the direction into the range.
func (s *sheet) fix(obj []exact.Term, b exact.Bound, tape exact.Rat, way int) {
	s.sys.Vars = s.vars
	if !b.Open {
		s.truth(exact.EQ, b.Val, obj...)
		return
	}
	mark := b.Val.Div(tape).Floor().Add(exact.Int(1)).Mul(tape)
	if way < 0 {
		mark = b.Val.Div(tape).Ceil().Sub(exact.Int(1)).Mul(tape)
	}
	at := len(s.sys.Rows)
	s.truth(exact.EQ, mark, obj...)
	if point, _ := exact.Solve(&s.sys); point != nil {
		return
	}
	s.sys.Rows = s.sys.Rows[:at]
	point, _ := exact.Solve(&s.sys)
	s.truth(exact.EQ, valueAt(obj, point), obj...)
}

func valueAt(obj []exact.Term, point []exact.Rat) exact.Rat {
	var v exact.Rat
	for _, t := range obj {
		v = v.Add(t.Coef.Mul(point[t.Var]))
	}
	return v
}

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

// settled reads the chosen candidate: its point, and whether each of the unknowns can be one value only.
func (ch *chooser) settled() (sh *sheet, point []exact.Rat, fixed func(v int) bool) {
	sh = ch.sheet(0)
	prep := exact.Prepare(&sh.sys)
	return sh, prep.Point(), func(v int) bool {
		lo, _ := prep.Min([]exact.Term{one(v)})
		hi, _ := prep.Max([]exact.Term{one(v)})
		return !lo.None && !hi.None && lo.Val.Eq(hi.Val)
	}
}
