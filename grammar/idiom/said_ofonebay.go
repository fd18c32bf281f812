package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is said of one of several: the lowest of the gaps is left as it is, a board goes into one bay and not into so many, what is told of a bay is told of
// the next in the same words. Everyday speech, no source.

const (
	leavesIt  = "keep|keeping|leave|leaving|((hold|hang|holding) on to)"
	lowestOne = "([the|that|my|our] (bottom|lowest|bottommost|lower) (one|space))"
	asItIs    = "[alone|be|unchanged|untouched|(as [it] is)|(as it was)|(the way it (is|was))|(where it (is|was))|(the same)|same|out|(out of it)]"
	putsIn    = "add|put|set|fit|place|nail|screw|fix|slip|squeeze|stick|get|hang|mount"
	oneAgain  = "another|((a|an|the|one|1) (extra|further|additional))|(one more)|(1 more)"
	intoBay   = "to|in|into|for|onto|inside"
	bayByName = "!((bay ##)|([the] (first|second|third|fourth|last|1st|2nd|3rd) bay))"
	fewOf     = "!(one|two|three|four|five|six|1|2|3|4|5|6)" // no figure, as none of them has the unit of another
)

// leftOneTurns tell that the gap at the bottom, which is a quantity of its own, shall stay as it is.
var leftOneTurns = []phrase.Placed{
	{"?, ?and|but|while|with|only|just ?please " + leavesIt + " " + lowestOne + " " + asItIs + " $", "", besideGaps},
	{"?, but|except|save|excepting|bar|barring|(other than)|(apart from)|(aside from) ?for|not " + lowestOne + " $", "", besideGapChange},
	{"?, ?and|but|while|with|only " + lowestOne + " (as [it] is)|unchanged|untouched|(as it was)|alone $", "", besideGaps},
	{"?, ?and|but|while|only " + lowestOne + " stays|remains|keeps " + asItIs + " $", "", besideGapChange},
}

