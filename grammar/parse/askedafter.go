package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// askedAfter reads a question that leans on what the line spoke of before: "one added post, how tall is it", "stiffeners at
// most 30 apart, how many per bay is that", "two stiffeners a bay, what spacing is that".
func (k *clause) askedAfter(g *group, senses []lexicon.Sense) (act.Act, bool) {
	s := k.s
	if g.force != act.Ask || len(k.values) > 0 || len(k.sides) > 0 || s.Carry.Name == nil {
		return act.Act{}, false
	}
	if len(k.things) == 1 && len(k.dims) == 0 && k.items[k.things[0]].Kind == lexicon.Part {
		if strings.HasPrefix(string(s.Carry.Name.Quantity), "stiffener") && bareSpacing(k.items[k.things[0]].Token) {
			return act.Act{Name: &solver.Name{Quantity: solver.StiffenerSpacing, Wall: k.wallName()}}, true
		}
		return act.Act{}, false
	}
	for _, i := range k.things {
		if k.items[i].Key() != "per bay" || k.items[i].Index > 0 {
			return act.Act{}, false
		}
	}
	if len(s.Carry.senses) == 0 || len(senses) == 0 || !spokenOfAgain(g.items) && len(k.things) == 0 && !(len(k.items) == 0 && g.head != nil && (g.head.Text == "how many" || g.head.Key() == "apart" || dimsAlone[g.head.Text] && s.Carry.Name.Quantity != solver.AddedPosts)) || s.askable(senses) && len(k.things) == 0 {
		return act.Act{}, false
	}
	if lexicon.Common(senses).HasName(string(s.Carry.Name.Quantity)) {
		return act.Act{}, false
	}
	carried := s.Carry.senses
	if strings.HasPrefix(string(s.Carry.Name.Quantity), "stiffener") {
		carried = []lexicon.Sense{lexicon.Meaning("| stiffeners, stiffener spacing, stiffener size")}
	}
	return k.namePick(append(append([]lexicon.Sense{}, carried...), senses...))
}

// spokenOfAgain reports whether a word stands for what was spoken of last: "how tall is it".
func spokenOfAgain(list []Item) bool {
	for _, it := range list {
		if !it.value() && (it.Kind == lexicon.It || it.Kind == lexicon.ThanNow) {
			return true
		}
	}
	return false
}

// bareSpacing reports whether a part is no more than the word for a distance between like things.
func bareSpacing(t *lex.Token) bool { return t.Text == "spacing" || t.Text == "spacings" }

// askedMeasure reports whether a verb only tells that a length is after: "what do the bays measure".
func askedMeasure(text string) bool {
	switch text {
	case "measure", "measures", "measured", "measuring":
		return true
	}
	return false
}

// measuredHow drops from the end of a question how a length is measured: "how far apart do the boards sit, edge to edge",
// "what do the bays measure, post face to post face".
func measuredHow(list []Item) []Item {
	for i := len(list) - 2; i > 0; i-- {
		if !list[i].breaks() {
			continue
		}
		for _, it := range list[i+1:] {
			if it.value() || it.Kind != lexicon.Dim && !(it.Kind == lexicon.Part && it.Key() == "span" && strings.Contains(it.Text, "face")) {
				return list
			}
		}
		if len(list[i+1:]) == 1 && list[i+1].Kind == lexicon.Dim {
			return append(append([]Item{}, list[:i]...), list[i+1])
		}
		return list[:i]
	}
	return list
}

// lengthAsked reads "how much is it" of a length that is named with it: "how much is it under there".
func (s *Speech) lengthAsked(g *group, list []Item) bool {
	if !named(list) {
		return false
	}
	was := s.Carry
	a, ok := s.nameOf(&group{force: act.Ask}, list)
	if !ok || a.Name == nil || solver.KindOf(a.Name.Quantity) != solver.Length {
		s.Carry = was
		return false
	}
	a.Kind = act.Ask
	s.act(g, a)
	return true
}

// joined drops the breaks of a stretch.
func joined(list []Item) []Item {
	var out []Item
	for _, it := range list {
		if !it.breaks() {
			out = append(out, it)
		}
	}
	return out
}

// LastOf reports whether the last part that is named is of a kind.
func (k *clause) lastOf(key string) bool {
	return len(k.things) > 0 && k.items[k.things[len(k.things)-1]].Key() == key
}

// counting reports whether rails are counted: "how many courses of boards".
func counting(g *group) bool {
	for _, s := range g.sense {
		if s.Sure.HasName("rails") {
			return true
		}
	}
	return false
}

// perBayAsked takes "how many boards do I need in each section" for the count that it is: nothing is bought by the bay.
func (s *Speech) perBayAsked(g *group, list []Item) bool {
	if len(list) != 1 || list[0].value() || list[0].Kind != lexicon.Loc || list[0].Key() != "per bay" {
		return false
	}
	for _, w := range strings.Fields(g.head.Text) {
		if strings.HasPrefix(w, "board") || strings.HasPrefix(w, "rail") || strings.HasPrefix(w, "slat") || strings.HasPrefix(w, "plank") {
			s.act(g, act.Act{Kind: act.Ask, Name: &solver.Name{Quantity: solver.Rails}})
			return true
		}
	}
	return false
}

