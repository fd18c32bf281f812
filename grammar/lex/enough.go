package lex

import (
	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// boughtAtAll settles questions and wishes of what is bought that are told by their number, their price or their share.
func (l *lexing) boughtAtAll() {
	l.boardsEnough()
	l.paidFor()
	l.costOf()
	l.forScrap()
	l.affords()
}

// boardsEnough takes boards that are asked to be enough for a claim of how many to buy: "would ten 2x6 twelve footers be enough".
func (l *lexing) boardsEnough() {
	if len(l.tokens) < 4 || l.tokens[0].Kind != lexicon.Num || l.tokens[0].Amt.Unit != measure.Bare || !helpsAsk[FirstWord(l.tokens[0].Before)] {
		return
	}
	a, b, tail := &l.tokens[1], &l.tokens[2], &l.tokens[3]
	if !(a.Kind == lexicon.Size && b.Kind == lexicon.Num && b.Amt.Unit == measure.Feet || b.Kind == lexicon.Size && a.Kind == lexicon.Num && a.Amt.Unit == measure.Feet) || tail.Kind != lexicon.Tail || tail.Key() != "fit" || len(l.tokens) > 4 && !l.tokens[4].breaksOff() {
		return
	}
	first := l.tokens[0]
	head := Token{Kind: lexicon.Head, Text: first.Before, At: first.At, End: first.At, first: first.first, Found: []lexicon.Found{{Entry: claimsIt}}}
	l.tokens[0].Before = ""
	rest := append([]Token{}, l.tokens[4:]...)
	l.tokens = append(append([]Token{head}, l.tokens[:3]...), rest...)
}

var (
	helpsAsk = scan.WordSet("would will could")
	claimsIt = &lexicon.Entry{Kind: lexicon.Head, Key: string(act.Check)}
)

// paidFor takes what money is paid for by its name: "we're paying $1.80 for anchors".
func (l *lexing) paidFor() {
	for i := 1; i < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i-1]
		if t.Kind != lexicon.Quest || t.As(lexicon.Item) == nil || FirstWord(t.Before) != "for" || num.Kind != lexicon.Num || num.Amt.Unit != measure.Money && !num.Amt.Money2 || i+1 < len(l.tokens) && !l.tokens[i+1].breaksOff() {
			continue
		}
		for k := range l.tokens[:i-1] {
			if l.tokens[k].Kind == lexicon.PriceVerb {
				t.Kind = lexicon.Item
			}
		}
	}
}

// costOf takes "cost of" for a word of prices where a price follows: "cost of a post base: 18 dollars".
func (l *lexing) costOf() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t, item, sign := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.Kind == lexicon.Quest && t.Key() == "cost" && item.As(lexicon.Item) != nil && FirstWord(item.Before) == "of" && sign.Kind == lexicon.Comma && sign.Text == ":" && l.priceNext(i+3) {
			t.Kind, t.Found = lexicon.PriceVerb, []lexicon.Found{{Entry: costs}}
			l.drop(i + 2)
		}
	}
}

// forScrap takes a share "for scrap" for a spare one: "allow ten percent for scrap".
func (l *lexing) forScrap() {
	for i := 1; i < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i-1]
		if t.Kind == lexicon.Cmd && t.Text == "scrap" && EndsIn(t.Before, "for") && num.Kind == lexicon.Num && num.Amt.Unit == measure.Percent && (i+1 == len(l.tokens) || l.tokens[i+1].breaksOff()) {
			t.Kind, t.Found = lexicon.Part, spareNoun
		}
	}
}

// affords names what can be afforded: "I can afford three hundred and thirty dollars at most".
func (l *lexing) affords() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.Kind != lexicon.Num || t.Amt.Unit != measure.Money || !EndsIn(t.Before, "can afford") && !EndsIn(t.Before, "could afford") || i > 0 && !l.tokens[i-1].breaksOff() {
			continue
		}
		part := Token{Kind: lexicon.Part, Text: "afford", At: t.At, End: t.At, first: t.first, Found: budgetNoun}
		t.Before = ""
		l.tokens = append(l.tokens[:i:i], append([]Token{part}, l.tokens[i:]...)...)
		return
	}
}
