package solver

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// An opening that one statement alone speaks of is still there while that statement gives way: its least change is
// found like any other's. By hand: 100 less a bay of 40 and a post of 3-1/2 leaves 56-1/2.
func TestOnlyWordOfAnOpeningGivesWay(t *testing.T) {
	a := Solve(bookOf(t, "post size = 4x4", "span = 100 in", "bay >= 40 in", "opening = 60 in"))
	require.Equal(t, Blocked, a.Verdict)
	var to []string
	for _, w := range a.Ways {
		require.Len(t, w.Changes, 1)
		to = append(to, w.Changes[0].To)
	}
	require.ElementsMatch(t, []string{"span = 103-1/2 in", "opening = 56-1/2 in", "bay >= 36-1/2 in"}, to)
}

// Two bays of 30 and a post are not 92 in, but with the opening that was spoken of they are: that is no conflict. What
// clashes is what was said of the bay twice, and either can be mended.
func TestNoConflictByLeavingAnOpeningOut(t *testing.T) {
	a := Solve(bookOf(t, "post size = 4x4", "span = 92 in", "bays = 2", "bay = 30 in", "bay <= 28 in", "opening >= 20 in"))
	require.Equal(t, Blocked, a.Verdict)
	require.Len(t, a.Because, 1)
	require.Equal(t, "bay = 30 in", a.Because[0][0].Says)
	require.Equal(t, "bay <= 28 in", a.Because[0][1].Says)
	var to []string
	for _, w := range a.Ways {
		to = append(to, w.Changes[0].To)
	}
	require.ElementsMatch(t, []string{"bay = 28 in", "bay <= 30 in"}, to)
}

// Of a range one end gives way, and the other stays. By hand: the middle wants one bay b as long as two others and a post
// of 3-1/2 between them, and b is at most 20-13/16: so the others are (20-13/16 - 3-1/2) / 2 = 8-21/32.
func TestOneEndOfARangeGivesWay(t *testing.T) {
	a := Solve(bookOf(t, "post size = 4x4", "openings = 1", "overall <= 103-7/16 in", "bays = 3", "bay in 15-3/4 in..20-13/16 in",
		"opening = 28-7/8 in", "opening side = middle"))
	require.Equal(t, Blocked, a.Verdict)
	var to []string
	for _, w := range a.Ways {
		to = append(to, w.Changes[0].To)
	}
	require.Contains(t, to, "bay in 8-21/32 in..20-13/16 in")
}

// Where no tape mark lies between the end that is not reached and the next limit, what stands lies between them all the
// same. By hand: 89-1/4 less three posts of 5-1/2 leaves 72-3/4, and an opening between 29-7/8 and 29-15/16 leaves three
// bays of less than (72-3/4 - 29-7/8) / 3 = 14-7/24 and more than 14-13/48. No sixteenth lies between.
func TestGivesWayBetweenTapeMarks(t *testing.T) {
	a := Solve(bookOf(t, "post size = 6x6", "openings = 1", "overall = 100-1/4 in", "added posts = 3", "bay = 26-5/16 in",
		"bay <= 23-7/16 in", "opening > 29-7/8 in", "opening < 29-15/16 in"))
	require.Equal(t, Blocked, a.Verdict)
	require.Len(t, a.Ways, 1)
	c := a.Ways[0].Changes[0]
	require.Equal(t, "bay < 14-7/24 in", c.To)
	require.Equal(t, "bay = 14-9/32 in", c.New.String())
	require.NotEqual(t, Blocked, Solve(a.Ways[0].Book).Verdict)
}
