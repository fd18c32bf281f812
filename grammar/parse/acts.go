package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// Perform turns the groups into acts. It stops at the first that is not clear.
func (s *Speech) Perform() {
	for i := range s.groups {
		g := &s.groups[i]
		s.head, s.Metric = g.head, g.metric
		g.leaves = g.cmd == "quit" && g.head != nil && !s.farewell(i)
		s.stating = g.head != nil && (g.force == act.State || g.force == act.Check && len(s.Acts) > 0)
		before := len(s.Acts)
		if g.force == act.Check && g.head != nil && before > 0 && s.Acts[before-1].Kind == act.State && !strings.Contains(g.head.Text, "measure") {
			s.Carry.spot, s.Carry.bay = place{}, 0 // what somebody else says of a bay is no more of my measuring
			if n := s.Carry.Name; n != nil && n.Quantity == solver.Measured {
				s.Carry.Name = nil
			}
		}
		if g.force == act.Check && g.head != nil && before > 0 && countsFirst(strip(g.items)) {
			s.Carry, s.stating = carry{Wall: s.Carry.Wall}, false // "the gap is 2. He claims two bays at 62 each": his count is of what he names
		}
		if g.dropped {
			g.items = trailingFix(g.items)
		}
		s.do(g)
		if g.dropped {
			s.Acts, s.Ask = s.Acts[:before], nil
		}
		if s.Ask != nil {
			return
		}
	}
}

// countsFirst reports whether a claim begins with a count and what is counted.
func countsFirst(list []Item) bool {
	if len(list) < 2 || !list[0].value() || list[1].Kind != lexicon.Part || !list[1].Plural() {
		return false
	}
	n := list[0].lim.lo
	return list[0].lim.hi == nil && n.Unit == measure.Bare && n.Val.IsInt() && n.Val.Less(measure.Twelve)
}

func (s *Speech) do(g *group) {
	switch {
	case g.cmd != "" && whole[g.cmd]:
		s.command(g)
	case g.force == act.State:
		s.state(g)
	case g.force == act.WhatIf || g.force == act.WhyNot || g.force == act.Check:
		s.tried(g)
	case g.force == act.Ask:
		if g.topic == "layout" && g.head != nil && s.boundedLast(g.head.Text) != nil && len(strip(idleGone(g.items))) == 0 {
			s.act(g, act.Act{Kind: act.Ask, Name: s.boundedLast(g.head.Text)}) // "doorway at least 34, what does it come to"
			return
		}
		if g.topic == "layout" && g.head != nil && strings.HasSuffix(g.head.Text, "come to") && s.boughtLast() {
			g.topic = "cost" // "add one spare board, and what does that come to"
		}
		s.asked(g)
	case g.force == act.Why:
		s.why(g)
	case g.force == act.Teach:
		s.teach(g)
	case g.force == act.Forget:
		s.forget(g)
	case g.force == act.ForgetAllBut:
		s.keep(g)
	case g.force == act.Take:
		s.take(g)
	case g.force == "help with":
		s.helpWith(g)
	}
}

func (s *Speech) act(g *group, a act.Act) {
	if n := len(s.Acts); n > 0 && s.Acts[n-1].String() == a.String() {
		return
	}
	a.At, a.End = g.place()
	s.Acts = append(s.Acts, a)
}

// place is where a group stands in the line.
func (g *group) place() (at, end int) {
	if g.head != nil {
		at, end = g.head.At, g.head.End
	} else if len(g.items) > 0 {
		at = g.items[0].startAt()
	}
	for _, it := range g.items {
		end = max(end, it.endAt())
	}
	return at, end
}

// holdsClause reports whether a name that is no known one holds a clause: "compare porch and shed once that is done".
func (s *Speech) holdsClause(name string) bool {
	return !Known(name, s.C) && slices.ContainsFunc(strings.Fields(name), func(w string) bool { return lex.Auxiliary[w] || QuestionOpeners[w] || lex.Speakers[w] })
}

func (s *Speech) command(g *group) {
	if len(strip(idleGone(g.items))) > 0 {
		s.notUnderstood(g, g.items)
		return
	}
	a := act.Act{Kind: act.Kind(g.cmd)}
	switch g.cmd {
	case "quit":
		if g.leaves {
			return
		}
	case "save", "open", "same as", "draw to", "print to":
		if g.name == "" || (g.cmd == "open" || g.cmd == "same as") && lex.Nameless(g.name) {
			s.fail(g.head.At, askback.WhichName.Offering(g.cmd+" porch"))
			return
		}
		a.Words = []string{g.name}
	case "compare":
		if n := len(s.Acts); n > 0 && s.Acts[n-1].Kind == act.Compare && bothOf[g.name] {
			return // "… next to shed and compare the two"
		}
		a.Words = lex.Comparands(g.name, g.head.Text)
		if len(a.Words) != 2 || slices.ContainsFunc(a.Words, s.holdsClause) {
			s.fail(g.head.At, askback.CompareTwo.Ask())
			return
		}
	case "why that":
		if a, ok := s.reasonOf(); ok {
			s.act(g, a)
			return
		}
		if !s.C.Answered && len(s.Acts) == 0 {
			s.fail(g.head.At, askback.WhyWhat.Ask())
			return
		}
		a = act.Act{Kind: act.Why, Topic: "that"}
	case "undo":
		if n := len(s.Acts); n > 0 && s.Acts[n-1].Kind == act.Redo && strings.HasSuffix(g.head.Text, " back") {
			return // "I didn't mean to undo that; could you put it back"
		}
	case "set aside guard":
		a = act.Act{Kind: act.SetAside, Topic: "guard"}
	}
	s.act(g, a)
}

