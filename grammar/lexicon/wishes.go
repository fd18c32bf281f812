package lexicon

// wishes are more ways to wish for a goal, or to choose units, beside the plain ones of commands.
var wishes = []Entry{
	{Kind: Goal, Key: "equal bays", Loose: true, Ways: `
		(space|divide|split|set|lay) POST [out] so [that] BAY (comes|come|come out|comes out|ends up|end up|turns out|turn out) [all] (EQUAL|even)
		BAY (even|equal|alike|identical|the same|uniform) (all the way (along|across|down|through)|all along|all across|from end to end|end to end|right along|throughout)
		(do not make|no|not|never) [(one|any|a)] BAY (bigger|wider|longer|larger|narrower|smaller|shorter) than (another|the other|the others|the rest|any other|its neighbor|the next) [,] [(keep|make|leave) (them|it|BAY) (all|) (EQUAL|even)]
		(keep|make|leave|have) [all] BAY [all] (matching|matched|even|balanced|equal|uniform|consistent)
		(split|divide|share) [the] (WALL|span|run|length) [up] (into|in) (equal|even|identical|equally wide) BAY
		BAY as (even|equal) as (can be|possible|you can [(make them|get them)]|they can be|they come)
		(matching|matched|balanced) BAY
		BAY (should|must|have to|need to|ought to) (match|be equal|be even|be alike|be identical|be uniform|match each other|match one another)`},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		RAIL [(all|to be|be|come out|all come out|all end up|end up)] (identical|equal|alike|uniform|even|the same) [all] in length
		RAIL (get|gets|be|are|is|to be|being|come|all get|all) CUT [to] (one|a single|the same|an identical|an equal|one and the same) (length|size)
		RAIL CUT (alike|equal|identical|identically|the same|to match) [(,) (same length|one length) [for (all|the lot|every one|all of them|the whole lot)]]
		same length for (the lot|the whole lot|all|all of them|every one|every last one|the whole batch|each|everything)
		(one|a single|same|the same) (setting|stop|stop setting|saw setting) [on the saw] for (all|every|the) (RAIL|cuts|of them)
		CUT [(all|every|the)] RAIL [all] (identically|identical|equal|uniformly|to match)
		(no|not) two RAIL (different|of different length|of different lengths)
		(keep|make|leave|have) [(all|every|the)] RAIL [all] (one length|a single length|the same length|equal in length|identical in length)`},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: `
		(keep|leave|hold|make|have|set|get) [(all|every|each)] GAP [all] [(at|to|on)] [(its|their|the)] (true|exact|real|calculated|computed|precise|actual|right) (figure|figures|value|values|size|width|number|measure)
		(keep|leave|hold|make|have|get) [(all|every|each)] GAP [all] [(exactly|perfectly|dead|truly|really|nice and)] (even|equal|identical|uniform|exact|true|alike|the same|consistent)
		(keep|leave|hold|make|have|get|want) [(all|every|each)] GAP [all] (exactly|perfectly|dead|truly|really|nice and) (even|equal|identical|uniform|exact|true|alike|the same|consistent)
		GAP [(all|should|should all|must|must all|to|to all|all to)] (come out|turn out|end up|work out|be|stay) [(exactly|perfectly|dead|all)] (even|equal|identical|uniform|exact|alike|the same|consistent|true)
		(same|equal|even) (gaps|spaces) [all] (the way up|all the way up|all the way|throughout|top to bottom|from top to bottom|everywhere)
		GAP as even as (can be|possible|you can [(make them|get them)]|they can be|they come)
		(even|equalize|equalise|smooth|true) (up|out) GAP
		(equalize|equalise) GAP
		GAP (identical|uniform|equal|alike) [to one another] [,] [(and|so)] round [(each|every)] [(mark|marks)] [(by itself|on its own|separately|individually|independently|one by one)]
		(round|rounding) [(off|up)] (each|every|the|all|my) (mark|marks) [(off|up)] (by itself|by themselves|on its own|on their own|separately|individually|independently|one by one|one at a time|singly|apart)
		(each|every) mark [(is|gets|be|should be|to be)] rounded [off] (by itself|on its own|separately|individually|independently|one at a time|singly)
		(keep|stop|prevent|avoid) [(the|any|my)] (rounding errors|errors|rounding|rounding error|error) [from] (piling|adding|building|creeping|stacking|accumulating|compounding) [(up|in)]
		(no|not|without|avoid|do not let) [(any|the)] (creeping|creep|accumulating|accumulated|cumulative|growing|compounding|piled up) (error|errors|rounding|creep)
		(do not|without|avoid|not|no) [let] [(the|any)] (rounding|error|errors|roundings|rounding errors|rounding error) [(to|from)] (pile|piles|piling|add|adds|adding|build|builds|building|creep|creeps|creeping|stack|stacks|stacking) (up|in)
		(do not|without|avoid|not|never) (add|adding|sum|summing|stack|stacking|pile|piling|accumulate|accumulating) [(up)] [(the)] (rounded|rounding) [(ones|gaps|marks|figures|numbers|errors|values|spacings)] [up]
		(do not|not) want [(the|any)] (rounding|error|errors|rounding errors|rounding error) [(to|from)] (pile|piling|add|adding|build|building|creep|creeping|stack|stacking|accumulate) [(up|in)]
		(do not|not|never|without) (accumulate|accumulating|compound|compounding) [(the|any)] (rounding|error|errors|rounding errors)`},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: `
		(whatever|whichever|what|the way that|the one that|which ever) [(way|one|layout|option)] (costs|comes to|runs|sets me back|sets us back|is) [me] (least|the least|cheapest|the cheapest|less|the lowest)
		(do not|not|never) (spend|pay|cost) [a] (penny|cent|dime|dollar|nickel|thing) more than [(i|we|you|it)] (have to|need to|has to|must|needs to)
		(whatever|whichever) (is|comes out|works out) [the] (cheapest|least expensive)
		[(the)] cheapest (wins|is best|will do|does it|please|is fine|it is)
		(keep|hold|get|make) [the] (cost|costs|price|bill|total|expense|spending) [(down)] [as] (as low|as small|low|small|down|as far down) as [(it|you|we|they)] (can|will|could|possibly can) [(be|go|get|manage|keep it|make it)]
		(keep|hold|get) [the] [(material|materials|lumber|total|overall|wood)] (cost|costs|price|bill|total|expense|spending|outlay) (down|low|lowest|minimal|at a minimum|to a minimum|to the minimum|to the bare minimum|at rock bottom|rock bottom)
		(lowest|least|minimal|minimum|smallest|rock bottom) (cost|price|bill|expense|spending|outlay) [(possible|you can get|that works|please|wins)]
		(for|with|on) (as little money|the least money|the least outlay) [(as possible|possible|as we can|as i can)]
		(as cheaply|as cheap|as inexpensively|as economically) as (possible|you can|we can|it comes|they come|can be|can be done|it can be done|it can be built)
		(go|build|buy|do it) (cheap|cheapest|the cheapest)`},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(waste|throw away|throw out|lose|scrap) [the] (least|smallest) (amount|quantity|bit) of (wood|lumber|timber|material|stock) [possible]
		(least|smallest) amount of (waste|scrap|offcuts|leftovers) [possible]
		(minimal|minimum|least|smallest|lowest|little|very little) (waste|wastage|scrap|offcuts|leftovers|cutoffs|loss)
		so [that] there (is|will be|are) [the] (minimal|minimum|least|as little|hardly any|next to no) (waste|wastage|scrap|offcuts|leftovers|cutoffs) [(as possible|possible)]
		(waste|wastes|wasting|throw away|throws away|throwing away|throw out|throws out|toss|tosses|bin|bins|lose|loses|scrap|scraps) [(as little|the least|least|as few|the fewest)] [(of)] [(the)] (wood|lumber|timber|material|stock|offcuts|scraps) [(as possible|possible|as you can|as we can)]
		(whichever|whatever|which ever) [(way|layout|option|one)] (wastes|throws away|throws out|tosses|scraps|bins|loses) [the] (least|fewest) [(wood|lumber|timber|material|stock|boards)]
		(waste|throw away|throw out|toss|lose|scrap) (as little|the least|least) (wood|lumber|timber|material|stock) as (possible|you can|we can|i can)
		(keep|hold|get) [the] (offcuts|leftovers|leftover pieces|leftover bits|leftover wood|scraps|scrap|waste|cutoffs|scrap pile) [(kept)] (down|low|small|few|to a minimum|at a minimum|to the minimum|minimal|as few as possible|as small as possible)
		(offcuts|leftovers|leftover pieces|leftover bits|leftover wood|scraps|scrap|waste|cutoffs) [(are|is|be|to be|should be)] (kept|held) (down|low|small|to a minimum|at a minimum|to the minimum|minimal|as few as possible|as small as possible)
		(as few|the fewest|fewest|least) (leftovers|leftover pieces|offcuts|cutoffs|scraps) [(as possible|possible|as you can)]
		(get|make) the most out of (each|every|the) (board|stick|length|boards|sticks|lumber|stock)
		(use|buy|need) as little (lumber|wood|timber|material) as (possible|you can|we can|i can|it takes)
		(smallest|littlest) (scrap|waste) (pile|heap)`},
	{Kind: Goal, Key: "fewest posts", Loose: true, Ways: `
		(do not|not|never) (use|add|set|put in|have) [(a|one|any)] (POST|posts) more than [(is|are|we|i)] (necessary|needed|need|have to|must|required|strictly necessary|absolutely necessary) [(, fewest (wins|is best))]
		no more POST than [(is|are|we|i|you)] (necessary|needed|need|have to|must|required|strictly necessary|absolutely necessary)
		(minimize|minimise) [the] (number|count) of POST
		as few POST as [(you|we|i)] (can|could) (manage|get away with|get by with|live with|make do with|get)
		(lowest|smallest|least) (number|count) of POST
		(minimize|minimise) (posts|psts|columns|pillars)
		(only|just) as many POST as [(is|are|we|i|you)] (necessary|needed|need|have to|must|required|it takes)
		(keep|hold) [the] (number|count) of POST (down|low|to a minimum|to the minimum|to the bare minimum|minimal|at a minimum)
		(keep|hold) POST (count|number|numbers) (down|low|to a minimum|to the minimum|to the bare minimum|minimal|at a minimum)
		(rather|sooner) not (set|dig|add|put in|use) [any] (POST|holes) [(,)] keep (their|the) number (down|low) [(to (a|the) (bare|) minimum)]
		(rather|sooner) not (set|dig|add|put in|use) [any] (POST|holes) [(,)] keep (their|the) number to (a|the) bare minimum`},
	{Kind: Goal, Key: "most rails", Loose: true, Ways: `
		(pack|cram|squeeze|fit|get|stuff|jam|put) in [the] most RAIL [(possible|you can|we can|that fit|that will fit|that will go)]
		[the] most RAIL [(that|)] (you|we|i|it) can [(possibly)] (squeeze|cram|fit|pack|get|put|stuff|jam|hold|take) [(in|into it|in there)]
		(max|maximize|maximise|max out) [(out)] [the] (RAIL|number of RAIL) [(count|number)]
		(pack|cram|squeeze|fit|get|stuff|jam|put) [in] as many RAIL [in] as [(you|we|i|it|they)] (can|will|possible|will fit|will go|fit)`},
	{Kind: Goal, Key: "fewest rails", Loose: true, Ways: `
		(keep|hold|get) [the] RAIL (count|number|numbers) (down|low|as low as possible|as small as possible|to a minimum|to the minimum|minimal|at a minimum)
		(keep|hold|get) [the] (number|count) of RAIL (down|low|as low as possible|as small as possible|to a minimum|to the minimum|minimal|at a minimum)
		(minimize|minimise) [the] (number|count) of RAIL
		no more RAIL than [(is|are|we|i|you|it)] (necessary|needed|need|have to|must|required|takes|strictly necessary|absolutely necessary)
		(only|just) as many RAIL as [(is|are|we|i|you)] (necessary|needed|need|have to|must|required|it takes)`},
	{Kind: Goal, Key: "smallest gap", Loose: true, Ways: `
		(squeeze|push|put|set|place|get|bring|pack|draw|space) [(the|all)] RAIL [(up|together|in)] as (close|tight|near|tightly|closely) [together] as (possible|they will go|they can go|they go|you can|we can|it gets|they can be|can be)`},
	{Kind: Goal, Key: "largest opening", Loose: true, Ways: `
		(make|leave|have|give me) [the] OPENING as (wide|big|large|broad|generous|roomy|spacious) as [the] (wall|space|span|room|layout|posts|rules|code) (allows|allow|permits|permit|lets it|will allow|will permit|can take|will take|lets me|lets us)
		(max|maximize|maximise|max out) [(out)] [the] OPENING [(width|size)]`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		[my] tape [is] (metric|in (mm|millimeters|millimetres|metric|centimeters)) [(, so)] [(mm|millimeters|millimetres|metric|use mm)] [please]
		(mm|millimeters|millimetres|metric) (please|instead|for me|throughout|it is)
		(give|show|tell|list|say) [ME] [(it|everything|that|all)] [in] (mm|millimeters|millimetres|metric) [(please|,)] [not [in] (inches|feet|imperial|feet and inches)]
		(mm|millimeters|millimetres|metric) [(,|and)] not (inches|imperial|feet|feet and inches)
		not (inches|imperial|feet and inches) [(but|,)] (mm|millimeters|millimetres|metric)
		i am (a|an) (metric|mm|millimeter|millimetre) (guy|person|man|woman|user|fellow|girl|gal|carpenter|builder)
		i (only|just) (know|use|read|think in|do|speak|have) (metric|mm|millimeters|millimetres)`},
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		[my] tape [is] in (inches|feet and inches|imperial) [(, so)] [(inches|use inches)] [please]
		(inches|imperial|feet and inches) (please|instead|for me|throughout|it is)
		(give|show|tell|list|say) [ME] [(it|everything|that|all)] [in] (inches|imperial|feet and inches) [(please|,)] [not [in] (mm|millimeters|millimetres|metric|centimeters)]
		(inches|imperial|feet and inches) [(,|and)] not (mm|millimeters|millimetres|metric|centimeters)
		not (mm|millimeters|millimetres|metric|centimeters) [(but|,)] (inches|imperial|feet and inches)
		i am (a|an) (inches|inch|imperial|feet and inches) (guy|person|man|woman|user|fellow|girl|gal|carpenter|builder)
		i (only|just) (know|use|read|think in|do|speak|have) (inches|imperial|feet and inches)
		switch [back] to inches`},
}
