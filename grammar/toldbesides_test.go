package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What was so once, what others have in theirs, what somebody beside is told to do and what is not wanted set nothing and answer
// nothing; look-alikes that mean this wall are heard. Common speech, no source.
func TestToldBesides(t *testing.T) {
	for _, line := range []string{
		"six rails was last week",
		"opening 36 was before the inspector came",
		"brackets were 2.80 last year",
		"they did have sixteens once",
		"six rails, my brother's wall that is",
		"the opening is 36, on the old wall I mean",
		"wall 44 high, no wait, let me check",
		"opening 36, no, I'd better ask her first",
		"no cut list, thanks",
		"no need for the drawing",
		"we got the shopping list already",
		"I've already read the steps",
		"he says forget the gap and I say no",
		"drop the opening? no, leave it",
		"scrap the stiffeners? no, they stay",
		"how many boards can your trailer hold",
		"how many rails have you painted",
		"what do we owe you",
		"what did you give for your table saw",
		"drop your end an inch",
		"pass me three rails",
		"hand me that stiffener",
		"gap at most 2, gap over 3",
		"gap under 2, gap at least 3",
		"my brother put six rails in his",
		"the lady next door has five rails in hers",
		"my dad built his 48 high",
		"my uncle would've used two stiffeners",
		"that quote for 380 was for the shed",
		"his bill of 220 is for the gate",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
	for _, c := range [][2]string{
		{"the gap was 2 yesterday, now it's 2 1/4", "gap = 2-1/4 in"},
		{"they ran out of sixteens yesterday", "stock -= 192 in"},
		{"gap two, no wait, three", "gap = 3 in"},
		{"opening 36, no, make that 34", "opening = 34 in"},
		{"six rails, let me see the drawing", "rails = 6; ask drawing"},
		{"drawing, please", "ask drawing"},
		{"no, the drawing please", "ask drawing"},
		{"show me the cut list already", "ask cuts"},
		{"he says go with that and I say yes", "take that"},
		{"forget the gap? yes, drop it", "forget gap"},
		{"save it as deck before you start over", "save deck; start over"},
		{"before you start over save it as deck", "save deck; start over"},
		{"start over, but save it as deck first", "save deck; start over"},
		{"what do I owe for the lumber", "ask cost"},
		{"drop the bottom rail an inch", "bottom gap -= 1 in"},
		{"give me two more boards", "rails += 2"},
		{"gap at least 2, gap under 3", "gap >= 2 in; gap < 3 in"},
		{"the quote for the wall was 380", "check cost = 380.00"},
		{"Yesterday it was five rails. How many is it now?", "ask rails"},
		{"Yesterday the gap was 2. What is it now?", "ask gap"},
		{"biggest opening, but bay 1 can't drop below 60", "largest opening; bay 1 >= 60 in"},
		{"the gap must not fall under 2", "gap >= 2 in"},
		{"gap two, the bottom one I mean", "bottom gap = 2 in"},
		{"gap two and a half, and under the bottom one, well, I'll measure that later", "gap = 2-1/2 in"},
		{"how many sticks do I load on the truck", "ask shopping"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
}
