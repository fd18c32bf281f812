package solver

import "saywright/solver/exact"

// railCuts writes the rails into the list: one line for a bay whose rails are all alike, else one for each.
func (s *Site) railCuts(all []*gauge, rails []*railPiece) (f Findings) {
	if len(rails) == 0 {
		return f
	}
	f.Work = append(f.Work, Line("brackets", "pair of brackets", Product(Tally(2), Num(s.BracketThickness))))
	for _, g := range all {
		var mine []*railPiece
		for _, r := range rails {
			if r.gauge == g {
				mine = append(mine, r)
			}
		}
		if len(mine) == 0 {
			continue
		}
		f.and(s.slopesTold(g, mine))
		if sameSum(mine) {
			f.Work = append(f.Work, s.railSums(mine[0], Name{Quantity: CutOf, Bay: g.bay}.String())...)
		} else {
			for i := len(mine) - 1; i >= 0; i-- { // top down, as a leaning bay is measured
				f.Work = append(f.Work, s.railSums(mine[i], mine[i].name())...)
			}
		}
		f.Cuts = append(f.Cuts, s.railLines(mine)...)
		f.and(s.play(mine))
	}
	f.Facts = append(f.Facts, s.alreadyUp()...)
	f.Assumed = s.leaned(Rails, RailSize, BracketThickness, Tape)
	return f
}

// sameSum reports whether one sum does for all of them.
func sameSum(rails []*railPiece) bool {
	for _, r := range rails[1:] {
		if !r.exact.Eq(rails[0].exact) {
			return false
		}
	}
	return true
}

// railLines writes one line for a bay whose rails are all alike, else one for each rail.
func (s *Site) railLines(rails []*railPiece) (lines []Cut) {
	for _, r := range rails {
		lines = append(lines, s.railCut(r, 1))
	}
	for _, c := range lines[1:] {
		if !c.Length.Eq(lines[0].Length) || c.Ends != lines[0].Ends {
			return lines
		}
	}
	if len(lines) == 1 {
		return lines
	}
	one := lines[0]
	one.Rail, one.Count = 0, len(lines)
	for _, c := range lines {
		one.Exact = exact.Min(one.Exact, c.Exact)
	}
	return []Cut{one}
}

func (s *Site) railCut(r *railPiece, count int) Cut {
	left, right := s.bevels(r)
	ends := "square"
	switch {
	case left != nil && right != nil:
		ends = "bevel both"
	case left != nil:
		ends = "bevel left"
	case right != nil:
		ends = "bevel right"
	}
	return Cut{Piece: "rail", Wall: s.Wall, Bay: r.gauge.bay, Rail: r.rail, Size: s.RailSize,
		Length: r.length, Exact: r.exact, Count: count, Ends: ends}
}

// railSums records how one rail's length comes about: the width that counts, less the brackets, less the fit.
func (s *Site) railSums(r *railPiece, of string) (w []Work) {
	counts := Num(r.apart.counts)
	if sum, ok := r.gauge.sum(r.apart); ok {
		w = append(w, Line(of, "width that counts", sum))
	}
	takes := []Expr{Num(s.brackets())}
	if s.Fit.Sign() != 0 {
		takes = append(takes, Num(s.Fit))
	}
	return append(w, Line(of, "rail to cut", Less(counts, takes...)))
}

// play tells, where all rails of a bay are cut to one length, how loose each is: in all, and at each end.
func (s *Site) play(rails []*railPiece) (f Findings) {
	if !s.SameLength {
		return f
	}
	loosest := rails[0]
	for _, r := range rails {
		if loosest.room.Sub(loosest.length).Less(r.room.Sub(r.length)) {
			loosest = r
		}
	}
	for _, r := range rails {
		p := r.room.Sub(r.length)
		f.Facts = append(f.Facts, Fact{Key: "play", Nums: []exact.Rat{
			exact.Int(r.gauge.bay), exact.Int(r.rail), p, p.Mul(exact.New(1, 2))}})
	}
	all := Less(Num(loosest.room), Num(loosest.length))
	f.Work = append(f.Work, Line(loosest.name(), "play", all),
		Line(loosest.name(), "play at each end", Quotient(Num(all.Value), Tally(2))))
	return f
}
