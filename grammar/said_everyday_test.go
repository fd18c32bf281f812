package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Turns of phrase of the site, the yard and the kitchen table, and what only looks like them.
func TestEverydayTurns(t *testing.T) {
	for said, want := range map[string]string{
		"may I see the measurements for cutting the boards?":                                       "ask cuts",
		"total it up for me and list the boards I still have to get":                               "ask cost; ask shopping",
		"mm please: no bay above 1750":                                                             "units = metric; bay <= 1750 mm",
		"yeah i'm stacking five of 'em and they're two by eights":                                  "rails = 5; rail size = 2x8",
		"drop that low board down so it's only an inch and three quarters off the ground":          "bottom gap = 1-3/4 in",
		"keep any one bay from going past five foot ten":                                           "bay <= 70 in",
		"we are hoping to put up a wall that reaches 3 feet 10 inches above the patio":             "wall height = 46 in",
		"bay 1 fourth rail from the bottom reads 63-9/16":                                          "measured bay 1 rail 4 = 63-9/16 in",
		"sign says 12.89 for a 2x6x12":                                                             "price 2x6 144 in = 12.89",
		"deck screws are 11.50 a box of 100 and post caps are 6 bucks each":                        "price screws 100 = 11.50; price post cap = 6.00",
		"the estimate I got is $412.60, is that about what you come up with":                       "check cost = 412.60",
		"gimme a three foot walk through and shove it up against the right hand post":              "opening = 36 in; opening side = right",
		"Let's make the gaps 2 1/2 inches. Actually, I would rather have 2 1/4 inches.":            "gap = 2-1/4 in",
		"if you believe him, no gap comes out bigger than 3 inches":                                "check gap <= 3 in",
		"what's the reason the wall can't go lower than 40":                                        "why not wall height < 40 in",
		"he's got the new post ending 1-1/4 below the top of the wall, can he do that":             "check post height = wall height - 1-1/4 in",
		"stock: out of 12', add 14'":                                                               "stock -= 144 in; stock += 168 in",
		"there's eleven foot nine of daylight from one end post over to the other":                 "span = 141 in",
		"slab runs downhill to the right three quarters of an inch from one end post to the other": "floor at right = -3/4 in",
		"top of this wall's finishing out at forty six and three quarters above the patio":         "wall height = 46-3/4 in",
		"gap 2 3/8 s/b 2 1/8":                                                                                    "gap = 2-1/8 in",
		"if gap 2-3/8 then wh?":                                                                                  "what if gap = 2-3/8 in; ask wall height",
		"opening not under 85 cm and not over 1 m":                                                               "opening >= 850 mm; opening <= 1000 mm",
		"nope nope that's wrong the doorway's thirty three not thirty one":                                       "opening = 33 in",
		"ignore what he drew and tell me which board counts would fit":                                           "ask options",
		"so how many boards you figure that takes in each bay":                                                   "ask rails",
		"don't let it go over 310 bucks":                                                                         "budget = 310.00",
		"is there something that keeps us from dropping to four boards":                                          "why not rails = 4",
		"what could go wrong here that I should know about":                                                      "ask cautions",
		"never mind what I read off at the bottom of bay 2":                                                      "forget measured bay 2 bottom",
		"Good afternoon! My contractor left me two end posts with 9 feet 10 inches of clear space between them.": "span = 118 in",
		"one metre fifteen up from the terrace to the top of the wall":                                           "wall height = 1150 mm",
		"nail two stiffeners on each panel and use one by six for em":                                            "stiffeners = 2; stiffener size = 1x6",
		"nope don't like it put that last one back":                                                              "undo",
		"how close can i get the boards before them brackets start hitting":                                      "ask bracket clearance",
		"gap if 5 rails?": "what if rails = 5; ask gap",
		"the doorway need not be 40 inches wide; let us make it 34":                                  "opening = 34 in",
		"thirty four's the skinniest i'll go on the doorway":                                         "opening >= 34 in",
		"who came up with 1-7/8 for the bottom gap, and how":                                         "why bottom gap",
		"scratch 70-1/4, bay 2 bottom's 70-3/8":                                                      "measured bay 2 bottom = 70-3/8 in",
		"would it still work with the wall at 40 inches":                                             "what if wall height = 40 in",
		"whoever drew this has the stiffeners 18 inches apart":                                       "check stiffener spacing = 18 in",
		"5 rails, 2x6, 2-7/8 btwn":                                                                   "rails = 5; rail size = 2x6; gap = 2-7/8 in",
		"clear space of 48 mm from one slat to the next":                                             "gap = 48 mm",
		"I don't need to know why, only how many boards.":                                            "ask rails",
		"Would you kindly list the materials for me, along with the total price?":                    "ask shopping; ask cost",
		"Would you kindly add a quarter of an inch to each of the gaps?":                             "gap += 1/4 in",
		"chg gap to 2-1/8, was 2":                                                                    "gap = 2-1/8 in",
		"he left out the brackets, they're an eighth thick":                                          "bracket thickness = 1/8 in",
		"I'd rather work in mm than inches":                                                          "units = metric",
		"the slab runs downhill three quarters of an inch by the time you're at the right hand post": "floor at right = -3/4 in",
		"gap 3. rails 6. actually gap 2":                                                             "gap = 3 in; rails = 6; gap = 2 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{"a wall that reaches my neighbor's, 3 feet", "he shoved it against the left post", "all the money in the world", "whoever painted this did it well", "the doorway need not be 40 inches wide", "forget what he said, the opening is 30", "put that board back", "don't let it go over 42 inches", "he'd have guessed fewer"} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
}
