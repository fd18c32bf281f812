package solver

import (
	"slices"

	"saywright/solver/exact"
)

// The list of options stops here; the verdict does not.
const (
	mostRailsListed = 60
	mostPostsListed = 16
)

// listUp lists every rail count that can hold under the laws that are on, with the range left to each height.
func (s *search) listUp(on set) []UpOption {
	var out []UpOption
	c := s.p.limits(Rails, on, 1)
	for n := c.lo; n <= min(c.hi, mostRailsListed); n++ {
		if _, refused := s.tailRefused(n, on); refused {
			break
		}
		if o, ok := s.upOption(n, on); ok {
			out = append(out, o)
		} else if n < c.hi {
			s.closeRails(n+1, on)
		}
	}
	return out
}

func (s *search) upOption(n int, on set) (UpOption, bool) {
	o := UpOption{Rails: n}
	first := true
	widest := s.widestHeights(n, on)
	s.eachCell(&cell{rails: n}, on, func(c *cell) {
		sh, prep := s.prepare(c, on, set{})
		if prep.Feasible() {
			o = o.with(sh.heights(prep), first)
			first = false
		}
	}, func() bool { return widest != nil && !first && o.same(*widest) })
	return o, !first
}

// heights are the ranges that a decided cell leaves to the heights.
func (s *sheet) heights(prep *exact.Prepared) UpOption {
	gap := vGap
	if len(s.segs) > 1 && s.gapsIn(0) == 0 {
		gap = s.segs[1]
	}
	return UpOption{Rails: s.c.rails, Gap: rangeOf(prep, gap), BottomGap: rangeOf(prep, vBottom), WallHeight: rangeOf(prep, vHeight)}
}

func (o UpOption) with(p UpOption, first bool) UpOption {
	return UpOption{Rails: p.Rails, Gap: widen(o.Gap, p.Gap, first), BottomGap: widen(o.BottomGap, p.BottomGap, first),
		WallHeight: widen(o.WallHeight, p.WallHeight, first)}
}

func (o UpOption) same(p UpOption) bool {
	return o.Gap.same(p.Gap) && o.BottomGap.same(p.BottomGap) && o.WallHeight.same(p.WallHeight)
}

// widestHeights is what the heights can be at most with n rails, all arrangements along the wall taken together, where the
// fields are linked; nil where they are not.
func (s *search) widestHeights(n int, on set) (out *UpOption) {
	if s.f == upField {
		return nil
	}
	ks, _ := s.p.openingCounts(on)
	for _, k := range ks {
		root, _, ok := s.root(&cell{rails: n}, k, on)
		if !ok || !root.tighten() {
			continue
		}
		if sh, prep := s.prepare(root, on, set{}); prep.Feasible() {
			o := sh.heights(prep)
			if out != nil {
				o = out.with(o, false)
			}
			out = &o
		}
	}
	return out
}

// eachCell runs through the cells of a rail count, until it is enough: one, or all arrangements along the wall where the
// fields are linked.
func (s *search) eachCell(base *cell, on set, at func(*cell), enough func() bool) {
	if s.f == upField {
		if _, refused := s.untied(base, on); !refused {
			at(base)
		}
		return
	}
	ks, _ := s.p.openingCounts(on)
	for _, k := range ks {
		for b := 1; b+k-1 <= mostPostsListed; b++ {
			s.eachArrangement(base, b, k, on, at)
			if enough() {
				return
			}
			if s.noMore(base, b+1, k, on) {
				break
			}
		}
	}
}

// eachArrangement visits every arrangement of b bays and k openings that may hold, rightmost openings first.
func (s *search) eachArrangement(base *cell, b, k int, on set, at func(*cell)) {
	root, _, ok := s.root(base, k, on)
	if !ok || b < root.bays.lo || b > root.bays.hi {
		return
	}
	all := s.open(base, k, tally{b, b})
	s.p.pinSides(all, on)
	if !all.tighten() {
		return
	}
	if all.exact() && (s.unshared || !s.p.bindsSpacing(on).both()) {
		if _, refused := s.untied(all, on); !refused {
			at(all) // one arrangement: whether it holds is found where it is used
		}
		return
	}
	var found []*cell
	var core set
	s.branch(all, on, &core, func(c *cell) bool {
		found = append(found, c)
		return !s.outOfWork()
	})
	slices.SortStableFunc(found, func(x, y *cell) int {
		return slices.CompareFunc(y.segs, x.segs, func(p, q tally) int { return p.lo - q.lo })
	})
	for _, c := range found {
		at(c)
	}
}

