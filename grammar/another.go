package grammar

import (
	"strings"

	"saywright/solver"
)

// onlyRest reports whether nothing but "everywhere" or "the rest" tells what is changed.
func (k *clause) onlyRest() bool {
	for _, i := range k.things {
		if k.items[i].kind != kRest {
			return false
		}
	}
	return true
}

// goes reports whether "up" stands behind a verb of going: "go up one rail".
func goes(t *token) bool {
	words := strings.Fields(t.before)
	if len(words) == 0 {
		return false
	}
	switch words[len(words)-1] {
	case "go", "going", "went", "goes":
		return true
	}
	return false
}

// another reads "another post": one more of what is counted.
func (k *clause) another(d direction) (reading, bool) {
	if k.about("spare") && d.op == solver.Plus {
		return k.oneSpare()
	}
	senses := append(k.senses(0, len(k.items)), k.oneMore())
	a, ok := k.pick(senses, ofKind[solver.Count], nil, 0)
	if !ok || d.op == "" {
		return reading{}, false
	}
	n, kind, ok := k.build(a)
	if !ok {
		return reading{}, false
	}
	m := made{st: solver.Statement{Name: n, Op: d.op, Value: solver.Number(1)}, at: k.at(), kind: kind}
	return k.finish(reading{made: []made{m}})
}

// adds reports whether spare boards are added to what is ordered rather than to those that were asked for before: "add two
// spare boards".
func (k *clause) adds() bool {
	t := k.has(kChange)
	return t != nil && strings.HasPrefix(t.text, "add") && k.has(kMore) == nil && k.has(kAnother) == nil
}

// addedAt reads "add a post 40 from the left": one more post, and where it stands.
func (k *clause) addedAt(m made) (reading, bool) {
	m.st.Op = solver.Eq
	m, ok := k.fill(m)
	if !ok {
		return reading{}, false
	}
	list := []made{m}
	if len(k.things) == 0 {
		return reading{}, false
	}
	if n := k.items[k.things[0]].token; !n.plural() && !endsIn(n.before, "the") {
		more := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.AddedPosts}, Op: solver.Plus, Value: solver.Number(1)}
		list = []made{{st: more, at: k.at(), kind: solver.Count}, m}
	}
	return k.finish(reading{made: list})
}

// oneSpare reads "add a spare board", and "add another spare board".
func (k *clause) oneSpare() (reading, bool) {
	op := solver.Eq
	if k.has(kAnother) != nil || k.has(kMore) != nil {
		op = solver.Plus
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.Spare}
	return k.finish(reading{made: []made{{st: solver.Statement{Name: n, Op: op, Value: solver.Number(1)}, at: k.at(), kind: solver.Count}}})
}

// oneNoun reports whether a verb of change is said of one thing: "add a rail".
func (k *clause) oneNoun() bool {
	if k.has(kChange) == nil || len(k.things) == 0 {
		return false
	}
	n := k.items[k.things[0]].token
	before := strings.Fields(n.before)
	if t := k.has(kChange); t.text == "extra" && len(before) == 0 {
		before = strings.Fields(t.before) // "an extra rail"
	}
	return !n.plural() && len(before) > 0 && (before[len(before)-1] == "a" || before[len(before)-1] == "an")
}

// oneMore is what "another" can be said of.
func (k *clause) oneMore() sense {
	if k.about("bay") {
		return meaning("| bays")
	}
	return meaning("| added posts, rails, stiffeners, openings")
}

// share reports whether a bare fraction is of no tape: a third, a fifth.
func share(l *limit) bool {
	if l.lo.unit != bare || !l.lo.frac || !l.lo.val.Less(oneRat) || l.lo.point {
		return false
	}
	_, den := l.lo.val.Frac()
	d := den.Int64()
	return d&(d-1) != 0
}

// builtIt reports whether "it" can only be the wall: "built it four inches lower".
func (k *clause) builtIt() bool {
	built, tall := false, false
	for _, it := range k.items {
		if it.value() {
			continue
		}
		if it.kind == kIt {
			for _, w := range strings.Fields(it.before) {
				built = built || w == "build" || w == "built" || w == "building" || w == "builds"
			}
		}
		tall = tall || it.is(kMore) && (it.text == "lower" || it.text == "higher" || it.text == "taller" || it.text == "shorter")
	}
	return built && tall || k.force == WhatIf && k.it && len(k.things) == 0 && k.raises()
}

// raises reports whether the one change of the clause raises or lowers: with nothing spoken of before, that is said of the wall.
func (k *clause) raises() bool {
	t := k.has(kChange)
	if t == nil {
		return false
	}
	switch firstWord(t.text) {
	case "raise", "raised", "raising", "lower", "lowered", "lowering", "lift", "lifted", "lifting", "heighten", "jack":
		return true
	}
	return false
}

// moreApart reports whether a comma parts the value at item i from a comparative before it, and no verb of change stands
// in the clause.
func (k *clause) moreApart(i int) bool {
	if k.has(kChange) != nil || k.has(kMove) != nil || k.has(kThanNow) != nil {
		return false
	}
	for j := i - 1; j >= 0; j-- {
		if it := k.items[j]; it.breaks() && it.kind == kComma {
			for _, w := range k.words {
				if w < j && k.items[w].is(kMore) {
					return true
				}
			}
		}
	}
	return false
}

// moreKey is the sign of a comparative.
func (t *token) moreKey() string {
	if e := t.as(kMore); e != nil {
		return e.key
	}
	return t.key()
}

// moreOf are words between a number and what it counts, where that many are added or taken away.
var moreOf = wordSet("more fewer less extra additional")
