package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/parse"
)

// Every normal form that language.md lists, written back as it was read.
func TestNormalFormsReadBack(t *testing.T) {
	for _, s := range normalForms {
		acts, err := parse.Parse(s)
		require.NoError(t, err, s)
		require.Len(t, acts, 1, s)
		require.Equal(t, s, acts[0].String())
	}
}

var normalForms = []string{
	"gap = 2-1/2 in", "opening >= 24 in", "gap < 4 in", "bay <= 96 in", "gap in 2 in..3 in", "wall height ~ 48 in", "rails = 6",
	"rails in 5..7", "rail size = 2x6", "bottom gap = gap", "post height = wall height + 2 in", "opening >= 2 * gap",
	"gap += 1/4 in", "gap -= 1/4 in", "stock = 96 in, 144 in, 192 in", "stock += 120 in", "stock -= 144 in", "stock 4x4 = 96 in",
	"price 2x6 192 in = 14.50", "price rails 192 in = 14.50", "price bracket = 3.49", "price post base = 18.50", "price screws 100 = 9.00",
	"have 2x6 144 in x 6", "extra 2x6 45-1/2 in x 12", "measured bay 1 rail 3 = 68-3/8 in", "measured bay 1 bottom = 68-3/8 in",
	"measured opening = 30 in", "rail 3 top = 24 in", "fixed rail 2 top = 16 in", "floor at right = -1-1/2 in", "floor falls 1/8 in per 12 in",
	"left post leans 3/8 in right in 48 in", "right post leans 9 mm left in 1200 mm", "equal bays", "same length", "even gaps",
	"smallest gap", "largest opening", "fewest rails", "most rails", "fewest posts", "cheapest", "least waste", "gap *= 2", "opening *= 11/10",
	"units = metric", "units = customary", "bay 1 = 60 in", "bay 2 stiffeners = 2", "opening 1 side = left", "opening 2 from left = 60 in",
	"post 1 from left = 40 in", "north wall: gap = 2 in", "rail size = 90x45", "gap = 62.5 mm", "gap = 2-37/100 in", "spare = 10%", "spare = 2",
	"budget = 350.00", "budget += 50.00", "slab thickness = 4 in", "edge distance = 6 in", "coats = 2", "screw length = 2 in", "pool = yes",
	"short bay 1 rail 3 = 1/4 in", "short rail 3 = 1/4 in", "tolerance = 1/16 in",
	"ask layout", "ask rails", "ask options", "ask story pole", "ask cuts as csv", "ask bay 1", "ask bay 2 stiffeners",
	"what if gap = 2 in", "what if rails = 5, gap = 3 in", "what if stock = 96 in, 144 in, rails = 5", "what if equal bays", "what if gap -= 1/4 in",
	"what if rail face += 1/16 in", "why rails", "why that", "why shopping", "why not rails = 7", "why not equal bays",
	"check rails = 6, gap = 2-3/8 in", "check cost = 380.00", "check cut bay 1 = 66-1/8 in", "check cut post = 44 in", "check marks = 8-1/2 in, 16-1/2 in",
	"check boards 2x6 144 in = 10", "teach gap", "show it all", "take 2", "take that", "forget gap", "forget gap <= 3 in", "forget measured bay 1 top",
	"forget all but gap", "forget all but gap, rails", "undo", "redo", "start over", "set aside guard", "recap", "save porch", "open porch", "compare porch, shed",
	"compare this, shed", "same as north wall", "draw to porch.svg", "print to porch.html", "help", "help gap", "quit", "next",
	"figure 17, 5", "figure 2-5/6",
}
