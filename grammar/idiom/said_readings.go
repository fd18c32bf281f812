package idiom

import (
	"slices"
	"strconv"
	"strings"
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Pieces of sentences about posts that lean and rails that stay where they are.
const (
	leanWay = "(((to|toward|towards) the (left|right))|left|right|in|out|inward|inwards|outward|outwards|([in] (toward|towards) [the] other [(one|post|end)]))"
	staysUp = "(((i|we) (am|are|will) not (taking|take|moving|move|pulling|pull|touching|touch|unscrewing|undoing|undo) it [(off|out|down|up)])|((it|that|they) (stays|(is staying)|('s staying)|((has to|must|will|needs to|is going to|is meant to) stay)|(is there to stay)|((will|can|does) not (move|come off|come down|budge)))))"
)

// readingsTold are ways to tell what the tape, the level and the plumb line say, and what was done to get it, with the plain words for each.
var readingsTold = []phrase.Placed{
	// Posts that lean: which, to which side, how much, over what height.
	{"^^ ?i|we|(i have)|(we have) ?just put|set|hold|holding|putting|setting|held|stood|laid|placed|with ?the|my|a # level ?up on|against|to|along ?it ?, !left|right ?hand ?end post ?,|and|. ?and|then ?then ?it|post|top|that ?now leans|tips|tilts ?out|in|over !" + leanWay + " ?by # in|over|along ?the ?whole|full|entire length of ?the|that|my level", "$2 post leans $4 $3 in $1", nil},
	{"^^ ?i|we|(i have)|(we have) ?just put|set|hold|holding|putting|setting|held|stood|laid|placed|with ?the|my|a # level ?up on|against|to|along ?it ?, !left|right ?hand ?end post ?,|and|. ?and|then ?then ?it|post|top|that ?now leans|tips|tilts ?by # !" + leanWay + " in|over|along ?the ?whole|full|entire length of ?the|that|my level", "$2 post leans $3 $4 in $1", nil},
	{"!left|right ?hand ?end post ?(is|'s) ?badly|slightly (out of (plumb|true|line|vertical))|(off plumb)|(not (plumb|vertical|straight|upright)) ?,|:|;|-|. ?its|the|with ?its|the top ?edge|end is|sits|'s|leans|goes|comes|stands # ?farther|further|more|over|off|out ?to|toward|towards ?the !left|right ?(than|of|off) ?the|its ?own ?(foot|bottom|base) ?, ?measured|taken|checked|read ?in|over|across|up #", "$1 post leans $2 to the $3 in $4", nil},
	{"!left|right ?hand ?end post leans|tips|tilts|(is leaning)|(is tilting)|(is tipping)|('s leaning) !" + leanWay + " ,|:|;|- ?by|about # ?in|over|per|for|across|up #", "$1 post leans $3 $2 in $4", nil},
	{"!left|right ?hand ?end post leans|tips|tilts|(is leaning)|(is tilting)|(is tipping)|('s leaning) away|out ?away|out from ?the other ?one|post ?end ,|:|;|-|by # ?in|over|per|for|across|up #", "$1 post leans $2 outward in $3", nil},
	{"!left|right ?hand ?end post is|'s ?off|out ?of ?plumb|true ?by # to|toward ?the !left|right ?in|over|across|up #", "$1 post leans $2 to the $3 in $4", nil},
	{"^^ plumb|chalk ?bob|line|(bob line) says|tells|shows ?ME ?that", "", leanAhead},
	{"!left|right ?hand ?end post , ?just ?i|we ?have ?just plumbed|leveled|levelled|checked|taped|measured ?it ?just|now|twice ,|:|;|-", "$1 post", leanAhead},
	{"toward|towards ?the !left|right one|post ?by", "toward the $1 by", leanTold},
	{"away from ?the|that other|far|opposite|left|right ?one|post|end", "outward", leanTold},
	{"!left|right ?hand ?end post ,|:|;|- ?the|its top ?edge is|'s # !left|right of ?the|its bottom|foot|base ?, over|in|across|up #", "$1 post leans $2 to the $3 in $4", nil},
	{"over|in|per|for a yard ?(of (height|post))", "in 3 feet", leanTold},
	{"?, ?and|but|so ?i|we can not|(could not)|(cannot) ?just ?possibly straighten|fix|move|reset|plumb|shift|dig it ?out|up|straight|back|over|now|again ?, ?because|as|since ?and ?it is|'s ?set|sunk|stuck ?in|into ?concrete|cement $$", "", leanTold},

	// The floor.
	{"floor|slab|deck|patio|porch|terrace|concrete is|'s|comes|runs|sits|lies|ended|ends ?up ?out ?now|all ?at|on ?the|exactly|just ?very|exactly same|even|equal|level ?height|level ?now at|on|by|to|with ?both|either|each|the|one ?two ?of ?the ?end ends|end|posts|post|sides ?now", "the floor is level", noDoubtBefore},
	{"floor|slab|deck|patio|porch|terrace|concrete is|'s|comes|runs|sits|lies ?out ?now ?quite|all ?dead|perfectly|truly|bang|spot|absolutely|completely level|flat|(dead level) ?now between|(all the way)|from|across|along ?between|from ?one|the|both|each|end ?of ?two ?end|post|posts ?post ?through|over|across ?to ?the|both ?other|two ?right ?end ?posts|post|one|end|ends ?now", "the floor is level", phrase.BothHold(noDoubtBefore, phraseEndsHere)},
	{"floor|slab|deck|patio|porch|terrace|concrete is|'s (no longer)|(not * (anymore|(any (more|longer)))) ?off|out|crooked|sloping|sloped|uneven ?now ,|:|;|-|. ?now ?both|the|its ?two ends|posts|sides ?now are|is|sit|come|measure ?out ?now|all ?at|on ?the|one same|level|equal ?height|level ?now", "the floor is level", noDoubtBefore},
	{"?our|my|the patio|slab|terrace|porch|deck|floor|concrete was|is|were|got ?all poured|laid|built|made|graded|pitched|cast|framed|sloped so ?that ?the|any rain|water|it|puddles runs|run|drains|drain|sheds|flows|gets|goes|rolls ?right|straight off|away|down|out ?off ?to|toward|towards the !left|right ?end|side|hand ?,|;|.|:|and ?and|so it falls|drops|slopes|goes|dips|tilts ?down|by|away", "the floor falls to the $1", nil},
	{"has|shows|draws|puts|gives|with ?the|a no|zero fall|slope|drop|pitch|tilt in|on|for|along ?the|my|our floor|slab|deck|patio ?(at all)", "says the floor is level", yardBoth(drawnBefore, floorFoundAhead)},
	{"drew|draws|sketched|shows|has floor|slab|deck|patio ?as ?dead|perfectly level|flat", "says the floor is level", floorFoundAhead},
	{"i|we ?just find|found|get|got|make|made|read|see ?that ?the !left|right ?hand end|side|post ?of ?floor|slab|deck ?to|is|'s ?be # !higher|lower|down|up ?than ?the ?other|left|right|far ?hand ?end|one|side", "i measured the floor $2 $3 at the $1 end", phrase.SaidBeforeOf(scan.WordSet("level fall slope flat drop pitch tilt"))},

	// The span, and what was written down before.
	{"[,] ?right|taken|measured ?right ?down|low at|by|on|along|near floor|ground|slab ?level|height", "", phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("posts post")), phrase.EndsClause)},
	{"^^ ?my|our|the PERSON ?who|(who is) ?is|'s ?on|at|with|holding ?the other|far|dumb end ?of ?the|our|my ?tape ?measure ?just calls|called|shouts|shouted|yells|yelled|sings|sang|reads|read|hollers|hollered|says ?it ?out|off|over|across|back ?to ?me|us ?,|:", "i measured", figureToCome},
	{"i|we ?just|have had|put|ran|held|pulled|stretched|got|threw ?my|a|our|the ?steel tape ?measure ?right ?across|over|between|along|on|out ?it|them|there|that|posts ?there ?(just now)|myself|today|again|now ,|and|; ?and ?i|we|it|that ?just is|'s|got|get|read|reads|found|find|made|make|makes|gives|gave|says|said ?me ?it ?as|at|is", "i just measured and got", figureToCome},
	{"^^ i|we had|would|'d ?had ?first|already|once ?it ?written|put|noted|jotted|marked|penciled|scribbled|set ?it ?down # for|as|against|under|beside ?the !LENQ|(clear (distance|width|space|run) between ?the end posts) ?, but * ,|- so|and ?so it|that ?really|actually should|must|ought ?to be|read|say ?really #", "$2 is $3", nil},
	{"^^ i|we had|would|'d ?had ?first|already|once ?it ?written|put|noted|jotted|marked|penciled|scribbled|set ?it ?down # for|as|against|under|beside ?the !LENQ|(clear (distance|width|space|run) between ?the end posts) ?, but * ,|- so|and make|call|use|take|put ?down ?it|that #", "$2 is $3", nil},
	{"^^ i|we had # ?all written|put|noted|jotted|marked|penciled|scribbled down|up for|as|against|under|beside ?the !LENQ|(clear (distance|width|space|run) between ?the end posts) ?, but * ,|- so|and ?so make|call|use|take|put|it|that ?really|actually ?should|must|ought ?to ?down ?it|that ?be|read #", "$2 is $3", nil},
	{"ran|pulled|put|stretched|laid|hooked ?the|my|a tape ?measure twice|(three times)|(two times)", "ran the tape", nil},
	{",|. ?and both|(all three) times ?i|we get|got|read|came|came ?it ?out ?to|at", ", i get", figureRightAhead},
	{";|,|.|and|but i|we ?just|have ?just|now ?gone read|measured|remeasured|checked|rechecked|taped|gauged|taken|took|done|did it ?over again|over|twice|(once more)|anew ?((with|in|using|by|on|from) *) ?, ?and|; now|and|; ?and ?now it|that ?really|actually ?is|'s|was|reads|came|comes|says|measures|makes ?out|to|at|is", ", it is", phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("not")), figureRightAhead)},
	{"[,|;|.|-|and] ?and|but i|we ?just|even|also|have ?just held|put|laid|ran|stretched|set|shot|took|used|checked|measured|lasered|had|tried|went ?over|across ?it|that ?on|with|over|across|using|along ?it|that ?with ?a|the|my|our ?long|four|six|good|steel|old ?foot level|laser|straightedge|string|tape|calipers|(water level)|(spirit level)|(story pole)|(string line)|(chalk line)|(measuring tape) ?(and [then] [(a|the|my)] (tape|level|string|ruler|calipers)) ?measure ?across|on|over|along|to|against|from|twice ?it|there|that|top|floor|them|edge ?twice|again|myself|too ?((to|so) * (sure|certain|safe))", "", phrase.BothHold(figuredToTheEnd, phrase.EndsClause)},
	{"^^ ?i|we ?just|have dropped|hung|let|lowered|ran ?down ?my|the|a ?steel tape|string|(plumb line)|(plumb bob) ?measure ?over|off|down|from ?the|my edge|side|wall ?of ?the ?deck|slab|porch|patio|terrace ,|and ?and it|that is|'s|reads|says|was|comes ?to ?about|exactly #", "it is $1", figureOrDown},
	{"it is # ?straight ?down to|onto ?the dirt|EARTH ?below", "the drop is $1", nil},
	{"some # ?farther|further|or lower|below|down|deeper|under|beneath", "about $1 lower", noDoubtBefore},
	{"[,] ?though|but|or ?so i|we would|'d|should|will guess|think|say|reckon|estimate|imagine|judge", "", phrase.BothHold(phrase.SaidBeforeOf(nearlyWords), phraseEndsLineOrClause)},
	{"[,|;] ?but|and|though|as ?i|we ?have ?only|just|merely ?only eyeballed|guessed|guesstimated|estimated|paced|stepped ?at ?it|that ?out|off", "", phrase.BothHold(phrase.SaidBeforeOf(nearlyWords), phraseEndsLineOrClause)},

	// Rails that are up already, tops that line up, and faces.
	{"!first|second|third|fourth|fifth|sixth|bottom|lowest rail|board|slat|plank is|'s|has|was|(has been)|(is all) ?been ?up ?already ?been ?up ?already|now screwed|nailed|glued|fixed|bolted|hung|fastened|mounted|up ?and ?glued|screwed|nailed ?on|up|down|in ?place|tight ?already|(for good) ?,|;|-|and|so ?and|so ?so " + staysUp + " ?again|now|anymore|there|put", "$1 rail is up already", nil},
	{"!first|second|third|fourth|fifth|sixth|bottom|lowest rail|board|slat|plank is|'s|has|was ?been up ?already|now and glued|screwed|nailed|fixed|painted ?on|up|down|in ?place", "$1 rail is up already", nil},
	{"^^ ?my|our|the PERSON ?has|have ?already|just put|screwed|nailed|hung|fixed|fastened|glued|mounted|got ?up|on ?the !first|second|third|fourth|fifth|sixth|bottom|lowest rail|board|slat|plank ?up|on ?yesterday|already|today|((last|this) (week|weekend|night|month|morning|summer)) ?,|;|-|and|so ?and|so ?so " + staysUp + " ?again|now|anymore|there|put", "$1 rail is up already", nil},
	{"top ?edge of !first|second|third|fourth|fifth|sixth|bottom rail|board|slat|plank has|needs|must|ought|should|is|wants|will ?to ?to ?meet|match|(line up with)|(be level with)|(be flush with)|(come level with)|(come up to)|(come out at)|(sit level with)|hit * ,|;|- ?and that|which is|'s|sits|comes ?at|up|out ?at #", "the top of the $1 rail is at $2", nil},
	{"!first|second|third|fourth|fifth|sixth|bottom rail|board|slat|plank 's|' ?s top ?edge has|needs|must|ought|should|is|wants|will ?to ?to ?meet|match|(line up with)|(be level with)|(be flush with)|(come level with)|(come up to)|(come out at)|(sit level with)|hit * ,|;|- ?and that|which is|'s|sits|comes ?at|up|out ?at #", "the top of the $1 rail is at $2", nil},
	{"^^ ?these|those|my|our|all|of|the RAIL are|'re|come|came|have|has|were|had|got * ?,|;|:|.|- ?and|so ?so ?they|these ?are|'re|measure|come ?out|all|at ?* ?:|,|;|- ?only|just|full|even # across|over|on ?the|their|its face|faces|(wide side)", "the rail face is $1", nil},
	{"^^ ?these|those|my|our|all|of|the RAIL have|has ?all|really dried|shrunk|swelled|swollen|shrank ?out|up|down ?(a (bit|lot|little)) ?,|;|. ?and|so ?so ?that ?now they|these ?now are|'re|measure|come ?out|all|only|at ?only|just # ?wide|across ?now", "the rail face is $1", nil},
	{"^^ ?rough ?sawn|cut|milled RAIL , ?a ?full|just|only # across|over|on|wide ?across|on ?the|their face", "the rail face is $1", nil},

	// The saw, the tape, and ends that are squared.
	{"^^ ?((new|thin|this|my) blade [(in|on)] [(the|my)] [saw] (,|:|;)) ?i|we ?just made|ran|took|put|pushed|sent|cut ?a ?(cut|pass|test|(piece|bit|length) [of]) ?(through|in|into|across) ?some|a ?piece|bit ?of ?scrap * ?(through|in|into|across) * ?,|and|; ?and slot|groove|slit|channel|(saw cut) ?that|which ?it|blade|saw|they ?leaves|left|makes|made|cut|cuts ?in|behind ?it is|was|measures|measured|(comes to)|(came to)|(comes out at) # ?wide $$", "the kerf is $1", nil},
	{"blade|saw chews|eats|takes|bites|wastes|burns|munches ?up|away|out|off|through # each|every|(at every)|(at each) time ?that ?it|i|we|blade goes|go|passes|cut|cuts|run|runs|comes ?it ?through|across|past|down|wood ?wood", "the kerf is $1", nil},
	{"lose|cut|trim|take|saw|figure|allow|knock|chop|count # off|from|on|for ?of ?each|every|all board|stick|piece|plank|boards|length|one|end|them ?just ?to|by|for|in|before|when|while|until ?i|we ?get|reach|hit|am ?to|squaring|square|getting|trueing|truing ?it|them|up|ends|wood ?the|its ?end|ends|up|true|square|off|wood", "need a trim of $1", squaresAndNoFigure},
	{"tape|ruler|rule ?measure ?that ?i ?have ?got ?(of mine) ?only|just shows|has|reads|goes ?down|only|just ?to ?in millimeters|millimetres ?on ?it ?, ?and|but nothing|none|(no (lines|marks)) ?any smaller|finer|closer|less|(below that)", "the tape reads to 1 mm", nil},
	{"tape|ruler|rule ?measure ?that ?i ?have ?'ve ?got ?(of mine) ?only|just shows|has|reads|goes ?down|only|just ?to ?in !halves|quarters|eighths|sixteenths|thirty-seconds|millimeters|millimetres ?on ?it ?, ?and|but nothing|none|(no (lines|marks)) ?any smaller|finer|closer|less|(below that)", "my tape only has $1 on it", nil},
	{"folding|wooden|steel|metal|old|my rule|ruler ?that has|shows only|just !millimeters|millimetres ?marked ?on ?it", "tape reads to 1 mm", nil},
	{"tape ?measure ?only|just has|shows ?only|just !millimeters|millimetres on it", "tape reads to 1 mm", nil},

	{"^^ ?all|the|my|these ?of ?the board|lumber|plank|boards|ends ?'s|' ?s ?of ?ends|boards ?is|are|have|has|came|were * ?, so", "", squaresAhead},
	{"^^ i|we|he|they|PERSON ?have|has ?just ground|shimmed|poured|leveled|levelled|planed|filled|built|packed|scraped|sanded|chiseled|chiselled|jacked ?down|up|out * ,|;|.|and|so ?so|and ?now ?so", "", floorLevelAhead},
	{", which is|was ?exactly|just|about what|how PERSON|they|he|she|(the _) ?had promised|said|told|wanted|planned|intended ?it|us|me", "", phrase.BothHold(figuredToTheEnd, phrase.EndsClause)},
	{"and it came|comes ?out to|at", ",", phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("measured taped")), figureRightAhead)},
	{"^^ i|we would|'d say|guess|think|reckon ?it ?is about|around|roughly", "it is about", figureOrDown},

	// What somebody cut already, and what all was told.
	{"cut|sawn|sawed|ripped ?at|to # already", "cut at $1", nil},
	{"^^ that is|'s everything|all|(the lot) ?there|that ?is|was ?there|i|we ?have|got ?measured from|for|on ?out|over|down|up there|here|today|site|outside|(the (site|wall)) ?(for today) ,|.|;|- ?so", "", moreFollows},
	{"^^ ?second|first|last|final site visit|survey|measure|measurements ?notes ?,|-|on ?mon|monday|tue|tues|tuesday|wed|weds|wednesday|thu|thur|thurs|thursday|fri|friday|sat|saturday|sun|sunday ?morning|am|pm|afternoon :|-|,|;", "", figureToCome},
}

