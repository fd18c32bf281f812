package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// "How thick are the brackets, and the floor falls half an inch to the right", "what's my budget, and don't go above 50 with the wall": a
// statement of what is so, or an order (readOnward), behind a whole question is one of its own. It used to be tried for the question ("what
// if"), and was lost. What may be otherwise ("how many rails, gap 2-1/2") is tried.

// opensOrder reports whether a clause begins with an order that sets something: "keep the wall to 44 or less", "don't go above 50".
func opensOrder(in []scan.Atom) bool {
	w := measure.Reader{Atoms: in}
	return orderVerbs[w.Word(0)] || w.Word(0) == "do" && w.Word(1) == "not" || w.Word(0) == "never"
}

// orderVerbs begin an order that sets something.
var orderVerbs = scan.WordSet("make keep set put use raise lower widen narrow lose drop go add lift bring open close try hold cut shave trim take leave stay limit cap enter write note buy move shift stick")

// tellsOfSite reports whether what is told beside what is wanted is itself a fact of the site, of something else than what is wanted: "the
// slab is level; new post flush with the wall" tells both.
func tellsOfSite(told act.Reading, wanted []act.Act) bool {
	if told.Ask != nil || len(told.Acts) == 0 {
		return false
	}
	for _, a := range told.Acts {
		if a.Kind != act.State || !parse.OfTheSite[a.Statements[0].Name.Quantity] {
			return false
		}
		same := func(b act.Act) bool {
			return len(b.Statements) > 0 && b.Statements[0].Name.Quantity == a.Statements[0].Name.Quantity || b.Name != nil && b.Name.Quantity == a.Statements[0].Name.Quantity
		}
		if slices.ContainsFunc(wanted, same) {
			return false
		}
	}
	return true
}
