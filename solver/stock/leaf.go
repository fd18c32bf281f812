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

const (
	sumsMost  = 1 << 25 // units of a goal up to which sums are looked at
	sumsTries = 20000   // ways to fall short of a tight fit up to which sums are looked at
	nearly    = 26      // bits: a board that holds so nearly its price may as well hold it
)

// shut reports whether no boards in a box hold what a leaf asks for at a price below the target, and whether the checker,
// which goes another way about it, will find that quickly.
func (s *search) shut(l *leaf, b *box, target, work int64) bool {
	if target > sumsMost {
		return false
	}
	h := s.holdings(l)
	if !s.fewTries(l, h, b, target) {
		return false
	}
	for i, d := range s.slack(l, h) {
		if s.near(l, i, d) { // what the checker may make of it
			h.total.Sub(h.total, d.Mul(d.Abs(d), big.NewInt(int64(b.up[i]))))
		}
	}
	shift := uint(max(0, h.total.BitLen()-52))
	from := begin{}
	var items []item
	for i, r := range h.rate {
		u := ceilBig(r, new(big.Int).Lsh(big.NewInt(1), shift)).Int64()
		from.w += s.price[i] * int64(b.lo[i])
		from.v += u * int64(b.lo[i])
		if b.up[i] == b.lo[i] || u <= 0 {
			continue
		}
		if s.price[i] == 0 {
			return false
		}
		items = append(items, item{w: s.price[i], u: u, most: b.up[i] - b.lo[i], kind: i})
	}
	if from.w >= target {
		return true
	}
	need := new(big.Int).Rsh(h.total, shift).Int64()
	if from.v < 0 {
		need, from.v = need-from.v, 0
	}
	s.loads.most = work
	got, sure := s.loads.dearest(items, []slot{{c: target - 1, rate: need - 1}}, []begin{from})
	s.work += s.loads.work
	s.loads.most, s.loads.work = 0, 0
	return sure && got == nil
}

// near reports whether a board holds its price but for a hair.
func (s *search) near(l *leaf, b int, slack *big.Int) bool {
	hair := new(big.Int).Mul(big.NewInt(l.scale), big.NewInt(s.price[b]))
	return new(big.Int).Abs(slack).Cmp(hair.Rsh(hair, nearly)) <= 0
}

// fewTries counts the ways in which boards that do not hold their price can be taken without losing more than there is to
// lose, and reports whether they are few.
func (s *search) fewTries(l *leaf, h holdings, b *box, target int64) bool {
	gap := new(big.Int).Mul(big.NewInt(l.scale), big.NewInt(target-1))
	gap.Sub(gap, h.total)
	var loss []float64
	var most []int
	for i, d := range s.slack(l, h) {
		free := s.near(l, i, d)
		if d.Sign() < 0 {
			gap.Sub(gap, new(big.Int).Mul(d, big.NewInt(int64(b.up[i]))))
		} else if !free {
			gap.Sub(gap, new(big.Int).Mul(d, big.NewInt(int64(b.lo[i]))))
		}
		if !free && b.up[i] > b.lo[i] {
			f, _ := new(big.Float).SetInt(d.Abs(d)).Float64()
			loss, most = append(loss, f), append(most, b.up[i]-b.lo[i])
		}
	}
	g, _ := new(big.Float).SetInt(gap).Float64()
	tries := 0
	var count func(k int, g float64)
	count = func(k int, g float64) {
		if tries++; tries > sumsTries || k == len(loss) {
			return
		}
		for n := 0; n <= most[k] && g >= 0 && tries <= sumsTries; n++ {
			count(k+1, g)
			g -= loss[k]
		}
	}
	count(0, g)
	return tries <= sumsTries
}
