package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A slip is told beside the figure that takes its place, in any words: the tape slipped, it was the wrong line of the notes.
const (
	slipLead   = "(,|.|;|-|--) [oh|ah|och|ach|oops|whoops|sorry|wait|no|nope|hang on|hold on|damn|dang|darn|crikey|blimey|jaysus] [,|.|!] [no] [no] [,|.|!] [that was|that is|it was|i had|silly me] [,]"
	slipExcuse = `(([my|our|the] (PERSON|_) [has] [just] (corrected|(set me)|(put me)|reminded|distracted) [me] [straight|right|again])|([the|a|my|on the|from the] wrong (line|page|column|row|sheet|number|note|drawing|wall|list|job|side|end) [(of|in|on|from|at) [the|my|our] [own] (notes|list|sheet|notebook|book|page|tape|pad|paper|ruler|drawing|sketch)])|((i|we) [have|had] [just] (misread|misheard|mistyped|muddled|botched|smudged|jumbled|transposed|mixed up) [my|the|our|his|her|those] [own] [_] [(scribble|scribbles|writing|handwriting|notes|note|scrawl|tape|list|sketch|hand|numbers|figures|digits)])|([a|my|just a|that was a] (typo|misprint|mistype|misspelling|miscue|fumble))|([the|my|our] (tape|ruler|pencil|rule|board|pen|phone|finger|fingers|thumb|glasses) [just] (slipped|moved|jumped|sagged|bent|caught|stuck|slid|fogged up|fogged))|((i|we) (was|were|am|had been) (looking at|reading|reading from|reading off|on|holding|measuring from|copying from) the wrong (_|(_ _)))|([the|my|our|that] (_|(_ _)) [just] (walked|sat|spilled|stepped|slept|chewed|ran|jumped|lay|trod|sneezed|drooled) [all] (over|on|across|up|through) (the|my|our) (PAPER|notepad|desk|table|keyboard|phone))|([the|this|that] (cold|heat|wind|rain|noise|sun|radio|coffee|whiskey|beer) (is|'s|has) [got|getting|gone|going] [to] (me|us|my head)))`
)

