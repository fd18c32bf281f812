package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// SaysBefore are words by which somebody or a paper tells of something.
var SaysBefore = scan.WordSet("says say said shows show showed tells told calls called claims claimed claim has had lists listed specifies draws drew wants wanted thinks reckons figures gives")

// pricedBefore are words and signs of a sum of money.
var pricedBefore = scan.WordSet("$ dollars dollar bucks budget grand hundred thousand")

// signNext: a sum goes on behind it.
func signNext(_, after []scan.Atom) bool {
	return len(after) > 1 && after[0].Kind == scan.Sign && (after[0].Text == "+" || after[0].Text == "-") && phrase.StartsLength(measure.Reader{Atoms: after}, 1)
}

// openingPlaced: the clause before tells on which side the opening is, and no size of anything.
func openingPlaced(before, after []scan.Atom) bool {
	opening, side := false, false
	for i := len(before) - 1; i >= 0 && i >= len(before)-14 && !(i < len(before)-1 && chunk.Breaks(before[i])); i-- {
		w := before[i].Text
		switch {
		case before[i].Kind == scan.Digits || before[i].Kind == scan.Vulgar || scan.Ones[w] > 0 || measure.Tens[w] > 0 || phrase.Turning[w] || w == "gap" || w == "wall" || w == "rail" || w == "rails":
			return false
		case SidesNamed[w]:
			side = true
		case chunk.IsClass(w, "OPENING") || w == "walk":
			opening = true
		}
	}
	return opening && side && (len(after) == 0 || after[0].Text != "of")
}

