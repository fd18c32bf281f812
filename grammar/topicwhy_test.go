package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What only names the topic of a question sets nothing; what is set before a question does.
func TestTopicWhy(t *testing.T) {
	for said, want := range map[string]string{
		"that 33 inch opening, how did you get it":                        "why opening",
		"the gap of 2-3/8, where does that come from":                     "why gap",
		"the gap is 2-3/8, where does that come from":                     "gap = 2-3/8 in; why gap",
		"two stiffeners and keep them 450 mm apart":                       "stiffeners = 2; stiffener spacing = 450 mm",
		"give every bay two stiffeners, their spacing 450 mm or less":     "stiffeners = 2; stiffener spacing <= 450 mm",
		"two stiffeners per bay, six boards and keep them 2 inches apart": "stiffeners = 2; rails = 6; gap = 2 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
