package lexicon

// rowsAndRacks are words of a class, an inspection and a counter: who speaks up from which bench, what its rulers show, what is pulled off
// which rack, beside those of the classroom.
var rowsAndRacks = []Entry{
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		(which|what) [(words|phrases|things|sentences|expressions|terms)] (can|could|may|should|do|would|might) (i|we|you|one|PERSON) [(use|say|ask|type|write)] [(when|if|to|for|whenever)] [(i|we|one|you|they|he|she)] [(want to|wish to|need to|like to|am|are)] (talk|talks|talking|speak|speaks|speaking|ask|asks|asking) about
		(which|what) (questions|things|sort of questions|kinds of questions) (can|could|may|should|do|would|might) (i|we|one|PERSON) (put|ask) [(to)] (you|it) about
		how (can|could|may|should|do|would|might) (i|we|you|one|PERSON) [(best|properly)] (phrase|word|put) (things|something|anything|questions|it) about`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[(one|another|that|this|some)] PERSON [(in|at|by|from|near|over in|over by|over at|on|off)] [(back|front|first|second|third|last|middle|other|far|next)] (row|rows|corner|bench|table|window|door|desk|counter|group|class|team|crew|seat|seats) [(just|also)] (SAYS|DRAWS|has got|came up with|comes up with|works it out as|worked it out as|worked it out to be) [that]`},
	{Kind: Head, Key: "check", Ways: "(sheet|page|drawing|plan|detail|exhibit|schedule|elevation) [(number|no|no .|nr)] NTH [also] (SAYS|SHOWS|calls for|claims)"},
	{Kind: Tail, Key: "verify", Loose: true, Ways: "(can|could|would|will) (you|we|somebody|someone) (verify|confirm|check) [(that|it|this|them|those|these)] [(for ME|please)]"},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: `
		[(school|class|classroom|shop|workshop|steel|wooden|wood|folding|metal|student|plastic|cheap|old|brass)] (ruler|rulers|rule|tape|tapes|yardstick|yardsticks|tape measure|tape measures|measuring tape) [(only|just)] (go|goes|read|reads|show|shows|is marked|are marked|mark|measure|measures|is divided|are divided|is graduated|are graduated|have marks|has marks|have lines|has lines|resolve|resolves|come|comes) [(only|just)] [(down to|to|in|every|down as far as|as far as|as fine as|for every)]
		(nothing|no|not|none|never) [(any)] finer than`},
	{Kind: TailFill, Key: "work to it", Loose: true, Ways: "[so] [let us] (work|measure|mark|round) [(everything|it all|them all)] to (that|it)"},
	{Kind: Fixed, Key: "fixed", Ways: "(has|have|had|got|was|were) [(already|now|just)] [(been|gotten|got)] (fixed|screwed|mounted|installed|hung|fastened|attached|nailed|bolted|secured) [(up|in|on|down|in place|into place)] [(already|now|for good)]"},
	{Kind: Extra, Key: "extra", Ways: "(PERSON|he|she|they) also (need|needs|want|wants|will need|will want|would like|asked for|ordered|orders|is after|are after|wanted|needed)"},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: "[post] (base|foot|standoff|shoe) (under|beneath|below|underneath|of|at the foot of|at the bottom of) (|added|new) POST (holds|lifts|keeps|raises|carries|stands|props) [(it|that|them|POST)] [up]"},
	{Kind: Quest, Key: "drawing", Loose: true, Ways: "(show ME|let ME see|want to see|see|wonder) how (that|it|this|everything|wall) [(would|will|is going to|should|might)] (look|looks)"},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		(i|we) (will not|am not|are not|do not|would not|can not|refuse to|hate to|hate|would rather not|do not want to|would sooner not|have no wish to) [be] [(going to|about to|want to|care to)] (set|setting|move|moving|reset|resetting|shift|shifting|change|changing|adjust|adjusting|fiddle with|fiddling with) [(my|the|a|that|our)] (stop|stop block|stops|saw stop) [(twice|again|more than once|over and over|every time|each time|for (every|each) (one|RAIL|bay)|between (cuts|bays|boards))]`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		where [(exactly)] [(do|does|should|must|will|shall|can|would|ought)] [(i|we|he|she|they|PERSON)] [to] (scribe|strike|scratch|score|snap|pencil|draw|make|put|square|knife) [(my|the|all|all my|our|his|her|their)] (lines|line|marks|mark|ticks|tick marks|pencil lines|layout lines|layout marks)`},
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: `
		(take|walk|lead|talk|guide|bring|run|step) (ME|PERSON|class) (step by step|one step at a time|a step at a time|slowly|line by line|piece by piece|bit by bit|carefully|gently|patiently) through [(how|where|why)]`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		[at (school|college|work|home|the shop|our shop|our place|our school|the office)] (i|we|they|PERSON) [(always|only|usually|all|normally)] (do|does|measure|measures|mark|marks|cut|cuts|build|builds|think|thinks|teach|teaches|learn|learns|use|uses|work out|works out|write|writes|reckon|reckons|figure|figures) [(everything|it all|things|all|all of it|all our work|our sums|our drawings|only)] in (metric|millimeters|millimetres|mm|centimeters|centimetres|cm)`},
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		[at (school|college|work|home|the shop|our shop|our place|our school|the office)] (i|we|they|PERSON) [(always|only|usually|all|normally)] (do|does|measure|measures|mark|marks|cut|cuts|build|builds|think|thinks|teach|teaches|learn|learns|use|uses|work out|works out|write|writes|reckon|reckons|figure|figures) [(everything|it all|things|all|all of it|all our work|our sums|our drawings|only)] in (inches|feet and inches|imperial|customary units)`},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: `
		PERSON [(only|just|also)] (can|could|will|would|may|is willing to|is able to|wants to|is prepared to|is happy to|has got|has) [(only|just)] [to] (spend|pay out|lay out|fork out|shell out)`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		(what|which) [(all|lumber|stuff|wood)] (do|should|must|shall|can|will|would) (i|we|he|she|PERSON) (pull|grab|fetch|take|load|haul|pull down|bring|lift|pick) [(off|from|out of|down from|down off|down)] (rack|racks|shelf|shelves|yard|bin|bins|pile|stack|lumber rack|lumber racks|warehouse) [for (this|that|his|her|their|it) (order|job|wall|customer|one|PERSON)]
		(what|which) [(all|lumber|stuff|wood)] (do|should|must|shall|can|will|would) (i|we|he|she|PERSON) (pull|grab|fetch|load|haul|pull down) for (this|that|his|her|their|it) (order|job|wall|customer|one|PERSON)`},
	{Kind: Quest, Key: "shopping", Ways: "what is (that|it|this|all that) [all] in (boards|wood|lumber|timber|material|materials)"},
	{Kind: Fill, Key: "fill", Ways: `
		(i|we|there) [(already)] (have|are|have got) [(my|the|our)] two [END] POST [(already|now)] (standing|up|in place|set|in the ground|there) [(already|now)]
		(i|we) [(just|also)] (noticed|saw|discovered|realized|realised|spotted|learned|learnt|found out|gather|see) [that] (they|yard|store|shop|lumberyard|merchant|supplier) sell
		[please] (count|include|figure) (those|them|these) in [(as well|too|also)] [please]
		it would be (nicest|best|ideal|handiest|perfect|preferable|most convenient|easiest|safest|lovelier|nicer) if
		(a (woman|man|boy|girl)) at (counter|desk)`},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: "[(space|distance|room)] between (their|the) [(inside|inner|facing|two)] faces"},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: "(whatever|any|whichever|all the) POST (we|i|you|they) (add|put|set|stand|place) [(in between|between|in)]"},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: "[(in)] between ones (at|on) [(both|either)] (ends|end)"},
	{Kind: Measured, Key: "measured", Ways: "(tape|tape measure|measuring tape|laser|laser measure|steel rule) [(now|here|there)] (reads|read|says|shows|gives|comes to|makes it|measures) [me]"},
	{Kind: Part, Key: "kerf", Sense: Meaning("kerf"), Ways: "[saw] (blade|saw) (takes|eats|cuts|turns|chews|burns|nibbles) (away|up|off|out)"},
}
