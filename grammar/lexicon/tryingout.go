package lexicon

// tryingOut are ways to try something and to hold a claim against the rest that turn on a verb of trying, of wishing or of hearing.
var tryingOut = []Entry{
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		had (i|we|you|they|he|she) [(only|just|instead)] (picked|gone with|gone for|used|had|put|put in|chosen|taken|bought|built|left|made|set|kept|ordered|gotten|got|cut|run|wanted|decided on|settled on|opted for|planned|planned on|started with|allowed)
		(is|was|would) (it|this|that) [be] [(at all|still|even|really)] (feasible|doable|workable|practical|realistic|viable|conceivable|thinkable|manageable|achievable) (with|if|at|using|to have|to use|to get|to go with|for)
		(play|think|talk|run|work|reason|walk|puzzle) (it|this|that|things|everything) through [(once|once more|again|one more time)] (with|for|at|using|as if|assuming|on)
		[(just|only)] (run|crunch|work|figure|do|try|punch) [ME] [the] (numbers|figures|math) [(again|once|once more|over)] [(out|up)] (on|with|for|at|using)
		(just|only) (testing|experimenting|playing around|playing|fooling|speculating|dreaming|guessing|trying|trying something|trying things|messing around|messing about) [(here|now|though)] (:|,|;|-|--|.) [(but|and)] [(what if|if|say|suppose|try|how about|what about)]
		[(a|purely|strictly|here is a|another|one)] hypothetical [(question|case|one|for you|here)] (:|,|;|-|--|.) [(what if|if|say|suppose|try)]
		(trial|test|trial run|test run|experiment|dry run|thought experiment) (:|-|--) [(what if|if|say|suppose|try)]
		(would|will|am|are) (i|we|you|they) [be] (better off|worse off|better|worse|ahead|smarter|wiser|money ahead) (with|using|if|going with|having|to use|to go with|to have|to make|making|building with)
		(would|will|could|might|does) (it|that|things) [(all|still|even)] (work|work out|fit|go|fly|hold|pass|pay|serve|matter) to [(have|make|use|put|leave|keep|set|go with|get)]
		if (i|we|you|they|he|she) [(had|have|would)] (gotten|planted|sank|sunk|stood|installed|placed|erected|poured|dug in|slipped in|squeezed in|snuck in|bought|picked|picked up|found|scored|ordered|chosen|specified)
		(would|could|might) (i|we|you) [(also|still|even|just|maybe|possibly)] (plant|sink|stand|install|place|erect|slip in|sneak in)`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[(go over|check|verify|confirm|test|vet|examine|review|settle|hold up|weigh|judge|look at|look into|see about|consider)] [(the|my|our|his|her|their|WHOSE)] [PERSONKIND] [(PERSON 's|his|her|their)] (claim|assertion|contention|estimate|theory|belief|guess) (of|that|:|about) [(it is|there are|it takes)]
		[(can|could|would|will) you] [please] (go over|check|look over|look at|verify|review|run through|go through|double check|check over|check out) [(the|my|our|that|this)] [PERSONKIND] [(PERSON 's|his|her|their|these|those|PAPER 's)] (figures|numbers|math|maths|arithmetic|sums|work|dimensions|calculations|reckoning|claims|measurements) [for ME] (?|.|:|;|-|--) [(he|she|they|it|PERSON|PAPER)] (has|have|had|says|say|said|got|shows|show|puts|put|figures|figured|gives|gave|SHOWS)
		(it|that|this|they|WALL|the whole thing) (was|were|got) (sold|described|advertised|billed|presented|represented|pitched|touted|offered|listed) [to ME] as [(being|having|a WALL|with)]
		[(the|my|our|a|one)] [PERSONKIND] (previous|last|former|old|first|original|earlier|other) PERSON ['s] [PAPERKIND] PAPER (SHOWS|SAYS) [(that|ME)]
		[(the|my|our|a|one)] [PERSONKIND] (PERSON|relative) (was|were|is|has been|have been|got) [(also|just)] (assured|promised|guaranteed|informed|advised|given|quoted) [(of|that|about)]
		(PAPER|DESIGN|layout) [(that|which)] (he|she|they|PERSON) (mailed|sent|gave|emailed|faxed|texted|handed|left|drew|made|showed|brought|printed|posted|did|drew up) [(for|to|up)] [ME] (has|have|SHOWS|SAYS|calls for|is) [that]
		(i|we|PERSON) (read|heard|saw|found|was reading) [(that|it)] (somewhere|online|on the internet|on the web|in a book|in a magazine|in some article) [that]
		is it just me or (is|are|does|do)
		on [(the|a|his|her|their|my|this|that)] (napkin|envelope|back of envelope|back of napkin|back of an envelope|back of a napkin|shingle|clipboard|cardboard|chalkboard|whiteboard|blackboard|tracing|printout) [(:|,|it is|it says|there is)]
		(whoever|whichever PERSON|the one who|the ones who|PERSON who) (was here|did this|built this|built it|came|worked here|had it|owned it|lived here|started this|started it|drew this|drew it|measured it|measured this) [(last|before|first|earlier|before me|before us|last time)] (penciled|pencilled|marked|put|drew|wrote|left|made|scribbled|scratched|scribed|SAYS)`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		[(can|could|would|will) you] [please] (see|tell ME|say|find out|let ME know) (if|whether) (that|it|this|those|they|he|she) (is|are|holds|hold|adds up|checks out|stands) [(so|right|correct|true|ok|okay|good|up)] [(or not|for me)]
		(settle|decide) (it|this|that|the argument|the bet|this one|things) [(for|between|among) (ME|the two of us|the both of us)]
		(who|which one|which of (us|them)) (wins|has won|won|is right|is wrong) [(the bet|the argument)]
		(is|was) that what (it is|it was|they are|you have|i have|we have|you see|you find|it comes to|it measures|it should be)
		(look|looking) (them|it|that|this|these|those) over [(for ME|please)]
		(go|run) over (them|it|that|those|these) [(for ME|please)]
		[please] (give|have) (them|it|that|those|this|these) (a look|a look over|the once over|a going over|a check)
		(is|was|are) (he|she|they|PERSON) [just] (onto something|on to something|on the money|on track|on the right track|crazy|nuts|off base|kidding|dreaming|full of it|mistaken|way off|in the ballpark|spot on|close)
		[(can|could|would|will) you] [please] (double check|recheck|fact check) me [(on that|on this)]
		agree ?
		(you|do you|would you|can you|can we) (agree|concur|go along) [(with (that|him|her|them|it))] ?
		(prove|show) (him|her|them) (right|wrong) [(or wrong)]`},
	{Kind: Tail, Key: "fit", Loose: true, Ways: `
		without (any|too much|much|causing|giving|running into|a lot of|) (trouble|problem|problems|bother|issue|issues|difficulty|difficulties|harm|fuss|a problem|a hitch|a fuss)
		do [(any|much|some|real|great|a lot of)] (harm|damage|hurt|mischief)
		(better|good|smart|worth it|wise) or (worse|bad|not|dumb|silly|foolish)
		save ME (a|one|any|some|a few) (board|stick|boards|sticks|lumber|wood|money|time|trip|cut|cuts) [(at all|or two)]
		do the (trick|job) [(nicely|fine|all right|for (us|me))]
		(turn|do) the trick
		what (would|will|might|could|does|do|did) (that|it|this|doing that|doing so) (get|buy|gain|win|bring|earn) ME
		[(,|;|-|--)] not (deciding|setting|committing|changing|ordering|promising) [(anything|a thing|on anything|on it|to it|to anything|it|that)] (yet|now|just yet|for now|so far)`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: "(is|was) that what it is"},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		(everything|they all|all of them|all of the RAIL|all the RAIL|all RAIL|every RAIL|every piece|every one|every one of them|all the cuts|each RAIL|the RAIL|they) (is|are|was|were|got|gets|get|has to be|have to be|had to be|must be|should be|to be|would be|being) [all] CUT (to|at) (the same|one|a single|one and the same|an equal) (length|size)`},
	{Kind: Sell, Key: "sell", Ways: `
		(truck|van|trailer|car|pickup|pick up|wagon|rack|roof rack|minivan|hatchback|sedan|suv|jeep|delivery truck|buggy) [(can|could|will|would|is able to)] [(only|just)] (haul|hauls|take|takes|carry|carries|fit|fits|hold|holds|handle|handles|bring|transport) [(only|just|nothing but|up to)]
		(i|we|they) (can|could) (only|just) (haul|transport|carry|load|fit in [the] (truck|van|car))`},
	{Kind: Quest, Key: "cuts", Ways: "(what|how long) (would|will|should|do|are|must|did|is) [(the|my|all the)] (RAIL|POST|STIFF|they|these) [(all)] [(be|get|been|have to be|need to be)] CUT [(to|at|down to)]"},
	{Kind: Quest, Key: "posts", Ways: "where (they|it) (would|will|should|must|might|ought to|do|does) (stand|be standing|be set|be planted)\nwhere (would|will|should|must|might|do|does) (they|it) (stand|be standing|be planted)"},
	{Kind: Quest, Key: "marks", Ways: "where (do|does|should|would|will|must) [(the|my|our|all the|these)] [pencil] (ticks|tick|marks|mark|lines|line|tickmarks) (go|come|land|fall|sit|belong) (on|onto|along|up|upon|in|at) [(the|each|every|my)] [(ADDED|END)] POST"},
	{Kind: Quest, Key: "options", Ways: "what (fits|works|goes|would fit|will fit|could fit|can fit|would work|will work|could work|would go) (then|now|instead|in there|without (it|that|one))"},
	{Kind: Fill, Key: "fill", Ways: `
		(on|with|using) [(a|my|the|his|her)] (calculator|computer|laptop|tablet|fingers)
		for (swelling|expansion|seasonal movement|wood movement|humidity|swelling up|damp|wet weather|the wet season|wet season)
		(PAPER|PERSON) 's (figure|figures|number|numbers|dimension|dimensions|measurement) (is|are) (fine|good enough|fine with me|fine by me|good with me|ok with me|okay with me|good by me)
		(i|we|she|he|they) (like|likes|love|loves|liked|loved|prefer) (that|this|the) (last|latest|previous) (one|try|version|idea|change|combination|layout|setup|design|arrangement)`},
}
