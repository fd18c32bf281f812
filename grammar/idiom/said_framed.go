package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// framedLeads are what people say before they set a value: that it is to be noted, that they thought it over or nearly forgot it, that
// what they said before was off. It is left out only where a figure follows.
var framedLeads = []phrase.Placed{
	{Where: figureFollows, Said: `
		^^ ?(can|could|would|will you) ?please ?just jot|write|note|mark|scribble|pencil|put|take|get|log|record|enter|ink|chalk this|that|it|one ?one ?down|in ?for|with ?ME ?please|now|(would you)|(will you)|(if you would) ,|:|-|--|;
		^^ note|memo|reminder|message to self|myself|ourselves|you|all|everyone ,|:|-|--
		^^ ?(a|one|another|here is|(here is a)) ?last|quick|wee|small|slight|little|minor|tiny|late reminder|update|correction|memo|tweak|amendment|revision|adjustment ?then ,|:|-|--
		^^ ?(a|one|another|here is|(here is a)) ?last|quick|wee|small|slight|little|minor|tiny|late change ?(of (plan|plans|heart|mind|tack)) ?then ,|:|-|--
		^^ ?(i|we) nearly|almost|quite|clean|(just about)|(very nearly)|(all but)|(had nearly)|(had almost) forgot|forgotten ?(to (say|mention|add|tell you)|it|this|that) ,|:|-|--|.|;
		^^ do not ?ever ?let ?ME forget ,|:|-|--
		^^ do not ?ever forget that
		^^ ?(i|we) ?have ?now|just|finally (thought|talked|mulled|gone|chewed|slept|reasoned|puzzled|prayed) ?(it|this|that|things|matters) ?(over|through|about|on) ?(it|this|that) ?(a lot|again|carefully|with _ _) ,|:|.|;|-|--|and
		^^ (i|we) have been thinking|pondering|reflecting ?(it|this|that|things) ?(over|through|about) ?(it|this|that) ?(a lot|again) ,|:|.|;|-|--|and
		^^ after ?a ?(good|full|long) night|nights|night's ?' ?'s ?s ?of sleep|rest ,
		^^ after ?(a|some|much) ?(good|long|big|little|quick|lengthy) (talk|chat|think|look|walk|coffee|discussion|debate|word|sleep) ?(with _ ?_ ?_) ,
		^^ after ?(some|much|a (lot|bit|deal) of|a good deal of) ?(talking|thinking|chewing|mulling|sleeping|going|chatting|arguing) ?(it|this|that|things) ?(all) (over|through|about|on) ?(it|this|that) ?((with|at) _ ?_ ?_) ,
		^^ (after|having) ?now slept|sleeping|(thought|thinking|talked|talking|mulled|mulling|chewed|chewing|gone|going) ?(it|this|that|things) (over|through|about|on) ?(it|this|that)
		^^ my|our|the|that|those earlier|first|last|previous|old|other|original number|numbers|figure|figures|value|guess|answer|entry was|were ?(a (bit|little|tad)|all|well|way) off|wrong|bad|out|mistaken|(no good)|(a (slip|mistake|typo|error|blunder)) ?, ?so|and|sorry|please ,|.|;|:|-|--
		^^ scratch|forget|ignore|disregard|strike|(never mind) what i|we ?have ?just said|told|wrote|typed|entered ?you ?(before|earlier|just now|a moment ago) ,|:|.|;|-|--
		^^ if it is ?(all (the|one)) same to|with you|(all of you) ,
		^^ (that ?that|which) settles it ,|:|.|;|-|--`},
	{Where: figureFollows, Said: `
		^^ ?(oh|ah|so|well|ok|okay) yeah|yea|yes|yep|aye|och|ach|nah|no nah|yeah|aye|sure|well ,
		^^ och|ach|arrah|crikey|strewth|welp|yo|oi|ey|ehm|erm|jeez|sheesh|blimey|(g ' day)|gday|righto|righty|(righty ho)|(right you are)|grand|lovely|brilliant|champion|smashing|sweet|bonzer|bueno ?(so|then|now|mate|love|pet|lad|lads|sure) ?,|:|.|;|-|--`},
	{Where: figureFollows, Said: `
		^^ ?so|well|anyway (all things considered)|(at the end of the day)|((to (cut|make) [a]) long story short)|(long story short)|([the|in] short version)|(in short)|(long and short of it)|(bottom line)|(when (all|everything) is said and done)|(in a nutshell)|(all in all)|(on balance)|(on reflection)|(in fairness)|(being honest)|(to be honest)|(truth be told) ?(is) ?,|:|-|--
		^^ for sake|benefit|good|comfort|safety|love|amusement of the|my|our|his|her|those|these _ ?,
		^^ ?so|well|ok|okay|now ?, ?(here is|here 's|this is|there is) ?what my|our|the|a thinking|thought|thoughts|idea|pick|choice|preference|preferences|vision|dream|scheme|rhythm|recipe|request|setup|gist|deal|pattern|beat|approach|intention|intentions|aim|goal|target|wish|wishes|lineup|((plan|line|course) of (attack|action)) ?(so far|today|now|(for (it|this|that|today))) :|,|-|--
		^^ (give|let ME have) ?ME a|my|our|the rhythm|pattern|beat|scheme :|,|-|--
		^^ to please|suit|humor|humour|oblige|satisfy|appease the|my|our|his|her PERSON|KIN|missus|wife|husband ?,`},
	{Where: figureFollows, Said: `
		^^ ?so|and if it is ?all|just|only ?left up|down to me|us ?alone|only ?,
		^^ ?and|oh p . s ?.|:|,
		^^ ?ok|okay|right|and|now (moving on)|(last but not least)|(next up)|(first things first)|(one last thing) ,|:|-|--
		^ ?so for heaven|heavens|god|gods|goodness|pete|petes|christ|pity|mercy ?' ?'s|s ?' sake ?,
		^ ?so for love of god|mike|pete|money|heaven|(all that is holy) ?,`},
	{Said: ", and i|we cannot|(can not)|(could not) stress|say|repeat|emphasize this|it|that enough|(often enough)|(loudly enough)|strongly|(strongly enough) ,", Plain: ",", Where: figureFollows},
	{Said: "^^ ?well|so|now why do not you ?just|simply|go ?(ahead and) !make|set|put|go|use|call|keep|have", Plain: "please $1", Where: figureFollows},
	{Said: "^^ nope|naw ,|.|;|-|--", Plain: "no ,", Where: figureFollows},
	{Where: framedSubject, Said: `
		^^ right|righto|righty|grand|okay|ok|well ?then so
		^^ (she|it|that) will be ?all|just right|apples|sweet|jake|grand|fine|dandy|lovely ?then with|at`},
	{Said: "?(i|we|you|one) might|may ?just as well ?just !make|have|set|put|keep|leave|take|use|go|call|build|do|run|hold", Plain: "let us $1", Where: phrase.BothHold(phrase.StartsClause, figureFollows)},
	{Said: "^^ you ?(have|had|were) asked|asking|(wanted to know)|wondered|wondering ?ME ?about|after|for|what !THEQ ?(is|was|should be|is to be) ,|:|;|-|--|. ?(well) ?, ?it|that ?is|'s|will|should ?be", Plain: "$1 should be", Where: valueNext},
	{Said: "^^ i|we ?still owe|owed|promised|have ?for you a|the ?my number|figure|value|answer|decision for|on|about !THEQ :|,|;|-|--|.", Plain: "$1 :", Where: valueNext},
	{Said: "^^ do ME|us a|one ?little|small|big favor|favour ?please ?and|, ?and", Plain: "please", Where: figureFollows},
	{Said: "^^ you have ?got ?a|some|plenty|lots|bit ?bit|little|lot ?of room|leeway|slack|freedom|latitude|space|play ?to ?play|move|work|breathe|maneuver|roam ?around|about ?with ?here ,|:|.|;|-|--", Where: figureFollows},
	{Said: `
		^^ now that !THEQ ,
		^^ (seeing as|seeing how|given) ?how|that !THEQ ,`, Plain: "because $1 ,", Where: figureFollows},
	{Said: "^^ PERSON|((my|our|the|his|her) _) has|have ?got ?(his|her|their) mind|minds|heart|hearts ?all|quite|firmly made|set|fixed ?up ?(on|about (it|this|that)) ,|:|;|-|--", Where: figureFollows},
}

