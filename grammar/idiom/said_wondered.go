package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// wonderedTurns are turns of those who wonder, try, ask and teach, for any quantity, with the plain words for each.
var wonderedTurns = []phrase.Placed{
	// What is supposed, in other words than "if".
	{"whatif|wotif|(wot if)|(what is if)", "what if", numberNear},
	{"^ ?and|so|ok ?working|going|reckoning|figuring|starting|calculating ?just|only ?on|off|from|upon|under basis|assumption|premise|footing|supposition|understanding|theory|strength of", "with", phrase.BothHold(numberNear, asksLater)},
	{"^ ?and|so|ok ?working|going|reckoning|figuring|starting|calculating ?just|only ?on|off|from|upon|under basis|assumption|premise|footing|supposition|understanding|theory|strength ?of that", "if", phrase.BothHold(numberNear, asksLater)},
	{"^ ?and|so|ok at !(# (LENQ|height|width)) ?,", "with a $1 ,", asksNextAfter},
	{"^ ?and|so|ok at !(LENQ of #) ?,", "with a $1 ,", asksNextAfter},
	{"^ ?and|so|ok at !(## COUNTQ) ?,", "with $1 ,", asksNextAfter},
	{"^ ?and|so|ok at # high|tall ?,", "if the wall is $1 high ,", asksNextAfter},
	{"^ ?and|so|then|ok|now where|how is|'s|does|do|would|will|should|might|could it|this|that|things|everything|(all (of it|this|that))|(the whole thing)|(the (wall|job|layout)) ?all ?then come|turn|pan|work|look|stand|shake|fall|end|land|play ?out|up|down ?to ?be with|at|using|on|given|for ?there ?being", "what if we had", numberNear},
	{"^ ?and|so|ok|but ?just granted|provided|providing|presuming|allowing|conceding|(in (case|event) ?(of|that))|(on condition ?that)|((as|so) long as) ?for ?that", "if", phrase.BothHold(numberNear, asksLater)},
	{"^ ?and|so|ok|but were|should i|we|you|they|one ?ever to|need|want|choose|decide|end|wish|happen|prefer|care|opt ?up ?to !have|use|go|take|make|put|set|buy|need|choose|pick|want|with|for|run|cut", "if we $1", phrase.BothHold(numberNear, asksLater)},
	{"^ ?and|so|ok|but should i|we|you|they|one ?ever need|want|choose|pick|use|have|take|buy|prefer|(go for)|(opt for)|(decide on)|(settle for)|(settle on)", "if we use", phrase.BothHold(numberNear, asksLater)},
	{", ?so ?then can|could|would|will|may|might|is it|that|this ?still|then|even ?be done|built|managed|made|feasible|doable|possible|workable|achieved ?at ?all", ", would it work", phrase.BothHold(supposedAny, asksEnd)},
	{"^^ ?so|ok|well|right|now ?, ?i|we am|are|was|were ?just|kind|sort ?of thinking|considering|contemplating|eyeing|(toying with)|(leaning (toward|towards|to))|(tempted by)|(looking at) ?of|about ?having|using|going|doing ?for|with", "what if we had", phrase.BothHold(numberNear, asksWhatBehind)},
	{"^ ?so|and ?is|are|would|was|see ?there ?be ?any|some|much|real problem|trouble|objection|objections|harm|drawback|downside|snag|catch|hitch|difficulty|issue|sense|point ?at ?all ?with|to|in|about|against ?of|us|me|my|our ?having|using|going|fitting ?for|with|to", "what if we had", phrase.BothHold(countedOrMore, notMaking)},
	{"^ THEPUPIL ?all|both ?would|is|are|'s|has|have|keep|keeps ?been ?also|just|all like|love|want|wants|wondering|wonders|wonder|wondered|asks|asking|ask|asked|curious|dying|itching ?me|us ?to ?know|see|hear|learn|(find out)|(be shown) ?about what|how|whether|if", "i wonder if", phrase.BothHold(numberNear, wondersOfTrial)},
	{"^ THEPUPIL ?all|both would|is|are|'s|want|wants|like|likes|love|wonders|wonder|keeps|keep ?just|all ?curious|like|love|itching|dying|asking|wondering ?to ?know|see|hear|learn|(find out) what|how !((?.. # ..)|(?.. @ ..)) does|do|looks|look|(comes out)|(turns out) ?like $", "what if we had $1", nil},
	{"^ i|we ?do|am|are|'m ?just wonder|wondering|curious ?about ?to ?see|know how|what !((?.. # ..)|(?.. @ ..)) ?would|will|might|could does|look|looks|do|be|comes|come|turn|turns|works|work|sit|feel|suit ?out ?like|then|there $", "what if we had $1", nil},
	{"^ ?so|and|ok|please|now ?can|could|would|will ?you ?please ?just give|show|tell|get|find|work|figure|calculate|compute|read|do ?me|us ?me|us ?out ?all !RESULT ?you ?get|have ?that|there|(would be) with|using", "what is $1 if we had", phrase.BothHold(countedOrMore, amountFirst)},
	{"^ ?so|and|ok|please|now ?can|could|would|will ?you ?please ?just give|show|tell|get|find|work|figure|calculate|compute|read|do ?me|us ?me|us ?out ?all !(LENQ|ASKED|((number|count) of COUNTQ)|marks|cuts|(cut list)|(cut lengths)) ?you ?get|have ?that|there|(would be) for", "what is $1 if we had", phrase.BothHold(countedOrMore, amountFirst)},
	{"^ ?so|and how much|many ?more|less|dearer|cheaper|pricier|expensive|extra is|would|will|does it|that|this|job|wall|i|we ?then ?be|cost|come|run|pay|get ?me|us ?more|less|dearer|cheaper|pricier|extra|out|to ?at ?be with|using|for", "what would it cost with", phrase.BothHold(numberNear, dearerAsked)},
	{"how far apart would|will|are|do|should ?the rest|others|remainder|(other ones)|(remaining ones)|(ones that are left) ?be|sit|end|come|stand ?up|out", "how far apart would the boards be", railsAlone},
	{"!would|will|could|might|do !(..) ?ever cut it|mustard $", "$1 $2 be enough", nil},

	{"^ would|could|will|might|does it|things|matters|everything|anything|that|life ?all ?really ?be improve|improved|help|better|nicer|(get better)|(change for better) ?at ?all if|were", "what if", numberNear},
	{"^ would|could|will|might|does it|things|matters|everything|anything|that|life ?all ?really ?be improve|improved|help|better|nicer|(get better)|(change for better) ?at ?all with|by ?having", "what if we had", numberNear},
	{"^ is|would|will it|there|that ?be ?really ?ever worth|(worth it)|worthwhile|sensible|wise|(a good idea)|((any|some) (good|use|point|sense|gain|benefit)) ?in ?my|our|me|us going|moving|switching|changing|dropping|having|using|trying|getting|taking|to ?go|have|use|switch|move|drop|try|take|get ?up|down|over|back ?to|with|for ?as ?far ?as", "what if i had", amountFirst},
	{"^ i|we would|should|'d|am|are ?really|just|quite|rather ?be curious|interested|keen|eager|like|love|itching|happy to ?see|know|learn|hear ?how|what ?it|this|that|things ?all ?would|might|will ?looks|look|comes|come|turns|happens|happen|do|does ?out ?be|like with|at|using|for|on", "what if we had", numberNear},
	{"^ i|we would|should|'d|am|are|want|need|wish ?really|just|quite|rather ?be ?curious|interested|keen|eager|like|love|itching|want ?to ?see|know|learn|hear|(find out) what|how ?it|this|that|things ?all ?would|might|will happens|happen|(comes out)|(turns out)|looks|works ?out ?like with|at|using|for|on", "what if we had", numberNear},
	{"^ ?please|just|and|so|then ?can|could|would|will ?you ?please ?just let ?us ?me ?go ?and see|check|test|determine|say|tell|show|figure|find|work|let|know ?me|us|out|know if|whether", "i wonder whether", wouldItDo},
	{"^ ?please|just|and|so|then ?can|could|would|will ?you ?please ?just see|check|test|determine|say|verify if|whether", "i wonder whether", wouldItDo},
	{"^ ?please|just|and|so|then ?can|could|would|will ?you ?please ?just tell|show ?me|us if|whether", "i wonder whether", wouldItDo},
	{"^ ?please|just|and|so|then ?can|could|would|will ?you ?please ?just let me|us know if|whether", "i wonder whether", wouldItDo},
	{"^ ?please|just|and|so|then ?can|could|would|will ?you|we|i ?please ?just find|figure|work out ?for me|us if|whether", "i wonder whether", wouldItDo},
	{"would|will|could ?not !(## RAIL|STIFF) ?not be plenty|ample|sufficient|adequate ?enough $", "would $1 be enough", nil},
	{"if ?i|we|you|there ?only|just are|were|was|is|had|have|used|put|ran|took ?only|just ?in|up ## ?of ?them $", "if there were $1 boards", railsAlone},

	// What it would do to something else.
	{"^ ?and|so|then what would|will|does|do|might|could !((.. # ?..)|(# ..)|(?.. @ ?..)|(?.. £ ?..)) do|mean ?for|to|as ?for !RESULT", "what if we had $1 , what is $6 ?", asksEnd},
	{"^ ?and|so|then ?how ?much would|will|does|do|might|could !((.. # ?..)|(# ..)|(?.. @ ?..)) change|affect|alter|influence !RESULT", "what if we had $1 , what is $5 ?", asksEnd},
	{"^ ?and|so|then how ?much would|will|does|do|might|could !((.. # ?..)|(# ..)|(?.. @ ?..)|(?.. £ ?..)) change|affect|alter|influence !RESULT", "what if we had $1 , what is $6 ?", asksEnd},
	{"^ ?i|we ?do|am|are|have|has|would|anybody|anyone ?you ?got|keep|know|wonder|wondering ?any|some idea|notion|inkling|clue|guess|wonder|wondering|thoughts|know ?of|on|about ?about what !((.. # ?..)|(# ..)|(?.. @ ?..)|(?.. £ ?..)) would|will|might|could|does do|mean to|for !RESULT", "what if we had $1 , what is $6 ?", asksEnd},
	{"what difference|odds|change|impact|effect would|will|does|do|could !((.. # ?..)|(# ..)|(?.. @ ?..)) make|have", "what would $1 change", asksEnd},
	{"what difference|odds|change|impact|effect would|will|does|do|could it|that|this make|have to|on|for !RESULT if|when|with|supposing|were", "what would $1 be if", numberNear},
	{"^ ?and|so|then would|will|does|do|might|could|is !RESULT ?still|then|going ?to ?also ?have ?to ?be change|changing|vary|differ|shift|move|alter|different|(stay the same) ?at ?all|much|any if|when|should|were|supposing", "what would $1 be if", numberNear},
	{"^ ?and|so|then would|will|does|do|might|could|is !RESULT ?still|then|going ?to ?also ?have ?to ?be change|changing|vary|differ|shift|move|alter|different|(stay the same) ?at ?all|much|any with|at", "what would $1 be with", numberNear},
	{"^ ?and|so|then how much ?money|cash would|will|could|can|do|should|might i|we|it|that save|lose|gain if|by", "what would it cost if", numberNear},
	{"^ ?and|so|then how much ?money|cash would|will|could|can|do|should|might i|we|it|that save|lose|gain with|using", "what would it cost with", numberNear},
	{"^ ?and|so|then|please ?can|could|would|will ?you ?please draw|sketch|(show ME how) ?me|us it|this|that|(the (wall|whole thing)) ?all ?again|out|looks|look|(would look) ?for ?me|us|again with|having|using|given", "draw it if we had", phrase.BothHold(numberNear, drawnAsTried)},
	{"^ ?and|so|then what|how would|will|does|do|might !RESULT ?then look|be|come|turn ?out ?like|to with|at|using|for", "what is $1 if we had", countedOrMore},

	// Which counts would work.
	{"^ ?and|so|then|ok|please ?tell ?me what|which ?rail|board|slat|stiffener ?all counts|count|numbers|number|choices|options|combinations ?of ?COUNTQ|bays|posts ?do|does|would|will|could|can|might|are|is|come ?i|we|you ?be|have|use|pick|choose ?there ?work|fit|go|possible|open|available|allowed|left|(into question)|from ?for ?me|us with|at|given|using", "what are the options if we had", amountFirst},
	{"^ ?and|so|then|ok|please ?tell ?me what|which ?rail|board|slat|stiffener ?all counts|count|numbers|number|choices|options|combinations ?of ?COUNTQ|bays|posts ?do|does|would|will|could|can|might|are|is|come ?i|we|you ?be|have|use|pick|choose ?there ?work|fit|go|possible|open|available|allowed|left|(into question)|from ?for ?me|us if|were|supposing|assuming", "what are the options if", numberNear},
	{"^ ?and|so|then|ok what ?all|else would|will|could|can|might|does|do ?still ?be work|fit|possible ?for ?me|us if|were|supposing|assuming", "what are the options if", numberNear},
	{"^ ?and|so|then|ok|please ?tell ?me what|which ?rail|board|slat|stiffener counts|count|numbers|number ?of ?COUNTQ ?could|can|might|do|does|would|will|are|come ?possibly into question|consideration|play|contention", "what counts would work", clauseOrAndEnds},
	{"^ ?and|so|then|ok|please ?tell ?me what|which ?rail|board|slat|stiffener counts|numbers ?of ?COUNTQ could|can|may|might|do|must|should i|we|you ?get|have ?to choose|pick|select|decide ?from|between|among", "what counts would work", clauseOrAndEnds},
	{"^ ?and|so|then|ok|please ?tell ?me what is|are possible|feasible|workable|available|allowed|permissible|permitted|doable|conceivable ?rail|board|slat|stiffener counts|numbers ?of ?COUNTQ", "what counts would work", clauseOrAndEnds},
	{"^ ?and|but|so why|(how come) ?is|are|does|do|would|will|can|ca ?not ## ?then ?work|fit|do|go|one ?of|among|amongst|in|on ?them|those|these|there|list", "why not $1 rails", phrase.BothHold(clauseEnds, countsAskedOf)},
	{"^ ?and|but|so why is|are|does|do|would|will|can not ## ?then ?work|fit|do|go|one|among|amongst|in|on ?of ?them|those|these|there|list", "why not $1 rails", phrase.BothHold(clauseEnds, countsAskedOf)},

	{"what would|will|does|do|might ## ?of ?them cost|run|(come to) ?me|us ?then", "what if $1 rails , what does it cost ?", phrase.BothHold(clauseEnds, countsAskedOf)},
	{"how many ?of ?them|those|these ?more would|will|can|could|do|should ?i|we|you|there ?then ?all ?ever be|go|fit|get|squeeze|need|have|want|take ?in|into|up|there|it ?there|it|all", "how many boards would there be", phrase.BothHold(clauseEnds, railsAlone)},

	// Lengths that are bought, as they are tried.
	{"!(if|suppose|supposing|say|could|can|might|would) ?not i|we|they|you|he ?not ?only|just|simply ?can|could ?only|just have|use|buy|get|order|had|used|bought|got|sell|stock|take|took ?only|just|nothing|all ?but ## ?- foot|ft|feet ?long boards|lumber|planks|sticks|lengths|timber|stock|pieces", "$1 we use $2 footers", clauseEnds},
	{"!(if|suppose|supposing|say|could|can|might|would) ?not i|we|they|you|he ?not ?only|just|simply ?can|could ?only|just have|use|buy|get|order|had|used|bought|got|sell|carry|stock|take|took ?only|just|nothing ?but !(eights|tens|twelves|fourteens|sixteens|eighteens) ?only", "$1 we use $2", clauseEnds},
	{"!(if|suppose|supposing|say|could|can|might|would) ?not i|we|they|you|he ?not ?only|just|simply ?can|could only|just have|use|buy|get|order|had|used|bought|got|sell|stock|take|took ## ?- footers", "$1 we use $2 footers", clauseEnds},
	{"^ ?and|so|then how much ?money|cash would|will|could|can|do|should|might i|we|it|that save|lose|gain with|using|(if (i|we) (use|used|bought|buy)) ?only|just ## ?- foot|ft|footer boards|lumber|planks|sticks|lengths|timber|stock", "what would it cost with $1 footers", clauseEnds},
	{"!with|using ?only|just ## ?- foot|ft boards|lumber|planks|sticks|lengths|timber|stock", "$1 $2 footers", phrase.BothHold(clauseEnds, savedOrCost)},

	// Why it is so, and why it is not.
	{"why|(how come) ?is|must|should|does|do|has|have|need|needs|are|would ?the|this|that|my|our new|added|extra|intermediate|middle|additional post|posts ?is|are|needs|need|have|has|had|got ?to ?be|stand|come|go|reach|stick|rise ?up|out|over ?quite|just|all ?as|so|that|this|such tall|high|short|low|long|stubby|lofty ?as ?that|this|it ?is|does $", "why is the post height so much", nil},
	{"how can|could !RESULT ?possibly|ever ?have ?to ?be|get|come|turn|end|look|become|gotten ?out|up|to ?be so|that|this|such ?a big|small|wide|narrow|tight|large|high|tall|low|short|long|little|tiny|huge", "why is $1 so big", asksEnd},
	{"why is|are !(bays|gaps|spaces) ?all ?so|that|quite|of|such ?very unequal|uneven|different|unlike|dissimilar|irregular|lopsided|mismatched ?sizes|widths [from ((one another)|(each other))]", "why are $1 so wide", asksEnd},
	{"why|(how come) ?do|am|must|should|would|did|does|are ?i|we|you|it|anyone ?have|need|needs|buying|want|wants|get|buy|getting ?to ?buy|need|get|have|use so|that|this|all ?these|those ?awfully|very ?many ?of brackets|screws|anchors|bases|caps|hangers", "why is the shopping list so long", asksEnd},
	{"why !(bays|gaps|spaces) is|are ?all ?so|that|quite|of|such ?very unequal|uneven|different|unlike|dissimilar|irregular|lopsided|mismatched ?sizes|widths [from ((one another)|(each other))]", "why are $1 so wide", asksEnd},
	{"and|, ?how tall|high|long is|are it|they|that ?exactly|then|now $", "and how tall is the added post", postsWhyBefore},
	{"why !(## (RAIL|STIFF)) is|are|was|were|got|get|gets ?now|simply|just ?being|been ?ruled|counted|turned|struck|thrown|left out ?of ?the ?question|window|running", "why can i not have $1", asksEnd},
	{"why !(# LENQ) is|are|was|were|got|get|gets ?now|simply|just ?being|been ?ruled|counted|turned|struck|thrown|left out ?of ?the ?question|window|running", "why can i not have $1", asksEnd},
	{"why !(## (RAIL|STIFF))|(# LENQ)|(# for LENQ) is|are|was|were|(would be)|(will be) ?just|really|simply|so ?(no (good|use|go|option))|(not ?(any|an) (good|on|ok|okay|possible|allowed|enough|option|acceptable|feasible|permitted|fine))|unacceptable|impossible|wrong|bad|hopeless|useless|silly|(bad (idea|choice))|forbidden|banned|illegal|taboo|unsuitable|unworkable", "why can i not have $1", asksEnd},
	{"what|who|which rules|ruled|knocks|knocked|throws|threw|kicked|puts|put|struck|takes|took|killed|kills|nixed|excludes|excluded|eliminates|eliminated ?out|off !((## (RAIL|STIFF))|(# LENQ)) ?out ?off ?table|list", "why can i not have $1", asksEnd},
	{"^^ ?sorry|well|and|but|oh ?, ?it|that|this|i|we ?just|still|really|always|all|do|am|is|can ?not fail|fails|beats|beat|puzzles|baffles|escapes|eludes|bugs|bothers|confuses|stumps|perplexes|intrigues|mystifies|(beyond)|mystery|puzzle|riddle|((makes|make) (no|little) sense)|(at (a loss|sea))|baffled|puzzled|stumped|confused|perplexed|intrigued|mystified ?to|for ?me|us ?as|about ?to ?see|understand|know|grasp|follow ?as ?to !why|how", "explain $1", cameToBe},
	{"what|who prompted|made|led|drove|caused|moved|persuaded|brought|possessed you|it|us ?ever to !add|put|set|use|have|go|pick|choose|need ?in|with|for ?one|an ?extra|new|added|additional post|posts", "why the added posts", asksEnd},
	{"and|, what size|lumber|dimension ?lumber is|are|'s they|it|those|these|that", "and what size are the added posts", phrase.BothHold(clauseEnds, addedPostsSpokenOf)},
	{"how many !RAIL ,|and ?and ?at|with how far apart ,|and", "how many $1 , what is the gap ,", questionGoesOn},
	{"how close|near|tight ?together can|may|could|might|should|do|will ?any ?two|neighboring|neighbouring|adjacent|next|the brackets ?ever ?to ?(each other)|(one another) ?get|come|go|sit|be|stand", "what is the bracket clearance", asksEnd},
	{"what|(how much) did|do|was|have i|we ?have say|said|tell|told|set|give|gave|allow|allowed|put ?you ?down ?that ?as ?i|we ?would|could|can|'d|will|wanted ?to spend|pay|(lay out)|(be willing to (pay|spend)) ?at|for ?the ?most|all|max|tops", "what is the budget", spendSaid},
	{"^^ ?yes|ok|sure|look ?, ?i|we ?can|do ?already|now know|see|get|understand|realize|(am aware) ?full|perfectly ?well ?that ?of ?it|there|that|this|we ?is|are|'s|takes|has|have|be ## !RAIL|STIFF ,|;|.|- ?but|and ?what ?i|we ?just|only|really|still|do ?not want|need|like|know ?to ?know|see|learn|hear|understand|is ?, why", "why the $2", asksEnd},
	{"^^ ?yes|ok|sure|look ?, ?i|we ?can|do ?already|now know|see|get|understand|realize|(am aware) ?full|perfectly ?well ?that ?of !LENQ is|are|'s|at # ,|;|.|- ?but|and ?what ?i|we ?just|only|really|still|do ?not want|need|like|know ?to ?know|see|learn|hear|understand|is ?, why", "why the $1", asksEnd},

	// What is taught.
	{"^ ?and|so|please|now ?can|could|would|will ?you|we ?please explain|show|teach|demonstrate|tell ?slowly ?it ?to ?for THEPUPIL ?, ?slowly|carefully|(step by step)|(one step at a time) ?, how|what ?one|you|we|they|somebody ?to ?can|would|should ?go ?about find|finds|figure|figures|work|works|calculate|calculates|get|gets|compute|computes|determine|determines|finding|figuring|working|calculating ?out !(*) $", "teach me how to work out $1", nil},
	{"^ ?and|so|please|now ?can|could|would|will ?you|we ?please explain|show|teach|demonstrate|tell ?slowly ?it ?to ?for THEPUPIL ?, ?slowly|carefully|(step by step)|(one step at a time) ?, how !RESULT is|are|gets|get|was|were|comes ?being found|calculated|figured|worked|computed|determined|derived|reckoned|(arrived at)|(about) ?out ?, ?slowly|carefully|(step by step)|(one step at a time)", "teach me how to work out $1", asksEnd},
	{"^ ?and|so|please|now ?can|could|would|will ?you|we ?please help THEPUPIL ?to understand|grasp|follow|learn|see|get ?how|where !RESULT ?is|are|gets|comes|come ?found|calculated|figured|worked|from|about ?out", "teach me how to work out $1", asksEnd},
	{"^ ?and|so|then|ok what|which is|are|'s|would formula|recipe|method|procedure|technique|(rule ?(of thumb)) ?be ?used ?for|to|behind ?finding|find|figuring|figure|working|work|calculating|calculate|getting|get ?out !RESULT", "teach me how to work out $1", asksEnd},
	{"^ ?and|so|then|ok how does|do|would|can|could|should|might one|somebody|someone|anyone|anybody|(a (person|body|beginner|pupil|student)) ?ever ?go ?about find|figure|work|calculate|get|compute|determine|finding|figuring|working|calculating|computing ?out !(*) $", "teach me how to work out $1", clauseEnds},
	{"^ ?and|so|then|please can|could|may|might|shall|(let us) ?we|you|i ?all ?please ?just do|work|run|go !RESULT ?through|over ?together ?on|at ?the ?board|blackboard|whiteboard|paper ?together ?, (step by step)|(one step at a time)|slowly", "walk me through $1", asksEnd},

	{"^ ?and|so|please|now ?can|could|would|will ?you ?please break !RESULT down|apart ?step ?by ?step ?for ?me|us|THEPUPIL ?step ?by ?step", "walk me through $1", nil},
	{"^ ?and|so|please|now ?can|could|would|will ?you ?please take !RESULT apart ?step ?by ?step ?for ?me|us|THEPUPIL ?step ?by ?step", "walk me through $1", nil},
	{"^ ?and|so|please|now ?can|could|would|will ?you ?please take !RESULT down step by step ?for ?me|us|THEPUPIL", "walk me through $1", nil},
	{"^ ?and|so|please|now ?can|could|would|will ?you|we ?please do|run|work|go|repeat ?through|over sum|sums|math|maths|arithmetic|calculation|figuring ?once ?more for|of|on|behind !RESULT ?again ?slowly|together ?with|for|alongside me|us|THEPUPIL", "walk me through $1", asksEnd},
	{"^ ?please ?and do not|never ?you ?dare|ever|go skip|skipping|miss|leave|omit ?out|a|any ?single step|steps|anything|thing|bit|line ?out ?,|:|; ?but|and|just ?please show|give|tell ?me|us everything|(it all)|all|(all of it)|(the (whole|lot)) ?thing|sum|calculation", "show me the whole sum", asksEnd},
	{"^ ?please ?and show|give|tell ?me|us everything|(it all)|all|(all of it)|(the (whole|lot)) ?thing|sum|calculation ,|:|;|. ?but|and|just ?please do not|never ?you ?dare|ever|go skip|skipping|miss|leave|omit ?out|a|any ?single step|steps|anything|thing|bit|line ?out", "show me the whole sum", asksEnd},

	// What is asked for inside of another sentence.
	{"^ ?sorry|oh|um|uh|but|so|and|well|damn|drat ?, ?i|we ?just|simply|honestly|really can|could|do|did|am ?not|cannot ?quite|really|just|now|honestly|able ?(for the life of me) ?to recall|remember|(call to mind)|(bring to mind) ?now|offhand|anymore|exactl|exactly ?just", "tell me", askedInside},
	{"^ ?sorry|oh|um|uh|but|so|and|well|damn|drat ?, ?i|we ?have|had|am ?gone|and|just|already|clean|quite|completely|totally|kind|sort ?of forgot|forgotten|forget|misplaced|(lost (track|count|sight) of)|(losing track of) ?again|now|just|exactly", "tell me", askedInside},
	{"^ ?sorry|oh|um|uh|but|so|and|well ?, ?it|that ?has|have ?just|clean|quite|always slipped|escaped|escapes|slips|left|(gone from)|(gone (clean|right) out of) ?my|our|me ?mind|memory|head|brain", "tell me", askedInside},
	{"^ ?sorry|oh|um|uh|but|so|and|well ?, i|we ?never|(did not)|(have not)|forgot ?to ?ever|actually write|wrote|written|note|noted|jot|jotted|mark|marked|catch|caught|hear|heard ?down", "tell me", askedInside},
	{"^ ?sorry|oh|um|uh|but|so|and|well ?, i|we would|should|'d|want|need|wish ?like|love|need|want ?to ?be reminded|told|informed|clear ?again|please|on|about|of", "tell me", askedInside},
	{"^ ?do|have|has|would|got|might|could ?you|anybody|anyone|we ?ever ?happen|chance|got|have ?to ?any|some|the ?faintest|slightest|foggiest|rough idea|notion|inkling|clue|know ?offhand|(off hand)|(by [any] chance)|(at all) ?of|about|as ?to", "tell me", askedInside},
	{"^ ?i|we ?am|are|'m not ?quite|exactly|too|at ?all|entirely|really sure|certain|clear ?now ?about|of|on !(what|how|where) !(..) , ?so ?please ?can|could|would|will ?you ?please say|tell|remind|help|check ?me|us ?out $$", "tell me $1 $2", nil},
	{"i|we|he|she|((my|our|the) _) do|can|could|does|cannot ?not ?really|quite|yet see|understand|follow|figure|make|tell|work|find ?out where", "tell me where", placeAsked},
	{"how far ?off|from|away|along|in ?from|off|of !left|right ?hand ?end post|side|end does|is|will|would|do it|that|this|he|she ?begin|start|starts|sit|stand|beginning|starting", "how far is the opening from the $1 post", openingBefore},
	{"what|which ?lumber|board|stock|wood|timber lengths|sizes are|am|do we|i|you ?currently|now ?working|going|cutting|buying|figuring|reckoning|choosing|work|figure|reckon from|with|off|on ?again|anyway|now|here|then", "what lumber lengths are there", asksEnd},
	{"^^ ?so|and|well|now why do|will|would not you ?just|simply ?go ?and|ahead show|give|read|tell ?me|us !TOPIC|cuts|marks|layout|total|price|cost", "show me the $1", asksEnd},
	{"and|, ?how wide|big|long|broad is|'s first ?one", "and how wide is bay 1", bayBefore},
	{"and|, ?how wide|big|long|broad is|'s second ?one", "and how wide is bay 2", bayBefore},
	{"and|, ?how wide|big|long|broad is|'s third ?one", "and how wide is bay 3", bayBefore},
	{"if it|that|opening ?were|was|is|sat|stood|went|came|moved|slid hard|tight|right|smack|flush|snug|close|bang ?up ?against|to|on|onto|beside|by !left|right ?hand ?end post|side|end|one ?then $", "if the opening is on the $1", openingBefore},
	{"what would|will|might|does|could !RESULT ?then come|work|amount|run|measure|end ?out|up ?to|at ?be if|with", "what would $1 be if", openingBefore},
}

