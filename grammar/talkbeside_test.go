package grammar

import "testing"

// Who is spoken to, what leads up to a wish, where money lies and from when boards are says nothing of the wall. Plain English, no source.
func TestTalkBeside(t *testing.T) {
	heardAs(t, map[string]string{
		"gap 2, dad":                                     "gap = 2 in",
		"Dad, make the gap 2":                            "gap = 2 in",
		"gap two and a half, professor":                  "gap = 2-1/2 in",
		"Sarge, how many rails":                          "ask rails",
		"how many rails, doc":                            "ask rails",
		"gap 2, ma'am":                                   "gap = 2 in",
		"two rails, neighbor":                            "rails = 2",
		"I want, professor, five rails":                  "rails = 5",
		"brackets, boss, are 3.10 each":                  "price bracket = 3.10",
		"Darling. What's the gap?":                       "ask gap",
		"double the gap, darling, it looks like a block": "gap *= 2",
		"gap 2, sorry, love, gap 3":                      "gap = 3 in",
		"save it as dad, darling":                        "save dad",
		"For the sightlines the wall has to be thirty-nine and a half inches high.":                 "wall height = 39-1/2 in",
		"For the audience the wall has to be 36 high.":                                              "wall height = 36 in",
		"To please the missus make the wall 40 high.":                                               "wall height = 40 in",
		"Give me a rhythm: six slats, two and a quarter between them.":                              "rails = 6; gap = 2-1/4 in",
		"My plan of attack: six rails, gap two.":                                                    "rails = 6; gap = 2 in",
		"Here's my thinking: five rails, gap three.":                                                "rails = 5; gap = 3 in",
		"There's three hundred and twenty dollars in the biscuit tin and that's all I can spend.":   "budget = 320.00",
		"I have six 2x4x10 from when my brother redid his kitchen.":                                 "have 2x4 120 in x 6",
		"I've got nine eight-foot two-by-sixes in the cellar already, from when we did the stairs.": "have 2x6 96 in x 9",
		"so the gap, what, two and a half... no, hm, two and five-eighths.":                         "gap = 2-5/8 in",
		"posts... 4x4":                        "post size = 4x4",
		"Okay, posts, posts... four by fours": "post size = 4x4",
		"Not six rails. Five.":                "rails = 5",
		"Not a 2 inch gap. Make it 3.":        "gap = 3 in",
		"draw me a little picture of it":      "ask drawing",
		"The wall about forty-two tall, give or take, I'm not fussy tonight.": "wall height ~ 42 in",
		"Quay's thirty inches down on the far side of the wall.":              "drop = 30 in",
		// Spoken of, and not to.
		"Dad, who is a joiner, says the gap is 2": "check gap = 2 in",
		"his idea: six rails":                     "check rails = 6",
		"the plan: six rails":                     "check rails = 6",
		// Asked back.
		"the boss, dad, says 44":              "unclear",
		"my dad, god bless him, wants 44":     "unclear",
		"five rails, my dad, six":             "unclear",
		"the gap is two, inspector":           "unclear",
		"For the handrail, 42 high":           "unclear",
		"For the old wall the gap was 3.":     "unclear",
		"for the prototype the gap is 3":      "unclear",
		"for the sample panel, gap 3":         "unclear",
		"not five rails. I want six brackets": "unclear",
		"five rails, kids, dogs and cats":     "unclear",
	})
}

// What a part is like to look at says nothing of its size or number, where it does not judge. Plain English, no source.
func TestAdorned(t *testing.T) {
	heardAs(t, map[string]string{
		"make the stupid gap two and a half": "gap = 2-1/2 in", "how many blasted rails": "ask rails", "what is the infernal gap": "ask gap", "the sturdy wall is 44 high": "wall height = 44 in",
		"put in two cursed stiffeners": "stiffeners = 2", "I want six creaky rails": "rails = 6", "how many pine rails": "ask rails", "make a beautiful opening of 36": "opening = 36 in",
		"the cedar rails are 2x6 and the pine posts 4x4": "rail size = 2x6; post size = 4x4", "put the dumb opening on the left": "opening side = left", "how big is the darn gap": "ask gap",
		"cedar 2x6 12 ft 14.50": "price 2x6 144 in = 14.50", "is the sturdy wall 44": "check wall height = 44 in",
		// It judges, or tells which is meant.
		"two inches is a silly gap": "unclear", "is two inches a stupid gap": "unclear", "no silly gap please": "unclear", "that makes a silly gap": "unclear", "the wonky wall is 44 high": "unclear",
		"I want six proposed rails": "unclear", "the required opening is 36": "unclear",
	})
}
