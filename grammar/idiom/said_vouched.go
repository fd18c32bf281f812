package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// vouchedPhrases are ways to bring in what somebody else says or has written, wherever his figure stands, and to doubt it. Set plain
// early, as a claim must not be taken for what is wanted.
var vouchedPhrases = []phrase.Placed{
	// Who says so, with where he is and what he did.
	{"!PERSON ?, who|that is|was|were|works|worked|lives|built|did|drew|made|thinks|knows|came|helped|sold|runs|looked|stopped|priced|owns ?_ ?_ ?_ ?_ _ ?, CLAIMED ?(me|us) ?that", "$1 says", toldAhead},
	{"!PERSON ?down|up|over|out|back at|from|across|behind|beside|in|on|of|opposite|along _ ?_ ?_ ?_ CLAIMED ?(me|us) ?that", "$1 says", toldAhead},
	{"!PERSON ?down|up|over|out|back at|from|across|behind|in|on|along _ ?_ ?_ ?_ makes ?it ?at the !(_ ?_ #)", "$1 says $2", nil},
	{"^ ?the|a|my|our mate|pal|buddy|friend|cousin|neighbor|neighbour of mine|ours|his|hers did|worked|ran|went|looked|checked|figured * and ?(he|she|they) ?now has|makes|gets|says|reckons|puts ?it", "he says", toldAhead},
	{"!they say|reckon|figure|claim|think ?over|up|down down|in|at|on this|the|our|my lumber|timber|building|hardware|local|yard|shop|store|counter|mill|pub|site|office ?yard|shop|store ?that", "$1 say", toldAhead},
	{"^ from what !PERSON tells|told|says|said|gave|showed ?(me|us) ?,", "$1 says", toldAhead},
	{"?the|a|my|our PERSON|missus measured|scaled|worked|took|read|figured|counted ?it ?up straight|all|off|from|out ?from|of ?his|her|their|my|our ?own PAPER and|, ?now ?he|she|they gets|got|has|makes|made|says|comes|came ?(up with) ?(out at)", "he says", nil},
	{"?the|a|my|our ?last|previous|other|first crew|builder|builders|lot|fella|gang|owner|owners|PERSON ?has|have ?just ?already left|wrote|stuck|taped|pinned|handed|sent ?behind ?me|us ?behind ?_ PAPER ?behind ?here [(on|in|to|for) [the] _] ?, saying|claiming|reading|stating|((that|which|and it) (says|said|reads|claims|states)) ?that", "the sketch says", toldAhead},
	{"^ (there is)|(there was)|((i|we) [have] [just|also] (got|found|have|read|saw|came across|downloaded|printed)) ?_ ?_ PAPER ?here|online|lying [(on|in|to|from|off) [the] _] ?, saying|claiming|reading|stating|((that|which|and it|it) (says|said|reads|claims|states|has|puts|gives|shows)) ?that", "the sketch says", toldAhead},
	{"^ (there is)|(there was) ?_ number|figure|note|mark|scribble ?pencilled|penciled|written|scribbled|noted|marked ?in on|in|beside|at ?the [(edge|back|corner|margin|foot) of] ?his|her|their|my|our PAPER ,|:|-", "the sketch says", toldAhead},
	{"^ in|per|by this|the|my|our ?_ book|manual|handbook|guide|leaflet ?here [(i|we) have [got] [here]] ?,|:|-", "the book says", toldAhead},
	{"?the|a|my|our PERSON|somebody|someone ?is|has|have|just ?gone ?and pencilled|penciled|written|wrote|marked|scribbled|jotted|noted|put ?in|down # beside|(next to)|against|by|under|alongside", "he wrote $1 for", nil},
	{"^ if his|her|their|my|our|the ?_ PAPER|PERSON is ?anything to be believed|trusted ?,", "according to the drawing ,", nil},
	{"^ if PERSON is ?anything to be believed|trusted ?,", "according to the drawing ,", nil},
	{"if his|her|their|my|our|the ?_ PAPER|PERSON is|'s ?to ?be ?any ?good|use|believed|trusted|(to go by) $", "according to the drawing", goodClaim},
	{"^ if i|we can|could|may|might|am|are|were ?to believe|trust|(go by) his|her|their|my|our|the ?_ PAPER|PERSON ?,", "according to the drawing ,", nil},
	{"^ ?the|his|her|their|my|our PAPER|PERSON would|will ?like have|like me|us ?to believe|think|thinking ?that", "the drawing says", nil},
	{"printout|(print out)|photocopy|scan|copy from last|this year|month|week|time|summer|spring gives|has|says|shows|puts ?it", "drawing says", nil},
	{"!PERSON|PAPER , if i|we ?can|could|have|am read|reading|remember|recall|heard|hear|understand|understood|follow|reading ?it|that|him|her|them|this ?right|correctly|rightly|well , !says|said|has|shows|gives|puts", "$1 $2", nil},
	// The figure before who says it.
	{"^^ !(# (for|on|as) *) ,|- says|said|reckons|thinks|claims|swears|(according to) ?my|our|that ?old|young PERSON [next door|(down|over|up|across|out|at|from|in) *] $", "he says $1", nil},
	{"^^ !(## (RAIL|STIFF)) ,|- says|said|reckons|thinks|claims|swears|(according to) ?my|our|that ?old|young PERSON [next door|(down|over|up|across|out|at|from|in) *] $", "he says $1", nil},
	{"^^ # ,|-|. ?and (that is)|(at least that is) what ?his|her|their|my|our PERSON|PAPER says|thinks|reckons|has|gives|claims|figures|told|tells|wrote|said|gave ?down ?me|us ?for !(..) ?is|are|was|(comes to)|(works out to)|(works out at)|(should be)|(ought to be)|(must be) $", "he says $2 is $1", nil},
	{"^^ it is # ?my|our PERSON says|said|reckons|thinks|claims|figures ?that !(*) is|are|was|(comes to)|(works out to)|(works out at)|(should be)|(ought to be)|(must be) $", "he says $2 is $1", nil},
	{"^^ # is|was what ?his|her|their|my|our PERSON|PAPER gives|gave|has|had|says|said|put|wrote|(came up with)|(comes up with)|shows|showed|reckons|told|quoted|drew ?down ?me|us for|as|on !(*) $", "he says $2 is $1", nil},
	{"^^ # is|was the|his|her|their figure|number|value|size ?that|which ?my|our PERSON|PAPER gives|gave|has|had|says|said|put|wrote|(came up with)|(comes up with)|shows|showed|told|quoted|drew ?down ?me|us for|as|on !(*) $", "he says $2 is $1", nil},
	{"^^ ## is|was what|((the|his|her|their) (figure|number|count) [that]) ?his|her|their|my|our PERSON|PAPER gives|gave|has|had|says|said|put|wrote|(came up with)|(comes up with)|shows|showed|reckons|told|quoted|drew ?down ?me|us for|of|as|on ?number ?of !RAIL|STIFF $", "he says there are $1 $2", nil},
	{"^^ what ?his|her|their|my|our PERSON|PAPER gives|gave|has|says|said|shows|puts|put|gets|got|wrote ?down ?me|us ?down for|as|on !(*) is|are|was|: #", "he says $1 is $2", nil},
	{"^^ !(*) ,|- per|from|(according to)|(going by)|(as per)|on ?his|her|their|my|our ?_ PAPER ,|:|-|is|= #", "he says $1 is $2", nil},
	{"^^ !(*) ,|- per|from|(according to)|(going by)|(as per)|on ?his|her|their|my|our ?_ PAPER ,|:|-|is|are @", "he says $1 are $2", nil},
	{"^^ !(*) ,|- (according to)|(going by) ?his|her|their|my|our PERSON ,|:|-|is|= #", "he says $1 is $2", nil},
	{"^ ?please|can|could|now ?you see|check|(tell me) if|whether # is|was|(can be) right|correct|true|ok for|on|as !(*) , ?that|(that is) what ?his|her|their|my|our PERSON|PAPER (came up with)|says|said|has|had|gave|got|gets|told|tells|reckons|thinks|gives|shows|put|wrote ?down ?me|us $$", "he says $2 is $1 , is that right ?", nil},
	{"^ is|are|was|were his|her|their|((the|my|our) PERSON 's) # for|on !(*) ?really|actually correct|right|true|(any good)|accurate|ok|okay $$", "he says $2 is $1 , is that right ?", nil},
	{"^^ before|when|once|after i|we ring|phone|call|text|answer|see|meet|pay|visit|email ?him|her|them|PERSON ?back ?again , is|are|was|were ?really his|her|their # for|on !(*) ?really|actually correct|right|true|(any good)|accurate|ok|okay $$", "he says $2 is $1 , is that right ?", nil},
	{"^^ ?i|we ?just|still can|could|do|hardly|barely not ?ever ?really believe|credit|think|buy|accept ?how|that !(* (is|are|be|was|were|at) #) , ?but|and|yet|though that is ?just ?exactly what ?his|her|their|my|our PAPER|PERSON says|has|shows|tells|told|claims|gives|reckons|got ?me|us $$", "he says $1 , is that right ?", nil},
	{"^^ i|we do ?rather|really|strongly|seriously doubt ?it|that|this ?very ?much , but|though|yet|and !PAPER|PERSON", "$1", claimsAhead},
	{"^^ i|we ?rather|really|strongly|seriously doubt ?it|that|this ?very ?much , but|though|yet|and !PAPER|PERSON", "$1", claimsAhead},
	{"^^ i|we have ?got my|our|some|grave|serious|severe doubts about|as|over ?to ?his|her|their # for|on|as !(*) , is|are|can|could|was ?that|it|this ?be ?really ?what|right|true|correct|so ?it|that ?is $$", "he says $2 is $1 , is that right ?", nil},
	{"^^ surely !(*) is|are|was|can|could not ?really|actually ?be # ?, like|as ?his|her|their PAPER|PERSON ?it says|has|shows|claims|said|reckons|makes ?it ?out $$", "he says $1 is $2 , is that right ?", nil},
	{"^^ ?surely !(*) can|could not ?really|actually|possibly|honestly be|(come to)|(work out at)|(work out to)|(come out at) # , ?surely can|could|is it $$", "is it true that $1 is $2 ?", nil},
	// Doubts behind what was claimed.
	{".|,|;|- ?and|but|though i|we do|can|am|are|will|would ?just|quite|really|still not ?really|quite ?at ?all ?so buy|believe|credit|swallow|convinced|sure|certain|persuaded|sold ?it|that|him|her|them ?(on it)|(about it)|(about that)|(of it)|(of that)|(a word of it)|(for a minute) ?though|myself $$", ", is that right ?", claimBeforeOr},
	{"and|but|though|which i|we do|can|am|are|will|would ?just|quite|really|still not ?really|quite ?at ?all ?so buy|believe|credit|swallow|convinced|sure|certain|persuaded|sold ?it|that|him|her|them ?(on it)|(about it)|(about that)|(of it)|(of that)|(a word of it)|(for a minute) ?though|myself $$", ", is that right ?", claimBeforeOr},
	{"?, ?but|and i|we ?rather|really|have|strongly|still ?got ?my|our|some|grave doubt|doubts ?about ?it|that|him ?very ?much $$", ", is that right ?", claimBeforeOr},
	{"?, or|and so ?his|her|their PAPER|PERSON|it ?would says|said|claims|claimed|has|reckons|(have it)|(have me believe)|(have us believe)|(has it)|seems|suggests|thinks|makes|goes ?it ?out $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? would|could|can|do you ?ever|really|also|all credit|say|agree|believe ?so ?with ?that|it|him|her|them ?too|so|(as well) $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? ?is ?that|it|he fair|straight|bang|spot|dead|dinky dinkum|up|on|right|di ?or ?what|not $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? ?please tell|(let me know)|holler|shout|say ?me|us if he|she|that|it|this|they is|are ?got ?it ?all wrong|off|out|mistaken|nonsense|rubbish $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? ?is ?it|that|this|he|she|they ?still ?any ?really right|good|use|correct|valid|true|dreaming|raving|codding|joking|kidding|sound ?at ?all ?now|so $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? would|do|did|can you ?also come|get|arrive|end|land ?up ?with|at|to|on same ?figure|number|answer|thing ?too $$", ", is that right ?", phrase.BothHold(amountStood, phrase.SaidBeforeOf(billsToo))},
	{".|,|;|-|? does|do|will|would|should he|she|they|we|i|it|that $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? is|are|was that|it|this ?really ?about what it|that|you|we|they ?really ?would takes|take|needs|need|is|get|comes|make ?to $$", ", is that right ?", claimBeforeOr},
	{".|,|;|-|? is|was he|she|they|PERSON ?only ?just having|taking|pulling|codding|winding|kidding|joking|talking|telling ?my|our ?me|us|leg|mick|mickey|nonsense|rubbish|lend|porkies|fibs|lies ?on|up|of|off ?me|us $$", ", is that right ?", claimBeforeOr},
	{"would|will|should be ?about|just|quite right|correct|enough|ideal|sufficient|proper|best $", "", claimBeforeOr},
	{"off|from|on|in|out ?of his|her|their|my|our|the [PERSON 's|PERSON ' s] PAPER $", "", countedBefore},
}

