package lexicon

// reviewed are words of those who look over what somebody else has drawn or priced: what was allowed for, how something was settled, and
// what is taken over from it.
var reviewed = []Entry{
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[(my|one of my|other|second|first)] [PERSONKIND] PERSON (allowed|allows|included|includes|carried|carries|budgeted|budgets|assumed|assumes|provided|provides|factored|factors|figured in|put in) [(for|in)]
		[(my|one of my|other|second|first)] [PERSONKIND] PERSON (has|have|had) (allowed|included|carried|budgeted|assumed|provided|factored) [(for|in)]`},
	{Kind: Head, Key: "check", Loose: true, Ways: "[(my|other)] [PERSONKIND] PERSON (has|have|is) (put|drawn|sketched|penciled|pencilled|specced|shown|dimensioned) [(in|down|it|them)]"},
	{Kind: Enter, Key: "enter", Ways: `
		[and] (i|we) (will|would|can|shall) [(just)] (take|use|adopt|go along with|go with|accept|keep|allow|stick with|stay with|follow) (that|it|those|them|same|this) [(one)] (too|as well|also|myself|here|likewise)
		(use|take|keep|go with|adopt|stick with) (that|it|those|them|this) (too|as well|also|here|likewise)`},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		(explain|show|tell) [to] [ME] how [(it is|come)] [that] (you|it|they|we) [(ever)] (settled|settled on|decided|decided on|decided upon|chose|picked|determined|selected|placed|set|fixed|fixed on|landed on|landed at|ended up with|wound up with|derived|found|reasoned|concluded|justify|justified) [(where|what|which)]
		(explain|justify|defend|account for) (your|the) (choice|choices|reasoning|thinking|decision|decisions|call) (of|on|about|behind|for|as to)`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(flag|point out|highlight|call out|note|list|mention|TELL ME|bring up|let ME know|warn ME (of|about)) (anything|everything|whatever|what) [that] [(you find|strikes you as|is|are|looks|look|seems|seem|sounds|appears)] (off|odd|wrong|risky|unsafe|dangerous|amiss|fishy|questionable|suspicious|doubtful|troubling|worrying|worrisome|out of line|borderline|marginal|concerning|iffy|hazardous|not right|not safe)
		(flag|point out|highlight|call out|note|list|mention|TELL ME|bring up|let ME know|warn ME (of|about)) (anything|everything|whatever|what|all) [that] (worries|bothers|concerns|troubles|alarms|bugs|should worry|should concern|should bother|ought to worry|might worry|could bite) (you|ME)
		(anything|something) [(here|in here|in it|in this)] (i|we) (ought to|should|need to|must|would) (write up|write him up|call out|red - tag|red tag|bounce|reject|cite|ding) [(for)] [?]
		what (would|should|could|will|might) (an|the) (inspector|reviewer|examiner|official|plan checker) (flag|object to|pick on|complain about|call out|write up|cite|catch|question|frown on) [(here|in here|in this|about (this|it)|on (this|it))]`},
	{Kind: Tail, Key: "claimed", Loose: true, Ways: "[(as)] (shown|depicted|indicated|dimensioned|scheduled) [(there|here|on (it|there))]"},
	{Kind: Goal, Key: "equal bays", Loose: true, Ways: "(even|equalize|equalise|true|square) BAY (out|up)"},
	{Kind: Part, Key: "bracket reach", Sense: Meaning("bracket reach"), Ways: `
		[(center|centre|middle) of] (TOP|upper|uppermost) (bolt|screw|lag|fastener|mounting) (hole|slot) (of|in|on) [WHOSE] BRACKET [(is|sits|lies|comes|are)] [(centered|centred|drilled|bored|punched|located)]
		[(center|centre|middle) of] (TOP|upper|uppermost) (bolt|screw|lag|fastener|mounting) (hole|slot) [(is|sits|lies|comes|are)] [(centered|centred|drilled|bored|punched|located)]
		[(center|centre|middle) of] BRACKET [(TOP|upper)] (bolt|screw|lag|fastener|mounting) hole [(is|sits|lies|comes|are)] [(centered|centred|drilled|bored|punched|located)]`},
	{Kind: Loc, Key: "past rail", Sense: Meaning("| bracket reach"), Ways: `
		(over|above|past|beyond|up from) [(top)] RAIL 's edge
		(over|above|past|beyond|up from) edge of RAIL
		[,] (measured|measuring|going|taken) to [its] [hole 's] (center|centre|middle) [of (hole|bolt)]
		[,] to [its] hole 's (center|centre|middle)
		[,] to (center|centre|middle) of [(that|bolt|screw)] hole
		[,] hole center`},
}
