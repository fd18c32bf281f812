package stock

import "math"

// column is a load of a board that the linear program may use any number of times.
type column struct {
	board int
	load  []entry
}

// master is the linear program over loads (Gilmore and Gomory 1961): given so many boards of each kind, cover every piece
// with loads of those boards and of further boards at their price, and spend the least. It is solved in floating point, as
// it only proposes: loads to use, and prices for pieces and boards, which are rounded and checked in whole numbers before
// they count.
//
// Rows are the kinds of piece, then what is given of each kind of board, then the most there may be of it, then narrow
// limits. The inverse of the basis is kept in full. A variable is a column of the pool (0 and up), or a row's slack (-1, -3,
// …) or what helps the row out at a price (-2, -4, …): a piece covered by nothing, a further board.
type master struct {
	pool   *[]column
	limits []limit // narrow ones
	kinds  int
	boards int
	rows   int
	b      []float64
	help   []float64 // by row: what helping out costs, less than 0 where nothing does
	counts [][]int32 // by column: the narrow limits' rows that count it
	basis  []int32
	inv    []float64
	x, y   []float64
	col    []float64
	pivots int
	work   int64
}

const tiny = 1e-9

// newMaster makes a program with no boards given yet. price is by board, less than 0 where no further ones can be had.
func newMaster(pool *[]column, demand []int, price []float64, limits []limit, stand float64) *master {
	m := &master{pool: pool, limits: limits, kinds: len(demand), boards: len(price)}
	m.rows = m.kinds + 2*m.boards + len(limits)
	m.b, m.help = make([]float64, m.rows), make([]float64, m.rows)
	for r := range m.help {
		m.help[r] = stand
	}
	copy(m.help[m.kinds:], price)
	for b := range price {
		m.help[m.kinds+m.boards+b] = -1
	}
	for i, l := range limits {
		m.b[m.kinds+2*m.boards+i] = float64(l.n)
	}
	m.demands(demand)
	m.x, m.y, m.col = make([]float64, m.rows), make([]float64, m.rows), make([]float64, m.rows)
	m.inv = make([]float64, m.rows*m.rows)
	m.grow()
	m.install(m.start())
	return m
}

func (m *master) demands(demand []int) {
	for i, d := range demand {
		m.b[i] = float64(d)
	}
}

// given sets how many boards of each kind are there already, and how many there may be with further ones.
func (m *master) given(lo, up []float64) {
	copy(m.b[m.kinds:], lo)
	copy(m.b[m.kinds+m.boards:], up)
}

// grow takes in the columns that the pool has gained.
func (m *master) grow() {
	for j := len(m.counts); j < len(*m.pool); j++ {
		c := &(*m.pool)[j]
		var at []int32
		for i := range m.limits {
			if m.limits[i].counts(c.load) {
				at = append(at, int32(m.kinds+2*m.boards+i))
			}
		}
		m.counts = append(m.counts, at)
	}
}

// atMost reports whether a row is one that may fall short: the boards of a kind, an at-most limit.
func (m *master) atMost(row int) bool {
	return row >= m.kinds && (row < m.kinds+2*m.boards || m.limits[row-m.kinds-2*m.boards].atMost)
}

// start returns the basis of no loads at all: every row by its slack where nothing need be covered, or else helped out.
func (m *master) start() []int32 {
	basis := make([]int32, m.rows)
	for r := range basis {
		if m.atMost(r) {
			basis[r] = int32(-1 - 2*r)
		} else {
			basis[r] = int32(-2 - 2*r)
		}
	}
	return basis
}

// entries calls f with each row and coefficient of a variable.
func (m *master) entries(v int32, f func(row int, a float64)) {
	if v < 0 {
		r, slack := int(-1-v)/2, (-1-v)%2 == 0
		if slack == m.atMost(r) {
			f(r, 1)
		} else {
			f(r, -1)
		}
		return
	}
	c := &(*m.pool)[v]
	for _, e := range c.load {
		f(e.kind, float64(e.count))
	}
	f(m.kinds+c.board, 1)
	f(m.kinds+m.boards+c.board, 1)
	for _, r := range m.counts[v] {
		f(int(r), 1)
	}
}

func (m *master) cost(v int32) float64 {
	if v < 0 && (-1-v)%2 == 1 {
		return m.help[int(-1-v)/2]
	}
	return 0
}

