package grammar

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// claimed reads what can only be claimed: a total, a cut, marks, a count of boards to buy.
func (k *clause) claimed() (reading, bool) {
	if k.force != Check || len(k.values) == 0 || len(k.sides) > 0 {
		return reading{}, false
	}
	for _, read := range []func(*clause) (reading, bool){(*clause).claimedMarks, (*clause).claimedCut, (*clause).claimedCost, (*clause).claimedBoards} {
		if r, ok := read(k); ok {
			return r, true
		}
	}
	return reading{}, false
}

// topic reports whether a word of the clause names a table.
func (k *clause) topic(key string) bool {
	for _, i := range k.words {
		if t := k.items[i]; t.is(kQuest) && t.as(kQuest).key == key {
			return true
		}
	}
	for _, i := range k.things {
		if e := k.items[i].as(kQuest); e != nil && e.key == key {
			return true
		}
	}
	return false
}

func (k *clause) claimedMarks() (reading, bool) {
	if !k.topic("marks") && !k.marked() || !k.only(kQuest, kPriceVerb, kBut, kFixed, kFall, kGoesIn, k.comesIn()) {
		return reading{}, false
	}
	for _, i := range k.things {
		if key := k.items[i].key(); key != "off floor" && key != "bracket" && key != "post" && key != "added post" && key != "end post" {
			return reading{}, false
		}
	}
	k.marksCounted()
	var list []solver.Value
	var like *amount
	for _, i := range k.values {
		if a := k.items[i].lim.lo; a.unit != bare {
			like = a
		}
	}
	for _, i := range k.values {
		if a := k.items[i].lim.lo; a.unit == bare && like != nil {
			b := inUnitOf(*a, *like)
			k.items[i].lim.lo = &b
		}
		v, ok := k.length(i)
		if !ok {
			return reading{}, false
		}
		list = append(list, v)
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.MarksOf}, Op: solver.Eq, Value: solver.Value{List: list}}
	return k.one(st, carry{})
}

// marksCounted leaves out how many marks are told: "the first two marks are 7-7/8 and 15-5/8".
func (k *clause) marksCounted() {
	if len(k.values) < 2 {
		return
	}
	i := k.values[0]
	n, ok := k.items[i].lim.lo.val.Int64()
	if next := i + 1; ok && k.items[i].lim.lo.unit == bare && int(n) == len(k.values)-1 && !k.items[next].value() && k.items[next].is(kQuest) {
		k.values = k.values[1:]
	}
}

// marked reports whether a claim is said to be of marks: "he marked the post at …".
func (k *clause) marked() bool {
	t := k.head()
	return t != nil && (strings.Contains(t.text, " mark") || strings.Contains(t.text, " drill")) && len(k.things) <= 1
}

func (k *clause) claimedCut() (reading, bool) {
	cut := k.topic("cuts")
	for _, i := range k.words {
		cut = cut || k.items[i].is(kCutWord)
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.CutOf, Bay: k.bay, Rail: k.rail}
	for _, i := range k.things {
		switch t := k.items[i]; t.key() {
		case "bay", "rail", "per bay":
		case "fit":
			if !cutWord(t.text) {
				return reading{}, false
			}
			cut = true
		case "kerf":
			if !cutWord(t.text) || strings.Contains(t.text, "saw") {
				return reading{}, false
			}
			cut = true // "a cut of 65 for bay 2"
		case "post", "added post":
			n.Item = "post"
		case "stiffener":
			n.Item = "stiffener"
		default:
			return reading{}, false
		}
	}
	if n := k.carry.name; n != nil && n.Quantity == solver.CutOf && k.onlyRailOrBay() && !k.topic("cost") && !(k.head() != nil && totals(k.head().text)) && !k.items[k.values[0]].lim.lo.money2 {
		cut = true // "bay 1 is cut at 66, bay 2 at 58"
	}
	if k.head() != nil && cutWord(k.head().text) {
		cut = true
	}
	if !cut || len(k.values) != 1 || !k.only(kQuest, kCutWord, kPriceVerb) || k.countsRails() {
		return reading{}, false
	}
	v, ok := k.length(k.values[0])
	if !ok {
		return reading{}, false
	}
	if n.Item == "" && n.Bay == 0 {
		n.Bay = 1
	}
	m := made{st: solver.Statement{Name: n, Op: solver.Eq, Value: v}, at: k.at(), lim: k.items[k.values[0]].lim, kind: solver.Length}
	return k.finish(reading{made: []made{m}})
}

// onlyRailOrBay reports whether a clause speaks of nothing but a bay or a rail.
func (k *clause) onlyRailOrBay() bool {
	for _, i := range k.things {
		switch k.items[i].key() {
		case "bay", "rail", "per bay", "post", "added post":
		default:
			return false
		}
	}
	return true
}

// countsRails reports whether a small figure stands before the rails themselves: "the cut list says six rails" counts them.
func (k *clause) countsRails() bool {
	i := k.values[0]
	a := k.items[i].lim.lo
	return i+1 < len(k.items) && k.items[i+1].is(kPart) && k.items[i+1].key() == "rail" && a.unit == bare && !a.frac && a.val.Less(exact.Int(13))
}

