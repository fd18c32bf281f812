package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Turns of phrase that are set to the plain ones; each was once read as something else.
func TestTurnsOfPhrase(t *testing.T) {
	for line, want := range map[string]string{
		"never mind that three inch max on the gap":                          "forget gap <= 3 in",
		"never mind the gap has to be under four":                            "forget gap < 4 in",
		"drop the upper limit of 3 on the gap":                               "forget gap <= 3 in",
		"in between four and six boards, with gaps of no less than 2 inches": "rails in 4..6; gap >= 2 in",
		"wall in between 1.0 and 1.2 m tall":                                 "wall height in 1000 mm..1200 mm",
		"rail 3 in panel 1 came out a quarter short":                         "short bay 1 rail 3 = 1/4 in",
		"throw away the measurement of rail 3 in panel 2":                    "forget measured bay 2 rail 3",
		"give the doorway another in and three-quarters":                     "opening += 1-3/4 in",
		"close up this gap three sixteenths":                                 "gap -= 3/16 in",
		"bottom gap half my gap":                                             "bottom gap = 1/2 * gap",
		"what number of boards will be stacked in each section":              "ask rails",
		"how come so many rails":                                             "why rails",
		"end uprights are 11 ft 3 center to center":                          "centers = 135 in",
		"same as our east wall but with a three inch gap":                    "same as east wall; gap = 3 in",
		"make it like the west wall kindly":                                  "same as west wall",
		"save it, the name's pool deck":                                      "save pool deck",
		"bay 2 rail 5, 68 1/4, no, I mean 68 3/4's what it measures":         "measured bay 2 rail 5 = 68-3/4 in",
		"the saw takes 3 mm per cut and he says 6 rails":                     "kerf = 3 mm; check rails = 6",
		"the cut list says six rails":                                        "check rails = 6",
		"a gap of 3 will be all right":                                       "gap = 3 in",
		"none of these sections will be allowed to run past five foot ten":   "bay <= 70 in",
		"we were hoping to put up a low wall that stands 40 inches tall":     "wall height = 40 in",
		"every rail cut to one & the same length":                            "same length",
		"two by sixes, six of them, and whatever gap that leaves":            "rail size = 2x6; rails = 6",
		"42 high, six rails, whatever gap that makes":                        "wall height = 42 in; rails = 6",
		"a list of everything I should pick up":                              "ask shopping",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
	}
	for _, line := range []string{"save this below the name porch", "2 over the top rail for the posts", "widen the bays two"} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
