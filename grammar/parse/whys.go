package parse

import (
	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// whyAndNot reads both questions of "why that gap and not 2-3/8", "why six boards and not seven": why the one, and why not the
// other, of the same thing.
func (s *Speech) whyAndNot(g *group, list []Item, i int) bool {
	if i == 0 || i+1 >= len(list) || !list[i-1].breaks() && !hasFigure(list[:i]) || len(g.sense) > 0 || g.topic != "" {
		return false
	}
	was := s.Carry
	first, ok := s.whyOf(&group{force: act.Why}, strip(list[:i]))
	if !ok {
		first, ok = s.nameOf(&group{force: act.Why}, strip(list[:i]))
	}
	var other []Item
	for _, it := range list[i+1:] {
		if it.value() || it.Kind != lexicon.Theirs {
			other = append(other, it)
		}
	}
	if !ok || first.Name == nil || len(other) == 0 || !hasFigure(other) || first.Name.Quantity == solver.Goal {
		s.Carry = was
		return false
	}
	if !named(other) && (len(other) != 1 || !other[0].value() || !goesBy(*first.Name, other[0].lim)) {
		s.Carry = was
		return false
	}
	r := s.cut(other, carry{Name: first.Name, Kind: solver.KindOf(first.Name.Quantity), senses: s.Carry.senses}, act.WhyNot)
	if len(r) != 1 || len(r[0].made) != 1 || r[0].made[0].st.Name.String() != first.Name.String() || r[0].made[0].doubt != nil {
		s.Carry = was
		return false
	}
	first.Kind = act.Why
	s.act(g, first)
	s.act(g, act.Act{Kind: act.WhyNot, Statements: []solver.Statement{r[0].made[0].st}})
	return true
}

// goesBy reports whether a value can be one of a quantity by its unit: no length is a count.
func goesBy(n solver.Name, l *limit) bool {
	if l.lo.Size != "" || l.hi != nil || l.of != nil {
		return false
	}
	return solver.KindOf(n.Quantity) == solver.Length || solver.KindOf(n.Quantity) == solver.Count && l.lo.Unit == measure.Bare && l.lo.Val.IsInt()
}

// buysBoards reports whether it is said of boards, and of nothing else, that they are bought.
func buysBoards(list []Item) bool {
	bought, boards := false, false
	for _, it := range list {
		switch {
		case it.value():
			return false
		case it.Kind == lexicon.Sell && lex.OneIsIn(lex.Buys, it.Text):
			bought = true
		case it.Kind == lexicon.Part && (it.Key() == "rail" || it.Key() == "size") && it.Index == 0:
			boards = true
		case it.Kind == lexicon.Each || it.Kind == lexicon.It || it.Kind == lexicon.WhyFill || it.Kind == lexicon.TailFill:
		default:
			return false
		}
	}
	return bought && boards
}

// whyOf finds what a reason is asked for where a value is named with it: "why six boards".
func (s *Speech) whyOf(g *group, list []Item) (act.Act, bool) {
	if !hasValue(list) {
		return act.Act{}, false
	}
	if countedPosts(list) {
		return act.Act{Name: &solver.Name{Quantity: solver.AddedPosts}}, true
	}
	r := s.cut(list, s.Carry, act.Why)
	if len(r) != 1 || len(r[0].made) == 0 {
		return act.Act{}, false
	}
	n := r[0].made[0].st.Name
	for _, m := range r[0].made {
		if m.st.Name.String() != n.String() {
			return act.Act{}, false
		}
	}
	if n.Quantity == solver.Goal {
		return act.Act{}, false
	}
	s.Carry = r[0].carry
	return act.Act{Name: &n}, true
}
