package grammar

// householdTold are still more turns of people at home: why something must be so for those who live with it, what it may cost, what was
// bought for it, what looked wrong to them, and how they fetch their tape.
var householdTold = []placedPhrase{
	// Who could come to harm.
	{said: "[(i am|we are) [(so|terribly|rather|always)] (afraid|worried|scared|frightened) [that]] [(my|our)] [(little|youngest|small|smallest|oldest)] (he|she|they|girl|boy|girls|boys|KIN|toddler|baby|dog|cat|puppy|kitten|children|kids|twins|grandson|granddaughter|grandchildren) (could|can|may|might|will|would) [(so|too|quite|all too|very)] [easily] (get|be|become|end up|climb|crawl|squeeze|slip|wriggle|fall|run|escape) [(so|too)] [easily] [(stuck|caught|hurt|trapped|wedged|jammed|lost|out|through|loose|over|in)] [(in there|in between|in it|underneath|under it|there|in it)] [(again|easily|one day)] , so", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "[(my|our)] [(little|youngest|small|smallest|oldest)] (he|she|they|girl|boy|girls|boys|KIN|toddler|baby|dog|cat|puppy|kitten|children|kids|twins|grandson|granddaughter|grandchildren) (gets|get|got|is|are|was|were) [(always|once|already|so|too|quite|all too|very|forever)] [easily] (stuck|caught|hurt|trapped|wedged|jammed|climbing|crawling|squeezing|escaping) [(in there|in between|everywhere|in things|in everything|through everything)] [(again|easily|once|before)] , so", where: bothHold(phraseStartsClause, moreFollows)},
	// What leads up to it.
	{said: "see to it that", plain: "make sure", where: nil},
	{said: "(are you able|would you be able|is it possible for you|would it be possible for you) to", plain: "can you", where: phraseStartsClause},
	{said: "[(my|our)] (i|we|PERSON and i) (have|had) [(now|finally|at last|at long last|just)] (agreed|settled|decided) on something (:|,|--)", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "[(my|our)] (i|we|PERSON) [(have|has|had)] [just] (went|gone|been|was|were|go) [(out|outside|over|back)] [there] (with (tape|level|ruler|tape measure)|to (measure|check)) [(this morning|today|yesterday|last night|this afternoon|again|earlier|just now)] [, [just] (before|after|in|during) the (rain|storm|snow|sun|breakfast|lunch|dinner|heat)] (, and|and|,|.|;)", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "[(my|our)] (circumstances|finances|savings|means|fortunes) (have|has) (improved|changed|recovered|grown) [(somewhat|a little|lately|since)] (, and|, so|and|,|.|;) [(so)]", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "!(exact|precise) !(length|lengths|height|width|size|sizes|position|positions|number|cost|price)", plain: "$2", where: nil},
	{said: "(, would not you know it|, would you believe it|, wouldn 't you know it) ,", plain: "", where: behindSomethingNext},
	{said: "i am curious why", plain: "why", where: phraseStartsClause},
	{said: "(i|we) (am|are|would be) [(rather|quite|very|just)] (curious|interested|eager) to (know|learn|hear) (why|how it is that)", plain: "why", where: phraseStartsClause},
	{said: "(;|,|.) (could|can|would|will) you (tell|explain to|explain it to|enlighten|tell it to) (me|us)", plain: "", where: bothHold(saidBeforeOf(wordSet("why how what where which")), phraseEndsLine)},
	{said: "(for what|for which|by what) (reason|cause) (is|are|was|were) !(POST|(added POST)|(stiffeners)|(brackets)) (required|needed|necessary|called for)", plain: "why are $1 needed", where: atClauseEnd},
	{said: "for what reason are !([(additional|extra|more)] POST) (required|needed|necessary|called for)", plain: "why are $1 needed", where: atClauseEnd},
	{said: "changed (my|our) (mind|minds) about !(_ [_] [_] [_]) (entirely|altogether|completely|totally)", plain: "changed my mind about $1", where: phraseEndsClause},
	{said: "[(exact|precise)] !(length|lengths|size) for (every|each|all|all the) (RAIL|piece)", plain: "$1 of each board", where: nil},
	{said: "[(and|,)] [and] [now] (i|we) (do not know|am not sure|are not sure|am wondering|wonder) (whether|if) ((i|we) (can|should|may|ought to)|to) (believe|trust) (that|it|him|her|them|this)", plain: ", is that right", where: bothHold(figureSaidBefore, bothHold(saidBeforeOf(wordSet("says said claims thinks told maintains reckons insists")), phraseEndsLine))},
	{said: "!(POST) [!(shall|should|must|will|is to)] (terminate|terminates)", plain: "$1 ends", where: amountNext},
	// What they have come to, and what they would be glad of.
	{where: bothHold(phraseStartsClause, moreFollows), said: `
		after (sleepless night|good night's sleep|night's sleep|weekend of thinking|night of thinking|lot of thinking) [,]
		(i|we) have [(now|finally|at last)] (come to|reached|arrived at) (conclusion|decision|view|opinion) that
		[oh] [,] how (silly|foolish|stupid|careless|clumsy) of (me|us) (,|.|!)
		(i|we) have [just] (mislaid|lost|misplaced|left behind) (my|our) (notes|paper|papers|glasses|list) (;|,|.) [(so|and)]`},
	{said: "(i|we) have [(now|finally|at last)] (come round to|come around to|come down in favor of|made up my mind for|made up our minds for)", plain: "we want", where: bothHold(phraseStartsClause, noQuestion)},
	{said: "it would (suit|please) (me|us|PERSON|all of us) [(very|quite|rather)] [(well|nicely|much|best)] if", plain: "it would be nice if", where: bothHold(phraseStartsClause, noQuestion)},
	{said: "[(my|our)] (wife|husband|mother|father|daughter|son|sister|brother|partner) would be [(quite|so|very|really|only too)] (delighted|happy|content|pleased|thrilled) with", plain: "we want", where: bothHold(phraseLeads, noQuestion)},
	{said: "would (very much|ever so much|really rather) !(like|love|prefer)", plain: "would $1", where: nil},
	{said: "for the life of me", where: saidBeforeOf(wordSet("not cannot"))},
	{said: "please see that", plain: "make sure", where: bothHold(phraseStartsClause, noQuestion)},
	{where: bothHold(bothHold(behindSomething, noQuestion), phraseEndsLine), said: `
		[,] and who (am i|are we) to (argue|object|complain|quarrel|disagree)
		[,] if (it|that) (can|could) [(at all|possibly)] be (managed|arranged|done|helped)
		[,] if [(at all|that is|it is|at all humanly|humanly)] possible
		[,] to (keep|make) (things|it|life|matters) (simple|easy|easier|simpler) [for (me|us|PERSON) [at (saw|sawhorses|bench)]]`},
	{said: "[,] (more 's the pity|worse luck|sad to say|i am sad to say|sorry to say)", where: bothHold(bothHold(behindSomething, noneTold), phraseEndsLine)},
	{said: "(please|could i ask you to|may i ask you to|might i ask you to|i would ask you to) (bear in mind|keep in mind|take into account|be aware) that", plain: "please", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "[,] (all told|all in|all in all)", where: bothHold(moneyNamed, phraseEndsLine)},
	// What it may cost.
	{said: "(i|we) (can|could) [(just|now|perhaps|possibly|at most|well)] ((stretch|run|go) [up] to|(afford|spare) up to)", plain: "we can spend at most", where: bothHold(notSupposedBefore, moneyNext)},
	{said: ", but [(that|this)] [(really|truly|honestly)] is [(really|truly|honestly|about)] [(my|our|the)] (limit|maximum|most (we|i) can (spend|afford|spare|manage)|all (we|i) (have|can spend|can afford)|end of it)", where: bothHold(moneyNamed, phraseEndsLine)},
	{said: "(must|should|may|can|shall|ought|is|are) not [to] (exceed|go over|surpass|go beyond|run over|run above|come to more than)", plain: "must be at most", where: amountNext},
	// What was bought, and what looked wrong.
	{said: "(i|we) [have] [(already|just)] (bought|got|have|own|inherited|found|were given) [a] [(lovely|nice|big|good|fine|whole|great)] (pile|stack|load|bunch|lot|batch) of @ for RAIL [(last|this) (spring|summer|fall|autumn|winter|year|month|week)] , so [(let us|we will|i will|i want to|we want to)] [please] (use|use up|take|go with|work with) (those|them|these|that)", plain: "the rails are $1", where: phraseStartsClause},
	{said: "# RAIL (looked|seemed|felt|turned out|look|seem) [(rather|quite|bit|little|somewhat|far|very)] [too] (skimpy|sparse|bare|thin|heavy|crowded|busy|mean|stingy|few|many|much|low|high) [to (me|us|PERSON)] [in the end] [on reflection] , so [(we want|i want|let us have|i would like|we would like|please have|let us go with|make it)] #", plain: "we want $2 rails", where: phraseStartsClause},
	{said: "[(and|,)] (they|he|she|it|i|we) (was|were) [(ever so|very|most|quite|so|rather|terribly)] (apologetic|sorry|helpful|friendly|kind|rude|nice|polite|surprised|short) [about it]", where: bothHold(amountSaid, bothHold(behindSomething, phraseEndsLine))},
	{said: "[(and|,)] (i|we) (did|have) [(even|indeed)] (measure|measured|check|checked) [it] (twice|carefully|three times|two times|more than once|again|over and over)", where: bothHold(amountSaid, bothHold(behindSomething, phraseEndsLine))},
	// From post to post.
	{said: "(from|between) [(one|the one)] [(end|outer|outside)] POST (to|and) other [(one|POST|(end POST))]", plain: "between the posts", where: notSupposedBefore},
	{said: "both (are|being|of them are) @", plain: "both end posts are $1", where: saidBeforeOf(wordSet("overall outside"))},
	{said: "than [(those|the|all)] [the] other gaps", plain: "than the gap", where: nil},
	{said: "(never|not|no) (wider|bigger|larger|greater|more) than # (nor|or|and never|and not) [ever] (narrower|smaller|tighter|less) than", plain: "at most $1 and at least", where: amountNext},
	{said: "(never|not|no) (narrower|smaller|tighter|less) than # (nor|or|and never|and not) [ever] (wider|bigger|larger|greater|more) than", plain: "at least $1 and at most", where: amountNext},
	{said: "(place|put|set|move|stand) [(added|extra|new|additional)] POST so that !(OPENING) (begins|starts)", plain: "$1 begins", where: amountNext},
	{said: "(find (us|me)|show (us|me)|work out|find) [a] way to (do|build|make) (this|it|that) with (the smallest number of|fewest|the fewest)", plain: "use the fewest", where: nil},
	{said: "(EARTH|flower bed|flower beds|garden bed) (lies|is|sits|starts|comes|drops) # (lower|further down|deeper|down) (than|from|below) FLOOR", plain: "the ground is $1 below the terrace", where: nil},
	// What is taken, kept, and set right.
	{said: "(i|we) [do] (like|love|prefer|fancy) (that|this) [one] [(best|very much|lot|better|most|most of all)] , so (i|we) (will|would like to|want to|shall) (have|take|go with|keep|choose|use) (it|that|that one)", plain: "take that", where: phraseStartsClause},
	{said: "[(my|our|her|his|their)] (drawing|plan|sheet|list|sketch|paper) is (wrong|mistaken|off|in error) (about|on|regarding|as to) !(_ [_] [_] [_] [_] [_]) (;|,|.|:) [please] (enter|put down|use|take|make it|it is|it should be|write)", plain: "$1 is", where: amountNext},
	{said: "what would (become of|happen to|change in) [(my|our)] (plan|wall|layout|design|plans) if", plain: "what if", where: phraseStartsClause},
	{said: "!(SELLER) (had|has|have) (nothing|none) [left] (but|except|other than)", plain: "$1 only had", where: amountNext},
	{said: "(i|we) [think] [(i|we)] [have] [just] (told|said|given|wrote|typed|told you) [you] (something|nonsense|rubbish) [(silly|wrong|foolish|stupid)] (;|,|.) [(so|and)]", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "(as it is|it is|because it is) such a (pretty|lovely|nice|good|fine|beautiful) (plan|drawing|design|layout|wall) [that (i|we) would hate to lose it] , so", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "(buy|order|get|take|throw in|throw|add|put) !(one|two|three|four|five|six) RAIL more than (needed|necessary|it takes|i need|we need|are needed|you think|is needed|called for) [on cart] [, [just] (in case|to be safe|for luck)]", plain: "buy $1 spare boards", where: phraseStartsClause},
	{said: ", together with (their|the) [total] (cost|price|sum|total)", plain: ", and the total cost", where: phraseEndsLine},
}

