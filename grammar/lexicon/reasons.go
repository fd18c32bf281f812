package lexicon

// reasons are ways to ask for the reason of what is, or of what is not allowed, beside the plain ones of heads.
var reasons = []Entry{
	{Kind: Head, Key: "why", Ways: "how (did|was|were)"},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		what (basis|reason|reasons|grounds|justification|need|cause) (is|are|was) there (for|behind)
		(state|give|name|list|tell) [ME] (your|the|all) (reason|reasons|reasoning|grounds|rationale|justification) (for|of|behind)
		(give|show) ME (derivation|reasoning|explanation|origin|source) (of|for|behind)
		(derivation|origin) of
		(what|which) [(rule|limit|thing|statement|requirement)] (limits|limit|restricts|caps|constrains|dictates|governs)
		how come (it|that|there) (is|are|was|has|takes|needs|comes)
		how is it [that] [(we|you|i|it)] (get|got|come|comes|end up|come up|need)
		who (says|said|decided|told you) [(that|there)] [(have|has|need|needs)] [(to)] [be]
		who (says|said|decided) [that] (i|we) (need|have|want|must|get)
		what behind
		what [is|was|are] based on
		based on what
		what underlies
		(on|from) what (basis|grounds|assumption|assumptions|reasoning)
		on what (basis|grounds) (say|claim|get|come up with)
		what (is|was|are) [the] (basis|grounds|rationale|justification|argument|explanation|thinking|case) (for|of|behind)
		what (is|was) [the] (point|purpose|use) of
		what (made|makes|causes|caused|led to|leads to|decided|decides|governs|controls|sets|limits|fixes|fixed|settles|settled|explains|gives|gave) (you|it|us)
		what (causes|caused|decided|governs|controls|settles|settled|explains|fixes|fixed)
		what (makes|made)
		what (is|was) (it) (that) (makes|sets|decides)
		(i|we) do not know (why|how come|how you|where you) [(get|got|came up with|arrived at|come up with)] [(from)]
		(i|we) do not (see|understand|get|follow|grasp|quite see|quite understand|quite get|quite follow) [(why|how come|how|where)] [(you|that)] [(get|got|came up with|arrived at|come up with)] [(from)]
		(i|we) can not (see|understand|follow|figure out|work out) (why|how come|how|where) [(you|that)] [(get|got|came up with|arrived at|come up with)] [(from)]
		(i|we) can not follow
		(would|could|can) you (explain|justify|account for) [(to ME)] [(why|how|where)] [(you)] [(get|got|came up with|come up with|arrived at)]
		explain [to ME] (where|how) you (get|got|came up with|come up with|arrived at|figured|reached)
		explain [to ME] (why|where)
		(show|tell) ME how you (get|got|came up with|come up with|arrived at|figured|worked out|reached|calculated)
		(show|tell) ME where (you get|you got|came from|comes from)
		how did you (land at|end up at|settle for|choose|pick|conclude|justify)
		how do you (justify|explain|account for|come to|support|back up)
		what led you to
		where did you (get|find|pull|take|come up with) [(from)]
		how (on earth|in the world|the heck) (did|do|does|would) you (get|figure|come up with|work out|arrive at|reach)
		how (on earth|in the world|the heck) (do|does|did|can|could)
		(want|like) to (understand|know) (why|how you (got|came up with))
		(help|make) ME (understand|see) (why|how you got|how you get)
		(wondering|curious|puzzled|wonder) (why|how come|how you got|how you get)
		(wondering|curious|puzzled|baffled) (about|by)
		(says|tells) why
		reasoning
		(i am) not sure why`},
	{Kind: Head, Key: "why not", Loose: true, Ways: `
		is there (some|any|a) [(good|particular)] reason (not|i|we|you|why) [(not|can not|could not|should not|can not)] [(to)]
		on what grounds (do|did|does|would) you (refuse|reject|deny|turn down|rule out|object to|forbid|disallow|oppose|block)
		(what|which) [(rule|limit|thing|statement|requirement|law)] (blocks|prevents|forbids|stops|bars|excludes|disallows|prohibits|rejects|refuses|kills|vetoes)
		(what|why) to (stop|keep|prevent|block) (me|us|you|it) [(from)]
		what (would|will|could) (stop|keep|prevent|block) (me|us|you|it) [(from)]
		what (is|are) you against
		what do you have against
		(why|how come) (is|are) you against
		why (is|are|was) (it|that) a no to
		why (did|do|does|have|would|will) you (turn down|turned down|reject|rejected|refuse|refused|rule out|ruled out|say no to|object to|not like|dislike|forbid|forbade|block|blocked|veto|disallow|exclude)
		why (did|do|does|is) it (reject|refuse|rule out|say no to|object to|rejecting|refusing|ruling out|saying no to|forbid|block)
		why say no to
		why (no|nix)
		(i|we) do not (see|understand|get|know|follow) why (i|we|it|you|there) (can|could|will|would|is|are|does|do|should|may) not [(be|have|use|get|do|fit)]
		(i|we) do not (see|understand|get|know|follow) why not
		(explain|tell ME|show ME) why (can|could|will|would|is|are|does|do|should|may) not
		(explain|tell ME|show ME) why (i|we|it|you|there|he|they) (can|could|will|would|is|are|does|do|should|may) not [(be|have|use|get|do|fit|go)]
		(for|on) what (reason|grounds) (can|could|will|would|may) [(i|we|it|you)] not
		what (makes|made) impossible
		what (problem|trouble|harm|issue|hitch|catch|obstacle|drawback) [(is there|there is|be)] (with|in|if)
		y not`},
	{Kind: Tail, Key: "why not", Ways: `
		no good
		(impossible|infeasible|unacceptable|forbidden|prohibited|unworkable|rejected|refused|disallowed|blocked)
		not [be] (acceptable|workable|feasible|doable|permissible|a possibility)
		out of the question
		[being] ruled out
		off the table
		[(not)] a no [-] go
		no go
		a no
		a problem
		turned down
		not an option`},
	{Kind: Tail, Key: "why", Ways: `
		(end|ends|ended|wind|wound) up [being] (so|that|this|as|too) ADJ
		(get|gets|got|come out|comes out|came out|turn out|turned out|become|become) [to be] (so|that|this|as|too) ADJ
		(end|ended|wind|wound) up (with|at|as|being)
		[get] (worked|figured) out
		(picked|picked out|arrived at|selected|determined|settled on|reached|derived|obtained)
		come about`},
	{Kind: Tail, Key: "too", Ways: "(too|so|way too) (many|few|much|little|ADJ)\nenough\nplenty\noverkill\nnot enough"},
	{Kind: Tail, Key: "teach", Ways: "(myself|by myself|on my own|for myself|themselves|for themselves|by hand|on their own|by themselves)"},
	{Kind: WhyFill, Key: "so small", Ways: "(so|that|this|as|too) ADJ\nADJ"},
	{Kind: Quest, Key: "cost", Loose: true, Ways: "(so|that|this|too) (expensive|costly|dear|pricey|steep|much money)\n(cost|costs|costing) (so|that|this) much"},
}
