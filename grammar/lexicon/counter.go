package lexicon

// counter are words of whoever stands behind a counter and speaks of a customer: what is on the racks and what is gone, what
// it rings up at, what somebody came in for and what they have at home.
var counter = []Entry{
	{Kind: Sell, Key: "sell", Loose: true, Ways: `
		(all|everything|whatever|only thing|only lengths|only ones) [that] (we|they|yard|store|shop|i) (got|have|have got|stock|carry|sell|keep|can get|had) [left] [(over|out back|in back|out there|in yard|on lot|in shed|on rack|in stock|on racks|here|on hand|onhand)] [(at the moment|right now|today|this week|this morning)] (is|are)
		(we|they|yard|store|shop|i) (got|have|have got) left [(out back|in back|out there|in yard|on lot|in shed|on rack|on racks|here)] [(today|right now)]
		what (we|they|yard) (got|have|have got|stock|carry) [left] [(out back|in back|on rack|on racks|in yard|on lot)] [(today|right now)] (is|are)
		(rack|racks|pile|piles|yard|shelf|lot|shed) (has|have|holds|hold|is full of|shows|show|got) [(only|just|nothing but)]`},
	{Kind: Sell, Key: "sell", Ways: `
		(we|they|yard|store|shop) (are|is) [(now|currently)] (down to|left with|stuck with) [(just|only|nothing but)]
		(they|yard|store|shop|lumberyard|we|you|supplier|merchant|he|place) (have|has) also (got|gotten)
		(sold|sell|sells|selling|load|loaded) (him|her|them)
		(set|fix|fixed) (him|her|them) up with
		(put|start|started|send|sent) (him|her|them) (in|into|out with|home with)`},
	{Kind: Have, Key: "have", Ways: "(i|we) [have] [(already|just)] (bought|picked up|purchased|got hold of|brought home) [already]"},
	{Kind: Sell, Key: "sell", Ways: "(i|we) [have] [(already|just)] bought"},
	{Kind: SellLess, Key: "-=", Ways: `
		(they|we|yard|store|shop|place|supplier|lumberyard|merchant|he|she) [(have|has)] [just] (ran|run|sold|running) out of
		(they|we|yard|store|shop|place|supplier|lumberyard|merchant) (do|does) not (have|carry|stock|sell|keep|get) [any]
		[just] (sold|moved|shipped|loaded|let go of|parted with) [(him|her|somebody|someone|a guy|them)] (our|the|my) [very] last [(of the|few|couple|couple of|stack of|pile of|of our|of my|bundle of|load of)]
		that (was|is) (our|the|my) [very] last [of the]
		[just] (cleaned|sold|run|ran|clean|fresh|plumb) out of [our]
		(is|are|was|were) (done|finished|discontinued|backordered|back ordered|on backorder|cleaned out|picked over|all sold|spoken for)
		(do|does) not have [(any|a single one of|none of)] [(the|more)]`},
	{Kind: SellLess, Key: "-=", Ways: `
		(is|are|was|were) [all|just about|clean|nearly|now] (gone|sold out|cleaned out|out)
		(is|are) all (gone|sold|out)`},
	{Kind: Fill, Key: "fill", Ways: `
		[(the|my|our|this|that|some|a|next)] PERSON (on the phone|up front|at (the|) (counter|desk|register|door|window)|here|out front|in (the|) (back|front|office|truck|aisle)|on the line|in line|over there|in front of ME) (wants|needs|would like|asked for|is asking for|is getting|will take|insists on|wants it) [to (be|have)]
		(on|for|at) (his|her|their|my|our) (porch|patio|deck|stoop|veranda|terrace|cabin|cottage|place)
		on [the] back (porch|patio|deck|stoop)
		on account of [(the|my|our|his|her|their)] (grandkids|grandchildren|kids|dog|dogs|baby|cat|cats|toddler|children|puppy)`},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: "between (his|her|their) [(two|end|two end|existing|porch)] (POST|uprights)"},
	{Kind: Part, Key: "wall", Sense: Meaning("wall height | *"), Ways: "[(the|my|our|this|that|some|next)] (PERSON|he|she|they) [(on the phone|up front|at (the|) (counter|desk|register)|here|out front)] [(is|are)] (putting in|putting up|building|making|doing|planning|thinking of|thinking about|having ME build|looking to build|wanting to build|going to build|setting up|replacing|redoing) [a] [(little|new|small|low|short)] WALL"},
	{Kind: Rel, Key: "<=", Loose: true, Ways: "(i|we|he|she|they|PERSON) (do|does|would|will|can) not (want|like|have|accept|allow|take|tolerate|permit|stand for) (anything|any|it|them|those|these) (wider|bigger|larger|more|taller|higher|longer|greater|looser) than"},
	{Kind: Rel, Key: ">=", Loose: true, Ways: "(i|we|he|she|they|PERSON) (do|does|would|will|can) not (want|like|have|accept|allow|take|tolerate|permit|stand for) (anything|any|it|them|those|these) (narrower|smaller|less|lower|shorter|tighter) than"},
	{Kind: Part, Key: "through", Sense: Meaning("opening, openings | opening side, opening from left, opening from right"), Ways: "to (get|push|fit|wheel|roll|drive|squeeze|carry|bring|pass|move|haul|let|take|run|ride) [(my|our|his|her|their|a|the)] [(riding|push|garden|new|big|old)] PASSING [(pass|come|go|get|walk)] (through|thru|in and out)\nfor [(my|our|his|her|their|a|the)] [(riding|push|garden|new|big|old)] PASSING to (get|go|pass|come|fit) (through|thru)\nso [that] [(my|our|his|her|their|a|the)] [(riding|push|garden|new|big|old)] PASSING (can|could|will) (get|go|pass|come|fit) (through|thru)"},
	{Kind: Loc, Key: "off ground", Sense: Meaning("| drop"), Ways: "(above|over|off|off of|up from|up off|up off of|higher than) [the] (lawn|grass|dirt|soil|turf|yard|driveway|sidewalk|flower bed|flowerbed|garden)"},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: "drop (at|on|to) the outside [of WALL]"},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: "(evenly|equally|uniformly) spaced GAP\nGAP (evenly|equally) spaced"},
	{Kind: Cmd, Key: "start over", Loose: true, Ways: "(start|begin|open|do|write up|make) [a] (new|fresh|another|different|clean) (ticket|order|job|page|sheet|customer|problem|exercise|one|example|worksheet|estimate|quote)\n(new|next) (problem|exercise|ticket|example|worksheet)\n(next|new) customer [,] (start|begin|clear|wipe|scrap|clean)"},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: "[(a|the|my|his|her|their)] (pull|pick|load|loading|will call|picking|yard) (list|sheet|ticket) [for (this|the|his|her|their) (order|job|customer|wall)]"},
	{Kind: Cmd, Key: "quit", Loose: true, Ways: "(that|this) (will do|does|is) it for (him|her|them|this customer|this one|this job)\n(that|this) is (all|everything) (he|she|they|PERSON) (need|needs|needed|want|wants|wanted|came for) [(today|for now|for today)]"},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: "(lay|plan|cut|set|arrange|work|figure|split|divide) (it|them|this|everything|the cuts|the boards|the lumber) [(out|up)] so [that] (there is|we have|i have|he has|she has|it leaves|we get|there are|he gets|she gets|there will be|we end up with|he ends up with) (LEAST|fewest|as little|hardly any|next to no|almost no|very little|little|not much) WASTE"},
	{Kind: Have, Key: "have", Ways: "(am|are|is) (sitting on|hanging on to|hoarding|holding on to)"},
	{Kind: SellMore, Key: "+=", Ways: "(found|dug up|turned up|unearthed) (some|a few|more|a stack of|a pile of|a few more|some more)"},
	{Kind: TailFill, Key: "so", Ways: "add (those|them|those too|them too|those in|them in)"},
	{Kind: SellMore, Key: "+=", Ways: `
		(a|another|some) [(new|fresh)] (truckload|shipment|load|delivery|pallet|bunk|unit|lift|boatload|trailer load|truck) of
		just (came|rolled|got|gotten) in
		(came|rolled) in (today|yesterday|this morning|now|just now|on the truck|on a truck|off the truck|on the last truck)
		(are|is) in [(now|today|again)]`},
	{Kind: PriceVerb, Key: "price", Ways: `
		[(am|are|is)] (ring|rings|rang|ringing|rung) [(up|them|it)] [(up|at|for|as)]
		[(am|are|is)] (scan|scans|scanning) [(up|them|it)] (at|for|as)
		(i|we|computer|screen|system|register|book|tag|shelf tag|sticker) (show|shows|have|has|list|lists|say|says|see|am showing|are showing|is showing|have got) [(it|them|that|those|these)] (at|listed at|marked at|down as|down for|priced at)
		(is|are) (marked|listed|tagged|stickered|running|ringing up) [(up|down|out|in)] (at|for)
		[(has|have|just)] (went|gone|go|goes|jumped|climbed|dropped|come|came) (up|down) [again] [(on ME|this week|lately|since|last week)] [(,|;)] [(so|and|to)] (i|we|they|computer|screen|system|register|tag) (show|shows|have|has|see|list|lists|say|says|get|am showing|are showing|are at) [(it|them|that|those|these)] [(at|listed at|now at)]
		[(has|have|just)] (went|gone|jumped|climbed|dropped|come|came) (up|down) [again] [(,|;)] [(so|and)] (it is|they are|that is|those are) [now] [(at|up to|down to)]
		(shelf|list|retail|tag|sticker|counter|register) price [(on|of|for)] [(is|are)]
		(we|i) (let|letting) (them|it|those|these) go (for|at)
		(retails|retail|retailing|wholesale|wholesales) (for|at)`},
	{Kind: Each, Key: "each", Ways: "a (throw|shot|head|whack)\nper (each|item)\n(the|per) each"},
	{Kind: Have, Key: "have", Loose: true, Ways: `
		(PERSON|he|she|they) [(already|still)] (owns|own) [already]
		(PERSON|he|she|they) (has|have|had) [(already|still)] (bought|picked up|got|laid in|salvaged|saved|hauled home|set aside)
		(PERSON|he|she|they) (bought|picked up|laid in|salvaged|saved|got hold of|hauled home)`},
	{Kind: HaveTail, Key: "have", Ways: `
		[(sitting|lying|stacked|stored|stashed|left|leaning|piled up|on hand)] [(out|back)] (at|in|on|under|behind|out in) [(his|her|their)] (home|house|place|garage|shed|shop|barn|basement|truck|attic|workshop|cellar|carport|driveway|yard|rafters|lean-to|trailer|porch|deck|back porch|sunroom|storage) [already]
		left (behind|over) (from|by|after) [(the|his|her|their|my|our)] [(last|old|other)] (job|deck|fence|owner|tenants|project|build|house)
		(sitting|lying|stacked|stored|stashed) (at|in) [(his|her|their|my|our)] (place|house|home|garage|basement|yard)
		to start with
		of (his|her|their|my|our) own`},
	{Kind: Extra, Key: "extra", Ways: `
		(tack|throw|toss) on [(an|another)]
		throw in (an|another)
		(he|she|they|PERSON) [also] (wants|needs|want|need|would like|asked for) [(an|another)] (extra|besides|on top|on the side)
		besides [(all|what)] [(that|of that|of it)] [(WALL|it|this|we|i|he|she)] [(takes|take|needs|need|wants|uses|calls for)]
		(over and above|on top of|in addition to|apart from|aside from) [what] WALL [(takes|needs|uses|calls for|wants)]
		(practice|sample|test|demo|scrap|demonstration) (piece|pieces|board|boards|stick|sticks|cut|cuts|length|lengths) [of]`},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: `
		[POST] (base|bases|foot|standoff|bracket) [that] (he|she|they|i|we|you|PERSON) (picked|chose|bought|has|have|got|likes|wants|selected|uses|use|ordered|found|is getting|are getting) [out] (holds|hold|lifts|carries|keeps|raises|puts|sets|stands|props) (|added|new) (POST|it|them) [up]
		[POST] (base|bases|foot|standoff) (holding|lifting|raising|keeping|carrying|standing|propping|setting) (|added|new) (POST|it|them) [up]
		(POST|added post|it) (sits|stands|is|rests|rides|held) [up] on [a] [POST] (base|standoff|foot)`},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: `
		POST [that] (we|i|you|he|she|they|PERSON) [(is|are|will|would|has to|have to|ends up|end up)] (adds|add|adding|added|puts in|put in|putting in|sets|setting|sets in|set in)
		(one|ones|any) [that] (he|she|they|PERSON) (adds|add|is adding|are adding|puts in|put in)
		POST that (get|gets|is|are|is being|are being) (added|put in|set in)`},
	{Kind: Part, Key: "spare", Sense: Meaning("spare | rails, have"), Ways: `
		(pad|padding|padded|pads|bulk up|beef up|bump up|round up) [(the|my|our|his|her)] (order|list|lumber order|lumber list|count|buy|purchase|lumber|shopping list) [(out|by|with)]
		[(the|my|our|his|her)] (order|lumber|lumber order) (padded|bulked up|beefed up) [(out|by|with)]`},
	{Kind: Part, Key: "trim", Sense: Meaning("trim"), Ways: `
		(lost|lose|loses|gone|waste|wasted) (off|from|on|per|out of) (every|each|a) (RAIL|stick) [(to square|squaring|for squaring)] [(it|up|its|the)] [(end|ends)]
		(squaring|square|squares|squared) [(up|off)] (ends|end|it|them|boards|sticks) [up] (costs|cost|takes|eats|loses|wastes)`},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: `
		to spend [(total|in all|altogether|all told|all in|on it all)]
		[(is|are)] [(my|our|his|her|their|the)] (ceiling|limit|cap|max|maximum|top|tops|outside) [(on|for)] [(the|all)] (material|materials|lumber|wood|spending|cost|costs|timber|order|bill|money)
		(he|she|they|PERSON|i|we) [only] (can|will|could|wants to|want to|is willing to|are willing to|am willing to|is able to|cares to) [only] (spend|part with|shell out|cough up) [(up to|as much as|as high as)]
		(got|has|have|brought|with|only has|only have|only got) to (spend|work with) [(on|for)] [(the|all|this|it)] [(material|materials|lumber|wood)]`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		what (is|does|do|will|would|should|must) [this] (he|she|they|fella|PERSON|customer|client|buyer) (need|needs|want|have|going|got|supposed) [to] (buy|get|order|purchase|walk|drive|leave|head|go|haul|carry|take|load|pick up|pay for|bring home|take home|load up) [(out|off|home|away|up)] [of here] [with]
		what (is|are|am|will|would) [this] (he|she|they|i|we|you|PERSON) (buying|getting|taking|picking up|purchasing|ordering|hauling|loading|carrying|going home with|walking out with|leaving with|driving off with|walking away with|needing to buy|paying for|taking home|hauling off|loading up)
		what (i|we) (load|put|throw|pull|stack) [(up|on|in|into|onto)] (for|him|her|them|his truck|her truck|their truck|his cart|her cart|their cart|the cart|the truck) [for (him|her|them)]
		what (goes|to load|to put|to pull) (on|in|into|onto) (his|her|their) (truck|cart|trailer|van|car|ticket|order|list)
		what (do i|should i|am i|i|we) (sell|selling|ring up|ringing up|write up|pull|pulling|pick|load|loading) (for|up for|) (him|her|them|this PERSON) [up]
		(his|her|their|PERSON 's) (shopping list|material list|materials list|lumber list|buy list|pick list|order|ticket|pull list|load list)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		what (is|would|will|does) [(it|that|this|all that|everything)] [(going|gonna)] [to] (run|cost|set) (him|her|them|PERSON) [back] [(all told|all in|altogether|in all)]
		what (do|would|will|should|is|are) (he|she|they|PERSON) [(going|gonna)] [to] (owe|owes|pay|end up paying|be paying|spend|be spending|be out)
		(reprice|price) (it|that|this|everything|the lot|the whole thing|the job) [(out|up|again|over)] [(for (him|her|them|ME))]
		(refigure|recalculate|rerun|redo|rework|recompute|run|work out|figure) [(his|her|the|their|my|our|me the)] (total|price|cost|bill)
		(what|how much) (would|will|does|is) that (cost|run|set|come to|be) (him|her|them|PERSON) [back]`},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: `
		(keep|make|build|do|get|hold|price|lay out|work out|bring) (it|this|that|everything|the whole thing|WALL|job|material|materials|his bill|her bill|the bill|the total) [in] as (CHEAP|low) as (it will go|it goes|it can go|it can be|possible|it gets|you can [(get it|make it|go)]|they come|we can|i can [get it]|it will get|can be)
		(spend|spends|cost|costs|run|runs|charge) [(him|her|them|ME)] (as little|the least|least) [(money)] [(as|that)] (possible|it can|we can|you can|they can|he can|she can)
		(he|she|PERSON) (wants|needs|likes|asked for|is after) (it|everything|the whole thing) [(done|built|made)] [(on|as)] (the cheap|cheap as possible|cheap as can be)`},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(i|we|he|she|they|PERSON) [(really|just|sure)] (hate|hates|despise|despises|loathe|loathes|abhor|abhors|detest|detests|dislike|dislikes|can not stand|can not abide|does not like|do not like|does not want|do not want|would hate) [(having|making|seeing|any|a lot of|too much|much|to see|to have|to make|all that|all those|leaving|throwing away|throwing out|to throw away|to throw out|to waste|to leave|to be hauling|hauling|to haul|carting|to be carting|to end up with|ending up with|to be stuck with|being left with|to be left with|sweeping up|to pay for)] [(home|a pile of|a heap of|a bunch of|a truckload of)] (waste|scrap|scraps|offcuts|leftovers|wasting|cutoffs|cut offs) [(wood|lumber|timber|boards|behind)]
		[(lay|plan|cut|set|arrange|work|figure|split|divide) (it|them|this|everything|the cuts|the boards|the lumber) [(out|up)]] so [that] (there is|we have|i have|he has|she has|it leaves|we get|there are|he gets|she gets|there will be|we end up with|he ends up with) (the|) (LEAST|fewest|as little|hardly any|next to nothing|almost nothing|very little) [(of it|wood|lumber|stuff|material|amount)] (thrown away|thrown out|wasted|left over|leftover|tossed|going to waste|in the (scrap|burn|trash) (pile|bin|heap)|on the floor)
		(least|as little|the least|fewest|as few) [(wood|lumber|boards|material|stuff|amount|scraps|pieces)] (thrown away|thrown out|wasted|tossed out|tossed|binned|going to waste|going in the (scrap|burn|trash) (pile|bin|heap)) [as (possible|we can|you can)]
		(waste|throw away|throw out) (as little|the least|least) [(of it|of his lumber|of her lumber|of my lumber)] as (possible|we can|you can|he can)`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		(he|she|they|it|PERSON|PAPER) (show|shows|showed|draw|drew|draws|put|puts|place|places|mark|marks|set|sets|locate|locates|call|calls|list|lists|figure|figured|has|have) (it|them|that|this) [(at|as|being|down as|to be|down at|being at|sitting|standing)]
		[(PAPERKIND|pencil|hand)] [PAPERKIND] PAPER [that] (he|she|they|PERSON) (brought|handed|gave|sent|drew|made|came in with|walked in with|left|showed|printed|printed out|carried in|pulled out|found|got) [(in|up|over|ME|with (him|her|them)|to ME|here|along|out|online|off the internet|at home|with it)] (SAYS|SHOWS|SUBMITS|DRAWS|has|have|calls for|call for) [(that|for|down|it)]
		(other|another|competing|big box|next|rival) (store|yard|lumberyard|shop|place|outfit|dealer|supplier|counter|lumber yard) [(across town|down the (road|street))] (wrote|has|had|put|sold|quoted|priced|figured|signed|lined) (him|her|them|ME) [(up|down|out|in)] [(for|at|with|on)]
		(some|one|another|this|that|other|a) [other] (outfit|place|fella|fellow|guy|store|yard|company|shop|dealer|lumberyard) [(across town|down the (road|street)|over (there|yonder)|in town|uptown|downtown|next door)] (wrote|quoted|priced|figured|charged|gave|sold|had|told|put|lined|signed) (him|her|them|ME) [(up|down|out|in)] [(for|at|with|on)]
		(PERSON|he|she) (tells|told) ME (a|the|his|her|some|another|one) (PERSON|store|yard|shop|outfit|place|lumberyard) (SAYS|DRAWS|SUBMITS|quoted|gave|wrote|charged|priced|wants) [(him|her|them)] [(up|down)] [(for|at)]
		(he|she|they|PERSON) (got|was|were|has been|got himself|got herself) (quoted|told|given|handed|priced) [(at|for)]`},
	{Kind: Fill, Key: "fill", Ways: `
		(this|that|the|my|our|some|another) (fella|fellow|lady|gal|gentleman|gent|chap|bloke|buyer|shopper|couple|gentlemen)
		[(this|that|the|my|our|a)] [(next|first|last)] (PERSON|couple|buyer|shopper) [(here|up front|at (the|) (counter|desk|register|door|window)|on the phone|on the line|in front of ME)] (is|are|was|comes in|came in|walked in|called|called in|phoned) (after|looking for|wanting|in need of|in for|here for|needing|shopping for|hoping for|wishing for|asking about|in the market for|hunting for)
		(he|she|they) (is|are|was|were) (after|looking for|in need of|in for|here for|needing|shopping for|hoping for|wishing for|in the market for|hunting for)
		(off|from|out of) (this|that|the|his|her|my|our|one|a) (bundle|batch|pile|stack|rack|load|bunk|unit|lift|pallet|order|delivery|shipment|truck)
		(off|from|out of) (this|that) (lot|lumber|wood)
		(ring|check|write) (him|her|them|it|this|everything|it all|the man|the lady) (up|out)
		in case (i|we|he|she|they|you|one|something|any|some|somebody|someone|anybody|anyone|kid|kids|PERSON|a|my PERSON|the PERSON) [(should|happens to|were to|manages to|ever|accidentally)] (cut|cuts|ruin|ruins|spoil|spoils|mess|messes|mess up|messes up|break|breaks|split|splits|goes|go|crack|cracks|screw up|screws up|screw|screws|botch|botches|fluff|fluffs|goof|goofs|goof up|goofs up|flub|flubs|bungle|bungles|muff|muffs|wreck|wrecks|waste|wastes|miscut|miscuts|drop|drops|measures|measure) [(it|one|a|the|some|any|them|a few|his|her|their)] [(cut|cuts|board|boards|piece|stick|up|wrong|short|bad|warped|off|wrongly|too short|rail)]
		[(across|over)] (at|on|behind) the counter
		(if|when) (he|she|they|PERSON) (asks|ask|comes back|come back|calls|call|wants to know)
		for (the|this|my|our) (fella|fellow|PERSON|couple|family) [(here|at the counter|on the phone)]
		(running|run|runs|going|laid|laying|set) (across|sideways|horizontally|crosswise|lengthwise|flat ways)`},
	{Kind: Csv, Key: "csv", Loose: true, Ways: `
		[(as|in|for|to)] [(a|an)] (csv|spreadsheet|excel|excel sheet|comma separated values) [(file|format|form|sheet)] [(that|which|so|so that|,|for)] (he|she|they|i|we|you|PERSON|anybody|anyone|somebody|people|them|him|her) [(can|could|will|might|may|would be able to|is able to|to)] [(then|later|also)] (open|load|read|use|look at|edit|sort|import|pull up|view|work with|print|take|send|put|bring up|paste|play with|open up|have|get|see) [(it|that|this)] [(up|in|into|on|at|from|with|to|over)] [(home|work|excel|office|his|her|their|my|the|a|phone|laptop|computer|school|yard|spreadsheet|program|store|shop|tablet|numbers|sheets)] [(phone|laptop|computer|office|program|later|himself|herself|spreadsheet|tablet|yard|shop)]`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		[(,)] is that the (right|correct|proper|true) (count|number|amount|figure|total|size|length|price|gap|height|spacing|one|thing)
		[(,)] (that|this|it|they) (right|correct|true|check out|add up|hold up|sound right|look right) ?
		[(,)] (is|was) (he|she|PERSON) (being|getting) (had|robbed|cheated|taken|overcharged|ripped off|taken for a ride|oversold)
		[(,)] (is|are) (he|she|they|PERSON) (buying|getting|paying|being sold) too (much|many|few|little)
		[(,)] (did|has|have) (he|she|they|PERSON) (get|got|gotten) (it|that|them) right`},
	{Kind: Bound, Key: "<=", Ways: "and not a (penny|cent|dollar|dime|nickel) (over|more)\nand (i|we|he|she|they) can not go [a (penny|cent|dollar|dime)] (over|higher|above|past) [(it|that)]\nand [(that is|it is)] not a (penny|cent|dollar|dime) (over|more)\nwithout going [a (penny|cent|dollar|dime)] over [(it|that)]"},
}
