package solver

import (
	"encoding/binary"
	"slices"

	"saywright/solver/exact"
)

// cell is one choice of counts: with it fixed, only lengths are left, and every rule is linear.
type cell struct {
	rails    int
	more     bool // this many rails or more
	bays     int
	openings int
	further  bool  // this many bays or more
	left     []int // how many bays lie left of each opening
	stiff    []int // stiffeners in each bay, where both ends of their spacing are bound; nil: left to each bay
}

func (c *cell) posts() int { return c.bays + c.openings - 1 }

// key tells cells apart.
func (c *cell) key() string {
	b := make([]byte, 0, 24)
	b = binary.AppendVarint(b, int64(c.rails))
	b = binary.AppendVarint(b, int64(c.bays))
	flags := int64(c.openings) << 2
	if c.more {
		flags |= 1
	}
	if c.further {
		flags |= 2
	}
	b = binary.AppendVarint(b, flags)
	for _, l := range c.left {
		b = binary.AppendVarint(b, int64(l))
	}
	for _, m := range c.stiff {
		b = binary.AppendVarint(b, int64(m)+1)
	}
	return string(b)
}

// piece is an opening, or a run of neighboring bays that nothing tells apart: its length is their sum.
type piece struct {
	opening int // from 1; 0: bays
	first   int // first bay, from 1
	bays    int
	at      int // elements left of it, and so posts left of it
	v       int // its unknown
}

// form is a linear form: the sum of the terms and a constant, standing for Copies of one quantity.
type form struct {
	terms  []exact.Term
	plus   exact.Rat
	copies int
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
	vFree  // the first of the further unknowns
)

// sheet is the system of one cell under the laws that are on.
type sheet struct {
	p      *problem
	c      *cell
	f      field
	on     set
	sys    exact.System
	part   map[Quantity]int // parts that are unknowns
	pieces []piece
	open   []int // unknown of each opening's width
	dl, dr []int // unknowns: distance of each opening from the left, from the right end post
	segs   []int // unknown of the gap in each stretch between placed rails; one: vGap
	slack  int   // law whose rows are loosened by vSlack; -1 none
	vSlack int
	dir    int // which way the loosened law gives: +1 its limit grows, -1 it shrinks
	named  set // bays that are unknowns of their own, for a range of one bay
	vars   int
}

// lay builds the system of a cell. solo names bays (as a set of indexes) that must be unknowns of their own.
func (p *problem) lay(c *cell, f field, on set, solo set, slack, dir int) *sheet {
	s := &sheet{p: p, c: c, f: f, on: on, slack: slack, dir: dir, named: solo, vars: vFree}
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
	return s
}

func (s *sheet) fresh() int { s.vars++; return s.vars - 1 }

