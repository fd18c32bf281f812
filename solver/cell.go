package solver

import (
	"encoding/binary"
	"slices"

	"saywright/solver/exact"
)

// tally is a count from lo to hi; hi most: no upper end.
type tally struct{ lo, hi int }

func (b tally) exact() bool { return b.lo == b.hi }

// cell is one choice of counts: with it fixed, only lengths are left, and every rule is linear. A cell may also stand for
// many: this many rails or more, or segments with so many bays at least and so many at most. Then its rows are what all
// of those have in common, so that what refuses the cell refuses each.
//
// The openings whose place a law speaks of part the wall into segments; within a segment bays are alike.
type cell struct {
	rails    int
	more     bool // this many rails or more
	openings int
	bays     tally   // all bays together
	segs     []tally // bays of each segment, left to right
	// spaces between stiffeners in each run of bays, all its bays together, where both ends of their spacing are bound;
	// nil: as many as the laws allow
	spaces []tally
	probe  probe
}

// probe is a number of spaces that is tried in a cell that stands for many: in all bays of a segment that has a fixed number
// of them, or (seg −1) in any single bay.
type probe struct {
	seg    int
	spaces tally // none: nothing is tried
}

// exact reports whether the cell fixes every count along the wall.
func (c *cell) exact() bool {
	return c.bays.exact() && !slices.ContainsFunc(c.segs, func(b tally) bool { return !b.exact() })
}

func (c *cell) posts() int { return c.bays.lo + c.openings - 1 }

// key tells cells apart.
func (c *cell) key() string {
	b := make([]byte, 0, 32)
	b = binary.AppendVarint(b, int64(c.rails))
	flags := int64(c.openings) << 1
	if c.more {
		flags |= 1
	}
	b = binary.AppendVarint(b, flags)
	b = binary.AppendVarint(binary.AppendVarint(b, int64(c.bays.lo)), int64(c.bays.hi))
	for _, s := range c.segs {
		b = binary.AppendVarint(binary.AppendVarint(b, int64(s.lo)), int64(s.hi))
	}
	for _, m := range c.spaces {
		b = binary.AppendVarint(binary.AppendVarint(b, int64(m.lo)+1), int64(m.hi))
	}
	if c.probe.spaces.lo > 0 {
		b = binary.AppendVarint(append(b, 0), int64(c.probe.seg))
		b = binary.AppendVarint(binary.AppendVarint(b, int64(c.probe.spaces.lo)), int64(c.probe.spaces.hi))
	}
	return string(b)
}

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
	k := s.c.openings
	s.open = make([]int, k)
	for i := range s.open {
		s.open[i] = vOpening
		if s.p.namesOpening(i + 1) {
			s.open[i] = s.fresh()
		}
	}
	s.dl, s.dr = make([]int, k), make([]int, k)
	for i := range k {
		s.dl[i], s.dr[i] = s.fresh(), s.fresh()
	}
	s.truth(exact.GT, zero, one(vPost))
	s.truth(exact.GT, zero, one(vEndPost))
	s.pieces = s.shareSpaces(s.cutPieces())
	for i := range s.pieces {
		pc := &s.pieces[i]
		switch {
		case pc.opening > 0:
			pc.v = s.open[pc.opening-1]
		case pc.bays > 0:
			pc.v = s.fresh()
			s.truth(exact.GT, zero, one(pc.v))
		default:
			pc.v = s.fresh()
			s.truth(exact.GE, zero, one(pc.v))
		}
	}
	s.countPosts()
	s.truth(exact.EQ, zero, append([]exact.Term{one(vSpan)}, negate(s.before(len(s.pieces)))...)...)
	s.placeOpenings()
}

// countPosts: where a segment holds some number of bays, its posts take between that many faces and this many.
func (s *sheet) countPosts() {
	if s.c.exact() {
		return
	}
	s.truth(exact.GT, zero, one(vBay))
	s.anyBay()
	s.nameBays()
	s.namePosts()
	all := make([]exact.Term, 0, len(s.c.segs))
	for _, b := range s.c.segs {
		v := s.fresh()
		s.posts = append(s.posts, v)
		all = append(all, one(v))
		s.between([]exact.Term{one(v)}, b, vPost)
	}
	s.between(all, s.c.bays, vPost)
}

// anyBay: whichever bay is looked at, all bays together are longer by the others.
func (s *sheet) anyBay() {
	terms := []exact.Term{minus(vBay)}
	for _, pc := range s.pieces {
		if pc.opening == 0 {
			terms = append(terms, one(pc.v))
		}
	}
	rel := exact.GE
	if s.c.bays.lo > 1 {
		rel = exact.GT
	}
	s.truth(rel, zero, terms...)
}

