package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// What a line does not tell for certain is asked back before anything is done.
func TestTogetherLeftUnsaid(t *testing.T) {
	for _, line := range []string{
		"drop the gap limit", "lose the limit on the bays", "forget the max gap", "scrap the minimum on the opening", "the gap limit can go",
		"if the opening's over forty, lose the post", "if we go with six boards, forget the bottom gap", "should the gap go over 3, drop the stiffeners",
		"if six rails fit, save it as porch", "if the bays are over 8 feet, start over",
		"gap two, finished", "wall height 48, finished", "I'm finished with this one", "we're done with this wall",
		"the posts are cut out of the list", "that is my work done on the posts", "the posts are in",
		"toss two spare boards", "gap 2, not that", "the quote came in 30 over my budget", "the estimate is 50 over 400",
		"if it's six rails, I'm done", "I don't know what gap I want", "my buddy did it in six rails", "he's doing it in five rails",
		"lumberyard has 8 foot and 12 foot, no 16 foot", "they carry 8 to 16 footers, no 14s",
	} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
	requireReads(t, act.Context{}, map[string]string{
		"drop the budget limit":                        "forget budget",
		"drop the gap":                                 "forget gap",
		"drop the 36 inch minimum on the opening":      "forget opening >= 36 in",
		"scratch btm gap, max bay 6'":                  "forget bottom gap; bay <= 72 in",
		"if you don't mind, forget the gap":            "forget gap",
		"what if six rails. forget the bottom gap":     "what if rails = 6; forget bottom gap",
		"gap two, done":                                "gap = 2 in; quit",
		"finished":                                     "quit",
		"I'm done with it":                             "quit",
		"finished with this wall, clear it":            "start over",
		"toss in two spare boards":                     "spare = 2",
		"toss the spare":                               "forget spare",
		"the posts are cut out of 4x4":                 "post size = 4x4",
		"where do the posts go":                        "ask posts",
		"they quoted me 380":                           "check cost = 380.00",
		"gap 2 on the ticket":                          "check gap = 2 in",
		"gap 2 on this ticket":                         "gap = 2 in",
		"his drawing is metric: gap 60":                "units = metric; check gap = 60 mm",
		"my drawing is metric: gap 60":                 "units = metric; gap = 60 mm",
		"he could do it in six rails":                  "what if rails = 6",
		"can you do it in six rails":                   "what if rails = 6",
		"can you do it in six rails please":            "rails = 6",
		"am I still at six rails":                      "check rails = 6",
		"does the 2 inch gap still hold":               "check gap = 2 in",
		"no idea what gap to use":                      "ask gap",
		"you could do it with five rails":              "what if rails = 5",
		"one post added, and they're all four by four": "added posts = 1; post size = 4x4",
	})
}

// A figure may be told by how far it is from another.
func TestStatementsOffFromFigures(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"opening 30 wide, no, 4 inches less than 36":               "opening = 32 in",
		"gap half an inch less than 3":                             "gap = 2-1/2 in",
		"gap an eighth over two":                                   "gap = 2-1/8 in",
		"wall two inches under 50":                                 "wall height = 48 in",
		"opening at least 4 inches less than 36":                   "opening >= 32 in",
		"wall 40 mm under 1.2 m":                                   "wall height = 1160 mm",
		"the estimate is 50 dollars over 400":                      "check cost = 450.00",
		"the bill is 20 dollars under 400":                         "check cost = 380.00",
		"the left post leans in three eighths over four feet":      "left post leans 3/8 in right in 48 in",
		"the floor drops an inch over 12 feet":                     "floor falls 1 in per 144 in",
		"gap 2, over 1":                                            "gap = 2 in; gap > 1 in",
		"opening less than 36":                                     "opening < 36 in",
		"the gap finishes up at two":                               "gap = 2 in",
		"they sell 8, 10, 12 and 16 footers here, no 14s":          "stock = 96 in, 120 in, 144 in, 192 in; stock -= 168 in",
		"no 14s, they've got 8, 10 and 12 footers":                 "stock -= 168 in; stock = 96 in, 120 in, 144 in",
		"3 m and 3.6 m lengths, no 4.2s":                           "stock = 3000 mm, 3600 mm; stock -= 4200 mm",
		"they sell 8, 10, 12, no, 14 footers":                      "stock = 96 in, 120 in, 168 in",
		"they sell tens and twelves and sixteens, no sixteens":     "stock = 120 in, 144 in",
		"they have 8, 10 and 12 footers, no 16s":                   "stock = 96 in, 120 in, 144 in; stock -= 192 in",
		"that four inch limit I put on the gap, is it still there": "check gap <= 4 in",
		"the six rails I asked for, are they still in":             "check rails = 6",
	})
}

// What a word means is explained; what a wall would come to is tried.
func TestSentencesAskingMeanings(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"I have no idea what kerf means":         "help kerf",
		"no idea what stiffeners are":            "help stiffeners",
		"what's a stiffener":                     "help stiffeners",
		"not sure what trim means":               "help trim",
		"what's the kerf":                        "ask kerf",
		"quote me six rails":                     "what if rails = 6; ask cost",
		"quote me on six rails with 2 inch gaps": "what if rails = 6, gap = 2 in; ask cost",
		"he quoted me six rails":                 "check rails = 6",
		"what's it come to if the gap is 3":      "what if gap = 3 in; ask cost",
		"what's the cheapest I can do this for":  "what if cheapest; ask cost",
		"how cheaply can this be done":           "what if cheapest; ask cost",
		"do it the cheapest way":                 "cheapest",
		"cut 'em all one length":                 "same length",
	})
}
