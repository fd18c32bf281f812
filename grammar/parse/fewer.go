package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// oneOf reports whether one of several like things is all that follows: "a rail".
func (g *grouping) oneOf(i int) bool {
	if i+1 >= len(g.list) || g.list[i+1].value() || i+2 < len(g.list) && !g.list[i+2].breaks() {
		return false
	}
	n := g.list[i+1]
	switch n.Key() {
	case "rail", "post", "added post", "bay", "stiffener":
	default:
		return false
	}
	words := strings.Fields(n.Before)
	return n.Kind == lexicon.Part && !n.Plural() && len(words) > 0 && words[len(words)-1] == "a"
}

// setsNext reports whether a part of the wall or a value follows right away: then the word is no command.
func (g *grouping) setsNext(i int) bool {
	for i++; i < len(g.list); i++ {
		switch it := g.list[i]; {
		case it.value(), it.Kind == lexicon.Part && it.Key() != "wall", it.Kind == lexicon.Loc:
			return true
		case it.Kind == lexicon.To, it.Kind == lexicon.It:
		default:
			return false
		}
	}
	return false
}

// countOf reports whether a bare number of like things is all that follows: "drop two rails", "lose one post".
func (g *grouping) countOf(i int) bool {
	if i+2 >= len(g.list) || !g.list[i+1].value() || g.list[i+2].value() || i+3 < len(g.list) && !g.list[i+3].breaks() {
		return false
	}
	lim, n := g.list[i+1].lim, g.list[i+2]
	op, ok := lim.relation()
	if !ok || op != solver.Eq || lim.lo.Unit != measure.Bare || lim.lo.Size != "" || !lim.lo.Val.IsInt() || lim.hi != nil || n.Before != "" {
		return false
	}
	switch lex.FirstWord(g.list[i].Text) {
	case "forget", "disregard", "ignore", "cancel", "withdraw", "strike":
		return false // "forget two posts": what was said of them
	}
	part := n.As(lexicon.Part)
	if part == nil || n.Index > 0 {
		return false
	}
	switch part.Key {
	case "rail", "post", "added post", "bay", "stiffener":
		return true
	}
	return false
}

// offOf reports whether "from" or "off" follows the value at k: "remove two inches from the opening".
func (g *grouping) offOf(k int) bool {
	return k+1 < len(g.list) && !g.list[k+1].value() && (g.list[k+1].Kind == lexicon.From || g.list[k+1].Kind == lexicon.Off)
}

// speaksOf reports whether a part of that key stands in the sentence.
func (g *grouping) speaksOf(key string) bool {
	for _, it := range g.list {
		if !it.value() && it.Kind == lexicon.Part && it.Key() == key {
			return true
		}
	}
	return false
}

func (g *grouping) dropTail(i int) bool {
	for _, it := range g.g.items {
		if g.g.force == act.State && !it.value() && it.Kind == lexicon.SellLess {
			return true // "we sold the last fourteens, so scratch those" says it twice
		}
	}
	if i+1 < len(g.list) && !g.list[i+1].breaks() {
		return strings.HasSuffix(g.list[i].Text, " go") // "I can go 50 more"
	}
	if g.list[i].Key() == "bad" && g.g.force == act.State {
		return !hasFigure(g.list) // "the reading was bad, throw it away"
	}
	switch n := len(g.s.groups); {
	case g.g.force == act.Forget:
		return true
	case !g.empty() && g.g.force == act.State:
		if cut := g.lastPart(); cut > 0 {
			rest := append([]Item{}, g.g.items[cut:]...)
			g.g.items = g.g.items[:cut]
			g.flush(group{force: act.State, items: rest}) // "the span is 150, and the limit on the gap can go"
		}
		g.g.force = act.Forget
		return true
	case n > g.first && g.s.groups[n-1].force == act.Forget:
		return true
	}
	return false
}

// lastPart is where the last part of what stands begins, behind a break, where what stands before it has a figure of its own: 0 where
// nothing does.
func (g *grouping) lastPart() int {
	items := g.g.items
	for i := len(items) - 1; i > 0; i-- {
		if items[i].breaks() && i+1 < len(items) && names(items[i+1:]) && hasFigure(items[:i]) && names(items[:i]) {
			return i + 1
		}
	}
	return 0
}
