package grammar

import "strings"

// What is put somewhere is compared with nothing, what is like nothing that has a name is copied from nothing, and what is
// called by two names in one breath is saved once.

// placedThere reports whether the words after "put it against" name a part or an end of the wall: "put it up against the
// right post" says where something stands.
func (l *lexing) placedThere(t *token, start, end int) bool {
	switch first, _, _ := strings.Cut(t.text, " "); first {
	case "put", "hold", "set", "stack", "lay", "hang", "place", "stand":
	default:
		return false
	}
	if start == end {
		return false
	}
	for i := start; i < end; i++ {
		for _, f := range vocab().match(l.reader.atoms, i) {
			switch k := f.entry.kind; {
			case k == kSide && (f.next >= end || l.word(f.next) == "and"), k == kFromSide:
				return true
			case k == kPart && f.entry.key != "wall" && f.entry.key != "floor" && f.entry.key != "pool":
				return i == start || !foreignWord(l.word(start))
			}
		}
	}
	return false
}

// under reports whether something is put under a part of the wall, which begins at atom i, and not saved under its name.
func (l *lexing) under(t *token, i int) bool {
	switch first, _, _ := strings.Cut(t.text, " "); first {
	case "put", "keep", "lay", "set", "hold", "tuck", "stick", "slip", "stash", "hang":
	default:
		return false
	}
	if !l.names(i) {
		return false
	}
	switch key := vocab().match(l.reader.atoms, i)[0].entry.key; key {
	case "wall", "floor", "pool", "beyond", "drop":
		return false
	}
	return true
}

// onlyLikened reports whether the words after "like" tell how something shall be, and name no wall: "make it like a little
// roomier".
func (l *lexing) onlyLikened(start, end int) bool {
	if _, _, number := l.length(start); number {
		return true
	}
	for i := start; i < end; i++ {
		for _, f := range vocab().match(l.reader.atoms, i) {
			switch f.entry.kind {
			case kMore, kVague, kRel, kAbout, kChange, kFactor, kBest:
				return true
			}
		}
	}
	return false
}

// sayers are words that lead to a name of the plan at hand.
var sayers = wordSet("call name label title")

// keptAndCalled reports whether "let us keep this one and call it" ends before atom i: what follows is a name.
func (l *lexing) keptAndCalled(i int) bool {
	return sayers[l.word(i-2)] && (l.word(i-1) == "it" || l.word(i-1) == "this" || l.word(i-1) == "that") && l.kind(i) == aWord
}

// savedAnew returns the atom at which saving is ordered once more, past words of hesitation, and i where it is not: "call it,
// uh, save it as river deck".
func (l *lexing) savedAnew(i int) int {
	j := i
	for l.word(j) == "," || l.word(j) == "-" || l.word(j) == "--" || hesitating[l.word(j)] {
		j++
	}
	f := vocab().match(l.reader.atoms, j)
	if len(f) > 0 && f[0].entry.kind == kCmd && f[0].entry.key == "save" && f[0].next > j+1 && f[0].next < len(l.atoms) {
		return j
	}
	return i
}

// hesitating are sounds and words of somebody who looks for the next word.
var hesitating = wordSet("uh um er erm ah eh hmm hm mm well like oh so just maybe")

// wantsNot reports whether somebody does not want something, in the words between two atoms: it is no reason that is asked for.
func (l *lexing) wantsNot(from, to int) bool {
	for i := from; i+1 < to; i++ {
		if l.word(i) == "not" && (l.word(i+1) == "want" || l.word(i+1) == "like" || l.word(i+1) == "wish" || l.word(i+1) == "care") {
			return true
		}
	}
	return false
}

// theEnds are the posts at both ends, by a word that is said of them beside their size.
var theEnds = nounOf("end post")

// sizedEnds reads "ends" for the end posts beside a size: "4x4 ends", "ends 6x6", "the corners are 6x6s". It returns the atom
// after it, and i where there is no size.
func (l *lexing) sizedEnds(i int) int {
	switch l.word(i) {
	case "ends", "corners", "outers":
	default:
		return i
	}
	sized := false
	if t := l.last(); t != nil && t.kind == kSize && l.before == "" {
		next := l.word(i + 1)
		sized = next == "" || l.kind(i+1) == aSign || next == "and" || next == "but" || next == "with"
	}
	if !sized && (l.before == "" || l.before == "the" || l.before == "two" || l.before == "my" || l.before == "our") && (l.last() == nil || l.breaks(*l.last())) {
		j := i + 1
		for j < i+4 && (vocab().neutral[l.word(j)] || l.word(j) == ":" || l.word(j) == "=") {
			j++
		}
		_, _, sized = l.size(j)
	}
	if !sized {
		return i
	}
	l.add(kPart, i, i+1).found = theEnds
	return i + 1
}
