package solver

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func rat(s string) exact.Rat {
	if whole, rest, mixed := strings.Cut(s, "-"); mixed && whole != "" {
		return exact.Must(whole).Add(exact.Must(rest))
	}
	return exact.Must(s)
}

func rats(ss ...string) (out []exact.Rat) {
	for _, s := range ss {
		out = append(out, rat(s))
	}
	return out
}

// stacked is a layout up the wall: n rails of a face, even gaps, the same gap underneath unless told.
func stacked(n int, face, gap, bottom string) *Up {
	up := &Up{Rails: n, RailSize: "2x6", RailFace: rat(face), Gap: rat(gap), BottomGap: rat(bottom), Reach: rat("1/2")}
	at := up.BottomGap
	for range n {
		at = at.Add(up.RailFace)
		up.Tops = append(up.Tops, at)
		up.Marks = append(up.Marks, at.Add(up.Reach))
		at = at.Add(up.Gap)
	}
	up.WallHeight = up.Tops[n-1]
	return up
}

// upstream is the upstream side of the shelter at Saltreed Landing: 40 high, 149 between the posts, 30 open on the right.
func upstream() *Site {
	height := rat("42")
	return &Site{
		Layout: &Layout{Up: stacked(5, "11/2", "5/2", "5/2"), Along: &Along{
			Span: rat("149"), PostFace: rat("7/2"), EndPostFace: rat("7/2"), PostHeight: &height,
			Posts: []Place{{rat("115-1/2")}}, Openings: []Stretch{{FromLeft: rat("119"), Width: rat("30")}},
			Bays:          []Stretch{{Width: rat("115-1/2"), Stiffeners: rats("38-1/2", "77")}},
			StiffenerSize: "1x4", StiffenerFace: rat("7/2")}},
		RailSize: "2x6", AddedPostSize: "4x4", EndPostSize: "4x4", StiffenerSize: "1x4",
		BracketThickness: rat("3/32"), Kerf: rat("1/8"), Tape: rat("1/16"), ScrewLength: rat("1-5/8"),
		Stock: []Statement{{Name: Name{Quantity: Stock}, Op: Eq, Value: Value{List: inchList("96", "120", "144", "192")}}},
	}
}

func inchList(ss ...string) (out []Value) {
	for _, s := range ss {
		out = append(out, Inches(rat(s)))
	}
	return out
}

func measured(bay, rail int, at, width string) Statement {
	return Statement{Name: Name{Quantity: Measured, Bay: bay, Rail: rail, At: at}, Op: Eq, Value: Inches(rat(width))}
}

func leans(post, over, way, run string) Statement {
	return Statement{Name: Name{Quantity: PostLeans, At: post}, Value: Value{Num: rat(over), Unit: Inch, Word: way}, Upper: Inches(rat(run))}
}

// leaningIn is the same wall after its bay was measured: 115-1/2 at the floor, 115-3/16 at the top.
func leaningIn() *Site {
	s := upstream()
	s.Measured = []Statement{measured(1, 0, "bottom", "115-1/2"), measured(1, 0, "top", "115-3/16")}
	return s
}

func have(item, length string, n int) Statement {
	return Statement{Name: Name{Quantity: Have, Item: item, Long: &Value{Num: rat(length), Unit: Inch}}, Op: Each, Value: Number(n)}
}

func extra(item, length string, n int) Statement {
	st := have(item, length, n)
	st.Name.Quantity = Extra
	return st
}

func railLengths(f Findings) (out []string) {
	for _, c := range f.Cuts {
		for range c.Count {
			if c.Piece == "rail" {
				out = append(out, Fraction(c.Length))
			}
		}
	}
	return out
}

// everyLineTrue evaluates each line again, by a second road: the text of its expression.
func everyLineTrue(t *testing.T, work []Work) {
	t.Helper()
	for _, w := range work {
		if w.Expr.IsComparison() {
			require.Equal(t, "true", w.Equals, "%s: %s", w.Of, w.Expr)
			continue
		}
		require.Equal(t, w.Equals, evaluate(t, w.Expr.String()).String(), "%s: %s", w.Of, w.Expr)
	}
}

func factsOf(f Findings, key string) (out []Fact) {
	for _, x := range f.Facts {
		if x.Key == key {
			out = append(out, x)
		}
	}
	return out
}

