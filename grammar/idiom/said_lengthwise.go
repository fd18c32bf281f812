package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// lengthwiseTurns are ways to speak of what stands along the wall: its two end posts, what is set between them, the opening, and the floor
// that they stand on. They are set plain early, so that other phrases find plain words.
var lengthwiseTurns = []phrase.Placed{
	// Stiffeners: where in a bay, how close, of what, and why.
	{"a|one|single STIFF in|at|down|up|through ?the ?very ?dead middle|center of each|every|all ?one|BAY|(of (them|the BAY))", "1 stiffener in each bay", nil},
	{"each|every one|BAY gets|has|wants|needs|takes|(is to have)|(should have)|(should get) a|one|single STIFF ?((right|smack|dead|bang) [in]) ?in|at|down|up ?the middle|center", "1 stiffener in each bay", nil},
	{"# on center|centers is|'s|(would be)|(will be) ?about ?as the closest|tightest ?together|ever ?that i|we would|will|can|should|want|like ?ever ?like|want|care ?to put|set|space|go|have|see|place|stand ?with ?our|my|the|any STIFF ?together ?at|$", "stiffener spacing at least $1", noDoubtBefore},
	{"# on center|centers is|'s|(would be)|(will be) ?about ?as the farthest|furthest|widest|loosest ?apart|ever ?that i|we would|will|can|should|want|like ?ever ?like|want|care ?to put|set|space|go|have|see|place|stand ?with ?our|my|the|any STIFF ?apart ?at|$", "stiffener spacing at most $1", noDoubtBefore},
	{"for ?the|my|our ?upright|vertical !STIFF|RAIL|POST ,|:|- ?a @ would|will|should|'d be|do|suit ?just ?very ?best|good|nice|fine|ideal|lovely|preferable|nicely|better|great|right ?(for ME)", "the $1 are $2", noDoubtBefore},
	{"what spacing do|did|does|have the|my|our STIFF get|got|have|(end up with)|(come out with)|(wind up with)|(come to)|(come out (at|to))", "what is the stiffener spacing", nil},
	{"what height do|did|does|have ?the|my|our ?ADDED POST get|got|have|(end up with)|(come out with)|(wind up with)|(come to)|(come out (at|to))", "what is the post height", nil},
	{"what width|size do|did|does|have !BAY|DOORWAY get|got|have|(end up with)|(come out with)|(wind up with)|(come to)|(come out (at|to))", "how wide is the $1", nil},
	{", ?and|& what is|'s behind that|it|the ?number|figure|count|one|value ?\\? $$", "and why", askedAhead},
	{"do not bother|(mess around) with|adding|putting|setting ?in ?any STIFF", "no stiffeners", phrase.StartsClause},
	{"what do|does|did|would i|we|you|it|they ?even|really need|want|have|use !(## (STIFF|RAIL|POST) [(in|per|for) [each|every] BAY]) for ?\\? $$", "why do we need $1 ?", nil},
	{"why is|are there !STIFF|(ADDED POST) ?at ?all ?in ?there|it|here|this ?at ?all ?, ?and what|how ?would ?it|things happens|happen|change|changes|looks|goes|(is it) ?like without|(if (i|we|you) (skip|(leave out)|omit|(do without))) ?any|them|it|those ?out", "why are there $1 and what if there are no $1", nil},

	// Posts: how high, where, what for, and how many of them.
	{"run|let|have|make|take|send|carry|bring ?this|that|those|these|the|my|our !(ADDED (POST|UPRIGHT)) ?to ?run|go|stand|finish|come|reach|stick|rise|extend|stop|end ?up|out !(# (higher|taller|above|over|past|beyond|proud))", "make the $1 $2", bidsHereOrWished},
	{"what if i|we left|leave|let|kept|keep ?the|my|our !(ADDED (POST|UPRIGHT)) ?at !(# (higher|taller|above|over|past))", "what if the $1 is $2", nil},
	{"POST|UPRIGHT :|, ?its|the top|head \\@|at|is|to ?at # ?, ?and ?its|the base|bottom|foot|underside ?is|at|\\@|sits|stands|held # ?up ?off|above|over|(clear of) ?of ?the ?FLOOR", "post height $1 , base height $2", nil},
	{"take|run|bring|carry|go|make|build|send ?the|those|these|my|our ?ADDED posts ?up to|at # ?, ?and ?then hold|keep|set|stand|raise|lift|sit|hang them|'em|it|each ?up # off|above|over|(clear of)|(up off) ?of ?the FLOOR", "post height $1 , base height $2", phrase.StartsClause},
	{"^^ is it so that|'s", "is it true that", nil},
	{"what is|the|'s ?right|best|proper|correct|exact|ideal spot|place|position|location for|of the|our|my|an|a ?ADDED POST ?is|be", "where do the posts go", nil},
	{"what is|are|'s that|those|this|these|the ?ADDED ?one POST ?in|at|out ?the middle|center ?even|actually|really ?there ?for|doing|(good for) ?even|there ?\\? $$", "why do we need the added post ?", nil},
	{"why do|does|would|did|should i|we|you|it|they ?even|really need|want|have|put|add|(have to have) a|an|the|that|one ?extra|other post ?in|at|out ?the|very middle|center ?of ?the ?wall ?(at all)|there|anyway", "why do we need the added post", nil},
	{", ?and|& ?uh|um ?i|we am|are|will|'m|'re ?be ?just sticking|putting|setting|adding|standing|dropping|planting|placing ## more ?of ?them|those|posts ?up|in between ?them|those|(the two)", ", with $1 added posts", endPostsTold},
	{"and|& ?uh|um ?i|we am|are|will|'m|'re ?be ?just sticking|putting|setting|adding|standing|dropping|planting|placing ## more ?of ?them|those|posts ?up|in between ?them|those|(the two)", ", with $1 added posts", endPostsTold},
	{"## add|added|new|extra posts , @ , # tall|high|ht|hi", "$1 added posts , added post size $2 , post height $3", nil},
	{"so|giving|leaving ?that ?(there (is|are|will be))|(that makes)|((i|we) (get|have|(end up with)|(wind up with))) ?ME ## !BAY ?to fill|plank|board|do|make ?in|up|altogether ?(in all)|total", ", $1 $2", figuresBefore},
	{"a|an bit|little|touch|tad|hair|smidgen|shade|fraction higher|taller|above|over ?than ?the wall ,|- ?(let us) ?by ?say|maybe|about|perhaps # ?(or so)", "$1 higher than the wall", nil},

	{"!two|three|four|five|2|3|4|5 more POST|UPRIGHT|(of them) ?in|up between ?the|my|our two|end|outer|outside|existing ?end ones|posts|uprights|(that is standing)", "$1 added posts", placesPosts},

	// From which post to which, and by which faces.
	{"!from|off|past|against the post|upright|column|pillar ?that|which ?is on|at|to ?the|my|our !left|right ?side|end", "$1 the $2 post", nil},
	{"from|off ?of ?the !left|right ?hand ?end post ?, it|that is|'s # ?over|across|along|down|out ?to where ?the|my|our DOORWAY starts|begins|opens", "the opening is $2 from the $1 post", nil},
	{"from|off ?of ?the !left|right ?hand ?end post ?, it|that is|'s # ?over|across|along|down|out to|before ?the near|nearest ?edge|start|beginning|side of ?the|my|our DOORWAY", "the opening is $2 from the $1 post", nil},
	{"from|off ?of ?the !left|right ?hand ?end post ?, it|that is|'s # ?over|across|along|down|out to|before the start|edge|beginning of ?the DOORWAY", "the opening is $2 from the $1 post", nil},
	{"from|off ?of ?the !left|right ?hand ?end post ?, it|that is|'s # ?over|across|along|down|out before ?the|my|our DOORWAY starts|begins|opens", "the opening is $2 from the $1 post", nil},
	{"!DOORWAY near|nearest|close|closer edge|side|jamb", "$1", leftRightBehind},
	{"!op|opng|opening|doorway edge", "$1", postBehind},
	{"# along|over|in|across|out|down from !the|left|right|my|our", "$1 from $2", openingNear},
	{"apart ,|-|and|which ?and that|which|this|it is ?measured|taken|taped ?as", "apart", facesAhead},
	{"apart ,|-|as measured|measuring|taken|taped ?right ?as", "apart", facesAhead},
	{", which are ?all @ , ?they are|stand|sit|come|measure", "are $1 . the end posts are", postNear},
	{"?i|we ?have ?just hooked|put|set|stuck|started|held|got|caught ?the|my|our ?dumb|zero ?end|hook ?of ?the tape ?measure ?end ?on|over|at|to|against ?the outside|outer ?face|edge of one|the|first|left ?end post|upright|one ?, ?and ran|pulled|stretched|took|went|carried|read|walked|reeled it|that ?out|over|across|off|right ?to|at ?the outside|outer ?face|edge of ?the other|second|right ?end ?one|post|upright ,|and|:|- ?and ?i|it ?got|get|read|reads|(it is)|is|came|comes|says ?to ?at #", "overall $1", nil},
	{"?i|we ?have ?just hooked|put|set|stuck|started|held|got|caught ?the|my|our ?dumb|zero ?end|hook ?of ?the tape ?measure ?end ?on|over|at|to|against ?the inside|inner ?face|edge of one|the|first|left ?end post|upright|one ?, ?and ran|pulled|stretched|took|went|carried|read|walked|reeled it|that ?out|over|across|off|right ?to|at ?the inside|inner ?face|edge of ?the other|second|right ?end ?one|post|upright ,|and|:|- ?and ?i|it ?got|get|read|reads|(it is)|is|came|comes|says ?to ?at #", "span $1", nil},
	{"?i|we run|ran|pulled|stretched|put|laid ?the|my|a|our ?steel tape ?measure ?from !(outside|inside|face|middle|center) to !(outside|inside|face|middle|center) of|on|across|between ?the|them|these|those|my|our ?two end posts|uprights|ones ?, ?and ?i|it|that got|read|reads|get|(it is)|is|came|comes|says ?up|out ?to|at|with #", "the end posts are $3 $1 to $2", nil},
	{"how long|wide|far ?across ?is|are ?the|my|our|it wall|posts|thing|it (outside to outside)|(out to out)|(over all) ?of|on|across ?the|my|both ?two ?end ?posts|uprights", "what is the overall", nil},
	{"how long|far|wide|much ?apart ?is|are ?it|they|that ?the|my ?posts on ?the center|centers", "what are the centers", nil},

	{"cut|make|set|size|build|trim ?all ?the|my|our ?ADDED posts so ?that ?they|the ?tops come|comes|end|ends|finish|finishes|are|is|sit|land|stop ?up|out flush|even|level ?off with|to ?the top ?of ?the ?board|rail|plank|slat|wall", "posts even with the top of the wall", nil},
	{"where does|do|is|'s|will|would|did ?the|my|our DOORWAY start|starts|begin|begins|starting|beginning|open ?at ?off|from|measured|(measuring from) ?the !left|right ?hand ?end post|end|side", "how far is the opening from the $1 post", nil},
	{"set|hold|stand|raise|keep|lift|put|jack ?up ?the|my|our|all ?ADDED POST base|bases|bottoms|feet ?up ?by # ?up off|above|over|(clear of) ?of ?the FLOOR", "base height $1", phrase.StartsClause},
	{"FLOOR is|'s ?a ?bit|little|all off|out|uneven|crooked|(not (level|flat|true))|(out of level) ,|;|.|-|and ?and ?it is|'s|sits|runs|comes # !higher|lower|down|up", "floor is $1 $2", nil},
	{"i|we meant|mean ?to|the !left|right ?side|end|hand ?side for|with|on ?the|my|our !DOORWAY ,|-|and ?and not ?on|the ?the left|right|other ?one|side|hand", "put the $2 on the $1", nil},
	{"!(centimeters|centimetres|cm|centimeter) or|and|& !(millimeters|millimetres|mm|millimeter)", "$2", noFigureSaid},
	{"!(millimeters|millimetres|mm|millimeter) or|and|& (centimeters|centimetres|cm|centimeter)", "$1", noFigureSaid},
	{"ph ?=|:|is # ,|and|/|; ?and bh ?=|:|is #", "post height $1 , base height $2", nil},
	{"ph ?=|:|is # bh ?=|:|is #", "post height $1 , base height $2", nil},
	{"end posts ?are|be @ ?, ?and|but ?the new|added|other|others|rest|remaining|middle ?one|ones ?are @", "end post size $1 , added post size $2", nil},
	{"go|went|going|get|got|move|switch|jump|have|had|put ?up|down|in ?to ## a|per|each|every ?one BAY", "have $1 stiffeners in each bay", stiffToldNear},
	{"would|will|do|does|did|might|could i|we|it|that|this gain|lose|get|save|win|buy|pick ?ME ?up ?anything|much|any|something|some ?more|extra|room ?room ?out ?on|in|for|of !LENQ", ", what is the $1", triedSaid},
	{"level|flat|even ?all ?the ?way from end to end", "level", floorNear},
	{"level|flat|even ?all ?the ?way end to end", "level", floorNear},
	{"i|we ?had|have gave|told|said|had|put|given|entered|read ?ME|you|down ?off the|a|you wrong|(a wrong) !LENQ|COUNTQ ?before|earlier ,|;|.|-|: ?it|they|that is|are|'s|should|ought ?to ?be|was ?really|actually", "$1 is", figureRightAhead},
	{"forget|drop|scrap where ?the|my|our DOORWAY goes|sits|stands|is|starts|(is to (go|be))", "forget the opening side", phrase.StartsClause},
	{"go|get|drop|cut ?it ?back|down to one !DOORWAY|STIFF|BAY", "make it 1 $1", phrase.StartsClause},
	{", ?so ?just|please ?you put|stick|set|leave|have it|them|that anywhere|wherever ?(you|it|ye) ?like|likes|want|please|fits|works|suits ?you", "", askedToForget},
	{"^^ ?and|now|so|ok ?over on|for|at|along the !side|yard wall ?,|:", "$1 wall :", sideWallNamed},

	{"apart ?,|- ?as measured|taken|measuring|going ?to|over|across|at|on|from|between|by outsides|outside|(outside (faces|edges))|(outer (faces|edges|sides)) $", "outside to outside", postNear},
	{"apart ?,|- ?as measured|taken|measuring|going ?to|over|across|at|on|from|between|by insides|inside|(inside (faces|edges))|(inner (faces|edges|sides)) $", "apart face to face", postNear},
	{"apart ,|- clear|inside|(in the clear)|(clear distance)|(inside faces) $", "apart face to face", postNear},
	{"to work|play|(build|go|deal) with $", "", spanTold},
	{"shove|stick|put|drop|set|plant|throw|slip|squeeze another POST|UPRIGHT in|at ?the|dead|very middle|center of ?the|my|our run|wall|span|line|stretch|gap", "add another post", phrase.StartsClause},
	{"!(at least|(no (less|narrower) than)) as wide|broad|big as ?the|my|our|his|her|a * ,|- ?and|which|that|it|she|he ?that|it ?is|'s|measures|takes|needs ?up|(comes to) ?about # ?wide|across", "$1 $2", nil},
	{"limit|restrict|cap|confine|hold !LENQ to|at a|the|no ?maximum|max|more ?width|height|size|length|than ?of|at # $", "$1 at most $2", bidsHereOrWished},
	{"change|switch|swap|flip ?the|my|our !DOORWAY ?over to ?the !left|right|middle|center ?hand ?side|end", "put the $1 on the $2", bidsHereOrAsked},
	{"posts ?:|are @ ?at|on|for ?the ends|end|ext ?,|/|;|and @ ?for|on ?the add|added|adds|new|mid|middle|addl ?ones", "end post size $1 , added post size $2", nil},
	{"(post HEIGHT) ?of|is|at|: # ,|and|/|; ?and ?a|the ?its base ?of|is|at|: #", "post height $1 , base height $2", nil},
	{"^^ flr|floor|slab|fl lvl|level|flat|lev $$", "the floor is level", nil},
	{"STIFF went|go|moved|closed|opened|spread|dropped ?up|down|out|in to !(## (inches|inch|feet|foot|mm|cm))", "stiffener spacing were $1", triedSaid},
	{"without a|any|the|that|one ?single ?extra POST ?in|at|out ?the middle|center|between ?them|(the (ends|(end posts)))", "without any added posts", nil},
	{"can|could|would|will|might it|this|that|we|i|(the wall) ?possibly|even ?be ?done|do|built|build|stand|hold|work|go|manage|(get by)|(get away) ?it|this|up ?with without ?a|any|the|that ?having !STIFF|DOORWAY|(ADDED POST)", "what if there are no $1", nil},
	{"can|could|would|will|might it|this|that|we|i|(the wall) ?possibly|even ?be ?done|do|built|build|stand|hold|work|go|manage|(get by)|(get away) ?it|this|up ?with without ?a|any|the|that ?having ?single ?extra POST ?in|at|out ?the middle|center|between ?them|(the ends)|(the end posts)", "what if there are no added posts", nil},
	{"shove|stick|put|drop|set|plant|throw|slip|squeeze another POST|UPRIGHT in|at ?the|dead|very middle|center", "add another post", phrase.StartsClause},
	{"would|will|is a|an # ?tall|high ?added|new|extra POST ?be too|ok|okay|enough|alright tall|high|short|much|low ?\\? $$", "what if the post height is $1 ?", nil},
	{", ok|okay|yes|yeah|agreed|sound ?\\? $$", ", is that right ?", claimAndFigure},
	{"does|do|will|would a # !LENQ match|agree|tally|square|jibe|fit ?up|in ?with what|whatever|the|your|yours ?numbers|figures ?that ?you|we ?have|got|get|found|say", "they say the $2 is $1 , is that right", nil},
	{"does|do|will|would a !LENQ of # match|agree|tally|square|jibe|fit ?up|in ?with what|whatever|the|your|yours ?numbers|figures ?that ?you|we ?have|got|get|found|say", "they say the $1 is $2 , is that right", nil},
	{"^^ could|can|may ?all ?of ?the|my|our BAY ?all ?please be ?made ?of|the|all equal|same|even|identical|alike ?in|of ?width|size|wide|length ?, please ?\\? $$", "make the bays equal", nil},
	{"has|have|had|shows|puts ?the DOORWAY (dead center)|(in the middle)|centered ?, ?and at # ?wide|clear|across", "has the doorway $1 wide in the middle", nil},

	{"apart between|by|at|off ?the|their ?inside faces $", "apart face to face", postNear},
	{"# step|drop ?down off|from|(off of) ?the FLOOR ?on|at|outside|beyond|past|behind|to ?the ?(far side of) ?the ?wall|EARTH", "the drop is $1", noDoubtBefore},
	{"i|we will|'ll|shall get|manage|make ?by|along|do on|with ?just|only ## !STIFF|(ADDED POST) $", "use $1 $2", phrase.StartsClause},
	{"keep|hold|space|set|put|get ?all ?the|my|our|your STIFF at|to|within|every !(## (inches|inch|feet|foot|mm|cm)) or|and under|less|closer|below|tighter", "stiffener spacing at most $1", bidsHereOrWished},
	{"ADDED ?one POST should|must|will|needs|has|wants|is|ought ?to come|comes|reach|rise|run ?all ?(the way) ?up to # ?even|exactly", "the post height is $1", noDoubtBefore},
	{"the|my|our|each|every POST should|must|will|needs|has|wants|is|ought ?to come|reach|rise ?all ?(the way) ?up to # ?even|exactly", "the post height is $1", noDoubtBefore},
	{"gap|hole|space|break|room ?in ?the ?wall ?that|where ?is ?for|to walking|passing|going|getting|walk|pass|go|get through", "opening", nil},
	{"POST will|are|is|should|go|goes|'ll|to ?to ?be rest|sit|stand|set|be|rests|resting|sitting on ?post|metal|steel bases|base that|which|and hold|holds|keep|keeps|lift|raise|lifts them|it ?up # above|off|over|(clear of) ?of ?the FLOOR", "base height $1", noDoubtBefore},
	{"cl|clr span", "span", nil},
	{"bay ## r|rl ## ?:|=|-|,", "bay $1 rail $2 is", figureRightAhead},
	{"ops|opngs|openings|doorways ## x|\\@|at #", "$1 openings , opening $2", nil},
	{"op|opng|opening fr|frm l|left|lh", "opening from left", nil},
	{"op|opng|opening fr|frm r|right|rh|are", "opening from right", nil},
	{"what if i|we|you|they skipped|skip|omitted|omit|scrapped|ditched|(left out)|dropped ?the|any|all !DOORWAY|STIFF|(ADDED POST) ?altogether|entirely $", "what if there are no $1", nil},
	{"how come there|it is|'s|are|has ?to ?be a|an|that ?extra POST in|at ?the middle|center ?there $", "why do we need the added post", nil},
	{"why is there a|an|that ?extra POST in|at ?the middle|center ?there $", "why do we need the added post", nil},
	{", ?but i|we ?had|have ?already|wrongly|first said|told|wrote|put|gave|typed ?ME|you|it|on ?the left|right|middle|center ?before|earlier $", "", slipAndSide},
	{"^^ ?no ?, ?it ?is|'s ?we|i ?want not ## !BAY|RAIL|STIFF|(ADDED POST) , ?but ## $$", "make it $3 $2", nil},
	{"^^ !LENQ can|may|could be any|whatever width|height|length ?now ?at ?all|now|(you like)|(it likes)|(that works) $$", "forget $1", nil},
	{"right|exactly|just|up where ?the !left|right ?hand ?end post is|stands|sits|goes", "at the $1 post", openingNear},
	{"what|far|long|much is|does|do|'s it|that ?all come|measure|read|run|tape ?out|up|at ?to|at ?from|between post to post", "what is the span", nil},
	{"would|will|could|can|might|do equal|even BAY ?still ?be work|do|fit|go|possible|ok|okay|fine|allowed ?out ?\\? $$", "what if the bays are equal ?", nil},

	// The opening: how wide, on which side.
	{"^^ right ,|-|:|!", "", sideIsTold},
	{"side ?=|:|is|- l|left|lh", "opening side left", openingNear},
	{"side ?=|:|is|- r|right|rh", "opening side right", openingNear},
	{"move|shift|slide|bring|switch|take ?the|my|our !DOORWAY from|off ?the left|right|middle|center ?hand ?side|end ?over|across|around|back|along to|into|onto|at|on ?the !left|right|middle|center", "put the $1 on the $2", phrase.StartsClause},
	{"open ?up ?the|my|our DOORWAY ?up|out ?to as wide|far|big|large as it|we|you|i will|can|'ll|could ?ever ?go|get|manage|be|open|stretch|make ?it ?to", "largest opening", phrase.StartsClause},
	{", ?because ?i|we do not|never|(could not) ?really|much mind|care ?at ?all how wide|big|high|tall|long|narrow ?that ?(it|they) ?is|are|ends|end|comes|come|gets|turns ?up|out|to ?be $$", "", phrase.SaidBeforeOf(scan.WordSet("forget drop go free open lift scrap scratch lose"))},
	{"!LENQ does|do|did not|never|really have|need ?to ?be ?exactly|quite|all|that # ?wide|high|tall|across ,|-|--|. ?but|just|and ?(((all|what) ?that (i|we) (ask|want|need|require|mind|care about) ?for is)|((as|so) long as)|(just make sure)) ?that it|they|the|that is|'s|are|be|stays|comes", "$1 is", nil},
	{"how do|did you ?even ?ever get|arrive|come ?up ?with|at|to !(.. (DOORWAY|POST|BAY|STIFF|GAP|RAIL)) out ?of|from those|these|the|my|our|all|that|your ?of ?those numbers|figures|sizes|measurements|sums", "why $1 .", nil},
	{"which|that|and ?that|which makes|gives|leaves|means ?for ?ME|you|it ?with|for a|an|the # DOORWAY|(wide DOORWAY) ?, ?or ?so according to him|her|them", ". he says the opening is $1 .", nil},
	{"comes|come|came|coming in !under|below|over|above|beneath|past #", "is $1 $2", lengthBefore},
	{"measures|measured|measuring", "is", paperMeasures},

	// The floor, and the ground beyond the wall.
	{"by the time you|it|one|we|i hit|hits|reach|reaches|get|gets|come|comes|(have got)|(has got)|meet|meets|arrive|arrives ?over|down|across|along ?to|at ?the other|far|opposite|second|right|last ?hand post|end|side|one|corner", "at the far post", phrase.BothHold(floorLower, rightSaid)},
	{"by the time you|it|one|we|i hit|hits|reach|reaches|get|gets|come|comes|(have got)|(has got)|meet|meets|arrive|arrives ?over|down|across|along ?to|at ?the other|far|opposite|second|right|last ?hand post|end|side|one|corner", "at the right end", phrase.BothHold(floorLower, rightUnsaid)},
	{"there is|'s|will|is ?be no|not ?a|any drop|(drop off)|dropoff|fall|step ?down|off ?any ?at|past|beyond|behind|outside|over ?of ?the|my|our wall ?any|no ?more|longer|anymore|now|(at all)", "the drop is 0", nil},
	{", ?because|since|as|now|and they|we|he|i|somebody|someone|(the [_] _) ?have|has|had|just filled|leveled|levelled|backfilled|graded|built|raised|brought|topped ?all ?the|it|that|ground|dirt|all ?out ?in|up|off|over|out|to|so level|flat|flush|even ?with ?the|it|is ?slab|floor|patio|level|flat $$", "", phrase.SaidBeforeOf(scan.WordSet("drop dropoff fall step"))},
	{"past|beyond|behind|outside ?of ?the|my|our wall ?, it|the|that ?EARTH drops|falls|steps ?straight ?right ?off|away|down !(?(about|around|roughly|nearly|maybe|close to) #) ?to|onto|into|down ?to ?the|our ?EARTH|below", "the drop is $1", nil},
	{"leans|tips|tilts|goes|kicks|is ?out|back away|out ?out from ?the|of wall|opening|(other post) ?by", "leans out", postSideNear},
	{"is|'s not|out|off ?of plumb|straight|true|vertical|upright ,|;|:|-|and it|which|that|the|but ?top|one ?kicks|leans|tips|tilts|goes|runs|sticks", "leans", postSideNear},
	{"!left|right one is|'s not|out|off ?of plumb|straight|true|vertical|upright ,|;|:|-|and ?it|which|that ?it kicks|leans|tips|tilts|goes|runs|sticks ?over ?out|in # ?in|over|per|for # ?over|out|off ?to|toward|towards ?the !left|right", "$1 post leans $4 $2 in $3", nil},
	{"rp|(rt post)|(rh post) ?leans|lean|ln|out|off|leaning # l|lt|left ?in|over|per|/ #", "right post leans $1 left in $2", nil},
	{"rp|(rt post)|(rh post) ?leans|lean|ln|out|off|leaning # r|rt|right|are ?in|over|per|/ #", "right post leans $1 right in $2", nil},
	{"lp|(lt post)|(lh post) ?leans|lean|ln|out|off|leaning # l|lt|left ?in|over|per|/ #", "left post leans $1 left in $2", nil},
	{"lp|(lt post)|(lh post) ?leans|lean|ln|out|off|leaning # r|rt|right|are ?in|over|per|/ #", "left post leans $1 right in $2", nil},

	// Bays and rails that were measured.
	{"i|we ?have ?just get|got|have|had|read|make|made|measured|see|found # , # ?, ?and # for|on|at|across|along rails|boards|slats ## , ## ?, ?and ##", "rail $4 is $1 , rail $5 is $2 , rail $6 is $3", bayFirst},
	{"i|we ?have ?just get|got|have|had|read|make|made|measured|see|found # ?, and # for|on|at|across|along rails|boards|slats ## ?, and ##", "rail $3 is $1 , rail $4 is $2", bayFirst},
	{"^^ ?i|we ?have ?just|went|gone ?and checked|rechecked|remeasured|measured|taped|retaped|reread ?the !(bay ## [top|bottom|(rail ##)]) ?over ?again|over|twice|(once more) ,|and|:|; ?and ?now it|that|this ?one ?now ?really is|'s|reads|comes|came|measures|says|was ?out ?to|at # ?, ?and|but|not|where|though ?i|we|you ?had|said|gave|read|put|wrote|have ?ME ?you|it|down|the|before ?as # ?before|earlier|then|first|(the first time)|(last time)|yesterday", "$1 is $4", nil},
	{"math|arithmetic|sums|sum|working|figuring|reasoning|calculation ?on|behind|for|of|about how wide|big|long|high|tall !(bay ##|LENQ) is|comes|gets|ends ?out|up ?to ?be", "reason for $1", nil},
	{"why * how wide|big|long|high|tall !(bay ##) is", "why $1", nil},
	{"forget|lose|drop|scrap|scratch|ignore|strike|erase|delete ?what|whatever|anything|everything|that|the ?bit|part|thing ?that i|we ?have|had said|told|gave|mentioned ?you ?ME about ?the|my|our ?ADDED|end !POST|RAIL|STIFF being @", "forget the $1 size", phrase.StartsClause},

	// What somebody's paper says, who vouches for it, and what is only tried.
	{"on|in|per|by|from the|his|her|their|a ?_ PAPER that|which ?he|she|they|somebody|someone|PERSON ?has|have|had sent|gave|handed|emailed|drew|showed|mailed|made|left|texted ?up ?over ?to|for ?ME", "on her drawing", nil},
	{"on|in|per|by|from the|his|her|their|a ?_ PAPER he|she|they|somebody|someone ?has|have|had sent|gave|handed|emailed|drew|showed|mailed|made|left|texted ?up ?over ?to|for ?ME", "on her drawing", nil},
	{"what|whatever|(the one)|(the thing) ?that they|he|she|somebody|someone|(the PERSON) ?has|have ?just sent|gave|handed|drew|emailed|mailed|showed|texted ?up ?over ?to|for ?ME|the ?office ?yesterday|(last week)|(this morning) shows|has|says|calls|lists|puts|is", "their drawing shows", nil},
	{"the PAPER|layout|(the one) ?that i|we was|were|got|am|are|had given|handed|sent|shown|emailed|mailed ?over ?yesterday ?of ?it ?has|shows|says|calls|puts|lists", "the drawing shows", nil},
	{"original|originals has|have|had|shows|showed|says|calls|called|puts|lists", "drawing shows", figureToCome},
	{"PAPER is|are|'s|was marked|labeled|labelled|dimensioned|lettered|annotated ?up ?as|at|with|for", "drawing shows", figureToCome},
	{"^^ ?so ?if you|we|i|one go|goes|went|(am going)|(are going) ?just by|with|off ?the|my|his|her|their ?_ PAPER ,", "according to the drawing ,", figureToComeOrOne},
	{"she|he|they|(PERSON) is|are|'s|'re|keeps|keep promising|swearing|insisting|guaranteeing|claiming|betting|vowing ?ME|up|and|down ?me|us ?that", "she says", promisedOfIt},
	{"^^ ?whoops|oops|sorry|wait|ah ?, wrong page|sheet|drawing|line|one|file|print|paper|plan ?,|:|.|;|-|--", "", figureToCome},
	{"^^ ?and|so|but|ok|now with|at|for|on !(..) , ?so ?and what|(how about) then ?\\? $$", "what if $1", figureWithin},
	{"^^ it would|will|'d look|be ?so|much|by|far best|better|nicer|nicest|neater|neatest|nice|lovely|great|good ?to|for ?ME if ?all ?of ?the|my|our BAY had|were|are|have|was|came|come ?all ?out ?to|at ?the same|equal|identical|alike ?in|of ?width|size|length|wide ?,|. so|and|therefore|? ?please|could|can|kindly|let|would ?you|us ?please arrange|do|make|see|set ?to|it|for ?that|this|it|so|happen ?so|happen|for|ME ?please", "make the bays equal", nil},
	{"would|will|does|do it|that|things|anything ?really|even change|matter|alter|affect|shift|hurt ?anything|much|things|any|(a thing)|(a lot) ?much ?if|when|were ?i|we|there ?to !##|LENQ|COUNTQ", "what if $1", nil},
	{"what is|'s|would|could stopping|keeping|preventing|stop|keep|prevent|hindering ME|you|it ?from having|making|using|going|doing|setting|putting ?with|to|for|in|on", "why can not i have", nil},
	{"what is|'s to stop|keep|prevent ME|you|it ?from having|making|using|going|doing|setting|putting ?with|to|for|in|on", "why can not i have", nil},
	{"what is|'s stopping|keeping|preventing|hindering ME|you from going|doing|getting|building|managing ?by|along without ?any", "why can not i have no", nil},
	{"!@ and|but|,|rather|instead ?and|but not|than|of @", "$1", sizesTried},
	{"take|knock|shave|cut|trim|lop another !inch|foot off|from|(out of)|(off of) !LENQ", "reduce $2 by 1 $1", phrase.StartsClause},

	// Feet and inches, or millimeters.
	{"[,|;|.|-] ?because|since|as|for ?the CUSTOMARY|METRICS|feet|(feet and inches) means|mean|(does not mean)|(do not mean)|says|say ?absolutely|just|almost nothing|little|(a thing)|much|anything|(not a thing) to ME", "", unitsBefore},
	{"^^ i|we am|are|was|were|grew ?up|more|only|all|much used|raised|brought|accustomed ?up ?to|on|with !METRICS|CUSTOMARY ?, ?so|and|therefore ?could|can|would|may|will|let|please ?i|we|you|us ?please use|have|do|go|work ?with|in|by those|them|that|it ?instead ?of|rather ?than|the ?CUSTOMARY|METRICS ?, ?please", "use $1", nil},
	{"^^ (that is enough)|(enough of)|(no more)|enough|(i have had enough of)|(done with) ?of|with ?the|these|those|all METRICS ,|;|.|- ?and|so|let|give ?it|us|ME ?is|have|use|do ?me !inches|imperial|(feet and inches)|customary ?from ?here|now|please ?on ?out", "use inches from now on", nil},
	{"^^ (that is enough)|(enough of)|(no more)|enough|(i have had enough of)|(done with) ?of|with ?the|these|those|all CUSTOMARY|feet|(feet and inches) ,|;|.|- ?and|so|let|give ?it|us|ME ?is|have|use|do ?me !METRICS ?from ?here|now|please ?on ?out", "use $1 from now on", nil},
	{"!BAY|WALL|DOORWAY|gap|post|(POST HEIGHT) ?right|way ?back down to # or less|under|lower|below|smaller", "$1 at most $2", nil},
}

