package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// adoptedTurns are turns by which the speaker takes up what somebody else says, wants or drew, or leaves what he would have done himself
// for it: "the drawing has the doorway at 31, put that in". What is only told again ("so he says") stays a claim. Common ways of speech, no source.
var adoptedTurns = []phrase.Placed{
	// It is to be done as they say.
	{",|;|.|-|and|so|then ?and|so|then|but ?please ?just ?(go ahead and) ?(you can)|(let us)|(i want you to) put|enter|write|pencil|mark|lock|jot|note|type|punch|plug|slot|key|stick|pop|book|log|copy|carry|transfer|take|bring|fill|scribble that|it|this|those|them|these in|down ?please|then|mate|(for (me|us|now)) ?, ?((will|would|can|could) you) ?please", ", so use that", theirsTaken},
	{",|;|.|-|and|so|then ?and|so|then|but ?please ?just ?(go ahead and) ?(you can)|(let us)|(i want you to)|(would you)|(could you) enter|record|register|copy|log|input|note|adopt|keep|apply that|it|this|those|them|these ?please|then|mate|(for (me|us|now))", ", so use that", theirsTaken},
	{", ?so|and|then ?please ?(let us|we will|just) (do (that|it|so)|make (it|that) (so|happen|that way|like that)|(build|have|set|keep) it (so|that way|like that)) ?please|then", ", so use that", phrase.BothHold(theirsTaken, figureStands)},
	{",|;|. ?and|so|but ?(i|we) ?(will|can) ?just take|use|enter|accept|adopt|trust|(go with)|(go by)|(stick with)|follow his|her|their|PERSON's number|numbers|figure|figures|count|word|advice|version ?(for it) ?then|please", ", so use that", theirsTaken},
	{",|;|. ?and|so|but (so be it)|agreed|((that|which) is ((what (i|we) (want|need|(would like)))|(good enough (for|by) (me|us)))) ?then", ", so use that", theirsTaken},
	{",|;|. ?and|so|but good enough for|by me|us", ", so use that", theirsTaken},
	{", ?and|so|but that|it|this|which is|'s ?quite|just|all|perfectly ?fine|okay|ok|good|alright|(all right) by|with me|us", ", so use that", theirsTaken},
	{", ?and|so|but ?that|it|this|which ?quite|just ?fine|okay|ok|good|alright|(all right) by|with me|us", ", so use that", theirsTaken},
	{", ?and|so|but ?that|it|this|which works|suits ?just ?fine|well ?for me|us ?(just) ?fine", ", so use that", theirsTaken},
	{", ?and|so|but i|we am|are ?quite|perfectly|all fine|okay|ok|good|happy|cool with that|it|this|them", ", so use that", theirsTaken},
	{", ?and|so|but ?(i|we) ?(will|'ll|would) ?(have to) (defer|bow|yield|give in|submit|agree|accede) ?(to (him|her|them|that|it))", ", so use that", theirsTaken},
	{", ?and|so|but ?please follow|obey|honor|respect|copy|match|heed|(go by)|(work to)|(build to)|(stick to)|(stick with)|(do as) that|it|this|him|her|them|(he says)|(she says)|(they say)", ", so use that", theirsTaken},
	{"?, ?and|so ?please ?(let us|we will|just) (do (that|it|so)|make it (so|happen|that way|like that)|make that happen) $", ", so use that", phrase.BothHold(claimedByThem, askedNext)},
	{"^^ ?please ?(go (ahead|on) and) ?(please) !enter|record|copy|log|input|take|pull|get|grab|lift|read these|those|this|(the following) ?numbers|figures|values|dimensions|measurements ?down ?in from|off|(off of)|(out of)|on ?the|that|this|his|her|their|my|our PAPER ?:|,|-", "enter these :", figureToCome},
	{"!PAPER !.. ,|;|. ?and|but|while|whereas ?the !new|newer|other|latest|current|second|revised|next one|version !has|says|shows|had|puts|gives|calls|said|showed", "$1 $2 , the $3 $1 $4", nil},
	// It is only told again whose word it is.
	{"?, ?or|at|least so he|she|they|((the|my|our) PERSON) ?just|always ?keeps says|say|said|claims|claim|claimed|tells|tell|told|reckons|swears|insists|thinks|saying|telling ?me|us $$", ", is that right ?", phrase.BothHold(figureStands, noWishTold)},
	{"?, ?but|and|then what does|do|would|did he|she|they|PERSON ?even|really know ?about ?it|that|this|walls|building|carpentry $$", ", is that right ?", claimedByThem},
	// What would be, were it not for something, is left for what is.
	{"^^ ?so|and|well|oh|now ?, if it is|was|were ?all|just|only|entirely|solely ?left up|down to me|us|him|her|them|((my|our|the) PERSON) ?alone|only ?, .. ,|;|. ?but|yet|though|however", "", insteadWished},
	{"^^ ?so|and|well|oh|now ?, if it was|were not for .. i|we|he|she|they would|'d .. ,|;|. ?but|yet|though|however|so", "", insteadWished},
	{"^^ ?so|and|well|oh|now ?, if i|we|he|she|they had my|our|his|her|their way|druthers|choice|wish ?, .. ,|;|. ?but|yet|though|however", "", insteadWished},
	{"^^ ?so|and|well|oh|now ?, (in (a|an) (perfect|ideal|better|different) world)|(if (money|cost|price|time|space|room) (was|were|is) no (object|issue|concern|problem)) ?, .. ,|;|. ?but|yet|though|however", "", insteadWished},
}

