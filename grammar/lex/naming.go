package lex

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// asItIs are words that go on after an "as" that leads to no name.
var asItIs = map[string]bool{"it": true, "is": true, "they": true, "i": true, "we": true, "you": true, "possible": true, "usual": true, "before": true, "planned": true, "follows": true, "well": true, "if": true}

// compares reports whether plans were compared before the last token, and saves whether one was saved.
func (l *lexing) compares() bool { return l.commanded("compare") }

func (l *lexing) saves() bool { return l.commanded("save") }

func (l *lexing) commanded(key string) bool {
	for i := range l.tokens[:len(l.tokens)-1] {
		if t := &l.tokens[i]; t.Kind == lexicon.Cmd && t.Key() == key {
			return true
		}
	}
	return false
}

// calledLater returns the atom after a "called" or "saved as" that stands a few words on in the same breath, and i where there
// is none: "my carport plan called garden two".
func (l *lexing) calledLater(i int) int {
	for j := i; j < i+6 && l.Kind(j) == scan.Word && l.Word(j) != "and" && l.Word(j) != "with" && l.Word(j) != "to"; j++ {
		switch w, next := l.Word(j), l.Word(j+1); {
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
	for ; i < len(l.Atoms) && l.Word(i) != "." && l.Word(i) != "?" && l.Word(i) != ","; i++ {
		if _, _, ok := l.Length(i); ok {
			return n > 1
		}
		n++
	}
	return false
}

// opensGap reports whether "open" is said of a part of the wall rather than of a plan.
func (l *lexing) opensGap(i, end int) bool {
	for j := i; j < end; j++ {
		for _, f := range lexicon.Vocab().Match(l.Reader.Atoms, j) {
			if k := f.Entry.Kind; j == i && (k == lexicon.Part && f.Entry.Key != "wall" && f.Entry.Key != "pool" || k == lexicon.Up || k == lexicon.Out || k == lexicon.It) {
				return true
			}
		}
		if j == i && (l.Word(j) == "it" || l.Word(j) == "them") && j+1 < end {
			return true
		}
	}
	return false
}

// measures reports whether a length with a unit stands between two atoms: then "open" is no command with a name.
func (l *lexing) measures(i, end int) bool {
	for ; i < end; i++ {
		if a, _, ok := l.Length(i); ok && a.Unit != measure.Bare || l.Word(i) == "min" || l.Word(i) == "max" {
			return true
		}
	}
	return false
}

// otherwise reads the phrase at i again without the command that it looked like.
func (l *lexing) otherwise(i int) int {
	f := lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Cmd)
	if len(f) == 0 {
		return i
	}
	return l.phrase(f, i)
}

// countsParts reports whether a number of parts, or a number alone beside one, stands at atom i where a name is looked for.
func (l *lexing) countsParts(i int) bool {
	_, next, ok := l.Length(i)
	if ok && l.Word(next) == "and" {
		_, next, ok = l.Length(next + 1) // "between five and six rails"
	}
	if !ok {
		return false
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, next)
	return len(f) > 0 && f[0].Entry.Kind == lexicon.Part
}

// nameAgain steps over a word of correction after a name, where another name follows: "… to porch.svg, no, to deck.svg".
func (l *lexing) nameAgain(key string, end int) int {
	i := end
	if l.Word(i) == "," || l.Word(i) == "." && !l.Glued(i+1) {
		i++
	}
	for (l.Word(i) == "hmm" || l.Word(i) == "hm" || l.Word(i) == "oh") && l.Word(i+1) == "," {
		i += 2
	}
	next := l.pastFixes(i)
	if next == i || l.Word(i) == "no" && next == i+1 && l.noPartsAt(next) {
		return end
	}
	if w := l.Word(next - 1); (w == "it" || w == "that") && next < len(l.Atoms) {
		if _, _, ok := l.Length(next); ok {
			return end // "save as porch, make it 48 high": that is no other name
		}
	}
	i = next
	for l.Word(i) == "," || l.Word(i) == "to" || l.Word(i) == "as" || l.Word(i) == "with" {
		i++
	}
	if l.commandAt(i) || l.nameEnd(key, i) == i {
		return end
	}
	return i
}

// noPartsAt reports whether what a "no" stands before is a part of the wall: "save it as sunroom. no openings".
func (l *lexing) noPartsAt(i int) bool {
	if l.Word(i) == "more" || l.Word(i) == "longer" || chunk.SpelledNumber(l.Word(i)) {
		return true
	}
	for j := i; j < i+3 && j < len(l.Atoms) && l.Atoms[j].Kind == scan.Word; j++ {
		if chunk.NamesPart(l.Atoms, j) {
			return true
		}
	}
	return false
}

// pastFixes steps over words of correction: "no, sorry, …". It returns i where there are none.
func (l *lexing) pastFixes(i int) int {
	for from := i; ; {
		f := lexicon.Vocab().Match(l.Reader.Atoms, i)
		switch {
		case len(f) > 0 && f[0].Entry.Kind == lexicon.Fix:
			i = f[0].Next
		case l.Word(i) == "no", l.Word(i) == "," && i > from:
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
	if !WallLead[l.Word(i)] || !lexicon.Vocab().Articles[l.Word(i+1)] || !WallNames[l.Word(i+2)] || l.Word(i+3) != "wall" {
		return 0
	}
	if f := lexicon.Vocab().Match(l.Reader.Atoms, i); len(f) == 0 || f[0].Next != i+3 || f[0].Entry.Kind != lexicon.Have && f[0].Entry.Kind != lexicon.HaveTail {
		return 0
	}
	return l.wall(i + 2)
}
