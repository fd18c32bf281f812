package lex

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// buying settles words of money and of what is bought by what stands beside them.
func (l *lexing) buying() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		switch {
		case t.Kind == lexicon.PriceVerb && (t.Text == "pay" || t.Text == "paying") && (next.Kind == lexicon.Rel || next.Kind == lexicon.Over || next.Kind == lexicon.Under || next.Kind == lexicon.Bound) && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Num:
			t.Kind, t.Found = lexicon.Part, budgetNoun // "don't want to pay more than 300"
		case t.Kind == lexicon.Part && t.Key() == "kerf" && next.Kind == lexicon.Up:
			l.drop(i + 1) // "the saw eats up an eighth"
		case t.Kind == lexicon.Sell && Buys[t.Text] && next.Kind == lexicon.Num && next.Amt.Unit == measure.Bare && i+2 < len(l.tokens) && l.extraBoards(i+2):
			l.tokens[i+2].Kind, l.tokens[i+2].Found = lexicon.Part, spareNoun // "order two extra boards"
			l.drop(i)
		case t.Kind == lexicon.Rel && t.Text == "up to" && l.priceNext(i+1) && l.pricedBefore(i):
			t.Kind, t.Found = lexicon.PriceVerb, []lexicon.Found{{Entry: costs}} // "twelve footers are up to 13.85"
		case t.Kind == lexicon.Down && next.Kind == lexicon.To && l.priceNext(i+2) && l.pricedBefore(i):
			t.Kind, t.Found = lexicon.PriceVerb, []lexicon.Found{{Entry: costs}}
			l.drop(i + 1)
		case next.Kind == lexicon.Num && l.oneOfLength(i+1):
			feet12 := *next.Amt
			feet12.Val, feet12.Unit, feet12.Footer, feet12.Per = next.Amt.Val.Mul(measure.Twelve), measure.Feet, true, measure.Twelve
			next.Amt = &feet12 // "they want 14.50 for a sixteen"
		}
	}
}

var (
	budgetNoun = NounOf("budget")
	// Buys are verbs of buying.
	Buys = scan.WordSet("order buy ordering buying purchase get")
)

// priceNext reports whether token i is a price: it is written as one, or told in words as dollars and cents.
func (l *lexing) priceNext(i int) bool {
	if i >= len(l.tokens) || l.tokens[i].Kind != lexicon.Num {
		return false
	}
	a := l.tokens[i].Amt
	if a.Unit == measure.Money || a.Money2 {
		return true
	}
	return i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Num && a.Words && l.tokens[i+1].Amt.Words && a.Unit == measure.Bare && l.tokens[i+1].Amt.Unit == measure.Bare && exact.Int(9).Less(l.tokens[i+1].Amt.Val)
}

// pricedBefore reports whether something that has a price, and nothing else that has a size, stands right before token i.
func (l *lexing) pricedBefore(i int) bool {
	if i == 0 {
		return false
	}
	t := &l.tokens[i-1]
	return t.Kind == lexicon.Item || t.Is(lexicon.Item) || t.Kind == lexicon.Size || t.Kind == lexicon.Num && t.Amt.Footer
}

// extraBoards reports whether token i is "extra boards" at the end of its clause.
func (l *lexing) extraBoards(i int) bool {
	t := &l.tokens[i]
	if t.Kind != lexicon.Extra || !strings.HasPrefix(t.Text, "extra ") {
		return false
	}
	return i+1 == len(l.tokens) || l.tokens[i+1].Kind == lexicon.Comma || l.tokens[i+1].Kind == lexicon.Stop || l.tokens[i+1].Kind == lexicon.Reason
}

// oneOfLength reports whether number i is a board by its length, beside its price: "14.50 for a sixteen".
func (l *lexing) oneOfLength(i int) bool {
	t := &l.tokens[i]
	if LastWord(t.Before) != "a" || t.Amt.Unit != measure.Bare || !t.Amt.Words || !t.Amt.Val.IsInt() || t.Amt.Val.Less(exact.Int(6)) || exact.Int(20).Less(t.Amt.Val) {
		return false
	}
	if i+1 < len(l.tokens) && l.tokens[i+1].Kind != lexicon.PriceVerb && l.tokens[i+1].Kind != lexicon.Size && l.tokens[i+1].Kind != lexicon.Comma && l.tokens[i+1].Kind != lexicon.Stop {
		return false
	}
	for k := range l.tokens {
		if n := &l.tokens[k]; n.Kind == lexicon.Num && k != i && (n.Amt.Unit == measure.Money || n.Amt.Money2) {
			return true
		}
	}
	return false
}

// aStiffener counts "a stiffener" in a bay as one: "put a stiffener in every bay". Where it is added, asked after or denied,
// it is left as it is.
func (l *lexing) aStiffener() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		switch t.Kind {
		case lexicon.Change, lexicon.More, lexicon.Another, lexicon.Move, lexicon.No, lexicon.Not, lexicon.Wh, lexicon.Where, lexicon.Cmd, lexicon.Quest:
			return
		case lexicon.Head:
			if t.Key() != string(act.State) && t.Key() != string(act.WhatIf) && t.Key() != string(act.Check) {
				return
			}
		}
		if t.Kind != lexicon.Part || t.Key() != "stiffener" || t.Plural() || LastWord(t.Before) != "a" || next.Kind != lexicon.Loc || next.Key() != "per bay" {
			continue
		}
		one := Token{Kind: lexicon.Num, Text: "one", Amt: &measure.Amount{Number: measure.WordInt(1)}, At: t.At, End: t.At, first: t.first, Before: strings.TrimSuffix(strings.TrimSuffix(t.Before, "a"), " ")}
		t.Before = ""
		l.tokens = append(l.tokens[:i:i], append([]Token{one}, l.tokens[i:]...)...)
		return
	}
}
