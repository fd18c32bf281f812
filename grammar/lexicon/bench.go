package lexicon

// bench are more words of people at their work: of what holds a post up, what lies about, what is received and what is looked at.
var bench = []Entry{
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Loose: true, Ways: `
		[POST] (base|bases|foot|standoff) (is going to|are going to|will|would|should|has to|needs to|is supposed to|ought to|must|is meant to) (hold|lift|carry|keep|raise|stand|set|prop|put) [(that|this|its)] [(added|new)] POST [up]
		[POST] (base|bases|foot|standoff) (is going to|are going to|will|would|should|has to|needs to|is supposed to|ought to|must|is meant to) (hold|lift|carry|keep|raise|stand|set|prop|put) (it|them) [up]`},
	{Kind: HaveTail, Key: "have", Ways: `
		(lying|laying|leaning|stacked|standing|sitting|piled|stashed|stored|propped|resting|leaned|leant) [(up|around|about|out)] (on|along|atop|at|by|over by|out by|next to|up against|against|out at) [(the|my|our|a|one)] [(far|back|garage|shed|barn|shop|garden|side|old)] (fence|wall|house|garage|shed|barn|truck|rack|sawhorses|porch|driveway|woodpile|workbench|bench|side|gate|tree)`},
	{Kind: HaveTail, Key: "have", Ways: `
		[,] (which|that) (we|i) (would (like|love|prefer|want) to|want to|hope to|need to|have to|plan to|mean to|should|ought to|could|can|might as well|would (rather|sooner)|am hoping to|are hoping to) (use|get rid of|put to use|get through|burn through|make use of|work in|use first) [up] [(first|here|too|if possible|if we can|if i can|on this|on it|somewhere|for this)]`},
	{Kind: Fill, Key: "fill", Ways: `
		(saw|chop saw|miter saw|table saw) (stop|stop block) [(just|only)] once [(so|and|and then|then)]
		(set|setting|use|using|clamp|fix|put) [(up|on)] [(the|a|my|one)] [(saw|chop saw|miter saw)] (stop|stop block) [(just|only)] once [(so|and|and then|then)]
		(set|setting|use|using|clamp|fix|put) [(up|on)] [(the|a|my|one)] (saw|chop saw|miter saw) (stop|stop block) [(so|and|and then|then)]`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		PAPER [that] (i|we) [(just|finally)] (received|solicited|obtained|collected|requested|asked for|picked up|brought home|came home with|took home|have in hand|was handed|were handed) [(back|in|today|yesterday|this morning|last week|this week)] [from PERSON] (is|was|comes to|came to|comes in at|came in at|runs to|amounts to|totals|adds up to|says|shows|has|reads)
		(other|first|second|old|young|next|last|same|same old) PERSON 's (saying|claiming|telling ME|insisting|of the opinion|certain|convinced|quoting|proposing|suggesting|reporting|showing|sure|positive|swearing) [that]
		(other|first|second|old|young|next|last|same) PERSON (is|are|was) (saying|claiming|telling ME|insisting|of the opinion|certain|convinced|quoting|proposing|suggesting|reporting|showing|sure|positive|swearing) [that]`},
	{Kind: Cmd, Key: "take that", Loose: true, Ways: `
		(keep|use|go with|adopt|accept|run with|apply|stick with|take|stay with|choose|pick) (one|version|trial|that|that one|way|layout|what) [that] (we|you|i) [just] (tried|tested|ran|worked|figured|drew|laid|mocked|sketched) (out|up)`},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		[,] (i|we) (want|would like|need|like|have|would love) to (see|look at|check|follow|have|know) (every|each|all) [(the|of the|single|last|one of the)] (number|numbers|figure|figures|sum|sums)
		[(in|with)] (every|each) [(single|last)] (number|figure) in it`},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		(cut|saw|make|chop|trim) [(them|it|those|these)] all [to] [one and] (same|one|single|equal|identical) LENGTH [each]
		all (same|one|equal|identical) (LENGTH|length)`},
	{Kind: Cmd, Key: "draw to", Loose: true, Ways: `
		(can|could|may|might) (i|we) [please] (have|get) (drawing|picture|sketch|elevation|diagram|image) [file] (put|saved|stored|written|exported|sent|done|printed) (to|in|into|as|onto)
		(have|get|want|need|like) (drawing|picture|sketch|elevation|diagram|image) [file] (put|saved|stored|written|exported|sent) (to|in|into|as|onto)`},
	{Kind: Part, Key: "opening from left", Sense: Meaning("opening from left"), Loose: true, Ways: `
		from [(face|inside|edge) of] LEFT [END] [POST] [(face|edge|side)] [(over|out)] to (near|nearest|closest|close|facing|inner|first|nearer) (edge|side|jamb|end|start|beginning) of OPENING
		(near|nearest|closest|facing|nearer) (edge|side|jamb) of OPENING from LEFT [END] POST`},
	{Kind: Part, Key: "opening from right", Sense: Meaning("opening from right"), Loose: true, Ways: `
		from [(face|inside|edge) of] RIGHT [END] [POST] [(face|edge|side)] [(over|out)] to (near|nearest|closest|close|facing|inner|first|nearer) (edge|side|jamb|end|start|beginning) of OPENING
		(near|nearest|closest|facing|nearer) (edge|side|jamb) of OPENING from RIGHT [END] POST`},
	{Kind: WayOut, Key: "way", Loose: true, Ways: `
		(of|from|out of|among) [(those|the|your|these|all the)] [(two|three|four|five|six)] (alternatives|ways|remedies|options|choices|fixes|suggestions|solutions|possibilities|ideas|ones|answers) [that] [you] [(just|have|had)] (listed|gave|offered|showed|suggested|proposed|named|mentioned|came up with|found|put up|put to me|laid out|told) [(me|us)]`},
	{Kind: Unclear, Key: "unclear", Ways: "where (can|could|do|should|would|might|to) [(i|we|you|one)] (buy|purchase|order|shop for|source|pick up)"},
	{Kind: TailFill, Key: "rest", Ways: `
		[,] (but|and) (leave|keep|let) (rest|the rest|everything else|all else|the others|the other ones|all the rest|all the others) [(alone|be|as is|as it is|as they are|in|there|standing|the same|like it is|how it is|as it was|in place|on|unchanged|untouched|of it|of them|please)]`},
}
