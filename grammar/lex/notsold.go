package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// lengthsDropped takes lengths of lumber that are to be left out for lengths that are not sold: "drop the tens", "strike the
// twenty-foot lengths from the list".
func (l *lexing) lengthsDropped() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.Cmd || t.Key() != "forget" && t.Key() != "take" || num.Kind != lexicon.Num || num.Amt.Unit == measure.Bare || i > 0 && !l.tokens[i-1].breaksOff() {
			continue
		}
		if strings.Contains(t.Text, "price") {
			continue // "forget the price of twelves"
		}
		end := i + 2
		lengths := end < len(l.tokens) && (l.tokens[end].Kind == lexicon.StockWord || l.tokens[end].Kind == lexicon.Dim && (l.tokens[end].Text == "lengths" || l.tokens[end].Text == "length"))
		if lengths {
			end++
		}
		listed := end < len(l.tokens) && EndsIn(l.tokens[end].Text, "list") && (strings.HasPrefix(l.tokens[end].Text, "from") || strings.HasPrefix(l.tokens[end].Text, "off"))
		off := end < len(l.tokens) && (l.tokens[end].Kind == lexicon.Off || l.tokens[end].Kind == lexicon.Out)
		if !lengths && (!num.Amt.Footer && !listed || EndsIn(t.Text, "forget") && !listed) {
			continue // "forget the twelve footers" may be those at hand
		}
		if listed || off {
			end++
		} else if t.Key() == "take" {
			continue
		}
		if end < len(l.tokens) && !l.tokens[end].breaksOff() && l.tokens[end].Kind != lexicon.Reason {
			continue
		}
		if listed || off {
			l.tokens = append(l.tokens[:end-1], l.tokens[end:]...)
		}
		t.Kind, t.Found = lexicon.SellLess, []lexicon.Found{{Entry: soldOut}}
	}
}

// breaksOff reports whether a token ends what was said.
func (t *Token) breaksOff() bool {
	switch t.Kind {
	case lexicon.Comma, lexicon.Stop, lexicon.QMark, lexicon.And, lexicon.But:
		return true
	}
	return false
}

// fromStock drops the stock that lengths are taken out of: "remove tens from stock".
func (l *lexing) fromStock() {
	for i := 1; i+2 < len(l.tokens); i++ {
		if l.tokens[i-1].Kind == lexicon.SellLess && l.tokens[i].Kind == lexicon.Num && l.tokens[i+1].Kind == lexicon.From && l.tokens[i+2].Text == "stock" {
			l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
		}
	}
}

// soldAs takes "was sold" for no word of what is gone where it is told as what something is sold: "the 1x4 is sold by the eight foot
// stick", "they were sold at 14.50".
func (l *lexing) soldAs() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.SellLess || !EndsIn(t.Text, "sold") && !EndsIn(t.Text, "taken") || next.breaksOff() || next.Kind == lexicon.Reason {
			continue
		}
		if i > 0 && l.tokens[i-1].Kind == lexicon.Num && l.tokens[i-1].Amt.Footer && LastWord(next.Before) != "at" && LastWord(next.Before) != "for" {
			continue
		}
		t.Kind, t.Found = lexicon.Sell, []lexicon.Found{{Entry: soldThus}}
	}
}

var soldThus = &lexicon.Entry{Kind: lexicon.Sell, Key: "sell"}

// crossedOff drops the "cross" of "cross the sixteens off the list".
func (l *lexing) crossedOff() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if l.tokens[i].Kind == lexicon.Unknown && (l.tokens[i].Text == "cross" || l.tokens[i].Text == "tick") && l.tokens[i+1].Kind == lexicon.Num {
			for k := i + 2; k < len(l.tokens) && k < i+4; k++ {
				if t := &l.tokens[k]; t.Kind == lexicon.SellLess && strings.HasPrefix(t.Text, "off") {
					l.drop(i)
					break
				}
			}
		}
	}
}
