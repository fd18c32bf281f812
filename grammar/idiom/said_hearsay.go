package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// hearsayTail is what tells at the end of a clause whose figure it was.
const hearsayTail = `((((according to)|per|by|(going by)|(if you (believe|ask|trust))) [the|his|her|their|my|our] (PERSON|PAPER|him|them|hers))|(if [the|my|our] PERSON ('s|is|are) right)|([at least] [or] so [the|my|our] PERSON (says|say|claims|reckons|figures|thinks|tells me|tells us)))`

// hearsayPhrases are ways to bring in what somebody else says, drew, wrote or promised, to hold one's own figures beside it, and to leave it aside.
var hearsayPhrases = []phrase.Placed{
	// One's own figures first, and what somebody makes of them.
	{"?, ?and ?all which|that|this ?then ?would makes|make|leaves|leave|gives|give|means|yields|puts|is|(works out to)|(comes to)|(comes out to) ?us|me ?with # !OPENING|BAY|GAP|(bottom gap)|span ?wide|clear ?, " + hearsayTail + " $$", ". he says the $2 is $1", amountStood},
	{"?, ?and ?all which|that|this ?then ?would makes|make|leaves|leave|gives|give|means|yields|puts|is ?us|me ?with !OPENING|BAY|GAP|(bottom gap)|span|(wall height) of|at|is # ?wide|clear ?, " + hearsayTail + " $$", ". he says the $1 is $2", amountStood},
	{"^^ i|we ?have get|got|measured|measure|read|make # across|on|for RAIL|board|plank|slat ?face ?, ?but|while|where|whereas ?and his|her|their|the PAPER takes|has|says|figures|gives|puts|calls|shows ?it|them|those|that ?is|as|at|to|are ?be #", "the rail face is $1 . he says the rail face is $2", nil},
	{"!PAPER|PERSON takes|treats|counts|figures|reckons|assumes|draws !RAIL|boards as|at|for|to|are ?be ?being # ?wide|across|deep|((in|on|across) the face)", "$1 has the rails $3 wide", nil},
	{"!PAPER|PERSON gives|has|shows|says|puts # under|below|beneath LOWEST RAIL , ?but|and|while i|we ?only|just have|get|got|measure|measured|make|read|find|see ?it ?at #", "he says the bottom gap is $2 . i measured the bottom gap at $3", nil},
	// Who says it.
	{"if|when you|i|we|one ?can|were|was ?to ?just go|goes|(am to go) by|with !((his|her|their|the) PAPER) ?,", "according to $1 ,", moreBehind},
	{"if|when i|we|you ?can|do|choose|am|are|were ?to believe|trust|take|(listen to)|(go by) him|her|them|((his|her|their) word) ?(for it) ?,", "according to him ,", moreBehind},
	{"!PERSON is|are|was|were|keeps|kept|has|have ?been ?just promising|guaranteeing|vowing|insisting|arguing|assuring|maintaining|pledging ?me|us ?that", "$1 says", toldAhead},
	{"^ i|we think|believe|guess|reckon|(am (pretty|fairly|quite) sure)|recall|remember|(seem to remember)|gather|heard|hear ?that !PERSON ?had said|says|told|mentioned|wrote ?me|us ?that", "$1 says", toldAhead},
	{"^ supposedly|allegedly|reportedly|purportedly ?, ?(there is)|(there are) ?(room|space) ?for", "he says there are", countNext},
	{"^ supposedly|allegedly|reportedly|purportedly ?,", "he says", statesNext},
	{"!PERSON ((is|are|was|were) (asking|wondering))|asks|asked|wonders|(wants|want|wanted|(would like) to know) ?me|us ?now whether|if ?it ?is ?true ?that", "is it true that", phrase.BothHold(statesNext, noTrialNext)},
	{"is|was it ?really|actually so|(the fact)|(a fact)|(the case) that", "is it true that", phrase.StartsClause},
	{"^ what|whatever ?that he|she|they|((the|my|our|his|her|their) [last|old|other|first] PERSON) ?has|have|had sent|gave|drew|handed|mailed|emailed|left|showed|texted|had|put|brought|made ?me|us|over|up|behind|along|down ?for ?me|us ?(on paper)|(in writing) ?down ?over shows|has|says|calls|gives|lists|reads|puts ?for", "the plan has", drawnNext},
	{"^ what|whatever ?that he|she|they|((the|my|our|his|her|their) [last|old|other|first] PERSON) ?has|have|had sent|gave|drew|handed|mailed|emailed|left|showed|texted|had|put|brought|made ?me|us|over|up|behind|along|down ?for ?me|us ?(on paper)|(in writing) ?down ?over :|,|-", "the plan says :", figureToCome},
	{"^ what PAPER|PERSON shows|says|has|claims|calls ?for ?is|are|:", "the plan shows", figureToCome},
	{"^ ?the|his|her|their original|originals has|shows|had|showed|says|said|calls|gives|puts ?for", "the plan has", figureToCome},
	{"PAPER|layout|version|one ?that|which i|we was|were|got|am|are ?been handed|given|sent|shown|emailed|left ?over|with|by ?PERSON !has|shows|says|gives|puts|calls|reads|claims", "plan $1", figureToCome},
	{"^ his|her|their ?cross section|version|layout|setup|elevation|cut has|shows|puts|gives|calls ?for", "the plan has", verifiedBehind},
	{"on|in|from|per ?the|that|this|his|her|their PAPER ?that|which he|she|they|PERSON ?has sent|gave|drew|handed|mailed|emailed|made|did|left|showed|texted ?over ?for|to ?me|us ?over|along|behind|up $$", "according to the plan", phrase.BothHold(amountStood, nothingWishedBefore)},
	{"^^ whoops|oops|sorry|wait|no|ah|oh ?, ?i|we ?was|read|had ?read|reading|had|looking ?off|at|on|from ?the wrong page|sheet|line|column|drawing|side|note :|,|-|.", "", moreBehind},
	{"^ in|on his|her|their|the|that|this picture|photo|mockup|rendering ?((he|she|they) (made|drew|sent)) ?,", "on the drawing ,", figureToCome},
	{"^^ sheet|page|dwg|drawing|fig|detail ## :|,|-", "the plan says :", figureToCome},
	{"^ there is|are ?a ?_ number|figure|note|mark|scribble|label|sticker|tag|line|comment ?pencilled|penciled|written|scribbled|noted|marked ?in on|in|beside|at|near ?the|his|her|their|my|our PAPER ?here that|which|and ?it says|reads|claims|shows|gives|states", "the sketch says", figureToCome},
	{"?the|a|my|our ?last|previous|other|old|first PERSON|crew|builder|builders|owners|fella ?has left|wrote|handed|sent|gave ?behind ?me|us ?a ?_ PAPER ?behind ?for|on|with|to ?me|us|it|the ?wall|site :|-", "the plan says :", figureToCome},
	{"picture|photo|mockup ?that|which he|she|they|PERSON drew|sent|made|gave|showed ?me|us !shows|has|puts|gives", "drawing $1", nil},
	{"^ if his|her|their|the|my|our|that PAPER|PERSON is|'s|are right|correct|accurate|true|(to be believed) ?,", "according to the drawing ,", plainFigureNext},
	{"!PERSON is|are|keeps|keep insisting on|upon", "$1 says", figureToCome},
	{"^ could|can|might|may it ?really|possibly ?just be ?that", "is it true that", phrase.BothHold(statesNext, articleNext)},
	{"^ does it ?really|all check|hold|add|pan|work|figure ?out|up ?, that", "is it true that", moreBehind},
	{"^ i|we am|are ?just|here looking|staring ?here ?down at|over PAPER ?here with|that|which|where|and ?it ?that ?has|shows|says|calls ?for", "the plan has", figureToCome},
	{"^ i|we was|were ?just|also assured|promised|informed|advised|guaranteed ?by ?my|the|our ?PERSON that", "he says", moreBehind},
	{"^ what do|would you ?really make|think|say of|about|to ?my|the|our PERSON|man|someone|somebody who|that says|claims|thinks|tells ?me|us ?that", "he says", figureToCome},
	{"^ as far as he|she|they|PERSON is|are concerned ?,", "he says", figureToCome},
	// What is claimed.
	{"^^ !OPENING|gap|span|drop|(wall height)|bay per PAPER ?:|= # ,|;|. ?but ?i meas|measured|actual|field|tape ?is|: #", "he says the $1 is $2 . the $1 is $3", nil},
	{"PERSON has|have|had|got ?got me|us|it down for|as|with ## !RAIL|STIFF ?,|;|. ?but i|we want|need|prefer|(would like) ## $$", "he says there are $1 $2 . i want $3 $2", nil},
	{"his|her|their bid|quote|estimate was|is|came ?to ?in ?at ?\\$ # ?dollars|bucks ,|;|. ?and what|(how much) do you get|have|make|come ?it ?up ?with $$", "the quote comes to $1 dollars , what does it cost ?", nil},
	{"!PERSON has|got|is ?got this|that WALL going|running|standing|coming ?up|in ?up to|at # ?high|tall", "$1 says the wall height is $2", nil},
	{"PERSON|PAPER drew|has|had|shows|says|said|put|figured|marked ## !RAIL|STIFF ?there|in|up|down ?,|;|. ?but|and i|we am|are|will|'ll ?be ?only|just ?going ?to hang|hanging|put|putting|use|using|have|having|build|building|do|doing|run|running ?up ?in ## $$", "he says there are $1 $2 . i want $3 $2", nil},
	{"^ what he|she|they|PERSON calls|called|took|takes ?for ?to ?be !LENQ of # is|was ?really|actually|(in fact)|(in truth) #", "he says $1 is $2 . $1 is $3", nil},
	{"boss man ?'s|is|has ?got # marked|written|penciled|drawn|down ?down for|on|as !LENQ", "he says $2 is $1", nil},
	{"!PERSON has|got|'s ?got # marked|written|penciled|drawn|down ?down for|on|as !LENQ", "$1 says $3 is $2", nil},
	{"label|tag|sticker|manual|leaflet|sheet|paper|instructions ?that|which ?came|comes ?packed ?in|on|with|for ?on|in|with ?the BRACKET|bracket's ?box|bag|pack|package|packet says|gives|has|shows|calls|lists|reads|say ?for # thick", "sheet says the bracket thickness is $1", nil},
	{"label|tag|sticker|manual|leaflet|sheet|paper|instructions ?that|which ?came|comes ?packed ?in|on|with|for ?on|in|with ?the BRACKET|bracket's ?box|bag|pack|package|packet says|gives|has|shows|calls|lists|reads|say ?for # ?of clearance|gap|between", "sheet says the bracket clearance is $1", nil},
	{"!PAPER has|gives|shows|lists|puts # as|for ?the least|minimum|smallest ?width|size for|on|of !LENQ", "$1 says $3 is at least $2", nil},
	{"!PAPER has|gives|shows|lists|puts # as|for ?the most|maximum|largest ?width|size for|on|of !LENQ", "$1 says $3 is at most $2", nil},
	{"!PERSON|he|she laid|put|set|made|drew ?out ?his|her|the marks ?out ?on ?post ?out at", "$1 marked the post at", figureToCome},
	{"his|her|their material|materials|lumber|shopping|cut list comes|adds|totals|runs|came ?up ?out ?to", "the quote comes to", figureToCome},
	{"^ ?it|that|they is|are marked|labeled|noted|written|penciled|pencilled ?down ?in ?as|at # for|on|as !LENQ on|in ?his|her|their|the PAPER", "the plan says $2 is $1", nil},
	{"^ did|has|does|have ?my|the|our PERSON|PAPER get|got|have !LENQ right|wrong|correct ,|;|.|-|? ?he|she|they|it has|had|put|says|said|got|wrote|made|gave|figured|figures ?it ?at|as|for #", "he says $1 is $2", nil},
	{"PERSON|PAPER guessed|said|says|had|wrote|put|figured|reckoned # for|on|as !LENQ ,|;|. ?but ?and it is|was ?really|actually ?more ?like # $$", "he says $2 is $1 . $2 is $3", nil},
	{"!LENQ of more than|over|above|(bigger than)|(greater than)|(wider than)|(in excess of) # is|are|would ?be unsafe|dangerous|forbidden|illegal|prohibited|hazardous|(not (allowed|safe|legal|permitted|ok))|(too (much|big|wide|large))|(a hazard)|(against (the) code)", "$1 is at most $2", theirsNotMine},
	{"!LENQ of less|smaller|narrower|fewer than # is|are|would ?be unsafe|dangerous|forbidden|illegal|prohibited|hazardous|(not (allowed|safe|legal|permitted|ok))|(too (little|small|narrow|tight))|(a hazard)|(against (the) code)", "$1 is at least $2", theirsNotMine},
	{"?the|my|our PERSON ?at ?the ?yard|counter|store said|says|told|tells ?me|us ?that !BRACKET|anchors|(post (bases|caps)) is|are|cost|run|go ?for|at £ ?ea|each|apiece", "$1 are $2 each", nil},
	{"will|would|should|can do ?it ?nicely|fine at|with # apart|between", "$1 apart", theirsNotMine},
	{"!suppose|supposing|say|if|imagine PAPER|PERSON is|'s|was|were right|correct about|on|with # !OPENING|GAP|BAY|span|(bottom gap)", "$1 the $3 is $2", nil},
	{"!OPENING|WALL|span|GAP measures ?out ?at ?to #", "$1 is $2", theirsNotMine},
	{"and|, ?also|then calls|puts|makes|sets|gives !WALL|OPENING|(bottom gap)|GAP|span ?at|as ?to ?be #", "and the $1 $2", theirsNotMine},
	{"has|got !(## (RAIL|STIFF)) down|drawn|written|marked ?in|there ,", "has $1 ,", nil},
	{"!PAPER|PERSON puts|has|shows|sets|draws|calls|gives (WALL 's top [edge])|(top [edge] of WALL) ?up ?at # ?above|over|off|(up from) ?the ?FLOOR", "$1 says the wall height is $2", nil},
	{"comes|come|came|runs|measures|falls ?in|out|up ?at ?just under|below|(less than)|(short of) #", "is less than $1", theirsNotMine},
	{"comes|come|came|runs|measures ?in|out|up ?at ?just over|above|(more than) #", "is more than $1", theirsNotMine},
	{"!PERSON ((is|are) saying)|says|say|said|claims|tells|told|reckons|swears ?me|us ?that it|you|we|i takes|take|needs|need # ?of ?a GAP before|until|for BRACKET ?will ?to quit|stop|clear|miss ?touching|hitting|meeting|rubbing|bumping|clashing ?each ?other", "$1 says the bracket clearance is $2", nil},
	{"!PAPER is|was ?all marked|labeled|labelled|dimensioned|annotated ?up ?as|at|with|: #", "$1 says $2", nil},
	{"!(## RAIL) ?all ?at|with|spaced|, # ?GAP ?apart|between ?would|will|should|do|does ?really come|comes|came|get|gets|work|works|reach|reaches|add|adds|bring|brings|make|makes|stand|stands|end|ends|put|puts|take|takes ?me|us|it|you|them ?all ?out|up ?to|at ?!about|around|roughly|near|nearly # ?tall|high", "there are $1 with a gap of $3 , and the wall height is $4 $5", wholeClaim},
	{"?the|his|her|their EARTH is|'s|lies|sits # below|lower|under|down ?than|from FLOOR", "the drop is $1", phrase.BothHold(theirsNotMine, phrase.SaidBeforeOf(scan.WordSet("says said claims told tells reckons thinks swears figures guesses")))},
	{"STIFF ?are ?set ?at ## !inches|inch|in", "stiffener spacing $1 $2", theirsNotMine},
	// Whether it holds.
	{"^ ?please ?just|(can you)|(could you)|(would you) run|do|crunch|check|(work through)|(go over) ?the ?numbers|math|figures|sums|arithmetic ?on|for|of|with|behind his|her|their !(## (RAIL|STIFF))", "he says there are $1", nil},
	{"^ ?please ?just|(can you)|(could you)|(would you) run|do|crunch|check|(work through)|(go over) ?the ?numbers|math|figures|sums|arithmetic ?on|for|of|with|behind his|her|their # !OPENING|GAP|BAY|span", "he says the $2 is $1", nil},
	{"^ ?please tell|let|say|shout|holler|stop|warn ?me|us ?know if|whether|where ?any|anything|something|part|some ?of this|that|it|these|here|them ?here is|are|looks|sounds|seems ?way ?off|wrong|out|mistaken|amiss|bad|incorrect|fishy :|,|-", "check :", figureToCome},
	{"^ would|will|does|do|can # !OPENING|GAP|BAY|(bottom gap) ?that|which ?on|in|from he|she|they|PERSON|((his|her|their|the) PAPER) ?has drew|has|had|shows|says|put|drawn|gave|claims|wrote|drawn ?down ?work|hold|fit|do|go ?up|out $$", "is it true that the $2 is $1 ?", nil},
	{"?, ?that|it|this can not be ?quite ?right|true|correct|so|it ?, ?can|could ?it|that|he|this $$", ", is that right ?", theirsNotMine},
	{"!LENQ is|at|are|of|was|: # ,|.|-|; ?and|but|so where|what|(how (much|big|high|wide)) do|did|would you have|put|get|set|make|figure it|that ?at $$", "$1 is $2 , what is $1 ?", nil},
	{"LOWEST RAIL clears|misses FLOOR by # ,|.|-|; ?and|but|so where|what|(how (much|big|high|wide)) do|did|would you have|put|get|set|make|figure it|that ?at $$", "the bottom gap is $1 , what is the bottom gap ?", nil},
	{"^ does|do|will|is|can !LENQ of|at # ?that|which ?is on|in|from ?his|her|their|the PAPER ?really|ever|still hold|work|add|check|fit|go|right|correct|true|ok ?up|out|water $$", "is it true that $1 is $2 ?", nil},
	{"on|in ?the|a|that|my|our post|wall|slab|board|floor|stud|beam|wood ?itself $", "", wroteBefore},
	{"!(@ STIFF) at ## max|maximum|tops|(at most)|(or less)|(or closer)", "$1 , stiffener spacing at most $3", nil},
	{"^^ ?please|kindly ?can|could|would|will ?you ?please|kindly check|verify|(double check)|doublecheck|confirm|(look over)|(go over)|proofread my|our|his|her|their|the ?PERSON ?'s math|maths|sums|figures|numbers|arithmetic|drawing|plan|sketch|work|count|addition|suggestion|proposal|idea|claim|layout|version|design|offer ?(for (me|us)) :|,|.|?|-|;", "check :", figureToCome},
	{"^ is|are !(## (RAIL|STIFF)) ?also what you come|came|get|got|have|find|figure ?up ?out ?with|at ?too|also|(as well) $$", "is it true that there are $1 ?", nil},
	{"^ ?and i|we ?have worked|figured|came|got|arrived|calculated|come|ended|reckoned ?out|up ?with|at|to !LENQ of|at # ,|;|.|-", "is it true that $1 is $2 ,", verifyEnds},
	{"^ should not !LENQ ?really be #", "is it true that $1 is $2", nil},
	{"^ should not there ?really be !(## (RAIL|STIFF))", "is it true that there are $1", nil},
	{"^ ?so can|may|could|should i|we ?now ?safely tell|promise ?my|the|our PERSON|him|her|them ?that", "is it true that", statesNext},
	{".|,|? ?and could|can|would|will that|this|it ?please be ?please verified|checked|confirmed|(double checked) ?please $$", ", is that right ?", theirsNotMine},
	{", wrong|nonsense|mistaken|(what say you)|zat|(zat (right|so|true)) $$", ", is that right ?", theirsNotMine},
	{"^ is there ?any|some truth|substance|merit|basis|sense to|in|behind|for the|this|that|his|her|their claim|idea|notion|rumor|story|statement|assertion ?that", "is it true that", figureToCome},
	{"^ ?please settle|(clear up)|answer ?me|us something|((a|an) (bet|question|argument|dispute))|this|(one thing) ?for|between ?me|us :|,|-", "", moreBehind},
	{"^ is|would # ?be enough clearance|(of gap)|gap|space for BRACKET like|as he|she|they|PERSON says|said|claims $$", "is it true that the bracket clearance is $1 ?", nil},
	{"^ is|was !LENQ ?really|actually # or not|no $$", "is it true that $1 is $2 ?", nil},
	// What he says is taken up.
	{"^ ?please take|pull|get|lift|copy|grab|use|read !LENQ off|from|(out of)|as|of|on ?in his|her|their|the PAPER ,|:|-|; ?it ?is #", "$1 is $2", nil},
	{"^ i|we can|am|are ?quite|perfectly|just ?ok|fine|okay|happy|good|live|go|(all right) with the|her|his|their # ?that|which he|she|they|PERSON|PAPER wants|has|drew|says|put|proposes for|on|as !LENQ $$", "$2 is $1", nil},
	{"^ i|we can|am|are ?quite|perfectly|just ?ok|fine|okay|happy|good|live|go|(all right) with his|her|their !(## (RAIL|STIFF)) $$", "i want $1", nil},
	{"^ i|we can|am|are ?quite|perfectly|just ?ok|fine|okay|happy|good|live|go|(all right) with his|her|their # !GAP|OPENING|BAY|span|drop $$", "the $2 is $1", nil},
	{"^ ?the|our|that his|her|their|(PAPER 's) # !GAP|OPENING|BAY|span is|'s ?just|quite fine|ok|okay|good|(all right) with|by me|us $$", "the $2 is $1", nil},
	{"^ tell him|her|them yes|ok|okay|sure|fine ?,", "", figureToCome},
	{"^ he|she|they|PERSON is|was|were|are right about|on|with !LENQ ,|;|.|- ?so ?it ?is ?make ?it ?at # ?it ?is ?then $$", "$1 is $2", nil},
	{"^ ?so|fine|ok|okay ?, ?(let us) go|do|use|enter|take|put|build|make|stick ?with|in|it ?to ?like ?as what|whatever ?that he|she|they|PERSON|PAPER drew|has|says|said|shows|wants|wrote|had|put :|,|-", "", figureToCome},
	{"^ ?my|the|our PERSON ?just says|said to !make|set|build|put|keep|hold it # !HIGH|wide", "$1 it $2 $3", nil},
	{"^ according|per|by ?to what i|we wrote|noted|measured|put|jotted ?down ?_ ?_ ,", "", figureToCome},
	// What he says is left aside.
	{"^^ ?just as|so long as !LENQ is|'s|are|stays|keeps", "$1 is", figureToCome},
	{"^ scratch|toss|strike|cross|forget|ignore|skip ?out his|her|their number|figure|one ,|;|. ?and", "", wantedAhead},
	{"^ the|our|that PAPER is|'s|was ?all ?way wrong|off|mistaken|(out of date)|outdated ,|;|.|- ?so ?and !it|there should|must|needs|has ?to be ##", "$1 should be $2", nil},
	{"^ ?please skip|forget|ignore|disregard|(never mind) what|whatever he|she|they|PERSON|PAPER ?has|have said|says|wrote|had|has|drew|thinks|put|written ?down about|for|on|over !RAIL|STIFF ,|;|.|- ?and ?i|we ?just ?want|use|need|have|make ?it none", "no $1", nil},
	{"^ ?please skip|forget|ignore|disregard|(never mind) what|whatever he|she|they|PERSON|PAPER ?has|have said|says|wrote|had|has|drew|thinks|put|written ?down about|for|on|over !RAIL|STIFF ,|;|.|- ?and ?i|we ?just want|use|need|have|make|put ?it ## $$", "i want $2 $1", nil},
	{"^ ?please skip|forget|ignore|disregard|(never mind) what|whatever he|she|they|PERSON|PAPER ?has|have said|says|wrote|had|has|drew|thinks|put|written ?down about|for|on|over !LENQ ,|;|.|- ?and ?i|we|it ?just want|use|need|have|make|put|is|set ?it ?at # $$", "$1 is $2", nil},
	{"^ i|we am|are|do|will not go|going ?to ?go|use|using|follow|following|trust|trusting ?by|with|off his|her|their|the|that PAPER|figures|numbers|word|figure|number ,|;|.|- ?so|but|because", "", wantedAhead},
	{"^ his|her|their PAPER|figures|numbers|ideas|opinion ?put|set|left aside ,", "", moreBehind},
	{"^ ?nah|no|nope ?, he|she|they|PERSON is|are|was|has|have ?got ?it wrong|mistaken|off about|on|with|as ?to !LENQ ,|;|.|- ?it|that ?is|should ?be ?really|actually #", "$1 is $2", nil},
	{"^ ?please do not ?you listen|(pay [any] (attention|heed)) ?mind to him|her|them|((my|the) PERSON) ,|;|.|- ?because", "", moreBehind},
	{"do not go by PAPER|him|her|them for|on !LENQ ,|;|. ?but go|by|with|use|take ?by|with me|mine|ours|((my|our) [own] (number|figure|tape)) ?:|,|-|; ?it ?is #", "$1 is $2", nil},
	{"^ he|she|they|PERSON can|may ?well say|think|want|draw|claim what|whatever he|she|they likes|like|wants|want|pleases ,|;|.|- ?but", "", moreBehind},
	{"run|do|work|give|show|use|crunch|make|figure ?me|us ?out your own numbers|figures|math|sums|arithmetic|calculation|calculations|version|layout $$", "show me the layout", nil},
	{"^ ?please ignore|disregard|(never mind)|(set aside)|(leave aside) his|her|their|the|that PAPER and|,|;|. ?just ?then !give|show|tell|run|do|work|print", "$1", nil},
	{"^ ?and ?so if i|we|you do|did|would|am|are not ?going go|going|do|use|take|build|like|want|pick|choose ?with|by|for his|hers|theirs|it|that|((his|her|their) PAPER) , ?then what|which ?else are|is ?there ?the ?other|different ways|options|choices|possibilities|alternatives ?of|to|for ?doing|do|build|building|us|me ?it|this $$", "what are the options", nil},
	{"and ?that it is !LENQ that|which should|must|ought|has|needs ?to be #", "and $1 is $2", supposedBefore},
	{"^ ?please|well ?you ?can tell him|her|them ?that he|she|they is|are|has|have|got ?it wrong|mistaken|off|dreaming|nuts|crazy ,|;|.|- ?because", "", wantedAhead},
	{"PAPER|PERSON had|has|shows|showed ## !RAIL|STIFF ?((a|per|each|every|(to a)|(in each)) BAY) ;|,|.|- ?but ?please drop|scrap|skip|forget|toss|lose those|them|that ,|;|. ?and ?i|we ?just ?only want|need|use|have ?with ?it ##", "he says there are $1 $2 . i want $3 $2", nil},
	{"^^ ?the|his|her|their|my|our ?old|original|first PAPER|PERSON said|says|had|has|shows|showed ## ,|;|. ?but|and|though !((i|we) (want|need|would|prefer|will|am going)) ## !RAIL|STIFF", "he says there are $1 $4 . $2 $3 $4", nil},
	// One's own wish, where a word in it looks like somebody else's.
	{"and ?we|i imagine|picture|envision|foresee about|around|roughly|approximately|(something like) # !of|for|between|under|below", "and we want about $1 $2", nil},
	{"^ ?please have|make|let|run|take|bring|put ?that|the|this|my|our ?one new|added|extra|middle POST|upright ?up ?to ?be ?run|stand|go|stick|reach|come|rise ?up # higher|taller|above|over|past|beyond ?than WALL", "the new post is $1 higher than the wall", nil},
	{"^ ?please have|make|let|run|take|bring|put ?that|the|this|my|our ?one new|added|extra|middle POST|upright ?up ?to ?be ?run|stand|go|stick|reach|come|rise ?up # higher|taller|above|over|past|beyond ?than ?the top of WALL", "the new post is $1 higher than the wall", nil},
	{", ?and ## of ?them|those $", ", $1 rails", railsTold},
	// Words that mean one thing and another.
	{"^^ right ,", "", leftTold},
	{"mark|put|jot|note|write|take|set !BRACKET|anchors|bases|caps|(post bases)|(post caps) down at|as|for £ ?ea|each|apiece", "the $1 are $2 each", nil},
	{"^ spare me|us ?all ?of ?the reasons|details|explanation|explanations|math|lecture|story|arithmetic|why|talk ,|;|.|- ?and ?just", "", moreBehind},
	{"^ ?i|we can|could|will|have|got|found ?now|also|still ?got spare|manage|afford|find|add|go ?to ?up ?an another|extra|further # ?dollars|bucks ?more|extra ,|;|.|- ?so|and ?please put|add|throw|stick|tack that|it|them on|to|onto|in ?top ?of ?to budget", "add $1 to the budget", nil},
	{"^ ?so what|(how much) would|could|will|do|might i|we save if", "what would it cost if", numberNear},
	{"^ ?the|your|my print|type|writing|screen|text|letters is|are|'s ?way|just|far too small|tiny|faint|little ?for ?me|us|my ?eyes ?to ?read ,|;|.|- ?so", "", moreBehind},
	{"i|we do|would not mind|care ?if|about !LENQ going|goes|being|gets|is|getting|running ?a ?bit|little over|past|above|beyond # , ?but|just as|so long as it|they|that is|does|goes|gets not ?go|get|run over|past|above|beyond|(more than) #", "$1 is at most $3", nil},
	{"!LENQ does|need|do not ?have|need ?got ?to be ?exactly # ?exactly ,|;|. ?but ?just all i|we ask|want|need|care|require ?about ?for is ?that ?it|they ?is|be|stays|are", "$1 is", figureToCome},
	{"^ it|that|WALL does|need|do not ?have|need ?got to be ?exactly # HIGH ?exactly|(on the nose)|(to a hair) ?, ?just|but|only ?somewhere|something thereabouts|(around there)|(close to (it|that))|close|near|roughly $$", "the wall height is about $1", nil},
	{"!LENQ does|need|do not ?have|need ?got to be ?exactly # ?exactly|(on the nose)|(to a hair) ?, ?just|but|only ?somewhere|something thereabouts|(around there)|(close to (it|that))|close|near|roughly $$", "$1 is about $2", nil},
	{"# ?(on center|centers) ?apart is closest|tightest ?that i|we ?would|will|can|want ?to ?ever|care|like ?to ?put|set|space|go|have|place STIFF ?together", "stiffener spacing at least $1", nil},
	{"# ?(on center|centers) ?apart is farthest|furthest|widest ?that i|we ?would|will|can|want ?to ?ever|care|like ?to ?put|set|space|go|have|place STIFF ?apart", "stiffener spacing at most $1", nil},
	{"@ ?RAIL|boards , ## of them|em|those high|tall|up ,", "$1 rails , $2 boards ,", nil},
	{", ?and|but ?that is|'s counting|including|with one|board ?that|which ?is|'s ?already up|there|hung|mounted|on ?already $$", "", amountStood},
	{"^ ?so|and how high|tall would|will|do|does|could !(## RAIL) ?all stand|reach|come|go|be|get|stack|end|top ?out|up ?to with|at", "what would the wall height be with $1 and", figureToCome},
	{"there is|are no|not ?any ?more|longer drop|dropoff|(drop off) beyond|past|behind|outside|off|on|at ?the ?other ?side ?of WALL ?anymore|(any more)|now|left ?at ?all ?, ?because|since ?they|we|i|somebody|someone|he|she|it ?have|has|had|was|been|is ?just ?got filled|leveled|levelled|built|raised|graded|backfilled|brought ?it|that|everything|in|up|out|all ?in|up|out ?to ?level|flat|even|flush ?with ?it|slab|floor $$", "the drop is 0", nil},
	{"^ draw|pull|bring|cinch|snug ?the GAP in ?by #", "make the gap $1 narrower", nil},
}

