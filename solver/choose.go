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
