package solver

import (
	"slices"

	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// mostWays is how many ways out an answer shows.
const mostWays = 5

// change is one law changed so that its field holds, by the least that does.
type change struct {
	law int
	Change
	aside  string    // a code limit to be settled by whoever may, instead
	Told   Statement // how the change is said: an end that is not reached as more than, or less than
	weight exact.Rat // how much of the law's own figure it takes: what disturbs least has least
	class  int       // 0 a count, 1 a length, 2 a size or a side, 3 forgotten altogether
	by     exact.Bound
	dir    int // of a length: by how much its figure moves, and which way
}

// ways finds the smallest changes that mend a blocked wall, each by itself, and where no single one does, the smallest
// in two. All other laws are kept, also those in no conflict. Each was solved again.
func (v *solved) ways(clashes map[*outcome][]clash) []Way {
	var perField [][][]change
	for _, o := range v.fields {
		if o.blocked {
			perField = append(perField, v.mend(o, clashes[o]))
		}
	}
	var out []Way
	for _, set := range combine(perField) {
		if w, ok := v.offerFinely(set); ok {
			out = append(out, w)
		}
		if len(out) == mostWays {
			break
		}
	}
	return out
}

// combine puts together one mend of each field; with one field blocked, that field's mends.
func combine(perField [][][]change) [][]change {
	if len(perField) == 0 {
		return nil
	}
	out := perField[0]
	for _, more := range perField[1:] {
		var next [][]change
		for i := 0; i < max(len(out), len(more)) && len(out) > 0 && len(more) > 0; i++ {
			next = append(next, append(slices.Clone(out[min(i, len(out)-1)]), more[min(i, len(more)-1)]...))
		}
		out = next
	}
	return out
}

// mend lists the mends of one field, least disturbing first.
func (v *solved) mend(o *outcome, cs []clash) [][]change {
	var out [][]change
	for _, l := range o.inAll(cs) {
		for _, c := range o.leastChange(l, o.on0()) {
			out = append(out, []change{c})
		}
	}
	if len(out) == 0 {
		out = v.mendInTwo(o, cs)
	}
	slices.SortStableFunc(out, func(a, b []change) int { return disturbance(a, b, v.p) })
	return out
}

// inAll lists the laws that take part in every conflict: only they can mend it alone.
func (o *outcome) inAll(cs []clash) []int {
	if len(cs) == 0 {
		return nil
	}
	var out []int
	for _, l := range cs[0].laws {
		if !slices.ContainsFunc(cs[1:], func(c clash) bool { return !slices.Contains(c.laws, l) }) {
			out = append(out, l)
		}
	}
	return out
}

// mendInTwo changes two laws that between them take part in every conflict: the second by the least that does once the
// first is gone, then the first by the least that does beside it. Neither alone could be less.
func (v *solved) mendInTwo(o *outcome, cs []clash) [][]change {
	sets := make([][]int, len(cs))
	for i, c := range cs {
		sets[i] = c.laws
	}
	var out [][]change
	for _, pair := range exact.Hitting(sets, 2) {
		if len(pair) != 2 {
			continue
		}
		for _, turn := range [][2]int{{pair[0], pair[1]}, {pair[1], pair[0]}} {
			if two, ok := v.changeTwo(o, turn[0], turn[1]); ok && !containsPair(out, two) {
				out = append(out, two)
			}
		}
		if len(out) >= 2*mostWays {
			break
		}
	}
	return out
}

func containsPair(all [][]change, two []change) bool {
	return slices.ContainsFunc(all, func(c []change) bool {
		return len(c) == 2 && (c[0].To == two[0].To && c[1].To == two[1].To || c[0].To == two[1].To && c[1].To == two[0].To)
	})
}

func (v *solved) changeTwo(o *outcome, first, second int) ([]change, bool) {
	without := o.on0()
	without.remove(first)
	cs := o.leastChange(second, without)
	if len(cs) == 0 {
		return nil, false
	}
	p := v.p.posed(v.p.book.changed(cs[0].Change))
	f := o.s.f
	if p.linked {
		f = bothFields
	}
	next := &outcome{s: newSearch(p, f), blocked: true}
	at := slices.IndexFunc(p.laws, func(l law) bool { return l.said.String() == o.s.p.laws[first].said.String() })
	if at < 0 {
		return nil, false
	}
	fs := next.leastChange(at, next.on0())
	if len(fs) == 0 {
		return nil, false
	}
	fs[0].law = first
	return []change{fs[0], cs[0]}, true
}

// disturbance orders mends: fewer changes first; a wish before a rule of thumb before a part, a code limit last; a
// count before a length before a size; of lengths the one that gives least of itself.
func disturbance(a, b []change, p *problem) int {
	if d := len(a) - len(b); d != 0 {
		return d
	}
	kind := func(cs []change) int {
		worst := 0
		for _, c := range cs {
			worst = max(worst, slices.Index([]RuleKind{Yours, Practice, Part, Code}, c.Kind))
		}
		return worst
	}
	if d := kind(a) - kind(b); d != 0 {
		return d
	}
	class := func(cs []change) int {
		worst := 0
		for _, c := range cs {
			worst = max(worst, c.class)
		}
		return worst
	}
	if d := class(a) - class(b); d != 0 {
		return d
	}
	return total(a).Cmp(total(b))
}

func total(cs []change) exact.Rat {
	var sum exact.Rat
	for _, c := range cs {
		sum = sum.Add(c.weight)
	}
	return sum
}

// changed is the book with one law changed; a default that is changed becomes something said.
func (b Book) changed(c Change) Book {
	if c.New.Name.Quantity == "" { // to be forgotten
		next, _ := b.ForgetOnly(c.Old)
		return next
	}
	next := Book{Wall: b.Wall, aside: b.aside}
	hit := false
	for _, s := range b.said {
		if !hit && s.String() == c.Old.String() {
			s, hit = c.New, true
		}
		next.said = append(next.said, s)
	}
	if !hit {
		next.said = append(next.said, c.New)
	}
	return next
}

// finest is how often a tape mark is halved where what holds past an open end has no mark in it.
const finest = 8

// offerFinely offers the changes; where one goes past an end that is not reached and its next tape mark does not hold,
// half marks are tried, and their halves.
func (v *solved) offerFinely(cs []change) (Way, bool) {
	tape := v.p.tape()
	for range finest {
		w, ok := v.offer(cs)
		open := slices.ContainsFunc(cs, func(c change) bool { return c.by.Open })
		if ok || !open || len(cs) > 1 {
			return w, ok
		}
		tape = tape.Div(exact.Int(2))
		c := cs[0]
		c.New = shifted(c.Old, inside(c.Old, c.by, c.dir, tape), c.dir)
		cs = []change{c}
	}
	return Way{}, false
}

// offer solves the wall again with the changes in place, and offers it only when it holds.
func (v *solved) offer(cs []change) (Way, bool) {
	b := v.p.book
	var w Way
	for _, c := range cs {
		if c.aside != "" {
			b = b.SetAside(c.aside)
		} else {
			b = b.changed(c.Change)
		}
		w.Changes = append(w.Changes, c.Change)
	}
	again := v.p.posed(b).work(false)
	if again.blocked() || again.broken != nil {
		return w, false
	}
	w.Book = b
	w.Layout = again.layout
	return w, true
}

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

// leastSlack is the least by which law l must give so that some cell holds: branch and bound over the counts. What a cell
// that stands for many needs at the least, each of those needs too, and is proven by its own linear program.
func (o *outcome) leastSlack(l int, on set, dir int) (best exact.Bound, ok bool) {
	s := newSearch(o.s.p, o.s.f)
	with := on
	with.add(l)
	s.descend(with, func(c *cell) (cut, bool) {
		if _, refused := s.untied(c, on); refused {
			return cut{}, false
		}
		sh := s.p.lay(c, s.f, with, set{}, l, dir)
		prep := exact.Prepare(&sh.sys)
		if !prep.Feasible() {
			return cut{}, false
		}
		b, point := prep.MinPoint([]exact.Term{one(sh.vSlack)})
		if ok && !better(b, best) {
			return cut{}, false // nothing inside can do better than what was found
		}
		if !s.probesHelp(c, with, l, dir, func(b exact.Bound) bool { return !ok || better(b, best) }) {
			return cut{}, false
		}
		if !c.more && (s.f&alongField == 0 || c.exact()) && sh.openRun() < 0 {
			best, ok = b, true
			return cut{}, false
		}
		return sh.cutAt(point), true
	})
	return best, ok && !s.spent // what was cut short may not be the least
}

// better reports whether a least amount is less than another, or is reached where that is not.
func better(a, b exact.Bound) bool {
	return a.Val.Less(b.Val) || a.Val.Eq(b.Val) && b.Open && !a.Open
}

// descend runs through the cells of a field, those that stand for many first. visit tells whether to look inside, and
// where to part. with has the law that gives way: what it names must be there.
func (s *search) descend(with set, visit func(*cell) (cut, bool)) {
	if s.f == alongField {
		s.descendBays(with, &cell{}, visit)
		return
	}
	c := s.p.limits(Rails, with, 1)
	for n := c.lo; n <= c.hi && n < c.lo+mostWalked; n++ {
		more := &cell{rails: n, more: true}
		if s.f == upField {
			if _, in := visit(more); !in {
				return
			}
			visit(&cell{rails: n})
			continue
		}
		worth := false
		s.descendBays(with, more, func(x *cell) (cut, bool) {
			at, in := visit(x)
			if in && (worth || !x.exact() || at.spaces != nil) {
				return at, !worth
			}
			worth = worth || in
			return cut{}, false
		})
		if !worth || s.outOfWork() {
			return
		}
		s.descendBays(with, &cell{rails: n}, visit)
	}
}

// mostWalked bounds how many rail counts are tried; what lies past it is no way out for anybody.
const mostWalked = 400

func (s *search) descendBays(with set, base *cell, visit func(*cell) (cut, bool)) {
	ks, _ := s.p.openingCounts(with)
	for _, k := range ks {
		if root, _, ok := s.root(base, k, with); ok {
			s.descendCell(root, visit)
		}
	}
}

func (s *search) descendCell(c *cell, visit func(*cell) (cut, bool)) {
	s.solves()
	if !c.tighten() || s.outOfWork() {
		return
	}
	at, in := visit(c)
	if !in {
		return
	}
	if c.exact() && c.spaces == nil {
		s.endless = 0
	}
	if c.exact() && at.spaces != nil && at.spaces[at.seg].hi == most {
		s.endless++
	}
	if s.endless > mostEndless {
		return
	}
	low, high := c.parted(at)
	s.descendCell(low, visit)
	s.descendCell(high, visit)
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
		if !o.holdsWith(c.Old.Name, n, on) {
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

// holdsWith reports whether the field holds with a count at n and the other laws that are on.
func (o *outcome) holdsWith(name Name, n int, on set) bool {
	p := *o.s.p
	p.laws = append(slices.Clone(p.laws), law{said: Statement{Name: name, Op: Eq, Value: Number(n)}, field: o.s.f, Rule: Rule{Kind: Yours}})
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