// triedOutPhrases are ways to try something out, and to ask what a quantity would be then, that hold for every quantity; and those of
// somebody who asks why.
var triedOutPhrases = []phrase.Placed{
	// What is tried, and what becomes of it.
	{"^ ?please|just ?let ?us|me try|test|work|figure|check|run it|this|that|things|everything ?all out|through|up with|at|using", "what if we had", numberNear},
	{"^ ?please|just ?let ?us|me run|test it|this|that ?all ?out with|at|using", "what if we had", numberNear},
	{"^ ?please|just ?can|could ?you try|run|test|do this|it|that without saving|keeping|changing|committing|storing|touching ?it|this|that|anything ?,|:|-", "what if", numberNear},
	{"^ ?so|and|then where|how would|do|does|should|might|will we|i|things|it|everything ?all be|stand|get|manage|fare|cope|end|come|finish ?on|out|up|by|along|off if", "what if", numberNear},
	{"^ ?so|and|then where|how would|should|might|will we|i|you|she|things|it|everything ?all be|get|manage|fare|cope|do|go ?on|out|up|by|along|off with|at|on", "what if we had", numberNear},
	{"^ ?let ?us|me see how|what it|that|we|things|everything ?would|will ?go|goes|get|looks|look|comes|come|works|work|turns|pans|happens|happen|ends ?out|up|on with|if|at|using", "what if we had", numberNear},
	{"^ would|will|am|are i|we ?be|being ?a ?bit|totally|completely mad|daft|crazy|silly|foolish|stupid|nuts|wrong|bonkers|insane|unwise|wise to have|make|put|set|go|run|build|use|do|try|leave|take ?it ?for|with", "what if i had", phrase.BothHold(numberNear, notToldNext)},
	{"^ would|could|will|might it|that|there ?not ?be ?any|much ?of bother|problem|trouble|hassle|disaster|sin|crime|shame|drama|worry|issue ?at|for|to ?all|me|us|anyone|anybody if", "what if", numberNear},
	{"^ is|was|would|could|might # ?be ?real goer|runner|starter|possibility|chance|prospect|option ?at ?all for|on|with !(..) $", "what if $2 is $1", nil},
	{"^ is|was|would|could|might !(## (RAIL|STIFF)) ?be ?real goer|runner|starter|possibility|chance|prospect|option", "what if there are $1", nil},
	{"^ ?please|just ?let|shall ?us|we give # try|go|whirl|shot|spin|bash|burl ?for|on|with !(*) $", "what if $2 is $1", nil},
	{"^ ?please|just ?let|shall ?us|we give !(## (RAIL|STIFF)) try|go|whirl|shot|spin|bash|burl $", "what if there are $1", nil},
	{"^^ i|we could|might ?perhaps|maybe|possibly|just|always do|have|manage|take|live|use|run|make|go|stretch ?with|to|at !(..) , would|will|does|could|might|is that|it|they|everything ?be ?still ?all hold|work|do|fit|go|ok|okay|enough|alright|(all right)|fly|possible ?together ?up|out ?at ?all $$", "what if we had $1 ?", nil},
	{"!(what if) uh|um|er|erm|like|,|so|and ?, (what if)", "$1", nil},
	{"end|ends|ended|wind|winds|wound|turn|turns|turned|finish|finishes|finished up|out ?as|being|to|at ?be", "is", phrase.BothHold(phrase.AmountNext, supposedBefore)},
	{"^ were|was i|we|one|you ?ever to ?ever go|opt|plump|settle for|with|on", "what if we had", numberNear},
	{"?, ?but|and ?(there is)|(it is)|(that is)|(i have) nothing|not|no|none ?is|of ?has ?been ?it ?yet final|permanent|fixed|definite|decided|settled|binding|serious|official|firm|commitments|(set in stone)|(for keeps)|(for good) ?yet|mind $$", "", supposedBefore},
	{"?, ?and|but leave|keep|(let be)|(do not touch)|(do not change)|(without touching)|(without changing) mine|ours|(what i have)|(what we have)|(the real one)|(my own)|(my numbers)|(my figures) ?alone|(as it is)|(as they are)|(as is) $$", "", supposedBefore},
	{", ?only|just|purely|simply|strictly ?as|by|for ?way ?of ?the test|experiment|trial|fun|interest|show|exercise|laugh|(just to see)|(to see) ?purposes|sake ?only|mind $$", "", supposedBefore},
	{"to work|play|deal|go|build with $$", "", supposedBefore},
	{", ?and|then ?so how|where does|would|will|do|is|might|should that|it|this|we|i|they|things|everything ?then ?all come|turn|leave|pan|play|shape|end|(be fixed)|(be placed)|(be set) ?me|us|we ?out|up|off|then|standing|sitting $$", ", would it work ?", supposedBefore},
	// What a quantity would be.
	{"where|what would|will|does|do|might|should !(the *) land|finish|end|come|wind|fall|settle|sit|stand|wash ?up|out ?at|to if|with", "what would $1 be if", numberNear},
	{"what would|will|do|does|might i|we|you|that|it ?then be|get|end|have|leave|give ?me|us ?left|up|over with|over|left for|as !(the *) if|with", "what would $1 be if", numberNear},
	{"^^ ?please do not|never change|touch|keep|save|set|alter|commit|store|enter anything|it|this|that|thing ?at ?all ?yet|now|(for now)|(just yet) ?, but|and|just ?just ?(tell me) !what|how !would|will|is|much|big|wide|high|tall", "$1 $2", numberNear},
	{"how does|would|will|do !(the *) change|alter|move|shift|differ|vary if|with|when i|we ?go|went|change|changed|switch|switched to", "what would $1 be with", numberNear},
	{"^ would|could|can|will you ?please work|figure|calculate|compute|give|tell ?out ?me ?out !(the *) as if|though there|i|we|it was|were|had|have|is|are", "what would $1 be with", numberNear},
	{"^^ going|switching|moving|changing|dropping ?up|down|over to !(## (RAIL|STIFF)) would|will|does ?then make|give|leave|bring|put ?me|us !(the *) what", "what would $3 be with $1", nil},
	// Who asks why.
	{"^ * want|wants|wanted|like|love|asking|asks|asked|wonder|wonders|wondering|curious|wondered|needs|need|itching|dying|demands [to [be] (know|hear|see|told|learn|find out)] ?me|us ?to ?know why", "why", askedByOthers},
	{", ?and|so what|how will|do|can|should|would|am|shall i|we ?going ?supposed ?to tell|say|answer|explain ?to|that|it ?to ?him|her|them|it ?back $$", "?", phrase.SaidBeforeOf(scan.WordSet("why"))},
	{"why !(## (RAIL|STIFF)) can|could|will|would not ?just|ever be done|built|managed|allowed|possible|made|had|(made to work)", "why can i not have $1", nil},
	{"why !(# for *) can|could|will|would not ?just|ever be done|built|managed|allowed|possible|made|had|(made to work)", "why can i not have $1", nil},
	{"(how is it)|(why is it)|(how comes it) ?that i|we can|could|may|am|are not ?able|allowed ?to put|have|use|fit|get|make|do !(## (RAIL|STIFF)) ?in|up ?there $$", "why can i not have $1", nil},
	{"why did|was|were !(## (RAIL|STIFF)) ?get|got ?been turned|rejected|refused|thrown|ruled|knocked|shot|struck ?down|out|back $", "why can i not have $1", nil},
	{"why|(how come) are|is there exactly|just|precisely so|that many !rails|posts|bays|stiffeners|braces|slats|planks", "why so many $1", nil},
	{"(how come)|why there are|is ?exactly|just|precisely so|that many !rails|posts|bays|stiffeners|braces|slats|planks", "why so many $1", nil},
	{"why exactly|precisely|just so|that many !rails|posts|bays|stiffeners|braces|slats|planks", "why so many $1", nil},
	{"why not ?have|pick|use|choose|take some|any|another ?other|different number|count of !RAIL|STIFF|posts|bays", "why the number of $1", nil},
	{"what is|('s) ?up|behind with|behind ?the number|count of !RAIL|STIFF|posts|bays", "why the number of $1", nil},
	{"what is the thinking|logic|reasoning|idea|story|deal on|behind|with !(the *) $$", "why is $1 ?", nil},
	{"^^ ?so|and where does|did|do !(post height|base height|rail face) come|came from $$", "why is the $1", nil},
	{"!(is|are|was|were) (in fact)|indeed|(in actual fact)|(in truth)|(in reality)", "$1", phrase.BothHold(phrase.AmountNext, phrase.SaidBeforeOf(scan.WordSet("confirm check verify true sure")))},
}

