package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
)

// onlyRest reports whether nothing but "everywhere" or "the rest" tells what is changed.
func (k *clause) onlyRest() bool {
	for _, i := range k.things {
		if k.items[i].Kind != lexicon.Rest {
			return false
		}
	}
	return true
}

// goes reports whether "up" stands behind a verb of going: "go up one rail".
func goes(t *lex.Token) bool {
	words := strings.Fields(t.Before)
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
	a, ok := k.pick(senses, lexicon.OfKind[solver.Count], nil, 0)
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
	t := k.has(lexicon.Change)
	return t != nil && strings.HasPrefix(t.Text, "add") && k.has(lexicon.More) == nil && k.has(lexicon.Another) == nil
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
	if n := k.items[k.things[0]].Token; !n.Plural() && !lex.EndsIn(n.Before, "the") {
		more := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.AddedPosts}, Op: solver.Plus, Value: solver.Number(1)}
		list = []made{{st: more, at: k.at(), kind: solver.Count}, m}
	}
	return k.finish(reading{made: list})
}

// oneSpare reads "add a spare board", and "add another spare board".
func (k *clause) oneSpare() (reading, bool) {
	op := solver.Eq
	if k.has(lexicon.Another) != nil || k.has(lexicon.More) != nil {
		op = solver.Plus
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.Spare}
	return k.finish(reading{made: []made{{st: solver.Statement{Name: n, Op: op, Value: solver.Number(1)}, at: k.at(), kind: solver.Count}}})
}

// oneNoun reports whether a verb of change is said of one thing: "add a rail".
func (k *clause) oneNoun() bool {
	if k.has(lexicon.Change) == nil || len(k.things) == 0 {
		return false
	}
	n := k.items[k.things[0]].Token
	before := strings.Fields(n.Before)
	if t := k.has(lexicon.Change); t.Text == "extra" && len(before) == 0 {
		before = strings.Fields(t.Before) // "an extra rail"
	}
	return !n.Plural() && len(before) > 0 && (before[len(before)-1] == "a" || before[len(before)-1] == "an")
}

// oneMore is what "another" can be said of.
func (k *clause) oneMore() lexicon.Sense {
	if k.about("bay") {
		return lexicon.Meaning("| bays")
	}
	return lexicon.Meaning("| added posts, rails, stiffeners, openings")
}

// share reports whether a bare fraction is of no tape: a third, a fifth.
func share(l *limit) bool {
	if l.lo.Unit != measure.Bare || !l.lo.Frac || !l.lo.Val.Less(lex.OneRat) || l.lo.Point {
		return false
	}
	_, den := l.lo.Val.Frac()
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
		if it.Kind == lexicon.It {
			for _, w := range strings.Fields(it.Before) {
				built = built || w == "build" || w == "built" || w == "building" || w == "builds"
			}
		}
		tall = tall || it.Is(lexicon.More) && (it.Text == "lower" || it.Text == "higher" || it.Text == "taller" || it.Text == "shorter")
	}
	return built && tall || k.force == act.WhatIf && k.it && len(k.things) == 0 && k.raises()
}

// raises reports whether the one change of the clause raises or lowers: with nothing spoken of before, that is said of the wall.
func (k *clause) raises() bool {
	t := k.has(lexicon.Change)
	if t == nil {
		return false
	}
	switch lex.FirstWord(t.Text) {
	case "raise", "raised", "raising", "lower", "lowered", "lowering", "lift", "lifted", "lifting", "heighten", "jack":
		return true
	}
	return false
}

// moreApart reports whether a comma parts the value at item i from a comparative before it, and no verb of change stands
// in the clause.
func (k *clause) moreApart(i int) bool {
	if k.has(lexicon.Change) != nil || k.has(lexicon.Move) != nil || k.has(lexicon.ThanNow) != nil {
		return false
	}
	for j := i - 1; j >= 0; j-- {
		if it := k.items[j]; it.breaks() && it.Kind == lexicon.Comma {
			for _, w := range k.words {
				if w < j && k.items[w].Is(lexicon.More) {
					return true
				}
			}
		}
	}
	return false
}

// moreOf are words between a number and what it counts, where that many are added or taken away.
var moreOf = scan.WordSet("more fewer less extra additional")
