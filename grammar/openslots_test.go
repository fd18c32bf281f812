package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// A word of no table is taken for any of its kind where its place leaves no other meaning.
func TestOpenSlots(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"It would be wonderful if the doorway could begin 46 inches from the right post.": "opening from right = 46 in",
		"it would be simply marvelous if the gap was 2":                                   "gap = 2 in",
		"what if I slung just four boards in":                                             "what if rails = 4",
		"my pharmacist reckons six rails would do":                                        "check rails = 6",
		"the pharmacist's sketch has six rails":                                           "check rails = 6",
		"I'd like to peg the opening at 32":                                               "opening = 32 in",
		"For the wheelbarrow we need a passage of no less than 34 inches":                 "opening >= 34 in",
		"to keep my aunt happy, put the doorway on the left":                              "opening side = left",
	})
	for _, line := range []string{
		"varnish six rails", "don't peg the gap at 2", "we never peg the gap at 2", "what if I removed just four boards", "I slung just four boards in",
	} {
		for _, a := range Read(line, act.Context{}).Acts {
			require.NotEqual(t, act.State, a.Kind, line)
			require.NotEqual(t, "what if rails = 4", a.String(), line)
		}
	}
}
