package grammar

import "strings"

// topicFirst gives a question what was named before it: "the gap, what did it come out to", "rails, why that number",
// "seven rails, why not".
func (g *grouping) topicFirst() {
	for k := g.first; k+1 < len(g.s.groups); k++ {
		a, b := &g.s.groups[k], &g.s.groups[k+1]
		switch {
		case a.cmd != "" || a.sealed && a.force != State || !g.asksOf(b):
			continue
		case b.force == WhyNot && b.head != nil && (strings.HasPrefix(b.head.text, "why") || strings.HasPrefix(b.head.text, "how come")) && hasFigure(a.items) && (a.force == State || a.force == WhatIf) && len(strip(idleGone(b.items))) == 0:
			a.force, a.head = WhyNot, b.head
		case b.force == WhyNot && wanted(a) && g.s.sameFigures(a, b):
			*a = *b
		case a.force == State && a.head == nil && onlyNames(a.items) && b.force != WhyNot && sameNames(a.items, b.items):
			*a = *b // "the gap seems big, why is that gap so wide"
		case a.force == Ask && a.topic == "layout" && bareNoun(a.head) && b.cmd == "recap" && strings.HasPrefix(b.head.text, "what have you got"):
			// "as for the layout, what have you got so far"
		case a.force == Ask && a.topic != "" && bareNoun(a.head) && a.head.as(kPart) != nil && onlyWords(a.items) && b.force == Ask && b.topic == "" && !names(b.items):
			t := *a.head
			t.kind = kPart
			b.items = append([]item{{token: &t}}, b.items...) // "the posts, how tall are they"
			*a = *b
		case a.force == State && a.head == nil && piecesOf(a.items) && b.force == Ask && b.topic == "cuts":
			*a = *b // "each piece, what's it cut at"
		case (a.force == Check && a.head != nil && doubts(a.head.text) || a.force == State && a.head == nil || a.force == WhatIf && a.head != nil && strings.HasSuffix(a.head.text, "about")) && onlyNames(a.items) && !names(b.items) && (b.cmd == "why that" || b.cmd == "" && (g.free(b) || (b.topic == "layout" || b.topic == "cost") && b.head != nil && comesTo(b.head.text) && measuresOnly(a.items))):
			if b.topic == "cost" || b.topic == "layout" {
				b.topic, b.sense = "", []sense{meaning("| *")} // "floor to the first board, how much is it"
			}
			if b.cmd == "why that" {
				b.force, b.cmd = Why, ""
			}
			b.items = append(onlyThings(a.items), b.items...)
			*a = *b
		case a.force == Ask && a.topic != "" && bareNoun(a.head) && onlyWords(a.items) && (b.force == Why || b.cmd == "why that") && b.topic == "" && len(strip(idleGone(b.items))) == 0:
			a.force, a.head = Why, b.head // "the cuts, how did you figure them"
		default:
			continue
		}
		g.s.groups = append(g.s.groups[:k+1], g.s.groups[k+2:]...)
	}
}

// asksOf reports whether a group is a question that may lean on what stands before it.
func (g *grouping) asksOf(b *group) bool {
	switch b.force {
	case Ask, Why, WhyNot, Teach:
		return b.cmd == ""
	}
	return b.cmd == "why that" || b.cmd == "recap"
}

