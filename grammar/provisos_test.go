package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// TestWhatHoldsOnlySometimesIsAskedBack: a condition, another wall, one of several: none of them sets or forgets anything.
func TestWhatHoldsOnlySometimesIsAskedBack(t *testing.T) {
	for _, line := range []string{
		"six rails if the gap is over 2",
		"six rails when the gap is over 2",
		"when the gap is over 3 add a rail",
		"two posts unless the span is under 100",
		"the old wall had six rails",
		"the previous fence was 42 high",
		"remove the middle post",
		"I'd save on lumber if there were 5 rails",
		"we could save on posts with 2x4 rails",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, "%q: %v", line, r.Acts)
		require.Empty(t, r.Acts, line)
	}
}

// TestKindWordsAreNoConditions: what only asks kindly, or tells when something was cut, sets.
func TestKindWordsAreNoConditions(t *testing.T) {
	for line, want := range map[string]string{
		"I would be obliged if you used 2x8 boards":             "rail size = 2x8",
		"leave an eighth of play in all when the rails get cut": "fit = 1/8 in",
		"take that gap down to 2":                               "gap = 2 in",
		"save this as lumber run":                               "save lumber run",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Len(t, r.Acts, 1, line)
		require.Equal(t, want, r.Acts[0].String(), line)
	}
}
