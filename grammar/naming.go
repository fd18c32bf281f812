package grammar

import "strings"

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
// is none: "my carport plan called garden two".
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
		for _, f := range vocab().match(l.reader.atoms, j) {
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
	f := vocab().matchBut(l.reader.atoms, i, kCmd)
	if len(f) == 0 {
		return i
	}
	return l.phrase(f, i)
}

// countsParts reports whether a number of parts, or a number alone beside one, stands at atom i where a name is looked for.
func (l *lexing) countsParts(i int) bool {
	_, next, ok := l.length(i)
	if ok && l.word(next) == "and" {
		_, next, ok = l.length(next + 1) // "between five and six rails"
	}
	if !ok {
		return false
	}
	f := vocab().match(l.reader.atoms, next)
	return len(f) > 0 && f[0].entry.kind == kPart
}

// nameAgain steps over a word of correction after a name, where another name follows: "… to porch.svg, no, to deck.svg".
func (l *lexing) nameAgain(key string, end int) int {
	i := end
	if l.word(i) == "," || l.word(i) == "." && !l.glued(i+1) {
		i++
	}
	for (l.word(i) == "hmm" || l.word(i) == "hm" || l.word(i) == "oh") && l.word(i+1) == "," {
		i += 2
	}
	next := l.pastFixes(i)
	if next == i || l.word(i) == "no" && next == i+1 && l.noPartsAt(next) {
		return end
	}
	i = next
	for l.word(i) == "," || l.word(i) == "to" || l.word(i) == "as" || l.word(i) == "with" {
		i++
	}
	if l.commandAt(i) || l.nameEnd(key, i) == i {
		return end
	}
	return i
}

// noPartsAt reports whether what a "no" stands before is a part of the wall: "save it as sunroom. no openings".
func (l *lexing) noPartsAt(i int) bool {
	if l.word(i) == "more" || l.word(i) == "longer" || spelledNumber(l.word(i)) {
		return true
	}
	for j := i; j < i+3 && j < len(l.atoms) && l.atoms[j].kind == aWord; j++ {
		if namesPart(l.atoms, j) {
			return true
		}
	}
	return false
}

// pastFixes steps over words of correction: "no, sorry, …". It returns i where there are none.
func (l *lexing) pastFixes(i int) int {
	for from := i; ; {
		f := vocab().match(l.reader.atoms, i)
		switch {
		case len(f) > 0 && f[0].entry.kind == kFix:
			i = f[0].next
		case l.word(i) == "no", l.word(i) == "," && i > from:
			i++
		default:
			return i
		}
	}
}

// aNoun reports whether the empty words before a word make a noun of it.
func aNoun(before string) bool {
	words := strings.Fields(before)
	if len(words) == 0 {
		return false
	}
	switch words[len(words)-1] {
	case "a", "the", "new", "another", "next", "that", "this", "one", "his", "their", "fresh":
		return true
	}
	return false
}

// wallNotShelf: lumber lies "on the porch", but "on the porch wall" leads to a wall.
func (l *lexing) wallNotShelf(i int) int {
	if !wallLead[l.word(i)] || !vocab().articles[l.word(i+1)] || !wallNames[l.word(i+2)] || l.word(i+3) != "wall" {
		return 0
	}
	if f := vocab().match(l.reader.atoms, i); len(f) == 0 || f[0].next != i+3 || f[0].entry.kind != kHave && f[0].entry.kind != kHaveTail {
		return 0
	}
	return l.wall(i + 2)
}
