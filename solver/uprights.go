package solver

import "saywright/solver/exact"

// stiffenerCuts lists the stiffeners, from the underside of the bottom rail to the top of the top rail, and where their
// center lines come along the rails of each bay.
func (s *Site) stiffenerCuts(all []*gauge) (f Findings) {
	up := s.Layout.Up
	if s.along() == nil || len(up.Tops) == 0 {
		return f
	}
	top := up.Tops[len(up.Tops)-1]
	length := Less(Num(top), Num(up.BottomGap))
	if s.stiffenersPlanned() && length.Value.Less(s.mark()) {
		f.Conflicts = []Conflict{{About: "up", Rules: []Rule{
			{Rule: string(WallHeight), Kind: Geometry, Says: Of(WallHeight, Eq, Inches(top)).String()},
			{Rule: string(BottomGap), Kind: Geometry, Says: Of(BottomGap, Eq, Inches(up.BottomGap)).String()},
			{Rule: string(Tape), Kind: Practice, Says: Of(Tape, Eq, Inches(s.mark())).String()},
		}, Work: []Work{Line("cut stiffener", "no stiffener left", Compare(length, ">=", Num(s.mark())))}}}
		return f
	}
	for i, b := range s.Layout.Along.Bays {
		if len(b.Stiffeners) == 0 {
			continue
		}
		if len(f.Cuts) == 0 {
			f.Work = append(f.Work, Line("cut stiffener", "stiffener to cut", length))
			f.Assumed = s.leaned(StiffenerSize, StiffenerSpacing)
		}
		f.Cuts = append(f.Cuts, Cut{Piece: "stiffener", Wall: s.Wall, Bay: i + 1, Size: s.StiffenerSize,
			Length: s.down(length.Value), Exact: length.Value, Count: len(b.Stiffeners), Ends: "square"})
		f.and(s.stiffenerMarks(all[i], b))
	}
	return f
}

func (s *Site) stiffenersPlanned() bool {
	for _, b := range s.Layout.Along.Bays {
		if len(b.Stiffeners) > 0 {
			return true
		}
	}
	return false
}

// stiffenerMarks spaces the stiffeners evenly over the bay as it was measured nearest the floor, else as it was planned.
func (s *Site) stiffenerMarks(g *gauge, b Stretch) (f Findings) {
	width, m := b.Width, len(b.Stiffeners)
	if len(g.readings) > 0 {
		width = g.readings[0].width
	}
	spacing := Quotient(Num(width), Tally(m+1))
	marks := Fact{Key: "stiffener marks", Nums: []exact.Rat{exact.Int(g.bay)}}
	for k := 1; k <= m; k++ {
		at := b.Stiffeners[k-1]
		if len(g.readings) > 0 {
			at = spacing.Value.Mul(exact.Int(k))
		}
		marks.Nums = append(marks.Nums, at)
	}
	f.Facts = append(f.Facts, marks)
	f.Work = append(f.Work, Line("stiffeners bay", "stiffener spacing", spacing))
	if lim := s.StiffenerLimit; lim != nil && lim.Less(spacing.Value) {
		f.Cautions = append(f.Cautions, Caution{Key: "stiffeners apart", Source: "as measured",
			Facts: []Fact{{Key: "stiffeners apart", Nums: []exact.Rat{exact.Int(g.bay), spacing.Value, *lim}}}})
	}
	return f
}

// postCuts lists the added posts, each shorter than it stands by its base, and longer by what its floor lies lower.
func (s *Site) postCuts() (f Findings) {
	along := s.along()
	if along == nil || len(along.Posts) == 0 || along.PostHeight == nil {
		return f
	}
	for i := range along.Posts {
		stands := Num(*along.PostHeight)
		if floor := s.floorAt(s.postCenter(i)); floor.Sign() > 0 {
			stands = Less(stands, Num(floor))
		} else if floor.Sign() < 0 {
			stands = Sum(stands, Num(floor.Neg()))
		}
		piece := stands
		if along.BaseHeight.Sign() > 0 {
			piece = Less(stands, Num(along.BaseHeight))
		}
		of := Name{Quantity: CutOf, Item: "post"}.String()
		if piece.Value.Less(s.mark()) {
			f.Conflicts = append(f.Conflicts, Conflict{About: "along", Rules: []Rule{
				{Rule: string(PostHeight), Kind: Geometry, Says: Of(PostHeight, Eq, Inches(stands.Value)).String()},
				{Rule: string(BaseHeight), Kind: Yours, Says: Of(BaseHeight, Eq, Inches(along.BaseHeight)).String()},
			}, Work: []Work{Line(of, "no post left", Compare(piece, ">=", Num(s.mark())))}})
			return f
		}
		f.postCut(s, i+1, of, piece)
	}
	f.Assumed = s.leaned(AddedPostSize, PostSize, PostHeight)
	return f
}

// postCut adds a post to the list, to the line of the one before where both are alike.
func (f *Findings) postCut(s *Site, post int, of string, piece Expr) {
	if n := len(f.Cuts); n > 0 && f.Cuts[n-1].Exact.Eq(piece.Value) {
		f.Cuts[n-1].Count++
		f.Cuts[n-1].Post = 0
		return
	}
	f.Cuts = append(f.Cuts, Cut{Piece: "post", Wall: s.Wall, Post: post, Size: s.AddedPostSize,
		Length: s.down(piece.Value), Exact: piece.Value, Count: 1, Ends: "square"})
	f.Work = append(f.Work, Line(of, "post to cut", piece))
}

// postCenter is where an added post's center line is, from the left end post's inner face.
func (s *Site) postCenter(i int) exact.Rat {
	along := s.Layout.Along
	return along.Posts[i].FromLeft.Add(along.PostFace.Mul(exact.New(1, 2)))
}

// capCuts lists the boards laid flat on top, one for each bay, between its posts.
func (s *Site) capCuts(all []*gauge) (f Findings) {
	if s.CapSize == "" || len(s.Layout.Up.Tops) == 0 {
		return f
	}
	low := s.Layout.Up.Tops[len(s.Layout.Up.Tops)-1]
	high := low
	if thick, _, ok := s.dressed(s.CapSize); ok {
		high = low.Add(thick)
	}
	for _, g := range all {
		counts := g.between(low, high).counts
		piece := Num(counts)
		if s.Fit.Sign() != 0 {
			piece = Less(piece, Num(s.Fit))
		}
		if s.down(piece.Value).Sign() <= 0 {
			continue
		}
		f.Cuts = append(f.Cuts, Cut{Piece: "cap", Wall: s.Wall, Bay: g.bay, Size: s.CapSize,
			Length: s.down(piece.Value), Exact: piece.Value, Count: 1, Ends: "square"})
		f.Work = append(f.Work, Line(Name{Quantity: CutOf, Bay: g.bay, Item: "cap"}.String(), "cap to cut", piece))
	}
	return f
}
