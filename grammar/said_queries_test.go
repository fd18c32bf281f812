package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Ways to ask for figures, lists and reasons, and what only looks like them.
func TestQueryTurns(t *testing.T) {
	for said, want := range map[string]string{
		"Would you kindly tell me which lumber I should purchase, and what the total would come to?": "ask shopping; ask cost",
		"Could you write me a list of the lumber and hardware I need to get?":                        "ask shopping",
		"Could you please print out a list of everything I have to purchase at the store?":           "ask shopping",
		"jot down the marks for me":            "ask marks",
		"mat list":                             "ask shopping",
		"lumber takeoff":                       "ask shopping",
		"so how much am I handing the cashier": "ask cost",
		"What would be the total cost of all the materials?":                                "ask cost",
		"how much will the posts and boards cost me":                                        "ask cost",
		"what does your version cost":                                                       "ask cost",
		"uh where on the post do i tick for each rail":                                      "ask marks",
		"at what heights do I strike my lines on the posts":                                 "ask marks",
		"where do you put the post":                                                         "ask posts",
		"what lengths am I settin the stop block to":                                        "ask cuts",
		"what length is each rail when it comes off the saw":                                "ask cuts",
		"how far off the end post do I stick the new one":                                   "ask posts",
		"May I ask what the right spot for the additional post is?":                         "ask posts",
		"read me the marks again":                                                           "ask marks",
		"let me see yours drawn up, plus what length each piece gets cut to":                "ask drawing; ask cuts",
		"gap 2 inches, redraw":                                                              "gap = 2 in; ask drawing",
		"call it four boards two by eights wall's thirty nine high where's that put my gap": "rails = 4; rail size = 2x8; wall height = 39 in; ask gap",
		"so i got five rails uh three and an eighth between em and the wall stands forty one what's it all come out to": "rails = 5; gap = 3-1/8 in; wall height = 41 in; ask layout",
		"leave her drawing out of it and run your own numbers":                                                          "ask layout",
		"what would you get for the height with your own numbers":                                                       "ask wall height",
		"what fits?": "ask options",
		"what other numbers of boards would come out right":                                             "ask options",
		"if we don't go with hers, what are the other ways of doing it":                                 "ask options",
		"Is it possible to find out how far the bottom board will be from the floor?":                   "ask bottom gap",
		"tell me the order things get done in and what could go wrong":                                  "ask steps; ask cautions",
		"Is there anything I ought to be careful about when I put this together?":                       "ask cautions",
		"what's the reason we can't have more than six boards":                                          "why not rails > 6",
		"is there some reason the bays can't go over 8 feet":                                            "why not bay > 96 in",
		"how come it doesn't come out to a 36 inch doorway":                                             "why not opening = 36 in",
		"what is it about 2x8 rails that doesn't work":                                                  "why not rail size = 2x8",
		"what is it about seven boards that won't fit":                                                  "why not rails = 7",
		"what do we need three stiffeners in every bay for":                                             "why stiffeners",
		"what's that extra post in the middle even for":                                                 "why added posts",
		"what makes the gap land where it does":                                                         "why gap",
		"what spacing did the stiffeners get, and what's behind that number":                            "ask stiffener spacing; why stiffener spacing",
		"how many planks are we even putting up, and where'd that number come from":                     "ask rails; why rails",
		"why do your bays come out different from his":                                                  "why bay",
		"why does the post stick up past the wall":                                                      "why post height",
		"can I see the math on how wide bay 1 is":                                                       "why bay 1",
		"show me the arithmetic for the bottom gap":                                                     "why bottom gap",
		"Could you explain to me how you arrived at the height of the wall?":                            "why wall height",
		"I don't quite understand where the number of boards comes from; would you mind explaining it?": "why rails",
		"why are there stiffeners in there, and what happens without any":                               "why stiffeners; what if stiffeners = 0",
		"how long is the wall outside to outside of the end posts, and how long on centers":             "ask overall; ask centers",
		"spare me the reasons, I only want the cut lengths":                                             "ask cuts",
		"We have a curious puppy, and for that reason every gap has to be smaller than 3 1/4 inches.":   "gap < 3-1/4 in",
		"which bracket thickness are you going by, and what's the fit set at":                           "ask bracket thickness; ask fit",
		"y gap 2 1/4": "why gap",
		"bay w?":      "ask bay",
		"I am not sure what I am supposed to type here; can you help me?": "help",
	} {
		require.Equal(t, want, Normal(Read(said, Context{}).Acts), said)
	}
	for _, said := range []string{"don't write me a list of the lumber and hardware", "he knows which lumber I should buy", "I know which lumber I should purchase", "the lumber takeoff is wrong", "where do I mark my calendar", "I set the stop block to 66 1/2",
		"where does that leave my brother", "what fits in my truck", "what other numbers did he give", "the order things get done in is up to me", "I'm careful when I build this", "there's no reason we can't have six boards", "that is the reason for the 3 inch gap",
		"it doesn't come out to a 45 inch wall", "2x8 rails don't work", "what do we need, three stiffeners in every bay", "I explained to him how you got the gap", "for that reason I'm not sure about the gap", "spare me the reasons", "y'all want six boards",
		"I'll give you the gap once I've measured", "ask me about the doorway again tomorrow", "The boards should be spaced nicely, please.", "I don't know what gap I should use"} {
		require.Empty(t, Read(said, Context{}).Acts, said)
	}
}
