package solver

import (
	"sort"

	"saywright/solver/exact"
)

// reading is one measured width of a bay, at a height above the floor at the left end post.
type reading struct {
	height, width exact.Rat
	said          Statement
}

// gauge tells how wide one bay is at every height, and where its two post faces stand there.
// Slopes are inches to the right per inch upward.
type gauge struct {
	bay      int
	planned  exact.Rat // the layout's width; what counts where nothing was measured
	readings []reading // ascending by height, one for each height
	left     *tilt     // what was told of its left post, nil: nothing
	right    *tilt
}

// faces are the places of a bay's two post faces, as functions of the height.
type faces struct {
	left, right func(h exact.Rat) exact.Rat
	held        string // which face was told to lean and so holds: "left", "right", or "" for a lean shared by both
}

// apart is what counts for a square-ended rail between two heights.
type apart struct {
	counts  exact.Rat // nearest point of the right face less the farthest of the left one
	near    exact.Rat // height at which the right face is nearest
	far     exact.Rat // height at which the left face is farthest
	guessed bool      // its middle lies beyond what was measured
	faces   faces
}

// width returns the clear width at a height: on a straight line between two readings, on the same line beyond them.
func (g *gauge) width(h exact.Rat) exact.Rat {
	n := len(g.readings)
	if n < 2 {
		at, w := exact.Int(0), g.planned
		if n == 1 {
			at, w = g.readings[0].height, g.readings[0].width
		}
		return w.Add(g.right.slope().Sub(g.left.slope()).Mul(h.Sub(at)))
	}
	a, b := g.around(h)
	run := b.height.Sub(a.height)
	return a.width.Add(b.width.Sub(a.width).Mul(h.Sub(a.height)).Div(run))
}

// around returns the two readings whose line holds at a height: those above and below it, or the outermost two.
func (g *gauge) around(h exact.Rat) (a, b reading) {
	i := sort.Search(len(g.readings), func(i int) bool { return h.Less(g.readings[i].height) })
	i = min(max(i, 1), len(g.readings)-1)
	return g.readings[i-1], g.readings[i]
}

// hypotheses are the ways in which the faces can stand, given what was told. Widths alone share the lean between both
// posts in opposite directions; a lean that was told places that face, and the widths then place the other. With both
// leans and two widths told there are two ways, and the narrower counts.
func (g *gauge) hypotheses() []faces {
	half := exact.New(1, 2)
	shared := faces{
		left:  func(h exact.Rat) exact.Rat { return g.width(h).Mul(half).Neg() },
		right: func(h exact.Rat) exact.Rat { return g.width(h).Mul(half) },
	}
	byLeft := faces{
		held:  "left",
		left:  func(h exact.Rat) exact.Rat { return g.left.slope().Mul(h) },
		right: func(h exact.Rat) exact.Rat { return g.width(h).Add(g.left.slope().Mul(h)) },
	}
	byRight := faces{
		held:  "right",
		left:  func(h exact.Rat) exact.Rat { return g.right.slope().Mul(h).Sub(g.width(h)) },
		right: func(h exact.Rat) exact.Rat { return g.right.slope().Mul(h) },
	}
	switch {
	case g.left == nil && g.right == nil:
		return []faces{shared}
	case g.right == nil:
		return []faces{byLeft}
	case g.left == nil && len(g.readings) < 2:
		return []faces{byLeft} // the unspoken left post is taken as plumb, and width already knows the right one's lean
	case g.left == nil:
		return []faces{byRight}
	}
	return []faces{byLeft, byRight}
}

// between returns what counts for a square-ended rail from height low up to height high. A straight face between two
// readings has its extremes at an end, so only the ends and the readings in between are looked at.
func (g *gauge) between(low, high exact.Rat) apart {
	at := []exact.Rat{low, high}
	for _, r := range g.readings {
		if low.Less(r.height) && r.height.Less(high) {
			at = append(at, r.height)
		}
	}
	var best apart
	for i, f := range g.hypotheses() {
		a := tightest(f, at)
		if i == 0 || a.counts.Less(best.counts) {
			best = a
		}
	}
	best.guessed = g.guessed(low, high)
	return best
}

// tightest finds where, among some heights, the right face is nearest and the left one farthest; at one height where one
// does for both.
func tightest(f faces, heights []exact.Rat) apart {
	a := apart{near: heights[0], far: heights[0], faces: f}
	for _, h := range heights[1:] {
		if f.right(h).Less(f.right(a.near)) {
			a.near = h
		}
		if f.left(a.far).Less(f.left(h)) {
			a.far = h
		}
	}
	for _, h := range heights {
		if f.right(h).Eq(f.right(a.near)) && f.left(h).Eq(f.left(a.far)) {
			a.near, a.far = h, h
			break
		}
	}
	a.counts = f.right(a.near).Sub(f.left(a.far))
	return a
}

// guessed reports whether a rail's middle lies beyond what was measured. Plans are no guess, and neither is a single
// reading where both leans were told.
func (g *gauge) guessed(low, high exact.Rat) bool {
	n := len(g.readings)
	if n == 0 || g.left != nil && g.right != nil {
		return false
	}
	middle := low.Add(high).Mul(exact.New(1, 2))
	return middle.Less(g.readings[0].height) || g.readings[n-1].height.Less(middle)
}

