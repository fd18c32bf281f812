package stock

import (
	"fmt"
	"math/big"

	"saywright/solver/exact"
)

// tells: the table that a case shows is that of its single use, its fees are limits of the case, its boards are priced as it
// says, and its bound is the sum that it shows.
func (c *claimed) tells(at *Case, in caseOf) error {
	t := at.Table
	if len(at.Uses) != 1 || t.Scale <= 0 || len(t.Charges) != len(c.proof.Pieces) || len(t.Loads) != len(c.proof.Kinds) {
		return fmt.Errorf("it is not of one table")
	}
	of := c.Tables[at.Uses[0].Table]
	part := c.Unit.Mul(exact.New(at.Uses[0].Times, at.Scale)) // what one part of the claim's table is of the goal
	same := func(shown, meant int64) bool { return exact.New(shown, t.Scale).Eq(part.Mul(exact.New(meant, 1))) }
	total := new(big.Int)
	for i, u := range t.Charges {
		if !same(u, of.Charges[i]) {
			return fmt.Errorf("a piece of %s is charged %d", c.proof.Pieces[i].Length, u)
		}
		addTimes(total, int64(c.proof.Pieces[i].Count), u)
	}
	if !total.IsInt64() || total.Int64() != t.Total {
		return fmt.Errorf("the charges come to %s, not %d", total, t.Total)
	}
	for b, l := range t.Loads {
		if !same(l, of.Loads[b]) {
			return fmt.Errorf("a board of %s is priced at %d", c.proof.Kinds[b].Length, l)
		}
	}
	if err := c.feesHold(t, of, in, same); err != nil {
		return err
	}
	for b := range t.Loads {
		if priced := c.pricedWith(t, b); priced.Cmp(big.NewRat(t.Loads[b], 1)) < 0 {
			return fmt.Errorf("a board of %s with its fees comes to %s, less than %d", c.proof.Kinds[b].Length, priced, t.Loads[b])
		}
	}
	for _, f := range t.Fees {
		n := int64(f.Count)
		if f.AtMost {
			n = -n
		}
		addTimes(total, n, f.Amount)
	}
	if bound := exact.FromBig(new(big.Rat).SetFrac(total, big.NewInt(t.Scale))); !bound.Eq(t.Bound) {
		return fmt.Errorf("its bound is %s, not %s", bound, t.Bound)
	}
	if !at.Sums && t.Bound.Div(c.Unit).Ceil().Less(c.Least.Div(c.Unit)) {
		return fmt.Errorf("its bound is only %s", t.Bound)
	}
	return nil
}

// feesHold: each fee is for a limit that the case has.
func (c *claimed) feesHold(t, of *Table, in caseOf, same func(shown, meant int64) bool) error {
	for _, f := range t.Fees {
		ok := false
		switch {
		case f.Amount < 0 || f.Count < 0:
		case f.Spend:
			ok = f.AtMost && c.spend != nil && int64(f.Count) == c.spent && f.Unit.Eq(c.before)
		case len(f.Holds) > 0:
			for _, g := range of.Fees {
				ok = ok || f.AtMost == g.AtMost && f.Count == g.Count && sameHolds(f.Holds, g.Holds) && same(f.Amount, g.Amount)
			}
		case len(f.Boards) == 1 && f.Boards[0] >= 0 && f.Boards[0] < len(in.lo):
			b, n := f.Boards[0], int64(f.Count)
			ok = f.AtMost && in.up[b] <= n || !f.AtMost && in.lo[b] >= n
		}
		if !ok {
			return fmt.Errorf("a fee of %d for %d boards is no limit of the case", f.Amount, f.Count)
		}
	}
	return nil
}

// pricedWith is a board's price in parts of the table, with its fees but those for what loads hold, which the claim's
// table has settled.
func (c *claimed) pricedWith(t *Table, b int) *big.Rat {
	v := c.Unit.Mul(exact.New(c.goal[b], 1)).Mul(exact.New(t.Scale, 1))
	for _, f := range t.Fees {
		amount := exact.New(f.Amount, 1)
		switch {
		case f.Spend:
			v = v.Add(amount.Mul(exact.New(c.spend[b], 1)))
		case len(f.Holds) > 0 || f.Boards[0] != b:
		case f.AtMost:
			v = v.Add(amount)
		default:
			v = v.Sub(amount)
		}
	}
	return v.Big()
}
