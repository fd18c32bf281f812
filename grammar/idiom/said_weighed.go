package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// weighedClaims are ways to bring somebody's figure, to put it on the scales and to ask whether it holds. Set plain early, as a claim
// must not be taken for what is wanted.
var weighedClaims = []phrase.Placed{
	{", or so ?the|my|our ?_ he|she|they|PERSON|fella|fellow ?(next door) tells|says|told|claims|said|reckons|thinks|swears|believes ?me|us $", ", he says", figureBefore},
	// What the speaker himself once thought, behind what is.
	{", ?and but|though|although|even ?though i|we ?had ?originally|first|always|just|only thought|figured|assumed|believed|guessed|reckoned|imagined|supposed|expected ?that it|they|that was|were|is|are|(to be)|(would be) ?about|around # ?(at first|before|originally|all along) $", "", factBefore},
	{"but|though|although ?though i|we ?had ?originally|first|always|just|only thought|figured|assumed|believed|guessed|reckoned|imagined|supposed|expected ?that it|they|that was|were|is|are|(to be)|(would be) ?about|around # ?(at first|before|originally|all along) $", "", factBefore},
	{", ?and ?but|though|although i|we ?had expected|guessed # ?(at first|before|originally|all along) $", "", factBefore},
	// Who would have it so.
	{"^ ?the|a|my|our|his|her PERSON|PAPER wants|wanted|expects|expected|(is asking)|(would want)|(wishes) me|us|everyone|everybody|you|people to believe|think|accept|swallow|trust|imagine ?that", "he says", figureToCome},
	{"^ ?the|a|my|our|his|her PERSON|PAPER is|are|was|were|keeps trying|attempting|hoping|out to tell|convince|persuade|assure|sell me|us|everyone|everybody ?on ?that", "he says", figureToCome},
	{"^ i|we am|are supposed|meant|expected|asked|told|urged|invited to believe|think|accept|swallow|trust|(take it on faith)|(take it as read)|(take it as gospel) ?that", "they say", figureToCome},
	// Where it is written.
	{"^^ ?and|so|, ?(there is)|(there was)|it ?_ ?_ ?note|line|figure|number|scribble|remark|comment ?written|pencilled|penciled|scribbled|scrawled|jotted|noted|typed ?down in|on|from the margin|margins ?of ?_ ?_ ?PAPER ?it|that|which ?says|reads ?, ?: ?that ?-", "the drawing says", figureToCome},
	{"^^ ?and|so somebody|someone|PERSON|the ?PERSON has|have|also ?also|just added|wrote|left|put|scribbled|penciled|pencilled|jotted|scrawled ?down a|the|some ?_ note|line|scribble|remark|comment ?_ ?at|in|on|along|by|beside|near|to|for ?the|his|her|me|us ?_ ?_ :|(, saying)|saying|reading|((that|which|it) (says|reads))|-", "the drawing says", figureToCome},
	{"^^ ?it|that ?is written|pencilled|penciled|scribbled|scrawled|jotted|noted|typed|printed|stamped|marked ?in|down in|on|at|along|by|beside|under|underneath|across|over|above ?the|his|her|that|its ?_ ?_ edge|corner|margin|side|foot|back|front|cover|end|sheet|it|PAPER ?it|that ?says|reads|is ?, :|,|- ?it|that ?says|reads ?, ?that", "the drawing says", figureToCome},
	{"^ ?it ?just says|reads|states ?right ?here on|in|at|inside|under the|this|that|his|her|my|our ?_ book|tag|box|label|bag|packet|package|carton|wrapper|sticker|sign|card|screen|side|lid|tin|website|internet|web|net|page|site ?here ?, ?that", "the drawing says", figureToCome},
	{"?the|a|my|his ?little ?yellow|pink ?sticky|stuck|taped ?sticky (post - it)|(sticky note) ?stuck ?on ?the|his|her|my|our ?_ PAPER|wall|post ?which|that|it says|reads|has|gives ?, ?that", "the drawing says", figureToCome},
	{"there is|was a ?_ (sticky note)|(post - it)|sticker|label ?stuck ?on|to|beside|at ?the|his|her|my|our ?_ PAPER ?(that|which|it) ?says|reads|saying ?:|,|-", "the drawing says", figureToCome},
	// By what is read out of it.
	{"^^ ?and|so if i|we ?have|am|are ?only|just ?now read|reading|understood|understand|understanding|interpret|follow|followed|got|deciphered|decipher his|her|their|the|this|that ?_ PAPER|writing|handwriting|scribble|scrawl|hand|scribbles ?properly|right|rightly|correctly|well|aright ?,", "the drawing says", figureToCome},
	{"^^ ?and|so unless i|we ?am|are|have ?badly|completely ?mistaken|wrong|misremember|misremembering|misread|misheard|misreading ?it|that|him|her|this|them ?, !he|she|they|it|((the|his|her|my|our|their|this|that) [_] (PAPER|PERSON))", "$1", figureToCome},
	{"^^ ?and|so if i|we am|are ?not mistaken|wrong|misremembering|misreading ?it|that|him|her|this|them ?, !he|she|they|((the|his|her|my|our|their|this|that) [_] (PAPER|PERSON))", "$1", figureToCome},
	{"^^ ?so|well ?, i|we do|can not ?quite|really|rather ?at ?all trust|believe|buy|credit|swallow ?the ?look|sound ?of this|that ?one|figure|number|claim|bit|part ?here ?at ?all :|-|(- -)", "he says", figureToCome},
	{"^^ ?i|we ?am|are not sure|certain|convinced|happy about|of|on|by|with this|that|his|her ?one|figure|number|claim|bit|part ?here :|-|(- -)", "he says", figureToCome},
	{"^^ ?i|we ?am|are|have suspicious|doubtful|wary|unsure|skeptical|sceptical|suspicions|doubts of|about this|that|his|her ?one|figure|number|claim|bit|part ?here :|-|(- -)", "he says", figureToCome},
	{"^^ something|this|that|(this one)|(that one) looks|look|seems|sounds|smells|feels is ?a ?bit|little ?rather|quite|very ?off|wrong|fishy|odd|funny|strange|suspicious|shady ?here ?to ?me :|-|(- -)", "he says", figureToCome},
	{"^^ something|this|that|(this one)|(that one) looks|look|seems|sounds|smells|feels ?a ?bit|little ?rather|quite|very off|wrong|fishy|odd|funny|strange|suspicious|shady ?here ?to ?me :|-|(- -)", "he says", figureToCome},
	// Put on the scales.
	{"^^ ?please|now|can|could|would ?you ?please hold|put|set|lay|run|match|check|measure|compare|test|stack|weigh|see ?how ?just this|that|these|those|it|them|((his|her|their|the|our|my) [PERSON [' s|'s]] [_] (number|figure|total|numbers|figures|claim|sum|plan|measurement|count|price|answer|result)) ?compares|compare|stacks|stack|does|do|(lines up)|(line up)|looks|look ?up against|beside|with|to|past|alongside|by|over|(next to)|(side by side with) yours|(your [own] (number|numbers|figure|figures|sum|sums|total|math|result|results|answer|answers|layout|count|price)) ,|:|;|-|.|(- -)", "he says", figureToCome},
	{"^^ ?please|now|can|could ?you ?please hold|put|set|lay|match|check|measure|compare|test|stack|weigh yours|(your [own] (number|numbers|figure|figures|sum|total|result|answer|count)) ?up against|beside|with|to|alongside|by|(next to) this|that|these|those|his|hers|theirs|((his|her|their|the|our|my) [PERSON [' s|'s]] [_] (number|figure|total|numbers|figures|claim|sum|plan|count|price|answer|result)) ,|:|;|-|.|(- -)", "he says", figureToCome},
	{"^^ how|is|are|was ?good|sound|safe|reliable|accurate|right|solid|trustworthy ?is|are|was his|her|their|((the|my|our) PERSON 's) ?_ number|figure|value|count|claim|measurement ,|: !(?.. # ?..) $$", "he says $1 , is that right ?", nil},
	{"^^ ?so|and how|does ?well|good|sound|safe|sure|solid|right|accurate ?does|do|is|would ?be !(?.. # ?..) ?hold|stand|check ?up|out ?,|?|.|- ?because|since|as ?that|it|this ?(is what)|(is how) ?the|his|her|my|our|their|this PERSON|PAPER says|has|shows|wrote|gives|told|got|puts ?it|so|me|us $$", "he says $1 , is that right ?", nil},
	{"^ do|does|will|would|can|could his|her|their|((the|my|our) (PERSON|PAPER) 's) ?_ number|figure|value|count ?of # for|on|as|at !(*) ?really|still|even stand|hold|check|add ?up|out|water $$", "he says $2 is $1 , is that right ?", nil},
	{"^ do|does|will|would|can|could his|her|their|((the|my|our) (PERSON|PAPER) 's) !(## (RAIL|STIFF|POST|BAY|OPENING)) ?figure|number|count|idea|claim|total|stack ?really|still|even stand|hold|check|add ?up|out|water ?then $$", "he says $1 , is that right ?", nil},
	{"hold|stand up|water ?then|(to scrutiny) $$", "check out", phrase.BothHold(figuresBefore, theirFigureBefore)},
	{"^^ is|are|was|were # ?!((on center|centers|centres|apart|(center to center)) [for [the] STIFF]) ?!((for|on|as|at) *) ?really|actually right|correct|true|ok|okay ?for ?!(*) , ?just|exactly like|as|the|(that is) ?way|what ?his|her|their|my|our|the PERSON|PAPER|it ?had|has wrote|drew|said|says|writes|written|drawn|put|told|gave|gives|shows|puts|reckons|got ?it|down|so ?me|us ?it|down|so $$", "he says $1 $2 $3 $4 , is that right ?", nil},
	{"^ does|do|did|has|have ?the|his|her|their|my|our ?_ PAPER|PERSON have|has|get|got it|that|this ?all|really right|correct that ?(the|all|all the|every|each)", "is it true that all the", saidAfterOf(scan.WordSet("length lengths equal same"))},
	{"^^ ?please ?can|could ?you ?please see|check|tell|find ?me ?out whether|if !(## (RAIL|boards) (at|with|and) # [between] [them]) really|actually|do|does|will|would ?really|actually get|gets|bring|brings|take|takes|add|adds|come|comes|make|makes|give|gives|put|puts|end|ends ?you|me|us|it|him|her|up ?up ?out ?to|at|a|in ?wall|height ?of # high|tall|up ?wall $$", "he says $1 , wall height $4 , is that right ?", nil},
	{"^^ ?the|his|her|their|my|our PAPER|PERSON leaves|leave|makes|make|cuts|cut|keeps|keep ?all ?the !RAIL|bays ?all !(((of|at|to) [the] (same|one|equal) (length|size|width))|(the same [length|size|width])|equal|(equally (long|wide))) ?, does|do|did|is not it|he|she|they ?, ?check ?that|it $$", "he says all the $1 are $2 , is that right ?", nil},
	// Said twice: the later figure is the one to be checked.
	{"^^ ?at|to ?start|begin ?with ?, first|originally|initially ?, ?the|my PERSON|PAPER said|wrote|had|put|gave|told|showed|drew|claimed|reckoned ?me|us ?down ?for ## !RAIL|STIFF|POST|BAY|OPENING ,|.|;|and|but ?and|but then|now|later|afterwards ?he|she|they|it ?has|have ?then ?changed|corrected|said|says|made|makes|wrote|put|puts|switched|crossed|went ?his|her|their ?mind ?it|that ?out|down ?and ?wrote|put ?to|for|with ## , ?and ?so ?please ?just check|verify|test|confirm|try ?the|that ?##|second|last|latter|later|newer ?one|figure|number|it $$", "he says $3 $2 , is that right ?", nil},
	{"^^ ?the|my PERSON|PAPER said|wrote|had|put|gave|told|showed|drew|claimed|reckoned ?me|us ?down ## !RAIL|STIFF|POST|BAY|OPENING (at first)|first|originally|initially|before|earlier|(to begin with)|(to start with) ?, ?and|but then|now|later|afterwards|is ?he|she|they|it ?is ?now ?has|have ?then ?changed|corrected|said|says|saying|made|makes|wrote|writes|put|puts|switched|went|(up to)|(down to)|at ?it|that ?to|for|with ## , ?and ?so ?please ?just check|verify|test|confirm|try|(is) ?the|that ?##|second|last|latter|later|newer|right ?one|figure|number|it $$", "he says $3 $2 , is that right ?", nil},
	{"^^ ?the|my PERSON ?has|have crossed|struck|rubbed|scratched out ?the|his|her ## ?!RAIL|STIFF|POST|BAY|OPENING , ?and ?has wrote|put|written|penciled|pencilled ?in|down ## ?!RAIL|STIFF|POST|BAY|OPENING ?instead|(next to it)|(above it)|(over it)|(beside it) ,|.|; ?is|are ?that|it|## ?right|correct|true|ok|okay $$", "he says $3 $2 $4 , is that right ?", nil},
	{"^^ ?the|my PERSON ?has|have crossed|struck|rubbed|scratched out ?the|his|her # , ?and ?has wrote|put|written|penciled|pencilled ?in|down # for|as !(*) ,|.|; ?is ?that|it|# ?right|correct|true|ok|okay $$", "he says $3 is $2 , is that right ?", nil},
	{", ?oh|sorry|no|wait ?, hold|hang|wait on ?, that|it|this ?one|figure|number ?there is|was ?really|actually|meant|supposed ?to ?be ?a|an #|eight|eighteen , !(# [RAIL|STIFF|POST|BAY])", ", no , $2", figuresBefore},
	{", no|oh|sorry|wait ?, ?hold|hang|wait ?on ?, that|it|this ?one|figure|number ?there is|was ?really|actually|meant|supposed ?to ?be ?a|an #|eight|eighteen , !(# [RAIL|STIFF|POST|BAY])", ", no , $2", figuresBefore},
	// His figure and mine.
	{"^ !PERSON|PAPER|(PERSON 's PAPER) !says|said|has|put|puts|wrote|gets|shows|gives|got|drew !.. ,|and|but|while|whereas ?though i|we have|had|put|drew|set|make|made it|that|this|mine|ours at|as|down|to ?at|as|for # , ?and ?so ?please ?just|let ?us|me enter|use|take|go|put|keep|set|trust|believe|write|record ?with|in|down|by mine|ours|((my|our) [own] (figure|number|one|value|measurement))", "$1 $2 $3 , i get $4 , go with mine", nil},
	// What one makes of it.
	{"^ what do|does|would|did you|anyone|anybody ?really|honestly make|think|say|reckon of|about|to ?the|his|her|their|my ?_ claim|claims|idea|notion|theory|figure|opinion|assertion|view|belief|contention that !(?.. # ?..) $$", "he says $1 , is that right ?", nil},
	{"^ would|do|could|can|will you ?also ?really|ever go|agree|sign|concur|(be happy)|(be fine)|hold ?along ?off with|on|to !(?.. # ?..) , which|that is ?just ?exactly what|how the|his|her|their|my|our PERSON|PAPER ?it says|gives|has|puts|shows|got|gets|claims|wrote|drew ?it $$", "he says $1 , is that right ?", nil},
	{"^^ nobody|(no one) ?'s|has|have|is ?yet|ever ?ever double|re ?- checked|verified|tested|confirmed|checked|rechecked ?over|out !(?.. # ?..) , ?so can|could|would|will you ?please ?do ?it|that|so ?for ?me $$", "check $1", nil},
	{"^ ?(last (night|week|month))|yesterday|earlier|today|(this (morning|afternoon|week))|((a day|an hour|a week) ago)|(the other day)|(just now) ?, ?the|a|my|our|his PERSON|brother|sister|uncle ?has|just texted|emailed|messaged|wired|faxed|whispered ?me|us ?in|over|up|down|back ?with|saying|to ?say|tell ?me|us ?that ?:|,", "he says", figureToCome},
	{"!order|bid|quote|permit|delivery|sales form|pad|confirmation ?here !lists|has|says|shows|reads|gives|asks", "$1 $2", nil},
	{"!could|can|might|may he|she|they|PERSON possibly|perhaps|really|actually|ever|even be right|correct ?in ?saying|thinking", "$1 he be right", nil},
	{"^ ?the|a|my|our PERSON ?has|would ?just|gladly bet|bets|wagered|wagers|wager ?me|us ?the|a ?# ?dollar|dollars|bucks|beer|lunch|coffee|dinner|anything|money|drink|house|shirt ?that", "he says", figureToCome},
	{"^ ?uncle|aunt|auntie|cousin|grandpa|grandma|mr|mrs|miss|old|brother|sister _ !has|says|said|reckons|thinks|claims|got|put|wrote|figures|swears|insists !(?.. # ?..) , ?so|and|but ?please ?can ?you check|verify|test|confirm ?on ?uncle|aunt|auntie|cousin|grandpa|grandma|mr|mrs|miss|old|him|her|that|it ?_ ?for ?me|us $$", "he $1 $2 , is that right ?", nil},
	{", ?and|but ?(that is) ?something|which|though|what i|we ?do ?rather|really|very|strongly|seriously ?much doubt|question|dispute|distrust|(have my doubts about)|(have trouble with) ?it|that ?though $$", ", is that right ?", claimNotMine},
	{"^ he|she|they|PERSON is|are|must|'s|has ?to ?be ?way|far|totally|completely|all|miles off|out|wrong|mistaken|nuts|dreaming|crazy ?by ?a ?mile|lot|long ?way|shot with|about|on|saying|claiming ?that ?his|her|their !(# ?..) , is|are|does|do|has|have not ?he|she|they $$", "he says $1 , is that right ?", nil},
	{"^^ ?the|his|her|my|our old|first|previous|earlier|original|last PAPER|one|version had|has|said|says|showed|shows|called|gave ?for ## !RAIL|STIFF|POST|BAY|OPENING ,|;|.|and|but|while ?and|but|while ?the|his new|newer|second|latest|later|current|revised|other PAPER|one|version has|had|says|said|shows|calls|gives ?for ## ,|.|;|- ?and ?so ?please check|verify|test|confirm|try ?the|that ?new|newer|second|latest|later|current|revised|last ?one|PAPER|version $$", "the plan has $3 $2 , is that right ?", nil},
	{"^ both|all|most|(two|three) ?of ?them|these|those|the|my|us ?_ ?PERSON say|said|claim|claimed|reckon|think|believe|insist|swear|agree ?on ?that", "they say", figureToCome},
	{"^ !PERSON|PAPER|(PERSON 's PAPER)|((his|her|their) (math|arithmetic|tape|sums|figures|numbers)) !says|said|has|put|puts|wrote|gets|shows|gives|got|say|give !.. ,|and|but|while|whereas ?though mine|ours|((my|our) [own] (math|arithmetic|tape|sums|figures|numbers|drawing|plan|sketch)) says|said|say|is|are|gives|give|shows|reads|gets|has|comes|come ?out ?to|at # , ?and ?so ?please ?just|let ?us|me enter|use|take|go|put|keep|set|trust|believe|write|record ?with|in|down|by mine|ours|((my|our) [own] (figure|number|one|value|measurement))", "he says $3 , i get $4 , go with mine", nil},
	{"^ ?the|his|her|my|our !PERSON|PAPER !has|says|shows|gives|puts|got # , ?but|and|though|yet i|we ?have|had ?just|only measured|got|get|read|find|found|make|made ?it|only ?as|at # for|on|at|as !(the _ [_]) $", "$1 says $5 is $3 . i measured $5 $4", nil},
	{".|,|;|-|? ?can|could|do ?you ?see|find|spot ?there ?is|are ?there ?any|a mistakes|mistake|errors|error|slips|blunders|blunder|slip|howlers ?in|on|there|here ?there|that|it|them|those $$", ", is that right ?", claimOrPaper},
	{".|,|;|-|? does|do|will|would|is|are ?all it|that|this|those|they|these ?all match|fit|agree|square|jibe|jive|compare|tally|line|in ?line ?up ?with|to what|anything|how ?that you ?would|will|'d|have|had ?have expect|expected|figure|figured|get|got|say|see|saw|come|came|make ?up ?with ?too $$", ", is that right ?", claimOrPaper},
	// Told with an aside, or as one thing of several.
	{", ?and i|he|she|(i am) quote|quoted|quoting|swear|(kid you not)|(do not kid you) ,|: ?that", "that", claimAhead},
	{"^ ?his|her|their|the claim|assertion|statement|point|item|figure ?number ?# one|two|three|four|1|2|3|4 :|-", "he says", figureToCome},
	{"^ ?the|his|her|their|my|our !PERSON|he|she|they ?has|had put|puts|drew|set|made|makes|built !(?.. # ?..) and|but ?he|she|they swears|says|thinks|claims|reckons|insists ?that|it|this ?would|will ?that|it|this fits|works|holds|fit|work|hold|goes|go|do|does|(is right) ?here ?too|(as well)|fine $", "he says $2 , is that right ?", nil},
	{"!says|said|claims|claimed|thinks|reckons|swears|insists|figures ?that there is|will|would ?be|'s ?plenty|enough ?of room|space for", "$1", nil},
	{"!PERSON is|are|'s positive|adamant|confident|convinced ?that there is|will ?be|'s ?plenty|enough ?of room|space for", "he says", nil},
	{"^ ?and|so his|her|their number|figure|value|measurement|dimension for|on|of the whole|entire|full|total job|lot|thing|wall|material|materials|order is|was ?only #", "he says it all costs $1", nil},
	{"^ ?and|so his|her|their number|figure|value|measurement|dimension for|on|of !(the _ [_]) is|was ?only #", "he says $1 is $2", nil},
	{"!PERSON threw|tossed|floated|bandied|bandies|throws ?out|around|about ?the number|figure", "he says", figureToCome},
	{"^ ?an|the|my|his|her ?_ calculator|app|spreadsheet|computer|program gave|gives|spat|spits|handed ?out ?him|her|them|me|us", "the drawing says", figureToCome},
	{"!PAPER from last|this|yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday ?week|month|year|time|summer|night !say|says|have|has|show|shows|give|gives|said|had", "$1 $2", figureToCome},
	{"^ ?and|so if my|our|the math|sums|arithmetic|figuring|reckoning|addition is|are|'s right|correct|ok|sound ?, ?then", "is it true that", figureToCome},
	{"^^ ?please correct|tell|stop|shout ?out|at ?me if|when|where i am ?wrong|mistaken|off|lying :|,|-|but", "is it true that", figureToCome},
	{"^ ?so|and do|does|would|will|can !(## (RAIL|boards) (at|with|and) # [gaps|spaces|between] [them]) really|actually|all ?really|actually add|come|work|go|get|make|give|total ?up|out ?to|at # ?high|tall $", "he says $1 , wall height $4 , is that right ?", nil},
	{"^ ?so|and do|does|would|will|can !(## (RAIL|boards) (at|with|and) # [gaps|spaces|between] [them]) add|come|work|go|total up|out ?to|at # ?high|tall $", "he says $1 , wall height $4 , is that right ?", nil},
	{"^ ?a|the callout|remark|footnote|annotation|(section view)|(side view)|(plan view)|(front view) !says|reads|has|shows|calls|gives|wants", "the drawing $1", figureToCome},
	{"^ under|in ?the|his|her|their remarks|notes|comments|legend ?it ?says ?, :", "the drawing says", figureToCome},
	{"^ ?his|her|their marks run|fall|come|land|go ?at|to ?:", "his marks are", figureToCome},
	{".|,|;|-|? ?and is|are|was that|this|it|those|they ?just ?about how|what|where|(the way) ?you|i ?would|'d|will ?also have|put|do|make|set|want|say|mark|cut ?them|it|that|those ?too $$", ", is that right ?", theirsSaid},
	{".|,|;|-|? ?and is|are|was it|that|this|those|they ?still|really|about ?just what|how comes|came|(come out)|(you get)|(you have)|(you see)|(you come up with)|(you end up with) ?it ?out ?too|now|still $$", ", is that right ?", claimOrPaper},
	{"^^ ?please go|walk|run|look ?back through|over|at ?the|his|her|their|my ?PERSON 's|numbers|figures|math|sums|measurements ?numbers|figures|math|sums ?with|for|again ?me|us ?, :|-", "he says", figureToCome},
	{"^^ ?please give his|her|their|the|this PAPER|numbers|figures|math a|the quick|good|proper ?once ?- over|look|check|onceover|read|(going over) ?for ?me ?, :|-", "he says", figureToCome},
	{"^^ ?please give his|her|their|the|this PAPER|numbers|figures|math a|the once|look|check|onceover|read|(going over) ?- ?over ?for ?me ?, :|-", "he says", figureToCome},
	{"!told|tells me|us once|twice|repeatedly|often|(three times)|(over and over)|(more than once) ?now|already ?already", "$1 me", claimToCome},
	{"^ let us|me see|check|find ?out if|whether his|her|their # for|on|as !(*) is|was really|actually ?right|correct|true|ok $$", "he says $2 is $1 , is that right ?", nil},
	{"^ let us|me see|check|find ?out if|whether his|her|their # for|on|as !(*) is|was right|correct|true|ok $$", "he says $2 is $1 , is that right ?", nil},
	// Does it hold, asked behind a claim.
	{".|,|;|-|? ?so|and|but ?and|but|so am|are|is|was|were i|we|it safe|right|wise|okay|ok|foolish|mad|daft|crazy|smart|fine|sensible to ?just trust|believe|(rely on)|(go by)|(go with)|(go on)|(count on)|(build on)|(build from)|(build to)|(bank on)|(cut from)|(cut to)|use|accept|take ?on|for|as ?granted|gospel ?that|it|him|her|them|this|his ?word|number|figure ?for ?it $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? ?so|and|but ?and|but|so would|do|dare|should|shall|could|can|may i|we|you|anyone|anybody ?really|ever|honestly|personally ?safely ?dare|risk ?to bet|gamble|swear|stake|(put ?any|your|good money)|(lay money)|build|cut|order|saw|drill|trust|buy|sign ?any|your|the|a ?house|shirt|life|farm|ranch|dollar|money|savings ?on|to|by|for|from|with|off ?it|that|him|her|this|them|his ?word|number|numbers|figure|figures ?for ?it $$", ", is that right ?", claimBeforeOr},
	{".|; ?but|and ?he|she|they|PERSON 's|is|are|was|has|have ?been ?usually|often|mostly|always|generally|normally|rarely|hardly|seldom|sometimes right|wrong|off|mistaken|careless|sloppy|careful|(full of it) ?before ?about|with ?these|such ?things|numbers|figures ?, ?.|?|; ?and|but|so is|was|are|has he|she|they ?right|wrong ?been ?this|now|here|again ?time ?too $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|?|and ?so|and|but ?is|are|do|does|can|could|would|will|might|should ?it ?be all|both|either|any|each|every|none ?one ?of ?those|them|these|the ?two|three|four|five ?one|figures|numbers|claims|of ?them|those|these ?be right|correct|true|hold|stand|good|ok|okay|agree|check|work|wrong|off|fit|sound|possible|mistaken ?up|out|together|water ?together|(at once)|(at the same time) $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|?|and ?so|and|but do|does|can|could|would|will|might ?all|both ?of those|these|they|the|his|her|their ?two|three|four ?figures|numbers|claims|things|statements|both ?really|even ?all go|fit|hold|work|add|square|jibe|jive|agree|match|belong|tally|sit|stand|live|hang ?up|out|side ?by ?side ?together|(with ((each other)|(one another)))|(at once)|(at the same time) $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? ?is ?that ?it|he fair|reasonable|steep|honest|robbery|daylight|(a (rip - off)|rip|ripoff|fair|good) or|and ?is ?it ?a not|what|unfair|(rip - off)|ripoff|robbery $$", ", is that right ?", phrase.BothHold(amountStood, phrase.SaidBeforeOf(quotesToo))},
	{", ?please|can|could|would|will ?you ?please|just run|check|crunch|work|redo ?through ?the|his|her|their|those|these numbers|figures|math|sums ?on|for|behind|of|with ?that|it|this|them|him|me|us ?for ?me|us ?again $$", ", is that right ?", claimBeforeOr},
	{"^ ?and|so PERSON ?is|are down|in|listed|marked for !(## (RAIL|boards|posts|bays|stiffeners))", "he says $1", nil},
}

