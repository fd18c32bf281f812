package grammar

// countWords tell, behind a number, that it counts what is in a box; boxWords are what it is sold in.
var (
	countWords = wordSet("count ct cnt pack piece pc pcs")
	boxWords   = wordSet("box boxes pack packs package packages packet carton tub bag pail bucket jar")
)

// countBox steps over the "count" of "a hundred-count box of screws": the number says it all. It returns the atom after it, and i
// where no box follows.
func (l *lexing) countBox(i int) int {
	t, j := l.last(), i
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
