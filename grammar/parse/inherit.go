package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver/exact"
)

// likeBefore reads a bare correction in the unit of what it corrects: "four feet, no, five". After feet and inches a
// figure of inches stays one.
func likeBefore(a measure.Amount, was *measure.Amount) measure.Amount {
	if whole := was.Val.Div(measure.Twelve); was.Unit == measure.Feet && !was.Frac && !whole.IsInt() && a.Val.IsInt() && a.Val.Less(measure.Twelve) {
		a.Val, a.Unit, a.Plain, a.Per = a.Val.Add(exact.Int(12*floor(whole))), measure.Feet, "", measure.Twelve // "3 foot 6, no, 8"
		return a
	}
	if was.Unit == measure.Feet && (was.Frac || !a.Val.Less(exact.Int(20))) {
		return a
	}
	return inUnitOf(a, *was)
}

// floor is the whole part of a number that is not below 0.
func floor(r exact.Rat) int {
	num, den := r.Frac()
	return int(num.Int64() / den.Int64())
}

// spokenAfter reads "nine fifty" as money, where it corrects money.
func (s *Speech) spokenAfter(acc []Item, a, b *limit) (*limit, bool) {
	cash := false
	for _, it := range acc {
		cash = cash || it.value() && it.lim.lo.Unit == measure.Money
	}
	cents := b.lo.Val
	if !cash || a.lo.Unit != measure.Bare || b.lo.Unit != measure.Bare || !a.lo.Val.IsInt() || !cents.IsInt() || cents.Less(exact.Int(10)) || !cents.Less(exact.Int(100)) {
		return nil, false
	}
	v := measure.Amount{Number: measure.Number{Val: a.lo.Val.Add(cents.Div(exact.Int(100)))}, Unit: measure.Money}
	return &limit{lo: &v, loTok: a.loTok}, true
}

// inherit gives a correction the relation, the dimensions and the unit of what it corrects, where it has none itself.
func inherit(l, was *limit) *limit {
	out := *l
	if l.of == nil && was.of != nil {
		out.of, out.way = was.of, was.way
	}
	if len(l.lead) == 0 && !related(l.tail) {
		out.lead = was.lead
		for _, t := range was.tail {
			if t.Kind != lexicon.Dim || !hasDim(l.tail) {
				out.tail = append(append([]*lex.Token{}, out.tail...), t)
			}
		}
	} else if !hasDim(l.tail) {
		for _, t := range was.tail {
			if t.Kind == lexicon.Dim {
				out.tail = append(append([]*lex.Token{}, out.tail...), t)
			}
		}
	}
	out.to = l.to || was.to
	if l.lo.Unit == measure.Bare && was.lo.Unit == measure.Bare && len(l.lo.Plain) == 3 && len(was.lo.Plain) == 3 {
		v := *l.lo
		v.Plain, out.lo = "", &v // "144, no, 146": digits as they are said
	}
	if l.lo.Unit == measure.Bare && was.lo.Unit != measure.Bare && l.hi == nil && l.lo.Size == "" {
		v := likeBefore(*l.lo, was.lo)
		out.lo = &v
	}
	return &out
}

func related(tail []*lex.Token) bool {
	for _, t := range tail {
		if t.Kind == lexicon.Bound || t.Kind == lexicon.About {
			return true
		}
	}
	return false
}

func hasDim(tail []*lex.Token) bool {
	for _, t := range tail {
		if t.Kind == lexicon.Dim {
			return true
		}
	}
	return false
}

// SaidInMetric reports whether a length of the line is said in a metric unit, and none in inches or feet.
func SaidInMetric(tokens []lex.Token) bool {
	found := false
	for i := range tokens {
		if t := &tokens[i]; t.Kind == lexicon.Num {
			if t.Amt.Unit == measure.Inches || t.Amt.Unit == measure.Feet {
				return false
			}
			found = found || t.Amt.Unit == measure.Metric
		}
	}
	return found
}

// SaidInInches reports whether a length of a line is said in inches or feet.
func SaidInInches(tokens []lex.Token) bool {
	return slices.ContainsFunc(tokens, func(t lex.Token) bool {
		return t.Kind == lexicon.Num && (t.Amt.Unit == measure.Inches || t.Amt.Unit == measure.Feet)
	})
}

// WorksInCentimeters reports whether a line says that it speaks in centimeters: its bare figures may then be meant in them.
func WorksInCentimeters(tokens []lex.Token) bool {
	for i := range tokens {
		if t := &tokens[i]; t.Kind == lexicon.Units && (strings.Contains(t.Text, "cm") || strings.Contains(t.Text, "centim")) {
			return true
		}
	}
	return false
}
