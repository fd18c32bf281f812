package grammar

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// whole reads a word that is a statement by itself: a goal, a change of units.
func (k *clause) whole() (reading, bool) {
	if len(k.values)+len(k.sides)+len(k.dims) > 0 || len(k.words) == 0 {
		return reading{}, false
	}
	var st solver.Statement
	n := 0
	for _, i := range k.words {
		switch t := k.items[i]; t.kind {
		case kGoal:
			st = solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: t.key()}}
			n++
		case kUnits:
			st = solver.Statement{Name: solver.Name{Quantity: solver.Units}, Op: solver.Eq, Value: solver.Value{Word: t.key()}}
			n++
		default:
			if !idle(t.token) {
				return reading{}, false
			}
		}
	}
	if n != 1 || len(k.things) > 0 && !k.wholeOf(st) {
		return reading{}, false
	}
	r, _ := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	return r, true
}

// wholeOf reports whether the parts beside a goal are those that it is about.
func (k *clause) wholeOf(st solver.Statement) bool {
	about := map[string]string{"equal bays": "bay", "same length": "rail", "even gaps": "gap", "cheapest": "wall"}[st.Value.Word]
	for _, i := range k.things {
		t := k.items[i]
		if t.key() != about && t.key() != "of wall" && t.key() != "per bay" && t.key() != "wall" {
			return false
		}
	}
	return true
}

// best reads a wish for the most or the least of something: "smallest gap", "as wide an opening as you can", "max op".
func (k *clause) best() (reading, bool) {
	if len(k.values)+len(k.sides) > 0 {
		return reading{}, false
	}
	way := ""
	for _, i := range k.words {
		t := k.items[i].token
		var now string
		switch {
		case t.as(kBest) != nil && t.kind != kBestTail:
			now = t.as(kBest).key
		case t.kind == kLim:
			now = map[string]string{">=": "smallest", "<=": "largest"}[t.key()]
		default:
			continue
		}
		if way != "" && way != now {
			return reading{}, false
		}
		way = now
	}
	if way == "" || !k.only(kBest, kLim, kBestTail, kChange, kOut, kUp, kDown) {
		return reading{}, false
	}
	word, ok := k.goal(way)
	if !ok {
		return reading{}, false
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: word}}
	r, _ := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	if q := solver.Quantity(goalOf[word]); q != "" {
		r.carry.name, r.carry.kind = &solver.Name{Quantity: q, Wall: k.wallName()}, solver.KindOf(q)
	}
	return r, true
}

// goalOf tells which quantity a goal is about.
var goalOf = map[string]string{"smallest gap": "gap", "largest gap": "gap", "smallest opening": "opening", "largest opening": "opening",
	"fewest rails": "rails", "most rails": "rails", "fewest posts": "added posts", "fewest stiffeners": "stiffeners", "fewest bays": "bays"}

// goal finds the goal that a superlative and its parts name.
func (k *clause) goal(way string) (string, bool) {
	senses := k.senses(0, len(k.items))
	if len(senses) == 0 {
		if !k.it || k.carry.name == nil {
			return "", false
		}
		senses = k.carry.senses
	}
	found := ""
	for _, g := range goals {
		about, ok := goalOf[g]
		if !ok || !wayOf(way, g) {
			continue
		}
		n := score(senses, aspectIndex[about])
		if about == "gap" && way == "smallest" && n > 0 && k.has(kChange) != nil {
			n = 2 // "close the boards up as tight as they'll go"
		}
		if about == "added posts" && n > 0 {
			n = 2
		}
		if n < 2 {
			continue
		}
		if found != "" {
			return "", false
		}
		found = g
	}
	return found, found != ""
}

// wayOf reports whether a superlative can begin the goal: of counts "largest" and "most" are one.
func wayOf(way, goal string) bool {
	begins := func(w string) bool { return len(goal) > len(w) && goal[:len(w)] == w }
	switch way {
	case "largest":
		return begins("largest")
	case "smallest":
		return begins("smallest") || begins("lowest")
	}
	return begins(way)
}