// pricesTold are ways to tell prices, stock, what is owned and what may be spent, with what somebody thinks of it, and the plain words.
var pricesTold = []phrase.Placed{
	{"[,] ?and|but ?they|which|prices|price ?just keep|keeps|kept ?on creeping|going|climbing|inching|rising ?up ?and up", "", yardBoth(moneyTold, yardClauseEnds)},
	{"[,] which i|we|ME ?all ?do think|find|call|reckon|consider|feel ??is|that|to ?be ?a ?lot|too|so|very|rather ?much|steep|dear *", "", yardBoth(moneyTold, yardClauseEnds)},
	{"?till|until|before ?the ?next|this|tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|sunday|spring ?week|month|delivery|load|truck ,|and|but ?and|but i|we am|are|can|will|could ?(not going to)|not ?going|gonna ?to wait|waiting|(hang around)|(hold on)|(hold off) ?for|on|that|until ?long|then|them|that|it", "", yardBoth(goneFooters, yardClauseEnds)},
	{"[,] ?and|but when|once it|that is|'s ?all gone ?, ?then it|that is|'s ?all ?been gone", "", yardBoth(behindSomething, yardClauseEnds)},
	{"^^ i|we had|'d|have|(all had) ?first|both|all|once|already said|agreed|planned|put|settled|noted|written|fixed ?on|down|aside|at # for|on|toward ?all ?the|my|our materials|material|lumber|wood|timber|wall|job ?, but * ,|; so|and ?so|let ?us make|call it|that #", "the budget is $2 dollars", nil},
	{"and|, ?please ?just do|build|make|get ?it|this|that|wall as cheap|cheaply|inexpensively|economically ?done as you|we|possible|i ?possibly|can|could ?can|possibly", "and as cheap as possible", behindSomething},
	{"for as little money|cash ?outlay as you|we|i ?possibly can|could ?possibly ?get ?(away with)", "as cheap as possible", nil},
	{"^ i|we do not|never ?much|really care|mind how fancy|pretty|nice|ugly|plain|rough|posh|smart ?that it|wall|thing looks|(turns out)|(ends up)|is|(comes out) ,|;|. ?but|so", "", moreFollows},
	{"suppose|say|supposing|assume|imagine ?that i|we got|bought|had|ordered|took ?them|it|everything|lot|boards|lumber ?all in|as|at !eights|tens|twelves|fourteens|sixteens|eighteens|twenties", "what if they only sell $1", phrase.StartsClause},
	{"for|to|in ?my|our|the|a|her|his ?_ _ ,|and|; ?and|so ?so ?please ?just add|put|throw|include|count|tack|list|stick them|those|that|these ?all ?in|on|to|onto ?the|my|our ?list|order ?too|also|(as well)", "", phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("more extra additional another also")), phraseEndsLineOrClause)},
	{"add|include|(put in)|(tack on)|(throw in)|(stick in) ## @ ?s at|,|of|(cut (at|to)) # ?long|each|apiece for ?a|the|my|our", "throw in $1 $2 at $3 for the", phrase.BothHold(noDoubtBefore, ofAnotherThing)},
	{"take ?that|the|this last|latest|previous price|figure|number|length|thing|entry|one|bit back", "undo that", phrase.BothHold(phrase.StartsClause, phraseEndsHere)},
	{"for ?a|an|one|each|every !(# @) ,|and|;|. ?and|but i|we ?already|also|still ?have|own ?already|still ?got ## of those|them|these|that ?already", "for a $1 , and i have $4 $1", nil},
	{"for ?a|an|one|each|every !(# @) ,|and|;|. ?and|but i|we|there ?already|also|still ?is|are|have|own ?already|still ?got ## of those|them|these|that ?already ?sitting|lying|stacked|left|over in|at|behind|under ?the|my|our garage|home|shed|barn|basement|house|deck|porch|yard", "for a $1 , and i have $4 $1", nil},
}