// pinSides leaves out the arrangements with bays between an opening and the end post that it is told to stand against:
// each such bay would have no width. Only lists of what holds take this short cut; a proof refuses each by its own sum.
func (p *problem) pinSides(c *cell, on set) {
	groups := p.segments(c.openings)
	for i := range p.laws {
		s := &p.laws[i].said
		if !on.has(i) || s.Name.Quantity != OpeningSide || s.Value.Word == "middle" {
			continue
		}
		opening := s.Name.Opening
		if opening == 0 && s.Value.Word == "left" {
			opening = 1
		} else if opening == 0 {
			opening = c.openings
		}
		at := slices.IndexFunc(groups, func(g []int) bool { return slices.Contains(g, opening) })
		for j := range c.segs {
			if at >= 0 && (s.Value.Word == "left" && j <= at || s.Value.Word == "right" && j > at) {
				c.segs[j] = tally{}
			}
		}
	}
}

// noMore reports whether b bays or more, with k openings, are refused outright.
func (s *search) noMore(base *cell, b, k int, on set) bool {
	root, _, ok := s.root(base, k, on)
	if !ok || b > root.bays.hi {
		return true
	}
	c := s.open(base, k, tally{max(b, root.bays.lo), root.bays.hi})
	if !c.tighten() {
		return true
	}
	hit, _ := s.try(c, on)
	return hit == nil
}

// prepare builds and decides the system of a cell. It is good until the next one is built.
func (s *search) prepare(c *cell, on, solo set) (*sheet, *exact.Prepared) {
	s.solves()
	sh := s.p.layIn(&s.room, c, s.f, on, solo, -1, 0)
	return sh, exact.Prepare(&sh.sys)
}

// listAlong lists every number of posts and bays that can hold, fewest posts first.
func (s *search) listAlong(on set) []AlongOption {
	var out []AlongOption
	ks, _ := s.p.openingCounts(on)
	slices.Sort(ks)
	for _, k := range ks {
		for b := 1; b+k-1 <= mostPostsListed; b++ {
			if o, ok := s.alongOption(b, k, on); ok {
				out = append(out, o)
			} else if s.f == alongField && s.noMore(&cell{}, b+1, k, on) {
				break
			}
		}
	}
	slices.SortStableFunc(out, func(x, y AlongOption) int { return x.AddedPosts - y.AddedPosts })
	return out
}

func (s *search) alongOption(b, k int, on set) (AlongOption, bool) {
	o := AlongOption{AddedPosts: b + k - 1, Bays: b, Openings: k}
	first := true
	var opening Range
	visit := func(c *cell) {
		if s.cellRanges(c, on, &o.Bay, &opening, first) {
			first = false
		}
	}
	s.unshared = true
	if s.f == alongField {
		s.untilWidest(b, k, on, &o.Bay, &opening, visit)
	} else {
		s.overHeights(b, k, on, &o.Bay, &opening, visit)
	}
	s.unshared = false
	if first {
		return o, false
	}
	if k > 0 {
		o.Opening = &opening
	}
	o.Stiffeners = s.p.fewestStiffeners(o.Bay, on)
	return o, true
}

// untilWidest visits the arrangements of b bays and k openings until their ranges are as wide as those of all of them
// taken together, which no arrangement can exceed.
func (s *search) untilWidest(b, k int, on set, bay, opening *Range, visit func(*cell)) {
	root, _, ok := s.root(&cell{}, k, on)
	if !ok || b < root.bays.lo || b > root.bays.hi {
		return
	}
	all := s.open(&cell{}, k, tally{b, b})
	s.p.pinSides(all, on)
	if !all.tighten() || all.exact() || s.p.bindsSpacing(on).both() {
		s.eachArrangement(&cell{}, b, k, on, visit)
		return
	}
	sh, prep := s.prepare(all, on, set{})
	if !prep.Feasible() {
		return
	}
	widestBay, widestOpening := sh.lengths(prep)
	s.learn(all, on, sh.cutAt(prep.Point()))
	s.listing = true // whether an arrangement holds is found with its ranges
	defer func() { s.listing = false }()
	var core set
	s.branch(all, on, &core, func(c *cell) bool {
		visit(c)
		return !s.outOfWork() && (!bay.same(widestBay) || k > 0 && !opening.same(widestOpening))
	})
}