// boughtAndKept are ways to tell what is owned, what it may cost and which plan is meant.
var boughtAndKept = []phrase.Placed{
	// What is owned already.
	{"^ ?and|oh|also ?, ?i|we ?have|just|also found|salvaged|unearthed|discovered|scrounged|uncovered|((came|come) across)|((dug|turned|picked) up)|((dug|pulled|fished) out) ?another !## ?more|extra|other|further|additional|old", "i have $1", woodAhead},
	{"^ ?and|oh|also ?, (there is|are) ?another ## more|extra|other|further|additional !(?# @) ?!lying|sitting|stacked ?!(..) in|behind|under|up|out ?in ?behind the|my|our|his ?_ garage|loft|attic|barn|shed|basement|cellar|truck|trailer|van|garden|house|porch", "i have $1 $2 in the garage", nil},
	{"^ ?and|oh|also ?, ?the|a|my|our|his ?_ PERSON|boy|uncle is|are|has|have|also|'s ?also ?just letting|giving|lending|handing|bringing|passing|dropped|dropping|brought|left|let me|us|off|over|round ?have|take|keep|use|on|over", "i have", woodAhead},
	// What it may cost.
	{"^ * kill|kills|murder|murders|divorce|divorces|scream|screams|fit|roof|mad|trouble|skin|skins|shoot|shoots|faint|faints|cry|broke|dead|angry|furious|complain|balk|stroke|upset|cross|nuts|bananas|spare ?me|us|alive if|when|once|should it|this|that|lot|((the|my|our) [whole] (bill|total|cost|lumber|material|materials|wood|job|thing|price)) ?ever|all ?runs|run|goes|go|costs|cost|comes|come|gets|get|is|ran|went|came|climbs|climb ?up ?to|out|in ?at over|above|past|beyond|(more than)", "the budget is", sumAhead},
	{"^ * kill|kills|murder|murders|divorce|divorces|scream|screams|fit|roof|mad|trouble|skin|skins|shoot|shoots|faint|faints|cry|broke|dead|angry|furious|complain|balk|stroke|upset|cross|nuts|bananas|spare ?me|us|alive if|when|once|should it|this|that|lot|((the|my|our) [whole] (bill|total|cost|lumber|material|materials|wood|job|thing|price)) ?ever|all costs|cost|costed|(comes to) over|above|past|beyond|(more than)", "the budget is", figureToCome},
	{"^ ?.. draws|draw|drew|(am drawing)|(is drawing) the|my|her|his line ?for|on ?the ?_ at", "the budget is", sumAhead},
	{"^ i|we|he|she|they can|could|will|would|may|am|are|is ?happy|willing|prepared ?to go|stretch|run|pay|spend ?to ?up ?to # ?dollars|bucks and|but|, ?and|but not ?one|a|another|single cent|penny|dime|nickel|dollar|buck|cents ?more|over|beyond|further|past", "the budget is $1 dollars", nil},
	{"on|for|toward|all ?the ?whole|entire lot|shebang|caboodle|shooting ?match $", "", phrase.BothHold(figuresBefore, phrase.SaidBeforeOf(scan.WordSet("dollars bucks spend spending pay paying")))},
	{", ?and (that|it) is it|all|everything|that ?(that (i|we) (have|got)) ?to ?spend $$", "", phrase.SaidBeforeOf(scan.WordSet("spend spending budget"))},
	{"bill|list of material|materials|quantities", "shopping list", nil},
	{"!(## @ ?s ?pieces|lengths|boards|sticks|blocks|bits) , # each|apiece|(in length)", "$1 at $4", phrase.SaidBeforeOf(scan.WordSet("need want also plus besides"))},
	// Spares.
	{"for luck|insurance|((good|better) (measure|luck))|safety|(safety 's sake)|(a rainy day) $", "just in case", sparesBefore},
	{"in case|(for when)|lest ?that|when i|we|he|she|somebody|someone|one ?should ?of ?us ?them botch|botches|ruin|ruins|spoil|spoils|mess|miscut|crack|cracks|split|splits|break|breaks|wreck|butcher|waste|boards ?goes|go ?bad ?up ?a|one|something|some|any ?cut|board|one|saw $", "just in case", sparesBefore},
	{"throw|toss|chuck|put|pop|slip|stick in|on ?me ?an extra|spare|additional ?board|rail|plank|stick|length ?on|in INCASE $", "one extra board just in case", nil},
	{"get|buy|grab|order|add ?me|us ?an extra|spare|additional ?one|board|rail|plank|stick INCASE $", "one extra board just in case", nil},
	{"^ ?and an extra|spare|additional board|rail|plank|stick INCASE $", "one extra board just in case", nil},
	// What the yard has.
	{"some|(plenty of)|(lots of)|(a [_] (lot|batch|pile|stack|load|truckload|bunch|few) of)|(a few) !eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?just|have|has in|came|arrived|rolled ?in $", "$1 came in", nil},
	{"^^ ?just in|arrived|received ?today|now|(this morning) :|,|- ?some !eights|tens|twelves|fourteens|sixteens|eighteens|twenties", "they have $1 too", nil},
	{"^ ?(there is)|they ?have ?got nothing|none ?left|now in|of ?the !eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?left|now|today|there ?today $", "they are out of $1", nil},
	{"^^ ?post caps ?are|is|run|cost|at|for ?about # each|apiece|ea", "post caps are $1 each", nil},
	// What shall be got out of it.
	{", whatever|whichever|however that|it|way ?may|might|could|is|takes|turns|happens|one ?out ?to ?be ?is $$", "", phrase.SaidBeforeOf(scan.WordSet("cheapest least fewest smallest"))},
	{"do|make|build|cut|plan|lay it|this|that|everything ?out with the least waste|scrap", "least waste", nil},
	// Plans by their names.
	{"^ ?ok|okay|so|now ?, pull|load|bring|fire|call !_ back|up and|then|,|; ?then !show|give|tell|print|draw|how|what|where|compare|list|work", "open $1 , $2", namedNext},
	{"^^ ?please|can|could ?you put|set|stack|pit|weigh|stand|lay|measure|hold !_ ?up against|alongside|beside|(next to) !_ ?for ?me|us ?, ?and|, ?tell|show|see ?me|us how|which|what ?do|does|would|is ?the|they ?two|both ?of ?them ?plans|designs|layouts|walls|they ?really ?stack|measure|line|compare|differ|better|cheaper|different ?up ?out ?like $$", "compare $1 with $2", nil},
	{"^^ ?ok|okay|right|then|so|fine|well ?, the !first|second|third|fourth|fifth one|way|option|choice ?out it is ?then ?please|thanks $$", "take the $1 way", nil},
	{"^ ?and|also|oh ?, do not forget|(never forget)|remember ?that ?also i|we|he|she ?already|also|still ?have|own|(have got)|('s got) ?already|also|still", "i have", woodAhead},
	{"keep|hold it|this|things|everything|lot|bill|total|cost|spending ?all ?down|somewhere to|within|around", "the budget is", phrase.BothHold(phrase.StartsClause, sumAhead)},
	{"^ ?my|our|the money|cash|funds|dough 's|is|are ?a|bit|little ?very|pretty|rather tight|short|scarce|limited ,|;|.|: ?so ?it|that|make ?is ?it !(# ..) tops|max|maximum|(at ?the most)|limit ?please $", "the budget is $1 dollars", nil},
	{"bump|hike|jack|push|kick|nudge ?up ?the|my|our !budget ?up ?by", "raise the $1 by", nil},
	{"what am|are i|we in for|looking ?at ?, ?on|in|for ?the money|cost|dollar|dollars|price|price ?- ?wise|side|terms $$", "what does it cost", nil},
	{"do not|never ?you ?ever|go waste|wasting|squander|(throw away) ?any|much|so|too ?much ?of ?the ?good wood|lumber|timber|material|boards", "least waste", nil},
	{"hundred|(100)|(one hundred) ?- ?count|piece pack|box|bag|tub ?of screws", "box of 100 screws", nil},
	{"!eights|tens|twelves|fourteens|sixteens|eighteens , and !tens|twelves|fourteens|sixteens|eighteens|twenties", "$1 and $2", nil},
	{"^ ?i|we ?would|want ?like|to ?to keep|save|hold ?on ?to this|that|it ?one|plan|design|version|layout ,|and|so|; ?and|so ?please|let ?us|we|i ?will|can call|name|label|title it|this|that ?one ?the !_ $$", "save this as $1", nil},
	{"^^ ?so|and what ?has ?'s changed|differs|different|(the difference) ?is between|from this|that ?one|plan|wall|design|layout and|to|with !_ $$", "compare this with $1", nil},
	{"^^ ?oops|whoops|oh|no|sorry|wait|hm ?, ?that|it|this ?was|is ?not what i|we ?had|was|am ?just meant|wanted|(had in mind)|after|intended|asked ?for ,|.|;|- ?so ?please undo|reverse|cancel|((take|put) (it|that) back) ?that|it|this $$", "undo", nil},
	{"^^ ?ok|okay|right|so|all ?, ?let ?us ?go|start|begin ?again|back|over ?from the top|beginning|start|scratch ?again ?please ,|.|;|- ?and ?with everything|all ?is|all new|fresh|again|anew|over $$", "start over", nil},
	{"^^ ?ok|okay|right|then|so|fine|yes ?, the !first|second|third|fourth|fifth option|way|choice|(way out) ?then ?, ?please|thanks|(thank you)|then $$", "take the $1 way", nil},
	// Taken back in a lot: which of them is asked.
	{"forget|drop|scrap|erase|delete|clear|wipe|lose|remove ?out all|every|each ?of ?the|my|your !prices|measurements|measurement|readings|reading|quotes|price", "forget the $1", nil},
	{"forget|drop|scrap|erase|delete|remove ?about ?the|those !boards|lumber|wood|posts i|we ?already have|own|had|got", "forget what i own", phrase.EndsLine},
	{"save|store|keep ?all ?of my|our|the work|progress|stuff|job ?so ?far $", "save this", nil},
	{"let us|me do|try|start|begin|take ?all this|it|everything|that ?all ?again|over ?from the beginning|start|top|(square one) ?again $$", "start over", nil},
	{"let us|me do|try|start|begin|take ?all this|it|everything|that ?all again|over ?from the beginning|start|top|(square one) $$", "start over", nil},
	{"!will|would|can|do|does|should|could !i|we|it|that|this|they|everything stay", "$1 $2 remain", nil},
	{"^ reuse|(re - use) ?the|my|those|our", "i have", woodAhead},
	{"^ ?there ?is|are !(## ?_ ?# @ ?s) ?that i|we can|could|will|want ?to ?still reuse|use|(use up)|(make use of) $", "i have $1", nil},
	{"some|(a few)|(a bunch of)|(plenty of) # came|arrived|(are in) ?in $", "$1 came in", nil},
	{"^ i|we|they|(the yard) ?have|just ?just got|took|received in ?some|(a few) # ?boards $", "they have $1 too", nil},
	{"^ the|their only @ ?s ?that they|we|you|(the yard)|(the store) ?had|have|has|sell|carry|stock|got|sold ?left was|were|are|is|come|came ?in|all # ?long ?ones $", "$1 only come in $2", nil},
	{"cut|take|saw|slice # off|from ?of each|every board|stick|length ?just to|for ?get|make|have squaring|square ?up ?it|them|the ?end|ends ?up", "trim is $1", nil},
	{"^ ?ok|okay|please ?, ?please name|call|title|label it|this|that ?one|plan ?the !_ and|,|then ?then|, save|store|keep|file ?it|this|that ?away ?for ?me|us|later $", "save this as $1", nil},
	{"^ ?oh|actually|no|wait ?, i|we ?do|would want|need|like|liked that|the|my ?last change|step|edit ?put back ?in ?after ?all $", "redo", nil},
	{"^^ ?well|ok|right ?, so long ,|and|. ?and ?thanks|bye|everybody|everyone|(thank you) $$", "bye", nil},
	{"^^ ?ok|okay|great|right ?, ?and that would|'d|will be all|it|everything ?for ?now|today|me ,|. ?thanks|(thank you) ?(so much)|(very much) $$", "bye", nil},
	{"^ same ?old wall|job|plan|thing|one|project as yesterday|before|always|usual|(last (time|week|night)) ,|.|;|:|-", "", namedNext},
	{"^^ ?thanks|thank ?you ?, that|this ?really ?does ?all helps|helped ?me ?a ?lot|much ,|. ?so|now|and", "", moreBehind},
	{"!undo|redo !that|it|(the last one) though $$", "$1 $2", nil},
	{"^^ ?ok|okay|right|well|oh ?, i ?have|must|need|got|gotta|better|should ?to run|dash|leave|scoot|fly|go ?now|soon ,|.|;|- ?so|but|and ?please !save|print|give|show|tell|draw|store", "$1", nil},
	{"^ ?i|we ?have ?just|also got|had|heard word|news|wind ?today ?of ?it ?that they", "they", nil},
	{"!# ?dollars|bucks from|(out of) ?the|my|our budget $", "$1 off the budget", phrase.SaidBeforeOf(scan.WordSet("take shave pull cut"))},
	{"mind terribly|awfully|dreadfully", "mind", nil},
	// What was told up to here.
	{"what ?all has|have|did|had he|she|they|i|we ?already ?been told|tell|given|give|said|say|put ?to ?you ?in ?((up to|until|till|as of) now)|(so far)|(up to here)|(to date)|(up to (this|that) (point|minute|moment))|already ?about ?it|this ?wall ?? $$", "what have i told you so far", nil},
	{"^^ ?whoops|oops|oh|no|sorry ?, ?i did not mean ?to ?do|say|type|put that|it|to ?at ?all ,|.|;|- ?so ?please take|put ?it|that back $$", "undo", nil},
	// Going.
	{"^^ ?ok|okay|right|well|thanks|great ?, ?and ?so that is all|it|everything|me|enough|done|(the lot) ?then ?for ?now|today|me ,|.|;|and ?so|and (i am|we are|i will be|i have got to|i have to|i must|i better|i had better) ?now off|heading|headed|going|on|gone|driving|go|get|run|leave|be ?to|out|over|back|away|my ?going|off ?way ?to|for ?home|the|my|our|lunch|bed|dinner|supper|church|yard|work|town ?yard|store|shop|lumberyard|house|site|job|station|game|hospital ?now|then ?, ?thanks|(thank you) ?, ?bye|goodbye|(good night)|(see you)|cheers|ciao|later $$", "bye", nil},
	{"^^ ?ok|okay|right|well ?, ?(i am|we are) ?now off|heading|headed|gone ?out|over|back to|for|home ?the|my|our yard|lunch|store|shop|lumberyard|bed|dinner|supper|work|town|home ?now|then ?,|.|- ?thanks|(thank you) ?, bye|goodbye|(good night)|(see you ?_)|cheers|ciao|later|(talk later) $$", "bye", nil},
	{"^^ right|ok|okay|well|that ?, ?is ?it ?, (i am|we are) ?now away|off ?to ?the home|hame|house ?now|then $$", "bye", nil},
	{"^^ ?sorry|oh|wait|no|hmm ?, i|we do|can|am not ?really|quite follow|understand|(get it)|(get this)|(get any of this)|following|(know what to (say|do|type|ask)) ?you|this|it|any ?of ?this ,|.|;|-|: ?please|some|send ?me help ?me ?please $$", "help", nil},
	{"^^ ?i|we ?am|are|do ?just|still ?really not sure|certain|know what|how i|to ?can|could|should|am ?supposed ?to ?to say|type|ask|put|enter|write|talk ?to ?you|it|this ?here $$", "help", nil},
}

