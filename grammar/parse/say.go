package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// say understands a stretch of statements, with the corrections that are made in the same breath. It asks back, and
// returns false, where a word is left over or more than one thing can be meant.
func (s *Speech) say(g *group, list []Item) ([]made, bool) {
	if rest, ok := s.takesBack(list); ok {
		list = rest
		s.correcting = true
		defer func() { s.correcting = false }()
	}
	parts := corrections(append([]Item{}, list...))
	a := amended{s: s, g: g, acc: strip(parts[0].items)}
	for _, p := range parts[1:] {
		part := strip(p.items)
		if len(part) == 0 || p.soft && a.think(part) {
			continue
		}
		a.meant = p.meant
		if !a.amend(part) {
			return nil, false
		}
	}
	if !a.settle(false) {
		return nil, false
	}
	if len(a.done) == 0 {
		s.notUnderstood(g, list)
		return nil, false
	}
	s.unitOfOther(a.done)
	done := s.settle(g, sizePrices(oneStock(a.done)))
	return done, s.stands(g, done)
}

// oneStock puts lengths on sale that were said one after the other into one list.
func oneStock(in []made) []made {
	var out []made
	for _, m := range in {
		if n := len(out); n > 0 && m.st.Name.Quantity == solver.Stock && m.st.Op == solver.Eq && out[n-1].st.Op == solver.Eq && out[n-1].st.Name.String() == m.st.Name.String() {
			last := &out[n-1].st.Value
			last.List = append(append([]solver.Value{}, last.List...), m.st.Value.List...)
			continue
		}
		alsoPriced(out, m)
		out = append(out, m)
	}
	return out
}

// correction is a part of a list, and what put it apart from what stands before it: a mere hesitation, or a word for what was meant.
type correction struct {
	items []Item
	soft  bool
	meant bool // "I meant …": it may speak of another thing altogether
}

// corrections cuts a list where something is taken back: "two, no, two and a quarter".
func corrections(list []Item) []correction {
	list = postfixed(list)
	var out []correction
	start, soft, meant := 0, false, false
	for i, it := range list {
		if !it.value() && it.Kind == lexicon.Fix && (!hasValue(list[:i]) || i > 0 && !list[i-1].value() && list[i-1].Kind == lexicon.And && strings.HasPrefix(it.Text, "make ")) {
			list[i].lim, list[i].Token = nil, nothing
			if strings.HasSuffix(it.Text, " it") || strings.HasSuffix(it.Text, " that") {
				list[i].Token = whatWasSpokenOf
			}
			continue
		}
		if it.value() || it.Kind != lexicon.Fix && !(it.Kind == lexicon.No && i > 0 && !owns(list[i-1]) && correcting(list, i)) {
			continue
		}
		if part := list[start:i]; len(strip(part)) > 0 || start == 0 {
			out = append(out, correction{part, soft, meant})
			meant = false
		}
		start, soft, meant = i+1, it.As(lexicon.Fix) == lex.Hesitation, meant || strings.HasPrefix(it.Text, "i mean") || strings.Contains(it.Text, "i meant") || namesAnew(list[i+1:])
	}
	return append(out, correction{list[start:], soft, meant})
}

// owns reports whether a word is one of having or selling: "I have no tens" corrects nothing.
func owns(it Item) bool { return !it.value() && (it.Kind == lexicon.Have || it.Kind == lexicon.Sell) }

// whatWasSpokenOf stands in the place of "make it" where nothing of this line is corrected.
var whatWasSpokenOf = &lex.Token{Kind: lexicon.It}

// nothing stands in the place of a word of correction that corrects nothing: "actually, six boards".
var nothing = &lex.Token{Kind: lexicon.TailFill}

// correcting reports whether the "no" at i takes back what stands before it: a value follows, or a whole clause after a comma.
func correcting(list []Item, i int) bool {
	j := i + 1
	comma := false
	for j < len(list) && (list[j].breaks() || !list[j].value() && (list[j].Kind == lexicon.It || list[j].Kind == lexicon.Per && list[j].Text == "every" || idle(list[j].Token))) {
		comma = comma || list[j].Kind == lexicon.Comma
		j++
	}
	if j >= len(list) {
		return false
	}
	if !list[j].value() && list[j].Kind == lexicon.Fix {
		return true // "no, I mean …"
	}
	return list[j].value() || comma && (list[j].Kind == lexicon.Side || list[j].Kind == lexicon.FromSide || list[j].Kind == lexicon.Wall || list[j].Kind == lexicon.Same || list[j].Kind == lexicon.Change || list[j].Kind == lexicon.Factor || list[j].Kind == lexicon.Goal || list[j].Kind == lexicon.Units || list[j].Kind == lexicon.Best || list[j].Kind == lexicon.Loc) || comma && list[j].Kind == lexicon.Part && list[i-1].value() || comma && list[j].Kind == lexicon.Part && list[i-1].breaks()
}

