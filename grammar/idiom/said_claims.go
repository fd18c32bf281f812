package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// claimPhrases are ways to say what somebody claims, to ask whether it holds, and to tell what is to be done about it.
var claimPhrases = []phrase.Placed{
	{"no|sorry|wait|rather|correction ?, make that|(that is) #", "no , $1", ClaimBefore},
	{"!mine|ours mic|mics|mike|mikes|miked|miced|caliper|calipers|calipered ?out ?in ?at|to #", "bracket thickness $2", bracketsBefore},
	{".|,|; ?(is that|is it) high|low|steep|pricey|cheap|dear ? $$", ", is that right ?", phrase.SaidBeforeOf(scan.WordSet("lumber dollars bucks cost costs quote estimate bid bill quoted"))},
	{"- correct|right|true|ok|okay|yes ?", ", is that right ?", nil},
	{"and lists|list|itemizes", "and shows", phrase.SaidBeforeOf(scan.WordSet("reads says shows has is"))},
	{"^ ?his|her|their _ (was|were|is|has been|have been) (assured|guaranteed|informed|told) of", "he says", nil},
	{"^ ?his|her|their _ (was|were|is|has been|have been) (assured|guaranteed|promised) that", "he says that", nil},
	{"!swears|swore|swear (up and down|blind|high and low|by all that is holy|to high heaven|on a stack of bibles)", "$1", nil},
	{"compare ?(that|it|them|those|the two) ?((with|to|against) (ours|mine|yours|the layout|our layout|what (we|you) (have|get))) ?please $$", ", is that right ?", ClaimBefore},
	{", is|are|was|were it|they $$", ", is that right ?", fourWordsBefore},
	{"on the|a|my|our|that post|wall|slab|board|floor|stud|beam|lid|door|window|doorframe !for|as", "$1", wroteBefore},
	{"?,|- ?what ?is effect|impact|upshot $$", "", toleranceBefore},
	{`## RAIL \@ #`, "$1 rails at $2", nil},
	{`^^ ?grand total ?: ?!\$ ## ? $$`, "quote $1 $2 ?", nil},
	{", right|correct|proper number|count|amount|quantity|total|figure|size|price|width|height|length|spacing ?(of them) ?(do you think) ? $$", ", is that right ?", nil},
	{".|,|; ?and is|was|does|did|will|would|can|could|has|had it ?really|now|though ? $$", ", is that right ?", ClaimBefore},
	{".|,|; ?and are|were|do|did|will|would|can|could|have|had they ?really|now|though ? $$", ", is that right ?", ClaimBefore},
	{"^ ?so|and|then|please|just ?so|and|then|please|just ?(let us|we will|i will|we should|you should) hold|stick|keep|hew|adhere|work|build|design|conform to that|it|those|them|this $", "use that", ClaimBefore},
	{"^ ?so|and|then|but|well|ok|okay !(let us) !use|take|enter|(go with) !that|those|them|it|these", "$1 $2 $3", ClaimBefore},
	{"have|has|had ?just|already|also quoted", "quoted", nil},
	{"all in for|on|with ?all ?his|their material|materials|lumber|wood|timber|everything|lot|job|wall|hardware", "all in", nil},
	{"hold|put|set|check|test|try|measure (the following|these|this|those|that|what follows) ?up against ?own numbers|figures|layout|plan|wall|rest|sums|rules :", "check :", nil},
	{"(have|take|give me) ?good|quick|close|hard|proper look at !his|her|their numbers|figures|dimensions|claims|measurements :|,", "check $1 numbers :", nil},
	{"will|would|should|(ought to) (do it|cover it|see me through it|be enough for it) $$", ", is that right ?", phrase.BothHold(ClaimBefore, phrase.SaidBeforeOf(scan.WordSet("footer footers eights tens twelves fourteens sixteens")))},
	{"^ ?so|and|then|please|now|just put|enter|key|punch|add|write|use|note|set|record|(go with)|plug|log|type those|these prices|numbers|figures|quotes|costs|rates|values ?in|down|on", "use those", signBefore},
	{"^ ?so|and|then|please|now|just put|enter|key|punch|write|use|note|record|(go with)|plug|log|type that|this price|number|figure|quote|rate|value ?in|down|on", "use that", signBefore},
	{"^^ ?((i|we) (was|were|have been|had been|got|am|are) [just|now]) handed|given|passed|sent|shown|submitted|presented|emailed|texted|faxed ?to|in|over|by ?(me|us|him|them|the (office|county|city|desk)) ?(today|this morning|yesterday|just now|this afternoon|earlier|for review|for checking|for approval|by (builder|bidder|contractor)) :", "he says", nil},
	{"^^ !(.. !(rails|boards|posts|bays|stiffeners|brackets|openings|slats|planks)) !;|,|. ?but ?own count|tally (is|was|says|gives|comes to|came to) ## ?, so|and|hence|therefore (##|that one|that|mine|ours) is|'s what you|we|i ?(will|should|are to|shall) (use|go with|go by|work with|take|enter|put in)", "$1 $3 i want $4 $2", nil},
	{"what|how brought|led|got|drove|pushed|moved|brings|leads|gets|took you|us|it to that|so|this !many|few|much", "why so $1", nil},
	{".|,|; ?((is|was|are) (it|that|they|those)) ?(way|a bit|a little|much|far|not|rather) too high|much|many|few|little|low|steep|dear|expensive|rich|cheap|big|small|wide|tight|long|short ?([do] you think) ? $$", ", is that right ?", billedBefore},
	{"?so|and|then|please|just count|put|take|list|enter|treat|mark|note|book those|them|these|that ?down (as|for|to be) (on hand|in hand|had|there|already there|mine|ours|in stock)", "", signBefore},
	{"?(that|which) (he|she|they|i|we|the _) ?have|has|had|was|am ?only ?just ?got|been|was handed|given|gave|quoted|sent|printed|emailed|texted|faxed|got|received ?me|us|him|her|them ?out|in|over ?(today|yesterday|this morning|just now|at the counter) !(comes to|is|says|adds|shows|has|calls|runs|totals|lists|reads|came to|was|claims)", "$1", paperGiven},
	{", ?so (they|he|she|the yard|the clerk) tell|tells|told|inform|informs|informed me|us $$", "", phrase.SaidBeforeOf(scan.WordSet("eights tens twelves fourteens sixteens footer footers sold out"))},
	{"^^ group|team|bench|pair|desk|squad|party (##|a|b|c|d) (is|'s|' s) !([_] [_] (gap|gaps|opening|span|bay|bays|wall|height|spacing|doorway|post|posts|kerf|overall)) !is|are|comes|measures|has", "the students say the $2 $3", nil},
}

