package grammar

// openingPhrasings are phrases about the opening: its jambs, where it begins, how wide it may get.
var openingPhrasings = []placedPhrase{
	{said: "between [(both|two)] (jambs|cheeks|sides|edges) of [(that|this)] OPENING\n[(in)] between [(both|two)] (jambs|cheeks)\nOPENING between [(its|both|two)] (jambs|cheeks|sides|edges)\njamb to jamb", plain: "the opening"},
	{said: "so whatever (you|we|they) (do|draw|decide|come up with|end up with|build|change) [,]\nwhatever (you|we|they) (do|draw|decide|come up with|end up with|build|change) [,]", where: phraseStartsClause},
	{said: "(ways|way|places|spots) through (it|here|the wall|that wall|this wall|this)", plain: "walkthroughs", where: amountBefore},
	{said: "walkthroughs (it|here|this)", plain: "walkthroughs", where: amountBefore},
	{said: "(a|an|one) (hair|smidge|smidgen|whisker|bit|touch|tad|speck|fraction|inch|millimeter|shade|sliver) (under|below|less than|short of|beneath|narrower than|shorter than)", plain: "under", where: deniedBefore},
	{said: "(a|an|one) (hair|smidge|smidgen|whisker|bit|touch|tad|speck|fraction|inch|millimeter|shade|sliver) (over|above|more than|past|beyond|wider than|longer than)", plain: "over", where: deniedBefore},
	{said: "[,] [and] [not (a|an|one)] (hair|smidge|smidgen|whisker|bit|touch|tad|speck|fraction|inch|millimeter|shade|sliver) (over|more|above|taller|higher|wider|longer|bigger)\n[,] [and] no (more|higher|taller|wider|longer|bigger|larger)", where: bothHold(saidBeforeOf(wordSet("exactly precisely")), phraseEndsClause)},
	{said: openingIs + " [(on|at|to|in)] LEFT [(side|end|hand)] or [(on|at|to|in)] RIGHT [(side|end|hand)] " + atPresent, plain: "which side is the opening on", where: phraseStartsClause},
	{said: openingIs + " [(on|at|to|in)] RIGHT [(side|end|hand)] or [(on|at|to|in)] LEFT [(side|end|hand)] " + atPresent, plain: "which side is the opening on", where: phraseStartsClause},
	{said: "[a] (couple|few) [of] (inches|in) ,", where: exactlyNext},
	{said: "(this|that) (stretch|section|run|side|piece|part) [of (wall|fence)]", plain: "the wall", where: openingSoon},
	{said: "when (i|we|you|they) [first] (started|began|drew it|sketched it|talked|spoke|planned it|measured) [(out|off|this)]", plain: "at first", where: saidBeforeOf(wordSet("was were"))},
	{said: "[and] [(please|just|also)] (write|jot|note|mark|put|scribble|pencil|copy) (that|it|this) [down] [(at|on|in|across)] [(top|head|front|back|corner|margin|bottom) (of|on)] (page|sheet|paper|notes|notebook|board|clipboard|pad|margin)", where: phraseEndsClause},
	{said: "(start|near edge|edge|beginning|nearest edge|near side|first edge|near jamb|where) [of] OPENING [(starts|begins)] (to|from|off|over to) LEFT [(hand)] [END] POST [(face)]", plain: "distance from the left post to the opening", where: amountNext},
	{said: "(start|near edge|edge|beginning|nearest edge|near side|first edge|near jamb|where) [of] OPENING [(starts|begins)] (to|from|off|over to) RIGHT [(hand)] [END] POST [(face)]", plain: "distance from the right post to the opening", where: amountNext},
	{said: "OPENING (to|from) LEFT [(hand)] [END] POST [(face)]", plain: "distance from the left post to the opening", where: bothHold(phraseStartsClause, amountNext)},
	{said: "OPENING (to|from) RIGHT [(hand)] [END] POST [(face)]", plain: "distance from the right post to the opening", where: bothHold(phraseStartsClause, amountNext)},
	{said: "(closer|nearer) [to] LEFT [(hand)] [END] POST", plain: "closer from the left post", where: openingMoved},
	{said: "(closer|nearer) [to] RIGHT [(hand)] [END] POST", plain: "closer from the right post", where: openingMoved},
	{said: tapeHooked + " LEFT [(hand)] [END] POST [(face)] [,] [and] " + tapePulled, plain: "from the left post", where: amountNext},
	{said: tapeHooked + " RIGHT [(hand)] [END] POST [(face)] [,] [and] " + tapePulled, plain: "from the right post", where: amountNext},
	{said: "[,] [and] (that is|is) where [(that|this)] OPENING [(should|will|would|must|has to|needs to|ought to|is to|wants to|is going to)] [be] (starts|begins|start|begin|starting|beginning|come|comes|go|goes)", plain: "to the opening", where: fromPostTold},
	{said: "before [(that|this)] OPENING [(should|will|would|can)] (starts|begins|start|begin|comes|shows up)", plain: "to the opening", where: fromPostTold},
	{said: "how far (off|over|along|in|out|down|away|back|across) [from]", plain: "how far from", where: sidePostNext},
	{said: "(people|folks|everybody|everyone|we|visitors|guests|customers|the kids|kids|they|you) (come|comes|walk|walks|approach|arrive|arrives|enter) [(up|in|over)] from LEFT [(side|end|hand)] [(and|,)] so that is (the) (end|side|one) (to leave|to keep|i want|we want|that stays|that should be|left|we leave|we will leave) open", plain: "opening on the left"},
	{said: "(people|folks|everybody|everyone|we|visitors|guests|customers|the kids|kids|they|you) (come|comes|walk|walks|approach|arrive|arrives|enter) [(up|in|over)] from RIGHT [(side|end|hand)] [(and|,)] so that is (the) (end|side|one) (to leave|to keep|i want|we want|that stays|that should be|left|we leave|we will leave) open", plain: "opening on the right"},
	{said: leftOpen + " LEFT [(hand)] (end|side|corner) [of WALL] " + openThere, plain: "opening on the left"},
	{said: leftOpen + " RIGHT [(hand)] (end|side|corner) [of WALL] " + openThere, plain: "opening on the right"},
	{said: leftOpen + " MIDDLE [of WALL] " + openThere, plain: "opening in the middle"},
	{said: "(halfway|midway) (along|down|across|through) [WALL]\n(halfway|midway) between [(two|end)] [END] POST", plain: "in the middle", where: saidBeforeOf(openingWords)},
	{said: "put RAIL on (both|each|either) (sides|side) of OPENING and (have|put|set|keep|place) (it|that)", plain: "opening"},
	{said: "(i|we) (had|would) been (planning|thinking|figuring|counting|going) [(on|of)] [(putting|having)] OPENING", plain: "the opening was", where: movedNow},
	{said: "but it is (going|moving|moved|to go|to be)", plain: "but now it is", where: saidBeforeOf(wordSet("was were"))},
	{said: "(at|on) LEFT [(hand)] end", plain: "on the left side", where: questionEnds},
	{said: "(at|on) RIGHT [(hand)] end", plain: "on the right side", where: questionEnds},
	{said: "(big|wide) as (you|we|i|it|they) [(possibly|ever)] (can|could|may|will go|gets)", plain: "as big as you can", where: notAfterAs},
	{said: "the more OPENING [(i|we|you|they)] [(can|could)] [(get|give us|give me|have|make|fit|there is)] [,] the (better|merrier|happier)\nthe (wider|bigger|broader) OPENING [is] [,] the (better|merrier)", plain: "largest opening"},
	{said: "[(so|just|please)] (give|get) (us|me) the (maximum|max|most|biggest|widest|largest) [(you|we) (can|have)] [(possible|there is)]", where: bothHold(saidBeforeOf(openingWords), phraseStartsClause)},
	{said: "[please] do not (be|get) [(too|so)] (stingy|mean|cheap|tight|sparing|shy|timid|modest) (with|on|about) [(that|this)] OPENING", plain: "opening"},
	{said: "as much OPENING as [(will fit|fits|you can|we can|i can|possible|you can get|we can get|there is room for|can be had|you can manage|you can give us|you can give me|can fit|goes|we can have|it will take|the wall allows)]", plain: "largest opening"},
	{said: ", [(the|our|my|that)] (gate|door|ramp|stroller) [is] too (short|narrow|wide|small|big|skinny)", where: phraseEndsLine},
	{said: "(steal|pinch|rob|borrow|nick|swipe|grab|stealing|borrowing)", plain: "take", where: amountThenFrom},
	{said: "(stole|pinched|robbed|borrowed|nicked|swiped|grabbed)", plain: "took", where: amountThenFrom},
	{said: "(closer|nearer) [to] LEFT [(hand)] [END] POST by", plain: "closer from the left post by", where: openingNearerBy},
	{said: "(closer|nearer) [to] RIGHT [(hand)] [END] POST by", plain: "closer from the right post by", where: openingNearerBy},
	{said: "(widen|open up|stretch|broaden) OPENING as (far|much|wide) as (you can|we can|it goes|it will go|possible|it can go|you possibly can|the wall allows|there is room)", plain: "largest opening"},
	{said: "over", where: movedOver},
	{said: "from", plain: "off", where: takenFrom},
	{said: "(in place of|in lieu of|in the place of)", plain: "instead of"},
	{said: "(i|we) (was|were) (planning|thinking|figuring|considering) [(on|of)] [(putting|having)] OPENING", plain: "the opening was", where: movedNow},
}

