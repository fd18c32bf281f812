package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// A unit in a question is wanted for its answer alone; what is meant to last, or stands beside a figure, is said of all. Common ways of
// speech, no source.
func TestShownIn(t *testing.T) {
	for _, c := range []struct{ line, want, units string }{
		{"how wide is bay 2 in millimeters", "ask bay 2", "metric"},
		{"in mm how wide is bay 2", "ask bay 2", "metric"},
		{"tell me in millimetres how high the wall is", "ask wall height", "metric"},
		{"can I have the marks in mm", "ask marks", "metric"},
		{"how long do I cut them, in mm please", "ask cuts", "metric"},
		{"what's the gap in inches", "ask gap", "customary"},
		{"why is the gap so odd in millimeters", "why gap", "metric"},
		{"what if the gap were 60 mm, in millimeters please", "what if gap = 60 mm", "metric"},
		{"I work in mm, how wide is bay 2", "units = metric; ask bay 2", ""},
		{"where do the marks go, everything in millimeters", "ask marks; units = metric", ""},
		{"switch to mm and show the marks", "units = metric; ask marks", ""},
		{"in millimeters please", "units = metric", ""},
		{"gap 60, in mm", "gap = 60 mm; units = metric", ""},
	} {
		r := Read(c.line, act.Context{})
		require.Nil(t, r.Ask, c.line)
		require.Equal(t, c.want, parse.Normal(r.Acts), c.line)
		for _, a := range r.Acts {
			require.Equal(t, c.units, a.Units, c.line)
		}
	}
}

// What stands behind "in" alone is no file.
func TestPrintedInWhat(t *testing.T) {
	for _, line := range []string{"print the plan in mm", "print it in color", "print the plan in ink please"} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	require.Equal(t, "print to porch.html", parse.Normal(Read("print the plan in porch.html", act.Context{}).Acts))
}
