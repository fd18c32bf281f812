package grammar

import (
	"slices"

	"saywright/solver"
)

// "How thick are the brackets, and the floor falls half an inch to the right", "what's my budget, and don't go above 50 with the wall": a
// statement of what is so, or an order (readOnward), behind a whole question is one of its own. It used to be tried for the question ("what
// if"), and was lost. What may be otherwise ("how many rails, gap 2-1/2") is tried.

// opensOrder reports whether a clause begins with an order that sets something: "keep the wall to 44 or less", "don't go above 50".
func opensOrder(in []atom) bool {
	w := reader{in}
	return orderVerbs[w.word(0)] || w.word(0) == "do" && w.word(1) == "not" || w.word(0) == "never"
}

// orderVerbs begin an order that sets something.
var orderVerbs = wordSet("make keep set put use raise lower widen narrow lose drop go add lift bring open close try hold cut shave trim take leave stay limit cap enter write note buy move shift stick")

// ofTheSite are quantities that are as they are: of the floor, the posts that stand, what was measured, bought, or is sold. Nobody tries them
// by telling them behind a question.
var ofTheSite = map[solver.Quantity]bool{
	solver.Measured: true, solver.Have: true, solver.Extra: true, solver.Price: true, solver.Stock: true, solver.Kerf: true, solver.Tape: true, solver.FixedRail: true, solver.PostLeans: true,
	solver.RailFace: true, solver.BracketEar: true, solver.BracketReach: true, solver.BracketThickness: true, solver.Drop: true, solver.FloorAtRight: true, solver.FloorFalls: true, solver.SlabThickness: true,
}

// toldBehind states what was told behind a question rather than tries it, where all of it is of the site.
func (s *speech) toldBehind(g *group, asked Act, found []made) bool {
	for _, m := range found {
		if !ofTheSite[m.st.Name.Quantity] {
			return false
		}
	}
	asked.Kind = Ask
	s.act(g, asked)
	for _, m := range found {
		s.acts = append(s.acts, Act{Kind: State, Statements: []solver.Statement{m.st}, At: m.at, End: g.endOf(m.at)})
	}
	return true
}

// tellsOfSite reports whether what is told beside what is wanted is itself a fact of the site, of something else than what is wanted: "the
// slab is level; new post flush with the wall" tells both.
func tellsOfSite(told Reading, wanted []Act) bool {
	if told.Ask != nil || len(told.Acts) == 0 {
		return false
	}
	for _, a := range told.Acts {
		if a.Kind != State || !ofTheSite[a.Statements[0].Name.Quantity] {
			return false
		}
		same := func(b Act) bool {
			return len(b.Statements) > 0 && b.Statements[0].Name.Quantity == a.Statements[0].Name.Quantity || b.Name != nil && b.Name.Quantity == a.Statements[0].Name.Quantity
		}
		if slices.ContainsFunc(wanted, same) {
			return false
		}
	}
	return true
}
