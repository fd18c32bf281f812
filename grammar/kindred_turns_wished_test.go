package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

func TestKindredTurnsWishedHeard(t *testing.T) {
	for line, want := range map[string]string{
		"I'm going to plant my flag on a 42 inch wall":     "wall height = 42 in",
		"let's roll with six rails":                        "rails = 6",
		"would seven rails pan out":                        "what if rails = 7",
		"six rails is the name of the game":                "rails = 6",
		"gap is two inches come hell or high water":        "gap = 2 in",
		"I draw the line at a three inch gap":              "gap <= 3 in",
		"the gap bottoms out at two inches":                "gap >= 2 in",
		"I'm drawing the line at seven rails":              "rails <= 7",
		"beef the gap up a quarter inch":                   "gap += 1/4 in",
		"slice two inches off the wall height":             "wall height -= 2 in",
		"fan the gap out to three inches":                  "gap = 3 in",
		"neck the opening down to 32 inches":               "opening = 32 in",
		"jump to seven rails":                              "rails = 7",
		"swap out the 2x6s for 2x8s":                       "rail size = 2x8",
		"yank out one rail":                                "rails -= 1",
		"throw in an extra rail":                           "rails += 1",
		"shoehorn in another rail":                         "rails += 1",
		"the bare minimum of rails":                        "fewest rails",
		"pinch every penny":                                "cheapest",
		"my budget stretches to 400 dollars":               "budget = 400.00",
		"I can fork over 400 dollars":                      "budget = 400.00",
		"I'm willing to sink 400 dollars into this":        "budget = 400.00",
		"400 dollars is my breaking point":                 "budget = 400.00",
		"keep the damage to 400 dollars":                   "budget = 400.00",
		"they sting you 14.50 for a 16 footer":             "price rails 192 in = 14.50",
		"I can lay my hands on 8s, 12s and 16s":            "stock = 96 in, 144 in, 192 in",
		"12s are nowhere to be found":                      "stock -= 144 in",
		"I've got six 12 foot 2x6s gathering dust":         "have 2x6 144 in x 6",
		"I rustled up six 12 foot 2x6s":                    "have 2x6 144 in x 6",
		"wind back the last change":                        "undo",
		"make like I never said that":                      "undo",
		"let's turn over a new leaf":                       "start over",
		"jot this down as porch":                           "save porch",
		"keep this safe as porch":                          "save porch",
		"size up porch against shed":                       "compare porch, shed",
		"ring me up":                                       "ask cost",
		"run down the cuts":                                "ask cuts",
		"dish out the cuts":                                "ask cuts",
		"what's the word on the cuts":                      "ask cuts",
		"let me take a gander at the cuts":                 "ask cuts",
		"what does that get me":                            "ask layout",
		"hop to it":                                        "ask layout",
		"what have I got to choose from":                   "ask options",
		"what do I do first off":                           "ask steps",
		"what's the plan of attack":                        "ask steps",
		"is everything on the up and up":                   "ask cautions",
		"did I miss a trick":                               "ask cautions",
		"jog my memory":                                    "recap",
		"what's with the six rails":                        "why rails",
		"run me off a copy of the cuts":                    "ask cuts",
		"time to hit the hay":                              "quit",
		"teach me the ropes":                               "help",
		"sign me up for that one":                          "take that",
		"I've got a hankering for a 36 inch opening":       "opening = 36 in",
		"I'm in favor of six rails":                        "rails = 6",
		"six rails would be right up my alley":             "rails = 6",
		"the goal is a two inch gap":                       "gap = 2 in",
		"let's compromise on a two and a quarter inch gap": "gap = 2-1/4 in",
		"I've warmed up to six rails":                      "rails = 6",
		"to tell you the truth I want six rails":           "rails = 6",
		"do me a solid and give me six rails":              "rails = 6",
		"rest assured the gap is two inches":               "gap = 2 in",
		"I heard through the grapevine it takes six rails": "check rails = 6",
		"I taped it out at 150 between the posts":          "span = 150 in",
	} {
		r := Read(line, act.Context{})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
}

// The same words in another sense, of another thing or denied set nothing.
func TestKindredTurnsWishedNotHeard(t *testing.T) {
	for _, line := range []string{
		"I can't make up my mind on six rails",
		"six rails isn't in the cards",
		"seven rails doesn't hold water",
		"I don't draw the line at a three inch gap",
		"I wouldn't go as far as a three inch gap",
		"don't rule out gaps over three inches",
		"the pond bottoms out at 40 inches",
		"the garage is just south of 48 inches wide",
		"keep a lid on the bucket of 12 screws",
		"I chop boards at 66 inches all day",
		"dock 6 is where the lumber is",
		"my dog gained two inches",
		"blow out the candles, all 40",
		"we tore out the old fence, 6 boards",
		"don't yank one rail",
		"my son graduated to seven",
		"he fell back on two boards",
		"I lost my wallet with 400 dollars",
		"I'm not willing to drop 400 dollars on this",
		"the bees sting you 6 times",
		"they've taken on two helpers",
		"I couldn't get my hands on 12s last week",
		"the well ran dry on 12 acres",
		"don't nuke it",
		"don't back this up as porch",
		"he's dying for a beer",
		"I'm not keen on six rails",
		"the dog gobbled up 6 biscuits",
		"that isn't the ticket",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
