package lexicon

// hearsay are still more ways in which somebody's figures come up, beside the plain ones of heads and claims, and in which it is
// asked whether they hold.
var hearsay = []Entry{
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[PERSON] [PAPERKIND] PAPER for (material|materials|lumber|job|wall|wood|hardware|everything|the lot|it all|the whole thing|the whole job|all of it) [(and|plus|&) (hardware|brackets|posts|materials|lumber|wood|everything|fittings)] (is|was|comes to|came to|comes in at|came in at|comes out at|came out at|runs to|amounts to|totals|adds up to|works out to|works out at|stands at|says) [for]
		PAPER (i|we) (was|were|am|are|have been|got) (handed|given|sent|shown|quoted|told|mailed|emailed|texted) [(by|from) PERSON] (is|was|comes to|came to|comes in at|came in at|comes out at|came out at|runs to|amounts to|totals|adds up to|works out to|says|has|shows|calls for) [for]
		(quote|bid|quotation) [(of|at|is|was|came in|came in at|came to|came back|came back at|came back as|came out at|comes back at)]
		PERSON 's (saying|claiming|telling ME|insisting|of the opinion|certain|convinced|quoting|proposing|suggesting|reporting|showing|sure|positive|swearing) [that]
		[(lumber|hardware|building|general)] PERSON (sent|gave|handed|mailed|emailed|texted|wrote|made|left|showed|got|brought|offered) ME (a|an|the|his|her|their|this) PAPER (of|for|at|saying|that says|showing|with|which says|that has)
		PERSON [(at|from|in|behind) (counter|yard|desk|register|till|store|shop|mill|office)] (rang|rung|rings|adds|added|totaled|totalled|totted|toted|figured|tallied|priced|worked|wrote|sized) (it|that|everything|me|us|the lot|it all|it everything) [all] (up|out|in) [(at|to|for|as)]
		(other|last|previous|old|next) PERSON (SAYS|DRAWS|cut|cuts|has cut|sawed|made|marked|marks|put) [(that|ME)]
		PERSON (is|has|have|had) [(already|just)] (sawn|sawed|chopped) [(all)]
		PAPER (is|are|was|were|'s) (showing|calling for|calling out|saying|asking for|giving|listing|specifying|claiming|telling ME|putting|drawing|quoting|using|assuming)
		(one|other|another|our|my|each|first|second|next|last) (group|team|pair|table|class|half|side) (got|gets|found|came up with|comes up with|worked out|works out|figured|calculated|SAYS|wrote) [that]
		is [(his|her|their|PERSON 's)] (total|grand total|bottom line|bill|quote|estimate|price|bid) (of|at) [really]
		(i am|we are|i have been|we have been|we were) (told|informed|advised|assured|given to understand|hearing) [by PERSON] [that]`},
	{Kind: Head, Key: "check", Ways: "PERSON put\n[(the|my|our|other|second)] PERSON would [(just|simply|also|then|rather|always)] (cut|make|have|use|put|go) [with]"},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		(does|do|will|would|can) (that|it|this|they|those|these) [(really|even|actually)] fly
		(is|was|are|were) (that|it|this) what (it|that|they|he|she|i|we|you|the RAIL) (takes|take|should be|ought to be|needs|need|comes to|come to|should come to|get|gets|would be|must be|really is|really are|is supposed to be|are supposed to be)
		(was|were) (that|it|those|they|this) (right|correct|true|so|sound|ok|okay|accurate|about right)
		(sound|sounds|look|looks|seem|seems) (about|roughly|more or less) (right|correct|ok|okay|fair)
		(has|have) (he|she|they|PERSON) (goofed|slipped up|messed up|blundered|miscounted|misfigured|botched it)
		(should|can|do) (i|we) (sign off on|buy|swallow|go along with|rely on|bank on|count on) (that|it|this|those)
		(does|do|would|will) (that|it|this|those|they) (pass|get by|fly with|get past|satisfy) (the inspector|inspection|code|muster)`},
	{Kind: Tail, Key: "fit", Loose: true, Ways: "do you (suppose|think|reckon|guess|figure|believe)"},
	{Kind: Fill, Key: "fill", Ways: `
		(you|we|i|one|they) [(can|could|will|only|might)] (get away|get by|make do|manage) with
		(easier|simpler|quicker|faster|handier|neater|tidier) (for ME|that way|all round|to (cut|mark|build|handle|stack|remember)|on ME)
		(line|bit|piece) by (line|bit|piece)
		in (a|the) (stretch|space|span|wall|length|run|place|spot) (this|that|so) (long|short|wide|narrow|big|small)
		(instead of|rather than) where (it|he|she|they|you|we|i|PERSON) (is|are|was|put|puts|has|have|had|drew|draws|shows|showed|set|sets|wants|wanted) [it] [now]
		(instead of|rather than) what (it|he|she|they|you|we|i|PERSON) (is|are|was|says|said|put|has|have|had|drew|shows|showed|set|wants|wanted) [now]
		(instead of|rather than) (how|like|the way) (it|they) (is|are|was|were) [now]
		(am|are|is) (used|accustomed) to
		(i am|we are) (more|most|much more|a lot more|far more) (comfortable|at home|at ease) [(working|thinking|measuring|talking)]
		(stick|keep|hold) to (that|those|them|it)
		(could|can|shall|let) (we|us|i) (use|stick to|stay with|keep to|stick with|work in|work with) (those|them|that|it) (from now on|from here on|throughout|only|from here on out)
		(his|her|their|PERSON 's) (way|plan|design|layout|version|idea) (throws out|wastes|throws away|costs|uses|takes|needs|burns up|burns through|eats up) (too much|so much|a lot of|way too much|more) (wood|lumber|money|material|timber)
		(his|her|their|PERSON 's|that) PAPER (is|was|seems|looks|sounds) [(way|far|much|a bit|a little)] too (steep|high|dear|expensive|much|rich|low)
		(i|we) want to (show|teach|tell|explain it to|show it to|prove it to) (him|her|them|PERSON|students|my students|the kids)
		out there
		(forget|ignore|disregard|never mind) [about] what (he|she|they|PERSON) (drew|said|says|sketched|wrote|wants|wanted|suggested|proposed|told ME|had|has|thinks) , (i|we) (want|need|would like|would rather have|prefer)`},
	{Kind: TailFill, Key: "off so", Loose: true, Ways: `
		how (bad|far off|far out|wrong|much) (does|would|will|could|can|might|do) (it|that|things|they|this|i|we) (get|be|end up|come out|become|add up to|pile up to|grow)
		(what|how much) does (it|that) add up to`},
	{Kind: Part, Key: "bracket clearance", Sense: Meaning("bracket clearance"), Ways: `
		BRACKET (can|may|must|should|will) not (be|get|go|come|sit|stand|end up) [any] (closer|nearer|tighter) [(together|to each other)] than
		BRACKET (need|needs|require|requires|want|wants|take) [(at least|only)] BETWEEN [them]`},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: "(hit|work to|measure to|read to|mark to|get to|cut to|manage|see) [(it|things|everything)] [(to|down to)] [the] nearest"},
	{Kind: BestTail, Key: "tail", Ways: "as there is (room|space|height) (for|)"},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(hate|hating|loath|dislike|do not like|do not want|would rather not|rather not|prefer not|sooner not|no sense|no point|no sense in|silly) [to] (throw away|throwing away|throw out|throwing out|waste|wasting|toss|tossing|bin|scrapping) [(much|good|any|a lot of|too much|so much|more|perfectly good)] (lumber|wood|timber|material|boards|money on wood|money on lumber)
		(i|we) (hate|dislike|can not stand|do not like|do not want) [(having|making|seeing|any|a lot of|too much|much)] (waste|scrap|scraps|offcuts|leftovers|wasting|cutoffs) [(wood|lumber|timber|boards)]
		(arrangement|version|solution|way|setup|combination|plan|design|option|layout|one) [that] (leaves|has|gives|makes|produces|with) [ME] (LEAST) WASTE
		waste (as little|the least) (wood|lumber|timber|material) as possible`},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: `
		(go for|build|pick|choose|take|use|want|give ME|find ME|make it|get ME) CHEAPEST (version|design|plan|arrangement|solution|setup|combination|choice|build|way|option|one|layout) [(there is|you have|possible|you can find)]
		CHEAPEST (version|design|plan|arrangement|solution|setup|combination|choice|build)`},
	{Kind: Cmd, Key: "forget all but", Loose: true, Ways: "(forget|drop|clear|scrap|delete|erase|toss|wipe|lose|remove|scratch|dump|ditch) (all of it|all of that|the whole lot|the whole thing|all that|it|them all|all of them) [out] (except|except for|apart from|other than|save for|but|but for)"},
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: "(walk|take|lead|talk|guide|bring) (ME|PERSON|class) through (where|why)\n[(be|being|get)] (taken|walked|led|guided|talked|run|shown|coached) through [(where|why)]"},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: "(drop|fall|step|way|distance) [down] [from (FLOOR|porch|edge|edge of FLOOR|platform)] [down] to [the] EARTH [(outside|beyond|below|out there|behind it|on the other side|past it)]"},
	{Kind: Theirs, Key: "theirs", Ways: "(his|her|their|PERSON 's) (total|grand total|bottom line) of"},
	{Kind: Enter, Key: "enter", Ways: "[please] (plan for|plan on|allow for|account for|take account of|work from|work with|reckon with|build for) (that|it|them|those|this)"},
	{Kind: Head, Key: "why not", Loose: true, Ways: "what (hinders|hampers|bars|prohibits|precludes|blocks|stops|keeps|prevents) (me|us|you|it) [from] [(having|using|making|putting|getting|building|fitting|going with)]"},
	{Kind: Head, Key: "why not", Ways: `
		(why|how come|y) [(is it|is it that)] (i|we|you|it|they) (can|could|will|would|do|does|may) not (get|fit|have|take|hold|squeeze|cram|manage|go with|get away with)
		(how is it|how is it that|how comes it|how comes it that|how does it come that|what is the reason|what is the reason that|for what reason|on what grounds) (i|we|you|it|they) (can|could|will|would|do|does|may) not (get|fit|have|take|hold|squeeze|cram|manage|go with|get away with)
		(why|how come|y) (can|could|will|would|do|does|may) not (i|we|you|it|they) [just] (get|fit|have|take|hold|squeeze|cram|manage|go with|get away with)`},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: "(round|rounding) [off] (each|every|the) (mark|marks) (by itself|by themselves|on its own|on their own|separately|individually) so [that] (gaps|they|spaces) (stay|are|come out|remain|keep|end up|will be) (true|even|exact|honest|equal|alike|the same)"},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[(building|local|county|town|city|state)] (code|codes|rulebook|book|codebook|rules|ordinance) (says|say|wants|want|requires|require|calls for|call for|asks for|allows|demands|specifies|insists on) [that]
		(let ME know|tell ME|see|say|find out) (if|whether) (this|these|that|it|the following|those) (is|are) (right|correct|ok|okay|true|so|sound|good) [(:|,|-)]`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: "(did|does|do|has|have) (he|she|they|PERSON|i|we) (count|figure|add|measure|calculate|figured|counted|added|measured|calculated|work) [(it|that|them|those|out)] (right|correctly|up right|out right)"},
	{Kind: GoesIn, Key: "fit", Ways: "pass [muster]\nsuffice\nserve\nmake it in\nsqueak by\nsqueeze by\nsqueak in"},
	{Kind: Head, Key: "what if", Loose: true, Ways: "(any|is there any|is there a|what are the) (chance|hope|odds|prayer) [(that|of)]"},
}
