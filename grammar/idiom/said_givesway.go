package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Turns that may be said of any quantity: one figure that gives way to another, a ceiling that was agreed on, what somebody asks for or thinks
// right. They were found by putting every quantity into every sentence.

// Pieces of them: what is spoken of, what a figure would have been, and how the other is settled on.
const (
	crossQ    = "!(LENQ|budget|((distance|space|run) between [the] [two] [end] posts))"
	crossMany = "!(COUNTQ|[the|our|my] (bays|openings))"
	wouldDo   = "(would|might|could|'d) [have] [be|been] [really|very|so|quite] (nice|great|ideal|lovely|good|better|best|perfect|fine|preferable|grand|sweet|my (first choice|pick|preference))"
	goingFor  = "[let us|(we will)|(i will)|(we would better)|please|just|still|instead] (go with|go for|make it|make that|do|take|use|settle for|settle on|have|call it|stick with|keep it at|set it at|set it to|put it at)"
	hadWanted = "(i|we) [really|had|have|first|originally|would|was|were|am|are] [have] [first|originally|really] (wanted|liked|loved|preferred|(hoped for)|(hoping for)|fancied|(set on)|(asked for)|(had in mind)|(after)|(counting on))"
	hasToDo   = "(will|would|'ll|is going to) (have to (do|serve|be it|suffice)|do|serve|be enough|be fine|work)"
	topmost   = "(ceiling|cap|limit|max|maximum|(upper (limit|bound|end))|(top end)|(outside (limit|figure)))"
)

