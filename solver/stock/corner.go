package stock

import "math"

// corner finds the cheapest basket in fractions of boards: so many of each kind at least and at most, and for every table
// known, rates that sum to its total. It is the dual simplex method over the n bounds that are tight at a corner, from the
// corner of all lowest counts (Lemke 1954); there are few kinds of board, so that a corner costs little however many tables
// there are. It proposes; what it says is checked in whole numbers before it counts.
type corner struct {
	n      int
	price  []float64
	rows   [][]float64
	least  []float64
	tables int // rows that are tables; those of spending come first
	lo, up []float64
	tight  []int     // at the corner: a row, or -1-2b for the least of b, -2-2b for the most of b
	inv    []float64 // by column: the direction in which one tight bound is left
	x, y   []float64
	alpha  []float64
	pivots int
}

func newCorner(s *search) *corner {
	n := len(s.price)
	c := &corner{n: n, x: make([]float64, n), y: make([]float64, n), alpha: make([]float64, n)}
	c.lo, c.up, c.tight, c.inv = make([]float64, n), make([]float64, n), make([]int, n), make([]float64, n*n)
	for _, p := range s.price {
		c.price = append(c.price, float64(p))
	}
	return c
}

// spendRows are the rows that hold spending to what it must be: no more, and, as was proven, no less.
const spendRows = 2

// learn takes in the search's tables that are new.
func (c *corner) learn(s *search) {
	if s.spend != nil && len(c.rows) == 0 {
		a, b := make([]float64, c.n), make([]float64, c.n)
		for i, q := range s.spend {
			a[i], b[i] = float64(q), -float64(q)
		}
		c.rows = append(c.rows, a, b)
		c.least = append(c.least, float64(s.spendAt), -float64(s.spendAt))
	}
	for ; c.tables < len(s.tables); c.tables++ {
		t := s.tables[c.tables]
		row := make([]float64, c.n)
		for i := range row {
			row[i] = float64(t.rate[i]) / s.scale
		}
		c.rows = append(c.rows, row)
		c.least = append(c.least, float64(t.total)/s.scale)
	}
}

// solve finds the corner for lo and up. It returns false when no basket keeps all rows.
func (c *corner) solve() bool {
	n := c.n
	clear(c.inv)
	for b := 0; b < n; b++ {
		c.tight[b], c.x[b], c.y[b], c.inv[b*n+b] = -1-2*b, c.lo[b], c.price[b], 1
	}
	for count := 0; count < 1000; count++ {
		c.pivots++
		k, worst := c.worst()
		if worst > -1e-7 {
			return true
		}
		c.along(k)
		out, ratio := -1, math.Inf(1)
		for j, a := range c.alpha {
			if a > 1e-9 {
				if t := c.y[j] / a; t < ratio-1e-12 || t < ratio+1e-12 && a > c.alpha[out] {
					out, ratio = j, math.Min(t, ratio)
				}
			}
		}
		if out < 0 {
			return false
		}
		c.swap(k, out, worst, ratio)
	}
	return true // the corner reached is a bound all the same
}

// worst finds the bound that x breaks by the most.
func (c *corner) worst() (int, float64) {
	at, worst := 0, 0.0
	for k, row := range c.rows {
		s := -c.least[k]
		for i, a := range row {
			s += a * c.x[i]
		}
		if s < worst {
			at, worst = k, s
		}
	}
	for b, x := range c.x {
		if s := x - c.lo[b]; s < worst {
			at, worst = -1-2*b, s
		}
		if s := c.up[b] - x; s < worst {
			at, worst = -2-2*b, s
		}
	}
	return at, worst
}

// along sets alpha to how bound k changes in each direction that leaves a tight bound.
func (c *corner) along(k int) {
	n := c.n
	for j := range c.alpha {
		c.alpha[j] = 0
		switch {
		case k >= 0:
			for i, a := range c.rows[k] {
				c.alpha[j] += a * c.inv[i*n+j]
			}
		case (-1-k)%2 == 0:
			c.alpha[j] = c.inv[(-1-k)/2*n+j]
		default:
			c.alpha[j] = -c.inv[(-1-k)/2*n+j]
		}
	}
}

// swap makes bound k tight in the place of the out-th.
func (c *corner) swap(k, out int, worst, ratio float64) {
	n := c.n
	step := -worst / c.alpha[out]
	for i := 0; i < n; i++ {
		d := c.inv[i*n+out]
		c.x[i] += step * d
		d /= c.alpha[out]
		for j, a := range c.alpha {
			if j != out {
				c.inv[i*n+j] -= a * d
			}
		}
		c.inv[i*n+out] = d
	}
	for j, a := range c.alpha {
		if j != out {
			c.y[j] -= ratio * a
		}
	}
	c.y[out] = ratio
	c.tight[out] = k
}

func (c *corner) cost() float64 {
	z := 0.0
	for b, x := range c.x {
		z += c.price[b] * x
	}
	return z
}
