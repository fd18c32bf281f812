package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// bayPhrasings are phrases about bays and their stiffeners.
var bayPhrasings = []phrase.Placed{
	{Said: "how [the] bays [(would|will|do)] (come|turn|work|end) out", Plain: "how long the bays are"},
	{Said: "spacing do to [(number|count) of] STIFF", Plain: "stiffener spacing do to the number of stiffeners"},
	{Said: "[(the|its)] TOP [(edge|of it|of WALL)] (at|is at|comes out at|comes at|ends at|stops at|stands at|sits at|:)", Plain: "wall height", Where: topOfWall},
	{Said: "without [(any)] STIFF [(at all)]", Plain: "with no stiffeners", Where: bayLeft},
	{Said: "(in|to|into|for) [the] FIRST BAY", Plain: "in bay 1", Where: stiffenerBefore},
	{Said: "(in|to|into|for) [the] (second|2nd) BAY", Plain: "in bay 2", Where: stiffenerBefore},
	{Said: "(in|to|into|for) [the] (third|3rd) BAY", Plain: "in bay 3", Where: stiffenerBefore},
	{Said: "(in|to|into|for) [the] (fourth|4th) BAY", Plain: "in bay 4", Where: stiffenerBefore},
	{Said: "(up|down|in|through|along) [the] (middle|center|centre)", Where: stiffenerBefore},
	{Said: "(uprights|upright|posts|pieces|strips|boards|ones) (that|which|to|for) (stiffen|stiffens|brace|braces|steady|steadies|strengthen|strengthens|stiffening|bracing|steadying|strengthening) [RAIL]", Plain: "stiffeners"},

	{Said: "[,] [(and|because|since|as)] " + boardsOrIt + " [(all|just|really|always|kind of|kinda|still)] (flexes|flex|flexed|bounces|bounce|bounced|sag|sags|sagged|bow|bows|bowed|wobble|wobbles|wobbled|bend|bends|bent|warp|warps|warped|cup|cups|cupped|twist|twists|twisted|droop|droops|drooped|rattle|rattles|rattled|wiggle|wiggles|shake|shakes) [(too much|a lot|a bit|on me|too easily|badly|in the middle|when you lean on it|some|terribly|all over|between them)]", Where: phrase.EndsClause},
	{Said: "[,] [(and|because|since|as)] " + boardsOrIt + " [(all|just|really|always|still)] (feel|feels|felt|seem|seems|look|looks|is|are|get|gets|was|were) [(too|a bit|a little|kind of|kinda|pretty|awful|awfully|mighty|way too|rather|so)] (springy|bouncy|flimsy|floppy|wobbly|flexy|rubbery|limp|whippy|shaky|rickety|saggy|wavy|bendy|wiggly)", Where: phrase.EndsClause},
	{Said: "[and] that is what (i|we) (will|shall|are going to|am going to|want to|mean to) (do|use|go with|have|build|stick with)", Where: uncleUsed},
	{Said: "(my|our|the) (KIN|PERSON) (always|usually|generally) (figured|used|put|ran|went with|did|swore by|had|said|went by|counted on|took)", Where: thatWeDo},
}

const boardsOrIt = "(it|they|RAIL|that one|this one|that bay|the long one|the middle|the whole thing)"

// bayLeft: "leave the first bay without stiffeners".
func bayLeft(before, _ []scan.Atom) bool {
	for _, a := range before {
		switch a.Text {
		case "leave", "keep", "build", "make":
			return true
		}
	}
	return false
}

// stiffenerBefore: "one stiffener up the middle".
func stiffenerBefore(before, after []scan.Atom) bool {
	if key, _ := chunk.PartKey(after, 0); key == "bay" {
		return false // "one stiffener in the middle section"
	}
	for k := 1; k <= 2 && k <= len(before); k++ {
		if key, next := chunk.PartKey(before, len(before)-k); key == "stiffener" && next == len(before) {
			return true
		}
	}
	return false
}

// thatWeDo: "… and that's what we'll do".
func thatWeDo(_, after []scan.Atom) bool {
	for i := range after {
		if scan.StandAt(after, i, "that", "is", "what", "we", "will") || scan.StandAt(after, i, "that", "is", "what", "i", "will") {
			return true
		}
	}
	return false
}

// uncleUsed: "three stiffeners to the bay, and that's what we'll do" has its figure before it.
func uncleUsed(before, after []scan.Atom) bool {
	if !phrase.EndsLine(before, after) || len(before) < 3 {
		return false
	}
	for _, a := range before {
		switch a.Text {
		case "says", "said", "says,", "if", "what", "check", "shows", "sketch", "drawing", "plan":
			return false
		}
	}
	for i := range before {
		if phrase.StartsLength(measure.Reader{Atoms: before}, i) {
			return true
		}
	}
	return false
}

// topOfWall: "six rails, bottom gap 3, top at 48" tells the height, where nothing is told of what a bay measures at its bottom and its top.
func topOfWall(before, after []scan.Atom) bool {
	if !phrase.StartsClause(before, after) || !phrase.AmountNext(before, after) || len(before) == 0 {
		return false
	}
	named := false
	for i, a := range before {
		switch a.Text {
		case "up", "fastened", "fixed", "screwed", "mounted", "installed", "hung", "bay", "bays", "section", "panel", "post", "posts", "measured", "measures", "reads", "third", "second", "first":
			return false
		case "bottom", "low", "lower":
			if i+1 == len(before) || before[i+1].Text != "gap" && before[i+1].Text != "clearance" && before[i+1].Text != "space" {
				return false
			}
		}
		key, _ := chunk.PartKey(before, i)
		named = named || key == "rail" || key == "gap" || key == "bottom gap"
	}
	return named
}
