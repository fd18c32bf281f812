package exact

import (
	"math/rand/v2"
)

// drawn makes random systems. The same seed makes the same ones.
type drawn struct{ *rand.Rand }

func draw(seed uint64) drawn { return drawn{rand.New(rand.NewPCG(seed, 48))} }

func (d drawn) between(lo, hi int) int { return lo + d.IntN(hi-lo+1) }

func (d drawn) oneIn(n int) bool { return d.IntN(n) == 0 }

// coef is mostly a small whole number, sometimes a fraction, never 0.
func (d drawn) coef() Rat {
	c := d.between(1, 3)
	if d.oneIn(2) {
		c = -c
	}
	if d.oneIn(6) {
		return New(int64(c), int64(d.between(2, 16)))
	}
	return Int(c)
}

// system is one of several kinds, so that blocked, degenerate, strict, unbounded and bounded ones all come often.
func (d drawn) system() *System {
	s := &System{Vars: d.between(1, 3)}
	degenerate, strict, equal := d.oneIn(3), d.between(2, 8), d.between(2, 8)
	center := make([]Rat, s.Vars)
	for v := range center {
		center[v] = New(int64(d.between(-8, 8)), int64(d.between(1, 2)))
	}
	for i := range d.between(1, 7) {
		row := Row{Rel: d.rel(strict, equal), RHS: New(int64(d.between(-12, 12)), int64(d.between(1, 2))), Rule: i - 1}
		for v := range s.Vars {
			if d.oneIn(2) {
				row.Terms = append(row.Terms, Term{v, d.coef()})
			}
		}
		if degenerate { // many rows meet in one point, and may just miss it
			row.RHS = value(row.Terms, center)
			if d.oneIn(6) {
				row.RHS = row.RHS.Add(New(int64(d.between(-1, 1)), 2))
			}
		}
		s.Rows = append(s.Rows, row)
	}
	return s
}

func (d drawn) rel(strict, equal int) Rel {
	switch {
	case d.oneIn(equal):
		return EQ
	case d.oneIn(strict):
		return LT + Rel(d.IntN(2))
	}
	return LE + Rel(d.IntN(2))
}

func (d drawn) objective(vars int) []Term {
	var obj []Term
	for v := range vars {
		if d.oneIn(2) {
			obj = append(obj, Term{v, d.coef()})
		}
	}
	return obj
}

func value(terms []Term, at []Rat) Rat {
	var sum Rat
	for _, t := range terms {
		sum = sum.Add(t.Coef.Mul(at[t.Var]))
	}
	return sum
}

// wall is a system as the main program asks for: few unknowns, rows of one or two, one or two long sums.
func (d drawn) wall() *System {
	const height, gap, bottom, post, ear, opening, left, right = 0, 1, 2, 3, 4, 5, 6, 7
	rails := int64(d.between(1, 12))
	face := New(int64(d.between(7, 23)), 2)
	s := &System{Vars: 8}
	add := func(rel Rel, rhs Rat, terms ...Term) {
		s.Rows = append(s.Rows, Row{terms, rel, rhs, len(s.Rows)})
	}
	one, minus := Int(1), Int(-1)
	add(EQ, face.Mul(New(rails, 1)), Term{height, one}, Term{bottom, minus}, Term{gap, New(1-rails, 1)})
	add(EQ, Rat{}, Term{bottom, one}, Term{gap, minus})
	add(GE, Int(2), Term{gap, one})
	add(GE, Rat{}, Term{bottom, one}, Term{ear, minus})
	add(EQ, one, Term{ear, one})
	add(GE, Rat{}, Term{post, one}, Term{height, minus}, Term{ear, minus})
	add(EQ, Int(d.between(100, 200)), Term{left, one}, Term{right, one}, Term{opening, one})
	add(GT, Rat{}, Term{left, one})
	add(GT, Rat{}, Term{right, one})
	add(LE, Int(d.between(40, 96)), Term{left, one})
	add(LE, Int(d.between(40, 96)), Term{right, one})
	add(GE, Int(d.between(20, 48)), Term{opening, one})
	extra := []Row{
		{[]Term{{height, one}}, EQ, Int(d.between(30, 60)), 0},
		{[]Term{{gap, one}}, LT, New(int64(d.between(4, 10)), 2), 0},
		{[]Term{{gap, one}}, GE, New(int64(d.between(4, 10)), 2), 0},
		{[]Term{{opening, one}, {gap, Int(-12)}}, GE, Rat{}, 0},
		{[]Term{{left, one}, {right, minus}}, EQ, Rat{}, 0},
		{[]Term{{post, one}}, LE, Int(d.between(40, 62)), 0},
		{[]Term{{opening, Int(2)}, {left, minus}}, LE, Int(5), 0},
	}
	for _, r := range extra {
		if d.oneIn(3) {
			add(r.Rel, r.RHS, r.Terms...)
		}
	}
	return s
}

// large has as many unknowns and rows as the largest walls: half its rows limit one unknown, half a sum. A hidden point
// satisfies every row, but for a few that ask for more than it has.
func (d drawn) large(vars, rows, asking int) *System {
	s := &System{Vars: vars}
	hidden := make([]Rat, vars)
	for v := range hidden {
		hidden[v] = New(int64(d.between(1, 800)), 16)
	}
	for i := range rows {
		row := Row{Rel: d.rel(6, 10), Rule: i, Terms: []Term{{d.IntN(vars), Int(1)}}}
		if i%2 == 1 {
			for range d.between(1, 4) {
				row.Terms = append(row.Terms, Term{d.IntN(vars), Int(d.between(-3, 6))})
			}
		} else if row.Rel == EQ {
			row.Rel = LE
		}
		room := New(int64(d.between(1, 300)), 16)
		if d.IntN(rows) < asking {
			room = room.Neg()
		}
		row.RHS = value(row.Terms, hidden)
		switch row.Rel {
		case LE, LT:
			row.RHS = row.RHS.Add(room)
		case GE, GT:
			row.RHS = row.RHS.Sub(room)
		}
		s.Rows = append(s.Rows, row)
	}
	return s
}
