package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// rackTurns are turns of phrase of what lies on the rack, what is at hand, what it costs, what may be spent, and of what is done with plans.
var rackTurns = []phrase.Placed{
	// What may be spent, and by whom.
	{"^ SPENDERS can|could|will|(is|are|am ?only able|allowed|willing|prepared|free|ready|happy to) ?only|just spend|pay|invest|afford|(go to)|(put|chip|throw|kick in|up|toward|down)|(lay|shell|fork out)|(come up with)|(part with) ?(up to) !(SUM) ?dollars|bucks TOPS", "budget $1", spentEnds},
	{"?,|; ?and|so that|this|it is ?the|where ?(very|absolute) end|bottom|last|top|finish|limit|(buck stops)|(line is drawn) ?of ?it|that|story|matter|discussion", "", phrase.BothHold(figureIsMoneyBefore, yardClauseEnds)},
	{"?,|; ?and|so that|this|it is final|flat|firm|(not up for debate)|(not negotiable)|nonnegotiable|(all she wrote)|(that period)|(all we have)|(all there is)|(all i have)", "", phrase.BothHold(figureIsMoneyBefore, yardClauseEnds)},
	{", ?and no|without ?any ifs|exceptions|argument|arguments|discussion|(ifs or buts)|(ifs , ands or buts)|(ifs and buts)|(two ways about it)|(bones about it)", "", phrase.BothHold(figureIsMoneyBefore, yardClauseEnds)},
	{"^ ((all in)|(all told)|altogether|(in all)|(in total)|(everything included)|everything|(all together)) ?, ?((LUMBER|materials) [(and|&|plus) (hardware|brackets|screws|everything|fixings|fasteners)] [,]) ?(must|has to|should|needs to) stay|keep|come|stays|comes|be|land|finish ?it ?in|out under|below|within|(at most)|(less than) !(SUM) ?dollars|bucks", "budget $1", yardClauseEnds},
	{"^ ?the|my|our|all total|cost|costs|bill|tab|outlay|spending ?((for|of|on) [the|all] (materials|lumber|wood|material)) has|have|needs|need|ought|must|should|can ?only to|be ?to land|stay|come|end|finish|stop|fall|remain|be|settle ?up|in|out ?somewhere (at or (below|under))|(under or at)|(no (higher|more) than)|(not (over|above)) !(SUM) ?dollars|bucks", "budget $1", yardClauseEnds},
	{"no|not|never (a) penny|cent|dime|nickel|dollar|buck past|above|over|beyond|(more than) !(SUM) ?dollars|bucks", "budget $1", phrase.BothHold(phrase.StartsClause, yardClauseEnds)},
	{"^ SPENDERS may|might|can spend|pay|use|have|lay ?out up to !(SUM) ?dollars|bucks ?((on|for) [the|this|all] (it|job|wall|LUMBER|materials))", "budget $1", spentEnds},
	{"^ SPENDERS is|are good for !(SUM) ?dollars|bucks ?((on|for) [the|this|all] (it|job|wall|LUMBER|materials))", "budget $1", spentEnds},
	{"^ SPENDERS allows|allow|allowed|gives|grants|granted|lets|voted|approved|(set aside)|(signed off on) ?ME ?have|spend|use ?up ?to !(SUM) ?dollars|bucks for|on|toward|towards ?the|this|all|our LUMBER|materials|it|job|wall|project ?TOPS", "budget $1", spentEnds},
	{"^ (most|(very most)|maximum|limit) ?that SPENDERS will|can|could|would pay|spend|give|afford|allow|(put up)|(part with)|(go to)|(lay out) ?((on|for) [the|this|all] (it|job|wall|LUMBER|materials)) is|comes ?to|at !(SUM) ?dollars|bucks", "budget $1", spentEnds},
	{"^ ?please|just see|watch|ensure|(make sure)|(be sure) ?(to it) ?that ?it|this|that|everything|all|(the (total|bill|cost|lot|job)) costs|comes|stays|runs|totals|lands|remains|ends ?up ?in ?to|at|out less|lower|no|not|under|below|within ?more ?over ?than !(SUM) ?dollars|bucks", "budget $1", spentEnds},
	// What each costs.
	{"!(## ## [##]) a|an|per|the|(for a)|(for each)|(for one)|(for every) !(bracket|anchor|(post base)|(post cap)|hanger)", "$5 cost $1 each", phrase.BothHold(phrase.StartsClause, yardClauseEnds)},
	{"!(## ## [##]) a|an|per|the|(for a)|(for each)|(for one)|(for every) !(base|cap)", "post $5 cost $1 each", phrase.BothHold(phrase.StartsClause, yardClauseEnds)},
	{"?our|my|the|a|with|his|her TRADE discount|rebate|coupon|markdown|sale|card|deal|pricing|rate makes|brings|gets|puts|knocks|takes|drops|cuts|lowers|bumps|got|brought ?ME ?the !(bracket|brackets|(post [base|bases|cap|caps])|anchor|anchors|caps|bases|(FOOTERS)|(## foot @ [s])) ?down ?to|at|for", "$1 cost", moneyFollows},
	{"!(bracket|brackets|(post [base|bases|cap|caps])|anchor|anchors|caps|bases) is|are ?now|all ?on|in special|sale|offer|clearance|promotion|promo|discount ?(this (week|month|weekend))|today|(right now)|now|(just now) ,|:|;|-", "$1 cost", moneyFollows},
	{"!(## (dollars|bucks|dollar) [and] ## [##] [cents]) a|an|per|the|each|(for a)|(for each)|(for one)|(for every) !(bracket|anchor|(post base)|(post cap)|hanger)", "$5 cost $1 each", phrase.BothHold(phrase.StartsClause, yardClauseEnds)},
	{"they|he|she|SELLER ?is|are wants|want|after|asking|ask|charging|charge ?ME ?for !(## (dollars|bucks|dollar) [and] ## [##] [cents]) for|per|on ?a|an|one|each|every !(bracket|anchor|(post base)|(post cap)|hanger)", "$5 cost $1 each", yardClauseEnds},
	{"^ ?please figure|reckon|count|allow|say|assume|(call it) ?on £ a|an|per|the|each|(for a)|(for each)|(for one)|(for every) !(bracket|anchor|(post base)|(post cap)|hanger)", "$2 cost $1 each", yardClauseEnds},
	{"^ !(bracket|brackets|anchors|(post (base|bases|cap|caps))) ,|: ?at ?only !((## and a (half|quarter))|(## and three quarters)) ?dollars|bucks apiece|each|(a piece)|(a pop)", "$1 cost $2 dollars each", yardClauseEnds},
	{"?, with|including|incl|plus ?the ?sales tax|taxes|vat ?included", "", phrase.BothHold(pricedAndCounted, yardClauseEnds)},
	{"?, tax|taxes|vat included|(and all)|in", "", phrase.BothHold(pricedAndCounted, yardClauseEnds)},
	// What is bought over and above.
	{"!(##) board|boards|stick|sticks|plank|planks of|for|as insurance|safety|luck|reserve|margin|cushion|backup|(good luck)", "buy $1 spare boards", phrase.BothHold(phrase.StartsClause, yardClauseEnds)},
	{"^ ?please|just|and|also|then throw|toss|chuck|pop|sling|stick ?me|us in|on !(##) board|boards|stick|sticks|plank|planks|piece|pieces|length|lengths extra|over|spare|more|(to spare)|(on top)", "buy $1 spare boards", yardClauseEnds},
	{"^ ?please|just|and|also|then throw|toss|chuck|pop|sling|stick ?me|us in|on a|an|one ?single extra|spare|additional board|stick|plank|piece|length", "buy 1 spare board", yardClauseEnds},
	{"buy|get|order|take|purchase|bring|grab ?me|us !(##) ?boards|sticks|planks|pieces|lengths over|extra|spare|(to spare)|(on top) ?(just in case)|(INCASE)", "buy $1 spare boards", phrase.BothHold(phrase.StartsClause, yardClauseEnds)},
	{"add|put|include|allow|figure|tack ?on|in|for a|one tenth ?(on|onto|to|of|extra|more) ?the|all|my ?extra LUMBER|order|list|count ?of ?LUMBER|boards ?for ?mistakes|waste|breakage|safety|luck|splits|(bad cuts)", "spare 10 percent", yardClauseEnds},
	{"add|put|include|allow|figure|tack ?on|in|for a|one fifth ?(on|onto|to|of|extra|more) ?the|all|my ?extra LUMBER|order|list|count ?of ?LUMBER|boards ?for ?mistakes|waste|breakage|safety|luck|splits|(bad cuts)", "spare 20 percent", yardClauseEnds},
	{"add|put|include|allow|figure|tack ?on|in|for a|one twentieth ?(on|onto|to|of|extra|more) ?the|all|my ?extra LUMBER|order|list|count ?of ?LUMBER|boards ?for ?mistakes|waste|breakage|safety|luck|splits|(bad cuts)", "spare 5 percent", yardClauseEnds},
	{"^ ?i ?we want|need|like|take|get|have|buy a|an|one ?single spare|extra board|stick|plank|length ?in along|besides|too|(as well)|(with it)|(with (that|the rest|them|the others))|(on top)|(on hand)|(just in case)|(INCASE)", "buy 1 spare board", yardClauseEnds},
	{"^ ?please|just buy|order|get|purchase ?us|me ?just|only|exactly|precisely ?exactly what is|i|we|it|(the (job|wall)) needed|need|needs|required|takes|(called for) ,|; ?and|with ?not|no ?a|an|one|any ?single board|stick|spare|spares|piece|plank|extra|extras ?over|more|extra|spare|beyond", "no spare", yardClauseEnds},
	// What the saw takes.
	{"^ reckon|figure|count|allow|plan|budget ?on|for|with # for|per|with|at|to each|every|a|one ?single cut|kerf|((pass|stroke) of the (saw|blade))", "kerf $1", yardClauseEnds},
	{"^ from|off ?of each|every|(all the)|the ?end ?of ?each|every board|boards|stick|sticks|plank|planks ,|i|we|please ?i|we cut|take|saw|trim|nip|lose|lop|chop|shave # ?off ?first ?((to|for) [get|make|have] [a] (clean|square|fresh|straight|true) [up] (end|ends|edge|cut))", "trim $1 per board", yardClauseEnds},
	{"^ from|off ?of each|every|(all the) board|boards|stick|sticks|plank|planks cut|take|saw|trim|nip|lose|lop|chop|shave # ?off ?first ?((to|for) [get|make|have] [a] (clean|square|fresh|straight|true) [up] (end|ends|edge|cut))", "trim $1 per board", yardClauseEnds},
	{"^ ?the first|last|end|outer # of each|every|a|all ?the board|boards|stick|sticks|plank|planks|length is|are|gets|goes|(has to go)|(comes off) ?always|usually ?just ?junk|waste|wasted|bad|split|trimmed|scrap|(no good)|checked|cracked|rough ?off", "trim $1 per board", yardClauseEnds},
	// What is on sale.
	{"^ shelf|rack|standard|stock|available|yard lengths|sizes ?here is|are|:|run", "they sell", lengthsSaidNext},
	{"^ ?please plan|figure|reckon|work|count|calculate around|on|with|from ?having|using|buying", "they sell", lengthsSaidNext},
	{", ?and|because|since|as ?that|those|they is|are|'s ?all|everything|(the only (ones|lengths)) ?that i|we|you|(my (truck|car|trailer)) can|could|will ever|even ?haul|carry|fit|get|take|lift|handle|transport|buy|find ?home|here", "", phrase.BothHold(lengthsBehind, yardClauseEnds)},
	{"i|we can|could not carry|haul|fit|transport|take|lug|move|lift|buy|find|get ?a ?anything|any|lengths|boards|lumber ?else ?longer but|except|besides|(other than)", "they only have", lengthsSaidNext},
	{"in|on|into|onto ?the|my|our ?little|small roof|van|car|truck|trailer|pickup|wagon ?rack|bed", "", phrase.BothHold(carriedBefore, yardClauseEnds)},
	{", ?and|but|with nothing|none|(not a thing)|(not one) ?at ?all ?that ?is longer|shorter|bigger|else|more|(in between)|between|otherwise|(any longer)", "", phrase.BothHold(lengthsBehind, yardClauseEnds)},
	{"!((to be had)|left) anywhere|nowhere|locally|around|((in|at|on|for) [the|this] (yard|town|county|miles|stock|store|area|rack|city)) ?(this (week|month|weekend))|today|now|(right now)", "$1", lengthsBehind},
	{"!((to be had)|left) (this (week|month|weekend))|today|now|(right now)", "$1", lengthsBehind},
	{"^ @ ?s ?LUMBER ?(around here)|here|locally|(in town)|((at|in) (my|our|the) (yard|store|town|shop)) runs|run|goes|go|comes|come|sells|sell ?in|at|as|by ?the !(## [..] (foot|feet|ft|footers|meters|metres|m)) ?lengths|boards|long", "they sell $1 in $2 lengths", yardClauseEnds},
	{"?the only lengths|ones|sizes|boards ?that|which ?they|i|we|you ?had|saw|found|have ?left ?still ?stacked|sitting|lying|standing|stocked|there|here|shelved|racked|displayed|available ?there|here|outside|(on the (rack|racks|shelf|floor|lot)) was|were|is|are", "they only have", lengthsSaidNext},
	{"what|all|everything ?that|which ?there ?is|was|are ?sitting|stacked|standing|still ?out on|in|at the|their|his shelf|shelves|rack|racks|bin|bins|yard|lot|pile|store|shop ?(right now)|today|now is|are|was|were", "they only have", lengthsSaidNext},
	{"^ ?the|our|my lengths|sizes|boards ?there (to (choose|pick|select) from)|(on offer)|(for sale)|(to be had)|(available [here|locally])|(on sale)|offered ?is|are ,|:|-|is|are", "they sell", lengthsSaidNext},
	{"?out|over|down|up|back ?at|to ?the|our SELLER|place ?they|he|she|PERSON will|would|can|could|'ll ?gladly|happily|only|also|just cut|saw|mill|slice|rip ?ME|them|it|boards ?up|down|out ?in|at|to|into", "they sell", lengthsSaidNext},
	// What is at hand, whence it came, and what state it is in.
	{"?, ?,|and|but|; ?they|these|those|it|all|both|each|mostly|some ?is|are|is|was|'s ?of ?them ?all|still|both|pretty|quite|mostly|a ?all|still|pretty|quite|mostly|perfectly|little|bit|touch STATE ?((but|and|,|though) [still|otherwise|perfectly|quite|nice and] STATE) ?enough", "", phrase.BothHold(boardsTold, yardClauseEnds)},
	{"?, ?all ?,|and (for free)|free|(for nothing)|gratis|(no charge)|(free of charge)|(at no cost)|(without charge)|(on the house) ?too", "", phrase.BothHold(boardsTold, yardClauseEnds)},
	{", ?all bought|purchased|delivered|(paid for)|(picked up) ?back ?last|this|in ?the ?_ ?and|but never|not|(not once) ?been|yet used|touched|cut|opened|needed ?yet", ", on hand", phrase.BothHold(boardsTold, yardClauseEnds)},
	{"^ ?all already|(all paid) paid|bought|purchased|delivered|here ?for ?and|, ?delivered|here|unloaded|stacked|(paid for) :|,|is|are", "i have", countedBoardsNext},
	{"^ [(the|my|our|a|some|one) [of (my|our)] [_]] PERSON|ORG|friends|cousins|folks ?(in law)|(- in - law) ?next|across|down ?door|(the road)|(the street) ?has|have|had ?just|already|kindly|even GIVES ?off|over|on|up|in|by|down ?for|to ?ME ?with ?home", "i have", countedBoardsNext},
	{"came|come|comes|included with ?the|this|my|our house|place|property|cabin|farm|lot|job|sale|land|shop|cottage|barn", ", on hand", phrase.BothHold(boardsTold, yardClauseEnds)},
	{"by|from ?the|my|our|a ?_ PERSON|ORG|friend|friends|folks|uncle|cousin", "", phrase.BothHold(givenBefore, yardClauseEnds)},
	{"@ boards|planks|lumber ?going|running|laid|set across|horizontally|sideways", "$1 rails", yardClauseEnds},
	// Rails of another size.
	{"^ ?please|let|and ?us ?just change|switch|swap|move|bring|take|turn|flip|shift ?all ?the|our|my !RAIL|STIFF|posts over|across|on|back ?over to|into|onto @ ?s ?instead", "use $2 for the $1", yardClauseEnds},
	// As little wood as may be.
	{"the less|fewer wood|lumber|waste|scrap|offcuts|leftovers|timber|scraps|(cut - offs)|cutoffs ?left ?over ((in|on|for) [the] [scrap|trash|burn|kindling|garbage] (bin|pile|heap|fire|floor|stove|barrel)) ?((i|we) [have to] (toss|throw|end|have|make|burn|waste) [up|out|away] [with]) ?, the better|happier", "least waste", yardClauseEnds},
	{"the less|fewer waste|scrap|offcuts|leftovers|scraps|cutoffs ?left ?over ?,  the better|happier", "least waste", yardClauseEnds},
	{"^ ?i|we ?am|are ?just ?only after|want|(looking for)|(aiming for)|(going for)|need|(give ME)|(aim for)|(go for)|(find ME)|(get ME)|(keep to) the|a lowest|smallest|least|tiniest ?possible bill|price|total|cost|tab|outlay|expense ?possible", "cheapest", yardClauseEnds},
	{"^ ?please ?just give|find|get|pick|choose|use|show|want|take ?ME ?for ?the whichever|whatever|layout|plan|way|one|version|setup|option|arrangement ?that|which costs|runs|is|comes ?out ?to|at ?the ?very least|cheapest|lowest ?money", "cheapest", yardClauseEnds},
	{"^ ?please ?the|with|leave least|(as little)|(the smallest amount of)|smallest|fewest wood|lumber|offcuts|timber|pieces|scraps ?as ?possible in|on|for ?the ?scrap|trash|burn|kindling|garbage bin|pile|heap|fire|stove|barrel|scrap|trash|dump ?as ?possible", "least waste", yardClauseEnds},
	{"^ what|all|(the (only|main) thing) ?that ?really matters|counts|(i care about)|(we care about) ?most ?here ?(to ME) is ?the price|cost|money|bill|cash ,|;|. ?so", "", someFollows},
	// What is done with plans.
	{"save|keep|store|file|(put away) ?this|it|that|the|my ?plan|layout|wall|job|design|drawing ,|; ?and|then|please ?please call|name|title|label it|this|that", "save this as", someFollows},
	{"?please plot|render|trace|put|write|draw|send it|this|that|(the (wall|drawing|layout|picture|elevation)) ?out to|into|in|as|onto|under", "draw to", pictureAhead},
	{"send|put|commit|get it|this|that|everything|(the (lot|plan|wall)) ?all to|on|onto|down paper as|in|to|into|under|, ?as", "print to", sheetAhead},
	{"^ i|we would|'d|want|like|need ?like|want|to ?have ?this|that|it ?plan|layout|one saved|kept|stored|filed|put ?away ?,|; ?and ?please name|call|title|label ?it|this", "save this as", someFollows},
	{"^ ?((which|what) [one|plan] (is|comes|works|would) [be|out] (cheaper|better|dearer|nicer|less|simpler) ,) !(_) or|and|versus|vs|against !(_) , ?please|and|so|can|could ?you compare|(line up) ?those|these|the ?two|them|both|plans", "compare $1 and $2", yardClauseEnds},
	{"^ ?i|we ?would want|like|need|'d ?to|like ?have it|this|that|everything on paper ,|; ?so|and|please", "", fileAhead},
	{"make|do|give|draw|get ME a|an|the|one ?little|quick drawing|sketch|picture|elevation|view ,|; ?and ?the|its|with|as|in|to|into ?file|filename ?name ?should|will|is|be|called|named|: ?be", "draw to", fileAhead},
	{"draw|sketch|render|plot it|that|this|(the (wall|layout|thing)) ?up|out and|,|then ?then put|save|write|drop|stick|store|dump it|that|the|this ?drawing|sketch|picture ?in|to|into|as|under|at", "draw to", fileAhead},
	{"?, put|save|write|stick|drop|store|send|get it|this|that|everything|(the (lot|plan|sheet)) ?down|all|out in|into|to|as|under", "print to", sheetAhead},
}

