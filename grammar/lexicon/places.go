package lexicon

// places are more names of parts of the wall, of its measures and of places on it, beside those of parts.
var places = []Entry{
	{Kind: Part, Key: "rail", Sense: Meaning("rails, rail size | rail face, gap, rail top, fixed rail top, stock, measured, bracket reach, fit, cut, ?cuts, price, extra, have, boards, short, marks, stiffeners, bottom gap, tape, tolerance, bays, trim"), Ways: `
		RAIL [(that|which)] (go|goes|run|runs|going|running|lie|lies|lying) (across|crosswise|sideways|horizontally|lengthwise|side to side|level|between POST|from post to post)
		(horizontal|crosswise|cross) (RAIL|lumber|wood|ones)`},
	{Kind: Part, Key: "gap", Sense: Meaning("gap"), Ways: "(hole|holes|crack|cracks|void|voids|opening|openings|reveal|reveals|clearances|distances|spacings|spread) [(in|left)] BETWEEN [(any|two|neighboring|adjacent)] (RAIL|them|others)\n(rail|board|slat|plank|course) (gap|gaps|space|spaces|spacing|spacings)\n(clear|open|free|air) (space|gap|gaps|spaces|distance) [(in|left)] BETWEEN [(any|two|neighboring|adjacent)] RAIL"},
	{Kind: Part, Key: "bottom gap", Sense: Meaning("bottom gap"), Ways: `
		(SPACE|) between FLOOR and LOWEST (RAIL|one)
		(SPACE|) between FLOOR and (LOWEST|first) RAIL
		(SPACE|) from FLOOR [up] to [(underside|bottom) of] (LOWEST|first) (RAIL|one)
		(SPACE|) below [(it|them)] (LOWEST|first) (RAIL|one)
		(gap|space|clearance|opening|room|air) UNDER WALL
		(under|below|beneath|underneath) the rails`},
	{Kind: Part, Key: "wall height", Sense: Meaning("wall height"), Ways: "WALL (top|upper) edge\nas (for|to) how HIGH [(it|WALL) (gets|is|should be|will be|goes|stands|ends up|comes out)]"},
	{Kind: Part, Key: "post height", Sense: Meaning("post height"), Ways: "(top|tops) of [(added|new|extra)] POST\n(top|tops) of (added|new|extra) (one|ones)"},
	{Kind: Loc, Key: "on base", Sense: Meaning("base height |"), Ways: "(on|in|by|with) [(its|the|their|a)] [(post|metal|steel)] (base|bases|standoff|standoffs)"},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: `
		[POST] base (holds|lifts|carries|keeps|raises|sets|stands|puts) [(bottom|foot|end|underside|bottom end) of] (|added|new) POST [up]
		(bottom|foot|underside|bottom end|end grain) of (|added|new) POST
		(added|new|) POST (bottom|bottoms)`},
	{Kind: Loc, Key: "without posts", Sense: Meaning("| wall height, span, bay, bays, opening, rails"), Ways: "(not|without) (counting|including) [(the|any|two|both)] [(END|added|new)] POST\nPOST not (counted|included)"},
	{Kind: Part, Key: "opening from left", Sense: Meaning("opening from left"), Ways: "from LEFT [END] POST [(face|edge|side)] to [(near edge of|edge of|start of|nearest edge of)] OPENING\nbetween LEFT [END] POST [face] and OPENING\nbetween OPENING and LEFT [END] POST [face]"},
	{Kind: Part, Key: "opening from right", Sense: Meaning("opening from right"), Ways: "from RIGHT [END] POST [(face|edge|side)] to [(near edge of|edge of|start of|nearest edge of)] OPENING\nbetween RIGHT [END] POST [face] and OPENING\nbetween OPENING and RIGHT [END] POST [face]"},
	{Kind: FromSide, Key: "left", Sense: Meaning("| opening from left, post from left"), Ways: "(away|in|over|out) from LEFT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]\nin from the l"},
	{Kind: FromSide, Key: "right", Sense: Meaning("| opening from right, post from right"), Ways: "(away|in|over|out) from RIGHT [(side|end|hand|edge|one)] [END] [(POST|face|side|end)] [face]"},
	{Kind: Dim, Key: "face to face", Sense: Meaning("| gap, span, bay, opening"), Ways: "edge to edge\n[from] [POST] face to [POST] face"},
	{Kind: Dim, Key: "high", Sense: Meaning("wall height | post height, base height, rail top, rails, marks"), Ways: "up the wall\nin the stack\nin a stack"},
	{Kind: Part, Key: "size", Sense: Meaning("| rail size, post size, end post size, added post size, stiffener size, cap size, stock, price, have, extra, boards"), Ways: "sz\nszs\ndimension lumber"},
	{Kind: Part, Key: "rail size", Sense: Meaning("rail size"), Ways: "RAIL (sz|dims|dimensions)"},
	{Kind: Part, Key: "post size", Sense: Meaning("post size"), Ways: "POST (sz|dims|dimensions)"},
	{Kind: Part, Key: "end post size", Sense: Meaning("end post size"), Ways: "END POST (sz|dims|dimensions)"},
	{Kind: Part, Key: "added post size", Sense: Meaning("added post size"), Ways: "(added|new|extra|intermediate) POST (sz|dims|dimensions)"},
	{Kind: Part, Key: "stiffener size", Sense: Meaning("stiffener size"), Ways: "STIFF (sz|dims|dimensions)"},
	{Kind: Part, Key: "overall", Sense: Meaning("overall"), Ways: `
		(overall|total|full|whole) (dimension|measure|measurement|distance|run|extent|size)
		(outside|outer) (measure|measurement|dimensions|width|length|distance)
		o to o
		(outside|outsides|out) to (outside|outsides|out) (dimension|measure|measurement|distance|length|width)
		[from] outside of [(one|the left|the first|left)] END POST to [the] outside of [(the other|other|the right|right)] [(one|END)] [POST]
		outside of one end post to [the] outside of [the] other
		[(both|two)] END POST (included|counted|counted in|and all)
		(post|posts) (included|counted in)`},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: `
		(clr|clear) [(distance|space|opening|dim|width)] BETWEEN [(two)] [END] (posts|psts)
		(inside|clear|net) (dimension|measure|measurement|distance|width|length) [(between|from) END POST]`},
	{Kind: Part, Key: "centers", Sense: Meaning("centers"), Ways: `
		(center|centre) to (center|centre) (distance|dimension|spacing|measure|measurement) [(of|between|from)] [(two)] [END] [POST]
		(distance|spacing|dimension) (of|between|from) [(two)] [END] POST (center|centre) to (center|centre)
		END POST (center|centre) to (center|centre)`},
	{Kind: Part, Key: "end post", Sense: Meaning("end post size | span, centers, overall, post leans, post size, added posts"), Ways: "POST (at|on) (either|each|both|the) (end|ends|side|sides)\n(two|both) POST (at|on) the (ends|outside|outsides)\nPOST already (there|standing|in|up)\n(outside|outer|outermost|existing|corner) (ones|uprights)"},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: `
		(POST|UPRIGHT|one|ones) [(that|which)] [(i|we|you)] [(am|are|will be)] (adding|putting in|setting|putting up|installing|add|put in|set|going to add|going to set|going to put in) [(between|in between|in the middle|myself|ourselves)]
		(in between|inbetween|intermediary|interior|inner|center|middle|mid) (POST|UPRIGHT|ones)
		(whatever|whichever|any) POST (go|goes|come|comes|sit|sits|end up) (in between|between|in the middle)
		POST (that|which) (go|goes|come|comes|sit|sits|stand|stands) (in between|between|in the middle|between the ends|between the end posts)
		(POST|posts) to (add|set|put in)`},
	{Kind: Part, Key: "bay", Sense: Meaning("bay, bays | stiffeners, stiffener spacing, measured, rails, gap, stiffener size, short, cut, ?cuts, opening, span"), Ways: "runs\n(run|runs) of (rails|boards|slats|planks)\n(bay|section|panel) run"},
	{Kind: Part, Key: "opening", Sense: Meaning("opening, openings | opening from left, opening from right, opening side, measured, span, bay"), Ways: "(space|gap|hole|way|spot|place|room) to (walk|step|get|go|pass|squeeze|come) (through|thru|in|by)\n(way|walk) in"},
	{Kind: Part, Key: "bracket thickness", Sense: Meaning("bracket thickness"), Ways: "(metal|steel|plate|sheet metal|gauge|stock) (on|of|in) BRACKET"},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: "[for] [the] (lumber|wood|material|materials|timber) (and|plus|&) (hardware|fittings|brackets|screws|everything|fasteners) [,] [(total|all told|all in|in all|together|combined|altogether)]\n[for] (the whole lot|the lot|whole lot|everything|all of it|the whole job|the whole thing) [(has to|must|should|may|can|needs to|have to)] (cost|come in|come in at|come to|run)"},
	{Kind: Quest, Key: "layout", Sense: Meaning("?layout"), Ways: "layout [,] what have you got [so far]"},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: `
		(nothing|not|no) (finer|smaller|closer|better) than
		(mark|marks|marked|line|lines|graduated|divided|marking) (in|to|every|down to) [the] [(nearest|closest)]
		(round|rounding) [(the|my|your|all|every|each|off)] [(marks|lengths|cuts|everything|figures|numbers|dimensions|measurements)] [off] to [the] [(nearest|closest)]
		(give|tell|show|list|read|say) [ME] (everything|it all|all of it|lengths|marks|figures|dimensions|numbers|them) to [the] (nearest|closest)
		(tape|rule|ruler) (in|to|marked in|with marks every|has marks every|divided in|graduated in)`},
	{Kind: Loc, Key: "more or less nothing", Sense: Meaning("| *"), Ways: "(not|without) (counting|including) [(the|any|a)] (cap|caps|post caps|finial|finials|cap board)\nclear of everything"},
	{Kind: Part, Key: "fit", Sense: Meaning("fit"), Ways: `
		(play|slack|slop|clearance|wiggle room|leeway) [(in total|total|all told|in all|altogether|overall)] (on|in|for) [the] RAIL (length|lengths)
		shorter than [the] (space|opening|gap|bay) [(,)] [(all told|in all|in total|altogether|overall|all up)]
		(shorter|short|shy) than [the] (space|opening|bay) [(between the brackets|between brackets|they go in|it goes in)]
		RAIL CUT (dead tight|tight|exact|dead exact|net)
		(on|in) (RAIL|rails) length`},
	{Kind: Part, Key: "kerf", Sense: Meaning("kerf"), Ways: `
		cut itself (takes|eats|wastes|loses|removes|is|uses up|costs|uses)
		(each|every|a|one|per) (saw cut|cut|saw kerf|pass) (wastes|eats|takes|removes|loses|costs|uses|turns to sawdust|burns|turns into sawdust)
		(lose|losing|lost|loses|waste|wasting|wastes) (to|in|on|per|with|for|at) (each|every|a|per|the) (cut|saw cut|kerf|pass)
		(to|on|for) (each|every|the|per) (cut|saw cut|pass|saw)
		(new|thin|thick|full|this|that) (kerf|blade kerf|blade)
		(goes|turns) to (sawdust) [(with|at|in|on|each|every|per)] [(each|every|the)] [cut]`},
	{Kind: Part, Key: "trim", Sense: Meaning("trim"), Ways: `
		(trimming|trim) [(off|from|of)] (each|every|a|the|all) (RAIL|end|stick|length|piece)
		(off|from) (each|every|a) (RAIL|stick|length|piece) (for trim|to trim|for trimming|to clean up the end|to clean the end up|to clean up the ends|to get a square end|for a square end|for a clean end|to make it square|to square it|to square it up|to square up|to square the end|to square up the end|to get it square)
		[of] (each|every) [(RAIL|one|stick)] (goes to|goes on|goes for|is lost to|is for|for|to|lost to|lost in|wasted) (squaring|trimming|trim) [(up|off)] [the] [(end|ends)]
		(to|for) (get|getting|make|making) [(a|the)] (end|ends) square
		to (square|clean|true) (it|them|that) [up]
		to (get|make) a (square|clean|true) end
		trimming`},
}
