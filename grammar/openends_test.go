package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/solver"
)

// "One less" behind a length is asked about: who speaks may count rails. The answer settles it.
func TestOneLess(t *testing.T) {
	gap := solver.Name{Quantity: solver.Gap}
	said := act.Context{Subject: &gap, Lately: []solver.Name{gap}}
	r := Read("make it one less", said)
	require.NotNil(t, r.Ask)
	require.Equal(t, []string{"rails -= 1", "gap -= 1 in"}, r.Ask.Choices)
	said.Settled = []string{"rails -= 1"}
	require.Equal(t, "rails -= 1", parse.Normal(Read("make it one less", said).Acts))
	said.Settled = nil
	require.Equal(t, "gap -= 1 in", parse.Normal(Read("make it one inch less", said).Acts))
}

// What the end of a line leaves open is not set.
func TestOpenEnds(t *testing.T) {
	for _, said := range []string{
		"the wider gap is 3", "six wider boards", "the total gap is 3", "will the gap clear", "how do the rails hold",
		"six boards plus", "wall 48 high minus", "six boards no wait", "six boards, yeah right", "not quite six boards", "gap 3 until tomorrow",
		"the gap is 3 last year", "six boards do you think", "the ditch is 48 high", "the roof is 48 high", "my wife painted five boards",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
	for said, want := range map[string]string{
		"a wider opening of 34":   "opening = 34 in",
		"the gap is 3 wider":      "gap += 3 in",
		"opening 30 plus":         "opening >= 30 in",
		"six boards no wait five": "rails = 5",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
