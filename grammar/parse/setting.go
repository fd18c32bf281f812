package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// plain reads values that are set or limited: "gap two and a half", "no bay longer than eight feet", "five rails 2x6".
func (k *clause) plain() (reading, bool) {
	if len(k.values)+len(k.sides) == 0 || !k.only(lexicon.Not, lexicon.No, lexicon.Lim, lexicon.Rel, lexicon.Bound, lexicon.But, lexicon.About, lexicon.Per, lexicon.Fall, lexicon.Best, k.possible(), k.sawn(), k.offBoards()) {
		return reading{}, false
	}
	k.spokenHundreds()
	if slices.ContainsFunc(k.values, k.comparedBefore) {
		return reading{}, false // "the wall isn't longer, six rails"
	}
	values, ok := k.unsaid()
	if !ok || k.inner() && !k.twoLimits() || k.movesBy() || k.topAlone() || k.runsOn() || k.besideOpening() || k.centeredAt() {
		return reading{}, false
	}
	if k.has(lexicon.WayOut) != nil || k.has(lexicon.Ordinal) != nil && len(k.sides) > 0 && len(values) > 0 {
		return reading{}, false // "two walk-throughs, first one against the left post" is two things
	}
	r := reading{carry: k.carry}
	alone := k.sizedCount()
	if alone {
		k.values[0], k.values[1] = k.values[1], k.values[0]
		k.items = []Item{k.items[k.values[0]], k.items[k.values[1]], {Token: &lex.Token{Kind: lexicon.Part, Found: lex.RailNoun, Text: "rails"}}}
		k.words, k.dims = nil, nil
		k.values, k.things, values = []int{0, 1}, []int{2}, map[int]bool{0: true, 1: true}
	}
	for i, it := range k.items {
		var m made
		switch {
		case it.value() && values[i]:
			m, ok = k.set(i)
		case it.Kind == lexicon.Side && !it.value():
			m, ok = k.side(i)
		default:
			continue
		}
		if !ok {
			return reading{}, false
		}
		r.made = append(r.made, m)
	}
	if len(r.made) == 2 && r.made[1].at < r.made[0].at {
		r.made[0], r.made[1] = r.made[1], r.made[0] // in the order said
	}
	if !consistent(r.made) {
		return reading{}, false
	}
	for i := range r.made {
		r.made[i].alone = alone
	}
	return k.finish(r)
}

// sizedCount reports whether a count and a lumber size stand alone: "eight two by fours" are rails.
func (k *clause) sizedCount() bool {
	if n := len(k.items); n == 3 && len(k.values) == 2 && !k.items[2].value() && k.items[2].Kind == lexicon.Loc && k.items[2].Key() == "per bay" && k.items[2].Index == 0 {
		// "five two by sixes in each bay"
	} else if n != 2 || len(k.values) != 2 {
		return false
	}
	n, size := k.items[0].lim, k.items[1].lim
	return n.lo.Unit == measure.Bare && n.lo.Val.IsInt() && n.lo.Size == "" && n.of == nil && n.hi == nil && lex.RailSize(size.lo.Size)
}

// possible is the class of words such as "allowed", which say nothing more where something is tried or claimed.
func (k *clause) possible() lexicon.Kind {
	if k.force == act.State && k.has(lexicon.Not) == nil && k.has(lexicon.No) == nil || k.has(lexicon.Best) != nil {
		return lexicon.Not
	}
	return lexicon.BestTail
}

