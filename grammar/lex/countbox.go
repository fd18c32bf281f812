package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

var boxOf = &lexicon.Entry{Kind: lexicon.BoxOf, Key: "box"}

// countWords tell, behind a number, that it counts what is in a box; boxWords are what it is sold in.
var (
	countWords = scan.WordSet("count ct cnt pack piece pc pcs")
	boxWords   = scan.WordSet("box boxes pack packs package packages packet carton tub bag pail bucket jar")
)

// countBox steps over the "count" of "a hundred-count box of screws": the number says it all. It returns the atom after it, and i
// where no box follows.
func (l *lexing) countBox(i int) int {
	t, j := l.last(), i
	if (l.Word(i) == "for" || l.Word(i) == "a") && t != nil && t.Kind == lexicon.Num && t.Amt.Point && len(l.tokens) < 4 && strings.HasPrefix(l.tokens[0].Text, "screw") {
		if n, next, ok := l.Whole(l.Skip(i + 1)); ok && n.Val.IsInt() && exact.Int(9).Less(n.Val) && l.endsAt(next) {
			l.add(lexicon.BoxOf, i, i+1).Found = []lexicon.Found{{Entry: boxOf}} // "screws are 8.49 for 100"
			return i + 1
		}
	}
	if t == nil || t.Kind != lexicon.Num || t.Amt.Unit != measure.Bare || l.before != "" {
		return i
	}
	if l.Word(j) == "-" {
		j++
	}
	if !countWords[l.Word(j)] || !boxWords[l.Word(j+1)] {
		return i
	}
	l.empty("count")
	return j + 1
}
