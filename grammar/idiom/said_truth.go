package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// truthPhrases are ways to ask whether a figure is true: whether whoever gave it is right, and whether one has got it right oneself.
var truthPhrases = []phrase.Placed{
	// Who is asked about, before what he says.
	{"^ is|was|are|were|could|can|might|may ?be ?the|my|our|his|her|their|that ?old|young PAPER|PERSON ?really|actually|be ?just telling|speaking|lying|fibbing|bluffing|exaggerating|joking|wrong|right|correct|mistaken|off|out ?me|us ?the ?truth when|if|where|in ?it|he|she|they|by|him|her|them saying|says|said|say|claims|claiming|writes|wrote|shows|putting|puts|has|have|tells ?me|us ?that", "the drawing says", numberNear},
	{"^ is|was|are|were|could|can|might|may|would ?the|my|our|his|her|their|that ?old|young PAPER|PERSON ?really|possibly ?be ?all right|correct|wrong|mistaken|off|out about|on|over|with !(*) being|(to be)|(coming (to|out at))|at # $$", "the drawing says $1 is $2 , is that right ?", nil},
	{"^ is|was|are|were|could|can|might|may|would ?the|my|our|his|her|their|that ?old|young PAPER|PERSON ?really|possibly ?be ?all right|correct|wrong|mistaken|off|out about|on|over|with ?there ?being !(## (RAIL|STIFF)) $$", "the drawing says there are $1 , is that right ?", nil},
	{"^ is|was|are|were ?the|my|our|his|her|their|that ?old|young PERSON ?really right|correct|wrong|mistaken ?in to|in count|say|figure|put|draw|have|give|list|quote|reckon|counting|saying|figuring|putting|drawing|having|giving|listing|quoting|reckoning ?that", "he says", numberNear},
	{"^ how|(just how) sure|certain|confident|positive can|could|may|should|am|are i|we|you ?be ?that|about", "is it true that", statesNext},
	{"^ ?so would|might|could|should|will|am|was|were i|we|it ?be ?in|at ?be ?quite right|correct|wrong|mistaken|justified|accurate|fair|safe in|to|when|if ?i|we thinking|think|saying|say|assuming|assume|supposing|suppose|believing|believe|understanding|reckoning|reckon|guessing|guess|concluding|conclude|presuming|presume|figuring|figure|claim|claiming ?that", "is it true that", statesNext},
	{"^ ?please|and|so correct|stop|shout|contradict ?at|tell ?me|us if|when|where i|we am|are|have|get|got ?it ?got ?it wrong|mistaken|off|out|muddled ?here|on|about ?this|that ?, ?but|and|only|though !(..) , is|are|does|do|was not it|they|there $$", "is it true that $1 ?", statedInside},
	{"^ ?please|and|so correct|stop|shout|contradict ?at|tell ?me|us if|when|where i|we am|are|have|get|got ?it ?got ?it wrong|mistaken|off|out|muddled ?here|on|about ?this|that ?, ?but|and|only|though", "is it true that", statesNext},
	{"^ ?surely it|that can|could|may not ?really|ever|possibly be right|true|correct|so that !(..) ?, can|could|may|is it|that $$", "is it true that $1 ?", nil},
	{"^^ surely !(*) is|are|was|were not ?really|actually # ?, ?or is|are|was|were it|they ?\\?|.|,|; ?that|so|or ?is|'s|so ?what ?the|his|her|their ?PAPER|PERSON|he|she|they ?it ?says|has|shows|say|said|reckons|claims $$", "is it true that $1 is $2 ?", nil},
	{"^^ !(* (is|are|was|comes to) #) , or did|has|have|is ?the PERSON|PAPER ?just get|got|gotten|have|make|made|draw|drawn|drew|put ?it|that|this|a|them ?all|down wrong|mistake|slip|error|wrongly|up ?(\\?|.|,) ?please|(can you) ?check|verify|confirm ?it|that|this|please ?please $$", "is it true that $1 ?", nil},
	{"^^ ?(there (are|is)) !(## (RAIL|STIFF)) , or did|has|have|is ?the PERSON|PAPER ?just get|got|gotten|have|make|made|draw|drawn|drew|count|counted|put ?it|that|this|a|them ?all|down wrong|mistake|slip|error|wrongly|up ?(\\?|.|,) ?please|(can you) ?check|verify|confirm ?it|that|this|please ?please $$", "is it true that there are $1 ?", nil},
	{"^ do|would|did you ?really reckon|think|believe|suppose|say|agree PERSON|PAPER ?'s|is|was|are|has ?it ?got ?it right|correct|wrong ?that|when|in|where|by ?(it|he|she|they) ?says|saying|thinking ?that", "is it true that", statesNext},
	// Who gave it, and how.
	{"^ his|her|their|the|this|that|my|our PAPER|price|figure|bill ?was|is|were|are ?all based|built|founded|predicated|calculated|figured|worked on|upon|around|off ?out ?on|from !(*) being|at|of #", "the sketch says $1 is $2", nil},
	{"^ his|her|their|the|this|that|my|our PAPER|price|figure|bill ?was|is|were|are ?all based|built|founded|predicated|calculated|figured|worked on|upon|around|off ?out ?on|from ?there ?being !(## (RAIL|STIFF))", "the sketch says there are $1", nil},
	{"?the|a|my|our PERSON|missus measured|scaled|checked|read|studied|(went over)|(looked over)|(looked at) ?his|her|their|my|our|the PAPER ?.. and|, ?now ?he|she|they ?has|have came|come|went|gone|turned|walked ?away ?back|up|out with|at", "he says", numberNear},
	{"?the PERSON|PAPER ?has|have|shows|show|leaves|leave|gives|makes|allows ?(room|space|place|provision) for !(## (RAIL|STIFF))", "the plan shows $1", notOwnWish},
	{"PERSON was|were|is|are|keeps|keep ?always ?going ?on|banging|harping|rabbiting|wittering on about", "he says", numberNear},
	{"^^ !(# (for|on|as) *) ,|-|. ?(so|or so|at least) says|said|according|reads|reckons ?to ?the|his|her|their|my|our PAPER", "the drawing says $1", nil},
	{"on|in|at|across ?the|one back|front|edge|corner|margin|foot|reverse|rear|flip ?side of ?the|his|her|their|my|our|that PAPER", "on the plan", amountStood},
	{", ?just like|as app|program|software|spreadsheet|calculator|site|video|forum|internet|web ?there ?it says|said|claims|has|reckons|shows ?it $", ", like the plan says", nil},
	{"like|as app|program|software|spreadsheet|calculator|site|video|forum|internet|web ?there ?it says|said|claims|has|reckons|shows ?it $", "like the plan says", nil},
	{"PAPER|PERSON never|not ?once ?does ?ever lets|let|allows|allow|permits|has|takes|(let us) ?a|any|one|the|single !BAY|GAP|OPENING|(bottom gap) ?to ?go|be|get|run|come|exceed ?up past|over|beyond|above|(more than)|(wider than) #", "drawing says every $1 is at most $2", nil},
	{"!PERSON|PAPER insists|insist|insisting|insisted ?is ?on|upon", "$1 says", ownToldBefore},
	{"quotation|quote|estimate|bill|invoice|bid ?that|which he|she|they ?have|has handed|gave|sent|given|showed|mailed|emailed|wrote ?me|us", "quote", numberNear},
	{"quotation|quote|estimate|bill|invoice|bid ?is|was totalling|totaling|totals|totalled|totaled|(adding up to)|(coming (to|in at|out at))|(running to)", "quote comes to", numberNear},
	{", ?but|and ?now when|once|after|as|(as soon as) ?ever i|we ?have|had put|ran|held|laid|pulled|stretched|took|hooked|run ?my|our tape|ruler|rule|measure ?measure ?on|over|across|to|against|along|out ?it|that|there|them|(the (opening|span|wall|gap)) ?myself|ourselves ?, ?now ?it|that|i|we|(the (span|opening|gap|bay))|(the wall height) ?is|was|came|comes|measured|measures|got|get|gets|reads|read|had|found ?out ?to|at #", ", i measured it at $1", claimBeforeOr},
	{"!PERSON is|are|was|were ?dead|absolutely|quite|very|pretty|fairly|utterly|completely|totally certain|positive|convinced|adamant ?that", "$1 says", statesNext},
	{"!PERSON is|are|was|were dead|absolutely|quite|very|pretty|fairly|utterly|completely|totally sure ?that", "$1 says", statesNext},
	{"?the|a|that PERSON on|over phone|line|radio|telly|tv|internet|forum|(other end) ?of ?the ?line|phone", "he", numberNear},
	{"^ ?is|was|could ?there ?be any|some|much truth|sense|substance|merit|basis to|in|behind|for !(*) being|(coming (to|out at))|at # $$", "is it true that $1 is $2 ?", nil},
	{"^ ?is|was|could ?there ?be any|some|much truth|sense|substance|merit|basis to|in|behind|for ?there being !(## (RAIL|STIFF)) $$", "is it true that there are $1 ?", nil},
	{"^^ i|we ?have worked|figured|reckoned|calculated|puzzled !(the *) out as|at|to|(to be) #", "he says $1 is $2", asksBehindThat},
	{"PERSON ?has|have|had marked|marks|noted|jotted|scribbled !(the *) ?down as #", "he says $1 is $2", nil},
	{"WALL ?was|is|be|gets ?to ?be topped|capped|tops|finished|finishes off|out at #", "wall height is $1", nil},
	// One counts oneself, and asks for the same.
	{"^ do|would|did|will|can you also get|make|find|count|see|reach|have ?it|out ?at|to !(## (RAIL|STIFF)) $$", "is it true that there are $1 ?", nil},
	{"^ do|would|did|will|can you get|make|find|count|see|reach|have ?it|out ?at|to !(## (RAIL|STIFF)) too|also|(as well) $$", "is it true that there are $1 ?", nil},
	{"^ do|would|did|will|can you also get|make|find|see|reach|have ?it|out ?at|to # for|on|as !(*) $$", "is it true that $2 is $1 ?", nil},
	{"^^ i|we ?have ?only ?always count|counted|make|get|got|see|saw|find|found ?it !(## (RAIL|STIFF)) ,|;|.|- do|did|would|will|are|have you ?not ?too|also|agree|(get the same)|(the same)|(as well) $$", "is it true that there are $1 ?", nil},
	{"^^ i|we ?have ?only ?always make|get|got|find|found|see ?it # for|on|as !(*) ,|;|.|- do|did|would|will|are|have you ?not ?too|also|agree|(get the same)|(the same)|(as well) $$", "is it true that $2 is $1 ?", nil},
	// Doubts behind what was said.
	{".|,|;|-|? ?please ?could|can|would|will|might ?you ?please ?just go|look|run|check|read|cast ?an ?eye over|through ?it|that|this|his|him|them ?again|once|with|for ?more|me ?please $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? ?please ?can|could|would|will ?you ?please check|see|test|tell|confirm|verify|(find out) ?me|us if|whether he|she|they|it|that is|are|was|has|'s ?got ?it ?quite right|correct|wrong|true|so|mistaken $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? is|are he|she|they ?only ?just having|pulling a ?me|us laugh|giraffe|bubble|(fast one) $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? ?and can|could|would|will|do ?you ?please back|vouch|second|support|corroborate|endorse|bear ?for ?that|it|him|her|them|this ?out|up $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? ?and is|was|could ?there ?be anything|something|much|owt|aught ?at ?all in|to|behind ?it|that|this|(what (he|she|they) (says|say|said)) $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? ?and|or have|did|do|am|was|were i|we ?just|perhaps|maybe ?be ((slipped|slip|messed|mess|tripped|trip|fouled|foul) up)|((go|gone|went) wrong)|((make|made) (mistake|error|slip|blunder))|((make|made) any (mistake|error|slip|blunder))|((get|got) it wrong)|off|wrong|mistaken|(a bit off)|(way off) ?anywhere|somewhere|(along the way)|here|there $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? ?and ?please put|set|correct|straighten ?him|her|them|me|us ?right|straight|out if|where|should ?he|she|they|i|it|that ?is|am|are|be wrong|off|out|mistaken $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? ?is|are ?that|it|he|they legit|kosher|genuine|accurate|sound|gospel|bunk|rubbish|nonsense|true|right|correct|fact|good|bogus or not|bunk|rubbish|nonsense|false|wrong|bogus|garbage|fiction|(made up) $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? is|are|was|were|does|do|did he|she|they|it|that|PERSON ?even talking|speaking|making|make|made|talk ?any|some|out|good|a|load|pack|lot ?of sense|rubbish|nonsense|tosh|tripe|lies|(through his (hat|hole)) $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? did|has|have|does|do|is|are he|she|they|i|we|PERSON ?got|get|do|done|have|had|add|count ?it|them|that|his|her|their|my|our|the ?own sums|sum|maths|math|figures|numbers|arithmetic|count|counting|adding|reckoning ?up right|correct|wrong|straight|correctly|properly ?up|at ?all $$", ", is that right ?", theirsBefore},
	{".|,|;|-|? ?and does|do|will|would|can|could|did ?that|it|this|he|they|she ?really|actually|still stand|hold|check|add|bear|measure|stack|pan|ring|tally|square|wash|fly ?up|out|true|water|(to scrutiny) ?with|against ?your|what ?figures|numbers|sums|plan|you ?have|get $$", ", is that right ?", theirsBefore},
	{".|,|;|- ?which|that ?all strikes|looks|look|seems|sounds|feels ?to ?me|us ?as|like ?being ?rather|quite|somewhat|pretty|a|bit|little|awfully|downright excessive|generous|stingy|mean|skimpy|overkill|odd|strange|off|wrong|fishy|doubtful|suspicious|unlikely|overdone|extravagant|dubious|peculiar $$", ", is that right ?", claimBeforeOr},
}

