package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
)

// topicFirst gives a question what was named before it: "the gap, what did it come out to", "rails, why that number",
// "seven rails, why not".
func (g *grouping) topicFirst() {
	for k := g.first; k+1 < len(g.s.groups); k++ {
		a, b := &g.s.groups[k], &g.s.groups[k+1]
		switch {
		case a.cmd != "" || a.sealed && a.force != act.State || !g.asksOf(b):
			continue
		case b.force == act.WhyNot && b.head != nil && (strings.HasPrefix(b.head.Text, "why") || strings.HasPrefix(b.head.Text, "how come")) && hasFigure(a.items) && (a.force == act.State || a.force == act.WhatIf) && len(strip(idleGone(b.items))) == 0:
			a.force, a.head = act.WhyNot, b.head
		case b.force == act.WhyNot && wanted(a) && g.s.sameFigures(a, b):
			*a = *b
		case a.force == act.State && a.head == nil && onlyNames(a.items) && b.force != act.WhyNot && sameNames(a.items, b.items):
			*a = *b // "the gap seems big, why is that gap so wide"
		case a.force == act.Ask && a.topic == "layout" && bareNoun(a.head) && b.cmd == "recap" && strings.HasPrefix(b.head.Text, "what have you got"):
			// "as for the layout, what have you got so far"
		case a.force == act.Ask && a.topic != "" && bareNoun(a.head) && a.head.As(lexicon.Part) != nil && onlyWords(a.items) && b.force == act.Ask && b.topic == "" && !names(b.items):
			t := *a.head
			t.Kind = lexicon.Part
			b.items = append([]Item{{Token: &t}}, b.items...) // "the posts, how tall are they"
			*a = *b
		case a.force == act.State && a.head == nil && piecesOf(a.items) && b.force == act.Ask && b.topic == "cuts":
			*a = *b // "each piece, what's it cut at"
		case (a.force == act.Check && a.head != nil && doubts(a.head.Text) || a.force == act.State && a.head == nil || a.force == act.WhatIf && a.head != nil && strings.HasSuffix(a.head.Text, "about")) && onlyNames(a.items) && !names(b.items) && (b.cmd == "why that" || b.cmd == "" && (g.free(b) || (b.topic == "layout" || b.topic == "cost") && b.head != nil && comesTo(b.head.Text) && measuresOnly(a.items))):
			if b.topic == "cost" || b.topic == "layout" {
				b.topic, b.sense = "", []lexicon.Sense{lexicon.Meaning("| *")} // "floor to the first board, how much is it"
			}
			if b.cmd == "why that" {
				b.force, b.cmd = act.Why, ""
			}
			b.items = append(onlyThings(a.items), b.items...)
			*a = *b
		case a.force == act.Ask && a.topic != "" && bareNoun(a.head) && onlyWords(a.items) && (b.force == act.Why || b.cmd == "why that") && b.topic == "" && len(strip(idleGone(b.items))) == 0:
			a.force, a.head = act.Why, b.head // "the cuts, how did you figure them"
		default:
			continue
		}
		g.s.groups = append(g.s.groups[:k+1], g.s.groups[k+2:]...)
	}
}

// asksOf reports whether a group is a question that may lean on what stands before it.
func (g *grouping) asksOf(b *group) bool {
	switch b.force {
	case act.Ask, act.Why, act.WhyNot, act.Teach:
		return b.cmd == ""
	}
	return b.cmd == "why that" || b.cmd == "recap"
}

// free reports whether a question can be after a thing named before it: it names no table, or one that is asked after by
// the place or the length of a thing alone.
func (g *grouping) free(b *group) bool {
	return b.topic == "" || b.topic == "cost" && b.head != nil && strings.HasPrefix(b.head.Text, "how much is it") || b.topic == "posts" && b.head != nil && strings.HasPrefix(b.head.Text, "where")
}

// doubts reports whether somebody doubts what a claim tells.
func doubts(text string) bool {
	for _, w := range []string{"doubt", "question", "dispute", "quer", "challeng"} {
		if strings.Contains(text, " "+w) {
			return true
		}
	}
	return false
}

// onlyNames reports whether a stretch does nothing but name a thing.
func onlyNames(list []Item) bool {
	found := false
	for _, it := range list {
		if it.value() {
			return false
		}
		switch it.Kind {
		case lexicon.Part, lexicon.Loc, lexicon.FromSide, lexicon.Between:
			found = true
		case lexicon.Dim, lexicon.Comma, lexicon.It, lexicon.Per, lexicon.CutWord, lexicon.Wall, lexicon.TailFill, lexicon.Rel, lexicon.Measured, lexicon.Up, lexicon.Knowing, lexicon.Index, lexicon.Ordinal:
			if it.Kind == lexicon.Rel && it.Key() != "=" {
				return false
			}
		default:
			return false
		}
	}
	return found
}

