package idiom

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is asked for in few words and in the words of everyday is set to the plain question before a line is cut at its "and"s: "the whole
// rundown", "any gotchas", "what am I in for on materials". Each row holds a whole clause, or the end of one that only tells why or for
// whom it is asked.

// straightAsks are questions for a list, a table or a picture.
var straightAsks = []phrase.Placed{
	// The layout.
	{Where: asksEnd, Plain: "show me the layout", Said: `
		^ [now|then|so] [PLEAD] (give|show|hand|read|get|let) ME [have|see] (whole|full|complete|entire) (rundown|(run - down)|(run down)|works|shebang|workup|(work - up)|enchilada|(ball of wax)|(kit and caboodle)|(nine yards)) [of it] [now|then|again]
		^^ (whole|full|complete|entire) (rundown|(run - down)|(run down)) [please|now] $$`},
	{Where: goesAhead, Plain: ", show me the layout", Said: `
		(,|;|-|--|.) [and|so|now|then|ok|okay|please|alright] (go|solve|compute|calculate|(run it)|(go for it)|(hit it)|(do your thing)|(do your magic)|(off you go)|(let it rip)|(let her rip)|(crunch it)|(run with it)|(do the math)|(run the numbers)) [then|now] [!|.] $$`},
	{Where: goesFromThere, Plain: ", show me the layout", Said: "go [!|.] $$"},
	{Said: "(,|;|-|--|.|and|so) off (you|we) go [then|now|again] [,] [kids|boys|girls|lads|guys|everyone|everybody|team|crew|class|folks|children|gang] [!|.] $$"},
	{Where: showsOrAsks, Said: `
		[,|-|;] (not|(instead of)|(rather than)|(never mind)) (his|hers|theirs|((his|her|their|(the PERSON 's)) (one|version|layout|plan|numbers|figures|list))) [.|!] $$`},
	// What would work.
	{Where: asksEnd, Plain: "what are the options", Said: `
		^ [PLEAD] (run|walk|talk|take|go) [ME] (through|over|past) (everything|anything|all|whatever|(all the (ways|things))|(every way)) [that|which|it] [will|would|could|can|might|may|does] [still|all] (fit|fits|work|works|go|goes|do|(be done)|(come out right)) [here]
		^ what else (could|can|might|may) [still] be (done|tried|built|made|changed|had) [here|instead|(with (it|this|that|(this wall)))|(about (it|this|that))]
		^ (how|(in what way)|(which way|ways)) else (could|can|might|may|should|would) (i|we|one|you) (lay|arrange|set|divide|split|plan|work|space|stack|build|do|make|configure|figure) [out|up] (this|it|that|(this|the|my|our) (wall|halfwall|layout|thing|whole thing)|things) [out|up] [here]
		^ (how|(in what way)) else (could|can|might|may) (this|it|that|(this|the|my|our) (wall|halfwall|thing|layout)) be (laid out|arranged|set out|divided|split up|planned|spaced|stacked|built|done|made|configured)
		^ [any|(what (are|is))|all|list|show|(show me)] (possible|workable|feasible|allowable|permissible|acceptable|viable) ((RAIL (counts|numbers|totals))|((numbers|counts) of RAIL)|(layouts|arrangements|combinations|combos)) [\?]
		^ [and|so|but|ok|well] if (that|this|it|(his|hers|theirs|((his|her|their) (plan|way|one|layout|version)))) ('s|is|will|would|does) (no good|no use|out|wrong|not (good|right|possible|ok|okay|allowed|(any good)|(an option)|do|work|fit|go|fly)) , [then] what (is|will|would|does|might|could) [be|work|do|fit|go|fly|then]`},
	{Where: asksEnd, Plain: "what if $1 $2 , what are the options", Said: `
		^ [PLEAD] (run|walk|talk|take|go) [ME] (through|over|past) (everything|anything|all|whatever|(all the (ways|things))|(every way)) [that|which|it] (will|would|could|can|might|may|does) [still|all] (fit|fits|work|works|go|goes|do) with ## !RAIL`},
	{Where: asksEnd, Plain: "what are the options", Said: `
		^ [PLEAD] [any|list|show|(show me)|what are|what is] [all] [the] (other|different|valid|more|further|remaining) [possible|workable|feasible|allowable|allowed|valid] ((RAIL (counts|numbers|totals))|((numbers|counts) of RAIL)|layouts|arrangements|combinations|combos) [(there are|are there)] [\?]
		^ [PLEAD] [(are there|have you got)] (other|more|further|different) possible RAIL (counts|numbers)
		^ [and|so|but|ok|well] if (##|that|this) [RAIL] (does|do|will|would|can) not (work|fit|do|go|fly) , [then] what (is|will|would|does|might|could|can) [be|work|do|fit|go|fly|then]
		^ [and|so|but|ok|well] if (that|this|it) is (out|not (allowed|good|possible)) , [then] what (else|(else (is|would be|could be|will be) [there|possible|allowed|left])|(else (would|could|will|can) (work|fit|do|go))|(is [allowed|possible|left])) $
		^ (how|(in what (way|ways))|(in (which|what) other (way|ways))) [else] (could|can|might|may) (this|it|that|(this|the|my|our) (wall|halfwall|thing|layout)) be (laid out|arranged|set out|divided up|split up)`},
	// Where the posts stand.
	{Where: asksEnd, Plain: "where do the posts go", Said: `
		^ [PLEAD] (spot|locate|site|position|situate|pinpoint) (post|posts|((added|new|extra) POST)) [for ME]`},
	{Where: asksEnd, Plain: "where does the new post go", Said: `
		^ [and|so] how far [over|in|along|down|across|out] (from|off) (left|right) [hand] [end|side] [POST] (does|do|is|are|will|should|would|must) [ADDED|middle|center] POST [have to|need to|want to] (sit|go|stand|land|be|(end up)|come|belong|(get set)|(be set))
		^ (i|we) (am|are) (about|ready|fixing|set|waiting|going|here|getting ready|all set) to (drill|dig|anchor|bolt|set|lag|mark|core|plant) [in|out|down] [the [slab|floor|ground|holes|hole]] [for] (POST|(new|added|extra|middle) POST|base) [in|down|now] (,|;|.|-|--) [so|and|now] where (is|does|do|should) (it|that|this|they|one) [have to|need to] go`},
	// How long the pieces are.
	{Where: asksEnd, Plain: "show me the cuts", Said: `
		^ [and|so|tell me] (which|what) (pieces|piece|boards|board|rails|rail|parts|part|lengths|sticks|stick) (get|gets|are|is|do i|do we|should i|should we) [get] cut [to|at] (how long|what length|what|(which length))
		^ where (do|should|must|shall|will|would) (i|we) (cut|saw|chop|lop|trim) [these|those|the|my|each|all] (RAIL|STIFF|them|lumber|stock|wood) off [at]
		^ [PLEAD] [(give|show|tell|read) ME] (cut lengths|cuts|(cut list)|lengths) (for|of) [all] (RAIL|POST|STIFF) (and|plus|&) [for] [all] [new|added|extra] (RAIL|POST|STIFF) [(and|plus|&) [for] (RAIL|POST|STIFF)]`},
	// What is bought.
	{Where: asksEnd, Plain: "what do i need to buy", Said: `
		^ [so|and] (what|which|(what all)|(how much)) (lumber|wood|timber|boards) (and|&|plus|or) [what|which|how much] (hardware|fasteners|brackets|fittings|ironmongery|screws) (does|do|will|would|should|must|am|are|is|did) (it|this|that|they|i|we|you|(the|this|my) (wall|job|thing|project|layout|plan|screen)) [(going to|gonna|have to|need to|want to)] (take|need|require|want|buy|get|order|(call for)|(use up)|use|eat)
		^ [so|and] (what|which|(what all)|(how much)) (hardware|fasteners|brackets|fittings|screws) (and|&|plus|or) [what|which|how much] (lumber|wood|timber|boards) (does|do|will|would|should|must|am|are|is|did) (it|this|that|they|i|we|you|(the|this|my) (wall|job|thing|project|layout|plan|screen)) [(going to|gonna|have to|need to|want to)] (take|need|require|want|buy|get|order|(call for)|(use up)|use|eat)
		^ how (many|much) (boards|lumber|wood|timber|sticks|planks|pieces) [(of lumber)] (do|should|must|will|would|am|are) (i|we) [have to|need to|want to|going to|to|got to] (buy|get|order|purchase|pick up) (and|,) [and] ((which|what|in which|in what) (lengths|length|sizes|ones)|how long)`},
	// What it costs.
	{Where: asksEnd, Plain: "what does it cost", Said: `
		^ [so|and|ok] what (am|are|will|would) (i|we) [be] in for [,] [all (in|told)] (on|for|in|with) [all] (materials|lumber|wood|supplies|hardware|parts|everything|(the (lot|job|wall|thing|whole thing))) [,] [money wise|money - wise|in money|cost wise|cost - wise|dollar wise|dollar - wise|moneywise|in dollars|all told]
		^ [so|and|ok] what (am|are|will|would) (i|we) [be] in for [,] [all (in|told)] (money wise|money - wise|in money|cost wise|cost - wise|dollar wise|dollar - wise|moneywise|in dollars)
		^ [PLEAD] (work out|figure out|figure|total up|total|tot up|add up|give ME|tell ME|what is|get ME|show ME|find|calculate|compute|reckon) (price|cost|total|bill|total cost|total price) (of|for|on) ((the (lot|whole lot|whole thing|whole job|whole works))|everything|(it all)|(all of it)|(all this)|(all that))
		^ [(what is|what 's)] [the|a] price tag [(on|for|of) (this|that|it|everything|(this|that|the) [whole|entire] (thing|job|wall|lot|project|one|layout|plan|setup))] [\?]
		^ [PLEAD] [(give|get|show|tell|let|(can i have)|(could i have)) ME [have]] (cost|price|ballpark|dollar|money) (figure|number|total|amount) [please|now]`},
	// What to watch for.
	{Where: asksEnd, Plain: "what should i watch out for", Said: `
		^ [is there] (anything|something|any thing) [that] [(i am|we are)] (missing|forgetting|overlooking|(not seeing)|(not thinking of)|(leaving out)) [here] [(that|which) (will|would|could|might|may|is going to) (come back to (haunt|bite|get)|bite|haunt|hurt|trip|sink|cost|burn|get) ME [later|up|down the road|in the end|on it]]
		^ (anything|something) [that] [(will|would|could|might|may|is going to)] come back to (haunt|bite|get) ME [later|down the road|in the end]
		^ [PLEAD] (give|read|tell|show|let) ME [have|see|in on] fine print
		^^ [and|so] (what is|where is) [the] fine print [here] $$`},
	// How it looks.
	{Where: asksEnd, Plain: "show me the drawing", Said: `
		^ [but] (i|we) would (love|like|just love|really like|really love|sure like|care) to see (what|how) (that|it|this|she|(that|the|this) (wall|halfwall|thing|layout)) (looks|will look|would look|is going to look) [like]
		^ (i|we) (want|wanna|need|wish|would like|would love) to ((look|(have a [good] (look|peek))|(take a [good] (look|peek))) at (it|her|(the|my|our) (wall|thing|whole thing))|see (it|her)) [first|now|please]`},
	{Plain: "what would it look like with", Where: figureSoonEnds, Said: `
		^ [but] (i|we) (want|wanna|need|would like|would love) to (look|have a [good] (look|peek)|take a [good] (look|peek)) at (it|this|that|her|(the|my|our) wall) with
		^ [but] (i|we) (want|wanna|need|would like|would love) to (see|watch) (it|this|that|her|(the|my|our) wall) (work|fit|go|done|built|drawn|worked out|laid out) with`},
	{Where: showsThings, Said: `
		[,] so [that] (i|we) (can|could|may|might) (show|send|give|hand|take|bring|email|run|pass) (it|that|this|them) [over|on|along|by] [to|past] [(my|our|the) [_] _|him|her|them|everybody|people]
		[,] so [that] (i|we) (can|could|may|might) (show|give|hand|send) ((my|our) [_] _|him|her|them|everybody|people) [it|that|this|(what (it|that|this) (looks|will look) like)] $`},
	// How it came to be.
	{Where: asksEnd, Plain: "how did you get $1", Said: `
		^ [and|so] (where|(how come)|what) did [that|this] !(ASKED|((rail|board|post|stiffener|bay) count)|TOPIC) [number|figure|value|size|measurement|result|total] come [out] (from|of)
		^ [PLEAD] (explain|justify|account for|defend|break down|clear up) !(ASKED|((rail|board|post|stiffener|bay) count)|TOPIC) [to|for] [ME] (,|;|-|--|.) (how|where) (did|do|would|have) you (get|got|come|came|arrive|land|figure|work|worked|pick|reach|calculate|decide|derive) [by|at|on|up with|to] (it|them|that|those|these) [out|from]
		^ [PLEAD] (explain|justify|account for) (how|where) you (got|came by|arrived at|landed on|figured|worked out|picked|calculated|get) !(ASKED|TOPIC) [from]`},
	{Where: asksEnd, Plain: "show me $1 , how did you get $1", Said: `
		^ [PLEAD] (give|show|tell|read|let) ME [see|have] !(TOPIC|cuts|marks|cost|price) (and|plus|,) [and|also|then] (how|where) (you|they|it|i) [(got|get|came up with|came by|arrived at|worked out|worked|figured|figured out|calculated|derived|picked|come up with|have) (them|it|those|that|these)|(came|come) (from|about)] [out|from]
		^ (what are|what is) [the|my] !(TOPIC|cuts|marks|cost|price) and how did you (get|come by|arrive at|work out|figure|come up with|calculate) (them|it|those|that|these) [out]`},
	{Where: asksEnd, Plain: "why not $1 $2 with a gap of $3", Said: "^ why not [just] [have|do|use|go with|take|put in] ## !RAIL (at|\\@) #"},
	// How it is worked out.
	{Where: asksEnd, Plain: "teach me $1", Said: `
		^ (i|we|((my|our|the) [_] _)) (want|wants|need|needs|would like|would love|have|has|ought|should) [to] [be able to|know how to|learn [how] to|learn] (work|figure|calculate|compute|find|reckon|do) [out] !(ASKED|((rail|board) count)) [out|sum|sums|math] [(myself|ourselves|themselves|himself|herself|(by (hand|myself|ourselves|themselves))|(on (my|our|their) own))] (,|;|-|--|.) [so|please|can you|could you] (teach|train|school|coach|instruct|show) (me|us|him|her|them|((my|our|the) _)) [how|(how (it is|to do) [done|it|that])]`},
}

