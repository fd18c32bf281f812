package solver

import (
	"slices"

	"saywright/solver/exact"
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
	if again.blocked() || again.undecided() || again.broken != nil {
		return w, false
	}
	w.Book = b
	w.Layout = again.layout
	if len(cs) == 1 {
		w.Changes[0].OnTape = v.onTape(cs[0])
	}
	return w, true
}

// onTape is the next tape mark past a least change, where the wall holds with that too. The change stays the least: this is only what a tape shows.
func (v *solved) onTape(c change) *exact.Rat {
	if c.class != 1 || c.by.Open || c.New.Value.Of != nil || c.Old.Op == In {
		return nil
	}
	tape := v.p.tape()
	if isOn(c.New.Value.Num, tape) {
		return nil
	}
	past := shifted(c.Old, inside(c.Old, c.by, c.dir, tape), c.dir)
	if again := v.p.posed(v.p.book.changed(Change{Old: c.Old, New: past})).work(false); again.blocked() || again.undecided() || again.broken != nil {
		return nil
	}
	return &past.Value.Num
}
