package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// TestTurnedPhrases reads turns of phrase by which somebody corrects, passes on or leans on what was said, and lines that only look so.
func TestTurnedPhrases(t *testing.T) {
	for _, c := range []struct{ said, want string }{
		{"keep the bottom board two inches off the deck no hold it three off", "bottom gap = 3 in"},
		{"hold the bottom rail three off the floor, no, hold it two off", "bottom gap = 2 in"},
		{"let's do it with six rails", "rails = 6"},
		{"let's build it with as few boards as possible", "fewest rails"},
		{"would the opening fit on the right side if it was 34 inches", "what if opening side = right, opening = 34 in"},
		{"my brother's wheelchair needs to get through here, so leave at least 35 inches for the doorway", "opening >= 35 in"},
		{"2x4s in eight foot just came on special at 4.99", "price 2x4 96 in = 4.99"},
		{"i need an inch and a half between every board and the next", "gap = 1-1/2 in"},
		{"what if we hung three boards with four inches between them", "what if rails = 3, gap = 4 in"},
		{"nah, I don't much like that one, undo it", "undo"},
		{"six boards with 3 inch gaps would come up to 48 inches; can you confirm that?", "check rails = 6, gap = 3 in, wall height = 48 in"},
		{"post ht wh + 2, marks?", "post height = wall height + 2 in; ask marks"},
		{"is there a rule against six rails", "why not rails = 6"},
		{"why are there stiffeners at all and what happens without any", "why stiffeners; what if stiffeners = 0"},
		{"the marks on my uncle's story pole are at 7, 15 and 23", "check marks = 7 in, 15 in, 23 in"},
		{"they ordered eight twelve-foot 2x6s, is eight right", "check boards 2x6 144 in = 8"},
		{"they had all lengths but the sixteens so leave them out", "stock -= 192 in"},
		{"how many slats should we hang per panel", "ask rails"},
		{"they want the added post cut at 44", "check cut post = 44 in"},
		{"they've got the rails in bay 2 cut at 58 1/2", "check cut bay 2 = 58-1/2 in"},
		{"she thinks we can't have an opening of 50, how so", "why not opening = 50 in"},
		{"weigh plan b against plan c, compare them", "compare plan b, plan c"},
		{"he says a six board wall at 50 inches, is he right", "check rails = 6, wall height = 50 in"},
		{"the plan says five rails, but we're using six rails", "check rails = 5; rails = 6"},
		{"don't let the gap come in over three", "gap <= 3 in"},
		{"top @ 45 off slab, btm gap 2", "wall height = 45 in; bottom gap = 2 in"},
		{"all numbers from me are in millimeters; gap 70", "units = metric; gap = 70 mm"},
		// What only looks so.
		{"could you do it with six rails", "what if rails = 6"},
		{"let's not do it with six rails", ""},
		{"would the sofa fit against the left wall if it was 84 wide", ""},
		{"two by sixes in twelve foot just went on sale", "stock 2x6 = 144 in"},
		{"six boards with 3 inch gaps would reach the window", ""},
		{"is there a rule against dogs", ""},
		{"they ordered nine pizzas, is nine right", ""},
		{"they had everything but screws, so leave those out", ""},
		{"may I change my mind? I would rather not have seven boards", ""},
		{"all measurements from him are in mm", ""},
		{"not all figures are in mm", ""},
	} {
		require.Equal(t, c.want, parse.Normal(Read(c.said, act.Context{}).Acts), c.said)
	}
}
