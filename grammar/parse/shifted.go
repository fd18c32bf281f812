package parse

import (
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// shifted reads what is moved along the wall: "shift post 1 two inches to the right", "move the opening 6 inches left". Its
// place is counted from the left.
func (k *clause) shifted() (reading, bool) {
	if k.has(lexicon.Move) == nil || len(k.values) != 1 || len(k.sides) != 1 || len(k.things) != 1 || len(k.dims) > 0 || k.bay+k.rail > 0 || !k.only(lexicon.Move, lexicon.Over, lexicon.More) {
		return reading{}, false
	}
	if more := k.has(lexicon.More); more != nil && more.Text != "more" && more.Text != "further" && more.Text != "farther" {
		return reading{}, false // "make the opening 10 cm wider and move it to the right"
	}
	t := k.items[k.things[0]]
	n := solver.Name{Wall: k.wallName(), Opening: k.open, Post: k.post}
	switch {
	case t.Kind == lexicon.Part && (t.Key() == "post" || t.Key() == "added post") && k.post > 0 && len(t.Indexes) < 2:
		n.Quantity = solver.PostFromLeft
	case t.Kind == lexicon.Part && t.Key() == "opening" && !t.Plural() && len(t.Indexes) < 2:
		n.Quantity = solver.OpeningFromLeft
	default:
		return reading{}, false
	}
	lim := k.items[k.values[0]].lim
	v, ok := k.length(k.values[0])
	if !ok || lim.to || lim.goes || k.sides[0] < k.values[0] {
		return reading{}, false
	}
	op, known := map[string]solver.Op{"right": solver.Plus, "left": solver.Minus}[k.items[k.sides[0]].Key()]
	if !known {
		return reading{}, false
	}
	m := made{st: solver.Statement{Name: n, Op: op, Value: v}, at: k.at(), lim: lim, kind: solver.Length}
	m.doubt = k.s.doubtChange(m, *lim.lo)
	return k.finish(reading{made: []made{m}})
}
