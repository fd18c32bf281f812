package solver

import "saywright/solver/exact"

// An inch is how far a measurement may differ from its neighbors, or the sum along the wall from the span, before it is
// asked back (trade practice of this program, no source): posts out of plumb differ by less, ears and fingers by more.
var askedBeyond = exact.Int(1)

// doubts returns the first question that the measurements raise: two neighbors that differ by more than an inch, or a
// sum along the wall that misses the span by more than that.
func (s *Site) doubts(all []*gauge) *Question {
	for _, g := range all {
		if q := s.neighborsApart(g); q != nil {
			return q
		}
		if q := leansApart(g); q != nil {
			return q
		}
	}
	return s.spanMissed(all)
}

func (s *Site) neighborsApart(g *gauge) *Question {
	for i := 1; i < len(g.readings); i++ {
		a, b := g.readings[i-1], g.readings[i]
		off := b.width.Sub(a.width).Abs()
		if !askedBeyond.Less(off) {
			continue
		}
		q := asking("neighbors apart", Fact{Key: "readings", Names: []string{a.said.String(), b.said.String()},
			Nums: []exact.Rat{a.width, b.width, off}}, forget(a.said), forget(b.said))
		if rail := s.railBetween(a.height, b.height); rail > 0 {
			q.Example = Statement{Name: Name{Quantity: Measured, Bay: g.bay, Rail: rail}, Op: Eq,
				Value: Inches(s.down(a.width.Add(b.width).Mul(exact.New(1, 2))))}.String()
		}
		return q
	}
	return nil
}

// railBetween names a rail whose middle lies between two heights: measuring there tells which of two readings is off.
func (s *Site) railBetween(low, high exact.Rat) int {
	up := s.up()
	if up == nil {
		return 0
	}
	for i, top := range up.Tops {
		middle := top.Sub(up.RailFace.Mul(exact.New(1, 2)))
		if low.Less(middle) && middle.Less(high) {
			return i + 1
		}
	}
	return 0
}

// leansApart asks when two leans and two widths, all told, miss each other by more than an inch over the heights measured.
func leansApart(g *gauge) *Question {
	n := len(g.readings)
	if n < 2 || g.left == nil || g.right == nil {
		return nil
	}
	low, high := g.readings[0], g.readings[n-1]
	byWidths := high.width.Sub(low.width)
	byLeans := g.right.slope().Sub(g.left.slope()).Mul(high.height.Sub(low.height))
	off := byWidths.Sub(byLeans).Abs()
	if !askedBeyond.Less(off) {
		return nil
	}
	return asking("leans and widths", Fact{Key: "readings", Names: []string{low.said.String(), high.said.String()},
		Nums: []exact.Rat{byWidths, byLeans, off}}, forget(low.said), forget(high.said))
}

// stretchesMeasured returns the widths along the wall with what was measured in the place of what was planned, and
// which statements stand behind them. Of several readings in one bay the lowest counts: a span is measured near the floor.
func (s *Site) stretchesMeasured(all []*gauge) (bays, openings []exact.Rat, said []Statement) {
	along := s.along()
	for i, b := range along.Bays {
		bays = append(bays, b.Width)
		if r := all[i].readings; len(r) > 0 {
			bays[i] = r[0].width
			said = append(said, r[0].said)
		}
	}
	for _, o := range along.Openings {
		openings = append(openings, o.Width)
	}
	for _, m := range s.Measured {
		if i := openingOf(m) - 1; i >= 0 && i < len(openings) {
			openings[i] = m.Value.Num
			said = append(said, m)
		}
	}
	return bays, openings, said
}

// alongSum adds bays, openings and posts up to what the span should be.
func (s *Site) alongSum(all []*gauge) (Expr, []Statement) {
	bays, openings, said := s.stretchesMeasured(all)
	var terms []Expr
	for _, w := range append(bays, openings...) {
		terms = append(terms, Num(w))
	}
	if n := len(s.Layout.Along.Posts); n > 0 {
		terms = append(terms, Product(Tally(n), Num(s.Layout.Along.PostFace)))
	}
	return Sum(terms...), said
}

func (s *Site) spanMissed(all []*gauge) *Question {
	if s.along() == nil {
		return nil
	}
	sum, said := s.alongSum(all)
	off := sum.Value.Sub(s.Layout.Along.Span)
	if len(said) == 0 || !askedBeyond.Less(off.Abs()) {
		return nil
	}
	f := Fact{Key: "readings", Nums: []exact.Rat{sum.Value, s.Layout.Along.Span, off}}
	var choices []string
	for _, m := range said {
		f.Names = append(f.Names, m.String())
		choices = append(choices, s.asPlan(m), forget(m))
	}
	return asking("span missed", f, choices...)
}

// asPlan is the statement that takes a measurement into the plan: the bay, or the opening, is that wide.
func (s *Site) asPlan(m Statement) string {
	n := Name{Wall: m.Name.Wall, Quantity: Bay, Bay: max(m.Name.Bay, 1)}
	if openingOf(m) > 0 {
		n = Name{Wall: m.Name.Wall, Quantity: Opening, Opening: m.Name.Opening}
	}
	return Statement{Name: n, Op: Eq, Value: m.Value}.String()
}

// outranked tells, for each bay and opening that was measured, the width that was planned, and the sum along the wall.
func (s *Site) outranked(all []*gauge) (f Findings) {
	along := s.along()
	if along == nil {
		return f
	}
	for i, b := range along.Bays {
		if r := all[i].readings; len(r) > 0 {
			f.Facts = append(f.Facts, Fact{Key: "measured bay", Names: []string{r[0].said.String()},
				Nums: []exact.Rat{exact.Int(i + 1), b.Width, r[0].width}})
		}
	}
	for _, m := range s.Measured {
		if i := openingOf(m) - 1; i >= 0 && i < len(along.Openings) {
			f.Facts = append(f.Facts, Fact{Key: "measured opening", Names: []string{m.String()},
				Nums: []exact.Rat{exact.Int(i + 1), along.Openings[i].Width, m.Value.Num}})
		}
	}
	if sum, said := s.alongSum(all); len(said) > 0 {
		f.Work = append(f.Work, Line("along", "along", sum))
		if off := sum.Value.Sub(along.Span); off.Sign() != 0 {
			f.Facts = append(f.Facts, Fact{Key: "span missed", Nums: []exact.Rat{sum.Value, along.Span, off}})
		}
	}
	return f
}
