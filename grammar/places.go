package grammar

// places are more names of parts of the wall, of its measures and of places on it, beside those of parts.
var places = []entry{
	{kind: kPart, key: "rail", sense: meaning("rails, rail size | rail face, gap, rail top, fixed rail top, stock, measured, bracket reach, fit, cut, ?cuts, price, extra, have, boards, short, marks, stiffeners, bottom gap, tape, tolerance, bays, trim"), ways: `
		RAIL [(that|which)] (go|goes|run|runs|going|running|lie|lies|lying) (across|crosswise|sideways|horizontally|lengthwise|side to side|level|between POST|from post to post)
		(horizontal|crosswise|cross) (RAIL|lumber|wood|ones)`},
	{kind: kPart, key: "gap", sense: meaning("gap"), ways: "(hole|holes|crack|cracks|void|voids|opening|openings|reveal|reveals|clearances|distances|spacings|spread) [(in|left)] BETWEEN [(any|two|neighboring|adjacent)] (RAIL|them|others)\n(rail|board|slat|plank|course) (gap|gaps|space|spaces|spacing|spacings)\n(clear|open|free|air) (space|gap|gaps|spaces|distance) [(in|left)] BETWEEN [(any|two|neighboring|adjacent)] RAIL"},
	{kind: kPart, key: "bottom gap", sense: meaning("bottom gap"), ways: `
		(SPACE|) between FLOOR and LOWEST (RAIL|one)
		(SPACE|) between FLOOR and (LOWEST|first) RAIL
		(SPACE|) from FLOOR [up] to [(underside|bottom) of] (LOWEST|first) (RAIL|one)
		(SPACE|) below [(it|them)] (LOWEST|first) (RAIL|one)
		(gap|space|clearance|opening|room|air) UNDER WALL
		(under|below|beneath|underneath) the rails`},
	{kind: kPart, key: "wall height", sense: meaning("wall height"), ways: "WALL (top|upper) edge\nas (for|to) how HIGH [(it|WALL) (gets|is|should be|will be|goes|stands|ends up|comes out)]"},
	{kind: kPart, key: "post height", sense: meaning("post height"), ways: "(top|tops) of [(added|new|extra)] POST\n(top|tops) of (added|new|extra) (one|ones)"},
	{kind: kLoc, key: "on base", sense: meaning("base height |"), ways: "(on|in|by|with) [(its|the|their|a)] [(post|metal|steel)] (base|bases|standoff|standoffs)"},
	{kind: kPart, key: "base height", sense: meaning("base height"), ways: `
		[POST] base (holds|lifts|carries|keeps|raises|sets|stands|puts) [(bottom|foot|end|underside|bottom end) of] (|added|new) POST [up]
		(bottom|foot|underside|bottom end|end grain) of (|added|new) POST
		(added|new|) POST (bottom|bottoms)`},
	{kind: kLoc, key: "without posts", sense: meaning("| wall height, span, bay, bays, opening, rails"), ways: "(not|without) (counting|including) [(the|any|two|both)] [(END|added|new)] POST\nPOST not (counted|included)"},
	{kind: kPart, key: "opening from left", sense: meaning("opening from left"), ways: "from LEFT [END] POST [(face|edge|side)] to [(near edge of|edge of|start of|nearest edge of)] OPENING\nbetween LEFT [END] POST [face] and OPENING\nbetween OPENING and LEFT [END] POST [face]"},
	{kind: kPart, key: "opening from right", sense: meaning("opening from right"), ways: "from RIGHT [END] POST [(face|edge|side)] to [(near edge of|edge of|start of|nearest edge of)] OPENING\nbetween RIGHT [END] POST [face] and OPENING\nbetween OPENING and RIGHT [END] POST [face]"},
	{kind: kFromSide, key: "left", sense: meaning("| opening from left, post from left"), ways: "(away|in|over|out) from LEFT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]\nin from the l"},
	{kind: kFromSide, key: "right", sense: meaning("| opening from right, post from right"), ways: "(away|in|over|out) from RIGHT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]"},
	{kind: kDim, key: "face to face", sense: meaning("| gap, span, bay, opening"), ways: "edge to edge\n[from] [POST] face to [POST] face"},
	{kind: kDim, key: "high", sense: meaning("wall height | post height, base height, rail top, rails, marks"), ways: "up the wall\nin the stack\nin a stack"},
	{kind: kPart, key: "size", sense: meaning("| rail size, post size, end post size, added post size, stiffener size, cap size, stock, price, have, extra, boards"), ways: "sz\nszs\ndimension lumber"},
	{kind: kPart, key: "rail size", sense: meaning("rail size"), ways: "RAIL (sz|dims|dimensions)"},
	{kind: kPart, key: "post size", sense: meaning("post size"), ways: "POST (sz|dims|dimensions)"},
	{kind: kPart, key: "end post size", sense: meaning("end post size"), ways: "END POST (sz|dims|dimensions)"},
	{kind: kPart, key: "added post size", sense: meaning("added post size"), ways: "(added|new|extra|intermediate) POST (sz|dims|dimensions)"},
	{kind: kPart, key: "stiffener size", sense: meaning("stiffener size"), ways: "STIFF (sz|dims|dimensions)"},
	{kind: kPart, key: "overall", sense: meaning("overall"), ways: `
		(overall|total|full|whole) (dimension|measure|measurement|distance|run|extent|size)
		(outside|outer) (measure|measurement|dimensions|width|length|distance)
		o to o
		(outside|outsides|out) to (outside|outsides|out) (dimension|measure|measurement|distance|length|width)
		[from] outside of [(one|the left|the first|left)] END POST to [the] outside of [(the other|other|the right|right)] [(one|END)] [POST]
		outside of one end post to [the] outside of [the] other
		[(both|two)] END POST (included|counted|counted in|and all)
		(post|posts) (included|counted in)`},
	{kind: kPart, key: "span", sense: meaning("span"), ways: `
		(clr|clear) [(distance|space|opening|dim|width)] BETWEEN [(two)] [END] (posts|psts)
		(inside|clear|net) (dimension|measure|measurement|distance|width|length) [(between|from) END POST]`},
	{kind: kPart, key: "centers", sense: meaning("centers"), ways: `
		(center|centre) to (center|centre) (distance|dimension|spacing|measure|measurement) [(of|between|from)] [(two)] [END] [POST]
		(distance|spacing|dimension) (of|between|from) [(two)] [END] POST (center|centre) to (center|centre)
		END POST (center|centre) to (center|centre)`},
	{kind: kPart, key: "end post", sense: meaning("end post size | span, centers, overall, post leans, post size, added posts"), ways: "POST (at|on) (either|each|both|the) (end|ends|side|sides)\n(two|both) POST (at|on) the (ends|outside|outsides)\nPOST already (there|standing|in|up)\n(outside|outer|outermost|existing|corner) (ones|uprights)"},
	{kind: kPart, key: "added post", sense: meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), ways: `
		(POST|UPRIGHT|one|ones) [(that|which)] [(i|we|you)] [(am|are|will be)] (adding|putting in|setting|putting up|installing|add|put in|set|going to add|going to set|going to put in) [(between|in between|in the middle|myself|ourselves)]
		(in between|inbetween|intermediary|interior|inner|center|middle|mid) (POST|UPRIGHT|ones)
		(whatever|whichever|any) POST (go|goes|come|comes|sit|sits|end up) (in between|between|in the middle)
		POST (that|which) (go|goes|come|comes|sit|sits|stand|stands) (in between|between|in the middle|between the ends|between the end posts)
		(POST|posts) to (add|set|put in)`},
	{kind: kPart, key: "bay", sense: meaning("bay, bays | stiffeners, stiffener spacing, measured, rails, gap, stiffener size, short, cut, ?cuts, opening, span"), ways: "runs\n(run|runs) of (rails|boards|slats|planks)\n(bay|section|panel) run"},
	{kind: kPart, key: "opening", sense: meaning("opening, openings | opening from left, opening from right, opening side, measured, span, bay"), ways: "(space|gap|hole|way|spot|place|room) to (walk|step|get|go|pass|squeeze|come) (through|thru|in|by)\n(way|walk) in"},
	{kind: kPart, key: "bracket thickness", sense: meaning("bracket thickness"), ways: "(metal|steel|plate|sheet metal|gauge|stock) (on|of|in) BRACKET"},
	{kind: kPart, key: "budget", sense: meaning("budget"), ways: "[for] [the] (lumber|wood|material|materials|timber) (and|plus|&) (hardware|fittings|brackets|screws|everything|fasteners) [,] [(total|all told|all in|in all|together|combined|altogether)]\n[for] (the whole lot|the lot|whole lot|everything|all of it|the whole job|the whole thing) [(has to|must|should|may|can|needs to|have to)] (cost|come in|come in at|come to|run)"},
	{kind: kQuest, key: "layout", sense: meaning("?layout"), ways: "layout [,] what have you got [so far]"},
	{kind: kPart, key: "tape", sense: meaning("tape"), ways: `
		(nothing|not|no) (finer|smaller|closer|better) than
		(mark|marks|marked|line|lines|graduated|divided|marking) (in|to|every|down to) [the] [(nearest|closest)]
		(round|rounding) [(the|my|your|all|every|each|off)] [(marks|lengths|cuts|everything|figures|numbers|dimensions|measurements)] [off] to [the] [(nearest|closest)]
		(give|tell|show|list|read|say) [ME] (everything|it all|all of it|lengths|marks|figures|dimensions|numbers|them) to [the] (nearest|closest)
		(tape|rule|ruler) (in|to|marked in|with marks every|has marks every|divided in|graduated in)`},
	{kind: kLoc, key: "more or less nothing", sense: meaning("| *"), ways: "(not|without) (counting|including) [(the|any|a)] (cap|caps|post caps|finial|finials|cap board)\nclear of everything"},
	{kind: kPart, key: "fit", sense: meaning("fit"), ways: `
		(play|slack|slop|clearance|wiggle room|leeway) [(in total|total|all told|in all|altogether|overall)] (on|in|for) [the] RAIL (length|lengths)
		shorter than [the] (space|opening|gap|bay) [(,)] [(all told|in all|in total|altogether|overall|all up)]
		(shorter|short|shy) than [the] (space|opening|bay) [(between the brackets|between brackets|they go in|it goes in)]
		RAIL CUT (dead tight|tight|exact|dead exact|net)
		(on|in) (RAIL|rails) length`},
	{kind: kPart, key: "kerf", sense: meaning("kerf"), ways: `
		cut itself (takes|eats|wastes|loses|removes|is|uses up|costs|uses)
		(each|every|a|one|per) (saw cut|cut|saw kerf|pass) (wastes|eats|takes|removes|loses|costs|uses|turns to sawdust|burns|turns into sawdust)
		(lose|losing|lost|loses|waste|wasting|wastes) (to|in|on|per|with|for|at) (each|every|a|per|the) (cut|saw cut|kerf|pass)
		(to|on|for) (each|every|the|per) (cut|saw cut|pass|saw)
		(new|thin|thick|full|this|that) (kerf|blade kerf|blade)
		(goes|turns) to (sawdust) [(with|at|in|on|each|every|per)] [(each|every|the)] [cut]`},
	{kind: kPart, key: "trim", sense: meaning("trim"), ways: `
		(trimming|trim) [(off|from|of)] (each|every|a|the|all) (RAIL|end|stick|length|piece)
		(off|from) (each|every|a) (RAIL|stick|length|piece) (for trim|to trim|for trimming|to clean up the end|to clean the end up|to clean up the ends|to get a square end|for a square end|for a clean end|to make it square|to square it|to square it up|to square up|to square the end|to square up the end|to get it square)
		[of] (each|every) [(RAIL|one|stick)] (goes to|goes on|goes for|is lost to|is for|for|to|lost to|lost in|wasted) (squaring|trimming|trim) [(up|off)] [the] [(end|ends)]
		(to|for) (get|getting|make|making) [(a|the)] (end|ends) square
		to (square|clean|true) (it|them|that) [up]
		to (get|make) a (square|clean|true) end
		trimming`},
}
