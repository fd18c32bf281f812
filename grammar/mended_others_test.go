package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// TestMendedOthers: figures that count something else, and lines that decide nothing, set nothing; what is wanted beside them is heard.
func TestMendedOthers(t *testing.T) {
	for _, c := range [][2]string{
		{"We have three kids and two dogs, so the gaps must stay under 3 inches.", "gap < 3 in"},
		{"my brother has three kids and two dogs, so gaps under 3 inches", "gap < 3 in"},
		{"I have one toddler, two dogs and three cats, so keep the gap below 3", "gap < 3 in"},
		{"with three kids and two dogs, the gaps must stay under 3 inches", "gap < 3 in"},
		{"I'm five foot ten and I want the wall at forty four", "wall height = 44 in"},
		{"I'm six two so make the wall forty four high", "wall height = 44 in"},
		{"you can't get a barrow through 24, give me a 32 inch opening", "opening = 32 in"},
		{"you can't push a stroller through 24, make the opening 32", "opening = 32 in"},
		{"ten inch blade with an eighth inch kerf", "kerf = 1/8 in"},
		{"put a couple of spares on the order, two boards, just in case", "spare = 2"},
		{"put a few spares on the order, three boards", "spare = 3"},
		{"forget lunch, how wide is the opening", "ask opening"},
		{"spare me the sums and give me the cut lengths", "ask cuts"},
		{"Please don't bother with the cost, I only want to know what to buy.", "ask shopping"},
		{"don't care what the gap is so long as it's less than four inches", "gap < 4 in"},
		{"I don't care how wide the opening is as long as it's over 30 inches", "opening > 30 in"},
		{"The budget isn't $400 any more, it's $350.", "budget = 350.00"},
		{"the budget is no longer $400, it's $350", "budget = 350.00"},
		{"The gap isn't 2 any more, it's 3", "gap = 3 in"},
		{"pick a gap between 2 and 3", "gap in 2 in..3 in"},
		{"we've decided on between five and six boards", "rails in 5..6"},
		{"what will it cost me to get the lumber", "ask cost"},
		{"add another board", "rails += 1"},
		{"add a straight board", "rails += 1"},
		{"forget the gap, how wide is the opening", "forget gap; ask opening"},
	} {
		if got := parse.Normal(Read(c[0], act.Context{}).Acts); got != c[1] {
			t.Errorf("%q is heard as %q, want %q", c[0], got, c[1])
		}
	}
	for _, line := range []string{
		"My wife will decide between five and six boards tonight.", "My wife is going to pick between five and six boards", "we have to decide between a 32 and a 36 inch opening",
		"it's a toss up between five and six rails", "I'm torn between five and six rails",
		"one rail at a time, please", "two boards at a time", "six boards a day", "I can carry six boards per trip",
		"what would it cost to have somebody come and do it for me", "what does it cost to get someone to put it up", "how much to have a guy build it", "what do you charge for labor",
		"tack on a boogie board", "add a diving board", "add a curtain rail", "add a bed post", "add a kick board", "six ceiling boards",
		"don't bother with the bottom rail", "don't care what the gap is so long as it's even", "the guard isn't okay", "I hope the guard is okay",
		"my six boys and two girls, gap 2", "why are there nine boards on the list",
	} {
		if r := Read(line, act.Context{}); r.Ask == nil {
			t.Errorf("%q is heard as %q, and should be asked back", line, parse.Normal(r.Acts))
		}
	}
}
