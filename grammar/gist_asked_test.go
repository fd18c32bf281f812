package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/gist"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// Questions, orders, wishes and the names of plans in words and orders that no rule of the grammar has.
func TestGistAsked(t *testing.T) {
	for _, c := range [][2]string{
		{"Tell me everything that has to go on the truck.", "ask shopping"},
		{"Give me the layout marks for the posts, bottom to top.", "ask marks"},
		{"What spot do I set the middle post in?", "ask posts"},
		{"How much do we lose to the saw blade?", "ask kerf"},
		{"How much spare did I tell you to figure?", "ask spare"},
		{"Can I get that shopping list in a form my spreadsheet can read?", "ask shopping as csv"},
		{"Forget the gap, and tell me where that leaves the wall height.", "forget gap; ask wall height"},
		{"Empty the whole plan.", "start over"},
		{"The price should be as low as possible.", "cheapest"},
		{"There should be hardly any offcuts.", "least waste"},
		{"I'd like the posts evenly spaced so that the bays match.", "equal bays"},
		{"I want each gap identical to the next.", "even gaps"},
		{"Close up the boards as much as you can.", "smallest gap"},
		{"I'd be more comfortable with feet and inches.", "units = customary"},
		{"This one should go by the name of maple court.", "save maple court"},
		{"Can we have another look at maple court?", "open maple court"},
		{"I'd like to see how nursery and patio differ from each other, please.", "compare nursery, patio"},
		{"I'd be interested in the differences between october and robin.", "compare october, robin"},
		{"Tell me how whitman is different from cold spring.", "compare whitman, cold spring"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"Has the guard been settled?", "What are you worried about?", "My neighbor saved as much as he could.", "Keep it as simple as you can.",
		"I'd like to get back to work soon.", "My father did the cuts already.", "The spreadsheet with the cuts got lost.", "Nobody wants equal bays.",
		"Don't show me the cuts yet.", "Somebody erased the marks.", "The old plan was to start from scratch.", "I'm working on my truck.",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}

// Two things asked in one breath are both heard, though the frame of one has place for the words of the other.
func TestGistBothAsked(t *testing.T) {
	b := gist.SenseBookOf()
	for _, c := range [][2]string{
		{"how many boards are there and what is the gap", "ask rails; ask gap"},
		{"keep what we just tried and let me see the drawing", "take that; ask drawing"},
	} {
		letters, _ := scan.Fold(c[0])
		acts, ok := gist.Of(scan.Split(letters), b, act.Context{})
		require.True(t, ok, c[0])
		require.Equal(t, c[1], parse.Normal(acts), c[0])
	}
}
