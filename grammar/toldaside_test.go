package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// What is said in jest, of what came to nothing, of boards for another work, of others' walls and of what somebody thinks sets nothing.
// Common speech, no source.
func TestToldAside(t *testing.T) {
	for _, line := range []string{
		"set aside two boards for the bench",
		"two of the rails are split down the end",
		"half of these boards are junk",
		"the wall's an inch off",
		"gap's off by an eighth",
		"six boards would've been nice",
		"he'd have wanted three inches between them",
		"were it up to me there'd be a two inch gap",
		"the largest doorway I ever built was five foot",
		"five boards, that's rich",
		"what next, eight rails",
		"oh sure, make it twenty boards why don't you",
		"oh great, now the wall's 60 inches high",
		"don't ask me why it's six boards",
		"I see why the gap can't be two inches",
		"who said five boards",
		"you'd think a two inch gap would work",
		"we've had six rails for years",
		"he started out with eight boards",
		"I'd rather have had six boards",
		"everybody round here does six rails",
		"the place next door has two walk-throughs",
		"the previous crew ran them at two inch gaps",
		"the mailbox post is 42 inches high",
		"the deck boards have a quarter inch gap",
		"would you put a 48 inch wall on your own porch",
		"are you happy with six rails",
		"he charged me 48 for the boards",
		"it took three coats to cover it",
		"toss me that two inch screw",
		"the wall is a metre and something",
		"bay 1 top is 60, bay 1 top is 61",
		"show me the list",
		"leave everything but the gap alone",
		"he wanted the gap at two",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
	requireReads(t, act.Context{}, map[string]string{
		"take an inch off the wall":                          "wall height -= 1 in",
		"six boards would be nice":                           "rails = 6",
		"she wants the gap at two":                           "gap = 2 in",
		"bay 1 top is 60, no, 61":                            "measured bay 1 top = 61 in",
		"show me the shopping list":                          "ask shopping",
		"the fellow next door used seven rails":              "check rails = 7",
		"the yard has 3.9 and 4.2 metre lengths as well":     "stock += 3900 mm, 4200 mm",
		"who says there have to be two added posts":          "why added posts",
		"imagine there were no extra post in between at all": "what if added posts = 0",
		"I also need four 2x6 pieces at 22 3/8 for a bench":  "extra 2x6 22-3/8 in x 4",
	})
}

// A denial before what is wanted, what stays and what goes, a farewell to one part of it, a reason of the house, what was and what is now.
func TestMeantSo(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"keep everything but the gap":                                                                    "forget gap",
		"drop everything but the gap":                                                                    "forget all but gap",
		"never mind the cost, where does the new post go":                                                "ask posts",
		"not the cut list, the shopping list":                                                            "ask shopping",
		"I'm not asking why six, I'm asking why not seven rails":                                         "why not rails = 7",
		"not the wall, the new post should be 50 high":                                                   "post height = 50 in",
		"add another inch to the wall, not to the gap":                                                   "wall height += 1 in",
		"the doorway isn't by the left post, it's by the right one":                                      "opening side = right",
		"144 isn't center to center, that's the clear span between the posts":                            "span = 144 in",
		"it's 158 outside to outside of the end posts, not between them":                                 "overall = 158 in",
		"I've told you twice, the gap is three":                                                          "gap = 3 in",
		"for the third time, six rails":                                                                  "rails = 6",
		"don't forget the kerf, that's a full eighth":                                                    "kerf = 1/8 in",
		"before I settle on six boards, what would the gap be with five":                                 "what if rails = 5; ask gap",
		"that's it for the posts, now the gap, make it two and a half":                                   "gap = 2-1/2 in",
		"two spare boards, that's all":                                                                   "spare = 2",
		"I'm six foot two, so make the wall 46 high":                                                     "wall height = 46 in",
		"his wife's got a cat so keep the gap under three":                                               "gap < 3 in",
		"used to be 11.50, now they want 12.25 for a twelve foot 2x6":                                    "price 2x6 144 in = 12.25",
		"the sketch used to say six boards, now it says five":                                            "check rails = 5",
		"I asked for five boards and you gave me six":                                                    "rails = 5",
		"six boards, no, seven, no, six was right":                                                       "rails = 6",
		"my wife was for 42 high but we're making it 45":                                                 "wall height = 45 in",
		"His wall is 48 high, but mine is going to be 42.":                                               "wall height = 42 in",
		"second rail isn't up yet but its top should come at 14 inches":                                  "rail 2 top = 14 in",
		"sure, why not, seven boards it is":                                                              "rails = 7",
		"why not seven boards":                                                                           "why not rails = 7",
		"seven rails, what's so wrong with that?":                                                        "why not rails = 7",
		"Seven boards, the sketch has. Does that go?":                                                    "check rails = 7",
		"with gaps of 48 mm, would ten slats go in?":                                                     "what if gap = 48 mm, rails = 10",
		"talk me through how the shopping list got that long":                                            "why shopping",
		"chuck another 3 mil onto the gap":                                                               "gap += 3 mm",
		"thirty four for the doorway hold up I mean thirty six and shove it hard against the right post": "opening = 36 in; opening side = right",
		"Millimetres, that's what I work in. The wall is 1050 high.":                                     "units = metric; wall height = 1050 mm",
		"seventy two is too long for a bay":                                                              "bay < 72 in",
		"anything over three inches between boards is too much":                                          "gap <= 3 in",
		"three posts in all, counting the two at the ends":                                               "added posts = 1",
		"how does plan a stack up against plan b":                                                        "compare plan a, plan b",
	})
}