// theirsTaken: somebody else told a figure or how something is to be, nothing of it is asked, and it is told in so many words that it is theirs.
func theirsTaken(before, after []scan.Atom) bool {
	return claimedByThem(before, after) && endsUnasked(before, after)
}

// endsUnasked: the line ends behind it, and not in a question mark.
func endsUnasked(_, after []scan.Atom) bool {
	return !slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Kind != scan.Sign || a.Text == "?" })
}

// claimedByThem: somebody else told it, and nothing of it is asked or denied.
func claimedByThem(before, after []scan.Atom) bool {
	return TheirsTold(before) && phrase.SaidBeforeOf(tellsWish)(before, nil) && !asksAtEnd(after) && !deniedThere(before) && !phrase.SaidBeforeOf(judgedSo)(before, nil)
}

// tellsWish are words of saying, wanting and drawing: what others only have, or did, is not taken up. judgedSo are words of a judgment: with who says
// that a gap is too big nobody agrees by setting it.
var (
	tellsWish = scan.WordSet("says say said told tell tells wants want wanted suggests suggest suggested asks asked shows show showed drew drawn draws wrote writes thinks think thought recommends recommended advises advised prefers likes like insists has have had calls called gives gave puts put figures reckons specifies needs need would")
	judgedSo  = scan.WordSet("too overkill excessive enough crazy steep silly ugly wrong bad ridiculous unsafe dangerous tight loose plenty stingy skimpy wasteful much few nonsense nuts")
)

var asksOrDenies = scan.WordSet(askingOrDoubting)

// deniedThere: something in it is asked, doubted or denied. "No bay over six feet" denies nothing: it is a limit, or a count of none.
func deniedThere(before []scan.Atom) bool {
	for i, a := range before {
		if asksOrDenies[a.Text] {
			return true
		}
		if a.Text == "no" {
			if key, _ := chunk.PartKey(before, i+1); key == "" {
				return true
			}
		}
	}
	return false
}

// TheirsTold reports whether what somebody else says, wants or drew is told at the beginning of a stretch.
func TheirsTold(before []scan.Atom) bool {
	for _, a := range before[:min(len(before), 6)] {
		if a.Text == "i" || a.Text == "we" {
			return false
		}
		if a.Text == "he" || a.Text == "she" || a.Text == "they" || othersMeant[a.Text] {
			return true
		}
		for _, class := range theirClasses {
			if chunk.IsClass(a.Text, class) {
				return true
			}
		}
	}
	return false
}

// noWishTold: what stands before it is nobody's wish.
func noWishTold(before, _ []scan.Atom) bool {
	return !phrase.SaidBeforeOf(wishWords)(before, nil)
}

// insteadWished: what is wanted after all follows, with its figure, and is not asked, denied or tried.
func insteadWished(_, after []scan.Atom) bool {
	return chunk.Figured(after) && !asksAtEnd(after) && !phrase.SaidBeforeOf(asksOrDenies)(after, nil)
}

// notTheirsTold: nobody else told it, so that there is nothing to be taken up.
func notTheirsTold(before, _ []scan.Atom) bool { return !TheirsTold(before) }

// askedNext: a question or a call for a table follows as a clause of its own.
func askedNext(_, after []scan.Atom) bool {
	return len(after) > 2 && after[0].Kind == scan.Sign && (asksBehindIt[after[1].Text] || (after[1].Text == "but" || after[1].Text == "and") && asksBehindIt[after[2].Text])
}

var asksBehindIt = scan.WordSet("what where how which why when tell show give read print draw could can would will is are do does did")
