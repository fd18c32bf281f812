package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Turns in which people ask, suppose, check, claim and tell prices: heard as the plain sentence that says the same.
func TestKindredTurnsAskedHeard(t *testing.T) {
	for line, want := range map[string]string{
		"what's on file so far":                           "recap",
		"read it over to me":                              "recap",
		"catch me up":                                     "recap",
		"jog my memory":                                   "recap",
		"rattle off what I've told you":                   "recap",
		"what have we hashed out so far":                  "recap",
		"what am I on the hook for":                       "ask cost",
		"how hard is this going to hit my wallet":         "ask cost",
		"what's the going rate for all this":              "ask cost",
		"put a number on it for me":                       "ask cost",
		"what should I have them deliver":                 "ask shopping",
		"pull together a shopping list":                   "ask shopping",
		"what am I short of":                              "ask shopping",
		"rattle off the cuts":                             "ask cuts",
		"break down the cuts for me":                      "ask cuts",
		"break down the marks for me":                     "ask marks",
		"take a stab at it":                               "ask layout",
		"what does that buy us":                           "ask layout",
		"bring it up on the screen":                       "ask drawing",
		"dash off a sketch":                               "ask drawing",
		"what could go sideways":                          "ask cautions",
		"what could throw me off":                         "ask cautions",
		"any hiccups":                                     "ask cautions",
		"poke holes in it":                                "ask cautions",
		"anything iffy":                                   "ask cautions",
		"is this up to snuff":                             "ask cautions",
		"will this pass muster":                           "ask cautions",
		"how do I pull this off":                          "ask steps",
		"what's the plan of attack":                       "ask steps",
		"hold my hand through the build":                  "ask steps",
		"what would do the trick":                         "ask options",
		"toss out a few options":                          "ask options",
		"is there another way to skin this cat":           "ask options",
		"what's the gap shake out to":                     "ask gap",
		"clue me in on the gap":                           "ask gap",
		"how many rails does it shake out to":             "ask rails",
		"any way to squeeze in five rails":                "what if rails = 5",
		"how would five rails pan out":                    "what if rails = 5",
		"what if I dialed it back to five rails":          "what if rails = 5",
		"I've half a mind to go with five rails":          "what if rails = 5",
		"would five rails fit the bill":                   "what if rails = 5",
		"you're looking at 13.80 for a sixteen footer":    "price rails 192 in = 13.80",
		"I'm shelling out 13.80 for a sixteen footer":     "price rails 192 in = 13.80",
		"sixteen footers have shot up to 13.80":           "price rails 192 in = 13.80",
		"I can lay my hands on sixteen footers for 13.80": "price rails 192 in = 13.80",
		"they've started stocking eighteen footers":       "stock += 216 in",
		"I can scrounge up eighteen footers too":          "stock += 216 in",
		"they've phased out eighteen footers":             "stock -= 216 in",
		"eighteen footers are out of the question":        "stock -= 216 in",
		"somebody cleaned them out of eighteen footers":   "stock -= 216 in",
		"he pegs the gap at 2 1/2":                        "check gap = 2-1/2 in",
		"he gave me to understand the gap is 2 1/2":       "check gap = 2-1/2 in",
		"the way he sees it the gap is 2 1/2":             "check gap = 2-1/2 in",
		"he says the gap is 2 1/2, is he out to lunch":    "check gap = 2-1/2 in",
		"he says the gap is 2 1/2, I'm not buying it":     "check gap = 2-1/2 in",
		"am I off base with a gap of 2 1/2":               "check gap = 2-1/2 in",
		"what accounts for the rail count":                "why rails",
		"where are you getting that many rails":           "why rails",
		"why won't seven rails pan out":                   "why not rails = 7",
		"what shoots down seven rails":                    "why not rails = 7",
		"my tape has bay 1 at 68 1/4":                     "bay 1 = 68-1/4 in",
	} {
		r := Read(line, act.Context{})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
}

// The same words in their other senses, denied, or of another thing.
func TestKindredTurnsAskedNotHeard(t *testing.T) {
	for _, line := range []string{
		"what'll I call it",
		"it takes two people to lift a sixteen footer",
		"I came across a twelve footer with a crack in it",
		"I found the boards warped",
		"he ran out the door for sixteen footers",
		"the twelve footers showed up warped",
		"take the twelve footers off the table",
		"have you gotten rid of the twelve footers",
		"he got rid of a twelve footer",
		"count out the twelve footers and load them",
		"don't rule out twelve footers",
		"I doubt twelve footers are off the table",
		"I couldn't lay my hands on my tape",
		"I'm left with 12 inches",
		"he's limited to 24 inches",
		"he pegged the boards together at 24",
		"my tape has a broken hook, 1/16 off",
		"I taped two boards to bay 1",
		"rail 3 is off the mark",
		"back up the rails",
		"kick off the low board",
		"plug in 12 amps",
		"punch in a hole at 24",
		"don't plug in five rails",
		"I am not toying with five rails",
		"he was chewing on five nails",
		"did he scrounge up eighteen footers",
		"I doubt I can scrounge up eighteen footers",
		"they haven't started stocking eighteen footers",
		"they've picked up eighteen footers for the other job",
		"they've ditched the 4x4 posts",
		"nobody would fork over 13.80 for a sixteen footer",
		"last year I shelled out 13.80 for a sixteen footer",
		"they jacked the car up to 24",
		"I gather 12 boards",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