// measuredAbout are ways to tell what was measured, with the tool, the place and the state of it.
var measuredAbout = []phrase.Placed{
	{"?when|if ?i|we ?have|had ?just put|held|hold|set|laid|tried|checked ?with ?a|my|the level|plumb|plumbbob|bob|straightedge|line ?bob|line ?up ?right on|against|to|by|along|beside|at|up ?the !LEFT|RIGHT ?hand ?end post ,|;|.|and ?and it|that|he|this ?is|reads|read|shows|showed|was|came ?me off|out|over|leaning ?by # ?over ?to|toward|towards the !left|right in|over|per|across #", "the $1 post leans $2 to the $3 over $4", nil},
	{"?when|if ?i|we ?have|had ?just put|held|hold|set|laid|tried|checked ?with ?a|my|the level|plumb|plumbbob|bob|straightedge|line ?bob|line ?up ?right on|against|to|by|along|beside|at|up ?the !LEFT|RIGHT ?hand ?end post ,|;|.|and ?and it|that|he|this ?is|reads|read|shows|showed|was|came ?me off|out|over|leaning ?by # in|over|per|across # , ?over|leaning ?to|toward|towards the !left|right", "the $1 post leans $2 to the $4 over $3", nil},
	{"!LEFT|RIGHT ?hand ?end post hangs|keels|lists|cants|droops|slumps ?over|off|out ?to|toward|towards ?the !left|right", "$1 post leans to the $2", figureToCome},
	{"^ ?and ?the|at spot|place|space|slot|point where|that|for !(RAIL ##) goes|sits|belongs|lands|(will go)|(is going)|(has to go)", "$1", figureToCome},
	{"at|along|across the !top|bottom edge ?of !bay ##", "$1 of $2 $3", figureToCome},
	{"!(bay ##) ,|: ?the !first|second|third|fourth|fifth ?one|rail|board ?up from|off the bottom|floor ?,|: ?is|reads|at", "$3 rail in $1 is", figureToCome},
	{"!bay ## (' s)|'s upper|top end|edge|part|side", "the top of $1 $2", figureToCome},
	{"!bay ## (' s)|'s lower|bottom end|edge|part|side", "the bottom of $1 $2", figureToCome},
	{"wants|takes|needs # by|with|on my|the|our tape|reckoning|measure", "measures $1", nil},
	{"measured|measuring ?across|from|to ?the outside|out ?to ?outside ?of ?the end posts ?, ?: ?it ?is|reads|got|i ?get|comes ?to #", "outside to outside of the end posts is $1", nil},
	{"!left|right hand ?side|end|edge of FLOOR is|'s|sits|lies|runs|comes up|higher|high # from|over|above|(higher than)|(compared to) ?the ?left|right|other", "$1 end of the floor is $2 higher", nil},
	{"!left|right side|end|edge of FLOOR is|'s|sits|lies|runs|comes up|higher|high # from|over|above|(higher than)|(compared to) ?the ?left|right|other", "$1 end of the floor is $2 higher", nil},
	{"!left|right side|end|edge of FLOOR is|'s|sits|lies|runs|comes down|low|lower # from|below|under|(lower than)|(compared to) ?the ?left|right|other", "$1 end of the floor is $2 lower", nil},
	{"bubble|level ?is|'s|reads|shows off|out|uncentered|(not (centered|level|centred|in the middle)) on|at|against|along the !LEFT|RIGHT ?hand ?end post ,|:|;|- ?by|about # ?over|out|leaning ?to|toward|towards the !left|right in|over|per|across #", "the $1 post leans $2 to the $3 over $4", nil},
	{"caliper|calipers|micrometer ?now ?says|read|reads|reading|say|show|shows|gives|give ?me ?at # for|on|across ?the|my|our|these ?face ?of ?the|my|our !RAIL|boards", "the rails are $1 across the face", nil},
	{"screwed|bolted|nailed|fastened|fixed|hung|mounted|attached ?down|on|up|in|fast ?already|now ?(for (good|keeps|ever))|(to stay)|permanently ,|;|- ?and|with ?its|the top ?edge|side ?is|sits|of ?up ?at #", "screwed on , its top is at $1", boardNamed},
	{"(there is no|no) moving|shifting !(RAIL ##)|((first|second|third|fourth|bottom|top) RAIL) ?, ?: ?it|that ?is ?already up|fixed|hung|on|fastened ?already ?and|with|, ?and|with ?its top ?edge ?is|at|sits ?at #", "$1 is screwed on , its top is at $3", nil},
	{"FLOOR 's|is|runs ?all ?out|not|off ?of ?true|level|flat|square|plumb|kilter|even|crooked|skewed|uneven ,|:|;|- ?because|since|and ?it is|sits|runs|lies|comes|goes", "floor is", figureToCome},
	{"FLOOR 's|is|runs ?all ?out|not|off ?of ?true|level|flat|square|plumb|kilter|even|crooked|skewed|uneven ,|:|;|- ?because|since|and ?the !left|right ?hand end|side|post is|sits|runs|lies", "floor at the $1 end is", figureToCome},
	{"!EARTH ((over|out|down) (yonder|there))|yonder|outside|([out|over] (past|beyond|behind) [the] wall) ?'s|is|lies|sits|runs ?!about|roughly|around # lower|below|under|down|beneath|deeper ?than ?what ?it ?the ?in ?(floor level)|(slab level)|floor|slab|patio|us|here|(we are)|(where (i|we) stand)|inside ?in|on ?this ?here|side|it|is", "the ground outside lies $2 $3 lower than the floor", nil},
	{"that|the|this|my|our|these rail|board|plank ?' ?s stock|material|lumber ,|and ?and it|they is|are|reads|measures|measured|comes|came ?to ?out ?at ?to # !across|wide|face|(in the face)|(on the face)", "the rails , they are $1 $2", nil},
	{"would|could|might|will not|never ?ever|want ?to go|drop|dip|come ?down under|below|(less than)|(lower than)|(smaller than) #", "want at least $1", phrase.BothHold(selfBefore, gapBehind)},
	{"would|could|might|will not|never ?ever|want ?to go|run|come ?up over|above|past|beyond|(more than)|(wider than) #", "want at most $1", phrase.BothHold(selfBefore, gapBehind)},
	{"!no|sorry|wait|oops|actually|rather ?, ?make|call|say ?it|that # at most|tops|maximum|max", "$1 , at most $2", figuresBefore},
	{"!no|sorry|wait|oops|actually|rather ?, ?make|call|say ?it|that # at least|minimum|min", "$1 , at least $2", figuresBefore},
	{",|; oh|ah|well|aw|eh ?, ?all ?right|alright|ok|okay|fine|no ?, ?back ?to|make ?it # after all|then", ", no , $1", figuresBefore},
	{",|; ?and those|them|these|they|all ?are|of ?to ?be ?them ?made|cut|ripped|sawn ?out of @ $", ", make them $1", phrase.SaidBeforeOf(scan.WordSet("stiffener stiffeners braces battens rails boards posts slats"))},
	{",|; and ?made|cut|ripped|sawn out of @ $", ", make them $1", phrase.SaidBeforeOf(scan.WordSet("stiffener stiffeners braces battens"))},
	{"stretches|sections|runs|panels|bays with|of|full ?of ?the rails|boards|slats ?in|between ?between ?them|it|each", "bays", countedJust},
	{"places|spots|openings|ways|holes for|to|where ?people|you|us|we|one ?can|to walk|pass|get|go|come ?on through", "openings", countedJust},
	{"^^ in my|our|those|the|his ?old|young|good|younger day|days|time|youth ?, ?* ?# ?* ,|.|; ?but|and|yet here|now|today|(this time)|((on|for|at|in) (this|the present|the new) ?_)|me|nowadays ?, !i|we|it|let|make|the|my|you", "$2", figureToCome},
	{"^^ back home|then|there|east|west ?, ?* ?# ?* ,|.|; ?but|and|yet here|now|today|(this time)|((on|for|at|in) (this|the present|the new) ?_)|me|nowadays ?, !i|we|it|let|make|the|my|you", "$2", figureToCome},
	{"^^ normally|usually|ordinarily|generally|(as a rule)|(most of the time)|((on|at|for|with) (the|my|our) last|other|previous|old|earlier _) ?, ?* ?# ?* ,|.|; ?but|and|yet here|now|today|(this time)|((on|for|at|in) (this|the present|the new) ?_)|me|nowadays ?, !i|we|it|let|make|the|my|you", "$2", figureToCome},
	{"^ ?and|so ?in|for|the|on !(bay ##)|((first|second|third|1st|2nd|3rd) BAY) ?, ?: ?the RAIL|(RAIL by RAIL)|(each RAIL) ?, ?going|starting|working ?up ?from ?the ?bottom|floor ?up|on ?to ?top ?i ?get|got|read ?are|is|measure|read|come|:|,|to|at # , ?and|then # ?, ?and|then #", "$1 rail 1 is $3 , rail 2 is $4 , rail 3 is $5", nil},
	{"!(bay ##)|((first|second|third|1st|2nd|3rd) BAY) ?,|: ?starting|going|working ?up ?at|from the bottom ?up|rail ?, ?: # , ?and|the|then next ?one|rail|board ?up|after|above ?that ?is|at|comes|reads ?, # , ?and ?then ?the ?next|last|top|third ?one|rail ?up ?is|at|, #", "$1 rail 1 is $3 , rail 2 is $4 , rail 3 is $5", nil},
	{"!rail 1|one ?is|at|was|reads # , ?and|the|then next ?one|rail|board ?up|after|above ?that ?is|at|comes|reads ?, # , ?and ?then ?the next|last|top|third ?one|rail ?up ?is|at|, #", "rail 1 is $2 , rail 2 is $3 , rail 3 is $4", nil},
}

