package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is tried, changed a little, taken back and kept: suppositions and what comes of them, a figure told before that was wrong, a step
// back, and plans by their names. Common ways of speech, no source.

// Pieces of the phrases below. trialGave is how a figure was told before, trialWrong that it was not right, trialIs what leads to the right one.
const (
	trialGave  = `[that|which] i|we ?just|had|have|originally gave|told|said|mentioned|quoted|had|put|stated|entered|typed|wrote|given ?you|down ?earlier|before|(just now)|first`
	trialWrong = `was|is|were ?just|simply|all|really|totally ?a wrong|off|incorrect|mistaken|mistake|slip|typo|misprint|misreading|error|goof|blunder|out|(not right)|(no good)|(my mistake)`
	trialIs    = `,|;|.|:|-|-- ?so|and|but ?please ((make|call|put|set|change) it [to|at])|((it|that) is)|([it|that] [really|actually] should [have] [been|be|read])|((it|that) ought to be)|use|(i meant)|((the|my) (right|correct|real|true) (one|figure|number) is) ?really|actually|in ?fact ?closer`
	trialQ     = `LENQ|((wall|halfwall) 's height)|([the|my] (budget|kerf|drop|trim|fit|(bracket (clearance|ear|reach|thickness))|(base height)|(rail face)|(overall [width|length])))`
	trialAgain = `(over [again])|again|afresh|anew|(once more)|(one more time)|(from (scratch|the top))`
)