// Where the turns along the wall mean so.
var (
	openingNear  = phrase.SaidBeforeOf(scan.WordSet("opening op ops opng doorway walkthrough gateway gate entry entrance passage walkway through"))
	postNear     = phrase.SaidBeforeOf(scan.WordSet("post posts upright uprights column columns"))
	floorNear    = phrase.SaidBeforeOf(scan.WordSet("floor slab patio deck concrete porch terrace pad paving ground"))
	lowerSaid    = phrase.SaidBeforeOf(scan.WordSet("lower down falls fall drops drop slopes slope low deeper higher up rises dips sinks off below"))
	rightSaid    = phrase.SaidBeforeOf(scan.WordSet("right"))
	endPostsTold = phrase.BothHold(postNear, phrase.BothHold(figuresBefore, noDoubtBefore))
	paperSaid    = phrase.SaidBeforeOf(scan.WordSet("drawing plan plans sketch sheet print blueprint paper says shows according"))
	triedSaid    = phrase.SaidBeforeOf(scan.WordSet("if suppose supposing say what"))
)

// askedAhead: something was asked before it.
func askedAhead(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("what how which where"))(before, nil)
}

// placesPosts: posts are being set, and nothing is tried.
func placesPosts(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("stick put set stand drop plant sink sticking putting setting standing dropping planting place placing add adding"))(before, nil) && noDoubtBefore(before, nil)
}

