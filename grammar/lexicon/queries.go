package lexicon

// queries are ways to ask that lean on how people talk on a site: for a table, after a quantity, for a reason, for help.
var queries = []Entry{
	{Kind: Quest, Key: "steps", Loose: true, Ways: `
		(what|which) [(is|would be|will be|should be)] [very] FIRST (thing|job|task|move|order of business) (do|should do|must do|need to do|tackle|start with|start on|to do|to tackle) [(when|once|as soon as|after) (i|we) (get|am|are|arrive|come) [(out|up|over|back)] [(there|here|home|started|going|on site|to the site)]]
		what (is|comes|do i do|goes) 1 st [,] [(and|then)] 2 nd [[,] [(and|then)] 3 rd]
		what (is|comes|do i do|goes) FIRST [,] [(and|then)] second [[,] [(and|then)] third]`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		how long [(do|should|must|shall|will)] (i|we) CUT (everything|all of it|it all|all of them|the lot|things|each one|every one|every piece|each piece|the bunch)
		what (do|should|must|shall) (i|we) CUT (everything|all of it|it all|all of them|the lot|things|each one|every one) (to|at)`},
	{Kind: Quest, Key: "posts", Loose: true, Ways: `
		where (do|should|must|shall|will) (i|we|he|they) (stand|plant|anchor|bolt down) (it|them) [(up|down|then|in|at)]`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		what (is|does|will|would|are) [all] (this|that|it|these|those) [all] (stuff|thing|project|job|contraption|business|lumber|wood|material|materials|wall|things|goodies) [all] [(going|gonna|likely|about)] [to] (PRICE|run|come to|add up to|total|be) [(me|us|him|her|them)]
		(what|how much) [(is|does|will|would)] [all] (this|that|it|the) [(whole|entire)] [(stuff|thing|project|job|lot|business|wall)] [(going|gonna|likely|about)] [to] set (me|us|him|her|them|PERSON|the (school|church|club|family|company|customer|client|owner|office|town|parish|class)) back
		set (PERSON|the (school|church|club|family|company|customer|client|owner|office|town|parish|class)) back`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(any|what|which|are there|are there any) (dangers|risks|hazards|cautions|warnings|pitfalls|mistakes|errors|traps|problems|gotchas) (and|or|,) (dangers|risks|hazards|cautions|warnings|pitfalls|mistakes|errors|traps|problems|gotchas) [(that|which)] [(i|we)] [(should|ought|need|must)] [(to)] [(know|watch|look|be)] [(aware|out)] [(of|about|for)]
		(any|what|which|are there|are there any) [(common|usual|typical|beginner|beginner's|classic)] (mistakes|errors|traps|blunders|slipups|goofs) [(that|which)] [(i|we|people|folks)] [(should|ought|need|must|could|might)] [(to)] [(know|watch|look|avoid|make)] [(out)] [(of|about|for|here|with this)]`},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		(what|which) (RAIL) counts [(that)] (would|will|could|can|might|do) (work|fit|go|do|be possible|be allowed|suit) [(then|there|here)]`},
	{Kind: Wh, Key: "trim", Sense: Meaning("trim | kerf, fit"), Loose: true, Ways: `
		how much (are|is|do|does|will|would|should) (you|it|we|i|that) [all] (counting|count|figuring|figure|taking|take|losing|lose|allowing|allow|trimming|trim|knocking|knock|wasting|waste|lopping) (off|from) [(the end of|the ends of)] (each|every|a|per) (board|stick|piece|length)
		how much [(is|gets|goes|comes)] (trimmed|taken|cut|lopped|lost|knocked|counted|figured) (off|from) [(the end of|the ends of)] (each|every|a|per) (board|stick|piece|length)`},
	{Kind: OffEach, Key: "tolerance", Loose: true, Ways: `
		(each|every) [(single)] (board|rail|cut|piece|mark|one) 's (off|out|wrong) [by]`},
	{Kind: Tail, Key: "fit", Ways: "how (bad|far off|far out) (does|would|will|could|can) (it|that|things) (get|be|end up|come out|turn out)"},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		(why|how come|how) [(did|does|do|would|has|have)] (it|you|we|they|that|this|the wall|the layout) (land|landed|lands|settle|settled|settles|end up|ended up|wind up|wound up|come out|came out|comes out|arrive|arrived|hit|stop|stopped|decide|decided|insist|insists|insisted) (on|at|with|upon)`},
	{Kind: Tail, Key: "why", Loose: true, Ways: `
		(based|founded|predicated) (on|upon|off of)
		(end|ends|ended|wind|winds|wound|land|lands|landed) up (there|here|that way|like that|where it (is|did|does))`},
	{Kind: Head, Key: "why not", Loose: true, Ways: `
		is there (some|any|a) [(good|particular|real)] reason [(why|that)] (i|we|you|it|there|that|this|they|the wall) (can|could|should|would|may|do|does) not [(be|have|use|do|fit|go|take|just|simply)]`},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		[(i|we)] (do not know|am not sure|are not sure|not sure|have no idea|no idea|no clue|am unsure|am at a loss) (what|how) [(i|we)] [(to|should|can|could|might)] (say|tell|ask|put|give|talk|phrase|word) [you] [it] [(anything|something)] (about|for|on|regarding)`},
	{Kind: Cmd, Key: "quit", Loose: true, Ways: `
		(that|this) (is|was|will be|would be|ought to be|should be) (it|all|everything|plenty|enough|the lot) (from|for|on) (me|us|my (end|side)|our (end|side)) [(today|now|for today|for now|tonight)]
		(i|we) have [got] (all|everything) (i|we) (need|needed|came for|wanted|was after|were after) [(now|for now|for today|today)]`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		(run|redo|rerun|do|make|print|figure|work up|write out) (the|my|our|that) [(shopping|lumber|buy|buying|material|materials)] list [(up|out)] (again|over|over again|once more|afresh|anew)
		(run|redo|rerun) (the|my|our|that) (shopping|lumber|buy|buying|material|materials) list`},
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: `
		[(i|we|PERSON|class|pupils|students)] (want|wants|would like|need|needs|would love|hope|hopes) to be (taken|walked|led|guided|talked|stepped|brought|taught|shown) [(through|over|along)] [how (to|you|we)] [(find|get|work out|calculate|figure)]
		(lets|let us) go [(over|through)] how (you|we|to) (find|get|work out|calculate|figure|came up with|come up with|arrived at)`},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: "drop [(off)] (to|down to|onto) EARTH [(out there|outside|beyond|on the (far|other|outer|outside) side)]"},
	{Kind: TailFill, Key: "line by line", Ways: "(line by line|bit by bit|piece by piece|blow by blow|one line at a time|line for line|step for step)"},
	{Kind: TailFill, Key: "not elsewhere", Ways: `
		(and|but) not (someplace|somewhere|anywhere|some place) else
		(instead of|rather than) (someplace|somewhere|anywhere|some place) else`},
	{Kind: Goal, Key: "cheapest", Ways: "CHEAPEST (version|layout|plan|design|setup|set up|arrangement|build|combination|solution|wall|choice|thing) [(there is|you (have|can find|can come up with|have got)|possible)]"},
	{Kind: Cmd, Key: "forget all but", Loose: true, Ways: `
		(forget|drop|clear|scrap|delete|erase|toss|wipe|lose|remove|scratch|throw out|throw away|toss out|wipe out|dump|chuck) [out] all of (it|that|this|them|what i (said|told you|gave you)) (but|except|except for|save|besides|apart from|other than|save for)
		(wipe|clear|scrub|dump|chuck|clean) [out] (all|everything|the lot|it all|the rest) (but|except|except for|save|besides|apart from|other than|save for)`},
	{Kind: Head, Key: "state", Loose: true, Ways: `
		(i|we) (want|would like|need|prefer|would love|would prefer) (us|you|it|them) to`},
	{Kind: Fill, Key: "lead", Ways: "[(one|a|another|some)] PERSON (asks|asked|wonders|wants to know|keeps asking|is asking|would like to know) [me]"},
	{Kind: Fill, Key: "fill", Ways: `
		if (i|we) (may|might|could) [just] ask
		if you do not mind [(me|my)] asking
		if (it is|that is) (not too much|no) (trouble|bother)
		(his|her|their|my|your) (version|way|take) (with|using|but with)
		(instead of|rather than) (just|only|merely) [the] (one|two|three|four|five|six|seven|eight)
		(thank you|thanks) [(very|so|ever so)] (much|kindly)
		thanks a (lot|bunch|million|ton|heap)
		you (have been|are|were) [(ever so|so|very|really|most|a (big|great|real))] (helpful|kind|patient|help|a help)
		(could|can|might|may) (i|we) [(please|also|just)] (trouble|bother|ask|get) you to
		in (a|the|this|that|such a) (stretch|wall|space|span|spot|run|gap) [(that|which)] [is] (this|that|so|as) (long|short|wide|tight|narrow|small|big)
		(i|we) have [got] (what|all|everything) [(that)] (i|we) (need|needed|want|wanted) [to (tell|show|give|bring|say|take) [to] ME]
		so [that] (i|we|he|she|they) can (follow|see|check|understand|show) [(it|him|her|them|along)] [(the)] [(arithmetic|math|maths|sums|working)]
		, (i|we) (want|would like|need|am going|are going) to (follow|check|understand|show|explain it to|show it to) [(it|him|her|them|along)] [(the)] [(arithmetic|math|maths|sums|working)]
		, (i|we) (want|would like|need|am going|are going) to see [(it|him|her|them)]`},
}
