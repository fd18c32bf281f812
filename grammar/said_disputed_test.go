package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What those who learn ask, and what those who check hold against the rest, whatever the words.
func TestLearnedAndChecked(t *testing.T) {
	for _, c := range [][2]string{
		{"who picked six for the slats, where's that number come from", "why rails"},
		{"would it still work if we put in an eighth board", "what if rails = 8"},
		{"what's to stop me from opening the doorway up to a full forty", "why not opening = 40 in"},
		{"Had we two inches more opening, where would the posts go?", "what if opening += 2 in; ask posts"},
		{"how come it can't go more than 28 from one stiffener to the next", "why not stiffener spacing > 28 in"},
		{"y is the gap 2 1/4", "why gap"},
		{"gap over 3, y not", "why not gap > 3 in"},
		{"I put in 5 rails by mistake, 6 is what I meant", "rails = 6"},
		{"which way round do I do this", "ask steps"},
		{"Which heights and gaps are open to us?", "ask options"},
		{"By her account there are six boards.", "check rails = 6"},
		{"he's telling folks the gap is 2 inches", "check gap = 2 in"},
		{"quoted 388.20 for everything. holds?", "check cost = 388.20"},
		{"Opening 34 in the middle. Any truth to it?", "check opening = 34 in, opening side = middle"},
		{"he's gonna make the gap two inches, is that what you come up with", "check gap = 2 in"},
		{"the kid wanted to make the doorway 40, what's the trouble with that", "why not opening = 40 in"},
		{"whatever his drawing says, the wall is 44 high", "wall height = 44 in"},
		{"skip his numbers, the gap's 2 1/4 and there's six boards", "gap = 2-1/4 in; rails = 6"},
		{"What do you get for the span, as opposed to his 140?", "ask span; check span = 140 in"},
		{"I taped 43 for the wall height where the drawing has 44", "wall height = 43 in; check wall height = 44 in"},
		{"their drawing is wrong about the wall height, it's 44", "wall height = 44 in"},
		{"where'd the 55 in the bottom gap come from", "why bottom gap"},
		{"y tho does the gap have to be 2", "why gap"},
		{"can it be that bay 1 is 66 1/2", "check bay 1 = 66-1/2 in"},
		{"his plan is off, the gap should be 2", "gap = 2 in"},
		{"how come your gap is different from his, how'd you get yours", "why gap"},
		{"why is his eight-board version no good", "why not rails = 8"},
		{"how much does the saw take with every cut in your figures", "ask kerf"},
		{"dumb question maybe, but what rules out a 40 inch doorway", "why not opening = 40 in"},
		{"he gets 2 1/4 for the gap, what do you get", "check gap = 2-1/4 in; ask gap"},
		{"bay 1 top's 68 1/8, hang on, read it upside down, 68 3/8", "measured bay 1 top = 68-3/8 in"},
		{"I should like the space beneath the bottom board to be an inch larger than the other gaps.", "bottom gap = gap + 1 in"},
		{"buy one board more than it takes, just in case", "spare = 1"},
		{"Not one twelve-footer left at the store.", "stock -= 144 in"},
		{"well sir the doorway can't pinch down any tighter than thirty", "opening >= 30 in"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"whatever his plan says, use that", "I want whatever he says", "I'm telling you the gap is 3 inches", "he is not telling us the gap is 2 inches",
		"by his account or mine the gap is 2", "there's no truth in it, the gap is 2 inches", "don't skip his numbers, the gap is 2",
		"she keeps telling me forget the gap", "put in a seventh slat", "I should like the boards a pleasing distance apart", "couldn't we just do it the way his crew does", "who needs that many boards",
		"throw two boards more than he has on the truck", "never wider than 3", "his plan is off", "can it be 40", "y tho", "I'm done with this plan", "sorry, i said five boards, meant nothing", "y = 3",
		"he says the opening is 34, seems like a lot, make it 30", "he wanted to set the gap at an inch and a half, nothing wrong with that",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
