package lex

import "saywright/grammar/lexicon"

// seemsSo steps over "seems a bit tall to me" behind a part of the wall, where more is said of it: "the wall seems a bit tall to
// me; bring it down by an inch".
func (l *lexing) seemsSo(i int) int {
	t := l.last()
	if t == nil || t.Kind != lexicon.Part && t.Kind != lexicon.Loc && t.Kind != lexicon.Wall {
		return i
	}
	f := lexicon.SeemingVocab().Match(l.Reader.Atoms, i)
	if len(f) == 0 || !l.endsClause(f[0].Next) || f[0].Next+1 >= len(l.Atoms) || l.Word(f[0].Next) == "?" {
		return i
	}
	l.empty(l.Text(i, f[0].Next))
	return f[0].Next
}
