package grammar

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// plain reads values that are set or limited: "gap two and a half", "no bay longer than eight feet", "five rails 2x6".
func (k *clause) plain() (reading, bool) {
	if len(k.values)+len(k.sides) == 0 || !k.only(kNot, kNo, kLim, kRel, kBound, kBut, kAbout, kPer, kFall, kBest, k.possible(), k.sawn(), k.offBoards()) {
		return reading{}, false
	}
	k.spokenHundreds()
	values, ok := k.unsaid()
	if !ok || k.inner() && !k.twoLimits() || k.movesBy() || k.topAlone() || k.runsOn() || k.besideOpening() || k.centeredAt() {
		return reading{}, false
	}
	if k.has(kWayOut) != nil || k.has(kOrdinal) != nil && len(k.sides) > 0 && len(values) > 0 {
		return reading{}, false // "two walk-throughs, first one against the left post" is two things
	}
	r := reading{carry: k.carry}
	alone := k.sizedCount()
	if alone {
		k.values[0], k.values[1] = k.values[1], k.values[0]
		k.items = []item{k.items[k.values[0]], k.items[k.values[1]], {token: &token{kind: kPart, found: railNoun, text: "rails"}}}
		k.words, k.dims = nil, nil
		k.values, k.things, values = []int{0, 1}, []int{2}, map[int]bool{0: true, 1: true}
	}
	for i, it := range k.items {
		var m made
		switch {
		case it.value() && values[i]:
			m, ok = k.set(i)
		case it.kind == kSide && !it.value():
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
	if n := len(k.items); n == 3 && len(k.values) == 2 && !k.items[2].value() && k.items[2].kind == kLoc && k.items[2].key() == "per bay" && k.items[2].index == 0 {
		// "five two by sixes in each bay"
	} else if n != 2 || len(k.values) != 2 {
		return false
	}
	n, size := k.items[0].lim, k.items[1].lim
	return n.lo.unit == bare && n.lo.val.IsInt() && n.lo.size == "" && n.of == nil && n.hi == nil && railSize(size.lo.size)
}

// railNoun is the row of the name of a rail.
var railNoun = nounOf("rail")

// nounOf is the first row of the names of parts with a key, as it would be found in a line.
func nounOf(key string) []found {
	for i := range parts {
		if parts[i].key == key {
			return []found{{entry: &parts[i]}}
		}
	}
	panic("grammar: no part named " + key)
}

// possible is the class of words such as "allowed", which say nothing more where something is tried or claimed.
func (k *clause) possible() tokenKind {
	if k.force == State && k.has(kNot) == nil && k.has(kNo) == nil || k.has(kBest) != nil {
		return kNot
	}
	return kBestTail
}

// set reads the value at item i as the value of what the clause speaks of.
func (k *clause) set(i int) (made, bool) {
	lim := k.items[i].lim
	op, ok := lim.relation()
	if !ok || endsIn(leadOf(k.items[i]), "by") && op == solver.Eq || k.thatBoard(i) {
		return made{}, false
	}
	if n := k.noun(i + 1); n != nil && strings.HasPrefix(n.before, "of the") && lim.lo.frac && lim.lo.unit == bare {
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
		if t.kind == kDim {
			senses = append(senses, senseOf(t))
		}
	}
	if i > 0 && !k.items[i-1].value() && (k.items[i-1].kind == kEach || k.items[i-1].kind == kPer) && k.items[i-1].text == "every" {
		senses = append(senses, meaning("| stiffener spacing"))
	}
	for _, t := range lim.lead {
		if strings.HasPrefix(t.text, "top") {
			senses = append(senses, meaning("| wall height, post height, rail top, budget"))
		}
	}
	if (k.has(kMeasured) != nil && k.about("rail") && len(k.things) == 1 || k.runs(i)) && !k.beyondFace(lim) {
		senses = append(senses, meaning("| rail face"))
	}
	if lim.of != nil && senseOf(lim.of).sure.hasName("wall height") {
		senses = append(senses, meaning("| post height, rail top, opening from left, opening from right"))
	}
	name, kind, ok := k.name(senses, lim, i)
	if !ok || name.Quantity == solver.Bay && k.shared(i) {
		return made{}, false
	}
	if name.Quantity == solver.Rails && (k.vagueBoards(i) || lim.tall() && exact.Int(20).Less(lim.lo.val) || upper(op) && exact.Int(60).Less(lim.lo.val)) {
		return made{}, false
	}
	if name.Quantity == solver.Budget && upper(op) {
		op = solver.Eq // a budget is a limit by itself
	}
	if name.Quantity == solver.BracketClearance && op == solver.LT && k.clash() {
		op = solver.Eq // "they hit one another once the gap is under 1-3/4"
	}
	m := made{st: solver.Statement{Name: name, Op: op}, at: k.items[i].startAt(), lim: lim, kind: kind}
	if name.Quantity == solver.Fit && k.about("each end") && !k.about("fit") && (k.carry.name == nil || k.carry.name.Quantity != solver.Fit) {
		return made{}, false // "two openings, one at each end"
	}
	if name.Quantity == solver.Fit && k.about("each end") && lim.of == nil && lim.hi == nil {
		twice := *lim.lo
		twice.val, twice.plain = twice.val.Add(twice.val), ""
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
func (k *clause) sawn() tokenKind {
	if k.about("fit") {
		return kCutWord
	}
	return kNot
}

// leadOf is the empty words in front of a value and of what bounds it.
func leadOf(it item) string {
	if it.value() && len(it.lim.lead) > 0 {
		return it.lim.lead[0].before
	}
	return it.before
}

// endsIn reports whether a stretch of words ends in one.
func endsIn(words, last string) bool {
	return words == last || strings.HasSuffix(words, " "+last)
}

// thatBoard reports whether a bare number is told of one board: "that board is at 22" counts nothing.
func (k *clause) thatBoard(i int) bool {
	n := k.noun(i - 1)
	if n == nil || n.key() != "rail" || n.plural() || k.has(kKnowing) != nil || k.items[i].lim.lo.unit != bare {
		return false
	}
	f := strings.Fields(n.before)
	return len(f) > 0 && (f[len(f)-1] == "that" || f[len(f)-1] == "this") && (endsIn(k.items[i].before, "at") || endsIn(k.items[i].before, "is"))
}

// loneCenters asks what is so far apart where only that is said, and it may be stiffeners: `24" o.c.`.
func (k *clause) loneCenters(m made) *solver.Question {
	if m.st.Name.Quantity != solver.Centers || len(k.things) > 0 || k.carry.name != nil || exact.Int(60).Less(m.st.Value.Num) || m.st.Value.Of != nil {
		return nil
	}
	other := m.st
	other.Name.Quantity = solver.StiffenerSpacing
	return new(qCenterOf.offering(other.String(), other.String(), m.st.String()))
}

// tall reports whether "high" or "tall" stands after a value.
func (l *limit) tall() bool {
	for _, t := range l.tail {
		if t.kind == kDim && t.key() == "high" {
			return true
		}
	}
	return false
}

// vagueBoards reports whether a bare number may be anything that boards have: "boards are twelve", "the quote is for ten boards".
func (k *clause) vagueBoards(i int) bool {
	it := k.items[i]
	if before := k.noun(i - 1); before != nil && k.has(kKnowing) == nil && strings.HasSuffix(it.before, "are") && it.lim.lo.unit == bare {
		return true
	}
	if k.force != Check || k.s.head == nil || len(k.things) != 1 {
		return false
	}
	for _, w := range []string{"quote", "bid", "estimate", "invoice", "bill", "order"} {
		if strings.Contains(k.s.head.text, w) && strings.HasPrefix(k.items[k.things[0]].text, "board") && len(k.s.groups) == 1 && len(k.values) == 1 {
			return true
		}
	}
	for _, w := range []string{"yard", "store", "shop", "clerk", "merchant", "supplier", "lumber"} {
		if strings.Contains(k.s.head.text, w) && strings.HasPrefix(k.items[k.things[0]].text, "board") && len(k.s.groups) == 1 && len(k.values) == 1 && exact.Int(9).Less(it.lim.lo.val) {
			return true // who sells boards speaks of those that are bought: "the guy at the yard says I'll need twelve boards"
		}
	}
	return false
}

// around adds a relation that stands apart from its value: "longer than … 8 feet", "bays 78 max".
func (k *clause) around(i int, op solver.Op) (solver.Op, bool) {
	for _, w := range k.words {
		t := k.items[w]
		if t.kind != kRel && t.kind != kBound && t.kind != kLim && t.kind != kAbout && t.kind != kBest {
			continue
		}
		o := solver.Op(t.relKey())
		if t.kind == kAbout {
			o = solver.Near
		}
		if t.kind == kBest && t.as(kLim) == nil {
			o = map[string]solver.Op{"largest": solver.LE, "smallest": solver.GE}[t.key()]
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
	lo, hi := *lim.lo, amount{}
	if lo.footer && lim.loTok != nil && strings.HasSuffix(lim.loTok.text, "s") && m.kind == solver.Length && lim.hi == nil && ofTheWall(m.st.Name.Quantity) {
		return m, false // "no more tens here" bounds no span
	}
	if lim.hi != nil {
		hi = *lim.hi
		if hi.unit != bare && lo.unit == bare {
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
func inUnitOf(a, like amount) amount {
	if like.unit == percent || like.unit == money {
		a.unit = like.unit
		return a
	}
	if like.scale().Sign() > 0 {
		a.val = a.val.Mul(like.scale())
	}
	a.unit, a.footer, a.per = like.unit, like.footer, like.per // what is next to it takes the unit from it in turn
	return a
}

// scale is how many inches one of the unit is that the amount was said in.
func (a amount) scale() exact.Rat {
	if a.per.Sign() != 0 {
		return a.per
	}
	return exact.Int(1)
}

// side reads where the opening is.
func (k *clause) side(i int) (made, bool) {
	at := aspectIndex[string(solver.OpeningSide)]
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
		if !s.all().has(at) || s.all() == everything && len(things) == 1 {
			return made{}, false
		}
	}
	if k.has(kNot) != nil || k.has(kNo) != nil {
		return made{}, false
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.OpeningSide, Opening: k.open}
	st := solver.Statement{Name: n, Op: solver.Eq, Value: solver.Value{Word: k.items[i].key()}}
	return made{st: st, at: k.items[i].at, kind: solver.Side}, true
}
