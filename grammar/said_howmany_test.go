package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// howManyHeard are counts, sizes and limits, and several of them in one breath.
var howManyHeard = []struct{ line, want string }{
	{"what this wall gets is six rails", "rails = 6"},
	{"write me in for five slats", "rails = 5"},
	{"my granddad's wall had six boards and mine will too", "rails = 6"},
	{"we're cutting the stiffeners from 1x4", "stiffener size = 1x4"},
	{"the rails all come in 2x6", "rail size = 2x6"},
	{"fewer than two stiffeners won't do", "stiffeners >= 2"},
	{"more than seven slats is out of the question", "rails <= 7"},
	{"anything less than five boards and my wife will have words", "rails >= 5"},
	{"I couldn't live with fewer than five boards", "rails >= 5"},
	{"chuck another two rails in there", "rails += 2"},
	{"we could do without two of those rails", "rails -= 2"},
	{"could we do without two of those rails?", "what if rails -= 2"},
	{"add a rail and a stiffener", "rails += 1; stiffeners += 1"},
	{"neither the gap nor the bottom gap may be over three", "gap <= 3 in; bottom gap <= 3 in"},
	{"gap and bottom gap both three inches", "gap = 3 in; bottom gap = 3 in"},
	{"stack me five high and use two by eights", "rails = 5; rail size = 2x8"},
	{"no bay over seven and a half foot, and make them all the one width", "bay <= 90 in; equal bays"},
	{"what if we shaved half an inch off the bottom gap and took a board out", "what if bottom gap -= 1/2 in, rails -= 1"},
	{"what if we added a rail and cut the gap to two inches", "what if rails += 1, gap = 2 in"},
	{"what if the gap went down a quarter and we lost a rail", "what if gap -= 1/4 in, rails -= 1"},
	{"take an inch off the wall and give it to the opening", "wall height -= 1 in; opening += 1 in"},
	{"bump the wall up to 44 and the rails up to seven", "wall height = 44 in; rails = 7"},
	{"let's have it back the way it was", "undo"},
}

func TestAmountsHowMany(t *testing.T) {
	for _, c := range howManyHeard {
		r := Read(c.line, act.Context{})
		require.Nil(t, r.Ask, c.line)
		require.Equal(t, c.want, parse.Normal(r.Acts), c.line)
	}
	for _, line := range []string{ // denied, doubted, told of others
		"my neighbor's wall had six rails and mine won't", "we lost two rails in the storm", "we can't do without two of those rails",
		"gap and bottom gap both three inches?", "the yard only had 2x6", "the boards come in 2x6 and 2x8",
	} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	for line, want := range map[string]string{ // asked, tried, and what is none of it
		"why is more than six rails out of the question?":    "why not rails > 6",
		"first opening 36, second opening 40":                "opening 1 = 36 in; opening 2 = 40 in",
		"stack it 42 high":                                   "wall height = 42 in",
		"grab three extra boards in case the kid splits one": "spare = 3",
		"do the rails come in 2x6?":                          "what if rail size = 2x6",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}