// slipPhrases are ways in which one figure takes the place of another, and in which what was said is taken back.
var slipPhrases = []phrase.Placed{
	{slipLead + " " + slipExcuse + " (,|.|;|:|-|--|!)", ", no ,", phrase.BothHold(figureToldBefore, figureTakesPlace)},
	{"wait the tape [just] (slipped|moved|jumped|sagged)", ", no ,", phrase.BothHold(figureToldBefore, figureTakesPlace)},
	{"(,|.|;|-|--) [sorry|because|as] [,] " + slipExcuse, "", phrase.BothHold(phrase.BothHold(figureToldBefore, correctedBefore), phrase.EndsLine)},
	{"(,|.) did (i|we) [just] [really] (say|write|type|put|tell you) (that|this|it|#) [?|.|,] [i|we] [mean|meant]", ", no ,", phrase.BothHold(figureToldBefore, figureTakesPlace)},
	{"(i|we) [have|had] [just|first] (said|told you|wrote|put|gave|had|typed|entered) # (for|on|as) !LENQ [,] but [it|that] (ought to have been|should have been|should be|ought to be|is really|was meant to be|was supposed to be|has to be|must be) #", "$2 : $3", phrase.StartsClause},
	{"(i|we) [have|had] [just|first] (said|told you|wrote|put|gave|had|typed|entered) ## !COUNTQ [,] but (i|we) [actually|really] (meant|mean|want|need|wanted) ##", "$3 $2", phrase.StartsClause},
	{"(i|we) [have|had] [just|first] (said|told you|wrote|put|gave|had|typed|entered) # (for|on|as) !LENQ [,] but (i|we) [actually|really] (meant|mean|want|need|wanted) #", "$2 : $3", phrase.StartsClause},
	{"^ [my|our] !(LENQ|budget) (was|were) (going to be|supposed to be|meant to be|to be|at first|originally) [\\$] # [dollars|bucks] , (but|and) (i|we) [have] [since|now|then|later] (agreed on|settled on|decided on|went with|gone with|changed it to|made it|raised it to|cut it to)", "$1 :", nil},
	{"(i|we) [have|had] [just|first] (said|told you|wrote|put|gave|had|typed|entered) ## !COUNTQ [,] but [it|that] (ought to have been|should have been|should be|ought to be|is really|was meant to be|was supposed to be|has to be|must be) ##", "$3 $2", phrase.StartsClause},
	{"not # but # (is|'s) what !LENQ [should|must|ought|has|needs|is|was|wants|had] [to] [be] [meant] [to] [be]", "$3 : $2", phrase.StartsClause},
	{"not # (is|'s) what !LENQ [should|must|ought|has|needs|is] [to] be , but #", "$2 : $3", phrase.StartsClause},
	{"not ## [of] !COUNTQ but ## [of them|instead] [please]", "$3 $2", phrase.StartsClause},
	{"(instead|in place|in lieu|rather) (of|than) ## !COUNTQ , [please] [let us] (use|have|make it|make|do|put|put in|go with|go for|say|i want|we want|i will have|we will have|give me|set|try) ## [of them|of those]", "$3 $2", phrase.StartsClause},
	{"[please] (change|switch|move|bring|swap|take|turn) (it|that|this|things|us) [over|up|down] from ## !COUNTQ [over|up|down] to ## [of them|rails|boards|slats|instead]", "$3 $2", phrase.StartsClause},
	{"[please] (change|switch|move|bring|swap|take|turn) !COUNTQ [over|up|down] from ## [over|up|down] to ## [of them|instead]", "$3 $1", phrase.StartsClause},
	{"(where|wherever|when) i (said|told you|told|wrote|typed|put|entered|gave you) # (for|on|as|about) !LENQ , [please] (read|make it|make that|use|put|say|take|have|it should be|i meant) # [instead|rather]", "$2 : $3", phrase.StartsClause},
	{"(my (mistake|bad|error|fault)) (on|about|with|over|regarding|for) !LENQ (:|,|.|;) (i|we) [have] [just] (gave|given|told|said|wrote|typed|put|entered|had) [you|down] # (and|but|,|when) [the] [it|that] [right|correct|real|true|proper] [figure|number|one|value|amount] (is|'s|should be|should have been|was|ought to be)", "$1 :", phrase.AmountNext},

	// Taken back.
	{"(i|we) [really] (never should|should never|should not|ought not|never ought) [to] have (mentioned|said|brought up|given|told you|set|entered|put in) !LENQ [at all] [,|.|;] [so] [please] [just] (ignore|forget|drop|disregard|scratch|strike|scrap|lose) (what|whatever|anything|everything|all) [that] (i|we) (said|told you|gave you|wrote|put) [about|on|for] [it|that]", "forget $1", nil},
	{"you know (what|whatever|the figure|the number|the thing) (i|we) (said|told you|gave you|set) [about|for|on] !LENQ [?] [,] [well] [please] [just] (wipe|forget|drop|scratch|bin|lose|ditch|scrap|ignore|disregard|strike|erase|delete) (that|it) [out|again]", "forget $1", nil},
	{"^ (what|whatever|anything|(the (figure|number))) [that] (i|we) (said|told you|gave you|set) (about|for|on) !LENQ [?] , [well] [please] [just] (wipe|forget|drop|scratch|bin|lose|ditch|scrap|ignore|disregard|strike|erase|delete) (that|it) [out|again]", "forget $1", nil},
	{"(take|strike|cross|scratch|drop|remove) !LENQ (off|from) [of] [the|my|our] (list|lists|(wish list)|notes|books|sheet|record) [of (what (i|we) (want|need|asked for|said|told you))]", "forget $1", bidsHereOrWished},
	{"(i|we) (am|are) [all|quite|really] (sold on|won over by|happy with|for|convinced by)", "i take", optionAheadOnly},
	{"(swap|trade|exchange) ## !COUNTQ (for|with) ## [of them|instead]", "$3 $2", bidsHereOrWished},
	{"for ## !COUNTQ [please] read ##", "$3 $2", phrase.StartsClause},
	{"!LENQ (can|may|could) be (whatever|anything) [you like|it likes|it wants|you want] (,|;|.|:) [so] [please] [just] (forget|drop|scratch|lose|scrap) (my|the|that) (number|figure|value|amount|one)", "forget $1", nil},
	{"(i|we) (am|are) no longer (fussed|bothered|fussy|particular|picky|worried) about !LENQ", "forget $1", nil},
	{"(i|we) (am|are) not (fussed|bothered|fussy|particular|picky|worried) about !LENQ (anymore|(any more)|(any longer))", "forget $1", nil},
	{"let us not (fix|pin|set|nail|lock|tie|settle|specify) [down] !LENQ [down] [in] [at all|after all|any more|anymore|yet] (,|;|.) [so] [just] (forget|drop|scratch|scrap|lose|strike|ditch|undo) (it|that|that one|what i said)", "forget $1", nil},
	{"^ !LENQ (,|:|-) [please] [just] (forget|pretend|act like) [that] (i|we) (ever|never|even) [ever] (brought it up|mentioned it|said anything|said a thing|said it|gave you one|set it|said anything about it)", "forget $1", nil},
	{"(i|we) (am|are) (withdrawing|retracting|taking back|rescinding|revoking|pulling|dropping) (what|whatever|anything|everything|the figure|my figure|the number|my number|the value) [that] [(i|we) (said|told you|gave you|gave|set|wrote|put)] (regarding|about|for|on|concerning|as to) !LENQ", "forget $1", nil},
	{"(withdraw|retract|rescind|revoke|pull) (what|whatever|anything|everything|the figure|my figure|the number|my number|the value) [that] [(i|we) (said|told you|gave you|gave|set|wrote|put)] (regarding|about|for|on|concerning|as to) !LENQ", "forget $1", nil},
	{"pay no (heed|attention|mind|regard) to (what|whatever|anything|everything|the figure|my figure|the number|my number) [that] [(i|we) (said|told you|gave you|gave|set|wrote|put)] (regarding|about|for|on|concerning|as to) !LENQ", "forget $1", nil},
	{"as for !LENQ , (i|we) (have|have got|'ve got|got) no (figure|number|value|preference|opinion|measure|size) [for it] [in mind] (anymore|any more|now|any longer|after all) (,|.|;) [so] [and] [please] [just] (erase|drop|forget|scratch|delete|scrap|lose|strike|remove) (it|that|the one [that] [you have|i gave you|i gave|there is]|what i said|what you have)", "forget $1", nil},
	{"sign me|us up for", "take", optionAhead},
	{"pick|choose|take ## (from|off|out of) [the|that|your] list", "take option $1", phrase.StartsClause},
	{"(number|option) ## will (do|suit) [us|me] [grand|fine|nicely|well|lovely|rightly|just fine|perfectly|great]", "take option $1", noDoubtBefore},
	{"that|this last change|step|edit|one|thing , (i|we) (do not|did not) (want|like|need|mean) (it|that) [after all|any more|anymore|at all]", "undo", phrase.StartsClause},
	{"(return|put|set|bring|take|turn|get) (it|things|everything|that|the wall|this) [back] to how (it|things|they|everything|that) (was|were) [a] [moment|minute|second|step|while] [ago|before|just now]", "undo", nil},
	{"(wind|roll|walk|dial) [that|the|this] last [one|change|step|bit|thing] back", "undo", phrase.StartsClause},
	{"[sorry|oops|whoops] [,] [it was] (the|my|our) (_|(_ _)) [that|who] (said|did|typed|pressed|hit|wrote|entered) (that|it) , not (me|i|us) (.|,|;|!) [so] [please]", "", phrase.BothHold(phrase.StartsClause, takenBackNext)},
	{"^ [my|our|the] (PERSON|_|(_ - in - law)) (will|would|can|could|does|do) not ((be held to)|(care about)|stand|like|have|(hear of)|(agree to)|abide|(live with)|want) (it|that) [any more|anymore|any longer|now|at all] (,|;) so [please]", "", phrase.BothHold(phrase.StartsClause, takenBackNext)},
}

