package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// newOwnerPhrasings are phrases of people who have never built anything, and say so: whole polite sentences, with what they feel about
// it, whom they asked, and what they fear.
var newOwnerPhrasings = []phrase.Placed{
	// What they hope, and how they feel about it.
	{Said: "[,] [(and|but)] (i|we) [(do|really|just)] hope (that|this|it) is (all right|alright|ok|okay|fine|not a problem|no problem|no trouble|no bother|not too much trouble|not too much to ask|not asking too much)", Where: phrase.BothHold(behindSomething, phrase.EndsClause)},
	{Said: "[,] if (that|it|this) (makes|make|made) [any] sense\n[,] if you (know|see|get|follow|understand) what i mean\n[,] if that (helps|is any help|is of any help|is any use|is useful) [you]", Where: phrase.BothHold(behindSomething, phrase.EndsClause)},
	{Said: "[,] (i am|we are) (sorry|sad|embarrassed|ashamed|sorry to have) to (say|report|tell you|admit)", Where: phrase.BothHold(behindSomething, phrase.EndsClause)},
	{Said: "(unfortunately|regrettably|luckily|fortunately|thankfully) [,]", Where: phrase.StartsClause},
	{Said: "[,] (unfortunately|regrettably|luckily|fortunately|thankfully)", Where: phrase.EndsClause},
	{Said: `
		[(my|our)] (i|we|PERSON|partner) would [(all|both|really|certainly)] (feel|sleep|rest|breathe) [(much|a lot|lot|so much|far|bit|little|all the|quite a bit)] (better|easier|safer|happier|calmer) [(at night|about it|about things|about this|about the whole thing)] if
		[(my|our)] (i|we|PERSON|partner) would be [(all|both|really|certainly)] [(much|lot|so much|far|bit|little)] (more comfortable|more at ease|less worried|less nervous|calmer|more relaxed|relieved|reassured|better off) if
		it would be [(so much|much|lot|far|great deal|so|bit|little|way)] (easier|simpler|better|nicer|kinder|safer|handier|less work|less trouble|more convenient) [(for|on) (me|us|PERSON|my back)] if`, Plain: "it would be nice if", Where: noQuestion},
	{Said: "(i|we) would [(all|both|really|certainly)] (feel|sleep|rest|breathe) [(much|lot|so much|far|bit|little|all the)] (better|easier|safer|happier|calmer) with", Plain: "i want", Where: noQuestion},
	// What they beg for.
	{Said: "(i|we) (am|are|was|were|wonder) [(just|only|really)] [wondering] (if|whether) you (could|can|might|would|will) [(possibly|please|kindly|perhaps|be able to|be willing to|be so kind as to)]", Plain: "please", Where: wroughtNext},
	{Said: "(could|can|would|will) you [(please|kindly|possibly|perhaps|just)] (use|get by with|make do with|manage with|do with|work with|get away with) as few", Plain: "please use as few"},
	{Said: "(could|can|would|will) you [(please|kindly|possibly|perhaps|just)] (use|get by with|make do with|manage with|do with|work with|get away with) as little", Plain: "please use as little"},
	{Said: "(i|we) (was|were|am|are|have been|had been|got) told [by PERSON] to", Plain: "please", Where: doneAsTold},
	{Said: "(i|we) (was|were|am|are|have been|had been|got) told [by PERSON] to (use|go with|have|build with|put in)", Plain: "please use", Where: doneAsTold},
	{Said: "(i|we) (was|were|am|are|have been|had been|got) told [by PERSON] to (use|go with|have|build with|put in)", Plain: "i was told", Where: notDoneAsTold},
	{Said: "[,] (so|and) [(please|kindly|let us|we should|we will|i will|could you|can you|could we|we had better|we would better)] [(please|just)] (plan on|go with|do|stick to|stick with|follow|keep to|go by|work with|count on|plan for) (that|it|so|those|them|this|their advice|his advice|her advice) [(please)]", Where: phrase.BothHold(phrase.BothHold(phrase.EndsClause, beggedBefore), notTheirsTold)},
	// What leads up to an order or a question.
	{Said: `
		[(and|but)] (i|we) [have] never (done|built|tried|made|attempted) (this|anything like (this|it)|such a thing|one|one of these|it|anything) [(in my life|in our lives)] [before] [(in my life|in our lives)] (,|.|;) [(so|and|but|honestly)]
		(i|we) have [(just|recently|only just|finally)] (bought|moved into|closed on|purchased|gotten) [(our|my)] [very] [(first|new|old|little|tiny|small|second)] (house|home|place|cottage|bungalow|cabin|fixer upper) [(last (week|month|year|spring|summer|fall|winter)|this (week|month|year|spring|summer|fall|winter)|recently|together)] (,|.|;|and) [(so|and|but)]
		this is [all] (new|very new|so new|brand new) to (me|us) (,|.|;) [(so|and|but)]
		(i|we) (am|are) [(both|all)] [(very|so|brand|completely|totally)] new (to|at) (this|all this|it|all of this) (,|.|;) [(so|and|but)]
		this is (my|our) [very] first (time|project|wall|build|try|attempt|go) [(at|with|doing) (it|this)] (,|.|;) [(so|and|but)]
		(i|we) (am|are|feel) [(still|just)] [(bit|little|rather|quite|totally|completely|so|really|somewhat)] (lost|confused|overwhelmed|bewildered|out of my depth|in over my head|at sea|stuck) [(here|now|by all this|with all this|with this)] [, to be honest] (,|.|;) [(so|and|but)]`, Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "(i|we) (keep|kept|can not stop|cannot stop|can not help|cannot help) [on] (wondering|asking myself|asking ourselves) [(,|:)]", Where: asksAfterwards},
	{Said: "and (it|that) (seems|appears|turns out|looks|sounds) [(that|like|as if|as though)] they", Plain: "and they"},
	{Said: "(i|we|PERSON) [(have|has)] [just] (called|phoned|rang|rang up|called up|visited|went to|been to|asked|checked with|spoke to|spoken to|talked to|stopped by|stopped at|drove to) [at] [(local|nearest)] (SELLER|them) [(yesterday|today|this morning|in town|near us|earlier|again)] [,] [and] [(it (seems|appears|turns out) [that])] they", Plain: "they", Where: phrase.StartsClause},
	{Said: "(find|consider|think) METRIC [(are|is)] [(much|lot|far|bit|way)] (easier|simpler|more natural|handier|clearer|friendlier|more convenient) [to (use|read|work with|understand|picture|work in)]", Plain: "prefer metric"},
	{Said: "(find|consider|think) CUSTOMARY [(are|is)] [(much|lot|far|bit|way)] (easier|simpler|more natural|handier|clearer|friendlier|more convenient) [to (use|read|work with|understand|picture|work in)]", Plain: "prefer inches"},
	{Said: "[,] [(so|and)] (could|can|may|let us|please|would|will|you can) [(we|i|you)] [please] (switch [(over)]|change [(over)]|go over|move|stick|keep|work|talk|go) (to|in|with) (those|them|that|it) [(instead|from now on|please|from here on)] [?]", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("prefer")))},
	{Said: "and that (they|it)", Plain: "and they", Where: phrase.BothHold(amountBeforeDim, phrase.SaidBeforeOf(scan.WordSet("brackets")))},
	{Said: "to (reach|reach up to|rise to|top out at|finish at|end at|go up to|come to)", Plain: "to be", Where: phrase.BothHold(phrase.AmountNext, phrase.SaidBeforeOf(scan.WordSet("wall")))},
	{Said: "[(half|knee)] wall (on|around|along|for) [(front|back|side|new|old|little|small|covered|screened)] (porch|deck|patio|veranda|balcony|terrace|gazebo|pavilion)", Plain: "the wall", Where: wallGoesOn},
	{Said: "(tell|show|explain to) (me|us) how (this|it|this program|this thing|all this|all of this|you) (works|work) [please]", Plain: "help", Where: phrase.EndsClause},
	// What they have read on the package, and want to have used.
	{Said: "it (says|said|reads|is printed|is written|is stated) [(right|here|right here|clearly|there)] (on|in) (package|box|bag|packaging|label|packet|carton|wrapper|instructions|tag|sticker) [(they came in|they come in|it came in)] [that]\n(on|in) (package|box|bag|packaging|label|packet|carton|wrapper|tag|sticker) it (says|said|reads) [that]", Where: bracketsNext},
	{Said: "[,] [(so|and)] [(please|just|kindly|you can|you may|let us|could you|can you|would you)] [(please|just|kindly)] (use|take|treat|count|enter|set) (that|this|it) as [bracket] clearance", Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("bracket brackets")), phrase.EndsClause)},
	// What is bought, what is left over, and what may be spent.
	{Said: "[,] [(so|and)] [please] (do not|never) (count|rely|plan|figure|bank|depend|reckon) on (them|those|that|it|any of those|any of them)", Where: soldOutTold},
	{Said: "[,] [(that|which)] [(were|was|got)] (left|left behind|left over|left here|left us|abandoned|forgotten) by [(previous|last|former|old|earlier)] (owners|owner|people|family|builder|tenants|tenant|PERSON) [(before us)]", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("have got found own")))},
	{Said: "[,] [(so|and)] [(please|could you|can you|would you|will you|you can|kindly|let us)] [(please|kindly|also|just)] (add|include|put|count|work|throw) (them|those|these|that) [also] [in] (to|in|on|into|onto|with|among) (cuts|cut list|cutting list|order|plan|cutting plan|rest|others|other cuts) [(please)] [?]", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("extra additional besides")))},
	{Said: "(include|budget for|plan for|count in|factor in)", Plain: "add", Where: spareBoardsNext},
	{Said: `
		[,] (as|since|because|in case|for) [that] (i|we|he|she|PERSON) [(am|are|is|will|might|may|could|would|should)] [(bound|sure|likely|certain|going|liable|apt|guaranteed|probably|surely|certainly|no doubt|almost certainly|almost certain|most likely|inevitably)] [to] [(probably|surely|certainly)] (ruin|spoil|botch|mess up|mess|wreck|miscut|break|split|crack|bungle|butcher|damage|goof up|screw up|foul up|ruins|spoils|wrecks) [(at least|about)] (one|some|board|few|something|couple|one or two|one of them|some of them|it|them|things|few of them) [up]`, Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("spare spares extra over")))},
	{Said: `
		[,] (and|but|so) (i|we) [(really|honestly|truly|just|simply|definitely)] (would|do|can|will|could|must|should) not [(really|like to|want to|care to|wish to|be able to|even|possibly|afford to)] (go|spend|pay) [(anything|any|a cent|a dollar|a penny|money)] (over|above|past|beyond|more than) [(that|it|this)]
		[,] (and|but|so) (i|we) [(really|honestly|truly|just|simply|definitely)] (would|do|can|will|could|must|should) not [(really|like to|want to|care to|wish to|be able to|even|possibly|afford to)] (exceed (it|that|this)|spend any more|spend more|pay more|go any higher|go higher)
		[,] (and|but|so) (i|we) would [really] (hate to|prefer not to|rather not|like not to|be sorry to) (go|spend) (over|above|past|beyond|more than) [(it|that|this)]`, Where: phrase.BothHold(phrase.EndsClause, moneyNamed)},
	// What worries them of a thing that is so.
	{Said: `
		[,] [and] (which|that) (worries|bothers|scares|concerns|frightens|alarms|troubles|unsettles|annoys) (me|us|PERSON) [(little|bit|lot|somewhat|no end|too|some|quite a bit|greatly)]
		[,] [and] (which|that) makes (me|us|PERSON) [(feel)] [(little|bit|rather|very|quite|pretty)] (nervous|uneasy|anxious|uncomfortable|worried|dizzy)`, Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("ground lower leans lean slopes falls drop drops yard lawn")))},
	{Said: "is not [(quite|perfectly|exactly|really|entirely|completely|totally|all that|very|absolutely)] (straight|plumb|vertical|upright|true) (:|,|.|;|--) [(and|but|since|because)] it leans", Plain: "leans"},
	{Said: "(is|are) [(already|both|all)] [already] (there|standing|in place|in the ground|set|up|installed|existing|in) and (they|it|both|those) (are|is)", Plain: "are", Where: sizeFollows},
	{Said: "[,] even if [(it|that) means [that]] [(each|every|all)] [of] MARK (has|have|needs|need|is|are|gets|get|must|ends up|end up|comes|come) [(to be|out|getting|being|be)] (rounded|uneven|odd|awkward|fussy) [off] [(by itself|by themselves|on its own|on their own|one by one|separately|individually|alone)]", Where: phrase.BothHold(phrase.EndsClause, phrase.SaidBeforeOf(scan.WordSet("gap gaps spacing spaces")))},
	// Whether a price is right, and why they want to see a sum.
	{Said: `
		[,] (and|but|though) (i|we) (am|are) not [(quite|really|entirely|at all|so)] (sure|certain) (whether|if) (that|it|this) is [(really|actually|even|a)] (reasonable|fair|right|correct|realistic|sensible|accurate|plausible|normal|good price|fair price)
		[,] (and|but|though) (i|we) (can not|cannot|could not) (tell|judge|say) (whether|if) (that|it|this) is [(really|actually|even|a)] (reasonable|fair|right|correct|realistic|sensible|accurate|plausible|normal|good price|fair price)
		[,] (and|but|though) (i|we) (wonder|have no idea|do not know) (whether|if) (that|it|this) is [(really|actually|even|a)] (reasonable|fair|realistic|sensible|accurate|plausible|normal|good price|fair price)
		[,] which (sounds|seems|looks|feels) [(bit|little|rather|pretty|awfully|quite|very|kind of)] (high|steep|expensive|lot|too much|much|too high|wrong|off) [to (me|us)]`, Plain: ", is that right", Where: phrase.BothHold(phrase.EndsClause, quoteNamed)},
	{Said: "[(because|so that|since)] (i|we) (would like|want|would love|need|would prefer|wish) to (understand|follow|grasp|study|learn) (it|that|this|how it works|how that works|how it is done|what i am doing|everything) [(better|properly|fully|for myself|myself|first|all)] [before (i|we) (buy|order|pay for|cut|commit to|spend|start|begin) [(anything|it|money|any of it|cutting|building|lumber|wood|boards|any lumber|any wood)]]", Where: phrase.BothHold(behindSomething, phrase.BothHold(phrase.StartsClause, phrase.EndsClause))},
	{Said: "[,] [(just)] (like|as) [(in|at)] [(my|our|all my|all our)] PERSON ['s] [(house|place)] [(next door|across the street|down the road|over the fence)] (have|has|had|did|do|does|got|used) [(it|them|theirs|too)]", Where: phrase.BothHold(phrase.EndsClause, figureSaid)},
}

