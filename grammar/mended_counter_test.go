package grammar

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// What is said at the counter of boards and bills: what is gone and what is there instead, what was used up, what is for something else, what all of it came
// to. Everyday speech, no source.
func TestAtTheCounter(t *testing.T) {
	for said, want := range map[string]string{
		"only twelves, tens are gone":                               "stock = 144 in; stock -= 120 in",
		"only sixteens, tens are out":                               "stock = 192 in; stock -= 120 in",
		"just twelves, they're out of tens":                         "stock = 144 in; stock -= 120 in",
		"only twelves left, sixteens are gone":                      "stock = 144 in; stock -= 192 in",
		"the tens are gone, only twelves left":                      "stock -= 120 in; stock = 144 in",
		"no twelves left, use sixteens":                             "stock -= 144 in; stock += 192 in",
		"no twelves, sixteens instead":                              "stock -= 144 in; stock += 192 in",
		"out of twelves, sixteens instead":                          "stock -= 144 in; stock += 192 in",
		"they no longer carry sixteens, tens instead":               "stock -= 192 in; stock += 120 in",
		"no more tens, eights instead":                              "stock -= 120 in; stock += 96 in",
		"no tens, eights are fine":                                  "stock -= 120 in; stock += 96 in",
		"no sixteens, twelves will do":                              "stock -= 192 in; stock += 144 in",
		"they dropped the twelves, sixteens now":                    "stock -= 144 in; stock += 192 in",
		"drop the twelves, keep the sixteens":                       "stock -= 144 in",
		"keep the twelves, lose the tens":                           "stock -= 120 in",
		"they have twelves, no longer tens":                         "stock = 144 in; stock -= 120 in",
		"they sell eights and tens, no longer twelves":              "stock = 96 in, 120 in; stock -= 144 in",
		"twelves are gone, get sixteens":                            "stock -= 144 in; stock += 192 in",
		"twelves are gone, eights instead":                          "stock -= 144 in; stock += 96 in",
		"twelves are gone, use sixteens":                            "stock -= 144 in; stock += 192 in",
		"twelves are gone, take sixteens":                           "stock -= 144 in; stock += 192 in",
		"twelves are gone, buy sixteens":                            "stock -= 144 in; stock += 192 in",
		"are ten 2x6 twelves enough":                                "check boards 2x6 144 in = 10",
		"are ten 4x4 eights enough":                                 "check boards 4x4 96 in = 10",
		"are nine 2x6 twelves enough":                               "check boards 2x6 144 in = 9",
		"are six twelve foot 2x6s enough":                           "check boards 2x6 144 in = 6",
		"would ten 2x6 12 footers do":                               "check boards 2x6 144 in = 10",
		"I bought ten 2x6 12 footers, do I need more":               "have 2x6 144 in x 10; ask shopping",
		"I've got six 2x6 12 footers, do I need more":               "have 2x6 144 in x 6; ask shopping",
		"we have four 2x6 16 footers, will I need more":             "have 2x6 192 in x 4; ask shopping",
		"I came to 380 for the lumber":                              "check cost = 380.00",
		"I make it 380 for the lumber":                              "check cost = 380.00",
		"I figured 380 for the lumber":                              "check cost = 380.00",
		"do twelves do":                                             "what if stock = 144 in",
		"will twelves do":                                           "what if stock = 144 in",
		"Here one can buy lengths of 3,6 m, 4,2 m and 4,8 m.":       "stock = 3600 mm, 4200 mm, 4800 mm",
		"brackets are 3.49, right?":                                 "check price bracket = 3.49",
		"16 foot 2x6s are 14.50, right?":                            "check price 2x6 192 in = 14.50",
		"12 footers are 14.50, is that right":                       "check price rails 144 in = 14.50",
		"is it right that 12 footers are 14.50":                     "check price rails 144 in = 14.50",
		"what would it cost at 4 dollars a bracket":                 "what if price bracket = 4.00; ask cost",
		"what's it cost at 3.49 a bracket":                          "what if price bracket = 3.49; ask cost",
		"what would it run at 14.50 for a 16 foot 2x6":              "what if price 2x6 192 in = 14.50; ask cost",
		"at 3.49 a bracket what's the total":                        "what if price bracket = 3.49; ask cost",
		"at 4 dollars a bracket what does it cost":                  "what if price bracket = 4.00; ask cost",
		"one can buy 3.6 m boards here":                             "stock = 3600 mm",
		"brackets come to 3.49 each":                                "price bracket = 3.49",
		"sixteens are 14.50, no, 15.50":                             "price rails 192 in = 15.50",
		"gap 2,5 rails 6":                                           "gap = 2-1/2 in; rails = 6",
		"gap 2,5, rails 6":                                          "gap = 2-1/2 in; rails = 6",
		"the wall is 48 high for under 280 dollars":                 "wall height = 48 in; budget = 280.00",
		"they're out of twelves, we'll use tens and eights instead": "stock -= 144 in; stock += 120 in, 96 in",
		"the twelves are gone so get sixteens":                      "stock -= 144 in; stock += 192 in",
		"the twelves are sold out, I'll take tens instead":          "stock -= 144 in; stock += 120 in",
		"they have no twelves, so use sixteens":                     "stock -= 144 in; stock += 192 in",
		"they have no twelves but sixteens are fine":                "stock -= 144 in; stock += 192 in",
		"no 12s, 16s instead":                                       "stock -= 144 in; stock += 192 in",
		"no 12 footers, 16 footers instead":                         "stock -= 144 in; stock += 192 in",
		"out of 12 footers, use 16 footers":                         "stock -= 144 in; stock += 192 in",
		"there are no twelves, go with tens":                        "stock -= 144 in; stock += 120 in",
		"twelves are gone, tens are fine, sixteens too":             "stock -= 144 in; stock += 120 in, 192 in",
		"tens are gone but they still have twelves":                 "stock -= 120 in; stock += 144 in",
		"tens are out, twelves are in":                              "stock -= 120 in; stock += 144 in",
		"only twelves since the tens are gone":                      "stock = 144 in; stock -= 120 in",
		"they only have twelves now, the tens are gone":             "stock = 144 in; stock -= 120 in",
		"they quit tens, they sell twelves":                         "stock -= 120 in; stock = 144 in",
		"the yard stopped carrying tens, sixteens now":              "stock -= 120 in; stock += 192 in",
		"out of tens and twelves":                                   "stock -= 120 in; stock -= 144 in",
		"the tens and twelves are gone":                             "stock -= 120 in; stock -= 144 in",
		"twelves are out, they've got sixteens":                     "stock -= 144 in; stock += 192 in",
		"lose the twelves and the tens":                             "stock -= 144 in; stock -= 120 in",
		"they're out of eights, tens and twelves":                   "stock -= 96 in; stock -= 120 in; stock -= 144 in",
		"they're out of eights and tens":                            "stock -= 96 in; stock -= 120 in",
		"eights, tens and twelves are gone":                         "stock -= 96 in; stock -= 120 in; stock -= 144 in",
		"no tens, no twelves":                                       "stock -= 120 in; stock -= 144 in",
		"no tens and no twelves":                                    "stock -= 120 in; stock -= 144 in",
		"tens are gone, and so are the twelves":                     "stock -= 120 in; stock -= 144 in",
		"drop the tens, drop the twelves":                           "stock -= 120 in; stock -= 144 in",
		"out of tens, out of twelves":                               "stock -= 120 in; stock -= 144 in",
	} {
		r := Read(said, act.Context{})
		if assert.Nil(t, r.Ask, said) {
			assert.Equal(t, want, parse.Normal(r.Acts), said)
		}
	}
	for _, said := range []string{
		"I've used up six 2x6 twelves", "I've used six 2x6x12", "I've sold six 2x6 twelves", "I've only used two 2x6 twelves", "there were eight 2x6 sixteens in the shed",
		"I've six 2x6 twelves to go", "I've got six 2x6 twelves for the shelf", "the neighbor bought six 2x6 twelves for himself", "he bought six twelve foot 2x6s",
		"dad's got six 2x6 twelves", "he has six 2x6 twelves", "I have six 2x6 twelves coming", "I have six 2x6 twelves on order", "six twelves in stock", "ten sixteens in stock",
		"six in stock", "they'll sell me four sixteens", "sixteens on sale at 12 and 14", "can I get it out of ten boards", "have 10 boards, is that enough",
		"the brackets came to 76.56", "brackets 76.56 altogether", "the brackets are 76.56 in all", "all the brackets 76.56", "the brackets add up to 76.56",
		"I paid 76.56 for the brackets", "the screws cost me 18", "the anchors cost me 24 in all", "the sixteens cost me 145", "the lumber's 280", "the lumber was 280",
		"the wood's 280", "materials are 280", "the material's 280 so far", "the lumber will be 280", "that leaves 250 for lumber", "I get 380 for the lumber",
		"a wall for under 280", "no boards longer than 12", "boards no longer than 12", "no boards over twelve", "no board longer than 8", "longest board is 16",
		"keep the tens", "leave the tens", "leave the tens on the list", "keep the eights for the shelf", "leave the sixteens at the yard", "twelves later",
		"the tens go", "sixteens when they have them", "they'll have sixteens tomorrow", "next week they have tens", "tens are on order", "hopefully tens", "I asked for tens",
		"they start at eights", "they go up to sixteens", "ten footers at most", "what did I say for twelves", "what did I say about the twelves", "what did I give for twelves",
		"stock 2400, 3000 and 3600", "they sell 2400, 3000 and 3600", "boards come in 2400, 3000, 3600", "the yard sells 3600", "two boards left over", "three left over boards",
		"three boards to go", "I've done three boards", "three boards done, three to go", "two more boards to go", "what if one board is bad", "what if two boards are bad",
		"gap 2,5 rails", "gap 2,6 boards", "gap 2,3 rails", "I've got room for six 2x6 twelves", "I've two boards to spare", "I can spare two boards", "can't spare a board",
		"don't put a spare board on the list", "buy two more boards", "get one board more", "one board less on the list", "they say brackets are 3.49", "the receipt says brackets are 3.49",
		"he says brackets are 3.49", "the quote has brackets at 3.49", "he says post bases are 18.50", "twelve footers came to 145", "no twelves, so sixteens instead, and gap 2",
		"gap 2, no twelves, use sixteens", "no twelves today, tens tomorrow", "no twelves, no tens, use eights", "if they're out of twelves, use sixteens", "if there are no twelves, get sixteens",
		"scrap the twelves, use sixteens", "swap the twelves for sixteens", "take out the twelves, keep the tens", "remove the twelves, leave the tens", "tens are gone, twelves are not",
		"they're down to twelves, no tens", "sixteens only, twelves are out", "twelves but not tens", "twelves yes, tens no", "they replaced the tens with twelves",
		"tens got replaced by twelves", "twelves ran out, so did tens", "no tens or twelves", "no twelves or sixteens, tens instead", "no twelves, make it sixteens",
		"no twelves, sixteens okay", "sixteens are ok, no twelves", "use sixteens, twelves are gone", "use sixteens, no twelves left", "get sixteens, they're out of twelves",
		"sixteens then, twelves are gone", "sixteens, the twelves are gone", "sixteens instead, no twelves left", "take the sixteens, the twelves are out", "they've got sixteens, twelves are out",
		"drop the twelves, not the tens", "cross off the tens, not the twelves", "no 3.6 m, 4.2 m instead", "no 3.6 m boards, no 4.2 m boards", "tens are gone, twelves too",
		"drop tens, twelves", "no more tens, nor twelves",
	} {
		assert.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}
