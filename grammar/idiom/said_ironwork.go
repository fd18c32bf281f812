package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// ironPhrasings are phrases about the brackets and how tight a rail sits between its posts.
var ironPhrasings = []phrase.Placed{
	{Said: "out (past|beyond|over) [the] RAIL", Plain: "past the rail"},
	{Said: "[,] (and|because|since|as|for) [that] (was|is|came) (off|from|for|of) (another|a different|other|old|some other|an older|wrong|a wrong) (BRACKET|one|job|wall|kind|catalog|box|sheet|set)\n, (that|it) (was|is|came) (off|from|for|of) (another|a different|other|old|some other|an older|wrong|a wrong) (BRACKET|one|job|wall|kind|catalog|box|sheet|set)", Where: phrase.EndsClause},
	{Said: "[,] so [(as|that)] [(they|BRACKET|ears|it)] [(do|will|can)] not [to] CLASH [(into|with|against|on)] [(one another|each other|the next [one]|the next BRACKET|together|the one (above|below))]\n[,] so [(they|BRACKET|it)] [(will|can)] (clear|miss) [(one another|each other|the next one)]", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("bracket brackets hanger hangers brkt brkts")))},
	{Said: "or [(one|a|the)] BRACKET (bumps|bump|runs|run|knocks|knock|bangs|bang|hits|hit|butts|rubs|touches|fouls) [(into|against|on|up against)] [(the|its)] (next|other|next one|other one|neighbor|one above|one below|another|next bracket|other bracket)", Plain: "or the brackets touch"},
	{Said: "[(screw|bolt|nail)] hole at [(very)] TOP of BRACKET , [(its)] (middle|center|centre)\n(middle|center|centre) of [(screw|bolt|nail)] hole at [(very)] TOP of BRACKET", Plain: "center of the top bracket hole"},
	{Said: "[as] (snug|tight|close) as (can be|possible|you can|they go|a glove|anything) [,] so", Where: phrase.StartsClause},
	{Said: "of fit", Plain: "of play"},
	{Said: "for [(these|those|such|our|all these)] (lengths|rails|boards)", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("play fit slack")))},
	{Said: "BRACKET (will|do|can|would) not (fit|go|go in|work|clear|sit) (with|in|at|on) [(anything|any)] (less than|under|tighter than)", Plain: "the brackets need a gap of at least", Where: phrase.AmountNext},
	{Said: "fit (+|plus)", Plain: "play +", Where: phrase.StartsClause},
	{Said: "[(you|i|we|they|one|it)] [(can|could|must|should|may|do)] not [(go|be|get|put them|set them|come|space them|have them)] (tighter|closer|smaller|narrower) than", Plain: "closer than", Where: orBracketsHit},
	{Said: "[(when|once|as|after)] (they|it|RAIL) (are|is|get|gets) [(being)] (cut|sawn|made)", Where: whenCut},
	{Said: "since (they|it) (got|was|were|are|is) [(all|newly|hot dip|freshly)] (galvanised|galvanized|painted|coated|powdercoated|plated|zinced|primed)", Where: phrase.EndsClause},
}

// whenCut: "4 mm of play in total on the rails when they are cut".
func whenCut(before, after []scan.Atom) bool {
	for i := range before {
		if key, _ := chunk.PartKey(before, i); key == "fit" {
			return phrase.EndsClause(before, after)
		}
	}
	return false
}

// orBracketsHit: "you can't go tighter than two or one bracket bumps into the next".
func orBracketsHit(_, after []scan.Atom) bool {
	or, bracket := false, false
	for i, a := range after {
		or = or || a.Text == "or" || a.Text == "otherwise" || a.Text == "else" || a.Text == "because" || a.Text == "before"
		bracket = bracket || or && measure.PartOf(measure.Reader{Atoms: after}, i, "BRACKET")
	}
	return bracket
}
