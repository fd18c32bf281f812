package idiom

import "saywright/grammar/phrase"

// meansTurns are further turns of phrase of money, of what a saw and a square end take, of boards come by, and of what is to be least.
var meansTurns = []phrase.Placed{
	// What may be spent.
	{"^ anything|everything|any ?sum ?bill over|above|past|beyond|(more than) !(SUM) ?dollars|bucks is ?just|simply (out of the question)|(too much ?for)|(too (dear|rich) [for ME])|(more than CLIENT [can] (have|afford|spend))|(off the table)|out|(not on)|(too much)", "budget $1", spentEnds},
	{"!(SUM) ?dollars|bucks is where|(as far as) i|we draw|stop|(get off)|quit|go ?(the line)|there", "budget $1", phrase.BothHold(phrase.StartsClause, spentEnds)},
	{"^ CLIENT|it|this|that|bill|total|cost|(the (bill|total|cost|lot|job)) can|must|may|shall not ?ever top|pass|break|beat|breach|exceed|clear|crack|cross !(SUM) dollars|bucks", "budget $1", yardClauseEnds},
	{"^ ?please raise|lift|up|bump|lower|drop|cut|change|move|set ?up|down ?the|our|my ?spending limit|cap|ceiling|maximum|max to|at !(SUM) dollars|bucks", "budget $1", spentEnds},
	{"!take|knock|cut|shave|trim|lop !(SUM) ?dollars|bucks off|from what|(the amount)|(the sum) ?that i|we|they can|may|could|will spend|pay|afford", "take $2 dollars off the budget", spentEnds},
	{"^ there is|are no|not ?any ?more|longer ?a budget|spending|cost|price ?limit|cap|ceiling|budget ?anymore|now|(any (more|longer))", "forget the budget", yardClauseEnds},
	{"^ SPENDERS ?have|has raised|collected|saved|earned|scraped|gathered|made|pooled ?up|together !(SUM) ?dollars|bucks ,|; ?and|so that|it|this ?will ?is (has to do)|(must do)|(have to do)|(have to be enough)|(must be enough)|it|all|(what there is)|(has to be enough)", "budget $1", spentEnds},
	{"^ the board|council|elders|trustees|treasurer|bursar okayed|approved|voted|allotted|authorized|granted|allowed|(set aside)|(signed off on) ?ME !(SUM) ?dollars|bucks ?((for|on|toward) [the|this|our|my] (wall|job|project|materials|LUMBER|it))", "budget $1", spentEnds},
	// What each costs.
	{"^ per|each|(for (each|one|every)) !(bracket|anchor|(post base)|(post cap)) ,|it|they|that|we|i ?is|are|comes|cost|costs|runs|charge|want|pay ?to !(## ## [##])", "$1 cost $2 each", spentEnds},
	// Over and above.
	{"^ ?please plan|figure|allow|budget|count|reckon|leave|buy ?on|for ## %|percent|(per cent) ?for scrap|waste|loss|breakage|mistakes|miscuts|culls|spoilage", "$1 percent spare", yardClauseEnds},
	// What the saw takes, and what a square end takes.
	{"blade|saw takes|cuts|chews|eats|bites|removes|rips # ?out|away|off ?((of|from) the (wood|board|boards)) every|each ?single time|pass|stroke|go|cut", "kerf $1", spentEnds},
	{"blade|saw leaves|makes|cuts|opens|plows|has a|an # ?wide slot|groove|kerf|slit|track|cut", "kerf $1", spentEnds},
	{"^ ?the trimming|squaring|cleaning|truing ?up ?(the (end|ends))|ends|them|boards costs|takes|eats|loses|uses|wants|needs ?ME # ?for|off|of|on ?a|an|per|each|every|one ?single board|stick|plank|length|piece", "trim $1 per board", yardClauseEnds},
	{"^ ?please leave|allow|keep|figure|count|reckon|reserve ?on|for # for|per|on|of|a|at ?a|each|every ?single board|stick|plank|length ?end for|to trimming|trim|squaring|cleanup|(square (it|the end|the ends))|(clean up [the] (end|ends))|(true up [the] (end|ends))", "trim $1 per board", yardClauseEnds},
	// What is on sale.
	{"^ ?the|all ?our|my LUMBER ?here|locally|(around here)|there is|are|comes|come ?only ?always cut|sawn|milled|trimmed ?down|off to|at|into|in", "they sell", lengthsSaidNext},
	{"^ ?the|our|my ?_ place|outfit|warehouse|SELLER ?down|up|over|out downtown|uptown|nearby|(across town)|(around the corner)|(down the (road|street))|(next door)|(by the (highway|river|tracks|station))|(in the next (town|village)) has|have|keeps|stocks|sells|carries|offers ?only|just", "they sell", lengthsSaidNext},
	// What is at hand.
	{"^ ?and ?so i|we have|'ve ?already|just|now ?all unloaded|collected|fetched|stashed|stacked|stowed|stockpiled|hoarded|amassed|squirreled|accumulated ?away|up|home|in|out", "i have", countedBoardsNext},
	{"^ ?the|our|my ?last|old|previous|former|prior caretaker|tenant|tenants|janitor|custodian|groundskeeper|warden|ranger|manager|PERSON|ORG|owners|crew let|lets ME keep|have|take", "i have", countedBoardsNext},
	{"^ ?the|our|my last|old|previous|former|prior caretaker|tenant|tenants|janitor|custodian|PERSON|owners|crew abandoned|forgot|dumped|(left behind)|(left here) ?behind|here", "i have", countedBoardsNext},
	// What is to be least.
	{"^ ?keep ?it cheap|cheapest|(low cost)|(the price)|cost is|'s what|(all that)|(the main thing) ?that ?counts|matters|(i care about)|(we want)|(i want)", "cheapest", yardClauseEnds},
	{"^ ?the|with ?as least|(as little)|(the smallest amount of) money ?as ?possible out of pocket|(my pocket)|(our pocket)|hand|(the (till|wallet|purse))", "cheapest", yardClauseEnds},
	{"^ ?please|let ?us ?just burn|squander|lose|toss|discard|scrap|trash|ruin ?up as little|few ?of ?the|this|my|our LUMBER|boards|wood as possible|(you can)|(we can)|(i can)|(it can be)", "least waste", yardClauseEnds},
	// Units.
	{"^ ?please ?back|in|with|use|to ?to inches|feet and feet|inches again|please|instead|now|((from (now|here)) [on])", "use inches", yardClauseEnds},
}
