package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// asksNothing takes "is how thick" and "is what" after a value for what they are: "5/64 is how thick these brackets are".
func (l *lexing) asksNothing() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, prev, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.Kind != lexicon.Wh || prev.Kind != lexicon.Num || !strings.HasSuffix(t.Before, "is") && !strings.HasSuffix(t.Before, "are") || next.Kind != lexicon.Part && next.Kind != lexicon.Loc {
			continue
		}
		if i > 1 && l.tokens[i-2].Kind != lexicon.Stop && l.tokens[i-2].Kind != lexicon.Comma && l.tokens[i-2].Kind != lexicon.About && l.tokens[i-2].Kind != lexicon.Rel {
			continue
		}
		word, ok := strings.CutPrefix(t.Text, "how ")
		switch dim := Dims[word]; {
		case ok && dim != nil:
			t.Kind, t.Found, t.Before = lexicon.Dim, dim, ""
		case t.Text == "what", t.Text == "how far", t.Text == "how much", t.Text == "how far apart":
			l.drop(i)
		}
	}
}

// Dims are dimensions as they are asked after.
var Dims = map[string][]lexicon.Found{"thick": NounOf("thick"), "wide": NounOf("wide"), "high": NounOf("high"), "tall": NounOf("high"), "long": NounOf("long"), "deep": NounOf("deep")}

// soldOut takes "no more" before lengths of lumber for what is not sold any longer.
func (l *lexing) soldOut() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if (t.Kind == lexicon.Bound || t.Kind == lexicon.Rel) && (t.Text == "no more" || t.Text == "not more") && next.Kind == lexicon.Num && next.Amt.Footer {
			t.Kind, t.Found = lexicon.SellLess, []lexicon.Found{{Entry: soldOut}}
		}
	}
}

var soldOut = &lexicon.Entry{Kind: lexicon.SellLess, Key: "-="}

// offEach takes "off each" before boards for how much is taken off them.
func (l *lexing) offEach() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind == lexicon.OffTail && (t.Text == "off each" || t.Text == "off every") && next.Kind == lexicon.Part && next.Key() == "rail" && l.tokens[i-1].Kind == lexicon.Num {
			t.Kind, t.Found = lexicon.Off, []lexicon.Found{{Entry: takenOff}}
		}
	}
}

// beside settles what two words that stand side by side mean together. The first reader that knows them decides.
func (l *lexing) beside() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.Kind == lexicon.Loc && t.Key() == "ends" && strings.Contains(t.Text, "both") && i > 0 && l.tokens[i-1].Kind == lexicon.Part && l.tokens[i-1].Key() == "fit" {
			t.Found = eachEnd // "an eighth short at both ends"
		}
	}
	for i := 0; i+1 < len(l.tokens); i++ {
		for _, settle := range besides {
			if settle(l, i) {
				break
			}
		}
	}
}

var besides = []func(*lexing, int) bool{(*lexing).onSaleBeside, (*lexing).cutBeside, (*lexing).countedBeside, (*lexing).saidBeside}

// onSaleBeside settles words of buying and selling: "scratch the fourteens", "four for one bracket".
func (l *lexing) onSaleBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.Kind == lexicon.Cmd && t.Key() == "forget" && next.Kind == lexicon.Num && next.Amt.Footer && l.sellsAfter(i):
		t.Kind, t.Found = lexicon.SellLess, []lexicon.Found{{Entry: soldOut}} // "scratch the fourteens"
	case t.Kind == lexicon.Num && t.Amt.Footer && next.Kind == lexicon.Out && next.Text == "in" && i > 0 && (l.tokens[i-1].Kind == lexicon.Sell || l.tokens[i-1].Kind == lexicon.Head) && strings.Contains(l.tokens[i-1].Text, "got"):
		next.Kind, next.Found = lexicon.SellMore, []lexicon.Found{{Entry: soldToo}}
	case t.Kind == lexicon.Cmd && t.Text == "drop" && next.Kind == lexicon.To && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Num && l.tokens[i+2].Amt.Unit == measure.Money:
		t.Kind, t.Found = lexicon.PriceVerb, []lexicon.Found{{Entry: costs}}
		l.drop(i + 1)
	case t.Kind == lexicon.Extra && (strings.HasSuffix(t.Text, " in") || strings.HasSuffix(t.Text, " on")) && next.Kind == lexicon.Num && l.speaks(i, "spare"):
		t.Kind = lexicon.TailFill // "toss in two spare boards"
	case t.Kind == lexicon.Sell && (t.Text == "buy" || t.Text == "get" || t.Text == "order") && next.Kind == lexicon.Num && l.speaks(i, "spare"):
		t.Kind = lexicon.TailFill
	case t.Kind == lexicon.Num && t.Text == "one" && strings.HasSuffix(t.Before, "for") && next.As(lexicon.Item) != nil && i > 0 && l.tokens[i-1].Kind == lexicon.Num:
		t.Kind, t.Found = lexicon.Each, []lexicon.Found{{Entry: apiece}}
	case next.Kind == lexicon.ForgetTail && next.As(lexicon.SellLess) != nil && t.Kind == lexicon.Num && t.Amt.Footer:
		next.Kind = lexicon.SellLess // "the fourteens are gone"
	case next.Kind == lexicon.ForgetTail && next.As(lexicon.SellLess) != nil && t.Kind == lexicon.Comma && l.footerBefore(i):
		next.Kind = lexicon.SellLess
	default:
		return false
	}
	return true
}

