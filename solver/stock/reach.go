package stock

import (
	"math"
	"math/bits"
	"sort"
)

// blend is tables taken together for one box, per unit of price: what each board holds, and what must be held.
type blend struct {
	rate  []float64
	total float64
}

// blended takes the tables that are tight at the corner last found, each as often as it counts there.
func (c *corner) blended() blend {
	m := blend{rate: make([]float64, c.n)}
	for k, t := range c.tight {
		if t < 0 || c.y[k] <= 0 {
			continue
		}
		for i, r := range c.rows[t] {
			m.rate[i] += c.y[k] * r
		}
		m.total += c.y[k] * c.least[t]
	}
	return m
}

const (
	sumsMost = 1 << 25 // units of price up to which sums are looked at
	sumsWays = 20000   // of taking boards that lose, up to which they are looked at
	hair     = 1.0 / (1 << 26)
	margin   = 1e-5 // units of price: what floating point may be off by, many times over
)

// outOfReach reports whether no basket of a box that is cheaper than the cutoff holds enough by the tables that bind it.
func (s *search) outOfReach(b *box) bool {
	return s.noneBelow(s.cutoff(), s.corner.blended(), b)
}

// lossy is a board that holds less than its price: each taken beyond the fewest loses, of the most only each left out.
type lossy struct {
	price, first, step int64
	most               int
	rate, loss         float64
}

// reacher looks for baskets that hold enough for less than a cutoff. Boards that lose anything worth the name are taken in
// every way that the little there is to lose allows; for each, the rest, which hold just their price, must sum to one of a
// few amounts, and the amounts to which they can sum are a set of bits.
type reacher struct {
	cut   int64
	lossy []lossy
	fits  []uint64
	spare float64
	ways  int
	found bool
}

// noneBelow reports whether no basket of a box holds enough at a price below the cut. False also means not to know.
func (s *search) noneBelow(cut int64, m blend, b *box) bool {
	if cut > sumsMost {
		return false
	}
	r := &reacher{cut: cut}
	need, base := m.total, int64(0)
	gap := float64(cut-1) + margin
	var free []int
	for i, p := range s.price {
		d := float64(p) - m.rate[i]
		switch {
		case p == 0:
			need -= max(m.rate[i]*float64(b.up[i]), m.rate[i]*float64(b.lo[i]))
		case math.Abs(d) <= float64(p)*hair:
			r.spare += max(0, -d) * float64(b.up[i])
			base += p * int64(b.lo[i])
			free = append(free, i)
		case d < 0:
			gap -= d * float64(b.up[i])
			r.lossy = append(r.lossy, lossy{p, int64(b.up[i]), -1, b.up[i] - b.lo[i], m.rate[i], -d})
		default:
			gap -= d * float64(b.lo[i])
			r.lossy = append(r.lossy, lossy{p, int64(b.lo[i]), 1, b.up[i] - b.lo[i], m.rate[i], d})
		}
	}
	gap += r.spare - need
	if base >= cut || gap < 0 {
		return true
	}
	sort.SliceStable(r.lossy, func(x, y int) bool { return r.lossy[x].loss > r.lossy[y].loss })
	r.fits = make([]uint64, cut/64+1)
	r.fits[base/64] = 1 << (base % 64)
	for _, i := range free {
		s.work += r.more(s.price[i], int64(b.up[i]-b.lo[i])) / 2
	}
	r.try(0, 0, need, gap)
	s.work += int64(r.ways)
	return !r.found && r.ways <= sumsWays
}

// more lets up to n more boards of a price be among those that fit, and returns the words it went through.
func (r *reacher) more(price, n int64) int64 {
	work := int64(0)
	n = min(n, r.cut/price)
	for lot := int64(1); n > 0; lot *= 2 {
		k := min(lot, n)
		n -= k
		word, bit := int(price*k/64), uint(price*k%64)
		for i := len(r.fits) - 1; i > word; i-- {
			r.fits[i] |= r.fits[i-word]<<bit | r.fits[i-word-1]>>(64-bit)
		}
		if word < len(r.fits) {
			r.fits[word] |= r.fits[0] << bit
		}
		work += int64(max(0, len(r.fits)-word))
	}
	return work
}

func (r *reacher) try(k int, price int64, need, gap float64) {
	if r.ways++; r.found || r.ways > sumsWays {
		return
	}
	if k == len(r.lossy) {
		r.found = r.amount(int64(math.Ceil(need-r.spare-margin)), r.cut-1-price)
		return
	}
	l := r.lossy[k]
	for n := 0; n <= l.most && gap >= 0; n++ {
		x := l.first + l.step*int64(n)
		r.try(k+1, price+x*l.price, need-float64(x)*l.rate, gap)
		gap -= l.loss
	}
}

// amount reports whether the boards that do not lose can sum to something from low to most.
func (r *reacher) amount(low, most int64) bool {
	low = max(0, low)
	for v := low; v <= most; {
		w := r.fits[v/64] >> (v % 64)
		if w != 0 {
			return v+int64(bits.TrailingZeros64(w)) <= most
		}
		v = (v/64 + 1) * 64
	}
	return false
}
