package grammar

import (
	"strings"

	"saywright/solver"
)

// askedAfter reads a question that leans on what the line spoke of before: "one added post, how tall is it", "stiffeners at
// most 30 apart, how many per bay is that", "two stiffeners a bay, what spacing is that".
func (k *clause) askedAfter(g *group, senses []sense) (Act, bool) {
	s := k.s
	if g.force != Ask || len(k.values) > 0 || len(k.sides) > 0 || s.carry.name == nil {
		return Act{}, false
	}
	if len(k.things) == 1 && len(k.dims) == 0 && k.items[k.things[0]].kind == kPart {
		if strings.HasPrefix(string(s.carry.name.Quantity), "stiffener") && bareSpacing(k.items[k.things[0]].token) {
			return Act{Name: &solver.Name{Quantity: solver.StiffenerSpacing, Wall: k.wallName()}}, true
		}
		return Act{}, false
	}
	for _, i := range k.things {
		if k.items[i].key() != "per bay" || k.items[i].index > 0 {
			return Act{}, false
		}
	}
	if len(s.carry.senses) == 0 || len(senses) == 0 || !spokenOfAgain(g.items) && len(k.things) == 0 && !(len(k.items) == 0 && g.head != nil && (g.head.text == "how many" || g.head.key() == "apart" || dimsAlone[g.head.text] && s.carry.name.Quantity != solver.AddedPosts)) || s.askable(senses) && len(k.things) == 0 {
		return Act{}, false
	}
	if common(senses).hasName(string(s.carry.name.Quantity)) {
		return Act{}, false
	}
	carried := s.carry.senses
	if strings.HasPrefix(string(s.carry.name.Quantity), "stiffener") {
		carried = []sense{meaning("| stiffeners, stiffener spacing, stiffener size")}
	}
	return k.namePick(append(append([]sense{}, carried...), senses...))
}

// spokenOfAgain reports whether a word stands for what was spoken of last: "how tall is it".
func spokenOfAgain(list []item) bool {
	for _, it := range list {
		if !it.value() && (it.kind == kIt || it.kind == kThanNow) {
			return true
		}
	}
	return false
}

// bareSpacing reports whether a part is no more than the word for a distance between like things.
func bareSpacing(t *token) bool { return t.text == "spacing" || t.text == "spacings" }

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
func measuredHow(list []item) []item {
	for i := len(list) - 2; i > 0; i-- {
		if !list[i].breaks() {
			continue
		}
		for _, it := range list[i+1:] {
			if it.value() || it.kind != kDim && !(it.kind == kPart && it.key() == "span" && strings.Contains(it.text, "face")) {
				return list
			}
		}
		if len(list[i+1:]) == 1 && list[i+1].kind == kDim {
			return append(append([]item{}, list[:i]...), list[i+1])
		}
		return list[:i]
	}
	return list
}

// lengthAsked reads "how much is it" of a length that is named with it: "how much is it under there".
func (s *speech) lengthAsked(g *group, list []item) bool {
	if !named(list) {
		return false
	}
	was := s.carry
	a, ok := s.nameOf(&group{force: Ask}, list)
	if !ok || a.Name == nil || solver.KindOf(a.Name.Quantity) != solver.Length {
		s.carry = was
		return false
	}
	a.Kind = Ask
	s.act(g, a)
	return true
}

// joined drops the breaks of a stretch.
func joined(list []item) []item {
	var out []item
	for _, it := range list {
		if !it.breaks() {
			out = append(out, it)
		}
	}
	return out
}

// lastOf reports whether the last part that is named is of a kind.
func (k *clause) lastOf(key string) bool {
	return len(k.things) > 0 && k.items[k.things[len(k.things)-1]].key() == key
}

// counting reports whether rails are counted: "how many courses of boards".
func counting(g *group) bool {
	for _, s := range g.sense {
		if s.sure.hasName("rails") {
			return true
		}
	}
	return false
}

