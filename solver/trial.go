package solver

import (
	"slices"
	"strconv"

	"saywright/solver/exact"
)

// try lays ss over what stands, as statements would, and keeps nothing.
func try(b Book, base *Answer, ss []Statement) (*Answer, Book) {
	next, settled, told, err := b.WithAll(ss, base.layoutOr())
	if err != nil {
		return &Answer{Verdict: Open, Ask: cannot(err), To: Reply{Kind: "what if", Statements: ss}, Tape: base.Tape, Metric: base.Metric}, b
	}
	v := workThriftily(next)
	a := &Answer{To: Reply{Kind: "what if", Statements: settled}, Replaced: told}
	v.tell(a)
	if a.Ask == nil && a.Verdict != Blocked && slices.ContainsFunc(settled, hangsOnHeight) {
		a.Ask = v.wantedIn(upField) // whether rails fit is not answered by the posts
	}
	v.tellCompared(a)
	a.Change = moved(base, a)
	v.tellMore(a)
	a.tellDrift(base, settled)
	return a, next
}

// hangsOnHeight reports whether what is tried fits or not by how high the wall is.
func hangsOnHeight(s Statement) bool {
	switch s.Name.Quantity {
	case Rails, Gap, BottomGap:
		return true
	}
	return false
}

// tellDrift tells how far the top drifts from where it was when every rail runs a little wider or narrower than it was
// reckoned, and each is set from the one below. More than half an inch is another board, not one that is off.
func (a *Answer) tellDrift(base *Answer, ss []Statement) {
	l := base.layoutOr()
	if l == nil || l.Up == nil {
		return
	}
	for _, s := range ss {
		off := s.Value.Num.Sub(l.RailFace)
		if s.Name.Quantity != RailFace || s.Op != Eq || s.Value.Of != nil || off.Sign() == 0 || exact.New(1, 2).Less(off.Abs()) {
			continue
		}
		far := Product(Tally(l.Rails), Num(off.Abs()))
		top := Sum(Num(l.WallHeight), Num(far.Value))
		if off.Sign() < 0 {
			top = Less(Num(l.WallHeight), Num(far.Value))
		}
		a.Work = append(a.Work, Line(string(WallHeight), "drift", far), Line(string(WallHeight), "drift top", top))
	}
}

func (a *Answer) layoutOr() *Layout {
	if a == nil {
		return nil
	}
	return a.Layout
}

// cannot asks back what a statement lacks: its figures are in the facts, for explain to word.
func cannot(err error) *Question {
	if n, ok := err.(Nothing); ok {
		return &Question{Key: "nothing to change", Facts: []Fact{{Key: "name", Names: []string{n.Name.String()}}}}
	}
	return &Question{Key: "cannot change", Facts: []Fact{{Key: "why", Names: []string{"", err.Error()}}}}
}

// moved lists what differs between two answers, most important first. Lengths are inches.
func moved(before, after *Answer) []Moved {
	if before == nil || after.Layout == nil {
		return nil
	}
	var out []Moved
	for _, q := range []Quantity{WallHeight, Rails, RailSize, Gap, BottomGap, Span, AddedPosts, Bays, Bay, Openings, Opening,
		OpeningFromLeft, PostHeight, Stiffeners, StiffenerSpacing} {
		n := Name{Quantity: q}
		was, okWas := before.Layout.Value(n)
		is, okIs := after.Layout.Value(n)
		if okWas && okIs && bare(was) != bare(is) || okWas != okIs && (q == Openings || q == Opening) {
			out = append(out, Moved{Of: string(q), From: bareOr(was, okWas), To: bareOr(is, okIs)})
		}
	}
	return append(out, movedPlaces(before, after)...)
}

func bareOr(v Value, ok bool) string {
	if !ok {
		return ""
	}
	return bare(v)
}

// movedPlaces lists posts that stand elsewhere, and bays that are each of their own width.
func movedPlaces(before, after *Answer) []Moved {
	if before.Layout == nil || before.Layout.Along == nil || after.Layout.Along == nil {
		return nil
	}
	var out []Moved
	n := max(len(before.Layout.Posts), len(after.Layout.Posts))
	for i := 1; i <= n; i++ {
		name := Name{Quantity: PostFromLeft, Post: i}
		was, okWas := before.Layout.Value(name)
		is, okIs := after.Layout.Value(name)
		if bareOr(was, okWas) != bareOr(is, okIs) {
			out = append(out, Moved{Of: name.String(), From: bareOr(was, okWas), To: bareOr(is, okIs)})
		}
	}
	return out
}

// bare writes a value as the data has it: lengths as rationals, counts and words as they are.
func bare(v Value) string {
	if v.Word != "" {
		return v.Word
	}
	return v.Num.String()
}

// tellMore adds what a trial wants beside its layout: what one rail more would take, and which heights would give even
// gaps, where the gap is said and does not come out even.
//
//	Work notes "one more", "even wall"; fact "next rails": Nums one rail more, what it takes, how much too high (or −room)
func (v *solved) tellMore(a *Answer) {
	if a.Layout == nil || a.Layout.Up == nil || !v.says(Gap) {
		return
	}
	u := a.Layout.Up
	if u.Rails >= mostRailsListed || len(u.Gaps) > 0 && !v.says(Gap) {
		return
	}
	n := u.Rails + 1
	takes := Sum(Product(Tally(n), Num(u.RailFace)), Product(Tally(n-1), Num(u.Gap)))
	over := takes.Value.Sub(u.WallHeight)
	if over.Sign() > 0 {
		a.Work = append(a.Work, Line(string(Rails), "one more", takes))
		a.Facts = append(a.Facts, Fact{Key: "next rails", Nums: []exact.Rat{exact.Int(n), takes.Value, over}})
	}
	if u.Gap.Eq(u.BottomGap) || v.sameUnder() {
		return
	}
	pitch := Sum(Num(u.RailFace), Num(u.Gap))
	for _, k := range []int{u.Rails, n} {
		a.Work = append(a.Work, Line(string(WallHeight), "even wall", Product(Tally(k), Num(pitch.Value))))
	}
}

// counted writes a whole number.
func counted(n int) string { return strconv.Itoa(n) }

// Differences lists what differs between two answers, most important first. Lengths are inches.
func Differences(before, after *Answer) []Moved { return moved(before, after) }
