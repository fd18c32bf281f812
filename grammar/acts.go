package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// perform turns the groups into acts. It stops at the first that is not clear.
func (s *speech) perform() {
	for i := range s.groups {
		g := &s.groups[i]
		s.head, s.metric = g.head, g.metric
		g.leaves = g.cmd == "quit" && g.head != nil && !s.farewell(i)
		s.stating = g.head != nil && (g.force == State || g.force == Check && len(s.acts) > 0)
		before := len(s.acts)
		if g.force == Check && g.head != nil && before > 0 && s.acts[before-1].Kind == State && !strings.Contains(g.head.text, "measure") {
			s.carry.spot, s.carry.bay = place{}, 0 // what somebody else says of a bay is no more of my measuring
			if n := s.carry.name; n != nil && n.Quantity == solver.Measured {
				s.carry.name = nil
			}
		}
		if g.force == Check && g.head != nil && before > 0 && countsFirst(strip(g.items)) {
			s.carry, s.stating = carry{wall: s.carry.wall}, false // "the gap is 2. He claims two bays at 62 each": his count is of what he names
		}
		if g.dropped {
			g.items = trailingFix(g.items)
		}
		s.do(g)
		if g.dropped {
			s.acts, s.ask = s.acts[:before], nil
		}
		if s.ask != nil {
			return
		}
	}
}

// countsFirst reports whether a claim begins with a count and what is counted.
func countsFirst(list []item) bool {
	if len(list) < 2 || !list[0].value() || list[1].kind != kPart || !list[1].plural() {
		return false
	}
	n := list[0].lim.lo
	return list[0].lim.hi == nil && n.unit == bare && n.val.IsInt() && n.val.Less(twelve)
}

func (s *speech) do(g *group) {
	switch {
	case g.cmd != "" && whole[g.cmd]:
		s.command(g)
	case g.force == State:
		s.state(g)
	case g.force == WhatIf || g.force == WhyNot || g.force == Check:
		s.tried(g)
	case g.force == Ask:
		if g.topic == "layout" && g.head != nil && s.boundedLast(g.head.text) != nil && len(strip(idleGone(g.items))) == 0 {
			s.act(g, Act{Kind: Ask, Name: s.boundedLast(g.head.text)}) // "doorway at least 34, what does it come to"
			return
		}
		if g.topic == "layout" && g.head != nil && strings.HasSuffix(g.head.text, "come to") && s.boughtLast() {
			g.topic = "cost" // "add one spare board, and what does that come to"
		}
		s.asked(g)
	case g.force == Why:
		s.why(g)
	case g.force == Teach:
		s.teach(g)
	case g.force == Forget:
		s.forget(g)
	case g.force == ForgetAllBut:
		s.keep(g)
	case g.force == Take:
		s.take(g)
	case g.force == "help with":
		s.helpWith(g)
	}
}

func (s *speech) act(g *group, a Act) {
	if n := len(s.acts); n > 0 && s.acts[n-1].String() == a.String() {
		return
	}
	a.At, a.End = g.place()
	s.acts = append(s.acts, a)
}

// place is where a group stands in the line.
func (g *group) place() (at, end int) {
	if g.head != nil {
		at, end = g.head.at, g.head.end
	} else if len(g.items) > 0 {
		at = g.items[0].startAt()
	}
	for _, it := range g.items {
		end = max(end, it.endAt())
	}
	return at, end
}

// holdsClause reports whether a name that is no known one holds a clause: "compare porch and shed once that is done".
func (s *speech) holdsClause(name string) bool {
	return !known(name, s.c) && slices.ContainsFunc(strings.Fields(name), func(w string) bool { return auxiliary[w] || questionOpeners[w] || speakers[w] })
}

func (s *speech) command(g *group) {
	if len(strip(idleGone(g.items))) > 0 {
		s.notUnderstood(g, g.items)
		return
	}
	a := Act{Kind: ActKind(g.cmd)}
	switch g.cmd {
	case "quit":
		if g.leaves {
			return
		}
	case "save", "open", "same as", "draw to", "print to":
		if g.name == "" || (g.cmd == "open" || g.cmd == "same as") && nameless(g.name) {
			s.fail(g.head.at, qWhichName.offering(g.cmd+" porch"))
			return
		}
		a.Words = []string{g.name}
	case "compare":
		if n := len(s.acts); n > 0 && s.acts[n-1].Kind == Compare && bothOf[g.name] {
			return // "… next to shed and compare the two"
		}
		a.Words = comparands(g.name, g.head.text)
		if len(a.Words) != 2 || slices.ContainsFunc(a.Words, s.holdsClause) {
			s.fail(g.head.at, qCompareTwo.ask())
			return
		}
	case "why that":
		if a, ok := s.reasonOf(); ok {
			s.act(g, a)
			return
		}
		if !s.c.Answered && len(s.acts) == 0 {
			s.fail(g.head.at, qWhyWhat.ask())
			return
		}
		a = Act{Kind: Why, Topic: "that"}
	case "undo":
		if n := len(s.acts); n > 0 && s.acts[n-1].Kind == Redo && strings.HasSuffix(g.head.text, " back") {
			return // "I didn't mean to undo that; could you put it back"
		}
	case "set aside guard":
		a = Act{Kind: SetAside, Topic: "guard"}
	}
	s.act(g, a)
}

