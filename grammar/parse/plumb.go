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

// leans reads a post that leans: "the left post leans in three eighths over four feet".
func (k *clause) leans() (reading, bool) {
	if k.has(lexicon.Lean) == nil || len(k.values) != 2 || !k.only(lexicon.Lean, lexicon.LeanWay, lexicon.Per, lexicon.Out, lexicon.Over, lexicon.Measured, lexicon.To, kIt2, lexicon.Theirs) {
		return reading{}, false
	}
	first, second := k.values[0], k.values[1]
	if lead := k.items[first].lim.lead; len(lead) == 1 && lead[0].Kind == lexicon.Over && len(k.items[second].lim.lead) == 0 {
		first, second = second, first // "over 40 inches the right post leans half an inch left"
	}
	by, ok1 := k.length(first)
	k.leanUnit(first, second)
	run, ok2 := k.s.value(*k.items[second].lim.lo, solver.Length)
	if ok1 && ok2 && k.items[second].lim.lo.Val.Less(k.items[first].lim.lo.Val) && len(k.items[second].lim.lead) == 0 {
		first, second = second, first // "in 42 inches of height it wanders 3/16"
		by, ok1 = k.length(first)
		run, ok2 = k.s.value(*k.items[second].lim.lo, solver.Length)
	}
	posts, way := k.leaning()
	if !ok1 || !ok2 || way == "" || len(posts) == 0 {
		return reading{}, false
	}
	r := reading{carry: k.carry}
	for _, p := range posts {
		w := way
		if (way == "in" || way == "out") && p.At == "" {
			return reading{}, false
		}
		switch {
		case way == "in":
			w = Across(p.At)
		case way == "out":
			w = p.At
		}
		p.Wall = k.wallName()
		v := by
		v.Word = w
		r.made = append(r.made, made{st: solver.Statement{Name: p, Value: v, Upper: run}, at: k.at()})
	}
	return k.finish1(r)
}

// kIt2 stands for "it", which is filed apart.
const kIt2 = lexicon.It

// Across is the side across from one.
func Across(side string) string {
	if side == "left" {
		return "right"
	}
	return "left"
}

// leaning finds which posts lean, and which way.
func (k *clause) leaning() (posts []solver.Name, way string) {
	lean := 0
	for i, it := range k.items {
		if it.value() {
			continue
		}
		if it.Is(lexicon.Lean) {
			lean = i
		}
		switch {
		case it.Kind == lexicon.Side && i < lean || it.Kind == lexicon.Side && lean == 0:
			if it.Key() != "middle" {
				posts = append(posts, solver.Name{Quantity: solver.PostLeans, At: it.Key()})
			}
		case it.Kind == lexicon.Side && way == "":
			way = it.Key()
		case it.As(lexicon.LeanWay) != nil && lean > 0 && (it.Kind != lexicon.Out || it.Text == "in" || it.Text == "out"):
			if way == "" {
				way = it.As(lexicon.LeanWay).Key
			}
		case it.Kind == lexicon.Part && (it.Key() == "post" || it.Key() == "added post") && it.Index > 0:
			posts = append(posts, solver.Name{Quantity: solver.PostLeans, Post: it.Index})
		case it.Kind == lexicon.Part && (it.Key() == "post" || it.Key() == "end post") && it.Plural() && strings.HasPrefix(it.Before, "both"):
			posts = append(posts, solver.Name{Quantity: solver.PostLeans, At: "left"}, solver.Name{Quantity: solver.PostLeans, At: "right"})
		case it.Kind == lexicon.Part && it.Key() != "post" && it.Key() != "end post":
			return nil, ""
		}
	}
	return posts, way
}

