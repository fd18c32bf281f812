package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// Short lines that lean on what was spoken of before: what is heard of the last of them, and a piece of what is asked where it is asked back.
func TestLeanOnWhatWasSpokenOf(t *testing.T) {
	for _, row := range []struct{ said, heard, asked string }{
		{"opening 30 on the left|other side please", "opening side = right", ""},
		{"opening 30 on the left|no, other side", "opening side = right", ""}, // once the ground beyond: drop = 0
		{"opening 30 on the right|flip it to the other end", "opening side = left", ""},
		{"opening 30 on the left|hmm, the other side", "opening side = right", ""},
		{"opening 30 on the left|swap sides", "opening side = right", ""},
		{"opening 30 on the left|what if it's on the other side", "what if opening side = right", ""},
		{"opening 30 on the left|gap 2|other side", "", "Shall the opening go to the other side?"},
		{"opening 30 on the left|gap 2|other side|yes", "opening side = right", ""},
		{"opening 30 in the middle|other side", "", "At which side"},
		{"opening 30, 36 from the left|other side|the right one", "opening side = right", ""},
		{"other side", "", "The other side of what?"},
		{"opening 30 on the left|it's 30 inches lower on the other side", "drop = 30 in", ""},
		{"how tall is the wall|make it a foot taller", "wall height += 12 in", ""},
		{"how wide is the gap|make it a half inch wider", "gap += 1/2 in", ""},
		{"round the gaps to an eighth", "", "smallest mark to work to, or the gap"},
		{"round the gaps to an eighth|1", "tape = 1/8 in", ""},
		{"round everything to an eighth", "tape = 1/8 in", ""},
		{"make the gaps 1/8", "gap = 1/8 in", ""},
		{"round the gap to 2 1/2", "gap = 2-1/2 in", ""},
	} {
		requireHeard(t, "wall 42 high, gap 2.5, 12 feet between the posts|"+row.said, row.heard, row.asked)
	}
}

// requireHeard says lines, put apart by strokes, in a new talk: of the last one it wants what is heard, and the question where one is told.
func requireHeard(t *testing.T, said, heard, asked string) {
	t.Helper()
	talk := talking(t)
	var a *solver.Answer
	for _, line := range strings.Split(said, "|") {
		a = talk.say(line)
	}
	require.Equal(t, heard, strings.Join(a.Heard, "; "), said)
	if asked != "" {
		require.NotNil(t, a.Ask, said)
		require.Contains(t, a.Ask.Text, asked, said)
	}
}

// What comes in unasked is told, and what an ask in the breath of a what-if wants is solved for.
func TestTellsWhatComesInUnasked(t *testing.T) {
	told := func(lines ...string) string {
		talk := talking(t)
		a := talk.say("wall 42 high, gap 2.5, 12 feet between the posts")
		for _, line := range lines {
			a = talk.say(line)
		}
		return strings.Join(strings.Fields(a.Text), " ")
	}
	require.Contains(t, told("only one stiffener"), "One post comes in that you did not ask for: none before, one now, as so few stiffeners")
	require.Contains(t, told("opening 30", "stiffeners no more than 24 apart", "no stiffeners"), "come in that you did not ask for")
	require.NotContains(t, told("opening 30"), "you did not ask for", "an opening wants its post")
	require.NotContains(t, told("no bay over 5 feet"), "you did not ask for")
	require.Contains(t, told("opening 30", "36 from the left"), "30 stays open, beginning 36 from the left post")

	require.Contains(t, told("what wall gives a 3 inch gap"), "With what you said of the wall left open and five rails: The wall is 42-1/2.")
	require.Contains(t, told("what gap gives six rails"), "With what you said of the gap left open: Six rails won't go: with the least gaps the brackets leave they take 43")
	require.NotContains(t, told("what gap gives six rails"), "The gap is 2-1/2")
	require.Contains(t, told("opening 30", "what opening gives 40 inch bays"), "With what you said of the opening left open: The opening is 100-1/2.")
	require.Contains(t, told("what if gap 2, how many rails"), "Five rails")
	talk := talking(t)
	talk.say("wall 42 high, gap 2.5")
	talk.say("what wall gives a 3 inch gap")
	require.Equal(t, []string{"wall height = 42 in", "gap = 2-1/2 in"}, forms(talk.now.book("")), "nothing is changed")
	require.Equal(t, solver.Fits, talk.say("take that").Verdict)
	require.Equal(t, []string{"wall height = 42 in", "gap = 3 in"}, forms(talk.now.book("")), "what was tried is kept, and not what was solved for")
}

// A spacing from center to center that does not come out is told in one sentence, with how to say that it is only a limit.
func TestSpacingThatDoesNotComeOut(t *testing.T) {
	for line, want := range map[string]string{
		"12 feet between the posts, stiffeners 30 on center":             "Spaces of 30 don't come out: four with three posts reach 130-1/2, five take 150, and the span is 144.",
		"12 feet between the posts, opening 30, stiffeners 24 on center": "Spaces of 24 don't come out: four with the posts and the opening reach 140, five with the posts and the opening take 153-1/2",
		"12 feet between the posts, two bays, stiffeners 20 on center":   "seven with one post reach 143-1/2, seven with two posts take 147",
	} {
		talk := talking(t)
		text := strings.Join(strings.Fields(talk.say(line).Text), " ")
		require.Contains(t, text, want)
		require.Contains(t, text, "is only the most: `forget stiffener spacing, stiffeners no more than")
		require.Equal(t, solver.Fits, talk.say("forget stiffener spacing, stiffeners no more than 30 apart").Verdict, line)
	}
}

// A way out whose figure no tape shows says which mark does it too; the way itself stays exact.
func TestWayOutOnTheTape(t *testing.T) {
	talk := talking(t)
	a := talk.say("wall 42, six rails")
	text := strings.Join(strings.Fields(a.Text), " ")
	require.Contains(t, text, "Brackets that clear at 1-7/11, 4/11 less; 1-5/8 on the tape does it too")
	require.Contains(t, strings.Join(strings.Fields(talk.say("12 feet between the posts, three bays of 46, two added posts, rails 5").Text), " "), "no tape shows that, the nearest mark is 45-11/16")
	for _, w := range a.Ways {
		for _, c := range w.Changes {
			if c.OnTape != nil {
				again := talking(t)
				again.say("wall 42, six rails")
				require.NotEqual(t, solver.Blocked, again.say("brackets clear at 1-5/8").Verdict)
			}
		}
	}
}
