package stock

import "sort"

// hold asks for at least count pieces of a kind in one load.
type hold struct{ kind, count int }

// limit bounds a narrow count: of the boards whose load holds those pieces, at most or at least n.
type limit struct {
	holds  []hold
	atMost bool
	n      int
}

func (l *limit) counts(load []entry) bool {
	for _, h := range l.holds {
		if !holds(load, h) {
			return false
		}
	}
	return true
}

func holds(load []entry, h hold) bool {
	for _, e := range load {
		if e.kind == h.kind {
			return e.count >= h.count
		}
	}
	return false
}

// table is what a plan's boards must hold, in whole numbers: every piece has a charge, no load of board b is charged more
// than rate[b], so that the rates of all boards of a plan sum to total at least. Within narrow limits, a load that a limit
// counts may be charged its fee more (at most), or must be charged its fee less (at least).
type table struct {
	charge []int64
	rate   []int64
	limits []limit
	fees   []int64
	total  int64
}

// weigh sums the table up: the charges of all pieces, less what at-most limits can give away, more what at-least ones add.
func (t *table) weigh(demand []int) {
	t.total = 0
	for i, u := range t.charge {
		t.total += u * int64(demand[i])
	}
	for i, f := range t.fees {
		if t.limits[i].atMost {
			t.total -= f * int64(t.limits[i].n)
		} else {
			t.total += f * int64(t.limits[i].n)
		}
	}
}

// over looks for loads that are charged more than their board's rate: one for each board, the worst. None means that the
// table holds.
func (s *search) over(t *table, demand []int) []found {
	defer func() { s.work += s.loads.work; s.loads.work = 0 }()
	items := make([]item, 0, len(demand))
	for i, k := range s.p.kinds {
		items = append(items, item{w: k.w, u: t.charge[i], most: demand[i], kind: i})
	}
	var narrow []int // limits that matter
	for i, f := range t.fees {
		if f > 0 {
			narrow = append(narrow, i)
		}
	}
	if len(narrow) > 0 {
		return s.overNarrow(t, items, narrow)
	}
	out, _ := s.loads.dearest(items, s.slots(t, nil), empty)
	return out
}

// slots rates every board, with the fees of those limits that are met.
func (s *search) slots(t *table, met []bool) []slot {
	out := make([]slot, 0, len(s.order))
	for _, b := range s.order {
		rate := t.rate[b]
		for i := range met {
			if met[i] && t.limits[i].atMost {
				rate += t.fees[i]
			} else if met[i] {
				rate -= t.fees[i]
			}
		}
		out = append(out, slot{s.p.boards[b].c, rate, b})
	}
	return out
}

// overNarrow does the same when limits count only boards whose load holds certain pieces: loads are begun with every number
// of those pieces, and which limits they meet is then settled.
func (s *search) overNarrow(t *table, items []item, narrow []int) []found {
	first, rest := s.apart(t, items, narrow)
	groups := map[string][]begin{}
	most := s.p.boards[s.order[len(s.order)-1]].c
	var try func(k int, b begin)
	try = func(k int, b begin) {
		s.loads.work++
		if k == len(first) {
			key := t.metKey(narrow, b.load)
			groups[key] = append(groups[key], b)
			return
		}
		it := first[k]
		for n := 0; n <= it.most && b.w+int64(n)*it.w <= most; n++ {
			c := begin{b.w + int64(n)*it.w, b.v + int64(n)*it.u, b.load}
			if n > 0 {
				c.load = append(append([]entry(nil), b.load...), entry{it.kind, n})
			}
			try(k+1, c)
		}
	}
	try(0, begin{})
	worst := map[int]found{}
	for _, key := range sortedKeys(groups) {
		met := make([]bool, len(t.limits))
		for k, i := range narrow {
			met[i] = key[k] == '1'
		}
		slots := s.slots(t, met)
		more, _ := s.loads.dearest(rest, slots, ascending(groups[key], most))
		for _, f := range more {
			if old, ok := worst[f.board]; !ok || f.over > old.over {
				worst[f.board] = f
			}
		}
	}
	var out []found
	for _, b := range s.order {
		if f, ok := worst[b]; ok {
			out = append(out, f)
		}
	}
	return out
}

// apart parts the items that narrow limits ask for from the rest.
func (s *search) apart(t *table, items []item, narrow []int) (first, rest []item) {
	special := map[int]bool{}
	for _, i := range narrow {
		for _, h := range t.limits[i].holds {
			special[h.kind] = true
		}
	}
	for _, it := range items {
		if special[it.kind] {
			first = append(first, it)
		} else {
			rest = append(rest, it)
		}
	}
	return first, rest
}

// metKey writes a 1 for each narrow limit that a load meets, a 0 otherwise.
func (t *table) metKey(narrow []int, load []entry) string {
	key := make([]byte, len(narrow))
	for k, i := range narrow {
		key[k] = '0'
		if t.limits[i].counts(load) {
			key[k] = '1'
		}
	}
	return string(key)
}

func sortedKeys(m map[string][]begin) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}

// ascending sorts beginnings by length and drops those that another beats in both.
func ascending(all []begin, most int64) []begin {
	sort.SliceStable(all, func(x, y int) bool {
		if all[x].w != all[y].w {
			return all[x].w < all[y].w
		}
		return all[x].v > all[y].v
	})
	var out []begin
	for _, b := range all {
		if len(out) == 0 || b.v > out[len(out)-1].v && b.w <= most {
			out = append(out, b)
		}
	}
	return out
}
