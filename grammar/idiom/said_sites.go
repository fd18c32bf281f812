package idiom

import "saywright/grammar/phrase"

// siteWays are ways to speak of money, prices, lengths on sale, boards at home, the saw, the floor and what was measured, with the plain
// words for each. Each has a figure, or stands beside one, unless it wishes or asks by itself.
var siteWays = []phrase.Placed{
	// What may be spent.
	{`most i|we|they|he|she|PERSON can|could|may|will|would (lay out|fork out|shell out|put in|put up|part with|run to|stretch to|come up with|let go of|scrape up|throw at it) ?on|for ?LUMBER|materials|it|this|(all of it)|everything|wall|job is|(would be) #
		?my|our|the PERSON|ORG ?'s|is|has|have put his|her|their foot down at £
		?my|our|the PERSON|ORG ?'s|is|has|have put his|her|their foot down at # ((for|on) (lot|everything|it all|whole thing|whole lot|job|materials|material)) ?, ?and|so ?((that|this) is (budget|limit|cap|max))
		i|we|he|she|they|there have|has|is|'s ?only ?got # ?left in|inside|under envelope|kitty|tin|jar|drawer|purse|wallet|pot|(piggy bank)|mattress|(bank [account])|account|(coffee can)|till|(cookie jar) ?(for [this|my|our] (WALL|job|this|it|lumber)) ?, ?and ?((that|this) is (every (cent|penny|dollar|bit) of it|all|it|lot|all of it|all there is))
		!(£|##) is my|our|his|her|their ceiling|limit|cap|max|maximum on|for ?all this|it|everything|lot|job|wall|materials
		?i|we|they can|could|will not ?possibly go above|over|past|beyond|(higher than) £
		PERSON|ORG voted|allotted|allowed|allocated|granted|approved|awarded ?us|me # ?to ?spend ?(on|for (LUMBER|materials|wall|job|this|it))`, "the budget is $1 dollars", nil},
	{"(all in)|(all told)|(in all) i|we have ?only ?got", "i have", yardMoneyAheadOrRound},
	{"budget ?is|has ?been capped|pegged|frozen|limited at|to", "budget is", yardMoneyAheadOrRound},
	{`[,] ?(and|so|because|as) PERSON|ORG|they|he|she|bank|wallet will|would|can|could not sign|approve|pay|spring|stretch|(sign off)|(stump up)|(cough up)|authorize|authorise|cover|hear|go ?for|on|to|of ?one ?penny|cent|dollar|buck more|higher|(any more)|over
		[,] ?(and|so) hold|keep|stick ?(it|us|me|things|everything|lot) to that|it|this`, "", yardBoth(budgetBehind, yardClauseEnds)},
	{"^ (whatever|anything|everything) (that) i|we buy|get|order|use|pick|choose ?for ?this ?wall [,] it", "everything", nil},
	{"^ (whatever|anything|everything) i|we buy|get|order|use|pick|choose ?for ?this ?wall [,] it", "everything", nil},

	// What somebody says it costs.
	{`i|we|PERSON|(old fella) worked|figured|made ?it|this ?all out at|to|as|(to be) # for ?everything|lot|all|(all of it)|(whole lot)|(whole thing)
		totted|toted|tallied|rung|rang|summed|added|reckoned|priced|costed|totaled|totalled ?it|this|everything|lot|that|(the lot) ?all ?up|out to|at #
		wants|wanted|asks|asked|(is asking) # for|on ?whole|full|entire|all (material list|lumber list|shopping list|material order|lumber order|list of materials|bill of materials|lot|materials|order)
		says|reckons|thinks|claims ?that you|we|i would|could|can|will|'d build|do|make|(put up) it|this|wall for !(£|##) in|of|worth ?of materials|material|lumber|timber`, "says it all costs $1", checkedBehind},
	{"his|her|their|PERSON ?'s|(' s) estimate|figure|guess|number|sum|tally|reckoning|total for|of|on total|cost|(total cost)|job|(whole job)|lot|(whole lot)|materials|material|wall was|is #", "he says it all costs $1", checkedBehind},
	{"was|is he|she|they|that close|near|(far off)|(far out)|(in the ballpark)|(in ballpark)|(on the money)|(on money)|(anywhere near)", "is that right", yardBoth(yardMoneyBehind, yardClauseEnds)},
	{"material|materials|lumber|timber|hardware ?(for [this|my|our] (wall|job|lot)) will|would|should|might run ?(to|me|us)", "it all costs", askedIfTrue},
	{"what is damage|bill|cost|price|total|tab|outlay ?going ?to ?be on|for|of|in ?all materials|material|lumber|timber|hardware", "what does it cost", nil},

	// What each costs.
	{"^ put|mark|pencil|write|enter|log|jot|note ?me down|in|up # apiece|each|(a piece)|(a pop)|(a throw) for|on", "i pay $1 each for", yardSizeAhead},
	{"## apiece|(a piece)|(a pop)|(a throw)|(a go)", "$1 dollars each", pricedApiece},
	{"pay|paid|pays|charge|charges|charged|want|wants|asking ?me|us|you ## for ?a|one|each|every hundred|100 screws", "100 screws cost $1 dollars", nil},
	{"they|yard|store|shop|SELLER are|is asking|charging|wanting|after ## ?for|per|a|(for a) ?one|each|every bracket", "brackets cost $1 dollars each", yardClauseEnds},
	{"^ ?one|each|every !(post base)|bracket|anchor|(post cap) will|would|'ll|might run|set|cost|rush you|me|us|him ?back ##", "$1 costs $2 dollars", noDollarsAhead},
	{"!(hundred|100) screws is|are|cost|costs|run|runs|comes|come ?to|at|for ##", "100 screws cost $2 dollars", noDollarsAhead},
	{"screws ?, ?come|comes|go|run|sell ?(is|are|cost|at|for|in at) ## per|a|the|(for a)|(for each)|(for every)|each|every hundred|100|(box of 100)|(box of a hundred)", "100 screws cost $1 dollars", nil},
	{"^ ?reckon|figure|allow|count|budget|plan ?on|for ## ?(for|per) ?each|every|a|one hundred|100 screws $", "100 screws cost $1 dollars", nil},
	{"i|we can get screws ?at|for ## a|per|the hundred|100 ?((from|at|off) * $)", "100 screws cost $1 dollars", nil},
	{"£ per|a|(for each)|(for one)|(for a)|(for every)|(for a single) ?rail !BRACKET ?((whichever|wherever|whatever|no matter) * $)", "$2 cost $1 each", nil},
	{"(bin|box|shelf|rack|tag|label|sticker|card|sign) ?of|on|for|by|over|under|above|beside ?the brackets|bases|(post bases)|anchors|caps says|reads|shows", "they charge", yardItemsAhead},
	{"they|SELLER have|has gone|put ?price up|down on !(brackets|anchors|(post bases)|(post caps)) ?, ?and|so ?one|they|each|it ?'s|is|are ?now", "$1 now cost", yardMoneyAhead},
	{"(i|we) ?was|were ?got quoted # for|per|on ?one|each|every ?single|one !(post base)|bracket|anchor|(post cap)", "$2 cost $1 dollars each", nil},

	// What the yard has, and has not.
	{"lumber|wood|timber|boards comes|come|(is sold)|(are sold)|runs|run in", "they sell", yardBoth(yardClauseOpens, lengthsAhead)},
	{"i|we dropped|hung|lowered|let ?down (plumb line)|(plumb bob)|string|tape|line over|off|down|from edge|side|wall ,|and ?and", "", yardClauseOpens},
	{"round|around here|(these parts)|(our way)", "", yardBoth(lengthsGoBefore, yardClauseEnds)},
	{"^^ ?i|we rang|called|phoned|drove|went|popped ?ahead|round|over|by|down|up ?there ,|and ?and|so", "", footersAhead},
	{"^^ i|we asked|rang|called|phoned|rung|pestered|texted|(checked with)|(spoke to)|(spoke with)|(talked to)|(talked with)|(had a word with) _ ?_ ?_ ,|and ?and|so", "", sellersAhead},
	{"PERSON said|says|told ?me|us ?that !.. is|are all he|she|they keeps|keep|has|have|sells|sell|carries|carry|stocks|stock|does|do|(has got)|(have got)", "they sell $1", nil},
	{"what is in|on ?their|his|its rack|racks|shelf|shelves|yard|stacks|stock|bins is|are", "they sell", lengthsAhead},
	{"found|spotted|saw|uncovered|unearthed|discovered|(turned up)|(came across)|(dug up)|(dug out) ?a|some|few|whole stack|pile|bundle|load|heap|bunch|rack|lift|few of !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties * they have ?got|stock|sell|carry those|them|these|that ?length too|also|(as well)", "they also sell $1", nil},
	{"?there (on top of)|(as well as)|besides ?all others|rest|other|those ?ones|lengths", "too", yardBoth(toldFooters, yardClauseEnds)},
	{"clean|right|plumb|fresh|completely|totally|entirely out of", "out of", footersAhead},
	{"till|until|before|(pending) ?the next|tomorrow|monday|tuesday|wednesday|thursday|friday|spring|summer|autumn|fall|winter ?lorry|truck|delivery|load|shipment|week|month|boat|year|order|drop|run|(comes)", "", yardBoth(goneFooters, yardClauseEnds)},
	{"(not one)|(not single one)|none of ?those !footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?is|are ?left|remaining|(to be had) ?at|in ?yard|store|shop $", "they are out of $1", nil},
	{"SELLER|they ?has|have|'s quit|stopped|(given up)|(gave up) doing|keeping|having|cutting", "they no longer sell", footersAhead},
	{"?some PERSON|i|we ?has|have ?just bought|took|grabbed|snapped|cleaned|snatched ?up|out|off every|all|last ?last|single ?one|lot ?of !footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties ,|and|so ?so ?((there (is|are)|they are) (none [left]|all gone))", "they are out of $1", nil},
	{"strike|cross|scratch|take|drop|remove|cut !footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties from|off|(out of) ?their|list ?of lengths|list|stock|(stock lengths)", "they are out of $1", nil},
	{"?, ?and|as|because|since ((they|those|we) are (out of stock|all gone|sold out|off sale|discontinued))|(there (is|are) none [left])", "", yardBoth(goneFooters, yardClauseEnds)},
	{"[,] ?and that is|'s (the lot|lot|it|all|everything|all of it|all they do|your lot)", "", yardBoth(soldList, yardClauseEnds)},
	{"no need|call|reason|point to buy|order|buying|get|(in buying) these|those|them|any|(that many) ,|. ?as|because|since", "", ownsAhead},
	{"?sitting|sittin|lying|laying|layin|leaning|stacked|stored|stashed|standing|kept|tucked|propped|piled|left|saved ?out|over|up under|behind|beneath|beside|against|in|on|by tarp|tarpaulin|stairs|porch|deck|house|shed|barn|garage|bench|workbench|fence|hedge|hay|tree|trailer|roof|cover|veranda|boathouse|greenhouse|rafters|cellar|attic", "", yardBoth(ownedSizeBehind, yardClauseEnds)},

	// Boards over, the saw, the tape and what is cut short.
	{"order|buy|get|add|throw|send|bring ## more boards|pieces|lengths|sticks ?((to|on|in) (order|list|truck)) than ?the job|wall|plan|list|(cut list)|we|i|it|(you figure)|drawing takes|take|need|needs|(calls for)|(call for)|wants|uses|requires|(asks for)|warrants", "$1 spare boards", nil},
	{"i|we want|need|(would like)|('d like) ## boards|pieces|lengths more than i|we|you 'll|will|would|could|(are going to) ?ever ?actually use|need", "$1 spare boards", nil},
	{"## spares|(boards spare) ?((in|on|with|to|into) [lumber|material|shopping|wood|timber] (order|list))", "$1 spare boards", nil},
	{"?((i|we) (measured|checked|gauged)) slot|groove|slit|channel|track|cut|(saw cut) ?that blade|saw leaves|makes|cuts|takes|left|made ?, ?and ?it ?'s|is|was|measures|measured|(comes to)|(came to)|(came out at) #", "the kerf is $1", nil},
	{"i|we can|could not ?really read|measure|mark ?on|with ?my|this ?tape|ruler|rule ?down ?to ?any|anything finer|closer|smaller than #", "the smallest mark on my tape is $1", nil},
	{"nothing|(no marks) finer than # ?((on|for|in) (marks|tape|marking))", "the smallest mark on my tape is $1", nil},
	{"nothing|(no marks) smaller|closer than # on|for|in marks|tape|marking", "the smallest mark on my tape is $1", nil},
	{"take|knock|shave|trim|saw|lop|nip # off ?(length of) ?each|every|all ?of RAIL ?'s|' ?s ?in length", "cut each rail $1 short", nil},
	{"!cut|saw|make|leave|trim ?all|each|every|my|the RAIL # under|inside|(shy of)|(less than)|(smaller than)|(shorter than)|below their|its|the ?own space|spaces|opening|slot|slots|room", "cut each rail $2 shorter than its space", nil},
	{"RAIL # loose|slack ?(in (all|total))|overall $", "rails cut $1 short", nil},
	{", (all told)|total|(in all)|(in total)|altogether|overall ,", "", fitBehindOrAhead},
	{"on|in|to|over ?the length|lengths of each|every|all|the ?my|the RAIL", "", yardBoth(playBehind, yardClauseEnds)},
}
