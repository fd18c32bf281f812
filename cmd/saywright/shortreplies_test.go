package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Short lines behind an answer, a trial or a question, by somebody who had not seen the program: what is heard of the last of them, and a piece of what is asked
// where it is asked back.
func TestShortReplies(t *testing.T) {
	for _, row := range []struct{ said, heard, asked string }{
		// One rail more or fewer counts rails, whatever unit bare figures have.
		{"metric|wall 1100, span 3200|one less rail", "rails -= 1", ""},
		{"metric|wall 1100, span 3200|what if one less rail", "what if rails -= 1", ""},
		{"metric|one less rail", "rails -= 1", ""},
		{"metric|wall 1100, span 3200|the rails are 1 wider", "rail face += 1 mm", ""},
		// Rails told from the top.
		{"wall 42, 1x4 rails, span 12 ft|where is the third rail from the top", "ask rail 5 top", ""},
		{"wall 42, 1x4 rails, span 12 ft|where does rail 2 from the top go", "ask rail 6 top", ""},
		{"wall 42, 1x4 rails, span 12 ft|where is the third rail", "ask rail 3 top", ""},
		{"wall 42, 1x4 rails, span 12 ft|where is the ninth rail from the top", "", "counted from the bottom"},
		{"where is the third rail from the top", "", "counted from the bottom"},
		{"wall 42, 1x4 rails, span 12 ft|the third rail from the top is at 20", "", "counted from the bottom"},
		{"wall 42, 1x4 rails, span 12 ft|what if 5 rails, where is the third rail from the top", "", "counted from the bottom"},
		// Nobody builds forty rails.
		{"wall 42, span 12 ft|what if 6 rails|lower it to 40", "wall height = 40 in", ""},
		{"wall 42, span 12 ft|what if 6 rails|bring it down to 40", "wall height = 40 in", ""},
		{"wall 42, span 12 ft|what if 6 rails|raise it to 48", "wall height = 48 in", ""},
		{"wall 42, span 12 ft|what if 6 rails|lower it to 48", "", "48 of what?"},
		{"wall 42, span 12 ft|what if 6 rails|make it 40", "", "40 of what?"},
		{"wall 42, span 12 ft|what if 6 rails|make it 40|the wall", "wall height = 40 in", ""},
		{"wall 42, span 12 ft|what if 6 rails|lower it to 5", "rails = 5", ""},
		{"wall 42, span 12 ft|how many rails|top at 42?", "", "42 of what?"},
		// Counts of what was just spoken of.
		{"wall 42, span 12 ft|would 7 rails fit|ok 7", "rails = 7", ""},
		{"wall 42, span 12 ft|would 7 rails fit|ok 2", "take 2", ""},
		{"wall 42, span 12 ft|how wide is the gap|ok 7", "", "7 of what?"},
		{"wall 42, span 12 ft|why 5 rails|why not 6", "why not rails = 6", ""},
		{"wall 42, span 12 ft|why this gap|why not 6", "", "6 of what?"},
		// What is to be as it was, and what else is said behind an answer.
		{"wall 42, span 12 ft, opening 30 on the right|move the opening to the left|hmm no put it back on the right", "opening side = right", ""},
		{"wall 42, span 12 ft, 5 rails|I changed my mind, back to 6 rails", "rails = 6", ""},
		{"wall 42, span 12 ft|what if 4 rails|ok do that and drop the height to 40", "take that; wall height = 40 in", ""},
		{"wall 42, span 12 ft|drop the height down to 40", "wall height = 40 in", ""}, // once the ground beyond: drop = 40
		{"wall 42, span 12 ft|would 90 cm high be cheaper?", "what if wall height = 900 mm; ask cost", ""},
		{"wall 42, span 12 ft|would 4 rails be cheaper", "what if rails = 4; ask cost", ""},
		{"wall 42, span 12 ft|is it strong enough if I lean on it?", "ask cautions", ""},
		{"wall 42, span 12 ft|can he climb it?", "ask cautions", ""},
		{"wall 42, span 12 ft|how many stiffeners and where", "ask stiffeners; ask stiffener spacing", ""},
		{"wall 42, span 12 ft|thank you", "", "You're welcome."},
		{"wall 42, span 12 ft|what if 4 rails|ok thanks", "", "Shall I keep what was tried?"},
		// From where to where a length is held.
		{"the wall should be 110 cm high, posts are 3.20 m apart|center to center", "wall height = 1100 mm; centers = 3200 mm", ""},
		{"the wall should be 110 cm high, posts are 3.20 m apart|from face to face please", "wall height = 1100 mm; span = 3200 mm", ""},
	} {
		requireHeard(t, row.said, row.heard, row.asked)
	}
}

// What was tried and dropped is not shown as the plan, and what is only tried is told as such.
func TestShowsNoDroppedTrialAsThePlan(t *testing.T) {
	told := func(lines ...string) string {
		talk := talking(t)
		a := talk.say("wall 42, span 12 ft")
		for _, line := range lines {
			a = talk.say(line)
		}
		return strings.Join(strings.Fields(a.Text), " ")
	}
	require.Contains(t, told("what if 4 rails", "show me everything"), "Of what you tried: four rails.")
	require.Contains(t, told("what if 4 rails", "recap", "show me everything"), "Of what you tried: four rails.")
	dropped := told("what if 4 rails", "undo", "show me everything")
	require.Contains(t, dropped, "Five rails")
	require.NotContains(t, dropped, "four rails you said so")
	require.NotContains(t, dropped, "Of what you tried")
}

// Whether rails fit is not answered by posts, and the gap underneath is told where rails are.
func TestTellsWhatItHangsOn(t *testing.T) {
	told := func(lines ...string) string {
		talk := talking(t)
		a := talk.say("help")
		for _, line := range lines {
			a = talk.say(line)
		}
		return strings.Join(strings.Fields(a.Text), " ")
	}
	fits := told("span 12 ft", "does 7 rails fit")
	require.Contains(t, fits, "Whether seven rails will go hangs on the height of the wall")
	require.Contains(t, fits, "52-1/2 or more")
	require.Contains(t, fits, "How high is the wall to be")
	require.NotContains(t, fits, "Nothing is changed")
	require.NotContains(t, told("wall 60, span 12 ft", "does 7 rails fit"), "hangs on the height")
	sloping := []string{"wall 42, span 12 ft, opening 36 on the left, floor drops 3/4 to the right"}
	for _, asked := range []string{"how big is the gap underneath", "where are my marks"} {
		a := told(append(sloping, asked)...)
		require.Contains(t, a, "the gap underneath is about 3-1/8 at post 1 and about 3-5/8 at the right", asked) // 2.9 + 0.75 x 37.75 / 144, the post's center
	}
	require.Contains(t, told("wall 42, span 12 ft, floor drops 3/4 to the right", "how big is the gap underneath"), "about 2-7/8 at the left and about 3-5/8 at the right")
}