// behindSomethingNext: it stands amid a sentence.
func behindSomethingNext(before, after []atom) bool { return len(before) > 1 && len(after) > 2 }

// noneTold: it is not said before that somebody told it, and nothing is asked.
func noneTold(before, after []atom) bool {
	return noDoubtBefore(before, after) && noQuestion(before, after) && !saidBeforeOf(wordSet("told hear heard tells claims reckons"))(before, after)
}

// moneyNext: a sum of money stands behind it.
func moneyNext(_, after []atom) bool {
	return len(after) > 1 && (after[0].text == "$" || after[1].text == "dollars" || after[1].text == "bucks")
}

// notSupposedBefore: nothing is supposed, asked or claimed right before it.
func notSupposedBefore(before, after []atom) bool {
	for _, a := range before {
		switch a.text {
		case "if", "suppose", "what", "whether", "says", "said", "could", "wish", "not":
			return false
		}
	}
	return noQuestion(before, after)
}

// hangingHyphens leaves out the hyphens of what is only named at the end of a list: "10-, 12- and 16-foot boards".
func hangingHyphens(in []atom) []atom {
	out := make([]atom, 0, len(in))
	for i, a := range in {
		if a.text == "-" && a.kind == aSign && i > 0 && i+1 < len(in) && (in[i-1].kind == aDigits || spelledNumber(in[i-1].text)) && (in[i+1].text == "," || in[i+1].text == "and" || in[i+1].text == "or") {
			continue
		}
		out = append(out, a)
	}
	return out
}
