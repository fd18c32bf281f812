package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Turns of phrase of a day's work at the wall, and what only looks like them.
func TestWorkdayTurns(t *testing.T) {
	for said, want := range map[string]string{
		"suppose i drop down to four boards what'll that do to the gap":                              "what if rails = 4; ask gap",
		"if we hung five rails with two and an eighth between, how much would be left at the bottom": "what if rails = 5, gap = 2-1/8 in; ask bottom gap",
		"say i dropped to four boards how big do the gaps get":                                       "what if rails = 4; ask gap",
		"I want fewer boards than seven":                                                             "rails < 7",
		"he has more boards than six":                                                                "check rails > 6",
		"drop the gap from two and a half down to two and an eighth":                                 "gap = 2-1/8 in",
		"go from six boards down to five":                                                            "rails = 5",
		"every section 80 inches or shorter and 34 at least to walk through":                         "bay <= 80 in; opening >= 34 in",
		"more than 30 but less than 80 mm under the lowest slat":                                     "bottom gap > 30 mm; bottom gap < 80 mm",
		"op mid, 34 w":                   "opening side = middle; opening = 34 in",
		"they've got fourteens here too": "stock += 168 in",
		"keep an inch and three quarters open underneath the lowest board": "bottom gap = 1-3/4 in",
		"she claims there's 27 left for the doorway":                       "check opening = 27 in",
		"14 ft 7 1/2 in from post center to post center, 6x6 posts":        "centers = 175-1/2 in; post size = 6x6",
		"brkts need 1-5/8 to clear ea other":                               "bracket clearance = 1-5/8 in",
		"call off the marks for me one by one":                             "ask marks",
		"the gap ended up 3":                                               "gap = 3 in",
		"the gap went from 2 to 3":                                         "gap = 3 in",
		"sorry, the posts are not 4x4 but 6x6":                             "post size = 6x6",
		"the wall is not 40 inches tall as I told you, it is 43 1/2":       "wall height = 43-1/2 in",
		"what if the yard only sold tens and fourteens":                    "what if stock = 120 in, 168 in",
		"list the things I've mentioned up to this point":                  "recap",
		"how do patio and side yard compare with each other":               "compare patio, side yard",
		"it's 14 foot 3 from the house to the corner post":                 "span = 171 in",
		"the deck runs 15 feet between the end posts":                      "span = 180 in",
		"undo that too": "undo",
		"What would happen, please, if we made the wall 4 inches lower?":            "what if wall height -= 4 in",
		"the added post should stick out 8 cm above the top of the wall":            "post height = wall height + 80 mm",
		"how would things change if the wall came down three inches":                "what if wall height -= 3 in",
		"raise my budget by thirty five bucks and give me the list of stuff to buy": "budget += 35.00; ask shopping",
		"We'd like the doorway to come out as wide as you can manage.":              "largest opening",
		"I'm measuring in mm from here, wall height 1050, nine boards":              "units = metric; wall height = 1050 mm; rails = 9",
		"run me the marks":                     "ask marks",
		"post locs":                            "ask posts",
		"help me find where the new post goes": "ask posts",
		"And the doorway, if I may, should be exactly in the middle.":                                 "opening side = middle",
		"buy me two boards more than the job takes":                                                   "spare = 2",
		"why don't we make it six boards and be done with it":                                         "rails = 6",
		"Please give me a design with as few boards as possible.":                                     "fewest rails",
		"Would you be so kind as to repeat back all that you have noted from me?":                     "recap",
		"I'm afraid I can't read my tape measure any finer than a quarter of an inch.":                "tape = 1/4 in",
		"Would things improve if the gap were 3/8 of an inch wider?":                                  "what if gap += 3/8 in",
		"is there some reason the gap can't go below two inches":                                      "why not gap < 2 in",
		"is there some reason the doorway can't go out to 42":                                         "why not opening = 42 in",
		"I wanted a 32 inch walk-through, why isn't that possible":                                    "why not opening = 32 in",
		"so how come the doorway landed on the left":                                                  "why opening side",
		"just to see, don't set it yet: two and five eighths for the gap":                             "what if gap = 2-5/8 in",
		"what would a gap of 52 mm leave for the wall height":                                         "what if gap = 52 mm; ask wall height",
		"Please use the smallest number of slats that will work.":                                     "fewest rails",
		"uh shove the walk through over against the right hand post and hold it at thirty four clear": "opening side = right; opening = 34 in",
		"uh stack me up seven of em per section and keep em an inch and seven eighths apart":          "rails = 7; gap = 1-7/8 in",
		"We have decided against the vertical braces, so please use none.":                            "stiffeners = 0",
		"six rails is too many, go with five":                                                         "rails = 5",
		"slab runs downhill to the right an inch and a quarter all told":                              "floor at right = -1-1/4 in",
		"Our total for the materials must stay at or below $420, please.":                             "budget = 420.00",
		"sixteen foot two by eights I can do for 21.90":                                               "price 2x8 192 in = 21.90",
		"how thick did we say the brackets were, and how much do we lose to the saw":                  "ask bracket thickness; ask kerf",
		"gap 55 mm, that's a bit over two inches":                                                     "gap = 55 mm",
		"bay one, low end 63 7/16, up top 63 11/16":                                                   "measured bay 1 bottom = 63-7/16 in; measured bay 1 top = 63-11/16 in",
		"what'd happen to the height if the gaps shrank by an eighth":                                 "what if gap -= 1/8 in; ask wall height",
		"how come the bays can't go over seven foot":                                                  "why not bay > 84 in",
		"reckon it'd still work with the bottom board five inches up?":                                "what if bottom gap = 5 in",
		"How tall will the new post be, and where should I put it?":                                   "ask post height; ask posts",
		"no 12' stock, add 14'": "stock -= 144 in; stock += 168 in",
		"he reckons the bottom gap is four inches, I put a ruler to it and it's three and a quarter": "check bottom gap = 4 in; bottom gap = 3-1/4 in",
		"shave three eighths off the space between boards and then spit the layout back at me":       "gap -= 3/8 in; ask layout",
		"teach me the math behind the bottom gap":                                                    "teach bottom gap",
		"I don't trust his numbers, I want five rails and a gap of 3 1/16":                           "rails = 5; gap = 3-1/16 in",
		"grab two boards extra as spares":                                                            "spare = 2",
		"six rails, and I'll fetch the drill":                                                        "rails = 6",
		"the wall is 42 inches high, then I'll call it a day":                                        "wall height = 42 in",
		"what if we opened the walk-through up to 38":                                                "what if opening = 38 in",
		"anything in this I should worry about before I sign off":                                    "ask cautions",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{"six boards a week", "six boards go up tomorrow", "six boards for the bench", "the opening doesn't fit", "the gap is off", "the gap is over by 3", "no need to redo the drawing", "the last guy in here cut every rail a quarter short", "Twenty dollars is the most I'd pay for a sixteen footer.", "she says she'll be here by six with the boards", "suppose we keep six boards and bring the wall down to 46, what's the gap", "we dropped four boards off the truck", "run me over to the yard", "he went down to four", "I haven't decided between five and six boards.", "I don't know yet how high the wall should be.", "take five, everybody", "I've got twenty dollars for lunch",
		"spacing's twenty four", "they bought 2 gates", "take that end would you", "save the offcuts for the stove", "where did I put my pencil", "how long till the truck gets here", "I already made the cuts", "gap's gonna be uh two and uh somethin"} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
}
