package grammar

import (
	"strings"

	"saywright/solver"
)

// asked reads a question: after a table, or after one quantity or several.
func (s *speech) asked(g *group) {
	for _, it := range g.items {
		if !it.value() && it.kind == kMeasured && askedMeasure(it.text) {
			g.sense = append(g.sense, sense{may: lengthAspects}) // "what do the bays measure"
		}
	}
	list := shrinks(strip(idleGone(g.items)))
	if s.ofNothing(g, list) {
		return
	}
	if g.topic == "" && len(list) == 0 && g.head != nil && g.head.as(kQuest) != nil {
		g.topic = g.head.as(kQuest).key
	}
	if g.topic != "" {
		if g.topic == "layout" && named(list) && s.askedInstead(g, list) {
			return
		}
		if g.topic == "cost" && g.head != nil && strings.HasPrefix(g.head.text, "how much is") && (s.lengthAsked(g, list) || s.muchOf(g, list)) {
			return
		}
		if g.topic == "shopping" && g.head != nil && strings.HasPrefix(g.head.text, "how many") && s.perBayAsked(g, list) {
			return
		}
		wall, list := withoutWall(list)
		if g.topic == "cuts" && g.head != nil && strings.HasPrefix(g.head.text, "how long") && numbersRail(list) {
			list = nil // "how long is rail 3"
		}
		if !s.beside(g, list) {
			if s.tableOf(g, list) {
				return
			}
			s.notUnderstood(g, list)
			return
		}
		a := Act{Kind: Ask, Topic: g.topic, Wall: wall}
		if g.csv {
			a.As = "csv"
		}
		s.act(g, a)
		if g.topic == "posts" && s.carry.name == nil {
			s.carry = carry{senses: []sense{senseOf(&token{found: addedPost})}} // "where does the post go? he has it 54 from the left"
		}
		return
	}
	list = changesHow(g, list)
	if s.bought(g, list) {
		return
	}
	if n := len(s.acts); n > 0 && g.head != nil && g.head.kind == kWhere && !named(list) && !hasValue(list) && s.acts[n-1].Kind == Check && s.acts[n-1].Statements[0].Name.Quantity == solver.MarksOf {
		s.act(g, Act{Kind: Ask, Topic: "marks"}) // "his marks are 8 and 16, where do you put them"
		return
	}
	names, ok := s.names(g, measuredHow(list))
	if !ok && hasValue(list) && (s.askedOf(g, list) || s.wouldDo(g, list) || s.wouldDo(g, strip(g.items))) {
		return
	}
	if !ok {
		s.notUnderstood(g, list)
		return
	}
	if s.afterSpare(list) {
		names = []Act{{Topic: "shopping"}}
	}
	for _, n := range names {
		n.Kind = Ask
		if g.csv {
			n.As = "csv"
		}
		s.act(g, n)
	}
}

// names finds the quantities that a question is after. Without any it is what was spoken of last.
func (s *speech) names(g *group, list []item) ([]Act, bool) {
	if a, ok := s.nameOf(g, list); ok {
		return []Act{a}, true
	}
	var out []Act
	for i, part := range chunks(list) {
		if i > 0 && g.force == Why {
			g = &group{force: Why} // "the rail count, and the opening": no count of it
		}
		a, ok := s.nameOf(g, part)
		if g.force == Why && countedPosts(part) {
			a, ok = Act{Name: &solver.Name{Quantity: solver.AddedPosts}}, true // "why six rails and three posts": not of what size
		}
		if !ok {
			return nil, false
		}
		out = append(out, a)
	}
	return out, len(out) > 1
}

func chunks(list []item) [][]item {
	var out [][]item
	start := 0
	for i, it := range list {
		if it.breaks() {
			if i > start {
				out = append(out, list[start:i])
			}
			start = i + 1
		}
	}
	if start < len(list) {
		out = append(out, list[start:])
	}
	return out
}

