package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// perBay reports whether a bare whole number stands before nothing but "in bay 2" or "to a bay", after something counted.
func (k *clause) perBay(i int) bool {
	lim := k.items[i].lim
	j := i + 1
	if j < len(k.items) && !k.items[j].value() && k.items[j].Kind == lexicon.It && strings.HasPrefix(k.items[j].Text, "of ") {
		j++ // "two of them in every bay"
	}
	if len(k.things) != 1 || len(k.dims) > 0 || k.things[0] != j || k.items[j].Key() != "per bay" || k.items[j].Text == "" {
		return false
	}
	switch w, _, _ := strings.Cut(k.items[j].Text, " "); w {
	case "in", "per", "for", "to", "each", "every", "a":
	default:
		return false
	}
	return lim.lo.Unit == measure.Bare && lim.lo.Size == "" && lim.lo.Val.IsInt() && lim.hi == nil && lim.of == nil && !exact.Int(12).Less(lim.lo.Val)
}

// spareBoards reports whether spare is counted: "two spare boards", "two spares".
func (k *clause) spareBoards(i int) bool {
	for _, t := range k.things {
		if it := k.items[t]; it.Key() == "spare" {
			words := strings.Fields(it.Text)
			return len(words) > 1 && slices.ContainsFunc(words, chunk.IsRail) || t == i+1 && it.Text == "spares"
		}
	}
	return false
}

// counted is what a number right before a noun can be a number of.
func counted(n *lex.Token) lexicon.Set {
	s := senseOf(n)
	switch n.Key() {
	case "post", "upright", "end post":
		return s.All()
	}
	return s.Sure
}

// lends reports whether words that do not settle a quantity by themselves may lean on what was spoken of before.
func (k *clause) lends(senses []lexicon.Sense) bool {
	for _, s := range senses {
		if !s.Sure.Empty() {
			return false
		}
	}
	return true
}

// carries reports whether a value without a quantity says enough to be put with the last one: it has a relation, or
// corrects it.
func (k *clause) carries(lim *limit) bool {
	op, ok := lim.relation()
	return ok && op != solver.Eq || k.force == act.Why || k.ordinal || k.s.correcting || k.s.stating || lim.lo.Size != "" || k.triesCount(lim)
}

// triesCount reports whether a bare count is tried after one that was told: "six rails" - "would five do?".
func (k *clause) triesCount(lim *limit) bool {
	return k.force == act.WhatIf && k.carry.Kind == solver.Count && len(k.values) == 1 && lim.lo.Unit == measure.Bare && lim.lo.Val.IsInt() && lim.hi == nil && lim.of == nil
}

// sameKind keeps a bare count from following a length without a word.
func (k *clause) sameKind(q int, lim *limit) bool {
	if lim.lo.Unit != measure.Bare || lim.lo.Size != "" {
		return true
	}
	return solver.KindOf(solver.Quantity(lexicon.Aspects[q])) == k.carry.Kind
}

// sizeAlone reports whether a size of boards stands alone behind how the posts stand, or how many bays there are: "144 between posts,
// 2x6, five high".
func (k *clause) sizeAlone(senses []lexicon.Sense, lim *limit) bool {
	n := k.carry.Name
	if n == nil || len(senses)+len(k.things) > 0 || k.it || !lex.RailSize(lim.lo.Size) {
		return false
	}
	switch n.Quantity {
	case solver.Span, solver.Overall, solver.Centers, solver.Bays, solver.Bay:
		return true
	}
	return false
}

// SquareSize reports whether a size that is said alone can only be that of posts: "6x6".
func SquareSize(s string) bool { return s == "4x4" || s == "5x5" || s == "6x6" || s == "8x8" }

// boardsOffFloor reports whether boards, not one of them by its number, are a little off the floor: that is the gap at the
// bottom.
func (k *clause) boardsOffFloor(best []int, lim *limit) bool {
	if !k.about("off floor") || k.rail > 1 || !lim.lo.Val.Less(exact.Int(25)) && lim.lo.Unit != measure.Metric {
		return false
	}
	boards := k.about("rail")
	for _, s := range k.carry.senses {
		boards = boards || s.Sure.HasName(string(solver.Rails))
	}
	for _, a := range best {
		if boards && lexicon.Aspects[a] == string(solver.BottomGap) {
			return true
		}
	}
	return false
}

// risesOrFalls reports whether the relation of a value is one of height: "no higher than", "lower than".
func (l *limit) risesOrFalls() bool {
	for _, t := range l.lead {
		for _, w := range strings.Fields(t.Text) {
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
		if strings.Contains(t.Text, "tighter") || strings.Contains(t.Text, "looser") {
			return true
		}
	}
	return false
}

// carried is what was spoken of before: after a size that can only be that of the rails, the rails.
func (k *clause) carried() []lexicon.Sense {
	if len(k.carry.senses) == 0 && k.carry.Name != nil && k.carry.Name.Quantity == solver.RailSize {
		return []lexicon.Sense{senseOf(&lex.Token{Kind: lexicon.Part, Found: lex.RailNoun})} // "I've got two by sixes, I want them 2-1/2 apart"
	}
	return k.carry.senses
}

// beyondFace reports whether a bare figure is more than the face of any board, so that it is something else that comes to it: "the
// boards mustn't come to more than 420".
func (k *clause) beyondFace(l *limit) bool {
	return !k.s.Metric && l.lo.Unit == measure.Bare && exact.Int(20).Less(l.lo.Val)
}
