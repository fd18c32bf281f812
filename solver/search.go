package solver

import (
	"slices"

	"saywright/solver/exact"
)

// search decides one field of a problem: whether a set of laws can hold together, over all counts. It remembers, for
// each cell, which laws refused it and which it could hold, so that asking again after a law was dropped costs nothing.
type search struct {
	p     *problem
	f     field
	all   set // every law of the field
	cells map[string]*memory
	tails []tailRefusal
	work  int  // systems solved so far
	spent bool // the limit on work was reached
	// record, where set, is shown every refused system with its certificate
	record func(*sheet, exact.Certificate)
}

// memory is what was learned of a cell.
type memory struct {
	refused []set // each refuses the cell
	held    []set // each can hold in the cell
}

// tailRefusal: with from rails (or bays, under so many openings) or more, by refuses.
type tailRefusal struct {
	rails, bays, openings int
	by                    set
}

// workLimit bounds the systems that one question may solve. An ordinary wall takes some hundreds.
const workLimit = 60000

func newSearch(p *problem, f field) *search {
	s := &search{p: p, f: f, cells: map[string]*memory{}}
	for i := range p.laws {
		if p.laws[i].field&f != 0 {
			s.all.add(i)
		}
	}
	return s
}

// feasible reports whether the laws that are on can hold together; if so in which cell, and if not which of them
// already refuse (a core that may be larger than need be).
func (s *search) feasible(on set) (*cell, set) {
	var core set
	switch s.f {
	case upField:
		return s.overRails(on, func(n int, more bool) (*cell, set) { return s.try(&cell{rails: n, more: more}, on) }, &core)
	case alongField:
		return s.overBays(on, &cell{}, &core)
	}
	return s.overRails(on, func(n int, more bool) (*cell, set) {
		var inner set
		return s.overBays(on, &cell{rails: n, more: more}, &inner)
	}, &core)
}

// overRails runs through the rail counts, least first, until one holds or "this many or more" is refused.
func (s *search) overRails(on set, at func(n int, more bool) (*cell, set), core *set) (*cell, set) {
	c := s.p.limits(Rails, on, 1)
	if c.lo > 1 {
		*core = core.union(c.byLow)
	}
	for n := c.lo; ; n++ {
		if n > c.hi {
			*core = core.union(c.byTop)
			return nil, *core
		}
		if by, ok := s.tailRefused(n, 0, 0, on); ok {
			*core = core.union(by)
			return nil, *core
		}
		hit, by := at(n, false)
		if hit != nil {
			return hit, set{}
		}
		*core = core.union(by)
		if n == c.hi || s.outOfWork() {
			continue
		}
		if _, by := at(n+1, true); !by.empty() {
			s.refuseTail(tailRefusal{rails: n + 1, by: by})
		}
	}
}

func (s *search) outOfWork() bool {
	s.spent = s.spent || s.work > workLimit
	return s.spent
}

func (s *search) tailRefused(rails, bays, openings int, on set) (set, bool) {
	for _, t := range s.tails {
		if (t.rails > 0 && t.rails <= rails && bays == 0 || t.bays > 0 && t.bays <= bays && t.openings == openings && (t.rails == 0 || t.rails == rails)) && t.by.within(on) {
			return t.by, true
		}
	}
	return set{}, false
}

func (s *search) refuseTail(t tailRefusal) { s.tails = append(s.tails, t) }

// overBays runs through the openings and the bays, fewest first, and through every arrangement of them.
func (s *search) overBays(on set, base *cell, core *set) (*cell, set) {
	ks, by := s.p.openingCounts(on)
	*core = core.union(by)
	for _, k := range ks {
		if hit := s.overBaysWith(on, base, k, core); hit != nil {
			return hit, set{}
		}
	}
	return nil, *core
}

