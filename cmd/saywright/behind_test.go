package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// Behind what was only tried, "why" is of that, and "put that back" drops it first, whatever was asked in between.
func TestBehindATrial(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in")
	c.say("gap = 3 in")
	c.say("what if gap = 2 in")
	why := c.say("why rails").Text
	require.True(t, strings.HasPrefix(why, "Of what you tried: a gap of 2.\nFive rails."), why)
	require.Contains(t, inOne(why), "40 − 27-1/2 − 8 = 4-1/2")
	require.True(t, strings.HasPrefix(c.say("why that").Text, "Of what you tried: a gap of 2."))
	c.say("blorb the fnord") // asked back: it changes nothing of what is spoken of
	require.True(t, strings.HasPrefix(c.say("ask rails").Text, "Your line “blorb the fnord” was not taken in.\nOf what stands, without what you tried: a gap of 2.\nFour rails."))
	require.True(t, strings.HasPrefix(c.say("why rails").Text, "Four rails."), "what was asked last is what stands")
	require.Equal(t, "What was tried is dropped; nothing had been changed.\nThe last change stands: a gap of 3 (`undo` takes it back).", c.say("put that back").Text)
	c.stands("wall height = 40 in", "span = 149 in", "gap = 3 in")
	c.say("put that back")
	c.stands("wall height = 40 in", "gap = 2-1/2 in", "span = 149 in")
}

// What a trial is of is told by its own line as ever.
func TestAskWithinATrial(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in")
	require.NotContains(t, inOne(c.say("what if gap = 2 in; why rails").Text), "Of what you tried")
	c.say("take that")
	require.NotContains(t, inOne(c.say("why rails").Text), "Of what")
}

// Bays that were told fill the wall: an opening makes it longer, and that is told with how much.
func TestOpeningMakesTheWallLonger(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; bay 1 = 60 in; bay 2 = 60 in")
	a := c.say("opening = 30 in; opening side = right")
	require.Contains(t, inOne(a.Text), "That makes the wall 33-1/2 longer: 157 between the end posts, 123-1/2 before.") // 30 and a post of 3-1/2
	require.Equal(t, "157", a.Layout.Span.String())
	require.Contains(t, inOne(c.say("opening = 24 in").Text), "That makes the wall 6 shorter: 151 between the end posts, 157 before.")
	require.NotContains(t, inOne(c.say("span = 160 in").Text), "That makes the wall", "who tells the length knows of it")
}

// An opening in the middle leaves both sides the same room; three bays don't share it evenly, and that is told.
func TestBaysBesideAnOpeningInTheMiddle(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; span = 149 in; bays = 3")
	a := c.say("opening = 30 in; opening side = middle")
	require.Contains(t, inOne(a.Text), "two bays on the left and one on the right can't be equal")
	require.NotEqual(t, a.Layout.Bays[0].Width, a.Layout.Bays[2].Width)
	require.NotContains(t, inOne(c.say("bays = 4").Text), "can't be equal")
}

// What the tape found is held against the layout as soon as one of the two is told, not only at the saw.
func TestNotAsMeasured(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; span = 149 in; bays = 2")
	require.Contains(t, inOne(c.say("measured bay 1 bottom = 62 in").Text), "With the other bays as planned it comes to 138-1/4 along the wall, and the span is 149: 10-3/4 apart.")
	require.Contains(t, inOne(c.say("measured bay 2 bottom = 70 in").Text), "As measured it comes to 135-1/2 along the wall, and the span is 149: 13-1/2 apart.")
	require.Contains(t, inOne(c.say("opening = 30 in; opening side = middle").Text), "As measured it comes to 169 along the wall, and the span is 149: 20 apart.")
	require.NotContains(t, inOne(c.say("wall height = 41 in").Text), "As measured")
	require.Contains(t, inOne(c.say("openings = 0; bays = 1").Text), "There is no bay 2: the wall has one bay.")
}

func TestMeasuredAsItStands(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; span = 149 in; opening = 30 in; opening side = right")
	text := c.say("measured bay 1 bottom = 115-1/2 in; measured bay 1 top = 115-3/16 in").Text
	require.NotContains(t, inOne(text), "Which one")
}

// Rails told narrower than their boards are ripped, and the list says so; a face that only the tape finds is no other board.
func TestRailsNarrowerThanTheirBoards(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in")
	a := c.say("rails 90 mm wide")
	require.Equal(t, []string{"rail face = 90 mm"}, a.Heard)
	require.Contains(t, inOne(a.Text), "the list buys 2x6, and about 1-15/16 is to be ripped off each rail. A 2x4 is 3-1/2:")
	require.Contains(t, inOne(c.say("ask shopping").Text), "Each rail is ripped out of a 2x6: about 1-15/16 comes off its face.")
	require.Contains(t, inOne(c.say("rail face = 6 in").Text), "A 2x6 is only 5-1/2 on the face, and you told 6: no such board gives")
	require.NotContains(t, inOne(c.say("rail face = 5-3/8 in").Text), "on the face, and you told")
	require.NotContains(t, inOne(c.say("ask shopping").Text), "ripped")
	require.Empty(t, cautionsOf(a, "off the floor"))
}

