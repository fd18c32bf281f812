package lexicon

// takenIn are words of lumber at hand and of pieces wanted besides, of what is to be bought, how much over, and why.
var takenIn = []Entry{
	{Kind: Have, Key: "have", Ways: `
		(i|we) (found|inherited|salvaged|rescued|scrounged|saved|kept|scavenged|was given|were given|got given|received) [(myself|me)]
		(i|we) own [already]
		(he|she|they|PERSON) (left|lent|brought|donated) (me|us)
		KIN (is|are) (giving|lending|leaving|bringing) (me|us)
		sitting in my (garage|shed|shop|barn|basement|truck) (is|are)
		there (lie|lies|sit|sits|stand|stands) [already] (in|at|on|behind|under) [(my|our|the)] (garage|shed|shop|barn|basement|truck|workshop|cellar|attic)`},
	{Kind: HaveTail, Key: "have", Ways: `
		last (year|summer|spring|winter|fall|autumn|season|month|week)
		(this|a) (year|summer|spring|winter|season|month|week) [or two] ago
		(a couple of|a few|some) (years|months|weeks|days) (ago|back)
		(and|,) i (still|already) have (them|those|all of them)
		(and|,) we (still|already) have (them|those|all of them)
		(that|which) (i|we) (still|already) (have|own)
		(that|which) (is|are) (left over|left|leftover) from [(the|my|our|an|a)] [(last|old|other)] (job|deck|project|fence|shed|wall|garage|house|porch)
		(is|are) (sitting|lying|stacked|stored|waiting|already|stashed) (in|on|at|behind|under|by|out in) [(my|the|our|his)] (garage|shed|shop|barn|basement|truck|attic|workshop|cellar|rack|yard|trailer|driveway|house|home)
		(is|are) here in [(my|our|the)] (garage|shed|shop|barn|basement|truck|attic|workshop|cellar)
		from [(the|my|our|an|a)] (last|old|other|previous) (job|deck|project|fence|shed|wall|garage|house|porch|build)`},
	{Kind: Extra, Key: "extra", Ways: `
		(add|throw in|put in|include|tack on) (an extra|an additional)
		(to|onto) the (shopping|buy|buying|lumber|cut|cutting|material|materials) list
		(besides|beside|apart from|aside from|on top of|in addition to) (WALL|all this|all that|everything else|the rest)`},
	{Kind: Part, Key: "spare", Sense: Meaning("spare | rails, have"), Ways: `
		(more|over|extra|beyond|additional) (LUMBER|stock) (than|to|over|beyond) [what] [(is|we|i|you|it|are|actually|strictly|really)] [(strictly|actually|really)] (need|needed|needs|required|require|called for|calls for)
		(an allowance|a cushion|a margin|a buffer|a reserve|an overage|a safety margin) of
		as (spares|spare|backup|backups|extras|a reserve|insurance|a backup|a spare|spare boards|a safety margin)
		[(should|must|need to|ought to|have to|are to|will) be] BOUGHT as (spares|spare|backup|backups|extras)
		in (reserve|hand for mistakes)
		for (the (scrap|burn|reject) pile)`},
	{Kind: Fill, Key: "fill", Ways: `
		[the] (plan|layout|design|cutting|cuts|way you cut) (ought to|should|must|has to|have to|needs to|had better) [(leave|have|make|produce|give|create|generate|result in)]`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		(which|what) (boards|lumber|wood|pieces|lengths|timber|sticks|parts) and how many [of] [(each|them|each one|every one)] [(do|should|must|will|would|have|need|ought)] [(i|we|you)] [(to be|be|have to|need to|to)] (buy|purchase|order|get|pick up|BOUGHT)
		(which|what) (boards|lumber|wood|lengths|timber|sticks|parts|material|materials) (has|have|need|needs|must|should|ought|is|are) [(to|to be|be)] (BOUGHT|gotten|picked up)
		[(a list of|list of|list|tell ME|know|see|show ME)] what [else] [(is|there is|remains|i have|we have|i need|we need)] [(left|still|yet)] to (buy|get|order|purchase|pick up|be (BOUGHT|picked up))
		what [else] (is|remains) [(left|still|yet)] to [be] (buy|get|order|purchase|pick up|BOUGHT|picked up)
		(a|the|my) list (of|with) (everything|all) [(that)] (i|we) [(have|need|got|still have|still need)] to (buy|get|order|purchase|pick up)
		(bill|list) of (materials|material|lumber|timber)`},
	{Kind: Quest, Key: "shopping", Ways: "(buying|purchase|purchasing|order|lumber order|procurement) list"},
	{Kind: WhyFill, Key: "fill", Ways: `
		(has|have|is|contains|contain|shows|show|lists|comes to|calls for) [(got)] (so|that|this) (much|many) (LUMBER|stuff|sticks|pieces|rails|lengths) [(on|in)] [(it|there)]
		(so|that|this) (much|many) (LUMBER|stuff|sticks|pieces|rails|lengths) (on|in) (it|there)
		(is|so|is so) (long|big|full)`},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		(do|does|did|can) not (get|understand|see|follow|know|grasp) (why|how come) (you|it|the plan|the list) (is|are|am|keep|keeps|want|wants|have|has) [(making|telling|having|asking|wanting)] [(me|us)] [to]`},
}
