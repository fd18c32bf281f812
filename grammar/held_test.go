package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is judged, leaned on another thing's figure, left as it is or said of somebody else's work sets nothing. Everyday speech, no source.
func TestHeldBack(t *testing.T) {
	for _, line := range []string{
		"the gate measures 36 wide, the opening should be 2 more", "the door is 32 wide, so the opening should be an inch bigger",
		"i am 60 tall and the wall should be half that", "i'm 64 tall and the wall should be 20 lower", "the house wall is 96 high, the half wall is 50 lower",
		"the gap is half an inch too wide, leave it", "one rail too many, leave it", "the gap is half an inch too wide, let it be",
		"the gap is a half too wide", "the gap is too wide by half", "wall 42 high and gap 2 as on the north wall",
		"someone could go up to six rails", "add a hand rail", "add a guard rail", "add a fence post", "my boss wants six rails, forget that",
		"his wall is 48, fine by me", "spread the boards 1/4 inch apart", // by that, or to it
		"he took out two rails, that's fine with me", "hardware store's opening is at 8 tomorrow",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	for line, want := range map[string]string{
		"the inspector says a 5 inch gap is too big, agreed":                 "check gap = 5 in", // agreed to is that it is too big
		"she says a 60 inch wall is too tall, so be it":                      "check wall height = 60 in",
		"he says six rails, fine by me":                                      "rails = 6",
		"the gap is half an inch too wide":                                   "gap -= 1/2 in",
		"one rail too many, take it out":                                     "rails -= 1",
		"I'm five foot four, so I'd like the wall no higher than 44 inches.": "wall height <= 44 in",
		"add 14s and drop the 10s":                                           "stock += 168 in; stock -= 120 in",
		"out of 10's, add 14's":                                              "stock -= 120 in; stock += 168 in",
		"they're out of tens, put twelves on the list":                       "stock -= 120 in; stock += 144 in",
		"in case of 4 rails":                                                 "what if rails = 4",
		"forget it, just make it six rails":                                  "rails = 6",
		"No, I don't like that, put it back the way it was.":                 "undo",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}
