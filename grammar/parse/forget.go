package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver"
)

// forget reads what is to be forgotten: quantities, a limit, a measurement, a price. What is said after it, with a
// value of its own, is a statement again.
func (s *Speech) forget(g *group) {
	if len(g.items) > 0 && !g.items[0].value() && g.items[0].Kind == lexicon.But {
		if g.head == nil || !strings.Contains(g.head.Text, "everything") && !strings.Contains(g.head.Text, "all") {
			s.notUnderstood(g, g.items)
			return
		}
		s.keep(g) // "wipe out everything | except the span"
		return
	}
	if len(g.items) > 0 && !g.items[0].value() && g.items[0].Text == "," {
		s.notUnderstood(g, g.items) // "forget what he said, the opening is 30"
		return
	}
	if n := len(g.items); g.head != nil && (g.head.Text == "clear" || g.head.Text == "clr") && n > 1 && g.items[n-1].value() && !g.items[0].value() && g.items[0].Before == "" {
		s.state(&group{force: act.State, items: g.items, head: g.head}) // "clr btwn rails 1-7/8"
		return
	}
	if at := g.saysNext(); at > 0 {
		said := g.items[at:]
		g.items = g.items[:at]
		defer s.state(&group{force: act.State, items: said, head: g.head})
	}
	parts := chunks(strip(g.items))
	if len(parts) == 0 {
		s.fail(g.head.At, askback.ForgetWhat.Ask())
		return
	}
	for i, part := range parts {
		if i > 0 && onlyLimit(part) {
			continue // "the three inch limit on the gap can go, just the limit"
		}
		var a act.Act
		ok := false
		if i == 0 || !hasValue(part) {
			a, ok = s.forgotten(g, part)
		}
		if !ok && i > 0 {
			rest := g.items[partStart(g.items, part):]
			s.state(&group{force: act.State, items: rest})
			return
		}
		if !ok && len(parts) > 1 {
			a, ok = s.forgotten(g, strip(g.items))
			ok = ok && (a.Name == nil || a.Name.Item != "" || !hasValue(g.items)) // what is set after it is not forgotten with it
			i = len(parts)
		}
		if !ok {
			s.notUnderstood(g, part)
			return
		}
		a.Kind = act.Forget
		s.act(g, a)
		if len(a.Statements) > 0 {
			n := a.Statements[0].Name
			s.Carry = carry{Name: &n, Kind: solver.KindOf(n.Quantity)}
			s.Carry.senses = []lexicon.Sense{s.Carry.nameSense()}
		}
		if i == len(parts) {
			return
		}
	}
}

// onlyLimit reports whether a part says no more than that a limit is meant.
func onlyLimit(part []Item) bool {
	for _, it := range part {
		if it.value() || it.Kind != lexicon.Lim && it.Kind != lexicon.Only && it.Kind != lexicon.It {
			return false
		}
	}
	return true
}

// noMore takes "I don't need … any more" for what it is: it is to be forgotten.
func (g *group) noMore() {
	list := strip(g.items)
	if g.force != act.State || g.cmd != "" || len(list) < 3 {
		return
	}
	last := list[len(list)-1]
	if last.value() || last.Kind != lexicon.SellLess || last.Text != "any more" && last.Text != "anymore" && last.Text != "any longer" {
		return
	}
	var kept []Item
	needs, denied := false, false
	for i, it := range list[:len(list)-1] {
		if !it.value() && it.Kind == lexicon.Not && it.Text == "not" && !denied {
			denied = true
			for _, w := range strings.Fields(list[i+1].Before) {
				needs = needs || w == "need" || w == "want" || w == "like" || w == "care" || w == "matter"
			}
			continue
		}
		if it.value() || it.Text != "do" {
			kept = append(kept, it)
		}
	}
	if denied && needs && named(kept) {
		g.force, g.items, g.head = act.Forget, kept, list[0].Token
	}
}

