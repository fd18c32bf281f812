package idiom

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// ironTold are further ways to tell of brackets, of how tight rails are cut and of the post that is added, which stand whole: what others
// make of "of", "takes up" and "foot" comes behind them.
var ironTold = []phrase.Placed{
	// What somebody of the house likes, and what it is to be, then.
	{"my|our|the|both PERSON|KIN ?and ?i ?all ?both ?really likes|loves|prefers|fancies|like|love|prefer|fancy ?the|a ?look|looks|sound|idea|feel|style ?of ## RAIL ?best|better ?, so|and ?then ## ?RAIL it is|'s ?then|be", "$2 rails", noDoubtBefore},
	{"my|our|the|both PERSON|KIN ?and ?i ?all ?both ?really likes|loves|prefers|fancies|like|love|prefer|fancy ?the|a ?look|looks|sound|idea|feel|style ?of # gap|gaps|spaces ?best|better ?, so|and ?then # ?gaps it is|'s ?then|be", "gap $2", noDoubtBefore},
	// How wide the rails are, as cut down.
	{"?i|we ?have ripped|planed|cut|trimmed|sawed|milled|jointed|sanded|dressed|rip|plane|trim|mill|dress ?all ?of ?my|our|the|those|these RAIL ?all ?down to # wide|(in width)|(across [the] face)", "rail face $1", oursBefore},
	// How far an ear stands out.
	{"(there is)|has|have|got|with|about # of BRACKET poking|sticking|showing|standing|hanging|jutting|peeking ?out ?proud|past ?over|above|beyond|top|(past [the] top) and|& ?below under|below|underneath|bottom|beneath ?of ?each|every|its RAIL", "bracket ear $1", noDoubtBefore},
	{"# of BRACKET pokes|sticks|shows|stands|hangs|juts ?out ?proud|past over|above|beyond|top and under|below|underneath|bottom|beneath ?of ?each|every|its RAIL", "bracket ear $1", noDoubtBefore},
	{"how far BRACKET overhangs|(stands (past|proud of))|(sticks [out] past)|passes|(pokes [out] past)|overlaps ?each|every|its RAIL ?at ?both|above|top ?and ?below|bottom|ends :|,|is|= #", "bracket ear $1", noDoubtBefore},
	{"BRACKET overhangs|overhang ?each|every|its RAIL ?by # ?at ?both|above|top and|& below|bottom|beneath", "bracket ear $1", noDoubtBefore},
	// When two of them meet.
	{"?two|neighboring|adjacent|stacked ?stacked BRACKET CLASH|touch|touches ?into ?up ?against ?each|one ?other|another when|once|if|where|whenever ?ever GAP|gaps|it|RAIL is|are|gets|get|drops|drop|goes|go|comes|come|shrinks ?down ?to ?under|below # ?apart|wide ?(or (less|under|tighter))", "bracket clearance $1", noDoubtBefore},
	{"BRACKET will|do|can|would|could|does not fit|go|sit|stack|clear|work one|each ?right over|above|atop ?the other|another|next ?with|in|at|if|when ?there ?is ?anything ?any less|under|tighter ?than # ?of ?gap|space|room ?between ?RAIL|them", "bracket clearance $1", nil},
	{"BRACKET will|do|can|would|could|does not fit|go|sit|stack|clear|work one|each ?right on top of ?the other|another|next ?with|in|at|if|when ?there ?is ?anything ?any less|under|tighter ?than # ?of ?gap|space|room ?between ?RAIL|them", "bracket clearance $1", nil},
	{"# up|above|over from|of|off|over|above ?top|upper ?edge ?of RAIL to ?the center|middle|centre ?of ?the ?BRACKET ?'s top|upper|highest ?screw|bolt|BRACKET ?screw hole ?of|in|on ?the ?BRACKET", "bracket reach $1", holeTold},
	{"# from ?top|upper edge ?of RAIL ?up to center|middle|centre of ?BRACKET ?'s top|upper|highest ?screw|bolt|BRACKET hole ?of|in|on ?the ?BRACKET", "bracket reach $1", holeTold},
	// How thick one is.
	{"each|every|a|one|the BRACKET takes|eats|uses|takes ?up|away # ?of ?the ?space|room ?up|away at|off|on|from ?each|either|the|one|both end|ends ?of ?each|every|a RAIL", "bracket thickness $1", noDoubtBefore},
	{"BRACKET is|are|'re made|bent|stamped|cut|formed|pressed ?up ?of|from|out|in ?of metal|steel|iron|sheet|plate|stainless|aluminum|sheetmetal|(sheet metal)|(galvanized steel) ?that ?is # thick", "bracket thickness $1", noDoubtBefore},
	{"BRACKET is|are|'re made|bent|stamped|cut|formed|pressed ?up ?of|from|out|in ?of # thick metal|steel|iron|sheet|plate|stainless|aluminum|(sheet metal)", "bracket thickness $1", noDoubtBefore},
	{"these|those|they|mine|ours is|are|'re ?some ?pretty|real|really|very|good ?heavy|stout|beefy|light|thin|sturdy|flimsy|big|fat ?duty BRACKET , # thick", "brackets $1 thick", noDoubtBefore},
	// How tight a rail is cut.
	{"no slack|play|wiggle|tolerance ?room ?at ?all ?whatsoever ?((for|in|on) RAIL) ,|and|so|; ?please ?just cut them|RAIL ?all ?dead|bang|real tight|snug|exact|flush ?fit ?to ?the ?length", "fit 0", phrase.StartsClause},
	{"cut|make|saw ?all RAIL ?all dead|bang|real tight|snug|exact , no slack|play|wiggle ?room ?at ?all", "fit 0", phrase.StartsClause},
	{"^ wiggle|play|slack|slop ?room ?of|:|=|is # ?in total|overall|all|altogether|(all told)|(in all)", "fit $1", noDoubtBefore},
	{"^ for|(to (get|give|have|leave)) ?them|it|us|me|RAIL ?a little|bit|touch|hair|whisker|smidge|tad ?of ?extra breathing|wiggle|elbow|working room|space ,|and|so|: ?the ?rail fit|slack|play ?'s|is|at|: #", "fit $1", noDoubtBefore},
	{"^ for|(to (get|give|have|leave)) ?them|it|us|me|RAIL ?a little|bit|touch|hair|whisker|smidge|tad ?of ?extra breathing|wiggle|elbow|working room|space ?the ?rail fit|slack|play ?'s|is|at|: #", "fit $1", noDoubtBefore},
	// How high the added post ends, and what holds it up.
	{"raise|lift|extend|lengthen ADDED|new|extra|middle POST ?up by #", "post height += $1", noFurtherOrder},
	{"raise|lift|extend|lengthen ADDED|new|extra|middle POST ?up #", "post height += $1", noFurtherOrder},
	{"raise|lift|extend|lengthen|lower|drop|shorten|trim|cut|bring ?down|up ADDED|new|extra|middle POST ?up|down|off to|at #", "post height $1", phrase.StartsClause},
	{"lower|drop|shorten|trim ADDED|new|extra|middle POST ?down ?by #", "post height -= $1", noFurtherOrder},
	{"?i|we ?would make|have|want|rather|like|prefer|sooner ?have ?it ?if ?that ADDED|new|extra|middle POST ?to ?were|was|be|come|is # shorter|lower|less", "post height -= $1", noThanNext},
	{"?i|we ?would make|have|want|rather|like|prefer|sooner ?have ?it ?if ?that ADDED|new|extra|middle POST ?to ?were|was|be|come|is # taller|higher|longer", "post height += $1", noThanNext},
	{"ADDED|new|extra|middle POST ?to ?should|must|will|stands|standing|sticking|sits|is ?be|stand|stick ?up|out # proud|above|over|taller|higher|longer ?of|than it|that|(the top)", "added post $1 higher than the wall", wallSaidBefore},
	{"ADDED|new|extra|middle POST ?to ?should|must|will|stands|sits|is ?be|stand|stop|end ?up|out # below|under|shy|short|lower|shorter ?of|than it|that|(the top)", "added post $1 lower than the wall", wallSaidBefore},
	{"ADDED|new|extra|middle POST 's foot|bottom|underside|end|base|heel is|gets|sits|stands|'s ?to ?be ?held|kept|raised|lifted|set|stood|propped|carried ?up # ?clear|off|up|above|over ?of|from FLOOR", "base height $1", noDoubtBefore},
	{"foot|bottom|underside|end|base|heel of ADDED|new|extra|middle POST is|gets|sits|stands|'s ?to ?be held|kept|raised|lifted|set|stood|propped|carried ?up # ?clear|off|up|above|over ?of|from FLOOR", "base height $1", noDoubtBefore},
	{"^ ?i|we ?have measured|checked|taped|miked|(put (calipers|a tape) on) ?the ?post base|bases|anchor|foot|shoe|standoff ,|and ?and ?it ?that ?base raises|lifts|holds|keeps|puts|props|carries ?the|up ?ADDED ?POST ?up #", "base height $1", noDoubtBefore},
	{"?post base lift|rise|stand|standoff ?- ?off ?is|of|:|=|at #", "base height $1", noDoubtBefore},
}