var trialTurns = []phrase.Placed{
	// Pieces that are left out in a supposition.
	{"pulled|yanked|lost|lose|losing|dropped|ditched|skipped|omitted|removed ?out|away|off ?just a|one ?more ?(of [the|our|those|these|my]) !RAIL|STIFF ?out|off|away", "take out one $1", pieceGone},
	{"pulled|yanked|lost|lose|losing|dropped|ditched|skipped|omitted|removed ?out|away|off ?just !two|three|four ?more (of [the|our|those|these|my]) !RAIL|STIFF ?out|off|away", "took out $1 $2", pieceGone},
	{"left|leave|leaving|took|take|takes|taking out|away|off ?just a|one ?more ?(of [the|our|those|these|my]) !RAIL|STIFF", "take out one $1", pieceGone},
	{"left|leave|leaving|took|take|takes|taking ?just a|one ?more ?(of [the|our|those|these|my]) !RAIL|STIFF out|off|away", "take out one $1", pieceGone},
	{"left|leave|leaving|took|take|takes|taking ?out|away|off ?just !two|three|four ?more (of [the|our|those|these|my]) !RAIL|STIFF ?out|off|away", "took out $1 $2", pieceGone},
	{"a|one (of [the|our|those|these|my]) !RAIL|STIFF was|were|got|is|gets|are left|taken|pulled|removed|dropped|omitted|ditched|gone ?out|off|away", "we took out one $1", phrase.BothHold(inSupposition, notLeftOver)},
	{"!two|three|four (of [the|our|those|these|my]) !RAIL|STIFF was|were|got|is|gets|are left|taken|pulled|removed|dropped|omitted|ditched|gone ?out|off|away", "we took out $1 $2", phrase.BothHold(inSupposition, notLeftOver)},
	// What is moved to a figure in a supposition.
	{"took|take|brought|bring|moved|move|carried|pushed|push|run|ran|set|pulled|pull|eased|squeezed|closed|lowered|raised|raise|lifted|bumped|built|build !LENQ ?all ?right ?the ?way ?back up|down|out|in|over to #", "had the $1 at $2", inSupposition},
	{"left|leave|kept|keep|let|ran|run|set|made|cut !((new|added|extra|middle|intermediate) post|upright) ?to ?be ?stand #", "made the $1 $2", inSupposition},
	{"did not , ?and|but ?just|only|simply|instead !kept|left|had|made|used|stayed|went", "$1", inSupposition},
	{"?and|, it is !LENQ|((new|added|extra) post height) that|which should|ought|must|has|needs ?to be|read|become|change|(change to)", ", the $1 is", phrase.BothHold(inSupposition, phrase.AmountNext)},
	{"if i|we|you ?still|just|only stay|stayed|stick|stuck|keep|kept|remain|hold|held ?it ?at|to|with|on|by !(## (RAIL|STIFF))|(# LENQ)|(LENQ (of|at) #)", ", $1", triedFigure},
	// What comes of it.
	{"how high|tall would|will|do|does|could|might ## !RAIL ?come|stand|be|reach|go|get|make|run|finish|end|measure|stack ?out|up ?to|at ?be with|at ?gaps|spaces # ?gaps|spaces|of ?(in) ?between|apart ?them|each", "what if $1 $2 with $3 between , what is the wall height ?", clauseEnds},
	{"?, ?and|so|then|but ?then does|do|would|will|is|are !RESULT ?then|still|also|all ?going ?to change|differ|move|shift|alter|grow|shrink|improve ?(at all)|then|much|any", ", what is $1 ?", phrase.BothHold(supposedFigure, asksEnd)},
	{"?, ?and|so|then|but ?then does|do|would|will|is|are !RESULT ?then|still|also|all ?going ?to get|become|(come out)|be|(end up)|(turn out) ?any|much bigger|smaller|wider|narrower|tighter|looser|longer|shorter|higher|lower|different|larger|taller|cheaper|dearer ?(at all)|then|much|any", ", what is $1 ?", phrase.BothHold(supposedFigure, asksEnd)},
	{"?, ?and|so|then|but ?then does|do|would|will|is|are ?cut|rail|board lengths ?then|still|also|all ?going ?to change|differ|move|shift|alter|grow|shrink ?(at all)|then|much|any", ", show me the cuts", phrase.BothHold(supposedFigure, asksEnd)},
	{"?, ?and|so|then ?then|by how much ?more|less|extra|dearer|cheaper does|would|will|is|do|could it|that|this|i|we ?all ?then cost|run|come|be|pay|spend|save ?out ?to ?me|us ?more|less|extra ?then", ", what does it cost ?", phrase.BothHold(supposedFigure, asksEnd)},
	{"?, ?so|and how is|does|will|would that|it|this|things|everything ?all do|fare|hold|hang|pan|shake ?up|out|together ?then|there", "", phrase.BothHold(supposedFigure, clauseEnds)},
	{"^^ ?and|so|ok|but|now with !(..) , ?so ?and ?then what|how ?about ?it ?happens ?then|now ?\\? $$", "what if we had $1 ?", nil},
	{"^^ ea|each|every ?single !cut|mark ?is|was|runs|comes off|out|wrong ?by # ?,", "what if each $1 is off by $2 ,", asksNextAfter},
	{"^ ?so|and|then what|(how much ?money) would|will|do|could|can|might i|we|that|it save|gain|spare ?me|us ?then if|by", "what would it cost if", numberNear},
	{"^ ?so|and|then what|(how much ?money) would|will|do|could|can|might i|we|that|it save|gain|spare ?me|us ?then with", "what would it cost with", numberNear},
	{"what|where|(how wide|big) would|do|does|will|are ?the bays ?all ?then land|fall|(come out)|(end up)|(turn out)|get", ", how wide are the bays ?", phrase.BothHold(supposedFigure, asksEnd)},
	{"?and|, ?then ?just let !LENQ go|fall|land|come|be|sit|(end up)|(come out)|float ?at wherever|where|what|whatever|however ?wide|big|much it|they ?will|wants|want|likes|like|needs|falls|goes|lands|comes|come|has|may|must|(ends up)|(end up) ?to ?out ?be|go", "", phrase.BothHold(supposedFigure, clauseEnds)},
	{"?, or is|would that|it|this ?be asking|expecting|hoping|wanting|pushing ?for too much|far", "", phrase.BothHold(askedFigure, clauseEnds)},
	{"?, or am i asking|expecting|hoping|wanting|pushing ?for ?it too much|far", "", phrase.BothHold(askedFigure, clauseEnds)},
	{"?, ?and|so|then|but ?then would|will|are|do|does ?all ?the|my bays ?then|still|also|all ?going ?to get|become|(come out)|be|(end up)|(turn out)|grow ?any|much|too bigger|smaller|wider|narrower|tighter|longer|shorter|narrow|wide|long|short|big|small|tight ?(at all)|then|much|any", ", how wide are the bays ?", phrase.BothHold(supposedFigure, asksEnd)},
	{"?, ?and|so|then|but ?then would|will|do|does|could|must i|we|you|it|that|this ?then|also|still lose|gain|need|save|want|drop|shed|cost ?me|us ?a|another|one|any|more|less|fewer|extra ?more|less|fewer|extra RAIL", ", how many rails ?", phrase.BothHold(supposedFigure, asksEnd)},
	{"?, ?and|so|then|but ?then would|will|do|does|could|must i|we|you|it|that|this ?then|also|still lose|gain|need|save|want|drop|shed|cost ?me|us ?a|another|one|any|more|less|fewer|extra ?more|less|fewer|extra STIFF", ", how many stiffeners ?", phrase.BothHold(supposedFigure, asksEnd)},
	{"^ ?and|so|then how|where|what would|will|do|does|might !RESULT ?all ?then change|move|shift|differ|alter|land|(end up)|(come out) if", "what would $1 be if", numberNear},
	{"^ what|how would|will|does|might ?the drawing|sketch|picture look ?like with|if !(..) ?\\? $$", "what if $1 , draw it", nil},
	{"^ ?so|and|then what|(how much ?money) would|will|do|could|can|might i|we|that|it save ?me|us ?then by|with ?leaving|taking|skipping|dropping|doing|using|having|cutting|omitting out|away|without|no|off !STIFF ?out|off|away", "what would it cost if there were no $1", clauseEnds},
	{"^ ?so|and|then what|(how much ?money) would|will|do|could|can|might i|we|that|it save ?me|us ?then if ?i|we|you left|took|leave|take|skip|skipped|dropped|drop|(did without)|(do without) ?out|off|away !STIFF ?out|off|away|altogether|entirely", "what would it cost if there were no $1", clauseEnds},
	{"what would|will|did|do i|we ?then be looking|talking at|about moneywise|(money wise)|(money - wise)|(cost wise)|costwise|(in (dollars|money)) ?then with|for|on", "what would it cost with", nil},
	{"what would|will|did|do i|we ?then be looking|talking at|about moneywise|(money wise)|(money - wise)|(cost wise)|costwise|(in (dollars|money)) ?then if", "what would it cost if", nil},
	{"if !RAIL|POST|STIFF were|was|are ?a ?bit wider|bigger|thicker|larger|heavier|stouter|narrower|smaller|thinner|lighter ?, ?say|like|as ?, @ ?s", "if the $1 were $2", nil},
	{"^^ ?and|so|ok|but|now without|(with no) ?any !STIFF|((added|extra|new|middle|intermediate) post|posts) ?(at all) \\? $$", "what if there were no $1 ?", nil},
	{"a !board|rail|slat|plank|stiffener less|fewer", "one less $1", phrase.BothHold(clauseEnds, behindWith)},
	{"^ would|will|do|does ?it i|we|that|this ?then need|take|want|(have to have) any|more|extra|fewer|another|(an extra) ?more RAIL if|when", "how many rails would there be if", numberNear},
	{"^ would|will|do|does ?it i|we|that|this ?then need|take|want|(have to have) any|more|extra|fewer|another|(an extra) ?more posts|post if|when", "how many added posts would there be if", numberNear},
	{"^ ?and|so|then would|will|does|do !RESULT ?then|still|also|all ?going ?to shrink|grow|increase|decrease|rise|drop|tighten|widen|((get|become) ?any|much (bigger|smaller|wider|narrower|tighter|larger|longer|shorter|higher|lower|taller)) if|when", "what would $1 be if", pieceOrNumberNear},
	{";|,|. ?and does|would|will|do !LENQ|it|this|that|everything|(the rest) ?all ?then still work|hold|fit|do|go ?out|up|together ?then \\? $$", "", supposedFigure},
	{"i|we measured|taped|counted|read|noted|marked ?it|that|things wrong ?and|,", "", phrase.BothHold(inSupposition, lengthLater)},
	{"^^ if !(.. # ?..) :|- !GAP|(bottom GAP)|HEIGHT|wh|ht|height|(bay width)|cost \\? $$", "what if $1 , what is the $3 ?", nil},
	// Ways to try.
	{"^ ?and|so|ok|then ?please see|show|tell|(let us see)|(let me see) ?me|us what ?it|you|i|we get|have|(end up)|(comes out)|(come up) with|at", "what if we had", countedOrMore},
	{"^ ?please|and|so ?can|could|would|will ?you ?please show|tell ?me|us what|how !(## (RAIL|STIFF))|(# LENQ) ?would|will|might look|(come out) ?like ?\\?", "what if we had $1 ?", clauseEnds},
	{"^ i|we would|'d|am|are ?really|quite|very ?be ?interested|keen|curious|like|love ?to ?in see|seeing|know|hear the effect|impact|result|outcome|consequence|difference of|from", "what if", numberNear},
	{"^ i|we ?am|was|were|are ?just wonder|wondering|wondered whether|if @ ?s !RAIL|POST|STIFF might|would|could|may ?not|perhaps ?even ?not be|look|work ?a ?bit better|nicer|stronger|cheaper|stiffer|safer|wiser ?after ?all $", "what if we used $1 for the $2", nil},
	{"!would|could|can|will|might !(## (RAIL|STIFF|posts)) also|perhaps|maybe|possibly|conceivably", "$1 $2", phrase.StartsClause},
	{"!could|can|would|might|may !(the wall|halfwall|opening|gap|gaps|boards|rails|slats|posts|stiffeners|bays)|it|this|we|i|you perhaps|possibly|maybe|conceivably|theoretically", "$1 $2", phrase.StartsClause},
	{"^ ?so|and|ok would|will|might|could|does|do it|that|this|things|everything ?all|really|actually ?ever change|alter|affect|mean|spoil anything|much|something|things ?(at all)|much|for ?me|us if", "what if", numberNear},
	{"^ ?so|and|ok would|will|might|could|does|do it|that|this|things|everything ?all|really|actually ?ever change|alter|affect|mean|spoil anything|much|something|things ?(at all)|much|for ?me|us with", "what if we had", countedOrMore},
	{"^ ?so|and|ok would|will|could|does|might it|this|that|things|everything|(the (wall|job|whole thing)) ?all|still lay ?itself out ?nicely|fine|ok|right|evenly with|at|in|using", "what if we had", countedOrMore},
	{"^ ?so|and|ok what|how is|does|would|will it|this|that|things|everything ?all|be ?be look|(come out) ?like with !LENQ # !shorter|taller|higher|lower|wider|narrower|bigger|smaller|tighter|longer|larger", "what if the $1 is $2 $3", nil},
	{"if|suppose|supposing there were|was|is ?now|just|only one|1 more|extra|additional post ?(in the (run|line|wall|middle))", "if there was one more post", nil},
	{"^ (let us)|just ?just say ?there ?is|are ?we ?have|had ?now|just|only one|1 more|extra|additional post ?(in the (run|line|wall|middle))", "suppose there was one more post ,", nil},
	{"slightly|somewhat|little|bit|touch|tad larger|bigger|wider gaps|spaces , ?perhaps|maybe|say|like|around|about ?like", "gaps of", wholeNext},
	// A figure that was told before was wrong.
	{"## !mm|cm|millimeters|millimetres|centimeters|centimetres " + trialGave + " for|as|on|about|of !" + trialQ + " " + trialWrong + " " + trialIs + " ##", "the $3 is $4 $2", clauseEnds},
	{"# " + trialGave + " for|as|on|about|of !" + trialQ + " " + trialWrong + " " + trialIs + " #", "the $2 is $3", nil},
	{"## !RAIL|STIFF " + trialGave + " " + trialWrong + " " + trialIs + " ##", "$3 $2", clauseEnds},
	{"# " + trialGave + " for|as|on|about|of !" + trialQ + " " + trialWrong + " ,|;|.|- ?and|but ?it ?(the (right|correct) (one|figure|number) is) # ?is ?(the) correct|right|better|it|(the (right|correct) (one|figure|number))", "the $2 is $3", nil},
	{"!" + trialQ + " " + trialGave + " " + trialWrong + " " + trialIs + " #", "the $1 is $2", nil},
	{"i|we gave|told|had ?you ?down wrong|bad|incorrect number|figure|measurement|size|one|value for|on|of|about !" + trialQ + " ?earlier|before|(just now) ,|;|.|- " + trialIs + " #", "the $1 is $2", nil},
	{"i|we gave|told|had ?you ?down wrong|bad|incorrect number|figure|measurement|size|one|value for|on|of|about !" + trialQ + " ?earlier|before|(just now) " + trialIs + " #", "the $1 is $2", nil},
	{"i|we had|got|put|wrote|have|took|entered !" + trialQ + " ?down|in ?all wrong ?earlier|before|there " + trialIs + " #", "the $1 is $2", nil},
	{"?leave|keep ?LENQ ?alone|be|(as it is) ?, it is !LENQ ?that|which i|we ?do|really want|need|meant|mean ?to ?be ?at|changed ?to|at #", "the $1 is $2", nil},
	{"i|we told|gave ?you # for|as|on !" + trialQ + " ,|;|.|- ?but ?it|that ?really|actually should|must|ought ?to have been|be|read ?more ?like #", "the $2 is $3", nil},
	{"?aw|ah|oh|dang|ok ?shoot|nuts|rats|damn|darn|crud ?, ?i|we told|gave ?you wrong ?earlier|before|(just now) ,|;|.|- ?it|there is|are ## !RAIL|STIFF ?in|on|of|to|for ?it|there|them ?each ,|; not ## $$", "$1 $2", nil},
	{"?aw|ah|oh|dang|ok ?shoot|nuts|rats|damn|darn|crud ?, ?i|we told|gave ?you wrong ?earlier|before|(just now) ?it|there is|are ## !RAIL|STIFF ?in|on|of|to|for ?it|there|them ?each ?,|; not ## $$", "$1 $2", nil},
	{"^^ ?oops|whoops|sorry|ah|oh|wait|damn|oof|darn|no|hang|hold ?on ?, ?(that (was|is))|(i (was (looking at|reading|on)|had|read|took|got)) ?the wrong page|sheet|column|line|row|paper|drawing|note|side ?of ?page|sheet :|,|;|.|-|--", "", figureToCome},
	{"on|at|to|against ?the left ?hand ?side|end ?, no|wait|sorry|oops|actually|hm|er|hang|hold|uh|rather ?on ?, ?no|i ?mean ?, ?on|at|to|against ?the other side|end|one|post|way|hand", "on the right", clauseEnds},
	{"on|at|to|against ?the right ?hand ?side|end ?, no|wait|sorry|oops|actually|hm|er|hang|hold|uh|rather ?on ?, ?no|i ?mean ?, ?on|at|to|against ?the other side|end|one|post|way|hand", "on the left", clauseEnds},
	{", or you know what|(wait)|(no wait)|(actually) ?,", ", no ,", phrase.BothHold(figuresBefore, numberSoon)},
	{"?, ?or you know what , ?make|let ?us ?make ?it", ", no ,", phrase.BothHold(figuresBefore, numberSoon)},
	{"^ no !STIFF ,|;|-|... ?oh ?well|actually|hm|hmm|wait|no|or ?, ?ok|okay|alright|fine|(all right) ?, ?just|only ## $$", "$2 $1", nil},
	{"^ ?i|we have|'ve ?since ?all changed|(had second thoughts) ?my|our|about ?mind|minds ?about|on ?the|having !STIFF ,|;|.|- ?so|and ?please ?just ?can|could ?you ?please leave|take|cut them ?all out|off|away ?please", "no $1", clauseEnds},
	{"^ ?i|we have|'ve ?since ?all changed|(had second thoughts) ?my|our|about ?mind|minds ?about|on ?the|having !STIFF ,|;|.|- ?so|and ?please ?just ?can|could ?you ?please drop|lose|skip|scrap|ditch|(do without) them ?all ?altogether ?please", "no $1", clauseEnds},
	{"i|we meant|mean !LENQ , ?and not !LENQ :|,|.|;|-|-- ?so|and|at ?it|that|is ?is ?to ?be #", "$1 is $3", nil},
	{"?earlier|before ?, ?i|we told|said|gave ?to ?you ?earlier|before ## !RAIL|STIFF ?earlier|before ?, but|and ?now i|we would|'d ?now ?much rather|prefer|sooner|like ?to ?now ?have|use|take|make|go ?it ?with ##", "$3 $2", clauseEnds},
	{"?earlier|before ?, ?i|we told|said|gave ?to ?you ?earlier|before # for|as !LENQ ?earlier|before ?, but|and ?now i|we would|'d ?now ?much rather|prefer|sooner|like ?to ?now ?have|use|take|make|go ?it ?with #", "the $2 is $3", clauseEnds},
	{"^^ ?sorry|oops|ah|oh|pardon ?me ?, ?i|we ?believe|think|fear|see|notice ?that ?i|we ?have|'ve|must|may ?have made a mistake|error|slip|blunder|typo ?there|somewhere|earlier|before|here :|,|;|.|-|--", "", lengthLater},
	{"^^ ?sorry|oops|ah|oh|pardon ?me ?, ?i|we ?have|'ve|must ?have ?just misread|misheard|mistyped|miscounted|misspoke ?it|that|this|things :|,|;|.|-|--", "", lengthLater},
	{"^ ?i|we ?do ?know ?that ?i|we said|told|wanted|asked ?you ?for no !STIFF ?, but ?please ?now ?can|could ?you|we|let ?us ?please put|have|add|give|make|use ?me|us|it ## ?of ?them ?back ?in ?there ?after ?all $", "$2 $1", nil},
	// A little more, a little less.
	{"kick|crank|hike|jog|tick|jack|scoot !GAP|((bottom|lower) GAP)|(WALL HEIGHT)|HEIGHT|WALL|OPENING up|out ?by ?another #", "raise the $1 by $2", phrase.BothHold(bidsHereOrWished, notToNext)},
	{"kick|crank|jog|tick|knock|scoot !GAP|((bottom|lower) GAP)|(WALL HEIGHT)|HEIGHT|WALL|OPENING down|in ?by ?another #", "reduce the $1 by $2", phrase.BothHold(bidsHereOrWished, notToNext)},
	{"kick|crank|hike|jog|jack !GAP|((bottom|lower) GAP)|(WALL HEIGHT)|HEIGHT|WALL|OPENING up|out ?by !(another inch|(half inch)|(quarter [inch])|eighth|sixteenth)", "raise the $1 by $2", bidsHereOrWished},
	{"put|stick|slip|slide|squeeze|fit|tuck|slot another|(one more)|(an extra) !RAIL|STIFF in ?there", "add one $1", phrase.BothHold(bidsHereOrWished, clauseEnds)},
	{"knock|kick|toss|chuck|yank|pull|take a|one ?of ?the !RAIL|STIFF out|off|away", "take out one $1", bidsHereOrWished},
	{"^ ?please drop|lose|pull|remove|cut|ditch|lop !one|two|1|2 STIFF ?from|in|out|off ?of ?a|each|every|per ?bay", "$1 less stiffeners", phrase.EndsLine},
	{"draw|pull|bring|take|pinch|squeeze|suck|close|tighten|nip !GAP|((bottom|lower) GAP) in|closed|together|tighter|(up tighter) ?by ?another #", "make the $1 $2 smaller", phrase.BothHold(bidsHereOrWished, notToNext)},
	{"bring|take|drop|lower|pull|knock|let|bump top ?edge of WALL ?come down ?by ?just|another #", "reduce the wall height by $1", phrase.BothHold(bidsHereOrWished, notToNext)},
	{"drop|lower top ?edge of WALL ?by ?just|another #", "reduce the wall height by $1", phrase.BothHold(bidsHereOrWished, notToNext)},
	{"bring|take|raise|lift|push|run|bump|let top ?edge of WALL ?come up ?by ?just|another #", "raise the wall height by $1", phrase.BothHold(bidsHereOrWished, notToNext)},
	{"raise|lift top ?edge of WALL ?by ?just|another #", "raise the wall height by $1", phrase.BothHold(bidsHereOrWished, notToNext)},
	{"run|give|figure|work|do|read|get|print|show ?off|me|us ?me|us ?the|them|those|my|all !(cut lengths)|cuts|marks|layout|(cut list)|(shopping list)|cost|price|total|drawing|steps ?out|off " + trialAgain, "show me the $1", nil},
	{"run|give|figure|work|do ?off|me|us ?the|them|those|my|all numbers|figures|sums ?out|off " + trialAgain, "show me the layout", clauseEnds},
	{"?i|we ?can|could|have ?still|now ?also ?spare|afford|find|manage|add|scrape|got|have|free ?up|together another|(an extra)|(a further) # ?dollars|bucks|quid ,|;|. ?and|so ?please ?you|i ?can put|add|throw|tack|stick it|that|them on|onto|to|in|into ?top ?of|to budget|limit|pot", "raise the budget by $1", nil},
	{"^ !LENQ is|'s ?all|just|perfectly fine|good|okay|ok|right|perfect|great|alright|(all right)|nice ?as|where ?it ?is|stands ,|;|. ?but|just|only|now|and ?please", "", lengthLater},
	{"^ !LENQ is|'s ?all|just|perfectly fine|good|okay|ok|right|perfect|great|alright|(all right)|nice ?as|where ?it ?is|stands but ?please", "", lengthLater},
	// Taken back, done again, begun afresh, taken.
	{"^ ?hm|hmm|no|ok|oh|ah ?, ?please (back [it|that] up)|(back [it|that] out)|(put it back)|(put that back)|(go back) ?please ,|;|.|- ?i|we ?really|kind|did ?of liked|preferred|like|prefer ?it ?better ?the|what|how ?way|how|one ?it|we|i ?was|had ?it ?better ?before|earlier|then $$", "undo", nil},
	{"^ ?please|can|could|would ?you ?please give|get|bring|hand|pull|fetch ?me|us ?up|back the|that ?old|last|previous|earlier version|layout|design back|again", "undo", clauseEnds},
	{"^ ?please|can|could|would ?you ?please give|get|bring|hand|pull|fetch ?me|us ?up|back the|that !_ job|plan|wall|layout|version|design back|up|again", "open the plan called $1", clauseEnds},
	{"?no|nope|nah|sorry|wait|oops ?, ?i|we did not mean|intend|want ?to ?do|say|have that|it|this ?one ?to ?, ?so|and ?please ?just go|step|move|take ?us|me|it back|up ?by ?a|one ?step|move|change|notch", "undo", clauseEnds},
	{"(bring back)|restore|reapply|(put back) ?the ?last|change|thing|one|move ?what|that|which|i ?i|we ?just ?had undid|undone|reversed|(took back)|(had undone) ?again", "redo", clauseEnds},
	{"^ ?ok|right|alright ?, ?please ?let ?us ?just scratch|scrap|wipe|forget|bin|dump|clear|toss|junk|lose|ditch (all [of] [it|this|that])|everything|(the [whole] lot)|(it all)|(this all) ?,|;|.|- ?and|so|because ?i|we|let ?am|are|us|'re ?gonna|going ?to start|starting|begin|beginning|restarting ?over|again ?from|at ?again ?zero|scratch|nothing|over|afresh|anew|fresh|(square one)|(the (beginning|start|top))", "start over", nil},
	{"^ ?there ?you ?go ?, ?yes|yeah|ok|right|alright|so ?, ?i|we will|shall|want|(would like)|(are going)|(am going)|(have decided) ?to build|take|go|make|run ?with|for|ahead that ?one|version|layout|plan ?then|please $$", "take that", noFigureSaid},
	{"^^ there you go ,", "", moreBehind},
	{"forget|lose|drop|scratch|scrap|ignore|strike|disregard ?the ?bit|part|thing ?what|that|where ?that i|we ?have|had told|said|gave|mentioned ?to ?you about|for|on ?the|our|my !POST|RAIL|STIFF ?all being|be|are|were ?all @ ?s", "forget the $1 size", nil},
	{"forget|lose|drop|scratch|scrap|ignore|strike|disregard ?the ?bit|part|thing ?what|that|where ?that i|we ?have|had told|said|gave|mentioned ?to ?you about|for|on !LENQ being|be|having ?to ?be # ?wide|high|tall|across|clear", "forget the $1", nil},
	{"^ ?ok|right|alright ?, do over ,|:|- ?the everything|all|lot|whole ?of ?it|thing $$", "start over", nil},
	{"^ ?yes|yep|yeah|yup|ok|right ?, ?that will do ?nicely|fine ,|.|; that is the one ?then $$", "take that", nil},
	// Plans.
	{"^ cmp", "compare", moreBehind},
	{"^ ?please write|jot|note|mark|put this|that one|plan|wall|layout|version ?down|up under ?the ?name !(_ [_]) $$", "save it as $1", nil},
	{"^^ ?well|ok|right|so ?, ?i|we ?believe|think|guess|suppose|reckon ?that ?i|we am|are|'re|have ?all ?about|just done|finished|through ?here ?for ?today|now|tonight|(the (day|time being|moment|night|evening)) ,|;|.|:|- ?so|and", "", saveNext},
	{"^^ ?so ?please ?i|we ?would|'d|want|need ?love|like|care|want ?to ?please ?see|have|get ?you !_ compared|(put next)|(set next)|(stacked up)|weighed with|to|against|alongside !_ $$", "compare $1 with $2", nil},
	{"^^ i|we ?have|had saved|kept|stored|filed ?a|my|our|the|this ?plan|wall|design|layout|one|version ?called|named|as|under ?the ?name !(_ [_]) ?((last|this|other|a|two|few) (week|month|day|night|time|days|weeks|while))|yesterday|earlier|before|once ?ago ,|;|.|-|and ?so|now|and ?can|could|would|will ?you ?please ?i ?want|like ?to ?you ?please open|load|(bring up)|(pull up)|fetch it|that ?one ?up|again|back|for ?me|please ?please", "open the plan called $1", nil},
	{"^^ hold|put|set|lay|stand ?the|these|those|them|both two|both|pair ?plans|walls|layouts|of ?them ?up next|side|against|beside|up ?against|by|to ?to ?side|(each other)|(one another) :|,|;|.|-|-- ?and", "", compareNext},
	{"^ ?ok|right|so ?, ?please ((hold|hang) [on] (to|onto))|keep|store|file|save|remember this|that|it ?one|plan|layout|version|wall|design ?, ?and ?please call|name|title|label it|this !(_ [_]) ?please $$", "save it as $1", nil},
	{"^ ?please put|lay|hold|set|show|stand ?me|us ?up !(_ [_]) one|plan|layout|wall|version ?up next|beside|against|alongside|(side by side with) ?to !(_ [_]) one|plan|layout|wall|version ?, ?((so|and) [that] ..) ?\\? $$", "compare $1 with $2", nil},
	{"show|put|lay|hold|let|see|give ?me|us ?see ?the|these|those|my|both ?two|both|saved plans|ones|walls|layouts|versions|designs ?i ?saved|called|named ?as !(_ [_]) and !(_ [_]) ?up beside|next|(side by side)|against|alongside|together ?to|each ?each|one ?other|another", "compare $1 with $2", nil},
	{"how does|do|would|will !(_ [_]) plan|layout|version|design ?then compare|measure|stack|hold|differ|do ?up ?with|to|against|from ?the ?one|plan|layout|version ?i ?called|named|saved ?as !(_ [_]) ?\\? $$", "compare $1 with $2", nil},
	{"^ ?please hold|hang onto|(on to)|to this|that|it ?one|plan|layout|version|wall ?, and save it as", "save it as", nil},
	{"redraw ?it|that|this|(the (wall|thing)) ?again|please|(for (me|us))", "draw it", clauseEnds},
}

