package hear

import (
	"strings"

	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// InRoom are things about the place that are opened, kept and fetched as plans are.
var InRoom = scan.WordSet("window windows door doors box boxes bag bags can cans bottle bottles jar lid drawer drawers toolbox tailgate hood trunk truck crate package packet pack tube gate curtain curtains blinds question questions mind mouth eyes throttle vise clamp clamps beer")

// DaysOfWeek are no misspellings of anything.
var DaysOfWeek = scan.WordSet("monday tuesday wednesday thursday friday saturday sunday")

// Wishing are verbs that wish: what they wish of the wall is never left out.
var Wishing = scan.WordSet("want wants need needs prefer use put set make keep have")

// WordRows parts rows, a line each, into their words.
func WordRows(rows string) (out [][]string) {
	for _, row := range strings.Split(rows, "\n") {
		out = append(out, strings.Fields(row))
	}
	return out
}

// TakeBackVerb are verbs of taking back.
var TakeBackVerb = scan.WordSet(paraphrase.TakebackWords)
