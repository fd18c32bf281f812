package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What people say of the length of a wall in words of their own: how its end posts were measured, what they and the new ones are made of, how it is
// parted into bays, and what stiffens these. The opening and the floor are in said_alongopening.go.

// faces is how a distance between two posts is measured.
const faces = "((outside|out|outer) [face] to (outside|out|outer) [face])|(face to face)|((inside|inner) [face] to (inside|inner) [face])|((center|centre|middle) to (center|centre|middle))|(on center)|(in the clear)"

// namedBay is one bay by its number.
const namedBay = "([the] ((bay ##)|((first|second|third|fourth|fifth|1st|2nd|3rd|last|left|right|middle) (bay|section))))"

// sizedParts are parts that have a size of lumber.
const sizedParts = "(([end|added|new|extra|existing] POST)|RAIL|STIFF)"

var alongWall = []phrase.Placed{
	// How the end posts were measured.
	{"tip to tip [,] [(counting|including|with|over) [both] [the|my|our] [end] posts]", "overall", noPieceBefore},
	{"end to end [,] (over|counting|including|outside) [both] [the|my|our] [end] posts [,] [(make it)|(i make it)|(call it)|(it is)|(that is)]", "overall", noPieceBefore},
	{"^ [i|we] [have|just] (taped|measured|ran|pulled) [it|that|them|(the tape)|(my tape)|(a tape)] !(" + faces + ") [of|on|at|between|across] [the|my|our|both] [two] [end] [posts] [,|;|-] [and] [it|(the tape)|(my tape)] (said|says|read|reads|(came [out] (to|at))|(comes [out] (to|at))|showed|shows|gave|gives)", "the end posts $1", figureRightAhead},
	{"^ [i|we] [have|just] (snapped|strung|stretched|pulled|ran|struck) (a|the|my|our) [chalk|mason|dry|string] (line|string|tape) !(" + faces + ") [of|on|at|between|across] [the|my|our|both] [two] [end] [posts] [,|;|-|:] [and] [i|it] [(get|got|said|says|read|reads|is|was)]", "the end posts $1", figureRightAhead},
	{"[i|we] ((do not)|never) (have|get|got|take|took|measure|measured|know) [the] [figure|distance] (" + faces + ") [figure|distance] [,|;|-] [(but|and)] (only|just) [the|have|got|know|took] !(" + faces + ") [figure|distance] [,|;|-] [and] [(that|it|which) (is|'s|was|comes to|came to)]", "the end posts $1", figureRightAhead},
	{"end posts [(were|are|have been|got|was)] (poured|planted|sunk|anchored|footed|cemented|bolted|installed|mounted|erected) [down] [in concrete] [(at|to)] # !(" + faces + ")", "end posts are $1 $2", noDoubtBefore},
	{"end posts (have|leave|give|gives|leaves) [(me|us)] # of (clear|free|open|empty|usable) (space|room|air|distance|width|run) between them", "span $1", noDoubtBefore},
	{"# is (what|all that|all) [is|'s] (left|there|available|open|clear) (inside|between|inbetween) [the|my|our] [two] end posts", "span $1", noDoubtBefore},
	{"(gap|space|hole|stretch|distance|opening) [that|which] (i|we) (am|are|'m|'re|(have to)|will be|want to) (filling|fill|closing|close|boarding|board|walling|fencing) [in|off|up] (from|between) [the|my|our|one] end post (to|and) [the|my|our] [other] end post", "distance between the end posts", nil},

	{"^ take it [that] !(the|our|my|this|each|every|all|there)", "$1", noDoubtBefore},

	// What the posts are made of.
	{"[all|every|each] [of] [the|my|our] POST [,] [both] (old and new|new and old|existing and added|added and existing|existing and new|new and existing|(old ones|ends) and new [ones]) [,] [(are|is|be)] @", "all the posts are $1", noDoubtBefore},
	{"## bys , !@ [i mean]", "$2", nil},
	{"^^ @ , [for] (the|my|our|all|every|(all [of] (the|my|our))|(the whole lot of (the|my|our))|(every one of (the|my|our))|(each of (the|my|our))) !" + sizedParts + " $$", "the $2 are $1", nil},
	{"left and right [end] POST [,] [(are|is|will be|should be)] [both|each|(both are)] @", "the end posts are $1", noDoubtBefore},
	{"[the] [two|pair of] (ones|posts|columns) [(that|which)] (hold|holding|carry|carrying|support|supporting) [up] (the|our|my) [porch] _ (at|on) (each|either|both|the) (end|ends|sides|side) (are|is|'re|will be) @ [posts]", "the end posts are $1", noDoubtBefore},
	{"(pair of|two|both) (posts|columns|uprights) (that|which) (end|finish|terminate|bound|close) [off] [the|our|my|this] (wall|run|screen|line)", "end posts", nil},
	{"[,|;|-|.] [and] both [(are|of them [are])] @ $", ". end post size $1", endsApartBefore},
	{", (and|,) they (stand|sit|are|come|lie) # (apart|away|distant) !(" + faces + ")", ". $2 $1", endsSizedBefore},
	{"and they (stand|sit|are|come|lie) # (apart|away|distant) !(" + faces + ")", ". $2 $1", endsSizedBefore},
	{"[,] ((so [that] (it|they))|to) (match|matches) [up] [with] [the|my|our] (others|rest|ends|existing|old|(other|end|existing|old) (posts|ones|post|one))", "", sizeBefore},
	{"(size|lumber|wood) (of|for) the [one] POST [that] (i|we) (am|are|'m|'re|will be|plan on) (adding|(putting|setting) (in|up)|setting)", "added post size", nil},
	{"[,] [and] [its] height [is] [the] same as [that of] the wall", ", post height same as the wall height", addedPostSpoken},
	{"@ [all] (picked|chosen|selected|earmarked|(picked|lined|sorted) out|(set|put) (aside|by)|(in mind)|(lined up)) for [the|my|our] !(added|new|extra|middle|end) POST", "$1 for the $2 post", nil},
	{"^ [please|just|(let us)] (put|set|stick|plant) (in|up) ## POST [of (our|my) own] , [a|an|each|all|both] @", "$1 added posts , added post size $2", nil},
	{"[the|our|my] FLOOR (can not|will not|must not|is not to|shall not) be (drilled|cut|dug|touched|opened|broken|damaged|drilled into|cut into|holed|disturbed) [up] $$", "", denialBefore},

	{"(i|we) [have] (had|put|got|entered|noted|wrote|marked) [the|my|our] !(QUANT|" + sizedParts + "|WALL) [down] (as|at|for|to be) VALUE [,|;] but [really|actually] (it|they|that) (is|are|'s|'re|(should be)) [really|actually|(in fact)] !VALUE $", "the $1 is $2", slipTold},

	// Bays.
	{"RAIL (get|gets|are|is|will be|go|goes) [hung|mounted|fixed|put|set|fastened|up] in ## BAY [[,] [and|but] (nowhere|noplace|(no place)) else]", "$1 bays", bayCountTold},
	{"(filled|boarded|railed|closed|planked|slatted) [in|up] BAY", "bay", nil},
	{"[,] (and|but) (nowhere|noplace|(no place)|(not anywhere)) else $", "", figureOrSideBefore},
	{"[,] so [that] (nothing|none of it|none of them) [will|can|should] (sag|sags|bow|bows|droop|droops|bend|bends|warp|warps|flex|flexes|wobble|wobbles|give|gives|move|moves|twist|twists) $", "", figureOrSideBefore},
	{"RAIL (that long|this long|of that length|as long as that) [always|will|would|all|just] (sag|bow|droop|bend|warp|flex|twist|cup|crack|bounce) [(in|under|over|with|from|after) [the] _ [_]] [,|;|-] [and|so] so", "", bidAhead},
	{"# is as (wide|long|far|big) as (any|a|the|every|each) BAY (gets|goes|comes|(can|may|should|could|will|ought to|is allowed to|is to) (get|go|be|come))", "bay at most $1", noDoubtBefore},
	{"(number|count) of bays is ## , [and] (each|(they are) (each|all)) [one|of them|is|being]", "$1 bays , each", nil},
	{"## BAY [,] [(that|which|and they)] [are|(should|must|have to|to) be] all (alike|identical|matching|equal|even|(just alike)|(of a size)|(one size)|(equally wide)|(as wide as (each other|one another)))", "$1 bays , equal bays", noDoubtBefore},
	{"## BAY [,] [all] [of] (the same|equal|one|identical) (size|width|length)", "$1 bays , equal bays", noDoubtBefore},
	{"either ## or ## !(BAY|RAIL|STIFF|openings|posts) [,] [and|but] (not|no) more", "from $1 to $2 $3", noDoubtBefore},
	{"!(no|any|each|every) (stretch|run|section|reach) of RAIL", "$1 bay", nil},
	{"no run (longer|wider|more|bigger|greater) than", "no bay longer than", nil},

	{"^ [the|my|our|this|that] (WALL|span|run|DOORWAY|GAP|" + sizedParts + "|bays|gaps|openings|it) (is|'s|are|'re|gets|got|came out|comes out|turned out) [a] [bit|lot|little|much|now|even|good bit|way] (wider|broader|taller|higher|longer|narrower|shorter|lower|thicker|thinner) [now|(than (before|planned|i thought|we thought|i said))] [,|;|-] so [now] [,]", "", countsNext},

	// Stiffeners.
	{"[,|;] " + "!" + namedBay + " (is|'s) [a|the] [so|too|pretty|very|rather|quite|really|bit|little|lot|good bit] (long|longer|wide|wider|short|shorter|narrow|narrower|big|bigger|small|smaller|longest|widest) [one|(than (the (other|others|rest|next))|(bay _))] [,|;|-|:] [so|and|(and so)] [(let us)|please|just] [give|put|use|have|(it|that) (gets|has|needs|wants|takes)] [it|that] [in it] !(##|zero|no) STIFF [there|(in (it|there|that one))] $", ". $1 gets $3 stiffeners", noDoubtBefore},
	{"(leave|keep|drop|omit|skip) [out] [the|any|all|all the] STIFF [out] (of|from|in|for) !" + namedBay + " $", "no stiffeners in $1", bidsHereOrWished},
	{"^ (leave|keep) [all] [the|any|those] !(STIFF|(ADDED POST)) off [altogether|entirely|(this one)|(this wall)|(of it)]", "no $1", nil},
	{"what if (i|we) (leave|left|kept|keep) [all] [the|any|those] !(STIFF|(ADDED POST)) off [altogether|entirely]", "what if there are no $1", nil},
	{"what if (i|we) (leave|left) off [all] [the|any|those] !(STIFF|(ADDED POST))", "what if there are no $1", nil},
	{"^ leave off [all] [the|any|those] !(STIFF|(ADDED POST))", "no $1", nil},
	{"b ## [:|=|,] ## STIFF", "bay $1 $2 stiffeners", nil},
	{"STIFF spacing [of|is|:|at] # ,", "stiffeners $1 apart ,", sizeEndsIt},
	{"^ [please|just] (stiffen|brace|steady) [up] ((each|every) BAY|[all] [of] the bays) with !(## STIFF) [each|apiece|per bay|(in (each|every|a) bay)]", "$1 in each bay", nil},
	{"(verticals|uprights|pieces|strips|sticks) (that|which) (stiffen|brace|back|steady|straighten) [up] [the|my|our|those] RAIL", "stiffeners", nil},
	{"[the|these|those|our|my] RAIL (flop|wobble|bounce|flex|bend|rattle|shake|move|whip|bow|sag|wave) [about|around|(a lot)|(too much)|(a bit)|(all over [the place])] [,|;|-] [and] so", "", bidAhead},
	{"[a|the] (couple|pair|lot|bunch|load) of STIFF (is|are) [really|just] not (needed|necessary|required|wanted|called for) [,|;|-|.] [just|only]", "", someFigureNext},
	{"(i|we) do not (want|care|like) to [be] (cut|cutting|saw|sawing) [a lot of|a bunch of|all|any|so many] [different] (lengths|sizes) [,|;|-] [so]", "", bidAhead},
	{"## of (them|'em|those) (per|(to a)|(in (a|each|every))|a|each) BAY", "$1 rails", railsSpoken},
	{"## RAIL [stacked] (above|over|atop|(on top of)) (one another|each other)", "$1 rails", noDoubtBefore},
}