// afterSpare reports whether boards are counted right after it was said how many extra ones to buy: they are those that are
// bought, since no spare board goes into the wall.
func (s *Speech) afterSpare(list []Item) bool {
	if len(s.Acts) == 0 || len(list) != 1 || list[0].value() || list[0].Kind != lexicon.Part || !list[0].Plural() || list[0].Text != "boards" && list[0].Text != "pieces" {
		return false
	}
	last := s.Acts[len(s.Acts)-1]
	return len(last.Statements) == 1 && last.Statements[0].Name.Quantity == solver.Spare
}

// ofPost reports whether an added post was spoken of last.
func (s *Speech) ofPost() bool { return s.Carry.Name != nil && ofPost(s.Carry.Name) }

func ofPost(n *solver.Name) bool {
	switch n.Quantity {
	case solver.AddedPosts, solver.AddedPostSize, solver.PostHeight, solver.PostFromLeft, solver.PostFromRight, solver.BaseHeight:
		return true
	}
	return false
}

// itsHeight returns which height "its height" asks after behind what was spoken of ("the post goes where, and why its height"), and whether it leans
// on that at all; nil where that is an opening, a bay or a gap, which have no height.
func (k *clause) itsHeight(g *group) (*solver.Name, bool) {
	of := k.s.Carry.Name
	if n := len(k.s.Acts); of == nil && n > 0 && k.s.Acts[n-1].Topic == "posts" {
		of = &solver.Name{Quantity: solver.AddedPosts} // "where does the post go, and what is its height"
	}
	if of == nil || len(k.things)+len(k.sides)+len(k.values) > 0 || !k.saysItsHeight(g) {
		return nil, false
	}
	if ofPost(of) {
		return &solver.Name{Quantity: solver.PostHeight, Post: of.Post, Wall: of.Wall}, true
	}
	switch of.Quantity {
	case solver.WallHeight, solver.Span, solver.Overall, solver.Centers, solver.Drop, solver.Goal:
		return nil, false
	}
	return nil, true
}

func (k *clause) saysItsHeight(g *group) bool {
	if len(k.dims) == 0 {
		return g.head != nil && len(k.items) == 0 && strings.HasSuffix(g.head.Text, " its height")
	}
	t := k.items[k.dims[0]]
	return len(k.dims) == 1 && t.Key() == "height" && t.Before[strings.LastIndexByte(t.Before, ' ')+1:] == "its"
}

// bought reads "how many twelve footers do I buy", "how many sixteens is that": lengths of lumber are counted to be bought.
func (s *Speech) bought(g *group, list []Item) bool {
	if g.head == nil || !strings.HasPrefix(g.head.Text, "how many") {
		return false
	}
	footers := 0
	for _, it := range list {
		switch {
		case it.value() && it.lim.lo.Footer && len(it.lim.lead)+len(it.lim.tail) == 0 && it.lim.hi == nil:
			footers++
		case it.value() && it.Kind == lexicon.Size:
		case !it.value() && (it.Kind == lexicon.GoesIn || it.Kind == lexicon.Sell || it.Kind == lexicon.It || it.Kind == lexicon.Tail || it.breaks()):
		default:
			return false
		}
	}
	if footers == 0 {
		return false
	}
	s.act(g, act.Act{Kind: act.Ask, Topic: "shopping"})
	return true
}

// changesHow drops the verb of "how does the gap change with 2x4s".
func changesHow(g *group, list []Item) []Item {
	if g.head == nil || g.head.Text != "how" || !hasFigure(list) {
		return list
	}
	var out []Item
	for _, it := range list {
		if it.value() || it.Kind != lexicon.WayOut || !strings.HasPrefix(it.Text, "change") {
			out = append(out, it)
		}
	}
	return out
}

// muchOf reads "how much is it" right after the reason of an amount was asked for: "how come there's spare, and how much is it".
func (s *Speech) muchOf(g *group, list []Item) bool {
	if len(s.Acts) == 0 || len(list) > 0 || !strings.HasSuffix(g.head.Text, " it") && !strings.HasSuffix(g.head.Text, " that") {
		return false
	}
	last := s.Acts[len(s.Acts)-1]
	if last.Kind != act.Why || last.Name == nil || last.Name.Quantity != solver.Spare && solver.KindOf(last.Name.Quantity) != solver.Length {
		return false
	}
	n := *last.Name
	s.act(g, act.Act{Kind: act.Ask, Name: &n})
	return true
}

// wallsLength reports whether it is asked how long the wall is: no board of it.
func (k *clause) wallsLength(g *group) bool {
	if len(g.sense) != 1 || !g.sense[0].Sure.HasName("?cuts") || len(k.things) == 0 || len(k.dims)+len(k.sides)+len(k.values) > 0 {
		return false
	}
	for _, i := range k.things {
		if key := k.items[i].Key(); key != "wall" && key != "of wall" && key != "in all" {
			return false
		}
	}
	return k.about("wall") || k.about("of wall")
}

// dimsAlone are questions after a dimension of what was spoken of last, though no word stands for it any more: "three bays, how
// wide are they".
var dimsAlone = map[string]bool{"how wide": true, "how big": true, "how large": true, "how narrow": true, "how broad": true}
