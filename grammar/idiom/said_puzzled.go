package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// puzzledTurns are further turns of those who try something out, are puzzled by what came of it, or ask for one thing in other words.
var puzzledTurns = []phrase.Placed{
	// What is tried, and what comes of it.
	{"^ ?* what|how ?much !((.. # ?..)|(# ..)|(.. @ ?..)) would|will|might|could|does|do ?then do|mean|change to|for|as ?for !RESULT", "what if we had $1 , what is $5 ?", phrase.BothHold(notToldBefore, asksEnd)},
	{"^ ?and|so|then|now|ok|please|just let us|me ?just ?go ?and see|learn|hear|find|look ?out ?at what|how !((.. # ?..)|(# ..)|(.. @ ?..)) gets|gives|buys|does|brings|looks|would|leaves ?get|give|do|bring|look|leave|be ?to|for ?me|us ?with ?like ?then $", "what if we had $1", nil},
	{"^ ?and|so|then|now|ok what|where would|did|do|will i|we|you|it|that|things ?all ?then end|wind|come|land|finish ?up|out ?with|at ?then if|were", "what if", numberNear},
	{"^ ?and|so|then|now|ok what|where would|did|do|will i|we|you|it|that|things ?all ?then end|wind|come|land|finish ?up|out ?at ?then with", "what if we had", countedOrMore},
	{"^ ?and|so|ok what would|will|does|might|could it|this|that|things|everything ?all be|look|feel|seem like with|at|having|using", "what if we had", countedOrMore},
	{"try|trying|tried !(..) on for size", "try $1", nil},
	{"swap|swapped|sub|subbed|slip|slipped|drop|dropped|trade|traded in @ ?s for|as|(in place of) !(RAIL|POST|STIFF)", "use $1 for the $2", nil},
	{"!(bring|brought|take|took|drop|dropped|lower|lowered|raise|raised|lift|lifted) top ?of|edge ?of ?WALL ?all ?right ?down|up to|at #", "make the wall height $2", noDoubtBefore},
	{"^^ # !COUNTQ ?-|--|:|=|,|. !RESULT \\?", "what if $1 $2 , what is the $3 ?", nil},
	{"!RESULT = \\?", "what is $1 ?", nil},
	{"!COUNTQ = \\?", "how many $1 ?", nil},
	{", ?and|so what|how ?much would|will|is|does|did ?all that|it|this ?then do|mean|change|make|leave ?to|for|with|as ?for !RESULT", ", what is $1 ?", phrase.BothHold(figuresBefore, asksEnd)},

	{"^ with !(..) , does|do|will|would|is|could it|that|this|everything|things ?all ?still ?be come|work|turn|pan|go|fit|hold|possible ?out|up|together ?ok|okay|right|fine|alright|(all right)|nicely|well ?then $", "what if we had $1 ?", nil},
	{"^ ?please|and|so|just ?can|could|would|will ?you ?please ?just tell|show|say|let ?me|us ?know if|whether !(..) could|might|can|may ?ever|possibly|still be # ?or ?not $$", "what if $1 was $2 ?", nil},
	{"^ ?and|so is|was|would|are # for|on|as|with !LENQ ?be ?still on cards|table $", "what if $2 is $1 ?", nil},
	{"^^ !LENQ ?of|at|: # ,|;|-|-- ?is ?it|that possible|feasible|doable|workable|realistic|practical \\?", "what if $1 is $2 ?", nil},
	{"^^ !(## COUNTQ) ,|;|-|-- ?is ?it|that possible|feasible|doable|workable|realistic|practical \\?", "what if there are $1 ?", nil},
	{"^ i|we would|'d|am|are ?really|quite|just|rather ?be curious|interested|keen|intrigued ?to ?in see|seeing|try|trying|hear|hearing !LENQ at|be|of|as #", "what if $1 is $2", asksEnd},
	{"^ ?and|so would|is|was|will|could|might ?there anything|something|there ?anything ?really|seriously ?be matter|amiss|wrong|(gone wrong) with|about|in ?us|me|my|our ?having|using", "what if we had", countedOrMore},
	{"^ ?and|so would|is|will it|that ?be|look ?bit|little ?totally|completely|just|too|so|very|pretty|quite mad|daft|crazy|silly|foolish|stupid|nuts|wrong|unwise|wise|overkill|odd|strange|reckless|ok|okay|fine|(all right)|alright|allowed|legal ?of|for ?me|us ?and to ?just have|make|put|set|use|try|go|run|build ?it ?for|with", "what if we had", countedOrMore},
	{"is|are|was|were ?not !(## (RAIL|STIFF)) ?not plenty|ample|sufficient|adequate ?enough $", "would $1 be enough ?", nil},
	{"what ?kind ?of ?sort ?of effect|impact|bearing|influence|consequence|consequences would|will|does|do|might|could !((.. # ?..)|(# ..)|(.. @ ?..)) have on|upon|for !RESULT", "what if we had $1 , what is $5 ?", asksEnd},

	{"^ ?please|and|so|now ?can|could|would|will ?you ?please ?just redo|rework|refigure|recalculate|rerun|recompute|(do over)|(work out again)|(figure again) ?it|this|that|everything|(all of it)|(the (numbers|layout|wall)) ?again|over ?all for|with|at|assuming|using", "what if we had", amountFirst},
	{"raised|lifted bottom|lowest RAIL ?up by #", "add $1 to the bottom gap", triedAhead},
	{"lowered|dropped bottom|lowest RAIL ?down by #", "take $1 off the bottom gap", triedAhead},
	{"(can|could|may) i|we ?please get|have|hear ?please !RESULT ,|and ?and !RESULT", "what is $1 and what is $2", asksEnd},
	{"how short|long would|will|do|does|might|should RAIL ?then ?have ?to ?be|get|become|come ?out|be ?cut with|at|given", "what are the cuts if we had", amountFirst},
	{"how many !RAIL do|does|would|will ?i|we|you|that|it ?then get|give ?me|us", "how many $1 would there be", phrase.BothHold(supposedBefore, clauseEnds)},
	{"^ is|are|was|would !((# LENQ)|(## (RAIL|STIFF))) ?be safe|sound|strong|sturdy|secure|stiff|legal|lawful|sensible|wise ?enough", "would $1 be ok", clauseEnds},
	{"^ does|do|would|will going|moving|switching|dropping|raising ?it ?up|down to # high|tall ?then ?also add|need|take|cost|save|mean ?me|us ?another|one|more|extra|any RAIL ?more", "what if the wall is $1 high , how many boards ?", clauseEnds},
	{"how would|does|will|do it|this|that|everything price|cost ?itself ?out|up with|using", "what would it cost with", countedOrMore},
	{"^ do|does|would|will|could|is ?there i|we|you|it|that ?really|actually gain|win|benefit|profit|help ?anything|much|something|any ?at ?all from|by|with ?us|me using|having|going|switching|(changing over) ?to|with|for", "what if we had", amountFirst},
	{"without|(with no) ?any|one|single !((added|extra|new|additional post|posts)|STIFF)", "with 0 $1", phrase.BothHold(triedAhead, clauseEnds)},
	{"if RAIL ?all were|are|was|sat|stood|went|came ?set ?a ?bit|little closer|tighter|further|farther|wider|nearer ?together|apart ,|:|- ?say|like|maybe|perhaps #", "if the gap is $1", nil},

	// Why it is so.
	{"^ ?and|so ?please ?can|could|would|will you ?please justify|defend|substantiate|(account for)|(back up) !RESULT|((that|this|your) number|count of RAIL)", "why the $1", asksEnd},
	{"what makes|made|drives|drove|pushes|pushed|puts|got|keeps price|cost|total|bill|quote ?up so|that|this ?awfully|very high|much|steep|dear|expensive|low|cheap|big|large|up", "why is the price so high", asksEnd},
	{"why|(how come) ?am|are|do|must|should|would ?i|we|you|it ?have|need|needs ?to ?buying|buy|getting|get|need|needing|be|using|use so|that|this|all|these ?of ?these|those|the ?awfully ?many|much ?of !(eights|tens|twelves|fourteens|sixteens|eighteens)", "why is the shopping list so long", asksEnd},
	{"what is|'s ?up with ?all odd|weird|strange|funny|big|huge|tiny|small|narrow|wide|tight|ugly|crazy !RESULT", "why $1", asksEnd},
	{"why is|are|does|do !RESULT not ?get|come|be ?out ?any|much|a ?bit wider|bigger|larger|taller|higher|narrower|smaller|tighter|lower|shorter|longer|closer|roomier", "why $1", asksEnd},
	{"why is|are|does|do not !RESULT ?get|come|be ?out ?any|much|a ?bit wider|bigger|larger|taller|higher|narrower|smaller|tighter|lower|shorter|longer|closer|roomier", "why $1", asksEnd},
	{"walk|take|talk|run|step|guide me|us|THEPUPIL through|over !how|why !you|it|we|they !got|came|arrived|picked|chose|settled|ended", "explain $1 $2 $3", numberNear},
	{"show ?me|us ?your work|working|workings|reasoning|sums|math on|for|behind|with !RESULT", "why $1", asksEnd},

	// How it is worked out, by oneself.
	{"how do|would|can|could|should i|we|you|one ?ever ?go ?about find|figure|work|calculate|get|compute|finding|figuring|working|calculating ?out !RESULT ?all (on (my|our|your|one's) own)|(by hand)|myself|ourselves|yourself|oneself|([with] pencil and paper)|(on paper)|(in my head)|(by (myself|ourselves|yourself))", "teach me how to work out $1", asksEnd},
	{"what do|would|must|should i|we|they|one have|need|must ?to know|learn|understand ?in ?order to find|figure|work|calculate|get|compute ?out !RESULT", "teach me how to work out $1", asksEnd},
	{"^ ?and|so|ok how does|do !RESULT ?actually|really|even work ?exactly|anyway", "teach me how to work out $1", asksEnd},
	{"^^ ?sorry|well|and|but|oh ?, ?it|that|this|i|we ?just|still|really|always|all|do|am|is|can ?not fail|fails|beats|beat|puzzles|baffles|escapes|eludes|bugs|bothers|confuses|stumps|perplexes|intrigues|mystifies|(beyond)|mystery|puzzle|riddle|((makes|make) (no|little) sense)|(at (a loss|sea))|baffled|puzzled|stumped|confused|perplexed|intrigued|mystified ?to|for ?me|us ?as|about ?to ?see|understand|know|grasp|follow ?as ?to how !RESULT got|came|comes|gets|turned|ended|turns|ends|could|can ?ever ?out|up ?to ?be ?about ?so|that|this|such ?big|small|wide|narrow|tight|high|low|tall|odd|way", "why $1", asksEnd},
	{"^ ?and|so|please|now ?can|could|would|will ?you ?please explain|tell ?to ?me|us how|what !RESULT came|got|turned|ended ?out|up ?to ?be about|by|(to be)|(to be so (big|wide|tight|high|small))|(that way)", "why $1", asksEnd},
	{"why|(how come) such ?very|rather ?big|small|wide|narrow|tight|high|low|tall|odd|huge|tiny|large|weird|strange|funny !RESULT", "why $1", asksEnd},
	{"why do|would|did you ?all|ever suppose|think|reckon|imagine|guess|believe|figure ?that there is|are|were|be|come|would ?to ?be ## !COUNTQ", "why the $2", asksEnd},
	{"why do|would|did you ?all|ever suppose|think|reckon|imagine|guess|believe|figure ?that !RESULT is|are|comes|has|needs|turns|ends|works ?to ?be ?out|up ?what|how|where|as|so ?it|they ?is|are|does|big|small|wide|narrow|high|low|tight|tall ?it ?is", "why the $1", asksEnd},
	{"^ ?so|and|or|but ?is|was ?it ?there who|what|something ?or ?who|what ?is|was ?it ?that decides|decided|determines|determined|governs|dictates|fixes|controls|settles !RESULT", "why the $1", asksEnd},
	{"why is|are !RESULT ?so ?much|any|that bigger|wider|larger|taller|higher|smaller|narrower|tighter|lower|shorter|longer ?out than rest|others|(other ones)|(the other (gaps|bays|spaces))|((what|it) ?that ?i|we ?had (thought|expected|asked ?for|wanted|figured|planned|hoped) ?for)|((i|we) (thought|expected|wanted|figured|planned|hoped))", "why is $1 so big", asksEnd},
	{"and|, ?how|tell ?me|come why|(how come) is|must|does|'s|has|should it|they|he ?have|need|has|got ?to ?be ?so|that|as|any taller|higher|longer|tall|high|long than|as WALL", "and why the post height", phrase.BothHold(clauseEnds, postSpokenLast)},
	{"i|we ?have ?already ?just tried|asked|wanted|went ?for|with|out|in !((## (RAIL|STIFF))|(# LENQ)|(# for LENQ)) ,|and|but ?and|but ?then it|they|that|you|there would|did|will|does|could|is|was|were ?simply|just not ?ever ?let|allow|take|accept ?me|go|work|fit|have|do|fly|possible ?it|that|them ?in ,|.|;|- ?so|and ?but ?tell|explain ?to ?me why|(how come) ?is ?that|not", "why can i not have $1", asksEnd},
	{"what is|are|'s holdup|(hold up)|(hold - up)|hangup|(hang up)|beef|snag|catch|obstacle|objection|hindrance|hitch ?with|to|against|for|in ?us|me ?having|using|going ?for|with !((## (RAIL|STIFF))|(# LENQ)|(# for LENQ)|(LENQ of|at #))", "why can i not have $1", asksEnd},

	// What is asked for in other words.
	{"and|, ?of what size|lumber|dimension|dimensions|stock ?lumber is|are|'s|do|must they|it|those|these|that ?be ?made ?of ?cut ?from", "and what size are the stiffeners", phrase.BothHold(clauseEnds, stiffenersAlone)},
	{"and|, ?of what size|lumber|dimension|dimensions|stock ?lumber is|are|'s|do|must they|it|those|these|that ?be ?made ?of ?cut ?from", "and what size are the rails", phrase.BothHold(clauseEnds, railsAlone)},
	{"^ ?sorry|oh|um|uh|but|so|and|well|damn|drat ?, ?i|we keep|kept|am|are ?on ?always|forever|constantly forgetting|losing|(losing track of)|(getting muddled about)", "tell me", askedInside},
	{"^ ?sorry|oh|um|uh|but|so|and|well ?, ?i|we would|'d|had|should|have|need|must|want ?to ?better ?just ?quickly check|reminding|verify|(look up)|(double check)|(double - check)|recheck|(be sure) ?again ?on|of|about", "tell me", askedInside},
	{"^ ?and|so ?do|would|can|could you ?still ?by ?any ?happen|chance ?to remember|recall|(have to hand)|(have handy)", "tell me", askedInside},
	{"^ ?and|so ?or did|have|had ?not i|we ?already|ever ?not give|given|tell|told|set|say|said|mention|mentioned|enter|entered ?you ?for ?about ?of !RESULT", "what is $1", asksEnd},
	{"^ ?and|so can|could|do|will|would you ?still remember|recall|(read back)|repeat what|everything|all|whatever ?all ?that i|we ?have ?already told|said|gave|given|entered|asked ?you ?to", "what have i told you so far", asksEnd},
	{"^^ ?and|so what|which are you going|working|running on|by|off|from ?of ?now|here|today", "what have i told you so far", asksEnd},
	{"^^ ?and|so|well ?is|are|have|do|would ?there ?you|we|i ?know|got|have|be ?of ?any other|another|different|alternative way|ways|layout|layouts|option|options|arrangement|version|solution|combination|combinations|possibilities|possibility ?to|of ?do|doing|build|building|make|making ?it|this|that|wall ?at ?all|work|do|fit ?\\?", "what are the options", clauseEnds},
	{"^ ?please|and|so|just ?can|could|would|will ?you ?please give|show|offer|list|name|tell ?me|us ?about some|few|several|all ?more|other|of ?my|our|the choices|options|alternatives|possibilities", "what are the options", asksEnd},
	{"what is|was|are|were|'s limit|maximum|max|minimum|cap|ceiling|most|least on|for|of bays|bay ?again", "what is the bay width", clauseEnds},
	{"^ ?and|so|please|now ?can|could|would|will ?you ?please explain|show|read|give|tell|go|walk|take ?me|us ?to|with ?me|us ?through|over ?all each|every|all ?single|one ?of line|lines|step|steps|part|parts|bit|stage|piece|stages ?of|in|from ?the ?whole|entire sum|sums|calculation|arithmetic|math|maths|working|workings|computation", "show me the whole sum", asksEnd},
	{"what|which thickness do|did|have|are|is you|we|i ?got|have|put|use|using|figure|figuring ?me ?down ?for|on|with|as brackets", "how thick are the brackets", asksEnd},
	{"what do|does|are|is !(COUNTQ|POST) ?all measure|come|made|cut|sawn ?in|out|from ?of|at ?, size wise", "what size are the $1", asksEnd},
	{"what are|is|'s !(COUNTQ|POST) ?all made|cut|sawn|milled|ripped out|from|of ?of", "what size are the $1", asksEnd},
	{"how much|far does|did|do|is|will !FLOOR ?surface ?really|actually drop|fall|slope|run|dip|tilt|go|slant|dropping|falling|sloping ?off|down|away|out ?of ?level ?by ?across|along|over ?the|my|our ?whole|entire ?wall|way|length|run", "what is the floor at right", asksEnd},
	{"what|(how much) ?allowance|waste|loss ?do|did|have|are|is|am i|we|you|there give|given|allow|allowed|allowing|leave|left|leaving|make|made|figure|figured|figuring|plan|put ?down ?for|on ?to squaring|trimming|square|trim ?up|off ?board ?ends|end|boards", "what is the trim", asksEnd},
	{"^ ?is|do|should|must|ought|need ?there ?i|we need|have|ought|something|anything|want ?to ?know|(look out for)|(watch for)|mind ?i|we ?should ?know anything|something|about|(i (should|need to|ought to) know) ?else ?at ?all before i|we start|begin|cut|dig|saw|drill|build ?cutting|sawing|drilling|building|digging ?anything|work", "what should i be careful of", asksEnd},
}

// notToldBefore: nobody said or told it.
func notToldBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		switch a.Text {
		case "said", "says", "told", "tells", "says so", "wrote":
			return false
		}
	}
	return true
}

// stiffenersAlone: stiffeners were spoken of before, and no rails and no posts.
func stiffenersAlone(before, _ []scan.Atom) bool {
	stiff := false
	for _, a := range before {
		switch {
		case chunk.IsClass(a.Text, "STIFF"):
			stiff = true
		case chunk.IsRail(a.Text), chunk.IsClass(a.Text, "POST"), chunk.IsClass(a.Text, "BRACKET"):
			return false
		}
	}
	return stiff
}

// postSpokenLast: of what has a height, the post was spoken of last.
func postSpokenLast(before, _ []scan.Atom) bool {
	for i := len(before) - 1; i >= 0; i-- {
		switch {
		case chunk.IsClass(before[i].Text, "POST"):
			return true
		case chunk.IsRail(before[i].Text), chunk.IsClass(before[i].Text, "WALL"), chunk.IsClass(before[i].Text, "STIFF"), chunk.IsClass(before[i].Text, "OPENING"):
			return false
		}
	}
	return false
}
