package lexicon

// commands are whole acts, or the beginning of one that a name or a quantity completes.
var commands = []Entry{
	{Kind: Cmd, Key: "take that", Loose: true, Ways: `
		take (that|it|this) [one]
		(keep|use|go with|adopt|accept|run with|apply|stick with|stay with|settle on) (that|it|this) [(one|version|then|now|better)]
		(keep|use|go with|adopt|accept|run with|apply|stick with|take|stay with|choose|pick) (one|version|trial|that|the way) [(we|you|i)] [just] (tried|showed|did|looked at|tested|had|ran)
		(go|run|stick|stay|work|proceed) with (that|it|this|one we tried|one you tried|what we tried|trial|last one|last trial) [one]
		(one|trial) [(we|you|i)] [just] tried [(suits me|is good|is fine|works)] [(,)] [(keep to it|keep it)]
		(that|it|this) one (good|fine) [(,)] [(run|go|keep|use)] [(with)] [(that|it)]
		trial convinced me [(,)] [(go with|keep|take)] [that] [one]
		(that|it) (looks|is|sounds|works|suits|seems) (good|great|fine|lovely|right|perfect|nice|like it|me|ok) [,] [(let us|we will|i will|so|and|so let us)] (keep|take|go|use|run|adopt|stick) [(with)] (it|that) [one]
		version looks lovely [,] [so] [let us] keep it
		(make|let us make) (that|it) (so|stand|stick|permanent|real|official)
		do (it|that) [(that way|like that|then)]
		(keep|use|go with|adopt|accept|run with|apply|stick with|take|stay with|choose|pick|do|build|make it|make) [the] (one|version|trial|way|layout|plan|design) [(that|which)] (we|you|i) [(have)] [just] (tried|showed|did|looked at|tested|ran|worked out|drew up|drew|gave|came up with|described|told|suggested|figured) [(ME|me|us|out|up)] [(just now|last|there)]
		(that|it|this) (works|does it|will do|does the job|does the trick|will work|fits the bill|suits me|suits us) [(fine|nicely|well|great)] [,] [(so|let us|i will|we will|and|so let us)] (keep|take|use|go with|run with|stick with|stay with) (it|that|that one|this)
		keep what we tried
		keep (it|that) [(that way|like that)]
		yes (keep|take|do|use) (that|it)
		(that|it) will do
		we will (adopt|take|keep|use) (it|that|one you just tried)
		(sold|deal|done deal)
		i like (that|it|this) [better] [(,)] [(keep|take|use|go with)] [it|that]
		lock (it|that) in`},
	{Kind: Cmd, Key: "undo", Loose: true, Ways: `
		undo [(that|it|last|this)] [(thing|one|step|change)] [(i said|i did|i told you|i gave you)]
		undo [the] last [(thing|one|step|change)] [(i said|i told you|i gave you)]
		(never mind|nevermind|forget about|skip|pay no mind to|pay no attention to|do not mind|leave out|leave off) (that|the|my|this) [(very)] last (thing|one|bit|part|change|line|step|statement|remark|entry|piece) [(i said|i did|i told you|i gave you)]
		(never mind|nevermind|forget|forget about|scratch|drop|scrap|undo|ignore|disregard) (that|the|my|this) [(very)] last (thing|one|bit|part|change|line|step|statement|remark|entry|piece) [(,|;|-)] [(and|so|just)] [please] put (it|that|things|everything) back [(how|the way|to how|to the way|as|like) (it|things|that) was]
		(take|took) (that|it|last one|last thing|last) back
		take back [(that|it|last|what)] [(thing|one|i said|i just said)]
		(scratch|strike|cancel|revert|reverse|withdraw|drop|forget|ignore|disregard|erase|scrap|nix|retract|delete|remove) [(that|the)] last (thing|one|bit|statement|change|line|part|entry|remark) [(i said|i told you|i gave you|i did)]
		(scratch|strike|cancel|revert|reverse|withdraw|ignore|disregard|erase|nix|retract|scrap) (that|it)
		(put|set|change|turn|switch) (it|that|things|everything) back [(how|the way|to|as|like)] [(it|that|they)] [was] [(before)]
		(go|step|back|roll) back [(one|a|up)] [(step)]
		back up [(one|a)] [step]
		(never|nevermind) mind [(that|last)] [(thing|one)]
		never mind
		forget (that|it|what i just said)
		forget i said that
		i take (that|it) back
		i did not mean that
		(i|) did not mean to (say|do|type|put|enter|send) (that|it|this)
		(not|no) that [,] (undo|back)
		like it was
		as it was [before]
		scratch last thing`},
	{Kind: Cmd, Key: "redo", Loose: true, Ways: `
		redo [(that|it|this)]
		put [(that|it)] back [(in)] [(what|that)] [i] [(just|had|have)] [(you)] (undo|undid|undone|took back|took out) [(just now|now)]
		put back [(that|it|what)] [(i|you)] [(just|had)] [(you)] (undo|undid|undone) [just now]
		(undo|reverse|cancel) the undo
		(i|we) undid (it|that|too much|too far|one too many) [(by (mistake|accident)|accidentally)]
		(i|we) (did not mean|never meant|did not want) to undo
		that (was|is) [(an|one)] undo too (far|many|much)
		undo that undo
		bring (that|it) back
		do (that|it) again [after all]
		(no|actually) (put|bring) (that|it) back [in]
		restore (that|it)
		i want (that|it) back`},
	{Kind: Cmd, Key: "start over", Loose: true, Ways: `
		(start|restart|begin|began) [(all|right)] (over|fresh|afresh|again|anew|from scratch|clean|new) [again]
		(begin|began) (again|over|anew|afresh|from scratch) [(from scratch)]
		(clean|fresh|blank|new) (slate|start|sheet|page) [(,)] [(let us|we|and)] [(begin|start)] [(again|over)]
		wipe [the] (slate|everything|it|all) [clean] [(,)] [here comes [the] next [one|group]]
		(clear|reset|wipe|erase|scrap|forget|delete|scratch|dump|toss|bin) (everything|it all|all|it all out|all of it|whole thing|the lot|all that|lot|the whole lot) [(i said|i told you|and start over|and begin again|so far|out)]
		reset
		(from|back to) (scratch|square one)
		new (wall|job|project)
		start a new (wall|one|job|project)
		scrap (it|that) [all] [and start over]
		(scrap|forget|toss|scratch) the whole (shebang|thing|lot|mess|business)
		throw (it|everything) [all] (out|away) [and start over]
		let us start [from] (over|scratch|the beginning)
		begin with a clean (slate|sheet)`},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: `
		recap
		summary
		(summarize|summarise|sum up|review|restate|repeat) [(that|it|everything|what|all)] [(i|we|have)] [(told|gave|given|said|so|asked)] [(you|me)] [(so far|up to now|for me)]
		(what|everything|all) [(have|did|that)] (i|we) [(have|had)] [(so far)] (told|given|gave|said|asked|set|entered) [(you|to you)] [(so far|up to now|until now|already|thus far|now|till now)]
		(what|everything|all) (have|did) (i|we) [(have|had)] (tell|give) [(you|to you)] [(so far|up to now|until now|already|thus far|now|till now)]
		(read|say|play|repeat|tell|give|go|run) [(it|that|me|them|everything)] [(back|over|through)] [(to|over|through)] [(me)] [(what|everything|all)] [(that)] (i|we) [(have)] (gave|told|given|said|tell|put in|entered) [you] [(so far)]
		remind (me|us) [(of|what|about)] [(everything|all|what)] [(i|we)] [(have)] [(told|gave|given|said)] [(you)] [(so far)]
		go back over [(everything|what|all)] [(i)] [(told|gave)] [(you)]
		where (are|were) we
		what (stands|do you have|have you got|do you know|have you got so far|do you have so far|is set|have you heard|did i say|are my numbers|do we have so far|have we got so far|do you have down|have you got down)
		read (it|that|everything|me) back [(to me)] [(what i gave you)]
		what did you (hear|get|understand|note|write down|take down)
		list (everything|what i said|what i told you|my numbers|what stands)
		the story so far
		(what) so far
		what are the settings`},
	{Kind: Cmd, Key: "help", Loose: true, Ways: `
		help [(me|please|out)]
		(can|could) you help [me]
		what [(else|all|kind of things|sort of things|kinds of things|sorts of things|things|kind of questions|sorts of sentences|sentences)] (can|could|may|do|should) (i|we|you) (say|ask|tell|understand|type|know|say to you|ask you) [(you)] [here]
		what [(else|all|kind of things|things)] (can|could|may) (i|we|you) do [here]
		what (can|do) you (do|understand|know|know about)
		[i am] not sure what [i] [can] ask [you] [(;|,)] [could you help me]
		how (does this|do i use|do you|does it) (work|use|this|you|it)
		how do i (use|talk to) (this|you)
		(instructions|usage|manual|commands)
		what (sorts|kinds|sort|kind) of (sentences|things|questions|words|stuff) [(do|can)] (you|i|we) (understand|ask|say|know|ask you)
		i am (lost|stuck|confused)`},
	{Kind: Cmd, Key: "help", Ways: "what now"},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		help [(me|on|about|for)] [(with)]
		what [(can|may|could|do|should|all can|else can)] [(i|we|one|students|the students|kids)] (say|ask) about
		how [(do|can|may)] (i|we) (say|talk about|speak of|speak about|ask about|tell you about|give you|set)
		what [(can|may)] (students|kids|class) say about
		(examples|example) (of|for|about)`},
	{Kind: Cmd, Key: "quit", Loose: true, Ways: `
		quit
		exit
		(good bye|goodbye|bye|bye bye|so long|see you|see ya|cheerio|farewell)
		(that|this) (is|was|will be) (all|it|everything|enough) [(i|we)] [(needed|need|wanted|have|had)] [(for)] [(today|now|me|the day)] [(,)] [(bye|thanks|thank you|goodbye|cheers|thank you [(very|so)] (much|kindly)|thanks [(very|so)] much|thanks a (lot|bunch|million))]
		that is it [for] [(today|now|the day)]
		(thank you|thanks|many thanks) [(very|so)] [much] [(,)] (that|this) (is|was|will be) (all|it|everything) [(i)] [(needed|need)] [(for)] [today] [(,)] [(bye|goodbye)]
		(i am|we are) (done|finished|through|out|off) [(here|for today|for now|for the day)]
		(done|finished) [(here|for today|for now)]
		(call it|calling it) a day
		(nothing else|nothing more) (thanks|thank you|today|for now)
		(knock|pack) (off|it in|up) [for] [(today|the day)]
		stop
		(log off|log out|shut down)
		(see|talk to) you (later|tomorrow|soon)
		good night
		cheers [bye]
		enough for today
		got to go`},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		show (it|me it|us it|me) all
		show [ME] [(the|me the)] (whole|full|entire|complete|all) [(the|of the)] (sum|sums|arithmetic|derivation|math|maths|working|workings|calculation|proof|work|story|reckoning) [(start to finish|from start to finish|step by step)]
		(see|have|hear|put|write|read|give|spell|print|get|want) [(ME|up|out)] [(the|me the)] (whole|full|entire|complete) (sum|sums|arithmetic|derivation|math|maths|working|workings|calculation|proof|work|story|reckoning) [(up|on|start|from)] [(on the board|start to finish|from start to finish)] [(for (us|me|them))]
		(whole|full|entire|complete) (sum|arithmetic|derivation|math|maths|working|workings|calculation|proof|story) [(start to finish|from start to finish)]
		[(do not|and do not)] skip anything [(,)] [(every|show|all)] [(line|step)] [(of)] [(the)] [(arithmetic|sum|working|math)]
		every (line|step) of [the] (arithmetic|sum|working|math|calculation|proof)
		all the (arithmetic|math|steps of the sum|workings|working|sums)
		show (your|all your|the) (work|working|workings|math|arithmetic|sums|proof)
		prove it
		show me (the proof|all of it|everything)
		spell it all out
		in full
		[the] long (version|form)`},
	{Kind: Cmd, Key: "next", Loose: true, Ways: "next [(one|step|please|up)]\n(go on|continue|carry on|proceed|keep going|move on|onward)\nwhat (next|then|after that)\nnext step [please]\nwhat is [the] next [(step|one)]\nwhat comes (next|after that|then)\nwhat do i do next\nand after that\nand then what\ndone [,] what is next\nok next"},
	{Kind: Cmd, Key: "why that", Loose: true, Ways: `
		(why|how come) [(that|so|this|is that|is it)] 
		how [(did|do|would)] [you] (get|got|figure|work out|come up with|arrive at|reach|know|come to|work) (that|it|this|there) [(out)]
		how (get|got) (that|there|this|it)
		(explain|justify|prove) (that|it|this|yourself) [(to me|please)]
		but why
		how so
		why (that|so) (number|answer|many|much)
		where (does|did) (that|it|this) come from
		why is that
		how is that
		how come
		says who`},
	{Kind: Cmd, Key: "forget", Loose: false, Ways: `
		(forget|drop|scrap|scratch|remove|rm|delete|del|clear|erase|ditch|nix|lose|cancel|withdraw|strike|toss|kill|unset|disregard|ignore|discard|release|lift|void) [(only|just)] [(out|away)] [(about|that|what|i|everything|all|anything|i said|whatever)] [(i)] [(said|gave|told|measured|set|have|asked|say|give|tell)] [(you)] [(anything|something)] [(about|for|on|of|as|at)] [(limit|value|figure|measurement|reading|number|rule|price|(upper|lower) limit)] [(of|on|for|that|at)]
		(throw|take|cross|strike|leave|toss|wipe) (out|away|off|back) [(what|everything)] [(i)] [(said|gave|told|measured|set)] [(you)] [(about|for|on|of)] [(limit|value|figure|measurement|reading|number|price)] [(of|on|for)]
		do away with [limit] [of]
		get rid of [(limit|measurement|reading)] [(of|on)]
		no longer (have|want|need|care|cares|cared) [(about|a|any|for)]
		(i|we) no longer care about
		never mind [(about|what i said about|what i told you about)]
		do not (care|worry|mind) about
		forget about
		rid me of`},
	{Kind: ForgetTail, Key: "forget", Ways: `
		(strike|drop|forget|scrap|scratch|delete|remove) (it|that|them|this|those|these) [(limit)] [(out|away|off)] [(again)]
		(take|cross|throw|leave|toss) (it|that|them|this|those|these) [(limit)] (out|away|off) [(again)]
		(is|are|can go|can be|may go|has to go|must go|should go|goes) (out|away|gone|history|dropped|forgotten|void)
		(can go|can be|may go|has to go|must go|should go|goes) off
		(can|may|should|must|has to) go
		does not matter [(any more|anymore)]
		do not matter
		no longer (matters|applies|counts|holds|matter)
		(forget|drop) that limit
		is out`},
	{Kind: Cmd, Key: "forget all but", Loose: true, Ways: `
		(forget|drop|clear|scrap|delete|erase|toss|wipe|lose|remove|scratch|throw out|throw away|toss out|take out) (all|everything|the lot|lot|it all|rest) [(,)] [(i said|i told you)] (but|except|except for|save|besides|apart from|other than|save for|keep|but keep)
		(keep|leave) only
		keep nothing but
		forget the rest but
		only keep`},
	{Kind: Cmd, Key: "take", Loose: true, Ways: "take [(way|option|number|choice|no)]\n(go with|use|pick|choose|i will take|i will have|prefer|do|adopt|try|go for|opt for|settle on|settle for|vote for|go ahead with|run with|i like) [(way|option|number|choice)]\n(way|option|choice|number|solution|fix|remedy)"},
	{Kind: WayOut, Key: "way", Loose: true, Ways: `
		(way|ways|option|choice|fix|remedy|remedies|suggestion|solution|offer|change) [(out|forward)] [(you|that|of those)] [(offered|showed|gave|suggested|proposed|listed|mentioned)] [(me)]
		of [(those|the|your|these)] (ways|remedies|options|choices|fixes|suggestions|solutions) [out]
		way out`},
	{Kind: Goal, Key: "equal bays", Loose: true, Ways: `
		(EQUAL|equally) [(wide|size|sized|spaced|long|length|width)] BAY
		BAY [(all|come out|to be|all come out)] [(the)] (EQUAL|alike) [(width|size|length|as each other)]
		[all] BAY EQUAL [width]
		(same|equal) (width|length|size) (for|in) (all|every|each) BAY
		(space|divide|split|set) [the] (bays|posts|sections) [out] (evenly|equally)
		(even|equalize|equalise) [out] BAY
		BAY (the|all) same [(width|size|length)]
		(evenly|equally) (spaced|sized|divided) BAY
		BAY (alike|match)
		BAY equally (wide|long|sized|spaced)
		[both] BAY (come|comes|came|turn|turned|be|are|end|ended|finish|finished|get|got) [(up|out|to be|being)] [(all|both)] (equally|evenly) (wide|long|sized|large|big|broad)
		BAY eq
		eq BAY
		same BAY [(width|widths|size)]
		no BAY (wider|longer|bigger) than (any other|the others|another)`},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		same length
		(same|one) (cut|length|cut length) [(on|for)] (all|every|each|RAIL) [of] [(them|those|RAIL|one)]
		CUT [(all|every|each)] [last] [(of)] [(RAIL|them|those)] [(five|six|four|seven|eight|three)] [to] [(one|the|one and the|a)] (same|single|one|identical|equal) (length|size)
		[(all|every)] (RAIL|cuts) [(all|to|sawn|cut)] [(to)] [(one|the)] (same|single|one|identical|equal) length
		RAIL one length
		CUT (all|RAIL|them) [(all)] [(five|six|four|seven|eight)] to [the] (shortest)
		CUT (RAIL|them|these|those|everything) [all] [(to|at|of)] one length
		(all|RAIL) CUT (alike|the same|equal)
		(one|single) length for (all|every|RAIL|them)
		one length [(so|to)] [(we|i)] [(can|)] [(cut them in a stack|stack cut)]
		CUT [(RAIL|them|all)] (alike|the same)`},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: `
		even (GAP)
		(keep|leave|hold|make) [(all|every)] GAP (exact|true|even|exactly even|dead even|perfectly even|honest) [(and|,)] round (each|every) (mark|marks) [(by itself|on its own)]
		(keep|leave|hold|make) [(all|every)] GAP (exact|true|even|exactly even|dead even|perfectly even|honest)
		round (each|every) (mark|marks) (by itself|on its own|separately|individually) [(and|,)] [(keep|leave)] [(gaps|gap|the gaps)] [(exact|even|true)]
		GAP (exact|true|even) and round
		GAP (perfectly|exactly|dead) (even|exact|equal)
		exact GAP`},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: `
		cheapest [(way|one|option|possible|you can|layout|as possible|there is|it can be)] [to (buy|do|build|make|get) (it|this|that)]
		(CHEAPEST|lowest|least) [(possible|overall)] (PRICE|cost|money) [(version|one|way|option|layout|plan|wall|design|possible|of all|there is)]
		as (cheap|cheaply|inexpensive|inexpensively|economical|economically|affordable) as [(possible|you can|it gets|can be|it can be|we can)] [(make it|get it|do it|be)]
		as low as (possible|you can|it gets|can be|it can be|we can) [(make it|get it|do it|be)]
		least (expensive|costly|money) [(way|one|option)] [(to do it)]
		(keep|hold) [the] (PRICE) (down|low|as low as possible|to a minimum)
		(minimize|minimise) [the] (PRICE)
		(way|whatever way) (costs|that costs) [(me)] (least) [(money)]
		for the least money
		(do|make|build) it [the] (CHEAPEST|cheap)
		spend as little as [(possible|i can|we can)]
		costs [me] least [money]
		whatever way costs me the least
		save [me] [the] most money
		on the cheap`},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(keep|hold|get) [the] WASTE (down|low|small|to a minimum|as low as possible|as small as possible)
		(LEAST|as little) [(possible)] WASTE [of (timber|lumber|wood|boards|material)] [(as possible|as you can|possible)]
		WASTE (as) [(little|few)] [(lumber|timber|wood|material)] as [(possible|you can|you are able|we can|able)]
		waste (least|as little)
		(minimize|minimise|cut down on|reduce|keep down|avoid) [the] WASTE
		[do not want] [a] heap of (offcuts|scraps|leftovers|waste) [(,)] [so] [(waste as little as possible)]
		as (few|little) WASTE as [(possible|you can)]
		WASTE (nothing|as little)
		(not|no) want much WASTE
		(not|no|do not|never) waste any more [(lumber|timber|wood|material|boards)] than [(you|we|i)] (have to|need|need to|must|can help|absolutely have to|really have to)
		waste least (lumber|timber|wood|material)
		[RAIL] [be] (CUT|planned|bought|ordered|laid out|sawn) so [that] [the] (LEAST|as little|as few) [possible] (lumber|timber|wood|material|boards|stock|stuff|WASTE) [(as possible)] (wasted|is wasted|to waste|thrown away|thrown out|left over|lost|in the bin|on the floor|results|is left)
		[the] (LEAST|as little|as few) [possible] (lumber|timber|wood|material|boards|stock|stuff) [(as possible)] [(gets|goes|ends up|be|being)] (wasted|to waste|thrown away|thrown out|left over|lost|in the bin|on the floor)
		little waste
		(not|no) (waste|wasting) (no|any|much|a lot of) (lumber|timber|wood|material)`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		[(switch|change|go|convert|set|now|work|working|measure|use|think|talk|speak|change over|move|stick|back)] [(it|everything|units|over|back|the units|all)] [(to|in|into|with)] (metric|millimeters|millimetres) [units] [(please|from now on|from here on|only|now|system)]
		(everything|all|numbers|figures|lengths|measurements) [(i)] [(give|say|tell|gave)] [(you)] [(is|are|will be|in)] [(in)] (metric|millimeters|millimetres|mm)
		(work|working|measure|measuring|think|talk|speak) in (metric|millimeters|millimetres|mm)
		(in|use|using) (metric|millimeters|millimetres) [(from now on|please|from here on|units|only)]
		in mm (from now on|please|from here on|only)
		(work|working|measure|measuring|think) in (centimeters|centimetres|cm|meters|metres|millimeters|millimetres|mm|metric) [and (centimeters|centimetres|cm|meters|metres|millimeters|millimetres|mm)] [[,] [and] not [in] (inches|feet|imperial|feet and inches)]
		units (in|=|are|is) (metric|millimeters|millimetres|mm)
		(units|unit) [(are|is|should be)] (:|-|,) (metric|millimeters|millimetres|mm|cm|centimeters|centimetres)
		metric (from now on|please|from here on|units|system|now|only|here)
		on metric [system]
		(use|using|make it|let us use) (centimeters|centimetres|cm|meters|metres) [(from now on|please|from here on|units|only)]
		(switch|change|go|back|go back|convert|over) [(over|back)] to (mm|metric|millimeters|millimetres)
		(all|everything) in (mm|millimeters|millimetres|metric)
		(it|they) (is|are) all [in] (mm|millimeters|millimetres|metric) [from here [on]]
		metric
		(use|using|in) mm`},
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		[(switch|change|go|convert|set|now|change over|move|back)] [(it|everything|units|over|back|all)] to (inches|imperial|customary|feet|feet and inches|inches and feet) [(please|from now on|units|again|now)]
		(work|working|measure|think|talk|speak|back|stay) in (inches|imperial|customary|feet|feet and inches) [(from now on|please|again|now)]
		(everything|all|numbers|figures|lengths|measurements) [(i)] [(give|say|tell)] [(you)] [(is|are)] in (inches|feet|feet and inches|imperial)
		units (in|=|are) (inches|imperial|customary|feet)
		(units|unit) [(are|is|should be)] (:|-|,) (inches|inch|in|imperial|customary|feet|feet and inches)
		(imperial|customary|us customary) [(units|from now on|please|again|now|measurements)]
		use (inches|imperial|feet and inches|customary) [(from now on|please|again|units|now)]
		inches (from now on|please|from here on|again|only)
		(all|everything) in (inches|feet|feet and inches|imperial)
		back to inches
		(go back|switch back|change back|return) to (inches|feet|feet and inches|imperial)
		no more metric
		in inches from now on`},
	{Kind: Cmd, Key: "draw to", Ways: "(draw|put|save|export|write|send|make|sketch|output) [(it|that|this|a|the|me)] [(drawing|picture|sketch|wall|elevation|svg|image)] [(out)] [(of it)] (to|in|into|as|onto)\nsvg to\ndrawing (to|as|into)\n(drawing|picture|sketch|elevation|svg) (ought to|should|has to|must|needs to|can|is to|goes|may|shall|will|wants to|could) [(go|be|end up|land|come out)] [(saved|put|written|exported|stored|kept|sent|drawn|printed)] [out] (in|into|to|as|onto)"},
	{Kind: Cmd, Key: "print to", Ways: "(print|put|save|export|write|send|make|output) [(it|that|this|a|the|me|all|your|my|everything)] [(whole|entire|full)] [(job|thing|all|version|lot|plan|wall|sheet|page|job sheet|everything|report|summary|results|result|answer|pages|paperwork|layout)] [(out)] (to|in|into|as|onto)\n[job] sheet (to|as)\n(job sheet|sheet|whole thing|everything|page|report|job|lot|it all|plan|wall) (ought to|should|has to|must|needs to|can|is to|goes|may|shall|will|wants to|could) [(go|be|end up|land|come out)] [(saved|put|written|exported|stored|kept|sent|printed)] [out] (in|into|to|as|onto)"},
	{Kind: Csv, Key: "csv", Loose: true, Ways: "[(as|in|for)] [(a|the|an)] (csv|spreadsheet|excel|comma separated values) [(file|format|form|sheet|please)] [so they can open it as a spreadsheet]\n, csv\nso they can open it as a spreadsheet\nthat opens in a spreadsheet\n[in] (a|some|any) (form|format|file|way|shape) (that|which|i can|we can|they can|he can|she can|one can) [(can be|will)] (open|opens|opened|load|loads|loaded|read|reads|use|used|edit|edited|works|work|goes|go) [(it|up)] (in|into|with|by|as) (csv|spreadsheet|excel) [program]"},
	{Kind: Unclear, Key: "unclear", Loose: false, Ways: "how wide is a person\nused to (be|have|measure|stand)\n(old|previous|former|original) (GAP|OPENING|HEIGHT)"},
}
