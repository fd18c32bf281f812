package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// overseasPhrases are ways in which people in Britain, Ireland and Australia talk, and those who speak of what was put down wrongly.
var overseasPhrases = []phrase.Placed{
	// What leads on, and who is spoken to.
	{"^^ right|righto|righty|grand|aye ?ho ?, so|then|now|listen ?,", "", nil},
	{"mate|cobber|guv|guvnor|squire|pet|hen|duck|petal", ",", calledTo},
	// What is put on, thrown out, and set right.
	{"chuck|bung|lob|whack|sling|bang another|(an extra) # ?more ?on|onto|to|in ?to !GAP|BAY|OPENING|(bottom gap)|(wall height)|(post height)", "add $1 to $2", nil},
	{"chuck|bung|lob|whack|sling|bang # more|extra ?on|onto|to|in ?to !GAP|BAY|OPENING|(bottom gap)|(wall height)|(post height)", "add $1 to $2", nil},
	{"throw|toss|chuck|bin|fling his|her|their !(*) out|away and|,|;", "forget the $1 ,", nil},
	{"!say|suppose|supposing|if i|we chucked|bunged|lobbed|whacked|slung|popped|shoved|banged|tossed ?in ##|another|one|a|an", "$1 we used one", oneMoreNext},
	{"what !GAP|(bottom gap)|OPENING would|does|will that|it|this leave|give|make ?me|us ?with ?then $$", ", what is the $1 ?", amountStood},
	{"^ i|we ?have ?just put|wrote|said|typed|gave|entered # ?down for|as|on !(..) and|but|when|, ?but ?i|we ?have ?really|actually|should|of|do meant|intended|mean|(have said)|(have put) ?it ?to ?be|say #", "the $2 is $3", nil},
	{"^ i|we ?have ?just put|wrote|said|typed|gave|entered !(*) ?down at|as|(to be)|was|is # and|but|when|, ?but ?i|we ?have ?really|actually|should|of|do meant|intended|mean|(have said)|(have put) ?it ?to ?be|say #", "the $1 is $3", nil},
	{",|; ?no ?, scrub|bin|belay|scratch|strike|nix that|it ?last ?,", ", no ,", phrase.AmountNext},
	// What is bounded.
	{"^ i|we can|could|will|would stretch|push|let|go|run !GAP|BAY|bays|OPENING|span|(wall height) ?out|up|go to|(as far as) # but not|never|no ?an|a|one ?inch|hair|bit|whisker|millimeter|fraction|further|more ?more|over|beyond|past|above", "$1 at most $2", nil},
	{"^ !(*) is|are|'s no|not ?any|much good|use|earthly ?use ?to ?me|us|anybody|anyone ?at ?all ?if ?it ?is under|below|(less than)|(narrower than)|(smaller than)|(lower than)|(tighter than) #", "$1 at least $2", nil},
	{"^ !(*) is|are|'s no|not ?any|much good|use|earthly ?use ?to ?me|us|anybody|anyone ?at ?all ?if ?it ?is over|above|beyond|past|(more than)|(wider than)|(bigger than)|(higher than) #", "$1 at most $2", nil},
	{"!PAPER|PERSON never lets|allows|(let us) !(*) ?to get|be|go|run|come ?any shorter|narrower|smaller|less|tighter|lower than #", "$1 says $2 at least $3", nil},
	{"!PAPER|PERSON never lets|allows|(let us) !(bay ##) ?to get|be|go|run|come ?any shorter|narrower|smaller|less|tighter|lower than #", "$1 says $2 at least $4", nil},
	{"!PAPER|PERSON never lets|allows|(let us) !(*) ?to get|be|go|run|come ?any longer|wider|bigger|more|higher|larger than #", "$1 says $2 at most $3", nil},
	// Money.
	{"## !dollars|bucks|quid|pounds|euro|euros is ?very|absolute|outside most|limit|max|maximum ?that i|we can|could|will|may|would put|spend|find|manage|pay|stretch|go ?to ?into|toward|towards|on|for ?material|materials|timber|lumber|wood|wall|job|it $", "budget $1 $2", nil},
	{"## put|set|laid|tucked|saved by|aside|away|up for|toward|towards", "$1 budget for", moneyBefore},
	{", ?and|but i|we must|can|will|may|shall|dare not ?ever go|spend|run over|past|above|beyond|exceed ?it|that|this $$", "", moneyStood},
	{"!(## ?- ##) a go|pop|throw", "$1 each", goodsBefore},
	{"## even|flat $", "$1 dollars", centsBefore},
	{"@ ## '|foot|ft £", "$1 $2 foot is $3", nil},
	{"@ ## '|foot|ft £ ?,|;|and ## '|foot|ft £", "$1 $2 foot is $3 , $1 $4 foot is $5", nil}, // "2x6 10' 8.95, 12' 10.60" has no inches in it
	{"@ ## '|foot|ft £ ?,|;|and ## '|foot|ft £ ?,|;|and ## '|foot|ft £", "$1 $2 foot is $3 , $1 $4 foot is $5 , $1 $6 foot is $7", nil},
	// The yard, and what comes from it.
	{"off|from|at|down timber|builders|(builder 's)|(builder ' s)|lumber merchant|merchants ?'s", "at the yard", nil},
	{"bits|lumps|lengths of timber|wood|lumber", "boards", nil},
	{"put|stick|add ## boards|rails|planks|sticks on|onto|to|in order|list over|extra ?and ?above", "$1 spare boards", nil},
	{"## no|nr . @", "$1 pieces $2", nil},
	{"estimate|quote|bid|quotation lands|weighs|clocks|rolls ?in at|on", "estimate comes to", nil},
	// Places.
	{"^ top of this|our|my|that wall wants|needs|has|ought to be", "the top of the wall should be", nil},
	{"you / side|s ?of", "underside of", nil},
	{"!op|opening|walkthrough|(walk - through)|doorway|gap hard|tight|jammed !left|right $", "$1 against the $2 post", nil},
	{", ?and how far from|to !left|right one|post|end|side", ", how far is the opening from the $1 post", openingBefore},
	{"hole centers|centres # above", "hole is $1 above", nil},
	// What is asked beside.
	{", !gap|(bottom gap)|opening|cost ?width|size ? $$", ", what is the $1 ?", askedInAList},
	{"how many do|will|can|would|should i|we get|need|have|use ?in ?, and what !gap|(bottom gap)|opening $$", "how many rails and what is the $1 ?", phrase.SaidBeforeOf(scan.WordSet("rails boards planks slats"))},
	{"^^ might|may|could|can i|we have|get !(.. against ..) ?, please ? $$", "i want $1 please", nil},
	{"what is to stop|prevent !(*) ?from finishing|being|ending|sitting|standing|coming ?up ?dead", "why can not $1 be", nil},
	{"^^ leaving|putting|setting his|hers|theirs|that|it ?PAPER (to one side)|aside|(out of it) ?,", "", nil},
	{"^^ set|put|lay|leave his|her|their PAPER aside|(to one side)|away ?, and|,", "", nil},
	{"^^ ?boards|rails|planks|they got|were|have|are|was ?been planed|milled|jointed|sanded|dressed ?down|back|up ,|;|and ?so ?now they|it is|are|measure|measures|come|comes|finish ?now ?out ?at # across|on|in face", "rail face is $1", nil},
}

