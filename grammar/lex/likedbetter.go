package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// placeFollows reports whether a place or a figure is told right behind atom i, with the word that leads to it: "on the right", "at
// three inches". What stands before it takes nothing that was tried.
func (l *lexing) placeFollows(i int) bool {
	switch l.Word(i) {
	case "on", "at", "in", "against", "to", "by", "beside", "near", "under", "over", "below", "above":
	default:
		return false
	}
	if f := lexicon.Vocab().Match(l.Reader.Atoms, i); len(f) > 0 && (f[0].Entry.Kind == lexicon.Side || f[0].Entry.Kind == lexicon.FromSide) {
		return true
	}
	for i++; lexicon.Vocab().Articles[l.Word(i)] || l.Word(i) == "about"; i++ {
	}
	if f := lexicon.Vocab().Match(l.Reader.Atoms, i); len(f) > 0 && (f[0].Entry.Kind == lexicon.Side || f[0].Entry.Kind == lexicon.FromSide) {
		return true
	}
	_, _, ok := l.Length(i)
	return ok
}

// likedBetter steps over "I like it better" in front of a place: with something said before, it corrects that. It returns the atom
// after it.
func (l *lexing) likedBetter(i, next int) int {
	said := l.Text(i, next)
	if t := l.last(); t != nil && strings.HasSuffix(said, "better") && l.saidSince(func(t *Token) bool { return t.Kind == lexicon.Num || t.Kind == lexicon.Side }) {
		l.add(lexicon.Fix, i, next).Found = []lexicon.Found{{Entry: setRight}}
		return next
	}
	l.empty(said)
	return next
}

// supposes reports whether a "say" at atom i begins what is only supposed: nothing but words that lead on stands before it, and who
// has or sells something behind it.
func (l *lexing) supposes(i int) bool {
	if l.Word(i) != "say" {
		return false
	}
	if t := l.last(); t != nil && t.Kind != lexicon.Comma && t.Kind != lexicon.Stop && t.Kind != lexicon.Fix && t.Kind != lexicon.And && t.Kind != lexicon.QMark {
		return false
	}
	for _, w := range strings.Fields(l.before) {
		if !LeadIns[w] {
			return false
		}
	}
	return l.Word(i+1) != "" && l.Kind(i+1) == scan.Word
}

// backTo takes "back to" in front of a figure for a correction where another was told before it: "two, no, three, ah, back to two". It
// returns the atom after it.
func (l *lexing) backTo(i int) int {
	j := i
	switch l.Word(j) {
	case "go", "going", "switch", "change", "put", "make":
		if j++; l.Word(j) == "it" || l.Word(j) == "that" {
			j++
		}
	}
	if l.Word(j) != "back" || l.Word(j+1) != "to" {
		return i
	}
	last := l.last()
	if last == nil || last.Kind != lexicon.Comma && last.Kind != lexicon.Stop && last.Kind != lexicon.Fix && last.Kind != lexicon.No && last.Kind != lexicon.And && last.Kind != lexicon.But {
		return i
	}
	if _, _, ok := l.Length(j + 2); !ok || !l.saidSince(func(t *Token) bool { return t.Kind == lexicon.Num }) {
		return i
	}
	l.before = ""
	l.add(lexicon.Fix, i, j+2).Found = []lexicon.Found{{Entry: setRight}}
	return j + 2
}

// AfterAll reports whether somebody is said to have something against what was said before: "they do have tens".
func AfterAll(t *Token) bool {
	if t == nil {
		return false
	}
	for _, w := range []string{" do have", " does have", " do carry", " does carry", " do sell", " does sell", " do stock", " does stock", " do keep", " does keep"} {
		if strings.Contains(t.Text, w) {
			return true
		}
	}
	return false
}
