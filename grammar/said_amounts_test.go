package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// amountsHeard are counts, sizes, limits, changes, slips and what is taken back, in the words of many people.
var amountsHeard = []struct{ line, want string }{
	{"when it comes to stiffeners, three is the number", "stiffeners = 3"},
	{"the number of boards came to six", "rails = 6"},
	{"5's the right number of rails, go with that", "rails = 5"},
	{"how about you just write down six rails for me", "rails = 6"},
	{"exactly two stiffeners, no more, no less", "stiffeners = 2"},
	{"how many boards? six", "rails = 6"},
	{"what size are the posts? 4x4", "post size = 4x4"},
	{"you asked how many rails, well, the answer is five", "rails = 5"},
	{"1x4 is what we're making the stiffeners from", "stiffener size = 1x4"},
	{"my brother swears by 2x6, so 2x6 is what the rails are going to be", "rail size = 2x6"},
	{"don't let the post height drop below 45", "post height >= 45 in"},
	{"the fewest slats I'll put up with is five", "rails >= 5"},
	{"cap it at six boards", "rails <= 6"},
	{"I need 34 or more for the opening, the wheelbarrow says so", "opening >= 34 in"},
	{"up the bottom gap half an inch, mate", "bottom gap += 1/2 in"},
	{"however big the opening is now, it's to be 2 inches bigger", "opening += 2 in"},
	{"the gap is an eighth too big, so trim it by that", "gap -= 1/8 in"},
	{"ditch two of those boards, mate, it's overkill", "rails -= 2"},
	{"go up two on the stiffener count", "stiffeners += 2"},
	{"the gap should be 2-1/2. Did I say that? I mean 2-1/4.", "gap = 2-1/4 in"},
	{"36 for the opening. Oops, wrong line of my notes. It's 34.", "opening = 34 in"},
	{"not six rails but seven, please", "rails = 7"},
	{"where I told you 42 for the wall height, read 44 instead", "wall height = 44 in"},
	{"I wrote five boards but I meant six", "rails = 6"},
	{"pay no heed to what I said about the gap, that was the whiskey talking", "forget gap"},
	{"the gap, forget I ever brought it up", "forget gap"},
	{"let's not fix the opening after all, forget it", "forget opening"},
	{"my vote's six rails, write that in", "rails = 6"},
	{"what are the posts? 4x4, thanks", "post size = 4x4"},
	{"anything under 34 won't do for the opening", "opening >= 34 in"},
	{"no more boards than six", "rails <= 6"},
	{"42 is as high as the wall height can get", "wall height <= 42 in"},
	{"the gap? Not a hair under two", "gap >= 2 in"},
	{"six rails, that's my limit", "rails <= 6"},
	{"cut the bottom gap back by half an inch", "bottom gap -= 1/2 in"},
	{"get rid of two stiffeners", "stiffeners -= 2"},
	{"we're two boards short, add them", "rails += 2"},
	{"what I told you about the opening, lose it", "forget opening"},
	{"I'm no longer fussed about the gap", "forget gap"},
	{"the boss signed off on six rails, so six rails it is", "rails = 6"},
	{"at no point should the wall height be less than 42", "wall height >= 42 in"},
	{"swap the six rails for seven", "rails = 7"},
	{"I'd take an eighth off the gap, so do it", "gap -= 1/8 in"},
	{"sign me up for option two, mate", "take 2"},
	{"that last change, I don't want it after all", "undo"},
}

func TestAmountPhrases(t *testing.T) {
	for _, c := range amountsHeard {
		r := Read(c.line, act.Context{})
		require.Nil(t, r.Ask, c.line)
		require.Equal(t, c.want, parse.Normal(r.Acts), c.line)
	}
	for _, line := range []string{ // denied, doubted, or left open
		"don't lock in six rails", "my brother swears by 2x6, but I don't", "whatever the gap is right now I don't want it an inch less",
		"I'm not withdrawing what I said about the gap", "not six rails but more", "how many boards? six or seven",
		"how many boards? not six", "he wrote five boards but he meant six", "we talked it over and six rails is too many",
		"bay 2 bottom is 59 1/2, bay 2 bottom is 60", "I'm no longer sure about the gap", "we're two rails short", "the inspector signed off on six rails, so what now", "I'm not sold on option two",
		"don't swap the six rails for seven", "I'd take an eighth off the gap, but not now",
	} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	for line, want := range map[string]string{ // asked, tried, claimed
		"how many rails do we get with a 2 inch gap?": "what if gap = 2 in; ask rails",
		"should I lock in six rails?":                 "what if rails = 6",
		"why take two of the rails out":               "why rails",
		"is six the right number of rails":            "check rails = 6",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}
