package parse

import (
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// comparedTo reads how much more or less of one thing there is than of another: "half an inch less under the bottom rail
// than between the rails".
func (k *clause) comparedTo() (reading, bool) {
	if len(k.values) != 1 || len(k.sides) > 0 || !k.only(lexicon.More, lexicon.Than, lexicon.Change) {
		return reading{}, false
	}
	than, sign, mores := -1, 0, 0
	for _, w := range k.words {
		t := k.items[w]
		switch {
		case t.Kind == lexicon.Than && than < 0:
			than = w
		case t.Is(lexicon.More):
			sign = map[string]int{"+=": 1, "-=": -1}[t.As(lexicon.More).Key]
			mores++
		case t.Kind == lexicon.Than, t.Kind == lexicon.Change:
			return reading{}, false
		}
	}
	lim := k.items[k.values[0]].lim
	op, ok := lim.relation()
	if than < 0 || mores != 1 || sign == 0 || k.values[0] > than || !ok || op != solver.Eq || lim.of != nil || lim.hi != nil || lim.lo.Times {
		return reading{}, false
	}
	add, ok := k.s.value(*lim.lo, solver.Length)
	if !ok {
		return reading{}, false
	}
	if sign < 0 {
		add.Num = add.Num.Neg()
	}
	subject, ok1 := k.sideOf(0, than, nil)
	object, ok2 := k.sideOf(than, len(k.items), nil)
	if !ok1 || !ok2 || subject.String() == object.String() {
		return reading{}, false
	}
	object.Wall = ""
	add.Of = &object
	m := made{st: solver.Statement{Name: subject, Op: solver.Eq, Value: add}, at: k.at(), kind: solver.Length}
	return k.finish(reading{made: []made{m}})
}

// sideOf names the length that the parts between two items speak of, with what else is known of it.
func (k *clause) sideOf(from, to int, more []lexicon.Sense) (solver.Name, bool) {
	senses := k.senses(from, to)
	if len(senses) == 0 {
		return solver.Name{}, false
	}
	a, ok := k.pick(append(senses, more...), lengthAspects, nil, 0)
	if !ok {
		return solver.Name{}, false
	}
	n, _, ok := k.between(from, to).build(a)
	return n, ok
}

// between is the clause with the numbers of only those parts that stand between two items.
func (k *clause) between(from, to int) *clause {
	c := *k
	c.bay, c.bay2, c.rail, c.post, c.open = 0, 0, 0, 0, 0
	for _, i := range k.things {
		if i >= from && i < to {
			c.index(k.items[i].Token)
		}
	}
	return &c
}

// dimensionHeld is the dimension that a word of likeness compares: "as tall as", "flush with the tops of".
func dimensionHeld(t *lex.Token) []lexicon.Sense {
	if s := dimensionOf(t); s != nil {
		if s.May.HasName(string(solver.Opening)) {
			return []lexicon.Sense{lexicon.Meaning("| opening, bay, gap, rail face")}
		}
		return []lexicon.Sense{*s}
	}
	if t.Kind != lexicon.Same {
		return nil
	}
	for _, w := range strings.Fields(t.Text) {
		switch w {
		case "tall", "high", "height":
			return []lexicon.Sense{lexicon.Meaning("| wall height, post height, base height, rail top")}
		case "wide", "broad", "width":
			return []lexicon.Sense{lexicon.Meaning("| opening, bay, gap, rail face")}
		case "flush", "level", "even":
			return []lexicon.Sense{lexicon.Meaning("| wall height, post height, rail top")}
		}
	}
	return nil
}
