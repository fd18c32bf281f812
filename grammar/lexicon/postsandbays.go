package lexicon

// postsAndBays are more names of posts, of what stands between them and of how far apart they are, and what else is told of them.
var postsAndBays = []Entry{
	{Kind: Loc, Key: "between rails", Sense: Meaning("gap | bracket clearance, span, stiffener spacing"), Ways: "between (them|the two|the pair|the two of them)"},
	{Kind: Loc, Key: "between posts", Sense: Meaning("span | bay, bays, added posts, stiffener spacing, opening, post size, rails"), Ways: `
		[in] BETWEEN [(two|both|2)] POST (on|at) [(the|either|each|both)] (ends|end|corners)
		[in] BETWEEN [(two|both|2)] (old|existing|present|original) (end|corner|outside|outer) (ones|pair|two)`},
	{Kind: Part, Key: "span", Sense: Meaning("span | bay, centers, overall"), Ways: "[from] POST to POST"},
	{Kind: Part, Key: "span", Sense: Meaning("span | centers, overall"), Ways: "(clear) [,] [from] END POST to END POST\nfrom END POST to END POST\nEND POST to END POST"},
	{Kind: Part, Key: "overall", Sense: Meaning("overall"), Ways: `
		(over|across|to) (outside|outer) (faces|edges|sides|face) [of [(two|both)] [END] POST]
		from (outside|outer) (face|edge|side) to (outside|outer) (face|edge|side)`},
	{Kind: Part, Key: "end post", Sense: Meaning("end post size | span, centers, overall, post leans, post size, added posts"), Ways: `
		(two|ones|pair|two posts|pair of posts) (on|at|for) [(the|both|either|each)] (ends|outsides|corners|end)
		(two|pair|ones) (on the outside|outside ones|outer ones|end ones)`},
	{Kind: Part, Key: "added post", Sense: Meaning("added posts, added post size | post height, post from left, post from right, base height, cut, ?posts"), Ways: `
		(whatever|whichever|any) POST (get|gets|are|is|being|be) (added|set|put in|put up|installed) [(in between|between|in the middle|between the ends|between the end posts)]
		(added|new|extra) (POST|UPRIGHT|one) (next to|by|beside|at|alongside|near|against) [the] OPENING
		(POST|UPRIGHT) (next to|beside|alongside) [the] OPENING`},
	{Kind: Part, Key: "post height", Sense: Meaning("post height"), Ways: `
		(added|new|extra) POST [(should|must|will|need to|needs to|have to|has to|ought to)] (reach|reaches|reaching|tower|rise|rises) [(up to|to|up)]
		(added|new|extra) POST (should|must|will|need to|needs to|have to|has to|ought to) (come up|rise up|go up|stand up) [to]`},
	{Kind: Loc, Key: "to its top", Sense: Meaning("| wall height, post height, rail top"), Ways: `
		[up] from FLOOR [up] to (its|their|the very|the) top
		to (its|their) [very] top [end]`},
	{Kind: Loc, Key: "on base", Sense: Meaning("base height |"), Ways: `
		(held|kept|lifted|raised|carried|supported|propped|resting|sitting|standing) [up] [(off the floor|there|clear)] (by|on|in) (its|their|the|a|that|this) [(post|metal|steel)] (base|bases|standoff)
		(thanks to|because of|courtesy of|on account of) (its|their|the|that|this) [(post|metal|steel)] (base|bases|standoff)`},
	{Kind: Part, Key: "drop", Sense: Meaning("drop"), Ways: `
		[down] from (FLOOR|(deck|patio|porch|terrace) (floor|boards|surface|slab)) [(here|there|up here)] [down] to [the] EARTH [(beyond|behind|past|outside|below|on the other side [of]|on the far side [of])] [WALL]
		(off|over|past) [the] (edge|lip|side) [of FLOOR] [(behind|beyond|past|outside)] [WALL]
		drop (past|off) [the] (edge|WALL)`},
	{Kind: Part, Key: "bays", Sense: Meaning("bays"), Ways: `
		BAY (get|gets|are|is|being|to be|will be|being) (filled|filled in|filled up|boarded|boarded up|closed in) [(with|by)] [RAIL]
		(number|count|quantity) of BAY`},
	{Kind: Goal, Key: "equal bays", Loose: true, Ways: `
		(one|a|any|either|neither) BAY [(should|must|can|may|is to|ought to|to be)] not [(be|get|come out|end up)] [any] (wider|bigger|longer|larger|narrower|smaller|shorter) than [(the|any|its)] (another|other|others|rest|next|neighbor) [(one|ones|bay)] [,] [(make|keep|have|leave)] [(them|it)] [all] [(EQUAL|even)]
		neither BAY (wider|bigger|longer|larger|narrower|smaller|shorter) than [(the|any|its)] (other|others)
		(space|divide|split|set|lay|place|arrange|put|spread|position) POST [(out|up)] (so|such) [that] BAY [(are|is|be|will be|get|all|end up|come out)] (EQUAL|even|alike)
		BAY of [(the|an|one)] (EQUAL|same|one) (width|size|length)
		(each|every) [one] [of them] [(is|being|to be)] (just as|as|exactly as) (wide|big|long|large) as [the] (next|other|others|rest|one before)
		BAY (each|every) [one] [(is|being|to be)] (just as|as|exactly as) (wide|big|long|large) as [the] (next|other|others|rest|one before)
		BAY [,] (each|every) [one] [of them] [(is|being|to be)] the same [(width|size|length)] as [the] (next|other|others|rest)`},
	{Kind: Goal, Key: "fewest posts", Loose: true, Ways: `
		(keep|hold|get) [the] POST (count|number|numbers) [(down|low)] (as low|as small|as far down|low|down) as (possible|it will go|it goes|it can go|you can|we can|they will go|can be)
		(keep|hold|get) [the] (number|count) of POST [(down|low)] (as low|as small|as far down|low|down) as (possible|it will go|it goes|it can go|you can|we can|can be)
		(do not|not|never|rather not|without) [make ME] [want to|have to] (dig|digging) [any] more holes than [(absolutely|strictly|really)] [(i|we|you)] (have to|need to|need|must|necessary|needed|required)
		(as few|fewest) holes [(to dig|dug)] [as] (possible|you can|we can|i can|can be)
		(set|dig|add|put in|use|have|plant) no more of them than [(are|is|we|i)] (needed|need|necessary|have to|must|required)`},
	{Kind: Loc, Key: "below floor", Sense: Meaning("| drop"), Ways: "[down] (below|beneath|under|lower than) [the] (deck|patio|porch|platform|terrace) [floor]"},
	{Kind: Between, Key: "between", Sense: Meaning("gap, added post size"), Ways: "(vary|varies|varying|range|ranges|ranging|run|runs|anywhere|differs|goes|fluctuates) between"},
	{Kind: From, Key: "from", Ways: "(vary|varies|varying|range|ranges|ranging|differs|fluctuates) from"},
	{Kind: About, Key: "~", Ways: "of (maybe|perhaps|possibly) [(about|around|roughly)]\n(maybe|perhaps|possibly) (about|around|roughly)"},
	{Kind: Fill, Key: "fill", Ways: `
		(footing|footings|footer|footers|pier|piers|sonotube|sonotubes|foundation|foundations|blocks) (put|puts|set|sets|place|places|space|spaces|hold|holds|fix|fixes|have|has|leave|leaves)
		(break|breaks|broken|breaking) [(up|down)] (into|in)
		(split|divide|cut|break|partition|chop) it [all] [up] (into|in)
		(split|divide|cut|break|partition|chop) (WALL|run|whole thing|things) [up] (into|in)
		(written|noted|marked|jotted|scribbled) down [(there|here)]
		before (i|we) (came|moved in|got here|got there|arrived|bought it|bought the place|bought the house|took over|turned up)`},
	{Kind: TailFill, Key: "rest", Ways: `
		[,] [the] whole (lot|bunch|batch|set|crowd) [of (them|those)]
		[,] the (lot|bunch) of them
		[,] (every|each) (one|last one|single one) of (them|those)
		[,] [(and|so)] (that|this) is all [that] (we|i) (are|am) (building|making|doing|putting up|filling|planning|after|adding)
		[,] [(but|and)] [(i|we|it)] (have|has|had) not (taped|measured|checked|verified|confirmed|been measured|been checked) [(it|that|them|this)] [(yet|exactly|properly|for sure|so far|myself|though)]
		[,] [(but|and)] (yet to|still have to|still need to|need to|have to|got to) (tape|measure|check|verify|confirm|remeasure) (it|that|them) [(yet|exactly|properly|for sure|later|again)]
		[,] [(so|and|because|since|as)] that is [all] what (it|they|those|these) (is|are|will be|have to be|should be|be)
		[,] [(so|and|because|since|as)] that is [all] what (we|i) (are|am|will be|will) (use|using|go with|going with|stuck with|getting|get|build with|working with)
		[,] [(since|because|as|for)] (i|we) only have NTH [post] (base|bases|anchor|anchors|cap|caps)
		(when|after|since|because|once) (we|i|they|he) (reset|moved|plumbed|straightened|replaced|swapped|shifted|redid|rebuilt|reseated) [the] [(LEFT|RIGHT|other|one)] [END] (POST|footing|footings)
		[,] (so|and) (add|count) (that|it) [(on|to it)]
		[,] one (on|at|to) (each|either|both) (side|sides) of [the] OPENING
		[,] [(the|my|our)] PERSON (insists|insisted|is insisting) (on it|on that|so)
		[,] [(as)] [(the|my|our)] (cap|caps|post cap|post caps|base|bases|post base|footing|lumber|wood|slab|ledge|sill|window|roof|beam|step|steps) (is|'s|are|was|were|turns out|turned out) [(a bit|a little|a lot|much|way)] (thicker|bigger|taller|wider|longer|higher|lower|shorter|narrower|thinner|smaller) than (i|we|he|she|they) (thought|figured|expected|planned|reckoned|believed|guessed|remembered)`},
}

// courtesies are turns of phrase that only are polite, though their words stand in other ways as well.
var courtesies = []Entry{
	{Kind: Fill, Key: "fill", Ways: "if (that|it|this) is (all right|alright|fine|okay|ok|acceptable|agreeable) [(with|by)] [(you|everyone|everybody)]\n[if] that is all right with you"},
}