// free reports whether a question can be after a thing named before it: it names no table, or one that is asked after by
// the place or the length of a thing alone.
func (g *grouping) free(b *group) bool {
	return b.topic == "" || b.topic == "cost" && b.head != nil && strings.HasPrefix(b.head.text, "how much is it") || b.topic == "posts" && b.head != nil && strings.HasPrefix(b.head.text, "where")
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
func onlyNames(list []item) bool {
	found := false
	for _, it := range list {
		if it.value() {
			return false
		}
		switch it.kind {
		case kPart, kLoc, kFromSide, kBetween:
			found = true
		case kDim, kComma, kIt, kPer, kCutWord, kWall, kTailFill, kRel, kMeasured, kUp, kKnowing, kIndex, kOrdinal:
			if it.kind == kRel && it.key() != "=" {
				return false
			}
		default:
			return false
		}
	}
	return found
}

// names reports whether a stretch names a thing of its own.
func names(list []item) bool {
	for _, it := range list {
		if !it.value() && (it.kind == kPart && !bareSpacing(it.token) || it.kind == kFromSide) {
			return true
		}
	}
	return hasFigure(list)
}

// wanted reports whether a group only tells what was once wanted: "I wanted seven rails, why couldn't you do seven".
func wanted(a *group) bool {
	if a.force != State || len(a.items) == 0 {
		return false
	}
	said := opening(a.items)
	return strings.HasSuffix(said[1], "ed") && (said[0] == "i" || said[0] == "we") || a.sealed && len(a.items) > 0
}

// sameFigures reports whether two groups say the same thing.
func (s *speech) sameFigures(a, b *group) bool {
	x, y := s.cut(strip(a.items), s.carry, State), s.cut(strip(b.items), s.carry, State)
	return len(x) == 1 && len(y) == 1 && len(x[0].made) > 0 && says(x[0].made) == says(y[0].made)
}

// farewell reports whether group i takes leave: nothing is asked for after it. "That's everything, crunch it" does not.
func (s *speech) farewell(i int) bool {
	text := " " + s.groups[i].head.text + " "
	if !strings.HasPrefix(text, " that is ") && !strings.HasPrefix(text, " this is ") && !strings.HasPrefix(text, " done ") && !strings.HasPrefix(text, " i am ") {
		return true
	}
	if parting(text) {
		return true
	}
	for _, g := range s.groups[i+1:] {
		if g.force == Ask || g.force == Why || g.force == WhatIf || g.force == WhyNot || g.force == Check {
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
		if it.as(kLim) != nil || it.as(kBound) != nil || it.as(kForgetTail) != nil || it.kind == kRel || it.kind == kUnder || it.kind == kOver || it.kind == kUnknown {
			return false
		}
		part = part || it.kind == kPart && it.key() != "budget" && !strings.Contains(it.text, "gap")
	}
	return part
}

// thenDone reports whether somebody leaves after what was asked for: "the cuts as a spreadsheet, and then we're done".
func (g *grouping) thenDone(t item) bool {
	done := strings.HasPrefix(t.text, "we are ") || strings.HasPrefix(t.text, "i am ")
	return done && (strings.HasSuffix(t.text, " here") || g.g.force == Ask && strings.Contains(t.before, "then"))
}

// reasonOf names what a "why that" can only be after: what the same line asked just before.
func (s *speech) reasonOf() (Act, bool) {
	if len(s.acts) == 0 {
		return Act{}, false
	}
	last := s.acts[len(s.acts)-1]
	if last.Kind != Ask || last.As != "" || last.Name == nil && last.Topic == "" {
		return Act{}, false
	}
	return Act{Kind: Why, Name: last.Name, Topic: last.Topic, Wall: last.Wall}, true
}

// sameNames reports whether a stretch names nothing that the other does not name as well.
func sameNames(a, b []item) bool {
	for _, x := range a {
		if x.value() || x.kind != kPart && x.kind != kLoc {
			continue
		}
		found := false
		for _, y := range b {
			found = found || !y.value() && y.kind == x.kind && y.key() == x.key() && y.index == x.index
		}
		if !found {
			return false
		}
	}
	return true
}

// onlyWords reports whether nothing of a stretch names a thing or a value.
func onlyWords(list []item) bool {
	for _, it := range list {
		if it.value() || it.kind != kDim && it.kind != kWhyFill && !it.breaks() && !idle(it.token) {
			return false
		}
	}
	return true
}

// onlyThings drops from what is named before a question the words that lead over to it: "gap comes out at what".
func onlyThings(list []item) []item {
	var out []item
	for _, it := range strip(list) {
		if it.kind != kRel && it.kind != kMeasured && it.kind != kPer && it.kind != kIt {
			out = append(out, it)
		}
	}
	return strip(out)
}