// set reads the value at item i as the value of what the clause speaks of.
func (k *clause) set(i int) (made, bool) {
	lim := k.items[i].lim
	op, ok := lim.relation()
	if !ok || lex.EndsIn(leadOf(k.items[i]), "by") && op == solver.Eq || k.thatBoard(i) {
		return made{}, false
	}
	if n := k.noun(i + 1); n != nil && strings.HasPrefix(n.Before, "of the") && lim.lo.Frac && lim.lo.Unit == measure.Bare {
		return made{}, false // "two thirds of the gap" is a share of it
	}
	op, ok = k.around(i, op)
	if !ok {
		return made{}, false
	}
	turned, ok := k.denied(i)
	if !ok {
		return made{}, false
	}
	if turned {
		switch op {
		case solver.LT:
			op = solver.GE
		case solver.GT:
			op = solver.LE
		case solver.GE:
			op = solver.LT // "no gap may reach four inches"
		default:
			if !k.about("budget") { // "don't let the material go past 425"
				return made{}, false
			}
		}
	}
	senses := k.senses(0, len(k.items))
	if op != solver.Eq {
		senses = k.withoutPurpose(i, senses)
	}
	for _, t := range lim.tail {
		if t.Kind == lexicon.Dim {
			senses = append(senses, senseOf(t))
		}
	}
	if i > 0 && !k.items[i-1].value() && (k.items[i-1].Kind == lexicon.Each || k.items[i-1].Kind == lexicon.Per) && k.items[i-1].Text == "every" {
		senses = append(senses, lexicon.Meaning("| stiffener spacing"))
	}
	for _, t := range lim.lead {
		if strings.HasPrefix(t.Text, "top") {
			senses = append(senses, lexicon.Meaning("| wall height, post height, rail top, budget"))
		}
	}
	if (k.has(lexicon.Measured) != nil && k.about("rail") && len(k.things) == 1 || k.runs(i)) && !k.beyondFace(lim) {
		senses = append(senses, lexicon.Meaning("| rail face"))
	}
	if lim.of != nil && senseOf(lim.of).Sure.HasName("wall height") {
		senses = append(senses, lexicon.Meaning("| post height, rail top, opening from left, opening from right"))
	}
	name, kind, ok := k.name(senses, lim, i)
	if !ok || name.Quantity == solver.Bay && k.shared(i) {
		return made{}, false
	}
	if name.Quantity == solver.Rails && (k.vagueBoards(i) || lim.tall() && exact.Int(20).Less(lim.lo.Val) || upper(op) && exact.Int(60).Less(lim.lo.Val)) {
		return made{}, false
	}
	if name.Quantity == solver.Budget && upper(op) {
		op = solver.Eq // a budget is a limit by itself
	}
	if name.Quantity == solver.BracketClearance && op == solver.LT && k.clash() {
		op = solver.Eq // "they hit one another once the gap is under 1-3/4"
	}
	m := made{st: solver.Statement{Name: name, Op: op}, at: k.items[i].startAt(), lim: lim, kind: kind}
	if name.Quantity == solver.Fit && k.about("each end") && !k.about("fit") && (k.carry.Name == nil || k.carry.Name.Quantity != solver.Fit) {
		return made{}, false // "two openings, one at each end"
	}
	if name.Quantity == solver.Fit && k.about("each end") && lim.of == nil && lim.hi == nil {
		twice := *lim.lo
		twice.Val, twice.Plain = twice.Val.Add(twice.Val), ""
		both := *lim
		both.lo, m.lim = &twice, &both
	}
	if m, ok = k.fill(m); ok && m.doubt == nil {
		m.doubt = k.longWall(m)
		if m.doubt == nil {
			m.doubt = k.loneCenters(m)
		}
	}
	return m, ok
}

// sawn is the class of "cut" where the clause tells how much shorter that is than the space.
func (k *clause) sawn() lexicon.Kind {
	if k.about("fit") {
		return lexicon.CutWord
	}
	return lexicon.Not
}

// leadOf is the empty words in front of a value and of what bounds it.
func leadOf(it Item) string {
	if it.value() && len(it.lim.lead) > 0 {
		return it.lim.lead[0].Before
	}
	return it.Before
}

// thatBoard reports whether a bare number is told of one board: "that board is at 22" counts nothing.
func (k *clause) thatBoard(i int) bool {
	n := k.noun(i - 1)
	if n == nil || n.Key() != "rail" || n.Plural() || k.has(lexicon.Knowing) != nil || k.items[i].lim.lo.Unit != measure.Bare {
		return false
	}
	f := strings.Fields(n.Before)
	return len(f) > 0 && (f[len(f)-1] == "that" || f[len(f)-1] == "this") && (lex.EndsIn(k.items[i].Before, "at") || lex.EndsIn(k.items[i].Before, "is"))
}

// loneCenters asks what is so far apart where only that is said, and it may be stiffeners: `24" o.c.`.
func (k *clause) loneCenters(m made) *solver.Question {
	if m.st.Name.Quantity != solver.Centers || len(k.things) > 0 || k.carry.Name != nil || exact.Int(60).Less(m.st.Value.Num) || m.st.Value.Of != nil {
		return nil
	}
	other := m.st
	other.Name.Quantity = solver.StiffenerSpacing
	return new(askback.CenterOf.Offering(other.String(), other.String(), m.st.String()))
}

// tall reports whether "high" or "tall" stands after a value.
func (l *limit) tall() bool {
	for _, t := range l.tail {
		if t.Kind == lexicon.Dim && t.Key() == "high" {
			return true
		}
	}
	return false
}

