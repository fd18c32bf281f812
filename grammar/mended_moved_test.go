package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Places that are told of one bay, one gap or one side, sizes that a word of another measure is said of, what was so or may be so, and what is taken out.
// Each is heard as it is said, or asked back. Everyday speech, no source.
func TestMovedOrMade(t *testing.T) {
	for said, want := range map[string]string{
		"stretch the bay a foot": "bay += 12 in", "stretch the bays a foot": "bay += 12 in", "stretch bay 2 a foot": "bay 2 += 12 in",
		"what if I extend the bay a foot": "what if bay += 12 in",
		"put a foot on bay 1":             "bay 1 += 12 in", "put an inch on the gap": "gap += 1 in",
		"bottom gap 3/4 of the gap": "bottom gap = 3/4 * gap", "bottom gap 1/2 the gap": "bottom gap = 1/2 * gap",
		"gap 1/2 of the bottom gap": "gap = 1/2 * bottom gap", "gap 3/4 the bottom gap": "gap = 3/4 * bottom gap",
		"the drop is a foot less": "drop -= 12 in", "the drop is a foot more": "drop += 12 in",
		"remove a board in bay 2": "bay 2 rails -= 1", "drop the stiffeners in bay 2": "bay 2 stiffeners = 0",
		"the opening might go left": "what if opening side = left", "the opening might go on the left": "what if opening side = left",
		// What stays as it was heard.
		"no stiffeners in bay 2": "bay 2 stiffeners = 0", "no opening in the wall": "openings = 0", "no gap at the bottom": "bottom gap = 0 in",
		"bays over 4 feet, under 6": "bay > 48 in; bay < 72 in", "wall 48, other side drops 24": "wall height = 48 in; drop = 24 in",
		"wall 48 high above the floor": "wall height = 48 in", "right, put the doorway on the left": "opening side = left",
		"opening right by the left post": "opening side = left", "opening 36 right": "opening = 36 in; opening side = right",
		"put the opening at 40 from the left": "opening from left = 40 in", "opening two feet wide": "opening = 24 in",
		"wall twice as high": "wall height *= 2", "wall no higher than 48": "wall height <= 48 in", "bay 1 an inch narrower": "bay 1 -= 1 in",
		"third rail an inch higher": "rail 3 top += 1 in", "third rail half an inch higher": "rail 3 top += 1/2 in", "rail 2 10 mm higher": "rail 2 top += 10 mm",
		"twice as many rails": "rails *= 2", "opening as wide as possible": "largest opening", "opening as wide as the gap": "opening = gap",
		"six rails, the top one at 48": "rails = 6; wall height = 48 in", "drop two feet": "drop = 24 in", "drop three rails": "rails -= 3",
		"I trim half an inch off each board": "trim = 1/2 in", "stiffeners 24 apart": "stiffener spacing = 24 in", "leave a sixteenth at each end": "fit = 1/8 in",
		"rails run from 5 to 7": "rails in 5..7", "two rails less than now": "rails -= 2", "gap a quarter more than the bottom gap": "gap = bottom gap + 1/4 in",
		"corner posts are 6x6": "end post size = 6x6", "the gate is 36": "opening = 36 in", "the slab is an inch lower at the right": "floor at right = -1 in",
		"scrap the opening from his sketch, mine is going to be 33": "forget opening; opening = 33 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range movedOpen {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}

// movedOpen are lines that leave open which place, which measure or which of two things is meant.
var movedOpen = []string{
	"I don't want the opening next to the house", "don't put the opening at the end", "the opening is not at the end", "no opening at the end",
	"don't put a post next to the opening", "no stiffener at the end", "I don't want stiffeners by the house", "no rail at the bottom",
	"the bay by the house is 48", "the bay at the end is 40", "next bay 48", "that bay a foot less", "the inner bays are 60", "the bay over is 48",
	"next bay over is 48", "the near bay is 40", "next bay the same", "how wide is the bay by the house", "split the long bay in half",
	"cut the long bay in half", "the gap above the bottom rail is 2", "the gap over the bottom board is 3",
	"the gap above the bottom rail an inch more", "gap between bays 4", "the gap at the end is 3", "next gap up is three",
	"gap on both sides an eighth", "gap between the posts at the opening 36", "wall 48, the other side 46", "bay 1 60, the other side 48",
	"opening 36, the far side 40", "six rails, five on the other side", "wall 48, outside 46", "wall 48 on the inside", "wall 48, inside 46",
	"wall 48, the one next door 46", "wall four feet above grade", "wall 48 above the lawn", "top rail 48 above the lawn", "top rail 48 above grade",
	"the drop is two feet at the right end", "the ground drops two feet at the right", "the drop is a foot more at the right",
	"leave the opening right there", "opening right where it is", "opening right by the house", "opening 36 is right", "right, opening 36",
	"opening left where it is", "opening left as it is", "opening left at 36", "move the opening to 40", "what if the opening moves to 40",
	"move the opening left to 40", "opening two feet right", "opening two feet closer", "opening two feet further along",
	"drop the opening a foot left", "opening within two feet of the house", "opening 1 at 20 and opening 2 at 80", "bay 2 starts at 96",
	"move the wall to 60 from the house", "from the left: opening 36, bay 60", "make the wall twice as long", "wall half as long",
	"wall as long as bay 1", "wall no longer than 12 feet", "wall twice as wide", "wall as wide as the opening", "extend the wall a foot",
	"continue the wall a foot", "put the wall a foot further", "lower bay 2 an inch", "bay 1 an inch lower", "the wall in bay 2 an inch lower",
	"bay 2 a foot higher than bay 1", "opening as high as the wall", "raise the rails in bay 1 an inch", "third rail half an inch wider",
	"second rail half an inch longer", "top rail a quarter shorter", "bottom rail a quarter longer",
	"rails in bay 1 an eighth shorter", "the rails in bay 2 an inch lower", "rails twice as thick", "boards half as wide", "rails twice as long",
	"stiffeners half as wide", "rails half as wide as the posts", "rails as wide as the posts", "gap as wide as the posts", "opening as wide as a post",
	"opening as wide as the gate", "opening as big as the door", "gap two, the top one half an inch less", "gap two, top one an inch less",
	"the top one measures 60 and a quarter", "lower half of the wall gap three", "lower half of the wall six rails", "half the wall 46",
	"the bottom half of the wall has gaps of two", "rails six, drop one", "stiffeners two, drop one", "drop one", "what if I drop one",
	"trim half an inch off each rail", "opening 36, trim it an inch", "what if I cut an inch off the rails", "openings an inch wider, opening 1 stays",
	"knock one off", "take one off", "six rails, take one off", "gaps in an eighth", "the right end's another quarter lower",
	"floor an inch lower on the right than I said", "gap starts at two and grows", "gap from two down", "add a sixteenth at each end",
	"rails go from 2 to 48", "two boards less than they have", "two rails more than the old wall", "wall a foot less than the house",
	"gap an eighth less than the other wall", "gap half an inch more than a board", "add a bay past bay 2", "the opening was on the left",
	"the opening was going to be 36", "the gap was going to be two", "bay 1 was twice bay 2", "the floor was level",
	"the left post leaned in half an inch in 48, now it's plumb", "possibly a stiffener in bay 1", "the wall might drop an inch",
	"lose the board in bay 2", "take out the stiffeners in bay 1", "remove stiffeners from bay 2",
	"drop bay 1 a foot", "drop the bottom rail to the floor", "what if I lose the bottom rail", "how much are the posts", "how much is the post",
	"how wide is the gap between bay 1 and bay 2", "the door by the opening is 34", "the gate next door is 40", "the opening in the fence is 36",
	"the roof post is a 6x6", "slab is an inch lower at the added post", "the opening was in the middle", "the bays were equal", "possibly six rails",
	"possibly six rails, gap 2", "the wall could drop an inch", "the opening might move left", "the opening was meant to be 36",
	"the gap was to be two", "bay 1 was half of bay 2", "the bottom gap was twice the gap", "the slab was level",
	"the left post leaned out an inch in 48, now it's plumb", "remove the board in bay 2", "remove all the stiffeners in bay 1",
	"get rid of the stiffeners in bay 2", "scrap the stiffeners in bay 1", "what if I drop the bottom rail",
	"what if I remove the bottom rail", "the inner bay 60", "this bay is 48", "this bay 48", "that bay is 48", "the next bay over is 60",
	"bays by the house 48", "halve the long bay", "how long is the bay by the opening", "how wide is the bay at the end", "how wide is the long bay",
	"the gap over the bottom rail is 3", "gap above the bottom rail 3", "the gap between the bays is 4", "gap between the posts at the doorway 36",
	"wall 48 at the left, other side 46", "wall 48 on the outside", "wall 48, 46 inside", "gap 2, the other side 3", "the other side is 46",
	"six rails, the other side five", "wall 48 over the yard", "the drop is two feet on the right", "keep the opening right where it is",
	"opening 36 is about right", "right, opening 36, gap 2", "opening left for now", "put two inches on the gap", "next bay over 60",
	"wall 48 above grade", "the ground is two feet lower on the right", "opening three feet left", "drop two", "put 2 on the gap",
	"put three on the bottom gap", "the right end is lower than I said by a quarter", "how much is a post", "porch posts 6x6",
	"top gap two, bottom gap 3", "lower bay 2 to 48", "the bottom half of bay 1", "trim the rails half an inch", "the bays were going to be 60",
	"the posts were going to be 6x6", "bay 2 was going to be 48", "the span was going to be 144", "the opening had been on the left",
	"the gap was the same as the bottom gap", "could be six rails", "possibly the opening on the left", "opening possibly 36",
	"opening on the left possibly", "remove the boards in bay 2", "remove the rails in bay 1", "lose the opening on the left",
	"take out the opening on the left", "opening not at the end", "no opening by the house", "no rails at the bottom", "the corner bay is 40",
	"what if that bay is 48", "what if the next bay is 48", "what if the inner bays are 60", "next bay a foot wider", "lower gaps 2",
	"wall 48, inside face 46", "wall 4 feet above the sidewalk", "48 above grade", "put the opening right there", "shift the opening to 60",
	"slide the opening over to 60", "push the opening to 60", "move bay 2 to 96", "bay 1 ends at 60",
	"why is bay 1 half of bay 2", "why is bay 2 half of bay 1",
}
