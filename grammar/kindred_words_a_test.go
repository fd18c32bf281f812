package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Verbs, persons, papers and turns from a to ex are heard as the plainer ones that they stand for.
func TestKindredWordsAHeard(t *testing.T) {
	for line, want := range map[string]string{
		"my wife consents to five rails":                                "rails = 5",
		"the doorway has to admit a 26 inch stroller":                   "opening >= 26 in",
		"the store advertises twelve footers at 11.50":                  "price rails 144 in = 11.50",
		"my builder advocates five rails":                               "check rails = 5",
		"affix two stiffeners to each bay":                              "stiffeners = 2",
		"adhere to a gap of two inches":                                 "gap = 2 in",
		"earmark 375 for lumber":                                        "budget = 375.00",
		"our allocation is 375 dollars":                                 "budget = 375.00",
		"undo that amendment":                                           "undo",
		"I've amassed six twelve foot two by sixes":                     "have 2x6 144 in x 6",
		"could any problems crop up":                                    "ask cautions",
		"the added post ascends two inches above the wall":              "post height = wall height + 2 in",
		"assist me with the gap":                                        "help gap",
		"attempt a gap of two inches":                                   "what if gap = 2 in",
		"corroborate that the gap is two inches":                        "check gap = 2 in",
		"augment the gap by a quarter":                                  "gap += 1/4 in",
		"back this up as porch":                                         "save porch",
		"let's backtrack":                                               "undo",
		"banish one rail":                                               "rails -= 1",
		"he blurted out that the gap is two inches":                     "check gap = 2 in",
		"the yard boasts twelve footers":                                "stock = 144 in",
		"broaden the opening by two inches":                             "opening += 2 in",
		"I can burn through 300 dollars":                                "budget = 300.00",
		"carve out 36 inches for the doorway":                           "opening = 36 in",
		"they've ceased selling twelve footers":                         "stock -= 144 in",
		"christen this porch":                                           "save porch",
		"clarify why six rails":                                         "why rails",
		"clip two inches off the wall height":                           "wall height -= 2 in",
		"the doorway commences 40 inches from the left post":            "opening from left = 40 in",
		"compile a shopping list":                                       "ask shopping",
		"let's compromise on five rails":                                "rails = 5",
		"concoct a layout with five rails":                              "what if rails = 5; ask layout",
		"the blade devours an eighth":                                   "kerf = 1/8 in",
		"I crave a 40 inch doorway":                                     "opening = 40 in",
		"how did you deduce the gap":                                    "why gap",
		"the sketch depicts six rails":                                  "check rails = 6",
		"the floor descends an inch and a half to the right":            "floor at right = -1-1/2 in",
		"enumerate the cuts":                                            "ask cuts",
		"disclose the cost":                                             "ask cost",
		"they discontinued twelve footers":                              "stock -= 144 in",
		"dispense with one rail":                                        "rails -= 1",
		"elevate the wall two inches":                                   "wall height += 2 in",
		"emulate the north wall":                                        "same as north wall",
		"enact the second option":                                       "take 2",
		"enforce a gap under four inches":                               "gap < 4 in",
		"exchange the 2x6 rails for 2x4":                                "rail size = 2x4",
		"the aperture is 36 inches wide":                                "opening = 36 in",
		"two compartments please":                                       "bays = 2",
		"the chinks between the boards are two inches":                  "gap = 2 in",
		"use one batten in each bay":                                    "stiffeners = 1",
		"on what basis do you get six rails":                            "why rails",
		"under no circumstances should the gap exceed three inches":     "gap <= 3 in",
		"my assistant wants five rails":                                 "rails = 5",
		"the rails are birch 2x6":                                       "rail size = 2x6",
		"my wife coaxed me into five rails":                             "rails = 5",
		"bring me up to speed on the gap":                               "ask gap",
		"twelve footers at a bargain price of 11.50":                    "price rails 144 in = 11.50",
		"the dresser needs 30 inches of doorway":                        "opening = 30 in",
		"by the same token, make the gap two inches, thanks in advance": "gap = 2 in",
	} {
		r := Read(line, act.Context{})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
}

// The same words denied, of the past or of other things set nothing.
func TestKindredWordsANotHeard(t *testing.T) {
	for _, line := range []string{
		"he didn't consent to five rails",
		"I could not attain five rails",
		"the ticket admits two",
		"nobody advocates five rails",
		"affix two stamps to the letter",
		"last year we allocated 375 for materials",
		"they amassed two fortunes",
		"a dispute arose over two boards",
		"back up the truck two feet",
		"he bailed on two jobs",
		"the town boasts two bakeries",
		"dust off the two boards",
		"dig up two feet of dirt",
		"crack open the garden gate",
		"we burned through two blades",
		"carve out two notches",
		"the rain ceased in two hours",
		"clip two inches off the hedge",
		"work commences at two",
		"don't commit to five rails",
		"never compromise on five rails",
		"nobody endorses five rails",
		"we consumed two boxes of screws",
		"I contracted the job for 300",
		"the elevator descends two floors",
		"I detailed two cars for 300",
		"we encountered two knots",
		"dispose of the garbage",
		"elevate your feet",
		"we employ five carpenters",
		"exchange two boards",
		"the glove compartment is two feet wide",
		"the bathtub is 60 inches long",
		"I have two cherry trees",
		"he isn't confident the gap is two inches",
		"my wife talked me into two dogs",
		"I'm not dead set on five rails",
		"check out two books",
		"change out two filters",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
