package main

import (
	"errors"

	"saywright/grammar"
	"saywright/solver"
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
	r.stand(to, solver.Reply{Kind: "state", Statements: said}, told)
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
	var told []solver.Replaced
	var kept []string
	take := func(s solver.Statement) bool {
		next, settled, replaced, err := b.With(s, nil)
		if err != nil {
			r.cannot(s, err)
			return false
		}
		b, told, kept = next, append(told, replaced...), append(kept, settled.String())
		return true
	}
	for _, s := range t.said {
		if !take(s) {
			return
		}
	}
	for _, c := range changes {
		b, _ = b.ForgetOnly(c.Old)
		if c.New.Name.Quantity == "" { // a wish that is given up
			told = append(told, solver.Replaced{Old: c.Old})
			continue
		}
		if !take(c.New) {
			return
		}
		if c.Old.String() != c.New.String() {
			told = append(told, solver.Replaced{Old: c.Old, New: c.New})
		}
	}
	topic := "take that"
	if changes != nil {
		topic = "take"
	}
	r.in = kept
	r.stand(r.talk.now.with(b), solver.Reply{Kind: "command", Topic: topic}, told, solver.Fact{Key: "kept", Names: kept})
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

func (r *round) forget(a grammar.Act) {
	wall := r.talk.now.hand
	var gone []solver.Statement
	var b solver.Book
	if len(a.Statements) > 0 {
		one := a.Statements[0]
		if one.Name.Wall != "" {
			wall = one.Name.Wall
		}
		one.Name.Wall = ""
		b, gone = r.talk.now.book(wall).ForgetOnly(one)
	} else {
		n := *a.Name
		if n.Wall != "" {
			wall = n.Wall
		}
		n.Wall = ""
		b, gone = r.talk.now.book(wall).Forget(n)
	}
	r.forgot(b, gone, a.String())
}

func (r *round) forgot(b solver.Book, gone []solver.Statement, said string) {
	if len(gone) == 0 {
		r.none("nothing to forget", "recap", solver.Fact{Key: "forget", Names: []string{said}})
		return
	}
	r.stand(r.talk.now.with(b), solver.Reply{Kind: "command", Topic: "forget"}, nil,
		solver.Fact{Key: "forgot", Names: formsOf(gone)})
}

func (r *round) forgetAllBut(a grammar.Act) {
	wall := r.talk.now.hand
	names := []solver.Name{{Quantity: solver.Units}} // how the person speaks is not of the wall
	for _, n := range a.Names {
		if n.Wall != "" {
			wall = n.Wall
		}
		n.Wall = ""
		names = append(names, n)
	}
	b, gone := r.talk.now.book(wall).ForgetAllBut(names)
	r.forgot(b, gone, a.String())
}

func (r *round) setAside(a grammar.Act) {
	b := r.talk.now.book(r.talk.now.hand)
	r.stand(r.talk.now.with(b.SetAside(a.Topic)), solver.Reply{Kind: "command", Topic: "set aside"}, nil,
		solver.Fact{Key: "set aside", Names: []string{a.Topic}})
}

func formsOf(list []solver.Statement) []string {
	out := make([]string, len(list))
	for i, s := range list {
		out[i] = s.String()
	}
	return out
}
