package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Polite people in full sentences: what leads up to a wish and what is only added to it, and the same words where they turn it; common
// speech, no source.
func TestCourtesy(t *testing.T) {
	for _, c := range [][2]string{
		{"If you would be so kind, tell me how many posts are needed.", "ask posts"},
		{"Would you be so good as to let me have a list of what to buy?", "ask shopping"},
		{"May I be told how wide the bays turn out?", "ask bay"},
		{"Might I be told the price of the whole lot?", "ask cost"},
		{"After a good deal of discussion we've decided on gaps of 2 1/4 inches.", "gap = 2-1/4 in"},
		{"After long deliberation, my wife and I have agreed on five boards.", "rails = 5"},
		{"It matters a great deal to us that the passage is at least 34 inches wide.", "opening >= 34 in"},
		{"It would be wonderful if the gap could be 2 1/2 inches.", "gap = 2-1/2 in"},
		{"I'd be glad of gaps of no more than 3 inches.", "gap <= 3 in"},
		{"I'd be most grateful if we could manage with as few posts as possible.", "fewest posts"},
		{"I would be so pleased if we could do with five rails.", "rails = 5"},
		{"The gap is to be 2 inches, if memory serves.", "gap = 2 in"},
		{"Between the posts there are 150 inches, unless my eyes deceive me.", "span = 150 in"},
		{"The floor drops half an inch from left to right, which I had never noticed until today.", "floor at right = -1/2 in"},
		{"Six rails, please; it looks neater to my eye.", "rails = 6"},
		{"A wall 44 inches high, I'm not particular about it, and five rails.", "wall height = 44 in; rails = 5"},
		{"Where do I start on Saturday, when my brother comes to help?", "ask steps"},
		{"How long do I cut the boards when I get to it tomorrow morning?", "ask cuts"},
		{"I'd like a gap of 2 inches, oh, pardon me, 2 1/4 inches.", "gap = 2-1/4 in"},
		{"Seven rails, forgive me, I meant eight.", "rails = 8"},
		{"I misspoke about the boards: there should be six rather than five.", "rails = 6"},
		{"My wife would like to have gaps of no more than 3 inches.", "gap <= 3 in"},
		{"My mother-in-law would dearly like the passage to be 90 centimetres.", "opening = 900 mm"},
		{"My wife is hoping for a gap of under 2 1/2 inches.", "gap < 2-1/2 in"},
		{"We have a grandson who sticks his head everywhere, so please keep the gaps below 3 1/2 inches.", "gap < 3-1/2 in"},
		{"My father built his too low, bless him, but I want mine to be 42 inches high.", "wall height = 42 in"},
		{"In our town one can get boards in lengths of 8 and 12 feet.", "stock = 96 in, 144 in"},
		{"I was quoted $412 for the material; do you get the same?", "check cost = 412.00"},
		{"We were given an estimate of $510 for the lumber; does that tally with yours?", "check cost = 510.00"},
		{"My husband and I have fixed the first rail already; its top edge sits at 10 1/4 inches.", "fixed rail 1 top = 10-1/4 in"},
		{"What have you got down for me up to now?", "recap"},
		{"Please allow for 10 percent spare, and assume a kerf of an eighth.", "spare = 10%; kerf = 1/8 in"},
		{"The shop telephoned to say that they have run out of twelve-footers.", "stock -= 144 in"},
		{"My brackets are 1/8 inch thick, and they begin to touch once the gap is under 2 inches.", "bracket thickness = 1/8 in; bracket clearance = 2 in"},
		{"We have only ever used centimetres at home, so please use the metric system.", "units = metric"},
		{"Please assume six rails.", "what if rails = 6"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"If you would be so good, don't tell me the number of rails.",
		"After some thought I am no longer sure about two stiffeners in every bay.",
		"Before we had given it much thought we had settled on 6 rails.",
		"It is not important to me that the gaps remain under 3 inches.",
		"The second board in the third bay measures 58, if I read the tape correctly, which I doubt.",
		"My wife wished to have an opening of 36 inches, but not any more.",
		"The shop rang to say that they are not out of sixteen-footers.",
		"The shop rang to ask whether I am out of sixteen-footers.",
		"I'd be grateful if we could talk about the fewest posts possible.",
		"I'd like six rails, oh no, not seven rails.",
		"The gap is 2 inches; I find that too wide.",
		"Might I be shown a wall of 40 inches?",
		"May I be told to use five rails?",
		"After some thought I have not settled on two stiffeners yet.",
		"Only after much thought would I go to six rails.",
		"It is important to my neighbor that his gaps stay under 3 inches.",
		"It would be splendid if the wall were 40 inches high, but I cannot have it.",
		"Would it be splendid if the wall were 40 inches high?",
		"Put the opening on the left; I find it handier on the right.",
		"Six rails; she finds that prettier, I don't.",
		"My husband says six rails; I find five tidier.",
		"If my eyes deceive me, the gap is 3.",
		"My wife wishes the wall were not 40 inches high.",
		"My wife is hoping for six rails, I am not.",
		"My mother is after five rails, my father after six.",
		"My husband is not set on six rails.",
		"My father built his low, but I do not want mine to be 42 inches high.",
		"Does my neighbor want his to be 40 inches high?",
		"I was not given a quote of $368.",
		"What if I was given a quote of $368?",
		"In my village one can buy timber in lengths of 3.9 metres no longer.",
		"The shop rang to say that they have run out of paint.",
		"My husband and I have put up the first rail already, and its top is not at 9 inches.",
		"Please assume nothing about the kerf.",
		"Five rails, forgive me for saying so, seven rails are too many.",
		"Five rails, forgive me, or seven?",
		"We have ever worked in millimetres, so please don't use those.",
		"The third rail measures 61, which I had never noticed was wrong.",
		"The number of rails required by code is six.",
		"Let me have a drawing of a wall 40 inches high.",
		"Let me see a list of what not to buy.",
		"What should I not do first when I get started?",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}

// What was bought and what looked wrong, what it may cost, and who could get stuck; common speech, no source.
func TestHouseholdTold(t *testing.T) {
	for _, c := range [][2]string{
		{"are you able to tell me the exact length for every board?", "ask cuts"},
		{"What would become of my plan if the store had nothing left but 10-foot boards?", "what if stock = 120 in"},
		{"We could stretch to $425 for materials, but that really is our limit.", "budget = 425.00"},
		{"The sketch is wrong about the gap; put down 2 1/2.", "gap = 2-1/2 in"},
		{"her drawing is wrong about the wall height: it should be 44 inches", "wall height = 44 in"},
		{"my dog could get through easily, so the bottom gap should be under 3 inches", "bottom gap < 3 in"},
		{"from one post to the other it's 12 feet clear", "span = 144 in"},
		{"the gaps should never be more than 3 inches nor less than 2", "gap <= 3 in; gap >= 2 in"},
		{"seven boards looked too crowded to me, so let's have six of them", "rails = 6"},
		{"We have bought a stack of 2x6s for the rails this week, so I'd like to use them.", "rail size = 2x6"},
		{"order three boards more than needed", "spare = 3"},
		{"the bays should not exceed 70 inches", "bay <= 70 in"},
		{"After a sleepless night I have come round to six boards.", "rails = 6"},
		{"I cannot for the life of me see why the opening may not be 36 inches wide.", "why not opening = 36 in"},
		{"It would suit us very well if the rails were 2x6s.", "rail size = 2x6"},
		{"My sister would be delighted with a walk-through of three feet.", "opening = 36 in"},
		{"Oh, how silly of me, the posts are 6x6s, of course, not 4x4s.", "post size = 6x6"},
		{"they sell eight- and ten-foot boards", "stock = 96 in, 120 in"},
		{"He says the gap is 2 inches, and I do not know whether to believe him.", "check gap = 2 in"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
	for _, line := range []string{
		"I have not come to the conclusion that the gaps should be 2 inches.", "My neighbor would be delighted with a walk-through of three feet.",
		"After a sleepless night I doubt six boards.", "It would not suit us if the rails were 2x6s.", "Six rails; that is ugly.",
		"We have bought a stack of 2x6s for the rails this week, so what if we don't use them?",
		"don't buy two boards more than needed",
		"seven boards looked too crowded to me",
		"place the extra post so that the opening does not start 40 inches from the left post",
		"The drawing is wrong about the wall",
		"from one post to the next it's 6 feet",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
}
