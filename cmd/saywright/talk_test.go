package main

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain"
	"saywright/solver"
)

// conversation says lines in normal form and tells what stood after each.
type conversation struct {
	*Talk
	t *testing.T
}

func talking(t *testing.T) conversation {
	t.Chdir(t.TempDir())
	return conversation{testTalk(t, &explain.Options{Width: 80}), t}
}

// say says a line, holds its answer to what every answer must be, and returns it.
func (c conversation) say(line string) *solver.Answer {
	c.t.Helper()
	before := c.now
	a := c.Reply(line)
	checkAnswer(c.t, c.Talk, before, a)
	checkSums(c.t, a)
	return a
}

// stands holds what stands for the wall at hand.
func (c conversation) stands(want ...string) {
	c.t.Helper()
	require.Equal(c.t, want, append([]string(nil), forms(c.now.book(c.now.hand))...))
}

// nothing says a line that has nothing to act on: it is heard, open, and asks; nothing changes.
func (c conversation) nothing(line, key string) *solver.Answer {
	c.t.Helper()
	before := c.now
	a := c.say(line)
	require.Equal(c.t, solver.Open, a.Verdict, line)
	require.NotEmpty(c.t, a.Heard, line)
	require.NotNil(c.t, a.Ask, line)
	require.Equal(c.t, key, a.Ask.Key, line)
	require.True(c.t, before.same(c.now), line)
	return a
}

// answers.md: what is understood but has nothing to act on is heard, and open with an ask.
func TestNothingToActOn(t *testing.T) {
	c := talking(t)
	for line, key := range map[string]string{
		"undo": "nothing to undo", "redo": "nothing to redo", "take that": "nothing tried", "take 1": "nothing blocked",
		"show it all": "nothing answered", "next": "no steps yet", "forget gap": "nothing to forget", "save porch": "nothing to save",
		"open porch": "not saved", "compare porch, shed": "not saved", "same as north wall": "not saved",
		"gap += 1/4 in": "nothing to change", "what if gap *= 2": "nothing to change",
		"draw to porch.svg": "nothing to draw", "print to porch.html": "nothing to draw",
	} {
		c.nothing(line, key)
	}
	c.say("gap = 2 in; rails = 6; wall height = 48 in")
	c.nothing("gap = 3 in; undo; undo; undo", "nothing to undo") // all or nothing
	c.stands("gap = 2 in", "rails = 6", "wall height = 48 in")
	c.nothing("gap = 3 in; open porch", "not saved")
	c.stands("gap = 2 in", "rails = 6", "wall height = 48 in")
	c.nothing("save porch; forget kerf", "nothing to forget")
	_, err := c.shelf.load("porch")
	require.Error(t, err, "nothing is written where the line is not carried out")
}

func TestWhyThatWithNothingBefore(t *testing.T) {
	a := talking(t).say("why that") // language.md: with no answer before it is unclear
	require.Equal(t, solver.Unclear, a.Verdict)
	require.Empty(t, a.Heard)
}

func TestUndoGoesByLines(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap = 2-1/2 in")
	c.say("gap += 1/4 in; ask layout")
	c.stands("wall height = 48 in", "gap = 2-3/4 in")
	c.say("recap")
	c.say("what if gap = 2 in")
	require.Contains(t, c.say("undo").Text, "nothing had been changed", "what was only tried is dropped first")
	c.stands("wall height = 48 in", "gap = 2-3/4 in")
	c.nothing("take that", "nothing tried")
	a := c.say("undo")
	require.Equal(t, []string{"undo"}, a.Heard)
	c.stands("wall height = 48 in", "gap = 2-1/2 in")
	c.say("undo")
	require.True(t, c.now.empty())
	c.say("redo")
	c.say("redo")
	c.stands("wall height = 48 in", "gap = 2-3/4 in")
	c.nothing("redo", "nothing to redo")
	c.say("undo; gap = 3 in")
	c.stands("wall height = 48 in", "gap = 3 in")
	c.nothing("redo", "nothing to redo") // what was said since has taken its place
	c.say("undo")
	c.stands("wall height = 48 in", "gap = 2-1/2 in")

	c.say("start over")
	require.True(t, c.now.empty())
	c.say("undo")
	c.stands("wall height = 48 in", "gap = 2-1/2 in")
	c.say("rails = 5; undo") // takes back what this line said, and no more
	c.stands("wall height = 48 in", "gap = 2-1/2 in")
}

