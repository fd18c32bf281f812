package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

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
var saidLengths = []phrase.Placed{
	// Set.
	{Said: "wants|needs|has|have|ought to (finish|end|wind|come|wash|fetch) up ?at|on|as #", Plain: "should be $1"},
	{Said: "!LENQ ends|finishes|winds|comes up|out ?at|on # ?, if (i|we) (get|have) (my|our) ?own way $$", Plain: "$1 should be $2"},
	{Said: "?, if (i|we) (get|have) (my|our) ?own way $$", Where: figureStands},
	{Said: "^ ?please|just|now take|treat|regard|read|log|enter !LENQ as #", Plain: "set $1 to $2"},
	{Said: "?((you|ye) (can|could|may)) ?just mark|put|note|jot|write|pencil|chalk|log !LENQ down|in as|at|for #", Plain: "set $1 to $2"},
	{Said: "(as far as)|(so far as) !THEQ goes|go|(is concerned)|(are concerned) $$", Plain: "for $1", Where: figureStands},
	{Said: "(was|were|is|are|got|gets|(has been)|(have been)) ?all ?finally ?now settled|agreed|pegged|decided|locked|frozen|pinned ?in at|on|as #", Plain: "should be $1", Where: noDoubtBefore},
	{Said: "(on|(in|with)) ?the subject|matter|question|topic|issue|regard|respect of|to !THEQ , ?i|we|(all of us) ?have ?all ?now ?just (plumped for|opted for|settled on|decided on|agreed on|gone for|went for|go with|go for|picked|chosen|chose|voted for|landed on|(shook|shaken) hands on|gone with|went with) #", Plain: "$1 should be $2", Where: noDoubtBefore},
	{Said: "(on|(in|with)) ?the subject|matter|question|topic|issue|regard|respect of|to !THEQ ,|:", Plain: "$1 :", Where: valueNext},
	{Said: "i|we ?have ?all ?both ?now ?finally (plumped|opted) for #", Plain: "i want $1", Where: noDoubtBefore},
	{Said: "do not|never ?you ?ever let|make|have|set !LENQ ?to ?be ?(anything|(any (figure|size|number|value|other))) but|except|save|bar|besides|(other than) #", Plain: "set $1 to $2", Where: noDoubtBefore},
	{Said: "!LENQ should|must|may|can|shall|will|could|is|are ?to never|not ?ever ?be anything but|except|save|bar|besides|(other than) #", Plain: "$1 should be $2", Where: noDoubtBefore},
	{Said: "!LENQ should|must|may|can|shall|will not|never ?ever differ|deviate|depart|vary|budge from #", Plain: "$1 should be $2", Where: noDoubtBefore},
	{Said: "anything|(any (figure|size|number)) but|except|besides|(other than) # for|on|in|as !LENQ will|would|does|can|is not do|work|fly|pass|suit|serve|wash|(good enough) ?ME", Plain: "$2 should be $1", Where: noDoubtBefore},
	{Said: "nothing but|except|besides|(other than) # will|would do|work|serve|suit ?ME for|on|in|as !LENQ", Plain: "$2 should be $1", Where: noDoubtBefore},
	{Said: "^ ?please|just|so let !LENQ equal #", Plain: "set $1 to $2"},
	{Said: "^^ i|we ?have ?all ?both ?finally agreed|decided|settled ?that !LENQ would|should|will be #", Plain: "$1 should be $2"},
	{Said: "i|we have|had my|our heart|hearts|mind set on #", Plain: "i want $1", Where: forQuantity},
	{Said: "# is|was|'s figure|number|value|one|size|what ?that ?(i|we|(all of us)) ?have|had ?all ?both ?finally ((shook ?hands on)|(agreed ?upon)|(agreed to)|(agreed on)|(settled on)|(decided on)|picked|chose|(came up with)|(landed on)|(plumped for)|(voted for)|(went with)|(went for)|(wrote down)) for|on|as|with|in !LENQ $$", Plain: "$2 should be $1", Where: noDoubtBefore},
	{Said: "^^ ?bang|spot|dead ?on !# ,|.|;|-|-- that|this|it is|'s !LENQ sorted|settled|decided|fixed|(taken care of) ?then $$", Plain: "$2 should be $1"},
	{Said: "!LENQ sorted|settled is|'s #", Plain: "$1 is $2", Where: noDoubtBefore},
	{Said: "should|must|shall|(has to)|(needs to)|(ought to) equal #", Plain: "should be $1"},
	{Said: "# ?to ?(pass|(get (through|in|past|by))|fit|turn|clear) ?(through|in|by|past) , so ?please ?(let us) make|keep|have|set|build !LENQ (at least)|(no less than) that|as ?(wide|high|tall|big|much|large)", Plain: ". $2 at least $1", Where: nil},
	{Said: "^^ ?sure|ach|och|ah # will|would|should do|be|suit grand|rightly|lovely|nicely|fine for|on !LENQ $$", Plain: "$2 should be $1"},
	{Said: "^ ?please|just|now write|jot|pencil|note|mark|enter # (next to)|beside|alongside|opposite|against !LENQ $", Plain: "$2 should be $1"},
	{Said: "^^ (as|so) long as !LENQ is|are|'s|stays|(comes out) ?at ?between # and # ?, ?(i am|we are|(everybody|everyone) is|(i|we) (will|shall) be|that is) ?all happy|fine|content|good|ok|okay|grand|satisfied|pleased $$", Plain: "$1 between $2 and $3"},
	{Said: "^^ (as|so) long as !LENQ is|are|'s|stays|(comes out) ?at # ?, ?(i am|we are|(everybody|everyone) is|(i|we) (will|shall) be|that is) ?all happy|fine|content|good|ok|okay|grand|satisfied|pleased $$", Plain: "$1 should be $2"},

	// Between two.
	{Said: "!LENQ is|are|'s|(will be)|(would be) ?all ?just fine|ok|okay|good|grand|alright|acceptable ?(with|by) ?ME ?, " + isAllowed + " it|they " + isBetween, Plain: "$1 between $2 and $3", Where: noDoubtBefore},
	{Said: "^^ i|we am|are ?pretty|quite|all easy|relaxed|flexible|open|(not (fussy|fussed|picky|bothered|particular|worried)) on|about|with|over !LENQ ?, ?but " + isAllowed + " it|they " + isBetween, Plain: "$1 between $2 and $3"},
	{Said: "?(from|between) # to|and|through # is|'s|(will be)|(would be) ?acceptable|allowed|working|permitted window|range|bracket|band|limits|spread|zone for|on|of|with !LENQ", Plain: "$3 between $1 and $2", Where: noDoubtBefore},
	{Said: "hold|keep|have|maintain|put|leave !LENQ ?somewhere inside|within # to|and #", Plain: "$1 between $2 and $3", Where: noDoubtBefore},
	{Said: "not|never|no ?go ?be " + isUnder + " # ?, ?nor|or|and|but ?not|never|no " + isOver + " # for|on|in|with !LENQ $$", Plain: "$3 between $1 and $2"},
	{Said: "!LENQ goes|runs|ranges|is|(can go)|(may go)|(will go)|(should go) from # at ?its least|lowest|minimum|smallest , ?up to # at ?its most|highest|maximum|biggest|largest", Plain: "$1 between $2 and $3", Where: noDoubtBefore},
	{Said: "!LENQ goes|runs|ranges|is|(can go)|(may go)|(will go)|(should go) from # at ?its least|lowest|minimum|smallest ?up to # at ?its most|highest|maximum|biggest|largest", Plain: "$1 between $2 and $3", Where: noDoubtBefore},

	// At least and at most.
	{Said: "!LENQ (cannot|((can|must|may|should|could|will|shall|is|ought) not)) ?ever ?(to|be allowed to|allowed to) drop|fall|dip|sink|slip|shrink|creep|slide ?down|out|in ?to " + isUnder + " #", Plain: "$1 at least $2", Where: noDoubtBefore},
	{Said: "!LENQ (cannot|((can|must|may|should|could|will|shall|is|ought) not)) ?ever ?(to|be allowed to|allowed to) rise|climb|creep|grow|slip|stretch|stray|swell ?up|out ?to " + isOver + " #", Plain: "$1 at most $2", Where: noDoubtBefore},
	{Said: "anything " + isUnder + " # for|on|in|as|with !LENQ " + wontServe, Plain: "$2 at least $1", Where: noDoubtBefore},
	{Said: "anything " + isOver + " # for|on|in|as|with !LENQ " + wontServe, Plain: "$2 at most $1", Where: noDoubtBefore},
	{Said: "# as|for ?very|bare|absolute|strict minimum", Plain: "at least $1", Where: noDoubtBefore},
	{Said: "# as|for ?very|absolute|strict|outside maximum", Plain: "at most $1", Where: noDoubtBefore},
	{Said: "i|we (could|can|would|will) not|never ?ever (live|cope|(put up)|(be happy)|do|work) with !LENQ ?any " + isUnder + " #", Plain: "$1 at least $2"},
	{Said: "i|we (could|can|would|will) not|never ?ever (live|cope|(put up)|(be happy)|do|work) with !LENQ ?any " + isOver + " #", Plain: "$1 at most $2"},
	{Said: "!LENQ starts|begins at|from # , ?and can|may|could|might ?only go|get|come up|bigger|higher|wider ?(from (there|that)) $$", Plain: "$1 at least $2"},
	{Said: "!LENQ starts|begins at|from # and can|may|could|might ?only go|get|come up|bigger|higher|wider ?(from (there|that)) $$", Plain: "$1 at least $2"},
	{Said: "# is|'s|(would be)|(will be) ?absolute|bare|very|hard floor|(rock bottom) for|on|as !LENQ $$", Plain: "$2 at least $1", Where: noDoubtBefore},
	{Said: "!LENQ (can|may|could|might|will|(is allowed to)) ?go|get|come|stretch|reach|rise|run|be ?up|out|(as (far|much|high|wide) as)|(all the way) ?to # ?, ?and|but " + noFarther + " $$", Plain: "$1 at most $2", Where: noDoubtBefore},
	{Said: "# ?, ?and not a|one ?single hair|whisker|fraction|smidgen|shade|touch more|over for|on|in|with !LENQ", Plain: "$2 at most $1", Where: noDoubtBefore},
	{Said: "under|below # or right|bang|spot|dead|exactly|just on|at it|that", Plain: "at most $1"},
	{Said: "over|above # or right|bang|spot|dead|exactly|just on|at it|that", Plain: "at least $1"},

	// About.
	{Said: "# ?, give or take ?(a (bit|little|touch|hair)) ?, (is|'s|was|(would be)) what i|we (am|are|was|were|would|have) ?(thinking|after|want|wanting|picturing|hoping|like|say|(in mind)) ?(of|for) for|on|with|as !LENQ $$", Plain: "$2 about $1", Where: noDoubtBefore},
	{Said: "i|we am|are|was|were thinking|picturing|imagining ?of # , ?give or take ?, for|on|with|as !LENQ $$", Plain: "$2 about $1", Where: noDoubtBefore},
	{Said: "# - ish", Plain: "about $1"},
	{Said: "roughly|broadly|loosely|approximately speaking ?, !LENQ is|are|'s|(should be)|(will be)|(must be) #", Plain: "$1 about $2"},
	{Said: "^^ # would|will be ideal|perfect|best|lovely|great|nice|good for|on|with !LENQ , ?but ?anything (near|close) ?enough ?to ?it|that (will do|(is|will be) (fine|ok|okay|good|grand)|works) $$", Plain: "$2 about $1"},

	// More and less.
	{Said: "# ?more on|onto|than|(on top of)|over|beyond|(on to) what|whatever|however !LENQ is|are|'s|measures|has " + saidNow, Plain: "raise $2 by $1", Where: noDoubtBefore},
	{Said: "# ?less off|(off of)|from|below|under|than|(shy of) what|whatever|however !LENQ is|are|'s|measures|has " + saidNow, Plain: "reduce $2 by $1", Where: noDoubtBefore},
	{Said: "i|we (would|'d|will|should) ?all feel|be|sleep|rest|do ?a ?much|lot|bit|little better|happier|easier|safer with ?another # ?more|extra ?added|tacked|put|stuck|slapped ?on to|onto|on !LENQ $$", Plain: "raise $2 by $1"},
	{Said: "i|we (would|'d|will|should) ?all feel|be|sleep|rest|do ?a ?much|lot|bit|little better|happier|easier|safer with ?another # taken|cut|trimmed|knocked|shaved|lopped off|from|(out of)|(off of) !LENQ $$", Plain: "reduce $2 by $1"},
	{Said: "i|we have ?got ?about # too much in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just take|cut|trim|lose|knock|get|drop|shave it|that ?(out|off|away|(rid of)) $$", Plain: "reduce $2 by $1", Where: noDoubtBefore},
	{Said: "i|we have ?got # too little in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just add|put|tack|stick it|that ?(on|in|to it) $$", Plain: "raise $2 by $1", Where: noDoubtBefore},
	{Said: "i|we am|are # short|shy|light|under in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just add|put|tack|stick|make it|that ?(on|in|up|to it) $$", Plain: "raise $2 by $1", Where: noDoubtBefore},
	{Said: "i|we am|are # over|heavy|long in|on|for|with|at !LENQ ,|;|.|- ?so ?please ?just take|cut|trim|lose|knock|drop|shave it|that ?(off|out|down|away) $$", Plain: "reduce $2 by $1", Where: noDoubtBefore},
	{Said: "!LENQ is|are|'s # too (small|narrow|short|low|tight|little|mean) ,|;|.|- ?so ?please ?just fix|sort|mend|correct|change|adjust|(see to)|(put right) it|that ?out|please $$", Plain: "raise $1 by $2", Where: noDoubtBefore},
	{Said: "!LENQ is|are|'s # too (big|wide|tall|high|large|long|generous|loose|much) ,|;|.|- ?so ?please ?just fix|sort|mend|correct|change|adjust|(see to)|(put right) it|that ?out|please $$", Plain: "reduce $1 by $2", Where: noDoubtBefore},
	{Said: "can|could|would|will you ?please ?just trim|cut|shave|take|lop|nip|knock|shed|drop|slice # from|off|(out of)|(off of) !LENQ", Plain: "reduce $2 by $1", Where: noDoubtBefore},
	{Said: "bring|pull|draw !LENQ in|down by #", Plain: "reduce $1 by $2", Where: bidsHereOrWished},
	{Said: "stretch|grow|enlarge|expand|extend !LENQ ?out|up by|another #", Plain: "raise $1 by $2", Where: bidsHereOrWished},
	{Said: "^^ ?so|well|and|ok|okay ?, can|could we|i ?please ?maybe ?just " + makesMore + " !LENQ ?up|out ?by|another # $", Plain: "raise $1 by $2", Where: statedToEnd},
	{Said: "^^ ?so|well|and|ok|okay ?, can|could we|i ?please ?maybe ?just " + makesLess + " !LENQ ?down|in ?by|another # $", Plain: "reduce $1 by $2", Where: statedToEnd},
	{Said: "i|we need|want|(would like)|(could use) ?another # ?more ?to ?be added|tacked on|onto|to !LENQ", Plain: "raise $2 by $1", Where: noDoubtBefore},
	{Said: "i|we need|want|(would like) # ?to ?be taken|trimmed|cut|shaved|knocked off|(off of)|from|(out of) !LENQ", Plain: "reduce $2 by $1", Where: noDoubtBefore},
	{Said: "could|can i|we ?just have !LENQ ?by # " + isMore + " , please $$", Plain: "raise $1 by $2"},
	{Said: "could|can i|we ?just have !LENQ ?by # " + isLess + " , please $$", Plain: "reduce $1 by $2"},
	{Said: "may|might i|we ?please ?just have ?another # more|extra|bigger ?please for|on|in|with !LENQ", Plain: "raise $2 by $1", Where: noDoubtBefore},
	{Said: "may|might i|we ?please ?just have # less|fewer ?please for|on|in|with !LENQ", Plain: "reduce $2 by $1", Where: noDoubtBefore},
	{Said: "may|might i|we ?please ?just have !LENQ|(the gaps) ?by ?just # " + isMore + " ?please ?\\? $$", Plain: "raise $1 by $2", Where: nil},
	{Said: "may|might i|we ?please ?just have !LENQ|(the gaps) ?by ?just # " + isLess + " ?please ?\\? $$", Plain: "reduce $1 by $2", Where: nil},

	// Taken back.
	{Said: "leave !LENQ open|undecided|unset|unfixed|free|loose|(up in the air) again|(after all) ?, ?(i am|we are) ?not ?(all|so|that) ?(set|sold|stuck|fixed|keen|fussed|bothered) ?(on|about|to) ?(it|that) $$", Plain: "forget $1", Where: bidsHereOrWished},
	{Said: "clear|wipe the|my|our !LENQ ?(for ME) ?, ?please ?would|will|could|can ?you|ya|ye ?please $$", Plain: "forget $1", Where: phrase.StartsClause},
	{Said: "^^ ?(well|so|now|okay|ok) ?, !LENQ can|may|could be whatever|anything|(any (size|figure|number)) ?that you|it|ye like|likes|want|wants|fancy|please|works ?now|again $$", Plain: "forget $1"},
	{Said: "^ ?please|just|now leave !LENQ ?up to program|computer|software|machine|app|tool|calculator ?again|now|then $$", Plain: "forget $1"},
	{Said: "let !LENQ go ?back to being|be free|open|unset|loose|undecided ?again $$", Plain: "forget $1", Where: phrase.StartsClause},
	{Said: "(no need|(there is no need)|(you need not)|(do not bother)) ?to hold|keep|pin|tie|fix|holding|keeping !LENQ to|at anything|(any (figure|number|size)) ?anymore|(any (more|longer))|now|particular|(in particular) $$", Plain: "forget $1", Where: phrase.StartsClause},
	{Said: "^^ ?(ok|okay|right|so|well) ?, you decide|choose|pick ?on !LENQ ?then|instead|again|(for ME) $$", Plain: "forget $1"},
	{Said: "^^ (never mind)|forget|(do not (mind|worry) ?about)|drop|scratch !LENQ ,|;|.|- ?and ?you ?just ?please work|figure|sort it|that|one out ?yourself|(for yourself)|(on your own) $$", Plain: "forget $1"},
	{Said: "^^ !LENQ is|'s ?all (up to)|(down to) you again|(once more)|now $$", Plain: "forget $1"},

	// A slip.
	{Said: ",|.|;|-|-- sorry|wait|no|oops|whoops|(hang on) ?, right|correct|real|proper figure|number|value|one is|'s|(should be) #", Plain: ", no , $1", Where: figureToldBefore},
	{Said: ",|.|;|-|-- ?no|oh|oops ?, sorry|oops|whoops|no|wait|(hang on)|(hold on)|apologies ,|.|- # is|was ?the right|correct|(what i (meant|want|wanted|need|needed))|((right|correct) (one|figure|number|value)) $$", Plain: ", no , $1", Where: figureToldBefore},
}

