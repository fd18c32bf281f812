package idiom

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// Bending are words that change, deny, bound or doubt though no table knows them.
var Bending = scan.WordSet(`
	avoid avoids prevent prevents exclude excludes refuse ban bans banned lack lacks miss fail fails failed reject abandon abandoned veto vetoed replace replaced swap swapped
	dread detest despise abhor regret fear worry hesitate pretend dream dreamed dreamt gamble bet
	slash slashed hike hiked hack chop chopped shave whittle halve multiply multiplied divide divided subtract deduct exceed exceeds top tops beat beats
	supposedly allegedly reportedly purportedly presumably apparently seemingly ostensibly evidently partly partially mostly barely hardly scarcely nearly almost roughly
	doubly triply only merely solely early
	restrict restricts restricted confine confined cap capped ceiling floor stop stops
`)

// AsksAnything reports whether a word of asking or a question mark stands in a line.
func AsksAnything(atoms []scan.Atom) bool {
	for _, a := range atoms {
		switch a.Text {
		case "?", "where", "how", "what", "which", "why", "show", "tell", "give", "see", "need", "know":
			return true
		}
	}
	return false
}

// triesNot reads "try not to waste any" as "do not waste any": it tries nothing out.
func triesNot(before, _ []scan.Atom) bool {
	return len(before) == 0 || chunk.Breaks(before[len(before)-1]) || strings.Contains(" please and but so just to ", " "+chunk.LastOf(before, 1)+" ")
}

// HoldsWord reports whether one of a few words stands in a line.
func HoldsWord(in []scan.Atom, words ...string) bool {
	for i := range in {
		for _, w := range words {
			if in[i].Text == w {
				return true
			}
		}
	}
	return false
}
