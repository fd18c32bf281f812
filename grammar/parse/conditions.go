package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// conditions puts what is tried before what is asked of it: "what would it cost if we used 1x6 rails", "with seven rails
// what would the gap be".
func (g *grouping) conditions() {
	list := g.s.groups
	for k := g.first; k+1 < len(list); k++ {
		a, b := &list[k], &list[k+1]
		switch {
		case a.force == act.Ask && b.force == act.WhatIf && b.inside && hasValue(b.items):
			*a, *b = *b, *a
			k++
		case a.force == act.WhatIf && b.force == act.WhatIf && b.inside && !hasValue(a.items) && hasValue(b.items) && named(a.items):
			a.force = act.Ask // "what would happen to the gap if …"
			*a, *b = *b, *a
			k++
		case a.force == act.WhatIf && b.force == act.WhatIf && b.inside && hasFigure(a.items) && hasFigure(b.items) && b.head != nil && strings.HasPrefix(b.head.Text, "if"):
			a.items = append(append(a.items[:len(a.items):len(a.items)], comma(b.items[0])), b.items...) // "would six boards fit if the wall was 44"
			g.s.groups = append(list[:k+1:k+1], list[k+2:]...)
			list = g.s.groups
		case a.force == act.WhatIf && b.force == act.WhatIf && !hasValue(b.items) && named(b.items):
			b.force = act.Ask // "if I drop a rail, what happens to the gap"
		case a.force == act.State && a.cmd == "" && a.head == nil && b.force == act.Ask && b.head != nil && hasValue(a.items) && (lex.FirstWord(b.head.Before) == "would" || lex.FirstWord(b.head.Before) == "could" || lex.FirstWord(b.head.Before) == "might") && !asksPolitely(b.head):
			a.force = act.WhatIf // "six rails would leave what gap"
		case a.force == act.State && a.cmd == "" && a.head == nil && b.force == act.Ask && wishesMost(a.items): // "with the fewest posts possible, where do they go"
		case a.force == act.State && a.cmd == "" && a.head == nil && b.force == act.Ask && supposes(a.items) && (hasValue(a.items) || a.items[0].Kind == lexicon.Not):
			a.force = act.WhatIf
		}
	}
}

// named reports whether a stretch names a part.
func named(list []Item) bool {
	for _, it := range list {
		if !it.value() && (it.Kind == lexicon.Part || it.Kind == lexicon.Loc) {
			return true
		}
	}
	return false
}

// supposes reports whether a stretch opens with a word that only supposes: "with seven rails", "given a wall of 40".
func supposes(list []Item) bool {
	if len(list) == 0 {
		return false
	}
	if o := opening(list); o[0] == "when" || o[0] == "once" || o[0] == "at" && list[0].value() {
		return true // "when we use six rails, what is the gap"
	}
	return conditional(list[0]) || !list[0].value() && list[0].Kind == lexicon.Not && list[0].Text == "without"
}

// conditional reports whether "with", "given" or "using" stands before an item.
func conditional(it Item) bool {
	before := it.Before
	if it.value() && len(it.lim.lead) > 0 {
		before = it.lim.lead[0].Before
	}
	if !it.value() && it.Kind == lexicon.Part && it.Key() == "wall" {
		if w := lex.FirstWord(it.Text); w == "for" || w == "with" {
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
func (s *Speech) wouldDo(g *group, list []Item) bool {
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
		if i > 0 && !it.value() && it.Kind == lexicon.To && !hasValue(list[i:]) {
			end = i
		}
	}
	kept := list[:0:0]
	for _, it := range list[:end] {
		if it.value() || it.Kind != lexicon.GoesIn && it.Kind != lexicon.Tail {
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
	a, ok := s.nameOf(&group{force: act.Ask}, list[end+1:])
	if !ok || a.Name == nil {
		return false
	}
	s.act(g, tried)
	a.Kind = act.Ask
	s.act(g, a)
	return true
}

// onlyIt reports whether a stretch is no more than "it" or "us".
func onlyIt(list []Item) bool {
	for _, it := range list {
		if it.value() || it.Kind != lexicon.It && !it.breaks() {
			return false
		}
	}
	return true
}

// trial reads a stretch as what is tried, where it can mean one thing only.
func (s *Speech) trial(list []Item) (act.Act, bool) {
	tried := act.Act{Kind: act.WhatIf}
	r := s.cut(list, carry{}, act.WhatIf)
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
func would(list []Item) bool {
	for _, it := range list {
		for _, w := range strings.Fields(it.Before) {
			if w == "would" || w == "will" || w == "might" {
				return true
			}
		}
	}
	return false
}

// wishesMost reports whether a stretch is a wish for the most or the least of something, and no figure.
func wishesMost(list []Item) bool {
	return !hasFigure(list) && slices.ContainsFunc(list, func(it Item) bool {
		return !it.value() && it.Kind == lexicon.Best && it.Key() != "largest" && it.Key() != "smallest"
	})
}

// asksPolitely reports whether a question is a request in its words: "…, could you give me the layout" tries nothing.
func asksPolitely(head *lex.Token) bool {
	f := strings.Fields(head.Before)
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
		switch lex.FirstWord(head.Text) {
		case "have", "ask", "see", "get", "trouble", "bother", "look", "hear", "know":
			return true
		}
	}
	return false
}
