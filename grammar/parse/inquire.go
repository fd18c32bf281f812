package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// asked reads a question: after a table, or after one quantity or several.
func (s *Speech) asked(g *group) {
	for _, it := range g.items {
		if !it.value() && it.Kind == lexicon.Measured && askedMeasure(it.Text) {
			g.sense = append(g.sense, lexicon.Sense{May: lengthAspects}) // "what do the bays measure"
		}
	}
	list := shrinks(strip(idleGone(g.items)))
	if s.ofNothing(g, list) {
		return
	}
	if g.topic == "" && len(list) == 0 && g.head != nil && g.head.As(lexicon.Quest) != nil {
		g.topic = g.head.As(lexicon.Quest).Key
	}
	if g.topic != "" {
		if g.topic == "layout" && named(list) && s.askedInstead(g, list) {
			return
		}
		if g.topic == "cost" && g.head != nil && strings.HasPrefix(g.head.Text, "how much is") && (s.lengthAsked(g, list) || s.muchOf(g, list)) {
			return
		}
		if g.topic == "shopping" && g.head != nil && strings.HasPrefix(g.head.Text, "how many") && s.perBayAsked(g, list) {
			return
		}
		wall, list := withoutWall(list)
		if g.topic == "cuts" && g.head != nil && strings.HasPrefix(g.head.Text, "how long") && numbersRail(list) {
			list = nil // "how long is rail 3"
		}
		if !s.beside(g, list) {
			if s.tableOf(g, list) {
				return
			}
			s.notUnderstood(g, list)
			return
		}
		a := act.Act{Kind: act.Ask, Topic: g.topic, Wall: wall}
		if g.csv {
			a.As = "csv"
		}
		s.act(g, a)
		if g.topic == "posts" && s.Carry.Name == nil {
			s.Carry = carry{senses: []lexicon.Sense{senseOf(&lex.Token{Found: addedPost})}} // "where does the post go? he has it 54 from the left"
		}
		return
	}
	list = changesHow(g, list)
	if s.bought(g, list) {
		return
	}
	if n := len(s.Acts); n > 0 && g.head != nil && g.head.Kind == lexicon.Where && !named(list) && !hasValue(list) && s.Acts[n-1].Kind == act.Check && s.Acts[n-1].Statements[0].Name.Quantity == solver.MarksOf {
		s.act(g, act.Act{Kind: act.Ask, Topic: "marks"}) // "his marks are 8 and 16, where do you put them"
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
		names = []act.Act{{Topic: "shopping"}}
	}
	for _, n := range names {
		n.Kind = act.Ask
		if g.csv {
			n.As = "csv"
		}
		s.act(g, n)
	}
}

// names finds the quantities that a question is after. Without any it is what was spoken of last.
func (s *Speech) names(g *group, list []Item) ([]act.Act, bool) {
	if a, ok := s.nameOf(g, list); ok {
		return []act.Act{a}, true
	}
	var out []act.Act
	for i, part := range chunks(list) {
		if i > 0 && g.force == act.Why {
			g = &group{force: act.Why} // "the rail count, and the opening": no count of it
		}
		a, ok := s.nameOf(g, part)
		if g.force == act.Why && countedPosts(part) {
			a, ok = act.Act{Name: &solver.Name{Quantity: solver.AddedPosts}}, true // "why six rails and three posts": not of what size
		}
		if !ok {
			return nil, false
		}
		out = append(out, a)
	}
	return out, len(out) > 1
}

