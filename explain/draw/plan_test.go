package draw

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

// TestPlanShowsTheBase: the holes of a known base stand where the answer has them, from the post's center; of an unknown
// one the center is marked, at the figure that the answer worked out.
func TestPlanShowsTheBase(t *testing.T) {
	a := walls()["upstream"]
	a.Facts = []solver.Fact{{Key: "base center", Nums: []exact.Rat{n(1), q("469/4"), q("127/4"), q("7/4")}}} // 115-1/2 + 1-3/4
	svg, err := SVG(a, Sheet{})
	require.NoError(t, err)
	requireTidy(t, svg, "base not known")
	requireSays(t, wordsOf(reread(t, svg)), "117-1/4 from there to the base’s center")
	requireSays(t, wordsOf(reread(t, svg)), "Mark the anchor holes through the base itself.")
	requireSays(t, string(svg), `data-part="base center"`)

	a.Layout.Base = &solver.PostBase{Long: q("13/2"), Wide: q("7/2"), Anchor: q("1/2"), Deep: q("13/4"),
		Holes: []solver.Hole{{Right: q("-5/2")}, {Right: q("5/2"), Back: q("1")}}}
	svg, err = SVG(a, Sheet{})
	require.NoError(t, err)
	shapes := reread(t, svg)
	requireTidyShapes(t, shapes, "base known")
	requireSays(t, wordsOf(shapes), "2-1/2 left; 2-1/2 right and 1 back; 3-1/4 deep.")
	var post, base box
	var holes [][2]float64
	k := 0.0
	for _, s := range shapes {
		if s.view["data-view"] != "plan" {
			continue
		}
		k = (shape{at: s.view}).num(t, "data-scale") / perInch
		switch s.at["data-part"] {
		case "post":
			post = box{s.num(t, "x"), s.num(t, "y"), s.num(t, "width"), s.num(t, "height")}
		case "base":
			base = box{s.num(t, "x"), s.num(t, "y"), s.num(t, "width"), s.num(t, "height")}
		case "hole":
			holes = append(holes, [2]float64{s.num(t, "cx"), s.num(t, "cy")})
		}
	}
	x, y := post.x+post.w/2, post.y+post.h/2
	require.InDelta(t, 3.5, post.w*k, 0.01)
	require.InDelta(t, 6.5, base.w*k, 0.01)
	require.Len(t, holes, 2)
	require.InDelta(t, -2.5, (holes[0][0]-x)*k, 0.01)
	require.InDelta(t, 2.5, (holes[1][0]-x)*k, 0.01)
	require.InDelta(t, 1, (y-holes[1][1])*k, 0.01)
}

// TestSectionShowsTheBracket reads the section back: two rails and their brackets, an ear over and under each.
func TestSectionShowsTheBracket(t *testing.T) {
	a := walls()["upstream"]
	svg, err := SVG(a, Sheet{})
	require.NoError(t, err)
	parts := map[string]box{}
	k, floor := 0.0, 0.0
	for _, s := range reread(t, svg) {
		if s.view["data-view"] == "section" && s.at["data-part"] != "" {
			view := shape{at: s.view}
			k, floor = view.num(t, "data-scale")/perInch, view.num(t, "data-floor")
			parts[s.at["data-part"]+" "+s.at["data-n"]] = box{s.num(t, "x"), s.num(t, "y"), s.num(t, "width"), s.num(t, "height")}
		}
	}
	up := func(mm float64) float64 { return (floor - mm) * k }
	for rail, top := range map[string]float64{"1": 8, "2": 16} {
		r, b := parts["rail "+rail], parts["bracket "+rail]
		require.InDelta(t, top, up(r.y), 0.01)
		require.InDelta(t, top-5.5, up(r.bottom()), 0.01)
		require.InDelta(t, 1.5, r.w*k, 0.01)
		require.InDelta(t, top+1, up(b.y), 0.01) // an ear of 1
		require.InDelta(t, top-5.5-1, up(b.bottom()), 0.01)
	}
	require.NotContains(t, parts, "rail 3")
}
