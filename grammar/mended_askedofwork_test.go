package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is asked and ordered while the work goes on is asked of what it is of, and orders that are somebody else's are not carried out. Everyday speech, no source.
func TestAskedOfWork(t *testing.T) {
	for said, want := range map[string]string{
		"they say drop a rail":                                            "check rails -= 1",
		"my wife says drop a rail":                                        "check rails -= 1",
		"the plan says drop a rail":                                       "check rails -= 1",
		"the plan says to take out a rail":                                "check rails -= 1",
		"drop a rail":                                                     "rails -= 1",
		"would six rails give a two inch gap":                             "what if rails = 6, gap = 2 in",
		"save that one as porch":                                          "save porch",
		"undo that":                                                       "undo",
		"forget the gap":                                                  "forget gap",
		"forget rail 3 top":                                               "forget rail 3 top",
		"forget all of it":                                                "start over",
		"I'd prefer it if the gap was two":                                "gap = 2 in",
		"what's the gap under the top rail":                               "ask gap",
		"what's the gap below the top rail":                               "ask gap",
		"what's the gap over the bottom rail":                             "ask gap",
		"what's the gap under the bottom rail":                            "ask bottom gap",
		"with the bottom rail on the floor, what's the gap":               "what if bottom gap = 0 in; ask gap",
		"how much does the post stick up":                                 "ask post height",
		"how much higher is the post":                                     "ask post height",
		"where's the left edge of the opening":                            "ask opening from left",
		"where's the right edge of the opening":                           "ask opening from right",
		"where does the opening end":                                      "ask opening from right",
		"where does the opening start":                                    "ask opening from left",
		"I'm on rail three, where does it go":                             "ask rail 3 top",
		"with two posts, how far apart are they":                          "what if added posts = 2; ask bay",
		"with three posts, how wide apart are they":                       "what if added posts = 3; ask bay",
		"my husband says lose two rails":                                  "check rails -= 2",
		"the gap has to be two with six rails":                            "gap = 2 in; rails = 6",
		"undo the last change":                                            "undo",
		"how long is the whole thing":                                     "ask overall",
		"with this gap, how many rails":                                   "ask rails",
		"with a wall this high how many rails":                            "ask rails",
		"how close can the stiffeners get":                                "ask stiffener spacing",
		"how much do I leave at the bottom":                               "ask bottom gap",
		"how much do I have to buy":                                       "ask shopping",
		"how much stock do I need":                                        "ask shopping",
		"how many feet of lumber":                                         "ask shopping",
		"what do I waste":                                                 "ask shopping",
		"how much do I waste":                                             "ask shopping",
		"I've set the posts, now what":                                    "next",
		"the posts are set, now what":                                     "next",
		"why cut them at 66":                                              "why cuts",
		"budget's 400, are we over":                                       "budget = 400.00; ask cost",
		"is the opening legal":                                            "ask cautions",
		"is the gap legal":                                                "ask cautions",
		"the quote comes to four hundred and twelve fifty":                "check cost = 412.50",
		"budget four hundred and twelve fifty":                            "budget = 412.50",
		"the bill is two hundred and eight fifty":                         "check cost = 208.50",
		"budget three hundred and twelve":                                 "budget = 312.00",
		"the quote comes to two hundred fifty":                            "check cost = 250.00",
		"make the opening 2 inches wider and tell me how wide it is then": "opening += 2 in; ask opening",
		"let the added post stand 3 inches higher than the wall, and tell me how tall that makes it": "post height = wall height + 3 in; ask post height",
		"the fellow next door used seven rails":                                                      "check rails = 7",
		"raise the wall a foot":                                                                      "wall height += 12 in",
		"widen the opening a foot":                                                                   "opening += 12 in",
		"first bay 68 at the bottom":                                                                 "measured bay 1 bottom = 68 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range []string{
		"they say drop the stiffeners", "they say undo that", "they say forget the gap", "my boss says start over",
		"with six rails I'd have a two inch gap", "with six rails that would be a two inch gap", "the gap would be two with six rails", "the gap gets under two with seven rails",
		"with six rails I'd need another post", "I get a two inch gap with six rails", "I should be getting a two inch gap", "the gap came out at two and a half, why",
		"what if the wall next door is 50", "is the wall next door 50", "the wall next door is 50", "how high is the wall next door", "could the wall next door be 50", "my brother used five rails",
		"undo that gap change", "take back the gap change", "undo the gap change I just made", "undo the change to the opening", "undo the rail change",
		"save that one", "forget the rail at 24", "never mind the last rail", "forget the measurement in bay 1", "can I start from the top", "can I use what I've got",
		"I don't care how many rails", "I don't care what it costs", "how many boards do I save", "how many boards would that save me", "how many stiffeners do I save",
		"how many boards would I save with five rails", "with one stiffener, where does it go", "why is the top rail a two by four", "how far up do I start",
		"how much do I leave at the top", "how many gaps", "how long have I got", "how much room is there for error", "my saw is good to a sixteenth",
		"if I'm out an eighth at the bottom, is the top out", "how long before I have to oil it", "bottom gap three but not over the gap", "with six rails, it's not 48",
		"gap two and a half shy", "keep the boards, posts two", "add a foot to the wall", "add two feet to the wall", "push the opening out a foot",
		"first bay 68, at a foot off the floor",
		"my stiffeners are gone", "the boss says drop a stiffener", "the bays come out at 60 with two posts", "six rails gets me a two inch gap", "undo what I did to the gap", "save this one",
		"I don't mind how many rails", "where's the near edge of the opening", "where does the second opening end", "the stiffeners are gone",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