// perBayAsked takes "how many boards do I need in each section" for the count that it is: nothing is bought by the bay.
func (s *speech) perBayAsked(g *group, list []item) bool {
	if len(list) != 1 || list[0].value() || list[0].kind != kLoc || list[0].key() != "per bay" {
		return false
	}
	for _, w := range strings.Fields(g.head.text) {
		if strings.HasPrefix(w, "board") || strings.HasPrefix(w, "rail") || strings.HasPrefix(w, "slat") || strings.HasPrefix(w, "plank") {
			s.act(g, Act{Kind: Ask, Name: &solver.Name{Quantity: solver.Rails}})
			return true
		}
	}
	return false
}

// afterSpare reports whether boards are counted right after it was said how many extra ones to buy: they are those that are
// bought, since no spare board goes into the wall.
func (s *speech) afterSpare(list []item) bool {
	if len(s.acts) == 0 || len(list) != 1 || list[0].value() || list[0].kind != kPart || !list[0].plural() || list[0].text != "boards" && list[0].text != "pieces" {
		return false
	}
	last := s.acts[len(s.acts)-1]
	return len(last.Statements) == 1 && last.Statements[0].Name.Quantity == solver.Spare
}

// ofPost reports whether an added post was spoken of last.
func (s *speech) ofPost() bool { return s.carry.name != nil && ofPost(s.carry.name) }

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
	of := k.s.carry.name
	if n := len(k.s.acts); of == nil && n > 0 && k.s.acts[n-1].Topic == "posts" {
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
		return g.head != nil && len(k.items) == 0 && strings.HasSuffix(g.head.text, " its height")
	}
	t := k.items[k.dims[0]]
	return len(k.dims) == 1 && t.key() == "height" && t.before[strings.LastIndexByte(t.before, ' ')+1:] == "its"
}

// bought reads "how many twelve footers do I buy", "how many sixteens is that": lengths of lumber are counted to be bought.
func (s *speech) bought(g *group, list []item) bool {
	if g.head == nil || !strings.HasPrefix(g.head.text, "how many") {
		return false
	}
	footers := 0
	for _, it := range list {
		switch {
		case it.value() && it.lim.lo.footer && len(it.lim.lead)+len(it.lim.tail) == 0 && it.lim.hi == nil:
			footers++
		case it.value() && it.kind == kSize:
		case !it.value() && (it.kind == kGoesIn || it.kind == kSell || it.kind == kIt || it.kind == kTail || it.breaks()):
		default:
			return false
		}
	}
	if footers == 0 {
		return false
	}
	s.act(g, Act{Kind: Ask, Topic: "shopping"})
	return true
}

// changesHow drops the verb of "how does the gap change with 2x4s".
func changesHow(g *group, list []item) []item {
	if g.head == nil || g.head.text != "how" || !hasFigure(list) {
		return list
	}
	var out []item
	for _, it := range list {
		if it.value() || it.kind != kWayOut || !strings.HasPrefix(it.text, "change") {
			out = append(out, it)
		}
	}
	return out
}

// muchOf reads "how much is it" right after the reason of an amount was asked for: "how come there's spare, and how much is it".
func (s *speech) muchOf(g *group, list []item) bool {
	if len(s.acts) == 0 || len(list) > 0 || !strings.HasSuffix(g.head.text, " it") && !strings.HasSuffix(g.head.text, " that") {
		return false
	}
	last := s.acts[len(s.acts)-1]
	if last.Kind != Why || last.Name == nil || last.Name.Quantity != solver.Spare && solver.KindOf(last.Name.Quantity) != solver.Length {
		return false
	}
	n := *last.Name
	s.act(g, Act{Kind: Ask, Name: &n})
	return true
}

// wallsLength reports whether it is asked how long the wall is: no board of it.
func (k *clause) wallsLength(g *group) bool {
	if len(g.sense) != 1 || !g.sense[0].sure.hasName("?cuts") || len(k.things) == 0 || len(k.dims)+len(k.sides)+len(k.values) > 0 {
		return false
	}
	for _, i := range k.things {
		if key := k.items[i].key(); key != "wall" && key != "of wall" && key != "in all" {
			return false
		}
	}
	return k.about("wall") || k.about("of wall")
}

// dimsAlone are questions after a dimension of what was spoken of last, though no word stands for it any more: "three bays, how
// wide are they".
var dimsAlone = map[string]bool{"how wide": true, "how big": true, "how large": true, "how narrow": true, "how broad": true}