// rackSwaps are those of them that are set plain before a figure beside them is taken for something else.
var rackSwaps = []phrase.Placed{
	{", ?and|because|since|as|for ?they|he|she|SELLER|somebody|someone|i|we|PERSON ?have|has|'ve|had ?just|already sold|bought|took|grabbed|got|snagged|nabbed|cleared ?out|up the|their|his ?very last|final|remaining ?of|one|ones|few|two|three ?of ?the ?them|those|one|ones ?today|yesterday|(this morning)", "", phrase.BothHold(droppedBefore, yardClauseEnds)},
	{"they|SELLER|he|she|we ?have|has|'ve|are|is ?now|all quit|stopped|discontinued|dropped|ended|halted|(given up)|(done [with])|(given up on)|finished|(through [with]) ?stocking|carrying|selling|keeping|ordering|offering|making|cutting ?the !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)|(## foot (boards|lengths|lumber)))", "they are out of $1", soldNoMore},
	{"^ ?please|let|and ?us ?just go|switch|change|move|swap|come|turn|shift|cross|flip|hop ?back|on|everything over|across|back|on to|into feet and inches", "use inches", yardClauseEnds},
	{"^ ?please|let|and ?us ?just go|switch|change|move|swap|come|turn|shift|cross|flip|hop ?back|on|everything over|across|back|on to|into METRICS", "use metric", yardClauseEnds},
}