// worth is what row prices y make of a variable.
func (m *master) worth(v int32, y []float64) float64 {
	if v < 0 {
		r, slack := int(-1-v)/2, (-1-v)%2 == 0
		if slack == m.atMost(r) {
			return y[r]
		}
		return -y[r]
	}
	c := &(*m.pool)[v]
	d := y[m.kinds+c.board] + y[m.kinds+m.boards+c.board]
	for _, e := range c.load {
		d += y[e.kind] * float64(e.count)
	}
	for _, r := range m.counts[v] {
		d += y[r]
	}
	return d
}

// reduced is a variable's price less what the row prices say it is worth.
func (m *master) reduced(v int32) float64 { return m.cost(v) - m.worth(v, m.y) }

// install takes a basis, inverts it and sets x and y. It reports false for a basis that is singular.
func (m *master) install(basis []int32) bool {
	n := m.rows
	m.basis = append(m.basis[:0], basis...)
	a := make([]float64, n*n)
	for k, v := range m.basis {
		m.entries(v, func(r int, x float64) { a[r*n+k] = x })
	}
	m.work += int64(n * n * n / 8)
	if !invert(a, m.inv, n) {
		return false
	}
	m.refresh()
	return true
}

// invert writes the inverse of the n x n matrix a to inv, by elimination with the largest pivot of each column.
func invert(a, inv []float64, n int) bool {
	clear(inv)
	for i := 0; i < n; i++ {
		inv[i*n+i] = 1
	}
	for c := 0; c < n; c++ {
		p := c
		for r := c + 1; r < n; r++ {
			if math.Abs(a[r*n+c]) > math.Abs(a[p*n+c]) {
				p = r
			}
		}
		if math.Abs(a[p*n+c]) < 1e-11 {
			return false
		}
		if p != c {
			for k := 0; k < n; k++ {
				a[p*n+k], a[c*n+k] = a[c*n+k], a[p*n+k]
				inv[p*n+k], inv[c*n+k] = inv[c*n+k], inv[p*n+k]
			}
		}
		s := 1 / a[c*n+c]
		for k := 0; k < n; k++ {
			a[c*n+k] *= s
			inv[c*n+k] *= s
		}
		for r := 0; r < n; r++ {
			f := a[r*n+c]
			if r == c || f == 0 {
				continue
			}
			for k := c; k < n; k++ {
				a[r*n+k] -= f * a[c*n+k]
			}
			for k := 0; k < n; k++ {
				inv[r*n+k] -= f * inv[c*n+k]
			}
		}
	}
	return true
}

func (m *master) refresh() {
	n := m.rows
	for r := 0; r < n; r++ {
		s := 0.0
		for k := 0; k < n; k++ {
			s += m.inv[r*n+k] * m.b[k]
		}
		m.x[r] = s
	}
	m.prices()
}

func (m *master) prices() {
	n := m.rows
	clear(m.y)
	for r := 0; r < n; r++ {
		c := m.cost(m.basis[r])
		if c == 0 {
			continue
		}
		row := m.inv[r*n : r*n+n]
		for k := range row {
			m.y[k] += c * row[k]
		}
	}
	m.work += int64(n * n / 4)
}

// direction sets col to the change of the basis when v comes in.
func (m *master) direction(v int32) {
	n := m.rows
	clear(m.col)
	m.entries(v, func(k int, a float64) {
		for r := 0; r < n; r++ {
			m.col[r] += m.inv[r*n+k] * a
		}
	})
}

// pivot brings v into the basis in row r; col holds its direction. d is its reduced cost.
func (m *master) pivot(v int32, r int, d float64) {
	n := m.rows
	p := m.col[r]
	row := m.inv[r*n : r*n+n]
	for k := range row {
		row[k] /= p
	}
	t := m.x[r] / p
	for i := 0; i < n; i++ {
		f := m.col[i]
		if i == r || f == 0 {
			continue
		}
		other := m.inv[i*n : i*n+n]
		for k := range row {
			other[k] -= f * row[k]
		}
		m.x[i] -= f * t
	}
	for k := range row {
		m.y[k] += d * row[k]
	}
	m.x[r] = t
	m.basis[r] = v
	m.pivots++
	m.work += int64(n * n / 4)
	if m.pivots%64 == 0 {
		m.install(append([]int32(nil), m.basis...))
	}
}

// variables calls f with every variable that may come in.
func (m *master) variables(f func(v int32)) {
	for r := 0; r < m.rows; r++ {
		f(int32(-1 - 2*r))
		if m.help[r] >= 0 {
			f(int32(-2 - 2*r))
		}
	}
	for j := range m.counts {
		f(int32(j))
	}
	m.work += int64(len(m.counts))
}
