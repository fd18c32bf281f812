package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Sizes, counts and lists are asked for, and reasons, in the words of many.
func TestAskWorded(t *testing.T) {
	for _, c := range [][2]string{
		{"what am I looking at on the space between the boards", "ask gap"},
		{"mind telling me what the height of the wall came out to", "ask wall height"},
		{"any idea where the stiffener spacing ended up?", "ask stiffener spacing"},
		{"how did the bottom gap turn out", "ask bottom gap"},
		{"how much did you make the post height", "ask post height"},
		{"I can't recall the doorway", "ask opening"},
		{"at what have you got the wall height", "ask wall height"},
		{"I've no glasses on, what did the gap come to", "ask gap"},
		{"wot's the gap then", "ask gap"},
		{"is it known how many rails there are", "ask rails"},
		{"give me the gap as well as the number of boards", "ask gap; ask rails"},
		{"go over the cut list with me", "ask cuts"},
		{"can you run the marks past me", "ask marks"},
		{"open up the layout for me", "ask layout"},
		{"What I need next is the shopping list", "ask shopping"},
		{"the drawing would be handy about now", "ask drawing"},
		{"I don't understand the gap, where does it come from", "why gap"},
		{"please explain why there are so many rails", "why rails"},
		{"that's an awful lot of stiffeners, why", "why stiffeners"},
		{"the gap won't go to 2-1/2, why's that", "why not gap = 2-1/2 in"},
		{"what's the objection to 42 inches for the wall height", "why not wall height = 42 in"},
		{"what's stopping the opening being 36", "why not opening = 36 in"},
		{"why was 3 inches turned down for the bottom gap", "why not bottom gap = 3 in"},
		{"I can't have seven rails? Why ever not?", "why not rails = 7"},
		{"I asked for two stiffeners and you said no, why", "why not stiffeners = 2"},
		{"go over what we've settled so far", "recap"},
		{"new wall, forget all that", "start over"},
		{"oops wrong button, go back", "undo"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"the cut list would be handy if it were right", "I don't recall asking for the gap", "I have no objection to the gap", "the drawing would be no help",
		"I've forgotten nothing", "I haven't lost the cut list", "he has no idea what the gap is worth", "don't go over the cut list with him",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
