package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// orderPhrases are ways to order: to print, to draw, to open, to take back and to change what was said.
var orderPhrases = []phrase.Placed{
	// What is written down, and where to.
	{"^^ ?please (get|give|make|print|i need|i want|we need|we want|can i (have|get)|could i (have|get)|(could|can) you make) ?me|us ?one (printable|printed|paper|print - out|printout|print) ?sheet|page|copy|version|plan|one|(job sheet)|layout ?(of (it|this|that|wall|plan|layout|drawing)) called|named|in|to|as|under|into !(.. . (html|htm)) $$", "print to $1", nil},
	{"on file as|under", "saved as", nil},
	{"^ ?((can|could|would|will) you) ?please put|write|print|save|send|publish|render|export|output|dump|make|get|lay|set ?PRINTED ?PRINTED ?PRINTED ?PRINTED ?PRINTED in|into|to|onto|on|as ?([one] [new] [web] (html file|html page|page|file|sheet|document|webpage|handout) [called|named|titled|by the name of]) !([_|##] (_|##) . (html|htm))", "print it to $1", nil},
	{"^ ?((can|could|would|will) you) ?please put|draw|sketch|save|send|render|export|output|make|get|print ?PRINTED ?PRINTED ?PRINTED ?PRINTED ?PRINTED in|into|to|onto|on|as ?([one] [new] [picture|drawing|image|svg|vector] (file|picture|drawing|image|sheet) [called|named|titled|by the name of]) !([_|##] (_|##) . svg)", "draw to $1", nil},
	{"^^ the file|one|plan|wall|layout|job|design|version|project|sketch ?that|which ?i|we ?have saved ?it ?(as|under|by the name of) !.. , ?please (open|load|pull up|bring up|bring back|get|fetch|call up|reopen) ?(that one|me that|that|it) ?up|back|again", "open $1", nil},
	{"?((could|can) you|please) !print|save|draw|compare|export hers !to|as|in|with|against", "$1 this $2", nil},
	{"^^ ?((could|can) you|please) !print|save|draw|compare|export his !to|as|in|with|against", "$1 this $2", nil},
	{"do|build|make hers (the same as|just like|exactly like|like) !(_ wall)", "same as $1", nil},
	{"!print|save|draw|put !this|that|it|(the drawing)|(the sheet)|(the cuts) for (him|her|them|[this] (customer|gentleman|lady|fella|couple|guy)) !as|to|in", "$1 $2 $3", nil},
	{"(this one|this wall|this|it) done|built|made ?just|exactly like !([the] _ wall)", "this one like $1", nil},
	{"?a|the list ?that i|we|he|she|they can take|bring|carry|use|show|hand ?.. $$", "the shopping list", nil},
	{"^^ ?please|and|then|now|also|just have the !bays|gaps|sections|panels|rails|boards|posts|spaces ?!all|both !come|be|turn|end|work|look", "make the $1 $2 $3", nil},
	{"CLIENT wants|want|(would like)|needs|asked you to !walk|take|talk|run|guide|lead|show|tell|explain|teach|give|list|draw|print|save|read", "please $1", nil},
	{"CLIENT wants|want|(would like)|needs to be walked|taken|talked|run|guided|led through", "walk me through", nil},
	{"^^ he|she|customer|lady|gentleman|fella|(the (customer|lady|gentleman|fella)) says|said ?to !make|keep|leave|put|set|use|hold|give|go", "$1", nil},
	{"^^ ?!(i|we|let us|he wants to|she wants to) put|push|take|move|bump|crank !(the (gap|gaps|wall|walls|opening|openings|spacing|height|heights|spare)) up to", "$1 raise $2 to", nil},
	{"leave (them all|the boards|the rails|everything|all of them|each RAIL|each|them) # short", "cut them $1 short", nil},
	{"!(get by|manage|get away|make do|do|be fine|live|go) with no !_", "$1 without $2", nil},
	{"!((bay|panel|section) ##) RAIL ?are|were|is|was cut ?to|at", "$1 cut at", nil},
	{"^^ they want ## !rail|rails|board|boards|slat|slats|bay|bays|opening|openings|stiffener|stiffeners", "he wants $1 $2", nil},
	// What is chosen.
	{"^^ (he|she|they|[the] customer) will (take|go with|have) !((first|second|third|fourth|last) (one|option|choice|way)|option (_|##)) ?(you (gave|offered|had)) $$", "take the $1", nil},
	{"^^ ?the !first|second|third|fourth one|option|choice is|'s (the one|what) he|she|they|i|we want|wants|like|likes|prefer|prefers|picked|chose $$", "take the $1 one", nil},
	{"^^ (he|she|they|[the] customer) ?has|have|is picked !((first|second|third|fourth|last) (one|option|choice|way)|option (_|##)) $$", "take the $1", nil},
	{"^^ (he|she|they|[the] customer) no longer want|wants|need|needs|((cares|care) (about|for))", "i no longer want", nil},
	{"(^^|[just] (do|go with|pick|choose|use|give me)) whatever|whichever ?one|way|plan|layout|option|version keeps|holds|gets|makes|brings|leaves ?his|her bill|cost|costs|price|total|spending|outlay ?down ?at lowest|smallest|least|down|cheapest|low|minimum $$", "cheapest", nil},
	{"(^^|[just] (do|go with|pick|choose|use|give me)) whatever|whichever ?one|way|plan|layout|option|version leaves|makes|wastes|gives|(throws away)|(throws out)|has|produces ?me|us least|fewest scrap|scraps|waste|offcuts|leftovers|wood|lumber $$", "least waste", nil},
	{"^^ i|we|he|she|they|customer ?really|just hate|hates (paying|to pay) for scrap|scraps|waste|offcuts|leftovers $$", "least waste", nil},
	{"least|lowest|smallest|minimum number of !posts|rails|boards", "fewest $1", nil},
	{"!widest|biggest|largest|roomiest|broadest|smallest|tightest|narrowest|closest|fewest|most|least|lowest !* ?that he|she|they can|could ?possibly|ever (have|get away with|get|make|build|manage|fit|do|afford|put in)", "$1 $2 possible", nil},
	{"as !few|many|wide|little|much|small|tight|narrow|big|large|cheap|low ?!* as he|she|they can|could ?possibly ?(have|get away with|get|make|manage|fit|build)", "as $1 $2 as possible", nil},
	// What is taken back and set.
	{"(whoa|hold on|wait|hang on|hey|no) ?, back up ?, !i|we|it|that|the|my|make|there", "wait , $1", nil},
	{", otherwise !as|the", ", $1", nil},
	{"stays put", "stays", nil},
	{"i|we (do not|no longer|cannot|can not) ?really|quite|fully|entirely trust !((my|our|the|that|this) ..) ?, so|and ?(please|just|let us|could you|can you|you can) ?please drop|forget|discard|scrap|remove|ignore|delete|erase|toss it|that ?please $$", "forget $1", nil},
	{"(i am|we are) not ?so|really|quite|entirely|too sure|certain|confident about|of|in !((my|our|the|that) * [..]) ?, so|and ?(please|just|let us|could you|can you|you can) ?please drop|forget|discard|scrap|remove|ignore|delete|erase|toss it|that ?please $$", "forget $1", nil},
	{"CLIENT ?has|have|is ?just|since changed ?his|her|their mind|minds about|on|over !(the ..) ?, ?so|and|please|just drop|forget|scrap|lose|scratch|ditch|remove|skip|kill|cancel it|that|them ?please|then $$", "forget $1", nil},
	{"CLIENT ?has|have|is ?just changed ?his|her|their mind|minds about|on !(the _ [_]) ?, ?and|so|please (make it|now it is|it is|it should be|he wants it|she wants it|he wants|she wants)", "make $1", nil},
	{"CLIENT can|could not mark|measure|work|cut|read|see ?anything finer|closer|smaller|tighter than ?nearest !eighth|sixteenth|quarter|half|millimeter|1/8|1/16|1/4|1/2|1/32|(thirty - second) ?(of an inch|inch) $$", "work to the nearest $1", nil},
	{", ?(sorry|oops|no|wait) ?, i misheard|misread|misspoke|mistyped ?him|her|them|that|it ,", ", sorry ,", nil},
	{", he|she|they has|have|is|are not (decided|sure|settled|made up [his|her|their] (mind|minds)) ?(on (it|that|one)) ?yet $$", "", phrase.SaidBeforeOf(scan.WordSet("forget scratch drop scrap ditch lose"))},
	{"^^ CLIENT has|have|is|are (gone|been going|going|been) back and forth ?(on (it|this|that)) ?, but|and (it is|he wants|she wants|they want)", "he wants", nil},
	{"?(i|we) (should not have|ought not to have|had not meant to have|wish i had not) undone that|it|this", "i did not mean to undo that", nil},
	{"?(i|we) undid (too much|one too many|too many|the wrong thing|that by (mistake|accident))", "i did not mean to undo that", nil},
	{"^^ maybe|perhaps|possibly !.. ?, no|nah|nope ?, (definitely|certainly|absolutely|make it|let us say|go with|better|rather|surely)", "$1 , no ,", nil},
	{"^^ (i|we|[his|her|their] _) (thought|said|figured|told you) ?that i|we|he|she|they (wanted|needed|would want|would need|would have|would take) !.. ?, but ?now|really|actually|today i|we|he|she|they ?now|really|actually|do want|wants|need|needs|prefer|(would rather have)|(would like) ##", "$1 , no , $2", nil},
	{"^^ i|we (said|had|told you|asked for|wanted|picked|chose) .. (before|earlier|at first|yesterday|previously|a moment ago|just now|originally) ?, but ?now i|we (would like|want|need|would rather have|would prefer|prefer) ?now !.. ?now|instead $$", "i want $1", nil},
	{"^^ ?no|wait|sorry|oh|(hold on) ?no|wait ?, not rail|rails|board|boards|slat|slats|plank|planks|course|courses|gap|opening|wall|post|posts|doorway|span|bay|bays ?, ?but ?(i (mean|meant)) ?!the|my|our !bottom|top|added|end|rail|post|stiffener|wall|opening|gap|bay", "$1 $2", nil},
	{"(let us|do|i do|we do|i would rather|we would rather) not ?have|put|want|leave|keep|set !the|my|our !opening|doorway|walkthrough|(walk - through)|gate|entrance|gateway ?be on|at|in|to the left|right|middle ?side|end ?, ?but ?(put|have|move|set|make|place|i want|we want|i would like) ?it on|to|in|at the !left|right|middle", "$1 $2 on the $3", nil},
	{"^^ i|we ?have ?(had|having|been having) (another|a second|a|one more|a little|a good) think|rethink ?(about it|on it|about that) ?, and|so !i|we|the|make|let|set|put", "$1", nil},
}