// rightUnsaid: the right end was not named yet.
func rightUnsaid(before, _ []scan.Atom) bool { return !rightSaid(before, nil) }

// floorLower: the floor was told to be lower or higher, and no left end of it.
func floorLower(before, after []scan.Atom) bool {
	left := scan.WordSet("left")
	return floorNear(before, nil) && lowerSaid(before, nil) && !phrase.SaidBeforeOf(left)(before, nil) && !phrase.SaidBeforeOf(left)(after, nil)
}

// postSideNear: one of the end posts was named, the left one or the right one.
func postSideNear(before, after []scan.Atom) bool {
	return postNear(before, after) && phrase.SaidBeforeOf(scan.WordSet("left right"))(before, nil) && chunk.Figured(after)
}

// leftRightBehind: what follows tells how far from one of the end posts.
func leftRightBehind(_, after []scan.Atom) bool {
	return chunk.Figured(after) && phrase.SaidBeforeOf(scan.WordSet("left right"))(after, nil) && phrase.SaidBeforeOf(scan.WordSet("from off"))(after, nil)
}

// postBehind is leftRightBehind with a post that is named.
func postBehind(before, after []scan.Atom) bool {
	return leftRightBehind(before, after) && postNear(after, nil)
}

// facesAhead: from which faces it is measured follows.
func facesAhead(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 3; i++ {
		switch after[i].Text {
		case "face", "faces", "center", "middle", "outside", "inside", "clear", "centers":
			return true
		}
	}
	return false
}