func TestStartOverForgetsUnitsToo(t *testing.T) {
	c := talking(t)
	a := c.say("units = metric")
	require.True(t, a.Metric)
	c.say("gap = 60 mm")
	a = c.say("start over")
	require.False(t, a.Metric)
	require.False(t, c.now.metric())
	require.Nil(t, c.last)
	require.Equal(t, solver.Unclear, c.say("why that").Verdict)
}

func TestUnitsAreThePersonsNotTheWalls(t *testing.T) {
	c := talking(t)
	c.say("north wall: gap = 60 mm")
	c.say("units = metric")
	c.say("south wall: gap = 50 mm")
	require.True(t, c.now.metric())
	require.Equal(t, []string{"units = metric", "gap = 50 mm"}, forms(c.now.book("south wall")))
	c.say("forget all but gap")
	require.True(t, c.now.metric())
}

func TestWhatIfIsKeptUntilTakeThat(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in")
	a := c.say("what if gap = 2 in")
	require.Equal(t, solver.Fits, a.Verdict)
	require.Equal(t, "2", a.Layout.Gap.String())
	c.stands("wall height = 40 in", "gap = 2-1/2 in")
	c.say("what if gap += 1/4 in")
	c.say("span = 149 in") // something else is said in between
	a = c.say("take that")
	c.stands("wall height = 40 in", "span = 149 in", "gap = 2-3/4 in")
	require.Equal(t, "gap = 2-1/2 in", a.Replaced[0].Old.String())
	a = c.say("undo")
	require.Contains(t, a.Text, "2-3/4", "what is taken back is told by what it was")
	c.stands("wall height = 40 in", "gap = 2-1/2 in", "span = 149 in")
}

// An ask in the same breath as a what-if answers within it (language.md).
func TestAsksAfterAWhatIf(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap = 2-1/2 in")
	a := c.say("what if rails = 5; ask gap; ask marks")
	require.Equal(t, 5, a.Layout.Rails)
	require.Len(t, a.Marks[0].Rows, 5)
	a = c.say("ask rails")
	require.Equal(t, 6, a.Layout.Rails)
	c.stands("wall height = 48 in", "gap = 2-1/2 in")
}

func TestAStatementAndItsAsksAnswerBoth(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap = 2-1/2 in; span = 144 in")
	a := c.say("gap = 2 in; ask cuts; ask cautions")
	require.NotNil(t, a.Layout)
	require.NotEmpty(t, a.Cuts)
	require.NotEmpty(t, a.Options)
	require.Equal(t, []string{"gap = 2 in", "ask cuts", "ask cautions"}, a.Heard)
	require.Contains(t, a.Text, "no longer 2-1/2", "what was replaced is told")
}

// B1 of the dialogues: wall 50, seven rails, blocked. Each way out must stand when it is taken.
func TestTakeAWayOut(t *testing.T) {
	const said = "wall height = 50 in; rail size = 2x6; rails = 7; bottom gap = gap"
	c := talking(t)
	a := c.say(said)
	require.Equal(t, solver.Blocked, a.Verdict)
	ways := len(a.Ways)
	require.GreaterOrEqual(t, ways, 3)
	for i := range ways {
		c := talking(t)
		c.say(said)
		c.say("recap") // something that blocks nothing may come in between
		way := a.Ways[i]
		got := c.say("take " + string(rune('1'+i)))
		require.Equal(t, solver.Fits, got.Verdict, "way %d: %v", i+1, way.Changes)
		for _, change := range way.Changes {
			require.Contains(t, forms(c.now.book("")), change.To, "way %d", i+1)
			require.NotContains(t, forms(c.now.book("")), change.From, "way %d", i+1)
		}
		require.Nil(t, c.stuck)
		c.say("undo")
		require.Equal(t, solver.Blocked, c.say("ask layout").Verdict)
	}
	c.nothing("take 99", "fewer ways")
	c.say("rails = 6")
	c.nothing("take 1", "nothing blocked")
}