// framedTails are what people say behind a value that they set: that it is final, that nobody will mind, what comes next. It is left out
// only at the end of the line, behind a figure.
var framedTails = []phrase.Placed{
	{Where: figureStands, Said: `
		?, and|then ?then ?(let us|we|i|we can|i can|we will|i will|you can) ?just|all (move|get|press|carry|push|crack) on ?(with (it|that|things|life|((the|our|my) _))) $$
		?, and|then ?then ?(let us|we|i|we can|i can|we will|i will|let me) ?just|all (be|get|have) done|finished|over with it|that|this $$
		?, and|then ?then ?(let us|we|we will) ?just|all (get (it|that|this) over with|leave (it|that) at that|leave it there|leave it be|call it (good|settled|done|final)|have done) $$
		?, and (that is that|that is all there is to it|there is an end to it|not another word|do not argue) $$
		?, ?(there are|there is|with|and) no|without|(not any) ?any ifs|if|buts|but ?, ?ands|and ?, ?or|nor|and|no ?buts|but|maybes ?(about it) $$
		, ?(there are|there is|and) no|without (two ways|arguments|argument|arguing|discussion|debate|excuses|messing|fuss|fussing|quibbles|quibbling|funny business|more discussion|more talk) ?(about) ?(it|that) $$
		, ?(and|but) (not|nor) ?(one|by) ?(a|one) ?single (hair|whisker|hairs|smidge|smidgen|tad|touch|scrap|shade|fraction) (either way|each way|either side|in either direction|one way or the other|this way or that|off|out|more or less|over or under|more nor less) $$
		, come (hell|rain|wind) ?or|and (high|low|sun|shine|weather) ?water $$
		, (come what may|come rain or shine|rain or shine|whatever happens|no matter what|no matter what anybody says|whatever anybody says) $$
		?, whether (he|she|they|you|people|folks|anybody|((the|my|our|his|her) _ ?_)) ?(ever|really) like|likes|agree|agrees|approve|approves|care|cares ?(for|of) ?(it|that) or not $$
		?, and (you|she|he|they|we) (will|would|shall) (hear|get|have) no|(not a)|nothing ?(but|more|further) ?(complaint|complaints|peep|word|moaning|grumbling|whining|fuss|grief|trouble|argument|arguments|thanks) ?(more|further) ?(from|out of) ?ME ?(my|our|the) ?_ $$
		?, and (i|we|everybody|everyone|((the|my|our) _)) (will|shall|am|are|is|'ll) ?be (happy|content|satisfied|delighted|thrilled|pleased|quiet|over the moon|grateful|chuffed|tickled) $$
		?, and (i|we) (will|shall) (shut up|leave you (alone|be|in peace)|stop (bothering|pestering|nagging) you|let you go|buy you a _|stop asking|say no more) $$
		?, and then (it is|i|we|it will be|we can|i can|we will|i will) ?(have|get|go|go to|be|stop for|break for|knock off for|time for|off to|off for) ?(a|the|my|our) (smoko|lunch|tea|coffee|beer|beers|dinner|supper|bed|home|pub|breakfast|cuppa|brew|break|siesta|knock off|cake) ?(time) $$
		, ?(i (am|was) (sure|certain)|i think|i reckon) ((the|my|our|his|her) _) (will|would|does|do|did|shall|wo|could) (not|never) ?(really|even|much) (mind|care|complain|notice|object|know|fuss|argue) ?(much|at all|a bit|either|one bit|about it|the difference|about that) $$
		, (ta|chur|pet|hen|duck|petal|lad|lass|chief|squire|guv|bruv|innit|honey|hon|darling|sweetheart|sweetie|sugar|captain|bud|cobber|doll|(old chap)|(old bean)|(old boy)|(old thing)|(my friend)|(my dear)|(my love)|(big fella)|(big fellow)|(cheers big ears)|(ye ken)|(you ken)|(d'ye ken)|y'all|tah|tar|hear|ye hear|you hear|you hear me|there is a good (_)|there 's a good (_)) $$
		, ?please (do not|no need to|never|and do not) ?(go|you|be) (lose|losing|fret|fuss|worry|stress|sweat|agonize|bother|fussing|worrying) ?(any|your|too) ?(sleep|head|much) ?(over|about) ?(it|that) ?(too much) $$
		, (close|near|thereabouts) ?enough is ?(good enough|fine|plenty|ok|okay|close enough|near enough) ?(for ME) $$
		, (whatever|whichever) (is|'s) (easy|easiest|best|handiest|simplest|simpler) ?(for (you|ME)) $$
		, (plus or minus|dealer 's choice|((it is|that is) (your (call|choice|pick)|up to you))|(your (call|choice|pick))|((you|just) (choose|pick|decide)|(pick|choose|take) (what|whatever) is best)) $$
		?, (when|whenever) you (get|have|find) ?a ?(free|spare) (chance|minute|moment|second|sec|mo) $$
		?, if you can (manage|swing|do|wangle) (it|that) $$
		?, if it is to (pass|work|hold|last|hold up|stay up|pass inspection) $$
		, ?and (i|we) ?(really|do) mean|meant|means (it|that|business) $$
		, (wherever|however|whatever|whichever way) (it|that) ?best (comes|falls|lands|ends|works|turns|suits|fits|happens to (fall|land|end)|goes) ?(out|up|best|well|for you) $$
		, ((the|my|our) _ ?_ ?_) (is|are) on (its|his|her|their) way ?(over|here|home|now|already) $$
		, (like|so it is|so we are|so i am|so he is|so she is|so they are|so it does|so it will|so you do|but) $$`},
	{Said: ", (did|do|have|are|had) not we|i ?, ?(so|and) ?please ?(let us|just|you can) (use|take|keep|go with|do|enter|set|put|stick with) ?(in|down) (that|it|this) ?(one|then|please) $$", Where: figureStands},
}

