package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// A verb that adds or takes away is of all that is named behind it, and what is so of one thing may be so of the next. Everyday speech, no source.
func TestCarried(t *testing.T) {
	for said, want := range map[string]string{
		"drop a rail and two stiffeners":                      "rails -= 1; stiffeners -= 2",
		"add two rails and a stiffener":                       "rails += 2; stiffeners += 1",
		"add a post and two stiffeners":                       "added posts += 1; stiffeners += 2",
		"take two rails and a stiffener off":                  "rails -= 2; stiffeners -= 1",
		"what if I add a rail and two stiffeners":             "what if rails += 1, stiffeners += 2",
		"lower the wall by two and the opening by three":      "wall height -= 2 in; opening -= 3 in",
		"add two rails and a 30 inch opening":                 "rails += 2; opening = 30 in",
		"a rail more and a stiffener less":                    "rails += 1; stiffeners -= 1",
		"gap 2, the bottom one as well":                       "gap = 2 in; bottom gap = gap",
		"gap 2 and the bottom gap too":                        "gap = 2 in; bottom gap = 2 in",
		"both gaps 2":                                         "gap = 2 in; bottom gap = 2 in",
		"the gap is 2-3/8 and so is the space at the bottom":  "gap = 2-3/8 in; bottom gap = 2-3/8 in",
		"gap 2 + 6 rails":                                     "gap = 2 in; rails = 6",
		"would 6 rails plus 2 stiffeners fit":                 "what if rails = 6, stiffeners = 2",
		"is it true that the gap with 8 boards is 42 mm":      "check gap = 42 mm, rails = 8",
		"make the first bay sixty wide then tell me the gap":  "bay 1 = 60 in; ask gap",
		"1/8 clearance both ends":                             "fit = 1/4 in",
		"gap closer to 2":                                     "gap ~ 2 in",
		"gap tighter to 2":                                    "gap = 2 in",
		"any chance a 30 inch doorway squeezes in":            "what if opening = 30 in",
		"nothing longer than seven foot six between uprights": "bay <= 90 in",
		"how many rails fit under 40":                         "what if wall height = 40 in; ask rails",
		"which post do I start with":                          "ask steps",
		"how long is the post":                                "ask cuts",
		"how wide are the posts":                              "ask post size",
		"am I over budget":                                    "ask cost",
		"cost for six rails":                                  "what if rails = 6; ask cost",
		"marks for bay 2":                                     "ask marks",
		"save this as grandma's deck":                         "save grandma's deck",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range []string{
		"raise the wall 2 and the gap 2", "the most rails under 48", "as many rails as fit under 40", "what's the gap for five rails and for six",
		"lift the rails up to 40", "four posts counting the end ones", "use only two posts", "close it up", "what does the first bay measure", "restore the old gap",
		"need two inches between rails for the brackets", "they sell four metre twenty boards", "what happens once I have 6 rails cut",
		"who can tell me when the first fence was ever built", "wall two higher and post the same", "gap between 2 and 3 but closer to 2",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