// A way out of a what-if takes the what-if along.
func TestTakeAWayOutOfAWhatIf(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap = 2-1/2 in")
	a := c.say("what if rails = 7")
	require.Equal(t, solver.Blocked, a.Verdict)
	to := a.Ways[0].Changes[0].To
	a = c.say("take 1")
	require.Equal(t, solver.Fits, a.Verdict)
	stands := forms(c.now.book(""))
	require.Contains(t, stands, to)
	if !strings.HasPrefix(to, "rails") {
		require.Contains(t, stands, "rails = 7")
	}
}

func TestForget(t *testing.T) {
	c := talking(t)
	c.say("gap in 2 in..3 in; wall height = 48 in; span = 144 in; opening >= 24 in")
	a := c.say("forget gap <= 3 in")
	c.stands("gap >= 2 in", "wall height = 48 in", "span = 144 in", "opening >= 24 in")
	require.NotContains(t, a.Text, "Heard", "what is forgotten is not told as said")
	c.say("forget opening")
	c.stands("gap >= 2 in", "wall height = 48 in", "span = 144 in")
	c.say("forget all but gap, span")
	c.stands("gap >= 2 in", "span = 144 in")
}

func TestSetAside(t *testing.T) {
	c := talking(t)
	a := c.say("wall height = 30 in; gap = 2-1/2 in; drop = 34 in") // under the 36 in of a guard
	require.Equal(t, solver.Blocked, a.Verdict)
	a = c.say("set aside guard")
	require.NotEqual(t, solver.Blocked, a.Verdict)
	require.NotEmpty(t, a.Cautions, "its caution stays")
	c.say("save low")
	c.say("start over")
	a = c.say("open low")
	require.NotEqual(t, solver.Blocked, a.Verdict)
	c.stands("wall height = 30 in", "gap = 2-1/2 in", "drop = 34 in", "set aside guard")
}

// A question is about one part of a line; its answer lets the others stand too.
func TestAChoiceKeepsTheRestOfTheLine(t *testing.T) {
	c := talking(t)
	a := c.say("wall height = 4 in; gap = 2-1/2 in; opening = 3 in")
	require.Equal(t, solver.Unclear, a.Verdict)
	require.Equal(t, []string{"wall height = 4 in", "wall height = 48 in"}, a.Ask.Choices)
	a = c.say("2")
	require.Equal(t, solver.Unclear, a.Verdict, "the next part is in doubt too")
	require.Contains(t, a.Ask.Choices, "opening = 36 in")
	a = c.say("opening = 36 in")
	require.Equal(t, []string{"wall height = 48 in", "gap = 2-1/2 in", "opening = 36 in"}, a.Heard)
	c.say("undo")
	require.True(t, c.now.empty(), "it was one line")

	c.say("wall height = 4 in; gap = 2-1/2 in")
	c.say("rails = 5") // something else instead of an answer
	c.stands("rails = 5")
	require.Equal(t, solver.Unclear, c.say("2").Verdict, "the question is closed")
}

func TestALessonGoesOnAfterOtherLines(t *testing.T) {
	c := talking(t)
	c.say("wall height = 50 in; rail size = 2x6; rails = 6; bottom gap = gap")
	c.say("teach gap")
	require.NotNil(t, c.lesson)
	require.Contains(t, c.say("36").Text, "5-1/2", "B4 of the dialogues: 6 × 6 is the name, not the face")
	c.say("recap")
	c.say("33")
	c.say("17, 6")
	a := c.say("2-5/6")
	require.Nil(t, c.lesson, "the lesson is over")
	require.Contains(t, a.Text, "2-5/6")
	c.stands("wall height = 50 in", "rail size = 2x6", "rails = 6", "bottom gap = gap")

	c = talking(t)
	c.say("teach gap")
	require.Nil(t, c.lesson, "no wall, no lesson")
}

func TestNextWalksThroughTheSteps(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap = 2-1/2 in; span = 144 in")
	all := c.say("ask steps").Steps
	require.Greater(t, len(all), 5)
	for i := range all {
		a := c.say("next")
		require.Len(t, a.Steps, 1)
		require.Equal(t, all[i].Do, a.Steps[0].Do)
	}
	require.Empty(t, c.say("next").Steps)
	require.Equal(t, all[0].Do, c.say("next").Steps[0].Do)
}

