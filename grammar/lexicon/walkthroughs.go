package lexicon

// walkthroughs are more ways to speak of the opening: where it begins, how wide it is to be at most, that there is to be none.
var walkthroughs = []Entry{
	{Kind: Part, Key: "opening from left", Sense: Meaning("opening from left"), Ways: `
		[from] LEFT [(hand)] [END] POST [(face)] [over] (to|until|till|up to|across to) [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		between LEFT [(hand)] [END] POST [(face)] and [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		from LEFT [(hand)] [END] POST [(face)] [over] to [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		(distance|space|run|stretch|way|wall|length) between LEFT [(hand)] [END] POST [(face)] and [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		(distance|space|run|stretch|way|wall|length) from LEFT [(hand)] [END] POST [(face)] to [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		between [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING and LEFT [(hand)] [END] POST [(face)]
		from [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING to LEFT [(hand)] [END] POST [(face)]
		(distance|space|run|stretch|way|wall|length) between [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING and LEFT [(hand)] [END] POST [(face)]
		(distance|space|run|stretch|way|wall|length) from [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING to LEFT [(hand)] [END] POST [(face)]`},
	{Kind: Part, Key: "opening from right", Sense: Meaning("opening from right"), Ways: `
		[from] RIGHT [(hand)] [END] POST [(face)] [over] (to|until|till|up to|across to) [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		between RIGHT [(hand)] [END] POST [(face)] and [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		from RIGHT [(hand)] [END] POST [(face)] [over] to [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		(distance|space|run|stretch|way|wall|length) between RIGHT [(hand)] [END] POST [(face)] and [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		(distance|space|run|stretch|way|wall|length) from RIGHT [(hand)] [END] POST [(face)] to [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING
		between [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING and RIGHT [(hand)] [END] POST [(face)]
		from [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING to RIGHT [(hand)] [END] POST [(face)]
		(distance|space|run|stretch|way|wall|length) between [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING and RIGHT [(hand)] [END] POST [(face)]
		(distance|space|run|stretch|way|wall|length) from [(start|near edge|edge|beginning|nearest edge|near side|first edge) of] OPENING to RIGHT [(hand)] [END] POST [(face)]`},
	{Kind: Best, Key: "largest", Ways: `
		as (BIG|far|loose|open) as [(|your|our|its)] (wall|job|code|space|layout|rules|span|room|run|length|posts|lumber|law|inspector|rest|bays|rails|stock|wood) (allow|allows|permit|permits|will allow|let|lets|will let it|can take|will take|leave|leaves|will stand|can stand|stands|can bear|will permit) [it]
		as far as it (goes|will go|can go|will open)
		every (inch|bit|millimeter|scrap) [(of (room|space|width|it))] [(that)] (you|we|i|there|wall|it|layout) [(can|could|is|are|will|has|have)] (spare|get|give|manage|find|have|left|to spare|afford|squeeze out|allow|to give) [(it|for it|to it|out of it|her)]
		all the (room|space|width|inches|clearance) [(that)] (you|we|i|there|wall|it|layout) [(can|could|is|are|will|has|have)] (spare|get|give|manage|find|have|left|to spare|afford|squeeze out|allow|to give) [(it|for it|to it|out of it|her)]
		(whatever|everything|all) [(room|space|width)] [(that|there)] (is|you have|we have|you have got|remains) [(left|left over|over|to spare|remaining)] [(over|for it)]`},
	{Kind: TailFill, Key: "closed all the way", Loose: true, Ways: `
		[(just|all|it is|keep it|leave it|make it|have it|the wall is|stay|stays|it stays)] (closed|solid|boarded|shut|filled|unbroken|continuous|fenced|railed|boarded up|closed in|closed off|closed up|filled in|one piece|in one piece) [(wall|run|rails|boards)] (the whole (way|length)|all the way|all along|right through|throughout|the full length|end to end|from end to end|post to post|from post to post|straight through|straight across|right across) [(from post to post|from end to end|across|along|through|down|post to post|end to end|please)]`},
	{Kind: TailFill, Key: "asking", Ways: "that is all (i|we) (am|are) (asking|asking for|after|hoping for|wishing for)\n(i|we) (ask|am asking|are asking) no more than that\nand (nothing|not) [(more)] (fancier|fancy|grander|elaborate|extra)\nand nothing (else|more) [(please|than that)]"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("stiffeners | bay, stiffener spacing, stiffener size"), Ways: "(stiffening|bracing|steadying|reinforcing|strengthening|to stiffen|to brace|to steady|to strengthen|to reinforce) [(each|every|a|the)] BAY"},
	{Kind: Fill, Key: "fill", Ways: `
		(is|are) [(also|always|strictly|absolutely)] (required|called for|mandatory|obligatory|necessary|needed|wanted|demanded|asked for|what is needed|a must) [(here|by code|on this job)]
		(is|are) (enough|plenty|sufficient|ample) for (me|us|them|now|this|that|here)
		(we|i) (require|demand|insist on|ask for|call for|am after|are after)
		[(i would like to|let me|i want to|i can|i should|i must|i have to|may i|i may)] tell you [that]
		[(my|the|our|his|her)] PERSON [(before me)] (now|also|really|still|all|both|absolutely|just|suddenly|then) [(all|now|really|both)] (wants|want|needs|need|insists on|insist on|asked for|requires|require|prefers|prefer|would like|would love)
		(rip|mill|plane|resaw) nothing
		and so (will|do|shall|am|would|did|are|should) (i|we)
		(i|we) (always|usually|normally|generally|typically) [(buy|order|get|take|add|put in|use)]`},
}
