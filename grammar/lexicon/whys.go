package lexicon

// whys are still more ways to ask for a reason, to be taught, and to try.
var whys = []Entry{
	{Kind: Head, Key: "why", Loose: true, Ways: `
		how did (you|we|i|it|they|that) [(ever)] (land|settle|end up|arrive|wind up|come|hit|decide|fix|get) (on|at|with|upon|to) [(that|so|this)] [many]
		how did (you|we|i|it|they|that) [(ever)] (come up with|arrive at|get to|come to|come by|end up with|wind up with|work out|figure out|get|figure|calculate|compute|reach|decide on|derive|find|choose|pick|select|determine) [(that|so|this)] [many]
		(where|how) did you (get|pull|take|have|find|dig up|come up with) [(that|those|this)]
		what (do|would|does|did) (i|we|you|it|the wall|that) (need|want|have|require) [(to have)] (that|so|this) (many|much)
		what (is|was) [(the|your)] (reason|point|purpose|idea|sense|use|thinking|logic|rationale|need) (for|of|behind|in) (putting in|adding|having|using|needing|setting|buying|making|cutting|placing|including|installing|putting|wanting|keeping|leaving)
		what (is|was) [(the|your)] (reason|idea|thinking|logic|rationale) [(that|why)] (i am|we are|you are|it is|i|we|you|it|there is|there are)
		what (is|was) (up|going on|the deal|the story) with
		(could|can|would|will) you [please] (explain|tell ME|say|show ME|let ME know) (why|how come)
		(show|give) ME (the|your) (math|maths|sum|arithmetic|working|workings|calculation|figuring) (on|for|of|behind)
		show (the|your) (math|maths|sum|arithmetic|work|working|workings|calculation|figuring) (on|for|of|behind)
		why (in the world|on earth|the heck|exactly|do you think|would you say|must|should)
		why (am|are) (i|we) (supposed|meant|made|told|being told|forced|having|expected) to
		why (do|does|did|would|should|must) (i|we|you|it|the wall|they) [(have to|need to|want to|need|want|require|end up)] [(with)]
		why (is|are|was|were) there
		how did (this|it|that|i|we|the wall|you) [(ever)] (end up|wind up|finish up|come out) (needing|requiring|wanting|using|taking|buying|having)
		(why|how come) (am|are|is|do|does|did) (i|we|you|it|this|they) [(ending up|winding up|end up|wind up)] (needing|requiring|having to buy)
		how come (i|we|you|it|this|they) (am|are|is|end up|wind up|ended up|wound up) (needing|requiring|having to buy)
		(how come|why is it) (i|we|you|they|it) (am|are|is|have|has|need|needs) [(to)] [(have|make|use|put|set|leave)]`},
	{Kind: Tail, Key: "why", Ways: `
		[(get|gets|got|is|are|was|were)] (figured|worked out|calculated|computed|derived|determined|reckoned) [out]
		seems (big|large|wide|high|small|tiny|narrow|tall|short|long|odd|strange|weird)
		such an (odd|ugly|awkward|uneven|oddball|unusual|exact|strange|funny) (number|figure|size|value|fraction|amount)
		such a (weird|strange|funny|small|big|large|tiny|wide|narrow|tall|short|long|messy|peculiar|crazy) (number|figure|size|value|fraction|amount)
		(an odd|a weird|a strange|a funny|an ugly|an awkward|a messy|a peculiar) (number|figure|size|value|fraction|amount)
		come out (odd|strange|uneven|funny|weird)`},
	{Kind: Head, Key: "why not", Loose: true, Ways: `
		why (can|could|will|would|do|does|should|may|did) not (i|we|you|it|that|they|there) [(just|simply|ever)] (get|have|use|do|go with|make|set|put|keep|run|leave|be|fit|give ME|space|go for|cut|build|buy|take|accept)
		why not [(just|simply)] (get|have|use|do|go with|make|set|put|keep|run|leave|be|go for|cut|build|buy|take|give)
		what (is|was|would be|could be|can be) so (bad|terrible|wrong|awful|hard|difficult|impossible|dreadful|horrible|dangerous|harmful|tragic) (about|with|in)
		what is (bad|wrong|terrible|awful|the matter|not to like|not ok|not okay) (about|with|in)
		(whats|what is) wrong with`},
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: `
		(walk|take|step|talk|guide|lead|run|go) [(ME|PERSON|class)] (through|over) [(the|all the)] (math|maths|sum|sums|arithmetic|calculation|calculations|figuring|working|workings|computation|derivation|numbers) (for|of|on|behind|that gives|to get)
		(run|go) (through|over) GAP math with ME
		(walk|take|step|talk|guide|lead) (PERSON|class|lad|girl|boy|kid|kids|them) through [how to] [(find|figure|work out|get|calculate|compute)]
		(run|go) (through|over) with ME [how to] [(find|figure|work out|get|calculate|compute)]
		(teach|show|coach|tutor|help) (ME|PERSON|class) to (find|get|figure|work out|calculate|compute|figure out)
		teach (ME|PERSON|class) [(the|all)] [(about)] [(how)]
		(show|teach) ME (the way|how) to (find|get|figure|work out|calculate|compute|figure out)
		(never|have never|not) done [this kind of] math before`},
	{Kind: Tail, Key: "sum", Ways: "(calculation|calculations|math|maths|arithmetic|computation|derivation|sum|sums)\nhow to (work out|figure|figure out|find|get|calculate|compute) (its|their)"},
	{Kind: OffTail, Key: "off", Ways: "(each|every) mark\n(everything|every thing) (is|was|comes out|came out|were|goes|may be|might be|could be)"},
	{Kind: OffEach, Key: "tolerance", Loose: true, Ways: `
		(everything|every board|every rail|every piece|every cut|every mark|each board|each rail|each piece|each cut|each mark|all of it|all of them|all my cuts|my cuts|the cuts|my marks|each|every one|each one) [(is|are|was|were|may|might|could|can|should|may each|might each|could each|each|goes|went)] [(be)] [(all|each)] (off|out|wrong|over|long or short) [by]
		(tol|tolerance|tolerances)
		(allow|figure|figuring|assume|assuming|count|counting|reckon) [(on|for)] (each|every|each one|every one|each board|each rail|each cut|each piece|each mark|every board|every cut|every piece|everything|all of them) [(cut|board|rail|piece|mark)] [(being|to be|is|coming out|may be|could be)] [(off|out|wrong)] [by]
		how (bad|far off|far out|much trouble) [(does|would|will|could|can)] (it|that|things) (get|be|end up|come out|turn out|go) (if|when) (each|every) [(board|rail|cut|piece|mark|one)] (is|are|was|were) (off|out|wrong) [by]
		how bad [(does|would|will|could|can)] (it|that|things) (get|be|end up) (if|when) (each|every|everything|all) [(board|rail|cut|piece|mark|one)] [(is|are|was|were)] (off|out|wrong) [by]`},
}
