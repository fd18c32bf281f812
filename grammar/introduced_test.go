package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is built and where, whatever the place is called, tells nothing of the wall, and what follows is heard. Everyday speech, no source.
func TestIntroduced(t *testing.T) {
	for line, want := range map[string]string{
		"I'm doing a half wall on a bandstand, posts are six by six and 12 foot 4 between them": "post size = 6x6; span = 148 in",
		"half wall on a boathouse porch, wall 42, 2x6 rails":                                    "wall height = 42 in; rail size = 2x6",
		"I'm building a half wall on an open band shell, three bays":                            "bays = 3",
		"building a half wall on a bus stop, 42 high":                                           "wall height = 42 in",
		"so we're putting up a low wall around the covered stage, five boards":                  "rails = 5",
		"half wall on the north side, 42 high":                                                  "wall height = 42 in",
		"making a half wall at 42, gap 2":                                                       "wall height = 42 in; gap = 2 in",
		"half wall at forty two, gap 2":                                                         "wall height = 42 in; gap = 2 in",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	for _, line := range []string{
		"this is for the neighbor's wall, 42 high", "I'm doing a half wall on a bandstand",
		"first bay no more than six feet, second one no more than seven", "one one by four in each bay for a stiffener",
		"it's not the opening that's forty, it's the height of the wall", "rails six, scratch that, I'll tell you tomorrow", "how tall are you anyhow",
		"I need a two by six to stand on",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
