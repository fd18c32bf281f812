package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

func TestKindredHeard(t *testing.T) {
	for line, want := range map[string]string{
		"tack two more inches onto the wall height and tell me what the gap comes to": "wall height += 2 in; ask gap",
		"I authorize $375 for materials and no more.":                                 "budget = 375.00",
		"retrieve the plan I stored as quote one":                                     "open quote one",
		"they've started carrying eighteen footers too":                               "stock += 216 in",
	} {
		r := Read(line, act.Context{Saved: []string{"quote one"}})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)

		}
	}
}

// Words that have no plainer one stay asked about, and so do lines of which two readings would come.
func TestKindredNotHeard(t *testing.T) {
	for _, line := range []string{
		"they refused to carry eighteen footers",
		"he authorized nothing",
		"I doubt they carry eighteen footers",
		"two by two we carried the boards over",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
