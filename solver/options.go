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
