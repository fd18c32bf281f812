package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
)

// ThemWords point back at lengths that were just said to be on sale.
var ThemWords = scan.WordSet("those they these them")

// pointsAtThem reports whether the empty words before an item hold such a word.
func pointsAtThem(before string) bool {
	return slices.ContainsFunc(strings.Fields(before), func(w string) bool { return ThemWords[w] })
}

// tellsOfThem reports whether the clause says what is on sale, and then what "those" cost: two things, not one.
func (k *clause) tellsOfThem() bool {
	if k.has(lexicon.Sell) == nil && len(k.carry.sold) == 0 {
		return false
	}
	for i := 1; i < len(k.items); i++ {
		if k.items[i-1].breaks() && pointsAtThem(leadOf(k.items[i])) && (k.items[i].value() || k.items[i].Kind == lexicon.PriceVerb) {
			return true
		}
	}
	return false
}

// pricedAgain reads what lengths that were just said to be on sale cost: "four by fours come in eights, and those are 13.49".
func (k *clause) pricedAgain() (reading, bool) {
	sold := k.carry.sold
	if len(sold) == 0 || k.carry.Name == nil || k.carry.Name.Quantity != solver.Stock || len(k.values) != 1 || len(k.things)+len(k.dims)+len(k.sides) > 0 || !pointsAtThem(leadOf(k.items[0])) || !k.only(lexicon.PriceVerb, lexicon.Each) {
		return reading{}, false
	}
	k.spokenPrice()
	lim := k.items[k.values[0]].lim
	op, rel := lim.relation()
	if !rel || op != solver.Eq || lim.hi != nil || lim.of != nil || len(lim.tail) > 0 || lim.lo.Unit != measure.Money && lim.lo.Unit != measure.Bare || lim.lo.Size != "" || lim.lo.Times || lim.lo.Frac && !lim.lo.Point {
		return reading{}, false
	}
	if lim.lo.Unit == measure.Bare && k.has(lexicon.PriceVerb) == nil && k.has(lexicon.Each) == nil && !lim.lo.Money2 {
		return reading{}, false // "those are 13"
	}
	v, ok := k.s.value(*lim.lo, solver.Money)
	if !ok || v.Num.Sign() <= 0 {
		return reading{}, false
	}
	r := reading{}
	for i := range sold {
		n := solver.Name{Quantity: solver.Price, Item: k.carry.Name.Item, Long: &sold[i]}
		if n.Item == "" {
			n.Item = "rails"
		}
		r.made = append(r.made, made{st: solver.Statement{Name: n, Op: solver.Eq, Value: v}, at: k.at()})
	}
	item := r.made[len(r.made)-1].st.Name
	r, ok = k.finish(r)
	r.carry.item = &item
	return r, ok
}

// alsoPriced puts lengths that are priced after "they only have twelves at 9.79" into that list: "… and sixteens at 14.50".
func alsoPriced(out []made, m made) {
	if m.st.Name.Quantity != solver.Price || m.st.Name.Long == nil {
		return
	}
	for i := range out {
		list := out[i].st.Value.List
		if !out[i].only || slices.ContainsFunc(list, func(v solver.Value) bool { return v.String() == m.st.Name.Long.String() }) {
			continue
		}
		if item := out[i].st.Name.Item; item == m.st.Name.Item || item == "" && m.st.Name.Item == "rails" {
			out[i].st.Value.List = append(append([]solver.Value{}, list...), *m.st.Name.Long)
		}
	}
}

// soldOnly gives a price that also says that nothing else is sold the list of lengths it says: "we only stock 4x4s in eights, at
// 13.49 each".
func (k *clause) soldOnly(r reading, n solver.Name) reading {
	sell := k.has(lexicon.Sell)
	if sell == nil || n.Long == nil || len(r.made) != 1 || k.has(lexicon.Only) == nil && !slices.ContainsFunc(strings.Fields(sell.Text), func(w string) bool { return w == "only" || w == "just" }) {
		return r
	}
	name := solver.Name{Quantity: solver.Stock}
	if n.Item != "rails" {
		name.Item = n.Item
	}
	st := solver.Statement{Name: name, Op: solver.Eq, Value: solver.Value{List: []solver.Value{*n.Long}}}
	r.made = append([]made{{st: st, at: k.at(), only: true}}, r.made...)
	return r
}