// none reads "no stiffeners", "without an opening", "no spare": a count of 0.
func (k *clause) none() (reading, bool) {
	if len(k.values)+len(k.sides)+len(k.dims) > 0 || len(k.things) == 0 || !k.only(kNo, kNot) {
		return reading{}, false
	}
	denials := 0
	for _, i := range k.words {
		if kind := k.items[i].kind; kind == kNo || kind == kNot {
			denials++
		}
	}
	if denials != 1 {
		return reading{}, false
	}
	if a, ok := k.pick(k.senses(0, len(k.items)), ofKind[solver.Count].or(ofKind[solver.Percent]), nil, 0); ok {
		n, kind, ok := k.build(a)
		if ok && n.Quantity != solver.Rails && n.Quantity != solver.Bays {
			v := solver.Number(0)
			if kind == solver.Percent {
				v.Unit = solver.PercentOf
			}
			m := made{st: solver.Statement{Name: n, Op: solver.Eq, Value: v}, at: k.at(), kind: kind}
			r, ok := k.finish(reading{made: []made{m}})
			r.carry.senses = nil // nothing can be said of what is not there
			return r, ok
		}
	}
	for _, q := range []solver.Quantity{solver.Fit, solver.Trim} {
		if score(k.senses(0, len(k.items)), aspectIndex[string(q)]) >= 2 {
			m := made{st: solver.Of(q, solver.Eq, k.s.zero()), at: k.at(), kind: solver.Length}
			return k.finish(reading{made: []made{m}})
		}
	}
	return reading{}, false
}

func (s *speech) zero() solver.Value {
	v := solver.Inches(exact.Int(0))
	if s.metric {
		v.Unit = solver.Millimeter
	}
	return v
}

// related reads a quantity that leans on another: "the same gap below as between", "at least twice the gap", "as tall as
// the wall", "= wall height + 2".
func (k *clause) related() (reading, bool) {
	if r, ok := k.sameBays(); ok {
		return r, true
	}
	p := k.hinge()
	if p < 0 {
		return reading{}, false
	}
	v := solver.Value{}
	op, not := solver.Eq, false
	var lim *limit
	for _, w := range k.words {
		t := k.items[w].token
		switch {
		case t.as(kFactor) != nil:
			if v.Mult != nil {
				return reading{}, false
			}
			f := exact.Must(t.as(kFactor).key)
			v.Mult = &f
		case t.kind == kSame || t.kind == kRest || t.kind == kThanNow:
		case t.is(kRel) || t.kind == kUnder || t.kind == kOver:
			if o := solver.Op(t.relKey()); o != solver.Eq {
				op = o
			}
		case t.kind == kNot:
			not = true
		case t.kind == kTimes || t.kind == kChange || t.kind == kBetween || idle(t) || t.kind == kLim:
		default:
			return reading{}, false
		}
	}
	for _, i := range k.values {
		l := k.items[i].lim
		switch {
		case l.of != nil || l.hi != nil || l.lo.size != "":
			return reading{}, false
		case l.lo.times || i+1 < len(k.items) && k.items[i+1].kind == kTimes && !k.items[i+1].value():
			if o, ok := l.relation(); !ok || v.Mult != nil {
				return reading{}, false
			} else if o != solver.Eq {
				op = o
			}
			f := l.lo.val
			v.Mult = &f
		case lim == nil && i > p:
			lim = l
		default:
			return reading{}, false
		}
	}
	if not {
		switch op {
		case solver.LT:
			op = solver.GE
		case solver.GT:
			op = solver.LE
		default:
			return reading{}, false
		}
	}
	return k.relate(p, op, v, lim)
}

// sameBays reads "every bay the same width".
func (k *clause) sameBays() (reading, bool) {
	if len(k.values)+len(k.sides) > 0 || k.has(kSame) == nil || len(k.things) == 0 && !k.carriesBays() || !k.only(kSame, kOut, kBut) || k.bay > 0 {
		return reading{}, false
	}
	bays := 0
	if len(k.things) == 0 {
		bays = 1
	}
	for _, i := range k.things {
		switch k.items[i].key() {
		case "bay", "per bay":
			bays++
		case "of wall":
		default:
			return reading{}, false
		}
	}
	for _, i := range k.dims {
		if key := k.items[i].key(); key != "wide" && key != "long" {
			return reading{}, false
		}
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: "equal bays"}}
	r, _ := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	return r, bays > 0
}

// carriesBays reports whether bays were counted last: "3 bays, eq".
func (k *clause) carriesBays() bool {
	return k.carry.name != nil && k.carry.name.Quantity == solver.Bays && k.has(kSame).text == "eq"
}

