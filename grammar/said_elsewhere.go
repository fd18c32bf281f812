package grammar

import "strings"

// elsewherePhrases are turns that were heard as something else: a paper that is said not to count, a call to tell what is sold out,
// a condition with its verb in front, a plea for a goal.
var elsewherePhrases = []placedPhrase{
	// What somebody else has on paper does not count.
	{`,|-|.|; whatever|(no matter what)|(regardless of what)|(i do not care what)|(we do not care what)|(i could not care less what)|(never mind what)|(forget what)|(irrespective of what)|(in spite of what)|(despite what) ?his|her|their|the|that|this|my|your|our ?_ _ ?may|might|should|does|will say|says|said|shows|show|claims|claim|has|thinks|think|wants|want|told|tells|reads|read ?you|me|us ?otherwise $$`, "", figureBefore},
	{`whatever|(no matter what)|(regardless of what)|(irrespective of what) ?his|her|their|the|that|this|my|your|our ?_ _ ?may|might|should|does|will say|says|said|shows|show|claims|claim|thinks|think|wants|want|reads|read ?otherwise $$`, "", figureBefore},
	{`^^ ?well|so|ok|okay|and|but whatever|(no matter what)|(regardless of what)|(i do not care what)|(we do not care what)|(irrespective of what)|(in spite of what)|(despite what) ?his|her|their|the|that|this|my|your|our ?_ _ ?may|might|should|does|will say|says|said|shows|show|claims|claim|thinks|think|wants|want|told|tells|reads|read ?you|me|us ?otherwise ,`, "", figureAfter},
	// Somebody calls to tell.
	{"rang|phoned|called|texted|wrote|emailed|messaged|radioed ?me|us|back|up|in|over ?just|earlier|today|(this morning) (to (say|tell|report|announce|let))|saying|and ?(said|says|told) ?me|us ?know ?that", "says", soldOutAhead},
	// The verb in front.
	{"^^ ?and|so|but|now|ok|okay had i|we|he|she|they|it", "if we had", asksBehind},
	// A goal that is begged for.
	{"and if there were|was|could be", "and we want", pleadedBefore},
	{"i|we|it would be|feel ?so|very|really|most|awfully|much|ever ?so glad|grateful|happy|pleased|delighted|thankful|obliged|great|nice|lovely|good|wonderful|ideal|best|perfect if i|we|you|it could|can|would|might ?all|only|just|somehow|possibly (get by with)|(get away with)|(make do with)|(manage with)|(get it done with)|(do with)|use|have|keep", "we want", nil},
	{"i|we|it would be|feel ?so|very|really|most|awfully|much|ever ?so glad|grateful|happy|pleased|delighted|thankful|great|nice|lovely|good|wonderful|ideal|best|perfect if it|there|the wall had|has", "we want", nil},
	// Somebody of the house wants.
	{"wishes|(would wish)|desires|(asks to have)|(would love)|(is hoping) to have", "wants", nil},
	// The bays that were spoken of shall be alike.
	{", ?and|then ?just|only|simply|please make|keep|set|have|leave|get them|these|those|(the bays) ?all|both ?exactly equal|even|alike|identical|(the same)|(the same size|width)|(of a size) ?please $$", ", equal bays", bothHold(saidBeforeOf(wordSet("bays bay")), noFigureAhead)},
	// What is wanted under the bottom rail, said first.
	{"!(twice|double|half) the gap , that|this|it is|'s what|how i|we want|need|like|wanted|(would like)|(am after)|(are after) under|below|beneath ?_ bottom|lowest|first ?RAIL|one", "bottom gap equals $1 the gap", nil},
	{"customer|client|owner|lady|buyer|fellow|man|wife 's limit|ceiling|maximum|max|cap is", "budget is", moneyAhead},
}

// soldOutAhead: what the call is about is that something is sold out.
func soldOutAhead(_, after []atom) bool {
	for i, a := range after {
		if a.text == "out" && i+1 < len(after) && after[i+1].text == "of" || a.text == "sold" || a.text == "no" && i > 0 {
			return true
		}
	}
	return false
}

// asksBehind: a question stands behind the first sign.
func asksBehind(_, after []atom) bool {
	for i, a := range after {
		if a.text == "," && i+1 < len(after) {
			return opensQuestion[after[i+1].text]
		}
	}
	return false
}

var opensQuestion = wordSet("where what how which would will could can does do is are when")

func moneyAhead(_, after []atom) bool {
	for i, a := range after {
		if a.text == "dollars" || a.text == "bucks" || a.text == "$" {
			return i < 8
		}
	}
	return false
}

// figureBefore: something was said before, with a figure in it.
func figureBefore(before, _ []atom) bool {
	for _, a := range before {
		if a.kind == aDigits || words().numberish(a.text) {
			return true
		}
	}
	return false
}

// pleadedBefore: a plea stands before ("we want …", "I'd be glad if …").
func pleadedBefore(before, _ []atom) bool {
	said := textOf(before)
	return strings.Contains(said, "we want ") || strings.Contains(said, " would be ")
}

// figureAfter: what follows holds a figure, or what is wanted in its place, and bids nobody take what was said.
func figureAfter(_, after []atom) bool {
	return figureBefore(after, nil) && !strings.Contains(textOf(after), "that")
}

func noFigureAhead(_, after []atom) bool { return !figureBefore(after, nil) }
