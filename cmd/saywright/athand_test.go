package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What is offered as there already counts in what was told before, for one "have" takes the place of another.
func TestOfferAddsToWhatIsAtHand(t *testing.T) {
	const wall = "wall height = 46 in; rails = 6; span = 144 in; added posts = 2" // three bays: 2 × 18 brackets, two posts of 48
	for _, row := range []struct{ had, offered, choice, item string }{
		{"I have 4 brackets", "I have the brackets", "have bracket x 36", "bracket"},
		{"have post base x 1", "the bases are here", "have post base x 2", "post base"},
		{"have 4x4 48 in x 1", "the posts are up", "have 4x4 48 in x 2", "4x4"},
		{"have 4x4 48 in x 3", "the posts are up", "have 4x4 48 in x 3", "4x4"}, // one more than stands
	} {
		c := talking(t)
		c.say(wall)
		c.say(row.had)
		a := c.say(row.offered)
		require.Equal(t, row.choice, a.Ask.Choices[0], row.had)
		c.say("1")
		for _, l := range c.say("ask shopping").Shopping {
			require.NotEqual(t, row.item, l.Item, row.had)
		}
	}
	c := talking(t)
	c.say(wall)
	c.say("have 2x6 192 in x 2")
	require.Contains(t, c.say("I have the boards").Ask.Choices[0], "have 2x6 192 in x 4")
	c.say("yes")
	for _, l := range c.say("ask shopping").Shopping {
		require.NotEqual(t, "2x6", l.Item)
	}
}

// End posts are never on the list: who speaks of them alone is not offered the added ones.
func TestEndPostsAlone(t *testing.T) {
	c := talking(t)
	c.say("wall height = 46 in; rails = 6; span = 144 in; added posts = 2")
	a := c.say("the end posts are up")
	require.Empty(t, a.Ask.Choices)
	require.Equal(t, "The end posts are never on the list, so nothing comes off it. What else is there?", a.Ask.Text)
	require.NotEmpty(t, c.say("the posts are up").Ask.Choices)
}

// What is asked for besides is answered where nothing of what is there is on the list.
func TestAskedBesidesWhatIsAtHand(t *testing.T) {
	c := talking(t)
	c.say("wall height = 46 in; rails = 6; span = 144 in; added posts = 0")
	a := c.say("I have all the posts, what will it cost")
	require.Equal(t, []string{"ask cost"}, a.Heard)
	require.Nil(t, a.Ask)
	require.Contains(t, a.Text, "The end posts are never on the list, so nothing comes off it for them.\n")
	require.Contains(t, a.Text, "To buy:")
	require.Contains(t, c.say("I have the bases, what do I buy").Text, "The list has none of that, so nothing comes off it.\n")
	require.NotEmpty(t, c.say("I have the brackets, what do I buy").Ask.Choices)
}

// Posts that are up and no longer long enough come on the list again, and that is told; what was told to be there needs no word on how to say it.
func TestPostsTooShortAreTold(t *testing.T) {
	c := talking(t)
	c.say("wall height = 46 in; rails = 6; span = 144 in; added posts = 2")
	c.say("the posts are up")
	c.say("1")
	require.NotContains(t, c.say("ask shopping").Text, "too short")
	c.say("wall height = 48 in")
	text := inOne(c.say("ask shopping").Text)
	require.Contains(t, text, "Your two 4x4 of 48 are too short: 50 is needed.")
	require.NotContains(t, text, "What is there already comes off the list")
	c.say("wall height = 44 in")
	require.NotContains(t, c.say("ask shopping").Text, "too short")
}

// That ends are square is told once for all bays, and with its bays where it is not that of all.
func TestSquareEndsToldOnce(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; rails = 5; span = 144 in; added posts = 2")
	c.say("measured bay 1 top = 45-1/2 in; measured bay 1 bottom = 45-5/8 in; measured bay 2 top = 45-5/8 in; measured bay 2 bottom = 45-3/4 in; measured bay 3 top = 45-5/8 in; measured bay 3 bottom = 45-3/4 in")
	text := inOne(c.say("ask cuts").Text)
	require.Equal(t, 1, strings.Count(text, "Ends square: over one face an end is out by less than a 1/16 mark."), text)
	require.Equal(t, 1, strings.Count(text, "The width is that at each rail's top edge, its narrowest."))
	c.say("measured bay 3 top = 45-3/4 in; measured bay 3 bottom = 45-5/8 in")
	text = inOne(c.say("ask cuts").Text)
	require.Contains(t, text, "Bays 1 and 2: the width is that at each rail's top edge, its narrowest. Bay 3: the width is that at each rail's bottom edge, its narrowest.")
}
