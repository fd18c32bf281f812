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
	n := s.Name.number(q)
	if s.Value.Of != nil {
		n = max(n, s.Value.Of.number(q))
	}
	return n
}

// number is the number of the part that a name names among those that q counts; 0: none.
func (n *Name) number(q Quantity) int {
	switch q {
	case Rails:
		return n.Rail
	case Bays:
		return n.Bay
	case Openings:
		return n.Opening
	case AddedPosts:
		return n.Post
	}
	return 0
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

// tiedBays narrows the number of bays by the laws that tie one count to another, with k openings and the cell's rails: a
// tie is linear in the bays. by are the laws that narrowed it.
func (p *problem) tiedBays(c *cell, k int, bays tally, on set) (out tally, by set) {
	for i := range p.laws {
		s := p.laws[i].said
		if !on.has(i) || KindOf(s.Name.Quantity) != Count || s.Value.Of == nil {
			continue
		}
		n1, k1, ok1 := c.perBay(s.Name.Quantity, k)
		n2, k2, ok2 := c.perBay(s.Value.Of.Quantity, k)
		if !ok1 || !ok2 {
			continue
		}
		// slope × bays op level
		f := s.Value.Factor()
		slope := exact.Int(n1).Sub(f.Mul(exact.Int(n2)))
		level := f.Mul(exact.Int(k2)).Add(s.Value.Num).Sub(exact.Int(k1))
		if t := bays.within(slope, s.Op, level); t != bays {
			bays = t
			by.add(i)
		}
	}
	return bays, by
}

// perBay writes a count as n × bays + plus.
func (c *cell) perBay(q Quantity, openings int) (n, plus int, ok bool) {
	switch q {
	case Bays:
		return 1, 0, true
	case AddedPosts:
		return 1, openings - 1, true
	case Openings:
		return 0, openings, true
	case Rails:
		return 0, c.rails, c.rails > 0 && !c.more
	}
	return 0, 0, false
}

// within narrows a tally to the whole numbers n with slope × n op level.
func (b tally) within(slope exact.Rat, op Op, level exact.Rat) tally {
	if slope.Sign() == 0 {
		if !Compare(Num(zero), string(op), Num(level)).Holds() {
			return tally{b.lo, b.lo - 1}
		}
		return b
	}
	at := level.Div(slope)
	if slope.Sign() < 0 {
		op = map[Op]Op{LT: GT, LE: GE, GT: LT, GE: LE, Eq: Eq}[op]
	}
	lo, hi := countRange(Statement{Op: op, Value: Value{Num: at}})
	return tally{max(b.lo, lo), min(b.hi, hi)}
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

// stiffenersClash reports whether the laws leave no number of stiffeners for any bay, or for a bay that they name.
func (p *problem) stiffenersClash(on set) (by set, none bool) {
	if !p.named.stiffeners {
		return by, false
	}
	if c := p.stiffenerLimits(on, 0, false); c.lo > c.hi {
		return c.byLow.union(c.byTop), true
	}
	for _, bay := range p.named.bays.list() {
		if c := p.stiffenerLimits(on, bay, true); c.lo > c.hi && p.saysOfStiffeners(on, bay) {
			return c.byLow.union(c.byTop), true
		}
	}
	return by, false
}

// saysOfStiffeners reports whether a law that is on speaks of the stiffeners of this very bay, so that there is one.
func (p *problem) saysOfStiffeners(on set, bay int) bool {
	for i := range p.laws {
		s := &p.laws[i].said
		if on.has(i) && s.Name.Quantity == Stiffeners && s.Name.Bay == bay {
			return true
		}
	}
	return false
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
