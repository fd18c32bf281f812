package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is said of other walls, other times, other minds and other trades sets nothing, and answers nothing of this wall; the same words
// of this wall do. Common speech, no source.
func TestElsewhere(t *testing.T) {
	for _, line := range []string{
		"the garage door opening is 96 wide",
		"my brother's wall has six rails",
		"last year's wall was 48 high",
		"the posts at the neighbor's are 6x6 and outside to outside 14 feet",
		"same gap as the neighbor has",
		"my kid's forty two inches tall now",
		"we had six rails before the storm",
		"three bays would be too many",
		"overall I'd say it's too long at 4 m",
		"the inspector used to want four inches under the bottom rail",
		"I might want six rails",
		"nobody says the gap has to be 3 inches",
		"why would anybody want six rails",
		"I did not say the gap should be more than 3",
		"six rails? no way",
		"how long does the job take",
		"what do you charge for delivery",
		"how much does the wall weigh",
		"show me how to hold the saw",
		"second board from the top in bay 1 taped at 64",
		"take two of these for the headache",
		"Drop the gap, just make them all equal.",
		"an opening of thirty-six that's under thirty",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
	for _, c := range [][2]string{
		{"is seven rails too many", "check rails = 7"},
		{"My neighbor's wall has five boards, but we want six.", "rails = 6"},
		{"the wall is 48 high", "wall height = 48 in"},
		{"post caps are 4.60, they used to be 3.90", "price post cap = 4.60"},
		{"how long is each board", "ask cuts"},
		{"the old posts are 6x6, the new ones 4x4", "end post size = 6x6; added post size = 4x4"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
}

// What was read as something else: papers that do not count, calls, conditions with the verb in front, pleas. Common speech, no source.
func TestSaidElsewhere(t *testing.T) {
	for _, c := range [][2]string{
		{"gap 2, whatever his plan says", "gap = 2 in"},
		{"wall 48 high, regardless of what he told you", "wall height = 48 in"},
		{"his plan says gap 2", "check gap = 2 in"},
		{"the shop rang to say that they are out of sixteen-footers now", "stock -= 192 in"},
		{"the shop called to say they have sixteens", "stock = 192 in"},
		{"Had we two more rails, how high would it be?", "what if rails += 2; ask wall height"},
		{"I'd be happy if it had the fewest posts", "fewest posts"},
		{"Drop the seven foot maximum on the bays, just make them all equal.", "forget bay <= 84 in; equal bays"},
		{"twice the gap, that's what I want under the bottom board", "bottom gap = 2 * gap"},
		{"idk what to do, how many posts", "ask added posts"},
		{"he's fixing to cut the first bay at sixty three and a half is that what you come up with", "check cut bay 1 = 63-1/2 in"},
		{"opening 36, at least 30", "opening = 36 in; opening >= 30 in"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
}