// toldOutright: nothing is doubted, asked, supposed or left open before.
func toldOutright(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && !slices.ContainsFunc(before, func(a scan.Atom) bool { return leavesOpen[a.Text] })
}

var leavesOpen = scan.WordSet("maybe perhaps possibly might may could would should wish hope hopefully probably")

// figureIsMoneyBefore: a sum was told before, or what may be spent.
func figureIsMoneyBefore(before, _ []scan.Atom) bool {
	return figureIsMoney(before) || slices.ContainsFunc(before, func(a scan.Atom) bool { return sumWords[a.Text] })
}

// moneyFollows: a price follows and ends its clause.
func moneyFollows(before, after []scan.Atom) bool {
	end := yardFigureEnd(after, 0)
	return end > 0 && (chunk.EndsPart(after, end) || after[end].Text == "each" || after[end].Text == "apiece") && toldOutright(before, after)
}

// lengthsSaidNext: lengths of lumber follow at once, and nothing but lengths up to the end of the clause; nothing is doubted.
func lengthsSaidNext(before, after []scan.Atom) bool {
	if len(after) == 0 || !toldOutright(before, after) || after[len(after)-1].Text == "?" {
		return false
	}
	long := false
	for i, a := range after {
		number := a.Kind == scan.Digits || chunk.SpelledNumber(a.Text)
		if i == 0 && !number && !SoldLengths[a.Text] {
			return false
		}
		long = long || SoldLengths[a.Text] || lengthUnits[a.Text]
		if number || SoldLengths[a.Text] || lengthUnits[a.Text] || lengthJoints[a.Text] {
			continue
		}
		return long && (chunk.EndsPart(after, i) || behindLengths[a.Text])
	}
	return long
}

