package explain

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

// An answer of its own accord tells the weightiest of many defaults and counts the rest; "show it all" and tables tell them, and the data has all.
func TestGrantedInBrief(t *testing.T) {
	c := talk(t)
	a := c.line("wall height = 48 in; span = 144 in; opening = 34 in; gap >= 2-3/4 in")
	before := map[string]bool{}
	Say(a, Options{Width: 200, Before: before})
	text := strings.Join(strings.Fields(a.Text), " ")
	require.Contains(t, text, "Taken for granted: 2x6 rails, 5-1/2 on the face (hold a tape to yours); bracket holes 1/2 above the rail; a level floor; 4x4 posts, 3-1/2 on the face; and eight more (`show it all` tells them).")
	require.NotContains(t, text, "fewest posts")
	require.Greater(t, len(a.Assumed), 11)

	again := c.line("opening = 30 in") // what was only counted does not come up bit by bit
	Say(again, Options{Width: 200, Before: before})
	require.NotContains(t, again.Text, "Taken for granted")

	whole := *a
	whole.To.Full = true
	Say(&whole, Options{Width: 200})
	require.Contains(t, strings.Join(strings.Fields(whole.Text), " "), "the fewest posts; the opening against the right post.")
}

// The weightiest stay in the order that they were in.
func TestWeightiest(t *testing.T) {
	list := []string{"a", "b", "c", "d", "e"}
	require.Equal(t, []string{"a", "b", "d", "e"}, weightiest(list, []int{9, 1, 9, 0, 2}, 4))
	require.Equal(t, []string{"b", "d"}, weightiest(list, []int{9, 1, 9, 0, 2}, 2))
}

// A caution that comes again for other figures is told by its first sentence; a published one says each time who decides.
func TestCautionsComeAgainInBrief(t *testing.T) {
	drop := func(inches int) *solver.Answer {
		return &solver.Answer{Verdict: solver.Fits, To: solver.Reply{Kind: "state"}, Layout: &solver.Layout{Along: &solver.Along{Span: exact.Int(100), Bays: []solver.Stretch{{Width: exact.Int(100)}}}},
			Cautions: []solver.Caution{{Key: "guard", Source: "IRC 2018 R312.1; local code decides", Facts: []solver.Fact{
				{Key: "guard rules", Nums: []exact.Rat{exact.Int(30), exact.Int(36), exact.Int(4), exact.Int(200), exact.Int(890)}}, {Key: "drop", Nums: []exact.Rat{exact.Int(inches)}}}}}}
	}
	before := map[string]bool{}
	first, again := drop(40), drop(44)
	Say(first, Options{Width: 200, Before: before})
	Say(again, Options{Width: 200, Before: before})
	require.Contains(t, strings.Join(strings.Fields(first.Text), " "), "climb like a ladder. Local code decides. (IRC 2018 R312.1; local code decides)")
	require.Contains(t, again.Text, "lies 44 lower")
	require.Contains(t, again.Text, "at the top. Local code decides.\n`ask cautions` tells more of these.")
	require.NotContains(t, again.Text, "ladder")
	require.Contains(t, again.Cautions[0].Text, "ladder", "the data has all of it")
}

// Where nothing tells the height a sentence says what rails come to; a table stands where somebody asks for it, or where not every count goes.
func TestWithoutAHeight(t *testing.T) {
	open := func(from, to int, topic string) string {
		a := &solver.Answer{Verdict: solver.Open, To: solver.Reply{Kind: "state"}, Ask: &solver.Question{Key: "want height"}, Options: &solver.Options{}}
		if topic != "" {
			a.To = solver.Reply{Kind: "ask", Topic: topic}
		}
		at := func(n int) solver.Range { return solver.Range{{Val: exact.Int(n)}, {Val: exact.Int(n)}} }
		for n := from; n <= to; n++ {
			a.Options.Up = append(a.Options.Up, solver.UpOption{Rails: n, Gap: at(2), BottomGap: at(2), WallHeight: at(8 * n)})
		}
		return said(t, a)
	}
	require.Contains(t, open(1, 60, ""), "Without a height any number of rails goes: four make a wall of 32, five one of 40.")
	require.NotContains(t, open(1, 60, ""), "underneath")
	require.Contains(t, open(4, 60, ""), "Without a height any number of rails goes, from four on: seven make a wall of 56, eight one of 64.")
	require.Contains(t, open(1, 9, ""), "underneath")
	require.Contains(t, open(1, 60, "options"), "underneath")
}

// Rules of thumb are told in round millimeters; in inches as they are.
func TestRulesOfThumb(t *testing.T) {
	for _, metric := range []bool{false, true} {
		v := voiceOf(&solver.Answer{Metric: metric})
		got := ""
		for _, n := range []int{2, 24, 32, 36, 48} {
			got += written(v.thumb(exact.Int(n)), v.Style) + "; "
		}
		want := "2; 24; 32; 36; 48; "
		if metric {
			want = "about 50 mm; about 610 mm; about 810 mm; about 910 mm; about 1220 mm; "
		}
		require.Equal(t, want, got, fmt.Sprint(metric))
	}
}

// What is left of a budget is so much only by what has a price.
func TestLeftOfTheBudget(t *testing.T) {
	w := solver.Line(string(solver.Budget), "left of the budget", solver.Less(solver.Paid(exact.Int(100)), solver.Paid(exact.Int(34))))
	a := &solver.Answer{}
	require.Equal(t, "left of the budget", voiceOf(a).remark(w))
	a.Facts = []solver.Fact{{Key: "no price", Names: []string{"bracket", "screws"}}}
	require.Equal(t, "left of the budget, by what has a price; two items have none", written(voiceOf(a).remark(w), voiceOf(a).Style))
}
