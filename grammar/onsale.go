package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// stock reads lumber on sale: "they sell eights, twelves and sixteens", "they have tens too", "they're out of twelves".
func (k *clause) stock(g goods) (reading, bool) {
	if len(g.cash)+len(g.items) > 0 || len(g.longs)+len(g.counts)+len(g.others) == 0 {
		return reading{}, false
	}
	if k.has(kUp) != nil && k.has(kSell) == nil && k.has(kSellMore) == nil && k.has(kStockWord) == nil {
		return reading{}, false // "use up my twelves first" is no list of what they sell
	}
	if k.has(kNot) != nil || k.has(kSellLess) != nil && len(g.counts) > 0 && len(g.longs) > 0 {
		return reading{}, false // "they're not out of tens", "eights, not twelves, and sixteens"
	}
	if t := k.has(kSellLess); t != nil && strings.HasSuffix(t.text, "out of") && !strings.Contains(t.text, "are") && k.force == WhatIf && k.items[0].token != t {
		return reading{}, false // "can I get it all out of twelves"
	}
	if len(g.counts) > 0 && len(g.longs) == 1 && g.size != "" && k.breaks == 0 && k.has(kSellLess) == nil {
		return reading{}, false // "I bought 4 10 foot 2x6s" counts boards
	}
	if k.lessAndMore() || k.soldNoLonger() || k.goneBetween() {
		return reading{}, false
	}
	if v := k.has(kPriceVerb); v != nil && v.text != "@" || !k.only(kSell, kSellMore, kSellLess, kHave, kNo, kNot, kBut, kChange, kMore, kRel, kGoesIn, kHaveTail, kTo, kDown) {
		return reading{}, false
	}
	if len(g.longs) == 0 && k.about("rail") && len(g.counts) == 1 && len(k.values) == 1 && !k.about("stock") {
		return reading{}, false // "I have seven rails"
	}
	footers := 0
	for _, l := range g.longs {
		if l.lo.footer {
			footers++
		}
	}
	named := k.carry.name != nil && k.carry.name.Quantity == solver.Stock && len(k.things) == 0 || k.has(kSell) != nil || k.about("stock") || k.has(kStockWord) != nil || k.has(kSellMore) != nil && !k.leadsOn() || k.has(kSellLess) != nil
	if !named && (footers == 0 || k.has(kHave) != nil || len(g.counts) > 0) {
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
	return n.lo.unit == bare && n.lo.size == "" && !n.lo.footer && n.lo.val.IsInt() && (l.lo.unit == feet || l.lo.footer) && (n.lo.val.Less(shortestSold) || !sellsOnly(k.has(kSell)) || k.values[1] > k.values[0]+1 || k.has(kSell) == nil || ours(k.has(kSell).text))
}

// countsEach reports whether several lengths each stand right behind a number of boards: "they have six tens and four twelves".
func (k *clause) countsEach() bool {
	counted := 0
	for i := 1; i < len(k.items); i++ {
		if n, l := k.items[i-1], k.items[i]; n.value() && l.value() && n.lim.lo.unit == bare && l.lim.lo.footer {
			counted++
		}
	}
	return counted > 1
}

// sellsOnly reports whether a word of selling says nothing of having: "they sell", "we carry".
func sellsOnly(t *token) bool {
	if t == nil {
		return false
	}
	for _, w := range []string{"sell", "carr", "stock", "offer", "keep", "sale", "come"} {
		if strings.Contains(t.text, w) {
			return true
		}
	}
	return false
}

// leadsOn reports whether the word for more only leads a sentence on: "also 36 inch opening in the middle".
func (k *clause) leadsOn() bool {
	return len(k.items) > 0 && !k.items[0].value() && k.items[0].kind == kSellMore && (k.items[0].text == "also" || k.items[0].text == "too")
}

// ours reports whether a word of having is said of what the speaker has.
func ours(text string) bool {
	return strings.HasPrefix(text, "we ") || strings.HasPrefix(text, "i ")
}

// soldByNumber reports whether bare numbers can only be lengths on sale: a yard, a rack or the word stock is named.
func (k *clause) soldByNumber() bool {
	if k.about("stock") || k.has(kStockWord) != nil {
		return true
	}
	t := k.has(kSell)
	if t == nil {
		return false
	}
	if strings.Contains(t.text, "come") && (k.about("size") || k.about("rail")) {
		return true // "lumber comes in 8, 10 and 12"
	}
	for _, w := range []string{"sell", "carr", "stock", "offer", "sale", "rack", "length"} {
		if strings.Contains(t.text, w) {
			return true
		}
	}
	return false
}

func (k *clause) listed() bool { return k.breaks > 0 }

func (k *clause) stockOp() solver.Op {
	change := ""
	for _, w := range k.words {
		if t := k.items[w]; t.kind == kChange {
			change = t.as(kChange).key
		}
	}
	switch {
	case k.has(kSellLess) != nil || k.has(kNo) != nil || change == "-=":
		return solver.Minus
	case k.carry.name != nil && k.carry.name.Quantity == solver.Stock && k.carry.op == solver.Minus && k.hasThem():
		return solver.Plus // "they're out of sixteens but they do have tens"
	case k.has(kSellMore) != nil || change == "+=" || k.has(kSell) != nil && strings.Contains(k.has(kSell).text, " also "),
		k.head() != nil && strings.Contains(k.head().text+" ", " also "): // "the store also has" is a head as papers have one
		return solver.Plus
	case len(k.values) == 1 && k.has(kOnly) == nil && (afterAll(k.has(kSell)) || afterAll(k.head())):
		return solver.Plus // "turns out they do have tens"
	}
	return solver.Eq
}

// lengths reads the lengths of a list. A bare number takes the unit of the list, or else feet, as lumber is sold.
func (k *clause) lengths() ([]solver.Value, bool) {
	var like *amount
	for _, i := range k.values {
		if a := k.items[i].lim.lo; a.unit != bare && a.size == "" {
			like = a
		}
	}
	var out []solver.Value
	last := k.values0()
	for _, i := range k.values {
		a := *k.items[i].lim.lo
		switch {
		case a.size != "":
			continue
		case a.unit == bare && like != nil && (i == last || a.frac && like.unit != metric):
			return nil, false
		case a.unit == bare && like != nil:
			a = inUnitOf(a, *like)
		case a.unit == bare && k.s.metric && inMeters(a.val):
			a.val, a.unit, a.per = a.val.Mul(mm(1000)), metric, mm(1000)
		case a.unit == bare && !k.s.metric && a.val.IsInt() && a.val.Less(exact.Int(25)) && exact.Int(3).Less(a.val):
			a.val, a.unit = a.val.Mul(twelve), feet
		}
		v, ok := k.s.value(a, solver.Length)
		if !ok || v.Num.Sign() <= 0 || v.Num.Less(twelve) {
			return nil, false
		}
		out = append(out, v)
	}
	return out, len(out) > 0
}

// sizeAfterComma reports whether a size opens another list: lengths stand before the comma in front of it, and after it.
func (k *clause) sizeAfterComma() bool {
	for i, it := range k.items {
		if it.value() && it.lim.lo.size != "" && i > 1 && !k.items[i-1].value() && k.items[i-1].kind == kComma && k.values[0] < i && k.values0() > i {
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
		if !it.value() && it.kind == kSellMore && it.key() == backAgain.key && k.breaks > 0 && (k.has(kSellLess) != nil || k.has(kNo) != nil) {
			return true // "12s out, 14s in"
		}
		switch {
		case it.value():
			if i > k.values[0] && holds[firstWord(leadOf(it))] {
				more = i
			}
		case it.kind == kSellLess && less < 0:
			less = i
		case it.kind == kOnly && less >= 0 && i > k.values[0]:
			return true // "no more tens, only twelves"
		case (it.kind == kSell || it.kind == kHave) && it.text != "on the rack" && it.text != "in stock":
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
		case it.kind == kChange:
			ways[it.as(kChange).key] = true
		case it.kind == kSellLess || it.kind == kNo:
			ways["-="] = true
		}
	}
	return ways["+="] && ways["-="]
}

// hasThem reports whether the clause says that lengths are there, not that they are all that is sold.
func (k *clause) hasThem() bool {
	t := k.has(kSell)
	if k.has(kHave) != nil || holds[firstWord(leadOf(k.items[k.values[0]]))] {
		return true
	}
	return t == nil && k.force == Check || t != nil && (strings.Contains(t.text, "have") || strings.Contains(t.text, "got") || strings.Contains(t.text, " has"))
}

var holds = wordSet("have has got put")

// asksFirst are words that make a question of a clause they open.
var asksFirst = wordSet("is are was were do does did will would can could if when once until unless after before whenever")

// backAgain is what is there again, or now.
var backAgain = &entry{kind: kSellMore, key: "+= in"}

// comesAndGoes reads what is told behind lengths of lumber: "12s gone, 14s in", "the sixteens are back". It returns the atom after
// it, and i where something else is told.
func (l *lexing) comesAndGoes(i int) int {
	if t := l.last(); t == nil || t.kind != kNum || !t.amt.footer || l.before != "" {
		return i
	}
	if before := l.tokens[len(l.tokens)-1].before; asksFirst[firstWord(before)] {
		return i // "are the 12s in"
	}
	j := i
	for w := l.word(j); w == "is" || w == "are" || w == "was" || w == "were" || w == "all" || w == "now" || w == "have" || w == "has" || w == "been" || w == "came" || w == "come" || w == "both"; w = l.word(j) {
		j++
	}
	e := soldOut
	switch l.word(j) {
	case "gone", "out", "unavailable", "discontinued":
	case "in", "back":
		e = backAgain
	default:
		return i
	}
	if j++; l.word(j) == "in" && l.word(j-1) == "back" {
		j++
	}
	if l.word(j) == "of" && l.word(j+1) == "stock" {
		j++
	}
	if w := l.word(j + 1); l.word(j) == "this" && (w == "morning" || w == "afternoon" || w == "week") {
		j += 2
	}
	for w := l.word(j); w == "again" || w == "now" || w == "today" || w == "stock" || w == "already" || w == "too" || w == "also"; w = l.word(j) {
		j++
	}
	if w := l.word(j); w != "" && l.kind(j) != aSign && w != "and" && w != "but" && w != "so" {
		return i
	}
	if l.word(i) == "in" && l.word(i+1) == "stock" && j == i+2 {
		return i // "12s and 16s in stock" tells all there are
	}
	if e == backAgain && l.text(i, j) != "" && !strings.Contains(l.text(i, j), "back") && strings.Contains(l.text(i, j), "in stock") && l.onlyThose() {
		return i // "just the eights and tens are in stock today"
	}
	l.add(e.kind, i, j).found = []found{{entry: e}}
	return j
}

// onlyThose reports whether an "only" was said.
func (l *lexing) onlyThose() bool {
	return slices.ContainsFunc(l.tokens, func(t token) bool { return t.kind == kOnly })
}

// soldNoLonger reports whether lengths are said to be there, and a "no longer" stands behind them: "they have eights and tens, no
// longer". Nothing longer may be meant.
func (k *clause) soldNoLonger() bool {
	sells := -1
	if k.force == Check {
		sells = 0 // "the yard has"
	}
	for i, it := range k.items {
		switch {
		case it.value():
		case it.kind == kSell && i < k.values[0] && !strings.Contains(it.text, "had"):
			sells = i
		case it.kind == kSellLess && sells >= 0 && i > k.values0() && (it.text == "no longer" || it.text == "no more"):
			return true
		}
	}
	return false
}

// goneBetween reports whether lengths stand on both sides of what tells that those before it are gone: "the twelves are gone, use
// tens".
func (k *clause) goneBetween() bool {
	for i, it := range k.items {
		if it.value() || it.kind != kSellLess || i < k.values[0] || i > k.values0() {
			continue
		}
		if w := it.text; endsIn(w, "gone") || endsIn(w, "stock") || endsIn(w, "out") || w == "discontinued" {
			return true
		}
	}
	return false
}

// pile asks back where boards are told by their number, size and length, and not whether somebody has them: "ten two by sixes,
// twelve footers". It reports whether they are.
func (s *speech) pile(found []made) bool {
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
