package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

func TestKindredWordsOHeard(t *testing.T) {
	for line, want := range map[string]string{
		"my wife ordained six rails":                                  "rails = 6",
		"we seek a gap of 3 inches":                                   "gap = 3 in",
		"I yearn for a gap of 3 inches":                               "gap = 3 in",
		"let's spring for seven rails":                                "rails = 7",
		"slot in another rail":                                        "rails += 1",
		"retain six rails":                                            "rails = 6",
		"tweak the gap to 3 inches":                                   "gap = 3 in",
		"upgrade to 2x6 rails":                                        "rail size = 2x6",
		"utilize 2x6 rails":                                           "rail size = 2x6",
		"relocate the doorway to the left":                            "opening side = left",
		"the code prescribes a wall of 36 inches":                     "check wall height = 36 in",
		"the code stipulates a gap under 4 inches":                    "check gap < 4 in",
		"the gap must not overshoot 4 inches":                         "gap <= 4 in",
		"ratchet up the gap by a quarter inch":                        "gap += 1/4 in",
		"prune the budget by $50":                                     "budget -= 50.00",
		"we upped the budget to $400":                                 "budget = 400.00",
		"slice two inches off the wall height":                        "wall height -= 2 in",
		"wedge another rail in":                                       "rails += 1",
		"yank a rail":                                                 "rails -= 1",
		"I can splurge $200":                                          "budget = 200.00",
		"I pledge $300 for materials":                                 "budget = 300.00",
		"we can procure 12 footers":                                   "stock = 144 in",
		"tabulate the cuts":                                           "ask cuts",
		"preview the plan":                                            "ask layout",
		"let me peruse the cuts":                                      "ask cuts",
		"visualize the wall":                                          "ask drawing",
		"can you predict the gap with seven rails":                    "what if rails = 7; ask gap",
		"rehash what I said":                                          "recap",
		"simulate seven rails":                                        "what if rails = 7",
		"what do I wind up with":                                      "ask layout",
		"what gap does six rails yield":                               "what if rails = 6; ask gap",
		"put this on ice as blue":                                     "save blue",
		"resurrect the plan I saved as blue":                          "open blue",
		"rescind that":                                                "undo",
		"the builder proclaims the gap is 4 inches":                   "check gap = 4 in",
		"six rails would be the ticket":                               "rails = 6",
		"I'm partial to six rails":                                    "rails = 6",
		"a gap over 4 inches is prohibited":                           "gap <= 4 in",
		"my stepmother wants six rails":                               "rails = 6",
		"the welder says the gap is 4 inches":                         "check gap = 4 in",
		"the treadmill is 30 inches wide so the doorway has to be 30": "opening = 30 in",
		"tell me the pricetag":                                        "ask cost",
		"the sawcut is 1/8":                                           "kerf = 1/8 in",
		"any stumbling blocks I should know about":                    "ask cautions",
		"make the gap 3 inches without delay":                         "gap = 3 in",
	} {
		r := Read(line, act.Context{Saved: []string{"blue"}})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
}

// The same words in their other senses, denied, or said of another thing.
func TestKindredWordsONotHeard(t *testing.T) {
	for _, line := range []string{
		"he ordained the priest",
		"we don't seek a gap of 3 inches",
		"he is seeking three helpers",
		"we root for the home team",
		"let's not spring for six rails",
		"the posts retain 3 inches of soil",
		"he tweaked his back in two places",
		"don't upgrade to 2x6 rails",
		"we relocated here two years ago",
		"the doctor prescribed 3 pills",
		"pump up the tires to 40",
		"prune the tree by two feet",
		"slash the tires",
		"slice six apples",
		"don't yank a rail",
		"I can swing by at 3",
		"the door can swing 30 degrees",
		"he pledged $300 to the church",
		"my shirt can snag on a 2x6",
		"the rail revokes two inches",
		"don't resurrect the plan called blue",
		"rewind the tape two feet",
		"six rails won't yield",
		"I predict two rainy days",
		"don't simulate seven rails",
		"I'm not partial to six rails",
		"seven rails wouldn't be the ticket",
		"a gap over 4 inches isn't prohibited",
		"my teenager is 40 inches tall",
		"the welder is 70 inches tall",
		"we have a 30 inch treadmill",
		"my purse is 4 inches wide",
		"a splendid wall",
	} {
		r := Read(line, act.Context{Saved: []string{"blue"}})
		assert.NotNil(t, r.Ask, "%s: %s", line, parse.Normal(r.Acts))
	}
}
