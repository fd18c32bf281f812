package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is bought, had, cut and fastened is heard in whatever order it is told; what only sounds like it is asked back.
func TestGistShop(t *testing.T) {
	for _, c := range [][2]string{
		{"The only lengths to be had in this town are 12 and 16 feet.", "stock = 144 in, 192 in"},
		{"a shipment of 20-footers has arrived", "stock += 240 in"},
		{"my saw eats up an eighth every cut and i lose a half inch a board squarin the end", "kerf = 1/8 in; trim = 1/2 in"},
		{"sawdust takes an eighth per cut", "kerf = 1/8 in"},
		{"The wood and hardware may cost $500 at most.", "budget = 500.00"},
		{"all I can afford is $275", "budget = 275.00"},
		{"I always buy ten percent too much wood", "spare = 10%"},
		{"the ears of the brackets stick out 5/8 above and below the rail", "bracket ear = 5/8 in"},
		{"each bracket reaches 1 1/8 above the board, to the middle of its top hole", "bracket reach = 1-1/8 in"},
		{"the store also has eighteens now", "stock += 216 in"},
		{"are brackets 3.15 each", "check price bracket = 3.15"},
		{"is the budget $400", "check budget = 400.00"},
		{"one more board in case one splits", "spare = 1"},
		{"$10.85 is what the yard charges for a twelve-foot 2x6.", "price 2x6 144 in = 10.85"},
		{"$375 is my absolute limit.", "budget = 375.00"},
		{"My cuts tend to be off by a sixteenth; what happens then?", "tolerance = 1/16 in"},
		{"The planter out front needs six more 2x6s of 20 inches.", "extra 2x6 20 in x 6"},
		{"Left over from last year's fence I have five ten-foot 2x6 boards", "have 2x6 120 in x 5"},
		{"the yard says it'll be 412.60 altogether, could that be right", "check cost = 412.60"},
		{"They list the added post as cut to 46 1/2, please verify.", "check cut post = 46-1/2 in"},
		{"she drew her lines at 7 1/2, 15 1/4 and 23, does that check out", "check marks = 7-1/2 in, 15-1/4 in, 23 in"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"I need to have six 12-foot 2x6s", "there are no six 12-foot 2x6s in the garage", "three 2x6s of 12 feet went from the garage",
		"10 percent of the boards are bad", "the rail sticks out 5/8 past the bracket", "brackets every 3 inches", "we spend $400 on everything",
		"I can't afford $400", "a bracket for each 3 feet", "the brackets hit the post at 3 inches", "each cut takes 3 minutes",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
