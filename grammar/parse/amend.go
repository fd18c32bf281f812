package parse

import (
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// amended is what stands of a stretch after the corrections in it. Where a correction names only a part of what it
// corrects ("…, no, on the right"), it is put in the place of the last thing of its kind; a whole clause replaces the
// clause of the same quantity.
type amended struct {
	s    *Speech
	g    *group
	acc  []Item // what is not understood yet
	done []made // what is
	// meant is set where the correction to take in tells what was meant.
	meant bool
}

// amend takes one correction in. ok is false where it is not clear what it corrects.
func (a *amended) amend(part []Item) bool {
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
	if n := len(a.acc); n > 1 && len(chunk) > 1 && chunk[0].value() && a.dangles() && chunk[0].lim.lo.Unit == measure.Bare {
		a.acc = append(append([]Item{}, a.acc[:n-1]...), part...) // "and one, no, two added posts"
		return true
	}
	if len(chunk) == 2 && chunk[0].value() && !chunk[1].value() && (chunk[1].Kind == lexicon.Over || chunk[1].Kind == lexicon.Under) {
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
	a.s.Carry = r.carry
	return true
}

// dangles reports whether a bare number stands alone at the end of what is not understood yet.
func (a *amended) dangles() bool {
	n := len(a.acc)
	it, before := a.acc[n-1], a.acc[n-2]
	return it.value() && it.lim.lo.Unit == measure.Bare && it.lim.lo.Size == "" && it.lim.hi == nil && it.lim.of == nil && (before.breaks() || !before.value() && (before.Kind == lexicon.Have || before.Kind == lexicon.Extra))
}

// beyond puts a value and its "over" in the place of the last that leans on something: "two inches over the wall, no, three
// inches over".
func (a *amended) beyond(it, way Item) bool {
	for i := len(a.acc) - 1; i >= 0; i-- {
		if was := a.acc[i]; was.value() && was.lim.of != nil {
			lim := *was.lim
			v := *it.lim.lo
			if v.Unit == measure.Bare && was.lim.lo.Unit != measure.Bare {
				v = likeBefore(v, was.lim.lo)
			}
			lim.lo, lim.way = &v, way.Token
			a.acc[i] = Item{Token: it.Token, lim: &lim}
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
	a.s.Carry = r.carry
	return true
}

// firstChunk is a correction up to its first break, without words that add nothing.
func firstChunk(part []Item) (chunk, rest []Item) {
	i := 0
	for ; i < len(part) && !part[i].breaks(); i++ {
		if it := part[i]; it.value() || it.Kind != lexicon.It && it.Kind != lexicon.Measured && it.Kind != lexicon.To && !idle(it.Token) && !(it.Kind == lexicon.Per && it.Text == "every") {
			chunk = append(chunk, it)
		}
	}
	return chunk, part[i:]
}

// substitute puts one item in the place of the last of its kind. clear is false where it may be put in two places.
func (a *amended) substitute(it Item, rest []Item) (ok, clear bool) {
	at, clear := a.place(it, rest)
	if !clear {
		a.s.notUnderstood(a.g, []Item{it})
		return false, false
	}
	if at < 0 {
		return false, true
	}
	acc := append([]Item{}, a.acc...)
	if it.value() {
		counted := acc[at].lim.lo
		acc[at] = Item{Token: it.Token, lim: inherit(it.lim, acc[at].lim)}
		manyAfter(acc, at, counted)
	} else {
		acc[at] = it
	}
	a.acc = append(acc, rest...)
	return true, true
}

// place finds what an item takes the place of.
func (a *amended) place(it Item, rest []Item) (at int, clear bool) {
	if it.value() && it.lim.lo.Footer && (a.footers() > 1 || len(rest) > 1 && rest[len(rest)-1].value()) {
		return -1, true // a list takes the place of a list
	}
	values, things := 0, 0
	at = -1
	exactAt := -1
	for i, was := range a.acc {
		switch {
		case was.value() && it.value():
			if was.lim.of != nil && it.lim.of == nil && len(it.lim.lead)+len(it.lim.tail) == 0 && !small(it.lim.lo, was.lim.lo) && it.lim.lo.Val.Less(exact.Int(36)) && it.lim.lo.Unit != measure.Metric {
				return -1, false // "two inches over the wall, sorry, two feet": over it, or in all?
			}
			if fits, same := replaces(it.lim, was.lim); fits && !(a.owned() && it.lim.lo.Unit == measure.Bare && it.lim.lo.Val.IsInt() && was.lim.lo.Unit == measure.Bare && !was.lim.lo.Val.IsInt()) {
				at = i
				values++
				if same {
					exactAt = i
				}
			}
		case was.value() || it.value():
			things++
		case was.Kind == it.Kind && sameNoun(was.Token, it.Token), a.meant && was.Kind == lexicon.Loc && was.Key() == "between posts" && it.Kind == lexicon.Part:
			at = i
		}
	}
	if !it.value() && it.Kind == lexicon.Part && it.Index == 0 && at >= 0 && hasValue(a.acc) {
		if a.meant && len(strip(rest)) == 0 {
			return at, true // "gap 3, I meant the bottom gap"
		}
		return -1, true // a quantity in the place of another: too far to guess
	}
	if it.value() && it.lim.lo.Unit == measure.Bare && exactAt >= 0 && exactAt != at {
		if a.owned() {
			return exactAt, true
		}
		if it.lim.lo.Val.IsInt() && !near(it.lim, a.acc[at].lim) {
			return -1, false
		}
	}
	return at, true
}

func (a *amended) footers() int {
	n := 0
	for _, it := range a.acc {
		if it.value() && it.lim.lo.Footer {
			n++
		}
	}
	return n
}

// owned reports whether boards at hand are spoken of: there a bare number is how many.
func (a *amended) owned() bool {
	for _, it := range a.acc {
		if !it.value() && (it.Kind == lexicon.Have || it.As(lexicon.Extra) != nil || it.Is(lexicon.Have)) {
			return true
		}
	}
	return false
}

// near reports whether a bare number is within half of the length that it may replace.
func near(l, was *limit) bool {
	v := l.lo.Val
	if was.lo.Scale().Sign() > 0 {
		v = v.Mul(was.lo.Scale())
	}
	d := was.lo.Val.Sub(v).Abs()
	return d.Add(d).Less(was.lo.Val)
}

// replaces reports whether a value can stand in for another, and whether both are of one unit.
func replaces(l, was *limit) (fits, same bool) {
	a, b := l.lo, was.lo
	switch {
	case a.Size != "" || b.Size != "":
		return a.Size != "" && b.Size != "", true
	case l.of == nil && was.of != nil && l.hi == nil && was.hi == nil && len(l.lead)+len(l.tail) == 0 && small(a, b) && small(b, b):
		return a.Unit == measure.Bare || a.Unit == b.Unit || b.Unit != measure.Bare, a.Unit == b.Unit // "two inches taller than the wall, sorry, three"
	case l.of != nil || was.of != nil:
		return l.of != nil && was.of != nil, true
	case a.Unit == b.Unit:
		return true, true
	case a.Unit == measure.Bare || b.Unit == measure.Bare:
		return a.Unit == measure.Bare || b.Unit != measure.Money && b.Unit != measure.Percent, false
	case a.Unit == measure.Money || b.Unit == measure.Money || a.Unit == measure.Percent || b.Unit == measure.Percent:
		return false, false
	}
	return true, true
}

// small reports whether an amount is a length that something can stand past something else, and no height by itself. A bare
// number is of the unit of what it corrects.
func small(a, like *measure.Amount) bool {
	if a.Unit == measure.Bare && like.Unit == measure.Metric {
		in := inUnitOf(*a, *like)
		a = &in
	}
	return a.Unit != measure.Money && a.Unit != measure.Percent && !a.Times && (a.Unit == measure.Metric && a.Val.Less(measure.Mm(300)) || a.Unit != measure.Metric && a.Val.Less(measure.Twelve))
}

// manyAfter makes a noun that was counted as one the noun of many, where it is more after all: "one walk-through, no, two".
func manyAfter(acc []Item, at int, was *measure.Amount) {
	now := acc[at].lim.lo
	if at+1 >= len(acc) || acc[at+1].value() || acc[at+1].Kind != lexicon.Part || acc[at+1].Index > 0 || was.Unit != measure.Bare || !was.Val.Eq(lex.OneRat) || now.Unit != measure.Bare || !now.Val.IsInt() || !lex.OneRat.Less(now.Val) || acc[at+1].Plural() {
		return
	}
	noun := *acc[at+1].Token
	noun.Text += "s"
	acc[at+1].Token = &noun
}

// sameNoun reports whether one word can stand in for another: sides for sides, bay 2 for bay 1, one quantity for another.
func sameNoun(was, now *lex.Token) bool {
	switch was.Kind {
	case lexicon.Side, lexicon.FromSide, lexicon.Wall, lexicon.Goal, lexicon.Units:
		return true
	case lexicon.Part, lexicon.Loc:
		return was.Index > 0 && now.Index > 0 && was.Key() == now.Key() || was.Index == 0 && now.Index == 0 && was.Kind == lexicon.Part
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
func (a *amended) repeatsWord(chunk []Item) bool {
	if !chunk[0].value() || chunk[1].value() || !chunk[1].Is(lexicon.More) && chunk[1].Kind != lexicon.PerFoot && !(chunk[0].lim.lo.Times && chunk[1].Kind == lexicon.Part) {
		return false
	}
	for i := 1; i < len(a.acc); i++ {
		if a.acc[i-1].value() && !a.acc[i].value() && a.acc[i].Text == chunk[1].Text {
			return true
		}
	}
	return false
}
