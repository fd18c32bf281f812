package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// stock reads lumber on sale: "they sell eights, twelves and sixteens", "they have tens too", "they're out of twelves".
func (k *clause) stock(g goods) (reading, bool) {
	if len(g.cash)+len(g.items) > 0 || len(g.longs)+len(g.counts)+len(g.others) == 0 {
		return reading{}, false
	}
	if k.has(lexicon.Up) != nil && k.has(lexicon.Sell) == nil && k.has(lexicon.SellMore) == nil && k.has(lexicon.StockWord) == nil {
		return reading{}, false // "use up my twelves first" is no list of what they sell
	}
	if k.has(lexicon.Not) != nil || k.has(lexicon.SellLess) != nil && len(g.counts) > 0 && len(g.longs) > 0 {
		return reading{}, false // "they're not out of tens", "eights, not twelves, and sixteens"
	}
	if t := k.has(lexicon.SellLess); t != nil && strings.HasSuffix(t.Text, "out of") && !strings.Contains(t.Text, "are") && k.force == act.WhatIf && k.items[0].Token != t {
		return reading{}, false // "can I get it all out of twelves"
	}
	if len(g.counts) > 0 && len(g.longs) == 1 && g.size != "" && k.breaks == 0 && k.has(lexicon.SellLess) == nil {
		return reading{}, false // "I bought 4 10 foot 2x6s" counts boards
	}
	if k.lessAndMore() || k.soldNoLonger() || k.goneBetween() {
		return reading{}, false
	}
	if v := k.has(lexicon.PriceVerb); v != nil && v.Text != "@" || !k.only(lexicon.Sell, lexicon.SellMore, lexicon.SellLess, lexicon.Have, lexicon.No, lexicon.Not, lexicon.But, lexicon.Change, lexicon.More, lexicon.Rel, lexicon.GoesIn, lexicon.HaveTail, lexicon.To, lexicon.Down) {
		return reading{}, false
	}
	if len(g.longs) == 0 && k.about("rail") && len(g.counts) == 1 && len(k.values) == 1 && !k.about("stock") {
		return reading{}, false // "I have seven rails"
	}
	footers := 0
	for _, l := range g.longs {
		if l.lo.Footer {
			footers++
		}
	}
	named := k.carry.Name != nil && k.carry.Name.Quantity == solver.Stock && len(k.things) == 0 || k.has(lexicon.Sell) != nil || k.about("stock") || k.has(lexicon.StockWord) != nil || k.has(lexicon.SellMore) != nil && !k.leadsOn() || k.has(lexicon.SellLess) != nil
	if !named && (footers == 0 || k.has(lexicon.Have) != nil || len(g.counts) > 0) {
		return reading{}, false
	}
	if !named && footers < len(g.longs) && !k.listed() {
		return reading{}, false
	}
	if len(g.longs) == 0 && !k.soldByNumber() {
		return reading{}, false // "just use five"
	}
	if k.countsBoards() || k.countsEach() {
		return reading{}, false // "we have four ten foot boards"
	}
	if k.sizeAfterComma() || k.partSizedAfter() {
		return reading{}, false // "… and sixteens, 4x4s in eights"
	}
	list, ok := k.lengths()
	if !ok {
		return reading{}, false
	}
	n := solver.Name{Quantity: solver.Stock, Item: g.size}
	v := solver.Value{List: list}
	op := k.stockOp()
	if op != solver.Eq && len(list) > 1 {
		r := reading{carry: k.carry}
		for _, one := range list {
			r.made = append(r.made, made{st: solver.Statement{Name: n, Op: op, Value: solver.Value{List: []solver.Value{one}}}, at: k.at()})
		}
		return k.finish(r)
	}
	r, ok := k.one(solver.Statement{Name: n, Op: op, Value: v}, carry{})
	if op == solver.Eq {
		r.carry.sold = list
	}
	return r, ok
}

// shortestSold is the shortest lumber, in feet, that a bare number before a length can be: below it, it counts boards.
var shortestSold = exact.Int(6)

// countsBoards reports whether the values are a number of boards and how long they are.
func (k *clause) countsBoards() bool {
	if len(k.values) != 2 || k.breaks > 0 {
		return false
	}
	n, l := k.items[k.values[0]].lim, k.items[k.values[1]].lim
	return n.lo.Unit == measure.Bare && n.lo.Size == "" && !n.lo.Footer && n.lo.Val.IsInt() && (l.lo.Unit == measure.Feet || l.lo.Footer) && (n.lo.Val.Less(shortestSold) || !sellsOnly(k.has(lexicon.Sell)) || k.values[1] > k.values[0]+1 || k.has(lexicon.Sell) == nil || ours(k.has(lexicon.Sell).Text))
}

