package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What tape, level and plumb line say, what it costs and what will not do, in full sentences, and what only looks like them.
func TestReadingsTold(t *testing.T) {
	for said, want := range map[string]string{
		"Put the four foot level on the left post and it tips in toward the other post by three sixteenths over the length of the level.": "left post leans 3/16 in right in 48 in",
		"The right post isn't plumb: its top is half an inch farther left than its foot, measured over forty inches.":                     "right post leans 1/2 in left in 40 in",
		"The right end post tips toward the left one by a quarter inch over a yard.":                                                      "right post leans 1/4 in left in 36 in",
		"right post leans to the left, half an inch in five foot":                                                                         "right post leans 1/2 in left in 60 in",
		"we ground the high spot off, floor's the same height at both end posts now":                                                      "floor at right = 0 in",
		"the slab sits at the same height at both end posts":                                                                              "floor at right = 0 in",
		"Our patio was poured so that the rain runs off to the right; it falls a quarter of an inch in every foot.":                       "floor falls 1/4 in per 12 in",
		"his drawing has no fall in the floor at all, but I find the right end three quarters of an inch higher than the left":            "check floor at right = 0 in; floor at right = 3/4 in",
		"I'd written down 137 for the clear distance between the end posts, but the hook was bent, so it should be 136 5/8.":              "span = 136-5/8 in",
		"The top of bay two isn't 70 1/4 after all; I've read it again with my glasses on and it's 70 1/16.":                              "measured bay 2 top = 70-1/16 in",
		"bay 2, going up from the bottom rail: 58-1/2, 58-9/16, 58-5/8":                                                                   "measured bay 2 rail 1 = 58-1/2 in; measured bay 2 rail 2 = 58-9/16 in; measured bay 2 rail 3 = 58-5/8 in",
		"The bottom board is screwed on already and it stays. Its top is at 6 3/4.":                                                       "fixed rail 1 top = 6-3/4 in",
		"The top of the third rail has to meet the window sill, and that's at 25 and a half above the floor.":                             "rail 3 top = 25-1/2 in",
		"These rails came off an old fence, so they're skinny: five and a quarter across the face.":                                       "rail face = 5-1/4 in",
		"I ran a scrap through the saw and the slot is 3/32 wide":                                                                         "kerf = 3/32 in",
		"board ends are all split from lying out so i lose half an inch off every one just squaring it up":                                "trim = 1/2 in",
		"between the two boards that are up i measure two and three sixteenths, so use two and three sixteenths for all the gaps":         "gap = 2-3/16 in",
		"The ground beyond the wall is some thirty inches lower, I would guess.":                                                          "drop ~ 30 in",
		"they're out of sixteens till friday and I'm not waiting":                                                                         "stock -= 192 in",
		"He charges 7.80 for an eight foot 2x6, and I've already got two of those.":                                                       "price 2x6 96 in = 7.80; have 2x6 96 in x 2",
		"Two hundred and eighty dollars at the very most for materials, and do it as cheaply as you can.":                                 "budget = 280.00; cheapest",
		"Suppose I got everything in fourteens, what would that cost me?":                                                                 "what if stock = 168 in; ask cost",
		"She reckons it won't come to more than 310 dollars, can you verify that?":                                                        "check cost <= 310.00",
		"a gap of more than 3 1/2 is out of the question":                                                                                 "gap <= 3-1/2 in",
		"an opening of less than thirty is no use to me":                                                                                  "opening >= 30 in",
		"about two and a half between the boards but in no case more than three":                                                          "gap ~ 2-1/2 in; gap <= 3 in",
		"Please bring the gap as low as it will go, but never under an inch and a half.":                                                  "smallest gap; gap >= 1-1/2 in",
		"why can't the bays go beyond 72":                                                                                                 "why not bay > 72 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for said, not := range map[string]string{
		"the floor is not level between the end posts":                                  "floor at right = 0 in",
		"is the floor the same height at both ends?":                                    "floor at right = 0 in",
		"I don't know if a gap of more than 3 is out of the question":                   "gap <= 3 in",
		"take that last price back to the store":                                        "undo",
		"theirs is 41 to the top, so make ours 43 high":                                 "wall height = 41 in",
		"if the gap is 2, so make ours 2 high":                                          "gap = 2 in",
		"the left post is not out of plumb, its top is 1/2 to the left in 40 last week": "left post leans 1/2 in left in 40 in",
		"bay 2 is not from the bottom up: 60, 61":                                       "measured bay 2 rail 1 = 60 in; measured bay 2 rail 2 = 61 in",
		"I thought these rails were five and a quarter across the face":                 "rail face = 5-1/4 in",
		"we had 137 for the span, but maybe it should be 136":                           "span = 136 in",
	} {
		require.NotEqual(t, not, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