// doneAsTold: what somebody was told to do is to be done: "…, so please plan on that".
func doneAsTold(_, after []scan.Atom) bool {
	for i := 2; i+2 < len(after); i++ {
		if after[i].Text != "so" && after[i].Text != "and" {
			continue
		}
		for k := i + 1; k+1 < len(after) && k < i+5; k++ {
			switch after[k].Text {
			case "plan", "go", "do", "stick", "follow", "keep", "work", "count":
				return true
			}
		}
	}
	return false
}

// notDoneAsTold: what somebody was told to do is only told of.
func notDoneAsTold(before, after []scan.Atom) bool { return !doneAsTold(before, after) }

// beggedBefore: a wish was begged for in the same sentence.
func beggedBefore(before, _ []scan.Atom) bool {
	return len(before) > 2 && (before[0].Text == "please" || slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "told" }))
}

// amountBeforeDim: "an eighth of an inch thick" stands right before.
func amountBeforeDim(before, after []scan.Atom) bool {
	return len(before) > 2 && (before[len(before)-1].Text == "thick" && phrase.AmountBefore(before[:len(before)-1], after) || slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "thick" }))
}

// wallGoesOn: a wish or a statement of the wall goes on behind it.
func wallGoesOn(before, after []scan.Atom) bool {
	if len(after) == 0 || chunk.LastOf(before, 1) == "north" || chunk.LastOf(before, 1) == "south" || chunk.LastOf(before, 1) == "east" || chunk.LastOf(before, 1) == "west" {
		return false
	}
	switch after[0].Text {
	case "to", "is", "should", "must", "will", "be", "needs", "has", "comes", "ought", "would", "could", "can":
		return true
	}
	return phrase.StartsLength(measure.Reader{Atoms: after}, 0)
}