// countsEach reports whether several lengths each stand right behind a number of boards: "they have six tens and four twelves".
func (k *clause) countsEach() bool {
	counted := 0
	for i := 1; i < len(k.items); i++ {
		if n, l := k.items[i-1], k.items[i]; n.value() && l.value() && n.lim.lo.Unit == measure.Bare && l.lim.lo.Footer {
			counted++
		}
	}
	return counted > 1
}

// sellsOnly reports whether a word of selling says nothing of having: "they sell", "we carry".
func sellsOnly(t *lex.Token) bool {
	if t == nil {
		return false
	}
	for _, w := range []string{"sell", "carr", "stock", "offer", "keep", "sale", "come"} {
		if strings.Contains(t.Text, w) {
			return true
		}
	}
	return false
}

// leadsOn reports whether the word for more only leads a sentence on: "also 36 inch opening in the middle".
func (k *clause) leadsOn() bool {
	return len(k.items) > 0 && !k.items[0].value() && k.items[0].Kind == lexicon.SellMore && (k.items[0].Text == "also" || k.items[0].Text == "too")
}

// ours reports whether a word of having is said of what the speaker has.
func ours(text string) bool {
	return strings.HasPrefix(text, "we ") || strings.HasPrefix(text, "i ")
}

// soldByNumber reports whether bare numbers can only be lengths on sale: a yard, a rack or the word stock is named.
func (k *clause) soldByNumber() bool {
	if k.about("stock") || k.has(lexicon.StockWord) != nil {
		return true
	}
	t := k.has(lexicon.Sell)
	if t == nil {
		return false
	}
	if strings.Contains(t.Text, "come") && (k.about("size") || k.about("rail")) {
		return true // "lumber comes in 8, 10 and 12"
	}
	for _, w := range []string{"sell", "carr", "stock", "offer", "sale", "rack", "length"} {
		if strings.Contains(t.Text, w) {
			return true
		}
	}
	return false
}

func (k *clause) listed() bool { return k.breaks > 0 }

func (k *clause) stockOp() solver.Op {
	change := ""
	for _, w := range k.words {
		if t := k.items[w]; t.Kind == lexicon.Change {
			change = t.As(lexicon.Change).Key
		}
	}
	switch {
	case k.has(lexicon.SellLess) != nil || k.has(lexicon.No) != nil || change == "-=":
		return solver.Minus
	case k.carry.Name != nil && k.carry.Name.Quantity == solver.Stock && k.carry.op == solver.Minus && k.hasThem():
		return solver.Plus // "they're out of sixteens but they do have tens"
	case k.has(lexicon.SellMore) != nil || change == "+=" || k.has(lexicon.Sell) != nil && strings.Contains(k.has(lexicon.Sell).Text, " also "),
		k.head() != nil && strings.Contains(k.head().Text+" ", " also "): // "the store also has" is a head as papers have one
		return solver.Plus
	case len(k.values) == 1 && k.has(lexicon.Only) == nil && (lex.AfterAll(k.has(lexicon.Sell)) || lex.AfterAll(k.head())):
		return solver.Plus // "turns out they do have tens"
	}
	return solver.Eq
}

// lengths reads the lengths of a list. A bare number takes the unit of the list, or else feet, as lumber is sold.
func (k *clause) lengths() ([]solver.Value, bool) {
	var like *measure.Amount
	for _, i := range k.values {
		if a := k.items[i].lim.lo; a.Unit != measure.Bare && a.Size == "" {
			like = a
		}
	}
	var out []solver.Value
	last := k.values0()
	for _, i := range k.values {
		a := *k.items[i].lim.lo
		switch {
		case a.Size != "":
			continue
		case a.Unit == measure.Bare && like != nil && (i == last || a.Frac && like.Unit != measure.Metric):
			return nil, false
		case a.Unit == measure.Bare && like != nil:
			a = inUnitOf(a, *like)
		case a.Unit == measure.Bare && k.s.Metric && measure.InMeters(a.Val):
			a.Val, a.Unit, a.Per = a.Val.Mul(measure.Mm(1000)), measure.Metric, measure.Mm(1000)
		case a.Unit == measure.Bare && !k.s.Metric && a.Val.IsInt() && a.Val.Less(exact.Int(25)) && exact.Int(3).Less(a.Val):
			a.Val, a.Unit = a.Val.Mul(measure.Twelve), measure.Feet
		}
		v, ok := k.s.value(a, solver.Length)
		if !ok || v.Num.Sign() <= 0 || v.Num.Less(measure.Twelve) {
			return nil, false
		}
		out = append(out, v)
	}
	return out, len(out) > 0
}