// sideIsTold: on which side something goes is told of a thing that is named; the "right" before it only began the sentence.
func sideIsTold(_, after []scan.Atom) bool {
	if len(after) < 4 || !lexicon.Vocab().Articles[after[0].Text] && after[0].Text != "put" && after[0].Text != "i" && after[0].Text != "we" && after[0].Text != "so" {
		return false
	}
	return openingNear(after, nil) && phrase.SaidBeforeOf(scan.WordSet("left right middle center"))(after, nil)
}

// lengthBefore: a length of the wall was named, and nothing that is bought.
func lengthBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("opening doorway walkthrough gap gaps wall bay bays span post posts height spacing entry entrance through"))(before, nil) &&
		!phrase.SaidBeforeOf(scan.WordSet("price cost total bill order quote lumber material materials budget"))(before, nil)
}

// paperMeasures: a paper says so of the opening, the wall or the gap; a figure follows.
func paperMeasures(before, after []scan.Atom) bool {
	return paperSaid(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("bay rail tape i we"))(before, nil) && len(after) > 0 && phrase.StartsLength(measure.Reader{Atoms: after}, 0) &&
		phrase.SaidBeforeOf(scan.WordSet("opening doorway walkthrough gap gaps wall post posts entry entrance through"))(before, nil)
}

