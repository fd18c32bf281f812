package lexicon

// reports are ways of people who look at a wall with others in mind: an inspector who writes a report, a teacher before a class, a
// clerk with an order, an old hand who shows how it was always done.
var reports = []Entry{
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		[(is there|are there|was there|see|spot|find|do you see|do you have)] (anything|something|any (issue|issues|item|items|point|points|matter|matters|concern|concerns|problem|problems|defect|defects|hazard|hazards|risk|risks|deficiency|deficiencies)) [(else|here|at all|on this|in this|about this|on this one|about it)] [(that|which)] (i|we|one|he|she|they|PERSON) (should|ought to|must|need to|needs to|have to|has to|had better|might|may|could|can|shall|want to) [(be|also|still|really)] (flag|flag up|note|note down|report|write up|write down|cite|mention|raise|bring up|call out|put|record|point out|list|highlight|include|red-tag|log) [(up|down)] [(in|on|for|to)] [(my|the|our|his|her|their)] [(inspection|site|final|safety|field)] [(report|notes|letter|file|record|log|write-up|writeup|memo|summary|owner|client|contractor|builder)]
		[(is there|are there|was there|see|spot|find)] (anything|something) [(else|here)] [(that|which)] (should|ought to|must|needs to|has to|had better) be (flagged|flagged up|noted|reported|written up|cited|mentioned|raised|brought up|called out|recorded|pointed out|highlighted|looked at|addressed|dealt with) [(in|on|for|to)] [(my|the|our|his|her|their)] [(inspection|site|final|safety|field)] [(report|notes|letter|file|record|log|memo|summary)]
		[(is there|are there)] (anything|something) [(here|else)] worth (flagging|noting|mentioning|reporting|raising|writing up|pointing out|recording|bringing up|knowing|worrying about|watching|a mention|a note|a warning) [(in|on|for|to)] [(my|the|our|his|her|their)] [(inspection|site|final|safety|field)] [(report|notes|letter|file|record|log|memo|summary)]
		what [(all|else)] (should|would|must|do|ought) (i|we|you|one|an inspector|PERSON) [(have|need|to)] [(to)] (flag|flag up|write up|red-tag|call out|cite|point out) [(here|on this|on this one|about this|about it|in this|in my report|in the report|for the owner)]`},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		(what|which) (numbers|counts|amounts|quantities|number) of RAIL (could|can|might|would|will|may|are|is|do|does|should) [(i|we|you|one|PERSON)] [(be|to)] [(choose|pick|select|take|have|use|go with|try|work|fit|do|go|possible|open|available|allowed|there|ok|okay|on offer|on the table)] [(from|among|between|with|to (us|me)|in)]
		(what|which) RAIL (numbers|counts) (could|can|might|would|will|may|are|do|should) [(i|we|you|one|PERSON)] [(be|to)] (choose|pick|select|take|have|use|go with|possible|open|available|allowed|ok|okay) [(from|among|between|with|to (us|me))]
		(what|which) (GAP|opening|bay) (sizes|widths) (could|can|might|would|will|may|are|do|should) [(i|we|you|one|PERSON)] [(be|to)] (choose|pick|select|take|have|use|go with|work|fit|possible|open|available|allowed) [(from|among|between|with|to (us|me))]`},
	{Kind: Tail, Key: "show it all", Loose: true, Ways: "(and|) [(,)] (leaving|leave|skipping|skip|omitting|omit|hiding|hide|sparing|spare|missing|miss|dropping) nothing [(out|back|over)]"},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		(see|show|give|read|have|hear|write out|spell out|print|go through|run through|work through) [(ME)] [(the|your|all|of)] (whole|full|entire|complete|all|every bit of|every line of|every step of|every last bit of) (sum|sums|arithmetic|derivation|math|maths|working|workings|calculation|calculations|proof|figuring|reckoning) [(,|and|-)] (leaving|leave|skipping|skip|omitting|omit|hiding|hide|missing|miss|sparing) (nothing|no (step|line|steps|lines|bit|part|detail|details)) [(out|back|over)]
		(see|show|give|read|have|hear|write out|spell out|print|go through|run through|work through) [(ME)] [(the|your|all|of)] (whole|full|entire|complete|all|every bit of|every line of|every step of|every last bit of) (sum|sums|arithmetic|derivation|math|maths|working|workings|calculation|calculations|proof|figuring|reckoning) [(,|and|-)] without (leaving out|skipping|omitting|hiding|missing|skipping over) (anything|a thing|(a|any|one|a single|even one|even a single) (step|line|bit|part|detail)|steps|lines|any steps)`},
	{Kind: Fill, Key: "fill", Ways: `
		(that|this|those|these|the|which|any|your|such a) (particular|specific)
		(for|in|as|to begin|to start|with) (today|tomorrow|this week|this lesson|this period|this morning|this afternoon|the class|our class|this class) ['s] (example|exercise|lesson|problem|sample|case|demonstration|demo|assignment|project|task|activity|puzzle)
		(for|in|as|with) (our|my|the|this|that|a|your) [(worked|sample|first|second|next|little|simple|practice|class|new|old)] (example|exercise|lesson|problem|demonstration|demo|assignment|puzzle)`},
	{Kind: TailFill, Key: "to order", Ways: "[(in|on|onto|to)] [(on)] top of [(the|my|our|his|her|their|that|this)] (order|ticket|shopping list|bill|purchase order|lumber order|list)"},
	{Kind: TailFill, Key: "same lot", Ways: `
		[(all|and)] [(cut|cuts|sawn|made|ripped|taken|got|coming|to come|to be cut)] (out of|from|off|off of) [(the|this|that)] same (lot|pile|batch|stack|bundle|stock|lumber|wood|boards|material|order|load|lift|pack|rack|stuff|sticks|bunk|delivery)
		while (i|we|you|he|she|they) (am|are|is) (at it|cutting|about it)`},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: `
		(do not|never|not) let [(the|any|an|our|my|your)] (error|errors|rounding|rounding error|rounding errors|roundings|slop|difference|differences) (creep|drift|wander|grow|add|pile|build|stack|run|carry|snowball|accumulate|compound|spread|mount) [(along|on|up|down|across|over|in|forward|through)] [(the|from|all)] [(WALL|mark to mark|RAIL to RAIL|one mark to the next|one (rail|board) to the next|way up|way)] [(up|along|down)]
		[(do|please)] not let [(the|any)] (rounding|error|errors) [(errors|error)] get (away from|ahead of) (me|us|you)`},
	{Kind: Part, Key: "bracket", Sense: Meaning("| bracket thickness, bracket clearance, bracket reach, bracket ear, price, fit, ?hardware"), Ways: "BRACKET (iron|irons|strap|straps|stock|gauge metal|sheet metal|material|flange|flanges)"},
	{Kind: Part, Key: "bracket ear", Sense: Meaning("bracket ear"), Ways: `
		(it|they|each|each one|each of them|and|the ends|the end) [(also)] (poke|pokes|poking|stick|sticks|stand|stands|jut|juts|project|projects|extend|extends|protrude|protrudes|reach|reaches|lap|laps|hang|hangs|run|runs) [out] [(above and below|up and down|up)] (past|beyond|above|over|proud of) [(each|the|its|a)] RAIL
		BRACKET (poke|pokes|jut|juts|protrude|protrudes|lap|laps|stand|stands|stick|sticks|sit|sits|is|are) [out] (proud of|past|beyond) [(each|the|its|a)] RAIL [by]`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		(quoted|estimated|stated|claimed|invoiced|billed|listed|submitted) (total|price|cost|bill|amount|sum|figure|grand total) [(is|of|was|comes to|came to|:)]
		(note|item|detail|sheet|page|line|paragraph|section) [(no|number|#)] NTH (on|of|in|from) PAPER (SAYS|SHOWS|calls for|requires|gives)`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		(does|do|did|will|would) (that|it|this|those|they|these|he|she|PERSON) (agree|tally|match|square|jibe|line up|check) [up] with (yours|mine|ours|what you (have|get|got)|your (figure|figures|number|numbers|sum|sums|count|total|own|result|results|answer))
		(is|are) (that|it|this|those|they|these) what (you|we) (have|get|got|find|come up with|make it)`},
	{Kind: Fill, Key: "fill", Ways: `
		(i|we) (was|were) [always] (taught|trained|schooled|brought up|raised) [to (have|keep|make|put|leave|set|give|use|allow)]
		(with|leaving|leave) [(the|all|any|sales)] (tax|taxes|vat) (left off|left out|off|out|aside)
		(before|without|excluding|not counting|less) [(the|any|sales)] (tax|taxes|vat)
		let us (ask|see what|hear what) (computer|program|machine|app|tool|thing|contraption) [(says|thinks|makes of (it|that)|has to say|comes up with)]
		to (a|an|my|the|our) (five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|5|6|7|8|9|10|11|12|13|14) [-] year [-] old [(child|kid|boy|girl|pupil|student|son|daughter)]
		(here be|here is) a good place to (start|begin)`},
	{Kind: TailFill, Key: "for information", Ways: "fyi\njust so you know\nfor your information\nfor the record\nfor what it is worth"},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: "[(it|this|that|all|everything)] [(done|built|made)] [as] (cheap|cheaply) as (chips|dirt|can be|they come|it comes|it gets|it will (go|come|get)|mud)"},
	{Kind: Quest, Key: "options", Loose: true, Ways: "[(what|which|is|the|what is)] (range|ranges|spread|choice) of (GAP|RAIL counts|rail counts|gap sizes|numbers of RAIL|counts of RAIL|openings|heights) [(that|which)] (would|will|could|can|might|do|does|still|is|are) [(still|all)] (fit|work|do|go|hold|possible|allowed|open to (me|us)|available)"},
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		(would|will|does|do|could) [(the|my|our|your|that)] (answer|answers|result|results|layout|picture|plan|design|outcome|sums|figures|numbers|drawing) (change|differ|shift|alter|be different|come out different|come out differently|be the same|stay the same|still hold|hold) [(at all|much|any)] if
		how (would|will|does|do) [(the|my|our|your|that)] (answer|answers|result|results|layout|picture|plan|design|outcome|sums|figures|numbers|drawing) (change|differ|shift|alter|come out|look|turn out) if`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		(what|how much|which) [(all|else|lumber|wood|timber|boards|material|materials|stuff)] (would|will|shall|do|should|might|am|are) (i|we|he|she|they|PERSON) [(be|have to)] (need|needing|want|wanting|get|getting|fetch|fetching|buy|buying|order|ordering|pick up|picking up|collect|collecting) (from|at|off) [(the|my|our|a)] (merchant|merchants|merchant 's|yard|store|shop|lumberyard|lumber yard|timber yard|mill|sawmill|supplier|suppliers|dealer|counter|hardware store|builders' merchant)
		(what|how much|which) [(all|lumber|wood|timber|boards|material|materials|stuff)] (would|will|shall|should|might) (i|we) be (needing|wanting|buying|ordering|fetching) [(in all|altogether|all told|for (this|it|the wall|the job))]`},
	{Kind: Dim, Key: "apart", Sense: Meaning("| gap, stiffener spacing, span, centers"), Ways: "asunder\napart the one from the other"},
	{Kind: TailFill, Key: "hereabouts", Ways: "(hereabouts|round here|around here|in these parts|round these parts|out this way)"},
}