// names reports whether a stretch names a thing of its own.
func names(list []Item) bool {
	for _, it := range list {
		if !it.value() && (it.Kind == lexicon.Part && !bareSpacing(it.Token) || it.Kind == lexicon.FromSide) {
			return true
		}
	}
	return hasFigure(list)
}

// wanted reports whether a group only tells what was once wanted: "I wanted seven rails, why couldn't you do seven".
func wanted(a *group) bool {
	if a.force != act.State || len(a.items) == 0 {
		return false
	}
	said := opening(a.items)
	return strings.HasSuffix(said[1], "ed") && (said[0] == "i" || said[0] == "we") || a.sealed && len(a.items) > 0
}

// sameFigures reports whether two groups say the same thing.
func (s *Speech) sameFigures(a, b *group) bool {
	x, y := s.cut(strip(a.items), s.Carry, act.State), s.cut(strip(b.items), s.Carry, act.State)
	return len(x) == 1 && len(y) == 1 && len(x[0].made) > 0 && says(x[0].made) == says(y[0].made)
}

// farewell reports whether group i takes leave: nothing is asked for after it. "That's everything, crunch it" does not.
func (s *Speech) farewell(i int) bool {
	text := " " + s.groups[i].head.Text + " "
	if !strings.HasPrefix(text, " that is ") && !strings.HasPrefix(text, " this is ") && !strings.HasPrefix(text, " done ") && !strings.HasPrefix(text, " i am ") {
		return true
	}
	if parting(text) {
		return true
	}
	for _, g := range s.groups[i+1:] {
		if g.force == act.Ask || g.force == act.Why || g.force == act.WhatIf || g.force == act.WhyNot || g.force == act.Check {
			return false
		}
	}
	return true
}

// parting reports whether words can only take leave: "that's it for me today".
func parting(text string) bool {
	for _, w := range strings.Fields(text) {
		switch w {
		case "today", "day", "bye", "goodbye", "now", "night", "tomorrow":
			return true
		}
	}
	return false
}

// liftsUp reports whether what a clause lifts is a part of the wall, and no limit or rule.
func (g *grouping) liftsUp(i int) bool {
	part := false
	for _, it := range g.list[i+1:] {
		if it.breaks() {
			break
		}
		if it.value() {
			if op, ok := it.lim.relation(); ok && (upper(op) || lower(op)) {
				return false
			}
			continue
		}
		if it.As(lexicon.Lim) != nil || it.As(lexicon.Bound) != nil || it.As(lexicon.ForgetTail) != nil || it.Kind == lexicon.Rel || it.Kind == lexicon.Under || it.Kind == lexicon.Over || it.Kind == lexicon.Unknown {
			return false
		}
		part = part || it.Kind == lexicon.Part && it.Key() != "budget" && !strings.Contains(it.Text, "gap")
	}
	return part
}

// thenDone reports whether somebody leaves after what was asked for: "the cuts as a spreadsheet, and then we're done".
func (g *grouping) thenDone(t Item) bool {
	done := strings.HasPrefix(t.Text, "we are ") || strings.HasPrefix(t.Text, "i am ")
	return done && (strings.HasSuffix(t.Text, " here") || g.g.force == act.Ask && strings.Contains(t.Before, "then"))
}

// reasonOf names what a "why that" can only be after: what the same line asked just before.
func (s *Speech) reasonOf() (act.Act, bool) {
	if len(s.Acts) == 0 {
		return act.Act{}, false
	}
	last := s.Acts[len(s.Acts)-1]
	if last.Kind != act.Ask || last.As != "" || last.Name == nil && last.Topic == "" {
		return act.Act{}, false
	}
	return act.Act{Kind: act.Why, Name: last.Name, Topic: last.Topic, Wall: last.Wall}, true
}

// sameNames reports whether a stretch names nothing that the other does not name as well.
func sameNames(a, b []Item) bool {
	for _, x := range a {
		if x.value() || x.Kind != lexicon.Part && x.Kind != lexicon.Loc {
			continue
		}
		found := false
		for _, y := range b {
			found = found || !y.value() && y.Kind == x.Kind && y.Key() == x.Key() && y.Index == x.Index
		}
		if !found {
			return false
		}
	}
	return true
}

// onlyWords reports whether nothing of a stretch names a thing or a value.
func onlyWords(list []Item) bool {
	for _, it := range list {
		if it.value() || it.Kind != lexicon.Dim && it.Kind != lexicon.WhyFill && !it.breaks() && !idle(it.Token) {
			return false
		}
	}
	return true
}

// onlyThings drops from what is named before a question the words that lead over to it: "gap comes out at what".
func onlyThings(list []Item) []Item {
	var out []Item
	for _, it := range strip(list) {
		if it.Kind != lexicon.Rel && it.Kind != lexicon.Measured && it.Kind != lexicon.Per && it.Kind != lexicon.It {
			out = append(out, it)
		}
	}
	return strip(out)
}
