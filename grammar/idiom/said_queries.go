package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// queryTurns are ways in which people ask: for a figure, a list or a reason, with the plain words for each.
var queryTurns = []phrase.Placed{
	{"?and|then tell|show ?me what do|does|should ?the|my|our|these RAIL|boards get cut ?down to", "show me the cuts", nil},
	{"what ?do|should ?the|my|our|these RAIL|boards ?get|all cut ?down to", "show me the cuts", nil},
	// What is bought, and what it comes to.
	{"which|what ?kind|sort|kinds|sorts ?of lumber|wood|timber|material|materials|supplies|hardware|stuff i|we|one should|must|need|shall|(ought to)|(have to)|(will have to)|(will need to)|(am to)|(are to) ?to buy|purchase|order|get|(pick up)", "what do i need to buy", phrase.BothHold(asksEnd, unknownBefore)},
	{"write|type|jot|print|put|make ?me|us ?out|up|down|together|off list of ?all ?of ?the|my lumber|wood|timber|boards|materials|material|parts and|& hardware|brackets|fasteners|screws|(the rest)|(everything else) ?that i|we ?will ?need|have|must|should ?to get|buy|purchase|order|(pick up)", "give me the shopping list", listEnds},
	{"list of ?all ?of ?the|my lumber|wood|timber|boards|materials|material|parts and|& hardware|brackets|fasteners|screws|(the rest)|(everything else) ?that i|we ?will ?need|have|must|should ?to get|buy|purchase|order|(pick up)", "shopping list", nil},
	{"write|type|jot|print|put|make|draw ?me|us ?out|up|down|together|off a|the|my ?full|complete|whole !(TOPIC)", "give me the $1", listEnds},
	{"list of everything|all|(all the things)|(the things)|whatever|(what all) ?that i|we ?will ?have|need|must|should|ought to purchase|buy|get|order ?at|from|in ?the|my ?store|yard|shop|lumberyard|counter", "shopping list", nil},
	{"print|write|type ?me|us ?out|up|off a|the shopping list", "give me the shopping list", listEnds},
	{"^^ ?a|the ?full lumber|wood|timber|material|materials|mat|mats|matl|hardware ?- takeoff|(take ?- off)|list|sched|schedule|reqs ?please|pls $$", "what do i need to buy", nil},
	{"how much am|are|will|do|would i|we ?be ?going ?to hand|handing|pay|paying|give|giving|shell|shelling|fork|forking|cough|coughing|owe|owing|count|counting|plunk|plunking|lay|laying ?out|over|up|down ?to ?at ?the ?my cashier|clerk|till|register|yard|store|counter|lumberyard|(check ?- out)|checkout|(pay desk)|(front desk)", "what does it cost", asksEnd},
	{"total|whole|full|overall|entire cost|price|bill|expense of|for ?all ?of ?the|my materials|material|lumber|wood|supplies|goods", "total cost", asksEnd},
	{"(how much)|what will|do|does|would|are|is ?all ?the|my RAIL|lumber|wood|timber|materials|hardware and|plus|& ?the|my lumber|wood|timber|materials|hardware ?all ?together|altogether cost|run|(come to)|(set back)|(going to cost) ?me|us ?back ?together|altogether|(all told)|(in all)", "what does it cost", asksEnd},
	{"what does|would|will|is your|this|that version|layout|design|plan|arrangement|way|one|scheme ?going ?to cost|run|(come to) ?me|us", "what does it cost", asksEnd},
	{"how many ?sticks|pieces|lengths|boards|ones ?of @ ?in ?all do|should|must|will|would|shall i|we ?need|have ?to need|buy|get|order|purchase|(pick up)|load|haul", "what do i need to buy", asksEnd},
	{"how many bags|boxes|packs|packets|tubs|pounds of screws", "how many screws", nil},
	{"do|will|would|should i|we need|have ?to ?buy|get anything|something ?else ?else besides|(other than)|(apart from)|beyond|(in addition to)|(on top of) ?just lumber|wood|timber|boards|rails", "what hardware do i need", asksEnd},
	{"^ i|we ?am|are|'m ?here ?standing at|in|inside ?the yard|store|shop|lumberyard|counter|(lumber aisle) ?now ,|;|.|- ?so ?and ?now read|give|show|tell me|us ?off the list", "show me the shopping list", asksEnd},
	{"what|(how much) the|this|that|my|our|it ?whole|entire ?WALL|job|thing|project|lot is|will|would|might|could|'s ?going ?to ?end|wind ?up ?be cost|costs|costing|run|(set back) me|us ?back ?(all told)|(in the end)", "what does it cost", asksEnd},
	{"and price|cost it|that|this|them ?out|up ?too|also|(as well) ?for ?me|us", "and what does it cost", phrase.BothHold(asksEnd, showsOrAsks)},
	// Where the marks go, and how long the pieces are.
	{"where|(how (far|high) up)|(at (what|which) heights) ?exactly ?up ?on|along ?the|each|this|my ?POST do|should|would|will|must|can i|we|you ?have ?to ((draw|make|put|strike|snap|scribe) [my|a|the|in] [pencil] (line|lines|mark|marks|tick|ticks))|scribe|tick|pencil|nick|score|strike|scratch|snap|mark ?on|onto|across|up|along ?the|each|this|my ?POST ?for ?each|every|all|the ?single ?of ?the|my ?RAIL|BRACKET|one", "where do my marks go", phrase.BothHold(asksEnd, noFigureSaid)},
	{"where|(how (far|high) up) is|does|do|will|should ?my|the|our pencil|pencils|scribe ?marks|mark|line|lines ?have ?to go|land|come|sit ?up ?on|onto|along ?this|the|each|that|my ?POST", "where do my marks go", asksEnd},
	{"what|which length|lengths am|are|do|should|shall|will i|we set|setting|put|putting|clamp|clamping|lock|locking ?up ?the|my stop|fence|jig|(stop ?- block)|(saw stop) ?block ?to|at|for", "how long do i cut the rails", asksEnd},
	{"?, when|as|once|after|(by the time)|before it|they|each|this|that|(each one)|(each board) ?has|have come|comes|leave|leaves|came|go|goes|(gets cut)|(is cut)|is|are ?finally off|done|(out of)|from|with|through|on|to|into my|the|your saw|chopsaw|blade|(chop saw)|(miter saw)", "", phrase.BothHold(asksEnd, lengthAsked)},
	{"how far off|from|in|along|over|(away from)|(in from) ?the|my|left|right END post|one do|should|would|will|must i|we|you ?have ?to stick|set|put|plant|stand|place|drop|dig ?in ?the|my ADDED POST|one", "where does the new post go", asksEnd},
	{"what|where is|was|would|will ?be ?the right|proper|best|correct|exact|good|intended spot|place|position|location for|of ?the|my|that|this ADDED|middle POST ?to|be|go|stand|is", "where does the new post go", asksEnd},
	{"what|where ?the right|proper|best|correct|exact|good|intended spot|place|position|location for|of ?the|my|that|this ADDED|middle POST ?would|will ?be|is", "where does the new post go", asksEnd},
	{"run|give|read|show|hand|rattle|call|let me have ?me|us ?off ?the|them|those|my !((cut lengths)|cuts|marks|(cut list)|(shopping list)|steps) ?all ?over again|over|(once more)|(one more time)|(another time)", "show me the $1", nil},
	{"run|give|read|hand|rattle|call me|us ?off them|those !((cut lengths)|cuts|marks|(cut list)|(shopping list)|steps)", "show me the $1", nil},
	{"show|let me ?see yours|it|this|that|mine|ours drawn|sketched|pictured ?up|out", "show me the drawing", nil},
	{"^ ?please ?now redraw|resketch ?it|that|this|(the (wall|layout|drawing|thing|picture|plan)) ?for ?me|us ?again|then|now|please", "show me the drawing", asksEnd},
	{",|;|-|. plus|(along with)|(together with)|(as well as) !(what|how|where|which|why) ?is ?are", ", and $1", queriedBefore},
	{"where|(how high) ?up ?exactly should|does|do|will|is|are each|every|the|all|my RAIL|BRACKET ?should|will|has|have|needs|must ?to ?be|get|gets attached|fastened|mounted|screwed|fixed|secured ?on ?onto ?to|at ?the ?POST", "where do the marks go", asksEnd},
	{"where each|every|the|all|my RAIL|BRACKET should|will|has|have|needs|must|is|are ?to ?be|get attached|fastened|mounted|screwed|fixed|hung|secured ?on ?onto ?to|at ?the ?POST", "where do the marks go", asksEnd},
	{"a|the|some drawing|sketch|picture|view|elevation of|showing ?the|my|our finished|final|completed|whole|entire WALL ?please", "a drawing", asksEnd},
	{"i|we would ?really|very ?much|greatly appreciate|welcome a|the drawing", "show me the drawing", asksEnd},
	{"i|we would ?really|very ?much|greatly appreciate|welcome a|the drawing|sketch|picture|elevation ?of|showing ?the|my|our ?finished|final|completed|whole|entire WALL", "show me the drawing", asksEnd},
	{"^^ mk|mrk|marks|mark hts|hgts|ht|hgt|locs|pos ?please $$", "where do my marks go", nil},
	{"where|(how (high|far)) ?up ?off does|do|will|should ?the first|lowest|bottom|bottommost RAIL start|begin|sit|go ?out ?up ?at ?off|from|above|over ?of ?the FLOOR", "what is the bottom gap", asksEnd},
	{"where is|does|do|will|should|would first|second|third|fourth|fifth|next|top|bottom|lowest|highest|last BRACKET go|sit|land|belong ?on ?the ?POST", "where do the marks go", asksEnd},
	{"^^ ?give|show ?me|us ?a|the ?quick|full|short rundown ?please|pls ?\\? $$", "show me the layout", nil},
	{"where|how|what is|does|will|would|do|did that|this|it|they ?all put|leave|land|bring|drop|set ?my|the|our BAY", ", what is the bay width", asksEnd},
	{"height|ht|hgt", "wall height", heightListed},
	{"!(steps|cuts|marks) ?, one by one", "$1", asksEnd},
	// What is done after something is done: the steps, and not once more what is done by then.
	{"what ?else ?all do|should|must|will|would|shall|can i|we do ?next after|once|when ?all ?of ?the|my|our|these posts|post|cuts|marks|layout|cutting|marking ?is|are ?all ?in|up|set|done|made|finished|standing ?there", "what are the steps", asksEnd},
	{"what ?then comes|goes|follows|happens ?next after ?all ?of ?the|my|our|these posts|post|cuts|marks|layout|cutting|marking ?is|are ?all ?in|up|set|done|made|finished|standing", "what are the steps", asksEnd},
	// What comes of it.
	{"^ ?so i|we got ## RAIL ?, ?uh|um !# between ?them|(each one)|each", "$1 rails with $2 between them", nil},
	{"where|what is|does|will|would|do|did that|this|it|they ?all put|leave|land|bring|drop|set me|us ?with|at ?for ?on !(LENQ)", ", what is $1", asksEnd},
	{"where|what is|does|will|would|do|did that|this|it|they ?all put|leave|land|bring|drop|set !(LENQ)", ", what is $1", asksEnd},
	{"what is|does|will|would it|that|this all come|comes|work|works|shake|shakes|pan|pans|turn|turns out ?to|as|like", ", show me the layout", phrase.BothHold(asksEnd, figuresBefore)},
	{"run|work|use|do|give|show|tell ?out ?me|us ?it ?with ?only|just ?through ?by ?on your own|(very own) numbers|figures|sums|math|maths|calculation|calculations|arithmetic|layout|version ?instead|then|please", "show me the layout", asksEnd},
	{"on|by|with|from|using|(going by)|(out of)|off|(according to) your own numbers|figures|measurements|sums|calculations|math|layout|reckoning", "", queriedBefore},
	{"(out of)|(given all)|given my|our|these|those|that|all|all|such numbers|figures|sizes|measurements|dimensions|(of that)|stuff", "", queriedBefore},
	{"total|whole|full|overall|final HEIGHT of ?the|my|our WALL", "height of the wall", queriedBefore},
	{"how much|wide|big|large ?of ?a ?the room|space|gap|clearance|distance|width ?will|would|is|are ?there ?be ?is between ?the|those|these|our ?two POST where|that|which ?(you|we|people|i|one|everybody) walk|pass|go|come ?will ?through|in|by|past", "how wide is the opening", nil},
	{"how do|can|could|will|would|am|should i|we|one ?ever ?supposed ?to know|tell", "tell me", whereAsked},
	{"tell|remind me|us ?of|about ?again what|which ?the !(LENQ) i|we ?have ?had gave|given|told|set|said|picked|chose|wanted|settled|entered ?you ?on ?for ?down ?before|earlier", "what is the $1", asksEnd},
	{"give|show|tell|read|gimme ?me|us ?the|your|all numbers|figures|measurements|dimensions|dims|size|width|widths for|on|of|about|in !(bay ##)", "what is $1", asksEnd},
	{"how big|large|wide|much|thick|deep ?of ?a bite|cut|slot|kerf|groove|swath does|is|will|do the|my|your|this|that ?saw blade|saw|chopsaw ?going ?to take|takes|make|leave|eat|chew|cut ?out ?away ?each|every ?(time|cut)", "what is the kerf", asksEnd},
	{"what|how you ?have ?all get|got|have|had|figured|make|made|(come up with)|(came up with) ?down ?it ?out ?for|of|on ?the BAY", "what is the bay width", phrase.BothHold(asksEnd, queriedBefore)},
	{"^^ !(gap|OPENING|span|(bottom gap)|bay) and ht|hgt|height ?\\? $$", "what is the $1 and what is the wall height", nil},
	{"what would|will|might|could happen|(go wrong)|change ?then if|when i|we|you ?just ?simply forgot|forget|skipped|skip|omitted|omit|(left out)|(leave out)|(leave off)|(left off)|(did without)|(do without)|(did not put in)|(do not put in) ?the|all|any|my !(STIFF)", "what if there are no $1", asksEnd},
	{"what should|must|do|shall|(ought) i|we ?need ?to ?have ?to check|verify|(double check)|confirm|(make sure of)|(be sure of) ?first before|when i|we ?ever ?go ?start ?to cut|cutting|start|begin|build|building|drill|buy ?anything|it|them|everything", "what should i be careful of", asksEnd},
	// What would work.
	{"what else ?would|will|could|might|can|do|does work|fit|do|go|works|fits|(be possible) ?here ?besides|beyond|(other than)|(apart from)|(aside from)|(instead of) ?his|her|hers|their|theirs|my|mine|these|those|the|your ?##|one|plan|version|layout|design ?RAIL", "what are the options", asksEnd},
	{"what would|do|should|might|could|will you recommend|suggest|advise|propose|have|say|counsel ?that ?me|us|i|we ?should ?to do|start|begin|tackle|go ?with|on ?out first|with|(to begin with)|(to start with)|(before anything else)", "what do i do first", asksEnd},
	{"^^ ?and|so|ok|well what|which|whatever fits|(would fit and [what] would not)|(fits and [what] does not)|(works and [what] does not) ?here|then|now|anyway ?\\? $$", "what are the options", nil},
	{"what|which ?are|is ?all ?the other|different|possible|various|else|allowed|workable ?other|different|possible numbers|number|counts|count|amounts of RAIL ?that|which ?i|we would|will|could|can|might|may ?still|also|even ?i|we ?all ?come|work|fit|go|choose|pick|use|have|select|be|do|get ?out|from|in|with|by|possible|used|away ?right|even|evenly|okay|ok|fine|with|too|also ?from", "what are the options", asksEnd},
	{"^ ?and|but|so|ok|well ?, if|since i|we|you|they do|did|will|would|can|could not ?want|like|care ?to ?go|stick|stay|build|do|use|take|follow|trust|like ?with|for|by|to hers|his|theirs|that|it|((his|her|their) (plan|drawing|version|layout|way|idea|design|sketch|figures|numbers)) ?,", "", asksNextAfter},
	{"is|was|would|'s it ?be possible|okay|ok|allowed ?for ?me|us|you ?to find|know|tell|learn|see|hear|get|ask ?out ?me|us ?exactly|about", "tell me", asksNextAfter},
	{"?tell|give|show ?me|us ?the|what order ?in ?which ?all|that ?the everything|things|it|i|we|work|jobs|parts|stuff|(the work) ?should|do|get|gets|go|goes|is|are|should|has|have|must ?to ?be|get done|happen|go|do|(put together)|built|things|it ?in", "what are the steps", nil},
	{"?, when|while|as|before|once ?i|we ?am|are|'m|get|go|start|ever put|putting|build|building|assemble|assembling|start|starting|do|doing|work|working|begin|beginning|cut|cutting ?out ?on|with|to ?build|building|work|cut|put|putting ?this|it|that|everything|anything|((the|my) (wall|job|screen|boards|rails)) ?together|up", "", phrase.BothHold(asksEnd, carefulBefore)},
	// Why it is so.
	{"what is|was|are|'s ?the ?your ?actual|real|actual|good reason|reasons ?why|that|for ?why ?it ?is ?that !(i|we|you|it|he|she|they|LENQ|COUNTQ) ?still|just|simply|really|ever can|could|will|would|should|must|may|do|does not", "why can not $1", nil},
	{"(how come)|why ?does|do|will|would|can|is|did ?not it|this|that|(the (math|sum|total)) ?does|do|will|would|can|is|did ?not ?just ?ever ?come|comes|work|works|add|total|end|ending|coming ?out ?up ?to|at|as|with|in ?even|exactly a|an ?even # !WALL|GAP|OPENING|BAY", "why can the $2 not be $1", asksEnd},
	{"what is|would|could|might|'s it|that ?be about|with !(@ COUNTQ|## COUNTQ|# LENQ|@) ?that|which does|do|will|would|can|is not ?ever|gonna ?going ?to work|fit|go|fly|do|hold|function|add ?up|out", "why can not we have $1", asksEnd},
	{"what do|does|did|would i|we|you|it|they ?even|really|actually|ever ?need|needs|want|have ## !(RAIL|STIFF|(ADDED POST)|POST) ?in|to|per ?every|each|a|the ?single ?BAY ?even for", "why $1 $2", asksEnd},
	{"what is|are|was|were|'s ?that|this|these|those|all|my|our !(((ADDED|middle) (POST|UPRIGHT))|STIFF) ?(in the middle)|there|here|(in between)|(in each bay)|(in there) ?even|actually|really|supposed ?(to be) ?there for", "why is $1 there", asksEnd},
	{"what made|makes|has|decides|decided|determines|governs|dictates|sets|drives|controls ?that !(LENQ|COUNTQ) ?to land|lands|sit|fall|falls|end|ends|come|comes|be|stop|stops|go|goes|turn|turns|is|are ?up|out ?just|exactly where|what|how|(the way)|(so (wide|high|small|big|narrow|tall)) ?it|they ?does|do|did|is|are", "why $1", asksEnd},
	{",|;|-|. ?and|but ?so what is|was|'s|lies|are behind|driving|causing|(the (reason|thinking|logic) (behind|for)) that|this|it|those ?number|figure|one|count|size|width|spacing|numbers|many", ", and why", phrase.BothHold(asksEnd, queriedBefore)},
	{",|;|-|. ?and|but ?so where|how does|did|is|do that|this|the|it ?number|figure|one|count|size|width|spacing come|coming|get|arrive ?from", ", and why", phrase.BothHold(asksEnd, queriedBefore)},
	{"why is|are|do|does|did ?your|the BAY ?come|turn|end|work|get ?out|up ?so|at|such ?much different|bigger|smaller|wider|narrower|off|larger|odds from|than|to|with his|hers|theirs|mine|((his|her|their|my) _)|((what (he|she|they|i) _))", "why the bay width", asksEnd},
	{"why is|are|do|does|did !(LENQ|COUNTQ) ?come|turn|end|work|get ?out|up ?so|at|such ?much different|bigger|smaller|wider|narrower|off|larger|higher|lower|taller|odds from|than|to|with his|hers|theirs|mine|((his|her|their|my) _)|((what (he|she|they|i) _))", "why $1", asksEnd},
	{"why is|are|does|do|did|must !(ADDED POST|(ADDED UPRIGHT)|(middle POST)|POST|UPRIGHT) ?have ?to stick|stand|rise|go|poke|extend|run|reach|be|sticking|standing|come ?up ?out ?so ?far|high|much past|over|above|beyond|higher|taller|longer ?than ?the WALL|top|RAIL|rest|others ?RAIL", "why the post height", asksEnd},
	{"(how come)|why ?is ?there ?is ?it ?a|an|the|that !(OPENING|(walk - through)|(walk through)) ?is ?on|at|to ?the !(left|right) ?hand ?side|end ?, ?and|but|(instead of)|(rather than) ?not ?on|at|to ?the left|right ?hand ?side|end", "why is the opening on the $2", asksEnd},
	{"why is|does|do|did ?the|your total|price|cost|bill|estimate ?come|work|run ?out|up|in ?so ?much higher|lower|more|less|bigger|different|steeper|smaller ?than|from|to his|hers|theirs|mine|((his|her|their|my) _)|((what (he|she|they|i) _))", "why the cost", asksEnd},
	{"^ why ?are ?is ?there no|(not any) !(STIFF|(ADDED POST)) ?there|here ?in ?it ?\\?", "why the $1", asksEnd},
	{"why is|are ?the|my|your|all BAY ?all so|of|such|that ?very big|different|unequal|uneven ?widths|sizes|lengths", "why the bay width", asksEnd},
	{"how ?(was|were|is|are|did) ?the|your|my|this|that !(LENQ)|(COUNTQ)|(cost|price|total|bill) ?(was|were|is|are|has been|get|gets|got) calculated|computed|(worked out)|(figured out)|figured|determined|derived|decided|chosen|picked|reckoned|(arrived at)|(come by)|settled|(added up)", "why the $1", phrase.BothHold(asksEnd, notTaught)},
	{"explain ?to ?me|us where !(LENQ)|(COUNTQ) ?number|count ?is|are|does|do come|comes|came|coming ?from|about", "tell me why $1", asksEnd},
	{"explain ?to ?me|us how you|we|it|they ?ever ?ever got|arrived|came|ended|landed|settled ?up ?at|to|with|on !(LENQ)|(COUNTQ)", "tell me why $1", asksEnd},
	{"show|give me|us ?all ?the|your math|maths|arithmetic|sum|sums|calculation|calculations|working|workings|figuring on|for|of|behind ?how ?wide|high|long|tall|big|many|much !(bay ##)|(LENQ)|(COUNTQ) ?is|are|comes|gets|(comes to)", "why $1", asksEnd},
	{"explain to me|us !how|why|where|what|which", "explain $1", nil},
	{"can|could|may|might i|we ?please see|have|get|follow|check ?the|your|all math|maths|arithmetic|sum|sums|calculation|calculations|working|workings|figuring|numbers|work on|for|of|behind|to ?how ?wide|high|long|tall|big|many|much !(bay ##)|(LENQ)|(COUNTQ) ?is|are|comes|gets|(comes to)", "why $1", asksEnd},
	{"i|we want|need|(would like)|'d|(would love) ?to ?see|have|follow|get|know ?the|all|whole|your math|maths|arithmetic|sum|sums|calculation|calculations|working|workings|figuring on|for|of|behind|to ?how ?wide|high|long|tall|big|many|much !(bay ##)|(LENQ)|(COUNTQ) ?is|are|comes|gets|(comes to)", "why $1", asksEnd},
	{";|,|.|- ?so|and|but ?can|could|would|will ?you ?please ?mind|kindly explain|explaining|spell|(walk me through)|(talk me through)|(help me understand)|(clear up)|(clearing up) ?it|that|this ?out ?to|for ?me|us ?please", "", phrase.BothHold(asksEnd, puzzledBefore)},
	{", ?and what happens|changes|follows if i|we leave|left|take|took|skip|skipped|drop|dropped them|those|it ?out ?altogether|entirely", ", what if there are no stiffeners", phrase.BothHold(asksEnd, stiffenersAlone)},
	{"how many !(RAIL|STIFF) are|do|did|will|would|should i|we ?even|actually|really ?(end up) put|putting|hang|hanging|stack|stacking|mount|mounting|use|using|fit|fitting|install|installing ?up|in ?now|here|then", "how many $1 are there", reasonNext},
	{", ?and what happens|changes|follows|(would happen)|(if we go) without|((if|when) there (are|is) (no|not any)) any|them|those|it|one|ones", ", what if there are no stiffeners", phrase.BothHold(asksEnd, stiffenersAlone)},
	{", ?and|but how long|wide|far|much is|it|are|they|(is it) ?the ?posts ?apart ?on center|centers|centre|centres", ", and how far apart are the end posts on center", asksEnd},
	{", ?and|but how long|wide|far|much on center|centers|centre|centres", ", and how far apart are the end posts on center", asksEnd},
	// What only leads up to it.
	{"^ ?please spare|save|skip ?me|us ?the|all|your ?long|whole reasons|reasoning|explanation|explanations|lecture|story|speech|whys|theory|details|background|preamble|chatter ,|;|.|-|-- ?and ?i|we ?just|only|simply ?(would like)|want|need ?just|only", "give me", phrase.BothHold(figureOrWish, noFigureBehind)},
	{"^ ?and|so ?but for|on|because|(on account of) that|this|which|(that very)|(exactly that) reason|reasons|account ?,", "so", wishedBehind},
	{"?, and|so for|on|(on account of) that|this|which|(that very)|(exactly that) reason|reasons|account ?,", ", so", wishedBehind},
	{"what|where is|was|do|did ?you ?have ?we ?the !(fit|kerf|trim|tape|spare|budget) ?currently|now set|fixed|standing|put at|to", "what is the $1", asksEnd},
	// Notes.
	{"^^ y", "why", whyNoted},
	{"^^ !(op|opn|opg|opening|bay|bays|walkthru|doorway) w|wid|wd", "how wide is the $1", asksEnd},
	{"^^ ?hi|hello|so|well|sorry|help ?, ?but ?i|we am|are|do|'m not ?really|quite|at ?all sure|know|certain|understand what|how ?it ?is ?that ?i|we|one ?am|are ?supposed|meant|allowed|expected|should|can|could|may|ought|need|have|is ?to type|say|ask|enter|write|tell|do|put|talk ?in|into|to ?you|here|this ?here ?box ?;|,|.|- ?so ?and ?can|could|would|will|please ?you ?please help|(give me a hand)|(tell me) ?me ?out|please", "help", asksEnd},
	{"^^ ?hi|hello|so|well|sorry ?, ?but ?i|we am|are|do|'m not ?really|quite|at ?all sure|know|certain what|how ?it ?is ?that ?i|we|one am|are|should|can|could|may|ought ?supposed|meant|allowed|expected ?to type|say|enter ?in|into|to ?you|here|this", "help", asksEnd},
}

