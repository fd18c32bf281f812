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
	switch l.word(i - 1) {
	case "left", "right":
		return l.word(i+1) == "" || l.kind(i+1) == aSign // "at the left-hand one"
	case "nor", "little", "this", "that", "which", "other", "another", "each", "every", "same", "new", "the", "first", "last", "second", "third", "bottom", "top", "any", "old", "his", "her", "wrong", "good",
		"longer", "shorter", "wider", "narrower", "taller", "lower", "higher", "bigger", "smaller", "larger", "cheaper", "tighter", "longest", "shortest", "widest", "tallest", "lowest", "biggest", "smallest", "cheapest":
		return true // "the shorter one"
	}
	return false
}
