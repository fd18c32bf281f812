package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Sizes that are made larger and smaller, held, bounded and taken back in the breath that told them. Everyday speech, no source.
func TestSized(t *testing.T) {
	for said, want := range map[string]string{
		"gap 2, hold up, 2-1/4": "gap = 2-1/4 in", "opening on the left, whoa, the right": "opening side = right", "six rails my goof seven": "rails = 7",
		"gap 2, let's say, 2-1/4": "gap = 2-1/4 in", "I gave you 36 for the doorway and it's 34": "opening = 34 in", "he says gap 2, my bad, 2-1/4": "check gap = 2-1/4 in",
		"the gap is held at 2-1/8": "gap = 2-1/8 in", "gap held to 2-1/8": "gap <= 2-1/8 in", "rails held 2-1/8 apart": "gap = 2-1/8 in",
		"gaps 1-3/4 thru 2-1/4": "gap in 1-3/4 in..2-1/4 in", "rails: 4 thru 6": "rails in 4..6", "ease the gaps open another eighth": "gap += 1/8 in",
		"take the doorway in by an inch": "opening -= 1 in", "should we lose one of the bays": "what if bays -= 1", "drop two of the panels": "bays -= 2",
		"twice the gap is the least the opening can be": "opening >= 2 * gap", "the opening needs twice the gap at minimum": "opening >= 2 * gap",
		"quadruple the opening": "opening *= 4", "anything skinnier than 2 in the gaps is out": "gap >= 2 in", "fatten the budget by 50": "budget += 50.00",
		"everything's off by up to a sixteenth": "tolerance = 1/16 in", "floor runs uphill to the right, 7/8 all told": "floor at right = 7/8 in",
		"is twice the gap the least the opening can be": "check opening >= 2 * gap", "make it a six-rail wall": "rails = 6",
		"the wall needs to come up to my belt, 39 and a half": "wall height = 39-1/2 in", "gaps stay tighter than 3-1/2": "gap < 3-1/2 in",
		"whatever else, no gap over 3": "gap <= 3 in", "the gap mustn't open past 3-1/4": "gap <= 3-1/4 in", "give it another inch of height": "wall height += 1 in",
		"no more than 3-1/2 from the floor to the first board": "bottom gap <= 3-1/2 in", "the span lost 2 inches": "span -= 2 in", "stretch out bay 1 by 4": "bay 1 += 4 in",
		"three bays across": "bays = 3", "floor's flat as a pancake": "floor at right = 0 in", "the gap figure's out, toss it": "forget gap",
		"knock 3 inches off bay 2": "bay 2 -= 3 in", "gaps too snug, add a sixteenth": "gap += 1/16 in", "eight rails? no, seven": "rails = 7", "bay 2 without stiffeners": "bay 2 stiffeners = 0",
		"nudge post 1 left by an inch": "post 1 from left -= 1 in", "gaps should come out no fatter than 2-3/4": "gap <= 2-3/4 in", "no slope to the floor": "floor at right = 0 in",
		"I've changed the height, it's 45 now": "wall height = 45 in", "gap's fixed at 2-1/2": "gap = 2-1/2 in", "bottom gap to go from 3 down to 2-1/2": "bottom gap = 2-1/2 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	// Denied, past, or of another wall.
	for _, said := range []string{
		"gap's 2 on the old one", "the opening was held to 30 on that job", "rails were spaced 2-1/2 apart on the old fence", "the gap was held at 2-1/8 on the old wall",
		"the gap isn't held at 2-1/8", "the neighbor's gap is held at 2-1/8", "don't let the gaps out a quarter", "my brother took the doorway in by an inch",
		"the brackets hold up 6 rails", "gap 2, wrong, opening 34", "it isn't a six-rail wall", "the neighbor's is a six-rail wall", "make it a six-rail wall like the neighbor's",
		"anything wider than 3 in the gaps is out of stock", "twice the gap is not the least the opening can be", "twice the gap was the least the opening could be",
		"quadruple the neighbor's opening", "we lost one of the bays", "the floor isn't up 3/4 at the right post", "rails 2 through 4 are cut at 58",
		"the old wall came up to my belt, 39", "the neighbor's wall comes up to my waist, 39", "the gap did not open past 3", "the neighbor's wall lost an inch", "we lost an inch",
		"the gate next door opens on the left", "the deck next door is flat as a pancake", "three bays wide on the old wall", "the gap is wrong, don't toss it",
		"the neighbor's gap is no longer fixed", "the dog's ears stick up an inch", "he changed the height, it's 45 now", "there's no slope to the neighbor's floor", "gap 2 or 3, whichever",
		"the gap was fixed at 2 on the old one", "the wind nudged post 1 left by an inch", "is it eight rails? no, seven",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
