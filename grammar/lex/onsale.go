package lex

import (
	"slices"
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// AsksFirst are words that make a question of a clause they open.
var AsksFirst = scan.WordSet("is are was were do does did will would can could if when once until unless after before whenever")

// BackAgain is what is there again, or now.
var BackAgain = &lexicon.Entry{Kind: lexicon.SellMore, Key: "+= in"}

// comesAndGoes reads what is told behind lengths of lumber: "12s gone, 14s in", "the sixteens are back". It returns the atom after
// it, and i where something else is told.
func (l *lexing) comesAndGoes(i int) int {
	if t := l.last(); t == nil || t.Kind != lexicon.Num || !t.Amt.Footer || l.before != "" {
		return i
	}
	if before := l.tokens[len(l.tokens)-1].Before; AsksFirst[FirstWord(before)] {
		return i // "are the 12s in"
	}
	j := i
	for w := l.Word(j); w == "is" || w == "are" || w == "was" || w == "were" || w == "all" || w == "now" || w == "have" || w == "has" || w == "been" || w == "came" || w == "come" || w == "both"; w = l.Word(j) {
		j++
	}
	e := soldOut
	switch l.Word(j) {
	case "gone", "out", "unavailable", "discontinued":
	case "in", "back":
		e = BackAgain
	default:
		return i
	}
	if j++; l.Word(j) == "in" && l.Word(j-1) == "back" {
		j++
	}
	if l.Word(j) == "of" && l.Word(j+1) == "stock" {
		j++
	}
	if w := l.Word(j + 1); l.Word(j) == "this" && (w == "morning" || w == "afternoon" || w == "week") {
		j += 2
	}
	for w := l.Word(j); w == "again" || w == "now" || w == "today" || w == "stock" || w == "already" || w == "too" || w == "also"; w = l.Word(j) {
		j++
	}
	if w := l.Word(j); w != "" && l.Kind(j) != scan.Sign && w != "and" && w != "but" && w != "so" {
		return i
	}
	if l.Word(i) == "in" && l.Word(i+1) == "stock" && j == i+2 {
		return i // "12s and 16s in stock" tells all there are
	}
	if e == BackAgain && l.Text(i, j) != "" && !strings.Contains(l.Text(i, j), "back") && strings.Contains(l.Text(i, j), "in stock") && l.onlyThose() {
		return i // "just the eights and tens are in stock today"
	}
	l.add(e.Kind, i, j).Found = []lexicon.Found{{Entry: e}}
	return j
}

// onlyThose reports whether an "only" was said.
func (l *lexing) onlyThose() bool {
	return slices.ContainsFunc(l.tokens, func(t Token) bool { return t.Kind == lexicon.Only })
}
