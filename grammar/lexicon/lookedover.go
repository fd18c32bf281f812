package lexicon

// lookedOver are words of people who look over what somebody else drew, cut or charged, and of those who write short.
var lookedOver = []Entry{
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: `
		[(added|new)] POST (base|bases|foot|standoff|stand-off|shoe|shoes) (HEIGHT|height)
		(base|standoff|shoe) (HEIGHT|height)
		HEIGHT of [(added|new)] POST (base|bases|foot|standoff|shoe)`},
	{Kind: CutWord, Key: "cut", Ways: `
		(cut|sawn|sawed|trimmed|chopped|lopped|docked|crosscut) (off|down|through) [(flush|square)] at
		(cut|sawn|sawed|trimmed|chopped|docked) (off|down) to [(a length of)]`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		PERSON [(has|have)] (struck|snapped|penciled|pencilled|scribed|scratched|inked|laid out|laid off|set out|ticked off|ticked) (his|her|their|the|all his|all her|all their) (marks|lines|mark|ticks|layout) [(down|out)] [(at|to be|as)]
		(he|she|they|contractor|builder|carpenter|neighbor|neighbour|architect|designer|guy|fellow|estimator|engineer|inspector|drafter|draftsman|uncle|relative) (is|are) [(also|only|now|just)] (allowed|left|gone with|gone for|figured on|planned on|planned|planning|planning on|specified|written|put down|marked|noted|showing|drawing|figuring|figuring on|going for|calling for|counting on|proposing|specifying|allowing|leaving) [(ME|for|down)]
		(can|could|should|dare) (i|we) (trust|believe|rely on|count on|go by) [that]`},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		CUT (all|them all|everything|every one|each) [of] [them] (to|at|of) (one|the same|a single|one single|one and the same) (length|size)
		CUT (all|them all|everything) of (one|a) (length|size)
		CUT (everything|every one|them all|all of them|every RAIL|each RAIL) to [the] (shortest|shortest one|shortest of them|shortest RAIL|shortest bay)`},
	{Kind: Fill, Key: "fill", Ways: `
		(wind|winds|wound|winding|fetch|fetches|fetched|pitches) up [(being|there)]
		(i|we) (will|am happy to|can|would|am going to|shall|could) (go|come|play|string|get) along with`},
	{Kind: BoxOf, Key: "box", Ways: "[a] [(full|whole|new|big)] (box|boxes|pack|packs|package|packages|packet|packets|carton|cartons|tub|tubs|bag|bags|pail|pails|bucket|buckets|jar|jars)"},
}
