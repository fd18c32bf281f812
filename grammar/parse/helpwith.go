package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

func (s *Speech) helpWith(g *group) {
	list := strip(idleGone(corrected(g.items)))
	a := act.Act{Kind: act.HelpMe, Topic: g.topic}
	if g.tellsPrice() {
		s.act(g, act.Act{Kind: act.HelpMe, Topic: string(solver.Price)}) // "how do I put in a price"
		return
	}
	if len(list) > 0 || g.topic == "" {
		n, ok := s.nameOf(g, list)
		if !ok && len(list) > 0 {
			s.notUnderstood(g, list)
			return
		}
		a.Topic = n.Topic
		if n.Name != nil {
			a.Topic = string(n.Name.Quantity)
			if n.Name.Quantity == solver.Openings && g.head != nil {
				a.Topic = string(solver.Opening) // "what can I say about openings": about each of them
			}
		}
	}
	s.act(g, a)
}

// corrected returns what stands after the last word of correction: "with the gap, no, with the opening".
func corrected(list []Item) []Item {
	for i := len(list) - 1; i > 0; i-- {
		if it := list[i]; !it.value() && (it.Kind == lexicon.No || it.Kind == lexicon.Fix) && len(strip(list[i+1:])) > 0 {
			return list[i+1:]
		}
	}
	return list
}

// tellsPrice reports whether help is wanted with telling what something costs, not with asking what all of it does.
func (g *group) tellsPrice() bool {
	if g.topic == "cost" && (g.named == "price" || g.named == "prices") {
		return true
	}
	priced, thing := g.topic == "cost", false
	for _, it := range g.items {
		switch {
		case it.value():
			thing = true
		case it.Kind == lexicon.PriceVerb, it.Kind == lexicon.Quest && it.Key() == "cost":
			priced = true
		case it.Kind == lexicon.Part, it.Kind == lexicon.Item:
			thing = true
		}
	}
	return priced && thing && (g.head == nil || !strings.Contains(g.head.Text, "ask"))
}
