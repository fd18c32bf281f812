package lex

import (
	"io"
	"strings"

	"github.com/alecthomas/participle/v2/lexer"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// sound reads a number from a word that sounds like it, where nothing else can be meant: "to and a half", "for feet", "ate boards".
func (l *lexing) sound(i int) (measure.Amount, int, bool) {
	n, ok := measure.Homophones[l.Word(i)]
	if !ok || l.Kind(i) != scan.Word {
		return measure.Amount{}, i, false
	}
	if t := l.last(); t != nil && (t.Kind == lexicon.Num && l.Word(i) == "to" || t.Kind == lexicon.Move) {
		return measure.Amount{}, i, false
	}
	a := measure.Amount{Number: measure.WordInt(n), Sound: true}
	if l.Word(i+1) == "and" {
		if f, next, ok := l.Fraction(i + 2); ok && f.Bad == "" && f.Val.Less(OneRat) {
			a.Val, a.Frac = a.Val.Add(f.Val), true
			b, next, _ := l.WithUnit(a, next)
			return b, next, true
		}
	}
	if l.Kind(i+1) == scan.Word && len(l.Word(i+1)) > 1 && l.Word(i+1) != "in" {
		if _, _, _, ok := l.Unit(i + 1); ok && !l.unitsMeant(i+2) {
			b, next, _ := l.WithUnit(a, i+1)
			b.Sound = true
			return b, next, true
		}
	}
	if l.Word(i) == "ate" || l.Word(i+1) == "of" && (l.Word(i+2) == "them" || l.Word(i+2) == "those" || l.Word(i+2) == "these") {
		return a, i + 1, true // "there's too of 'em"
	}
	return measure.Amount{}, i, false
}

// unitsMeant reports whether "to feet …" goes on as a change of units.
func (l *lexing) unitsMeant(i int) bool {
	return l.Word(i) == "and" && (measure.FootWords[l.Word(i+1)] || measure.InchWords[l.Word(i+1)])
}

// lone reads an atom that no table knows: a sign, an ordinal, a unit, an empty word, or a word that is unknown.
func (l *lexing) lone(i int) int {
	w := l.Word(i)
	if w == "s" && l.Glued(i) && l.Word(i-1) == "'" {
		return i + 1 // "rail 3's top"
	}
	switch l.Kind(i) {
	case scan.Sign:
		return l.sign(i)
	case scan.Digits, scan.Vulgar:
		l.add(lexicon.Unknown, i, i+1)
		return i + 1
	}
	if n, next := l.ordinal(i); n > 0 {
		if one := l.Word(next); (one == "one" || one == "ones") && l.Word(next+1) != "more" {
			next++ // "the first one has a gap of 2"
		}
		l.add(lexicon.Ordinal, i, next).Index = n
		return next
	}
	if w == "it" || w == "them" {
		l.add(lexicon.It, i, i+1)
		return i + 1
	}
	if w == "than" {
		l.add(lexicon.Than, i, i+1)
		return i + 1
	}
	if _, _, next, ok := l.Unit(i); ok && w != "in" && w != "m" {
		l.add(lexicon.Unit, i, next)
		return next
	}
	if w == "x" {
		l.add(lexicon.X, i, i+1)
		return i + 1
	}
	if w == "in" || lexicon.Vocab().Neutral[w] {
		l.empty(w)
		return i + 1
	}
	l.add(lexicon.Unknown, i, i+1)
	return i + 1
}

func (l *lexing) ordinal(i int) (n, next int) {
	if n := measure.Ordinals[l.Word(i)]; n > 0 {
		return n, i + 1
	}
	return l.figureOrdinal(i)
}

// figureOrdinal reads "1st", "2nd", "3rd"; "4th" and on only in front of a part, for "a 4th" may be a fraction.
func (l *lexing) figureOrdinal(i int) (n, next int) {
	n, ok := measure.Atoi(l.Word(i))
	end := l.Word(i + 1)
	if !ok || l.Kind(i) != scan.Digits || !l.Glued(i+1) || n < 1 || n > 12 || !measure.OrdinalEnds[end] || strings.HasSuffix(end, "s") {
		return 0, i
	}
	want := map[int]string{1: "st", 2: "nd", 3: "rd"}[n]
	switch {
	case l.last() != nil && l.last().Kind == lexicon.Num && l.before == "":
		return 0, i
	case want != "" && end == want, want == "" && end == "th" && l.names(i+2):
		return n, i + 2
	}
	return 0, i
}

func (l *lexing) sign(i int) int {
	k := lexicon.Unknown
	switch w := l.Word(i); w {
	case ",", "(", ")", ":", "--", "[", "]", "|", ";":
		k = lexicon.Comma
		if w == ";" && l.saysSo() {
			k = lexicon.Stop // "how big are the gaps; rails are 2x6"
		}
	case "!":
		k = lexicon.Stop
	case ".":
		k = lexicon.Stop
		if l.Glued(i+1) && l.Kind(i+1) == scan.Word && l.Glued(i) {
			k = lexicon.Unknown
		}
	case "?":
		k = lexicon.QMark
	case "-":
		k = l.dash(i)
	case "*":
		k = lexicon.Times
	case `"`, "'", "#":
		return i + 1
	case "/":
		k = lexicon.Or
		if l.Kind(i+1) == scan.Digits || l.Kind(i-1) == scan.Digits {
			k = lexicon.Unknown
		}
	}
	if k == lexicon.Change {
		t := l.add(lexicon.Change, i, i+1)
		t.Found = []lexicon.Found{{Entry: MinusSign}}
		return i + 1
	}
	l.add(k, i, i+1)
	return i + 1
}

// saysSo reports whether the sentence so far asks, tries, claims or orders something, or holds a figure: then a semicolon ends it.
// What only leads up to what is wished does neither: "the wall seems tall; bring it down an inch".
func (l *lexing) saysSo() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; t.Kind {
		case lexicon.Stop, lexicon.QMark:
			return false
		case lexicon.Wh, lexicon.Where, lexicon.Quest, lexicon.TeachHead, lexicon.Cmd, lexicon.Num, lexicon.Size:
			return true
		case lexicon.Head:
			if t.Key() != string(act.State) {
				return true
			}
		}
	}
	return false
}