const (
	tapeHooked = "(hook|hold|butt|put|start|set|stick|begin|anchor|clip|catch) [(your|my|our)] [(end of|dumb end of)] (tape|rule|ruler|measure|tape measure) (on|at|against|to|over|from)"
	tapePulled = "(go|measure|run|come|pull|read|count|reach|pull out|walk) [(over|across|out|along|off|it|right|left|it out|to)]"
	leftOpen   = "(leave|keep|have|leaving|keeping)"
	openingIs  = "(is|does|did|will|do i have|do we have|have i got|have we got|was) OPENING [(sit|go|come|end up|fall|land|be|sitting|going|placed|set)] [now]"
	atPresent  = "[(at the moment|now|right now|currently|as it stands|so far|as drawn|at present|in the plan)]"
	openThere  = "open [(for (walking|getting|going|people|us|them|folks|traffic) [through]|to (walk|get|go|pass) through|to traffic)]"
)

var openingWords = wordSet("opening doorway walkthrough entry entrance passage gateway walk gate passageway walkway")

// openingNamed reports whether the opening is named among atoms.
func openingNamed(atoms []atom) bool {
	for i := range atoms {
		if key, _ := partKey(atoms, i); key == "opening" {
			return true
		}
	}
	return false
}

// openingSoon: "this stretch gets two walkthroughs".
func openingSoon(before, after []atom) bool {
	if len(after) < 2 || len(before) > 0 && !phraseStartsClause(before, after) {
		return false
	}
	switch after[0].text {
	case "gets", "has", "needs", "takes", "wants", "is", "will", "should", "must":
		return openingNamed(after[1:min(len(after), 7)])
	}
	return false
}

