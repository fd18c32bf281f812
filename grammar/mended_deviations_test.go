package grammar

import (
	"testing"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// By how much the plan is off asks to change it the other way; what a piece measures, what others wanted and a judgment without a figure set nothing.
func TestDeviations(t *testing.T) {
	for line, want := range map[string]string{
		"the gap's a quarter inch more than I wanted":                               "gap -= 1/4 in",
		"the gap is an eighth over what I asked for":                                "gap -= 1/8 in",
		"the gap is a quarter inch tighter than I'd like":                           "gap += 1/4 in",
		"hey, the gap's an eighth too tight":                                        "gap += 1/8 in",
		"gap's 5 mm too wide":                                                       "gap -= 5 mm",
		"the gap on your drawing is a quarter inch too wide":                        "gap -= 1/4 in",
		"you've left a quarter inch too much room between the boards":               "gap -= 1/4 in",
		"that's a quarter inch more gap than I wanted":                              "gap -= 1/4 in",
		"the rails are a quarter inch too far apart":                                "gap -= 1/4 in",
		"the boards are an eighth too close together":                               "gap += 1/8 in",
		"the gap under the bottom rail is an inch too big":                          "bottom gap -= 1 in",
		"the bottom board sits an inch too close to the floor":                      "bottom gap += 1 in",
		"the wall's come out an inch and a half too high":                           "wall height -= 1-1/2 in",
		"the wall is higher than I wanted by two inches":                            "wall height -= 2 in",
		"the wall is two inches shorter than it's supposed to be":                   "wall height += 2 in",
		"the opening's two inches too narrow":                                       "opening += 2 in",
		"our opening ended up three inches wider than we asked for":                 "opening -= 3 in",
		"the doorway is two inches short of what I asked for":                       "opening += 2 in",
		"the opening is six inches too far to the left":                             "opening from left += 6 in",
		"the doorway is four inches too close to the right post":                    "opening from left -= 4 in",
		"the stiffeners are two inches too far apart":                               "stiffener spacing -= 2 in",
		"the post height is an inch over what it should be":                         "post height -= 1 in",
		"each bay is an inch wider than I wanted":                                   "bay -= 1 in",
		"you've got one rail too many in there":                                     "rails -= 1",
		"there are three posts too few":                                             "added posts += 3",
		"you've got two more boards than I asked for":                               "rails -= 2",
		"the plan has one stiffener too few":                                        "stiffeners += 1",
		"that's two bays fewer than I wanted":                                       "bays += 2",
		"the gap's a quarter inch too wide and the opening's two inches too narrow": "gap -= 1/4 in; opening += 2 in",
		"the gap's a quarter inch too wide, can you fix that?":                      "gap -= 1/4 in",
		"the opening's two inches too narrow, make it 34":                           "opening = 34 in",
		"the opening's two inches too narrow, make it that much wider":              "opening += 2 in",
		"the gap's a quarter inch too wide, so take an eighth off":                  "gap -= 1/8 in",
		"this wall is two inches too tall":                                          "wall height -= 2 in",
		"I ended up with two more rails than I wanted":                              "rails -= 2",
		"I'm afraid the wall is two inches too low":                                 "wall height += 2 in",
		"the rails are 1/8 narrower than I said":                                    "rail face -= 1/8 in",
		"give me two boards more than I asked for":                                  "rails += 2",
		"let me have two boards more than I need, just in case":                     "spare = 2",
		"is seven rails too many":                                                   "check rails = 7",
	} {
		if r := Read(line, act.Context{}); parse.Normal(r.Acts) != want {
			t.Errorf("%q reads %q, want %q", line, parse.Normal(r.Acts), want)
		}
	}
	for _, line := range []string{
		"the gap is too wide", "the opening's too narrow for me", "the gap is a quarter inch over", "the wall is a quarter inch short", "the wall is a quarter inch too wide",
		"this post is 2 in too short", "rail 3 is a quarter inch too short", "the rails are a quarter inch too long", "bay 1 is a quarter inch too wide", "the gap measures a quarter inch too wide",
		"I measured the gap and it's a quarter inch too wide", "I cut one a quarter inch too short", "the span is two inches longer than it should be",
		"Kevin says the gap is a quarter inch too wide", "the gap is a quarter inch wider than my wife wanted", "the gap is a quarter inch more than he asked for",
		"is the gap a quarter inch more than I wanted", "if the gap is a quarter inch more than I wanted, what then", "isn't the gap a quarter inch too wide",
		"the gap's not a quarter inch too wide", "the gap was a quarter inch too wide", "the gap is half an inch more than I wanted, but that's fine",
		"that's fifty dollars more than I wanted to spend", "the bay is a quarter inch more than I wanted", "we're two boards over", "that's three posts over", "we're a board short", "we're two boards too few", "the door is two inches too wide", "I ended up with two more boards than I wanted", "you've got two boards too many on the shopping list",
	} {
		if r := Read(line, act.Context{}); r.Ask == nil {
			t.Errorf("%q sets %q, and should ask", line, parse.Normal(r.Acts))
		}
	}
}