// idleGone drops words that add nothing.
func idleGone(list []Item) []Item {
	var out []Item
	for _, it := range list {
		if it.value() || !idle(it.Token) && it.Kind != lexicon.It && it.Kind != lexicon.Fix && it.Kind != lexicon.No && it.Kind != lexicon.Out && it.Kind != lexicon.Measured {
			out = append(out, it)
		}
	}
	return out
}

// state reads a group of statements: each is an act of its own.
func (s *Speech) state(g *group) {
	list := strip(g.items)
	if len(list) == 0 {
		return
	}
	if len(s.groups) > 1 && onlyLeads(list) {
		return
	}
	if n, ok := wayOut(list); ok {
		s.act(g, act.Act{Kind: act.Take, N: n})
		return
	}
	found, ok := s.say(g, list)
	if !ok || s.pile(found) {
		return
	}
	for _, m := range found {
		a := act.Act{Kind: act.State, Statements: []solver.Statement{m.st}, At: m.at, End: m.at}
		if m.st.Name.Quantity == solver.Tolerance {
			a.Kind = act.Tolerance
		}
		if m.st.Name.Quantity == solver.Units {
			s.Metric = m.st.Value.Word == "metric"
		}
		a.End = g.endOf(a.At)
		if n := len(s.Acts); n > 0 && !Changes(m.st.Op) && s.Acts[n-1].String() == a.String() {
			continue // "… Yes, two and five eighths."
		}
		if m.st.Name.Quantity == solver.Goal && s.wished(a.String()) || s.concluded(g, m) {
			continue
		}
		s.Acts = append(s.Acts, a)
	}
}

// onlyLeads reports whether a stretch is no more than "no", "sorry", "roughly" in front of something else.
func onlyLeads(list []Item) bool {
	for _, it := range list {
		if !it.value() && it.Kind == lexicon.WayOut && strings.HasPrefix(it.Text, "of ") {
			continue // "of the ways you listed, the third one"
		}
		if it.value() || it.Kind != lexicon.About && it.Kind != lexicon.No && it.Kind != lexicon.Fix && it.Kind != lexicon.It && !it.breaks() && !idle(it.Token) {
			return false
		}
	}
	return true
}

func (g *group) endOf(int) int { _, end := g.place(); return end }

// tried reads what is tried or claimed: all of it together is one act.
func (s *Speech) tried(g *group) {
	list := strip(g.items)
	if len(strip(idleGone(list))) == 0 {
		if g.force == act.WhyNot && s.C.Answered && len(s.Acts) == 0 {
			s.act(g, act.Act{Kind: act.Why, Topic: "that"}) // "what's stopping it"
			return
		}
		s.notUnderstood(g, nil)
		return
	}
	if a, ok := s.inTurn(g, list); ok {
		s.act(g, a)
		return
	}
	found, ok := s.say(g, list)
	if !ok {
		return
	}
	if g.force == act.Check && countsPriced(found) {
		s.notUnderstood(g, list)
		return
	}
	a := act.Act{Kind: g.force}
	goods := !slices.ContainsFunc(found, func(m made) bool { return m.st.Name.Quantity != solver.Stock && m.st.Name.Quantity != solver.Price })
	for _, m := range found {
		if g.force == act.Check && m.st.Name.Quantity == solver.Budget && g.head != nil && slices.ContainsFunc(strings.Fields(g.head.Text), func(w string) bool { return charging[w] }) {
			s.notUnderstood(g, list) // "does their quote of 400 fit the budget"
			return
		}
		if g.force == act.Check && m.st.Name.Quantity == solver.Budget && m.st.Op == solver.Eq && costsAtMost(list) {
			m.st.Name.Quantity, m.st.Op = solver.CostOf, solver.LE // "he says it can't cost more than 350"
		}
		if g.force == act.Check && m.st.Name.Quantity == solver.Measured && len(a.Statements) > 0 && saysMeasured(list) {
			s.act(g, a)
			a = act.Act{Kind: act.State, Statements: []solver.Statement{m.st}} // "the plan has 62, but it measured 61"
			s.act(g, a)
			a = act.Act{Kind: g.force}
			continue
		}
		if g.force != act.Check || !noClaim(g.head, m.st, goods, g.ownPosts()) && !(m.st.Name.Quantity == solver.Budget && len(found) == 1 && tellsBudget(g.head) && !s.verified) {
			if !slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return st.String() == m.st.String() }) {
				a.Statements = append(a.Statements, m.st)
			}
			continue
		}
		if len(a.Statements) > 0 {
			s.act(g, a)
			a.Statements = nil
		}
		s.act(g, act.Act{Kind: act.State, Statements: []solver.Statement{m.st}})
	}
	if len(a.Statements) == 0 {
		return
	}
	if len(found) == 1 && found[0].st.Name.Quantity == solver.Tolerance && g.force == act.WhatIf {
		a.Kind = act.Tolerance
	}
	if len(found) == 1 && found[0].st.Name.Quantity == solver.Goal && asksToHave(g.head) {
		a.Kind = act.State // "can we have the widest opening that will fit"
	}
	s.act(g, a)
	s.ownPlace(g, len(s.Acts)-1)
}

