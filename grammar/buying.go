package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// buying settles words of money and of what is bought by what stands beside them.
func (l *lexing) buying() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		switch {
		case t.kind == kPriceVerb && (t.text == "pay" || t.text == "paying") && (next.kind == kRel || next.kind == kOver || next.kind == kUnder || next.kind == kBound) && i+2 < len(l.tokens) && l.tokens[i+2].kind == kNum:
			t.kind, t.found = kPart, budgetNoun // "don't want to pay more than 300"
		case t.kind == kPart && t.key() == "kerf" && next.kind == kUp:
			l.drop(i + 1) // "the saw eats up an eighth"
		case t.kind == kSell && buys[t.text] && next.kind == kNum && next.amt.unit == bare && i+2 < len(l.tokens) && l.extraBoards(i+2):
			l.tokens[i+2].kind, l.tokens[i+2].found = kPart, spareNoun // "order two extra boards"
			l.drop(i)
		case t.kind == kRel && t.text == "up to" && l.priceNext(i+1) && l.pricedBefore(i):
			t.kind, t.found = kPriceVerb, []found{{entry: costs}} // "twelve footers are up to 13.85"
		case t.kind == kDown && next.kind == kTo && l.priceNext(i+2) && l.pricedBefore(i):
			t.kind, t.found = kPriceVerb, []found{{entry: costs}}
			l.drop(i + 1)
		case next.kind == kNum && l.oneOfLength(i+1):
			feet12 := *next.amt
			feet12.val, feet12.unit, feet12.footer, feet12.per = next.amt.val.Mul(twelve), feet, true, twelve
			next.amt = &feet12 // "they want 14.50 for a sixteen"
		}
	}
}

var (
	budgetNoun = nounOf("budget")
	// buys are verbs of buying.
	buys = wordSet("order buy ordering buying purchase get")
)

// priceNext reports whether token i is a price: it is written as one, or told in words as dollars and cents.
func (l *lexing) priceNext(i int) bool {
	if i >= len(l.tokens) || l.tokens[i].kind != kNum {
		return false
	}
	a := l.tokens[i].amt
	if a.unit == money || a.money2 {
		return true
	}
	return i+1 < len(l.tokens) && l.tokens[i+1].kind == kNum && a.words && l.tokens[i+1].amt.words && a.unit == bare && l.tokens[i+1].amt.unit == bare && exact.Int(9).Less(l.tokens[i+1].amt.val)
}

// pricedBefore reports whether something that has a price, and nothing else that has a size, stands right before token i.
func (l *lexing) pricedBefore(i int) bool {
	if i == 0 {
		return false
	}
	t := &l.tokens[i-1]
	return t.kind == kItem || t.is(kItem) || t.kind == kSize || t.kind == kNum && t.amt.footer
}

// extraBoards reports whether token i is "extra boards" at the end of its clause.
func (l *lexing) extraBoards(i int) bool {
	t := &l.tokens[i]
	if t.kind != kExtra || !strings.HasPrefix(t.text, "extra ") {
		return false
	}
	return i+1 == len(l.tokens) || l.tokens[i+1].kind == kComma || l.tokens[i+1].kind == kStop || l.tokens[i+1].kind == kReason
}

// oneOfLength reports whether number i is a board by its length, beside its price: "14.50 for a sixteen".
func (l *lexing) oneOfLength(i int) bool {
	t := &l.tokens[i]
	if lastWord(t.before) != "a" || t.amt.unit != bare || !t.amt.words || !t.amt.val.IsInt() || t.amt.val.Less(exact.Int(6)) || exact.Int(20).Less(t.amt.val) {
		return false
	}
	if i+1 < len(l.tokens) && l.tokens[i+1].kind != kPriceVerb && l.tokens[i+1].kind != kSize && l.tokens[i+1].kind != kComma && l.tokens[i+1].kind != kStop {
		return false
	}
	for k := range l.tokens {
		if n := &l.tokens[k]; n.kind == kNum && k != i && (n.amt.unit == money || n.amt.money2) {
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
		switch t.kind {
		case kChange, kMore, kAnother, kMove, kNo, kNot, kWh, kWhere, kCmd, kQuest:
			return
		case kHead:
			if t.key() != string(State) && t.key() != string(WhatIf) && t.key() != string(Check) {
				return
			}
		}
		if t.kind != kPart || t.key() != "stiffener" || t.plural() || lastWord(t.before) != "a" || next.kind != kLoc || next.key() != "per bay" {
			continue
		}
		one := token{kind: kNum, text: "one", amt: &amount{number: wordInt(1)}, at: t.at, end: t.at, first: t.first, before: strings.TrimSuffix(strings.TrimSuffix(t.before, "a"), " ")}
		t.before = ""
		l.tokens = append(l.tokens[:i:i], append([]token{one}, l.tokens[i:]...)...)
		return
	}
}
