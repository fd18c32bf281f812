package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// TestMendedTogether: of several things said in one breath none is lost, and none is added.
func TestMendedTogether(t *testing.T) {
	for _, c := range [][2]string{
		{"where do I stand the new post and where do I scribe it", "ask posts; ask marks"},
		{"do me a picture would you and then tell me what I'd be paying", "ask drawing; ask cost"},
		{"what gap do I get and what opening do I get", "ask gap; ask opening"},
		{"tell me what I need to buy and what it costs", "ask shopping; ask cost"},
		{"why that many boards on the list and give me the shopping list", "why shopping; ask shopping"},
		{"tell me how wide the opening is and then how high the wall is", "ask opening; ask wall height"},
		{"print the plan to friday.html, I'm off to the yard", "print to friday.html"},
		{"draw it, I'm heading to the lumber yard", "ask drawing"},
		{"I'm off to the yard, what do I need", "ask shopping"},
		{"I'm off to the yard", "ask shopping"},
		{"I have changed my mind about the budget, so please disregard it from now on.", "forget budget"},
		{"I changed my mind on the stiffeners, so drop them", "forget stiffeners"},
		{"I've changed my mind, forget it", "undo"},
		{"why am I buying nine boards when there's only six rails", "why shopping"},
		{"how come I'm paying for nine boards when I have six rails", "why shopping"},
		{"why are we getting twelve boards for six rails", "why shopping"},
		{"why six rails", "why rails"},
		{"you may think me dim, but I can't see how you got that many rails, would you explain it", "why rails"},
		{"2 bays & 1-7/8 btm gap on garage wall", "garage wall: bays = 2; garage wall: bottom gap = 1-7/8 in"},
		{"six rails and a 2 inch gap on the north wall", "north wall: rails = 6; north wall: gap = 2 in"},
		{"six rails, gap 2 on the north wall", "rails = 6; north wall: gap = 2 in"},
		{"six rails on the south wall and gap 2 on the north wall", "south wall: rails = 6; north wall: gap = 2 in"},
		{"\"Which lengths do they have?\" \"Twelves and twenties, nothing else on the rack.\"", "stock = 144 in, 240 in"},
		{"which lengths do they have", "ask stock"},
		{"2x6 10' 8.95, 12' 10.60", "price 2x6 120 in = 8.95; price 2x6 144 in = 10.60"},
		{"2x6 8' 5.95, 10' 8.95, 12' 10.60", "price 2x6 96 in = 5.95; price 2x6 120 in = 8.95; price 2x6 144 in = 10.60"},
		{"why did you drop two rails", "why rails"},
		{"why did you take off two rails", "why rails"},
		{"why did you reject two rails", "why not rails = 2"},
		{"I know about the guard, the inspector already said it's okay", "set aside guard"},
		{"tell me how to build it, one step at a time", "ask steps"},
	} {
		if got := parse.Normal(Read(c[0], act.Context{}).Acts); got != c[1] {
			t.Errorf("%q is heard as %q, want %q", c[0], got, c[1])
		}
	}
}

// TestTwoQuestions puts every topic of question twice into one sentence, and sees that both are there; what cannot be read is asked back.
func TestTwoQuestions(t *testing.T) {
	asks := [][2]string{
		{"what gap do I get", "ask gap"}, {"how many boards do I stack", "ask rails"}, {"what would work", "ask options"}, {"where do my marks go", "ask marks"},
		{"where does the new post go", "ask posts"}, {"how long do I cut them", "ask cuts"}, {"what do I need to buy", "ask shopping"}, {"what will it cost me", "ask cost"},
		{"what do I do first", "ask steps"}, {"what should I watch out for", "ask cautions"}, {"show me a picture", "ask drawing"}, {"how wide is the opening", "ask opening"},
		{"why six rails", "why rails"}, {"why that many boards on the list", "why shopping"}, {"work it out", "ask layout"}, {"show me the whole sum", "show it all"},
		{"print it to wall.html", "print to wall.html"}, {"explain the gap", "why gap"},
	}
	for _, joint := range []string{" and ", " and then ", ", and "} {
		if both, want := heardInPairs(t, asks, joint), len(asks)*(len(asks)-1)-20; both < want {
			t.Errorf("joined by %q, %d pairs are heard, want %d", joint, both, want)
		}
	}
}