var (
	triesWords = scan.WordSet("would could can might should may were add added")
	wishWords  = scan.WordSet("want make set use put need keep let like leave give same as cut build please")
	verifyOf   = scan.WordSet("up right true so correct hold work check ok okay out sense")
	verifyAt   = scan.WordSet("does is do are can could would")
)

// noTrialNext: what follows is asked as a fact, and not tried.
func noTrialNext(_, after []scan.Atom) bool {
	return !slices.ContainsFunc(after, func(a scan.Atom) bool { return triesWords[a.Text] && a.Text != "would" }) && !slices.ContainsFunc(after[:min(len(after), 1)], func(a scan.Atom) bool { return notOrdered[a.Text] })
}

// verifiedBehind: a figure follows, and whether it holds is asked at the end of the line.
func verifiedBehind(_, after []scan.Atom) bool {
	return chunk.Figured(after) && verifyEnds(nil, after)
}

// verifyEnds: whether it holds is asked at the end of the line.
func verifyEnds(_, after []scan.Atom) bool {
	n := len(after)
	for n > 0 && after[n-1].Kind == scan.Sign {
		n--
	}
	if n < 3 || !verifyOf[after[n-1].Text] {
		return false
	}
	return slices.ContainsFunc(after[max(0, n-4):n], func(a scan.Atom) bool { return verifyAt[a.Text] })
}

