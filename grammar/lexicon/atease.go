package lexicon

// atEase are ways of people who talk at ease: turns that go on from what they have just said, and take it back.
var atEase = []Entry{
	{Kind: To, Key: "to", Ways: "(all the way|on|clear|right|anywhere) (up|out|over|on up) to"},
	{Kind: Fix, Key: "fix", Ways: `
		[(no|nope|nah|or|wait|oh)] (scratch|strike|forget|cancel|scrap|nix|ignore|disregard|erase|drop|reverse) (that|it) [(,|-|--)] [(and)] (make|call|say) (it|that)
		[(no|nope|nah|or|wait|oh)] (never mind|nevermind) [that] [(,|-|--)] [(and)] (make|call|say) (it|that)`},
	{Kind: Head, Key: "why", Ways: `
		[(is|was|would) there [(be)]] (some|any|a|one) [(good|particular|real|special|sound|earthly)] reason [(why|that|for|behind)]`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		(is|was|are|were) (that|this|it|those|these|they) the (right|correct|true|proper) (length|lengths|height|width|size|figure|figures|number|numbers|count|amount|measurement|measurements|gap|spacing|cut|cuts|distance|price|total|answer|one|ones|thickness)`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		(does|do|did|has|have|had) (he|she|they|PERSON|PAPER) (have|get|got|do|figure|count|add|work|read|write|put) (that|it|this|them|those) [(up|out|down)] (right|correct|correctly|wrong|straight)`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		(i|we) (was|were|have been|got|am being|are being) (told|advised|instructed|asked|ordered) [(by PERSON)] to (cut|saw|trim|cut off) [(all|each)]
		(i|we) (was|were|have been|got|am being|are being) (told|advised|instructed) [(by PERSON)] to (leave|have|use|make|set|put|keep|go with|space|build|expect|figure on|allow)`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(anything|something|what|is there anything|is there something) [(here|on this one|about this|on this|in this|with this|on it|about it)] [(that|which|else|in particular)] [(i|we|you|one|somebody|a beginner)] [(could|can|might|may|would|should|will|am likely to|are likely to|tend to)] [(easily|most easily)] (mess|mess up|screw|screw up|goof|goof up|botch|get wrong|do wrong|trip over|trip up on|trip on|ruin|foul up|bungle|go wrong on|be sorry about|regret|overlook|miss|slip up on|stumble over) [up] [(here|on this|with this|on this one|with this one|on it|about it|with it)] [if (i|we|you) (am|are) not (careful|watching|paying attention)] [if (i|we|you) (am|are) (careless|sloppy|hasty|in a hurry)] [(if|when) (i|we|you) (do not (watch|watch it|pay attention|look|look out|take care)|rush|hurry|get careless)]
		(whether|if) there (is|are) (anything|something|some things|things|any dangers|any risks|any pitfalls|any problems) [else] [(that|which)] [(i|we|one|you)] [(should|ought|need|must|have|might)] [(to)] (worry|be worried|be careful|be aware|beware|watch out|look out|watch|know|mind|keep in mind|take care|pay attention) [(about|of|for|out for|with|to)] [(here|first|beforehand)]
		what is (easy|easiest|likely) to (get wrong|mess up|screw up|go wrong|botch|overlook|miss|forget) [(here|on this|with this|on this one|with this one|about this)]
		(where|how) (do|would|could|might) (people|folks|beginners|most people|i|we) (usually|mostly|often|typically|generally) (go wrong|mess up|screw up|slip up|trip up|make mistakes|get it wrong)`},
	{Kind: Extra, Key: "extra", Ways: `
		(besides|apart from|aside from|on top of|in addition to|over and above|other than|separate from|nothing to do with) [(the|this|that|my|our)] (wall|halfwall|job|project) [itself] [(i|we)] [(will|would|am|are)] [(also)] [(need|want|be wanting|be needing|like|have|be after|take|cut)]`},
	{Kind: HaveTail, Key: "have", Ways: `
		[(left|leftover|leftovers|remaining|saved)] [(over|behind)] from [(the|my|our|a|an|his|her|some)] (last|old|other|previous|earlier|past|former|another) [(other)] (summer|year|spring|fall|autumn|winter|week|month|season|job|project|deck|fence|shed|wall|house|garage|porch|build|remodel|addition|time|one)
		(left|leftover|leftovers|remaining|saved) [(over|behind)] (from|off) [(the|my|our|a|an|his|her|some)] (deck|fence|shed|wall|house|garage|porch|build|remodel|addition|dock|treehouse|barn|stairs|pergola|gazebo|swing|sandbox|playset|bench|table)
		[(lying|laying|leaning|stacked|standing|sitting|piled|stashed|stored|put by|waiting)] [(up|around|about|there|out)] (in|behind|against|by|under|beside) [(the|my|our|a|one)] [(far|back|garage|shed|barn|shop|garden|side)] (corner|rafters|loft|carport|driveway|yard|wall|fence|pile|stack|rack|attic|trailer|lean to|outbuilding|hayloft)`},
	{Kind: TailFill, Key: "plainly", Ways: `
		[(,)] (the|same) way (you|one|we|i|PERSON) (would|might|could|do|does) (teach|show|tell|explain it to|explain this to|explain to|do it for|do for|do with|talk to) [(a|an|the|my|your|any)] (PERSON|youngster|child|beginner|novice|newcomer|greenhorn|toddler|schoolboy|schoolgirl|schoolkid|dummy|stranger|layman|starter|rookie|amateur)
		[(,)] (like|as|as though|as if|pretend) (you|one|we|i|PERSON) (would|might|could|do|does) (teach|show|tell|explain it to|explain this to|explain to|do it for|do for|do with|talk to|to|for|with) [(a|an|the|my|your|any)] (PERSON|youngster|child|beginner|novice|newcomer|greenhorn|toddler|schoolboy|schoolgirl|schoolkid|dummy|stranger|layman|starter|rookie|amateur)
		[(,)] (like|as if|as though) (i|we|he|she) (am|are|was|were|is) (a|an|your|the|just a) [(complete|total|absolute|young|rank|raw)] (PERSON|youngster|child|beginner|novice|newcomer|greenhorn|toddler|schoolboy|schoolgirl|schoolkid|dummy|stranger|layman|starter|rookie|amateur|five year old|ten year old)
		[(,)] (like|as if|as though) (i|we) (am|are|was|were) (new to (it|this)|five|ten|slow|green|stupid)
		[(,)] (nice and|real|good and|plenty) (slow|slowly)`},
	{Kind: Have, Key: "have", Ways: `
		[(i|we)] [(have|had|just|already|also|went and|have got)] (picked up|grabbed|scored|snagged|scrounged|scrounged up|rounded up|lined up|salvaged|hauled home|brought home|brought back|dug up|dug out|laid in|got hold of|saved|set aside|put by|kept) [(already|me|myself|us|ourselves|some|another|just)]`},
	{Kind: Cmd, Key: "forget rest", Ways: "(forget|drop|scrap|scratch|remove|delete|clear|erase|toss|lose|ditch|chuck|bin|dump|trash|junk|nix|kill) rest"},
	{Kind: PriceVerb, Key: "price", Ways: "(have|has|is|are) [(all|now)] (gone|crept|climbed|jumped|shot|come|dropped|risen|fallen) [(up|down|way up)] to\n(have|has) gone for"},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: `
		(inside|clear|face) [(from)] POST to POST
		[from] POST to POST (inside|in the clear|clear|face to face|on the inside|between faces)
		[from] (inside|face) of [(one|the)] POST to (inside|face) of [the] (other|next) [(one|POST)]`},
	{Kind: Dim, Key: "oc", Sense: Meaning("centers | stiffener spacing"), Ways: "(ctr|center|centre|cl) (ctr|center|centre|cl)\n(ctr|cl) to (ctr|cl)"},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		(what|which) (gaps|spacings|spaces|openings|heights|widths|combinations|layouts|arrangements|setups|sizes of gap) (would|will|could|can|do|might|are) [(i|we|you)] (work|fit|do|go|be ok|be okay|be possible|possible|allowed|have|use|choose|choose from|pick from|get away with|available|on the table|open to ME)`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		(what|how much|which) [(all|kind of)] (lumber|wood|timber|material|materials|stuff|boards) (shall|will|would|am|are|do|should) (i|we) (be wanting|wanting|be needing|needing|be after|be buying|be ordering|require|be getting|have to lay in|lay in)`},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		[(whatever|whichever|the one that|the way that|one that)] (uses|takes|needs|eats|eats up|burns) [up] (the least|least) (lumber|wood|timber|material|boards|stock)
		(whatever|whichever|the one that|one that) (wastes|throws away|loses|scraps) (the least|least)`},
	{Kind: Lean, Key: "leans", Ways: "(tipping|tilting|canted|canting|cocked|listing|lists|leaning over|tips over|leans over) [(over|in)]"},
	{Kind: TailFill, Key: "no matter", Ways: `
		(i|we) (do not|no longer|could not) (care|mind) [(anymore|any more|about it|about that|any longer|now|either way)]
		(it|that) (does not|no longer) (matter|matters) [(anymore|any more|now)]
		(it|that) is (no|not a) (matter|issue|concern|worry) [(anymore|any more|now)]`},
	{Kind: Fill, Key: "fill", Ways: `
		(i|we) (would|should|'d) (sooner|rather|just as soon) [(have|use|see|go with|go for|put in|do|take|keep)]
		[(the|my|our)] (ORG|building department|permit office|building office|planning office|zoning board|authorities|code|building code|hoa|homeowners association) (insists on|insist on|requires|require|wants|demands|demand|calls for|asks for|is asking for|goes by|goes for)
		(RAIL|lumber|wood|material|materials|stuff|everything) ['s] [(is|are|has gotten|have gotten|has got|have got|got|gets|is getting|are getting)] [(so|too|awful|awfully|very|mighty|pretty|real|really|terribly)] (dear|expensive|pricey|costly|precious) [(these days|nowadays|now|this year|right now|lately)]
		(RAIL|lumber|wood|material|materials|stuff|everything) (costs|cost|is costing|are costing) (a (fortune|lot|bundle|packet|mint|bomb|ton)|the earth|an arm and a leg|too much|plenty|so much|dearly|real money|good money) [(these days|nowadays|now|this year|right now|lately)]
		(thank you|thanks|many thanks|cheers) [(very|so|ever so)] [much] for [(the|your|all|all the|all your|those|these)] (suggestions|suggestion|ideas|idea|options|option|choices|list|offer|offers|proposals|remedies|fixes|ways|advice|tips|help|patience|alternatives)
		(at|from|in|down at|over at|out at|up at) (the|our|my|a|that|your) [(local|nearby|big|corner|closest|nearest|other|usual)] [(hardware|lumber|building supply|home|farm|home improvement|building)] (store|shop|yard|lumberyard|merchant|merchants|supplier|suppliers|center|centre|depot|place) (downtown|in town|in the village|here|nearby|near (us|me|here|by)|down the (road|street|hill)|around the corner|by (us|me|our place)|out our way|where i live)
		(at|from|in|down at|over at|out at|up at) (the|our|my|a|that|your) [(local|nearby|big|corner|closest|nearest|other|usual)] (hardware|building supply|home improvement|farm supply) (store|shop|yard|merchant|supplier|center|centre|place)
		(at|from|in|down at|over at|out at|up at) (the|our|my|a|that|your) (local|nearby|big|corner|closest|nearest|usual) (lumber|) (store|shop|yard|lumberyard|lumber yard|merchant|merchants|supplier|suppliers|center|centre|place)
		at (our|my) (store|shop|yard|lumberyard|lumber yard|merchant|supplier)
		from (store|shop|lumberyard|lumber yard|merchant|hardware store)`},
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: `
		(teach|show|tell|explain to) ME , (slowly|please|step by step|patiently|carefully|in plain words|simply) , how (one|you|we|i|it|they|people|a person) (get|gets|find|finds|figure|figures|work out|works out|calculate|calculates|compute|arrive|arrives|come|comes) [(to|at|up with)]
		(teach|show|tell|explain to) ME (patiently|carefully|in plain words|simply|in simple terms) how (one|you|we|i|it|they|people|a person) (get|gets|find|finds|figure|figures|work out|works out|calculate|calculates|compute|arrive|arrives|come|comes) [(to|at|up with)]`},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(waste|lose|scrap|throw out|throw away) as little of (it|that|this|them|the (lumber|wood|timber|stuff|material)) [as (possible|(you|we|i|one) (can|could|possibly can)|can be|may be)]
		(do not|not|never|let us not) waste (any|any of it|a (scrap|stick|splinter|bit|board|foot|inch)|one (bit|scrap|stick)) [of it]`},
	{Kind: OffEach, Key: "tolerance", Loose: true, Ways: `
		(all|every|each|my|the|all my|all the) (cuts|marks|pieces|boards|rails|cut|mark|piece|board|rail) [(are|is|were|was|come out|comes out|came out)] (off|out|wrong) [by]`},
	{Kind: Cmd, Key: "quit", Loose: true, Ways: `
		(done|finished|through|that is it|that is all|all done|all set|bye) [(here|now|for today|for now)] [(,|and|;|.)] (out|i am out|signing off|over and out|logging off|checking out|heading out|see ya|see you|later|i am off|i am gone|gone)
		(over and out|signing off|logging off|checking out|i am out of here|time to pack up|pack it in|quitting time|clocking off|clocking out|knocking off)`},
	{Kind: TailFill, Key: "enough", Ways: "(should|ought to|will|would) (do|manage|cover|handle) (it|the (trick|job)|nicely|(us|me) [(fine|nicely)])"},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: "[(my|the)] (tape|rule|ruler|measure) [(only|just)] (does|counts|comes|comes in|has got|got|has only|divides into|is divided in|is ruled in) [(in|to|down to)]"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("bay | stiffeners, stiffener spacing, rails, gap, stiffener size, rail size, bays, short, cut, measured, opening, added posts"), Ways: "(dead|smack|smack dab|right|square|plumb) (center|centre|in the (middle|center|centre)) [(of|in)] (each|every) BAY"},
	{Kind: Head, Key: "why not", Loose: true, Ways: `
		(what|why) (is|are|was) (holding|keeping|stopping|blocking|hindering) (me|us|you|it) [back] [(from (having|using|getting|doing|going with|making))]
		(what|why) (is|are) (holding|keeping) (me|us|you|it) back from`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: "(where|how high|how high up) (do|does|should|must|will) (first|second|third|fourth|next|last|top|bottom|lowest|highest) MARK [(go|sit|fall|come|land|belong|be)]"},
	{Kind: Cmd, Key: "next", Loose: true, Ways: "what is the step after (that|this)\nwhat (do|should|must) (i|we) do after (that|this)\nwhat comes after (that|this)\n(and|ok|now) the (next|following) (one|step)"},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: "(stand|hold|keep|raise|lift|set) [(added|new)] POST [(up)] (off|up off|clear of) [of] FLOOR [by]"},
	{Kind: Part, Key: "bracket clearance", Sense: Meaning("bracket clearance"), Ways: "(or|or else|else|otherwise) (they|it|those) [(will|would|shall)] (clash|meet|bump|touch|foul|collide|hit|overlap|interfere|bind) [(with)] [(one another|each other|together)]"},
	{Kind: Dim, Key: "apart", Sense: Meaning("| gap, stiffener spacing, span, centers"), Ways: "apart from (next [(one|board|rail)]|each other|one another|its neighbor|the one (above|below))\n(away|off) from (each other|one another)"},
	{Kind: Dim, Key: "face to face", Sense: Meaning("span | bay, opening"), Ways: "(on|at|along) the inside [(faces|face)]"},
	{Kind: Head, Key: "check", Loose: true, Ways: "(i am|we are) (told|given to understand|led to believe) [(that|by PERSON)]\n(i|we) (hear|hear tell|understand|gather|read [somewhere]) that"},
}
