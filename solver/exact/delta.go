package exact

// delta is the number r + k·δ, where δ is positive and less than every positive rational: "more than 3" is at least
// 3 + δ. So strict limits need no tolerance (Dutertre and de Moura, A Fast Linear-Arithmetic Solver for DPLL(T), CAV 2006).
type delta struct{ r, k Rat }

func (a *delta) cmp(b *delta) int {
	if c := a.r.Cmp(b.r); c != 0 {
		return c
	}
	return a.k.Cmp(b.k)
}

func (a *delta) sub(b *delta) delta { return delta{a.r.Sub(b.r), subK(a.k, b.k)} }

// subK and scaled skip the arithmetic of the infinitesimal part where it is 0, as it nearly always is.
func subK(a, b Rat) Rat {
	if b.Sign() == 0 {
		return a
	}
	return a.Sub(b)
}

func (a *delta) scaled(c Rat) delta {
	if a.k.Sign() == 0 {
		return delta{r: a.r.Mul(c)}
	}
	return delta{a.r.Mul(c), a.k.Mul(c)}
}

// add adds c times b to a.
func (a *delta) add(b *delta, c Rat) {
	a.r = a.r.plusProduct(b.r, c)
	if b.k.Sign() != 0 {
		a.k = a.k.plusProduct(b.k, c)
	}
}

func (a *delta) sign() int {
	if s := a.r.Sign(); s != 0 {
		return s
	}
	return a.k.Sign()
}

// at returns the number for a concrete δ.
func (a *delta) at(d Rat) Rat { return a.r.plusProduct(a.k, d) }

// concrete lowers d, if need be, so that lo <= hi, which holds for the infinitesimal δ, holds for δ = d too.
func concrete(d Rat, lo, hi *delta) Rat {
	if fall := subK(lo.k, hi.k); fall.Sign() > 0 {
		if room := hi.r.Sub(lo.r); room.Sign() > 0 {
			return Min(d, room.Div(fall))
		}
	}
	return d
}
