package lexicon

// relations are the words that stand between a quantity and its value, and those that change a value.
var relations = []Entry{
	{Kind: Rel, Key: ">=", Ways: `
		at [very] least
		>=
		=>
		(no|not|never) [(any)] (less|fewer|smaller|narrower|shorter|lower|tighter|closer|nearer|thinner|slimmer|skinnier|littler) than
		(no|not|never) (below|under|beneath)
		(nothing|anything but) (less|smaller|narrower|shorter|lower|under|below) [than]
		(minimum|min) of
		upwards of
		nothing (tighter|closer) than
		(no|not) (nearer|closer) [(FLOOR)] than`},
	{Kind: Rel, Key: "<=", Ways: `
		at [very] most
		at the outside
		<=
		=<
		up to
		(no|not|never) [(any)] (more|greater|bigger|larger|wider|longer|taller|higher|further|farther|looser|thicker|fatter|broader|roomier) [apart] than
		(no|not|never) (over|above|exceeding|beyond|past)
		nothing (over|above|beyond|past)
		nothing (looser|bigger|larger|wider|taller|higher|longer|fatter|broader|roomier) than
		(maximum|max) of
		without exceeding
		or under or equal
		capped at
		limited to
		less than or equal [to]
		under or equal to`},
	{Kind: Rel, Key: ">=", Ways: "(greater|more) than or equal [to]"},
	{Kind: Rel, Key: "<", Ways: `
		<
		(less|smaller|narrower|shorter|lower|fewer|tighter|closer|nearer|thinner|slimmer|skinnier) [(apart|together)] than
		anything (under|below|beneath|less than|smaller than|narrower than)
		short of`},
	{Kind: Rel, Key: ">", Ways: `
		>
		(more|greater|bigger|larger|wider|longer|taller|higher|further|farther|thicker|looser|fatter|broader|roomier|upward|upwards) [apart] than
		(exceed|exceeds|exceeding)
		anything (over|above|beyond|past)
		in excess of`},
	{Kind: Under, Key: "<", Ways: "under\nbelow\nbeneath"},
	{Kind: Over, Key: ">", Ways: "over\nabove\npast\nproud of\nbeyond\nhigher than\ntaller than\nover [the] top of\nabove [the] top of\npast [the] top of\nover and above"},
	{Kind: Rel, Key: "=", Ways: "as\n(held|fixed|pegged|locked|pinned|frozen|parked|settled|nailed) (at|right at)\ndown (as|for|at)\n=\n==\nequals\n(equal|equals|equalling) to\namounts to\n(adds|add|added|adding|sums) up to\n(tops|top|topping) out at\ncomes (to|out at|out to|in at)\nworks out (to|at|as)\nexactly equal to\n:="},
	{Kind: Lim, Key: ">=", Ways: "lower limit\nmin\nminimum\nmin .\nas a minimum\nat a minimum"},
	{Kind: Lim, Key: "<=", Ways: "(upper|) limit\nceiling\nmax\nmaximum\nmax .\nas a maximum\nat a maximum"},
	{Kind: Bound, Key: ">=", Ways: "or (more|better|wider|over|above|greater|up|larger|bigger|higher|taller|longer|upwards|thicker|fatter|broader|looser|roomier)\nand (up|over|above|more|upwards)\n+ or more\nat least\nnot less\nno less\nno fewer\nand no less\nand not less"},
	{Kind: Bound, Key: "<=", Ways: "or (less|fewer|under|below|smaller|lower|narrower|shorter|tighter|thinner|closer|skinnier|slimmer)\nand (under|below|less)\ntops\nat most\nat the most\nat the outside\nno more\nand no more\nnot more"},
	{Kind: Bound, Key: "=", Ways: "no more and no (less|fewer)\nno more no less\nno (less|fewer) and no more\nexactly\non the (nose|dot|button)\neven\non the money\nto the inch\nno more nor less\nneither more nor less\nsharp\nflat\ndead on"},
	{Kind: About, Key: "~", Ways: "about\n[right] around\nroughly\napproximately\napprox\napprox .\nca\nca .\nabt\nnearly\nclose to\nsomewhere (around|near|about|close to)\nin the (neighborhood|neighbourhood|region|vicinity|ballpark) of\n~\ncirca\nmore or less\nas near as (possible|you can) to\nor thereabouts\ngive or take\nor so\nish\nor something like that\nor near it\nor close to it\nballpark"},
	{Kind: Between, Key: "between", Sense: Meaning("gap, added post size"), Ways: "BETWEEN\n(somewhere|anywhere|anything|someplace) BETWEEN\nin the range [(of|from)]\nin a range (of|from)\nranging (from|between)\nrange (from|between)\nwithin"},
	{Kind: From, Key: "from", Ways: "from\nsomewhere from\n(anywhere|anything) (from|of from)"},
	{Kind: To, Key: "to", Ways: "to\n(go|went|going|goes) (up|down) to\ntill\nuntil\nthrough to\nup to [at most]\nto (maybe|say)"},
	{Kind: And, Key: "and", Ways: "and\n&"},
	{Kind: But, Key: "but", Ways: "but\nthough\nyet\nwhile\nwhereas\nhowever\nexcept\nand yet"},
	{Kind: Or, Key: "or", Ways: "or\nor else\nor maybe\nor perhaps"},
	{Kind: Dots, Key: "..", Ways: "..\n...\n...."},
	{Kind: Not, Key: "not", Ways: "not\ninstead of\nrather than\nas opposed to\nnever\nwithout\nskip\nomit\n(do|get by|go) without\nnone\nnothing\nnobody\nneither\nnor"},
	{Kind: No, Key: "no", Ways: "no\nnope\nnah\nnay"},
	{Kind: Fix, Key: "fix", Ways: `
		(no|nope|nah|oh|oops|whoops|ah|er|hm|hmm|uh) (no|wait|sorry|hang on|hold on|actually|rather|make that|i mean|excuse me|pardon)
		(wait|hang on|hold on|hold it) [(no|sorry|actually)] [(make that|i mean)]
		(wait|hang on|hold on) a (minute|second|sec|moment|bit)
		(no|nope|nah) (no|wait|hang on|hold on) [(sorry|actually|make it|make that|i mean)]
		(oh|oops|whoops|oops no|sorry no|no sorry|oh no|oh sorry|actually no|no actually|ah no|er no)
		sorry [(i meant|i mean|make that|that is|no|it is|that should be|should be)]
		i [(do)] mean
		i meant [(to say|that)]
		[(no|or|sorry)] make (that|it|her)
		[no] scratch (that|it)
		[no] strike that
		[(no|or)] rather
		[(no|or)] better
		[(i|we) would] better (say|make it|make that|have)
		or rather
		or better
		or (actually|no)
		actually
		actually make (it|that)
		i beg your pardon
		beg pardon
		pardon [me]
		excuse me
		my mistake
		correction
		(but|no) (it|that) should be
		[(but|no|and)] (it|that) should have been
		should have (been|said)
		that should be
		(let|let us) (make|say|call) (it|that)
		[well] call (it|that)
		on second thought [(make it|make that)]
		come to think of it
		change that to
		(no|nope|nah) (let|let us) (make|say) (it|that)
		i take that back
		(oops|whoops)
		[oh] (i|we) [have] changed (my|our) mind
		[oh] changed my mind
		but (having|after|since i) (measured|measuring|checked|looked|remeasured) [it] [(once more|again)] [it is]
		but [in fact] it is (really|actually|more like)
		make (that|it) [(instead|rather)]
		instead of that
		(not) that
		nope
		i misspoke
		i misread [(it|that)]
		better (make|say) (it|that)
		no better
		lemme (change|fix) that
		(let me) (change|fix|correct) (that|it) [to]
		read that wrong
		got that wrong
		(no|oh) i meant
		what i (mean|meant) is`},
	{Kind: Up, Key: "up", Ways: "up"},
	{Kind: Down, Key: "down", Ways: "down"},
	{Kind: Off, Key: "off", Ways: "off [of]"},
	{Kind: Out, Key: "out", Ways: "out [of (there|here|it)]\nin"},
	{Kind: Move, Key: "move", Ways: "(switched|switching|swap|swaps|swapped|swapping|changed|changing|altered|adjusted|adjusting|knocked|knocking|bringing|pushed|pushing|moving|bumped|bumping|nudged|nudging|shifted|shifting|shove|shoves|shoved|shoving|scoot|scoots|scooted|scooting|drag|drags|dragged|slides|slid|turned into)\n(move|moves|moved|bring|brings|brought|bump|push|pull|nudge|knock|shift|slide|change|changes|switch|alter|adjust|come|slip|suck|pinch)"},
	{Kind: Change, Key: "+=", Ways: `
		(raise|raises|raised|raising|increase|increases|increased|increasing|add|adds|adding|widen|widens|widened|lengthen|lengthens|enlarge|enlarges|expand|expands|grow|grows|boost|heighten|heightens|climb|climbs|climbed|grew|grown|rose|ease|eases)
		(stretch|spread|loosen|extend|up) [out] (it|them)
		spread
		(open|opens|opened|spread|loosen|extend|bump) [(it|them)] (up|out) [(by)]
		(bump|bring|move|push|take|pull|nudge|jack) (it|them|that) up
		(more|extra)
		put (another|on another)
		lift
		+
		+=
		plus`},
	{Kind: Change, Key: "-=", Ways: `
		(lower|lowers|lowered|lowering|reduce|reduces|reduced|reducing|decrease|decreases|shrink|shrinks|shrinking|shrunk|shrank|tighten|tightens|tightened|tightening|narrow|narrows|narrowed|narrowing|shorten|shortens|shortening|shortened)
		(dropping|losing|shaving|lopping|subtracting|deducting|subtract|deduct|minus|lose|loses|shave|shaves|shaved|lop|lops|lopped|trimmed|knock|trimming|snug|pinch|close|remove|removes|removing|drops|dropped)
		(close|closes|tighten|snug|shrink|draw|pull|bring|suck|pinch) [(it|them)] (in|up|down|together)
		(take|takes|took|taking|shave|cut|trim|knock|pull|lop|slice) [(it|them)] (off|out|away|down|back)
		(bump|bring|move|push|take|pull|nudge) (it|them|that) down
		(pull|take|drop|leave) out
		-=
		take away
		take out
		cut [(it|them)] (down|back) [by]
		(cut|trim) by
		pare`},
	{Kind: More, Key: "+=", Ways: "more\nwider\nfatter\nbroader\nbigger\nlarger\ntaller\nhigher\nlonger\ngreater\nlooser\nfurther apart\nfarther apart\nthicker\nroomier\nadditional\nextra\nmore generous\nmore room\nhigher up"},
	{Kind: More, Key: "-=", Ways: "less\nfewer\nnarrower\nskinnier\nslimmer\nsmaller\nshorter\nlower\ntighter\ncloser [together]\nthinner\nlow\nnarrow\nfurther down\nfarther down\nless high\nless wide\nlower down"},
	{Kind: ThanNow, Key: "now", Ways: "than (it|they|that|there) (is|was|are|were|do|does) [(now|today|at the moment|currently|before|already)]\nthan (now|before|that|this|i said|i told you|i have|at present|what it is|what we have|planned)\nwhat it is [now]\n(it|they) (is|are) (now|at present|at the moment)\n(what|of what) (it|they) (is|are) [now]\n(as|than) it stands\nfrom (what it is|where it is|now)\non top of (that|what it is|what we have)\nthan (i|we) (said|told you|gave you|told|have)\ncompared (to|with) now\nas (big|wide|large|high|tall|long)"},
	{Kind: Another, Key: "+=", Ways: "another\n(a|one) further\nyet another"},
	{Kind: Factor, Key: "2", Ways: "(double|doubled|doubles|doubling|twice|two times|twofold|2x)\n(double|twice|two times) as (ADJ|much|many) [as]"},
	{Kind: Factor, Key: "3", Ways: "(triple|tripled|thrice|treble|three times)\n(three times|thrice) as (ADJ|much|many) [as]"},
	{Kind: Factor, Key: "4", Ways: "(quadruple|quadrupled|quadruples|fourfold|four times)\n(four times) as (ADJ|much|many) [as]"},
	{Kind: Factor, Key: "5", Ways: "(quintuple|quintupled|fivefold|five times)\n(five times) as (ADJ|much|many) [as]"},
	{Kind: Factor, Key: "1/2", Ways: "(halve|halved|halves|halving)\nhalf (the|of|as much as|that|its)\nhalf as (ADJ|much|many) [as]\ncut [(it|them)] in half\nin half\nby half"},
	{Kind: Factor, Key: "3/2", Ways: "halfagain (ADJ|much|many) [as]\nhalf as (ADJ|much) again [as]"},
	{Kind: Times, Key: "times", Ways: "times\ntimes as (much|wide|big|large|high|tall|many) [as]"},
	{Kind: Same, Key: "=", Ways: `
		same [(HEIGHT|WIDTH|size|distance|gap|thing|amount|space|spacing)] as
		[exactly] (as|just as|exactly as) (HIGH|WIDE|big|large|much|long|small|tight|deep|far|many) as
		(equal|identical|even|level|flush|equals|equalling) (to|with)
		equal
		equals
		[(to|should|must|has to)] (match|matches|matching|matched) [(up with|with|to)]
		same
		in line with
		as there is
		flush with
		even with
		level with
		same as
		as much as
		as it is
		(what|whatever) (is|are)
		to be same as
		identical
		eq`},
	{Kind: Rest, Key: "rest", Sense: Meaning("gap"), Ways: `
		[(as|like)] (rest|others|other ones|other gaps|all other gaps|other spaces|all others|rest of (them|GAP)|everywhere else|elsewhere|everywhere)
		[(as|like)] [(you got|you have|we have|there is)] [(in)] BETWEEN [the] others
		[(as|like)] [(you got|you have|we have|there is)] in between
		[as] above [it]
		as [in] BETWEEN
		[as] (normal|regular|usual|ordinary) GAP`},
	{Kind: Best, Key: "largest", Ways: "[as] (BIGGEST)\nas (BIG|high|tall) (a|an)\nas (BIG|high|tall|loose|generous) as (|it|they|one|you|that|we|i) (POSSIBLE) [(possibly|ever)] [(be|get|go|make it|make)]\nas (BIG|high|tall) as (POSSIBLE)\nas (BIG|high|tall) as it (gets|goes)\n(maximize|maximise|maxed out)\n(largest|maximum) possible\nas (BIG|high|tall) as you (like|please|dare)"},
	{Kind: Best, Key: "smallest", Ways: "SMALLEST\nas (SMALL|low) (a|an)\nas (SMALL|low) as (|it|they|one|you|that|we|i) (POSSIBLE) [(possibly|ever)] [(be|get|go|make it|make|get it|make them|get them)]\nas (SMALL|low) as (POSSIBLE)\nas tight as (they|it|you) (go|gets|get)\n(minimize|minimise)\nas (SMALL) as (you|we) (can|dare) [(get|go|get away with)]\nas (tight|close) [together] as (they|it) (will|can) go"},
	{Kind: Best, Key: "fewest", Ways: "fewest [possible]\nas few\n(least|minimum|min|smallest|lowest) (number|count|no|amount|quantity|qty) [.] of\nas few (of|as possible)\nlowest possible (number|count) of\nas little number of"},
	{Kind: Best, Key: "most", Ways: "(maximum|max|most|largest|greatest|highest|biggest) (number|count|no|amount|quantity|qty) [.] of\nas many\nmost\nmore the better\n(cram|pack|squeeze|get|fit|stuff|put|jam) [(in|)] as many\nas many [(of)]\nhighest possible (number|count) of"},
	{Kind: BestTail, Key: "tail", Ways: `
		as (|you|i|we|it|they|one|that|can) (POSSIBLE) [(ever|possibly)] [(get|go|fit|do|be|fit in|get in|make|manage|have|use|squeeze in|cram in|get away with|get by with)] [(in|away with)]
		as (will|can|could|would) (fit|go|do|do the job|work|get in|go in|fit in|hold)
		as possible
		possible
		(you|we|i|that) (can|could) (get|do|have|make|manage|find|get away with) [out of (it|that|this)]
		you can
		out of (it|that|this)
		(you|we|i) (can|could) get (away with|out of (it|that|this)|by with)
		that (fit|fits|work|works|will fit|will work|will go in|go in|is allowed)
		that will (fit|go|work|do)
		as (you|we|i) are able
		as (fit|fits)
		(allowed|permitted)
		it can be
		you can do
		as you like
		you can manage
		i can (get|have)
		we can get away with
		that it allows
		as (job|wall|space|layout|rules|code|span|room) (allow|allows|permit|permits|need|needs|takes|will allow|can take|can hold|will take)
		that (are|is) (possible|feasible|allowed|permitted)
		as will do
		as they come
		as can be`},
	{Kind: Vague, Key: "vague", Ways: "(at|to|by|with) (usual|customary|normal|standard|regular|ordinary|accustomed) (distance|distances|interval|intervals|spot|spots|place|places|spacing)\nwhere they (usually|normally|always|customarily) (go|stand|sit|belong|are)"},
	{Kind: Vague, Key: "vague", Ways: "(hair|tad|smidge|smidgen|touch|bit|skosh|whisker|scosh|mite|notch|nudge|trifle|fraction|couple|few|some|several|handful|something|somewhat|slightly|yay|normal|usual|average|regular|standard|typical|decent|sturdy|bunch|lots|lot|plenty|many|much|enough|odd|bitty|little|ample|reasonable|sensible)"},
}