// sizeAfterComma reports whether a size opens another list: lengths stand before the comma in front of it, and after it.
func (k *clause) sizeAfterComma() bool {
	for i, it := range k.items {
		if it.value() && it.lim.lo.Size != "" && i > 1 && !k.items[i-1].value() && k.items[i-1].Kind == lexicon.Comma && k.values[0] < i && k.values0() > i {
			return true
		}
	}
	return false
}

// lessAndMore reports whether lengths that are gone and lengths that are there are told side by side: "they're out of
// twelves, they have tens" is two things.
func (k *clause) lessAndMore() bool {
	if k.changesBothWays() {
		return true // "add fourteens and drop the tens"
	}
	less, more := -1, -1
	for i, it := range k.items {
		if !it.value() && it.Kind == lexicon.SellMore && it.Key() == lex.BackAgain.Key && k.breaks > 0 && (k.has(lexicon.SellLess) != nil || k.has(lexicon.No) != nil) {
			return true // "12s out, 14s in"
		}
		switch {
		case it.value():
			if i > k.values[0] && holds[lex.FirstWord(leadOf(it))] {
				more = i
			}
		case it.Kind == lexicon.SellLess && less < 0:
			less = i
		case it.Kind == lexicon.Only && less >= 0 && i > k.values[0]:
			return true // "no more tens, only twelves"
		case (it.Kind == lexicon.Sell || it.Kind == lexicon.Have) && it.Text != "on the rack" && it.Text != "in stock":
			more = i
		}
	}
	return less >= 0 && more > k.values[0] && less < more && k.values0() >= more
}

// changesBothWays reports whether something is added and something taken away, each with a length behind it.
func (k *clause) changesBothWays() bool {
	ways := map[string]bool{}
	for i, it := range k.items {
		switch {
		case it.value() || k.values0() < i:
		case it.Kind == lexicon.Change:
			ways[it.As(lexicon.Change).Key] = true
		case it.Kind == lexicon.SellLess || it.Kind == lexicon.No:
			ways["-="] = true
		}
	}
	return ways["+="] && ways["-="]
}

// hasThem reports whether the clause says that lengths are there, not that they are all that is sold.
func (k *clause) hasThem() bool {
	t := k.has(lexicon.Sell)
	if k.has(lexicon.Have) != nil || holds[lex.FirstWord(leadOf(k.items[k.values[0]]))] {
		return true
	}
	return t == nil && k.force == act.Check || t != nil && (strings.Contains(t.Text, "have") || strings.Contains(t.Text, "got") || strings.Contains(t.Text, " has"))
}

var holds = scan.WordSet("have has got put")

// soldNoLonger reports whether lengths are said to be there, and a "no longer" stands behind them: "they have eights and tens, no
// longer". Nothing longer may be meant.
func (k *clause) soldNoLonger() bool {
	sells := -1
	if k.force == act.Check {
		sells = 0 // "the yard has"
	}
	for i, it := range k.items {
		switch {
		case it.value():
		case it.Kind == lexicon.Sell && i < k.values[0] && !strings.Contains(it.Text, "had"):
			sells = i
		case it.Kind == lexicon.SellLess && sells >= 0 && i > k.values0() && (it.Text == "no longer" || it.Text == "no more"):
			return true
		}
	}
	return false
}

// goneBetween reports whether lengths stand on both sides of what tells that those before it are gone: "the twelves are gone, use
// tens".
func (k *clause) goneBetween() bool {
	for i, it := range k.items {
		if it.value() || it.Kind != lexicon.SellLess || i < k.values[0] || i > k.values0() {
			continue
		}
		if w := it.Text; lex.EndsIn(w, "gone") || lex.EndsIn(w, "stock") || lex.EndsIn(w, "out") || w == "discontinued" {
			return true
		}
	}
	return false
}

// pile asks back where boards are told by their number, size and length, and not whether somebody has them: "ten two by sixes,
// twelve footers". It reports whether they are.
func (s *Speech) pile(found []made) bool {
	for i := 0; i+2 < len(found); i++ {
		n, size, long := found[i].st, found[i+1].st, found[i+2].st
		if !found[i].alone || n.Name.Quantity != solver.Rails || size.Name.Quantity != solver.RailSize || long.Name.Quantity != solver.Stock || long.Op != solver.Eq || len(long.Value.List) != 1 {
			continue
		}
		have := solver.Statement{Name: solver.Name{Quantity: solver.Have, Item: size.Value.Word, Long: &long.Value.List[0]}, Op: solver.Each, Value: n.Value}
		q := solver.Question{Text: "Have you got those already?", Choices: []string{have.String()}, Example: have.String()}
		s.fail(found[i].at, q)
		return true
	}
	return false
}
