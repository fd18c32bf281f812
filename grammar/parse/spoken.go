package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// spokenPrice reads "thirteen eighty five" at the end of a clause as money, where what is priced is named: a length of
// lumber with its size or a word of pricing, a part with a word of pricing.
func (k *clause) spokenPrice() {
	n := len(k.values)
	if n > 2 && k.values[1] == k.values[0]+1 && strings.HasPrefix(leadOf(k.items[k.values[2]]), "for") && k.priced(k.values[2:]) {
		k.joinPrice(k.values[0], k.items[k.values[0]].lim, k.items[k.values[1]].lim) // "eleven forty for a twelve foot 2x6"
		return
	}
	if n < 2 || k.values[n-1] != k.values[n-2]+1 {
		return
	}
	a, b := k.items[k.values[n-2]].lim, k.items[k.values[n-1]].lim
	if !dollars(a) || !dollars(b) || b.lo.Val.Less(exact.Int(10)) || !k.priced(k.values[:n-2]) {
		return
	}
	k.joinPrice(k.values[n-2], a, b)
}

// joinPrice makes one price of the dollars at item last and the cents behind them.
func (k *clause) joinPrice(last int, a, b *limit) {
	if !dollars(a) && !(a.lo.Unit == measure.Money && a.lo.Val.IsInt() && a.hi == nil && len(a.lead)+len(a.tail) == 0) || !dollars(b) || b.lo.Val.Less(exact.Int(10)) {
		return
	}
	v := measure.Amount{Number: measure.Number{Val: a.lo.Val.Add(b.lo.Val.Div(exact.Int(100)))}, Unit: measure.Money}
	items := append([]Item{}, k.items...)
	items[last].lim = &limit{lo: &v, loTok: a.loTok}
	fresh := clause{s: k.s, force: k.force, carry: k.carry, items: append(items[:last+1:last+1], items[last+2:]...)}
	if fresh.sort() {
		*k = fresh
	}
}

// dollars reports whether a value can be the dollars, or the cents, of a price told in words.
func dollars(l *limit) bool {
	return l.lo.Unit == measure.Bare && l.lo.Words && l.lo.Val.IsInt() && l.lo.Val.Less(exact.Int(100)) && l.lo.Size == "" && l.hi == nil && len(l.lead)+len(l.tail) == 0
}

// priced reports whether the clause names what has a price.
func (k *clause) priced(values []int) bool {
	long, size := false, false
	for _, i := range values {
		l := k.items[i].lim.lo
		long, size = long || l.Footer || l.Unit == measure.Feet, size || l.Size != ""
	}
	said := k.has(lexicon.PriceVerb) != nil || k.has(lexicon.Each) != nil
	part := k.has(lexicon.Item) != nil
	for _, i := range k.things {
		part = part || k.items[i].As(lexicon.Item) != nil
	}
	said = said || len(values) == 1 && k.values[len(values)] > 0 && strings.HasSuffix(k.items[k.values[len(values)]].Before, "are") && k.items[values[0]].lim.lo.Footer
	return long && (size || said) || part && (said || k.has(lexicon.Item) != nil && k.has(lexicon.Item).Key() != "bracket" || len(k.things) == 1 && k.items[k.things[0]].Key() != "bracket")
}

// overage reads "ten percent extra": lumber to buy beyond what is needed.
func (k *clause) overage() (reading, bool) {
	if k.has(lexicon.Extra) == nil && !k.buysSpare() || len(k.values) != 1 || len(k.dims)+len(k.sides) > 0 || !k.only(lexicon.Extra, lexicon.Sell) || k.items[k.values[0]].lim.lo.Unit != measure.Percent {
		return reading{}, false
	}
	for _, i := range k.things {
		if key := k.items[i].Key(); key != "rail" && key != "size" && key != "in all" && key != "spare" {
			return reading{}, false
		}
	}
	op, ok := k.items[k.values[0]].lim.relation()
	m, ok2 := k.fill(made{st: solver.Of(solver.Spare, op, solver.Value{}), at: k.at(), lim: k.items[k.values[0]].lim, kind: solver.Percent})
	if !ok || !ok2 {
		return reading{}, false
	}
	return k.finish(reading{made: []made{m}})
}

