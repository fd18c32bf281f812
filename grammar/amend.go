package grammar

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// amended is what stands of a stretch after the corrections in it. Where a correction names only a part of what it
// corrects ("…, no, on the right"), it is put in the place of the last thing of its kind; a whole clause replaces the
// clause of the same quantity.
type amended struct {
	s    *speech
	g    *group
	acc  []item // what is not understood yet
	done []made // what is
	// meant is set where the correction to take in tells what was meant.
	meant bool
}

// amend takes one correction in. ok is false where it is not clear what it corrects.
func (a *amended) amend(part []item) bool {
	chunk, rest := firstChunk(part)
	if list, ok := a.unfinished(chunk, part); ok {
		a.acc = list
		return true
	}
	if len(chunk) == 1 {
		if ok, clear := a.substitute(chunk[0], rest); ok || !clear {
			return clear
		}
	}
	if len(chunk) == 2 && a.repeatsWord(chunk) {
		chunk = chunk[:1] // "an inch low, no, an inch and a quarter low"
		if ok, clear := a.substitute(chunk[0], rest); ok || !clear {
			return clear
		}
	}
	if n := len(a.acc); n > 1 && len(chunk) > 1 && chunk[0].value() && a.dangles() && chunk[0].lim.lo.unit == bare {
		a.acc = append(append([]item{}, a.acc[:n-1]...), part...) // "and one, no, two added posts"
		return true
	}
	if len(chunk) == 2 && chunk[0].value() && !chunk[1].value() && (chunk[1].kind == kOver || chunk[1].kind == kUnder) {
		if a.beyond(chunk[0], chunk[1]) {
			a.acc = append(a.acc, rest...)
			return true
		}
	}
	if len(chunk) == 2 && chunk[0].value() && chunk[1].value() {
		if cents, ok := a.s.spokenAfter(a.acc, chunk[0].lim, chunk[1].lim); ok {
			it := chunk[0]
			it.lim = cents
			ok, clear := a.substitute(it, rest)
			return ok && clear
		}
	}
	if !a.settle(true) {
		return false
	}
	if len(a.done) == 0 {
		a.acc = part
		return true
	}
	a.s.correcting = true
	defer func() { a.s.correcting = false }()
	r, ok := a.s.best(a.g, part, false)
	if !ok {
		return false
	}
	if a.meant && len(a.done) == 1 && len(r.made) == 1 && a.done[0].kind == r.made[0].kind {
		a.done = r.made
	} else if a.done, ok = replace(a.done, r.made); !ok {
		a.s.notUnderstood(a.g, part)
		return false
	}
	a.s.carry = r.carry
	return true
}

// dangles reports whether a bare number stands alone at the end of what is not understood yet.
func (a *amended) dangles() bool {
	n := len(a.acc)
	it, before := a.acc[n-1], a.acc[n-2]
	return it.value() && it.lim.lo.unit == bare && it.lim.lo.size == "" && it.lim.hi == nil && it.lim.of == nil && (before.breaks() || !before.value() && (before.kind == kHave || before.kind == kExtra))
}

// beyond puts a value and its "over" in the place of the last that leans on something: "two inches over the wall, no, three
// inches over".
func (a *amended) beyond(it, way item) bool {
	for i := len(a.acc) - 1; i >= 0; i-- {
		if was := a.acc[i]; was.value() && was.lim.of != nil {
			lim := *was.lim
			v := *it.lim.lo
			if v.unit == bare && was.lim.lo.unit != bare {
				v = likeBefore(v, was.lim.lo)
			}
			lim.lo, lim.way = &v, way.token
			a.acc[i] = item{token: it.token, lim: &lim}
			return true
		}
	}
	return false
}

// settle understands what has been gathered. With a correction to come, what hangs at its end is dropped.
func (a *amended) settle(corrected bool) bool {
	list := strip(a.acc)
	if a.acc = nil; len(list) == 0 {
		return true
	}
	r, ok := a.s.best(a.g, list, corrected)
	if !ok {
		return false
	}
	a.done = append(a.done, r.made...)
	a.s.carry = r.carry
	return true
}

// firstChunk is a correction up to its first break, without words that add nothing.
func firstChunk(part []item) (chunk, rest []item) {
	i := 0
	for ; i < len(part) && !part[i].breaks(); i++ {
		if it := part[i]; it.value() || it.kind != kIt && it.kind != kMeasured && it.kind != kTo && !idle(it.token) && !(it.kind == kPer && it.text == "every") {
			chunk = append(chunk, it)
		}
	}
	return chunk, part[i:]
}

// substitute puts one item in the place of the last of its kind. clear is false where it may be put in two places.
func (a *amended) substitute(it item, rest []item) (ok, clear bool) {
	at, clear := a.place(it, rest)
	if !clear {
		a.s.notUnderstood(a.g, []item{it})
		return false, false
	}
	if at < 0 {
		return false, true
	}
	acc := append([]item{}, a.acc...)
	if it.value() {
		counted := acc[at].lim.lo
		acc[at] = item{token: it.token, lim: inherit(it.lim, acc[at].lim)}
		manyAfter(acc, at, counted)
	} else {
		acc[at] = it
	}
	a.acc = append(acc, rest...)
	return true, true
}

