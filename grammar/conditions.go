package grammar

import (
	"slices"
	"strings"
)

// conditions puts what is tried before what is asked of it: "what would it cost if we used 1x6 rails", "with seven rails
// what would the gap be".
func (g *grouping) conditions() {
	list := g.s.groups
	for k := g.first; k+1 < len(list); k++ {
		a, b := &list[k], &list[k+1]
		switch {
		case a.force == Ask && b.force == WhatIf && b.inside && hasValue(b.items):
			*a, *b = *b, *a
			k++
		case a.force == WhatIf && b.force == WhatIf && b.inside && !hasValue(a.items) && hasValue(b.items) && named(a.items):
			a.force = Ask // "what would happen to the gap if …"
			*a, *b = *b, *a
			k++
		case a.force == WhatIf && b.force == WhatIf && b.inside && hasFigure(a.items) && hasFigure(b.items) && b.head != nil && strings.HasPrefix(b.head.text, "if"):
			a.items = append(append(a.items[:len(a.items):len(a.items)], comma(b.items[0])), b.items...) // "would six boards fit if the wall was 44"
			g.s.groups = append(list[:k+1:k+1], list[k+2:]...)
			list = g.s.groups
		case a.force == WhatIf && b.force == WhatIf && !hasValue(b.items) && named(b.items):
			b.force = Ask // "if I drop a rail, what happens to the gap"
		case a.force == State && a.cmd == "" && a.head == nil && b.force == Ask && b.head != nil && hasValue(a.items) && (firstWord(b.head.before) == "would" || firstWord(b.head.before) == "could" || firstWord(b.head.before) == "might") && !asksPolitely(b.head):
			a.force = WhatIf // "six rails would leave what gap"
		case a.force == State && a.cmd == "" && a.head == nil && b.force == Ask && wishesMost(a.items): // "with the fewest posts possible, where do they go"
		case a.force == State && a.cmd == "" && a.head == nil && b.force == Ask && supposes(a.items) && (hasValue(a.items) || a.items[0].kind == kNot):
			a.force = WhatIf
		}
	}
}

// named reports whether a stretch names a part.
func named(list []item) bool {
	for _, it := range list {
		if !it.value() && (it.kind == kPart || it.kind == kLoc) {
			return true
		}
	}
	return false
}

// supposes reports whether a stretch opens with a word that only supposes: "with seven rails", "given a wall of 40".
func supposes(list []item) bool {
	if len(list) == 0 {
		return false
	}
	if o := opening(list); o[0] == "when" || o[0] == "once" || o[0] == "at" && list[0].value() {
		return true // "when we use six rails, what is the gap"
	}
	return conditional(list[0]) || !list[0].value() && list[0].kind == kNot && list[0].text == "without"
}

// conditional reports whether "with", "given" or "using" stands before an item.
func conditional(it item) bool {
	before := it.before
	if it.value() && len(it.lim.lead) > 0 {
		before = it.lim.lead[0].before
	}
	if !it.value() && it.kind == kPart && it.key() == "wall" {
		if w := firstWord(it.text); w == "for" || w == "with" {
			return true // "what would you get for a wall 46 high"
		}
	}
	for _, word := range strings.Fields(before) {
		if word == "with" || word == "given" || word == "using" {
			return true
		}
	}
	return false
}

// wouldDo reads what something would do: "what would seven rails do", "what would 2x8 rails do to the gap".
func (s *speech) wouldDo(g *group, list []item) bool {
	if !would(list) {
		return false
	}
	for _, it := range list[1:] {
		if conditional(it) && !hasFigure(list[:1]) {
			return false // "how would the bays come out with three posts"
		}
	}
	end := len(list)
	for i, it := range list {
		if i > 0 && !it.value() && it.kind == kTo && !hasValue(list[i:]) {
			end = i
		}
	}
	kept := list[:0:0]
	for _, it := range list[:end] {
		if it.value() || it.kind != kGoesIn && it.kind != kTail {
			kept = append(kept, it)
		}
	}
	tried, ok := s.trial(strip(kept))
	if !ok {
		return false
	}
	if end == len(list) || onlyIt(list[end+1:]) {
		s.act(g, tried)
		return true
	}
	a, ok := s.nameOf(&group{force: Ask}, list[end+1:])
	if !ok || a.Name == nil {
		return false
	}
	s.act(g, tried)
	a.Kind = Ask
	s.act(g, a)
	return true
}

// onlyIt reports whether a stretch is no more than "it" or "us".
func onlyIt(list []item) bool {
	for _, it := range list {
		if it.value() || it.kind != kIt && !it.breaks() {
			return false
		}
	}
	return true
}

// trial reads a stretch as what is tried, where it can mean one thing only.
func (s *speech) trial(list []item) (Act, bool) {
	tried := Act{Kind: WhatIf}
	r := s.cut(list, carry{}, WhatIf)
	if len(r) != 1 || len(r[0].made) == 0 {
		return tried, false
	}
	for _, m := range r[0].made {
		if m.doubt != nil {
			return tried, false
		}
		tried.Statements = append(tried.Statements, m.st)
	}
	return tried, true
}

// would reports whether a word of what is only supposed stands before one of the items.
func would(list []item) bool {
	for _, it := range list {
		for _, w := range strings.Fields(it.before) {
			if w == "would" || w == "will" || w == "might" {
				return true
			}
		}
	}
	return false
}

// wishesMost reports whether a stretch is a wish for the most or the least of something, and no figure.
func wishesMost(list []item) bool {
	return !hasFigure(list) && slices.ContainsFunc(list, func(it item) bool {
		return !it.value() && it.kind == kBest && it.key() != "largest" && it.key() != "smallest"
	})
}

// asksPolitely reports whether a question is a request in its words: "…, could you give me the layout" tries nothing.
func asksPolitely(head *token) bool {
	f := strings.Fields(head.before)
	if len(f) < 2 {
		return false
	}
	if f[len(f)-1] == "ask" {
		return true // "might I ask"
	}
	switch f[1] {
	case "you", "anyone", "anybody", "someone", "somebody":
		return true
	case "i", "we":
		switch firstWord(head.text) {
		case "have", "ask", "see", "get", "trouble", "bother", "look", "hear", "know":
			return true
		}
	}
	return false
}
