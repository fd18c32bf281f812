package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// One clause of several that cannot be understood is asked about alone, at its own place; the answer is put in it, and
// nothing else has to be said again.
func TestOneClauseIsAskedAbout(t *testing.T) {
	for _, c := range []struct {
		said    string
		at      int
		choices []string
	}{
		{"wall 48 high, posts 96 apart, 5 rails", 14, []string{"span = 96 in", "centers = 96 in"}},
		{"posts 8 ft apart", 0, []string{"span = 96 in", "centers = 96 in"}},
		{"gap 2 1/2 and posts at least 8 ft apart and a 4x4 post", 14, []string{"span >= 96 in", "centers >= 96 in"}},
		{"wall 48 high, 5 rails, what if posts are 8 feet apart", 31, []string{"what if span = 96 in", "what if centers = 96 in"}},
	} {
		r := Read(c.said, act.Context{})
		require.NotNil(t, r.Ask, c.said)
		require.Equal(t, c.at, *r.Ask.At, c.said)
		require.Equal(t, c.choices, r.Ask.Choices, c.said)
	}
	r := Read("wall 48 high, posts 96 apart, 5 rails", act.Context{Settled: []string{"centers = 96 in"}})
	require.Nil(t, r.Ask)
	require.Equal(t, "wall height = 48 in; centers = 96 in; rails = 5", parse.Normal(r.Acts))
}

// A board that runs a little wide has a face that is off by so much; no board is a sixteenth wide.
func TestBoardsRunWide(t *testing.T) {
	for said, want := range map[string]string{
		"what if the boards run a sixteenth wide": "what if rail face += 1/16 in",
		"boards run 1/16 wide":                    "rail face += 1/16 in",
		"what if the boards are 1/16 narrow":      "what if rail face -= 1/16 in",
		"rails run 2 mm narrow":                   "rail face -= 2 mm",
		"the rails are an eighth wider":           "rail face += 1/8 in",
		"boards are 5-1/2 wide":                   "rail face = 5-1/2 in",
		"tolerance 1/16":                          "tolerance = 1/16 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
