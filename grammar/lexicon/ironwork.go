package lexicon

// ironwork are more ways to speak of rail brackets: when two of them meet, how far their ears stand out, where their top hole is,
// how thick they are.
var ironwork = []Entry{
	{Kind: Part, Key: "bracket clearance", Sense: Meaning("bracket clearance"), Ways: `
		(BRACKET|they) [(would|will|can|could|start to|begin to|just|only)] (CLASH|(run|bang|bump|knock|crash|butt|smack|push|press|jam|ram|slam|go|bash) (into|against|together|up against)|get in way of) [(each other|one another|together|each other's way|another)] (if|when|once|whenever|wherever|where|any time|as soon as|with|in|at|for) [(GAP|RAIL|it|they)] [(is|are|gets|goes|drops|falls|comes|shrinks|closes)] [(any|anything|down|to)] (below|under|beneath|less than|closer than|tighter than|smaller than|narrower than|short of)
		(BRACKET|they) [(would|will|can|could|start to|begin to|just|only)] (CLASH|(run|bang|bump|knock|crash|butt|smack|push|press|jam|ram|slam|go|bash) (into|against|together|up against)) [(each other|one another|together|another)] unless [(GAP|RAIL|it|they|there)] [(is|are|gets)] [(at least|more than|over)]
		BRACKET [(of|on|from) (neighboring|neighbouring|adjacent|adjoining|two|next) RAIL] [(would|will|can|could|start to|begin to|just|do)] (CLASH|(run|bang|bump|knock|crash|butt|smack|push|press|jam|ram|slam|bash) (into|against|together|up against)) [(each other|one another|together|another)]
		(least|smallest|tightest|closest|narrowest|minimum|lowest) GAP [that] [(those|these)] BRACKET [(will|can|could|would)] (take|allow|allows|stand|tolerate|tolerates|accept|accepts|permit|permits|need|needs|want|wants|have|manage|bear) [(before|until|till|without|or) [they] [(will|would|start|begin)] [(to)] (CLASH|meeting|touching|clashing|hitting|bumping|colliding|fouling) [(each other|one another)]]
		(least|smallest|tightest|closest|narrowest|minimum|lowest) GAP (before|until|till|at which|without|where|so|for) BRACKET [(do not|will not|not|never|still do not)] (CLASH|meeting|touching|clashing|hitting|bumping|colliding|fouling|to clear) [(each other|one another)]
		(before|until|till|or|else|otherwise|or else) BRACKET [(will|would|start|begin)] [to] (CLASH|run into|bang into|bump into|knock into|knock together) [(each other|one another)]
		BRACKET (clear|miss|pass|avoid) (each other|one another|their neighbors|next one|next ones) [(from|at|with|starting at|beginning at|starting from|only from|when GAP is|once GAP is|if GAP is|as long as GAP is)]
		BRACKET of neighboring RAIL (clear|miss) (each other|one another) [(from|at|with|when GAP is|once GAP is|if GAP is|as long as GAP is)]
		(for|so) BRACKET [to] (not to|not|never) (CLASH|run into|bump into) [(each other|one another)]
		(gap|clearance|room|space) BRACKET (need|needs|require|requires|ask|take|call for|want) [(between them|to clear|to clear each other|to clear one another)]
		BRACKET (need|require|call for|ask for|want) [(a gap of|a clearance of)] [(at least)]`},
	{Kind: Loc, Key: "past rail", Sense: Meaning("| bracket ear, bracket reach"), Ways: `
		(past|beyond|above|over|proud of) RAIL [(edge|edges)] and [(just)] (same|as much|likewise|that much|the same amount|also) (below|under|beneath|underneath|at bottom|underside|other side|at other end) [(it|them|that)]
		(past|beyond|above|over|proud of) RAIL and (below|under|beneath) it [(as well|too|both)]
		(past|beyond|above|over|proud of) RAIL on (top|upper edge) and [(on)] (bottom|lower edge|underside)
		(above|over|past|beyond) and (below|under|beneath) RAIL
		(past|beyond|over|above) [(both|either|each)] (edge|edges) of RAIL`},
	{Kind: Part, Key: "bracket ear", Sense: Meaning("bracket ear"), Ways: `
		BRACKET (poke|pokes|jut|juts|rise|rises|overhang|overhangs|overlap|show|shows|run|runs|go|goes|extend|extends|project|projects|stick|sticks|stand|stands|reach|reaches) [(up|out|off)] (past|over|above|beyond|proud of) [(top|edge|edges|both edges|either edge)] [of] RAIL [(edge|edges)] [(above and below|top and bottom|both ways|each way|on both sides|either side|above and under)]
		[BRACKET] (ear|ears) (hang|hangs|stick|sticks|stand|stands|reach|reaches|poke|pokes|jut|juts|extend|extends|project|projects|run|runs|go|goes) [(out|up)] (over|past|beyond|above|proud of) RAIL [by]
		BRACKET (jut|juts|overhang|overhangs) [(RAIL|out|up)]
		(ears|ear|lugs|lug|tabs|tab|flanges|flange) [(of|on)] BRACKET
		BRACKET (lugs|lug|tabs|tab|flanges|flange) [(stick|sticks|stand|stands|project|poke|reach)] [(out|past RAIL|beyond RAIL)]`},
	{Kind: Part, Key: "bracket reach", Sense: Meaning("bracket reach"), Ways: `
		[(center|centre|middle) of] (TOP|upper) (hole|screw hole|bolt hole|screw) (of|in|on) BRACKET [(is|sits|lies|comes|are)] [(centered|centred|drilled|bored|punched|located)]
		[(center|centre|middle) of] BRACKET [(TOP|upper)] (hole|screw hole|bolt hole|screw) [(is|sits|lies|comes|are)] [(centered|centred|drilled|bored|punched|located)]
		[(center|centre|middle) of] (TOP|upper) BRACKET (hole|screw hole|bolt hole|screw) [(is|sits|lies|comes)] [(centered|centred|drilled|bored|punched|located)]
		[(up|on up)] to [(center|centre|middle) (of|line of)] BRACKET 's (TOP|upper) (hole|screw hole|bolt hole)
		[(up|on up)] to [(center|centre|middle) (of|line of)] (TOP|upper) (hole|screw hole|bolt hole) (of|in|on) BRACKET
		[(up|on up)] to [(center|centre|middle) (of|line of)] (TOP|upper) BRACKET (hole|screw hole|bolt hole)
		(TOP|upper) (hole|screw hole|bolt hole) 's (center|centre|middle)
		how far [up] BRACKET (reach|reaches|go|goes) [up] (past|over|above|beyond) RAIL`},
	{Kind: Loc, Key: "past rail", Sense: Meaning("| bracket reach"), Ways: "from RAIL 's (TOP|upper) edge [up]\nfrom [the] (TOP|top edge|upper edge|upper side) of RAIL [up]\n(above|over|past|up from|beyond) [its] RAIL 's (TOP|upper) edge"},
	{Kind: Wh, Key: "apart", Sense: Meaning("| bracket reach, bracket ear"), Loose: true, Ways: "how (high|far) [(up|out)] (above|over|past|beyond|proud of|from) [(top|edge|top edge|upper edge)] [(of)] RAIL"},
	{Kind: Part, Key: "bracket thickness", Sense: Meaning("bracket thickness"), Ways: `
		(metal|steel|plate|sheet|iron|material|gauge) (of|in|on) [(a|one|each)] BRACKET
		BRACKET (steel|plate|stock|gage|thickness|wall)
		(gauge|gage|thickness) of [the] (metal|steel|plate|sheet|iron) (of|in|on) BRACKET`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		(box|packet|package|pack|bag|wrapper|carton|sleeve|sticker|tag|packaging|blister pack|back of (box|packet|package|pack|bag)) [(from|of) (store|brackets|yard|bracket)] (says|say|claims|claim|states|gives|lists|shows|has|calls it|reads|tells me|tells us) [(that)]
		(according to|going by|per) (box|packet|package|pack|bag|wrapper|carton|sticker|tag|packaging)`},
}
