package lexicon

// wonders are still more ways to ask: for tables, after quantities and for reasons.
var wonders = []Entry{
	{Kind: Wh, Key: "side", Sense: Meaning("opening side |"), Ways: "(which|what) (side|end)"},
	{Kind: Quest, Key: "layout", Ways: "(figure|calculate|compute|solve|crunch|reckon) (it|this|that) [(up|out)] [for ME]\n(work|run) (it|this|that) (up|out) [for ME]"},
	{Kind: Quest, Key: "layout", Loose: true, Ways: `
		(crunch|run) [(the|my|all the)] (numbers|figures|measurements)
		(work|figure|working|figuring|lay|laying|sort|sorting|reckon|reckoning|calculate|calculating) [(whole|full|entire)] (WALL|thing|lot|layout|job) (out|up)
		(calculate|compute|solve|figure|calculating|computing|solving|figuring) [(whole|full|entire)] (WALL|layout|thing|lot|job)
		what (layout|arrangement|design|result|answer|setup|plan|solution) (you|it|this|that) [(all)] (arrive at|get|got|come up with|came up with|come to|come out with|end up with|ended up with|land on|landed on|reach|reached|make|made|give|gives|find|found|have|propose|suggest|recommend|settle on|settled on)
		where do things stand
		what you (come up with|came up with|end up with|ended up with|arrive at|arrived at|make of it|make of that|find out|work out)
		(let us hear|let ME hear|let us have|let ME have|hear) [(the|your)] (layout|result|results|answer|verdict)
		(give|tell|show|read) ME (the|your) (layout|answer|result|results|verdict|solution) [(when (you|ready))]
		(what|how) (does|did) [(it|this|that)] all (come|work|shake|boil|add) [(out|down)] [(to|as)]`},
	{Kind: Wh, Key: "many", Sense: Meaning("rails |"), Loose: true, Ways: `
		how many (courses|rows|layers|tiers) of (RAIL)
		how many (two by|two bys|2 bys|2 by)
		how many RAIL (high|tall|up)`},
	{Kind: Wh, Key: "apart", Sense: Meaning("| bottom gap, wall height, post height, rail top, base height, drop"), Loose: true, Ways: "how (far|high) [up] (off|above|over|from|up from|up off|clear of) [of] FLOOR"},
	{Kind: Wh, Key: "what", Sense: Meaning("| *"), Loose: true, Ways: `
		what are
		[(TELL ME|show ME|see|let ME see)] what (that|this|it|doing that|doing so) (does|did|would do|will do|do) to
		what (does|would|will|did) (that|this|it|doing that|doing so) (do|mean|be doing) (to|for)
		what (effect|impact|influence|bearing) (does|would|will) (that|this|it) have on
		how (does|would|will) (that|this|it) (change|affect|alter|influence)
		what would you (say|call|reckon|make) [(that)]
		what do you (make|get|figure|reckon) (it|for it|for that|for that one)
		what (happens|would happen|will happen) to
		(does|did|do) (it|that|this|you) [(also)] (say|show|tell|mention|know|have) (what|which)
		(have|did) you (figure out|figured out|work out|worked out|calculate|calculated|determine|determined)
		(have|did) you (work|worked|figure|figured|find|found|calculate|calculated|determine|determined) [out] (what|which)
		[(i|we)] (forget|forgot|lost track of|can not remember|can not recall|do not remember|do not recall|have forgotten) (what|which)
		remind ME [(again|once more|one more time)] (what|which)`},
	{Kind: Part, Key: "cut list", Sense: Meaning("?cuts"), Ways: "(on|in|from|of) [(my|the|your|our)] (cut|cutting) (list|sheet)"},
	{Kind: Part, Key: "shopping list", Sense: Meaning("?shopping"), Ways: "(on|in|from|of) [(my|the|your|our)] (shopping|buying|buy|lumber|material|materials) list"},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts |"), Loose: true, Ways: "POST (am|are|will|would|should|must|do|did) (i|we|you) [(be|have to|need to)] (adding|add|putting in|put in|setting|set in|buying|putting up|planting|plant)\nPOST to (add|be added|put in)"},
	{Kind: Part, Key: "stiffener spacing", Sense: Meaning("stiffener spacing"), Ways: "space [out] STIFF"},
	{Kind: Quest, Key: "options", Loose: true, Ways: `
		how many RAIL (could|can|might|may) (i|we) (go with|choose|pick|go for|settle on|choose from|pick from) [(from)]
		(other|any other|more|further|different) (options|choices|possibilities|alternatives|layouts|combinations|solutions|arrangements)
		(i am|we are) (open to|up for|game for) (ideas|suggestions|options|anything|alternatives)
		(which|what) (layouts|arrangements|combinations|solutions|setups|designs) (would|will|could|can|might|do) (work|fit|go|do|be possible)
		(seem|are|be) several (possibilities|options|choices|alternatives|ways)
		(list|show|give|name|read|tell) [ME] [(the|all|all the|every)] (options|choices|possibilities|alternatives|ways) [(that|which)] (would|will|could|can|might) (work|fit|do|go|suit)`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		(story pole|storey pole|story stick) (marks|marking|markings)
		where [(on|along)] POST (do|should|must|will|would|shall|can) (i|we) (put|make|draw|set|place|pencil|scribe|strike|mark) [(my|the|all)] [MARK]
		[(read|call|sing|give|tell|show) [ME] [(off|out)]] (heights|places|spots|points|positions|lines|measurements|numbers) [(that|which)] [(i|we)] (should|have to|need to|must|ought to|am to|will|do) (mark|pencil|scribe|put|transfer|lay out) [(on|onto|at|up|to)] [POST]
		(read|call|sing|give) [ME] (off|out) [(the|my|all|all the)] [pencil] (marks|heights|holes|lines|mark heights) [(for|on) POST]
		(call out|read out|read off|give ME|tell ME) [(the|my|all|all the)] (marks|heights)
		(i am|we are) (at|standing at) POST with [a] pencil
		(i will|we will) (write|pencil|jot|mark|put) (them|it|those) (down|on|up) [on] [POST]
		(got|have) [(my|a|the)] pencil (ready|out|sharpened|in hand|here)
		(at) (what|which) heights should (i|we) make MARK on POST`},
	{Kind: Quest, Key: "posts", Loose: true, Ways: `
		(what|which|at what|at which|in what|in which) (spot|place|point|location|position) [(along|on|in) WALL] (do|does|should|must|will|would|shall|can) [(i|we|the|)] [(put|set|place|plant|stand|add|install|anchor)] [(in)] (added|new|extra|additional|) POST [(go|go in|stand|land|sit|belong|come|end up|be|get set)] [(at|in)]
		where (added|new|extra|additional|) POST (lands|goes|stands|sits|comes|ends up|falls|landing|going)
		(post|posts) (locations|location|positions|position|placement|placements|spots|layout|spacing|place|places)
		whereabouts (do|does|should|must|will|would|shall|can) [(i|we|the|)] [(put|set|place|plant|stand|add|install|anchor)] (added|new|extra|additional|) POST [(go|stand|land|sit|belong|come|end up|be)]
		(added|new|extra|) POST (lands|goes|stands|sits|belongs|comes|is|is placed|is set|was placed|gets placed|ends up|is put|was put|is located|placed|landed|put) (there|where it is|just there|right there|at that spot|in that spot|at that place|in that place|at that point|at that location|in that location|that far over|that far in)`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		(what|which) [(are|do)] (my|the|our|all the|all my) cuts [(are|be)] [(for today|today|now)]
		(list|rundown|tally|listing|schedule) of [(all|every)] [(the|my|our)] (cuts|cut|lengths|pieces to cut)
		lengths (for|to set on|on) [(the|my)] (chop saw|saw|miter saw|mitre saw|miter box|table saw|cutoff saw|stop block)
		(cut|saw) (numbers|figures|measurements) [(for (the|my) saw)]
		(CUT) (lengths|list|sheet)
		(CUT) [(the|my|our|my own|these|those|all the|every|each)] RAIL (that|so|this|as) (long|short|big|small)
		(RAIL) [(is|are|get|gets|being|was|were)] CUT (that|so|this|as) (long|short)
		(CUT) [(the|my|our|these|those)] RAIL [(to|at)] (that|this|such a) (length|size|measurement)
		(RAIL) [(is|are|get|gets|being|was|were)] CUT [(to|at)] (that|this|such a) (length|size|measurement)`},
	{Kind: Quest, Key: "shopping", Loose: true, Ways: `
		[(list|show|give|tell|name|write down|read)] [ME] (everything|all|all the things|all that|the things|whatever) [(i|we)] (need|have|want|got|ought|am going|are going) to (buy|get|pick up|purchase|order|fetch|bring|bring home|grab|haul|load|bring back|take home)
		[(list|tell ME|show ME|give ME|say)] what (i|we|one) (must|should|shall|need to|have to|ought to|will have to) (buy|get|pick up|purchase|order|fetch|bring|grab)
		(what|which) [(is|are|goes|belongs|should be)] [(on)] (list|shopping list) (for|to) (the|) (store|yard|lumberyard|lumber yard|shop|hardware store|merchant|mill|sawmill|depot|counter|desk)
		(take off|takeoff|material takeoff|materials takeoff|cut and buy list) [(for ordering|to order from|for (the|) order)]
		(heading|headed|going|off|driving|on (my|our) way|running|going out|about to go|about to drive) (to|over to|down to|out to|by) (the|) (store|yard|lumberyard|lumber yard|shop|hardware store|mill|sawmill|town|merchant|depot)
		[(as far as|as for|about|regarding)] (buying|shopping|purchasing|materials|supplies) [(goes|go)] , what (do|should|will|would) (i|we) (need|get|buy|want|have to get)
		(BUY|buying|ordering|order|purchasing|get|getting|need|picking up|pick up|haul|hauling|buy up|load|pay for|paying for) [(to)] [(buy|order|purchase|get|pick up)] (so|that|this|all that|all this) (many|much) (sticks|boards|lumber|wood|timber|material|materials|stuff|planks|lengths|pieces|two by sixes)
		(so|that|this) (many|much) (sticks|boards|lumber|wood|timber|material|materials|planks|lengths|pieces) (on|in) [(the|my|our|your)] [(shopping|buying|lumber|material|materials|order|buy)] (list|order|cart|truck)
		(quantities|amounts|numbers|number of boards|amount of lumber|amount of wood) [(that)] (i|we) [(need|have|am|are|must|should|will)] [(to)] (buy|purchase|order|get|pick up|buying|ordering|purchasing)
		(quantities|amounts) (to buy|to order|to purchase|on the list|on the shopping list)
		what (i am|we are|am i|are we) (putting|throwing|loading|tossing|piling) (in|into|on|onto) (the|my|our) (cart|truck|trailer|trolley|wagon|van|basket)`},
	{Kind: Quest, Key: "steps", Loose: true, Ways: `
		[(give|read|tell|show)] [ME] [(the|all the)] (steps|instructions) (one by one|one at a time|in order|one after the other|one after another)
		(i|we) have never (built|made|done|put up|assembled) (one|this|it|anything|such a thing|a wall) [(like this|like it|before)]
		(i|we) do not know where to (begin|start)
		what [(is|would be|should be)] [(my|our|the)] (next|first) (move|job|task|order of business|thing to do)`},
	{Kind: Quest, Key: "cautions", Loose: true, Ways: `
		(anything|something|what) [(here|in this|in here|in it|about this|about it|in the layout|on this)] [(that|which)] (could|can|might|may|would|will) (go wrong|come back to bite me|bite me|come back to haunt me|hurt me|cause trouble|be a problem|be trouble|cause problems|trip me up|get me in trouble)
		(anything|something|what) (you|he|they) (would|should|could|can|have to|want to|care to|need to) (warn|caution|alert|tip off) ME [(about|of|on|to|against)] [(before (i|we) (cut|build|start|begin|buy|drill|order))]
		(anything|something|what) (i|we) (am going to|are going to|will|might|may|would|could) [(come to)] (regret|be sorry about|be sorry for|wish i had known|rue) [(here|later|about this)]
		(should|must|ought|need|do) (i|we) [(to|have to|need to)] (be worried|worry|be concerned|be careful|be nervous) about anything
		(any|no|what) (concerns|worries|qualms|misgivings|objections|reservations|issues|problems|red flags|warnings) [(with|about|on|over|regarding)] [(this|that|the|my|it)] [(layout|plan|wall|design|one|setup)]`},
	{Kind: Quest, Key: "drawing", Loose: true, Ways: `
		(i am|being) (a|more of a|kind of a) visual (person|learner|thinker|type)
		(can|could|will|would) you [please] (sketch|draw|picture|plot|render) (it|this|that|the wall) [(out|up)] [for ME]
		(draw|sketch) (it|this|that) [(out|up)] for ME`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		what (would|will|am|are|do|should|might|could) (i|we) [(be)] (spending|spend|pay|paying|shelling out|putting out|laying out|forking over) (on|for) (lumber|wood|material|materials|timber|everything|it all|all this|all of this|hardware)`},
}