// idleGone drops words that add nothing.
func idleGone(list []item) []item {
	var out []item
	for _, it := range list {
		if it.value() || !idle(it.token) && it.kind != kIt && it.kind != kFix && it.kind != kNo && it.kind != kOut && it.kind != kMeasured {
			out = append(out, it)
		}
	}
	return out
}

// state reads a group of statements: each is an act of its own.
func (s *speech) state(g *group) {
	list := strip(g.items)
	if len(list) == 0 {
		return
	}
	if len(s.groups) > 1 && onlyLeads(list) {
		return
	}
	if n, ok := wayOut(list); ok {
		s.act(g, Act{Kind: Take, N: n})
		return
	}
	found, ok := s.say(g, list)
	if !ok || s.pile(found) {
		return
	}
	for _, m := range found {
		a := Act{Kind: State, Statements: []solver.Statement{m.st}, At: m.at, End: m.at}
		if m.st.Name.Quantity == solver.Tolerance {
			a.Kind = Tolerance
		}
		if m.st.Name.Quantity == solver.Units {
			s.metric = m.st.Value.Word == "metric"
		}
		a.End = g.endOf(a.At)
		if n := len(s.acts); n > 0 && !changes(m.st.Op) && s.acts[n-1].String() == a.String() {
			continue // "… Yes, two and five eighths."
		}
		if m.st.Name.Quantity == solver.Goal && s.wished(a.String()) || s.concluded(g, m) {
			continue
		}
		s.acts = append(s.acts, a)
	}
}

// onlyLeads reports whether a stretch is no more than "no", "sorry", "roughly" in front of something else.
func onlyLeads(list []item) bool {
	for _, it := range list {
		if !it.value() && it.kind == kWayOut && strings.HasPrefix(it.text, "of ") {
			continue // "of the ways you listed, the third one"
		}
		if it.value() || it.kind != kAbout && it.kind != kNo && it.kind != kFix && it.kind != kIt && !it.breaks() && !idle(it.token) {
			return false
		}
	}
	return true
}

func (g *group) endOf(int) int { _, end := g.place(); return end }

// tried reads what is tried or claimed: all of it together is one act.
func (s *speech) tried(g *group) {
	list := strip(g.items)
	if len(strip(idleGone(list))) == 0 {
		if g.force == WhyNot && s.c.Answered && len(s.acts) == 0 {
			s.act(g, Act{Kind: Why, Topic: "that"}) // "what's stopping it"
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
	if g.force == Check && countsPriced(found) {
		s.notUnderstood(g, list)
		return
	}
	a := Act{Kind: g.force}
	goods := !slices.ContainsFunc(found, func(m made) bool { return m.st.Name.Quantity != solver.Stock && m.st.Name.Quantity != solver.Price })
	for _, m := range found {
		if g.force == Check && m.st.Name.Quantity == solver.Budget && g.head != nil && slices.ContainsFunc(strings.Fields(g.head.text), func(w string) bool { return charging[w] }) {
			s.notUnderstood(g, list) // "does their quote of 400 fit the budget"
			return
		}
		if g.force == Check && m.st.Name.Quantity == solver.Budget && m.st.Op == solver.Eq && costsAtMost(list) {
			m.st.Name.Quantity, m.st.Op = solver.CostOf, solver.LE // "he says it can't cost more than 350"
		}
		if g.force == Check && m.st.Name.Quantity == solver.Measured && len(a.Statements) > 0 && saysMeasured(list) {
			s.act(g, a)
			a = Act{Kind: State, Statements: []solver.Statement{m.st}} // "the plan has 62, but it measured 61"
			s.act(g, a)
			a = Act{Kind: g.force}
			continue
		}
		if g.force != Check || !noClaim(g.head, m.st, goods, g.ownPosts()) && !(m.st.Name.Quantity == solver.Budget && len(found) == 1 && (g.head == nil || !onPaper(g.head.text))) {
			if !slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return st.String() == m.st.String() }) {
				a.Statements = append(a.Statements, m.st)
			}
			continue
		}
		if len(a.Statements) > 0 {
			s.act(g, a)
			a.Statements = nil
		}
		s.act(g, Act{Kind: State, Statements: []solver.Statement{m.st}})
	}
	if len(a.Statements) == 0 {
		return
	}
	if len(found) == 1 && found[0].st.Name.Quantity == solver.Tolerance && g.force == WhatIf {
		a.Kind = Tolerance
	}
	if len(found) == 1 && found[0].st.Name.Quantity == solver.Goal && asksToHave(g.head) {
		a.Kind = State // "can we have the widest opening that will fit"
	}
	s.act(g, a)
	s.ownPlace(g, len(s.acts)-1)
}

