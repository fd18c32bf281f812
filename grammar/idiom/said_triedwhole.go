package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Questions that try something, or ask for a list of it: whether one is all right at a figure, whether a rail may touch the floor, the cut list for so many
// rails. None of them sets what it speaks of. Everyday speech, no source.

// triedWholly are such questions.
var triedWholly = []phrase.Placed{
	{Plain: "what if we had", Where: figureSoonTried, Said: "^ [so|and|but|well] (am i|are we) [still|all] (good|ok|okay|alright|(all right)|set|covered|safe|fine) (at|on|using)"},
	{Plain: "what if the bottom rail touches the floor", Where: endsUnbegged, Said: `
		^ [so|and|but|well] (can|could|must|should|will|would|may|might|shall) [not] [the] (bottom|lowest) RAIL [just|also|ever|really|actually] (touch|reach|meet) [the] FLOOR
		^ [so|and|but|well] (can|could|must|should|will|would|may|might|shall) [not] [the] (bottom|lowest) RAIL [just|also|ever|really|actually] (sit|rest|lie|bear|stand|be|go) [right|down|directly|flat|straight] (on|against) [the] FLOOR`},
	{Plain: "what if the wall is $1 high", Where: asksEnd, Said: "^ [so|and|but|well] (can|could|may|might|should|shall) [not] (i|we) [just|also|still|safely] go [(all the way)|back] [up|down|out|over] to # (high|tall)"},
	{Plain: ", what if i use $1", Where: endsUnbegged, Said: ", [so|then] (can|could|may|might) (i|we) [just|maybe] (use|take|get by with|make do with) !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties)"},
	{Plain: "what if we had a bottom gap of 0 ,", Said: "^ (with|having) [the] (bottom|lowest) RAIL [sitting|resting|lying|standing] [right|down|directly|flat|straight] (on|against|touching) [the] FLOOR ,"},
	// Lists of what is tried.
	{Plain: "what if we had $2 $3 , show me the $1", Where: triedListEnds, Said: `
		^ [PLEAD] [(show|give|tell|get|print|read|make|draw) ME|show|give|print|draw|(can|could|may) (i|we) (have|get|see)|let me (have|see)|i (need|want)|what is] [a|the] !TOPIC (for|at) ## !RAIL|STIFF`},
	{Plain: "what if the $3 is $2 , show me the $1", Where: triedListEnds, Said: `
		^ [PLEAD] [(show|give|tell|get|print|read|make|draw) ME|show|give|print|draw|(can|could|may) (i|we) (have|get|see)|let me (have|see)|i (need|want)|what is] [a|the] !TOPIC (for|at) # !GAP|OPENING`},
	{Plain: "what if we had $2 $3 , explain the $1", Where: triedListEnds, Said: "^ [PLEAD] explain [to me] [the] !GAP|OPENING|(bottom gap)|(bay width) (for|with|at) ## !RAIL|STIFF"},
	// Of stiffeners, not of rails.
	{Plain: "stiffener spacing", Where: onlyStiffeners, Said: "spacing"},
}

// figureSoonTried: a figure stands next.
func figureSoonTried(_, after []scan.Atom) bool { return chunk.Figured(after[:min(len(after), 4)]) }

// endsUnbegged: a question ends here, and nobody begs.
func endsUnbegged(_, after []scan.Atom) bool {
	return asksEnd(nil, after) && !HoldsWord(after, "please", "kindly")
}

// triedListEnds: the order for a list ends here.
func triedListEnds(_, after []scan.Atom) bool {
	return asksEnd(nil, after) && !HoldsWord(after, "and", "but")
}

// onlyStiffeners: stiffeners are spoken of in a question, and neither rails nor what lies between them.
func onlyStiffeners(before, after []scan.Atom) bool {
	if n := len(before); n > 0 && (chunk.IsClass(before[n-1].Text, "STIFF") || before[n-1].Text == "rail" || before[n-1].Text == "board") {
		return false
	}
	if len(after) > 0 && after[0].Text == "of" && len(after) > 1 && !chunk.Figured(after[:min(len(after), 3)]) {
		return false // "the spacing of the stiffeners" is plain
	}
	stiff := false
	for _, part := range [][]scan.Atom{before, after} {
		for _, a := range part {
			stiff = stiff || a.Text == "stiffener" || a.Text == "stiffeners"
		}
		if HoldsWord(part, "rail", "rails", "board", "boards", "slat", "slats", "plank", "planks", "between", "gap", "gaps", "bay", "post", "posts") {
			return false
		}
	}
	return stiff && (AsksAnything(before) || AsksAnything(after) || HoldsWord(before, "is", "does", "if", "would", "will") || HoldsWord(after, "do", "does"))
}
