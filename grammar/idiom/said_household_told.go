package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// householdTold are still more turns of people at home: why something must be so for those who live with it, what it may cost, what was
// bought for it, what looked wrong to them, and how they fetch their tape.
var householdTold = []phrase.Placed{
	// Who could come to harm.
	{Said: "[(i am|we are) [(so|terribly|rather|always)] (afraid|worried|scared|frightened) [that]] [(my|our)] [(little|youngest|small|smallest|oldest)] (he|she|they|girl|boy|girls|boys|KIN|toddler|baby|dog|cat|puppy|kitten|children|kids|twins|grandson|granddaughter|grandchildren) (could|can|may|might|will|would) [(so|too|quite|all too|very)] [easily] (get|be|become|end up|climb|crawl|squeeze|slip|wriggle|fall|run|escape) [(so|too)] [easily] [(stuck|caught|hurt|trapped|wedged|jammed|lost|out|through|loose|over|in)] [(in there|in between|in it|underneath|under it|there|in it)] [(again|easily|one day)] , so", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "[(my|our)] [(little|youngest|small|smallest|oldest)] (he|she|they|girl|boy|girls|boys|KIN|toddler|baby|dog|cat|puppy|kitten|children|kids|twins|grandson|granddaughter|grandchildren) (gets|get|got|is|are|was|were) [(always|once|already|so|too|quite|all too|very|forever)] [easily] (stuck|caught|hurt|trapped|wedged|jammed|climbing|crawling|squeezing|escaping) [(in there|in between|everywhere|in things|in everything|through everything)] [(again|easily|once|before)] , so", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	// What leads up to it.
	{Said: "see to it that", Plain: "make sure", Where: nil},
	{Said: "(are you able|would you be able|is it possible for you|would it be possible for you) to", Plain: "can you", Where: phrase.StartsClause},
	{Said: "[(my|our)] (i|we|PERSON and i) (have|had) [(now|finally|at last|at long last|just)] (agreed|settled|decided) on something (:|,|--)", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "[(my|our)] (i|we|PERSON) [(have|has|had)] [just] (went|gone|been|was|were|go) [(out|outside|over|back)] [there] (with (tape|level|ruler|tape measure)|to (measure|check)) [(this morning|today|yesterday|last night|this afternoon|again|earlier|just now)] [, [just] (before|after|in|during) the (rain|storm|snow|sun|breakfast|lunch|dinner|heat)] (, and|and|,|.|;)", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "[(my|our)] (circumstances|finances|savings|means|fortunes) (have|has) (improved|changed|recovered|grown) [(somewhat|a little|lately|since)] (, and|, so|and|,|.|;) [(so)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "!(exact|precise) !(length|lengths|height|width|size|sizes|position|positions|number|cost|price)", Plain: "$2", Where: nil},
	{Said: "(, would not you know it|, would you believe it|, wouldn 't you know it) ,", Plain: "", Where: behindSomethingNext},
	{Said: "i am curious why", Plain: "why", Where: phrase.StartsClause},
	{Said: "(i|we) (am|are|would be) [(rather|quite|very|just)] (curious|interested|eager) to (know|learn|hear) (why|how it is that)", Plain: "why", Where: phrase.StartsClause},
	{Said: "(;|,|.) (could|can|would|will) you (tell|explain to|explain it to|enlighten|tell it to) (me|us)", Plain: "", Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("why how what where which")), phrase.EndsLine)},
	{Said: "(for what|for which|by what) (reason|cause) (is|are|was|were) !(POST|(added POST)|(stiffeners)|(brackets)) (required|needed|necessary|called for)", Plain: "why are $1 needed", Where: atClauseEnd},
	{Said: "for what reason are !([(additional|extra|more)] POST) (required|needed|necessary|called for)", Plain: "why are $1 needed", Where: atClauseEnd},
	{Said: "changed (my|our) (mind|minds) about !(_ [_] [_] [_]) (entirely|altogether|completely|totally)", Plain: "changed my mind about $1", Where: phrase.EndsClause},
	{Said: "[(exact|precise)] !(length|lengths|size) for (every|each|all|all the) (RAIL|piece)", Plain: "$1 of each board", Where: nil},
	{Said: "[(and|,)] [and] [now] (i|we) (do not know|am not sure|are not sure|am wondering|wonder) (whether|if) ((i|we) (can|should|may|ought to)|to) (believe|trust) (that|it|him|her|them|this)", Plain: ", is that right", Where: phrase.BothHold(figureSaidBefore, phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("says said claims thinks told maintains reckons insists")), phrase.EndsLine))},
	{Said: "!(POST) [!(shall|should|must|will|is to)] (terminate|terminates)", Plain: "$1 ends", Where: phrase.AmountNext},
	// What they have come to, and what they would be glad of.
	{Where: phrase.BothHold(phrase.StartsClause, moreFollows), Said: `
		after (sleepless night|good night's sleep|night's sleep|weekend of thinking|night of thinking|lot of thinking) [,]
		(i|we) have [(now|finally|at last)] (come to|reached|arrived at) (conclusion|decision|view|opinion) that
		[oh] [,] how (silly|foolish|stupid|careless|clumsy) of (me|us) (,|.|!)
		(i|we) have [just] (mislaid|lost|misplaced|left behind) (my|our) (notes|paper|papers|glasses|list) (;|,|.) [(so|and)]`},
	{Said: "(i|we) have [(now|finally|at last)] (come round to|come around to|come down in favor of|made up my mind for|made up our minds for)", Plain: "we want", Where: phrase.BothHold(phrase.StartsClause, noQuestion)},
	{Said: "it would (suit|please) (me|us|PERSON|all of us) [(very|quite|rather)] [(well|nicely|much|best)] if", Plain: "it would be nice if", Where: phrase.BothHold(phrase.StartsClause, noQuestion)},
	{Said: "[(my|our)] (wife|husband|mother|father|daughter|son|sister|brother|partner) would be [(quite|so|very|really|only too)] (delighted|happy|content|pleased|thrilled) with", Plain: "we want", Where: phrase.BothHold(phraseLeads, noQuestion)},
	{Said: "would (very much|ever so much|really rather) !(like|love|prefer)", Plain: "would $1", Where: nil},
	{Said: "for the life of me", Where: phrase.SaidBeforeOf(scan.WordSet("not cannot"))},
	{Said: "please see that", Plain: "make sure", Where: phrase.BothHold(phrase.StartsClause, noQuestion)},
	{Where: phrase.BothHold(phrase.BothHold(behindSomething, noQuestion), phrase.EndsLine), Said: `
		[,] and who (am i|are we) to (argue|object|complain|quarrel|disagree)
		[,] if (it|that) (can|could) [(at all|possibly)] be (managed|arranged|done|helped)
		[,] if [(at all|that is|it is|at all humanly|humanly)] possible
		[,] to (keep|make) (things|it|life|matters) (simple|easy|easier|simpler) [for (me|us|PERSON) [at (saw|sawhorses|bench)]]`},
	{Said: "[,] (more 's the pity|worse luck|sad to say|i am sad to say|sorry to say)", Where: phrase.BothHold(phrase.BothHold(behindSomething, noneTold), phrase.EndsLine)},
	{Said: "(please|could i ask you to|may i ask you to|might i ask you to|i would ask you to) (bear in mind|keep in mind|take into account|be aware) that", Plain: "please", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "[,] (all told|all in|all in all)", Where: phrase.BothHold(moneyNamed, phrase.EndsLine)},
	// What it may cost.
	{Said: "(i|we) (can|could) [(just|now|perhaps|possibly|at most|well)] ((stretch|run|go) [up] to|(afford|spare) up to)", Plain: "we can spend at most", Where: phrase.BothHold(notSupposedBefore, moneyNext)},
	{Said: ", but [(that|this)] [(really|truly|honestly)] is [(really|truly|honestly|about)] [(my|our|the)] (limit|maximum|most (we|i) can (spend|afford|spare|manage)|all (we|i) (have|can spend|can afford)|end of it)", Where: phrase.BothHold(moneyNamed, phrase.EndsLine)},
	{Said: "(must|should|may|can|shall|ought|is|are) not [to] (exceed|go over|surpass|go beyond|run over|run above|come to more than)", Plain: "must be at most", Where: phrase.AmountNext},
	// What was bought, and what looked wrong.
	{Said: "(i|we) [have] [(already|just)] (bought|got|have|own|inherited|found|were given) [a] [(lovely|nice|big|good|fine|whole|great)] (pile|stack|load|bunch|lot|batch) of @ for RAIL [(last|this) (spring|summer|fall|autumn|winter|year|month|week)] , so [(let us|we will|i will|i want to|we want to)] [please] (use|use up|take|go with|work with) (those|them|these|that)", Plain: "the rails are $1", Where: phrase.StartsClause},
	{Said: "# RAIL (looked|seemed|felt|turned out|look|seem) [(rather|quite|bit|little|somewhat|far|very)] [too] (skimpy|sparse|bare|thin|heavy|crowded|busy|mean|stingy|few|many|much|low|high) [to (me|us|PERSON)] [in the end] [on reflection] , so [(we want|i want|let us have|i would like|we would like|please have|let us go with|make it)] #", Plain: "we want $2 rails", Where: phrase.StartsClause},
	{Said: "[(and|,)] (they|he|she|it|i|we) (was|were) [(ever so|very|most|quite|so|rather|terribly)] (apologetic|sorry|helpful|friendly|kind|rude|nice|polite|surprised|short) [about it]", Where: phrase.BothHold(amountSaid, phrase.BothHold(behindSomething, phrase.EndsLine))},
	{Said: "[(and|,)] (i|we) (did|have) [(even|indeed)] (measure|measured|check|checked) [it] (twice|carefully|three times|two times|more than once|again|over and over)", Where: phrase.BothHold(amountSaid, phrase.BothHold(behindSomething, phrase.EndsLine))},
	// From post to post.
	{Said: "(from|between) [(one|the one)] [(end|outer|outside)] POST (to|and) other [(one|POST|(end POST))]", Plain: "between the posts", Where: notSupposedBefore},
	{Said: "both (are|being|of them are) @", Plain: "both end posts are $1", Where: phrase.SaidBeforeOf(scan.WordSet("overall outside"))},
	{Said: "than [(those|the|all)] [the] other gaps", Plain: "than the gap", Where: nil},
	{Said: "(never|not|no) (wider|bigger|larger|greater|more) than # (nor|or|and never|and not) [ever] (narrower|smaller|tighter|less) than", Plain: "at most $1 and at least", Where: phrase.AmountNext},
	{Said: "(never|not|no) (narrower|smaller|tighter|less) than # (nor|or|and never|and not) [ever] (wider|bigger|larger|greater|more) than", Plain: "at least $1 and at most", Where: phrase.AmountNext},
	{Said: "(place|put|set|move|stand) [(added|extra|new|additional)] POST so that !(OPENING) (begins|starts)", Plain: "$1 begins", Where: phrase.AmountNext},
	{Said: "(find (us|me)|show (us|me)|work out|find) [a] way to (do|build|make) (this|it|that) with (the smallest number of|fewest|the fewest)", Plain: "use the fewest", Where: nil},
	{Said: "(EARTH|flower bed|flower beds|garden bed) (lies|is|sits|starts|comes|drops) # (lower|further down|deeper|down) (than|from|below) FLOOR", Plain: "the ground is $1 below the terrace", Where: nil},
	// What is taken, kept, and set right.
	{Said: "(i|we) [do] (like|love|prefer|fancy) (that|this) [one] [(best|very much|lot|better|most|most of all)] , so (i|we) (will|would like to|want to|shall) (have|take|go with|keep|choose|use) (it|that|that one)", Plain: "take that", Where: phrase.StartsClause},
	{Said: "[(my|our|her|his|their)] (drawing|plan|sheet|list|sketch|paper) is (wrong|mistaken|off|in error) (about|on|regarding|as to) !(_ [_] [_] [_] [_] [_]) (;|,|.|:) [please] (enter|put down|use|take|make it|it is|it should be|write)", Plain: "$1 is", Where: phrase.AmountNext},
	{Said: "what would (become of|happen to|change in) [(my|our)] (plan|wall|layout|design|plans) if", Plain: "what if", Where: phrase.StartsClause},
	{Said: "!(SELLER) (had|has|have) (nothing|none) [left] (but|except|other than)", Plain: "$1 only had", Where: phrase.AmountNext},
	{Said: "(i|we) [think] [(i|we)] [have] [just] (told|said|given|wrote|typed|told you) [you] (something|nonsense|rubbish) [(silly|wrong|foolish|stupid)] (;|,|.) [(so|and)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "(as it is|it is|because it is) such a (pretty|lovely|nice|good|fine|beautiful) (plan|drawing|design|layout|wall) [that (i|we) would hate to lose it] , so", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "(buy|order|get|take|throw in|throw|add|put) !(one|two|three|four|five|six) RAIL more than (needed|necessary|it takes|i need|we need|are needed|you think|is needed|called for) [on cart] [, [just] (in case|to be safe|for luck)]", Plain: "buy $1 spare boards", Where: phrase.StartsClause},
	{Said: ", together with (their|the) [total] (cost|price|sum|total)", Plain: ", and the total cost", Where: phrase.EndsLine},
}