// noPieceBefore: what is measured is no board or bay.
func noPieceBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		if IsOf(a.Text, lexicon.Vocab().Ids["RAIL"]) || IsOf(a.Text, lexicon.Vocab().Ids["BAY"]) || a.Text == "?" || a.Text == "not" {
			return false
		}
	}
	return true
}

// sizeBefore: a size of lumber stands right before it.
func sizeBefore(before, _ []scan.Atom) bool {
	for k := 1; k <= 4 && k <= len(before); k++ {
		if _, next, ok := (measure.Reader{Atoms: before}).Size(len(before) - k); ok && next == len(before) {
			return true
		}
	}
	return false
}

// endsApartBefore: how far the end posts stand apart is told before.
func endsApartBefore(before, _ []scan.Atom) bool {
	ends, apart := false, false
	for _, a := range before {
		ends = ends || a.Text == "end" || a.Text == "ends"
		apart = apart || a.Text == "apart" || a.Text == "face" || a.Text == "outside" || a.Text == "inside" || a.Text == "centers"
	}
	return ends && apart && noDoubtBefore(before, nil)
}

// endsSizedBefore: the size of the end posts is told before.
func endsSizedBefore(before, after []scan.Atom) bool {
	return sizeBefore(before, after) && phrase.SaidBeforeOf(scan.WordSet("end ends"))(before, after) && noDoubtBefore(before, nil)
}

