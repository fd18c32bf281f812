package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is said to people nearby, what was, what is usual, and figures that may be of something else set nothing and forget nothing. Everyday speech, no source.
func TestSaidToOthers(t *testing.T) {
	for _, said := range []string{
		"keep the opening clear", "get off the rail", "get out of the opening", "keep away from the saw", "drop the saw", "drop the board", "toss me a 2x6", "pass me the 2x6",
		"hold the 2x6", "put the 2x6 over there", "give him a 2x4", "this is a 2x4", "that board is a 2x4", "I've got a 2x6", "give me a 4x4",
		"I forget the gap", "I always forget the kerf", "I changed my mind about the six rails", "I've had it with six rails", "so much for six rails", "no more six rails",
		"it was 48 high", "the wall was 48", "the gap was 3", "there were six rails", "we went with six rails", "they had twelves yesterday",
		"most walls are 42 high", "normally it's 42 high", "usually the gap is 4", "typically six rails",
		"open on the left", "open 36 on the left", "open wide", "load six boards", "fetch the 2x6", "save 20 on lumber", "save the gap", "go with six", "take five",
		"quit that", "stop it", "I quit my job", "that's all I know", "I saved 20 dollars", "I don't want to spend 300 dollars", "undo the bottom rail", "skip the last step",
		"you dropped a rail", "keep it up", "help yourself", "scrap wood", "put it in the truck", "copy the left side",
		"they have ten 2x6x12 on the rack", "there's six 2x6x12 at the store", "I've got to buy six 2x6x12", "I got a price on six 2x6x12",
		"bracket thickness is a quarter in all", "brackets take an eighth at each end", "trim half an inch off each end", "rails cut 1/4 over", "posts on six foot centers",
		"max eight feet between posts", "running low on tens", "bottom one on the floor", "screws three in each end", "spare one board in ten", "invoice says 380 for ten boards", "rails up to 48",
		"the boards are 2 inches apart at the bottom and 3 at the top", "six rails, the bottom one 2x8",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
	for said, want := range map[string]string{
		"span was 144": "span = 144 in", "drop the rails": "forget rails", "forget the gap": "forget gap", "save porch": "save porch", "open porch": "open porch", "take 2": "take 2",
		"I've got six 2x6x12 on the rack": "have 2x6 144 in x 6", "end posts 12 feet on center": "centers = 144 in", "use a 2x6": "rail size = 2x6", "could it be done with six rails": "what if rails = 6",
		"undo the last thing": "undo", "keep the gap at 2": "gap = 2 in",
	} {
		assert.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
