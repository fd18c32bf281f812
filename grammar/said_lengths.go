package grammar

// What a length may be, and by how much it is to change, in words that many rows share.
const (
	isUnder   = "(below|under|beneath|(short of)|(shy of)|((less|lower|smaller|shorter|narrower|tighter) than))"
	isOver    = "(above|over|past|beyond|((more|higher|bigger|taller|wider|larger|longer|greater) than))"
	wontServe = "(((will|would|does|can) not (do|work|fly|pass|suit|serve|help|cut it|wash|be enough)) ?ME|(?(is|'s|(would be)|(will be)) ?just ?simply (((no|(of no)|(not any)) (use|good|help))|(out of (the|any) question)|(off the table)|(not (on|enough|acceptable|allowed|(good enough)|(an option)))|unacceptable|useless|pointless|(a non starter)|(too (little|small|low|narrow|tight|mean|short|much|big|high|wide|tall|large|long|loose))) ?((to|for) ME)))"
	noFarther = "((there it (stops|ends|stays))|(no (further|farther|more|higher|wider|bigger|longer|larger|taller))|((that is|there is) (it|(the (limit|end))|(as far as it goes)|(where it (stops|ends))))|(not (a|an|one) ?single (hair|whisker|fraction|bit|smidgen|touch|shade) (more|further|over))|(not (beyond|past|over|above) ?that))"
	isBetween = "?(is|are|'s|stays|stay|falls|lands|comes|sits|ends|remains|turns) ?(out|up|in|at) ?(somewhere|anywhere|something|anything) (between|from) # (and|to) #"
	isAllowed = "(if|provided|providing|((as|so) long as)|(on (the|one) condition)) ?that"
	saidNow   = "?right ?just (now|today|currently|already|present|(at the moment)|(at present))"
	makesMore = "increase|raise|bump|lift|widen|stretch|open|grow|enlarge|extend|boost|expand|spread"
	makesLess = "decrease|reduce|drop|lower|trim|shrink|narrow|shorten|tighten|squeeze"
	isMore    = "(bigger|wider|taller|higher|larger|longer|greater|more|looser|broader)"
	isLess    = "(smaller|narrower|shorter|lower|less|tighter|closer)"
)

