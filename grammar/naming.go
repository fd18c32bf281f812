package grammar

// asItIs are words that go on after an "as" that leads to no name.
var asItIs = map[string]bool{"it": true, "is": true, "they": true, "i": true, "we": true, "you": true, "possible": true, "usual": true, "before": true, "planned": true, "follows": true, "well": true, "if": true}

// compares reports whether plans were compared before the last token, and saves whether one was saved.
func (l *lexing) compares() bool { return l.commanded("compare") }
func (l *lexing) saves() bool    { return l.commanded("save") }

func (l *lexing) commanded(key string) bool {
	for i := range l.tokens[:len(l.tokens)-1] {
		if t := &l.tokens[i]; t.kind == kCmd && t.key() == key {
			return true
		}
	}
	return false
}

// calledLater returns the atom after a "called" or "saved as" that stands a few words on in the same breath, and i where there
// is none: "my pergola plan called garden two".
func (l *lexing) calledLater(i int) int {
	for j := i; j < i+6 && l.kind(j) == aWord && l.word(j) != "and" && l.word(j) != "with" && l.word(j) != "to"; j++ {
		switch w, next := l.word(j), l.word(j+1); {
		case w == "called" || w == "named" || w == "labeled":
			return j + 1
		case (w == "saved" || w == "stored" || w == "filed") && (next == "as" || next == "under"):
			return j + 2
		}
	}
	return i
}

// speaksOfLength reports whether a number follows atom i in its sentence, or a length.
func (l *lexing) speaksOfLength(i int) bool {
	n := 0
	for ; i < len(l.atoms) && l.word(i) != "." && l.word(i) != "?" && l.word(i) != ","; i++ {
		if _, _, ok := l.length(i); ok {
			return n > 1
		}
		n++
	}
	return false
}

// opensGap reports whether "open" is said of a part of the wall rather than of a plan.
func (l *lexing) opensGap(i, end int) bool {
	for j := i; j < end; j++ {
		for _, f := range vocab().match(l.reader, j) {
			if k := f.entry.kind; j == i && (k == kPart && f.entry.key != "wall" && f.entry.key != "pool" || k == kUp || k == kOut || k == kIt) {
				return true
			}
		}
		if j == i && (l.word(j) == "it" || l.word(j) == "them") && j+1 < end {
			return true
		}
	}
	return false
}

// measures reports whether a length with a unit stands between two atoms: then "open" is no command with a name.
func (l *lexing) measures(i, end int) bool {
	for ; i < end; i++ {
		if a, _, ok := l.length(i); ok && a.unit != bare || l.word(i) == "min" || l.word(i) == "max" {
			return true
		}
	}
	return false
}

// otherwise reads the phrase at i again without the command that it looked like.
func (l *lexing) otherwise(i int) int {
	f := vocab().matchBut(l.reader, i, kCmd)
	if len(f) == 0 {
		return i
	}
	return l.phrase(f, i)
}
