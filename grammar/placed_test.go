package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/solver"
)

// What "it" is, where only the opening's side was told; what is planned on; sums read out. Everyday speech, no source.
func TestOpeningPlaced(t *testing.T) {
	for line, want := range map[string]string{
		"opening on the right, make it 34":                              "opening side = right; opening = 34 in",
		"doorway in the middle make it three foot":                      "opening side = middle; opening = 36 in",
		"walk through's hard against the right hand post make it 2' 10": "opening side = right; opening = 34 in",
		"opening on the right, no, make it left":                        "opening side = left",
		"figure the wall to finish out at three foot eight and a half":  "wall height = 44-1/2 in",
		"I figure the opening at 34":                                    "opening = 34 in",
		"he figures the gap at two":                                     "check gap = 2 in",
		"could you do the sums out loud, all of them":                   "show it all",
		"holler if there's something I need to look out for":            "ask cautions",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	for line, want := range map[string]string{ // judged first, and then tried; posts and what is between them
		"too wide, try six boards":                         "what if rails = 6",
		"too much, what if five boards":                    "what if rails = 5",
		"looks too wide. try six boards":                   "what if rails = 6",
		"six by six posts, 148 and a quarter between them": "post size = 6x6; span = 148-1/4 in",
		"six by six end posts, 148 between them":           "end post size = 6x6; span = 148 in",
		"2x6 boards, 2 between them":                       "rail size = 2x6; gap = 2 in",
		"can it be done for $200":                          "what if budget = 200.00",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	tall := act.Context{Subject: &solver.Name{Quantity: solver.WallHeight}, Answered: true}
	assert.Equal(t, "what if wall height = 40 in", parse.Normal(Read("too tall, try forty", tall).Acts))
	for _, line := range []string{"two 4x4 posts, 48 between them", "new 4x4 posts, 48 between them", "too tall, try forty", "can we build it for two people", "post on the right, make it 48", "holler if the gap is over 3", "planning the wall for Saturday"} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
