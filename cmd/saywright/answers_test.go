package main

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain"
)

// What is offered is taken by a yes, dropped by a no, and forgotten when another line comes.
func TestOfferInTalk(t *testing.T) {
	talk := newTalk(t.TempDir(), func() explain.Options { return explain.Options{} })
	said := "help your brother with the ladder. ok, gap two and seven eighths"

	a := talk.Reply(said)
	require.Equal(t, []string{"gap = 2-7/8 in"}, a.Ask.Choices)
	require.Equal(t, "Do you mean this?", a.Ask.Text)
	require.Empty(t, a.Heard)
	require.Equal(t, []string{"gap = 2-7/8 in"}, talk.Reply("yes").Heard)

	talk.Reply("start over")
	talk.Reply(said)
	require.Equal(t, "dropped", talk.Reply("no").Ask.Key)
	require.NotContains(t, talk.Reply("recap").Text, "2-7/8")

	talk.Reply(said)
	require.Equal(t, []string{"rails = 6"}, talk.Reply("six rails").Heard)
	require.NotNil(t, talk.Reply("yes").Ask, "the offer is gone")
}

// A yes behind a trial may keep it, a no behind an answer take it back; both are asked first.
func TestYesAndNoWhereNothingWasAsked(t *testing.T) {
	talk := newTalk(t.TempDir(), func() explain.Options { return explain.Options{} })
	talk.Reply("wall 48 high, 12 feet between the posts, 6 rails")
	talk.Reply("what if 5 rails")

	require.Equal(t, []string{"take that"}, talk.Reply("yes").Ask.Choices)
	require.Equal(t, []string{"take that"}, talk.Reply("yes").Heard)
	require.Contains(t, talk.Reply("recap").Text, "rails = 5")

	require.Equal(t, []string{"undo"}, talk.Reply("no").Ask.Choices)
	require.Equal(t, []string{"undo"}, talk.Reply("yes").Heard)
	require.Contains(t, talk.Reply("recap").Text, "rails = 6")
}

// What somebody else has is asked about; a yes wants it here, too.
func TestYesToAGuard(t *testing.T) {
	talk := newTalk(t.TempDir(), func() explain.Options { return explain.Options{} })
	require.Equal(t, []string{"opening = 36 in"}, talk.Reply("the garage door is 36 wide").Ask.Choices)
	require.Equal(t, []string{"opening = 36 in"}, talk.Reply("yes").Heard)
}

// A claim of what a board measures is held against its size: dry 2x6 are 5-1/2 wide (American Softwood Lumber Standard PS 20, table of dressed sizes).
func TestFaceClaimed(t *testing.T) {
	talk := newTalk(t.TempDir(), func() explain.Options { return explain.Options{} })
	talk.Reply("wall 48 high, 12 feet between the posts, 6 rails")

	told := talk.Reply("check rail size = 2x6, rail face = 6 in").Check
	require.False(t, *told[1].Holds)
	require.Equal(t, "11/2", told[1].ShouldBe)
	require.True(t, *talk.Reply("check rail face = 5-1/2 in").Check[0].Holds)

	talk.Reply("rail face = 5-3/8 in")
	require.False(t, *talk.Reply("check rail face = 5-1/2 in").Check[0].Holds, "what was measured goes before the size")
}

// To "is that too many" a yes would say the opposite of what is found.
func TestTooManyAsked(t *testing.T) {
	talk := newTalk(t.TempDir(), func() explain.Options { return explain.Options{} })
	talk.Reply("wall 48 high, 12 feet between the posts, 6 rails")
	require.Contains(t, talk.Reply("is 6 rails too many").Text, "That fits: six rails.")
	require.Contains(t, talk.Reply("is 8 rails too many").Text, "That won't go")
	require.Contains(t, talk.Reply("are six rails right").Text, "Yes: six rails.")
}