// asksLater: a question comes later in the line.
func asksLater(_, after []scan.Atom) bool {
	for i, a := range after {
		if a.Kind == scan.Sign && (asksNextAfter(nil, after[i:]) || i+2 < len(after) && asksHolds[after[i+1].Text]) {
			return true
		}
	}
	return false
}

// workingWords may follow a helping verb where it is asked whether something would do.
var workingWords = scan.WordSet(`be do go in it fit work pass fly hold up suit suffice serve enough ok okay fine good all right alright possible feasible doable workable practical plenty sufficient too still
	at any actually really just even ever the trick job a an option us me there together out allowed permitted legal acceptable stand manage nicely well`)

var helpingWould = scan.WordSet("would will could can might may")

// wouldItDo: one figure follows, a helping verb, and nothing but that it would do: "seven boards would go in", "we could get by with five".
func wouldItDo(_, after []scan.Atom) bool {
	end := 0
	for end < len(after) && !chunk.EndsSentence(after, end) {
		end++
	}
	in := after[:end]
	at := slices.IndexFunc(in, func(a scan.Atom) bool { return helpingWould[a.Text] })
	if at < 1 || at+1 >= len(in) || slices.ContainsFunc(in, func(a scan.Atom) bool {
		return a.Text == "says" || a.Text == "said" || a.Text == "and" || a.Text == "not"
	}) {
		return false
	}
	if at == 1 && (in[0].Text == "i" || in[0].Text == "we" || in[0].Text == "you" || in[0].Text == "it") {
		return numberAhead(in[at:])
	}
	if !numberAhead(in[:at]) || numberAhead(in[at:]) {
		return false
	}
	for _, a := range in[at+1:] {
		if !workingWords[a.Text] && a.Kind == scan.Word {
			return false
		}
	}
	return true
}