func (s *search) overBaysWith(on set, base *cell, k int, core *set) *cell {
	bays, posts := s.p.limits(Bays, on, 1), s.p.limits(AddedPosts, on, 0)
	if bays.lo > 1 {
		*core = core.union(bays.byLow)
	}
	lo, hi := bays.lo, bays.hi
	if from := posts.lo - k + 1; from > lo {
		*core = core.union(posts.byLow)
		lo = from
	}
	top := bays.byTop
	if to := posts.hi - k + 1; posts.hi < most && to < hi {
		hi, top = to, posts.byTop
	}
	for b := lo; ; b++ {
		if b > hi {
			*core = core.union(top)
			return nil
		}
		tail := *base
		tail.bays, tail.openings, tail.further = b, k, true
		by, refused := s.tailRefused(base.rails, b, k, on)
		if !refused && !s.outOfWork() {
			if _, by = s.try(&tail, on); !by.empty() {
				refused = true
				s.refuseTail(tailRefusal{rails: base.rails, bays: b, openings: k, by: by})
			}
		}
		if refused {
			*core = core.union(by)
			return nil
		}
		if base.more {
			// A cell that stands for more rails is not a layout: that its lengths can hold is all that is asked.
			tail.further = false
			return &tail
		}
		if hit := s.arrangements(on, base, b, k, core); hit != nil {
			return hit
		}
		if s.spent {
			return nil
		}
	}
}

// arrangements tries every place of the openings among the bays, and every way to share out stiffeners where that matters.
func (s *search) arrangements(on set, base *cell, b, k int, core *set) *cell {
	var hit *cell
	s.p.arrange(b, k, on, func(left []int) bool {
		return s.p.stiffen(b, on, s, left, base, k, func(stiff []int) bool {
			c := *base
			c.bays, c.openings, c.left, c.stiff = b, k, left, stiff
			found, by := s.try(&c, on)
			if found != nil {
				hit = found
				return false
			}
			*core = core.union(by)
			return !s.outOfWork()
		})
	})
	return hit
}

// arrange calls at with the number of bays left of each opening, for every arrangement that a law can tell apart, until
// at returns false. Openings whose place no law speaks of stand at the right end.
func (p *problem) arrange(b, k int, on set, at func([]int) bool) {
	watched := make([]bool, k)
	for i := range k {
		watched[i] = p.watches(i+1, k)
	}
	left := make([]int, k)
	var place func(i, from int) bool
	place = func(i, from int) bool {
		if i == k {
			return at(slices.Clone(left))
		}
		if !watched[i] {
			left[i] = b
			if next := nextWatched(watched, i); next >= 0 { // it must not pass a neighbor whose place is watched
				left[i] = from
			}
			return place(i+1, left[i])
		}
		for j := b; j >= from; j-- {
			left[i] = j
			if !place(i+1, j) {
				return false
			}
		}
		return true
	}
	place(0, 0)
}

func nextWatched(watched []bool, i int) int {
	for j := i + 1; j < len(watched); j++ {
		if watched[j] {
			return j
		}
	}
	return -1
}

// watches reports whether a law speaks of the place of opening i among k, or names posts or bays, which makes every
// arrangement another one.
func (p *problem) watches(i, k int) bool {
	first, last := i == 1, i == k
	return p.names(func(n Name) bool {
		switch n.Quantity {
		case OpeningFromLeft:
			return n.Opening == i || n.Opening == 0 && first
		case OpeningFromRight:
			return n.Opening == i || n.Opening == 0 && last
		case OpeningSide:
			return n.Opening == i || n.Opening == 0 && (first || last)
		case PostFromLeft, PostFromRight:
			return true
		}
		return false
	})
}

