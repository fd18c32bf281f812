package grammar

// inhand is what people say of the answer that is in their hands: that they take it, what it means now, what comes next.
var inhand = []entry{
	{kind: kCmd, key: "take that", loose: true, ways: `
		(i|we) (will|would|shall) [just] (take|have|keep|use|go for|go with|accept|settle for|stick with|run with) (that|it|this|that one|this one) [(then|please|thanks)]`},
	{kind: kCmd, key: "take that", ways: "(i am|we are) [just] (taking|keeping|using|going with|going for) (that|it|this|that one|this one) [then]"},
	{kind: kQuest, key: "layout", loose: true, ways: `
		what (happens|changes|comes out|have we got|do we have|do i have) [(now|then)]
		(where|how) (does|do) (that|this|it) leave (me|us|it|things) [(now|then)]
		where (are|am) (we|i) [(now|then|at)]`},
	{kind: kHead, key: "check", loose: true, ways: "(he|she) (starts|begins|places|sets|puts|runs|spaces|leaves|draws)"},
	{kind: kEnter, key: "enter", ways: "(enter|take|use|put in) (these|those|this|them|it|the following) (as (drawn|shown|written|is|they are|they stand|given))"},
	{kind: kLoc, key: "between posts", sense: meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), ways: "in between [the] ends"},
	{kind: kQuest, key: "shopping", ways: `
		(shop|shoping) (list|lst)
		how (much|many) [(of (it|that|the (wood|lumber|board|boards)))] [(is|will be|would be|goes|is going|gets)] [to] (waste|wasted|scrap|offcut|offcuts|offcuts and scrap|left over|leftover) [(is there|are there|will there be|would there be|is left|do i (get|have|make)|does that (leave|make))]
		how much [(wood|lumber)] (do|will|would) (i|we|it|that) waste
		how (much|many) (waste|offcut|offcuts|scrap) (is there|are there|will there be|would there be|is left|do i (get|have|make)|does that (leave|make))
		what is [the] (waste|offcut|scrap)
		how (big|long) (is|are|will) the (offcut|offcuts|leftover|leftovers|scraps) [be]`},
	{kind: kCmd, key: "next", loose: true, ways: `
		[(ok|okay|right|alright|and|so)] then what [(next|then|now|do i do)]
		what (do i do|comes|is there to do) (after|then)`},
	{kind: kQuest, key: "cautions", loose: true, ways: `
		(do|will|would|must|should) (i|we|you|it) [(need|have|want)] [to] [(need|have)] (a|any) (guard|guardrail|railing|handrail|balustrade|guard rail|safety rail|hand rail)
		(is|are) (a|any|there) [(a|any)] (guard|guardrail|railing|handrail|balustrade|guard rail|safety rail|hand rail) (required|needed|necessary|called for|mandatory|obligatory)`},
}
