package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// wantsFigure takes a wish for a figure, without one, for the question that it is: "I need the number of bays", "could I have
// the height of the added post". A wish for the thing itself is none: "could I have an opening".
func (g *grouping) wantsFigure() {
	for k := g.first; k < len(g.s.groups); k++ {
		p := &g.s.groups[k]
		list := strip(p.items)
		if p.cmd != "" || len(list) == 0 || !onlyNames(withoutOnly(list)) || !tellsFigure(list) {
			continue
		}
		if p.force == State && (p.sealed || saysNeed(list)) || p.force == WhatIf && p.head != nil && endsInHaving(p.head.text) {
			p.force, p.head = Ask, nil
		}
	}
}

// withoutOnly drops a "just" that a stretch opens with.
func withoutOnly(list []item) []item {
	if len(list) > 1 && !list[0].value() && list[0].kind == kOnly {
		return list[1:]
	}
	return list
}

// saysNeed reports whether a stretch opens with somebody's need: "I just need the rail count".
func saysNeed(list []item) bool {
	var said strings.Builder
	for _, it := range list {
		said.WriteString(it.before + " ")
		if it.value() || it.kind != kOnly {
			break
		}
	}
	f := strings.Fields(said.String())
	if len(f) < 2 || !speakers[f[0]] {
		return false
	}
	for _, w := range f[1:] {
		if w == "need" || w == "want" || w == "like" {
			return true
		}
	}
	return false
}

// figureWords name what a figure is told of: how many, how long.
var figureWords = wordSet("number numbers count counts height width length size spacing distance clearance thickness measure measurement total")

// tellsFigure reports whether a stretch names a figure of something.
func tellsFigure(list []item) bool {
	for _, it := range list {
		for _, w := range strings.Fields(it.before + " " + it.text) {
			if figureWords[w] {
				return true
			}
		}
	}
	return false
}

// endsInHaving reports whether words ask to be given something: "could I have", "can we get".
func endsInHaving(text string) bool {
	return strings.HasSuffix(text, " have") || strings.HasSuffix(text, " get")
}

// comesTo reports whether a question is after what comes of something: "what's that come to", "what do you have".
func comesTo(text string) bool {
	for _, end := range []string{"come to", "come out to", "comes to", "work out to", "end up at", "end up", "you have", "you get", "you make it", "you got", "have we got"} {
		if strings.HasPrefix(text, "what ") && strings.HasSuffix(text, end) {
			return true
		}
	}
	return false
}

// measuresOnly reports whether a stretch names lengths of the wall, and nothing that is bought.
func measuresOnly(list []item) bool {
	for _, it := range list {
		if it.value() {
			return false
		}
		switch it.key() {
		case "rail", "size", "post", "stiffener", "bracket", "wall":
			return false
		}
	}
	return true
}

// piecesOf reports whether a stretch names nothing but pieces that are cut: "each piece".
func piecesOf(list []item) bool {
	found := false
	for _, it := range list {
		switch {
		case it.value():
			return false
		case it.kind == kPart && (it.key() == "rail" || it.key() == "stiffener" || it.key() == "post"):
			found = true
		case it.kind == kEach || it.kind == kPer || it.breaks():
		default:
			return false
		}
	}
	return found
}

// boundedLast finds the quantity that a line only bounds, where it says nothing else: "doorway at least 34, what does it come to".
func (s *speech) boundedLast(head string) *solver.Name {
	if !strings.HasSuffix(head, " to") && !strings.Contains(head, "end up") || !comesTo(head) || len(s.acts) != 1 || s.acts[0].Kind != State || len(s.acts[0].Statements) != 1 {
		return nil
	}
	st := s.acts[0].Statements[0]
	switch st.Op {
	case solver.LT, solver.LE, solver.GT, solver.GE, solver.In:
		return &st.Name
	}
	return nil
}

// ofNothing asks back where a question leans on what was spoken of before, and nothing was: "how long is it".
func (s *speech) ofNothing(g *group, list []item) bool {
	if g.head != nil && len(list) == 0 && !s.ofPost() && (g.head.text == "how tall" || g.head.text == "how high") && severalAgain(g.items) {
		s.fail(g.head.at, qHowTall.offering("how tall is the added post", "ask wall height", "ask post height"))
		return true // "how tall are they": no wall
	}
	if s.tallAgain(g, list) {
		return true
	}
	if s.c.Answered || len(s.acts) > 0 || s.carry.name != nil || g.head == nil || len(list) > 0 {
		return false
	}
	switch text := g.head.text; {
	case text == "how much":
		s.fail(g.head.at, qHowMuchOf.offering("how much does it cost", "ask cost", "ask shopping"))
	case text == "how long" && spokenOfAgain(g.items):
		s.fail(g.head.at, qHowLong.offering("how long do I cut the rails", "ask cuts", "ask span"))
	case g.topic == "posts" && strings.HasPrefix(text, "where") && strings.Contains(text+" ", " it "):
		s.fail(g.head.at, qWhereGoes.offering("where does the post go", "ask posts", "ask marks"))
	default:
		return false
	}
	return true
}

// severalAgain reports whether words stand for several things that were spoken of: "are they".
func severalAgain(list []item) bool {
	for _, it := range list {
		if !it.value() && it.kind == kIt && helping[firstWord(it.text)] != "" {
			return true
		}
	}
	return false
}

// shrinks drops the verb at the end of a question after what becomes of something: "tell me what the gap shrinks to".
func shrinks(list []item) []item {
	n := len(list)
	if n < 2 || list[n-1].value() || list[n-1].kind != kChange || hasValue(list[:n-1]) || !named(list[:n-1]) {
		return list
	}
	return list[:n-1]
}