// heardInPairs joins each line with each other one, sees that what is heard of both is what is heard of each, and counts the pairs that are heard.
func heardInPairs(t *testing.T, list [][2]string, joint string) (both int) {
	t.Helper()
	for _, one := range list {
		for _, other := range list {
			if one[1] == other[1] {
				continue
			}
			line := one[0] + joint + other[0]
			r := Read(line, act.Context{})
			if r.Ask != nil {
				continue
			}
			if got := parse.Normal(r.Acts); got != one[1]+"; "+other[1] {
				t.Errorf("%q is heard as %q", line, got)
			}
			both++
		}
	}
	return both
}

// TestPartedClauses joins what is told, ordered and asked in every way, and sees that none is lost and none added to.
func TestPartedClauses(t *testing.T) {
	tells := [][2]string{
		{"the gap is 2", "gap = 2 in"}, {"make the gap 2 inches", "gap = 2 in"}, {"the wall is 48 high", "wall height = 48 in"}, {"I'd like an opening of 36", "opening = 36 in"},
		{"keep the opening at 36", "opening = 36 in"}, {"we need six rails", "rails = 6"}, {"lose a rail", "rails -= 1"}, {"the span is 12 feet", "span = 144 in"},
		{"go with two stiffeners", "stiffeners = 2"}, {"brackets cost 3.49", "price bracket = 3.49"}, {"put the opening in the middle", "opening side = middle"},
	}
	for _, joint := range []string{" and ", ", ", " plus ", ", plus ", ", and also "} {
		if both := heardInPairs(t, tells, joint); both < 90 {
			t.Errorf("joined by %q, only %d pairs are heard", joint, both)
		}
	}
	for _, c := range [][2]string{
		{"the gap is 2, so make the wall 48 high", "gap = 2 in; wall height = 48 in"},
		{"my wife is five foot two, so make the wall 40 high", "wall height = 40 in"},
		{"six rails and they sell eights and twelves", "rails = 6; stock = 96 in, 144 in"},
		{"they have eights and twelves, and also the gap is 2", "stock = 96 in, 144 in; gap = 2 in"},
		{"they have eights and twelves and use 2x6 rails", "stock = 96 in, 144 in; rail size = 2x6"},
		{"I'm over in the lumber section, and they've got tens", "stock = 120 in"},
		{"show me the marks and put the opening on the left", "ask marks; opening side = left"},
		{"draw it and where does the new post go", "ask drawing; ask posts"},
		{"draw it, no stiffeners", "ask drawing; stiffeners = 0"},
		{"what do I buy and put the opening on the left", "ask shopping; opening side = left"},
		{"why don't we go down to five rails and make the gap 3 5/8", "why not rails = 5, gap = 3-5/8 in"},
		{"how about five rails and make the gap 2", "what if rails = 5, gap = 2 in"},
		{"six rails plus two stiffeners", "rails = 6; stiffeners = 2"},
	} {
		if got := parse.Normal(Read(c[0], act.Context{}).Acts); got != c[1] {
			t.Errorf("%q is heard as %q, want %q", c[0], got, c[1])
		}
	}
	for _, line := range []string{"keep the gap under 4 inches, my dog is two", "save it as porch and six rails", "open porch and no stiffeners", "save it as porch and thanks a lot"} {
		if r := Read(line, act.Context{}); r.Ask == nil {
			t.Errorf("%q is heard as %q, and should be asked back", line, parse.Normal(r.Acts))
		}
	}
	if got := parse.Normal(Read("save it as front and back", act.Context{}).Acts); got != "save front and back" {
		t.Errorf("a name is heard as %q", got)
	}
}