// queryEarly are those that other steps would take for something else.
var queryEarly = []phrase.Placed{
	{"what|how ?much is|was|will|would|does ?the|my|our ?grand|whole total|bill|tab ?cost|price|be|come|run ?be ?to for|on ?all ?the|my|this lumber|wood|timber|material|materials|(whole (thing|job|lot|wall))", "what does it cost", phrase.BothHold(asksEnd, notCounted)},
}

// queriedBefore: something was asked before it.
var queriedBefore = phrase.SaidBeforeOf(scan.WordSet("what how where which why show tell"))

// lengthAsked: how long something is, or what to cut it to, was asked before.
var lengthAsked = phrase.SaidBeforeOf(scan.WordSet("long length lengths cut short"))

// carefulBefore: what to be careful of, or what comes first, was asked before.
var carefulBefore = phrase.SaidBeforeOf(scan.WordSet("careful steps cautions first watch"))

// puzzledBefore: somebody did not understand, or asked why.
var puzzledBefore = phrase.SaidBeforeOf(scan.WordSet("why understand grasp follow reason from"))

// unknownBefore: nobody says that he knows.
func unknownBefore(before, _ []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "know", "knows", "knew", "learned":
		return chunk.LastOf(before, 2) == "to" || chunk.LastOf(before, 2) == "not" || chunk.LastOf(before, 2) == "me"
	}
	return true
}

