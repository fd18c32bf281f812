package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// uprightTurns are ways to speak of what stands upright or lies across the wall: its height, its rails and the room between and below them,
// the brackets that hold them, and what they are cut and measured with.
var uprightTurns = []phrase.Placed{
	// Limits in one breath.
	{"BOTTOM RAIL must|may|can|should|shall|will not|never ?be ?sit|come|get|go|hang closer|nearer|lower ?to ?FLOOR than # to|off|from|above FLOOR ?, nor|or|and ?must|may|should ?not ?be|sit|stand|rise|come|get|go ?any more|higher|further|farther than # above|off|from|over it|that|FLOOR", "bottom gap at least $1 and at most $2", nil},
	{"BOTTOM RAIL must|may|can|should|shall|will not|never ?be ?sit|come|get|go|hang ?any closer|nearer|lower ?to ?FLOOR than # ?, nor|or|and ?must|may|should ?not ?be|sit|stand|rise|come|get|go ?any more|higher|further|farther than # ?((above|off|from|over) (it|that|FLOOR))", "bottom gap at least $1 and at most $2", nil},
	{"(do not)|never ?ever let me|us|it|them|this|things ?go|get|drop|fall|dip|end ?up ?to under|below|(less than)|(tighter than) # BETWEEN RAIL|them ?, or|nor|and ?not over|above|past|(more than)|(wider than) #", "the gap at least $1 and at most $2", phrase.StartsClause},
	{"(do not)|never ?ever let me|us|it|them|this|things ?go|get|rise|end ?up ?to over|above|past|(more than)|(wider than) # BETWEEN RAIL|them ?, or|nor|and ?not under|below|(less than)|(tighter than) #", "the gap at least $2 and at most $1", phrase.StartsClause},
	{"i|we can manage|handle|accommodate|fit ?anything ?anywhere ?from ## to|through ## RAIL", "from $1 to $2 rails", noDoubtBefore},
	{"^ ?anything ?anywhere ?from|between ## to|or|through|and ## RAIL would|will|does|is ?be suit|do|fine|work|okay|ok|good|alright ?for ?us|me ?fine|nicely ,", "from $1 to $2 rails ,", noDoubtBefore},
	{"?, ?but (as long as)|(so long as)|provided|providing ?that there is ?at ?least # or more|better BETWEEN|(in between) RAIL|them|each|two", ", the gap at least $1", countBefore},
	{"?, ?but (as long as)|(so long as)|provided|providing ?that there is|are ?always ?at ?least|(no less than)|(not less than)|(a minimum of) # BETWEEN|(in between) RAIL|them|each|two", ", the gap at least $1", countBefore},
	{"?, ?but (as long as)|(so long as)|provided|providing|(on condition) ?that !(GAP|gaps) is|are|stays|stay|remains|remain|keeps|keep|be !(at least|(no less than)|(not less than)|under|below|over|above|(no more than)|(at most))", ", the gap $2", countBefore},
	{"i|we do not mind ?the !LENQ going|getting|being|coming|running ?a ?bit ?up ?to over|above|past|beyond # ?, ?just ?as|so long as|that it|that is|stays|remains|keeps|does ?not ?go|get|run|come ?up !(over|above|past|beyond|(more than)) #", "$1 at most $4", nil},
	{"!LENQ does|need not ?have|need ?to be # ?HIGH|wide ?exactly|precisely , ?but|just|only|so ?just|only thereabouts|roughly|approximately|about|close|near ?to ?it", "$1 about $2", noDoubtBefore},
	{"it does|need not ?have|need ?to be # HIGH ?exactly|precisely , ?but|just|only|so ?just|only thereabouts|roughly|approximately|about|close|near ?to ?it", "wall height about $1", noDoubtBefore},
	{"i|we imagine|picture|envision|envisage|see about|around|roughly|approximately #", "i want about $1", phrase.StartsClause},
	{"WALL ?'s ?has|have|must|should|got|needs|gotta ?to clear|beat|top # ?, but|and stay|stays|be|keep ?it ?is under|below #", "wall height over $1 and under $2", noDoubtBefore},
	{"^ figure|picture|plan|imagine ?on WALL ?at|being|to ?be ?somewhere about|around|near|roughly # HIGH", "wall height about $1", nil},
	{"^ ?and ?, for ?exactly|just that|this ?very ?same reason|cause ?, ?so ?please !(GAP|every|each|no|all|WALL|BOTTOM|RAIL)", "$1", figureFollows},
	{"^ for|out ?of safety ?reasons|purposes|sake ?, !(GAP|every|each|no|all|WALL|BOTTOM|RAIL|keep|make|leave|nothing)", "$1", figureFollows},
	{"(how come)|why ?can|could ?not i|we ?can|could ?not ?have|put|set|hang|get|run BOTTOM RAIL ?sit ?any closer|nearer|lower ?down to FLOOR than #", "why can not the bottom gap be under $1", nil},
	{"it would|will be ?quite|just|perfectly|absolutely fine|ok|okay|alright|acceptable|good ?with|for ?us|me ?, if|for !LENQ was|were|is|are ?to ?be anywhere|anything|somewhere !(from|between|up|under|over|below)", "let $1 be $2", figureFollows},
	{"?i|we do not want|need|like nothing|none !(wider|bigger|larger|more|closer|tighter|narrower|smaller|less|over|under|taller|higher)", "nothing $1", figureFollows},
	{"aint|ain't|(ai not)|(is not)|(are not) no|any !(RAIL|gap|gaps) going|getting|coming|gonna ?be ?any !(closer|nearer|lower|higher|wider|bigger|tighter)", "no $1 may be $2", phrase.StartsClause},
	{"## RAIL minimum|min|(at least)|(at the least) ?, ?and|but ?RAIL ## tops|max|maximum|(at most)|(at the most)", "from $1 to $2 rails", noDoubtBefore},
	{"# minimum|min ?, ?and|but # tops|max|maximum|(at most)|(at the most)", "at least $1 and at most $2", gapOrHeight},
	{"is|are ## RAIL going|gonna to work|fit|do|go if|when|with", "what if $1 rails and", nil},
	{"?i|we|you ?could|can|may|will|would go|come ?down as|so low|small|tight|little as # on|with|for !LENQ ?, ?but ?and no lower|less|further|tighter|smaller", "$2 at least $1", noDoubtBefore},
	{"?i|we|you ?could|can|may|will|would go|come ?up as|so high|big|wide|tall|large|much as # on|with|for !LENQ ?, ?but ?and no higher|more|further|wider|bigger|taller", "$2 at most $1", noDoubtBefore},
	{"!fatter|bigger|wider|larger|tighter|smaller|narrower|taller|higher|lower|shorter !LENQ ?, say|(let us say) #", "$2 $3", noDoubtBefore},
	{"?our|my|the PERSON suggests|suggested|recommends|recommended|proposes|proposed|advises|advised !(.. # ?..) , and|so ?that i|we ?do|fully|both|quite|totally agree|concur $$", "i want $1", phrase.StartsClause},
	// What was wrong, and what it is.
	{"# ?that|which i|we gave|told|said|had|put|quoted ?you for|as|on|about !LENQ was|is|were ?all wrong|mistaken|off|incorrect|mistake|slip|typo ;|,|.|- ?please ?so ?now ?and ?please make|put|take|call|should ?be ?it|that ?be #", "$2 is $3", nil},
	{"## ?that|which i|we gave|told|said|had|put ?you for|as|on !COUNTQ was|is|were ?all wrong|mistaken|off|incorrect|mistake|slip|typo ;|,|.|- ?please ?so ?now ?and ?it ?please make|put|call|should ?be ?it|that ?be ##", "$3 $2", nil},
	{"?i|we ?think|feel|believe ## RAIL would|will|might look|be|seem ?a ?bit ?lot nicer|better|prettier|neater than ## ?RAIL ?, ?and so|and ?please let us ?do|go|make|use|take|have ?it ?with|for ##", "$3 rails", noDoubtBefore},
	{"i|we ?had|have ?first ?once asked|wanted|planned|said|ordered|meant ?for|on ## RAIL ?, but|though ## will|would|is|are|ought ?to ?be enough|do|fine|plenty|sufficient", "$2 rails", phrase.StartsClause},
	{"?i|we|you can|could|will squeeze|fit|get|sneak|slip ?in one|another ?more ?RAIL|one ?in ?there , so ?make|that|it|is ?it|that ##", "$1 rails", fewBefore},
	{"i|we told|gave|said|had ?it ?to ?you wrong|(the wrong (thing|number|count)) ?earlier ?before ?, ?: ?there is|are ## RAIL ?in|on|to ?it|there ?, ?and not ##", "$1 rails", noDoubtBefore},
	{"## RAIL ?, ?and that|this ?is ?already counting|including|includes|counts ?the one|(## of them) ?that ?is|are ?already ?hung ?up|on|there|in ?place ?already ?now", "$1 rails", nil},
	// How high.
	{"?the top of ?this|that WALL ?is ?going|meant|supposed ?to finish|land|end|come|top|stand|be|sit ?up ?out ?at|on #", "wall height $1", noDoubtBefore},
	{"top|upper edge of|on ?that upper|uppermost RAIL", "top of the wall", nil},
	{"^ ?measuring ?measured from ?the ?very top ?edge ?of|on ?the ?top|highest|upper RAIL ?straight|right|all ?the ?way ?down to FLOOR ?, ?i|we|it|my ?tape|is ?read|reads|get|got|have|measure|measured|come|comes|makes|make ?it ?to ?is #", "wall height $1", nil},
	{"measured ?from FLOOR ?up to top ?line|edge|mark|board|rail ?, ?and it|that is|came|comes|read|reads ?to ?at ?out #", "wall height $1", nil},
	{"^ ?please ?so make|have|build|run|take it|her|them|WALL # even|high|tall ?right ?up to top", "wall height $1", nil},
	{"flush|level|even|(in line)|(lined up) with window ?sill|ledge at #", "at $1", wallTopBefore},
	{"drop|lower|bring ?me top ?edge|rail of WALL ?down ?by #", "lower the wall by $1", noFurther},
	{"raise|lift|bring ?me top ?edge|rail of WALL up ?by #", "raise the wall by $1", noFurther},
	{"have|run|carry|take|leave|left|let|make|set|stand|put|bring ?that|this ?ADDED UPRIGHT|POST ?go|run|stand|come|stick|rise|reach|extend|end ?up|out # higher|taller|longer|further|above than ?the ?top ?of WALL", "the post is $1 higher than the wall", byOrder},
	{"what if|suppose i|we left|leave|let|have ?that|this ?ADDED UPRIGHT|POST ?go|run|stand|come|stick|rise ?up # higher|taller|longer than ?the ?top ?of WALL", "what if the post is $1 higher than the wall", nil},
	{"about|roughly|around as tall|high as * ?, which|that is|stands|measures ?at ?about # ?high|tall", "about $1 high", noDoubtBefore},
	{"from FLOOR|dirt|soil|grass ?up to ?the top of ?the ?that ?added|new|extra POST ?, ?i|we|it|that ?is|get|got|make|read|measure|measured ?it #", "post height $1", noDoubtBefore},
	{"i|we put|laid|held|set|ran ?a level|laser|straightedge|string across|over|along ?it|there|the|top ?and top ?is|sits|comes ?is ?in ?out at #", "wall height $1", noDoubtBefore},
	{"keep|set|hang|put|run top RAIL flush|level|even with WALL top at #", "wall height $1", phrase.StartsClause},
	{"!above|off|over|from deck|porch|floor boards|planks", "$1 the floor", nil},
	{"^ make ?it|WALL # ?, ?not # ?, to|at top", "wall height $1", nil},
	{"like|(same as)|(to match) the _ next door $$", "", figureStands},
	{"she|it tops ?out at|on #", "wall height $1", phrase.BothHold(figuresBefore, plainWish)},
	{"top RAIL ?'s upper|top edge ?is ?right ?at #", "wall height $1", noDoubtBefore},
	{"ADDED POST|UPRIGHT ?:|, top ?\\@|at|=|is|: #", "post height $1", nil},
	// How many, how close, of what size.
	{"@ , ## of them|those|these high|up|tall", "rail size $1 , $2 rails", railsOnly},
	{"RAIL ?that ?all packed|crammed|jammed|squeezed|bunched|crowded|put|set|hung|mounted|spaced|fitted|placed ?just as|so close|closely|tight|tightly|near ?together ?(to each other) as ?is ?they|you|i|we|it can|could|possible|may|will|possibly ?ever ?be ?possibly ?get|go|put|set|place|make|have|hang|manage|be ?them|it", "the smallest gap", plainWish},
	{"?i|we ?want ?them|those|these RAIL ?just as close|closely|tight|near to each other|(one another) as ?they|you|i|we|it can|could|possible|may|possibly ?ever ?be ?possibly get|go|put|set|place|make|have|hang|manage|be ?them|it", "the smallest gap", plainWish},
	{"tighten|close|squeeze|push|draw ?up RAIL|gaps|gap ?up|together|in ?just as far|much|tight|close ?together as BRACKET ?will|can|would|could let|lets|allow|allows|permit|permits ?you|me|us|it", "the smallest gap", phrase.StartsClause},
	{"as few RAIL as ?the ?this WALL|bay|it|thing|job can|will|could ?possibly get|gets|make ?by|away|along|do with|on", "the fewest rails", nil},
	{"and close !(gaps|gap|spaces) ?up|in|down ?by #", "and reduce the $1 by $2", noFurther},
	{"close the|those|these|my|our !(gaps|gap|spaces) ?up|in|down to|at #", "make the $1 $2", noFurther},
	{"draw|pull|pinch|nip ?the gap|gaps in ?by #", "reduce the gap by $1", phrase.BothHold(phrase.StartsClause, noFurther)},
	{"# oc|(on center)|(on centre)|(on centers) is ?about closest|tightest|nearest i|we|you would|will|can|could|want ?ever ?to ?put|set|place|space|have|fit ?the STIFF", "stiffener spacing at least $1", nil},
	{"# oc|(on center)|(on centre)|(on centers) is ?about farthest|furthest|widest i|we|you would|will|can|could|want ?ever ?to ?put|set|place|space|have|fit ?the STIFF ?apart", "stiffener spacing at most $1", nil},
	{"same amount|measure|bit of !(room|space|air|gap|daylight|clearance)", "same $1", nil},
	{"equal to|(same as)|matching|(the same as) what|whatever is|runs|goes|(there is) BETWEEN|(in between) ?the ?rest|others|RAIL ?of ?them|RAIL", "equal to the gap", phrase.SaidBeforeOf(scan.WordSet("bottom lowest floor under beneath below"))},
	{"?the|all ?of ?the gaps|spaces|spacing should|must|will|shall|to all be ?the same|equal|even|alike ?, ?and including|(even at)|(that includes|goes ?for) ?the one|space|gap at|under|beneath|by|below bottom|lowest ?RAIL", "the bottom gap is the same as the gap", noDoubtBefore},
	{"# BETWEEN|(in between) ?the rest|others ?of ?them|RAIL", "gap $1", phrase.SaidBeforeOf(scan.WordSet("bottom lowest lower"))},
	{"?so i|we ?have got ## RAIL ?uh|um # ?in BETWEEN RAIL|them", "$1 rails , $2 between the rails", noDoubtBefore},
	{"raise|lift|set|hang|put BOTTOM RAIL ?up ?high ?enough so ?that there is|are # ?of ?space|room|clearance under|below|beneath it", "bottom gap $1", phrase.StartsClause},
	{"BOTTOM RAIL sits|stands|is|hangs|ends # up|clear $", "bottom gap $1", noDoubtBefore},
	{"# toe|tow space|room|gap|kick|clearance ?at|along|under ?FLOOR|bottom", "bottom gap $1", noDoubtBefore},
	{"?the|his|her|their PAPER does not ?ever ?even give|show|list|say|mention ?any !LENQ ?, ?so ?and ?then ?please ?just use|take|make|call ?it ?with #", "$1 $2", noDoubtBefore},
	{"?whatever|whichever|any !LENQ ?that you come|end|wind up with|at ?, ?but do not let it|that be|go|get|come|run !(over|under|above|below|past|(more than)|(less than))", "$1 not $2", figureFollows},
	{"run|put|hang|stack|set ?me ?up ## of them ?up and keep|leave|hold|put|have # ?of ?air|space ?in BETWEEN ?them", "$1 rails , $2 between the rails", phrase.StartsClause},
	{"drop|pull|take|leave|lose ## ?of ?those|the RAIL ?back out of it|there|this|WALL|bay", "take out $1 rails", phrase.StartsClause},
	{"shrink|tighten|close|open|widen|spread|stretch|grow ?the gaps|gap|spaces ?up|out|in|down till|until they|it is|are|get|gets|measure|hit|reach|come ?to|down|up ?at #", "gap $1", phrase.StartsClause},
	{"gap|space|room below|underneath should|must|to|will|shall ?be equal|match|equals|matches|(same as) gaps|ones|others|spaces above", "the bottom gap is the same as the gap", nil},
	{"an|some even|odd number|count of RAIL", "somehow", plainWish},
	{"RAIL ?= ## ?, btm|bottom|bot ?gap ?= # ?, top ?= #", "$1 rails , bottom gap $2 , wall height $3", noDoubtBefore},
	{"h = # ?, r = ## ?, g = #", "wall height $1 , $2 rails , gap $3", nil},
	{"gaps|gap|spaces tight|small|close|narrow enough ?so ?that ?for ?a|an|no|the _ ?_ will|can|could|does ?not|never ?ever go|fit|get|slip|squeeze|roll|pass through|between ?them , !(# or less|(tops))", "gap $1", noDoubtBefore},
	{"there is|was ?still|only|just ?enough room|space for ## RAIL ?, ?and ?so ?let ?us ?we|i ?will do|use|go|take|make|have|want ?it ?with|for ##", "$2 rails", phrase.StartsClause},
	{"^ ?i ?want ## at|with # gaps|gap|spaces|spacing", "$1 rails , gap $2", railsOnly},
	{"take|leave|strike|cross !(LENQ|(RAIL size)|(POST size)) ?back out of|from what|everything i|we told|said|gave ?you", "forget $1", phrase.StartsClause},
	{"GAP ?: ?, same|equal all round|around|over ?, ?and incl|including ?at bottom|floor", "the bottom gap is the same as the gap", noDoubtBefore},
	{"?i|we ?have|just measured|saw # ?in BETWEEN RAIL|them on|at|in ?his|her|their|the|a ?_ wall|fence|place ?, ?and|so i|we want|(would like) ?exactly same", "gap $1", phrase.StartsClause},
	{"back to # on|at|under|along ?the bottom", "bottom gap $1", nil},
	{"@ battens|batten|strips|laths|stock|lumber|timber for|as ?our RAIL", "rail size $1", nil},
	{"@ (would be)|(will be)|(might be) ?the best|ideal|perfect|(just right)", "use $1", plainWish},
	{"^ lose|forget|drop|scrap|strike|disregard|ignore|skip what|whatever|(the part where)|(the bit where)|that i|we told|said|gave ?you about|for|on !(POST|RAIL|STIFF) being|are|is|as @", "forget the $1 size", nil},
	// How wide the boards are.
	{"^ when|as i|we|you hold|put|lay|set|held|laid|run ?a|my|the ruler|tape|rule|calipers|caliper|square ?measure to|on|across|against|over !RAIL ?, they|it|these", "$1", nil},
	{"with|by|using ?my calliper|callipers|caliper|calipers !RAIL ?come|comes|came|measure|measures|read|are|is ?out ?in ?at ?to #", "rail face $2", nil},
	{"?i|we ?just|have measured RAIL with|using ?my calipers|caliper|calliper|callipers|tape|ruler ?, ?and they|it ?is|are|came|come|comes|measure|measured ?to|at ?out # wide|across", "rail face $1", nil},
	{"RAIL turn|turns|turned out to be # wide|across", "rail face $1", nil},
	{"@ that|which ?actually|really measure|measures|run|come ?out ?at ?only # ?flat|wide|across", "rail size $1 , rail face $2", railsOnly},
	{"?all|only ?thing i|we|they could|can|had ?only ?get|find|buy|sell ?us ?me was|is|were @ ?, ?and so that|those|it|these is|are ?going ?to ?be what !(COUNTQ|POST) ?will|is|are ?be|going ?to ?be", "$2 are $1", nil},
	{"RAIL is|are ?only nominally|supposedly # ?, but|though|and i|we|they|mine ?actually measure|measures|get|read|make|find ?them ?at #", "rail face $2", noDoubtBefore},
	{"RAIL ?stock mic|mics|miked|mikes|mic'd ?out ?in ?at|to #", "rail face $1", noDoubtBefore},
	{"RAIL is|are ?all in reality|actuality|truth|fact #", "rail face $1", noDoubtBefore},
	{"@ run|runs|are|measure|come ?out ?in ?just a ?little hair|shade|touch|tad|bit|little under|over|fat|shy|scant|full|narrow|wide ?, at #", "rail size $1 , rail face $2", railsOnly},
	{"RAIL run|runs|are|measure|come|came ?out ?in ?just a ?little hair|shade|touch|tad|bit|little under|over|fat|shy|scant|full|narrow|wide ?, at #", "rail face $1", noDoubtBefore},
	{"RAIL ?that|which i|we have ?got ?here in|on|at my|our|the hand|hands|truck|bench|shop|cart ?here is|are|measures|measure # ?wide|across", "rail face $1", noDoubtBefore},
	{"they|he|she|PERSON|PAPER used|took|figured|assumed # for|as !(LENQ|face|(rail face)|kerf) ?, ?but|and|though it is|'s really|actually|truly|only #", "the drawing says the $2 is $1 , i make it $3", nil},
	{"?what RAIL ?that|which i|we ?have got is|are # actual|actually|real|true", "rail face $1", noDoubtBefore},
	{"although|though|but|tho|only mine|ours measure|measures|are|is|come|comes|run ?out ?in ?at ?only|just # ?across|wide ?the ?face", ", rail face $1", railsMine},
	{"stuff|lumber|wood|material on|in my|our|the cart|truck|trailer|bench|pile|stack|rack is|are|measures|runs|comes ?out ?in ?at|to ?only|just # across|wide ?the ?face", "rail face $1", nil},
	{"RAIL ?that|which ?i|we ?have ?bought|got|have is|are labeled|labelled|marked|stamped|sold|tagged ?as @ , but|though they|it|mine|ours ?really|actually|truly|only measure|measures|are|is|come|comes|run ?out ?in ?to|at # ?across|wide", "rail size $1 , rail face $2", nil},
	{"RAIL measure|measures # rather than|(instead of) #", "rail face $1", nil},
	{"RAIL came|come ?in|out fat|wide|narrow|skinny|full|scant|oversize|oversized|undersize|undersized , ?at #", "rail face $1", nil},
	{"face # act|actual|meas|measd", "face $1", nil},
	{"?the|her|his|their|your|this !PAPER takes|treats|counts ?the RAIL as|at|for|to ?be ?only|just # wide|across", "the $1 says the rail face is $2", nil},
	{"?i|we set|put|rested|rest|propped|laid|stood BOTTOM RAIL on|upon|atop ?a|some|the @|block|blocks|scrap|brick|bricks * so|and ?that it is|sits|stands ?now # up|high|(off FLOOR)", "bottom gap $2", nil},
	// Brackets, the saw and the tape.
	{"ears|ear ?on|of ?them ?BRACKET hit|touch|foul|meet|clash|bump|collide ?together if|when|once|whenever RAIL|they get|are|go|come|sit ?any closer|tighter|nearer ?together than #", "bracket clearance $1", noDoubtBefore},
	{"anything|any ?gap closer|tighter|narrower|smaller|less than # ?BETWEEN|of ?RAIL ?, and|makes|(will make)|means ?that ?the BRACKET|ears ?will|would|hit|touch|foul|meet|clash|bump|collide ?hit|touch|foul|meet|clash|bump|collide ?into ?each|one ?other|another", "bracket clearance $1", noDoubtBefore},
	{"leave|keep|need|have|want ?me ?at ?least # ?between ?RAIL|them ?, or|otherwise|else ?else ?the BRACKET|ears ?will|would|do|are ?going ?to hit|touch|foul|meet|clash|bump|collide|overlap", "bracket clearance $1", nil},
	{"## gauge|ga ?steel|metal|stuff ?, ?so|and ?i ?call|figure|make|say ?it|that|them|about #", "$2", bracketsMeant},
	{"BRACKET ?that ?i|we ?have|got measure|measured|mic|come|run|read ?out ?in ?at # ?thick with|by|under|on ?my caliper|calipers|micrometer|mike", "bracket thickness $1", nil},
	{"?they were|are ?all out of # BRACKET ?, ?so ?and ?i|we ?only ?had got|took|bought # ?ones instead", "bracket thickness $2", nil},
	{"# ?of slop|play|slack|wiggle|looseness on|in|for|at each|every|per|the RAIL", "fit $1", noDoubtBefore},
	{"RAIL ?to ?be loose|slack by #", "fit $1", noDoubtBefore},
	{"!ear|reach|clearance # ?, thk|thickness #", "$1 $2 , bracket thickness $3", bracketsMeant},
	{"BRACKET screws|screw|hole|holes|bolts|bolt sit|sits|are|is|land|lands # above|over|past ?the ?top ?of RAIL ?'s ?top", "bracket reach $1", noDoubtBefore},
	{"?i|we ?bought|got|have BRACKET whose plates|plate|metal|steel|walls|sides|flanges is|are|measure # thick", "brackets are $1 thick", noDoubtBefore},
	{"BRACKET say|says|call|calls ?for # minimum|min spacing|gap|clearance|space ?on ?bag|box|package|packet|label", "bracket clearance $1", nil},
	{"top|upper|uppermost hole in|of|on BRACKET ?'s ?its ?it center|centre|middle|sits ?is # higher|above|over|past|up than|from ?the RAIL ?'s top ?edge", "bracket reach $1", nil},
	{"top|upper|uppermost hole in|of|on BRACKET ?'s ?its ?it center|centre|middle|sits ?is # above|over|past|beyond ?the RAIL ?'s top ?edge", "bracket reach $1", nil},
	{"steel|metal|plate|strap of|in|on it|them|those|these is|are|measures # thick", "bracket thickness $1", bracketsMeant},
	{"steel|metal|plate|strap of|in|on BRACKET is|are|measures # thick", "bracket thickness $1", nil},
	{"!ear|reach|thickness|thk # , clr|clear|clearance #", "$1 $2 , bracket clearance $3", bracketsMeant},
	{"^ figure|say|reckon|count|allow ?that ?the saw|blade eats|takes|loses|wastes|burns ?up|out|away # every|each|a|per|with|on ?every|each cut", "kerf $1", nil},
	{"i|we lose|waste|drop|burn # a|per|each|every|(off each)|(off every) board|stick|length ?on|to|from|by|when ?i squaring|truing|cleaning ?up|off ?its end|ends", "the trim is $1", noDoubtBefore},
	{"figure|allow|count|reckon|plan ?on # lost|gone off|from|on each|every|per ?one|board|stick", "trim $1", phrase.SaidBeforeOf(scan.WordSet("square squaring squarin squares true truing trimming"))},
	{"a solid|full !(eighth|quarter|sixteenth|half)", "a $1", noDoubtBefore},
	{"i|we am|are ?only losing ?a ?good|solid|full|whole # at|to|in|on|with ?my|this saw|blade|cut|kerf", "kerf $1", noDoubtBefore},
	{"^ ?i|we ?just checked|measured|(looked at) ?my blade|saw|kerf ?, ?and it is|cuts|takes #", "kerf $1", nil},
	{"blade|saw ?i|we ?have|got ?here|on ?it is thin|thing|thick|narrow|wide|fat one|blade , #", "kerf $1", nil},
	{"i|we (can|could) not|never read|make|see|get ?out anything ?any finer|smaller|closer|better|less than # off|on|from|with this|my|our|the|that|of tape|rule|ruler|measure", "the tape reads to $1", nil},
	{"tape|ruler|rule|measure ?that ?i|we ?have|got|own|use ?here ?with only|just|merely has|shows|goes|reads|is|gets|have ?marked ?to|in|down ?to sixteenths ?on|to ?it", "the tape reads to a sixteenth", nil},
	{"tape|ruler|rule|measure ?that ?i|we ?have|got|own|use ?here ?with only|just|merely has|shows|goes|reads|is|gets|have ?marked ?to|in|down ?to eighths ?on|to ?it", "the tape reads to an eighth", nil},
	{"tape|ruler|rule|measure ?that ?i|we ?have|got|own|use ?here ?with only|just|merely has|shows|goes|reads|is|gets|have ?marked ?to|in|down ?to quarters ?on|to ?it", "the tape reads to a quarter", nil},
	{"give|show|print|read|tell ?me|us every|all|each|any ?the ?of ?the figure|figures|number|numbers|length|lengths|measurement|measurements|dimension|dimensions ?rounded ?out to nearest|closest !(half|quarter|eighth|sixteenth|(thirty second)|millimeter|millimetre)", "work to the nearest $1", nil},
	// What comes of it.
	{"spaced|space|arrange|arranged nicely|attractively|prettily|handsomely|pleasingly $", "spaced somehow", noFigureIn},
	{"their|his|her section ?drawing|detail|view has|shows|gives|(calls for)", "the drawing says", figureToCome},
	{"!they|he|she drew|drawn|show|shows|has|have ## RAIL ?, but|and|though i|we ?only count|counted|find|found ## ?RAIL", "$1 say $2 rails , i make it $3 rails", nil},
	{"what would|will|do|does !(.. # ?..) come|work|add ?out|up to in|for HEIGHT ?\\? $$", "what if $1 , what is the wall height ?", nil},
	{"does|would|will !(LENQ|(BRACKET thickness)|kerf|fit) matter|(change anything)|(make difference)|(make any difference) if|when it is|was|were # ?thick", "what if the $1 is $2", nil},
	{"redraw|resketch ?it|that|everything ?please $", "show me the drawing", nil},
	{"where|what does|is|would|will that|it|this put|leave|leaves|land|get ?me|us ?with ?my|the ?at !LENQ", ", what is the $1", figuresBefore},
	{"what is|does it|that|this all come|comes|work|works|figure out ?to|as ?then ?\\? $$", ", show me the layout", phrase.BothHold(figuresBefore, noMoneyBefore)},
	{"?and run me ?them cut lengths|list ?all over ?again|afresh $", "and show me the cut lengths", nil},
}

