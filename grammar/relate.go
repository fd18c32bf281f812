package grammar

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// related reads a quantity that leans on another: "the same gap below as between", "at least twice the gap", "as tall as
// the wall", "= wall height + 2".
func (k *clause) related() (reading, bool) {
	for _, read := range []func(*clause) (reading, bool){(*clause).sameBays, (*clause).equalBays} {
		if r, ok := read(k); ok {
			return r, true
		}
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
		case t.kind == kNot, t.kind == kNo && w < p:
			not = true
		case t.kind == kBound && w > p && op == solver.Eq && t.key() != "=":
			op = solver.Op(t.key()) // "twice the gap or more"
		case w < p && t.as(kAt) != nil:
		case w < p && t.kind == kCutWord && (k.about("added post") || k.about("post")): // "cut the new post flush with the top rail"
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
			if j := k.sameAgain(i); j > 0 && !k.partBefore(i) {
				return j // "the same distance between the rails as there is under the bottom one"
			}
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

// sameAgain finds a second word of likeness after item i, with parts between them and behind it; 0 where there is none.
func (k *clause) sameAgain(i int) int {
	for j := i + 1; j < len(k.items); j++ {
		if it := k.items[j]; !it.value() && it.kind == kSame && len(k.senses(i, j)) > 0 && k.partAfter(j) {
			return j
		}
	}
	return 0
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
	case len(subject) == 0 && k.atBottom(p): // "bottom same as the gaps"
		subject = []sense{meaning("bottom gap")}
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
	from, kinds := -1, lengthAspects
	if k.ofMany() {
		kinds = ofKind[solver.Count]
	}
	held := dimensionHeld(k.items[p].token)
	for _, w := range k.words {
		if len(held) == 0 && w > p {
			held = dimensionHeld(k.items[w].token) // "at least as tall as the new post"
		}
	}
	if len(object) == 0 {
		if score(subject, below) < 2 {
			return reading{}, false
		}
		from = gap
	} else if a, ok := k.pick(object, kinds, nil, 0); ok {
		from = a
	} else if a, ok := k.pick(append(object, held...), kinds, nil, 0); ok && len(held) > 0 {
		from = a
	} else {
		return reading{}, false
	}
	if from == aspectIndex[string(solver.WallHeight)] {
		subject = append(subject, meaning("| post height, wall height, rail top, drop, opening, span, overall"))
	}
	a, ok := k.pick(subject, kinds, nil, 0)
	if !ok && len(held) > 0 {
		a, ok = k.pick(append(subject, held...), kinds, nil, 0)
	}
	if !ok {
		return reading{}, false
	}
	whole, other := k, k.between(p, len(k.items))
	if len(object) > 0 {
		whole = k.between(0, p)
	} else {
		other = k.between(0, 0)
	}
	n, kind, ok := whole.build(a)
	if !ok {
		return reading{}, false
	}
	of, _, ok := other.build(from)
	if of.Wall = ""; !ok || a == from && (of.Bay == 0 || of.Bay == n.Bay) {
		return reading{}, false
	}
	v.Of = &of
	if lim != nil && !k.plus(&v, lim, p) {
		return reading{}, false
	}
	m := made{st: solver.Statement{Name: n, Op: op, Value: v}, at: k.at(), kind: kind}
	return k.finish(reading{made: []made{m}})
}

// atBottom reports whether the bottom is spoken of before item p, as a place.
func (k *clause) atBottom(p int) bool {
	for _, w := range k.words {
		if t := k.items[w]; w < p && t.as(kAt) != nil {
			return t.as(kAt).key == "bottom"
		}
	}
	return false
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
	if !ok || solver.Quantity(aspects[from]) == m.st.Name.Quantity && (m.st.Name.Bay == 0 || lim.of.index == 0 || lim.of.index == m.st.Name.Bay) {
		return m, false
	}
	if n := m.st.Name; n.Quantity == solver.Bay && n.Bay > 0 && lim.of.key() == "bay" && lim.of.index > 0 && lim.of.index != n.Bay {
		from = aspectIndex[string(solver.Bay)]
		add.Of = &solver.Name{Quantity: solver.Bay, Bay: lim.of.index}
	}
	way := solver.Op(lim.way.relKey())
	switch way {
	case solver.GT:
	case solver.LT:
		add.Num = add.Num.Neg()
	default:
		return m, false
	}
	if add.Of == nil {
		add.Of = &solver.Name{Quantity: solver.Quantity(aspects[from])}
		if lim.of.index > 0 {
			if add.Of.Quantity != solver.Bay || len(lim.of.indexes) > 1 {
				return m, false
			}
			add.Of.Bay = lim.of.index // "four inches wider than the first bay"
		}
	}
	m.st.Value = add
	return m, true
}
