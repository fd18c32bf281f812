package grammar

import "testing"

func TestMendedTrials(t *testing.T) {
	heardAs(t, map[string]string{
		// What would come of figures is tried.
		"six rails with a gap of two and a sixteenth what would that do to the wall height": "what if rails = 6, gap = 2-1/16 in; ask wall height",
		"four bays, what would that do to the stiffeners":                                   "what if bays = 4; ask stiffeners",
		"2x8 rails, what would that do to the price":                                        "what if rail size = 2x8; ask cost",
		// Whether it could be had is tried; a "please" asks for it.
		"could I have 65 mm gaps on a 1.1 m wall":                                     "what if gap = 65 mm, wall height = 1100 mm",
		"could we have two bays":                                                      "what if bays = 2",
		"could we have two bays, please?":                                             "bays = 2",
		"could I have five rails, thanks":                                             "rails = 5",
		"is there any way the wall could be 50 and the bottom space 2":                "what if wall height = 50 in, bottom gap = 2 in",
		"why is there only one opening, and could we have two":                        "why openings; what if openings = 2",
		"where'd those two stiffeners come from and would three be ok":                "why stiffeners; what if stiffeners = 3",
		"why do you only show one stiffener in a bay, would three be any good":        "why stiffeners; what if stiffeners = 3",
		"where did five rails come from, would six look better":                       "why rails; what if rails = 6",
		"why is the gap two, would three be ok":                                       "why gap; what if gap = 3 in",
		"why is the wall 48 high, would 44 be ok":                                     "why wall height; what if wall height = 44 in",
		"why six rails and not five":                                                  "why rails; why not rails = 5",
		"how many bays is that and how wide is each one":                              "ask bays; ask bay",
		"would six slats 2 and a half apart bring the wall up to 48, like she claims": "check rails = 6, gap = 2-1/2 in, wall height = 48 in",
		"would a 36 inch opening be enough, like he says":                             "check opening = 36 in",
		// What is asked of it is asked.
		"what would it cost with 6x6 posts":                             "what if post size = 6x6; ask cost",
		"what do I buy with 6x6 posts":                                  "what if post size = 6x6; ask shopping",
		"how long are the cuts with 6x6 posts":                          "what if post size = 6x6; ask cuts",
		"what do we have to buy if the yard only has tens and sixteens": "what if stock = 120 in, 192 in; ask shopping",
		"you have to buy sixteens":                                      "stock = 192 in",
		"How would it look with the doorway on the left?":               "what if opening side = left; ask drawing",
		"how's it come out if i drop down to four boards":               "what if rails = 4",
		"how's it come out with a gap of three":                         "what if gap = 3 in",
		"the gap is two, what does that do to the height":               "gap = 2 in; ask wall height",
	})
}
