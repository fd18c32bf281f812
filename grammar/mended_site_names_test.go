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
		"second post 40 from the right and the first 60 from the left": "post 2 from right = 40 in; post 1 from left = 60 in",
		"first post 40 from the right and the second 60 from the left": "post 1 from right = 40 in; post 2 from left = 60 in",
		"gap's wider than I thought by a quarter":                      "gap += 1/4 in",
		"wall is two inches shorter than we figured":                   "wall height -= 2 in",
		"the span turned out an inch longer than I thought":            "span += 1 in",
		"the drop is an inch more than I thought":                      "drop += 1 in",
		"stretch the opening two inches":                               "opening += 2 in",
		"squeeze the opening an inch":                                  "opening -= 1 in",
		"squash the gap a quarter":                                     "gap -= 1/4 in",
		"start over in inches":                                         "start over; units = customary",
		"start over in millimeters":                                    "start over; units = metric",
		"start over and work in metric":                                "start over; units = metric",
		"define the gap as 2 inches":                                   "gap = 2 in",
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
		"put the opening at six feet", "the door's at six feet", "set the opening at six feet", "the opening is at 60", "the opening ends at 60",
		"the opening stops at 60", "the opening ends at five feet", "the right edge of the opening is 60 inches from the left post",
		"center of the opening 70 from the left", "the opening runs from 30 to 60", "bays four feet on center", "bays are 60 on center",
		"bay 60 on center", "the bay is 60 center to center", "bay 1 60 on center", "wall's 48 at the low end", "wall's 48 up from the low end",
		"gap's 2 at the low end", "wall's 48 at the high end", "bottom gap four at the high end", "boards a half inch thicker",
		"rails a half inch thinner", "make the wall 2 feet deep", "the wall is two feet deep", "wall's six inches deep", "kerf a sixteenth less",
		"kerf's a thirty second less", "kerf a thirty second thinner", "cut the boards an inch shorter", "cut them a quarter shorter",
		"tape's off a sixteenth", "the left post is a 6x6", "left post 6x6", "right end post 6x6", "house post 6x6", "the right one is a 4x4",
		"corner post is 6x6", "three posts, two at the ends", "left post leans 3/8 toward me in four feet",
		"floor falls an eighth a foot toward the house", "floor pitched an eighth a foot to the drain", "how do I get the gap to 3",
		"how can I get the gap under 3", "how do I get the wall to 48", "do I have to use metric", "do I have to work in millimeters",
		"is it better to work in millimeters", "what happens if I work in millimeters", "make the wall longer by two feet",
		"the wall should be a foot longer", "I want the wall 6 inches longer", "could we make the wall two feet wider", "wall's longer by a foot",
		"can the wall be a foot longer", "stretch the wall by 2 feet", "the walk-through is at six feet", "gateway at 5 feet",
		"the opening should end at 66", "the opening is from 30 to 66", "have the opening run from 30 to 66",
		"right side of the opening 66 from the left post", "middle of the doorway is 70 from the left post", "door a foot further to the right",
		"leave the opening at 36 but move it left", "posts 60 from the left and 40 from the right", "each bay four feet on center",
		"slats a quarter thicker", "boards are half an inch thicker", "the wall's a foot deep", "kerf is a sixteenth less",
		"make the kerf a sixteenth smaller", "kerf down a sixteenth", "cut the rails a quarter shorter", "tape reads a sixteenth short",
		"the left post's a 6x6", "the right post is six by six", "left end post is a 6x6", "make the left post 6x6",
		"floor slopes 1/8 per foot toward the drain", "how would I get the gap to 2", "how do you get to 2-3/8 for the gap", "should I use metric",
		"what if I work in metric", "would metric be better", "do I need to work in inches", "what is the difference between overall and centers",
		"the wall is too short, make it a foot longer", "wall needs to be two feet longer", "wall must be a foot narrower", "run the wall a foot further",
		"run the wall another foot", "half wall a foot longer", "walkway between 40 and 70", "doorway runs 40 to 76", "door from 40 to 76 along the wall",
		"the opening lies between 40 and 76", "a post 60 from the left and another 40 from the right", "the gap's off an eighth", "wall's 48 in the back",
		"wall's 48 by the house", "wall 48 over the slab's high spot", "posts an inch wider", "saw takes a sixteenth less", "blade's a sixteenth thinner",
		"tape starts at one inch", "the post by the house is a 6x6", "the post at the left is 6x6", "the left one is 6x6", "6x6 for the left post",
		"how do I get to a gap of 3", "how do I get a gap of 3", "how do I get the opening to 36", "how would I make the wall 48",
		"how to get the gap to 3", "do you do metric", "do you speak metric", "am I in metric", "what if we go metric", "same gap as the north wall",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}

