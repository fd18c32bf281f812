package grammar

// ironPhrasings are phrases about the brackets and how tight a rail sits between its posts.
var ironPhrasings = []placedPhrase{
	{said: "out (past|beyond|over) [the] RAIL", plain: "past the rail"},
	{said: "[,] (and|because|since|as|for) [that] (was|is|came) (off|from|for|of) (another|a different|other|old|some other|an older|wrong|a wrong) (BRACKET|one|job|wall|kind|catalog|box|sheet|set)\n, (that|it) (was|is|came) (off|from|for|of) (another|a different|other|old|some other|an older|wrong|a wrong) (BRACKET|one|job|wall|kind|catalog|box|sheet|set)", where: phraseEndsClause},
	{said: "[,] so [(as|that)] [(they|BRACKET|ears|it)] [(do|will|can)] not [to] CLASH [(into|with|against|on)] [(one another|each other|the next [one]|the next BRACKET|together|the one (above|below))]\n[,] so [(they|BRACKET|it)] [(will|can)] (clear|miss) [(one another|each other|the next one)]", where: bothHold(phraseEndsClause, saidBeforeOf(wordSet("bracket brackets hanger hangers brkt brkts")))},
	{said: "or [(one|a|the)] BRACKET (bumps|bump|runs|run|knocks|knock|bangs|bang|hits|hit|butts|rubs|touches|fouls) [(into|against|on|up against)] [(the|its)] (next|other|next one|other one|neighbor|one above|one below|another|next bracket|other bracket)", plain: "or the brackets touch"},
	{said: "[(screw|bolt|nail)] hole at [(very)] TOP of BRACKET , [(its)] (middle|center|centre)\n(middle|center|centre) of [(screw|bolt|nail)] hole at [(very)] TOP of BRACKET", plain: "center of the top bracket hole"},
	{said: "[as] (snug|tight|close) as (can be|possible|you can|they go|a glove|anything) [,] so", where: phraseStartsClause},
	{said: "of fit", plain: "of play"},
	{said: "for [(these|those|such|our|all these)] (lengths|rails|boards)", where: bothHold(phraseEndsClause, saidBeforeOf(wordSet("play fit slack")))},
	{said: "BRACKET (will|do|can|would) not (fit|go|go in|work|clear|sit) (with|in|at|on) [(anything|any)] (less than|under|tighter than)", plain: "the brackets need a gap of at least", where: amountNext},
	{said: "fit (+|plus)", plain: "play +", where: phraseStartsClause},
	{said: "[(you|i|we|they|one|it)] [(can|could|must|should|may|do)] not [(go|be|get|put them|set them|come|space them|have them)] (tighter|closer|smaller|narrower) than", plain: "closer than", where: orBracketsHit},
	{said: "[(when|once|as|after)] (they|it|RAIL) (are|is|get|gets) [(being)] (cut|sawn|made)", where: whenCut},
	{said: "since (they|it) (got|was|were|are|is) [(all|newly|hot dip|freshly)] (galvanised|galvanized|painted|coated|powdercoated|plated|zinced|primed)", where: phraseEndsClause},
}

// whenCut: "4 mm of play in total on the rails when they are cut".
func whenCut(before, after []atom) bool {
	for i := range before {
		if key, _ := partKey(before, i); key == "fit" {
			return phraseEndsClause(before, after)
		}
	}
	return false
}

// orBracketsHit: "you can't go tighter than two or one bracket bumps into the next".
func orBracketsHit(_, after []atom) bool {
	or, bracket := false, false
	for i, a := range after {
		or = or || a.text == "or" || a.text == "otherwise" || a.text == "else" || a.text == "because" || a.text == "before"
		bracket = bracket || or && partOf(reader{after}, i, "BRACKET")
	}
	return bracket
}