// inOne takes the line breaks out of a text.
func inOne(text string) string { return strings.Join(strings.Fields(text), " ") }

func cautionsOf(a *solver.Answer, key string) (texts []string) {
	for _, c := range a.Cautions {
		if c.Key == key {
			texts = append(texts, c.Text)
		}
	}
	return texts
}

// What is there already comes off the list: nobody says how much it is, so what the list has of it is offered.
func TestThereAlready(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in; opening = 30 in; opening side = right")
	require.Contains(t, inOne(c.say("ask shopping").Text), "What is there already comes off the list: say `the posts are up` or `I have the brackets`.")
	a := c.say("the posts are up already")
	require.Equal(t, []string{"have 4x4 42 in x 1", "have 4x4 42 in x 1; have post base x 1", "have 4x4 42 in x 1; have post base x 1; have post cap x 1"}, a.Ask.Choices)
	require.Empty(t, a.Heard)
	require.Equal(t, []string{"have 4x4 42 in x 1", "have post base x 1"}, c.say("2").Heard)
	c.say("I have the brackets")
	require.Equal(t, []string{"have bracket x 10"}, c.say("yes").Heard)
	for _, b := range c.say("ask shopping").Shopping {
		require.NotContains(t, []string{"4x4", "post base", "bracket"}, b.Item)
	}
	require.Contains(t, c.say("the brackets are here").Ask.Text, "The list has none of that")
	require.Equal(t, []string{"have screws x 60"}, c.say("I have 60 screws").Heard)
	require.Contains(t, c.say("the post cap is here, what do I buy").Text, "1. One post cap\n")
	require.Equal(t, []string{"have post cap x 1", "ask shopping"}, c.say("yes").Heard)
}

// A wall without added posts buys none, and the end posts always stand.
func TestEndPostsAreThereAlready(t *testing.T) {
	c := talking(t)
	require.Equal(t, "How many are there, and how long? They come off the list then.", c.say("the posts are in").Ask.Text)
	require.Equal(t, "How many are there? They come off the list then.", c.say("I've got the screws").Ask.Text)
	c.say("wall height = 40 in; span = 100 in")
	require.Equal(t, "The end posts are never on the list, and this wall has no other post. What else is there?", c.say("the posts are already there").Ask.Text)
}

// Who works in millimeters is shown what a tape shows of boards sold in feet; the data stays exact.
func TestBoardsOfFeetInMillimeters(t *testing.T) {
	c := talking(t)
	c.say("units = metric; wall height = 1000 mm; gap = 60 mm; span = 3800 mm; opening = 900 mm; opening side = right")
	a := c.say("ask shopping")
	require.Contains(t, inOne(a.Text), "boards of 2438 mm, 3048 mm, 3658 mm and 4877 mm on sale; a saw cut of about 3 mm")
	require.Contains(t, inOne(a.Text), "one 1x4 at 2438 mm")
	require.NotContains(t, inOne(a.Text), "3657.6")
	for _, b := range a.Shopping {
		if b.Item == "1x4" {
			require.Equal(t, "96", b.Length.String())
		}
	}
}

// Lunch ends no talk: it is asked whether that is all for today, and a yes leaves.
func TestOffForLunch(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in")
	require.Equal(t, "Are you done for today?", c.say("I'm off for lunch").Ask.Text)
	require.Equal(t, []string{"quit"}, c.say("yes").Heard)
	require.Equal(t, []string{"quit"}, c.say("I'm off for the day").Heard)
}

// Who tells what one size comes in says nothing of the others: they are on sale as ever.
func TestOneSizeOnSale(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in; opening = 30 in; opening side = right")
	bought := func(a *solver.Answer) (list []string) {
		for _, b := range a.Shopping {
			if b.Length != nil {
				list = append(list, b.Item+" "+b.Length.String())
			}
		}
		return list
	}
	require.Equal(t, []string{"2x6 120", "1x4 96", "4x4 96"}, bought(c.say("ask shopping")))
	c.say("stock 4x4 = 120 in")
	a := c.say("ask shopping")
	require.Equal(t, []string{"2x6 120", "1x4 96", "4x4 120"}, bought(a))
	require.Contains(t, a.Assumed, "stock = 96 in, 120 in, 144 in, 192 in")
}

