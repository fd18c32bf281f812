package stock

import (
	"container/heap"
	"math"
)

// box is a part of all baskets: so many boards of each kind at least and at most, and narrow limits.
type box struct {
	lo, up  []int
	limits  []limit
	x       []float64 // its cheapest basket, in fractions
	cost    float64   // no packing within is cheaper
	id      int
	checked bool   // x can be packed, in fractions of loads
	sol     []use  // which ones
	table   *table // of the box's own, with narrow limits
	trust   int    // how far the tables known were right on the way here
	skip    int    // boxes on the way down that go unchecked for that
}

type queue []*box

func (q queue) Len() int { return len(q) }
func (q queue) Less(x, y int) bool {
	if q[x].cost != q[y].cost {
		return q[x].cost < q[y].cost
	}
	return q[x].id > q[y].id
}
func (q queue) Swap(x, y int) { q[x], q[y] = q[y], q[x] }
func (q *queue) Push(x any)   { *q = append(*q, x.(*box)) }
func (q *queue) Pop() any {
	old := *q
	n := old[len(old)-1]
	*q = old[:len(old)-1]
	return n
}

// raised is a bound in whole units of price, but for what floating point may have added to it.
func raised(cost float64) int64 { return int64(math.Ceil(cost - 1e-3)) }

// all is the box of every basket.
func (s *search) all() *box {
	b := &box{lo: make([]int, len(s.price)), up: make([]int, len(s.price))}
	for i, d := range s.p.boards {
		b.up[i] = s.p.n
		if d.have >= 0 {
			b.lo[i], b.up[i] = d.have, d.have
		}
	}
	return b
}

// run looks for the cheapest packing, and returns a bound that it believes in: the price of the best where it is done, less
// where its work was spent before.
//
// Branching is on how many boards of each kind, and nearly all of it is done by the tables alone, which say what a basket
// must hold: linear programs over loads only add tables. It goes in phases that aim ever higher above the bound, as a box
// that holds nothing below a low aim is soon told (outOfReach), and the first basket found is then close to the best.
func (s *search) run() int64 {
	root := s.all()
	if !s.bound(root) {
		return s.bestAt
	}
	if !s.inner {
		s.check(root)
		if root.sol != nil {
			s.dive(root.up, root.sol, 0, 1000)
		}
		s.mend()
	}
	s.later = []*box{root}
	s.lostAt = math.MaxInt64
	least := raised(root.cost)
	for step := int64(1); least < s.bestAt; step *= 2 {
		s.aim = min(s.bestAt, least+step)
		left := s.phase()
		least = min(s.aim, s.bestAt)
		if s.lostAt < least {
			return s.lostAt
		}
		if left != nil {
			for _, b := range left {
				least = min(least, raised(b.cost))
			}
			return least
		}
	}
	return s.bestAt
}

// phase works through all boxes that may hold something below the aim. It returns the boxes left where work ran out.
func (s *search) phase() queue {
	var q queue
	old := s.later
	s.later = nil
	for _, b := range old {
		if raised(b.cost) < s.aim {
			heap.Push(&q, b)
		} else {
			s.postpone(b)
		}
	}
	for q.Len() > 0 {
		for b := heap.Pop(&q).(*box); b != nil; {
			if s.work > s.most {
				heap.Push(&q, b)
				return q
			}
			if !s.promising(b) {
				break
			}
			b = s.open(&q, b)
		}
	}
	return nil
}

func (s *search) cutoff() int64 { return min(s.aim, s.bestAt) }

// promising reports whether a box may hold something below the aim. One that may not, but something better than the best,
// is kept for later.
func (s *search) promising(b *box) bool {
	if raised(b.cost) < s.cutoff() && !s.bound(b) {
		return false
	}
	if raised(b.cost) < s.cutoff() && s.outOfReach(b) {
		b.cost = float64(s.cutoff())
	}
	if raised(b.cost) < s.cutoff() {
		return true
	}
	s.postpone(b)
	return false
}

func (s *search) postpone(b *box) {
	if raised(b.cost) < s.bestAt {
		s.later = append(s.later, b)
	}
}

// bound finds a box's cheapest corner by the tables known. It reports false where the box holds no basket.
func (s *search) bound(b *box) bool {
	c := s.corner
	c.learn(s)
	for i := range b.lo {
		if b.lo[i] > b.up[i] {
			return false
		}
		c.lo[i], c.up[i] = float64(b.lo[i]), float64(b.up[i])
	}
	was := c.pivots
	ok := c.solve()
	s.work += int64((c.pivots - was) * (len(c.rows) + c.n) * 4)
	if !ok {
		return false
	}
	if !b.checked {
		b.x = append(b.x[:0], c.x...)
	}
	b.cost = math.Max(b.cost, c.cost())
	return true
}

// check asks the linear program over loads about a box, and learns its table where it says more than those known.
func (s *search) check(b *box) {
	m := s.lp
	if len(b.limits) > 0 {
		m = s.program(b.limits)
	}
	if s.spend != nil {
		s.checkPoint(m, b)
		return
	}
	m.given(floats(b.lo), floats(b.up))
	t := s.relax(m, s.demand)
	b.checked = t != nil
	if t == nil {
		return
	}
	b.sol = m.solution()
	if len(b.limits) > 0 {
		b.table = t
	}
	b.x = make([]float64, len(b.lo))
	for _, u := range b.sol {
		b.x[s.pool[u.col].board] += u.x
	}
	for i := range b.x {
		b.x[i] = math.Max(b.x[i], float64(b.lo[i]))
	}
	if len(b.limits) == 0 && s.worth(t, b) > b.cost+1e-6*(1+b.cost) {
		s.tighten(t)
		s.tables = append(s.tables, t)
	}
	b.cost = math.Max(b.cost, s.worth(t, b))
}

// checkPoint asks whether the very basket b.x can be packed in fractions, and learns a table that says why not.
func (s *search) checkPoint(m *master, b *box) {
	none := make([]float64, len(b.x))
	for i := range none {
		none[i] = float64(s.p.n)
	}
	m.given(b.x, none)
	t := s.relax(m, s.demand)
	b.checked = t != nil
	if t == nil {
		return
	}
	b.sol = m.solution()
	if len(b.limits) > 0 {
		b.table = t
	}
	short := float64(t.total)
	for i, r := range t.rate {
		short -= float64(r) * b.x[i]
	}
	if short/s.scale > 1e-5 {
		b.checked = false
		if len(b.limits) > 0 {
			b.cost = float64(s.bestAt)
			return
		}
		s.tighten(t)
		s.tables = append(s.tables, t)
		s.bound(b)
	}
}

// worth is the bound that one table alone gives for a box.
func (s *search) worth(t *table, b *box) float64 {
	v := float64(t.total)
	for i, r := range t.rate {
		if d := float64(s.price[i])*s.scale - float64(r); d > 0 {
			v += d * float64(b.lo[i])
		} else {
			v += d * float64(b.up[i])
		}
	}
	return v / s.scale
}

func floats(x []int) []float64 {
	out := make([]float64, len(x))
	for i, v := range x {
		out[i] = float64(v)
	}
	return out
}
