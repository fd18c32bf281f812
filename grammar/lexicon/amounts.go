package lexicon

// amounts are still more ways to say how much there is of something, and who asked for it.
var amounts = []Entry{
	{Kind: Unclear, Key: "unclear", Ways: `
		(first|second|third|fourth|fifth|last|other|next|previous) (option|choice|fix|solution|layout|way|remedy|suggestion|alternative|proposal|idea) [you (gave|offered|showed|listed)] [(me|us)] (has|have|had|gets|uses|gives|leaves|shows|needs|is|comes with|calls for)
		(option|choice|solution|layout|alternative) NTH (has|have|had|gets|uses|gives|leaves|shows|needs|is|comes with|calls for)`},
	{Kind: TailFill, Key: "asked for", Ways: `
		(that|this|it|which) is (what|how|the way) [(the|my|our)] (PERSON|PERSONKIND PERSON) (wants|want|wanted|needs|need|likes|like|liked|asked for|ordered|prefers|prefer|picked|chose|has in mind|is after|insists on|has (their|his|her) heart set on|carries|carry|sells|sell|stocks|stock) [it]
		(that|this|it|which) is (what|how|the way) (i|we) (want|need|like|asked for|prefer|picked|have in mind|am after|are after|chose) [it]
		(that|this|it|which) is what (i|we) (have|got|have got|bought|brought|own|picked up) [(on|in) (the|my|our) (truck|trailer|garage|shed|rack|shop|barn|van|pile)]
		(i|we) only have (RAIL|BRACKET|POST|screws|lumber|wood|money|room|space) for that (many|much)
		(that|which) (he|she|they|it|PERSON) (did|do|does|has|have|had) not (count|counted|know|know about|known about|see|seen|notice|noticed|mention|mentioned|include|included|list|listed|allow for|figure in|reckon with)
		(that|which) (he|she|they|PERSON) (forgot|missed|overlooked|left out|skipped)
		so (i|we) [already] have (those|them|these) [already]
		(those|which) (i|we) [already] (own|have) [already]
		not what PAPER (SAYS|SHOWS|SUBMITS)
		not the (published|nominal|stated|listed|catalog|book|official|printed) (width|size|face|figure|one|number|value|thickness)
		(no matter|whatever|never mind|regardless of) what PAPER (SAYS|SHOWS|SUBMITS)
		(it|that|which) is the (long|short|wide|narrow|big|small|odd|middle|wider|longer|shorter|bigger|smaller) (one|bay)
		(the) same (in|for|on) (all|each|every|both) [of] [the] BAY
		(i|we) had the wrong (BRACKET|tape|number|one|figure|drawing|board|page|catalog|sheet)
		with (this|that|the|my|a) [new|old|other] (one|blade|saw)
		as fine as (i|we|it) (go|goes|can go|get|gets|measure|work|mark)
		(that|which) is as fine as (i|we|it) (go|goes|can go|get|gets|measure|work|mark)
		(i|we) can not (see|read|mark|work|cut|measure) [any] finer [than that]
		[so] [please] (stick|keep) (to|with) (that|those|it|them)
		EARTH is (level|even|flush) with [the] FLOOR [(outside|out there|there|beyond|behind it)]
		do not let [the] (GAP|errors|error|it|them|rounding) (creep|drift|wander|grow|add up|accumulate|run away)
		(his|her|their|this|that) (way|layout|plan|version|design|one|drawing) (throws out|throws away|wastes|scraps|uses|takes|eats|tosses) [way|far] too (much|many) [(wood|lumber|boards|material|money|timber)]
		(easier|simpler|quicker|faster) (for (me|us)|that way|to cut)
		[so] each (pair|one|team|kid|student|group) (saws|cuts|works) alike
		(i|we) (am|are) not sorting [through] (them|boards|RAIL|the pile)`},
	{Kind: Fill, Key: "fill", Ways: `
		what (he|she|they|PERSON) (did not|forgot to|failed to|missed to) (notice|mention|say|see|count|tell (me|us|you)) is [that]
		[it] (turns|turned) out [that]
		what (he|she|they|PERSON) (missed|overlooked|forgot) is [that]
		forget [about] (what|how|whatever) (he|she|they|PERSON) (drew|drew up|sketched|planned)
		(to) (stick|poke|rise|reach|jut|pop|peek|protrude|project|extend) up
		(stick|sticks|poke|pokes|poking|jut|juts|pop|pops|protrude|protrudes) up
		(i|we) [have] changed (my|our) mind (about|on|regarding)
		(i|we) (misread|read) (the|my|our) (tape|ruler|rule|drawing|note|notes) [wrong]
		misread (the|my|our) (tape|ruler|rule|drawing|note|notes)
		(i|we) (held|hooked|put|ran|stretched|pulled|laid) (it|the tape|a tape|my tape) (on|across|from|over)
		hooked (it|the tape|a tape|my tape) (on|across|from|over)
		(i|we) [have] (switched|changed|swapped) (blades|saws|tapes)
		(switched|changed|swapped) (blades|saws|tapes)
		(children|class|kids|pupils|students|family|wife|husband|everyone|we all|all of us) [(has|have)] (settled|agreed|decided) (on|upon|for)
		(i|we) (could|can) [also] do with
		(i|we) [(have|got)] (set|put) [(aside|by)] [(some|a little|a bit of)] money [(aside|by)] [for (this|it|the wall|the job)]
		even (if|though|when) POST (is|are) not [(quite|all|exactly|perfectly|entirely|really|dead|completely|totally)] (true|plumb|straight|parallel|square|level|upright|perfect|in line|vertical|even)
		even (if|though|when) POST (is|are) [(a bit|a little|slightly|all|kind of|somewhat|not quite)] (crooked|out of plumb|out of true|out of square|off|bowed|twisted|leaning|wonky|skewed|bent|warped)
		(i|we) [have] (phoned|called|rang|asked|visited|tried) (the|our|my) (yard|store|shop|lumberyard|merchant|mill)
		(i|we) [also] (borrowed|rented|have|got|use) (my|our|a|the) [(father|brother|neighbor|uncle|friend|dad|buddy)] ['s] saw [,] whose
		(do not|no need to) (bother|fool|mess) (with|about)`},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: `
		[in] BETWEEN [(two|both|2)] (END|corner) (ones|pair|two)
		[in] BETWEEN (two|both|2) (old|existing|present) ones
		[in] BETWEEN (two|both|pair) [(of them)] that (are|is) [(already)] (there|up|standing|in)`},
	{Kind: Part, Key: "rail face", Sense: Meaning("rail face"), Ways: `
		[(put|held|laid|ran|stretched|pulled|hooked|took|set|got)] [(a|the|my)] (tape|ruler|rule|calipers|caliper|straightedge) (across|on|to|over|against) [the face of] [(one|two|some|each|all|a few|a couple|any|both)] [of] RAIL [to be sure] [,] [and] [(it|they|i|we|its face|the face)] [(is|are|was|were|says|say|reads|read|shows|show|showed|measures|measure|measured|comes to|come to|came to|gives|give|gave|get|got|found|turned out to be|really is|is really)]
		(measured|taped|checked|calipered|miked) [across] [the face of] [(one|two|some|each|all|a few|a couple|any|both)] [of] RAIL and (it|they|the face) (is|are|was|were|says|say|reads|read|shows|show|showed|measures|measure|measured|comes to|come to|came to|gives|give|gave)
		RAIL (show|shows|have|has|give|gives|measure|measures|come to|comes to) [a] face [of]
		(of|across the) face
		of face width
		(mine|ours|RAIL) (plane|planes|planed|dress|dresses|dressed|mill|mills|milled|sand|sands|sanded|shrink|shrinks|shrank|dry|dries|dried) (down|out) to`},
	{Kind: Part, Key: "bracket", Sense: Meaning("| bracket thickness, bracket clearance, bracket reach, bracket ear, price, fit, ?hardware"), Ways: "rail BRACKET"},
	{Kind: Part, Key: "bracket ear", Sense: Meaning("bracket ear"), Ways: `
		BRACKET (stand|stands|stick|sticks|hang|hangs|jut|juts|poke|pokes|project|projects|extend|extends|protrude|protrudes|lap|laps|overhang|overhangs) [out]
		and (each|each one|they|it) (stand|stands|stick|sticks|hang|hangs|jut|juts|poke|pokes|project|projects|extend|extends|protrude|protrudes) out`},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: `
		[POST] (base|foot|standoff|bases) [(we|i) (picked|picked out|chose|bought|got|have)] [(will|should|has to|is to)] (hold|holds|lift|lifts|carry|carries|keep|keeps|raise|raises) [(that|this|its)] (added|new|) POST [up]
		(metal|steel|POST) (base|foot|standoff) [(we|i) (picked|picked out|chose|bought|got|have)] [(will|should|has to|is to)] (hold|holds|lift|lifts|carry|carries|keep|keeps|raise|raises) [(that|this|its)] [(added|new)] (POST|it) [up]
		[(added|new)] POST base (holding|lifting|keeping|carrying|raising) (it|POST|the post)`},
	{Kind: Part, Key: "post height", Sense: Meaning("post height"), Ways: "TOP of (that|this) [(added|new)] POST"},
	{Kind: Loc, Key: "to top edge", Sense: Meaning("wall height |"), Ways: "[up] to (its|the) (TOP|upper) edge [of (TOP|) (RAIL|WALL)]\n[up] to (its|the) very top"},
	{Kind: Dim, Key: "height", Sense: Meaning("wall height | post height, base height, rail top"), Ways: "of HEIGHT"},
	{Kind: Loc, Key: "of wall", Sense: Meaning("| *"), Ways: "in [(this|the|that)] WALL"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("bay | stiffeners, stiffener spacing, rails, gap, stiffener size, rail size, bays, short, cut, measured, opening, added posts"), Ways: `
		(behind|on|in|per|for) (each|every) (run|stretch) [of RAIL]`},
	{Kind: Part, Key: "stiffener", Sense: Meaning("stiffeners, stiffener size | stiffener spacing"), Ways: "as STIFF"},
	{Kind: Dim, Key: "face to face", Sense: Meaning("span | bay, opening"), Ways: `
		(measured|measuring|taken) (clear|inside|face to face|inside to inside) [between them]
		from one (inside|inner) (edge|face|side) to other
		[from] (inside|inner face|inside face|inner edge) of (one|first|left) [END] POST to (inside|inner face|inside face|inner edge) of (other|next|second|right)
		of open (space|air|room) between their (inner|inside) (faces|face|sides|edges)`},
	{Kind: Part, Key: "overall", Sense: Meaning("overall"), Ways: `
		[from] one (outside|outer) (edge|face|side) to other
		[from] (outside|outer face|outside face|outer edge) of (one|first|left) [END] POST to (outside|outer face|outside face|outer edge) of (other|next|second|right)`},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: "(clear) [,] (END POST to POST|POST to END POST)\n(END POST to POST|POST to END POST)"},
	{Kind: Fall, Key: "falls", Ways: "that is (how|what|the way) FLOOR (falls|drops|slopes|runs|pitches)"},
	{Kind: PerFoot, Key: "per foot", Ways: "(a|an) ft\nfor (each|every) foot [(you|we|i|it)] [(go|goes|run|runs|travel|travels|walk|move|moves)] [(along|across|over)] [to the right]"},
	{Kind: Part, Key: "floor", Sense: Meaning("| wall height, bottom gap, post height, base height, rail top, drop, floor at right, floor falls, slab thickness"), Ways: "PERSON (sloped|pitched|graded|poured|laid|tilted|built) FLOOR [so [that]] [it]\nPERSON (gave|give|gives|put in|made) FLOOR [with]"},
	{Kind: Side, Key: "right", Sense: Meaning("opening side"), Ways: "by the time (you|we|it|i) (reach|get to|gets to|hit|hits|reaches|come to|comes to) RIGHT [(hand)] [END] [(POST|side|end)]\n(on|at|to) r"},
	{Kind: Side, Key: "left", Sense: Meaning("opening side"), Ways: "(on|at|to) l"},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: "[down] from FLOOR [(here|there|up here)] [down] to [the] EARTH"},
	{Kind: Part, Key: "trim", Sense: Meaning("trim"), Ways: "squaring [up] [(the|an)] (end|ends) [up] (costs|takes|eats|loses|wastes|uses) [me] [up]\nsquaring [(up|off)] [(the|an|one|each|every)] (end|ends) of [(a|an|the|each|every|one)] (RAIL|stick|length|piece|lumber) [(up|off)] (costs|cost|takes|eats|loses|wastes|uses) [(me|us|you)] [up]\nsquaring [(up|off)] [(the|an|one|each|every)] (RAIL|stick|length|piece|end|ends) [(up|off)] (costs|cost|takes|eats|loses|wastes|uses) [(me|us|you)] [up]\n(i|we) (whack|lop|chop|slice|hack|saw|nip|shave) (off|from) (each|every|a) RAIL squaring [up] [the] [(end|ends)]"},
	{Kind: Part, Key: "spare", Sense: Meaning("spare | rails, have"), Ways: `
		(RAIL|sticks) over (for luck|for safety|to be safe|just in case|in case (i|we) (split|crack|ruin|botch|spoil|break|mess up|miscut|need) (some|one|a few|any|it|them))
		on top [for] (bad|split|cracked|crooked|ruined|spoiled|warped|cull) (RAIL|cuts)
		on top for (waste|mistakes|breakage|luck|insurance|errors|spares)`},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: "(hold|holding|keep|keeping|cut|cutting) everything to [the nearest]\non (my|the) (tape|rule|ruler)"},
	{Kind: Loc, Key: "beside brackets", Sense: Meaning("fit |"), Ways: "(past|beyond|besides|on top of|apart from|over and above|not counting) BRACKET [(thickness|themselves)]"},
	{Kind: Rel, Key: "=", Ways: "(tagged|marked|stickered|ticketed|labeled|labelled) at\ntipped at"},
	{Kind: PriceVerb, Key: "price", Ways: `
		(ring|rings|rang|rung) up (at|for|as)
		(tagged|marked|stickered|ticketed|labeled|labelled|advertised) at
		(will|would) (set|run|cost|knock) (you|me|us) back
		(set|sets) (you|me|us) back
		went up [,] (they|it) (is|are)`},
	{Kind: Sell, Key: "sell", Ways: `
		[it] (turns|turned) out (they|yard|store|shop|lumberyard|merchant|supplier) (have|has|have got|has got|carry|carries|sell|sells|stock|stocks)
		(they|yard|store|shop|lumberyard|merchant|supplier) (do|does|did|will) [(also|still|now)] (have|carry|sell|stock|get|keep|offer)
		[hardware] (yard|store|shop|lumberyard|lumber yard|merchant|mill|co - op|coop|depot|dealer) [(near|by|around|close to) (us|me|here|you|town|my place|our place|my house|our house)] [(only|just|also|still)] (sell|sells|carry|carries|stock|stocks|keep|keeps|offer|offers|does|has|has got|got|is) [(its|their|the)] [(RAIL|lumber|stock)] [(in|as|of)]
		(PERSON|PERSONKIND PERSON) [(in|at) the (yard|store|shop|counter)] [just] (rolled out|brought in|got in|put out|unloaded|took in) [some]
		to be had`},
	{Kind: SellLess, Key: "-=", Ways: "(they|yard|store|shop|lumberyard|we) (are|is) (wiped|cleaned|picked|sold|bought) (out|clean) of\n(wiped|cleaned|picked) (out|clean) of"},
	{Kind: Have, Key: "have", Ways: `
		[(the|our)] [(previous|last|old|former)] (owner|owners|people|PERSON) left (us|me|behind|here)
		on site
		(leave off)`},
	{Kind: Extra, Key: "extra", Ways: "(i|we) also (need|want)\n(i|we) (could|can) also (use|do with)\n(besides|in addition)"},
	{Kind: From, Key: "from", Ways: "someplace from"},
	{Kind: Fix, Key: "fix", Ways: "[no ,] i tell a lie"},
	{Kind: Units, Key: "metric", Loose: true, Ways: "(used to|at home with|brought up on|raised on|grew up with|grew up on) [(working|work|measuring|thinking)] [in] (millimeters|millimetres|metric|mm|cm|centimeters|centimetres)"},
	{Kind: Goal, Key: "same length", Loose: true, Ways: "(RAIL|all RAIL|every RAIL) CUT to (one|the one|a single|the same|one and the same) length\nCUT to (the one|one) length"},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: "as (few|little) WASTE as (you|we|i) (can|could) (manage|get away with|arrange)\nwaste as (few|little) (lumber|timber|wood|material|stock) as (possible|you can|you can manage)"},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: "round (ea|each|every) (mark|marks) (by itself|on its own|separately|individually) [so [that]] [GAP] [(stay|stays|keep|come out|remain)] [(exact|even|true)]"},
	{Kind: Goal, Key: "fewest posts", Loose: true, Ways: "(least|smallest|minimum|lowest) number of POST [(you|we|i)] [(can|could)] [(manage|get away with)]\n(min|minimum) (posts|psts|columns) please"},
	{Kind: Bound, Key: ">=", Ways: `
		(is|are|be) [the] (least|smallest|narrowest|lowest|shortest|tightest|fewest|minimum|slimmest) [that] (i|we|you|they|he|she) [(would|will|could|can|should|am willing to|are willing to)] [(ever)] (leave|accept|take|want|have|go|allow|stand|put up with|live with|tolerate|do|settle for|get by with|get away with|need|like|make) [it] [(for|on|with|in|as|to)]
		(is|are|be) as (small|narrow|low|tight|short|little|slim|few) as (i|we|you) (would|will|can|could|want to|am willing to|are willing to|care to|dare) [(go|have|leave|accept|get|make it|make them|take)]
		[,] (more|wider|bigger|larger|higher|taller|longer) is (ok|okay|fine|good|better|all right|welcome)
		[,] (more|wider|bigger|larger|higher|taller|longer) (will do|would be fine|would do|does no harm|does not hurt)
		[,] [(and|but)] (more|wider|bigger|larger|higher|taller|longer|roomier) (is|'s|are|would be|will be) [(just|even|always|also|perfectly|all)] (ok|okay|fine|good|better|all right|alright|welcome|great|gravy|nice|no problem|no trouble|not a problem) [(too|also|by me|with me)]
		[,] [(and|but)] (more|wider|bigger|larger|higher|taller|longer|roomier) (would|will|could|do|does) not (hurt|matter|bother (me|us|anybody)|be a problem) [(none|any|nothing|a thing)]
		[,] more if (you|we|i|there) (can|could|get|have|is) [(get|manage|swing|find) it] [(the) room] [for it]`},
	{Kind: Bound, Key: "<=", Ways: `
		(is|are|be) [the] (biggest|largest|widest|tallest|highest|longest|most|maximum|farthest|loosest|thickest) [that] (i|we|you|they|he|she) [(would|will|could|can|should|am willing to|are willing to)] [(ever)] (leave|accept|take|want|have|go|allow|stand|put up with|live with|tolerate|do|settle for|get by with|get away with|need|like|make) [it] [(for|on|with|in|as|to)]
		(is|are|be) as (big|wide|high|tall|long|large|much|loose|many) as (i|we|you) (would|will|can|could|want to|am willing to|are willing to|care to|dare) [(go|have|leave|accept|get|make it|make them|take)]
		[,] (less|narrower|smaller|tighter|lower|shorter) is (ok|okay|fine|good|better|all right|welcome)
		[,] [(and|but)] (less|narrower|smaller|tighter|lower|shorter) (is|'s|are|would be|will be) [(just|even|always|also|perfectly|all)] (ok|okay|fine|good|better|all right|alright|welcome|great|gravy|nice|no problem|no trouble|not a problem) [(too|also|by me|with me)]
		[,] [(and|but)] (less|narrower|smaller|tighter|lower|shorter) (would|will|could|do|does) not (hurt|matter|bother (me|us|anybody)|be a problem) [(none|any|nothing|a thing)]`},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: "base on [(added|new)] POST (hold|holds|lift|lifts|carry|carries|keep|keeps|raise|raises) (it|POST|that) [up]"},
	{Kind: SellLess, Key: "-=", Ways: "(yard|yards|store|stores|shop|shops|lumberyard) [(is|are)] (out|fresh out|all out|clean out) of\n(yard|store|shop|lumberyard|lumber yard) [just] sold [the] last of [(its|their|the|our)]"},
	{Kind: Sell, Key: "sell", Ways: "[lumber] (yard|yards|store|shop|lumberyard|they) [(is|are)] [(only|just|still|currently|now)] (stocking|selling|carrying|offering) [(in)]"},
	{Kind: At, Key: "bottom", Ways: "[at] [the] bot"},
	{Kind: Goal, Key: "same length", Loose: true, Ways: "[all] RAIL [all] (one|the same|same) (cut length|cut)\n(trim|saw|dock|chop|crosscut) [(all|every|each)] RAIL to (one|the same|a single|one and the same) length"},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: "as (few|little) WASTE (in|on|for) [the] (scrap|trash|burn|junk) (pile|heap|bin|barrel) as (possible|you can|you can manage|can be)"},
	{Kind: Lean, Key: "leans", Ways: "(has|have|is|are) (gone|went|going|fallen|heeled|canted|keeled) over\n(tipping|tilting|canting|canted|cants|listing|keeling|heeling|keeled|heeled) [over]"},
	{Kind: Units, Key: "customary", Loose: true, Ways: "(put|bring|turn|set|switch|change) (it|everything|that|all) back (to|into|in) (feet and inches|inches|inches and feet|feet|imperial|customary)"},
	{Kind: Units, Key: "metric", Loose: true, Ways: "(put|bring|turn|set|switch|change) (it|everything|that|all) back (to|into|in) (metric|millimeters|millimetres|mm)"},
	{Kind: TailFill, Key: "as told", Ways: `
		(i|we) [have] (checked|measured|counted|taped) (it|them|that) (twice|three times|two times|again|over)
		would suit [(me|us)] [(fine|well|nicely)]
		so [that] GAP (stay|stays|come out|are|keep|remain) (true|even|exact|equal)
		, (falls|falling|sloping|slopes|slanting) [from] (left to right|l to r)
		, the (rogue|thief|crook|robber|bandit|swine|cheat|devil|shark|scoundrel)
		(off|over|past) [the] edge [it is]`},
	{Kind: Fill, Key: "fill", Ways: "while (i|we) (am|are) at (it|bench|saw|that)"},
	{Kind: Extra, Key: "extra", Ways: "besides"},
	{Kind: BoxOf, Key: "box", Ways: "/ (box|pack|package|carton|bucket|tub) [of]\n(for|in|by) (a|the) (box|pack|package|carton|bucket|tub) of"},
	{Kind: Part, Key: "trim", Sense: Meaning("trim"), Ways: "(losing|lose) (apiece|each) squaring (them|it|those)\nsquaring (them|those|each one|every one) [(up|off)]"},
	{Kind: Part, Key: "spare", Sense: Meaning("spare | rails, have"), Ways: "(extra|more|additional) RAIL (just in case|in case|to be safe|for safety|for luck|for insurance|as backup|as insurance|in reserve)"},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: "(daylight|open space|clear space|air) BETWEEN [(two|both)] [END] POST\n(in the clear) BETWEEN [(two|both)] [END] POST"},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: "BETWEEN ends"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("bay | stiffeners, stiffener spacing, stiffener size"), Ways: "to (stiffen|brace|strengthen) (each|every) BAY"},
	{Kind: Measured, Key: "measured", Ways: "(put|held|laid|hooked|ran) (a|the|my) (tape|ruler|rule) (on|to|across|against|in|over|along)"},
}
