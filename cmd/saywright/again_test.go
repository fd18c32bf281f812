package main

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// An opening that was given up is there again when its width is told, and what took whose place is told.
func TestOpeningAgain(t *testing.T) {
	c := talking(t)
	c.say("wall height = 38 in; span = 240 in; opening = 30 in")
	c.say("openings = 0")
	a := c.say("opening = 32 in; opening side = left")
	require.Len(t, a.Layout.Openings, 1)
	c.stands("wall height = 38 in", "span = 240 in", "opening = 32 in", "opening side = left")
	require.Contains(t, a.Text, "takes the place of no opening")
}

// A screw that nobody chose stays inside stiffener and rail; one that is too long is mended by what is offered, and is bought as long as that lets it.
// Boards of nominal 1 in are 3/4 in thick (American Softwood Lumber Standard PS 20, table of dressed sizes).
func TestScrewThatFits(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; rail size = 1x6; span = 120 in")
	require.Contains(t, c.say("ask shopping").Text, "screws 1-1/4 in")
	c.say("screw length = 1-5/8 in")
	require.NotEmpty(t, c.say("ask shopping").Ways)
	c.say("take 1")
	require.Contains(t, c.say("ask shopping").Text, "screws 1-1/4 in")
}

// How many there are of something in each bay is told for all bays together, too.
func TestStiffenersInAll(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; span = 288 in")
	require.Contains(t, c.say("ask stiffeners").Text, "Two stiffeners in each bay, four in all.") // two bays of 142-1/4, 48 at most apart
	require.NotContains(t, c.say("ask bay 1 stiffeners").Text, "in all")
}

// Without a price there is no sum, and the example of how to tell one is heard.
func TestNoPriceYet(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; span = 120 in")
	require.Contains(t, c.say("ask cost").Text, "No price was told yet, so there is no sum. Say one so: `2x6 of 120 in for 9.50`")
	require.Equal(t, []string{"price 2x6 120 in = 9.50"}, c.say("2x6 of 120 in for 9.50").Heard)
	require.Contains(t, c.say("ask cost").Text, "In all 47.50")
	require.NotContains(t, c.say("ask shopping").Text, "No price was told yet")
}

// Where the gap was said, counts differ by what they leave under the bottom rail, and the sums are shown.
func TestWhyRailsWithGapSaid(t *testing.T) {
	c := talking(t)
	c.say("wall height = 38 in; rail size = 2x4; gap = 2 in")
	text := c.say("why rails").Text
	for _, want := range []string{"38 − 5 × 3-1/2 − 4 × 2 = 12-1/2", "left with five rails", "7  1-1/2            too near the floor", "Under the bottom rail there is to be 2 or more"} {
		require.Contains(t, text, want)
	}
	require.NotContains(t, text, "each gap")
	c.say("forget gap")
	require.Contains(t, c.say("why rails").Text, "each gap")
}

// A cheaper way is looked for among the layouts, also where it is only asked for, and what was compared is told.
func TestCheaperWay(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; span = 120 in")
	c.say("price 2x6 120 in = 9.50")
	require.Contains(t, c.say("what if cheapest").Text, "of 96 in for 9.50`")
	c.say("price 1x4 96 in = 4.00; price bracket = 3.00; price screws 100 = 9.00")
	a := c.say("what if cheapest")
	require.Equal(t, 1, a.Layout.Rails) // a rail, two brackets, 1x4 and screws: 9.50 + 2 × 3.00 + 4.00 + 9.00
	require.Contains(t, a.Text, "none costs less than 28.50")
	c.say("take that")
	require.Contains(t, c.say("ask cost").Text, "In all 28.50")
	require.Equal(t, 5, c.say("rails >= 5").Layout.Rails)
	require.Contains(t, c.say("ask cost").Text, "In all 90.50") // 47.50 + 30.00 + 4.00 + 9.00
}

// Who asks for a cheaper way while prices are missing is told so, and nothing of the layout.
func TestCheaperWithoutPrices(t *testing.T) {
	c := talking(t)
	c.say("wall 42 high, span 140, gap 2-1/2, opening 34 on the right; 2x6x10 is 11.40")
	text := c.say("is there a cheaper way").Text
	require.Contains(t, inOne(text), "Prices are missing, so I went by the lumber: of 16 layouts none takes less than 264, in two boards. Tell a price so: `4x4 of 144 in for 9.50`.")
	require.NotContains(t, text, "changes nothing of the layout")
}

// What keeps the list from being made is asked before it is told what the list has not.
func TestAtHandWithoutList(t *testing.T) {
	c := talking(t)
	c.say("wall 42 high, span 140, gap 2-1/2, opening 34 on the right")
	c.say("bay 2 is 58 at the bottom")
	a := c.say("the posts are up, what do I buy")
	require.NotNil(t, a.Ask)
	require.Contains(t, a.Ask.Text, "There is no bay 2")
}

// After lengths that were all said in metric units a bare length is asked back, though nobody said to work in metric: 85 is 85 cm as likely as inches.
func TestBareBehindMetric(t *testing.T) {
	c := talking(t)
	c.say("wall 1 m high, 3.20 m between the posts, opening 80 cm on the right")
	a := c.say("make the opening 85")
	require.NotNil(t, a.Ask)
	require.Contains(t, a.Ask.Choices, "opening = 850 mm")
	require.Contains(t, a.Ask.Text, "85 in")
	c.say("85 cm")
	c.stands("wall height = 1000 mm", "span = 3200 mm", "opening side = right", "opening = 850 mm")
	require.Nil(t, c.say("gap 2-1/2 in").Ask)
	require.Nil(t, c.say("opening 34").Ask) // inches stand now, too
}
