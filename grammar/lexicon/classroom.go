package lexicon

// classroom are words of whoever speaks for a class or a crew: groups at their benches, what they ask, what they taped.
var classroom = []Entry{
	{Kind: Fill, Key: "fill", Ways: `
		(okay|ok|all right|alright|now|listen up|so|hey|hi|hello|good morning|morning|well|right) (everybody|everyone|class|folks|gang|people|team|kids|students|boys and girls|ladies and gentlemen|crew|fellas|friends)
		(listen up|eyes up front|settle down|quiet please|pay attention|heads up) [(everybody|everyone|class|folks|gang|people|team|kids|students)]
		[(somebody|someone|PERSON|one PERSON|a PERSON|group|bench|table|team)] [(NTH)] [(in|at|by|over by|from)] [the] [(back|front|corner|window|middle|far side|back row|front row|third row|second row|door)] (is|was|are|keeps|just|has been) (asking|asked|wondering|curious|asking ME|asking about|asking ME about|wondering about|dying to know|itching to know)
		one of [(my|the|our|these|his|her|their)] [(own)] PERSON (wants|would like|needs|asked|is asking|is dying|was asking|is wondering|wonders|asks|is curious) [(to know|ME|about|to hear|to see|to ask)]
		(some|a few|a couple|two|several|most|all) of [(my|the|our|these)] PERSON (want|would like|need|asked|are asking|are dying|were asking|are wondering|wonder|ask|are curious) [(to know|ME|about|to hear|to see|to ask)]
		[(a|some|one|the)] PERSON (in|at|by) [the] [(back|front|third|second|first|last)] (row|corner|window|back|front|middle|door) (wants|would like|is dying|needs) to (know|hear|see)
		class (dismissed|is over)
		[(my|our|the)] (first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth) (graders|grade|period|hour|class|grade class|group) (want|wants|need|needs|would like|voted for|voted on|chose|decided on|picked|like|likes|agreed on|settled on)
		[(my|our|the)] (PERSON|class|family|everybody|everyone) (voted for|voted on|decided on|settled on|agreed on|opted for|went for)
		[up] on [the] (projector|screen|whiteboard|blackboard|monitor|smartboard|tv)
		(school|class|shop) (is|'s) out
		who [(here|in class)] (can|could|will|knows|wants to) [(tell ME|show ME|say|work out|figure out)]
		(can|could) (anybody|anyone|somebody|someone) [here] (tell ME|show ME|say)
		(he|she|they|PERSON) (gets|get) [the] (contractor|pro|trade|builder|senior|member) (price|pricing|discount|rate)
		let us [(go ahead and)] (start|begin|open|kick off|lead off) [(the|this|our|today's)] [(exercise|lesson|problem|class|day|session|period|job|project|unit|example)] (with|from|by|on|at)
		(for|in|to start) (the|this|our|today's) (exercise|lesson|problem|example|session|period|unit|assignment)
		(kids|students|teenagers|teens|freshmen|sophomores|juniors|seniors|apprentices|beginners|boys|girls|children|they) (will|always|tend to|do|are going to|usually) (ruin|waste|wreck|spoil|botch|mess up|miscut|break|lose) [(a lot of|some|plenty of|lots of|good)] (lumber|wood|boards|material|things|stuff|it) [(,)] (so|hence)
		(teenagers|teens|kids|students|freshmen|beginners|children) (ruin|waste|wreck|spoil|botch|mess up|miscut|break) [(a lot of|some|plenty of|lots of|good)] (lumber|wood|boards|material|things|stuff) [(,)] (so|hence)
		[(that is|there is|there goes)] [(the|our)] (bell|school bell|last bell) [(rang|just rang|has rung|is ringing|went|is about to ring|rings)] [(,|so)]
		[(the|this)] (class|period|lesson|hour|school day) (is|'s) (over|done|out|up|dismissed) [(,|so)]
		(out of|with|on|for) this (one|job|wall|build|project|assignment)
		(last|previous|prior) (year|semester|term|week|period|fall|spring) 's
		by (trades|trade)
		as [the] (teacher|instructor)`},
	{Kind: Have, Key: "have", Ways: `
		[(the|my|our|last)] [(year|semester|term|period)] ['s] (PERSON|group|class|crew|bunch|owner|owners|tenant|tenants|school) left (ME|behind|us with|me with)
		(left|gave|handed|donated|passed on|handed down|bequeathed|brought|sent) (us|me) [(with|down)]
		(a|some|one of our|one of my|the) PERSON (donated|gave us|gave me|dropped off|brought in|sent over|sent us|contributed|let us have)
		(inherited|scrounged|scavenged|salvaged|reclaimed|rescued|saved up|held on to|held onto)
		(we|i) (was|were|got|have been) (given|donated|left|handed|gifted)`},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: `
		[the] (ORG|PERSON|district|principal|department|office|PTA|pta|parents|boosters|grant) (gave|gives|allotted|allots|allowed|allows|granted|grants|approved|approves|budgeted|budgets|set aside|sets aside|put up|is giving|is allowing|has given|handed) (me|us|the class|the project|my class|our class) [(a|up to|to spend)]
		(i|we|he|she|they|PERSON) (got|was|were|have been|has been) (allotted|granted|allowed|budgeted|approved for) [(up to)]
		(in|from) petty cash`},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: "[in] between [(the|both|two|both the)] (ends|end ones)"},
	{Kind: Side, Key: "right", Sense: Meaning("opening side"), Ways: "(on|at|to|over on|over at) [the] RIGHT [(hand)] [(side|end)] [(right|hard|tight|snug|smack|flush)] [up] (against|beside|next to|alongside|by) [the] [END] POST"},
	{Kind: Side, Key: "left", Sense: Meaning("opening side"), Ways: "(on|at|to|over on|over at) [the] LEFT [(hand)] [(side|end)] [(right|hard|tight|snug|smack|flush)] [up] (against|beside|next to|alongside|by) [the] [END] POST"},
	{Kind: Units, Key: "metric", Loose: true, Ways: "(working|units|dims|dimensions|figures|numbers|measurements|everything|all dims|all figures) [(:|=|-|all)] (mm|millimeters|millimetres)\n(i am|we are|i work|we work|everything is|all is|tape is|it is) [working] in (mm|millimeters|millimetres|cm|centimeters|metric) [(,|and)] not [in] (inches|imperial|feet|feet and inches)\nin (mm|millimeters|millimetres|cm|centimeters|metric) [(,|and)] not [in] (inches|imperial|feet|feet and inches)"},
	{Kind: Units, Key: "customary", Loose: true, Ways: "in (inches|imperial|feet and inches) [(,|and)] not [in] (mm|millimeters|millimetres|cm|centimeters|metric)"},
	{Kind: HaveTail, Key: "have", Ways: "[left] [over] from [the] (last|previous) (year|semester|term|job|project|time|summer|fall|spring|class|week|build)"},
	{Kind: Part, Key: "spare", Sense: Meaning("spare | rails, have"), Ways: "(kids|people|we|they|boys|students|teenagers|beginners|i|folks|apprentices|everybody|somebody) [(always|will|do|usually|tend to|are going to|will always)] (make|makes|making) [(a few|some|lots of|a lot of)] mistakes [(,)] so"},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: "[(the|my|our|his|her)] (PERSON|ORG|wife|husband|boss) (will|would|does|do) not (let|allow|want) (me|us|him|her|them) [to] (spend|go|pay) [(any)] [(over|more than|above|past)]"},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: "[(the|my|our|his|her|their)] (tapes|rulers|rules|yardsticks|tape measures|tape measure|measuring tapes|measuring tape|yardstick|folding rule|steel rule) [(we have|we use|in shop|in class|here)] [(only|just|all|are|is)] [(only|just|all)] (go|goes|read|reads|show|shows|marked|mark|measure|measures|have|has|graduated|are marked|are graduated) [(only)] [(down to|to|in|down in)]"},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: "one (in (the|) middle|in between|between them|between the ends|standing between)"},
	{Kind: Head, Key: "check", Loose: true, Ways: "(one|another|this one|that one) PERSON (SAYS|DRAWS|got|gets|came up with|comes up with)\n[on] PAPER [(no|number)] NTH (SAYS|SHOWS|DRAWS|has|have|calls for|gives)"},
	{Kind: Head, Key: "check", Ways: "(on|per|in|from) PAPER [(no|number)] NTH (it says|they show|,|:)\n(on|per|in|from) PAPER (no|number) NTH\n(per|as per) [(his|her|their|our|my|the)] [PAPERKIND] PAPER [(:|-|,)]"},
	{Kind: Tail, Key: "claimed", Ways: "(per|according to|as per) [the] [PAPERKIND] (PERSON|PAPER)"},
	{Kind: Enter, Key: "enter", Ways: "(take|accept|use|treat|enter|adopt) [(the|his|her|their|these|those)] [PAPERKIND] [(PAPER|PERSON)] ['s] (figures|numbers|values|dimensions|measurements) [(as (given|read|stated|shown|it is|they are|they stand|drawn|gospel|correct|right|mine)|(from|off|on|in) [the] PAPER)] [:]"},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: "(state|read|list|give|recite|repeat|say|read out|read off) [ME] what (you|we|i) (have|got|have got) [(on record|on file|down|noted|so far|noted down|written|recorded|entered|in there)] [(for ME|so far|up to now)]"},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: "how (do|can|should|would|might|could) [(my|the|our|these)] (PERSON|class|he|she|they) (ask|talk|speak|say something|say things|tell you|say anything) (about|of|on)\n(how|what) (do|can|could|should) (i|we|you|one|they) (say|ask|tell you) (stuff|things|something|anything) (about|on|for)\nwhat (stuff|kind of stuff|sort of stuff) (do|can|could) (i|we) (say|ask) about"},
	{Kind: Quest, Key: "options", Loose: true, Ways: "what (are|would be) (my|the|our|their|his|her|your|all the|all my) (choices|options|possibilities|alternatives) [(for|on|as to|in|with)] [(number|count) of RAIL]"},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: "(any|what|which|are there any) (hazards|dangers|risks|cautions|warnings|concerns|issues|problems) [that] (i|we) (should|must|ought to|need to|have to) (note|know about|flag|point out|report|write up|cite|mention|raise|bring up|record|put in my report|look into)"},
	{Kind: Loc, Key: "more or less nothing", Sense: Meaning("| *"), Ways: `
		one (above|over|on top of|atop|upon|below|under|beneath|after) (another|next|other|last)
		[stacked] one on (another|other)
		from (floor|ground|bottom) up
		(up|all the way up) WALL`},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		every (bit|scrap|part|piece|line|step|word|last bit|last step|last line|single bit|single step|single line|number|detail) of (it|that)
		(put|write|throw|spell|lay|get|print) [(the|your)] (whole|full|entire|complete) (calculation|sum|derivation|working|workings|arithmetic|math|proof|solution) [(up|out)] [(on|for)] [(the|a)] [(screen|board|projector|wall|whiteboard|blackboard|ME|class)]`},
	{Kind: Quest, Key: "steps", Loose: true, Ways: `
		(what|which) [(job|part|bit|step|thing|piece|task)] [(do|does|should|shall|must|will|would|can|ought)] [(i|we|they|he|she|you|PERSON|class)] [(to)] (tackle|attack|start on|start with|begin with|begin on|take on|knock out|get to|get going on|work on|have at|dig into|jump on|go at) [(first|first of all|to begin)]
		(what|which) [(job|part|bit|step|thing|piece|task)] [(do|does|should|shall|must|will|would|can)] (they|he|she|PERSON|class) (do|build|make|cut|mark|put up|set up) first
		how (do|does|should|would|shall|can) (they|he|she|PERSON|class) (start|begin|go about it|go about this|get started|proceed|build it|build this)
		(what|in what|which|in which) (order|sequence) [(do|does|should|shall|must|will|would|can)] (they|he|she|PERSON|class) [(do|work|build|go|put)] [(things|it|this)] [(in|together|up)]`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		what [(all)] [(do|should|must|would|have)] (i|we) [(have|need|ought)] [(to)] (warn|caution|alert|remind|tell) (them|him|her|PERSON|class|everybody|everyone) (about|of|to watch for|to watch out for|to look out for|to be careful of|to be careful with)
		(anything|something) [(that)] (i|we|he|she|they|PERSON) (should|ought to|need to|needs to|has to|have to|must|had better) (warn|caution|watch|look|mind|know|worry|be careful|be told|be warned|beware|tell|keep) [(for|out for|about|of|with|on|them about|him about|her about|PERSON about|an eye on|them of|in mind)]
		what (should|must|does|do|ought|will) (he|she|they|PERSON) [(have|need|ought|want)] [(to)] (watch|look|worry|be careful|beware|mind|watch out|look out|be wary|be warned|take care|know) [(for|out for|about|of|with)]`},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		[all] RAIL [(have to|must|should|need to|ought to|can|could|are to|will|want to|to|all)] (come off|leave|come out of|come from|go through|come through) [the] saw [(at|all|with|all at)] (one|a single|the same|an equal|an identical|same|identical|equal) (length|size|setting|measurement)
		(one|a single|just one|only one) stop [block] [(setting|position)] (for|does) (all|every|them all|the lot|RAIL|the whole batch)
		(one|a single|the same) (length|size|cut) (across|throughout|right through|all round|all around) [(the board|all of them)]
		(only|just) [(have to|want to|need to)] (set|setting|set up|setting up|move|adjust|clamp) [(the|a|one|our|my)] [single] stop [block] once
		(only|just) (set|setting|set up|setting up|using|use|need|clamp|clamping|make|making) [up] (one|a single) stop [block]
		so [that] (i|we|they|he|she|PERSON) [(can|could|only|just|only have to|just have to|only need to)] [(have to)] (set|move|clamp|touch) [the] stop [block] [(just|only)] once`},
	{Kind: Measured, Key: "measured", Ways: `
		(tapes|taped|ran a tape on|put a tape on|put a tape to|pulled a tape on|laid a tape on|held a tape to|checked|shot) (it|that|this|them|the span|the thing) [(at|to be|as)]
		and (came up with|got|get|gets|read|reads|came to|made it|makes it|found|called it|came out at)`},
	{Kind: Head, Key: "state", Loose: true, Ways: `
		(PERSON|he|she|they|group NTH|team NTH|(first|second|third|fourth|fifth|sixth|seventh|last) (period|hour|class|group|bench|table|team|crew|shift)) [(just|has|have)] (taped|ran a tape on|put a tape on|put a tape to|pulled a tape on|laid a tape on|remeasured) [(it|that|this|them|the span|the thing)] [(at|to be|as)]
		(PERSON|he|she|they|(first|second|third|fourth|fifth|sixth|seventh|last) (period|hour|class|group|bench|table|team|crew|shift)) [(just|has|have)] measured [(it|that|this|them|the span|the thing)] [(at|to be|as)]`},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts | post height, post from left, post from right, ?posts"), Ways: "POST [(to|will|are to|going to|should)] (get|gets|be|are|is|getting|being) (added|put in|put|set|set in|slipped in|inserted)"},
	{Kind: Head, Key: "state", Loose: true, Ways: "as (measured|taped|found|surveyed) [(,|on site|in the field)]\n(i|we) [(also)] (find|found|note|noted|observe|observed|noticed) [that]"},
	{Kind: Head, Key: "check", Loose: true, Ways: "(is|does|do|can|could|would|will) (the|his|her|their|that|this|a) (total|bill|cost|quote|price|sum|bid|estimate) of"},
	{Kind: Head, Key: "check", Loose: true, Ways: "according to (group|bench|team|table|pair|row|student|desk|crew|bidder|period|lane|station) NTH\n[(the|this|their|your)] [PAPERKIND] [PAPERKIND] set (shows|calls for|calls out|gives|indicates|lists|specifies|states|notes|has them at)\nPAPER (by|of|at|from) [the] (another|other|rival|next|big box|second|different) (store|yard|lumberyard|shop|outfit|place|PERSON|dealer) (SAYS|SHOWS|DRAWS|has|calls for|comes to|is)"},
	{Kind: Head, Key: "why", Ways: "what (did|do|are|were) (you|they|we) (base|based|basing)"},
	{Kind: Head, Key: "why", Loose: true, Ways: "why (does|did|do|would) the (design|layout|program|computer|app|machine) (need|want|have|use|take|call for|require|say|show|give|come out with)"},
	{Kind: Tail, Key: "verify", Loose: true, Ways: "(is|are) (correct|true|accurate|valid|in order|as it should be)"},
	{Kind: Part, Key: "trim", Sense: Meaning("trim"), Ways: "(when|after|once|each time|every time) (i|we|you|he|she|they) (square|squared|squares|trim|trims|true|clean up|cleans up) [(up|off)] [(the|its|each|an|one)] (end|ends|it|board|boards|piece|pieces) [(up|off)]"},
	{Kind: Reason, Key: "reason", Ways: "(as|since|because) (we are|we will be|i am|they are) (only|just)"},
}