// slipTold: nothing is asked, and the slip is not of others.
func slipTold(before, after []scan.Atom) bool {
	return phrase.StartsClause(before, after) && noAskAhead(before, after)
}

// countsNext: so many of the parts follow, behind a verb of setting or none.
func countsNext(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 6; i++ {
		if w := after[i].Text; lexicon.Vocab().Articles[w] || settingUp[w] {
			continue
		}
		_, next, ok := (measure.Reader{Atoms: after}).Length(i)
		if !ok || next >= len(after) {
			return false
		}
		w := after[next].Text
		return chunk.IsClass(w, "RAIL") || chunk.IsClass(w, "STIFF") || chunk.IsClass(w, "POST") || chunk.IsClass(w, "BAY") || chunk.IsClass(w, "ADDED")
	}
	return false
}

// settingUp are words of setting that may stand before a count.
var settingUp = scan.WordSet("use set put have make it give want need let us we i will 'll please go with there are to add go")

// bayCountTold: the bays are all there are, not some of more.
func bayCountTold(before, after []scan.Atom) bool {
	return noDoubtBefore(before, nil) && (len(after) == 0 || after[0].Text != "of" && after[0].Text != "and" && after[0].Text != "at")
}

// sizeEndsIt: a size of lumber follows, and nothing behind it in its clause.
func sizeEndsIt(before, after []scan.Atom) bool {
	_, next, ok := (measure.Reader{Atoms: after}).Size(0)
	return ok && chunk.EndsPart(after, next) && noDoubtBefore(before, nil)
}

