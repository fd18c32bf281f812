package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// tolerance reads "what if each is off a sixteenth".
func (k *clause) tolerance() (reading, bool) {
	each := k.has(lexicon.OffEach) != nil || k.offEach() || k.has(lexicon.Each) != nil && k.about("rail") && k.has(lexicon.OffTail) != nil && k.force == act.WhatIf
	each = each || k.force == act.WhatIf && (k.has(lexicon.Off) != nil || k.has(lexicon.OffTail) != nil) && k.everyOne()
	each = each || k.eachOff() || k.eachLong()
	if !each || len(k.values) != 1 || len(k.sides) > 0 || !k.only(lexicon.OffEach, lexicon.OffTail, lexicon.Each, lexicon.Per, lexicon.Off, lexicon.RunWide, lexicon.More, lexicon.Out, kFor, lexicon.CutWord) && !k.eachLong() {
		return reading{}, false
	}
	for _, i := range k.things {
		if key := k.items[i].Key(); !k.eachLong() && key != "rail" && key != "in all" && key != "rest" {
			return reading{}, false
		}
	}
	v, ok := k.length(k.values[0])
	if !ok {
		return reading{}, false
	}
	m := made{st: solver.Of(solver.Tolerance, solver.Eq, v), at: k.at(), kind: solver.Length}
	m.doubt = k.s.doubt(m, *k.items[k.values[0]].lim.lo, measure.Amount{})
	return k.finish(reading{made: []made{m}})
}

// eachLong reports whether every cut is tried a little too long: "what if each cut is a sixteenth too long". No saw cut is that wide,
// and no board is cut short by it.
func (k *clause) eachLong() bool {
	if k.force != act.WhatIf || len(k.values) != 1 {
		return false
	}
	v, ok := k.length(k.values[0])
	if !ok || v.Unit == solver.Inch && !v.Num.Less(exact.New(3, 4)) || v.Unit == solver.Millimeter && !v.Num.Less(exact.Int(20)) {
		return false
	}
	long, every := false, false
	for _, t := range k.items[k.values[0]].lim.tail {
		long = long || t.Text == "long"
	}
	for i, it := range k.items {
		if i > k.values[0] {
			long = long || it.Text == "long"
			continue
		}
		for _, w := range strings.Fields(it.Before) {
			every = every || w == "each" || w == "every" || w == "all"
		}
		if !it.value() {
			w := lex.FirstWord(it.Text)
			every = every || w == "each" || w == "every" || w == "all"
		}
	}
	return long && every
}

// eachOff reports whether each piece is said to be off by less than an inch: "every board's half a millimeter out".
func (k *clause) eachOff() bool {
	if k.force != act.WhatIf && k.force != act.State || len(k.values) != 1 {
		return false
	}
	v, ok := k.length(k.values[0])
	if small := v.Num; !ok || v.Unit == solver.Inch && !small.Less(exact.New(3, 4)) || v.Unit == solver.Millimeter && !small.Less(exact.Int(20)) {
		return false
	}
	every, off := false, false
	for _, i := range k.things {
		every = every || k.items[i].Key() == "rail" && allOfThem(k.items[i].Before)
	}
	for _, i := range k.words {
		switch t := k.items[i]; {
		case t.Is(lexicon.Each), t.Is(lexicon.Per), t.As(lexicon.OffTail) != nil && (strings.HasPrefix(t.Text, "every") || strings.HasPrefix(t.Text, "each")):
			every = true
		case t.Kind == lexicon.Off, t.As(lexicon.OffTail) != nil, t.Kind == lexicon.Out && t.Text == "out":
			off = off || i > k.values[0]
		}
	}
	return every && off
}

// everyOne reports whether all pieces are spoken of: "on each one", "everywhere".
func (k *clause) everyOne() bool {
	for _, i := range k.things {
		if t := k.items[i]; t.Kind == lexicon.Rest && strings.HasSuffix(t.Text, "everywhere") {
			return true
		}
	}
	for _, i := range k.words {
		if t := k.items[i]; t.As(lexicon.OffTail) != nil && strings.HasPrefix(t.Text, "on ") {
			return true
		}
	}
	return false
}

// runsWide reads "the boards run a sixteenth wide", "each rail is 1/16 narrower": a face that is off by a little, not
// one of that width, since no board is that narrow.
func (k *clause) runsWide() (reading, bool) {
	if !k.about("rail") || k.rail > 0 || len(k.things) != 1 || len(k.values) != 1 || len(k.sides) > 0 ||
		!k.only(lexicon.RunWide, lexicon.RunNarrow, lexicon.More, lexicon.Change, lexicon.Over, lexicon.Under, lexicon.Each) {
		return reading{}, false
	}
	op := solver.Op("")
	for i, it := range k.items {
		switch {
		case it.value():
		case it.Is(lexicon.More) && (strings.Contains(it.Text, "closer") || strings.Contains(it.Text, "apart") || strings.Contains(it.Text, "tighter") || strings.Contains(it.Text, "looser")):
			return reading{}, false // of the gaps between them
		case it.Kind == lexicon.Change && (it.Text != "narrow" || i == 0 || !k.items[i-1].value()):
			return reading{}, false
		case it.Kind == lexicon.RunWide, it.Kind == lexicon.Over, it.Kind == lexicon.More && it.Key() == "+=", it.Kind == lexicon.Dim && it.Key() == "wide":
			op = solver.Plus
		case it.Kind == lexicon.RunNarrow, it.Kind == lexicon.Under, it.Kind == lexicon.More, it.Kind == lexicon.Change:
			op = solver.Minus
		}
	}
	for _, t := range k.items[k.values[0]].lim.tail {
		if t.Key() == "wide" {
			op = solver.Plus
		}
	}
	v, ok := k.length(k.values[0])
	if op == "" || !ok || !v.Num.Less(exact.New(3, 4)) || k.countsMore() {
		return reading{}, false
	}
	m := made{st: solver.Of(solver.RailFace, op, v), at: k.at(), kind: solver.Length}
	return k.finish(reading{made: []made{m}})
}

// countsMore reports whether a bare figure beside a part only counts it: "one less rail", "two rails fewer". No word tells then that a width is meant, whatever unit
// bare figures have.
func (k *clause) countsMore() bool {
	lo := k.items[k.values[0]].lim.lo
	if lo.Unit != measure.Bare || !lo.Val.IsInt() || len(k.items[k.values[0]].lim.tail) > 0 {
		return false
	}
	counts := false
	for _, it := range k.items {
		if it.Is(lexicon.RunWide) || it.Is(lexicon.RunNarrow) || it.Kind == lexicon.Dim {
			return false
		}
		counts = counts || !it.value() && moreOf[it.Text]
	}
	return counts
}
