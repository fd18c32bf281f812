package lex

import (
	"saywright/grammar/act"
	"saywright/grammar/lexicon"
)

// asksWhy reports whether a reason was asked for in this sentence.
func (l *lexing) asksWhy() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark:
			return false
		case t.Kind == lexicon.Head && t.Key() == string(act.Why), t.Kind == lexicon.Cmd && t.Key() == "why that":
			return true
		}
	}
	return false
}

// namesPast is names, past articles.
func (l *lexing) namesPast(i int) bool {
	for lexicon.Vocab().Articles[l.Word(i)] {
		i++
	}
	for _, f := range lexicon.Vocab().Match(l.Reader.Atoms, i) {
		if f.Entry.Kind == lexicon.Part {
			return true
		}
	}
	return false
}

// besideSteps are words after which steps are a stair.
var besideSteps = map[string]bool{"with": true, "of": true, "near": true, "by": true, "beside": true, "to": true, "up": true, "on": true, "from": true, "at": true, "over": true, "facing": true}