// behindSomethingNext: it stands amid a sentence.
func behindSomethingNext(before, after []scan.Atom) bool { return len(before) > 1 && len(after) > 2 }

// noneTold: it is not said before that somebody told it, and nothing is asked.
func noneTold(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && noQuestion(before, after) && !phrase.SaidBeforeOf(scan.WordSet("told hear heard tells claims reckons"))(before, after)
}

// moneyNext: a sum of money stands behind it.
func moneyNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Text == "$" || after[1].Text == "dollars" || after[1].Text == "bucks")
}

// notSupposedBefore: nothing is supposed, asked or claimed right before it.
func notSupposedBefore(before, after []scan.Atom) bool {
	for _, a := range before {
		switch a.Text {
		case "if", "suppose", "what", "whether", "says", "said", "could", "wish", "not":
			return false
		}
	}
	return noQuestion(before, after)
}

// HangingHyphens leaves out the hyphens of what is only named at the end of a list: "10-, 12- and 16-foot boards".
func HangingHyphens(in []scan.Atom) []scan.Atom {
	out := make([]scan.Atom, 0, len(in))
	for i, a := range in {
		if a.Text == "-" && a.Kind == scan.Sign && i > 0 && i+1 < len(in) && (in[i-1].Kind == scan.Digits || chunk.SpelledNumber(in[i-1].Text)) && (in[i+1].Text == "," || in[i+1].Text == "and" || in[i+1].Text == "or") {
			continue
		}
		out = append(out, a)
	}
	return out
}
