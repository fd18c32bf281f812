package grammar

// leaning reports whether a post is said to lean before here.
func (l *lexing) leaning() bool {
	for i := range l.tokens {
		if l.tokens[i].is(kLean) {
			return true
		}
	}
	return false
}

// halfOfNumber reports whether the "half" at i ends a number: "gap two and a half, wall 48" without its comma.
func (r reader) halfOfNumber(i int) bool {
	if r.word(i) != "half" || r.word(i-1) != "a" || r.word(i-2) != "and" && r.word(i-2) != "&" {
		return false
	}
	_, one := units[r.word(i-3)]
	_, ten := tens[r.word(i-3)]
	return one || ten || r.kind(i-3) == aDigits
}

// measuredAfter reports whether a length with its unit begins between two atoms and goes on beyond.
func (l *lexing) measuredAfter(i, next int) bool {
	for j := i + 1; j < next; j++ {
		if a, end, ok := l.length(j); ok && a.unit != bare && end > next {
			return true
		}
	}
	return false
}

// saidBy are pronouns after which "left" is a verb.
var saidBy = map[string]bool{"we": true, "i": true, "they": true, "he": true, "she": true, "you": true}

// verbStay reports whether "stays" is a verb: "the gap stays under 4".
func (l *lexing) verbStay(i int) bool {
	if w := l.word(i); w != "stay" && w != "stays" {
		return false
	}
	switch l.word(i - 1) {
	case "to", "will", "should", "must", "can", "may", "would", "it", "they", "that", "and":
		return true
	}
	t := l.last()
	return t != nil && (t.kind == kPart || t.kind == kIt || t.kind == kLoc) && l.word(i-1) != "the"
}

// pronoun reports whether "one" stands for a thing: "this one", "the one on the left".
func (l *lexing) pronoun(i, next int) bool {
	if t := l.last(); l.word(i) != "one" || next != i+1 || t != nil && t.kind == kFix {
		return false
	}
	if l.word(i-1) == "the" && (l.word(i-2) == "just" || l.word(i-2) == "only") {
		return false // "bay 2 just the one"
	}
	if l.word(i-1) == "the" && partNext(l.reader, i+1) {
		return false // "bay 2 needs the one stiffener"
	}
	if l.word(i-1) == "that" && partNext(l.reader, i+1) && (l.last() == nil || l.last().kind == kHead) {
		return false // "he says that one added post will do"
	}
	switch l.word(i - 1) {
	case "left", "right":
		return l.word(i+1) == "" || l.kind(i+1) == aSign // "at the left-hand one"
	case "nor", "little", "this", "that", "which", "other", "another", "each", "every", "same", "new", "the", "first", "last", "second", "third", "bottom", "top", "any", "old", "his", "her", "wrong", "good",
		"longer", "shorter", "wider", "narrower", "taller", "lower", "higher", "bigger", "smaller", "larger", "cheaper", "tighter", "longest", "shortest", "widest", "tallest", "lowest", "biggest", "smallest", "cheapest":
		return true // "the shorter one"
	}
	return false
}

// rightFor reports whether "right" asks after a value before it: "is $400 right for the material".
func (l *lexing) rightFor(i int) bool {
	switch l.word(0) {
	case "is", "are", "was", "were":
	case "do", "did", "have", "had":
		return l.word(i+1) == "at" && subjects[l.word(1)]
	default:
		return false
	}
	if t := l.last(); t == nil || t.kind != kNum && t.kind != kPart {
		return false
	}
	return l.word(i+1) == "for" || i+1 == len(l.atoms) || l.word(i+1) == "?"
}

// becomes reports whether the words between two atoms ask what becomes of something.
func (l *lexing) becomes(i, end int) bool {
	for ; i < end; i++ {
		switch l.word(i) {
		case "happens", "happen", "becomes", "become", "affect", "alter":
			return true
		case "do":
			if l.word(i+1) == "to" {
				return true
			}
		}
	}
	return false
}

// partAfter reports whether a part of the wall, and not the wall itself, is named at atom i.
func (l *lexing) partAfter(i int) bool {
	for vocab().articles[l.word(i)] {
		i++
	}
	f := vocab().match(l.reader.atoms, i)
	return len(f) > 0 && (f[0].entry.kind == kPart || f[0].entry.kind == kQuest) && f[0].entry.key != "wall"
}

// keepsPart reports whether a part that is not lumber is named at atom i.
func (l *lexing) keepsPart(i int) bool {
	for vocab().articles[l.word(i)] {
		i++
	}
	f := vocab().match(l.reader.atoms, i)
	if len(f) == 0 || f[0].entry.kind != kPart {
		return false
	}
	switch f[0].entry.key {
	case "rail", "size", "stock", "post", "stiffener", "bracket":
		return false
	}
	return true
}

// said reports whether a part of that key was named before in this sentence.
func (l *lexing) said(key string) bool {
	return l.saidSince(func(t *token) bool { return t.kind == kPart && t.key() == key })
}

// numbered reports whether a value was said before in this sentence.
func (l *lexing) numbered() bool {
	return l.saidSince(func(t *token) bool { return t.kind == kNum || t.kind == kSize || t.is(kItem) })
}

// denies reports whether a word of denial was said before in this sentence.
func (l *lexing) denies() bool {
	return l.saidSince(func(t *token) bool { return t.kind == kNo || t.kind == kNot })
}

// moving reports whether a verb of moving was said before in this sentence.
func (l *lexing) moving() bool {
	return l.saidSince(func(t *token) bool { return t.kind == kMove })
}

func (l *lexing) saidSince(is func(*token) bool) bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; {
		case t.kind == kStop || t.kind == kQMark:
			return false
		case is(t):
			return true
		}
	}
	return false
}

// fallsShort reports whether a length and "shy" or "short" stand at i.
func (l *lexing) fallsShort(i int) bool {
	_, kind, next := l.value(i)
	return kind == kNum && (l.word(next) == "shy" || l.word(next) == "short" || l.word(next) == "below" || l.word(next) == "under")
}

// pieces reports whether lumber cut to a length is told of from i on: a lumber size, and what it is cut at.
func (l *lexing) pieces(i int) bool {
	for size := false; i < len(l.atoms) && !breaksClause(l.atoms, i); i++ {
		switch _, _, ok := l.size(i); {
		case ok:
			size = true
		case size && (l.word(i) == "at" || l.word(i) == "@" || l.word(i) == "long" || cutWord(l.word(i)) || l.word(i) == "each"):
			return true
		}
	}
	return false
}

// goalBefore reports whether a goal was the last thing said.
func (l *lexing) goalBefore() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; t.kind {
		case kComma:
		case kGoal:
			return true
		default:
			return false
		}
	}
	return false
}
