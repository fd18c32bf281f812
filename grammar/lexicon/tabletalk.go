package lexicon

// tableTalk are ways to ask as people do with the work before them: for a table, after a figure of it, and for what comes of it all.
var tableTalk = []Entry{
	{Kind: Quest, Key: "layout", Loose: true, Ways: `
		how (it|this|that|everything|things|the lot) [all] (comes|works|turns|ends|shapes|lays|pans) (out|up) [(to|as|like|at)]
		(have|see|hear|give ME|show ME|read ME|want|need|get) (the|your|all the) (numbers|figures|results|answer|answers|reckoning) [(for|on|of) WALL]
		(what|how) (does|will|would|do|did) [(finished|completed|whole|entire)] WALL (come|work|turn|end|shape|lay|pan) (out|up) [(to|as|like|at)]
		how (finished|completed|whole|entire|) WALL (comes|works|turns|ends|shapes|lays|pans|divides|breaks) (out|up|down) [(to|as|like|at)]
		(full|whole|entire|complete|final|finished|total) (layout|lay out|arrangement)
		(work|figure|lay|run|calculate|compute|reckon|sort) [(out|up)] (whole|entire) (thing|works|business|shebang|lot) [(out|up)]`},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		(list|show|give|tell|name|read|call|print|see|have|hear|want|need) [ME] [(every|each|all|any)] (combination|combinations|combo|combos|arrangement|arrangements|setup|setups|solution|solutions) [(that|which|of RAIL and GAP)] [(can|could|will|would)] [(fit|fits|work|works|go|goes|possible|hold|holds|pass|passes)]
		(every|each|all|any|whatever|which|what) (combination|combinations|combo|combos|arrangement|arrangements|setup|setups|solution|solutions) (that|which|) [(can|could|will|would)] (fit|fits|work|works|go|goes|is possible|are possible|hold|holds|pass|passes)
		(which|what) (ones|one) (work|works|fit|fits|hold|go|pass|would work|will work|could work|can work|would fit|will fit|are possible)
		(which|what) of (those|them|these) (work|works|fit|fits|hold|go|pass|would work|will work|could work|can work|would fit|will fit|are possible)`},
	{Kind: TailFill, Key: "within limits", Ways: "(with|within|under|given|for|by|inside) [(all|all of)] (those|these|the|my|our|such) (limits|limit|constraints|rules|conditions|restrictions|requirements|bounds|numbers|figures)"},
	{Kind: Quest, Key: "marks", Ways: "(POST|RAIL|BRACKET) (mark|marks|markings|lines) [(from FLOOR [up])] [(up from FLOOR)]"},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		where (RAIL|BRACKET) MARK [(go|come|land|fall|sit|belong|be|end up)] [(on|at|onto) (POST|it|them)]
		where [(on|along|up) POST] (mark|pencil|scribe|strike|drill|score) [(for|at|in)] [(RAIL|BRACKET|holes|screws|them|it)]
		[TELL] [ME] (heights|height) [(that|where)] [(to|i|we)] (mark|pencil|scribe|strike|drill|score) [(for|at|in|on)] [(RAIL|BRACKET|holes|POST|screws)]
		(marking|scribing|layout|pencilling|penciling) (heights|height|points|spots|lines|figures)
		(heights|height) for (marking|scribing|drilling|the marks|the brackets) [(on|at|in) POST]
		what MARK (go|goes|belong|land|come|do i put|do i make|to put|to make) (on|onto|up) (it|them|the stick|the pole|the rod|POST)
		where [(PERSON)] (put|make|draw|strike|scratch|set|place) [(his|her|their|my|our|the)] (ticks|tick|tick marks|scratches|marks|lines|pencil marks|x's) [(on|onto|up) POST]`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		(length|lengths) to (CUT|saw|chop) [(everything|all of it|it all|the lot|them all|each piece|each one|every piece|every one|RAIL|POST|STIFF|them|it)] [(to|at)]
		what (do|does|is|are|did) [(each|every)] [of] (RAIL|pieces|piece|STIFF|added posts) (get|being|getting|be|) (cut|chopped|sawn|sawed|trimmed|cut off) [(down|off)] (to|at)
		what (it|they|these|those|them) [(get|getting|being)] (cut|chopped|sawn|sawed) [(down|off)] (to|at)
		(length|lengths) for (the saw|the chop saw|the cut|the cuts|cutting|each cut|every cut)`},
	{Kind: Quest, Key: "shopping", Ways: "(lumber|material|materials|wood|timber|board|yard|store|hardware) order"},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		(list|rundown|count|schedule|tally|inventory) of [(all|every|everything)] [(the)] (material|materials|lumber|wood|timber|supplies|boards to buy|things to buy)
		(make|write|draw|fill|put|work|figure|type|print) (up|out|together) (a|the|my|our) [(whole|full|complete)] (material|materials|lumber|wood|shopping|buying) (order|list)
		how many RAIL (have to be|need to be|must be|should be|get|are to be|will be|has to be|ought to be) (bought|purchased|ordered|picked up|brought home) [(and)] [(in|of|at)] [(what|which)] [(length|lengths)]
		how many RAIL [(do|should|must)] (i|we) (buy|order|purchase) (and in|in) (what|which) (length|lengths)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: "(what|how much) (it|this|that|all this|all that|everything) costs [ME] [(, so what does it|, so what is it|, so how much|, how much|so what does it)]"},
	{Kind: Quest, Key: "drawing", Loose: true, Ways: `
		(can not|could not|cannot|have trouble|having trouble|have a hard time|having a hard time|hard to|struggle to|struggling to) (picture|picturing|visualize|visualizing|imagine|imagining|envision|envisioning|see) (it|this|that|the wall|any of this|any of it) [(in my head|in my mind|yet)]
		(draw|sketch) (the|the whole|the entire) (thing|lot|works|arrangement|setup|elevation)`},
	{Kind: Quest, Key: "posts", Loose: true, Ways: `
		[(at|in|on)] (what|which) (spot|place|point|location|position|distance) (should|ought|do|does|will|must|would|shall|can|could|is) [(i|we|the|)] [(put|set|place|plant|stand|have)] (added|new|extra|additional|) (POST|UPRIGHT) [(be|to be|to|go|get)] [(standing|stand|go|going|set|placed|put|planted|located|sit|land|end up|be|belong)]`},
	{Kind: Fill, Key: "in hand", Loose: true, Ways: `
		(i|we) have [got] everything [(here|together|ready|on site|laid out|at hand|in hand|i need|we need|home|set out|on hand)]
		(everything|it all|all the stuff|all of it) (is|was) (here|together|ready|on site|laid out|at hand|delivered|unloaded)`},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Loose: true, Ways: `
		say (what|which|how)
		(do|does|did|would) (we|you|i|anybody|anyone|PERSON) (know|remember|recall)
		[(i|we)] [would] appreciate (hearing|seeing|knowing|having|learning|getting|finding out)
		[(i|we)] [(would)] be (glad|happy|pleased|grateful|obliged|delighted) (to (know|hear|see|have|learn)|for)
		(PERSON) [also] (wants|would like|needs|would love|is dying|is asking|is wanting|has|wanted|needed|likes|wishes) to (know|hear|see|learn)
		what (do|should|can|shall|would|could|must|am i supposed to|are we supposed to) (i|we|) (tell|say to|answer|give|report to|call out to) (him|her|them|PERSON)`},
	{Kind: Part, Key: "bay", Sense: Meaning("bays | bay"), Ways: "(sections|section|stretches|stretch|panels|panel|runs|fields|lengths) of (RAIL|boards|slats)"},
	{Kind: TailFill, Key: "filled with", Ways: "(get|gets|are|is|to be|be|being|) (filled|filled up|filled in|closed|closed in|boarded|boarded up) [(with|by)] RAIL"},
	{Kind: Dim, Key: "oc", Sense: Meaning("centers | stiffener spacing"), Ways: "(distance|spacing|measure|measurement) oc"},
	{Kind: TailFill, Key: "one by one", Ways: `
		(one|each|a piece|one mark|one step|one line) at a time [from [the] (bottom|top|left|right|start|beginning|floor) [(up|down|on)]]
		one (after|by) (another|one|the other|the next) [from [the] (bottom|top|left|right|start|beginning|floor) [(up|down|on)]]
		(once|all) over again
		over again`},
	{Kind: TailFill, Key: "for whom", Ways: `
		[(just)] (like|as) (you|one|they|i) (would|do|might|should) [(for|to|with|teach|show|tell)] [(a|an|the|some)] [(complete|total|rank|raw|absolute)] (beginner|novice|child|kid|PERSON|newcomer|dummy|greenhorn|five year old|first timer|schoolchild|pupil)
		(as if|as though|like) (i|we|he|she|they) (were|was|am|are|is) [(a|an|the)] [(complete|total|rank|raw|absolute)] (beginner|beginners|novice|novices|child|kid|five|ten|PERSON|new|dummy)
		for (beginners|dummies|a beginner|novices|a novice|a newcomer)
		nothing (left out|skipped|omitted|missing|held back)
		(leaving|leave|skip|skipping|omit|omitting) nothing [out]
		without (skipping|leaving out|omitting|missing) (anything|a step|any steps|any step|any|a line)`},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		every (line|step|bit|figure|number) (of|in) [the] (arithmetic|sum|working|math|calculation|proof|maths|reckoning) (shown|written out|spelled out|laid out|set out|put down|written down|set down|printed)
		[(see|show|have|want)] (the|) [(whole|full|complete|entire)] (arithmetic|working|math|maths|calculation|reckoning|sums) (shown|written out|spelled out|laid out|set out|written down) [in full]`},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: `
		(run|go|read|talk|walk|step|look|going) [ME] (through|over|back|back over|back through|over again) (everything|all|what|whatever|all that) (you|we) (have|have got|got|heard|know|have heard|wrote down|have down) [(from ME)] [(so far|up to now|until now|by now)]`},
	{Kind: Cmd, Key: "help", Loose: true, Ways: `
		instructions (for|on|about) [(how to)] (using|use|working|operating|talking to|speaking to) (this|it|you|the program|this thing|the thing|that thing)
		(how|show me how) (to|do i|do you|does one|can i|would i) (use|work|operate|run|talk to) (this|it|you|the program|this thing|this program|this tool|the tool)
		[(tell|show) ME] (what|which|all) [(sorts|sort|kinds|kind) of (words|things|sentences|talk|questions)] [that] you (understand|can understand|can do|can handle|can take|can hear|can answer|are able to do|are able to understand)`},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		(what|which|how many) ways [(can|could|do|may|might|are there)] [(for)] (i|we|one|you|people|somebody|to) [(to)] (say|tell|word|phrase|put|ask|express|speak|talk) [(you)] [(something|anything|things)] (about|of|for|on)
		how (can|could|do|may|might|would|should|shall|to) (i|we|one|you|people|somebody|someone|) (say|tell|word|phrase|put|express|talk|speak|ask|describe) [(you)] [(something|anything|things|a thing)] (about|of|on|as to)
		how (i|we|one|people|somebody|someone) (can|could|may|might|would|should|ought to|) (say|tell|word|phrase|put|express|talk|speak|ask|describe) [(you)] [(something|anything|things|a thing)] (about|of|on|as to)
		(words|phrases|wording|ways of speaking|sentences) (for|about) [(saying|telling you)]`},
	{Kind: Head, Key: "check", Loose: true, Ways: "[(the|my|our|one of my)] PERSON (doubts|doubt|doubted|questions|questioned|disputes|disputed|queries|queried|challenges|challenged|is doubting|is questioning) [that]"},
	{Kind: Fill, Key: "for whom", Ways: "(for|of|with|because of|on account of) (the|my|our) (little|wee|young) (one|ones|guy|guys|fella|fellas|girl|girls|boy|boys|kid|kids|people|folks)"},
	{Kind: TailFill, Key: "for ordering", Ways: "for (ordering|pricing|planning|reference|comparison|(my|the|our) (notes|records|files|report|paperwork))"},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: "(whether|if) there (is|are) [(any|some|such)] (cautions|warnings|dangers|hazards|risks|pitfalls|problems|concerns|caveats)"},
	{Kind: TailFill, Key: "as told", Ways: "(with|from|out of|based on|given|using|on|by) (what|everything|all|all that) (i|we) (have told|have given|told|gave|said|have said) [you] [(so far|already)]"},
	{Kind: Fill, Key: "so far", Ways: "(up to|up until|until|till|by) (this point|here|now|today|this moment)\nto date"},
	{Kind: TailFill, Key: "in figures", Ways: "in (figures|numbers|plain numbers|hard numbers)"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("bay | stiffeners, stiffener spacing, rails, gap, stiffener size, rail size, bays, short, cut, measured, opening, added posts"), Ways: "(do|does|will|would) (one|a|each|every) BAY (need|take|get|want|hold|have|require|call for)\n(one|a|each|every) BAY (needs|takes|gets|holds|requires|calls for)"},
	{Kind: Part, Key: "gap", Sense: Meaning("gap"), Ways: "between (one|a|any) RAIL and (the next|next|another|the one (above|below|over|under) it|its neighbor) [(one|RAIL)]"},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: "[clear] run (between|from) [(two|both)] [END] POST [(to END POST|to the other|to the next)]"},
	{Kind: Quest, Key: "posts", Loose: true, Ways: "where (along|on|in|across|down) (WALL|the span|the run|the line) (do|does|should|must|will|would|shall|can) [(i|we|the|)] [(put|set|place|plant|stand|add|install|anchor|dig)] [(in|for)] (added|new|extra|additional|) POST [(go|go in|stand|land|sit|belong|come|end up|be|get set)] [(at|in)]"},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: "(write|make|draw|put|type|print|work|fill) ME (up|out|together) (a|an|the|my) [(whole|full|complete|lumber|material|materials|shopping)] (order|list) [(for|to give) (the|) (yard|lumberyard|lumber yard|store|clerk)]"},
	{Kind: Quest, Key: "steps", Loose: true, Ways: "[in] (what|which) (order|sequence) (do|should|would|must|shall|can) (i|we|one|they) (go|set) about (it|this|that|things|the work|the job|building it|putting it up)"},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(anything|something|what) [(about|in|with|on) (this|it|that|here|the (wall|plan|layout))] [(that|which)] (should|would|could|might|ought to|will) (make|have|get|leave|keep|give) ME (nervous|worried|uneasy|think twice|worry|worrying|up at night|concerned|careful|pause|stop and think)
		(what|anything) [(that|which)] (would|will|might|could|should|is) [(a|an|the|my|going to)] PERSON [(going to|likely to)] (pick on|pick at|flag|object to|find fault with|complain about|complain of|not like|raise|call out|frown at|frown on|balk at|red tag) [(here|in it|on it|about it|in this|on this|with this)]`},
	{Kind: TailFill, Key: "for whom", Ways: "take it (slow|slowly|easy|from the top|one step at a time) [(and|,|with (ME|PERSON))]"},
	{Kind: Cmd, Key: "help", Loose: true, Ways: "(do not|can not|could not|never) (get|understand|see|follow|grasp|figure out|know) (how|what) [to] [(i|you|it|this|that|one)] (use|works|work|talk to|am supposed to (say|do|type|ask)|can (say|ask|type)|should (say|ask|type)) [(this|it|you|with this|here)]"},
	{Kind: Tail, Key: "why", Loose: true, Ways: "found\n(is|was|are|were|gets|got|being|been) (found|arrived at|come by|derived|reckoned|settled on|settled)"},
	{Kind: Fill, Key: "any number", Ways: "any (number|count|amount|quantity) of"},
	{Kind: Reason, Key: "reason", Ways: "so (both|all|everything|everybody|the two|all of|each|every)"},
}
