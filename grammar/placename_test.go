package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Places that nobody knows the name of, and words worn short, are passed over; what may turn a wish, or be of the wall, is asked about.
// Everyday speech, no source.
func TestSmallTalk(t *testing.T) {
	for said, want := range map[string]string{
		"I've got nine ten-foot two by sixes out in the machine shed already":                     "have 2x6 120 in x 9",
		"brackets are 4.25 at the emporium":                                                       "price bracket = 4.25",
		"wall 48 until christmas":                                                                 "wall height = 48 in",
		"yo what's the gap":                                                                       "ask gap",
		"how wide's the opening rn":                                                               "ask opening",
		"could we do 7 boards instead or nah":                                                     "what if rails = 7",
		"top o' the wall at forty inches off the deck, mate":                                      "wall height = 40 in",
		"quick one: span 22 ft, wall 40 high, gap max 3":                                          "span = 264 in; wall height = 40 in; gap <= 3 in",
		"sorry, typo, span is 26 ft not 22":                                                       "span = 312 in",
		"right then, wood it is, wall's three foot ten to the top":                                "wall height = 46 in",
		"Let the plan be saved as verandah, and then let me see the cuts.":                        "save verandah; ask cuts",
		"The distance between the end posts, center to center, is 14.25 feet.":                    "centers = 171 in",
		"span's really 147 5/8, I had 148":                                                        "span = 147-5/8 in",
		"The second board is nailed up already, and the top of it is at fifteen and a half":       "fixed rail 2 top = 15-1/2 in",
		"We shall be obliged if the opening is not less than 33 inches and is on the right side.": "opening >= 33 in; opening side = right",
		"Oh dear, I told you 40 inches for the doorway, when I really meant 36.":                  "opening = 36 in",
		"how come five boards is out":                                                             "why not rails = 5",
		"why is a 3 inch gap out":                                                                 "why not gap = 3 in",
		"No gap of four inches or more anywhere":                                                  "gap < 4 in",
		"The wife's wheelchair wants an opening of thirty-four inches, no less":                   "opening >= 34 in",
		"We have $420 for the materials and must not go over it.":                                 "budget = 420.00",
		"which other board counts would fit":                                                      "ask options",
		"I work in mm, so take every figure that way":                                             "units = metric",
		"ok we agreed 40 high and 2in gaps":                                                       "wall height = 40 in; gap = 2 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range []string{
		"six rails, I miscounted", "six rails, just pulling your leg", "gap 3, that is too wide", "Make the gap two and a half, bare.", "wall under 50 high, that's the rule in his town", "the half wall at my office is 44 inches high",
		"I might go with six rails, let me sleep on it", "bay 1, rail two is sixty four and, shoot, the mark's smudged", "bays 1 and 2 at 68, the last one the rest", "take a board out, spread the others evenly",
		"twelves before sixteens", "gap 2, kidding", "gap 3 in your dreams", "it's ten o'clock",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