var quotesToo = scan.WordSet("quote quotes quoting quoted charging charges estimate bid bill price asking wants says dollars")

// theirFigureBefore: a question about what is somebody else's goes on here.
func theirFigureBefore(before, _ []scan.Atom) bool {
	if len(before) == 0 || before[0].Text != "do" && before[0].Text != "does" && before[0].Text != "will" && before[0].Text != "would" {
		return false
	}
	for _, a := range before[1:min(len(before), 6)] {
		switch a.Text {
		case "his", "her", "their", "'s":
			return true
		}
	}
	return false
}

// saidAfterOf reports whether one of some words stands behind a place.
func saidAfterOf(words map[string]bool) func(before, after []scan.Atom) bool {
	was := phrase.SaidBeforeOf(words)
	return func(before, after []scan.Atom) bool { return was(after, nil) || was(before, nil) }
}

// woodAhead: a size of lumber or a length of it follows, counted.
func woodAhead(_, after []scan.Atom) bool {
	for i := 1; i < len(after) && i < 9; i++ {
		if after[i].Text == "x" || after[i].Text == "by" {
			return chunk.Figured(after)
		}
	}
	return false
}

// sparesBefore: something is bought beyond what is needed.
func sparesBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("extra spare spares additional more over"))(before, nil)
}