// best cuts a stretch into clauses. With more to come after a correction, what is left hanging at its end is dropped.
func (s *Speech) best(g *group, part []Item, corrected bool) (reading, bool) {
	r := s.cut(part, s.Carry, g.force)
	if len(r) == 0 && corrected {
		for j := len(part) - 1; j >= 0; j-- {
			if j == 0 {
				return reading{carry: s.Carry}, true
			}
			if r = s.cut(part[:j], s.Carry, g.force); len(r) > 0 && !hasValue(part[j:]) {
				break
			}
			r = nil
		}
	}
	switch len(r) {
	case 0:
		return s.puzzled(g, part, s.Carry)
	case 1:
		return r[0], true
	}
	if one, ok := s.settledReading(g, r); ok {
		return one, true
	}
	s.ambiguous(g, part, r)
	return reading{}, false
}

// replace puts corrected statements in the place of those they correct: at least one must.
func replace(done, fresh []made) ([]made, bool) {
	out := append([]made{}, done...)
	replaced := false
	if i := takenApart(done, fresh); i >= 0 {
		return append(append(out[:i:i], fresh...), out[i+1:]...), true
	}
	for _, f := range fresh {
		at := -1
		for i := range done {
			if rivals(out[i].st, f.st) {
				at = i
			}
		}
		if at >= 0 {
			out[at], replaced = f, true
		} else {
			out = append(out, f)
		}
	}
	return out, replaced
}

// rivals reports whether one statement can be said in the place of another: the same quantity, one wish for another, or
// another way to say where an opening is.
func rivals(a, b solver.Statement) bool {
	if a.Name.Quantity == solver.Goal || b.Name.Quantity == solver.Goal {
		return a.Name.Quantity == b.Name.Quantity
	}
	place := func(n solver.Name) bool {
		return n.Quantity == solver.OpeningSide || n.Quantity == solver.OpeningFromLeft || n.Quantity == solver.OpeningFromRight
	}
	return a.Name.String() == b.Name.String() || place(a.Name) && place(b.Name) && a.Name.Opening == b.Name.Opening && a.Name.Wall == b.Name.Wall
}

// stands checks what was understood: values that cannot be meant, and what contradicts itself in one breath.
func (s *Speech) stands(g *group, list []made) bool {
	seen := map[string]made{}
	for _, m := range list {
		if m.doubt != nil {
			q := *m.doubt
			for i, c := range q.Choices {
				q.Choices[i] = withForce(g.force, c)
			}
			s.fail(m.at, q)
			return false
		}
		name := m.st.Name.String()
		if m.st.Name.Quantity == solver.Goal {
			continue
		}
		if was, ok := seen["middle"]; ok && (m.st.Name.Quantity == solver.OpeningFromLeft || m.st.Name.Quantity == solver.OpeningFromRight) && m.st.Name.Opening == was.st.Name.Opening {
			s.contradicts(g, was, m) // "centered 66 from the left": its middle, or its edge?
			return false
		}
		if m.st.Name.Quantity == solver.OpeningSide && m.st.Value.Word == "middle" {
			seen["middle"] = m
		}
		if was, ok := seen[name]; ok && (was.st.Op == solver.Eq || was.st.Op == solver.Near || was.st.Op == solver.In) && (m.st.Op == solver.Eq || m.st.Op == solver.Near || m.st.Op == solver.In) {
			if was.st.String() != m.st.String() {
				s.contradicts(g, was, m)
				return false
			}
		}
		if was, ok := seen[name]; ok && (Changes(was.st.Op) && m.st.Op == solver.Eq || Changes(m.st.Op) && was.st.Op == solver.Eq) && m.kind != solver.Lengths && m.st.Name.Quantity != solver.Stock {
			s.contradicts(g, was, m)
			return false
		}
		seen[name] = m
	}
	return true
}

// Changes reports whether a statement changes what stands rather than setting it.
func Changes(op solver.Op) bool { return op == solver.Plus || op == solver.Minus || op == solver.Times }

func withForce(k act.Kind, normal string) string {
	if k == act.WhatIf || k == act.WhyNot || k == act.Check {
		return string(k) + " " + normal
	}
	return normal
}
