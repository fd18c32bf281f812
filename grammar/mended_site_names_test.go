package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is told of the site is heard where it is plain, and asked back where it may be something else than it looks like: where an opening stands is not
// how wide it is, a longer wall is no higher, and what goes on behind the name of a wall is no part of it. Everyday speech, no source.

func TestSiteAndNamesHeard(t *testing.T) {
	for said, want := range map[string]string{
		"first post 60 from the left and the second 40 from the right": "post 1 from left = 60 in; post 2 from right = 40 in",
		"first post 60 from the left, the second 40 from the right":    "post 1 from left = 60 in; post 2 from right = 40 in",
		"post 1 60 from the left, second 40 from the right":            "post 1 from left = 60 in; post 2 from right = 40 in",
		"span's an inch longer than I thought":                         "span += 1 in",
		"span's a foot longer than I thought":                          "span += 12 in",
		"wall's an inch taller than I thought":                         "wall height += 1 in",
		"gap's a quarter wider than I thought":                         "gap += 1/4 in",
		"opening's an inch wider than I thought":                       "opening += 1 in",
		"bay's an inch longer than I thought":                          "bay += 1 in",
		"span's an inch longer than I said":                            "span += 1 in",
		"stretch the gap a quarter":                                    "gap += 1/4 in",
		"squeeze the gap a quarter":                                    "gap -= 1/4 in",
		"save as porch, make it 48 high":                               "save porch; wall height = 48 in",
		"open porch, make it 48 high":                                  "open porch; wall height = 48 in",
		"open shed, make it six boards":                                "open shed; rails = 6",
		"call it porch, make it six boards":                            "save porch; rails = 6",
		"same as porch, make it six boards":                            "same as porch; rails = 6",
		"start over in metric":                                         "start over; units = metric",
		"start over with metric":                                       "start over; units = metric",
		"define opening as 30":                                         "opening = 30 in",
		"define gap as 2":                                              "gap = 2 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
}

func TestSiteAsked(t *testing.T) {
	for _, said := range []string{
		"make the wall a foot longer", "wall's a foot longer than I said", "extend the wall by a foot", "lengthen the wall a foot",
		"widen the wall a foot", "wall two inches thicker", "wall a foot narrower", "what if I make the wall a foot longer",
		"put the opening at six feet", "the door's at six feet", "set the opening at six feet", "the opening is at 60", "start the opening at 30",
		"begin the opening at 30", "the opening ends at 60", "the opening stops at 60", "the opening ends at five feet", "opening starts at 30",
		"opening ends 60 from the left", "opening stops a foot from the left post", "the right edge of the opening is 60 inches from the left post",
		"center of the opening 70 from the left", "the opening runs from 30 to 60", "opening goes from 30 to 62",
		"opening from 30 to 60 off the left post", "opening runs 30 to 62 from the left", "opening a foot further left", "opening a foot further right",
		"opening a foot more right", "opening six inches more to the left", "opening a foot left", "opening a foot to the left of where it is",
		"opening 30 from the left, 40 on the right", "keep the opening at 36, move it left", "opening 36 instead of 40 from the left",
		"opening ends 24 short of the right post", "opening stops 24 short of the right post", "opening a foot short of the middle",
		"bays four feet on center", "bays are 60 on center", "bay 60 on center", "the bay is 60 center to center", "bay 1 60 on center",
		"wall's 48 at the low end", "wall's 48 up from the low end", "gap's 2 at the low end", "wall's 48 at the high end",
		"bottom gap four at the high end", "boards a half inch thicker", "rails a half inch thinner", "make the wall 2 feet deep",
		"the wall is two feet deep", "wall's six inches deep", "kerf a sixteenth less", "kerf's a thirty second less", "kerf a thirty second thinner",
		"cut the boards an inch shorter", "cut them a quarter shorter", "tape's off a sixteenth", "the left post is a 6x6", "left post 6x6",
		"right end post 6x6", "house post 6x6", "the right one is a 4x4", "corner post is 6x6", "three posts, two at the ends",
		"left post leans 3/8 toward me in four feet", "floor falls an eighth a foot toward the house", "floor pitched an eighth a foot to the drain",
		"how do I get the gap to 3", "how can I get the gap under 3", "how do I get the wall to 48", "do I have to use metric",
		"do I have to work in millimeters", "is it better to work in millimeters", "what happens if I work in millimeters",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}

func TestNamesAsked(t *testing.T) {
	for _, said := range []string{
		"open porch with six boards", "open porch but gap 3", "open porch then wall 48 high", "open shed without the opening",
		"save this as shed with six boards", "save it as porch not shed", "same as porch without the opening", "open porch or shed",
		"same as porch or shed", "save it as porch or deck", "save it as porch for my brother", "save that as porch too", "save over porch",
		"same as the north wall without stiffeners", "like porch but with 6 rails", "like the porch but with six boards", "like porch but 46 high",
		"like the shed without the opening", "same as porch plus one board", "copy porch to deck", "call it good",
		"save face", "save room for a gate", "save boards", "save as pdf", "save as a file", "save the list to a file", "save the drawing",
		"save the cuts", "name it after mom", "stay under four", "compare the cost of porch and shed", "compare porch and shed by cost",
		"compare porch to shed to deck", "what's the difference between span and overall", "what's the difference between gap and opening",
		"compare twelves and sixteens", "compare it with 48 high", "compare with and without the opening", "compare before and after",
		"spare me the drawing", "spare me the list", "no boards on the list", "no posts on the list", "I'll read you the cuts", "I'll read you the marks",
		"let me read you the price", "the drawing's in metric", "use what I've got first", "how many twelves have I got", "what do I have at hand",
		"what do you mean, six boards", "the store has ten 2x6 twelves in stock", "keep it simple",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