// MinusSign is the entry of what lessens.
var MinusSign = &lexicon.Entry{Kind: lexicon.Change, Key: "-="}

// PlusSign is the entry of what adds.
var PlusSign = &lexicon.Entry{Kind: lexicon.Change, Key: "+="}

// dash tells a minus, a range and a break apart.
func (l *lexing) dash(i int) lexicon.Kind {
	t := l.last()
	number := l.Kind(i+1) == scan.Digits || l.Kind(i+1) == scan.Vulgar
	switch {
	case t != nil && t.Kind == lexicon.Num && (number || l.Glued(i) == l.Glued(i+1)):
		return lexicon.Dash
	case number && l.Glued(i+1) && !l.Glued(i):
		return lexicon.Change
	case !l.Glued(i+1) && number:
		return lexicon.Unknown // "gap - 1/4": a minus or a break
	}
	return lexicon.Comma
}

// Definition hands the tokens of a line to participle. The place of a token in the list is its offset.
type Definition struct{}

// Symbols are the classes that the syntax speaks of, by name.
func (Definition) Symbols() map[string]lexer.TokenType { return lexicon.Symbols }

// Lex is never asked: lines come through TokenStream.
func (Definition) Lex(string, io.Reader) (lexer.Lexer, error) { return &TokenStream{}, nil }

// TokenStream is the lexer.Lexer of one line.
type TokenStream struct {
	Tokens []Token
	i      int
}

// Next is the next token, as participle takes it.
func (s *TokenStream) Next() (lexer.Token, error) {
	if s.i >= len(s.Tokens) {
		return lexer.EOFToken(lexer.Position{Offset: len(s.Tokens)}), nil
	}
	t := &s.Tokens[s.i]
	kind := t.Kind
	if !lexicon.Told[kind] {
		kind = lexicon.WordKind
	}
	out := lexer.Token{Type: kind, Value: t.Text, Pos: lexer.Position{Offset: s.i, Line: 1, Column: t.At + 1}}
	s.i++
	return out, nil
}

// names reports whether a part is named at i.
func (l *lexing) names(i int) bool {
	f := lexicon.Vocab().Match(l.Reader.Atoms, i)
	return len(f) > 0 && f[0].Entry.Kind == lexicon.Part
}

func (l *lexing) negative(i int) int {
	a, next, ok := l.Length(i + 1)
	if !ok {
		return i
	}
	a.Val, a.Minus = a.Val.Neg(), true
	t := l.add(lexicon.Num, i, next)
	t.Amt = &a
	return next
}

// OrdinalAt is the ordinal that stands in digits at an atom of a line, 0 where none does, and the atom behind it.
func OrdinalAt(r measure.Reader, i int) (n, next int) { return (&lexing{Reader: r}).ordinalFigure(i) }

// ordinalFigure is the number of "3rd".
func (l *lexing) ordinalFigure(i int) (n, next int) {
	if l.Kind(i) != scan.Digits {
		return 0, i + 1
	}
	if n, next = l.figureOrdinal(i); n == 0 {
		return 0, i + 1
	}
	return n, next
}