// sizesTried: sizes are tried, and nothing stands behind the second.
func sizesTried(before, after []scan.Atom) bool {
	return triedSaid(before, nil) && phrase.EndsLine(before, after)
}

// figureToComeOrOne: a figure or a single thing follows.
func figureToComeOrOne(_, after []scan.Atom) bool {
	return chunk.Figured(after) || phrase.SaidBeforeOf(scan.WordSet("single a one"))(after, nil)
}

// figureWithin: hardly anything stands before it; the figure is in what is kept.
func figureWithin(before, _ []scan.Atom) bool { return len(before) < 2 }

// stiffToldNear: stiffeners were spoken of, and no rails.
func stiffToldNear(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("stiffener stiffeners brace braces batten battens"))(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("rail rails board boards slat slats plank planks"))(before, nil)
}

// askedToForget: something is to be forgotten, or taken as it comes.
func askedToForget(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("forget drop scrap scratch lose"))(before, nil)
}

// sideWallNamed: what follows is of the wall on the side.
func sideWallNamed(before, after []scan.Atom) bool {
	return len(before) == 0 && len(after) > 1 && after[0].Text != "of"
}

// spanTold: a length between posts was told.
func spanTold(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && postNear(before, nil) && phrase.SaidBeforeOf(scan.WordSet("between"))(before, nil)
}

// bidsHereOrAsked: what it says is told, or asked for.
func bidsHereOrAsked(before, after []scan.Atom) bool {
	return bidsHereOrWished(before, after) || len(before) > 1 && (chunk.LastOf(before, 1) == "i" || chunk.LastOf(before, 1) == "we" || chunk.LastOf(before, 1) == "you")
}

// slipAndSide: a slip is owned to, and a side was told.
func slipAndSide(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("sorry oops whoops wrong mistake apologies"))(before, nil) && phrase.SaidBeforeOf(scan.WordSet("left right middle center"))(before, nil)
}

// promisedOfIt: what is promised is told of a thing that is named, with a figure.
func promisedOfIt(_, after []scan.Atom) bool {
	return chunk.Figured(after) && lexicon.Vocab().Articles[after[0].Text]
}

// claimAndFigure: somebody else says so, with a figure.
func claimAndFigure(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && phrase.SaidBeforeOf(scan.WordSet("they he she says said drawing plan plans sketch sheet bid permit"))(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("i we you can could let make set"))(before, nil)
}

// unitsBefore: units were spoken of before.
func unitsBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("metric millimeters millimetres mm centimeters inches feet imperial customary units"))(before, nil)
}