// railsAlone: rails were spoken of before, and nothing else that is counted.
func railsAlone(before, _ []scan.Atom) bool {
	rails := false
	for _, a := range before {
		switch {
		case chunk.IsRail(a.Text):
			rails = true
		case chunk.IsClass(a.Text, "STIFF"), chunk.IsClass(a.Text, "POST"), chunk.IsClass(a.Text, "BAY"), chunk.IsClass(a.Text, "OPENING"), chunk.IsClass(a.Text, "BRACKET"):
			return false
		}
	}
	return rails
}

// countedOrMore: a figure follows that is no bare number by itself.
func countedOrMore(_, after []scan.Atom) bool {
	return numberInSentence(after) && len(after) > 1 && !(countNext(nil, after) && chunk.EndsPart(after, 1))
}

// drawnAsTried: nobody drew it, and nothing is sent anywhere.
func drawnAsTried(before, _ []scan.Atom) bool {
	return len(before) == 0 || chunk.Breaks(before[len(before)-1])
}

// clauseEnds: the clause ends behind it.
func clauseEnds(_, after []scan.Atom) bool { return chunk.EndsPart(after, 0) }

var countsOrWork = scan.WordSet("counts numbers many count options choices")

// countsAskedOf: the counts that would work were asked for before, of rails or of nothing named.
func countsAskedOf(before, _ []scan.Atom) bool {
	asked := false
	for _, a := range before {
		asked = asked || countsOrWork[a.Text]
		if chunk.IsClass(a.Text, "STIFF") || chunk.IsClass(a.Text, "POST") || chunk.IsClass(a.Text, "BAY") {
			return false
		}
	}
	return asked
}