// nameOf finds the one quantity, or table, that a stretch of a question is after.
func (s *speech) nameOf(g *group, list []item) (Act, bool) {
	k := clause{s: s, force: g.force, carry: s.carry, items: list}
	if !k.sort() || k.breaks > 0 || len(k.values) > 0 && g.force == Ask {
		return Act{}, false
	}
	if g.force == Ask && counting(g) && k.lastOf("between posts") {
		k.things = k.things[:len(k.things)-1] // "how many courses of boards go up between the posts"
	}
	k.it = k.it || g.force == Ask && g.head != nil && (strings.HasSuffix(g.head.text, "yours") || strings.HasSuffix(g.head.text, "make it"))
	senses := append(append([]sense{}, g.sense...), k.senses(0, len(list))...)
	for _, i := range k.words {
		t := k.items[i]
		switch {
		case t.is(kQuest):
			var x set
			x.add(aspectIndex["?"+t.as(kQuest).key])
			senses = append(senses, sense{sure: x})
		case g.force == Ask && k.rail > 0 && (t.is(kTop) || t.is(kAt)):
		case g.force == Ask && t.is(kTop) && strings.HasSuffix(t.before, "its") && s.ofPost():
			return Act{Name: &solver.Name{Quantity: solver.PostHeight}}, true // "the post is a 4x4, how high is its top"
		case g.force == Ask && t.kind == kThanNow && strings.HasPrefix(t.text, "what"):
			k.it = true // "tell me what it is"
		case (t.kind == kAnother || g.force == Ask && t.as(kChange) != nil && t.text == "more") && k.about("post"):
			senses = append(senses, meaning("added posts"))
		case g.force == Ask && (t.kind == kPer || t.kind == kGoesIn):
		case g.force == Ask && t.is(kCutWord):
			senses = append(senses, meaning("?cuts"))
		case g.force == Why && dimensionOf(t.token) != nil:
			senses = append(senses, *dimensionOf(t.token))
		case g.force == "help with" && t.is(kStockWord):
			senses = append(senses, meaning("stock"))
		case t.is(kItem):
			senses = append(senses, meaning("?hardware | price"))
		case g.force == Ask && t.kind == kRel && t.key() == "=" && strings.HasSuffix(t.text, " to"): // "how many boards that comes to"
		case t.kind == kRel && t.text == "up to", t.kind == kDown, t.kind == kUp, t.kind == kOff, t.kind == kBestTail, t.kind == kNo, t.kind == kOver, t.kind == kMore, t.kind == kBetween, t.kind == kSell, t.kind == kHave, t.kind == kPriceVerb:
		default:
			if g.force == Ask || g.force == Teach || g.force == "help with" {
				return Act{}, false
			}
		}
	}
	if g.force == Ask && k.rail > 0 && len(k.things) == 1 && g.head != nil && (g.head.kind == kWhere && helping[strings.Fields(k.items[k.things[0]].before + " -")[0]] != "" || len(senses) > 0 && senses[0].all() != everything && common(senses).hasName(string(solver.RailTop))) {
		return Act{Name: &solver.Name{Quantity: solver.RailTop, Rail: k.rail}}, true // "how high is the third rail"
	}
	if g.force == Ask && len(g.sense) > 0 && g.sense[0].all() != everything && g.sense[0].all().hasName("?cuts") && k.oneRail() {
		return Act{Topic: "cuts"}, true // "how long is the top rail"
	}
	if g.force == Ask && k.wallsLength(g) {
		return Act{Name: &solver.Name{Quantity: solver.Overall, Wall: k.wallName()}}, true // "how long is the wall altogether"
	}
	if at := k.has(kAt); g.force == Ask && k.rail > 0 && (k.has(kTop) != nil || at != nil && at.as(kAt).key == "top") {
		return Act{Name: &solver.Name{Quantity: solver.RailTop, Rail: k.rail}}, true
	}
	if n, leans := k.itsHeight(g); leans {
		return Act{Name: n}, n != nil
	}
	if a, ok := k.askedAfter(g, senses); ok {
		return a, true
	}
	if len(k.things)+len(k.dims)+len(k.sides)+len(k.values) == 0 && s.carry.name != nil && s.carry.name.Quantity != solver.Goal && len(senses) <= 1 && s.askable(senses) && (g.force != Ask || k.it || len(senses) == 0 || senses[0].all() != everything) {
		n := *s.carry.name
		return Act{Name: &n}, true
	}
	if len(k.sides) > 0 {
		senses = append(senses, meaning("| opening side, floor at right, post leans"))
	}
	return k.namePick(senses)
}

// numbersRail reports whether nothing but the number of a rail is left.
func numbersRail(list []item) bool {
	return len(list) == 1 && list[0].value() && list[0].lim.lo.unit == bare && list[0].lim.lo.size == "" && list[0].lim.lo.val.IsInt() && list[0].before == "" && list[0].lim.hi == nil
}

// oneRail reports whether one rail is spoken of, by its number or its place, and nothing else.
func (k *clause) oneRail() bool {
	if len(k.dims)+len(k.sides)+len(k.values) > 0 || len(k.things) > 1 {
		return false
	}
	if len(k.things) == 1 {
		t := k.items[k.things[0]]
		return t.key() == "rail" && k.rail > 0 || strings.HasPrefix(t.text, "top ") && t.key() == "wall height"
	}
	return len(k.words) == 1 && (k.has(kTop) != nil || k.has(kOrdinal) != nil)
}

// askable reports whether the words of a question can be after what was spoken of last: "how many?" after a count.
func (s *speech) askable(senses []sense) bool {
	a := aspectIndexOf(s.carry.name.Quantity)
	return a < 0 || len(senses) == 0 || common(senses).has(a)
}

// namePick takes the surest of what the senses have in common. Where a count and a size or a length are as sure, the
// count is what a bare noun means, and the length of a single opening or bay.
func (k *clause) namePick(senses []sense) (Act, bool) {
	can := common(senses)
	if len(senses) == 0 {
		return Act{}, false
	}
	var best []int
	top := 2
	for a := range aspects {
		if !can.has(a) {
			continue
		}
		if n := score(senses, a); n > top {
			best, top = []int{a}, n
		} else if n == top {
			best = append(best, a)
		}
	}
	if len(best) > 1 {
		best = k.preferred(best)
	}
	if len(best) != 1 {
		return Act{}, false
	}
	if name := aspects[best[0]]; name[0] == '?' {
		return Act{Topic: name[1:]}, true
	}
	n, _, ok := k.build(best[0])
	if !ok {
		return Act{}, false
	}
	s := k.s
	s.carry.name, s.carry.kind = &n, solver.KindOf(n.Quantity)
	s.carry.senses = k.senses(0, len(k.items))
	return Act{Name: &n}, true
}