// between states lo × unit ≤ terms ≤ hi × unit.
func (s *sheet) between(terms []exact.Term, b tally, unit int) {
	if b.exact() {
		s.truth(exact.EQ, zero, append(slices.Clone(terms), times(unit, -b.lo))...)
		return
	}
	s.truth(exact.GE, zero, append(slices.Clone(terms), times(unit, -b.lo))...)
	if b.hi < most {
		s.truth(exact.LE, zero, append(slices.Clone(terms), times(unit, -b.hi))...)
	}
}

// placeOpenings states where each opening is: what lies left of it, and that left, opening and right make the span.
func (s *sheet) placeOpenings() {
	for i := range s.open {
		s.truth(exact.GT, zero, one(s.open[i]))
		s.truth(exact.GE, zero, one(s.dl[i]))
		s.truth(exact.GE, zero, one(s.dr[i]))
		s.truth(exact.EQ, zero, one(vSpan), minus(s.dl[i]), minus(s.open[i]), minus(s.dr[i]))
	}
	for i, pc := range s.pieces {
		if pc.opening > 0 {
			s.truth(exact.EQ, zero, append([]exact.Term{minus(s.dl[pc.opening-1])}, s.before(i)...)...)
		}
	}
}

// before is the length left of piece i: pieces, and a post behind each element; for all pieces it is the span, whose
// last element has no post behind it.
func (s *sheet) before(i int) []exact.Term {
	var terms []exact.Term
	posts := 0
	for _, pc := range s.pieces[:i] {
		terms = append(terms, one(pc.v))
		switch {
		case pc.opening > 0:
			posts++
		case s.posts != nil:
			terms = append(terms, one(s.posts[pc.seg]))
		default:
			posts += pc.bays
		}
	}
	if i == len(s.pieces) {
		posts--
	}
	if posts != 0 {
		terms = append(terms, times(vPost, posts))
	}
	return terms
}

// cutPieces lists openings and runs of bays from left to right. Bays that a law names, or that stand at a named post, are
// told apart where the cell fixes all counts.
func (s *sheet) cutPieces() []piece {
	groups := s.p.segments(s.c.openings)
	var out []piece
	if !s.c.exact() {
		for i, b := range s.c.segs {
			if b.hi > 0 {
				out = append(out, piece{bays: b.lo, upTo: b.hi, seg: i})
			}
			for _, o := range groups[i] {
				out = append(out, piece{opening: o, seg: i})
			}
		}
		return out
	}
	at, bay := 0, 0
	for i, b := range s.c.segs {
		for j := range b.lo {
			bay++
			if n := len(out); j > 0 && !s.parts(bay, at) {
				out[n-1].bays++
				out[n-1].upTo++
			} else {
				out = append(out, piece{first: bay, bays: 1, upTo: 1, seg: i, at: at})
			}
			at++
		}
		for _, o := range groups[i] {
			out = append(out, piece{opening: o, seg: i, at: at})
			at++
		}
	}
	return out
}

// segments lists the openings behind each segment of bays: one ends at each opening whose place a law speaks of, with
// the others of its group before it; what is left over stands at the right end.
func (p *problem) segments(k int) [][]int {
	var groups [][]int
	var open []int
	for i := 1; i <= k; i++ {
		open = append(open, i)
		if p.watches(i, k) {
			groups, open = append(groups, open), nil
		}
	}
	return append(groups, open)
}

// parts reports whether bay, at element at, must not join the bay before it.
func (s *sheet) parts(bay, at int) bool {
	return s.p.namesBay(bay) || s.p.namesBay(bay-1) || s.solo(bay) || s.solo(bay-1) || s.p.namesPost(at)
}

func (s *sheet) solo(bay int) bool { return bay < maxLaws && s.named.has(bay) }

func (p *problem) namesBay(i int) bool { return i >= 0 && i < maxLaws && p.named.bays.has(i) }

func (p *problem) namesOpening(i int) bool { return p.named.openings.has(i) }

// namesPost reports whether a law speaks of added post j by its place.
func (p *problem) namesPost(j int) bool { return j >= 0 && j < maxLaws && p.named.posts.has(j) }

// namedParts are the parts that laws speak of one by one.
type namedParts struct {
	bays, openings, posts set
	stiffeners, spacing   bool // whether any law speaks of their number, of their spacing
}

// takeNames collects them once, since every cell asks.
func (p *problem) takeNames() {
	note := func(n Name) {
		p.named.stiffeners = p.named.stiffeners || n.Quantity == Stiffeners
		p.named.spacing = p.named.spacing || n.Quantity == StiffenerSpacing
		if n.Bay > 0 && n.Bay < maxLaws && alongQuantities[n.Quantity] {
			p.named.bays.add(n.Bay)
		}
		if n.Quantity == Opening && n.Opening > 0 && n.Opening < maxLaws {
			p.named.openings.add(n.Opening)
		}
		if n.Post > 0 && n.Post < maxLaws && alongQuantities[n.Quantity] {
			p.named.posts.add(n.Post)
		}
	}
	for i := range p.laws {
		note(p.laws[i].said.Name)
		if of := p.laws[i].said.Value.Of; of != nil {
			note(*of)
		}
	}
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
