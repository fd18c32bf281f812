package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What stacks up the wall is taken by its gist, whatever the words and their order.
func TestGistUp(t *testing.T) {
	for _, c := range [][2]string{
		{"slats no closer together than 42 mm and no further apart than 70 mm", "gap >= 42 mm; gap <= 70 mm"},
		{"seven boards one over the other with 52 mm free between them", "rails = 7; gap = 52 mm"},
		{"six slats in a bay, each 50 mm from its neighbor, the lowest 60 mm above the slab", "rails = 6; gap = 50 mm; bottom gap = 60 mm"},
		{"wall's 50 tall, six two by sixes in it", "wall height = 50 in; rails = 6; rail size = 2x6"},
		{"top edge of this thing's gonna finish out at fifty one inches", "wall height = 51 in"},
		{"this wall's gotta come up thirty nine and a half off the patio", "wall height = 39-1/2 in"},
		{"from the top of one rail to the underside of the next I want 2-1/4 inches", "gap = 2-1/4 in"},
		{"taped one of these rails and she's five and nine sixteenths across the face", "rail face = 5-9/16 in"},
		{"give me a wall that reaches up to 44 inches and holds six boards", "wall height = 44 in; rails = 6"},
		{"because the ground gets muddy we hold the bottom board three inches off the floor", "bottom gap = 3 in"},
		{"underneath, leave just as much room as there is between the boards", "bottom gap = gap"},
		{"one rail on top of another, seven in all", "rails = 7"},
		{"take one board out of the stack", "rails -= 1"},
		{"one slat less would be fine by me", "rails -= 1"},
		{"six boards stack up to make the wall", "rails = 6"},
		{"what I've got for rails is 2x4 lumber", "rail size = 2x4"},
		{"btm gap = gap - 1/2", "bottom gap = gap - 1/2 in"},
		{"a gap of 60 mm looks good to me", "gap = 60 mm"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"I used to want six boards one over the other", "nobody wants boards with more than 3 inches between them", "maybe slats no closer together than 42 mm",
		"the old wall was 50 tall, six two by sixes in it", "the boards are not 2 inches apart and not 3 either", "don't make the bottom gap the same as the gap",
		"the top edge of the post is at 50", "two inches between the posts and the wall", "the gap between my teeth is 3 mm",
		"six boards are left over with 3 knots in them", "I doubt that the boards should be further apart than 3 inches",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
