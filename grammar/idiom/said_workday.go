package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// endPostsMeant: neither a number nor a word for more of them stands before, so the posts named are those at the ends.
func endPostsMeant(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return scan.Ones[w] == 0 && measure.Tens[w] == 0 && !partAdded[w] && (len(before) == 0 || before[len(before)-1].Kind != scan.Digits)
}

var partAdded = scan.WordSet("added new extra more additional other a an")

// oneClauseFigured: one clause with a figure goes on to the end of the line.
func oneClauseFigured(_, after []scan.Atom) bool {
	return chunk.Figured(after) && !slices.ContainsFunc(after[:max(len(after)-1, 0)], chunk.Breaks)
}

// workdayTurns are turns of phrase of a day's work at the wall, with the plain words for each.
var workdayTurns = []phrase.Placed{
	// A change is tried, and what comes of it is asked.
	{"^ if it is not too much ?of ?a trouble|bother|hassle|imposition ,", "please ,", nil},
	{"!budget|WALL|GAP|OPENING|span ?has|had ?just ?up|down went|gone|jumped|grew|grown|rose|climbed|shot|dropped|fell|shrank|shrunk ?up|down from # to #", "$1 is $3", nil},
	{"^ ?if|say|suppose|supposing|assume i|we drop|dropped|go|went|cut|came|come ?it ?back|down to !(## RAIL|boards)", "what if $1", phrase.StartsClause},
	{"what will|would|'ll that|it|this do to the !LENQ", ", what is the $1", figuresBefore},
	{"if i|we hung|hang|put|fitted|fit|stack|stacked|mount|mounted ?up ## RAIL|boards with # between ?them ,", "what if $1 rails with $2 between them ,", phrase.StartsClause},
	{"how much|big|large|(wide a) ?a ?gap|space|room ?would|will ?(be|there) ?be|is left ?over at|near|under ?the bottom", "what is the bottom gap", nil},
	{"how big|large|wide|tight do|would|will ?the gaps|spaces get|come|end|turn ?out|up", "what is the gap", nil},
	// Posts of a size are the end posts, and what is between them is the span.
	{"@ POST ?, ?and ?with # ?clear|apart ?in ?between them|(each other)|(the two)", "$1 posts , $2 between the end posts", endPostsMeant},
	{"POST is|are ?all @ ,|and ?and|with # ?clear ?in between them|(each other)|(the two)", "$1 posts , $2 between the end posts", endPostsMeant},
	{"@ end POST ?, ?and ?with # ?clear|apart ?in ?between them|(each other)|(the two)", "$1 end posts , $2 between the end posts", nil},
	{"can|could it|this|that|(the wall)|(all of (it|this)) be done|built|made for ?\\$ !## ?dollars|bucks $", "can i do it for $1 dollars", nil},
	{"can|could we|you|he|they build|make|finish it|this ?all for ?\\$ !## ?dollars|bucks $", "can i do it for $1 dollars", nil},
	// What is planned on is wanted.
	{"^ ?so|okay|ok|alright|well|now ?, ?i|we ?will|would|am|are ?just figure|figuring|plan|planning|pencil|pencilling ?in|on !ASKEDAT|OPENING|WALL at|for|(to (finish|come|end|wind) [out|up] at) !# ?high|tall|wide", "set the $1 at $2", nil},
	{"^ ?please|just ?give|sing|call ?me|us ?a holler|shout|yell|warn|out ?out ?at|to ?me|us ?, if|when ?there ?'s|is something|anything ?'s|is ?that ?dangerous|risky|unsafe ?we|i ?should|need|ought|have ?to ?be ?look|looking|watch|mind ?out|about ?for $", "what should i watch out for", nil},
	{"^ ?please|could|would|can ?you|please ?just do|say|read|speak ?me|us ?all ?the sums|arithmetic|math|maths ?out ?, aloud|(out loud) ?, ?all ?of ?them", "show me all the sums", nil},
	{"with|and|at # GAP top|tops|topping out|off at #", "with $1 gaps , wall height $2", nil},
	{"^^ forget it ,|.|;|- ?so ?just make it", "make it", nil},
	{"^^ ?no|nope|nah ?, i|we do not ?really like|want|need|love that|this|it ,|.|;|- ?so ?and ?please ?just put|set|change|turn it|that|everything back ?(the way)|how|as|like|to ?what ?it|that|we ?was|were|had ?it ?before $$", "undo", nil},
	{"^^ in case ?of|that", "what if", oneClauseFigured},
	// Notes and papers.
	{"^^ post|posts locs|locn|loc|locations|positions ?please $$", "where do the posts go", nil},
	{"mat ' ls", "materials", nil},
	{"^^ run me ?the !marks|cuts|numbers", "show me the $1", nil},
	{"is ## a|per hundred", "is $1 per hundred", nil},
	{"tell me where !LENQ ended|ends|landed|lands|came|comes ?up|out|in", "what is the $1", nil},
	{"help me find|see|(work out)|(figure out)|understand where", "where", nil},
	{", if i may ?(say so)|(be so bold)|(ask) ,", "", nil},
	{"buy|get|order ?me ?us ## boards|planks|rails more|extra than ?the|this ?job|wall|work takes|needs|wants|calls|requires ?for", "buy $1 spare boards", phrase.StartsClause},
	{"why do not|not we|i just|simply make it ## RAIL|boards and be done ?with ?it|that", "$1 rails", nil},
	{"why do not|not we|i make it ## RAIL|boards and be done ?with ?it|that", "$1 rails", nil},
	// What is left out, added up and set down.
	{"as few|little RAIL|boards as ?(i|we) ?can ?be|get ?possible|(away with) ?(in each bay|in each section|in every bay|in every section|in a bay) ?(per bay|section)", "the fewest rails", nil},
	{"not over|above|(more than) # ,|but|and not under|below|(less than) # ?either", "at least $2 and at most $1", nil},
	{", and do not forget|omit|skip|(leave out) ?the !cuts|marks|cost|layout|list|drawing|steps|options", "and the $1", nil},
	{"design|plan|version|layout|one with as few RAIL|boards as possible", "the fewest rails", nil},
	{"repeat ?back ?to ?me|us ?everything|all|what ?that you|i|we [have] noted|heard|told|said|got|(written down)|(taken down)|down ?to|from ?me|us|you ?so ?far", "give me a recap", nil},
	{"i|we (can|could) not read ?my|our|the|this tape ?measure any finer than # ?of ?(an inch)", "the tape reads to $1", nil},
	{"would|will things|it|matters|that improve|(get better)|(be better)|(look better) ?any if !LENQ were|was|is|got # wider|bigger|larger|more", "what if $1 is $2 wider", nil},
	{"would|will things|it|matters|that improve|(get better)|(be better)|(look better) ?any if !LENQ were|was|is #", "what if $1 is $2", nil},
	{", not ?the !LENQ|COUNTQ $$", "", forgetsFirst},
	{"^^ not only|just ?the !cuts|marks|cost|layout|list|drawing|steps|options ,|but ?i|we ?also want|need|give|show|tell ?me ?the !cuts|marks|cost|layout|list|drawing|steps|options as well|too|also", "show me the $1 and the $2", nil},
	{"fewer|less !COUNTQ than ##", "fewer than $2 $1", noAmountBefore},
	{"more !COUNTQ than ##", "more than $2 $1", noAmountBefore},
	{"drop|cut|pull|shrink|tighten|squeeze !LENQ from # ?down to #", "make $1 $3", nil},
	{"go|come|drop|went|dropped ?down|back from ## RAIL|boards ?down|back|up to ##", "use $2 rails", nil},
	{"# at ?the ?very least ?wide to walk|get|pass through", ", the opening is at least $1", nil},
	{"more|over ?than # ?but|and less|under ?than # under|below ?the lowest|bottom RAIL|board", "bottom gap over $1 and bottom gap under $2", nil},
	{"OPENING # w", "the opening is $1 wide", nil},
	{"# w $$", "$1 wide", phrase.SaidBeforeOf(scan.WordSet("op opening doorway"))},
	{"strike|scratch|drop that !(bay ## top|bottom) measurement|reading|figure|number", "forget the $1 measurement", nil},
	{"here too|also", "too", phrase.SaidBeforeOf(scan.WordSet("eights tens twelves fourteens sixteens eighteens twenties footers lengths"))},
	{"keep|leave|hold # open|free|clear under|underneath|beneath|below", "leave $1 under", nil},
	{"# left|remaining|(left over) for ?the OPENING|walkthrough", "$1 for the opening", nil},
	{"from ?one|the post center|centre|middle to ?the|next|other ?the|next|other post center|centre|middle", "center to center", nil},
	{"ea other", "each other", nil},
	{"the nums", "the numbers", nil},
	{"one by|after one|another $$", "", phrase.SaidBeforeOf(scan.WordSet("marks cuts steps lengths"))},
	{"ended|wound up ?at|being #", "is $1", nil},
	{"happen|change , please , if|when", "happen if", nil},
	{"stick|sticks|poke|pokes ?out|up # above|past|over ?the top of WALL", "be $1 above the wall", nil},
	{"list of ?the|all stuff|things to buy|get", "shopping list", nil},
	{"as wide|roomy|large|big as you|we|i|it can|could ?possibly manage|make ?it", "as wide as possible", nil},
	{"i|we am|are measuring|working|reading|thinking ?now in !mm|millimeters|millimetres ?now ?(from (here|now)) ?on ,|;|.", "use $1 .", nil},
	{"# from ?the|my house|wall|building|siding to ?the|my corner|end|far|other post", "$1 between the end posts", nil},
	{"the|my|our deck|patio|porch|platform|landing|dock runs|is|goes|measures|spans # between ?the|my end|outer|two posts", "$1 between the end posts", nil},
	{"undo that|it too|also|(as well) $$", "undo", nil},
	{"is|are not # but #", "is $2", nil},
	{"is|are not @ but @", "are $2", nil},
	{", as|like i|we ?have ?already|just told|said|mentioned ?to ?you ?before|earlier|once ?already ?,|;", ",", figuresBehindToo},
	{"as|like i|we ?have ?already|just told|said|mentioned ?to ?you ?before|earlier|once ?already ?,|;", ",", figuresBehindToo},
	{"if the|that|our store|yard|shop|lumberyard only|just sold|stocked|kept|carried|had", "if they only had", nil},
	{"stays|remains at # or", "is $1 or", nil},
	{"list|repeat|(go over)|(read back)|(run through) the things|bits|points ?that|which i|we ?have mentioned|said|told|given|named ?to ?you ?((up to|until|till) (this point|now|here))|(so far)", "give me a recap", nil},
	{"how many|much inches|feet of room|space|width", "how much room", nil},
	{"compare with|to|against (each other)|(one another)", "compare", nil},
	{"wider|bigger|larger|smaller|narrower|tighter|looser|taller|higher|lower !LENQ of #", "$1 of $2", nil},
	{"!LENQ went|(has gone)|(have gone) from # ?up|down to #", "make $1 $3", nil},
	{"!LENQ is|are beyond|past #", "$1 is over $2", nil},
	// What stands in the way, and why.
	{"is|was there a|any|some ?good|particular reason ?why|that !(LENQ|COUNTQ) ?still can|could|will|should not", "why can not $1", nil},
	{"^^ ?so i|we wanted|want|(asked for)|(would like)|(would have liked) !(.. # ?..) , ?but|so why is|does|will|can not that|it|this ?be possible|work|done|fit|allowed|(do it) ?\\? $$", "why not $1 ?", nil},
	{"is|was there a|any|some ?good|particular reason ?why|that !LENQ ?still can|could not go|come|run|stretch|get out|up|down|(over to) ?as ?far|wide|high ?as|to #", "why can not $1 be $2", nil},
	{"stack|hang|run|fit|mount|put ?me ?up ## of them per|a|each|every bay|section|panel", "$1 rails", nil},
	{"landed|(ended up)|(wound up) on|at|over ?on ?the !left|right ?side|end", "is on the $1", reasonAsked},
	// What is tried, and what comes of it.
	{"^ just to see ?, do not set|keep|save|enter it ?in ?yet ?:|,", "what if", figureToCome},
	{"threw|tossed|chucked|slung in ## more|extra", "add $1 more", nil},
	{"what would|will|does it|that|this run me|us", "what would it cost", nil},
	{"what would|will|does ?a !LENQ of # leave|give|make ?me|us|you ?for|as !LENQ", "what would the $3 be if the $1 is $2 ?", nil},
	{"how many RAIL|boards would|do|will|should i|we need|have to stack|hang|mount|(put up)|(fit in) ?up", "how many rails", nil},
	{"which RAIL|board counts are ?even|ever ?going ?to fit|work|go ?in|into ?there|here", "what are the options", nil},
	{"work|figure|run|do it|that ?all out|over afresh|anew|(from scratch)", "show me the layout", nil},
	// Wishes.
	{"smallest|lowest|least ?possible number|count of RAIL|boards ?(that (will|would|can|could) work)", "the fewest rails", nil},
	{"and call|make|hold|keep|have|leave it ?at|to # wide|clear|across", ", the opening is $1", openingAlone},
	{"and keep|space|set|hang|put|hold|spread them # apart", ", gap $1", notLast("stiffener")},
	{"i|we ?have|'ve decided against ?the|any|all|having|using ?vertical !STIFF ?, ?so ?please ?use|(put in)|have|leave|give ?me|us ?none|any", "no $1", nil},
	{"i|we will not be needing|wanting|having|using ?any", "no", nil},
	{"## RAIL|boards is|are ?far|way|one|just ?a|bit|little too many|few|much , ?so ?i|we ?(let us) go|do|make|use|try|take|have ?it|with ##", "$2 rails", nil},
	{"@ on paper", "$1", nil},
	{"?past|beyond ?the RAIL|board up top|above and the same|(just as much) ?again down|below|underneath ?below", "past the rail", figuresBefore},
	// Where the floor goes.
	{"runs|falls|slopes|drops|dips|goes ?off|away ?down|downhill to|toward|towards ?the !left|right # ?all|in ?told|overall|all|altogether", "is $2 lower at the $1", nil},
	{"falls|drops|slopes|runs # to|in|per|every ?the|each|every foot", "falls $1 per foot", nil},
	// Money and the yard.
	{"total|bill|cost ?for|of ?the ?materials|lumber|wood|material must|should|has|needs|ought ?to stay|be|come|remain|land ?in at or below|under £", "the budget is $1 dollars", nil},
	{"total|bill|cost ?for|of ?the ?materials|lumber|wood|material must|should|has|needs|ought ?to stay|be|come|remain|land ?in at or below|under \\$ ##", "the budget is $1 dollars", nil},
	{"i|we am|are ?only allowed|given|granted # ?dollars|bucks for|on ?the|all materials|material|lumber|wood|it|this ?(and that is my lot)|(and no more)|(and that is it)|(all told)", "the budget is $1 dollars", nil},
	{"i|we can|could ?only|just manage|swing|stretch ?to # dollars|bucks for|on ?the|all materials|material|lumber|wood|it|this ?(and no more)|(and that is it)", "the budget is $1 dollars", nil},
	{"what is this|the|our|my ticket|tab|bill|order|lot ?all going to total|run|make|(come to)|(add up to)", "what will it cost", nil},
	{"i|we can|could do|manage ?them ?you for £", "cost $1 each", nil},
	{"foot|feet|metre|meter one costs|goes|runs|sells|fetches ?for", "foot board costs", footBefore},
	{"£ ?ea|each|apiece ?, not £ $$", "$1 each", nil},
	{"come|comes|are|sold ## to|per|in|a ?the|a|each bag|box|pack|packet|tub ?, and|but they are # thick", "are $2 thick", nil},
	{"how much do|does|will i|we|you|it lose|waste ?to|in|at|with ?the ?each|every|saw|blade|cut ?saw|cut", "what is the kerf", nil},
	// What is said once more, or not yet.
	{", that is|'s ?about|just ?only a ?little|wee bit|hair|touch|shade|tad over|under|above|below|(more than)|(less than)|(short of) # $$", "", nil},
	{", bay ## i|we have not ?gotten|got|come|been ?to ?it ?yet $$", "", nil},
	{", i|we would rather you picked|chose|decided|choose|pick|decide ?it", "", nil},
	{"put|save|write|store|drop|export ?the|a|my ?finished|final picture|drawing|sketch in|into|to ?a|the ?file called|named", "draw to", nil},
	// Who did it so, and where it went.
	{"why|(what made you) ?did ?you put|set|stand|place|stood ?the|my new|added|extra|middle post there|here|(where it is)", "why is the post there", nil},
	{"where should|do|shall|would i|we|you put|set|stand|place it", "where does the post go", postLast},
	{"where would|do|will they|those ?two ?both|each land|go|stand|sit|(end up)|(wind up)", ", where do the posts go", phrase.SaidBeforeOf(scan.WordSet("uprights upright posts"))},
	{"?but|and i|we put|held|laid|ran|stuck|hooked ?a|the|my ruler|laser|tape|rule|level|stick on|to|over|across|against it|that|them ?(myself) ?just ?now and ?it|that|they|got is|are|reads|says|gives|gave|came|comes|get|read ?to|out ?at ?me #", ", i make it $1", nil},
	{"so do that|it|so ?then $$", "", nil},
	// What is asked for in other words.
	{"spit|throw|read|fire|kick ?the !(layout|cuts|marks|list|steps) ?back ?out ?at|to me|us", "show me the $1", nil},
	{"math|maths|arithmetic|sums|reasoning behind|of|for !LENQ", "$1", teachBefore},
	{"tell|show|read me|us what you|(you have) ?now|(so far) got|have|written|noted written|noted|down|(in there) ?down ?from|for ?me|us", "give me a recap", nil},
	{"grab|get|buy|add|throw|take ?in ## boards|planks extra|more as|for spares|spare|backup|backups", "buy $1 spare boards", nil},
	{"with # separating|parting|dividing|splitting each|one|them ?one ?from ?the next|other|another", "with $1 between", nil},
	{"leaving|putting|setting|laying|pushing his|her|their figures|numbers|sums|drawing|plan aside|(to one side)|(out of it) ,", "", moreBehind},
	{"i|we do not ?really|quite trust|believe|like|buy his|her|their figures|numbers|sums|math|arithmetic|drawing ,|;|.|- ?so|and|but", "", figureOrWish},
	{"gaps|gap|spaces shrank|narrowed|tightened ?up|down by #", "gap is $1 narrower", nil},
	{"gaps|gap|spaces grew|widened|opened|loosened ?up|out by #", "gap is $1 wider", nil},
	{"^^ no # stock|lengths|boards , ?but ?they|(we can) add|have|plus|got # ?stock|lengths ?instead|though", "they are out of $1 . they have $2 too", nil},
	{"^^ aye|och|ach ?,", "", moreBehind},
	{"och|ach no", "no", figuresBefore},
	{"nae more|wider|bigger|higher|longer than", "no more than", nil},
	{"nae less|fewer|narrower|smaller|lower than", "no less than", nil},
	{"what would|will|does|might|could happen|become ?to|of !LENQ if|when !.. ?\\? $$", "what if $2 , what is $1 ?", nil},
	{"how come !LENQ can not ?ever", "why can not $1", nil},
	{"^ ?do ?you reckon|think|suppose|figure ?that it|this|that would ?still|also|ever work|fit|do|go|hold ?up with|if|at", "what if", figureToCome},
	{"opened|open|widened|widen|stretched|stretch|pulled !LENQ|opening up|out to #", "made the $1 $2", nil},
	{"^^ ?is ?there anything|something in|with|about ?all this|it|here ?that i|we should|ought|need|have ?to worry|know|fret|care about ?(before (i|we) (sign off|start|cut|begin|buy)) ?\\?", "what should i be careful of", nil},
}