func (r Range) same(t Range) bool { return r[0].same(t[0]) && r[1].same(t[1]) }

func (e End) same(f End) bool {
	return e.None == f.None && e.Open == f.Open && (e.None || e.Val.Eq(f.Val))
}

// widestLengths is what a bay and an opening can be at most with so many bays and openings, all arrangements taken together;
// ok is false where none holds. A bay without a range is not known.
func (s *search) widestLengths(base *cell, b, k int, on set) (bay, opening Range, ok bool) {
	root, _, ok := s.root(base, k, on)
	if !ok || b < root.bays.lo || b > root.bays.hi {
		return bay, opening, false
	}
	all := s.open(base, k, tally{b, b})
	if !all.tighten() {
		return bay, opening, false
	}
	if all.exact() {
		return bay, opening, true // its bays are not taken together: nothing is known of their widest
	}
	sh, prep := s.prepare(all, on, set{})
	if !prep.Feasible() {
		return bay, opening, false
	}
	bay, opening = sh.lengths(prep)
	return bay, opening, true
}

// lengths are what a decided cell that stands for many leaves to any one bay, and to its openings.
func (s *sheet) lengths(prep *exact.Prepared) (bay, opening Range) {
	for i, v := range s.open {
		opening = widen(opening, rangeOf(prep, v), i == 0)
	}
	return rangeOf(prep, vBay), opening
}

// overHeights runs through the arrangements of one number of bays and openings, at every rail count, until their ranges are
// as wide as can be.
func (s *search) overHeights(b, k int, on set, bay, opening *Range, at func(*cell)) {
	c := s.p.limits(Rails, on, 1)
	widestBay, widestOpening, ok := s.widestLengths(&cell{rails: c.lo, more: c.hi > c.lo}, b, k, on)
	if !ok {
		return
	}
	for n := c.lo; n <= min(c.hi, mostRailsListed); n++ {
		if _, refused := s.tailRefused(n, on); refused {
			return
		}
		if hit, _ := s.at(n, false, on); hit == nil {
			if n < c.hi {
				s.closeRails(n+1, on)
			}
			continue
		}
		s.eachArrangement(&cell{rails: n}, b, k, on, at)
		if known := !widestBay.same(Range{}); known && bay.same(widestBay) && (k == 0 || opening.same(widestOpening)) {
			return // ranges of several counts can be no wider
		}
	}
}

// cellRanges widens bay by what any one bay of the cell can be, and opening by what any opening can; false where the
// cell cannot hold. One bay of each run is made an unknown of its own.
func (s *search) cellRanges(c *cell, on set, bay, opening *Range, first bool) bool {
	plain := sheet{p: s.p, c: c}
	held := false
	for _, pc := range plain.cutPieces() {
		if pc.opening > 0 {
			continue
		}
		var solo set
		if pc.first < maxLaws {
			solo.add(pc.first)
		}
		sh, prep := s.prepare(c, on, solo)
		if !prep.Feasible() {
			return false
		}
		ends := func(of func(*sheet) int) Range { return rangeOf(prep, of(sh)) }
		if s.p.bindsSpacing(on).both() {
			if _, some := s.extreme(c, on, solo, (*sheet).spanOf, -1); !some {
				return false
			}
			ends = func(of func(*sheet) int) Range { return s.rangeOver(c, on, solo, of) }
		}
		for i := range sh.open {
			if !held {
				*opening = widen(*opening, ends(func(sh *sheet) int { return sh.open[i] }), first && i == 0)
			}
		}
		*bay = widen(*bay, ends(func(sh *sheet) int { return sh.bayFrom(pc.first) }), first && !held)
		held = true
	}
	return held
}