// ofOneBay are turns of what is in one bay.
var ofOneBay = []phrase.Placed{
	// One more in a bay.
	{putsIn + " ?in ?me " + oneAgain + " !(RAIL|STIFF) " + intoBay + " " + bayByName, "add 1 more $1 in $2", weAdd},
	{"add ?in a|another|one|1 !(RAIL|STIFF) " + intoBay + " bay ## ,|and ?and a|another|one|1 !(RAIL|STIFF) " + intoBay + " bay ##", "add 1 more $1 in bay $2 , 1 more $3 in bay $4", weAdd},
	{"add ?in a|another|one|1 !(RAIL|STIFF) " + intoBay + " bay|bays ## and ?to|in|into|one|another ?to|in|into ?bay ##", "add 1 more $1 in bay $2 , 1 more $1 in bay $3", weAdd},
	{"add ?in a|one|1 !(RAIL|STIFF) " + intoBay + " " + bayByName, "add 1 more $1 in $2", weAdd},
	{"add ?in " + fewOf + " !(RAIL|STIFF) " + intoBay + " bay ##", "add $1 more $2 in bay $3", weAdd},
	{"^ ?please|just|now|so|and|(let us) add ?in a|one|1 !(RAIL|STIFF) " + intoBay + " bay ## and ## " + intoBay + " bay ##", "1 more $1 in bay $2 , $3 more $1 in bay $4", nil},
	{"^ ?please|just|now|so|and|(let us) add ?in ## !(RAIL|STIFF) " + intoBay + " bay ## and ## " + intoBay + " bay ##", "$1 more $2 in bay $3 , $4 more $2 in bay $5", nil},
	{"^ take|pull|get|leave|cut ?out a|one|1 !(RAIL|STIFF) out|off|from ?of bay ## ,|and ?and another|one|1 ?one out|off|from ?of bay ##", "1 less $1 in bay $2 , 1 less $1 in bay $3", nil},
	{"^ take|pull|get|leave|cut ?out a|one|1 !(RAIL|STIFF) out|off|from ?of bay ## ,|and ?and " + fewOf + " out|off|from ?of bay ##", "1 less $1 in bay $2 , $3 less $1 in bay $4", nil},
	{"^ a|one|1 !(RAIL|STIFF) !(more|extra|less|fewer) in bay ## ,|and|but ?and|but one|1 !(more|extra|less|fewer) in bay ##", "1 $2 $1 in bay $3 , 1 $4 $1 in bay $5", nil},
	// A share that is tried.
	{"^ would|could|will|might ?just !(half|twice|double|triple|(a third of)|(two thirds of)|(three quarters of)) !.. do|work|suffice|serve|fit|(be (enough|fine|ok|okay|all right|alright|better|plenty)) $", "what if $1 $2", nil},
	// Another figure for another bay.
	{"!(STIFF) !spacing ?is|at|:|= # in bay ## ,|and ?and|but # in bay ##", "$1 $2 $3 in bay $4 , $1 $2 $5 in bay $6", nil},
	{"!(STIFF) ?at|every # apart|(on center)|centers in bay ## ,|and ?and|but # in bay ##", "$1 spacing $2 in bay $3 , $1 spacing $4 in bay $5", sameMeasure},
	// What a board of a bay measures.
	{"bottom|lowest RAIL in|of bay ## ?now measures|measured|is|(comes (to|out at)|(came (to|out at))|reads) #", "bay $1 rail 1 measures $2", nil},
	{"bay ## bottom|lowest RAIL ?now measures|measured|(comes (to|out at)|(came (to|out at))|reads) #", "bay $1 rail 1 measures $2", nil},
	// A length and a count that change together.
	{"^ ?please|just|now !(drop|lower|shrink|reduce|cut) ?the|my|our WALL ?by|down # and ?by " + fewOf + " !(RAIL|STIFF) $", "lower the wall by $2 , remove $3 $4", nil},
	{"^ ?please|just|now !(drop|lower|shrink|reduce|cut) ?the|my|our WALL ?by|down # and a|an !(RAIL|STIFF) $", "lower the wall by $2 , remove 1 $3", nil},
	{"^ ?please|just|now !(take|knock|cut) # off ?of ?the|my|our WALL and " + fewOf + " !(RAIL|STIFF) $", "lower the wall by $2 , remove $3 $4", nil},
	{"^ ?please|just|now !(take|knock|cut) # off ?of ?the|my|our WALL and a !(RAIL|STIFF) $", "lower the wall by $2 , remove 1 $3", nil},
	{"^ ?please|just|now !(take|knock|cut) # and " + fewOf + " !(RAIL|STIFF) off ?of ?the|my|our WALL $", "lower the wall by $2 , remove $3 $4", nil},
	{"^ ?please|just|now !(take|knock|cut) # and a !(RAIL|STIFF) off ?of ?the|my|our WALL $", "lower the wall by $2 , remove 1 $3", nil},
	{"^ ?please|just|now !(raise|lift) ?the|my|our WALL ?by|up # and ?by " + fewOf + " !(RAIL|STIFF) $", "raise the wall by $2 , add $3 $4", nil},
	{"^ ?please|just|now !(raise|lift) ?the|my|our WALL ?by|up # and a|an !(RAIL|STIFF) $", "raise the wall by $2 , add 1 $3", nil},
	{"^ ?please|just|now !add # and " + fewOf + " !(RAIL|STIFF) to ?the|my|our WALL $", "raise the wall by $2 , add $3 $4", nil},
	{"^ ?please|just|now !add # and a !(RAIL|STIFF) to ?the|my|our WALL $", "raise the wall by $2 , add 1 $3", nil},
	{"^ ?please|just|now add ## !(RAIL|STIFF) and # to ?the|my|our !(GAP|OPENING|(bottom gap)|WALL) $", "add $1 $2 , add $3 to the $4", nil},
	{"^ ?please|just|now add ## !(RAIL|STIFF) and ## !(RAIL|STIFF) to each|every bay $", "add $1 $2 , add $3 $4", nil},
	{"^ ?please|just|now add ## !(RAIL|STIFF) and a !(RAIL|STIFF) to each|every bay $", "add $1 $2 , add 1 $3", nil},
	// Both gaps.
	{"!GAP and ?the bottom ?at|is|are|= #", "$1 $2 , bottom gap $2", endsPlain},
	{"!GAP and ?the bottom !(up|down) ?by #", "$1 $2 $3 and bottom gap $2 $3", endsPlain},
	{"!GAP and ?the bottom", "$1 and bottom gap", endsBottom},
	{"^ ?the|my|our !GAP !(up|down) ?by # ,|and ?and ?the bottom|lowest one|gap|space ?right with it $", "$1 $2 $3 and bottom gap $2 $3", nil},
	{"^ ?the|my|our !GAP # !(more|less|wider|narrower|tighter|bigger|smaller) ,|and ?and ?the bottom|lowest one|gap|space ?right with it $", "$1 $2 $3 and bottom gap $2 $3", nil},
	// One of several that were counted.
	{"## bays ?, ?and|with the first|left ?one|bay ?is|at|of #", "$1 bays , bay 1 is $2", nil},
	{"## bays ?, ?and|with the second ?one|bay ?is|at|of #", "$1 bays , bay 2 is $2", nil},
	{"## OPENING ?, ?and|with the left ?one|opening ?is|at|of # ?wide", "$1 openings , opening 1 is $2", nil},
	{"2|two OPENING ?, ?and|with the right ?one|opening ?is|at|of # ?wide", "2 openings , opening 2 is $1", nil},
	{"!GAP and ?the bottom # !(more|less|wider|narrower|tighter|bigger|smaller)", "$1 $2 $3 and bottom gap $2 $3", endsPlain},
	// Out is wider.
	{"^ ?please|just|now stretch|widen|lengthen bay ## out ?by #", "widen bay $1 by $2", nil},
	// The same once more.
	{"bay ## ?is|at|:|= # , ?and bay ## ?is|gets|be|has ?exactly|just (the same)|same|ditto|likewise|(the same width) ,|and", "bay $1 = $2 , bay $3 = bay $1 ,", nil},
	{"bay ## ?is|at|:|= # , ?and bay ## ?is|gets|be|has ?exactly|just (the same)|same|ditto|likewise|(the same width) $$", "bay $1 = $2 , bay $3 = bay $1", nil},
	{"bay 1|one ?is|at|:|= # , ?and ?the second|2nd bay|one ?is|gets|be|has ?exactly|just (the same)|same|ditto|likewise|(the same width)", "bay 1 = $1 , bay 2 = bay 1", nil},
	{"!(OPENING) ?is|at|:|= # , ?and bay ## ?is|gets|be|has ?exactly|just (the same)|same|ditto|likewise|(the same width) ,|and", "$1 = $2 , bay $3 = $1 ,", nil},
	{"!(OPENING) ?is|at|:|= # , ?and ?the first|1st bay ?is|gets|be|has ?exactly|just (the same)|same|ditto|likewise|(the same width) $$", "$1 = $2 , bay 1 = $1", nil},
}

