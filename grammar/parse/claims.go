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

// claimed reads what can only be claimed: a total, a cut, marks, a count of boards to buy.
func (k *clause) claimed() (reading, bool) {
	if k.force != act.Check || len(k.values) == 0 || len(k.sides) > 0 {
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
		if t := k.items[i]; t.Is(lexicon.Quest) && t.As(lexicon.Quest).Key == key {
			return true
		}
	}
	for _, i := range k.things {
		if e := k.items[i].As(lexicon.Quest); e != nil && e.Key == key {
			return true
		}
	}
	return false
}

func (k *clause) claimedMarks() (reading, bool) {
	if !k.topic("marks") && !k.marked() || !k.only(lexicon.Quest, lexicon.PriceVerb, lexicon.But, lexicon.Fixed, lexicon.Fall, lexicon.GoesIn, k.comesIn()) {
		return reading{}, false
	}
	for _, i := range k.things {
		if key := k.items[i].Key(); key != "off floor" && key != "bracket" && key != "post" && key != "added post" && key != "end post" {
			return reading{}, false
		}
	}
	k.marksCounted()
	var list []solver.Value
	var like *measure.Amount
	for _, i := range k.values {
		if a := k.items[i].lim.lo; a.Unit != measure.Bare {
			like = a
		}
	}
	for _, i := range k.values {
		if a := k.items[i].lim.lo; a.Unit == measure.Bare && like != nil {
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
	n, ok := k.items[i].lim.lo.Val.Int64()
	if next := i + 1; ok && k.items[i].lim.lo.Unit == measure.Bare && int(n) == len(k.values)-1 && !k.items[next].value() && k.items[next].Is(lexicon.Quest) {
		k.values = k.values[1:]
	}
}

// marked reports whether a claim is said to be of marks: "he marked the post at …".
func (k *clause) marked() bool {
	t := k.head()
	return t != nil && (strings.Contains(t.Text, " mark") || strings.Contains(t.Text, " drill")) && len(k.things) <= 1
}

func (k *clause) claimedCut() (reading, bool) {
	cut := k.topic("cuts")
	for _, i := range k.words {
		cut = cut || k.items[i].Is(lexicon.CutWord)
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.CutOf, Bay: k.bay, Rail: k.rail}
	for _, i := range k.things {
		switch t := k.items[i]; t.Key() {
		case "bay", "rail", "per bay":
		case "fit":
			if !lex.CutWord(t.Text) {
				return reading{}, false
			}
			cut = true
		case "kerf":
			if !lex.CutWord(t.Text) || strings.Contains(t.Text, "saw") {
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
	if n := k.carry.Name; n != nil && n.Quantity == solver.CutOf && k.onlyRailOrBay() && !k.topic("cost") && !(k.head() != nil && totals(k.head().Text)) && !k.items[k.values[0]].lim.lo.Money2 {
		cut = true // "bay 1 is cut at 66, bay 2 at 58"
	}
	if k.head() != nil && lex.CutWord(k.head().Text) {
		cut = true
	}
	if !cut || len(k.values) != 1 || !k.only(lexicon.Quest, lexicon.CutWord, lexicon.PriceVerb) || k.countsRails() {
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
		switch k.items[i].Key() {
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
	return i+1 < len(k.items) && k.items[i+1].Is(lexicon.Part) && k.items[i+1].Key() == "rail" && a.Unit == measure.Bare && !a.Frac && a.Val.Less(exact.Int(13))
}

func (k *clause) claimedCost() (reading, bool) {
	head := k.head()
	k.spokenHundreds()
	said := k.topic("cost") || head != nil && totals(head.Text) || k.forMaterial() || len(k.things) == 1 && strings.HasSuffix(k.items[k.things[0]].Text, "all in")
	said = said || k.comesToPrice()
	if len(k.values) != 1 || k.bay+k.rail+k.post+k.open > 0 || !k.only(lexicon.Quest, lexicon.PriceVerb, lexicon.Rel, k.comesIn()) || len(k.things) > 0 && !k.topic("cost") && !k.about("size") && !k.forMaterial() && !k.inAll() {
		return reading{}, false
	}
	lim := k.items[k.values[0]].lim
	if !said && head != nil && head.Kind == lexicon.Head && (strings.HasSuffix(head.Text, " got") || strings.HasSuffix(head.Text, " has")) {
		return reading{}, false // "he's got four hundred bucks" to spend, and no total
	}
	op, ok := lim.relation()
	if lim.lo.Frac && !lim.lo.Money2 && !lim.lo.Point && lim.lo.Unit == measure.Bare {
		return reading{}, false // "seven rails at 2-1/8": no price has eighths
	}
	if !ok || op == solver.Near || lim.lo.Unit != measure.Money && !(said && lim.lo.Unit == measure.Bare) {
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
	if len(k.values) != 1 || len(k.things)+len(k.dims) > 0 || !k.it || !k.items[k.values[0]].lim.lo.Money2 {
		return false
	}
	if v := k.items[k.values[0]].lim.lo.Val; v.Mul(exact.Int(4)).IsInt() && !k.ofAll() {
		return false
	}
	for _, t := range k.items[k.values[0]].lim.lead {
		if strings.HasPrefix(t.Text, "com") || strings.HasPrefix(t.Text, "total") || strings.HasPrefix(t.Text, "add") {
			return true
		}
	}
	return false
}

// ofAll reports whether the clause speaks of everything: "it all comes to".
func (k *clause) ofAll() bool {
	for _, it := range k.items {
		before := it.Before
		if it.value() {
			before = leadOf(it)
		}
		if lex.EndsIn(before, "all") || lex.EndsIn(before, "altogether") {
			return true
		}
	}
	return false
}

// forMaterial reports whether the one part named is what the money is for: "450 for the material".
func (k *clause) forMaterial() bool {
	return len(k.things) == 1 && k.items[k.things[0]].Key() == "budget" && (strings.HasPrefix(k.items[k.things[0]].Text, "for ") || strings.HasPrefix(k.items[k.things[0]].Text, "material") || strings.HasPrefix(k.items[k.things[0]].Text, "lumber") || strings.HasPrefix(k.items[k.things[0]].Text, "wood"))
}

// inAll reports whether all that is named is the whole: "298.75 all in".
func (k *clause) inAll() bool {
	for _, i := range k.things {
		if k.items[i].Key() != "in all" {
			return false
		}
	}
	return true
}

// comesIn is the class of "come in", which says nothing of lumber where it is said of a total.
func (k *clause) comesIn() lexicon.Kind {
	if t := k.has(lexicon.Sell); t != nil && strings.HasPrefix(t.Text, "come") {
		return lexicon.Sell
	}
	return lexicon.Quest
}

func (k *clause) claimedBoards() (reading, bool) {
	g, ok := k.goods()
	if !ok || !k.only(lexicon.Sell, lexicon.Have, lexicon.PriceVerb, lexicon.X) {
		return reading{}, false
	}
	if lex.EndsIn(leadOf(k.items[k.values[len(k.values)-1]]), "comes to") || lex.EndsIn(leadOf(k.items[k.values[len(k.values)-1]]), "to") && k.values[len(k.values)-1] != k.values0() && k.it {
		return reading{}, false
	}
	cash := g.cash
	if len(cash) == 1 && k.has(lexicon.Each) == nil && k.breaks == 0 && k.items[k.values0()].lim == cash[0] {
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
func (k *clause) head() *lex.Token { return k.s.head }

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
