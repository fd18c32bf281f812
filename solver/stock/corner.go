package stock

import "math"

// corner finds the cheapest basket, in fractions of boards: lo <= x <= up, and every row a·x >= b, at least price·x. It is
// the dual simplex method over a corner's n tight bounds, from the corner of all lowest counts (Lemke 1954); there are few
// boards, so that a corner costs little however many rows there are.
type corner struct {
	n      int
	price  []float64
	rows   [][]float64
	least  []float64
	lo, up []float64
	tight  []int     // row, or -1-2b for lo of b, -2-2b for up of b
	inv    []float64 // columns: directions along which one tight bound is left
	x, y   []float64
	count  int
}

func (c *corner) bound(k int) ([]float64, int, float64, float64) {
	if k >= 0 {
		return c.rows[k], -1, 1, c.least[k]
	}
	b := (-1 - k) / 2
	if (-1-k)%2 == 0 {
		return nil, b, 1, c.lo[b]
	}
	return nil, b, -1, -c.up[b]
}

// solve returns false when no basket keeps all rows.
func (c *corner) solve() bool {
	n := c.n
	if c.x == nil {
		c.x, c.y, c.tight, c.inv = make([]float64, n), make([]float64, n), make([]int, n), make([]float64, n*n)
	}
	clear(c.inv)
	for b := 0; b < n; b++ {
		c.tight[b], c.x[b], c.y[b], c.inv[b*n+b] = -1-2*b, c.lo[b], c.price[b], 1
		if c.price[b] < 0 {
			c.tight[b], c.x[b], c.y[b], c.inv[b*n+b] = -2-2*b, c.up[b], -c.price[b], -1
		}
	}
	alpha := make([]float64, n)
	for count := 0; count < 2000; count++ {
		c.count++
		k, worst := c.worst()
		if worst > -1e-7 {
			return true
		}
		// alpha_j: how the worst bound changes along the direction that leaves tight bound j
		row, b, sign, _ := c.bound(k)
		for j := 0; j < n; j++ {
			if row != nil {
				alpha[j] = 0
				for i := 0; i < n; i++ {
					alpha[j] += row[i] * c.inv[i*n+j]
				}
			} else {
				alpha[j] = sign * c.inv[b*n+j]
			}
		}
		out, ratio := -1, math.Inf(1)
		for j := 0; j < n; j++ {
			if alpha[j] > 1e-9 {
				if t := c.y[j] / alpha[j]; t < ratio-1e-12 || t < ratio+1e-12 && alpha[j] > alpha[out] {
					out, ratio = j, math.Min(t, ratio)
				}
			}
		}
		if out < 0 {
			return false
		}
		c.swap(k, out, alpha, worst, ratio)
	}
	return true
}

// worst finds the bound that x breaks by the most, in proportion to its size.
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
	for b := range c.x {
		if s := c.x[b] - c.lo[b]; s < worst {
			at, worst = -1-2*b, s
		}
		if s := c.up[b] - c.x[b]; s < worst {
			at, worst = -2-2*b, s
		}
	}
	return at, worst
}

func (c *corner) swap(k, out int, alpha []float64, worst, ratio float64) {
	n := c.n
	step := -worst / alpha[out]
	for i := 0; i < n; i++ {
		d := c.inv[i*n+out]
		c.x[i] += step * d
		d /= alpha[out]
		for j := 0; j < n; j++ {
			if j != out {
				c.inv[i*n+j] -= alpha[j] * d
			}
		}
		c.inv[i*n+out] = d
	}
	for j := 0; j < n; j++ {
		if j != out {
			c.y[j] -= ratio * alpha[j]
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
