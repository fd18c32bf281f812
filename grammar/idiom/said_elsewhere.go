package idiom

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// elsewherePhrases are turns that were heard as something else: a paper that is said not to count, a call to tell what is sold out,
// a condition with its verb in front, a plea for a goal.
var elsewherePhrases = []phrase.Placed{
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
	{", ?and|then ?just|only|simply|please make|keep|set|have|leave|get them|these|those|(the bays) ?all|both ?exactly equal|even|alike|identical|(the same)|(the same size|width)|(of a size) ?please $$", ", equal bays", phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("bays bay")), noFigureAhead)},
	// What is wanted under the bottom rail, said first.
	{"!(twice|double|half) the gap , that|this|it is|'s what|how i|we want|need|like|wanted|(would like)|(am after)|(are after) under|below|beneath ?_ bottom|lowest|first ?RAIL|one", "bottom gap equals $1 the gap", nil},
	// What may not sink below a measure is a limit; the slab has no part in it.
	{"!bays|GAP|OPENING|((each|every|any) bay)|gaps can|must|may|should|shall|(is allowed to)|(are allowed to)|will|(had better)|(would better) not ?ever drop|fall|dip|sink|shrink|slip ?down ?to below|under|beneath #", "$1 at least $2", nil},
	{"bay # can|must|may|should|shall|(is allowed to)|(are allowed to)|will|(had better)|(would better) not ?ever drop|fall|dip|sink|shrink|slip ?down ?to below|under|beneath #", "bay $1 at least $2", nil},
	// What is saved before, or after, another order.
	{"^^ ?ok|okay|well|now|so|right|and ?, ?please|but !(save ..) before|(and only after that)|(and after that) ?you|i|we start|starting|begin over|afresh|anew $$", "$1 . start over", nil},
	{"^^ ?ok|okay|well|now|so|right|and ?, ?please|but before ?you|i|we start|starting|begin over|afresh|anew ?, ?please !(save ..) $$", "$1 . start over", nil},
	{"^^ ?ok|okay|well|now|so|right|and ?, ?please|but start|begin over|afresh|anew ?, after|once|(as soon as)|when ?you|i|we ?have !(save ..) $$", "$1 . start over", nil},
	{"^^ ?ok|okay|well|now|so|right|and ?, ?please|but start|begin over|afresh|anew ?,|; but|and|only ?please !(save ..) first|beforehand|(before that) $$", "$1 . start over", nil},
	// What there was is told only to ask what there is.
	{"^^ yesterday|before|earlier|once|(at first)|(this morning)|(last week)|(last night)|(last time)|(last month) ?, it|there|we|they was|were|had|said # RAIL .|,|; ?and|so|but ?now how many ?RAIL is|are|do|have it|they|there|we ?got|have now|today|(these days)|(at the moment)", "how many rails", nil},
	{"^^ it|there|we|they was|were|had|said # RAIL yesterday|before|earlier|once|(at first)|(this morning)|(last week)|(last night)|(last time)|(last month) .|,|; ?and|so|but ?now how many ?RAIL is|are|do|have it|they|there|we ?got|have now|today|(these days)|(at the moment)", "how many rails", nil},
	{"^^ ?yesterday|before|earlier|once|(at first)|(this morning)|(last week)|(last night)|(last time)|(last month) ?, !GAP|OPENING|([wall] HEIGHT)|(bottom GAP) was|(used to be) # ?yesterday|before|earlier|once|(at first)|(this morning)|(last week)|(last night)|(last time)|(last month) .|,|; ?and|so|but ?now what|(how much)|(how wide)|(how high)|(how big) is it now|today|(these days)|(at the moment)", "what is $1", nil},
	{"GAP ?is|at|of # ,|;|- ?(for|under|at) bottom|lowest one i mean|meant|(am talking about)|(am speaking of) $$", "bottom gap $1", nil},
	// What will be measured another day leaves no figure behind.
	{",|.|; ?and|but|while ?for|under|(as for)|(as to) !(bottom GAP)|GAP|OPENING|HEIGHT|(bottom RAIL)|(bottom one)|(lowest one)|(lowest RAIL) ?,|:|;|- ?well|uh|um|er|hm|hmm|oh ?, i|we will|(have to)|(need to)|must|(am going to)|(will have to)|(would have to)|(would better)|(had better)|can ?just measure|check|ask|(find out)|(look up)|(let you know)|(tell you)|(get back to you) ?it|that|(my _)|(the _)|her|him|(about that)|(on that) ?one ?later|tomorrow|tonight|first|(on site)|(another time) $$", "", figureBefore},
	{"customer|client|owner|lady|buyer|fellow|man|wife 's limit|ceiling|maximum|max|cap is", "budget is", moneyAhead},
}

// soldOutAhead: what the call is about is that something is sold out.
func soldOutAhead(_, after []scan.Atom) bool {
	for i, a := range after {
		if a.Text == "out" && i+1 < len(after) && after[i+1].Text == "of" || a.Text == "sold" || a.Text == "no" && i > 0 {
			return true
		}
	}
	return false
}

// asksBehind: a question stands behind the first sign.
func asksBehind(_, after []scan.Atom) bool {
	for i, a := range after {
		if a.Text == "," && i+1 < len(after) {
			return opensQuestion[after[i+1].Text]
		}
	}
	return false
}

var opensQuestion = scan.WordSet("where what how which would will could can does do is are when")

func moneyAhead(_, after []scan.Atom) bool {
	for i, a := range after {
		if a.Text == "dollars" || a.Text == "bucks" || a.Text == "$" {
			return i < 8
		}
	}
	return false
}

// figureBefore: something was said before, with a figure in it.
func figureBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		if a.Kind == scan.Digits || lex.Words().Numberish(a.Text) || chunk.Numerals()[a.Text] {
			return true
		}
	}
	return false
}

// pleadedBefore: a plea stands before ("we want …", "I'd be glad if …").
func pleadedBefore(before, _ []scan.Atom) bool {
	said := scan.Text(before)
	return strings.Contains(said, "we want ") || strings.Contains(said, " would be ")
}

// figureAfter: what follows holds a figure, or what is wanted in its place, and bids nobody take what was said.
func figureAfter(_, after []scan.Atom) bool {
	return figureBefore(after, nil) && !strings.Contains(scan.Text(after), "that")
}

func noFigureAhead(_, after []scan.Atom) bool { return !figureBefore(after, nil) }
