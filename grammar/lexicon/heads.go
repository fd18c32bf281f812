package lexicon

// heads say with what force the rest is said: tried, asked for its reason, claimed, wished.
var heads = []Entry{
	{Kind: Head, Key: "what if", Loose: true, Ways: `
		what if
		[so] what happens if
		what would happen if
		what will happen if
		how would it (be|look|fall out|come out|go|work out|turn out) (if|were)
		suppose [that]
		supposing [that]
		imagine [that]
		pretend [that]
		say that
		let us (say|suppose|pretend|imagine|assume|try)
		(assume|assuming) [that]
		what [would] change if
		(try|trying|test) (with|out|it with)
		try
		if
		and if
		could (we|i|you) (do|have|use|get|fit|go|get by|manage|squeeze|run|make do|get away)
		could (we|i) put
		(can|will|would|might) you [(still|ever|really)] (get by|get away|manage|make do|scrape by) with
		can (we|i) (do|have|use|get|fit|go|get by|manage|squeeze|run|put|make do|get away)
		can you (do|fit|manage|squeeze|get)
		(would|will|could|might|can) it be possible
		is it possible
		would it (work|fit|do|go) (if|with)
		will it (work|fit|do|go) (if|with)
		does it (work|fit|go) (if|with)
		(could|can) i get by with
		(what|how) does it (look|do|come out|go) (if|with)
		is there room for
		do we have room for
		what would it take
		how would it look (with|if)
		what becomes of it if`},
	{Kind: Head, Key: "what if", Ways: "(what|how) about"},
	{Kind: Head, Key: "say", Ways: "say"},
	{Kind: Head, Key: "why not", Loose: true, Ways: `
		why not
		why (can|could|will|would|is|are|does|do|should|must|may) not
		how come (can|could|will|would|is|are|does|do|should) not
		(what|why) (stopping|stops|keeping|keeps|preventing|prevents|blocking|blocks|holding|stop|keep) (me|us|you|it|WALL) from
		(what|why) (stopping|keeping|preventing|blocking) (me|us|you|it) [from]
		what wrong with
		what the (matter|problem|trouble|objection) with
		(what|why) (rules|ruling|rule) out
		what is it that rules out
		what (stands|gets|is) in the way of
		what (stands|is) against
		what speaks against
		why (can|could|would) never
		reason (we|i|you|it|that) (can|could) not
		what (have|got) [you] [got] against
		why (is|was) it not possible [to]
		(why|how come) (is|was) not it (possible|allowed|permitted|feasible|an option) [for (me|us|you)] [to] [(have|fit|get|use|put|take|make|squeeze)] [in]
		(why|how come) (is|was) it (impossible|out of the question|forbidden|prohibited|not allowed|not permitted|a bad idea|no good|not on|wrong) [for (me|us|you)] [to] [(have|fit|get|use|put|take|make|squeeze)] [in]
		(why|how come) it is (impossible|out of the question|forbidden|prohibited|not allowed|not permitted|a bad idea|no good) [for (me|us|you)] [to] [(have|fit|get|use|put|take|make|squeeze)] [in]
		(why|how come) [is] it not
		what forbids
		what would be wrong with
		why did you not
		(why|how come) am i not [allowed]
		why do you not
		(what|why) makes (it|that) impossible`},
	{Kind: Head, Key: "why", Loose: true, Ways: `
		why
		how come
		how (get|got|figure|figured|reach|reached|calculate|calculated|derive|derived|compute|computed|determine|determined|decide|decided|arrived|obtain|obtained)
		how (come up with|work out|worked out|arrive at|arrived at|land on|landed on|settle on|came up with|came by|come by|came to|come to|come at|got to|get to|end up with|ended up with|work that out|come out with|figure out)
		how [anyone|anybody] gets
		how (is|was|are) (worked out|calculated|computed|figured|derived|determined|arrived at|decided)
		explain
		(explanation|reason|reasoning|logic|rationale|justification|thinking) (for|behind|of)
		reason
		(what|why) (makes|made) it
		what (makes|made|causes|caused|forces|forced|is making|gets|got|brings|brought|has|had) (it|this|that|you|wall|the wall|things) [to] (come to|come out at|come out to|come up with|be|end up at|end up with|work out to|work out at|turn out|total|add up to|land on|land at|settle on|settle at|arrive at|say|pick|choose|want|need|take|call for|ask for)
		(what|where) (|does|did) come from
		justify
		what (is|was) (reasoning|logic|thinking) (for|behind)
		account for
		on what grounds
		what (drives|determines|decides|dictates|forces|led|leads) [(to)]
		where did you get
		where do you get
		where you (got|get)
		where did (come from)
		for what reason
		talk me through why
		how do you know
		what justifies
		tell me why
		how so`},
	{Kind: Where, Key: "where", Sense: Meaning("| opening side, ?posts, ?marks"), Ways: "where"},
	{Kind: Tail, Key: "why", Loose: true, Ways: "come from\ncame from\ncomes from"},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[(the|my|one of my|a|the other|other)] PERSON [(before me|next door|three|two|one|at the yard|down the (road|street)|here|across the street)] [(also|just|is|are)] (SAYS|DRAWS) [down] [(me|us)] [that]
		[(the|my|one of my)] PERSON [(before me)] (is|are) (sure|positive|certain|convinced|adamant|telling me|telling us|claiming|saying|of the opinion|thinking|insisting) [that]
		it [also] (says|shows|claims|states|lists)
		PERSON PAPER (SAYS|SHOWS|is|has) [(that|me)]
		PAPER [(i was handed|they gave me|in hand|he made|from the yard|i got)] (SAYS|SHOWS) [(for|that|me|us)]
		[PERSON] PAPER [for (material|materials|lumber|job|wall|wood)] (is|was|comes to|came to|comes in at|came in at|runs to|amounts to|totals) [for]
		PERSON (has|have|had) [(it|them)] (at|with|as|for)
		(according to|per|going by|by|in|on|as per) [(the|his|her|their)] PAPER
		according to PERSON
		PAPER (:|-)
		PERSON PAPER (:|-)
		is it (true|right|correct|so|the case|a fact) [(what PERSON says)] [(,)] [that]
		is it (true|right|correct|so) that
		(can|could) it be (true|right|correct) that
		is (true|right|correct) that
		[can you|could you|please] (check|chk|verify|confirm|double check|doublecheck|recheck|validate|vet|test) [(this|that|these|whether|if|out|it|for me|against|me on)] [(for me|please|that|:|-)]
		(can|could) you (confirm|verify) [that]
		do i have [it] right [that]
		am i right [that]
		have i got [it] right [that]
		am i correct that
		PERSON wants to know [(if|whether)]
		PERSON asks [(if|whether)]
		somebody (pencilled|penciled) in
		someone (pencilled|penciled) in
		there is a claim [that]
		i was told [(that|by PERSON)]
		i have been told [that]
		i (heard) [that]
		word is [that]
		supposedly
		allegedly
		apparently
		(is|are) there (really)
		(PERSON) (also|then) (SAYS|SHOWS)
		(tell|show) me (if|whether)
		(see|find out) (if|whether)
		i (figured|calculated|reckoned|came up with)
		my (answer|figure|calculation|result|sum|guess) (is|was)
		the claim is
		claim
		claims
		claimed`},
	{Kind: Theirs, Key: "theirs", Ways: "his\nher\ntheir\n(hers|theirs) (is|are|was|were|comes|reads)\nPAPER 's\nPERSON 's\n(neighbor|neighbors|neighbour|neighbours|builder|contractor|guy|designer|salesman|yard|inspector|architect|joiner|carpenter) is"},
	{Kind: Head, Key: "state", Loose: true, Ways: `
		(i|we) (would like|want|need|wish|would love|would prefer) (you|it) to [(use|make|keep|set|have|get|go with|build it with|do it with|aim for)]
		(i|we) [(do|must|will|would|have to)] (insist|demand|require|stipulate) [(on|that)]
		(i|we) (was|were) (hoping|wanting|looking|aiming) to [(have|get|use|build|put|put up|put in|make|go with|see|end up with|leave|keep|set|run|do)]
		(i|we) (want|wanted|need|prefer|asked for|ask for|would like|would rather|would have|say|said|told you|specified|decided|will have|measured|measure|make|made it|will go with|am going with|are going with|will take) [(it|them|that|those)] [to (be|have)]
		(mine|ours) (measure|measures|measured|is|are)
		(mine|ours)
		(i|we) only want
		for mine
		my own
		in fact
		i have measured
		by my (tape|measure|measurement|count)
		with mine
		i said
		here is what i want
		what i want is
		what i said was
		(would|could|can|will) you [please] [(mind|just|go ahead and)]
		would you mind if (we|i)
		would you be so kind as to`},
	{Kind: Enter, Key: "enter", Ways: "(put|enter|take|note|write|punch|type) (it|that|this|them|those|these) (in|down)\ngo ahead and (enter|use|take|put in) (it|that|those|them|these)\n(use|take|go with|enter) (those|them|that|these|it)\n(i|we) will (use|take|go with) (those|them|that|it)\nset (it|them|that) so"},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		is that (right|correct|true|so|sound|okay|ok|accurate|possible|a fact|it|the case|good|fine|legit|plausible|even possible|right or wrong)
		are (those|these|they) (right|correct|true|so|sound|ok|okay|accurate|good)
		(that|is that|is it|is this|this|it|sound|does that seem|does that sound|does it seem|does it sound|seem|sounds|seems|does that look|look|looks) (legit|legitimate|kosher|on the level) [to you]
		(that|is that|is it|is this|this|it) (on the money|on the mark|halfway right|anywhere near right|anywhere close) [to you] ?
		(whether|if) (that|it|this|he|she) is (right|correct|true|so)
		(that|is it|is this|this) (right|correct|true|so|sound|ok|okay|accurate)
		can (that|it|this|they) be (right|correct|true|so|it)
		can that be
		can that work out
		could that be (right|correct|true|so)
		could that be
		does that (pass|come out|hold|hold up|hold water|work out|add up|check out|sound right|make sense|look right|square|agree|tally|check|work|match|seem right|compute)
		does it (come out|hold|hold up|hold water|work out|add up|check out|make sense|square|agree|tally|work|check)
		do (they|those|these) (come out|hold|hold up|work out|add up|check out|agree|tally|work|check)
		does that all (work|hold|add up|fit together)
		(right|true|correct) or (wrong|not|false|incorrect)
		(yes|true|right) or no
		is (he|she|PERSON) (right|correct|wrong)
		are they (right|correct|wrong)
		did (he|she|they|PERSON) (do|get) (it|that|them) right
		(has|have) (he|she|they|PERSON) got (it|that) right
		(did|have) i (do|get|got) (it|that|this) right
		am i right
		who is right
		right ?
		right ok ?
		correct ?
		true ?
		is it (right|correct|true|so|possible)
		check (that|it|this|them|those)
		verify (that|it|this|them)
		(chk|check|verify|confirm) (that|it|this|them) [(please)]
		, (check|verify|confirm|chk)
		yes or no
		would you agree
		do you agree
		agreed ?
		what do you say
		how does that hold up
		true or false
		am i wrong`},
	{Kind: Tail, Key: "verify", Ways: "(that|is it|is this|this) possible"},
	{Kind: Tail, Key: "fit", Loose: true, Ways: `
		(would|will|could|can|does|do|might) (that|it|they|this|those) (fit|work|do|go|be possible|be ok|be okay|be enough|be all right|suffice|go in|hold|be fine)
		is that possible
		(|would|will|could|can) (fit|fits)
		would do
		work out [ok]
		still (work|fit)
		(be|is) possible
		what then
		would work
		will work
		be (ok|okay|enough|allowed|fine|all right)
		what happens
		that (fit|work|ok)
		is that ok
		does (that|it|this) fit`},
	{Kind: GoesIn, Key: "fit", Ways: "squeeze [in]\ncram [in]\nfit in\nfit\nfits\ngo in\ngo\nwork\ndo\nhold\nwork out\nstill work"},
}
