package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// sitesHeard are more ways to speak of money, of what is sold, owned and lost to the saw, and of what the site measures, with the plain
// words for each. Each has a figure, a side or a name in it, or wishes by itself; a clause that only tells why is left out behind them.
var sitesHeard = []phrase.Placed{
	// What may be spent, and what somebody says it costs.
	{`if it|this|that|cost|total|bill|price|lot goes|runs|comes|gets|climbs ?to ?up past|over|above|beyond # ?, ?then whole thing|job|deal|lot|plan|wall is off|dead|scrapped|(not happening) ?,|. ?so|and ?so (that is (my|our) (budget|limit|max|ceiling|cap))
		^ ?my|our|his|her pot|purse|stash|float|fund|kitty|wallet|allowance ?(of (money|cash)) ?for|on ?this|it|job|wall stretches|runs|goes|reaches|extends ?only ?(as far as) ?to # ?((and not [a|one] [single] (cent|penny|dollar|buck|dime) (further|more|over|beyond))|(and no (further|more)))
		?my|our PERSON|ORG|they|he|she|i|we ?has|have drew|draws|drawn|draw line at # for|on lot|everything|materials|material|(it all)|(all of it)|(whole thing)|(whole lot)|(whole job)
		i|we|he|she|they can not ?possibly|really|ever justify|afford|stomach|swing|countenance ?spending|(going over)|paying (more than)|over|above|beyond # ?((on|for) (it|this|that|everything|(the lot)|(all this)|materials|wall|job))
		# (all in)|(all told) , ?and that is me|us ?about (cleaned out)|skint|broke|(tapped out)|(maxed out)|(out of (money|cash))|spent
		keep|hold damage|outlay|tab|spend|spending|expense|expenses ?down under|below|within|beneath|inside|(less than) #
		# , that is ?my|our|the|his|her ceiling|cap|limit|maximum|max on|for what i|we ?can|will|may|could spend ?((on|for) (materials|material|lumber|it|this|everything|wall|job))
		(whatever|everything|(all of it)) [that] [(i|we) (buy|get|order)] [,] [it] has|have|must|needs ?to come in at # or under|less|below|lower
		^^ is it|that clear|understood ?to ?you that whole|entire lot|job|thing|wall|bill must|can|may|should not go|run|get|come ?to over|above|past|beyond # ?`, "the budget is $1 dollars", nil},
	{"church|parish|school|village|town|club council|committee|board|wardens|vestry voted|allotted|allowed|granted ?us|me # ?to ?spend ?for|on materials|lumber|this|it|wall|job", "the budget is $1 dollars", nil},
	{"ceiling|cap|limit|maximum on|for what i|we ?can|will|may|could spend ?((on|for) (materials|material|lumber|it|this|everything|wall|job)) ?is|:|,", "the budget is", yardMoneyAheadOrRound},
	{"[,] ?and|so hold|keep|stick ?(it|us|me|things|everything|lot) inside|within|under|below that|it|this", "", yardBoth(budgetBehind, yardClauseEnds)},
	{`?my|our|his|her|the spreadsheet|calculator|sums|invoice|quote|estimate|tally says|shows|gives|has|reads|reckons|claims # for|on everything|lot|(it all)|(all of it)|job|(whole thing)|(whole lot)|(whole job)|materials|material
		i|we get|got|make|made ?it # when|if|after|once ?i|we ?have add|added|adding|tot|totted|total|sum|summed|ring ?it|everything|them|that|things|lot ?all ?up|together`, "he says it all costs $1", checkedBehind},
	{`^ ?can|could|would|will ?you ?please check|verify ?my|our|his|her|their|the SELLER|PERSON|store ?'s|(' s) quote|estimate|quotation|bill|invoice|sums|sum|figures ?for ?me , ?it|they|he|she ?have|has|is ?says|put|written|got|reads ?to # ?at ?the bottom|foot|end ?for|as everything|lot|total|job|materials`, "he says it all costs $1 , is that right", nil},
	{"^ ?dad|mom|mum|PERSON 's|(' s) back - of - ?an|the - envelope|napkin !total|sum|figure|estimate|number|tally|reckoning", "his $1", nil},
	{"does|do|will|would it|that|this|they ?really hold up|water|good", "is that right", yardBoth(yardMoneyBehind, yardClauseEnds)},

	// What each costs.
	{"going|current|market|usual rate|price for|of|on ?one|each", "price of", yardEither(yardSizeAhead, yardItemsAhead)},
	{"£|## buys|(will buy)|(would buy)|(bought me)|(bought us)|gets|(will get)|(pays for) ?you|me|us ?one|each|every ?single bracket|bracket", "brackets cost $1 dollars each", yardClauseEnds},
	{"£|## buys|(will buy)|(would buy)|(bought me)|(bought us)|gets|(will get)|(pays for) ?you|me|us ?box|packet ?of hundred|100 ?of screws", "100 screws cost $1 dollars", nil},
	{"£|## buys|(will buy)|(would buy)|(bought me)|(bought us)|(gets (you|me|us))|(will get (you|me|us))|(pays for)|(buys (you|me|us)) ?one", "i pay $1 each for", yardSizeAhead},
	{"listed|advertised|ticketed|stickered|labeled|labelled|flagged at|for", "priced at", yardBoth(yardSizeBehind, yardMoneyAheadOrRound)},
	{"^ ?one|each|every ?single !(post base)|bracket|anchor|(post cap) will|would|'ll|might|can run|set|cost|rush you|me|us|him ?back ##", "$1 costs $2 dollars", noDollarsAhead},
	{"^ !(bracket|brackets|(post base)|(post bases)|anchors|(post caps)|(post cap)) ,|: ?each , ##", "$1 cost $2 dollars each", yardClauseEnds},
	{"^ !(brackets|(post base)|(post bases)|anchors|(post caps)) ,|: !(5|6|7|8|9|10|11|12|13|14|15|16|17|18|19|20|21|22|23|24|25) each|apiece|(a piece)|(a pop)", "$1 cost $2 dollars each", yardClauseEnds},
	{"they take|want|charge|ask ## for ?one|each|every bracket", "brackets cost $1 dollars each", yardClauseEnds},
	{"^ ?figure|reckon|count|allow|(it is) ?on !(5|6|7|8|9|10|11|12|13|14|15|16|17|18|19|20|21|22|23|24|25) per|a|(for a)|(for each)|(for one)|(for every) !(post base)|bracket|anchor|(post cap) ?((whichever|wherever|whatever) * $)", "$2 cost $1 dollars each", noCountedFor},
	{"^ every|each|one !(post base)|bracket|anchor i|we buy|get|use|order is|costs|runs ##", "$1 costs $2 dollars", noDollarsAhead},
	{"[,] ?can|would|will|could|do you ?even|ever|actually believe ?it|that|this $", "", pricedAndCounted},
	{"!(hundred|100) screws came|was|were|ran|works|worked ?out ?to|at ##", "100 screws cost $2 dollars", noDollarsAhead},
	{"^ !(hundred|100) screws ,|: ##", "100 screws cost $2 dollars", yardClauseEnds},
	{"screws ?i|we|they ?get|buy|sell|come|go|(are sold) by|in hundred|hundreds , ?and|at ## ?per|for|a box|packet|hundred|bag|one", "100 screws cost $1 dollars", yardClauseEnds},
	{"## ?per|for|by hundred|100 , ?and that is what|(how much) screws is|are|cost|go|run|sell|come ?to|for|at", "100 screws cost $1 dollars", nil},
	{"hundred|100 of ?those|these|my screws", "hundred screws", nil},
	{"base that|which goes|sits|stands|fits|belongs under|beneath|below post|posts", "post base", nil},
	{"[,] one|each|single base|bracket|anchor|cap ?, that is", "", yardBoth(pricedAndCounted, yardClauseEnds)},
	{"^^ what does|do|would|will|did !(.. @ ..) cost|run ?me|us|you ? £ [, [so|or so|at least] (PERSON|they|he|she|SELLER) (told|says|said|tells|reckons|quoted) [me|us]]", "$1 costs $3", nil},
	{"^ !(bracket|brackets|anchor|anchors|(post base)|(post bases)|(post cap)|(post caps)) ?is|are|,|:", "$1 cost", spelledMoneyAhead},
	{"(one|a|each|every|single) !(bracket|anchor|(post base)|(post cap)) ?is|,|:", "$1 costs", spelledMoneyAhead},
	{"@ x ## '", "$1 x $2", yardMoneyAheadOrRound},
	{"single|another !(post base)|bracket|anchor|(post cap) will|would|'ll|might|can run|set|cost|rush you|me|us|him ?back ##", "$1 costs $2 dollars", noDollarsAhead},
	{"they have gone ?price up|down on !(brackets|anchors|(post bases)|(post caps)) , ?and|so ?now one|each ?'s|is|(' s) ##", "$1 now cost $2 dollars each", yardClauseEnds},
	{"screws ?at|:|are|is \\$ ## / hundred|100", "100 screws cost $1 dollars", nil},
	{"screws ?i|we|they ?get|buy|sell|come|go|(are sold) by|in hundred|hundreds ,|and ?and hundred|box|packet runs|is|costs|goes|comes ?to|for|at ##", "100 screws cost $1 dollars", yardClauseEnds},
	{"pay|paid|pays|charge|charges|charged|want|wants|asking ?me|us|you ## for ?one|each hundred|100 of ?those|these|my screws", "100 screws cost $1 dollars", nil},

	// What the yard has, and has not.
	{"^^ !((eights|tens|twelves|fourteens|sixteens|eighteens|twenties) ..) , that|those is|are ?all ?your|our|the|my ?whole|only choice|pick|selection|range|options|menu|(what is on offer) ?down|up|over|out ?at|in|from ?yard|store|shop|SELLER|here $$", "they sell $1", nil},
	{"^ mill|sawmill|sawyer ?only|just cuts|does|sells|saws|offers|stocks ?them|it|boards|lumber ?at|in|to", "they sell", footLengthsAhead},
	{"at|in our|my place|yard|store|shop|mill|village|town|SELLER|way it is ?just|only|either", "they sell", yardBoth(yardClauseOpens, lengthsAhead)},
	{"lengths i|we|you can ?actually lay|get|put ?my|our|your hands on ?is|are|:", "they sell", lengthsAhead},
	{"what they|SELLER ?only had|have|stock|keep|carry ?got on|in ?their rack|racks|shelf|shelves|yard|stock|stacks|store was|were|is|are", "they sell", lengthsAhead},
	{"^ i|we|you can ?only buy|get|order|find|have", "they sell", onlyLengthsAhead},
	{"[,] ?and no|nothing|none ?of others|other|else|more|(in between) ?ones|lengths|sizes", "", yardBoth(lengthsToldSold, yardClauseEnds)},
	{"[,] take it or leave it", "", phrase.BothHold(behindSomething, phrase.EndsClause)},
	{"three|two|four|3|2|4 lengths|sizes ?only :|,|-", "", yardBoth(sellsBehind, lengthsAhead)},
	{"you|i|we can ?also get|buy|have|find !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties) ?there|here|(at (the yard|the store|that place)) too|also|(as well)", "they also sell $1", nil},
	{"?((you|we|i) can) put|add|write|jot|stick|slip !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties) on|onto|to|in|into ?their|my list|table of|with lengths ?too|also|(as well)", "they also sell $1", yardClauseEnds},
	{"besides|(on top of)|(as well as)|(apart from)|(aside from) lengths|ones|sizes ?that i|we ?have ?already told|gave|said|mentioned|listed|named ?you ?already|earlier|before ,", "", footersAhead},
	{"(there is) not ?one|single # board|boards|stick|length|plank (to be (had|found|got|bought))|left|anywhere ?((in|at) (yard|town|place|store|shop))", "they are out of $1 boards", yardClauseEnds},
	{"^ ?so|and forget|skip|scratch ?about !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties) , ?because|as|since they|SELLER|store ?are|is|'s|have|has ?clean|all|sold|run|completely out|none ?of ?them", "they are out of $1", yardClauseEnds},
	{", ?but|and|though|although ?i|we ?did ?also ?just spotted|saw|noticed|found|spied|spot|see|notice ?some|few|stack|plenty|pile|lots ?of", ", but they have", yardBoth(goneFooters, footersAhead)},

	// Boards at home and boards over, the saw, the tape and what is cut short.
	{"^ of !(# @) ?s|boards|planks|ones i|we ?already ?now own|have ?got ## ?already|(at home)", "i already have $4 $1", yardClauseEnds},
	{"order|buy|get|have|add|bring ## boards|pieces|lengths|sticks more|extra|over|beyond than ?what|the ?the job|wall|plan|list|(cut list)|we|i|it ?strictly|actually|really takes|take|need|needs|(calls for)|wants|uses|requires", "$1 spare boards", nil},
	{"put|add|stick|tack|write ## boards|sticks|lengths|pieces extra|spare|over ?on|in|to|onto ?lumber|shopping|wood|timber|material order|list", "$1 spare boards", nil},
	{"let us|me|(i will)|(we will) carry|hold|bank|pack ## spare|extra boards|sticks|lengths", "$1 spare boards", nil},
	{"## boards|pieces|lengths|sticks (over and above)|(for insurance)|(in hand) ?((what) (is needed|(we|i) need|(the (job|list|wall) needs)))", "$1 spare boards", nil},
	{"^ extra|spare boards to buy|order|get|add ?[, *] : ##", "$1 spare boards", yardClauseEnds},
	{"[,] ?because|as|since|for ?because i|we am|are|will ?always (bound to)|(sure to)|(certain to)|(likely to)|(liable to)|(apt to)|(going to)|(guaranteed to) botch|ruin|wreck|spoil|muck|mess|miscut|waste|crack|bodge ?up ?at ?least one|some|couple|few|something|two ?of ?them", "", phrase.BothHold(behindSomething, phrase.EndsClause)},
	{"[,] ?and|so ?so mind|remember|(bear in mind)|(keep in mind)|(take note of)|(factor in) that|it|this", "", phrase.BothHold(figureBehindIt, phrase.EndsClause)},
	{"^ ?figure|count|reckon|allow|plan ?on|for # of|for|(worth of) sawdust|dust ?((at|with|for|in) [the]) per|each|every cut|pass", "the kerf is $1", nil},
	{"^ ?please ?just round ?off|up ?everything|all|it|them|things|marks|lengths|figures|numbers to ?nearest # ,|because|as|since ?because|as|since|and that is ?about all|(as (fine|close|near)) ?as ?that ?my|this|our ?old tape|ruler|rule ?can shows|has|goes|reads|marks|show|read", "the smallest mark on my tape is $1", nil},
	{"(no finer)|(nothing finer)|(no smaller) than # ?please , when|as|if ?you give|tell|show|print|write|list|draw ?me|us ?out ?my|the ?all marks|lengths|cuts", "the smallest mark on my tape is $1", nil},
	{"(no finer)|(nothing finer)|(no smaller) than # ?please when|as|if ?you give|tell|show|print|write|list|draw ?me|us ?out ?my|the ?all marks|lengths|cuts", "the smallest mark on my tape is $1", nil},
	{"# short|shy ?overall|(in all)|(all told)|(in total)|altogether , ?and that is how i|we ?always|usually ?like|want cut|make|saw ?all|each|every ?my|our RAIL ?[(to|so) [that] [get|fit|slip|slide|drop|go|they] *]", "cut each rail $1 short", nil},
	{"^ ?every|each|all ?my|our|of|the RAIL ?always gets|is|are|comes|come|get|goes|go|(should be)|(must be) cut|sawn|made|trimmed # under|inside|below|(less than)|(shorter than)|(short of)|(shy of)|(smaller than) its|their|the ?own space|spaces|slot|slots|room ?[[that|which] [it|they] (has|have|goes|go|must|needs|gets|fills|fill|fits|fit) [to] [fit|fill|go] [in|into]]", "cut each rail $1 short", nil},
	{"^ ?every|each|all ?my|our|of|the RAIL comes|come|goes|go|runs|run|ends ?up ?out # short of|shy|under|below its|their ?own space|spaces|slot|slots", "cut each rail $1 short", nil},
	{"?((i|we) (want|need|like|have|allow)) # of play|slack|(wiggle room) ?((in (all|total))|overall) ?, ?(end to end) ?, when|once|as|where|for ?every|each RAIL ?drops|goes|slides|slips|fits|sits|drop|go ?into|in|home|down ?place", "cut each rail $1 short", nil},
	{"?so ?that they|it|rails|boards ?all|each|will slide|slides|drop|drops|slip|slips|go|goes|fall ?right ?in|home ?place without|(with no) mallet|hammer|fight|hammering|persuasion|forcing|swearing|struggle|beating ,", "", yardClauseOpens},
	{"take|knock|shave|trim|saw|nip # in total|all|(all told) off ?each|every|all ?of RAIL ?'s|(' s) ?length ?for|to ?the fit", "cut each rail $1 short", nil},

	// The floor and the posts.
	{"?going|walking|moving|heading ?over|across|along|down to|toward|towards !left|right end post , slab|floor|deck|patio|concrete drops|falls|dips|sinks|slopes ?down|off|away # from|below|under|(lower than) ?((where it is) at) other|far|opposite end|one|side|post", "the floor is $2 lower at the $1 end", nil},
	{"^ ?(end to end) ?, ?it|floor|slab|deck ?(end to end) ?, falls|drops|slopes|dips ?down|away|off ?by # to|toward|towards !left|right ?hand end post", "the floor is $1 lower at the $2 end", nil},
	{"(end to end) ?, ?it|floor|slab|deck falls|drops|slopes|dips ?down|away|off ?by # to|toward|towards !left|right ?hand ?end post|end|side", "the floor is $1 lower at the $2 end", nil},
	{"i|we ?just|have put|set|laid|ran|held ?my|long|the level|straightedge|(water level)|(spirit level)|laser on|across|along|over floor|slab|deck|concrete|patio ,|and ?and", "", yardClauseOpens},
	{"i|we ?just|have dropped|hung|held|lowered|used ?down|up ?my (plumb line)|(plumb bob) ,|and ?and", "", yardClauseOpens},
	{"^ ?it|floor|slab ?'s|is # lower|down at|by !left|right end ?post than|(compared to)|(compared with) ?at|by other|opposite ?one|end|post|side", "the floor is $1 lower at the $2 end", nil},
	{"!left|right end post stands|sits # lower|deeper than other|opposite ?end ?one|post ?does|is", "the floor is $2 lower at the $1 end", yardClauseEnds},

	// Rails that are up, and where others go.
	{"is|'s ?already in|on|up|done , ?was ?i|we ?all done|finished|fitted|fixed|did|fastened|screwed|nailed|hung ?it|that ?up|on|in yesterday|today|monday|tuesday|wednesday|thursday|friday|saturday|sunday|earlier|((last|this) (week|night|summer|spring|morning|month|weekend))", "is up already", railBefore},
	{"leave !((first|second|third|fourth|fifth|bottom|top) (rail|board|slat)) ?alone|just ?exactly where|as it is ?now , ?and ?with ?its top ?edge ?is ?at #", "$1 is up already with its top at $2", nil},
	{"^ work|build|go|plan around|round !((first|second|third|fourth|fifth|bottom|top) (rail|board|slat)) , which|that|it is|'s fixed|up|in|on|screwed|nailed|fastened ?there|on|up ?already ?there ?, ?and ?with its top ?edge ?is ?at #", "$1 is up already with its top at $2", nil},
	{"could|can|would !first|second|third|fourth|fifth|bottom|top|next rail|board|slat|plank please go|sit|be|have|land|finish ?up ?with ?its top ?edge ?be at|on #", "the $1 rail has its top at $2", nil},
	{"?, ?as|because|since|for|so ?it|that|they ?has|needs|wants|is|must|have ?got to ?be|sit match|meet|clear|suit|(line up with)|(level with)|(flush with)|(tie in with) ?my|our bench|counter|countertop|sill|ledge|table|worktop|windowsill|planter|shelf|cabinet|banister|handrail", "", phrase.BothHold(figureBehindIt, phrase.EndsClause)},

	// Brackets, and between what one measures.
	{"clear ?each ?other|(one another) at|with # ,|and ?and no|never closer|less|tighter|nearer", "clear at $1", nil},
	{"for|so ?that ?any ?two brackets not|(do not) ?to meet|touch|clash|foul|hit|bump|collide|overlap , gap|space|(there) has|needs|must|ought|should ?to ?be ?(at least) # ?((at [the] (least|minimum)))", "the brackets clear at $1", nil},
	{"ear|ears on|of ?my|these|those|the|each bracket|brackets poke|pokes|stick|sticks|stand|jut|juts|project|hang|extend ?out|past|beyond ?by # ?((past|beyond|over) [the] RAIL) ?(above and below [the] RAIL)", "the bracket stands $1 past the rail", nil},
	{"# ?on|to center|centers|centre|centres between|for ?my|our|both ?two end posts", "the end posts are $1 on center", nil},
	{"what is clear|open|free between|inside end posts is|measures|(comes to)", "between the end posts is", nil},
	{"^ ?my|our|these rails|boards are not ?the width|size ?that|they ?is|say ?in|on book|label|catalog|catalogue|tag|ticket|chart ?says , ?and|but ?their face ?width ?is ?really|actually ?is|measures #", "rail face is $1", nil},
	{"rail|board stock|lumber|material mikes|calipers|miked|tapes ?out ?at|to # ?wide|across", "the rails measure $1 wide", nil},
	{"bay ## !top|bottom , ?and|there i|we make|made|get|got|read|measure|measured ?it|that ?at|as #", "bay $1 measures $3 at the $2", nil},
	{"come|go|measure|step|move ?out|in|over|along # off|from|in ?from !left|right ?end post , ?and ?then|there ?and ?then have|put|start|begin|make|place opening|walkthrough|(walk through)|doorway", "the opening starts $1 from the $2 post", nil},
	{"come|go|measure|step|move ?out|in|over|along # off|from !left|right ?end post and then|there have|put|start|begin|make|place opening|walkthrough|(walk through)|doorway", "the opening starts $1 from the $2 post", nil},
	{"[,] ?so ?as ?to ?be|keep|stay|well clear of ?the ?garden tap|hose|spigot|faucet|downspout|drain|meter|drainpipe|socket|outlet|hedge|bush|bench|hydrant|manhole", "", phrase.BothHold(figureBehindIt, phrase.EndsClause)},
	{"i|we ?would ?'d want|like|need|prefer to come|walk|go|get in|through|inside at|on|by|from !left|right ?hand end|side $", "put the opening at the $1 end", nil},
	{"^^ * on|at|by|from !left|right ?hand ?side|end , so ?please put|have|make|set opening|doorway|entrance|walkthrough|(walk through) ?at|on|to that|same end|side", "put the opening at the $1 end", nil},

	// What is wished of all.
	{"could|can|would|will|may every|each bay ?please be|come|end|turn|work ?out|up ?just|exactly as wide|big|long as next|(any other)|other|others|rest|(one beside it) ?", "make all the bays equal", nil},
	{"^ ?(as for) posts , fewer better , so ?please go|stick ?for|with fewest|least", "fewest posts", nil},
	{"make|do|have ?it|this|that|job|layout|wall least wasteful|wasting|scrappy ?one|way|layout ?((as you can)|(you can))", "go for the least waste", nil},
	{"^ dig ?me|us fewest|least ?number ?of ?possible post holes|postholes ?possible", "fewest posts", nil},
	{"^ ?whichever|whatever|the ?one|layout|way|option ?that throws|wastes|leaves|burns|bins|chucks least|fewest ?amount ?of ?wood|lumber|scrap|offcuts|timber|material ?away|over|behind|out $", "go for the least waste", nil},
	{"^ i|we ?really|just hate|loathe|detest|(can not stand) burning|binning|throwing|wasting|dumping|stacking ?out ?away offcuts|scrap|scraps|wood|lumber|timber|material ,|. ?so", "", nil},
	{"^ ?go ?for|with whatever|whichever ?one costs|runs|is ?the ?me|us least|cheapest , ?and that is ?one|what ?that i|we want|need|(would like)|(am after)|(are after)", "cheapest", nil},
	{"cheapest , ?and that is ?one|what ?that i|we want|need|(would like)|(am after)|(are after)", "cheapest", nil},
	{", ?because|as|since ?because money|cash is|'s tight|short ?right ?now|(this month)|(these days)|((since|after) *)", "", phrase.BothHold(behindSomething, phrase.EndsClause)},
	{", ?because|as|since i|we have ?got ?a (stop block)|stop|jig ?already set ?up", "", phrase.BothHold(behindSomething, phrase.EndsClause)},
	{", ?because|as|since i|we am|are not resetting|moving|readjusting|adjusting saw|stop|fence|jig ?again ?((every|each) time)", "", phrase.BothHold(behindSomething, phrase.EndsClause)},
	{", ?because|as|since i|we never ?really learned|learnt|mastered|understood other|metric ?one|(the other (one|lot|sort|system))", "", yardBoth(phrase.SaidBeforeOf(scan.WordSet("inches feet")), yardClauseEnds)},

	// Plans that are kept, and what is asked of all.
	{"^ ?please put|file|tuck|stash this|that ?plan|layout|one away|by|aside ?for ?me|us|later ?, ?and call|name it|this|that !_ when|as|once ?you save|saving|store|file it|this|that $", "save this as $1", nil},
	{"^^ !_ is|'s plan|layout ?that|which i|we ?now want|need|(would like) opened|loaded|(brought up)|(pulled up)|(to open)|(to load) ?again|up|now $$", "open $1", nil},
	{"i|we want|need|(would like)|('d like) to work|look|go|start ?some ?more on|at|with ?plan|layout !_ , ?so ?please open that|it|this ?one ?up ?please $", "open $1", nil},
	{"throw|chuck|bin|toss|wipe|clear|scrap ?out|away everything|all|(all of it)|it|that ?that ?i|we ?have ?told|said|gave|given ?you ?all ?(so far) ?, and|then ?let ?us start|begin fresh|again|over|anew|afresh|clean|(from scratch)|(from the top)|(from zero)", "start over", nil},
	{"^ ?please scrap|bin|ditch|chuck|wipe|clear|erase|dump it|this|everything|lot ?all , ?and|so|then ?let ?us ?start|begin|go ?again ?over from scratch|top|zero|beginning|(square one)", "start over", nil},
	{"^ ?please list|show|tell|read|give ?me|us ?back|out ?all|everything what|that you have ?got|heard|noted|taken ?down from|off me|us ?(so far) $", "what have i told you", nil},
	{"^ ?please tell|show|give|read|list ?me|us ?out|off ?all|every ?possible counts|numbers ?of ?RAIL that|which ?i|we|you would|will|'d|might|could|can ?all fit|work|do|suit|(come out) ?right|well|fine|in|out $", "show me the counts that would work", nil},
	{"how many rails|boards|slats could|can|might|may it|there|that ?all be , ?(and|so|please) ?please list|show|tell|give ?me|us ?all|every counts|count|numbers|ones|options ?that|which ?would|will work|fit|works|come|comes ?out ?right", "show me the counts that would work", nil},
	{"how many rails|boards|slats could|can|might|may it|there|that ?all be , show me counts that would work", "show me the counts that would work", nil},
	{"how much ?money am|are|will|would|do|shall|must i|we|he|she ?be ?going ?to ?end|wind ?up ?have ?to spend|spending|pay|paying|(fork out)|(lay out)|(shell out)|need|needing ?on|for ?all this|it|that|everything|materials|wall|lot|job|(whole (thing|lot|job)) $", "what does it cost", nil},
	{"i|we ?need|have|want|must ?got ?to tell|show|let ?my|our PERSON|ORG|boss ?know what|(how much) whole|(it all)|lot|(all of it)|job|it|wall ?thing|lot|job|wall ?all costs|cost|(comes to)|(will cost) , so what|(how much) is|does|would it|that ?be|cost|(come to)", "what does it cost", nil},
}

