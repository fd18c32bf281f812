package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// A figure, a topic or a limit that is said first is heard as in the plain order.
func TestWordOrder(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		// Figures first.
		"Thirty-nine inches: that is the height we have in mind for the wall":              "wall height = 39 in",
		"forty two and a half off the patio, that's how high they'd like the wall":         "wall height = 42-1/2 in",
		"two of them, that's how many stiffeners go in each bay":                           "stiffeners = 2",
		"no more than 3 inches, that's what I'll allow between the boards":                 "gap <= 3 in",
		"an inch and a half higher than the wall, that's how tall the new post should be":  "post height = wall height + 1-1/2 in",
		"the same as between the boards, that's how far off the floor the bottom one goes": "bottom gap = gap",
		"half an inch, that's how much higher the floor is at the right end":               "floor at right = 1/2 in",
		"an inch narrower is how I want the doorway":                                       "opening -= 1 in",
		"14.25, that's what a twelve foot 2x6 costs":                                       "price 2x6 144 in = 14.25",
		"2x4s is what we're using for the rails":                                           "rail size = 2x4",
		"to the right, that's where the opening belongs":                                   "opening side = right",
		"between 40 and 44 inches is where I'd like the wall to end up":                    "wall height in 40 in..44 in",
		"eight ten-foot 2x6s is what the quote says. right?":                               "check boards 2x6 120 in = 8",
		"2 and a half, that's what she has for the gap. does that check out?":              "check gap = 2-1/2 in",
		"on the left is where they have the opening. does that work?":                      "check opening side = left",
		"what I want between the rails is two and a quarter and that's it":                 "gap = 2-1/4 in",
		"it's the left post the doorway butts up against":                                  "opening side = left",
		"inches, that's what I measure in. The wall is 42 high":                            "units = customary; wall height = 42 in",
		"in the middle the walkway should go":                                              "opening side = middle",
		"two inches over the wall the new post should go":                                  "post height = wall height + 2 in",
		"six boards, the drawing has. Does that go?":                                       "check rails = 6",
		"For all the material, $500 is the very most that we can manage":                   "budget = 500.00",
		"porch is the name I want this saved under":                                        "save porch",
		"12.40 ea - 2x6x10'":                                                                 "price 2x6 120 in = 12.40",
		"bays - 6'10\" tops":                                                                 "bay <= 82 in",
		"not 140, the span. It's 140 1/2":                                                    "span = 140-1/2 in",
		"the opening I had wrong. 33 it is":                                                  "opening = 33 in",
		"six of em that's how many slats go in a bay yeah six":                               "rails = 6",
		"the posts, by the way, are 4x4s; the rails, on the other hand, are 2x6s":            "post size = 4x4; rail size = 2x6",
		"what if it was 1x4s we used for the stiffeners and not 1x6s":                        "what if stiffener size = 1x4",
		"$380, that's what the yard's quote comes to. is that right?":                        "check cost = 380.00",
		"any less than two inches of gap and the brackets run into one another":              "bracket clearance = 2 in",
		"down at the bottom leave three inches, and up between the planks two and a quarter": "bottom gap = 3 in; gap = 2-1/4 in",
		"one extra board for spare, that'll do":                                              "spare = 1",
		// Limits first.
		"wider than seven feet a bay can't be":                  "bay <= 84 in",
		"over 4 inches the gap must never be":                   "gap <= 4 in",
		"closer than 14 inches apart the stiffeners mustn't be": "stiffener spacing >= 14 in",
		"more than $400 it must not cost":                       "budget = 400.00",
		"fewer than five boards I won't have":                   "rails >= 5",
		// Topics first.
		"my marks, where do they sit on the post":                   "ask marks",
		"bay 1 and bay 2, how wide are they":                        "ask bay 1; ask bay 2",
		"the gap and the bottom gap, what are they":                 "ask gap; ask bottom gap",
		"the sum for the wall height, can you walk me through that": "teach wall height",
		"three inch gaps, what's the matter with that":              "why not gap = 3 in",
		"seven boards, why doesn't that work":                       "why not rails = 7",
		"40 is too wide for the doorway, is it? why?":               "why not opening = 40 in",
		"six rails, it says. how come six?":                         "why rails",
		"with gaps of 2 inches, would seven boards fit?":            "what if gap = 2 in, rails = 7",
		"if seven boards, how big a gap?":                           "what if rails = 7; ask gap",
	})
	for _, line := range []string{
		"forty inches, that's not how tall we want the wall", "34, that's how wide his doorway is at home", "maybe 34 is how wide we want the doorway",
		"34 or 36 is what the doorway needs", "40, that is how tall we would like the wall if it were up to me", "2 inches is almost what I want between the boards",
		"two inches is what I do not want between the boards", "thirty, that's what I paid for lunch", "he thinks 34 is what the doorway needs",
		"40 inches is how tall his wall is", "longer than three hours it can't be", "my boots, where are they", "the wall I got wrong. It's on the other side of the yard",
		"six boards, that's what we used to have", "what I want between the boards is two or three inches",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
