package idiom

import "saywright/grammar/phrase"

// familyPhrases are ways of people who plan a wall at home with others: what somebody of the house would like, what they were given,
// what the yard asks, and what else is to be made.
var familyPhrases = []phrase.Set{
	// What somebody of the house would like, and does not claim.
	{"^ ?my|our|the KIN|wifey|missus|hubby|kids (thinks|think|feels|feel|figures|reckons|believes|thought|felt|says) ?that !.. would|might ?really|just|probably|surely|definitely look|feel|be|seem ?just|quite|really|about|(so much)|(a lot)|much|far|(a bit)|pretty|(a little) (right|good|nice|nicer|best|better|prettier|pretty|great|lovely|neat|neater|tidier|perfect|ideal|cozier|handsome|handsomer) ?(to|for) ?(me|us|her|him) $$", "i think $1 would look nice"},
	{"^ ?my|our|the KIN|wifey|missus|hubby|kids (thinks|think|feels|feel|figures|reckons|believes|thought|felt|says) ?that !.. would|might ?really|just|probably suit|please us|her|him|me|everybody ?all (best|better|nicely|well|perfectly|fine) $$", "i think $1 would look nice"},
	{"^ ?my|our|the KIN|wifey|missus|hubby|kids (thinks|think|feels|feel|figures|reckons|believes|thought|felt|says) ?that !.. would|might ?really|just|probably look ?just|quite|really|much (right|good|nice|nicer|best|better|prettier|pretty|great|lovely|neat|neater) !(at|with) !..", "i think $1 would look nice $2 $3"},
	// What they were given and what they picked.
	{"!(BRACKET|RAIL|POST|STIFF|screws|lumber|wood|timbers) ?that|which ?(my|our|the) ?PERSONKIND !PERSON ?(- in - law) gave|sold|lent|loaned|brought|got|bought|left|handed|found|installed|welded|ordered|dropped|passed|picked|sent ?me|us|him|her|it ?to|for ?me|us ?up|off|on|out|down|over ?today|yesterday|(last (week|month|year)) !is|are|measure|measures|come|stick|poke|'s", "$1 $3"},
	{"RAIL ?that|which i|we|PERSON ?have|has ?all picked|chose|settled|decided|agreed|selected|liked|chosen ?out|on|upon ?(at the (store|yard|shop)) is|are|will ?be @", "boards are $1"},
	{"POST ?that|which i|we|PERSON ?have|has ?all picked|chose|settled|decided|agreed|selected|liked|chosen ?out|on|upon ?(at the (store|yard|shop)) is|are|will ?be @", "posts are $1"},
	{"STIFF ?that|which i|we|PERSON ?have|has ?all picked|chose|settled|decided|agreed|selected|liked|chosen ?out|on|upon ?(at the (store|yard|shop)) is|are|will ?be @", "stiffeners are $1"},
	{"!PERSON ?who|that ?is|was ((helping|assisting|advising) ?out ME ?out)|(working (with|for) ME)|(doing (the|this|our|my) (work|job|wall|building))|((lending|giving) ME a hand)|(building it) !wants|says|said|thinks|cut|cuts|has|had|marked|figures|reckons|would|told|tells|wrote|claims", "$1 $2"},
	// The space under the lowest board as that between the others.
	{"(put|leave|have|keep|make|set|repeat) ?exactly|just what|whatever ?the GAP|spacing ?that is|goes|comes|ends|lies ?up|out ?left BETWEEN ?other|rest RAIL ?(just|also) ?(repeated|as well) UNDER LOWEST|first RAIL|one ?too|also", "bottom gap same as gap"},
	{"what|whatever ?the GAP|spacing ?that ?(there is|is|goes|comes|ends|lies) ?up|out|there ?left BETWEEN ?other|rest RAIL (should|must|ought to|has to|to|will|could|shall|can) ?also (be (repeated|copied|mirrored|duplicated|echoed|replicated|reproduced|used|kept|left|put|continued|the same)|go|repeat|carry on|continue|appear|show up|be there) ?again UNDER LOWEST|first RAIL|one ?too|also|as ?well", "bottom gap same as gap"},
	// What is told of it at the end.
	{", ?so ?as i|we ?(just|have|had) (found out|discovered|learned|learnt|noticed|realized|realised|gathered) ?(the hard way|today|yesterday|just now|now|since) $$", ""},
	{"!(# ?each|apiece|ea|(a|per piece|board|stick|length|pop)) where|(at the (place|store|yard)) ?(where|that) i|we|they ?always|usually|normally|mostly (shop|trade|(buy|get) ?all ?my|our (lumber|wood|boards|stuff|things|it|them|those))|go ?at|from|to $", "$1"},
	{", ?because|since|as|but i|we|he|she would (sooner|rather|like to|prefer to|much rather) ?just (have|see|do|get|build|make) it|this|things|everything|(the thing|job|work|wall) ?(be|get) ?done|built|made|look|looking|come ?out|turn ?be ?(very|really|good and) (nicely|right|properly|well|nice|correctly|carefully|beautifully|pretty|lovely) ?(than * | once) $$", ""},
	// Spare boards on the list, and the least in the scrap pile.
	{"!he|she|they|PERSON ?has|have put|puts|added|adds|included|includes|wrote|writes|threw|throws ## extra|spare|additional|reserve RAIL ?down in|on|to|onto|into ?my|our|his|her|their|the ?shopping|buying|lumber|material ?list|order|cart|bill", "$1 shows $2 spare boards"},
	{"put|add|include|throw|toss|stick|have|write|pencil|jot|note|pop ?down|in|me ## extra|spare|additional|reserve RAIL ?as|for ?well|spares ?in|down on|to|onto|in|into ?my|our|that shopping|buying|lumber|material|supply|wood|store ?list|order|cart|bill", "$1 spare boards"},
	{"put|add|include|throw|toss|stick|have|write|pencil|jot|note|pop ?down|in|me ## extra|spare|additional|reserve RAIL ?in|down on|to|onto|in|into ?my|our|that list|order|cart|bill|load", "$1 spare boards"},
	{"less|(as little) lumber|wood|(of it)|material|boards|timber|stuff (ends up|winds up|goes|lands|is thrown|gets thrown|gets tossed|ends|finishes|ends up going|is left|is wasted) ?(in|into|on|onto|to|away|out|over) ?(scrap|burn|trash|waste|rubbish|firewood|kindling|offcut|fire) ?(pile|bin|heap|barrel|dumpster|can|box|stove|pit) ?, ?the better|happier|(more i like it)", "least waste"},
	{"less ?(lumber|wood|material) i|we ?(have to|must|need to|end up) (throw|toss|chuck|throwing|tossing) (away|out) ?, ?the better|happier", "least waste"},
	{"less|fewer ?lumber|wood|material|boards i|we ?(have to|must|need to|end up) (waste|wasting|scrap|scrapping|burn|burning) ?, ?the better|happier", "least waste"},
	// To be taught.
	{"(explain|explaining|((show|showing|tell|telling|teach|teaching) ME)|((take|walk|talk|guide|lead|run) ME through ?it)) ?(to ME) ?(nice and slowly|slowly) ?, (step by step|(one step|a step) at a time|one by one|in steps|bit by bit|piece by piece|in small steps) ?, how !(_ ?_ ?_ ?_) is|was|are|gets|(you get|got) !figured|calculated|computed|determined|derived|reckoned|found|(worked out)|(figured out)|(arrived at)|(come up with)", "walk me through how $1 is figured"},
	{"(explain|explaining|((show|showing|tell|telling|teach|teaching) ME)|((take|walk|talk|guide|lead|run) ME through ?it)) ?(to ME) ?(nice and slowly|slowly) ?, (step by step|(one step|a step) at a time|one by one|in steps|bit by bit|piece by piece|in small steps) ?, how you|we|one get|got|gets|figure|figured|calculate|calculated|find|found|(work out)|(worked out)|(arrive at)|(arrived at)|(come up with)|(came up with) !(_ ?_ ?_ ?_) $", "walk me through how $1 is figured"},
	// How tall an added post is.
	{"why|(how come) ?(is it) ?that ?(does|do|did|will|would) !((the|each|every|my|our) ?ADDED POST) (stop|stops|stopped|end|ends|finish|finishes|top out|tops out|quit|quits) ?(up|off|short) ?(at|just at|only at|right at) #", "why is $1 $2 tall"},
	{"how come !((the|each|every|my|our) ?ADDED POST) is|are|was|were|gets|get cut ?off|down|back ?to|at #", "why is $1 $2 tall"},
	{"why is|are|was|were !((the|each|every|my|our) ?ADDED POST) cut ?off|down|back ?to|at #", "why is $1 $2 tall"},
	{"how come !((the|each|every|my|our) ?ADDED POST) is|are|comes|come ?out ?only|just ?so|that|this|as short|tall|high|low|long|tiny $", "why is $1 that tall"},
	{"why is|are !((the|each|every|my|our) ?ADDED POST) ?only|just so|that|this|as short|low|high|long|tiny $", "why is $1 that tall"},
	{"why does|do|did !((the|each|every|my|our) ?ADDED POST) come|turn ?out so|that|this|as short|tall|low|high|long|tiny $", "why is $1 that tall"},
	// What is taken back.
	{"^ i|we did not ?really|actually mean|intend|want ?(to (do|say|change)) that|it|this ,|;|.|- ?so|and ?((can|could|would) you) ?please (take|put|turn) back (that|it|this|((what|whatever) (i|we) ?just (did|said|changed|typed|entered|asked))|(the|my last (thing|step|change|one|bit|line))) $$", "undo"},
	{"^ i|we did not ?really|actually mean|intend|want ?(to (do|say|change)) that|it|this ,|;|.|- ?so|and ?((can|could|would) you) ?please undo|reverse|revert|cancel (that|it|this|((what|whatever) (i|we) ?just (did|said|changed|typed|entered|asked))|(the|my last (thing|step|change|one|bit|line))) $$", "undo"},
	// What else is made, and brackets that meet.
	{"^ for ?(my|our|his|her|their) ?_ bench|benches|planter|planters|shelf|shelves|step|steps|trellis|table|box|boxes|stool|rack|gate|lid|ladder|sign|birdhouse|flowerbox|swing|sandbox|arbor|pergola|stand|doghouse|coop|kennel|seat|cover|cupboard|crate ?, i|we|he|she|they ?also ?will|would|shall ?also ?like|have ?to need|needs|want|wants|have|get|buy ?about ## ?more|extra|additional|other @", "i also need $1 more $2"},
	{"?any|two RAIL|GAP|anything|they ?any closer|tighter|nearer|narrower ?together than # ?it ?will|would make|makes|let|lets|has|have|cause|causes|means|mean BRACKET ?to CLASH|touching ?(each other|one another|together)", "bracket clearance $1"},
	{"!PERSON ?just|has|have measured|taped|checked|lasered|read the span ?at|as|(to be) #", "the span is $2"},
	// What is begged for is no trial.
	{"could|can|would|will you possibly|maybe|perhaps|kindly|ever !make|set|raise|lower|widen|narrow|shrink|increase|reduce|shorten|change|move|put|keep|leave|bring|take|add|tighten|open|drop|lift ?up|down !it|the|my|our|that|this|them|every|each|all|another|one|two|three|both|##", "would you $1 $2"},
	{"could|can|would|will you please|kindly !put|run|set|move|place|stick|tuck|shift", "would you $1"},
	{"could|can you !(put|place) !(it|the (opening|openings|doorway|gate|gateway|walkthrough|post|posts|passage|entrance))", "would you $1 $2"},
	{"^ (is|would|will) (it|that) ?be ?(all right|alright|acceptable|permissible|safe) ?(with you|by code|by the rules) if ?it ?(were|is|was) ?to", "what if"},
	{"^ (is|would|will) it ?be|cause|make a ?big|real problem|trouble if", "what if"},
	// How high it comes on somebody, and what may slip through.
	{"comes|goes|reaches|stands ?up ?to ?about|around|roughly|somewhere waist|hip|chest|elbow|belt|counter|bar|shoulder ?high|height|level ?(on|to|for|with) ?(me|him|her|us|(my _)) , ?which|that ?is ?so ?say|about|call|roughly|around ?it #", "is about $1 high"},
	{"^ ?my|our|the|his ?little ?_ dog|cat|puppy|kid|kids|baby|toddler|grandson|granddaughter|rabbit|hen|hens|chickens|dogs|cats|son|daughter ?can|could|will|always|still squeeze|squeezes|slip|slips|fit|fits|get|gets|wriggle|wriggles|crawl|crawls|sneak|sneaks ?right|out through|under|past anything|gaps|whatever ?(that is) over|(wider than)|(bigger than)|above|(larger than) # ?, so|and ?please keep|make|have|leave|hold !(the (gap|gaps|spaces)|them|it|(every|each|all) (gap|gaps)) below|under|(smaller|less|tighter|narrower|closer) ?than ?that|it $", "gaps under $1"},
	// Questions of people who have not built before.
	{"where ?exactly do|does|should|will|would|must|are screws|bolts|nails|BRACKET|holes ?all ?(get|be|go|(need to be)|(to be)) ?marked|drilled|put|driven|pencilled|penciled|screwed|placed|fastened ?in|on ?(on|onto|into|along) ?POST ?at $", "where do the brackets go"},
	{"^ ?so i|we ?honestly|really (am|are) not ?quite|really|too|so|all|that sure|certain|clear ?(on|about) what ?(word|term|expression) !(STIFF|BRACKET|OPENING|kerf|GAP|BAY|trim|(bottom gap)|(bracket (ear|reach|clearance))|(post base)) means|is|are|mean , ?so|and ?please can|could|would|will you ?please (help|explain|tell me|clear that up|fill me in) ?(me ?out|it|that)", "what does $1 mean"},
	{"^ ?so i|we do not ?really|quite know|understand what a|an ?(word|term) !(STIFF|BRACKET|kerf|BAY) is|are|means|mean $", "what does $1 mean"},
	{"where is !(the (OPENING|POST|wall|(bottom|top|lowest) RAIL)) !land|lands|begin|start|fall|end|sit|go", "where does $1 $2"},
	{"doubling|double|doubled ?up on ?the STIFF ?, ?so ?with ##", "stiffeners $1"},
	{"^ ?(from (here|now) on) everything|all|figures|numbers|measurements|lengths ?(is|are|should be) in !METRIC|CUSTOMARY|metric ?from ?here|now ?on|out|forward $", "use $1"},
	{"## added|new|intermediate !(@ ?s)", "$1 added posts , added post size $2"},
	{"^ fwiw|imo|imho|afaik|tbh ?,", ""},
}
