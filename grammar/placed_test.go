package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"
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
		assert.Equal(t, want, Normal(Read(line, Context{}).Acts), line)
	}
	for _, line := range []string{"post on the right, make it 48", "holler if the gap is over 3", "planning the wall for Saturday"} {
		assert.NotNil(t, Read(line, Context{}).Ask, line)
	}
}
