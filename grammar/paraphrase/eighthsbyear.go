package paraphrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// leadsCount: "to openings the first on the left". At the beginning of a line nothing goes "to openings".
func leadsCount(in []scan.Atom, i int) bool {
	noun := chunk.TextAt(in, i+1)
	return i == 0 && (in[i].Text == "to" || in[i].Text == "too") && measure.CountNouns[noun] && strings.HasSuffix(noun, "s")
}

// eighthsMeant reports whether "eights" behind an odd figure is part of an inch: "sixty six and five eights".
func eighthsMeant(in []scan.Atom, i int) bool {
	if i < 1 {
		return false
	}
	switch in[i-1].Text {
	case "three", "five", "seven", "3", "5", "7":
	default:
		return false
	}
	next := chunk.TextAt(in, i+1)
	if next == "inch" || next == "inches" || next == "of" && (chunk.TextAt(in, i+2) == "an" || chunk.TextAt(in, i+2) == "inch") {
		return true
	}
	if i < 3 || in[i-2].Text != "and" {
		return false
	}
	before := in[i-3]
	return (chunk.SpelledNumber(before.Text) || before.Kind == scan.Digits || soundAlike[before.Text] != "") && !byLumber(next)
}

// byLumber reports whether a word behind "eights" makes lumber of them.
func byLumber(w string) bool {
	return w == "footers" || w == "foot" || w == "footer" || w == "and" || measure.CountNouns[w]
}