// openingMoved: "bring the opening two inches closer to the right post".
func openingMoved(before, _ []atom) bool {
	return len(before) > 2 && openingNamed(before) && amountBefore(before, nil)
}

// fromPostTold: a figure and the post it is told from stand before it, or the figure and "from the left post" in any order.
func fromPostTold(before, _ []atom) bool {
	from, side, figure := false, false, false
	for i, a := range before {
		from = from || a.text == "from" || a.text == "off"
		side = side || a.text == "left" || a.text == "right" || a.text == "lh" || a.text == "rh"
		figure = figure || startsLength(reader{before}, i)
	}
	return from && side && figure
}

// sidePostNext: "how far off the right end post".
func sidePostNext(_, after []atom) bool {
	for i := 0; i < len(after) && i < 3; i++ {
		switch after[i].text {
		case "left", "right", "lh", "rh":
			return openingNamed(after)
		}
	}
	return false
}

// movedNow: "…, but it's going in the middle now".
func movedNow(_, after []atom) bool {
	for i := range after {
		if standAt(after, i, "but", "it") || standAt(after, i, "but", "now") {
			return true
		}
	}
	return false
}

// questionEnds: a question mark is next.
func questionEnds(_, after []atom) bool { return len(after) > 0 && after[0].text == "?" }

// notAfterAs: "make that doorway big as you can".
func notAfterAs(before, _ []atom) bool {
	return lastOf(before, 1) != "as" && lastOf(before, 1) != "so" && openingNamed(before)
}

// amountThenFrom: "stole four inches from the doorway".
func amountThenFrom(_, after []atom) bool {
	if _, next, ok := (reader{after}).length(0); ok && next < len(after) && (after[next].text == "from" || after[next].text == "off") {
		return true
	}
	return false
}

// deniedBefore: "I wouldn't go a hair under thirty".
func deniedBefore(before, _ []atom) bool {
	for k := 1; k <= 5; k++ {
		if w := lastOf(before, k); w == "not" || w == "never" || w == "cannot" || w == "no" {
			return true
		}
	}
	return false
}

// exactlyNext: "a couple inches, two exactly".
func exactlyNext(_, after []atom) bool {
	if len(after) > 1 && after[0].text == "exactly" && spelledNumber(after[1].text) {
		return true
	}
	_, next, ok := (reader{after}).length(0)
	return ok && next < len(after) && (after[next].text == "exactly" || after[next].text == "precisely" || standAt(after, next, "to", "be"))
}

// movedNoOpening: "move the post two inches closer to the left post"; what is said of the opening is told from that post.
func movedNoOpening(before, after []atom) bool {
	return endsInLength(before, after) && !openingNamed(before)
}

// openingNearerBy: "move the doorway closer to the left post by 6".
func openingNearerBy(before, after []atom) bool {
	return openingNamed(before) && startsLength(reader{after}, 0)
}

var movingVerbs = wordSet("push slide move shift scoot nudge bring scooch slid pushed moved shifted scooted nudged pushing moving sliding shifting")

// movedOver: "push the walkthrough over a foot to the right".
func movedOver(before, after []atom) bool {
	_, next, ok := (reader{after}).length(0)
	if !ok || next >= len(after) || after[next].text != "to" && after[next].text != "toward" && after[next].text != "towards" {
		return false
	}
	for _, a := range before {
		if movingVerbs[a.text] {
			return openingNamed(before)
		}
	}
	return false
}

var takingVerbs = wordSet("take took cut shave shaved trim trimmed taking")

// takenFrom: "take four inches from the doorway".
func takenFrom(before, after []atom) bool {
	key, next := partKey(after, skipArticle(after, 0))
	switch key {
	case "opening", "gap", "wall", "bay":
	default:
		return false
	}
	if !endsPart(after, next) {
		return false
	}
	for k := 1; k <= 7 && k < len(before); k++ {
		i := len(before) - k
		if takingVerbs[before[i].text] {
			_, end, ok := (reader{before}).length(i + 1)
			return ok && end == len(before)
		}
	}
	return false
}