var (
	asksInside = scan.WordSet("what how where which")
	notOfWall  = scan.WordSet("want wants wanted made make should said say told tell need decided chose agreed think thought yet why ever when who to you he she they")
)

// askedInside: a question after the wall follows, with nothing that somebody wanted or said, and no figure.
func askedInside(_, after []scan.Atom) bool {
	for i, a := range after {
		switch {
		case i == 0:
			if !asksInside[a.Text] {
				return false
			}
		case chunk.EndsSentence(after, i):
			return i > 2
		case a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) && a.Text != "one" || notOfWall[a.Text]:
			return false
		}
	}
	return len(after) > 2
}

// placeAsked: where something stands is asked for, not where it comes from.
func placeAsked(_, after []scan.Atom) bool {
	for i, a := range after {
		switch a.Text {
		case "from", "come", "comes", "came", "got", "get", "you", "i", "we", "he", "she", "they":
			return false
		}
		if chunk.EndsSentence(after, i) {
			break
		}
	}
	return len(after) > 2 && !numberInSentence(after)
}

var (
	postsWhy       = phrase.SaidBeforeOf(scan.WordSet("why how"))
	postsAdded     = phrase.SaidBeforeOf(scan.WordSet("post posts"))
	postsWhyBefore = phrase.BothHold(postsWhy, postsAdded)
	savedOrCost    = phrase.SaidBeforeOf(scan.WordSet("cost save price total bill pay"))
)

