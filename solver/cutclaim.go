package solver

import (
	"strings"

	"saywright/solver/exact"
)

// holdCut judges the length that pieces are claimed to be cut to. Where the rails of a bay differ, the shortest goes in
// everywhere, and that is what the claim is held against.
func (s *Site) holdCut(c Statement) Claim {
	cuts := s.Cuts()
	claim := Claim{Claim: c.String()}
	var least *Cut
	for i, p := range cuts.Cuts {
		if claimed(c.Name, p) && (least == nil || p.Length.Less(least.Length)) {
			least = &cuts.Cuts[i]
		}
	}
	if least == nil {
		return claim
	}
	claim = judged(c, least.Length)
	if !*claim.Holds && c.Op == Eq && c.Value.Num.Eq(least.Exact) {
		claim.ShouldBe, claim.By, *claim.Holds = "", "", true
	}
	prefix := Name{Quantity: CutOf, Bay: c.Name.Bay, Rail: c.Name.Rail, Item: c.Name.Item}.String()
	for _, w := range cuts.Work {
		if w.Note == "pair of brackets" && least.Piece == "rail" || strings.HasPrefix(w.Of, prefix) {
			claim.Work = append(claim.Work, w)
		}
	}
	if !*claim.Holds {
		claim.Slip = s.cutSlip(*least, c.Value.Num)
	}
	return claim
}

// claimed reports whether a piece is among those that a claim speaks of.
func claimed(n Name, p Cut) bool {
	piece := n.Item
	if piece == "" || piece == "rails" {
		piece = "rail"
	}
	if p.Piece != strings.TrimSuffix(piece, "s") {
		return false
	}
	return (n.Bay == 0 || p.Bay == n.Bay || p.Bay == 0) && (n.Rail == 0 || p.Rail == n.Rail || p.Rail == 0)
}

// cutSlip names the common slip that gives exactly the wrong length, "" where none does.
func (s *Site) cutSlip(c Cut, said exact.Rat) string {
	is := func(right exact.Rat) bool { return said.Eq(right) || said.Eq(s.down(right)) }
	switch c.Piece {
	case "rail":
		space := c.Exact.Add(s.Fit).Add(s.brackets())
		switch {
		case is(space), is(space.Sub(s.Fit)):
			return "brackets not deducted"
		case is(space.Sub(s.BracketThickness)), is(space.Sub(s.BracketThickness).Sub(s.Fit)):
			return "one bracket deducted"
		case s.Fit.Sign() != 0 && is(space.Sub(s.brackets())):
			return "fit forgotten"
		}
		if a := s.along(); a != nil && is(c.Exact.Add(a.PostFace)) {
			return "post face forgotten"
		}
	case "stiffener":
		if s.up() != nil && is(s.Layout.WallHeight) {
			return "bottom gap forgotten"
		}
	case "post":
		a := s.along()
		switch {
		case a != nil && a.PostHeight != nil && is(*a.PostHeight):
			return "base height forgotten"
		case s.up() != nil && is(s.Layout.WallHeight):
			return "as high as the wall"
		}
	}
	return ""
}
