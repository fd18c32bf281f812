package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// perBay reports whether a bare whole number stands before nothing but "in bay 2" or "to a bay", after something counted.
func (k *clause) perBay(i int) bool {
	lim := k.items[i].lim
	j := i + 1
	if j < len(k.items) && !k.items[j].value() && k.items[j].kind == kIt && strings.HasPrefix(k.items[j].text, "of ") {
		j++ // "two of them in every bay"
	}
	if len(k.things) != 1 || len(k.dims) > 0 || k.things[0] != j || k.items[j].key() != "per bay" || k.items[j].text == "" {
		return false
	}
	switch w, _, _ := strings.Cut(k.items[j].text, " "); w {
	case "in", "per", "for", "to", "each", "every", "a":
	default:
		return false
	}
	return lim.lo.unit == bare && lim.lo.size == "" && lim.lo.val.IsInt() && lim.hi == nil && lim.of == nil && !exact.Int(12).Less(lim.lo.val)
}

// spareBoards reports whether spare is counted: "two spare boards", "two spares".
func (k *clause) spareBoards(i int) bool {
	for _, t := range k.things {
		if it := k.items[t]; it.key() == "spare" {
			words := strings.Fields(it.text)
			return len(words) > 1 && slices.ContainsFunc(words, isRail) || t == i+1 && it.text == "spares"
		}
	}
	return false
}

// isRail reports whether a word is one for boards.
func isRail(w string) bool {
	for _, c := range vocab().classes[w] {
		if c == vocab().ids["RAIL"] {
			return true
		}
	}
	return w == "sticks" || w == "pieces"
}

// counted is what a number right before a noun can be a number of.
func counted(n *token) set {
	s := senseOf(n)
	switch n.key() {
	case "post", "upright", "end post":
		return s.all()
	}
	return s.sure
}

// lends reports whether words that do not settle a quantity by themselves may lean on what was spoken of before.
func (k *clause) lends(senses []sense) bool {
	for _, s := range senses {
		if !s.sure.empty() {
			return false
		}
	}
	return true
}

// carries reports whether a value without a quantity says enough to be put with the last one: it has a relation, or
// corrects it.
func (k *clause) carries(lim *limit) bool {
	op, ok := lim.relation()
	return ok && op != solver.Eq || k.force == Why || k.ordinal || k.s.correcting || k.s.stating || lim.lo.size != "" || k.triesCount(lim)
}

// triesCount reports whether a bare count is tried after one that was told: "six rails" - "would five do?".
func (k *clause) triesCount(lim *limit) bool {
	return k.force == WhatIf && k.carry.kind == solver.Count && len(k.values) == 1 && lim.lo.unit == bare && lim.lo.val.IsInt() && lim.hi == nil && lim.of == nil
}

// sameKind keeps a bare count from following a length without a word.
func (k *clause) sameKind(q int, lim *limit) bool {
	if lim.lo.unit != bare || lim.lo.size != "" {
		return true
	}
	return solver.KindOf(solver.Quantity(aspects[q])) == k.carry.kind
}

// railSize reports whether a size that is said alone can only be that of the rails: "two by sixes".
func railSize(s string) bool {
	x, y, _ := strings.Cut(s, "x")
	a, _ := atoi(x)
	b, _ := atoi(y)
	return min(a, b) == 2 && max(a, b) >= 3 && max(a, b) <= 12
}

// sizeAlone reports whether a size of boards stands alone behind how the posts stand, or how many bays there are: "144 between posts,
// 2x6, five high".
func (k *clause) sizeAlone(senses []sense, lim *limit) bool {
	n := k.carry.name
	if n == nil || len(senses)+len(k.things) > 0 || k.it || !railSize(lim.lo.size) {
		return false
	}
	switch n.Quantity {
	case solver.Span, solver.Overall, solver.Centers, solver.Bays, solver.Bay:
		return true
	}
	return false
}

// squareSize reports whether a size that is said alone can only be that of posts: "6x6".
func squareSize(s string) bool { return s == "4x4" || s == "5x5" || s == "6x6" || s == "8x8" }

// boardsOffFloor reports whether boards, not one of them by its number, are a little off the floor: that is the gap at the
// bottom.
func (k *clause) boardsOffFloor(best []int, lim *limit) bool {
	if !k.about("off floor") || k.rail > 1 || !lim.lo.val.Less(exact.Int(25)) && lim.lo.unit != metric {
		return false
	}
	boards := k.about("rail")
	for _, s := range k.carry.senses {
		boards = boards || s.sure.hasName(string(solver.Rails))
	}
	for _, a := range best {
		if boards && aspects[a] == string(solver.BottomGap) {
			return true
		}
	}
	return false
}

// risesOrFalls reports whether the relation of a value is one of height: "no higher than", "lower than".
func (l *limit) risesOrFalls() bool {
	for _, t := range l.lead {
		for _, w := range strings.Fields(t.text) {
			if w == "higher" || w == "taller" || w == "lower" {
				return true
			}
		}
	}
	return false
}

// tightOrLoose reports whether the relation of a value is one of gaps.
func (l *limit) tightOrLoose() bool {
	for _, t := range l.lead {
		if strings.Contains(t.text, "tighter") || strings.Contains(t.text, "looser") {
			return true
		}
	}
	return false
}

// carried is what was spoken of before: after a size that can only be that of the rails, the rails.
func (k *clause) carried() []sense {
	if len(k.carry.senses) == 0 && k.carry.name != nil && k.carry.name.Quantity == solver.RailSize {
		return []sense{senseOf(&token{kind: kPart, found: railNoun})} // "I've got two by sixes, I want them 2-1/2 apart"
	}
	return k.carry.senses
}

// beyondFace reports whether a bare figure is more than the face of any board, so that it is something else that comes to it: "the
// boards mustn't come to more than 420".
func (k *clause) beyondFace(l *limit) bool {
	return !k.s.metric && l.lo.unit == bare && exact.Int(20).Less(l.lo.val)
}