// behindSomething: something stands before it.
func behindSomething(before, _ []scan.Atom) bool { return len(before) > 1 }

// noQuestion: the line asks nothing at its end.
func noQuestion(_, after []scan.Atom) bool { return len(after) > 0 && after[len(after)-1].Text != "?" }

// moreFollows: more than a sign or two stand behind it.
func moreFollows(_, after []scan.Atom) bool { return len(after) > 2 }

// wroughtVerbs are orders to make a part otherwise.
var wroughtVerbs = scan.WordSet(`make set put add take raise lower widen narrow double halve triple increase decrease reduce enlarge move shift change keep leave bring cut switch
	tighten loosen shorten lengthen stretch bump trim shrink round leave space forget undo redo remove save drop tell show give explain walk go`)

// wroughtNext: an order stands behind it.
func wroughtNext(_, after []scan.Atom) bool { return len(after) > 1 && wroughtVerbs[after[0].Text] }

// asksAfterwards: a question stands behind it.
func asksAfterwards(_, after []scan.Atom) bool {
	return len(after) > 2 && (parse.QuestionOpeners[after[0].Text] || MayAsk[after[0].Text])
}

// bracketsNext: brackets are told of behind it.
func bracketsNext(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 4)], func(a scan.Atom) bool { return a.Text == "bracket" || a.Text == "brackets" })
}

// spareBoardsNext: "include two spare boards".
func spareBoardsNext(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 4)], func(a scan.Atom) bool { return a.Text == "spare" || a.Text == "spares" })
}

// moneyNamed: money was named before.
func moneyNamed(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "$" || a.Text == "dollars" || a.Text == "bucks" || a.Text == "budget"
	})
}

// quoteNamed: somebody's price was named before.
func quoteNamed(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool {
		switch a.Text {
		case "quote", "quoted", "estimate", "bid", "offer", "bill", "invoice", "estimated", "asks", "wants":
			return true
		}
		return false
	})
}

// figureSaid: a figure stands in the clause before it.
func figureSaid(before, _ []scan.Atom) bool {
	for i := len(before) - 1; i >= 0 && (before[i].Kind != scan.Sign || !chunk.BreaksClause(before, i)); i-- {
		if before[i].Kind == scan.Digits || before[i].Kind == scan.Vulgar || chunk.SpelledNumber(before[i].Text) && before[i].Text != "one" {
			return true
		}
	}
	return false
}