// suppositions are words that begin what is only tried.
var suppositions = scan.WordSet("if suppose supposing assume assuming imagine pretend picture")

// inSupposition: something is supposed before it, in the same sentence.
func inSupposition(before, _ []scan.Atom) bool {
	for k := len(before) - 1; k >= 0 && before[k].Text != "."; k-- {
		if suppositions[before[k].Text] || before[k].Text == "say" && k+1 < len(before) && (chunk.ClauseBeginsAt(before, k) || before[k-1].Text == "us") {
			return true
		}
	}
	return false
}

// goneBehind are words that go on behind a piece that is left out.
var goneBehind = scan.WordSet("and or but so then what how would will does do could can is are in from per each every altogether entirely instead of where that")

// supposedFigure: a figure is supposed before it, or a change of one.
func supposedFigure(before, after []scan.Atom) bool {
	return inSupposition(before, after) && lengthLater(nil, before)
}

// askedFigure: it is asked about a figure, not told.
func askedFigure(before, after []scan.Atom) bool {
	return numberInSentence(before) && (inSupposition(before, after) || triedBefore(before, after))
}

// triedFigure: something with a figure is tried in a question that has no other condition.
func triedFigure(before, _ []scan.Atom) bool {
	return triedBefore(before, nil) && numberInSentence(before) && !phrase.SaidBeforeOf(suppositions)(before, nil)
}

