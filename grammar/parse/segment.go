package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// made is a statement as it was understood, with what is needed to correct it or to doubt it.
type made struct {
	st    solver.Statement
	at    int
	lim   *limit
	kind  solver.Kind
	doubt *solver.Question // the value cannot be meant as read
	only  bool             // a list of lengths that was told with the price of its only one
	alone bool             // of a count and a size that stand alone: "eight two by fours"
}

// reading is one way to understand a stretch of items, and how far-fetched it is.
type reading struct {
	made  []made
	carry carry
	cost  int
}

const (
	maxSegment = 22  // items in one clause
	farFetched = 900 // cost of what cannot be understood
)

// The costs of a way to cut a line into clauses. The cheapest way that leaves no word over is taken; where two cheapest
// ways say different things, the line is asked back.
const (
	costClause   = 2 // each clause
	costNoBreak  = 1 // a clause that begins without a comma or an "and"
	costInside   = 3 // a comma or an "and" inside a clause
	costEllipsis = 2 // a clause that leans on the one before it
	costDoubt    = 12
)

// cutting finds the cheapest way to cut a list of items into clauses.
type cutting struct {
	s     *Speech
	list  []Item
	force act.Kind
	memo  map[cutKey][]reading
	tries int
}

type cutKey struct {
	i     int
	carry string
}

// cut returns the cheapest readings of list: none when it cannot be understood, several when they differ.
func (s *Speech) cut(list []Item, c carry, force act.Kind) []reading {
	k := cutting{s: s, list: list, force: force, memo: map[cutKey][]reading{}}
	return k.from(0, c)
}

// from returns the cheapest readings of the items from i on.
func (k *cutting) from(i int, c carry) []reading {
	for i < len(k.list) && k.list[i].breaks() {
		i++
	}
	if i >= len(k.list) {
		return []reading{{carry: c}}
	}
	key := cutKey{i, c.key()}
	if r, ok := k.memo[key]; ok {
		return r
	}
	var best []reading
	for j := i + 1; j <= len(k.list) && j-i <= maxSegment; j++ {
		seg := k.list[i:j]
		if seg[len(seg)-1].breaks() || !endsHere(k.list, j) {
			continue
		}
		if k.tries++; k.tries > 3000 {
			break
		}
		for _, r := range k.s.clause(seg, c, k.force) {
			r.cost += costClause + k.inside(seg)
			if i > 0 && !k.list[i-1].breaks() {
				r.cost += costNoBreak
			}
			for _, rest := range k.from(j, r.carry) {
				best = keepCheapest(best, join(r, rest))
			}
		}
	}
	k.memo[key] = best
	return best
}

// endsHere reports whether a clause may end before item j: what only makes sense after a value stays with it.
func endsHere(list []Item, j int) bool {
	if j >= len(list) || list[j].value() {
		return true
	}
	if list[j].Kind == lexicon.Loc && list[j].Key() == "in all" && !list[j-1].breaks() {
		return false
	}
	switch list[j].Kind {
	case lexicon.Bound, lexicon.ThanNow, lexicon.BestTail, lexicon.Each, lexicon.HaveTail:
		return false
	}
	return true
}

func (k *cutting) inside(seg []Item) int {
	n := 0
	for _, it := range seg {
		if it.breaks() {
			n += costInside
			if it.Kind == lexicon.But {
				n += costInside
			}
		}
	}
	return n
}

func join(a, b reading) reading {
	out := reading{carry: b.carry, cost: a.cost + b.cost}
	out.made = append(append(make([]made, 0, len(a.made)+len(b.made)), a.made...), b.made...)
	return out
}

// keepCheapest adds r to readings that are equally cheap and say something else.
func keepCheapest(best []reading, r reading) []reading {
	if len(best) > 0 {
		switch {
		case r.cost > best[0].cost:
			return best
		case r.cost < best[0].cost:
			return []reading{r}
		}
		for _, b := range best {
			if says(b.made) == says(r.made) {
				return best
			}
			if sameSet(b.made, r.made) {
				if inOrder(r.made) && len(best) == 1 {
					return []reading{r}
				}
				return best
			}
		}
		if len(best) > 3 {
			return best
		}
	}
	return append(best, r)
}

// sameSet reports whether two readings say the same things in another order.
func sameSet(a, b []made) bool {
	if len(a) != len(b) {
		return false
	}
	seen := map[string]int{}
	for i := range a {
		seen[a[i].st.String()]++
		seen[b[i].st.String()]--
	}
	for _, n := range seen {
		if n != 0 {
			return false
		}
	}
	return true
}

// inOrder reports whether things stand in the order in which they were said.
func inOrder(list []made) bool {
	for i := 1; i < len(list); i++ {
		if list[i].at < list[i-1].at {
			return false
		}
	}
	return true
}

func says(list []made) string {
	s := ""
	for _, m := range list {
		s += m.st.String() + ";"
	}
	return s
}

// wished reports whether a form was said already in this breath.
func (s *Speech) wished(form string) bool {
	for _, a := range s.Acts {
		if a.String() == form {
			return true
		}
	}
	return false
}

// concluded reports whether a change only repeats, after "so", the one before it: "we could lose two, so go two fewer".
func (s *Speech) concluded(g *group, m made) bool {
	n := len(s.Acts)
	if n == 0 || !Changes(m.st.Op) || s.Acts[n-1].String() != m.st.String() {
		return false
	}
	for _, it := range g.items {
		before := it.Before
		if it.value() && len(it.lim.lead) > 0 {
			before = it.lim.lead[0].Before
		}
		if it.startAt() > s.Acts[n-1].At && (before == "so" || strings.HasPrefix(before, "so ")) {
			return true
		}
	}
	return false
}

func (c carry) key() string {
	s := ""
	if c.Name != nil {
		s = c.Name.String()
	}
	if c.item != nil {
		s += "/" + c.item.String()
	}
	for _, v := range c.sold {
		s += v.String() + ","
	}
	return s + "/" + measure.Itoa(c.bay) + c.Wall + c.slope.key() + c.spot.at + measure.Itoa(c.spot.rail)
}
