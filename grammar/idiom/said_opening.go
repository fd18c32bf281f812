package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// openingPhrasings are phrases about the opening: its jambs, where it begins, how wide it may get.
var openingPhrasings = []phrase.Placed{
	{Said: "between [(both|two)] (jambs|cheeks|sides|edges) of [(that|this)] OPENING\n[(in)] between [(both|two)] (jambs|cheeks)\nOPENING between [(its|both|two)] (jambs|cheeks|sides|edges)\njamb to jamb", Plain: "the opening"},
	{Said: "so whatever (you|we|they) (do|draw|decide|come up with|end up with|build|change) [,]\nwhatever (you|we|they) (do|draw|decide|come up with|end up with|build|change) [,]", Where: phrase.StartsClause},
	{Said: "(ways|way|places|spots) through (it|here|the wall|that wall|this wall|this)", Plain: "walkthroughs", Where: phrase.AmountBefore},
	{Said: "walkthroughs (it|here|this)", Plain: "walkthroughs", Where: phrase.AmountBefore},
	{Said: "(a|an|one) (hair|smidge|smidgen|whisker|bit|touch|tad|speck|fraction|inch|millimeter|shade|sliver) (under|below|less than|short of|beneath|narrower than|shorter than)", Plain: "under", Where: deniedBefore},
	{Said: "(a|an|one) (hair|smidge|smidgen|whisker|bit|touch|tad|speck|fraction|inch|millimeter|shade|sliver) (over|above|more than|past|beyond|wider than|longer than)", Plain: "over", Where: deniedBefore},
	{Said: "[,] [and] [not (a|an|one)] (hair|smidge|smidgen|whisker|bit|touch|tad|speck|fraction|inch|millimeter|shade|sliver) (over|more|above|taller|higher|wider|longer|bigger)\n[,] [and] no (more|higher|taller|wider|longer|bigger|larger)", Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("exactly precisely")), phrase.EndsClause)},
	{Said: openingIs + " [(on|at|to|in)] LEFT [(side|end|hand)] or [(on|at|to|in)] RIGHT [(side|end|hand)] " + atPresent, Plain: "which side is the opening on", Where: phrase.StartsClause},
	{Said: openingIs + " [(on|at|to|in)] RIGHT [(side|end|hand)] or [(on|at|to|in)] LEFT [(side|end|hand)] " + atPresent, Plain: "which side is the opening on", Where: phrase.StartsClause},
	{Said: "[a] (couple|few) [of] (inches|in) ,", Where: exactlyNext},
	{Said: "(this|that) (stretch|section|run|side|piece|part) [of (wall|fence)]", Plain: "the wall", Where: openingSoon},
	{Said: "when (i|we|you|they) [first] (started|began|drew it|sketched it|talked|spoke|planned it|measured) [(out|off|this)]", Plain: "at first", Where: phrase.SaidBeforeOf(scan.WordSet("was were"))},
	{Said: "[and] [(please|just|also)] (write|jot|note|mark|put|scribble|pencil|copy) (that|it|this) [down] [(at|on|in|across)] [(top|head|front|back|corner|margin|bottom) (of|on)] (page|sheet|paper|notes|notebook|board|clipboard|pad|margin)", Where: phrase.EndsClause},
	{Said: "(start|near edge|edge|beginning|nearest edge|near side|first edge|near jamb|where) [of] OPENING [(starts|begins)] (to|from|off|over to) LEFT [(hand)] [END] POST [(face)]", Plain: "distance from the left post to the opening", Where: phrase.AmountNext},
	{Said: "(start|near edge|edge|beginning|nearest edge|near side|first edge|near jamb|where) [of] OPENING [(starts|begins)] (to|from|off|over to) RIGHT [(hand)] [END] POST [(face)]", Plain: "distance from the right post to the opening", Where: phrase.AmountNext},
	{Said: "OPENING (to|from) LEFT [(hand)] [END] POST [(face)]", Plain: "distance from the left post to the opening", Where: phrase.BothHold(phrase.StartsClause, phrase.AmountNext)},
	{Said: "OPENING (to|from) RIGHT [(hand)] [END] POST [(face)]", Plain: "distance from the right post to the opening", Where: phrase.BothHold(phrase.StartsClause, phrase.AmountNext)},
	{Said: "(closer|nearer) [to] LEFT [(hand)] [END] POST", Plain: "closer from the left post", Where: openingMoved},
	{Said: "(closer|nearer) [to] RIGHT [(hand)] [END] POST", Plain: "closer from the right post", Where: openingMoved},
	{Said: tapeHooked + " LEFT [(hand)] [END] POST [(face)] [,] [and] " + tapePulled, Plain: "from the left post", Where: phrase.AmountNext},
	{Said: tapeHooked + " RIGHT [(hand)] [END] POST [(face)] [,] [and] " + tapePulled, Plain: "from the right post", Where: phrase.AmountNext},
	{Said: "[,] [and] (that is|is) where [(that|this)] OPENING [(should|will|would|must|has to|needs to|ought to|is to|wants to|is going to)] [be] (starts|begins|start|begin|starting|beginning|come|comes|go|goes)", Plain: "to the opening", Where: fromPostTold},
	{Said: "before [(that|this)] OPENING [(should|will|would|can)] (starts|begins|start|begin|comes|shows up)", Plain: "to the opening", Where: fromPostTold},
	{Said: "how far (off|over|along|in|out|down|away|back|across) [from]", Plain: "how far from", Where: sidePostNext},
	{Said: "(people|folks|everybody|everyone|we|visitors|guests|customers|the kids|kids|they|you) (come|comes|walk|walks|approach|arrive|arrives|enter) [(up|in|over)] from LEFT [(side|end|hand)] [(and|,)] so that is (the) (end|side|one) (to leave|to keep|i want|we want|that stays|that should be|left|we leave|we will leave) open", Plain: "opening on the left"},
	{Said: "(people|folks|everybody|everyone|we|visitors|guests|customers|the kids|kids|they|you) (come|comes|walk|walks|approach|arrive|arrives|enter) [(up|in|over)] from RIGHT [(side|end|hand)] [(and|,)] so that is (the) (end|side|one) (to leave|to keep|i want|we want|that stays|that should be|left|we leave|we will leave) open", Plain: "opening on the right"},
	{Said: leftOpen + " LEFT [(hand)] (end|side|corner) [of WALL] " + openThere, Plain: "opening on the left"},
	{Said: leftOpen + " RIGHT [(hand)] (end|side|corner) [of WALL] " + openThere, Plain: "opening on the right"},
	{Said: leftOpen + " MIDDLE [of WALL] " + openThere, Plain: "opening in the middle"},
	{Said: "(halfway|midway) (along|down|across|through) [WALL]\n(halfway|midway) between [(two|end)] [END] POST", Plain: "in the middle", Where: phrase.SaidBeforeOf(openingWords)},
	{Said: "put RAIL on (both|each|either) (sides|side) of OPENING and (have|put|set|keep|place) (it|that)", Plain: "opening"},
	{Said: "(i|we) (had|would) been (planning|thinking|figuring|counting|going) [(on|of)] [(putting|having)] OPENING", Plain: "the opening was", Where: movedNow},
	{Said: "but it is (going|moving|moved|to go|to be)", Plain: "but now it is", Where: phrase.SaidBeforeOf(scan.WordSet("was were"))},
	{Said: "(at|on) LEFT [(hand)] end", Plain: "on the left side", Where: questionEnds},
	{Said: "(at|on) RIGHT [(hand)] end", Plain: "on the right side", Where: questionEnds},
	{Said: "(big|wide) as (you|we|i|it|they) [(possibly|ever)] (can|could|may|will go|gets)", Plain: "as big as you can", Where: notAfterAs},
	{Said: "the more OPENING [(i|we|you|they)] [(can|could)] [(get|give us|give me|have|make|fit|there is)] [,] the (better|merrier|happier)\nthe (wider|bigger|broader) OPENING [is] [,] the (better|merrier)", Plain: "largest opening"},
	{Said: "[(so|just|please)] (give|get) (us|me) the (maximum|max|most|biggest|widest|largest) [(you|we) (can|have)] [(possible|there is)]", Where: phrase.BothHold(phrase.SaidBeforeOf(openingWords), phrase.StartsClause)},
	{Said: "[please] do not (be|get) [(too|so)] (stingy|mean|cheap|tight|sparing|shy|timid|modest) (with|on|about) [(that|this)] OPENING", Plain: "opening"},
	{Said: "as much OPENING as [(will fit|fits|you can|we can|i can|possible|you can get|we can get|there is room for|can be had|you can manage|you can give us|you can give me|can fit|goes|we can have|it will take|the wall allows)]", Plain: "largest opening"},
	{Said: ", [(the|our|my|that)] (gate|door|ramp|stroller) [is] too (short|narrow|wide|small|big|skinny)", Where: phrase.EndsLine},
	{Said: "(steal|pinch|rob|borrow|nick|swipe|grab|stealing|borrowing)", Plain: "take", Where: amountThenFrom},
	{Said: "(stole|pinched|robbed|borrowed|nicked|swiped|grabbed)", Plain: "took", Where: amountThenFrom},
	{Said: "(closer|nearer) [to] LEFT [(hand)] [END] POST by", Plain: "closer from the left post by", Where: openingNearerBy},
	{Said: "(closer|nearer) [to] RIGHT [(hand)] [END] POST by", Plain: "closer from the right post by", Where: openingNearerBy},
	{Said: "(widen|open up|stretch|broaden) OPENING as (far|much|wide) as (you can|we can|it goes|it will go|possible|it can go|you possibly can|the wall allows|there is room)", Plain: "largest opening"},
	{Said: "over", Where: movedOver},
	{Said: "from", Plain: "off", Where: takenFrom},
	{Said: "(in place of|in lieu of|in the place of)", Plain: "instead of"},
	{Said: "(i|we) (was|were) (planning|thinking|figuring|considering) [(on|of)] [(putting|having)] OPENING", Plain: "the opening was", Where: movedNow},
}

