package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What was so, and what is not so, is not passed over as if it were a filler.
func TestToldOver(t *testing.T) {
	for _, said := range []string{
		"my uncle was after the widest doorway", "I never liked a gap of three", "I have not decided on six boards", "our grandfather was all for six boards",
		"I haven't made up my mind between 2x4 and 2x6 rails", "we were this close to a 30 inch doorway", "nobody wanted five boards",
		"my neighbor was after the fewest boards", "I can't say I wanted five boards",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
	for said, want := range map[string]string{
		"we were aiming for five boards":                   "rails = 5",
		"I was thinking maybe six boards":                  "rails = 6",
		"what if we had five boards":                       "what if rails = 5",
		"I asked for six rails":                            "rails = 6",
		"if you don't mind my asking, what does it cost":   "ask cost",
		"suppose the end posts were 6x6":                   "what if end post size = 6x6",
		"I was told six boards":                            "check rails = 6",
		"well I was worried there, yes let's go with that": "take that",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
