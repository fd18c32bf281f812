package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What somebody else says, drew, wrote or promised, what stands beside it, and what only looks like it.
func TestHearsay(t *testing.T) {
	for said, want := range map[string]string{
		"on his drawing the doorway measures 31-1/2 and sits against the right post":                                           "check opening = 31-1/2 in, opening side = right",
		"my brother-in-law's drawing puts 5 rails at 2-7/8\" gaps and calls the wall 43\" tall, true?":                         "check rails = 5, gap = 2-7/8 in, wall height = 43 in",
		"my brother-in-law's got five boards down, 2-3/4\" spaces, 39\" to the top of the wall, is he right?":                  "check rails = 5, gap = 2-3/4 in, wall height = 39 in",
		"clear between the end posts is 13 ft 1 1/4 in and two posts get added, which makes a 26 1/2 opening according to him": "span = 157-1/4 in; added posts = 2; check opening = 26-1/2 in",
		"wall is 46 tall with six boards, which gives a gap of 2-1/4 if my brother's right":                                    "wall height = 46 in; rails = 6; check gap = 2-1/4 in",
		"if you go by the drawing, just a single post gets added":                                                              "check added posts = 1",
		"if I believe him the span is 12 foot 4":                                                                               "check span = 148 in",
		"run the numbers on his five boards with 3 & 3/8 between, do they hold up":                                             "check rails = 5, gap = 3-3/8 in",
		"is it so that the new post ends up even with the top of the wall?":                                                    "check post height = wall height",
		"supposedly the lowest board clears the ground by 3-1/4; where do you have it":                                         "check bottom gap = 3-1/4 in; ask bottom gap",
		"supposedly there's room for seven boards":                                                                             "check rails = 7",
		"stiffeners every 18\" on the plan she sent me":                                                                        "check stiffener spacing = 18 in",
		"she's promising the walk-through won't be any less than 29 1/2":                                                       "check opening >= 29-1/2 in",
		"ck 5 bds w/ 2-5/8 gaps": "check rails = 5, gap = 2-5/8 in",
		"what they sent me shows three bays and two walk-throughs, each 31 inches wide":                       "check bays = 3, openings = 2, opening = 31 in",
		"what the last contractor had on paper: top of the wall 38-1/2, four rails, 2x8":                      "check wall height = 38-1/2 in, rails = 4, rail size = 2x8",
		"the original has 1x6 for the stiffeners, never further than 20\" on center":                          "check stiffener size = 1x6, stiffener spacing <= 20 in",
		"whoops, wrong page: her drawing shows a 31 inch doorway, not 34":                                     "check opening = 31 in",
		"leave her drawing out of it and run your own numbers":                                                "ask layout",
		"he's asking whether seven boards spaced an inch and three quarters apart come to a four foot wall":   "check rails = 7, gap = 1-3/4 in, wall height = 48 in",
		"they're asking if the doorway is 34 wide":                                                            "check opening = 34 in",
		"her plan takes the rails as 5 1/2 wide, I get five and three-eighths with my tape":                   "check rail face = 5-1/2 in; rail face = 5-3/8 in",
		"I measured 5-7/16 across a board but the plan takes them as 5-1/2":                                   "rail face = 5-7/16 in; check rail face = 5-1/2 in",
		"Is it right that 7 rails at 2 1/8 apart come out about 51 tall?":                                     "check rails = 7, gap = 2-1/8 in, wall height ~ 51 in",
		"can you check whether five boards at three inches gets me to 44":                                     "check rails = 5, gap = 3 in, wall height = 44 in",
		"her plan puts the wall's top edge at three foot one above the slab":                                  "check wall height = 37 in",
		"according to her the doorway comes in under two and a half feet":                                     "check opening < 30 in",
		"he's saying it takes a 2 1/4 gap before the brackets quit touching":                                  "check bracket clearance = 2-1/4 in",
		"the drawing is marked 12'10\" center to center, with 6x6s for posts":                                 "check centers = 154 in, post size = 6x6",
		"their section has 3 5/8 below the bottom rail and 2 1/4 between the rest, does it add up":            "check bottom gap = 3-5/8 in, gap = 2-1/4 in",
		"the layout I was given has the end posts at 12'10\" on center, is that so":                           "check centers = 154 in",
		"if we don't go with hers, what are the other ways of doing it":                                       "ask options",
		"suppose his five rails are right and it's the gap that should be 3 1/16":                             "what if rails = 5, gap = 3-1/16 in",
		"I think he said the kerf is an eighth":                                                               "check kerf = 1/8 in",
		"tell me if this is off: 5 boards, gap 3-1/8, 40-1/2 high":                                            "check rails = 5, gap = 3-1/8 in, wall height = 40-1/2 in",
		"would the 34 inch doorway he drew work":                                                              "check opening = 34 in",
		"she told us the ground's 14 inches below the slab":                                                   "check drop = 14 in",
		"he wrote 3/8 for the kerf, can't be right can it":                                                    "check kerf = 3/8 in",
		"the drawing gives 3-1/4 under the bottom board, I only have 3":                                       "check bottom gap = 3-1/4 in; bottom gap = 3 in",
		"tell him he's wrong, it's five boards":                                                               "rails = 5",
		"ignore the plan and give me your own cuts":                                                           "ask cuts",
		"does the height of 43 on the drawing hold up":                                                        "check wall height = 43 in",
		"sheet 2: wh 44, 5 rls, gap 2-3/4, ok?":                                                               "check wall height = 44 in, rails = 5, gap = 2-3/4 in",
		"did my brother get the span right? he had 13 foot 2":                                                 "check span = 158 in",
		"Someone on the forum wrote that a gap of more than four inches is unsafe.":                           "check gap <= 4 in",
		"would you double-check my sister's math? six boards, 2-1/4 gap, 47 to the top":                       "check rails = 6, gap = 2-1/4 in, wall height = 47 in",
		"go with what she drew: five boards, three inches between":                                            "rails = 5; gap = 3 in",
		"the drawing's wrong, it should be two stiffeners":                                                    "stiffeners = 2",
		"the clerk said the brackets are 4.25 apiece":                                                         "price bracket = 4.25",
		"we worked out a bay of 61-1/4, is it correct?":                                                       "check bay = 61-1/4 in",
		"Our wall will be 40 inches tall, and we imagine about 3 1/4 inches of space below the lowest board.": "wall height = 40 in; bottom gap ~ 3-1/4 in",
		"have that new upright run two and a quarter higher than the wall":                                    "post height = wall height + 2-1/4 in",
		"right, the doorway goes on the left":                                                                 "opening side = left",
		"mark the brackets down at 3.85 each":                                                                 "price bracket = 3.85",
		"I can spare another forty dollars, put that on top of the budget":                                    "budget += 40.00",
		"what would I save if I went with four boards":                                                        "what if rails = 4; ask cost",
		"I don't mind the gap going over three inches, as long as it's not over three and a half":             "gap <= 3-1/2 in",
		"the doorway doesn't have to be 36, all I ask is that it's 32 or more":                                "opening >= 32 in",
		"it doesn't have to be 46 high exactly, just thereabouts":                                             "wall height ~ 46 in",
		"sixteen inches on center is the closest I'd put the stiffeners":                                      "stiffener spacing >= 16 in",
		"there's no drop beyond the wall anymore, they filled it in level":                                    "drop = 0 in",
		"how high would five boards stand with two and a quarter between them":                                "what if rails = 5, gap = 2-1/4 in; ask wall height",
	} {
		require.Equal(t, want, Normal(Read(said, Context{}).Acts), said)
	}
	for _, said := range []string{
		"I'll give you the gap once I've measured", "I'll tell you how many boards once they're here", "ask me about the doorway again tomorrow",
		"I could see it with five boards and I could see it with six", "I haven't made up my mind between 2x4 and 2x6 rails",
		"sorry, I was talking to my son, the six boards are for his shed", "the six boards are for my sister's deck", "The boards should be spaced nicely, please.",
		"no idea what she put for the gap", "what did he say the gap was", "I lost the drawing", "he says his own wall is 50 high",
		"right, no, left", "he's asking whether I'm done", "she's promising to call about the gap", "what they sent me is no good", "what they sent me has three rotten boards", "it's marked 32 on the tape", "if the plan is right, what is the gap", "the plan she sent me is torn",
		"spare me a minute", "I can spare another forty dollars", "mark the brackets down", "the original is in the truck", "supposedly it will rain",
		"does it check out", "did my brother get the span right?",
	} {
		require.Empty(t, Read(said, Context{}).Acts, said)
	}
}