// vagueBoards reports whether a bare number may be anything that boards have: "boards are twelve", "the quote is for ten boards".
func (k *clause) vagueBoards(i int) bool {
	it := k.items[i]
	if before := k.noun(i - 1); before != nil && k.has(lexicon.Knowing) == nil && strings.HasSuffix(it.Before, "are") && it.lim.lo.Unit == measure.Bare {
		return true
	}
	if k.force != act.Check || k.s.head == nil || len(k.things) != 1 {
		return false
	}
	for _, w := range []string{"quote", "bid", "estimate", "invoice", "bill", "order"} {
		if strings.Contains(k.s.head.Text, w) && strings.HasPrefix(k.items[k.things[0]].Text, "board") && len(k.s.groups) == 1 && len(k.values) == 1 {
			return true
		}
	}
	for _, w := range []string{"yard", "store", "shop", "clerk", "merchant", "supplier", "lumber"} {
		if strings.Contains(k.s.head.Text, w) && strings.HasPrefix(k.items[k.things[0]].Text, "board") && len(k.s.groups) == 1 && len(k.values) == 1 && exact.Int(9).Less(it.lim.lo.Val) {
			return true // who sells boards speaks of those that are bought: "the guy at the yard says I'll need twelve boards"
		}
	}
	return false
}

// around adds a relation that stands apart from its value: "longer than … 8 feet", "bays 78 max".
func (k *clause) around(i int, op solver.Op) (solver.Op, bool) {
	for _, w := range k.words {
		t := k.items[w]
		if t.Kind != lexicon.Rel && t.Kind != lexicon.Bound && t.Kind != lexicon.Lim && t.Kind != lexicon.About && t.Kind != lexicon.Best {
			continue
		}
		o := solver.Op(t.RelKey())
		if t.Kind == lexicon.About {
			o = solver.Near
		}
		if t.Kind == lexicon.Best && t.As(lexicon.Lim) == nil {
			o = map[string]solver.Op{"largest": solver.LE, "smallest": solver.GE}[t.Key()]
			if o == "" {
				return op, false
			}
		}
		if o == solver.Eq {
			continue
		}
		if op != solver.Eq && op != o || len(k.values) != 1 {
			return op, false
		}
		op = o
	}
	return op, true
}

// ofTheWall reports whether a quantity is a length of the wall, and none of lumber.
func ofTheWall(q solver.Quantity) bool {
	switch q {
	case solver.Span, solver.Bay, solver.Opening, solver.StiffenerSpacing, solver.OpeningFromLeft, solver.OpeningFromRight, solver.Gap, solver.BottomGap, solver.WallHeight, solver.Overall, solver.Centers:
		return true
	}
	return false
}

// fill gives a statement its value, in the units that its quantity has.
func (k *clause) fill(m made) (made, bool) {
	lim := m.lim
	var ok bool
	if lim.of != nil {
		return k.beyond(m)
	}
	lo, hi := *lim.lo, measure.Amount{}
	if lo.Footer && lim.loTok != nil && strings.HasSuffix(lim.loTok.Text, "s") && m.kind == solver.Length && lim.hi == nil && ofTheWall(m.st.Name.Quantity) {
		return m, false // "no more tens here" bounds no span
	}
	if lim.hi != nil {
		hi = *lim.hi
		if hi.Unit != measure.Bare && lo.Unit == measure.Bare {
			lo = inUnitOf(lo, hi)
		}
	}
	if m.st.Value, ok = k.s.value(lo, m.kind); !ok || m.kind == solver.Size && m.st.Op != solver.Eq {
		return m, false
	}
	if lim.hi != nil {
		if m.st.Upper, ok = k.s.value(hi, m.kind); !ok {
			return m, false
		}
		if !m.st.Value.Num.Less(m.st.Upper.Num) {
			return m, false
		}
	}
	m.doubt = k.s.doubt(m, lo, hi)
	return m, true
}

// inUnitOf reads a bare number in the unit of its neighbor: "2 to 3 feet", "1.0 and 1.2 m".
func inUnitOf(a, like measure.Amount) measure.Amount {
	if like.Unit == measure.Percent || like.Unit == measure.Money {
		a.Unit = like.Unit
		return a
	}
	if like.Scale().Sign() > 0 {
		a.Val = a.Val.Mul(like.Scale())
	}
	a.Unit, a.Footer, a.Per = like.Unit, like.Footer, like.Per // what is next to it takes the unit from it in turn
	return a
}

// side reads where the opening is.
func (k *clause) side(i int) (made, bool) {
	at := lexicon.AspectIndex[string(solver.OpeningSide)]
	things := k.senses(0, len(k.items))
	if len(things) == 0 {
		if things = k.carry.senses; len(things) == 0 {
			things = k.s.subject()
		}
		if len(things) == 0 {
			return made{}, false
		}
	}
	for _, s := range things {
		if !s.All().Has(at) || s.All() == lexicon.Everything && len(things) == 1 {
			return made{}, false
		}
	}
	if k.has(lexicon.Not) != nil || k.has(lexicon.No) != nil {
		return made{}, false
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.OpeningSide, Opening: k.open}
	st := solver.Statement{Name: n, Op: solver.Eq, Value: solver.Value{Word: k.items[i].Key()}}
	return made{st: st, at: k.items[i].At, kind: solver.Side}, true
}
