package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// mendedPhrases are turns of phrase in which one word makes another one of all the rest: a correction that leans on what it corrects, a
// change that names where it ends, a question for what was said before, a wish to be done behind an order.
var mendedPhrases = []phrase.Placed{
	// What is corrected goes by the same edge: "level with the wall, scratch that, an inch and a half above it".
	{"!POST|(added POST) !((is|are|be|should be|will be|must be|goes|go|stands|stand|stop|stops|end|ends|cut|set|finish|finishes) [..]) level|flush|even|(the same height)|(same height)|(the same)|same with|as|to|at ?(top of) WALL|(top rail)|top|(top board) ,|.|;|- ?hm|hmm|oh|er|uh|well|,|. scratch|strike|forget|(no wait)|(wait no)|(no ,? wait)|no|nope|nah|wait|sorry|rather|actually|(make it)|(make that)|(let us say) ?that|it ?,|.|no ?(make it|make that|say|better) # above|over|past|higher|taller|proud ?it|that|(than that)|(of it)|(than it)|them|top", "$1 $2 $3 above the wall", nil},
	{"!(POST [height])|(added POST) level|flush|even|(the same height)|(same height)|(the same)|same with|as|to|at ?(top of) WALL|(top rail)|top|(top board) ,|.|;|- ?hm|hmm|oh|er|uh|well|,|. scratch|strike|forget|(no wait)|(wait no)|(no ,? wait)|no|nope|nah|wait|sorry|rather|actually|(make it)|(make that)|(let us say) ?that|it ?,|.|no ?(make it|make that|say|better) # above|over|past|higher|taller|proud ?it|that|(than that)|(of it)|(than it)|them|top", "$1 $2 above the wall", nil},
	{"!(POST [height])|(added POST) level|flush|even|(the same height)|(same height)|(the same)|same with|as|to|at ?(top of) WALL|(top rail)|top|(top board) ,|.|;|- ?hm|hmm|oh|er|uh|well|,|. scratch|strike|forget|(no wait)|(wait no)|(no ,? wait)|no|nope|nah|wait|sorry|rather|actually|(make it)|(make that)|(let us say) ?that|it ?,|.|no ?(make it|make that|say|better) # below|under|beneath|lower|shorter|shy|short ?it|that|(than that)|(of it)|(than it)|them|top", "$1 $2 below the wall", nil},
	// A change that names where it ends.
	{"lift|raise|hoist|hike|jack|bump|bring|move|take|push|pick|keep|hold bottom RAIL ?up another|(a further)|further|(an extra)|(one more) # ?clear|up|higher ?off|of|from|above|over ?of FLOOR", "raise the bottom gap by $1", nil},
	{"lift|raise|hoist|hike|jack|bump|bring|move|take|push|pick|keep|hold bottom RAIL ?up # more|further|farther|higher|(higher up) ?clear|up ?off|of|from|above|over ?of FLOOR", "raise the bottom gap by $1", nil},
	{"lower|drop|bring|let|move|take|push bottom RAIL ?down another|(a further)|further|(an extra)|(one more) # ?closer|nearer|down to|toward|towards FLOOR", "lower the bottom gap by $1", nil},
	// A limit whose quantity stands amid its words.
	{"no|never|(not any) less|tighter|smaller|narrower !GAP|OPENING|BAY than #", "$1 at least $2", nil},
	{"no|never|(not any) more|wider|bigger|larger|greater !GAP|OPENING|BAY than #", "$1 at most $2", nil},
	{"less|(a smaller)|(a tighter)|(a narrower) !GAP|OPENING than #", "$1 less than $2", nil},
	{"(a bigger)|(a larger)|(a wider) !GAP|OPENING than #", "$1 more than $2", nil},
	// A "why" in another question asks as one of its own.
	{"why !it|that|he|she|they|we|i|you|there !is|are|can|could|will|would|do|does|did not", "why $2 $1 not", nil},
	// Denied twice is denied once.
	{"do not !let|have|want|make|get|leave|give|allow none|no ?of !RAIL|GAP|BAY|them", "do not $1 any of $2", nil},
	// What is tried out stands behind the comma.
	{"try it|that|this|them|((his|her|their|these|those|the) ?own numbers|figures|sizes|version|layout|way) ?out ,|:", "try", nil},
	{"would you believe it ,|.|!", "", phrase.StartsClause},
	{", that is|was where ?the|my|our|all|everybody|everyone|people|kids|children|(_ [_]) walk|walks|run|runs|go|goes|come|comes|pass|passes|enter|enters|live|lives|play|plays|cut|cuts ?through|in|by|past ?anyway|anyhow|mostly|usually $", "", nil},
	{"?(help ME) ?to understand|learn|follow , step by step , how", "walk me through how", nil},
	{"(what if|if|suppose|say) we|i|you|they lost|lose|dropped|shed !a|one|two|three RAIL", "what if we take out $1 rail", nil},
	{"end|ends|ended|ending ?up as scrap|waste|firewood|kindling", "be wasted", nil},
	// What else goes on is no order.
	{"while|as|since i|we|you am|are|is ?still sawing|cutting|(at it)|(at that)|there|buying ?, ?you ?can ?also", "", phrase.StartsClause},
	// Spares beyond what is needed are no boards of the stack.
	{"!##|two|three|one|four boards|rails|planks|sticks|(two by sixes)|(two by fours) over|beyond|(more than)|above (what ?(it takes|we need|i need|is needed|the list says|the job takes))|(it takes)|(the list says)|needed|(we need)|(i need) ?, ?as|for ?spares|(just in case)|insurance", "$1 spare boards", nil},
	{"as generous|roomy|ample as possible|(we can ?make it)|(it can be)|(can be) ?within that|those", "and as wide an opening as possible", phrase.SaidBeforeOf(scan.WordSet("opening doorway passage walkthrough entrance entry gateway"))},
	// What is left out of it claims nothing.
	{"leave|keep|set|put|never mind PERSON|(PERSON 's)|his|her|their ?own sketch|drawing|plan|plans|numbers|sheet|version|layout out of it|this|that|aside ,|;|.|for now|and", "", phrase.StartsClause},
	{"enough of|about|with PERSON|(PERSON 's)|his|her|their ?own sketch|drawing|plan|plans|numbers|sheet|version|layout ,|;|.|:", "", phrase.StartsClause},
	// A slip is owned up to before it is set right.
	{"?oh ?sorry|oops|pardon ?, i|we ?just|(have ?just) made a|one mistake|error|slip|blunder ?earlier|before|there|above|(just now)|myself ,|:|;|.|-", "", phrase.StartsClause},
	// Surprise asks nothing of its own.
	{"!what|why|how|where|which (in the world)|(on earth)|(in heaven 's name)|(the heck)|(the hell)|(the devil)|(the dickens)|(in blazes) !made|makes|do|does|did|is|are|would|will|can|could", "$1 $2", nil},
	{"is it right|true|so|correct|accurate what PERSON|he|she|they wrote|said|says|claims|claimed|drew|(told ME)|(put down)|figured ,|:|;", "is it true that", nil},
	{"!sketch|drawing|picture|layout|list|marks|cuts ?, along with", "$1 and", nil},
	{"do not|never let !OPENING|BAY|GAP come in|out under|below", "do not let the $1 be under", nil},
	{"!what|which !GAP|HEIGHT|WIDTH|(wall height) would|will|do|does i|we|it|you wind|end up with", "what $2 do we get", nil},
	{"happiest to", "happy to", nil},
	{"how come|why (there is|is there|are there|there are) so much lumber|wood|timber on|in ?the|my|our list|order", "why that many boards", nil},
	// What is no good is asked against, whoever wants it.
	{"why|(how come) ?his|her|their|my|our|a|an|the # !GAP|OPENING|BAY|WALL|(walk through) is|are|was ?just|simply|really (no good)|bad|trouble|(out of the question)|(off the table)", "why not $2 $1", nil},
	// Lengths come and go in one breath.
	{"add # to ?the stock|list|(what they sell) ,|;|and|but lose|drop|(take out)|(take off)|strike|remove #", "they also sell $1 . they are out of $2", nil},
	// "Right at" is exactly so.
	{"start|begin|starts|begins|set|put|place !([the|my|our] OPENING|it) right at|around|about # off|from|in", "$1 begins $2 from", nil},
	// What harm it does, if every cut is out, is what is tried.
	{"what ?is|would|will|be harm|danger|evil ?done|be ?be if", "what if", nil},
	{"(is there|(would|will) there be|are there) ?any|some|much|a|real|great harm|danger ?done if", "what if", nil},
	{"^ any|much harm|danger ?done if", "what if", nil},
	{"(what|how much) harm|damage (does|would|will|can|could) (it|that) do if", "what if", nil},
	{"how bad is|would|will ?it ?be|get if", "what if", nil},
	// What was said before is asked for, and nothing is claimed.
	{"!((what|which) ?(_ [_] [_])|(how (much|many|wide|high|tall|big|long|far|low|thick)) ?(_ [_] [_])) did i|we|you say|tell|give|mention|state|settle|enter|decide ?on ?you|me ?before|earlier|again|first $", "$1", nil},
	{"what|(how much) did i|we say|tell|give|mention|state ?you|that _ ?_ ?_ (cost|costs|went for|ran|run|((was|were|is|are) (apiece|each|a piece))) $", "recap", nil},
	{"what price|prices|cost|costs did i|we say|tell|give|mention|quote ?you ?for|on _ ?_ $", "recap", nil},
	{"# is ?just ?exactly what i|we ?have ?just said|told|gave|wanted|asked ?you ?for $", "$1", nil},
	// Somebody looks for himself, and tells what there is.
	{"^^ ?ok|okay|so|well|wait ?, ?hang|hold ?on ?, ?just let me ?just|quickly|quick check|verify|look|measure|see ?here ,|-|. !..  $$", "$1", nil},
	// Done behind an order.
	{"draw|sketch it|this|her ?all ?up|out ?for ?me and|, ?then call it quits", "draw it . quit", nil},
	{"show|give ?it ?to ?ME and|, ?then call it quits|(a day)|(a night)", "show me the drawing . quit", nil},
	{", ?and|then ?then we|i am|are ?all done|finished|through here ?now|then|today $$", ". that is it", nil},
	{"and|then ?then we|i am|are ?all done|finished|through here ?now|then|today $$", ". that is it", nil},
	// Two tables in one breath.
	{"drawing|sketch|elevation|diagram|dwg|plan and|plus|(and then)|(and also)|(as well as)|(along with) !((cut|cutting) (list|lists|lengths|sheet))|cuts ?please ?too|(as well)|both", "picture and $1", atClauseEnd},
}
