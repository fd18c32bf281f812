package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Verbs with a small word behind them are heard as what they mean together.
func TestPhrasalHeard(t *testing.T) {
	for line, want := range map[string]string{
		"what if I squeezed in five rails":           "what if rails = 5",
		"what if we squeezed in 2 stiffeners":        "what if stiffeners = 2",
		"what if I swapped in two more rails":        "what if rails += 2",
		"swap in 2x4 rails":                          "rail size = 2x4",
		"what if I beefed it up to five rails":       "what if rails = 5",
		"can we step up to five rails":               "what if rails = 5",
		"can the gap be up to 3":                     "what if gap <= 3 in",
		"why can't I pull off seven rails":           "why not rails = 7",
		"why can't I hold out for six rails":         "why not rails = 6",
		"pull off two rails":                         "rails -= 2",
		"knock off two rails":                        "rails -= 2",
		"can you make five rails work":               "what if rails = 5",
		"any way to make five rails work":            "what if rails = 5",
		"do five rails work":                         "what if rails = 5",
		"make believe it's five rails":               "what if rails = 5",
		"I'm thinking of maybe five rails":           "what if rails = 5",
		"I got 2 1/2 for the gap, am I close":        "check gap = 2-1/2 in",
		"I have 2 3/8 for the gap, how far off am I": "check gap = 2-3/8 in",
		"he has us down for a gap of 2 1/2":          "check gap = 2-1/2 in",
		"he took down a gap of 2":                    "check gap = 2 in",
		"look over this: gap 2 1/2":                  "check gap = 2-1/2 in",
		"give this a once over: gap 2 1/2":           "check gap = 2-1/2 in",
		"take a look at this: gap 2 1/2":             "check gap = 2-1/2 in",
		"he says the gap is 2 1/2, back me up":       "check gap = 2-1/2 in",
		"I take it the gap is 2 1/2, right?":         "check gap = 2-1/2 in",
		"any way to squeeze in five rails":           "what if rails = 5",
		"any way to put in five rails":               "what if rails = 5",
		"why did you get rid of seven rails":         "why rails",
		"the gap hopefully stays under 4":            "gap < 4 in",
		"I'll take it":                               "take that",
		"they'll bring in eighteen footers for me":   "stock += 216 in",
		"they've given up on eighteen footers":       "stock -= 216 in",
		"eighteen footers are in play too":           "stock += 216 in",
		"what would fit the bill":                    "ask options",
		"how does it look from the front":            "ask drawing",
		"why did you throw out seven rails":          "why not rails = 7",
		"why did you say no to a gap of 2":           "why not gap = 2 in",
		"why did you choose seven rails":             "why rails",
		"the gap must invariably stay under 4":       "gap < 4 in",
		"two stays per bay":                          "stiffeners = 2",
		"look at six rails":                          "what if rails = 6",
		"use 3 inch screws":                          "screw length = 3 in",
		"the slab is 4 thick":                        "slab thickness = 4 in",
	} {
		r := Read(line, act.Context{})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
}

// Where they leave open what is meant it is asked back.
func TestPhrasalNotHeard(t *testing.T) {
	for _, line := range []string{
		"we're done kicking around five rails",
		"he's sticking with a gap of 2 1/2",
		"can you pull off five rails",
		"can you bring up five rails",
		"can you find five rails",
		"I want to buy five rails",
		"we made five rails work",
		"I'm looking at a twelve footer",
		"I'm stuck with a twelve footer",
		"I used eighteen footers",
		"the gap need not be under 4",
		"they moved eighteen footers",
		"they're low on eighteen footers",
		"twelve footers are in the truck",
		"how deep am I in",
		"how does it look from the street",
		"put in six screws",
		"I'm looking for six screws",
		"flagstones are 2 inches thick",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
