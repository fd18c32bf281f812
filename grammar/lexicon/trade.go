package lexicon

// trade are the words of measuring, cutting and buying.
var trade = []Entry{
	{Kind: Have, Key: "have", Ways: `
		(have|got|own|hold) already
		already (have|got|own|bought)
		(i|we) (have|already|still|own) [(got|have|own|already)] [(already)]
		i have
		we have
		(have|got|own) [(me)]
		there (is|are) [(already|still)]
		(leftover|leftovers|left over|lying around|lying in|lying|sitting in|in stock|onhand|left from)
		at home i have [got]
		(at home|in (garage|shed|truck|shop|barn|basement|yard)) (i|we|there) [(have|is|are)] [got]`},
	{Kind: HaveTail, Key: "have", Ways: "left [over] (from|of) (the|my|a|our|an) [(last|other|old)] (job|deck|project|fence|shed|wall|garage|house|porch)\nalready\n[lying|sitting|still] [(around|here)] [(already)] (at home|in [(my|the|his|our)] (garage|shed|shop|barn|basement|truck|attic|workshop|cellar)) [already]\non (the|my) (truck|rack|trailer|pile|bench|sawhorses) [already]\nonhand\nin stock already\nleft over\nlying around\nleftover\nleftovers"},
	{Kind: Extra, Key: "extra", Ways: `
		xtra
		extra
		and on top of that
		on top of that
		(for another job|for something else|for another project|for my neighbor) [(i|we)] [(want|need)]
		extra (pieces|piece|boards|board) [(of)]
		on [the] cut list
		(more|extra|additional) [pieces] [of]
		also cut [me]`},
	{Kind: Sell, Key: "sell", Ways: `
		(they|yard|store|shop|lumberyard|we|you|supplier|lumber yard|merchant|he|place) [(only|just|also|still|can)] [(will)] (sell|sells|carry|carries|stock|stocks|keep|keeps|offer|offers|get|gets|got|have|has|have got|has got) [(as|in)]
		(they|yard|store|shop|lumberyard|place) [(only|just|still)] had
		(comes|come|sold|available|stocked|carried|offered|sells) [(only|just)] (in|as|at)
		(sell|sells|carry|carries|stock|stocks) [(only|just)] [(it|them)] [(as|in)]
		(come|comes) in
		(lengths|sizes|boards|lumber|timber) [(that|they|we|you)] (on offer|on sale|sold|they sell|they carry|available|they have|in stock)
		on offer
		on sale
		(on|at) [(the|our|your|their)] (rack|racks|yard|store|shelf|shelves)
		(only|nothing but|just) (buy|get|use|bought|have|find) [(only|nothing but|just)]
		(lengths|boards) on [(our|the)] racks
		in stock
		[left] on [the] rack
		(i|we|you) can [(only)] get
		(buy|bought|buying) [only]
		available
		lengths [(on offer|available|for sale)]
		(lumber|timber) lengths
		[(lumber|lengths|stock|boards)] (avail|available)`},
	{Kind: CutWord, Key: "cut", Ways: "(cut|cuts|sawn|saw|sawed|cutting)"},
	{Kind: Only, Key: "only", Ways: "only\nnothing but\njust [(using|use|do)]\nnothing else\nand nothing else"},
	{Kind: SellMore, Key: "+=", Ways: "as well [now]\n[in] too\n[now] also [(in)]\nback in stock\n(is|are) back [in]\nnow also\nas well as those"},
	{Kind: SellLess, Key: "-=", Ways: "sold out [of]\nout of stock\n(out|run out|ran out|fresh out|all out|clean out) of\n(quit|quits|stopped|stop) (carrying|selling|stocking|having|making)\nthere is no (more|longer)\nno [more] (any more|anymore|longer|left)\n(any more|anymore)\nno longer (sell|sells|carry|carries|have|available|sold|stock)\n(do|does) not (sell|carry|have|stock) [any]\nare gone\nis gone\nall gone\nare out\n(they|we|you|he|yard|store|shop|lumberyard) (are|is|have|has) [(all|clean|fresh|sold|run|right|totally|completely)] out of\nrun out\nran out\ndiscontinued\nhave run out"},
	{Kind: StockWord, Key: "stock", Sense: Meaning("stock | price, have"), Ways: "stock\nstk\n(lumber|board|stock|timber) (length|lengths)\nlengths [(on sale|of lumber|to buy|they sell|they have)]\n(those|the|these) (lumber|board|stock) lengths"},
	{Kind: PriceVerb, Key: "price", Ways: `
		(cost|costs|costing|costed|price|prices|priced|runs|charge|charges|charged|fetch|pay|paid)
		(go|goes|going|sell|sells|went) for
		(went|gone) (up|down) to
		(dropped|risen|rose|fell|raised|come down|jumped|climbed) to
		(cost|run|runs|set) (me|us|you)
		(you|i|we) (will|would|can) (pay|be paying)
		price (of|for) 
		pay (for)
		@
		(is|are) (now|going for|priced at|selling for|listed at)
		(asking|want|wants) for
		(lumber|) (yard|store|shop|he|they|lumberyard) (charge|charges|charged|asks)`},
	{Kind: Each, Key: "each", Ways: "each\napiece\nea\nea .\n(per|a|for (a|each|one)) (piece|board|stick|length|unit|one|pop)\nevery one\nper stick"},
	{Kind: Item, Key: "bracket", Ways: "BRACKET\nrail BRACKET"},
	{Kind: Item, Key: "post base", Ways: "post (base|bases|foot|feet)\n(base|bases)"},
	{Kind: Item, Key: "post cap", Ways: "post (cap|caps)\npst (cap|caps)"},
	{Kind: Item, Key: "anchor", Ways: "(anchor|anchors)\nanchor bolt\nanchor bolts"},
	{Kind: Item, Key: "screws", Ways: "(screw|screws)"},
	{Kind: BoxOf, Key: "box", Ways: "[a] (box|pack|package|carton|tub|bag|case) of\nto [(the|a)] (box|pack|package|carton|tub)\nper (box|pack|package)\n(in|by) [(a|the)] (box|pack)\n(box|pack|package|carton)\nper\ncome\na (box|pack|hundred)"},
	{Kind: Measured, Key: "measured", Ways: `
		field (measurement|measurements|check|readings|dimensions)
		(measures|measured|meas|remeasured|remeasure|measurement|measurements|measuring|measure)
		(i|we) (get|got|read|measure|measured|make it)
		(tape|level|laser) (says|reads|shows|gives) [(me)]
		(comes|came|come) (out|to|in) [(at|to)]
		(got|get)
		meas [.]
		got
		reading
		readings
		reads
		what it measures
		is what it measures`},
	{Kind: At, Key: "bottom", Ways: "(at|along|on|by|down at|across|from|for|near|in|) [(very)] (bottom|btm|floor|base) [(of (it|WALL))]\nbottom of\nfloor level\nat floor"},
	{Kind: At, Key: "top", Ways: "(at|along|on|by|up at|across|from|for|near|in|) [(very)] top [(of (it|WALL))]\nat top of WALL\ntop of\nat wall height\nat (height of wall|the wall's height)\nup top"},
	{Kind: Short, Key: "short", Ways: "(came|come|comes|is|was|cut|got cut|turned out) [out] [(cut)] short\n(came|come|comes|is|was|cut) [out] [(too)] short [by]\n(too short|too short by|short by)"},
	{Kind: Fixed, Key: "fixed", Ways: "(is|are|was|already|has been) [(already)] (fixed|up|on|screwed|mounted|installed|in place|hung|fastened|attached|in) [(already)]\n(fixed|mounted|installed|already up|up already|already on|on already|already fixed|fixed already|in place)\nalready in\n[already] (screwed|bolted|nailed|fastened|fixed|attached) (in|on|up|in place|off) [already]\n[already] (hung|up) already"},
	{Kind: Top, Key: "top", Ways: "(top|tops|top edge|top edges|upper edge|upper edges)\n[up] to have its top"},
	{Kind: Lean, Key: "leans", Ways: "(lean|leans|leaning|leaned|leant|tilts|tilt|tilted|tips|tipped|out of plumb|off plumb) [(,|it)] [(leans|it leans|leaning|by)]\nout of plumb by\n(is|are) out of (plumb|true) [by]"},
	{Kind: LeanWay, Key: "in", Ways: "(in|inward|inwards|into (WALL|span|bay|opening)|toward (bay|middle|other post))"},
	{Kind: LeanWay, Key: "out", Ways: "(out|outward|outwards|away from (WALL|span|middle)|away)"},
	{Kind: LeanWay, Key: "left", Ways: "(to|toward|towards) [the] (left|l)\nleftward\nleftwards\nto l"},
	{Kind: LeanWay, Key: "right", Ways: "(to|toward|towards) [the] (right|r)\nrightward\nrightwards\nto r"},
	{Kind: Fall, Key: "falls", Ways: "(falls|fall|slopes|slope|drops|runs down|pitches|pitch|tilts|descends|sloped|goes down|is pitched|sloping|falling|runs off|dips)"},
	{Kind: Level, Key: "level", Ways: "[(dead|perfectly|exactly|quite|nice and|flat and)] level [(all the way|throughout)]"},
	{Kind: PerFoot, Key: "per foot", Ways: "(a|per|each|every|to|for (every|each)|in) [(the|a|every)] foot\n/ (ft|foot|')\n(per|every|each|to) (ft|the ft)"},
	{Kind: Per, Key: "per", Ways: "(per|every|each|in|over|for every|for each|to every)"},
	{Kind: FloorAt, Key: "right", Ways: "(at|by|near|towards|toward|to|on) [the] RIGHT [(hand)] [(END)] [(POST|end|side)]\n(at|by|near|towards|to) RIGHT"},
	{Kind: OffEach, Key: "tolerance", Loose: true, Ways: `
		[what if] (each|every|all|every one|each one) [(of them|RAIL|cut|piece|one|mark|gap)] [(is|are|be|were|was|came out|comes out|runs)] [out] (off|out|wrong) [by]
		[what if] (each|every) (RAIL|cut|piece|mark|one) [(is|are|were|was)] (off|wrong)
		(RAIL|cuts|they|pieces) (are|is|were) [all] (off|out|wrong) [by]
		tolerance [of]
		(RAIL|each|cuts|they|everything|every piece|pieces) (came|come|comes) [out] (off|wrong)
		[(if|when)] (everything|whatever) [(i|we)] [cut] (is|comes out|came out|was) (off|out|wrong) [by]
		how (far|much) (off|out|drift) [(could|would|will|can) (it|they|we|i) [(be|end up|get)]] [(if|when)] [(each|every)] [(RAIL|cut)] [(is|are)] [off] [by]
		plus or minus
		+/-
		within tolerance`},
	{Kind: OffTail, Key: "off", Ways: "(off|wrong|out)\n(long|short) or short\nor so off\noff each\non (each|every) (one|piece|cut|mark|RAIL)"},
	{Kind: RunWide, Key: "wide", Ways: "(run|runs|running|ran|come|comes|came) [out] (wide|big|fat|over|heavy)\n(run|runs|running|come|comes) [out] (wide|oversize|oversized)\nwide"},
	{Kind: RunNarrow, Key: "narrow", Ways: "(run|runs|running|ran|come|comes|came) [out] (narrow|small|thin|skinny|under|undersize|undersized|shy)"},
	{Kind: Reason, Key: "reason", Ways: "(so|so that|such that) (it|that|they|he|she|we|i|you|there|the|my|our|a|his|her|nobody|dog|kid|kids|folks|people|everyone|someone|one)\n(so|so that|such that) no (one|kid|kids|child|children|dog|dogs|cat|cats|baby|toddler|animal|animals|critter|critters|head|foot|feet|hand|hands|ball|water|wind|light)\nbecause [of]\non account of\ndue to\nfor fear\nsince\nin case\notherwise\nas (it|they|there|he|she|that)\nso as to\nin order to\nseeing (as|that)\nor else\nwhich (is|was|means|leaves|makes|gives)\nif (that|it) (helps|works|matters|fits)\nif you (please|can|like|would|will)\nif possible\nand that (is|was) (what|that|fine|final)\nfor the (sake|kids|dog)\nso my"},
	{Kind: Knowing, Key: "count word", Ways: "(qty|quantity|count|number) [(of)]"},
}