// figureOrSideBefore: something of the wall has been told, with nothing to turn it.
func figureOrSideBefore(before, _ []scan.Atom) bool {
	for i, a := range before {
		if a.Text == "left" || a.Text == "right" || phrase.StartsLength(measure.Reader{Atoms: before}, i) {
			return noDoubtBefore(before, nil)
		}
	}
	return false
}

// bidAhead: an order or a wish with a figure follows.
func bidAhead(_, after []scan.Atom) bool {
	return len(after) > 1 && bidding[after[0].Text] && !phrase.Turning[after[0].Text]
}

var bidding = scan.WordSet("cap limit keep hold make set put use have let stiffen brace add give no cut i we please nothing all")

// someFigureNext: a count follows.
func someFigureNext(_, after []scan.Atom) bool {
	return len(after) > 1 && phrase.StartsLength(measure.Reader{Atoms: after}, 0)
}

// denialBefore: something is refused before, and this tells why.
func denialBefore(before, _ []scan.Atom) bool {
	if n := len(before); n == 0 || before[n-1].Kind != scan.Sign && before[n-1].Text != "because" && before[n-1].Text != "since" && before[n-1].Text != "as" {
		return false
	}
	for _, a := range before {
		if a.Text == "no" || a.Text == "without" || a.Text == "zero" || a.Text == "not" {
			return true
		}
	}
	return false
}

var (
	addedPostSpoken = phrase.SaidBeforeOf(scan.WordSet("added new extra additional"))
	railsSpoken     = phrase.SaidBeforeOf(scan.WordSet("rails boards slats planks"))
)
