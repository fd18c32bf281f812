package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// politelyPut are still more phrases of polite people who are new to building: what they would be grateful for, what they can afford and
// lift, and how far they can tell.
var politelyPut = []phrase.Placed{
	{Said: `
		(i|we) (would|should|will) be [(so|very|really|most|ever so|much)] (grateful|obliged|thankful|appreciative) if you (could|would|can|might) [(please|kindly|possibly)]
		(i|we) would [(really|very much|greatly|so)] appreciate it [(very much|a lot|so much)] if you (could|would|can|might) [(please|kindly|possibly)]`, Plain: "please", Where: wroughtNext},
	{Said: "(i|we) (suppose|imagine) [that]", Plain: "i guess", Where: phrase.BothHold(phrase.StartsClause, figureSoon)},
	{Said: `
		[,] as far as (i|we) (can|could) (tell|see|judge|make out) [,]
		[,] as far as (i|we) (know|understand|remember|recall|am aware|are aware) [,]
		[,] (to the best of my knowledge|from what i can tell|from what i can see) [,]`, Where: hedgesAtEdge},
	{Said: "[,] (i am|we are) (afraid|sorry)", Where: phrase.BothHold(behindSomething, phrase.EndsLine)},
	{Said: `
		[,] if (i|we) can [(actually|even|possibly|only|just)] (afford|manage|lift|carry|find|get|handle) (them|it|that|those|so many|that many|that much|them all)
		[,] if there is [(enough|still|any)] (room|space) [(enough|left)] [for (it|them|that|those|both|two|two of them|all of them)]`, Where: phrase.BothHold(phrase.BothHold(behindSomething, noQuestion), phrase.EndsClause)},
	{Said: `
		[,] (because|since|as) (they|it|that|those|these|this) (are|is) [(so|also|just)] [(much|lot|bit|far|little|so much|quite bit)] (easier|lighter|cheaper|nicer|simpler|prettier|handier|friendlier|kinder|safer|more convenient|more comfortable|easy|light|cheap|pretty|handy) [for (me|us|PERSON|my back)] [(to (lift|carry|handle|cut|paint|clean|work with|drive|get|find|afford|lug|move|keep clean|look at|understand|read)|on my back|on the eyes|on the back|that way)]
		[,] (because|since|as) (i|we|PERSON) (have|has|had|will have|am going|are going|need|am the one who has) to (paint|stain|oil|carry|lift|cut|saw|drill|dig|sand|haul|pay for|screw|hang|mount|varnish|treat|seal) (every one|every single one|every last one|each one|each|all|all|both|half) [of] [(them|those|it)] [(myself|alone|all by myself|on my own|by hand)]
		[,] (because|since|as) (i|we|PERSON) (have|has|had|will have|am going|are going|need|am the one who has) to (paint|stain|oil|carry|lift|cut|saw|drill|dig|sand|haul|pay for|screw|hang|mount|varnish|treat|seal) (them|it|everything|those) [all] [(myself|alone|all by myself|on my own|by hand)]`, Where: phrase.EndsClause},
	{Said: "[,] [(and|because|since)] (i|we) [(really|just|simply)] (do not know|am not sure|are not sure|have no idea) where [(i am|we are|i ought|i have|we ought)] to (begin|start)", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("help hand")))},
	{Said: "at least [(one|once)] (every|each)", Plain: "at most every", Where: phrase.BothHold(phrase.AmountNext, phrase.SaidBeforeOf(scan.WordSet("stiffener stiffeners batten battens upright uprights cleat cleats brace braces")))},
	{Said: "(ends|board ends|ends of (boards|lumber|wood)|boards' ends) (are|come|look|is) [(always|often|usually|all)] [(bit|little|rather|pretty|quite|kind of|so)] (ragged|rough|split|cracked|chewed up|uneven|dirty|bad|not square|out of square|crooked|checked|splintered|frayed|beat up) (,|.|;) [(so|and)]", Where: moreFollows},
	{Said: "(i|we) do not [(really|actually)] (need|want|use|care for) (anything|marks|numbers|figures|measurements|it|fractions) [(any|to be|that is|that are)] (finer|more exact|more precise|more accurate) than", Plain: "tape", Where: phrase.AmountNext},
	{Said: "(could|can|would|may|might) (this wall|it|this|this one|ours|our wall|my wall) [(please|kindly|possibly)] be [(made|built|done)] [(just|exactly|precisely|much)] (like|same as|identical to)", Plain: "please make this wall the same as", Where: wallSoon},
	{Said: "[,] (one step after another|one step at a time|one step after the other|step after step|one thing after another|one thing at a time)", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("walk take talk guide lead tell show explain")))},
	{Said: "what [(all|else|exactly)] (could|can|might|may|would|will) [(possibly|all)] (go wrong|be wrong|go amiss|trip me up|trip us up|catch me out) [(with (this|it|that|all this|this plan|this wall|the plan)|here|for (me|us))]", Plain: "what should i watch out for", Where: atClauseEnd},
	{Said: "(walk|take|talk|guide|lead) (me|us) through what [(i|we|you) (have|need|ought)] to do", Plain: "tell me the steps", Where: atClauseEnd},
	{Said: "would be (good|sensible|nice|fine|right|proper|perfect|comfortable|reasonable|lovely|ideal|decent|pleasant)", Plain: "is the", Where: measureNext},
}

// figureSoon: a figure stands among the next words, and nothing is asked.
func figureSoon(before, after []scan.Atom) bool {
	return noQuestion(before, after) && figureIn(after[:min(len(after), 3)])
}

// hedgesAtEdge: a clause is led or ended by it.
func hedgesAtEdge(before, after []scan.Atom) bool {
	return len(before)+len(after) > 3 && (phrase.StartsClause(before, after) || phrase.EndsClause(before, after) || len(before) > 0 && chunk.LastOf(before, 1) == ",")
}

// measureNext: "38 inches would be a good height": what is thought good is wished, where nothing is asked or supposed.
func measureNext(before, after []scan.Atom) bool {
	if len(after) == 0 || after[len(after)-1].Text == "?" || !figureSaid(before, nil) {
		return false
	}
	for _, a := range before {
		switch a.Text {
		case "if", "what", "would", "which", "how", "why", "says", "say", "thinks", "told", "not", "?":
			return false
		}
	}
	switch after[0].Text {
	case "height", "width", "gap", "spacing", "distance", "size":
		return true
	}
	return false
}

// wallSoon: another wall is named next.
func wallSoon(_, after []scan.Atom) bool {
	for _, a := range after[:min(len(after), 4)] {
		if a.Text == "wall" {
			return true
		}
	}
	return false
}
