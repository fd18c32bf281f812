package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Notes written short, and what only looks like them.
func TestShortenedNotes(t *testing.T) {
	for said, want := range map[string]string{
		"opg 36 lt side":              "opening = 36 in; opening side = left",
		"opg 40 @ lt":                 "opening = 40 in; opening side = left",
		"door 36 L":                   "opening = 36 in; opening side = left",
		"(2) opgs, 32 ea":             "openings = 2; opening = 32 in",
		"wh 46 -- scratch, 47":        "wall height = 47 in",
		"gap 2 scratch 3":             "gap = 3 in",
		"gap 2-1/2 (was 2-1/4)":       "gap = 2-1/2 in",
		"wh 46->45":                   "wall height = 45 in",
		"gap 2-1/4 +/- a hair":        "gap ~ 2-1/4 in",
		"opg +4, recalc":              "opening += 4 in; ask layout",
		"recalc gap":                  "ask gap",
		"pls redo w 2x8":              "what if rail size = 2x8",
		"whatif 7 rls":                "what if rails = 7",
		"if 7 rls, gap = ?":           "what if rails = 7; ask gap",
		"what if gap 2, rls?":         "what if gap = 2 in; ask rails",
		"sq ends: 3/8 ea bd":          "trim = 3/8 in",
		"allow 1/2 per bd to sq up":   "trim = 1/2 in",
		"kerf eighth":                 "kerf = 1/8 in",
		"stk 8/10/12":                 "stock = 96 in, 120 in, 144 in",
		"12/16 ft stock":              "stock = 144 in, 192 in",
		"yd has 8s, 10s + 12s":        "stock = 96 in, 120 in, 144 in",
		"brkts 3.15/ea, caps 4.50/ea": "price bracket = 3.15; price post cap = 4.50",
		"screws nine fifty a hundred": "price screws 100 = 9.50",
		"twelves ten ninety, sixteens fifteen thirty-five": "price rails 144 in = 10.90; price rails 192 in = 15.35",
		"onhand: 4 - 2x6x10":         "have 2x6 120 in x 4",
		"(5) 2x6x10 in shop":         "have 2x6 120 in x 5",
		"2x8 rails x4":               "rail size = 2x8; rails = 4",
		"4x 2x8 rls":                 "rails = 4; rail size = 2x8",
		"bgt 275 max":                "budget = 275.00",
		"opg nlt 32, nmt 40":         "opening >= 32 in; opening <= 40 in",
		"opg 2x gap min":             "opening >= 2 * gap",
		"gap no bigger'n 3":          "gap <= 3 in",
		"cut lgths + mat'ls":         "ask cuts; ask shopping",
		"mat'ls + $$":                "ask shopping; ask cost",
		"fewest posts, then $$?":     "fewest posts; ask cost",
		"to nearest 1/32":            "tape = 1/32 in",
		"rls 1/8 short of brkts":     "fit = 1/8 in",
		"R end 5/8 hi":               "floor at right = 5/8 in",
		"CLR. SPAN 12'-0\"":          "span = 144 in",
		"OPENING: 36\" MIN. CLEAR":   "opening >= 36 in",
		"gap 2 min. Wall 46.":        "gap >= 2 in; wall height = 46 in",
		"span 144 clr. opening 36":   "span = 144 in; opening = 36 in",
		"POSTS: 4X4 TYP.":            "post size = 4x4",
		"TOP OF RAIL @ 44\" AFF":     "wall height = 44 in",
		"hght 46 spcng 2":            "wall height = 46 in; gap = 2 in",
		"bttm bd 3 off grnd":         "bottom gap = 3 in",
		"height 46 => 44":            "wall height = 44 in",
		"height 46 should read 44":   "wall height = 44 in",
		"gap 2 - I mean 2-1/4":       "gap = 2-1/4 in",
		"gap 2 (meant 2-1/4)":        "gap = 2-1/4 in",
		"opening 3 ft plus":          "opening >= 36 in",
		"new gap w/ 7 bds?":          "what if rails = 7; ask gap",
		"gap if no stiffs?":          "what if stiffeners = 0; ask gap",
		"total if no stiffs?":        "what if stiffeners = 0; ask cost",
		"cut list, 1/8 kerf":         "kerf = 1/8 in; ask cuts",
		"posts - why 2":              "why added posts",
		"save it - patio":            "save patio",
		"gap / 2":                    "gap *= 1/2",
		"2x gap":                     "gap *= 2",
		"2x6-16 = $15.35":            "price 2x6 192 in = 15.35",
		"brkt ear 5/8, thk 1/8":      "bracket ear = 5/8 in; bracket thickness = 1/8 in",
		"btm 2-1/4, gaps 2-1/4":      "bottom gap = 2-1/4 in; gap = 2-1/4 in",
		"post = wh + 2":              "post height = wall height + 2 in",
		"architect: 6 rails. right?": "check rails = 6",
		"$ limit 325":                "budget = 325.00",
		"yd quote 388 - right?":      "check cost = 388.00",
		"6 rls = what gap":           "what if rails = 6; ask gap",
		"flr drops 3/4 L-R":          "floor at right = -3/4 in",
		"11'-8\" inside posts":       "span = 140 in",
		"avail lgths 8, 12, 16":      "stock = 96 in, 144 in, 192 in",
		"yd: 10s, 12s":               "stock = 120 in, 144 in",
		"piece list":                 "ask cuts",
		"wall 45-1/2 h, 5 bd":        "wall height = 45-1/2 in; rails = 5",
		"door: 36, lt":               "opening = 36 in; opening side = left",
		"redo w/o stiffs":            "what if stiffeners = 0",
		"if opg 40 then gap?":        "what if opening = 40 in; ask gap",
		"7 bds - gap?":               "what if rails = 7; ask gap",
		"arch dwg gap 2-1/8, ok?":    "check gap = 2-1/8 in",
		"no 12s till fri":            "stock -= 144 in",
		"3 - 2x6x12 left":            "have 2x6 144 in x 3",
		// What people say who think in millimeters, who teach and who learn.
		"six boards, each 140 wide and 32 thick":                   "rails = 6; rail size = 32x140",
		"110 cm from the floor to the top":                         "wall height = 1100 mm",
		"it's to end 1.02 m over the paving":                       "wall height = 1020 mm",
		"3.6 m costs 14.80 and 4.8 m 19.90":                        "price rails 3600 mm = 14.80; price rails 4800 mm = 19.90",
		"door gap 900 mm on the left":                              "opening = 900 mm; opening side = left",
		"the outer posts leave 3.45 m clear":                       "span = 3450 mm",
		"close the slats up by 3 mm":                               "gap -= 3 mm",
		"how would it come out with 70 mm between the boards":      "what if gap = 70 mm",
		"feet and inches again, if you don't mind":                 "units = customary",
		"they have 5.4 m lengths again":                            "stock += 5400 mm",
		"the yard has 3, 3.6 and 4.2 m":                            "stock = 3000 mm, 3600 mm, 4200 mm",
		"a bracket is 2,95":                                        "price bracket = 2.95",
		"the added post ends at 1.15 m":                            "post height = 1150 mm",
		"set the bottom gap to half the gap":                       "bottom gap = 1/2 * gap",
		"set the bottom gap to twice the gap":                      "bottom gap = 2 * gap",
		"set the floor-to-bottom-board space to half the gap":      "bottom gap = 1/2 * gap",
		"why must the added post be as tall as that?":              "why post height",
		"which counts of rails work, and why not five?":            "ask options; why not rails = 5",
		"explain to us, step by step, how the opening is found":    "teach opening",
		"the rule for today: the doorway is at least 36":           "opening >= 36 in",
		"the smallest mark on our rulers is a sixteenth":           "tape = 1/16 in",
		"no slat closer than 40 mm to the next":                    "gap >= 40 mm",
		"how does that work out with 6 rails and a 2 inch gap now": "what if rails = 6, gap = 2 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
	for _, said := range []string{
		"opening lt 36",              // less than, or left?
		"sq ft of wall",              // an area
		"stock 1/2/26",               // a date
		"drop 8/12/16",               // no lengths on sale
		"$5 or $$?",                  // of two
		"close the slats up",         // by how much?
		"the right side up",          // no floor
		"the rule for today: 3 kids", // nothing of the wall
		"scratch 36",                 // of what?
		"underside 60",               // of what?
		"twelves ten, sixteens fifteen",
	} {
		require.Empty(t, Read(said, act.Context{}).Acts, said)
	}
	for said, want := range map[string]string{
		"gap 2, opening 36, scratch 36": "gap = 2 in; opening = 36 in; forget opening",
		"opening > 32":                  "opening > 32 in",
		"gap 8/10":                      "gap = 4/5 in",
		"close the opening by 2":        "opening -= 2 in",
		"stock twelves fourteens":       "stock = 144 in, 168 in",
		"set the gap to half":           "gap = 1/2 in",
	} {
		require.Equal(t, want, parse.Normal(Read(said, act.Context{}).Acts), said)
	}
}
