package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Wherever the figure of somebody else stands, and whatever is doubted of it, it is checked and never set; what is only tried out stays so.
func TestVouchedPhrases(t *testing.T) {
	for _, c := range [][2]string{
		{"the gap is supposedly 2-1/2, or so the sketch would have it", "check gap = 2-1/2 in"},
		{"if the sketch is to be believed the bottom gap is 3", "check bottom gap = 3 in"},
		{"the opening is given as 34 on the neighbour's sketch, can you check it", "check opening = 34 in"},
		{"there's meant to be six rails if the drawing's any good. Is it?", "check rails = 6"},
		{"2-1/2 for the gap, says the old fella next door. True or not?", "check gap = 2-1/2 in"},
		{"six rails, says the woman at the till. Is it?", "check rails = 6"},
		{"somebody's pencilled 24 beside the stiffener spacing, can you verify it", "check stiffener spacing = 24 in"},
		{"the last crew left a note saying the wall height was 42", "check wall height = 42 in"},
		{"the foreman's telling me the gap is 2-1/2 and I don't buy it", "check gap = 2-1/2 in"},
		{"the post height, per the drawing: 45. Does that add up?", "check post height = 45 in"},
		{"it's 2-1/2 he says the gap is, would you credit that", "check gap = 2-1/2 in"},
		{"what the sketch gives for the opening is 34. Is that so?", "check opening = 34 in"},
		{"66, that's what the landlord thinks the bay width is. Is it?", "check bay = 66 in"},
		{"the man who built the last one says the gap is 2, is he right", "check gap = 2 in"},
		{"surely the bay isn't 66 as the plan says", "check bay = 66 in"},
		{"the plan shows two stiffeners but I'm not convinced", "check stiffeners = 2"},
		{"my dad measured it off the drawing and gets 34 for the opening", "check opening = 34 in"},
		{"try it out with the opening at 34\", don't keep it", "what if opening = 34 in"},
		{"how would we get on with the gap at 2-1/2", "what if gap = 2-1/2 in"},
		{"were we to go for five rails, how would that turn out", "what if rails = 5"},
		{"is 24 a runner for the stiffener spacing", "what if stiffener spacing = 24 in"},
		{"where would the gap land if I went with six rails", "what if rails = 6; ask gap"},
		{"switching to five rails would make the bottom gap what", "what if rails = 5; ask bottom gap"},
		{"the plasterer wants to know why we couldn't have six rails", "why not rails = 6"},
		{"why did five rails get thrown out", "why not rails = 5"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"take six rails off the drawing", "he has counted six rails, take two off the drawing",
		"surely not six rails", "I have doubts about six rails", "is his 3 for the gap better than mine",
		"would I be wrong to have told you the gap is 3", "don't change anything yet but make the gap 3",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
	for _, c := range [][2]string{ // nothing of this is a claim, or a trial
		{"the clerk at the yard says they only have eights and tens", "stock = 96 in, 120 in"},
		{"I'd give 3 inches for the gap", "gap = 3 in"},
		{"the sketch says the gap is 3, mine is 2", "check gap = 3 in; gap = 2 in"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
}

// People elsewhere say it in their own way.
func TestOverseasPhrases(t *testing.T) {
	for _, c := range [][2]string{
		{"chuck another 3 mil onto the gap", "gap += 3 mm"},
		{"bung an extra half inch on the opening", "opening += 1/2 in"},
		{"stick five rails in every bay mate all two by six", "rails = 5; rail size = 2x6"},
		{"i can stretch the bays to six foot eight but not an inch over", "bay <= 80 in"},
		{"a walk through's no good to me under thirty three", "opening >= 33 in"},
		{"a gap's no use to anyone over four inches", "gap <= 4 in"},
		{"throw his bay width out and hold every bay to 70 or under", "forget bay; bay <= 70 in"},
		{"say i chucked one more board in each bay what gap would that leave", "what if rails += 1; ask gap"},
		{"I typed 36 for the wall height but meant 40", "wall height = 40 in"},
		{"gap 2.25, scrub that, 2.125", "gap = 2-1/8 in"},
		{"420 dollars is the very most we can put toward the materials", "budget = 420.00"},
		{"brackets are two ninety-five a go", "price bracket = 2.95"},
		{"u/side btm rail 2-1/2 off slab", "bottom gap = 2-1/2 in"},
		{"gap 2-1/2, six rails, opening?", "gap = 2-1/2 in; rails = 6; ask opening"},
		{"her plan never lets bay 1 get shorter than 55 inches", "check bay 1 >= 55 in"},
		{"how far is the opening from the left post, and how far from the right one", "ask opening from left; ask opening from right"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"my mate has six", "throw his drawing at the wall", "a gap's no good", "chuck it",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
