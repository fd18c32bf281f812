package solver

import "saywright/solver/exact"

// obey adds the rows of law i, loosened by the slack where that is asked of it.
func (s *sheet) obey(i int) {
	l := &s.p.laws[i]
	st := l.said
	switch {
	case KindOf(st.Name.Quantity) == Count:
		return // counts choose cells; see counts.go
	case st.Name.Quantity == Goal:
		s.equalBays(i)
	case st.Name.Quantity == OpeningSide:
		s.side(i, st)
	case KindOf(st.Name.Quantity) == Size:
		s.size(i, st)
	case st.Name.Quantity == Stock:
		s.board(i, st)
	case st.Name.Quantity == FloorFalls:
		// falls 1/8 per 12: the floor at right is lower by span × 1/8 / 12
		s.row(exact.EQ, zero, i, one(vFall), by(vSpan, st.Value.Num.Div(st.Upper.Num)))
	case st.Op == In:
		s.relate(i, st.Name, GE, st.Value)
		s.relate(i, st.Name, LE, st.Upper)
	default:
		s.relate(i, st.Name, st.Op, st.Value)
		s.atRight(i, l)
	}
}

// atRight holds published limits and the habit of staying off the floor at the right end post too, where the floor
// falls: there heights grow by the fall.
func (s *sheet) atRight(i int, l *law) {
	if _, level := s.p.parts[FloorAtRight]; level || l.Kind != Code && (!l.soft || l.said.Op != GE) {
		return
	}
	v := vBottom
	switch l.said.Name.Quantity {
	case WallHeight:
		v = vHeight
	case BottomGap:
	default:
		return
	}
	s.row(relOf[l.said.Op], l.said.Value.Num, i, one(v), minus(vFall))
}

var relOf = map[Op]exact.Rel{Eq: exact.EQ, LT: exact.LT, LE: exact.LE, GT: exact.GT, GE: exact.GE}

// relate adds: quantity op value, for every part that the name covers.
func (s *sheet) relate(i int, n Name, op Op, v Value) {
	rel := relOf[op]
	for _, left := range s.forms(n, op == Eq) {
		if n.Quantity == StiffenerSpacing {
			s.space(i, left, op, v)
			continue
		}
		if v.Of == nil {
			s.bound(i, left, rel, form{copies: 1}, v.Num)
			continue
		}
		for _, right := range s.rightForms(*v.Of) {
			s.bound(i, left, rel, form{terms: right.each(v.Factor()), plus: right.plus.Mul(v.Factor()), copies: right.copies}, v.Num)
		}
	}
}

// bound adds left/copies rel right/copies + k, times left's copies, so that runs of bays keep whole sums. Where left
// stands for some number of copies, the least bounds it from below and the most from above.
func (s *sheet) bound(i int, left form, rel exact.Rel, right form, k exact.Rat) {
	if left.upTo == 0 {
		s.boundBy(i, left, rel, right, k, left.copies)
		return
	}
	if rel == exact.EQ || rel == exact.GE || rel == exact.GT {
		lower := exact.GE
		if rel == exact.GT && left.copies > 0 {
			lower = exact.GT
		}
		s.boundBy(i, left, lower, right, k, left.copies)
	}
	if left.upTo < most && (rel == exact.EQ || rel == exact.LE || rel == exact.LT) {
		upper := exact.LE
		if rel == exact.LT && left.copies > 0 {
			upper = exact.LT
		}
		s.boundBy(i, left, upper, right, k, left.upTo)
	}
}

func (s *sheet) boundBy(i int, left form, rel exact.Rel, right form, k exact.Rat, copies int) {
	scale := exact.New(int64(copies), int64(right.copies))
	terms := append(append([]exact.Term{}, left.terms...), right.each(scale.Neg())...)
	rhs := k.Mul(exact.Int(copies)).Add(right.plus.Mul(scale)).Sub(left.plus)
	s.rowOf(i, rel, rhs, copies, terms)
}

