package takeback

import "saywright/grammar/lexicon"

// More ways to give an order by a whole clause, and to lead up to one.

// moreFullOrders are orders by a whole clause.
var moreFullOrders = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "undo", Ways: `
		(hit|press|push|tap|click|use|smack|punch|want|need) [(the|that|on|on the)] undo [(button|key|thing|please|again)]
		undue (that|it|this|` + lastSaid + `)
		back up (one|a bit|by one|one more)
		(go|get|move|step|put it|put things|put everything|set it|take it|roll it|switch|be|turn) back to (before|where it was before|where we were before) [(it|that|this|that change|that one|` + lastSaid + `)]
		` + lastSaid + ` (was|is) [(all|just|plain|simply)] (wrong|bad|a mistake|no good|off|a slip) and (ought to|should|has to|must|needs to|can|had better) be (undone|reversed|taken back|removed|scratched|reverted|withdrawn|cancelled|dropped)
		` + lastSaid + ` (ought to|had better) be (undone|reversed|taken back|removed|scratched|reverted|withdrawn|cancelled|dropped)
		(i|we) (would|had) (rather|sooner) ` + lastSaid + ` (was|were|be) (undone|reversed|taken back|removed|scratched|reverted|withdrawn|cancelled|dropped)`},
	{Kind: lexicon.Cmd, Key: "start over", Ways: `
		(have|get|want|need|do|make|give me|give us|use|like) (a|one|the) [(complete|total|full|whole)] (do over|do - over|doover|mulligan|restart|reset|fresh go|clean restart) [(on|of|for|with) (the|this|my|our) [(whole|entire|complete)] (plan|thing|lot|wall|job|layout|design|works|business)]
		` + allThatWasSaid + ` (should|must|can|may|has to|have to|needs to|need to|ought to|is to|shall) (go|be TAKEN|be scrapped) [(out|away|off|away with)]
		(i|we) (want|would like|need|wish|would rather have|would sooner have) ` + allThatWasSaid + ` TAKEN [(out|away|off)]
		(i|we) (begin|start) (afresh|anew|again|over|fresh|from scratch)`},
	{Kind: lexicon.Cmd, Key: "redo", Ways: `
		(restore|reinstate|bring back|put back|redo|reapply|give me back|recover|return|get back|revive) (what|whatever|the one|the bit|the part|the change|the step|that thing|that change|the last thing|the last change|everything) [(that|which)] (was|got|has been|had been) [just] (undone|taken back|reversed|reverted) [(again|back|now|in)]
		(i|we) (should not|should never|ought not to) have UNDID (it|that) [(and|so) (put|bring|get) it back]`},
	{Kind: lexicon.Cmd, Key: "take that", Ways: `
		(lock|nail|pin|fix|settle|write|put|set|ink) ` + triedThing + ` (in|down|as final|as the plan|in stone) [please]
		(lock|nail|pin|fix|settle|write|put|set|ink) (that|the|this) (trial|one|version|try|test|experiment|idea) (in|down) [please]
		(i|we) [(would|will)] [be] (glad|happy|pleased|grateful) [if] (you|we) (used|use|kept|keep|took|take|would use|would keep|would take|went with|would go with) ` + triedThing},
}

// moreTopics lead up to an order with a pronoun.
var moreTopics = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "undo", Ways: `
		` + lastSaid + ` (broke|ruined|spoiled|spoilt|messed up|screwed up|wrecked|threw off|upset|spoils|breaks|ruins|messes up|made a mess of|threw out) (everything|it all|it|things|the whole thing|the layout|the plan|all of it|the lot|the whole plan)
		(i|we|PERSON|OWNS PERSON) [(have|has|had|'s|'ve)] (changed (my|our|his|her|their) (mind|minds)|had second thoughts|second thoughts|thought better|thought again|gone off|regret|regrets|take back|am not sure|are not sure|is not sure) [(about|of)] ` + lastSaid + `
		(i|we|he|she|they|PERSON|OWNS PERSON) (liked|preferred|loved|had|wanted|got) (it|that|things) (right|better|best|fine|good|ok|correct) (before|the first time|at first|to begin with|earlier)
		` + lastSaid + ` (made it|made things|makes it|makes things|is making it|is making things) (worse|bad|no better|ugly)`},
	{Kind: lexicon.Cmd, Key: "take that", Ways: `
		` + triedThing + ` (is|was|looks|works|looked|worked|seems|suits me|suits us) (better|nicer|neater|cheaper|best|stronger|tidier|much better|far better|a lot better) [than (mine|ours|what i had|what we had|before|my own|the other|the other one|his|hers|theirs|the first|the first one|i thought|we thought)]
		(i|we|PERSON|OWNS PERSON) ('s|is|am|are|was|were) [(very|really|quite|so|all|pretty)] (happy|pleased|content|fine|ok|delighted|satisfied|thrilled) (with|about|by) ` + triedThing},
	{Kind: lexicon.Cmd, Key: "quit", Ways: "(nothing|no|nothing more|no more) [else] [(from me|to do|to ask|to say|to add|here|for now|today|left)]\n(that|this) (is|will be|was) (all|everything|it)"},
}

// morePronouns are orders with a pronoun, or with none, where they can be only what was spoken of.
var morePronouns = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "undo", Ways: "(go|get|move|step|roll|put it|set it|take it) back [(one|a step|to it|to before it|to before)]\nback up [(one|a bit|a step)]"},
	{Kind: lexicon.Cmd, Key: "quit", Ways: "(close|shut|wrap|pack|button) (up|down|off|it up|it down|up shop|shop|this|this down)\n(close|quit|stop|leave|exit|finish|go|go home|be done|knock off)"},
	{Kind: lexicon.Cmd, Key: "take that", Ways: "(have|use|take|keep|do|build|go with|stick with) (that|it|this) [(then|please)]\n(go|push|press) (ahead|on) [with (it|that)]"},
}

// allThatWasSaid are the words for all that was said.
const allThatWasSaid = `(all|everything|it all|the lot|the whole lot) [(that|which)] [(has been|have been|was|we have|i have|i|we)] (said|told|given|entered|put in|set) [you] [(so far|up to now|until now|here|today|before)]`
