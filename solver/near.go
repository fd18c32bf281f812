package solver

import (
	"slices"

	"saywright/solver/exact"
)

// What was said with "about" draws the layout near and blocks nothing. Here a rule of thumb gives way to it, and what the layout is off by is told.

// upWishes are what a wish can draw up the wall.
var upWishes = []Quantity{WallHeight, Rails, Gap, BottomGap}

// near returns the wishes for a figure ("gap about 3"), in the order said; goals are none.
func (p *problem) near(f field) (list []Statement) {
	for _, w := range p.wishes {
		if w.Op == Near && fieldOf(w.Name.Quantity)&f != 0 {
			list = append(list, w)
		}
	}
	return list
}

// wishedFor is the figure that a wish comes to in a layout. It is not ok where it leans on what the layout does not have.
func wishedFor(w Statement, l *Layout) (exact.Rat, bool) {
	if w.Value.Of == nil {
		return w.Value.Num, w.Value.Word == "" && w.Value.List == nil
	}
	of, ok := l.Value(*w.Value.Of)
	return w.Value.Num.Add(of.Num.Mul(w.Value.Factor())), ok && of.Word == ""
}

// misses lists how far a layout is off each wish up the wall, in the order said.
func misses(wishes []Statement, l *Layout) (list []exact.Rat) {
	for _, w := range wishes {
		want, ok := wishedFor(w, l)
		got, known := l.Value(w.Name)
		if !ok || !known || !slices.Contains(upWishes, w.Name.Quantity) {
			continue
		}
		list = append(list, got.Num.Sub(want).Abs())
	}
	return list
}

// raised is the layout up the wall that would be chosen under the laws on; nil where there is none.
func (s *search) raised(on set, dropped []int) *Up {
	ch, ok := s.choose(on, dropped)
	if !ok || ch.endless {
		return nil
	}
	sh, point, fixed := ch.settled()
	return s.p.raise(sh, point, fixed)
}

// thumbYields sets the rule of thumb for the lowest rail aside where the layout comes nearer to what was wished without it: a rule of thumb
// fills in what was left open, and the caution for it is told. Bottom gaps that were spoken of have no such rule.
func (s *search) thumbYields(on set, dropped []int) (set, []int) {
	wishes := s.p.near(s.f)
	at := slices.IndexFunc(s.p.laws, func(l law) bool { return l.soft && l.Rule.Rule == "off the floor" })
	if len(wishes) == 0 || at < 0 || !on.has(at) || s.f&upField == 0 {
		return on, dropped
	}
	without := on
	without.remove(at)
	kept, freed := s.raised(on, dropped), s.raised(without, dropped)
	if kept == nil || freed == nil {
		return on, dropped
	}
	if slices.CompareFunc(misses(wishes, &Layout{Up: freed}), misses(wishes, &Layout{Up: kept}), exact.Rat.Cmp) < 0 {
		return without, append(slices.Clone(dropped), at)
	}
	return on, dropped
}

// tellMisses records how far the layout is off each figure that was said with "about".
//
//	Work note "off the wish": what it is off by; Of the quantity
//	fact "off the wish": Names the quantity; Nums the figure it has, the one wished, what it is off by (below 0: it is less)
//	fact "nearer but": Names the quantity; Nums rails that would come nearer, the gap that they would leave, the clearance of their brackets
func (v *solved) tellMisses(a *Answer) {
	if a.Layout == nil {
		return
	}
	for _, w := range v.p.near(bothFields) {
		got, known := a.Layout.Value(w.Name)
		want, ok := wishedFor(w, a.Layout)
		if !known || !ok || got.Word != "" {
			continue
		}
		if al := a.Layout.Along; w.Name.Quantity == StiffenerSpacing && (al == nil || !hasStiffeners(al)) {
			continue // none is wanted: the bay is no wider than that
		}
		off := got.Num.Sub(want)
		counted := KindOf(w.Name.Quantity) == Count
		if off.Sign() == 0 || !counted && off.Abs().Less(v.p.tape()) {
			continue // nearer than the tape shows
		}
		name := w.Name.String()
		a.Facts = append(a.Facts, Fact{Key: "off the wish", Names: []string{name}, Nums: []exact.Rat{got.Num, want, off}})
		if !counted {
			a.Work = append(a.Work, Line(name, "off the wish", Less(Num(exact.Max(got.Num, want)), Num(exact.Min(got.Num, want)))))
		}
		if w.Name.Quantity == Gap && a.Layout.Up != nil {
			v.tellNearer(a, want, off.Abs())
		}
	}
}

// tellNearer tells of the rail count that would bring the gap nearer to what was wished, did its brackets not meet.
func (v *solved) tellNearer(a *Answer, want, off exact.Rat) {
	for _, o := range v.fields {
		if o.s.f != upField {
			continue
		}
		on := o.on
		for i, l := range v.p.laws {
			if l.said.Name.Quantity == BracketClearance || l.soft && l.Rule.Rule == "off the floor" {
				on.remove(i)
			}
		}
		u, needs := o.s.raised(on, o.dropped), a.Layout.Clearance
		if u == nil || u.Rails == a.Layout.Rails || !u.Gap.Less(needs) || !u.Gap.Sub(want).Abs().Less(off) {
			continue
		}
		a.Facts = append(a.Facts, Fact{Key: "nearer but", Names: []string{string(Gap)}, Nums: []exact.Rat{exact.Int(u.Rails), u.Gap, needs}})
		if !v.says(WallHeight) || v.says(Gap) {
			return
		}
		n := u.Rails
		if !v.sameUnder() {
			n--
		}
		if n > 0 && len(u.Gaps) == 0 {
			left := Less(Num(u.WallHeight), Product(Tally(u.Rails), Num(u.RailFace)))
			if !v.sameUnder() {
				left = Less(Num(u.WallHeight), Product(Tally(u.Rails), Num(u.RailFace)), Num(u.BottomGap))
			}
			a.Work = append(a.Work, Line(string(Gap), "nearer left", left), Line(string(Gap), "nearer", Compare(Quotient(Num(left.Value), Tally(n)), ">=", Num(needs))))
		}
	}
}

// wishedStiffeners is how many stiffeners of a bay come nearest to what was wished of their number or their spacing, from lo to hi; the most
// that are allowed apart bounds lo. What was wished of the very bay goes before what was wished of all.
func (p *problem) wishedStiffeners(bay int, width exact.Rat, lo, hi int) int {
	wishes := slices.DeleteFunc(p.near(alongField), func(w Statement) bool { return w.Name.Bay > 0 && w.Name.Bay != bay || w.Value.Of != nil })
	slices.SortStableFunc(wishes, func(a, b Statement) int { return b.Name.Bay - a.Name.Bay })
	for _, w := range wishes {
		if slices.ContainsFunc(p.laws, func(l law) bool {
			return l.said.Name.Quantity == StiffenerSpacing && !l.soft && l.said.sides()&lower != 0
		}) {
			return lo // more of them may come nearer together than was said
		}
		var missed func(m int) exact.Rat
		switch w.Name.Quantity {
		case Stiffeners:
			missed = func(m int) exact.Rat { return exact.Int(m).Sub(w.Value.Num).Abs() }
		case StiffenerSpacing:
			missed = func(m int) exact.Rat { return width.Div(exact.Int(m + 1)).Sub(w.Value.Num).Abs() }
		default:
			continue
		}
		best := lo
		for m := lo + 1; m <= min(hi, lo+mostRailsListed); m++ {
			if missed(m).Less(missed(best)) {
				best = m
			}
		}
		return best
	}
	return lo
}
