package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// RailNoun is the row of the name of a rail.
var RailNoun = NounOf("rail")

// NounOf is the first row of the names of parts with a key, as it would be found in a line.
func NounOf(key string) []lexicon.Found {
	for i := range lexicon.Parts {
		if lexicon.Parts[i].Key == key {
			return []lexicon.Found{{Entry: &lexicon.Parts[i]}}
		}
	}
	panic("grammar: no part named " + key)
}

// EndsIn reports whether a stretch of words ends in one.
func EndsIn(words, last string) bool {
	return words == last || strings.HasSuffix(words, " "+last)
}

// CutWord reports whether a claim is said to be of a cut: "my mate would cut …".
func CutWord(s string) bool {
	for _, w := range strings.Fields(s) {
		switch w {
		case "cut", "cuts", "saw", "sawn", "sawed", "saws", "cutting", "chop", "chops", "chopped":
			return true
		}
	}
	return false
}

// RailSize reports whether a size that is said alone can only be that of the rails: "two by sixes".
func RailSize(s string) bool {
	x, y, _ := strings.Cut(s, "x")
	a, _ := measure.Atoi(x)
	b, _ := measure.Atoi(y)
	return min(a, b) == 2 && max(a, b) >= 3 && max(a, b) <= 12
}

// ForeignWord reports whether a word is of no table and can be no misspelling.
func ForeignWord(w string) bool {
	return Outsiders[w] || !lexicon.Vocab().Known[w] && !lexicon.Vocab().Neutral[w] && len(w) > 2 && len(Words().Near(w)) == 0 && !Words().Numberish(w)
}

// ForeignOrWall reports whether a word can be the name of a plan: that of a place, or one that no table knows.
func ForeignOrWall(w string) bool {
	return WallNames[w] && measure.Ordinals[w] == 0 && w != "other" || ForeignWord(w)
}
