package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// houseTalk are more phrases of people with a house of their own: how they hedge, whom they build with and for, what they are afraid of
// doing wrong, and what they did not know.
var houseTalk = []phrase.Placed{
	{Where: phrase.BothHold(leftToCome, phrase.EndsLine), Said: `
		[(and|with|at|,)] whatever [(kind of|sort of)] (GAP|SPACE) [(that|it|this|they|those)] (leaves|leave|gives|give|makes|make|yields|yield|produces|results|comes out|works out|turns out|ends up|will be|is|falls out|you get|we get|i get) [(in|at|to|as|with|being|between them)]
		[(and|with|,)] whatever [the] (GAP|SPACE) [(is|may be|might be|turns out to be|comes to|works out to|works out at|comes out at|comes out to|has to be)]
		[(and|with|,)] [the] (GAP|SPACE) (that|which) (that|it|this|they) (leaves|leave|gives|give|makes|make)`},
	// Hedges: whether they measured right, and whether what they ask is wise.
	{Said: `
		if (i|we) [(have|am|are|did|have not)] (measured|measure|read|reading|counted|count|figured|remember|recall|recalled|measuring|did) [(it|that|this|them|all|tape|my tape)] [all] (correctly|right|rightly|properly|accurately)
		if (i|we) [(have|did)] not (measured|measure|misread|misreading|make mistake|made mistake|got it wrong|done it wrong|missed anything)
		(assuming|provided|hoping) [that] (i|we) [(have|am|are|did)] (measured|measure|read|reading|counted|figured|remember|did|got) [(it|that|this|them|all)] [all] (correctly|right|properly|accurately)
		(if|unless) (my|our) (tape|memory|eyes|math|notes) [(measure)] (is|are|serves|can be) [(not)] [(me)] (right|correctly|correct|mistaken|trusted|well|wrong|deceiving|off)
		unless (i|we) (am|are) (mistaken|very much mistaken|badly mistaken|wrong)
		(i|we) [do] hope (i|we) (did|am doing|are doing|measured|read|have|got|do|have done|have measured) (this|that|it|them|everything) [all] (right|correctly|properly|the right way) [(:|,)]`, Where: hedgesFigure},
	{Said: "[,] if you ask (me|us)\n[,] if (i|we) had (my|our) (way|choice|druthers)", Where: phrase.BothHold(behindSomething, phrase.EndsClause)},
	{Said: `
		[,] if [(you think|you feel|you say)] [that] (that|it|this) is [(really|still|at all|all|even)] (wise|sensible|best|allowed|permitted|reasonable|advisable|sufficient|doable|feasible|good idea|all right with you|fine with you|alright with you|ok with you)
		[,] if [(you think|you feel)] [that] (that|it|this) (is|will be|would be) (enough|sufficient|plenty)
		[,] if (that|it|this) (is|will|would) not [(be|really|at all)] [(too|any|so|very)] (hard|difficult|complicated|much|much work|bother|trouble|tricky|problem|silly|strange|late)`, Where: phrase.BothHold(phrase.BothHold(behindSomething, noQuestion), phrase.EndsClause)},
	{Said: "if (it|that|this) is (not|no) [(any|too much|too big a|a|much)] (bother|trouble|problem|imposition|nuisance) [(for you|to you|at all)] [,]", Where: phrase.StartsClause},
	{Said: "[,] shall we [then]", Plain: "please", Where: phrase.BothHold(phrase.SaidBeforeOf(scan.WordSet("let want put")), phrase.EndsLine)},
	{Said: "between (them|each|each of them|any two|any two of them|each one)", Plain: "apart", Where: phrase.BothHold(phrase.AmountBefore, lastNamed("stiffener"))},
	{Said: "keep (them|those|these)", Plain: "keep the stiffeners", Where: phrase.BothHold(lastNamed("stiffener"), apartToCome)},
	{Said: "(set|put|space|hold|leave|spread|place|have|with|fix|run) (them|those|these)", Plain: "keep the stiffeners", Where: phrase.BothHold(lastNamed("stiffener"), apartToCome)},
	{Said: "(their|its|that|those) (spacing|spacings)", Plain: "the stiffener spacing", Where: lastNamed("stiffener", "stiffener spacing")},
	{Said: "between (them|each of them|any two of them)", Plain: "apart", Where: phrase.BothHold(phrase.BothHold(phrase.AmountBefore, notClearBehind), lastNamed("post", "added post"))},
	// What they build, and what they are afraid of.
	{Said: "[(my|our)] (i|we|PERSON and i|partner and i|PERSON and me) (am|are|have been|would like|want|are both|am both) (trying|hoping|planning|going|thinking of|looking|wanting|about|getting ready|preparing|attempting) [to] (build|building|put up|putting up|make|making|add|adding|construct) [(our own|ourselves)] [(half|low|knee|wooden|little|small|short)] wall [(on|around|for|along|by) [(front|back|side|new|old|little|small|covered|screened)] (porch|deck|patio|veranda|balcony|terrace|gazebo|pavilion|yard|garden|house)] [(ourselves|together|this (summer|spring|fall|week|month|year|weekend))] (,|.|;) [(and|so|but)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: `
		[because] (i|we) (do not|would not|would hate|am afraid|are afraid|would not like|do not really|really do not) [(want|wish|care)] [to] (get|do|build|mess|make|ruin|put) (it|this|that|things|anything|something|any of it) [(all)] (wrong|up|in wrong order|in the wrong order|badly|twice|wrong way around|wrong way round)
		[because] (i|we) (do not|would not|would hate|am afraid|are afraid|would not like|do not really|really do not) [(want|wish|care)] [(to|of)] (make|making|get|getting) (any|mistake|mistakes|a mistake|any mistakes|started on the wrong foot) [(mistakes|right at the start|at the start|so early)]`, Where: clauseBesideOthers},
	{Said: "(i|we) (am|are|do|have) [not] [(really|quite|so)] [(sure|certain|clear|know|understand|no idea)] what (my|our|the) (choices|options|possibilities|alternatives) (are|would be|might be) (,|.|;) [(so|but|and)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "(it|i think it) (is|would be|might be|may be|will be) [(probably|perhaps|maybe)] (best|better|easiest|simplest|wisest|easier|simpler) (if (we|you|i) [just]|to [just])", Plain: "please", Where: startsAnew},
	{Said: "(nothing|not much|hardly anything|not thing) [(here|in it|about it|there|in this house|in our house|around here)] is [(really|quite|exactly|perfectly|ever)] (straight|level|square|plumb|true) (:|,|.|;|--) [(and|so|but)]", Where: moreFollows},
	{Said: "(i|we) (moved in|moved here|bought the place|bought the house|came here) [(just|only|about)] (one|two|three|four|five|six|few|couple of|several|some) (days|weeks|months|years|day|week|month|year) ago (,|.|;|and) [(and|so|but)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	{Said: "[(i|we|PERSON)] (have|has|got|own) (one|two|three|four|five|several|few|couple of) [(very|rather|quite)] [(small|little|tiny|big|large|young|old|lively|curious|active)] (dogs|dog|kids|children|cats|toddlers|grandchildren|grandkids|boys|girls|puppies|puppy|rabbits|hens|chickens|twins|cat) [(at home|now|running around|who climb everything)] (,|.|;|and) [(and|so|but)]", Where: phrase.BothHold(phrase.StartsClause, moreFollows)},
	// Why it is so, and what they did not know.
	{Said: "[,] (because|since|as) (they|it|that|these|those|this) (was|were|is|are|came|come) [(highly|warmly|what is|what was|often|so|the ones|one|ones)] (recommended|suggested|advised|praised) [to (me|us)] [by PERSON]\n[,] (because|since) (they|he|she|PERSON) [(have|has)] [(all|both|strongly|highly)] (recommended|suggested|advised|recommend|recommends) (it|that|this|them)", Where: phrase.EndsClause},
	{Said: "[,] (but|and|though) (that|it) is what (mine|ours|they|my tape|boards) [(all|really)] (measure|measures|measured|come to|came to|came out at|come out at)", Where: phrase.BothHold(phrase.EndsClause, amountBeforeWide)},
	{Said: "[,] (as|since|because) (i|we|PERSON) [already] (have|has|got|own|have got) (plenty|lots|some|few|bunch|stack|pile|enough|many|lot|loads|heap) [of] [(them|those|that|it|these)] [(lying around|left over|left|already|in garage|at home|to spare|on hand|in shed|anyway|here|in basement)]", Where: phrase.EndsClause},
	{Said: "(man|woman|guy|fellow|people|crew|company|lady|PERSON) (who|that) (poured|laid|built|installed|put in|did|sold us|made) [our] (slab|floor|patio|deck|porch|posts|concrete|house|it|this|them) (says|said|tells us|told us|told me|tells me|thinks|claims)", Plain: "the builder says"},
	{Said: "(hand - me - down|secondhand|second - hand|second hand|borrowed|hand me down) (saw|table saw|miter saw|tape|blade)", Plain: "saw"},
	// What is on sale, what it may cost, and how much is wanted of it.
	{Said: "(i|we) [have] [just] [now] (found out|learned|noticed|discovered|realized|realised|been told|saw|see|hear|heard) [that] they", Plain: "they", Where: sellNext},
	{Said: "[,] (and|but) (that|it|this) (has to|must|needs to|should|is to|will have to|ought to|is supposed to|includes|covers) [(include|cover|pay for)] (all|everything|brackets|screws|posts|hardware|lumber|wood|delivery|tax|all of it|all the hardware|bases)", Where: phrase.BothHold(phrase.EndsClause, moneyNamed)},
	{Said: "[for] (this|it|all this|the whole thing|everything|whole project|whole wall|wall|whole thing) [(should|must|has|ought|needs)] [to] [(cost|come to|be|turn out)] as (little|cheap|inexpensive|low) as (possible|can be|we can manage|it can be|it possibly can)", Plain: "cheapest", Where: notTried},
	{Said: "(would rather|would prefer|would like|prefer) not [to] (add|put in|dig in|set|dig|plant) [any] more than", Plain: "want no more than", Where: postsCounted},
	{Said: "(could|can|may|might) (i|we) (please|kindly) have", Plain: "i want", Where: openingNext},
	{Said: "[(my|our)] (i|we|PERSON|partner) (would|will) be [(all|both|really|certainly)] [(much|lot|so much|far|so|very|absolutely|quite)] (happier|delighted|thrilled|overjoyed|pleased|over the moon|happy|glad) if", Plain: "it would be nice if", Where: noQuestion},
	{Said: "(wide|big|large|roomy|broad) enough (for|to fit|to let|to get) [(my|our)] [(big|old|double|large|little|father's|electric)] (PASSING|wheelchair|stroller|mower|grill|wheelbarrow|bike) [(to (get|go|pass|come)|in)] [through] , (so|which means|that means|meaning|that is|i think|i guess)", Plain: "", Where: leastNext},
}

// notClearBehind: "162 inches clear between them" is said plainly already.
func notClearBehind(before, _ []scan.Atom) bool { return chunk.LastOf(before, 1) != "clear" }

// lastNamed is the place where the last part that was named before is one of some: "two stiffeners per bay, 20 inches between them".
func lastNamed(keys ...string) func(before, after []scan.Atom) bool {
	return func(before, _ []scan.Atom) bool {
		for i := len(before) - 1; i >= 0; i-- {
			key, _ := chunk.PartKey(before, i)
			if before[i].Text == "posts" {
				key = "post" // which may be a question by itself
			}
			if key != "" && key != "bay" {
				return slices.Contains(keys, key)
			}
		}
		return false
	}
}

// notLast is a place behind another part than those that are named.
func notLast(keys ...string) func(before, after []scan.Atom) bool {
	of := lastNamed(keys...)
	return func(before, after []scan.Atom) bool { return !of(before, after) }
}

// apartToCome: how far apart is told in the same clause.
func apartToCome(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && !chunk.BreaksClause(after, i) && i < 8; i++ {
		if after[i].Text == "apart" {
			return chunk.Figured(after[:i])
		}
	}
	return false
}

// clauseBesideOthers: it is a whole clause, and something else is said before or behind it.
func clauseBesideOthers(before, after []scan.Atom) bool {
	return phrase.StartsClause(before, after) && (chunk.EndsPart(after, 0) || after[0].Text == "so" || after[0].Text == "and") && len(before)+len(after) > 3
}

// hedgesFigure: a length or a count is told beside it.
func hedgesFigure(before, after []scan.Atom) bool {
	if !phrase.StartsClause(before, after) || len(before) == 0 && len(after) < 3 {
		return false
	}
	return figureIn(before) || figureIn(after)
}

// figureIn reports whether a figure stands among atoms.
func figureIn(atoms []scan.Atom) bool {
	return slices.ContainsFunc(atoms, func(a scan.Atom) bool {
		return a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text)
	})
}

// startsAnew: what follows takes something back.
func startsAnew(_, after []scan.Atom) bool {
	if len(after) == 0 {
		return false
	}
	switch after[0].Text {
	case "start", "undo", "forget", "scrap", "clear", "scratch", "redo", "begin":
		return true
	}
	return false
}

// amountBeforeWide: a figure, perhaps with "wide" behind it, stands before.
func amountBeforeWide(before, _ []scan.Atom) bool { return figureSaid(before, nil) }

// sellNext: "they also have sixteens".
func sellNext(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 3; i++ {
		switch after[i].Text {
		case "have", "sell", "carry", "stock", "keep", "get":
			return i+1 < len(after) && oflength(after[i+1:])
		}
	}
	return false
}

// oflength: lengths of boards are named next.
func oflength(after []scan.Atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 5)], func(a scan.Atom) bool {
		switch a.Text {
		case "eights", "tens", "twelves", "fourteens", "sixteens", "eighteens", "twenties", "footers", "footer", "foot", "foots":
			return true
		}
		return false
	})
}

// notTried: the line asks nothing, and tries nothing.
func notTried(before, after []scan.Atom) bool {
	return !phrase.SaidBeforeOf(scan.WordSet("if what could suppose why how"))(before, nil) && (len(after) == 0 || after[len(after)-1].Text != "?")
}

// postsCounted: "…than two posts".
func postsCounted(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 4)], func(a scan.Atom) bool { return a.Text == "posts" || a.Text == "post" })
}

// openingNext: the opening is begged for in some place: "could we please have the doorway in the middle?".
func openingNext(_, after []scan.Atom) bool {
	if figureIn(after[:min(len(after), 3)]) {
		return true // "could we please have seven boards?"
	}
	key, next := chunk.PartKey(after, chunk.SkipArticle(after, 0))
	return key == "opening" && next < len(after) && after[next].Kind != scan.Sign
}

// leastNext: "…, so at least 34 inches".
func leastNext(_, after []scan.Atom) bool {
	return scan.StandAt(after, 0, "at", "least") || phrase.StartsLength(measure.Reader{Atoms: after}, 0)
}

// leansOnGap are words that hold something against a gap which is named behind them.
var leansOnGap = scan.WordSet("times than twice thrice half double as to of is be equal equals match matches same why how what tell say ask")

// leftToCome: what is spoken of is left open behind what was said, and nothing is held against it: "six rails, and whatever gap that leaves",
// but not "ten times whatever the gap is".
func leftToCome(before, _ []scan.Atom) bool {
	return len(before) > 1 && !leansOnGap[chunk.LastOf(before, 1)]
}
