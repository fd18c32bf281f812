package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func holes(p PostMark) (out []string) {
	for _, r := range p.Rows {
		out = append(out, Fraction(r.Hole))
	}
	return out
}

// The check value of the trade (common practice, no source): holes at 8-1/2, 16-1/2, … 48-1/2.
func TestMarksOfTheTrade(t *testing.T) {
	s := single(6, "144")
	f := s.Marks()
	require.Equal(t, []string{"8-1/2", "16-1/2", "24-1/2", "32-1/2", "40-1/2", "48-1/2"}, holes(f.Marks[0]))
	require.Len(t, f.Marks, 2)
	require.Equal(t, "right end post", f.Marks[1].Post)
	require.Equal(t, "5/2", f.Marks[0].Rows[0].Underside.String())
	require.Equal(t, "48", f.Marks[0].Rows[5].Top.String())
	everyLineTrue(t, f.Work)
	require.Contains(t, sums(f.Work), "bracket hole: (5/2) + 5 * 8 + (11/2) + (1/2) = 97/2")
	require.Empty(t, factsOf(f, "spacer errs"))
}

// The bench side of Saltreed Landing, computed twice by hand: six rails in 50, gaps of 2-5/6, no mark off by more than 1/48.
func TestMarksOffTheTape(t *testing.T) {
	s := single(1, "144")
	s.Layout.Up = stacked(6, "11/2", "17/6", "17/6")
	f := s.Marks()
	var shown []string
	for _, r := range f.Marks[0].Rows {
		shown = append(shown, Fraction(s.nearest(r.Hole)))
	}
	require.Equal(t, []string{"8-13/16", "17-3/16", "25-1/2", "33-13/16", "42-3/16", "50-1/2"}, shown)
	require.Equal(t, "1/48", factsOf(f, "worst mark")[0].Nums[0].String())
	// A block of 2-13/16 is 1/48 too small, and five of them leave the top rail 5/48 low.
	require.Equal(t, []exact.Rat{rat("17/6"), rat("45/16"), exact.New(-1, 48)}, factsOf(f, "spacer")[0].Nums)
	require.Contains(t, sums(f.Work), "spacer errs: 5 * (1/48) = 5/48")
}

func TestMarksWhereTheFloorFalls(t *testing.T) {
	s := upstream()
	s.Layout.Fall = rat("3/2")
	f := s.Marks()
	require.Len(t, f.Marks, 2, "the right end post carries no rails: the opening is there")
	require.Equal(t, "post 1", f.Marks[1].Post)
	at := exact.New(3, 2).Mul(rat("117-1/4")).Div(exact.Int(149))
	require.Equal(t, at.Neg().String(), f.Marks[1].Floor.String())
	for i, r := range f.Marks[1].Rows {
		left := f.Marks[0].Rows[i]
		require.True(t, r.Hole.Eq(left.Hole.Add(at)) && r.Underside.Eq(left.Underside.Add(at)), "level rails")
	}
	require.Len(t, factsOf(s.StoryPole(), "pole"), 2*15)
	s.Layout.Fall = exact.Rat{}
	require.Len(t, factsOf(s.StoryPole(), "pole"), 15)
}

func TestMarksUpTheWallAlone(t *testing.T) {
	s := &Site{Layout: &Layout{Up: stacked(2, "11/2", "5/2", "5/2")}}
	require.Len(t, s.Marks().Marks, 1)
	require.Equal(t, "layout first", (&Site{}).Marks().Ask.Key)
	require.Equal(t, "layout first", (&Site{}).Spacer().Ask.Key)
	require.Equal(t, "layout first", (&Site{}).StoryPole().Ask.Key)
}

func TestGapsThatDifferOnPurpose(t *testing.T) {
	s := single(1, "144")
	s.Layout.Up = stacked(6, "11/2", "17/6", "17/6")
	s.Layout.Gaps = rats("45/16", "23/8", "45/16", "45/16", "23/8")
	got := factsOf(s.Spacer(), "spacer of several")
	require.Len(t, got, 2)
	require.Equal(t, "3", got[0].Nums[3].String())
	require.Equal(t, "2", got[1].Nums[3].String())
	everyLineTrue(t, s.Marks().Work)
}
