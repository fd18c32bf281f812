package draw

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain/figure"
	"saywright/solver"
)

// What a sheet takes for granted is in the sheet's own unit.
func TestAssumedInMillimeters(t *testing.T) {
	a := &solver.Answer{Assumed: []string{"rail size = 2x6", "screw length = 1-5/8 in", "stock = 96 in, 120 in", "kerf = 1/8 in", "post height = wall height + 2 in",
		"floor at right = -1-1/2 in", "tape = 1 mm", "most rails", "opening side = right", "fit = 0.5 in"}}
	require.Equal(t, a.Assumed, reading{}.assumed(a))
	require.Equal(t, []string{"rail size = 2x6", "screw length = 41.275 mm", "stock = 2438.4 mm, 3048 mm", "kerf = 3.175 mm", "post height = wall height + 50.8 mm",
		"floor at right = -38.1 mm", "tape = 1 mm", "most rails", "opening side = right", "fit = 12.7 mm"}, reading{Style: figure.Style{Metric: true}}.assumed(a))
}
