package solver

import (
	"slices"

	"saywright/solver/exact"
)

// The notes under which this package records the arithmetic of a layout and of a conflict, for package explain to put
// into words. Of is the quantity that a line gives.
//
//	note             the line
//	wood             rails × face
//	gaps             gaps between rails × gap
//	gaps and under   the same, the one underneath counted in (it is said to be one of them)
//	underneath       the bottom gap as a part of a sum
//	sum              the parts added up; Of tells of what: wall height or span
//	sum or more      the same for the fewest of "this many or more"
//	left             what is left of the height when the wood (and a bottom gap of its own) is gone
//	share            what is left, shared among the gaps
//	bottom           what is left underneath
//	bays             what is left of the span for the bays; or bays as a part of a sum
//	each bay         the same, shared among equal bays
//	openings, posts  parts of the span
//	span             the span from a measure between other points of the end posts
//	stiffeners       a bay shared by its stiffeners: their spacing; From "bay 1"
//	one fewer        what one stiffener less would leave, against the limit: a comparison that is false
//	post height      the wall and what stands above it
//	post place       near face of an added post from the left end post
//	clash            what cannot be: a comparison that is false; From "rule" of the whole, or "rule|rule" of both sides
//	follows          an unknown that follows from others in a conflict
//	weighted         the rows of a proof added up, where no shorter sum shows it
//	one more         what one rail more would take at this gap, nothing underneath; then a comparison with the wall
//	more gap         the gap that one rail more would leave; then a comparison with the least
//	even wall        heights that would give even gaps: this many rails, and one more
//	spare            what a gap leaves over the clearance
//	tape gaps        how many gaps of each width a tape gives, adding up to what is left
//	off the mark     how far the worst mark is off when each is rounded by itself

// tellWork records the arithmetic of the layout.
func (v *solved) tellWork(a *Answer) {
	if a.Layout == nil {
		return
	}
	if u := a.Layout.Up; u != nil {
		a.Work = append(a.Work, v.upWork(u)...)
	}
	if al := a.Layout.Along; al != nil {
		a.Work = append(a.Work, v.alongWork(al)...)
		a.Facts = append(a.Facts, v.baysDiffer(al)...)
	}
	if al := a.Layout.Along; al != nil && al.PostHeight != nil && a.Layout.Up != nil {
		above := al.PostHeight.Sub(a.Layout.WallHeight)
		a.Work = append(a.Work, Line(string(PostHeight), "post height", Sum(Num(a.Layout.WallHeight), Num(above))))
	}
}

// baysDiffer tells why bays are not all of one width though nobody wanted that: an opening in the middle leaves both sides the
// same room, and the numbers of bays in them differ. Nums are those numbers, left and right.
func (v *solved) baysDiffer(a *Along) []Fact {
	middle := slices.ContainsFunc(v.p.book.said, func(s Statement) bool { return s.Name.Quantity == OpeningSide && s.Value.Word == "middle" })
	if !middle || len(a.Openings) != 1 || v.p.speaksOf(Bay) || equalWidths(a.Bays) {
		return nil
	}
	left := 0
	for _, b := range a.Bays {
		if b.FromLeft.Less(a.Openings[0].FromLeft) {
			left++
		}
	}
	if 2*left == len(a.Bays) {
		return nil
	}
	return []Fact{{Key: "bays differ", Nums: []exact.Rat{exact.Int(left), exact.Int(len(a.Bays) - left)}}}
}

// says reports whether the person gave a quantity a figure of its own.
func (v *solved) says(q Quantity) bool {
	return slices.ContainsFunc(v.p.book.said, func(s Statement) bool {
		return s.Name.Quantity == q && s.Op == Eq && s.Value.Of == nil
	})
}

// keeps reports whether a law with that name is in force for the layout.
func (v *solved) keeps(name string) bool {
	for _, o := range v.fields {
		for _, i := range o.on.list() {
			if v.p.laws[i].Rule.Rule == name {
				return true
			}
		}
	}
	return false
}

// sameUnder reports whether the gap underneath is one of the gaps: by what was said, or by habit.
func (v *solved) sameUnder() bool {
	for _, o := range v.fields {
		for _, i := range o.on.list() {
			s := v.p.laws[i].said
			if s.Name.Quantity == BottomGap && s.Op == Eq && s.Value.Of != nil && s.Value.Of.Quantity == Gap &&
				s.Value.Num.Sign() == 0 && s.Value.Factor().Eq(exact.Int(1)) {
				return true
			}
		}
	}
	return false
}

func (v *solved) upWork(u *Up) []Work {
	wood := Product(Tally(u.Rails), Num(u.RailFace))
	lines := []Work{Line(string(Rails), "wood", wood)}
	if len(u.Gaps) > 0 {
		return append(lines, v.unevenSum(u, wood)...)
	}
	same := v.sameUnder()
	switch {
	case v.says(WallHeight) && !v.says(Gap):
		return append(lines, shareOut(u, wood.Value, same)...)
	case v.says(WallHeight) && !same && !v.says(BottomGap):
		return append(lines, leftUnder(u, wood.Value)...)
	}
	return append(lines, addUp(u, wood.Value, same)...)
}