// trialPhrases are more ways to try something out, for every quantity, and to ask what another would be then.
var trialPhrases = []phrase.Placed{
	// What is tried.
	{"^ say|suppose|imagine|pretend|assume|supposing|assuming ?that i|we|you ?had ?just put|putted|stick|stuck|fit|fitted|hang|hung|shove|shoved|slip|slipped|run|ran|do|did|use|used|take|took|build|built|pick|picked|choose|chose|install|installed|mount|mounted ?in|up|with|for !(## (RAIL|STIFF))", "suppose we had $1", nil},
	{"^ ?so|and|now what say|(do you say) ?if|that ?to|we|i ?go|have|had|with", "what if we had", countNext},
	{"^ ?so|and|now what say|(do you say) ?if|that", "what if", phrase.BothHold(numberNear, notCountNext)},
	{"^ would|will|does|do|did|could|might ?there ?be anything|something|everything|(the rest)|(anything else)|(all the rest) ?still|then ?not|all clash|break|suffer|fail|go|give|stop|collide|change|work|hold|fit|foul ?wrong|way|together|up|working|fitting|good if|were|when|should", "what if", numberNear},
	{"^ ?a|do|try|just dry|trial|test|practice|pretend|mock run ?with|of|on|at|for|using|:|,|-", "what if we had", numberNear},
	{"^ ?and ?just in case !(..) were #", "what if $1 were $2", nil},
	{"^ ?please ?can|could|would|will ?you ?please ?just see|check|look|test|try|(find out) if|whether !(..) could|might ?ever|possibly be # ?or ?not $$", "what if $1 was $2 ?", nil},
	{"^ i|we ?do|am|are|was ?just wonder|wondering|wondered|curious what|how|whether|if # for|on|as !(*) would|might|could|will ?ever do|be|look|work|fit|go|mean|come|suit|change ?like|out|to|for ?us|me|things|the ?wall|rest $$", "what if $2 was $1 ?", nil},
	{"^ i|we ?do|am|are|was ?just wonder|wondering|wondered|curious what|how|whether|if !(## (RAIL|STIFF)) would|might|could|will ?ever do|be|work|fit|go|mean|suit|change ?like|out|to|for ?us|me|things|the ?wall|rest $$", "what if there were $1 ?", nil},
	{"^ i|we have|am|are ?got ?half|tempted|inclined|minded|(thinking of)|(of a) ?good ?mind ?to|(making|having|setting|putting) make|have|set|put|go|take|use|run|do ?with|for", "what if i had", phrase.BothHold(numberNear, asksWhatBehind)},
	{"^ had i|we|you|they ?but ?only !(..) ?, !would|will|does|what|how|where", "what if we had $1 , $2", countedInside},
	{"^ had i|we|you|they ?but ?only !(..) , would|will that|it|this|everything ?still ?all be|do|go|work ?all ?quite ?grand|sound|fine|(any good)|ok|okay|alright|(all right)|right|dandy|sweet|workable|possible|better|(a problem) $$", "what if we had $1 ?", countedInside},
	{"^ what would it ?all be|look ?now|then ?like if", "what if", numberNear},
	{", like $$", "", supposedBefore},
	{"WALL , she|he|it has|have|is|makes|does # of|in HEIGHT", "wall height $1", nil},
	{"^ is|are|was|were # any ?real|earthly good|use for|on|as|with !(*) $$", "what if $2 was $1 ?", nil},
	{"try|trying|tried on", "try", numberNear},
	{"^ ?please|just put|stick|pop|try|use|run|drop|have !(## (RAIL|STIFF)) ?in|up for second|moment|minute|bit|tick|(the moment)|(the sake of it)", "what if there were $1", nil},
	{"!imagine|suppose|say|if|pretend|supposing ?the WALL|it ?was|were|is stopped|topped|finished|ended|quit|stopping|topping ?out|off|up ?at|to #", "$1 the wall height was $2", nil},
	{", would|could|will|do|might|does ?the !(## (RAIL|STIFF)) ?still|all ?all go|fit|work|do|squeeze ?in|up ?there|then|together $$", "and there were $1 ?", supposedBefore},
	{"and|, ?and took|take|taking|pulled|pull|yanked|yank|lost|lose|dropped|left|leave a|one RAIL out|off|away|less $$", "and had one rail less", supposedBefore},
	{"if ?the|this WALL ?all came|come|went|go|dropped|drop ?all down ?by #", "if the wall height came down by $1", nil},
	// What becomes of it.
	{", ?and|then how does|do|would|will|did|might|could|'d ?the|all rest|remainder|others|everything|all|i|we|it|that|things ?of ?it|things|them ?all ?then come|be|go|do|turn|work|look|fare|stand|get|end|pan|fit ?out|on|up|by|along|off|together ?then|like $$", ", would it work ?", supposedBefore},
	{", would|does|do|will|could|can|should ?the ?whole rest|remainder|others|everything|thing|anything|all ?else ?of ?it|them ?all ?still|not hold|fit|work|go|clash|break|stand|add|suffer|change ?together|up|out|good ?at ?all ?then $$", ", would it work ?", supposedBefore},
	{", ?and is|are|would it|that|they|everything|this ?all|still|be going ?to fit|work|go|hold|do ?together|out|up ?or ?not|what $$", ", would it work ?", supposedBefore},
	{", ?and would|does|will|could|might that|it|this ?then|just break|upset|wreck|spoil|hurt|ruin|disturb|foul|clash ?up|with ?anything|something|everything|much|rest|things ?else|up $$", ", would it work ?", supposedBefore},
	{", ?and what would|will|does|might|could that|it|this ?then do|mean|change|break|upset ?to|for ?me|us|wall|it|things|rest|everything ?else $$", ", would it work ?", supposedBefore},
	{", would|will|does that|it|this|they ?all|still|even be|do|seem|sound ?all ?quite grand|sound|fine|(any good)|ok|okay|alright|dandy|sweet|(a problem)|(an issue)|problem|issue|trouble|allowed|right|daft|mad|silly|stupid|wise|sensible|workable|doable|feasible $$", ", would it work ?", supposedBefore},
	{", ?and|just|to ?to ?see|seeing|(let us see)|(find out) how|whether|if it|that|this|they ?might|would|will suits|suit|goes|feels|feel|fits|fit|works|work|turns|go ?out ?on|with ?us|me ?or|whether ?not $$", "", supposedBefore},
	{", ?but|and ?just|please do not|never ?you ?go ?and keep|save|store|set|change|commit|touch|record ?to ?it|that|this|anything|thing|them ?yet|now|though|mind|just ?yet $$", "", supposedBefore},
	{"but ?just|please do not|never ?you ?go ?and keep|save|store|set|change|commit|touch|record ?to ?it|that|this|anything|thing|them ?yet|now|though|mind|just ?yet $$", "", supposedBefore},
	// What a quantity would be.
	{"^ ?and|so for|on|at|given !(## (RAIL|STIFF)) ?, what|how ?much|big|wide|high|tall|large would|might|should|could|must|does !(the *) need|have|want|has|needs ?then ?to ?be|come|measure ?to|out ?at $$", "what would $3 be with $1 ?", nil},
	{"^ ?so|and !(## (RAIL|STIFF)) ?would|will|does ?then give|gives|make|makes|leave|leaves|means|mean|get|gets ?me|us what|(how much) for|as|in|of !(the *) $$", "what would $3 be with $1 ?", nil},
	{"^ ?so|and !(## (RAIL|STIFF)) ?would|will|does ?then give|gives|make|makes|leave|leaves|bring|brings|put|puts ?me|us !(the *) what|where|(how (big|wide|high|large|much)) $$", "what would $3 be with $1 ?", nil},
	{"^ were|was there ?to ?be !(## (RAIL|STIFF))", "what if there were $1", asksWouldBehind},
	{", were|was there|we|i|you|it ?to ?go|use|have|take|put|be|run|try|fit|hang|pick ?for|with|in|up !(## (RAIL|STIFF)) $$", "with $1 ?", asksBefore},
	{"i|we would|do|will|want|need|(am dying)|(am keen)|should ?like|love ?to ?to know|learn|(find out) !(the *) if|with|supposing|were|assuming|given ?that", "what would $1 be if", numberNear},
	{"tell|give|show|get|find ?me|us ?me|us !(the *) for|in|under ?the ?the case|event|scenario|instance ?of|with|that ?there ?are|being|were !(## (RAIL|STIFF)) $$", "what would $1 be with $2 ?", nil},
	{"put|stick|pop|try|use|run|drop !(## (RAIL|STIFF)) ?in|up for second|moment|minute|bit|tick ?, ?and ?then tell|show|give|(work out)|(let me know) ?me|us !(the *) ?, ?but ?and do not|never keep|save|change|store|commit ?it|that|this|anything ?though|yet|mind $$", "what would $3 be with $1 ?", nil},
	{"put|stick|pop|try|use|run|drop !(## (RAIL|STIFF)) ?in|up for second|moment|minute|bit|tick ?, ?and ?then tell|show|give|(work out)|(let me know) ?me|us !(the *) $$", "what would $3 be with $1 ?", nil},
}