// framedSets are the frames in which a quantity and its value are said.
var framedSets = []phrase.Placed{
	// A verb of fastening, noting or choosing.
	{Said: "^ ?(please|kindly|just|now) nail|lock|pin|peg|freeze|pencil|ink|chalk|cement|lodge|clamp|anchor ?down|in|up !THEQ ?down|in|up|off at|to|as #", Plain: "set $1 at $2", Where: nil},
	{Said: "!we|i|you|us|to ?(please|kindly|just|now) nail|lock|pin|peg|freeze|pencil|ink|chalk|cement|lodge|clamp|anchor ?down|in|up !THEQ ?down|in|up|off at|to|as #", Plain: "$1 set $2 at $3", Where: nil},
	{Said: "?(please|kindly|just) pencil|mark|put|chalk|jot|note|write ME in|down ?for|at|with|as #", Plain: "i want $1", Where: forQuantity},
	{Said: "^ ?(please|kindly|just|now) lock|pencil|ink|chalk|nail|pin in|down #", Plain: "i want $1", Where: forQuantity},
	{Said: "put|mark|have|stick|jot|write|pencil|note # down for|as|under|on|against", Plain: "put $1 for", Where: nil},
	{Said: "(go with)|use|take|have|put # as !THEQ ?(from (here|now) (on|out)) $", Plain: "set $2 to $1", Where: nil},
	{Said: "to ?(please|kindly) come|work|turn|land|measure out|in to|at|as|on #", Plain: "to be $1", Where: nil},
	{Said: "^ set|put|fix|peg|make|give ME !THEQ ?at|to|as #", Plain: "set $1 at $2", Where: nil},
	{Said: "^^ ?so you|(you (all|two|guys|lot|folks)) can|could|may ?just|now|then|(go ahead and) !make|set|put|have|leave|keep|bring|take|use|enter|give|go|call|write|space|build", Plain: "please $1", Where: figureFollows},
	{Said: "i'ma|imma ?gonna", Plain: "i will", Where: nil},
	{Said: "# will|would|should|'d do|suit|serve|answer ?us|me|(the job) ?just grand|fine|nicely|rightly|lovely|(the trick)|perfectly|well|splendidly|handsomely|rightly", Plain: "$1", Where: statedToEnd},
	{Said: "^ ?(please|kindly|just|now) plug|punch|key|type|dial|feed|slot|pop|bung|chuck|whack|register|log|enter|record|file|put|mark|book ?in|up|down # ?in|into|down for|as|under|against !THEQ $", Plain: "$2 should be $1", Where: statedToEnd},
	{Said: "^ ?(please|kindly|just|now) dial|update|amend|revise|crank|tune|wind|notch|click|punch ?in|up|down !THEQ ?in|up|down to|at #", Plain: "set $1 to $2", Where: nil},
	{Said: "!THEQ would|will|is|are|looks|look|works|work|sits|seems ?be ?just best|nicest|happiest|prettiest|handiest|finest|comfiest at|with|as #", Plain: "$1 should be $2", Where: statedSo},
	{Said: "^ ?so|and ?(you|we|i|you had|we had|i had) best ?(to) !make|have|set|put|keep|leave|take|use|go|call|build", Plain: "please $1", Where: figureFollows},
	{Said: ", ?so|and|then ?please ?(let us|we will|just) (do (that|it|so)|make it (so|happen|that way|like that)|make that happen) ?please|then", Plain: ", so use that", Where: phrase.BothHold(ClaimBefore, phrase.BothHold(figureStands, endsUnasked))},
	{Said: "so|and ?please ?(let us|we will|just) (do (that|it|so)|make it (so|happen|that way|like that)|make that happen) ?please|then", Plain: ", so use that", Where: phrase.BothHold(ClaimBefore, phrase.BothHold(figureStands, endsUnasked))},
	{Said: "^ ?please|and|so target|(set (our|my) sights on) #", Plain: "aim for $1", Where: nil},
	{Said: "should|must|shall|(has to)|(have to)|(needs to)|(need to)|(ought to) measure ?(about) #", Plain: "should be $1", Where: nil},
	{Said: "^ ?(i|we) was|were|am|are|have ?been hoping|wishing|hopeful|keen ?that !THEQ could|might|would|can|will reach|be|get|come|go|stand|run ?to|at|up|in|out ?to|at ?(?total (height|width|depth|length) of)", Plain: "$1 should be", Where: valueNext},
	// Whose word it is.
	{Said: "^^ what|all i|we|(all of us) ?(really|actually|just) want|need|like|(would like)|(am after)|(are after)|(have in mind)|picked|chose|(settled on)|(decided on)|(agreed on)|(have settled on)|(came up with) for|on|with|as|of|about !THEQ is|are|'s|(would be)|(will be)", Plain: "$1 should be", Where: valueNext},
	{Said: "^^ my|our|((the) (short|magic|simple|honest|final|lucky)) ?(final|own|new|preferred|favorite) figure|number|value|pick|choice|answer|preference|decision|verdict|wish for|on|as|about|with !THEQ is|are|'s|(would be)|(will be)", Plain: "$1 should be", Where: valueNext},
	{Said: "^^ my|our ?(final|own|new) vote|pick|choice|preference|answer|money|wish is|(would be)|(goes to)|(is going to)|for|'s ?(for) #", Plain: "i want $1", Where: forQuantity},
	{Said: "^^ (everyone|everybody|(all of us)|(we all)|we|((the|my|our) (whole|entire) _)) ?(here|involved|at|in|on|round) ?(the|my|our|this) ?(table|house|family|crew|office|site|team|party|kitchen|household|meeting|shop) ?have|has picked|chose|chosen|likes|like|wanted|wants|want|(voted for)|(settled on)|(agreed on)|(decided on)|(went for)|(plumped for) # for|on|as !THEQ , ?so|and ?(please|let us|just) go|use|do|take|enter|put|set|keep|stick ?with ?(in|down) it|that|this $$", Plain: "$2 should be $1", Where: nil},
	{Said: "^^ i|we will|would|shall|could not ?(ever|possibly) settle|accept|take|have|hear|stand ?(for|of) anything|(any other) ?(number|figure|else) but|except|besides|(other than) #", Plain: "i want $1", Where: forQuantity},
	{Said: "^^ (my|our|the|his|her) _ ?_ (will|would|can|could) ?(only|just|happily|gladly) accept|take|allow|tolerate|(live with)|(put up with)|(be happy with)|(be fine with)|(settle for)|(sign off on)|(go along with)|(agree to) !THEQ ?(to (be|stay|land|sit|remain)) ?(anywhere|anything|somewhere) between|from # and|to # $", Plain: "$1 between $2 and $3", Where: statedToEnd},
	{Said: "^^ (the|my|our) _ ?_ needs|requires !THEQ to !be|stay|sit|land|remain|come", Plain: "$1 should be", Where: valueNext},
	{Said: "# sounds|seems|looks|feels ?just right|good|fine|grand|great|perfect|nice for|on|with|as !THEQ $", Plain: "$2 should be $1", Where: statedToEnd},
	{Said: "^^ CLIENT|PERSON|((the|my|our) _) ?has|have ?just|now (signed off on)|okayed|approved|blessed|(green lit)|(said yes to)|(agreed to)|(gave the nod to)|(gave the okay to)|(gave the go ahead for) # for|on|as !THEQ $", Plain: "$2 should be $1", Where: statedToEnd},
	{Said: "(let us)|we|i|(we have)|(i have) ?all shake|shook|shaken|land|landed|converge|converged|(zero in)|(zeroed in)|(come round)|(come around) ?(hands) on|to #", Plain: "i want $1", Where: forQuantity},
	{Said: "^^ (PERSON|((my|our|the) _)) ?has|have talked|argued|sold|persuaded|convinced|won ME into|on|to|of|over ?to ?(going with|having|taking|go with) #", Plain: "i want $1", Where: forQuantity},
	{Said: "i|we am|are ?really|rather|quite|very partial|keen|fond|sold|set|happy|content|fixed to|on|of|with|for #", Plain: "i want $1", Where: forQuantity},
	// The value before the quantity, which is named after.
	{Said: "^^ ?bang|spot|dead|right|make|say ?(on|it) !(?(anywhere|anything|something|somewhere) ?(between|from) # [(to|and|through|thru) #]) ,|.|;|-|-- that|this|it ?will is|'s|be ?(what|all) ?i|we ?(want|need|like|(am after)|(are after)|(have in mind)|(would like)) ?my|our|the ?final|last ?answer|number|figure|pick|choice|word|verdict|decision ?for|on|about|with|as !THEQ ?sorted|settled|done|decided|fixed|finished|then $$", Plain: "$4 $1", Where: nil},
	// The quantity is asked after by who answers it.
	{Said: "^^ !THEQ \\? !([(make it)|(let us say)|say|call it|i want|(i would say)|i say] [about|around|roughly|(more or less)] [anywhere|anything|something|somewhere] [between|from] # [(to|and|through|thru) #]) ?(please|thanks|i think) $", Plain: "$1 $2", Where: statedToEnd},
	{Said: "^^ (as (far|much) as|so far as|as for|when it comes to|regarding|concerning|with regard to|with respect to|as regards|talking of|speaking of) !THEQ ?(goes|is concerned|go|are concerned) ,|:|;|-|-- ?then|well", Plain: "$1 :", Where: valueNext},
	{Said: "^^ !THEQ that is|(will be)|'s ?just ?(going to|gonna) be", Plain: "$1 is", Where: valueNext},
}

