package main

import (
	"errors"
	"slices"

	"saywright/grammar"
	"saywright/solver"
	"saywright/solver/exact"
)

// state says statements, each of its wall. A wall named is at hand from then on.
func (r *round) state(acts []grammar.Act) {
	to := r.talk.now
	var said []solver.Statement
	var told []solver.Replaced
	for _, a := range acts {
		for _, s := range a.Statements {
			next, settled, replaced, err := r.say(to, s)
			if err != nil {
				r.cannot(s, err)
				return
			}
			to, said, told = next, append(said, settled), append(told, replaced...)
			r.in = append(r.in, inFull(to.hand, settled))
		}
	}
	before := r.talk.now.book(to.hand)
	was := r.talk.base(before)
	r.stand(to, solver.Reply{Kind: "state", Statements: said}, told)
	if now := r.parts[len(r.parts)-1]; sameClash(was, now) {
		now.Facts = append(now.Facts, solver.Fact{Key: "still blocked"})
	} else if !before.Empty() && len(solver.Differences(was, now)) > 0 {
		now.Facts = append(now.Facts, solver.Fact{Key: "moved"}) // a drop or a part can move the layout: then it is told anew
		if a, b := posts(was), posts(now); a >= 0 && a < b && !slices.ContainsFunc(said, placesPosts) {
			now.Facts = append(now.Facts, solver.Fact{Key: "posts added", Nums: counts(a, b, b-a)})
		}
	}
	r.tellLength(was, said)
	r.tellMeasured(was, said)
}

// tellLength tells that the wall grew or shrank, where how far apart the end posts stand only follows from what fills it.
// said is what was said, kept or forgotten.
func (r *round) tellLength(was *solver.Answer, said []solver.Statement) {
	now := r.parts[len(r.parts)-1]
	r.tellOpening(was, now, said)
	before, ok := lengthOf(was)
	after, still := lengthOf(now)
	if !ok || !still || before.Eq(after) || slices.ContainsFunc(said, saysLength) {
		return
	}
	now.Facts = append(now.Facts, solver.Fact{Key: "span grown", Nums: []exact.Rat{before, after, after.Sub(before)}})
}

// openingsOf are the widths of the one opening before and after, where they differ.
func openingsOf(was, now *solver.Answer) (before, after exact.Rat, ok bool) {
	of := func(a *solver.Answer) *solver.Along {
		if a.Verdict != solver.Fits || a.Layout == nil || a.Layout.Along == nil || len(a.Layout.Along.Openings) != 1 {
			return nil
		}
		return a.Layout.Along
	}
	a, b := of(was), of(now)
	if a == nil || b == nil {
		return before, after, false
	}
	before, after = a.Openings[0].Width, b.Openings[0].Width
	return before, after, !before.Eq(after)
}

// tellOpening tells that the opening got wider or narrower, where nobody spoke of it: fewer stiffeners allow shorter bays only, and the rest is left open.
func (r *round) tellOpening(was, now *solver.Answer, said []solver.Statement) {
	if before, after, ok := openingsOf(was, now); ok && !slices.ContainsFunc(said, placesPosts) {
		now.Facts = append(now.Facts, solver.Fact{Key: "opening grown", Nums: []exact.Rat{before, after, after.Sub(before)}})
	}
}

func lengthOf(a *solver.Answer) (exact.Rat, bool) {
	if a.Verdict != solver.Fits || a.Layout == nil || a.Layout.Along == nil {
		return exact.Rat{}, false
	}
	return a.Layout.Span, true
}

// saysLength reports whether who says a statement speaks of how long the wall is.
func saysLength(s solver.Statement) bool {
	switch s.Name.Quantity {
	case solver.Span, solver.Overall, solver.Centers:
		return true
	}
	return false
}

// tellMeasured tells at once where the layout is not what the tape found: who hears of it only at the saw has set a post by it.
func (r *round) tellMeasured(was *solver.Answer, said []solver.Statement) {
	now := r.parts[len(r.parts)-1]
	b := r.talk.now.book(r.talk.now.hand)
	ofTape := func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Measured || s.Name.Quantity == solver.PostLeans
	}
	if now.Verdict != solver.Fits || !slices.ContainsFunc(b.Standing(), ofTape) || !slices.ContainsFunc(said, ofTape) && len(solver.Differences(was, now)) == 0 {
		return
	}
	q := solver.Ask(b, r.talk.base(b), "cuts", nil).Ask
	if q == nil || len(q.Facts) == 0 || q.Key == "layout first" {
		return
	}
	f := q.Facts[0]
	if along := now.Layout.Along; along != nil && q.Key == "span missed" && len(baysMeasured(b)) < len(along.Bays) {
		now.Facts = append(now.Facts, solver.Fact{Key: "others as planned"})
	}
	now.Facts = append(now.Facts, solver.Fact{Key: "not as measured", Names: append([]string{q.Key}, f.Names...), Nums: f.Nums})
}

// posts counts the added posts of an answer, -1 where it has no layout along the wall.
func posts(a *solver.Answer) int {
	if a.Layout == nil || a.Layout.Along == nil {
		return -1
	}
	return len(a.Layout.Posts)
}

