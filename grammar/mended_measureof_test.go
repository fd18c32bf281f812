package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// A figure changes only what it is the measure of: what weighs more with six rails is no change by six. What is said and asked about in one
// breath is held against the rest, and what is told of some pieces is asked back. Everyday speech, no source.
func TestMeasureOf(t *testing.T) {
	for said, want := range map[string]string{
		"keep the gap over two":                                 "gap > 2 in",
		"keep the gaps above two inches":                        "gap > 2 in",
		"keep the gap more than two":                            "gap > 2 in",
		"keep the gap bigger than two":                          "gap > 2 in",
		"keep the gap past two":                                 "gap > 2 in",
		"can I have six rails and keep the gap over two":        "what if rails = 6, gap > 2 in",
		"keep the gap over two and under four":                  "gap > 2 in; gap < 4 in",
		"keep the gap beneath four":                             "gap < 4 in",
		"keep the space above two inches":                       "gap > 2 in",
		"I don't need stiffeners, do I":                         "check stiffeners = 0",
		"I don't need an opening, do I":                         "check openings = 0",
		"there's no bottom gap, is there":                       "check bottom gap = 0 in",
		"there's no stiffener in bay 2, is there":               "check bay 2 stiffeners = 0",
		"I need a 30 inch opening, right":                       "check opening = 30 in",
		"bay 1 would be 60 with a 30 inch opening, right":       "check bay 1 = 60 in, opening = 30 in",
		"so a 30 inch opening, right":                           "check opening = 30 in",
		"the opening stays at 30, right":                        "check opening = 30 in",
		"is there a need for stiffeners":                        "ask stiffeners",
		"is there a need for rails":                             "ask rails",
		"any need for stiffeners":                               "ask stiffeners",
		"any use for stiffeners":                                "ask stiffeners",
		"no use for stiffeners":                                 "stiffeners = 0",
		"do six rails take more boards":                         "what if rails = 6; ask shopping",
		"with six rails is the wall taller":                     "what if rails = 6; ask wall height",
		"with a two inch gap is the wall taller":                "what if gap = 2 in; ask wall height",
		"would six rails need a taller wall":                    "what if rails = 6; ask wall height",
		"would a two inch gap mean more rails":                  "what if gap = 2 in; ask rails",
		"five rails, less waste":                                "rails = 5; least waste",
		"the gap is two and a half, can it be less":             "gap = 2-1/2 in; what if gap < 2-1/2 in",
		"the opening is 30, can it be wider":                    "opening = 30 in; what if opening > 30 in",
		"the wall is 48, can it be lower":                       "wall height = 48 in; what if wall height < 48 in",
		"would dropping a rail make the gap three":              "what if rails -= 1, gap = 3 in",
		"would losing a rail give me three inch gaps":           "what if rails -= 1, gap = 3 in",
		"would adding a rail give me two inch gaps":             "what if rails += 1, gap = 2 in",
		"if I make the gap three I can drop a rail":             "what if gap = 3 in, rails -= 1",
		"how much gap do I lose with seven rails":               "what if rails = 7; ask gap",
		"how much does the gap shrink with seven rails":         "what if rails = 7; ask gap",
		"how much does the gap grow with five rails":            "what if rails = 5; ask gap",
		"how much opening do I lose with six rails":             "what if rails = 6; ask opening",
		"how much gap do I gain with five rails":                "what if rails = 5; ask gap",
		"with six rails do the brackets touch":                  "what if rails = 6; ask cautions",
		"with seven rails, do the brackets meet":                "what if rails = 7; ask cautions",
		"do the brackets meet with a two inch gap":              "what if gap = 2 in; ask cautions",
		"do the brackets clear at two inches":                   "what if gap = 2 in; ask cautions",
		"do the brackets stick out a quarter":                   "check bracket ear = 1/4 in",
		"is a two inch gap wider than the bracket clearance":    "check bracket clearance < 2 in",
		"is a two inch gap over the bracket clearance":          "check bracket clearance < 2 in",
		"is a two inch gap bigger than the bottom gap":          "check bottom gap < 2 in",
		"is a 60 inch bay wider than bay 2":                     "check bay 2 < 60 in",
		"cut the rails an inch longer":                          "fit -= 1 in",
		"what if I cut them an eighth longer":                   "what if fit -= 1/8 in",
		"make the rails an eighth longer":                       "fit -= 1/8 in",
		"could the rails be an eighth longer":                   "what if fit -= 1/8 in",
		"cut the rails half an inch short":                      "fit = 1/2 in",
		"I cut them an eighth short":                            "fit = 1/8 in",
		"two rails fewer":                                       "rails -= 2",
		"make the gap an inch wider":                            "gap += 1 in",
		"two inches of gap more":                                "gap += 2 in",
		"they say two boards fewer":                             "check rails -= 2",
		"opening 30 right":                                      "opening = 30 in; opening side = right",
		"the opening goes on the right":                         "opening side = right",
		"keep clear of gaps over two":                           "gap <= 2 in",
		"I need for rails":                                      "rails = 4",
		"the gap is wider than the bottom gap":                  "gap > bottom gap",
		"the post is two inches taller than the wall":           "post height = wall height + 2 in",
		"add a rail and make the gap two":                       "rails += 1; gap = 2 in",
		"don't put a stiffener in bay 2":                        "bay 2 stiffeners = 0",
		"the brackets touch under two inches":                   "bracket clearance = 2 in",
		"would two rails fewer do":                              "what if rails -= 2",
		"would dropping a rail make the wall 40":                "what if rails -= 1, wall height = 40 in",
		"would adding a post make the bays 40":                  "what if added posts += 1, bay = 40 in",
		"it has no stiffeners, has it":                          "check stiffeners = 0",
		"you don't need stiffeners, do you":                     "check stiffeners = 0",
		"make sure the gap never comes out below two, will you": "gap >= 2 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range []string{
		"do five rails look taller", "six rails stand taller",
		"I need stiffeners, don't I", "I have stiffeners, haven't I", "I need an added post, don't I",
		"shouldn't bay 2 have a stiffener", "wouldn't bay 2 need a stiffener", "don't bays need stiffeners", "shouldn't bays have stiffeners",
		"don't rails need brackets", "it needs an opening, right", "do six rails weigh more", "with five rails, do I need fewer boards",
		"is a 50 inch wall taller", "with seven rails you need more boards", "more room with five rails", "is five rails less work",
		"with five rails, is there less waste", "with six rails there's more waste", "do five rails waste less", "would five rails be less waste",
		"the gap is two and a half, should it be less", "six rails, can it be fewer", "one bay is longer", "two bays are longer",
		"what if one bay is longer", "one gap is wider, why", "one rail is higher", "one post is taller", "three rails are cut", "all six rails are cut",
		"I've got three rails cut, what's next", "two rails are cut short", "I cut one short, what do I do", "I cut two short",
		"one rail is half an inch short", "two rails came out an inch short", "a two inch gap is bigger than the bottom gap",
		"a 50 inch post is taller than the wall", "is a 48 inch wall taller than a kid", "is a 30 inch opening narrow",
		"how much gap do I lose with two more rails", "with two more rails is the wall taller", "cut all six rails an eighth short",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
