package stock

import (
	"math"
	"sort"

	"saywright/solver/exact"
)

// packing is so many boards cut by each load.
type packing []cut

type cut struct {
	board, times int
	load         []entry
}

// search looks for the packing of least price. With spend, only packings that spend no more than spendAt count, and it is
// known that none spends less.
type search struct {
	p         *problem
	price     []int64 // by board
	spend     []int64 // by board, nil for none
	spendAt   int64
	spendUnit exact.Rat // of the first goal
	order     []int     // boards by what they hold, ascending
	demand    []int
	norm      float64 // a price of 1 in the linear program
	scale     float64 // of the tables: parts of one unit of price
	pool      []column
	known     map[string]int
	lp        *master
	tables    []*table
	loads     loader
	work      int64 // done, in steps of the inner loops
	most      int64 // allowed
	best      packing
	bestAt    int64 // its price
	aim       int64 // only packings below it are of interest now
	later     []*box
	lostAt    int64 // the least bound of a box that could not be settled
	corner    *corner
	boxes     int
	failed    map[string]bool // baskets that no dive could pack
	inner     bool            // a search for part of another's packing
	subWork   int64
}

// newSearch sets a search up for one goal: the price of each board.
func newSearch(p *problem, price []int64, work int64) *search {
	s := &search{p: p, price: price, known: map[string]int{}, failed: map[string]bool{}, most: work}
	for _, k := range p.kinds {
		s.demand = append(s.demand, k.d)
	}
	norm, most := int64(1), int64(1)
	for b, d := range p.boards {
		if d.c >= p.kinds[len(p.kinds)-1].w {
			s.order = append(s.order, b)
		}
		if !d.none {
			norm = max(norm, price[b])
		}
		most = max(most, price[b])
	}
	sort.SliceStable(s.order, func(x, y int) bool { return p.boards[s.order[x]].c < p.boards[s.order[y]].c })
	s.norm = float64(norm)
	s.scale = math.Max(1, math.Min(1<<20, math.Exp2(56)/float64(most)/float64(p.n)))
	s.bestAt, s.aim = math.MaxInt64/4, math.MaxInt64/4
	s.corner = newCorner(s)
	s.lp = s.program(nil)
	return s
}

// follow sets up a search for a second goal among the packings that are best for the first.
func (s *search) follow(price []int64, unit exact.Rat, work int64) *search {
	n := newSearch(s.p, price, work)
	n.spend, n.spendAt, n.spendUnit = s.price, s.bestAt, unit
	n.tables = s.tables
	for _, c := range s.pool {
		n.add(c.board, c.load)
	}
	n.offer(s.best)
	return n
}

// program makes a linear program with narrow limits.
func (s *search) program(limits []limit) *master {
	price := make([]float64, len(s.price))
	most := 0.0
	for b, c := range s.price {
		price[b] = float64(c) / s.norm
		most = math.Max(most, price[b])
		if s.p.boards[b].have >= 0 {
			price[b] = -1
		}
	}
	return newMaster(&s.pool, s.demand, price, limits, 4*most+1)
}

// add puts a load in the pool, once.
func (s *search) add(b int, load []entry) {
	key := make([]byte, 0, 4+6*len(load))
	key = append(key, byte(b), byte(b>>8))
	for _, e := range load {
		key = append(key, byte(e.kind), byte(e.kind>>8), byte(e.count), byte(e.count>>8), byte(e.count>>16))
	}
	if _, ok := s.known[string(key)]; !ok {
		s.known[string(key)] = len(s.pool)
		s.pool = append(s.pool, column{b, load})
	}
}

// relax solves the linear program from where it stands, adding loads until none is worth adding. It returns a table that
// holds; nil when it gave up.
func (s *search) relax(m *master, demand []int) *table {
	defer func() { s.work += m.work; m.work = 0 }()
	m.grow()
	m.refresh()
	if !m.dual() {
		m.install(m.start())
		if !m.dual() {
			return nil
		}
	}
	for m.primal() {
		t := s.propose(m)
		over := s.over(t, demand)
		if len(over) == 0 {
			t.weigh(demand)
			return t
		}
		had := len(s.pool)
		for _, f := range over {
			s.add(f.board, f.load)
		}
		m.grow()
		if len(s.pool) == had || s.work+m.work > s.most {
			s.lower(t, over, demand)
			return t
		}
	}
	return nil
}

// lower makes a table hold by lowering all charges by as much as the worst load of all asks for (Farley 1990). It does
// without fees.
func (s *search) lower(t *table, over []found, demand []int) {
	for _, f := range t.fees {
		if f > 0 {
			t.limits, t.fees = nil, nil
			over = s.over(t, demand)
			break
		}
	}
	f := 1.0
	for _, o := range over {
		f = math.Min(f, float64(t.rate[o.board])/float64(t.rate[o.board]+o.over))
	}
	for i, c := range t.charge {
		t.charge[i] = int64(float64(c) * f * (1 - 1e-12))
	}
	t.weigh(demand)
}

// propose rounds the row prices of the linear program to whole numbers, each to the safe side.
func (s *search) propose(m *master) *table {
	f := s.norm * s.scale
	up := func(y float64) int64 { return int64(math.Ceil(math.Max(0, y) * f)) }
	down := func(y float64) int64 { return int64(math.Floor(math.Max(0, y) * f)) }
	t := &table{charge: make([]int64, m.kinds), rate: make([]int64, m.boards)}
	t.limits, t.fees = m.limits, make([]int64, len(m.limits))
	for i := range t.charge {
		t.charge[i] = down(m.y[i])
	}
	for b := range t.rate {
		t.rate[b] = up(-m.y[m.kinds+b] - m.y[m.kinds+m.boards+b])
	}
	for i := range t.fees {
		y := m.y[m.kinds+2*m.boards+i]
		if m.limits[i].atMost {
			t.fees[i] = up(-y)
		} else {
			t.fees[i] = down(y)
		}
	}
	return t
}

// tighten lowers every rate to what the dearest load of the board is charged.
func (s *search) tighten(t *table) {
	if len(t.limits) > 0 {
		return
	}
	low := *t
	low.rate = make([]int64, len(t.rate))
	for _, f := range s.over(&low, s.demand) {
		low.rate[f.board] = f.over
	}
	t.rate = low.rate
}

// spent is what the linear program pays, in units of price.
func (s *search) spent(m *master) float64 {
	z := 0.0
	for r, v := range m.basis {
		z += m.cost(v) * math.Max(0, m.x[r])
	}
	return z * s.norm
}

// use is how often the linear program cuts a load.
type use struct {
	col int
	x   float64
}

// solution lists the loads that the linear program uses.
func (m *master) solution() []use {
	var out []use
	for r, v := range m.basis {
		if v >= 0 && m.x[r] > 1e-9 {
			out = append(out, use{int(v), m.x[r]})
		}
	}
	return out
}
