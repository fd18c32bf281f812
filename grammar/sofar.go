package grammar

import "strings"

// asksWhy reports whether a reason was asked for in this sentence.
func (l *lexing) asksWhy() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; {
		case t.kind == kStop || t.kind == kQMark:
			return false
		case t.kind == kHead && t.key() == string(Why), t.kind == kCmd && t.key() == "why that":
			return true
		}
	}
	return false
}

// soWide is what "so wide", after a why, lets be asked for: the thing that is so, in that direction.
func soWide(text string) []sense {
	for _, w := range strings.Fields(text) {
		switch w {
		case "wide", "broad", "narrow":
			return []sense{meaning("| opening, bay, rail face, gap, kerf")}
		case "high", "tall", "low":
			return []sense{meaning("wall height | post height, base height, rail top")}
		case "long", "short":
			return []sense{meaning("?cuts | span, bay, overall, post height")}
		}
	}
	return nil
}

// whyFill takes "so small" where a reason is asked for: it tells in which direction, where the thing has several.
func (g *grouping) whyFill(i int) bool {
	if g.g.force == Why {
		if placedAt(g.list[i].text) && g.g.topic == "" && onlyPosts(g.g.items) {
			g.g.topic = "posts" // "why's the new post over there"
		}
		g.g.soft = append(g.g.soft, soWide(g.list[i].text)...)
		return true
	}
	return g.g.force == Ask && g.g.head != nil && g.g.head.text == "how"
}

// whySoWide finds what a reason is asked for with the direction it is told with: "why is the new post that tall".
func (s *speech) whySoWide(g *group, list []item) (Act, bool) {
	if len(g.soft) == 0 {
		return Act{}, false
	}
	h := *g
	h.sense = append(append([]sense{}, g.sense...), g.soft...)
	return s.nameOf(&h, list)
}

// withoutRight leaves out a "right" that only begins to speak: "right, that's me done". It stays where a side is spoken of.
func withoutRight(in []token, c Context) []token {
	if len(in) < 3 || in[0].kind != kSide || in[0].text != "right" || in[1].kind != kComma || c.Subject != nil {
		return in
	}
	for i := range in[2:] {
		switch t := &in[2+i]; {
		case t.kind == kSide, t.kind == kFromSide, t.is(kFix), t.kind == kPart && strings.HasPrefix(t.key(), "opening"):
			return in
		}
	}
	return in[2:]
}

// namesPast is names, past articles.
func (l *lexing) namesPast(i int) bool {
	for vocab().articles[l.word(i)] {
		i++
	}
	for _, f := range vocab().match(l.reader.atoms, i) {
		if f.entry.kind == kPart {
			return true
		}
	}
	return false
}

// pleased makes a question of names alone that end in a please: "rail count, please".
func pleased(atoms []atom, in []token) []token {
	n := len(atoms)
	for n > 0 && (atoms[n-1].text == "." || atoms[n-1].text == "!") {
		n--
	}
	if n == 0 || atoms[n-1].text != "please" && atoms[0].text != "please" && !listsNames(in) {
		return in
	}
	part := false
	if i := len(in) - 1; i > 0 && in[i].kind == kNum && in[i].before == "all" && in[i-1].kind == kComma {
		in = in[:i-1] // "gap, opening, post height, all three please"
	}
	for i := range in {
		switch in[i].kind {
		case kPart, kLoc:
			part = part || in[i].key() != "wall"
		case kDim, kAnd, kComma, kStop, kKnowing, kTailFill:
		default:
			return in
		}
	}
	for len(in) > 0 && (in[len(in)-1].kind == kStop || in[len(in)-1].kind == kComma) {
		in = in[:len(in)-1]
	}
	if !part {
		return in
	}
	return append(in, token{kind: kQMark, text: "?", at: atoms[n-1].at, end: atoms[n-1].end})
}

// besideSteps are words after which steps are a stair.
var besideSteps = map[string]bool{"with": true, "of": true, "near": true, "by": true, "beside": true, "to": true, "up": true, "on": true, "from": true, "at": true, "over": true, "facing": true}