func (s *sheet) row(rel exact.Rel, rhs exact.Rat, rule int, terms ...exact.Term) {
	s.sys.Rows = append(s.sys.Rows, exact.Row{Terms: terms, Rel: rel, RHS: rhs, Rule: rule})
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

// layUp states the geometry up the wall: H = b + n·w + (n−1)·g, and what brackets need. With "n or more" rails the
// height is at least that, since every further rail and gap only adds.
func (s *sheet) layUp() {
	n := s.c.rails
	s.segs = s.segments()
	height := []exact.Term{one(vHeight), minus(vBottom), times(vFace, -n)}
	for i, g := range s.segs {
		height = append(height, times(g, -s.gapsIn(i)))
		s.truth(exact.GE, zero, one(g))
		s.truth(exact.GE, zero, one(g), minus(vClearance))
	}
	if s.c.more {
		s.truth(exact.GE, zero, height...)
	} else {
		s.truth(exact.EQ, zero, height...)
	}
	s.truth(exact.GE, zero, one(vHeight))
	s.truth(exact.GE, zero, one(vBottom))
	s.truth(exact.GT, zero, one(vFace))
	s.truth(exact.GE, zero, one(vBottom), minus(vEar))
	s.truth(exact.GE, zero, one(vEar))
	if _, level := s.p.parts[FloorAtRight]; !level {
		// Where the floor lies lower at the right, v is negative and the gap under the wall grows by as much.
		s.truth(exact.GE, zero, one(vBottom), minus(vFall))
		s.truth(exact.GE, zero, one(vBottom), minus(vFall), minus(vEar))
	}
	s.truth(exact.GE, zero, one(vPostHeight), minus(vHeight), minus(vEar))
}

// segments are the stretches of rails between those placed by name, each with a gap of its own. Rails that are not
// placed, or placed so that one gap serves all, have one.
func (s *sheet) segments() []int {
	if !s.p.split {
		return []int{vGap}
	}
	segs := []int{vGap}
	for range s.cuts() {
		segs = append(segs, s.fresh())
	}
	return segs
}

// cuts are the placed rails at which one stretch of gaps ends and another begins.
func (s *sheet) cuts() []int {
	if !s.p.split {
		return nil
	}
	var cuts []int
	for _, i := range slices.Compact(slices.Clone(s.p.placed)) {
		if i > 1 && i < s.c.rails {
			cuts = append(cuts, i)
		}
	}
	return cuts
}

// gapsIn returns how many gaps lie in stretch i.
func (s *sheet) gapsIn(i int) int {
	ends := append(append([]int{1}, s.cuts()...), max(s.c.rails, 1))
	return ends[i+1] - ends[i]
}

// top is the height of a rail's top edge: b + i·w and the gaps below it.
func (s *sheet) top(rail int) form {
	f := form{terms: []exact.Term{one(vBottom), times(vFace, rail)}, copies: 1}
	from := 1
	for i, g := range s.segs {
		n := min(s.gapsIn(i), rail-from)
		if n <= 0 {
			break
		}
		f.terms = append(f.terms, times(g, n))
		from += n
	}
	return f
}

// layAlong states the geometry along the wall: the span is filled by bays, openings and the posts between them.
func (s *sheet) layAlong() {
	s.pieces = s.cutPieces()
	s.open = make([]int, s.c.openings)
	for i := range s.open {
		s.open[i] = vOpening
		if s.p.namesOpening(i + 1) {
			s.open[i] = s.fresh()
		}
	}
	k := s.c.openings
	s.dl, s.dr = make([]int, k), make([]int, k)
	for i := range k {
		s.dl[i], s.dr[i] = s.fresh(), s.fresh()
	}
	span := []exact.Term{one(vSpan), times(vPost, -s.c.posts())}
	for i := range s.pieces {
		pc := &s.pieces[i]
		if pc.opening > 0 {
			pc.v = s.open[pc.opening-1]
		} else {
			pc.v = s.fresh()
			s.truth(exact.GT, zero, one(pc.v))
		}
		span = append(span, minus(pc.v))
	}
	rel := exact.EQ
	if s.c.further {
		rel = exact.GE
	}
	s.truth(rel, zero, span...)
	s.truth(exact.GT, zero, one(vPost))
	s.truth(exact.GT, zero, one(vEndPost))
	s.placeOpenings()
}

// placeOpenings states where each opening is. left + opening + right is the span in every arrangement, also where
// more bays may follow; the exact place needs the arrangement.
func (s *sheet) placeOpenings() {
	for i := range s.open {
		s.truth(exact.GT, zero, one(s.open[i]))
		s.truth(exact.GE, zero, one(s.dl[i]))
		s.truth(exact.GE, zero, one(s.dr[i]))
		s.truth(exact.EQ, zero, one(vSpan), minus(s.dl[i]), minus(s.open[i]), minus(s.dr[i]))
		if i > 0 {
			s.truth(exact.GE, zero, one(s.dl[i]), minus(s.dl[i-1]), minus(s.open[i-1]), minus(vPost))
		}
	}
	if s.c.further {
		return
	}
	for _, pc := range s.pieces {
		if pc.opening > 0 {
			s.truth(exact.EQ, zero, append([]exact.Term{minus(s.dl[pc.opening-1])}, s.before(pc.at)...)...)
		}
	}
}

// before is the length left of element at: pieces and posts.
func (s *sheet) before(at int) []exact.Term {
	terms := []exact.Term{times(vPost, at)}
	for _, pc := range s.pieces {
		if pc.at < at {
			terms = append(terms, one(pc.v))
		}
	}
	return terms
}

// cutPieces lists openings and runs of bays from left to right. Bays that a law names, or that stand at a named post,
// or that hold another number of stiffeners, are told apart.
func (s *sheet) cutPieces() []piece {
	var out []piece
	at, next := 0, 0
	for bay := 1; bay <= s.c.bays+1; bay++ {
		for next < s.c.openings && s.leftOf(next) < bay {
			out = append(out, piece{opening: next + 1, at: at})
			at, next = at+1, next+1
		}
		if bay > s.c.bays {
			break
		}
		if n := len(out); n > 0 && out[n-1].opening == 0 && !s.parts(bay, at) {
			out[n-1].bays++
		} else {
			out = append(out, piece{first: bay, bays: 1, at: at})
		}
		at++
	}
	return out
}

func (s *sheet) leftOf(opening int) int {
	if opening < len(s.c.left) {
		return s.c.left[opening]
	}
	return s.c.bays
}

// parts reports whether bay, at element at, must not join the bay before it.
func (s *sheet) parts(bay, at int) bool {
	if s.p.namesBay(bay) || s.p.namesBay(bay-1) || s.solo(bay) || s.solo(bay-1) || s.p.namesPost(at) {
		return true
	}
	return s.c.stiff != nil && s.c.stiff[bay-1] != s.c.stiff[bay-2]
}

func (s *sheet) solo(bay int) bool { return bay < maxLaws && s.named.has(bay) }

func (p *problem) namesBay(i int) bool {
	return p.names(func(n Name) bool { return n.Bay == i && alongQuantities[n.Quantity] })
}

func (p *problem) namesOpening(i int) bool {
	return p.names(func(n Name) bool { return n.Quantity == Opening && n.Opening == i })
}

// namesPost reports whether a law speaks of added post j by its place.
func (p *problem) namesPost(j int) bool {
	return p.names(func(n Name) bool { return n.Post == j && alongQuantities[n.Quantity] })
}

func (p *problem) names(hit func(Name) bool) bool {
	for i := range p.laws {
		s := &p.laws[i].said
		if hit(s.Name) || s.Value.Of != nil && hit(*s.Value.Of) {
			return true
		}
	}
	return false
}