// dialectWords are words of Scots, and of those who say "d" for "th", where no other word is spelled so.
var dialectWords = []phrase.Placed{
	{"cannae|canna|cannie", "can not", nil}, {"isnae|isna|isny", "is not", nil}, {"arenae|arena't", "are not", nil},
	{"dinnae|dinna", "do not", nil}, {"doesnae|disnae|doesna", "does not", nil}, {"didnae|didna", "did not", nil},
	{"wasnae|wasna|wisnae", "was not", nil}, {"willnae|willna|winnae|winna", "will not", nil},
	{"wouldnae|widnae|wouldna", "would not", nil}, {"couldnae|couldna|cuidnae", "could not", nil}, {"shouldnae|shouldna", "should not", nil},
	{"hasnae|hasna", "has not", nil}, {"havenae|hivnae|havena|hinnae", "have not", nil},
	{"afore", "before", nil}, {"haud on", "hold on", nil}, {"gonnae", "going to", nil},
	{"dae ye|you", "do you", nil}, {"wad|wid|wud ye|you", "would you", nil}, {"wad|wid|wud !i|we|he|she|they|it|that", "would $1", nil}, {"ye", "you", nil},
	{"whit !if|is|would|about|wad|wid|does|'s", "what $1", nil}, {"wis|wiz", "was", numberNear},
	{"gie !me|us|him|her", "give $1", nil},
	{"de|dat|da|dis|dem|dose !GAP|BAY|OPENING|WALL|POST|RAIL|STIFF|FLOOR|HEIGHT|(low RAIL)|(bottom RAIL)|(top RAIL)", "the $1", nil},
	{"^ them !boards|rails|slats|planks|posts|stiffeners|gaps|brackets|sixteens|twelves|tens|eights|fourteens|(_ - footers)|footers", "those $1", nil},
	{"plumb|clean sold", "sold", nil}, {"feller|feller|fellah", "fella", nil},
}

