package solver

import (
	"slices"

	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// leastChange is the least change of law l that lets the field hold with the other laws that are on. Most laws have
// one; an equation may give upward and downward, and then the nearer is taken.
func (o *outcome) leastChange(l int, on set) []change {
	law := o.s.p.laws[l]
	on.remove(l)
	c := change{law: l}
	c.Old, c.Kind, c.Rule, c.From = law.said, law.Kind, law.Rule.Rule, law.said.String()
	q := law.said.Name.Quantity
	switch {
	case law.Kind == Code:
		return o.askCode(c)
	case KindOf(q) == Count && law.said.Value.Of == nil:
		return o.changeCount(c, on)
	case KindOf(q) == Size:
		return o.changeSize(c, on)
	case q == OpeningSide:
		return o.changeSide(c, on)
	case q == Goal || KindOf(q) == Count:
		return forgetting(c)
	case q == FloorFalls:
		return nil // the floor is as it is
	case q == Stock:
		return o.changeStock(c, on)
	}
	return o.changeLength(c, on)
}

// askCode: a published limit is not ours to bend.
func (o *outcome) askCode(c change) []change {
	c.aside = "guard"
	if c.Rule == "pool barrier height" {
		c.aside = "pool"
	}
	c.To = "set aside " + c.aside
	c.class = 3
	return []change{c}
}

func forgetting(c change) []change {
	c.To, c.class = "forget "+c.From, 3
	return []change{c}
}

// changeLength loosens a length's law by the least amount over all cells.
func (o *outcome) changeLength(c change, on set) []change {
	type found struct {
		by  exact.Bound
		dir int
	}
	var best *found
	for _, dir := range loosening(c.Old) {
		b, ok := o.leastSlack(c.law, on, dir)
		if ok && (best == nil || b.Val.Less(best.by.Val) || b.Val.Eq(best.by.Val) && best.by.Open && !b.Open) {
			best = &found{b, dir}
		}
	}
	if best == nil {
		return nil
	}
	c.class, c.By, c.by, c.dir = 1, best.by.Val.String(), best.by, best.dir
	c.New = loosened(c.Old, best.by, best.dir, o.s.p)
	c.Told = told(c.Old, best.by, best.dir, o.s.p)
	if reached := closed(c.Old); best.by.Open && best.by.Val.Sign() == 0 && reached.Op != c.Old.Op {
		if _, hit := o.fieldHolds(o.s.p.book.changed(Change{Old: c.Old, New: reached}), o.s.f); hit {
			c.New, c.Told, c.by.Open = reached, reached, false
		}
	}
	c.To = c.Told.String()
	if base := figure(c.Old, o.s.p); base.Sign() != 0 {
		c.weight = best.by.Val.Div(base).Abs()
	}
	return []change{c}
}

// loosening lists the directions in which a law gives: +1 its limit grows, −1 it shrinks.
func loosening(s Statement) []int {
	switch s.Op {
	case LE, LT:
		return []int{1}
	case GE, GT:
		return []int{-1}
	}
	return []int{1, -1}
}

// figure is the number that a law gives: what its change is measured against.
func figure(s Statement, p *problem) exact.Rat {
	if s.Value.Of != nil && s.Value.Num.Sign() == 0 {
		return exact.Int(1)
	}
	return s.Value.Num
}

// loosened is the law after giving way: what is said in its place. Where the end is not reached, the next tape mark.
func loosened(s Statement, by exact.Bound, dir int, p *problem) Statement {
	amount := by.Val
	if by.Open {
		amount = inside(s, by, dir, p.tape())
	}
	return shifted(s, amount, dir)
}

// closed is a law whose end may be reached. Where it takes nothing more than that, no figure has to change.
func closed(s Statement) Statement {
	switch s.Op {
	case GT:
		s.Op = GE
	case LT:
		s.Op = LE
	}
	return s
}

// inside is the least amount past an end that is not reached which puts the figure on the tape.
func inside(s Statement, by exact.Bound, dir int, tape exact.Rat) exact.Rat {
	at := s.Value.Num.Add(by.Val.Mul(exact.Int(dir)))
	if s.Op == In && dir > 0 {
		at = s.Upper.Num.Add(by.Val)
	}
	mark := at.Div(tape).Floor().Add(exact.Int(1)).Mul(tape)
	if dir < 0 {
		mark = at.Div(tape).Ceil().Sub(exact.Int(1)).Mul(tape)
	}
	return by.Val.Add(mark.Sub(at).Abs())
}

func shifted(s Statement, amount exact.Rat, dir int) Statement {
	d := amount.Mul(exact.Int(dir))
	if s.Op == In && dir > 0 {
		s.Upper.Num = s.Upper.Num.Add(d)
		return s
	}
	s.Value.Num = s.Value.Num.Add(d)
	if s.Value.Of != nil && s.Value.Unit == None {
		s.Value.Unit = Inch
	}
	return s
}

// told is how the change is said: an end that is not reached is said as more than, or less than.
func told(s Statement, by exact.Bound, dir int, p *problem) Statement {
	out := shifted(s, by.Val, dir)
	if !by.Open {
		return out
	}
	if s.Op == In {
		v := out.Value
		if dir > 0 {
			v = out.Upper
		}
		out = Statement{Name: s.Name, Value: v}
	}
	out.Op = GT
	if dir < 0 {
		out.Op = LT
	}
	return out
}

// changeCount moves a count to the nearest that holds.
func (o *outcome) changeCount(c change, on set) []change {
	at := whole(c.Old.Value.Num)
	lo, hi := countRange(c.Old)
	if c.Old.Op == In && c.Old.Value.Num.IsInt() {
		at = lo
	}
	best, dist := 0, most
	try := func(n, from int) bool {
		d := n - from
		if d < 0 {
			d = -d
		}
		if n < 0 || d >= dist {
			return false
		}
		if !o.holdsWith(withCount(c.Old, n), on) {
			return false
		}
		best, dist = n, d
		return true
	}
	up, down := hi, lo
	if c.Old.Op == Eq {
		up, down = at, at
	}
	for d := 1; d <= countReach && dist == most; d++ {
		if down > 0 && down < most {
			try(down-d, down)
		}
		if up < most-countReach {
			try(up+d, up)
		}
	}
	if dist == most {
		return nil
	}
	c.New = withCount(c.Old, best)
	c.Told = c.New
	c.To, c.By = c.New.String(), exact.Int(dist).String()
	c.weight = exact.New(int64(dist), int64(max(at, 1)))
	return []change{c}
}

// countReach is how far from a count the nearest that holds is sought.
const countReach = 60

// withCount writes the count's law anew so that n keeps it.
func withCount(s Statement, n int) Statement {
	out := Statement{Name: s.Name, Op: s.Op, Value: Number(n), Upper: s.Upper}
	switch s.Op {
	case LT:
		out.Value = Number(n + 1)
	case GT:
		out.Value = Number(n - 1)
	case In:
		if exact.Int(n).Cmp(s.Upper.Num) > 0 {
			out.Value, out.Upper = s.Value, Number(n)
		}
	}
	return out
}

// holdsWith reports whether the field holds with one more law on a count beside the other laws that are on.
func (o *outcome) holdsWith(said Statement, on set) bool {
	p := *o.s.p
	p.laws = append(slices.Clone(p.laws), law{said: said, field: o.s.f, Rule: Rule{Kind: Yours}})
	s := newSearch(&p, o.s.f)
	on.add(len(p.laws) - 1)
	hit, _ := s.feasible(on)
	return hit != nil
}

// changeSize tries other sizes of the same kind, nearest face first.
func (o *outcome) changeSize(c change, on set) []change {
	was, err := lumber.Find(c.Old.Value.Word)
	if err != nil {
		return nil
	}
	all := slices.DeleteFunc(lumber.All(), func(s lumber.Size) bool {
		return s.Metric != was.Metric || !s.Thickness.Eq(was.Thickness) && !s.Thickness.Eq(s.Face) || s.Face.Eq(was.Face) ||
			c.Old.Name.Quantity != RailSize && s.Thickness.Less(exact.Int(3)) || c.Old.Name.Quantity == RailSize && !s.Thickness.Eq(was.Thickness)
	})
	slices.SortStableFunc(all, func(a, b lumber.Size) int {
		return a.Face.Sub(was.Face).Abs().Cmp(b.Face.Sub(was.Face).Abs())
	})
	for _, size := range all {
		c.New = Statement{Name: c.Old.Name, Op: Eq, Value: Value{Word: size.Name}}
		b := o.s.p.book.changed(Change{Old: c.Old, New: c.New})
		if _, hit := o.fieldHolds(b, o.s.f); hit {
			d := size.Face.Sub(was.Face).Abs()
			c.Told, c.To, c.By, c.weight, c.class = c.New, c.New.String(), d.String(), d.Div(was.Face), 2
			return []change{c}
		}
	}
	return nil
}

// fieldHolds solves one field of a book anew.
func (o *outcome) fieldHolds(b Book, f field) (*problem, bool) {
	p := o.s.p.posed(b)
	if p.linked {
		f = bothFields
	}
	s := newSearch(p, f)
	var on set
	for _, i := range s.all.list() {
		if p.hard.has(i) {
			on.add(i)
		}
	}
	hit, _ := s.feasible(on)
	return p, hit != nil
}

// changeSide tries the other places of an opening.
func (o *outcome) changeSide(c change, on set) []change {
	for _, word := range []string{"right", "left", "middle"} {
		if word == c.Old.Value.Word {
			continue
		}
		c.New = Statement{Name: c.Old.Name, Op: Eq, Value: Value{Word: word}}
		if _, hit := o.fieldHolds(o.s.p.book.changed(Change{Old: c.Old, New: c.New}), o.s.f); hit {
			c.Told, c.To, c.class = c.New, c.New.String(), 2
			return []change{c}
		}
	}
	return forgetting(c)
}

// boardStep is the step of lumber lengths on sale, inches: 2 ft (trade: stated lengths go in 2 ft steps).
var boardStep = exact.Int(24)

// changeStock asks for the shortest longer board that would do.
func (o *outcome) changeStock(c change, on set) []change {
	b, ok := o.leastSlack(c.law, on, 1)
	if !ok {
		return nil
	}
	was := o.s.p.longest(c.Old)
	long := was.Add(b.Val).Div(boardStep).Ceil().Mul(boardStep)
	c.New = c.Old
	c.New.Value = Value{List: append(slices.Clone(listOf(c.Old.Value)), Inches(long))}
	add := c.Old
	add.Op, add.Value = Plus, Inches(long)
	c.Told, c.To, c.By, c.class = c.New, add.String(), long.Sub(was).String(), 2
	c.weight = long.Sub(was).Div(was)
	return []change{c}
}
