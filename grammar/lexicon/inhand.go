package lexicon

// inhand is what people say of the answer that is in their hands: that they take it, what it means now, what comes next.
var inhand = []Entry{
	{Kind: Cmd, Key: "take that", Loose: true, Ways: `
		(i|we) (will|would|shall) [just] (take|have|keep|use|go for|go with|accept|settle for|stick with|run with) (that|it|this|that one|this one) [(then|please|thanks)]`},
	{Kind: Cmd, Key: "take that", Ways: "(i am|we are) [just] (taking|keeping|using|going with|going for) (that|it|this|that one|this one) [then]"},
	{Kind: Quest, Key: "layout", Loose: true, Ways: `
		what (happens|changes|comes out|have we got|do we have|do i have) [(now|then)]
		(where|how) (does|do) (that|this|it) leave (me|us|it|things) [(now|then)]
		where (are|am) (we|i) [(now|then|at)]`},
	{Kind: Head, Key: "check", Loose: true, Ways: "(he|she) (starts|begins|places|sets|puts|runs|spaces|leaves|draws)"},
	{Kind: Enter, Key: "enter", Ways: "(enter|take|use|put in) (these|those|this|them|it|the following) (as (drawn|shown|written|is|they are|they stand|given))"},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: "in between [the] ends"},
	{Kind: Quest, Key: "shopping", Ways: `
		(shop|shoping) (list|lst)
		how (much|many) [(of (it|that|the (wood|lumber|board|boards)))] [(is|will be|would be|goes|is going|gets)] [to] (waste|wasted|scrap|offcut|offcuts|offcuts and scrap|left over|leftover) [(is there|are there|will there be|would there be|is left|do i (get|have|make)|does that (leave|make))]
		how much [(wood|lumber)] (do|will|would) (i|we|it|that) waste
		how (much|many) (waste|offcut|offcuts|scrap) (is there|are there|will there be|would there be|is left|do i (get|have|make)|does that (leave|make))
		what is [the] (waste|offcut|scrap)
		how (big|long) (is|are|will) the (offcut|offcuts|leftover|leftovers|scraps) [be]`},
	{Kind: Cmd, Key: "next", Loose: true, Ways: `
		[(ok|okay|right|alright|and|so)] then what [(next|then|now|do i do)]
		what (do i do|comes|is there to do) (after|then)`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(do|will|would|must|should) (i|we|you|it) [(need|have|want)] [to] [(need|have)] (a|any) (guard|guardrail|railing|handrail|balustrade|guard rail|safety rail|hand rail)
		(is|are) (a|any|there) [(a|any)] (guard|guardrail|railing|handrail|balustrade|guard rail|safety rail|hand rail) (required|needed|necessary|called for|mandatory|obligatory)`},
}