// figureTakesPlace: a figure follows, past a few words that only lead to it.
func figureTakesPlace(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 6; i++ {
		if phrase.StartsLength(measure.Reader{Atoms: after}, i) {
			return true
		}
		if after[i].Kind == scan.Word && !leadsToFigure[after[i].Text] {
			return false
		}
	}
	return false
}

var leadsToFigure = scan.WordSet("it is 's that should be make i meant mean no say has to ought the right one real call have have been want")

// correctedBefore: one figure has taken the place of another before it.
var correctedBefore = phrase.SaidBeforeOf(scan.WordSet("no nope mean meant sorry wait oops whoops actually rather scratch instead"))

// takenBackNext: something is taken back behind it.
func takenBackNext(_, after []scan.Atom) bool {
	if len(after) == 0 {
		return false
	}
	switch after[0].Text {
	case "undo", "drop", "forget", "scratch", "scrap", "lose", "take", "strike", "ignore", "disregard", "put", "cancel", "reverse", "revert", "go":
		return true
	}
	return false
}

// besidePhrases are what is said beside a wish, and says nothing of the wall: who else likes it, why, and before what.
var besidePhrases = []phrase.Placed{
	{", [and] (neither|nor) (will|would|does|do|can|could|is|am|are|shall|should) (PERSON|(my|our) _|i|we|herself|himself|anyone|anybody)", "", phrase.EndsLine},
	{", [and] [just|,] for the record [,] [that|this|it] (is|'s|was) .. $$", "", figureToldBefore},
	{", [and] (do not|never) [you] [dare] let .. (talk|fool|persuade|argue|bully|convince|scare|sway) (you|me|us) (out of (it|that|them)|otherwise|into (anything|something) else|different|differently)", "", phrase.EndsLine},
	{", [for|because|as|since] (my|his|her|our|the) [old|poor|bad] (back|knees|knee|shoulder|shoulders|hands|hip|hips|wrist|wrists|arms|feet|elbow|eyes) (is|are|'s|has been|have been) [still|so|very|really|awful|playing] (bad|sore|shot|gone|killing me|acting up|aching|up|stiff|hurting|playing up|giving out|not what it was)", "", phrase.EndsLine},
	{", [just] (the same|same) (as|like) (on|in|at|with|over at|back at) .. (barn|fence|porch|deck|house|shed|gate|corral|pasture|pen|cabin|garage|place|farm|boat)", "", phrase.BothHold(figureToldBefore, phrase.EndsLine)},
	{", [and|for|because|since|as] [the|my|our|that|this] [building|city|town|county|code|site|local] (inspector|officer|official|boss|foreman|surveyor|engineer) (was|is|has been|seems|were|got) [very|quite|really|dead|always|most] (clear|firm|strict|adamant|definite|particular|fussy|stern|emphatic|insistent) (on|about) (that|it|this|them)", "", phrase.BothHold(figureToldBefore, phrase.EndsLine)},
	{", [or|otherwise|else] [else] [my|our|those] (hens|chickens|goats|goat|dog|dogs|cat|cats|kids|kid|pup|puppy|rabbits|ducks|geese|sheep|pigs|lambs|pony|toddler|baby|twins|bunny) (get|gets|will get|would get|go|slip|escape|will be) (out|in|through|loose|away|stuck)", "", phrase.EndsLine},
	{"if it is all (the same|one) (to|with) (you|everyone|everybody|them)", "", behindSomething},
	{", [the|my|our|that] [old] ((_ _)|_) (says|said|tells|told) [me] so", "", phrase.BothHold(ownWish, phrase.EndsLine)},
	{"(right|righto) (so|then)", "so", func(before, after []scan.Atom) bool { return len(before) == 0 && moreFollows(before, after) }},
	{", [and|or] [so] [my|our|the|his|her] (PERSON|_) [keeps|always] (tells|told|telling|says|said|reckons|advises|advised|suggests|suggested|recommends|recommended) [me|us] [so] , [so|and] [please] [let us] [just] (do that|do it|make it so|go ahead|do so|set it so|do just that|do as told)", "", phrase.BothHold(figureToldBefore, phrase.EndsLine)},
	{", [mate|love] it is [just|way|all] (overkill|excessive|wasteful|unnecessary|(too (many|much))|(more than (we|i) need))", "", phrase.BothHold(bidsFirst, phrase.EndsLine)},
	{", [for|because|as|since] (wind|breeze|draft) [just] (blew|took|scattered|knocked|carried) (my|our|the) _ (over|away|about|off|around|down)", "", phrase.EndsLine},
	{"^ [my|our|the|his|her] (PERSON|_) [always|only|just] ((swears by)|(goes for)|uses|used|likes|loves|(is fond of)|favors|prefers|trusts|(signed off on)|approved|okayed|picked|chose|(voted for)|(agreed to)|(went for)|(asked for)) @|# [COUNTQ] , so", "", sameAmountNext},
	{"^ never mind|forget|(forget about) (his|her|their|PERSON 's) (# (COUNTQ|LENQ)) ,", "", moreFollows},
	{"happen to (own|have|possess)", "have", nil},
	{"(and|,) [and] (i|we) (would|'d|do) [really] (love|like|want|hope) to use (them|those|these|it) [all] [up]", "", phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("have own got")), phrase.EndsLine)},
	{"(and|,) [please] (shove|jam|push|slide|butt|tuck|snug|cram|squeeze|set|put) (it|that) [right|hard|tight|snug|(all the way)] [up] (against|to|(over to)|at|by) [the] !left|right [hand] (POST|end|side|(end post))", ", opening on the $1", phrase.SaidBeforeOf(scan.WordSet("opening doorway walkthrough gateway entry passage entrance"))},
	{", none of (that|those|this|your) * $$", "", figureToldBefore},
	{"^ ((no (question|doubt) about it)|(no two ways about it)|(all things considered)|(all in all)|(when all is said and done)) [,]", "", phrase.AmountNext},
	{"(suits|suit) (me|us) ((down to the ground)|fine|grand|(to a t)|perfectly|best|nicely|well)", "", phrase.BothHold(phrase.BothHold(figureToldBefore, noDoubtBefore), phrase.EndsLine)},
	{", [and] ((make it (snappy|quick))|(be (quick|snappy) about it))", "", phrase.BothHold(figureToldBefore, phrase.EndsLine)},
	{", (ta|cheers|thanks) (love|mate|pet|hen|duck|pal|buddy|dear|darling|lad)", "", phrase.EndsLine},
	{", (write|put|pencil|mark|lock|jot) (that|it|them) (in|down) [please|then|mate]", "", phrase.BothHold(phrase.BothHold(figureToldBefore, phrase.EndsLine), notTheirsTold)},
	{"(in|at|on|over) [the|our|my] (car|truck|van|kitchen|pub|bar|diner|phone|church|drive|train|bus|couch|sofa|table) [home|here|over]", "", phrase.BothHold(phrase.BothHold(figureToldBefore, phrase.SaidBeforeOf(scan.WordSet("agreed settled decided"))), phrase.EndsLine)},
	{", (yeah|yep|eh|aye|alright|righto) [mate|love|so] ?", "", phrase.BothHold(bidsFirst, phrase.EndsLine)},
	{"(over|during|at|after|before) [our|my|a|this morning 's] (breakfast|lunch|dinner|supper|tea|coffee|beers|cards|church|pints)", "", phrase.BothHold(figureToldBefore, phrase.EndsLine)},
	{"^ [my|our|the|(me and my)|(me and the)] [_] [and] (i|we) [have|'ve] [just|both|all] (talked|chatted|thought|discussed|argued|mulled|hashed|slept|worked) (it|this|that|things|everything) [all] (over|out|through|about) [,] (and|so) [now|we say]", "", phrase.BothHold(phrase.StartsClause, moreFollows)},
	{"after [a|some|lots of|plenty of] [good|long|bit of|lot of] [long|hard] (think|thinking|chat|talk|ponder|natter|discussion|argument|debate) [about it|over it|with _ _|with _] ,", "", phrase.BothHold(phrase.StartsClause, moreFollows)},
	{"with [a|an|my|our|these|those|two|three] _ [_] [_] (about|around|underfoot|nearby|here|visiting|coming|loose|in the house|on the loose|running around|running about|in the family) ,", "", phrase.BothHold(phrase.StartsClause, moreFollows)},
	{"^ [my|our|the] (PERSON|_) [-] [in] [-] [law] (says|thinks|said|reckons|feels|complains) [that] (it|that|this|everything) (looks|feels|seems) [too|so|very|rather|all|(a (bit|little|touch|tad))] _ (,|.|;) [so|and]", "", phrase.BothHold(phrase.StartsClause, wroughtNext)},
	{"[it|that|this|everything] [just|still] (looks|feels|seems) [all|so|very|quite|still|too|(a (bit|little|touch|tad))] _ [(from|in|at|against|beside|by) *] (.|!|;)", "", phrase.BothHold(lineStart, changesNext)},
	{"[still|(that is)|(it is)] [just|still] a (bit|touch|tad|little|shade|smidgen) _ [,] [that|this|it] (.|!|;)", "", phrase.BothHold(lineStart, changesNext)},
	{"[,|.|!] (jaysus|strewth|struth|crikey|blimey|begorra|och|ach|janey|crivvens|jeepers) (,|!)", ",", moreFollows},
	{"(ah|ach|och) [sure] go on [so|then|with you] [,]", "", phrase.BothHold(lineStart, moreFollows)},
}