var (
	lengthUnits   = scan.WordSet("foot feet ft ' footers footer s m mm meter meters metre metres inches")
	lengthJoints  = scan.WordSet(", and or & - to boards board lengths length long ones sticks planks lumber")
	behindLengths = scan.WordSet("only here there now today at in on around so that nothing instead")
)

// boardsTold: boards of a size were counted before, and that they are at hand; nothing is doubted.
func boardsTold(before, after []scan.Atom) bool {
	return yardSizeIn(before) && toldOutright(before, after) && !figureIsMoney(before)
}

// countedBoardsNext: boards of a size and a length follow, with how many there are.
func countedBoardsNext(before, after []scan.Atom) bool {
	if len(after) < 4 || !toldOutright(before, after) || after[len(after)-1].Text == "?" {
		return false
	}
	a := after[0]
	counted := a.Kind == scan.Digits || chunk.SpelledNumber(a.Text) || a.Text == "a" || a.Text == "an"
	ahead := yardClauseAhead(after)
	return counted && yardSizeIn(ahead) && footLengthsAhead(nil, after) && !figureIsMoney(ahead)
}

// fileAhead: a file is named in what follows.
func fileAhead(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "svg" || a.Text == "html" || a.Text == "htm" })
}

// sheetAhead: a page is named in what follows.
func sheetAhead(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 6)], func(a scan.Atom) bool { return a.Text == "html" || a.Text == "htm" })
}