// placesPosts reports whether who says a statement must expect it to set posts, or leaves the length of the wall to find: all that is along the wall but the
// stiffeners.
func placesPosts(s solver.Statement) bool {
	switch s.Name.Quantity {
	case solver.Span, solver.Overall, solver.Centers, solver.PostSize, solver.EndPostSize, solver.AddedPostSize, solver.AddedPosts, solver.PostFromLeft, solver.PostFromRight,
		solver.Bays, solver.Bay, solver.Opening, solver.Openings, solver.OpeningFromLeft, solver.OpeningFromRight, solver.OpeningSide, solver.PostHeight, solver.Goal:
		return true
	}
	return false
}

// baysMeasured is the set of bays that a tape was held to.
func baysMeasured(b solver.Book) map[int]bool {
	set := map[int]bool{}
	for _, s := range b.Standing() {
		if s.Name.Quantity == solver.Measured {
			set[s.Name.Bay] = true
		}
	}
	return set
}

// sameClash reports whether an answer is blocked by what the one before it was, with the same ways out: then it need not be told again.
func sameClash(was, now *solver.Answer) bool {
	if was.Verdict != solver.Blocked || now.Verdict != solver.Blocked || len(was.Because) != len(now.Because) || len(was.Ways) != len(now.Ways) {
		return false
	}
	for i := range now.Because {
		if !slices.EqualFunc(was.Because[i], now.Because[i], func(a, b solver.Rule) bool { return a.Rule == b.Rule && a.Says == b.Says }) {
			return false
		}
	}
	for i := range now.Ways {
		if !slices.EqualFunc(was.Ways[i].Changes, now.Ways[i].Changes, func(a, b solver.Change) bool { return a.Rule == b.Rule && a.To == b.To }) {
			return false
		}
	}
	return true
}

// inFull is what stands from a statement now, its wall in front: "gap = 2-3/4 in" where a quarter more was said.
func inFull(wall string, settled solver.Statement) string {
	if settled.Name.Quantity == solver.Units {
		return settled.String()
	}
	return prefixed(wall, settled.String())
}

func (r *round) say(to standing, s solver.Statement) (standing, solver.Statement, []solver.Replaced, error) {
	if s.Name.Quantity == solver.Units {
		return to.sayOfAll(s), s, nil, nil
	}
	wall := s.Name.Wall
	if wall == "" {
		wall = to.hand
	}
	s, err := r.bare(s)
	if err != nil {
		return to, s, nil, err
	}
	b, settled, replaced, err := to.book(wall).With(s, r.layoutFor(s, wall))
	if err != nil {
		return to, s, nil, err
	}
	return to.with(b), settled, replaced, nil
}

// layoutFor returns the layout that a relative change starts from.
func (r *round) layoutFor(s solver.Statement, wall string) *solver.Layout {
	if s.Op != solver.Plus && s.Op != solver.Minus && s.Op != solver.Times {
		return nil
	}
	return r.talk.base(r.talk.now.book(wall)).Layout
}

// notThere says that a wall leans on what is not known of another.
type notThere struct{ name solver.Name }

func (n notThere) Error() string { return n.name.String() + " is not known yet" }

// bare takes the wall's name off a statement: its book has it. A value that leans on another wall becomes what that
// wall's layout gives, or what was said of it.
func (r *round) bare(s solver.Statement) (solver.Statement, error) {
	own := s.Name.Wall
	if own == "" {
		own = r.talk.now.hand
	}
	s.Name.Wall = ""
	var err error
	if s.Value, err = r.leaning(s.Value, own); err == nil {
		s.Upper, err = r.leaning(s.Upper, own)
	}
	return s, err
}

func (r *round) leaning(v solver.Value, own string) (solver.Value, error) {
	if v.Of == nil || v.Of.Wall == "" {
		return v, nil
	}
	of := *v.Of
	of.Wall = ""
	if v.Of.Wall == own {
		v.Of = &of
		return v, nil
	}
	there, ok := r.talk.base(r.talk.now.book(v.Of.Wall)).Layout.Value(of)
	if !ok {
		return v, notThere{*v.Of}
	}
	if there.Word != "" {
		return there, nil
	}
	there.Num = there.Num.Mul(v.Factor()).Add(v.Num)
	return there, nil
}

// bareAll takes the walls off statements that are tried or claimed. All must speak of one wall: wall.
func (r *round) bareAll(list []solver.Statement) (wall string, out []solver.Statement, ok bool) {
	wall = r.talk.now.hand
	for i, s := range list {
		if s.Name.Wall != "" && (i == 0 || s.Name.Wall == wall) {
			wall = s.Name.Wall
		} else if s.Name.Wall != "" {
			r.none("one wall", "what if gap = 2 in")
			return "", nil, false
		}
		b, err := r.bare(s)
		if err != nil {
			r.cannot(s, err)
			return "", nil, false
		}
		out = append(out, b)
	}
	return wall, out, true
}

// cannot tells why a statement has nothing to act on.
func (r *round) cannot(s solver.Statement, err error) {
	var nothing solver.Nothing
	var there notThere
	switch {
	case errors.As(err, &nothing):
		r.none("nothing to change", "", solver.Fact{Key: "name", Names: []string{nothing.Name.String()}})
	case errors.As(err, &there):
		r.none("not known there", "", solver.Fact{Key: "name", Names: []string{there.name.String()}})
	default:
		r.none("cannot change", "", solver.Fact{Key: "why", Names: []string{s.String(), err.Error()}})
	}
}
