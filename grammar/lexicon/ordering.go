package lexicon

// orders are more ways to tell the program what to do, beside the plain ones of commands.
var orders = []Entry{
	{Kind: Cmd, Key: "undo", Loose: true, Ways: `
		(take|took|taking) back [(my|the|that|what)] [(very)] (last|latest|most recent|previous) (thing|one|entry|statement|change|line|bit|remark|number|answer|word|sentence|part) [(i (said|gave you|told you|entered|typed|did))]
		(take|took|taking) back what (i|we) (just|last) (said|did|told you|entered|gave you|typed)
		(take|took|taking) back what (i|we) (said|did|told you|entered|gave you|typed) (last|just now|a moment ago)
		(take|took|taking) back what (i|we) (said|did|told you|entered|typed)
		(scratch|strike|cancel|revert|reverse|withdraw|forget|ignore|disregard|erase|scrap|retract|delete|remove|drop|undo) what (i|we) (just|last) (said|did|told you|entered|gave you|typed)
		(scratch|strike|cancel|revert|reverse|withdraw|forget|ignore|disregard|erase|scrap|retract|delete|remove|drop|undo) [(my|the|that)] [(very)] (last|latest|most recent|previous) (thing|one|bit|statement|change|line|part|entry|remark|number|answer|sentence|step|word|instruction) [(i (said|told you|gave you|did|entered|typed|just said))]
		(scratch|strike|cancel|revert|withdraw|ignore|disregard|erase|retract) that (one|bit|part|thing|remark)
		(back|step back|go back|one step back|roll back) [(one|a|to)] (step|change|how it was|the way it was|where we were|before that|how we had it|what we had|what it was before)
		i spoke too (soon|quickly|hastily)
		that was (a mistake|an error|wrong|not what i meant) [,] (undo|take|scratch|forget) [(it|that)] [back]
		(reverse|revert|undo) (my|that|the) (change|mistake|last)
		(i|we) want to (undo|take back|take that back|reverse|revert) [(that|it)]
		as you were
		make it [(how|the way|like|as)] it was [before]
		i (do not|did not) want that [after all]`},
	{Kind: Cmd, Key: "forget rest", Ways: `
		(forget|drop|scrap|scratch|remove|delete|clear|erase|toss|lose) [(all|everything)] (the rest|else|everything else|the others|all the others|the other ones|all other things|anything else)`},
	{Kind: Cmd, Key: "redo", Loose: true, Ways: `
		(bring|put|get|give|take|want|have) [(ME)] (back|again) (what|that which|the one|the thing|whatever) [(i|we|you)] [(just|had|have)] (undid|undo|undone|took back|took out|take back|taken back|withdrew|reversed|removed|cancelled|canceled|scratched)
		(bring|put|get|give|want|have|take) (what|that|the one|the thing) [(i|we|you)] [(just|had|have)] (undid|undo|undone|took back|took out|taken back|withdrew|reversed|removed|cancelled|canceled|scratched) (back|again|in again|back in)
		(reinstate|restore|redo|repeat) (what|that|the one|the thing|it) [(i|we|you)] [(just|had|have)] (undid|undone|took back|took out|taken back|withdrew|reversed|removed|cancelled|canceled|scratched)
		(reinstate|restore) [(it|that|the last)] [(thing|one|change)]
		(undo|reverse|cancel|take back) (my|the|that|last) (undo|undoing)
		(i|we) (should not have|did not mean to|did not want to) (undo|undone|take back|taken back) (that|it) [(,)] [(bring|put|give)] [(it|that)] [(me)] [(back|it back)]
		[(i|we)] (changed|have changed) (my|our) mind about (taking|undoing) (that|it) [(back|out)] [(,|;)] [(please)] [(put|bring) it (in|back) [again]]
		(put|set) (it|that) (in|back) again
		(put|have) (it|that) back (in|again|the way it was before i undid it)
		redo (last|the last) [(one|thing|step|change)]
		(i|we) did want (that|it) [after all] [(,)] [(so)] [(please)] [redo [it]]
		(no|on second thought) (keep|i want) (that|it) after all
		(undid|undone) by mistake`},
	{Kind: Cmd, Key: "start over", Loose: true, Ways: `
		(done|finished|through) with (this|that) [(one|wall|job)] [(,)] (clear|wipe|erase|scrap|start|begin|forget|throw|toss|delete) [(it|that|everything)] [(all)] [(out|away|off|over|clean|fresh)]
		(clear|wipe|erase|scrap|delete|throw|toss|take|sweep) (it|everything|that|this|all that|all this|the lot|the whole thing|the board|the table) [(all)] (out|away|off|clean|down)
		(clear|wipe|erase) (the|this) (board|slate|table|page|sheet|screen)
		(start|begin) (from|with) (nothing|zero|the beginning|a blank page|a blank sheet|a clean sheet|the top|square one)
		(forget|drop|scrap) everything (i|we) (said|told you|gave you|have said|entered)
		(let us|lets|i want to|can we|could we) (start|begin) (over|again|afresh|anew|from the beginning|a new one|a new wall|the whole thing over|another one|another wall)
		(another|different|fresh|next|brand new) (wall|job|project|one) (now|please|,|altogether|entirely)
		back to (the beginning|zero|nothing|start|the start)
		(empty|clear|reset) (everything|it all|the lot|all)`},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: `
		(read|say|give|tell|show|play|repeat) (ME|) [(back)] [(the record of)] (what|everything|all) [(that)] (i|we) [(have)] (stated|told you|said|given you|gave you|entered|put in|set|specified|asked for|decided) [(back)] [(to ME)] [(so far|up to now|till now)]
		(read|give) [(ME)] [(the|my)] (record|list) [of] [(what|everything)] [(i|we)] [(have)] [(stated|told you|said|given you|entered)] [back] [(to ME)]
		(can|could|would) you (read|say|repeat|tell|go over|go through) (it|that|everything|this|what i said|what i told you|what you have|my numbers|the numbers) [(back|again|over)] [(to ME|for ME|so far)]
		(forget|forgot|forgotten|lost track of|do not remember|can not remember|do not recall) (what|which) [(all)] (i|we) [(have)] (told you|said|gave you|set|entered|told|asked for|given you) [(,)] [(can|could|would)] [you] [(read|say|repeat|tell)] [(it|that|me)] [(back)] [(to me)]
		what (did|have) (i|we) (tell|told|say|said|give|gave|given|enter|entered|set|specify|state) [(you)] [(so far|up to now|until now|about it|already)]
		what [(all|do|have)] you (have|got|know|have got|have down|written down|heard|have so far|got so far|have on record|know so far|have heard so far|think i said)
		what (numbers|figures|values|dimensions|facts) (do|have) you (have|got|have down|got down|know) [(so far|for ME)]
		what have (i|we) got so far
		what is (on record|the record|in there|in there so far|entered|entered so far|set so far|known|known so far|given)
		(list|show|read|tell|give) (ME|) [(all)] (my|the) (inputs|input|numbers so far|givens|given|statements|entries|requirements|conditions|constraints|settings|assumptions so far)
		(go over|go through|run through|run down|review) (what|everything|all|the things) [(that)] [(i|we|you)] [(have)] [(told you|said|got|have|gave you|given you)] [(so far|again|once more)]
		(remind|refresh) (ME|my memory) [(about|of|on|what)] [(what|everything|all)] [(i|we)] [(have)] [(told you|said|gave you|set)] [(so far)]
		where (have|did) we (get|got|left|leave) [(to|off)]
		(let us|can we) (review|recap|sum up)
		(summarize|summarise|repeat|restate|review|list) (what|everything|all) [(that)] (i|we) [(have)] (entered|stated|put in|specified|set|given you|told you|said) [(so far)]
		(sum|wrap) [(it|that|everything)] up [(so far|for ME)]
		what do i have in (here|there)
		what did you (take|write) down`},
	{Kind: Cmd, Key: "take that", Loose: true, Ways: `
		(i|we) will (take|go with|have|keep|use|stick with|settle for|settle on) (that|it|that one|this one|the last one|the one you just tried|what we just tried|what you just tried)
		(keep|take|use|adopt|go with|stick with) (what|the one|that which|the version) (we|you|i) (just|last) (tried|did|had|looked at|tested|ran|showed me|worked out)
		(the one|what) (you|we|i) just (tried|did|had|looked at|ran) (is|was) [(exactly|just)] [(what|the one|good|fine|right|it)] [(we|i)] [(want|wanted|need|after|like|looking for)] [(,)] [(so)] [(keep|take|use|go with) [(it|that)]]
		let us (go|run|stick|stay|work|build) with (that|it|this|that one|this one)
		let us (do|keep|take|use|have|make|build) (that|it|this) [(one|way|then)]
		(enter|adopt|accept|set|record) (that|the) (trial|what if|last one|last try)
		(make|let) (that|it|the trial|the what if) (stand|permanent|final|official|stick)
		that (is|was|one is) the one [(i want|we want|for me)] [(,)] [(keep|take) it]
		(that|it) (suits|pleases|works for) (me|us) [(,)] [(keep|take|use) (it|that)]`},
	{Kind: Cmd, Key: "take that", Ways: "(yes|ok|okay|fine|good|great|perfect|lovely) (take|keep|use) (that|it|that one|this one)"},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		(show|give|let see|see|want|read|write out|spell out|lay out) [(ME)] [(all|every|each|the|whole|full)] [(single)] (steps|step|line|lines|bit|detail|figure) (of) [(it|the (sum|arithmetic|working|workings|calculation|math|derivation))]
		(show|let see|see|want|give) [(ME)] (every|each|all the) [single] (step|steps|line|lines|bit|detail) [(of (it|the sum|the arithmetic|the working|the math|the calculation))]
		(all|every|each) [the] (steps|step|lines|line|bit|details) of [the] (sum|arithmetic|working|workings|calculation|math|derivation)
		(whole|full|entire|complete) (sum|arithmetic|derivation|math|maths|working|workings|calculation|proof|story) [(,)] every (step|line|bit) [of it]
		show [ME] [the] whole (sum|arithmetic|working|calculation|derivation) [(,)] every (step|line|bit) [of it]
		(follow|see|read|check|like|love|want) [to] [(follow|see|read|check)] [the] [(whole|full|entire|complete)] (sum|sums|arithmetic|derivation|working|workings|calculation|proof) [in full] [(,|so|;|, so)] [(please)] [(show ME every (bit|step|line) [of it])]
		(do not|without) (leave|leaving|skip|skipping) (anything|any step|any steps|steps|out a step) [out]
		(with|including) all the (steps|workings|arithmetic|math)
		(let (ME) (see|have|look at)|show ME|see|give ME|i want|run ME through|walk ME through) [(all|your)] the (math|maths|arithmetic|sums|workings|working|calculations)
		(let (ME) (see|have|look at)) your (math|maths|arithmetic|sums|workings|working|calculations|work)
		step by step [please] (the|all the|whole) (sum|arithmetic|working|math)`},
	{Kind: Cmd, Key: "help", Loose: true, Ways: `
		(can|could|would) you [(please)] (give|lend) ME [(a|some)] (help|hand|hint)
		(i|we) (need|could use|want|would like) [(some|a little|a bit of)] (help|hint)
		what [else] (can|could|may|should|am|are) (i|we) (allowed to|able to|supposed to) (say|ask|do|type|tell you) [(here)]
		(how|what) (can|do|should) (i|we) (talk|speak|say|type|ask) (to you|things|it|with you|here)
		what (words|commands|phrases) (do you|can i|are there|know|understand) [(know|understand|use|say)]
		(show|give) ME [(some|a few|an)] (examples|example) [(of what i can say)]
		how does one (use|talk to) (this|you|it)
		do not know what to (say|do|ask|type)
		what (can|could|may|should|do) [the] (PERSON|class) (ask|say|say to you|ask you|tell you)
		what are you (able to do|good for|capable of|for)
		no idea what to (say|do|ask|type)`},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		(tell|show|let|could you tell) ME what [(can|may|could|am able to)] [(i|we)] [(can|may|could|am able to|are able to)] (say|ask|tell you) about
		what (can|may|could|do|should|am|are) (i|we|one) (able to|allowed to|supposed to) (say|ask|tell you) (about|for|on)
		(show|give) ME (examples|example|some examples) (of|for|about|on) [(what i can say about)]
		(how|what) (would|do|should|can|could|might|does) (i|we|one|you) (word|phrase|put|specify|state|express|enter|give|describe) 
		(any|some) help (with|on|about|for)
		(need|want|could use|would like) [(some|a little)] help (with|on|about|for)
		what (is there|can be) (to say|said) about`},
	{Kind: Cmd, Key: "quit", Loose: true, Ways: `
		(that|this) (is|was|will be) (it|all|everything|enough) [(for)] [(today|now|tonight|this evening|this morning|this afternoon)] [(,)] [(thanks|thank you|bye|goodbye)]
		(i am|we are) (done|finished|through|out of here|off|all set|all done|leaving|heading home|heading out|heading off|calling it a day|calling it a night) [(here|for (today|tonight|now|the day|the night|this evening|the evening))] [(,)] [(thanks|thank you|bye|goodbye)]
		(done|finished|through) for (today|tonight|now|the day|the night|the evening)
		(call it|calling it) (a day|a night|quits)
		(time|got) to (go|go home|leave|quit|knock off)
		(nothing|no) (more|further) (questions|for today|for tonight|from me)
		(shut|turn|switch|close) (it|this) (off|down)
		(close|leave) the program
		(have|had) all [(that)] (i|we) need
		(see|catch) you (later|tomorrow|soon|around|next time)`},
}
