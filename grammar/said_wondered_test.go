package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// TestWondered: what is tried, wondered at, asked why, asked inside of another sentence and taught is heard in other words, of any quantity.
func TestWondered(t *testing.T) {
	for _, h := range []struct{ line, want string }{
		{"how's it come out with eight boards", "what if rails = 8"},
		{"how would things turn out with 70 mm between the boards", "what if gap = 70 mm"},
		{"whatif 8 rls", "what if rails = 8"},
		{"would things improve if the gap were 3/8 wider", "what if gap += 3/8 in"},
		{"is it worth going to eight boards", "what if rails = 8"},
		{"tell me whether seven boards would go in", "what if rails = 7"},
		{"see if a two inch gap would do it", "what if gap = 2 in"},
		{"check if we could get by with five rails", "what if rails = 5"},
		{"tell me if the opening could be 36", "what if opening = 36 in"},
		{"on the basis of a four inch bottom gap, how tall does the wall get", "what if bottom gap = 4 in; ask wall height"},
		{"at a gap of 2 1/4, how tall does this thing end up", "what if gap = 2-1/4 in; ask wall height"},
		{"granted a wall 50 inches tall, how many boards does that take", "what if wall height = 50 in; ask rails"},
		{"were we to use eight rails, how tall would it be", "what if rails = 8; ask wall height"},
		{"should I need a 40 inch doorway, can it be done", "what if opening = 40 in"},
		{"I'm thinking six boards, what gap would that give", "what if rails = 6; ask gap"},
		{"what would brackets at 3.10 do to the price", "what if price bracket = 3.10; ask cost"},
		{"what would a 38 inch opening do to the gap", "what if opening = 38 in; ask gap"},
		{"any idea what five boards would do to the gap", "what if rails = 5; ask gap"},
		{"what effect would six rails have on the gap", "what if rails = 6; ask gap"},
		{"would the count of boards change with the gap at two", "what if gap = 2 in; ask rails"},
		{"what would the cut list look like with 2x4 posts", "what if post size = 2x4; ask cuts"},
		{"draw it for me with a 40 inch walk-through", "what if opening = 40 in; ask drawing"},
		{"how far apart would the boards be if there were seven", "what if rails = 7; ask gap"},
		{"how much would we save with ten foot boards", "what if stock = 120 in; ask cost"},
		{"what would the doorway come to if it sat hard up against the left post", "what if opening side = left; ask opening"},
		{"which counts of rails are possible with a two inch gap", "what if gap = 2 in; ask options"},
		{"what would fit if the gap had to be three", "what if gap = 3 in; ask options"},
		{"Which numbers of boards would work at all, and why not four?", "ask options; why not rails = 4"},
		{"give me the marks for five rails", "what if rails = 5; ask marks"},
		{"the gap at 2, possible?", "what if gap = 2 in"},

		{"Why must the added post be as tall as that?", "why post height"},
		{"I know it's five boards, I want to know why.", "why rails"},
		{"I know the gap is 2, what I don't know is why", "why gap"},
		{"show me why seven rails is no good", "why not rails = 7"},
		{"what ruled out five rails", "why not rails = 5"},
		{"how can the bottom gap be that small", "why bottom gap"},
		{"it beats me why the doorway is so tight", "why opening"},
		{"it puzzles me how the bay width got that big", "why bay"},
		{"who or what decides the bay width", "why bay"},
		{"why do I need that many brackets", "why shopping"},

		{"Explain to the class, step by step, how the opening is found.", "teach opening"},
		{"show the kids how to work out a gap", "teach gap"},
		{"what's the method for finding the bottom gap", "teach bottom gap"},
		{"break the gap down for me, step by step", "teach gap"},
		{"don't skip a step, show me everything", "show it all"},

		{"i can't recall how wide the opening comes out", "ask opening"},
		{"it slipped my mind how high the wall is", "ask wall height"},
		{"I've lost track of how many posts we're adding", "ask added posts"},
		{"not sure what the bottom gap comes to, can you say", "ask bottom gap"},
		{"i don't see where the new post goes", "ask posts"},
		{"what lumber lengths are we working from anyway", "ask stock"},
		{"Why don't you show me the cuts?", "ask cuts"},
		{"how tall are the new posts, and what size are they", "ask post height; ask added post size"},
		{"how many boards, how far apart, and how high is the wall", "ask rails; ask gap; ask wall height"},
	} {
		require.Equal(t, h.want, parse.Normal(Read(h.line, act.Context{}).Acts), h.line)
	}
}

// TestNotWondered: what somebody does not know yet, or has not settled, is asked back, and so is what only sounds like a question after the wall.
func TestNotWondered(t *testing.T) {
	for _, line := range []string{
		"I don't know yet how high the wall should be.",
		"I haven't decided between five and six boards.",
		"we haven't made up our minds how many boards",
		"I've no idea yet what size posts to get",
		"no idea how many boards we should have",
		"I don't know yet how wide the doorway will be",
		"still deciding on the gap",
		"ask me again tomorrow about the gap",
		"I've forgotten how my uncle built his",
		"it slipped my mind where I parked the truck",
		"I don't see where this is going",
		"give me the price for the 2x6s",
		"how can I make it six boards cheaper than him",
		"which counts would work, and why not the others",
		"help my daughter find her shoes",
		"what would six boards do to my back",
		"beats me how wide to make the doorway",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, "%q: %s", line, parse.Normal(r.Acts))
	}
	for _, n := range []struct{ line, not string }{
		{"explain why the first board is out an inch", "why not rails = 1"},
		{"should I use six rails or seven?", "what if rails = 6"},
		{"why is the post so short of paint", "why post height"},
		{"I'm considering 3 inch gaps, so set it to that", "what if gap = 3 in"},
		{"how can I make the bottom gap that small", "why bottom gap"},
		{"it's worth going to the yard for two boards", "what if rails = 2"},
		{"what would the gap be with five", "what if gap = 5 in"},
		{"the opening comes out right of the post", "opening side = left"},
	} {
		require.NotEqual(t, n.not, parse.Normal(Read(n.line, act.Context{}).Acts), n.line)
	}
}
