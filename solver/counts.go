package solver

import (
	"math"
	"slices"

	"saywright/solver/exact"
)

// most stands for a count without an upper end.
const most = math.MaxInt32

// counts is what the laws that are on leave of a count: least to greatest, and the laws that say so.
type counts struct {
	lo, hi       int
	byLow, byTop set
}

// limits narrows a count by the laws on it: rails, bays, added posts, openings.
func (p *problem) limits(q Quantity, on set, least int) counts {
	c := counts{lo: least, hi: most}
	for i := range p.laws {
		l := &p.laws[i]
		if !on.has(i) {
			continue
		}
		if need := p.needs(q, l.said); need > c.lo {
			c.lo, c.byLow = need, set{}
			c.byLow.add(i)
		}
		if l.said.Name.Quantity != q || l.said.Value.Of != nil {
			continue
		}
		lo, hi := countRange(l.said)
		if lo > c.lo {
			c.lo, c.byLow = lo, set{}
			c.byLow.add(i)
		}
		if hi < c.hi {
			c.hi, c.byTop = hi, set{}
			c.byTop.add(i)
		}
	}
	return c
}

// needs is the least count that a law takes for granted when it names a part: rail 3 needs three rails.
func (p *problem) needs(q Quantity, s Statement) int {
	names := []Name{s.Name}
	if s.Value.Of != nil {
		names = append(names, *s.Value.Of)
	}
	n := 0
	for _, name := range names {
		switch q {
		case Rails:
			n = max(n, name.Rail)
		case Bays:
			n = max(n, name.Bay)
		case Openings:
			n = max(n, name.Opening)
		case AddedPosts:
			n = max(n, name.Post)
		}
	}
	return n
}

// countRange reads a count's statement as least and greatest whole number.
func countRange(s Statement) (lo, hi int) {
	lo, hi = math.MinInt32, most
	v := s.Value.Num
	switch s.Op {
	case Eq:
		if !v.IsInt() {
			return 1, 0
		}
		lo, hi = whole(v), whole(v)
	case GE:
		lo = whole(v.Ceil())
	case GT:
		lo = whole(v.Floor()) + 1
	case LE:
		hi = whole(v.Floor())
	case LT:
		hi = whole(v.Ceil()) - 1
	case In:
		lo, hi = whole(v.Ceil()), whole(s.Upper.Num.Floor())
	}
	return lo, hi
}

func whole(r exact.Rat) int {
	n, ok := r.Int64()
	switch {
	case !ok && r.Sign() > 0 || n > most-1:
		return most - 1
	case !ok || n < math.MinInt32:
		return math.MinInt32
	}
	return int(n)
}

// tied reports whether a law ties one count to another, and whether the cell keeps it; a cell that stands for more
// keeps every tie, since one of those it stands for may.
func (p *problem) tied(i int, c *cell) (keeps bool) {
	s := p.laws[i].said
	if KindOf(s.Name.Quantity) != Count || s.Value.Of == nil {
		return true
	}
	a, okA := c.count(s.Name.Quantity)
	b, okB := c.count(s.Value.Of.Quantity)
	if !okA || !okB || c.more {
		return true
	}
	right := exact.Int(b).Mul(s.Value.Factor()).Add(s.Value.Num)
	return Compare(Tally(a), string(s.Op), Scalar(right)).Holds()
}

func (c *cell) count(q Quantity) (int, bool) {
	switch q {
	case Rails:
		return c.rails, c.rails > 0
	case Bays:
		return c.bays.lo, c.bays.lo > 0 && c.bays.exact()
	case Openings:
		return c.openings, c.bays.lo > 0
	case AddedPosts:
		return c.posts(), c.bays.lo > 0 && c.bays.exact()
	}
	return 0, false
}

