package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What builders, clerks and old joiners say in their own way is heard; what only sounds like it is asked back.
func TestTradePhrases(t *testing.T) {
	for _, c := range [][2]string{
		{"no opening less than thirty nor wider than thirty six", "opening >= 30 in; opening <= 36 in"},
		{"there should never be more than six feet nor less than five to a bay", "bay <= 72 in; bay >= 60 in"},
		{"the gaps are never to be less than two nor more than two and a half", "gap >= 2 in; gap <= 2-1/2 in"},
		{"open the boards up another quarter inch", "gap += 1/4 in"},
		{"bring them boards in another eighth closer together", "gap -= 1/8 in"},
		{"what if the stiffeners dropped from three down to two", "what if stiffeners = 2"},
		{"what happens if the boards go from five to seven", "what if rails = 7"},
		{"tag on the post caps says six forty", "price post cap = 6.40"},
		{"the tag on the 2x6 eights reads $7.35", "price 2x6 96 in = 7.35"},
		{"not one sixteen-footer left in the shop", "stock -= 192 in"},
		{"stock 8/10/14 ft", "stock = 96 in, 120 in, 168 in"},
		{"toss three boards more than required on the truck", "spare = 3"},
		{"in my time we left two inches between the boards, and so shall you", "gap = 2 in"},
		{"in those days a wall stood forty inches high, and so shall this one", "wall height = 40 in"},
		{"cut the new post half an inch shy of the top of the wall", "post height = wall height - 1/2 in"},
		{"put two posts in between the outer pair", "added posts = 2"},
		{"gap tight as can be but >1", "smallest gap; gap > 1 in"},
		{"at first we wanted the gap at three, now we want two", "gap = 2 in"},
		{"two stiffeners in each bay and i'm making em out of one by threes", "stiffeners = 2; stiffener size = 1x3"},
		{"posts are four by six and i'm hanging two by eights off of em", "post size = 4x6; rail size = 2x8"},
		{"two extra uprights in the run and no bay goes past six foot nine", "added posts = 2; bay <= 81 in"},
		{"the opening cannot get narrower than thirty", "opening >= 30 in"},
		{"I ain't shelling out more than 300 bucks", "budget = 300.00"},
		{"Tag on the eighteen-foot 2x6s reads $17.49, and on the ten-foot 2x6s $8.95.", "price 2x6 216 in = 17.49; price 2x6 120 in = 8.95"},
		{"bay 2 bottom's 70 1/8, hang on, read it upside down, 70 3/8", "measured bay 2 bottom = 70-3/8 in"},
		{"the top of the post stands four foot two off the slab", "post height = 50 in"},
		{"my son swears the opening is thirty, the wife wants thirty four, so go by her", "check opening = 30 in; opening = 34 in"},
		{"the owner says the rails are 2x6, but I see 2x4", "check rail size = 2x6; rail size = 2x4"},
		{"opening thirty two, oh shoot, thirty four", "opening = 34 in"},
		{"label on the brackets says 3/16 thick", "check bracket thickness = 3/16 in"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"in my day we gave it plenty of room", "stop the added post", "I read it wrong", "what would cause the gap to grow", "make sure nobody moves the post", "first I wanted a pony",
		"an opening of thirty-six that's under thirty", "got 67 1/4 on that one bay", "couldn't we just do it the way the other crew does",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
