package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// puzzled takes a stretch that no way of cutting understands: it finds the clause that is to blame, takes what was
// already chosen for it, and else asks about that clause alone.
func (s *Speech) puzzled(g *group, part []Item, c carry) (reading, bool) {
	from, to := s.culprit(g, part, c)
	one, ok := s.settledValue(g, part[from:to])
	if !ok {
		s.notUnderstood(g, part[from:to])
		return reading{}, false
	}
	before := reading{carry: c}
	if list := s.cut(part[:from], c, g.force); len(list) > 0 {
		before = list[0]
	}
	one = join(before, one)
	if to == len(part) {
		return one, true
	}
	rest := s.cut(part[to:], one.carry, g.force)
	if len(rest) == 1 {
		return join(one, rest[0]), true
	}
	after, ok := s.puzzled(g, part[to:], one.carry)
	return join(one, after), ok
}

// culprit finds which of the clauses between commas and "and"s is to blame: the one after the longest beginning that is
// understood. Its end is where the rest is understood again, else where the next clause begins.
func (s *Speech) culprit(g *group, part []Item, c carry) (from, to int) {
	var breaks []int
	for i, it := range part {
		if it.breaks() {
			breaks = append(breaks, i)
		}
	}
	if len(breaks) > 12 {
		return 0, len(part) // too much for one breath
	}
	for _, b := range slices.Backward(breaks) {
		if hasValue(part[:b]) && len(s.cut(part[:b], c, g.force)) > 0 {
			from = b
			break
		}
	}
	for from < len(part) && part[from].breaks() {
		from++
	}
	if from == len(part) {
		return 0, len(part)
	}
	to = len(part)
	for _, b := range breaks {
		if b <= from || !hasValue(part[from:b]) {
			continue
		}
		if to == len(part) {
			to = b
		}
		if len(s.cut(part[b:], c, g.force)) > 0 {
			return from, b
		}
	}
	return from, to
}

// whichOf asks what the one value of a stretch is for, and tells where it stands. The choices are what its other words
// can speak of; with no other word they are what is said most often. There are none where the value says more than one
// thing, or the words have nothing in common.
func (s *Speech) whichOf(g *group, part []Item) (solver.Question, int) {
	q := solver.Question{Text: "Which is meant?", Example: "gap 2-1/2"}
	at := -1
	var senses []lexicon.Sense
	for i, it := range part {
		switch {
		case it.value() && at >= 0:
			return q, at
		case it.value():
			at = i
			for _, t := range it.lim.tail {
				if t.Kind == lexicon.Dim {
					senses = append(senses, senseOf(t))
				}
			}
		case it.Kind == lexicon.Part, it.Kind == lexicon.Loc, it.Kind == lexicon.Dim, it.Kind == lexicon.FromSide:
			if it.Index > 0 {
				return q, at // "rail 3" and the like: which of them is more than a quantity tells
			}
			senses = append(senses, senseOf(it.Token))
		case !it.breaks() && !idle(it.Token):
			return q, at
		}
	}
	if at < 0 {
		return q, 0
	}
	if len(part) == 1 {
		return s.whatOf(g, &part[at]), at
	}
	lim := part[at].lim
	op, ok := lim.relation()
	if !ok || lim.hi != nil || lim.of != nil {
		return q, at
	}
	for i, name := range lexicon.Aspects {
		quantity := solver.Quantity(name)
		if lexicon.Score(senses, i) == 0 || !lim.kinds().Has(i) || len(solver.Vocabulary) <= i {
			continue
		}
		kind := solver.KindOf(quantity)
		v, ok := s.value(*lim.lo, kind)
		m := made{st: solver.Of(quantity, op, v), kind: kind, lim: lim}
		if ok && s.doubt(m, *lim.lo, measure.Amount{}) == nil {
			q.Choices = append(q.Choices, withForce(g.force, m.st.String()))
		}
	}
	if len(q.Choices) < 2 || len(q.Choices) > 5 {
		q.Choices = nil
	}
	if len(q.Choices) == 2 && strings.Contains(q.Choices[0], "span ") && strings.Contains(q.Choices[1], "centers ") {
		q.Text = "From face to face, or from center to center?"
	}
	return q, at
}
