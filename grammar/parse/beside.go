package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// askedOf reads a question with what it is asked of: "what would the gap be with seven boards" tries seven and asks for
// the gap. What is asked after stands first.
func (s *Speech) askedOf(g *group, list []Item) bool {
	for i := 1; i < len(list); i++ {
		head, tail := strip(list[:i]), strip(list[i:])
		if len(head) == 0 || len(tail) == 0 || hasValue(head) {
			continue
		}
		if o := opening(tail); (list[i].breaks() || list[i-1].breaks()) && lex.Helping[o[0]] == act.Check {
			return false // "what's the wall height and is the gap 2"
		}
		before := s.Carry
		a, ok := s.nameOf(g, head)
		if !ok || a.Name == nil {
			s.Carry = before
			continue
		}
		s.Carry = before
		r := s.cut(tail, carry{}, act.WhatIf)
		if len(r) != 1 || len(r[0].made) == 0 {
			continue
		}
		tried := act.Act{Kind: act.WhatIf}
		for _, m := range r[0].made {
			if m.doubt != nil || m.st.Name.String() == a.Name.String() {
				return false
			}
			tried.Statements = append(tried.Statements, m.st)
		}
		if (list[i].breaks() || list[i-1].breaks()) && !conditional(tail[0]) && s.toldBehind(g, a, r[0].made) {
			return true
		}
		s.act(g, tried)
		a.Kind = act.Ask
		s.act(g, a)
		return true
	}
	return false
}

// askedInstead reads what is asked after where the words of the question alone would be after the layout: "what do you
// get for the bays".
func (s *Speech) askedInstead(g *group, list []Item) bool {
	names, ok := s.names(&group{force: act.Ask}, list)
	if !ok {
		return false
	}
	for _, n := range names {
		if n.Name != nil && n.Name.Quantity == solver.WallHeight {
			return false // "what do you get for the wall"
		}
	}
	for _, n := range names {
		n.Kind = act.Ask
		s.act(g, n)
	}
	return true
}

// tableOf reads a table that is asked after with what it is asked of: "what would it cost with five rails".
func (s *Speech) tableOf(g *group, list []Item) bool {
	for i, it := range list {
		if !hasValue(list[i:]) || !conditional(it) || hasValue(list[:i]) || !s.beside(g, list[:i]) {
			continue
		}
		tried, ok := s.trial(list[i:])
		if !ok {
			return false
		}
		s.act(g, tried)
		if g.topic == "layout" && g.head != nil && strings.HasPrefix(g.head.Text, "what would ") {
			return true // "what would you get with six boards": what comes of it is told anyway
		}
		s.act(g, act.Act{Kind: act.Ask, Topic: g.topic})
		return true
	}
	return false
}

// beside reports whether what stands beside the name of a table may stand there.
func (s *Speech) beside(g *group, list []Item) bool {
	for _, it := range list {
		if it.value() {
			if g.topic == "shopping" && (it.Kind == lexicon.Size || it.lim.lo.Footer) && len(it.lim.lead)+len(it.lim.tail) == 0 {
				continue // "how many sticks of 2x6"
			}
			return false
		}
		switch it.Kind {
		case lexicon.Quest:
			if g.topic != "cost" && g.topic != "shopping" || it.Key() != "hardware" {
				return false
			}
		case lexicon.Part, lexicon.Loc, lexicon.Side, lexicon.Comma, lexicon.And, lexicon.Up, lexicon.Out, lexicon.Down, lexicon.It, lexicon.BestTail, lexicon.Fixed, lexicon.HaveTail, lexicon.Sell, lexicon.Each, lexicon.Top, lexicon.At, lexicon.Wh, lexicon.Knowing, lexicon.Rest:
		case lexicon.Dim, lexicon.CutWord:
			if g.topic != "cuts" || it.Kind == lexicon.Dim && it.Key() != "long" {
				return false
			}
		default:
			return false
		}
		if it.Kind == lexicon.Part && it.Index > 0 && it.Key() == "opening" {
			return false
		}
	}
	return true
}

// dimensionOf is what a comparison is of: a post that is taller is so in its height. It is nil for other words.
func dimensionOf(t *lex.Token) *lexicon.Sense {
	if t.Kind == lexicon.Change && (strings.HasPrefix(t.Text, "shorten") || strings.HasPrefix(t.Text, "lengthen") || strings.HasPrefix(t.Text, "heighten") || strings.HasPrefix(t.Text, "extend")) {
		m := lexicon.Meaning("| post height, base height")
		return &m
	}
	if t.Kind != lexicon.Rel && t.Kind != lexicon.Over && t.Kind != lexicon.More && t.Kind != lexicon.Under && t.Kind != lexicon.ThanNow {
		return nil
	}
	for _, w := range strings.Fields(t.Text) {
		switch w {
		case "taller", "higher":
			m := lexicon.Meaning("| wall height, post height, base height, rail top")
			return &m
		case "wider", "narrower", "broader":
			m := lexicon.Meaning("| opening, bay, gap, rail face, bottom gap")
			return &m
		}
	}
	return nil
}

// countedPosts reports whether a number of posts is all that is named: "why two posts" is after how many are added.
func countedPosts(list []Item) bool {
	list = strip(list)
	return len(list) == 2 && list[0].value() && list[0].lim.lo.Unit == measure.Bare && list[0].lim.lo.Val.IsInt() && list[0].lim.lo.Size == "" &&
		!list[1].value() && list[1].Kind == lexicon.Part && list[1].Key() == "post" && list[1].Index == 0
}