// CostBound is the phrase by which somebody says what it will not cost more than. It is set before the claim around it is.
var CostBound = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf([]phrase.Placed{
		{"(will|would) not ?ever come|run|get|add|amount|cost ?out|up ?to (more than)|over|above|past # ?dollars|bucks ?(in all)", "will come to no more than $1 dollars", phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("she he they")), claimedOrChecked)},
	})
})

// limitsTold are ways to tell limits by what will not do, with the plain words for each.
var limitsTold = []phrase.Placed{
	{"?any|a|no !LENQ ?of|that|which|as|going ?is|goes|being|as " + isOver + " # " + wontServe, "$1 at most $2", noDoubtBefore},
	{"?any|a|no !LENQ ?of|that|which|as|going ?is|goes|being|as " + isUnder + " # " + wontServe, "$1 at least $2", noDoubtBefore},
	{"for all of ?the gaps|spaces", "for all the gaps", nil},
	{"in no case|event|circumstances", "never", nil},
	{"under no circumstances", "never", nil},
	{"on no account", "never", nil},
	{", ?but ?about|for|with ?the bay ## ?is|, ?i|we do not care|mind ?about|for ?what ?it|that", "", phrase.BothHold(figuresBefore, phrase.EndsClause)},
	{"why can not !LENQ|bays ?ever|just go|run|get|be|stretch|reach ?out|up ?to beyond|past #", "why can not $1 be over $2", nil},
	{"?please|just (bring|get|make|have|keep|take|pull|push|squeeze|set|run) GAP ?down|in|together ?to|just ?be|just as low|small|tight|narrow|close|little as it|they|you|that|possible|i|we ?will|can|could|possibly|may|gets|goes|get ?go|get|be|it|bring|make ?it ?, but|only|though|yet", "as small a gap as possible , but", moreFollows},
	{"?please|just (bring|get|make|have|keep|open|push|set|run) OPENING ?up|out ?to|just ?be|just as big|wide|large|broad|roomy as it|they|you|that|possible|i|we ?will|can|could|possibly|may|gets|goes|get ?go|get|be|it|bring|make ?it ?, but|only|though|yet", "as large an opening as possible , but", moreFollows},
	{"smallest|tightest|narrowest|lowest gap ?there|possible|that|you|i|we ?is|can|could ?get|manage|have|make|give ?me ?, but|only|though|yet", "as small a gap as possible , but", moreFollows},
	{"largest|biggest|widest OPENING ?there|possible|that|you|i|we ?is|can|could ?get|manage|have|make|give ?me ?, but|only|though|yet", "as large an opening as possible , but", moreFollows},
	{"[,] ?and|but|though no|not ?any|a farther|further|more|wider|bigger|higher|longer|(hair|inch) ?(farther|further|more|wider|bigger)", "", phrase.BothHold(upToBefore, phraseEndsLineOrClause)},
	{", that is|'s all|(as many) ?of ?the brackets|screws|boards ?that ?i|we ?have ?got ?left|here", "", phrase.BothHold(figuredToTheEnd, phrase.EndsClause)},
	{", ?because|as|since|and i|we ?only|have ?only got|have ?only so|that|this many brackets|screws|boards ?left|here", "", phrase.BothHold(figuredToTheEnd, phrase.EndsClause)},
	{"?the|our|my pup|puppy|dog|cat|baby|toddler|kid|kids|rabbit|rabbits|chicken|chickens gets|squeezes|slips|fits|crawls|climbs|wriggles|get|squeeze|slip|fit|crawl ?right ?out through|under ?of anything|everything|whatever bigger|wider|larger|higher|taller ?than ?that|it|this ?,|;|. so", "", figureToCome},
}

