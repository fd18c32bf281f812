package grammar

import "slices"

// adoptedTurns are turns by which the speaker takes up what somebody else says, wants or drew, or leaves what he would have done himself
// for it: "the drawing has the doorway at 31, put that in". What is only told again ("so he says") stays a claim. Common ways of speech, no source.
var adoptedTurns = []placedPhrase{
	// It is to be done as they say.
	{",|;|.|-|and|so|then ?and|so|then|but ?please ?just ?(go ahead and) ?(you can)|(let us)|(i want you to) put|enter|write|pencil|mark|lock|jot|note|type|punch|plug|slot|key|stick|pop|book|log that|it|this|those|them|these in|down ?please|then|mate|(for (me|us|now)) ?, ?((will|would|can|could) you) ?please", ", so use that", theirsTaken},
	{", ?so|and|then ?please ?(let us|we will|just) (do (that|it|so)|make (it|that) (so|happen|that way|like that)|(build|have|set|keep) it (so|that way|like that)) ?please|then", ", so use that", bothHold(theirsTaken, figureStands)},
	{",|;|. ?and|so|but ?(i|we) ?(will|can) ?just take|use|enter|accept|adopt|trust|(go with)|(go by)|(stick with)|follow his|her|their|PERSON's number|numbers|figure|figures|count|word|advice|version ?(for it) ?then|please", ", so use that", theirsTaken},
	{",|;|. ?and|so|but (so be it)|agreed|((that|which) is ((what (i|we) (want|need|(would like)))|(good enough (for|by) (me|us)))) ?then", ", so use that", theirsTaken},
	{",|;|. ?and|so|but good enough for|by me|us", ", so use that", theirsTaken},
	{", ?and|so|but that|it|this|which is|'s ?quite|just|all|perfectly ?fine|okay|ok|good|alright|(all right) by|with me|us", ", so use that", theirsTaken},
	{", ?and|so|but ?that|it|this|which ?quite|just ?fine|okay|ok|good|alright|(all right) by|with me|us", ", so use that", theirsTaken},
	{", ?and|so|but ?that|it|this|which works|suits ?just ?fine|well ?for me|us ?(just) ?fine", ", so use that", theirsTaken},
	{", ?and|so|but i|we am|are ?quite|perfectly|all fine|okay|ok|good|happy|cool with that|it|this|them", ", so use that", theirsTaken},
	{", ?and|so|but ?(i|we) ?(will|'ll|would) ?(have to) (defer|bow|yield|give in|submit|agree|accede) ?(to (him|her|them|that|it))", ", so use that", theirsTaken},
	{", ?and|so|but ?please follow|obey|honor|respect|copy|match|heed|(go by)|(work to)|(build to)|(stick to)|(stick with)|(do as) that|it|this|him|her|them|(he says)|(she says)|(they say)", ", so use that", theirsTaken},
	{"?, ?and|so ?please ?(let us|we will|just) (do (that|it|so)|make it (so|happen|that way|like that)|make that happen) $", ", so use that", bothHold(claimedByThem, askedNext)},
	{"^^ ?please ?(go (ahead|on) and) ?(please) !enter|record|copy|log|input|take|pull|get|grab|lift|read these|those|this|(the following) ?numbers|figures|values|dimensions|measurements ?down ?in from|off|(off of)|(out of)|on ?the|that|this|his|her|their|my|our PAPER ?:|,|-", "enter these :", figureToCome},
	{"!PAPER !.. ,|;|. ?and|but|while|whereas ?the !new|newer|other|latest|current|second|revised|next one|version !has|says|shows|had|puts|gives|calls|said|showed", "$1 $2 , the $3 $1 $4", nil},
	// It is only told again whose word it is.
	{"?, ?or|at|least so he|she|they|((the|my|our) PERSON) ?just|always ?keeps says|say|said|claims|claim|claimed|tells|tell|told|reckons|swears|insists|thinks|saying|telling ?me|us $$", ", is that right ?", bothHold(figureStands, noWishTold)},
	{"?, ?but|and|then what does|do|would|did he|she|they|PERSON ?even|really know ?about ?it|that|this|walls|building|carpentry $$", ", is that right ?", claimedByThem},
	// What would be, were it not for something, is left for what is.
	{"^^ ?so|and|well|oh|now ?, if it is|was|were ?all|just|only|entirely|solely ?left up|down to me|us|him|her|them|((my|our|the) PERSON) ?alone|only ?, .. ,|;|. ?but|yet|though|however", "", insteadWished},
	{"^^ ?so|and|well|oh|now ?, if it was|were not for .. i|we|he|she|they would|'d .. ,|;|. ?but|yet|though|however|so", "", insteadWished},
	{"^^ ?so|and|well|oh|now ?, if i|we|he|she|they had my|our|his|her|their way|druthers|choice|wish ?, .. ,|;|. ?but|yet|though|however", "", insteadWished},
	{"^^ ?so|and|well|oh|now ?, (in (a|an) (perfect|ideal|better|different) world)|(if (money|cost|price|time|space|room) (was|were|is) no (object|issue|concern|problem)) ?, .. ,|;|. ?but|yet|though|however", "", insteadWished},
}

