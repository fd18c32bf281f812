package solver

import (
	"slices"

	"saywright/solver/exact"
)

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
