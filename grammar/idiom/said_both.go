package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// One figure may be said for two quantities: "both the gap and the bottom gap three", "three for the gap and for the bottom gap", "keep the gap and
// the bottom gap under three". Neither of the two may be lost.

// bothQ is one of them. The longer names stand first, so that "the gap under the bottom rail" is not the gap.
const bothQ = "!(LENQ|([the] distance between [the] [two] [end] posts))"

var bothTurns = []phrase.Placed{
	{"^ [please|just|make|set|keep|have|put|get|leave] both " + bothQ + " and " + bothQ + " [at|to|to be|are|is|should be|must be|will be] #", "$1 : $3 , $2 : $3", endsPlain},
	{"(make|set|keep|have|put|get|leave) " + bothQ + " and " + bothQ + " [both] [at|to] # [both|each|apiece|alike|(across the board)]", "$1 : $3 , $2 : $3", phrase.BothHold(weMoveIt, endsPlain)},
	{"(reduce|increase|drop|change|widen|narrow|" + movers[1:] + " [both] " + bothQ + " and " + bothQ + " [both] [up|down|in|out] to #", "$1 : $3 , $2 : $3", phrase.BothHold(weMoveIt, endsPlain)},
	{"# (for|on|as) [both] " + bothQ + " and [for|on] " + bothQ, "$2 : $1 , $3 : $1", phrase.BothHold(setHere, endsPlain)},
	{"(keep|hold|get|have|make|let) [both] " + bothQ + " and " + bothQ + " [stay|be|to] (under|below|(less than)|(smaller than)) #", "$1 under $3 , $2 under $3", phrase.BothHold(weMoveIt, endsPlain)},
	{"(keep|hold|get|have|make|let) [both] " + bothQ + " and " + bothQ + " [stay|be|to] (over|above|(more than)|(bigger than)) #", "$1 over $3 , $2 over $3", phrase.BothHold(weMoveIt, endsPlain)},
	{"(keep|hold|get|have|make|let) [both] " + bothQ + " and " + bothQ + " [stay|be|to] (at most|no more than|no bigger than) #", "$1 at most $3 , $2 at most $3", phrase.BothHold(weMoveIt, endsPlain)},
	{"(keep|hold|get|have|make|let) [both] " + bothQ + " and " + bothQ + " [stay|be|to] (at least|no less than|no smaller than) #", "$1 at least $3 , $2 at least $3", phrase.BothHold(weMoveIt, endsPlain)},
	{"^ " + bothQ + " (at most|no more than|no bigger than) # , [and] [the] (same|ditto|likewise) (for|with|on) " + bothQ, "$1 at most $2 , $3 at most $2", endsPlain},
	{"^ " + bothQ + " (at least|no less than|no smaller than) # , [and] [the] (same|ditto|likewise) (for|with|on) " + bothQ, "$1 at least $2 , $3 at least $2", endsPlain},
}

// setHere: the figure is set, and no limit or part of a longer one: "six for the gap", "I want six for the gap".
func setHere(before, _ []scan.Atom) bool {
	if len(before) == 0 {
		return true
	}
	switch w := before[len(before)-1]; w.Text {
	case "want", "like", "need", "have", "do", "use", "with", "is", "please", "make", "it", "call", "say", ",", ".", ":":
		return true
	}
	return false
}
