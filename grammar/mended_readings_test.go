package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What the tape says, what is up already, what others' walls are and what papers show, each with the words that were misread.
func TestReadingsMended(t *testing.T) {
	for line, want := range map[string]string{
		"just taped bay 2, 64-7/16 low, 64-5/8 up top":                                               "measured bay 2 bottom = 64-7/16 in; measured bay 2 top = 64-5/8 in",
		"bay 2 is 64-5/8 up top and 64-7/16 down low":                                                "measured bay 2 top = 64-5/8 in; measured bay 2 bottom = 64-7/16 in",
		"bay 2, 64-7/16 low":                                                                         "measured bay 2 bottom = 64-7/16 in",
		"bay 2 top is 70 3/8, I read 70 1/2 at first but the tape was sagging":                       "measured bay 2 top = 70-3/8 in",
		"bay 1 top measures 68 3/8, I said 68 1/2 earlier but I misread it":                          "measured bay 1 top = 68-3/8 in",
		"The garden gate measures 34 inches; the opening in the wall should be 40 inches.":           "opening = 40 in",
		"the gate we bought measures 34 inches; the opening should be 36":                            "opening = 36 in",
		"five boards over a 3 inch gap at the floor":                                                 "rails = 5; bottom gap = 3 in",
		"six rails above a two inch bottom gap":                                                      "rails = 6; bottom gap = 2 in",
		"low board's already screwed on its top edge is at eight and a quarter":                      "fixed rail 1 top = 8-1/4 in",
		"second board's already screwed on its top edge is at sixteen":                               "fixed rail 2 top = 16 in",
		"the house wall is 96 high, the half wall's going to be 44":                                  "wall height = 44 in",
		"my brother's wall is 42 high with three inch gaps, mine's 46 with two and a half inch gaps": "wall height = 46 in; gap = 2-1/2 in",
		"their opening is 36 wide with two posts, ours is 40 with one":                               "opening = 40 in; added posts = 1",
		"His sketch, Exhibit A, has the walk-through beginning 46 inches from the left end post":     "check opening from left = 46 in",
		"Her drawing, page 2, shows the opening at 30 inches":                                        "check opening = 30 in",
		"the note, in pencil, says a gap of 2 inches":                                                "check gap = 2 in",
		"My neighbor's drawing (the one on the napkin) has the gap at 2 inches":                      "check gap = 2 in",
		"The architect's drawing, revision B, calls for seven rails":                                 "check rails = 7",
		"first bay, 64-7/16 low, 64-5/8 up top":                                                      "measured bay 1 bottom = 64-7/16 in; measured bay 1 top = 64-5/8 in",
		"bay 2 bottom 70 3/8, at first I read 70 1/2":                                                "measured bay 2 bottom = 70-3/8 in",
		"the span's 144, I first read it as 145":                                                     "span = 144 in",
		"the gate next door measures 34 inches; ours should be 40":                                   "opening = 40 in",
		"the old half wall was 36 high, the new one's 42":                                            "wall height = 42 in",
		"rail 1 is already screwed on its top edge is at eight and a quarter":                        "fixed rail 1 top = 8-1/4 in",
		"the floor at the right post is an inch low":                                                 "floor at right = -1 in",
	} {
		if r := Read(line, act.Context{}); parse.Normal(r.Acts) != want {
			t.Errorf("%q reads %q, want %q", line, parse.Normal(r.Acts), want)
		}
	}
	for _, line := range []string{
		"the wall's an inch low", "the gap is a quarter narrow", "the opening's two inches narrow", "wall 44 low",
		"the house wall is 96 high", "the garden gate measures 34 inches", "five boards over a 3 inch gap", "the gap is a quarter inch over the limit",
		"wall 48 high, no, I said 46 earlier",
	} {
		if r := Read(line, act.Context{}); r.Ask == nil {
			t.Errorf("%q sets %q, and should ask", line, parse.Normal(r.Acts))
		}
	}
}