// cutBeside settles words of sawing: "knock 3/4 off every board to square it up".
func (l *lexing) cutBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.Kind == lexicon.No && next.Kind == lexicon.Change && next.Text == "trimming":
		next.Kind, next.Found = lexicon.Part, trimNoun
	case t.Kind == lexicon.Move && next.Kind == lexicon.Num && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Part && l.tokens[i+2].Key() == "trim":
		t.Kind = lexicon.TailFill // "knock 3/4 off every board to square it up"
	case t.Kind == lexicon.Change && t.Text == "trimming" && next.Kind == lexicon.Comma && strings.HasSuffix(t.Before, "for"):
		t.Kind, t.Found = lexicon.Part, trimNoun
	case t.Kind == lexicon.OffTail && forEach[t.Text] && next.Is(lexicon.Part) && !l.tolerates():
		l.drop(i) // "6x6 for all the posts"
	case t.Kind == lexicon.Off && next.Kind == lexicon.Per && (next.Text == "every" || next.Text == "each") && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Part && l.tokens[i+2].Key() == "rail":
		l.drop(i + 1)
	default:
		return false
	}
	return true
}

// countedBeside settles what is counted and what is told by its place: "go from six boards to seven", "don't add any posts".
func (l *lexing) countedBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.Kind == lexicon.Change && t.Text == "add" && i > 0 && l.tokens[i-1].Kind == lexicon.Not && next.As(lexicon.Part) != nil && next.As(lexicon.Part).Key == "post" && next.Plural():
		next.Kind, next.Found = lexicon.Part, addedPosts // "don't add any posts"
		l.drop(i)
	case t.Kind == lexicon.From && l.countsTo(i):
		l.tokens = append(l.tokens[:i], l.tokens[i+2:]...) // "go from six boards to seven"
	case t.Kind == lexicon.From && next.Kind == lexicon.Size && i > 0 && l.tokens[i-1].Is(lexicon.Part):
		l.drop(i) // "rails from 1x6"
	case t.Kind == lexicon.Ordinal && (strings.HasPrefix(next.Before, "one") || next.Before == "'s") && (next.Kind == lexicon.Fixed || next.Kind == lexicon.Top):
		t.Kind, t.Found, t.Indexes = lexicon.Part, RailNoun, []int{t.Index}
	default:
		return false
	}
	return true
}

// saidBeside settles words that lead from what is named to what is said of it: "I measured the ear and it's 13/16".
func (l *lexing) saidBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.Kind == lexicon.BestTail && t.Text == "you can" && next.Kind == lexicon.Not:
		l.drop(i)
	case t.Kind == lexicon.Per && next.Kind == lexicon.Goal:
		l.drop(i)
	case (t.Kind == lexicon.Lim || t.Kind == lexicon.Rel && t.As(lexicon.Lim) != nil) && next.Kind == lexicon.Quest && next.As(lexicon.Part) != nil && (i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Comma):
		next.Kind = lexicon.Part
	case t.Kind == lexicon.And && next.Kind == lexicon.Num && tellsOn[next.Before] && i > 0 && (l.tokens[i-1].Kind == lexicon.Part || l.tokens[i-1].Kind == lexicon.At) && !l.valueBefore(i):
		l.drop(i) // "I measured the bracket ear and it's 13/16"
	case t.Kind == lexicon.And && next.Kind == lexicon.It && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Num && onward[l.tokens[i+2].Before] && i > 0 && (l.tokens[i-1].Kind == lexicon.Part || l.tokens[i-1].Kind == lexicon.At) && !l.valueBefore(i):
		l.drop(i)
	case (t.Kind == lexicon.ForgetTail || t.Kind == lexicon.Cmd) && t.Text == "drop it" && (next.Kind == lexicon.Down || next.Kind == lexicon.To) && l.numberSoon(i+1):
		t.Kind, t.Found = lexicon.Change, []lexicon.Found{{Entry: MinusSign}}
	case t.Kind == lexicon.Head && next.Kind == lexicon.Num && letsSay[t.Text] && i > 1 && l.tokens[i-1].Kind == lexicon.Comma && l.tokens[i-2].Kind == lexicon.Num && (i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Comma || l.tokens[i+2].Kind == lexicon.Stop):
		t.Kind, t.Found = lexicon.Fix, []lexicon.Found{{Entry: setRight}}
	case t.Kind == lexicon.Between && t.Text == "within" && next.Kind == lexicon.Num && !(i+2 < len(l.tokens) && (l.tokens[i+2].Kind == lexicon.And || l.tokens[i+2].Kind == lexicon.To || l.tokens[i+2].Kind == lexicon.Dash)):
		t.Kind, t.Found = lexicon.Rel, []lexicon.Found{{Entry: atMost}}
	default:
		return false
	}
	return true
}