// falls reads a floor that falls: "the deck falls 3/16 a foot".
func (k *clause) falls() (reading, bool) {
	over := k.fallsOver()
	loses := k.has(lexicon.Change) != nil && (strings.HasPrefix(k.has(lexicon.Change).Text, "lose") || k.has(lexicon.Change).Is(lexicon.Fall)) && k.about("floor")
	if k.has(lexicon.Change) != nil && !loses {
		return reading{}, false
	}
	if k.has(lexicon.Fall) == nil && !k.about("drop") && !loses || k.has(lexicon.PerFoot) == nil && k.has(lexicon.Per) == nil && !over || !k.downhill() || !k.only(lexicon.Fall, lexicon.PerFoot, lexicon.Per, lexicon.Down, lexicon.Change) {
		return reading{}, false
	}
	if k.has(lexicon.Down) != nil && !k.about("floor") || len(k.things) > 0 && !k.about("floor") && !k.about("drop") && !k.about("off floor") && !k.fallsAcross() {
		return reading{}, false
	}
	run := solver.Inches(measure.Twelve)
	switch {
	case over:
		v, ok := k.s.value(*k.items[k.values[1]].lim.lo, solver.Length)
		if !ok {
			return reading{}, false
		}
		run = v
	case len(k.values) == 2 && k.has(lexicon.Per) != nil:
		v, ok := k.length(k.values[1])
		if !ok {
			return reading{}, false
		}
		run = v
	case len(k.values) != 1 || k.has(lexicon.PerFoot) == nil:
		return reading{}, false
	}
	by, ok := k.length(k.values[0])
	if !ok {
		return reading{}, false
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.FloorFalls}, Value: by, Upper: run}
	return k.finish(reading{made: []made{{st: st, at: k.at()}}})
}

// fallsAcross reports whether nothing but the way that a fall runs is named beside it: "fall 3/16 per ft left to right".
func (k *clause) fallsAcross() bool {
	return !slices.ContainsFunc(k.things, func(i int) bool { return k.items[i].Key() != "more or less nothing" })
}

// fallsOver reports whether the run of a fall is told with "over": "an inch and a half over 12 feet".
func (k *clause) fallsOver() bool {
	if len(k.values) != 2 || k.has(lexicon.Fall) == nil {
		return false
	}
	lim := k.items[k.values[1]].lim
	return len(lim.lead) == 1 && lim.lead[0].Text == "over" && lim.hi == nil && lim.of == nil && lim.lo.Unit != measure.Bare
}

// downhill reports whether a fall is said without a side, or to the right, as it is counted.
func (k *clause) downhill() bool {
	return len(k.sides) == 0 || len(k.sides) == 1 && k.items[k.sides[0]].Key() == "right"
}

// nearly reports whether a limit says that a single length is about so much, and nothing else.
func (l *limit) nearly() bool {
	op, ok := l.relation()
	return ok && op == solver.Near && l.hi == nil && l.of == nil && l.lo.Size == "" && !l.lo.Minus
}

// isLevel reads "the floor is level": it is as high at the right end post as at the left.
func (k *clause) isLevel() (reading, bool) {
	if k.has(lexicon.Level) == nil || len(k.values)+len(k.sides)+len(k.dims) > 0 || len(k.things) != 1 && !(len(k.things) == 2 && k.across()) || !k.about("floor") || !k.only(lexicon.Level) {
		return reading{}, false
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.FloorAtRight}
	m := made{st: solver.Statement{Name: n, Op: solver.Eq, Value: k.s.zero()}, at: k.at(), kind: solver.Length}
	return k.finish(reading{made: []made{m}})
}

// about reports whether a part of that key stands in the clause.
func (k *clause) about(key string) bool {
	for _, i := range k.things {
		if k.items[i].Key() == key {
			return true
		}
	}
	return false
}

