package paraphrase

import (
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Pleased makes a question of names alone that end in a please: "rail count, please".
func Pleased(atoms []scan.Atom, in []lex.Token) []lex.Token {
	n := len(atoms)
	for n > 0 && (atoms[n-1].Text == "." || atoms[n-1].Text == "!") {
		n--
	}
	if n == 0 || atoms[n-1].Text != "please" && atoms[0].Text != "please" && !listsNames(in) {
		return in
	}
	part := false
	if i := len(in) - 1; i > 0 && in[i].Kind == lexicon.Num && in[i].Before == "all" && in[i-1].Kind == lexicon.Comma {
		in = in[:i-1] // "gap, opening, post height, all three please"
	}
	for i := range in {
		switch in[i].Kind {
		case lexicon.Part, lexicon.Loc:
			part = part || in[i].Key() != "wall"
		case lexicon.Dim, lexicon.And, lexicon.Comma, lexicon.Stop, lexicon.Knowing, lexicon.TailFill:
		default:
			return in
		}
	}
	for len(in) > 0 && (in[len(in)-1].Kind == lexicon.Stop || in[len(in)-1].Kind == lexicon.Comma) {
		in = in[:len(in)-1]
	}
	if !part {
		return in
	}
	return append(in, lex.Token{Kind: lexicon.QMark, Text: "?", At: atoms[n-1].At, End: atoms[n-1].End})
}
