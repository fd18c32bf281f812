package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// soWide is what "so wide", after a why, lets be asked for: the thing that is so, in that direction.
func soWide(text string) []lexicon.Sense {
	for _, w := range strings.Fields(text) {
		switch w {
		case "wide", "broad", "narrow":
			return []lexicon.Sense{lexicon.Meaning("| opening, bay, rail face, gap, kerf")}
		case "high", "tall", "low":
			return []lexicon.Sense{lexicon.Meaning("wall height | post height, base height, rail top")}
		case "long", "short":
			return []lexicon.Sense{lexicon.Meaning("?cuts | span, bay, overall, post height")}
		}
	}
	return nil
}

// whyFill takes "so small" where a reason is asked for: it tells in which direction, where the thing has several.
func (g *grouping) whyFill(i int) bool {
	if g.g.force == act.Why {
		if placedAt(g.list[i].Text) && g.g.topic == "" && onlyPosts(g.g.items) {
			g.g.topic = "posts" // "why's the new post over there"
		}
		g.g.soft = append(g.g.soft, soWide(g.list[i].Text)...)
		return true
	}
	return g.g.force == act.Ask && g.g.head != nil && g.g.head.Text == "how"
}

// whySoWide finds what a reason is asked for with the direction it is told with: "why is the new post that tall".
func (s *Speech) whySoWide(g *group, list []Item) (act.Act, bool) {
	if len(g.soft) == 0 {
		return act.Act{}, false
	}
	h := *g
	h.sense = append(append([]lexicon.Sense{}, g.sense...), g.soft...)
	return s.nameOf(&h, list)
}

// WithoutRight leaves out a "right" that only begins to speak: "right, that's me done". It stays where a side is spoken of.
func WithoutRight(in []lex.Token, c act.Context) []lex.Token {
	if len(in) < 3 || in[0].Kind != lexicon.Side || in[0].Text != "right" || in[1].Kind != lexicon.Comma || c.Subject != nil {
		return in
	}
	for i := range in[2:] {
		switch t := &in[2+i]; {
		case t.Kind == lexicon.Side, t.Kind == lexicon.FromSide, t.Is(lexicon.Fix), t.Kind == lexicon.Part && strings.HasPrefix(t.Key(), "opening"):
			return in
		}
	}
	return in[2:]
}
