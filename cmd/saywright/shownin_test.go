package main

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain"
)

// An answer wanted in millimeters is worked out and shown in them; before and behind it the person works in inches, and the other way
// about. 1 in is 25.4 mm (international inch, NIST Special Publication 811).
func TestAnswerInOtherUnit(t *testing.T) {
	talk := newTalk(t.TempDir(), func() explain.Options { return explain.Options{} })
	talk.Reply("wall 42 high, span 12 feet, opening 34 right, gap 2")

	require.Contains(t, talk.Reply("how wide is bay 1 in millimeters").Text, "2705.1") // 106-1/2 in
	require.Contains(t, talk.Reply("how wide is bay 1").Text, "106-1/2")
	cut := talk.Reply("cut list in mm")
	require.Contains(t, cut.Text, "2700")
	require.NotContains(t, cut.Text, "2700.3375 ") // to the whole millimeter, as on a tape
	require.NotContains(t, talk.Reply("recap").Text, "metric")

	talk.Reply("units metric")
	require.Contains(t, talk.Reply("what is the gap in inches").Text, "The gap is 2")
	require.Contains(t, talk.Reply("what is the gap").Text, "51 mm")
}

// What is tried in another unit is kept as it was said, and the unit is not kept with it.
func TestTrialInOtherUnit(t *testing.T) {
	talk := newTalk(t.TempDir(), func() explain.Options { return explain.Options{} })
	talk.Reply("wall 42 high, span 12 feet")
	require.Contains(t, talk.Reply("what if the gap were 60 mm, in millimeters").Text, "60 mm apart")
	talk.Reply("take that")
	require.NotContains(t, talk.Reply("recap").Text, "metric")
	require.Contains(t, talk.Reply("how high is the wall").Text, "42")
}
