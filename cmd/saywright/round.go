package main

import (
	"context"
	"errors"
	"slices"

	"saywright/grammar"
	"saywright/solver"
)

// round carries out one line on a copy of the conversation.
type round struct {
	talk   Talk
	ctx    context.Context
	line   string
	begin  standing         // what stood before this line, or what its undo went back to
	done   []string         // normal forms of the acts carried out since begin
	in     []string         // what an act such as "take that" says, in words of its own: told when it is undone
	parts  []*solver.Answer // what each act answers, in order
	wall   string           // the wall that the last of them is about
	on     *trial           // the what-if earlier in this line: asks after it are answered within it
	files  []file           // drawings to write once all of the line is clear
	units  string           // in which the answer at hand was asked for, "" as the person works
	spoken *solver.Name     // what was spoken of before this line: a picture marks it
	took   *grammar.Act     // what puts back what an undo of this line took
	lead   *solver.Fact     // told before all that the line asks for

	nothing *solver.Question // set where an act has nothing to act on: then the line changes nothing
}

// carrying maps each act to what carries it out; statements are gathered before.
var carrying map[grammar.ActKind]func(*round, grammar.Act)

func init() { // by init, because the functions lead back to the table
	carrying = map[grammar.ActKind]func(*round, grammar.Act){
		grammar.Ask: (*round).ask, grammar.WhatIf: (*round).whatIf, grammar.Why: (*round).why,
		grammar.WhyNot: (*round).whyNot, grammar.Check: (*round).check, grammar.Tolerance: (*round).tolerance,
		grammar.ShowAll: (*round).showAll, grammar.Next: (*round).next,
		grammar.Teach: (*round).teach, grammar.Figure: (*round).figures,
		grammar.Take: (*round).takeWay, grammar.TakeThat: (*round).takeThat,
		grammar.Forget: (*round).forget, grammar.ForgetAllBut: (*round).forgetAllBut, grammar.SetAside: (*round).setAside,
		grammar.Undo: (*round).undo, grammar.Redo: (*round).redo, grammar.StartOver: (*round).startOver,
		grammar.Recap: (*round).recap, grammar.HelpMe: (*round).help, grammar.Quit: (*round).quit,
		grammar.Save: (*round).save, grammar.Open: (*round).open, grammar.Compare: (*round).compare,
		grammar.SameAs: (*round).sameAs, grammar.DrawTo: (*round).drawTo, grammar.PrintTo: (*round).printTo,
	}
}

func (r *round) carryOut(acts []grammar.Act) {
	r.begin = r.talk.now
	for i := 0; i < len(acts) && r.nothing == nil && r.ctx.Err() == nil; {
		n := 1
		if acts[i].Kind == grammar.State {
			for i+n < len(acts) && acts[i+n].Kind == grammar.State {
				n++
			}
			r.state(acts[i : i+n])
		} else {
			from := len(r.parts)
			if r.units = ""; len(acts[i].Statements) == 0 { // what is tried may be kept, so it is tried in the units at work
				r.units = acts[i].Units
			}
			carrying[acts[i].Kind](r, acts[i])
			for _, p := range r.parts[from:] {
				p.To.Units = acts[i].Units
			}
		}
		r.note(acts[i : i+n])
		i += n
	}
}

// note keeps what was carried out, to tell it when it is undone.
func (r *round) note(acts []grammar.Act) {
	k := acts[0].Kind
	switch {
	case k == grammar.Undo || k == grammar.Redo:
	case r.in != nil:
		r.done = append(r.done, r.in...)
	default:
		r.done = append(r.done, heard(acts)...)
	}
	r.in = nil
}

// finish writes what is to be written, and puts the line on the way back.
func (r *round) finish(acts []grammar.Act) {
	if r.ctx.Err() != nil {
		return
	}
	if err := errors.Join(r.talk.shelf.write(), r.talk.write(r.files)); err != nil {
		r.nothing = &solver.Question{Key: "cannot write", Facts: []solver.Fact{{Key: "why", Names: []string{reason(err)}}}}
		return
	}
	t := &r.talk
	if !t.now.same(r.begin) {
		t.past = append(slices.Clip(t.past), step{said: r.done, from: r.begin, to: t.now})
		t.future = nil
	}
	tries := slices.ContainsFunc(acts, func(a grammar.Act) bool { return a.Kind == grammar.WhatIf })
	t.trying = t.tried != nil && t.now.same(r.begin) && (tries || t.trying)
	switch {
	case !t.trying:
		t.upon = nil
	case tries:
		t.upon = t.tried
	case slices.ContainsFunc(acts, leavesTrial):
		t.upon = nil
	}
	t.lately = spokenOf(acts)
	r.keepBack(acts)
}

