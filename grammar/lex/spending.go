package lex

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// spentInAll drops the "in all" of what is to be spent: "I can spend three hundred in all".
func (l *lexing) spentInAll() {
	for i := 1; i+1 < len(l.tokens); i++ {
		budget := l.tokens[i-1].Kind == lexicon.Part && l.tokens[i-1].Key() == "budget"
		if budget && l.tokens[i].Kind == lexicon.Num && l.tokens[i+1].Kind == lexicon.Loc && l.tokens[i+1].Key() == "in all" {
			l.drop(i + 1)
		}
	}
}

// spokenFirst joins two number words before what they are to be spent on: "we've got four twenty five to spend".
func (l *lexing) spokenFirst() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if !l.spokenPair(i) {
			continue
		}
		a, b, t := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if exact.Int(9).Less(a.Amt.Val) || b.Amt.Val.Less(exact.Int(20)) || t.Kind != lexicon.Part || t.Key() != "budget" || !spendsIn(t.Text) || i > 0 && l.tokens[i-1].Kind == lexicon.Num {
			continue
		}
		joined := *b.Amt
		joined.Val, joined.Plain = a.Amt.Val.Mul(exact.Int(100)).Add(b.Amt.Val), ""
		a.Amt, a.End = &joined, b.End
		l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
	}
}

// spent asks back where a limit that is said of money is followed by none: "it must not be over 48".
func (l *lexing) spent() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.Kind == lexicon.Have && EndsIn(t.Text, "aside") && i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Num && l.tokens[i+1].Amt.Unit == measure.Money {
			t.Kind, t.Found = lexicon.Part, budgetNoun // "he has set aside $450"
			continue
		}
		if t.Kind == lexicon.Head && (EndsIn(t.Text, "me") || EndsIn(t.Text, "us")) && (i+1 == len(l.tokens) || l.tokens[i+1].Kind != lexicon.Num || l.tokens[i+1].Amt.Unit != measure.Money) {
			t.Found = slices.DeleteFunc(slices.Clone(t.Found), func(f lexicon.Found) bool { return f.Entry.Kind != lexicon.Head }) // "the clerk gave me eight two by sixes"
		}
		if t.Kind != lexicon.Part || t.Key() != "budget" || !limited[LastWord(t.Text)] {
			continue
		}
		if i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Num && (l.tokens[i+1].Amt.Unit == measure.Money || spendsIn(t.Text) && l.tokens[i+1].Amt.Unit == measure.Bare) {
			continue
		}
		t.Kind, t.Found = lexicon.Unknown, nil
	}
}

// overMoney takes a bare limit on money for what may be spent: "don't go over $400".
func (l *lexing) overMoney() {
	for i := 0; i+4 < len(l.tokens); i++ {
		do, not, goes, over, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3], &l.tokens[i+4]
		if do.Text != "do" || not.Kind != lexicon.Not || goes.Text != "go" || over.Kind != lexicon.Over || num.Kind != lexicon.Num || num.Amt.Unit != measure.Money || i > 0 && !l.tokens[i-1].breaksOff() || i+5 < len(l.tokens) && !l.tokens[i+5].breaksOff() {
			continue
		}
		over.Kind, over.Found, over.Before = lexicon.Part, budgetNoun, ""
		l.tokens = append(l.tokens[:i], l.tokens[i+3:]...)
	}
}

// HatesWaste reports whether waste is hated first, and the least of it asked for then: "we hate throwing wood away so go for the
// least scrap".
func HatesWaste(list []solver.Statement, said string) bool {
	hate, so := strings.Index(said, "hate"), strings.LastIndex(said, " so ")
	return len(list) == 1 && list[0].Value.Word == "least waste" && hate >= 0 && so > hate && !strings.Contains(said, "would hate")
}

// limited are words in which a limit on money may end.
var limited = scan.WordSet("over than above past beyond exceed top pass under below within inside me us")

// spendsIn reports whether words speak of spending, or of what is paid for.
func spendsIn(text string) bool {
	if strings.Contains(text, " come to ") || strings.Contains(text, " comes to ") {
		return true // "don't let the timber come to more than 420"
	}
	return OneIsIn(spendWords, text)
}

var spendWords = scan.WordSet("spend pay part shell fork cough lay afford dime penny cent dollar nickel buck bill tab total cost price lot material materials outlay expense expenses brackets hardware amount add")

// toldToStay takes what somebody was told to stay within for what may be spent: "we were told to stay within $310".
func (l *lexing) toldToStay() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, rel, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		told := EndsIn(t.Text, "told") && FirstWord(rel.Before) == "to"
		if t.Kind != lexicon.Head || t.Key() != string(act.Check) || !told && !(OneIsIn(insisting, t.Text) && setsLimits(t.Text) && rel.Before == "") || rel.Kind != lexicon.Rel && rel.Kind != lexicon.Under && rel.Kind != lexicon.Over || num.Kind != lexicon.Num || num.Amt.Unit != measure.Money {
			continue
		}
		t.Kind, t.Found = lexicon.Part, budgetNoun
		rel.Before = ""
	}
}

var insisting = scan.WordSet("says said say insists wants")

// setsLimits reports whether words name somebody whose money it is: "my husband says no more than $400".
func setsLimits(text string) bool {
	return !OnPaper(text) && (isOneOf("KIN", text) || OneIsIn(payers, text))
}

var payers = scan.WordSet("boss owner client customer landlord landlady principal committee school")