// yardEither: one of the two holds.
func yardEither(a, b func(before, after []scan.Atom) bool) func(before, after []scan.Atom) bool {
	return func(before, after []scan.Atom) bool { return a(before, after) || b(before, after) }
}

// noCountedFor: nothing is spoken of that parts are counted for.
func noCountedFor(before, after []scan.Atom) bool {
	counted := func(a scan.Atom) bool { return countedFor[a.Text] }
	return !slices.ContainsFunc(before, counted) && !slices.ContainsFunc(after, counted)
}

// pricedAndCounted: a part that has a price, or lumber, stands before with a number.
func pricedAndCounted(before, _ []scan.Atom) bool {
	return YardItemIn(before) && yardFigureBehindOrHalf(before)
}

// spelledMoneyAhead: "two seventy-five" follows, and nothing of the clause behind it.
func spelledMoneyAhead(_, after []scan.Atom) bool {
	if len(after) < 2 || !chunk.SpelledNumber(after[0].Text) || !moneyTens[after[1].Text] {
		return false
	}
	end := yardFigureEnd(after, 0)
	return end >= 2 && (yardClauseEnds(nil, after[end:]) || after[end].Text == "each" || after[end].Text == "apiece")
}

// moneyTens are numbers that cents are told by.
var moneyTens = scan.WordSet("ten fifteen twenty thirty forty fifty sixty seventy eighty ninety twenty-five")

