package idiom

import (
	"slices"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// tradePhrases are turns of phrase of those who build, sell and dictate: two limits in one breath, a change told by its two ends, prices
// read off a tag, lengths that are gone, a custom that is to be kept, a correction by whom one goes by.
var tradePhrases = []phrase.Placed{
	// Two limits in one breath.
	{"?there ?must|should|shall|may|can|could|will|is|are ?to no|never|not ?(to|ever) ?be ?any less|smaller|narrower|tighter|closer|lower|shorter|fewer than # ?, nor|or|and|but ?not|never|no ?be ?any more|wider|larger|bigger|greater|farther|further|higher|longer than # to|in|for|of|across a|each|every|any|one !BAY|GAP|OPENING", "$3 at least $1 and at most $2", nil},
	{"?there ?must|should|shall|may|can|could|will|is|are ?to no|never|not ?(to|ever) ?be ?any more|wider|larger|bigger|greater|farther|further|higher|longer than # ?, nor|or|and|but ?not|never|no ?be ?any less|smaller|narrower|tighter|closer|lower|shorter|fewer than # to|in|for|of|across a|each|every|any|one !BAY|GAP|OPENING", "$3 at most $1 and at least $2", nil},
	{"no !BAY|GAP|OPENING ?may|can|should|must|shall|is|will|to ?be less|smaller|narrower|tighter|shorter than # ?, nor|or ?any more|wider|larger|bigger|greater|longer than #", "$1 at least $2 and at most $3", nil},
	{"no !BAY|GAP|OPENING ?may|can|should|must|shall|is|will|to ?be more|wider|larger|bigger|greater|longer than # ?, nor|or ?any less|smaller|narrower|tighter|shorter than #", "$1 at most $2 and at least $3", nil},
	{"?are|is|be|stay|go|get no|never|not ?to ?ever ?be ?any less|smaller|narrower|tighter|closer|shorter than # ?, nor ?be ?any more|wider|larger|bigger|greater|farther|further|longer than #", "at least $1 and at most $2", nil},
	{"?are|is|be|stay|go|get no|never|not ?to ?ever ?be ?any more|wider|larger|bigger|greater|farther|further|longer than # ?, nor ?be ?any less|smaller|narrower|tighter|closer|shorter than #", "at most $1 and at least $2", nil},
	{"no !GAP|OPENING|BAY reaches|reach|hits|((gets|comes|goes|runs|adds) ?up to)|(is as (wide|big|large) as) #", "$1 less than $2", nil},
	{"no !GAP|OPENING|BAY exceeds|exceed|passes|tops|((goes|gets|runs|comes) (over|past|above|beyond)) #", "$1 at most $2", nil},

	// A change by so much more, and one told by its two ends.
	{"spread|open|space|move|shift|pull|push|set RAIL|(them|those|these RAIL)|them ?up|out another|(an extra)|(a further) # ?further|farther|more ?apart|out", "raise the gap by $1", nil},
	{"spread|open|space|move|shift|pull|push|set RAIL|(them|those|these RAIL)|them ?up|out # more|further|farther|wider apart", "raise the gap by $1", nil},
	{"squeeze|close|move|shift|pull|push|set|bring|draw RAIL|(them|those|these RAIL)|them ?up|in another|(an extra)|(a further) # ?closer|nearer|tighter together", "reduce the gap by $1", nil},
	{"squeeze|close|move|shift|pull|push|set|bring|draw RAIL|(them|those|these RAIL)|them ?up|in # closer|nearer|tighter ?together", "reduce the gap by $1", nil},
	{"what if|(would happen if)|if|suppose|supposing|say !RAIL|STIFF|BAY|OPENING|(added POST) go|goes|went|come|came|drop|drops|dropped|fall|fell|grow|grew|rise|rose|change|changed ?down|up from ## ?down|up to ##", "what if $3 $1", nil},
	{"(what if)|if|suppose|supposing|say !RAIL|STIFF|BAY|OPENING|(added POST) go|goes|went|come|came|drop|drops|dropped|fall|fell|grow|grew|rise|rose|change|changed ?down|up from ## ?down|up to ##", "what if $3 $1", nil},
	{"(what if)|if|suppose|supposing|say !GAP|(OPENING width)|(bottom gap)|(WALL height) go|goes|went|come|came|drop|drops|dropped|fall|fell|grow|grew|rise|rose|change|changed|widened ?down|up from # ?down|up to #", "what if the $1 is $3", nil},
	{"if i|we|you ?was|were ?to went|go|ran|run|did|came|made|used|took|set|put # on|for|at|with|in !OPENING|GAP|BAY|(bottom gap)|(WALL height)", "if the $2 is $1", nil},

	// What is read off a tag, and what is gone from the racks.
	{"?(price|shelf) tag|tags|sticker|stickers|ticket on|for|by|under|over !(..) ?(is|are|was|were) ?just says|reads|shows|say|read|marked|gives|says|said", "$1 costs", pricedNext},
	{"!eights|tens|twelves|fourteens|sixteens|eighteens|twenties is|are not in store|yard|shop|stock|racks ?now ?any ?no ?more|longer|anymore", "they are out of $1", atClauseEnd},
	{"!eights|tens|twelves|fourteens|sixteens|eighteens|twenties is|are not in store|yard|shop|stock|racks ?now ?any ?no ?more|longer|anymore ?, ?so ?please ?just take|strike|cross|drop|leave|scratch|get them|those|it ?off ?out ?list", "they are out of $1", atClauseEnd},
	{"not a|one|single|(a single)|(one single) #  left|remaining|(to be had)|(to be found) ?(in|at|on|there) ?(store|yard|shop|stock|racks|rack|shelf)", "they are out of $1", nil},
	{"i|we|they|he|she ?have ?just sold ?out ?ME last|(very last) ?(one|ones) ?of #|eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?, ?and ?so ?there ?is|are ?no ?more|any ?of those|them|that", "they are out of $1", nil},
	{"stock|stocks|carries|carry|yard|store|shop ?has|have ?: ## / ## / ## ft|foot|feet|footers|' ?only", "stock $1 ft , $2 ft , $3 ft", nil},
	{"throw|put|toss|buy|get|load|add|order|count ME|in ?on ?just ## ?more|extra RAIL|boards ?more|extra|beyond|over|above|than ?and ?above ?than ?what needed|necessary|required|((it|this|that) (takes|needs))|((i|we|you) (need|needed))|(is (needed|required)) ?((on|onto|in|to) (cart|truck|trailer|order|pile|list))", "$1 spare boards", nil},
	{"throw|put|toss|buy|get|load|add|order|count ## RAIL|boards more|beyond|over ?than ?and ?above ?than ?what needed|necessary|required|((it|this|that) (takes|needs))|((i|we|you) (need|needed))|(is (needed|required)) ?((on|onto|in|to) (cart|truck|trailer|order|pile|list))", "$1 spare boards", nil},

	// What may be spent.
	{"?i|we ?can|could|will|would|do|am|are|is not|never ?going ?to ?want|like|afford ?to ?be blow|blowing|drop|dropping|sink|sinking|((shell|shelling|fork|forking|lay|laying|pay|paying|dish|dishing) out)|((fork|forking|hand|handing) over)|((cough|coughing) up)|((part|parting) with)|throw|throwing|plunk|plunking|splurge|burn|burning ?any more|over|above ?than ?\\$ # ?dollars|dollar|bucks|buck ?(on|for|into|at|toward|in) ?all ?my|our ?the ?materials|material|lumber|wood|boards|yard|store|stuff|this|it|wall", "budget $1 dollars", nil},
	{"owner|client|customer|homeowner|landlord|boss|committee|buyer|lady|gentleman|wife|husband 's ?spending|money|top|upper|absolute|price limit|ceiling|cap|maximum|allowance|budget ?for|on ?material|materials|lumber|everything is|of|at|(stands at) ?at ?about ?\\$ # ?dollars|dollar|bucks|buck", "budget $1 dollars", nil},

	// A custom that is to be kept.
	{"in my|our|((my|our) (father|grandfather) 's)|those day|days|time|times|youth ?, i|we|they|folk|folks|people|one ?always gave|allowed|left|made|built|hung|ran|set|had|kept !(..) , ?and so|thus shall|will|must|should|do|may|ought you|we|i|it|this|(this one) ?to ?do ?it|too $", "make $1", nil},
	{"in my|our|((my|our) (father|grandfather) 's)|those day|days|time|times|youth ?, !WALL|OPENING|GAP|BAY ?((like|of|as) (this|these) ?(kind|sort)) ?always stood|was|were|rose|measured|came|ran|went !(..) , ?and so|thus shall|will|must|should|do|may|ought this|it|(this one)|mine|ours|yours ?to ?be ?do ?too $", "$1 is $2", nil},

	// Somebody says this, and one goes by what is seen, or by somebody else.
	{"!says|reckons|thinks|claims|figures|insists|swears ?that !GAP|OPENING|BAY|(bottom gap)|(WALL height)|POST is|are|(should be)|(ought to be)|(must be) !#|@ , ?but|and|though|while lady|wife|customer|client|owner|boss|husband|she|he|gentleman|foreman ?herself|himself wants|needs|likes|prefers|(would (like|prefer|rather have)) !#|@ ?(, ?(and|so) ?(let us|we|i) ?(will|shall) (go|going|goes|stick|stay|stand) (by|with) (her|him|that|hers|his|(the|that one|latter)))", "$1 the $2 is $3 . the $2 is $6", nil},
	{"!says|reckons|thinks|claims|figures|insists|swears ?that !GAP|OPENING|BAY|(bottom gap)|POST|RAIL|(END POST)|(ADDED POST)|STIFF !is|are|(should be) !#|@ , ?but|and|though|while i|we ?only ?actually ?can see|find|saw|found|spot|spotted|count ?(them|they ?(at|to be)) !#|@ ?here|there|(out here) ?(, ?(and|so) ?please (enter|use|put|take|write|record|note|(go (with|by))) ?(down|in) ?(that|those|it|these|mine) ?down|in)  $", "$1 the $2 $3 $4 . the $2 $3 $7", nil},
	{", ?but|and|though i|we ?only ?actually ?can see|find|saw|found|spot|spotted|have|got !#|@ ?here|there|(out here) ?, ?and|so ?please enter|use|put|take|write|record|note|(go (with|by)) ?down|in|with ?(#|@|that|those|it|these|mine) ?down|in $", ", but i measured $1", nil},
	{"PAPER is|are|was|were wrong|off|mistaken|incorrect|(out of date) about|on|for|(as to) !(..) ;|,|. ?and ?so ?please enter|use|put|take|write|record|note|(go (with|by)) ?down|in # ?instead $", "$1 is $2", nil},
	{"wrote|written|put|rang|rung|marked|signed ME up|down for", "says", nil},
	{"?, is|was|were|are he|she|they|that|this ?man|boy|fella ?just telling|giving|being ?ME straight|truth|right|true|(it ?to ?ME straight)|(straight (story|goods|facts))|(straight with (me|us)) $", ", is that right ?", nil},
	{"!confirm|verify|affirm|agree|check or|and deny|disagree|refute|reject|correct", "$1", nil},
	{"is that|this|his|her|their count|figure|number|amount|total|length|size|quantity|measurement|claim|sum right|correct|true|accurate|good|ok|okay|(about right) $", "is that right ?", nil},

	// Light turns.
	{"!and|but|so|then um|uh|er|erm|umm|uhh|hm|hmm|ah ?,", "$1", nil},
	{"^^ ok|okay|alright|right|yeah|yep|well|so ?, cool|sweet|neat|awesome|dandy|swell|groovy|perfect ?,", "", nil},
	{", ?because|since ?_ _ ate|swallowed|gobbled|drained|devoured ?up it|that|them ?up $$", "", nil},
	{"^^ ?i|we ?have|just ?just measured|checked|gauged|miked|tested ?my|our stock|boards|rails|lumber|board|rail|(rail stock) with|using|by ?my|our|some calipers|caliper|(a ruler)|tape|(dial calipers)|(steel rule)|gauge|micrometer ,|;|.|and ?and", "", nil},
	{"?so ?just ?please show|give|tell|print|put ME everything|(it all)|(all of it) ?in that|this way", "", nil},
	{"around|about|roughly|near # !(..) ,|or|and ?somewhere|someplace (in there)|(round there)|thereabouts $", "about $1 $2", nil},
	{"around|about|roughly|near # !(..) somewhere|someplace (in there)|(round there)|(around there)|thereabouts $", "about $1 $2", nil},
	{"# somewhere|someplace (in there)|(round there)|(around there)|thereabouts", "about $1", nil},
	{", ?and ?that ?is final|(my final (answer|word|say|number))|(final answer)|(my last word) $$", "", nil},
	{"selfsame|(self same)|(very same)|(self - same)", "same", nil},
	{"whole|entire affair|shebang|contraption|concern|outfit|caboodle|works|assembly ?to ?is|be|stand|stands|goes|go|comes|come ?up ?to # high|tall|(in height)", "wall $1 high", nil},
	{"as !wide|big|large|tight|close|small|narrow|cheap|low as she|it|he|they|(this|that thing) will|can|could|would|may ?possibly ?go|get|be|come|stretch", "as $1 as possible", nil},

	// What is set, and where.
	{"!(END POST)|POST|(END UPRIGHT) i|we|they|he ?have|had ?just|already set|put|sank|planted|dug|installed|poured|placed ?in|up !are|stand|sit|is|measure|come", "$1 $2", nil},
	{"## POST|UPRIGHT ?(standing|set|going) ?in between ?two|both end|outer|outside|existing|old ones|posts|pair|uprights", "$1 added posts", nil},
	{"stop|end|cut|finish|keep|hold|leave|make|set|bring !(ADDED POST)|POST|(ADDED UPRIGHT) ?off|up # short|shy|below|under|down|lower ?of|than|from ?top ?of WALL|(top rail)|(top board)", "$1 is $2 less than the wall height", nil},
	{"stop|end|cut|finish|keep|hold|leave|make|set|bring|run|carry !(ADDED POST)|POST|(ADDED UPRIGHT) ?off|up # above|over|past|proud|beyond|higher ?of|than|from ?top ?of WALL|(top rail)|(top board)", "$1 is $2 above the wall", nil},
	{"finish|finishes|finished|tops|come|comes|end|ends|stop|stops|land|lands ?up ?out ?at|to # ?up|high|clear ?up off|from|above|over FLOOR", "finish at $1 off the floor", nil},
	{"set|lay|put !marks|(pencil marks)|lines out|down ?for|to ?ME ?, ?lad|son|boy|mate|sir $", "show me the marks", nil},
	{"^ set|lay|draw|mark out ?for ?ME marks|(pencil marks|lines)|lines ?for ?ME ?, ?lad|son|boy|mate|sir $", "show me the marks", nil},
	{"^ set|lay|draw pencil|layout marks|lines out|down ?for|to ?ME ?, ?lad|son|boy|mate|sir $", "show me the marks", nil},
	{"(how come)|why i|we am|are ?only getting|seeing|showing|(ending up with)|(looking at)|(coming up with) that|so|this many !RAIL|POST|BAY|STIFF", "why so many $1", nil},
	{"how many|much RAIL|boards|lumber|sticks|wood am|are|do|should i|we ?have ?to pulling|pull|loading|load|grabbing|grab|fetching|fetch ?(for|off|from him|her|them|racks|(the rack))", "what do i have to buy", nil},
	{"^ he|she|they|(this (one|fella|guy|lady|customer)) ?is|are buying|shopping|ordering|building|pricing for|out ##", "$1", nil},

	{", ?and ?then ?tag|one|sticker on|for|by !(_ ?_ ?_ ?_ ?_) ?it ?says|reads|is", ", $1 costs", pricedToo},

	// Run on in one breath.
	{"!STIFF|POST|RAIL ?in|to|for|per ?each|every ?BAY ?, and i|we am|are making|cutting|ripping|sawing|building|doing them|those|it ?out ?of|from|as|in @", "$1 , $1 size $2", nil},
	{"and|, i|we am|are hanging|hooking|fastening|screwing|putting|mounting|running @ ?RAIL off|on|onto|to|between|across ?of them|those|POST|it", ", rails are $1", nil},
	{"with ## POST|UPRIGHT ?ADDED|set|going|put|standing ?in between them|those|(the two)", ", $1 added posts", nil},
	{"## extra|added|more|additional POST|UPRIGHT in|along|on run|stretch|line|row", "$1 added posts", nil},
	{"can|may|must|should|shall|to|do not ?ever pinch|neck|close|narrow|squeeze|shrink|come|get|go|let ?it ?down|in|up ?to ?any less|tighter|narrower|smaller|skinnier than #", "at least $1", nil},
	{"top of her|him|this|(whole (thing|business)) ?to stands|sits|comes|is|goes|finishes|stand|sit|be|come|reaches ?up ?at|to # ?up off|above|over|from", "wall height is $1 above", nil},
	{"every|each last|single|blessed|solitary RAIL", "every rail", nil},
	{"spread|open|space|move|shift|pull|push|set RAIL|(them|those|these RAIL)|them ?up|out another|(an extra)|(a further) !sixteenth|eighth|quarter|half ?inch ?further|farther|more ?apart|out", "raise the gap by a $1 inch", nil},

	{", ?and|so ?please ?you be quick|snappy|sharp about it $$", "", nil},
	{"and|so ?please ?you be quick|snappy|sharp about it $$", "", nil},
	{"?(^ so) that|this ?then brings|puts|gets|makes|leaves WALL ?up to|at what height $$", "what is the wall height", nil},

	// Vocatives, short names, what was stored.
	{", mate|chum|lad|(old (chap|man|son|boy))|squire|guv|pal|buddy|matey|cobber $$", "", nil},
	{"?go fetch|get|grab|find|pull|bring|haul ME ?up|out ?back one|wall|plan|design ?that|which i|we saved|stored|kept|filed ?it ?as|under|(by|under name ?of)", "open", nil},
	{", wh|(wall ht) $$", ", what is the wall height", nil},
	{", ?and wh|(wall ht) ?\\? $$", ", what is the wall height ?", nil},
	{"cause !i|we|they|it|half|some|most|you|he|she|there|my|our|his", ", because $1", nil},

	// What was read wrong.
	{"^^ ?sorry|oops|whoops|wait|shoot|hm|hmm ?, ?i|we read|had|got|held it|that|tape wrong|(upside down)|backwards|(wrong way round) ,|:|;|.", "", nil},
	{", ?((hang|hold) on)|sorry|wait|oops|whoops|no ?, ?i|we read|had|got|held it|that|tape|mine wrong|(upside down)|backwards|(wrong way round) ,|:|; ?it|that ?is|was #", ", no , $1", nil},
	{"^^ show|give|tell ME ?everything ?in millimetres|millimeters|mm|metric|centimetres|centimeters ;|,|.", "units metric .", nil},
	{"^^ i|we ?always measure|work|think|reckon|draw|build in millimetres|millimeters|mm|metric ?(in|at (this|my|our) (room|shop|house|class|yard|school))|here ,|; ?and|so", "units metric .", nil},

	{"how high|tall she|it|he|that|they|this|wall ?will|would tops|top|ends|end|comes|come|finishes|finish|winds|wind ?up out|up|off", "what is the wall height", atClauseEnd},
	{"?(^ (please|kindly)) see|make|take (to it)|sure|care ?that !GAP|OPENING|BAY|(bottom gap)|WALL|POST|RAIL|STIFF", "$1", phrase.StartsClause},
	{"figure|add|give|throw|count|get|put|allow ME ?in ## percent|% ?of extra|more|over|spare", "spare $1 percent", nil},

	// Behind what was told.
	{"?, ?because|as ?i|we|he|they am|are|is not cutting|making|sawing|having|buying|doing two|different|several|mixed|three|five ?different|separate sizes|lengths $", "", behindWords},
	{", ?or oh|aw|ah|well ?, heck|darn|shoot|drat|dang|nuts|blast|fiddle|bother|hang|hell ?(it|with it) , #", ", no , $1", nil},
	{"!GAP ?as ?small|close|narrow|tight as possible|(can be)|((i|we|you|they) can) ?, but|yet|though ?still ?(keep|stay|stays) ?it !>|>=|((more|greater|wider|bigger|larger) than)|over|above|(at least)|(no (less|smaller|narrower) than) #", "smallest gap . gap $2 $3", nil},
	{"i guess|suppose|reckon|imagine|(would guess|say)|figure about|around|roughly #", "around $1", nil},
	{"would|will|does|do it|that|this|everything|things|layout|they ?still ?all come out|(work|pan out)|(go|come together)|(add up)|fly ?ok|okay|right|fine|even if", "would it work if", nil},
	{"!customer|client|buyer|fella|lady|wife|husband|boss|boy|neighbor|dad|father|mother|mom|son|daughter|owner|brother|sister 's got", "$1 has", articleNext},
	{", ?and ?but|then ?just|instead make|have|get|keep them|those ?both|all equal|alike|even|(same width)|((of ?a|an|one) (equal|even) width) $", ", equal bays", baysBefore},
}

// pricedNext reports whether a price follows: a figure, and nothing that tells how long or thick something is.
func pricedNext(_, after []scan.Atom) bool {
	if len(after) == 0 || after[0].Text != "$" && !slices.Contains(lex.Words().Numbers, after[0].Text) && (after[0].Text[0] < '0' || after[0].Text[0] > '9') {
		return false
	}
	for _, a := range after {
		if a.Kind == scan.Sign && (a.Text == ";" || a.Text == ",") {
			break
		}
		if thickOrLong[a.Text] {
			return false
		}
	}
	return true
}

// thickOrLong are words of what is measured, and not bought.
var thickOrLong = scan.WordSet("inch inches in foot feet ft mm cm m thick wide high long tall deep gap / by x")

// behindWords reports whether something stands before a phrase in its sentence.
func behindWords(before, _ []scan.Atom) bool {
	return len(before) > 2 && before[len(before)-1].Text != "."
}

// articleNext reports whether a thing is named next: "he's got a mower".
func articleNext(_, after []scan.Atom) bool {
	return len(after) > 0 && lexicon.Vocab().Articles[after[0].Text]
}

// baysBefore reports whether bays were spoken of in the line, and no other parts that may be equal.
func baysBefore(before, _ []scan.Atom) bool {
	bays := false
	for _, a := range before {
		bays = bays || a.Text == "bays" || a.Text == "bay" || a.Text == "sections" || a.Text == "panels"
		if a.Text == "gaps" || a.Text == "rails" || a.Text == "boards" || a.Text == "spaces" || a.Text == "stiffeners" {
			return false
		}
	}
	return bays
}

// pricedToo reports whether a price follows another one.
func pricedToo(before, after []scan.Atom) bool {
	return pricedNext(before, after) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "costs" || a.Text == "reads" || a.Text == "says" || a.Text == "tag"
	})
}
