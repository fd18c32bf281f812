package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Whether a figure is true is asked in many ways, and what is tried out stays so whatever is asked of the rest.
func TestTruthPhrases(t *testing.T) {
	for _, c := range [][2]string{
		{"he's put 2-1/2 down for the gap, could you go over it", "check gap = 2-1/2 in"},
		{"word is the opening comes to 34, can you back that up", "check opening = 34 in"},
		{"I've been told the bottom gap is 3; is there anything in that?", "check bottom gap = 3 in"},
		{"Is the drawing telling the truth when it says the gap is 2-1/2?", "check gap = 2-1/2 in"},
		{"could the plan be right about the post height being 45", "check post height = 45 in"},
		{"was he right to count six rails", "check rails = 6"},
		{"how sure can I be that the bay width is 66 in", "check bay = 66 in"},
		{"correct me if I'm wrong but the gap is 3, isn't it", "check gap = 3 in"},
		{"Would I be correct in thinking there are two stiffeners?", "check stiffeners = 2"},
		{"it can't be right that the wall height is 42 inches, can it", "check wall height = 42 in"},
		{"the lad says we want six rails, is he talking sense", "check rails = 6"},
		{"do you also get six rails", "check rails = 6"},
		{"I count six rails, do you", "check rails = 6"},
		{"the gap is 3, or did the builder get it wrong? Check please", "check gap = 3 in"},
		{"somebody scribbled 3 next to the gap, does that stand up", "check gap = 3 in"},
		{"my gap is 3; the builder insists on six rails", "gap = 3 in; check rails = 6"},
		{"the blueprint says the gap is 3, but when I ran a tape over it I got 2-3/4", "check gap = 3 in; gap = 2-3/4 in"},
		{"the quotation they handed me is totalling 412 dollars, confirm it for me", "check cost = 412.00"},
		{"say we put in six rails, what's the gap then", "what if rails = 6; ask gap"},
		{"how much would the gap be, were we to use six rails", "what if rails = 6; ask gap"},
		{"six rails gives what for the bottom gap", "what if rails = 6; ask bottom gap"},
		{"I'd like to know the bottom gap if we went for six rails", "what if rails = 6; ask bottom gap"},
		{"suppose we went to six rails, how would that look", "what if rails = 6"},
		{"if we had the gap at 2-1/2, how'd we be", "what if gap = 2-1/2 in"},
		{"Would anything clash if the opening were 34?", "what if opening = 34 in"},
		{"what if we shaved half an inch off the gap and took a board out", "what if gap -= 1/2 in, rails -= 1"},
		{"haud on, the drop isnae thirty, it's thirty-nine", "drop = 39 in"},
		{"how come we cannae get eight rails in", "why not rails = 8"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"we have room for six rails", "would it be right to say make the gap 3", "don't save it",
		"would I be right in making the gap 3", "I've half a mind to make the gap 3",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
	for _, c := range [][2]string{ // nothing of this is a claim, or a trial
		{"the contractor insists on six rails", "rails = 6"},
		{"put six rails in and tell me the gap", "rails = 6; ask gap"},
		{"I'd like the cut list as a spreadsheet", "ask cuts as csv"},
		{"for six rails, make the gap 3", "rails = 6; gap = 3 in"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
}
