package grammar

import (
	"io"
	"strings"

	"github.com/alecthomas/participle/v2/lexer"
)

// sound reads a number from a word that sounds like it, where nothing else can be meant: "to and a half", "for feet", "ate boards".
func (l *lexing) sound(i int) (amount, int, bool) {
	n, ok := homophones[l.word(i)]
	if !ok || l.kind(i) != aWord {
		return amount{}, i, false
	}
	if t := l.last(); t != nil && (t.kind == kNum && l.word(i) == "to" || t.kind == kMove) {
		return amount{}, i, false
	}
	a := amount{number: wordInt(n), sound: true}
	if l.word(i+1) == "and" {
		if f, next, ok := l.fraction(i + 2); ok && f.bad == "" && f.val.Less(oneRat) {
			a.val, a.frac = a.val.Add(f.val), true
			b, next, _ := l.withUnit(a, next)
			return b, next, true
		}
	}
	if l.kind(i+1) == aWord && len(l.word(i+1)) > 1 && l.word(i+1) != "in" {
		if _, _, _, ok := l.unit(i + 1); ok && !l.unitsMeant(i+2) {
			b, next, _ := l.withUnit(a, i+1)
			b.sound = true
			return b, next, true
		}
	}
	if l.word(i) == "ate" || l.word(i+1) == "of" && (l.word(i+2) == "them" || l.word(i+2) == "those" || l.word(i+2) == "these") {
		return a, i + 1, true // "there's too of 'em"
	}
	return amount{}, i, false
}

// unitsMeant reports whether "to feet …" goes on as a change of units.
func (l *lexing) unitsMeant(i int) bool {
	return l.word(i) == "and" && (footWords[l.word(i+1)] || inchWords[l.word(i+1)])
}

// lone reads an atom that no table knows: a sign, an ordinal, a unit, an empty word, or a word that is unknown.
func (l *lexing) lone(i int) int {
	w := l.word(i)
	if w == "s" && l.glued(i) && l.word(i-1) == "'" {
		return i + 1 // "rail 3's top"
	}
	switch l.kind(i) {
	case aSign:
		return l.sign(i)
	case aDigits, aVulgar:
		l.add(kUnknown, i, i+1)
		return i + 1
	}
	if n, next := l.ordinal(i); n > 0 {
		if one := l.word(next); (one == "one" || one == "ones") && l.word(next+1) != "more" {
			next++ // "the first one has a gap of 2"
		}
		l.add(kOrdinal, i, next).index = n
		return next
	}
	if w == "it" || w == "them" {
		l.add(kIt, i, i+1)
		return i + 1
	}
	if w == "than" {
		l.add(kThan, i, i+1)
		return i + 1
	}
	if _, _, next, ok := l.unit(i); ok && w != "in" && w != "m" {
		l.add(kUnit, i, next)
		return next
	}
	if w == "x" {
		l.add(kX, i, i+1)
		return i + 1
	}
	if w == "in" || vocab().neutral[w] {
		l.empty(w)
		return i + 1
	}
	l.add(kUnknown, i, i+1)
	return i + 1
}

// ordinals are the words of ordinals, with their numbers.
var ordinals = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7, "eighth": 8, "ninth": 9, "tenth": 10, "eleventh": 11, "twelfth": 12}

func (l *lexing) ordinal(i int) (n, next int) {
	if n := ordinals[l.word(i)]; n > 0 {
		return n, i + 1
	}
	return l.figureOrdinal(i)
}

// figureOrdinal reads "1st", "2nd", "3rd"; "4th" and on only in front of a part, for "a 4th" may be a fraction.
func (l *lexing) figureOrdinal(i int) (n, next int) {
	n, ok := atoi(l.word(i))
	end := l.word(i + 1)
	if !ok || l.kind(i) != aDigits || !l.glued(i+1) || n < 1 || n > 12 || !ordinalEnds[end] || strings.HasSuffix(end, "s") {
		return 0, i
	}
	want := map[int]string{1: "st", 2: "nd", 3: "rd"}[n]
	switch {
	case l.last() != nil && l.last().kind == kNum && l.before == "":
		return 0, i
	case want != "" && end == want, want == "" && end == "th" && l.names(i+2):
		return n, i + 2
	}
	return 0, i
}

