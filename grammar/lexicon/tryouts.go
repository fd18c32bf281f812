package lexicon

// tryouts are ways to try something out that speak of somebody's design, and turns of phrase about what was said and what is
// to be kept, taken back, or left.
var tryouts = []Entry{
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		(would|will|could|can|does|do|might|should) [(WHOSE|PERSON 's)] [(old|new|own|original|first|other)] DESIGN [(all|still|even|really|just|maybe|then)] (FLIES|work out|stand|stand up|hold up|come out|make sense) [(out|up|together|anything|at all|nicely|fine|well|all right|alright|ok|okay|for us|for me)] (if|with|when|using|at)
		(would|will|could|can|does|do|might|should) IT [(all|still|even|really|just|then)] (stand|stand up|hold up|stay up|make sense|come out right|look right|work out) (if|with|when|using|should)
		(how|what) (would|will|does|do|might|about) [(WHOSE|PERSON 's)] [(old|new|own|original|first|other)] DESIGN (look|look like|be|be like|work|work out|do|go|come out|change|hold up|fare|turn out) (if|with|when|at|using)
		(suppose|supposing|say|imagine|pretend|assume|assuming|if|what if|let us|let us say) [that] (i|we|you|they|) [(just|only|simply|instead)] (do|did|take|took|use|used|build|built|go with|went with|adopt|adopted|follow|followed|borrow|borrowed|copy|copied|run|ran|try|tried|keep|kept|have|had|went by|go by) [(WHOSE|PERSON 's|the|that|this)] [(old|new|own|original|first|other)] DESIGN [(,)] [(but|only|just|though|instead)] (with|at|using|make it|made it|having)
		(take|use|try|keep|run|have) [(WHOSE|PERSON 's)] DESIGN (but|only) (with|at|using|make it)
		(let us|let ME|i want to|i would like to|want to|like to|can we|could we|can i|could i) (try|test|look at|play with|toy with|check out|explore|run) (something|something else|something different|something new|an idea|another idea|one thing|one more thing|a thing|a little something|it another way|a different way|another way|a variation) [(out)] [(else|different|new)] [(here|first|quick|quickly|for a second|for a minute|for a moment)] [(:|,|;|-|--)] [(pretend|suppose|what if|say|imagine|assume|if|let us say|how about|what about|and|so)] [that]
		(try|test) (this|this one|this out|this on|this for size|it this way|one more thing) [(:|,|;|-)] [(pretend|suppose|what if|say|imagine|assume|if|let us say|how about|what about)] [that]
		(just|) out of (curiosity|interest) [(,|:)] [(pretend|suppose|what if|say|imagine|assume|if|let us say|how about|what about)]
		what do you say (we|i|to)
		(see|show ME|tell ME|let ME see|find out|know) how (things|it|that|everything|the wall|the layout) (stand|stands|stood|would stand|end up|ends up|would end up|hold up|holds up|shake out|shakes out) (if|with|when|at)
		picture (this|it) [(:|,)] [(if|what if)]`},
	{Kind: Tail, Key: "fit", Loose: true, Ways: `
		do you (suppose|think|reckon|believe|figure|guess)
		(would|will|could|does|might) [(WHOSE|PERSON 's)] DESIGN [(still|even|then)] (FLIES|work out|stand|stand up|hold up)`},
	{Kind: Cmd, Key: "take that", Loose: true, Ways: `
		(take|keep|use|do|go with|adopt|accept|run with|stick with|apply|choose|pick|make it|want|like) [the] (last|latest|newest|previous) (thing|one|try|trial|version|idea|attempt|what if|layout|setup|go) [(that)] [(we|you|i)] [(just)] [(tried|showed|did|looked at|tested|had|ran)]
		(keep|use|adopt|take) what (we|i|you) [just] (tried|tested|had|did|ran|came up with|looked at)`},
	{Kind: Cmd, Key: "quit", Ways: `
		(that|this) is (the lot|the whole lot|the works|my lot|us done|me done)
		(shut|close|turn|switch|power) (it|this|that|her|everything|you|yourself) (down|off|up)
		close up shop
		(wrap|pack|call|end) (it|this|things) (up|quits|in|there|here) [for] [(today|the day|now|tonight)]
		[ok] that is it from (me|us|our end|my end|my side|here) [(today|for today|for now)]
		let us (stop|leave it|end|quit|call it) [(there|here|at that|a day|quits)] [for] [(today|the day|now|tonight)]
		(i|we) (will|can|could|should) (stop|leave it|end|quit) (here|there|at that|now)
		(that|this) (wraps|about wraps|about covers|covers|sums|pretty much covers) (it|everything|things) [up]
		(nothing|no) (further|more) [(questions|from ME|to ask|to say|for ME|today|for now)]
		(sign|signing|log|logging) (off|out)
		(catch|see) you (next time|around|another time|some other time)
		until (next time|tomorrow|then)
		(take care|so long|ta ta|toodle oo|bye now|bye for now|good day)
		have a good (one|day|night|evening|weekend|afternoon)
		(i am|we are) (all set|all done|good|out of here|off home|heading out|heading home|leaving|going home|done with you|set) [(now|here|for today|for the day|for now|thanks)]
		(i|we) (must|have to|got to|need to|better|had better) (go|run|leave|be off|head out|head home|get going|dash|fly|scoot|stop|stop here|be going) [(now|here)]
		you can (go|close|stop|shut down|turn off) [now]`},
	{Kind: Fill, Key: "fill", Ways: `
		before (i|we|it|she|he) (change my mind|change our minds|changes her mind|changes his mind|forget|forgets|lose it|lose track|goes away|get lost|get muddled|get mixed up) [(again|it|all of it|everything)]
		you (have been|were|are|have) [(such|very|so|ever so|most|a great|a big|a real|really|of great|a)] (helpful|kind|patient|help)
		(thank you|thanks|many thanks) (very|so|ever so|awfully) (much|kindly)
		(thank you|thanks) (kindly|a lot|a bunch|a million|a ton|again|for everything|for all your help|for your help|for your time)
		(that|this) is [(that|the|this|our|my)] (argument|matter|question|debate|dispute|bet|issue) (settled|sorted|closed|over|done|answered)
		that (settles|answers) (it|that|everything|the argument|the matter|the question|my question|my questions|our bet)
		oh (dear|no|my|boy|well|man|heck|shoot|darn)
		(whoops|oops|oopsie|whoopsie|uh oh|my mistake|my bad|my fault|my error|silly me|bear with me)
		(let us see|let me see|let me think|hang on|hold on) (now|here|a second|a sec|a minute|a moment) [,]`},
	{Kind: Cmd, Key: "undo", Loose: true, Ways: `
		(take|call|want|like to take|wish to take) back [(that|it|the|my|what)] (last|what) (thing|one|bit|statement|change|line|part|entry|remark|step|i said|i just said|i told you|i just told you|i did|i just did) [(i said|i told you|i gave you|i did)]
		(roll|wind|dial) (that|it|things|the last one|the last thing|the last change) back
		(back|back me|back us) out [of] (that|it|the last one|that last one|the last change|that change)
		(unsay|unmake|undid|erase) (that|it|the last one|the last thing)
		(ignore|disregard|forget|scratch|strike|scrap|erase|cancel|delete) what i (just|last) (said|told you|gave you|did|typed|entered|wrote)
		(forget|pretend|act like|act as if) i (ever|just|) (said|did|typed|entered|mentioned) (that|it|anything|so)
		(forget|pretend|act like|act as if) i (never|did not) (say|said|did|do|mention|mentioned|type|typed) (that|it|anything|so)
		(undo|cancel|revert|reverse|erase|delete|take back) (my|that|the) last [(thing|one|step|change|entry|statement|move|edit|line|remark|bit)]
		(that|it) was (a mistake|wrong|an error|a slip|a slip of the tongue|not right) [(,|;|.)] (undo|go back|take it back|scratch that|scratch it|cancel that|undo that|undo it|take that back|strike that|back up|revert)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		[(what|how much|how far)] [(is|will|would|does|do|could|might)] [(it|this|that|all this|all of this|all that|everything|the whole thing|the lot|the wall|the job|the material|the materials|the lumber|the wood)] [(all|going to|gonna|likely to|about to)] set (ME|PERSON|ORG|my PERSON|the PERSON) back [(by|in all|altogether|all told)]`},
	{Kind: BestTail, Key: "tail", Ways: `
		as (you|we|i|one|anyone|anybody) [(can|could|possibly can|possibly could|are able to|will)] (manage|get away with|possibly|make it|get it|arrange|swing)
		(you|we|i|one) (can|could) (possibly|ever|at all) (manage|get|do|find|arrange|make|get away with)
		(you|we|i|one) (can|could) (arrange|swing|pull off|get it|make it|come up with)`},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(LEAST|as little|very little|little) [(possible)] [of] (WASTE|offcut|cutoff|cutoffs|leftover|trash|garbage) [(of|in|on|from)] [(timber|lumber|wood|boards|material|stock)] [as] (you|we|i|one) (can|could) [possibly] (manage|get|make|arrange|get away with|do|help)
		(LEAST|as little|as few) (offcut|cutoff|cutoffs|leftover|trash|garbage) [(as possible|possible|as you can|as can be|as it gets|as we can)]`},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: "(CHEAPEST|as CHEAP|lowest cost|lowest price) [(way|one|option|layout|wall)] [as] (you|we|i|one) (can|could) [possibly] (manage|get [it]|make [it]|find|do [it]|come up with|build [it]|arrange|swing)"},
	{Kind: Fill, Key: "fill", Ways: `
		(i|we) [(must have|may have|must of|probably|think i)] (read|heard|measured|typed|wrote|entered|copied|took|added) (it|that|them|this|that one|this one) (wrong|wrongly|backwards|upside down|badly|off|down wrong)
		(i|we) [(must have|may have|probably|think i)] (misread|mismeasured|misspoke|mistyped|miscounted|goofed|slipped up|messed up|botched|fumbled|misheard|misjudged) [(it|that|them|there)]`},
	{Kind: Fill, Key: "fill", Ways: `
		[(oh|and|also|by the way|sorry)] [(,)] (i|we) [(almost|nearly|completely|clean|also)] (forgot|neglected|failed|omitted|meant) to (mention|say|tell you|note|include|state|specify) [(that|:|,)]
		(i|we) (am|are) (not|un) [(quite|so|too|at all|entirely|really|yet)] (sure|certain|positive|decided) (which|what) [(one|of (them|the two|these|those))] (i|we) (prefer|like|want|should take|should use|should build|will take|would rather have) [(best|better|more|most)] [yet]
		(i|we) (can|do|have) not (decide|decided|made up my mind|made up our minds|make up my mind|make up our minds|choose|chosen|know) [yet] [(between (them|the two)|which [(one|of (them|the two))] [(is better|is best|i prefer|we prefer|i like|we like|to (take|choose|pick|build))])] [(best|better|more|most)] [yet]
		(i am|we are) torn [between (them|the two)]`},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: `
		(reading|telling|repeating|reminding|going over|summing up|listing|saying|running through|recapping|running ME through) [(back|ME|over|of|to|for)] [(ME)] [(of|to|back)] (what|everything|all) [(that)] (i|we) [(have)] (told|given|gave|said|entered|asked|set) [(you)] [(so far|up to now|until now|thus far)]
		(repeat|read|say|play|tell|give|run|go) [ME] back [(to|over|through)] [ME] (what|everything|all) [(that)] (i|we) [(have)] (told|given|gave|said|entered|asked|set) [(you)] [(so far|up to now|until now|thus far|today)]
		(bring|catch) ME up (to date|to speed)
		where (do|did) (we|things) (stand|leave off|stop|left off)
		(what|which) (numbers|figures|settings|values|measurements) (do you have|have you got|are you (using|going by|working with|working from)|have i (given|told) you|did i (give|tell) you) [so far]`},
	{Kind: Cmd, Key: "save", Ways: "(stick|shove|slip|pop|throw|enter|list|log) (this|it|that|these|mine) [(one|plan|design|wall|version|layout|lot)] [(away|in|by|aside)] under [the] name [of]"},
	{Kind: Cmd, Key: "draw to", Ways: "[(make|do|get|give ME|have|having|want|like|need)] [(a|the|my|that|this)] (drawing|picture|sketch|elevation|diagram|image) of (it|this|that|the wall|everything|the whole thing) [(is|to be|be)] [(saved|stored|written|put|exported|sent|drawn|named|called|out)] (to|in|into|as|onto|called|named|under)"},
	{Kind: Cmd, Key: "print to", Ways: "[(make|do|get|give ME|have|having|want|like|need)] [(a|the|my|that|this)] (printout|print-out|sheet|job sheet|page|copy|hard copy|paper copy|handout|report) of (it|this|that|the wall|everything|the whole thing|it all|the lot) [(is|to be|be)] [(saved|stored|written|put|exported|sent|printed|named|called|out)] (to|in|into|as|onto|called|named|under)"},
	{Kind: TailFill, Key: "does it", Ways: "what (is|does|will|would|can|could|might) (that|it|this) do to (ME|things|it|the top|the layout|the wall|my wall|the top rail)"},
	{Kind: TailFill, Key: "wrong", Loose: true, Ways: "(was|were|is) (mismeasured|misread|miscounted|mistaken|botched|mistyped|misheard|(a|an) (misreading|mistake|slip|error|typo))"},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		RAIL (one|a single|the same|identical) (cut length|cut size|saw length|cut)
		(trim|crosscut|square) [(all|every|each|the)] RAIL [all] [(down|off)] to (one|a single|the same|an equal|a common) (length|size)`},
	{Kind: Cmd, Key: "start over", Loose: true, Ways: `
		(rub|wipe|scrub|strike|cross|blot) (the whole lot|the lot|it all|everything|all of it|the whole thing|all that) (out|away|off)
		(rub|wipe|scrub|strike|cross|blot) (out|away) (the whole lot|the lot|it all|everything|all of it|the whole thing|all that)
		(tear|rip) (it|it all|everything) up [and (start|begin) (again|over|afresh)]
		(from the top|from the beginning|from zero|square one) [again]`},
	{Kind: Units, Key: "customary", Ways: `
		(i|we) (hold with|go by|reckon in|deal in|swear by|live in|grew up on|grew up with|was raised on|were raised on|only read) (inches|feet and inches|imperial) [,] [(and)] [(none of|not|never mind|no|forget)] [(your|that|those|this|them|the|any)] [(millimeters|millimetres|metric|mm|centimeters|centimetres)] [(stuff|nonsense|business)]
		(put|turn|switch|change|flip|bring) (it|everything|that|things|this) back (to|in|into) (inches|feet and inches|feet|imperial|customary) [(for ME|please|again)]`},
	{Kind: Units, Key: "metric", Ways: `
		(i|we) (hold with|go by|reckon in|deal in|swear by|live in|grew up on|grew up with|was raised on|were raised on|only read) (millimeters|millimetres|metric|mm) [,] [(and)] [(none of|not|never mind|no|forget)] [(your|that|those|this|them|the|any)] [(inches|feet and inches|imperial|feet)] [(stuff|nonsense|business)]
		(put|turn|switch|change|flip|bring) (it|everything|that|things|this) back (to|in|into) (millimeters|millimetres|metric|mm) [(for ME|please|again)]`},
	{Kind: Fill, Key: "fill", Ways: "in [the] (scrap pile|scrap heap|scrap bin|scrap box|waste bin|dumpster|trash|garbage|skip|burn pile|firewood pile)"},
	{Kind: Quest, Key: "drawing", Ways: "(show ME|let ME see|can i see|can we see|could i see|may i see|i want to see|draw ME|draw) [(the|my|our|this|that)] [(whole|entire|finished)] (wall|screen|fence|halfwall) [(again|now|please|once more|as it (is|stands)|as it (is|stands) now)]"},
	{Kind: Cmd, Key: "draw to", Ways: "(stick|shove|pop|dump|throw|slap|put|save) (a|the|my|that|this) (drawing|picture|sketch|elevation) [(out|down)] (to|in|into|as|onto)"},
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		(run|rerun|redo|rework|recalculate|figure|refigure|recompute|work|do|go) [(through)] (it|that|this|everything|the numbers|the layout|things|the wall) [(again|over|once more|one more time|another time)] (but|only|except) (with|for|at|using|as if|assuming|this time with)
		(go|run|work|step) through (it|that|this|everything|the numbers|things) [(again|over|once more|one more time)] [(but|only)] (with|at|using|assuming|this time with)`},
	{Kind: Tail, Key: "fit", Ways: "(hurt|harm|spoil|ruin|help|matter|change|break|upset|improve) (anything|things|much|a lot|us|any)"},
	{Kind: Head, Key: "check", Loose: true, Ways: "(did|do|have) i (hear|read|understand|get|got|heard|understood) [(that|it|you|him|her|this|them)] (right|correctly|straight) [(,|:)] [that]"},
	{Kind: Cmd, Key: "redo", Loose: true, Ways: "(want|give ME|put|bring|like|have) [(that|the)] last (one|thing|change|bit) back [(in|again)]"},
	{Kind: Cmd, Key: "start over", Loose: true, Ways: `
		(scrap|forget|toss|scratch|dump|junk|bin|trash|chuck|ditch) (the|this) whole (plan|design|layout|idea|wall|job|project|setup) [and (start|begin) (fresh|over|again|afresh|anew|from scratch)]`},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: "(hear|have|read|play|say|give ME|tell ME|run) (it|that|this|everything) [all] back [(to|for)] [ME] [again]"},
	{Kind: Cmd, Key: "forget all but", Loose: true, Ways: "(keep|hold on to|hang on to) (just|nothing but|nothing except)"},
	{Kind: Cmd, Key: "forget", Ways: "(let go|let loose) of [the limit on]"},
	{Kind: Cmd, Key: "save", Ways: `
		STORE (what|whatever) (i|we) (have|have got|got|did|have done) [(so far|now|here|up to now|at the moment)] [,] [and] (name|call|label|title) (it|this|that)`},
	{Kind: Cmd, Key: "quit", Ways: "that is all (she wrote|folks)\n(good|great|perfect) , (i am|we are) done [here]\nwe are all (done|set|through|finished) [here]"},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: "(whatever|whichever|which ever) [(one|way)] ('s|is) [the] (cheapest|least expensive|least costly) [(please|to (build|buy|do))]"},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(do not want|no|not|without|avoid|hate) [to] [(have|having|end up with|be left with|see)] [a] (pile|heap|mountain|bunch|load|lot|bin|truckload) of (scrap|scraps|offcuts|leftovers|waste|cutoffs|firewood|kindling) [(left over|left|lying around|at the end)]
		(use|use up|get) as much [out] of (each|every|the) (board|stick|length|boards|lumber|wood) as (you can|possible|we can|i can)`},
	{Kind: Goal, Key: "same length", Loose: true, Ways: "(cut|saw|chop|make) (everything|them all|all of them|the lot|every one) [(to|at)] (the same|alike|one length|a single length|the same length|identical) [so [that] (i|we) can (gang cut|stack cut|cut them in a stack|gang saw|batch cut) [them]]"},
	{Kind: Goal, Key: "cheapest", Ways: "save ME [(some|a little|a few|as much)] (money|bucks|dollars|cash) [(as you can|wherever you can|where you can|if you can)]"},
}
