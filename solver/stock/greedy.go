package stock

// greedy cuts the longest piece left, each time from the board that costs the least for the length put to use, filled up with
// the longest that still fit. It is where the search begins.
func (s *search) greedy() {
	rest := append([]int(nil), s.demand...)
	have := make([]int, len(s.price))
	for b, d := range s.p.boards {
		have[b] = d.have
	}
	var done packing
	for k := 0; k < len(rest); {
		if rest[k] == 0 {
			k++
			continue
		}
		var load []entry
		board, score := -1, 0.0
		for _, b := range s.order {
			if have[b] == 0 || s.p.boards[b].c < s.p.kinds[k].w {
				continue
			}
			l := s.fill(rest, k, s.p.boards[b].c)
			used := float64(s.width(l))
			v := float64(s.price[b]) / used
			if s.p.boards[b].have > 0 {
				v = -used / float64(s.p.boards[b].c) // on hand before on sale, the best used first
			}
			if board < 0 || v < score {
				board, load, score = b, l, v
			}
		}
		if board < 0 {
			return
		}
		times := rest[k]
		for _, e := range load {
			times = min(times, rest[e.kind]/e.count)
		}
		if have[board] > 0 {
			times = min(times, have[board])
			have[board] -= times
		}
		for _, e := range load {
			rest[e.kind] -= e.count * times
		}
		s.add(board, load)
		done = append(done, cut{board, times, load})
	}
	s.offer(done)
}

// fill loads a board with one piece of kind k and then the longest that still fit.
func (s *search) fill(rest []int, k int, c int64) []entry {
	var load []entry
	for i := k; i < len(rest); i++ {
		if n := int(min(int64(rest[i]), c/s.p.kinds[i].w)); n > 0 {
			load = append(load, entry{i, n})
			c -= int64(n) * s.p.kinds[i].w
		}
	}
	return load
}