const (
	tapeHooked = "(hook|hold|butt|put|start|set|stick|begin|anchor|clip|catch) [(your|my|our)] [(end of|dumb end of)] (tape|rule|ruler|measure|tape measure) (on|at|against|to|over|from)"
	tapePulled = "(go|measure|run|come|pull|read|count|reach|pull out|walk) [(over|across|out|along|off|it|right|left|it out|to)]"
	leftOpen   = "(leave|keep|have|leaving|keeping)"
	openingIs  = "(is|does|did|will|do i have|do we have|have i got|have we got|was) OPENING [(sit|go|come|end up|fall|land|be|sitting|going|placed|set)] [now]"
	atPresent  = "[(at the moment|now|right now|currently|as it stands|so far|as drawn|at present|in the plan)]"
	openThere  = "open [(for (walking|getting|going|people|us|them|folks|traffic) [through]|to (walk|get|go|pass) through|to traffic)]"
)

var openingWords = scan.WordSet("opening doorway walkthrough entry entrance passage gateway walk gate passageway walkway")

// OpeningNamed reports whether the opening is named among atoms.
func OpeningNamed(atoms []scan.Atom) bool {
	for i := range atoms {
		if key, _ := chunk.PartKey(atoms, i); key == "opening" {
			return true
		}
	}
	return false
}