// measuredUp are lists of what the rails of a bay measure, from the bottom up or from the top down.
func measuredUp() (out []phrase.Placed) {
	for n := 2; n <= 7; n++ {
		figures := "#" + strings.Repeat(" , #", n-1)
		up, down := "", ""
		for i := range n {
			up += ", bay $1 rail " + strconv.Itoa(i+1) + " $" + strconv.Itoa(i+2) + " "
			down = ", bay $1 rail " + strconv.Itoa(i+1) + " $" + strconv.Itoa(n+1-i) + " " + down
		}
		const lead, goes = "bay ## ?, ?rails|boards|slats ?measured|measure|read ?, ?going|counting|reading|working|taken|measured ", " ?,|:|-|-- ?is|are|i|we ?get|got|read|measured "
		out = append(out,
			phrase.Placed{Said: lead + "?from ?bottom ?rail|board|one up|upward|upwards ?from ?bottom ?rail|board|one" + goes + figures, Plain: strings.TrimPrefix(up, ", "), Where: noDoubtBefore},
			phrase.Placed{Said: "bay ## ?, ?rails|boards|slats ?, counting|counted|starting|reading|measured from ?the bottom ?rail|board|one" + goes + figures, Plain: strings.TrimPrefix(up, ", "), Where: noDoubtBefore},
			phrase.Placed{Said: lead + "?from bottom ?rail|board|one to ?the top ?rail|board|one" + goes + figures, Plain: strings.TrimPrefix(up, ", "), Where: noDoubtBefore},
			phrase.Placed{Said: lead + "?from top ?rail|board|one to|down ?to ?the ?bottom ?rail|board|one" + goes + figures, Plain: strings.TrimPrefix(down, ", "), Where: noDoubtBefore})
	}
	return out
}

