package solver

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Five boards a sixteenth wide, each set from the one below with the gap there was, carry the top 5/16 up; told as a
// change, the face that is changed is the one taken for granted. By hand.
func TestBoardsThatRunWide(t *testing.T) {
	b := bookOf(t, "wall height = 48 in", "rails = 5", "rail size = 2x6")
	sums := func(try string) []string {
		a, _ := Try(b, Solve(b), []Statement{say(t, try)})
		var out []string
		for _, w := range a.Work {
			if w.Note == "drift" || w.Note == "drift top" {
				out = append(out, w.Expr.String())
			}
		}
		return out
	}
	require.Equal(t, []string{"5 * (1/16)", "48 + (5/16)"}, sums("rail face += 1/16 in"))
	require.Equal(t, []string{"5 * (1/8)", "48 - (5/8)"}, sums("rail face -= 1/8 in"))
	require.Empty(t, sums("rail face = 7 in"), "another board is none that runs wide")

	// without a layout the face comes from the size
	b = bookOf(t, "rail size = 2x6", "rail face += 1/16 in")
	require.Equal(t, "rail face = 5-9/16 in", b.Standing()[1].String())
	b = bookOf(t, "rail face -= 1/8 in")
	require.Equal(t, "rail face = 5-3/8 in", b.Standing()[0].String(), "2x6 is taken for granted")
}
