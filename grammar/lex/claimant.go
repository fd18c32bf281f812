package lex

import (
	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// A claim is made by whoever is named: "Pete says no gap can be over four". A name is a word that no table knows.

// claimHead is the beginning of a claim.
var claimHead = &lexicon.Entry{Kind: lexicon.Head, Key: string(act.Check)}

// namedClaim reads a name and its verb of saying at the beginning of a part of the line. It returns the atom after them, and i
// where nobody's name stands there.
func (l *lexing) namedClaim(i int) int {
	if t := l.last(); l.before != "" && l.before != "and" || t != nil && !l.breaks(*t) || l.Kind(i) != scan.Word || len(l.Word(i)) < 3 || lexicon.Vocab().Known[l.Word(i)] || Words().Numberish(l.Word(i)) || len(Words().Near(l.Word(i))) > 0 {
		return i
	}
	j := i + 1
	switch l.Word(j) {
	case "says", "said", "thinks", "claims", "reckons", "figures", "insists", "swears", "believes", "told", "tells", "maintains", "claimed", "figured", "reckoned":
		j++
	default:
		return i
	}
	if (l.Word(j-1) == "told" || l.Word(j-1) == "tells") != (l.Word(j) == "me" || l.Word(j) == "us") {
		return i
	}
	if l.Word(j) == "me" || l.Word(j) == "us" {
		j++
	}
	if l.Word(j) == "that" {
		j++
	}
	if j >= len(l.Atoms) {
		return i
	}
	l.add(lexicon.Head, i, j).Found = []lexicon.Found{{Entry: claimHead}}
	return j
}
