package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// The figures of the two tests below were worked out by hand, twice, before this program was written: common practice, no
// source. They are held to the data of the answers; the words are in testdata/talk.

func TestWhatIfAtTheSawhorse(t *testing.T) {
	c := talking(t)
	a := c.say("wall height = 40 in; gap = 2-1/2 in")
	require.Equal(t, solver.Fits, a.Verdict)
	require.Equal(t, 5, a.Layout.Rails)
	require.Equal(t, "5/2", a.Layout.BottomGap.String(), "it comes out even")

	a = c.say("what if gap = 2 in")
	require.Equal(t, solver.Fits, a.Verdict)
	require.Equal(t, 5, a.Layout.Rails)
	require.Equal(t, "9/2", a.Layout.BottomGap.String(), "40 − 27-1/2 − 4 × 2")
	require.Contains(t, oneLine(a), "43", "six rails with nothing under them: 6 × 5-1/2 + 5 × 2")
	require.Contains(t, oneLine(a), "37-1/2 or 45", "walls with even gaps of 2")

	a = c.say("span = 149 in; opening = 30 in; opening side = right")
	require.Equal(t, solver.Fits, a.Verdict)
	require.Len(t, a.Layout.Posts, 1)
	require.Equal(t, "231/2", a.Layout.Posts[0].FromLeft.String(), "149 − 30 − 3-1/2 = 115-1/2")
	require.Equal(t, "30", a.Layout.Openings[0].Width.String())
	require.Len(t, a.Layout.Bays[0].Stiffeners, 2)
	require.Equal(t, "77/2", a.Layout.Bays[0].Stiffeners[0].String())
	require.Equal(t, "77", a.Layout.Bays[0].Stiffeners[1].String())
	require.Equal(t, "42", a.Layout.PostHeight.String())
	require.True(t, cautioned(a, "foot"), "a post held only at its foot")

	a = c.say("what if added posts = 2")
	require.Equal(t, solver.Fits, a.Verdict)
	require.Len(t, a.Layout.Bays, 2)
	for _, bay := range a.Layout.Bays {
		require.Equal(t, "56", bay.Width.String())
		require.Len(t, bay.Stiffeners, 1)
		require.Equal(t, "28", bay.Stiffeners[0].String())
	}
	require.Len(t, c.say("ask layout").Layout.Bays, 1, "nothing changed")

	a = c.say("measured bay 1 bottom = 115-1/2 in; measured bay 1 top = 115-3/16 in; ask cuts")
	require.Equal(t, []string{"115-1/4", "115-3/16", "115-1/8", "115-1/16", "115"}, railsCut(a))
	require.True(t, cautioned(a, "lean"), "two widths don't show posts that lean the same way")

	c.say("fit = 1/8 in")
	require.Equal(t, []string{"115-1/8", "115-1/16", "115", "114-15/16", "114-7/8"}, railsCut(c.say("ask cuts")))

	a = c.say("what if same length; ask cuts")
	require.Equal(t, []string{"114-7/8", "114-7/8", "114-7/8", "114-7/8", "114-7/8"}, railsCut(a))
	require.Contains(t, oneLine(a), "115-1/4 − 114-7/8 = 3/8", "the loosest")
}

func TestTheApprenticeAndTheGap(t *testing.T) {
	c := talking(t)
	a := c.say("wall height = 50 in; rail size = 2x6; rails = 7; bottom gap = gap")
	require.Equal(t, solver.Blocked, a.Verdict)
	require.Len(t, a.Because, 1)
	var rules []string
	for _, r := range a.Because[0] {
		rules = append(rules, r.Rule)
	}
	require.ElementsMatch(t, []string{"wall height", "rails", "rail size", "bracket clearance"}, rules)
	to := map[string]string{}
	for _, w := range a.Ways {
		require.Len(t, w.Changes, 1)
		to[w.Changes[0].Rule] = w.Changes[0].To
	}
	require.Equal(t, "rails = 6", to["rails"])
	require.Equal(t, "wall height = 52-1/2 in", to["wall height"], "the one that keeps the gap underneath: 38-1/2 + 7 × 2")
	require.Contains(t, to["bracket clearance"], "1-9/14 in", "11-1/2 ÷ 7")
	require.Contains(t, oneLine(a), "38-1/2 + 12 = 50-1/2")

	a = c.say("check gap = 1-11/12 in")
	require.False(t, *a.Check[0].Holds)
	require.Equal(t, "23/14", a.Check[0].ShouldBe, "11-1/2 ÷ 7 = 1-9/14")
	require.Equal(t, "bottom gap forgotten", a.Check[0].Slip, "11-1/2 ÷ 6 = 1-11/12")

	c.say("rails = 6; teach gap")
	require.Contains(t, oneLine(c.say("figure 36")), "6 × 6 = 36", "the name of the board")
	c.say("figure 33")
	require.Contains(t, oneLine(c.say("figure 17, 5")), "six")
	a = c.say("figure 2-5/6")
	require.Contains(t, oneLine(a), "2-5/6 − 2 = 5/6")
	require.Contains(t, oneLine(a), "8-13/16, 17-3/16, 25-1/2, 33-13/16, 42-3/16")
	require.Contains(t, oneLine(a), "4 × 2-13/16 + 2 × 2-7/8 = 17")

	a = c.say("why not rails = 7, gap = 1-5/8 in")
	require.Equal(t, solver.Blocked, a.Verdict)
	require.Contains(t, oneLine(a), "3/8", "2 − 1-5/8")
	require.Contains(t, oneLine(a), "49-7/8", "7 × 5-1/2 + 7 × 1-5/8")

	a = c.say("what if rail size = 2x4, rails = 8")
	require.Equal(t, solver.Fits, a.Verdict)
	require.Equal(t, "11/4", a.Layout.Gap.String(), "(50 − 28) ÷ 8")
	require.Equal(t, "7/2", a.Layout.RailFace.String())
	require.True(t, cautioned(a, "bracket"), "a 2x4's bracket is another part")
}

func cautioned(a *solver.Answer, word string) bool {
	for _, c := range a.Cautions {
		if strings.Contains(c.Text, word) {
			return true
		}
	}
	return false
}

// railsCut lists the lengths to cut the rails to, bottom rail first.
func railsCut(a *solver.Answer) []string {
	var out []string
	for _, cut := range a.Cuts {
		if cut.Piece == "rail" {
			for range cut.Count {
				out = append(out, solver.Fraction(cut.Length))
			}
		}
	}
	return out
}

// oneLine is a text without its line breaks.
func oneLine(a *solver.Answer) string { return strings.Join(strings.Fields(a.Text), " ") }