// hinge finds the word around which a relation turns; -1 when there is none.
func (k *clause) hinge() int {
	for i, it := range k.items {
		if it.value() {
			if it.lim.lo.times && k.partAfter(i) {
				return i
			}
			continue
		}
		switch it.kind {
		case kSame:
			return i
		case kFactor, kTimes:
			if k.partAfter(i) && len(k.things) > 0 {
				return i
			}
		case kRel, kOver, kUnder:
			if k.partAfter(i) && k.partBefore(i) {
				return i
			}
		}
	}
	return -1
}

func (k *clause) partAfter(i int) bool {
	for _, t := range k.things {
		if t > i {
			return true
		}
	}
	return false
}

func (k *clause) partBefore(i int) bool { return len(k.things) > 0 && k.things[0] < i }

// relate builds the statement: what stands before the hinge leans on what stands after it.
func (k *clause) relate(p int, op solver.Op, v solver.Value, lim *limit) (reading, bool) {
	subject, object := k.senses(0, p), k.senses(p, len(k.items))
	gap := aspectIndex[string(solver.Gap)]
	below := aspectIndex[string(solver.BottomGap)]
	rest := k.restAt()
	switch {
	case len(subject) == 0 && len(object) == 0:
		return reading{}, false
	case len(subject) == 0 && v.Mult == nil && k.items[p].kind == kSame && !(k.s.correcting && k.carry.name != nil): // "the same gap at the bottom (as in between)"
		subject, object = object, nil
		if rest >= 0 {
			subject = k.senses(p, rest)
		}
	case len(subject) == 0 && k.s.correcting && k.carry.name != nil && v.Mult == nil: // "no, the same as the gap"
		subject = append(append([]sense{}, k.carry.senses...), k.carry.nameSense())
	case len(subject) == 0:
		return reading{}, false
	case rest > p:
		object = nil
	}
	from := -1
	if len(object) == 0 {
		if score(subject, below) < 2 {
			return reading{}, false
		}
		from = gap
	} else if a, ok := k.pick(object, lengthAspects, nil, 0); ok {
		from = a
	} else {
		return reading{}, false
	}
	if from == aspectIndex[string(solver.WallHeight)] {
		subject = append(subject, meaning("| post height, wall height, rail top"))
	}
	a, ok := k.pick(subject, lengthAspects, nil, 0)
	if !ok || a == from {
		return reading{}, false
	}
	n, kind, ok := k.build(a)
	if !ok {
		return reading{}, false
	}
	v.Of = &solver.Name{Quantity: solver.Quantity(aspects[from])}
	if lim != nil && !k.plus(&v, lim, p) {
		return reading{}, false
	}
	m := made{st: solver.Statement{Name: n, Op: op, Value: v}, at: k.at(), kind: kind}
	return k.finish(reading{made: []made{m}})
}

// nameSense speaks of what was spoken of last, and nothing else.
func (c carry) nameSense() sense {
	var s set
	if i := aspectIndexOf(c.name.Quantity); i >= 0 {
		s.add(i)
	}
	return sense{sure: s}
}

func (k *clause) restAt() int {
	for _, i := range k.things {
		if k.items[i].kind == kRest {
			return i
		}
	}
	return -1
}

// plus adds what stands after a sign: "wall height + 2".
func (k *clause) plus(v *solver.Value, lim *limit, p int) bool {
	sign := 0
	for _, w := range k.words {
		if t := k.items[w]; w > p && t.kind == kChange {
			sign = map[string]int{"+=": 1, "-=": -1}[t.as(kChange).key]
		}
	}
	add, ok := k.s.value(*lim.lo, solver.Length)
	if sign == 0 || !ok || lim.lo.times {
		return false
	}
	v.Num, v.Unit = add.Num, add.Unit
	if sign < 0 {
		v.Num = v.Num.Neg()
	}
	return true
}

// beyond fills "two inches over the wall": a value that leans on another quantity.
func (k *clause) beyond(m made) (made, bool) {
	lim := m.lim
	add, ok := k.s.value(*lim.lo, solver.Length)
	if !ok {
		return m, false
	}
	from, ok := k.pick([]sense{senseOf(lim.of)}, lengthAspects, nil, 0)
	if !ok || solver.Quantity(aspects[from]) == m.st.Name.Quantity {
		return m, false
	}
	way := solver.Op(lim.way.relKey())
	switch way {
	case solver.GT:
	case solver.LT:
		add.Num = add.Num.Neg()
	default:
		return m, false
	}
	add.Of = &solver.Name{Quantity: solver.Quantity(aspects[from])}
	m.st.Value = add
	return m, true
}
