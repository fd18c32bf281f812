package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is asked for and shown, in whatever words stand round its name, and with talk before and behind.
func TestAsksAndShows(t *testing.T) {
	for _, c := range [][2]string{
		{"what number do you have for the opening", "ask opening"},
		{"what have we got the wall height at", "ask wall height"},
		{"where are we with the stiffener spacing", "ask stiffener spacing"},
		{"the bottom gap now stands at what", "ask bottom gap"},
		{"jog my memory on the post height", "ask post height"},
		{"what's the opening right now", "ask opening"},
		{"have you got the gap worked out", "ask gap"},
		{"how many boards are in the plan at the minute", "ask rails"},
		{"is there a count of stiffeners yet", "ask stiffeners"},
		{"2-1/2 for the gap please, and the number of rails", "gap = 2-1/2 in; ask rails"},
		{"fix the gap at 2, then say how many rails we've got", "gap = 2 in; ask rails"},
		{"would you pull up the cut list", "ask cuts"},
		{"view the shopping list", "ask shopping"},
		{"ok the marks next", "ask marks"},
		{"the crew's waiting on the cut list, show me", "ask cuts"},
		{"I could use a look at the marks", "ask marks"},
		{"throw the layout up there so I can see it", "ask layout"},
		{"trot out the cut list", "ask cuts"},
		{"I think it's time for the drawing", "ask drawing"},
		{"gimme the layout while I've still got daylight", "ask layout"},
		{"I'm off to the yard, give me the marks", "ask marks"},
		{"Would you kindly show me what the finished wall will look like?", "ask drawing"},
		{"talk me through how the shopping list got that long", "why shopping"},
		{"why wouldn't a wall height of 46 inches go with this", "why not wall height = 46 in"},
		{"the cat walked on my notes, how many rails was it", "ask rails"},
		{"hang on, before I climb down off this ladder, what's the gap", "ask gap"},
		{"quick one: what's the gap?", "ask gap"},
		{"since you've got the numbers, what's the gap", "ask gap"},
		{"let me see the shopping list, I've got my pencil ready", "ask shopping"},
		{"I left the cut list at home, show it to me", "ask cuts"},
		{"I can't read my own writing, what's the gap", "ask gap"},
		{"my mother asked for 2-1/2 on the gap, do that, and how many rails is it", "gap = 2-1/2 in; ask rails"},
		{"the marks, if I may", "ask marks"},
		{"show me the marks, my brother's copying it down", "ask marks"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"burn the cut list", "my wife hates the drawing", "throw out the shopping list", "put the layout away", "switch to the layout before",
		"swap sides, what's the gap", "since we dropped the posts, what's the gap", "the gap, would you change it", "my brother skipped the stiffeners, what's the gap", "they dropped it, how many rails",
		"if my brother comes, what's the gap", "the old gap is what, exactly", "the cut list is wrong", "what about bringing the gap up",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
