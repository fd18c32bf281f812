package stock

import (
	"math"
	"sort"
)

// dive makes whole boards of a solution of the linear program, within the boards there may be: takes the whole part of
// every load, then the load that is nearest to whole, solves again for what is left, and so on. Where that ends in nothing
// below the cutoff, it goes back and takes another load, breaks of the rule in all at most (limited discrepancy, Harvey and
// Ginsberg 1995). It keeps the best packing it comes to.
func (s *search) dive(up []int, sol []use, breaks, solves int) {
	at := s.bestAt
	basis := append([]int32(nil), s.lp.basis...)
	d := &diving{s: s, solves: solves}
	for k := 0; k <= breaks && d.solves > 0 && s.bestAt == at; k++ {
		d.down(append([]int(nil), s.demand...), append([]int(nil), up...), sol, nil, 0, k)
	}
	s.lp.demands(s.demand)
	s.lp.install(basis)
}

type diving struct {
	s      *search
	solves int // of the linear program, left
}

// down goes one step down from what is left of pieces and boards. It reports true when it came to a better packing.
func (d *diving) down(rest, left []int, sol []use, done packing, spent int64, breaks int) bool {
	s := d.s
	took := false
	for _, u := range sol {
		if n := int(math.Floor(u.x + 1e-6)); n > 0 {
			spent += s.take(&done, rest, left, u.col, n)
			took = true
		}
	}
	if took {
		return d.on(rest, left, done, spent, breaks)
	}
	if s.few(rest) {
		d.solves -= 5
		got := s.resolve(rest, left, s.cutoff()-spent)
		return got != nil && s.offer(append(done, got...))
	}
	order := append([]use(nil), sol...)
	sort.SliceStable(order, func(x, y int) bool { return order[x].x > order[y].x+1e-9 })
	for k, u := range order {
		if k > breaks || d.solves <= 0 || s.work > s.most {
			return false
		}
		r, l := append([]int(nil), rest...), append([]int(nil), left...)
		q := append(packing(nil), done...)
		p := s.take(&q, r, l, u.col, 1)
		if d.on(r, l, q, spent+p, breaks-k) {
			return true
		}
	}
	return false
}

// on solves the linear program for what is left, and goes further down while that may lead to something better.
func (d *diving) on(rest, left []int, done packing, spent int64, breaks int) bool {
	s, m := d.s, d.s.lp
	if none(rest) {
		return s.offer(done)
	}
	hand := make([]float64, len(left))
	for b, k := range s.p.boards {
		if k.have >= 0 {
			hand[b] = float64(left[b])
		}
	}
	d.solves--
	m.demands(rest)
	m.given(hand, floats(left))
	t := s.relax(m, rest)
	if t == nil || raised(float64(spent)+s.spent(m)) >= s.cutoff() {
		return false
	}
	return d.down(rest, left, m.solution(), done, spent, breaks)
}

func none(rest []int) bool {
	for _, r := range rest {
		if r > 0 {
			return false
		}
	}
	return true
}

// take cuts n boards by a load, less of it where fewer pieces are left, and returns their price.
func (s *search) take(done *packing, rest, left []int, col, n int) int64 {
	c := &s.pool[col]
	price := int64(0)
	for n > 0 {
		times := n
		var load []entry
		for _, e := range c.load {
			if k := min(e.count, rest[e.kind]); k > 0 {
				load = append(load, entry{e.kind, k})
				times = min(times, max(1, rest[e.kind]/k))
			}
		}
		if len(load) == 0 {
			return price
		}
		for _, e := range load {
			rest[e.kind] -= e.count * times
		}
		left[c.board] -= times
		*done = append(*done, cut{c.board, times, load})
		price += s.price[c.board] * int64(times)
		n -= times
	}
	return price
}

// whole takes a solution that is whole already.
func (s *search) whole(sol []use) {
	rest := append([]int(nil), s.demand...)
	left := make([]int, len(s.price))
	var done packing
	for _, u := range sol {
		s.take(&done, rest, left, u.col, int(u.x+.5))
	}
	if none(rest) {
		s.offer(done)
	}
}

// offer puts each load on the cheapest board that it fits, and keeps the packing if it is cheaper than the best.
func (s *search) offer(q packing) bool {
	left := make([]int, len(s.price))
	for b, d := range s.p.boards {
		left[b] = d.have
	}
	price, spent := int64(0), int64(0)
	for i := range q {
		c := &q[i]
		if left[c.board] >= 0 {
			if left[c.board] -= c.times; left[c.board] < 0 {
				return false
			}
		}
		w := s.width(c.load)
		for b, d := range s.p.boards {
			if d.have < 0 && d.c >= w && s.price[b] < s.price[c.board] {
				c.board = b
			}
		}
		price += s.price[c.board] * int64(c.times)
		if s.spend != nil {
			spent += s.spend[c.board] * int64(c.times)
		}
	}
	if price >= s.bestAt || s.spend != nil && spent > s.spendAt {
		return false
	}
	s.best, s.bestAt = q, price
	return true
}

func (s *search) width(load []entry) int64 {
	w := int64(0)
	for _, e := range load {
		w += s.p.kinds[e.kind].w * int64(e.count)
	}
	return w
}
