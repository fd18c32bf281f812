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
	work  int // systems solved so far
	// listing: cells with fixed counts are visited unsolved
	listing bool
	// unshared: cells with fixed counts are visited once that some number of stiffeners holds
	unshared bool
	spent    bool // the limit on work was reached
	putOff   bool // cells were left that could go on for ever
	endless  int  // how often such a cell was parted
	room     buffers
	// record, where set, is shown every refused system with its certificate
	record func(*sheet, exact.Certificate)
}

// memory is what was learned of a cell.
type memory struct {
	refused []set // each refuses the cell
	held    []set // each can hold in the cell
	split   cut   // where a cell that stands for many was parted
}

// tailRefusal: with from rails or more, by refuses.
type tailRefusal struct {
	rails int
	by    set
}

// workLimit bounds the systems that one question may solve. An ordinary wall takes some hundreds.
const workLimit = 30000

// answerLimit bounds what one answer may solve, over all its questions.
const answerLimit = 60000

func (s *search) solves() {
	s.work++
	*s.p.spent++
}

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
func (s *search) feasible(on set) (hit *cell, core set) {
	s.putOff = false
	if s.f == alongField {
		hit, _ = s.overBays(on, &cell{}, &core)
	} else {
		hit, _ = s.overRails(on, &core)
	}
	s.spent = s.spent || hit == nil && s.putOff
	return hit, core
}

// overRails runs through the rail counts, least first, until one holds or "this many or more" is refused.
func (s *search) overRails(on set, core *set) (*cell, set) {
	c := s.p.limits(Rails, on, 1)
	if c.lo > 1 {
		*core = core.union(c.byLow)
	}
	for n := c.lo; ; n++ {
		if n > c.hi {
			*core = core.union(c.byTop)
			return nil, *core
		}
		if by, ok := s.tailRefused(n, on); ok {
			*core = core.union(by)
			return nil, *core
		}
		hit, by := s.at(n, false, on)
		if hit != nil {
			return hit, set{}
		}
		*core = core.union(by)
		if n < c.hi && !s.outOfWork() {
			s.closeRails(n+1, on)
		}
		if s.spent {
			return nil, *core
		}
	}
}

// at decides one rail count (more: that many or more), over all arrangements where the fields are linked.
func (s *search) at(n int, more bool, on set) (*cell, set) {
	base := &cell{rails: n, more: more}
	if s.f == upField {
		return s.try(base, on)
	}
	var core set
	return s.overBays(on, base, &core)
}

// closeRails notes if n rails or more are refused.
func (s *search) closeRails(n int, on set) {
	if hit, by := s.at(n, true, on); hit == nil && !s.spent {
		s.tails = append(s.tails, tailRefusal{rails: n, by: by})
	}
}

func (s *search) outOfWork() bool {
	s.spent = s.spent || s.work > workLimit || *s.p.spent > answerLimit
	return s.spent
}

func (s *search) tailRefused(rails int, on set) (set, bool) {
	for _, t := range s.tails {
		if t.rails <= rails && t.by.within(on) {
			return t.by, true
		}
	}
	return set{}, false
}

// overBays runs through the openings, and for each through all counts of bays in every segment.
func (s *search) overBays(on set, base *cell, core *set) (*cell, set) {
	ks, by := s.p.openingCounts(on)
	*core = core.union(by)
	for _, k := range ks {
		root, by, ok := s.root(base, k, on)
		*core = core.union(by)
		if !ok {
			continue
		}
		var hit *cell
		s.branch(root, on, core, func(c *cell) bool { hit = c; return false })
		if hit != nil {
			return hit, set{}
		}
	}
	return nil, *core
}

// root is the cell of all bay counts that the laws on counts leave, with k openings. ok is false where they leave none.
func (s *search) root(base *cell, k int, on set) (c *cell, by set, ok bool) {
	bays, posts := s.p.limits(Bays, on, 1), s.p.limits(AddedPosts, on, 0)
	lo, hi := bays.lo, bays.hi
	if lo > 1 {
		by = by.union(bays.byLow)
	}
	if from := posts.lo - k + 1; from > lo {
		lo, by = from, by.union(posts.byLow)
	}
	if hi < most {
		by = by.union(bays.byTop)
	}
	if posts.hi < most {
		hi, by = min(hi, posts.hi-k+1), by.union(posts.byTop)
	}
	if clash, none := s.p.stiffenersClash(on); none {
		return nil, clash, false
	}
	t, ties := s.p.tiedBays(base, k, tally{lo, hi}, on)
	return s.open(base, k, t), by.union(ties), t.lo <= t.hi
}

// open is the cell of so many bays in all, shared out among the segments in any way.
func (s *search) open(base *cell, k int, bays tally) *cell {
	c := *base
	c.openings, c.bays = k, bays
	n := len(s.p.segments(k))
	c.segs = make([]tally, n)
	for i := range c.segs {
		c.segs[i] = tally{0, bays.hi}
	}
	if n == 1 {
		c.segs[0].lo = bays.lo
	}
	return &c
}

