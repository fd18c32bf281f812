package lex

import (
	"saywright/grammar/act"
	"saywright/grammar/lexicon"
)

// midClause reports whether a part or a figure stands right before, with no break.
func (l *lexing) midClause() bool {
	t := l.last()
	return t != nil && (t.Kind == lexicon.Part || t.Kind == lexicon.Loc || t.Kind == lexicon.Num || t.Kind == lexicon.Dim || t.Kind == lexicon.Size)
}

// supposesBefore reports whether a word that asks or supposes stands before in the sentence: "would six boards do it".
func (l *lexing) supposesBefore() bool {
	return l.saidSince(func(t *Token) bool {
		switch FirstWord(t.Before) {
		case "would", "will", "could", "can", "might", "does", "do":
			return true
		}
		return t.Kind == lexicon.Head && t.Key() == string(act.WhatIf)
	})
}

// cutsNoBoard reports whether what stands right before is no board, so that "cut down to" only makes it less.
func (l *lexing) cutsNoBoard() bool {
	t := l.last()
	if n := len(l.tokens); n > 1 && t.Kind == lexicon.Num {
		t = &l.tokens[n-2] // "bay one was cut down"
	}
	return t != nil && t.Kind == lexicon.Part && t.Key() != "rail" && t.Key() != "post" && t.Key() != "added post" && t.Key() != "stiffener" && t.Key() != "bottom"
}