// rowOf adds a row of law i. When the law is loosened, its limit moves by the slack: up for dir +1, down for −1. Of a
// range only the end on that side moves; the other stays where it was said.
func (s *sheet) rowOf(i int, rel exact.Rel, rhs exact.Rat, copies int, terms []exact.Term) {
	stays := s.p.laws[i].said.Op == In && (rel == exact.LE || rel == exact.LT) != (s.dir > 0)
	if i == s.slack && !stays {
		terms = append(terms, times(s.vSlack, -s.dir*copies))
	}
	s.row(rel, rhs, i, terms...)
}

// forms gives the unknowns that a name covers in this cell. specific: an equation on all parts leaves out a part that
// has an equation of its own (`bay 1 = 60` goes before `bay = …`).
func (s *sheet) forms(n Name, specific bool) []form {
	if v, ok := s.p.parts[n.Quantity]; ok {
		return []form{{plus: v, copies: 1}}
	}
	switch n.Quantity {
	case WallHeight:
		return []form{unit(vHeight)}
	case Gap:
		var out []form
		for i, g := range s.segs {
			if i == 0 || s.gapsIn(i) > 0 {
				out = append(out, unit(g))
			}
		}
		return out
	case BottomGap:
		return []form{unit(vBottom)}
	case RailFace:
		return []form{unit(vFace)}
	case PostHeight:
		return []form{unit(vPostHeight)}
	case BracketClearance:
		return []form{unit(vClearance)}
	case BracketEar:
		return []form{unit(vEar)}
	case FloorAtRight:
		return []form{unit(vFall)}
	case RailTop, FixedRail:
		if n.Rail > s.c.rails || n.Rail < 1 || s.f&upField == 0 {
			return nil
		}
		return []form{s.top(n.Rail)}
	case Span:
		return []form{unit(vSpan)}
	case Overall:
		return []form{{terms: []exact.Term{one(vSpan), times(vEndPost, 2)}, copies: 1}}
	case Centers:
		return []form{{terms: []exact.Term{one(vSpan), one(vEndPost)}, copies: 1}}
	}
	if partQuantities[n.Quantity] {
		return []form{unit(s.partVar(n.Quantity))}
	}
	return s.alongForms(n, specific)
}

// partVar is the unknown of a part that is limited or tied.
func (s *sheet) partVar(q Quantity) int {
	if s.part == nil {
		s.part = map[Quantity]int{}
	}
	v, ok := s.part[q]
	if !ok {
		v = s.fresh()
		s.part[q] = v
		s.truth(exact.GE, zero, one(v))
	}
	return v
}

func (s *sheet) alongForms(n Name, specific bool) []form {
	if s.f&alongField == 0 {
		return nil
	}
	switch n.Quantity {
	case Opening:
		return s.openingForms(n, specific)
	case OpeningFromLeft:
		if i := max(n.Opening, 1); i <= len(s.dl) {
			return []form{unit(s.dl[i-1])}
		}
	case OpeningFromRight:
		if i := s.nthOpening(n, len(s.dr)); i >= 1 && i <= len(s.dr) {
			return []form{unit(s.dr[i-1])}
		}
	case PostFromLeft, PostFromRight:
		return s.postForms(n)
	case Bay, StiffenerSpacing:
		return s.bayForms(n, specific)
	}
	return nil
}

func (s *sheet) nthOpening(n Name, unnamed int) int {
	if n.Opening > 0 {
		return n.Opening
	}
	return unnamed
}

func (s *sheet) openingForms(n Name, specific bool) []form {
	if n.Opening > 0 {
		if n.Opening > len(s.open) {
			return nil
		}
		return []form{unit(s.open[n.Opening-1])}
	}
	var out []form
	shared := false
	for i, v := range s.open {
		if v == vOpening && shared || specific && s.hasOwn(Name{Quantity: Opening, Opening: i + 1}) {
			continue
		}
		shared = shared || v == vOpening
		out = append(out, unit(v))
	}
	return out
}

// hasOwn reports whether a law that is on gives this very part an equation of its own.
func (s *sheet) hasOwn(n Name) bool {
	for i := range s.p.laws {
		st := &s.p.laws[i].said
		if s.on.has(i) && st.Op == Eq && st.Name == n && st.Value.Of == nil {
			return true
		}
	}
	return false
}

