package main

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// The figures were worked out by hand, twice, before this program was written: common practice, no source.
func TestWhatToBuyForTheUpstreamSide(t *testing.T) {
	c := talking(t)
	c.say("wall height = 40 in; gap = 2-1/2 in; span = 149 in; opening = 30 in; opening side = right; fit = 1/8 in")
	c.say("measured bay 1 bottom = 115-1/2 in; measured bay 1 top = 115-3/16 in")
	a := c.say("base height = 1 in; have 2x6 192 in x 2; ask shopping")
	bought := map[string]int{}
	for _, b := range a.Shopping {
		name := b.Item
		if b.Length != nil {
			name += " at " + solver.Fraction(*b.Length)
		}
		bought[name] += b.Count
	}
	require.Equal(t, map[string]int{
		"2x6 at 120": 3, // five rails, one from each sixteen on hand: two together take 114-7/8 + 114-15/16 + 1/8 = 229-15/16
		"1x4 at 96":  1, // 2 × 37-1/2 + 1/8 = 75-1/8
		"4x4 at 96":  1, // 42 − 1 = 41
		"bracket":    10,
		"screws":     60, // 10 × 4 + 2 × 5 × 2
		"post base":  1,
		"post cap":   1,
	}, bought)

	c.say("print to sheet")
	sheet, err := os.ReadFile("sheet.html")
	require.NoError(t, err)
	for _, wants := range []string{"2x6", "120", "117-1/4"} { // 115-1/2 + 3-1/2 ÷ 2: the middle of the base
		require.True(t, strings.Contains(string(sheet), wants), wants)
	}
}
