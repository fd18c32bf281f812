package main

import (
	"slices"

	"saywright/grammar"
	"saywright/solver"
	"saywright/solver/exact"
)

// askedOf returns the wall that a question is about, "" for that at hand, and the quantity, nil where it is a table.
func askedOf(a grammar.Act) (wall string, name *solver.Name) {
	if a.Name == nil {
		return a.Wall, nil
	}
	n := *a.Name
	wall, n.Wall = n.Wall, ""
	return wall, &n
}

func (r *round) ask(a grammar.Act) {
	wall, name := askedOf(a)
	b, base := r.at(wall)
	if a.Topic == "steps" {
		r.talk.stepAt = 0
	}
	if name != nil && r.on != nil && r.on.wall == b.Wall {
		if free, to, told, ok := r.solvedFor(*name); ok {
			r.part(free, to, solver.Ask(free, to, "", name), solver.Reply{Kind: "ask", Name: name}, told)
			return
		}
	}
	own := r.part(b, base, solver.Ask(b, base, a.Topic, name), solver.Reply{Kind: "ask", Topic: a.Topic, Name: name, As: a.As}, append(r.notTried(b.Wall), r.climbing(a.Topic)...)...)
	if t := r.talk.stuck; t != nil && len(r.parts) == 1 && !tellsWays[a.Topic] && t.wall == b.Wall && sameClash(t.to, own) {
		own.Facts = append(own.Facts, solver.Fact{Key: "still blocked"})
	}
	if r.on == nil && base.Verdict != solver.Blocked {
		r.stuckOn(&trial{wall: b.Wall, from: b, book: b, to: own}) // a screw too long, a budget too small
	}
}

// tellsWays are the topics that ask for what stands in the way and what would mend it: they tell it in full each time.
var tellsWays = map[string]bool{"options": true, "layout": true}

// solvedFor leaves a quantity open that was said, where what it must be for what this line tries is asked: "what wall gives a gap of 3" wants the wall to
// change. Where it may be many then, the counts are those that stand. ok is false where it was not said, or still is not told.
func (r *round) solvedFor(n solver.Name) (solver.Book, *solver.Answer, solver.Fact, bool) {
	t := r.on
	equal := func(list []solver.Statement, of solver.Name) bool {
		return slices.ContainsFunc(list, func(s solver.Statement) bool { return s.Name == of && s.Op == solver.Eq })
	}
	if equal(t.said, n) || !equal(t.book.Standing(), n) {
		return solver.Book{}, nil, solver.Fact{}, false
	}
	free, _ := t.book.Forget(n)
	if n.Quantity == solver.Opening { // left open there still is one
		one := solver.Statement{Name: solver.Name{Quantity: solver.Openings}, Op: solver.Eq, Value: solver.Number(1)}
		free, _, _, _ = free.WithAll([]solver.Statement{one}, nil)
	}
	told := solver.Fact{Key: "left open", Names: []string{n.String()}}
	settles := func(a *solver.Answer) bool {
		_, ok := a.Layout.Value(n)
		return ok && a.Verdict == solver.Fits
	}
	if a := solver.Solve(free); a.Verdict == solver.Blocked || settles(a) {
		return free, a, told, true // blocked: no figure of it would do
	}
	for _, kept := range []solver.Quantity{solver.Rails, solver.AddedPosts} { // with the counts that stand, one after the other
		of := solver.Name{Quantity: kept}
		count, ok := t.to.Layout.Value(of)
		if !ok || of == n || equal(t.said, of) {
			continue
		}
		with, _, _, err := free.WithAll([]solver.Statement{{Name: of, Op: solver.Eq, Value: count}}, nil)
		if err != nil {
			continue
		}
		free, told.Names, told.Nums = with, append(told.Names, string(kept)), append(told.Nums, count.Num)
		if a := solver.Solve(free); settles(a) {
			return free, a, told, true
		}
	}
	return solver.Book{}, nil, solver.Fact{}, false
}

// why derives a quantity or a table; "why that" goes back to the last answer and tells all of it.
func (r *round) why(a grammar.Act) {
	if a.Topic == "that" {
		r.showAll(a)
		return
	}
	wall, name := askedOf(a)
	b, base, told := r.upon(wall)
	derived := solver.Why(b, base, name, a.Topic, false)
	r.part(b, base, derived, solver.Reply{Kind: "why", Topic: a.Topic, Name: name}, append(told, r.notSoMany(name, derived)...)...)
}

// upon is at for who asks why: right behind what was only tried that is meant, and told.
func (r *round) upon(wall string) (solver.Book, *solver.Answer, []solver.Fact) {
	t := r.talk.upon
	if wall == "" {
		wall = r.talk.now.hand
	}
	if r.on != nil || t == nil || t.wall != wall || r.units != "" || !r.talk.now.same(r.begin) {
		b, base := r.at(wall)
		return b, base, nil
	}
	return t.book, t.to, []solver.Fact{{Key: "of the trial", Names: formsOf(t.said)}}
}

// notTried tells, right behind what was only tried, that a question is answered by what stands.
func (r *round) notTried(wall string) []solver.Fact {
	t := r.talk.upon
	told := func(p *solver.Answer) bool {
		return slices.ContainsFunc(p.Facts, func(f solver.Fact) bool { return f.Key == "without the trial" })
	}
	if r.on != nil || t == nil || t.wall != wall || !r.talk.now.same(r.begin) || slices.ContainsFunc(r.parts, told) {
		return nil
	}
	return []solver.Fact{{Key: "without the trial", Names: formsOf(t.said)}}
}

