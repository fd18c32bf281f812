package main

import (
	"saywright/grammar"
	"saywright/solver"
)

// ofWall takes the wall off a name: its book has it. Without one it is the wall at hand.
func (r *round) ofWall(n *solver.Name) solver.Book {
	wall := n.Wall
	if n.Wall = ""; wall == "" {
		wall = r.talk.now.hand
	}
	return r.talk.now.book(wall)
}

// forget takes back what was said of a quantity, or one statement alone.
func (r *round) forget(a grammar.Act) {
	if len(a.Statements) > 0 {
		one := a.Statements[0]
		b, gone := r.ofWall(&one.Name).ForgetOnly(one)
		r.forgot(b, gone, a.String())
		return
	}
	n := *a.Name
	b, gone := r.ofWall(&n).Forget(n)
	r.forgot(b, gone, a.String())
}

func (r *round) forgot(b solver.Book, gone []solver.Statement, said string) {
	if len(gone) == 0 {
		r.none("nothing to forget", "recap", solver.Fact{Key: "forget", Names: []string{said}})
		return
	}
	was := r.talk.base(r.talk.now.book(b.Wall))
	r.stand(r.talk.now.with(b), solver.Reply{Kind: "command", Topic: "forget"}, nil,
		solver.Fact{Key: "forgot", Names: formsOf(gone)})
	r.tellLength(was, gone)
}

func (r *round) forgetAllBut(a grammar.Act) {
	from := r.talk.now.book(r.talk.now.hand)
	kept := []solver.Name{{Quantity: solver.Units}} // how the person speaks is not of the wall
	for _, n := range a.Names {
		from = r.ofWall(&n)
		kept = append(kept, n)
	}
	b, gone := from.ForgetAllBut(kept)
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
