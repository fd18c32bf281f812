package grammar

// idioms are turns of phrase of the trade that say in several words what the tables of parts, relations and measuring say
// in one.
var idioms = []entry{
	{kind: kHave, key: "have", ways: "(i|we) got"},
	{kind: kFill, key: "fill", ways: `
		if (that|it|this) (suits|pleases) [(you|me|us|everyone)]
		(may|might|could|can) i [just] (ask|inquire|trouble you)
		[(my|the|our)] (wife|husband|boss|client|customer|owner|mother|father|mom|dad|partner) [has] (put|set|capped|picked|chosen|settled on|decided on|agreed to|okayed)
		[(,)] like at what (heights|height)
		(near|close to|by|around) (us|me|here|town)
		(down|up) the (road|street) [(from (us|me|here))]
		on (that|the|your) list
		(i|we) would be happiest (with|if)
		(figure|figuring) [on]
		so to speak
		if (anything|need be|at all possible)
		(i|we) [have] (settled|agreed|landed|decided|gone|went) (on|upon|for|with)
		(a|one) (moment|minute|while|second|week|month|day) ago
		(earlier|yesterday|last night|last week|last weekend|the other day|over the weekend|after lunch|before lunch|a while back|a bit ago)
		(here|there) on the (bench|tailgate|truck|sawhorses)`},
	{kind: kVague, key: "vague", ways: "and (change|some)"},
	{kind: kQuest, key: "cost", ways: "(what|where) (are|is) (we|i) at (on|with|for) (cost|money|price|dollars)\nhow much [(are|is)] (we|i) (at|up to) [(now|so far)]"},
	{kind: kQuest, key: "shopping", ways: "what (is|do i have|have i got|have we got|do we have) left to (buy|get|purchase|pick up|order)"},
	{kind: kSellLess, key: "-=", ways: "[just] sold [(me|us)] [the] last of\nlast of"},
	{kind: kBestTail, key: "tail", ways: "as (you|we|i) [(can|could|possibly can)] (manage|possibly can|possibly could)"},
	{kind: kLoc, key: "between rails", sense: meaning("gap"), ways: "RAIL to RAIL"},
	{kind: kGoal, key: "cheapest", ways: "(whatever|whichever) [(one|way)] (comes|works|turns) out cheapest"},
	{kind: kPart, key: "overall", sense: meaning("overall"), ways: "(oa|o - a|o / a)"},
	{kind: kTailFill, key: "does it", ways: "(will|would|should|ought to|shall) (do it|do the job|do the trick)"},
	{kind: kEnter, key: "enter", ways: "[go ahead and] (put|plug|key|punch|enter|use|take) (his|her|their|these|those|the) (numbers|figures|dimensions|values) [in] [:]"},
	{kind: kLoc, key: "ends", sense: meaning("end post size |"), ways: "[both] ends (are|is|will be|being)"},
	{kind: kPart, key: "added post", sense: meaning("added post size"), ways: "added"},
	{kind: kPart, key: "wall height", sense: meaning("wall height"), ways: "top [edge] of [(the|this|that)] [whole] thing"},
	{kind: kFall, key: "falls", ways: "(runs|goes|slopes|slants|tilts|pitches|falls|drops|slants|leans) (downhill|down|away|off)\n(slants|slanting|slanted|dipping|dropping|drops off|falling away)"},
	{kind: kPart, key: "kerf", sense: meaning("kerf"), ways: "(every|each) time [the] [saw] (saw|blade) (goes|cuts|runs|passes) [through]"},
	{kind: kChange, key: "-=", ways: "(squeeze|squeezes|squish|compress|trim|dial back|ratchet down|knock down)"},
	{kind: kChange, key: "+=", ways: "(crank up|jack up|dial up|bump up|hike up)"},
	{kind: kMeasured, key: "measured", ways: "(tapes|taped|mics|mic|miked|mike|mikes|calipers|calipered|clocks|clocked) [(in|out)] [(at|to)]"},
	{kind: kRel, key: "=", ways: `
		(clocks|pans|pencils) (out|in) at
		(pegged|pinned|penciled|pencilled) at`},
	{kind: kAbout, key: "~", ways: `
		[it] (do|does|need|needs|has|have) not [(need|have|has)] [(to)] [be] [(too|that|so|all that)] (exact|spot on|dead on|precise|perfect|bang on|right on)
		(spot on|exact|dead on) [(is|it is)] not (needed|necessary|required|important)`},
	{kind: kBound, key: ">=", ways: "or (roomier|bigger if we can)"},
	{kind: kRel, key: "<", ways: "shy of"},
	{kind: kFromSide, key: "left", sense: meaning("| opening from left, post from left"), ways: "(off|past|beyond) [(inside|inner)] face of LEFT [(hand)] [END] [POST]"},
	{kind: kFromSide, key: "right", sense: meaning("| opening from right, post from right"), ways: "(off|past|beyond) [(inside|inner)] face of RIGHT [(hand)] [END] [POST]"},
	{kind: kSide, key: "left", sense: meaning("opening side"), ways: `
		[(right|hard|tight|smack dab|hugging|abutting|touching|flush|SNUG)] [(right|hard|tight)] [(up)] (against|beside|next to|alongside|to) POST (on|at|to) LEFT [(side|end|hand)]
		(smack dab|SNUG) [(right|hard|tight)] [(up|over|in)] (on|at|against|to|into|by|beside|next to|alongside|over by) LEFT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]
		(hugging|abutting|touching|butting) LEFT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]`},
	{kind: kSide, key: "right", sense: meaning("opening side"), ways: `
		[(hard|tight|smack dab|hugging|abutting|touching|flush|SNUG)] [(right|hard|tight)] [(up)] (against|beside|next to|alongside|to) POST (on|at|to) RIGHT [(side|end|hand)]
		(smack dab|SNUG) [(hard|tight)] [(up|over|in)] (on|at|against|to|into|by|beside|next to|alongside|over by) RIGHT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]
		(hugging|abutting|touching|butting) RIGHT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]`},
	{kind: kMove, key: "move", ways: "(shove|scoot|tuck|jam|butt|park|slam|cram)"},
	{kind: kPart, key: "bays", sense: meaning("bays"), ways: "BAY (getting|to get|that get|filled with|full of|that need|with) RAIL"},
	{kind: kPart, key: "added post", sense: meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), ways: `
		(one|ones|POST) [that] (i am|we are|i|we|being|getting|that is|that are|that gets|that get|you are) (adding|add|added|putting in|put in|going in|setting|set|setting in)
		(one|ones|POST) (going in|being added|being set|to be added|to be set)`},
	{kind: kPart, key: "post height", sense: meaning("post height"), ways: "ADDED POST [(should be|is|is to be|to be|gets|be)] cut so [that] [its] top (is|sits|stands|comes|ends up|lands) [(at)]"},
	{kind: kLoc, key: "off floor", sense: meaning("| wall height, bottom gap, post height, base height, rail top, drop, fixed rail top, marks, bracket reach"), ways: "[(should|must|will|to|needs to|has to)] clear FLOOR by"},
	{kind: kPart, key: "bracket ear", sense: meaning("bracket ear"), ways: "(each|every) [one] (sticks|stands|pokes|projects|extends|juts|reaches|stick|stand|poke) (out|past|up)\nBRACKET (poke|pokes|jut|juts|stick|sticks|stand|stands) (up|out|past|over) [(past|beyond|over)] [RAIL]"},
	{kind: kPart, key: "drop", sense: meaning("drop"), ways: `
		(EARTH|FLOOR) (past|beyond|outside|off|below) [(edge|end|side|lip) of] (porch|deck|patio|FLOOR|slab|stoop|veranda|platform) [(is|lies|sits|drops|falls)]
		(lower|down) than (porch|deck|patio|platform) [floor]`},
	{kind: kLean, key: "leans", ways: "(is|are) not [(quite|exactly|dead|perfectly)] (plumb|straight|vertical|true) [(,|and|but|:)] [it] (lean|leans|tilts|tips|leaning|leaned|is leaning) [(over)] [by]"},
	{kind: kExtra, key: "extra", ways: `
		(tack|throw|toss|chuck|stick|pop|slip) (on|in) [(another|an extra)]
		also (need|want|cut|make|require)
		(i|we) also (need|want|require|must cut|have to cut)
		while (i am|we are|you are) at it (i|we) [also] (need|want)`},
	{kind: kPart, key: "fit", sense: meaning("fit"), ways: "(shorter|smaller|less) than [(its|their|the)] (space|bay|opening|hole|slot)"},
	{kind: kPart, key: "overall", sense: meaning("overall"), ways: "[from] (outer|outside|far) (side|edge|face) of (one|left|first) [END] POST to (outer|outside|far) (side|edge|face) of (other|right|next|second) [(one|END)] [POST]"},
	{kind: kPart, key: "span", sense: meaning("span"), ways: "[from] (inner|inside|near) (side|edge|face) of (one|left|first) [END] POST to (inner|inside|near) (side|edge|face) of (other|right|next|second) [(one|END)] [POST]"},
	{kind: kGoal, key: "same length", ways: "(1|one) LENGTH for (all|every|RAIL|them)\n(all|every) RAIL (1|one) LENGTH\n[(all|every)] RAIL CUT to (the|) one LENGTH"},
	{kind: kLoc, key: "between rails", sense: meaning("gap"), ways: "BETWEEN (each|every|any) pair of RAIL"},
	{kind: kGoal, key: "fewest posts", ways: `
		(no|not) [have ME] [(add|set|setting|use|using|put in|putting in|adding)] [(any)] more POST than [(absolutely|strictly|really)] [(i|we|you)] (needed|necessary|required|have to|need to|need|must|it takes|need be)
		as few (POST|uprights) as [(possible|you can|we can|i can|you can get away with|we can get away with)]`},
	{kind: kUnits, key: "metric", ways: "(metric|millimeters|millimetres|mm) (from here|from now|from now on|from here on|all the way|throughout|only|please)"},
	{kind: kUnits, key: "customary", ways: "(inches|imperial|feet and inches) (from here|from now|from now on|from here on|all the way|throughout|please|only)"},
}