// openingSoon: "this stretch gets two walkthroughs".
func openingSoon(before, after []scan.Atom) bool {
	if len(after) < 2 || len(before) > 0 && !phrase.StartsClause(before, after) {
		return false
	}
	switch after[0].Text {
	case "gets", "has", "needs", "takes", "wants", "is", "will", "should", "must":
		return OpeningNamed(after[1:min(len(after), 7)])
	}
	return false
}

// openingMoved: "bring the opening two inches closer to the right post".
func openingMoved(before, _ []scan.Atom) bool {
	return len(before) > 2 && OpeningNamed(before) && phrase.AmountBefore(before, nil)
}

// fromPostTold: a figure and the post it is told from stand before it, or the figure and "from the left post" in any order.
func fromPostTold(before, _ []scan.Atom) bool {
	from, side, figure := false, false, false
	for i, a := range before {
		from = from || a.Text == "from" || a.Text == "off"
		side = side || a.Text == "left" || a.Text == "right" || a.Text == "lh" || a.Text == "rh"
		figure = figure || phrase.StartsLength(measure.Reader{Atoms: before}, i)
	}
	return from && side && figure
}

// sidePostNext: "how far off the right end post".
func sidePostNext(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 3; i++ {
		switch after[i].Text {
		case "left", "right", "lh", "rh":
			return OpeningNamed(after)
		}
	}
	return false
}

