package solver

import "saywright/solver/exact"

// Steps returns the order of work for this very wall: a key for each step with its figures, and the key of its caution.
// Steps that the wall does not need (no added post: no base) are left out.
func (s *Site) Steps() (f Findings) {
	cuts := s.Cuts()
	if cuts.Ask != nil || len(cuts.Conflicts) > 0 || s.Layout == nil {
		f.Ask, f.Conflicts = cuts.Ask, cuts.Conflicts
		if f.Ask == nil && len(f.Conflicts) == 0 {
			f.Ask = asking("layout first", Fact{Key: "missing", Names: []string{string(WallHeight), string(Span)}})
		}
		return f
	}
	posts := countOf(cuts.Cuts, "post")
	f.Steps = append(f.Steps, s.groundSteps(posts)...)
	f.Steps = append(f.Steps, s.cuttingSteps(cuts)...)
	f.Steps = append(f.Steps, s.risingSteps(cuts, posts)...)
	return f
}

func step(key, warn string, facts ...Fact) StepOf { return StepOf{Key: key, Warn: warn, Facts: facts} }

func figures(key string, nums ...exact.Rat) Fact { return Fact{Key: key, Nums: nums} }

// groundSteps goes from the bare floor to posts that stand and are marked.
func (s *Site) groundSteps(posts int) (steps []StepOf) {
	if posts == 0 {
		return []StepOf{step("site", ""), s.marking()}
	}
	along := s.Layout.Along
	bases := s.baseMarks()
	line := step("center line", "", append([]Fact{figures("span", along.Span)}, bases.Facts...)...)
	line.Work = bases.Work
	base := step("base", "drilling", figures("hole start", exact.New(1, 4)))
	if s.Slab == nil || s.Edge == nil {
		base.Facts = append(base.Facts, Fact{Key: "slab not known", Names: []string{string(SlabThickness), string(EdgeDistance)}})
	} else {
		held := s.depthHeld()
		base.Facts, base.Work = append(base.Facts, held.Facts...), held.Work
	}
	turns := figures("turns past snug", exact.Int(3), exact.Int(5))
	up := step("post up", "free post", figures("post height", *along.PostHeight), figures("base height", along.BaseHeight))
	for _, c := range s.postCuts().Cuts {
		up.Facts = append(up.Facts, figures("post piece", exact.Int(c.Post), c.Length, exact.Int(c.Count)))
	}
	return []StepOf{step("site", "utilities"), line, base, step("anchors", "anchor instructions", turns, figures("thread left", threadLeft)), up, s.marking()}
}

// marking puts every post's bracket holes on the post, each from its own floor.
func (s *Site) marking() StepOf {
	m := s.Marks()
	st := step("marks", "", figures("board face", s.Layout.RailFace))
	for _, p := range m.Marks {
		hole := Fact{Key: "holes", Names: []string{p.Post}}
		for _, r := range p.Rows {
			hole.Nums = append(hole.Nums, s.nearest(r.Hole))
		}
		st.Facts = append(st.Facts, hole)
	}
	return st
}

// cuttingSteps goes from the tape held in each bay to boards that are cut, sealed and stained.
func (s *Site) cuttingSteps(cuts Findings) []StepOf {
	rails := exact.Int(countOf(cuts.Cuts, "rail"))
	measure := step("measure", "", figures("rails", rails))
	if len(s.Measured) > 0 {
		measure.Key = "measured"
	}
	cut := step("cut", "tools")
	for _, c := range cuts.Cuts {
		cut.Facts = append(cut.Facts, Fact{Key: "piece", Names: []string{pieceName(c), c.Size, c.Ends}, Nums: []exact.Rat{c.Length, exact.Int(c.Count)}})
	}
	first := step("first cut", "")
	for _, c := range cuts.Cuts {
		if c.Piece == "rail" {
			first.Facts = []Fact{{Key: "piece", Names: []string{pieceName(c), c.Size, c.Ends}, Nums: []exact.Rat{c.Length, exact.Int(1)}}}
			break
		}
	}
	return []StepOf{measure, first, cut, step("seal", "lumber")}
}

// risingSteps goes from the first bracket to a wall that is done.
func (s *Site) risingSteps(cuts Findings, posts int) (steps []StepOf) {
	up := s.Layout.Up
	rails := countOf(cuts.Cuts, "rail")
	if rails > 0 {
		steps = append(steps, step("brackets", "lumber", figures("brackets", exact.Int(bracketsPerRail*rails),
			exact.Int(screwsInEnd), exact.Int(screwsInPost), defaultScrew)),
			step("bottom rail", "tools", figures("spacer", up.BottomGap, s.nearest(up.BottomGap)), figures("hole", s.nearest(up.Tops[0].Add(s.reach(0))))))
	}
	if rails > 0 && up.Rails > 1 {
		steps = append(steps, step("rail by rail", "tools", figures("spacer", up.Gap, s.nearest(up.Gap)), figures("rails", exact.Int(up.Rails-1))))
	}
	if n := countOf(cuts.Cuts, "stiffener"); n > 0 {
		st := step("stiffeners", "", figures("stiffeners", exact.Int(n), s.screw(), exact.Int(screwsAtCross)))
		for _, fact := range cuts.Facts {
			if fact.Key == "stiffener marks" {
				st.Facts = append(st.Facts, fact)
			}
		}
		steps = append(steps, st)
	}
	if n := countOf(cuts.Cuts, "cap"); n > 0 {
		steps = append(steps, step("cap board", "", figures("caps", exact.Int(n))))
	}
	if posts > 0 {
		steps = append(steps, step("post caps", "", figures("caps", exact.Int(posts))))
	}
	return append(steps, step("touch up", ""), step("clean up", ""))
}