// amountStood: a figure stands somewhere before.
func amountStood(before, _ []scan.Atom) bool { return numberAhead(before) }

var countingVerbs = scan.WordSet("counted counts counting given listed shown marked noted measured scaled took read taken got gets makes made has had drawn written penciled pencilled")

// countedBefore: somebody counted, measured or gave a figure in the same clause.
func countedBefore(before, after []scan.Atom) bool {
	from := len(before)
	for from > 0 && !chunk.BreaksClause(before, from-1) {
		from--
	}
	return phrase.SaidBeforeOf(countingVerbs)(before[from:], after) && amountStood(before[from:], after)
}

// claimsAhead: somebody says something behind it, or has it.
func claimsAhead(_, after []scan.Atom) bool {
	return len(after) > 1 && (claimVerbs[after[0].Text] || after[0].Text == "had" || after[0].Text == "tells" || after[0].Text == "told") && numberAhead(after)
}

var drawn = phrase.SaidBeforeOf(scan.WordSet("so therefore hence thus"))

var saysVerbs = scan.WordSet(`tells told telling figured thought gave give gives given counted counts calls drew makes made put puts got gets came come comes worked assumes
	supposedly marked noted pencilled written according per reads listing maintains promised suggests suggested believes`)

// claimBeforeOr: somebody claimed something before, in whatever words, with a figure.
func claimBeforeOr(before, after []scan.Atom) bool {
	if n := len(before); n > 0 && before[n-1].Text == "which" || drawn(before, after) {
		return false // "he said three inches, so that's the gap": it is taken for so
	}
	return amountStood(before, after) && (ClaimBefore(before, after) || phrase.SaidBeforeOf(saysVerbs)(before, after))
}

