package grammar

// amounts are still more ways to say how much there is of something, and who asked for it.
var amounts = []entry{
	{kind: kUnclear, key: "unclear", ways: `
		(first|second|third|fourth|fifth|last|other|next|previous) (option|choice|fix|solution|layout|way|remedy|suggestion|alternative|proposal|idea) [you (gave|offered|showed|listed)] [(me|us)] (has|have|had|gets|uses|gives|leaves|shows|needs|is|comes with|calls for)
		(option|choice|solution|layout|alternative) NTH (has|have|had|gets|uses|gives|leaves|shows|needs|is|comes with|calls for)`},
	{kind: kTailFill, key: "asked for", ways: `
		(that|this|it|which) is (what|how|the way) [(the|my|our)] (PERSON|PERSONKIND PERSON) (wants|want|wanted|needs|need|likes|like|liked|asked for|ordered|prefers|prefer|picked|chose|has in mind|is after|insists on|has (their|his|her) heart set on) [it]
		(that|this|it|which) is (what|how|the way) (i|we) (want|need|like|asked for|prefer|picked|have in mind|am after|are after|chose) [it]`},
	{kind: kLoc, key: "between posts", sense: meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), ways: `
		[in] BETWEEN [(two|both|2)] (END|corner) (ones|pair|two)
		[in] BETWEEN (two|both|2) (old|existing|present) ones
		[in] BETWEEN (two|both|pair) [(of them)] that (are|is) [(already)] (there|up|standing|in)`},
	{kind: kPart, key: "rail face", sense: meaning("rail face"), ways: `
		[(put|held|laid|ran|stretched|pulled|hooked|took|set|got)] [(a|the|my)] (tape|ruler|rule|calipers|caliper|straightedge|tapemeasure) (across|on|to|over|against) [the face of] [(one|two|some|each|all|a few|a couple|any|both)] [of] (RAIL) and [(it|they|i|we|the face)] [(is|are|was|were|says|say|reads|read|shows|show|showed|measures|measure|measured|comes to|come to|came to|gives|give|gave|get|got|found)]
		(measured|taped|checked|calipered|miked) [across] [the face of] [(one|two|some|each|all|a few|a couple|any|both)] [of] RAIL and (it|they|the face) (is|are|was|were|says|say|reads|read|shows|show|showed|measures|measure|measured|comes to|come to|came to|gives|give|gave)
		RAIL (show|shows|have|has|give|gives|measure|measures|come to|comes to) [a] face [of]
		of face
		of face width`},
}
