package grammar

import (
	"strings"

	"saywright/solver"
)

// askedOf reads a question with what it is asked of: "what would the gap be with seven boards" tries seven and asks for
// the gap. What is asked after stands first.
func (s *speech) askedOf(g *group, list []item) bool {
	for i := 1; i < len(list); i++ {
		head, tail := strip(list[:i]), strip(list[i:])
		if len(head) == 0 || len(tail) == 0 || hasValue(head) {
			continue
		}
		if o := opening(tail); (list[i].breaks() || list[i-1].breaks()) && helping[o[0]] == Check {
			return false // "what's the wall height and is the gap 2"
		}
		before := s.carry
		a, ok := s.nameOf(g, head)
		if !ok || a.Name == nil {
			s.carry = before
			continue
		}
		s.carry = before
		r := s.cut(tail, carry{}, WhatIf)
		if len(r) != 1 || len(r[0].made) == 0 {
			continue
		}
		tried := Act{Kind: WhatIf}
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
		a.Kind = Ask
		s.act(g, a)
		return true
	}
	return false
}

// askedInstead reads what is asked after where the words of the question alone would be after the layout: "what do you
// get for the bays".
func (s *speech) askedInstead(g *group, list []item) bool {
	names, ok := s.names(&group{force: Ask}, list)
	if !ok {
		return false
	}
	for _, n := range names {
		if n.Name != nil && n.Name.Quantity == solver.WallHeight {
			return false // "what do you get for the wall"
		}
	}
	for _, n := range names {
		n.Kind = Ask
		s.act(g, n)
	}
	return true
}

// tableOf reads a table that is asked after with what it is asked of: "what would it cost with five rails".
func (s *speech) tableOf(g *group, list []item) bool {
	for i, it := range list {
		if !hasValue(list[i:]) || !conditional(it) || hasValue(list[:i]) || !s.beside(g, list[:i]) {
			continue
		}
		tried, ok := s.trial(list[i:])
		if !ok {
			return false
		}
		s.act(g, tried)
		if g.topic == "layout" && g.head != nil && strings.HasPrefix(g.head.text, "what would ") {
			return true // "what would you get with six boards": what comes of it is told anyway
		}
		s.act(g, Act{Kind: Ask, Topic: g.topic})
		return true
	}
	return false
}

// beside reports whether what stands beside the name of a table may stand there.
func (s *speech) beside(g *group, list []item) bool {
	for _, it := range list {
		if it.value() {
			if g.topic == "shopping" && (it.kind == kSize || it.lim.lo.footer) && len(it.lim.lead)+len(it.lim.tail) == 0 {
				continue // "how many sticks of 2x6"
			}
			return false
		}
		switch it.kind {
		case kQuest:
			if g.topic != "cost" && g.topic != "shopping" || it.key() != "hardware" {
				return false
			}
		case kPart, kLoc, kSide, kComma, kAnd, kUp, kOut, kDown, kIt, kBestTail, kFixed, kHaveTail, kSell, kEach, kTop, kAt, kWh, kKnowing, kRest:
		case kDim, kCutWord:
			if g.topic != "cuts" || it.kind == kDim && it.key() != "long" {
				return false
			}
		default:
			return false
		}
		if it.kind == kPart && it.index > 0 && it.key() == "opening" {
			return false
		}
	}
	return true
}

// dimensionOf is what a comparison is of: a post that is taller is so in its height. It is nil for other words.
func dimensionOf(t *token) *sense {
	if t.kind == kChange && (strings.HasPrefix(t.text, "shorten") || strings.HasPrefix(t.text, "lengthen") || strings.HasPrefix(t.text, "heighten") || strings.HasPrefix(t.text, "extend")) {
		m := meaning("| post height, base height")
		return &m
	}
	if t.kind != kRel && t.kind != kOver && t.kind != kMore && t.kind != kUnder && t.kind != kThanNow {
		return nil
	}
	for _, w := range strings.Fields(t.text) {
		switch w {
		case "taller", "higher":
			m := meaning("| wall height, post height, base height, rail top")
			return &m
		case "wider", "narrower", "broader":
			m := meaning("| opening, bay, gap, rail face, bottom gap")
			return &m
		}
	}
	return nil
}

// countedPosts reports whether a number of posts is all that is named: "why two posts" is after how many are added.
func countedPosts(list []item) bool {
	list = strip(list)
	return len(list) == 2 && list[0].value() && list[0].lim.lo.unit == bare && list[0].lim.lo.val.IsInt() && list[0].lim.lo.size == "" &&
		!list[1].value() && list[1].kind == kPart && list[1].key() == "post" && list[1].index == 0
}