// openingCounts lists how many openings there may be under the laws that are on, the likeliest first: as many as are
// told; else one where an opening is spoken of, and none where it is not. Three are the most that this solves. A law that
// is off takes no opening away: it only leaves open how many there are, so that fewer laws never hold less. by has the
// laws without which there might be another number.
func (p *problem) openingCounts(on set) (ks []int, by set) {
	var hard set
	for i := range p.laws {
		if !p.laws[i].soft {
			hard.add(i)
		}
	}
	least, by := p.spokenOpenings(on)
	spoken, _ := p.spokenOpenings(hard)
	told, ever := p.limits(Openings, on, 0), p.limits(Openings, hard, 0)
	isTold, everTold := p.tellsOpenings(on), p.tellsOpenings(hard)
	for k := 0; k <= max(MostOpenings, spoken); k++ {
		may := least <= k && k <= spoken || everTold && ever.lo <= k && k <= ever.hi && k <= MostOpenings
		if isTold {
			may = told.lo <= k && k <= told.hi && k <= MostOpenings
		}
		if may {
			ks = append(ks, k)
		}
	}
	if isTold {
		by = told.byLow.union(told.byTop)
	}
	// the count that is spoken of comes first where it may
	if i := slices.Index(ks, least); i > 0 {
		ks[0], ks[i] = ks[i], ks[0]
	}
	return ks, by
}

// spokenOpenings is how many openings the laws that are on speak of, and a law that speaks of the last of them. What is
// only wished for is always spoken of.
func (p *problem) spokenOpenings(on set) (n int, by set) {
	for _, w := range p.wishes {
		if openingWords[w.Name.Quantity] {
			n = max(n, 1, w.Name.Opening)
		} else if _, q, ok := GoalOf(w); ok && openingWords[q] {
			n = max(n, 1)
		}
	}
	for i := range p.laws {
		l := &p.laws[i]
		if !on.has(i) || l.soft || l.said.Name.Quantity == Openings {
			continue
		}
		if m := openingsNamed(l.said); m > n {
			n, by = m, set{}
			by.add(i)
		}
	}
	return n, by
}

// openingsNamed is how many openings there must be for a statement to speak of them.
func openingsNamed(s Statement) int {
	n := 0
	if openingWords[s.Name.Quantity] {
		n = max(1, s.Name.Opening)
	}
	if s.Value.Of != nil && openingWords[s.Value.Of.Quantity] {
		n = max(n, 1, s.Value.Of.Opening)
	}
	return n
}

func (p *problem) tellsOpenings(on set) bool {
	for i := range p.laws {
		if on.has(i) && p.laws[i].said.Name.Quantity == Openings {
			return true
		}
	}
	return false
}

// MostOpenings is how many walk-throughs one wall may have here.
const MostOpenings = 3

// stiffenersIn is how many stiffeners stand in a run of bays, where the laws bind that: the cell's choice, or else the
// most that are allowed, which serves an upper limit on their spacing best.
func (s *sheet) stiffenersIn(pc *piece) (m int, bound bool) {
	if s.c.stiff != nil {
		return s.c.stiff[pc.first-1], true
	}
	c := s.p.stiffenerLimits(s.on, pc.first, pc.bays == 1)
	if c.hi >= most {
		return 0, false
	}
	return max(c.hi, 0), true
}

// stiffenerLimits are the laws on the number of stiffeners in a bay.
func (p *problem) stiffenerLimits(on set, bay int, alone bool) counts {
	c := counts{lo: 0, hi: most}
	for i := range p.laws {
		s := p.laws[i].said
		if !on.has(i) || s.Name.Quantity != Stiffeners || s.Value.Of != nil {
			continue
		}
		if s.Name.Bay > 0 && (!alone || s.Name.Bay != bay) || s.Name.Bay == 0 && alone && p.ownStiffeners(on, bay) {
			continue
		}
		lo, hi := countRange(s)
		if lo > c.lo {
			c.lo, c.byLow = lo, set{}
			c.byLow.add(i)
		}
		if hi < c.hi {
			c.hi, c.byTop = hi, set{}
			c.byTop.add(i)
		}
	}
	return c
}

func (p *problem) ownStiffeners(on set, bay int) bool {
	for i := range p.laws {
		s := p.laws[i].said
		if on.has(i) && s.Name.Quantity == Stiffeners && s.Name.Bay == bay && s.Op == Eq {
			return true
		}
	}
	return false
}

// stiffenerLaws are all laws on the number of stiffeners: they take part in a refusal by their spacing.
func (p *problem) stiffenerLaws(on set) set {
	var out set
	for i := range p.laws {
		if on.has(i) && p.laws[i].said.Name.Quantity == Stiffeners {
			out.add(i)
		}
	}
	return out
}
