package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// People with ways of their own name the thing first, lead up to a wish, and tell where the boards lie by names that nobody knows. Everyday speech, no source.
func TestOwnTurns(t *testing.T) {
	for said, want := range map[string]string{
		"I'm sorry to be fussy, but could you make the doorway two inches narrower":                                        "opening -= 2 in",
		"not to be difficult, but make the gap 2":                                                                          "gap = 2 in",
		"The gentleman who came by quoted us 412 dollars for the material":                                                 "check cost = 412.00",
		"blade's chewing out three thirty seconds":                                                                         "kerf = 3/32 in",
		"half-inch trim, eighth kerf":                                                                                      "trim = 1/2 in; kerf = 1/8 in",
		"eighth inch kerf":                                                                                                 "kerf = 1/8 in",
		"eight percent spare on everything":                                                                                "spare = 8%",
		"Give me five percent more opening":                                                                                "opening *= 21/20",
		"let me have an inch and a half more room in the walk-through":                                                     "opening += 1-1/2 in",
		"Could we take the second way out you offered?":                                                                    "take 2",
		"brackets are 3.65 apiece here, and his total comes to 290 dollars":                                                "price bracket = 3.65; check cost = 290.00",
		"On the water side the ground lies two foot five below the floor.":                                                 "drop = 29 in",
		"Ground's eighteen inches lower on the field side":                                                                 "drop = 18 in",
		"That last thing I said, take it back.":                                                                            "undo",
		"Bad cue, take that back.":                                                                                         "undo",
		"Undo that last one and read me back what's left.":                                                                 "undo; recap",
		"I'd like barn side compared with back lane, there's no hurry.":                                                    "compare barn side, back lane",
		"What should I watch out for, before I ruin good lumber?":                                                          "ask cautions",
		"The post I'm adding, run it two and a half inches over the top of the wall.":                                      "post height = wall height + 2-1/2 in",
		"Forget all but the wall height, and we'll go on from there.":                                                      "forget all but wall height",
		"Would two openings fit at twenty-eight each?":                                                                     "what if openings = 2, opening = 28 in",
		"Stiffeners two in each bay; bay two gets one.":                                                                    "stiffeners = 2; bay 2 stiffeners = 1",
		"ok so were doing 42 tall n 2x6s for the boards":                                                                   "wall height = 42 in; rail size = 2x6",
		"opening in the middle, n make all the bays the same width":                                                        "opening side = middle; equal bays",
		"seven rails, could we":                                                                                            "what if rails = 7",
		"save this as nest ok, then start over":                                                                            "save nest; start over",
		"between the posts it's eleven foot, and the left one has leaned in a quarter inch over four foot since the frost": "span = 132 in; left post leans 1/4 in right in 48 in",
		"I can spare two hundred and sixty dollars for it":                                                                 "budget = 260.00",
		"gap 2, opening twelve times the gap":                                                                              "gap = 2 in; opening = 12 * gap",
		"nooo put it back how it was":                                                                                      "undo",
		"heyyy what's the gap":                                                                                             "ask gap",
		"what if the gap was 3/4 less and I add a board":                                                                   "what if gap -= 3/4 in, rails += 1",
		"what if the gap was an inch less and I lose a board":                                                              "what if gap -= 1 in, rails -= 1",
		"Suppose they closed the gap to 1-7/8; what's the wall height then?":                                               "what if gap = 1-7/8 in; ask wall height",
		"seven foot a bay, tops":                                                                                           "bay <= 84 in",
		"boss says forty-four tall with five boards, that wash?":                                                           "check wall height = 44 in, rails = 5",
		"I've already got, let me count, seven two by sixes in the garage, all ten footers":                                "have 2x6 120 in x 7",
		"Whoops, I shouldn't have said that last one, take it back":                                                        "undo",
		"what if the rails were ripped down to a 4-3/4 inch face":                                                          "what if rail face = 4-3/4 in",
		"saw kerf is an eighth, and trimming takes a quarter inch per board":                                               "kerf = 1/8 in; trim = 1/4 in",
		"opening at 52 from the left post and don't let it run over thirty-six wide":                                       "opening from left = 52 in; opening <= 36 in",
		"I misspoke about the opening; thirty-four inches it is, not thirty.":                                              "opening = 34 in",
		"Doorway starts forty-four from the right post and it's thirty-two clear, so how wide is bay one":                  "opening from right = 44 in; opening = 32 in; ask bay 1",
		"take the 2nd way, wheres my marks":                                                                                "take 2; ask marks",
		"The nice young man at the yard sells only eight-footers and ten-footers.":                                         "stock = 96 in, 120 in",
		"Since my wife likes to look out over it from her chair, I would keep the wall to 38 inches or lower.":             "wall height <= 38 in",
		"third rail up, top of it at twenty-five and a half":                                                               "rail 3 top = 25-1/2 in",
		"the whole thing is thirteen feet end to end":                                                                      "overall = 156 in",
		"what's the cheapest way to do this":                                                                               "what if cheapest",
		"wall 48 👍":                                                                                                        "wall height = 48 in",
		"In my cupboard I have eleven eight foot two by sixes":                                                             "have 2x6 96 in x 11",
		"three 8-foot 4x4s left over from the mailbox":                                                                     "have 4x4 96 in x 3",
		"we already have five 8ft 2x6s in the old bed and two 8ft 4x4s":                                                    "have 2x6 96 in x 5; have 4x4 96 in x 2",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range []string{
		"wall 48 👎", "gap twooo", "siiix rails", "the gap is 3 on the water side", "in my dream there are six rails", // a picture that says no, a side of what, a dream
		"gap two and a", "gap two and a.", "gap two and an", "wall 48 high and.", "six rails and the", "what if six rails and a", "gap between 40 mm and.", // cut short
		"Why's the doorway on that side, and why can't it be in the middle", "Walk me through the gap, and then show me the whole sum if you would.", // nothing that is asked is lost
		"bay 2 1/2 inch wider", "widen bay 2 1/4", "bay two eighths wider", "bay 1 3/4 of bay 2", "bay 1 is over by an inch", "cut them an eighth more", "seven rails take longer", "six rails would look lower",
		"once I use six rails, is bay 1 under 60", "six rails, is bay 1 under 60", "a 30 inch opening, is bay 1 still 60", "the gap will be two with six rails", "gap between two and three, better two and a half if it fits",
		"ooh yes go with that, and whats it gonna cost us", "ooh save it as porch, what's the gap", "ooh go with that, what's the gap", // the order is not lost
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
	for said, want := range map[string]string{"before I save this, what's the gap": "ask gap", "4x6 posts, max bay 6 1/2'": "post size = 4x6; bay <= 78 in", "why six rails and why not five": "why rails; why not rails = 5", "cuts as csv pls n draw it to corner.svg": "ask cuts as csv; draw to corner.svg",
		"One stiffener to a bay, the timber being one by four, and what spacing of stiffeners does that give?": "stiffeners = 1; stiffener size = 1x4; ask stiffener spacing",
		"yes go with that": "take that", "six rails and then": "rails = 6"} {
		assert.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
