package lexicon

// asksOfAll are ways to ask after a table, for a reason or for help, as people put it who talk round about what they want to see.
var asksOfAll = []Entry{
	{Kind: Quest, Key: "layout", Loose: true, Ways: `
		(how|what) (it|that|this|everything|things|all of it|all of this|all that) [all] [(going|gonna|likely)] [to] (shake|shakes|pan|pans|shape|shapes|stack|stacks|wash|washes|play|plays) (out|up|down)
		(how|what) (it|that|this|everything|things|all of it|all of this|all that|wall|whole thing|bits and pieces|pieces) [all] [(going|gonna)] [to] (come|comes|go|goes|fall|falls|fit|fits|hang|hangs) (together|into place)
		how (it|that|this|everything|things|whole thing) [all] [(going|gonna)] [to] (end|ends|wind|winds|fall|falls|boil|boils) (up|out|down) [to]
		(what|which) (numbers|figures|dimensions|measurements) (do|did|have) (you|we|i) (get|got|have|come up with|end up with|arrive at)
		(see|have|hear|show|give|read) [ME] [(the|all the|your)] (final|finished|complete|end|whole) (layout|result|answer|outcome|numbers|arrangement|design|wall)
		(what|where) (that|it|this|all that|all this) (put|puts) ME
		what is [the] (verdict|upshot|bottom line on (it|this|the layout)|word on (it|this|the layout|the wall))
		(lay|set) (it|that|everything|wall|the whole thing) (out|down) for (ME|PERSON) [(one more time|once more|again|once again)]`},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		(look|looking) at (which|what) (arrangements|layouts|combinations|counts|solutions|setups|designs|options|possibilities) [(are|is|would be|might be)] [(possible|available|there|allowed|feasible|open)]
		(which|what) (arrangements|layouts|combinations|solutions|setups|designs|counts|numbers|ways) (are|is|would be|might be|could be) (possible|available|allowed|feasible|open|on the table|in play)
		(which|what) (combos|combinations|setups|mixes) [(are|is|would|could|will|do)] [(on the table|possible|work|fit|go|in play|available|there)]
		(lay out|run through|go over|go through|walk ME through|take ME through) [(the|all the|my|our|all my)] (options|choices|possibilities|alternatives)
		(what|which) (options|choices|possibilities|alternatives) (are|is|have) [(there|i|we|open|left|still)] (open|left|on the table|available|going|remaining) [(to)] [ME]
		(how much|what) (choice|freedom|leeway|latitude|wiggle room|elbow room) (have|do|is) (i|we|there) [got] [have]`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		(at) (what|which) (heights|height) (should|do|must|shall|would|will|am) (i|we) [to] (draw|strike|scribe|pencil|make|put|mark|set) [(my|the|all|our)] (lines|marks|holes|line|mark) [(for|of)] [(the|my|all)] [(RAIL|BRACKET)]
		(at) (what|which) (heights|height) (RAIL) [(go|sit|get|hang|mount|fastened|fixed|screwed|mounted)] (on|onto|to|up) POST
		where (do|should|must|shall|would|will|does|am) (i|we|he|she|they|PERSON) [to] (mark|pencil|scribe|strike|draw|drill|put|make) [(it|them|POST|RAIL|BRACKET|everything)] [(out|off|up)] [(my|the|his|her)] [(lines|marks|holes)] [(for (the|my|) (RAIL|BRACKET))]
		(what|where) (are|is|go) (his|her|their) (marks|mark|lines|holes|pencil lines)
		(marks|mark heights|hole heights|bracket heights|lines) [,] (bottom to top|bottom up|top to bottom|from (the|) (floor|bottom|slab|ground) up|up from (the|) (floor|slab|ground))`},
	{Kind: Quest, Key: "posts", Loose: true, Ways: `
		where [(exactly)] [(on|along|in) (FLOOR|WALL|span)] (do|does|should|must|will|would) (it|POST|base|post base) (go|belong|stand|sit|land|come|get set|get anchored|get bolted|end up)
		where [(exactly)] (do|does|should|must|will|would) [(i|we|the|my)] [(put|set|bolt|anchor|fasten|screw|fix|place)] (base|post base|POST base|shoe|post shoe) [(go|belong|stand|sit|land|come|down|to)] [(on|to) FLOOR]
		(location|position|place|placement|spot|whereabouts) (of|for) (added|new|extra|additional|) POST [,] [(measured|taken|reckoned)] [(from|off)] [(LEFT|RIGHT)] [(END|)] [(end|post|side|corner|face)] [POST]
		(added|new|extra|additional|) POST (standing|sitting|going|put|placed|set|located|landing) (there|where it is|just there|right there|in that spot|in that place|so far over|that far over|that far in|so far in)
		(added|new|extra|additional) POST (location|position|place|placement|spot|whereabouts) [,] [(measured|taken|reckoned)] [(from|off)] [(LEFT|RIGHT)] [(END|)] [(end|post|side|corner|face)]`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		(what|which|at what|at which|to what) (length|lengths|setting|distance|measurement|mark) (should|do|does|must|shall|is|are|will) [(i|we|he|she|they|the|my|PERSON)] [(set|clamp|put|fix|lock)] [(the|my)] [(saw|miter|chop)] (stop|stop block|saw stop|fence stop|saw) [(be|go|sit|get|want)] [(to be|set|clamped|fixed)] [(at|to|on)] [(for (RAIL|them|the cuts|cutting))]
		where (do|does|should|must|shall|will) [(i|we|he|the|my)] [(set|clamp|put|fix|lock)] [(the|my)] [(saw|miter|chop)] (stop|stop block|saw stop|fence stop) [(be|go|sit|get)] [(at|to|on)] [(for (RAIL|them|the cuts|cutting))]
		what (am i|are we|is he|are they) (cutting|sawing) [(RAIL|them|these|it|everything|those|POST|STIFF)] [(to|at|down to)]
		(what|which) (length|lengths) (should|do|does|must|shall|is|are|will) RAIL (get|be|come) (cut|sawn|trimmed) (to|at)`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		what [all] (has|have|needs|need|is|ought|gets|must) [(to|got)] (go|goes|going|be|get) [(loaded|put|thrown|stacked)] (on|in|into|onto) (truck|cart|trailer|van|trolley|wagon|order|list|pickup|roof rack|bed)
		what [all] (goes|should go|belongs|comes) (on|in|into|onto) (truck|cart|trailer|van|trolley|wagon|order|list|pickup)
		(what|which) [(all)] (lumber|wood|timber|boards|material|materials|hardware|stuff|sizes|lengths) (am i|are we|is he|are they|we are|i am|he is|they are|she is) (after|looking for|in need of|buying|getting|needing|there for|in for|wanting|ordering|picking up|short of)
		(order|shopping list|buying list|lumber list|lumber order|material list|bill of materials|takeoff|lumber pile) (so|that|this|quite so) (big|long|large|heavy)
		what (am i|are we|is he|are they) (buying|getting|ordering|loading|hauling|picking up|fetching|bringing home|taking home) [(today|then|tomorrow|there)]
		(what is|what has|what all is|what goes|what else is) on [(the|my|our)] (list|shopping list) [to] (buy|get|pick up|order|fetch|purchase)
		(what|which) (do|should|must|shall|would|can) (i|we) (tell|give|send|hand|read|say to|ask) (yard|lumberyard|clerk|store|PERSON) [(to (pull|load|bring|set aside|cut|deliver|get ready)|for)]`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		PRICE (of|for|on) [(all|all the|the)] (materials|material|lumber|wood|timber|everything|stuff|goods|job|whole thing|lot|lumber and hardware|wood and hardware|boards and hardware|boards and brackets|lumber and brackets)
		(what|how much) [(do|does|will|would|are)] (materials|material|lumber|wood|timber|boards|stuff|goods|lumber and hardware|wood and hardware|boards and hardware|lumber and brackets|boards and brackets|hardware) [(going|gonna)] [to] (cost|costs|run|runs|come to|comes to|set|sets|amount to|add up to|total) [ME] [(back)] [(in all|altogether|all told|all together|together)]
		how deep (do|will|would|must|should) (i|we) [(have|need|got)] [to] (dig|reach|go) [(in|into)] [(my|our|the)] (pocket|pockets|wallet|purse|piggy bank)
		how deep in [(my|our|the)] (pocket|pockets|wallet|purse)
		(what|how much) [(will|does|would|is|do)] [(it|this|that|all this|i|we)] (take|leave|have|need) (out of|from|off) [(my|our|the)] (pocket|pockets|wallet|purse|account|bank|bank account)
		where (is|are|does|do) [(the|my|our)] (PRICE|total|costs|money|figure) (stand|at|sit|come|standing|sitting|land|end up) [(now|at|then|at the moment|right now|today)]
		how much [(is|are)] (it|that|we|i) (at|up to|standing at) [(the moment|now|present|right now|so far|this point)]
		how much is it at [the] moment
		(a|the|him a|her a) (PRICE|quote|estimate|total|figure|number) (for|on|of) [(all|the|all the)] (materials|material|lumber|wood|job|whole thing|everything)`},
	{Kind: Quest, Key: "steps", Loose: true, Ways: `
		(talk|walk|take|lead|guide|run|step|coach|bring) (ME|PERSON) through (putting|building|assembling|making|doing|setting|getting|constructing|erecting|raising|fitting) [(it|this|that|wall|everything|whole thing|one)] [(together|up)] [(,)] [(in order|step by step|bit by bit|from the start|from start to finish|one step at a time)]
		(how|what) (i|we|one|you|they) (go|put|do|get) [(about)] (putting|building|assembling|making|setting|constructing|erecting) (it|this|that|wall|everything|whole thing) [(together|up)]
		(what|which) [(is|comes|goes|gets|happens|do i do|do we do|should i do|must i do)] FIRST (thing|job|task|step|move|order of business) [(to)] [(do|be done|tackle|get done)]`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(what|anything|something) [(here|about this|about it|about (this|the) (wall|layout|job|plan|design)|in (this|the) (wall|layout|job|plan|design)|with (this|the) (wall|layout|job|plan|design))] [(that|which|is)] (likely|liable|apt|bound|going|gonna|might|could|may|would|will|can|ought to|should) [to] (trip|catch|bite|sink|burn|worry|concern|bother|alarm|scare|surprise|hurt|haunt|sting) ME [(up|out|over|here|on this|about)] [(here)]
		(what|anything|something) [(here|about this|about it|about (this|the) (wall|layout|job|plan|design)|in (this|the) (wall|layout|job|plan|design)|with (this|the) (wall|layout|job|plan|design))] [(that|which|is)] [(might|could|may|would|will|can|ought to|should|to)] [(make|get|have|cause)] ME (nervous|worried|uneasy|anxious|careful|wary|worry|pause|in trouble|sweat|concern)
		what (should|must|do|ought) (i|we|he|she|they) [to] (keep|have) [(my|our|an|his|her|their|the)] (eye|eyes) on
		(keep|keeping|have) (my|our|his|her|their) (eye|eyes) on
		any (red flags|gotchas|warnings|worries|snags|trouble spots|pitfalls|surprises) [(here|with (this|it)|in (this|it)|on (this|it)|before (i|we) (start|begin|cut|build|drill|buy|order))]
		what (is|are) (likely|liable|apt|bound|most likely) to (go wrong|trip ME up|bite ME|catch ME out|be a problem|give ME trouble|cause trouble|fail|bite)
		(any|what|which|are there|is there) (points|point|thing|things|spots|places|items|item|details|parts|weak spots|trouble spots) [(that|which|where|for)] (inspector|building inspector|code|boss|PERSON) (might|could|would|may|will|can|should) (pick|object|balk|complain|fail|flag|question|fuss|grumble|call|raise|trip|frown|ding|catch|find) [(on|at|to|about|up|out|me|us|over|with|it|fault)] [(fault)]
		(any|what|which) (points|point|thing|things|spots|places|items|details|parts) [(that|which|where|for)] [(i|we)] (should|need|must|ought|have) [to] (watch|mind|careful|wary|double check|look out|look at|keep an eye)  [(for|on|of|with|out|about)]`},
	{Kind: Quest, Key: "drawing", Loose: true, Ways: `
		(pull|bring|put|call|throw|flash|pop) up [(a|the)] (picture|drawing|sketch|elevation|diagram|image|view|visual)
		(pull|bring|put|call|throw|flash|pop) (picture|drawing|sketch|elevation|diagram|image|view) [(of (it|that|wall))] (up|on the screen|up on the screen)
		(have|got) you [got] (picture|drawing|sketch|elevation|diagram|image|view|one) [(of (it|that|wall|this))]
		(better|happier|easier|best) with (pictures|drawings|sketches|a picture|a drawing|a sketch|diagrams|images) [(,)] [(have|got|do|can|is)] [(you|there|i)] [(got|have|see|get|show me)] [one]
		(see|have|get|want|need|show ME|like) (it|this|that|wall|the thing|the layout|one) (drawn|sketched|pictured|drawn up|sketched out|drawn out|on paper|as a picture|in a picture|as a drawing|on the screen)
		(what|how) (it|this|that|wall|whole thing|finished wall) [(going|gonna|supposed|meant)] [to] look [like] [(when|once|after) (i|we|it|that|this|they) (am|are|is|have|has) (done|finished|through|built|up|complete|standing|in place)]`},
	{Kind: Cmd, Key: "help", Loose: true, Ways: `
		(explain|tell|show|say|give|list|know|wonder|understand) [ME] [(how|all)] what [(all|else|sort of things|kind of things)] (i|we|one|people) (can|could|may|might|am able to|am allowed to|should) (ask|say|tell|type|do|request|put|want|try) [(for|of|about|you|to you|here|in here)] [(you)]
		what [(all|else|sort of things|kind of things|sorts of things|kinds of things|questions)] (can|could|may|might|do|should) (i|we|one|people) [(get to)] (ask|say|request|tell) [(you)] [(for|about|of|to)] [(you|here)]
		(i|we) (do not|never) (know|see|understand|get) how (to|i|we|one) [(should|can|do|to|am supposed to|am meant to)] (talk|speak|put things|put it|say things|say it|ask|tell|say anything|phrase things) [(to|with)] [(you|this|it|this thing)]
		(what|how) (do|would|should) (you|it) (want|like|need|expect|wish) [(me|us)] to (hear|be told|be asked|hear from me|be spoken to|say|ask|tell you|put it|talk|type)
		what (questions|sort of questions|kind of questions|words|commands|things) (can|do|will|could|would) (you|i|we|it) (take|answer|understand|know|ask|use|give|handle|hear|follow|type|say)`},
	{Kind: Cmd, Key: "help with", Loose: true, Ways: `
		[(what is|what would be|what are|is there)] [the|a] (right|best|proper|correct|good|easiest|usual|clearest) (way|ways|words|wording|manner|phrase|form) (to|of|for|in which to) (tell|telling|ask|asking|say|saying|put|putting|give|giving|describe|describing|state|stating|enter|entering|set|setting|word|wording|phrase|phrasing|talk|talking) [(you|it|to you)] [(for|about|in|to)]
		what (is|are|would be) (word|words|name|names|term|expression) (for|to use for|you use for|you want for)
		how (do|would|should) (you|it) (want|like|need|expect) [(me to|to be)] (put|told|given|say|tell|give|enter|word|write|hear|type)
		how (would|do|should|can|could|might) (i|we|one) (put|phrase|word|say|tell|express|state|describe|ask|explain|give) [(it|that|this)] [(to)] [(you)] [,] [(if|when|that|in case)] (i|we) (want|need|have|am after|would like|wish|wanted|needed|care about) [(to (have|set|get|say))] [(a|an|the)] [(certain|particular|specific|given|exact|different|set|special)]
		what [(all|else|things|words)] (are|is|can|could|do|would|will) (you|it) [(able|be able|ready)] [to] (understand|hear|know|take|handle|make sense of|follow) [(about|on|of|for|regarding|concerning|when it comes to)]
		(what|how) [(all|else|things)] (can|could|may|might|should|do) (i|we|one) (ask|say|tell|tell you|ask you|say to you|put in|enter|change|set|ask for) (about|on|of|regarding|concerning|for|when it comes to|as to)`},
	{Kind: Cmd, Key: "show it all", Loose: true, Ways: `
		(spell|write|lay|set|print|work|put) [(it|the|your|all the|the whole)] [out] (arithmetic|math|maths|sum|sums|working|workings|calculation|calculations|derivation|reckoning|figuring) [out] [(,)] [(every|each|all|line by line|step by step|in full)] [(line|step|bit|lines|steps)]
		[(i want|i need|give ME|show ME|let us have|let us see|let me see)] (every|each) (single|last|) (line|step|bit|scrap) of [(the|your)] (arithmetic|math|maths|sum|sums|working|workings|calculation|reckoning|figuring)`},
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: `
		(go|work|run|walk|step|talk|take it) (through|over) [(the)] (calculation|math|maths|arithmetic|reckoning|figuring|sum|sums|working) (of|for|behind|on)
		(take|lead|guide|bring) (ME|PERSON) by the hand through
		(teach|show|tell|explain to|coach|help) (ME|PERSON) [(to)] how (to|i|we|you|one) (work out|find|figure|figure out|calculate|get|compute|arrive at|do)
		[(new|young|other)] (PERSON|class) [(here)] (should|must|has to|needs to|ought to|wants to|would like to|is to) (learn|be taught|be shown|understand) how
		(should|must|has to|needs to|ought to|wants to|want to|would like to|is to|have to|need to) (learn|be taught|be shown) how [(to (find|work out|figure|calculate|get))]`},
	{Kind: Fill, Key: "fill", Ways: `
		WALL [(is|gets|has been|being|was)] (split|divided|broken|carved|parted|chopped) [up] (into|in|up into)
		(getting|get|gets) away with
		giving (her|him|them)
		(when|once|after|by the time) (i|we|it|they) (am|are|is) [(all)] (done|finished|through|complete) [(with (it|this|that|them))]`},
	{Kind: TailFill, Key: "boards and hardware", Ways: `
		[(,)] (boards|lumber|wood|timber) and (hardware|brackets|screws|fixings|fasteners)
		[(,)] (boards|lumber|wood|timber) , (hardware|brackets|screws|fixings|fasteners) and [(all|everything|the lot)]
		[(,)] one (after|at) (another|the other|a time)`},
	{Kind: TailFill, Key: "teach tail", Ways: `
		[(,)] (teach|show) (ME|PERSON|class) how (it is|that is|it gets|it) (done|worked out|figured|calculated|found)
		[(,)] (like|as) (in|at) (school|class)
		[(,)] [(and|so|just)] (walk|talk|take|lead|guide|run) (ME|PERSON|class) through (it|that|this)`},
}
