package lexicon

// onsite are more words for what is found where the wall goes up: what a tape reads between posts, which boards hang already, how a
// floor runs, how a post stands, and how far it is down beyond the wall.
var onsite = []Entry{
	{Kind: Measured, Key: "measured", Ways: `
		PERSON [(just|also|now)] (held|ran|pulled|took|read|stretched) tape [measure] [(and|,)] (got|gets|read|reads|says|called|called out|has)
		(tape|rule|ruler|laser|stick|yardstick|steel rule|measuring tape|tape measure|folding rule|story pole) [(held|run|laid|pulled|hooked|stretched)] (across|along)
		(i|we) [(just|also|now|then)] (ran|held|pulled|laid|stretched|hooked|put|took|strung|run) (tape|rule|ruler|laser|stick|steel rule|measuring tape|tape measure|folding rule|measurement) [(measure)] (across|along|over|to|on|down in|in)
		(i|we) [(just|also|now|then)] (taped|measured|remeasured|clocked|shot|lasered) [across]
		(tapes|taped|lasered|shot|clocked) [(out|in)] [(at|as|to)]
		(got|gets|was|were|is|came|been|has been|gotten) (measured|taped|remeasured|clocked|checked|lasered|shot|found|read) [(to be|at|as|out at)]
		(was|were|is|been) found [(to be)]
		(fills|fill|filling|needs to fill|has to fill|must fill) [(a space of|a space|a width of)]
		(reads|reading|read) [(off|out)] [(at|as|to)]
		(opens|opened|widens|widened|narrows|narrowed|narrows down|closes|closes down|tapers|tapered|pinches|pinched|spreads|spread|swells|shrinks|bulges) [(up|out|down|in)] (to|at)
		(site|field|job site|on site|as built) (measurement|measurements|reading|readings|dimension|dimensions|size|sizes|figures) [(here|for (me|us))]
		(enter|record|log|book|write down|put down|jot down|note|note down|register|take down) [(a|the|this|another|one more)] [(site|field|job site)] (measurement|measurements|reading|readings|dimension) [(here|for (me|us))]
		(post to post|between [the] (posts|post|two posts)|face to face|inside to inside|clear) measured`},
	{Kind: At, Key: "bottom", Ways: `
		(at|across|along|by|near|down at|across at|over at) (foot|toe) [of]
		foot of
		[(down)] (at|along|across|on) [(the)] FLOOR level
		(low down|down low|down below|down by FLOOR|down at FLOOR|down along FLOOR|down near FLOOR)
		along FLOOR (in|of)
		bottoms`},
	{Kind: At, Key: "top", Ways: `
		(at|across|along|by|near|between|up at|from) [(the)] (head|heads|tops) of POST
		(up high|high up|up above|way up top|up at the top|up there at the top)
		[(at|across|along|by|near)] [(very)] (heads|head) of`},
	{Kind: Fill, Key: "fill", Ways: `
		(reading|going by|looking at|going off|copying|working from|straight from|straight off|off of|off|from) my [own] (notes|notebook|pad|scribbles|scrawl|notepad|figures|numbers|tape|list) [here]
		for the record
		walk ME back [(,|:|-|a bit|a little|a step|a minute)]
		(decimal|that is a decimal|with a decimal) comma
		(pencil|blade|chalk|saw) is (sharp|ready|out|warm|plugged in|running)
		PERSON is (standing|waiting|kneeling|ready|sitting) (at|by|next to|beside) POST [with (a|the|his|her) (pencil|tape|square)]
		[(i|we)] [(just|have)] (checked|measured|taped|shot) (twice|again|two times|three times|a second time|once more|a couple of times)
		[so] PERSON (had|got|has) (it|that|this) wrong
		(no|without) (exceptions|exception|fail|excuses)
		[(is|are|was|were|got|came out)] (poured|laid|built|graded|set) [(badly|poorly|a bit|a little)] (out of level|off level|crooked|unevenly|on a slope)
		where WALL (stands|is going|will stand|will go)
		(pencil|pencils|blade|chalk|saw) (is|are) (sharp|sharpened|ready|out|warm|warmed up|plugged in|running|set up)
		before (anybody|anyone|PERSON|somebody|i|we|you) (saw|saws|cut|cuts|start|starts|begin|begins|touch|touches|buy|buys|drill|drills) [(anything|cutting|sawing|drilling|building|a thing|it|something)]
		(please|kindly|just) (note|record|write|write down|put down|mark down|enter|log|jot down) [that]
		[(i|we)] (just|only) (ran|came|got back) (out|outside|in|from outside)
		[(i|we)] [(just|also|have)] (checked|shot|measured|taped|took|tried|did) (it|that|this|them|everything) [over] (twice|again|two times|three times|a second time|once more|a couple of times|two or three times) [(with|by|using) [(a|the|my|our)] (steel rule|steel tape|laser|laser level|level|tape|rule|ruler|long level|water level|transit|string|string line)]
		(by|with|using|according to) [(a|the|my|our)] (laser|laser level|level|water level|transit|string|string line|long level|steel rule|steel tape|tape|rule|builder's level)
		(in|at|on) (two|three|both|a couple of|several|a few|2|3) (spots|places|points|heights)
		(client|customer|owner|wife|husband|landlady|boss|neighbor|kids|people|family) (was|were|has been|have been|got|is|are) promised`},
	{Kind: Fixed, Key: "fixed", Ways: `
		(i|we) (put|hung|stuck|got|screwed|nailed|bolted|fastened|fixed|mounted|tacked|set) up
		(have|has|had|already|just) [(already|just)] (hung|mounted|attached|installed|fastened|fixed|screwed|nailed|bolted|secured|tacked|hung up|put up|put in|put on|screwed on|bolted on|nailed on)
		(is|are|was|were|has been|have been|got|gets|already) [(already|all|firmly)] (hung|mounted|attached|installed|fastened|fixed|screwed|nailed|bolted|secured|tacked|glued|anchored|lagged) [(in|on|up|down|there|fast|in place|tight)] [(already|now|for good|solid|before|yesterday|today|this morning|last week)]
		(is|are|was|were|already) (on|up|in) (there|place|position) (for good|already) [already] [(for good)]
		[(is|are|was|were)] (up|on|in|there|fast) (already|for good|to stay|and stays|and done) [(already|for good)]
		[(and|,)] [(it|that|they)] (stays|stay|staying|has to stay|must stay) (put|there|in place|where it is|where they are|as it is|fixed)
		[(and|,)] [(it|that|they|we|i)] (can not|can not be|will not|must not be|is not to be|are not to be|is not|not) (move|moved|moving|budge|be moved|shift|shifted|unscrewed) [(it|them)] [(now|anymore|any more|any longer)]
		(leave|keep|hold) [it] where (it|that one|this one|RAIL) (is|sits|hangs|was|already is|is now) [(fastened|hung|mounted|attached|bolted|screwed|fixed|nailed|installed|set)] [(now|already)]
		where (it|that one|this one|RAIL) (is|sits|hangs|was|already is) (fastened|hung|mounted|attached|bolted|screwed|fixed|nailed|installed|set|now) [(now|already)]
		[(previous|last|former|other|old|first)] (fellow|guy|carpenter|builder|owner|crew|man|contractor|framer|worker|tenant|owners|people|bunch) [(has|had|have)] [already] (hung|mounted|attached|installed|fastened|fixed|screwed on|nailed on|bolted on|put up|put in|secured)
		(PERSON|he|she|they) (has|had|have) [already] (hung|mounted|attached|installed|fastened|fixed|screwed on|nailed on|bolted on|put up|put in|secured)
		[(my|our|the)] PERSON already (hung|mounted|attached|installed|fastened|fixed|screwed on|nailed on|bolted on|put up|put in|secured)`},
	{Kind: Top, Key: "top", Ways: "(top edge|upper edge|top side|upper side|top|tops|top edges|upper edges) of (it|that one|them|those|this one) [(is|are|sits|at|comes to|comes at|stands at)]"},
	{Kind: Fall, Key: "falls", Ways: `
		(tips|tip|tipped|tilts|runs downhill|goes downhill|runs down hill|slants|sinks|sags|heads down|falls away|drains|is graded|graded|is laid|laid|sheds|fell|sloped|pitched|dropped|dipped|ran downhill) [down]
		[(a|the|with a)] (pitch|fall|slope|grade|tilt|downslope|gradient) [of]
		(poured|laid|built|graded|set) [out] (with|at|to) [a] (pitch|fall|slope|grade|tilt) [of]`},
	{Kind: PerFoot, Key: "per foot", Ways: `
		(each|every|a|per|to each|in each|for each|in every|with every|for every|with each|in a|to a|to every) (foot|ft) [(of (run|length|floor|deck|travel))] [(you|we|i|it|one)] [(go|goes|run|runs|travel|travels|walk|move|moves|head|come|take)] [(along|across|over)]
		(each|every) foot (you|we|i|it) (go|goes|run|runs|travel|travels|walk|move|moves|head|come)`},
	{Kind: Side, Key: "right", Sense: Meaning("opening side"), Ways: "(heading|going|running|over to|as you go|as it goes|as it runs|off to|out to|facing) [(to|towards|toward)] RIGHT [(hand)] [(side|end|POST)]\nover (at|by) RIGHT [(hand)] [END] [(POST|end|side)]"},
	{Kind: Loc, Key: "more or less nothing", Sense: Meaning("| *"), Ways: `
		(going|running|heading|working|moving|walking|reading) [from] (left to right|right)
		from [(the)] LEFT [END] [(POST|end|side)] [(over|across|all the way)] to [(the)] RIGHT [END] [(POST|end|side)]
		(for drainage|for the drainage|for drain|for runoff|to drain|so it drains|so that it drains|to shed (water|the water|rain|the rain)|so it sheds (water|the water|rain)|for water|for the rain|to let the water run off)
		(somewhere|out) (along|across) (there|it)`},
	{Kind: Lean, Key: "leans", Ways: `
		(kicked|kicks|kicking|leant over|racked|racks|bowed|heaved|drifts|drifted|wandered|wanders|strays|is knocked|is cocked|cocked|rakes|raked|heels) [(over|off|out of plumb)]
		[(has|have|is|are|was)] (gone|got|out|off|standing|come|thrown|moved|shifted|settled|knocked) (out of|off) plumb [(and|,|so|now)] [it] [now] [(leans|lean|leaning|tilts|tips)] [(by)]
		(is|are|stands|was) not [(quite|exactly|dead|at all|really)] (plumb|straight|vertical|true|upright) [(,|and|but|so|;|:)] [it] (goes|runs|kicks|comes|is|heads|falls|drifts|wanders) [(over|out|by)]
		(plumb bob|bob|plumb line) [(held)] (on|against|from|down|by) [(the)]
		(four|six|two|4|6|2) (foot|ft|footer) level [(held)] (on|against) [(the)]
		(post|spirit|torpedo|long|bubble) level [(held)] (on|against) [(the)]
		(out of|off) plumb [(by)]
		[(has|have)] (settled|heaved|sunk|shifted|moved) [(and|,|so)] [(it|now)] [now] (leans|lean|leaning|tilts|tips)`},
}
