package lex

import (
	"slices"

	"saywright/grammar/lexicon"
)

// askedIn parts a wish for units from the question that it ends: "how long do I cut them, in mm please". It is a sentence of its own.
func (l *lexing) askedIn() {
	for i := len(l.tokens) - 1; i > 0; i-- {
		t, prev := &l.tokens[i], &l.tokens[i-1]
		if i+1 < len(l.tokens) && l.tokens[i+1].Kind != lexicon.Stop && l.tokens[i+1].Kind != lexicon.QMark {
			continue
		}
		if !l.asksBefore(i) {
			continue
		}
		from := i
		switch {
		case t.Kind == lexicon.Units:
		case t.Kind == lexicon.Unit && unitWish[t.Text] != nil && (EndsIn(t.Before, "in") || prev.Kind == lexicon.Out && prev.Text == "in"):
			t.Kind, t.Found = lexicon.Units, []lexicon.Found{{Entry: unitWish[t.Text]}}
			if prev.Kind == lexicon.Out && prev.Text == "in" {
				l.tokens = append(l.tokens[:i-1], l.tokens[i:]...)
				from--
			}
		default:
			continue
		}
		if from > 0 && l.tokens[from-1].Kind == lexicon.Comma {
			l.tokens = append(l.tokens[:from-1], l.tokens[from:]...)
			from--
		}
		if from == 0 {
			continue
		}
		at := l.tokens[from].At
		l.tokens[from].Before = ""
		l.tokens = slices.Insert(l.tokens, from, Token{Kind: lexicon.Stop, Text: ".", At: at, End: at})
	}
}

// unitWish are the units that a table can be wished for in.
var unitWish = map[string]*lexicon.Entry{
	"mm": metricUnits, "millimeters": metricUnits, "millimetres": metricUnits, "cm": metricUnits, "centimeters": metricUnits, "centimetres": metricUnits, "inches": customaryUnits, "feet": customaryUnits,
}

var (
	metricUnits    = &lexicon.Entry{Kind: lexicon.Units, Key: "metric"}
	customaryUnits = &lexicon.Entry{Kind: lexicon.Units, Key: "customary"}
)

// asksBefore reports whether the sentence that runs up to token i asks for something, and sets and tries nothing.
func (l *lexing) asksBefore(i int) bool {
	asks := false
	for i--; i >= 0 && l.tokens[i].Kind != lexicon.Stop && l.tokens[i].Kind != lexicon.QMark; i-- {
		switch l.tokens[i].Kind {
		case lexicon.Quest, lexicon.Wh, lexicon.Where:
			asks = true
		case lexicon.Head, lexicon.Num, lexicon.Units, lexicon.Size, lexicon.Change, lexicon.Rel:
			return false
		}
	}
	return asks
}