func (l *lexing) sign(i int) int {
	k := kUnknown
	switch w := l.word(i); w {
	case ",", "(", ")", ":", "--", "[", "]", "|", ";":
		k = kComma
		if w == ";" && l.saysSo() {
			k = kStop // "how big are the gaps; rails are 2x6"
		}
	case "!":
		k = kStop
	case ".":
		k = kStop
		if l.glued(i+1) && l.kind(i+1) == aWord && l.glued(i) {
			k = kUnknown
		}
	case "?":
		k = kQMark
	case "-":
		k = l.dash(i)
	case "*":
		k = kTimes
	case `"`, "'", "#":
		return i + 1
	case "/":
		k = kOr
		if l.kind(i+1) == aDigits || l.kind(i-1) == aDigits {
			k = kUnknown
		}
	}
	if k == kChange {
		t := l.add(kChange, i, i+1)
		t.found = []found{{entry: minusSign}}
		return i + 1
	}
	l.add(k, i, i+1)
	return i + 1
}

// saysSo reports whether the sentence so far asks, tries, claims or orders something, or holds a figure: then a semicolon ends it.
// What only leads up to what is wished does neither: "the wall seems tall; bring it down an inch".
func (l *lexing) saysSo() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; t.kind {
		case kStop, kQMark:
			return false
		case kWh, kWhere, kQuest, kTeachHead, kCmd, kNum, kSize:
			return true
		case kHead:
			if t.key() != string(State) {
				return true
			}
		}
	}
	return false
}

// minusSign is the entry of what lessens.
var minusSign = &entry{kind: kChange, key: "-="}

// plusSign is the entry of what adds.
var plusSign = &entry{kind: kChange, key: "+="}

// dash tells a minus, a range and a break apart.
func (l *lexing) dash(i int) tokenKind {
	t := l.last()
	number := l.kind(i+1) == aDigits || l.kind(i+1) == aVulgar
	switch {
	case t != nil && t.kind == kNum && (number || l.glued(i) == l.glued(i+1)):
		return kDash
	case number && l.glued(i+1) && !l.glued(i):
		return kChange
	case !l.glued(i+1) && number:
		return kUnknown // "gap - 1/4": a minus or a break
	}
	return kComma
}

// definition hands the tokens of a line to participle. The place of a token in the list is its offset.
type definition struct{}

// Symbols are the classes that the syntax speaks of, by name.
func (definition) Symbols() map[string]lexer.TokenType { return symbols }

// Lex is never asked: lines come through tokenStream.
func (definition) Lex(string, io.Reader) (lexer.Lexer, error) { return &tokenStream{}, nil }

// tokenStream is the lexer.Lexer of one line.
type tokenStream struct {
	tokens []token
	i      int
}

// Next is the next token, as participle takes it.
func (s *tokenStream) Next() (lexer.Token, error) {
	if s.i >= len(s.tokens) {
		return lexer.EOFToken(lexer.Position{Offset: len(s.tokens)}), nil
	}
	t := &s.tokens[s.i]
	kind := t.kind
	if !told[kind] {
		kind = wordKind
	}
	out := lexer.Token{Type: kind, Value: t.text, Pos: lexer.Position{Offset: s.i, Line: 1, Column: t.at + 1}}
	s.i++
	return out, nil
}

// names reports whether a part is named at i.
func (l *lexing) names(i int) bool {
	f := vocab().match(l.reader.atoms, i)
	return len(f) > 0 && f[0].entry.kind == kPart
}

func (l *lexing) negative(i int) int {
	a, next, ok := l.length(i + 1)
	if !ok {
		return i
	}
	a.val, a.minus = a.val.Neg(), true
	t := l.add(kNum, i, next)
	t.amt = &a
	return next
}
