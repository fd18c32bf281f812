package parse

import (
	"saywright/grammar/lexicon"
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
		t := k.items[w].Token
		switch {
		case t.As(lexicon.Factor) != nil:
			if v.Mult != nil {
				return reading{}, false
			}
			f := exact.Must(t.As(lexicon.Factor).Key)
			v.Mult = &f
		case t.Kind == lexicon.Same || t.Kind == lexicon.Rest || t.Kind == lexicon.ThanNow:
		case t.Is(lexicon.Rel) || t.Kind == lexicon.Under || t.Kind == lexicon.Over:
			if o := solver.Op(t.RelKey()); o != solver.Eq {
				op = o
			}
		case t.Kind == lexicon.Not, t.Kind == lexicon.No && w < p:
			not = true
		case t.Kind == lexicon.Bound && w > p && op == solver.Eq && t.Key() != "=":
			op = solver.Op(t.Key()) // "twice the gap or more"
		case t.Kind == lexicon.Lim && w > p && op == solver.Eq:
			op = solver.Op(t.Key()) // "the opening needs twice the gap at minimum"
		case w < p && t.As(lexicon.At) != nil:
		case w < p && t.Kind == lexicon.CutWord && (k.about("added post") || k.about("post")): // "cut the new post flush with the top rail"
		case t.Kind == lexicon.Times || t.Kind == lexicon.Change || t.Kind == lexicon.Between || idle(t) || t.Kind == lexicon.Lim:
		default:
			return reading{}, false
		}
	}
	for _, i := range k.values {
		l := k.items[i].lim
		switch {
		case l.of != nil || l.hi != nil || l.lo.Size != "":
			return reading{}, false
		case l.lo.Times || i+1 < len(k.items) && k.items[i+1].Kind == lexicon.Times && !k.items[i+1].value():
			if o, ok := l.relation(); !ok || v.Mult != nil {
				return reading{}, false
			} else if o != solver.Eq {
				op = o
			}
			f := l.lo.Val
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
			if it.lim.lo.Times && k.partAfter(i) {
				return i
			}
			continue
		}
		switch it.Kind {
		case lexicon.Same:
			if j := k.sameAgain(i); j > 0 && !k.partBefore(i) {
				return j // "the same distance between the rails as there is under the bottom one"
			}
			return i
		case lexicon.Factor, lexicon.Times:
			if k.partAfter(i) && len(k.things) > 0 {
				return i
			}
		case lexicon.Rel, lexicon.Over, lexicon.Under:
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
		if it := k.items[j]; !it.value() && it.Kind == lexicon.Same && len(k.senses(i, j)) > 0 && k.partAfter(j) {
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
	gap := lexicon.AspectIndex[string(solver.Gap)]
	below := lexicon.AspectIndex[string(solver.BottomGap)]
	rest := k.restAt()
	switch {
	case len(subject) == 0 && k.atBottom(p): // "bottom same as the gaps"
		subject = []lexicon.Sense{lexicon.Meaning("bottom gap")}
	case len(subject) == 0 && len(object) == 0:
		return reading{}, false
	case len(subject) == 0 && v.Mult == nil && k.items[p].Kind == lexicon.Same && !(k.s.correcting && k.carry.Name != nil): // "the same gap at the bottom (as in between)"
		subject, object = object, nil
		if rest >= 0 {
			subject = k.senses(p, rest)
		}
	case len(subject) == 0 && k.s.correcting && k.carry.Name != nil && v.Mult == nil: // "no, the same as the gap"
		subject = append(append([]lexicon.Sense{}, k.carry.senses...), k.carry.nameSense())
	case len(subject) == 0:
		return reading{}, false
	case rest > p:
		object = nil
	}
	from, kinds := -1, lengthAspects
	if k.ofMany() {
		kinds = lexicon.OfKind[solver.Count]
	}
	held := dimensionHeld(k.items[p].Token)
	for _, w := range k.words {
		if len(held) == 0 && w > p {
			held = dimensionHeld(k.items[w].Token) // "at least as tall as the new post"
		}
	}
	if len(object) == 0 {
		if lexicon.Score(subject, below) < 2 {
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
	if from == lexicon.AspectIndex[string(solver.WallHeight)] {
		subject = append(subject, lexicon.Meaning("| post height, wall height, rail top, drop, opening, span, overall"))
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
		if t := k.items[w]; w < p && t.As(lexicon.At) != nil {
			return t.As(lexicon.At).Key == "bottom"
		}
	}
	return false
}

// nameSense speaks of what was spoken of last, and nothing else.
func (c carry) nameSense() lexicon.Sense {
	var s lexicon.Set
	if i := aspectIndexOf(c.Name.Quantity); i >= 0 {
		s.Add(i)
	}
	return lexicon.Sense{Sure: s}
}

func (k *clause) restAt() int {
	for _, i := range k.things {
		if k.items[i].Kind == lexicon.Rest {
			return i
		}
	}
	return -1
}

// plus adds what stands after a sign: "wall height + 2".
func (k *clause) plus(v *solver.Value, lim *limit, p int) bool {
	sign := 0
	for _, w := range k.words {
		if t := k.items[w]; w > p && t.Kind == lexicon.Change {
			sign = map[string]int{"+=": 1, "-=": -1}[t.As(lexicon.Change).Key]
		}
	}
	add, ok := k.s.value(*lim.lo, solver.Length)
	if sign == 0 || !ok || lim.lo.Times {
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
	from, ok := k.pick([]lexicon.Sense{senseOf(lim.of)}, lengthAspects, nil, 0)
	if !ok || solver.Quantity(lexicon.Aspects[from]) == m.st.Name.Quantity && (m.st.Name.Bay == 0 || lim.of.Index == 0 || lim.of.Index == m.st.Name.Bay) {
		return m, false
	}
	if n := m.st.Name; n.Quantity == solver.Bay && n.Bay > 0 && lim.of.Key() == "bay" && lim.of.Index > 0 && lim.of.Index != n.Bay {
		from = lexicon.AspectIndex[string(solver.Bay)]
		add.Of = &solver.Name{Quantity: solver.Bay, Bay: lim.of.Index}
	}
	way := solver.Op(lim.way.RelKey())
	switch way {
	case solver.GT:
	case solver.LT:
		add.Num = add.Num.Neg()
	default:
		return m, false
	}
	if add.Of == nil {
		add.Of = &solver.Name{Quantity: solver.Quantity(lexicon.Aspects[from])}
		if lim.of.Index > 0 {
			if add.Of.Quantity != solver.Bay || len(lim.of.Indexes) > 1 {
				return m, false
			}
			add.Of.Bay = lim.of.Index // "four inches wider than the first bay"
		}
	}
	m.st.Value = add
	return m, true
}
