package lexicon

// inquiries are more ways to ask for a table, or after a quantity, beside the plain ones of questions.
var inquiries = []Entry{
	{Kind: Quest, Key: "layout", Loose: true, Ways: `
		what (comes|falls|drops) out
		what (do you|did you|have you) (get|got|come up with|arrive at) [(then|now|for it|for that)]
		(what|how) does the (layout|wall) (come out|work out|end up|look like on paper)
		(figure|calculate|compute|work) [(it|this|that)] (out|up) for (me|us)
		(do|give me) the (layout|calculation|reckoning)
		how are things laid out
		what is the plan
		what does (that|it|this|all that) leave (ME) [with]
		where does (that|it|this|all that) leave (ME)
		(reckon|figure|work) (it|that|this|everything) [all] up [for ME]
		how would you (lay out|arrange|divide) (it|this|that|the wall)
		what would you (make|do) of (it|that|this)`},
	{Kind: Quest, Key: "layout", Ways: "(go ahead|do it|go)"},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		what (possibilities|options|choices|alternatives|combinations) [(do|have|are|would|remain|exist)] [(i|we|there)] [(have|got|left|open|remaining|available)] [(to)] [(ME)]
		what (RAIL|GAP) (counts|numbers|combinations) [(do|have|can|could|may|should)] [(i|we)] (have|pick|choose|use|consider|go for|take) [(from)]
		(RAIL) counts [(that)] [(i|we)] [(can|could|may)] (pick|choose|select|have|use) [from]
		(RAIL) counts (possible|available|that work|that would work|open to ME|allowed)
		(any|what|are there) other (possibilities|options|choices|alternatives|combinations|solutions|ways|counts) [(are|is)] [(there)] [(to do it|that fit|that work)]
		(list|show|give|tell|name) [ME] [(all|every)] (possibilities|options|choices|alternatives|combinations|counts that work|counts that fit)
		what (other|different) (ways|solutions|counts|layouts) (are|is|would|could|can|do) [(there|we have|i have|work|fit)]
		what (can|could) (i|we) (choose|pick|select) [(from|between|among)]
		what (choices|options) (do|have) (i|we) [got]
		what (remains|is) (open|possible|available) [(to)] [ME]
		(how many|which) (ways|arrangements|layouts) (work|fit|are there|would work|will work|possible)
		what would (also|otherwise) (work|fit)
		which (others|other ones) (work|fit)
		what is (allowed|permitted)
		(what|which) (number|numbers|counts) of RAIL (would|will|could|can) (do|work|fit|go)
		(which|what) (counts|count|numbers|ones) (work|come|comes|works|turn) out [(even|evenly|right|nice|nicely|clean|cleanly|well)]
		what would fit [in there]
		what range [(of)] (RAIL|counts|counts of RAIL) (works|work|fit|is possible)
		what am i (allowed|able) to (choose|pick)
		what (choice|freedom|leeway|latitude) (do|have) (i|we) [have]`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		where [(on (the|) POST)] [(do|does|should|must)] [(my|the)] MARK [(go|fall|come|land|sit)] [(on POST)]
		at (what|which) (height|heights) (do|does|should|must|will) BRACKET (go|sit|get mounted|get screwed|land)
		where [do|should] (i|we) (put|make|draw|set|place) [(my|the|all)] MARK [(on) POST]
		(what|which) heights do (i|we) (mark|drill|set|put) [(at|on|them)]
		(at) (what|which) (height|heights) [(do|should|must|shall)] (i|we) (mark|drill|put|screw|set|mount|fasten|fix) [(BRACKET|POST|holes|them|it|screws)]
		(what|which) height [(do|does|should|will)] BRACKET [(go|sit|get|be)] [(at|on|mounted|screwed)]
		how far up [(do|does|should)] [(i|we|the)] [(mark|drill|put|screw|set|mount|fasten|fix)] (BRACKET|MARK|holes) [(go|sit|on|up)]
		where [(exactly)] (screw|fasten|fix|mount|attach|hang|bolt) [the] BRACKET [(on|to|onto) POST]
		how (far|high) [(up)] [(from|off|above)] FLOOR (first|next|last|top|bottom|lowest|highest|each|every) (mark|hole|bracket|line)
		how (far|high) (first|next|last|top|bottom|lowest|highest|each|every) (mark|hole|bracket|line) [(from|off|above) FLOOR]
		where (BRACKET|holes|MARK) (go|sit|mount|land|come|belong|get screwed|get put|end up|fasten|attach|get drilled)
		(mark|hole|drilling) (positions|locations|spots|places|heights)
		(positions|locations|heights|spots|places) (of|for) [(my|the|all)] (marks|holes|brackets|screws)
		what (marks|holes) (do|should) (i|we) (make|put|need|drill|set)
		where do (i|we) (hang|fasten|fix|screw) RAIL`},
	{Kind: Quest, Key: "posts", Loose: true, Ways: `
		(spot|place|location|position|site) (of|for) [(added|new|extra|)] POST
		(spot|place|location|position) where [(added|new|extra|)] POST [(go|stand|goes|stands|be|is)]
		(added|new|extra|) POST (go|stand|sit|belong|land|be) (there|where it is|just there|right there|in that spot|in that place)
		where (should|does|will|do|must|would|could) (i|we|the|) (put|set|place|plant|dig|sink|locate|stand|have) [(added|new|extra|)] POST
		how far (from|off) (LEFT|RIGHT|end) [(POST|end)] [(do|does|should|is|will)] [(i|we|the)] [(put|set|place|stand|go)] (added|new) POST [(go|stand|be)]
		where (stands|goes|is) [the] (added|new|extra) POST`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		(to|at) (what|which) (length|lengths) [(should|do|must|shall|are|is|will|would|does)] [(i|we|he|they|one)] [(RAIL|POST|STIFF|each RAIL|pieces|them|it)] [(be|get|have to be|need to be)] CUT [(RAIL|POST|STIFF|pieces|them|it|each)] [(to|at|off)]
		(what|which) (length|lengths) [(should|do|must|are|is|will)] [(i|we)] [(RAIL|POST|STIFF|pieces|them)] [(be|get|need|have)] [(to be)] CUT [(to|at)]
		what [(do|should|shall|must|am)] (i|we) CUT [(RAIL|POST|STIFF|them|these|pieces|everything|it|each one)] (to|at|down to)
		what (size|measurement|measurements|dimension|dimensions) CUT [(RAIL|POST|STIFF|them|these|pieces|it)] [(to|at)]
		how long [(do|does|should|must|will|would|are|is|have)] [(i|we|the|each|every|all)] (RAIL|pieces|piece|cuts|CUT|them) [(have|need|get|come out|end up|turn out)] [(to be)] [(CUT|made|sawn)]
		how short (do|should) (i|we) CUT [(RAIL|them)]
		(CUT|saw|sawing) (measurements|dimensions|figures|sizes|numbers)
		(what|which|give me|read me|tell me) [(are|is)] [(the|my|all)] (cuts|cut list|cut lengths|cutting list|lengths i cut|lengths to cut|piece lengths)
		how do (i|we) cut (all|each|every) [of] [(it|them|this|RAIL)]
		what [(lengths|length)] (do|should) [(i|we)] (set|put) the saw [(to|at)]
		what do the pieces measure
		lengths of (everything|all the pieces|all pieces|every piece|every board)`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		what [(all|else|exactly|lumber|wood|materials|stuff)] [(do|does|should|must|will|shall|would|am|are|have)] (i|we) [(have|need|got|going)] [(to)] (buy|buying|get|getting|pick up|picking up|purchase|purchasing|order|ordering|fetch|haul|bring|bring home|bring back|ask for|put on order|stock up on) [(from|at|in)] [(store|yard|lumber yard|shop|lumberyard|hardware store|you|morning|them|for it|for this|for that)]
		what [(all|else)] (i|we) need from (store|yard|lumber yard|shop|lumberyard|hardware store|you)
		(what|how much) (lumber|wood|timber|material|materials|stuff) [(do|does|will|would|am|are)] [(i|we|it|this|that|the wall)] (need|take|takes|use|uses|require|requires|buy|buying|get|getting|order|ordering|buy in all)
		(what|how much) (lumber|wood|timber|material) [(goes|go|is|)] (into|in) (it|this|that|the wall)
		what (should|do|must|can) (i|we) (put|have) on (my|the|our) [(shopping|buying|lumber)] (list|order|cart|truck)
		what (is|goes|belongs|comes|are the things|should be|else is) on [(my|the|our)] [(shopping|buy|buying|lumber|materials|parts)] (list|order|cart|truck)
		(make|write|print|draw up|put together|prepare|work out|fill out|start) (me|us|him|her) [(a|the|my|up)] (shopping|buy|buying|material|materials|lumber|parts|order) list
		(make|write|draw up|put together|prepare|work out|get me|show me|read me|let us have|let me have|let me see|see|need|want) (a|the|my) [(whole|full|complete)] (shopping|buy|buying|material|materials|lumber|parts|order) list
		what (should|do) i (tell|ask|order from) [(yard|lumberyard|store|them|the clerk)] [(for)]
		what do i (walk|come|leave|drive) (out|away|home) with
		what (do|would|will) (i|we) have to (buy|get|purchase|order|pick up|bring)
		(boards|lumber|wood|sticks) (for|to) (buy|purchase)
		(boards|lumber|things|items|pieces) on [the|my] (list|shopping list)
		how many (sticks|lengths|boards|pieces) of (each|lumber|wood) [(do|should|must)] [(i|we)] [(buy|get|need|order)]
		how many (RAIL|sticks|lengths) [(in all)] [(must|do|should|would|will)] (i|we) (buy|order|purchase|pick up|load|get at (yard|store)) [(then|all told|in all|altogether)]
		what does the (wall|job|whole thing) take in lumber
		(what|which) (length|lengths|sizes) [(of (lumber|wood|boards))] [(should|do|must|will)] (i|we) (buy|get|order|purchase|ask for|pick up)
		(what|which) (boards|lumber|wood|sticks|lengths) (do|should|must|will) (i|we) (buy|get|order|purchase|ask for|pick up)
		[a|the|my] list for [the] (yard|store|lumberyard|lumber yard|clerk|shop|hardware store)
		how many [(of (them|those|these|each))] (would|do|should|must|will|shall) (i|we) [(have to|need to)] (buy|order|purchase|get at the yard)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		(what|how much) [(is|does|will|would|are)] [(all|whole|everything|this|it|that|the whole thing|the lot|materials|material|lumber|wood)] [(of this|of it|of that)] (going|gonna|likely|bound|about) to (PRICE|run|come to|set|add up to|total|be) [(me|us|him|her|you)] [(back)]
		what (is|does|will|would) (all this|all that|all of this|this all|it all|that all|this whole thing|the whole thing|the lot) [(going|gonna)] [(to)] (set|PRICE|run|come to|add up to) [(me|us|him|her|you)] [back]
		set (me|us|him|her|you) back
		how much (is|will|would) (it|that|this|everything|the whole thing|the lot|all that|all of it|all of that) [(going|gonna)] [(to)] (be|cost|run|come to|set)
		how much (money|cash) [(are|am|will|would|do|does)] [(i|we|you|it|this|that)] (talking about|spending|looking at|need|spend|need to bring|have to spend|take|out|in for|cost|tied up|bring)
		how much (are|am) (i|we) (talking about|talking|in for|out|spending|paying)
		what (kind|sort) of (money|cost|price|bill|total|budget) [(are|am|is)] [(i|we|it|that)] [(talking about|looking at|in for)]
		(what|how much) [(do|does|will|would|am|are)] (i|we|you|they) (owe|pay|paying|spend|spending|have to pay|end up paying|charge|out of pocket|fork out|fork over|cough up)
		what (is|are|would be|will be) [(my|the|our|its)] (total|bill|price|cost|costs|tab|damage|expense|outlay|sum|price tag|bottom line) [(be|like|come to|for materials|for lumber|for wood|for all of it|for everything|for the lot|at the register|on that|on this|then)]
		what (total|bill|price|cost|sum) (does|do|is|will|would) [(it|that|this|all)] (come|comes|add up|amount|be|work out) [(to|at)]
		how (expensive|dear|pricey|costly) (is|would|will|does) (it|that|this|all of it|the wall) [(be|get|going to be)]
		(add|tot|total|price|cost) (it|that|this|everything|them) [all] up
		(price|cost) (it|this|that|everything) [out] for (me|us)
		give me (a|the) (price|total|cost|bill|quote|estimate)
		(how much|what) (material|materials|lumber|wood) (cost|costs|run|runs|come to|comes to)
		what (material|materials|lumber|wood|all of it|the lot|everything) (cost|costs|run|runs|come to|comes to) [(me|us|all together|in all)]
		what dollars
		(tot|add|ring|price) (it|that|this|everything) [all] up [for ME]
		(break|breaks|itemize|itemise) [(down)] [(the|my|all the)] (PRICE) [down] [for ME]`},
	{Kind: Quest, Key: "hardware", Loose: true, Ways: `
		what [(do|will|would)] (i|we) need (in the way of|for|by way of|as) (hardware|fasteners|fixings|screws and brackets)
		how many (BRACKET and screws|screws and BRACKET)`},
	{Kind: Quest, Key: "steps", Loose: true, Ways: `
		(what|which) (is|are|would be) [the] [(proper|right|best|correct)] (order|sequence) [(of|to)] [(work|things|operations|steps|do it|do things|build it)]
		(in) (what|which) (order|sequence) [(is|are|should|do|does|shall|must|will)] [(i|we|things|the work|it|everything|one)] [(do|does|go|build|work|put|proceed|done|be done|get done|happen|built|install)] [(it|them|things|this|up|the wall|everything)]
		(what|which) (do|should|shall|must|does) (i|we|one) (do|start with|begin with|tackle|build) [(first|at first)]
		(how|where) (do|should|would|shall|can|to) (i|we|one|you) (begin|start|get started|get going|set about it|proceed|tackle it|tackle this|approach it|approach this)
		how (do|should|would|shall|can|to) (i|we|one|you) go about (building|putting|making|doing|assembling|it|this|that|installing) [(it|this|the wall|up|together)]
		(tell|show|give|read|walk) [ME] [(through)] [(the|all)] (building|assembly) [(steps|order|sequence|process)]
		what (is|comes) (step|number) one
		step by step how (do|to) (i|we|build)
		how (is|does) (it|this|the wall) (get built|go together|put up|assembled|get put up)
		how (do|should|would|shall|can|to) (i|we|one|you) [go about] (attach|attaching|fasten|fastening|hang|hanging|mount|mounting|install|installing|secure|securing|assemble|assembling|erect|erecting|put up|putting up) [(all)] [(the|my|our|these|those)] (RAIL|BRACKET|STIFF|POST)
		(building|build|assembly|work) (order|sequence|steps|instructions|plan)
		what happens first
		what are the steps
		[the] steps [please]
		(what|which) (do|should|shall|must) (i|we) (cut|build|mark|buy|set|put up|install|tackle|do) first
		(what|which) (to do|to cut|to build) first`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(what|which|any|are there|is there) (cautions|warnings|dangers|hazards|risks|caveats|concerns|pitfalls|problems|precautions) [(apply|applies|are there|go|do|exist|hold|should|to|for|of|about|here|which|with|come)] [(here|i|we|apply|that|this|it|which|with)] [(should|ought|need)] [(be|know|to)] [(aware|about|with)] [(of|about|it|that|this)]
		(dangers|hazards|risks|cautions|warnings) (of which|that|which) [(i|we)] (should|ought to|need to|must) (be aware|know|mind|watch) [(of|about|for)]
		(anything|something) [(that|which|else)] [(i|we|one)] [(should|ought|need|must|have|might)] [(to)] (worry|be worried|be concerned|be careful|be aware|be wary|beware|watch out|look out|watch|keep in mind|take care|mind|heed|pay attention to) [(about|of|for|out for|with|here)]
		anything (to|i should|we should) (look|watch|watching) out for
		what (should|do|must|ought|does) (i|we|one) [to] (worry|be worried|be concerned|be careful|be aware|be wary|beware|watch out|look out|watch|keep in mind|take care|pay attention) [(about|of|for|out for|with|to)]
		(is|are) (it|this|that|the wall|this thing|they|what we have) [(really|all|going to be|even|structurally)] (safe|sound|dangerous|strong enough|up to code|to code|sturdy enough|solid enough|legal|ok to build|okay to build)
		(will|would|does) (it|this|that|the wall) (pass|meet) (inspection|code|the code|the inspector)
		what (could|can|might|would|will) (go|be|come) (wrong|bad|amiss|unsafe)
		(is there|what is) the catch
		what have i (overlooked|missed|forgotten)
		(did|have) i (overlook|miss|overlooked|missed|forget|forgotten) anything
		(will|would|could|might|can|does|is) (it|this|that|the wall|the thing|the post) [(going to|gonna|likely to)] (hold up|hold|fall over|fall|tip over|tip|fall down|collapse|give way|come down|stand up|last|wobble|topple)
		(strong|sturdy|stable|stiff|solid) enough
		how (safe|sound|strong|stable|sturdy|dangerous) (is|will|would) (it|this|that|the wall) [be]
		(anything|something) else [(that)] [(i|we)] [(should|ought|need)] [(to)] know [about]
		(safety|caution) (notes|list|warnings|points|concerns)
		what (is|looks|seems) (dangerous|unsafe|risky)`},
	{Kind: Quest, Key: "drawing", Loose: true, Ways: `
		(can|could|may|let) (i|we|me|us) [(please)] (see|have|get|look at) [(it|a|the|that|this)] (picture|drawing|sketch|elevation|diagram|drawn|drawn up|drawn out|on paper|drawing of it|picture of it)
		(make|do|give|get|print) (me|us|him|her|them) [(a|the)] (quick|little|rough|) (picture|drawing|sketch|diagram|elevation) [(of it|of that|of the wall)]
		(want|need|like) (to see|see|) (it drawn|a picture|a drawing|a sketch|the drawing|the picture|a diagram|what it looks like)
		what (will|would|does|is) (it|this|that|the wall|the thing|all that|everything|the finished wall) [(going)] [(to)] (look like|look)
		(put|get) (it|that|this) on paper for (me|us)
		how (will|would|does|is) (it|this|that|the wall) [going] [to] (look|looking|shaping up)`},
}

// lessons are more ways to ask for a lesson.
var lessons = []Entry{
	{Kind: TeachHead, Key: "teach", Loose: true, Ways: `
		explain [to ME] [step by step] how
		explain [to ME] [(slowly|step by step)] how (one|you|we|i) (get|gets|find|finds|figure|figures|work out|works out|calculate|calculates|compute) [(to|at)]
		(teach|show|tell) ME [(slowly|step by step|please|,)] how (one|you|we|i|it|they) (get|gets|find|finds|figure|figures|work out|works out|calculate|calculates|compute|arrive|arrives) [(to|at)]
		(i|we) (want|would like|like) [(my|the|our|these)] (PERSON|class|them|him|her|everybody|everyone) to (find|learn|work out|figure out|see|discover|get|understand|calculate|compute) [how to (find|get|figure|work out)]
		(have|let) (ME|PERSON|class) (find|learn|work out|figure out|discover|calculate|compute|try) [to (find|get|work out|figure out)]
		(let ME|i want to|i would like to|can i) try [(it|to)] [(find|work out|figure out|get|calculate)]
		(i|we) (want|would like|like) to (understand|learn|work out|figure out|find out|practice|practise) [(for myself|myself|by myself|how to|how)] [(you|one|we|i|to)] [(get|gets|find|figure|work out|calculate|compute|reach)]
		(show|teach|tell|explain to|coach|tutor) [(my|the|our|these)] (PERSON|class) how [(to|you|we|one|they|it)] [(find|get|figure|work out|calculate|compute)]
		(teach|show|coach|tutor) [(my|the|our|these)] (PERSON|class) to (find|get|figure|work out|calculate|compute)
		(teach|coach|tutor) [(my|the|our|these)] (PERSON|class) [(about)]
		(teach|show|tell) ME about how
		teach ME about
		(show|teach|tell) ME how to (do|find|get)
		(help|teach) ME learn [how] [to] (figure|find|get|work out|calculate|compute)
		(lesson|tutorial|exercise) (for|about|in|on|with)
		(give|have|do|start|begin) [ME] a (lesson|tutorial|exercise) [(for|about|in|on|with)] [how to find]
		(practice|practise|drill) [ME] [(on|with|in)]
		(ask|test|examine|question) ME [(about|on)] [(how to (find|get))]
		(can|could|let|shall) (we|us) go (over|through) [(again|once more)]
		go [(over|through)] with ME [how (to|you|we)] (find|get|work out|calculate|figure)
		go through with ME
		(lead|guide|coach|tutor|talk|walk|take) (ME|PERSON|class) [(step by step|slowly)] (through|to|on|in) [(finding|getting|working out|figuring out)] [how (to|you|we)] [(find|get|work out|calculate|figure)]`},
}

// asides are names of quantities as they stand in questions.
var asides = []Entry{
	{Kind: Wh, Key: "size", Sense: Meaning("rail size, post size, stiffener size, end post size, added post size, cap size, anchor size | gap, bottom gap, opening, bay, span, stiffener spacing, wall height"), Loose: true, Ways: "what (kind|sort|type|size|dimension|dimensions) of\nwhat (dimension|dimensions) (lumber|wood)"},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Loose: true, Ways: "[(i|we)] [(am|are|was|were)] wondering\n(i|we) need to know"},
	{Kind: Fill, Key: "fill", Ways: "(next|another|one more|last|quick|one|first|second|final|new) question [is]\nfigure (on|in)"},
	{Kind: Part, Key: "stock", Sense: Meaning("stock"), Loose: true, Ways: "(what|which) [(lumber|board|stock)] (lengths|length) [(of (lumber|boards))] (sell|carry|carries|stock|sells|on sale|available|know|know of|have down|got down|set|entered|there|on the rack|in stock)\n(what|which) (lumber|board|stock) lengths [(are|do|does|have)] [(there|you|they)] [(have|got|know)] [(down|about)]"},
	{Kind: Part, Key: "opening side", Sense: Meaning("opening side"), Loose: true, Ways: "(what|which) side [(of WALL)] [(is|goes|gets|has|will|does|should)] OPENING [(on|go|be|sit|go on)]\n(what|which) end [(of WALL)] [(is|goes|gets|has|will|does|should)] OPENING [(on|go|be|sit|at)]"},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts | ?posts"), Loose: true, Ways: "POST (do|should|must|will|would|did) (i|we|you) (add|put in|have to add|need to add|set in|need|want)\nPOST (get|got|gets|were|was|are|have been|has been) added"},
}
