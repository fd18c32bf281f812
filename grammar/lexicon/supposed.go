package lexicon

// supposed are ways in which people try something out and say so: that nothing is to be kept of it, that they only wonder, what
// they are afraid of, and what it would do to the rest.
var supposed = []Entry{
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		[(just|only|purely|strictly|merely|simply)] for (comparison|discussion|illustration|estimating|planning|argument|interest|comparison's|discussion's) ['s] [(only|sake|purposes|purposes only)] [(,|:)] [(what if|if|say|suppose|try|how about)]
		[(just|only|purely|strictly|merely)] [(as|by way of)] (experiment|test|trial|exercise|trial run|thought experiment) [(only)] [(,|:)] [(what if|if|say|suppose|try)]
		(just|only|purely|strictly|merely) (curious|wondering|asking|exploring|comparing|looking|checking what happens|seeing what happens) [(here|now|for now|mind)] [(,|:|;|-|--|.)] [(but|and)] [(what if|if|say|suppose|supposing|try|what about|how about|whether)]
		(not|without) (setting|changing|keeping|saving|entering|committing to|deciding|deciding on|committing) (anything|it|that|this|a thing) [(yet|now|for now|just yet|for good)] [(,|:|;|-|--|.)] [(but|and|just|only)] [(what if|if|say|suppose|try|what about|how about)]
		(do|please) not (set|change|keep|save|enter|commit|store|touch|write down|note|record|quote me on) (anything|a thing|it|this|that) [(down)] [(yet|now|for now|just yet|for good)] [(,|:|;|-|--|.)] [(but|and|just|only)] (what if|if|suppose|try|what about|how about)
		(do|please) not (write|put|take|note|jot|type|punch) (it|this|that|anything|these|a thing) (down|in) [(yet|now|for now|just yet)] [(,|:|;|-|--|.)] [(but|and|just|only)] (what if|if|suppose|try|what about|how about)
		(no|without) (commitment|commitments|obligation|promise|promises) [(yet|here)] [(,|:|;|-|--|.)] [(but|and|just|only)] [(what if|if|say|suppose|try|what about|how about)]
		(could|can|would) (i|we|you) (do|build|make|cut|get|put together|knock together) (it|this|that|everything|all of it|it all|the lot|the whole (lot|thing|wall|job|works|shebang)) [all] (out of|from|with|using)
		(would|will|does|do|could|might) [(the|an|any|my|our)] [PERSONKIND] PERSON (pass|allow|accept|approve|approve of|let me have|let us have|let me use|let us use|ok|okay|sign off on|go for|object to|put up with|stand for)
		(would|will|is|could|might) IT [(still|even|all)] be (legal|safe|strong enough|stiff enough|sturdy enough|sound|solid|up to code|within code|against code|kosher|tight enough|wide enough|high enough|good enough) (with|if|at|using)
		(suppose|supposing|say|assuming|assume|imagine|if|what if) [(the|his|her|their|that)] [PERSON] [PAPERKIND] PAPER (is|are|was|were) [(actually|really)] right (about|on|with|and) [(it is)]
		[(is|are|was)] there (any|a|some) (way|chance|possibility|hope|means|trick|method) [(that|of|for)] [(i|we|you|me|us)] [(could|can|might|would|to)] (get by with|get away with|do with|make do with|manage with|live with|use|have|fit|do it with|getting by with|getting away with|using|having|fitting)
		(do|would|could) you (think|reckon|suppose|say|figure|guess) [that] (i|we|it|they) (would|could|can|might|will) (get away with|get by with|make do with|manage with|live with|do with|be ok with|be okay with|be fine with|be all right with)
		(would|will|could|do|does) (i|we|it|that) save [(me|us)] [(anything|much|a board|boards|some boards|a stick|lumber|wood|money|some money|a few dollars|a lot)] (with|if|by|using|to go with)
		how is it look (if|with|when|at|using)
		[(can|could|would|will)] (you|we) [(please)] (run|try|do|figure|work out) [it] (first|once) with
		what if (i|we|you|they|PERSON) [(had)] (mismeasured|measured wrong|misread (it|the tape)|read the tape wrong|got it wrong|was wrong|were wrong|am wrong|made a mistake|slipped up) [(and|,|so|but)] [(it|that|the real (number|figure)) (is|was)] [(really|actually|in fact)]
		what if [(WHOSE)] (tape|tape measure|measurement|measurements|measuring|number|numbers|figure|figures|reading|memory) (was|is|were|are) (wrong|off|out|bad|mistaken|no good) [(and|,|so|but)] [(it|that) (is|was)] [(really|actually|in fact)]`},
	{Kind: Tail, Key: "fit", Loose: true, Ways: `
		be (a|any|much of a|too much of a|such a) (problem|issue|trouble|bother|disaster|mistake|headache|bad idea|good idea|stretch|squeeze|reach|big deal|worry|concern|nuisance|waste|help|improvement)
		(would|will|is|does|could|might) IT [(still|even|all|really|then)] be (cheaper|dearer|stronger|weaker|safer|stiffer|nicer|better|worse|legal|safe|strong enough|stiff enough|sturdy enough|sturdy|up to code|within code|against code|kosher|tight enough|wide enough|good enough)
		(would|will|might|could) look [(like|good|nice|all right|alright|ok|okay|odd|funny|silly|wrong|better|worse|fine)]
		be (trouble|overkill|overdoing it|silly|wise|foolish|daft|pushing it|too much|too many|too few|too little|asking for trouble|cutting it close|cutting it fine|a problem|worse|ridiculous|excessive|sensible|smart|too (tight|wide|big|small|high|tall|low|narrow|close|loose|far|short|long))
		(throw|mess|screw|foul|mix|louse|bugger) (everything|everything else|things|it all|it|that|the rest|the layout|the whole thing|all of it|all the rest) (off|up|out)
		(upset|disturb|spoil|ruin|wreck|change|break|affect|alter|shift) (everything|everything else|things|it all|the rest|the layout|the whole thing|all the rest|the marks|the other numbers)
		(get|land) (me|us) in trouble
		(pass|satisfy) [the] (inspector|inspection|code)
		[(,|;|-|but|and)] [(just|please)] (do not|without) (keep|keeping|save|saving|store|storing|commit|committing|set|setting|write down|enter|entering) (it|that|this|anything) [(yet|though|down|in|for now|for good|just yet|mind)]
		[(,|;|-|but|and)] (do not|without) (change|changing|touch|touching) (anything|a thing) [(yet|though|for now|for good|just yet)]`},
	{Kind: Between, Key: "between", Sense: Meaning("gap, added post size"), Ways: "(float|floats|floating|vary|varies|varying|range|ranges|roam|roams|wander|wanders|swing|swings|fluctuate|drift|play) [(freely|about|around)] [(somewhere|anywhere|someplace)] BETWEEN"},
	{Kind: From, Key: "from", Ways: "(float|floats|floating|vary|varies|varying|range|ranges|roam|roams|wander|wanders|swing|swings|fluctuate|drift) [(freely|about|around)] [(somewhere|anywhere|someplace)] from"},
	{Kind: Change, Key: "+=", Ways: "(lifting|lifts|lifted|widening|expanding|lengthening|stretching|enlarging|heightening|boosting|growing|upping)"},
	{Kind: Change, Key: "-=", Ways: "(squeezing|squeeze|squeezed|squishing|squish|closing in|closing up|cutting back|pulling in|pinching|pinched)"},
	{Kind: Fill, Key: "fill", Ways: `
		(dry|dries|dried|shrink|shrinks|shrank|cure|cured|plane|planed|mill|milled|sand|sanded|joint|jointed) (down|out|up) to
		(dry|dries|dried|shrink|shrinks|shrank|cure|cured|plane|planed|mill|milled|sand|sanded) to
		(making|building|doing) (it|the wall|this|everything|the whole thing|it all) [all] (out of|from|of|with)
		(split|splits|splitting) the difference [(and|,)] [(go|went|call it|make it|say)] (at|with|on|to|and)`},
	{Kind: Part, Key: "opening", Sense: Meaning("opening, openings | opening from left, opening from right, opening side"), Ways: "to OPENING"},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: "(i|we) (worked|work|marked|measured|read) [(only|just)] to\n(only|just) (worked|work|working|marked|measured|read) [(down)] to [the nearest]"},
	{Kind: Change, Key: "-=", Ways: "(whittled|whittle|pared|scaled|scale|brought) (down|back)"},
}
