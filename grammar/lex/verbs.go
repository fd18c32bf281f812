package lex

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// leaning reports whether a post is said to lean before here.
func (l *lexing) leaning() bool {
	for i := range l.tokens {
		if l.tokens[i].Is(lexicon.Lean) {
			return true
		}
	}
	return false
}

// measuredAfter reports whether a length with its unit begins between two atoms and goes on beyond.
func (l *lexing) measuredAfter(i, next int) bool {
	for j := i + 1; j < next; j++ {
		if a, end, ok := l.Length(j); ok && a.Unit != measure.Bare && end > next {
			return true
		}
	}
	return false
}

// saidBy are pronouns after which "left" is a verb.
var saidBy = map[string]bool{"we": true, "i": true, "they": true, "he": true, "she": true, "you": true}

// verbStay reports whether "stays" is a verb: "the gap stays under 4".
func (l *lexing) verbStay(i int) bool {
	if w := l.Word(i); w != "stay" && w != "stays" {
		return false
	}
	switch l.Word(i - 1) {
	case "to", "will", "should", "must", "can", "may", "would", "it", "they", "that", "and":
		return true
	}
	t := l.last()
	return t != nil && (t.Kind == lexicon.Part || t.Kind == lexicon.It || t.Kind == lexicon.Loc) && l.Word(i-1) != "the"
}

// pronoun reports whether "one" stands for a thing: "this one", "the one on the left".
func (l *lexing) pronoun(i, next int) bool {
	if t := l.last(); l.Word(i) != "one" || next != i+1 || t != nil && t.Kind == lexicon.Fix {
		return false
	}
	if l.Word(i-1) == "the" && (l.Word(i-2) == "just" || l.Word(i-2) == "only") {
		return false // "bay 2 just the one"
	}
	if l.Word(i-1) == "the" && measure.PartNext(l.Reader, i+1) {
		return false // "bay 2 needs the one stiffener"
	}
	if l.Word(i-1) == "that" && measure.PartNext(l.Reader, i+1) && (l.last() == nil || l.last().Kind == lexicon.Head) {
		return false // "he says that one added post will do"
	}
	switch l.Word(i - 1) {
	case "left", "right":
		return l.Word(i+1) == "" || l.Kind(i+1) == scan.Sign // "at the left-hand one"
	case "nor", "little", "this", "that", "which", "other", "another", "each", "every", "same", "new", "the", "first", "last", "second", "third", "bottom", "top", "any", "old", "his", "her", "wrong", "good",
		"longer", "shorter", "wider", "narrower", "taller", "lower", "higher", "bigger", "smaller", "larger", "cheaper", "tighter", "longest", "shortest", "widest", "tallest", "lowest", "biggest", "smallest", "cheapest":
		return true // "the shorter one"
	}
	return false
}

// rightFor reports whether "right" asks after a value before it: "is $400 right for the material".
func (l *lexing) rightFor(i int) bool {
	switch l.Word(0) {
	case "is", "are", "was", "were":
	case "do", "did", "have", "had":
		return l.Word(i+1) == "at" && scan.Subjects[l.Word(1)]
	default:
		return false
	}
	if t := l.last(); t == nil || t.Kind != lexicon.Num && t.Kind != lexicon.Part {
		return false
	}
	return l.Word(i+1) == "for" || i+1 == len(l.Atoms) || l.Word(i+1) == "?"
}

// becomes reports whether the words between two atoms ask what becomes of something.
func (l *lexing) becomes(i, end int) bool {
	for ; i < end; i++ {
		switch l.Word(i) {
		case "happens", "happen", "becomes", "become", "affect", "alter":
			return true
		case "do":
			if l.Word(i+1) == "to" {
				return true
			}
		}
	}
	return false
}

// partAfter reports whether a part of the wall, and not the wall itself, is named at atom i.
func (l *lexing) partAfter(i int) bool {
	for lexicon.Vocab().Articles[l.Word(i)] {
		i++
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, i)
	return len(f) > 0 && (f[0].Entry.Kind == lexicon.Part || f[0].Entry.Kind == lexicon.Quest) && f[0].Entry.Key != "wall"
}

// keepsPart reports whether a part that is not lumber is named at atom i.
func (l *lexing) keepsPart(i int) bool {
	for lexicon.Vocab().Articles[l.Word(i)] {
		i++
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, i)
	if len(f) == 0 || f[0].Entry.Kind != lexicon.Part {
		return false
	}
	switch f[0].Entry.Key {
	case "rail", "size", "stock", "post", "stiffener", "bracket":
		return false
	}
	return true
}

// said reports whether a part of that key was named before in this sentence.
func (l *lexing) said(key string) bool {
	return l.saidSince(func(t *Token) bool { return t.Kind == lexicon.Part && t.Key() == key })
}

// numbered reports whether a value was said before in this sentence.
func (l *lexing) numbered() bool {
	return l.saidSince(func(t *Token) bool { return t.Kind == lexicon.Num || t.Kind == lexicon.Size || t.Is(lexicon.Item) })
}

// denies reports whether a word of denial was said before in this sentence.
func (l *lexing) denies() bool {
	return l.saidSince(func(t *Token) bool { return t.Kind == lexicon.No || t.Kind == lexicon.Not })
}

// moving reports whether a verb of moving was said before in this sentence.
func (l *lexing) moving() bool {
	return l.saidSince(func(t *Token) bool { return t.Kind == lexicon.Move })
}

func (l *lexing) saidSince(is func(*Token) bool) bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark:
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
	return kind == lexicon.Num && (l.Word(next) == "shy" || l.Word(next) == "short" || l.Word(next) == "below" || l.Word(next) == "under")
}

// pieces reports whether lumber cut to a length is told of from i on: a lumber size, and what it is cut at.
func (l *lexing) pieces(i int) bool {
	for size := false; i < len(l.Atoms) && !chunk.BreaksClause(l.Atoms, i); i++ {
		switch _, _, ok := l.Size(i); {
		case ok:
			size = true
		case size && (l.Word(i) == "at" || l.Word(i) == "@" || l.Word(i) == "long" || CutWord(l.Word(i)) || l.Word(i) == "each"):
			return true
		}
	}
	return false
}

// goalBefore reports whether a goal was the last thing said.
func (l *lexing) goalBefore() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; t.Kind {
		case lexicon.Comma:
		case lexicon.Goal:
			return true
		default:
			return false
		}
	}
	return false
}
