package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Formulas by which people soften a wish, and clauses that only tell why or what goes on, say nothing of the wall.
func TestPastTalk(t *testing.T) {
	for said, want := range map[string]string{
		"if it's all the same to you I'd have five boards in each bay":                                            "rails = 5",
		"seeing as how the grandkids run through there full tilt, the walk-through had better be 38 at the least": "opening >= 38 in",
		"unless there's some good reason not to, put the doorway over against the right post":                     "opening side = right",
		"provided none of the gaps gets to four inches, I'm happy with five boards":                               "gap < 4 in; rails = 5",
		"far be it from me to argue, but why six boards":                                                          "why rails",
		"not that I doubt you, but how did you arrive at the width of the opening":                                "why opening",
		"I wouldn't say no to another two inches on the doorway":                                                  "opening += 2 in",
		"in view of the little one climbing everything, nothing over two and a quarter between boards please":     "gap <= 2-1/4 in",
		"Would it be awfully rude to ask you to start the whole thing over?":                                      "start over",
		"not to put too fine a point on it, but my boards are really 5 and 9/16 wide, whatever the label says":    "rail face = 5-9/16 in",
		"supposing we went down to four boards, and I'm not saying we will, what would the gap be":                "what if rails = 4; ask gap",
		"I'd just as soon have all the bays the same width, if nobody minds":                                      "equal bays",
		"about two and a half between the boards but in no case more than three":                                  "gap ~ 2-1/2 in; gap <= 3 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{
		"six boards, the boss won't hear of it", "if nobody minds", "unless there's a good reason not to",
		"the drawing is torn, gap two or three",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
}
