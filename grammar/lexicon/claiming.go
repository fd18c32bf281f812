package lexicon

// claims are more ways in which somebody's figures are reported, beside the plain ones of heads.
var claims = []Entry{
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[(one|other|another|same|this|that|my|his|her|their|our|PERSON|second|first)] [PAPERKIND] PAPERKIND PAPER (SAYS|SHOWS|SUBMITS) [(that|for|me|us|out|down|here)]
		[(one|other|another|same|this|that|second|first)] PAPER [PERSON (sent|gave|made|drew|left|handed|showed) [(ME|in)]] (SAYS|SHOWS|SUBMITS) [(that|for|me|us|out|down|here)]
		[PAPERKIND] PAPERKIND PAPER [for (material|materials|lumber|job|wall|wood)] (is|was|comes to|came to|comes in at|came in at|runs to|amounts to|totals) [for]
		[(other|same|first|second|one)] PERSON [PAPERKIND] PAPER (SAYS|SHOWS|SUBMITS|has|is) [(that|for|me|us|out|down|here)]
		(says|say|said|claims|claim|claimed|reckons|thinks|swears|reports|insists|writes|wrote) (the|my|our|one) PERSON
		(says|say|said|claims|claim|claimed|reckons|thinks|swears|reports|insists) (he|she|they)
		[(the|my|one of my|other|second|first)] PERSON [also] (SUBMITS) [(that|ME|to ME|out|down)]
		[(the|my|one of my|other|second|first)] [PERSONKIND] [PERSONKIND] PERSON [(also|next door|down the (road|street)|across the street|at (counter|desk|yard|store|till|register)|before me|here)] (SAYS|SUBMITS|DRAWS) [down] [(that|ME|to ME)]
		(day|night|other|morning|evening|first|second) shift [also] (SAYS|SUBMITS|DRAWS) [down] [(that|ME)]
		(according|as|thanks) to (PERSON|him|them|her|PERSONKIND PERSON|[PAPERKIND] PAPER)
		(according to|per|going by|by|in|on|as per|from|under|based on) (the|his|her|their|this|that|my|a) [PAPERKIND] [PAPERKIND] PAPER [(it|they)]
		[PAPERKIND] PAPERKIND PAPER :
		(it|that|they|there) [also] (SAYS|SHOWS|SUBMITS) here [that]
		(as|like) (PERSON|PAPER) (SAYS|SHOWS|SUBMITS|has) [(it|that)]
		(as) (stated|shown|drawn|claimed|submitted|quoted|listed|specified|reported) [(in|on|by) [PERSON] PAPER]
		(claimed|stated|submitted|alleged|reported|asserted) [(figures|values|numbers|dimensions|that|it)]
		[(PERSON|PERSONKIND PERSON)] (claim|claims|assertion|statement|contention|position|story|word|version) (is|was) [that]
		(PERSON|him|them|her) (would have|wants) (ME|us) believe [that]
		PERSON (is|are|was|were) (saying|claiming|telling (me|us)|insisting|of the opinion|under the impression|certain|convinced|quoting|proposing|suggesting|reporting|asserting) [that]
		PERSON (come|comes|came) up with
		PERSON (got|gets|get|arrived at|arrives at)
		i (am|was) (told|informed|advised|assured|given to understand|led to believe) [(by PERSON)] [(that|it)]
		(told|informed|advised|assured) (by PERSON) [(that|it)]
		(word|story|claim|rumor) [going around] is [that]
		(please|can you|could you) (check|verify|confirm|vet|validate|test) [(this|these|the following|the claim|his claim|their claim|the claims|for me|whether|if|that)] [(:|that)]
		(check|verify|confirm|vet|validate|test|hold) (this|these|the following|the claim|his claim|their claim|the claims|these claims|these figures|these numbers|this figure|this number) [(for me|please)] [(:|that)]
		(does|would|do) it [(really|actually)] (follow|hold) that
		is it (really|actually|indeed) [(true|right|so|correct)] [that]
		(would|do) you (agree|confirm|say) [that]
		(is|was) (PERSON|PAPER) right [(that|in saying|to say|about)]
		(is|was) (PERSON|PAPER) correct [(that|in saying|to say|about)]
		(see|find out|tell ME|show ME|i wonder|wonder) (if|whether) it (is true|is right|is so|is correct) that
		i (worked|figured|calculated|computed) (it|that) out (to be|as|at|to)
		i (worked|figured|calculated|computed) out
		by my (reckoning|calculation|figures|arithmetic|math|sums) [it]
		(by|on) (PERSON's|his|her|their) (reckoning|calculation|figures|arithmetic|math|sums|count) [it]
		(i|we) (come|came) up with
		my (answer|figure|calculation|result|sum|guess|number|solution) (for|of|on|to)
		you [(also|just|already)] (said|say|told ME|claimed|claim|came up with|showed|show|calculated|figured|computed|answered|mentioned|wrote|suggested|recommended|gave ME) [(that|it)]
		(did|have|had) (i|we|you) (say|said|tell you|told you|given you|give you|ask for|asked for|mention|mentioned|tell ME) [(that|it)]
		(that|this|it|which) is what (PERSON|[PAPERKIND] PAPER) (SAYS|SHOWS|SUBMITS|has|told ME|calls for|call for)
		(check|verify|confirm|test|vet) [(out)] (my|the|his|her|their|our) (numbers|figures|sums|math|arithmetic|claims|claim|work) [(for me|please)] [:]
		(quote|quotation|bid|estimate|bill|total|invoice) (of)
		total on [(the|his|her|their)] PAPER [(is|was|:)]
		is it (ok|okay|fine|all right) that
		i come out (at|with|to)
		(is|was|were|are) what (PERSON|[PAPERKIND] PAPER) (SAYS|SHOWS|SUBMITS|has|told ME)
		PAPER (from|by) [the] (PERSON|PAPERKIND|county|city|PAPERKIND PERSON) (SAYS|SHOWS|SUBMITS|has|have) [(that|for me|us)]
		PERSON who (sold|made|built|helped|drew|cut|did|delivered|works) [(ME|it|this|that|there|here|at)] [(the|this|that|my|our)] [(wood|lumber|wall|porch|deck|plan|drawing|boards|yard|store|work|job)] (SAYS|DRAWS|SUBMITS) [(that|ME)]
		(his|her|their|PERSON's) (figures|numbers|measurements|dimensions|values|readings) (is|are|was|were|say|says|show|shows|give) [:]
		am i (right|correct) (in|to) (thinking|think|saying|say|assuming|assume|believe|believing) [that]
		(can|could) (that|this|it) be (right|correct|true|so) [,]
		i (worked)
		PERSON (marked|marks|has marked|have marked|drilled|has drilled|have drilled) [(POST|it|them|BRACKET|RAIL|the marks)] [at]
		(i|we) (would like|want|need|ask) you to (check|verify|confirm|vet|test|double check|look at) [(that|whether|if)]
		(reportedly|purportedly|ostensibly|presumably|evidently)
		rumor has it [that]
		(group|bench|team|table|pair|row|student|desk|crew|bidder|contractor|supplier) NTH (SAYS|DRAWS|SUBMITS|has|have|got|gets|came up with) [(that|down|ME)]
		[one of] [(my|the|our|these)] (PERSON|class) (in|at|by) [the] (back|front|corner|window|counter|desk|door) (SAYS|DRAWS|SUBMITS|has|have|got|gets|came up with) [(that|down|ME)]
		one of (my|the|our|these|his|her|their) PERSON (SAYS|DRAWS|SUBMITS|has|have|got|gets|came up with) [(that|down|ME)]
		PERSON (cut|cuts|sawed|saws|have cut|has cut|is cutting|are cutting)
		PERSON [(next door|down the (road|street)|across the street)] (used|built|went with|put in)
		PERSON (rang|rung|totalled|totaled|added|priced) (it|that|everything|the lot|it all) [up] (at|to|for)
		PERSON (charge|charges|charging|bill|bills|billed|charged) [(ME)] [for]
		(per|according to) (county|city|town|code|building department|inspector|official)
		(answer|result|solution) (is|was) [that]`},
	{Kind: Head, Key: "check", Loose: true, Ways: `
		[(the|my|one of my|other|second|first)] [PERSONKIND] [PERSONKIND] PERSON (calls|called|call) (out|for)
		[(the|my|one of my|other|second|first)] [PERSONKIND] [PERSONKIND] PERSON (swears by|swore by|vouches for|goes with|goes for|specced|specced out|spec'd|speced|penciled|scribbled|jotted|scrawled|marked down|put down|noted down|is calling for|is calling out|has called for)
		[(the|my|other|second|first)] [PERSONKIND] PERSON (wrote|put|rang|signed|priced) (ME|it|that) (up|down) [(for|at|as)]
		[(the|my)] (lumber|sales|order|contractor|pro|front|service) (desk|counter|office|dept|department) (SAYS|SUBMITS|DRAWS|(wrote|put|rang) (ME|it|that) (up|down)) [(for|at|as|down|that|ME)]
		[(one|other|another|same|this|that|my|his|her|their|our|second|first)] [PAPERKIND] [PAPERKIND] PAPER (calls|called|call) (out|for)
		[(one|other|another|same|this|that|my|his|her|their|our|second|first)] [PERSON] [PAPERKIND] PAPER (starts|start|leaves|leave|left|begins|holds|places|spaces|stops|adds|(adds|add|sums|works) up to|spells out|lays out|works out|comes up with|carries|splits)
		[on] [(his|her|their)] PAPER (has|have) (drawn|marked|noted|written)
		(total|bottom line|grand total|sum|amount) (on|of|in|from) [PERSON] [PAPERKIND] PAPER (is|was|comes to|came to|says|reads)
		(in|on|under|by|with) (his|her|their|PERSON 's) (version|layout|setup|set up|scheme|draft|model|idea|mind|opinion|view|book|head|way|arrangement|system|numbers|figures|math) [,]
		PERSON (wants|wanted|told|asked|tells|asks|would have|had|has) (ME|it) [to] (mark|marking|drill|drilling) [(POST|it|them|BRACKET)] [at]`},
	{Kind: Theirs, Key: "theirs", Loose: true, Ways: `
		(his|her|their|PERSON 's) (numbers|figures|dimensions|measurements|specs|dims|values|sizes|calculations|math|sums|answer|answers|particulars|details|data|findings|results) [(are|is|say|says|were|was|come to|comes to)]`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		(does|do|did|will|would|can|could) (that|it|this|they|those|these|mine|ours|yours|his|hers|theirs|my numbers|my figures|the numbers|the figures|(his|her|their) (numbers|figures|math|count|arithmetic|sums)) [(all|both|really|even|still|seem to|appear to)] AGREE [(up|out|water|right|ok|okay|true|good|well|together|muster|in|plausible|sensible)] [(with|to|against)] [(mine|yours|ours|that|you|me|us|what you (get|got|have|make it|come up with|figure|see|say|calculate)|what (we|i) (get|got|have|make it|figure|said)|the rest|the layout|everything else|your (numbers|figures|count|math|sums|answer)|my (numbers|figures|count|math|layout))]
		(enough|plenty|fair|fine|sound|good|legit|plausible|reasonable|accurate|kosher|close|agreed|possible|doable|sane|realistic|sensible|believable|credible|valid) ?
		[,] (can|could|would|will) you [please] (check|verify|confirm|vet|double check|doublecheck|test|validate|look into|look at) (it|that|this|them|those) [(for me|for us|out|please|over)]
		[,] (please|kindly) (check|verify|confirm|vet|double check|validate) (it|that|this|them|those) [(for me|for us|out|over)]
		(is|are|was|were) (that|it|they|those|these|this) [(really|even|actually)] (enough|too many|too much|too few|too little|sufficient|plenty|overkill|the right (number|amount|count|size|figure)|the correct (number|amount|count|size|figure)|how many [it takes]|what (i|we|you) (need|needed|get|got|have|make it)|anywhere near (it|right)|close|in the ballpark|off|way off|kosher|legit|fair|for real|reasonable|sensible|sane)
		(have|has|did) (he|she|they|PERSON) (lost|got) (his|her|their) (mind|marbles|sums right|math right|numbers right)
		(do|does|can) (i|we) (trust|believe|accept|go by) (that|it|him|her|them|those|this)
		should (i|we) (trust|believe|accept|go by) (that|it|him|her|them|those|this)
		what do you (think|say) [(of (that|it|those|them))]
		what do you make of (that|it|those|them)
		(how|does) (does|do) (that|it|those|they) (sit|square|compare|stack up|hold up|look|sound) with (you|yours|what you (get|got|have))`},
	{Kind: Tail, Key: "claimed", Loose: true, Ways: `
		or so (it|he|she|they|PERSON|PAPER) (says|say|said|claims|claim|claimed|reckons|thinks|insists|tells me|told me)
		(drawn|sketched|specced|pencilled|penciled) [(in|up|out|on (it|there))]
		(is|are|was|were|being|been) [(also|all)] (shown|listed|given|drawn|noted|specified|indicated|claimed|quoted|stated|reported|alleged|advertised|marked|called out|put down|written|dimensioned|called|submitted|pencilled in|penciled in) [(as|to be|being|down)]
		(is|are) said to [be]
		(is|are) supposedly
		(shown|listed|drawn|noted|quoted|stated|reported|claimed|alleged) (as|to be)`},
	{Kind: Tail, Key: "verify", Loose: true, Ways: `
		(verify|confirm|check) [(please|it|that|this|these|those|them)]
		(right|true|correct|fact|yes) or (wrong|not|false|incorrect|fiction|no)
		which [(one|figure|number|value)] [(of)] [(them|those|these|the two|two|it)] (holds|hold|stands|applies|is right|is correct|is true|is it|to believe|do i believe|should i believe|can i trust|do i go by|do you believe|fits|agrees|checks out)
		who [(of)] [(them|the two|two)] (is right|is correct|has it right|got it right|do i believe|is telling the truth)
		(could|can|may|might) (that|this|it|they|those|these) (be|possibly be|really be|even be|all be|work|hold|be right|be true|be so)
		(does|do) (that|this|it|they|those|these) (all|both|really|even|still) (hold|add up|work|agree|check out|fit|tally|square|stand|work out|hold up|hold water|match)
		(does|do) (that|this|it|they|those|these) (match|stand|stand up|fit together|follow|hang together|jibe|compute|line up|correspond|reconcile|pan out|ring true|add up right)
		(is|are) (that|this|it|they|those|these) (about|all|both|really|even|actually|still) (right|correct|true|so|sound|accurate|possible|ok|okay|good)
		(is|are) (that|this|it|they|those|these) (consistent|in order|in agreement|verified|credible|plausible|the truth|valid|feasible|realistic|believable|acceptable|how it is|in line)
		(is|are) (that|those|these|they|it) (figure|figures|number|numbers|claim|claims|dimension|dimensions|marks) (right|correct|true|so|sound|accurate|possible|ok|okay|good)
		(do|does|would|can) you (confirm|concur|agree|accept) (that|this|it|with that|with him|with them|with her|those|these)
		(do|does|would|can) you believe (that|this|with that|with him|with them|with her|those|these)
		(would|do) you (concur|confirm|say so|believe it)
		(do|does) (the|those|these) (figures|numbers|claims) (hold|add up|work|agree|check out|fit|tally|square|stand|hold up|match)
		(what|is) the verdict
		(sound|sounds|look|looks|seem|seems) (right|correct|plausible|ok|okay|good|fine|about right|reasonable) [(for|to you)]
		(yes|no|ok|okay|right|correct) ?
		(come|comes|work|works|turn|turns|pan|pans) out (right|correct|correctly|okay|ok|true)
		true ?
		is (he|she|PERSON|PAPER) (right|correct|wrong|on the money|mistaken|off)
		are (PERSON) (right|correct|wrong|mistaken|off)
		(did|has|have) (he|she|they|PERSON|i|we) (add|added|figure|figured|count|counted|work|worked|do|done|get|got|reckon|reckoned|measure|calculate|calculated) (it|that|this|them) [(up|out)] (right|correctly|wrong|properly)
		(did|have) (i|we) (make|made) a (mistake|slip|error)
		(right|correct) so far
		(do|did|have) i have (it|that) (right|correct)
		(am|was) i (right|correct|wrong|mistaken|off)
		(like|as) (PERSON) (say|says|said|claim|claims|claimed) [it]`},
	{Kind: Tail, Key: "tag", Ways: "(is|are|does|do|was|were|will|would|has|have|did|can) not (it|they|that|there|he|she|we|you|this|those)"},
	{Kind: Enter, Key: "enter", Ways: `
		(enter|record|copy|use|take|put in|put down|log|input|type in|key in|transfer) (what|everything|whatever|all) [that] [(PERSON|PAPERKIND)] [(has|have|on|is on|in)] [(the|WHOSE|that)] [PAPERKIND] (PAPER|PERSON) (SAYS|SHOWS|has|have) [:]
		(enter|record|copy|use|take|put in|put down|log|input|type in|key in|transfer) (what|everything|whatever) is (on|in) [(WHOSE|that)] [PERSON] [PAPERKIND] PAPER [:]
		(enter|record|copy|put in|put down|log|input|type in|key in|transfer) [(these|those|this|the following|the|his|her|their|its|my|our|all the|all)] [(numbers|figures|values|dimensions|measurements|measures|readings|data)] (from|off|out of|on|of|in|as per|per|as on) [(WHOSE|that)] [PERSON] [PAPERKIND] PAPER [:]
		(enter|record|copy|put in|put down|log|input|type in|key in|transfer) (these|those|this|the following) [(numbers|figures|values|dimensions|measurements|readings|data)] [:]
		(enter|record|log|input|key in|type in)
		(put|write|note|jot|pencil) [ME] down`},
	{Kind: Head, Key: "state", Loose: true, Ways: `
		(on|at) site (i|we) (found|find|measured|measure|get|got|read|have|see)
		(i|we) (found|find|read) on site
		(i|we) (taped|found|measured|checked) (it|that|this) [(at|to be|as)]
		(i|we) taped
		my (own|) (tape|measurement|measurements|level|calipers|reading|readings) [(on|of|for|at|across) [(it|RAIL|POST|the rail face|the gap)]] (says|say|reads|read|shows|show|gives|give|has|have|makes it|is|are)
		(by|on|with|per|according to) my (own|) (tape|measure|measurement|measurements|level|calipers|rule|reading|laser)`},
}
