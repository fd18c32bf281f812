package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is said beyond what is wanted is left out where it is light, and asked after where it may weigh.
func TestBeyond(t *testing.T) {
	for _, c := range [][2]string{
		{"Remember, folks, it has to be under four inches between the boards", "gap < 4 in"},
		{"post caps cost us 6.75 each this season", "price post cap = 6.75"},
		{"bring the wall down an inch, it stands too proud", "wall height -= 1 in"},
		{"the egress opening shall not be less than 36 inches", "opening >= 36 in"},
		{"one stiffener in every bay, the boards feel springy", "stiffeners = 1"},
		{"Gracious, forget the gap", "forget gap"},
		{"my landlord wants the least costly version", "cheapest"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"hypothetically, the gap is 2",
		"we shun six rails",
		"he loathes a gap of 2",
		"six rails, scrub it",
		"gap 3, we scrapped that idea",
		"people usually have six rails",
		"we crank the gap half an inch",
		"a fantasy: six rails",
		"the stairs have a gap of 4",
		"untrue, the wall is 48 high",
		"six rails would be folly",
		"gap 2 at the stairwell",
		"make the gap two and a half, bare",
		"gap two and a half, full",
		"six rails unless she faints",
	} {
		if got := parse.Normal(Read(line, act.Context{}).Acts); got != "" {
			for _, a := range Read(line, act.Context{}).Acts {
				require.NotEqual(t, act.State, a.Kind, "%s: %s", line, got)
			}
		}
	}
}
