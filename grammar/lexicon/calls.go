package lexicon

// callings are the commands that a name ends: what is saved, opened, compared, or made like another wall.
var callings = []Entry{
	{Kind: Cmd, Key: "save", Ways: `
		STORE THISONE [(one|plan|design|wall|version|numbers|job|of mine|layout|lot|sketch|setup)] [(away|down|aside)] [for (me|us|later|now|safekeeping)] (as|under|with) [the] [name] [of]
		STORE THISONE [(one|plan|design|wall|version|numbers|job|layout|lot)] [(away|down)] by the name of
		STORE [(my|our|the|this|that)] (work|wall|plan|layout|numbers|project|job|design|stuff|lot|session|version|sketch|setup) [so far] [(away|down)] (as|under|with|by) [the] [name] [of]
		STORE what (i|we) (have|have got|got|did|have done|said|have said|told you|gave you|have told you|have given you|have built|built|came up with|just did|worked out|have worked out|made) [(so far|now|here|up to now|until now|going|at the moment|today|together|already)] (as|under) [the] [name] [of]
		STORE (everything|all) [(i said|i told you|(we|i) have [(got|said|told you|given you|done|set)]|we did|i gave you)] [(so far|up to now|now)] (as|under) [the] [name] [of]
		(save|store|file|stash|park|remember) [(away|down)] (as|under) [the] [name] [of]
		(keep|hold|put|lay|set) (this|it|that|these) [(one|plan|design|wall|version)] [(by|aside|away)] as
		(put|lay|set) (this|it|that) [(one|wall|plan)] (by|aside|away) (as|under)
		(keep|make|save|store|take) [(me|us)] a copy [of (this|it|that|what we have|what i have|the plan|what i have got|what we have got)] [(so far|now)] (as|under|called|named)
		(hang on|hold on|hang onto|hold onto) [to] (this|it|that) [(one|plan|wall)] [for (me|us|later|now)] [,] [and] (as|(name|call|label|title) (it|this|that)|under [the] [name] [of])
		STORE THISONE [(one|plan|design|wall|version)] [for (me|us|later|now)] [,] [and] (name|call|label|title) (it|this|that|her)
		STORE THISONE [(one|plan|design|wall|version)] [for (me|us|later|now)] [,] [(with|under)] [(the|its|give it the)] name [(is|will be|should be|shall be|of|it is|:)]
		(name|call|label|title) (this|it|that) [(one|wall|plan|version|layout|design)]
		save (this|it|that|her|these|mine)
		save
		store this`},
	{Kind: Cmd, Key: "open", Ways: `
		(open|load|reopen|bring up|pull up|fetch|call up|get out|restore|recall|bring back|dig out|dig up|bring out|reload) [(me|us)] [up] [(plan|wall|job|design|one|file|version|thing|layout) (saved|stored|called|named|i called|i saved|i named|that i saved|that i called)] [(as|under)]
		(go|switch|return|change|take me|jump|flip|get|going) [(back|over)] to (the|my|our) (plan|one|version|wall|design|layout|job|file|setup|sketch|thing) [that] [(i|we|you)] [have] (saved|stored|called|named|kept|filed|put away|put by) [it] [(as|under|by)] [the name] [of]
		open up`},
	{Kind: Cmd, Key: "compare", Ways: `
		(compare|cmp|contrast) [(this|it)] [(one)] [(with|to|against)]
		(put|hold|set|stack|lay|hang|place) (mine|this|it) [(one|plan|wall|layout|design|version)] [up] (next to|against|beside|alongside|up against|next to|side by side with|over against)
		how (does|do|is|would|will) (this|it|this one|mine|that) [(one|plan|wall|layout)] (compare|stack up|measure up|differ|look|hold up) [(with|to|against|from|next to|beside|alongside)]
		(this|this one) (vs|versus|against|next to)
		how (do|does)
		[(what is|tell me|show me|give me)] [the] (difference|differences) between
		what are [the] differences between
		what (is|are) different (between|about)
		how different (is|are)
		(which|what) is (cheaper|better|taller|longer|bigger) ,`},
	{Kind: Cmd, Key: "same as", Ways: `
		(do|make|build|set|have|want) (this|it|that) [(one|wall)] [(exactly|just)] (same as|like|just like|the same as|a copy of|identical to|match)
		(same as|like|copy|just like|identical to|mirror|duplicate|clone|exactly like)
		(repeat|copy|redo|reuse|duplicate) (what|whatever|everything) (we|i|you|they) [have] (did|have|had|used|built|made|put|got|set|said|done) (on|at|for|in|along|with)
		same [(thing|setup|set up|layout|design|arrangement|numbers|measurements|dimensions|deal|build|specs|figures|settings|everything|idea|story|way)] [(here|again|too|over here)] as [(we|i|you|they)] [(have|did|had|there is|there was|used|built|got)] [(on|at|for|along)]
		(this|this one|this wall|it) [(here|one|wall)] (should|has to|must|ought to|needs to|is to|will|shall|is supposed to|wants to) [just] (match|mirror|copy|be like|be just like|look like|look just like|be the same as|be identical to|be a twin of|be a copy of|be the twin of)
		(use|copy|take|reuse|apply|borrow|repeat|carry over|bring over|follow) [(the|all|all the)] [same] (numbers|measurements|dimensions|setup|layout|figures|design|settings|sizes|everything|values) (from|of|off|as on|as|on|we used on|we have on)
		everything [(is|should be|stays|exactly|just)] [the] (same as|like|just like|as on|as in)
		(model|pattern|base) (this|it|this one|this wall) (on|after)`},
}

// CallLeads are what may stand between such a command and its name: "the plan I saved as", "the one called".
var CallLeads = []Entry{
	{Kind: Fill, Key: "lead", Ways: `
		[(my|our|that|the|his|her)] [saved] (plan|wall|job|design|one|file|version|thing|layout|project|sketch|drawing|setup|copy) [(that|which)] (i|we|you) [have] [just] (saved|stored|called|named|filed|kept|stashed|labeled|labelled|put away|put by|set aside) [(it|away)] [(as|under|by|with)] [the name] [of]
		[(my|our|that|the)] [saved] (plan|wall|job|design|one|file|version|thing|layout|project|sketch|drawing|setup|copy) (saved|stored|called|named|filed|kept|stashed|labeled|labelled) [(as|under|by)] [the name] [of]
		(what|whatever) (i|we|you) [have] (saved|stored|called|named|filed|kept) [it] (as|under|by) [the name] [of]
		(what|whatever|everything) (we|i|you|they) [have] (did|have|had|used|built|made|put|got|done) (on|at|for|in|along|with)
		(we|i|you|they) [have] (did|had|used|built|made|put|got|done) [it] (on|at|for|in|along|with)
		[the] name of`},
}
