package stock

import "sort"

// handful is how many pieces are few enough to be settled as a job of their own.
const handful = 40

// few reports whether what is left is worth a search of its own: a handful of pieces, few to a board, as long as such
// searches have not taken more than their share of the work.
func (s *search) few(rest []int) bool {
	n := 0
	for _, r := range rest {
		n += r
	}
	return n <= handful && s.worthMending()
}

func (s *search) worthMending() bool {
	boards := 0
	for _, c := range s.best {
		boards += c.times
	}
	return !s.inner && s.best != nil && s.p.n <= 3*boards && s.subWork <= 3e6+s.work/4
}

// resolve looks for a packing of the pieces in rest, from the boards left at most, that costs less than cutoff.
func (s *search) resolve(rest, left []int, cutoff int64) packing {
	q := &problem{}
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
			q.boards[b].have = max(0, left[b])
		}
	}
	sub := newSearch(q, s.price, 15e4)
	if len(sub.order) == 0 {
		return nil
	}
	sub.inner, sub.bestAt = true, cutoff
	sub.greedy()
	sub.run()
	s.work += sub.work
	s.subWork += sub.work
	for i := range sub.best {
		for k := range sub.best[i].load {
			sub.best[i].load[k].kind = of[sub.best[i].load[k].kind]
		}
	}
	return sub.best
}

// mend takes a handful of the boards of the best packing, those on which the most is lost by the first table among them,
// and cuts them anew, as long as that is of use.
func (s *search) mend() {
	if !s.worthMending() || len(s.tables) == 0 {
		return
	}
	for round, fail := 0, 0; fail < 6 && round < 60; round++ {
		all, order := s.byLoss()
		n, pieces := 0, 0
		for ; n < len(all) && n < 14; n++ {
			for _, e := range all[order[n]].load {
				pieces += e.count
			}
			if pieces > handful {
				break
			}
		}
		if n < 2 || !s.recut(all, choose(order, n, fail)) {
			fail++
		} else {
			fail = 0
		}
	}
}

// byLoss lists the boards of the best packing one by one, and their order by what each costs above its pieces' charges.
func (s *search) byLoss() (packing, []int) {
	var all packing
	var loss []float64
	for _, c := range s.best {
		v := float64(s.price[c.board]) * s.scale
		for _, e := range c.load {
			v -= float64(s.tables[0].charge[e.kind]) * float64(e.count)
		}
		for i := 0; i < c.times; i++ {
			all = append(all, cut{c.board, 1, append([]entry(nil), c.load...)})
			loss = append(loss, v)
		}
	}
	order := make([]int, len(all))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(x, y int) bool { return loss[order[x]] > loss[order[y]] })
	return all, order
}

// choose picks n boards: half of them those that lose most, the rest another few each time it failed before.
func choose(order []int, n, fail int) map[int]bool {
	pick := map[int]bool{}
	for i := 0; i < n/2; i++ {
		pick[order[(i+fail)%len(order)]] = true
	}
	for i := 0; len(pick) < n && i < 1000; i++ {
		pick[order[(n/2+fail*7+i*(1+fail))%len(order)]] = true
	}
	return pick
}

// recut settles the picked boards as a job of their own.
func (s *search) recut(all packing, pick map[int]bool) bool {
	rest := make([]int, len(s.demand))
	left := make([]int, len(s.price))
	for b, d := range s.p.boards {
		left[b] = max(0, d.have)
	}
	var keep packing
	price := int64(0)
	for i, c := range all {
		if !pick[i] {
			keep = append(keep, c)
			left[c.board]--
			continue
		}
		for _, e := range c.load {
			rest[e.kind] += e.count
		}
		price += s.price[c.board]
	}
	got := s.resolve(rest, left, price)
	return got != nil && s.offer(append(keep, got...))
}
