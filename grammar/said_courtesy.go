package grammar

// courtesyPhrases are phrases of courteous people who speak in full sentences: what leads up to a wish and what is only added to it, the
// wishes of others in the house, how a slip is set right politely, and how a shop, a quote and an old wall are spoken of.
var courtesyPhrases = []placedPhrase{
	// What leads up to a wish.
	{where: bothHold(phraseStartsClause, moreFollows), said: `
		if you would be (so|very|most|quite) (good|kind|helpful) [(as to|,)]
		after [(some|much|long|careful|due|good deal of|lot of|great deal of|bit of|lots of|plenty of|further|several days of|weeks of|days of|quite some)] [(careful|long|serious|heated|more)] (thought|consideration|deliberation|reflection|discussion|debate|hesitation|back and forth|thinking|arguing|talk) [(over breakfast|over supper|with PERSON|at home)] [,]
		(having|we having|i having) [now] (slept on it|thought about it|thought it over|talked it over|given it some thought|given it much thought|weighed it up) [,]
		(i am|we are) (pleased|happy|glad|delighted) to (say|report|tell you) [that]`},
	{said: "(might|may|could|can) (i|we) [(please|perhaps|possibly|kindly)] be (shown|allowed to see|permitted to see|given a look at|allowed a look at)", plain: "please show me", where: phraseStartsClause},
	{said: "(might|may|could|can) (i|we) [(please|perhaps|possibly|kindly)] be (told|informed|allowed to know)", plain: "please tell me", where: phraseStartsClause},
	{said: "(might|may|could|can) (i|we) [(please|perhaps|possibly|kindly)] be (given|handed|provided with|furnished with) !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))", plain: "please show me $1", where: phraseStartsClause},
	{said: `
		(would|will|could|might) you be so (good|kind) as to (let (me|us) (have|see)|furnish [(me|us)] [with]|provide [(me|us)] [with]|supply [(me|us)] [with]) [a] !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))
		(let (me|us) (have|see)|furnish (me|us) with|provide (me|us) with|supply (me|us) with) [a] !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))
		(i|we) (would|should) be [(so|very|really|most|ever so|much)] (grateful|obliged|thankful|glad|happy) (for|of|to have|to see) [a] !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))`, plain: "please show me $1", where: phraseStartsClause},
	{said: `
		it is [(very|really|quite|most|terribly|so)] (important|essential|vital|crucial) [(to|for) (me|us|all of us|[my] (wife|husband|daughter|mother|son))] that
		it is (desired|desirable|my wish|our wish|my desire|our desire|requested|my hope|our hope) that`, plain: "i want that", where: bothHold(phraseStartsClause, noQuestion)},
	{said: `
		it would be [(quite|really|most|truly|simply|absolutely|just|rather)] (splendid|wonderful|marvelous|marvellous|lovely|grand|delightful|fantastic|super|brilliant|terrific|ideal|perfect|great|most welcome) if
		(i|we) (would|should) be [(so|very|really|most|ever so|much|only too)] (grateful|obliged|thankful|glad|pleased) if (i|we) (could|might) [(possibly|just)]
		(i|we) (would|should) be [(so|very|really|most|ever so|much|only too)] (happy|content|delighted) if (i|we) (could|might) [(possibly|just)]`, plain: "it would be nice if we could", where: bothHold(phraseStartsClause, bothHold(noQuestion, fewestNext))},
	{said: "it would be [(quite|really|most|truly|simply|absolutely|just|rather)] (splendid|wonderful|marvelous|marvellous|grand|delightful|fantastic|super|brilliant|terrific|ideal|perfect|great|most welcome) if", plain: "it would be nice if", where: bothHold(phraseStartsClause, noQuestion)},
	{said: "!((number|amount|quantity) of (RAIL|POST|BRACKET|STIFF|screws|anchors)) (required|needed|necessary|called for|to be bought)", plain: "$1", where: atClauseEnd},
	{said: "some # !(high|tall|wide|long|apart|across|in height|in width|in length)", plain: "about $1 $2", where: nil},
	// What is only added.
	{where: bothHold(behindSomething, phraseEndsClause), said: `
		[,] if (my|our) (eyes|memory|ears|glasses|reading glasses|old eyes|tired eyes|spectacles) (do|does|did) not (deceive|fail|mistake|fool|trick|betray) [(me|us)]
		[,] if [(my|our)] (eyes|memory|ears|glasses|reading glasses|old eyes|spectacles) (serve|serves|served|can be trusted|are to be trusted|is to be trusted) [(me|us)] [(right|well|correctly)]
		[,] unless (my|our) (eyes|memory|ears|glasses|reading glasses|old eyes|tired eyes|spectacles) (deceive|deceives|fail|fails|fool|trick|betray) (me|us)`},
	{where: bothHold(amountSaid, phraseEndsLine), said: `
		, which (i|we|PERSON) [(had|have|has)] never [(even|really|once)] (noticed|seen|spotted|known|realized|observed|suspected|guessed) [before] [((until|till) (now|today|this morning|yesterday|this week))]
		, which (i|we|PERSON) (had|have|has|did) not [(even|really|once)] (noticed|seen|spotted|known|realized|observed|suspected|guessed|notice|know|realize) [before] [((until|till|before) (now|today|this morning|yesterday|this week))]
		, which (came|comes) as [(quite|rather|something of)] [(some|bit of)] (surprise|shock|relief|disappointment) [to (me|us|PERSON|all of us)]
		, which (surprised|puzzled|annoyed|pleased|delighted|startled|amused|saddened) (me|us|PERSON|all of us)`},
	{where: bothHold(bothHold(behindSomething, noDoubtBefore), phraseEndsLine), said: `
		(;|,|.) [(and|as|because|since)] (i|we|PERSON) [(just|simply|only|do|always|rather)] (find|finds|think|thinks|consider) (it|that|this) [(so much|much|rather|so|far)] (tidier|neater|prettier|nicer|handier|handsomer|smarter|cleaner|tidy|neat|pretty|handsome|more pleasing|more elegant|safer|more convenient|better looking) [(that way|there|this way|like that|to look at)]
		(;|,|.) [(and|as|because|since)] (it|that|this) [(just|simply|only|always)] (looks|seems|is) [(so much|much|rather|so|far)] (tidier|neater|prettier|nicer|handier|handsomer|smarter|cleaner|tidy|neat|pretty|handsome|more pleasing|more elegant|safer|more convenient) [(that way|there|this way|like that|to look at)]`},
	{where: bothHold(phraseEndsLine, whatToDo), said: `
		[,] when (i|we) [(finally|do|actually)] (begin|start|get started|get going|get to it|get to work|set to work|get down to it|make a start|set out) [(work|building|with it|on it)] [((on|this|next) [(monday|tuesday|wednesday|thursday|friday|saturday|sunday|week|weekend|month|spring|summer)] [(morning|afternoon|evening)]|tomorrow [(morning|afternoon|evening)])]
		[,] once (i|we) [(finally|do|actually)] (begin|start|get started|get going|get to it|get to work|set to work|get down to it|make a start|set out) [(work|building|with it|on it)] [((on|this|next) [(monday|tuesday|wednesday|thursday|friday|saturday|sunday|week|weekend|month|spring|summer)] [(morning|afternoon|evening)]|tomorrow [(morning|afternoon|evening)])]
		[(on|this|next)] (monday|tuesday|wednesday|thursday|friday|saturday|sunday) [(morning|afternoon|evening)] [, when PERSON (comes|come|is here|arrives) [(over|round)] [to help [(me|us|out)]]]`},
	// A slip set right.
	{said: `
		(,|.|;|-) [(oh|ah|good heavens|dear me|oh dear|goodness|goodness me)] [,] [(no|dear me)] [,] [do] (forgive|pardon|excuse) me [,] [(no|oh)] [,] [(i meant|i meant to say|that is)]
		(,|.|;|-) (dear me|oh dear|goodness|goodness me|good heavens) [,] no [,]`, plain: ", no ,", where: bothHold(figureSaid, amountNext)},
	{said: `
		(i|we) (was|were|have been) [(quite|completely|sadly)] (mistaken|wrong|in error|off) about !(_ [_] [_] [_] [_]) (:|,|;|.|--) [(and|as)] (it|that|they|there) (is|are|should|ought|has|have|needs|need|must) [to] [be]
		(i|we) [have] [just] (misspoke|misspoken|erred|slipped up|slipped) (about|on|over|regarding) !(_ [_] [_] [_] [_]) (:|,|;|.|--) [(and|as)] (it|that|they|there) (is|are|should|ought|has|have|needs|need|must) [to] [be]`, plain: "$1 is", where: bothHold(phraseStartsClause, amountNext)},
	// What others in the house wish.
	{said: "!([(my|our)] (wife|husband|mother|father|daughter|son|sister|brother|partner|daughters|sons|parents|mother - in - law|father - in - law|son - in - law|daughter - in - law)) [(dearly|very much|really|rather)] (wishes|wish)", plain: "$1 wants", where: bothHold(noQuestion, toNext)},
	{said: "!([(my|our)] (wife|husband|mother|father|daughter|son|sister|brother|partner|mother - in - law|father - in - law|son - in - law|daughter - in - law)) (is|was) (hoping for|keen on|set on|after)", plain: "we want", where: bothHold(noQuestion, phraseLeads)},
	// An old wall, built otherwise.
	{said: "[(my|our)] PERSON (built|made|had|put up|set|wanted|left) [(his|hers|theirs|their|old|last|first|other|wall)] (his|hers|theirs|one|wall|old one|last one|first one|other one|one before) [(far|much|rather|quite|way|bit)] [too] (low|high|tall|short|narrow|wide|flimsy|crooked) [,] [(bless (him|her|them)|god bless (him|her|them)|poor man|poor soul)] [,] but", where: bothHold(phraseStartsClause, moreFollows)},
	{said: "(i|we) (want|would like|should like|would love|would prefer) (mine|ours) to be # !(high|tall)", plain: "the wall is to be $1 $2", where: nil},
	// A quote.
	{said: "(i|we) (was|were) (given|offered|sent|handed) [a] [(written|rough)] (quote|price|estimate|quotation|offer) of", plain: "i was quoted", where: amountNext},
	{said: `
		does (that|this|it) (agree|tally|square|accord|match|fit|chime|match up|line up) [with] (what you (find|get|have|make|reckon|make of it|come up with)|yours|your (figures|figure|numbers|sums|total|reckoning))
		do you (get|find|make it|reckon|come to) the same [(figure|total|sum|amount)]
		is that what you (find|get|have|make it|reckon|come up with)`, plain: "is that right", where: bothHold(figureSaidBefore, phraseEndsLine)},
	// A shop that calls, and what a village has.
	{said: "!(SELLER) [just] (rang|telephoned|phoned|called|wrote|rang up|called up|emailed|texted) [(me|us|back)] [(today|this morning|earlier|yesterday)] (to (say|tell (me|us)|let (me|us) know)|and (said|told (me|us)|let (me|us) know)|saying) [that] they (are|have)", plain: "they have", where: soldOutNext},
	{said: "in (my|our|this) (village|town|neighborhood|neighbourhood|area|county|city|valley|corner of the world|part of the world) [(,)] (one|you|we|i|people|they) (can|could) [only] (buy|get|find|have|purchase|obtain)", plain: "they sell", where: phraseStartsClause},
	// A board that is up already, what was told, and what is taken for true.
	{said: "[(my|our)] (i|we|PERSON and i) (have|had) [already] (put up|fixed|mounted|hung|fastened|installed|screwed on|attached) !(first|lowest|bottom) RAIL [already] (,|;|.) [and] its top [edge] (is|sits|lies|stands|comes) [at]", plain: "the $1 board is already up , its top is at", where: amountNext},
	{said: "what have you [got] (written|noted|jotted|taken|got|put|marked) down (from|for|of|about|by) (me|us) [(so far|up to now|until now|thus far|already|by now)]", plain: "recap", where: atClauseEnd},
	{said: "(please|kindly) (assume|presume|suppose|reckon with|allow) [for] [a] !((saw kerf|kerf|saw cut|blade width) of)", plain: "use a $1", where: bothHold(phraseStartsClause, amountNext)},
	{said: "and [please] (assume|presume|suppose|reckon with|allow) [for] [a] !((saw kerf|kerf|saw cut|blade width) of)", plain: "and use a $1", where: bothHold(saidBeforeOf(wordSet("please kindly")), amountNext)},
	// What is worked in.
	{said: "[(my|our)] (i|we|PERSON and i) (have|had) [(both|all)] [only] ever (worked|measured|thought|built|reckoned|used) [(in|with)] METRIC [(at home|at school|here)]", plain: "we only work in millimeters", where: phraseStartsClause},
	{said: "[(my|our)] (i|we|PERSON and i) (have|had) [(both|all)] [only] ever (worked|measured|thought|built|reckoned|used) [(in|with)] CUSTOMARY [(at home|at school|here)]", plain: "we only work in inches", where: phraseStartsClause},
	{said: ", so [please] (use|take|go by|stick to|keep to) (those|them|these|that|it|metric system) [(throughout|from here on|from now on|here|for everything|in everything)]", where: bothHold(saidBeforeOf(wordSet("millimeters inches")), func(before, after []atom) bool {
		return phraseEndsLine(before, after) && !figured(before) // "he says two inches, so use that" takes up the figure
	})},
	// Boards and gaps that come to a height.
	{said: `
		# RAIL (at|with|and) GAP of # (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		# RAIL (at|with|and) # GAP (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		# RAIL , # apart , (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		# RAIL # apart (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #`, plain: "$1 rails with gaps of $2 come to $3 in height", where: notInverted},
	{said: `
		(do|does|will|would|can|could|might) # RAIL (at|with|and) GAP of # (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		(do|does|will|would|can|could|might) # RAIL (at|with|and) # GAP (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		(do|does|will|would|can|could|might) # RAIL , # apart , (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		(do|does|will|would|can|could|might) # RAIL # apart (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #`, plain: "check whether $1 rails with gaps of $2 come to $3 in height", where: phraseStartsClause},
	{said: "(manage|make do|get along|live|get by) with !(as few|the fewest|as little)", plain: "use $1", where: nil},
	{said: "would (dearly|very dearly) !(like|love)", plain: "would $1", where: nil},
	{said: "do please", plain: "please", where: phraseStartsClause},
	{said: "so do please", plain: "so please", where: nil},
	// A limit that is tested.
	{said: "they [(start|begin)] [to] (touch|bump|collide|meet) [(one another|each other)] [(once|when|if|as soon as)] [GAP] [(is|gets|falls|drops|goes)] [to] (under|below|less than)", plain: "the brackets touch under", where: bothHold(amountNext, saidBeforeOf(wordSet("brackets")))},
	{said: "brackets [(start|begin)] [to] (touch|bump|collide|meet) [(one another|each other)] once [the] GAP (is|gets|falls|drops|goes) [to] (under|below|less than)", plain: "brackets touch under", where: amountNext},
}

