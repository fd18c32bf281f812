package grammar

// crewPhrases are what carpenters say on a site: to each other, of the saw and the truck, and of what somebody takes back.
var crewPhrases = []setPhrase{
	// What is only said about, and what is not held against anybody.
	{", ?but ?and ?please do not|never hold|pin|quote|nail|tie ?me|us ?down to|on it|that|this ?now|though|yet|please $", ", roughly"},
	{"; ?but ?and ?please do not|never hold|pin|quote|nail|tie ?me|us ?down to|on it|that|this ?now|though|yet|please $", ", roughly"},
	{"?, but ?please do not|never hold|pin|quote|nail|tie ?me|us ?down to|on it|that|this ?now|though|yet|please $", ", roughly"},
	{", ?but i|we am|are not married|wedded|nailed|tied to it|that|this ?though $", ", roughly"},
	{", ?but ?with ?i ?can ?make no promises|guarantees ?there|on ?that $", ", roughly"},
	{", ?but ?that|it is not|no gospel ?though $", ", roughly"},
	{", son|sonny|junior|kid|pops|skipper|buster|slim ,|$$", ","},
	{"!POST|UPRIGHT|RAIL|STIFF|BRACKET ?there|here|in at all $", "$1"},
	// What makes it so.
	{"what is|was making|forcing|causing|requiring|driving|compelling you|me|us|it|WALL to|into ?need|use|have|put|add|want|needing|using|having|putting|adding ?in", "why do i need"},
	{"what is|was making|forcing|causing|requiring|driving|compelling you|me|us|it|WALL need|use|have|put|add|want ?in", "why do i need"},
	{"what makes|made|forces|forced|requires|compels you|me|us|it|WALL ?to need|use|have|put|add|want ?in", "why do i need"},
	{"what requires|demands|necessitates|(is requiring)|(is demanding)|(is necessitating)|(calls for) !POST|RAIL|STIFF", "why do i need $1"},
	{"what is|was making|causing|driving|dictating !GAP|BAY|OPENING|RAIL", "what makes the $1"},
	{"what makes|made|is|was ?making ?another !POST|RAIL|STIFF necessary|needed|required", "why do i need the $1"},
	// Limits that are taken back.
	{"^ ?about that|the|my|our|this # limit|max|maximum|cap|ceiling ?that ?i|we|you ?had ?have ?put|set|gave|placed|got|hung ?you ?on|for|over BAY , ?just ?you ?can forget|drop|scratch|lose|scrap|toss|dump|ditch|lift|kill|remove|cancel|skip|strike it|that ?one ?about ?it ?now $", "forget the limit that no bay is over $1"},
	{"^ forget|drop|scratch|lose|scrap|toss|dump|ditch|lift|kill|remove|cancel|skip|strike ?that|the|my|our|this # limit|max|maximum|cap|ceiling ?that ?i|we|you ?had ?have ?put|set|gave|placed|got|hung ?you on|for|over BAY $", "forget the limit that no bay is over $1"},
	{"^ forget|drop|scratch|lose|scrap|toss|dump|ditch|lift|kill|remove|cancel|skip|strike ?that|the|my|our|this limit|max|maximum|cap|ceiling ?of # ?that ?i|we|you ?had ?have ?put|set|gave|placed|got|hung ?you on|for|over BAY $", "forget the limit that no bay is over $1"},
	{"^ ?about that|the|my|our|this # !(limit|max|maximum|cap|ceiling|minimum|min) ?that ?i|we|you ?had ?have ?put|set|gave|placed|got|hung ?you ?on|for|over !GAP|OPENING|BAY|RAIL ?that ?i|we ?gave|set|told|put ?you ?on ?in ?earlier|before , ?just ?you ?can forget|drop|scratch|lose|scrap|toss|dump|ditch|lift|kill|remove|cancel|skip|strike it|that ?one ?about ?it ?now $", "forget the $2 of $1 on the $3"},
	{"^ ?about that|the|my|our|this # !GAP|OPENING|BAY|RAIL !(limit|max|maximum|cap|ceiling|minimum|min) ?that ?i|we ?gave|set|told|put ?you ?on ?in ?earlier|before , ?just ?you ?can forget|drop|scratch|lose|scrap|toss|dump|ditch|lift|kill|remove|cancel|skip|strike it|that ?one ?about ?it ?now $", "forget the $3 of $1 on the $2"},
	{"^ ?about that|the|my|our|this # !GAP|OPENING , ?just ?you ?can forget|scratch|lose|scrap|toss|dump|ditch|kill|remove|cancel|skip|strike it|that ?one ?about ?it ?now $", "forget the $2"},
	// Posts that are added, and where the opening begins.
	{"whatever|anything|(the ones|one|post|posts) ?post|posts ?that ?we|i|you|they|he|gets|get|is|are add|added|adds|set|put|stick|plant|stand|drop|goes|go ?up ?in|to|at|on ?the MIDDLE|between ?of ?them|it|ends is|are|will|should|gets ?be ?a @", "the added post is $1"},
	{"from|off ?of !left|right ?hand ?end ?post ?you ?i ?we ?just come|go|measure|slide|move|run|pull|count|step|travel ?on|down over|in|out|along|across # , ?and|then ?, that|there|it is ?the ?spot|place ?where|begins OPENING|(walk through)|(way through) starts|start|begins|opens|goes|sits|is", "the opening starts $2 from the $1 post"},
	{"from|off ?of !left|right ?hand ?end ?post ?you ?i ?we ?just come|go|measure|slide|move|run|pull|count|step|travel ?on|down over|in|out|along|across # and|then that|there|it is ?the ?spot|place ?where|begins OPENING|(walk through)|(way through) starts|start|begins|opens|goes|sits|is", "the opening starts $2 from the $1 post"},
	{"come|go|measure|slide|move|pull|count|step ?on|down over|in|out|along|across # from|off ?of !left|right ?hand ?end post ?, ?and|then ?, ?that|there ?is ?the ?spot|place ?where|for|begins|to|start ADDED POST ?stands|goes|sits|is|lands|belongs ?there $", "the new post is $1 from the $2 post"},
	{"from|off ?of !left|right ?hand ?end ?post ?you ?i ?we ?just come|go|measure|slide|move|run|pull|count|step ?on|down over|in|out|along|across # ?, ?and|then ?, ?that|there ?is ?the ?spot|place ?where|for ADDED POST ?stands|goes|sits|is|lands|belongs ?there $", "the new post is $2 from the $1 post"},
	{"come|go|measure|slide|move|pull|count|step ?on|down over|in|out|along|across # from|off ?of !left|right ?hand ?end post ?, ?and|then ?, ?that|there ?is ?the ?spot|place ?where|for|begins|to|start OPENING|(walk through)|(way through) ?starts|begins|opens|goes|sits|is", "the opening starts $1 from the $2 post"},
	{"whatever|what|(the same ?gap|space) ?gap|space ?that you|we|i|they ?want|will put|leave|use|set|run|have|figure|get in|between ?between RAIL , ?then ?you ?i ?we ?want|please ?want put|use|leave|run|do|have|give that|it|the ?same ?exact ?much|one ?down|in UNDER ?the BOTTOM ?RAIL|one ?too|also|(as well)", "bottom gap same as the gap"},
	{"whatever|what|(the same ?gap|space) ?gap|space ?that you|we|i|they ?want|will put|leave|use|set|run|have|figure|get in|between ?between RAIL put|use|leave|run|do|have|give that|it|the ?same ?exact ?much|one ?down|in UNDER ?the BOTTOM ?RAIL|one ?too|also|(as well)", "bottom gap same as the gap"},
	// At the saw.
	{"i|we am|are|will|have|had ?be ?been ripping|ripped|rip|milling|milled|mill|planing|plane|planed|resawing|splitting|sawing ?me|us ?up|down|out ?all ?of ?some @ ?out|down|up for|as|into ?all ?the ?my ?our !STIFF|RAIL|POST", "the $2 are $1"},
	{"i|we|i|they rip|ripped|mill|milled|plane|planed|split|resaw ?me|us ?up|down|out ?all ?of ?some @ ?out|down|up for|as|into ?all ?the ?my ?our !STIFF|RAIL|POST", "the $2 are $1"},
	{"for|to ?the ?my ?our guy|man|fella|fellow|father|kid|girl|lady|crew|boys|guys|one ?who ?is ?running|working|at|on|by ?the ?chop|miter|table saw ?station ?over|out ?there|back|yonder $", ""},
	{"!cuts|lengths|list|spreadsheet|csv for|to ?my ?our fellow|father|kid|boy ?over|out ?there|back|yonder $", "$1"},
	{"give|hand|get|send fellow|father|kid ?his !cuts|lengths|(cut list)", "give me the $1"},
	{"so ?that|as i|we|he|you|PERSON ?can|could|only|just ?to ?only ?just set|use|make|clamp|run|rig|have|leave ?up ?just ?me ?us one|a|the|single ?same stop|jig|setup|(stop block|stops)|stopblock ?up ?on|at ?the ?saw ?for ?it|them|everything|all ?of ?them ?and ?be|go ?done|home", ""},
	{"least|smallest|littlest ?bit|amount ?of ?stuff|wood|lumber|junk left|laying|lying|going|winding|ending|landing ?over|up ?laying|lying ?on|in|over FLOOR|pile|dumpster|trash|bin|dump|bonfire ?pile", "least waste"},
	{"if ?what ?my|our|his|the marks|lines ?all wander|wanders|drift|drifts|creep|stray|slip|walk|wobble ?off ?by # ?on|at|with ?each|every ?one|mark ?, ?then ?and ?show|tell ?me|us what that|it|this does|comes|adds|costs|do ?to ?up ?to", "what if each mark is off $1"},
	{"?what if each|every|all ?of ?my|our|the ?mark|marks|one|cut|board ?is|are off ?by # ?on|at|with ?each|every ?one ?, ?then ?and show|tell ?me|us what that|it|this does|comes|adds|costs|do ?to ?up ?to", "what if each mark is off $1"},
	{"mark|round|set|pencil|scribe|figure|measure|lay ?out each|every ?single ?mark|one|line|gap by itself|(its own)|(its own self)|alone ?, ?so ?that ?nothing|they|it|errors|error ?do ?does ?not ?ever creeps|creep|drifts|drift|walks|walk|wanders|wander|(stacks up)|(stack up)|(adds up)|(add up)|(piles up)|(pile up)|accumulates|accumulate ?on ?me|us", "even gaps"},
	{"every|all|each GAP ?between ?RAIL ?to ?be ?right dead|bang|spot on|nuts|exact|true ?, ?and ?mark|round ?each|every ?one|mark ?by ?itself|(its own) ?so ?that ?nothing ?creeps|drifts|walks|wanders $", "even gaps"},
	// On the order, and what lies about.
	{"buy|order|get|figure|allow|add|tack|throw ?me|us ?in|on # over|extra|more|above for|against|(to cover)|(that covers)|(in case|on account of|because of) ?the ?any * culls|boards|sticks|lumber|wood|stock|knots|junk|mistakes|miscuts|goofs|scrap|ones $", "buy $1 extra"},
	{"?just in case|(for when)|(in the event) ?the ?my ?that ?young ?old i|we|he|she|it|they|PERSON|one|some|any|(one of them)|(some of them) ?is|are|was|go|goes|gets|get|ends|end|comes|come ?up miscuts|miscut|messes|mess|screws|screw|botches|botch|ruins|ruin|wrecks|wreck|spoils|goofs|goof|splits|split|drops|drop|boogers|bad|warped|twisted|cupped|crooked|cracked|bust|busts ?up ?one|it|any|some|them|cut|cuts ?up $", ""},
	{"throw|put|add|toss|stick|tack|pitch|slip ?me|us ?on|in # !extra|spare ?RAIL|sticks|ones on|to|onto|in|into order|list|pile|bill|(shopping list)|truck|load|ticket", "buy $1 spare boards"},
	{", ?and ?so ?please count|figure|include|tally those|them|that ?all|both ?in|too|also ?on|with ?it|this|the ?job|list|count|tally ?too $", ""},
	{"material|materials|hardware bill|ticket|tab comes|came|runs|is", "bill comes"},
	// What is chosen, tried and compared.
	{"^ ?the !first|second|third|fourth|fifth ?one|way|option|choice|fix|suggestion|idea ?you|on|of|from|in ?your|the|that ?list|gave|offered|listed|had|bunch ?there ?me|us , ?and|so|yeah ?let ?us|i|we ?will ?am ?are ?going ?to build|do|run|take|try|make|go|use ?with ?it|that|on ?one $", "take the $1 one"},
	{"^ let|i|we ?us ?will build|do|run|take|try|make|go|use ?with !first|second|third|fourth|fifth one|way|option|choice|fix|suggestion ?you|on|of|from|in your|the|that list|gave|offered|listed|bunch ?there ?me|us $", "take the $1 one"},
	{"stack|size|line|set|put|hold|lay|square !(_ ?_) up|off against|beside|(next to)|with|alongside !(_ ?_) ?, ?and tell|show|give|read|see ?me|us ?the ?how|what|where difference|differences|(they differ)|(is different)|(which is better|cheaper)", "compare $1 with $2"},
	{"if i|we|you ?was|were ?to dropped|drop|cut|went|go|back|backed|came|knocked|fell|fall|bumped|bump|jumped|jump|stepped|step ?it|her|them|things ?back|on ?down|up|over|off to # !RAIL|courses|GAP", "if i had $1 $2"},
}