var (
	supposedAny  = phrase.SaidBeforeOf(scan.WordSet("if suppose supposing say imagine were should"))
	againstWords = scan.WordSet("against versus than about")
)

// questionGoesOn: another question follows.
func questionGoesOn(_, after []scan.Atom) bool {
	return len(after) > 2 && (after[0].Text == "how" || after[0].Text == "what" || after[0].Text == "and" || after[0].Text == "where")
}

// cameToBe: it is asked why or how something came to be, not how to do it or how much it is.
func cameToBe(_, after []scan.Atom) bool {
	if len(after) < 3 {
		return false
	}
	switch after[0].Text {
	case "to", "wide", "high", "tall", "big", "long", "many", "much", "far", "large", "low", "small", "best":
		return false
	}
	return true
}

// notMaking: what follows is had, not made so.
func notMaking(_, after []scan.Atom) bool {
	switch after[0].Text {
	case "making", "setting", "putting", "raising", "lowering", "moving", "taking", "leaving", "dropping", "adding", "cutting":
		return false
	}
	return true
}

// amountFirst: a figure follows at once, or a name with its figure: "for five rails", "with a gap of 3"; no bay and no post is numbered.
func amountFirst(before, after []scan.Atom) bool {
	for len(after) > 2 && (lexicon.Vocab().Articles[after[0].Text] || after[0].Text == "just" || after[0].Text == "only") {
		after = after[1:]
	}
	if len(after) < 2 || !notCompared(after) {
		return false
	}
	return chunk.Figured(after[:1]) || chunk.SpelledNumber(after[0].Text) || ofOneSize(after[0].Text) && chunk.Figured(after[1:2]) || after[1].Text == "of" || len(after) > 2 && (after[1].Text == "at" || after[2].Text == "of" || after[2].Text == "at")
}