func (r *round) showAll(grammar.Act) {
	m := r.talk.last
	if m == nil {
		r.none("nothing answered", "why rails")
		return
	}
	to := m.answer.To
	topic := to.Topic
	if to.Name == nil && topic == "" || to.Kind == "command" {
		topic = "that"
	}
	full := solver.Why(m.book, m.base, to.Name, topic, true)
	var told []solver.Fact
	if t := r.talk.tried; t != nil && r.talk.trying && t.to == m.base { // of the trial even where something was asked of what stands since
		told = []solver.Fact{{Key: "of the trial", Names: formsOf(t.said)}}
	}
	r.part(m.book, m.base, full, solver.Reply{Kind: "why", Topic: topic, Name: to.Name, Full: true}, told...)
}

// next tells one step of the work after another.
func (r *round) next(grammar.Act) {
	b, base := r.at("")
	all := solver.Ask(b, base, "steps", nil)
	if len(all.Steps) == 0 {
		r.none("no steps yet", "wall 48 high, span 12 feet")
		return
	}
	k := r.talk.stepAt
	if k >= len(all.Steps) {
		r.talk.stepAt = 0
		r.tell("next", solver.Fact{Key: "steps done", Nums: counts(len(all.Steps))})
		return
	}
	one := *all
	one.Steps = all.Steps[k : k+1]
	r.part(b, base, &one, solver.Reply{Kind: "command", Topic: "next"}, solver.Fact{Key: "step", Nums: counts(k+1, len(all.Steps))})
	r.talk.stepAt++
}

// teach begins a lesson; any other line may come in between, and figures go on with it.
func (r *round) teach(a grammar.Act) {
	if a.Name == nil {
		r.none("nothing to teach", "teach gap")
		return
	}
	b, base := r.at(a.Name.Wall)
	n := *a.Name
	n.Wall = ""
	lesson, first := solver.NewLesson(b, base, n.Quantity)
	r.talk.lesson = lesson
	if lesson == nil || lesson.Done() {
		r.talk.lesson = nil
	}
	r.part(b, base, first, solver.Reply{Kind: "teach", Name: &n})
}

func (r *round) figures(a grammar.Act) {
	l := r.talk.lesson
	if l == nil {
		r.none("no lesson", "teach gap")
		return
	}
	b, base := r.at("")
	r.part(b, base, l.Hear(a.Figures), solver.Reply{}) // the lesson says itself what it replies to
	if l.Done() {
		r.talk.lesson = nil
	}
}

func (r *round) recap(grammar.Act) {
	var facts []solver.Fact
	for _, b := range r.talk.now.books {
		if list := forms(b); len(list) > 0 {
			facts = append(facts, solver.Fact{Key: "recap", Names: append([]string{b.Wall}, list...)})
		}
	}
	r.tell("recap", facts...)
}

func (r *round) help(a grammar.Act) {
	topic := a.Topic
	if a.Name != nil {
		topic = string(a.Name.Quantity)
	}
	r.tell("help", solver.Fact{Key: "help", Names: append([]string{topic}, grammar.Help(topic)...)})
}

func (r *round) quit(grammar.Act) { r.tell("quit") }

func (r *round) undo(grammar.Act) {
	t := &r.talk
	if !t.now.same(r.begin) { // something earlier in this very line
		undone := r.done
		r.done = nil
		r.stand(r.begin, solver.Reply{Kind: "command", Topic: "undo"}, nil, solver.Fact{Key: "undone", Names: undone})
		return
	}
	if t.trying {
		dropped := solver.Fact{Key: "trial dropped"}
		if n := len(t.past); n > 1 { // the first line is all that stands
			dropped.Names = t.past[n-1].said // what taking back once more would take
		}
		if t.stuck == t.tried { // its ways out went with it
			b := t.now.book(t.now.hand)
			t.stuck = nil
			if !b.Empty() {
				r.stuckOn(&trial{wall: b.Wall, from: b, book: b, to: t.base(b)})
			}
		}
		r.took = again(t.tried, t.now.hand)
		t.last = t.ofStanding()
		t.tried, t.trying, t.upon = nil, false, nil
		r.tell("undo", dropped)
		return
	}
	if len(t.past) == 0 {
		r.none("nothing to undo", "")
		return
	}
	s := t.past[len(t.past)-1]
	t.past, t.future = t.past[:len(t.past)-1], append(t.future[:len(t.future):len(t.future)], s)
	r.stand(s.from, solver.Reply{Kind: "command", Topic: "undo"}, nil, solver.Fact{Key: "undone", Names: s.said})
	r.begin, r.done = t.now, nil
	r.took = &grammar.Act{Kind: grammar.Redo}
}

func (r *round) redo(grammar.Act) {
	t := &r.talk
	if len(t.future) == 0 || !t.now.same(r.begin) {
		r.none("nothing to redo", "")
		return
	}
	s := t.future[len(t.future)-1]
	t.future, t.past = t.future[:len(t.future)-1], append(t.past[:len(t.past):len(t.past)], s)
	r.stand(s.to, solver.Reply{Kind: "command", Topic: "redo"}, nil, solver.Fact{Key: "redone", Names: s.said})
	r.begin, r.done = t.now, nil
}

func (r *round) startOver(grammar.Act) {
	t := &r.talk
	gone := 0
	for _, b := range t.now.books {
		gone += len(forms(b))
	}
	t.tried, t.upon, t.last, t.lesson, t.before, t.stepAt = nil, nil, nil, nil, nil, 0
	r.stand(standing{}, solver.Reply{Kind: "command", Topic: "start over"}, nil, solver.Fact{Key: "started over", Nums: counts(gone)})
	t.last = nil
}

func counts(list ...int) []exact.Rat {
	out := make([]exact.Rat, len(list))
	for i, n := range list {
		out[i] = exact.Int(n)
	}
	return out
}