// changesNext: an order to change something by some amount stands behind it.
func changesNext(before, after []scan.Atom) bool {
	return wroughtNext(before, after) && after[0].Text != "put"
}

// figureToldBefore: a figure was told before it, in digits or in words.
func figureToldBefore(before, after []scan.Atom) bool {
	if figureSaidBefore(before, after) {
		return true
	}
	for i := range before {
		if phrase.StartsLength(measure.Reader{Atoms: before}, i) {
			return true
		}
	}
	return false
}

// sameAmountNext: a figure or a size follows in the same sentence.
func sameAmountNext(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && !chunk.EndsSentence(after, i); i++ {
		if after[i].Kind == scan.Digits || phrase.StartsLength(measure.Reader{Atoms: after}, i) {
			return true
		}
	}
	return false
}

// lineStart: a line begins with it.
func lineStart(before, _ []scan.Atom) bool { return len(before) == 0 }

// ownWish: whoever speaks tells what he wants, or bids.
func ownWish(before, _ []scan.Atom) bool {
	led, _ := PastLead(before)
	return len(led) > 1 && (Wishers[led[0].Text] && WishVerbs[led[1].Text] || Bids[led[0].Text] && !asksOrBegs[led[0].Text])
}

var asksOrBegs = scan.WordSet("what how where which could can will would should must shall")

// bidsFirst: the line is an order.
func bidsFirst(before, _ []scan.Atom) bool {
	led, _ := PastLead(before)
	return len(led) > 1 && (wroughtVerbs[led[0].Text] && led[0].Text != "explain" && led[0].Text != "show" && led[0].Text != "tell" || ordersNumbers[led[0].Text])
}

var ordersNumbers = scan.WordSet("knock shave trim ditch bin pull cap limit lock pencil use stick hold")

// optionAheadOnly: a way out is called so behind it.
func optionAheadOnly(_, after []scan.Atom) bool {
	for len(after) > 0 && after[0].Text == "the" {
		after = after[1:]
	}
	return len(after) > 0 && (after[0].Text == "option" || after[0].Text == "choice")
}

// optionAhead: one of the ways out is named behind it.
func optionAhead(_, after []scan.Atom) bool {
	for len(after) > 0 && (after[0].Text == "the" || after[0].Text == "number") {
		after = after[1:]
	}
	return len(after) > 0 && (after[0].Text == "option" || after[0].Text == "choice" || after[0].Text == "way" || after[0].Text == "one" || after[0].Kind == scan.Digits || chunk.SpelledNumber(after[0].Text))
}
