package idiom

import (
	"regexp"
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// breathTurns are phrases beside which something else was heard in the same breath: what is counted besides, what is only the reason, what
// is bidden politely, and what is said twice.
var breathTurns = []phrase.Placed{
	// Those round the house, and what does not get through, are why: "we have three kids and two dogs, so …".
	{Said: "[(i|we|they|he|she|PERSON|(my|our|the|his|her) (PERSON|KIN|sister|brother|wife|husband))] [also] (have|has|got|own|keep|keeps) [got] (a|one|two|three|four|five|several|few|couple of) [SMALLER] HOUSEFOLK [(,|and|, and)] [(a|one|two|three|four|five|several|few|couple of)] [SMALLER] HOUSEFOLK [(,|and|, and) (a|one|two|three|four|five|several|few|couple of) [SMALLER] HOUSEFOLK] [(at home|now|running around|running about|too|as well|in the house|here)] (,|.|;|and) [(and|so|but)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "(with|between) (one|two|three|four|five|several|few|couple of) [SMALLER] HOUSEFOLK [(,|and|, and)] [(one|two|three|four|five|several|few|couple of)] [SMALLER] HOUSEFOLK [(at home|now|running around|running about|in the house|here|about|around)] [(,|-)] [(so)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "^ you|we|i|he|she|they|nobody can|could ?hardly|never ?not get|squeeze|fit|push|wheel|move|haul|bring|carry|take|roll|drive|steer ?the|my|our|his|her _ ?_ through|thru|past|in|into # ?wide ?(opening|gap|hole|gate) ,|.|; ?so|and ?please", Where: moreFollows},
	{Said: "^ i|he|she ?am|is|'m|'s ?about|only|all ?of # ?tall|high ?(in (my|his|her) (socks|boots)) ,|.|;|and ?and|so|but", Where: phrase.BothHold(wallFollows, moreFollows)},
	{Said: "^ ?a|my|the # blade|saw|(saw blade) ,|with|and|that|which|, ?and|with ?has|takes|cuts|leaves|makes ?a|an # kerf|cut", Plain: "kerf $2"},
	// Spare boards, and how many.
	{Said: "^ ?please ?go ?ahead ?and put|throw|toss|add|stick|have|get|buy|order ?me|us ?in|on couple|few|handful ?of spares|(spare RAIL)|(extra RAIL) ?on|onto|in|to|for ?order|list|ticket|bill|pile|truck|(shopping list) ,|;|:|-|-- ?say|call ?it ## RAIL|more|extra|spares ?or ?so", Plain: "buy $1 spare boards"},
	// What is at hand already, before what is asked for.
	{Said: "^ ?and ?but i|we ?already ?now ?have got|have|seen|saw|know|printed ?already ?now ?the|my|our cuts|(cut list)|(cutting list)|marks|steps|(shopping list)|list|drawing|picture|sketch|layout ?already|now|here|(in hand) ,|;|.|-", Where: otherAsked},
	{Said: "and i|we ?already ?now ?have got|have|seen|saw|know|printed ?already ?now ?the|my|our cuts|(cut list)|(cutting list)|marks|steps|(shopping list)|list|drawing|picture|sketch|layout ?already|now|here|(in hand) ,|;|.|-", Plain: ",", Where: otherAsked},
	// In what order things are wanted.
	{Said: "^ ?and after|following|beyond that|this|which ?,", Plain: "and", Where: wishOrAsk},
	{Said: "^ ?and ?but before that|this ?,", Plain: "and", Where: showOrAsk},
	// What is not asked for, before what is.
	{Said: "^ spare me|us ?all ?of ?the|your|any sums|figuring|math|arithmetic|details|lecture|reasons|working|workings|story|theory|explanation|explanations|reasoning and ?just", Where: moreFollows},
	{Said: "^ forget|(never mind) ?about ?the|my|our lunch|dinner|supper|breakfast|coffee|tea|beer|weather|rain|football|game|ballgame|paint|painting|invoice|truck|phone|mess|time|holidays|weekend|dishes|laundry|neighbors|noise ,|;|.|- ?and|so|just|now", Where: moreFollows},
	{Said: "^ ?i|we ?really|honestly do|could|does not ?really|much care|mind what|(how (wide|big|high|tall|long|much)) !LENQ is|are|be|measures|(comes to)|(ends up) ?at ?, ?just so|as long|much as it|they|that is|are|stays|stay|keeps|comes|ends ?up ?at", Plain: "$1 must be", Where: limitAhead},
	{Said: "^ ?the|our|my !(LENQ|kerf|trim) is|are not # anymore|(any more)|(any longer) ,|;|.|but|- ?but ?now it|they|that is|are ?now # ?now", Plain: "$1 is $3"},
	{Said: "^ ?the|our|my !(LENQ|kerf|trim) is|are no longer|more # ,|;|.|but|- ?but ?now it|they|that is|are ?now # ?now", Plain: "$1 is $3"},
	{Said: "^ ?the|our|my budget is not ?\\$ # ?dollars|bucks anymore|(any more)|(any longer) ,|;|.|but|- ?but ?now it|that is ?now ?\\$ # ?dollars|bucks ?now", Plain: "the budget is $2 dollars"},
	{Said: "^ ?the|our|my budget is no longer|more ?\\$ # ?dollars|bucks ,|;|.|but|- ?but ?now it|that is ?now ?\\$ # ?dollars|bucks ?now", Plain: "the budget is $2 dollars"},
	{Said: "^ ?well|so ?i|we ?have changed my|our mind|minds about|on|over ?the|my|our !LENQ|budget|kerf|trim|drop|stiffeners ?limit ,|;|.|- ?so|and ?please ?just|do forget|disregard|ignore|drop|scrap|scratch|remove|cancel|delete it|that ?from ?now ?on|altogether|again|completely|please|entirely", Plain: "forget the $1", Where: phraseEndsHere},
	// Why so many are bought.
	{Said: "^ ?but|and|so why|(how come) am|are|is|do|does|would|must|should|have i|we|you|he|she ?need|needs|have|has|got ?to buying|buy|ordering|order|purchasing|purchase|getting|(paying for)|(pay for) ## RAIL|sticks ?in ?all ?, when|if|while|but|for|to ?there|i|we|it|WALL|build|make ?am|is|are|has|have|need|needs|get|gets|will|takes ?only ?just ?but ?need|have|get|be ?only ## RAIL ?only ?in ?it|all|WALL", Plain: "why that many boards on the list"},
	{Said: "^ ?but|and|so (how come)|why|(why is it) ?that i|we ?am|are ?need|needs|have|has|got ?to buying|buy|ordering|order|purchasing|purchase|getting|(paying for)|(pay for) ## RAIL|sticks ?in ?all ?, ?when|if|while|but|for|to ?there|i|we|it|WALL|build|make ?am|is|are|has|have|need|needs|get|gets|will|takes ?only ?just ?but ?need|have|get|be ?only ?(## RAIL) ?only ?in ?it|all|WALL", Plain: "why that many boards on the list", Where: phraseEndsHere},
	{Said: "(can|could) not|never see|(make out)|understand|figure|(work out)|follow|tell|fathom|grasp how|why|where you got|get|arrived|(came up with)|reached ?at !(that many (RAIL|STIFF|posts|bays)) , (would|could|will|can) you ?please ?kindly explain it|that|this ?to|for ?me|us", Plain: "why $1"},
	// Bidden politely, step by step.
	{Said: ", ?just|please ?just|please one|a step|thing|bit|piece at a time ?please", Where: phrase.EndsLine},
	{Said: "\" (which|what) ?board|lumber|stock|rail lengths|sizes do|does|did they|he|she|you|(the yard) have|carry|sell|stock ?there \\? \" \"", Plain: "they have"},
	{Said: "^ ?so|and|ok which|what ?board|lumber|stock|rail lengths do|does they|(the (yard|shop|store|place)) ?usually|normally|actually have|carry|stock|keep|offer ?in ?stock|there", Plain: "what lengths do they sell", Where: phraseEndsHere},
	{Said: "tell|show ME how to (build|put|make|assemble|construct) (it|this|(the wall)|(it together)|(this together)|(the wall together)|(it up))", Plain: "show me the steps", Where: phraseEndsHere},
}

// wallFollows: the wall is told of behind it, and not by how tall somebody is.
func wallFollows(_, after []scan.Atom) bool {
	return !leansOnTall.MatchString(scan.Text(after)) && slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "wall" || a.Text == "halfwall" || a.Text == "height" })
}

