package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver"
)

// wantsFigure takes a wish for a figure, without one, for the question that it is: "I need the number of bays", "could I have
// the height of the added post". A wish for the thing itself is none: "could I have an opening".
func (g *grouping) wantsFigure() {
	for k := g.first; k < len(g.s.groups); k++ {
		p := &g.s.groups[k]
		list := strip(p.items)
		if p.cmd != "" || len(list) == 0 || !onlyNames(withoutOnly(list)) || !tellsFigure(list) {
			continue
		}
		if p.force == act.State && (p.sealed || saysNeed(list)) || p.force == act.WhatIf && p.head != nil && endsInHaving(p.head.Text) {
			p.force, p.head = act.Ask, nil
		}
	}
}

// withoutOnly drops a "just" that a stretch opens with.
func withoutOnly(list []Item) []Item {
	if len(list) > 1 && !list[0].value() && list[0].Kind == lexicon.Only {
		return list[1:]
	}
	return list
}

// saysNeed reports whether a stretch opens with somebody's need: "I just need the rail count".
func saysNeed(list []Item) bool {
	var said strings.Builder
	for _, it := range list {
		said.WriteString(it.Before + " ")
		if it.value() || it.Kind != lexicon.Only {
			break
		}
	}
	f := strings.Fields(said.String())
	if len(f) < 2 || !lex.Speakers[f[0]] {
		return false
	}
	for _, w := range f[1:] {
		if w == "need" || w == "want" || w == "like" {
			return true
		}
	}
	return false
}

// figureWords name what a figure is told of: how many, how long.
var figureWords = scan.WordSet("number numbers count counts height width length size spacing distance clearance thickness measure measurement total")

// tellsFigure reports whether a stretch names a figure of something.
func tellsFigure(list []Item) bool {
	for _, it := range list {
		for _, w := range strings.Fields(it.Before + " " + it.Text) {
			if figureWords[w] {
				return true
			}
		}
	}
	return false
}

// endsInHaving reports whether words ask to be given something: "could I have", "can we get".
func endsInHaving(text string) bool {
	return strings.HasSuffix(text, " have") || strings.HasSuffix(text, " get")
}

// comesTo reports whether a question is after what comes of something: "what's that come to", "what do you have".
func comesTo(text string) bool {
	for _, end := range []string{"come to", "come out to", "comes to", "work out to", "end up at", "end up", "you have", "you get", "you make it", "you got", "have we got"} {
		if strings.HasPrefix(text, "what ") && strings.HasSuffix(text, end) {
			return true
		}
	}
	return false
}

// measuresOnly reports whether a stretch names lengths of the wall, and nothing that is bought.
func measuresOnly(list []Item) bool {
	for _, it := range list {
		if it.value() {
			return false
		}
		switch it.Key() {
		case "rail", "size", "post", "stiffener", "bracket", "wall":
			return false
		}
	}
	return true
}

// piecesOf reports whether a stretch names nothing but pieces that are cut: "each piece".
func piecesOf(list []Item) bool {
	found := false
	for _, it := range list {
		switch {
		case it.value():
			return false
		case it.Kind == lexicon.Part && (it.Key() == "rail" || it.Key() == "stiffener" || it.Key() == "post"):
			found = true
		case it.Kind == lexicon.Each || it.Kind == lexicon.Per || it.breaks():
		default:
			return false
		}
	}
	return found
}

// boundedLast finds the quantity that a line only bounds, where it says nothing else: "doorway at least 34, what does it come to".
func (s *Speech) boundedLast(head string) *solver.Name {
	if !strings.HasSuffix(head, " to") && !strings.Contains(head, "end up") || !comesTo(head) || len(s.Acts) != 1 || s.Acts[0].Kind != act.State || len(s.Acts[0].Statements) != 1 {
		return nil
	}
	st := s.Acts[0].Statements[0]
	switch st.Op {
	case solver.LT, solver.LE, solver.GT, solver.GE, solver.In:
		return &st.Name
	}
	return nil
}

