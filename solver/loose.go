package solver

import (
	"slices"

	"saywright/solver/exact"
)

// lone is a named bay in a cell that stands for many: it is there, though not where.
type lone struct{ bay, v int }

// nameBays makes each named bay that every arrangement of the cell has an unknown of its own. All bays together are longer
// than those by the others.
func (s *sheet) nameBays() {
	if s.p.named.bays == (set{}) {
		return
	}
	for _, i := range s.p.named.bays.list() {
		if i > s.c.bays.lo {
			break
		}
		l := lone{i, s.fresh()}
		s.lone = append(s.lone, l)
		s.truth(exact.GT, zero, one(l.v))
	}
	if len(s.lone) == 0 {
		return
	}
	var terms []exact.Term
	for _, pc := range s.pieces {
		if pc.opening == 0 {
			terms = append(terms, one(pc.v))
		}
	}
	for _, l := range s.lone {
		terms = append(terms, minus(l.v))
	}
	rel := exact.GE
	switch len(s.lone) {
	case s.c.bays.hi:
		rel = exact.EQ
	case s.c.bays.lo:
	default:
		rel = exact.GT
	}
	s.truth(rel, zero, terms...)
	if len(s.c.segs) > 1 {
		s.nameBaysBySegment()
	}
}

// nameBaysBySegment: a bay that can only be in one segment is part of that segment's length.
func (s *sheet) nameBaysBySegment() {
	fewest, greatest := 0, 0 // bays left of the segment
	for _, pc := range s.pieces {
		if pc.opening > 0 {
			continue
		}
		terms, inside := []exact.Term{one(pc.v)}, 0
		for _, l := range s.lone {
			if l.bay > greatest && l.bay <= fewest+pc.bays {
				terms, inside = append(terms, minus(l.v)), inside+1
			}
		}
		if inside > 0 {
			rel := exact.GE
			if pc.bays > inside {
				rel = exact.GT
			}
			s.truth(rel, zero, terms...)
		}
		fewest, greatest = fewest+pc.bays, min(most, greatest+pc.upTo)
	}
}

func (s *sheet) loneForm(bay int) []form {
	for _, l := range s.lone {
		if l.bay == bay {
			return []form{{terms: []exact.Term{one(l.v)}, copies: 1, key: l.v, spaces: s.spacesOf(1, 1, bay, true)}}
		}
	}
	return nil
}

// excepted are the bays that have an equation of their own; all is false where the cell does not know one of them.
func (s *sheet) excepted(q Quantity) (out []lone, all bool) {
	if s.p.named.bays == (set{}) {
		return nil, true
	}
	for _, i := range s.p.named.bays.list() {
		if !s.hasOwn(Name{Quantity: q, Bay: i}) {
			continue
		}
		at := slices.IndexFunc(s.lone, func(l lone) bool { return l.bay == i })
		if at < 0 {
			return nil, false
		}
		out = append(out, s.lone[at])
	}
	return out, true
}

// namePosts places each named post that every arrangement of the cell has: j−1 others and as many bays and openings as j
// lie left of it, and what is left lies right.
func (s *sheet) namePosts() {
	if s.p.named.posts == (set{}) {
		return
	}
	posts, before := s.c.posts(), 0
	for _, j := range s.p.named.posts.list() {
		if j > posts {
			break
		}
		l, r := s.fresh(), s.fresh()
		if s.at == nil {
			s.at = map[int][2]int{}
		}
		s.truth(exact.EQ, zero, one(vSpan), minus(l), minus(vPost), minus(r))
		s.truth(exact.GT, zero, one(l), times(vPost, 1-j))
		s.truth(exact.GT, zero, one(r), times(vPost, j-posts))
		if before > 0 {
			s.truth(exact.GT, zero, one(l), minus(s.at[before][0]), times(vPost, before-j))
		}
		s.at[j], before = [2]int{l, r}, j
		s.nameBaysBeside(j)
	}
}

// nameBaysBeside: bays past the jth are right of post j, and the first bays that are not among the openings left of it.
func (s *sheet) nameBaysBeside(j int) {
	left := []exact.Term{one(s.at[j][0]), times(vPost, 1-j)}
	right := []exact.Term{one(s.at[j][1]), times(vPost, j-s.c.posts())}
	for _, l := range s.lone {
		switch {
		case l.bay > j:
			right = append(right, minus(l.v))
		case l.bay <= j-s.c.openings:
			left = append(left, minus(l.v))
		}
	}
	for _, terms := range [][]exact.Term{left, right} {
		if len(terms) > 2 {
			s.truth(exact.GE, zero, terms...)
		}
	}
}

// baysBeside are the bays left and right of each named post, counted from below; without openings those left of it are
// known.
func (s *sheet) baysBeside() (out []form) {
	if len(s.at) == 0 {
		return nil
	}
	for _, j := range s.p.named.posts.list() {
		at, ok := s.at[j]
		if !ok {
			break
		}
		left := form{terms: []exact.Term{one(at[0]), times(vPost, 1-j)}, copies: j - s.c.openings, upTo: most}
		if s.c.openings == 0 {
			left.upTo = 0
		}
		right := form{terms: []exact.Term{one(at[1]), times(vPost, j-s.c.posts())}, copies: s.c.bays.lo - j, upTo: most}
		for _, f := range []form{left, right} {
			if f.copies > 0 {
				out = append(out, f)
			}
		}
	}
	return out
}

func (s *sheet) loosePostForms(n Name) []form {
	at, ok := s.at[n.Post]
	switch {
	case !ok:
		return nil
	case n.Quantity == PostFromLeft:
		return []form{unit(at[0])}
	}
	return []form{unit(at[1])}
}