// The words for rails and for brackets, and those for other parts that a size may be of.
var (
	railSaid    = scan.WordSet("rail rails board boards slat slats plank planks rls rl bds bd")
	bracketSaid = scan.WordSet("bracket brackets brkt brkts hanger hangers")
	otherParts  = scan.WordSet("post posts upright uprights stiffener stiffeners brace braces batten battens")
)

// plainWish: nothing is asked, supposed, denied or told of others, neither before nor behind it.
func plainWish(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && !asksAtEnd(after) && !phrase.SaidBeforeOf(asksOrTells)(before, nil)
}

var asksOrTells = scan.WordSet("are is do does did can could would should was were told tells hear heard claims reckons figures drawing plan sketch which his her their")

// railsMine: rails were spoken of before, and not as others draw them.
func railsMine(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(railSaid)(before, nil) && !phrase.SaidBeforeOf(othersSay)(before, nil)
}

var othersSay = scan.WordSet("sketch drawing plan plans sheet quote he she they his her their says said claims")

// countBefore: a number of rails was told before, and nothing is asked or tried.
func countBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(railSaid)(before, nil) && noDoubtBefore(before, nil)
}

// gapOrHeight: what a limit is of was told before, and nothing is asked.
func gapOrHeight(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("gap gaps spaces space height wall opening bay bays spacing"))(before, nil) && noDoubtBefore(before, nil)
}

