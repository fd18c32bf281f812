package lex

import (
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// offFrom reads "4 inches less than 36", "an eighth over two", "50 dollars over 400" at token i: one figure and how far it is from
// another. A fall or a lean of so much over a length is none.
func (l *lexing) offFrom(i int) bool {
	a, w, b := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
	sign := farFrom[w.Text]
	if sign == 0 || a.Amt.Unit == measure.Percent || b.Amt.Unit == measure.Percent || a.Amt.Unit == measure.Bare && !a.Amt.Frac || !a.Amt.Val.Less(b.Amt.Val) || a.Amt.Footer || b.Amt.Footer {
		return false
	}
	if (a.Amt.Unit == measure.Money) != (b.Amt.Unit == measure.Money) && b.Amt.Unit != measure.Bare || (a.Amt.Unit == measure.Metric) != (b.Amt.Unit == measure.Metric) {
		return false
	}
	if sign > 0 && a.Amt.Unit != measure.Money && (i == 0 || !offFromOthers[l.tokens[i-1].Key()] && !l.numbersPart(i-1)) {
		return false
	}
	sum := *b.Amt
	sum.Val, sum.Plain, sum.Frac = b.Amt.Val.Sub(a.Amt.Val), "", true
	if sign > 0 {
		sum.Val = b.Amt.Val.Add(a.Amt.Val)
	}
	if sum.Unit == measure.Bare {
		sum.Unit = a.Amt.Unit
	}
	a.Amt, a.End = &sum, b.End
	l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
	return true
}

// farFrom are the words between how far a figure is from another and that one: below it, or above.
var farFrom = map[string]int{"less than": -1, "under": -1, "below": -1, "shorter than": -1, "narrower than": -1, "smaller than": -1, "over": 1, "more than": 1, "above": 1, "greater than": 1, "wider than": 1, "taller than": 1}

// offFromOthers are the quantities that may be so much over a figure; a fall of so much over a length is another thing.
var offFromOthers = scan.WordSet("gap opening bay span overall wall width bottom")

// numbersPart reports whether token i is the number of one of several such parts: "bay one a sixteenth over 68".
func (l *lexing) numbersPart(i int) bool {
	t := &l.tokens[i]
	return i > 0 && t.Kind == lexicon.Num && t.Amt.Unit == measure.Bare && !t.Amt.Frac && t.Amt.Val.Less(exact.Int(10)) && !l.tokens[i-1].Plural() && indexable(l.tokens[i-1]) > 0 && offFromOthers[l.tokens[i-1].Key()]
}
