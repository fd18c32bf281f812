package grammar

// oldHandTurns are turns of phrase of old joiners, of teachers and of those who think again.
var oldHandTurns = []phraseTurn{
	{"to know", `^((?:what|why|how|where|which|can|could|is|are|do|does|will) .*?) ,? ?(?:that is what |so )?(?:i|we|the class|everybody) (?:would like|want|wants|wish|would love|need|all want)(?: to)? (?:know|hear|learn|be told|understand)TAIL`, "$1 ?"},
	{"s ", `^(?:group|team|bench|pair|desk|squad|party) (?:NUM|[a-d]) (?:is|'s|' s) ((?:[a-z]+ ){0,2}(?:gap|gaps|opening|span|bay|bays|wall|height|spacing|doorway|post|posts|kerf|overall) )(is|are|comes|measures|has)`, "the students say the $1 $2"},
	{"no ", `^(?:maybe|perhaps|possibly) ([^,]*) ,? ?(?:no|nah|nope) ,? ?(?:definitely|certainly|absolutely|make it|let us say|go with|better|rather|surely)`, "$1 , no ,"},
	{" but ", `^(?:i|we|WHO) (?:thought|said|figured|told you)(?: that)? (?:i|we|he|she|they) (?:wanted|needed|would want|would need|would have|would take) ([^,]*?) ,? ?but (?:now |really |actually |today )?(?:i|we|he|she|they) (?:now |really |actually |do )?(?:want|wants|need|needs|would rather have|prefer|would like) (NUM\b.*)`, "$1 , no , $2"},
	{"enough", `(wide|broad|high|tall) enough (?:for|to (?:take|pass|fit|admit|let|clear|get)) (?:[a-z]+ ){1,5}?,? ?(?:say |so |which is |that is |that means |call it |meaning |so say |so make it )?(at least |about |around )?((?:[0-9]|twenty|thirty|forty|fifty|sixty|one|two|three|four|five|six|seven|eight)[a-z0-9./]*(?: ?- ?[0-9]+ / [0-9]+)?(?: (?:one|two|three|four|five|six|seven|eight|nine|foot|feet|and|a|half|quarter|eighth|inches|inch|in|ft|mm|cm))*)TAIL`, "$2 $3 $1"},
	{"enough", `(?:big|large|roomy|generous) enough (?:for|to (?:take|pass|fit|admit|let|clear|get)) (?:[a-z]+ ){1,5}?,? ?(?:say |so |which is |that is |that means |call it |meaning |so say |so make it )?(at least |about |around )?((?:[0-9]|twenty|thirty|forty|fifty|sixty|one|two|three|four|five|six|seven|eight)[a-z0-9./]*(?: ?- ?[0-9]+ / [0-9]+)?(?: (?:one|two|three|four|five|six|seven|eight|nine|foot|feet|and|a|half|quarter|eighth|inches|inch|in|ft|mm|cm))*)TAIL`, "$1 $2"},
	{"it is", `^(?:my|our|the) [a-z]+ (?:(?:that|who) (?:taught|trained|raised|showed|learned) (?:me|us) )?(?:always|usually|used to) (?:left|used|put|had|ran|set|kept|leave|use|put|have|run|set|keep) (.*) ,? ?so (NUM.*) it isTAIL`, "$1 , that is $2"},
}
