package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// In front of an answer that tells what will not go, "why" means that answer; without one there is nothing to tell.
func TestStuck(t *testing.T) {
	for _, line := range []string{
		"why won't it fit", "why does it not work", "I don't get why it won't fit", "how come it doesn't fit", "why not",
		"what's wrong with it", "what's stopping it", "what is in the way", "which rule is it", "where does it clash",
	} {
		r := Read(line, act.Context{Answered: true})
		require.Nil(t, r.Ask, line)
		require.Equal(t, "why that", parse.Normal(r.Acts), line)
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	for _, line := range []string{
		"how can I make it fit", "what would fix it", "what has to give", "is there a way around it", "what's the smallest change", "how do I fix this",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, "ask options", parse.Normal(r.Acts), line)
	}
}

// A figure that comes after a vague word tells how much it is.
func TestVagueMadePlain(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"make the gap a hair wider, maybe an eighth":       "gap += 1/8 in",
		"make the opening a touch larger, say by an inch":  "opening += 1 in",
		"gap a bit tighter - an eighth":                    "gap -= 1/8 in",
		"make the wall a little lower, like two inches":    "wall height -= 2 in",
		"open the bottom gap up a tad, about half an inch": "bottom gap += 1/2 in",
	})
	require.NotNil(t, Read("make the gap a hair wider", act.Context{}).Ask)
}