// calledTo: somebody is spoken to: "six rails mate", not "my mate", nor "mate of mine".
func calledTo(before, after []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	if len(before) == 0 || len(after) == 0 || lexicon.Vocab().Articles[w] || lex.Owned[w] || w == "me" || w == "that" || w == "this" || w == "another" || w == "old" || w == "best" || w == "says" || w == "no" {
		return false
	}
	a := after[0].Text
	return a != "of" && a != "'s" && a != "'" && !claimVerbs[a] && !saysVerbs[a] && a != "who" && a != "has" && a != "is" && a != "was" && before[len(before)-1].Kind != scan.Sign
}

// oneMoreNext: "say I chucked one more board in": one is added.
func oneMoreNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Text == "more" || after[0].Text == "extra")
}

var moneySigns = scan.WordSet("£ $ € dollars bucks quid pounds euro euros")

func moneyBefore(before, _ []scan.Atom) bool { return moneySigns[chunk.LastOf(before, 1)] }

var moneyStood = phrase.SaidBeforeOf(moneySigns)

// goodsBefore: what is bought by the piece was named.
var goodsBefore = phrase.SaidBeforeOf(scan.WordSet("bracket brackets hanger hangers cap caps anchor anchors base bases screws"))

// centsBefore: a price was told before, in dollars and cents.
func centsBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		if a.Kind == scan.Digits && len(a.Text) > 3 && a.Text[len(a.Text)-3] == '.' {
			return true
		}
	}
	return false
}

// askedInAList: a figure was told or a place asked for before, in a part of its own.
func askedInAList(before, after []scan.Atom) bool {
	return amountStood(before, after) && !askingFirst[before[0].Text] && !supposedBefore(before, after) && !claimBeforeOr(before, after) || len(before) > 1 && before[0].Text == "where"
}
