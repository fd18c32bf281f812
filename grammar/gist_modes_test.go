package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is tried, claimed, asked why, and set right, in any order of the words.
func TestGistModes(t *testing.T) {
	for _, c := range [][2]string{
		{"Forgive me, I wrote 12 feet for the space between the posts, when in fact it is 11 feet 9 1/2 inches.", "span = 141-1/2 in"},
		{"Earlier I said the wall was 44 high; in truth it is 46", "wall height = 46 in"},
		{"We first thought of five boards, but now we want six", "rails = 6"},
		{"a note in the margin gives the gap as 58 mm, any good?", "check gap = 58 mm"},
		{"Our carpenter mentioned that six boards with spaces of 1 5/8 inches would be right; could you confirm that for me?", "check rails = 6, gap = 1-5/8 in"},
		{"the old drawing says 2 3/8 for the gap, the new one says 2 5/8, which is it", "check gap = 2-3/8 in; check gap = 2-5/8 in"},
		{"Would anything dreadful happen if I left out the stiffeners?", "what if stiffeners = 0"},
		{"she maintains eight rails can't be done, how come", "why not rails = 8"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"forgive me, I wrote 12 feet for the space between the posts", "I had wanted the gaps to be 2 inches", "I'm afraid of gaps of 3 1/2 inches",
		"I said 12 feet for the posts, my husband thinks it is 11", "did i say sixty on the bays", "my daughter talked me out of 2 3/4 gaps",
		"he is not sure the gap is 3 inches, nor am I", "the number of rails is not to be five rather than seven",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