// notOrdered are verbs with which an order begins.
var notOrdered = scan.WordSet("to make set put have use go let give take leave keep do please run build add call show tell i we what how why")

// statesNext: something is stated behind it, with a figure, and nothing ordered or asked.
func statesNext(_, after []scan.Atom) bool {
	return len(after) > 2 && !notOrdered[after[0].Text] && numberInSentence(after)
}

// statedInside is the same where all of it stands in the phrase: whatever is stated there is only asked about.
func statedInside(before, _ []scan.Atom) bool { return len(before) == 0 }

// notOwnWish: nobody but a paper or another has it.
func notOwnWish(before, after []scan.Atom) bool {
	return phrase.EndsClause(before, after)
}

var ownWords = scan.WordSet("my mine our ours i we")

// ownToldBefore: a figure of one's own was told before, in a clause that has ended.
func ownToldBefore(before, after []scan.Atom) bool {
	return numberInSentence(after) && amountStood(before, nil) && slices.ContainsFunc(before, func(a scan.Atom) bool { return ownWords[a.Text] })
}

var ownAsking = scan.WordSet("have did am is do was are were can could does would")

// asksBehindThat: whoever tells it asks at once whether it is so.
func asksBehindThat(_, after []scan.Atom) bool {
	return len(after) > 2 && (after[0].Text == "," || after[0].Text == "." || after[0].Text == ";") && ownAsking[after[1].Text]
}

