package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What a line tells of other things is left out where the rest says by itself what it says. Everyday speech, no source.
func TestToldBesideTheWall(t *testing.T) {
	for line, want := range map[string]string{
		"the hedge is 1.5 m, the wall is 1.1 m high":                                                 "wall height = 1100 mm",
		"bench 18 high, wall 42 high, 2x6 rails":                                                     "wall height = 42 in; rail size = 2x6",
		"ladder's against the right post, and the left post leans in a quarter over four feet":       "left post leans 1/4 in right in 48 in",
		"The grill already cost us 450, so the wall may not cost more than 300 dollars in material.": "budget = 300.00",
		"the deck joists are every 16, stiffeners no more than 30 apart":                             "stiffener spacing <= 30 in",
		"mailbox post 4x4, wall posts 6x6":                                                           "post size = 6x6",
		"I painted the bench, the gap is two":                                                        "gap = 2 in",
		"the phone is dead, so what was the gap":                                                     "ask gap",
		"It is 84 degrees out here. The wall should be 46 inches tall.":                              "wall height = 46 in",
		"Our twins are two, so there can't be four inches or more between any two boards.":           "gap < 4 in",
		"our patio wall ought to stand exactly three feet ten inches tall":                           "wall height = 46 in",
		"our back wall is 44 high":                                                                   "back wall: wall height = 44 in",
	} {
		r := Read(line, act.Context{})
		if assert.Nil(t, r.Ask, line) {
			assert.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
	r := Read("our patio wall ought to be 46 high", act.Context{Walls: []string{"patio wall"}})
	assert.Equal(t, "patio wall: wall height = 46 in", parse.Normal(r.Acts), "a wall that is called so")
}

// What leans on the thing, speaks of it or of somebody else's is asked back.
func TestLeansOnWhatIsBeside(t *testing.T) {
	for _, line := range []string{
		"the hedge is 60, wall 10 less",
		"the bench is 18 high, make the wall match",
		"the bench is 18 high, make the wall twice that",
		"the table is 30 high and the wall is six higher",
		"the stairs are 36, opening the same",
		"the stairs are 36 wide, the opening too",
		"if the dog is 12 inches, gap 3",
		"the fence behind it is six foot but the wall's only 44 inches",
		"use scrap for the stiffeners",
		"scrap wood will do for the stiffeners",
		"drop that board before you hurt yourself",
		"do it the way my late husband would have",
		"my dad's wall had seven rails",
		"his own fence has six boards",
		"I've got to drop the kids off at 8",
		"save your breath, he won't listen",
		"take that, you stupid nail",
		"seven rails would be overkill",
		"seven rails is a waste",
		"a gap of two would be a mistake",
		"do i look like i want ten rails",
	} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	for line, want := range map[string]string{ // beside them what is said plainly
		"behind it the ground is 20 lower": "drop = 20 in",
		"scrap the stiffeners":             "forget stiffeners",
		"drop one board":                   "rails -= 1",
		"save it as back porch":            "save back porch",
		"seven rails would be plenty":      "rails = 7",
		"is seven rails overkill":          "check rails = 7",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}

// There is no point in more than a limit: common speech, no source.
func TestPointlessMore(t *testing.T) {
	for line, want := range map[string]string{
		"no sense having more than six rails, so six at the most": "rails <= 6",
		"no point in having more than six rails":                  "rails <= 6",
		"there is no point in spending over 300":                  "budget = 300.00",
		"it makes no sense to have a gap over 2":                  "gap <= 2 in",
		"no call for a gap over two":                              "gap <= 2 in",
		"no reason for the wall to be over 44":                    "wall height <= 44 in",
		"I see no reason to go higher than 44 with the wall":      "wall height <= 44 in",
		"is there any point in having six rails":                  "what if rails = 6",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	for _, line := range []string{"no point in having six rails", "no sense using six rails", "no need to make the wall 48"} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}

// What another does with a figure is no wish; what he wants is. Plain English, no source.
func TestWhatAnotherDoes(t *testing.T) {
	for _, line := range []string{"he winds up with a gap of 2 1/2", "he stretches a gap of two and a half", "he scribbled down six rails"} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	for line, want := range map[string]string{"he wants six rails": "rails = 6", "she'd like the gap at two": "gap = 2 in"} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}

// A denial before a "so" is of the reason, unless the "so" tells how it is to be done. Plain English, no source.
func TestDeniedReason(t *testing.T) {
	for line, want := range map[string]string{
		"I won't have a toddler stuck in it so every space between the boards stays below four inches": "gap < 4 in",
		"we can't have kids stuck, so keep the gap below four inches":                                  "gap < 4 in",
		"I don't like it high so keep the wall under 44":                                               "wall height < 44 in",
		"don't build it so the gap is over four":                                                       "gap <= 4 in",
		"don't make it so that the gap is over four":                                                   "gap <= 4 in",
		"never set it up so the wall is under 40":                                                      "wall height >= 40 in",
		"stay below 44 on the wall":                                                                    "wall height < 44 in",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	assert.NotNil(t, Read("stay under 300", act.Context{}).Ask, "a verb, no stiffener")
}

// What is not to be forgotten is told. Plain English, no source.
func TestUnforgotten(t *testing.T) {
	for line, want := range map[string]string{
		"don't forget the gap is two and a quarter":              "gap = 2-1/4 in",
		"can't forget the kerf, it's an eighth":                  "kerf = 1/8 in",
		"whatever you do don't forget the doorway's 32":          "opening = 32 in",
		"don't forget to add two stiffeners":                     "stiffeners += 2",
		"remember the gap is two":                                "gap = 2 in",
		"bear in mind the blade takes an eighth":                 "kerf = 1/8 in",
		"I wish the doorway could be 40, but 34 it is":           "opening = 34 in",
		"i'd have liked seven rails but six is what we're doing": "rails = 6",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	for _, line := range []string{"don't forget the gap", "don't forget when the gap was two", "remember when we had six rails", "I can't remember if the gap is two", "I wish the gap was two"} {
		assert.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}

// Two plain questions beside each other are both heard, though one could pass for talk.
func TestNoQuestionIsLost(t *testing.T) {
	for line, want := range map[string]string{
		"how wide is the spot we walk through, and which side's it on": "ask opening; ask opening side",
		"how many rails do I need, what does it cost":                  "ask rails; ask cost",
		"keep a copy of this under the name rose terrace":              "save rose terrace",
	} {
		assert.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	assert.NotNil(t, Read("show me where they all stand", act.Context{}).Ask)
}
