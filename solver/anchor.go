package solver

import "saywright/solver/exact"

// The post base on concrete: common practice, no source. Lengths in inches.
var (
	anchorSize   = exact.New(1, 2)
	anchorLength = exact.New(15, 4)
	threadLeft   = exact.New(1, 2)  // at least so much stays above the base
	holeDepth    = exact.New(13, 4) // down from the top of the base
)

// Sources of the limits of an anchor drilled into concrete. What is known from memory only says so.
const (
	depthSource   = "ACI 318-19 17.9.4, as quoted in an anchor design guide"
	breakSource   = "ACI 318-19 17.6.2, as quoted in an anchor design guide"
	edgeSource    = "ACI 318-19 table 17.9.2(b), from memory"
	spacingSource = "ACI 318-19 table 17.9.2(a), from memory"
)

// Anchors returns where the base of each added post goes, and holds its anchors against the slab: first it asks for the
// slab's thickness and the distance to its edge. It names no depth without them, and the anchor's own instructions decide.
func (s *Site) Anchors() (f Findings) {
	along := s.along()
	if along == nil {
		f.Ask = asking("layout first", Fact{Key: "missing", Names: []string{string(Span)}})
		return f
	}
	if len(along.Posts) == 0 {
		f.Facts = []Fact{{Key: "no added post"}}
		return f
	}
	f.and(s.baseMarks())
	f.Cautions = append(f.Cautions, Caution{Key: "utilities", Source: callCaution}, Caution{Key: "drilling", Source: safetySource},
		Caution{Key: "anchor instructions", Source: NoSource}, Caution{Key: "base plates", Source: NoSource})
	var missing []string
	if s.Slab == nil {
		missing = append(missing, string(SlabThickness))
	}
	if s.Edge == nil {
		missing = append(missing, string(EdgeDistance))
	}
	if len(missing) > 0 {
		f.Ask = asking("slab first", Fact{Key: "missing", Names: missing})
		f.Ask.Example = "slab thickness = 4 in; edge distance = 12 in"
		return f
	}
	f.and(s.depthHeld())
	f.and(s.edgeHeld())
	return f
}

// baseMarks is the center of each added post's base, from both end posts' faces, on the line between their centers.
func (s *Site) baseMarks() (f Findings) {
	along := s.Layout.Along
	for i, p := range along.Posts {
		center := Sum(Num(p.FromLeft), Quotient(Num(along.PostFace), Tally(2)))
		f.Work = append(f.Work, Line(Name{Quantity: "post", Post: i + 1}.String(), "base center", center))
		f.Facts = append(f.Facts, Fact{Key: "base center", Nums: []exact.Rat{exact.Int(i + 1), center.Value,
			along.Span.Sub(center.Value), along.PostFace.Mul(exact.New(1, 2))}})
	}
	return f
}

func (s *Site) anchor() exact.Rat {
	if s.AnchorSize == nil {
		return anchorSize
	}
	return *s.AnchorSize
}

// depthHeld holds the hole against the slab. Without product tests an anchor may reach down the greater of two thirds
// of the slab and the slab less 4 in. The hole's depth is taken for the anchor's: it counts the base's own thickness
// too, and so errs on the safe side.
func (s *Site) depthHeld() (f Findings) {
	if !s.anchor().Eq(anchorSize) {
		f.Facts = []Fact{{Key: "anchor of another size", Nums: []exact.Rat{s.anchor(), anchorSize}}}
		return f
	}
	of := "anchor"
	reach := Line(of, "anchor reaches", Less(Num(anchorLength), Num(threadLeft)))
	inside, stays := either(of, "hole stays in the slab", "hole comes out below", Num(holeDepth), "<", Num(*s.Slab))
	thirds, less := Product(Scalar(exact.New(2, 3)), Num(*s.Slab)), Less(Num(*s.Slab), Num(exact.Int(4)))
	f.Work = []Work{reach, inside, sourced(Line(of, "two thirds of the slab", thirds), depthSource),
		sourced(Line(of, "slab less 4", less), depthSource)}
	most := exact.Max(thirds.Value, less.Value)
	held, deep := either(of, "deep enough a slab", "slab too thin", Num(holeDepth), "<=", Num(most))
	f.Work = append(f.Work, sourced(held, depthSource))
	if deep && stays {
		f.Facts = []Fact{{Key: "hole", Nums: []exact.Rat{s.anchor(), anchorLength, threadLeft, holeDepth}}}
		return f
	}
	needs := Product(Num(holeDepth), Scalar(exact.New(3, 2)))
	f.Work = append(f.Work, sourced(Line(of, "slab that would do", needs), depthSource))
	f.Cautions = []Caution{{Key: "slab too thin", Source: depthSource, Facts: []Fact{{Key: "slab too thin",
		Nums: []exact.Rat{*s.Slab, holeDepth, most, needs.Value}}}}}
	return f
}

// either states a comparison, or, where it does not hold, its opposite: the line is true as it stands.
func either(of, note, otherwise string, a Expr, op string, b Expr) (Work, bool) {
	if c := Compare(a, op, b); c.Holds() {
		return Line(of, note, c), true
	}
	opposite := map[string]string{"<": ">=", "<=": ">", ">": "<=", ">=": "<"}[op]
	return Line(of, otherwise, Compare(a, opposite, b)), false
}

// edgeHeld holds the anchor's place against the slab's edge: near it the concrete that holds the anchor is cut short.
func (s *Site) edgeHeld() (f Findings) {
	of, d := "anchor", Num(s.anchor())
	least := Product(Tally(8), d)
	f.Work = []Work{sourced(Line(of, "least edge", least), edgeSource),
		sourced(Line(of, "least spacing", Product(Tally(6), d)), spacingSource)}
	held, far := either(of, "far enough from the edge", "edge too near", Num(*s.Edge), ">=", Num(least.Value))
	f.Work = append(f.Work, sourced(held, edgeSource))
	if !far {
		f.Cautions = []Caution{{Key: "edge too near", Source: edgeSource, Facts: []Fact{{Key: "edge too near",
			Nums: []exact.Rat{*s.Edge, least.Value}}}}}
	}
	if !s.anchor().Eq(anchorSize) {
		return f
	}
	full := Product(Scalar(exact.New(3, 2)), Num(holeDepth))
	f.Work = append(f.Work, sourced(Line(of, "edge for full hold", full), breakSource))
	if s.Edge.Less(full.Value) {
		factor := Sum(Scalar(exact.New(7, 10)), Quotient(Product(Scalar(exact.New(3, 10)), Num(*s.Edge)), Num(full.Value)))
		f.Work = append(f.Work, sourced(Line(of, "hold near the edge", factor), breakSource))
		f.Facts = []Fact{{Key: "hold near the edge", Names: []string{breakSource}, Nums: []exact.Rat{*s.Edge, full.Value, factor.Value}}}
	}
	return f
}