// numberNear: a figure follows in the same sentence.
func numberNear(_, after []scan.Atom) bool { return numberInSentence(after) }

func numberInSentence(after []scan.Atom) bool {
	for i, a := range after {
		if chunk.EndsSentence(after, i) {
			return false
		}
		if a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) {
			return true
		}
	}
	return false
}

// SupposingWords are words that something is tried with.
var SupposingWords = scan.WordSet("if suppose supposing say imagine pretend pretending assuming assume try trying test testing hypothetically were picture")

// supposedBefore: something is tried out in what stands before, with a figure.
func supposedBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		if SupposingWords[a.Text] {
			return true
		}
	}
	return len(before) > 2 && (before[0].Text == "how" || before[0].Text == "what") && before[1].Text == "about"
}

// goodClaim: something is claimed before, and nothing tried out.
func goodClaim(before, _ []scan.Atom) bool {
	return amountStood(before, nil) && !supposedBefore(before, nil)
}

var askersNamed = scan.WordSet("not never no if nobody")

// askedByOthers: what is asked behind it is asked here.
func askedByOthers(before, _ []scan.Atom) bool {
	return !slices.ContainsFunc(before, func(a scan.Atom) bool { return askersNamed[a.Text] })
}

// notToldNext: "would I be wrong to have told you …" tries nothing out.
func notToldNext(_, after []scan.Atom) bool {
	return len(after) > 0 && !toldNext[after[0].Text]
}

var toldNext = scan.WordSet("told said asked thought put written heard read")

// billsToo: what is paid for, beside who says so.
var billsToo = scan.WordSet("estimate quote bid bill invoice says says reckons has drawing sketch plan he she they got gets makes")