// straightKept are orders about what was said: what to keep, take back and bring back, and how this is spoken with.
var straightKept = []phrase.Placed{
	// What stays where the rest goes.
	{Where: asksEnd, Plain: "forget all but the rails", Said: `
		^ [PLEAD] FORGETS ALLTOLD [out|away|off|clean] [,] (but|except|bar|all but|apart from|other than|aside from|minus|excepting|barring) [for|just|only|not] (RAIL (count|number|tally|total)|(number|count) of RAIL|(how many RAIL))
		^ [PLEAD] FORGETS ALLTOLD [out|away|off|clean] [,] [and|but] [only|just] (keep|leave|hold on to|hang on to|save|hold|spare) [only|just] (RAIL (count|number|tally|total)|(number|count) of RAIL|(how many RAIL)) [in]
		^ [PLEAD] (keep|leave|hold on to|hang on to|save|hold|spare) [only|just] (RAIL (count|number|tally|total)|(number|count) of RAIL|(how many RAIL)) [in] (,|;|and|, and|but) FORGETS THEREST [out|away|off]`},
	{Where: asksEnd, Plain: "forget all but $1", Said: `
		^ [PLEAD] FORGETS ALLTOLD [out|away|off|clean] [,] (but|except|bar|all but|apart from|other than|aside from|minus|excepting|barring) [for|just|only|not] !(KEPTNAME)
		^ [PLEAD] FORGETS ALLTOLD [out|away|off|clean] [,] [and|but] (only|just) (keep|leave|hold on to|hang on to|save|hold|spare) !(KEPTNAME) [in]
		^ [PLEAD] FORGETS ALLTOLD [out|away|off|clean] [,] [and|but] (keep|leave|hold on to|hang on to|save|hold|spare) (only|just) !(KEPTNAME) [in]
		^ [PLEAD] (keep|leave|hold on to|hang on to|save|hold|spare) [only|just] !(KEPTNAME) [in] (,|;|and|, and|but) FORGETS THEREST [out|away|off]`},
	{Where: asksEnd, Plain: "forget all but $1", Said: `
		^ [PLEAD] FORGETS THEREST [out|away|off] (,|;|and|, and|but) [only|just] (keep|leave|hold on to|hang on to|hold) [only|just] !(KEPTNAME) [in]`},
	{Where: asksEnd, Plain: "forget all but $1 . set $1 at $2", Said: `
		^ [PLEAD] (keep|leave|hold) [only|just] !(KEPTNAME) (at|to) # (,|;|and|, and|but) FORGETS THEREST [out|away|off]`},
	// What does not matter any more is forgotten by its name.
	{Where: forgetsNext, Said: `
		^ [so|and|ok] (i|we) (no longer|do not|do not really|really do not) (care|mind|worry|bother|fuss) [any (more|longer)|anymore|much|at all] [about] (how (many|much|tall|high|wide|long|far|big)|what|which|whether|where) [RAIL|STIFF|POST|we|i|it|they|(it|that) (is|are)|size|is|are|use|have] [any (more|longer)|anymore] (,|;|.|-|--) [so|and]
		^ [so|and|ok] (i|we) (no longer|do not|do not really|really do not) (care|mind|worry|bother|fuss) [any (more|longer)|anymore|much|at all] (about|for) (KEPTNAME|it) [any (more|longer)|anymore] (,|;|.|-|--) [so|and]
		^ [so|and|ok] (never mind|nevermind|(it (does not|no longer) (matter|matters))|(who cares)) [about] (how (tall|high|wide|long|far|big)|where) [KEPTNAME|(it|that)] [is|are] [any (more|longer)|anymore] (,|;|.|-|--) [so|and]
		^ [so|and|ok] [the|my|our|each|every] KEPTNAME (does|do|need|needs) not [have to|need to] (be|stay|keep|remain|go|come|run) [at|to|within|below|under|over|above|less than|more than|at least|at most|no more than|no less than] # [any (more|longer)|anymore|at all|now] (,|;|.|-|--) [so|and]
		^ [so|and|ok] [the|my|our|each|every] KEPTNAME (can|may|could) (be|go|stay|run) (over|under|past|above|below|more than|less than) # [now|again|after all] (,|;|.|-|--) [so|and]`},
	{Where: asksEnd, Plain: "forget the rails", Said: `
		^ [so|and|ok] (i|we) (no longer|do not|do not really|really do not) (care|mind|worry|bother|fuss) [any (more|longer)|anymore|much|at all] [about] how many RAIL [we have|there are|it is|it takes|it gets] [any (more|longer)|anymore] (,|;|.|-|--) [so|and] [just] (forget|drop|scrap|skip) [about] (it|that|them)`},
	{Where: asksEnd, Plain: "forget $1", Said: `
		^ [so|and|ok] (i|we) (no longer|do not|do not really|really do not) (care|mind|worry|bother|fuss) [any (more|longer)|anymore|much|at all] (about|for) [the|my|our] !(KEPTNAME) [any (more|longer)|anymore] (,|;|.|-|--) [so|and] [just] (forget|drop|scrap|skip) [about] (it|that|them)`},
	// What was done last.
	{Where: asksEnd, Plain: "undo", Said: `
		^ [please] [hit|press|do|push|try] [the] (ctrl|control|cmd|command|ctl) [-|+|key|and] (z|zee|zed) [please|now]
		^ [oh|oops|sorry|no|wait] [,] (i|we) did not mean (that|it|this|to|(to (do|say|type|enter|send) (that|it|this))) (,|;|.|-|--) [so|please|can you|could you|just] ((back|take|pull|put|roll|reverse|undo|cancel|scratch|strike) (it|that|this) [(out|back|off)]|undo|back up|go back)`},
	{Where: asksEnd, Plain: "redo", Said: `
		^ [please] [hit|press|do|push|try] [the] (ctrl|control|cmd|command|ctl) [-|+|key|and] (y|(shift [-|+] z))
		^ [no|please|ok] [,] (do|put|bring|make|apply) (it|that|this) [(again|back|in|back in)] (,|;|-|--) [i mean] (((the|that) (thing|one|change|bit|step|last thing|last one))|what) [that|which] (i|we|you) [just|had] (undid|undone|(took back)|(backed out)|reversed|(took out))`},
	{Where: asksEnd, Plain: "start over", Said: `
		^^ [ok|okay|right|so|alright|now] [,] from the (top|beginning|start) [again] (,|;|-|--|.) [with] (new|(brand new)|fresh|another|different) (wall|job|one|project|plan|layout|halfwall)
		^^ [ok|okay|right|so|alright|now] [,] (new|(brand new)|fresh|another|different) (wall|job|one|project|plan|layout|halfwall) (,|;|-|--|.) from the (top|beginning|start) [again] $$`},
	// What was said.
	{Where: asksEnd, Plain: "recap", Said: `
		^ [and|so] (what|which) (figures|numbers|measurements|values|sizes|dimensions|dims|inputs|settings) (did|have) (i|we) [just|already] (mention|give|tell|say|enter|state|provide|supply|list|(call out)|(put in)|mentioned|gave|told|given|said|entered|stated|provided|supplied|listed|(called out)) [you] [so far|already|until now|up to now|again]
		^ [and|so] (what|which) (figures|numbers|measurements|values|sizes|dimensions|dims|inputs|settings) (have you|do you have|did you) [got|get|have|heard|written down|noted] from (me|us) [so far|already]
		^ [PLEAD] (repeat|read|list|recite|say|give|(go over)|(run over)|(run through)|(go through)|show|tell) [back] [ME] [back] [all] [of] (the|my|those|these|all|every) [of] [the|my|those|these] (figures|numbers|measurements|values|sizes|dimensions|dims|inputs|settings|things|figure|number|measurement|thing|bits) [that|which] (i|we) [have] [just|already] (mentioned|gave|told|given|said|entered|stated|provided|supplied|(called out)|listed|(put in)|(read out)) [you] [so far|already|until now|up to now|again]
		^^ [and|so|ok|well] [,] where do we stand [now|(right now)|(so far)|(at the moment)|(at this point)|today|(as of now)] $$`},
	// How this is spoken with.
	{Where: asksEnd, Plain: "help", Said: `
		^^ [so|ok|and|hey] [,] how (is|does|do) [this|it|that] [thing|program|app|tool|gadget|gizmo|contraption|business|stuff] [(supposed|meant) to] work [then|here|exactly|anyway|now]
		^^ \? $$
		^^ \? \? $$`},
	{Plain: "quit", Said: "^^ [:] q $$"},
	// The plan that is named like a floor.
	{Plain: "open the plan called $1 .", Where: showsNext, Said: "^ [then] [now] [please] (open|load|reopen|reload) !(patio|deck|terrace|paving|slab) (and|, and|,|then|and then)"},
	// A post that is to be another height, said by how much.
	{Where: asksEnd, Plain: "make the post height $1 lower", Said: `
		^ [PLEAD] [(make|cut|set|have|want|build|like|keep)] [the|my|our|that] (added|new|extra|freestanding) POST [(be|stand|go|come|(to be)|(should be)|(wants to be)|(needs to be)|(has to be)|(ought to be))] # (shorter|lower)`},
	{Where: asksEnd, Plain: "make the post height $1 higher", Said: `
		^ [PLEAD] [(make|cut|set|have|want|build|like|keep)] [the|my|our|that] (added|new|extra|freestanding) POST [(be|stand|go|come|(to be)|(should be)|(wants to be)|(needs to be)|(has to be)|(ought to be))] # (taller|higher|longer)`},
	// A side set right.
	{Where: asksEnd, Plain: "$1 , no , $2", Said: "!(left|right|middle) , (er|erm|uh|um|err|ah|eh|oops) , !(left|right|middle)"},
	// What was given is asked for again.
	{Where: asksEnd, Plain: "what is the post size", Said: `
		^ [and|so|hey] what [size] did (i|we) (say|tell you|give you|want|ask for|settle on|pick|call for|put down|have) [that|for] POST [(were|was|are|is|(to be)|(would be)|(should be)|(had to be)|at)] [[,] [(was it|were they|is it|are they|either)] @ or @]`},
	{Where: asksEnd, Plain: "what is the rail size", Said: `
		^ [and|so|hey] what [size] did (i|we) (say|tell you|give you|want|ask for|settle on|pick|call for|put down|have) [that|for] RAIL [(were|was|are|is|(to be)|(would be)|(should be)|(had to be)|at)] [,] [(was it|were they|is it|are they|either)] @ or @`},
	{Where: asksEnd, Plain: "what is $1", Said: `
		^ [and|so|hey] what did (i|we) (say|tell you|give you|want|ask for|settle on|pick|call for|put down|have) [that|for] !(KEPTNAME) [(were|was|are|is|(to be)|(would be)|(should be)|(had to be)|at)] [,] [(was it|were they|is it|are they|either)] # or #
		^ [and|so|hey] [the|my|our] !(KEPTNAME) [(on|at|off|beyond|to|down) [to] [the] (far|other|outer|low|back|outside|yard|street) side] , what (did|do|have|had) (i|we) [have] [just|already] (give|tell|say|set|put|enter|want|given|told|said|entered|put in) [you] [(for (it|that|this))|there|down|(it was)|(it at)|(it to)] [again|before|earlier]`},
	{Where: asksEnd, Plain: "what is the drop", Said: `
		^ [and|so|hey] [the|my|our] drop [(on|at|off|beyond|to|down) [to] [the] (far|other|outer|low|back|outside|yard|street|(lawn|garden|downhill)) side] , what (did|do|have|had) (i|we) [have] [just|already] (give|tell|say|set|put|enter|want|given|told|said|entered|put in) [you] [(for (it|that|this))|there|down|(it was)|(it at)|(it to)] [again|before|earlier]`},
	// Two asked for by their names.
	{Where: asksEnd, Plain: "what is $1 and what is $2", Said: "^^ [just] [the|my] !(KEPTNAME) (and|&|plus) !(KEPTNAME) , KINDLY $$"},
	// Where the top lands.
	{Where: asksEnd, Plain: ", how high is the wall", Said: `
		(,|;|-|--|.) [and|so] (what|where) (is|does|will|would|do) (that|this|it|they|those) [all] (put|leave|bring|land|drop) [ME] [at|with] [the|my|our] top [(edge|of (it|(the|my|our) (wall|halfwall))|of everything)] [at|to|on]
		(,|;|-|--|.) [and|so] (what|where) (is|does|will|would|do) (that|this|it|they|those) [all] (put|leave|bring|land|drop) [the|my|our] top [edge] [of (it|(the|my|our) (wall|halfwall))] [at|to|on]`},
	// From where to where a height goes is known.
	{Where: tallAsked, Said: "(,|-|(, from)|(, measured from)|from|(measured from)|(, i mean)) [the] FLOOR [right|(all the way)|clear|straight] [up] to [the|its] [very] (top|tip|peak) [edge|end] [of (it|(the post))]"},
	// What is to be checked was quoted.
	{Where: checkedList, Said: "(quoted|ordered|listed|invoiced|priced|written|(on [the|my|his|her] (quote|order|list|ticket|invoice|slip))) [\\?|.] $$"},
	// Why it is asked for again.
	{Where: asksTable, Said: `
		(,|.|;|-|--|:) [because|as|since|cause] (i|we|he|she|((my|our|the) _)) [have|has] [just|already|gone and|went and] (lost|misplaced|dropped|wiped|smudged|tore|torn|ate|chewed|(left)|(sat on)|(threw (out|away))|(spilled|spilt) [*] (on|over)|(can not|could not) (find|read)) [up] (my|the|our|that|it|them) [other|old|last] [paper|papers|note|notes|sheet|list|copy|printout|pad|notebook|napkin|slip|page|scrap|(scrap of paper)|(piece of paper)|pencil marks] [somewhere|again|at home|in the truck] $`},
	// What is claimed to end up so tall is so tall.
	{Where: claimBefore, Plain: "is $1 tall", Said: "(ends|comes|works|turns|winds|finishes|tops) (up|out|off) [being|at|to be|as] # (tall|high)"},
}