var givesWayTurns = []phrase.Placed{
	// One figure gives way to another.
	{"^ # (for|on|as) " + crossQ + " " + wouldDo + " [,|;|-] (but|though|however|yet) " + goingFor + " #", "$2 : $3", endsPlain},
	{"^ " + crossQ + " (at|of|being) # " + wouldDo + " [,|;|-] (but|though|however|yet) " + goingFor + " #", "$1 : $3", endsPlain},
	{"^ # " + wouldDo + " (for|on) " + crossQ + " [,|;|-] (but|though|however|yet) " + goingFor + " #", "$2 : $3", endsPlain},
	{"^ ## " + crossMany + " " + wouldDo + " [,|;|-] (but|though|however|yet) " + goingFor + " ##", "$3 $2", endsPlain},
	{"^ " + hadWanted + " # (for|on) " + crossQ + " [,|;|-] (but|though|however|yet) [a|the] # " + hasToDo, "$2 : $3", endsPlain},
	{"^ " + hadWanted + " " + crossQ + " (at|(to be)) # [,|;|-] (but|though|however|yet) [a|the] # " + hasToDo, "$1 : $3", endsPlain},
	{"^ " + hadWanted + " ## " + crossMany + " [,|;|-] (but|though|however|yet) ## " + hasToDo, "$3 $2", endsPlain},
	{"^ (i|we) had " + crossQ + " (at|as|(down as)|(down at)|(set at)|(set to)) # [,|;|-] [but|and|so|now] [please] (let us (make|call|have|set|put) (it|that) [at|to]|make (it|that)|change (it|that) to|set (it|that) (at|to)|let us go with|go with) #", "$1 : $3", endsPlain},
	{"^ (i|we) had # (for|on) " + crossQ + " [,|;|-] [but|and|so|now] [please] (let us (make|call|have|set|put) (it|that) [at|to]|make (it|that)|change (it|that) to|set (it|that) (at|to)|let us go with|go with) #", "$2 : $3", endsPlain},
	{"^ (i|we) had ## " + crossMany + " [,|;|-] [but|and|so|now] [please] (let us (make|call|have) (it|that)|make (it|that)|change (it|that) to|let us go with|go with) ##", "$3 $2", endsPlain},
	{"opening side is not (left|right|middle|center|centered) , [but|rather] (it|that) is", "opening side is", nil},

	// How much it may come to.
	{"(our|my) [upper|absolute|hard|outside|top] (limit|cap|ceiling|max|maximum) (on|for) " + crossQ + " (is|'s|will be|stands at|would be) #", "$1 at most $2", noDoubtBefore},
	{"(our|my) [upper|absolute|hard|outside|top] (limit|cap|ceiling|max|maximum) (on|for) " + crossMany + " (is|'s|will be|stands at|would be) ##", "at most $2 $1", noDoubtBefore},
	{"(i|we) [have|'ve|all|both] (agreed|settled|decided|fixed|agree) on # as (the|our|a) " + topmost + " (for|on|of) " + crossQ, "$2 at most $1", noDoubtBefore},
	{"(i|we) [have|'ve|all|both] (agreed|settled|decided|fixed|agree) on # as (the|our|a) (floor|minimum|min|(lower (limit|bound|end))) (for|on|of) " + crossQ, "$2 at least $1", noDoubtBefore},
	{"(i|we) [have|'ve|all|both] (agreed|settled|decided|fixed|agree) on ## as (the|our|a) " + topmost + " (for|on|of) " + crossMany, "at most $1 $2", noDoubtBefore},
	{crossMany + " (can|must|should|may|will|shall|could) (not|never) [ever] (top|pass|surpass|outgrow|outstrip) ##", "at most $2 $1", noDoubtBefore},
	{crossQ + " (can|must|should|may|will|shall|could) (not|never) [ever] (top|pass|surpass|outgrow|outstrip) #", "$1 at most $2", noDoubtBefore},

	// What is asked for, and what is thought right.
	{"^ [and|so] (might|may|could) (i|we) [please|just|kindly] ask [you] that " + crossQ + " be [set|kept|made] [at|to]", "i want $1 to be", nil},
	{"^ [and|so] (might|may|could) (i|we) [please|just|kindly] ask [you] that there be", "i want", phrase.AmountNext},
	{"^ # (for|on|as) " + crossQ + " (is|'s) [just|exactly] right where (i|we) (want|like|need|wanted) it", "$2 : $1", endsPlain},
	{"^ [and|so] (i|we) (think|believe|reckon|feel|guess|(would say)) # (for|on|as) " + crossQ + " (is|'s|would be) (right|correct|best|fine|good|it|ideal|perfect) $", "$2 : $1", endsPlain},
	{"^ [and|so] (i|we) (think|believe|reckon|feel|guess|(would say)) # (for|on|as) " + crossQ + " (is|'s|would be) (right|correct|best|fine|good|it|ideal|perfect) ?", "is $1 right for $2 ?", nil},
	{"^ [and|so] (i|we) (think|believe|reckon|feel|guess|(would say)) ## " + crossMany + " (is|are|'s|would be) (right|correct|best|fine|good|it|ideal|perfect) $", "$1 $2", endsPlain},
	{"^ [and|so|well] (is|was|would) ## [be] (correct|accurate|spot on|on the money|the correct (figure|number)) (for|on|as) " + crossMany, "is $1 $2 right", nil},
	{"^ [and|so|well] (is|was|would) # [be] (correct|accurate|spot on|on the money|the correct (figure|number)) (for|on|as) " + crossQ, "is $1 right for $2", nil},
	{"^ [and|so|well] (does|do|would) " + crossQ + " (at|of) # (square|agree|tally|match|jibe|gel|line up|fit|accord) [up] with (yours|mine|(your (figure|figures|number|numbers|sums|reckoning|answer))|(what you (have|got|get|show)))", "is $2 right for $1", nil},
}

// endsPlain: a clause ends behind it, nothing before it denies or doubts, and nothing is asked.
func endsPlain(before, after []scan.Atom) bool {
	if !chunk.EndsPart(after, 0) || !noDoubtBefore(before, after) {
		return false
	}
	for _, a := range after {
		if a.Text == "?" {
			return false
		}
	}
	return true
}