// gauges returns one gauge for each bay, left to right, with its measurements in place. A measurement that cannot be
// placed, or that cannot be meant, is asked back instead.
func (s *Site) gauges() ([]*gauge, *Question) {
	all := s.emptyGauges()
	for _, m := range s.Measured {
		if a := s.along(); a != nil && openingOf(m) > len(a.Openings) {
			return nil, asking("no such opening", Fact{Key: "openings",
				Nums: []exact.Rat{exact.Int(openingOf(m)), exact.Int(len(a.Openings))}}, forget(m))
		}
		bay := m.Name.Bay
		if bay == 0 && openingOf(m) == 0 && len(all) == 1 {
			bay = 1 // a lone bay needs no number
		}
		if bay == 0 {
			continue
		}
		if q := s.place(all, bay, m); q != nil {
			return nil, q
		}
	}
	return all, nil
}

// emptyGauges is a gauge for each bay of the layout; without a layout along the wall, for each bay that was measured.
func (s *Site) emptyGauges() (all []*gauge) {
	if s.along() != nil {
		for i, b := range s.Layout.Along.Bays {
			g := &gauge{bay: i + 1, planned: b.Width}
			g.left, g.right = s.leansBeside(b)
			all = append(all, g)
		}
		return all
	}
	for _, m := range s.Measured {
		for m.Name.Bay > len(all) && len(all) < mostBays {
			all = append(all, &gauge{bay: len(all) + 1})
		}
	}
	return all
}

// mostBays bounds the bays that measurements alone can bring: more than any layout has.
const mostBays = 64

// place puts one measurement into its bay's gauge, in order of height. Of two at one height the narrower counts.
func (s *Site) place(all []*gauge, bay int, m Statement) *Question {
	if bay < 1 || bay > len(all) {
		return asking("no such bay", Fact{Key: "bays", Nums: []exact.Rat{exact.Int(bay), exact.Int(len(all))}}, forget(m))
	}
	if m.Value.Num.Sign() <= 0 {
		return asking("width not positive", Fact{Key: "measured", Names: []string{m.String()}, Nums: []exact.Rat{m.Value.Num}}, forget(m))
	}
	h, q := s.heightOf(m, bay)
	if q != nil {
		return q
	}
	g := all[bay-1]
	i := sort.Search(len(g.readings), func(i int) bool { return !g.readings[i].height.Less(h) })
	if i < len(g.readings) && g.readings[i].height.Eq(h) {
		if m.Value.Num.Less(g.readings[i].width) {
			g.readings[i] = reading{h, m.Value.Num, m}
		}
		return nil
	}
	g.readings = append(g.readings, reading{})
	copy(g.readings[i+1:], g.readings[i:])
	g.readings[i] = reading{h, m.Value.Num, m}
	return nil
}

// openingOf is the number of the opening that a measurement is of, 0 when it is of a bay. A lone opening needs no number.
func openingOf(m Statement) int {
	if m.Name.At == "opening" {
		return max(m.Name.Opening, 1)
	}
	return m.Name.Opening
}

// heightOf returns where a measurement was taken, above the floor at the left end post. "bottom" is at the floor (where
// it falls, at the higher end of the bay), "top" at the wall's height; a rail's own is at its middle unless told.
func (s *Site) heightOf(m Statement, bay int) (exact.Rat, *Question) {
	if m.Name.Rail == 0 && m.Name.At != "top" {
		return s.higherFloor(bay), nil
	}
	up := s.up()
	if up == nil {
		return exact.Rat{}, asking("height first", Fact{Key: "measured", Names: []string{m.String()}})
	}
	if m.Name.Rail == 0 {
		return up.WallHeight, nil
	}
	if m.Name.Rail < 1 || m.Name.Rail > len(up.Tops) {
		return exact.Rat{}, asking("no such rail", Fact{Key: "rails", Nums: []exact.Rat{exact.Int(m.Name.Rail), exact.Int(len(up.Tops))}}, forget(m))
	}
	top := up.Tops[m.Name.Rail-1]
	switch m.Name.At {
	case "top":
		return top, nil
	case "bottom":
		return top.Sub(up.RailFace), nil
	}
	return top.Sub(up.RailFace.Mul(exact.New(1, 2))), nil
}

func (s *Site) up() *Up {
	if s.Layout == nil {
		return nil
	}
	return s.Layout.Up
}

func (s *Site) along() *Along {
	if s.Layout == nil {
		return nil
	}
	return s.Layout.Along
}

// floorAt is the floor's height at a place along the wall, against the floor at the left end post.
func (s *Site) floorAt(fromLeft exact.Rat) exact.Rat {
	up, along := s.up(), s.along()
	if up == nil || along == nil || up.Fall.Sign() == 0 || along.Span.Sign() <= 0 {
		return exact.Rat{}
	}
	return up.Fall.Mul(fromLeft).Div(along.Span).Neg()
}

func (s *Site) higherFloor(bay int) exact.Rat {
	along := s.along()
	if along == nil || bay > len(along.Bays) {
		return exact.Rat{}
	}
	b := along.Bays[bay-1]
	return exact.Max(s.floorAt(b.FromLeft), s.floorAt(b.FromLeft.Add(b.Width)))
}

// forget is the normal form that takes a statement back.
func forget(st Statement) string { return "forget " + st.Name.String() }

func asking(key string, f Fact, choices ...string) *Question {
	return &Question{Key: key, Facts: []Fact{f}, Choices: choices}
}