// framedRanges are the frames in which a value is said about so, or between two.
var framedRanges = []phrase.Placed{
	{Said: "i|we am|are ?(kind|sort) ?of thinking|picturing|imagining|(looking at)|envisioning ?of|on ?(maybe) ?somewhere|something !about|around|roughly|near|approximately #", Plain: "i want $1 $2", Where: forQuantity},
	{Said: "somewhere|something|somewheres|someplace round|around|roundabout|abouts ?about ?abouts|(and about) #", Plain: "about $1", Where: nil},
	{Said: "round|around|about|near|nearabouts|(close to) # mark", Plain: "about $1", Where: nil},
	{Said: "?a ?bit|little|touch|shade|hair|smidge ?on either|each side of # ?(is|will be|would be) ?(fine|ok|okay|good|grand|alright)", Plain: "about $1", Where: nil},
	{Said: "should|could|can|may|to|will ?just hover|float|hang|hold|stay ?somewhere around|about|near|(close to)|(in the vicinity of) #", Plain: "should be about $1", Where: nil},
	{Said: "^^ i|we am|are ?all|quite|perfectly|totally open|happy|fine|ok|okay|good|easy|content|comfortable|grand to|with|on|about ?having anything|anywhere|something|somewhere|whatever ?between|from # and|to|through # for|on|as|with !THEQ $", Plain: "$3 between $1 and $2", Where: statedToEnd},
	{Said: "^^ ?(the|my|our) lower|bottom|minimum|least|smallest|low limit|bound|end|figure|value|number for|on|of !THEQ is|at # , ?and ?(the|my|our) upper|top|maximum|most|biggest|largest|high|highest ?limit|bound|end|figure|value|number ?is|at #", Plain: "$1 between $2 and $3", Where: statedToEnd},
	{Said: "^^ ?(the|my|our) lower|bottom|minimum|least|smallest|low limit|bound|end|figure|value|number for|on|of !THEQ is|at # and ?(the|my|our) upper|top|maximum|most|biggest|largest|high|highest ?limit|bound|end|figure|value|number ?is|at #", Plain: "$1 between $2 and $3", Where: statedToEnd},
	{Said: "from|between # through|thru #", Plain: "from $1 to $2", Where: nil},
	{Said: "inside|within # and #", Plain: "between $1 and $2", Where: nil},
	{Said: "- > #", Plain: ": $1", Where: nil},
	{Said: "anything|anywhere|something # to|through #", Plain: "between $1 and $2", Where: nil},
	{Said: "somewhere|anywhere|something|anything|someplace in|within|inside range|region|bracket|span|band ?(of|from|between) # to|through|and|- #", Plain: "between $1 and $2", Where: nil},
	{Said: "^^ ?(the) ?(allowed|acceptable|allowable|permitted|working|good) range|limits|bounds|band|window for|on|of !THEQ ?(:|is|,|are|being|-|--) ?(from|between) # to|through|and|thru # $", Plain: "$1 between $2 and $3", Where: statedToEnd},
	{Said: "^^ ?(anywhere|anything|something|somewhere) ?(from|between) # to|through|and|thru|(up to)|(on up to) # ?(is|are|'s|would be|will be|sounds|sound|feels|feel|seems|looks|look) ?(just|all|quite|perfectly) fine|grand|good|ok|okay|great|dandy|lovely|perfect|acceptable|brilliant|right|alright|nice|sound for|on|with|as !THEQ $", Plain: "$3 between $1 and $2", Where: statedToEnd},
	{Said: "^^ # through|thru|(up to)|(on up to)|(all the way [up] to) # for|on|as|is !THEQ $", Plain: "$3 between $1 and $2", Where: statedToEnd},
	{Said: "restrict|limit|confine|constrain|restrain|contain|bound !THEQ to|within|in ?(be|stay) ?(somewhere|anywhere|something) ?(in|within|inside) ?(the) ?(range|region|band|bracket|limits) ?(of) ?(from|between) # to|through|and|thru #", Plain: "$1 between $2 and $3", Where: nil},
	{Said: "# or # or ?(anything|anywhere|something|whatever|any|somewhere ?(else|that is|that falls|that lies|figure|number|value)) between|(in between)|inbetween|(in the middle) ?(them|those|the two)", Plain: "between $1 and $2", Where: nil},
	{Said: "^^ you ?can ?have|(have got) # to|through|and # to ?(play|work|move|go) ?(around|about) with|by|in for|on|with|as !THEQ $", Plain: "$3 between $1 and $2", Where: statedToEnd},
	{Said: "!THEQ (should|must|may|can|shall|is|could|will|ought|do|does) not ?(ever|to|be allowed to|allowed to) stray|wander|drift|fall|go|get|land|slip|end|come|be ?(up|out) outside|beyond|(out of)|(outside of) ?(the) ?(range|limits) ?(of) ?(from|between) # to|and|through #", Plain: "$1 between $2 and $3", Where: nil},
	{Said: "# at|as|for ?the ?very ?bare least|minimum|lowest|smallest ?, and|, ?and # at|as|for ?the ?very most|maximum|highest|largest|biggest for|on|with|as !THEQ $", Plain: "$3 between $1 and $2", Where: statedToEnd},
	{Said: "!(# (and|to|through) #) inclusive|(both included)|(ends included)|(including both)", Plain: "$1", Where: nil},
	{Said: "^^ (it|that) does not ?(really|actually|particularly) matter ?(much|to ME|a lot|exactly|a great deal|one bit|at all) ?(what|where) ?(it is|it lands|exactly) ,|;|.|-|-- ?(just) ?(so|as|provided|providing|but) ?(long as|that) !THEQ", Plain: "$1", Where: valueSoon},
	{Said: "^^ i|we do not|never ?(really|much|particularly) mind|care|fuss|worry ?(much|too much|at all|exactly) ?(about|what|where|over) !THEQ ?(is|lands|comes out|ends up) ?, ?just ?(so|as|provided|providing) ?(long as|that) (it|they|that) ?(is|are|'s|stays|falls|lands|comes|ends|stay|sits) ?(out|up|in)", Plain: "$1 is", Where: valueNext},
	{Said: "^^ ?(it|that|there) ?(is|'s|are|will be) no (worries|problem|problems|bother|trouble|drama|dramas|harm|fuss|odds) ?(at all|here) ?(to ME|for ME|by ME|with ME) if !THEQ (lands|falls|comes|ends|sits|goes|is|are|works|stays|turns) ?(out|up|in) (anywhere|somewhere|anything|something) between|from # and|to|through # $", Plain: "$1 between $2 and $3", Where: statedToEnd},
	{Said: "^^ i|we (do not|would not|never) ?(really|much|particularly) mind|care|fuss if !THEQ (lands|falls|comes|ends|sits|goes|is|are|works|stays|turns) ?(out|up|in) ?(anywhere|somewhere|anything|something) between|from # and|to|through # $", Plain: "$1 between $2 and $3", Where: statedToEnd},
	{Said: "^^ (it is|that is|i am|we are|it 's) ?(all|quite|perfectly|just) (fine|ok|okay|good|happy|easy|content|alright|right|grand) ?(by|with|for) ?ME if !THEQ (lands|falls|comes|ends|sits|goes|is|are|works|stays|turns) ?(out|up|in) (anywhere|somewhere|anything|something) between|from # and|to|through # $", Plain: "$1 between $2 and $3", Where: statedToEnd},
}

