package solver

import (
	"slices"

	"saywright/solver/exact"
)

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