// leavesTrial reports whether an act turns from what was tried back to what stands: who asks why, for all of it, or for help stays with it.
func leavesTrial(a grammar.Act) bool {
	return a.Kind != grammar.Why && a.Kind != grammar.ShowAll && a.Kind != grammar.HelpMe
}

// spokenOf lists what a line spoke of, in order.
func spokenOf(acts []grammar.Act) []solver.Name {
	var names []solver.Name
	for _, a := range acts {
		if a.Name != nil {
			names = append(names, *a.Name)
		}
		names = append(names, a.Names...)
		for _, s := range a.Statements {
			names = append(names, s.Name)
		}
	}
	return names
}

// theOne returns what was spoken of, where it is one thing.
func theOne(names []solver.Name) *solver.Name {
	for _, n := range names {
		if n.String() != names[0].String() {
			return nil
		}
	}
	if len(names) == 0 {
		return nil
	}
	return &names[0]
}

// part adds what an act answers, and remembers it for "why that" and "take 2".
func (r *round) part(b solver.Book, base, a *solver.Answer, to solver.Reply, facts ...solver.Fact) *solver.Answer {
	own := *a // answers to what stands are kept and used again
	if to.Kind != "" {
		own.To = to
	}
	own.Facts = append(slices.Clip(own.Facts), facts...)
	if base != nil && len(r.talk.now.books) > 1 && (len(r.parts) == 0 || r.wall != b.Wall) {
		own.Facts = append(own.Facts, solver.Fact{Key: "wall", Names: []string{b.Wall}})
	}
	r.wall = b.Wall
	r.parts = append(r.parts, &own)
	if own.To.Kind != "command" || own.Layout != nil || len(own.Because) > 0 {
		r.talk.last = &remark{book: b, base: base, answer: &own}
	}
	return &own
}

// tell adds an answer to a command that changes no wall.
func (r *round) tell(topic string, facts ...solver.Fact) {
	b := r.talk.now.book(r.talk.now.hand)
	verdict := solver.Open
	if !b.Empty() {
		verdict = r.talk.base(b).Verdict
	}
	r.parts = append(r.parts, &solver.Answer{Verdict: verdict, Facts: facts, To: solver.Reply{Kind: "command", Topic: topic}})
}

// stand lets another standing stand and answers with what stands now.
func (r *round) stand(to standing, reply solver.Reply, told []solver.Replaced, facts ...solver.Fact) {
	r.talk.change(to)
	r.on, r.talk.stuck = nil, nil
	b := to.book(to.hand)
	a := r.talk.base(b)
	own := r.part(b, a, a, reply, facts...)
	own.Replaced = told
	r.stuckOn(&trial{wall: b.Wall, from: b, book: b, to: a})
}

// stuckOn remembers a blocked answer, so that one of its ways out can be taken.
func (r *round) stuckOn(t *trial) {
	if len(t.to.Ways) > 0 {
		r.talk.stuck = t
	}
}

func (r *round) none(key, example string, facts ...solver.Fact) {
	r.nothing = &solver.Question{Key: key, Example: example, Facts: facts}
}

// at returns the wall that a name speaks of, its book, and the answer to it: within the what-if of this line, if any, and in the units
// that the answer is asked for in.
func (r *round) at(wall string) (solver.Book, *solver.Answer) {
	b, base := r.worked(wall)
	if r.units == "" || (r.units == "metric") == b.Metric() {
		return b, base
	}
	in, _, _, err := b.With(solver.Statement{Name: solver.Name{Quantity: solver.Units}, Value: solver.Value{Word: r.units}}, base.Layout)
	if err != nil {
		return b, base
	}
	return in, solver.Solve(in)
}

func (r *round) worked(wall string) (solver.Book, *solver.Answer) {
	if wall == "" {
		wall = r.talk.now.hand
	}
	if r.on != nil && r.on.wall == wall {
		return r.on.book, r.on.to
	}
	b := r.talk.now.book(wall)
	return b, r.talk.base(b)
}
