package lexicon

// biddings are still more ways to tell the program what to do: to take a trial, to take something back, to forget, to begin
// again.
var biddings = []Entry{
	{Kind: Cmd, Key: "take that", Loose: true, Ways: `
		(make|call) (that|it|this) (the plan|the one|our plan|my plan|the design|the layout|it|final|official|real)
		[go ahead and] (apply|keep|use|adopt|take|accept|enter|make) (what|whatever) (we|you|i) [(just|last)] TRIED [(just now|a moment ago|last|before)]
		[go ahead and] (apply|keep|use|adopt|take|accept) (that|the|this|my|our) [last] (what if|whatif|trial|experiment|test|try|attempt|idea|suggestion) [(one|of yours|of mine|then)]
		[that] what if (is good|is the one|works|it is) [,] (keep|use|take) (it|that)
		(that|it|this) (will|would) (work|do|be fine|be perfect|be great|be good|suit ME|serve) [(nicely|fine|perfectly|well|for ME)] [,] [(so|and)] (keep|take|use|adopt|let us go with|let us keep|let us take|let us use|go with|we will take|i will take|we will keep|i will keep|we will go with|i will go with) (it|that|this) [(one|then)]
		(you know what|perfect|great|lovely|excellent|wonderful|nice|bingo|sounds good|good) [,] (keep|take|use|adopt|let us go with|let us keep|let us take|let us use|go with|i will take|we will take) (it|that|this) [(one|then)]
		go ahead and (use|take|keep|do) (that|it|this) [one]
		(that|this|it) one (is|was|'s) (the winner|a winner|a keeper|the one|the ticket|good|perfect) [,] [(keep|take|use|let us keep|let us take|let us use) it]
		(that|this|it) (is|was) (the winner|a winner|a keeper|a deal|perfect as it is)
		we have a winner
		(we|i) (are|am) (going|sticking|staying|running) with (that|it|this|what we just tried|what you just tried)
		(you|we) (have|got|have got) (yourself|ourselves) a deal
		(make|let) the (change|trial|experiment) (permanent|stick|stand|official|real)
		[let us] (roll|run|move ahead|move forward|go forward|go ahead|rock|proceed) with (it|that|this) [one]
		(commit|lock|bake) (it|that|this) [in]`},
	{Kind: Cmd, Key: "undo", Loose: true, Ways: `
		(one|a) step back [(please|if you would)]
		(step|jump|move|hop|roll|wind) (back|backwards) [(by|up)] [(one|a)] [(step|notch|bit|change|time)]
		(go|take it|take me|take us) back [(by|up)] (one|a step|one step|a notch|one notch|one change)
		(back|undo) [(by|up)] one
		(reverse|revert|roll back|walk back|unwind|back out|undo) (the|my|that|what) [(last|latest)] (thing|one|step|change|move|edit|entry|line|bit|part|command|instruction) [(i|you|we)] [(just|last)] [(said|did|made|gave|entered|changed|set|typed)] [(you|me)]
		(take|pull|bring|put) (that|my|the) [very] last (thing|one|step|change|move|edit|entry|line|bit|part) back
		(back|roll|walk) (that|it|my last change|the last change|the last one|the last thing) (out|back) [again]
		(get rid of|take out|take off|throw out|chuck|bin|lose|cut|kill|can) (the|my|that) last (thing|one|step|change|move|edit|entry|line|bit|part|command|instruction) [(i|you|we)] [(just|last)] [(said|did|made|gave|entered|changed|set|typed)] [(you|me)]
		(i|we) (did not|do not) (mean|want) (to say|to do|to change|that last|the last) (that|it|one|thing|change|bit)`},
	{Kind: Cmd, Key: "redo", Loose: true, Ways: `
		(redo|repeat|reapply|reinstate|restore) (the|my|that|what) [(last|latest)] (thing|one|step|change|move|edit|entry|line|bit|part|command|instruction) [(i|you|we|that was)] [(just|had|have)] [(undid|undone|took back|taken back|took out|reversed|reverted|withdrew|cancelled|removed|scratched|dropped)] [(just now)]
		(put|bring|add|give|get|stick|pop) [ME] (that|the|my|it) [last] (thing|one|step|change|move|edit|entry|line|bit|part) back [(in|on)] [again]
		(put|bring|add|stick|pop) (that|it|the change|that change|my change|the last change|that one|the last one) back (in|on) [again]
		(i|we) (should not have|did not mean to|did not want to|should never have) (undone|undo|taken back|take back|reversed|reverse|taken that back|taken it back) [(that|it|the|my)] [last] [(one|thing|change|step|bit)] [after all] [,] [(so|;)] [(could|can|would|will)] [you] [please] [(redo|restore|bring back|put back) (it|that)]
		(undo|reverse|cancel) (the|that|my|your) (undo|undoing)
		(on second thought|no) [,] (i|we) (do want|want|did want|liked) (that|it) [back] [after all]
		(step|go|move|roll) (forward|forwards) [(again|one|a step|one step)]`},
	{Kind: Cmd, Key: "start over", Loose: true, Ways: `
		(chuck|toss|bin|dump|trash|junk|ditch|kill|can|lose|nix|scrap|burn|throw out|throw away|get rid of|do away with|wipe|clear|erase) (it all|everything|all of it|all of that|all of this|all that|all this|the lot|the whole lot|the whole thing|the whole mess|the whole shebang|the works) [(out|away|up to now|so far|and start over|and begin again|and start again)]
		[(let us|i want to|i would like to|we want to)] (start|begin|go|try|do it) (again|over|all over|afresh|anew) from (zero|nothing|scratch|the top|the beginning|the start|square one|the ground up|a clean slate)
		(chuck|toss|bin|dump|trash|junk|ditch|kill|can|lose|nix|scrap|wipe|clear|erase|drop|forget) (it|that|this|it all|everything) and (start|begin) (over|again|afresh|fresh|anew|from scratch)
		[let us] wipe (it|everything|this|that) [all] clean
		(take|bring) (it|me|us|everything) [(all)] back to (zero|nothing|square one|the beginning|the start|scratch)
		(empty|blank) (slate|sheet|page)`},
	{Kind: Cmd, Key: "forget", Loose: false, Ways: `
		(chuck|bin|dump|trash|junk|axe|rescind|revoke|retract|abandon|quash|eliminate|wipe|lift off|take off|strike off|do away with|get shot of|get rid of) [(only|just)] [out] [what] [i] [(said|gave|told|measured|set|have|asked)] [you] [(about|for|on)] [(limit|value|figure|measurement|reading|rule|price|(upper|lower) limit)] [(of|on|for|that|at)]
		(i|we) (do not|no longer) (need|want|require|care about|insist on|mind about) [(a|any|the)] (limit|maximum|minimum|max|min|cap) [(of|on|for)]`},
	{Kind: ForgetTail, Key: "forget", Ways: `
		just forget (it|that|them|about it|about that)
		(chuck|bin|dump|ditch|lose|nix|kill|clear|ignore|disregard|void|cancel|withdraw|get rid of|do away with|never mind|dump|trash) (it|that|them|this) [(out|away|off|again)]
		(throw|take|chuck|toss|cross|strike) (it|that|them|this) (out|away|off|back|down)
		no longer (needed|wanted|required|necessary|relevant|valid|true|good)
		(is|are) no longer (needed|wanted|required|necessary|relevant|valid)
		(ignore|disregard|forget|drop|discard|scrap|delete|strike|chuck) what (i|we) (measured|said|gave|told|set|read|got|have|put|entered) [you] [(there|here|for it|for that|about it|about that)]`},
	{Kind: ForgetTail, Key: "bad", Ways: "(was|is|were|are|must be|must have been|has to be) [(plain|just|all)] (bad|wrong|no good|off|a mistake|junk|rubbish|unreliable|mistaken|garbage|suspect)"},
	{Kind: Cmd, Key: "forget all but", Loose: true, Ways: `
		(chuck|toss|bin|dump|trash|junk|ditch|kill|can|lose|nix|scrap|throw out|throw away|get rid of|do away with|wipe|clear|erase|forget|drop|discard|ignore|cancel) (all|everything|whatever|the lot|the rest|all of it) [that] (i|we) [have] (said|told|gave|set|entered|put in|given|asked for) [you] [(so far|up to now)] (but|except|except for|save|besides|apart from|other than|save for|bar)
		(all|the only thing) (i|we) (want|need|care about|wish) [to] (keep|left|kept|remaining|left over|stay|keep of it) [(is|are)]
		(chuck|toss|bin|dump|trash|junk|ditch|kill|lose|nix|discard|cancel|get rid of|do away with) (all|everything|the lot|the rest) (but|except|except for|save|besides|apart from|other than|save for|bar)`},
	{Kind: Cmd, Key: "forget rest", Ways: "(ditch|chuck|bin|dump|trash|junk|nix|kill|discard|ignore|cancel|get rid of|throw out|throw away|toss out|do away with) [(all|everything)] (the rest|else|everything else|the others|all the others|the other ones|all other things|anything else)"},
	{Kind: Cmd, Key: "quit", Loose: true, Ways: `
		(that is|this is) (me|us) (done|finished|off|out|through|all done|all set|sorted)
		(i am|we are) (all set|all done|good|good to go|off now|off then|out of here|on (my|our) way)
		[(i|we)] (have got|have|got) [all|everything] [(what)] (i|we) (need|needed|wanted|came for)
		(time|have) to (go|run|head out|pack up|knock off|quit)
		(that|this) [(just|about|just about)] (wraps|does) (it|things) up
		(that|this) (will do|does|is) it [,] (thanks|thank you|bye|goodbye|cheers|for now|for today)
		(wrap|wrapping|winding|shutting|closing) (it|this|things) (up|down) [(for (now|today|the day))]
		(close|shut) (up|down) (shop|the program|this)`},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Ways: "(what is|what are|how about) yours\nwhat do you make it\nwhat is your (figure|number|answer|count|value)\nwhat did you (get|come up with) for (it|that)"},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		(METRIC|the METRIC) (from here [on]|from now on|from this point on|going forward|throughout|all the way|today|from the start|for (this|the rest)) [(please|it is|then)]
		(put|show|give|have|list|tell|read|display|convert|turn|print|say|write|get|switch) [ME] (it|everything|this|that|all|it all|the numbers|these|those|the lengths|the answers|answers|lengths|figures|measurements|the figures) [all] [back] (in|to|into|over to|as) METRIC [(instead|please|from now on|from here on|again)] [(instead of|rather than|not) [in] CUSTOMARY]
		[(my|the|this)] (tape|ruler|rule|measure|tape measure) (is|reads|measures|goes by|in|is in) [(in|only|all)] METRIC [(,)] [(so|and)] [everything] [(will be|is|comes)] [in] [METRIC]
		(i am|we are) (on|using|holding|reading|working with|working off) (a|an|my) METRIC (tape|ruler|rule|measure) [(today|here|now|this time)]
		(enough|no more|done|finished|through|that is enough|fed up) (with|of) [the] CUSTOMARY [(,)] [(let us|please|just)] [(use|go|switch to|back to|give ME|go back to|work in|do|go with)] [to] METRIC
		(can|could|let) (i|we|you|us) (do|have|keep|run|stick to|go with|see) (it|this|everything|all of it|all this) in METRIC [(instead|please|from now on|from here on)] [(instead of|rather than|not) [in] CUSTOMARY]
		[(i|we)] (prefer|like|want) METRIC [(units|instead|please|over CUSTOMARY|to CUSTOMARY)]
		METRIC (instead of|rather than|over) CUSTOMARY [please]
		(i am|we are) (thinking|working|measuring|building) in METRIC`},
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		(CUSTOMARY|the CUSTOMARY) (from here [on]|from now on|from this point on|going forward|throughout|all the way|today|from the start|for (this|the rest)) [(please|it is|then)]
		(put|show|give|have|list|tell|read|display|convert|turn|print|say|write|get|switch) [ME] (it|everything|this|that|all|it all|the numbers|these|those|the lengths|the answers|answers|lengths|figures|measurements|the figures) [all] [back] (in|to|into|over to|as) CUSTOMARY [(instead|please|from now on|from here on|again)] [(instead of|rather than|not) [in] METRIC]
		[(my|the|this)] (tape|ruler|rule|measure|tape measure) (is|reads|measures|goes by|in|is in) [(in|only|all)] CUSTOMARY [(,)] [(so|and)] [everything] [(will be|is|comes)] [in] [CUSTOMARY]
		(i am|we are) (on|using|holding|reading|working with|working off) (a|an|my) CUSTOMARY (tape|ruler|rule|measure) [(today|here|now|this time)]
		(enough|no more|done|finished|through|that is enough|fed up) (with|of) [the] METRIC [(,)] [(let us|please|just)] [(use|go|switch to|back to|give ME|go back to|work in|do|go with)] [to] CUSTOMARY
		(can|could|let) (i|we|you|us) (do|have|keep|run|stick to|go with|see) (it|this|everything|all of it|all this) in CUSTOMARY [(instead|please|from now on|from here on)] [(instead of|rather than|not) [in] METRIC]
		[(i|we)] (prefer|like|want) CUSTOMARY [(units|instead|please|over METRIC|to METRIC)]
		CUSTOMARY (instead of|rather than|over) METRIC [please]
		(i am|we are) (thinking|working|measuring|building) in CUSTOMARY`},
	{Kind: Fill, Key: "fill", Ways: `
		(by|with|from|on|in) your (figures|reckoning|count|numbers|math|end)
		(am|are|is) (delighted|pleased|thrilled|tickled|satisfied|content|taken) (with|by) (that|it|this) [one]
		in (dollars|cash|money|dollars and cents)
		(as for|when it comes to|as regards|with regard to|regarding|concerning|as far as)
		smack
		whoa
		woah
		yikes
		eek
		you know what
		for (a|just a) (sec|second|minute|moment|bit)
		(money|cost|price) (is|'s) no (object|issue|problem|concern|matter)
		(i|we) (mentioned|brought up|talked about|spoke of|listed) [(earlier|before|to you|just now)]`},
}