// buysSpare reports whether spare lumber is said to be bought: "buy ten percent extra lumber".
func (k *clause) buysSpare() bool {
	t := k.has(lexicon.Sell)
	return t != nil && k.about("spare") && strings.HasPrefix(t.Text, "b")
}

// sizedAfter reads "both 2x6" after prices that were told without a size: it names what they are the prices of.
func (k *clause) sizedAfter() (reading, bool) {
	it := k.carry.item
	if it == nil || it.Quantity != solver.Price || it.Item != "rails" || k.has(lexicon.Move) != nil || len(k.values) != 1 || len(k.things)+len(k.dims)+len(k.sides) > 0 || !k.only() {
		return reading{}, false
	}
	size := k.items[k.values[0]].lim.lo.Size
	if size == "" {
		return reading{}, false
	}
	return reading{carry: k.carry, made: []made{{st: solver.Statement{Name: solver.Name{Quantity: solver.Price, Item: size}}, at: k.at()}}}, true
}

// sizePrices gives prices that were told without a size the one that was told after them.
func sizePrices(in []made) []made {
	out := in[:0:0]
	for _, m := range in {
		if m.st.Name.Quantity == solver.Price && m.st.Op == "" {
			for i := range out {
				if n := &out[i].st.Name; n.Quantity == solver.Price && n.Item == "rails" && n.Long != nil {
					n.Item = m.st.Name.Item
				}
			}
			continue
		}
		out = append(out, m)
	}
	return out
}

// spokenHundreds reads "one fifty one" as 151 where a length along the wall is told: no other can be meant.
func (k *clause) spokenHundreds() {
	n := len(k.values)
	if n != 2 || k.values[1] != k.values[0]+1 || len(k.words) > 0 {
		return
	}
	a, b := k.items[k.values[0]].lim, k.items[k.values[1]].lim
	if len(a.tail)+len(b.lead) > 0 || a.hi != nil || b.hi != nil || b.of != nil || !a.lo.Words || !b.lo.Words || a.lo.Unit != measure.Bare || a.lo.Size != "" || b.lo.Size != "" || !a.lo.Val.IsInt() || !b.lo.Val.IsInt() || k.items[k.values[1]].Before != "" {
		return
	}
	if a.lo.Val.Less(lex.OneRat) || !a.lo.Val.Less(exact.Int(10)) || b.lo.Val.Less(exact.Int(10)) || b.lo.Val.Less(exact.Int(20)) && !k.about("budget") || !b.lo.Val.Less(exact.Int(100)) || !k.alongWall() {
		return
	}
	v := *b.lo
	v.Val, v.Plain = a.lo.Val.Mul(exact.Int(100)).Add(b.lo.Val), ""
	first, last := k.values[0], k.values[1]
	items := append([]Item{}, k.items...)
	items[first].lim = &limit{lead: a.lead, tail: b.tail, lo: &v, loTok: a.loTok, to: a.to}
	fresh := clause{s: k.s, force: k.force, carry: k.carry, items: append(items[:first+1:first+1], items[last+1:]...)}
	if fresh.sort() {
		*k = fresh
	}
}

// alongWall reports whether the clause speaks of the whole length of the wall.
func (k *clause) alongWall() bool {
	for _, i := range k.things {
		switch k.items[i].Key() {
		case "span", "overall", "centers", "between posts", "budget":
			return true
		}
	}
	if k.force == act.Check && k.head() != nil && (totals(k.head().Text) || k.forMaterial() || k.topic("cost")) {
		return true // "she's been quoted three eighty-five for the lot"
	}
	n := k.carry.Name
	return len(k.things) == 0 && n != nil && (n.Quantity == solver.Span || n.Quantity == solver.Overall || n.Quantity == solver.Centers)
}