// theirsTaken: somebody else told a figure or how something is to be, nothing of it is asked, and it is told in so many words that it is theirs.
func theirsTaken(before, after []atom) bool {
	return claimedByThem(before, after) && endsUnasked(before, after)
}

// endsUnasked: the line ends behind it, and not in a question mark.
func endsUnasked(_, after []atom) bool {
	return !slices.ContainsFunc(after, func(a atom) bool { return a.kind != aSign || a.text == "?" })
}

// claimedByThem: somebody else told it, and nothing of it is asked or denied.
func claimedByThem(before, after []atom) bool {
	return theirsTold(before) && saidBeforeOf(tellsWish)(before, nil) && !asksAtEnd(after) && !saidBeforeOf(asksOrDenies)(before, nil) && !saidBeforeOf(judgedSo)(before, nil)
}

// tellsWish are words of saying, wanting and drawing: what others only have, or did, is not taken up. judgedSo are words of a judgment: with who says
// that a gap is too big nobody agrees by setting it.
var (
	tellsWish = wordSet("says say said told tell tells wants want wanted suggests suggest suggested asks asked shows show showed drew drawn draws wrote writes thinks think thought recommends recommended advises advised prefers likes like insists has have had calls called gives gave puts put figures reckons specifies needs need would")
	judgedSo  = wordSet("too overkill excessive enough crazy steep silly ugly wrong bad ridiculous unsafe dangerous tight loose plenty stingy skimpy wasteful much few nonsense nuts")
)

var asksOrDenies = wordSet(askingOrDoubting + " no")

// theirsTold reports whether what somebody else says, wants or drew is told at the beginning of a stretch.
func theirsTold(before []atom) bool {
	for _, a := range before[:min(len(before), 6)] {
		if a.text == "i" || a.text == "we" {
			return false
		}
		if a.text == "he" || a.text == "she" || a.text == "they" || othersMeant[a.text] {
			return true
		}
		for _, class := range theirClasses {
			if isClass(a.text, class) {
				return true
			}
		}
	}
	return false
}

// noWishTold: what stands before it is nobody's wish.
func noWishTold(before, _ []atom) bool {
	return !saidBeforeOf(wishWords)(before, nil)
}

// insteadWished: what is wanted after all follows, with its figure, and is not asked, denied or tried.
func insteadWished(_, after []atom) bool {
	return figured(after) && !asksAtEnd(after) && !saidBeforeOf(asksOrDenies)(after, nil)
}

// notTheirsTold: nobody else told it, so that there is nothing to be taken up.
func notTheirsTold(before, _ []atom) bool { return !theirsTold(before) }

// askedNext: a question or a call for a table follows as a clause of its own.
func askedNext(_, after []atom) bool {
	return len(after) > 2 && after[0].kind == aSign && (asksBehindIt[after[1].text] || (after[1].text == "but" || after[1].text == "and") && asksBehindIt[after[2].text])
}

// soItIs takes up a figure that somebody else told and that is said again: "my uncle says five boards, so five it is".
func soItIs(atoms []atom) []atom {
	n := len(atoms)
	for n > 0 && (atoms[n-1].text == "." || atoms[n-1].text == "!" || atoms[n-1].text == "then") {
		n--
	}
	if n < 6 || atoms[n-1].text != "is" || atoms[n-2].text != "it" || atoms[n-4].text != "so" && atoms[n-4].text != "," || !theirsTold(atoms) {
		return atoms
	}
	if at, end := lastFigure(atoms[:n-4]); at < 0 || textOf(atoms[at:end]) != atoms[n-3].text {
		return atoms
	}
	return inARow(atoms[:n-4], []atom{worded(atoms[n-4], "so"), worded(atoms[n-3], "use"), worded(atoms[n-2], "that")})
}

var asksBehindIt = wordSet("what where how which why when tell show give read print draw could can would will is are do does did")
