package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Turns of phrase about what stands along the wall, and what only looks like them.
func TestLengthwiseTurns(t *testing.T) {
	for said, want := range map[string]string{
		"put one brace down the middle of every section":                                           "stiffeners = 1",
		"each bay gets a stiffener right in the middle":                                            "stiffeners = 1",
		"twenty inches on center is the farthest I'd space the stiffeners":                         "stiffener spacing <= 20 in",
		"For the upright stiffeners, 1x4 would be ideal.":                                          "stiffener size = 1x4",
		"don't bother with stiffeners":                                                             "stiffeners = 0",
		"what do we need two stiffeners per bay for":                                               "why stiffeners",
		"make the new post run three inches past the wall":                                         "post height = wall height + 3 in",
		"the post: top at 44, the base half an inch off the slab":                                  "post height = 44 in; base height = 1/2 in",
		"take the posts up to fifty and hold em an inch off the slab":                              "post height = 50 in; base height = 1 in",
		"what's the best place for the extra post":                                                 "ask posts",
		"what's that middle post for":                                                              "why added posts",
		"why do we need a post in the middle at all":                                               "why added posts",
		"the posts should be a touch taller than the wall, say 2 inches":                           "post height = wall height + 2 in",
		"stick three more posts in between the end ones so there's four bays to fill":              "added posts = 3; bays = 4",
		"our posts, which are 4x4, are nine feet apart, measured face to face":                     "post size = 4x4; span = 108 in",
		"the end posts are eleven foot two apart and that's face to face":                          "span = 134 in",
		"from the right post it's forty over to the start of the opening":                          "opening from right = 40 in",
		"put the opening 30 inches from the post on the right":                                     "opening from right = 30 in",
		"hooked the tape on the inside of one post and ran it to the inside of the other, 133 3/4": "span = 133-3/4 in",
		"ran the tape face to face between the end posts and got 140 5/8":                          "span = 140-5/8 in",
		"right, the walk-through goes in the middle":                                               "opening side = middle",
		"slide the opening from the right over to the left":                                        "opening side = left",
		"the gap doesn't have to be exactly 3, all I ask is that it's 3 1/2 or less":               "gap <= 3-1/2 in",
		"the opening comes in under 30":                                                            "opening < 30 in",
		"how did you get a gap of 3 inches from my numbers":                                        "why gap",
		"what height did the post end up with, and what's behind it":                               "ask post height; why post height",
		"what width did the bays come out to":                                                      "ask bay",
		"the drawing he emailed me shows two added posts":                                          "check added posts = 2",
		"the plan is marked 36 for the doorway":                                                    "check opening = 36 in",
		"his plan says the doorway measures 34":                                                    "check opening = 34 in",
		"he keeps insisting the span is 140":                                                       "check span = 140 in",
		"if we go by the plan, the span is 120":                                                    "check span = 120 in",
		"what's stopping me from having seven rails":                                               "why not rails = 7",
		"what's keeping us from making the opening 40":                                             "why not opening = 40 in",
		"is there some reason the bays can't go over 7 feet":                                       "why not bay > 84 in",
		"would it matter if the doorway were 36":                                                   "what if opening = 36 in",
		"and with three bays, what then?":                                                          "what if bays = 3",
		"I was brought up on inches, so could you use those rather than millimetres":               "units = customary",
		"enough of the inches, millimetres from now on":                                            "units = metric",
		"the floor is three quarters lower by the time you get to the other end":                   "floor at right = -3/4 in",
		"the floor is about an inch lower at the right end":                                        "floor at right ~ -1 in",
		"LP leans 3/8 R in 3'":                                                                     "left post leans 3/8 in right in 36 in",
		"the left one's not plumb, kicks out 1/4 in 3 feet to the left":                            "left post leans 1/4 in left in 36 in",
		"behind the wall it drops about two feet to the lawn":                                      "drop ~ 24 in",
		"there's no drop behind the wall anymore, they filled it in":                               "drop = 0 in",
		"in bay 1 I got 60 1/4 and 60 3/8 for rails 1 and 2":                                       "measured bay 1 rail 1 = 60-1/4 in; measured bay 1 rail 2 = 60-3/8 in",
		"rechecked bay 1 rail 2 and it's 60 1/2, not 60 1/4 as I said before":                      "measured bay 1 rail 2 = 60-1/2 in",
		"what's the reasoning on how wide bay 2 is":                                                "why bay 2",
		"forget what I said about the stiffeners being 1x4":                                        "forget stiffener size",
		"wrong page: opening 34":                                                                   "opening = 34 in",
		"take another foot off the span":                                                           "span -= 12 in",
		"on the side wall we want two bays":                                                        "side wall: bays = 2",
		"sorry, the doorway is on the right, I said left":                                          "opening side = right",
		"not two bays, three":                                                                      "bays = 3",
		"would equal bays work":                                                                    "what if equal bays",
		"can it be done without a post in the middle":                                              "what if added posts = 0",
		"end posts 4x4, new 6x6":                                                                   "end post size = 4x4; added post size = 6x6",
		"limit the sections to a width of 78 inches":                                               "bay <= 78 in",
		"I gave you the wrong span, it's 139":                                                      "span = 139 in",
		"there's a foot and a half step down off the slab outside the wall":                        "drop = 18 in",
		"ph 46 bh 1":                          "post height = 46 in; base height = 1 in",
		"does a 148 span match what you have": "check span = 148 in",
		"what's it come to post to post":      "ask span",
		"The opening has to be at least as wide as our wheelbarrow, which is 29 inches.": "opening >= 29 in",
		"The doorway should be in the middle, and something like 40 inches wide.":        "opening side = middle; opening ~ 40 in",
	} {
		assert.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{"right", "the right one", "take the posts back to the yard and hold them for me", "he's promising to bring the posts tomorrow", "is there no drop beyond the wall anymore?",
		"they filled in the ground beyond the wall", "we run a tape between the posts every year", "move the doorway from the left", "wrong page", "why is there a post in the middle of the road",
		"what's that post in the middle of the yard for", "that's enough inches, thanks", "inches mean nothing to me", "what they sent me is junk", "the original has been lost", "what's stopping me",
		"and with the dog, what then", "by the time you get to the other end it's dark", "would it matter if I painted it", "the post's not straight, it leans", "the doorway doesn't have to be 36",
		"I haven't made up my mind between 2x4 and 2x6 rails", "ask me about the doorway again tomorrow", "nothing wider than 40 down to 30 for the opening",
		"the wall is 42 and something high", "we'll get by on two boards until friday", "can it be done without a permit", "change the doorway to the left side or the right", "sorry, I said left",
		"I meant the left side for the gate, or was it the right", "the gap for walking the dog", "from the left post it's 40 to where the opening ends", "the plan is marked by 3 coffee stains",
		"does a 12 foot board match what you have", "would a 60 inch post fit in the truck", "not two bays", "would it hurt if I did not have 2 stiffeners"} {
		assert.Empty(t, Read(said, act.Context{}).Acts, said)
	}
}