// leansOnTall is a wall told by how tall somebody is: "the wall should be half that".
var leansOnTall = regexp.MustCompile(`\b(?:is|be) (?:[a-z0-9/]+ ){1,4}(?:lower|higher|taller|shorter|less|more)\b|\b(?:half|twice|double|third) (?:that|of|my|as)\b`)

// limitAhead: a limit follows: "less than four inches", "under 4", "at least two".
func limitAhead(_, after []scan.Atom) bool {
	return len(after) > 1 && limiting[after[0].Text]
}

// limiting are words that begin a limit.
var limiting = scan.WordSet("less more under over below above at no between within smaller bigger narrower wider not")

// otherAsked: what else is asked for stands behind it.
func otherAsked(_, after []scan.Atom) bool {
	for len(after) > 2 && (after[0].Text == "now" || after[0].Text == "so" || after[0].Text == "but" || after[0].Text == "and") {
		after = after[1:]
	}
	return showOrAsk(nil, after) || len(after) > 1 && after[0].Text == "for"
}

// wishOrAsk: an order, a question or a quantity stands behind it.
func wishOrAsk(_, after []scan.Atom) bool {
	if len(after) < 2 {
		return false
	}
	w := after[0].Text
	return wroughtVerbs[w] || showOrAsk(nil, after) || chunk.OfPart(w) || lexicon.Vocab().Articles[w] && chunk.OfPart(after[1].Text) || w == "the" && (after[1].Text == "cuts" || after[1].Text == "marks" || after[1].Text == "cut" || after[1].Text == "shopping")
}

// showOrAsk: a question, or an order to show something, stands behind it.
func showOrAsk(_, after []scan.Atom) bool {
	return len(after) > 1 && (parse.QuestionOpeners[after[0].Text] || MayAsk[after[0].Text] && after[0].Text != "anything" && after[0].Text != "any" || lexicon.OrdersNext[after[0].Text] && OpensWholeQuestion(after))
}
