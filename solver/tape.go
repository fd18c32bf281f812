package solver

import (
	"slices"

	"saywright/solver/exact"
)

// onTape is a layout up the wall as a tape shows it: every top rounded to the nearest mark from the floor, so that no
// rounding adds to the next. Gaps then differ by one mark at the most, and add up exactly.
type onTape struct {
	Bottom exact.Rat
	Gaps   []exact.Rat // between the rails, from the bottom
	Marks  []exact.Rat // bracket holes
	Worst  exact.Rat   // how far the worst mark is off its exact place
}

// nearest rounds to the tape, half a mark up.
func nearest(r, tape exact.Rat) exact.Rat {
	return r.Div(tape).Add(exact.New(1, 2)).Floor().Mul(tape)
}

func isOn(r, tape exact.Rat) bool { return r.Div(tape).IsInt() }

// taped rounds a layout to the tape; ok is false where the wall itself or its rails are not on it, so that no
// arrangement of marks adds up.
func taped(u *Up, tape exact.Rat) (t onTape, ok bool) {
	if !isOn(u.WallHeight, tape) || !isOn(u.RailFace, tape) || len(u.Gaps) > 0 {
		return t, false
	}
	var before exact.Rat
	for i, top := range u.Tops {
		at := nearest(top, tape)
		t.Worst = exact.Max(t.Worst, at.Sub(top).Abs())
		t.Marks = append(t.Marks, nearest(top.Add(u.Reach), tape))
		if i == 0 {
			t.Bottom = at.Sub(u.RailFace)
		} else {
			t.Gaps = append(t.Gaps, at.Sub(before).Sub(u.RailFace))
		}
		before = at
	}
	return t, true
}

// tellTape lays the gaps out on the tape where it cannot show an even one, unless even gaps were asked for, and checks
// the rules again on the rounded figures. The layout keeps the exact figures; its gaps are those to mark.
func (v *solved) tellTape(a *Answer) {
	if a.Layout == nil || a.Layout.Up == nil || len(a.Layout.Gaps) > 0 || a.Layout.Rails < 2 {
		return
	}
	u := a.Layout.Up
	tape := a.Tape
	if isOn(u.Gap, tape) && isOn(u.BottomGap, tape) {
		return
	}
	t, ok := taped(u, tape)
	if !ok {
		v.tellWorst(a, u, tape)
		return
	}
	a.Work = append(a.Work, Line(string(Tape), "off the mark", Num(t.Worst)))
	if v.p.book.Wants("even gaps") {
		return
	}
	if !v.gapsKeep(t) {
		a.Facts = append(a.Facts, Fact{Key: "tape breaks rule", Nums: []exact.Rat{slices.MinFunc(t.Gaps, exact.Rat.Cmp)}})
		return
	}
	u.Gaps = t.Gaps
	a.Work = append(a.Work, gapTally(t, u))
}

// tellWorst says how far a mark can be off where the gaps themselves cannot be laid out on the tape.
func (v *solved) tellWorst(a *Answer, u *Up, tape exact.Rat) {
	var worst exact.Rat
	for _, m := range u.Marks {
		worst = exact.Max(worst, nearest(m, tape).Sub(m).Abs())
	}
	a.Work = append(a.Work, Line(string(Tape), "off the mark", Num(worst)))
}

// gapTally is the gaps by width, fewest different first: 4 × 2-13/16 + 2 × 2-7/8 = 17, the one underneath counted in.
func gapTally(t onTape, u *Up) Work {
	all := append([]exact.Rat{t.Bottom}, t.Gaps...)
	slices.SortFunc(all, exact.Rat.Cmp)
	var terms []Expr
	for i := 0; i < len(all); {
		n := 1
		for i+n < len(all) && all[i+n].Eq(all[i]) {
			n++
		}
		terms = append(terms, Product(Tally(n), Num(all[i])))
		i += n
	}
	return Line(string(Gap), "tape gaps", Sum(terms...))
}

// gapsKeep checks every law on gaps again on the rounded figures.
func (v *solved) gapsKeep(t onTape) bool {
	for _, o := range v.fields {
		if o.s.f&upField == 0 || o.chooser == nil {
			continue
		}
		for _, g := range t.Gaps {
			if !v.keepsFigure(o, Gap, g) {
				return false
			}
		}
		if !v.keepsFigure(o, BottomGap, t.Bottom) {
			return false
		}
		if c := v.layout.Clearance; slices.ContainsFunc(t.Gaps, func(g exact.Rat) bool { return g.Less(c) }) {
			return false
		}
		return !t.Bottom.Less(v.layout.Ear)
	}
	return true
}

// keepsFigure holds one rounded figure against the limits on its quantity. An equation is what was rounded.
func (v *solved) keepsFigure(o *outcome, q Quantity, x exact.Rat) bool {
	for _, i := range o.on.list() {
		s := v.p.laws[i].said
		if s.Name.Quantity != q || s.Op == Eq || s.Value.Of != nil {
			continue
		}
		ok := Compare(Num(x), string(s.Op), Num(s.Value.Num)).Holds()
		if s.Op == In {
			ok = s.Value.Num.Cmp(x) <= 0 && x.Cmp(s.Upper.Num) <= 0
		}
		if !ok {
			return false
		}
	}
	return true
}