func partStart(list, part []Item) int {
	for i := range list {
		if list[i] == part[0] {
			return i
		}
	}
	return 0
}

// forgotten reads one thing to forget.
func (s *Speech) forgotten(g *group, list []Item) (act.Act, bool) {
	k := clause{s: s, force: act.Forget, carry: s.Carry, items: list}
	if !k.sort() {
		return act.Act{}, false
	}
	if k.has(lexicon.Not) != nil || k.oneOfSeveral() {
		return act.Act{}, false
	}
	if n, ok := k.placeName(); ok {
		return act.Act{Name: &n}, true
	}
	if r, ok := k.whole(); ok && len(r.made) == 1 && k.has(lexicon.Goal) != nil && len(k.values) == 0 {
		return act.Act{Statements: []solver.Statement{r.made[0].st}}, true // "forget the equal bays"
	}
	if (k.has(lexicon.Measured) != nil || strings.Contains(g.headText(), " measured")) && k.bay > 0 && !k.about("stiffener") {
		return act.Act{}, false // "the bay 2 readings": which of them?
	}
	if len(k.values) > 0 {
		return s.forgottenValue(g, &k, list)
	}
	if len(k.things) == 0 && k.names(lexicon.StockWord) {
		return act.Act{Name: &solver.Name{Quantity: solver.Stock}}, true
	}
	for i := range k.items {
		if t := k.items[i]; !t.value() && t.Is(lexicon.Item) && (k.names(lexicon.PriceVerb) || k.pricesAmong(g.headText())) {
			return act.Act{Name: &solver.Name{Quantity: solver.Price, Item: t.As(lexicon.Item).Key}}, true
		}
	}
	if strings.Contains(g.headText(), "price") {
		return act.Act{}, false // "drop the price of the rails": of which length?
	}
	kept := list[:0:0]
	for _, it := range list {
		if it.Kind != lexicon.Head && it.Kind != lexicon.Measured && it.Kind != lexicon.Rel && it.Kind != lexicon.Lim && it.Kind != lexicon.BestTail && it.Kind != lexicon.Have && it.Kind != lexicon.Sell {
			kept = append(kept, it)
		}
	}
	return s.nameOf(&group{force: act.Forget}, kept)
}

// names reports whether a word of the clause can be read as kind.
func (k *clause) names(kind lexicon.Kind) bool {
	for _, it := range k.items {
		if !it.value() && it.Is(kind) {
			return true
		}
	}
	return false
}

// oneOfSeveral reports whether one post is picked out of those there are: "the middle post". Not all of them are to go.
func (k *clause) oneOfSeveral() bool {
	for _, i := range k.things {
		if t := k.items[i]; !t.value() && (strings.HasPrefix(t.Text, "middle ") || strings.HasPrefix(t.Text, "inner ") || strings.HasPrefix(t.Text, "inside ")) && !t.Plural() {
			return true
		}
	}
	return false
}

// placeName reads the place of a measurement: "the bay 1 top reading", "what I measured at rail 3 in bay 2".
func (k *clause) placeName() (solver.Name, bool) {
	if len(k.values) > 0 || k.bay == 0 {
		return solver.Name{}, false
	}
	n := solver.Name{Wall: k.wallName(), Quantity: solver.Measured, Bay: k.bay, Rail: k.rail}
	if at := k.has(lexicon.At); at != nil {
		n.At = at.As(lexicon.At).Key
	}
	for _, i := range k.things {
		if key := k.items[i].Key(); key != "bay" && key != "rail" && key != "per bay" && key != "of wall" && key != "tape" {
			return n, false
		}
	}
	return n, n.At != "" && n.Rail == 0 || n.At == "" && n.Rail > 0
}

