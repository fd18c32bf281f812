package lexicon

// atThePost are more words for what stands at a post and at the saw: what holds a post up, where it is marked, and what is cut.
var atThePost = []Entry{
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: `
		(past|beyond|behind|outside) WALL [(it|EARTH|ground)] (falls|drops|goes|slopes) (away|off|down)
		(from|FLOOR|measured from) [(the|our)] [(porch|deck)] (FLOOR|porch|boards|deck boards|deck|platform|decking) [boards] [down] to [the] (EARTH|driveway|flower bed|flowerbed|bed|path|sidewalk|pavement|gravel|rocks|bushes|garden bed|borders|border|shrubs) [(outside|beyond|past|behind|below|out there|on the other side|on the far side|on the outside)] [(of|)] [(WALL|it)]
		(EARTH|driveway|flower bed|flowerbed|path|sidewalk|gravel|drive|garden|yard) (outside|beyond|past|behind|below|out there|on the other side|on the far side|on the outside) [(of|)] [(WALL|it)] [(is|lies|sits)] [(down|lower)]
		[down] (to|onto|into) (EARTH|driveway|flower bed|flowerbed|path|sidewalk|gravel|drive) [(on|at)] [(the|that)] (far|other|outer|outside|back) side [of WALL]
		[down] (to|onto|into) (EARTH|driveway|flower bed|flowerbed|path|sidewalk|gravel|drive) (outside|beyond|past|behind|below|out there)
		[down] to (driveway|flower bed|flowerbed|path|sidewalk|gravel|drive)
		on [the] (outside|far side|other side|outer side) of WALL [the] EARTH [(is|lies|sits|drops|falls)] [down]
		if (somebody|someone|anybody|anyone|a kid|a child|you|one|a guest|a person) (fell|fall|falls|went|toppled|tumbled|stepped|dropped|climbed|rolled|tipped) (over|off|past|across) [WALL] [(,)] (they|he|she|you|it) (would|will) (fall|drop|go|tumble|land) [(down)] [(from FLOOR to EARTH)]`},
	{Kind: Loc, Key: "off floor", Sense: Meaning("| wall height, bottom gap, post height, base height, rail top, drop, fixed rail top, marks, bracket reach"), Ways: "from FLOOR to (EARTH|ground)"},
	{Kind: Part, Key: "base height", Sense: Meaning("base height"), Ways: `
		[POST] (base|bases|standoff|shoe|foot|stand|saddle|pedestal) (props|prop|boosts|jacks|picks|bumps|elevates|brings|puts|sets|holds|keeps|lifts|raises|carries|stands) [(the|that|this)] (added|new|) (POST|UPRIGHT) [(up|off the floor|clear)]
		[POST] (base|bases|standoff|shoe|foot|stand|saddle|pedestal) (stands|sits|rises|is|measures) [(up)] [(HIGH)] (under|beneath|below|underneath) (|added|new) (POST|UPRIGHT)
		(standoff|stand-off|stand off|space|gap|clearance|air space|air gap|air|room|daylight) (under|beneath|below|underneath) (|added|new) (POST|UPRIGHT)
		[(from FLOOR)] to [(the)] (underside|foot|bottom|bottom end|end|base) of [(the)] (|added|new) (POST|UPRIGHT)
		(space|gap|clearance|distance|room|air) (from|between|off|over|above) FLOOR (to|and) [(the)] (underside|foot|bottom|bottom end|end|base) of [(the)] (|added|new) (POST|UPRIGHT)
		(underside|foot|bottom|bottom end|end|lower end|base|toe) of [(the)] (|added|new) (POST|UPRIGHT)
		(underside|foot|bottom|bottom end|end|lower end|base|toe) of [(the)] (|added|new) (POST|UPRIGHT) [(to be|is|should be|gets|kept|being)] (lifted|raised|held|kept|propped|jacked) [up]
		(|added|new) (POST|UPRIGHT) (underside|bottom end|lower end)
		(|added|new) (POST|UPRIGHT) (is|stands|sits|gets|to be|should be|must be) (held|kept|lifted|raised|propped|carried) [up]
		(added|new) (POST|UPRIGHT) [(to|should|must|will|has to|ought to|needs to|shall)] (stand|sit|stands|sits|rests|rest|rides|ride) on [(its|a|the|post)] (base|standoff|shoe|foot|stand|saddle|pedestal) [(HIGH)]`},
	{Kind: Loc, Key: "base", Sense: Meaning("| base height"), Ways: `
		on [(its|the|their|post)] (base|bases|standoff|shoe|saddle|pedestal)
		(by|with) [(the|its|a)] (post base|base|standoff|shoe|saddle)
		(because|as|since|for) [(the|its)] [post] (base|standoff|shoe|saddle) (lifts|holds|raises|keeps|carries|props) (it|POST|them) [up]`},
	{Kind: Quest, Key: "marks", Loose: true, Ways: `
		(heights|height|spots|places) to (mark|pencil|scribe) [(at|POST)]
		MARK (heights|height|locations|positions|spots|list|layout)
		[(list|set|table|heights|string|row|column)] (of|with) [all] MARK (for|on|up) [(the|each|every)] (POST|BRACKET)
		(list|set|table|string|row|column) of [all] [(my|the)] (MARK|marks)
		(at|on) (what|which) (height|heights) [to] (mark|pencil|scribe|score|strike|notch) [(POST|BRACKET|it|them|RAIL)] [(for|of) (each|every|all|the|) (RAIL|BRACKET)]
		(mark|marking) [(out|up|off)] POST [now] [(,|;)] (at|on) (which|what) (height|heights)
		(what|which) (height|heights) [(am|are|do|should|must|would|will)] [(i|we|he|she|they)] (mark|marking|pencil|penciling|scribing|scribe|scratching|striking|strike) [(at|on|to)] [POST]
		(call|read|sing|shout|give|reel|rattle|list) (out|off|ME|me out|off to me) [all] [(the|my|his|her|their|our|them)] (marks|heights|layout marks|pencil marks|mark heights)
		where [(do|does|should|must|will|would)] [(his|her|their|my|our|the|all)] [(layout|pencil|bracket)] (marks|lines) (belong|go|sit|fall|land|come|lie|end up|get put) [(on POST)]
		where (he|she|they|PERSON) [(should|has to|must|needs to|is to|are to|ought to)] (put|make|strike|draw|set|pencil) [(his|her|their|my|our|the|all)] [(layout|pencil|bracket)] (marks|lines) [on POST]
		where [(do|does|should|must|will|would)] [(i|we|he|she|they)] [(should|must|need to|have to)] (scribe|score|scratch|notch|nick|tick|pencil|mark) [the] POST [for (RAIL|BRACKET|each RAIL|every RAIL)]
		where [(do|does|should|would|will|must)] [the] (rest of|remaining|other|others of) [the] (marks|lines) (go|belong|fall|come|sit|land)
		where [(do|does|should|would|will|must)] [the] (rest|remaining ones|others) of [the] (marks|lines) (go|belong|fall|come|sit|land)
		(what|tell me what) [(do|does|would|will)] [(my|the|our)] (marks) (do|become|look like|come to|turn into|change to) [(then|now)]`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: `
		(what|which) [(do|does|should|must|would|will)] [(i|we|he|she|they)] [to] (set|put|lock|clamp|fix) [(the|my|our)] (stop|stop block|saw|fence|saw stop|length stop) [(on the saw)] (to|at|for) [(for)] [(these|those|the|each|all|)] [RAIL]
		(where|how far) [(do|does|should|must|would|will)] [(i|we|he|she|they)] [to] (set|put|lock|clamp|fix) [(the|my|our)] (stop|stop block|fence|saw stop|length stop) [(on the saw)] [(for)] [(these|those|the|each|all|)] [RAIL]
		(at|by|standing at|over at) [(the|my)] saw [(now|already)] [(,|so|and)] how long [is] (each|every|the|a) [(one|RAIL|stick)]
		(read|call|give|reel|rattle|list|sing|shout) (ME) (off|out) [all] [the] (cuts|cut lengths|cutting list|cut list|lengths)
		(read|call|reel|rattle|give) ME offcuts
		(read|call|reel|rattle|list|sing|shout) (off|out) [all] [the] (cuts|cut lengths|cutting list|cut list|lengths) [to me]
		(show|see|have|know|give me) [all] [(of)] [the] (cut lengths|cutting lengths|saw lengths|cut list|lengths to cut)
		(what|which) [(are|is|will be|would be)] (his|her|their|my|our) (lengths|cuts|cut lengths|cutting lengths|cut list)
		(RAIL) (have|has|need|needs|get|are|must|should|got|want|will|going) (to be|being|be|getting|gotten) CUT [(now|today|tomorrow|tonight|this afternoon|this morning|first|next|soon|after lunch)] [(,|;|so|.)] (what|which|at what|to what|how) (lengths|length|long) [(is|are|will|does|do|should)] [(it|they|each|each one|that|them)] [(be|come out)]
		how long [(are|is|do|does)] RAIL [(are|is)] [(getting|being|to be|gotten|going to be|to get)] CUT
		how long (would|will) (that|it|they|each|they all|those) (be|come out|come to|turn out|work out to)`},
	{Kind: Quest, Key: "posts", Loose: true, Ways: `
		how far [(along|over|in|across|down|out)] [(should|do|does|must|will|would|are|is|to)] [(i|we|he|she|they)] [(to)] [(set|put|stand|place|plant)] [(the|my|our)] [(added|new|extra|)] (POST|UPRIGHT) [(be|get|go|to be|are)] [(set|put|placed|stood|planted|go|stand|sit)]
		POST (spots|spot|positions|places|marks on the floor|setting out) [(along|across|on) [the] FLOOR]
		POST layout (along|across|on) [the] FLOOR [(,|:|;)] [(where) (each|every|is|does) [(one|of them|POST)] (sit|go|stand|sits|goes|stands|belong|belongs|end up|ends up|land|lands)]
		where [(to|do i|do we|should i|should we|i|we|should|would you|would)] (put|set|place|stand|plant|anchor|locate) POST (next to|beside|by|alongside|at|near) [the] OPENING
		where [(does|do|is|are|should|will|would)] [(that|this|the|my|our|those|these|an)] (added|new|extra|) (POST|UPRIGHT|posts) [(end up|ends up|belong|belongs|go|goes|stand|stands|sit|sits|come|comes|land|lands|wind up|winds up)] [(along the FLOOR|next to the opening|beside the opening|by the opening)]`},
}
