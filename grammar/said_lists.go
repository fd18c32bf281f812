package grammar

// listTurns are turns of phrase round lists of lengths, with the plain words for each.
var listTurns = []placedPhrase{
	{"(at|from|in|down at|over at|out at) [(my|our|his)] [(timber|lumber|local|builders|nearest)] (merchant|merchants|supplier|suppliers|dealer|depot|mill|sawmill|outlet|wholesaler|retailer)", "at the yard", lengthsBehind},
	{"[(have|has)] (came|come|arrived) [in] (at|from) [(my|our)] [(timber|lumber|local|builders)] (yard|store|shop|lumberyard|merchant|merchants|supplier|dealer|depot|mill|sawmill|outlet)", "just came in", lengthsBehind},
	{"(is|are|was|were|would be) all [that] (they|we|he|you|SELLER) [(ever|now)] (sold|had|carried|stocked|kept|got)", "are all they sell", lengthsBehind},
	{"SELLER no longer (carries|stocks|sells|keeps|has|offers)", "they no longer carry", lengthsAhead},
	{"to [the] list", "to the lengths they sell", yardBoth(addsLength, yardClauseEnds)},
}