// Conversation A of Saltreed Landing, the figures computed twice by hand: what is cut from the bay as measured.
func TestCutsOfALeaningBay(t *testing.T) {
	f := leaningIn().Cuts()
	require.Nil(t, f.Ask)
	require.Equal(t, []string{"115-1/4", "115-3/16", "115-1/8", "115-1/16", "115"}, railLengths(f))
	everyLineTrue(t, f.Work)
	require.Contains(t, sums(f.Work), "closes: (231/2) - (1843/16) = 5/16")
	require.Contains(t, sums(f.Work), "closes each rail: (5/16) * 8 / 40 = 1/16")
	require.Contains(t, sums(f.Work), "rail to cut: (1843/16) - (3/16) = 115")
	require.Equal(t, []string{"top"}, factsOf(f, "tightest at")[0].Names)
	require.Len(t, factsOf(f, "ends square"), 1)
	require.Empty(t, factsOf(f, "bevel"))
	require.Equal(t, "posts leaning alike", f.Cautions[0].Key)
}

func TestCutsWithPlay(t *testing.T) {
	s := leaningIn()
	s.Fit = rat("1/8")
	require.Equal(t, []string{"115-1/8", "115-1/16", "115", "114-15/16", "114-7/8"}, railLengths(s.Cuts()))
	s.SameLength = true
	f := s.Cuts()
	require.Equal(t, []string{"114-7/8", "114-7/8", "114-7/8", "114-7/8", "114-7/8"}, railLengths(f))
	require.Equal(t, 5, f.Cuts[0].Count, "all alike: one line of the list")
	require.Len(t, factsOf(f, "play"), 5)
	require.Contains(t, sums(f.Work), "play: (461/4) - (919/8) = 3/8")
	require.Contains(t, sums(f.Work), "play at each end: (3/8) / 2 = 3/16")
	everyLineTrue(t, f.Work)
}

// A3 and A4 of the same conversation: the bay as planned, and two bays of 56.
func TestCutsAsPlanned(t *testing.T) {
	f := upstream().Cuts()
	require.Equal(t, "115-5/16", railLengths(f)[0])
	require.Equal(t, 5, f.Cuts[0].Count)
	require.Empty(t, f.Cautions, "nothing was measured: nothing to warn of")
	two := upstream()
	two.Layout.Along.Posts = []Place{{rat("56")}, {rat("115-1/2")}}
	two.Layout.Along.Bays = []Stretch{{Width: rat("56")}, {FromLeft: rat("59-1/2"), Width: rat("56")}}
	got := railLengths(two.Cuts())
	require.Len(t, got, 10)
	require.Equal(t, "55-13/16", got[9])
}

// The check values of the trade (common practice, no source): gap and bottom gap 2-1/2, wall 48, bay 144.
func TestUprightsOfTheTrade(t *testing.T) {
	height := rat("50")
	s := &Site{Layout: &Layout{Up: stacked(6, "11/2", "5/2", "5/2"), Along: &Along{Span: rat("180"), PostFace: rat("7/2"),
		PostHeight: &height, Posts: []Place{{rat("144")}}, Openings: []Stretch{{FromLeft: rat("295/2"), Width: rat("65/2")}},
		Bays: []Stretch{{Width: rat("144"), Stiffeners: rats("48", "96")}}}},
		RailSize: "2x6", AddedPostSize: "4x4", StiffenerSize: "1x4", BracketThickness: rat("3/32"), Tape: rat("1/16")}
	f := s.Cuts()
	require.Equal(t, "48", s.Layout.WallHeight.String())
	byPiece := map[string]Cut{}
	for _, c := range f.Cuts {
		byPiece[c.Piece] = c
	}
	require.Equal(t, "45-1/2", Fraction(byPiece["stiffener"].Length))
	require.Equal(t, 2, byPiece["stiffener"].Count)
	require.Equal(t, "50", Fraction(byPiece["post"].Length))
	require.Equal(t, "143-13/16", Fraction(byPiece["rail"].Length), "a pair of brackets shortens a rail by 3/16")
	require.Equal(t, []exact.Rat{exact.Int(1), rat("48"), rat("96")}, factsOf(f, "stiffener marks")[0].Nums)
}

