package grammar

import "strings"

// placeFollows reports whether a place or a figure is told right behind atom i, with the word that leads to it: "on the right", "at
// three inches". What stands before it takes nothing that was tried.
func (l *lexing) placeFollows(i int) bool {
	switch l.word(i) {
	case "on", "at", "in", "against", "to", "by", "beside", "near", "under", "over", "below", "above":
	default:
		return false
	}
	if f := vocab().match(l.reader.atoms, i); len(f) > 0 && (f[0].entry.kind == kSide || f[0].entry.kind == kFromSide) {
		return true
	}
	for i++; vocab().articles[l.word(i)] || l.word(i) == "about"; i++ {
	}
	if f := vocab().match(l.reader.atoms, i); len(f) > 0 && (f[0].entry.kind == kSide || f[0].entry.kind == kFromSide) {
		return true
	}
	_, _, ok := l.length(i)
	return ok
}

// likedBetter steps over "I like it better" in front of a place: with something said before, it corrects that. It returns the atom
// after it.
func (l *lexing) likedBetter(i, next int) int {
	said := l.text(i, next)
	if t := l.last(); t != nil && strings.HasSuffix(said, "better") && l.saidSince(func(t *token) bool { return t.kind == kNum || t.kind == kSide }) {
		l.add(kFix, i, next).found = []found{{entry: setRight}}
		return next
	}
	l.empty(said)
	return next
}

// supposes reports whether a "say" at atom i begins what is only supposed: nothing but words that lead on stands before it, and who
// has or sells something behind it.
func (l *lexing) supposes(i int) bool {
	if l.word(i) != "say" {
		return false
	}
	if t := l.last(); t != nil && t.kind != kComma && t.kind != kStop && t.kind != kFix && t.kind != kAnd && t.kind != kQMark {
		return false
	}
	for _, w := range strings.Fields(l.before) {
		if !leadIns[w] {
			return false
		}
	}
	return l.word(i+1) != "" && l.kind(i+1) == aWord
}

// backTo takes "back to" in front of a figure for a correction where another was told before it: "two, no, three, ah, back to two". It
// returns the atom after it.
func (l *lexing) backTo(i int) int {
	j := i
	switch l.word(j) {
	case "go", "going", "switch", "change", "put", "make":
		if j++; l.word(j) == "it" || l.word(j) == "that" {
			j++
		}
	}
	if l.word(j) != "back" || l.word(j+1) != "to" {
		return i
	}
	last := l.last()
	if last == nil || last.kind != kComma && last.kind != kStop && last.kind != kFix && last.kind != kNo && last.kind != kAnd && last.kind != kBut {
		return i
	}
	if _, _, ok := l.length(j + 2); !ok || !l.saidSince(func(t *token) bool { return t.kind == kNum }) {
		return i
	}
	l.before = ""
	l.add(kFix, i, j+2).found = []found{{entry: setRight}}
	return j + 2
}

// afterAll reports whether somebody is said to have something against what was said before: "they do have tens".
func afterAll(t *token) bool {
	if t == nil {
		return false
	}
	for _, w := range []string{" do have", " does have", " do carry", " does carry", " do sell", " does sell", " do stock", " does stock", " do keep", " does keep"} {
		if strings.Contains(t.text, w) {
			return true
		}
	}
	return false
}
