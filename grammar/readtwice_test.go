package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// What a whole line lost or turned of its clauses is given to choose from; what hangs together is not asked about.
func TestReadTwice(t *testing.T) {
	for said, choice := range map[string]string{
		"make me a buy list and every bay gets two upright stiffeners":               "",
		"the merchant has 4.2 m lengths as well, and stiffeners from 45 by 19 stuff": "stock += 4200 mm; stiffener size = 45x19",
		"the timber merchant has 3 m and 4.2 m lengths and gap 2-1/2":                "stock = 3000 mm, 4200 mm; gap = 2-1/2 in",
		"I'd like a comparison of riverside and sawmill, and overall 13 feet":        "",
		"what lumber are the posts and slab pitches an eighth to the foot":           "ask post size; floor falls 1/8 in per 12 in",
		"the end posts are 144 apart outside to outside, wall 42":                    "",
	} {
		q := Read(said, act.Context{}).Ask
		require.NotNil(t, q, said)
		if choice != "" {
			require.Contains(t, q.Choices, choice, said)
		}
	}
	for said, want := range map[string]string{
		"his plan has six rails and a gap of 3":                        "check rails = 6, gap = 3 in",
		"verify: wall 48, six rails, gap 2-1/2":                        "check wall height = 48 in, rails = 6, gap = 2-1/2 in",
		"yeah go ahead and stack five boards per bay":                  "rails = 5",
		"never mind the cost, what do i do first":                      "ask steps",
		"east wall: six rails, gap 2":                                  "east wall: rails = 6; east wall: gap = 2 in",
		"how many rails, gap 2-1/2":                                    "what if gap = 2-1/2 in; ask rails",
		"end posts are 4x4, 12 ft 3 1/2 in on center":                  "post size = 4x4; centers = 147-1/2 in",
		"the wall comes up to 1.05 m and drop is half the wall height": "wall height = 1050 mm; drop = 1/2 * wall height",
	} {
		require.Equal(t, want, strings.Join(heardForms(said), "; "), said)
	}
}

// What joins two clauses turns neither: who sells, takes back, tries or claims does so for his own clause only.
func TestJoinersTurnNothing(t *testing.T) {
	for _, joiner := range []string{" plus ", ", plus ", ", also ", " and ", ", "} {
		for _, said := range []string{"the lumberyard has tens" + strings.Replace(joiner, " and ", ", and also ", 1) + "two rails in each bay", "drop the limit on the gap" + joiner + "keep the gap under 4", "my neighbor has a 3 inch gap" + joiner + "brackets are 3.49 each",
			"the clerk says five rails" + joiner + "widen the opening by two inches"} {
			for _, form := range heardForms(said) {
				require.NotContains(t, []string{"check stock = 120 in, rails = 2", "forget gap < 4 in", "check gap = 3 in, cost = 3.49", "check rails = 5, opening += 2 in"}, form, said)
			}
		}
	}
	for said, want := range map[string]string{
		"compare front porch and back porch and shed":                "compare front porch, back porch and shed",
		"what if the gap is 3, also the ground drops 20 inches":      "what if gap = 3 in, drop = 20 in",
		"why six rails plus make all the bays the same":              "why rails; equal bays",
		"I've got four 2x6 tens plus they carry eights and tens":     "have 2x6 120 in x 4; stock = 96 in, 120 in",
		"the yard has twelves, also take off one rail":               "stock = 144 in; rails -= 1",
		"undo that, plus stay with 2x6":                              "undo; rail size = 2x6",
		"the wall is 48 but can't have a gap over 3":                 "wall height = 48 in; gap <= 3 in",
		"can a kid get through it, plus I don't want any stiffeners": "ask cautions; stiffeners = 0",
		"save this as porch also show me the drawing":                "save porch; ask drawing",
	} {
		require.Equal(t, want, strings.Join(heardForms(said), "; "), said)
	}
	for _, said := range []string{"gap 2 plus tape width", "wall 40 plus 3 rails higher", "three inches off the floor, also gap under 4"} {
		require.NotNil(t, Read(said, act.Context{}).Ask, said)
	}
}

// A "plus", an "also" and a "then" between clauses, values for two, verbs that are names elsewhere.
func TestClausesKeepApart(t *testing.T) {
	for said, want := range map[string]string{
		"let's go 4'2\" on the height plus how deep do I drill":                       "wall height = 50 in; ask anchors",
		"blade takes 3/32 each cut plus post bases are running me 21.75 each":         "kerf = 3/32 in; price post base = 21.75",
		"tape says 147 and 5/8 between the posts plus may I see the drawing":          "span = 147-5/8 in; ask drawing",
		"stiffener spacing at most 32 plus 5 rails max":                               "stiffener spacing <= 32 in; rails <= 5",
		"the wall is to be 0.95 m tall plus 4.2 m boards in 90x45 come to 21.60 each": "wall height = 950 mm; price 90x45 4200 mm = 21.60",
		"gap plus 3 mm":                 "gap += 3 mm",
		"redo, also floor's dead level": "redo; floor at right = 0 in",
		"only tens and fourteens left on the rack, also distance between the post faces is 12 foot 9 and a quarter": "stock = 120 in, 168 in; span = 153-1/4 in",
		"wall 48, can't have a bay run over seven and a half foot":                                                  "wall height = 48 in; bay <= 90 in",
		"he says the gap is 3 and so is the bottom gap":                                                             "check gap = 3 in, bottom gap = 3 in",
		"the gap is 3 and so is the bottom gap":                                                                     "gap = 3 in; bottom gap = 3 in",
		"gap 3, bottom gap as well":                                                                                 "gap = 3 in; bottom gap = 3 in",
		"gap 2, no, 3, oh no, let's stay with 2":                                                                    "gap = 2 in",
		"I'd like 2x6 rails, no, 2x4, oh no, let's stay with 2x6.":                                                  "rail size = 2x6",
		"compare nursery with patio and then slats about 45 mm apart":                                               "compare nursery, patio; gap ~ 45 mm",
		"bay two, third rail from the bottom, reads 1588 mm":                                                        "measured bay 2 rail 3 = 1588 mm",
	} {
		require.Equal(t, want, strings.Join(heardForms(said), "; "), said)
	}
	for said, not := range map[string]string{
		"raise the wall by two, then lower the gap":                   "bottom gap += 2 in",
		"wall up two and then narrow the gap":                         "gap -= 2 in",
		"the place you walk through i'd hate to see that go under 34": "opening = 34 in",
		"lower the gap": "bottom gap = 2 in",
	} {
		r := Read(said, act.Context{})
		require.NotNil(t, r.Ask, said)
		require.NotContains(t, heardForms(said), not, said)
	}
}