// namedNext: what is named before is no thing of the wall.
func namedNext(_, after []scan.Atom) bool { return len(after) > 0 }

// selfBefore: the speaker was named right before.
func selfBefore(before, _ []scan.Atom) bool {
	return chunk.LastOf(before, 1) == "i" || chunk.LastOf(before, 1) == "we"
}

// gapBehind: what may not pass it is named behind.
func gapBehind(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Text == "between" || after[0].Text == "betwixt" || after[0].Text == "on" || after[0].Text == "for" || after[0].Text == "under")
}

// claimOrPaper: somebody claimed something before, or his paper has it, with a figure.
func claimOrPaper(before, after []scan.Atom) bool {
	return claimBeforeOr(before, after) || amountStood(before, after) && len(before) > 1 && (papersRead[before[1].Text] || papersRead[before[0].Text] || papersRead[chunk.LastOf(before, 1)])
}

var papersRead = scan.WordSet("receipt worksheet sheet sketch drawing plan plans quote estimate bid bill invoice note notes ticket printout list")

// sumAhead: an amount of money is next, and ends its clause.
func sumAhead(_, after []scan.Atom) bool {
	cost := false
	for i, a := range after {
		if chunk.EndsPart(after, i) {
			return cost && i > 1
		}
		if i > 6 || i == 0 && a.Kind != scan.Digits && a.Text != "$" && !chunk.SpelledNumber(a.Text) {
			return false
		}
		cost = cost || a.Text == "dollars" || a.Text == "bucks" || a.Text == "$"
	}
	return cost && len(after) > 1
}

