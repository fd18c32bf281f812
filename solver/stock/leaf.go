package stock

import "math/big"

// leaf is what closes a box: tables taken together, and what was spent before.
type leaf struct {
	uses  []using
	scale int64
	spend int64
	sums  bool
	exact bool
	box   *box // what it closes
}

type using struct {
	t     *table
	times int64
}

// holdings are what boards hold by a leaf's tables, and what must be held.
type holdings struct {
	rate  []*big.Int
	total *big.Int
}

func (s *search) holdings(l *leaf) holdings {
	h := holdings{total: new(big.Int)}
	for range s.price {
		h.rate = append(h.rate, new(big.Int))
	}
	for _, u := range l.uses {
		n := big.NewInt(u.times)
		h.total.Add(h.total, new(big.Int).Mul(n, big.NewInt(u.t.total)))
		for b, r := range u.t.rate {
			h.rate[b].Add(h.rate[b], new(big.Int).Mul(n, big.NewInt(r)))
		}
	}
	if l.spend != 0 {
		n := big.NewInt(l.spend)
		h.total.Sub(h.total, new(big.Int).Mul(n, big.NewInt(s.spendAt)))
		for b, q := range s.spend {
			h.rate[b].Sub(h.rate[b], new(big.Int).Mul(n, big.NewInt(q)))
		}
	}
	return h
}

// slack is by how much each board's price exceeds what it holds, in parts of which scale make one unit of price.
func (s *search) slack(l *leaf, h holdings) []*big.Int {
	out := make([]*big.Int, len(s.price))
	for b, p := range s.price {
		out[b] = new(big.Int).Mul(big.NewInt(l.scale), big.NewInt(p))
		out[b].Sub(out[b], h.rate[b])
	}
	return out
}

// bounds is the least price, in whole units, of what is in a box by a leaf, exactly.
func (s *search) bounds(l *leaf, b *box) *big.Int {
	h := s.holdings(l)
	v := new(big.Int).Set(h.total)
	for i, d := range s.slack(l, h) {
		n := b.lo[i]
		if d.Sign() < 0 {
			n = b.up[i]
		}
		v.Add(v, d.Mul(d, big.NewInt(int64(n))))
	}
	return ceilBig(v, big.NewInt(l.scale))
}

func ceilBig(a, b *big.Int) *big.Int {
	q, r := new(big.Int).DivMod(a, b, new(big.Int)) // Euclidean: b > 0, so q is the floor
	if r.Sign() > 0 {
		q.Add(q, big.NewInt(1))
	}
	return q
}

// single is the leaf that makes the most of one table in a box, and the bound it gives: the scale is best where some board
// holds just its price.
func (s *search) single(t *table, b *box) (*leaf, *big.Int) {
	var best *leaf
	var most *big.Int
	for i, p := range s.price {
		if t.rate[i] <= 0 || p <= 0 || b.up[i] == 0 {
			continue
		}
		g := gcd64(p, t.rate[i])
		l := &leaf{uses: []using{{t, p / g}}, scale: t.rate[i] / g}
		if v := s.bounds(l, b); best == nil || v.Cmp(most) > 0 {
			best, most = l, v
		}
	}
	return best, most
}

func gcd64(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// fine is how finely tables are blended.
const fine = 1 << 30

// together is the leaf of the tables that are tight at the corner last found.
func (s *search) together() *leaf {
	c := s.corner
	l := &leaf{scale: int64(s.scale) * fine}
	first := 0
	if s.spend != nil {
		first = spendRows
	}
	for k, t := range c.tight {
		if t < 0 || c.y[k] <= 0 {
			continue
		}
		if t >= first {
			if n := int64(c.y[k]*fine + .5); n > 0 {
				l.uses = append(l.uses, using{s.tables[t-first], n})
			}
			continue
		}
		n := int64(c.y[k]*float64(l.scale) + .5)
		if t == 0 { // at least so much is spent
			n = -n
		}
		l.spend += n
	}
	return l
}

// shut reports whether no boards in a box hold what a leaf asks for at a price below the target.
func (s *search) shut(l *leaf, b *box, target int64) bool {
	h := s.holdings(l)
	per := func(v *big.Int) float64 {
		f, _ := new(big.Rat).SetFrac(v, big.NewInt(l.scale)).Float64()
		return f
	}
	m := blend{total: per(h.total)}
	for _, r := range h.rate {
		m.rate = append(m.rate, per(r))
	}
	return s.noneBelow(target, m, b)
}