// shareOut: what the wood leaves, shared among the gaps.
func shareOut(u *Up, wood exact.Rat, same bool) []Work {
	n := u.Rails - 1
	left := Less(Num(u.WallHeight), Num(wood))
	if same {
		n++
	} else {
		left = Less(Num(u.WallHeight), Num(wood), Num(u.BottomGap))
	}
	out := []Work{Line(string(Gap), "left", left)}
	if n > 0 {
		out = append(out, Line(string(Gap), "share", Quotient(Num(left.Value), Tally(n))))
	}
	return out
}

func leftUnder(u *Up, wood exact.Rat) []Work {
	gaps := Product(Tally(u.Rails-1), Num(u.Gap))
	return []Work{
		Line(string(Gap), "gaps", gaps),
		Line(string(BottomGap), "bottom", Less(Num(u.WallHeight), Num(wood), Num(gaps.Value))),
	}
}

// addUp: wood, gaps and what is underneath come to the wall.
func addUp(u *Up, wood exact.Rat, same bool) []Work {
	var out []Work
	parts := []Expr{Num(wood)}
	n, note := u.Rails-1, "gaps"
	if same {
		n, note = u.Rails, "gaps and under"
	}
	if n > 0 {
		gaps := Product(Tally(n), Num(u.Gap))
		out = append(out, Line(string(Gap), note, gaps))
		parts = append(parts, Num(gaps.Value))
	}
	if !same {
		parts = append(parts, Num(u.BottomGap))
	}
	return append(out, Line(string(WallHeight), "sum", Sum(parts...)))
}

func (v *solved) unevenSum(u *Up, wood Expr) []Work {
	parts := []Expr{Num(wood.Value)}
	for _, g := range u.Gaps {
		parts = append(parts, Num(g))
	}
	return []Work{Line(string(WallHeight), "sum", Sum(append(parts, Num(u.BottomGap))...))}
}

func (v *solved) alongWork(a *Along) []Work {
	out := v.spanWork(a)
	switch {
	case v.says(Bay) && !v.says(Span) && !v.says(Overall) && !v.says(Centers):
		out = append(out, spanSum(a))
	default:
		out = append(out, baysWork(a)...)
	}
	return append(out, v.stiffenerWork(a)...)
}

func (v *solved) spanWork(a *Along) []Work {
	switch {
	case v.says(Overall):
		over := a.Span.Add(a.EndPostFace).Add(a.EndPostFace)
		return []Work{Line(string(Span), "span", Less(Num(over), Product(Tally(2), Num(a.EndPostFace))))}
	case v.says(Centers):
		return []Work{Line(string(Span), "span", Less(Num(a.Span.Add(a.EndPostFace)), Num(a.EndPostFace)))}
	}
	return nil
}

// spanSum: bays, openings and posts come to the span.
func spanSum(a *Along) Work {
	var parts []Expr
	for _, b := range a.Bays {
		parts = append(parts, Num(b.Width))
	}
	for _, o := range a.Openings {
		parts = append(parts, Num(o.Width))
	}
	return Line(string(Span), "sum", Sum(append(parts, postsExpr(a)...)...))
}

func postsExpr(a *Along) []Expr {
	switch len(a.Posts) {
	case 0:
		return nil
	case 1:
		return []Expr{Num(a.PostFace)}
	}
	return []Expr{Product(Tally(len(a.Posts)), Num(a.PostFace))}
}

// baysWork: what openings and posts leave of the span, and how the bays share it.
func baysWork(a *Along) []Work {
	var gone []Expr
	for _, o := range a.Openings {
		gone = append(gone, Num(o.Width))
	}
	left := Less(Num(a.Span), append(gone, postsExpr(a)...)...)
	if len(a.Bays) == 1 {
		if left.Op == "" {
			return nil
		}
		return []Work{Line(string(Bay), "bays", left)}
	}
	out := []Work{Line(string(Bay), "bays", left)}
	if equalWidths(a.Bays) {
		return append(out, Line(string(Bay), "each bay", Quotient(Num(left.Value), Tally(len(a.Bays)))))
	}
	var parts []Expr
	for _, b := range a.Bays {
		parts = append(parts, Num(b.Width))
	}
	return append(out, Line(string(Bay), "bays", Sum(parts...)))
}

func equalWidths(bays []Stretch) bool {
	return !slices.ContainsFunc(bays, func(b Stretch) bool { return !b.Width.Eq(bays[0].Width) })
}

