package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// field reads what is measured or found on site.
func (k *clause) field() (reading, bool) {
	if k.deniedWord() {
		return reading{}, false
	}
	for _, read := range []func(*clause) (reading, bool){(*clause).tolerance, (*clause).runsWide, (*clause).leans, (*clause).isLevel, (*clause).falls, (*clause).floorAt, (*clause).railTop, (*clause).short, (*clause).measured} {
		if r, ok := read(k); ok {
			return r, true
		}
	}
	return reading{}, false
}

// length is the value at item i as a length; ok is false where it is limited or none.
func (k *clause) length(i int) (solver.Value, bool) {
	lim := k.items[i].lim
	op, ok := lim.relation()
	if !ok || op != solver.Eq || lim.hi != nil || lim.of != nil || lim.lo.Size != "" || lim.lo.Minus {
		return solver.Value{}, false
	}
	return k.s.value(*lim.lo, solver.Length)
}

// place is where something was measured: a bay, and a rail of it, or its bottom or top.
type place struct {
	bay, rail int
	open      bool
	at        string
}

// measured reads measurements of bays: "first bay, bottom 66-1/4, top 66-5/8", "rails 1 and 2 in bay 1 measure 66 and 66-1/8".
func (k *clause) measured() (reading, bool) {
	verb := k.has(lexicon.Measured)
	if verb == nil && k.siteWish() {
		return reading{}, false
	}
	if b := k.has(lexicon.Bound); b != nil && !strings.HasPrefix(b.Text, "top") {
		return reading{}, false // "64 at most"
	}
	if len(k.values) == 0 || !k.only(lexicon.Measured, lexicon.At, lexicon.Top, lexicon.Not, lexicon.Bound, kFor, lexicon.Up) || len(k.dims) > 0 && verb == nil || len(k.sides) > 0 {
		return reading{}, false
	}
	live, ok := k.unsaid()
	if !ok || k.andBefore() || !k.paired() {
		return reading{}, false
	}
	var values []int
	for _, i := range k.values {
		if live[i] {
			values = append(values, i)
		}
	}
	for _, i := range k.things {
		if k.items[i].As(lexicon.At) != nil {
			continue
		}
		switch k.items[i].Key() {
		case "bay", "rail", "per bay", "of wall", "bottom", "off floor", "between posts", "more or less nothing":
			if k.items[i].Key() == "rail" && k.items[i].Index == 0 && !k.items[i].Plural() {
				return reading{}, false
			}
			if k.items[i].Key() == "bay" && k.items[i].Index == 0 || k.items[i].Key() == "bottom" {
				return reading{}, false
			}
		case "opening":
			if verb == nil || !strings.HasPrefix(strings.TrimPrefix(verb.Text, "re"), "meas") || len(k.items[i].Indexes) > 1 {
				return reading{}, false
			}
		default:
			return reading{}, false
		}
	}
	places := k.places(verb)
	if len(values) == 1 && len(places) > 1 && k.onEach() {
		for len(values) < len(places) {
			values = append(values, values[0])
		}
	}
	if len(places) == 0 || len(places) > 1 && len(places) != len(values) || len(places) == 1 && len(values) != 1 {
		return reading{}, false
	}
	r := reading{carry: k.carry}
	like := k.items[values[len(values)-1]].lim.lo
	for n, p := range places {
		i := values[n]
		if lim := k.items[i].lim; lim.lo.Unit == measure.Bare && like.Unit == measure.Metric {
			a := inUnitOf(*lim.lo, *like)
			lim.lo = &a
		}
		v, ok := k.length(i)
		if !ok {
			return reading{}, false
		}
		name := solver.Name{Wall: k.wallName(), Quantity: solver.Measured, Bay: p.bay, Rail: p.rail, At: p.at, Opening: k.open}
		if p.open && k.open == 0 {
			name.At = "opening"
		}
		m := made{st: solver.Statement{Name: name, Op: solver.Eq, Value: v}, at: k.items[i].At, lim: k.items[i].lim, kind: solver.Length}
		m.doubt = k.s.doubt(m, *k.items[i].lim.lo, measure.Amount{})
		r.made = append(r.made, m)
	}
	r, _ = k.finish(r)
	if len(places) == 1 && k.carry.spot == (place{}) || len(k.things) > 0 && len(places) == 1 {
		r.carry.spot = places[0]
	}
	if r.carry.bay = places[0].bay; len(k.things) == 0 {
		r.carry.bay = k.carry.bay
	}
	return r, true
}