// fills are turns of phrase that carry no meaning of their own.
var fills = []Entry{
	{Kind: Fill, Key: "fill", Ways: `
		you know
		try and
		(i|we) (will|can|could|would) (put up with|live with|accept|tolerate|stand for)
		(put|laid|ran|held) (my|a|the) (tape|ruler) (across|on|to|over) (a|one|the) RAIL and
		(ripped|milled|sawn) (from|out of)
		[and] [(i|we)] [really] must stay within it
		would look (best|nice|good|right|nicer|better|fine)
		[my] apologies
		(i|we) would be (happiest|happier|best pleased) if
		(should|will) be (plenty|enough|sufficient)
		(should|must|will|has to|have to|needs to) reach
		(second|third|another) try
		(for|to meet|to satisfy|because of) [the] code
		(pulled|ran|stretched|hooked) (a|the|my) tape [(on|across|over)]
		and it (says|reads|shows|measures|comes to)
		(let there be|leave|have) as much
		FLOOR is not [(quite|perfectly|exactly|dead)] level
		(plan|planning|figure|figuring|count|counting|bank|shoot|shooting|aim|aiming) (on|for)
		(i am|we are|i want to|we want to|i will be|we will be) (building|build|making|make|putting up|put up|doing|planning) (a|my|our|this) WALL
		on (my|the|our) (back|front|side) (porch|deck|patio|yard|garden|steps|step|stoop)
		(i|we) (was|were) thinking [(of|about)] [maybe]
		[(the|my|our)] PERSON (wants|needs|insists on|asked for|requires) [(it|them|us|me)] [(to be|to have)]
		if (it|that) is not too much (trouble|bother|to ask|of a bother|work)
		if you do not mind [my asking]
		(built|made) (from|of|out of|with|up of)
		(is|are) (not|out of) [(quite|dead|exactly|perfectly)] level
		for (everything|the whole thing|the lot|the whole lot|the whole job)
		all of (them|those)
		(suits|suit|pleases|please) (me|us) [(fine|well|best)]
		(is|are) fine (by|with) (me|us)
		by [(the|my|our|his|a)] (tape|level|calipers|caliper|ruler|laser|rule)
		[(put|held|hold|got|with|had)] [(a|the|my)] (calipers|caliper|level|tape|ruler|laser) on
		in [the] order
		on top of what (is|we|i) (need|needed|needs)
		if (it|that) can be (had|done|managed|arranged)
		i (think|guess|believe|suppose|reckon|hope)
		i am (afraid|sure|thinking|guessing)
		my (husband|wife|son|daughter|boss|dad|mom|partner|client|customer|mother|father) (would like|wants|likes|prefers|needs|asked for|says)
		[(my|the|our)] (husband|wife|son|daughter|boss|dad|mom|partner|client|customer|mother|father|missus|better half|other half|owner|family|kids|hubby|spouse|grandma|grandpa) (would (like|love|adore|prefer|enjoy|rather) [to] [(have|see|get)]|would be (happy|happier|happiest|glad|thrilled|delighted|pleased) (with|to (have|see|get))|(wants|likes|loves|adores|prefers|needs|fancies|wishes for|hopes for|is hoping for|asks for|asked for|insists on|is set on|has her heart set on|has his heart set on|is keen on|begged for|dreams of))
		[(my|the|our)] PERSON (told|asked|wants|wanted|begged) (me|us) to [(make|have|build|keep|use|put|leave|set|go with|give)] [it]
		let us see
		let me (see|think)
		(as|if) you (can|like|please|will|would)
		if (you|it) (please|would|could|will|does not mind|is possible|is no trouble|pleases you)
		(can|could|may) (i|we) [please] (have|get)
		(i|we) (would|should|might|could|do|will|shall) [(really|also|just|dearly)] (like|love|prefer|want|need|say) [(it|that|for|if)] [to]
		(would|could) it be possible to
		(i|we) (want|need|wish|prefer|have|got|am going|are going|ought|plan|mean|intend|am looking|am trying|are looking|are trying|hope|am hoping|are planning|am planning|would like|would love) to
		(i|we) (want|need|wish|prefer) [(it|them|that|there)] [to] [(be|have)]
		(needs|need|has|have|got|ought|supposed|going|want|wants|is|are) to [(be|have|go|stay|sit|come|get|stand|end up|finish|rise|measure|run|land|look)]
		to (be|have|go|stay|sit|come|get|stand|end|finish|rise|measure|run|land|look|do|make|use|put|keep|leave|build|work|lay|set|take|try|see|know|say|help|start|begin|hold)
		[to] end up [(at|with|being|as|coming)]
		(wind|finish|come|turn|work) (up|out) [(at|with|to be|as|being)]
		(kind|sort) of
		(by|from) my count
		for (me|us|him|her|them|now|sure|starters|real|certain|this one|this job|this|that|example|instance|once|good measure|the class|the (kids|boat|ferry))
		on this (one|job|wall|project|side)
		guard side
		picture this
		leaving (his|her|their|the|those|all) (numbers|figures|claims|drawing|sheet|plan) out of it
		if you do not mind [(me|my)] [(asking|saying)]
		(am|are) standing (at|by|next to|in|beside) (the|my) (saw|bench|truck|wall|yard|store|counter|sawhorse|sawhorses|lumberyard|aisle|garage|shop)
		before (i|we) (begin|start|go|leave|cut|buy|drive|order|do anything|go any further|get going)
		money (no longer matters|is no object|is no issue|does not matter)
		as built
		(oh|ah|my) dear
		dear me
		(my|oh my) goodness
		(in|for) (the|this) (morning|afternoon|evening)
		(tonight|tomorrow morning|this evening|first thing)
		(one|this|that) time
		of course
		by the way
		at the (lumber yard|yard|store|shop|hardware store|moment|lumberyard|register|checkout|end)
		(in|at) the end
		first of all
		to begin with
		to start with
		as well
		right (now|away|here|there|then)
		all right
		alright
		(good|fair) enough
		(good|nice) (morning|afternoon|evening|day)
		good (one|idea|point)
		hi there
		hey there
		listen
		look here
		(come|now) (on|then)
		well (then|now)
		(how about|what about) that
		(here|there) (we|you) go
		here is (the|another|a|one|my) (thing|deal|idea|question|number|numbers|story|job)
		my (dog|son|kid|daughter|wife|husband|boss|wall) is (small|tall|short|picky)
		sounds good
		(that|it|this) (is|looks|sounds|was|seems) (good|great|fine|nice|lovely|ok|okay|perfect|wonderful|right by me|a good one)
		one more (thing|time|question)
		(any|some) more (questions|thoughts)
		(if|as) (that|it) helps
		(and|or) (whatever|what have you|so on|such|all that|the like)
		not some other (number|count)
		some other (number|count)
		instead [of (six|it|that|what we have|the other|five|seven|four|one|what it is|what i said)]
		rather than (six|that|it|what we have|the other)
		the (way|place) (it|things) (is|are|stand|stands)
		(both|each) (of them|of those|ways|sides)
		(every|each) (one|single one) of (them|those)
		(oh|ah) (yeah|yes|well|right|and|by the way|ok)
		(what|how) (do|would) you (say|think)
		(in|at) (place|there|here)
		(clear|all the way|straight) (across|over|through)
		(now|then) (that|this) (is|one)
		on (my|the|your|his|our) (end|part|tape|side|slab)
		of (mine|it|them|those|these|ours|course|that|all|this)
		from now on
		from here on
		once (again|more)
		(is|are) what (i|we) (want|need|have|got|get|measure|measured|am after|make it)
		(is|are) all (i|we) (need|want|have)
		(no|not a) (problem|matter)
		no (sweat|rush|worries|big deal)
		never you mind
		i am careful
		throw in
		[from] start to finish
		from beginning to end
		from (top|first) to (bottom|last)
		[the] POST (is|are) (up|in place|standing) [(already|now)]
		BRACKET aside
		(he|she|they|PERSON) will not believe me [otherwise]
		(other|wrong) way [round]
		i (looked|checked) again
		after all
		what i really (want|need|meant) is
		nothing else
		(i|we) have measured [one of] [(my|our|the)] RAIL
		smack dab
		(i|we) (should not have|did not mean to) (undo|undone) (that|it)
		try something
		i know i said (two by sixes|that)
		every last
		by the time you get
		that is all she wrote
		the whole shebang
		go ahead and
		(aw|oh) heck
		(i|we) (would|should) be [(very|most|so)] (obliged|grateful|glad|happy|thankful|pleased|delighted) (if|to have|to see) [(you|we|i|it|there)] [(could|would|can|used|use|made|make|put|kept|keep|gave|set|did|had|have|were|was|is)]
		it would (be (nice|lovely|good|great|best|better|wonderful|ideal|perfect|fantastic|terrific|splendid|grand)|please me|suit me|suit us) (if|to have) [(you|we|i|it|there)] [(could|would|can|used|use|made|make|put|kept|keep|gave|set|did|had|have|were|was|is)]
		(i|we) would [(really|very much)] appreciate (it if|if|having) [(you|we|i|it)] [(could|would|can)] [(used|use|made|make|put|set|kept|keep|left|leave|went with|go with|gave|give|built|build|did|do|had|have|took|take)]
		how bad would (that|it) (get|be)
		for (me|us|them) all
		leave it [(be|alone|as it is)]
		(in|for) (this|the|our) (class|classroom|shop|room)
		one step after another
		no (play|slack) whatsoever
		put a ruler on it
		(calipers|caliper|level|tape) on it
		as my father built them
		back there
		over there
		(this|the) batch of
		we (work|are working) [(in)]
		that was (a mistake|wrong)
		never mind (his|theirs|hers|their|her) [(quote|sketch|plan|drawing|figure|figures|numbers|number)]
		your turn
		put mine next to (his|hers|theirs)
		(boards|lumber|wood|rails) (is|are) (dear|expensive|pricey|costly)
		i (say|said|tell you|told you)
		like (i|we) said
		as (i|we) (said|told you|mentioned)
		you (see|hear)
		(and|,) that (is|was) (that|it for that)
		(if|when) i (measure|measured|checked|put a tape on) [(it|them)]
		i [just] (used|put|ran|held|took|had|have) (a|the|my) (tape|ruler|calipers|caliper|level|rule|laser) (on|to|for|across) (it|one|them|this|that)
		i used calipers
		i used (a tape|the tape)
		(calipers|caliper|ruler|micrometer|level|tape) (say|says|give|gives|show|shows|read|reads|put|puts) [that]
		(a|the|my) (tape|level) (on|to|against) (it|one|them)
		one over the other
		(one|each) (above|over|on top of) (the|each) other
		up there
		down there
		(over|back|up|down|out) (there|here)
		in (this|that|the) case
		in (my|this|that|the) (yard|garage|job|place|shop)
		(it|that|) turns out [that]
		(for|to make|toward) [(a|the|my|our|his|her)] (bench|planter|shelf|shelves|table|swing|step|stairs|ramp|stool|birdhouse|trellis|doghouse|chair)
		as it turns out
		(as|like) (before|usual|planned|said|agreed|discussed)
		this (time|morning|afternoon|week)
		(he|she|they|PERSON) (is|are) (right|wrong) (about|that)
		(besides|apart from|other than) (his|hers|theirs|that|this|it) [(layout|plan|one)]
		the (both|lot) of (them|it)
		(the|a) (number|count|amount|quantity|total|figure) of
		that many
		that (much|wide|tall|high|big|long)
		so (many|much|wide|tall|high|big|long|few|little)
		in (here|there|all of it)
		(for|to) (the|this|our|my) (job|project|build)
		for (this|our|my) wall
		as far as i know
		bear with me
		oh
		thank you [(very|so) much]
		thanks [a lot]
		many thanks
		(please|thanks) [and] (thank you|thanks|please)
		(the|a) (class|kids|students|customer|client|wife|boss) (wants|want|like|likes|would like|says yes to)
		if that is (ok|okay|all right|alright|fine|possible)
		(with|on) (you|me)
		clear of
		clear from
		no (more|fewer) no (more|fewer|less)
		a (total|full|whole|clear|clean|good|nice|neat|solid|comfortable|true) of
		(a|an) (total|full|whole|clear|clean|good|nice|neat|solid|honest|exact|even)
		one another
		each other
		i read you the wrong line
		(the|my) wrong (line|number|figure)
		to (me|us|you|him|them)
		so far
		(as|so) it (is|stands|goes)
		(and|or) not a (penny|cent|inch|hair) (more|less)
		(or|and) so (on|forth)`},
}