func (k *clause) preferred(best []int) []int {
	plural := false
	for _, i := range k.things {
		plural = plural || k.items[i].plural()
	}
	rank := func(a int) int {
		switch q := solver.Quantity(aspects[a]); {
		case q == solver.Bays && k.about("post") && !k.about("bay"):
			return 0 // "how many posts go between the end posts"
		case q == solver.Bays && k.head() != nil && doneTo(k.head().text):
			return 1 // "what does that do to the bays"
		case q == solver.Bays || q == solver.Openings:
			if plural && k.bay == 0 {
				return 3
			}
			return 1
		case solver.KindOf(q) == solver.Count:
			return 3
		case q == solver.Span && k.about("opening"):
			return 0
		case q == solver.Span:
			return 1
		case solver.KindOf(q) == solver.Length && (q == solver.Bay || q == solver.Opening || q == solver.WallHeight || q == solver.PostHeight):
			return 2
		}
		return 0
	}
	var out []int
	top := 0
	for _, a := range best {
		if n := rank(a); n > top {
			out, top = []int{a}, n
		} else if n == top && n > 0 {
			out = append(out, a)
		}
	}
	return out
}

func (s *speech) why(g *group) {
	list := strip(idleGone(g.items))
	for i, it := range list {
		if !it.value() && it.kind == kNot {
			if s.whyAndNot(g, list, i) {
				return
			}
			if hasFigure(list[:i]) && hasFigure(list[i+1:]) {
				s.notUnderstood(g, list)
				return
			}
			g.force = WhyNot
			g.items = append(append([]item{}, list[:i]...), list[i+1:]...)
			s.tried(g)
			return
		}
	}
	if g.topic == "" && buysBoards(list) {
		g.topic, list = "shopping", nil // "why am I buying all those boards"
	}
	if g.topic == "shopping" && upTheWall(g, g.items) {
		s.act(g, Act{Kind: Why, Name: &solver.Name{Quantity: solver.Rails}}) // "why so many boards in each bay"
		return
	}
	if g.topic != "" {
		wall, _ := withoutWall(list)
		s.act(g, Act{Kind: Why, Topic: g.topic, Wall: wall})
		return
	}
	if len(list) == 0 && len(g.sense)+len(g.soft) == 0 && s.carry.name == nil && s.c.Answered && len(s.acts) == 0 {
		s.act(g, Act{Kind: Why, Topic: "that"}) // "why?" and nothing more
		return
	}
	if a, ok := s.whyOf(g, list); ok {
		a.Kind = Why
		s.act(g, a)
		return
	}
	if a, ok := s.whySoWide(g, list); ok {
		a.Kind = Why
		s.act(g, a)
		return
	}
	names, ok := s.names(g, list)
	if len(list) == 1 && !list[0].value() && list[0].kind == kPart && list[0].key() == "post" {
		names, ok = []Act{{Topic: "posts"}}, true
		if list[0].index > 1 {
			names = []Act{{Name: &solver.Name{Quantity: solver.AddedPosts}}} // "why do I need a second post"
		}
	}
	if !ok {
		s.notUnderstood(g, list)
		return
	}
	for _, a := range names {
		if a.Name != nil && (a.Name.Quantity == solver.PostFromLeft || a.Name.Quantity == solver.PostFromRight) && !hasFigure(list) {
			a = Act{Topic: "posts", Wall: a.Name.Wall} // "why is the post that far from the left end"
		}
		a.Kind = Why
		s.act(g, a)
	}
}

func (s *speech) teach(g *group) {
	if g.topic == "steps" {
		s.act(g, Act{Kind: Ask, Topic: g.topic}) // "walk me through my steps"
		return
	}
	if g.topic != "" {
		s.act(g, Act{Kind: Teach, Topic: g.topic})
		return
	}
	if g.head != nil && len(strip(g.items)) == 0 && strings.Contains(g.head.text, " gap ") {
		s.act(g, Act{Kind: Teach, Name: &solver.Name{Quantity: solver.Gap}}) // "run through gap math with me"
		return
	}
	if hasValue(g.items) {
		if g.head != nil && strings.Contains(g.head.text, " try") {
			g.force = WhatIf // "let me try three inch gaps"
			s.tried(g)
			return
		}
		s.notUnderstood(g, g.items)
		return
	}
	a, ok := s.nameOf(g, strip(idleGone(g.items)))
	if !ok {
		a, ok = s.nameOf(g, joined(strip(idleGone(g.items)))) // "teach me the bays, how to work out their width"
	}
	if !ok || a.Name == nil {
		s.notUnderstood(g, g.items)
		return
	}
	a.Kind = Teach
	s.act(g, a)
}
