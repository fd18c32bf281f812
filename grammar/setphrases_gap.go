package grammar

// gapPhrases are ways to speak of the space between the rails.
var gapPhrases = []setPhrase{
	{"every|each|any pair of ?neighboring|neighbouring|adjacent|adjoining|next RAIL ?is|are|should|must|will|shall|needs|ought ?to ?be have|has|get|gets|keep|keeps|with|leave|leaves # ?of|in ?clear ?space|air|room|gap|daylight ?between|apart ?them|it", "gap $1"},
	{"hold|keep|space|leave|stand|fix|mount|hang RAIL apart|separate|separated by|at|with ?exactly|just|about #", "gap $1"},
	{"# is as wide|big|large|much|loose|open as GAP ?between ?RAIL may|can|should|could|must|might|will|gets ?get|go|be|come|ever", "gap at most $1"},
	{"# is as tight|small|narrow|close|little|low as GAP ?between ?RAIL may|can|should|could|must|might|will|gets ?get|go|be|come|ever", "gap at least $1"},
	{"do|should|must|may|can not|never ?ever squeeze|put|place|set|crowd|push|space|jam|bring|mount|hang|get|move|pack|crush RAIL ?any ?to closer|tighter|nearer ?together than # ?to|from|of|apart ?each|one|together ?other|another", "gap at least $1"},
	{"never squeeze|put|place|set|crowd|push|space|jam|bring|mount|hang|pack RAIL ?any closer|tighter|nearer ?together than # ?to|from|of|apart ?each|one|together ?other|another", "gap at least $1"},
	{"nothing|nowhere as|so wide|big|large|much|loose as # ?in BETWEEN RAIL|them ?, ?and ?always ?less|smaller|tighter ?than ?that|it ?everywhere|throughout|always|anywhere", "less than $1 between the rails"},
	{"nothing|nowhere as|so narrow|small|tight|close|little as # ?in BETWEEN RAIL|them", "more than $1 between the rails"},
	{"never|not ?any ?to closer|nearer|tighter ?together than # to|from each|one other|another", "gap at least $1"},
	{"twice|double as wide|big|large a GAP", "twice the gap"},
	{"RAIL as close|tight|near to each|one other|another as", "rails as close together as"},
	{"open|opening|opened|opens each|every|all|any|up|both ?one|of GAP ?between ?RAIL ?up|out|wider ?by #", "increase gap by $1"},
	{"open|opening GAP ?between ?RAIL up|out|wider ?by #", "increase gap by $1"},
	{"close|closing each|every|all|any|both ?one|of GAP ?between ?RAIL ?up|in|down ?by #", "reduce gap by $1"},
	{"the limit|cap|max|maximum|minimum|min|restriction on|for GAP ?, ?that|the|my one|ones|limit ?about|of|at|that|saying|with|where ?said|says|is ?about # or|and less|under|smaller|tighter|below", "the gap limit of $1 or less"},
	{"the limit|cap|max|maximum|minimum|min|restriction on|for GAP ?, ?that|the|my one|ones|limit ?about|of|at|that|saying|with|where ?said|says|is ?about # or|and more|over|bigger|wider|above", "the gap limit of $1 or more"},
	{"limit on|for GAP , ?that|the one ?about|of|at|that|saying|with|where ?said|says|is ?about # or|and less|under|smaller|tighter|below", "gap limit of $1 or less"},
	{"limit on|for GAP , ?that|the one ?about|of|at|that|saying|with|where ?said|says|is ?about # or|and more|over|bigger|wider|above", "gap limit of $1 or more"},
	{"BRACKET bump|bumps|touch|hit|clash|collide|meet|rub|foul|bang ?into ?each|one|together ?other|another if|when|whenever|once|where GAP|they is|are|gets|goes|drops|falls|get ?to less|under|below|smaller|tighter ?than # ?, so it|they|that|GAP is|has|must|needs|should|are|have", "gap must"},
	{"anywhere|anyplace|someplace # to|and|-|through #", "from $1 to $2"},
	{"# - ish", "about $1"},
	{"say # ?, roughly|approximately|about|approx|ish|thereabouts|ballpark|near", "about $1"},
	{"we|i had|have RAIL # apart ?, but|and|only ?now i|we ?would ?now want|like|need|prefer ?to ?have|make|see|go ?it|them ?at|to|with # ?now|instead|apart|please $", "gap $2"},
	{"we|i had ?at GAP ?between ?RAIL ?at|of|to # ?, but|and|only ?now i|we ?would ?now want|like|need|prefer ?to ?have|make|see|go ?it|them ?at|to|with # ?now|instead|apart|please $", "gap $2"},
	{"we|i had WALL ?at|to # ?HIGH ?, but|and|only ?now i|we ?would ?now want|like|need|prefer ?to ?have|make|see|go ?it|them ?at|to|with # ?now|instead|please $", "wall height $2"},
	{"we|i had # RAIL ?in|per ?each ?BAY ?, but|and|only ?now i|we ?would ?now want|like|need|prefer ?to ?have|make|see|go ?it|them ?at|to|with # ?now|instead|please $", "$2 rails"},
}

// talkPhrases are what people say round about a figure that changes nothing of it.
var talkPhrases = []setPhrase{
	{"^ once|when|after|as|now|by ?the ?time ?soon ?that ?as it|they|everything|wall|that|all|this is|are|gets|has ?been ?all done|finished|built|complete|completed|up|standing|assembled|there ,", ""},
	{"^ once|when|after|as ?soon ?as it|they|everything|wall|that|all|this is|are|gets|has ?been ?all done|finished|built|complete|completed the|WALL|it ?WALL ?will ?should be|is|stands", "the wall is"},
	{"after|following a|some|much|long|lots|lot ?of ?very ?long|good|lengthy|big|heated|short ?family talk|chat|debate|discussion|argument|meeting|thought|deliberation|conversation|fight|thinking $", ""},
	{"for ?the ?sake ?of children|kids|dog|dogs|cat|cats|baby|grandkids|toddlers|toddler|puppy|neighbors|inspector|view|looks|wife|husband|mother ?'s|' ?s sake", ""},
	{"is|are|was what|the ?one i|we ?have ?all agreed|settled|decided|landed|fixed ?on|upon ?with ?my|our|the neighbor|neighbour|neighbors|neighbours|PERSON", ""},
	{"i|we have|got|had a bad|sore|stiff|aching|weak ?old back|knee|shoulder|hip|wrist|hand|arm|neck|leg", "my back is weak"},
	{"BRACKET|RAIL|boards|lumber|posts|they cost|costs|are|go ?for ?so ?too a|an|too|so|very fortune|arm|lot|mint|bundle|pricey|expensive|dear|costly|packet|bomb|steep ?and ?a ?leg ?these ?days ?, ?and so", ""},
	{", ?my|our|the truck|trailer|car|van|back|budget|wallet|saw|rack|trolley|ute|pickup|suv will|can|would|does|do not carry|hold|take|fit|haul|handle|reach|stand|bear|stretch|allow|lift ?any|to ?more|longer|bigger|further|heavier ?than ?that|this $", ""},
	{", i|we would like|want|love|prefer|wish you to use|take|enter|go|put|work|keep ?with ?in ?down that|it|this|those|them $", ""},
	{"my|our|the PERSON ?and ?i|me ?all ?both ?have|has|had ?now ?all ?finally settled|decided|agreed|landed on|upon #", "i settled on $1"},
}
