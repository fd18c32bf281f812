package lexicon

// turns are more turns of phrase: what leads up to a part, and relations that are said in other words.
var turns = []Entry{
	{Kind: Fill, Key: "fill", Ways: `
		as (for|to) [(the matter of|the question of)]
		as (regards|concerns)
		as far as (goes|is concerned)
		(in|with) (regard|regards|respect|reference) to
		(regarding|concerning|re)
		when it comes to
		when we (come|get) to
		on the (subject|matter|question|topic) of
		speaking of
		(coming|going|getting|moving) on to
		(goes|is concerned|are concerned) ,
		(wise) ,
		wise
		(i|we) (am|are|was|were) (after|looking for|looking at|aiming for|aiming at|hoping for|going for|shooting for|settled on|set on|thinking of|leaning toward|happy with)
		what (i|we) (am|are|was) (after|looking for|aiming for|going for|hoping for|shooting for) (is|are)
		(i|we) (settled|have settled|decided|have decided|agreed|have agreed|landed|fixed|have fixed|went|have gone) (on|upon)
		(i|we) [(have)] (picked|chosen|selected|gone with|picked out|chose)
		in mind
		is where (i|we) [would] (like|want|need|see|have|put|am aiming|prefer) [(it|for)]
		is where (it|that|this) (should|must|has to|needs to|ought to) (be|end up|land|come out)
		is (what|where) we (are aiming|want to be|need to be|settled)
		(put|jot|mark|note|pencil|write|set) (down|in)
		(wrote|scribbled|scrawled|copied) (down|out)
		(i|we) (am|are) (figuring|counting|planning|banking|going) [(with|on)]
		what (i|we) (have|had) [got] in mind is
		(is|are|was|were) what (i|we|he|she|they|PERSON) (have|had|has) [got] in mind
		(is|are|was|were) what (i|we|he|she|they|PERSON) (am|are|is|was|were) (thinking of|thinking about|picturing|imagining|hoping for|planning|planning on)
		(is|are) what (i|we) (am|are) (after|looking for|going for|aiming for)
		(gets|get|got) (up|down|over) (there|here)
		by (design|choice)
		if (anyone|anybody|somebody|someone) asks
		no matter what
		(at|in) any (rate|case|event)
		for what it is worth
		(end|ends|ended) up (being|at|with)
		if i had my (way|druthers)
		given (the|my|a) choice
		in (this|that|the) (instance|respect|regard)
		(across|throughout) the (board|whole (job|wall|thing))
		(all|everything) told
		(nice|good) and (snug|even|tight|wide|high|low|neat|straight|sturdy|solid)`},
	{Kind: About, Key: "~", Ways: `
		near enough [to]
		nigh on
		just (about|under or over|around)
		close (on|enough to)
		(near|thereabouts|near about|nearabouts|ballparkish)
		pretty (much|near|close to)
		(in|on) or (around|about)
		on or (around|about)
		somewhere in the (neighborhood|neighbourhood|region|vicinity|ballpark|area|order) of
		(something|someplace|somewheres) (like|around|near|close to|about)
		(of|in|on) the order of
		as near as makes no (difference|odds|never mind)
		plus or minus a (bit|little|hair|tad)
		or so
		(or|and) (thereabouts|something|close|near enough|nearabouts|in that neighborhood|around there|near there|round about that|around that)
		give or take (a|an) (bit|little|hair|tad|inch|smidge|whisker)
		in that (neighborhood|neighbourhood|ballpark|vicinity|region|range)
		more or less
		round about`},
	{Kind: Rel, Key: "<=", Ways: `
		(no|not|never) (any) (more|greater|bigger|larger|wider|longer|taller|higher|looser|thicker) than
		at (a|the) [(very|absolute)] (maximum|most|max) [of]
		with a (maximum|max|ceiling|limit|cap) of
		(maxes|max|maxing|maxed) out at
		(capped|limited|restricted|confined) (at|to)
		held to
		can (be|go) as (much|many|high|wide|big|long|large|far) as
		may (be|go) as (much|many|high|wide|big|long|large|far) as
		could (be|go) as (much|many|high|wide|big|long|large|far) as
		not to (exceed|go over|go past|go above|top|pass|surpass)
		never to (exceed|go over|go past|go above|top|pass)
		anything up to
		stays (under or at|at or under|at or below)
		at or (under|below)
		(the) most (is|would be)`},
	{Kind: Rel, Key: ">=", Ways: `
		at (a|the) [(very|absolute|bare)] (minimum|least|min) [of]
		with a (minimum|min|floor) of
		not to (be|go|fall|drop|get) (below|under|beneath|less than)
		(no|not|never) (any) (less|fewer|smaller|narrower|shorter|lower|tighter|closer|thinner) than
		at or (over|above)
		no (smaller|narrower|shorter|lower|tighter|closer|less) [in width] than
		(the) least (is|would be)
		anything from [(the)]`},
	{Kind: Bound, Key: "<=", Ways: `
		and (never|not) [(a|one|any)] [(bit|hair|inch|penny|millimeter|mm|touch|tad|whisker)] (more|wider|higher|over|longer|bigger)
		(never|not) [(a|one|any)] [(bit|hair|inch|penny|millimeter|mm|touch|tad|whisker)] (more|wider|higher|over|longer|bigger)
		(but|and) (no|not|never) [any] (more|wider|higher|longer|bigger|over|larger|taller)
		at (a|the) [(very|absolute)] (maximum|most|max)
		(absolute|tops|top) (maximum|max|tops)
		if that
		max'd`},
	{Kind: Bound, Key: ">=", Ways: `
		and (never|not) [(a|one|any)] [(bit|hair|inch|penny|millimeter|mm|touch|tad|whisker)] (less|narrower|lower|under|shorter|smaller)
		(but|and) (no|not|never) [any] (less|narrower|lower|shorter|smaller|under|fewer)
		at (a|the) [(very|absolute|bare)] (minimum|least|min)
		(absolute|bare) (minimum|min)
		if not (more|wider|higher|longer|bigger)`},
	{Kind: Same, Key: "=", Ways: `
		ditto [(as|for)]
		(match|matches|matching|matched) [(up)] [(with|to)] whatever
		(same|just the same|exactly the same) as whatever
		(as|exactly as|just as) (HIGH|WIDE|big|large|much|long|small|tight|deep|far|many|thick) as whatever
		(finish|finishes|end|ends|stop|stops|come|comes|be|sit|sits|run|runs) (flush|even|level) (with|to)
		(in line|flush|even|level|dead even|dead level) with`},
	{Kind: ThanNow, Key: "now", Ways: `
		to (what|the ones|those|the number) [that] (i|we) (have|have got|got|said|planned|asked for) [(now|already|so far|there)]
		than (what|the) (it|they|we|there|i) (is|are|was|have|have got|had|said) [(now|at present|today|currently|so far|at the moment)]
		than (at present|currently|at the moment|right now|today|before|earlier|previously|is planned|was planned|is drawn|originally planned|the plan|originally)
		than (you|i|we) (have|had|got|put|planned|said|told you|asked for|have got|wanted) [(it|now|down|there)]`},
	{Kind: More, Key: "+=", Ways: "more [height|width|room|space|length]\nfurther (up|out|along|over)\nfarther (up|out|along|over)\nfarther\nfurther"},
	{Kind: Rel, Key: "<=", Ways: `
		(limit|restrict|confine)
		(upper|top) limit [(of|is|at)]
		(ceiling|maximum|cap|limit) (of|at)`},
	{Kind: Between, Key: "between", Sense: Meaning("gap, added post size"), Ways: "(somewheres|something) BETWEEN"},
	{Kind: Rel, Key: "=", Ways: "(tops|top|topping) out"},
	{Kind: Rel, Key: ">=", Ways: "(lower|bottom) limit [(of|is|at)]\n(floor|minimum) of"},
	{Kind: Fixed, Key: "fixed", Ways: "(i|we) [have] [already] (hung|fixed|mounted|installed|screwed|nailed|bolted|fastened|attached) [(up|in|on)] [already]\n[already] (nailed|hung|screwed|bolted|fastened|mounted|set) (up|in|in place) [(already|now|for good)]\n(in|up) already\n(can not|can not be) (move|moved|moving)"},
	{Kind: Fill, Key: "fill", Ways: `
		(buy|get|order|purchase) (exactly|only|just|no more than) what (is|we|i) (need|needed|have to)
		(lay|work|plan|set|arrange|figure) (it|things|everything|this|the wall|the boards) [out] so [that]
		(stops|floats|hovers|floating|hovering|topped)
		(fill|fills|filling) [up]
		can you (believe|imagine) (it|that)
		would you believe [(it|that)]
		believe it or not
		wrong (before|earlier|last time|the first time|yesterday|at first)`},
	{Kind: BestTail, Key: "tail", Ways: "as [the] (brackets|hardware|posts|boards|lumber|rule|rules|code|law|inspector) (allow|allows|permit|permits|let|lets|will allow|will permit|will let) [(me|us|you)]\n(you|we|i) (can|could|are able to) (give|offer|manage|find|make|get) [ME]\n(you|we|i) can squeeze in"},
	{Kind: Part, Key: "rail", Sense: Meaning("rails"), Ways: "(board|rail|slat|plank) (count|tally|total|qty)\n(boards|rails|slats|planks) (count|tally)"},
	{Kind: Head, Key: "state", Loose: true, Ways: `
		(try|trying|aim|aiming|hoping|hope|attempt|strive) to (get by|do|make do|get away|get along|manage|live|keep|keep it|stay|stick|build|build it|use|have|get|make it|leave|go) [(with|to|at)]`},
	{Kind: Fix, Key: "fix", Ways: `
		(actually|no|wait|sorry|or|better|rather|hang on|hold on|well no|no wait|oh no|scratch that|correction) [(,)] (let us|let me|i will|we will|i would|we would) (say|call|call it|make it|go with|take|have|do|use)
		(actually|no|wait|sorry|or|better|hang on|hold on) [(,)] (say|call it|make it|go with|put|use)
		(not) quite [(right)] [(,)]
		(actually|no|wait|sorry) [(,)] (i|we) (want|need|would like|would rather|would prefer|will have)
		(wrong|not right) [(,)] (it is|make it|that is)`},
}