// saidLengths are the frames in which a length is set, bounded, changed and taken back, whatever length it is.
var saidLengths = []placedPhrase{
	// Set.
	{said: "wants|needs|has|have|ought to (finish|end|wind|come|wash|fetch) up ?at|on|as #", plain: "should be $1"},
	{said: "!LENQ ends|finishes|winds|comes up|out ?at|on # ?, if (i|we) (get|have) (my|our) ?own way $$", plain: "$1 should be $2"},
	{said: "?, if (i|we) (get|have) (my|our) ?own way $$", where: figureStands},
	{said: "^ ?please|just|now take|treat|regard|read|log|enter !LENQ as #", plain: "set $1 to $2"},
	{said: "?((you|ye) (can|could|may)) ?just mark|put|note|jot|write|pencil|chalk|log !LENQ down|in as|at|for #", plain: "set $1 to $2"},
	{said: "(as far as)|(so far as) !THEQ goes|go|(is concerned)|(are concerned) $$", plain: "for $1", where: figureStands},
	{said: "(was|were|is|are|got|gets|(has been)|(have been)) ?all ?finally ?now settled|agreed|pegged|decided|locked|frozen|pinned ?in at|on|as #", plain: "should be $1", where: noDoubtBefore},
	{said: "(on|(in|with)) ?the subject|matter|question|topic|issue|regard|respect of|to !THEQ , ?i|we|(all of us) ?have ?all ?now ?just (plumped for|opted for|settled on|decided on|agreed on|gone for|went for|go with|go for|picked|chosen|chose|voted for|landed on|(shook|shaken) hands on|gone with|went with) #", plain: "$1 should be $2", where: noDoubtBefore},
	{said: "(on|(in|with)) ?the subject|matter|question|topic|issue|regard|respect of|to !THEQ ,|:", plain: "$1 :", where: valueNext},
	{said: "i|we ?have ?all ?both ?now ?finally (plumped|opted) for #", plain: "i want $1", where: noDoubtBefore},
	{said: "do not|never ?you ?ever let|make|have|set !LENQ ?to ?be ?(anything|(any (figure|size|number|value|other))) but|except|save|bar|besides|(other than) #", plain: "set $1 to $2", where: noDoubtBefore},
	{said: "!LENQ should|must|may|can|shall|will|could|is|are ?to never|not ?ever ?be anything but|except|save|bar|besides|(other than) #", plain: "$1 should be $2", where: noDoubtBefore},
	{said: "!LENQ should|must|may|can|shall|will not|never ?ever differ|deviate|depart|vary|budge from #", plain: "$1 should be $2", where: noDoubtBefore},
	{said: "anything|(any (figure|size|number)) but|except|besides|(other than) # for|on|in|as !LENQ will|would|does|can|is not do|work|fly|pass|suit|serve|wash|(good enough) ?ME", plain: "$2 should be $1", where: noDoubtBefore},
	{said: "nothing but|except|besides|(other than) # will|would do|work|serve|suit ?ME for|on|in|as !LENQ", plain: "$2 should be $1", where: noDoubtBefore},
	{said: "^ ?please|just|so let !LENQ equal #", plain: "set $1 to $2"},
	{said: "^^ i|we ?have ?all ?both ?finally agreed|decided|settled ?that !LENQ would|should|will be #", plain: "$1 should be $2"},
	{said: "i|we have|had my|our heart|hearts|mind set on #", plain: "i want $1", where: forQuantity},
	{said: "# is|was|'s figure|number|value|one|size|what ?that ?(i|we|(all of us)) ?have|had ?all ?both ?finally ((shook ?hands on)|(agreed ?upon)|(agreed to)|(agreed on)|(settled on)|(decided on)|picked|chose|(came up with)|(landed on)|(plumped for)|(voted for)|(went with)|(went for)|(wrote down)) for|on|as|with|in !LENQ $$", plain: "$2 should be $1", where: noDoubtBefore},
	{said: "^^ ?bang|spot|dead ?on !# ,|.|;|-|-- that|this|it is|'s !LENQ sorted|settled|decided|fixed|(taken care of) ?then $$", plain: "$2 should be $1"},
	{said: "!LENQ sorted|settled is|'s #", plain: "$1 is $2", where: noDoubtBefore},
	{said: "should|must|shall|(has to)|(needs to)|(ought to) equal #", plain: "should be $1"},
	{said: "# ?to ?(pass|(get (through|in|past|by))|fit|turn|clear) ?(through|in|by|past) , so ?please ?(let us) make|keep|have|set|build !LENQ (at least)|(no less than) that|as ?(wide|high|tall|big|much|large)", plain: ". $2 at least $1", where: nil},
	{said: "^^ ?sure|ach|och|ah # will|would|should do|be|suit grand|rightly|lovely|nicely|fine for|on !LENQ $$", plain: "$2 should be $1"},
	{said: "^ ?please|just|now write|jot|pencil|note|mark|enter # (next to)|beside|alongside|opposite|against !LENQ $", plain: "$2 should be $1"},
	{said: "^^ (as|so) long as !LENQ is|are|'s|stays|(comes out) ?at ?between # and # ?, ?(i am|we are|(everybody|everyone) is|(i|we) (will|shall) be|that is) ?all happy|fine|content|good|ok|okay|grand|satisfied|pleased $$", plain: "$1 between $2 and $3"},
	{said: "^^ (as|so) long as !LENQ is|are|'s|stays|(comes out) ?at # ?, ?(i am|we are|(everybody|everyone) is|(i|we) (will|shall) be|that is) ?all happy|fine|content|good|ok|okay|grand|satisfied|pleased $$", plain: "$1 should be $2"},

	// Between two.
	{said: "!LENQ is|are|'s|(will be)|(would be) ?all ?just fine|ok|okay|good|grand|alright|acceptable ?(with|by) ?ME ?, " + isAllowed + " it|they " + isBetween, plain: "$1 between $2 and $3", where: noDoubtBefore},
	{said: "^^ i|we am|are ?pretty|quite|all easy|relaxed|flexible|open|(not (fussy|fussed|picky|bothered|particular|worried)) on|about|with|over !LENQ ?, ?but " + isAllowed + " it|they " + isBetween, plain: "$1 between $2 and $3"},
	{said: "?(from|between) # to|and|through # is|'s|(will be)|(would be) ?acceptable|allowed|working|permitted window|range|bracket|band|limits|spread|zone for|on|of|with !LENQ", plain: "$3 between $1 and $2", where: noDoubtBefore},
	{said: "hold|keep|have|maintain|put|leave !LENQ ?somewhere inside|within # to|and #", plain: "$1 between $2 and $3", where: noDoubtBefore},
	{said: "not|never|no ?go ?be " + isUnder + " # ?, ?nor|or|and|but ?not|never|no " + isOver + " # for|on|in|with !LENQ $$", plain: "$3 between $1 and $2"},
	{said: "!LENQ goes|runs|ranges|is|(can go)|(may go)|(will go)|(should go) from # at ?its least|lowest|minimum|smallest , ?up to # at ?its most|highest|maximum|biggest|largest", plain: "$1 between $2 and $3", where: noDoubtBefore},
	{said: "!LENQ goes|runs|ranges|is|(can go)|(may go)|(will go)|(should go) from # at ?its least|lowest|minimum|smallest ?up to # at ?its most|highest|maximum|biggest|largest", plain: "$1 between $2 and $3", where: noDoubtBefore},

	// At least and at most.
	{said: "!LENQ (cannot|((can|must|may|should|could|will|shall|is|ought) not)) ?ever ?(to|be allowed to|allowed to) drop|fall|dip|sink|slip|shrink|creep|slide ?down|out|in ?to " + isUnder + " #", plain: "$1 at least $2", where: noDoubtBefore},
	{said: "!LENQ (cannot|((can|must|may|should|could|will|shall|is|ought) not)) ?ever ?(to|be allowed to|allowed to) rise|climb|creep|grow|slip|stretch|stray|swell ?up|out ?to " + isOver + " #", plain: "$1 at most $2", where: noDoubtBefore},
	{said: "anything " + isUnder + " # for|on|in|as|with !LENQ " + wontServe, plain: "$2 at least $1", where: noDoubtBefore},
	{said: "anything " + isOver + " # for|on|in|as|with !LENQ " + wontServe, plain: "$2 at most $1", where: noDoubtBefore},
	{said: "# as|for ?very|bare|absolute|strict minimum", plain: "at least $1", where: noDoubtBefore},
	{said: "# as|for ?very|absolute|strict|outside maximum", plain: "at most $1", where: noDoubtBefore},
	{said: "i|we (could|can|would|will) not|never ?ever (live|cope|(put up)|(be happy)|do|work) with !LENQ ?any " + isUnder + " #", plain: "$1 at least $2"},
	{said: "i|we (could|can|would|will) not|never ?ever (live|cope|(put up)|(be happy)|do|work) with !LENQ ?any " + isOver + " #", plain: "$1 at most $2"},
	{said: "!LENQ starts|begins at|from # , ?and can|may|could|might ?only go|get|come up|bigger|higher|wider ?(from (there|that)) $$", plain: "$1 at least $2"},
	{said: "!LENQ starts|begins at|from # and can|may|could|might ?only go|get|come up|bigger|higher|wider ?(from (there|that)) $$", plain: "$1 at least $2"},
	{said: "# is|'s|(would be)|(will be) ?absolute|bare|very|hard floor|(rock bottom) for|on|as !LENQ $$", plain: "$2 at least $1", where: noDoubtBefore},
	{said: "!LENQ (can|may|could|might|will|(is allowed to)) ?go|get|come|stretch|reach|rise|run|be ?up|out|(as (far|much|high|wide) as)|(all the way) ?to # ?, ?and|but " + noFarther + " $$", plain: "$1 at most $2", where: noDoubtBefore},
	{said: "# ?, ?and not a|one ?single hair|whisker|fraction|smidgen|shade|touch more|over for|on|in|with !LENQ", plain: "$2 at most $1", where: noDoubtBefore},
	{said: "under|below # or right|bang|spot|dead|exactly|just on|at it|that", plain: "at most $1"},
	{said: "over|above # or right|bang|spot|dead|exactly|just on|at it|that", plain: "at least $1"},

	// About.
	{said: "# ?, give or take ?(a (bit|little|touch|hair)) ?, (is|'s|was|(would be)) what i|we (am|are|was|were|would|have) ?(thinking|after|want|wanting|picturing|hoping|like|say|(in mind)) ?(of|for) for|on|with|as !LENQ $$", plain: "$2 about $1", where: noDoubtBefore},
	{said: "i|we am|are|was|were thinking|picturing|imagining ?of # , ?give or take ?, for|on|with|as !LENQ $$", plain: "$2 about $1", where: noDoubtBefore},
	{said: "# - ish", plain: "about $1"},
	{said: "roughly|broadly|loosely|approximately speaking ?, !LENQ is|are|'s|(should be)|(will be)|(must be) #", plain: "$1 about $2"},
	{said: "^^ # would|will be ideal|perfect|best|lovely|great|nice|good for|on|with !LENQ , ?but ?anything (near|close) ?enough ?to ?it|that (will do|(is|will be) (fine|ok|okay|good|grand)|works) $$", plain: "$2 about $1"},

	// More and less.
	{said: "# ?more on|onto|than|(on top of)|over|beyond|(on to) what|whatever|however !LENQ is|are|'s|measures|has " + saidNow, plain: "raise $2 by $1", where: noDoubtBefore},
	{said: "# ?less off|(off of)|from|below|under|than|(shy of) what|whatever|however !LENQ is|are|'s|measures|has " + saidNow, plain: "reduce $2 by $1", where: noDoubtBefore},
	{said: "i|we (would|'d|will|should) ?all feel|be|sleep|rest|do ?a ?much|lot|bit|little better|happier|easier|safer with ?another # ?more|extra ?added|tacked|put|stuck|slapped ?on to|onto|on !LENQ $$", plain: "raise $2 by $1"},
	{said: "i|we (would|'d|will|should) ?all feel|be|sleep|rest|do ?a ?much|lot|bit|little better|happier|easier|safer with ?another # taken|cut|trimmed|knocked|shaved|lopped off|from|(out of)|(off of) !LENQ $$", plain: "reduce $2 by $1"},
	{said: "i|we have ?got ?about # too much in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just take|cut|trim|lose|knock|get|drop|shave it|that ?(out|off|away|(rid of)) $$", plain: "reduce $2 by $1", where: noDoubtBefore},
	{said: "i|we have ?got # too little in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just add|put|tack|stick it|that ?(on|in|to it) $$", plain: "raise $2 by $1", where: noDoubtBefore},
	{said: "i|we am|are # short|shy|light|under in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just add|put|tack|stick|make it|that ?(on|in|up|to it) $$", plain: "raise $2 by $1", where: noDoubtBefore},
	{said: "i|we am|are # over|heavy|long in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just take|cut|trim|lose|knock|drop|shave it|that ?(off|out|down|away) $$", plain: "reduce $2 by $1", where: noDoubtBefore},
	{said: "!LENQ is|are|'s # too (small|narrow|short|low|tight|little|mean) ,|;|.|- ?so ?please ?just fix|sort|mend|correct|change|adjust|(see to)|(put right) it|that ?out|please $$", plain: "raise $1 by $2", where: noDoubtBefore},
	{said: "!LENQ is|are|'s # too (big|wide|tall|high|large|long|generous|loose|much) ,|;|.|- ?so ?please ?just fix|sort|mend|correct|change|adjust|(see to)|(put right) it|that ?out|please $$", plain: "reduce $1 by $2", where: noDoubtBefore},
	{said: "can|could|would|will you ?please ?just trim|cut|shave|take|lop|nip|knock|shed|drop|slice # from|off|(out of)|(off of) !LENQ", plain: "reduce $2 by $1", where: noDoubtBefore},
	{said: "bring|pull|draw !LENQ in|down by #", plain: "reduce $1 by $2", where: bidsHereOrWished},
	{said: "stretch|grow|enlarge|expand|extend !LENQ ?out|up by|another #", plain: "raise $1 by $2", where: bidsHereOrWished},
	{said: "^^ ?so|well|and|ok|okay ?, can|could we|i ?please ?maybe ?just " + makesMore + " !LENQ ?up|out ?by|another # $", plain: "raise $1 by $2", where: statedToEnd},
	{said: "^^ ?so|well|and|ok|okay ?, can|could we|i ?please ?maybe ?just " + makesLess + " !LENQ ?down|in ?by|another # $", plain: "reduce $1 by $2", where: statedToEnd},
	{said: "i|we need|want|(would like)|(could use) ?another # ?more ?to ?be added|tacked on|onto|to !LENQ", plain: "raise $2 by $1", where: noDoubtBefore},
	{said: "i|we need|want|(would like) # ?to ?be taken|trimmed|cut|shaved|knocked off|(off of)|from|(out of) !LENQ", plain: "reduce $2 by $1", where: noDoubtBefore},
	{said: "could|can i|we ?just have !LENQ ?by # " + isMore + " , please $$", plain: "raise $1 by $2"},
	{said: "could|can i|we ?just have !LENQ ?by # " + isLess + " , please $$", plain: "reduce $1 by $2"},
	{said: "may|might i|we ?please ?just have ?another # more|extra|bigger ?please for|on|in|with !LENQ", plain: "raise $2 by $1", where: noDoubtBefore},
	{said: "may|might i|we ?please ?just have # less|fewer ?please for|on|in|with !LENQ", plain: "reduce $2 by $1", where: noDoubtBefore},
	{said: "may|might i|we ?please ?just have !LENQ|(the gaps) ?by ?just # " + isMore + " ?please ?\\? $$", plain: "raise $1 by $2", where: nil},
	{said: "may|might i|we ?please ?just have !LENQ|(the gaps) ?by ?just # " + isLess + " ?please ?\\? $$", plain: "reduce $1 by $2", where: nil},

	// Taken back.
	{said: "leave !LENQ open|undecided|unset|unfixed|free|loose|(up in the air) again|(after all) ?, ?(i am|we are) ?not ?(all|so|that) ?(set|sold|stuck|fixed|keen|fussed|bothered) ?(on|about|to) ?(it|that) $$", plain: "forget $1", where: bidsHereOrWished},
	{said: "clear|wipe the|my|our !LENQ ?(for ME) ?, ?please ?would|will|could|can ?you|ya|ye ?please $$", plain: "forget $1", where: phraseStartsClause},
	{said: "^^ ?(well|so|now|okay|ok) ?, !LENQ can|may|could be whatever|anything|(any (size|figure|number)) ?that you|it|ye like|likes|want|wants|fancy|please|works ?now|again $$", plain: "forget $1"},
	{said: "^ ?please|just|now leave !LENQ ?up to program|computer|software|machine|app|tool|calculator ?again|now|then $$", plain: "forget $1"},
	{said: "let !LENQ go ?back to being|be free|open|unset|loose|undecided ?again $$", plain: "forget $1", where: phraseStartsClause},
	{said: "(no need|(there is no need)|(you need not)|(do not bother)) ?to hold|keep|pin|tie|fix|holding|keeping !LENQ to|at anything|(any (figure|number|size)) ?anymore|(any (more|longer))|now|particular|(in particular) $$", plain: "forget $1", where: phraseStartsClause},
	{said: "^^ ?(ok|okay|right|so|well) ?, you decide|choose|pick ?on !LENQ ?then|instead|again|(for ME) $$", plain: "forget $1"},
	{said: "^^ (never mind)|forget|(do not (mind|worry) ?about)|drop|scratch !LENQ ,|;|.|- ?and ?you ?just ?please work|figure|sort it|that|one out ?yourself|(for yourself)|(on your own) $$", plain: "forget $1"},
	{said: "^^ !LENQ is|'s ?all (up to)|(down to) you again|(once more)|now $$", plain: "forget $1"},

	// A slip.
	{said: ",|.|;|-|-- sorry|wait|no|oops|whoops|(hang on) ?, right|correct|real|proper figure|number|value|one is|'s|(should be) #", plain: ", no , $1", where: figureToldBefore},
	{said: ",|.|;|-|-- ?no|oh|oops ?, sorry|oops|whoops|no|wait|(hang on)|(hold on)|apologies ,|.|- # is|was ?the right|correct|(what i (meant|want|wanted|need|needed))|((right|correct) (one|figure|number|value)) $$", plain: ", no , $1", where: figureToldBefore},
}

