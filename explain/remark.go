package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// remarks puts the keys of work lines into the few words that stand behind a sum. A key that is not here says nothing.
// The keys are listed where the solver makes them: telling.go, site_keys.go.
var remarks = map[string]string{
	"wood":                      "wood",
	"gaps":                      "gaps between",
	"underneath":                "left underneath",
	"left":                      "left for the gaps",
	"share":                     "each gap",
	"neighbor":                  "each gap",
	"bottom":                    "left under the bottom rail",
	"bays":                      "for the bays",
	"each bay":                  "each bay",
	"openings":                  "left open",
	"posts":                     "posts",
	"span":                      "between the end posts",
	"stiffeners":                "between stiffeners",
	"stiffener spacing":         "between stiffeners",
	"post height":               "the post",
	"spare":                     "to spare",
	"along":                     "along the wall, as measured",
	"rail to rail":              "each rail's top above the last",
	"closes each rail":          "less at each rail going up",
	"opens each rail":           "more at each rail going up",
	"pair of brackets":          "a pair of brackets",
	"width that counts":         "the width that counts",
	"play":                      "of play, the loosest",
	"play at each end":          "at each end",
	"stiffener to cut":          "a stiffener",
	"post to cut":               "the post's piece",
	"cap to cut":                "the board on top",
	"bracket hole":              "the bracket's top hole",
	"mark":                      "the bracket's top hole",
	"spacer errs":               "how far off the top rail ends with spacers alone",
	"out of one board":          "pieces, kerfs and trim",
	"two together":              "the two shortest, over the longest board",
	"boards to buy":             "boards to buy",
	"pieces and kerfs":          "pieces and kerfs",
	"spare share":               "spare, before rounding up",
	"brackets":                  "brackets",
	"screws":                    "screws",
	"bracket screws":            "screws for the brackets",
	"stiffener screws":          "screws for the stiffeners",
	"post bases":                "post bases",
	"post caps":                 "post caps",
	"as told":                   "as you said",
	"total":                     "in all",
	"left of the budget":        "left of the budget",
	"over budget":               "over the budget",
	"less what is at hand":      "still to buy",
	"charged in all":            "charged in all",
	"less the fees":             "less what the case's limits cost",
	"faces and ends":            "square inches, faces and ends",
	"all faces":                 "square inches in all",
	"square feet":               "square feet",
	"smooth wood least":         "gallons at the least, smooth wood",
	"smooth wood most":          "gallons at the most, smooth wood",
	"rough wood least":          "gallons at the least, rough wood",
	"rough wood most":           "gallons at the most, rough wood",
	"coverage told least":       "gallons",
	"base center":               "the base's center from the left post",
	"anchor reaches":            "how deep the anchor reaches",
	"hole stays in the slab":    "the hole stays in the slab",
	"hole comes out below":      "the hole would come out below",
	"two thirds of the slab":    "two thirds of the slab",
	"slab less 4":               "the slab less 4 inches",
	"deep enough a slab":        "deep enough a slab",
	"slab too thin":             "deeper than this slab allows",
	"slab that would do":        "a slab that would do",
	"least edge":                "the least to the slab's edge, from memory",
	"least spacing":             "the least between anchors, from memory",
	"far enough from the edge":  "far enough from the edge",
	"edge too near":             "nearer the edge than that",
	"edge for full hold":        "from the edge for the full hold",
	"hold near the edge":        "of the full hold, this near the edge",
	"came out":                  "what came out",
	"play with all cut to this": "of play, were all cut to this",
	"drift":                     "each set from the one below, all off the same way",
	"drift top":                 "where the top would be at worst",
	"gap at worst":              "the gap at worst, marked from the floor",
	"green loses":               "lost in drying",
	"dried face":                "the face, dried",
	"gap grows":                 "the gap, grown",
	"slip":                      "as it was reckoned",
	"posts between":             "posts that bays and openings take",
	"one more":                  "one rail more, nothing underneath",
	"even wall":                 "a wall with even gaps",
	"more gap":                  "each gap with one rail more",
	"screw stays inside":        "the screw stays inside",
	"left of the height":        "left of the height",
	"narrowest":                 "the opening at its narrowest",
	"nearer left":               "left for the gaps then",
	"nearer":                    "each gap then",
}

