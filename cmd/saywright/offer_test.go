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
