package grammar

import (
	"testing"

	"saywright/grammar/act"
)

// What only sounds like a question in passing, a lesson, a trial or an order to enter what others say is asked back, or stays a claim.

func TestAskedInPassingIsAsked(t *testing.T) {
	for _, line := range []string{
		"nobody said seven boards were ruled out",
		"the inspector ruled out seven boards",
		"the old wall would not stand an extra board",
		"there is no room for another board",
		"nothing changed with two stiffeners in each bay",
		"don't walk me through the gap bit by bit",
		"he could never teach me, bit by bit, how the gap is worked out",
		"the margin says the gap is two, should I enter that",
		"the margin says there is no gap, enter that",
		"what possessed my brother to make the gap so big",
		"with the neighbor's wall two inches lower, how many boards would go in",
		"he made the gap 2, it looks good",
		"she liked it better with the change",
		"read the span of attention",
		"what's the opening act",
		"honey can you get the door",
		"the yard opens at 8, I'll get you the prices then",
		"what was the gap on the last job",
		"the neighbor has six rails, what he says goes",
		"in a pinch, five boards would do",
		"how would four boards strike the floor",
	} {
		if r := Read(line, act.Context{}); r.Ask == nil {
			t.Errorf("%q was heard: %v", line, r.Acts)
		}
	}
	heardAs(t, map[string]string{
		"the margin says the gap is two, don't enter that":     "check gap = 2 in",
		"never you mind why, gap three inches":                 "gap = 3 in",
		"open up the sums for me":                              "show it all",
		"from the beginning, how is the bottom gap worked out": "teach bottom gap",
		"scrap wh, wh >= 40":                                   "forget wall height; wall height >= 40 in",
		"seven boards, why are those out":                      "why not rails = 7",
		"just out of curiosity, gap 3":                         "what if gap = 3 in",
		"make the gap 2, it looks good":                        "gap = 2 in",
		"the truck leaves at two, make it six rails":           "rails = 6",
	})
}
