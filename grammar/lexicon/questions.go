package lexicon

// questions ask for a table, or begin a question about a quantity. Those that name a table are whole by themselves.
var questions = []Entry{
	{Kind: Wh, Key: "many", Sense: Meaning("| rails, added posts, bays, openings, stiffeners, coats, spare, ?shopping, ?hardware, have"), Ways: "how many\nhow few"},
	{Kind: Wh, Key: "many", Sense: Meaning("| rails, added posts, bays, openings, stiffeners, coats, ?shopping, ?hardware, have"), Ways: "(number|count|qty|quantity) [of]\n# of"},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Loose: true, Ways: "how many (inches|feet|millimeters|millimetres|centimeters|centimetres|mm|cm)"},
	{Kind: Quest, Key: "steps", Ways: "(what|which) (order|sequence)\nin (what|which) (order|sequence)"},
	{Kind: Wh, Key: "wide", Sense: Meaning("| opening, bay, rail face, gap, kerf, measured"), Loose: true, Ways: "how (WIDE|narrow)\nwhat width"},
	{Kind: Wh, Key: "high", Sense: Meaning("wall height | post height, base height, rail top, bottom gap"), Loose: true, Ways: "how (HIGH|low)\nwhat height\nhow far up"},
	{Kind: Wh, Key: "long", Sense: Meaning("?cuts | span, bay, overall, screw length, bracket ear, bracket reach"), Loose: true, Ways: "how long\nwhat length\nwhat lengths\nhow short"},
	{Kind: Wh, Key: "big", Sense: Meaning("| gap, bottom gap, opening, bay, rail size, post size, stiffener spacing, span, kerf, bracket ear, bracket clearance, bracket reach, fit, trim, spare, drop, stiffener size, end post size, added post size, cap size, anchor size"), Loose: true, Ways: "how (big|large|small|tight)\nwhat size\nhow much (room|space|air|clearance|daylight|of a gap)\nhow close"},
	{Kind: Wh, Key: "apart", Sense: Meaning("| gap, stiffener spacing, centers, span, opening from left, opening from right, post from left, post from right, bottom gap, drop, bracket ear, bracket reach, rail top, base height, post leans, floor at right"), Loose: true, Ways: "how far"},
	{Kind: Wh, Key: "apart", Sense: Meaning("gap, stiffener spacing | centers, span, opening from left, opening from right, post from left, post from right, bottom gap, drop, bracket ear, bracket reach, rail top, base height, post leans, floor at right"), Loose: true, Ways: "how (far|close|wide) (apart|together)\nhow (far|close) between"},
	{Kind: Wh, Key: "thick", Sense: Meaning("| bracket thickness, slab thickness, kerf"), Loose: true, Ways: "how thick"},
	{Kind: Wh, Key: "much", Sense: Meaning("?cost | spare, opening, bay, gap, bottom gap, fit, kerf, trim, budget, drop, bracket clearance, bracket ear, bracket reach, floor at right"), Loose: true, Ways: "how much\nhow far (down|up)"},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Loose: true, Ways: `
		what
		which
		what is
		what are
		[(can|could|would|will) you] [please] (TELL ME|show|list|tell|name)
		let ME (know|see|have|hear)
		(i|we) (want|need|would like|like) to (know|see|hear|have)
		[(can|could|would|will) you] [please] (work out|figure out|figure|calculate|compute|find|determine)
		(may|can|could) (i|we) (have|see|get|know|hear)
		remind ME
		i wonder
		any idea
		do you know
		(show|give|read|tell) ME
		i am curious
		have you got down
		how`},
	{Kind: Quest, Key: "layout", Loose: true, Ways: `
		(what|how) does (that|it|this|all that) (give|come to|look)
		what (do|would|will) (i|we|you) (get|have|end up with|come up with)
		what (is|would be|will be) the [(whole|full|final|overall)] (layout|lay out|plan|result|arrangement|design)
		(layout|lay out)
		(show|give|let see|see) [the] (layout|lay out|plan|arrangement|result)
		(work|figure|lay|sort) (it|that|this|everything) (all) out
		(work|figure|lay|sort) (it|that|this|everything|the wall) out
		how (does|would|will|do) (that|it|this|the wall|everything|things) (lay out|lay|come out|work out|turn out|shape up|go together|end up|all come out)
		how (is|would|will) (that|it|this) (lay out|come out|laid out)
		what (does|would|will|do) (it|that|this) (come out (as|to|like)|work out (to|as)|end up as)
		(run|crunch) (it|the numbers|that|them)
		what have we got
		what you got
		do the (math|sums|maths|numbers)
		lay (it|this|the wall|that|everything) out
		solve [(it|this|that|the wall)]
		compute
		calculate [(it|this|that|the wall|everything)]
		how does that lay out
		give me (the numbers|your numbers|what you get|what you have)
		your turn
		what do you make of (it|that)
		so what is it
		where does that leave (me|us)
		where do we stand
		what is the upshot
		let us see it
		let us have it
		what results
		what is the outcome`},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		(what|which) [(else|other|rail|RAIL|GAP)] (counts|count|combinations|numbers|number|counts of RAIL) (work|works|fit|fits|possible|go|will work|would work|actually work out|are possible|there)
		(what|which) (would|will|could|can|might|else|all) [else] (work|go|fit)
		what (will|would) go in there
		(what|which) [(are|other)] (my|the|our|other|possible) (options|choices|possibilities|alternatives|combinations)
		(options|opts|choices|possibilities|alternatives|choice)
		(hear|see|list|show|give|let) [(me|us|the)] [(all|every)] (options|choices|possibilities|alternatives)
		what else [(would|could|can|will|might)] [(work|fit|go|is possible|is there|do)]
		what are the (options|choices|possibilities|alternatives)
		which [board|rail|slat|plank] (counts|numbers) [actually|would|will|could|can] (work|fit|work out|are possible|go|do)
		what (is|are|is all|all is) possible
		every count that could work
		(all|every) (count|counts) that (work|works|fit|could work|would work|fits)
		other (ways|combinations|counts|layouts) that (work|fit)
		what could i (do|use|have) instead
		what counts
		which counts
		what are all the (ways|combinations)
		how many different ways
		what can i (do|choose|pick|choose from|pick from)
		what would work
		(which|what) (RAIL) (counts|numbers)
		what works
		how many RAIL could work
		what alternatives`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		(where|what|which) MARK [(go|on|at|come|up)] [POST]
		where (go|come|do|put|make|draw|strike|mark|drill|set|screw|am i putting|am i marking|bracket|brackets) [(my|the|BRACKET)] MARK
		(where|what) [(my|the)] MARK
		where BRACKET [(go|sit|mount|land|come|screw)]
		(marks|mark up|marking|marks list|pencil marks|bracket marks|hole marks|mark list)
		at what (heights|height) [(top holes of)] (MARK|BRACKET|top holes) [go] [(on) POST]
		at (what|which) (heights|height) [make] MARK
		TELL [ME] [(all|out)] [(my|the|bracket)] (marks|mark)
		(where|what height|what heights) [do I] (mark|drill|pencil|scribe) [(it|them|BRACKET|POST)]
		where (mark|drill|pencil|scribe) [(POST|BRACKET|RAIL|it|them|holes)]
		MARK for POST
		call out MARK [from the bottom up] [(from bottom [to top])]
		where do the brackets go
		what do i mark [on POST]
		how (do|should|would|will|can|shall) (i|we) (mark|drill|pencil|scribe) [(it|them|these|this|that|everything|BRACKET|POST|holes)] [up]
		how (i|we) (mark|drill|pencil|scribe) [(it|them|these|this|that|everything|BRACKET|POST|holes)] [up]
		how high (MARK|BRACKET) [(go|sit|mount|on POST)]
		how high up (MARK|BRACKET)
		marks for [the] BRACKET
		heights of [the] (marks|holes|brackets)
		[bracket] hole heights
		(mark|bracket) heights`},
	{Kind: Quest, Key: "posts", Loose: true, Ways: `
		where [(exactly)] (added|new|extra|additional|intermediate|) POST [(go|stand|land|sit|belong|be|get set|come|end up|fall)] [(exactly)]
		where (added|new|extra|additional|) (UPRIGHT|ones) [(go|stand|land|sit|belong|come|end up)]
		where (put|set|stand|place|plant|dig|anchor|locate) (added|new|extra|additional|) (POST|UPRIGHT) [(go|at|it)]
		(location|position|place|spot|locations|positions) of [(added|new|extra|)] POST
		POST (location|locations|position|positions|layout)
		where is that new UPRIGHT
		where it (go|stand|goes|stands)
		where does [(added|new)] POST go
		posts`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		what (length|lengths) [(each|every)] [(of)] [(RAIL|POST|STIFF|them|these|piece|it|pieces)] [(get|gets|got)] CUT [(to|at)] [(RAIL|them|these|it)] [(to|at|now)]
		what (length|lengths) CUT [(RAIL|POST|STIFF|them|these|it)] [to]
		how long CUT [(each|every)] [(RAIL|POST|STIFF|them|these|it|piece|pieces)] [(to|now)]
		how long (RAIL|piece|pieces|CUT) [(CUT|once CUT|once it is CUT|to be CUT|gets CUT)]
		how long RAIL CUT
		how long (ask|have|tell) [(them|the yard|him)] to CUT [(each|every)] [RAIL]
		how long (cut|saw)
		what CUT [(RAIL|to|it|now|POST)]
		what (do|should) i (cut|saw)
		CUT (list|lengths|length|sheet|schedule)
		cuts
		how (do|should|would|will|can|shall) (i|we) (cut|saw) [(it|them|these|those|this|that|everything|RAIL|POST|STIFF|boards)] [up]
		how (i|we) (cut|saw) [(it|them|these|those|this|that|everything|RAIL|POST|STIFF|boards)] [up]
		(cut|cutting) (plan|diagram)
		cutting (list|lengths)
		(RAIL|POST|STIFF|piece) (lengths)
		TELL [ME] [(the|my|all)] (cuts|CUT list|CUT lengths|cutting list|cut sheet) [(first|again|now)]
		lengths to (CUT|saw)
		(lengths|length) of [(each|every|the)] (RAIL|pieces|cuts)
		what lengths [do|should] i (saw|cut) [them]
		how long should (RAIL|pieces) be
		how long are RAIL
		how long is [each|every] RAIL
		how long do i make [the|each] RAIL
		to what length CUT
		what are RAIL cut to
		length of [(each|the)] cut`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		what [(all)] (i|we|you|) BUY
		what (pick up|get|grab|fetch|bring home|load up|load|purchase|haul|put on the cart|put in the cart|ask for|carry out) [(at|from)] [(store|yard|lumber yard|shop|lumberyard|hardware store)]
		what putting on (cart|truck)
		what [else] [do|would|will] (i|we) need
		what (materials|lumber|wood|boards|stuff|supplies|parts) (do|would|will|need|BUY|get)
		what need [to get] (from|at) (store|yard|lumberyard)
		(shopping|buying|buy|material|materials|mat'l|matl|lumber|parts|order|supply|purchase|board) list
		(bom|bill of materials|takeoff|take off|materials|shopping|mat'l|supplies)
		how (many|much) (sticks|lumber|wood|timber|material|two by sixes|boards do i (buy|need|order|get)) [(BUY|need|load|get|order|take|for|put)] [(on truck|in all|total)]
		how (many|much) (RAIL|lumber|sticks|wood|material|timber) (BUY|order|load|pick up)
		how (many|much) (lumber|sticks|wood|material|timber) get
		number of RAIL to BUY
		RAIL count to BUY
		(number|count) of RAIL (BUY|purchase|order|get)
		(BUY|order|purchase|get|pick up) what
		what goes on the (list|truck|cart)
		TELL [ME] [(a|the|my)] (shopping|buy|buying|material|materials|lumber|parts|order) list
		what have me BUY
		what do i (load|throw) (on|in) (truck|cart)
		what (would|will) (i|we) (have to|need to) (get|BUY)
		what am i buying
		what should i BUY
		how many (sticks|boards) i (load|BUY|need|get)
		[(list|rundown|tally|count)] [of] (everything|all|whatever|all the things|the things|things|all that|all the stuff|the stuff|stuff) [that] (i|we) (should|must|need to|have to|ought to|will have to|am to|are to|will need to|want to) (BUY|get|pick up|order|fetch|pay for|load|put on the truck)
		what to BUY
		RAIL to BUY
		(that|so) many (board|boards|planks|timbers|sticks)
		list of (things|what|everything|all) [to] BUY
		shopping list (so many|RAIL) [on it]
		(what) (need|get|take) (from|at) (lumberyard|yard|store|lumber yard)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		(what|how much) [(all|whole|everything|this|it|that|)] (PRICE|run|runs|set|come to|comes to|add up to|total|amount to|spend|spending|pay|paying|shell out|lay out|worth)
		what [(all)] run [me|us]
		what (is|would be|will be) [(the)] [(total|whole|grand|final)] (PRICE|damage|bill|total|tab|sum total|expense|outlay|cost of [(it|all)]) [(at register|to me|for (it|all|this|everything))]
		what damage [(at register)]
		how (expensive|dear|pricey|costly)
		how much [all] (PRICE|money|cash|spend|pay|run|set me back|altogether|in all|for all|for everything|for lumber|need)
		(total|grand total|whole) PRICE
		(PRICE|damage)
		TELL [ME] [(what|how much)] [(all)] PRICE
		how much (does|will|would|is) (it|this|that|everything|all of this|the whole thing|wall) [(likely|all|going)] (PRICE|run|come to|be|set) [(me|us|back)]
		what (will|does|would) (it|that|this|everything) [all] (run|PRICE|come to|set) [(me|us|back|altogether|by your count)]
		PRICE (by your count|altogether)
		what (it|that|they|it will|it all) PRICE
		what that come to [altogether]
		ballpark (PRICE|what|spending)
		how much am i (spending|looking at)
		what am i (spending|looking at|paying)
		how much is (it|this|all this|all of this)
		how much for (all|everything|this|it|the lot|the whole thing)
		set me back
		what is the (price|cost|total|bill)
		what [does] all that (PRICE|come to)
		what is the price tag
		cost breakdown
		what am i in for`},
	{Kind: Quest, Key: "cost", Ways: "total $"},
	{Kind: Quest, Key: "steps", Loose: true, Ways: `
		(what|which) [step|steps] [(comes|come|is|goes|gets|happens|i do|to do|should i do|to be|be|we do)] [(done)] FIRST [(step|thing)] [(and what (after|next) [that]|and then [what]|,|)] 
		what FIRST step
		which step FIRST
		what FIRST and what (after|next|then) [that]
		what FIRST , and what (after|next|then) [that]
		where (i|we|you|) [(even|do i|should i)] (begin|start)
		how (do|would|should|will|to) (i|we|you|one) (build|put|make|go about|assemble|do|construct|set) (it|this|that|together|up|the wall|about (it|this))
		(what|in what|which|in which) (order|sequence) [(i|we|do|should|of)] [(do|build|work|go|put|things|this|it|operations)] [(in)]
		(steps|step by step|instructions|sequence|order of work|work order|order of operations|seq of work|building steps|construction steps|seq|sequence of work|build steps|work plan|procedure)
		TELL [ME] [(all|the)] (steps|order of work|instructions|sequence|procedure)
		walk ME through (building|the build|the steps|the work|putting)
		how (do|should) i (start|begin)
		what do i do (first|now)
		how is it (built|put together)
		how (get|do i get) started
		what gets done FIRST`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		anything [(i|we|else)] [(should|ought|need to|have to)] [(to)] (careful|watch|worry|beware|aware|bite|mind|dangerous|hurt|unsafe|wrong|tricky|wary|look out|know about|concerned|go wrong) [(about|of|out for|for|with|me|on|out)]
		(what|which) [should] [(i|we)] (careful|watch out|look out|beware|watch|wary|worry|aware|wary) [(for|of|about|out for)]
		what (should|must|do|ought) (i|we|one) [to] (mind|bear in mind|have in mind|keep an eye out for|keep an eye on|keep an eye open for|keep my eyes open for|keep our eyes open for|keep my eyes peeled for|keep a lookout for|keep a weather eye on|be keeping an eye out for|be keeping an eye on|be watching out for|be looking out for|be watching for|be minding|be wary of|steer clear of|guard against|be on my guard against|be on the lookout for|be on guard for|be alert to|be alert for|heed|be mindful of|be conscious of|be cautious about|be cautious of|be watchful of|be watchful for|stay alert for|stay clear of) [(about|of|here|with this|with it|on this)]
		what (bite|hurt|go wrong|could go wrong|can go wrong|could bite|might go wrong) [me] [on this]
		(what|which|any|which) (dangers|risks|hazards|cautions|warnings|pitfalls|concerns|caveats|precautions|problems|safety issues) [(should|to|are|do|there)] [(i|we)] [(point out|watch|know|mind|look)] [(to)] [(for|of|about|out)]
		(cautions|warnings|dangers|hazards|risks|safety|caveats|precautions|pitfalls)
		is (it|this|that|wall) (safe|dangerous)
		what keep an eye on
		(keep|have) an eye on
		TELL [ME] [the|any] (cautions|warnings|dangers|risks|hazards)
		what ought i beware of
		what is (risky|dangerous|unsafe)
		what to (watch|look) (out|for)
		anything gonna bite me
		anything (dangerous|risky|tricky|unsafe) [(i should)] [(watch|look)] [out] [for]
		going to bite me
		should i worry [about anything]
		what should i keep an eye on
		am i missing anything
		(gotchas|red flags)`},
	{Kind: Quest, Key: "drawing", Loose: true, Ways: `
		[(can|could|would|will) you] [please] draw [(it|me|this|that|one|the wall|us)] [(up|out)] [(a|the)] [(picture|sketch|drawing|diagram|elevation)] [(of)] [(how|what) (it|this|that) (would|will|) look [like]] [for (me|them|us)]
		show (me|us|it|that|them|this) [(on paper)]
		see (it|that|this) [(now|drawn)]
		(what|how) (does|would|will|do|is) (it|this|that|the wall|everything) [(going)] [(to)] look [(like)]
		see what [it|this] (looks|look) like
		(see|have) a (look|picture|drawing|sketch|elevation) [(at|of)] [(it|a sketch of it|that)]
		(have|take|let me have|give me) [a] look [at] [(it|a sketch|a sketch of it|a drawing|a picture)]
		[(a|the)] (picture|drawing|sketch|elevation|dwg|diagram|visual|illustration|view) [(of it|pls|please|of the wall|of that)]
		TELL [ME] [(a|the)] (picture|drawing|sketch|elevation|diagram)
		sketch (it|this|that) [(out|up)] [for (me|us|them)]
		picture (it|this|that) for me
		look like
		let (me|us) look at it
		visualize [it]
		make [me] a (drawing|picture|sketch)
		draw`},
	{Kind: Quest, Key: "spacer", Loose: true, Ways: "[what|how] [(big|tall|high|wide|thick|size)] [a|the] (spacer|spacers|spacer block|gap block|spacing block|spacer size|spacer stick)\nwhat block TELL"},
	{Kind: Quest, Key: "story pole", Loose: true, Ways: "[(make|give|show|draw|print)] [me] [a|the] (story pole|storey pole|story stick|storypole|rod|story rod|marking stick)\n(what|how) (story pole|story stick|marking stick)"},
	{Kind: Quest, Key: "hardware", Loose: true, Ways: `
		(hardware|fasteners|fixings|hardware list|fastener list)
		(what|which|how many|TELL) (hardware|screws|brackets|fasteners|fixings|post bases|bases) [(need|BUY|use|get)]
		how many (BRACKET|screws|post bases|bases|anchors|post caps)
		(number|count) of (BRACKET|screws|anchors|bases)
		(what|which) [(kind|size|length|sort)] [of] (screws|screw) [(need|use|BUY)]`},
	{Kind: Quest, Key: "finish", Loose: true, Ways: `
		(finish|stain|paint|finishing)
		how much (stain|paint|finish|oil|varnish|sealer)
		how many (gallons|cans|quarts|liters|litres) [of] [(stain|paint|finish|oil)]
		(what|how) (stain|paint|finish)`},
	{Kind: Quest, Key: "anchors", Loose: true, Ways: `
		(anchors|anchoring|anchorage)
		how (fasten|anchor|fix|bolt|attach|secure|mount) [(added|new|)] (POST|base) [(to|down|into|onto)] [(FLOOR)]
		how (fasten|anchor|bolt|attach|secure|mount) it [(to|down|into|onto)] [(FLOOR)]
		how fix it (to|down|into|onto) [(FLOOR)]
		how deep [(i|do)] [(drill|holes|anchors|are)] [(anchor)] [(holes|hole)]
		what anchors
		where anchors
		anchor (holes|depth|bolts)`},
	{Kind: Quest, Key: "shrinkage", Loose: true, Ways: `
		shrinkage
		(what|how) [(happens|much)] [(if|when|will)] (RAIL|lumber|wood|it|they|size) (dry|dries|shrink|shrinks|dry out|dries out|drying)
		what if (RAIL|lumber|wood|it|they) (dry|dries|shrink|shrinks|dry out|is green|are green|is wet|are wet|still wet|still green|dries out)
		(how much) (shrink|shrinks|shrinkage)
		(green|wet) (lumber|wood|boards|rails|stock)
		RAIL (still|are|is) (wet|green)
		when (RAIL|lumber|wood|it|they) (dry|dries|shrink|shrinks|dry out|dries out)`},
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: `
		teach [ME] [(class|students|lad|apprentice|kid|kids|it|how to (find|figure|work out|get))]
		walk (ME|lad|class|apprentice|students|kid|boy|girl|him|kids) through
		(show|explain to|tutor|coach) ME how to (figure|find|work out|get|calculate|compute)
		show ME how [(you|one|we|i)] (figure|finds|find|work out|calculate|compute|get) 
		lesson (on|about|in)
		take ME through
		step ME through
		explain [step by step] how to (figure|find|get|work out)
		help ME (figure|find|understand|work out|learn)
		talk ME through
		quiz ME on
		i want to learn
		learn`},
	{Kind: TailFill, Key: "teach tail", Ways: "(is|are|would be) (plenty|enough|sufficient)\n(step by step|one step at a time|one step after the other|slowly|from scratch|by hand|for themselves|with me|together)"},
}
