package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// A line is read by its sound only where it cannot be read as it stands, and what was taken for what is told.
func TestSoundsAlike(t *testing.T) {
	for line, want := range map[string]string{
		"so i want sicks boards in each bay":                                 "rails = 6",
		"knot more then three inches between the bored's":                    "gap <= 3 in",
		"uh where do i put the marx":                                         "ask marks",
		"wood seven rales work":                                              "what if rails = 7",
		"i all ready have for two by sixes that are ten feat long":           "have 2x6 120 in x 4",
		"the new post should bee three inches hire then the wall":            "post height = wall height + 3 in",
		"he says its six boards with too and a half inch gaps is that write": "check rails = 6, gap = 2-1/2 in",
		"give me the cheep est weigh":                                        "cheapest",
	} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Equal(t, want, parse.Normal(r.Acts), line)
		require.NotEmpty(t, r.Taken, line)
	}
	for line, want := range map[string]string{ // behind a ten the sound can only be a figure, and is taken for one without a word
		"make the wall forty ate inches hi":                      "wall height = 48 in",
		"the opening has to bee at least thirty too inches wide": "opening >= 32 in",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	for _, line := range []string{
		"cut the peaces to feet long",         // to two feet, or two feet long?
		"what wood happen with won more rale", // what lumber, or what would
		"boards are twelve",
		"use rales for posts",
	} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	r := Read("six rails and a gap of too", act.Context{})
	require.Nil(t, r.Ask)
	require.Equal(t, "rails = 6; gap = 2 in", parse.Normal(r.Acts))
}
