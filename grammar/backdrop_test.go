package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What only tells of people, weather and tools is left out; what is left is read by itself.
func TestBackdropIsLeftOut(t *testing.T) {
	for line, want := range map[string]string{
		"We bought the lumber yesterday, and the gap is 2":                   "gap = 2 in",
		"my sister likes an airy look, so let's leave 3 inches of gap":       "gap = 3 in",
		"we talked it over at dinner, and the wall should be 42 high":        "wall height = 42 in",
		"opening 32 because the mower barely fits":                           "opening = 32 in",
		"because the planks might bow, we'd like two stiffeners in each bay": "stiffeners = 2",
		"gap 2 since the puppy squeezes through anything":                    "gap = 2 in",
		"we never liked the old fence, so six rails please":                  "rails = 6",
		"my wife pushes a lawnmower, so opening at least 34":                 "opening >= 34 in",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
}

// A clause that may deny, doubt or claim what stands beside it is no backdrop, nor one that the rest points back to.
func TestBackdropIsKeptWhereItMayCount(t *testing.T) {
	for _, line := range []string{
		"gap 3, my brother vetoed it",
		"gap 3, the inspector rejected it",
		"gap 3, we scrapped that idea",
		"six rails, my brother reckons that's crazy",
		"the inspector wasn't thrilled, gap 2",
		"the opening is 30, but we abandoned that",
		"wall 48, which my wife vetoed",
		"unless the mower squeezes through, opening 30",
		"I doubt the mower squeezes through, opening 30",
		"the mower shed wobbles, and it is 30 wide",
	} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
