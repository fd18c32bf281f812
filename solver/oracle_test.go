package solver

import (
	"math/big"
)

// An oracle for random walls that shares nothing with the solver but the statements: its own model of the geometry, rail
// and bay counts tried one by one, lengths by Fourier–Motzkin elimination on big.Rat with strict rows kept apart.

// fact is Σ coef·x ≤ rhs, or < where strict.
type fact struct {
	coef   []*big.Rat
	rhs    *big.Rat
	strict bool
}

type facts []fact

func q(n int64) *big.Rat { return big.NewRat(n, 1) }

// say adds Σ coef·x op rhs.
func (f *facts) say(op Op, rhs *big.Rat, coef ...*big.Rat) {
	neg := func(r *big.Rat) *big.Rat { return new(big.Rat).Neg(r) }
	add := func(sign bool, strict bool) {
		row := fact{rhs: rhs, strict: strict, coef: coef}
		if sign {
			row.rhs, row.coef = neg(rhs), make([]*big.Rat, len(coef))
			for i, c := range coef {
				row.coef[i] = neg(c)
			}
		}
		*f = append(*f, row)
	}
	switch op {
	case LE, LT:
		add(false, op == LT)
	case GE, GT:
		add(true, op == GT)
	default:
		add(false, false)
		add(true, false)
	}
}

// without eliminates unknown v: each lower bound on it meets each upper bound.
func (f facts) without(v int) facts {
	var out, low, high facts
	for _, r := range f {
		switch r.coef[v].Sign() {
		case 0:
			out = append(out, r)
		case 1:
			high = append(high, r)
		default:
			low = append(low, r)
		}
	}
	for _, l := range low {
		for _, h := range high {
			a, b := h.coef[v], new(big.Rat).Neg(l.coef[v])
			row := fact{coef: make([]*big.Rat, len(l.coef)), strict: l.strict || h.strict}
			for i := range row.coef {
				row.coef[i] = new(big.Rat).Add(new(big.Rat).Mul(a, l.coef[i]), new(big.Rat).Mul(b, h.coef[i]))
			}
			row.rhs = new(big.Rat).Add(new(big.Rat).Mul(a, l.rhs), new(big.Rat).Mul(b, h.rhs))
			out = append(out, row)
		}
	}
	return out.distinct()
}

// distinct leaves out rows without unknowns that are true, and rows that another with the same left side makes idle.
func (f facts) distinct() facts {
	best := map[string]int{}
	var out facts
	for _, r := range f {
		var first *big.Rat
		for _, c := range r.coef {
			if c.Sign() != 0 {
				first = new(big.Rat).Abs(c)
				break
			}
		}
		if first == nil {
			if s := r.rhs.Sign(); s < 0 || s == 0 && r.strict {
				return facts{r}
			}
			continue
		}
		key := ""
		n := fact{coef: make([]*big.Rat, len(r.coef)), rhs: new(big.Rat).Quo(r.rhs, first), strict: r.strict}
		for i, c := range r.coef {
			n.coef[i] = new(big.Rat).Quo(c, first)
			key += n.coef[i].RatString() + ","
		}
		if at, ok := best[key]; ok {
			if c := n.rhs.Cmp(out[at].rhs); c < 0 || c == 0 && n.strict {
				out[at] = n
			}
			continue
		}
		best[key] = len(out)
		out = append(out, n)
	}
	return out
}

func (f facts) holds(vars int) bool {
	for v := range vars {
		f = f.without(v)
	}
	for _, r := range f {
		if s := r.rhs.Sign(); s < 0 || s == 0 && r.strict {
			return false
		}
	}
	return true
}

// span is the range of unknown v, written as the data writes it: "2", ">2", "<4", "" for no end.
func (f facts) span(vars, v int) (lo, hi string) {
	for u := range vars {
		if u != v {
			f = f.without(u)
		}
	}
	var low, high *fact
	var lowAt, highAt *big.Rat
	for _, r := range f {
		if r.coef[v].Sign() == 0 {
			continue
		}
		at := new(big.Rat).Quo(r.rhs, r.coef[v])
		r := r
		if r.coef[v].Sign() > 0 {
			if c := 0; high == nil || func() bool { c = at.Cmp(highAt); return c < 0 || c == 0 && r.strict }() {
				high, highAt = &r, at
			}
		} else if c := 0; low == nil || func() bool { c = at.Cmp(lowAt); return c > 0 || c == 0 && r.strict }() {
			low, lowAt = &r, at
		}
	}
	if low != nil {
		lo = lowAt.RatString()
		if low.strict {
			lo = ">" + lo
		}
	}
	if high != nil {
		hi = highAt.RatString()
		if high.strict {
			hi = "<" + hi
		}
	}
	return lo, hi
}

func (r Range) written() (lo, hi string) {
	text := func(e End, open string) string {
		switch {
		case e.None:
			return ""
		case e.Open:
			return open + e.Val.String()
		}
		return e.Val.String()
	}
	return text(r[0], ">"), text(r[1], "<")
}