// straightBook is the book of both.
var straightBook = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf(straightAsks, straightKept, askedOfMe, triedWholly, inPassing, littleByLittle, goesAlong, bidden, otherWords)
})

// AskedStraight sets what is asked for in a few everyday words to the plain question or order.
func AskedStraight(atoms []scan.Atom) []scan.Atom { return straightBook().SetIn(nameAgain(atoms)) }

// heldBack are words by which a line that holds figures tries, claims, asks or denies: "go" behind it is another matter.
var heldBack = scan.WordSet("if suppose supposing would could should say says said claims claim thinks reckons told tells what how why which where let lets not never no save open undo")

// goesAhead: figures were told before it, and told plainly.
func goesAhead(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && !phrase.SaidBeforeOf(heldBack)(before, nil)
}

// goesFromThere: a bare figure was told just before it; "two boards go" takes them away, and "2.95 a go" is a price.
func goesFromThere(before, after []scan.Atom) bool {
	n := len(before)
	return goesAhead(before, after) && n > 1 && (before[n-1].Kind == scan.Digits || before[n-1].Kind == scan.Vulgar || chunk.SpelledNumber(before[n-1].Text))
}

// showsThings: a list or a picture is asked for before it, not in a file, and no more follows.
func showsThings(before, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("drawing picture sketch elevation list cuts marks layout steps diagram draw sheet"))(before, nil) && !chunk.Figured(before) && !HoldsWord(before, "print", "html", "svg", "csv", "save", "file") && phrase.EndsLine(before, after)
}