// turnedPhrases are turns of phrase by which somebody corrects, passes on or leans on what was said before it, all in one breath.
var turnedPhrases = []phrase.Placed{
	// Where the opening is, and how wide it is to be.
	{"?,|;|.|- ?and ?so ?please ?just ?let ?us make|call|keep|set it|that|her ?be|at|to # ?wide|across", ", opening $1", openingPlaced},
	// A height that is corrected goes by the same floor: "two off the deck, no, hold it three off" takes nothing off.
	{"hold|keep|set|leave|put|have|run|make|start LOWEST RAIL|one ?up ?at # ?up ?clear off|above|from|over|of ?of FLOOR ?,|.|;|- ?uh|um|er|oh|ah|well|hm|hmm ?, no|nope|wait|sorry|scratch|actually|rather ?that|no|wait|sorry ?, ?no ?, ?(let us) hold|keep|make|set|leave|put|have|run|say ?it|that|her ?at # ?up ?clear off|above|over|up ?of ?it|FLOOR", "bottom gap $2", nil},
	// To do it with something is to have it.
	{"^ let us ?all ?just do|build|make|try|go|frame it|this|her|WALL ?all ?up with|using !(as few|the fewest|fewest|the least|six|five|four|three|seven|eight)", "let us have $1", nil},
	{"^ ?please ?just do|build|make|frame it|this|her|WALL ?all ?up with|using as few", "let us have as few", nil},
	// Where it is to fit, and how wide.
	{"would|will|could|can|might|may|does|do !OPENING ?still fit|work|go|sit|stand ?right|up|snug|tight|over ?up|over against|at|by|on|beside|to|in|next|near ?to !LEFT|RIGHT|MIDDLE ?hand ?end ?POST|side|end|one if|when|provided|supposing it|that ?only were|was|is|be ?only|just ?at # ?wide|across|broad", "what if $1 side $2 with $1 $3", nil},
	// Why it is asked for, and who asks.
	{"^ ?my|our PERSON 's|s ?big|wide|electric|new wheelchair|walker|stroller|pram|scooter|mower|cart|wheelbarrow|bike|bicycle|buggy|chair|barrow has|needs|must|is|will|had ?got|going ?to ?be ?able ?to walkthrough|pass|fit|roll|go|come|get|squeeze ?in|by ?through|past ?there|here|easily ,|; ?and so", "", nil},
	// A price that is new is a price.
	{"?have|has ?just|now went|gone|came|come|go|are|is|were|was ?now|just|currently|both ?up|back|out on sale|special|offer ?today|now|again ?this ?week ?,|:|;|-|. ?at|for", "are", phrase.BothHold(sizeSaidBefore, phrase.AmountNext)},
	// From one to the next.
	{"between|from each|every|any|one RAIL and|to next|other|(one (above|below|over|under|beneath|next to) [it]) ?one|RAIL ?up|down|above|below", "between the boards", nil},
	{"in between|(amid) (ones ((on|at) [the] ends|at either end|on either end|at each end))|(end ones)|(outer ones)|(outside ones)|(two ((on|at) [the] ends|at either end))|(two end ones)", "between the end posts", nil},
	{"between (ones ((on|at) [the] ends|at either end|on either end|at each end))|(end ones)|(outer ones)|(outside ones)|(two ((on|at) [the] ends|at either end))|(two end ones)", "between the end posts", nil},
	{"!put|set|stick|place|plant|stand|sink|get ## more|extra|additional|further POST|UPRIGHT in ?between|between !((ones ((on|at) [the] ends))|([the|my|our|both] ?two ends|(end ones)|(end posts)))", "$1 $2 added posts between the end posts", nil},
	{"where do|does|would|will|should they|it|those|these|them ?all land|fall|(end up)|(wind up)", "where do they go", nil},
	{"where do|would|will|should they|those|these ?both|all ?each land|fall|go|stand|sit|(end up)|belong", "where do the new posts go", phrase.SaidBeforeOf(scan.WordSet("post posts upright uprights"))},
	{"if !i|we|you|they|one hung|mounted|screwed ?up|on ?only|just|merely !##|a|one|another", "if $1 use $2", nil},
	{"## ?more|fewer|less RAIL in there|here|it with # in between|(between them) $", "$1 boards with $2 between them", nil},
	{"with # in between $", "with $1 between them", phrase.SaidBeforeOf(scan.WordSet("board boards rail rails slat slats plank planks"))},
	// Not cared for, and so taken back.
	{"^^ ?no|nope|nah ?,|.|; ?i|we ?did|do ?not ?really ?much (care for)|like|love|enjoy that|this|it ?one|idea|last ?one|idea ?much ?at ?all ?,|.|;|- ?so ?and ?please ?just ?let ?us (back ?(it) up)|(go back)|(take it back)|(take that back)|(step back)|undo ?it|that ?one|a ?single ?step|one ?please $$", "undo", nil},
	{"^^ no|nope|nah ?,|.|; not that|this ?one ?,|.|;|- ?so ?and ?please ?just (back up)|(go back)|(take it back)|(take that back)|(step back)|undo ?it|that ?one|a ?step|one ?please $$", "undo", nil},
	// What a stack comes up to.
	{"## RAIL with|and|at # GAP|(in between)|between would|will|should|must|to|ought|do|does ?to ?just reach|stack|(come to)|(come up to)|(add up to)|(make)|(get to)|(stand) ?up|to # ?high|tall", "$1 rails , gap $2 , wall height $3", nil},
	// Who only believes it has said it all the same.
	{"^ i ?do believe|think|fear|suspect|guess|suppose|(am afraid) ?that !((i|we) [have] [just|first] (wrote|said|typed|put|told|entered|gave|put down))", "$1", nil},
	// The height of the post by the wall's.
	{"!POST HEIGHT ?is|= wh|(WALL HEIGHT)|(wall ht)", "$1 height = wall height", signNext},
	// What stands against it.
	{"is|are there some|any|a|an|something|anything|one ?good|real ?particular rule|law|reason|objection|code|regulation|ordinance against ?us|me|my|our ?making|having|using|putting|leaving|going|setting|with ?in ?up", "why not", nil},
	{"is there something|anything against|wrong ?with ?us|me|my|our making|having|using|putting|leaving|setting", "why not", nil},
	{"new|added|extra|other|next one go|stand|land|sit|fall|belong", "new post go", phrase.SaidBeforeOf(scan.WordSet("post posts upright uprights"))},
	// Who understands nothing of it asks all the same.
	{"^^ ?sorry|well|hm|hmm ?, i|we do|did|am|can|could not|lost|confused|puzzled ?at ?all ?quite|really|just|still ?get|follow|understand|see ?it|this|that|you ,|.|;|: !what|how|why|where", "$1", nil},
	{"^^ ?sorry|well ?, i|we am|are lost|confused|puzzled ?here ,|.|;|: !what|how|why|where", "$1", nil},
	{"why is|are there|we POST ?there ?in|at ?middle|center|halfway ?at ?all ?,|.|? ?and what would|will|does|if|happens|might ?there ?happen|happens|be|come|become|were|was ?of|if ?it ?we|there ?had|were|was without|no|none ?any|it|them|one|that|those", "why is there a post . what if there was no added post", nil},
	{"why is|are there|we !STIFF|OPENING|stiffening ?there ?in|at ?middle|center|halfway ?at ?all ?,|.|? ?and what would|will|does|if|happens|might ?there ?happen|happens|be|come|become|were|was ?of|if ?it ?we|there ?had|were|was without|no|none ?any|it|them|one|that|those", "why is there a $1 . what if there was no $1", nil},
	// What is quoted, counted and marked by others.
	{", ?and is|was|does that|it|this ?about|around|roughly|nearly|near|exactly what it|that|this|one|(the wall)|job|everything ?really should|ought|would|has|is ?to ?be|cost|come|run|supposed ?be|cost|come|run ?to|out ?at", ", is that right", nil},
	{"MARK ?up on PERSON|his|her|their ?'s ?old|own ?story|marking|layout|measuring stick|pole|rod|tape|board|lath are|is|say|stand|sit|fall|come ?at", "the plan has marks at", nil},
	{"PERSON|his|her|their ?'s ?old|own story|marking|layout|measuring stick|pole|rod|lath has|shows|says|puts ?his|her|the ?marks ?at", "the plan has marks at", nil},
	{"!i|we ?have ?just ?went|gone|ran ?over taped ?off|out|up !([the|this|that|my|our] (span|opening|doorway|bay|gap|(wall height)|height|width|(clear space))) ?(myself|ourselves) ?again|twice|today|yesterday ?,|:|at|as|and ?it|got|found|is|was ?to|at|is|was #", "i measured the $2 at $3", nil},
	{"PERSON ?have|has|had ordered|bought|purchased|(picked up)|(put down) ## # @ , ?so ?and is|are ?that ##|that|it|this right|enough|correct|good|sufficient|okay|ok|true", "is it true that we need $1 $2 $3", nil},
	{"RAIL every # clear|between|apart|(of air)|(of gap)|(of daylight)", "boards with gap $1", nil},
	{"PERSON|SELLER|yard ?only|just ?have|has had|have|has|carried|carry|carries|stock|stocked|got|sold everything|(all (lengths|sizes|of them))|(every length)|(every size) ?else ?there ?in ?stock but|except|excepting|(save for)|(apart from)|(other than) !# ?ones ?,|.|; ?and ?so ?please ?just ?you ?can ?should leave|skip|drop|take|count|forget|cross|strike those|them|these|that ?ones ?out|off ?of ?it", "they are out of $1", nil},
	{"everything|(all (lengths|sizes))|(every length) but|except|(save for) !# ?ones was|were|is|are there|(in stock)|(on the shelf)|available|(on hand) ,|.|; ?and ?so ?please ?just ?you ?can leave|skip|drop|take|count|forget those|them|these|that ?ones ?out|off", "they are out of $1", nil},
	{"how many !RAIL|pieces would|do|should|can|must you|i|we ?say|suggest|recommend|advise|think|reckon|figure ?that ?i|we|you ?should|ought|could|can ?to ?put|use|have|go|hang|fit|need|run|set|mount ?in|per|for|up|to|with|into|on ?each|every|a|one BAY", "how many $1 in each bay", nil},
	{"they|he|she|PERSON want|wants|wanted|need|needs|ask|asks|had|have|has ?for ?got !([the|my|our] (POST|new post|added post|extra post|middle post)) ?to ?be cut ?off ?down ?to|at|for #", "they say to cut $1 at $2", nil},
	// A limit that is only told twice.
	{", ?and|but|so ?all ?in it|that|this|we|they|(the (whole thing|lot|wall|job)) must|can|should|may|shall|will|dare|could|had|better not|never ?go ?better ?be|to ?let ?it cost|run|come|spend|go|be ?to ?out|in|a ?any|single|one ?cent|penny|dollar more|over|higher|above|beyond ?than ?a ?cent|penny|dollar ?more ?that|this|it ?all $", "", phrase.SaidBeforeOf(pricedBefore)},
	{"store !this|it|that|([this|the|my|our] (design|plan|layout|wall|one|version|drawing)) ?away ?for|under|as ?me name ?of as|under|called|(by the name of)|(under the name of)", "save $1 as", nil},
	{"store !this|it|that|([this|the|my|our] (design|plan|layout|wall|one|version|drawing)) as|under", "save $1 as", nil},
	// What else may come of it.
	{"would|will|does|do|could|can|might ?it|that ?really ?ever ?we mess|spoil|ruin|hurt|harm|wreck|upset|break|throw|screw|bother|foul anything|things|something|everything|it|me|us|much ?at ?all ?up|off|out ?badly if|when", "what if", nil},
	{"would|will|could|can|might anything|something|things|it go|be|turn ?badly wrong|badly|awry|sour|amiss|south if|when", "what if", nil},
	// What cannot be, somebody says, and why not.
	{"PERSON reckons|says|thinks|claims|insists|swears|maintains|believes|figures|reckon|say|think|claim|said|told ?me|us ?that you|we|i|one|it can|could|will|would not ?ever get|fit|have|do|put|use|squeeze|go|be|take|run|make !.. ?in ?there|it|here ,|. ?and ?but ?so (how come)|why|(why not)|(why is that)|(how so)|(why is it)|(what is stopping us)|(how is that) $", "why can we not have $1", nil},
	{"he|she|they reckons|says|thinks|claims|insists|swears|reckon|say|think|claim|said ?that you|we|i can|could not do !.. , ?and ?but ?so (how come)|why|(why not)|(why is that) $", "why can we not have $1", nil},
	// Two plans side by side.
	{"^ weigh|hold|set|put|stack|pit|measure|judge|size ?up !(plan _) ?up against|beside|alongside|(next to)|with !(plan _) ?up ?for ?ME ?:|,|;|. ?and ?please ?compare ?the ?two|them|both ?of ?them", "compare $1 and $2", nil},
	// "Some" is about.
	{"of|to|at some !# ?would|will", "of about $1", nil},
	{"^ some # of !HEIGHT|WIDTH|GAP|space|room|air|daylight", "about $1 of $2", nil},
	{"?also on|for|during|in this|that|(the same)|same trip|run|errand|drive|journey|visit|outing ?there ?to ?the ?store|yard ?,", "also", phrase.StartsClause},
	// A wall that is named by its boards.
	{"says|shows|lists|claims|calls|thinks|reckons ?for ?that a ## RAIL wall|halfwall at|of # ?high|tall", "says $1 rails , wall height $2", nil},
	// Whom they trust.
	{"i|we ?do|would trust|believe|like|prefer|take yours|(your (numbers|figures|layout|plan|version|word|answer)) ?more|better|most|over ?than|over ?his|hers|theirs|it ?anyway ,|.|; ?so ?and ?please", "", phrase.StartsClause},
	{"!show|give|let ME ?see ?just yours", "show me your layout", nil},
	// What is used against what a paper says.
	{"but|though|whereas we|i are|am ?actually|really|now using", ". we are using", phrase.SaidBeforeOf(SaysBefore)},
	{",|;|. but|though|yet|however|whereas ?, i|we am|are|will|shall ?be ?actually|really|now|still ?going ?to ?be using|(going with)|(sticking with)|use", ". we are using", phrase.SaidBeforeOf(SaysBefore)},
	{"what|why ?ever ?(in the world)|(on earth)|(in heaven 's name)|(the heck)|(the hell) made|makes|had|possessed|got you ?to put|set|place|plant|stand|stick|add|?want upright|uprights ?right there|here|in|(in middle)", "what made you put the post there", nil},
	{"why ?ever ?(in the world)|(on earth) did|would|do you ?want|have|need|feel ?to put|set|place|plant|stand|stick|add upright|uprights ?right there|here|in|(in middle)", "what made you put the post there", nil},
	{"do not|never ?ever let !OPENING|BAY|GAP|(walk through) ?ever come|go|get|be|turn|end|wind ?in|out|up|down ?at under|below", "do not let the $1 be under", nil},
	{"do not|never ?ever let !OPENING|BAY|GAP|(walk through) ?ever come|go|get|turn|end|wind ?in|out|up ?at over|above|past|beyond", "do not let the $1 be over", nil},
	{"^^ ?sorry|oh|well ?, may|can|could|might i|we ?please ?just ?still change|changed my|our mind|minds ?about|on ?that|this|it ?please ,|.|?|;|: i|we would rather|sooner have|use|see !.. than ?have # $", "i want $1", nil},
	// The top of the wall, in the short hand of a sheet.
	{"^^ top ?of ?WALL ?is ?at|\\@|=|: # ?up off|above|from|over ?of FLOOR", "wall height $1", nil},
	{"how !WIDE|HIGH|big|large|long|deep|far 's|s", "how $1 is", nil},
	{"PERSON|his|her|their ?'s version|variant|take|attempt|try calls|asks|has|shows|wants|puts|uses ?for", "his plan calls for", nil},
	// All figures are in one measure.
	{"all|any|every|both ?of ?the ?my|these|our figures|numbers|measurements|measurement|dimensions|sizes|figure|number|measure|measures ?that|which ?here ?coming ?(from me|from us|i give|we give|i give you|i have|i have given|given here|below|here|i tell you) are|is|come|comes|will ?be ?given ?all in !METRIC|CUSTOMARY", "i work in $1", phrase.StartsClause},
}

// sizeSaidBefore: a lumber size stands before it.
func sizeSaidBefore(before, _ []scan.Atom) bool {
	r := measure.Reader{Atoms: before}
	for i := range before {
		if _, _, ok := r.Size(i); ok {
			return true
		}
	}
	return false
}
