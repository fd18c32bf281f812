package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/solver"
)

// What is there is a fact whoever tells it; a word of saying, of paper or of doubt makes it a claim.
func TestFactsAreStated(t *testing.T) {
	for line, want := range map[string]string{
		"the brackets my brother-in-law gave me are 3/32 thick":                         "bracket thickness = 3/32 in",
		"he's got rail 1 screwed on already, top of it's at 8":                          "fixed rail 1 top = 8 in",
		"customer's reading for the bottom of bay one is 57 and 5/8":                    "measured bay 1 bottom = 57-5/8 in",
		"gap under 4, she's got a toddler":                                              "gap < 4 in",
		"please hold the lowest board 3 above the floor":                                "bottom gap = 3 in",
		"he says the brackets are 3/32 thick":                                           "check bracket thickness = 3/32 in",
		"the survey has the drop at 29 inches":                                          "check drop = 29 in",
		"seven boards, he has, with two inches between":                                 "check rails = 7, gap = 2 in",
		"his drop is 28 inches but I measured 31":                                       "check drop = 28 in; drop = 31 in",
		"the brackets my neighbor gave me are an eighth thick according to the catalog": "check bracket thickness = 1/8 in",
		"the brackets my neighbor gave me are supposedly an eighth thick":               "check bracket thickness = 1/8 in",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}

// To leave something is to keep it: "no, leave that" behind a trial takes nothing back.
func TestLeavingTakesNothingBack(t *testing.T) {
	c := act.Context{Subject: &solver.Name{Quantity: solver.Rails}}
	for _, line := range []string{"no leave that", "leave them", "no leave them"} {
		require.Empty(t, Read(line, c).Acts, line)
	}
	require.Equal(t, "forget rails", parse.Normal(Read("no drop that", c).Acts))
}