// stiffen calls at with the stiffeners of each bay. Only where both ends of their spacing are bound does the number
// choose the bay's length, and each way to share them out is a case of its own.
func (p *problem) stiffen(b int, on set, s *search, left []int, base *cell, k int, at func([]int) bool) bool {
	if !p.bindsSpacing(on) {
		return at(nil)
	}
	c := p.stiffenerLimits(on, 0, false)
	top := min(c.hi, c.lo+s.mostStiffeners(b, k, on, base))
	m := make([]int, b)
	var share func(i int) bool
	share = func(i int) bool {
		if i == b {
			return at(slices.Clone(m))
		}
		from := c.lo
		if i > 0 && !p.namesBay(i) && !p.namesBay(i+1) && !slices.Contains(left, i) {
			from = m[i-1] // bays that nothing tells apart: each sharing once
		}
		for m[i] = from; m[i] <= top; m[i]++ {
			if !share(i + 1) {
				return false
			}
		}
		return true
	}
	return share(0)
}

// bindsSpacing reports whether a law that is on keeps stiffeners from standing too close: then more of them is not
// always better.
func (p *problem) bindsSpacing(on set) bool {
	for i := range p.laws {
		s := p.laws[i].said
		if on.has(i) && s.Name.Quantity == StiffenerSpacing && s.Op != LE && s.Op != LT {
			return true
		}
	}
	return false
}

// mostStiffeners is how many the longest bay could take at their least spacing: beyond it a further one only makes a
// bay longer than any bay can be.
func (s *search) mostStiffeners(b, k int, on set, base *cell) int {
	var least *exact.Rat
	for i := range s.p.laws {
		st := s.p.laws[i].said
		if on.has(i) && st.Name.Quantity == StiffenerSpacing && st.Value.Of == nil && st.Op != LE && st.Op != LT {
			v := st.Value.Num
			if least == nil || v.Less(*least) {
				least = &v
			}
		}
	}
	if least == nil || least.Sign() <= 0 {
		return 12
	}
	free := on
	for i := range s.p.laws {
		if q := s.p.laws[i].said.Name.Quantity; q == StiffenerSpacing || q == Stiffeners {
			free.remove(i)
		}
	}
	c := *base
	c.bays, c.openings, c.further = b, k, true
	sh := s.p.lay(&c, s.f, free, set{}, -1, 0)
	top, _ := exact.Prepare(&sh.sys).Max([]exact.Term{one(vSpan)})
	if top.None {
		return 12
	}
	return min(whole(top.Val.Div(*least).Ceil()), 400)
}

// try solves one cell under the laws that are on, unless what is known of it settles it.
func (s *search) try(c *cell, on set) (*cell, set) {
	key := c.key()
	m := s.cells[key]
	if m == nil {
		m = &memory{}
		s.cells[key] = m
	}
	for _, r := range m.refused {
		if r.within(on) {
			return nil, r
		}
	}
	for _, h := range m.held {
		if on.within(h) {
			return c, set{}
		}
	}
	if by, ok := s.untied(c, on); ok {
		m.refused = append(m.refused, by)
		return nil, by
	}
	s.work++
	sh := s.p.lay(c, s.f, on, set{}, -1, 0)
	_, cert := exact.Solve(&sh.sys)
	if cert == nil {
		m.held = append(m.held, on)
		return c, set{}
	}
	if s.record != nil {
		s.record(sh, cert)
	}
	by := s.blame(sh, cert)
	m.refused = append(m.refused, by)
	return nil, by
}

// untied: a law that ties counts refuses the cell by itself.
func (s *search) untied(c *cell, on set) (set, bool) {
	for i := range s.p.laws {
		if on.has(i) && s.all.has(i) && !s.p.tied(i, c) {
			var by set
			by.add(i)
			return by, true
		}
	}
	return set{}, false
}

// blame turns a certificate into the laws that take part; a spacing that refuses does so with the laws on the number.
func (s *search) blame(sh *sheet, cert exact.Certificate) set {
	var by set
	for _, i := range cert.Rules(&sh.sys) {
		by.add(i)
		if s.p.laws[i].said.Name.Quantity == StiffenerSpacing {
			by = by.union(s.p.stiffenerLaws(sh.on))
		}
	}
	return by
}
