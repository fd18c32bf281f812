package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Money and the yard, and what is measured, and what only looks like it.
func TestPurseTurns(t *testing.T) {
	for said, want := range map[string]string{
		"paying 8.60 for a ten foot 2x6 and 13.95 for a fourteen":                                             "price 2x6 120 in = 8.60; price 2x6 168 in = 13.95",
		"the yard wants 6.85 for an eight foot 2x6, 8.70 for a ten and 10.40 for a twelve":                    "price 2x6 96 in = 6.85; price 2x6 120 in = 8.70; price 2x6 144 in = 10.40",
		"they charge fourteen dollars and twenty cents for each sixteen foot board":                           "price rails 192 in = 14.20",
		"90x45 comes to 13.20 for the 2.7 m and 17.60 for the 3.6 m":                                          "price 90x45 2700 mm = 13.20; price 90x45 3600 mm = 17.60",
		"the three metre 140x45 is 14.90 and the 3.6 is 18.20":                                                "price 140x45 3000 mm = 14.90; price 140x45 3600 mm = 18.20",
		"6x6s in ten foot are 31.60, 2x4s in ten foot 5.45":                                                   "price 6x6 120 in = 31.60; price 2x4 120 in = 5.45",
		"a ten foot 2x6 is eight sixty and a fourteen is thirteen ninety five, what's the total":              "price 2x6 120 in = 8.60; price 2x6 168 in = 13.95; ask cost",
		"4.2 m lengths of 140x38 are 23.40 each and the shop has run out of 3 m ones":                         "price 140x38 4200 mm = 23.40; stock -= 3000 mm",
		"2x6s: 8' $6.80, 10' $8.50, brackets 3.50 each":                                                       "price 2x6 96 in = 6.80; price 2x6 120 in = 8.50; price bracket = 3.50",
		"timber at the merchant's: 3 m at 11.50, 4.8 m at 18.90":                                              "price rails 3000 mm = 11.50; price rails 4800 mm = 18.90",
		"he says a ten foot 2x6 is 8.60 and a twelve is 10.20":                                                "price 2x6 120 in = 8.60; price 2x6 144 in = 10.20",
		"brackets are three for 10.50":                                                                        "price bracket = 3.50",
		"brackets come ten to a bag, a bag is 38 dollars":                                                     "price bracket = 3.80",
		"two post bases for 37 dollars":                                                                       "price post base = 18.50",
		"four twelve-foot 2x6s come to 48 dollars even at the yard":                                           "price 2x6 144 in = 12.00",
		"screws are eleven fifty for a box of 100":                                                            "price screws 100 = 11.50",
		"mark the brackets down at 3.85 each":                                                                 "price bracket = 3.85",
		"I got a quote of 18.20 for each post base":                                                           "price post base = 18.20",
		"the man at the counter says brackets are 3.85 each":                                                  "price bracket = 3.85",
		"they just sold the last of the twelves but there's fourteens now, 12.60 each":                        "stock -= 144 in; stock += 168 in; price rails 168 in = 12.60",
		"there's ten footers on the shelf again":                                                              "stock += 120 in",
		"all they've got in the bin is eights and sixteens":                                                   "stock = 96 in, 192 in",
		"nothing but ten and sixteen footers in the racks today, what do I load up":                           "stock = 120 in, 192 in; ask shopping",
		"all I can get is twelve foot stuff":                                                                  "stock = 144 in",
		"they also do 5.4 m":                                                                                  "stock += 5400 mm",
		"skip the sixteens, I can't haul those":                                                               "stock -= 192 in",
		"our builders' merchant has planks of 3 m, 4 m and 5 m":                                               "stock = 3000 mm, 4000 mm, 5000 mm",
		"of the five eight foot 1x4s I own one is rotten, the rest I can use":                                 "have 1x4 96 in x 4",
		"I've got six ten foot 2x6s but two are warped":                                                       "have 2x6 120 in x 4",
		"can't let the materials top 310 bucks":                                                               "budget = 310.00",
		"I can spare another forty dollars, put that on top of the budget":                                    "budget += 40.00",
		"four fifty is all the money there is for this":                                                       "budget = 450.00",
		"the wife says no more than 350 for the lot":                                                          "budget = 350.00",
		"so how much am I handing the cashier":                                                                "ask cost",
		"Would you kindly tell me which lumber I should purchase, and what the total would come to?":          "ask shopping; ask cost",
		"I make mistakes easily, so please include fifteen percent more lumber than we need.":                 "spare = 15%",
		"don't add any extra to the order":                                                                    "spare = 0%",
		"one board over is plenty":                                                                            "spare = 1",
		"I can't read anything finer than 2 mm off this tape":                                                 "tape = 2 mm",
		"give me every figure to the nearest sixteenth":                                                       "tape = 1/16 in",
		"could we do all of this in metric, inches mean nothing to me":                                        "units = metric",
		"that's enough millimetres, inches from here on":                                                      "units = customary",
		"switch over to inches":                                                                               "units = customary",
		"one metre and five centimetres for the height":                                                       "wall height = 1050 mm",
		"start the opening ninety-five centimetres along from the post on the left":                           "opening from left = 950 mm",
		"in bay 2 I get 70 1/2, 70 9/16 and 70 11/16 for rails 2, 3 and 4":                                    "measured bay 2 rail 2 = 70-1/2 in; measured bay 2 rail 3 = 70-9/16 in; measured bay 2 rail 4 = 70-11/16 in",
		"bay 1, rails 2 and 3: 68 1/8 and 68 1/4":                                                             "measured bay 1 rail 2 = 68-1/8 in; measured bay 1 rail 3 = 68-1/4 in",
		"checked bay 2 bottom again and it's 58-7/8, I had 58-3/8 before":                                     "measured bay 2 bottom = 58-7/8 in",
		"When I hold a ruler to my planks, they turn out to be 5 9/16 inches wide.":                           "rail face = 5-9/16 in",
		"The horizontal boards will be 2x8 lumber, although mine measure only 7 3/16 inches across the face.": "rail size = 2x8; rail face = 7-3/16 in",
		"stuff on my cart is only 5 9/16 across the face":                                                     "rail face = 5-9/16 in",
		"with a calliper the slats come out at 91.5 mm wide":                                                  "rail face = 91.5 mm",
		"we'll go with 120 x 30 battens for the rails":                                                        "rail size = 120x30",
		"figure the saw eats an eighth every cut and i lose half an inch a board squaring up the end":         "kerf = 1/8 in; trim = 1/2 in",
		"for rails in each bay":                                                                               "rails = 4",
	} {
		require.Equal(t, want, Normal(Read(said, Context{}).Acts), said)
	}
	for _, said := range []string{
		"it's not 8.60 for a ten foot 2x6 and 13.95 for a fourteen", "a ten foot 2x6 is 8.60 a foot and a twelve 9.10", "2x6 runs 3.40 a metre",
		"not four brackets for 12.80", "four brackets for 12.85", "five boards for 10.50", "the brackets are three for each rail", "five boards come to 40 inches",
		"nothing but trouble at the yard today", "nothing but air between the rails", "all they've got in stock is junk", "two boards are split", "five boards, two are warped",
		"rail 2 came up 3/8 short", "rails 2, 3 and 4 are warped", "I could spare forty dollars", "don't let the materials top the roof rack", "what am I handing the clerk first",
		"we could get more lumber than we need", "one board over the top is plenty", "I checked bay 1 again and it's fine", "that's enough inches between the boards",
		"when I hold a tape to the wall it comes to 40 inches", "wall hide the screws", "for boards",
	} {
		require.Empty(t, Read(said, Context{}).Acts, said)
	}
}
