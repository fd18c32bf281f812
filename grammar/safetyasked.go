package grammar

// cares are what a question for cautions may be about. Its normal form is that of the cautions; the act knows which of them is answered.
var cares = []string{"strength", "passage", "guard", "permit"}

// safetyAsked are questions whether the wall is strong enough, lets a child through, is wide enough for wheels, or needs a permit. Whether it is safe, and all that
// may go wrong, are cautions.
var safetyAsked = []entry{
	{kind: kQuest, key: "strength", loose: true, ways: `
		(is|are|will|would) (it|this|that|they|the wall|this wall|this thing|the whole thing|the post|the posts|RAIL|what we have|what i have) [(be)] [(really|all|going to be|even|structurally|going to)] (strong|sturdy|solid|stout|stable) enough [(to lean on|to lean against|to sit on|to stand on|to climb on|to hold (a person|people|me|somebody|someone|a grown man)|to take (a person|people|somebody leaning on it|a push)|for people to lean on|for (someone|somebody|anybody|kids|PERSON) to (lean|sit|climb|stand) on|for that|like that|like this|that way|this way|as it is|as is|for a guard|for a railing)]
		how (strong|sturdy|stout|solid) (is|are|will|would) (it|this|that|they|the wall|this wall|this thing|the posts|the post) [(be)]
		(will|would|can|could|does|is) (it|this|that|they|the wall|this wall|this thing|the thing|the post|the posts|the top rail) [(going to|gonna)] (hold|hold up|stand|take it|take that|stay up|give|give way|break|survive|stand up|stay put|fall|fall over|tip|tip over|come down|collapse|wobble|crack|be ok|be okay|be all right) (if|when) (someone|somebody|anyone|anybody|people|PERSON|kids|children|the kids|my kids|a kid|a child|a grown man|a man|a big man|i|we|you|folks) [(ever|all)] (lean|leans|leaned|sit|sits|sat|push|pushes|pushed|fall|falls|fell|bump|bumps|bumped|climb|climbs|climbed|stand|stands|stood|hang|hangs) [(hard)] [(on|against|into|over|from|up)] [(it|that|them)]
		(can|could|may|should) (i|we|you|someone|somebody|anyone|anybody|people|PERSON|kids|folks|the kids) [(safely)] (lean|sit|stand|climb|push|hang) (on|against|from|over) (it|this|that|the wall) [(safely)]
		what if (someone|somebody|anyone|anybody|people|PERSON|kids|a kid|a child|a grown man) (leans|lean|sits|sit|falls|fall|pushes|push|climbs|climb|stands|stand|bumps|bump) (on|against|into|over) (it|this|that|the wall|the top rail|the top)
		how much (weight|load|force|push|of a push|of a load|leaning) (can|will|does|would|could) (it|this|that|the wall|a rail|each rail|the top rail|the post|a post) (hold|take|bear|carry|stand|support|hold up to)
		what (load|weight|force|push) (can|will|does|would|could) (it|this|that|the wall|a rail|the top rail|the post|a post) (hold|take|bear|carry|stand|support)
		(will|would|can|could|does) (it|this|that|the wall|the top rail|a rail) (hold|bear|support|carry|take) (my|his|her|a person's|somebody's|someone's|a man's|their) weight
		(will|would|can|could|might) (it|this|that|the wall|the post|they) (blow over|blow down|blow away|get blown over|be blown over)
		how much (wind|of a wind) (can|will|does|would|could) (it|this|that|the wall) (take|stand|bear|hold)
		(can|could|may|should) (i|we|you) (hang|mount|put|set) (a|some|my|the) [(heavy|big)] (planter|planters|planter box|flower box|flower boxes|swing|hammock|bench) (on|from) (it|this|that|the wall)`},
	{kind: kQuest, key: "passage", loose: true, ways: `
		(is|would|will|are) (it|that|this|OPENING|the gap there) [(be)] [(wide|big|large|roomy)] enough (for|to get|to fit|to push|to take|to bring|to wheel|to roll|to let|to pass) [(a|an|the|my|our|his|her|your|PERSON|with a|with my)] (wheelbarrow|wheelbarrows|barrow|wheelchair|wheelchairs|wheel chair|walker|walking frame|rollator|stroller|pram|pushchair|buggy|scooter|mobility scooter|mower|lawn mower|lawnmower|riding mower|cart|garden cart|handcart|hand truck|bike|bicycle) [(through|in|past|by)] [(it|there|that)]
		(will|would|can|could|does|do) (a|an|the|my|our|his|her|your) [(big|full|full size|loaded|standard|power|electric|regular)] (wheelbarrow|barrow|wheelchair|wheel chair|walker|walking frame|rollator|stroller|pram|pushchair|buggy|scooter|mobility scooter|mower|lawn mower|lawnmower|riding mower|cart|garden cart|handcart|hand truck|bike|bicycle) (fit|get|go|pass|come|make it|clear) [(through|in|past|by)] [(it|there|that|OPENING)] [(ok|okay|all right)]
		(can|could|will|would) (i|we|you|PERSON|someone|somebody|they|he|she|one) (get|push|wheel|bring|take|fit|drive|roll|pass|run) (a|an|the|my|our|his|her|your) [(big|full|full size|loaded|standard|power|electric|regular)] (wheelbarrow|barrow|wheelchair|wheel chair|walker|walking frame|rollator|stroller|pram|pushchair|buggy|scooter|mobility scooter|mower|lawn mower|lawnmower|riding mower|cart|garden cart|handcart|hand truck|bike|bicycle) (through|in|past|by) [(it|there|that|OPENING)]
		is there [(enough)] room [(enough)] (for|to get) (a|an|the|my|our|his|her|your) (wheelbarrow|barrow|wheelchair|wheel chair|walker|walking frame|rollator|stroller|pram|pushchair|scooter|mower|lawn mower|lawnmower|cart|garden cart|bike|bicycle) [(to)] [(get|go|pass|come)] [(through|in|past|by)]
		how wide (should|must|does|do|would) (it|that|OPENING) [(have to|need to|has to|needs to)] be (for|to get|to fit) (a|the|my|our) (wheelbarrow|barrow|wheelchair|wheel chair|walker|walking frame|rollator|stroller|pram|pushchair|scooter|mower) [(through)]
		(what|how) about (a|an|for a|for the|the|my) (wheelbarrow|barrow|wheelchair|wheel chair|walker|walking frame|rollator|stroller|pram|pushchair|mobility scooter)
		is (it|this|that|OPENING|the wall) [(wheelchair)] (accessible|ada compliant|wheelchair friendly|wheelchair accessible)`},
	{kind: kQuest, key: "guard", loose: true, ways: `
		(can|could|will|would|might) (a|the|my|our|his|her|any) [(little|small|young)] (kid|child|toddler|baby|infant|grandchild|grandkid|grandson|granddaughter|two year old|three year old|one year old) [(still|ever|even)] (fall|slip|get|squeeze|crawl|fit|go|wriggle|slide|roll|climb) (through|under|underneath|over|between|out|up|through or under) [(it|there|that|them|the gaps|the gap|the rails|the boards|the wall|the bottom|the bottom rail)]
		(can|could|will|would|might) (kids|children|toddlers|the kids|my kids|our kids|the children|the grandkids|my grandkids|little ones|small children|little kids) [(still|ever|even)] (fall|slip|get|squeeze|crawl|fit|go|wriggle|slide|roll|climb) (through|under|underneath|over|between|out|up) [(it|there|that|them|the gaps|the gap|the rails|the boards|the wall|the bottom|the bottom rail)]
		(can|could|will|would|might) (a|the|my|our|his|her|any) [(little|small)] (kid|child|toddler|baby|grandchild|grandkid) climb (it|that|the wall|on it)
		(can|could|will|would|might) (kids|children|toddlers|the kids|my kids|our kids|the grandkids) climb (it|that|the wall|on it)
		(can|could|will|would|might) (a|the|my|our) [(little|small)] (kid|child|toddler|baby|kids|children|grandkids) get [(his|her|their|a|its)] (head|heads|arm|leg) (stuck|caught|through) [(in|between)] [(it|there|that|them|the gaps|the gap|the rails|the boards)]
		(are|is) (the gaps|the gap|those gaps|they|it|that|the wall|this) [(small|tight|close|narrow|safe)] enough (for|to keep in|to keep out|to stop|to hold) (a|the|my|our|small|little) (kid|kids|child|children|toddler|toddlers|baby|grandkids|grandchildren)
		(is|are) (it|this|that|the wall|the gaps) (childproof|child proof|kid proof|kidproof|toddler proof|child safe|kid safe)
		(is|are) (it|this|that|the wall|the gaps) safe (for|with|around) (a|the|my|our|small|little) (kid|kids|child|children|toddler|toddlers|baby|grandkids|grandchildren)
		(is|are) (it|this|that|the wall|the gaps) safe (for|with|around) (kids|children|toddlers)
		(does|would|will|can|could) (it|this|that|the wall|this wall) (count|qualify|work|serve|do|pass|go) (as|for) (a|the) (guard|guardrail|guard rail|railing|safety rail)
		(is|would) (it|this|that|the wall|this wall) [(be)] [(a|count as a|high enough for a|tall enough for a|high enough to be a|tall enough to be a)] (guard|guardrail|guard rail|safety rail)`},
	{kind: kQuest, key: "permit", loose: true, ways: `
		(do|does|will|would|should|must) (i|we|you|this|it|that|the wall|this wall|PERSON|this job|a wall like this|they) [(have to|need to|has to|needs to)] (need|require|get|have|take|pull|want|apply for) (a|any|the) [(building|city|county|town)] (permit|permits|permission|planning permission|approval|building permission) [(for|to build|to put up)] [(it|this|that|the wall|this wall|this job)]
		(do|does|will|would) (i|we|you|this|it|that|the wall|this wall|this job) (need|require) (planning permission|building permission|permission|permits|approval) [(for|to build|to put up)] [(it|this|that|the wall|this wall|this job)]
		(is|would) (a|any) [(building|city|county)] (permit|permission|approval) [(be)] (needed|required|necessary) [(for|here|to build)] [(it|this|that|the wall|this wall|this job)]`},
}