// whereAsked: what follows asks where something goes, or how long it is.
func whereAsked(_, after []scan.Atom) bool {
	return len(after) > 2 && (after[0].Text == "where" && (after[1].Text == "to" || after[1].Text == "the" || after[1].Text == "i") || after[0].Text == "how" && (after[1].Text == "long" || after[1].Text == "high" || after[1].Text == "many") || after[0].Text == "what" && after[1].Text == "length")
}

// notTaught: nobody wants to be taught how it is done.
func notTaught(before, _ []scan.Atom) bool {
	return !phrase.SaidBeforeOf(scan.WordSet("help teach walk take show learn step understand guide talk if"))(before, nil)
}

// notCounted: nothing is counted behind it.
func notCounted(_, after []scan.Atom) bool {
	return !phrase.SaidBeforeOf(scan.WordSet("many count number"))(after, nil)
}

// showsOrAsks: something is shown or asked for before it.
func showsOrAsks(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("show give tell draw run read list print walk what how where"))(before, nil)
}

// heightListed: the height stands in a list of what is asked for, and is of no post.
func heightListed(before, after []scan.Atom) bool {
	n := len(before)
	for n > 0 && lexicon.Vocab().Articles[before[n-1].Text] {
		n--
	}
	if n == 0 || chunk.Figured(before) || !queriedBefore(before, after) || phrase.SaidBeforeOf(scan.WordSet("post posts rail board bracket upright if"))(before, nil) {
		return false
	}
	prev, listed := before[n-1].Text, len(after) > 1 && (after[0].Text == "and" || after[0].Text == ",") && !askingFirst[after[1].Text]
	if prev == "," || prev == "and" {
		return n > 1 && (chunk.IsClass(before[n-2].Text, "GAP") || chunk.IsClass(before[n-2].Text, "OPENING") || chunk.IsClass(before[n-2].Text, "BAY") || before[n-2].Text == "span") && (chunk.EndsPart(after, 0) || listed)
	}
	return listed && (prev == "is" || prev == "are" || prev == "me" || prev == "us")
}