func (s *sheet) postForms(n Name) []form {
	if !s.c.exact() {
		return s.loosePostForms(n)
	}
	if n.Post < 1 || n.Post > s.c.posts() {
		return nil
	}
	// post j stands right of j elements; j−1 posts lie before it
	terms := []exact.Term{times(vPost, n.Post-1)}
	for _, pc := range s.pieces {
		if pc.at < n.Post {
			terms = append(terms, one(pc.v))
		}
	}
	if n.Quantity == PostFromLeft {
		return []form{{terms: terms, copies: 1}}
	}
	f := form{terms: []exact.Term{one(vSpan), minus(vPost)}, copies: 1}
	for _, t := range terms {
		f.terms = append(f.terms, exact.Term{Var: t.Var, Coef: t.Coef.Neg()})
	}
	return []form{f}
}

// side puts an opening against an end post, or equally far from both. Of several openings without a name, left means
// the first, right the last, and middle all of them as a group.
func (s *sheet) side(i int, st Statement) {
	k := len(s.open)
	if k == 0 || st.Name.Opening > k {
		return
	}
	first, last := max(st.Name.Opening, 1), s.nthOpening(st.Name, k)
	switch st.Value.Word {
	case "left":
		s.row(exact.EQ, zero, i, one(s.dl[first-1]))
	case "right":
		s.row(exact.EQ, zero, i, one(s.dr[last-1]))
	case "middle":
		s.row(exact.EQ, zero, i, one(s.dl[first-1]), minus(s.dr[last-1]))
	}
}

// size sets what a size measures: the face of the rails unless that was measured, the faces of posts.
func (s *sheet) size(i int, st Statement) {
	face := s.p.faceOf(st)
	switch st.Name.Quantity {
	case RailSize:
		if !s.p.speaksOf(RailFace) {
			s.rowOf(i, exact.EQ, face, 1, []exact.Term{one(vFace)})
		}
	case PostSize:
		if !s.saysOn(EndPostSize) {
			s.rowOf(i, exact.EQ, face, 1, []exact.Term{one(vEndPost)})
		}
		if !s.saysOn(AddedPostSize) {
			s.rowOf(i, exact.EQ, face, 1, []exact.Term{one(vPost)})
		}
	case EndPostSize:
		s.rowOf(i, exact.EQ, face, 1, []exact.Term{one(vEndPost)})
	case AddedPostSize:
		s.rowOf(i, exact.EQ, face, 1, []exact.Term{one(vPost)})
	}
}

func (s *sheet) saysOn(q Quantity) bool {
	for i := range s.p.laws {
		if s.on.has(i) && s.p.laws[i].said.Name.Quantity == q {
			return true
		}
	}
	return false
}

// board: the rail of a bay must come out of the longest board on sale or at hand.
func (s *sheet) board(i int, st Statement) {
	longest := s.p.longest(st)
	room := longest.Add(s.p.parts[BracketThickness].Mul(exact.Int(2))).Add(s.p.parts[Fit]).Sub(s.p.parts[Trim])
	if !s.c.exact() {
		s.rowOf(i, exact.LE, room, 1, []exact.Term{one(vBay)})
		for _, l := range s.lone {
			s.rowOf(i, exact.LE, room, 1, []exact.Term{one(l.v)})
		}
	}
	for _, pc := range s.pieces {
		if pc.opening == 0 && pc.upTo < most {
			s.rowOf(i, exact.LE, room.Mul(exact.Int(pc.upTo)), pc.upTo, []exact.Term{one(pc.v)})
		}
	}
}

// longest is the longest board that a stock statement, or a board on hand, gives the rails.
func (p *problem) longest(st Statement) exact.Rat {
	var most exact.Rat
	for _, v := range listOf(st.Value) {
		most = exact.Max(most, v.Num)
	}
	for _, s := range p.book.said {
		if s.Name.Quantity == Have && s.Name.Long != nil && s.Name.Item == p.railSizeName() {
			most = exact.Max(most, s.Name.Long.Num)
		}
	}
	return most
}
