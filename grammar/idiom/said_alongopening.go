package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What people say of the opening in a wall and of the floor under it in words of their own. What stands along the wall besides is in said_alongwall.go.

// endSide is a side of the wall, told by its post or its end.
const endSide = "!(left|right) [hand] [end] [post|side|end|one]"

// freeThings are things that may be beside a wall and are none of it.
const freeThings = "(steps|stairs|path|door|stove|grill|gate|lawn|garden|drive|driveway|ramp|hose|tap|tub|pool|kitchen|garage|shed|walk|street|road|barn)"

// softLimit is a figure of a wish, with its limit.
const softLimit = "!([about|around|roughly|(at least)|(at most)|(no (more|less|wider|narrower|higher|lower|larger|smaller) than)|over|under|above|below|(not (over|under))] (#|##|@) [(or (more|less|wider|narrower|higher|lower|larger|smaller|under|over|above|below|so))|wide|high|tall|apart|clear|each|(on center)])"

var alongOpening = []phrase.Placed{
	// A wish that says please is no trial.
	{"^^ [hi|hello|and|also|now] [,] (could|can|may|might) !" + "(ANYQUANT|([the|my|our] " + sizedParts + ")|([the|our] WALL)) be " + softLimit + " [,] please [\\?|.|!] $$", "make $1 $2 please", nil},
	{"^^ [hi|hello|and|also|now] [,] (could|can|may|might) there be !((##|no|zero) (RAIL|STIFF|openings|bays|(ADDED POST))) [(in|per|for|to) (each|every|a) BAY] [,] please [\\?|.|!] $$", "have $1 please", nil},
	{"^^ [hi|hello|and|also|now] [,] (could|can|may|might) [the|my|our] !(DOORWAY|(walk - through)) be [put|set|placed] (on|at|in|against) [the] !(left|right|middle|center) [hand] [side|end|post] [,] please [\\?|.|!] $$", "put the $1 on the $2 please", nil},
	{"(give|get) ME all the !(GAP|OPENING|HEIGHT|room|(walk - through)|bay) [that] (you|we|i) (can|could|possibly can) [get|give|manage|find|squeeze out] $", "as much $1 as you can", phrase.StartsClause},
	{"(give|get) ME all the !DOORWAY|(walk - through) [that] ((the code|(the wall)|(the law)|it|(the span)) (allows|permits|(will (allow|take|give))|takes|gives)|(there is room for))", "as much $1 as you can", phrase.StartsClause},
	{"all the !OPENING|(walk - through) [that] (you|we|i) (can|could|possibly can) [get|give|manage|find]", "as much $1 as you can", phrase.StartsClause},

	// How wide, and where.
	{"^ [the|my|our] (gate|door|gates|doors) [(that|which)] [(we|i) (have|got|bought|own)] (is|'s|are|measures|measure) # [wide|across|long|over] [,|;|-] so [that] [the|our|my] !(opening|(walk - through)|walkthrough|doorway|passage|passageway|entrance)", "the $2", noMoreAhead},
	{"# (is|'s) the (width|size) of [the|my|our] !DOORWAY", "the $2 is $1 wide", widthToldFirst},
	{"[the] (near|nearest|nearer|closest|closer) (side|edge|end|jamb) of [the|my|our] !DOORWAY", "the $1 start", nil},
	{"## !(openings|doorways|entrances|walkthroughs|gates|(ways through)) [,|-|;] [(and|with)] (each|both|all) [of them|one] [is|to|should|must|has to|being] [be] !((at least)|(at most)|(no (more|less|wider|narrower) than)|over|under|about) # [wide|apiece|clear]", "$1 $2 , opening $3 $4", noDoubtBefore},
	{"!DOORWAY [right|just] (next to|beside|alongside|by|against) (it|that|that one|(the (new|added|extra) (post|one))) $", "$1", figuredAndAdded},
	{"with the (added|new|extra) post [right|just|set] (beside|next to|by|against|alongside) it $", "", sideSpoken},
	{"[and] (a|an|one|single) !DOORWAY [right] (beside|next to|by|alongside) (it|them|that) $", "and 1 $1", baySpoken},
	{"^ " + endSide + " (is|'s) where [i|we] [want] [the|my|our] !DOORWAY [sits|goes|is|belongs|stands|lands|ends up|(should|is to|has to|will|must) (go|sit|be|stand)|(to (go|sit|be|stand))]", "put the $2 on the $1", noAskAhead},
	{"^ [the|dead|right|smack] !(middle|center) of [the|my|our] wall (for|is where i want|is where we want|is the place for|is where) [the|my|our|an|a] !DOORWAY [goes|sits|is|belongs|(is to (go|be))]", "put the $2 in the $1", noAskAhead},
	{"!DOORWAY [is|goes|sits|should be|to be] [dead|right|exactly] (centered|centred|midway|halfway|(in the middle)) between [the|my|our|both] [two] [end] posts", "$1 in the middle", nil},
	{"[the|a|an] (same|equal|(even|equal) amount|same (amount|length|stretch|bit|run|width)|(as much)) [of] (wall|rails|boards|it) (on|to|at) (both|each|either) (side|sides|ends|end) of [the|my|our] !DOORWAY", "the $1 in the middle", noDoubtBefore},
	{"^ [the|our|my] " + freeThings + " (come|comes|go|goes|land|lands|lead|leads|is|are|'s|sits|lies|stands|starts) [up|in|down|out|over] (by|at|on|near|to|next to|beside) [the] " + endSide + " [,|;] [so|and|(and so)] (that|this) (is|'s|will be) [also] (the (side|end|spot|place) for|where [(i|we) want]) [the|my|our] !DOORWAY [goes|(to go)|(should go)|belongs]", "put the $2 on the $1", nil},
	{"^^ not (on|at|in|against|by) [the] (left|right|middle|center) [hand] [side|end|post] [,|;|but|-] !(put|set|have|move|stick|place|run)", "$1", nil},
	{"(1|one) (by|at|against|beside|near|next to|on) (each|either|every) (end|(end post)|side|post)", "one on the left and one on the right", twoOpenings},
	{"^ [please|just] (close|wall|board|fill|shut|fence) [the|this|our|my|it] [wall|(whole thing)|side|run] (off|up|in) (completely|entirely|altogether|fully|totally|solid|(all the way [across])) [,|;] [and|with] (no|without [any|a]) (DOORWAY|(walk - throughs)|(walk throughs)|(ways through))", "no openings", nil},
	{", (it|that|which) lines up with [the|our|my] [_] (door|doors|window|path|walk|steps|stairs|gate|patio|drive|sink|kitchen|table|gap|trail|street) $", "", figureOrMiddleBefore},
	{", (because|since|so|where) (it|that) lines up with [the|our|my] [_] (door|doors|window|path|walk|steps|stairs|gate|patio|drive|sink|kitchen|table|gap|trail|street) $", "", figureOrMiddleBefore},
	{"^ there is [some|a|an|the] (rebar|conduit|pipe|drain|wire|cable|joint|crack|duct|beam|stump|root|rock|(water line)|(gas line)|pipes) (in the way|there|in there|under there|right there) [,|;] [and] so", "", phrase.StartsClause},
	{"post ## [is|goes] [at] # (and|,|&) post ## [is|goes] [at] # (from|off|in from) [the] !(left|right) [end] [post]", "post $1 is $2 from the $5 post and post $3 is $4 from the $5 post", noDoubtBefore},
	{"# (from|off|off of|in from|over from) [the] !(left|right) [hand] [end] post is where [the|i want|we want] !(post ##) [goes|sits|stands|is|belongs|(is to go)|(should (go|be|stand))|(to (go|be|stand))]", "$3 is $1 from the $2 post", noAskAhead},

	{"!# [,|;|-] (no|sorry|wait|(no wait)|(no sorry)|(scratch that)|(make that)|(i mean)|nope) [,] !# (from|off|(off of)|(in from)|(away from)|(over from)) [the] !(left|right)", "$3 from the $5", openingToldBefore},

	// The floor.
	{"(l|lh) [end] post", "left post", leansNext},
	{"(r|are|rh) [end] post", "right post", leansNext},
	{"(leans|lean|out) # l in", "leans $1 left in", nil},
	{"(leans|lean|out) # (r|are) in", "leans $1 right in", nil},
	{"[,|;] (it is|it 's|(the ground is)|everything is) (level|flat|even) (out|over|down|on) (there|(that side)|(the other side)|beyond)", "", aDropSpoken},
	{"^^ !(quarter|eighth|sixteenth) (per|a|each|every) foot", "a $1 inch per foot", nil},
	{"!((eighth|quarter|sixteenth) [inch] (per|a) foot) (is|'s) the (slope|fall|pitch|drop) (on|of|in|to) [the|my|our] FLOOR", "the floor falls a $1", nil},
	{"# (per|a|each|every) foot is the (slope|fall|pitch|drop) (on|of|in|to) [the|my|our] FLOOR", "the floor falls $1 per foot", nil},
	{"FLOOR (falls|drops|slopes|pitches|dips) # [in|over|per|to] !(## [in|inches|ft|feet]) $", "floor falls $1 per $2", fallSaid},
}

