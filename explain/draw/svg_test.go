package draw

import (
	"fmt"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// back maps paper to inches of wall, as a person with a scale rule would, from what the view says of itself.
type back struct{ k, left, floor float64 }

func backOf(t testing.TB, s shape) back {
	v := shape{at: s.view}
	return back{v.num(t, "data-scale") / perInch, v.num(t, "data-left"), v.num(t, "data-floor")}
}

func (b back) x(mm float64) float64 { return (mm - b.left) * b.k }
func (b back) y(mm float64) float64 { return (b.floor - mm) * b.k }

// seen is what an elevation shows, by part and number, in inches: left, right, low, high.
type seen struct {
	parts map[string][4]float64
	marks map[int][][4]float64
}

func found(t testing.TB, shapes []shape) seen {
	out := seen{map[string][4]float64{}, map[int][][4]float64{}}
	for _, s := range shapes {
		part := s.at["data-part"]
		if part == "" || s.view["data-view"] != "elevation" {
			continue
		}
		b := backOf(t, s)
		key := part + " " + s.at["data-n"]
		if bay := s.at["data-bay"]; bay != "" {
			key = "bay " + bay + " " + key
		}
		var r [4]float64
		switch s.name {
		case "rect":
			x, y := s.num(t, "x"), s.num(t, "y")
			r = [4]float64{b.x(x), b.x(x + s.num(t, "width")), b.y(y + s.num(t, "height")), b.y(y)}
		case "line":
			r = [4]float64{b.x(s.num(t, "x1")), b.x(s.num(t, "x2")), b.y(s.num(t, "y1")), b.y(s.num(t, "y2"))}
		}
		if part == "mark" {
			n := int(s.num(t, "data-n"))
			out.marks[n] = append(out.marks[n], r)
			continue
		}
		out.parts[key] = r
	}
	return out
}

// marked reports whether some stroke of mark n touches the place x at the height y.
func (s seen) marked(n int, x, y float64) bool {
	for _, m := range s.marks[n] {
		if (near(m[0], x) || near(m[1], x)) && near(m[2], y) && near(m[3], y) {
			return true
		}
	}
	return false
}

// requireShows holds what was read back against the answer, within 0.01 in.
func requireShows(t testing.TB, a *solver.Answer, got seen, name string) {
	is := func(key string, i int, want float64) {
		r, ok := got.parts[key]
		require.True(t, ok, "%s: %s is not drawn", name, key)
		require.InDelta(t, want, r[i], 0.01, "%s: %s", name, key)
	}
	l := a.Layout
	if l.Up != nil {
		below := 0.0
		for i, top := range l.Tops {
			under := top.Sub(l.RailFace).Float()
			key := "gap " + strconv.Itoa(i)
			if under-below > 1e-9 {
				is(key, 2, below)
				is(key, 3, under)
			}
			below = top.Float()
			mark := l.Marks[i].Float()
			if l.Along == nil {
				rail := fmt.Sprintf("bay 0 rail %d", i+1)
				is(rail, 2, under)
				is(rail, 3, top.Float())
				require.True(t, got.marked(i+1, 0, mark), "%s: mark %d", name, i+1)
				continue
			}
			for b, bay := range l.Bays {
				rail := fmt.Sprintf("bay %d rail %d", b+1, i+1)
				left, right := bay.FromLeft.Float(), bay.FromLeft.Add(bay.Width).Float()
				is(rail, 0, left)
				is(rail, 1, right)
				is(rail, 2, under)
				is(rail, 3, top.Float())
				require.True(t, got.marked(i+1, left, mark) && got.marked(i+1, right, mark), "%s: mark %d of bay %d", name, i+1, b+1)
			}
		}
	}
	if l.Along == nil {
		return
	}
	stretches := func(kind string, list []solver.Stretch) {
		for i, s := range list {
			key := "width of " + kind + " " + strconv.Itoa(i+1)
			is(key, 0, s.FromLeft.Float())
			is(key, 1, s.FromLeft.Add(s.Width).Float())
		}
	}
	stretches("bay", l.Bays)
	stretches("opening", l.Openings)
	for i, p := range l.Posts {
		key := "post " + strconv.Itoa(i+1)
		is(key, 0, p.FromLeft.Float())
		is(key, 1, p.FromLeft.Add(l.PostFace).Float())
		if l.Up != nil {
			is(key, 3, l.PostHeight.Float())
		}
	}
	for b, bay := range l.Bays {
		for i, s := range bay.Stiffeners {
			key := fmt.Sprintf("bay %d stiffener %d", b+1, i+1)
			r, ok := got.parts[key]
			require.True(t, ok, "%s: %s is not drawn", name, key)
			require.InDelta(t, bay.FromLeft.Add(s).Float(), (r[0]+r[1])/2, 0.01, "%s: %s", name, key)
		}
	}
}

func TestDrawingShowsTheAnswer(t *testing.T) {
	for name, a := range walls() {
		for _, page := range []string{"letter", "a4"} {
			svg, err := SVG(a, Sheet{Wall: name, Date: "2031-05-04", Page: page})
			require.NoError(t, err, name)
			shapes := reread(t, svg)
			requireShows(t, a, found(t, shapes), name)
			requireTidyShapes(t, shapes, name+" "+page)
			requireSelfContained(t, svg)
		}
	}
}

// TestRandomDrawings draws 500 walls: everything is where the answer has it, and every label has its own place.
func TestRandomDrawings(t *testing.T) {
	labels := 0
	for i, a := range randomWalls(500) {
		name := "random wall " + strconv.Itoa(i)
		page := []string{"letter", "a4"}[i%2]
		svg, err := SVG(a, Sheet{Wall: name, Date: "2031-05-04", Page: page})
		require.NoError(t, err, name)
		shapes := reread(t, svg)
		requireShows(t, a, found(t, shapes), name)
		labels += requireTidyShapes(t, shapes, name)
	}
	t.Logf("%d labels on 500 sheets", labels)
	require.Greater(t, labels, 500*15)
}
