package solver

import (
	"slices"

	"saywright/solver/exact"
)

// followsBays is what is chosen once the bays are, and never chooses them: stiffeners are set into any bay.
var followsBays = map[Quantity]bool{Stiffeners: true, StiffenerSpacing: true}

// wish narrows to what comes nearest to one soft wish or goal.
func (ch *chooser) wish(w Statement) {
	way, q, goal := GoalOf(w)
	if !goal {
		q = w.Name.Quantity
	}
	if fieldOf(q)&ch.s.f == 0 || followsBays[q] && !goal {
		return
	}
	if KindOf(q) == Count {
		ch.wishCount(q, way, w)
		return
	}
	n := w.Name
	if goal {
		n = Name{Quantity: q}
	}
	ch.optimize(func(sh *sheet) ([]exact.Term, bool) { return sh.distance(n, way, w.Value) })
}

// wishCount keeps the cells whose count is nearest to the wish, least or greatest.
func (ch *chooser) wishCount(q Quantity, way int, w Statement) {
	best, kept := exact.Rat{}, []candidate(nil)
	for _, c := range ch.left {
		n, ok := c.c.count(q)
		if !ok {
			continue
		}
		d := exact.Int(-way * n)
		if way == 0 {
			d = exact.Int(n).Sub(w.Value.Num).Abs()
		}
		if kept == nil || d.Less(best) {
			best, kept = d, nil
		}
		if d.Eq(best) {
			kept = append(kept, c)
		}
	}
	if kept == nil || ch.endless && way > 0 && q == Rails {
		return
	}
	ch.left = kept
	if q == Rails {
		ch.endless = false
	}
}

// distance gives an objective to be made least: the distance of a quantity to v (way 0), the greatest of its parts
// (way -1), or its least part with the sign turned (way +1).
func (s *sheet) distance(n Name, way int, v Value) ([]exact.Term, bool) {
	forms := s.forms(n, false)
	if len(forms) == 0 {
		return nil, false
	}
	t := s.fresh()
	s.sys.Vars = s.vars
	for _, f := range forms {
		per := exact.New(1, int64(f.copies))
		mean := f.each(per)
		plus := f.plus.Mul(per)
		if way == 0 {
			targets := []form{{copies: 1}}
			if v.Of != nil {
				targets = s.forms(*v.Of, false)
			}
			for _, g := range targets {
				k := exact.New(1, int64(g.copies)).Mul(v.Factor())
				diff := append(slices.Clone(mean), g.each(k.Neg())...)
				off := v.Num.Add(g.plus.Mul(k)).Sub(plus)
				s.truth(exact.LE, off, append(slices.Clone(diff), minus(t))...)
				s.truth(exact.GE, off, append(slices.Clone(diff), one(t))...)
			}
			continue
		}
		// way −1: t is at least each; way +1: −t is at most each
		if way < 0 {
			s.truth(exact.GE, plus, append([]exact.Term{one(t)}, negate(mean)...)...)
		} else {
			s.truth(exact.GE, plus.Neg(), append([]exact.Term{one(t)}, mean...)...)
		}
	}
	return []exact.Term{one(t)}, true
}

func negate(terms []exact.Term) []exact.Term {
	out := make([]exact.Term, len(terms))
	for i, t := range terms {
		out[i] = exact.Term{Var: t.Var, Coef: t.Coef.Neg()}
	}
	return out
}