// floorAt reads the floor at the right end post against that at the left: "the floor is an inch lower at the right".
func (k *clause) floorAt() (reading, bool) {
	if r, ok := k.dropped(); ok {
		return r, true
	}
	k.sides = k.againstOther()
	again := k.slopeAgain()
	floor := k.unnamedFloor() || k.about("floor") || k.about("off floor") || k.about("drop") || len(k.things) == 0 && k.carry.Name != nil && k.carry.Name.Quantity == solver.FloorAtRight
	across := k.across()
	if len(k.values) != 1 || len(k.sides) != 1 && !across && !again || !floor || !k.only(lexicon.Rel, lexicon.More, lexicon.Change, lexicon.Fall, lexicon.Down, lexicon.Up, lexicon.PriceVerb, lexicon.Than, lexicon.ThanNow, lexicon.From, lexicon.Out, lexicon.Measured, lexicon.Under, lexicon.Over, lexicon.Another) {
		return reading{}, false
	}
	for _, i := range k.things {
		if key := k.items[i].Key(); key != "floor" && key != "off floor" && key != "drop" && key != "end post" && key != "post" && !strings.HasPrefix(k.items[i].Text, "compared") && !strings.HasPrefix(k.items[i].Text, "relative") && !(across && k.items[i].Text != "edge of") {
			return reading{}, false
		}
	}
	sign := 0
	for _, w := range k.words {
		switch t := k.items[w]; {
		case t.Kind == lexicon.Rel && t.Text != "lower than" && t.Text != "higher than":
			return reading{}, false
		case t.Kind == lexicon.Rel:
			sign = map[string]int{">": 1, "<": -1}[t.RelKey()]
		case t.Is(lexicon.More):
			sign = map[string]int{"+=": 1, "-=": -1}[t.As(lexicon.More).Key]
		case t.Is(lexicon.Fall), t.Kind == lexicon.Down, t.Kind == lexicon.Under:
			sign = -1
		case t.Kind == lexicon.Up, t.Kind == lexicon.Over:
			sign = 1
		case t.Kind == lexicon.Change:
			sign = map[string]int{"+=": 1, "-=": -1}[t.As(lexicon.Change).Key]
		}
	}
	if k.about("drop") && sign == 0 {
		sign = -1
	}
	if sign == 0 && rises(k.items[k.values[0]].Before) {
		sign = 1
	}
	if sign == 0 && k.items[k.values[0]].lim.tall() {
		sign = 1 // "the right side of the floor is half an inch high"
	}
	if sign == 0 && len(k.things) == 1 && k.about("off floor") && strings.HasSuffix(k.items[k.things[0]].Text, " up") {
		sign = 1 // "slab up 1/2 at the right post"
	}
	if sign == 0 && again {
		sign = k.carry.slope.sign
	}
	side := k.carry.slope.side
	if len(k.sides) == 1 {
		side = k.items[k.sides[0]].Key()
	}
	if k.heldAgainst() {
		side = map[string]string{"left": "right", "right": "left"}[side]
	}
	told := slope{side, sign}
	if !across && side == "left" {
		sign = -sign
	}
	if v := k.items[k.values[0]].lim; v.lo.Minus {
		return reading{}, false
	}
	v, ok := k.length(k.values[0])
	near := false
	if lim := k.items[k.values[0]].lim; !ok && lim.nearly() { // "about an inch lower at the right end"
		v, near = k.s.value(*lim.lo, solver.Length)
		ok = near
	}
	if !ok || sign == 0 || !across && side == "middle" {
		return reading{}, false
	}
	if sign < 0 {
		v.Num = v.Num.Neg()
	}
	m := made{st: solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.FloorAtRight}, Op: solver.Eq, Value: v}, at: k.at(), kind: solver.Length}
	if near {
		m.st.Op = solver.Near
	}
	if k.has(lexicon.Another) != nil { // "another quarter inch lower"
		if m.st.Op = solver.Plus; sign < 0 {
			m.st.Op, m.st.Value.Num = solver.Minus, v.Num.Neg()
		}
	}
	r, ok := k.finish(reading{made: []made{m}})
	r.carry.slope = told
	return r, ok
}

// slope is at which end a floor was told to lie lower or higher, and which of the two.
type slope struct {
	side string
	sign int
}

func (s slope) key() string {
	if s.sign == 0 {
		return ""
	}
	return s.side + measure.Itoa(s.sign+1)
}

// slopeAgain reports whether a claim gives its own figure for a floor that was told before: "…; the plans claim a quarter inch
// lower" is how much lower that end is, and no change of it.
func (k *clause) slopeAgain() bool {
	told := k.force == act.Check || k.isSo() || k.has(lexicon.More) != nil || k.has(lexicon.Change) != nil || k.has(lexicon.Down) != nil || k.has(lexicon.Rel) != nil
	return told && k.carry.slope.sign != 0 && k.carry.Name != nil && k.carry.Name.Quantity == solver.FloorAtRight && len(k.sides)+len(k.dims)+len(k.things) == 0
}

