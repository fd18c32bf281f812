package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// A figure beside a part, a size, a price or a word of correction is heard as what it plainly is of. Everyday speech, no source.
func TestFigureBeside(t *testing.T) {
	for said, want := range map[string]string{
		// A count of one behind feet.
		"span twelve foot one post":               "span = 144 in; added posts = 1",
		"span ten foot one post and six rails":    "span = 120 in; added posts = 1; rails = 6",
		"span twelve foot one opening three foot": "span = 144 in; openings = 1; opening = 36 in",
		"span twelve foot one":                    "span = 145 in",
		// Spare boards, beside those that are counted.
		"six rails and a spare":           "rails = 6; spare = 1",
		"five rails and a spare":          "rails = 5; spare = 1",
		"six rails plus a spare":          "rails = 6; spare = 1",
		"six rails, a spare":              "rails = 6; spare = 1",
		"make the rails a quarter longer": "fit -= 1/4 in",
		"a spare and six rails":           "rails = 6; spare = 1",
		"six rails and two spares":        "rails = 6; spare = 2",
		"add ten percent to the lumber":   "spare = 10%",
		// Where the opening goes, and how high a post is.
		"move the opening left two feet":              "opening from left -= 24 in",
		"shift the opening right two feet":            "opening from left += 24 in",
		"move the opening over to the right two feet": "opening from left += 24 in",
		"move the doorway left a foot":                "opening from left -= 12 in",
		"move the opening two foot left":              "opening from left -= 24 in",
		"move the opening to the left":                "opening side = left",
		"36 opening 12 from the left":                 "opening = 36 in; opening from left = 12 in",
		"a four by four 44 high":                      "post size = 4x4; post height = 44 in",
		"the 4x4 is 44 high":                          "post size = 4x4; post height = 44 in",
		"6x6 four foot high":                          "post size = 6x6; post height = 48 in",
		"four by fours 44 high":                       "post size = 4x4; post height = 44 in",
		"opening 2 x gap":                             "opening = 2 * gap",
		"opening 3 x gap":                             "opening = 3 * gap",
		"left post leans 3/8 in right in 48":          "left post leans 3/8 in right in 48 in",
		"bottom gap 4, wall 48":                       "bottom gap = 4 in; wall height = 48 in",
		// The number of a screw, a grade of lumber, thousands.
		"#8 x 2 1/2 screws":                     "screw length = 2-1/2 in",
		"no. 8 x 2 1/2 screws":                  "screw length = 2-1/2 in",
		"number eight by two and a half screws": "screw length = 2-1/2 in",
		"2 1/2 inch screws":                     "screw length = 2-1/2 in",
		"#2 2x6 rails":                          "rail size = 2x6",
		"no. 1 2x6 rails":                       "rail size = 2x6",
		"8 x 2 1/2 screws":                      "screw length = 2-1/2 in",
		"#10 by 3 inch deck screws":             "screw length = 3 in",
		"#2 grade 2x6":                          "rail size = 2x6",
		"number two pine 2x6":                   "rail size = 2x6",
		"bay number 2 60":                       "bay 2 = 60 in",
		"budget 2 k":                            "budget = 2000.00",
		"grade 2 2x6":                           "rail size = 2x6",
		"budget 2k":                             "budget = 2000.00",
		"1.2k budget":                           "budget = 1200.00",
		"budget 350k":                           "budget = 350000.00",
		"$2k budget":                            "budget = 2000.00",
		// Corrections and changes.
		"rails no the gap two":                 "gap = 2 in",
		"wall no the gap two":                  "gap = 2 in",
		"opening no the wall 48":               "wall height = 48 in",
		"rails, no, the gap two":               "gap = 2 in",
		"gap two, sorry, bottom gap two":       "bottom gap = 2 in",
		"gap two, sorry, wall 48":              "gap = 2 in; wall height = 48 in",
		"gap 2 1/2, no, 2 1/4":                 "gap = 2-1/4 in",
		"opening thirty six, no, thirty eight": "opening = 38 in",
		"wall height four foot six, no, eight": "wall height = 56 in",
		"wall four foot, no, five":             "wall height = 60 in",
		"up two rails":                         "rails += 2",
		"down two rails":                       "rails -= 2",
		"drop 6":                               "drop = 6 in",
		"gap x2":                               "gap *= 2",
		"undo":                                 "undo",
		"cut the rails an eighth short":        "fit = 1/8 in",
		"they're out of twelves":               "stock -= 144 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
}

// Where such a figure may be two things it is asked.
func TestFigureAloneIsAsked(t *testing.T) {
	for _, said := range []string{
		"change the six to a five", "change the two to a three", "change two to three", "swap the six for a five",
		"take the second one down", "take the third one out", "take one off", "take them off",
		"gap two and a quarter, no and a half", "gap two and a half, no, a quarter", "gap 2 1/2 no 3/8", "make the gap two and a half. no, a quarter", "gap two and a half, make that five eighths",
		"opening thirty six, no, eight", "opening thirty six, make it eight", "five rails no six bays two", "gap two and a half wall four foot no two and a quarter",
		"undo gap two", "undo the wall 48", "undo the six rails", "drop the gap under three", "low gap two", "drop down two", "drop to five", "gap 1.5x", "posts same as the wall",
		"cut them out of twelves", "make them out of twelve footers", "rails out of sixteens", "two rails per board", "one rail per eight footer", "two bays per board", "two rails a board", "brackets 3.50, two per rail", "brackets 3.50 and I need two per rail", "screws 9.00 a hundred, eight per rail", "six rails and spare", "six rails and an extra",
		"move the second opening left two feet", "take that one off",
		"brackets three fifty each two per rail", "2x6x12 14.50 two rails per board",
		"36 opening 1 from the left post", "two foot opening one from the left", "three foot opening two off the left", "a 36 opening two from the right",
		"move the opening to 24", "six rails from the floor to 48", "six rails between the floor and 48", "bottom rail at four, top at forty eight", "rails from 4 to 48",
		"wall is 48 above grade", "wall 48 above the lawn",
		"cut them at 6", "cut the rails 2 1/2", "cut them two inches", "rails cut at five",
		"the rails should be an eighth longer", "rails an eighth less", "rails an eighth shorter", "rails two inches shorter",
		"rails came out an eighth short", "rails came up an eighth short", "two of the rails are an eighth short", "he cut them an eighth short", "I'm an eighth short",
		"I put two rails up", "already have two rails up",
		"2x6x12 two for thirty", "twelve footers are three for forty", "anchors four for ten", "post caps three for twenty",
		"screws nine bucks a hundred eight per rail", "screws nine dollars a hundred eight per bracket", "screws nine bucks a box four per bracket", "anchors four bucks four per base",
		"number one rails", "stock 4x4 in eights and tens 2x6 in twelves", "2x6 in twelves and sixteens 4x4 in eights", "stock 8 to 16 by twos", "stock twelve and a half",
		"lumber 12", "wood twelve", "33 of wood and 15 of gap",
		"gap half a 2x4", "bottom gap one 2x6", "gap one and a half 2x4s", "gap half of a 2x6", "rails half of a 2x6", "six rails with a two by four between", "six with 2x6 between", "six rails, 2x4 between",
		"wall four foot six rails six", "span twelve foot six two by six rails",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
