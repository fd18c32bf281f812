package idiom

import "saywright/grammar/phrase"

// regionPhrases are ways in which people of other regions put things: islanders, people of the bayou, those who learned their English at school
// far away, and those who say "I'm after doing it".
var regionPhrases = []phrase.Set{
	// What somebody has just done: "what I'm after telling you".
	{"!i|we ?am|are ?only ?just after telling|saying", "$1 have told"},
	{"!i|we ?am|are ?only ?just after giving ?you", "$1 have given you"},
	{"!i|we ?am|are ?only ?just after measuring|taping", "$1 have measured"},
	{"!i|we ?am|are ?only ?just after buying|purchasing", "$1 have bought"},
	{"!he|she|they|PERSON is|are|has|have|'s ?only ?just after telling|saying", "$1 tells"},
	// What would come of it, were each a little out.
	{"what|where is|'s ?the harm|hurt|damage|danger ?in ?of ?it ?is ?there if|when !everything|((every|each|all) [of] [my|the|them|these|those] [cut|cuts|mark|marks|one|board|boards|rail|rails|piece|pieces])", "what if $1"},
	{"what|any ?real ?great harm|hurt|damage|danger is|would ?there ?be ?done ?in ?it if|when !everything|((every|each|all) [of] [my|the|them|these|those] [cut|cuts|mark|marks|one|board|boards|rail|rails|piece|pieces])", "what if $1"},
	{"do|does|would|will|could it|that ?really ?ever do|be ?me|us ?any|much|a|great ?real harm|hurt|damage if|when !everything|((every|each|all) [of] [my|the|them|these|those] [cut|cuts|mark|marks|one|board|boards|rail|rails|piece|pieces])", "what if $1"},
	// Further up from the floor, and nearer to it.
	{"lift|lifts|lifting|raise|raises|bring|jack|hoist|move|push|nudge|hitch ?up LOWEST|first RAIL|one ?up ?by another|further|extra !inch|foot ?up ?clear|off ?off|of|above|over|from ?of FLOOR", "increase bottom gap by 1 $1"},
	{"lift|lifts|lifting|raise|raises|bring|jack|hoist|move|push|nudge|hitch ?up LOWEST|first RAIL|one ?up ?by another|further|extra # ?up ?clear|off ?off|of|above|over|from ?of FLOOR", "increase bottom gap by $1"},
	{"lift|lifts|lifting|raise|raises|bring|jack|hoist|move|push|nudge|hitch ?up LOWEST|first RAIL|one ?up ?by # more|further|higher ?up ?clear|off ?off|of|above|over|from ?of FLOOR", "increase bottom gap by $1"},
	{"lift|lifts|lifting|raise|raises|jack|hoist|nudge|hitch ?up LOWEST|first RAIL|one ?up by # ?up clear|off|above|from|over ?off|of|from FLOOR", "increase bottom gap by $1"},
	{"drop|lower|bring|let|move|push|nudge|set ?down LOWEST|first RAIL|one ?down ?by another|further|extra # ?down ?closer|nearer toward|towards|to FLOOR", "decrease bottom gap by $1"},
	{"drop|lower|bring|let|move|push|nudge|set ?down LOWEST|first RAIL|one ?down ?by # more|further|lower ?down ?closer|nearer toward|towards|to FLOOR", "decrease bottom gap by $1"},
	{"drop|lower|bring|let|move|push|nudge|set ?down LOWEST|first RAIL|one ?down ?by # ?down closer|nearer|toward|towards ?to FLOOR", "decrease bottom gap by $1"},
	{"LOWEST|first RAIL|one ?to ?be ?kept|held|up|well|nice|good ?and clear|out|up|free ?off ?up ?out of ?all ?that snow|slush|wet|damp|mud|dirt|rain|water|leaves|puddles|muck|splash|splashes|weeds ?, ?so|and|:|- ?that|call|say|make|put|set ?is|it|means ?at # ?up|clear off|above|from|of ?of FLOOR", "bottom gap $1"},
	// A rail that is named first.
	{"!first|second|third|fourth|fifth|sixth RAIL|one up , ?and i|we ?would want|wants|need|needs|like|likes ?to ?have|put|set|see ?its|the top ?edge|side|face ?of ?it|that|her ?to ?be|come|sit ?at|to #", "the $1 rail top at $2"},
	{"!first|second|third|fourth|fifth|sixth RAIL|one up , ?and its|the top ?edge|side|face ?of ?it|that|her ?is|at|comes|should ?be|to ?at|to #", "the $1 rail top at $2"},
	// The posts, whichever they are.
	{"^ whatever|whichever|any|every POST ?that|which ?i|we|you|they puts|put|set|sets|add|adds|stand|stands ?get|gets ?in ?at|to|between ?middle|there|them|it ?, ?then ?please stand|stands|make|leave|let|set|keep|have|run it|them|that|those ?stand|rise|be|run #", "the added post $1"},
	{"^ whatever|whichever|any|every POST ?that|which i|we|you|they puts|put|set|sets|add|adds|stand|stands ?get|gets ?in ?at|to|between ?middle|there|them|it ?, ?then ?please make|let|set|keep|have it|them|that|those ?be @", "the added post $1"},
	{"prouder|loftier than", "higher than"},
	{"POST @ , # added|new|extra", "posts $1 , $2 added posts"},
	// Why not more.
	{"^ ?and ?so ?but what has|have|is|keeps|holds|got|had us|me|you|it ?all ?stuck|stopped|held|pinned|stopping|stuck|limited|down|back ?at|on|to ## ?RAIL ,|.|?|; ?why|and can|could !i|we|you|they not !use|put|have|fit|get|go|do|take|run ?in|to|with", "why can $2 not $3"},
	{"equally wide|broad $", "the same width"},
	// The names of heaven, and what one is called.
	{"!how|why|what|where|who in|for ?the ?god name|sake of ?the god|heaven|goodness|sense|reason|mercy|jesus|creation|(all that is holy)|(all things holy)", "$1"},
	{"!how|why|what|where in|for god|heaven|goodness 's|s name|sake", "$1"},
	{", b'y|bye|boy|cher|abeg|biko|bai|wee ?man ,", ","},
	{", b'y|cher|abeg|biko|hen|pet $$", ""},
	{"abeg|biko|cher ?,", ""},
	{", b'y ?,", ","},
	// What one has always worked in.
	{"i|we ?have|had ?only|always ?ever worked|measured|built|dealt|thought|reckoned|done ?all|mostly ?but|except in|with !METRIC|CUSTOMARY ?, ?so|and ?we|i|(let us)|you ?will|shall|would|can|should|may|please|better ?just stick|keep|stay|go|work ?to|with|in those|that|them|these|it", "i work in $1"},
	// Sizes and lengths.
	{"hundred by hundreds|hundred", "100 x 100"},
	{"# , all|these|those|they|both|each ?of ?them ?are|is|being ?given|told|said ?all in metres|meters $", "$1"},
	{"?one|1 metre|meter and ## cm|centimetre|centimetres|centimeter|centimeters $", "1 metre $1 cm"},
	{"?one|1 metre|meter and ## cm|centimetre|centimetres|centimeter|centimeters !high|tall|wide|long|across|clear|between|from|up|off|above", "1 metre $1 cm $2"},
	{"!metres|meters and ## cm|centimetre|centimetres|centimeter|centimeters $", "$1 $2 cm"},
	{"!metres|meters and ## cm|centimetre|centimetres|centimeter|centimeters !high|tall|wide|long|across|clear|between|from|up|off|above", "$1 $2 cm $3"},
	{"!(BRACKET|caps|bases|anchors) ?will|do run|runs|go|goes|went ?for ?me ?us ## and !a|one|three !half|quarter|quarters each|apiece", "$1 cost $2 and $3 $4 each"},
	{"not ?even a|one|any|single !GAP|BAY|RAIL|OPENING|SPACE ?anywhere ?is|be ?to ?anywhere over|above|past|wider|bigger|more", "no $1 over"},
	{"no|any !GAP|BAY|RAIL|OPENING anywhere|wherever ?at ?all", "no $1"},
	// That is all there is of it: nobody leaves.
	{", ?and ?so ?but that|this is all|everything ?that|which they|yard|store|shop|place|SELLER ?only|ever|ever ?have|has|had ?got|have|has|had carry|sell|stock|keep|carries|sells|stocks|keeps|got|have|has|had|offer|offers ?here|there|(in stock)|(on the shelf)|left|today|now $", ""},
	{", ?and ?so ?but that|this is all ?that|which there|it is|was|needs|takes|has|gets ?to ?it ?here|there|now $", ""},
	{", ?and ?but that|this is all ?that|which they|it|each ?one cost|costs|run|runs|charge ?me|us ?now|here|there $", ""},
	// What is asked for by courtesy.
	{"^ ?please ?kindly ?just do the needful and|, ?and ?please ?kindly", "please"},
	{", ?and ?please ?kindly do the needful $", ""},
	{"^ ?please ?kindly revert ?back ?to ?me|us with|on|about", "tell me"},
	{"^ ?please ?kindly (get|write|come) back to|with ?me|us with|on ?the !total|price|cost|drawing|marks|list|cuts|gap|number|height", "tell me the $1"},
	{"!please|kindly share ?with ?me|us drawing|picture|sketch", "$1 show me the drawing"},
	{"total|full|final|whole amount $", "total cost"},
	{"to be purchased|ordered|procured|bought $", "to buy"},
	{"cautious|wary|mindful|watchful|vigilant of|about", "careful about"},
	{"i|we request|beg|urge ?of you to ?please|kindly", "please"},
	{"may|might|can|could i|we request you to ?please|kindly", "please"},
	// Who says what.
	{"!PERSON is|are ?still ?now ?always arguing|contending|maintaining|alleging|asserting|adamant ?that", "$1 says"},
	{", she|he|it measure|read|come ?to|at|in|out #", ", it measures $1"},
	{"!bottom|top measurement|number|figure|reading for|of|in|on !BAY # is|are|was ?not ?just no|not ?any ?much good|use|right , ?so ?please forget|drop|scratch|scrap it", "forget the $2 $3 $1 measurement"},
	{"!BAY # !bottom|top number|figure|reading|measurement|measure|one is|are|was|'s ?not ?just no|not ?any ?much good|use|right , ?so ?please forget|drop|scratch|scrap it", "forget the $1 $2 $3 measurement"},
	{"work|stick|stay|think|measure in|with|to mil|mils $", "work in millimeters"},
	{"work|stick|stay|think|measure in|with|to mil|mils ,|and", "work in millimeters ,"},
	{"POST base|bases|foot|feet|shoe|shoes stand|stands|set|sets|prop|props POST ?up # ?up off|above|clear|from ?of FLOOR", "base height $1"},
	{"^ !(the|our|my|his|her|that _) is saying|telling ?me|us ?that", "$1 says"},
	{"may|might|can|could i|we ?please ?kindly request|(beg for)|(trouble you for) !a|an|one|two|three|four|#", "i want $1"},
	{"^ ?please ?kindly write|jot|scribble|chalk ?me|us ?down|out the|them|those|all|my !marks|cuts|steps|lengths|list ?down|out|up ?on|onto ?a|some ?paper|card|slip|scrap ?for ?me|us $", "give me the $1"},
	// What is asked in the words of home.
	{"what is|'s ?the craic|story|crack|deal with|about !(the|my|our|that|this)", "why is $1"},
	{"!will|do|should|would|must !i|we|he|she|they be needing|requiring", "$1 $2 need"},
	{"i|we ?have ?only have|got|carry # ?on|with ?me|us ?to|for buy|buying|spend|spending ?on lumber|wood|timber|material|materials", "budget $1"},
	{"told !PERSON ?that !it|this|everything|total|gap|opening|wall|there", "told me $2"},
	{", ?and do not be putting|adding|using|giving ?me|us ?in ?no|any more|extra ?of ?them ?ones $", ""},
}
