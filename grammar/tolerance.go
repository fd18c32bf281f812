package grammar

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// tolerance reads "what if each is off a sixteenth".
func (k *clause) tolerance() (reading, bool) {
	each := k.has(kOffEach) != nil || k.offEach() || k.has(kEach) != nil && k.about("rail") && k.has(kOffTail) != nil && k.force == WhatIf
	each = each || k.force == WhatIf && (k.has(kOff) != nil || k.has(kOffTail) != nil) && k.everyOne()
	each = each || k.eachOff() || k.eachLong()
	if !each || len(k.values) != 1 || len(k.sides) > 0 || !k.only(kOffEach, kOffTail, kEach, kPer, kOff, kRunWide, kMore, kOut, kFor, kCutWord) && !k.eachLong() {
		return reading{}, false
	}
	for _, i := range k.things {
		if key := k.items[i].key(); !k.eachLong() && key != "rail" && key != "in all" && key != "rest" {
			return reading{}, false
		}
	}
	v, ok := k.length(k.values[0])
	if !ok {
		return reading{}, false
	}
	m := made{st: solver.Of(solver.Tolerance, solver.Eq, v), at: k.at(), kind: solver.Length}
	m.doubt = k.s.doubt(m, *k.items[k.values[0]].lim.lo, amount{})
	return k.finish(reading{made: []made{m}})
}

// eachLong reports whether every cut is tried a little too long: "what if each cut is a sixteenth too long". No saw cut is that wide,
// and no board is cut short by it.
func (k *clause) eachLong() bool {
	if k.force != WhatIf || len(k.values) != 1 {
		return false
	}
	v, ok := k.length(k.values[0])
	if !ok || v.Unit == solver.Inch && !v.Num.Less(exact.New(3, 4)) || v.Unit == solver.Millimeter && !v.Num.Less(exact.Int(20)) {
		return false
	}
	long, every := false, false
	for _, t := range k.items[k.values[0]].lim.tail {
		long = long || t.text == "long"
	}
	for i, it := range k.items {
		if i > k.values[0] {
			long = long || it.text == "long"
			continue
		}
		for _, w := range strings.Fields(it.before) {
			every = every || w == "each" || w == "every" || w == "all"
		}
		if !it.value() {
			w := firstWord(it.text)
			every = every || w == "each" || w == "every" || w == "all"
		}
	}
	return long && every
}

// eachOff reports whether each piece is said to be off by less than an inch: "every board's half a millimeter out".
func (k *clause) eachOff() bool {
	if k.force != WhatIf && k.force != State || len(k.values) != 1 {
		return false
	}
	v, ok := k.length(k.values[0])
	if small := v.Num; !ok || v.Unit == solver.Inch && !small.Less(exact.New(3, 4)) || v.Unit == solver.Millimeter && !small.Less(exact.Int(20)) {
		return false
	}
	every, off := false, false
	for _, i := range k.things {
		every = every || k.items[i].key() == "rail" && allOfThem(k.items[i].before)
	}
	for _, i := range k.words {
		switch t := k.items[i]; {
		case t.is(kEach), t.is(kPer), t.as(kOffTail) != nil && (strings.HasPrefix(t.text, "every") || strings.HasPrefix(t.text, "each")):
			every = true
		case t.kind == kOff, t.as(kOffTail) != nil, t.kind == kOut && t.text == "out":
			off = off || i > k.values[0]
		}
	}
	return every && off
}

// everyOne reports whether all pieces are spoken of: "on each one", "everywhere".
func (k *clause) everyOne() bool {
	for _, i := range k.things {
		if t := k.items[i]; t.kind == kRest && strings.HasSuffix(t.text, "everywhere") {
			return true
		}
	}
	for _, i := range k.words {
		if t := k.items[i]; t.as(kOffTail) != nil && strings.HasPrefix(t.text, "on ") {
			return true
		}
	}
	return false
}

// runsWide reads "the boards run a sixteenth wide", "each rail is 1/16 narrower": a face that is off by a little, not
// one of that width, since no board is that narrow.
func (k *clause) runsWide() (reading, bool) {
	if !k.about("rail") || len(k.things) != 1 || len(k.values) != 1 || len(k.sides) > 0 ||
		!k.only(kRunWide, kRunNarrow, kMore, kChange, kOver, kUnder, kEach) {
		return reading{}, false
	}
	op := solver.Op("")
	for i, it := range k.items {
		switch {
		case it.value():
		case it.is(kMore) && (strings.Contains(it.text, "closer") || strings.Contains(it.text, "apart") || strings.Contains(it.text, "tighter") || strings.Contains(it.text, "looser")):
			return reading{}, false // of the gaps between them
		case it.kind == kChange && (it.text != "narrow" || i == 0 || !k.items[i-1].value()):
			return reading{}, false
		case it.kind == kRunWide, it.kind == kOver, it.kind == kMore && it.key() == "+=", it.kind == kDim && it.key() == "wide":
			op = solver.Plus
		case it.kind == kRunNarrow, it.kind == kUnder, it.kind == kMore, it.kind == kChange:
			op = solver.Minus
		}
	}
	for _, t := range k.items[k.values[0]].lim.tail {
		if t.key() == "wide" {
			op = solver.Plus
		}
	}
	v, ok := k.length(k.values[0])
	if op == "" || !ok || !v.Num.Less(exact.New(3, 4)) {
		return reading{}, false
	}
	m := made{st: solver.Of(solver.RailFace, op, v), at: k.at(), kind: solver.Length}
	return k.finish(reading{made: []made{m}})
}
