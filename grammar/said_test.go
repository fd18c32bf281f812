package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestSetPhrasesHold holds what the set phrases read against harmless sentences with the same words.
func TestSetPhrasesHold(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"we had the gap at 40 mm but I'd like 50 now", "gap = 50 mm"},
		{"the gap can be as small as 40 mm and as big as 60", "gap in 40 mm..60 mm"},
		{"the yard has a ten footer", "stock = 120 in"},
		{"open porch", "open porch"},
		{"open every gap up a quarter", "gap += 1/4 in"},
		{"half as many rails", "rails *= 1/2"},
		{"twice the gap", "gap *= 2"},
		{"rails an eighth shorter", "fit = 1/8 in"},
		{"they sell tens and twelves, 2x6", "stock 2x6 = 120 in, 144 in"},
	} {
		r := Read(c.line, Context{})
		require.Equal(t, c.want, Normal(r.Acts), c.line)
	}
	for _, line := range []string{"he said three inches, so that's the gap, I doubt it", "we talked about a 40 inch wall", "the lowest is nice", "we want the wall as low as 36"} {
		require.NotNil(t, Read(line, Context{}).Ask, line)
	}
}