func (s *Speech) forgottenValue(g *group, k *clause, list []Item) (act.Act, bool) {
	if goods, ok := k.goods(); ok && goods.size != "" && len(goods.longs) == 1 && len(goods.counts) == 0 {
		if long, ok := k.lengthOf(goods.longs[0]); ok {
			q := solver.Price
			if k.has(lexicon.Have) != nil {
				q = solver.Have
			}
			return act.Act{Name: &solver.Name{Quantity: q, Item: goods.size, Long: long}}, true
		}
	}
	if goods, ok := k.goods(); ok && goods.size == "" && len(goods.longs) == 1 && len(goods.counts) == 0 && k.pricesAmong(g.headText()) {
		if long, ok := k.lengthOf(goods.longs[0]); ok {
			return act.Act{Name: &solver.Name{Quantity: solver.Price, Item: "rails", Long: long}}, true // "forget the price of twelves"
		}
	}
	lower := strings.HasPrefix(g.headText(), "drop") || strings.HasPrefix(g.headText(), "lose") || strings.HasPrefix(g.headText(), "cut")
	lim := k.items[k.values[0]].lim
	if op, ok := lim.relation(); ok && op == solver.Eq && lower && g.headText() == "drop" {
		return act.Act{}, false // "drop the gap a quarter inch" lowers it
	}
	r := s.cut(list, s.Carry, act.Forget)
	if len(r) != 1 || len(r[0].made) != 1 {
		return act.Act{}, false
	}
	st := r[0].made[0].st
	if st.Name.Quantity == solver.Stock {
		return act.Act{}, false // "forget the twelve footers": one length of the list, not all of it
	}
	if head := g.headText(); st.Op == solver.Eq && strings.Contains(head, "limit") && st.Value.Of == nil {
		if st.Op = solver.LE; strings.Contains(head, "lower") {
			st.Op = solver.GE
		}
	}
	if st.Op == solver.Eq || st.Op == solver.Near {
		n := st.Name
		return act.Act{Name: &n}, true
	}
	return act.Act{Statements: []solver.Statement{st}}, true
}

func (g *group) headText() string {
	if g.head == nil {
		return ""
	}
	return g.head.Text
}

// keep reads "forget everything but the wall height".
func (s *Speech) keep(g *group) {
	a := act.Act{Kind: act.ForgetAllBut}
	var rest []Item
	for i, part := range chunks(strip(g.items)) {
		if i > 0 && hasValue(part) {
			rest = g.items[partStart(g.items, part):] // "forget all but span, 5 rails"
			break
		}
		n, ok := s.nameOf(&group{force: act.Forget}, part)
		if !ok || n.Name == nil {
			s.notUnderstood(g, part)
			return
		}
		a.Names = append(a.Names, *n.Name)
	}
	if len(a.Names) == 0 {
		s.notUnderstood(g, g.items)
		return
	}
	s.act(g, a)
	if rest != nil {
		s.do(&group{force: act.State, items: rest, metric: g.metric})
	}
}

// saysNext finds where something is said behind what is to be forgotten, though no sign parts them: "scratch the overall
// the span is 161". It returns 0 where nothing is.
func (g *group) saysNext() int {
	at := 0
	for i, it := range g.items {
		switch {
		case it.breaks():
			return 0
		case it.value():
			if f := strings.Fields(leadOf(it)); at > 0 && (g.items[at].Kind == lexicon.Have || len(f) > 0 && handsOver[f[0]]) {
				return at
			}
			return 0
		case i > 0 && at == 0 && (it.Kind == lexicon.Part || it.Kind == lexicon.Dim) && determined(it.Before), i > 0 && at == 0 && it.Kind == lexicon.Have && strings.HasPrefix(it.Text, "there "):
			at = i
		}
	}
	return 0
}

// handsOver are verbs that give what stands before them the value behind them.
var handsOver = scan.WordSet("is are 's was were has have gets get needs need should will must equals measures")

// determined reports whether the empty words before a noun begin a new stretch with it: "the", "my", "this".
func determined(before string) bool {
	first, _, _ := strings.Cut(before, " ")
	switch first {
	case "the", "my", "our", "its", "each", "every", "this", "that", "these", "those":
		return true
	}
	return false
}
