package grammar

import "strings"

// leadsCount: "to openings the first on the left". At the beginning of a line nothing goes "to openings".
func leadsCount(in []atom, i int) bool {
	noun := textAt(in, i+1)
	return i == 0 && (in[i].text == "to" || in[i].text == "too") && countNouns[noun] && strings.HasSuffix(noun, "s")
}

// eighthsMeant reports whether "eights" behind an odd figure is part of an inch: "sixty six and five eights".
func eighthsMeant(in []atom, i int) bool {
	if i < 1 {
		return false
	}
	switch in[i-1].text {
	case "three", "five", "seven", "3", "5", "7":
	default:
		return false
	}
	next := textAt(in, i+1)
	if next == "inch" || next == "inches" || next == "of" && (textAt(in, i+2) == "an" || textAt(in, i+2) == "inch") {
		return true
	}
	if i < 3 || in[i-2].text != "and" {
		return false
	}
	before := in[i-3]
	return (spelledNumber(before.text) || before.kind == aDigits || soundAlike[before.text] != "") && !byLumber(next)
}

// byLumber reports whether a word behind "eights" makes lumber of them.
func byLumber(w string) bool {
	return w == "footers" || w == "foot" || w == "footer" || w == "and" || countNouns[w]
}