// pieceOrNumberNear: a number follows in the sentence, or one piece.
func pieceOrNumberNear(before, after []scan.Atom) bool {
	return numberInSentence(after) || len(after) > 2 && len(after) < 9 && (chunk.IsClass(after[len(after)-1].Text, "RAIL") || chunk.IsClass(after[len(after)-2].Text, "RAIL"))
}

// behindWith: a word of having, using or supposing stands right before.
func behindWith(before, _ []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "with", "if", "have", "had", "having", "use", "used", "just", "only":
		return true
	}
	return false
}

// wholeNext: a figure of two or more follows, which is no change of a gap but its width.
func wholeNext(_, after []scan.Atom) bool {
	if len(after) == 0 || after[0].Text == "one" || after[0].Text == "half" || after[0].Text == "1" || after[0].Text == "zero" || after[0].Text == "0" {
		return false
	}
	if after[0].Kind != scan.Digits && !chunk.SpelledNumber(after[0].Text) {
		return false
	}
	return len(after) < 2 || after[1].Text != "/" && after[1].Text != "." && !partWord[after[1].Text]
}

var partWord = scan.WordSet("half halves third thirds quarter quarters fourth fourths eighth eighths sixteenth sixteenths mm millimeters millimetres percent")

// numberSoon: a number follows.
func numberSoon(_, after []scan.Atom) bool {
	return len(after) > 0 && (after[0].Kind == scan.Digits || after[0].Kind == scan.Vulgar || chunk.SpelledNumber(after[0].Text) || phrase.StartsLength(measure.Reader{Atoms: after}, 0))
}