// movedNow: "…, but it's going in the middle now".
func movedNow(_, after []scan.Atom) bool {
	for i := range after {
		if scan.StandAt(after, i, "but", "it") || scan.StandAt(after, i, "but", "now") {
			return true
		}
	}
	return false
}

// questionEnds: a question mark is next.
func questionEnds(_, after []scan.Atom) bool { return len(after) > 0 && after[0].Text == "?" }

// notAfterAs: "make that doorway big as you can".
func notAfterAs(before, _ []scan.Atom) bool {
	return chunk.LastOf(before, 1) != "as" && chunk.LastOf(before, 1) != "so" && OpeningNamed(before)
}

// amountThenFrom: "stole four inches from the doorway".
func amountThenFrom(_, after []scan.Atom) bool {
	if _, next, ok := (measure.Reader{Atoms: after}).Length(0); ok && next < len(after) && (after[next].Text == "from" || after[next].Text == "off") {
		return true
	}
	return false
}

// deniedBefore: "I wouldn't go a hair under thirty".
func deniedBefore(before, _ []scan.Atom) bool {
	for k := 1; k <= 5; k++ {
		if w := chunk.LastOf(before, k); w == "not" || w == "never" || w == "cannot" || w == "no" {
			return true
		}
	}
	return false
}

// exactlyNext: "a couple inches, two exactly".
func exactlyNext(_, after []scan.Atom) bool {
	if len(after) > 1 && after[0].Text == "exactly" && chunk.SpelledNumber(after[1].Text) {
		return true
	}
	_, next, ok := (measure.Reader{Atoms: after}).Length(0)
	return ok && next < len(after) && (after[next].Text == "exactly" || after[next].Text == "precisely" || scan.StandAt(after, next, "to", "be"))
}

// movedNoOpening: "move the post two inches closer to the left post"; what is said of the opening is told from that post.
func movedNoOpening(before, after []scan.Atom) bool {
	return endsInLength(before, after) && !OpeningNamed(before)
}

// openingNearerBy: "move the doorway closer to the left post by 6".
func openingNearerBy(before, after []scan.Atom) bool {
	return OpeningNamed(before) && phrase.StartsLength(measure.Reader{Atoms: after}, 0)
}

var movingVerbs = scan.WordSet("push slide move shift scoot nudge bring scooch slid pushed moved shifted scooted nudged pushing moving sliding shifting")

// movedOver: "push the walkthrough over a foot to the right".
func movedOver(before, after []scan.Atom) bool {
	_, next, ok := (measure.Reader{Atoms: after}).Length(0)
	if !ok || next >= len(after) || after[next].Text != "to" && after[next].Text != "toward" && after[next].Text != "towards" {
		return false
	}
	for _, a := range before {
		if movingVerbs[a.Text] {
			return OpeningNamed(before)
		}
	}
	return false
}

var takingVerbs = scan.WordSet("take took cut shave shaved trim trimmed taking")

// takenFrom: "take four inches from the doorway".
func takenFrom(before, after []scan.Atom) bool {
	key, next := chunk.PartKey(after, chunk.SkipArticle(after, 0))
	switch key {
	case "opening", "gap", "wall", "bay":
	default:
		return false
	}
	if !chunk.EndsPart(after, next) {
		return false
	}
	for k := 1; k <= 7 && k < len(before); k++ {
		i := len(before) - k
		if takingVerbs[before[i].Text] {
			_, end, ok := (measure.Reader{Atoms: before}).Length(i + 1)
			return ok && end == len(before)
		}
	}
	return false
}