// asksToHave reports whether a question asks to be given something.
func asksToHave(head *lex.Token) bool {
	if head == nil {
		return false
	}
	f := strings.Fields(head.Text)
	if len(f) != 3 || f[0] != "can" && f[0] != "could" {
		return false
	}
	return f[1] == "we" && (f[2] == "have" || f[2] == "get") || f[1] == "i" && (f[2] == "have" || f[2] == "get") || f[1] == "you" && f[2] == "do"
}

// noClaim reports whether what stands in a claim is no claim about the wall: a price, what a seller has or has no more, a rail
// that somebody has fixed already. goods tells that nothing but lumber on sale is spoken of, own that posts are called somebody's.
func noClaim(head *lex.Token, st solver.Statement, goods, own bool) bool {
	switch st.Name.Quantity {
	case solver.Price, solver.Have, solver.Extra, solver.Units:
		return true
	case solver.Stock:
		return goods && (st.Op == solver.Plus || st.Op == solver.Minus || head != nil && slices.ContainsFunc(strings.Fields(head.Text), func(w string) bool { return selling[w] }))
	case solver.Span, solver.Overall, solver.Centers:
		return head != nil && (strings.HasSuffix(head.Text, " got") || strings.HasSuffix(head.Text, " has") || strings.HasSuffix(head.Text, " have")) && own
	case solver.FixedRail:
		return head == nil || strings.HasSuffix(head.Text, " has") || strings.HasSuffix(head.Text, " have")
	}
	return false
}

// selling are who lumber is bought from.
var selling = map[string]bool{"yard": true, "lumberyard": true, "store": true, "shop": true, "merchant": true, "clerk": true, "supplier": true, "salesman": true, "dealer": true}

// charging are papers that tell what somebody would charge.
var charging = map[string]bool{"quote": true, "quotation": true, "bid": true, "estimate": true, "invoice": true, "bill": true, "offer": true, "receipt": true}

// withoutWall takes out the name of the one wall whose table is asked after: "the cuts for the north wall".
func withoutWall(list []Item) (wall string, rest []Item) {
	for _, it := range list {
		if wall == "" && !it.value() && it.Kind == lexicon.Wall {
			wall = it.Text
			continue
		}
		rest = append(rest, it)
	}
	return wall, strip(rest)
}

// wayOut reads "the second way out".
func wayOut(list []Item) (int, bool) {
	n, way := 0, false
	for i, it := range list {
		switch {
		case i > 0 && list[i-1].value() && it.Kind == lexicon.WayOut && lex.ManyChoices[lex.FirstWord(it.Text)]:
			return 0, false // "let's hear the three ways out again"
		case it.value():
			v, ok := it.lim.lo.Val.Int64()
			if !ok || n != 0 || it.lim.lo.Unit != measure.Bare {
				return 0, false
			}
			n = int(v)
		case it.Kind == lexicon.Ordinal && n == 0:
			n = it.Index
		case it.Kind == lexicon.WayOut || it.Kind == lexicon.Cmd && it.Key() == "take":
			way = true
		case it.Kind == lexicon.It && n == 0 && way && strings.HasPrefix(list[0].Text, "chang"): // "change it to 3"
			return 0, false
		case it.Kind == lexicon.Fix && it.Text == "better" || it.Kind == lexicon.More && n > 0:
		case it.Kind == lexicon.It && n > 0 && (strings.HasSuffix(it.Text, "them") || strings.HasSuffix(it.Text, "those")):
			return 0, false // "I take six of them, one over the other"
		case it.Kind == lexicon.No || it.Kind == lexicon.Fix:
			n = 0 // what stands before is taken back
		case it.breaks() || it.Kind == lexicon.It || it.Kind == lexicon.Knowing || it.Kind == lexicon.TailFill || it.Kind == lexicon.Have:
		default:
			return 0, false
		}
	}
	return n, way && n > 0 && n < 20
}

func (s *Speech) take(g *group) {
	list := append([]Item{{Token: g.head}}, g.items...)
	n, ok := wayOut(list)
	if !ok {
		s.notUnderstood(g, g.items)
		return
	}
	s.act(g, act.Act{Kind: act.Take, N: n})
}

var _ = exact.Int

// bothOf stand for two walls that were named just before.
var bothOf = map[string]bool{"": true, "two": true, "them": true, "both": true, "these": true, "those": true, "the two": true, "both of them": true}