func (s *sheet) spanOf() int { return vSpan }

// bayFrom is the unknown of the piece that starts at a bay.
func (s *sheet) bayFrom(bay int) int {
	at := slices.IndexFunc(s.pieces, func(pc piece) bool { return pc.opening == 0 && pc.first == bay })
	return s.pieces[at].v
}

// rangeOver is the range of an unknown over all numbers of stiffeners.
func (s *search) rangeOver(c *cell, on, solo set, of func(*sheet) int) Range {
	lo, _ := s.extreme(c, on, solo, of, -1)
	hi, _ := s.extreme(c, on, solo, of, 1)
	lo.Lower = true
	return Range{lo, hi}
}

// extreme is the least (way −1) or greatest value of an unknown over all numbers of stiffeners in the cell's bays, by branch
// and bound; some is false where none holds.
func (s *search) extreme(c *cell, on, solo set, of func(*sheet) int, way int) (best End, some bool) {
	var walk func(c *cell)
	walk = func(c *cell) {
		sh, prep := s.prepare(c, on, solo)
		if s.outOfWork() || !prep.Feasible() {
			return
		}
		obj := []exact.Term{one(of(sh))}
		b, point := prep.MinPoint(obj)
		if way > 0 {
			b, point = prep.MaxPoint(obj)
		}
		e := End{Val: b.Val, Open: b.Open, None: b.None, Lower: way < 0}
		if some && outer(best, e, way).same(best) {
			return
		}
		if b.None || sh.openRun() < 0 {
			best, some = e, true
			return
		}
		low, high := c.partedSpaces(sh.spaceCut(point))
		walk(low)
		walk(high)
	}
	walk(c)
	return best, some
}

func rangeOf(p *exact.Prepared, v int) Range {
	obj := []exact.Term{one(v)}
	lo, _ := p.Min(obj)
	hi, _ := p.Max(obj)
	return Range{{Val: lo.Val, Open: lo.Open, None: lo.None, Lower: true}, {Val: hi.Val, Open: hi.Open, None: hi.None}}
}

// widen is the least range that holds both; first: there is none yet.
func widen(a, b Range, first bool) Range {
	if first {
		return b
	}
	return Range{outer(a[0], b[0], -1), outer(a[1], b[1], 1)}
}

func outer(a, b End, way int) End {
	switch {
	case a.None || b.None:
		return End{None: true, Lower: a.Lower}
	case a.Val.Eq(b.Val):
		a.Open = a.Open && b.Open
		return a
	case a.Val.Cmp(b.Val) == way:
		return a
	}
	return b
}

// spacingLimit is the most that stiffeners may stand apart under the laws that are on.
func (p *problem) spacingLimit(on set, bay int) (limit exact.Rat, strict, found bool) {
	for i := range p.laws {
		s := p.laws[i].said
		if !on.has(i) || s.Name.Quantity != StiffenerSpacing || s.Value.Of != nil || s.Op == GE || s.Op == GT {
			continue
		}
		if s.Name.Bay > 0 && s.Name.Bay != bay {
			continue
		}
		v := s.Value.Num
		if s.Op == In {
			v = s.Upper.Num
		}
		if !found || v.Less(limit) {
			limit, strict, found = v, s.Op == LT, true
		}
	}
	return limit, strict, found
}

// fewestStiffeners is the fewest at the two ends of a bay's range, as their spacing asks for; nil where nothing says how
// far apart they may be.
func (p *problem) fewestStiffeners(bay Range, on set) []int {
	limit, strict, found := p.spacingLimit(on, 0)
	if !found || limit.Sign() <= 0 || bay[1].None {
		return nil
	}
	return []int{fewest(bay[0].Val, limit, strict), fewest(bay[1].Val, limit, strict)}
}

// fewest is the least m with width/(m+1) at most (strict: less than) the limit.
func fewest(width, limit exact.Rat, strict bool) int {
	q := width.Div(limit)
	m := whole(q.Ceil()) - 1
	if strict && q.IsInt() {
		m++
	}
	return max(m, 0)
}
