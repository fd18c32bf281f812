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
