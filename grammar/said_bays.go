package grammar

// bayPhrasings are phrases about bays and their stiffeners.
var bayPhrasings = []placedPhrase{
	{said: "how [the] bays [(would|will|do)] (come|turn|work|end) out", plain: "how long the bays are"},
	{said: "spacing do to [(number|count) of] STIFF", plain: "stiffener spacing do to the number of stiffeners"},
	{said: "[(the|its)] TOP [(edge|of it|of WALL)] (at|is at|comes out at|comes at|ends at|stops at|stands at|sits at|:)", plain: "wall height", where: topOfWall},
	{said: "without [(any)] STIFF [(at all)]", plain: "with no stiffeners", where: bayLeft},
	{said: "(in|to|into|for) [the] FIRST BAY", plain: "in bay 1", where: stiffenerBefore},
	{said: "(in|to|into|for) [the] (second|2nd) BAY", plain: "in bay 2", where: stiffenerBefore},
	{said: "(in|to|into|for) [the] (third|3rd) BAY", plain: "in bay 3", where: stiffenerBefore},
	{said: "(in|to|into|for) [the] (fourth|4th) BAY", plain: "in bay 4", where: stiffenerBefore},
	{said: "(up|down|in|through|along) [the] (middle|center|centre)", where: stiffenerBefore},
	{said: "(uprights|upright|posts|pieces|strips|boards|ones) (that|which|to|for) (stiffen|stiffens|brace|braces|steady|steadies|strengthen|strengthens|stiffening|bracing|steadying|strengthening) [RAIL]", plain: "stiffeners"},

	{said: "[,] [(and|because|since|as)] " + boardsOrIt + " [(all|just|really|always|kind of|kinda|still)] (flexes|flex|flexed|bounces|bounce|bounced|sag|sags|sagged|bow|bows|bowed|wobble|wobbles|wobbled|bend|bends|bent|warp|warps|warped|cup|cups|cupped|twist|twists|twisted|droop|droops|drooped|rattle|rattles|rattled|wiggle|wiggles|shake|shakes) [(too much|a lot|a bit|on me|too easily|badly|in the middle|when you lean on it|some|terribly|all over|between them)]", where: phraseEndsClause},
	{said: "[,] [(and|because|since|as)] " + boardsOrIt + " [(all|just|really|always|still)] (feel|feels|felt|seem|seems|look|looks|is|are|get|gets|was|were) [(too|a bit|a little|kind of|kinda|pretty|awful|awfully|mighty|way too|rather|so)] (springy|bouncy|flimsy|floppy|wobbly|flexy|rubbery|limp|whippy|shaky|rickety|saggy|wavy|bendy|wiggly)", where: phraseEndsClause},
	{said: "[and] that is what (i|we) (will|shall|are going to|am going to|want to|mean to) (do|use|go with|have|build|stick with)", where: uncleUsed},
	{said: "(my|our|the) (KIN|PERSON) (always|usually|generally) (figured|used|put|ran|went with|did|swore by|had|said|went by|counted on|took)", where: thatWeDo},
}

const boardsOrIt = "(it|they|RAIL|that one|this one|that bay|the long one|the middle|the whole thing)"

// bayLeft: "leave the first bay without stiffeners".
func bayLeft(before, _ []atom) bool {
	for _, a := range before {
		switch a.text {
		case "leave", "keep", "build", "make":
			return true
		}
	}
	return false
}

// stiffenerBefore: "one stiffener up the middle".
func stiffenerBefore(before, after []atom) bool {
	if key, _ := partKey(after, 0); key == "bay" {
		return false // "one stiffener in the middle section"
	}
	for k := 1; k <= 2 && k <= len(before); k++ {
		if key, next := partKey(before, len(before)-k); key == "stiffener" && next == len(before) {
			return true
		}
	}
	return false
}

// thatWeDo: "… and that's what we'll do".
func thatWeDo(_, after []atom) bool {
	for i := range after {
		if standAt(after, i, "that", "is", "what", "we", "will") || standAt(after, i, "that", "is", "what", "i", "will") {
			return true
		}
	}
	return false
}

// uncleUsed: "three stiffeners to the bay, and that's what we'll do" has its figure before it.
func uncleUsed(before, after []atom) bool {
	if !phraseEndsLine(before, after) || len(before) < 3 {
		return false
	}
	for _, a := range before {
		switch a.text {
		case "says", "said", "says,", "if", "what", "check", "shows", "sketch", "drawing", "plan":
			return false
		}
	}
	for i := range before {
		if startsLength(reader{before}, i) {
			return true
		}
	}
	return false
}

// topOfWall: "six rails, bottom gap 3, top at 48" tells the height, where nothing is told of what a bay measures at its bottom and its top.
func topOfWall(before, after []atom) bool {
	if !phraseStartsClause(before, after) || !amountNext(before, after) || len(before) == 0 {
		return false
	}
	named := false
	for i, a := range before {
		switch a.text {
		case "up", "fastened", "fixed", "screwed", "mounted", "installed", "hung", "bay", "bays", "section", "panel", "post", "posts", "measured", "measures", "reads", "third", "second", "first":
			return false
		case "bottom", "low", "lower":
			if i+1 == len(before) || before[i+1].text != "gap" && before[i+1].text != "clearance" && before[i+1].text != "space" {
				return false
			}
		}
		key, _ := partKey(before, i)
		named = named || key == "rail" || key == "gap" || key == "bottom gap"
	}
	return named
}
