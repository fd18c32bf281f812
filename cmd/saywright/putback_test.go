package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// Behind an undo, "put that back" brings back what it took.
func TestPutBackBehindUndo(t *testing.T) {
	const first = "wall height = 42 in; rails = 5; span = 144 in"
	for _, row := range []struct{ lines, heard string }{
		{"gap = 2-3/4 in|undo|put that back", "redo"},
		{"gap = 2-3/4 in|take that back|put it back", "redo"},
		{"gap = 2-3/4 in|undo|ask rails|no, put that back please", "redo"},
		{"what if gap = 2-3/4 in|undo|put that back", "what if gap = 2-3/4 in"},
		{"gap = 2-3/4 in|put that back", "undo"},
		{"gap = 2-3/4 in|gap = 3 in|put that back|put that back", "undo"}, // said again it takes back one more
		{"gap = 2-3/4 in|undo|gap = 3 in|put that back", "undo"},
		{"gap = 2-3/4 in|undo|redo|put that back", "undo"},
		{"gap = 2-3/4 in|undo|put that back|put that back", "undo"},
		{"gap = 2-3/4 in|undo|undo", "undo"},
	} {
		c := talking(t)
		c.say(first)
		var a *solver.Answer
		for _, line := range strings.Split(row.lines, "|") {
			a = c.say(line)
		}
		require.Equal(t, []string{row.heard}, a.Heard, row.lines)
	}
	c := talking(t)
	c.say(first)
	c.say("gap = 2-3/4 in")
	c.say("undo")
	c.say("put that back")
	c.stands("wall height = 42 in", "rails = 5", "span = 144 in", "gap = 2-3/4 in")
}

// What is asked to be drawn is drawn, also where the conversation has shown before what stands in the way.
func TestDrawsWhatIsBlocked(t *testing.T) {
	c := talking(t)
	first := c.say("wall height = 42 in; rails = 6; gap = 3 in").Text
	picture := first[strings.LastIndex(first, "\n\n")+2:]
	require.Contains(t, picture, "too high")
	require.Contains(t, c.say("draw it").Text, picture)
	require.NotContains(t, c.say("ask cuts").Text, picture)
}

// A wall that grows is told whatever made it grow; how far apart its posts stand is asked for once.
func TestWallGrowsBehindForgetting(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; bay 1 = 60 in; bay 2 = 60 in")
	const ask = "If they stand already, tell me how far apart"
	require.Contains(t, inOne(c.say("opening = 30 in; opening side = right").Text), ask)
	text := inOne(c.say("forget opening").Text)
	require.Contains(t, text, "That makes the wall 33-1/2 shorter: 123-1/2 between the end posts, 157 before.")
	require.NotContains(t, text, ask)
	c.say("what if opening = 32 in")
	require.Contains(t, inOne(c.say("take that").Text), "That makes the wall 35-1/2 longer: 159 between the end posts, 123-1/2 before.")
	require.NotContains(t, inOne(c.say("undo").Text), "That makes the wall")
}

// Behind each trial a question is told to be of what stands, be it the same trial once more; once a line.
func TestOfWhatStandsBehindEachTrial(t *testing.T) {
	c := talking(t)
	c.say("wall height = 42 in; rails = 5; span = 144 in")
	for range 2 {
		c.say("what if gap = 2-3/4 in")
		require.Equal(t, 1, strings.Count(c.say("ask rails; ask gap").Text, "Of what stands, without what you tried: a gap of 2-3/4."))
	}
}

// What is kept is what stands then: a way out may give up what was tried.
func TestKeptIsWhatStands(t *testing.T) {
	c := talking(t)
	c.say("wall height = 42 in; span = 144 in")
	c.say("what if rails = 6")
	a := c.say("take 1")
	require.Equal(t, 5, a.Layout.Rails)
	require.NotContains(t, a.Text, "six rails and five rails")
	require.Contains(t, a.Text, "Five rails")
	require.Contains(t, c.say("undo").Text, "Taken back: five rails.")
}

// What was forgotten is told in words, not as a normal form.
func TestForgettingInWords(t *testing.T) {
	c := talking(t)
	c.say("wall height = 42 in; rails = 5; gap = 2-3/4 in")
	c.say("price 2x6 144 in = 9.00")
	for _, row := range [][2]string{
		{"forget gap", "forgetting the gap"}, {"forget rails = 5", "forgetting five rails"}, {"forget all but rails, wall height", "forgetting all but the rails and the wall"},
		{"forget price 2x6 144 in", "forgetting the price of a 2x6 of 144"}, {"start over", "starting over"},
	} {
		c.say(row[0])
		require.True(t, strings.HasPrefix(c.say("undo").Text, "Taken back: "+row[1]+"."), row[0])
	}
	c.say("forget gap")
	c.say("what if rails = 4")
	require.Contains(t, c.say("undo").Text, "The last change stands: forgetting the gap")
}

// A claim that can hold and is not what came out is told with what is there.
func TestClaimBesideWhatStands(t *testing.T) {
	c := talking(t)
	c.say("wall height = 42 in; rails = 5; span = 144 in")
	a := c.say("check bottom gap = 4 in")
	require.True(t, *a.Check[0].Holds)
	require.Contains(t, inOne(a.Text), "It can be: a bottom gap of 4. Now it is 2-9/10 (about 2-7/8).")
	require.Contains(t, inOne(c.say("check added posts = 1").Text), "It can be: one added post. Now there are no added posts.")
	require.Contains(t, inOne(c.say("check bottom gap = 4 in, gap = 2-5/8 in").Text), "All of it can be, and not all of it is so now.")
	for _, so := range []string{"check rails = 5", "check gap <= 3 in", "check wall height = 42 in"} {
		require.True(t, strings.HasPrefix(c.say(so).Text, "Yes: "), so)
	}
	a = c.say("check gap = 2-7/8 in")
	require.False(t, *a.Check[0].Holds)
	require.Contains(t, inOne(a.Text), "It is off by 0.025, less than a tape shows; marks made from the floor don't add that up.")
	require.NotContains(t, c.say("check gap = 2-7/8 in, rails = 5").Text, "about 0")
}
