package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// A word that no table knows is stepped over where its place shows that it changes nothing.
func TestLooseWordsAreLeftOut(t *testing.T) {
	for line, want := range map[string]string{
		"I'm dreadfully sorry, the gap should be 3":             "gap = 3 in",
		"opening at least 34 for the wheelbarrow":               "opening >= 34 in",
		"the saw we borrowed takes out an eighth per cut":       "kerf = 1/8 in",
		"can you crank the opening as wide as it'll go":         "largest opening",
		"a half wall on the boathouse, 42 tall":                 "wall height = 42 in",
		"a wall round the kiosk, 40 high":                       "wall height = 40 in",
		"need room for a handcart, 36 at the very least":        "opening >= 36 in",
		"please leave 3 inches under the lowest rail for a hog": "bottom gap = 3 in",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
}

// It is asked after where it may be a verb of change, a view, a command's opposite, another thing, or a number misspelled.
func TestLooseWordsAreKeptWhereTheyMayCount(t *testing.T) {
	for _, line := range []string{
		"we crank the gap half an inch",
		"I dread starting over",
		"we detest undo",
		"I detest six rails",
		"the wall is merely 48 high",
		"the gap is barely 2",
		"the gap under the bookcase is 20",
		"height of the cabinet is 40",
		"they flubbed the gap at 2",
		"opening 34 for the sevne",
		"a wall on the stairs, 40 high",
		"the wall at the bookcase is 40",
	} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
