package solver

import (
	"slices"

	"saywright/solver/exact"
)

// mostThrifty is how many layouts are costed when the cheapest is wanted: rail counts by numbers of posts.
const (
	mostThriftyRails = 12
	mostThriftyPosts = 3
)

// thrifty looks, where "cheapest" or "least waste" is wanted, through the counts that can hold for the layout whose
// material costs the least; where prices are missing, buys the least length of board. The first of equals stays.
//
//	fact "cheapest of": Nums how many layouts were compared, the cost of the one chosen; Names "lumber" where that is its length of board, as prices are
//	  missing: then Nums have how many boards they are, and of one that has no price its length, Names its size
func (v *solved) thrifty(b Book) *solved {
	best, bestCost, ok := v, exact.Rat{}, false
	lumber := false
	if bestCost, ok = v.material(); !ok { // without all prices no sum tells which is cheaper: then by the boards
		lumber = true
		if bestCost, ok = v.boards(); !ok {
			return v
		}
	}
	seen := 1
	for _, next := range v.alternatives(b) {
		w := work(next)
		if w.blocked() || w.undecided() {
			continue
		}
		cost, ok := w.material()
		if lumber {
			cost, ok = w.boards()
		}
		if !ok {
			continue
		}
		seen++
		if cost.Less(bestCost) {
			best, bestCost = w, cost
		}
	}
	if best != v {
		// the counts were chosen, not said: the options are those of the book itself
		for i, o := range best.fields {
			if i < len(v.fields) {
				o.up, o.along = v.fields[i].up, v.fields[i].along
			}
		}
		best.p.book = b
	}
	best.compared = Fact{Key: "cheapest of", Nums: []exact.Rat{exact.Int(seen), bestCost}}
	if lumber {
		best.toldByLumber()
	}
	return best
}

// toldByLumber tells that boards were compared, how many they are, and one of them that has no price.
func (v *solved) toldByLumber() {
	f, n := &v.compared, 0
	f.Names = []string{"lumber"}
	var long []exact.Rat
	for _, b := range v.bought().Shopping {
		if b.Length == nil {
			continue
		}
		n += b.Count
		if b.Each == nil && long == nil {
			f.Names, long = append(f.Names, b.Item), []exact.Rat{*b.Length}
		}
	}
	f.Nums = append(append(f.Nums, exact.Int(n)), long...)
}

// bought is what the layout takes to buy, whatever the budget.
func (v *solved) bought() Findings {
	s := *v.site(&Answer{Layout: v.layout})
	s.Budget = nil
	return s.Buying()
}

// alternatives are the book with each count that holds, fewest posts first.
func (v *solved) alternatives(b Book) []Book {
	var rails, posts []int
	for _, o := range v.fields {
		for _, u := range o.up {
			rails = append(rails, u.Rails)
		}
		for _, a := range o.along {
			if len(posts) < mostThriftyPosts {
				posts = append(posts, a.AddedPosts)
			}
		}
	}
	if len(rails) > mostThriftyRails {
		rails = rails[:mostThriftyRails]
	}
	count := func(b Book, q Quantity, n int) Book {
		b.said = append(slices.Clone(b.said), Of(q, Eq, Number(n)))
		return b
	}
	var out []Book
	for _, n := range orNone(rails) {
		for _, k := range orNone(posts) {
			next := b
			if n >= 0 {
				next = count(next, Rails, n)
			}
			if k >= 0 {
				next = count(next, AddedPosts, k)
			}
			out = append(out, next)
		}
	}
	return out
}

// orNone is a list with at least one entry: −1 stands for nothing to try.
func orNone(list []int) []int {
	if len(list) == 0 {
		return []int{-1}
	}
	return list
}

// material is what the layout's material costs; not ok where something on the list has no price.
func (v *solved) material() (exact.Rat, bool) {
	if v.layout.Up == nil || v.layout.Along == nil {
		return exact.Rat{}, false
	}
	return v.site(&Answer{Layout: v.layout}).Costing(v.layout)
}

// boards is the length of board that the layout buys.
func (v *solved) boards() (exact.Rat, bool) {
	if v.layout.Up == nil || v.layout.Along == nil {
		return exact.Rat{}, false
	}
	f := v.bought()
	if f.Ask != nil || len(f.Conflicts) > 0 {
		return exact.Rat{}, false
	}
	var long exact.Rat
	for _, b := range f.Buying {
		long = long.Add(b.Plan.Length)
	}
	return long, true
}

// withinBudget adds to a budget that blocks the ways of the layout itself: fewer rails, and so a wider gap. Each was solved
// and bought again.
func (v *solved) withinBudget(a *Answer) {
	if len(a.Conflicts) == 0 || v.layout.Up == nil || v.layout.Along == nil {
		return
	}
	budget, ok := v.p.book.said1(Name{Quantity: Budget}, Eq)
	if !ok || !slices.ContainsFunc(a.Because, func(rules []Rule) bool {
		return slices.ContainsFunc(rules, func(r Rule) bool { return r.Rule == string(Budget) })
	}) {
		return
	}
	for n := v.layout.Rails - 1; n >= 2 && len(a.Ways) < mostWays; n-- {
		if w, ok := v.fewerRails(n, budget.Value.Num); ok {
			a.Ways = append(a.Ways, w)
			return
		}
	}
}

// fewerRails is the wall with n rails: a gap that was said goes to what those leave.
func (v *solved) fewerRails(n int, budget exact.Rat) (Way, bool) {
	b, w := v.p.book, Way{}
	old, said := b.said1(Name{Quantity: Rails}, Eq)
	if !said {
		old = Of(Rails, Eq, Number(v.layout.Rails))
	}
	now := Of(Rails, Eq, Number(n))
	c := Change{Rule: string(Rails), From: old.String(), To: now.String(), By: exact.Int(v.layout.Rails - n).String(), Old: old, New: now, Kind: Yours}
	b, w.Changes = b.changed(c), append(w.Changes, c)
	gap, gapSaid := b.said1(Name{Quantity: Gap}, Eq)
	if gapSaid {
		b, _ = b.ForgetOnly(gap)
	}
	again := workLayout(b)
	if again.blocked() || again.layout.Up == nil || again.layout.Along == nil {
		return w, false
	}
	if gapSaid {
		wide := Of(Gap, Eq, Inches(again.layout.Gap))
		g := Change{Rule: string(Gap), From: gap.String(), To: wide.String(), By: wide.Value.Num.Sub(gap.Value.Num).String(), Old: gap, New: wide, Kind: Yours}
		w.Changes = append(w.Changes, g)
		b.said = append(slices.Clone(b.said), wide)
	}
	cost, ok := again.material()
	if !ok || budget.Less(cost) {
		return w, false
	}
	w.Layout, w.Book = again.layout, b
	return w, true
}
