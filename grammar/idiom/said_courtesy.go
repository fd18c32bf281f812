package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// courtesyPhrases are phrases of courteous people who speak in full sentences: what leads up to a wish and what is only added to it, the
// wishes of others in the house, how a slip is set right politely, and how a shop, a quote and an old wall are spoken of.
var courtesyPhrases = []phrase.Placed{
	// What leads up to a wish.
	{Where: phrase.BothHold(phrase.StartsClause, moreFollows), Said: `
		if you would be (so|very|most|quite) (good|kind|helpful) [(as to|,)]
		after [(some|much|long|careful|due|good deal of|lot of|great deal of|bit of|lots of|plenty of|further|several days of|weeks of|days of|quite some)] [(careful|long|serious|heated|more)] (thought|consideration|deliberation|reflection|discussion|debate|hesitation|back and forth|thinking|arguing|talk) [(over breakfast|over supper|with PERSON|at home)] [,]
		(having|we having|i having) [now] (slept on it|thought about it|thought it over|talked it over|given it some thought|given it much thought|weighed it up) [,]
		(i am|we are) (pleased|happy|glad|delighted) to (say|report|tell you) [that]`},
	{Said: "(might|may|could|can) (i|we) [(please|perhaps|possibly|kindly)] be (shown|allowed to see|permitted to see|given a look at|allowed a look at)", Plain: "please show me", Where: phrase.StartsClause},
	{Said: "(might|may|could|can) (i|we) [(please|perhaps|possibly|kindly)] be (told|informed|allowed to know)", Plain: "please tell me", Where: phrase.StartsClause},
	{Said: "(might|may|could|can) (i|we) [(please|perhaps|possibly|kindly)] be (given|handed|provided with|furnished with) !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))", Plain: "please show me $1", Where: phrase.StartsClause},
	{Said: `
		(would|will|could|might) you be so (good|kind) as to (let (me|us) (have|see)|furnish [(me|us)] [with]|provide [(me|us)] [with]|supply [(me|us)] [with]) [a] !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))
		(let (me|us) (have|see)|furnish (me|us) with|provide (me|us) with|supply (me|us) with) [a] !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))
		(i|we) (would|should) be [(so|very|really|most|ever so|much)] (grateful|obliged|thankful|glad|happy) (for|of|to have|to see) [a] !(drawing|sketch|picture|elevation|shopping list|cutting list|cut list|material list|materials list|list of cuts|steps|(list of (what to buy|what to purchase|what to get|things to buy|everything to buy|materials|materials to be bought|materials to be purchased))|((drawing|sketch|picture) of (result|wall|it)))`, Plain: "please show me $1", Where: phrase.StartsClause},
	{Said: `
		it is [(very|really|quite|most|terribly|so)] (important|essential|vital|crucial) [(to|for) (me|us|all of us|[my] (wife|husband|daughter|mother|son))] that
		it is (desired|desirable|my wish|our wish|my desire|our desire|requested|my hope|our hope) that`, Plain: "i want that", Where: phrase.BothHold(phrase.StartsClause, noQuestion)},
	{Said: `
		it would be [(quite|really|most|truly|simply|absolutely|just|rather)] (splendid|wonderful|marvelous|marvellous|lovely|grand|delightful|fantastic|super|brilliant|terrific|ideal|perfect|great|most welcome) if
		(i|we) (would|should) be [(so|very|really|most|ever so|much|only too)] (grateful|obliged|thankful|glad|pleased) if (i|we) (could|might) [(possibly|just)]
		(i|we) (would|should) be [(so|very|really|most|ever so|much|only too)] (happy|content|delighted) if (i|we) (could|might) [(possibly|just)]`, Plain: "it would be nice if we could", Where: phrase.BothHold(phrase.StartsClause, phrase.BothHold(noQuestion, fewestNext))},
	{Said: "(i|we) would [(really|so|very much|dearly|just)] (love|like|adore) it [(so much|very much|lot)] if", Plain: "it would be nice if", Where: phrase.BothHold(phrase.StartsClause, noQuestion)},
	{Said: "it would be [(quite|really|most|truly|simply|absolutely|just|rather)] (splendid|wonderful|marvelous|marvellous|grand|delightful|fantastic|super|brilliant|terrific|ideal|perfect|great|most welcome) if", Plain: "it would be nice if", Where: phrase.BothHold(phrase.StartsClause, noQuestion)},
	{Said: "!((number|amount|quantity) of (RAIL|POST|BRACKET|STIFF|screws|anchors)) (required|needed|necessary|called for|to be bought)", Plain: "$1", Where: atClauseEnd},
	{Said: "some # !(high|tall|wide|long|apart|across|in height|in width|in length)", Plain: "about $1 $2", Where: nil},
	// What is only added.
	{Where: phrase.BothHold(behindSomething, phrase.EndsClause), Said: `
		[,] if (my|our) (eyes|memory|ears|glasses|reading glasses|old eyes|tired eyes|spectacles) (do|does|did) not (deceive|fail|mistake|fool|trick|betray) [(me|us)]
		[,] if [(my|our)] (eyes|memory|ears|glasses|reading glasses|old eyes|spectacles) (serve|serves|served|can be trusted|are to be trusted|is to be trusted) [(me|us)] [(right|well|correctly)]
		[,] unless (my|our) (eyes|memory|ears|glasses|reading glasses|old eyes|tired eyes|spectacles) (deceive|deceives|fail|fails|fool|trick|betray) (me|us)`},
	{Where: phrase.BothHold(amountSaid, phrase.EndsLine), Said: `
		, which (i|we|PERSON) [(had|have|has)] never [(even|really|once)] (noticed|seen|spotted|known|realized|observed|suspected|guessed) [before] [((until|till) (now|today|this morning|yesterday|this week))]
		, which (i|we|PERSON) (had|have|has|did) not [(even|really|once)] (noticed|seen|spotted|known|realized|observed|suspected|guessed|notice|know|realize) [before] [((until|till|before) (now|today|this morning|yesterday|this week))]
		, which (came|comes) as [(quite|rather|something of)] [(some|bit of)] (surprise|shock|relief|disappointment) [to (me|us|PERSON|all of us)]
		, which (surprised|puzzled|annoyed|pleased|delighted|startled|amused|saddened) (me|us|PERSON|all of us)`},
	{Where: phrase.BothHold(phrase.BothHold(behindSomething, noDoubtBefore), phrase.EndsLine), Said: `
		(;|,|.) [(and|as|because|since)] (i|we|PERSON) [(just|simply|only|do|always|rather)] (find|finds|think|thinks|consider) (it|that|this) [(so much|much|rather|so|far)] (tidier|neater|prettier|nicer|handier|handsomer|smarter|cleaner|tidy|neat|pretty|handsome|more pleasing|more elegant|safer|more convenient|better looking) [(that way|there|this way|like that|to look at)]
		(;|,|.) [(and|as|because|since)] (it|that|this) [(just|simply|only|always)] (looks|seems|is) [(so much|much|rather|so|far)] (tidier|neater|prettier|nicer|handier|handsomer|smarter|cleaner|tidy|neat|pretty|handsome|more pleasing|more elegant|safer|more convenient) [(that way|there|this way|like that|to look at)]`},
	{Where: phrase.BothHold(phrase.EndsLine, whatToDo), Said: `
		[,] when (i|we) [(finally|do|actually)] (begin|start|get started|get going|get to it|get to work|set to work|get down to it|make a start|set out) [(work|building|with it|on it)] [((on|this|next) [(monday|tuesday|wednesday|thursday|friday|saturday|sunday|week|weekend|month|spring|summer)] [(morning|afternoon|evening)]|tomorrow [(morning|afternoon|evening)])]
		[,] once (i|we) [(finally|do|actually)] (begin|start|get started|get going|get to it|get to work|set to work|get down to it|make a start|set out) [(work|building|with it|on it)] [((on|this|next) [(monday|tuesday|wednesday|thursday|friday|saturday|sunday|week|weekend|month|spring|summer)] [(morning|afternoon|evening)]|tomorrow [(morning|afternoon|evening)])]
		[(on|this|next)] (monday|tuesday|wednesday|thursday|friday|saturday|sunday) [(morning|afternoon|evening)] [, when PERSON (comes|come|is here|arrives) [(over|round)] [to help [(me|us|out)]]]`},
	// A slip set right.
	{Said: `
		(,|.|;|-) [(oh|ah|good heavens|dear me|oh dear|goodness|goodness me)] [,] [(no|dear me)] [,] [do] (forgive|pardon|excuse) me [,] [(no|oh)] [,] [(i meant|i meant to say|that is)]
		(,|.|;|-) (dear me|oh dear|goodness|goodness me|good heavens) [,] no [,]`, Plain: ", no ,", Where: phrase.BothHold(figureSaid, phrase.AmountNext)},
	{Said: `
		(i|we) (was|were|have been) [(quite|completely|sadly)] (mistaken|wrong|in error|off) about !(_ [_] [_] [_] [_]) (:|,|;|.|--) [(and|as)] (it|that|they|there) (is|are|should|ought|has|have|needs|need|must) [to] [be]
		(i|we) [have] [just] (misspoke|misspoken|erred|slipped up|slipped) (about|on|over|regarding) !(_ [_] [_] [_] [_]) (:|,|;|.|--) [(and|as)] (it|that|they|there) (is|are|should|ought|has|have|needs|need|must) [to] [be]`, Plain: "$1 is", Where: phrase.BothHold(phrase.StartsClause, phrase.AmountNext)},
	// What others in the house wish.
	{Said: "!([(my|our)] (wife|husband|mother|father|daughter|son|sister|brother|partner|daughters|sons|parents|mother - in - law|father - in - law|son - in - law|daughter - in - law)) [(dearly|very much|really|rather)] (wishes|wish)", Plain: "$1 wants", Where: phrase.BothHold(noQuestion, toNext)},
	{Said: "!([(my|our)] (wife|husband|mother|father|daughter|son|sister|brother|partner|mother - in - law|father - in - law|son - in - law|daughter - in - law)) (is|was) (hoping for|keen on|set on|after)", Plain: "we want", Where: phrase.BothHold(noQuestion, phraseLeads)},
	// An old wall, built otherwise.
	{Said: "[(my|our)] PERSON (built|made|had|put up|set|wanted|left) [(his|hers|theirs|their|old|last|first|other|wall)] (his|hers|theirs|one|wall|old one|last one|first one|other one|one before) [(far|much|rather|quite|way|bit)] [too] (low|high|tall|short|narrow|wide|flimsy|crooked) [,] [(bless (him|her|them)|god bless (him|her|them)|poor man|poor soul)] [,] but", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "(i|we) (want|would like|should like|would love|would prefer) (mine|ours) to be # !(high|tall)", Plain: "the wall is to be $1 $2", Where: nil},
	// A quote.
	{Said: "(i|we) (was|were) (given|offered|sent|handed) [a] [(written|rough)] (quote|price|estimate|quotation|offer) of", Plain: "i was quoted", Where: phrase.AmountNext},
	{Said: `
		does (that|this|it) (agree|tally|square|accord|match|fit|chime|match up|line up) [with] (what you (find|get|have|make|reckon|make of it|come up with)|yours|your (figures|figure|numbers|sums|total|reckoning))
		do you (get|find|make it|reckon|come to) the same [(figure|total|sum|amount)]
		is that what you (find|get|have|make it|reckon|come up with)`, Plain: "is that right", Where: phrase.BothHold(figureSaidBefore, phrase.EndsLine)},
	// A shop that calls, and what a village has.
	{Said: "!(SELLER) [just] (rang|telephoned|phoned|called|wrote|rang up|called up|emailed|texted) [(me|us|back)] [(today|this morning|earlier|yesterday)] (to (say|tell (me|us)|let (me|us) know)|and (said|told (me|us)|let (me|us) know)|saying) [that] they (are|have)", Plain: "they have", Where: soldOutNext},
	{Said: "in (my|our|this) (village|town|neighborhood|neighbourhood|area|county|city|valley|corner of the world|part of the world) [(,)] (one|you|we|i|people|they) (can|could) [only] (buy|get|find|have|purchase|obtain)", Plain: "they sell", Where: phrase.StartsClause},
	// A board that is up already, what was told, and what is taken for true.
	{Said: "[(my|our)] (i|we|PERSON and i) (have|had) [already] (put up|fixed|mounted|hung|fastened|installed|screwed on|attached) !(first|lowest|bottom) RAIL [already] (,|;|.) [and] its top [edge] (is|sits|lies|stands|comes) [at]", Plain: "the $1 board is already up , its top is at", Where: phrase.AmountNext},
	{Said: "what have you [got] (written|noted|jotted|taken|got|put|marked) down (from|for|of|about|by) (me|us) [(so far|up to now|until now|thus far|already|by now)]", Plain: "recap", Where: atClauseEnd},
	{Said: "(please|kindly) (assume|presume|suppose|reckon with|allow) [for] [a] !((saw kerf|kerf|saw cut|blade width) of)", Plain: "use a $1", Where: phrase.BothHold(phrase.StartsClause, phrase.AmountNext)},
	{Said: "and [please] (assume|presume|suppose|reckon with|allow) [for] [a] !((saw kerf|kerf|saw cut|blade width) of)", Plain: "and use a $1", Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("please kindly")), phrase.AmountNext)},
	// What is worked in.
	{Said: "[(my|our)] (i|we|PERSON and i) (have|had) [(both|all)] [only] ever (worked|measured|thought|built|reckoned|used) [(in|with)] METRIC [(at home|at school|here)]", Plain: "we only work in millimeters", Where: phrase.StartsClause},
	{Said: "[(my|our)] (i|we|PERSON and i) (have|had) [(both|all)] [only] ever (worked|measured|thought|built|reckoned|used) [(in|with)] CUSTOMARY [(at home|at school|here)]", Plain: "we only work in inches", Where: phrase.StartsClause},
	{Said: ", so [please] (use|take|go by|stick to|keep to) (those|them|these|that|it|metric system) [(throughout|from here on|from now on|here|for everything|in everything)]", Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("millimeters inches")), func(before, after []scan.Atom) bool {
		return phrase.EndsLine(before, after) && !chunk.Figured(before) // "he says two inches, so use that" takes up the figure
	})},
	// Boards and gaps that come to a height.
	{Said: `
		# RAIL (at|with|and) GAP of # (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		# RAIL (at|with|and) # GAP (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		# RAIL , # apart , (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		# RAIL # apart (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #`, Plain: "$1 rails with gaps of $2 come to $3 in height", Where: notInverted},
	{Said: `
		(do|does|will|would|can|could|might) # RAIL (at|with|and) GAP of # (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		(do|does|will|would|can|could|might) # RAIL (at|with|and) # GAP (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		(do|does|will|would|can|could|might) # RAIL , # apart , (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #
		(do|does|will|would|can|could|might) # RAIL # apart (reach|reaches|attain|attains|get to|gets to|add up to|adds up to|stack up to|stacks up to|make|makes) [a [total] height of] #`, Plain: "check whether $1 rails with gaps of $2 come to $3 in height", Where: phrase.StartsClause},
	{Said: "(manage|make do|get along|live|get by) with !(as few|the fewest|as little)", Plain: "use $1", Where: nil},
	{Said: "would (dearly|very dearly) !(like|love)", Plain: "would $1", Where: nil},
	{Said: "do please", Plain: "please", Where: phrase.StartsClause},
	{Said: "so do please", Plain: "so please", Where: nil},
	// A limit that is tested.
	{Said: "they [(start|begin)] [to] (touch|bump|collide|meet) [(one another|each other)] [(once|when|if|as soon as)] [GAP] [(is|gets|falls|drops|goes)] [to] (under|below|less than)", Plain: "the brackets touch under", Where: phrase.BothHold(phrase.AmountNext, phrase.SaidBeforeOf(scan.WordSet("brackets")))},
	{Said: "brackets [(start|begin)] [to] (touch|bump|collide|meet) [(one another|each other)] once [the] GAP (is|gets|falls|drops|goes) [to] (under|below|less than)", Plain: "brackets touch under", Where: phrase.AmountNext},
}

