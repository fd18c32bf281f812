package solver

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestLinkedWallsListEveryCount: where a rule ties the bays to the height, a number of bays is listed if any number of rails
// lets it hold. 75 between the posts leaves room for 17 bays and 16 posts of 3-1/2 (56), and a wall of any height can be
// taller than a bay is wide.
func TestLinkedWallsListEveryCount(t *testing.T) {
	a := Solve(bookOf(t, "bay < wall height", "span = 75 in", "gap = 2 in", "post size = 4x4", "openings = 0"))
	require.Equal(t, Fits, a.Verdict)
	require.Len(t, a.Options.Along, 17)
	for i, o := range a.Options.Along {
		require.Equal(t, i, o.AddedPosts)
		require.Equal(t, i+1, o.Bays)
	}
	require.Equal(t, "75", a.Options.Along[0].Bay[0].Val.String())
}

// TestLinkedOpeningsListEveryCount: an opening in the middle with as many bays on either side as one likes.
func TestLinkedOpeningsListEveryCount(t *testing.T) {
	a := Solve(bookOf(t, "opening >= 1/2 * wall height", "opening side = middle"))
	require.Len(t, a.Options.Along, 15) // from one bay on each side to 16 posts
	require.Equal(t, 16, a.Options.Along[14].AddedPosts)
}
