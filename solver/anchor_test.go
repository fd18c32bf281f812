package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func slab(thick, edge string) *Site {
	s := upstream()
	a, b := rat(thick), rat(edge)
	s.Slab, s.Edge = &a, &b
	return s
}

// An anchor 3-3/4 long with 1/2 of thread left reaches 3-1/4 down from the top of the base (common practice, no source).
// The greatest depth without product tests is the greater of 2/3 of the slab and the slab less 4 (ACI 318-19 17.9.4):
// 3-1/2 allows 2-1/3, 4 allows 2-2/3, 5 allows 3-1/3, 6 allows 4.
func TestAnchorDepth(t *testing.T) {
	for thick, want := range map[string]string{"3-1/2": "7/3", "4": "8/3", "5": "10/3", "6": "4"} {
		f := slab(thick, "24").Anchors()
		require.Contains(t, sums(f.Work), "anchor reaches: (15/4) - (1/2) = 13/4")
		found := false
		for _, w := range f.Work {
			if w.Note == "two thirds of the slab" {
				require.Equal(t, want, w.Equals)
				require.Equal(t, depthSource, w.From)
				found = true
			}
		}
		require.True(t, found)
		everyLineTrue(t, f.Work)
		holds := rat(want).Cmp(rat("13/4")) >= 0
		require.Equal(t, holds, len(factsOf(f, "hole")) == 1, thick)
		require.Equal(t, !holds, hasCaution(f, "slab too thin"), thick)
	}
	f := slab("14", "24").Anchors()
	require.Contains(t, sums(f.Work), "slab less 4: 14 - 4 = 10")
	require.Contains(t, sums(f.Work), "deep enough a slab: (13/4) <= 10 = true", "10 is the greater of 9-1/3 and 10")
	f = slab("4", "24").Anchors()
	require.Contains(t, sums(f.Work), "slab that would do: (13/4) * (3/2) = 39/8")
	require.Empty(t, factsOf(slab("39/8", "24").Anchors(), "slab too thin"))
	require.Len(t, factsOf(slab("39/8", "24").Anchors(), "hole"), 1, "and it does")
}

func hasCaution(f Findings, key string) bool {
	for _, c := range f.Cautions {
		if c.Key == key {
			return true
		}
	}
	return false
}

// Edge: eight diameters (from memory), 1.5 depths for full hold (ACI 318-19 17.6.2, quoted), 0.7 + 0.3 · edge ÷ that.
func TestAnchorEdge(t *testing.T) {
	f := slab("6", "3").Anchors()
	require.True(t, hasCaution(f, "edge too near"))
	for _, c := range f.Cautions {
		if c.Key == "edge too near" {
			require.Contains(t, c.Source, "from memory")
		}
	}
	f = slab("6", "4").Anchors()
	require.False(t, hasCaution(f, "edge too near"))
	require.Contains(t, sums(f.Work), "edge for full hold: (3/2) * (13/4) = 39/8")
	require.Equal(t, exact.New(7, 10).Add(exact.New(3, 10).Mul(exact.Int(4)).Div(rat("39/8"))).String(),
		factsOf(f, "hold near the edge")[0].Nums[2].String())
	require.Empty(t, factsOf(slab("6", "39/8").Anchors(), "hold near the edge"))
}

func TestAnchorsAskFirst(t *testing.T) {
	s := upstream()
	f := s.Anchors()
	require.Equal(t, "slab first", f.Ask.Key)
	require.Equal(t, []string{"slab thickness", "edge distance"}, f.Ask.Facts[0].Names)
	require.Empty(t, factsOf(f, "hole"), "no depth before the slab is known")
	require.Equal(t, []exact.Rat{exact.Int(1), rat("117-1/4"), rat("31-3/4"), rat("7/4")}, factsOf(f, "base center")[0].Nums)
	require.Equal(t, "layout first", (&Site{}).Anchors().Ask.Key)
	require.Len(t, single(2, "100").Anchors().Facts, 1)
	big := rat("5/8")
	s = slab("6", "4")
	s.AnchorSize = &big
	f = s.Anchors()
	require.Len(t, factsOf(f, "anchor of another size"), 1)
	require.True(t, hasCaution(f, "edge too near"), "eight times 5/8 is 5")
}

// Worked examples, as transcribed in open sources: ACI 349.2R-07 A1 (cast-in, 15.417 kip) and A3 (25.9126 kip); the basic
// strength of post-installed anchors by its formula.
func TestBasicBreakout(t *testing.T) {
	require.InDelta(t, 15417, BasicBreakout(24, 4000, 4.69), 0.5)
	require.InDelta(t, 25912.6, BasicBreakout(24, 4000, 6.63), 0.5)
	require.InDelta(t, 4250, BasicBreakout(17, 4000, 2.5), 0.05)
	require.InDelta(t, 2404, BasicBreakout(17, 2500, 2), 0.5)
	require.InDelta(t, 3360, BasicBreakout(17, 2500, 2.5), 0.5)
	require.InDelta(t, 3876, BasicBreakout(17, 2500, 2.75), 0.5)
}

// A published group of four by four anchors, 9 and 6 in apart, one edge at 8 (anchor design guide to ACI 318-19): area
// 1532.16, single 297.56, edge factor 0.978, basic 18,313 lb, group 92,221 lb with their rounding of the factors.
func TestGroupBreakout(t *testing.T) {
	g := AnchorGroup{Depth: 5.75, Wide: 27, Deep: 18, Edges: [4]float64{0, 0, 8, 0}}
	require.InDelta(t, 1532.16, g.Area(), 0.005)
	require.InDelta(t, 297.56, g.SingleArea(), 0.005)
	require.InDelta(t, 0.978, g.EdgeFactor(), 0.0005)
	require.InDelta(t, 18313, BasicBreakout(21, 4000, 5.75), 0.5)
	require.InDelta(t, 92221, g.Breakout(21, 4000), 25)
	require.InDelta(t, 1, AnchorGroup{Depth: 2}.EdgeFactor(), 1e-12)
}
