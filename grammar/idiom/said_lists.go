package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// listTurns are turns of phrase round lists of lengths, with the plain words for each.
var listTurns = []phrase.Placed{
	{"(at|from|in|down at|over at|out at) [(my|our|his)] [(timber|lumber|local|builders|nearest)] (merchant|merchants|supplier|suppliers|dealer|depot|mill|sawmill|outlet|wholesaler|retailer)", "at the yard", lengthsBehind},
	{"[(have|has)] (came|come|arrived) [in] (at|from) [(my|our)] [(timber|lumber|local|builders)] (yard|store|shop|lumberyard|merchant|merchants|supplier|dealer|depot|mill|sawmill|outlet)", "just came in", lengthsBehind},
	{"(is|are|was|were|would be) all [that] (they|we|he|you|SELLER) [(ever|now)] (sold|had|carried|stocked|kept|got)", "are all they sell", lengthsBehind},
	{"SELLER no longer (carries|stocks|sells|keeps|has|offers)", "they no longer carry", listAhead},
	{"## (runs|lines|tiers|layers|lifts|bands|levels|strakes|ranks|strands) of !(@)", "$1 rails of $2", nil},
	{"they [(just|really|also|only)] want", "they would like", nothingPriced},
	{"to [the] list", "to the lengths they sell", yardBoth(addsLength, yardClauseEnds)},
}

// listAhead: lengths of lumber follow, "8s" as well.
func listAhead(before, after []scan.Atom) bool {
	return lengthsAhead(before, after) || len(after) > 1 && after[0].Kind == scan.Digits && after[1].Text == "s"
}

// nothingPriced: what follows tells no price, as "they want 8.95 for a ten" does, and is no errand.
func nothingPriced(_, after []scan.Atom) bool {
	return len(after) > 1 && (chunk.Numeric(after[0]) || chunk.Noun[after[0].Text]) && !LengthsIn(after) && !YardItemIn(after) && !slices.ContainsFunc(after, func(a scan.Atom) bool {
		return pricesWanted[a.Text] || CoinNames[a.Text] || a.Kind == scan.Digits && CentsWritten(a.Text)
	})
}

var pricesWanted = scan.WordSet("for to $ each apiece ea per me us you more money paid payment cash deposit order sold back")
