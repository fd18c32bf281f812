package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// TestParticles: a little word behind a verb ("lay down", "kick out", "come around to") is a direction only beside a verb that moves
// values that way; the rest is read as what it means, or asked back.
func TestParticles(t *testing.T) {
	for line, want := range map[string]string{
		"lay down six rails":                              "rails = 6",
		"bolt down five rails":                            "rails = 5",
		"I'm down with six rails":                         "rails = 6",
		"we came down on the side of six rails":           "rails = 6",
		"I finally came around to six rails":              "rails = 6",
		"kick out one rail":                               "rails -= 1",
		"knock off one rail":                              "rails -= 1",
		"leave out one rail":                              "rails -= 1",
		"take away another rail":                          "rails -= 1",
		"take two rails off":                              "rails -= 2",
		"stay away from gaps over three inches":           "gap <= 3 in",
		"steer clear of gaps above three inches":          "gap <= 3 in",
		"gaps over three inches are a no-no":              "gap <= 3 in",
		"anything over a three inch gap is off the table": "gap <= 3 in",
		"the gap can go down to two inches":               "gap >= 2 in",
		"the gap may get down to two inches":              "gap >= 2 in",
		"the gap may run as wide as three":                "gap <= 3 in",
		"let the wall go as high as 48":                   "wall height <= 48 in",
		"lower the gap down to two inches":                "gap = 2 in",
		"take in the gap a quarter inch":                  "gap -= 1/4 in",
		"bring the gap in a quarter inch":                 "gap -= 1/4 in",
		"notch the gap up a quarter inch":                 "gap += 1/4 in",
		"crank the gap down a quarter inch":               "gap -= 1/4 in",
		"take the opening out to 40 inches":               "opening = 40 in",
		"push the opening out to 40 inches":               "opening = 40 in",
		"last but not least the gap is two inches":        "gap = 2 in",
		"let's cap it off at 400 dollars":                 "budget = 400.00",
		"I can't go over 400 dollars":                     "budget = 400.00",
		"knock forty dollars off the budget":              "budget -= 40.00",
		"pull up the cuts":                                "ask cuts",
		"call up the marks":                               "ask marks",
		"my wife's holding out for a 36 inch opening":     "opening = 36 in",
		"throw out two more rails":                        "rails -= 2",
		"kick two rails out":                              "rails -= 2",
		"toss out two bays":                               "bays -= 2",
		"bring in another rail":                           "rails += 1",
		"they ran out of tens":                            "stock -= 120 in",
		"take three eighths off every gap":                "gap -= 3/8 in",
		"cheat the gap up three sixteenths":               "gap += 3/16 in",
	} {
		if got := parse.Normal(Read(line, act.Context{}).Acts); got != want {
			t.Errorf("%q is heard as %q, want %q", line, got, want)
		}
	}
	for _, line := range []string{
		"toss around six rails", "I would not go as far as a three inch gap",
		"toss on six rails", "sit down with six rails", "we went down with six rails", "talk down six rails",
		"look up six rails", "turn in six rails", "make off with six rails", "put off six rails", "work off six rails",
		"I can't fork over 400 dollars", "I'm not prepared to part with 400 dollars", "call porch back up", "pick porch back up",
		"put porch back up", "bring out six rails", "wind back the cuts", "they brought in tens", "do seven rails come out",
		"do seven rails hold", "make the gap what it should be", "keep the gap what it ought to be",
		"do it like my dad did", "do not bother with the stiffeners yet", "centimeters or millimeters", "see the wall compared with the fence",
		"the gap can hang down to two inches", "let the wall sit as high as 48", "wind in the gap a quarter inch", "talk the gap off a quarter inch",
		"bring up two more bays", "put two bays off", "put two rails down", "toss two rails up", "bring two rails up", "pick two bays up",
		"kick up two more bays", "lay away two more rails", "the gap needn't be over two", "bring down two rails",
		"gaps over three inches are trouble", "gaps under two inches get tight", "six rails is a no-no", "two inch gaps are off the table",
		"let the gap open up to three", "I'm up to six rails", "we ran into six rails", "set aside six rails", "we got over six rails",
		"see the gap compared with the opening",
		"talk the opening out to 40 inches", "lift away six rails", "hang over six rails with six rails",
	} {
		if r := Read(line, act.Context{}); r.Ask == nil && len(r.Acts) > 0 {
			t.Errorf("%q is heard as %q, and should be asked back", line, parse.Normal(r.Acts))
		}
	}
}
