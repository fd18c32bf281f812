package guard

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// Questions and trials of which something was taken for something else: a bare limit behind a count of rails, a figure that the wall comes to, what is up already. They
// are asked back.

var (
	whatLimit   = hear.OpenQuestion("What is that figure a limit of?", "what if six rails, gap over 2")
	shallITry   = hear.OpenQuestion("Shall I try that?", "what if equal bays")
	howFarStand = hear.OpenQuestion("How far from which end post is that?", "post 1 60 from the left")
	whichAreUp  = hear.OpenQuestion("How many shall there be in all?", "six rails")
)

// triedAmiss are such lines.
var triedAmiss = []hear.OpenWay{
	{Looks: hear.Stated(solver.Bay), Way: asWay(`[a-z0-9"'] ?{,|;|-} {so |and |but |then }*{is|are} {bays?|the bays} ?{Number|[0-9]+}?{ still| now| then}* `), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`\b{between|from} .*{,|;} {but }?{better|rather|preferably|best|ideally} [^,;]*\bif {it|that|they} {fits?|works?|goes|can}\b`), Ask: hear.OpenQuestion("Just that, or anything in between?", "gap in 2..3")},
	{Looks: setsOfWall, Way: asWay(`\b{gaps?|opening|wall|bays?|spacing} {will|would|'ll|'d} {be|come to|come out at|end up} {[a-z0-9/-]+ }*with {[0-9]+|Number} {rails|boards|slats|planks|posts|stiffeners}\b`), Ask: checkOrSet},
	// A bare limit is of what the trial is about, not of what is tried.
	{Looks: limitsItsCount, Way: asWay(`\b{over|under|above|below|past|beyond|more|less|fewer|within|inside} `), Ask: whatLimit},
	{Looks: limitsItsLength, Way: asWay(`\bif {i|we} {use|used|have|had|go with|went with|put in|do|did|take|took} {Number}{ Stop|[?]}*$`), Ask: askback.Meant.Open("what if six rails, gap under 3")},
	// What it comes to.
	{Looks: triesCount, Way: asWay(`\b{make|makes|made|bring|brings|get|gets|put|puts} {it|me|us} {to |up to |at |out at }?{about |just |exactly }?{Number}{ Stop|[?]}*$`), Ask: askback.Meant.Open("what if six rails, wall 48 high")},
	{Looks: costsBare, Way: asWay(`\b{cost|costs|run} {me |us }?{more|less} than {Number}{ Stop|[?]}*$`), Ask: hear.OpenQuestion("More or less than that: which part?", "what if six rails, what does it cost")},
	{Looks: hear.Stated(solver.Spare), Way: asWay(`^{Lead|, }*{is|are|would|will|does|do} .*{more|less|fewer} than {i|we|you} {really |actually }?{need|needed|have to have}\b`), Ask: askback.Meant.Open("how many rails")},
	// How far something may go, and how to get there.
	{Looks: checksGoal, Way: asWay(`\b{is|was} there {a|any|some} {max|maximum|min|minimum|limit|upper limit|lower limit|smallest|largest}\b`), Ask: shallITry},
	{Looks: hear.KindOf(act.State, act.Check, act.Why, act.WhatIf), Way: asWay(`^{Lead|, }*{how {can|could|would|might|should|do|does} {i|we|you|one}|{is there }?any way|any chance|is there {a|some} way} .*\b{even|equal|equally|same|alike|least|widest|largest|biggest|smallest|tightest|fewest|most|cheapest}\b`), Not: asWay(`\b{please|get the same|come to|many|much|know|tell}\b`), Ask: shallITry},
	// So many are up already: there may be more to come.
	{Looks: hear.Stated(solver.Rails, solver.Stiffeners, solver.AddedPosts, solver.Bays), Way: asWay(`\b{i|we}{ have|'ve}{ got}?{ now|already|only|just|all|the|about}* {Number|a couple of} {Board}{ already|now}* {up|on|in place|hung|mounted|screwed on|screwed in|fixed|done|fastened|nailed on}{ already|now|so far|there|the wall|on it}*{ Stop|,|and|so|but}`), Not: asWay(`\b{in all|total|altogether|make it|make that}\b`), Ask: whichAreUp},
	{Looks: hear.Stated(solver.Rails, solver.Stiffeners, solver.AddedPosts, solver.Bays), Way: asWay(`\b{i|we}{ have|'ve}{ got}?{ now|already|only|just|all|the|about}* {Number|a couple of} {Board}{ already|now}* {up|on|in|in place|hung|mounted|screwed on|screwed in|fixed|done|fastened|nailed on}{ already|now|so far|there}*$`), Not: asWay(`\b{in all|total|altogether|make it|make that}\b`), Ask: whichAreUp},
	// Where a post stands is no width of a bay.
	{Looks: triesOf(solver.Bay), Way: asWay(`\b{the|a|my|that} {new|added|extra|middle }?post {is|was }?at {Number}`), Not: asWay(`\bfrom {the|my }?{left|right|house|wall|end}`), Ask: howFarStand},
	{Looks: railsOfBay, Way: asWay(`\bbay {Number}`), Not: asWay(`\bin bay|rails? of bay|bay {Number} {has|have|with|gets|get|had|needs?|be|to}\b`), Ask: askback.Meant.Open("what if five rails, bay 1 over 60")},
	// What is compared with a figure that is not told.
	{Looks: hear.KindOf(act.State, act.WhatIf), Way: asWay(`\bwall .*{higher|taller|lower|shorter} ?,.*\b{is|would|will} .*post {be }?{still }?{taller|higher|shorter|lower}\b`), Ask: askback.Meant.Open("what if wall 2 higher, how tall is the post")},
	{Looks: onlyPostHeight, Way: asWay(`^{Lead|, }*{at|with|on} {Figure}.*\bpost {still |be }*{taller|higher|shorter|lower} than the wall\b`), Ask: askback.Meant.Open("what if wall 50 high, how tall is the post")},
	{Looks: hear.KindOf(act.Ask), Way: asWay(`^{with|given} {an|one|another|two|a} {extra|spare|additional} {board|boards|plank|planks|length|stick}\b`), Ask: hear.OpenQuestion("One more rail in each bay, or one more to buy?", "what if one more rail, what does it cost", "rails += 1", "spare = 1")},
	{Looks: hear.KindOf(act.Ask), Way: asWay(`\b{list|lists|cuts|marks|drawing|layout}{ ,| but}? {no|without|with no|but no} {the |any }?{posts?|stiffeners?|rails?|boards?|opening|doorway}{ Stop|[?]}*$`), Ask: hear.OpenQuestion("What would you like to know, or change?", "no stiffeners, cut list")},
}

