package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Lines that hold the words of a statement, and none of its meaning, do nothing; common speech, no source.
func TestMustBeAsked(t *testing.T) {
	for _, line := range []string{
		"Not that I want the wall to be 54 inches high, mind you.",
		"this sawhorse is 32 high",
		"post ht = wh +",
		"gap between two and",
		"open the window, it's dusty in here",
		"open the other box of screws",
		"I've sanded five boards and my back is killing me",
		"she keeps telling me forget the gap",
		"the guy with the level claims the slab drops an inch and a half to the right",
	} {
		require.Empty(t, Read(line, Context{}).Acts, line)
	}
	for _, c := range [][2]string{
		{"less gap than 3 inches", "gap < 3 in"},
		{"no more gap than an inch and three quarters", "gap <= 1-3/4 in"},
		{"no less opening than 30", "opening >= 30 in"},
		{"start the opening right at 40 inches off the left post", "opening from left = 40 in"},
		{"open porch", "open porch"},
	} {
		require.Equal(t, c[1], Normal(Read(c[0], Context{}).Acts), c[0])
	}
}