// claimNotMine: somebody else claimed something before, and the speaker told nothing of his own.
func claimNotMine(before, after []scan.Atom) bool {
	return claimBeforeOr(before, after) && !phrase.SaidBeforeOf(scan.WordSet("i we my our"))(before, nil)
}

// factBefore: a figure is told before as what is, by nobody else, and nobody asks which of the two it is.
func factBefore(before, after []scan.Atom) bool {
	return figureBefore(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("if says say said claims what how why thinks told suppose drawing plan sheet sketch"))(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("? right wrong which check true sure so"))(after, nil)
}

// claimToCome: what is claimed follows, with a figure.
func claimToCome(_, after []scan.Atom) bool {
	return chunk.Figured(after) && len(after) > 2
}

// theirsSaid: something of somebody else's, or what he claims, was told before.
func theirsSaid(before, after []scan.Atom) bool {
	return claimOrPaper(before, after) || len(before) > 0 && (before[0].Text == "his" || before[0].Text == "her" || before[0].Text == "their")
}

// claimAhead: a claim was begun right before.
func claimAhead(before, _ []scan.Atom) bool {
	return claimVerbs[chunk.LastOf(before, 1)] && len(before) > 0
}

// boardNamed: a rail was named before.
func boardNamed(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("rail board plank slat"))(before, nil)
}

// countedJust: a number stands right before.
func countedJust(before, _ []scan.Atom) bool {
	n := len(before)
	return n > 0 && (before[n-1].Kind == scan.Digits || chunk.SpelledNumber(before[n-1].Text))
}