var theirsGiven = scan.WordSet("had put drawn scribbled quoted marked word told wrote written worked make reckoning sums count quote based")

// theirsBefore: somebody's figure, or what one has worked out oneself, stands before.
func theirsBefore(before, after []scan.Atom) bool {
	return claimBeforeOr(before, after) || amountStood(before, after) && !supposedBefore(before, after) && phrase.SaidBeforeOf(theirsGiven)(before, after)
}

// countNext: a number of rails or stiffeners follows at once.
func countNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Kind == scan.Digits || chunk.SpelledNumber(after[0].Text))
}

func notCountNext(before, after []scan.Atom) bool { return !countNext(before, after) }

var askedWords = scan.WordSet("would will does what how could might")

// asksWhatBehind: it is asked what comes of it.
func asksWhatBehind(_, after []scan.Atom) bool {
	for i := 1; i+1 < len(after); i++ {
		if after[i].Text == "," || after[i].Text == "." || after[i].Text == "?" {
			if askedWords[after[i+1].Text] {
				return true
			}
		}
	}
	return false
}

var mightBe = scan.WordSet("would might could")

// asksWouldBehind: what would be is asked behind it.
func asksWouldBehind(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after, func(a scan.Atom) bool { return mightBe[a.Text] })
}

// asksBefore: something is asked before it, from the beginning of the line.
func asksBefore(before, _ []scan.Atom) bool {
	return len(before) > 2 && (before[0].Text == "what" || before[0].Text == "how" || before[0].Text == "where")
}

// countedInside stands where something is tried that a figure tells.
func countedInside(before, _ []scan.Atom) bool {
	return len(before) == 0 || phrase.StartsClause(before, nil)
}
