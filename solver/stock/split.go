package stock

import (
	"container/heap"
	"fmt"
	"math"
)

// loose is how far from whole a number must be to be split on.
const loose = 1e-5

// fraction is the distance from the nearest whole number.
func fraction(x float64) float64 { return math.Abs(x - math.Round(x)) }

func allWhole(x []float64) bool {
	for _, v := range x {
		if fraction(v) > loose {
			return false
		}
	}
	return true
}

// open looks into a box that may hold something below the aim, and splits it. It returns the part to look into next, if any.
func (s *search) open(q *queue, b *box) *box {
	if !b.checked && (b.skip == 0 || allWhole(b.x)) {
		s.consult(b)
		if raised(b.cost) >= s.cutoff() {
			s.postpone(b)
			return nil
		}
		if !b.checked {
			return s.again(b)
		}
	}
	if !allWhole(b.x) {
		return s.further(q, s.halves(b))
	}
	x := wholes(b.x)
	if key := fmt.Sprint(x); len(b.limits) > 0 || !s.failed[key] {
		s.failed[key] = true
		before := s.bestAt
		s.dive(x, b.sol, 4, 500)
		if s.bestAt < before && raised(b.cost) >= s.cutoff() {
			return nil
		}
	}
	if s.spend != nil && !b.point() {
		return s.further(q, s.beside(b, x))
	}
	return s.further(q, s.narrower(b))
}

// consult checks a box by the linear program over loads. Where the tables known were right about it, the next few boxes on
// the way down are taken on trust.
func (s *search) consult(b *box) {
	had := len(s.tables)
	s.check(b)
	b.trust = min(2*b.trust+1, 16)
	if len(s.tables) > had {
		b.trust = 0
	}
	b.skip = b.trust
}

// again sends a box back whose basket a new table rules out. One that could not be checked at all is given up.
func (s *search) again(b *box) *box {
	if b.sol == nil {
		s.lostAt = min(s.lostAt, raised(b.cost))
		return nil
	}
	return b
}

// further bounds the parts of a box, and returns the better one; the other waits in the queue.
func (s *search) further(q *queue, parts []*box) *box {
	var kept []*box
	for _, d := range parts {
		s.boxes++
		d.id = s.boxes
		if s.promising(d) {
			kept = append(kept, d)
		}
	}
	switch {
	case len(kept) == 0:
		return nil
	case len(kept) == 1:
		return kept[0]
	case kept[1].cost < kept[0].cost:
		kept[0], kept[1] = kept[1], kept[0]
	}
	heap.Push(q, kept[1])
	return kept[0]
}

// part is a copy of a box, to be narrowed.
func (b *box) part() *box {
	return &box{
		lo: append([]int(nil), b.lo...), up: append([]int(nil), b.up...), limits: b.limits, table: b.table,
		x: append([]float64(nil), b.x...), cost: b.cost, trust: b.trust, skip: max(0, b.skip-1),
	}
}

func (b *box) point() bool {
	for i := range b.lo {
		if b.lo[i] < b.up[i] {
			return false
		}
	}
	return true
}

// halves splits a box at the count that is least decided.
func (s *search) halves(b *box) []*box {
	at := 0
	for i, x := range b.x {
		if fraction(x) > fraction(b.x[at])+1e-9 {
			at = i
		}
	}
	return b.at(at, int(math.Floor(b.x[at])))
}

// at splits a box into at most n boards of a kind, and more.
func (b *box) at(kind, n int) []*box {
	less, more := b.part(), b.part()
	less.up[kind], more.lo[kind] = n, n+1
	return []*box{less, more}
}

// beside splits a box next to one of its baskets.
func (s *search) beside(b *box, x []int) []*box {
	for i := range x {
		if x[i] < b.up[i] {
			return b.at(i, x[i])
		}
		if b.lo[i] < x[i] {
			return b.at(i, x[i]-1)
		}
	}
	return nil
}

func wholes(x []float64) []int {
	out := make([]int, len(x))
	for i, v := range x {
		out[i] = int(math.Round(v))
	}
	return out
}

// narrower splits a box whose basket is whole and was not packed, by what loads hold. A solution that is whole is a packing.
func (s *search) narrower(b *box) []*box {
	l, ok := s.narrowSplit(b.sol)
	if !ok {
		before := s.bestAt
		s.whole(b.sol)
		if s.bestAt == before {
			s.lostAt = min(s.lostAt, raised(b.cost))
		}
		return nil
	}
	var out []*box
	for _, m := range []limit{l, {holds: l.holds, n: l.n + 1}} {
		d := b.part()
		d.limits = append(append([]limit(nil), b.limits...), m)
		s.check(d)
		out = append(out, d)
	}
	return out
}

// counted sums how many boards of a solution a limit counts.
func (s *search) counted(l *limit, sol []use) float64 {
	n := 0.0
	for _, u := range sol {
		if l.counts(s.pool[u.col].load) {
			n += u.x
		}
	}
	return n
}

// narrowSplit finds a count of boards by what their load holds that the solution leaves between whole numbers. There always
// is one while a load is used a fractional number of times (Vanderbeck 2000).
func (s *search) narrowSplit(sol []use) (limit, bool) {
	l := limit{atMost: true}
	for depth := 0; depth < 8; depth++ {
		best, at := -1.0, hold{}
		for k := range s.p.kinds {
			for c := 1; c <= s.demand[k]; c++ {
				m := limit{holds: append(append([]hold(nil), l.holds...), hold{k, c})}
				x := s.counted(&m, sol)
				if x < loose {
					break
				}
				if f := fraction(x); f > best {
					best, at = f, hold{k, c}
				}
			}
		}
		if best < 0 {
			return l, false
		}
		l.holds = append(append([]hold(nil), l.holds...), at)
		if x := s.counted(&l, sol); fraction(x) > loose {
			l.n = int(math.Floor(x))
			return l, true
		}
	}
	return l, false
}
