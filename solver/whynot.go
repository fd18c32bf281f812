package solver

import "saywright/solver/exact"

// whyNot lays ss over what stands and says what refuses it, with the neighbors of a rail count side by side.
//
//	fact "holds": nothing stops it; the layout is in the answer
//	fact "neighbor": Nums a rail count, the least and the most gap it leaves with what was said (none: no room at all);
//	  Names what of "fits", "tight" (less than the gap needs), "wide", "no room" it is
//	fact "below": where the gap itself was said, Nums a rail count and what it leaves under the bottom rail (none: no room
//	  at all); Names as of "neighbor"
//	fact "below needs": Nums the least that is to be left there
//	fact "gap needs": Nums the least that the gap may be; Names the rule that says so
func whyNot(b Book, base *Answer, ss []Statement) *Answer {
	next, settled, told, err := b.WithAll(ss, base.layoutOr())
	if err != nil {
		return &Answer{Verdict: Open, Ask: cannot(err), To: Reply{Kind: "why not", Statements: ss}, Tape: base.Tape, Metric: base.Metric}
	}
	v := work(next)
	a := &Answer{To: Reply{Kind: "why not", Statements: settled}, Replaced: told}
	v.tell(a)
	if a.Verdict != Blocked {
		a.Facts = append(a.Facts, Fact{Key: "holds"})
		a.Change = moved(base, a)
	}
	if n, ok := railsAsked(settled); ok {
		v.tellNeighbors(a, n)
	}
	return a
}

func railsAsked(ss []Statement) (int, bool) {
	for _, s := range ss {
		if s.Name.Quantity == Rails && s.Op == Eq && s.Value.Of == nil {
			n, ok := s.Value.Num.Int64()
			return int(n), ok && n >= 1 && n <= 200
		}
	}
	return 0, false
}

// tellNeighbors works out what the count before, the count itself and the one after would leave for each gap, with the
// limits on the gap left out: then it shows which side of them each falls.
func (v *solved) tellNeighbors(a *Answer, n int) {
	p := v.p
	for _, o := range v.fields {
		if o.s.f != upField {
			continue
		}
		on, least, by := p.withoutGapLimits(o.on0())
		if by != "" {
			a.Facts = append(a.Facts, Fact{Key: "gap needs", Names: []string{by}, Nums: []exact.Rat{least}})
		}
		for k := max(n-1, 1); k <= n+1; k++ {
			a.Facts = append(a.Facts, v.neighbor(a, o, on, k, least, by != ""))
		}
	}
}

// withoutGapLimits leaves out counts and what bounds the gap from below, and keeps the gap underneath the same where
// nothing else is said of it. least is what the gap needs, by the rule that needs most.
func (p *problem) withoutGapLimits(on set) (rest set, least exact.Rat, by string) {
	rest = on
	for i := range p.laws {
		l := &p.laws[i]
		q := l.said.Name.Quantity
		if q == BottomGap && l.soft && l.said.Op == Eq {
			rest.add(i)
		}
		if q == Rails || q == Gap || q == BracketClearance || q == BracketEar {
			rest.remove(i)
		}
		if !on.has(i) || l.said.Value.Of != nil {
			continue
		}
		lower := q == BracketClearance && l.said.Op == Eq || q == Gap && (l.said.Op == GE || l.said.Op == GT || l.said.Op == In)
		if lower && least.Less(l.said.Value.Num) {
			least, by = l.said.Value.Num, l.Rule.Rule
		}
	}
	return rest, least, by
}

func (v *solved) neighbor(a *Answer, o *outcome, on set, n int, least exact.Rat, known bool) Fact {
	f := Fact{Key: "neighbor", Names: []string{"no room"}, Nums: []exact.Rat{exact.Int(n)}}
	sh := v.p.lay(&cell{rails: n}, upField, on, set{}, -1, 0)
	prep := exact.Prepare(&sh.sys)
	if !prep.Feasible() {
		return f
	}
	r := rangeOf(prep, vGap)
	if r[1].None {
		f.Names[0] = "open"
		return f
	}
	f.Nums = append(f.Nums, r[0].Val, r[1].Val)
	f.Names[0] = "fits"
	if known && r[1].Val.Less(least) {
		f.Names[0] = "tight"
	}
	if r[0].Val.Eq(r[1].Val) {
		v.neighborWork(a, sh, prep.Point(), n)
	}
	return f
}

// neighborWork shows how a count leaves its gap: what the wood leaves, shared.
func (v *solved) neighborWork(a *Answer, sh *sheet, point []exact.Rat, n int) {
	u := &Up{WallHeight: point[vHeight], Rails: n, RailFace: point[vFace], Gap: point[vGap], BottomGap: point[vBottom]}
	wood := Product(Tally(n), Num(u.RailFace))
	same := u.BottomGap.Eq(u.Gap)
	k := n - 1
	left := Less(Num(u.WallHeight), Num(wood.Value), Num(u.BottomGap))
	if same {
		k, left = n, Less(Num(u.WallHeight), Num(wood.Value))
	}
	if k > 0 && left.Value.Sign() >= 0 {
		line := Line(string(Gap), "neighbor", Quotient(left, Tally(k)))
		line.From = counted(n)
		a.Work = append(a.Work, line)
	}
}

// gapStands reports whether the gap was said to be a figure, and nothing was said of what is left underneath: then the counts differ in that.
func (v *solved) gapStands() bool {
	gap, ok := v.p.book.said1(Name{Quantity: Gap}, Eq)
	return ok && gap.Value.Of == nil && !v.p.speaksOf(BottomGap)
}

// tellBelow works out what the count before, the count itself and the one after leave under the bottom rail.
func (v *solved) tellBelow(a *Answer, n int) {
	for _, o := range v.fields {
		if o.s.f != upField {
			continue
		}
		on := o.on0()
		var least exact.Rat
		for i := range v.p.laws {
			l := &v.p.laws[i]
			switch q := l.said.Name.Quantity; {
			case q == Rails || q == BottomGap && l.soft:
				on.remove(i)
			}
			if l.Rule.Rule == "off the floor" {
				least = l.said.Value.Num
			}
		}
		if least.Sign() > 0 {
			a.Facts = append(a.Facts, Fact{Key: "below needs", Nums: []exact.Rat{least}})
		}
		for k := max(n-1, 1); k <= n+1; k++ {
			f := Fact{Key: "below", Names: []string{"no room"}, Nums: []exact.Rat{exact.Int(k)}}
			sh := v.p.lay(&cell{rails: k}, upField, on, set{}, -1, 0)
			if prep := exact.Prepare(&sh.sys); prep.Feasible() {
				r := rangeOf(prep, vBottom)
				if r[1].None || !r[0].Val.Eq(r[1].Val) {
					return // the wall's height is open too
				}
				f.Nums, f.Names[0] = append(f.Nums, r[0].Val), "fits"
				if r[0].Val.Less(least) {
					f.Names[0] = "tight"
				}
				if k != n {
					at := prep.Point()
					line := Line(string(BottomGap), "below", Less(Num(at[vHeight]), Product(Tally(k), Num(at[vFace])), Product(Tally(k-1), Num(at[vGap]))))
					line.From = counted(k)
					a.Work = append(a.Work, line)
				}
			}
			a.Facts = append(a.Facts, f)
		}
	}
}