// tellsOn are words by which a clause goes on with the value of what was named.
var tellsOn = map[string]bool{"it is": true, "it was": true, "they are": true, "got": true, "i got": true, "that is": true, "it came to": true, "found": true, "she is": true, "he is": true, "she came to": true, "she was": true}

// valueBefore reports whether a value stands before token i in its sentence.
func (l *lexing) valueBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].Kind != lexicon.Stop; i-- {
		if l.tokens[i].Kind == lexicon.Num || l.tokens[i].Kind == lexicon.Size {
			return true
		}
	}
	return false
}

// moneyBefore reports whether a sum of money stands before token i in its part of the line.
func (l *lexing) moneyBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].Kind != lexicon.Stop && l.tokens[i].Kind != lexicon.Comma; i-- {
		if l.tokens[i].Kind == lexicon.Num && l.tokens[i].Amt.Unit == measure.Money {
			return true
		}
	}
	return false
}

var (
	costs    = &lexicon.Entry{Kind: lexicon.PriceVerb, Key: "price"}
	apiece   = &lexicon.Entry{Kind: lexicon.Each, Key: "each"}
	trimNoun = NounOf("trim")
)

// onward are words between "it" and its value.
var onward = map[string]bool{"is": true, "was": true, "came to": true, "comes to": true, "measures": true, "reads": true}

// speaks reports whether a part of that key stands behind token i in its sentence.
func (l *lexing) speaks(i int, key string) bool {
	for i++; i < len(l.tokens) && l.tokens[i].Kind != lexicon.Stop; i++ {
		if l.tokens[i].Kind == lexicon.Part && l.tokens[i].Key() == key {
			return true
		}
	}
	return false
}

// footerBefore reports whether a length of lumber stands before token i in its sentence, with a word of having no more.
func (l *lexing) footerBefore(i int) bool {
	footer, less := false, false
	for i--; i >= 0 && l.tokens[i].Kind != lexicon.Stop; i-- {
		t := &l.tokens[i]
		footer, less = footer || t.Kind == lexicon.Num && t.Amt.Footer, less || t.Kind == lexicon.SellLess || t.Kind == lexicon.No
	}
	return footer && less
}

// letsSay are words of supposing that correct a value where another stands right before them.
var letsSay = map[string]bool{"let us say": true, "let us call it": true}

var setRight = &lexicon.Entry{Kind: lexicon.Fix, Key: "fix"}

// forEach are words that say no more than that all of something are alike.
var forEach = map[string]bool{"for all": true, "for each": true, "for every": true, "on all": true, "on each": true, "on every": true}

// tolerates reports whether the line tells how far things may be off.
func (l *lexing) tolerates() bool {
	for i := range l.tokens {
		if l.tokens[i].Kind == lexicon.OffEach {
			return true
		}
	}
	return false
}

// numberSoon reports whether no more than "down" and "to" stand between token i and a number.
func (l *lexing) numberSoon(i int) bool {
	for i < len(l.tokens) && (l.tokens[i].Kind == lexicon.Down || l.tokens[i].Kind == lexicon.To) {
		i++
	}
	return i < len(l.tokens) && l.tokens[i].Kind == lexicon.Num
}

// countsTo reports whether a count and another that takes its place stand at token i: "from six boards to seven".
func (l *lexing) countsTo(i int) bool {
	if i+4 >= len(l.tokens) || i == 0 || l.tokens[i-1].Kind != lexicon.GoesIn && l.tokens[i-1].Kind != lexicon.Move && l.tokens[i-1].Kind != lexicon.Change {
		return false // a range, it may be
	}
	a, part, to, b := &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3], &l.tokens[i+4]
	if a.Kind != lexicon.Num || b.Kind != lexicon.Num || !part.Is(lexicon.Part) || !part.Plural() || to.Kind != lexicon.To {
		return false
	}
	return a.Amt.Unit == measure.Bare && b.Amt.Unit == measure.Bare && a.Amt.Val.IsInt() && b.Amt.Val.IsInt() && !a.Amt.Val.Eq(b.Amt.Val)
}

var eachEnd = []lexicon.Found{{Entry: &lexicon.Entry{Kind: lexicon.Loc, Key: "each end", Sense: lexicon.Meaning("fit |")}}}

var soldToo = &lexicon.Entry{Kind: lexicon.SellMore, Key: "+="}

// sellsAfter reports whether a word of selling stands behind token i in its sentence.
func (l *lexing) sellsAfter(i int) bool {
	for i++; i < len(l.tokens) && l.tokens[i].Kind != lexicon.Stop; i++ {
		if k := l.tokens[i].Kind; k == lexicon.Sell || k == lexicon.SellLess {
			return true
		}
	}
	return false
}

var addedPosts = NounOf("added post")