func TestPostIsShorterByItsBase(t *testing.T) {
	s := upstream()
	s.Layout.BaseHeight = exact.Int(1)
	f := s.Cuts()
	require.Contains(t, sums(f.Work), "post to cut: 42 - 1 = 41")
	s.Layout.BaseHeight = exact.Int(42)
	f = s.Cuts()
	require.Len(t, f.Conflicts, 1)
	require.Equal(t, "false", f.Conflicts[0].Work[0].Equals)
}

func TestFallingFloor(t *testing.T) {
	s := upstream()
	s.Layout.Fall = rat("3/2") // the right end's floor lies 1-1/2 lower
	f := s.Cuts()
	var post Cut
	for _, c := range f.Cuts {
		if c.Piece == "post" {
			post = c
		}
	}
	// The post's center is at 117-1/4 of 149: 42 + 3/2 × 117-1/4 ÷ 149.
	require.Equal(t, rat("42").Add(exact.New(3*469, 2*4*149)).String(), post.Exact.String())
	require.True(t, post.Length.Less(post.Exact))
	require.True(t, post.Exact.Sub(post.Length).Less(rat("1/16")))
	everyLineTrue(t, f.Work)
}

func TestLengthsAreRoundedDown(t *testing.T) {
	s := upstream()
	s.Layout.Along.Bays[0].Width = rat("115-31/64")
	f := s.Cuts()
	require.Equal(t, "115-1/4", railLengths(f)[0], "115-31/64 - 3/16 = 115-19/64, and 19/64 lies between 16/64 and 20/64")
	s.Tape = rat("5/127") // a millimeter
	mm := s.Cuts().Cuts[0].Length.Mul(PerInch)
	require.True(t, mm.IsInt(), mm.String())
}

func TestBayNarrowerThanItsBrackets(t *testing.T) {
	s := upstream()
	s.Layout.Along.Bays[0] = Stretch{Width: rat("3/16")}
	f := s.Cuts()
	require.Empty(t, f.Cuts)
	require.Len(t, f.Conflicts, 1)
	require.Equal(t, "false", f.Conflicts[0].Work[0].Equals)
	a := &Answer{Verdict: Fits}
	f.AddTo(a)
	require.Equal(t, Blocked, a.Verdict)
	s.Fit = rat("1000000")
	require.Len(t, s.Cuts().Conflicts, 1)
	s.Fit = rat("-1/8")
	require.Equal(t, "bad figure", s.Cuts().Ask.Key)
}

func TestRailsThatAreUp(t *testing.T) {
	s := upstream()
	s.Fixed = []int{2}
	f := s.Cuts()
	require.Len(t, railLengths(f), 4)
	require.Len(t, factsOf(f, "rail is up"), 1)
}

func TestNothingToCut(t *testing.T) {
	f := (&Site{}).Cuts()
	require.Equal(t, "layout first", f.Ask.Key)
	s := &Site{Layout: &Layout{Up: stacked(5, "11/2", "5/2", "5/2")}}
	require.Equal(t, []string{"span"}, s.Cuts().Ask.Facts[0].Names)
	s = &Site{Layout: &Layout{Along: upstream().Layout.Along}}
	require.Equal(t, []string{"wall height"}, s.Cuts().Ask.Facts[0].Names)
	s = &Site{Extra: []Statement{{Name: Name{Quantity: Extra, Item: "2x6", Long: &Value{Num: rat("45-1/2"), Unit: Inch}}, Op: Each, Value: Number(12)}}}
	f = s.Cuts()
	require.Nil(t, f.Ask)
	require.Equal(t, 12, f.Cuts[0].Count)
}

// A bay that was measured needs no span; and two bays of which only one was measured do not make a cut list.
func TestMeasuredWithoutASpan(t *testing.T) {
	s := &Site{Layout: &Layout{Up: stacked(6, "11/2", "5/2", "5/2")}, RailSize: "2x6", BracketThickness: rat("3/32"),
		Measured: []Statement{measured(1, 0, "bottom", "62-7/8")}}
	require.Equal(t, "62-11/16", railLengths(s.Cuts())[0])
	s.Measured = []Statement{measured(2, 0, "bottom", "62-7/8")}
	require.Equal(t, []string{"measured bay 1"}, s.Cuts().Ask.Facts[0].Names)
}

func sums(work []Work) (out []string) {
	for _, w := range work {
		out = append(out, w.Note+": "+w.Expr.String()+" = "+w.Equals)
	}
	return out
}