// notToNext: the figure is no end of a range.
func notToNext(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text != "to" && after[0].Text != "from" && after[0].Text != "off" && after[0].Text != "above"
}

// notLeftOver: it is not said to be over ("was left over").
func notLeftOver(_, after []scan.Atom) bool { return len(after) == 0 || after[0].Text != "over" }

// pieceGone: something is supposed before it, and no length follows by which a piece is moved.
func pieceGone(before, after []scan.Atom) bool {
	return inSupposition(before, after) && (chunk.EndsPart(after, 0) || goneBehind[after[0].Text])
}

// lengthLater: a length or a number comes later.
func lengthLater(_, after []scan.Atom) bool {
	for i := range after {
		if phrase.StartsLength(measure.Reader{Atoms: after}, i) {
			return true
		}
	}
	return false
}

// noFigureSaid: no figure was said before it.
func noFigureSaid(before, _ []scan.Atom) bool { return !chunk.Figured(before) }

// saveNext: a plan is to be kept, shown or printed next.
func saveNext(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 6; i++ {
		switch after[i].Text {
		case "save", "store", "keep", "file", "print":
			return true
		}
	}
	return false
}

// compareNext: plans are to be compared next.
func compareNext(_, after []scan.Atom) bool { return len(after) > 2 && after[0].Text == "compare" }
