package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// postTurns are the turns of phrase about posts, bays and the run.
var postTurns = []phrase.Placed{
	{Plain: "", Said: `
		(whatever|what ever) [else] (you|we) do [,]
		(whatever|what ever) else (happens|changes|goes) [,]
		come what may [,]`},
	{Plain: "please verify", Where: atClauseEnd, Said: `
		(i|we) (would like|want|would love|need) [to (have|get|see)] (that|it|this) (looked at|looked into|looked over|gone over|double checked|checked|checked out|checked over|verified|confirmed|proved) [(please|again|by you)]`},
	{Plain: "overall", Said: `
		end to end [,] (with|including|counting|incl) [(two|the|both)] END POST [(included|counted|counted in|and all)] [,]
		(total|full|whole) length [,] (with|including|counting|incl) [(two|the|both)] END POST [(included|counted|counted in|and all)] [,]
		(with|counting) [(two|the|both)] END POST (included|counted|counted in|and all) [,]
		(wall|halfwall) [,] [(with|counting|including)] [END] POST (and all|included|counted in) [,]`},
	{Plain: "is", Where: lengthFollows, Said: "(takes|take|took) up [(exactly|all of|a full)]\n(eats|eat|uses|use|fills|fill|occupies|occupy) up [(exactly|all of|a full)]"},
	{Plain: "so", Said: "FLOOR (edge|side|corner|lip|end) (is|was|'s) [(too|very|really|pretty|so|a bit)] ADJ , so\nthere is (not much|little|hardly any|no) (FLOOR|room) [(there|here|left)] , so"},
	{Plain: "i want", Where: hopeStands, Said: "(i|we) (had|have|would) hoped for\n(i|we) [(had|have)] [been] (hoped|hoping) for\n(i am|we are|i was|we were) hoping for"},
	{Plain: "is", Said: "is (always|invariably|by definition|of course|naturally|simply)"},
	{Plain: "from", Said: "(string|cord|twine|chalkline|chalk line|mason line|string line) [(stretched|pulled|run|strung|drawn|snapped)] from\ntape (stretched|pulled|run|strung|drawn|hooked|held) from"},
	{Plain: "", Where: atClauseEnd, Said: `
		[,] [(because|since|as)] (i|we|he|she|they|PERSON) [(had|have)] (taped|measured|read|took|copied|got|had|used|hooked|marked|pulled) [(it|that|them|the tape|off|from|between|at|to)] [(off|from|between|at|to)] wrong (POST|tape|side|end|ends|one|ones|number|line|edge|face|faces|spot|place|thing)`},
	{Plain: "for rails", Where: endsInSize, Said: "for (every|each|all|every single|any) RAIL\non (every|each|every single) RAIL"},
	{Plain: "for posts", Where: endsInSize, Said: "for (every|each|every single|any) POST"},
	{Plain: "use", Said: "(you|we) (can|may|should|could|might as well) (figure|count|plan|bank|reckon) on"},
	{Plain: "", Where: atClauseEnd, Said: "[,] no matter (which|what) [(one|post|ones|of them)]"},
	{Plain: "", Where: sizeFollows, Said: "(heavy|big|beefy|good|thick|stout|serious|fat|sturdy|light|thin|skinny|hefty|chunky|real) (stuff|lumber|timber|wood|material|sort|kind|ones) [(:|,|--)]"},
	{Plain: "added post", Said: `
		POST [(that|which)] (we|i|you|they) [(are|will|have|want to|have to)] (put|set|add|adding|stand|plant|putting|setting|install|stick|sink) [in] (by|beside|next to|at|near|alongside) (OPENING|walk through|walk - through|walk way|walk - way)
		POST [(that|which)] (is|gets|goes|will be|will go|stands|is going) [(put|set|added|going)] [in] (by|beside|next to|near|alongside) (OPENING|walk through|walk - through|walk way|walk - way)`},
	{Plain: "added post", Said: `
		POST (do you have|have you got|do we have|have we got|you have|you have got|you have got|are you|do you plan on|are we) (going|set|put|standing|placed|putting|setting|using|getting) [in] [in] between [(two|the)] (END POST|ends|END ones)
		POST (going|go|goes|standing|that go|that goes|that stand|that stands) [in] [in] between [(two|the)] (END POST|ends|END ones)`},
	{Plain: "is", Where: sizeFollows, Said: "(gets|is|to be|will be|are|get|be|should be|must be) (cut|made|sawn|milled|ripped) [out] (from|of)"},
	{Plain: "", Where: ruledBefore, Said: "[,] (says|said|say) [WHOSE] (boss|wife|husband|owner|client|customer|mother|mom|missus|partner|landlord|homeowner)\n[,] (boss|wife|husband|owner|client|customer|mother|mom|missus|partner|landlord|homeowner) (says|said) [so]"},
	{Plain: "", Where: atClauseEnd, Said: `
		[,] [(because|since|as|for)] (my|his|her|our) (back|knees|knee|arms|shoulders|shoulder|body|wallet|purse|hands|legs|heart|nerves) (will|can|could|would) not (take|stand|bear|handle|survive|do|allow|manage) (it|that|more|any more|them|another|any)
		[,] [(because|since|as|for)] (other|second|third|last|next|one) (footing|hole|pier|footer|dig|spot) (hit|struck|landed on|is on|ran into|met|was) (rock|ledge|bedrock|pipe|roots|water|root|boulder|stone|concrete|gas line|main)
		[,] [(because|since|as|for|now that)] (they|we|he|she|PERSON) [(have|had)] (put|laid|poured|hauled|dumped|spread|brought|trucked|filled|rolled) [(down|in|on|out)] [(some|new|more|layer of|load of|a few inches of)] (pavers|gravel|sod|mulch|dirt|topsoil|fill|sand|stone|stones|flagstones|turf) [(there|out there|behind it|beyond the wall|back there)]`},
	{Plain: "have no added posts", Said: "(skip|avoid|forgo|do without|get away without|get by without|manage without|go without|leave off) (adding|setting|putting in|planting|any|) (a new|new|added|a|any|extra) POST [(altogether|at all|entirely|completely)]\n(skip|avoid|forgo) (adding|setting|putting in|planting) POST [(altogether|at all|entirely|completely)]"},
	{Plain: "rails per bay", Where: railsEach, Said: "(to|in|per) (a|each|every|the) BAY"},
	{Plain: "bay 1", Said: "(first|leftmost) BAY (on|from|at|to) [the] LEFT\n(leftmost|far left|left most) BAY"},
	{Plain: "about", Where: saidBeforeIt, Said: "(for|on|as to|concerning)"},
	{Plain: "equal bays", Said: `
		[(space|divide|split|set|lay|place|arrange|put|spread|position) [(out|up)] POST [(out|up)] (so|such) [that]] no BAY (is|be|should be|comes out|ends up|gets|to be|may be|can be|shall be|will be) [any] (wider|bigger|longer|larger|narrower|smaller|shorter|broader) than [(any|the|its)] (another|other|others|rest|next|neighbor) [(one|ones|bay)]
		BAY [(should|must|ought to|have to|need to|shall|are to)] (match|equal) (each other|one another) [(in (width|size|length))]
		BAY [(are|be|should be|must be|to be|all)] [(of|at)] one (width|size)
		(uneven|unequal|mismatched|irregular|lopsided) BAY (bother|annoy|irk|bug|irritate|offend|disturb|bothers|upset) (me|us|my eye|my wife|my husband|the eye) [,] [(so|and)] [(please|let us|we|i|do)] (have|make|keep|get|want|would like) (them|bays) [all] [the] (EQUAL|one) [(width|size|length)]`},
	{Plain: "fewest posts", Said: `
		(do not|not|would not|never) [(want|wanting|looking|trying|going|need|have|like|care|wish|mean|plan)] [to] [(set|setting|dig|digging|add|adding|put in|putting in|put up|use|using|have|having|see|plant|planting|sink|sinking|stand|buy|buying)] (any more|more) POST than (i|we|you|it|is|are|the wall|they) [(really|absolutely|strictly|truly|actually)] (have to|got to|need to|needs to|has to) (set|have|dig|add|put in|put up|use|plant|sink|buy|be)
		(do not|not|would not|never) [(want|wanting|looking|trying|going|need|have|like|care|wish|mean|plan)] [to] [(set|setting|dig|digging|add|adding|put in|putting in|put up|use|using|have|having|see|plant|planting|sink|sinking|stand|buy|buying)] (any more|more) POST than [(i|we|you|it|is|are|the wall|they)] [(really|absolutely|strictly|truly|actually)] (have to|got to|need|need to|needed|needs|must|necessary|required|has to)`},
	{Plain: "fewest rails", Said: `
		(do not|not|would not|never) [(want|wanting|looking|trying|going|need|have|like|care|wish|mean|plan)] [to] [(stack|stacking|run|running|put in|putting in|put up|putting up|use|using|hang|hanging|have)] (any more|more) RAIL than [(i|we|you|it|is|are|the wall|they)] [(really|absolutely|strictly|truly|actually)] (have to|got to|need to|need|needed|needs|must|necessary|required|has to) [(stack|have|run|put in|put up|use|hang)]`},
	{Plain: "least waste", Said: `
		(do not want to|not want to|not wanting to|would not like to|do not care to|do not wish to|do not feel like|rather not|hate to|would hate to|hate to|hate) [(be|end up|wind up|be left|be stuck|end up with|wind up with|be left with|be stuck with|have)] (haul|hauling|cart|carting|lug|lugging|drag|dragging|truck|trucking|tote|toting|burn|burning|dump|dumping|left with|stuck with|haul off|haul away|cart off|cart away|sweep up|sweeping up) [(all|too much|so much)] [(a|any)] [(big|huge|whole)] [(pile|heap|bunch|load|truckload|lot|ton|stack|mountain|dumpster|bin|trailer)] [(of|full of)] (scrap|scraps|offcuts|waste|cutoffs|leftovers|short ends) [(out of here|away|off|to the dump|to the curb|home|out|around|down the road|to get rid of|on my hands|when i am done|at the end)]`},
	{Plain: "same length", Said: "RAIL [(are|be|should be|must be|to be|all)] [(of|at)] one length"},
	{Plain: "fewest posts", Said: `
		(go light|go easy|be sparing|be stingy|skimp|be frugal) (on|with) [the] POST [, as few as (possible|you can|we can|you can manage|we can manage|you can get away with|can be)]
		[(set|dig|add|put in|use|have|plant)] no more POST than (it|that|we|you|is|are|the wall|wall|what is) [(really|absolutely|strictly|truly|actually)] (needs|need|needed|necessary|takes|has to have|required|must|have to|requires|require)
		(each|every) [(new|added|extra)] POST (means|is|costs|calls for|takes|needs) (another|one more|a|more|an extra) (hole|footing|dig|digging) [(in|into|through) (rock|clay|concrete|ledge|slab|hardpan|stone|hard ground)] [to (dig|pour|drill|bore)] [,] so [please] (keep|hold|get) (their|its|the) number [down] (to minimum|as low as possible|low|small|down)
		(least|fewest) POST (you|we|i) can [possibly] (get away with|get by with|manage|do with|make do with)`},
	{Plain: "we want", Said: "(a|an|any) [(old|good|plain|simple|poor|lazy)] PERSON like (me|us) (puts|uses|sets|wants|likes|needs|has|goes with|takes) [in]"},
	{Plain: "half of the", Where: heightNext, Said: "half the\nhalf our\nhalf my"},
	{Plain: "times", Where: fractionOfIt, Said: "as (wide|long|big|high|tall|large|broad|deep) as\nof"},
	{Plain: "use", Where: countOfPostsNext, Said: "(we|i|it) (are|am|is) [now] (down|up|back) to [(just|only|exactly)]"},
	{Plain: "added posts", Where: sizeAsked, Said: "POST (are|is|go|goes|stand|stands|get put|get set) [set] [in] between [(two|the|both)] (END POST|ends|END ones)"},
	{Plain: "", Said: "(has to|have to|must|needs to|will|is going to|should|got to) (hold|take|fit|carry|house|take in|seat|accommodate) (a|the|my|our|an|some|two|his|her) [(big|small|long|garden|porch|potting|little)] (PASSING|bench|planter|chair|swing|shelf|box|boxes|counter|rack|plant|tub|heater|loveseat|rocker|cabinet|workbench|chairs|benches|planters) (so|, so|and so|, and so) (it|that)"},
	{Plain: "", Where: baseNamed, Said: "between FLOOR and (bottom|underside|foot|bottom end|lower end) of [(added|new)] POST"},
	{Plain: "base height", Said: "between FLOOR and (bottom|underside|foot|bottom end|lower end) of (added|new) POST\nbetween (bottom|underside|foot|bottom end|lower end) of (added|new) POST and FLOOR"},
	{Plain: "base height is", Where: lengthFollows, Said: "[post] base (leaves|gives|keeps|makes) [it|us|me]"},
	{Plain: "post 1 from left", Said: `
		[(distance|space|room)] (from|between) [(face of|inside of)] LEFT [END] POST [(over|across|out|along|on over)] (to|and) (first|1st) [(added|new|extra|intermediate)] POST [, ] [it is]
		[(distance|space|room)] (from|between) (first|1st) [(added|new|extra|intermediate)] POST [(over|across|back|along)] (to|and) LEFT [END] POST [, ] [it is]`},
	{Plain: "post 2 from left", Said: `
		[(distance|space|room)] (from|between) [(face of|inside of)] LEFT [END] POST [(over|across|out|along|on over)] (to|and) (second|2nd) [(added|new|extra|intermediate)] POST [, ] [it is]
		[(distance|space|room)] (from|between) (second|2nd) [(added|new|extra|intermediate)] POST [(over|across|back|along)] (to|and) LEFT [END] POST [, ] [it is]`},
	{Plain: "less", Where: runGetsShorter, Said: "shorter"},
	{Plain: "one foot", Where: comparesNext, Said: "a foot"},
	{Plain: "by one foot", Where: atClauseEnd, Said: "by a foot"},
	{Plain: "one yard", Where: comparesNext, Said: "a yard"},
	{Plain: "level with", Said: "off (level|even|flush) with"},
	{Plain: "from the floor to its top", Where: atClauseEnd, Said: "off FLOOR [(measured)] (at|to|by) [(its|very)] top"},
	{Plain: "is that right", Where: atClauseEnd, Said: "(that|it|this) (can not|could not|does not|will not) (be|look|seem|sound|feel) (right|correct|true) [to me]"},
	{Plain: "what is the base height", Where: atClauseEnd, Said: "how (far|high) [up] (off|above|from) FLOOR (does|do|will|should|would) [(added|new)] POST (sit|start|begin|float|hang|rest)"},
	{Plain: "", Where: endsInSize, Said: "all (around|round|over|the way around|through)"},
	{Plain: "end posts", Said: "two POST (that|which) (are|were|have been) [(already|still)] (there|standing|up|in|set|in place|in the ground)\nPOST (that|which) (are|were|have been) already (there|standing|up|in|set|in place|in the ground)"},
	{Plain: "", Where: bayNext, Said: "(set|put|place|stand|position|locate|move|shift) [(first|second|1st|2nd)] [(added|new)] POST [NTH] so [that]"},
	{Plain: "for the added posts", Where: endsSized, Said: "for [the] (rest|others|other ones|other|rest of them)"},
	{Plain: "post size is", Where: sizeFollows, Said: "(change|switch|swap|convert|turn) [over] POST [over] (to|for|out for|into)"},
	{Plain: "could we", Where: sentenceBefore, Said: "(can|could) not (we|i) [just]"},
	{Plain: "add one bay", Where: atClauseEnd, Said: "add (a|another|one more) BAY"},
	{Plain: "is half as wide as", Where: bayNumbered, Said: "half as (wide|big|long|broad) as"},
	{Plain: "on the far side", Where: fallsBefore, Said: "on EARTH side [of WALL]"},
	{Plain: "", Where: atClauseEnd, Said: "(each|every) [(new|added|extra|single)] POST (means|is|costs|calls for|takes|needs) (another|one more|a|more|an extra) (hole|footing|dig|digging) [to (dig|pour|drill|bore)] [(in|into|through) (rock|clay|concrete|ledge|slab|hardpan|stone|hard ground)]"},
	{Plain: "including", Said: "incl\nincl ."},
	{Plain: "there is no drop", Where: atClauseEnd, Said: "(we|i|you) (do not|did not) have (any|a) drop [(at all|there|here)]"},
	{Plain: "", Where: atClauseEnd, Said: "[(,|and|but)] let [the] (others|rest|other bays|other ones) (fall|land|come out|be) (where|as|however|what|whatever) they (may|will|like|do|want)"},
	{Plain: "from", Where: pointFollows, Said: "(distance|length|measurement|run|space) from"},
	{Plain: "the drop", Where: isFollows, Said: "drop"},
	{Plain: "to the left", Where: movedNoOpening, Said: "(nearer|closer) [to] [the] LEFT [END] [POST]"},
	{Plain: "to the right", Where: movedNoOpening, Said: "(nearer|closer) [to] [the] RIGHT [END] [POST]"},
}

// saidBeforeIt: "never mind what I said for bay 1".
func saidBeforeIt(before, after []scan.Atom) bool {
	return chunk.LastOf(before, 1) == "said" && (chunk.LastOf(before, 2) == "i" || chunk.LastOf(before, 2) == "we") && chunk.LastOf(before, 3) == "what" && chunk.NamesPart(after, chunk.SkipArticle(after, 0))
}
