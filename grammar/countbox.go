package grammar

import (
	"strings"

	"saywright/solver/exact"
)

var boxOf = &entry{kind: kBoxOf, key: "box"}

// countWords tell, behind a number, that it counts what is in a box; boxWords are what it is sold in.
var (
	countWords = wordSet("count ct cnt pack piece pc pcs")
	boxWords   = wordSet("box boxes pack packs package packages packet carton tub bag pail bucket jar")
)

// countBox steps over the "count" of "a hundred-count box of screws": the number says it all. It returns the atom after it, and i
// where no box follows.
func (l *lexing) countBox(i int) int {
	t, j := l.last(), i
	if (l.word(i) == "for" || l.word(i) == "a") && t != nil && t.kind == kNum && t.amt.point && len(l.tokens) < 4 && strings.HasPrefix(l.tokens[0].text, "screw") {
		if n, next, ok := l.whole(l.skip(i + 1)); ok && n.val.IsInt() && exact.Int(9).Less(n.val) && l.endsAt(next) {
			l.add(kBoxOf, i, i+1).found = []found{{entry: boxOf}} // "screws are 8.49 for 100"
			return i + 1
		}
	}
	if t == nil || t.kind != kNum || t.amt.unit != bare || l.before != "" {
		return i
	}
	if l.word(j) == "-" {
		j++
	}
	if !countWords[l.word(j)] || !boxWords[l.word(j+1)] {
		return i
	}
	l.empty("count")
	return j + 1
}