func TestNamesAsked(t *testing.T) {
	for _, said := range []string{
		"start the opening at 30", "begin the opening at 30", "opening starts at 30", "opening ends 60 from the left",
		"opening stops a foot from the left post", "opening goes from 30 to 62", "opening from 30 to 60 off the left post",
		"opening runs 30 to 62 from the left", "opening a foot further left", "opening a foot further right", "opening a foot more right",
		"opening six inches more to the left", "opening a foot left", "opening a foot to the left of where it is",
		"opening 30 from the left, 40 on the right", "keep the opening at 36, move it left", "opening 36 instead of 40 from the left",
		"opening ends 24 short of the right post", "opening stops 24 short of the right post", "opening a foot short of the middle",
		"open porch with six boards", "open porch but gap 3", "open porch then wall 48 high", "open shed without the opening",
		"save this as shed with six boards", "save it as porch not shed", "same as porch without the opening", "open porch or shed",
		"same as porch or shed", "save it as porch or deck", "save it as porch for my brother", "save that as porch too", "save over porch",
		"same as the north wall without stiffeners", "like porch but with 6 rails", "like the porch but with six boards", "like porch but 46 high",
		"like the shed without the opening", "same as porch plus one board", "copy porch to deck", "call it good", "save face", "save room for a gate",
		"save boards", "save as pdf", "save as a file", "save the list to a file", "save the drawing", "save the cuts", "name it after mom",
		"stay under four", "compare the cost of porch and shed", "compare porch and shed by cost", "compare porch to shed to deck",
		"what's the difference between span and overall", "what's the difference between gap and opening", "compare twelves and sixteens",
		"compare it with 48 high", "compare with and without the opening", "compare before and after", "spare me the drawing", "spare me the list",
		"no boards on the list", "no posts on the list", "I'll read you the cuts", "I'll read you the marks", "let me read you the price",
		"the drawing's in metric", "use what I've got first", "how many twelves have I got", "what do I have at hand", "what do you mean, six boards",
		"the store has ten 2x6 twelves in stock", "keep it simple", "opening should be at 60", "opening at 60", "opening 30 from the left post to 66",
		"opening 12 left", "opening two inches more on the right", "opening 30 rather than 36 from the left", "opening stops 24 shy of the right post",
		"opening ends two feet before the right post", "save it as porch with the opening", "open the porch one with six boards", "open porch six boards",
		"open porch minus the opening", "open porch except gap 3", "open porch to see it", "open the porch plan for my brother", "open porch or the shed",
		"open both porch and shed", "same as porch minus a board",
		"like porch, only 46 high", "like the porch, but six boards", "like before but with six boards", "like that but with six boards",
		"like this but with six boards", "porch but with six boards", "copy porch over to deck", "call it done", "call it even", "save the picture",
		"save the sketch", "save the layout", "save the shopping list", "save as html", "save the price", "name this after the street",
		"stay inside four feet", "compare the price of porch and shed", "compare the prices of porch and shed", "compare porch with shed on cost",
		"compare porch and shed on price", "compare porch against shed against deck", "what's the difference between bay and span",
		"what's the difference between fit and clearance", "what's the difference between a rail and a board", "difference between six and seven rails",
		"compare 2x6 and 2x8", "compare 2x6s with 2x4s", "compare this with 48 high", "spare me the marks", "save me the drawing",
		"no stiffeners in the drawing", "I'll tell you the cuts", "let me read you the marks", "I'll read off the marks", "shall I read you the cuts",
		"the drawing is in inches", "the list is in metric", "what do I have left", "how many sixteens do I own", "the yard has ten 2x6 twelves",
		"the store has twenty 2x6 twelves left", "keep it simple please", "opening centered on 70", "opening from 40 inches to 76 inches",
		"opening 40 to 76", "opening from 40 to 76", "opening 40-76", "opening a foot closer to the left", "opening over a foot",
		"use a 6x6 for the left post", "which is better, metric or inches", "open porch plus a board", "open porch - gap 3", "open porch first",
		"open porch after that", "open porch when done", "open porch if it's there", "open one of them", "open the one with six boards",
		"open the one without an opening", "open the wider one", "open the cheap one", "save it without a name", "save it somewhere",
		"save it just in case", "save it twice", "save it again", "save everything", "save all of it", "save all", "save both", "save changes",
		"save my place", "save the old one", "save the wall", "save the plan", "save the rest", "save the day", "save as new", "save as copy",
		"save as text", "save as 48 high", "save as six boards", "save over the old one", "same as yesterday", "same as mine", "same as the drawing",
		"same as porch in metric", "same as porch at 48 high", "use porch with six boards", "compare 48 and 46", "compare 48 high and 46 high",
		"compare it without the opening", "compare left and right", "compare top and bottom", "compare bay 1 and bay 2",
		"compare porch and shed in metric", "compare porch and shed as csv",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}

// A name that is known, or stands in quotation marks, is a name whatever its words are.
func TestNamesKnown(t *testing.T) {
	for said, want := range map[string]string{
		"open porch or deck": "open porch or deck",
		"opening 30, starts 90 from the left post and 60 from the right post": "opening = 30 in; opening from left = 90 in; opening from right = 60 in",
		`save this as "shed or porch"`:                                        "save shed or porch",
	} {
		r := Read(said, act.Context{Saved: []string{"porch or deck"}})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
}