// theirTurn takes "are they" at the end of a question after a dimension for what was spoken of last: "two added posts, how tall
// are they".
func (l *lexing) theirTurn(next int) int {
	if _, ok := dims[strings.TrimPrefix(l.word(next-1), "how ")]; !ok || next < 2 || l.word(next-2) != "how" || helping[l.word(next)] == "" {
		return next
	}
	switch l.word(next + 1) {
	case "they", "those", "these":
	default:
		return next
	}
	end := next + 2
	for verbsOfStanding[l.word(end)] {
		end++
	}
	if end < len(l.atoms) && l.kind(end) != aSign && l.word(end) != "and" {
		return next
	}
	l.add(kIt, next, end)
	return end
}

var verbsOfStanding = wordSet("be stand come end up get going to need have out")

// orderHas takes "why does the order have sixteens in it" for a question after the order: what is in it need not be read.
func orderHas(in []atom) []atom {
	r := reader{in}
	for i := range in {
		if w := r.word(i); w != "order" && w != "list" && w != "cart" && w != "takeoff" || !listsWhat[r.word(i+1)] {
			continue
		}
		from := i
		for from > 0 && in[from-1].text != "why" && in[from-1].text != "come" {
			if !orderLeads[in[from-1].text] {
				return in
			}
			from--
		}
		if from == 0 || in[from-1].text == "come" && r.word(from-2) != "how" {
			continue
		}
		end := i + 1
		for end < len(in) && in[end].kind != aSign {
			end++
		}
		out := append([]atom{}, in[:i+1]...)
		out[i].text = "takeoff"
		return append(out, in[end:]...)
	}
	return in
}

var (
	listsWhat  = wordSet("has have had include includes contain contains show shows say says list lists call calls")
	orderLeads = wordSet("does did do would is the my our this that your lumber shopping material materials buying wood")
)

// amidBays takes a stiffener in the middle of each bay for one.
func (l *lexing) amidBays() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kPart || t.key() != "stiffener" || t.plural() || next.kind != kLoc || next.key() != "per bay" || !amid(next.text) {
			continue
		}
		if i > 0 && !l.breaks(l.tokens[i-1]) && l.tokens[i-1].kind != kAnd {
			continue
		}
		one := token{kind: kNum, text: "one", amt: &amount{number: wordInt(1)}, at: t.at, end: t.at, before: t.before}
		t.before = ""
		l.tokens = append(l.tokens[:i:i], append([]token{one}, l.tokens[i:]...)...)
		i++
	}
}

// amid reports whether words tell of a middle.
func amid(text string) bool {
	for _, w := range strings.Fields(text) {
		switch w {
		case "middle", "center", "centre", "halfway", "mid", "midway":
			return true
		}
	}
	return false
}

// upTheWall reports whether boards are counted where they stand, one over the other: none of those to buy.
func upTheWall(g *group, list []item) bool {
	boards, stands := false, false
	if g.head != nil {
		for _, w := range strings.Fields(g.head.text) {
			f := vocab().of(w)
			boards = boards || slices.Contains(f.ids, vocab().ids["RAIL"])
			if w == "buy" || w == "order" || w == "need" || w == "get" {
				return false
			}
		}
	}
	for _, it := range list {
		if it.value() {
			return false
		}
		boards = boards || it.kind == kPart && it.key() == "rail"
		stands = stands || it.kind == kUp || it.kind == kLoc && it.key() == "per bay"
	}
	return boards && stands
}

// hasInHand reports whether a table is only told to be at hand before another is asked for: "I've got the drawing, what do I
// buy", "I'm holding a story stick, what marks go on it".
func (g *grouping) hasInHand(i int) bool {
	t := g.list[i]
	held := i > 0 && !g.list[i-1].value() && g.list[i-1].kind == kHave && (strings.HasPrefix(g.list[i-1].text, "i have") || strings.HasPrefix(g.list[i-1].text, "we have")) && (t.before == "" || vocab().articles[t.before])
	for _, w := range strings.Fields(t.before) {
		held = held || atHand[w] && (strings.HasPrefix(t.before, "i am") || strings.HasPrefix(t.before, "we are"))
	}
	if !held || !g.empty() && !g.atBreak(i-1) {
		return false
	}
	for _, it := range g.list[i+1:] {
		if !it.value() && (it.kind == kWh || it.kind == kWhere || it.kind == kQuest && !bareNoun(it.token) || it.kind == kHead && strings.HasSuffix(it.text, " about")) {
			return true
		}
	}
	return false
}

var atHand = wordSet("holding carrying using reading looking making working")

// onlyDated reports whether a bare noun stands in a clause that only tells when: "after I set the posts".
func (g *grouping) onlyDated(i int) bool {
	t := g.list[i]
	if !bareNoun(t.token) {
		return false
	}
	f := strings.Fields(t.before)
	for _, w := range f {
		if dating[w] {
			return true
		}
	}
	return len(f) > 1 && speakers[f[0]] && i > 0 && !g.list[i-1].value() && dating[lastWord(g.list[i-1].text)]
}

var dating = wordSet("once after before while until till when")

// missesEach takes the cut of "what if each cut is a sixteenth too long" for what each cut misses by: no saw cut is long.
func (g *grouping) missesEach() {
	for i, it := range g.g.items {
		if g.g.force != WhatIf || it.value() || it.kind != kPart || it.key() != "kerf" || !amongEach[firstWord(it.text)] {
			continue
		}
		t := *it.token
		t.kind, t.found = kOffEach, []found{{entry: missed}}
		g.g.items[i] = item{token: &t}
	}
}

var (
	missed    = &entry{kind: kOffEach, key: "tolerance"}
	amongEach = wordSet("each every all")
)
