package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What was, what others have and what is not asked for is told beside what is wanted.
func TestContrast(t *testing.T) {
	for said, want := range map[string]string{
		"eight foot bays are what my cousin has, mine can't go over seven":                            "bay <= 84 in",
		"they've got seven boards over there, I want fewer boards than that":                          "rails < 7",
		"the doorway's fine as it is, but bring the wall up two inches":                               "wall height += 2 in",
		"what to buy I've got already, what I'm after is where the marks go":                          "ask marks",
		"last time we did six rails, this time it's five":                                             "rails = 5",
		"next door they've got three inch gaps, I want two and a quarter":                             "gap = 2-1/4 in",
		"I was going to say two inches, but let's make the gap two and three eighths":                 "gap = 2-3/8 in",
		"the neighbor's wall is 40 high, ours is going to be 44":                                      "wall height = 44 in",
		"my boss puts in 6x6 posts, I'm putting in 4x4 posts":                                         "post size = 4x4",
		"their wall is four feet high, ours is three and a half":                                      "wall height = 42 in",
		"it was 70 mm between the slats before, now it's 60":                                          "gap = 60 mm",
		"the old brackets were a sixteenth thick, these brackets are an eighth":                       "bracket thickness = 1/8 in",
		"fence out back has 2x4 rails, this one gets 2x6":                                             "rail size = 2x6",
		"at least 34 for the walk-through, the old one was only 26":                                   "opening >= 34 in",
		"top of bay 1 was 66 yesterday, today it measures 66-1/8":                                     "measured bay 1 top = 66-1/8 in",
		"neighbor's walk-through is on the left, ours goes on the right":                              "opening side = right",
		"I know what the gap is, tell me the opening":                                                 "ask opening",
		"don't draw it, just tell me how long to cut the rails":                                       "ask cuts",
		"it's not the gap I'm asking about, it's the opening":                                         "ask opening",
		"I don't mind what it costs, I want the largest opening I can get":                            "largest opening",
		"forget the doorway for a second, how tall is the wall":                                       "ask wall height",
		"I know it's five boards, I want to know why.":                                                "why rails",
		"leave the wall height alone and make the gap two and an eighth":                              "gap = 2-1/8 in",
		"how many times do i have to say it, six boards!":                                             "rails = 6",
		"Who wants a gap of four inches? Make it two.":                                                "gap = 2 in",
		"Originally we planned on seven boards, but now we would like to have five, please.":          "rails = 5",
		"in my day we left three inches everywhere, but here I'll have two and a half between boards": "gap = 2-1/2 in",
		"they have 2x6 rails next door, ours are 2x4":                                                 "rail size = 2x4",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	// What only looks like it: a claim, a fact, a wish of its own, or something that leans on what was told.
	for said, not := range map[string]string{
		"he says six boards, I say five":                                "rails = 5; rails = 6",
		"yesterday I measured 144 between the posts, wall 44":           "wall height = 44 in",
		"the old posts are 6x6, the new ones 4x4":                       "added post size = 4x4",
		"last week it was six boards, that was one too many":            "rails = 1",
		"my saw chews up 5/64 a pass and I want the least waste":        "least waste",
		"forget what he said, the opening is 30":                        "opening = 30 in",
		"forget the gap, make the opening 36":                           "opening = 36 in",
		"I know the gap, make it 3":                                     "opening = 3 in",
		"I nearly took two inch gaps, but then I thought better of it":  "gap ~ 2 in",
		"the neighbors have three inch gaps, ours should be different":  "check gap = 3 in",
		"Friday bay 1 was 64-1/4 at the top, today I get 64-1/2":        "bay = 64-1/2 in",
		"screws used to be nine dollars a hundred, now they want 11.40": "price screws = 11.40",
		"opening 34, don't save that yet":                               "opening = 34 in",
		"the neighbors have three inch gaps, do we":                     "gap = 3 in",
		"yesterday it was six boards, is five enough":                   "rails = 5",
	} {
		require.NotEqual(t, not, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
