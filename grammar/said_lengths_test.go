package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// TestSaidLengths: whatever length it is, it is set, bounded, changed and taken back in these frames, and not where the same words ask,
// deny or doubt.
func TestSaidLengths(t *testing.T) {
	heard := []struct{ line, want string }{
		{"the gap wants to finish up at 2-1/2", "gap = 2-1/2 in"},
		{"take the wall height as 42 and we can all go to lunch", "wall height = 42 in"},
		{"2-1/2 is what I've picked as far as the gap goes", "gap = 2-1/2 in"},
		{"after a long row with the wife, the opening got settled at 34", "opening = 34 in"},
		{"I'm not bothered about much but the bay width must be bang on 66", "bay = 66 in"},
		{"on the subject of the post height, we plumped for 45 this morning", "post height = 45 in"},
		{"don't let the gap be anything but 2-1/2", "gap = 2-1/2 in"},
		{"anything other than 24 for the stiffener spacing won't do", "stiffener spacing = 24 in"},
		{"34 was the figure we shook hands on for the opening", "opening = 34 in"},
		{"yeah nah the gap's 2-1/2, mate", "gap = 2-1/2 in"},
		{"Mum and I settled on 42 for the wall height", "wall height = 42 in"},
		{"fix the bottom gap at 3 and don't let it move", "bottom gap = 3 in"},
		{"anything short of 34 for the opening is no use to me", "opening >= 34 in"},
		{"the gap can't drop below 2", "gap >= 2 in"},
		{"anything over 3 for the gap is out of the question", "gap <= 3 in"},
		{"the wall height can go up to 44 and there it stops", "wall height <= 44 in"},
		{"2 is the floor for the gap", "gap >= 2 in"},
		{"2 to 3 is the window for the bottom gap", "bottom gap in 2 in..3 in"},
		{"I'm easy on the opening provided it's between 34 and 36", "opening in 34 in..36 in"},
		{"2-1/2 give or take is what I'm thinking for the gap", "gap ~ 2-1/2 in"},
		{"an inch on top of what the wall height is now, please", "wall height += 1 in"},
		{"I'd feel better with half an inch added to the gap", "gap += 1/2 in"},
		{"we've an inch too much in the opening, take it out", "opening -= 1 in"},
		{"may I have an inch more for the opening", "opening += 1 in"},
		{"can we increase the gap by half an inch", "gap += 1/2 in"},
		{"leave the gap open again, I'm not set on it", "forget gap"},
		{"never mind the opening, work it out yourself", "forget opening"},
		{"34 for the opening, sorry, 36 is right", "opening = 36 in"},
		{"42 inches tops for the top of the wall", "wall height <= 42 in"},
	}
	for _, h := range heard {
		if got := parse.Normal(Read(h.line, act.Context{}).Acts); got != h.want {
			t.Errorf("%q: %q, want %q", h.line, got, h.want)
		}
	}
	not := []struct{ line, not string }{
		{"can we increase the gap by half an inch?", "gap += 1/2 in"},
		{"nobody says anything short of 34 for the opening is no use", "opening >= 34 in"},
		{"why can't the gap drop below 2", "gap >= 2 in"},
		{"is 2 the floor for the gap?", "gap >= 2 in"},
		{"anything other than 24 for the stiffener spacing will do", "stiffener spacing = 24 in"},
		{"he said 34 was the figure we shook hands on for the opening", "opening = 34 in"},
		{"what if the gap ends up 3", "gap = 3 in"},
		{"put a cap 2 inches thick on the top of the wall", "wall height = 2 in"},
		{"do you know what the gap is now", "forget gap"},
	}
	for _, n := range not {
		if got := parse.Normal(Read(n.line, act.Context{}).Acts); got == n.not {
			t.Errorf("%q is read as %q", n.line, got)
		}
	}
}
