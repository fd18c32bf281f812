package explain

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

// In a narrow terminal cautions come up in brief, and are told in full where they are asked for; the data has them in full each time.
func TestCautionsInBrief(t *testing.T) {
	one := solver.Fact{Key: "posts", Nums: []exact.Rat{exact.Int(1)}}
	make := func(to solver.Reply) *solver.Answer {
		return &solver.Answer{Verdict: solver.Fits, To: to, Cautions: []solver.Caution{
			{Key: "free post", Source: "common practice", Facts: []solver.Fact{one}}, {Key: "drilling", Source: "OSHA fact sheet"}},
			Layout: &solver.Layout{Along: &solver.Along{Span: exact.Int(100), Bays: []solver.Stretch{{Width: exact.Int(100)}}}}}
	}
	flat := func(s string) string { return strings.Join(strings.Fields(s), " ") }
	stated := solver.Reply{Kind: "state"}

	wide, narrow := make(stated), make(stated)
	Say(wide, Options{Width: 80})
	Say(narrow, Options{Width: 40})
	require.Contains(t, flat(wide.Text), "tie its top to the structure")
	require.Contains(t, flat(wide.Text), "Drilling concrete makes silica dust. `ask cautions` tells more of these.")
	require.Contains(t, flat(narrow.Text), "The added post is held only at its foot: I can't call it safe.")
	require.Contains(t, flat(narrow.Text), "`ask cautions` tells more of these.")
	require.NotContains(t, flat(narrow.Text), "OSHA")
	require.Equal(t, wide.Cautions, narrow.Cautions)

	asked := make(solver.Reply{Kind: "ask", Topic: "cautions"})
	Say(asked, Options{Width: 40})
	require.Contains(t, flat(asked.Text), "tie its top to the structure")
	require.Contains(t, flat(asked.Text), "(OSHA fact sheet)")
}

// Remarks that a far column would break into slivers stand in a nearer one, where that takes fewer lines; aligned ones stay.
func TestRemarksInFewerLines(t *testing.T) {
	s := sums{rows: []sumRow{
		{sum: "6 × 5-1/2 = 33", remark: "wood"},
		{sum: "6 × 2-1/2 = 15", remark: "five gaps between, one underneath"},
		{sum: "149 − 24 − 3-1/2 = 121-1/2", remark: "the bay"},
	}}
	narrow := s.lines(Options{Width: 40})
	require.Len(t, narrow, 4, strings.Join(narrow, "\n"))
	require.Equal(t, []string{
		"6 × 5-1/2 = 33               wood",
		"6 × 2-1/2 = 15               five gaps between, one underneath",
		"149 − 24 − 3-1/2 = 121-1/2   the bay",
	}, s.lines(Options{Width: 80}))
}

// No answer about safety says that it is safe, whatever the wall.
func TestNeverCalledSafe(t *testing.T) {
	for _, topic := range []string{"strength", "passage", "guard", "permit", "cautions"} {
		for _, facts := range [][]solver.Fact{{
			{Key: "widths", Nums: []exact.Rat{exact.Int(24), exact.Int(32), exact.Int(36), exact.Int(32), exact.Int(36), exact.Int(24)}},
		}, {
			{Key: "ball", Nums: []exact.Rat{exact.Int(2), exact.Int(2), exact.Int(4)}},
			{Key: "widths", Nums: []exact.Rat{exact.Int(24), exact.Int(32), exact.Int(36), exact.Int(32), exact.Int(36), exact.Int(24)}},
			{Key: "passes", Nums: []exact.Rat{exact.Int(1), exact.Int(48), exact.Int(48), {}, exact.Int(1)}},
		}} {
			a := &solver.Answer{Verdict: solver.Fits, To: solver.Reply{Kind: "ask", Topic: topic}, Facts: facts}
			Say(a, Options{})
			text := strings.ToLower(a.Text + " " + a.Spoken)
			require.NotContains(t, strings.ReplaceAll(text, "can't call it safe", ""), "safe", topic)
			require.NotContains(t, text, "strong enough", topic)
			require.True(t, strings.Contains(text, "local code decides") || strings.Contains(text, "no promise") || strings.Contains(text, "can't"), "%s: %s", topic, a.Text)
		}
	}
}
