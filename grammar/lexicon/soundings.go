package lexicon

// soundings are more ways to sound somebody out: what fits, what to buy, what it comes to, what may go wrong, and help.
var soundings = []Entry{
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		(what|which) [(all|different|other)] (RAIL|GAP|board|rail) (counts|combos|combinations|numbers|setups|totals) [(actually|really)] (pan|pans|check|work|come) out
		(what|which) [(all|different|other)] (counts|combos|combinations|numbers|setups|mixes) [of RAIL] [(actually|really)] (work|fit|go|pass|do|pan out|work out|check out|make it|would pass|are legal|are allowed|are there|are possible|could i use|can i use|could we use|can we use)
		(what|which) (counts|combos|combinations|numbers|setups) of RAIL (would|will|could|can|might|do|actually|really) (work|fit|go|pass|pan out|work out|check out)
		(lay|spell|read|run|set) [ME] [out] [(my|the|our|all|all the|all my)] (options|choices|possibilities|alternatives|combos|combinations) [(out|off|down)] [for ME]
		(run|go|walk|take) [ME] (through|over) [(my|the|our|all|all the|all my)] (options|choices|possibilities|alternatives|combos|combinations) [(with|for) ME]
		(what|which) is on the (menu|table) [for (RAIL|GAP) [(counts|count|sizes)]]
		(rundown|run down|list) [(on|of)] [everything] what (fits|works|will fit|will work|would fit|would work|goes|is possible)
		how many different (RAIL) (counts|numbers) [(could|can|would|will|might|do)] [(i|we)] (work|works|fit|get away with|use|have|pick|choose from)
		what would fit (in|within) (a|this|that|the) WALL [(this|that|so)] [(high|tall|low|long|short)]
		is there (more than one|another|any other|a different|only one|just one) way to (do|build|make|lay out|fit|divide) (this|it|that|the wall)
		anything else [(that|which)] (would|could|might|will|can) (work|fit|go|do)
		what else is (possible|there|open to ME|on the table)`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		(what|which) (height|heights) [(do|does|should|must|will)] BRACKET (screw|screws|mount|mounts|fasten|fastens|attach|attaches|bolt|bolts|go|hang) [(in|on|to|at|up)] [(at|on)] [POST]
		(read|call|give|tell|sing|rattle) [ME] [(off|out)] [(the|my|all the)] (marks|heights|lines) [(from)] (bottom to top|top to bottom|bottom up|top down|low to high|lowest to highest|in order)`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		what (do|should|would) (i|we) set [(my|the|our)] (stop block|stop|saw|fence|chop saw|miter saw|mitre saw|saw stop) (at|to|for)
		where (do|should|would) (i|we) set [(my|the|our)] (stop block|saw stop|stop on the saw)
		how (tall|long|high) (do|should|must|shall|would) (i|we) CUT [(the|each|every|that)] (added|new|extra|) POST
		(what|which) (cut|cutting) length [(is|are)] [it] (for|in|on|of) [(the|each|every)] (BAY|RAIL|STIFF|POST)`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		what (should|do|must|shall|would|will) (i|we) (throw|load|put|toss|stick|pile|stack) (in|into|on|onto) [(my|the|our)] (cart|truck|trailer|van|pickup|wagon|trolley|buggy|basket)
		[(give|make|get|write|print|need|want|like|have)] [ME] [(a|the|my)] list [(for ME)] to (take|bring|carry|hand|give|show) [(with ME|along)] (to|down to|over to|at) (the|) (store|yard|lumberyard|lumber yard|shop|hardware store|counter|clerk|guy|merchant)
		what (do|should|would) (i|we) (ask|tell) [(the)] (guy|fellow|clerk|man|lady|people|folks) [(at|behind|in)] [the] (yard|counter|store|lumberyard|lumber yard|shop|desk) [(for|to (bring|pull|load|get|give) ME)]
		what (does|would|will) (it|this|the wall|the job) (use|take|need|eat|require) (in the way of|by way of|in) (lumber|wood|timber|material|materials|boards)
		how many (two by sixes|two by fours|2x6s|2x4s|footers) (do|should|must|would|will) (i|we) (buy|need|get|order|pick up|grab|load)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		how (deep|far) (into|in) [(my|our|the)] (wallet|pocket|pockets|pocketbook|savings|purse) [(do|does|will|am|are)] [(it|this|that|i|we)] (go|going|reach|dig)
		how much [(am|are|will)] (i|we) [(be|going to be)] (out|down|set back|in for|on the hook for) [(then|for (it|this|that|all this|everything))]
		how (big|large|bad) [a] (bill|tab|hit|check|total) [(is|will|would|am|are)] [(it|that|this|i|we)] [(be|looking at|expect)]
		(hit|lay|break) [it] [on] ME with (the|your) (total|price|number|damage|bad news)`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(anything|what) [that|else] (i|we) (am|are|might be|could be|may be) (forgetting|missing|overlooking|leaving out|not seeing|not thinking of)
		what (am|are) (i|we) (forgetting|missing|overlooking|leaving out|not seeing|not thinking of)
		what (am|are) (i|we) not (thinking of|seeing|considering|aware of)
		(could|can|will|would|might) (a|some|the|my) (kid|child|toddler|baby|dog|somebody|someone|anybody|person) [(ever)] (fall|climb|slip|squeeze|crawl|get) (through|over|under|off|out|stuck) [(it|in it|there|here)]
		(could|can|will|would|might) (somebody|someone|anybody|anyone|people|kids) [(ever)] (fall|climb|slip|squeeze|crawl|get hurt|get stuck) [(through|over|under|off|on)] [(it|in it|there|here)]
		(will|would|can|does) (it|this|that|the wall) (hold|hold up|stand up|take it|give) (if|when) (somebody|someone|anybody|anyone|people|a man|kids) (leans|lean|sits|sit|pushes|push|climbs|climb) [(on|against|up)] [it]
		what is [(the|its)] (weak|weakest|trouble|sore|danger) (spot|point|link|part)
		(any|what|are there any|got any) (red flags|land mines|landmines|bear traps|trouble spots|weak spots|weak points|safety worries)`},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		what is (driving|pushing|running|jacking) up`},
	{Kind: Tail, Key: "teach", Ways: "(by hand|with a pencil|with pencil and paper|without a computer|without you)"},
	{Kind: WhyFill, Key: "over there", Ways: "(right|over|way over|out|way out|clear over) there"},
	{Kind: Fill, Key: "over there", Ways: "(right|over|way over|out|way out|clear over) there"},
	{Kind: Fill, Key: "no odd number", Ways: "[and] not (a|an|some) [(nice|plain)] (even|round|whole|rounder|clean|cleaner|simple|simpler) (number|figure|inch|size|one)"},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		how (do|can|could|should|would|to) (i|we|you|one) (change|edit|alter|adjust|update|modify|correct|switch|redo) [(my|the|your)]
		what (do|should|would|can) (i|we) (say|type) (for|about|to set|to change)`},
	{Kind: Cmd, Key: "help", Loose: true, Ways: "how (do|can|could|should|would) (i|we|you|one) (save|open|print|compare) [(a|the|my|this|it|that|something|things|one|anything|two)] [(plan|plans|wall|walls|layout|design|job)]"},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Loose: true, Ways: `
		what (are|were|did|do|have) (you|we) [(got|been)] (using|use|used|taking|take|took|assuming|assume|assumed|counting|figuring|figured) (for|as|on)`},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: `
		(read|say|tell|give|repeat) [ME] back (everything|it all|all of it|the lot|what you have)
		(what|which) (numbers|figures|values|measurements|facts) (are|were|do|have) (you|we) [got] (working with|working from|going by|going on|using|have|down|so far)`},
	{Kind: Tail, Key: "means", Ways: "(mean|stand for|refer to)"},
	{Kind: Unclear, Key: "unclear", Ways: "what am i looking at here"},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		(define|(definition|meaning) of)
		what (do|does|did) (you|he|she|they|people|carpenters) (mean|call) (by|with)
		what is meant by`},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Loose: true, Ways: `
		(i|we) (would be|am|are) (interested|curious|keen|eager|anxious) (to (know|hear|see|learn|find out)|in (knowing|hearing|seeing|learning))
		(would|will|might|could) you be able to (say|tell ME|show ME|give ME|work out|figure out)
		(would|will|might|could|can) you happen to (know|have|recall|remember)`},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		(i|we) (am|are) not [(quite|really|too|very|entirely|exactly|so)] (clear|certain) [(on|about|as to|of)] (why|how come|how you (got|get|came up with|arrived at))`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(anything|something) [(about|in|with|on) (this|it|that|here|the (wall|plan|layout|design))] (that|which) (ought to|should|might|could|would|may|needs to) (worry|concern|trouble|bother|scare|alarm) ME`},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		[(it|that|this|which)] (does not|do not|makes no) [make] [(any|much|a lot of)] sense [to (me|us|him|her)] [(,|:|-)] (why|how come)`},
	{Kind: Fill, Key: "lead", Ways: `
		pray [tell] [(ME|,)]
		[(i|we)] [(have|got|have got)] [(a|one|another|a quick|one more)] question [(for you)] [(:|,|-)]`},
	{Kind: OffEach, Key: "tolerance", Loose: true, Ways: `
		(i|we|he|she) (miss|missed|misses) (each|every) [(single)] (mark|cut|board|rail|one|line) by
		(i|we|he|she) (am|are|is|was) (off|out) by`},
}
