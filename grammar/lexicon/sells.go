package lexicon

// sells are more words of measuring, cutting and buying, beside those of trade.
var sells = []Entry{
	{Kind: Sell, Key: "sell", Ways: `
		(they|yard|store|shop|lumberyard|merchant|supplier|he|we|you) (are|is) (selling|stocking|carrying|offering) [(in)]
		(i|we|you) (can|could|are able to) [(only|just|also)] (get|buy|order|find) [(only|just|also)] [(it|them)] [(in|as)]
		(i|we|you) (can|could) [(only|just|also)] (get|buy|order|find) [(around here|here|locally|in town)]
		(left|remaining) (at|in|from) [the] (yard|store|shop|lumberyard|merchant)
		(order|purchase|ordering|purchasing)
		(around here|locally|in town)`},
	{Kind: SellMore, Key: "+=", Ways: "(as|for) another length [(for|of|in)]\nalso [(in)]\n(added|put) to the list of lengths"},
	{Kind: SellLess, Key: "-=", Ways: `
		(can not|could not) (get|buy|find|order) [(any|hold of any)] [(more)]
		(off|from) [the] (list|stock list|rack list) [(of (lengths|stock lengths|stock|lumber lengths))]
		(quit|stopped) (keeping|offering)
		(do|does) not sell (them|it|those) [(any more|anymore|now|here)]
		no longer (get|buy|find|available|offered|stocked|sold)`},
	{Kind: StockWord, Key: "stock", Sense: Meaning("stock | price, have"), Ways: "(list of|stock list of) (stock|lumber|board) lengths\nlist of lengths\nstock list"},
	{Kind: Have, Key: "have", Ways: "there (is|are) [already] (a stack|a pile|a bundle|a batch|stacks) of\n(i|we) [(have|have got|got)] (a stack|a pile|a bundle|a batch) of\n(a stack|a pile|a bundle) of"},
	{Kind: HaveTail, Key: "have", Ways: "(behind|beside|next to|under|out by|out in|out back of) [the] (garage|shed|barn|house|deck|shop|porch)\n(offcuts|offcut|cutoffs|cutoff|remnants|remnant)"},
	{Kind: Extra, Key: "extra", Ways: "to [the] (cut|cutting|cuts) list\nbesides\non the side\nfor something else"},
	{Kind: Each, Key: "each", Ways: "for (a|each|every) [single] (one|piece|board|stick)\nper [single] (one|piece|board|stick|length)"},
	{Kind: Item, Key: "post cap", Ways: "(cap|caps) (for|on) POST\ncaps"},
	{Kind: Item, Key: "anchor", Ways: "(concrete|wedge|masonry|sleeve|expansion|drop in|screw) (anchor|anchors|bolt|bolts)\nanchor (screw|screws)"},
	{Kind: Item, Key: "post base", Ways: "(base|bases) (for|under) POST\npost (anchor|anchors|shoe|shoes|standoff|standoffs)\n(metal|steel|adjustable|surface) post (base|bases)"},
	{Kind: PriceVerb, Key: "price", Ways: "paying [(out)] [for]\nasking [for]\n(charging|charge me|charges me|charged me) [for]\n(is|are) what (they|i|we|you) (charge|charges|paid|pay|ask|want) [for]\n(he|they|yard|store|shop|merchant|lumberyard) (wants|want)\nset (me|us) back"},
	{Kind: Measured, Key: "measured", Ways: "(tapes|taped|tape|checks|checked|pulls|pulled) out [(at|to|as)]\n(measures|measured|measure) out [(to|at|as)]\n(comes|came) out (to|at)\ntapes"},
	{Kind: Fall, Key: "falls", Ways: "(slants|slant|drains|runs downhill|goes downhill|is sloped|pitched|slanted|tips)"},
	{Kind: Per, Key: "per", Ways: "in (every|each)\nto (each|every)\nover (every|each)\nfor every"},
	{Kind: Loc, Key: "more or less nothing", Sense: Meaning("| *"), Ways: "from LEFT [(end|side|post|hand)] [(post)] to [the] RIGHT [(end|side|post|hand|one)] [(post)]\nLEFT [(end|post)] to RIGHT [(end|post)]\n(compared|relative|next) (to|with) [the] LEFT [(end|side|post)] [(post)]\nfrom one end to the other\nof height"},
	{Kind: Loc, Key: "each end", Sense: Meaning("fit |"), Ways: "(at|on|off|from) (each|either|every|both) (end|ends)\n(each|either) end\nper end"},
	{Kind: Side, Key: "right", Sense: Meaning("opening side"), Ways: "(by|at|on|near) RIGHT one"},
	{Kind: Side, Key: "left", Sense: Meaning("opening side"), Ways: "(by|at|on|near) LEFT one"},
	{Kind: Loc, Key: "past rail", Sense: Meaning("| bracket ear, bracket reach"), Ways: "(top and bottom|both top and bottom|top and bottom both|at [the] top and [at] [the] bottom|at top and bottom|above and below|on either edge|on both edges|top and bottom alike)\n(past|beyond|above|over|proud of) RAIL (at|on) [the] (top and bottom|top and at the bottom|both edges|either edge|top and the bottom)"},
	{Kind: Part, Key: "bracket ear", Sense: Meaning("bracket ear"), Ways: "(above and below|over and under) [(each|every)] RAIL\nBRACKET (extends|extend|protrudes|protrude|juts|jut|pokes|poke|overhangs|overhang) [out]\nBRACKET (stick|sticks|stands|stand|poke|pokes) out (past|beyond|above|over) RAIL [by]"},
	{Kind: Loc, Key: "on neighbors", Sense: Meaning("| bracket clearance, gap, bracket ear"), Ways: "(on|of|from) [two] (neighboring|adjacent|adjoining) RAIL"},
	{Kind: Part, Key: "bracket clearance", Sense: Meaning("bracket clearance"), Ways: `
		BRACKET (bump|run|knock|rub|bang|crash|butt|smash) (into|against) (each other|one another|their neighbors) [(at|if|when|any|with|in)] [(gap|RAIL|gaps|they|it)] (|drops|goes|is|are|gets|falls) [any] (|below|under|less than|closer than|tighter than|smaller than|at)
		(least|smallest|minimum|tightest|closest|narrowest) gap (where|at which|before|so|so that|that lets) BRACKET (do not|not|never|will not|can not|still) (touch|meet|clash|bump|collide|hit|overlap|interfere|foul|clear)
		(makes|make|lets|let|has|have|gets) (them|BRACKET) (clash|meet|bump|touch|foul|collide|hit|overlap|interfere)
		(to|so they|so that they) clear (one another|each other)
		(one another's|each other's) BRACKET`},
	{Kind: Part, Key: "bracket reach", Sense: Meaning("bracket reach"), Ways: `
		[to] (center|centre|middle) of [BRACKET] (top|upper|highest|topmost|uppermost) [BRACKET] (hole|screw|screw hole|screwhole|bolt hole) [(of|in|on) BRACKET]
		from [the] (top|upper) [edge] of RAIL [up] to [the] (center|centre|middle) of [BRACKET] (top|upper|highest) [BRACKET] (hole|screw|screw hole)
		from RAIL (top|upper|top edge|upper edge) [up] to [the] (center|centre|middle) of [BRACKET] (top|upper|highest) [BRACKET] (hole|screw|screw hole)
		BRACKET (top|upper) (hole|screw) (center|centre)
		[(top|upper)] (hole|screw) (in|of|on) BRACKET
		(top|upper) (hole|screw|screw hole)`},
	{Kind: Part, Key: "spare", Sense: Meaning("spare | rails, have"), Ways: `
		(lumber|material|wood|board|timber) (overage|allowance|contingency|surplus)
		(more|over|extra|beyond|additional|on top) [(than|of|to)] [what] [(is|we|i|you|it|are)] (need|needed|needs|required|require|strictly need|actually need)
		for (waste|mistakes|breakage|spoilage|miscuts|bad boards|culls|bad cuts|knots|splits) [(and (mistakes|waste|breakage|spoilage|miscuts))]
		(surplus|safety margin|margin for error|cushion)`},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: "(i|we) (can|could) [(only|just)] (read|see|mark|make out) [(down to|to)] [the] [nearest]\n(i|we) (read|mark) (to|down to|in)"},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: "drop (off|at|behind) [the] back [side]\n(off|at|behind) the back [side] of WALL"},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: "to (work|play) with [for (lumber|materials|material|wood|everything)]\n[set] aside for (lumber|materials|material|wood|it)"},
	{Kind: Fill, Key: "fill", Ways: `
		in case (i|we|one|something|any|some) (cut|ruin|spoil|mess up|mess|break|split|splits|goes|crack|cracks|screw up|screw|botch) [(one|it|some|them|a board|any)] [(wrong|short|up|bad|warped|split|off)]
		when (you|we|i) (count|figure|order|buy|add up|total|price|work out|tally) [up] [the] (lumber|wood|boards|order|material|materials|list)
		(are|is) (you|it) (allowing|assuming|counting|taking|reckoning|working) [(for|on|with)]
		(you|it|we) (are|is) (figuring|allowing|assuming|counting|reckoning|working|using|going|planning) (with|on|for|by|from)
		with (this|that|these|those|my|the) (model|make|brand|type|kind|style|set|version)
		(line|lines|lining) up (at|with)
		(put|held|laid|set) a level on (it|the floor|the slab|that) and
		is that what (is|was) (meant|intended)`},
	{Kind: Reason, Key: "reason", Ways: "so [that] (it|they|you|we|i) [(can|could|will|would)] (drop|drops|slide|slides|slip|slips|fit|fits|go|goes|fall|falls|pop|pops) [(right|straight|easily|just)] (in|into place|between|together|home)"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("bay | stiffeners, stiffener spacing, rails, gap, stiffener size, rail size, bays, short, cut, measured, opening, added posts"), Ways: "(behind|on|against|across) (each|every) (run|stretch|BAY) [of RAIL]\n(same|the same) (in|for) (all|every|each|both) [of] BAY"},
	{Kind: Tail, Key: "verify", Ways: "is that what (we|you|i) (have|have got|got|get|see|make it|are using|figured|figure)\ndoes that match what (we|you|i) (have|have got|got|get|see|figured)\nis that what you (have|have got|got|get)"},
	{Kind: Wh, Key: "apart", Sense: Meaning("| floor at right, drop, bottom gap, base height"), Loose: true, Ways: "how (far|much) (down|lower|below)\nhow (low|much lower)"},
}