// reasonNext: the reason for it is asked right behind it.
func reasonNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Text == "," || after[0].Text == "and") && phrase.SaidBeforeOf(scan.WordSet("why where what how"))(after[:min(len(after), 4)], nil)
}

// listEnds: nothing is put into a file, and the clause ends.
func listEnds(before, after []scan.Atom) bool {
	if len(after) > 0 {
		switch after[0].Text {
		case "to", "in", "into", "as", "on", "up", "for":
			return after[0].Text == "for" && len(after) > 1 && (after[1].Text == "me" || after[1].Text == "us")
		}
	}
	return !phrase.SaidBeforeOf(scan.WordSet("not never without"))(before, after)
}

// noFigureBehind: no figure follows.
func noFigureBehind(_, after []scan.Atom) bool { return !chunk.Figured(after) }

// wishedBehind: a figure follows, and nothing is asked.
func wishedBehind(before, after []scan.Atom) bool {
	return chunk.Figured(after) && !phrase.SaidBeforeOf(scan.WordSet("why ? what how is are can could does do will would did"))(after[:min(len(after), 2)], nil) && !phrase.SaidBeforeOf(scan.WordSet("?"))(after, nil)
}

// whyNoted: "y" stands for "why" before what has a reason.
func whyNoted(_, after []scan.Atom) bool {
	if len(after) == 0 {
		return false
	}
	w := after[0].Text
	return w == "not" || w == "no" || w == "only" || w == "just" || after[0].Kind == scan.Digits || chunk.SpelledNumber(w) || chunk.IsRail(w) || chunk.IsClass(w, "GAP") || chunk.IsClass(w, "OPENING") || chunk.IsClass(w, "STIFF") || chunk.IsClass(w, "POST") || chunk.IsClass(w, "BAY")
}
