package solver

import "saywright/solver/exact"

// piece is an opening, or a run of neighboring bays that nothing tells apart: its length is their sum.
type piece struct {
	opening int // from 1; 0: bays
	first   int // first bay, from 1; 0 where the cell does not say
	bays    int // at least
	upTo    int // at most
	seg     int // the segment
	at      int // elements left of it, and so posts left of it, where the cell says
	v       int // its unknown
	run     int // which run of bays it belongs to, from 0
	// spaces between stiffeners, all bays of the piece together
	spaces tally
}

// form is a linear form: the sum of the terms and a constant, standing for Copies of one quantity.
type form struct {
	terms  []exact.Term
	plus   exact.Rat
	copies int
	upTo   int   // copies at most, where the cell stands for many; 0: just as many
	spaces tally // of bays: the spaces between stiffeners in all of them
	key    int   // of bays: tells their spacing from that of others
}

func unit(v int) form { return form{terms: []exact.Term{{Var: v, Coef: exact.Int(1)}}, copies: 1} }

// The unknowns of every sheet. More follow for openings, runs of bays and gaps of their own.
const (
	vHeight = iota
	vGap
	vBottom
	vFace
	vPostHeight
	vClearance
	vEar
	vFall // floor at right against the left: negative is lower
	vSpan
	vEndPost
	vPost
	vOpening
	vEqual // the common width of equal bays
	vBay   // any one bay, where the cell stands for many
	vFree  // the first of the further unknowns
)

// sheet is the system of one cell under the laws that are on.
type sheet struct {
	p      *problem
	c      *cell
	f      field
	on     set
	sys    exact.System
	slab   []exact.Term     // the terms of the rows
	part   map[Quantity]int // parts that are unknowns
	pieces []piece
	posts  []int // unknown of the posts of each segment, where the cell stands for many
	lone   []lone
	// unknown of the spacing of stiffeners in bays whose spaces are not settled, by the form's key
	spacing map[int]int
	apart   int            // whether there are such; 0: not yet known
	at      map[int][2]int // where the cell stands for many: the distances of a named post from both end posts
	open    []int          // unknown of each opening's width
	dl, dr  []int          // unknowns: distance of each opening from the left, from the right end post
	segs    []int          // unknown of the gap in each stretch between placed rails; one: vGap
	slack   int            // law whose rows are loosened by vSlack; -1 none
	vSlack  int
	dir     int // which way the loosened law gives: +1 its limit grows, -1 it shrinks
	named   set // bays that are unknowns of their own, for a range of one bay
	vars    int
}

// lay builds the system of a cell. solo names bays (as a set of indexes) that must be unknowns of their own.
func (p *problem) lay(c *cell, f field, on set, solo set, slack, dir int) *sheet {
	return p.layIn(&buffers{make([]exact.Row, 0, 48), make([]exact.Term, 0, 128)}, c, f, on, solo, slack, dir)
}

// buffers is room for the rows of a system, to be used again once the system is done with.
type buffers struct {
	rows []exact.Row
	slab []exact.Term
}

func (p *problem) layIn(room *buffers, c *cell, f field, on set, solo set, slack, dir int) *sheet {
	s := &sheet{p: p, c: c, f: f, on: on, slack: slack, dir: dir, named: solo, vars: vFree}
	s.sys.Rows, s.slab = room.rows[:0], room.slab[:0]
	if f&upField != 0 {
		s.layUp()
	}
	if f&alongField != 0 {
		s.layAlong()
	}
	if slack >= 0 {
		s.vSlack = s.fresh()
		s.row(exact.GE, exact.Rat{}, exact.Background, exact.Term{Var: s.vSlack, Coef: exact.Int(1)})
	}
	for i := range p.laws {
		if on.has(i) && p.laws[i].field&f != 0 {
			s.obey(i)
		}
	}
	s.sys.Vars = s.vars
	room.rows, room.slab = s.sys.Rows, s.slab
	return s
}

func (s *sheet) fresh() int { s.vars++; return s.vars - 1 }

// row adds a row. The terms are copied into one slab, so that a sheet of fifty rows takes few allocations.
func (s *sheet) row(rel exact.Rel, rhs exact.Rat, rule int, terms ...exact.Term) {
	at := len(s.slab)
	s.slab = append(s.slab, terms...)
	s.sys.Rows = append(s.sys.Rows, exact.Row{Terms: s.slab[at:len(s.slab):len(s.slab)], Rel: rel, RHS: rhs, Rule: rule})
}

func (s *sheet) truth(rel exact.Rel, rhs exact.Rat, terms ...exact.Term) {
	s.row(rel, rhs, exact.Background, terms...)
}

func one(v int) exact.Term             { return exact.Term{Var: v, Coef: exact.Int(1)} }
func times(v int, n int) exact.Term    { return exact.Term{Var: v, Coef: exact.Int(n)} }
func by(v int, r exact.Rat) exact.Term { return exact.Term{Var: v, Coef: r} }
func minus(v int) exact.Term           { return exact.Term{Var: v, Coef: exact.Int(-1)} }
func (f form) each(k exact.Rat) []exact.Term {
	out := make([]exact.Term, len(f.terms))
	for i, t := range f.terms {
		out[i] = exact.Term{Var: t.Var, Coef: t.Coef.Mul(k)}
	}
	return out
}

var zero = exact.Rat{}
