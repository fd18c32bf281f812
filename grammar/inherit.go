package grammar

import (
	"slices"
	"strings"

	"saywright/solver/exact"
)

// likeBefore reads a bare correction in the unit of what it corrects: "four feet, no, five". After feet and inches a
// figure of inches stays one.
func likeBefore(a amount, was *amount) amount {
	if whole := was.val.Div(twelve); was.unit == feet && !was.frac && !whole.IsInt() && a.val.IsInt() && a.val.Less(twelve) {
		a.val, a.unit, a.plain, a.per = a.val.Add(exact.Int(12*floor(whole))), feet, "", twelve // "3 foot 6, no, 8"
		return a
	}
	if was.unit == feet && (was.frac || !a.val.Less(exact.Int(20))) {
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
func (s *speech) spokenAfter(acc []item, a, b *limit) (*limit, bool) {
	cash := false
	for _, it := range acc {
		cash = cash || it.value() && it.lim.lo.unit == money
	}
	cents := b.lo.val
	if !cash || a.lo.unit != bare || b.lo.unit != bare || !a.lo.val.IsInt() || !cents.IsInt() || cents.Less(exact.Int(10)) || !cents.Less(exact.Int(100)) {
		return nil, false
	}
	v := amount{number: number{val: a.lo.val.Add(cents.Div(exact.Int(100)))}, unit: money}
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
			if t.kind != kDim || !hasDim(l.tail) {
				out.tail = append(append([]*token{}, out.tail...), t)
			}
		}
	} else if !hasDim(l.tail) {
		for _, t := range was.tail {
			if t.kind == kDim {
				out.tail = append(append([]*token{}, out.tail...), t)
			}
		}
	}
	out.to = l.to || was.to
	if l.lo.unit == bare && was.lo.unit == bare && len(l.lo.plain) == 3 && len(was.lo.plain) == 3 {
		v := *l.lo
		v.plain, out.lo = "", &v // "144, no, 146": digits as they are said
	}
	if l.lo.unit == bare && was.lo.unit != bare && l.hi == nil && l.lo.size == "" {
		v := likeBefore(*l.lo, was.lo)
		out.lo = &v
	}
	return &out
}

func related(tail []*token) bool {
	for _, t := range tail {
		if t.kind == kBound || t.kind == kAbout {
			return true
		}
	}
	return false
}

func hasDim(tail []*token) bool {
	for _, t := range tail {
		if t.kind == kDim {
			return true
		}
	}
	return false
}

// saidInMetric reports whether a length of the line is said in a metric unit, and none in inches or feet.
func saidInMetric(tokens []token) bool {
	found := false
	for i := range tokens {
		if t := &tokens[i]; t.kind == kNum {
			if t.amt.unit == inches || t.amt.unit == feet {
				return false
			}
			found = found || t.amt.unit == metric
		}
	}
	return found
}

// saidInInches reports whether a length of a line is said in inches or feet.
func saidInInches(tokens []token) bool {
	return slices.ContainsFunc(tokens, func(t token) bool {
		return t.kind == kNum && (t.amt.unit == inches || t.amt.unit == feet)
	})
}

// worksInCentimeters reports whether a line says that it speaks in centimeters: its bare figures may then be meant in them.
func worksInCentimeters(tokens []token) bool {
	for i := range tokens {
		if t := &tokens[i]; t.kind == kUnits && (strings.Contains(t.text, "cm") || strings.Contains(t.text, "centim")) {
			return true
		}
	}
	return false
}
