package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Turns of phrase of a day's work at the wall, and what only looks like them.
func TestWorkdayTurns(t *testing.T) {
	for said, want := range map[string]string{
		"suppose i drop down to four boards what'll that do to the gap":                              "what if rails = 4; ask gap",
		"if we hung five rails with two and an eighth between, how much would be left at the bottom": "what if rails = 5, gap = 2-1/8 in; ask bottom gap",
		"say i dropped to four boards how big do the gaps get":                                       "what if rails = 4; ask gap",
		"run me the marks":                     "ask marks",
		"post locs":                            "ask posts",
		"help me find where the new post goes": "ask posts",
		"And the doorway, if I may, should be exactly in the middle.":                  "opening side = middle",
		"buy me two boards more than the job takes":                                    "spare = 2",
		"why don't we make it six boards and be done with it":                          "rails = 6",
		"Please give me a design with as few boards as possible.":                      "fewest rails",
		"Would you be so kind as to repeat back all that you have noted from me?":      "recap",
		"I'm afraid I can't read my tape measure any finer than a quarter of an inch.": "tape = 1/4 in",
		"Would things improve if the gap were 3/8 of an inch wider?":                   "what if gap += 3/8 in",
	} {
		require.Equal(t, want, Normal(Read(said, Context{}).Acts), said)
	}
	for _, said := range []string{"we dropped four boards off the truck", "run me over to the yard", "he went down to four", "I haven't decided between five and six boards.", "I don't know yet how high the wall should be.", "take five, everybody", "I've got twenty dollars for lunch"} {
		require.Empty(t, Read(said, Context{}).Acts, said)
	}
}
