package grammar

// parts are the names of what a wall is made of, of its measures and of places on it. The sense says what a phrase
// speaks of surely, and after the bar what it may speak of in company.
var parts = []entry{
	{kind: kPart, key: "wall", sense: meaning("wall height | *"), ways: "WALL"},
	{kind: kPart, key: "rail", sense: meaning("rails, rail size | rail face, gap, rail top, fixed rail top, stock, measured, bracket reach, fit, cut, ?cuts, ?shopping, price, extra, have, boards, short, marks, stiffeners, bottom gap, tape, tolerance, bays, trim"), ways: "RAIL"},
	{kind: kPart, key: "gap", sense: meaning("gap | bottom gap, bracket clearance"), ways: "GAP"},
	{kind: kPart, key: "gap", sense: meaning("gap | stiffener spacing"), ways: "spacing"},
	{kind: kPart, key: "gap", sense: meaning("gap"), ways: `
		(gap|gaps|space|spaces|spacing|daylight|air|room|clearance|distance|opening|slot|slots) [(in|left)] BETWEEN [(any|two|neighboring|neighbouring|adjacent)] (RAIL|them|others)
		(gap|space|spaces|spacing|gaps|distance) from RAIL to RAIL`},
	{kind: kLoc, key: "between rails", sense: meaning("gap | bracket clearance"), ways: "in BETWEEN [(any|two|neighboring|neighbouring|adjacent)] RAIL\nBETWEEN [(any|two|neighboring|neighbouring|adjacent)] (RAIL|them|others) \n from RAIL to [the next] RAIL\n from (one|each) RAIL to (next|another) [(one|RAIL)]\nBETWEEN (one|each|any|a) RAIL and (next|other|another) [(one|RAIL|up|over)]"},
	{kind: kLoc, key: "between", sense: meaning("gap, added posts, added post size |"), ways: "in between"},
	{kind: kPart, key: "bottom", sense: meaning("bottom gap | rails, rail size"), ways: "LOWEST [(most)] (RAIL|one)"},
	{kind: kPart, key: "bottom gap", sense: meaning("bottom gap"), ways: `
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
	{kind: kLoc, key: "underneath", sense: meaning("bottom gap |"), ways: "underneath [it]\nunder it\nunder (there|here)\nat [very] bottom\nalong bottom\ndown (low|below|at bottom)"},
	{kind: kPart, key: "wall height", sense: meaning("wall height"), ways: `
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
	{kind: kDim, key: "height", sense: meaning("wall height | post height, base height, rail top"), ways: "[in] HEIGHT"},
	{kind: kDim, key: "height", sense: meaning("wall height | post height, rail top"), ways: "(waist|hip|chest|elbow|belt|counter|bar) (high|height|level)"},
	{kind: kDim, key: "high", sense: meaning("wall height | post height, base height, rail top, rails, marks"), ways: "HIGH\ntop to bottom\nbottom to top\nup and down"},
	{kind: kDim, key: "wide", sense: meaning("| opening, bay, rail face, gap, kerf, bracket ear"), ways: "WIDE\n[(in|clear)] WIDTH\nacross\nside to side\nbroad"},
	{kind: kDim, key: "long", sense: meaning("| span, overall, bay, cut, screw length, ?cuts, stock, price, have, extra, boards"), ways: "long\n[in] LENGTH"},
	{kind: kDim, key: "thick", sense: meaning("| bracket thickness, slab thickness, kerf"), ways: "thick\n[in] thickness\nthk\nthkness\nthck"},
	{kind: kDim, key: "apart", sense: meaning("| gap, stiffener spacing, span, centers"), ways: "apart\nspaced [apart]\nfrom one to next\nfrom each other\nof each other"},
	{kind: kDim, key: "spacing", sense: meaning("| stiffener spacing, gap"), ways: "spcg\nspcng\nspaces\nspacings"},
	{kind: kDim, key: "deep", sense: meaning("| drop"), ways: "deep\ndepth"},
	{kind: kDim, key: "oc", sense: meaning("centers | stiffener spacing"), ways: `
		oc
		cc
		(centers|centres|ctrs)
		c to c
		ctr to ctr
		ctc
		[from] (center|centre|centers|centres) to (center|centre|centers|centres)
		(center|centre) lines
		between (center|centre|centers|centres) [lines]`},
	{kind: kPart, key: "centers", sense: meaning("centers"), ways: `
		(centers|centres|ctrs)
		(middle|center|centre) of (one|left) [END] POST to (middle|center|centre) of (other|right) [(one|END)] [POST]
		from (middle|center|centre) of (one|left) [END] POST to (middle|center|centre) of (other|right|next|second) [(one|END)] [POST]
		(distance|space) between POST (centers|centres)
		POST (centers|centres)
		(centers|centres) of [END] POST
		POST (center|centre) to POST (center|centre)
		END POST (centers|centres)`},
	{kind: kDim, key: "edge to edge", sense: meaning("| gap, opening, bay, span"), ways: "[from] edge to edge"},
	{kind: kDim, key: "face to face", sense: meaning("span | bay, opening"), ways: `
		[from] face to face
		ff
		[from] inside to inside
		[from] inside face to inside face [of END POST]
		[(measured|measuring)] between [their] (inner|inside) (faces|face)
		inside [(faces|face|measure|measurement|dimension)]
		(inner|inside) (faces|face)
		in the clear`},
	{kind: kPart, key: "overall", sense: meaning("overall"), ways: `
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
	{kind: kPart, key: "span", sense: meaning("span"), ways: `
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
	{kind: kPart, key: "added post", sense: meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), ways: "in between (post|column|upright)"},
	{kind: kLoc, key: "between posts", sense: meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), ways: "[from] [(in|clear)] between [(two|inside|faces of)] [END] (POST|uprights)\nbetween POST faces\n[(in)] between END ones"},
	{kind: kPart, key: "post", sense: meaning("post size | post height, added posts, post from left, post from right, span, centers, overall, cut, base height, post leans, ?posts, stock, price, bay, bays, added post size, end post size, ?anchors"), ways: "POST"},
	{kind: kPart, key: "added post", sense: meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), ways: `
		(added|new|extra|additional|add'l|addl|intermediate|free|freestanding|inner|inside|middle) [POST] (POST|UPRIGHT|one)
		(POST|UPRIGHT) (we|i) (are adding|add|added|put in|set)
		(POST|UPRIGHT) (added|set|put)
		(one|ones|POST) [that] (we|i|you) are adding
		(added|new|inner|middle) (ones|one)
		newpost`},
	{kind: kLoc, key: "ends", sense: meaning("end post size |"), ways: "(on|at|for) [(the|two|both)] (ends|outsides|corners)"},
	{kind: kPart, key: "upright", sense: meaning("| stiffeners, added posts, stiffener size, added post size, stiffener spacing, ?posts"), ways: "UPRIGHT"},
	{kind: kPart, key: "end post", sense: meaning("end post size | span, centers, overall, post leans, post size, added posts"), ways: "(END|two END|existing|outside|outer) POST"},
	{kind: kPart, key: "post height", sense: meaning("post height"), ways: "[(added|new)] POST HEIGHT\nHEIGHT of [(added|new)] POST\n(TOP of) (added|new|) POST\n[(added|new)] POST (top|tops) [out [at]]"},
	{kind: kPart, key: "base height", sense: meaning("base height"), ways: `
		base height
		base ht
		[POST] base (holds|lifts|carries|keeps|raises) (|added|new) POST [up]
		[POST] (base|foot|standoff|bases) (lifts|holds|raises|stands|keeps|carries|lift|hold|raise) (it|them|that|POST) [up]
		(underside|foot|bottom|bottom end) of (|added|new) POST
		(standoff|stand-off|stand off)`},
	{kind: kPart, key: "size", sense: meaning("| rail size, post size, end post size, added post size, stiffener size, cap size, stock, price, have, extra, boards"), ways: "size\nsizes\nnominal\nlumber\ndimensional lumber\n(nominal|lumber) size\nwood\nmaterial"},
	{kind: kPart, key: "rail size", sense: meaning("rail size"), ways: "RAIL (size|sizes|lumber|stock|material)\nsize of RAIL"},
	{kind: kPart, key: "post size", sense: meaning("post size"), ways: "POST size\nsize of POST"},
	{kind: kPart, key: "end post size", sense: meaning("end post size"), ways: "END POST size"},
	{kind: kPart, key: "added post size", sense: meaning("added post size"), ways: "(added|new|extra) POST size"},
	{kind: kPart, key: "stiffener size", sense: meaning("stiffener size"), ways: "STIFF (size|stock|lumber)\nsize of STIFF"},
	{kind: kPart, key: "rail face", sense: meaning("rail face"), ways: `
		[RAIL] (face|faces) [width] [(of RAIL)]
		RAIL (width|widths|face)
		width of [(a|one|each)] RAIL
		(across|on) face [of RAIL]
		face (width|measure)
		face of [(a|one)] RAIL`},
	{kind: kPart, key: "rail top", sense: meaning("rail top"), ways: "rail top [edge]\nRAIL (top|upper) edge"},
	{kind: kPart, key: "bay", sense: meaning("bay, bays | stiffeners, stiffener spacing, measured, rails, gap, stiffener size, short, cut, ?cuts, opening, span"), ways: "BAY\n(each|every|any|no|longest|widest|one|a|the|per) run\nBAY BETWEEN POST"},
	{kind: kPart, key: "bay", sense: meaning("bay | stiffener spacing, measured, short, cut, ?cuts"), ways: "BAY (width|widths|length|lengths)\n(width|widths|length|size) of BAY [BETWEEN POST]\n[clear] (distance|space|room|width) BETWEEN POST (in|of|for|within) [(each|every|one|any)] BAY"},
	{kind: kLoc, key: "per bay", sense: meaning("bay | stiffeners, stiffener spacing, rails, gap, stiffener size, rail size, bays, short, cut, measured, opening, added posts"), ways: `
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
	{kind: kPart, key: "opening", sense: meaning("opening, openings | opening from left, opening from right, opening side, measured, span, bay"), ways: "OPENING\n(gap|space|way|hole|room) for OPENING\nto where OPENING [(begins|starts)]\n(way|gap|space|hole) (to get through|to pass)"},
	{kind: kPart, key: "opening", sense: meaning("opening"), ways: "OPENING (width|widths|clearance)\n[clear] (width|clearance) of OPENING\nclear opening [width]"},
	{kind: kPart, key: "through", sense: meaning("opening, openings | opening side, opening from left, opening from right"), ways: "to walkthrough\nto (get|go|squeeze|come) (through|thru)\n(walking|getting|passing) through"},
	{kind: kPart, key: "opening side", sense: meaning("opening side"), ways: "opening side\n(side|position|location|place) of OPENING\nOPENING (side|position|location|place)\nwhich side OPENING\nopening on which side"},
	{kind: kPart, key: "stiffener", sense: meaning("stiffeners, stiffener size | stiffener spacing, cut, price, ?cuts, screw length"), ways: "STIFF\nUPRIGHT (on|across|over|against) RAIL"},
	{kind: kPart, key: "stiffener spacing", sense: meaning("stiffener spacing"), ways: "STIFF (spacing|spcg|spcng|distance|spaces|centers|spacings)\n(spacing|distance) (of|between|for) STIFF\nBETWEEN STIFF\nfrom (one|each) STIFF to [the] next [(one|STIFF)]\nfrom STIFF to STIFF\nhow far apart STIFF"},
	{kind: kPart, key: "bracket", sense: meaning("| bracket thickness, bracket clearance, bracket reach, bracket ear, price, fit, ?hardware"), ways: "BRACKET\nBRACKET (plate|plates|metal|steel)"},
	{kind: kPart, key: "bracket thickness", sense: meaning("bracket thickness"), ways: "BRACKET (thickness|thk|thickn|metal|gauge)\nthickness of [(a|one|each)] BRACKET"},
	{kind: kPart, key: "bracket clearance", sense: meaning("bracket clearance"), ways: `
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
	{kind: kPart, key: "bracket reach", sense: meaning("bracket reach"), ways: `
		BRACKET reach
		[TOP] RAIL BRACKET (hole|screw)
		BRACKET (hole|screw)
		reach [of BRACKET]
		[to] (center|centre|middle) of [BRACKET] top [BRACKET] (hole|screw) [(of|in) BRACKET]
		[BRACKET] top [BRACKET] hole [(center|centre)] [(of|in) BRACKET]
		[to] [(center|centre|middle) of] BRACKET top hole
		(past|above|over|up past|up from|beyond) (top|upper) [edge] of RAIL
		(past|above|over|up past|up from|beyond|up above) RAIL (edge|top|upper edge|top edge)`},
	{kind: kLoc, key: "past rail", sense: meaning("| bracket ear, bracket reach"), ways: "(past|beyond|above|over|proud of) RAIL [(top and bottom|on both edges|each way)]\n(past|beyond|above|over) [RAIL] edge"},
	{kind: kPart, key: "bracket ear", sense: meaning("bracket ear"), ways: `
		BRACKET (ear|ears)
		(ear|ears) [of BRACKET]
		[BRACKET] (ear|ears) (stick|sticks|stand|stands|reach|project|extend|run|poke) [out]
		BRACKET (stands|sticks|stick|stand|reaches|projects|extends|runs) [out] (past|beyond|above|over|proud of) RAIL
		(past|beyond) RAIL above and below
		BRACKET (stands|sticks|projects|extends) out
		(stands|sticks) out [above and below]
		above and below`},
	{kind: kPart, key: "fit", sense: meaning("fit | ?cuts"), ways: `
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
	{kind: kLoc, key: "in all", sense: meaning("| fit, ?shopping, ?cost, rails, cut, added posts, bays, openings, spare"), ways: "in all\nall told\nall up\nin total\nall in all\nall in"},
	{kind: kPart, key: "kerf", sense: meaning("kerf"), ways: `
		kerf
		[saw] (blade|saw) (takes|eats|removes|loses|leaves|cuts|wastes|is|takes out|kerf|width|thickness)
		(saw|blade) [kerf]
		(width|thickness) of [saw] (cut|blade|kerf)
		(per|every|each|a) (cut|saw cut)
		saw cut
		(with|at|in) (each|every|per) (cut|saw cut)
		[thin] blade [(on today|today|on)] (|it takes|takes)`},
	{kind: kPart, key: "trim", sense: meaning("trim"), ways: `
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
	{kind: kPart, key: "spare", sense: meaning("spare | rails, have"), ways: `
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
	{kind: kPart, key: "tape", sense: meaning("tape"), ways: `
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
	{kind: kPart, key: "drop", sense: meaning("drop"), ways: `
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
	{kind: kPart, key: "beyond", sense: meaning("| drop"), ways: "(lawn|grass|dirt|soil|turf)"},
	{kind: kLoc, key: "beyond", sense: meaning("| drop"), ways: "(outside|beyond|behind|out back|past it|behind it|beyond it)"},
	{kind: kPart, key: "budget", sense: meaning("budget"), ways: `
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
	{kind: kPart, key: "cap", sense: meaning("cap size | price"), ways: "cap\n[top] cap (size|board|rail)\n(top|cap) board\n[flat] (along|on) [the] top [for a cap]\n(as|for) a cap"},
	{kind: kPart, key: "slab thickness", sense: meaning("slab thickness"), ways: "(slab|concrete|pad) (thickness|depth|thk)\nthickness of (slab|concrete|pad)"},
	{kind: kPart, key: "edge distance", sense: meaning("edge distance"), ways: "[slab] edge distance\n(distance|far|space) (to|from) [slab] edge [of (slab|concrete|pad)]\n(anchor|anchors|bolt|bolts|it) [(is|are|sit|sits)] (from|to) [slab] edge\nfrom [(the)] edge of (slab|concrete|pad)\nfrom [slab] edge\n(slab|concrete) edge"},
	{kind: kPart, key: "anchor size", sense: meaning("anchor size | price, edge distance"), ways: "(anchor|anchors|anchor bolt|anchor bolts) [(size|diameter|dia)]\n(diameter|size) of anchor"},
	{kind: kPart, key: "screw length", sense: meaning("screw length"), ways: "(screw|screws) [(length|lengths)]\nlength of (screw|screws)"},
	{kind: kPart, key: "coats", sense: meaning("coats"), ways: "(coat|coats) [(of (stain|paint|finish|oil|varnish))]"},
	{kind: kPart, key: "coverage", sense: meaning("coverage"), ways: "coverage"},
	{kind: kPart, key: "floor", sense: meaning("| wall height, bottom gap, post height, base height, rail top, drop, floor at right, floor falls, slab thickness, fixed rail top, marks"), ways: "FLOOR"},
	{kind: kLoc, key: "off floor", sense: meaning("| wall height, bottom gap, post height, base height, rail top, drop, fixed rail top, marks, bracket reach"), ways: `
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
	{kind: kLoc, key: "of wall", sense: meaning("| *"), ways: "(of|on|in|for|along|across|at|from|with) WALL\n(this|that) WALL"},
	{kind: kLoc, key: "more or less nothing", sense: meaning("| *"), ways: "(one over other|one above other|on top of each other|on top of one another|one on top of the other|one over the other|one above the other|high)\nfrom left to right\nleft to right\nat the moment\nfor now\nat all\nfrom end to end\nnear edge [of]\nnearest edge\nleft edge\nedge of"},
	{kind: kPart, key: "opening from left", sense: meaning("opening from left"), ways: "from [(face of)] LEFT [END] [POST] to [(near edge of|edge of|start of)] OPENING\n(opening|op) from LEFT [END] [(POST|side|end|face|one)]"},
	{kind: kPart, key: "opening from right", sense: meaning("opening from right"), ways: "from [(face of)] RIGHT [END] [POST] to [(near edge of|edge of|start of)] OPENING\n(opening|op) from RIGHT [END] [(POST|side|end|face|one)]"},
	{kind: kFromSide, key: "left", sense: meaning("| opening from left, post from left"), ways: "(from|off|frm|past|of|after|beyond) LEFT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]\nfrom [(face of)] LEFT [END] POST"},
	{kind: kFromSide, key: "right", sense: meaning("| opening from right, post from right"), ways: "(from|off|frm|past|of|after|beyond|before) RIGHT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]\nfrom [(face of)] RIGHT [END] POST"},
	{kind: kSide, key: "left", sense: meaning("opening side"), ways: "[(hard|right|tight|flush)] [(up)] [(on|at|against|to|by|beside|next to|over to|over on|over at|along|towards|toward|off to)] [(against)] LEFT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]\nto the l"},
	{kind: kSide, key: "right", sense: meaning("opening side"), ways: "[(hard|right|tight|flush)] [(up)] (on|at|against|to|by|beside|next to|over to|over on|over at|along|towards|toward|off to) [(against)] RIGHT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]\nRIGHT\nRIGHT [(hand)] (side|end|POST)\nRIGHT END POST\nto the r"},
	{kind: kSide, key: "middle", sense: meaning("opening side"), ways: "[(right|dead|smack|set)] (in|at|to|near) MIDDLE [(of (WALL|span|it|everything))]\nMIDDLE\ncentered\ncentred\ndead center\nin the centre"},
	{kind: kPart, key: "pool", sense: meaning("pool"), ways: "pool [(barrier|fence|wall)]"},
}
