package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// asMany reports whether a factor is told of a number of things: "twice as many".
func (k *clause) asMany() bool {
	for _, w := range k.words {
		if t := k.items[w].Token; t.As(lexicon.Factor) != nil || t.Kind == lexicon.Times {
			for _, v := range strings.Fields(t.Text) {
				if v == "many" {
					return true
				}
			}
		}
	}
	return false
}

// ofMany reports whether a word of likeness counts: "as many as", "twice as many as".
func (k *clause) ofMany() bool {
	return slices.ContainsFunc(k.words, func(i int) bool {
		t := k.items[i]
		return (t.Kind == lexicon.Same || t.Kind == lexicon.Factor || t.Kind == lexicon.Times) && (lex.EndsIn(t.Text, "many") || lex.EndsIn(t.Text, "many as"))
	})
}