// fewestNext: few of something is wished for behind it.
func fewestNext(_, after []atom) bool {
	for _, a := range after[:min(len(after), 6)] {
		if a.text == "fewest" || a.text == "few" || a.text == "least" || a.text == "little" {
			return true
		}
	}
	return false
}

// notInverted: no verb of a question stands before it.
func notInverted(before, _ []atom) bool {
	switch lastOf(before, 1) {
	case "do", "does", "did", "will", "would", "can", "could", "might", "should":
		return false
	}
	return true
}

// amountSaid: a figure was said before, and nothing is asked.
func amountSaid(before, after []atom) bool {
	return figureIn(before) && (len(after) == 0 || after[0].text != "?")
}

// figureSaidBefore: a figure was said before it, in whichever clause.
func figureSaidBefore(before, _ []atom) bool { return figureIn(before) }

// noDoubtBefore: nothing is asked, denied, claimed or supposed before it.
func noDoubtBefore(before, _ []atom) bool {
	for _, a := range before {
		switch a.text {
		case "?", "if", "what", "why", "how", "says", "said", "thinks", "suppose", "not", "no", "never", "whether", "used":
			return false
		}
	}
	return true
}

// whatToDo: what is to be done is asked before it.
func whatToDo(before, _ []atom) bool {
	for _, a := range before {
		switch a.text {
		case "what", "where", "how", "which", "tell", "show", "steps":
			return true
		}
	}
	return false
}

// toNext: "to have", or what is to be so, stands behind it.
func toNext(_, after []atom) bool {
	for _, a := range after[:min(len(after), 6)] {
		if a.text == "to" {
			return true
		}
	}
	return len(after) > 0 && after[0].text == "for"
}

// phraseLeads: the line begins with it.
func phraseLeads(before, _ []atom) bool { return len(before) == 0 }

// soldOutNext: the shop has no more of what is told behind it.
func soldOutNext(_, after []atom) bool {
	if len(after) < 3 {
		return false
	}
	w := after[0].text + " " + after[1].text
	return w == "out of" || w == "run out" || w == "sold out" || after[0].text == "no" || w == "none left"
}