// remark is what a line is about, in a few words; where a figure comes from is told too.
func (v *voice) remark(w solver.Work) string {
	switch w.Note {
	case "gaps":
		if w.From == string(solver.BracketClearance) {
			return "the least the brackets leave between rails"
		}
		return v.gapsBetween(w, false)
	case "gaps and under":
		return v.gapsBetween(w, true)
	case "off the wish":
		return "off " + v.the(w.Of) + " you had in mind"
	case "left of the budget":
		if f, ok := v.fact("no price"); ok && len(f.Names) > 0 {
			return "left of the budget, by what has a price; " + plural(len(f.Names), "item has", "items have") + " none"
		}
	case "short of":
		return "short of " + v.figureOf(w.From+" in") // a published width is not rounded
	case "guard high":
		return "the wall, against the least of a guard"
	case "ball stopped":
		if w.Of == string(solver.BottomGap) {
			return "underneath, against the ball"
		}
		return "the widest gap, against the ball"
	case "closes", "opens":
		return w.Note + v.over(w)
	case "stiffeners":
		return v.stiffenerRemark(w)
	case "one fewer":
		return v.oneFewer(w)
	case "below":
		if n, err := strconv.Atoi(w.From); err == nil {
			return "left with " + plural(n, "rail", "rails")
		}
	case "follows":
		return v.the(w.Of)
	case "bays":
		if l := v.a.Layout; l != nil && l.Along != nil && len(l.Bays) == 1 {
			return "the bay"
		}
	case "less what is at hand":
		if w.Of != "" {
			return itemName(w.Of, 2) + " " + remarks[w.Note]
		}
	case "sum or more":
		if w.Of == string(solver.Span) {
			return "or more, with more bays"
		}
		return "or more, with more rails"
	case "sum":
		if strings.HasPrefix(w.Of, string(solver.WallHeight)) {
			return "the wall"
		}
		if w.Of == string(solver.Span) {
			return "the span"
		}
	}
	return remarks[w.Note]
}

// gapsBetween tells how many gaps there are: "four between, one underneath".
func (v *voice) gapsBetween(w solver.Work, under bool) string {
	if w.Expr.Op != "*" {
		return remarks["gaps"]
	}
	n, ok := w.Expr.Args[0].Value.Int64()
	if !ok || n < 1 {
		return remarks["gaps"]
	}
	if !under {
		return plural(int(n), "gap", "gaps") + " between"
	}
	if n == 1 {
		return "the one underneath"
	}
	return plural(int(n)-1, "gap", "gaps") + " between, one underneath"
}

// over tells the height over which a bay closes or opens.
func (v *voice) over(w solver.Work) string {
	for _, f := range v.facts(w.Note) {
		if len(f.Nums) == 3 && f.Nums[1].Eq(w.Expr.Value) {
			return " over " + v.length(f.Nums[2])
		}
	}
	return ""
}

func (v *voice) stiffenerRemark(w solver.Work) string {
	s := remarks["stiffeners"]
	if strings.HasPrefix(w.From, "bay ") && v.a.Layout != nil && v.a.Layout.Along != nil && len(v.a.Layout.Bays) > 1 {
		return s + ", " + w.From
	}
	return s
}

// oneFewer tells of a spacing with one stiffener less that it is too far.
func (v *voice) oneFewer(w solver.Work) string {
	with := "with one fewer; "
	if e := w.Expr.Args[0]; e.Op == "/" && e.Args[1].Value.Eq(exact.Int(1)) {
		with = "with none; "
	}
	return with + v.length(w.Expr.Args[1].Value) + " is allowed"
}

// standsAgainst words the far side of a comparison that cannot be: "50-1/2, and the wall is" 50.
func (v *voice) standsAgainst(w solver.Work) string {
	switch w.Note {
	case "no room for a rail", "no post left", "no stiffener left":
		return "the tape's smallest mark is"
	case "screw stays inside":
		return "stiffener and rail together are"
	case "screw has a length":
		return ""
	case "within budget":
		return "the budget is"
	case "longer than any board":
		return "the longest board is"
	case "boards missing":
		return "there are"
	}
	return ""
}

// shown writes a line for the eye: a comparison that only shows why not is told by its left side, its remark the rest.
func (v *voice) shown(w solver.Work) string {
	switch w.Note {
	case "one fewer":
		if e := w.Expr.Args[0]; e.Op == "/" && e.Args[1].Value.Eq(exact.Int(1)) {
			return v.amount(e.Args[0])
		}
		return v.side(w.Expr.Args[0])
	case "fits the board", "within budget", "boxes hold enough":
		if w.Equals == "true" {
			return ""
		}
	}
	if single(w.Expr).Op == "" {
		return ""
	}
	return v.sum(w)
}
