package lexicon

// uniform are more words for what is to be alike: bays of one width, boards of one length, gaps that stay true; and for the units that
// somebody works in.
var uniform = []Entry{
	{Kind: Goal, Key: "equal bays", Loose: true, Ways: `
		(EQUAL|eq|matching|equally wide) (BAY|bay) (widths|width)
		(EQUAL|eq|equally) BAY widths
		[all] [(the)] BAY [all] [(will|should|must|have to|ought to|need to|got to|shall|gotta)] (come|come out|end up|turn out|work out|wind up|finish|be|stay|look|run|measure) [all] (alike|even|identical|equal|uniform|the same|matching|equally wide|just as wide|the same size) [(in|for|as to)] [(width|size|length|widths)]
		[all] BAY [(all|to be|be)] (identical|alike|equal|even|uniform|matched|the same) [(in|as to)] (width|size|length)
		BAY of [(a|an|one|the)] (uniform|equal|same|identical|even|single|common|matching|one|like) (width|size|length|widths)
		(each|every|any|all|one) BAY [(to be)] [(exactly|just|precisely|every bit)] as (wide|long|big|broad) as (next|next one|next bay|other|others|another|any other|every other|every other one|its neighbor|its neighbour|one beside it|rest)
		(no|not one|not a|never a) BAY [(is|be|to be)] [(any|either)] (wider|longer|bigger|broader|larger|narrower|smaller|shorter) [(or|nor) (wider|longer|bigger|broader|larger|narrower|smaller|shorter)] than [(any|the|an)] (other|others|next|next one|rest|another|other one|its neighbor|its neighbour)
		(no|not) two BAY (different|of different width|of different widths|that differ|that are different)
		POST [(should|to|must|have to|can|could|will)] (divide|split|cut|part|break|separate|share) [up] [(the)] (WALL|span|run|length|opening|it|space|distance|line) [up] (into|in) [(two|three|four|five|six|2|3|4|5|6)] (equal|even|identical|matching|equally wide|equal sized|like|uniform) (BAY|parts|bits|shares|lengths)
		(divide|split|cut|part|break|share|separate) [up] [(the)] (WALL|span|run|length|it|this|that|everything|whole thing|space|distance) [up] (into|in) [(a number of)] (BAY) [(all)] (of) [(the|one|a|an)] (same|equal|identical|uniform|one|even|single) (width|size|length)
		(space|set|place|put|spread|arrange) POST [out] so [that] BAY [(all)] (are|is|look|be|end up being) [all] (EQUAL|even|matching|the same|alike|as wide as each other)
		BAY [(to be|all|are to be)] balanced
		(balance|match|match up|equalize|equalise|even up|even out|level out|standardize) [all] BAY [(width|widths)]
		BAY all (1|one|a single|the one|same|the same) (width|size|length)
		[(set|space|put|place|arrange)] [POST] [out] so [that] BAY match [(each other|one another)] [in (width|size|length)]
		BAY match [(each other|one another)] in (width|size|length)
		BAY (same|the same|an equal|equal|identical) (width|size|length|widths) [each]
		same (width|length|size) BAY
		(left|first) and (right|second|last) [(bay)] [(to be|to have)] [(of)] (same width|same size|equal width|equally wide)
		BAY (left and right|right and left|on both sides) [(to be|of)] [(the)] same (width|size)
		BAY [all] [(to be)] [(a)] match [(one another|each other)]`},
	{Kind: Goal, Key: "same length", Loose: true, Ways: `
		[all] RAIL [(all|every one)] [(will|should|must|have to|ought to|need to|got to|shall|gotta|to)] (come|come out|end up|turn out|work out|wind up|finish|finish up|be|stay|be CUT) [all] [(at|of|in)] [(the|one|a)] (same|single|identical|equal|common|uniform|one) length
		[all] RAIL [all] [(to be|be|get|gets)] (CUT|sawn|trimmed|made|chopped|sawed) [all] [off] (to|at|in|of) [(one|a|the)] (common|single|same|uniform|one|shared|equal|identical|standard) (length|size|measure)
		(CUT|saw|make|trim|chop|have|keep) [all] RAIL [all] (alike|equal|identical|the same|same|identically|equally|uniform|one) [(in|for|as to)] (length|long)
		[all] RAIL [(all)] [(to be|be)] (CUT|sawn|trimmed|made) (identically|equally|uniformly|just as|exactly as) long [(as each other|as one another)]
		[all] RAIL [(to be)] (equally|identically|all equally) long
		RAIL all (1|one|same|a single|single) length
		all (1|one) length RAIL
		(make|cut|saw|do|chop|have|want|get|trim) (all of them|them all|them|all|every one|every one of them|the lot|everything) [all] [(to|at|of|in)] (1|one|a single|one single|one common|a common|the one) length
		(no|without|not|hate|skip|avoid|sick of) [(want|fuss with|deal with|bother with|mess with|fool with|juggle|have|having)] [(to)] [(fuss with|deal with|bother with|mess with|fool with|juggle|have)] [any] (different|differing|various|varying|odd|assorted|mixed) RAIL lengths [(,) [just] (make|cut|saw|do) (them|them all|all of them|RAIL) [all] [(to|at)] (1|one|a single|the same|the one) length]
		(set|clamp|fix) [the] stop [block] [(only|just)] once [(,|and) (cut|saw) (everything|RAIL|them all|them|all of them|all)]
		(1|one|a single|single|the same|same) (stop|stop block|fence|saw) (setting|position|block) [on saw] [(for (all|every|the) [RAIL])] [(,) (all|every|each) RAIL CUT to [the] (same|one) length]
		(1|one|a single|single|the same) (length|size) for [(all|every)] [(the)] RAIL
		(1|one|a single|single) length (does|fits|suits|serves) (all|everything|every one|them all)
		(common|single|uniform|universal) (length|cut|cut length) [(for (all|every|the|) RAIL)]
		RAIL : [(all|just|only)] (1|one|a single|single|same|the same|common) [(cut|saw)] length [(throughout|everywhere|for all|all over|all through|all around)]
		(1|one|a single|single|same|the same|common) (cut|saw|cutting) length [(throughout|everywhere|for all|all over|all through|for everything|for every [RAIL])]
		(1|one|a single|single|common) length (throughout|everywhere|all through|for everything)
		RAIL (interchangeable|identical)
		any RAIL fits any BAY
		(standardize|standardise) [the] RAIL (length|lengths)`},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: `
		(keep|leave|hold|make|have|want|get) [(all|every|each)] GAP [all] [(dead|exactly|perfectly|truly|quite|strictly|absolutely)] (exact|even|true|equal|honest) [(,|and|with|by|while)] (rounding|rounded|round|rounds) [off] (MARK|ea MARK) [off] (singly|separately|individually|independently|by itself|by themselves|on its own|on their own|one by one|one at a time|alone)
		GAP [(to|should|must|have to|got to|will)] (remain|remains|remaining|stay|stays|staying|be|be kept|keep|kept|left|held) [all] [(dead|exactly|perfectly|truly|quite|strictly|absolutely)] (exact|even|true|equal|honest|uniform) [(all the way (up|down|through))]
		GAP [(to|should|must|have to|got to|will)] (remain|remains|remaining|stay|stays|staying|be|be kept|keep|kept|left|held) [all] [(dead|exactly|perfectly|truly|quite|strictly|absolutely)] (exact|even|true|equal|honest|uniform) (,|and|with|while) [(each|every|the|all)] (MARK|ea MARK) [(is|are|be|to be|being|gets|get)] (rounded|rounding|round|rounds) [off] (singly|separately|individually|independently|by itself|by themselves|on its own|on their own|one by one|one at a time|alone)
		GAP exact [(,|and|with|while)] [(each|every|the|all)] MARK [(is|are|be|to be|being|gets|get)] (rounded|round) [off] (singly|separately|individually|independently|by itself|by themselves|on its own|on their own|one by one|one at a time|alone)
		(exact|true|even) GAP (,|and|with|while) [(each|every|the|all)] MARK [(is|are|be|to be|being|gets|get)] (rounded|round) [off] (singly|separately|individually|independently|by itself|by themselves|on its own|on their own|one by one|one at a time|alone)
		with [(each|every|the|all)] MARK [(is|are|be|to be|being|gets|get)] (rounded|rounding|round) [off] (singly|separately|individually|independently|by itself|by themselves|on its own|on their own|one by one|one at a time|alone)
		(and|just|only|but) round [(off)] [(the|each|every|all)] MARK [off] (singly|separately|individually|independently|by itself|by themselves|on its own|on their own|one by one|one at a time|alone)
		(no|without) rounding in [the] GAP
		(do not|never|no|not) (round|rounding) [off] [(any|the)] GAP
		round [(the)] MARK (not|never|and not|rather than) [(the)] GAP
		(rounding|errors|rounding error|error) [(should|must|may|can|is|to)] not (build|pile|add|creep|accumulate|stack|collect|sneak) [up] [(in|into|up in)] [(the)] [GAP]`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		(metric|millimeter|millimetre|mm|mm only|metric only) (tape|ruler|rule|tape measure|folding rule|tapes|man|woman|guy|person|shop|crew|household|job|country|drawings|numbers|figures) [(here|only|on this end|over here|on this job)]
		[(my|our|the|his|her)] (tape|ruler|rule|tape measure|folding rule|square) (is|are) (metric|in millimeters|in millimetres|in mm|marked in millimeters|marked in mm|all metric|only metric|metric only)
		[(my|our|the|his|her)] (tape|ruler|rule|tape measure|folding rule) [(only)] (has|have|has got|shows|got) (only|just|nothing but) (millimeters|millimetres|mm|metric|centimeters)
		[(my|our|the|his|her)] (tape|ruler|rule|tape measure|folding rule) (has no|has got no|got no|shows no|has not got any|does not have any|does not have|does not show any|does not show) inches [on (it|them|there)] [(,|so|and|so use|so we use|so let us use)] [use] [(millimeters|millimetres|mm|metric)]
		[(all|every|the)] (dimension|dimensions|sizes|distances|values|readings|units|measures) [(are|is|to|shall|should|will|must)] [(to)] [be] [(given|said|shown|read|quoted|stated|written|reported)] in (metric|millimeters|millimetres|mm) [units]
		(talk|speak|give|tell|show|read|say|stick to|stay in|think|answer|call) [it] [(out)] (millimeters|millimetres|metric|mm) [(to me|to us|for me|with me|from now on|please)]
		[(work|working|do|go|build|measure|think)] (metric|in metric) (over here|around here|on this side|in this shop|in our shop|at our place|where i am|in my country)
		(let us|we will|i will) (do|have|run|keep|work|take|go with|go) (this|it|everything|them|that|the whole thing|this one|this job) [(out)] (in) (metric|millimeters|millimetres|mm)
		(switch|change|go|flip|turn|convert|shift|swap|move) [(it|units|everything|over|things|the units|all of it)] [over] (to|into) (metric|millimeters|millimetres|mm|the metric system)
		[(my|our|the|all|these|those|his|her)] (figures|numbers|measurements|lengths|readings|dimensions) [(will be|are|come|are all|are going to be|i give|here)] [all] [(given)] [in] (millimeters|millimetres|mm|metric)
		(do not|can not) (read|speak|use|do|know|understand|own|think in) [any] (inches|imperial|feet and inches|fractions of an inch|inch fractions) [(,|so|and)] [(give me|use|show|show me|let us use|so use)] (millimeters|millimetres|mm|metric)
		no inches (please|here|for me|from me|on this job|any more|anymore|thanks)
		no more (inches|imperial|feet|feet and inches) [(,) [(please)] (show|give|use|tell) [(me)] (millimeters|millimetres|mm|metric)]
		(metric|millimeters|millimetres|mm) (instead [of (inches|imperial|feet and inches)]|rather than (inches|imperial|feet and inches)|not inches)`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		(everything|all of it|it all|all work|the work|things|everybody|everyone) [(on|at|in|around) (this|the|our|my) (site|job|place|shop|crew|yard|house|building|project)] [here] (is|are|gets|goes) [(done|measured|worked|worked out|drawn|built|figured|said|marked|written|given)] in (metric|millimeters|millimetres|mm|centimeters)
		(SELLER|yard|shop|crew|office|site|drawing|drawings|plans|tape|tapes|everybody|everyone|everything) [here] (works|work|is|are|thinks|goes|measures|deals) [(all|only)] in (metric|millimeters|millimetres|mm)`},
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		(everything|all of it|it all|all work|the work|things|everybody|everyone) [(on|at|in|around) (this|the|our|my) (site|job|place|shop|crew|yard|house|building|project)] [here] (is|are|gets|goes) [(done|measured|worked|worked out|drawn|built|figured|said|marked|written|given)] in (inches|feet and inches|imperial|feet)
		(SELLER|yard|shop|crew|office|site|drawing|drawings|plans|tape|tapes|everybody|everyone|everything) [here] (works|work|is|are|thinks|goes|measures|deals) [(all|only)] in (inches|feet and inches|imperial) [(,|so|and) let us (have|use|go with|see) [(customary|imperial)] [units] [again]]
		think in (inches|feet and inches|feet) [(,|so|and) (give|show|tell|say|read|put) [ME] (everything|it|all|it all|them|that|all of it) [(that|the same|this) way]]`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		think in (metric|millimeters|millimetres|mm) [(,|so|and) (give|show|tell|say|read|put) [ME] (everything|it|all|it all|them|that|all of it) [(that|the same|this) way]]`},
	{Kind: Units, Key: "metric", Ways: "(mm|millimeters|millimetres|metric) :"},
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		(inch|imperial|inches only|inch only) (tape|ruler|rule|tape measure|folding rule|man|woman|guy|person|shop|crew|country|job) [(here|only|on this end|over here|on this job)]
		(rather|sooner) (have|see|use|work in|work with|get|read|stay with|stick with|stick to) [it] [in] (feet and inches|inches|imperial|inches and feet|customary units)
		(put|bring|turn|set|switch|change|show|give|have) [(it|them|everything|that|all|all of it|it all|units)] [all] [back] (to|into|in) (feet and inches|inches|inches and feet|feet|imperial|customary) [(again)] [(can not|can not|do not|never could|not able to) (read|understand|follow|do|use|stand) [that|this|the] (metric|millimeter|mm) [(stuff|business|nonsense|numbers|things|system|talk|lingo)]]
		(switch|change|set|turn|convert|flip|move|swap|shift) [(the|it|everything)] [units] [back] [over] (to|into) (customary|imperial|inches|feet|feet and inches|us customary|american|english|fractions|fractional inches)
		(knows|know|understands|understand|reads|read|use|uses|has|have|speaks|works in|likes) [(only|just|nothing but)] (inches|feet and inches|imperial) [(only)] [(,) so (use|let us use|we use|we will use|go with|stick to) (those|them|that|inches)]
		(only|just|nothing but) (knows|know|understands|understand|reads|read|use|uses|has|have|speaks|works in|likes|work in) (inches|feet and inches|imperial) [(only)] [(,) so (use|let us use|we use|we will use|go with|stick to) (those|them|that|inches)]
		no more (millimeters|millimetres|mm|metric|centimeters) [(,) [(please)] (show|give|use|tell) [(me)] (inches|feet and inches|imperial)]
		(no|enough|enough of|done with|enough with) (millimeters|millimetres|mm|centimeters|metric) (please|any more|anymore|here|for me)
		(inches|imperial|feet and inches) (instead [of (millimeters|mm|metric|millimetres)]|rather than (millimeters|mm|metric|millimetres)|not (millimeters|mm|metric))
		[(was|were|started|began) in metric (,|;|and)] [but] from here [on] [(i|we)] (work|working|go|want|use|measure|talk) [in] (inches|feet and inches|imperial|feet)
		from (here|now|now on|here on) [(,)] [(i|we)] (work|working|go|want|use|measure|talk|show|give me) [in] (inches|feet and inches|imperial|feet)`},
}