// SaidTwice leaves out what was measured where the same figure is wished behind a "so": "theirs is 41 to the top board, so make ours 41 high
// too".
func SaidTwice(atoms []scan.Atom) []scan.Atom {
	for i := 3; i+3 < len(atoms); i++ {
		if atoms[i].Text != "so" && (atoms[i].Text != "make" || atoms[i-1].Text != ",") || !wishesAgain[atoms[i+1].Text] && atoms[i].Text == "so" {
			continue
		}
		head, tail := atoms[:i], atoms[i:]
		at, end := LastFigure(head)
		to, past := LastFigure(tail)
		if at < 1 || to < 1 || scan.Text(head[at:end]) != scan.Text(tail[to:past]) || !noDoubtBefore(head, nil) || asksAtEnd(atoms) || figureTold(tail[:to]) || !slices.ContainsFunc(tail, wishedAgain) || !measuredOrTheirs(head, tail) || countsApart(head[:at]) {
			return atoms
		}
		out := slices.Clone(tail)
		if out[0].Text == "so" {
			out = out[1:]
		}
		for len(out) > 0 && (out[len(out)-1].Text == "too" || out[len(out)-1].Text == "also" || out[len(out)-1].Text == ".") {
			out = out[:len(out)-1]
		}
		return out
	}
	return atoms
}