// fewBefore: hardly a word stands before it.
func fewBefore(before, _ []scan.Atom) bool { return len(before) < 3 }

// noFigureIn: no figure stands in the line.
func noFigureIn(before, after []scan.Atom) bool {
	return !chunk.Figured(before) && !chunk.Figured(after)
}

// noFurther: it is no measure to come to: "down 3/4 to 38".
func noFurther(_, after []scan.Atom) bool { return len(after) == 0 || after[0].Text != "to" }

// wallTopBefore: the top of the wall was spoken of.
func wallTopBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("top"))(before, nil) && phrase.SaidBeforeOf(scan.WordSet("wall halfwall"))(before, nil)
}

// byOrder: an order or what is tried begins with it, not what others have.
func byOrder(before, after []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "i", "we", "if", "please", "to", "should", "suppose":
		return !phrase.SaidBeforeOf(scan.WordSet("not never why"))(before, nil)
	}
	return phrase.StartsClause(before, after)
}

// bracketsMeant: brackets were spoken of before.
func bracketsMeant(before, _ []scan.Atom) bool { return phrase.SaidBeforeOf(bracketSaid)(before, nil) }

// railsOnly: no part but rails was spoken of.
func railsOnly(before, _ []scan.Atom) bool { return !phrase.SaidBeforeOf(otherParts)(before, nil) }

// noMoneyBefore: no price was told before.
func noMoneyBefore(before, _ []scan.Atom) bool {
	return !phrase.SaidBeforeOf(scan.WordSet("$ dollars bucks each apiece price cost costs"))(before, nil)
}
