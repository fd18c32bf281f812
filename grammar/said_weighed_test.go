package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Claims put on the scales, and lines that only look like them.
func TestWeighedClaims(t *testing.T) {
	for said, want := range map[string]string{
		"the lad at the counter worked it out at seven rails, am I safe to trust that":        "check rails = 7",
		"he says five rails, would you bet on that":                                           "check rails = 5",
		"he has the bottom gap at 2 inches, would you put any money on it":                    "check bottom gap = 2 in",
		"the plan has the opening at 36, do I dare build from that":                           "check opening = 36 in",
		"Dad says the stiffeners go every 20 inches. Dad's usually wrong. Is he?":             "check stiffener spacing = 20 in",
		"The plan has it 48 high, 6 boards, 2x6. All three correct?":                          "check wall height = 48 in, rails = 6, rail size = 2x6",
		"he says 7 rails and she says the gap is 1-5/8, do those two go together":             "check rails = 7, gap = 1-5/8 in",
		"He's quoting me 445 dollars and 20 cents. Fair or not?":                              "check cost = 445.20",
		"She wants me to think five boards will do.":                                          "check rails = 5",
		"they're trying to tell me it takes nine rails":                                       "check rails = 9",
		"I'm meant to take it on faith that the bays are 70 inches":                           "check bay = 70 in",
		"in the margin: 5 rails, gap 2-3/4":                                                   "check rails = 5, gap = 2-3/4 in",
		"there's a note in the margin: 2 bays, 1 added post, opening 29-1/2":                  "check bays = 2, added posts = 1, opening = 29-1/2 in",
		"written along the edge: gap 2-3/8":                                                   "check gap = 2-3/8 in",
		"says on the tag the face is 5 and a half":                                            "check rail face = 5-1/2 in",
		"if I understand his note the opening is 36":                                          "check opening = 36 in",
		"unless I misread it the plan has a 36 inch opening":                                  "check opening = 36 in",
		"I don't buy this: bay 2 is 66":                                                       "check bay 2 = 66 in",
		"something looks off here: five rails at 3-1/4":                                       "check rails = 5, gap = 3-1/4 in",
		"hold his number up against yours, he gets $365.50 for the lot":                       "check cost = 365.50",
		"Compare his figure with yours: cut at 59-3/8 in bay 2.":                              "check cut bay 2 = 59-3/8 in",
		"does his seven rails figure hold water":                                              "check rails = 7",
		"Do his marks of 7-7/8 and 15-3/4 hold up?":                                           "check marks = 7-7/8 in, 15-3/4 in",
		"is 16-1/2 on center for the stiffeners correct, like he wrote":                       "check stiffener spacing = 16-1/2 in",
		"does the drawing have it right that every rail gets cut to one length":               "check same length",
		"see whether six rails at two and three quarters really get you to 45 high":           "check rails = 6, gap = 2-3/4 in, wall height = 45 in",
		"first he said five rails, then he changed it to six, so check the six":               "check rails = 6",
		"she said five rails at first but now says six, check that":                           "check rails = 6",
		"The old plan had 6 rails, the new one has 7. Check the new one.":                     "check rails = 7",
		"he wrote six boards down, no hold on, that's an eight, eight boards":                 "check rails = 8",
		"He has the gap at 2-1/2 and I have it at 2-1/4, so enter mine.":                      "check gap = 2-1/2 in; gap = 2-1/4 in",
		"What do you make of his claim that the wall is 41 high?":                             "check wall height = 41 in",
		"he bet me ten bucks the gap is under two inches":                                     "check gap < 2 in",
		"last night my brother texted me 7 boards at 2 and a quarter, verify please":          "check rails = 7, gap = 2-1/4 in",
		"both of them say 6 rails. Are both of them wrong?":                                   "check rails = 6",
		"Their worksheet: rails 7, gap 1-15/16, bottom gap 2. Any mistakes?":                  "check rails = 7, gap = 1-15/16 in, bottom gap = 2 in",
		"claim one: gap under 3. claim two: wall 46":                                          "check gap < 3 in; check wall height = 46 in",
		"he says there's room for seven rails":                                                "check rails = 7",
		"The gap is 2. He claims two bays at 62 each.":                                        "gap = 2 in; check bays = 2, bay = 62 in",
		"The end posts are 163-1/2 apart face to face. The contractor claims two bays at 62.": "span = 163-1/2 in; check bays = 2, bay = 62 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{
		"she never wanted me to think the gap is 3", "I'm not supposed to believe the gap is 3", "I trust this: gap 2-1/2", "in the margin of error: 1/16", "written along the edge of the board",
		"two rails, both right", "is either wrong", "first he said five rails, then six, I'll take four", "he crossed out 5 rails", "claim one", "he bet me ten bucks",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
	for said, want := range map[string]string{ // what turns on one word
		"something looks off, show me the marks": "ask cautions; ask marks",
		"The gap is 2. He says 3.":               "gap = 2 in; check gap = 3 in",
		"he says the gap is 2-1/2, both rails":   "check gap = 2-1/2 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}

// What is owned, what may be spent, which plan is meant, and what was measured.
func TestBoughtKeptAndMeasured(t *testing.T) {
	for said, want := range map[string]string{
		"I found two more ten foot 2x6 in the attic":                                                      "have 2x6 120 in x 2",
		"there's three more 14 foot 2x6s in the loft":                                                     "have 2x6 168 in x 3",
		"my neighbor's letting me have five 2x6 ten-footers":                                              "have 2x6 120 in x 5",
		"reuse my three ten-foot 2x6s":                                                                    "have 2x6 120 in x 3",
		"I've got three fifty to spend, that's it":                                                        "budget = 350.00",
		"my husband will kill me if it runs over 400 dollars":                                             "budget = 400.00",
		"I'm in trouble if it costs more than 350":                                                        "budget = 350.00",
		"we can go to 340 and not a cent more":                                                            "budget = 340.00",
		"She can't spend over two hundred and eighty-five dollars on the lot.":                            "budget = 285.00",
		"throw in an extra board for luck":                                                                "spare = 1",
		"get an extra one in case I botch a cut":                                                          "spare = 1",
		"they just got some fourteens in":                                                                 "stock += 168 in",
		"just in: sixteens":                                                                               "stock += 192 in",
		"nothing in twelves today":                                                                        "stock -= 144 in",
		"they sell 4x4s in eights, tens, and twelves":                                                     "stock 4x4 = 96 in, 120 in, 144 in",
		"caps are five and a quarter each":                                                                "price post cap = 5.25",
		"give me the bill of materials":                                                                   "ask shopping",
		"cheapest way to build it, whatever that is":                                                      "cheapest",
		"don't waste wood":                                                                                "least waste",
		"pull cabin up and show me the cuts":                                                              "open cabin; ask cuts",
		"Hold patio up against carport for us, how do the two plans compare?":                             "compare patio, carport",
		"I'd like to keep this one, call it sunroom":                                                      "save sunroom",
		"name it lilac and save":                                                                          "save lilac",
		"ok, the second one it is":                                                                        "take 2",
		"What has she told you up to now?":                                                                "recap",
		"let's do this again from the beginning":                                                          "start over",
		"whoops, didn't mean that, take it back":                                                          "undo",
		"that's all, I'm off to the yard, bye":                                                            "quit",
		"off to the yard now, thanks, bye":                                                                "quit",
		"I have to run, save this as maple":                                                               "save maple",
		"I don't follow, help":                                                                            "help",
		"put a level on the left post, it's off 5/16 toward the right in three and a half feet":           "left post leans 5/16 in right in 42 in",
		"bubble's off on the right post, 1/4 to the left in 3 feet":                                       "right post leans 1/4 in left in 36 in",
		"The floor's out of true, it's five eighths lower at the right-hand post than at the left.":       "floor at right = -5/8 in",
		"Ground yonder lies about three foot lower than the floor here.":                                  "drop ~ 36 in",
		"the ground outside is roughly 36 below the floor":                                                "drop ~ 36 in",
		"I've put the rule on that rail stock and it's seven and three sixteenths across the face.":       "rail face = 7-3/16 in",
		"I'd not go under an inch and three quarters betwixt the rails.":                                  "gap >= 1-3/4 in",
		"Bays of seven feet at most, sorry, six and a half at most.":                                      "bay <= 78 in",
		"Six rails, hmm, no, seven, oh all right, six after all.":                                         "rails = 6",
		"Two stiffeners to each bay, and out of one by three.":                                            "stiffeners = 2; stiffener size = 1x3",
		"Three stretches with rails in 'em and two places to walk through.":                               "bays = 3; openings = 2",
		"In my day we left three inches everywhere, but here I'll have two and a half between the rails.": "gap = 2-1/2 in",
		"bay 1, rail by rail from the bottom: 64-1/4, 64-5/16, 64-3/8":                                    "measured bay 1 rail 1 = 64-1/4 in; measured bay 1 rail 2 = 64-5/16 in; measured bay 1 rail 3 = 64-3/8 in",
		"the second board is screwed on for good, top edge 16-3/4":                                        "fixed rail 2 top = 16-3/4 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{
		"I found six boards", "found two rails cracked", "my husband will kill me if the gap is over 3 inches", "I draw the line at 3 inches", "we can go to 40 and not an inch more", "an extra post just in case",
		"just in: a new saw", "nothing in stock", "the second one it is not", "right, I'm away from home", "ground over there is lower than here", "the floor's out of level", "in my day we left three inches",
		"forget all the measurements", "forget all the prices", "forget the boards I have", "will I stay under 300", "save my work",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
	for said, want := range map[string]string{
		"that's all, what do I buy":              "ask shopping",
		"off to the yard, what should I buy":     "ask shopping",
		"there are two more boards in bay 2":     "bay 2 rails += 2",
		"gap 2, sorry, 36 opening at least":      "gap = 2 in; opening >= 36 in",
		"the floor is not level, make the gap 2": "gap = 2 in",
		"I'm not sure what to put for the gap":   "help gap",
		"drop is about 30, no, 32 at most":       "drop <= 32 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