// countsApart reports whether a figure stands in words that counts no parts and names none.
func countsApart(in []scan.Atom) bool {
	for i := range in {
		if end, ok := FigureEnd(in, i); ok && in[i].Text != "a" && in[i].Text != "an" && in[i].Text != "one" && (end >= len(in) || !chunk.IsClass(in[end].Text, "RAIL") && !chunk.IsClass(in[end].Text, "POST")) {
			return true
		}
	}
	return false
}

// wishesAgain are words by which the same is wished.
var wishesAgain = scan.WordSet("make use take set let keep go please")

// measuredOrTheirs reports whether what was told was measured of the same thing, or is of another wall.
func measuredOrTheirs(head, tail []scan.Atom) bool {
	if phrase.SaidBeforeOf(scan.WordSet("theirs neighbor neighbors neighbour neighbours next"))(head, nil) || phrase.SaidBeforeOf(scan.WordSet("old"))(head, nil) && slices.ContainsFunc(head, func(a scan.Atom) bool { return chunk.IsClass(a.Text, "WALL") }) {
		return phrase.SaidBeforeOf(scan.WordSet("ours mine"))(tail, nil)
	}
	gaps := func(in []scan.Atom) bool {
		return slices.ContainsFunc(in, func(a scan.Atom) bool { return chunk.IsClass(a.Text, "GAP") || a.Text == "between" })
	}
	other := slices.ContainsFunc(head, func(a scan.Atom) bool {
		return chunk.IsClass(a.Text, "OPENING") || chunk.IsClass(a.Text, "WALL") || chunk.IsClass(a.Text, "BAY") || chunk.IsClass(a.Text, "POST")
	})
	return !other && gaps(head) && gaps(tail) && phrase.SaidBeforeOf(scan.WordSet("measure measures measured read reads get got"))(head, nil)
}