var tablesNamed = scan.WordSet("marks cuts list layout drawing picture steps options warnings cautions heights lengths positions gap opening bay figures numbers")

// asksTable: a table or a figure is asked for before it, and nothing is told.
func asksTable(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(tablesNamed)(before, nil) && !chunk.Figured(before)
}

// figureSoonEnds: a figure follows, and nothing behind it.
func figureSoonEnds(_, after []scan.Atom) bool {
	return chunk.Figured(after[:min(len(after), 2)]) && len(after) < 7
}

// checkedList: what stands before it is to be checked.
func checkedList(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && (before[0].Text == "verify" || before[0].Text == "check" || before[0].Text == "confirm" || before[0].Text == "double") && !HoldsWord(before, "not", "he", "she", "they")
}

// showsNext: something is to be shown behind it.
func showsNext(_, after []scan.Atom) bool {
	return len(after) > 0 && (AskOpeners[after[0].Text] || after[0].Text == "draw" || after[0].Text == "print" || after[0].Text == "list" || after[0].Text == "read")
}

var forgetWords = scan.WordSet("forget drop clear scratch scrap delete ditch remove lose forgets lift skip strike dump toss")

// forgetsNext: an order to forget what it names stands behind it; "forget it" would lean on what is left out.
func forgetsNext(_, after []scan.Atom) bool {
	for len(after) > 0 && (chunk.Joints[after[0].Text] || after[0].Text == "please" || after[0].Text == "just") {
		after = after[1:]
	}
	return len(after) > 1 && forgetWords[after[0].Text] && !PointsBack[after[1].Text]
}

// tallAsked: how tall a post or the wall is was asked before it.
func tallAsked(before, after []scan.Atom) bool {
	return asksEnd(before, after) && !chunk.Figured(before) && HoldsWord(before, "tall", "high", "height") && HoldsWord(before, "how", "what")
}

// claimBefore: somebody is said to say so.
func claimBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(Viewed)(before, nil) && !HoldsWord(before, "i", "we", "not")
}
