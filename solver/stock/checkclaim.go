package stock

import (
	"fmt"
	"math/big"

	"saywright/solver/exact"
)

// caseOf is a part of all baskets, as the checker goes down the cases: so many boards of each kind, and splits by what loads
// hold.
type caseOf struct {
	lo, up []int64
	most   []Split // at most Count
	least  []Split // at least Count
}

// claimed is a claim under check, in whole units.
type claimed struct {
	Claim
	proof  Proof
	goal   []int64   // by kind
	want   int64     // Least
	spend  []int64   // by kind, of the claim before, nil for none
	spent  int64     // what was claimed of it
	before exact.Rat // its unit
}

// checkClaims: each claim follows from its tables, and they hold.
func checkClaims(j Job, proof Proof) error {
	var before *claimed
	for n, c := range proof.Claims {
		now := &claimed{Claim: c, proof: proof}
		if err := now.inUnits(); err != nil {
			return fmt.Errorf("claim %d: %w", n, err)
		}
		if before != nil {
			now.spend, now.spent, now.before = before.goal, before.want, before.Unit
		}
		for k, t := range c.Tables {
			if err := checkTable(j, proof, t); err != nil {
				return fmt.Errorf("claim %d, table %d: %w", n, k, err)
			}
		}
		if err := now.closed(c.Root, now.all()); err != nil {
			return fmt.Errorf("claim %d: %w", n, err)
		}
		before = now
	}
	return nil
}

// inUnits turns what boards have of the goal into whole units.
func (c *claimed) inUnits() error {
	if c.Unit.Sign() <= 0 {
		return fmt.Errorf("the unit is %s", c.Unit)
	}
	for _, k := range c.proof.Kinds {
		var v exact.Rat
		switch {
		case k.Have >= 0:
		case c.Of == LeastCost:
			v = k.Price
		case c.Of == LeastLength:
			v = k.Length
		default:
			v = exact.Int(1)
		}
		n, ok := v.Div(c.Unit).Int64()
		if !ok || n < 0 {
			return fmt.Errorf("%s is no whole number of %s", v, c.Unit)
		}
		c.goal = append(c.goal, n)
	}
	n, ok := c.Least.Div(c.Unit).Int64()
	if !ok {
		return fmt.Errorf("%s is no whole number of %s", c.Least, c.Unit)
	}
	c.want = n
	return nil
}

// all is every basket worth a look: no more boards of a kind than there are pieces, as one without a piece can stay.
func (c *claimed) all() caseOf {
	n := int64(0)
	for _, s := range c.proof.Pieces {
		n += int64(s.Count)
	}
	var out caseOf
	for _, k := range c.proof.Kinds {
		up := n
		if k.Have >= 0 {
			up = int64(k.Have)
		}
		out.lo, out.up = append(out.lo, 0), append(out.up, up)
	}
	return out
}

// closed goes down the tree of cases.
func (c *claimed) closed(at *Case, in caseOf) error {
	if at == nil {
		return fmt.Errorf("a case is left open")
	}
	if at.Split == nil {
		return c.closes(at, in)
	}
	less, more := in.copy(), in.copy()
	s := *at.Split
	switch {
	case len(s.Holds) > 0 && len(s.Boards) != len(in.lo):
		return fmt.Errorf("a split by what some boards hold")
	case len(s.Holds) > 0:
		less.most = append(less.most, s)
		s.Count++
		more.least = append(more.least, s)
	case len(s.Boards) != 1 || s.Boards[0] < 0 || s.Boards[0] >= len(in.lo):
		return fmt.Errorf("a split by boards %v", s.Boards)
	default:
		b, n := s.Boards[0], int64(s.Count)
		less.up[b] = min(less.up[b], n)
		more.lo[b] = max(more.lo[b], n+1)
	}
	if err := c.closed(at.AtMost, less); err != nil {
		return err
	}
	return c.closed(at.More, more)
}

