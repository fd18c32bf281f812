package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
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
		"I am not sure what I am supposed to type here; can you help me?":          "help",
		"What would you recommend I do first?":                                     "ask steps",
		"I wonder what the wall is going to cost us.":                              "ask cost",
		"what's the total for the timber":                                          "ask cost",
		"What is the total height of the wall going to be?":                        "ask wall height",
		"Could you tell me how the cost was calculated?":                           "why cost",
		"How much room will there be between the two posts where we walk through?": "ask opening",
		"how do I know where to put the post":                                      "ask posts",
		"Please let me know where each board should be attached.":                  "ask marks",
		"how many 4x4s do I get":                                                   "ask shopping",
		"I'm at the yard, read me the list":                                        "ask shopping",
		"remind me what height I gave you":                                         "ask wall height",
		"so the doorway's thirty wide how does that leave the bays":                "opening = 30 in; ask bay",
		"run through the steps for me and price it too":                            "ask steps; ask cost",
		"tell me what you get for the bays, and why":                               "ask bay; why bay",
		"what would happen if I forgot the stiffeners":                             "what if stiffeners = 0",
		"how come there's a walk-through on the left and not the right":            "why opening side",
		"why is your total higher than his":                                        "why cost",
		"what should I check before I cut":                                         "ask cautions",
		"what's the height, the gap and the opening":                               "ask wall height; ask gap; ask opening",
		"gap & ht?":         "ask gap; ask wall height",
		"why no stiffeners": "why stiffeners",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{"don't write me a list of the lumber and hardware", "he knows which lumber I should buy", "the lumber takeoff is wrong", "where do I mark my calendar", "I set the stop block to 66 1/2",
		"where does that leave my brother", "what fits in my truck", "what other numbers did he give", "the order things get done in is up to me", "I'm careful when I build this", "there's no reason we can't have six boards", "that is the reason for the 3 inch gap",
		"it doesn't come out to a 45 inch wall", "2x8 rails don't work", "what do we need, three stiffeners in every bay", "for that reason I'm not sure about the gap", "spare me the reasons", "what do I do with the offcuts", "where do I put my calendar", "how many bags of chips do I get", "I forgot the stiffeners", "the second bracket goes there", "his total is higher than yours", "y'all want six boards",
		"I'll give you the gap once I've measured", "ask me about the doorway again tomorrow", "The boards should be spaced nicely, please.", "I don't know what gap I should use"} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
}