// wishedAgain reports whether a word tells of what a figure is wished.
func wishedAgain(a scan.Atom) bool {
	switch a.Text {
	case "high", "tall", "wide", "long", "apart", "deep":
		return true
	}
	return chunk.IsClass(a.Text, "GAP") || chunk.IsClass(a.Text, "OPENING") || chunk.IsClass(a.Text, "WALL") || chunk.IsClass(a.Text, "BAY") || chunk.IsClass(a.Text, "RAIL")
}

// figureTold reports whether there is a figure, in digits or in words.
func figureTold(in []scan.Atom) bool {
	at, _ := LastFigure(in)
	return chunk.Figured(in) || at >= 0
}

// drawnBefore: a paper, or whoever drew it, was named.
func drawnBefore(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool {
		return chunk.IsClass(a.Text, "PAPER") || a.Text == "he" || a.Text == "she" || a.Text == "they" || chunk.IsPerson(a.Text)
	})
}

// moneyTold: a price was told.
func moneyTold(before, _ []scan.Atom) bool {
	return yardMoneyBehind(before, nil) || figureTold(before) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "$" || a.Text == "dollars" || a.Text == "bucks" || a.Text == "apiece" || a.Text == "each" || a.Text == "cents"
	})
}

// squaresAhead: boards are squared.
func squaresAhead(_, after []scan.Atom) bool {
	return figureTold(after) && phrase.SaidBeforeOf(scan.WordSet("square squaring trim"))(after, nil)
}