// asksToHave reports whether a question asks to be given something.
func asksToHave(head *token) bool {
	if head == nil {
		return false
	}
	f := strings.Fields(head.text)
	if len(f) != 3 || f[0] != "can" && f[0] != "could" {
		return false
	}
	return f[1] == "we" && (f[2] == "have" || f[2] == "get") || f[1] == "i" && (f[2] == "have" || f[2] == "get") || f[1] == "you" && f[2] == "do"
}

// noClaim reports whether what stands in a claim is no claim about the wall: a price, what a seller has or has no more, a rail
// that somebody has fixed already. goods tells that nothing but lumber on sale is spoken of, own that posts are called somebody's.
func noClaim(head *token, st solver.Statement, goods, own bool) bool {
	switch st.Name.Quantity {
	case solver.Price, solver.Have, solver.Extra, solver.Units:
		return true
	case solver.Stock:
		return goods && (st.Op == solver.Plus || st.Op == solver.Minus || head != nil && slices.ContainsFunc(strings.Fields(head.text), func(w string) bool { return selling[w] }))
	case solver.Span, solver.Overall, solver.Centers:
		return head != nil && (strings.HasSuffix(head.text, " got") || strings.HasSuffix(head.text, " has") || strings.HasSuffix(head.text, " have")) && own
	case solver.FixedRail:
		return head == nil || strings.HasSuffix(head.text, " has") || strings.HasSuffix(head.text, " have")
	}
	return false
}

// selling are who lumber is bought from.
var selling = map[string]bool{"yard": true, "lumberyard": true, "store": true, "shop": true, "merchant": true, "clerk": true, "supplier": true, "salesman": true, "dealer": true}

// charging are papers that tell what somebody would charge.
var charging = map[string]bool{"quote": true, "quotation": true, "bid": true, "estimate": true, "invoice": true, "bill": true, "offer": true, "receipt": true}

// withoutWall takes out the name of the one wall whose table is asked after: "the cuts for the north wall".
func withoutWall(list []item) (wall string, rest []item) {
	for _, it := range list {
		if wall == "" && !it.value() && it.kind == kWall {
			wall = it.text
			continue
		}
		rest = append(rest, it)
	}
	return wall, strip(rest)
}

// wayOut reads "the second way out".
func wayOut(list []item) (int, bool) {
	n, way := 0, false
	for i, it := range list {
		switch {
		case i > 0 && list[i-1].value() && it.kind == kWayOut && manyChoices[firstWord(it.text)]:
			return 0, false // "let's hear the three ways out again"
		case it.value():
			v, ok := it.lim.lo.val.Int64()
			if !ok || n != 0 || it.lim.lo.unit != bare {
				return 0, false
			}
			n = int(v)
		case it.kind == kOrdinal && n == 0:
			n = it.index
		case it.kind == kWayOut || it.kind == kCmd && it.key() == "take":
			way = true
		case it.kind == kIt && n == 0 && way && strings.HasPrefix(list[0].text, "chang"): // "change it to 3"
			return 0, false
		case it.kind == kFix && it.text == "better" || it.kind == kMore && n > 0:
		case it.kind == kIt && n > 0 && (strings.HasSuffix(it.text, "them") || strings.HasSuffix(it.text, "those")):
			return 0, false // "I take six of them, one over the other"
		case it.kind == kNo || it.kind == kFix:
			n = 0 // what stands before is taken back
		case it.breaks() || it.kind == kIt || it.kind == kKnowing || it.kind == kTailFill || it.kind == kHave:
		default:
			return 0, false
		}
	}
	return n, way && n > 0 && n < 20
}

func (s *speech) take(g *group) {
	list := append([]item{{token: g.head}}, g.items...)
	n, ok := wayOut(list)
	if !ok {
		s.notUnderstood(g, g.items)
		return
	}
	s.act(g, Act{Kind: Take, N: n})
}

var _ = exact.Int

// bothOf stand for two walls that were named just before.
var bothOf = map[string]bool{"": true, "two": true, "them": true, "both": true, "these": true, "those": true, "the two": true, "both of them": true}
