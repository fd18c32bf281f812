package solver

import "saywright/solver/exact"

// railPiece is one rail to cut: where it goes, what counts for it and what is cut.
type railPiece struct {
	gauge     *gauge
	rail      int
	low, high exact.Rat // its underside and top, above the floor at the left end post
	apart     apart
	room      exact.Rat // what counts, less a pair of brackets
	exact     exact.Rat // the room, less the fit
	length    exact.Rat // the same, rounded down to the tape, or the shortest of its bay
}

// Cuts returns the cut list: every rail, stiffener, added post and cap of the layout, and the extra pieces, each with the
// sum it comes from. Lengths are rounded down to the tape, never up. What was measured outranks what was planned.
func (s *Site) Cuts() Findings {
	var f Findings
	if s.up() != nil || s.along() != nil || len(s.Measured) > 0 {
		f = s.wallCuts()
	}
	for _, e := range s.Extra {
		if c, ok := s.extraCut(e); ok {
			f.Cuts = append(f.Cuts, c)
		}
	}
	if len(f.Cuts) == 0 && f.Ask == nil && len(f.Conflicts) == 0 {
		f.Ask = asking("layout first", Fact{Key: "missing", Names: []string{string(WallHeight), string(Span)}})
	}
	return f
}

func (s *Site) wallCuts() Findings {
	var f Findings
	all, q := s.gauges()
	if q == nil {
		q = s.doubts(all)
	}
	if q == nil {
		q = s.belowZero()
	}
	if q != nil {
		return Findings{Ask: q}
	}
	if missing := s.missing(all); len(missing) > 0 {
		f.Ask = asking("layout first", Fact{Key: "missing", Names: missing})
		return f
	}
	f.and(s.outranked(all))
	rails := s.railPieces(all)
	if c, bad := s.tooNarrow(rails); bad {
		f.Conflicts = append(f.Conflicts, c)
		return f
	}
	s.shareLengths(rails)
	f.and(s.railCuts(all, rails))
	f.and(s.stiffenerCuts(all))
	f.and(s.postCuts())
	f.and(s.capCuts(all))
	f.Facts = append(f.Facts, s.notCounted(Fit, exact.New(1, 8))...)
	return f
}

// belowZero asks for a figure that no part can have.
func (s *Site) belowZero() *Question {
	for _, f := range []struct {
		of Quantity
		is exact.Rat
	}{{BracketThickness, s.BracketThickness}, {Fit, s.Fit}, {Kerf, s.Kerf}, {Trim, s.Trim}} {
		if f.is.Sign() < 0 {
			return asking("bad figure", Fact{Key: "bad figure", Names: []string{s.Wall, string(f.of)}, Nums: []exact.Rat{f.is}}, "forget "+string(f.of))
		}
	}
	return nil
}

// missing names what must be known before any rail can be cut.
func (s *Site) missing(all []*gauge) (names []string) {
	if s.up() == nil {
		names = append(names, string(WallHeight))
	}
	if s.along() == nil && len(all) == 0 {
		names = append(names, string(Span))
	}
	for _, g := range all {
		if s.along() == nil && len(g.readings) == 0 {
			names = append(names, Name{Quantity: Measured, Bay: g.bay}.String())
		}
	}
	return names
}

// railPieces lists every rail that is still to be cut, bay by bay, bottom to top.
func (s *Site) railPieces(all []*gauge) (rails []*railPiece) {
	up := s.Layout.Up
	for _, g := range all {
		for i, top := range up.Tops {
			if s.isFixed(i + 1) {
				continue
			}
			r := &railPiece{gauge: g, rail: i + 1, low: top.Sub(up.RailFace), high: top}
			r.apart = g.between(r.low, r.high)
			r.room = r.apart.counts.Sub(s.brackets())
			r.exact = r.room.Sub(s.Fit)
			r.length = s.down(r.exact)
			rails = append(rails, r)
		}
	}
	return rails
}

// brackets is what a pair of brackets takes from a rail.
func (s *Site) brackets() exact.Rat { return exact.Int(2).Mul(s.BracketThickness) }

func (s *Site) isFixed(rail int) bool {
	for _, f := range s.Fixed {
		if f == rail {
			return true
		}
	}
	return false
}

// shareLengths cuts all rails of a bay to its shortest, where that was asked for.
func (s *Site) shareLengths(rails []*railPiece) {
	if !s.SameLength {
		return
	}
	shortest := map[int]exact.Rat{}
	for _, r := range rails {
		if least, ok := shortest[r.gauge.bay]; !ok || r.length.Less(least) {
			shortest[r.gauge.bay] = r.length
		}
	}
	for _, r := range rails {
		r.length = shortest[r.gauge.bay]
	}
}

// tooNarrow finds a rail for which its brackets and the fit leave nothing to cut.
func (s *Site) tooNarrow(rails []*railPiece) (Conflict, bool) {
	for _, r := range rails {
		if r.length.Sign() > 0 {
			continue
		}
		return s.noRoom(r), true
	}
	return Conflict{}, false
}

// noRoom is the sum that shows it: the bay less its brackets and the fit comes to less than a mark of the tape.
func (s *Site) noRoom(r *railPiece) Conflict {
	bay := Name{Quantity: Bay, Bay: r.gauge.bay}
	rules := []Rule{
		{Rule: bay.String(), Kind: Geometry, Says: Statement{Name: bay, Op: Eq, Value: Inches(r.apart.counts)}.String()},
		{Rule: string(BracketThickness), Kind: Part, Says: Of(BracketThickness, Eq, Inches(s.BracketThickness)).String()},
	}
	takes := []Expr{Product(Tally(2), Num(s.BracketThickness))}
	if s.Fit.Sign() != 0 {
		takes = append(takes, Num(s.Fit))
		rules = append(rules, Rule{Rule: string(Fit), Kind: Yours, Says: Of(Fit, Eq, Inches(s.Fit)).String()})
	}
	if len(r.gauge.readings) > 0 {
		rules[0].Kind = Yours
	}
	left := Compare(Less(Num(r.apart.counts), takes...), ">=", Num(s.mark()))
	return Conflict{About: "along", Rules: rules, Work: []Work{Line(r.name(), "no room for a rail", left)}}
}

// name is the normal form of the rail's piece.
func (r *railPiece) name() string {
	return Name{Quantity: CutOf, Bay: r.gauge.bay, Rail: r.rail}.String()
}

// alreadyUp names the rails that need no piece because they are up.
func (s *Site) alreadyUp() (facts []Fact) {
	for _, rail := range s.Fixed {
		facts = append(facts, Fact{Key: "rail is up", Nums: []exact.Rat{exact.Int(rail)}})
	}
	return facts
}

// notCounted tells what a cut or a list leaves out because nobody said it, and what is common.
func (s *Site) notCounted(q Quantity, common exact.Rat) []Fact {
	zero := map[Quantity]bool{Fit: s.Fit.Sign() == 0, Trim: s.Trim.Sign() == 0, Spare: s.Spare == nil}
	if !zero[q] {
		return nil
	}
	return []Fact{{Key: "not counted", Names: []string{string(q)}, Nums: []exact.Rat{common}}}
}
