package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// What is put somewhere is compared with nothing, what is like nothing that has a name is copied from nothing, and what is
// called by two names in one breath is saved once.

// placedThere reports whether the words after "put it against" name a part or an end of the wall: "put it up against the
// right post" says where something stands.
func (l *lexing) placedThere(t *Token, start, end int) bool {
	switch first, _, _ := strings.Cut(t.Text, " "); first {
	case "put", "hold", "set", "stack", "lay", "hang", "place", "stand":
	default:
		return false
	}
	if start == end {
		return false
	}
	for i := start; i < end; i++ {
		for _, f := range lexicon.Vocab().Match(l.Reader.Atoms, i) {
			switch k := f.Entry.Kind; {
			case k == lexicon.Side && (f.Next >= end || l.Word(f.Next) == "and"), k == lexicon.FromSide:
				return true
			case k == lexicon.Part && f.Entry.Key != "wall" && f.Entry.Key != "floor" && f.Entry.Key != "pool":
				return i == start || !ForeignWord(l.Word(start))
			}
		}
	}
	return false
}

// under reports whether something is put under a part of the wall, which begins at atom i, and not saved under its name.
func (l *lexing) under(t *Token, i int) bool {
	switch first, _, _ := strings.Cut(t.Text, " "); first {
	case "put", "keep", "lay", "set", "hold", "tuck", "stick", "slip", "stash", "hang":
	default:
		return false
	}
	if !l.names(i) {
		return false
	}
	switch key := lexicon.Vocab().Match(l.Reader.Atoms, i)[0].Entry.Key; key {
	case "wall", "floor", "pool", "beyond", "drop":
		return false
	}
	return true
}

// onlyLikened reports whether the words after "like" tell how something shall be, and name no wall: "make it like a little
// roomier".
func (l *lexing) onlyLikened(start, end int) bool {
	if _, _, number := l.Length(start); number {
		return true
	}
	for i := start; i < end; i++ {
		for _, f := range lexicon.Vocab().Match(l.Reader.Atoms, i) {
			switch f.Entry.Kind {
			case lexicon.More, lexicon.Vague, lexicon.Rel, lexicon.About, lexicon.Change, lexicon.Factor, lexicon.Best:
				return true
			}
		}
	}
	return false
}

// sayers are words that lead to a name of the plan at hand.
var sayers = scan.WordSet("call name label title")

// keptAndCalled reports whether "let us keep this one and call it" ends before atom i: what follows is a name.
func (l *lexing) keptAndCalled(i int) bool {
	return sayers[l.Word(i-2)] && (l.Word(i-1) == "it" || l.Word(i-1) == "this" || l.Word(i-1) == "that") && l.Kind(i) == scan.Word
}

// savedAnew returns the atom at which saving is ordered once more, past words of hesitation, and i where it is not: "call it,
// uh, save it as river deck".
func (l *lexing) savedAnew(i int) int {
	j := i
	for l.Word(j) == "," || l.Word(j) == "-" || l.Word(j) == "--" || hesitating[l.Word(j)] {
		j++
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, j)
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Cmd && f[0].Entry.Key == "save" && f[0].Next > j+1 && f[0].Next < len(l.Atoms) {
		return j
	}
	return i
}

// hesitating are sounds and words of somebody who looks for the next word.
var hesitating = scan.WordSet("uh um er erm ah eh hmm hm mm well like oh so just maybe")

// wantsNot reports whether somebody does not want something, in the words between two atoms: it is no reason that is asked for.
func (l *lexing) wantsNot(from, to int) bool {
	for i := from; i+1 < to; i++ {
		if l.Word(i) == "not" && (l.Word(i+1) == "want" || l.Word(i+1) == "like" || l.Word(i+1) == "wish" || l.Word(i+1) == "care") {
			return true
		}
	}
	return false
}

// theEnds are the posts at both ends, by a word that is said of them beside their size.
var theEnds = NounOf("end post")

// sizedEnds reads "ends" for the end posts beside a size: "4x4 ends", "ends 6x6", "the corners are 6x6s". It returns the atom
// after it, and i where there is no size.
func (l *lexing) sizedEnds(i int) int {
	switch l.Word(i) {
	case "ends", "corners", "outers":
	default:
		return i
	}
	sized := false
	if t := l.last(); t != nil && t.Kind == lexicon.Size && l.before == "" {
		next := l.Word(i + 1)
		sized = next == "" || l.Kind(i+1) == scan.Sign || next == "and" || next == "but" || next == "with"
	}
	if !sized && (l.before == "" || l.before == "the" || l.before == "two" || l.before == "my" || l.before == "our") && (l.last() == nil || l.breaks(*l.last())) {
		j := i + 1
		for j < i+4 && (lexicon.Vocab().Neutral[l.Word(j)] || l.Word(j) == ":" || l.Word(j) == "=") {
			j++
		}
		_, _, sized = l.Size(j)
	}
	if !sized {
		return i
	}
	l.add(lexicon.Part, i, i+1).Found = theEnds
	return i + 1
}