// paired reports whether several values and the places they were measured at stand in an order that tells which belongs
// where: one after the other, or all values and then all places.
func (k *clause) paired() bool {
	order := ""
	for _, it := range k.items {
		switch {
		case it.value():
			order += "v"
		case it.As(lexicon.At) != nil:
			order += "p"
		}
	}
	n := strings.Count(order, "v")
	if n < 2 || strings.Count(order, "p") != n {
		return true
	}
	switch order {
	case strings.Repeat("pv", n), strings.Repeat("vp", n), strings.Repeat("p", n) + strings.Repeat("v", n), strings.Repeat("v", n) + strings.Repeat("p", n):
		return true
	}
	return false
}

// andBefore reports whether an "and" stands between the first place and the only value: they are of two measurements.
func (k *clause) andBefore() bool {
	return len(k.values) == 1 && k.inner() && k.has(lexicon.At) != nil
}

// deniedWord reports whether a "not" is said of anything but a value: "bay 1 doesn't measure 66".
func (k *clause) deniedWord() bool {
	for _, w := range k.words {
		if k.items[w].Kind == lexicon.Not && (w+1 >= len(k.items) || !k.items[w+1].value()) {
			return true
		}
	}
	return false
}

// kFor stands for a preposition that has no class of its own.
const kFor = lexicon.TailFill

// places lists where the values of a clause were measured.
func (k *clause) places(verb *lex.Token) []place {
	bay := k.bay
	if bay == 0 {
		bay = k.carry.bay
	}
	var ats []string
	for i, it := range k.items {
		if it.value() {
			continue
		}
		if e := it.As(lexicon.At); e != nil {
			if k.bay == 0 && verb == nil && strings.HasSuffix(it.Text, "wall") && i < k.values[0] {
				continue // "bay 1 is 48, top of the wall at 42" tells how high the wall is
			}
			ats = append(ats, e.Key)
		}
	}
	for _, i := range k.things {
		if k.items[i].Key() == "opening" {
			return []place{{open: true}}
		}
	}
	rails := k.rails()
	switch {
	case bay == 0:
		return nil
	case len(rails) > 0 && len(ats) == 0:
		var out []place
		for _, n := range rails {
			out = append(out, place{bay: bay, rail: n})
		}
		return out
	case len(rails) > 0:
		return nil
	}
	var out []place
	for _, at := range ats {
		if p := (place{bay: bay, at: at}); len(ats) != 2 || len(k.values) > 1 || !slices.Contains(out, p) {
			out = append(out, p) // "between the heads of the posts, at the very top" is one place
		}
	}
	if len(ats) == 0 && k.spotAgain(verb) {
		p := k.carry.spot
		p.bay = bay
		return []place{p}
	}
	return out
}

// spotAgain reports whether another bay, or another figure, is told for the spot where the last measurement was taken: "at the top
// bay 1 is 64 and bay 2 is 65", "the plan shows 66 at the bottom; my own tape says 66 5/16 there".
func (k *clause) spotAgain(verb *lex.Token) bool {
	was := k.carry.spot
	for _, w := range strings.Fields(leadOf(k.items[k.values[0]])) {
		switch w {
		case "should", "must", "wants", "needs", "be", "want", "has":
			return false // "top of bay 1 is 60 and bay 2 should be 62"
		}
	}
	if was.at == "" && was.rail == 0 || len(k.values) != 1 || len(k.dims) > 0 {
		return false
	}
	if len(k.things) == 0 && !k.ordinal {
		h := k.s.head
		return verb != nil || h != nil && h.Kind == lexicon.Head && (strings.Contains(h.Text, " tape") || strings.Contains(h.Text, "measure"))
	}
	return k.bay > 0 && k.bay != was.bay && (len(k.things) == 1 || k.ordinal && len(k.things) == 0)
}

// onEach reports whether one figure is told for each of several places: "rails 1 and 2 of bay 2 both measure 71".
func (k *clause) onEach() bool {
	for _, it := range k.items {
		before := leadOf(it)
		if !it.value() && (it.Text == "top and bottom" || it.Text == "bottom and top") {
			return true
		}
		if !it.value() {
			before += " " + it.Before + " " + it.Text
		}
		for _, w := range strings.Fields(before) {
			if w == "both" || w == "each" || w == "same" || w == "all" || w == "either" {
				return true
			}
		}
	}
	return false
}

// rails lists the numbers of the rails that a clause names: "rail 3", "rails 1, 2 and 3".
func (k *clause) rails() []int {
	if len(k.many) > 0 && k.rail > 0 {
		return k.many
	}
	if k.rail > 0 {
		return []int{k.rail}
	}
	return nil
}

