package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Turns that were read wrongly when lists of other people were first heard. Common speech, no source.
func TestTurnsFirstHeardWrongly(t *testing.T) {
	for line, want := range map[string]string{
		"my budget went from 300 to 340":             "budget = 340.00",
		"the gap dropped from 3 to 2-1/2":            "gap = 2-1/2 in",
		"no need to draw it, just give me the cuts":  "ask cuts",
		"you needn't draw it, just give me the cuts": "ask cuts",
		"If it isn't too much trouble, could the walk-through begin 20 inches from the post on the right?": "opening from right = 20 in",
		"my first try had five boards, this time it's six":                                                 "rails = 6",
		"can't be four inches or more between boards or the dog's gone":                                    "gap < 4 in",
		"can't have more than six rails":                                                                   "rails <= 6",
		"what's left is tens and twelves":                                                                  "stock = 120 in, 144 in",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	for _, line := range []string{
		"rumor has it lumber's going up ten percent",
		"compare notes with Al before you cut anything",
		"what's left is the gap, make that two inches",
		"can't have six rails",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
