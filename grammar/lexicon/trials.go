package lexicon

// trials are more ways to try something out without setting it, beside the plain ones of heads.
var trials = []Entry{
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		what (would|will|does|might|could) happen (with|to it if|then if|when)
		what happens (with|when|then if|to it if)
		(see|find out|check|tell ME|show ME) what (happens|would happen|it does|changes|would change|it looks like|comes of it|comes out) (with|if|when)
		what (changes|would change|difference does it make|difference would it make|does it do|would it do|does it change|would it change|would it mean) (if|with|when)
		what difference (does|would|will) it make (if|with|when)
		what difference if
		(let ME see|see|show ME|let us see|look at) (it|that|this|things) (with|if)
		(do|would|can|could) you (think|believe|reckon|suppose|figure|guess|expect|imagine) [that]
		(any|is there a|is there any) (chance|hope|way|possibility) (of|for|to|that) [(getting|get|having|have|fitting|fit|using|use|squeezing|squeeze)]
		(am|are) (i|we) allowed [to] [(have|use|make|do|go with)]
		(perhaps|maybe|possibly) it would (look|be|work|come out|go) (nicer|better|prettier|neater|stronger|easier|cheaper|good|well) (with|if|as)
		(would|will|is) it be (cheaper|better|stronger|easier|simpler|nicer|quicker|prettier|dearer|safer|stiffer|smarter|wiser) (to|if|with) [(make|set|use|go with|have|put|buy|get|do)]
		would (cheaper|better|stronger|easier|simpler|nicer|quicker|prettier|dearer|safer|stiffer|smarter|wiser) (to|if|with) [(make|set|use|go with|have|put|buy|get|do)]
		how (do|would|does|will|might) (things|it|that|everything|the layout|the wall) (change|differ|come out|work out|look|turn out|be|go|fall out|lay out) (if|with|when)
		how much (difference|would change) if
		would it (help|hurt|work|be better|be okay|be ok|be possible|be all right|be any better|make sense|matter|make a difference) (if|to|with) [(make|set|use|go with|have|put)]
		(will|does|might|could|can) it (help|hurt|work|matter) (if|to|with) [(make|set|use|go with|have|put)]
		(would|will|is|was|could|might) there [(still)] (be|) [(still|enough|any)] (room|space|place) (for|to fit|to put|to have)
		(room|space) enough for
		(wondering|wonder|curious|want to know|like to know|want to see|like to see) (if|whether|about) [(i|we|you|it)] [(could|can|might)] [(use|have|do|try|go with|fit|get)]
		(wondering|wonder|curious|want to know|like to know|want to see|like to see) what (if|would happen if|happens if|happens with|would happen with|becomes of it if)
		(i|we) (thought of|was thinking of|am thinking of|am thinking about|was thinking about|were thinking of|are thinking of|are thinking about|am considering|are considering|am tempted to|was considering) [(using|having|making|going with|trying|doing)]
		(thinking|considering) (of|about) [(using|having|making|going with|trying|doing)]
		[(just|only)] for (kicks|fun|laughs|the heck of it|the fun of it|grins|curiosity's sake|curiosity) [(,)] [(what if|if|say|try|suppose|let us try)]
		[(just|only)] for argument 's sake [(,)] [(what if|if|say|try|suppose|let us say)]
		(just|only) (for fun|as a test|as a trial|to see|hypothetically|for the sake of argument) [(,)] [(what if|if|say|try|suppose)]
		hypothetically [(,)] [(if|say|speaking)]
		for the sake of argument [(,)] [(say|suppose|if)]
		(give|gave) (it|that) a try with
		(run|do|work) (it|that|the numbers|numbers|the layout) [(again|over|once|once more)] (with|for|at|using)
		(run|do|work) (it|that|the numbers) [(again|over)] as if
		(do|say|think) as if
		what would (you|it) say to
		how would (you|it) (like|look with|feel about)
		(how|what) do (you|we) (feel|think|reckon|say|make) (about|of|on|to) [(having|using|going with|making)] [(a|an)]
		(what is|what are|give ME|tell ME) (your|the) (thoughts|opinion|view|take|feeling|verdict) [(there)] (on|of|about)
		(any|your|some) (thoughts|opinion|objection|objections) (on|to|about)
		would you (recommend|advise|suggest|consider|choose|pick|go with|go for|use|have) [(having|using|going with|making)]
		do you (recommend|advise|suggest) [(having|using|going with|making)]
		let us (see|hear) (it|how it looks|how that looks|how it goes|how it would look|how it comes out) (with|if)
		(show|tell) ME (how it looks|how it would look|what it looks like|what it would look like) (with|if)
		(would|could|can|will) (i|we|you) (also|still|even|just|maybe|possibly) (use|have|do|fit|get|squeeze|make|get by with|get away with|manage|put|run)
		(i|we) (were|was) to (use|have|make|go with|put|set|leave|do)
		if (i|we|you|they) (used|use|had|have|made|make|went with|go with|put|set|left|leave|did|do|kept|keep|chose|took|take|tried|try|bought|buy|got|get|gave|built|build|ran|run|added|cut)
		if [(ever)] (there was|there were|it was|it were)
		in case (i|we|you) (used|use|had|have|made|make|went with|go with|put|set|left|leave|chose|took|take|tried)
		what about (using|having|making|going with|trying|leaving|a try at)
		how about (using|having|making|going with|trying|leaving|we use|we try|we make|if we|if)
		play with
		(any|no) harm in
		(is|would) it (ok|okay|fine|all right|possible|allowed|safe) (to|if) [(use|have|make|go with|put|set|leave|do|we|i)]
		(would|could) (i|we) be (ok|okay|fine|all right|safe|allowed) (with|to) [(use|have|make|go with|put|set|leave|do)]
		(am|are) (i|we) (ok|okay|fine|all right|safe|allowed) (with|to) [(use|have|make|go with|put|set|leave|do)]`},
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		(would|will|could|can|does|do|might|should) IT [(all|still|even|really|just|maybe|then)] FLIES [(out|up|together|anything|at all|nicely|fine|well|all right|alright|ok|okay|for us|for me)] (if|with|when|using|should)
		(would|will|could|can|does|do|might|should) IT [(all|still|even|really|just|maybe|then)] (work|fit|fly|hold|pass|work out|go together|come together|line up) (at|in|by)
		(could|can|would|will|might) IT [(all|still|even)] be (done|built|made|managed|worked|put together|made to work|carried out|pulled off) (with|using|in|at|if|from|out of|by)
		(would|will|could|might|does|can) IT [(all|still|even)] (hurt|harm|spoil|ruin|break|upset|mess up|throw off|kill|wreck) (anything|it|things|much|us|me|the layout|the look|everything) [(at all|much)] (if|to|with|when)
		what (would|will|might|could|does|may) (come|become|be) of (it|that|this|things|the wall|us|everything) (if|with|when|should)
		(could|can|might|would|may|will) (i|we|it|they|one) [(also|still|even|just|maybe|possibly|perhaps|ever|conceivably)] USE [(in|off|by|away)] [(with|on|for)]
		(would|will|might|could) IT look [(any|much|a lot|still)] (better|nicer|good|ok|okay|fine|all right|alright|right|funny|odd|silly|worse|neater) (with|if|at|as)
		what (would|will|do|might|could|does) (i|we|it|that) (lose|gain|win|give up|sacrifice) [(ME)] (if|by|with|when)
		(humor|humour|indulge|bear with) ME [(here|for a second|a second|a sec|a minute)]
		thinking (out loud|aloud|ahead) [here]
		let ME (float|try|throw out|run|toss out|put out) (something|an idea|a thought|this|one) [(by|past|at)] [(you)]
		let us play what if
		(and|just|please) hear me out
		[(i am|we are|was)] [just] (spitballing|brainstorming|daydreaming|fooling around|noodling|musing|toying|fiddling)
		[(i am|we are|i was|we were)] [just] (toying with|kicking around|tempted by|tempted to try|leaning toward|leaning towards|mulling|mulling over|weighing|entertaining|debating|flirting with|playing with|tossing around|dreaming of|eyeing) [the] [(idea|notion|thought|possibility)] [of]
		(crazy|wild|dumb|silly|stupid|quick|random|odd|another) (idea|thought|question|notion) [(:|,|but)] [what if]
		here is (a|an|another) (thought|idea|notion) [(:|,)] [what if]
		on a (whim|lark) [,]
		what (would|will|might|could|does|do|is) IT (do|look like|come to|be like|give|turn into|become|come out like|work out like|end up like) (if|with|when|at|using|should)
		(how|where) (would|will|might|do|does) IT (stand|end up|land|be left|leave ME|hold up|fare|do|shape up) (if|with|when|at|using|should)
		(any|what are the) (chance|chances|odds|hope) [(that|of|on)] [IT] (works|work|fits|fit|goes|going|fitting|working) (if|with|at)
		[(i|we)] (wonder|wondered|was wondering|were wondering|am wondering|are wondering) (if|whether|how|about) [IT] [(would|could|will|might)] [(work|fit|go|do|look|be|come out|hold)] (if|with|at|using)
		(can|could|may|might|would) (i|we) (get away|get by|live|make do|manage|scrape by|squeak by|do fine|be fine|be ok|be okay) (with|on|using|if)
		(run|rerun|redo|rework|recalculate|figure|refigure|recompute) (it|that|this|everything|the numbers|the layout|things|the wall) [(again|over|once more)] (with|for|at|using|as if|assuming|like)
		(assume|assuming|presume|suppose|supposing|imagine|pretend|say) for (a|the) (sec|second|minute|moment|bit|now|sake of argument) [that]
		(assume|assuming|presume|presuming|supposing|picture|granted|given) [that] (i|we|you|they|it|there)
		hypothetically speaking [(,)] [(if|say|what if|suppose)]
		in theory [(,)] [(if|what if|could we|could i)]
		theoretically [(,)] [(if|what if)]
		(suppose|supposing|say) (i|we|you|they) [(went|go)] (with|for|to)
		(what if|suppose|imagine|if|say) (i|we|you|they|it) [(just|only|simply|instead)] (went|go|switched|settled|opted|plumped) (for|with)
		what if (i|we|you) [(just|only|simply|instead)] (threw|throw|toss|tossed|chuck|chucked|stuck|stick|popped|pop|slipped|slip|drop|dropped) in
		(see|tell ME|show ME|let us see|wonder|wondering|find out|know|curious) how (it|that|this|things|everything|the wall|the layout) (go|goes|look|looks|works|work|comes out|turns out|does|fares|would look|would go|would work|would do|would be|would come out|would turn out) (with|if|at|using)
		how did (it|that|things|everything|the wall|the layout) (be|look|fall out|come out|go|work out|turn out|do|fare) (if|with|were)
		how about if
		(suppose|supposing|say|assuming|assume|imagine|pretend|if|what if) (he|she|they|PERSON) (is|are|was|were) [(actually|really)] right [(and|,|about|that)] [(it|there|that)] [(is|are|was|were)]
		(could|can|would) (the whole (lot|thing|works|shebang)|the lot|all of it) be (done|built|made) (with|in|from|out of|using)
		what of it if
		(could|can|would) (i|we|you) (ever|possibly|conceivably|realistically) [(use|have|do|go with|run|get|get away with|make it with)]
		would you object (to|if)
		(thoughts|opinions|feelings) on`},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Ways: `
		what (happens|would happen|will happen|might happen|becomes|would become|will become) (to|of) [(the|my|our|all the)]
		what (does|would|will) (that|it|this) do to [(the|my|our|all the)]
		how (does|would|will) (that|it|this) (affect|change|alter|move) [(the|my|our|all the)]`},
	{Kind: Tail, Key: "fit", Loose: true, Ways: `
		(would|will|could|can|does|do|might|should) IT [(all|still|even|really|then)] FLIES [(out|up|together|anything|at all|nicely|fine|well|all right|alright|ok|okay|for us|for me)]
		be (workable|doable|feasible|viable|practical|practicable|manageable|any good|any use|any better|good enough|all right|alright|out of the question|realistic|reasonable|acceptable|worth it|worthwhile)
		(would|will|could|might|does) IT (hurt|harm|spoil|ruin|break|upset|mess up|throw off) (anything|it|things|much|the layout|the look|everything)
		what (would|will|might|could|does|do) (give|that do|it do|that change|it change|that mean|it mean|that give|it give|that look like|it look like|that break)
		how (would|will|does|might|do) IT (go|look|be|turn out|come out|work out|do|go over|pan out|fare|shake out|end up|shape up)
		where (would|will|does) (that|it|this) leave (ME|things|it)
		(fly|flies) [then]
		(doable|workable|feasible|viable)
		(buy|get|gain|cost|save) ME (anything|much|a lot|something)
		(change|help|affect|alter) (anything|things|much|a thing|the rest|a lot)
		make (a|any|much) difference
		and (all|everything) still (works|fits|lines up|comes out)`},
	{Kind: OffEach, Key: "tolerance", Loose: true, Ways: `
		(each|every|everything|all|every one|each one|whatever) [(single)] [(RAIL|cut|piece|mark|one|of them)] [(i|we)] [(cut|saw|mark|make)] [(is|are|was|were|comes out|came out|runs|turns out|could be|might be)] [(out|off|wrong)] (off|out|wrong) [by]
		(i|we|he|she|they) (am|are|is|was|were) [(always|each time|every time)] (off|out|wrong) [(on|by)]
		(i|we) (miss|missed|cut|mark|saw) (each|every|all|everything|all of them|them all) (off|wrong|out) [by]
		(my|the|our) (cuts|marks|sawing|cutting|marking|RAIL|pieces) (is|are|was|were|could be|might be|come out|came out) [all] (off|out|wrong) [by]`},
	{Kind: OffTail, Key: "off", Ways: "(on|for|with|in|at) (each|every|all) [(one|RAIL|cut|piece|of them|board|mark)]\n(each|every) (time|one|cut|RAIL|piece|mark) (off|out|wrong)\n(off|out|wrong) (on|at|with|in) (each|every) [(one|RAIL|cut|piece|mark)]\neach time\nevery time"},
}