// claimVerbs are verbs by which somebody claims something.
var claimVerbs = scan.WordSet(`say says said claim claims claimed show shows showed read reads insist insists insisted swear swears swore state states stated reckon reckons
	think thinks write writes wrote list lists quote quotes quoted want wants require requires has draw draws drew shows figures`)

var (
	// ClaimBefore: somebody claimed something before.
	ClaimBefore = phrase.SaidBeforeOf(claimVerbs)
	// papersGiven are what somebody was given.
	papersGiven = scan.WordSet("quote estimate bid bill slip ticket invoice receipt drawing sketch offer")
	billed      = scan.WordSet("estimate quote bid bill invoice total quotation")
)

// bracketsBefore: brackets were spoken of, and their thickness.
func bracketsBefore(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("bracket brackets hanger hangers"))(before, nil) && phrase.SaidBeforeOf(scan.WordSet("thick thickness"))(before, nil)
}

func paperGiven(before, _ []scan.Atom) bool { return papersGiven[chunk.LastOf(before, 1)] }

// billedBefore: "the estimate came to 400, isn't that too high?", "he says six boards, too many?".
func billedBefore(before, after []scan.Atom) bool {
	return ClaimBefore(before, after) || phrase.SaidBeforeOf(billed)(before, after)
}

// signBefore: a sign stands right before.
func signBefore(before, _ []scan.Atom) bool {
	return len(before) > 0 && before[len(before)-1].Kind == scan.Sign
}

// fourWordsBefore: enough stands before to be a claim of its own.
func fourWordsBefore(before, _ []scan.Atom) bool { return len(before) >= 4 }

var written = scan.WordSet("scribbled scribbles wrote written chalked scrawled jotted penciled pencilled")

// wroteBefore: somebody wrote something down just before.
func wroteBefore(before, _ []scan.Atom) bool {
	for _, a := range before[max(0, len(before)-9):] {
		if written[a.Text] {
			return true
		}
	}
	return false
}

// toleranceBefore: "+/- 1/16, what effect?".
func toleranceBefore(before, _ []scan.Atom) bool {
	for i, a := range before {
		if a.Text == "+/-" || a.Text == "off" || a.Text == "out" && i+1 < len(before) && before[i+1].Text == "by" {
			return true
		}
	}
	return false
}
