package draw

import (
	"fmt"
	"sort"

	"saywright/solver"
	"saywright/solver/exact"
)

// run is a stretch of a line, from lo to hi, in inches: x from the left end post's inner face, y from the floor there.
type run struct{ lo, hi float64 }

func (r run) mid() float64  { return (r.lo + r.hi) / 2 }
func (r run) size() float64 { return r.hi - r.lo }

// part is one thing in the chain along the wall, or in the stack up it.
type part struct {
	run
	kind string    // "bay", "opening", "post"; "gap", "bottom gap", "rail"
	n    int       // from 1, left to right or bottom to top
	says exact.Rat // its size as the answer has it
	at   exact.Rat // where it begins, from the left end post's inner face
}

// wall is a layout laid out for drawing: the places that an answer states, as floats.
type wall struct {
	up    *solver.Up
	along *solver.Along

	height, postTop float64 // of the wall; of the added posts, 0 without any
	stack           []part  // bottom gap, rail, gap, rail, … up to the top rail
	chain           []part  // bays, posts and openings, left to right
	stiffeners      [][]float64
	span, endFace   float64
	fall            float64 // how much lower the floor lies at the right
}

// mostParts bounds what one picture is asked to hold: the solver's lists stop far below it.
const mostParts = 2000

// layOut reads the layout of an answer. What is not known of a wall leaves its half empty.
func layOut(a *solver.Answer) (*wall, error) {
	if a == nil || a.Layout == nil || a.Layout.Up == nil && a.Layout.Along == nil {
		return nil, ErrNothing
	}
	w := &wall{up: a.Layout.Up, along: a.Layout.Along}
	if err := w.goUp(); err != nil {
		return nil, err
	}
	if err := w.goAlong(); err != nil {
		return nil, err
	}
	return w, nil
}

func (w *wall) goUp() error {
	up := w.up
	if up == nil {
		return nil
	}
	switch {
	case up.Rails < 1 || up.Rails > mostParts:
		return fmt.Errorf("draw: got %d rails, want 1 to %d", up.Rails, mostParts)
	case len(up.Tops) != up.Rails:
		return fmt.Errorf("draw: got %d rail tops, want one for each of %d rails", len(up.Tops), up.Rails)
	case up.RailFace.Sign() <= 0:
		return fmt.Errorf("draw: got a rail face of %s in, want more than 0", up.RailFace)
	case len(up.Gaps) > 0 && len(up.Gaps) != up.Rails-1:
		return fmt.Errorf("draw: got %d gaps, want one between each two of %d rails", len(up.Gaps), up.Rails)
	}
	w.height, w.fall = up.WallHeight.Float(), up.Fall.Float()
	below := exact.Rat{}
	for i, top := range up.Tops {
		under := top.Sub(up.RailFace)
		gap := part{kind: "gap", n: i, says: w.gap(i), run: run{below.Float(), under.Float()}}
		if i == 0 {
			gap.kind = "bottom gap"
		}
		rail := part{kind: "rail", n: i + 1, says: up.RailFace, run: run{under.Float(), top.Float()}}
		w.stack = append(w.stack, gap, rail)
		below = top
	}
	return nil
}

// gap is the answer's own figure for the gap above rail i; 0 is the one above the floor.
func (w *wall) gap(i int) exact.Rat {
	switch {
	case i == 0:
		return w.up.BottomGap
	case len(w.up.Gaps) > 0:
		return w.up.Gaps[i-1]
	}
	return w.up.Gap
}

func (w *wall) goAlong() error {
	al := w.along
	if al == nil {
		return nil
	}
	switch {
	case al.Span.Sign() <= 0:
		return fmt.Errorf("draw: got a span of %s in, want more than 0", al.Span)
	case len(al.Bays)+len(al.Posts)+len(al.Openings) > mostParts:
		return fmt.Errorf("draw: got more than %d bays, posts and openings", mostParts)
	}
	w.span, w.endFace = al.Span.Float(), al.EndPostFace.Float()
	if al.PostHeight != nil && len(al.Posts) > 0 {
		w.postTop = al.PostHeight.Float()
	}
	for i, b := range al.Bays {
		w.chain = append(w.chain, stretch("bay", i, b.FromLeft, b.Width))
		var at []float64
		for _, s := range b.Stiffeners {
			at = append(at, b.FromLeft.Add(s).Float())
		}
		w.stiffeners = append(w.stiffeners, at)
	}
	for i, o := range al.Openings {
		w.chain = append(w.chain, stretch("opening", i, o.FromLeft, o.Width))
	}
	for i, p := range al.Posts {
		w.chain = append(w.chain, stretch("post", i, p.FromLeft, al.PostFace))
	}
	sort.SliceStable(w.chain, func(i, j int) bool { return w.chain[i].lo < w.chain[j].lo })
	return nil
}

func stretch(kind string, i int, at, width exact.Rat) part {
	return part{kind: kind, n: i + 1, says: width, at: at, run: run{at.Float(), at.Add(width).Float()}}
}

// floorAt is the height of the floor line at x: the straight line between the floors at the two end posts.
func (w *wall) floorAt(x float64) float64 {
	if w.span == 0 {
		return 0
	}
	return -w.fall * min(max(x/w.span, 0), 1)
}

// lowest is the lowest point of the floor, highest the highest point that has a height.
func (w *wall) lowest() float64  { return min(0, -w.fall) }
func (w *wall) highest() float64 { return max(w.height, w.postTop) }

// of lists the parts of a kind.
func (w *wall) of(list []part, kind string) []part {
	var out []part
	for _, p := range list {
		if p.kind == kind {
			out = append(out, p)
		}
	}
	return out
}

func (w *wall) bays() []part  { return w.of(w.chain, "bay") }
func (w *wall) rails() []part { return w.of(w.stack, "rail") }

// evenGaps reports whether all gaps between rails are said with one figure.
func (w *wall) evenGaps() bool {
	for _, g := range w.of(w.stack, "gap") {
		if !g.says.Eq(w.up.Gap) {
			return false
		}
	}
	return true
}