// besideGaps: it is gaps that were given a figure or a change before, and that ends the line.
func besideGaps(before, after []scan.Atom) bool {
	gap := false
	for i, a := range before {
		if HoldsWord(before[i:i+1], "rails", "boards", "slats", "posts", "stiffeners", "bays", "openings", "planks", "rail", "board", "not", "never", "he", "she", "they") {
			return false
		}
		gap = gap || chunk.IsClass(a.Text, "GAP")
	}
	return gap && len(after) == 0 && (HasFigures(before) || changesHere(before, after))
}

// besideGapChange: the gaps are changed, and none is given a figure to be.
func besideGapChange(before, after []scan.Atom) bool {
	return besideGaps(before, after) && (changesHere(before, after) || HoldsWord(before, "narrow", "tighten", "close", "open"))
}

// weAdd: it is we who add it, or may, or ask why not.
func weAdd(before, after []scan.Atom) bool {
	if n := len(before); n > 1 && before[n-1].Text == "not" && before[n-2].Text == "why" {
		return true
	}
	return weMoveIt(before, after)
}

// endsBottom: "bottom" names the gap there, and nothing behind it does.
func endsBottom(_, after []scan.Atom) bool {
	return len(after) == 0 || !chunk.IsClass(after[0].Text, "GAP") && !chunk.IsClass(after[0].Text, "RAIL") && after[0].Text != "one" && after[0].Text != "clearance" && after[0].Text != "of"
}

// sameMeasure: the figure for the second bay is no count of feet told short: "two feet apart in bay 1, three in bay 2".
func sameMeasure(before, _ []scan.Atom) bool { return !HoldsWord(before, "feet", "foot", "ft") }
