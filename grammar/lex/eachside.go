package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver/exact"
)

// openingsApart numbers two openings that are told by their sides: "two openings, one on the left and one on the right", "one
// at each end". They are counted from the left.
func (l *lexing) openingsApart() {
	for p := range l.tokens {
		part := &l.tokens[p]
		if part.Kind != lexicon.Part || part.Key() != "opening" || part.Index > 0 {
			continue
		}
		two := p > 0 && l.tokens[p-1].Kind == lexicon.Num && l.tokens[p-1].Amt.Unit == measure.Bare && l.tokens[p-1].Amt.Val.Eq(exact.Int(2))
		one := LastWord(part.Before) == "an" || LastWord(part.Before) == "a"
		if !two && !one {
			continue
		}
		next, sides := l.twoSides(p+1, two)
		if next == 0 {
			continue
		}
		var put []Token
		if one {
			part.Before = ""
			part.Text = "openings"
			put = append(put, Token{Kind: lexicon.Num, Text: "two", Amt: &measure.Amount{Number: measure.WordInt(2)}, At: part.At, End: part.At, first: part.first})
		}
		put = append(put, *part)
		for n, side := range sides {
			put = append(put, Token{Kind: lexicon.Comma, Text: ",", At: part.At, End: part.End, first: part.first},
				Token{Kind: lexicon.Part, Found: openingNoun, Text: "opening", Index: n + 1, Indexes: []int{n + 1}, At: part.At, End: part.End, first: part.first}, side)
		}
		put = append(put, l.tokens[next:]...)
		l.tokens = append(l.tokens[:p:p], put...)
		return
	}
}

var openingNoun = NounOf("opening")

// twoSides reads where two openings are, from token i on. It returns the token behind, 0 where that is not told.
func (l *lexing) twoSides(i int, two bool) (next int, sides [2]Token) {
	skip := func() {
		for i < len(l.tokens) && (l.tokens[i].Kind == lexicon.Comma || l.tokens[i].Kind == lexicon.And) {
			i++
		}
	}
	counted := func() bool {
		if i >= len(l.tokens) {
			return false
		}
		t := &l.tokens[i]
		if t.Kind == lexicon.Num && t.Amt.Unit == measure.Bare && t.Amt.Val.Eq(OneRat) && t.Amt.Words || t.Kind == lexicon.Unknown && t.Text == "other" || t.Kind == lexicon.Another {
			i++
			return true
		}
		return false
	}
	skip()
	one := two && counted()
	if i >= len(l.tokens) {
		return 0, sides
	}
	if t := l.tokens[i]; (t.Key() == "each end" || t.Key() == "ends") && (strings.Contains(t.Text, "each") || strings.Contains(t.Text, "both") || strings.Contains(t.Text, "either")) {
		left, right := t, t
		left.Kind, left.Found, left.Text = lexicon.Side, []lexicon.Found{{Entry: onLeft}}, "left"
		right.Kind, right.Found, right.Text = lexicon.Side, []lexicon.Found{{Entry: onRight}}, "right"
		return i + 1, [2]Token{left, right}
	}
	if !two || l.tokens[i].Kind != lexicon.Side {
		return 0, sides
	}
	sides[0] = l.tokens[i]
	i++
	joined := i
	skip()
	if i == joined || one && !counted() || i >= len(l.tokens) || l.tokens[i].Kind != lexicon.Side {
		return 0, sides
	}
	sides[1] = l.tokens[i]
	a, b := sideOrder[sides[0].Key()], sideOrder[sides[1].Key()]
	if a == b {
		return 0, sides
	}
	if a > b {
		sides[0], sides[1] = sides[1], sides[0]
	}
	return i + 1, sides
}

var (
	sideOrder = map[string]int{"left": 1, "middle": 2, "right": 3}
	onLeft    = &lexicon.Entry{Kind: lexicon.Side, Key: "left", Sense: lexicon.Meaning("opening side")}
	onRight   = &lexicon.Entry{Kind: lexicon.Side, Key: "right", Sense: lexicon.Meaning("opening side")}
)
