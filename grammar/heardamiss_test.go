package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Lines of which something was heard though something else was said, each beside one that is heard.
func TestHeardAmiss(t *testing.T) {
	for said, want := range map[string]string{
		"what's the gap under the bottom one, and can I get six in there": "",
		"what's the biggest gap I could have with five":                   "",
		"what's the biggest gap I could have with five rails":             "what if largest gap, rails = 5",
		"is the top rail longer than the bottom rail":                     "",
		"how high's the bottom one off the dirt":                          "",
		"how high's the bottom one off the floor":                         "ask bottom gap",
		"six rails gone":               "",
		"six rails":                    "rails = 6",
		"opening 36 gone":              "",
		"between the posts one more":   "",
		"bay 1 60, next 50":            "",
		"no more rails, and the gap 3": "",
		"help me lift this six by six": "",
		"no need to show me the marks": "",
		"show me the marks":            "ask marks",
	} {
		require.Equal(t, want, strings.Join(heardForms(said), "; "), said)
	}
}
