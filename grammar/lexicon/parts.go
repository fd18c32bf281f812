package lexicon

// Parts are the names of what a wall is made of, of its measures and of places on it. The sense says what a phrase
// speaks of surely, and after the bar what it may speak of in company.
var Parts = []Entry{
	{Kind: Part, Key: "wall", Sense: Meaning("wall height | *"), Ways: "WALL"},
	{Kind: Part, Key: "rail", Sense: Meaning("rails, rail size | rail face, gap, rail top, fixed rail top, stock, measured, bracket reach, fit, cut, ?cuts, ?shopping, price, extra, have, boards, short, marks, stiffeners, bottom gap, tape, tolerance, bays, trim"), Ways: "RAIL"},
	{Kind: Part, Key: "gap", Sense: Meaning("gap | bottom gap, bracket clearance"), Ways: "GAP"},
	{Kind: Part, Key: "gap", Sense: Meaning("gap | stiffener spacing"), Ways: "spacing"},
	{Kind: Part, Key: "gap", Sense: Meaning("gap"), Ways: `
		(gap|gaps|space|spaces|spacing|daylight|air|room|clearance|distance|opening|slot|slots) [(in|left)] BETWEEN [(any|two|neighboring|neighbouring|adjacent)] (RAIL|them|others)
		(gap|space|spaces|spacing|gaps|distance) from RAIL to RAIL`},
	{Kind: Loc, Key: "between rails", Sense: Meaning("gap | bracket clearance"), Ways: "in BETWEEN [(any|two|neighboring|neighbouring|adjacent)] RAIL\nBETWEEN [(any|two|neighboring|neighbouring|adjacent)] (RAIL|them|others) \n from RAIL to [the next] RAIL\n from (one|each) RAIL to (next|another) [(one|RAIL)]\nBETWEEN (one|each|any|a) RAIL and (next|other|another) [(one|RAIL|up|over)]"},
	{Kind: Loc, Key: "between", Sense: Meaning("gap, added posts, added post size |"), Ways: "in between"},
	{Kind: Part, Key: "bottom", Sense: Meaning("bottom gap | rails, rail size"), Ways: "LOWEST [(most)] (RAIL|one)"},
	{Kind: Part, Key: "bottom gap", Sense: Meaning("bottom gap"), Ways: `
		(bottom|btm|bot|lower|lowest|floor|ground|base) SPACE
		(SPACE|) UNDER [(it|them)] (LOWEST|first) (RAIL|one)
		(SPACE|) UNDER (rails|boards|slats|planks)
		SPACE (at|along|on|in|under|from|below) [(very)] (bottom|floor|ground|base)
		SPACE [(down)] (underneath|beneath|down low) [it]
		SPACE (off|above|over|to) [(from)] FLOOR
		UNDER LOWEST
		(LOWEST|first) RAIL (bottom|lower|underside) [edge]
		SPACE (between|from) FLOOR (and|to) (|LOWEST|first) (RAIL|one)
		SPACE (between|from) (LOWEST|first) (RAIL|one) (and|to) FLOOR
		FLOOR to [(underside|bottom) of] (LOWEST|first) (RAIL|one)
		(underside|bottom edge|bottom) of (LOWEST|first) (RAIL|one)
		(SPACE|) between (LOWEST|first) (RAIL|one) and FLOOR
		(between|from) FLOOR (and|to) [(the underside of|underside of|bottom of)] (LOWEST|first) (RAIL|one)
		bottom clearance
		FLOOR (clearance|gap|space)`},
	{Kind: Loc, Key: "underneath", Sense: Meaning("bottom gap |"), Ways: "underneath [it]\nunder it\nunder (there|here)\nat [very] bottom\nalong bottom\ndown (low|below|at bottom)"},
	{Kind: Part, Key: "wall height", Sense: Meaning("wall height"), Ways: `
		[(overall|total|finished|full|whole)] WALL HEIGHT
		wallheight
		wh
		[(overall|total|finished|full|whole)] HEIGHT of (WALL|it)
		TOP [edge] of [(whole|finished)] WALL
		top edge
		WALL TOP
		[[up] to] (TOP|upper) [(edge|side)] of [(very)] (TOP|uppermost) (RAIL|one)
		(TOP|uppermost) (RAIL|one)
		last RAIL
		FLOOR to [(TOP|top edge|upper edge) of] [(TOP)] (WALL|RAIL)
		from FLOOR to [(TOP|top edge|upper edge) of] [(TOP)] (WALL|RAIL)
		from FLOOR to [very] TOP [edge] of (TOP|) RAIL
		(overall|total|finished) HEIGHT
		HEIGHT of the WALL`},
	{Kind: Dim, Key: "height", Sense: Meaning("wall height | post height, base height, rail top"), Ways: "[in] HEIGHT"},
	{Kind: Dim, Key: "height", Sense: Meaning("wall height | post height, rail top"), Ways: "(waist|hip|chest|elbow|belt|counter|bar) (high|height|level)"},
	{Kind: Dim, Key: "high", Sense: Meaning("wall height | post height, base height, rail top, rails, marks"), Ways: "HIGH\ntop to bottom\nbottom to top\nup and down"},
	{Kind: Dim, Key: "wide", Sense: Meaning("| opening, bay, rail face, gap, kerf, bracket ear"), Ways: "WIDE\n[(in|clear)] WIDTH\nacross\nside to side\nbroad"},
	{Kind: Dim, Key: "long", Sense: Meaning("| span, overall, bay, cut, screw length, ?cuts, stock, price, have, extra, boards"), Ways: "long\n[in] LENGTH"},
	{Kind: Dim, Key: "thick", Sense: Meaning("| bracket thickness, slab thickness, kerf"), Ways: "thick\n[in] thickness\nthk\nthkness\nthck"},
	{Kind: Dim, Key: "apart", Sense: Meaning("| gap, stiffener spacing, span, centers"), Ways: "apart\nspaced [apart]\nfrom one to next\nfrom each other\nof each other"},
	{Kind: Dim, Key: "spacing", Sense: Meaning("| stiffener spacing, gap"), Ways: "spcg\nspcng\nspaces\nspacings"},
	{Kind: Dim, Key: "deep", Sense: Meaning("| drop"), Ways: "deep\ndepth"},
	{Kind: Dim, Key: "oc", Sense: Meaning("centers | stiffener spacing"), Ways: `
		oc
		cc
		(centers|centres|ctrs)
		c to c
		ctr to ctr
		ctc
		[from] (center|centre|centers|centres) to (center|centre|centers|centres)
		(center|centre) lines
		between (center|centre|centers|centres) [lines]`},
	{Kind: Part, Key: "centers", Sense: Meaning("centers"), Ways: `
		(centers|centres|ctrs)
		(middle|center|centre) of (one|left) [END] POST to (middle|center|centre) of (other|right) [(one|END)] [POST]
		from (middle|center|centre) of (one|left) [END] POST to (middle|center|centre) of (other|right|next|second) [(one|END)] [POST]
		(distance|space) between POST (centers|centres)
		POST (centers|centres)
		(centers|centres) of [END] POST
		POST (center|centre) to POST (center|centre)
		END POST (centers|centres)`},
	{Kind: Dim, Key: "edge to edge", Sense: Meaning("| gap, opening, bay, span"), Ways: "[from] edge to edge"},
	{Kind: Dim, Key: "face to face", Sense: Meaning("span | bay, opening"), Ways: `
		[from] face to face
		ff
		[from] inside to inside
		[from] inside face to inside face [of END POST]
		[(measured|measuring)] between [their] (inner|inside) (faces|face)
		inside [(faces|face|measure|measurement|dimension)]
		(inner|inside) (faces|face)
		in the clear`},
	{Kind: Part, Key: "overall", Sense: Meaning("overall"), Ways: `
		overall
		oo
		(outside|outer face|out|outside face|outer edge) to (outside|out|outer face|outside face|outer edge) [of [two] END POST]
		[from] (outside|outer) (edge|edges|faces|side|sides|corner|corners|end|ends) to (outside|outer) (edge|edges|faces|side|sides|corner|corners|end|ends) [of [two] END POST]
		over [the] (outsides|outside) of [(two|both)] [END] POST
		[from] (outside|outer face) of (one|left) [END] POST to (outside|outer face) of (other|right) [(one|END)] [POST]
		(overall|total|full|whole) (length|width|span)
		over everything
		(over|across) [(two|both|the)] [END] posts
		from (outside|outer face|out|outside face|outer edge) to (outside|out|outer face|outside face|outer edge) [of [two] END POST]
		[from] (outside|outer face|outer edge|outside face) of [(one|first|left)] [END] POST to (outside|outer face|outer edge|outside face) of [(other|next|second|right|another)] [END] POST
		outside dimension
		(including|counting) [(both|two)] [END] POST
		(outside|outsides) of [(both|two)] [END] POST
		outside faces`},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: `
		span
		clear (span|distance|width|run)
		(clear|distance|space|room|width|gap|opening|length) [(in|distance|span)] (between|from) [(two)] [END] (posts|psts|columns|pillars) [to (posts|post)]
		[clear] [(distance|space)] between [inside] faces of [two] [END] (posts|psts)
		[clear] between [two] [END] post faces
		clear BETWEEN [(two|the)] [END] POST
		[clear] BETWEEN [(inside|inner)] faces of [(them|those)] [two] [END] (posts|psts)
		end to end
		(distance|space) from POST to POST
		from face of [(one|the)] POST to face of [the] other [POST]
		inside (face|edge) of one [END] POST to inside (face|edge) of [the] other [(one|END)] [POST]
		[(space|distance)] from one [END] POST to [the] other
		[between] (inside|inner) faces of [two] [END] POST
		[from] (inside|inner face|inner edge|inside face|face) of [(one|first|left)] [END] POST to (inside|inner face|inner edge|inside face|face) of [(other|next|second|right|another)] [END] POST
		[from] POST (face|faces) to POST (face|faces)
		clear opening between [END] POST`},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: "in between (post|column|upright)"},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: "[from] [(in|clear)] between [(two|inside|faces of)] [END] (POST|uprights)\nbetween POST faces\n[(in)] between END ones"},
	{Kind: Part, Key: "post", Sense: Meaning("post size | post height, added posts, post from left, post from right, span, centers, overall, cut, base height, post leans, ?posts, stock, price, bay, bays, added post size, end post size, ?anchors"), Ways: "POST"},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: `
		(added|new|extra|additional|add'l|addl|intermediate|free|freestanding|inner|inside|middle) [POST] (POST|UPRIGHT|one)
		(POST|UPRIGHT) (we|i) (are adding|add|added|put in|set)
		(POST|UPRIGHT) (added|set|put)
		(one|ones|POST) [that] (we|i|you) are adding
		(added|new|inner|middle) (ones|one)
		newpost`},
	{Kind: Loc, Key: "ends", Sense: Meaning("end post size |"), Ways: "(on|at|for) [(the|two|both)] (ends|outsides|corners)"},
	{Kind: Part, Key: "upright", Sense: Meaning("| stiffeners, added posts, stiffener size, added post size, stiffener spacing, ?posts"), Ways: "UPRIGHT"},
	{Kind: Part, Key: "end post", Sense: Meaning("end post size | span, centers, overall, post leans, post size, added posts"), Ways: "(END|two END|existing|outside|outer) POST"},
	{Kind: Part, Key: "post height", Sense: Meaning("post height"), Ways: "[(added|new)] POST HEIGHT\nHEIGHT of [(added|new)] POST\n(TOP of) (added|new|) POST\n[(added|new)] POST (top|tops) [out [at]]"},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: `
		base height
		base ht
		[POST] base (holds|lifts|carries|keeps|raises) (|added|new) POST [up]
		[POST] (base|foot|standoff|bases) (lifts|holds|raises|stands|keeps|carries|lift|hold|raise) (it|them|that|POST) [up]
		(underside|foot|bottom|bottom end) of (|added|new) POST
		(standoff|stand-off|stand off)`},
	{Kind: Part, Key: "size", Sense: Meaning("| rail size, post size, end post size, added post size, stiffener size, cap size, stock, price, have, extra, boards"), Ways: "size\nsizes\nnominal\nlumber\ndimensional lumber\n(nominal|lumber) size\nwood\nmaterial"},
	{Kind: Part, Key: "rail size", Sense: Meaning("rail size"), Ways: "RAIL (size|sizes|lumber|stock|material)\nsize of RAIL"},
	{Kind: Part, Key: "post size", Sense: Meaning("post size"), Ways: "POST size\nsize of POST"},
	{Kind: Part, Key: "end post size", Sense: Meaning("end post size"), Ways: "END POST size"},
	{Kind: Part, Key: "added post size", Sense: Meaning("added post size"), Ways: "(added|new|extra) POST size"},
	{Kind: Part, Key: "stiffener size", Sense: Meaning("stiffener size"), Ways: "STIFF (size|stock|lumber)\nsize of STIFF"},
	{Kind: Part, Key: "rail face", Sense: Meaning("rail face"), Ways: `
		[RAIL] (face|faces) [width] [(of RAIL)]
		RAIL (width|widths|face)
		width of [(a|one|each)] RAIL
		(across|on) face [of RAIL]
		face (width|measure)
		face of [(a|one)] RAIL`},
	{Kind: Part, Key: "rail top", Sense: Meaning("rail top"), Ways: "rail top [edge]\nRAIL (top|upper) edge"},
	{Kind: Part, Key: "bay", Sense: Meaning("bay, bays | stiffeners, stiffener spacing, measured, rails, gap, stiffener size, short, cut, ?cuts, opening, span"), Ways: "BAY\n(each|every|any|no|longest|widest|one|a|the|per) run\nBAY BETWEEN POST"},
	{Kind: Part, Key: "bay", Sense: Meaning("bay | stiffener spacing, measured, short, cut, ?cuts"), Ways: "BAY (width|widths|length|lengths)\n(width|widths|length|size) of BAY [BETWEEN POST]\n[clear] (distance|space|room|width) BETWEEN POST (in|of|for|within) [(each|every|one|any)] BAY"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("bay | stiffeners, stiffener spacing, rails, gap, stiffener size, rail size, bays, short, cut, measured, opening, added posts"), Ways: `
		(in|per|for|to|along|of|within|by) [(each|every|any|one|a|either|long|short|wide|big|narrow)] BAY
		(each|every|either) BAY
		a BAY
		/ BAY
		in (both|all) BAY
		along every BAY
		halfway along [(each|every)] BAY
		(mid|middle of|center of|centre of) [(each|every|the)] BAY
		in the middle of (each|every) BAY
		per each BAY
		ea BAY
		to the bay`},
	{Kind: Part, Key: "opening", Sense: Meaning("opening, openings | opening from left, opening from right, opening side, measured, span, bay"), Ways: "OPENING\n(gap|space|way|hole|room) for OPENING\nto where OPENING [(begins|starts)]\n(way|gap|space|hole) (to get through|to pass)"},
	{Kind: Part, Key: "opening", Sense: Meaning("opening"), Ways: "OPENING (width|widths|clearance)\n[clear] (width|clearance) of OPENING\nclear opening [width]"},
	{Kind: Part, Key: "through", Sense: Meaning("opening, openings | opening side, opening from left, opening from right"), Ways: "to walkthrough\nto (get|go|squeeze|come) (through|thru)\n(walking|getting|passing) through"},
	{Kind: Part, Key: "opening side", Sense: Meaning("opening side"), Ways: "opening side\n(side|position|location|place) of OPENING\nOPENING (side|position|location|place)\nwhich side OPENING\nopening on which side"},
	{Kind: Part, Key: "stiffener", Sense: Meaning("stiffeners, stiffener size | stiffener spacing, cut, price, ?cuts, screw length"), Ways: "STIFF\nUPRIGHT (on|across|over|against) RAIL"},
	{Kind: Part, Key: "stiffener spacing", Sense: Meaning("stiffener spacing"), Ways: "STIFF (spacing|spcg|spcng|distance|spaces|centers|spacings)\n(spacing|distance) (of|between|for) STIFF\nBETWEEN STIFF\nfrom (one|each) STIFF to [the] next [(one|STIFF)]\nfrom STIFF to STIFF\nhow far apart STIFF"},
	{Kind: Part, Key: "bracket", Sense: Meaning("| bracket thickness, bracket clearance, bracket reach, bracket ear, price, fit, ?hardware"), Ways: "BRACKET\nBRACKET (plate|plates|metal|steel)"},
	{Kind: Part, Key: "bracket thickness", Sense: Meaning("bracket thickness"), Ways: "BRACKET (thickness|thk|thickn|metal|gauge)\nthickness of [(a|one|each)] BRACKET"},
	{Kind: Part, Key: "bracket clearance", Sense: Meaning("bracket clearance"), Ways: `
		BRACKET (clearance|clr|clnc|clear|clearances)
		(BRACKET|they) (clash|meet|bump|touch|foul|collide|hit|overlap|interfere) [(one another|each other|together)] [(at|if|when|any|with|in)] [(gap|RAIL|gaps|they|it)] (|drops|goes|is|are|gets|falls) [any] (|below|under|less than|closer than|tighter than|smaller than|at)
		BRACKET start (bumping|touching|hitting|meeting|clashing) [(one another|each other)] any (closer|tighter|nearer|less) than
		RAIL closer than
		BRACKET [only] need
		and BRACKET (clash|meet|bump|touch|foul|collide|hit|overlap) [(one another|each other)]
		(clearance|room) (of|for|between) BRACKET
		[BRACKET] clear (each other|one another) [at]
		to clear (each other|one another)
		(or|else|otherwise) BRACKET (clash|meet|bump|touch|foul|collide|hit|overlap|interfere)
		BRACKET (clash|meet|bump|touch|foul|collide|hit|overlap) [(one another|each other)]
		for BRACKET to clear [(each other|one another)]
		closer together than
		room BRACKET`},
	{Kind: Part, Key: "bracket reach", Sense: Meaning("bracket reach"), Ways: `
		BRACKET reach
		[TOP] RAIL BRACKET (hole|screw)
		BRACKET (hole|screw)
		reach [of BRACKET]
		[to] (center|centre|middle) of [BRACKET] top [BRACKET] (hole|screw) [(of|in) BRACKET]
		[BRACKET] top [BRACKET] hole [(center|centre)] [(of|in) BRACKET]
		[to] [(center|centre|middle) of] BRACKET top hole
		(past|above|over|up past|up from|beyond) (top|upper) [edge] of RAIL
		(past|above|over|up past|up from|beyond|up above) RAIL (edge|top|upper edge|top edge)`},
	{Kind: Loc, Key: "past rail", Sense: Meaning("| bracket ear, bracket reach"), Ways: "(past|beyond|above|over|proud of) RAIL [(top and bottom|on both edges|each way)]\n(past|beyond|above|over) [RAIL] edge"},
	{Kind: Part, Key: "bracket ear", Sense: Meaning("bracket ear"), Ways: `
		BRACKET (ear|ears)
		(ear|ears) [of BRACKET]
		[BRACKET] (ear|ears) (stick|sticks|stand|stands|reach|project|extend|run|poke) [out]
		BRACKET (stands|sticks|stick|stand|reaches|projects|extends|runs) [out] (past|beyond|above|over|proud of) RAIL
		(past|beyond) RAIL above and below
		BRACKET (stands|sticks|projects|extends) out
		(stands|sticks) out [above and below]
		above and below`},
	{Kind: Part, Key: "fit", Sense: Meaning("fit | ?cuts"), Ways: `
		fit
		(play|slack|wiggle room|wiggle|leeway) [(in all|all told|all up|altogether|in total|total|overall|both ends together)]
		RAIL [(get|gets|are|is|being|i)] cut
		RAIL (to be|be|should be|must be|have to be|need to be) cut
		(cut|cutting|saw) [(my|the|your|our|every|each)] RAIL
		cut (short|shy) [(in all|all told|overall)]
		(cut|cutting|saw) (them|everything|each one|every one)
		(short|shorter|shy) [of (space|opening|bay)] [(overall|in all|all told|all up|in total|altogether|total)]
		less than (space|opening)
		(short|shy) overall
		when RAIL get cut
		fitting (allowance|clearance|play)`},
	{Kind: Loc, Key: "in all", Sense: Meaning("| fit, ?shopping, ?cost, rails, cut, added posts, bays, openings, spare"), Ways: "in all\nall told\nall up\nin total\nall in all\nall in"},
	{Kind: Part, Key: "kerf", Sense: Meaning("kerf"), Ways: `
		kerf
		[saw] (blade|saw) (takes|eats|removes|loses|leaves|cuts|wastes|is|takes out|kerf|width|thickness)
		(saw|blade) [kerf]
		(width|thickness) of [saw] (cut|blade|kerf)
		(per|every|each|a) (cut|saw cut)
		saw cut
		(with|at|in) (each|every|per) (cut|saw cut)
		[thin] blade [(on today|today|on)] (|it takes|takes)`},
	{Kind: Part, Key: "trim", Sense: Meaning("trim"), Ways: `
		trim [(per|each|every|a)] [(RAIL|end)]
		[(per|each|every|off)] [RAIL] (to square|squaring|squaring up) [(its|the|each|up|off)] [(end|ends)]
		(lose|lost|loses) (per|off|on|of|from) [(every|each|a)] RAIL
		(off|from) (each|every) RAIL (end|ends)
		(off|from|of) (every|each) (RAIL|stick|end) (squaring|to square) [up] [(its|the)] [end]
		squaring [(up|off)] [the] [end]
		(losing|lose) squaring [up] [(every|each|a)] [(stick|RAIL)]
		squaring (up|off) (every|each) (stick|RAIL)
		(square|squaring|trim|squared|cut) (off|up) [(the|each|its|per)] (end|ends)
		waste per board
		end trim
		(getting|to get) [its] (end|ends) square
		trim [off] per RAIL`},
	{Kind: Part, Key: "spare", Sense: Meaning("spare | rails, have"), Ways: `
		spare [(material|RAIL|lumber|stock|wood|timber)]
		(extra|spare) (material|lumber|wood|stock|timber|percent)
		extra (to|for|on) [the] order
		(overage|waste allowance|waste factor|allowance for waste|contingency)
		extra to order
		(for|allowance) (mistakes|waste|breakage|mishaps|error|errors)
		spares
		extras
		spare (RAIL|sticks)
		(boards|planks|sticks) (extra|to spare)
		waste [(factor|allowance)]`},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: `
		tape
		[(my|the)] (tape|rule|ruler|measure) [(only)] (shows|reads|has|goes|is|marks|measures|resolves|marked) [(in|to|down to)]
		all [we|i] own is tape with
		(i|we) [can] [only] (work|mark|measure|cut|read) [down] to [(nearest|closest)]
		(i|we) [can] [only] go [down] to (nearest|closest)
		(i|we) [can] (work|mark|measure|read) (in|to)
		work to
		(nearest|closest|finest)
		round [(everything|all|it|them|lengths|cuts|marks|figures|numbers)] [(off|down)] to [(nearest|closest)]
		smallest (mark|line|division|unit) [(on|of) (my|the) (tape|rule|ruler)]
		finest (mark|line|division) [(on|of) (my|the) (tape|rule|ruler)]
		finest i can (mark|measure|cut|read|work to)
		(accuracy|precision|resolution)
		to the nearest
		no finer
		(tape|rule) with`},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: `
		drop
		drop (on|at) [(the|that)] (far|other|outer|outside|back) side [of WALL]
		drop off
		drop (behind|beyond|outside|out back)
		(back|far|outer|outside) side (drops|falls|is|goes|drops off|falls away|falls off) [(away|off|down)]
		drop (beyond|behind|outside|past) WALL
		[(FLOOR|EARTH|it|grade)] [(falls|drops|goes|is|falls off|drops off|drops away|falls away|lower)] [(down|away|off)] (on|at|to|of) [(the|that)] (far|other|outer|outside|opposite|back) (side|face) [of WALL]
		(beyond|behind|past|outside) WALL [(FLOOR|EARTH|it)] [(falls|drops|is lower|lower)]
		(FLOOR|EARTH) (falls|drops|goes|drops off|falls off|falls away) [(away|off|down)] (beyond|behind|past|outside) [WALL]
		(FLOOR|EARTH) (falls|drops) (away|off)
		(other|far) side [of WALL] [(the|)] [(FLOOR|EARTH|it)] [(falls|drops|is|falls off|drops off|drops away|falls away)] [(off|away|lower)]
		from FLOOR [down] to [the] EARTH [(beyond|behind|past|outside|below|on the other side)] [(WALL)]
		(EARTH|FLOOR) (beyond|behind|outside|past) [WALL] [(is|lies|sits)] [lower]
		(grade|it) drops
		(below|above|to|from) grade
		grade [is]
		down to EARTH`},
	{Kind: Part, Key: "beyond", Sense: Meaning("| drop"), Ways: "(lawn|grass|dirt|soil|turf)"},
	{Kind: Loc, Key: "beyond", Sense: Meaning("| drop"), Ways: "(outside|beyond|behind|out back|past it|behind it|beyond it)"},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: `
		budget
		[is] [(the|absolute)] most (i|we) [(will|can|could|would|want to|am willing to|intend to)] (pay|spend) [(for|on)] [(the|all)] [(material|materials|lumber|wood|it|this|everything|timber)]
		(my|our|spending) limit [is]
		(spending|spend|money|cost|price) (limit|cap|ceiling|maximum)
		(spend|spending) [(on|for)] [(it|this|lumber|materials|material)]
		(lumber|material|materials|wood) bill
		cap [(on)] [(the)] [(material|materials|cost|lumber|spending|money)]
		limit [(on)] (material|materials|cost|lumber|spending|money)
		[got] to spend
		[for] (lumber|materials|material|wood|timber) [and not a penny more]
		and not a (penny|cent|dollar) more
		(material|materials|cost|bill|total|lumber) [(go|come|run|be|get)] (past|over|above)
		(let|have) material`},
	{Kind: Part, Key: "cap", Sense: Meaning("cap size | price"), Ways: "cap\n[top] cap (size|board|rail)\n(top|cap) board\n[flat] (along|on) [the] top [for a cap]\n(as|for) a cap"},
	{Kind: Part, Key: "slab thickness", Sense: Meaning("slab thickness"), Ways: "(slab|concrete|pad) (thickness|depth|thk)\nthickness of (slab|concrete|pad)"},
	{Kind: Part, Key: "edge distance", Sense: Meaning("edge distance"), Ways: "[slab] edge distance\n(distance|far|space) (to|from) [slab] edge [of (slab|concrete|pad)]\n(anchor|anchors|bolt|bolts|it) [(is|are|sit|sits)] (from|to) [slab] edge\nfrom [(the)] edge of (slab|concrete|pad)\nfrom [slab] edge\n(slab|concrete) edge"},
	{Kind: Part, Key: "anchor size", Sense: Meaning("anchor size | price, edge distance"), Ways: "(anchor|anchors|anchor bolt|anchor bolts) [(size|diameter|dia)]\n(diameter|size) of anchor"},
	{Kind: Part, Key: "screw length", Sense: Meaning("screw length"), Ways: "(screw|screws) [(length|lengths)]\nlength of (screw|screws)"},
	{Kind: Part, Key: "coats", Sense: Meaning("coats"), Ways: "(coat|coats) [(of (stain|paint|finish|oil|varnish))]"},
	{Kind: Part, Key: "coverage", Sense: Meaning("coverage"), Ways: "coverage"},
	{Kind: Part, Key: "floor", Sense: Meaning("| wall height, bottom gap, post height, base height, rail top, drop, floor at right, floor falls, slab thickness, fixed rail top, marks"), Ways: "FLOOR"},
	{Kind: Loc, Key: "off floor", Sense: Meaning("| wall height, bottom gap, post height, base height, rail top, drop, fixed rail top, marks, bracket reach"), Ways: `
		[(up|clear)] (off|above|from|over|of) [(up|of)] FLOOR
		up off [of] FLOOR
		[from] FLOOR [up]
		FLOOR to [(its|very)] TOP [edge]
		from FLOOR to [(its|very)] TOP [edge]
		nearer FLOOR
		off of FLOOR
		(up|clear) from FLOOR
		off it
		aff
		(clears|clearing) FLOOR [by]
		above finished floor`},
	{Kind: Loc, Key: "of wall", Sense: Meaning("| *"), Ways: "(of|on|in|for|along|across|at|from|with) WALL\n(this|that) WALL"},
	{Kind: Loc, Key: "more or less nothing", Sense: Meaning("| *"), Ways: "(one over other|one above other|on top of each other|on top of one another|one on top of the other|one over the other|one above the other|high)\nfrom left to right\nleft to right\nat the moment\nfor now\nat all\nfrom end to end\nnear edge [of]\nnearest edge\nleft edge\nedge of"},
	{Kind: Part, Key: "opening from left", Sense: Meaning("opening from left"), Ways: "from [(face of)] LEFT [END] [POST] to [(near edge of|edge of|start of)] OPENING\n(opening|op) from LEFT [END] [(POST|side|end|face|one)]"},
	{Kind: Part, Key: "opening from right", Sense: Meaning("opening from right"), Ways: "from [(face of)] RIGHT [END] [POST] to [(near edge of|edge of|start of)] OPENING\n(opening|op) from RIGHT [END] [(POST|side|end|face|one)]"},
	{Kind: FromSide, Key: "left", Sense: Meaning("| opening from left, post from left"), Ways: "(from|off|frm|past|of|after|beyond) LEFT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]\nfrom [(face of)] LEFT [END] POST"},
	{Kind: FromSide, Key: "right", Sense: Meaning("| opening from right, post from right"), Ways: "(from|off|frm|past|of|after|beyond|before) RIGHT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]\nfrom [(face of)] RIGHT [END] POST"},
	{Kind: Side, Key: "left", Sense: Meaning("opening side"), Ways: "[(hard|right|tight|flush)] [(up)] [(on|at|against|to|by|beside|next to|over to|over on|over at|along|towards|toward|off to)] [(against)] LEFT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]\nto the l"},
	{Kind: Side, Key: "right", Sense: Meaning("opening side"), Ways: "[(hard|right|tight|flush)] [(up)] (on|at|against|to|by|beside|next to|over to|over on|over at|along|towards|toward|off to) [(against)] RIGHT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]\nRIGHT\nRIGHT [(hand)] (side|end|POST)\nRIGHT END POST\nto the r"},
	{Kind: Side, Key: "middle", Sense: Meaning("opening side"), Ways: "[(right|dead|smack|set)] (in|at|to|near) MIDDLE [(of (WALL|span|it|everything))]\nMIDDLE\ncentered\ncentred\ndead center\nin the centre"},
	{Kind: Part, Key: "pool", Sense: Meaning("pool"), Ways: "pool [(barrier|fence|wall)]"},
}
