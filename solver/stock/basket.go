package stock

import (
	"container/heap"
	"fmt"
	"math"
)

// box is a part of all baskets: so many boards of each kind at least and at most.
type box struct {
	lo, up      []int
	x           []float64 // its cheapest corner
	cost        float64
	id          int
	checked     bool
	trust, skip int
	limits      []limit
	sol         []use
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

// run looks for the cheapest basket of boards from which all pieces can be cut.
func (s *search) run() float64 {
	if !s.sub {
		s.greedy()
	}
	s.lp = s.newMaster(nil)
	n := len(s.price)
	root := &box{lo: make([]int, n), up: make([]int, n)}
	s.none = make([]int, n)
	for b, d := range s.p.boards {
		root.up[b] = s.p.n
		s.none[b] = s.p.n
		if d.have >= 0 {
			root.lo[b], root.up[b] = d.have, d.have
		}
	}
	c := &corner{n: n}
	for _, p := range s.price {
		c.price = append(c.price, float64(p))
	}
	q := &queue{}
	s.bound(c, root)
	s.check(c, root)
	s.rootAt = root.cost
	s.aim = 1 << 62
	s.dive(root.up, root.sol, 0, 1000)
	s.mend()
	least := s.whole1(root.cost)
	later := []*box{root}
	for step := int64(1); ; step *= 2 {
		s.aim = min(s.bestAt, least+step)
		if least >= s.bestAt {
			return float64(s.bestAt)
		}
		if s.trace {
			fmt.Println("aim", s.aim, "least", least, "best", s.bestAt, "later", len(later), "nodes", s.stat.nodes, "work", s.work)
		}
		var keep []*box
		for _, b := range later {
			if s.whole1(b.cost) < s.aim {
				heap.Push(q, b)
			} else if s.whole1(b.cost) < s.bestAt {
				keep = append(keep, b)
			}
		}
		s.later = keep
		s.phase(q, c)
		later = s.later
		least = min(s.aim, s.bestAt)
		if q.Len() > 0 {
			for _, b := range *q {
				least = min(least, s.whole1(b.cost))
			}
			s.spentAll = true
			return float64(least)
		}
	}
}

// whole1 raises a bound to the next whole price, but for what floating point may have added.
func (s *search) whole1(cost float64) int64 { return int64(math.Ceil(cost - 1e-3)) }

// phase works through all boxes that may hold something below the aim.
func (s *search) phase(q *queue, c *corner) {
	for q.Len() > 0 && s.work <= s.most {
		for b := heap.Pop(q).(*box); b != nil; {
			if s.work > s.most {
				heap.Push(q, b)
				return
			}
			if !s.promising(c, b) {
				break
			}
			b = s.open(q, c, b)
		}
	}
}

func (s *search) cutoff() int64 { return min(s.aim, s.bestAt) }

// promising reports whether a box may hold something below the aim. One that may not, but something better than the best, is
// kept for later.
func (s *search) promising(c *corner, b *box) bool {
	if s.whole1(b.cost) < s.cutoff() {
		if !s.bound(c, b) {
			return false
		}
	}
	if s.whole1(b.cost) < s.cutoff() {
		if s.outOfReach(c, b) {
			s.stat.shut++
			b.cost = float64(s.cutoff())
		}
	}
	if s.whole1(b.cost) < s.cutoff() {
		return true
	}
	if s.whole1(b.cost) < s.bestAt {
		s.later = append(s.later, b)
	}
	return false
}

// check solves the linear program of a box, and learns its table.
func (s *search) check(c *corner, b *box) {
	s.stat.tries++
	m := s.lp
	if len(b.limits) > 0 {
		m = s.newMaster(b.limits)
	}
	m.given(b.lo, b.up)
	t := s.relax(m, s.demand)
	if t == nil {
		panic("relax gave up")
	}
	b.checked = true
	b.sol = m.solution()
	cost := s.spent(m)
	x := make([]float64, len(b.lo))
	for _, u := range b.sol {
		x[s.pool[u.col].board] += u.x
	}
	for i := range x {
		x[i] = math.Max(x[i], float64(b.lo[i]))
		cost += float64(b.lo[i]) * c.price[i]
	}
	if len(b.limits) == 0 && cost > b.cost+1e-6*(1+b.cost) {
		s.learn(t)
	} else {
		s.stat.quick++
	}
	b.cost = math.Max(b.cost, cost)
	b.x = x
}

func (s *search) learn(t *table) {
	s.tighten(t)
	s.tables = append(s.tables, t)
}

// tighten lowers every rate to what the dearest load of the board is charged.
func (s *search) tighten(t *table) {
	low := *t
	low.rate = make([]int64, len(t.rate))
	for _, f := range s.over(&low, s.demand, nil) {
		low.rate[f.board] = f.over
	}
	s.work += s.loads.work
	s.loads.work = 0
	t.rate = low.rate
}

// bound finds a box's cheapest corner. It reports false where the box holds no basket.
func (s *search) bound(c *corner, b *box) bool {
	s.stat.nodes++
	b.id = s.stat.nodes
	for len(c.rows) < len(s.tables) {
		t := s.tables[len(c.rows)]
		row := make([]float64, c.n)
		for i := range row {
			row[i] = float64(t.rate[i]) / s.scale
		}
		c.rows = append(c.rows, row)
		c.least = append(c.least, float64(t.total)/s.scale)
	}
	c.lo, c.up = make([]float64, c.n), make([]float64, c.n)
	for i := range b.lo {
		if b.lo[i] > b.up[i] {
			return false
		}
		c.lo[i], c.up[i] = float64(b.lo[i]), float64(b.up[i])
	}
	was := c.count
	ok := c.solve()
	s.work += int64((c.count - was) * len(c.rows) * 4)
	s.stat.corner += c.count - was
	if !ok {
		return false
	}
	if !b.checked {
		b.x = append([]float64(nil), c.x...)
	}
	b.cost = math.Max(b.cost, c.cost())
	return true
}

// outOfReach reports whether no basket of a box that is cheaper than the best holds enough by the tables that bind it, taken
// together. It is a knapsack over money: the most that boards for so much money can hold.
func (s *search) outOfReach(c *corner, b *box) bool {
	rate := make([]float64, c.n)
	total := 0.0
	any := false
	for k, t := range c.tight {
		if t < 0 || c.y[k] <= 0 {
			continue
		}
		any = true
		for i := range rate {
			rate[i] += c.y[k] * c.rows[t][i]
		}
		total += c.y[k] * c.least[t]
	}
	if !any {
		return false
	}
	f := math.Exp2(40) / float64(s.bestAt)
	from := begin{}
	var items []item
	for i := range rate {
		u := int64(math.Ceil(rate[i] * f))
		from.w += s.price[i] * int64(b.lo[i])
		from.v += u * int64(b.lo[i])
		if b.up[i] > b.lo[i] && s.price[i] == 0 && u > 0 {
			return false
		}
		if b.up[i] > b.lo[i] && u > 0 {
			items = append(items, item{w: s.price[i], u: u, most: b.up[i] - b.lo[i], kind: i})
		}
	}
	if from.w > s.cutoff()-1 {
		return true
	}
	slots := []slot{{c: s.cutoff() - 1, rate: int64(math.Floor(total*f)) - 1}}
	s.loads.most = 50000
	got, sure := s.loads.dearest(items, slots, []begin{from})
	s.loads.most = 0
	s.work += s.loads.work
	s.stat.shutWork += s.loads.work
	s.loads.work = 0
	return sure && got == nil
}

func (s *search) open(q *queue, c *corner, b *box) *box {
	if !b.checked && (b.skip == 0 || allWhole(b.x)) {
		had := len(s.tables)
		s.check(c, b)
		if len(s.tables) > had {
			b.trust = 0
		} else {
			b.trust = min(2*b.trust+1, 16)
		}
		b.skip = b.trust
		if s.whole1(b.cost) >= s.cutoff() {
			s.promising(c, b)
			return nil
		}
	}
	if s.trace && s.stat.nodes < 400 {
		fmt.Println("open", b.id, b.lo, b.up, b.x, b.cost, b.checked, len(s.tables))
	}
	at, most := -1, 1e-5
	for i, x := range b.x {
		if f := math.Abs(x - math.Round(x)); f > most {
			at, most = i, f
		}
	}
	if at < 0 {
		x := make([]int, len(b.x))
		for i := range x {
			x[i] = int(math.Round(b.x[i]))
		}
		s.dive(x, b.sol, 4, 500)
		if float64(s.bestAt) < b.cost+.5 {
			return nil
		}
		l, ok := s.narrowSplit(b.sol)
		if s.trace {
			fmt.Println("not packed", x, b.cost, l, ok)
		}
		if !ok {
			s.whole(b.sol)
			return nil
		}
		var kids []*box
		for side := 0; side < 2; side++ {
			d := &box{lo: b.lo, up: b.up, cost: b.cost}
			d.limits = append(append(d.limits, b.limits...), l)
			s.check(c, d)
			s.stat.nodes++
			s.stat.narrow++
			d.id = s.stat.nodes
			kids = append(kids, d)
			l.atMost, l.n = false, l.n+1
		}
		for _, k := range kids {
			heap.Push(q, k)
		}
		return nil
	}
	var kids []*box
	for side := 0; side < 2; side++ {
		d := &box{lo: append([]int(nil), b.lo...), up: append([]int(nil), b.up...), limits: b.limits, trust: b.trust, skip: max(0, b.skip-1)}
		if side == 0 {
			d.up[at] = int(math.Floor(b.x[at]))
		} else {
			d.lo[at] = int(math.Floor(b.x[at])) + 1
		}
		if s.bound(c, d) && s.promising(c, d) {
			kids = append(kids, d)
		}
	}
	if len(kids) == 2 && kids[1].cost < kids[0].cost {
		kids[0], kids[1] = kids[1], kids[0]
	}
	if len(kids) == 2 {
		heap.Push(q, kids[1])
	}
	if len(kids) > 0 {
		return kids[0]
	}
	return nil
}

// whole takes a solution that is whole already.
func (s *search) whole(sol []use) {
	rest := append([]int(nil), s.demand...)
	left := append([]int(nil), s.none...)
	var done packing
	for _, u := range sol {
		s.take(&done, rest, left, u.col, int(u.x+.5))
	}
	for _, r := range rest {
		if r > 0 {
			return
		}
	}
	s.offer(done)
}

// loose is how far from whole a count must be to be split on.
const loose = 1e-5

// fraction is the distance from the nearest whole number.
func fraction(x float64) float64 { return math.Abs(x - math.Round(x)) }

// counted sums how many boards of a solution a limit counts.
func (s *search) counted(l *limit, sol []use) float64 {
	n := 0.0
	for _, u := range sol {
		c := &s.pool[u.col]
		if l.counts(c.board, c.load) {
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
				h := hold{k, c}
				m := limit{holds: append(append([]hold(nil), l.holds...), h), atMost: true}
				x := s.counted(&m, sol)
				if x < loose {
					break
				}
				if f := fraction(x); f > best {
					best, at = f, h
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

func allWhole(x []float64) bool {
	for _, v := range x {
		if fraction(v) > loose {
			return false
		}
	}
	return true
}
