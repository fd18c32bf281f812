package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// TestFramedSets: a value is set, said about so or between two, whatever stands around it, and not where the same words ask, deny or doubt.
func TestFramedSets(t *testing.T) {
	heard := []struct{ line, want string }{
		{"let's call the gap 2-1/2 and move on", "gap = 2-1/2 in"},
		{"the wall is 42 high and be done with it", "wall height = 42 in"},
		{"bottom gap 3, no ifs or buts", "bottom gap = 3 in"},
		{"the gap? 2-1/2.", "gap = 2-1/2 in"},
		{"the opening? Anywhere between 34 and 36.", "opening in 34 in..36 in"},
		{"right so the opening that's going to be 34 so it is", "opening = 34 in"},
		{"my figure for the bay width is 66", "bay = 66 in"},
		{"what we want for the wall height is 42", "wall height = 42 in"},
		{"my earlier number was off, make the gap 2 instead", "gap = 2 in"},
		{"I nearly forgot, 2-1/2 for the bottom gap", "bottom gap = 2-1/2 in"},
		{"note to self: the post height is 45", "post height = 45 in"},
		{"as far as the bay width goes, 66", "bay = 66 in"},
		{"lock the stiffener spacing in at 24", "stiffener spacing = 24 in"},
		{"pencil me in 34 for the opening", "opening = 34 in"},
		{"bang on 2-1/2, that's the gap sorted", "gap = 2-1/2 in"},
		{"everyone at the table picked 2 for the gap, so go with it", "gap = 2 in"},
		{"the missus says the gap should be 2 so make it so", "gap = 2 in"},
		{"for the sake of the twins make the gap 2", "gap = 2 in"},
		{"we may as well have the gap at 2", "gap = 2 in"},
		{"you asked about the gap, it's 2", "gap = 2 in"},
		{"the gap wants to be somewhere round about 2-1/2, like", "gap ~ 2-1/2 in"},
		{"reckon the wall height around the 42 mark", "wall height ~ 42 in"},
		{"the gap can be approximately 2, the goat won't mind", "gap ~ 2 in"},
		{"I don't mind about the gap so long as it's between 2 and 3", "gap in 2 in..3 in"},
		{"no worries if the opening lands anywhere between 34 and 36", "opening in 34 in..36 in"},
		{"42 to 44 is grand for the wall height", "wall height in 42 in..44 in"},
		{"confine the gap to 2 to 3", "gap in 2 in..3 in"},
		{"the gap shouldn't stray outside 2 to 3", "gap in 2 in..3 in"},
		{"the gap -> 2-1/2", "gap = 2-1/2 in"},
		{"why don't you just make the gap 2", "gap = 2 in"},
		{"for heaven's sake make the opening 34", "opening = 34 in"},
		{"somewhere between 2-1/2 and 3 feels right for the bottom gap", "bottom gap in 2-1/2 in..3 in"},
		{"my mother will accept the gap anywhere between 2 and 3", "gap in 2 in..3 in"},
	}
	for _, h := range heard {
		if got := parse.Normal(Read(h.line, act.Context{}).Acts); got != h.want {
			t.Errorf("%q: %q, want %q", h.line, got, h.want)
		}
	}
	not := []struct{ line, not string }{
		{"let's call the gap 2 and what next?", "gap = 2 in"},
		{"the gap? 2?", "gap = 2 in"},
		{"the gap? 2 is what they say", "gap = 2 in"},
		{"no worries if the gap is 2?", "gap = 2 in"},
		{"his figure for the gap is 2", "gap = 2 in"},
		{"my figure for the gap is 2, does that agree with yours?", "gap = 2 in"},
		{"what he wants for the gap is 2, is that right", "gap = 2 in"},
		{"don't lock the gap in at 2", "gap = 2 in"},
		{"never nail the gap down at 2", "gap = 2 in"},
		{"nobody at the table picked 2 for the gap, so go with it", "gap = 2 in"},
		{"as far as the gap goes, 2 is wrong", "gap = 2 in"},
		{"42 sounds right for the wall height?", "wall height = 42 in"},
		{"the entrance should measure three across", "measured opening = 3 in"},
		{"why don't you make the gap 2?", "gap = 2 in"},
		{"if it were up to them the gap would be 2", "gap = 2 in"},
		{"my dog would like a gap of 2", "gap = 2 in"},
		{"the gap should not stray outside 2 to 3?", "gap in 2 in..3 in"},
		{"42 to 44 is not fine for the wall height", "wall height in 42 in..44 in"},
	}
	for _, n := range not {
		if got := parse.Normal(Read(n.line, act.Context{}).Acts); got == n.not {
			t.Errorf("%q is heard as %q", n.line, got)
		}
	}
}
