package lex

import (
	"slices"
	"strings"

	"saywright/grammar/lexicon"
)

// madeOf drops "out of" between a wall or its boards and the size they are made of: "a wall 42 high out of two by sixes".
func (l *lexing) madeOf() {
	for i := 1; i+1 < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.Kind == lexicon.SellLess && t.Text == "out of" && l.tokens[i+1].Kind == lexicon.Size && slices.ContainsFunc(l.tokens[:i], func(t Token) bool { return t.Kind == lexicon.Part && (t.Key() == "wall" || t.Key() == "rail") }) {
			l.drop(i)
		}
	}
}

// hasNone takes "the yard doesn't have twelves" for lengths that are gone.
func (l *lexing) hasNone() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t, not, have, long := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if t.Kind != lexicon.Sell || !strings.HasSuffix(t.Text, " does") && !strings.HasSuffix(t.Text, " do") || not.Kind != lexicon.Not || not.Text != "not" || have.Kind != lexicon.Have && have.Kind != lexicon.Sell || long.Kind != lexicon.Num || !long.Amt.Footer {
			continue
		}
		t.Kind, t.Found = lexicon.SellLess, []lexicon.Found{{Entry: soldOut}}
		t.Text = "do not have"
		l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
		for j := i + 2; j < len(l.tokens); j++ {
			if k := l.tokens[j].Kind; k == lexicon.SellLess && strings.HasPrefix(l.tokens[j].Text, "any") {
				l.tokens = append(l.tokens[:j], l.tokens[j+1:]...)
				break
			} else if k == lexicon.Stop || k == lexicon.QMark {
				break
			}
		}
	}
}