// ofOneSize: a wall, a gap and an opening have a size; bays, posts and rails are numbered.
func ofOneSize(w string) bool {
	return chunk.IsClass(w, "WALL") || chunk.IsClass(w, "GAP") || chunk.IsClass(w, "OPENING")
}

// notCompared: nothing is compared in the sentence.
func notCompared(after []scan.Atom) bool {
	for i, a := range after {
		if chunk.EndsSentence(after, i) {
			break
		}
		if againstWords[a.Text] || a.Text == "for" && forOthers(after[i+1:]) {
			return false
		}
	}
	return true
}

// forOthers: what it is for is no part of the wall, and nobody here: "for the stairs".
func forOthers(after []scan.Atom) bool {
	return len(after) > 1 && lexicon.Vocab().Articles[after[0].Text] && after[1].Kind == scan.Word && !chunk.NamesPart(after, 1) && !chunk.Figured(after[:2]) && after[1].Text != "wall"
}

// wondersOfTrial: something would be, or does, so.
func wondersOfTrial(_, after []scan.Atom) bool {
	for i, a := range after {
		if chunk.EndsSentence(after, i) {
			break
		}
		if helpingWould[a.Text] && i > 0 {
			return !slices.ContainsFunc(after, func(b scan.Atom) bool { return b.Text == "said" || b.Text == "says" || b.Text == "told" })
		}
	}
	return false
}

// dearerAsked: what it costs more or less was asked for.
func dearerAsked(_, after []scan.Atom) bool { return countedOrMore(nil, after) && notCompared(after) }

// spendSaid: it is what would be spent that was told.
func spendSaid(_, after []scan.Atom) bool { return chunk.EndsPart(after, 0) }

// addedPostsSpokenOf: added posts were spoken of before, and no other pieces.
func addedPostsSpokenOf(before, _ []scan.Atom) bool {
	posts := false
	for i, a := range before {
		switch {
		case chunk.IsClass(a.Text, "POST"):
			posts = posts || i > 0 && chunk.IsClass(before[i-1].Text, "ADDED")
		case chunk.IsRail(a.Text), chunk.IsClass(a.Text, "STIFF"), chunk.IsClass(a.Text, "BRACKET"):
			return false
		}
	}
	return posts
}

// bayBefore: one bay was spoken of before.
func bayBefore(before, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) && slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "bay" || a.Text == "section" || a.Text == "panel" })
}