// spentEnds: a clause ends here that tells outright what may be spent.
func spentEnds(before, after []scan.Atom) bool {
	return yardClauseEnds(before, after) && toldOutright(before, after) && (len(after) == 0 || after[0].Text != "?")
}

// soldNoMore: a clause ends here that asks nothing.
func soldNoMore(before, after []scan.Atom) bool {
	return yardClauseEnds(before, after) && toldOutright(before, after) && (len(after) == 0 || after[0].Text != "?")
}

// carriedBefore: lengths were told that can be carried home.
func carriedBefore(before, _ []scan.Atom) bool {
	return LengthsIn(before) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "carry" || a.Text == "haul" || a.Text == "fit" || a.Text == "only"
	})
}

// pictureAhead: a drawing is named in what follows.
func pictureAhead(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 6)], func(a scan.Atom) bool { return a.Text == "svg" })
}

// givenBefore: boards were counted before that somebody gave.
func givenBefore(before, after []scan.Atom) bool {
	return boardsTold(before, after) && slices.ContainsFunc(before, func(a scan.Atom) bool { return givenWords[a.Text] })
}

var givenWords = scan.WordSet("given handed donated gifted left offered inherited lent loaned")

// someFollows: something is said behind it.
func someFollows(_, after []scan.Atom) bool { return len(after) > 0 && after[0].Kind == scan.Word }
