package solver

import (
	"encoding/csv"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func written(list string) []string { return strings.Fields(list) }

func texts(rs []exact.Rat) []string {
	out := make([]string, len(rs))
	for i, r := range rs {
		out[i] = Fraction(r)
	}
	return out
}

// The check values of the trade: common practice, no source.
func TestCheckValuesOfTheTrade(t *testing.T) {
	a := Solve(bookOf(t, "rail size = 2x6", "gap = 2-1/2 in", "bottom gap = 2-1/2 in", "wall height = 48 in", "span = 177-1/2 in",
		"opening = 30 in", "opening side = right"))
	require.Equal(t, Fits, a.Verdict)
	require.Equal(t, 6, a.Layout.Rails)
	require.Equal(t, written("8-1/2 16-1/2 24-1/2 32-1/2 40-1/2 48-1/2"), texts(a.Layout.Marks))
	require.Len(t, a.Layout.Bays, 1)
	require.Equal(t, "144", a.Layout.Bays[0].Width.String())
	require.Len(t, a.Layout.Bays[0].Stiffeners, 2)
	require.Equal(t, "50", a.Layout.PostHeight.String())
	require.Equal(t, "91/2", a.Layout.WallHeight.Sub(a.Layout.BottomGap).String(), "a stiffener from the bottom rail to the top of the wall")
}

// 1 in = 25.4 mm exactly: NIST SP 811 appendix B.8, HB 44 appendix C.
func TestInchesAndMillimeters(t *testing.T) {
	require.Equal(t, "127/5", PerInch.String())
	inches := Solve(bookOf(t, "wall height = 48 in", "gap = 2-1/2 in"))
	metric := Solve(bookOf(t, "wall height = 1219.2 mm", "gap = 63.5 mm"))
	require.Equal(t, texts(inches.Layout.Marks), texts(metric.Layout.Marks))
	require.Equal(t, inches.Options, metric.Options)
}

// Guards and pool barriers, each row with its source.
func TestPublishedLimits(t *testing.T) {
	f, err := os.Open("../testdata/published/guards.csv")
	require.NoError(t, err)
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	for _, row := range rows[1:] {
		require.NotEmpty(t, row[3], row[0])
		a := Solve(bookOf(t, strings.Split(row[1], "; ")...))
		require.Equal(t, row[2], string(a.Verdict), "%s: %s", row[0], row[1])
		if a.Verdict == Blocked {
			require.True(t, slices.ContainsFunc(a.Because, func(rules []Rule) bool {
				return slices.ContainsFunc(rules, func(r Rule) bool { return r.Kind == Code && strings.Contains(r.Source, "local code decides") })
			}), row[0])
		}
	}
}

// The figures of a what-if at the sawhorse, each worked out twice by hand.
func TestFiguresAtTheSawhorse(t *testing.T) {
	book := bookOf(t, "wall height = 40 in", "gap = 2-1/2 in")
	base := Solve(book)
	require.Equal(t, 5, base.Layout.Rails)
	tight, _ := Try(book, base, []Statement{say(t, "gap = 2 in")})
	require.Equal(t, Fits, tight.Verdict)
	require.Equal(t, 5, tight.Layout.Rails)
	require.Equal(t, "9/2", tight.Layout.BottomGap.String(), "40 - 27-1/2 - 4 x 2")
	book = bookOf(t, "wall height = 40 in", "gap = 2-1/2 in", "span = 149 in", "opening = 30 in", "opening side = right")
	base = Solve(book)
	require.Equal(t, "231/2", base.Layout.Posts[0].FromLeft.String(), "149 - 30 - 3-1/2")
	require.Equal(t, written("38-1/2 77"), texts(base.Layout.Bays[0].Stiffeners))
	two, _ := Try(book, base, []Statement{say(t, "added posts = 2")})
	require.Len(t, two.Layout.Bays, 2)
	require.Equal(t, "56", two.Layout.Bays[0].Width.String(), "(149 - 30 - 7) / 2")
	require.Len(t, two.Layout.Bays[0].Stiffeners, 1)
}

// The apprentice's wall: one conflict, its least changes, the learner's slip.
func TestFiguresOfTheApprentice(t *testing.T) {
	book := bookOf(t, "wall height = 50 in", "rail size = 2x6", "rails = 7", "bottom gap = gap")
	a := Solve(book)
	require.Equal(t, Blocked, a.Verdict)
	require.Len(t, a.Because, 1)
	var names, to []string
	for _, r := range a.Because[0] {
		names = append(names, r.Rule)
	}
	require.ElementsMatch(t, []string{"wall height", "rails", "rail size", "bracket clearance"}, names)
	for _, w := range a.Ways {
		require.Len(t, w.Changes, 1)
		to = append(to, w.Changes[0].To)
	}
	require.Equal(t, []string{"rails = 6", "wall height = 52-1/2 in", "rail size = 2x4", "bracket clearance = 1-9/14 in"}, to)
	last := a.Work[len(a.Work)-1]
	require.Equal(t, "(101/2) <= 50", last.Expr.String())
	require.Equal(t, "false", last.Equals)
	claim := Hold(book, a, []Statement{say(t, "gap = 1-11/12 in")})
	require.False(t, *claim.Check[0].Holds)
	require.Equal(t, "23/14", claim.Check[0].ShouldBe)
	require.Equal(t, "bottom gap forgotten", claim.Check[0].Slip)
	six := bookOf(t, "wall height = 50 in", "rail size = 2x6", "rails = 6", "bottom gap = gap")
	b := Solve(six)
	require.Equal(t, "17/6", b.Layout.Gap.String())
	not := WhyNot(six, b, []Statement{say(t, "rails = 7"), say(t, "gap = 1-5/8 in")})
	require.Equal(t, Blocked, not.Verdict)
	require.GreaterOrEqual(t, len(not.Because), 2)
	fours, _ := Try(six, b, []Statement{say(t, "rail size = 2x4"), say(t, "rails = 8")})
	require.Equal(t, "11/4", fours.Layout.Gap.String())
}