// plainFigureNext: a figure follows, and what is said does not lean on what was right.
func plainFigureNext(_, after []scan.Atom) bool {
	return len(after) > 2 && chunk.Figured(after) && after[0].Text != "and" && after[0].Text != "about" && after[0].Text != "on" && !triesWords[after[0].Text] && !slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "what" || a.Text == "how" || a.Text == "then" })
}

// drawnNext: a figure follows, and nothing of the wood itself.
func drawnNext(_, after []scan.Atom) bool {
	return chunk.Figured(after) && !phrase.SaidBeforeOf(spoiledWood)(after, nil)
}

var spoiledWood = scan.WordSet("rotten bad warped split cracked twisted bowed broken missing damaged wet knotty cupped")

// nothingWishedBefore: nothing is wanted in what stands before.
func nothingWishedBefore(before, _ []scan.Atom) bool {
	return !slices.ContainsFunc(before, func(a scan.Atom) bool { return wishWords[a.Text] || a.Text == "i" || a.Text == "we" })
}

var theirClasses = []string{"PERSON", "PAPER", "SAYS"}

// theirsNotMine: somebody else, his paper or what he says was told at the beginning of the line, and nothing of one's own.
func theirsNotMine(before, _ []scan.Atom) bool {
	if len(before) == 0 || phrase.SaidBeforeOf(ownSpeaker)(before, nil) {
		return false
	}
	for _, a := range before[:min(len(before), 6)] {
		if othersMeant[a.Text] {
			return true
		}
		for _, class := range theirClasses {
			if phrase.ListOfClass()[class].Holds(a.Text) {
				return true
			}
		}
	}
	return false
}

// othersMeant are words for others beside the names of who and what they are.
var othersMeant = scan.WordSet("her him his their them hers theirs")

var ownSpeaker = scan.WordSet("i we")

// wholeClaim: a claim, or the question whether something is true, was begun right before.
func wholeClaim(before, _ []scan.Atom) bool {
	n := len(before)
	return n > 0 && (claimVerbs[before[n-1].Text] || n > 2 && before[n-1].Text == "that" && before[n-2].Text == "true" || before[n-1].Text == "whether" && n > 1 && lex.Checking[before[n-2].Text] ||
		before[n-1].Text == "that" && (claimVerbs[before[n-2].Text] || before[n-2].Text == "right" || before[n-2].Text == "correct"))
}

// railsTold: rails were told of, and nothing else that is counted.
func railsTold(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("rails boards slats planks rail"))(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("posts post bays bay stiffeners brackets openings doorways feet foot have own bought"))(before, nil)
}

// leftTold: the side is told behind it, and it is the left.
func leftTold(_, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("left"))(after, nil) && !phrase.SaidBeforeOf(scan.WordSet("right no or not both sorry wait other side sides"))(after, nil)
}
