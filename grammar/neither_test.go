package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is denied of either side is denied of both: common logic, no source.
func TestNeitherSide(t *testing.T) {
	for line, want := range map[string]string{
		"gap not under 1-1/2 or over 2-3/4":                     "gap >= 1-1/2 in; gap <= 2-3/4 in",
		"the gap can't be under 1-1/2 or over 2-3/4":            "gap >= 1-1/2 in; gap <= 2-3/4 in",
		"wall not below 40 or above 44":                         "wall height >= 40 in; wall height <= 44 in",
		"the wall shouldn't be lower than 40 or higher than 44": "wall height >= 40 in; wall height <= 44 in",
		"don't let the gap go under 2 or over 3":                "gap >= 2 in; gap <= 3 in",
		"gap neither under 2 nor over 3":                        "gap >= 2 in; gap <= 3 in",
		"I don't want a gap under 2 or over 3":                  "gap >= 2 in; gap <= 3 in",
		"gap shouldn't drop below 2 or go past 3":               "gap >= 2 in; gap <= 3 in",
		"the opening must not be over 40 or under 32":           "opening <= 40 in; opening >= 32 in",
		"a gap not below fifty or above seventy five mm":        "gap >= 50 mm; gap <= 75 mm",
		"no bay over eight feet or under five feet":             "bay <= 96 in; bay >= 60 in",
		"the wall is not over 44 or under 40, is it":            "check wall height <= 44 in, wall height >= 40 in",
		"gap over 2 and under 3":                                "gap > 2 in; gap < 3 in",
	} {
		r := Read(line, act.Context{})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
	for _, line := range []string{
		"gap over 2 or under 3", // on the far sides of both: no gap that anybody means
		"not more than 5 boards or fewer than 3",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
