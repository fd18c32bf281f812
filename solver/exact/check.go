package exact

import (
	"fmt"
	"math/big"
)

// This file judges answers. It shares no code with the solver: it reads the rows again and computes with math/big alone.

// Check returns nil when the certificate refutes the system: its weighted sum of rows leaves no unknowns and says
// something false. Otherwise it says what does not hold.
func Check(s *System, c Certificate) error {
	sum, err := weigh(s, c, 1)
	if err != nil {
		return err
	}
	for v, x := range sum.left {
		if x.Sign() != 0 {
			return fmt.Errorf("unknown %d: got %s of it left over, want 0", v, x.RatString())
		}
	}
	return sum.falls(new(big.Rat), 1, true)
}

// CheckBound returns nil when the certificate proves that the objective is at least (or else at most) b.Val wherever
// the system holds, and more (less) than it where b is open. It does not say that the value is attained: a point does.
func CheckBound(s *System, obj []Term, atLeast bool, b Bound, c Certificate) error {
	if b.None {
		return fmt.Errorf("got no bound, want one to check; that there is none is for CheckRay")
	}
	way := 1
	if atLeast {
		way = -1
	}
	sum, err := weigh(s, c, way)
	if err != nil {
		return err
	}
	want, err := spread(s, obj)
	if err != nil {
		return err
	}
	for v, x := range sum.left {
		if x.Cmp(want[v]) != 0 {
			return fmt.Errorf("unknown %d: got %s of it, want %s as the objective has", v, x.RatString(), want[v].RatString())
		}
	}
	return sum.falls(b.Val.Big(), way, b.Open)
}

// CheckPoint returns nil when the point satisfies every row, strict rows strictly.
func CheckPoint(s *System, point []Rat) error {
	if len(point) != s.Vars {
		return fmt.Errorf("got %d values, want %d", len(point), s.Vars)
	}
	for i, row := range s.Rows {
		sum, err := evaluate(s, row.Terms, point)
		if err != nil {
			return fmt.Errorf("row %d: %w", i, err)
		}
		if !stands(sum.Cmp(row.RHS.Big()), row.Rel) {
			return fmt.Errorf("row %d: got %s, want it %s %s", i, sum.RatString(), row.Rel, row.RHS)
		}
	}
	return nil
}

// CheckRay returns nil when one can go along the ray without end, wherever one is in the system, while the objective
// falls (or else rises): with any one point, that proves that it has no least (greatest) value.
func CheckRay(s *System, obj []Term, falls bool, ray []Rat) error {
	if len(ray) != s.Vars {
		return fmt.Errorf("got %d values, want %d", len(ray), s.Vars)
	}
	for i, row := range s.Rows {
		sum, err := evaluate(s, row.Terms, ray)
		if err != nil {
			return fmt.Errorf("row %d: %w", i, err)
		}
		if sign := sum.Sign(); sign > 0 && row.Rel != GE && row.Rel != GT || sign < 0 && row.Rel != LE && row.Rel != LT {
			return fmt.Errorf("row %d: got a change of %s, and its limit is met some day", i, sum.RatString())
		}
	}
	sum, err := evaluate(s, obj, ray)
	if err != nil {
		return err
	}
	if falls && sum.Sign() >= 0 || !falls && sum.Sign() <= 0 {
		return fmt.Errorf("objective: got a change of %s, want it on the other side of 0", sum.RatString())
	}
	return nil
}

// weighted is a sum of rows: what is left of each unknown, the right side, and whether a strict row takes part.
type weighted struct {
	left   []*big.Rat
	right  *big.Rat
	strict bool
}

// weigh adds the rows up, each of which must point to "at most" (way 1) or to "at least" (way -1).
func weigh(s *System, c Certificate, way int) (weighted, error) {
	sum := weighted{left: zeros(s.Vars), right: new(big.Rat)}
	for _, m := range c {
		if m.Row < 0 || m.Row >= len(s.Rows) {
			return sum, fmt.Errorf("row %d: got a row that is not there, want one of %d", m.Row, len(s.Rows))
		}
		row, mult := s.Rows[m.Row], m.Mult.Big()
		if err := points(row.Rel, mult.Sign()*way); err != nil {
			return sum, fmt.Errorf("row %d: %w", m.Row, err)
		}
		if err := addTerms(sum.left, row.Terms, mult); err != nil {
			return sum, fmt.Errorf("row %d: %w", m.Row, err)
		}
		sum.right.Add(sum.right, new(big.Rat).Mul(row.RHS.Big(), mult))
		sum.strict = sum.strict || mult.Sign() != 0 && (row.Rel == LT || row.Rel == GT)
	}
	return sum, nil
}

// points returns nil when a row times a number of that sign still says "at most".
func points(rel Rel, sign int) error {
	switch {
	case rel < LE || rel > GT:
		return fmt.Errorf("got relation %d, want one of five", rel)
	case rel == EQ, sign == 0, sign > 0 && (rel == LE || rel == LT), sign < 0 && (rel == GE || rel == GT):
		return nil
	}
	return fmt.Errorf("got a multiplier that turns it round, want the other sign")
}

// falls returns nil when the right side reaches the value from above (way 1) or from below (way -1): at most it, and less
// than it, or equal with a strict row taking part, where open is asked.
func (w weighted) falls(value *big.Rat, way int, open bool) error {
	d := w.right.Cmp(value) * way
	if d < 0 || d == 0 && (!open || w.strict) {
		return nil
	}
	return fmt.Errorf("right side: got %s, want it past %s", w.right.RatString(), value.RatString())
}

func addTerms(sum []*big.Rat, terms []Term, mult *big.Rat) error {
	var coef, product big.Rat
	for _, t := range terms {
		if t.Var < 0 || t.Var >= len(sum) {
			return fmt.Errorf("got unknown %d, want one of %d", t.Var, len(sum))
		}
		x := sum[t.Var]
		x.Add(x, product.Mul(t.Coef.into(&coef), mult))
	}
	return nil
}

func spread(s *System, terms []Term) ([]*big.Rat, error) {
	sum := zeros(s.Vars)
	return sum, addTerms(sum, terms, big.NewRat(1, 1))
}

func zeros(n int) []*big.Rat {
	all, z := make([]big.Rat, n), make([]*big.Rat, n)
	for i := range z {
		z[i] = &all[i]
	}
	return z
}

func evaluate(s *System, terms []Term, at []Rat) (*big.Rat, error) {
	var coef, x, product big.Rat
	sum := new(big.Rat)
	for _, t := range terms {
		if t.Var < 0 || t.Var >= s.Vars {
			return nil, fmt.Errorf("got unknown %d, want one of %d", t.Var, s.Vars)
		}
		sum.Add(sum, product.Mul(t.Coef.into(&coef), at[t.Var].into(&x)))
	}
	return sum, nil
}

// stands reports whether a comparison (-1, 0, 1) is what the relation wants.
func stands(c int, rel Rel) bool {
	switch rel {
	case LE:
		return c <= 0
	case GE:
		return c >= 0
	case EQ:
		return c == 0
	case LT:
		return c < 0
	case GT:
		return c > 0
	}
	return false
}
