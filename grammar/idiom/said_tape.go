package idiom

import "saywright/grammar/phrase"

// tapePhrases are ways in which people with a tape in their hand, and those who work in millimeters, tell what they read, against what
// somebody wrote, why a reading is not to be used, and what the merchant does no more.
var tapePhrases = []phrase.Set{
	// What a trial costs.
	{"what|how ?much does|would|will|do|might ?all it|this|that|everything ?lot ?all come|amount|add|run|total ?up to if", "what does it cost if"},
	{"what|how ?much does|would|will|do|might ?all it|this|that|everything ?lot ?all come|amount|add|run|total ?up to with !#|a|an|just|only", "what does it cost with $1"},
	{"if !i|we|you|they only|just|merely|simply|still !use|used|have|had|go|went|make|made|put|buy|bought|do|did|get|got", "if $1 $2"},
	// What the tape says against a paper.
	{"i|we ?am|are ?all keep|kept|now|still|just|actually|always|consistently|both getting|reading|measuring|finding|seeing|taping # $", "i get $1"},
	{"i|we am|are getting|reading|measuring|finding|seeing|taping # $", "i get $1"},
	{"i|we ?am|are ?now|still|just|actually|keep|kept getting|reading|measuring|finding|seeing|taping # on|off|at|by|with|using ?my WALL|site|job|ground|spot|tape|ruler|rule|laser|thing ?measure ?itself $", "i get $1"},
	{"!i|we get|got|read|measure|measured|find|found ?it # on|at WALL|site|job|spot ?itself $", "$1 get $2"},
	{", ?but|and|though it|that|which is|was ?really|actually|only # on|by|with|going ?by ?my tape|ruler|laser ?measure $", ", i get $1"},
	{"!PERSON wrote|put|has|had|noted|marked|drew|scribbled|jotted|pencilled|penciled ?down # for|as|at !GAP|HEIGHT|OPENING|span on|in|onto PAPER", "$1 wrote $2 for the $3"},
	{"!PERSON wrote|put|has|had|noted|marked|drew|scribbled|jotted|pencilled|penciled ?down # !RAIL|BAY|POST|STIFF on|in|onto PAPER", "$1 wrote $2 $3"},
	{", ?but|and|though i|we ?can ?only|just count|counted|counting # $", ", i get $1"},
	{", ?but|and|though i|we ?can ?only|just count|counted|counting # !RAIL|POST|BAY|STIFF $", ", i get $1 $2"},
	{"between POST ?down|up at|along|on|near|by FLOOR ?level ?, ?and ?i|we|it got|get|gets|read|reads|is|came|comes|measured|measures|found ?out ?to ?at # $", "between the posts is $1"},
	{"my|the|our caliper|calipers|calliper|callipers|vernier|micrometer|gauge ?now say|says|read|reads|show|shows|give|gives|make|makes ?me ?it", "my tape says"},
	// Metric, asked for as a favor.
	{"^ could|can|may|might|shall|should i|we|you ?please ?just ?all do|have|work|keep|talk|use|stick|stay|go|leave|run|make|put ?all ?on ?with ?to ?this|it|that|everything|things ?all ?of ?it ?in !METRIC|CUSTOMARY ?please|instead|throughout|only $", "i work in $1"},
	// From one post to the other.
	{"?from middle|center|centre of ?the one ?end|outer ?POST to ?the middle|center|centre of other ?one ?end ?POST", "center to center"},
	{"?from inside|inner ?face|edge|side of ?the one ?end|outer ?POST to ?the inside|inner ?face|edge|side of other ?one $", "between the posts"},
	{"?from one|an ?end|outer POST inside|inner ?face|edge|side to other|others ?'s ?one|POST ?inside|inner ?face|edge|side $", "between the posts"},
	{"?from one|an ?end|outer POST outside|outer ?face|edge|side to other|others ?'s ?one|POST ?outside|outer ?face|edge|side $", "outside to outside of the posts"},
	{"?from one|an ?end|outer POST middle|center|centre to other|others ?'s ?one|POST ?middle|center|centre $", "center to center of the posts"},
	{"?from outside|outer ?face|edge|side of ?the one ?end|outer ?POST to ?the outside|outer ?face|edge|side of other ?one $", "outside to outside"},
	// A paper that is not followed.
	{", ?and not what|as|like PAPER|book|books|table|tables|chart|label|sticker|tag|catalog|bundle ?it says|said|shows|showed|claims|has|had|gives|lists|claimed $", ""},
	{", ?and not what is|was ?printed|written|given|shown|marked on|in ?the|their|my PAPER|book|books|table|tables|chart|label|sticker|tag|catalog|bundle $", ""},
	{", ?and whatever|no ?matter ?what PAPER|book|books|table|tables|chart|label|sticker|tag|catalog|PERSON says|said|shows|showed|claims|claimed $", ""},
	// A reading that is not to be used, and why.
	{"do|never not ?ever use|trust|count|keep|believe ?on my|our|that|the ?old|first|last|earlier !bottom|top measurement|reading|figure|number|dimension for|in|of|on|at !BAY # $", "ignore the $2 $3 $1 measurement"},
	{"do|never not ?ever use|trust|count|keep|believe ?on my|our|that|the ?old|last|earlier !bottom|top measurement|reading|figure|number|dimension for|in|of|on|at !first|second|third|fourth BAY $", "ignore the $2 bay $1 measurement"},
	{"do|never not ?ever use|trust|count|keep|believe ?on my|our|that|the ?old|last|earlier !BAY # !bottom|top measurement|reading|figure|number|dimension $", "ignore the $1 $2 $3 measurement"},
	{", ?because|since|as|cause i|we|he|she|PERSON ?must ?would ?have ?had|was|were ?probably measured|read|hooked|held|used|stood|standing|stretched|pulled|laid|started|ran|taped|reading|measuring|holding|had * wrong POST|BAY|RAIL|WALL|side|end|face|edge|line|mark|ruler|tape|spot|place ?of ?the|my ?tape|POST|RAIL|ruler|rule $", ""},
	{", ?because|since|as|cause i|we|he|she|PERSON ?must ?have ?probably had|got|held|put|hooked ?the|my|his tape|hook|ruler|rule|blade|end|tongue|level|laser ?measure ?of ?tape ?hooked|held|on|in|at ?a ?little ?bit ?too crooked|twisted|kinked|bent|backwards|backward|askew|skewed|sideways|loose|slack|sagging|angle|upside|slanted|wrong ?down ?on|in ?there $", ""},
	{", ?because|since|as|cause ?the|my|his tape|hook|ruler|rule|blade|laser ?measure ?must ?have was|were|is|got|been|had ?been|gotten ?all ?a ?bit ?too crooked|twisted|kinked|bent|backwards|backward|askew|skewed|sideways|loose|slack|sagging|angle|upside|slanted|wrong|caught|stuck|snagged ?down ?on ?something ?in ?there $", ""},
	{"!forget|drop|scrap|ignore|discard|scratch|disregard what|whatever i|we ?had|have ?just read|got|get|found|noted|wrote|entered|gave|took|taped|reported ?down ?you !at|for|on|in|from !bottom|top", "$1 what i measured $2 the $3"},
	{", ?because|since|as|cause i|we|he|she|PERSON ?must|may|might ?have|had ?just ?probably misread|mismeasured|misheard|mistyped|miswrote|misjudged ?it|that|this|them $", ""},
	{", ?because|since|as|cause i|we|he|she|PERSON ?must|may|might ?have|had ?just ?probably wrote|written|put|got|read|took|typed it|that|this|them ?down wrong|wrongly|badly $", ""},
	{", ?and ?but nothing more|less $", ""},
	// What is left as it is, and what the other bays get.
	{"# STIFF in|for !bay # , ?and|but ?only|just # ?STIFF ?each in|for ?each|every|all ?of others|rest|(other bays|ones)|(remaining bays|ones) $", "$1 stiffeners in $2 $3 . $4 stiffeners per bay"},
	{"!bay # ?will|must|should gets|has|wants|takes|needs|get|have|take # STIFF , ?and|but ?all others|rest|(other bays|ones)|(remaining bays|ones) ?will|must|should ?get|gets|have|has|want|wants|take|need ?only|just # ?STIFF ?each ?apiece $", "$3 stiffeners in $1 $2 . $4 stiffeners per bay"},
	{"!bay # ?will|must|should gets|has|wants|takes|needs|get|have|take # STIFF and|but ?all others|rest|(other bays|ones)|(remaining bays|ones) ?will|must|should ?get|gets|have|has|want|wants|take|need ?only|just # ?STIFF ?each ?apiece $", "$3 stiffeners in $1 $2 . $4 stiffeners per bay"},
	{", ?and|but|please leave|keep ?all ?the rest|others|remainder|other ?bays|ones ?be ?alone|unchanged|untouched|as ?they|it ?are|is|were|was $", ""},
	{", ?and|but|please leave|keep everything|anything else ?be ?alone|unchanged|untouched|as ?they|it ?are|is|were|was $", ""},
	{", ?and|but|please do not touch|change|alter|move|disturb ?any|all ?of ?the|anything rest|others|other|else ?bays|ones $", ""},
	// What is done no more, and where one buys.
	{"SELLER|they|PERSON ?has|have ?just|now stopped|quit|ceased|finished|discontinued|dropped|axed ?doing|making|running|cutting|keeping|getting|selling|carrying|stocking|offering # ?foot|ft ?length ones|lengths|footers|pieces|sticks|boards", "they stopped carrying $1 lengths"},
	{"SELLER|they|PERSON no longer do|does|make|makes|keep|keeps|run|runs|cut|cuts|offer|offers # ?foot|ft ?length ones|lengths|footers|pieces|sticks|boards", "they stopped carrying $1 lengths"},
	{"^ ?the ?other|old|little|big SELLER|place|outfit|mob|crowd|lot|fellows by|near|off|on|across|past|behind|beyond|round|around|along|at|over|opposite|next ?to|by|from|of ?the|our|a ?main|old|big|new|next|other|north|south|west|east highway|road|street|lane|bridge|river|corner|station|railway|tracks|church|school|airport|harbor|interstate|freeway|motorway|bypass|roundabout|square|park|crossroads|hill|bank|ferry|village|pub !has|have|sells|sell|carries|stocks|stock|does|do|keeps|offers|charges|wants|asks|also|only", "the yard $1"},
	{"why|(how come) is|are it|you|this|program telling|making|asking|having|wanting|forcing me|us ?to !buy|get|order|purchase", "why do you want me to $1"},
	{"keep|hold|bring|get it|this|that|everything|lot|thing|cost|total|bill|price ?all ?in under|below|within|inside # all in|told $", "the budget is $1"},
	{"it|this|that|everything|lot|thing|cost|total|bill|price ?all must|should|has|needs|can ?to ?be|stay|come|end ?up ?in under|below|within|inside # all in|told $", "the budget is $1"},
	// What is bought beyond the need.
	{"add|put|throw|toss|stick|chuck|tack|buy|order|get|allow ?in|on # ?more|extra|further|additional RAIL ?in|on|more|extra ?top for ?any|my|the|some mistakes|mistake|mishaps|waste|wastage|breakage|breakages|error|errors|miscuts|goofs|slips|splits|knots|accidents|spoilage", "add $1 spare boards"},
	{"add|put|throw|toss|stick|chuck|tack|buy|order|get|allow ?in|on # ?more|extra|further|additional RAIL ?in|on|more|extra ?top for ?any|my|the|some bad|wrong|short|botched|spoiled|spoilt cuts|ones", "add $1 spare boards"},
	{"add|throw|toss|stick|chuck|tack|buy|order|get ?in|on # ?more|extra|further|additional RAIL ?in|on|more|extra ?, ?just to be safe|sure", "add $1 spare boards"},
	// How a floor runs, and how near something is to come.
	{"!falls|drops|slopes|pitches|runs ?down # a|an|per|every|each|in !metre|meter|foot|yard ?as ?you going|heading|moving|traveling|travelling|go|head|move|walk ?to|toward|towards ?the !left|right", "falls $2 per $3 to the $4"},
	{"as near|close # as ?you|we|i|it|possible ?can|may|could|will ?possibly ?get|make|manage|come|go ?it", "as close to $1 as possible"},
	{"!what|how about closing|opening|tightening|easing|drawing ?up|out|down ?the !GAP ?up|out|down to", "$1 about making the $2"},
	{"cleaning|truing|tidying|facing|evening ?up|off !the|each|every|an|one|a|both|their !end|ends", "squaring up $1 $2"},
	{"# gets|is|are|goes|get|go ?lost|wasted|eaten|used|gone ?up ?away ?on|by|in|to|when|with squaring|trimming ?up|off", "i lose $1 squaring up"},
	{"^^ ?no ?, ?just ?please scrub that|it ?last ?one|bit|line $$", "undo"},
	// What somebody's figure comes to beside ours, and what is only asked.
	{", ?and ?so how is|does|do that|this|it|they|those|mine compare|compares|tally|tallies ?up ?to|with|against ?yours|you $", ", is that right"},
	{", ?and ?so how is|does|do that|this|it|they|those|mine stack|measure|hold|line up to|with|against yours|you $", ", is that right"},
	{"should|shall|must|would|will|do|could !i|we be buying|getting|ordering|purchasing $", "should $1 buy"},
	{"^ ?and ?so ?now do|does|did|will|would !BAY ?all ?still come|turn|work|end|wind ?out|up ?to ?be ?all ?the even|equal|same|alike|identical ?width|size $", "are the $1 all the same"},
	{"^ ?and ?so ?now do|does|did|will|would !GAP ?all ?still come|turn|work|end|wind ?out|up ?to ?be ?all ?the even|equal|same|alike|identical ?width|size $", "are the $1 even"},
	{"what is|does ?total|finished|full ?WALL height come|add|work|end out|up ?to|at ?then|now $", "what is the wall height"},
	{"what would|will|does|did|might # !RAIL|STIFF|POST ?all|then look like $", "what if $1 $2"},
	{"if !each|every|all !cut|cuts|RAIL|mark|piece ?is|are|was|comes|came|come ?out # ?too heavy|light|long|short|strong|shy|full|over|under|proud !what|how", "if $1 $2 is off $3 , $4"},
	{"step me|us over|through how !(..) ?is|was|gets|got|are|were worked|figured|reckoned|calculated|computed|derived ?out $", "teach me $1"},
	{"go|talk|walk|take|run ?me|us over|through how !(..) ?is|was|gets|got|are|were worked|figured|reckoned|calculated|computed|derived ?out $", "teach me $1"},
	{"^ ?go|put|take ?me|it|us|things ?right back to what|where|how i|we|it|things ?had|have ?were|was|stood|did before ?that|this|then $", "undo"},
	{"^ ?i|we ?will|would ?let ?us ?just stick|go|stay|run with that last|latest ?one|try|idea|trial|version $", "take that"},
	{"^^ ?the !first|second|third|fourth option|choice|suggestion|fix|solution|remedy|alternative , please $$", "take the $1 option"},
	{"skip|omit|scrap OPENING , ?because|as|since there is|will|are not|never ?be ?going ?to ?be one|any $", "no opening"},
	{"^ ?the what|whatever|one|figure|reading|number ?that i|we ?had|have ?just wrote|said|gave|told|put|entered|read|got|took ?you ?down for|at|on|in|from|about !(..) is|was|were ?all wrong|off|out|mistaken|bad|rubbish , ?it|that ?is|should|must|make|be ?it|that ?be ?really|actually|to # $", "$1 is $2"},
	// How a post leans and a floor runs, told in another order.
	{"!left|right ?hand ?end POST ?is out|off # ?in|over|per # , ?leaning|tilted|tipping|going ?and toward|towards|to ?the !left|right", "$1 post leans $2 to the $4 in $3"},
	{"!FLOOR runs|goes|slopes|falls|drops ?is ?downhill|down|away to|toward|towards !left|right , ?at|by ?about|roughly # in|per|a|every|each ?a !foot|metre|meter|yard $", "floor falls $3 per $4 to the $2"},
	{"if !each|every|all !cut|cuts|RAIL|mark|piece ?is|are|was|comes|came|come ?out # ?too heavy|light|long|short|strong|shy|full|over|under|proud $", "if $1 $2 is off $3"},
	// Whatever it is.
	{"^ whatever|however ?wide|big|large|small ?the !gap|opening|bay|span|height ?is|turns|comes|works|ends|winds|finishes ?up|out ?to ?be ?at|being , ?and|then !(..) # ?times that|it|this $", "$2 $3 the $1"},
	{"^ whatever|however ?wide|big|large|small ?the !gap|opening|bay|span|height ?is|turns|comes|works|ends|winds|finishes ?up|out ?to ?be ?at|being , ?and|then !(..) !twice|double|half ?of that|it|this $", "$2 $3 the $1"},
	{"^ whatever !gap|opening|bay|span|height i|we|you|it ?will end|ends|get|gets|wind|come|comes|have ?up|out|to ?with|at , ?and|then !(..) # ?times that|it|this $", "$2 $3 the $1"},
	// What something is cut from.
	{", ?all ?to ?be cut|sawn|sawed|ripped|milled|planed|machined ?down|out|up from|of @ $", ", made of $1"},
	{"!POST|STIFF|RAIL ?are|is|to|all ?be cut|sawn|sawed|ripped|milled|planed|machined ?down|out|up from|of @ $", "$1 are $2"},
	// What somebody has the boards at.
	{"PERSON has|have|had|got RAIL at # in|for|on BAY #", "they cut the bay $2 boards at $1"},
	{"PERSON has|have|had|got RAIL at # in|for|on !first|second|third|fourth BAY", "they cut the $2 bay boards at $1"},
	{"PERSON has|have|had|got RAIL in|for|on BAY # at # $", "they cut the bay $1 boards at $2"},
	{"PERSON has|have|had|got ?got # for RAIL in|on|of BAY #", "they cut the bay $2 boards at $1"},
	{"PERSON has|have|had|got BAY # RAIL at # $", "they cut the bay $1 boards at $2"},
	{"PERSON has|have|had|got ?the ?new|added POST at # , ?and is that|this|it what|how you|it would cut ?them|it ?to|at ?too", "they cut the posts at $1 , is that right"},
	{", ?and ?so is|are that|this|it|those|they what you|it ?would|will|also get|got|have|cut|do|say|make|see|find ?it|them ?come ?too|at|to ?yourself $", ", is that right"},
}
