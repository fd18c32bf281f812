package stock

import "math"

// primal improves a basis that keeps every row until no variable is worth bringing in. It reports false when it gave up.
func (m *master) primal() bool {
	slow := 0
	for count := 0; count < 200+40*m.rows; count++ {
		v, d := m.entering(slow > 2*m.rows)
		if d >= -tiny {
			return true
		}
		m.direction(v)
		r := m.leaving()
		if r < 0 {
			return false
		}
		if m.x[r] > tiny {
			slow = 0
		} else {
			slow++
		}
		m.pivot(v, r, d)
	}
	return false
}

// entering picks the variable that is worth the most by the row prices, or the first that is worth anything (Bland 1977)
// when progress has stalled.
func (m *master) entering(first bool) (int32, float64) {
	var v int32
	d := 0.0
	m.variables(func(w int32) {
		if first && d < -tiny {
			return
		}
		if e := m.reduced(w); e < d {
			v, d = w, e
		}
	})
	return v, d
}

// leaving picks the row that runs out first, of near equals the one with the largest pivot.
func (m *master) leaving() int {
	r := -1
	least := math.Inf(1)
	for i, c := range m.col {
		if c <= 1e-8 {
			continue
		}
		t := math.Max(m.x[i], 0) / c
		if t < least-1e-10 || t < least+1e-10 && c > m.col[r] {
			least, r = math.Min(t, least), i
		}
	}
	return r
}

// dual mends a basis whose prices are right but which breaks rows, as after a new limit. It reports false when it gave up.
func (m *master) dual() bool {
	n := m.rows
	for count := 0; count < 200+20*n; count++ {
		r, worst := -1, -1e-8
		for i, x := range m.x {
			if x < worst {
				r, worst = i, x
			}
		}
		if r < 0 {
			return true
		}
		row := m.inv[r*n : r*n+n]
		var in int32
		best, size, found := math.Inf(1), 0.0, false
		m.variables(func(v int32) {
			a := m.worth(v, row)
			if a >= -1e-8 {
				return
			}
			t := math.Max(m.reduced(v), 0) / -a
			if t < best-1e-11 || t < best+1e-11 && -a > size {
				best, size, in, found = t, -a, v, true
			}
		})
		if !found {
			return false
		}
		m.direction(in)
		if math.Abs(m.col[r]) < 1e-9 {
			return false
		}
		m.pivot(in, r, m.reduced(in))
	}
	return false
}