// isSo reports whether it is told how much lower or higher something lies, and nothing is to be changed: "I measured half an inch
// lower", "it's half an inch lower".
func (k *clause) isSo() bool {
	if len(k.values) != 1 || k.has(lexicon.Move) != nil || k.items[k.values[0]].lim.to {
		return false
	}
	for _, w := range k.words {
		if t := k.items[w]; t.Kind == lexicon.Change && t.Text != "lower" && t.Text != "higher" && t.Text != "low" && t.Text != "high" {
			return false
		}
	}
	before := leadOf(k.items[k.values[0]])
	return k.has(lexicon.Measured) != nil || lex.EndsIn(before, "is") || lex.EndsIn(before, "was") || strings.Contains(before, "measured") || strings.Contains(before, "found") || k.s.stating
}

// across reports whether "from left to right" tells which way the floor goes.
func (k *clause) across() bool {
	for _, i := range k.things {
		if t := k.items[i].Text; k.items[i].Key() == "more or less nothing" && strings.Contains(t, "left ") && strings.Contains(t, "right") && !strings.Contains(t, "compared") {
			return len(k.sides) == 0
		}
	}
	return false
}

// rises reports whether the empty words before a value end in a verb of rising.
func rises(before string) bool {
	return strings.HasSuffix(before, "rises") || strings.HasSuffix(before, "rise")
}

// unnamedFloor reports whether only a floor can be meant though none is named: "it's 3/4 lower at the right post".
func (k *clause) unnamedFloor() bool {
	more := k.has(lexicon.More)
	if more == nil {
		more = k.has(lexicon.Rel) // "lower than at the left"
	}
	if more == nil && k.has(lexicon.Down) != nil && len(k.things)+len(k.dims) == 0 && len(k.sides) == 1 && k.carry.Name == nil {
		at := k.items[k.sides[0]].Text
		return strings.HasSuffix(at, " end") || strings.HasSuffix(at, " post") // "the right end is down an inch"
	}
	if k.carry.Name != nil || len(k.things)+len(k.dims) > 0 || len(k.sides) != 1 || more == nil || !strings.HasPrefix(more.Text, "low") && !strings.HasPrefix(more.Text, "high") {
		return false
	}
	at := k.items[k.sides[0]].Text
	return strings.HasSuffix(at, " end") || strings.HasPrefix(at, "at ") || strings.HasPrefix(at, "on ")
}

// dropped reads "the ground beyond is 45 cm lower".
func (k *clause) dropped() (reading, bool) {
	if len(k.values) != 1 || len(k.sides) > 0 || !k.about("drop") && !k.about("beyond") || k.has(lexicon.More) == nil && k.has(lexicon.Down) == nil && !(k.has(lexicon.Under) != nil && (k.about("beyond") || k.about("drop")) && k.about("floor")) && k.items[k.values[0]].lim.of == nil || !k.only(lexicon.More, lexicon.Change, lexicon.Fall, lexicon.Down, lexicon.Under) || k.has(lexicon.More) != nil && k.has(lexicon.More).As(lexicon.More).Key != "-=" {
		return reading{}, false
	}
	for _, i := range k.things {
		if key := k.items[i].Key(); key != "drop" && key != "beyond" && key != "floor" && key != "off floor" && key != "of wall" {
			return reading{}, false
		}
	}
	lim := k.items[k.values[0]].lim
	op, ok := lim.relation()
	if lim.of != nil && lim.of.Key() == "floor" && lim.way.RelKey() == "<" {
		bare := *lim
		bare.of, bare.way = nil, nil
		lim = &bare
		if op, ok = bare.relation(); op != solver.Near { // "26 inches lower than our patio", "about two feet lower"
			op, ok = solver.Eq, true
		}
	}
	if !ok || lim.of != nil {
		return reading{}, false
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.Drop}
	m, ok := k.fill(made{st: solver.Statement{Name: n, Op: op}, at: k.at(), lim: lim, kind: solver.Length})
	if !ok {
		return reading{}, false
	}
	return k.finish(reading{made: []made{m}})
}