// stiffenerWork: each different bay shared by its stiffeners, and why not one fewer.
func (v *solved) stiffenerWork(a *Along) []Work {
	var out []Work
	var done []exact.Rat
	for i, b := range a.Bays {
		m := len(b.Stiffeners)
		if m == 0 || slices.ContainsFunc(done, b.Width.Eq) {
			continue
		}
		done = append(done, b.Width)
		w := Line(string(StiffenerSpacing), "stiffeners", Quotient(Num(b.Width), Tally(m+1)))
		w.From = Name{Quantity: Bay, Bay: i + 1}.String()
		out = append(out, w)
		if limit, strict, ok := v.spacing(i + 1); ok && !v.says(Stiffeners) {
			op := "<="
			if strict {
				op = "<"
			}
			if c := Line(string(StiffenerSpacing), "one fewer", Compare(Quotient(Num(b.Width), Tally(m)), op, Num(limit))); c.Equals == "false" {
				out = append(out, c)
			}
		}
	}
	return out
}

func (v *solved) spacing(bay int) (exact.Rat, bool, bool) {
	for _, o := range v.fields {
		if o.s.f&alongField != 0 {
			return v.p.spacingLimit(o.on, bay)
		}
	}
	return exact.Rat{}, false, false
}

// tellAssumed lists the defaults and choices that the layout leans on, as normal forms.
func (v *solved) tellAssumed(a *Answer) {
	add := func(s string) { a.Assumed = addOnce(a.Assumed, s) }
	if l := a.Layout; l != nil && l.Up != nil {
		v.assumeLaws(upField, add)
		v.assumePart(BracketReach, add)
		v.assumePart(FloorAtRight, add)
	}
	if l := a.Layout; l != nil && l.Along != nil {
		v.assumeLaws(alongField, add)
		if len(l.Posts) > 0 && v.keeps("post height") && !v.says(PostHeight) && l.Up != nil {
			add("post height = wall height + 2 in")
		}
		if hasStiffeners(l.Along) && !v.p.speaksOf(StiffenerSize) {
			add(Of(StiffenerSize, Eq, Value{Word: defaultWord(StiffenerSize)}).String())
		}
	}
	for _, o := range v.fields {
		if o.chooser != nil && a.Layout != nil {
			v.assumeChoices(o, a.Layout, add)
		}
	}
}

func hasStiffeners(a *Along) bool {
	return slices.ContainsFunc(a.Bays, func(b Stretch) bool { return len(b.Stiffeners) > 0 })
}

// assumeLaws names the defaults in force in a field, except those that only matter where an answer comes near them.
func (v *solved) assumeLaws(f field, add func(string)) {
	for _, o := range v.fields {
		for _, i := range o.on.list() {
			l := v.p.laws[i]
			if l.field&f == 0 || l.Kind != Practice && l.Kind != Part {
				continue
			}
			switch l.said.Name.Quantity {
			case BracketEar, PostHeight:
				continue
			case Stock:
				if !v.boardsDecide() {
					continue
				}
			case Opening:
				continue // the width chosen is named itself
			case StiffenerSpacing:
				if v.layout.Along == nil || !hasStiffeners(v.layout.Along) {
					continue
				}
			case BottomGap:
				if l.said.Op != Eq {
					continue
				}
			}
			add(l.said.String())
		}
	}
}

// boardsDecide reports whether the longest board is why a bay is not longer.
func (v *solved) boardsDecide() bool {
	return v.layout.Along != nil && len(v.layout.Bays) > 1 && !v.p.speaksOf(Bay, Bays, AddedPosts)
}

func (v *solved) assumePart(q Quantity, add func(string)) {
	if d, ok := defaultOf(q); ok && !v.p.speaksOf(q) && (q != FloorAtRight || !v.p.speaksOf(FloorFalls)) {
		add(Of(q, Eq, d.Value).String())
	}
}

// assumeChoices names what was chosen where several layouts remained.
func (v *solved) assumeChoices(o *outcome, l *Layout, add func(string)) {
	if l.Up != nil && o.s.f&upField != 0 && slices.Contains(o.chooser.chose, "most rails") && !v.p.speaksOf(Rails) {
		add("most rails")
	}
	if l.Along == nil || o.s.f&alongField == 0 {
		return
	}
	if len(o.along) > 1 && !v.p.speaksOf(AddedPosts, Bays) {
		add("fewest posts")
	}
	if slices.Contains(o.chooser.chose, "opening") && len(l.Openings) > 0 {
		add(Of(Opening, Eq, Inches(l.Openings[0].Width)).String())
	}
	if len(l.Openings) == 1 && !v.p.speaksOf(OpeningSide, OpeningFromLeft, OpeningFromRight, PostFromLeft, PostFromRight) &&
		!slices.ContainsFunc(v.p.book.said, func(s Statement) bool { return s.Name.Bay > 0 && s.Name.Quantity == Bay }) {
		add(Of(OpeningSide, Eq, Value{Word: "right"}).String())
	}
	if len(l.Bays) > 1 && equalWidths(l.Bays) && !v.p.speaksOf(Bay) && !v.p.book.Wants("equal bays") {
		add("equal bays")
	}
}
