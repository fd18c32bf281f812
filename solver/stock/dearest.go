package stock

import "sort"

// item is a kind of piece as the search for the dearest load sees it.
type item struct {
	w, u int64 // units of length; charge
	most int   // of this kind in one load
	kind int
}

// slot is a board as the search sees it: what it holds, and the charge that a load of it must exceed to be of interest.
type slot struct {
	c, rate int64
	board   int
}

// entry is so many pieces of one kind in a load.
type entry struct{ kind, count int }

// found is a load of a board and by how much its charge exceeds the board's rate.
type found struct {
	board int
	load  []entry
	over  int64
}

// loader finds the dearest loads: for every board at once, the load that exceeds the board's rate by the most.
//
// It keeps the list of loads that are worth keeping, ascending in length and in charge (Nemhauser and Ullmann 1969), and
// drops a load as soon as even the dearest pieces left, cut as if they were sand, could not bring it above any rate. The
// lists do not grow with the number of units in a board, so that awkward units cost nothing.
type loader struct {
	steps     []step
	cur, next []state
	work      int64 // loads looked at
	most      int64 // give up beyond so much of it, 0 for never
}

type state struct {
	w, v int64
	step int32
}

type step struct {
	prev        int32
	kind, count int32
}

// begin is a load that is there already: w units, charged v.
type begin struct {
	w, v int64
	load []entry
}

// dearest returns, for each slot that has one, the load that exceeds its rate by the most, of those that hold one of the
// beginnings and more of the items. Slots are ordered by c, beginnings by w and v, both ascending.
func (l *loader) dearest(items []item, slots []slot, from []begin) ([]found, bool) {
	l.steps, l.cur = l.steps[:0], l.cur[:0]
	for i, f := range from {
		l.steps = append(l.steps, step{prev: int32(-1 - i)})
		l.cur = append(l.cur, state{f.w, f.v, int32(i)})
	}
	items = worthLoading(items, slots, from[0].w)
	reach := newReach(slots)
	for _, it := range items {
		reach.set(float64(it.u) / float64(it.w))
		for left, lot := it.most, 1; left > 0; lot *= 2 {
			n := min(lot, left)
			left -= n
			l.extend(it, n, reach)
			if l.most > 0 && l.work > l.most {
				return nil, false
			}
		}
		if len(l.cur) == 0 {
			return nil, true
		}
	}
	return l.collect(slots, from), true
}

// empty begins a load with nothing.
var empty = []begin{{}}

// worthLoading drops items that fit nowhere or are charged nothing, bounds their number by the room there is, and puts the
// dearest for its length first.
func worthLoading(items []item, slots []slot, w int64) []item {
	most := slots[len(slots)-1].c - w
	out := make([]item, 0, len(items))
	for _, it := range items {
		if it.u <= 0 || it.w > most || it.most == 0 {
			continue
		}
		it.most = int(min(int64(it.most), most/it.w))
		out = append(out, it)
	}
	sort.SliceStable(out, func(x, y int) bool {
		return float64(out[x].u)/float64(out[x].w) > float64(out[y].u)/float64(out[y].w)
	})
	return out
}

// reach tells, for the pieces still to come, what charge a load must have to be worth keeping.
type reach struct {
	slots []slot
	need  []float64 // need[j]: of a load that fits slot j and not j-1, charge - ratio·w must exceed -need[j]
	ratio float64
}

func newReach(slots []slot) *reach { return &reach{slots: slots, need: make([]float64, len(slots))} }

// set takes the dearest ratio of charge to length still to come. The margin makes rounding in floating point harmless: it
// only ever keeps a load too many.
func (r *reach) set(ratio float64) {
	r.ratio = ratio
	best := -1e300
	for j := len(r.slots) - 1; j >= 0; j-- {
		s := r.slots[j]
		if v := ratio*float64(s.c)*(1+1e-9) + 1 - float64(s.rate); v > best {
			best = v
		}
		r.need[j] = best
	}
}

// extend merges the loads with those that take n more of the item.
func (l *loader) extend(it item, n int, r *reach) {
	dw, dv := it.w*int64(n), it.u*int64(n)
	cur, out := l.cur, l.next[:0]
	last := len(r.slots) - 1
	top := r.slots[last].c
	var a, b, j int
	best := int64(-1)
	for a < len(cur) || b < len(cur) {
		var s state
		added := false
		if b >= len(cur) || a < len(cur) && cur[a].w <= cur[b].w+dw {
			s = cur[a]
			a++
		} else {
			s = state{cur[b].w + dw, cur[b].v + dv, cur[b].step}
			b++
			added = true
			if s.w > top {
				b = len(cur)
				continue
			}
		}
		if s.v <= best {
			continue
		}
		for r.slots[j].c < s.w {
			j++
		}
		if float64(s.v)+r.need[j]-r.ratio*float64(s.w) <= 0 {
			continue
		}
		best = s.v
		if added {
			l.steps = append(l.steps, step{s.step, int32(it.kind), int32(n)})
			s.step = int32(len(l.steps) - 1)
		}
		if k := len(out); k > 0 && out[k-1].w == s.w {
			out[k-1] = s
		} else {
			out = append(out, s)
		}
	}
	l.work += int64(2*len(cur) + 8)
	l.cur, l.next = out, cur
}

// collect reads the dearest load of each slot off the list.
func (l *loader) collect(slots []slot, from []begin) []found {
	var out []found
	k := 0
	for _, s := range slots {
		for k < len(l.cur) && l.cur[k].w <= s.c {
			k++
		}
		if k == 0 || l.cur[k-1].v <= s.rate {
			continue
		}
		out = append(out, found{s.board, l.trace(l.cur[k-1].step, from), l.cur[k-1].v - s.rate})
	}
	return out
}

func (l *loader) trace(at int32, from []begin) []entry {
	var load []entry
	s := l.steps[at]
	for ; s.prev >= 0; s = l.steps[s.prev] {
		n := len(load)
		if n > 0 && load[n-1].kind == int(s.kind) {
			load[n-1].count += int(s.count)
		} else {
			load = append(load, entry{int(s.kind), int(s.count)})
		}
	}
	load = append(load, from[-1-s.prev].load...)
	sort.Slice(load, func(x, y int) bool { return load[x].kind < load[y].kind })
	return load
}