func (k *clause) claimedCost() (reading, bool) {
	head := k.head()
	k.spokenHundreds()
	said := k.topic("cost") || head != nil && totals(head.text) || k.forMaterial() || len(k.things) == 1 && strings.HasSuffix(k.items[k.things[0]].text, "all in")
	said = said || k.comesToPrice()
	if len(k.values) != 1 || k.bay+k.rail+k.post+k.open > 0 || !k.only(kQuest, kPriceVerb, kRel, k.comesIn()) || len(k.things) > 0 && !k.topic("cost") && !k.about("size") && !k.forMaterial() && !k.inAll() {
		return reading{}, false
	}
	lim := k.items[k.values[0]].lim
	if !said && head != nil && head.kind == kHead && (strings.HasSuffix(head.text, " got") || strings.HasSuffix(head.text, " has")) {
		return reading{}, false // "he's got four hundred bucks" to spend, and no total
	}
	op, ok := lim.relation()
	if lim.lo.frac && !lim.lo.money2 && !lim.lo.point && lim.lo.unit == bare {
		return reading{}, false // "seven rails at 2-1/8": no price has eighths
	}
	if !ok || op == solver.Near || lim.lo.unit != money && !(said && lim.lo.unit == bare) {
		return reading{}, false
	}
	v, ok := k.s.value(*lim.lo, solver.Money)
	if !ok {
		return reading{}, false
	}
	m := made{st: solver.Statement{Name: solver.Name{Quantity: solver.CostOf}, Op: op, Value: v}, at: k.at(), lim: lim, kind: solver.Money}
	return k.finish(reading{made: []made{m}})
}

// comesToPrice reports whether "it comes to" leads to a figure that can only be money: "she says it comes to 318.40". A
// quarter of an inch has two decimals too: then all of it must be spoken of.
func (k *clause) comesToPrice() bool {
	if len(k.values) != 1 || len(k.things)+len(k.dims) > 0 || !k.it || !k.items[k.values[0]].lim.lo.money2 {
		return false
	}
	if v := k.items[k.values[0]].lim.lo.val; v.Mul(exact.Int(4)).IsInt() && !k.ofAll() {
		return false
	}
	for _, t := range k.items[k.values[0]].lim.lead {
		if strings.HasPrefix(t.text, "com") || strings.HasPrefix(t.text, "total") || strings.HasPrefix(t.text, "add") {
			return true
		}
	}
	return false
}

// ofAll reports whether the clause speaks of everything: "it all comes to".
func (k *clause) ofAll() bool {
	for _, it := range k.items {
		before := it.before
		if it.value() {
			before = leadOf(it)
		}
		if endsIn(before, "all") || endsIn(before, "altogether") {
			return true
		}
	}
	return false
}

// forMaterial reports whether the one part named is what the money is for: "450 for the material".
func (k *clause) forMaterial() bool {
	return len(k.things) == 1 && k.items[k.things[0]].key() == "budget" && (strings.HasPrefix(k.items[k.things[0]].text, "for ") || strings.HasPrefix(k.items[k.things[0]].text, "material") || strings.HasPrefix(k.items[k.things[0]].text, "lumber") || strings.HasPrefix(k.items[k.things[0]].text, "wood"))
}

// inAll reports whether all that is named is the whole: "298.75 all in".
func (k *clause) inAll() bool {
	for _, i := range k.things {
		if k.items[i].key() != "in all" {
			return false
		}
	}
	return true
}

// comesIn is the class of "come in", which says nothing of lumber where it is said of a total.
func (k *clause) comesIn() tokenKind {
	if t := k.has(kSell); t != nil && strings.HasPrefix(t.text, "come") {
		return kSell
	}
	return kQuest
}

func (k *clause) claimedBoards() (reading, bool) {
	g, ok := k.goods()
	if !ok || !k.only(kSell, kHave, kPriceVerb, kX) {
		return reading{}, false
	}
	if endsIn(leadOf(k.items[k.values[len(k.values)-1]]), "comes to") || endsIn(leadOf(k.items[k.values[len(k.values)-1]]), "to") && k.values[len(k.values)-1] != k.values0() && k.it {
		return reading{}, false
	}
	cash := g.cash
	if len(cash) == 1 && k.has(kEach) == nil && k.breaks == 0 && k.items[k.values0()].lim == cash[0] {
		g.cash = nil // "ten 2x6 12-footers for 412.50 in all"
	}
	if k.s.owner(k.head()) && len(cash) == 0 {
		return k.counted(solver.Have, g)
	}
	r, ok := k.counted(solver.Boards, g)
	if ok {
		r.made[0].st.Op = solver.Eq
		if len(cash) == 1 {
			v, _ := k.s.value(*cash[0].lo, solver.Money)
			r.made = append(r.made, made{st: solver.Statement{Name: solver.Name{Quantity: solver.CostOf}, Op: solver.Eq, Value: v}, at: k.at(), kind: solver.Money})
		}
	}
	return r, ok
}

// head is the word that gave the clause its force.
func (k *clause) head() *token { return k.s.head }

// cutWord reports whether a claim is said to be of a cut: "my mate would cut …".
func cutWord(s string) bool {
	for _, w := range strings.Fields(s) {
		switch w {
		case "cut", "cuts", "saw", "sawn", "sawed", "saws", "cutting", "chop", "chops", "chopped":
			return true
		}
	}
	return false
}

// totals reports whether the words that began a claim speak of a total: "the quote comes to".
func totals(s string) bool {
	if strings.HasPrefix(s, "total ") || strings.HasPrefix(s, "bottom line") || strings.HasPrefix(s, "grand total") || strings.Contains(s, " lot ") || strings.Contains(s, " whole ") || strings.Contains(s, "adds up") || strings.Contains(s, "add up") || strings.Contains(s, "sums up") {
		return true
	}
	for _, w := range strings.Fields(s) {
		switch w {
		case "come", "comes", "came", "totals", "runs", "amounts", "charge", "charges", "bill", "invoice", "receipt", "tab", "charging", "quote", "bid", "estimate", "price", "priced", "quotes", "quoted", "rang", "rung", "totalled", "totaled", "added", "total", "total's":
			return true
		}
	}
	return false
}
