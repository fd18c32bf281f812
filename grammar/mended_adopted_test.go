package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// heardAs holds lines to what is to be heard of them; "unclear" is a line that is asked back.
func heardAs(t *testing.T, lines map[string]string) {
	t.Helper()
	for line, want := range lines {
		r := Read(line, act.Context{})
		got := parse.Normal(r.Acts)
		if r.Ask != nil {
			got = "unclear"
		}
		if got != want {
			t.Errorf("%q is heard as %q, want %q", line, got, want)
		}
	}
}

func TestMendedAdopted(t *testing.T) {
	heardAs(t, map[string]string{
		// What they say is taken up.
		"the drawing has the doorway at 31, put that in":                                              "opening = 31 in",
		"the plan has the gap at two and a half, write that down":                                     "gap = 2-1/2 in",
		"my wife says five boards, put that in":                                                       "rails = 5",
		"the plan shows 2x6 rails, pencil that in":                                                    "rail size = 2x6",
		"boss told me to put in five rails so do that, but why couldn't it be four rails":             "rails = 5; why not rails = 4",
		"boss told me to use two stiffeners so do that, but what does it cost":                        "stiffeners = 2; ask cost",
		"boss wants every rail cut to one length, so do that":                                         "same length",
		"the owner wants the smallest gap, do it that way":                                            "smallest gap",
		"go ahead and enter these from the sheet: 5 rails, bottom gap 3 1/4":                          "rails = 5; bottom gap = 3-1/4 in",
		"she wants the gap at two, go with that":                                                      "gap = 2 in",
		"the plan says 40, use it for the opening":                                                    "opening = 40 in",
		"he says six rails, fine by me":                                                               "rails = 6",
		"the plan says 42 high, ok with us":                                                           "wall height = 42 in",
		"he says six rails, let's do that":                                                            "rails = 6",
		"he says six rails, I'll go along with it":                                                    "rails = 6",
		"If it were up to me there would be five boards, but my wife wants six, so six boards it is.": "rails = 6",
		"If it were up to me I'd have four bays, but the boss wants five, so five bays it is":         "bays = 5",
		"if it weren't for the dog i'd leave three inches, but make the gap two":                      "gap = 2 in",
		// What is told, asked, doubted or not taken up stays a claim, or is asked back.
		"six rails, so he says":                                "check rails = 6",
		"42 high, so they say":                                 "check wall height = 42 in",
		"he says six rails, do you believe that":               "check rails = 6",
		"the plan has the doorway at 31, is that right":        "check opening = 31 in",
		"he says six, do you believe that":                     "unclear",
		"she wants six, I don't":                               "unclear",
		"she wants six rails, but she's not getting them":      "unclear",
		"he says six rails, forget that":                       "unclear",
		"he says six rails, that's not fine by me":             "unclear",
		"the plan has the doorway at 31, don't put that in":    "unclear",
		"the plan has the doorway at 31, should I put that in": "unclear",
		"if it were up to me I'd make it 40 high":              "unclear",
		"if it were up to me there would be five boards":       "unclear",
		"if it weren't for the dog I'd leave three inches":     "unclear",
		// Of two times one and the same tells, the last is checked.
		"he had seven boards at first, but now he says five boards":                  "check rails = 5",
		"last week he told me six boards, now he says five":                          "check rails = 5",
		"the old sketch had the opening at 30, the new sketch has it at 28":          "check opening = 28 in",
		"the old plan says 40 for the opening, the new plan says 42, which is right": "check opening = 40 in; check opening = 42 in",
	})
}