// figureFollows: a figure is said behind it.
func figureFollows(_, after []scan.Atom) bool { return chunk.Figured(after) && !asksAtEnd(after) }

// figureStands: a figure stands before it, and nothing is asked.
func figureStands(before, after []scan.Atom) bool { return chunk.Figured(before) && !asksAtEnd(after) }

// statedToEnd: nothing but a stop comes behind it.
func statedToEnd(before, after []scan.Atom) bool {
	return phrase.EndsLine(before, after) && !asksAtEnd(after)
}

// statedSo: nothing but a stop comes behind it, or that it is to be done.
func statedSo(before, after []scan.Atom) bool {
	return statedToEnd(before, after) || len(after) > 2 && (after[0].Text == "so" || after[0].Text == ",") && !asksAtEnd(after)
}

// asksAtEnd reports whether a stretch ends in a question mark.
func asksAtEnd(in []scan.Atom) bool { return len(in) > 0 && in[len(in)-1].Text == "?" }

// framedSubject: what is spoken of follows, with its article, and a figure.
func framedSubject(_, after []scan.Atom) bool {
	if len(after) > 0 && (after[0].Text == "on" || after[0].Text == "for" || after[0].Text == "with") {
		after = after[1:]
	}
	return len(after) > 2 && (after[0].Text == "the" || lex.Owned[after[0].Text] || lex.Speakers[after[0].Text]) && figureFollows(nil, after)
}

// forQuantity: "for the …" follows, to the end of the clause.
func forQuantity(_, after []scan.Atom) bool {
	return len(after) > 2 && (after[0].Text == "for" || after[0].Text == "on" || after[0].Text == "as") && (chunk.Noun[after[1].Text] || lex.Owned[after[1].Text] || after[1].Text == "every" || after[1].Text == "each")
}

// bindsValue are words that bind a value to what it is of, before it.
var bindsValue = scan.WordSet("about around roughly approximately near between from at to is be it make a an somewhere anywhere anything something least most exactly just say")

// valueNext: a value follows, behind no more than words that bind it.
func valueNext(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 5; i++ {
		if phrase.StartsLength(measure.Reader{Atoms: after}, i) {
			return !asksAtEnd(after)
		}
		if !bindsValue[after[i].Text] && after[i].Text != "," {
			return false
		}
	}
	return false
}

// valueSoon: what follows says that it is between two values.
func valueSoon(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 8; i++ {
		if w := after[i].Text; w == "between" || w == "from" {
			return valueNext(nil, after[i:])
		}
	}
	return false
}
