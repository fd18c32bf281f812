package solver

import (
	"slices"

	"saywright/solver/exact"
)

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