func (c caseOf) copy() caseOf {
	return caseOf{
		append([]int64(nil), c.lo...), append([]int64(nil), c.up...),
		append([]Split(nil), c.most...), append([]Split(nil), c.least...),
	}
}

func (c caseOf) empty() bool {
	for b := range c.lo {
		if c.lo[b] > c.up[b] {
			return true
		}
	}
	return false
}

// closes asks whether a case that is not split holds nothing less than was claimed.
func (c *claimed) closes(at *Case, in caseOf) error {
	if in.empty() {
		return nil
	}
	if at.Exact {
		if c.fewestExactly(in) < c.want {
			return fmt.Errorf("fewer than %d boards make up what was claimed before", c.want)
		}
		return nil
	}
	if at.Scale <= 0 {
		return fmt.Errorf("a scale of %d", at.Scale)
	}
	hold, total, err := c.held(at, in)
	if err != nil {
		return err
	}
	if at.Table != nil {
		if err := c.tells(at, in); err != nil {
			return fmt.Errorf("the table of a case: %w", err)
		}
	}
	if low := c.lowest(at, in, hold, total); low.Cmp(big.NewInt(c.want)) >= 0 {
		return nil
	}
	if !at.Sums {
		return fmt.Errorf("a case is closed for no more than %s", at.Bound)
	}
	return c.noSums(at, in, hold, total)
}

// held sums up what each board holds by the tables of a case, and what must be held.
func (c *claimed) held(at *Case, in caseOf) (hold []*big.Int, total *big.Int, err error) {
	total = new(big.Int)
	for range in.lo {
		hold = append(hold, new(big.Int))
	}
	for _, u := range at.Uses {
		if u.Table < 0 || u.Table >= len(c.Tables) || u.Times < 0 {
			return nil, nil, fmt.Errorf("a case uses table %d %d times", u.Table, u.Times)
		}
		t := c.Tables[u.Table]
		if err := in.allows(t); err != nil {
			return nil, nil, err
		}
		addTimes(total, u.Times, t.Total)
		for b, l := range t.Loads {
			addTimes(hold[b], u.Times, l)
		}
	}
	if at.Spend != 0 {
		if c.spend == nil {
			return nil, nil, fmt.Errorf("a case leans on a claim that was not made")
		}
		addTimes(total, -at.Spend, c.spent)
		for b, q := range c.spend {
			addTimes(hold[b], -at.Spend, q)
		}
	}
	return hold, total, nil
}

func addTimes(sum *big.Int, n, v int64) {
	sum.Add(sum, new(big.Int).Mul(big.NewInt(n), big.NewInt(v)))
}

// allows: a table with fees is for cases whose limits are as tight as its fees say.
func (c caseOf) allows(t *Table) error {
	for _, f := range t.Fees {
		ok := false
		if f.AtMost {
			for _, s := range c.most {
				ok = ok || sameHolds(s.Holds, f.Holds) && s.Count <= f.Count
			}
		} else {
			for _, s := range c.least {
				ok = ok || sameHolds(s.Holds, f.Holds) && s.Count >= f.Count
			}
		}
		if !ok {
			return fmt.Errorf("a table leans on a limit that its case does not have")
		}
	}
	return nil
}

func sameHolds(a, b []Hold) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

// lowest is the least of the goal that a case can have, in whole units: what must be held, and for each board what it has of
// the goal beyond what it holds.
func (c *claimed) lowest(at *Case, in caseOf, hold []*big.Int, total *big.Int) *big.Int {
	v := new(big.Int).Set(total)
	for b, h := range hold {
		d := new(big.Int).Mul(big.NewInt(at.Scale), big.NewInt(c.goal[b]))
		d.Sub(d, h)
		n := in.lo[b]
		if d.Sign() < 0 {
			n = in.up[b]
		}
		v.Add(v, d.Mul(d, big.NewInt(n)))
	}
	v.Neg(v).Div(v, big.NewInt(at.Scale)) // Euclidean, the scale is positive: the floor
	return v.Neg(v)
}
