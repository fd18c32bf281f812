package stock

import "sort"

// gatherBoards is up to how many boards leftovers are gathered; gatherWork bounds it.
const (
	gatherBoards = 500
	gatherWork   = 10e6
)

// gatherLeft brings leftovers together in one board, the longest it can, without another board: of two boards, one is filled
// with their pieces as far as it will go, and the other keeps what is left. A board on hand that is left whole is not cut.
func (p *problem) gatherLeft(q packing, s *search) packing {
	var all packing
	for _, c := range q {
		for range c.times {
			all = append(all, cut{c.board, 1, c.load})
		}
	}
	if len(all) > gatherBoards || len(all) < 2 {
		return q
	}
	left := make([]int64, len(all))
	for i, c := range all {
		left[i] = p.boards[c.board].c - s.width(c.load)
	}
	start := s.loads.work
	for i := p.receiver(all, left); s.loads.work-start < gatherWork; {
		gained := false
		for k := range all {
			if k == i || len(all[k].load) == 0 || len(all[i].load) == 0 || left[k] == 0 {
				continue
			}
			fill, keep := s.pour(all[k], all[i])
			if room := p.boards[all[i].board].c - s.width(keep); room > left[i] && p.mayEmpty(all[i], keep) {
				all[k].load, all[i].load = fill, keep
				left[i], left[k] = room, p.boards[all[k].board].c-s.width(fill)
				gained = true
			}
		}
		if !gained {
			break
		}
	}
	var out packing
	for _, c := range all {
		if len(c.load) > 0 {
			out = append(out, c)
		}
	}
	return out
}

// receiver is the board that leftovers are gathered in: the one with the most left.
func (p *problem) receiver(all packing, left []int64) int {
	best := 0
	for i := range all {
		if left[i] > left[best] {
			best = i
		}
	}
	return best
}

// mayEmpty reports whether a board may come to hold that: nothing, only when it is on hand.
func (p *problem) mayEmpty(c cut, load []entry) bool {
	return len(load) > 0 || p.boards[c.board].have >= 0
}

// pour fills one board as far as it goes with the pieces of two, and returns what it then holds and what remains.
func (s *search) pour(into, from cut) (fill, keep []entry) {
	count := map[int]int{}
	for _, load := range [][]entry{into.load, from.load} {
		for _, e := range load {
			count[e.kind] += e.count
		}
	}
	var kinds []int
	for k := range count {
		kinds = append(kinds, k)
	}
	sort.Ints(kinds)
	var items []item
	for _, k := range kinds {
		w := s.p.kinds[k].w
		items = append(items, item{w: w, u: w, most: count[k], kind: k})
	}
	c := s.p.boards[into.board].c
	got, _ := s.loads.dearest(items, []slot{{c: c, rate: s.width(into.load)}}, empty)
	if len(got) == 0 {
		return into.load, from.load
	}
	fill = got[0].load
	for _, e := range fill {
		count[e.kind] -= e.count
	}
	for _, k := range kinds {
		if count[k] > 0 {
			keep = append(keep, entry{k, count[k]})
		}
	}
	return fill, keep
}
