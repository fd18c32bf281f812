package lexicon

// idioms are turns of phrase of the trade that say in several words what the tables of parts, relations and measuring say
// in one.
var idioms = []Entry{
	{Kind: Have, Key: "have", Ways: "(i|we) got"},
	{Kind: Fill, Key: "fill", Ways: `
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
	{Kind: Vague, Key: "vague", Ways: "and (change|some)"},
	{Kind: Quest, Key: "cost", Ways: "(what|where) (are|is) (we|i) at (on|with|for) (cost|money|price|dollars)\nhow much [(are|is)] (we|i) (at|up to) [(now|so far)]"},
	{Kind: Quest, Key: "shopping", Ways: "what (is|do i have|have i got|have we got|do we have) left to (buy|get|purchase|pick up|order)"},
	{Kind: SellLess, Key: "-=", Ways: "[just] sold [(me|us)] [the] last of\nlast of"},
	{Kind: BestTail, Key: "tail", Ways: "as (you|we|i) [(can|could|possibly can)] (manage|possibly can|possibly could)"},
	{Kind: Loc, Key: "between rails", Sense: Meaning("gap"), Ways: "RAIL to RAIL"},
	{Kind: Goal, Key: "cheapest", Ways: "(whatever|whichever) [(one|way)] (comes|works|turns) out cheapest"},
	{Kind: Part, Key: "overall", Sense: Meaning("overall"), Ways: "(oa|o - a|o / a)"},
	{Kind: TailFill, Key: "does it", Ways: "(will|would|should|ought to|shall) (do it|do the job|do the trick)"},
	{Kind: Enter, Key: "enter", Ways: "[go ahead and] (put|plug|key|punch|enter|use|take) (his|her|their|these|those|the) (numbers|figures|dimensions|values) [in] [:]"},
	{Kind: Loc, Key: "ends", Sense: Meaning("end post size |"), Ways: "[both] ends (are|is|will be|being)"},
	{Kind: Part, Key: "added post", Sense: Meaning("added post size"), Ways: "added"},
	{Kind: Part, Key: "wall height", Sense: Meaning("wall height"), Ways: "top [edge] of [(the|this|that)] [whole] thing"},
	{Kind: Fall, Key: "falls", Ways: "(runs|goes|slopes|slants|tilts|pitches|falls|drops|slants|leans) (downhill|down|away|off)\n(slants|slanting|slanted|dipping|dropping|drops off|falling away)"},
	{Kind: Part, Key: "kerf", Sense: Meaning("kerf"), Ways: "(every|each) time [the] [saw] (saw|blade) (goes|cuts|runs|passes) [through]"},
	{Kind: Change, Key: "-=", Ways: "(squeeze|squeezes|squish|compress|trim|dial back|ratchet down|knock down)"},
	{Kind: Change, Key: "+=", Ways: "(crank up|jack up|dial up|bump up|hike up)"},
	{Kind: Measured, Key: "measured", Ways: "(tapes|taped|mics|mic|miked|mike|mikes|calipers|calipered|clocks|clocked) [(in|out)] [(at|to)]"},
	{Kind: Rel, Key: "=", Ways: `
		(clocks|pans|pencils) (out|in) at
		(pegged|pinned|penciled|pencilled) at`},
	{Kind: About, Key: "~", Ways: `
		[it] (do|does|need|needs|has|have) not [(need|have|has)] [(to)] [be] [(too|that|so|all that)] (exact|spot on|dead on|precise|perfect|bang on|right on)
		(spot on|exact|dead on) [(is|it is)] not (needed|necessary|required|important)`},
	{Kind: Bound, Key: ">=", Ways: "or (roomier|bigger if we can)"},
	{Kind: Rel, Key: "<", Ways: "shy of"},
	{Kind: FromSide, Key: "left", Sense: Meaning("| opening from left, post from left"), Ways: "(off|past|beyond) [(inside|inner)] face of LEFT [(hand)] [END] [POST]"},
	{Kind: FromSide, Key: "right", Sense: Meaning("| opening from right, post from right"), Ways: "(off|past|beyond) [(inside|inner)] face of RIGHT [(hand)] [END] [POST]"},
	{Kind: Side, Key: "left", Sense: Meaning("opening side"), Ways: `
		[(right|hard|tight|smack dab|hugging|abutting|touching|flush|SNUG)] [(right|hard|tight)] [(up)] (against|beside|next to|alongside|to) POST (on|at|to) LEFT [(side|end|hand)]
		(smack dab|SNUG) [(right|hard|tight)] [(up|over|in)] (on|at|against|to|into|by|beside|next to|alongside|over by) LEFT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]
		(hugging|abutting|touching|butting) LEFT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]`},
	{Kind: Side, Key: "right", Sense: Meaning("opening side"), Ways: `
		[(hard|tight|smack dab|hugging|abutting|touching|flush|SNUG)] [(right|hard|tight)] [(up)] (against|beside|next to|alongside|to) POST (on|at|to) RIGHT [(side|end|hand)]
		(smack dab|SNUG) [(hard|tight)] [(up|over|in)] (on|at|against|to|into|by|beside|next to|alongside|over by) RIGHT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]
		(hugging|abutting|touching|butting) RIGHT [(hand|side|end|edge)] [END] [(POST|side|end|edge)]`},
	{Kind: Move, Key: "move", Ways: "(shove|scoot|tuck|jam|butt|park|slam|cram)"},
	{Kind: Part, Key: "bays", Sense: Meaning("bays"), Ways: "BAY (getting|to get|that get|filled with|full of|that need|with) RAIL"},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: `
		(one|ones|POST) [that] (i am|we are|i|we|being|getting|that is|that are|that gets|that get|you are) (adding|add|added|putting in|put in|going in|setting|set|setting in)
		(one|ones|POST) (going in|being added|being set|to be added|to be set)`},
	{Kind: Part, Key: "post height", Sense: Meaning("post height"), Ways: "ADDED POST [(should be|is|is to be|to be|gets|be)] cut so [that] [its] top (is|sits|stands|comes|ends up|lands) [(at)]"},
	{Kind: Loc, Key: "off floor", Sense: Meaning("| wall height, bottom gap, post height, base height, rail top, drop, fixed rail top, marks, bracket reach"), Ways: "[(should|must|will|to|needs to|has to)] clear FLOOR by"},
	{Kind: Part, Key: "bracket ear", Sense: Meaning("bracket ear"), Ways: "(each|every) [one] (sticks|stands|pokes|projects|extends|juts|reaches|stick|stand|poke) (out|past|up)\nBRACKET (poke|pokes|jut|juts|stick|sticks|stand|stands) (up|out|past|over) [(past|beyond|over)] [RAIL]"},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: `
		(EARTH|FLOOR) (past|beyond|outside|off|below) [(edge|end|side|lip) of] (porch|deck|patio|FLOOR|slab|stoop|veranda|platform) [(is|lies|sits|drops|falls)]
		(lower|down) than (porch|deck|patio|platform) [floor]`},
	{Kind: Lean, Key: "leans", Ways: "(is|are) not [(quite|exactly|dead|perfectly)] (plumb|straight|vertical|true) [(,|and|but|:)] [it] (lean|leans|tilts|tips|leaning|leaned|is leaning) [(over)] [by]"},
	{Kind: Extra, Key: "extra", Ways: `
		(tack|throw|toss|chuck|stick|pop|slip) (on|in) [(another|an extra)]
		also (need|want|cut|make|require)
		(i|we) also (need|want|require|must cut|have to cut)
		while (i am|we are|you are) at it (i|we) [also] (need|want)`},
	{Kind: Part, Key: "fit", Sense: Meaning("fit"), Ways: "(shorter|smaller|less) than [(its|their|the)] (space|bay|opening|hole|slot)"},
	{Kind: Part, Key: "overall", Sense: Meaning("overall"), Ways: "[from] (outer|outside|far) (side|edge|face) of (one|left|first) [END] POST to (outer|outside|far) (side|edge|face) of (other|right|next|second) [(one|END)] [POST]"},
	{Kind: Part, Key: "span", Sense: Meaning("span"), Ways: "[from] (inner|inside|near) (side|edge|face) of (one|left|first) [END] POST to (inner|inside|near) (side|edge|face) of (other|right|next|second) [(one|END)] [POST]"},
	{Kind: Goal, Key: "same length", Ways: "(1|one) LENGTH for (all|every|RAIL|them)\n(all|every) RAIL (1|one) LENGTH\n[(all|every)] RAIL CUT to (the|) one LENGTH"},
	{Kind: Loc, Key: "between rails", Sense: Meaning("gap"), Ways: "BETWEEN (each|every|any) pair of RAIL"},
	{Kind: Goal, Key: "fewest posts", Ways: `
		(no|not) [have ME] [(add|set|setting|use|using|put in|putting in|adding)] [(any)] more POST than [(absolutely|strictly|really)] [(i|we|you)] (needed|necessary|required|have to|need to|need|must|it takes|need be)
		as few (POST|uprights) as [(possible|you can|we can|i can|you can get away with|we can get away with)]`},
	{Kind: Units, Key: "metric", Ways: "(metric|millimeters|millimetres|mm) (from here|from now|from now on|from here on|all the way|throughout|only|please)"},
	{Kind: Units, Key: "customary", Ways: "(inches|imperial|feet and inches) (from here|from now|from now on|from here on|all the way|throughout|please|only)"},
}