// railTop reads where a rail's top is: "the third one's top at two feet", "rail 1 is on already, its top is 7-7/8 off the floor".
func (k *clause) railTop() (reading, bool) {
	rails := k.rails()
	if len(rails) == 0 && k.carry.Name != nil && k.carry.Name.Quantity == solver.FixedRail {
		rails = []int{k.carry.Name.Rail}
	}
	top, fixed := k.has(lexicon.Top) != nil || k.has(lexicon.At) != nil && k.has(lexicon.At).As(lexicon.At).Key == "top", k.has(lexicon.Fixed) != nil || k.putUp()
	fixed = fixed && !k.wishedUp()
	for _, i := range k.things {
		switch t := k.items[i]; t.Key() {
		case "rail", "off floor", "of wall", "more or less nothing":
		case "bottom":
			if len(rails) > 0 {
				return reading{}, false
			}
			rails = []int{1}
		case "rail top", "wall height":
			top = true
		default:
			return reading{}, false
		}
	}
	if len(rails) == 0 || !top || len(k.values) == 0 || k.bay > 0 || len(k.sides) > 0 || !k.only(lexicon.Top, lexicon.Fixed, lexicon.At, lexicon.Have, lexicon.Rel, kFor, lexicon.To) {
		return reading{}, false
	}
	r := reading{carry: k.carry}
	for n, rail := range rails {
		i := k.values[min(n, len(k.values)-1)]
		if len(k.values) != len(rails) {
			return reading{}, false
		}
		name := solver.Name{Wall: k.wallName(), Quantity: solver.RailTop, Rail: rail}
		op, ok := k.items[i].lim.relation()
		if !ok {
			return reading{}, false
		}
		if op, ok = k.around(i, op); !ok {
			return reading{}, false
		}
		if fixed {
			if name.Quantity = solver.FixedRail; op != solver.Eq {
				return reading{}, false
			}
		}
		m, ok := k.fill(made{st: solver.Statement{Name: name, Op: op}, at: k.items[i].At, lim: k.items[i].lim, kind: solver.Length})
		if !ok || m.st.Value.Of != nil {
			return reading{}, false
		}
		r.made = append(r.made, m)
	}
	return k.finish1(r)
}

// wishedUp reports whether a rail is only wished to be put up: "I'd like rail 3 mounted with its top at 24".
func (k *clause) wishedUp() bool {
	t := k.has(lexicon.Fixed)
	if t == nil || strings.Contains(t.Text, " ") {
		return false
	}
	if h := k.s.head; h != nil && h.Kind == lexicon.Head && h.Key() == string(act.State) {
		return true
	}
	for _, it := range k.items {
		before := leadOf(it)
		if !it.value() {
			before = it.Before
		}
		for _, w := range strings.Fields(before) {
			switch w {
			case "want", "wants", "like", "love", "prefer", "need", "needs", "should", "must", "be", "get", "wish":
				return true
			}
		}
	}
	return false
}

// finish1 is finish for what must not be spread over the numbers of its noun again.
func (k *clause) finish1(r reading) (reading, bool) {
	k.many = nil
	return k.finish(r)
}

// short reads a piece that came out short: "rail 3 in bay 1 came out a quarter short".
func (k *clause) short() (reading, bool) {
	if k.rail == 0 || len(k.values) != 1 || len(k.many) > 1 || k.has(lexicon.Short) == nil && !k.saysShort() || !k.only(lexicon.Short, lexicon.More, lexicon.Out, lexicon.Measured) {
		return reading{}, false
	}
	v, ok := k.length(k.values[0])
	if !ok {
		return reading{}, false
	}
	name := solver.Name{Wall: k.wallName(), Quantity: solver.Short, Bay: k.bay, Rail: k.rail}
	m := made{st: solver.Statement{Name: name, Op: solver.Eq, Value: v}, at: k.at(), kind: solver.Length}
	return k.finish(reading{made: []made{m}})
}

func (k *clause) saysShort() bool {
	for _, i := range k.things {
		if t := k.items[i]; t.Key() == "fit" && (t.Text == "short" || t.Text == "cut short" || t.Text == "shy") {
			return true
		}
	}
	return false
}

// offEach reports whether "off on each one" stands in the clause.
func (k *clause) offEach() bool {
	t := k.has(lexicon.OffTail)
	return t != nil && k.force == act.WhatIf && (strings.Contains(t.Text, "each") || strings.Contains(t.Text, "every"))
}

// putUp reports whether a rail is told to have been put up: "we put rail 3 up yesterday".
func (k *clause) putUp() bool {
	for _, i := range k.things {
		if t := k.items[i]; t.Key() == "rail" && t.Index > 0 && i+1 < len(k.items) && !k.items[i+1].value() && k.items[i+1].Kind == lexicon.Up {
			words := strings.Fields(t.Before)
			for j, w := range words {
				if w == "put" && j > 0 && (words[j-1] == "we" || words[j-1] == "i" || words[j-1] == "have" || words[j-1] == "already") {
					return true
				}
			}
		}
	}
	return false
}
