package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is said side by side is heard as two things, and a line that says something else as a whole than its clauses do is heard as a whole. Everyday
// speech, no source.
func TestJoined(t *testing.T) {
	for said, want := range map[string]string{
		// What is sold, and what is not.
		"tens but no twelves":                             "stock = 120 in; stock -= 144 in",
		"they have twelves, no sixteens":                  "stock = 144 in; stock -= 192 in",
		"only twelves, no tens":                           "stock = 144 in; stock -= 120 in",
		"they have tens too but no twelves":               "stock += 120 in; stock -= 144 in",
		"they have tens again but no twelves":             "stock += 120 in; stock -= 144 in",
		"eights and tens but no twelves":                  "stock = 96 in, 120 in; stock -= 144 in",
		"they carry 8s and 10s but no 12s":                "stock = 96 in, 120 in; stock -= 144 in",
		"they have 8 footers but no 10 footers":           "stock = 96 in; stock -= 120 in",
		"they sell tens and twelves, no twelves":          "stock = 120 in",
		"they have all but the sixteens":                  "stock -= 192 in",
		"all lengths but twelves":                         "stock -= 144 in",
		"they sell everything except tens and twelves":    "stock -= 120 in; stock -= 144 in",
		"no more twelves, but tens":                       "stock -= 144 in; stock += 120 in",
		"no eights but tens":                              "stock -= 96 in; stock += 120 in",
		"I have four 2x6 tens but no twelves":             "have 2x6 120 in x 4",
		"twelves are 11.25 but no sixteens":               "price rails 144 in = 11.25; stock -= 192 in",
		"twelves are 11.50 and so are tens":               "price rails 144 in = 11.50; price rails 120 in = 11.50",
		"tens cost 9.50, so do twelves":                   "price rails 120 in = 9.50; price rails 144 in = 9.50",
		"2x6 twelves are 11.50, tens too":                 "price 2x6 144 in = 11.50; price 2x6 120 in = 11.50",
		"twelves are 11.50, no, sixteens":                 "price rails 192 in = 11.50",
		"sixteens are 14.50, twelves too":                 "price rails 192 in = 14.50; price rails 144 in = 14.50",
		"2x6 for the rails and the stiffeners too":        "rail size = 2x6; stiffener size = 2x6",
		"2x6 for the rails, stiffeners too":               "rail size = 2x6; stiffener size = 2x6",
		"rails are 2x6 and so are the posts":              "rail size = 2x6; post size = 2x6",
		"2x6 rails and the posts as well":                 "rail size = 2x6; post size = 2x6",
		"brackets 3.49, bases too":                        "price bracket = 3.49; price post base = 3.49",
		"brackets 3.49, anchors as well":                  "price bracket = 3.49; price anchor = 3.49",
		"first one more rail, then gap 2":                 "rails += 1; gap = 2 in",
		"rail 1 top at 8, the next at 16":                 "rail 1 top = 8 in; rail 2 top = 16 in",
		"second rail top at 16, the next one at 24":       "rail 2 top = 16 in; rail 3 top = 24 in",
		"gap 2 and twice that at the bottom":              "gap = 2 in; bottom gap = 2 * gap",
		"gap 2, and half that under the bottom":           "gap = 2 in; bottom gap = 1/2 * gap",
		"gap 2 but not at the bottom":                     "gap = 2 in",
		"undo both":                                       "undo; undo",
		"undo both and show me the cuts":                  "undo; undo; ask cuts",
		"undo both of my changes":                         "undo; undo",
		"undo, undo":                                      "undo; undo",
		"take that back and the one before":               "undo; undo",
		"undo the last change and the one before":         "undo; undo",
		"go with that but with gap 2":                     "take that; gap = 2 in",
		"ok do that but with five rails":                  "take that; rails = 5",
		"take that, gap 2":                                "take that; gap = 2 in",
		"gap 2, rails?":                                   "gap = 2 in; ask rails",
		"gap 2, wall?":                                    "gap = 2 in; ask wall height",
		"2 inches under the bottom one and between rails": "bottom gap = 2 in; gap = 2 in",
		"2 inches between the rails and under the bottom": "gap = 2 in; bottom gap = 2 in",
		"the plan says wall 48, but we want 46":           "check wall height = 48 in; wall height = 46 in",
		"gap 2 and a half at the bottom":                  "bottom gap = 2-1/2 in",
		"we need two more 2x6 twelves":                    "extra 2x6 144 in x 2",
		"six rails and where do the posts go":             "rails = 6; ask posts",
		"two bays of 60":                                  "bays = 2; bay = 60 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range []string{
		"twelves are 11 but no sixteens", "no twelves, only sixteens", "no tens, just eights", "twelves except for the 4x4", "what if they have tens but no twelves",
		"tens yes, twelves no", "no, tens", "twelves are 11 and so are tens", "tens are 9 and so are twelves",
		"all but one bay at 60", "all but two bays 60", "all but the first bay 60", "all but two rails are 2x6", "all but one post 4x4", "all but the bottom gap 2",
		"gap 2 and a half inch bottom gap", "gap 3 and half an inch under the bottom", "bottom gap 2 and half inch gaps", "gap 2 and half a foot bottom gap", "rails 5 and a quarter more gap",
		"gap 2 and a quarter more at the bottom", "bottom gap 3 and a quarter less gap", "gap 2 and half an inch more wall", "gap 2 and half of that at the bottom",
		"opening 30 and half of that from the left", "span 120 and a third of that for the opening", "gap 2 and a quarter inch fit", "wall 48 and half an inch fit",
		"one rail at the bottom and two above it", "two rails at the bottom and four above", "I have two more 2x6 twelves", "I've got three 2x6 eights more", "I've got two more rails",
		"wall lower by two, posts as well", "wall lower by two, and so the posts", "two stiffeners and posts", "six rails and posts", "I have four 2x6 tens and the posts", "no posts, stiffeners instead",
		"left post leans in a quarter in 48, the right one out", "left post leans in a quarter in 48 and so does the right", "right post leans in a quarter in 48, the left the other way",
		"2 inches under the bottom one and above", "post two higher than the wall and the wall two lower", "spare ten percent and two boards", "spare 10% and three boards", "gap 2 plus a quarter at the bottom",
		"opening 30 wide and 40 from left and right", "the sketch has six rails, gap 2, but I want five", "two stiffeners in bay 1 and three", "I've four 2x6 tens, use two", "one bay is 60", "take two rails", "undo those",
		"no 4x4 twelves but tens", "they have 4x4 tens, no 4x4 twelves", "they have 2.4 m and 3 m but no 3.6 m", "out of all but the tens", "they have no boards but twelves", "swap the tens for twelves", "they have two more lengths, tens and twelves",
		"gap 2 and rails", "wall 48 and bays", "two more rails and stiffeners", "most bays are 60", "every second bay is 60", "all but one opening 30", "gap 2 and a half inch higher wall", "gap 2 and half the rails",
		"rail 1 top 8, then 16", "first opening 30, next one 36", "stiffeners 24 apart, the first at 12",
		"redo both", "they say six rails and a 2 inch gap, we want seven", "buy 10% more and two boards", "bay 1 has two stiffeners and three", "two stiffeners in bay 1 and one more in bay 2",
		"the first bay is 60, one bay is 48", "one section is 60", "one post is 4x4", "two rails are 2x6",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
