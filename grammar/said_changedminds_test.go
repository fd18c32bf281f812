package grammar

import "testing"

// A figure that takes the place of one that was wanted or shown, and what is asked of the wall and of a thing beside it. Everyday speech, no source.
func TestChangedMinds(t *testing.T) {
	heardAs(t, map[string]string{
		"six boards no actually make it five": "rails = 5", "six boards, no, actually make it five": "rails = 5",
		"i wanted 36 for the opening but 34's fine": "opening = 34 in", "i wanted 36 for the opening but 34 is fine": "opening = 34 in",
		"I was thinking of a gap of 2 but 2-1/2 is better": "gap = 2-1/2 in", "we planned on six rails but five will do": "rails = 5",
		"no, bottom gap stays at three": "bottom gap = 3 in", "the sheet said 36 for the opening but use 34": "opening = 34 in",
		"the plan says 36 but use 34 for the opening": "opening = 34 in", "I've got four 12 foot 2x6, not six": "have 2x6 144 in x 4",
		"The neighbor was kind enough to give us six ten-foot two by sixes.": "have 2x6 120 in x 6",
		"gap two and a half all the way including the bottom":                "gap = 2-1/2 in; bottom gap = gap",
		"no posts in the middle": "added posts = 0", "Replace the gap with 2-1/8.": "gap = 2-1/8 in", "Change 36 to 34 on the opening.": "opening = 34 in",
		"how about 40 instead of 42 for the height":                          "what if wall height = 40 in",
		"make the bottom the same as the others after all":                   "bottom gap = gap",
		"how high would it be with 6 rails and 2 1/4 gaps":                   "what if rails = 6, gap = 2-1/4 in; ask wall height",
		"how tall is it with 6 rails at a 2 1/4 gap":                         "what if rails = 6, gap = 2-1/4 in; ask wall height",
		"how tall is it if the gap is 2":                                     "what if gap = 2 in; ask wall height",
		"does 6 boards at 2 1/4 make 42":                                     "check rails = 6, gap = 2-1/4 in, wall height = 42 in",
		"tell me the height of the wall and the gap":                         "ask wall height; ask gap",
		"what is the height of the wall and gap":                             "ask wall height; ask gap",
		"Please tell me the height of the wall and the size of the gap.":     "ask wall height; ask gap",
		"no more than four inches between boards the inspector's a stickler": "gap <= 4 in",
		// As it was.
		"six boards, no, make it five": "rails = 5", "the store sells 2x6 in 8's and 10's": "stock 2x6 = 96 in, 120 in", "what is the height of the gap": "ask bottom gap",
		// Asked back.
		"I wanted 36 for the opening but 34 is not fine": "unclear", "I wanted 36 for the opening but 34 is too small": "unclear", "he wanted 36 for the opening but 34's fine": "unclear",
		"the inspector says 36 for the opening but I use 34": "unclear", "change 36 to 34": "unclear", "does 6 boards at 2 1/4 make 42 or 44": "unclear",
		"was the neighbor kind enough to give us six 2x6x10": "unclear", "my boss is a stickler": "unclear",
	})
}