// widthToldFirst: the width stands at the beginning of its clause.
func widthToldFirst(before, after []scan.Atom) bool { return phrase.StartsClause(before, after) }

// figuredAndAdded: a new post is told of before, and a figure stands right before the opening.
func figuredAndAdded(before, after []scan.Atom) bool {
	return phrase.AmountBefore(before, after) && addedPostSpoken(before, after)
}

// noAskAhead: nothing is asked behind it.
func noAskAhead(_, after []scan.Atom) bool {
	return len(after) == 0 || after[len(after)-1].Text != "?"
}

// openingToldBefore: it is the opening whose place is told.
func openingToldBefore(before, _ []scan.Atom) bool {
	return OpeningNamed(before) && noDoubtBefore(before, nil)
}

// leansNext: it is told how the post leans.
func leansNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Text == "leans" || after[0].Text == "lean" || after[0].Text == "leaning" || after[0].Text == "out" || after[0].Text == "tips")
}

// twoOpenings: two openings are told of.
func twoOpenings(before, _ []scan.Atom) bool {
	for i, a := range before {
		if (a.Text == "two" || a.Text == "2" || a.Text == "both" || a.Text == "pair") && i+1 < len(before) {
			return OpeningNamed(before) || chunk.LastOf(before, 1) == "through" || chunk.LastOf(before, 2) == "through"
		}
	}
	return false
}

// figureOrMiddleBefore: the opening has its place.
func figureOrMiddleBefore(before, after []scan.Atom) bool {
	return figureOrSideBefore(before, after) || OpeningNamed(before) && noDoubtBefore(before, after)
}

// fallSaid: a figure of inches stands for the length that the floor falls over.
func fallSaid(before, _ []scan.Atom) bool { return noDoubtBefore(before, nil) }

var (
	sideSpoken  = phrase.SaidBeforeOf(scan.WordSet("left right"))
	baySpoken   = phrase.SaidBeforeOf(scan.WordSet("bay bays section sections"))
	aDropSpoken = phrase.SaidBeforeOf(scan.WordSet("drop"))
	_           = lexicon.Part
	_           = measure.Reader{}
)

// noMoreAhead: nothing is asked, and what follows is no more or less than what was told, which may be of the door.
func noMoreAhead(before, after []scan.Atom) bool {
	return noAskAhead(before, after) && !slices.ContainsFunc(after, func(a scan.Atom) bool {
		return a.Text == "bigger" || a.Text == "wider" || a.Text == "more" || a.Text == "larger" || a.Text == "less" || a.Text == "narrower" || a.Text == "smaller"
	})
}