// fewestNext: few of something is wished for behind it.
func fewestNext(_, after []scan.Atom) bool {
	if len(after) > 1 && (chunk.IsClass(after[1].Text, "WALL") || chunk.IsClass(after[0].Text, "WALL")) {
		return false // "if the wall needed as few posts as possible" has its own subject
	}
	for _, a := range after[:min(len(after), 6)] {
		if a.Text == "fewest" || a.Text == "few" || a.Text == "least" || a.Text == "little" {
			return true
		}
	}
	return false
}

// notInverted: no verb of a question stands before it.
func notInverted(before, _ []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "do", "does", "did", "will", "would", "can", "could", "might", "should":
		return false
	}
	return true
}

// amountSaid: a figure was said before, and nothing is asked.
func amountSaid(before, after []scan.Atom) bool {
	return figureIn(before) && (len(after) == 0 || after[0].Text != "?")
}

// figureSaidBefore: a figure was said before it, in whichever clause.
func figureSaidBefore(before, _ []scan.Atom) bool { return figureIn(before) }

// noDoubtBefore: nothing is asked, denied, claimed or supposed before it.
func noDoubtBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		switch a.Text {
		case "?", "if", "what", "why", "how", "says", "said", "thinks", "suppose", "not", "no", "never", "whether", "used":
			return false
		}
	}
	return true
}

// whatToDo: what is to be done is asked before it.
func whatToDo(before, _ []scan.Atom) bool {
	for _, a := range before {
		switch a.Text {
		case "what", "where", "how", "which", "tell", "show", "steps":
			return true
		}
	}
	return false
}

// toNext: "to have", or what is to be so, stands behind it.
func toNext(_, after []scan.Atom) bool {
	for _, a := range after[:min(len(after), 6)] {
		if a.Text == "to" {
			return true
		}
	}
	return len(after) > 0 && after[0].Text == "for"
}

// phraseLeads: the line begins with it.
func phraseLeads(before, _ []scan.Atom) bool { return len(before) == 0 }

// soldOutNext: the shop has no more of what is told behind it.
func soldOutNext(_, after []scan.Atom) bool {
	if len(after) < 3 {
		return false
	}
	w := after[0].Text + " " + after[1].Text
	return w == "out of" || w == "run out" || w == "sold out" || after[0].Text == "no" || w == "none left"
}