// figuresBehindToo: a figure stands before it, and another behind.
func figuresBehindToo(before, after []scan.Atom) bool {
	return chunk.Figured(before) && chunk.Figured(after)
}

// ifNext: what is supposed follows.
func ifNext(_, after []scan.Atom) bool { return len(after) > 0 && after[0].Text == "if" }

// noAmountBefore: no figure stands right before it ("two fewer boards than five").
func noAmountBefore(before, after []scan.Atom) bool { return !phrase.AmountBefore(before, after) }

// forgetsFirst: something is to be forgotten.
func forgetsFirst(before, _ []scan.Atom) bool { return len(before) > 1 && before[0].Text == "forget" }

// reasonAsked: a reason is asked for.
func reasonAsked(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("why how"))(before, nil)
}

// footBefore: a length in feet stands before it.
func footBefore(before, _ []scan.Atom) bool {
	return len(before) > 0 && !chunk.EndsPart(before, len(before)-1)
}

// workdayEarly are turns that other phrases lean on.
var workdayEarly = []phrase.Placed{
	{"how would|will|do things|everything change|differ ?then", "what happens", ifNext},
	{", ?and then i|we will call it a day|night ?then $$", "", nil},
	{", ?so ?and then|so|that i|we can finish|be done ?up before|by supper|dinner|dark|lunch|sundown|nightfall|breakfast $$", "", nil},
	{", ?and ?then i|we will fetch|get|grab|find ?the|my|our drill|saw|tape|hammer|level|ladder|gloves $$", "", nil},
	{"low|lower|bottom end #", "bottom $1", bayFirst},
	{"high|upper|top end #", "top $1", bayFirst},
}

// openingAlone: the opening was named before, and no rail, bay or stiffener.
func openingAlone(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("doorway opening walkthrough entry gateway entrance through"))(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("rail rails board boards bay bays stiffener stiffeners gap gaps wall halfwall"))(before, nil)
}

// bayFirst: a bay was named before.
func bayFirst(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("bay"))(before, nil)
}

// postLast: of all parts the new post was named last.
func postLast(before, _ []scan.Atom) bool {
	for i := len(before) - 1; i >= 0; i-- {
		switch before[i].Text {
		case "post":
			return true
		case "opening", "doorway", "gate", "rail", "rails", "board", "boards", "stiffener", "stiffeners", "wall":
			return false
		}
	}
	return false
}

// teachBefore: it is to be taught, or explained.
func teachBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("teach explain learn"))(before, nil)
}
