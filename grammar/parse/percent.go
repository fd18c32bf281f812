package parse

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// extraPercent reads a share of lumber that is bought beyond what is needed: "ten percent extra", "10% over on lumber".
func (k *clause) extraPercent() (reading, bool) {
	if len(k.values) != 1 || len(k.sides)+len(k.dims) > 0 || k.bay+k.rail+k.post+k.open > 0 || !k.only(lexicon.Extra, lexicon.More, lexicon.Over, lexicon.Change, lexicon.Have, lexicon.Sell) {
		return reading{}, false
	}
	lim := k.items[k.values[0]].lim
	op, ok := lim.relation()
	if !ok || lim.lo.Unit != measure.Percent || lim.hi != nil || !k.beyondNeed(lim) {
		return reading{}, false
	}
	for _, i := range k.things {
		switch k.items[i].Key() {
		case "size", "rail", "in all", "budget":
		default:
			return reading{}, false
		}
	}
	if lim.of != nil || lim.way != nil {
		op = solver.Eq
	}
	v, ok := k.s.value(measure.Amount{Number: lim.lo.Number, Unit: measure.Percent}, solver.Percent)
	if !ok || op != solver.Eq {
		return reading{}, false
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Spare}, Op: solver.Eq, Value: v}
	return k.finish(reading{made: []made{{st: st, at: k.at(), lim: lim, kind: solver.Percent}}})
}

// beyondNeed reports whether "extra" or "over" stands after the percents.
func (k *clause) beyondNeed(lim *limit) bool {
	if lim.way != nil {
		t := senseOf(lim.of)
		return strings.HasPrefix(lim.way.Text, "over") && !t.All().HasName("gap") && t.All().HasName("stock")
	}
	for _, w := range k.words {
		switch t := k.items[w]; {
		case w < k.values[0]:
			if t.Is(lexicon.More) || t.Is(lexicon.Change) {
				return false
			}
		case t.Text == "extra", t.Kind == lexicon.Over && t.Text == "over":
			return true
		}
	}
	return false
}

// soMany reads a number of like things and how wide each is: "two 6 foot bays", "two 36 inch openings".
func (k *clause) soMany() (reading, bool) {
	if len(k.values) != 2 || len(k.things) != 1 || len(k.items) != 3 || k.things[0] != 2 {
		return reading{}, false
	}
	n, l, noun := k.items[0].lim, k.items[1].lim, k.items[2]
	names := map[string][2]solver.Quantity{"bay": {solver.Bays, solver.Bay}, "opening": {solver.Openings, solver.Opening}}[noun.Key()]
	if op, ok := n.relation(); !ok || op != solver.Eq || n.hi != nil || n.lo.Unit != measure.Bare || n.lo.Size != "" || !n.lo.Val.IsInt() || noun.Index > 0 || names[0] == "" || l.lo.Unit == measure.Bare || noun.Before != "" {
		return reading{}, false
	}
	if op, ok := l.relation(); !ok || op != solver.Eq {
		return reading{}, false
	}
	count, ok1 := k.fill(made{st: solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: names[0]}, Op: solver.Eq}, at: k.at(), lim: n, kind: solver.Count})
	wide, ok2 := k.fill(made{st: solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: names[1]}, Op: solver.Eq}, at: k.items[1].At, lim: l, kind: solver.Length})
	if !ok1 || !ok2 {
		return reading{}, false
	}
	return k.finish(reading{made: []made{count, wide}})
}