// A board that would do and has no price wants its price, and nothing else is told of what would do.
func TestPriceMissing(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in; price 2x6 120 in = 9.00")
	a := c.say("ask shopping")
	require.Contains(t, inOne(a.Text), "A 2x6 of 192 would do, but has no price while others have one. Say it so: `2x6 of 192 in for 9.50`.")
	require.NotContains(t, a.Text, "the shortest common one")
	require.Empty(t, a.Ways, "another board on sale without a price mends nothing")
	c.say("2x6 of 192 in for 14.50")
	require.Equal(t, solver.Fits, c.say("ask shopping").Verdict)
}

// A longer board that mends it is on sale beside the others, and taken it buys all sizes.
func TestLongerBoardTaken(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 205 in; bays = 1")
	require.Contains(t, c.say("ask shopping").Text, "1. 2x6 boards of 216 on sale too")
	require.Contains(t, c.say("take 1").Text, "2x6 boards of 96, 120, 144, 192 and 216 now, no longer 96, 120, 144 and 192.")
	require.Equal(t, solver.Fits, c.say("ask shopping").Verdict)
}

// What to watch out for is told in full once; asked again it is named, what is new stands first, and "show it all" tells it again.
func TestCautionsAskedAgain(t *testing.T) {
	c := talking(t)
	c.say("wall height = 42 in; span = 144 in; opening = 30 in; opening side = right")
	first := c.say("ask cautions")
	require.Contains(t, first.Text, "Treated wood eats plain steel")
	again := c.say("ask cautions")
	require.Contains(t, inOne(again.Text), "Nothing new to watch out for. As I told you: the code (local code decides); the opening that is a squeeze;")
	require.NotContains(t, again.Text, "Treated wood eats plain steel")
	require.Equal(t, first.Cautions, again.Cautions, "the data is complete each time")
	c.say("drop = 36 in")
	new := inOne(c.say("ask cautions").Text)
	require.Contains(t, new, "The ground beyond lies 36 lower, so this wall is a guard: 36 high or more, no gap that lets a 4 in ball through")
	require.Less(t, strings.Index(new, "The ground beyond"), strings.Index(new, "And as I told you: the opening that is a squeeze;"))
	require.Contains(t, c.say("show it all").Text, "Treated wood eats plain steel")
}

// More posts than before are the same danger: a few words tell it of them.
func TestMorePostsAtTheirFeet(t *testing.T) {
	c := talking(t)
	require.Contains(t, inOne(c.say("wall height = 42 in; span = 144 in; added posts = 1").Text), "The added post is held only at its foot; a base holds it down")
	require.Contains(t, inOne(c.say("added posts = 2").Text), "These posts, too, are held only at their feet: tie their tops")
	require.NotContains(t, c.say("added posts = 1").Text, "held only")
	require.NotContains(t, c.say("added posts = 2").Text, "held only")
}

// What stands in the way is told with its sums once. A question that it keeps from being answered says it shortly; who asks what would work, or why, hears it all.
func TestBlockedIsToldOnce(t *testing.T) {
	c := talking(t)
	require.Contains(t, c.say("wall height = 42 in; span = 144 in; gap = 2-1/2 in; drop = 36 in").Text, "33 + 12-1/2 = 45-1/2, and the wall is 42")
	a := c.say("ask shopping")
	require.True(t, strings.HasPrefix(a.Text, "Still in the way: no number of rails comes out"), a.Text)
	require.NotContains(t, a.Text, "45-1/2, and the wall is 42   ")
	require.Contains(t, a.Text, "`take 1` for")
	require.NotEmpty(t, a.Because)
	require.NotEmpty(t, a.Ways)
	for _, line := range []string{"ask options", "why that"} {
		require.Contains(t, c.say(line).Text, "33 + 12-1/2 = 45-1/2, and the wall is 42", line)
	}
	c.say("what if gap = 2 in")
	require.Equal(t, solver.Fits, c.say("take 2").Verdict)
}

// The ways out of what was only tried go with it: "take 1" then is of what stands, or of nothing.
func TestWaysOfADroppedTrial(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in")
	require.Equal(t, solver.Blocked, c.say("what if rails = 8").Verdict)
	c.say("undo")
	require.Equal(t, "Nothing is in the way that wants a way out. What do you want to know?", c.say("take 1").Ask.Text)
	c.stands("wall height = 40 in", "gap = 2-1/2 in", "span = 149 in")
	c.say("rails = 7")
	require.Equal(t, solver.Blocked, c.say("what if rails = 8").Verdict)
	c.say("undo")
	c.say("take 1")
	c.stands("wall height = 40 in", "gap = 2-1/2 in", "span = 149 in", "rails = 5")
}
