package main

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// A yes to several choices takes none of them: they are told once more, and still can be chosen.
func TestYesToSeveralChoices(t *testing.T) {
	talk := talking(t)
	talk.say("wall 48 high, gap 2.5")
	first := talk.say("twelve feet between the posts with an opening of 4")
	require.Len(t, first.Ask.Choices, 2)
	for _, yes := range []string{"yes", "ok", "yes please"} {
		a := talk.say(yes)
		require.Equal(t, solver.Unclear, a.Verdict, yes)
		require.Equal(t, "which one", a.Ask.Key, yes)
		require.Equal(t, first.Ask.Choices, a.Ask.Choices, yes)
		require.Empty(t, a.Heard, yes)
	}
	require.Equal(t, []string{"span = 144 in", "opening = 48 in"}, talk.say("2").Heard)
}