func TestItIsWhatWasSpokenOfLast(t *testing.T) {
	c := talking(t)
	c.say("gap = 2 in")
	require.Equal(t, []string{"gap = 3 in"}, c.say("make it 3").Heard)
	c.say("ask rails")
	require.Equal(t, []string{"rails = 5"}, c.say("make it 5").Heard)
	c.say("wall height = 40 in; gap = 2-1/2 in")
	require.Equal(t, solver.Unclear, c.say("make it 3").Verdict, "two things: it could be either")
	c.say("wall height = 40 in; gap = 2-1/2 in")
	require.Equal(t, []string{"what if gap = 2 in"}, c.say("what if I tighten it to two").Heard, "only gaps are tightened")
	c.say("gap >= 2 in; gap <= 3 in")
	require.Equal(t, []string{"gap = 2 in"}, c.say("make it 2").Heard)
	c.say("recap")
	require.Equal(t, solver.Unclear, c.say("make it 3").Verdict)
}

// What is only claimed is never set, however it is pasted.
func TestClaimsOverSeveralLines(t *testing.T) {
	for _, lines := range [][]string{
		{"they say: six boards,", "gap 2-3/8,", "wall 50"},
		{"the sheet says:", "rails = 6,", "gap = 2-3/8 in,", "wall height = 50 in"},
		{"the sheet says:", "- 6 rails", "- gap 2-3/8", "- wall 50 high"},
		{"check rails = 6", "• gap = 2-3/8 in", "• wall height = 50 in"},
	} {
		c := talking(t)
		c.say("wall height = 48 in")
		var a *solver.Answer
		for _, line := range lines {
			a = c.say(line)
			c.stands("wall height = 48 in")
		}
		require.Equal(t, []string{"check rails = 6, gap = 2-3/8 in, wall height = 50 in"}, a.Heard, "%q", lines)
		require.Len(t, a.Check, 3)
		require.Equal(t, []string{"gap = 2 in"}, c.say("gap = 2 in").Heard, "the list is over")
	}
}

func TestADroppedLineChangesNothing(t *testing.T) {
	c := talking(t)
	c.say("gap = 2 in")
	before := *c.Talk
	ctx, drop := context.WithCancel(context.Background())
	drop()
	done := c.consider(ctx, "gap = 3 in; wall height = 48 in; save porch; draw to porch.svg")
	require.True(t, before.now.same(c.now))
	require.True(t, before.now.same(done.next.now), "a line dropped before it began does nothing")
	require.Empty(t, c.shelf.names())
	require.NoFileExists(t, "porch.svg")
}

func TestOurMistakeCostsOneAnswer(t *testing.T) {
	c := talking(t)
	c.say("gap = 2 in")
	c.show = func() explain.Options { panic("a shelf fell down") }
	a := reply(c.Talk, "gap = 3 in")
	require.Equal(t, solver.Unclear, a.Verdict)
	require.Contains(t, a.Text, "gap = 3 in", "the line to report")
	require.Contains(t, a.Text, "a shelf fell down")
	c.show = func() explain.Options { return explain.Options{Width: 80} }
	c.stands("gap = 2 in")
}

// A question is answered by what it hangs on: the gap needs no span, and without a height it is the height that is asked for.
func TestAsksForWhatTheQuestionHangsOn(t *testing.T) {
	for _, c := range []struct{ said, asks, key string }{
		{"opening 32", "what's the gap", "want height"},
		{"span 144", "how many rails", "want height"},
		{"gap 2", "how wide are the bays", "want span"},
		{"wall 48 high", "what's the gap", ""},
		{"opening 32", "how wide is the opening", ""},
	} {
		talk := talking(t)
		talk.say(c.said)
		a := talk.say(c.asks)
		if c.key == "" {
			require.Nil(t, a.Ask, c.asks)
			continue
		}
		require.NotNil(t, a.Ask, c.asks)
		require.Equal(t, c.key, a.Ask.Key, "%s; %s", c.said, c.asks)
	}
}