func chunks(list []Item) [][]Item {
	var out [][]Item
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
func (s *Speech) nameOf(g *group, list []Item) (act.Act, bool) {
	k := clause{s: s, force: g.force, carry: s.Carry, items: list}
	if !k.sort() || k.breaks > 0 || len(k.values) > 0 && g.force == act.Ask {
		return act.Act{}, false
	}
	if g.force == act.Ask && counting(g) && k.lastOf("between posts") {
		k.things = k.things[:len(k.things)-1] // "how many courses of boards go up between the posts"
	}
	k.it = k.it || g.force == act.Ask && g.head != nil && (strings.HasSuffix(g.head.Text, "yours") || strings.HasSuffix(g.head.Text, "make it"))
	senses := append(append([]lexicon.Sense{}, g.sense...), k.senses(0, len(list))...)
	for _, i := range k.words {
		t := k.items[i]
		switch {
		case t.Is(lexicon.Quest):
			var x lexicon.Set
			x.Add(lexicon.AspectIndex["?"+t.As(lexicon.Quest).Key])
			senses = append(senses, lexicon.Sense{Sure: x})
		case g.force == act.Ask && k.rail > 0 && (t.Is(lexicon.Top) || t.Is(lexicon.At)):
		case g.force == act.Ask && t.Is(lexicon.Top) && strings.HasSuffix(t.Before, "its") && s.ofPost():
			return act.Act{Name: &solver.Name{Quantity: solver.PostHeight}}, true // "the post is a 4x4, how high is its top"
		case g.force == act.Ask && t.Kind == lexicon.ThanNow && strings.HasPrefix(t.Text, "what"):
			k.it = true // "tell me what it is"
		case (t.Kind == lexicon.Another || g.force == act.Ask && t.As(lexicon.Change) != nil && t.Text == "more") && k.about("post"):
			senses = append(senses, lexicon.Meaning("added posts"))
		case g.force == act.Ask && (t.Kind == lexicon.Per || t.Kind == lexicon.GoesIn):
		case g.force == act.Ask && t.Is(lexicon.CutWord):
			senses = append(senses, lexicon.Meaning("?cuts"))
		case g.force == act.Why && dimensionOf(t.Token) != nil:
			senses = append(senses, *dimensionOf(t.Token))
		case g.force == "help with" && t.Is(lexicon.StockWord):
			senses = append(senses, lexicon.Meaning("stock"))
		case t.Is(lexicon.Item):
			senses = append(senses, lexicon.Meaning("?hardware | price"))
		case g.force == act.Ask && t.Kind == lexicon.Rel && t.Key() == "=" && strings.HasSuffix(t.Text, " to"): // "how many boards that comes to"
		case t.Kind == lexicon.Rel && t.Text == "up to", t.Kind == lexicon.Down, t.Kind == lexicon.Up, t.Kind == lexicon.Off, t.Kind == lexicon.BestTail, t.Kind == lexicon.No, t.Kind == lexicon.Over, t.Kind == lexicon.More, t.Kind == lexicon.Between, t.Kind == lexicon.Sell, t.Kind == lexicon.Have, t.Kind == lexicon.PriceVerb:
		default:
			if g.force == act.Ask || g.force == act.Teach || g.force == "help with" {
				return act.Act{}, false
			}
		}
	}
	if g.force == act.Ask && k.rail > 0 && len(k.things) == 1 && g.head != nil && (g.head.Kind == lexicon.Where && lex.Helping[strings.Fields(k.items[k.things[0]].Before + " -")[0]] != "" || len(senses) > 0 && senses[0].All() != lexicon.Everything && lexicon.Common(senses).HasName(string(solver.RailTop))) {
		return act.Act{Name: &solver.Name{Quantity: solver.RailTop, Rail: k.rail}}, true // "how high is the third rail"
	}
	if g.force == act.Ask && len(g.sense) > 0 && g.sense[0].All() != lexicon.Everything && g.sense[0].All().HasName("?cuts") && k.oneRail() {
		return act.Act{Topic: "cuts"}, true // "how long is the top rail"
	}
	if g.force == act.Ask && k.wallsLength(g) {
		return act.Act{Name: &solver.Name{Quantity: solver.Overall, Wall: k.wallName()}}, true // "how long is the wall altogether"
	}
	if at := k.has(lexicon.At); g.force == act.Ask && k.rail > 0 && (k.has(lexicon.Top) != nil || at != nil && at.As(lexicon.At).Key == "top") {
		return act.Act{Name: &solver.Name{Quantity: solver.RailTop, Rail: k.rail}}, true
	}
	if n, leans := k.itsHeight(g); leans {
		return act.Act{Name: n}, n != nil
	}
	if a, ok := k.askedAfter(g, senses); ok {
		return a, true
	}
	if len(k.things)+len(k.dims)+len(k.sides)+len(k.values) == 0 && s.Carry.Name != nil && s.Carry.Name.Quantity != solver.Goal && len(senses) <= 1 && s.askable(senses) && (g.force != act.Ask || k.it || len(senses) == 0 || senses[0].All() != lexicon.Everything) {
		n := *s.Carry.Name
		return act.Act{Name: &n}, true
	}
	if len(k.sides) > 0 {
		senses = append(senses, lexicon.Meaning("| opening side, floor at right, post leans"))
	}
	return k.namePick(senses)
}

// numbersRail reports whether nothing but the number of a rail is left.
func numbersRail(list []Item) bool {
	return len(list) == 1 && list[0].value() && list[0].lim.lo.Unit == measure.Bare && list[0].lim.lo.Size == "" && list[0].lim.lo.Val.IsInt() && list[0].Before == "" && list[0].lim.hi == nil
}

// oneRail reports whether one rail is spoken of, by its number or its place, and nothing else.
func (k *clause) oneRail() bool {
	if len(k.dims)+len(k.sides)+len(k.values) > 0 || len(k.things) > 1 {
		return false
	}
	if len(k.things) == 1 {
		t := k.items[k.things[0]]
		return t.Key() == "rail" && k.rail > 0 || strings.HasPrefix(t.Text, "top ") && t.Key() == "wall height"
	}
	return len(k.words) == 1 && (k.has(lexicon.Top) != nil || k.has(lexicon.Ordinal) != nil)
}

// askable reports whether the words of a question can be after what was spoken of last: "how many?" after a count.
func (s *Speech) askable(senses []lexicon.Sense) bool {
	a := aspectIndexOf(s.Carry.Name.Quantity)
	return a < 0 || len(senses) == 0 || lexicon.Common(senses).Has(a)
}

// namePick takes the surest of what the senses have in common. Where a count and a size or a length are as sure, the
// count is what a bare noun means, and the length of a single opening or bay.
func (k *clause) namePick(senses []lexicon.Sense) (act.Act, bool) {
	can := lexicon.Common(senses)
	if len(senses) == 0 {
		return act.Act{}, false
	}
	var best []int
	top := 2
	for a := range lexicon.Aspects {
		if !can.Has(a) {
			continue
		}
		if n := lexicon.Score(senses, a); n > top {
			best, top = []int{a}, n
		} else if n == top {
			best = append(best, a)
		}
	}
	if len(best) > 1 {
		best = k.preferred(best)
	}
	if len(best) != 1 {
		return act.Act{}, false
	}
	if name := lexicon.Aspects[best[0]]; name[0] == '?' {
		return act.Act{Topic: name[1:]}, true
	}
	n, _, ok := k.build(best[0])
	if !ok {
		return act.Act{}, false
	}
	s := k.s
	s.Carry.Name, s.Carry.Kind = &n, solver.KindOf(n.Quantity)
	s.Carry.senses = k.senses(0, len(k.items))
	return act.Act{Name: &n}, true
}

func (k *clause) preferred(best []int) []int {
	plural := false
	for _, i := range k.things {
		plural = plural || k.items[i].Plural()
	}
	rank := func(a int) int {
		switch q := solver.Quantity(lexicon.Aspects[a]); {
		case q == solver.Bays && k.about("post") && !k.about("bay"):
			return 0 // "how many posts go between the end posts"
		case q == solver.Bays && k.head() != nil && doneTo(k.head().Text):
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

func (s *Speech) why(g *group) {
	list := strip(idleGone(g.items))
	for i, it := range list {
		if !it.value() && it.Kind == lexicon.Not {
			if s.whyAndNot(g, list, i) {
				return
			}
			if hasFigure(list[:i]) && hasFigure(list[i+1:]) {
				s.notUnderstood(g, list)
				return
			}
			g.force = act.WhyNot
			g.items = append(append([]Item{}, list[:i]...), list[i+1:]...)
			s.tried(g)
			return
		}
	}
	if g.topic == "" && buysBoards(list) {
		g.topic, list = "shopping", nil // "why am I buying all those boards"
	}
	if g.topic == "shopping" && upTheWall(g, g.items) {
		s.act(g, act.Act{Kind: act.Why, Name: &solver.Name{Quantity: solver.Rails}}) // "why so many boards in each bay"
		return
	}
	if g.topic != "" {
		wall, _ := withoutWall(list)
		s.act(g, act.Act{Kind: act.Why, Topic: g.topic, Wall: wall})
		return
	}
	if len(list) == 0 && len(g.sense)+len(g.soft) == 0 && s.Carry.Name == nil && s.C.Answered && len(s.Acts) == 0 {
		s.act(g, act.Act{Kind: act.Why, Topic: "that"}) // "why?" and nothing more
		return
	}
	if a, ok := s.whyOf(g, list); ok {
		a.Kind = act.Why
		s.act(g, a)
		return
	}
	if a, ok := s.whySoWide(g, list); ok {
		a.Kind = act.Why
		s.act(g, a)
		return
	}
	names, ok := s.names(g, list)
	if len(list) == 1 && !list[0].value() && list[0].Kind == lexicon.Part && list[0].Key() == "post" {
		names, ok = []act.Act{{Topic: "posts"}}, true
		if list[0].Index > 1 {
			names = []act.Act{{Name: &solver.Name{Quantity: solver.AddedPosts}}} // "why do I need a second post"
		}
	}
	if !ok {
		s.notUnderstood(g, list)
		return
	}
	for _, a := range names {
		if a.Name != nil && (a.Name.Quantity == solver.PostFromLeft || a.Name.Quantity == solver.PostFromRight) && !hasFigure(list) {
			a = act.Act{Topic: "posts", Wall: a.Name.Wall} // "why is the post that far from the left end"
		}
		a.Kind = act.Why
		s.act(g, a)
	}
}

func (s *Speech) teach(g *group) {
	if g.topic == "steps" {
		s.act(g, act.Act{Kind: act.Ask, Topic: g.topic}) // "walk me through my steps"
		return
	}
	if g.topic != "" {
		s.act(g, act.Act{Kind: act.Teach, Topic: g.topic})
		return
	}
	if g.head != nil && len(strip(g.items)) == 0 && strings.Contains(g.head.Text, " gap ") {
		s.act(g, act.Act{Kind: act.Teach, Name: &solver.Name{Quantity: solver.Gap}}) // "run through gap math with me"
		return
	}
	if hasValue(g.items) {
		if g.head != nil && strings.Contains(g.head.Text, " try") {
			g.force = act.WhatIf // "let me try three inch gaps"
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
	a.Kind = act.Teach
	s.act(g, a)
}