// place finds what an item takes the place of.
func (a *amended) place(it item, rest []item) (at int, clear bool) {
	if it.value() && it.lim.lo.footer && (a.footers() > 1 || len(rest) > 1 && rest[len(rest)-1].value()) {
		return -1, true // a list takes the place of a list
	}
	values, things := 0, 0
	at = -1
	exactAt := -1
	for i, was := range a.acc {
		switch {
		case was.value() && it.value():
			if was.lim.of != nil && it.lim.of == nil && len(it.lim.lead)+len(it.lim.tail) == 0 && !small(it.lim.lo, was.lim.lo) && it.lim.lo.val.Less(exact.Int(36)) && it.lim.lo.unit != metric {
				return -1, false // "two inches over the wall, sorry, two feet": over it, or in all?
			}
			if fits, same := replaces(it.lim, was.lim); fits && !(a.owned() && it.lim.lo.unit == bare && it.lim.lo.val.IsInt() && was.lim.lo.unit == bare && !was.lim.lo.val.IsInt()) {
				at = i
				values++
				if same {
					exactAt = i
				}
			}
		case was.value() || it.value():
			things++
		case was.kind == it.kind && sameNoun(was.token, it.token), a.meant && was.kind == kLoc && was.key() == "between posts" && it.kind == kPart:
			at = i
		}
	}
	if !it.value() && it.kind == kPart && it.index == 0 && at >= 0 && hasValue(a.acc) {
		if a.meant && len(strip(rest)) == 0 {
			return at, true // "gap 3, I meant the bottom gap"
		}
		return -1, true // a quantity in the place of another: too far to guess
	}
	if it.value() && it.lim.lo.unit == bare && exactAt >= 0 && exactAt != at {
		if a.owned() {
			return exactAt, true
		}
		if it.lim.lo.val.IsInt() && !near(it.lim, a.acc[at].lim) {
			return -1, false
		}
	}
	return at, true
}

func (a *amended) footers() int {
	n := 0
	for _, it := range a.acc {
		if it.value() && it.lim.lo.footer {
			n++
		}
	}
	return n
}

// owned reports whether boards at hand are spoken of: there a bare number is how many.
func (a *amended) owned() bool {
	for _, it := range a.acc {
		if !it.value() && (it.kind == kHave || it.as(kExtra) != nil || it.is(kHave)) {
			return true
		}
	}
	return false
}

// near reports whether a bare number is within half of the length that it may replace.
func near(l, was *limit) bool {
	v := l.lo.val
	if was.lo.scale().Sign() > 0 {
		v = v.Mul(was.lo.scale())
	}
	d := was.lo.val.Sub(v).Abs()
	return d.Add(d).Less(was.lo.val)
}

// replaces reports whether a value can stand in for another, and whether both are of one unit.
func replaces(l, was *limit) (fits, same bool) {
	a, b := l.lo, was.lo
	switch {
	case a.size != "" || b.size != "":
		return a.size != "" && b.size != "", true
	case l.of == nil && was.of != nil && l.hi == nil && was.hi == nil && len(l.lead)+len(l.tail) == 0 && small(a, b) && small(b, b):
		return a.unit == bare || a.unit == b.unit || b.unit != bare, a.unit == b.unit // "two inches taller than the wall, sorry, three"
	case l.of != nil || was.of != nil:
		return l.of != nil && was.of != nil, true
	case a.unit == b.unit:
		return true, true
	case a.unit == bare || b.unit == bare:
		return a.unit == bare || b.unit != money && b.unit != percent, false
	case a.unit == money || b.unit == money || a.unit == percent || b.unit == percent:
		return false, false
	}
	return true, true
}

// small reports whether an amount is a length that something can stand past something else, and no height by itself. A bare
// number is of the unit of what it corrects.
func small(a, like *amount) bool {
	if a.unit == bare && like.unit == metric {
		in := inUnitOf(*a, *like)
		a = &in
	}
	return a.unit != money && a.unit != percent && !a.times && (a.unit == metric && a.val.Less(mm(300)) || a.unit != metric && a.val.Less(twelve))
}

// manyAfter makes a noun that was counted as one the noun of many, where it is more after all: "one walk-through, no, two".
func manyAfter(acc []item, at int, was *amount) {
	now := acc[at].lim.lo
	if at+1 >= len(acc) || acc[at+1].value() || acc[at+1].kind != kPart || acc[at+1].index > 0 || was.unit != bare || !was.val.Eq(oneRat) || now.unit != bare || !now.val.IsInt() || !oneRat.Less(now.val) || acc[at+1].plural() {
		return
	}
	noun := *acc[at+1].token
	noun.text += "s"
	acc[at+1].token = &noun
}

// sameNoun reports whether one word can stand in for another: sides for sides, bay 2 for bay 1, one quantity for another.
func sameNoun(was, now *token) bool {
	switch was.kind {
	case kSide, kFromSide, kWall, kGoal, kUnits:
		return true
	case kPart, kLoc:
		return was.index > 0 && now.index > 0 && was.key() == now.key() || was.index == 0 && now.index == 0 && was.kind == kPart
	}
	return false
}

func kindOfValue(v solver.Value) solver.Kind {
	switch v.Unit {
	case solver.Inch, solver.Millimeter:
		return solver.Length
	case solver.Currency:
		return solver.Money
	case solver.PercentOf:
		return solver.Percent
	}
	return solver.Count
}

// repeatsWord reports whether a correction is a value and the very word that stands behind the value it corrects.
func (a *amended) repeatsWord(chunk []item) bool {
	if !chunk[0].value() || chunk[1].value() || !chunk[1].is(kMore) && chunk[1].kind != kPerFoot && !(chunk[0].lim.lo.times && chunk[1].kind == kPart) {
		return false
	}
	for i := 1; i < len(a.acc); i++ {
		if a.acc[i-1].value() && !a.acc[i].value() && a.acc[i].text == chunk[1].text {
			return true
		}
	}
	return false
}