// lengthTalk is what people say around a length that is set: who settled it, for whose sake, that it is final.
var lengthTalk = []placedPhrase{
	{where: figureFollows, said: `
		^^ (let us|we can|i|we|you can) call|consider|take|count it|that|this settled|done|decided|sorted|agreed|final ,|:|;|-|--
		^^ after ?a ?good|full|long|big|little|great|blazing|huge|bit row|argument|fight|quarrel|battle|natter|squabble|barney|dispute|ding-dong|powwow|huddle ?of|about|over ?it|this|that ?with|among ?the|my|our ?_ ?_ ,
		^^ i|we am|are not ?that|too|very|really bothered|fussed|fussy|picky|particular|worried about|on|over much|(most things)|(the rest)|(a lot)|(most of it) ?, but
		^^ ?so ?sure|well|now ye|yous|youse|yez can|could|may just
		^^ ?so ?sure|well|now ye|yous|youse|yez can|could|may
		^^ yeah|yea nah|naw
		^^ nah|naw yeah|yea
		^^ if you can|could ?possibly manage|swing|wangle|arrange it|that ,`},
	{said: "^^ because|since the|my|our ?_ _ likes|wants|prefers|loves|fancies it|things|them that|this|so way ?,", where: figureFollows},
	{said: "^^ because|(on account) of the|my|our|his|her ?_ _ ?, !i|we|let|please|make|set|keep", plain: "$1", where: figureFollows},
	{said: "^^ (PERSON|mum|mummy|nan|nana|gran|granddad|grandad|((the|my) _)) and|& i|me|myself have|has", plain: "we have", where: figureFollows},
	{said: "^^ (PERSON|mum|mummy|nan|nana|gran|granddad|grandad|((the|my) _)) and|& i|me|myself ?all|both|finally !settled|agreed|decided|landed|picked|chose|want|would|think|reckon|went|plumped", plain: "we $1", where: figureFollows},
	{where: figureStands, said: `
		?, final|last answer|offer|word|decision|call $$
		?, end of discussion|story|conversation|debate|matter|argument $$
		?, ?(and|so) (do not|never) ?you ?ever let it|that ?ever ?even move|budge|shift|change|drift|slip|stray|creep|wander $$
		?, ?(and|so) (do not|never) ?you ?ever touch|budge|alter|shift|move|change it|that ?again|after|afterward|ever $$
		?, and ?then we|you|i|everybody|everyone can|could ?all ?both ?finally ?go|get|head|knock|break ?off ?to|for|home|have|down ?a ?the lunch|home|bed|work|pub|tea|dinner|supper|beach|beer|coffee $$
		, so|sure|(so sure) you|ye|i|we can|do|will|would|could|may $$
		, nothing|(no other _) ?else ?will|would|can|could|ever looks|look|fits|fit|works|work|does|do|feels|feel|suits|suit|sits|makes ?* ?' ?s ?_ ?_ $$
		, (that|which) is|was what|how i|we ?have|had ?just measured|worked|figured|sketched|drew|marked|paced|thrashed ?it ?out|up|off with the|my|our|his|her _ ?_ ?_ $$`},
	{said: "?, ?and|so (i|we) (will|would|shall|am|are) ?all ?happy|glad|going|willing ?to (go along|agree|run|stick|side) with that|it|him|her|them|this ?one", plain: ", so use that", where: bothHold(claimBefore, bothHold(figureStands, endsUnasked))},
	{said: "for|on|in|of top of WALL", plain: "for the wall height", where: topIsMeant},
}

// topIsMeant: a length is said of the top of the wall, and of nothing that lies on it.
func topIsMeant(before, after []atom) bool {
	if !figured(before) && !figured(after) && !saidBeforeOf(inchSaid)(before, after) || asksAtEnd(after) {
		return false
	}
	for _, in := range [][]atom{before, after} {
		for _, a := range in {
			if besideTop[a.text] || isClass(a.text, "GAP") || isClass(a.text, "RAIL") || isClass(a.text, "POST") || isClass(a.text, "OPENING") || isClass(a.text, "STIFF") {
				return false
			}
		}
	}
	return true
}

// inchSaid may stand for a length of one: "an inch more".
var inchSaid = wordSet("inch foot")

// besideTop are words of what lies on the top of a wall, or is left above it.
var besideTop = wordSet("cap board plank rail lumber wood clear clearance overhang trim bracket brackets thick apart x by screw screws flat ledge shelf space paint price")
