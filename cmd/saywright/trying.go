package main

import (
	"slices"

	"saywright/grammar"
	"saywright/solver"
)

// whatIf tries statements out.
func (r *round) whatIf(a grammar.Act) {
	wall, said, ok := r.bareAll(a.Statements)
	if !ok {
		return
	}
	from, base := r.atStanding(wall)
	_, settled, _, err := from.WithAll(said, base.Layout)
	if err != nil {
		r.cannot(said[0], err)
		return
	}
	to, book := solver.Try(from, base, settled)
	t := &trial{wall: wall, from: from, said: settled, book: book, to: to}
	r.on, r.talk.tried = t, t
	r.part(book, to, to, solver.Reply{Kind: "what if", Statements: settled})
	r.stuckOn(t)
}

// atStanding is at without the what-if of this line: a what-if is always laid over what stands.
func (r *round) atStanding(wall string) (solver.Book, *solver.Answer) {
	b := r.talk.now.book(wall)
	return b, r.talk.base(b)
}

func (r *round) whyNot(a grammar.Act) {
	wall, said, ok := r.bareAll(a.Statements)
	if !ok {
		return
	}
	b, base := r.at(wall)
	out := solver.WhyNot(b, base, said)
	r.part(b, base, out, solver.Reply{Kind: "why not", Statements: said})
	if book, _, _, err := b.WithAll(said, base.Layout); err == nil {
		r.stuckOn(&trial{wall: wall, from: b, said: said, book: book, to: out})
	}
}

func (r *round) check(a grammar.Act) {
	wall, claims, ok := r.bareAll(a.Statements)
	if !ok {
		return
	}
	b, base := r.at(wall)
	r.part(b, base, solver.Hold(b, base, claims), solver.Reply{Kind: "check", Statements: claims})
}

func (r *round) tolerance(a grammar.Act) {
	b, base := r.at(a.Statements[0].Name.Wall)
	off := a.Statements[0].Value.Num
	r.part(b, base, solver.Drift(b, base, off), solver.Reply{Kind: "tolerance", Statements: a.Statements})
}

// takeThat lets the last what-if stand.
func (r *round) takeThat(grammar.Act) {
	t := r.talk.tried
	if t == nil {
		r.none("nothing tried", "what if gap = 2 in")
		return
	}
	r.takeOver(t, nil)
}

// takeOver lets a trial stand, with the changes of one of its ways.
func (r *round) takeOver(t *trial, changes []solver.Change) {
	b := r.talk.now.book(t.wall)
	was := r.talk.base(b)
	var told []solver.Replaced
	var kept []string
	var stand []solver.Statement
	take := func(s solver.Statement) (solver.Statement, bool) {
		next, settled, replaced, err := b.With(s, nil)
		if err != nil {
			r.cannot(s, err)
			return s, false
		}
		b, told, kept, stand = next, append(told, replaced...), append(kept, settled.String()), append(stand, settled)
		return settled, true
	}
	for _, s := range t.said {
		if _, ok := take(s); !ok {
			return
		}
	}
	for _, c := range changes {
		b, _ = b.ForgetOnly(c.Old)
		if c.New.Name.Quantity == "" { // a wish that is given up
			told = append(told, solver.Replaced{Old: c.Old})
			continue
		}
		settled, ok := take(c.New)
		if !ok {
			return
		}
		if c.Old.String() != settled.String() {
			told = append(told, solver.Replaced{Old: c.Old, New: settled})
		}
	}
	topic := "take that"
	if changes != nil {
		topic = "take"
	}
	forms := formsOf(b.Standing())
	kept = slices.DeleteFunc(kept, func(s string) bool { return !slices.Contains(forms, s) }) // a change of a way may give up what was tried
	r.in = kept
	r.stand(r.talk.now.with(b), solver.Reply{Kind: "command", Topic: topic}, told, solver.Fact{Key: "kept", Names: kept})
	r.tellLength(was, stand)
}

// takeWay takes one of the ways out of the last blocked answer.
func (r *round) takeWay(a grammar.Act) {
	t := r.talk.stuck
	if t == nil {
		r.none("nothing blocked", "ask options")
		return
	}
	if a.N < 1 || a.N > len(t.to.Ways) {
		r.none("fewer ways", "take 1", solver.Fact{Key: "ways", Nums: counts(a.N, len(t.to.Ways))})
		return
	}
	r.takeOver(t, t.to.Ways[a.N-1].Changes)
}
