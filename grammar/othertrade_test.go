package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What a verb of other work is done to is not set, tried or asked for.
func TestOtherTrade(t *testing.T) {
	for _, said := range []string{
		"what if we painted one rail", "how do I clean the rails", "should we glue the 2x6 rails", "sand the gap to 3", "can I hide a 32 inch opening",
		"I want to repaint six rails", "what if we borrowed one rail", "watch the gap of three inches",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
	for said, want := range map[string]string{
		"can I have a 32 inch opening":                 "what if opening = 32 in",
		"what if we used one rail less":                "what if rails -= 1",
		"we need to haul it home, so six rails":        "rails = 6",
		"what do you get for the gap, he wrote 2-9/16": "ask gap; check gap = 2-9/16 in",
		"knock three eighths off the gap":              "gap -= 3/8 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
