package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Corrections, changes and orders in one breath, and what only looks like them.
func TestOneBreath(t *testing.T) {
	for said, want := range map[string]string{
		// What is corrected is not asked, done or named.
		"what's the gap, I mean the bottom gap":                                  "ask bottom gap",
		"how wide is the opening, sorry, the bay":                                "ask bay",
		"show me the cuts, er, the marks":                                        "ask marks",
		"why is the gap, I mean the bottom gap, what it is":                      "why bottom gap",
		"forget the opening, I mean the gap":                                     "forget gap",
		"undo that, no, actually start over":                                     "start over",
		"undo that, no, redo it":                                                 "redo",
		"bring the gap up an eighth, no, down an eighth":                         "gap -= 1/8 in",
		"lower the gap a quarter, sorry, raise it a quarter":                     "gap += 1/4 in",
		"the new post's two inches over the wall, no, two inches under the wall": "post height = wall height - 2 in",
		"12'4\" face to face, er, center to center":                              "centers = 148 in",
		"rail 3 in bay 1, I mean rail 4, measures 64 7/8":                        "measured bay 1 rail 4 = 64-7/8 in",
		"bay 1, I mean bay 2, is 64 wide":                                        "bay 2 = 64 in",
		"bottom of bay 1, I mean bay 2, measures 61":                             "measured bay 2 bottom = 61 in",
		"On the east wall, I mean the west wall, the gap is 2 1/8.":              "west wall: gap = 2-1/8 in",
		"5-7 rails, correction 4-6 rails":                                        "rails in 4..6",
		"add a board, no, take one out":                                          "rails -= 1",
		// Changes.
		"the space down at the floor oughta be half of what's between the boards": "bottom gap = 1/2 * gap",
		"the gap at the bottom should be half of the space between the boards":    "bottom gap = 1/2 * gap",
		"double the spare":               "spare *= 2",
		"bump the spare up five percent": "spare += 5%",
		"floor at the right post is another quarter inch lower than I had it":      "floor at right -= 1/4 in",
		"raise the base of the added post another half inch off the floor":         "base height += 1/2 in",
		"the ground beyond the wall is six inches lower than I said":               "drop += 6 in",
		"start the opening twice as far from the left post as from the right post": "opening from left = 2 * opening from right",
		"take four inches off the wall and put them on the bottom gap":             "wall height -= 4 in; bottom gap += 4 in",
		"add two to the wall and one to the opening":                               "wall height += 2 in; opening += 1 in",
		"take one stiffener out of bay 2":                                          "bay 2 stiffeners -= 1",
		"put another stiffener in bay 2":                                           "bay 2 stiffeners += 1",
		"the brackets are twice as thick as I said":                                "bracket thickness *= 2",
		"lower the gap a quarter":                                                  "gap -= 1/4 in",
		"raise the wall four inches, add a board":                                  "wall height += 4 in; rails += 1",
		"make the gap 2, add a board":                                              "gap = 2 in; rails += 1",
		"lower the wall four inches, lose a board, draw it":                        "wall height -= 4 in; rails -= 1; ask drawing",
		"gap 2, how tall is it":                                                    "gap = 2 in; ask wall height",
		"raise the wall four inches add a board tell me the gap":                   "wall height += 4 in; rails += 1; ask gap",
		"posts are 4x4 span 140 add a post":                                        "post size = 4x4; span = 140 in; added posts += 1",
		"add three to the opening and take three off bay 2":                        "opening += 3 in; bay 2 -= 3 in",
		"gap an inch and a half wall forty two":                                    "gap = 1-1/2 in; wall height = 42 in",
		"save as north, scratch that, save as south":                               "save south",
		"scratch the last two things I said":                                       "undo; undo",
		"my brother says seven boards and my dad says six, which one's right":      "check rails = 7; check rails = 6",
		"floors 3/4 in higher at the right post":                                   "floor at right = 3/4 in",
		// Orders.
		"undo the last two things I said":                    "undo; undo",
		"take back my last three changes, please":            "undo; undo; undo",
		"undo that twice and draw it":                        "undo; undo; ask drawing",
		"start again, only keep the wall height":             "forget all but wall height",
		"pull the one I called breezeway back up":            "open breezeway",
		"open up the one called back gate what are the cuts": "open back gate; ask cuts",
		"sum up what you've got from me and then draw it":    "recap; ask drawing",
		// Without a stop between.
		"make the doorway two inches wider drop the gap an eighth and tell me if there's anything to watch out for": "opening += 2 in; gap -= 1/8 in; ask cautions",
		"one stiffener in each bay make it a one by four and keep them no more than thirty four apart":              "stiffeners = 1; stiffener size = 1x4; stiffener spacing <= 34 in",
		"blade's an eighth add ten percent and give me the shopping list":                                           "kerf = 1/8 in; spare = 10%; ask shopping",
		"two walk throughs one on the left one on the right thirty four inches each":                                "openings = 2; opening 1 side = left; opening 2 side = right; opening = 34 in",
		// Claims that go on about the same piece are one claim.
		"her sketch has one stiffener in each bay and calls it a one by three, is that allowed": "check stiffeners = 1, stiffener size = 1x3",
		"his drawing has six boards and makes them two by eights, can that be":                  "check rails = 6, rail size = 2x8",
		"he says the marks go at 8, 16 and 24, is that where they go":                           "check marks = 8 in, 16 in, 24 in",
		"he has 14'2\" ctr to ctr, I taped 14'1-1/2\"":                                          "check centers = 170 in; centers = 169-1/2 in",
		"his numbers, pls verify: wh 44, 5 rails, gap 3-1/8":                                    "check wall height = 44 in, rails = 5, gap = 3-1/8 in",
		"he says the stifeners r 20 in apart is that rite":                                      "check stiffener spacing = 20 in",
		"Please leave between two and three inches from the floor to the first board.":          "bottom gap in 2 in..3 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{
		"undo the last few things I said", "should I undo the last two things", "don't undo the last two things", "he said to undo the last two", "undo that, no, don't",
		"just take one of them", "add two to the wall or one to the opening", "bay 1 or bay 2 is 64 wide", "bay 1, not bay 2, is 64 wide", "the brackets aren't a sixteenth thicker",
		"the boards might be an eighth wider than I told you", "nobody told me the gap is 2, is it true", "the yard wants twelve dollars a board", "bring the gap up an eighth, no",
		"gap two make it what you like",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
	require.Equal(t, "rails = 6; ask post height", parse.Normal(Read("rails six, and how tall is that post", act.Context{}).Acts))
	require.Equal(t, "spare = 10%", parse.Normal(Read("add ten percent spare", act.Context{}).Acts))
}
