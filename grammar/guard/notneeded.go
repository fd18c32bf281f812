package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// Lines that only say that something is not needed, ask whether it may go, or tell what most people do; words with two senses ("stays",
// "rail"); and what holds only otherwise. What was heard of them is asked back. Everyday speech, no source.

var (
	limitOrNone = hear.OpenQuestion("Is that a limit, or only not needed?", "gap under 4")
	stayOfWhat  = hear.OpenQuestion("Of what? Or is a stiffener meant?", "gap under 4")
	forgetOrTry = hear.OpenQuestion("Shall I forget it, or try it without?", "what if no stiffeners")
	whichHolds  = hear.OpenQuestion("Which of the two shall I take?", "gap 3")
	doneNow     = hear.OpenQuestion("A question, or are you done?", "bye")
	highOrMany  = hear.OpenQuestion("Is that how high, or how many?", "what if the wall is 48 high")
)

// notNeeded are such lines, each with what is heard of it.
var notNeeded = []hear.OpenWay{
	// What need not be is no limit the other way.
	{Looks: limits, Way: asWay(opensClause + `{i|we|you|they|it} {really|just|strictly|actually|still }*{do not (need|have)|does not (need|have)|need not|have not got|am not (obliged|required|supposed)|are not (obliged|required|supposed)}\b`), Not: asWay(`\b{more|less|fewer|any} than\b|\b{over|past|beyond|exceed|above} `), Ask: limitOrNone},
	{Looks: valued, Way: asWay(`\bno {real|great|particular }?{need|call|reason|requirement|point|cause} {for [a-z ]+ to (be|stay|have|keep|go|come)|to (keep|have|hold|make|leave|be|stay)|in (keeping|having|making)}\b`), Not: asWay(`\b{more|less|fewer|any} than\b|\b{over|past|beyond|exceed|above} `), Ask: limitOrNone},
	{Looks: limits, Way: asWay(opensClause + `{i|we} {am|are|do|did|can|could} not {really|quite|so|too|at all|yet|that|even }*{sure|certain|convinced|think|believe|say|swear|tell|reckon} {that|if|whether }?[a-z ]*\b{is|are|'s|comes?|has|have} `), Not: asWay(`\b{should|shall|must|ought}\b`), Ask: limitOrNone},

	// Whether something may go.
	{Looks: hear.KindOf(act.Forget), Way: asWay(`^{Lead|, }*{can|could|may|might|should|shall|must|do|did|would|will} {not }?{i|we|you (want|like) (me|us) to|you think (i|we) (can|could|should)} {[a-z]+ }{0,2}` + letGo + ` `), Not: asWay(`\b{limit|limits|measurement|rule|what i|number|figure|please}\b`), Ask: forgetOrTry},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`^{Lead|, }*{am|are} {i|we} {right|ok|okay|allowed|able|free|supposed|wise|safe|wrong|good} to ` + letGo + ` `), Ask: forgetOrTry},

	// A stay is a stiffener, and what things do.
	{Looks: hear.Stated(solver.Stiffeners, solver.StiffenerSpacing), Way: asWay(`\b{i|we|you|they|it|us|that|this|one|ones|both|them|others?|these|those|rest} {should|must|can|will|to|all|just|better }*stays?\b|^{Lead|, }*stays? {under|below|over|above|at|between|within|inside} |\bstays{ put| there| as is| where it is}{ Stop}*$|^{Lead|, }*{Number|both|some|a few} {of them }?stay{ put| there}?{ Stop}*$`), Not: asWay(`\bstays? {of|per|in|every|apiece|a bay|each|to}\b|\b{on center|on centers|apart|o\.?c}\b|\b{add|use|want|need|put|have|got|no|more|fewer} {[a-z0-9]+ }?stays?\b`), Ask: stayOfWhat},

	// What is lost or won with something is no change by its figure.
	{Looks: changesOrTries, Way: asWay(`^{Lead|, }*{do|does|did|would|will|could|can|might} {i|we|you|it|that} {lose|gain|save|win|need|add|drop|get} {a|one|another|two|any} {Board|rail|rails} {with|by|at|if} `), Ask: askback.Meant.Open("what if the gap is 3, how many rails")},

	// What most people do.
	{Looks: hear.KindOf(act.State, act.Check), Way: asWay(`\b{most|many|some|lots of|plenty of} {people|folks|walls|builders|jobs|porches|decks|carpenters|crews|guys|contractors|homes|houses|neighbors|inspectors|plans|others} {[a-z]+ }?{do|does|use|go|have|leave|put|set|make|build|wants?|is|are|the|say|like|run|get|keep|it|with|[0-9]}`), Not: asWay(`\bat most\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.State, act.Check), Way: asWay(`\bon most {walls|jobs|porches|decks|houses}\b|\b{do|does|did|will|would} {people|folks|builders|carpenters|everybody|everyone|anybody|anyone|others|guys|crews} {usually|normally|generally|mostly|often|always|typically }*{use|do|go|have|leave|put|set|make|build|run|get|keep}\b|\b{everybody|everyone|people|folks} {[a-z]+ }?{does|do|uses?|goes|has|have|leaves?|puts?|sets?|makes?|builds?|runs?} |\b{everybody|everyone|people|folks} ?{is|'s|are|has|have} {doing|using|got|going|putting|leaving|having|building|running}\b|\b{do|does|did} {they|he|she|you} {usually|normally|generally|mostly|often|always|typically} `), Not: asWay(`\b{happy|room|wants?|agrees|says|said|so (make|let|do|use|i)}\b`), Ask: wantedHere},

	// A height that is heard as a count, and rails that are none of the wall's.
	{Looks: highAsMany, Way: asWay(`\bis {it|that|this|the wall} {still|about|exactly|just }?[0-9]|\b{be|is|comes? to|come out (at|to)|makes?|reach|reaches|in|at|total|totals|to} {still|about|exactly|just }?[0-9]`), Not: asWay(`\b[0-9]+ {more|good|full|new|whole|long }?{rails|boards|slats|planks|of them|2x|pieces}|\b{lower|raise|lift|drop|bring|take|put} {it|that|this}\b`), Ask: highOrMany},
	{Looks: hear.Stated(solver.BottomGap), Way: asWay(`\b{deck|hand|guard|porch|stair|existing|old|neighbors|neighbor 's|towel|other} rail\b`), Ask: thisWallToo},

	// What holds only if it keeps within something.
	{Looks: valued, Way: asWay(`\bif {that|it|this} {keeps|holds|makes|leaves|gets|brings|puts} the [a-z]+ {under|over|below|above|at|within|to}\b`), Not: asWay(`\?|\b{what|how|would|will} `), Ask: onlyThen},
	{Looks: limitsCount, Way: asWay(`\bwithout {going|getting|running|passing|being} {over|past|above|under|below|beyond} {Number|[0-9]+}{ Stop}*$`), Ask: hear.OpenQuestion("Over that in what?", "fewest rails, gap at most 4")},

	// The opening left at a size is on no side; "to go" ends nothing.
	{Looks: hear.Stated(solver.OpeningSide), Way: asWay(`^{Lead|, }*{i|we|you|he|she|they }?left {it|that|the (opening|doorway)|them} {at|as} `), Ask: askback.Meant.Open("opening 36")},
	{Looks: hear.KindOf(act.Quit), Way: asWay(`^{Lead|, }*{am|are} {i|we} {all|nearly|almost }?{done|finished|through|good|set}\b|^{Lead|, }*{is that|that is|that's} {it|all|everything}{ ,| then}? {right|then|correct|ok|okay}? ?\?`), Not: asWay(`\b{bye|goodbye|thanks|thank}\b`), Ask: doneNow},
}

// joinedOtherwise are such lines that may be read clause by clause.
var joinedOtherwise = []hear.OpenWay{
	{Looks: changesOrTries, Way: asWay(`^{Lead|, }*how {do|can|should|would|could} {i|we} {open|tighten|raise|lower|widen|narrow|close|lift|shrink|reduce|increase|loosen} {the|my|our} `), Ask: askback.Meant.Open("gap 1/4 more")},
	{Looks: hear.KindOf(act.HelpMe), Way: asWay(`^{Lead|, }*how {do|can|should|would|could} {i|we} {open|tighten|raise|lower|widen|narrow|close|lift|shrink|reduce|increase|loosen} {the|my|our} `), Ask: askback.Meant.Open("gap 1/4 more")},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{says?|said|tells?|told|thinks?|thought|reckons?|claims?|suggests?|suggested|wants?|wanted} {me|us|that }*{we|i|you|to} {can|could|may|might|should|ought to|have to|must }?{just|safely }?` + letGo + ` `), Not: asWay(`\b{i|we} {want|wanted|thought} to\b`), Ask: forgetOrTry},
	{Looks: valued, Way: asWay(`[a-z0-9"] ?{,|;|-|--|\?|\.| or}? ?otherwise {then|just|please|do|make|keep|use|put|add|go|take|set|leave|drop|have|let us|we|i|it is|with|at|a|an|the|at least|about }*{Number|[0-9]|rail|board|gap|post|stiffener}`), Not: asWay(`\b{fine|ok|okay|good|great|right|same|alright|stands} ?{,|;|\.|-}? ?{and|but}? ?otherwise\b|^otherwise `), Ask: whichHolds},
	{Looks: hear.KindOf(act.Check), Way: asWay(`\? otherwise {[a-z]+ }?{add|make|use|put|drop|take|set|give|cut|get|remove|lose|change|raise|lower|widen|go}\b`), Ask: onlyThen},
	{Looks: hear.KindOf(act.WhatIf), Way: asWay(`^{Lead|, }*{with|at|for|using|given|having} .*\b{could|can|would|might|is|are} {i|we|there} `), Ask: ifTwoTried(askback.Meant.Open("what if the gap is 3, five rails"))},
	{Looks: hear.KindOf(act.WhyNot), Way: asWay(`^{Lead|, }*{with|at|for|using|given|having} .*\bwhy not `), Ask: askback.Meant.Open("what if seven rails, gap 3")},
	{Looks: hear.KindOf(act.Quit), Way: asWay(`\b{have|has|need|needs} to go {that|this|so|as|any} [a-z]+|\b{do|does|will|would|should|must} {i|we|you} {really|just|still }?{have|need|got|want} to go\b`), Ask: askback.Meant.Open("is the wall 48 high")},
}

// ifTwoTried asks where two things are tried one by one.
func ifTwoTried(ask func(act.Act, []act.Act) solver.Question) func(act.Act, []act.Act) solver.Question {
	return func(a act.Act, all []act.Act) solver.Question {
		if n := slices.IndexFunc(all, hear.KindOf(act.WhatIf)); !slices.ContainsFunc(all[n+1:], hear.KindOf(act.WhatIf)) {
			return solver.Question{}
		}
		return ask(a, all)
	}
}

const letGo = `{drop|lose|forget|remove|ditch|scrap|delete|clear|get rid of|omit|do without|leave out|take out|toss|skip|cut out|throw out}`

// limits reports whether a bound is set.
func limits(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Op == solver.LT || s.Op == solver.LE || s.Op == solver.GT || s.Op == solver.GE
	})
}

// limitsCount reports whether a count is bounded.
func limitsCount(a act.Act) bool {
	return limits(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return solver.KindOf(s.Name.Quantity) == solver.Count })
}

// changesOrTries reports whether something is changed, tried or held against what there is by how much it changes.
func changesOrTries(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Op == solver.Plus || s.Op == solver.Minus })
}

// highAsMany reports whether more rails than a wall commonly has are set, tried or checked: as a height it is likelier.
func highAsMany(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Op == solver.Eq && s.Value.Of == nil && exact.Int(15).Less(s.Value.Num)
	})
}