// floorLevelAhead: it follows that the floor is level, or how much it is out.
func floorLevelAhead(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after, func(a scan.Atom) bool { return chunk.IsClass(a.Text, "FLOOR") }) && (figureTold(after) || phrase.SaidBeforeOf(scan.WordSet("level same even"))(after, nil))
}

// claimedOrChecked: somebody says so, or it is asked whether that is right.
func claimedOrChecked(before, after []scan.Atom) bool {
	return checkAsked(before, after) || phrase.SaidBeforeOf(scan.WordSet("says reckons thinks claims swears figures"))(before, nil)
}

// checkAsked: it is asked whether that is right.
func checkAsked(_, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("right true so check verify correct"))(after, nil) && len(after) < 12
}

// nearlyWords tell that a figure is near.
var nearlyWords = scan.WordSet("about around roughly approximately some near nearly maybe ish")

// leanAhead: a post is told to lean.
func leanAhead(_, after []scan.Atom) bool { return leansBefore(after, nil) || tipsIn(after) }

// leanTold: a post was told to lean.
func leanTold(before, _ []scan.Atom) bool { return leansBefore(before, nil) || tipsIn(before) }

func tipsIn(in []scan.Atom) bool {
	for _, a := range in {
		switch a.Text {
		case "tips", "tilts", "tilting", "tipping", "plumb", "off", "out":
			return true
		}
	}
	return false
}

// ofAnotherThing: it is for something that is no part of the wall.
func ofAnotherThing(_, after []scan.Atom) bool {
	return len(after) > 0 && !chunk.IsClass(after[0].Text, "RAIL") && !chunk.IsClass(after[0].Text, "POST") && !chunk.IsClass(after[0].Text, "STIFF") && !chunk.IsClass(after[0].Text, "WALL") && !chunk.IsClass(after[0].Text, "BAY")
}

// phraseEndsHere: a clause ends here.
func phraseEndsHere(_, after []scan.Atom) bool { return chunk.EndsPart(after, 0) }

// floorFoundAhead: what was found of the floor follows.
func floorFoundAhead(_, after []scan.Atom) bool {
	return figureTold(after) && phrase.SaidBeforeOf(scan.WordSet("higher lower down up"))(after, nil)
}

// figureRightAhead: a figure follows at once.
func figureRightAhead(_, after []scan.Atom) bool {
	return phrase.StartsLength(measure.Reader{Atoms: after}, 0)
}

// figuredToTheEnd: a figure stands before, and nothing is asked or denied with it.
func figuredToTheEnd(before, after []scan.Atom) bool {
	return figureTold(before) && noDoubtBefore(before, after)
}

// figureOrDown: it is told that the way goes down to the ground.
func figureOrDown(_, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("down below"))(after, nil)
}

// phraseEndsLineOrClause: the clause ends behind it.
func phraseEndsLineOrClause(before, after []scan.Atom) bool {
	return len(before) > 1 && chunk.EndsPart(after, 0)
}

// upToBefore: an upper limit was told.
func upToBefore(before, _ []scan.Atom) bool {
	for i, a := range before {
		if i > 0 && (before[i-1].Text == "up" && a.Text == "to" || before[i-1].Text == "at" && a.Text == "most") {
			return chunk.Figured(before)
		}
	}
	return false
}

// squaresAndNoFigure: boards are squared, and lose that much by it.
func squaresAndNoFigure(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && !chunk.Figured(before) && chunk.EndsPart(after, 0)
}