// branch visits every cell with fixed counts inside c that can hold, until visit returns false; it adds to core the laws
// that refuse the rest. A cell is parted where its own solution lies between two counts, so that neither part holds it.
func (s *search) branch(c *cell, on set, core *set, visit func(*cell) bool) bool {
	if !c.tighten() {
		return true // the counts themselves leave nothing, whatever the laws
	}
	if s.listing && c.exact() {
		if _, refused := s.untied(c, on); refused {
			return true
		}
		return visit(c)
	}
	hit, by := s.try(c, on)
	if hit == nil {
		*core = core.union(by)
		return true
	}
	if c.exact() {
		return s.share(c, on, core, visit)
	}
	if by, none := s.noSpaces(c, on); none {
		*core = core.union(by)
		return true
	}
	if s.outOfWork() {
		return false
	}
	low, high := c.parted(s.cells[c.key()].split)
	return s.branch(low, on, core, visit) && s.branch(high, on, core, visit)
}

// cut is where a cell is parted: segment seg (−1: all bays together) at most at, or more. In a cell with fixed counts it is
// the spaces of a run of bays that are parted.
type cut struct {
	seg, at int
	spaces  []tally // of each run
}

// parted splits a cell in two.
func (c *cell) parted(k cut) (low, high *cell) {
	if c.exact() {
		return c.partedSpaces(k)
	}
	a, b := *c, *c
	if k.seg < 0 {
		a.bays.hi, b.bays.lo = k.at, k.at+1
		a.segs, b.segs = slices.Clone(c.segs), slices.Clone(c.segs)
		return &a, &b
	}
	a.segs, b.segs = slices.Clone(c.segs), slices.Clone(c.segs)
	a.segs[k.seg].hi, b.segs[k.seg].lo = k.at, k.at+1
	return &a, &b
}

// tighten makes the counts of segments and of the whole agree; false where they cannot.
func (c *cell) tighten() bool {
	for range len(c.segs) + 1 {
		lo, hi := 0, 0
		for _, b := range c.segs {
			lo, hi = lo+b.lo, min(most, hi+b.hi)
		}
		c.bays.lo, c.bays.hi = max(c.bays.lo, lo), min(c.bays.hi, hi)
		if c.bays.lo > c.bays.hi {
			return false
		}
		for i := range c.segs {
			b := &c.segs[i]
			if rest := hi - b.hi; hi < most {
				b.lo = max(b.lo, c.bays.lo-rest)
			}
			if c.bays.hi < most {
				b.hi = min(b.hi, c.bays.hi-(lo-b.lo))
			}
			if b.lo > b.hi {
				return false
			}
		}
	}
	return true
}

// cutAt finds where to part a cell: in the segment that was parted least so far, where its solution has the posts lie
// between two counts if it does, else behind its least. So no segment is put off for ever.
func (s *sheet) cutAt(point []exact.Rat) cut {
	if s.c.exact() && s.f&alongField != 0 {
		return s.spaceCut(point)
	}
	if s.posts == nil {
		return cut{}
	}
	best, at, between := -1, 0, false
	for i, b := range s.c.segs {
		if b.exact() {
			continue
		}
		f, frac := b.lo, false
		if pa := point[vPost]; pa.Sign() > 0 {
			n := point[s.posts[i]].Div(pa)
			f, frac = min(max(whole(n.Floor()), b.lo), b.hi-1), !n.IsInt()
		}
		if b.lo == 0 { // none at all is a case of its own: such a segment has no length
			return cut{seg: i, at: f}
		}
		if best < 0 || frac && !between || frac == between && b.lo < s.c.segs[best].lo {
			best, at, between = i, f, frac
		}
	}
	if best < 0 {
		return cut{seg: -1, at: s.c.bays.lo}
	}
	return cut{seg: best, at: at}
}

// watches reports whether a law speaks of the place of opening i among k, or names posts, which makes every arrangement
// another one.
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
	s.solves()
	room := &s.room
	if s.record != nil {
		room = &buffers{} // what is recorded is kept
	}
	sh := s.p.layIn(room, c, s.f, on, set{}, -1, 0)
	point, cert := exact.Solve(&sh.sys)
	if cert == nil {
		m.held, m.split = append(m.held, on), sh.cutAt(point)
		return c, set{}
	}
	if s.record != nil {
		s.record(sh, cert)
	}
	by := s.blame(sh, cert)
	m.refused = append(m.refused, by)
	return nil, by
}

// learn notes that a cell can hold, and where to part it.
func (s *search) learn(c *cell, on set, at cut) {
	key := c.key()
	m := s.cells[key]
	if m == nil {
		m = &memory{}
		s.cells[key] = m
	}
	m.held, m.split = append(m.held, on), at
}

// untied: a law that ties counts, or that names a part the cell has not, refuses the cell by itself.
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