// onlyLengthsAhead: lengths of lumber follow, and that there are no others.
func onlyLengthsAhead(_, after []scan.Atom) bool {
	ahead := yardClauseAhead(after)
	return LengthsIn(ahead) && slices.ContainsFunc(ahead, func(a scan.Atom) bool { return a.Text == "others" || a.Text == "nothing" || a.Text == "other" })
}

// footLengthsAhead: lengths in feet follow, or as they are called in the yard.
func footLengthsAhead(_, after []scan.Atom) bool {
	ahead := yardClauseAhead(after)
	return LengthsIn(ahead) || slices.ContainsFunc(ahead, func(a scan.Atom) bool { return a.Text == "foot" || a.Text == "feet" || a.Text == "footers" })
}

// sellsBehind: somebody sells.
func sellsBehind(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool {
		return slices.Contains(lexicon.Vocab().Classes[a.Text], lexicon.Vocab().Ids["SELLS"]) || a.Text == "does" || a.Text == "do" || a.Text == "cuts"
	})
}

// lengthsToldSold: somebody sells lengths that were told.
func lengthsToldSold(before, _ []scan.Atom) bool { return sellsOrBuys(before) && LengthsIn(before) }

func sellsOrBuys(before []scan.Atom) bool {
	return sellsBehind(before, nil) || slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "buy" || a.Text == "get" || a.Text == "have" })
}

// figureBehindIt: a figure was told.
func figureBehindIt(before, _ []scan.Atom) bool { return yardFigureBehindOrHalf(before) }
