package grammar

import (
	"slices"

	"saywright/solver"
)

// "How thick are the brackets, and the floor falls half an inch to the right", "what's my budget, and don't go above 50 with the wall": a
// statement of what is so, or an order, behind a whole question is one of its own. It used to be tried for the question ("what if"), and was lost. What may be
// otherwise ("how many rails, gap 2-1/2") is tried.

// somethingElse are words that tell that something else follows.
var somethingElse = wordSet("then also plus finally lastly afterwards")

// ownStatement reports whether a clause that states or orders something by itself stands behind a whole question; after a word that tells
// that something else follows ("and then") its verb may be left out, and it may stand behind what was told as well.
func ownStatement(part, next []atom, onward bool) bool {
	if len(part) == 0 || len(next) < 2 || opensNone[next[0].text] || slices.ContainsFunc(next, func(a atom) bool { return ofBefore[a.text] }) {
		return false
	}
	asks := slices.ContainsFunc(next, func(a atom) bool { return asksItself[a.text] })
	if asksWhole(part, next[0].text) {
		return !asks && figuredAny([][]atom{next}) && (onward || opensStatement(next)) && !slices.ContainsFunc(part, func(a atom) bool { return carriesCondition[a.text] })
	}
	if !tellsWhole(part) || !figuredAny([][]atom{part}) && !sellerBefore(next) || slices.ContainsFunc(part, func(a atom) bool { return ofAnother[a.text] }) {
		return false
	}
	switch {
	case asks:
		return onward && asksItself[next[0].text]
	case onward || ofHaving(part) && sellerBefore(next):
		return figuredAny([][]atom{next}) && !numeric(next[0]) && !spelledNumber(next[0].text) && !soldLengths[next[0].text] && !(ofSale(part) && ofSale(next))
	}
	return false
}

// ofAnother are words by which somebody else is spoken of, whose claim may go on.
var ofAnother = wordSet("he she they his her their")

// ofSale reports whether a clause tells what is on sale, but not what somebody has at home.
func ofSale(part []atom) bool {
	return !speakers[part[0].text] && slices.ContainsFunc(part, func(a atom) bool { return sellsAt[a.text] || a.text == "comes" || a.text == "come" })
}

// ofHaving reports whether a clause tells what "I" or "we" have.
func ofHaving(part []atom) bool {
	return speakers[part[0].text] && slices.ContainsFunc(part[1:min(len(part), 4)], func(a atom) bool { return a.text == "have" || a.text == "got" || a.text == "own" })
}

// sellerBefore reports whether a clause begins with who sells lumber, and that it does: "the shop only stocks".
func sellerBefore(in []atom) bool {
	for k := 1; k < min(len(in), 5) && !numeric(in[k]); k++ {
		if sellsAt[in[k].text] {
			return selling[in[k-1].text] || k > 1 && selling[in[k-2].text]
		}
	}
	return false
}

// carriesCondition are words by which a question carries its own condition, which what follows may belong to.
var carriesCondition = wordSet("if when whether once with would could were suppose assuming say given should at for using without than he she they his her their why because")

// asksItself are words by which a clause asks.
var asksItself = wordSet("what how which where why would could if does did")

// opensStatement reports whether a clause is an order, or tells what "I" or "we" do.
func opensStatement(in []atom) bool {
	w := reader{in}
	switch v := w.word(0); {
	case orderVerbs[v]:
		return true
	case v == "do" && w.word(1) == "not", v == "never", v == "please":
		return true
	case speakers[v]:
		return len(in) > 2
	}
	return false
}

// orderVerbs begin an order that sets something.
var orderVerbs = wordSet("make keep set put use raise lower widen narrow lose drop go add lift bring open close try let hold cut shave trim take give leave stay limit cap allow enter write note buy get move shift stick")

// ofTheSite are quantities that are as they are: of the floor, the posts that stand, what was measured, bought, or is sold. Nobody tries them
// by telling them behind a question.
var ofTheSite = map[solver.Quantity]bool{
	solver.Measured: true, solver.Have: true, solver.Extra: true, solver.Price: true, solver.Stock: true, solver.Kerf: true, solver.Tape: true, solver.FixedRail: true, solver.PostLeans: true,
	solver.BracketEar: true, solver.BracketReach: true, solver.BracketThickness: true, solver.Drop: true, solver.FloorAtRight: true, solver.FloorFalls: true, solver.SlabThickness: true,
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