// wholeTold is the book of what stands whole.
var wholeTold = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(ironTold) })

// ToldWhole sets plain what other steps would take apart.
func ToldWhole(in []scan.Atom) []scan.Atom { return wholeTold().SetIn(in) }

// holeTold: nothing is doubted or asked, and no other hole was spoken of.
func holeTold(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && !phrase.SaidBeforeOf(otherParts)(before, nil)
}

// noFurtherOrder: an order begins with it, and no height follows to which it is done.
func noFurtherOrder(before, after []scan.Atom) bool {
	return phrase.StartsClause(before, after) && noFurther(before, after)
}

// noThanNext: nothing follows to which it is compared.
func noThanNext(before, after []scan.Atom) bool {
	return (len(after) == 0 || after[0].Text != "than" && after[0].Text != "to") && noDoubtBefore(before, after)
}

// wallSaidBefore: the wall is what was told of in the clause before it.
func wallSaidBefore(before, after []scan.Atom) bool {
	for i := len(before) - 1; i >= 0; i-- {
		switch {
		case chunk.IsClass(before[i].Text, "WALL"), before[i].Text == "wallheight":
			return noDoubtBefore(before, after) && !asksAtEnd(after)
		case chunk.IsClass(before[i].Text, "POST"), chunk.IsClass(before[i].Text, "RAIL"), before[i].Text == "gap":
			return false
		}
	}
	return false
}
