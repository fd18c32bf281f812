package lexicon

import "sync"

// homely are ways of old hands who talk as they were taught to: they bid you mind what you do, would sooner have a thing than
// not, and were too hasty when they took one back.
var homely = []Entry{
	{Kind: Fill, Key: "fill", Ways: `
		mind [that] (you|it|they|we)
		(do|please) mind [that] (you|it|they|we)
		(see|look) to it [that] (you|it|they|we)
		(should|must|has to|have to|needs to|need to|ought to|is to|are to|want to|wants to) hit
		(that|the|my) [very] last [(one|thing|bit|change|line|step|entry|remark|instruction|statement)] (was|is) [(all|just|simply|plain|only)] (a mistake|wrong|an error|a slip|a blunder|a slip of the tongue|not right|not what i meant|a goof|a typo|a bad idea|a poor idea) [(of mine|on my part|by me)]
		(i|we) (was|were|have been|am|are) [(a bit|a little|too|much too|far too|way too|rather|overly)] (hasty|quick|rash|fast|hurried) [(in|about|with|by)] [(undoing|taking back|dropping|undo|take back|reversing|to undo|to take back|scratching)] [(that|it|the last one|the last thing|this)]
		(that|it) (was|is) [(a bit|a little|too|much too|far too|way too|rather|overly)] (hasty|rash|hurried) [of me]
		before (i|we|you|he|she|they) [(even|ever|so much as|actually|finally)] (pick up|picked up|touch|fire up|plug in|turn on|switch on|start up|get out|reach for|lay hands on|take up|make|go near|put) [(the|my|a|our|any|to)] [(first|single|new|table|miter)] (saw|saws|saw blade|tools|tool|hammer|drill|driver|blade|cut|sawdust|pencil|wood) [(to (wood|lumber|timber|board|RAIL))]`},
	{Kind: Head, Key: "state", Loose: true, Ways: `
		(i|we) (would|had) (sooner|as soon|just as soon|much sooner|far sooner) [(have|see|go with|use|make it|keep it|set it|put it)] [it]
		(i|we) (would|had) (sooner|as soon|just as soon|much sooner|far sooner) (he|she|it|they|you) (were|was|had|stood|came|used)`},
	{Kind: Tail, Key: "claimed", Loose: true, Ways: `
		(that|this|which) (is|was|'s) (what|how|the way) (he|she|they|PERSON) [(has|have|had)] (wrote|written|put|drew|drawn|told ME|said|has|had|showed|shows|marked|set|jotted|noted|figured|came up with|listed|sketched|quoted|gave ME) [(it|that)] [(down|up|in|out|me|us)]`},
	{Kind: Units, Key: "customary", Loose: true, Ways: `
		(i|we) (want|need|prefer|like|would like|would rather have|would sooner have|would rather see|would prefer|would rather) [(to (have|see|get|read))] (it|everything|things|it all|all of it|the lot|them|the numbers|the figures|my numbers|the answers|the lengths|all this|all that) [(back|shown|all|given|told)] in (CUSTOMARY|feet and inches|inches and feet|feet) [(again|please|from now on|from here on|after all|now)]
		(i|we) (would rather|would sooner|would prefer|prefer|want|would like) [to] (have|see|get|use|work in|hear|read) (CUSTOMARY|feet and inches|inches and feet) [(again|please|from now on|from here on|after all|now|instead)]`},
	{Kind: Units, Key: "metric", Loose: true, Ways: `
		(i|we) (want|need|prefer|like|would like|would rather have|would sooner have|would rather see|would prefer|would rather) [(to (have|see|get|read))] (it|everything|things|it all|all of it|the lot|them|the numbers|the figures|my numbers|the answers|the lengths|all this|all that) [(back|shown|all|given|told)] in METRIC [(again|please|from now on|from here on|after all|now)]
		(i|we) (would rather|would sooner|would prefer|prefer|want|would like) [to] (have|see|get|use|work in|hear|read) METRIC [(again|please|from now on|from here on|after all|now|instead)]`},
	{Kind: Cmd, Key: "recap", Loose: true, Ways: `
		(go|run|read|look|walk|take me|take us) (down|over|through) (list|rundown|tally|summary|record) [of] [(everything|all|what|whatever|all that|all of what)] [(that)] (i|we) [(have)] (told|given|gave|said|entered|asked|set|put in) [(you)] [(so far|up to now|until now)]`},
	{Kind: Goal, Key: "even gaps", Loose: true, Ways: `
		(not|never) (spread|share|smear|carry|pass|push|split|let|distribute|bury|hide) [(any|the)] (rounding|error|errors|difference|slop|remainder|rounding error|leftover|leftovers) [(get|be|run|go)] [(spread|shared|passed|carried|build up|pile up|add up)] [(about|around|out|along|over|up|down|between GAP|across GAP|among GAP|into GAP|through GAP)]`},
	{Kind: TailFill, Key: "as told", Ways: `
		[(,)] [(so|then)] [(that)] (i|we) [(will|can|would|could|shall|only|need to|have to|am|are)] (not|never|will not|do not have to|need not|do not want to|will not have to|will not be) [(be|have to|need to|want to)] (set|setting|reset|resetting|move|moving|shift|shifting|change|changing|adjust|adjusting|touch|touching) [(the|my|our)] (stop|saw stop|stop block|fence|saw fence|jig|saw setting|saw|setup) (twice|again|every time|each time|for (each|every) (one|cut|RAIL|bay)|more than once|all the time|all day)
		[(,)] [(so|then)] [(that)] (i|we) [(will|can|would|could|shall|only|need|need to|have to|just)] [(only|just|have to|need to)] (set|setting) [(the|my|our)] (stop|saw stop|stop block|fence|saw fence|jig|saw) [(up)] [(only|just)] once`},
	{Kind: Cmd, Key: "save", Ways: `
		(stash|stow|archive|park|bank|record|tuck|put|keep|save|store|file|lay|set|log|enter|hold) (this|it|that|these|my|the|our|all this) [(one|plan|job|design|wall|version|layout|lot|work|project|file|sketch|setup|thing)] [(away|by|aside|down|up|on file|in store)] (under|with|by) [the] name [of]
		(stash|stow|archive|park|bank|record|tuck|put|keep|save|store|file|lay|set|log) (this|it|that|these|my|the|our|all this) (one|plan|job|design|wall|version|layout|lot|work|project|file|sketch|setup|thing) (away|by|aside|on file|in store) (as|under) [the] [name] [of]`},
	{Kind: Fill, Key: "fill", Ways: `
		[(porch|deck|patio|structure|shelter|pavilion|gazebo|pergola|veranda|carport|house|place)] (i|we|there|it|she|they|) [already] (has|have|got|is|are) [(already)] [got] two [(END|good|stout|solid|strong|sturdy|big|heavy|nice)] (posts|psts|columns|pillars) [(already|up|in place|standing|in|there)] (already|in place|standing|there|up|in the ground)
		(is|are|was|will be|would be) [(going to be|meant to be|supposed to be|to be)] the (shorter|longer|taller|lower|bigger|smaller|higher|main|easy|hard|tricky|difficult|easier|harder|trickier) (one|of (the|) two)
		(i|we) (grew up|was raised|were raised|was born|were born|lived|learned my trade|learned the trade|trained|went to school|served my time) (overseas|abroad|elsewhere|over there|across the pond|across the water|on the continent|in another country|in (europe|germany|france|canada|australia|mexico|scotland|ireland|japan|india|england|holland|denmark|norway|sweden))
		(i|we) (am|are) [(all|quite|very|brand|rather|pretty|totally)] new (to|at|with) (this|it|your|these) [(contraption|thing|things|gadget|program|app|tool|machine|gizmo|software|game|business|outfit|sort of thing|kind of thing|line of work)]
		(they|it|those|these) (have|has|must|should|need|needs|ought|got) [to] (stay|be|keep|remain|come out|end up|stop) [(well|just|always)] (below|under|less than|smaller than|tighter than) that
		[so] (could|can|may|shall|might) (i|we|you) [please] (use|stick to|keep to|work in|stay with|go with) (those|them|that|these) [(from now on|from here on|instead)]`},
	{Kind: TailFill, Key: "to order", Ways: "(to|on|onto) [(the|my|our)] (order|shopping list|buying list|purchase order)"},
	{Kind: Part, Key: "centers", Sense: Meaning("centers"), Ways: `
		between [(two)] END POST (centers|centres|center lines|centerlines|ctrs)
		between [the] (centers|centres|center lines|centerlines|middles) of [(two|both)] END POST
		from [the] (center|centre|middle) of one END POST to [the] (center|centre|middle|) [of] [the] other [(one|END POST)]`},
	{Kind: Reason, Key: "reason", Ways: "for there (is|are) [(always|bound to be|sure to be|usually|often|generally|mostly)]\nas (i|we) (tend|am apt|are apt|am prone|are prone|am likely|are likely|am liable|am bound) [to]"},
	{Kind: Fixed, Key: "fixed", Ways: "[(is|are|was|has been|have been|being)] [already] made fast [(already|in place|to the posts)]\nfast already\nalready (made|set) fast"},
	{Kind: Top, Key: "top", Ways: "with (her|his|its) (top|upper) edge\nwith (her|his|its) top"},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: `
		[of] [(open|free|empty|clear)] (space|room|distance|air) between their [(inside|inner|near|facing)] (faces|sides|edges)
		between (their|its) (inside|inner|facing) (faces|sides|edges)
		from (the|) inside [(face|edge)] of one to [the] inside [(face|edge)] of [the] other`},
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: `
		(i|we) (will|would|do|can|shall|am|are) not [(going to|to|willing to|prepared to|about to)] (lay out|part with|shell out|fork out|fork over|put out|cough up) (above|over|more than|past|beyond|higher than) [(for|on)] [(material|materials|lumber|wood)]
		(i|we) (will|would|do|can|shall|am|are) not [(going to|to|willing to|prepared to|about to)] go [(above|over|more than|past|beyond|higher than)] [(for|on)] [(material|materials|lumber|wood)]`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		(what|which) [(RAIL|lumber|wood|timber|material|materials|stuff|sticks|supplies)] [(all)] (must|should|do|shall|will|would|have) (i|we) [(have|need|to|got)] (send for|send out for|lay in|send away for|bring in|call in|have sent|have delivered|have brought)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		what (is|does|will|would|do) [the] [(whole|full|final|total)] (reckoning|damage|damages|score|tally|bill|sum total|tab|toll) [(for all that|for it|in the end)] [(going to|gonna)] (come|amount|run|add up|be|tot up) [(to|up to)]
		what is [the] (reckoning|damage|tab) [(for all that|for it|in the end|then)]`},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		what (may|can|might|could|do|should|am allowed to) (i|we|one) (say|ask|tell|type) [(to|of)] (it|you|this|this thing) (about|regarding|concerning|on)`},
}

// seemings tell how a part of the wall looks to somebody, before they say what to do about it.
var seemings = []Entry{{Kind: Fill, Key: "seems", Ways: `
		(seems|seem|looks|look|feels|feel|strikes me as|strike me as|seemed|looked|felt) (a bit|a little|a little bit|rather|somewhat|kind of|sort of|a touch|a tad|pretty|quite|slightly|awfully) (tall|high|low|short|wide|narrow|big|small|tight|loose|long|deep|thick|thin|large|skimpy|cramped) (to|for) (me|us|my taste|our taste|my liking|our liking)`}}

// SeemingVocab holds the ways to say that something seems so.
var SeemingVocab = sync.OnceValue(func() *Vocabulary { return Compile(nil, seemings) })
