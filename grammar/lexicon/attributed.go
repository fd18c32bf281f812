package lexicon

// attributed are more people and papers that report figures, and ways to ask for a check of them.
var attributed = []Entry{
	{Kind: Head, Key: "check", Loose: true, Ways: `
		(another|the other|the other one|the second|the second one|the first one|the third|the next|the next one|the latter|the former|somebody else|someone else) (SAYS|SUBMITS|got|has|gets|answered)
		[(the|my|one of my|one|other|second|first|our)] [PERSONKIND] [PERSONKIND] PERSON [(also)] (answered|answers|answer|replied|replies|arrived at|is at|settled on|landed on|ended up with|came out with|comes out with|worked it out (at|as|to|to be)|makes it|made it|has it (at|as)|has it down (as|for)|had it (at|as)|put it at|puts it at|pegs it at|pegged it at|guesstimates|guesstimated|is adamant|keeps saying|keeps telling (me|us)|keep saying|keep telling (me|us)|was sure|were sure|warned (me|us)|warns (me|us)) [that]
		(is|was|were|are) what (i|we) (read|see|saw|find|found|have|get|got|make out) (off|on|in|from) [WHOSE] [PERSON] [PAPERKIND] [PAPERKIND] (PAPER|PERSON)
		[WHOSE] [PAPERKIND] [PAPERKIND] PAPER (from|by|of) [the] [PERSONKIND] PERSON [(is|was|has|says)] [(:|-|,)]
		POST [(is|was|are|were|has|have|got)] [been] (marked|drilled|pencilled|penciled|scribed) [(up|out|off)] (at|for)
		PERSON (has|got|have|had) [got] [the] POST (marked|drilled|pencilled|penciled|scribed) [(up|out|off)] (at|for)
		(according|thanks) to [(WHOSE|the|a|that|some)] [PERSONKIND] [PERSONKIND] PERSON [PERSON] [(down the (road|street)|next door|at the yard)] [,]
		(total|grand total|bill|cost|price) (according to|from|by|per|at) [the] PERSON [(is|was|comes to)] [(:|-|,)]
		PERSON (SAYS|SUBMITS) [that] [the] (whole (lot|thing|job|works|shebang)|lot|everything|it all) (will|should|would|is going to|ought to) [be] (be|come to|run to|total|cost)`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		(does|do|did|will|would) (it|this|that|they|those|these|everything|his numbers|her numbers|their numbers|the whole thing) [(all|really|actually|still)] (hold|hang|fit|go|tie|come) together
		(does|do|did|will|would) [(the|his|her|their|my|our|that|WHOSE)] (count|total|sum|number|numbers|figure|figures|math|arithmetic|list|price|quote|tally|marks|cuts|order|drawing|plan|sketch|claim|claims|dimension|dimensions) [(really|actually)] AGREE [(up|out|right|with (that|yours|mine|ours|what you (have|get|got)|the layout|the rest))]
		(is|are) [(the|his|her|their|my|our|that|WHOSE)] (count|total|sum|number|numbers|figure|figures|math|arithmetic|list|price|quote|tally|marks|cuts|order|claim|claims|dimension|dimensions) (right|correct|true|ok|okay|good|accurate|fair|sound|off|wrong|enough)
		(check|verify|confirm|vet|test|double check|go over|look over|recheck) [(out)] [(the|his|her|their|my|our|WHOSE|PERSON 's)] (arithmetic|math|maths|sums|sum|figures|numbers|work|count|reckoning|figuring|calculation|calculations|measurements|claim) [(for me|for us|please|will you|would you)]
		(are|is|am) (i|we|it|they|mine|ours) [(still|all|both|really)] (under|over|within|inside|below|above|ok with|okay with|good with|in line with|up to) (that|it|this|those)
		(do|does|would|will|did) (i|we|it|they|this|the wall) (meet|satisfy|pass|comply with|fulfil|fulfill|clear|match|make) (that|it|this|those)
		(have|has) (he|she|they|PERSON) (added|figured|counted|measured|reckoned|calculated) (it|that|right|them) [right]
		(have|take|give it) a look [(at (it|that|this|them))] (for me|for us|will you|would you|and tell me)`},
	{Kind: Enter, Key: "enter", Ways: `
		(take|use|enter|put in|copy|record) (what|whatever) PERSON (has|have|had|is) [got] [(there|down|written|on paper)] [:]
		(take|copy|read|pull|lift|get|grab) (these|those|this|the|them) [(numbers|figures|values|dimensions|measurements)] (off|from|off of) [(WHOSE|that|the)] [PERSON] [PAPERKIND] PAPER [(,)] [(and)] [(put|enter|type|key|punch|write) (them|those|it|these|that) (in|down)] [:]
		(enter|put|set|take|use|put in|do|build|make) (it|that|this|them) [in] [(just|exactly)] (the way|as|like|how) [(WHOSE|the|that)] [PERSON] [PAPERKIND] (PAPER|PERSON) (SAYS|SHOWS|has|have|drew|draws) [(it|them)] [(:|,)]
		(do not|no need to) (check|verify|test|confirm|question) (it|that|them|this|anything|his (numbers|figures)) [(,|;|-|--)] [(but|and)] [(just|only|simply)] (put|enter|take|use|set|type|key) [(it|them|that|those|these)] [(in|down)] [(what|as|whatever)] [(PERSON|PAPER|WHOSE PAPER)] [(has|have|SAYS|SHOWS)] [(it|them)] [(:|,)]`},
	{Kind: Fill, Key: "fill", Ways: `
		(on|in|off) (the|his|her|their|my|a|some) (scrap|piece|bit|slip|back|corner|edge|chunk|page|stub) of (wood|paper|cardboard|plywood|ply|lumber|drywall|envelope|napkin|notebook|notepad|board|bag|lid|receipt|two by four|2x4|block)`},
}
