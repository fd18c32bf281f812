package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// Where none was spoken of, one more opening is one opening; one fewer has nothing to change.
func TestCountsStartAtNone(t *testing.T) {
	for _, name := range []Quantity{Openings, AddedPosts, Stiffeners} {
		next, _, _, err := Book{}.With(Of(name, Plus, Value{Num: exact.Int(1)}), nil)
		require.NoError(t, err, name)
		require.Equal(t, string(name)+" = 1", next.Standing()[0].String())
		_, _, _, err = Book{}.With(Of(name, Minus, Value{Num: exact.Int(1)}), nil)
		require.Error(t, err, name)
	}
}

// What stands word for word holds when it is claimed, and what differs from it does not: the rails take 6 x 5-1/2 = 33 of 48, and five
// gaps of 2-3/8 with 3-1/8 underneath take the other 15.
func TestWhatStandsHoldsWhenClaimed(t *testing.T) {
	b, _, _, err := Book{}.WithAll([]Statement{say(t, "wall height = 48 in"), say(t, "rails = 6"), say(t, "gap = 2-3/8 in")}, nil)
	require.NoError(t, err)
	base := Solve(b)
	for claim, holds := range map[string]bool{"gap = 2-3/8 in": true, "rails = 6": true, "bottom gap = 3-1/8 in": true, "gap = 2-1/2 in": false, "gap = 2 in": false} {
		a := Hold(b, base, []Statement{say(t, claim)})
		require.Equal(t, holds, *a.Check[0].Holds, claim)
		if !holds {
			require.Equal(t, "19/8", a.Check[0].ShouldBe, claim)
		}
	}
}
