package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What only looks like boards at hand, lumber on sale, money and orders: it is denied, asked, supposed, over, or another's.
func TestRackAndPurseAsked(t *testing.T) {
	for _, said := range []string{
		"the neighbor's got six ten foot 2x6s lying behind his shed",
		"my uncle gave away six ten-foot 2x6s",
		"the troop can't spend 220",
		"last year the troop could spend 220",
		"did they quit stocking fourteens?",
		"they haven't quit stocking fourteens",
		"are the brackets on special, two nineteen each?",
		"brackets were on special last week, two nineteen each",
		"in my neighbor's rafters there's a ten foot four by four",
		"at the yard there are six ten foot 2x6s left",
		"don't throw in one board extra",
		"don't count the eight 2x6 tens stacked by the furnace",
		"we never pulled seven eight-foot two by fours out of the fence",
		"I kept six ten foot 2x6s for the neighbor's fence",
		"six ten foot 2x6s in the barn but they're not straight",
		"six ten foot 2x6s in the barn and they're warped",
		"the only lengths they had last year were ten and fourteen feet",
		"maybe my dad dropped off six ten foot 2x6s",
		"my dad brought six ten foot 2x6s back to the yard",
		"we sent six ten foot 2x6s back",
		"our trade discount would make the brackets two sixty",
		"allow 3 mm for every bracket",
		"the less wood the better",
		"hauled six ten foot 2x6s away to the dump",
		"I pulled six ten foot 2x6s off the order",
		"we gave six ten foot 2x6s back to dad",
		"the dock wall used to be 44 high",
		"a dock wall 12 feet long",
		"if the troop is good for 220 dollars",
		"the troop was good for 220 dollars",
		"see that it doesn't cost less than 310 dollars",
		"I don't figure 3.30 a bracket",
		"the first inch of each board isn't junk",
		"are shelf lengths 8, 10 and 12 feet?",
		"don't plan around ten and twelve foot boards",
		"don't save the plan, call it lakeside",
		"why is that the cheapest version",
		"use the four eight foot 2x4s behind the neighbor's coop",
		"don't use the four eight foot 2x4s behind the coop",
		"should I use the four eight foot 2x4s behind the coop?",
		"we will be given six ten foot 2x6s by the parish",
		"six ten foot 2x6s came with the neighbor's house",
		"I sold six ten foot 2x6s from the old fence",
		"the six ten foot 2x6s in the shed are Ann's",
		"the six ten foot 2x6s under the tarp are not for this",
		"use six ten foot 2x6s in the left bay",
		"from the yard I have six ten foot 2x6s coming",
		"we pulled six ten foot 2x6s off the list",
		"was it three forty a bracket",
		"not three forty a bracket",
		"for the neighbor's wall, gap 2",
		"the dock wall doesn't get four rails",
		"is anything over 350 dollars out of the question?",
		"nothing over 350 dollars is out of the question",
		"we can't raise the limit to 375 dollars",
		"should we raise the limit to 375 dollars?",
		"is there no more budget limit?",
		"if the scouts raised 190 dollars and that had to do",
		"don't plan for eight percent scrap",
		"does the blade take 1/8 out every time?",
		"the blade doesn't take 1/8 out every time",
		"their saw leaves a 3 mm slot, ours doesn't",
		"is lumber here cut to eight or ten feet?",
		"lumber here isn't cut to eight or ten feet",
		"the last tenant abandoned nothing",
		"did the caretaker let us keep eight ten foot 2x6s?",
		"the caretaker won't let us keep eight ten foot 2x6s",
		"behind on the bid: twelve 2x6 tens",
		"at the yard: twelve 2x6 tens",
		"in the left bay: six ten foot 2x6s",
		"six ten foot 2x6s are left at the yard",
		"cheap isn't what counts",
		"is cheap what counts?",
		"don't burn as little lumber as possible",
		"per bracket it was three sixty",
		"we never unloaded nine sixteen foot 2x6s",
	} {
		r := Read(said, act.Context{})
		require.NotNil(t, r.Ask, "%s: %s", said, parse.Normal(r.Acts))
	}
}

// A wall keeps its name, whatever the place is called that it stands at.
func TestWallsNamedByPlaces(t *testing.T) {
	for _, place := range []string{"dock", "stage", "pier", "terrace", "bar", "stairs", "sidewalk", "pond", "gym", "dining room", "back porch", "dock side"} {
		for said, want := range map[string]string{
			place + " wall: five planks, gap two and a half": place + " wall: rails = 5; " + place + " wall: gap = 2-1/2 in",
			place + " wall has five rails":                   place + " wall: rails = 5",
		} {
			require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
		}
	}
}
