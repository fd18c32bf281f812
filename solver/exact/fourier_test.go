package exact

import (
	"math/big"
	"slices"
)

// The independent method: elimination after Fourier (1827) and Motzkin (1936), with math/big only. Unknown by unknown is
// removed by adding every upper limit of it to every lower one, until nothing is left but comparisons of numbers.

// half is a·x <= b, or < where strict, or = where equal.
type half struct {
	a             []*big.Rat
	b             *big.Rat
	strict, equal bool
}

// halves writes the rows as "at most" or "equal"; the objective becomes one unknown more, the last one.
func halves(s *System, obj []Term) []half {
	var hs []half
	add := func(terms []Term, b *big.Rat, sign, last int64, rel Rel) {
		h := half{make([]*big.Rat, s.Vars+1), new(big.Rat).Mul(b, big.NewRat(sign, 1)), rel == LT || rel == GT, rel == EQ}
		for v := range h.a {
			h.a[v] = new(big.Rat)
		}
		for _, t := range terms {
			h.a[t.Var].Add(h.a[t.Var], new(big.Rat).Mul(t.Coef.Big(), big.NewRat(sign, 1)))
		}
		h.a[s.Vars].SetInt64(last)
		hs = append(hs, h)
	}
	for _, r := range s.Rows {
		sign := int64(1)
		if r.Rel == GE || r.Rel == GT {
			sign = -1
		}
		add(r.Terms, r.RHS.Big(), sign, 0, r.Rel)
	}
	add(obj, new(big.Rat), 1, -1, EQ)
	return hs
}

// fourier eliminates all unknowns but the last.
func fourier(s *System, obj []Term) []half {
	hs := tidy(halves(s, obj))
	left := make([]int, s.Vars)
	for v := range left {
		left[v] = v
	}
	for len(left) > 0 {
		best := slices.MinFunc(left, func(u, v int) int { return growth(hs, u) - growth(hs, v) })
		hs = tidy(eliminate(hs, best))
		left = slices.DeleteFunc(left, func(v int) bool { return v == best })
	}
	return hs
}

// growth is how many rows more there are when unknown v is gone; an equation that has it is always taken first.
func growth(hs []half, v int) int {
	up, down := 0, 0
	for _, h := range hs {
		switch sign := h.a[v].Sign(); {
		case sign != 0 && h.equal:
			return -1 << 30
		case sign > 0:
			up++
		case sign < 0:
			down++
		}
	}
	return up*down - up - down
}

func eliminate(hs []half, v int) []half {
	for i, e := range hs {
		if e.equal && e.a[v].Sign() != 0 {
			return substitute(slices.Delete(slices.Clone(hs), i, i+1), e, v)
		}
	}
	var out []half
	for _, h := range hs {
		if h.a[v].Sign() == 0 {
			out = append(out, h)
		}
	}
	for _, u := range hs {
		for _, l := range hs {
			if u.a[v].Sign() > 0 && l.a[v].Sign() < 0 {
				h := combine(u, l, new(big.Rat).Neg(l.a[v]), u.a[v])
				h.strict = u.strict || l.strict
				out = append(out, h)
			}
		}
	}
	return out
}

func substitute(hs []half, e half, v int) []half {
	for i, h := range hs {
		f := new(big.Rat).Quo(h.a[v], e.a[v])
		hs[i] = combine(h, e, big.NewRat(1, 1), f.Neg(f))
		hs[i].strict, hs[i].equal = h.strict, h.equal
	}
	return hs
}

// combine returns p·u + q·l.
func combine(u, l half, p, q *big.Rat) half {
	mix := func(x, y *big.Rat) *big.Rat {
		z := new(big.Rat).Mul(p, x)
		return z.Add(z, new(big.Rat).Mul(q, y))
	}
	h := half{b: mix(u.b, l.b)}
	for i := range u.a {
		h.a = append(h.a, mix(u.a[i], l.a[i]))
	}
	return h
}

// tidy scales the first factor to 1 or -1 and keeps, of rows with the same factors, the tightest.
func tidy(hs []half) []half {
	seen := map[string]int{}
	var out []half
	for _, h := range hs {
		for _, x := range h.a {
			if x.Sign() != 0 {
				f := new(big.Rat).Inv(new(big.Rat).Abs(x))
				for i := range h.a {
					h.a[i] = new(big.Rat).Mul(h.a[i], f)
				}
				h.b = new(big.Rat).Mul(h.b, f)
				break
			}
		}
		if h.equal {
			out = append(out, h)
			continue
		}
		key := ""
		for _, x := range h.a {
			key += x.RatString() + " "
		}
		i, known := seen[key]
		if !known {
			seen[key] = len(out)
			out = append(out, h)
		} else if c := h.b.Cmp(out[i].b); c < 0 || c == 0 && h.strict {
			out[i] = h
		}
	}
	return out
}

// verdict reads whether the system holds at all, and the ends of the objective.
func verdict(s *System, obj []Term) (feasible bool, lo, hi Bound) {
	lo.None, hi.None = true, true
	z := s.Vars
	for _, h := range fourier(s, obj) {
		sign := h.a[z].Sign()
		if sign == 0 {
			if c := h.b.Sign(); c < 0 || c == 0 && h.strict || c > 0 && h.equal {
				return false, Bound{}, Bound{}
			}
			continue
		}
		end := new(big.Rat).Quo(h.b, h.a[z])
		b := Bound{Val: FromBig(end), Open: h.strict}
		if (sign > 0 || h.equal) && (hi.None || tighter(b, hi, -1)) {
			hi = b
		}
		if (sign < 0 || h.equal) && (lo.None || tighter(b, lo, 1)) {
			lo = b
		}
	}
	if !lo.None && !hi.None {
		if c := lo.Val.Big().Cmp(hi.Val.Big()); c > 0 || c == 0 && (lo.Open || hi.Open) {
			return false, Bound{}, Bound{}
		}
	}
	return true, lo, hi
}

func tighter(a, b Bound, side int) bool {
	c := a.Val.Big().Cmp(b.Val.Big()) * side
	return c > 0 || c == 0 && a.Open && !b.Open
}