// lengthTalk is what people say around a length that is set: who settled it, for whose sake, that it is final.
var lengthTalk = []phrase.Placed{
	{Where: figureFollows, Said: `
		^^ (let us|we can|i|we|you can) call|consider|take|count it|that|this settled|done|decided|sorted|agreed|final ,|:|;|-|--
		^^ after ?a ?good|full|long|big|little|great|blazing|huge|bit row|argument|fight|quarrel|battle|natter|squabble|barney|dispute|ding-dong|powwow|huddle ?of|about|over ?it|this|that ?with|among ?the|my|our ?_ ?_ ,
		^^ i|we am|are not ?that|too|very|really bothered|fussed|fussy|picky|particular|worried about|on|over much|(most things)|(the rest)|(a lot)|(most of it) ?, but
		^^ ?so ?sure|well|now ye|yous|youse|yez can|could|may just
		^^ ?so ?sure|well|now ye|yous|youse|yez can|could|may
		^^ yeah|yea nah|naw
		^^ nah|naw yeah|yea
		^^ if you can|could ?possibly manage|swing|wangle|arrange it|that ,`},
	{Said: "^^ because|since the|my|our ?_ _ likes|wants|prefers|loves|fancies it|things|them that|this|so way ?,", Where: figureFollows},
	{Said: "^^ because|(on account) of the|my|our|his|her ?_ _ ?, !i|we|let|please|make|set|keep", Plain: "$1", Where: figureFollows},
	{Said: "^^ (PERSON|mum|mummy|nan|nana|gran|granddad|grandad|((the|my) _)) and|& i|me|myself have|has", Plain: "we have", Where: figureFollows},
	{Said: "^^ (PERSON|mum|mummy|nan|nana|gran|granddad|grandad|((the|my) _)) and|& i|me|myself ?all|both|finally !settled|agreed|decided|landed|picked|chose|want|would|think|reckon|went|plumped", Plain: "we $1", Where: figureFollows},
	{Where: figureStands, Said: `
		?, final|last answer|offer|word|decision|call $$
		?, end of discussion|story|conversation|debate|matter|argument $$
		?, ?(and|so) (do not|never) ?you ?ever let it|that ?ever ?even move|budge|shift|change|drift|slip|stray|creep|wander $$
		?, ?(and|so) (do not|never) ?you ?ever touch|budge|alter|shift|move|change it|that ?again|after|afterward|ever $$
		?, and ?then we|you|i|everybody|everyone can|could ?all ?both ?finally ?go|get|head|knock|break ?off ?to|for|home|have|down ?a ?the lunch|home|bed|work|pub|tea|dinner|supper|beach|beer|coffee $$
		, so|sure|(so sure) you|ye|i|we can|do|will|would|could|may $$
		, nothing|(no other _) ?else ?will|would|can|could|ever looks|look|fits|fit|works|work|does|do|feels|feel|suits|suit|sits|makes ?* ?' ?s ?_ ?_ $$
		, (that|which) is|was what|how i|we ?have|had ?just measured|worked|figured|sketched|drew|marked|paced|thrashed ?it ?out|up|off with the|my|our|his|her _ ?_ ?_ $$`},
	{Said: "?, ?and|so (i|we) (will|would|shall|am|are) ?all ?happy|glad|going|willing ?to (go along|agree|run|stick|side) with that|it|him|her|them|this ?one", Plain: ", so use that", Where: phrase.BothHold(ClaimBefore, phrase.BothHold(figureStands, endsUnasked))},
	{Said: "for|on|in|of top of WALL", Plain: "for the wall height", Where: topIsMeant},
}

// topIsMeant: a length is said of the top of the wall, and of nothing that lies on it.
func topIsMeant(before, after []scan.Atom) bool {
	if !chunk.Figured(before) && !chunk.Figured(after) && !phrase.SaidBeforeOf(inchSaid)(before, after) || asksAtEnd(after) {
		return false
	}
	for _, in := range [][]scan.Atom{before, after} {
		for _, a := range in {
			if besideTop[a.Text] || chunk.IsClass(a.Text, "GAP") || chunk.IsClass(a.Text, "RAIL") || chunk.IsClass(a.Text, "POST") || chunk.IsClass(a.Text, "OPENING") || chunk.IsClass(a.Text, "STIFF") {
				return false
			}
		}
	}
	return true
}

// inchSaid may stand for a length of one: "an inch more".
var inchSaid = scan.WordSet("inch foot")

// besideTop are words of what lies on the top of a wall, or is left above it.
var besideTop = scan.WordSet("cap board plank rail lumber wood clear clearance overhang trim bracket brackets thick apart x by screw screws flat ledge shelf space paint price")
