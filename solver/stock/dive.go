package stock

import (
	"fmt"
	"math"
	"sort"
)

// dive makes whole boards of a solution of the linear program, within the boards there may be: takes the whole part of
// every load, then the load that is nearest to whole, solves again for what is left, and so on. Where that ends in nothing
// cheaper than the best packing, it goes back and takes another load, breaks of the rule in all at most (limited
// discrepancy, Harvey and Ginsberg 1995). It keeps the best packing it comes to.
func (s *search) dive(up []int, sol []use, breaks, solves int) {
	s.stat.dives++
	was, at := s.work, s.bestAt
	m := s.lp
	basis := append([]int32(nil), m.basis...)
	d := &diving{s: s, solves: solves}
	for k := 0; k <= breaks && d.solves > 0 && s.bestAt == at; k++ {
		d.down(append([]int(nil), s.demand...), append([]int(nil), up...), sol, nil, 0, k)
	}
	m.demands(s.demand)
	m.install(basis)
	s.diveWork += s.work - was
	if s.trace {
		fmt.Println("dive", s.stat.dives, "nodes", s.stat.nodes, "work", s.work-was, "solves", solves-d.solves, at, "->", s.bestAt)
	}
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
	pieces := 0
	for _, n := range rest {
		pieces += n
	}
	if pieces <= 40 && !s.sub && !s.small() {
		return d.finish(rest, left, done, spent)
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

// finish solves what is left as a job of its own.
func (d *diving) finish(rest, left []int, done packing, spent int64) bool {
	s := d.s
	got := s.resolve(rest, left, s.cutoff()-spent, 1.5e5)
	d.solves -= 5
	if got == nil {
		return false
	}
	was := s.bestAt
	s.offer(append(done, got...))
	return s.bestAt < was
}

// resolve looks for a packing of the pieces in rest, from so many boards of each kind at most, that costs less than cutoff.
func (s *search) resolve(rest, left []int, cutoff, work int64) packing {
	q := &problem{unit: s.p.unit, foot: s.p.foot}
	var of []int
	for k, n := range rest {
		if n > 0 {
			kd := s.p.kinds[k]
			kd.d = n
			q.kinds = append(q.kinds, kd)
			q.n += n
			of = append(of, k)
		}
	}
	q.boards = append(q.boards, s.p.boards...)
	for b := range q.boards {
		if q.boards[b].have >= 0 {
			q.boards[b].have = left[b]
		}
	}
	sub := newSearch(q, s.price, work)
	sub.sub = true
	sub.bestAt = cutoff
	if len(sub.order) == 0 {
		return nil
	}
	sub.greedy()
	sub.run()
	s.work += sub.work
	s.subs++
	s.subWork += sub.work
	out := sub.best
	for i := range out {
		for k := range out[i].load {
			out[i].load[k].kind = of[out[i].load[k].kind]
		}
	}
	return out
}

// mend takes the boards of the best packing on which the most is lost by the first table, and cuts them anew, as long as
// that is any use.
func (s *search) mend() {
	if s.sub || len(s.tables) == 0 || s.small() {
		return
	}
	t := s.tables[0]
	was, at := s.work, s.bestAt
	for round, fail := 0, 0; fail < 6 && round < 60; round++ {
		var all packing
		for _, c := range s.best {
			for i := 0; i < c.times; i++ {
				all = append(all, cut{c.board, 1, append([]entry(nil), c.load...)})
			}
		}
		loss := make([]float64, len(all))
		for i, c := range all {
			loss[i] = float64(s.price[c.board]) * s.scale
			for _, e := range c.load {
				loss[i] -= float64(t.charge[e.kind]) * float64(e.count)
			}
		}
		order := make([]int, len(all))
		for i := range order {
			order[i] = i
		}
		sort.SliceStable(order, func(x, y int) bool { return loss[order[x]] > loss[order[y]] })
		// the most lossy ones, and others in turn
		n := 0
		for pieces := 0; n < len(all) && n < 14; n++ {
			for _, e := range all[order[n]].load {
				pieces += e.count
			}
			if pieces > 40 {
				break
			}
		}
		if n < 2 {
			return
		}
		pick := map[int]bool{}
		for i := 0; i < n/2; i++ {
			pick[order[(i+fail)%len(order)]] = true
		}
		for i := 0; len(pick) < n; i++ {
			pick[order[(n/2+fail*7+i*(1+fail))%len(order)]] = true
			if i > 1000 {
				break
			}
		}
		rest := make([]int, len(s.demand))
		left := make([]int, len(s.price))
		for b, d := range s.p.boards {
			left[b] = max(0, d.have)
		}
		var keep packing
		price := int64(0)
		for i, c := range all {
			if pick[i] {
				for _, e := range c.load {
					rest[e.kind] += e.count
				}
				price += s.price[c.board]
			} else {
				keep = append(keep, c)
				left[c.board]--
			}
		}
		got := s.resolve(rest, left, price, 1.5e5)
		if got == nil {
			fail++
			continue
		}
		before := s.bestAt
		s.offer(append(keep, got...))
		if s.bestAt < before {
			fail = 0
		} else {
			fail++
		}
	}
	s.mended += s.work - was
	if s.trace {
		fmt.Println("mend work", s.work-was, at, "->", s.bestAt)
	}
}

// on solves the linear program for what is left, and goes further down while that may lead to something better.
func (d *diving) on(rest, left []int, done packing, spent int64, breaks int) bool {
	s, m := d.s, d.s.lp
	over := true
	for _, r := range rest {
		over = over && r == 0
	}
	if over {
		was := s.bestAt
		s.offer(done)
		return s.bestAt < was
	}
	hand := make([]int, len(left))
	for b, k := range s.p.boards {
		if k.have >= 0 {
			hand[b] = left[b]
		}
	}
	d.solves--
	m.demands(rest)
	m.given(hand, left)
	t := s.relax(m, rest)
	if t == nil || s.whole1(float64(spent)+s.spent(m)) >= s.cutoff() {
		return false
	}
	return d.down(rest, left, m.solution(), done, spent, breaks)
}

// take cuts n boards by a load, less of it where fewer pieces are left, and returns the price of those beyond the boards left.
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

// offer keeps a packing that is cheaper than the best, each load on the cheapest board that it fits.
func (s *search) offer(q packing) {
	left := make([]int, len(s.price))
	for b, d := range s.p.boards {
		left[b] = d.have
	}
	for _, c := range q {
		if left[c.board] >= 0 {
			left[c.board] -= c.times
			if left[c.board] < 0 {
				return
			}
		}
	}
	price := int64(0)
	for i := range q {
		w := s.width(q[i].load)
		for b, d := range s.p.boards {
			if d.have < 0 && d.c >= w && s.price[b] < s.price[q[i].board] {
				q[i].board = b
			}
		}
		price += s.price[q[i].board] * int64(q[i].times)
	}
	if s.best == nil && !s.sub || price < s.bestAt {
		s.best, s.bestAt = q, price
	}
}

func (s *search) width(load []entry) int64 {
	w := int64(0)
	for _, e := range load {
		w += s.p.kinds[e.kind].w * int64(e.count)
	}
	return w
}

// small reports whether many pieces go into one board.
func (s *search) small() bool {
	boards := 0
	for _, c := range s.best {
		boards += c.times
	}
	return s.p.n > 3*boards || s.subWork > 3e6+s.work/4
}