// ofNothing asks back where a question leans on what was spoken of before, and nothing was: "how long is it".
func (s *Speech) ofNothing(g *group, list []Item) bool {
	if g.head != nil && len(list) == 0 && !s.ofPost() && (g.head.Text == "how tall" || g.head.Text == "how high") && severalAgain(g.items) {
		s.fail(g.head.At, askback.HowTall.Offering("how tall is the added post", "ask wall height", "ask post height"))
		return true // "how tall are they": no wall
	}
	if s.tallAgain(g, list) {
		return true
	}
	if s.C.Answered || len(s.Acts) > 0 || s.Carry.Name != nil || g.head == nil || len(list) > 0 {
		return false
	}
	switch text := g.head.Text; {
	case text == "how much":
		s.fail(g.head.At, askback.HowMuchOf.Offering("how much does it cost", "ask cost", "ask shopping"))
	case text == "how long" && spokenOfAgain(g.items):
		s.fail(g.head.At, askback.HowLong.Offering("how long do I cut the rails", "ask cuts", "ask span"))
	case g.topic == "posts" && strings.HasPrefix(text, "where") && strings.Contains(text+" ", " it "):
		s.fail(g.head.At, askback.WhereGoes.Offering("where does the post go", "ask posts", "ask marks"))
	default:
		return false
	}
	return true
}

// severalAgain reports whether words stand for several things that were spoken of: "are they".
func severalAgain(list []Item) bool {
	for _, it := range list {
		if !it.value() && it.Kind == lexicon.It && lex.Helping[lex.FirstWord(it.Text)] != "" {
			return true
		}
	}
	return false
}

// shrinks drops the verb at the end of a question after what becomes of something: "tell me what the gap shrinks to".
func shrinks(list []Item) []Item {
	n := len(list)
	if n < 2 || list[n-1].value() || list[n-1].Kind != lexicon.Change || hasValue(list[:n-1]) || !named(list[:n-1]) {
		return list
	}
	return list[:n-1]
}

// upTheWall reports whether boards are counted where they stand, one over the other: none of those to buy.
func upTheWall(g *group, list []Item) bool {
	boards, stands := false, false
	if g.head != nil {
		for _, w := range strings.Fields(g.head.Text) {
			f := lexicon.Vocab().Of(w)
			boards = boards || slices.Contains(f.Ids, lexicon.Vocab().Ids["RAIL"])
			if w == "buy" || w == "order" || w == "need" || w == "get" {
				return false
			}
		}
	}
	for _, it := range list {
		if it.value() {
			return false
		}
		boards = boards || it.Kind == lexicon.Part && it.Key() == "rail"
		stands = stands || it.Kind == lexicon.Up || it.Kind == lexicon.Loc && it.Key() == "per bay"
	}
	return boards && stands
}

// hasInHand reports whether a table is only told to be at hand before another is asked for: "I've got the drawing, what do I
// buy", "I'm holding a story stick, what marks go on it".
func (g *grouping) hasInHand(i int) bool {
	t := g.list[i]
	held := i > 0 && !g.list[i-1].value() && g.list[i-1].Kind == lexicon.Have && (strings.HasPrefix(g.list[i-1].Text, "i have") || strings.HasPrefix(g.list[i-1].Text, "we have")) && (t.Before == "" || lexicon.Vocab().Articles[t.Before])
	for _, w := range strings.Fields(t.Before) {
		held = held || atHand[w] && (strings.HasPrefix(t.Before, "i am") || strings.HasPrefix(t.Before, "we are"))
	}
	if !held || !g.empty() && !g.atBreak(i-1) {
		return false
	}
	for _, it := range g.list[i+1:] {
		if !it.value() && (it.Kind == lexicon.Wh || it.Kind == lexicon.Where || it.Kind == lexicon.Quest && !bareNoun(it.Token) || it.Kind == lexicon.Head && strings.HasSuffix(it.Text, " about")) {
			return true
		}
	}
	return false
}

var atHand = scan.WordSet("holding carrying using reading looking making working")

// onlyDated reports whether a bare noun stands in a clause that only tells when: "after I set the posts".
func (g *grouping) onlyDated(i int) bool {
	t := g.list[i]
	if !bareNoun(t.Token) {
		return false
	}
	f := strings.Fields(t.Before)
	for _, w := range f {
		if dating[w] {
			return true
		}
	}
	return len(f) > 1 && lex.Speakers[f[0]] && i > 0 && !g.list[i-1].value() && dating[lex.LastWord(g.list[i-1].Text)]
}

var dating = scan.WordSet("once after before while until till when")

// missesEach takes the cut of "what if each cut is a sixteenth too long" for what each cut misses by: no saw cut is long.
func (g *grouping) missesEach() {
	for i, it := range g.g.items {
		if g.g.force != act.WhatIf || it.value() || it.Kind != lexicon.Part || it.Key() != "kerf" || !amongEach[lex.FirstWord(it.Text)] {
			continue
		}
		t := *it.Token
		t.Kind, t.Found = lexicon.OffEach, []lexicon.Found{{Entry: missed}}
		g.g.items[i] = Item{Token: &t}
	}
}

var (
	missed    = &lexicon.Entry{Kind: lexicon.OffEach, Key: "tolerance"}
	amongEach = scan.WordSet("each every all")
)