// limited are operators of limits.
func limited(op solver.Op) bool {
	return op == solver.LT || op == solver.GT || op == solver.LE || op == solver.GE
}

// limitsItself reports whether a trial sets something and limits it besides.
func limitsItself(a act.Act, of func(solver.Kind) bool) bool {
	if a.Kind != act.WhatIf && a.Kind != act.Check {
		return false
	}
	for _, lim := range a.Statements {
		if !limited(lim.Op) || lim.Value.Of != nil || !of(solver.KindOf(lim.Name.Quantity)) {
			continue
		}
		if slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name == lim.Name && !limited(s.Op) }) {
			return true
		}
	}
	return false
}

func limitsItsCount(a act.Act) bool {
	return limitsItself(a, func(k solver.Kind) bool { return k == solver.Count })
}

func limitsItsLength(a act.Act) bool {
	return limitsItself(a, func(k solver.Kind) bool { return k == solver.Length })
}

// triesCount reports whether a count, and nothing else, is tried or checked.
func triesCount(a act.Act) bool {
	return (a.Kind == act.WhatIf || a.Kind == act.Check) && len(a.Statements) == 1 && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// triesOf tells acts that tell, try or check some quantities.
func triesOf(of ...solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool {
		return (a.Kind == act.State || a.Kind == act.WhatIf || a.Kind == act.Check) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return slices.Contains(of, s.Name.Quantity) })
	}
}

// costsBare reports whether a trial limits what may be spent to less than any wall costs.
func costsBare(a act.Act) bool {
	return a.Kind != act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return (s.Name.Quantity == solver.Budget || s.Name.Quantity == solver.CostOf) && s.Value.Of == nil && s.Value.Num.Less(exact.Int(20))
	})
}

// onlyPostHeight reports whether a figure was taken for the height of a post, which is compared with another.
func onlyPostHeight(a act.Act) bool {
	return triesOf(solver.PostHeight)(a) && len(a.Statements) == 1 && a.Statements[0].Value.Of == nil
}

// checksGoal reports whether the best of something is checked.
func checksGoal(a act.Act) bool {
	return a.Kind == act.Check && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Goal })
}

// railsOfBay reports whether the rails of one bay are tried.
func railsOfBay(a act.Act) bool {
	return a.Kind == act.WhatIf && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && strings.HasPrefix(s.Name.String(), "bay ")
	})
}
