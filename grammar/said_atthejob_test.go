package grammar

import "testing"

// What is said at the job of the tape, the posts, the cart and of what was said before; and what only sounds so. Everyday speech, no source.
func TestAtTheJob(t *testing.T) {
	heardAs(t, map[string]string{
		"I ran the tape inside the two posts and it's fourteen foot three":                                "span = 171 in",
		"Between the inner faces of the two end posts I have 13 feet 2 inches to fill.":                   "span = 158 in",
		"No stretch between two posts may exceed sixty-six inches.":                                       "bay <= 66 in",
		"what if the new post sat on a base an inch and a quarter off the floor":                          "what if base height = 1-1/4 in",
		"The smallest mark I can set out to is 2 mm.":                                                     "tape = 2 mm",
		"twice as much space under the bottom board as there is between boards":                           "bottom gap = 2 * gap",
		"Cut it so the least wood gets wasted.":                                                           "least waste",
		"I need the cuts as a csv for the saw room.":                                                      "ask cuts as csv",
		"how many boards go in the cart, and what's it come to":                                           "ask shopping; ask cost",
		"In two by six I've got eights, tens and sixteens today.":                                         "stock 2x6 = 96 in, 120 in, 192 in",
		"Revert to feet and inches.":                                                                      "units = customary",
		"metric only from here, no inches":                                                                "units = metric",
		"let's pick up where we left off, open summer wall":                                               "open summer wall",
		"Six rails. No, five. Actually, back to six.":                                                     "rails = 6",
		"I said 2x6 rails, but let's have 2x8 rails after all.":                                           "rail size = 2x8",
		"fat blade, takes seven sixty-fourths, and I lose a half inch squaring up the end of every stick": "kerf = 7/64 in; trim = 1/2 in",
		"the playground drops two inches by the time you get to the right-hand post":                      "floor at right = -2 in",
		"what do I tell the bursar it'll cost":                                                            "ask cost",
		"the caretaker says the gap is 2":                                                                 "check gap = 2 in",
		"my stepdad's drawing has six rails":                                                              "check rails = 6",
		"they sell sixes, eights and tens":                                                                "stock = 72 in, 96 in, 120 in", "they have eights and sixes": "stock = 96 in, 72 in",
		"what wood work here": "ask options", "what wood fit": "ask options", "how wood it look with six rails": "what if rails = 6; ask drawing",
		"put twice the space under the bottom board that you got between the boards": "bottom gap = 2 * gap", "bad reading on bay 2 bottom, throw it out": "forget measured bay 2 bottom",
		// As if it had been typed right.
		"can you drow me a pictrue":                                   "ask drawing",
		"i want it as cheep as possble":                               "cheapest",
		"the groud on the other side of the wall is 26 inches lowwer": "drop = 26 in",
		"budgit is 310 and i want it as cheep as possble":             "budget = 310.00; cheapest",
		"wht if seven rials":                                          "what if rails = 7",
		// As it was.
		"set courtyard beside driveway and compare them": "compare courtyard, driveway", "Set annex side by side with courtyard so that I may see how they differ.": "compare annex, courtyard",
		"in 2x6 we have six twelve footers":                        "have 2x6 144 in x 6",
		"Right then, work it all out and let's hear what you get.": "ask layout",
		"how many boards go in bay 2":                              "ask bay 2 rails", "does any stretch between two posts exceed 66": "unclear",
	})
}
