package explain

import (
	"strings"

	"saywright/solver"
)

// remarks puts the keys of work lines into the few words that stand behind a sum. A key that is not here says nothing.
var remarks = map[string]string{
	"wood":               "wood",
	"gaps":               "gaps between",
	"gaps and under":     "gaps, the one underneath among them",
	"underneath":         "left underneath",
	"bays":               "bays",
	"openings":           "left open",
	"posts":              "posts",
	"sum or more":        "or more",
	"wall":               "the wall",
	"bay":                "the bay",
	"post height":        "how high the post stands",
	"pair of brackets":   "a pair of brackets",
	"width that counts":  "the width that counts",
	"rail to rail":       "from one rail to the next",
	"closes each rail":   "less from each rail to the next",
	"opens each rail":    "more from each rail to the next",
	"play":               "of play, the loosest",
	"play at each end":   "at each end",
	"stiffener to cut":   "a stiffener",
	"post to cut":        "the post's piece",
	"cap to cut":         "the cap",
	"stiffener spacing":  "from one stiffener to the next",
	"brackets":           "brackets",
	"screws":             "screws",
	"bracket screws":     "screws for the brackets",
	"stiffener screws":   "screws for the stiffeners",
	"post bases":         "post bases",
	"post caps":          "post caps",
	"screw stays inside": "the screw stays inside the wood",
	"bracket hole":       "the bracket's top hole",
	"spacer errs":        "how far the top rail is off with spacers alone",
	"along":              "along the wall",
	"as told":            "as you said",
}

// remark is what a line is about, in a few words; where a figure comes from is told too.
func (v *voice) remark(w solver.Work) string {
	switch {
	case w.Note == "gaps" && w.From == string(solver.BracketClearance):
		return "the least the brackets leave between rails"
	case w.Note == "closes":
		return "closes over its height"
	case w.Note == "opens":
		return "opens over its height"
	}
	return remarks[w.Note]
}

// against words the two sides of a comparison that cannot be: "50-1/2, and the wall is 50". where names both.
func (v *voice) standsAgainst(w solver.Work) string {
	name := v.the(w.Of)
	switch {
	case w.Of == "" || w.Of == "together" || strings.HasPrefix(w.Of, "the rest"):
		return ""
	case w.Note == "no room for a rail" || w.Note == "no post left":
		return "the tape's smallest mark is"
	case w.Note == "screw stays inside":
		return "what it goes through comes to"
	}
	return name + " is"
}
