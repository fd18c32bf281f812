package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// What was heard of another part than it is said of: of the one that is left out of all, of the bay whose number only tells where, of the one that "that" does
// not stand for. Nothing in the line tells which reading was meant, so it is asked. Everyday speech, no source.

const (
	oneNamed  = `{in|at|for|on }*{the|my|our }?{{bay|opening|post|rail} Number|{first|second|third|fourth|last|left|right|middle|end|bottom|lowest|top} {one|bay|gap|opening|post|rail|board|space}}`
	wordCount = `{one|two|three|another}`
	behindIt  = `{ {is|stays|remains|keeps|be}? ?{alone|out|as is|as it is|as it was|put|unchanged|the same}}?{ Stop}*$`
	spanNamed = `{opening|doorway|span|gap|wall|wall height|bottom gap|bay Number|bay|first bay|second bay}`
	timesWord = `{twice|half|double|triple|three times|a third of|a quarter of|a third|two thirds of}`
)

var (
	ofWhichBays  = hear.OpenQuestion("Which of them change, and which not? Please name each.", "bay 1 12 inches less")
	whatStays    = hear.OpenQuestion("What stays there, and how big is it?", "bay 60, bay 2 48")
	boardsOrBay  = hear.OpenQuestion("One more or less: of the rails, or of what else?", "one more stiffener in bay 2")
	postIntoBay  = hear.OpenQuestion("Where does it go, and what becomes of that bay?", "one more added post")
	howManyThere = hear.OpenQuestion("How many stiffeners in each bay, then?", "two stiffeners in bay 2")
	whichRailUp  = hear.OpenQuestion("One rail more, or what of that rail?", "one more rail", "rails += 1")
	railOrMany   = hear.OpenQuestion("Which rail of the bay measures so?", "bay 2 rail 1 measures 59")
	feetOrMany   = hear.OpenQuestion("So many feet apart, or so many of them?", "stiffener spacing 36 in bay 2")
	ofWhichTwo   = hear.OpenQuestion("The same as which of them?", "bay 3 = bay 1")
	thatIsWhich  = hear.OpenQuestion("Twice or half of which?", "bay 2 twice bay 3")
	itsShare     = hear.OpenQuestion("Is the first that share of the other, or does the other change?", "opening half the span")
	howWideToo   = hear.OpenQuestion("And how wide shall it be? Please say that by itself.", "opening 2 inches wider")
	whereOrWide  = hear.OpenQuestion("Where it starts, or how wide it is?", "opening 36")
	widerOrNot   = hear.OpenQuestion("Wider or narrower by that?", "opening 2 inches wider")
	whichOfThem  = hear.OpenQuestion("Which of them is that?", "bay 1 60")
	ruleOrSize   = hear.OpenQuestion("Is that so of the wall, or a rule? What shall it have?", "two stiffeners, bay at most 60")
	setOrLess    = hear.OpenQuestion("So many in all, or by so many more or fewer?", "gap 1/8 less, two rails fewer")
	whichGaps    = hear.OpenQuestion("The gap at the bottom, and which other?", "gap 2, bottom gap 2")
	dropByOrTo   = hear.OpenQuestion("Down to that, or down by it?", "gap 1/8 less")
)

// ofAnother are such lines, each with what is heard of it.
var ofAnother = []hear.OpenWay{
	// All but one: only those behind the word for it were changed.
	{Looks: changesSome, Way: asWay(`\b{all|every|each|any|both|everything}\b.* ` + leavesOut + ` ` + oneNamed + `\b`), Not: lowestLeft, Ask: onlyChanged(ofWhichBays)},
	{Looks: changesSome, Way: asWay(`\b{bays|openings|gaps|posts|rails|boards|stiffeners|spaces} {except|except for|excepting|bar|barring|save|save for|other than|apart from|aside from|excluding|minus|but not|but} ` + oneNamed + `\b`), Not: lowestLeft, Ask: onlyChanged(ofWhichBays)},
	// One of them stays.
	{Looks: notOfGaps, Way: asWay(`\b{keep|keeping|leave|leaving} {the|my|our }?{bottom|lowest|top|highest|middle|left|right|first|second|third|last|end|outer|inner|added|new} {one|ones|two}` + behindIt), Ask: whatStays},
	{Looks: ofEveryBay, Way: asWay(`\b{keep|keeping|leave|leaving} {bay|opening} {Number}` + behindIt + `|\b{bay|opening} {Number} {stays|remains|keeps}\b`), Not: anyWordOf(`how|what|which|would|does`), Ask: whatStays},
	{Looks: hear.Stated(solver.PostHeight), Way: asWay(`\b{added|new|middle} {post|one} {stays|remains|keeps}\b|\b{keep|leave} {the }?{added|new|middle} {post|one}` + behindIt), Ask: whatStays},
	// In a bay, and not so many.
	{Looks: changesSome, Way: asWay(`\b{post|column|bay|gap|opening} {to|next to|beside|in|into|by} {bay} {Number}\b`), Not: anyWordOf(`inch|inches|in (bay|the bay)|foot|feet|move|slide|shift|change`), Ask: postIntoBay},
	{Looks: hear.Stated(solver.Bay), Way: asWay(`\b{one more|another|an extra|one less|one extra} {post|column|opening|gap} in bay {Number}\b`), Ask: postIntoBay},
	{Looks: hear.Stated(solver.Stiffeners, solver.Rails), Way: asWay(`\b{move|shift|slide|bring|take|carry} {the|that|this|my|our }?{stiffeners?|rails?|boards?} {over }?{to|into} bay {Number}{ Stop}*$`), Ask: howManyThere},
	{Looks: hear.Stated(solver.BracketReach), Way: asWay(`\b{rail|board|slat|plank} {above|over|on top of|atop|below|under} {the }?{rail|board|slat|plank} {Number}{ Stop}*$`), Ask: whichRailUp},
	// One more, of what is not said again.
	{Looks: inchesOfBay, Way: asWay(`\b` + wordCount + ` {more|less|fewer|extra|out}?{ of|off}? ?{in|out of|from|to|of} bay {Number}|\bbay {Number} {{loses|gets|gains|has|takes|needs|is} }?{{one|another}( {more|less|fewer})?|{two|three|four} {more|less|fewer}}{ Stop}*$|\b{each|every} bay {one|two|another}( {more|less|fewer})?{ Stop}*$|\b{one|two|three|another} {more|less|fewer|extra} {in|per} {each|every|a|the }?bay\b|\b{add|put|take|drop|lose} {one|another}( {more|less})? {in|to|from|out of} {bay Number|each bay|every bay}`), Not: asWay(`\b{inch|inches|foot|feet|wider|narrower}\b`), Ask: boardsOrBay},
	{Looks: forgetsOf(solver.Bay), Way: asWay(`\b{drop|lose|forget|remove|scrap} {one|another|two} {in|from|of|out of} bay {Number}`), Ask: boardsOrBay},
	{Looks: hear.Stated(solver.Stiffeners, solver.StiffenerSpacing), Way: asWay(`\bstiffeners? .*{apart|spacing|spaced|on center}.* in bay {Number} ?,? {and|but }?{one|two|three|four|five|six|seven|eight|[1-8]} in bay`), Ask: feetOrMany},
	{Looks: tooManyRails, Way: asWay(`\b{rails?|boards?|slats?|planks?} {in|of} bay {Number} {now }?{measures?|measured|are|is|comes? to|came to|reads?} `), Ask: railOrMany},
	{Looks: tooManyRails, Way: asWay(`\bbay {Number} {rails?|boards?|slats?|planks?} {now }?{measures?|measured|comes? to|came to|reads?} `), Ask: railOrMany},
	{Looks: hear.Stated(solver.Measured), Way: asWay(`\b{bottom|lowest} {rail|board|slat|plank}\b.*\b{off|above|up from|from|over} {the|my|our|of the }?{floor|ground|slab|deck|concrete}\b`), Ask: hear.OpenQuestion("Is that how high it sits, or how long it is?", "bottom gap 2")},
	{Looks: hear.Stated(solver.Bay), Way: asWay(`\b{rails|boards|slats|planks} {in|of} bay {Number} {now }?{measure|measured|are|come to|came to|read} {Number}`), Ask: railOrMany},
	{Looks: hear.Stated(solver.Bay), Way: asWay(`\b{spacing|apart|gaps?|stiffeners?|rails|boards}\b.* {except|but|except for|other than} {in|at|for} bay {Number} ?, {and }?{Number}( {inches|inch|in})? there\b`), Ask: whatThere},
	{Looks: setsCountTo, Way: asWay(`^{please|just|now|so|ok|and }*{drop|lower|raise|lift|widen|narrow|tighten|close|open|shrink|cut|take|add|trim|reduce|increase|lengthen|shorten|knock} [^,;.]* and {Number} {rails?|boards?|slats?|planks?|stiffeners?|posts?}{ Stop}*$`), Not: asWay(` {to|at|of|for|with} {a|about }?{Number}|{Number} {rails?|boards?|slats?|planks?|stiffeners?|posts?} and`), Ask: setOrLess},
	{Looks: hear.Stated(solver.BottomGap), Way: asWay(`\btop and bottom {gaps?|spaces?}\b|\b{gaps?|spaces?} at {the }?top and {the|at the|at }?bottom\b`), Ask: whichGaps},
	// That, and the same, of which.
	{Looks: relatesBay, Way: asWay(`\b{twice|half|double|triple|less|more|wider|narrower|shorter|longer}\b.*\bbay {Number} ?{,|and|, and} bay {Number} {is|gets|has }?{exactly|just }?{the same|same|likewise|ditto}\b`), Ask: ofWhichTwo},
	{Looks: timesTold, Way: asWay(`\b{same as|as wide as|as big as|as tall as|as high as|equals|like|{half|twice|times|than|of} {of }?{the|my|our|bay|opening|gap|bottom|span}}\b.*{,|and} {and }?.*\b{twice|half|double|triple|three times} {of }?{that|it|this}\b`), Not: anyWordOf(`no|wait|rather|actually|scratch|sorry|make`), Ask: thatIsWhich},
	{Looks: relatesBay, Way: asWay(`\b{double|halve|triple|twice|half of|half} {them|those|these} in bay {Number}\b`), Ask: boardsOrBay},
	{Looks: relatesBay, Way: asWay(`\bthe same ?{,|and} {and }?bay {Number} {is }?{twice|half|double|triple} {that|it|this}\b`), Ask: thatIsWhich},
	{Looks: timesTold, Way: asWay(`{Number}( {inches|inch|in|feet|foot|ft})? ?, {and }?` + timesWord + ` {the|of the|my|our|the gap at }*` + spanNamed + `{ Stop}*$`), Ask: itsShare},
	{Looks: hear.Stated(solver.OpeningFromLeft, solver.OpeningFromRight), Way: asWay(`\b{move|shift|slide|push|bring|scoot|nudge} {the|our|my }?{opening|doorway|walk - through}\b.*\b{left|right}\b.*\b{and|,|then} {then|also }*{{widen|narrow|open|enlarge|shrink} it|make it {[a-z0-9/]+ }+{wider|narrower|bigger|smaller}|{add|take} .* {to|off|from} it}\b`), Ask: howWideToo},
	{Looks: hear.Stated(solver.OpeningFromLeft, solver.OpeningFromRight), Way: asWay(`\bfrom {the }?{left|right}{ post|end|side}? ?{,|and|;|then} {and|then|but }*make it {Number}{ Stop}*$`), Ask: whereOrWide},
	// Which way.
	{Looks: fallsBy, Way: asWay(`\b{from|away from|off} {the|my|our }?right{ hand}?{ post|end|side|end post}?{ Stop}*$|\b{slopes?|goes|runs|tilts?|pitches|climbs?} {gently|slightly }?up{ to|toward|towards}?\b|\bup {to|toward|towards} {the }?right`), Ask: askback.HowItFalls.Open("the floor drops 1 in to the right")},
	{Looks: narrowsIt, Way: asWay(`\b{opening|doorway|walk - through|bay {Number}|bays?|wall|posts|{first|second|third|left|right|last|middle} bay} {right }?out {by }?{a|an|half|Number}\b`), Ask: widerOrNot},
	{Looks: hear.ChangesLength, Way: asWay(`\b{double|halve|twice|triple|half} {the|of the|all the|my|our }*{posts|openings|gaps|columns} in bay {Number}\b`), Ask: postIntoBay},
	// One of several is not how many there are.
	{Looks: countOfParts, Way: asWay(`\b{one|two|three|1|2|3|a couple of} {of the|of my|end|added|bottom|top }*{bays?|posts?|rails?|boards?|slats?|planks?|stiffeners?|openings?}{ {[a-z0-9]+|/}}{0,5} {wider|narrower|higher|taller|shorter|lower|longer|thicker|thinner|deeper}{ Stop}*$`), Not: anyWordOf(`than|gaps?|wall|more|less|fewer|with|so|is the|makes?`), Ask: whichOfThem},
	{Looks: hear.Stated(solver.RailSize, solver.StiffenerSize, solver.PostSize, solver.EndPostSize, solver.AddedPostSize), Way: asWay(`\b{half|some|most|a third|a few|a couple|{one|two|three|four|five|[1-9]} of} {of }?{the|my|our|those|these } ?{rails|boards|slats|planks|stiffeners|posts} {are|is|in|as|of|at|from|be|will be }?{[0-9]+ ?x ?[0-9]|{two|four|six|one} by}`), Ask: whichOfThem},
	{Looks: hear.Stated(solver.RailSize, solver.StiffenerSize, solver.PostSize), Way: asWay(`\b{two|three|four|five|six|seven|eight|[2-9]} {rails|boards|slats|planks|posts|stiffeners} ?{,|and|with|:} {and|with }*{the }?{first|second|third|last|left|right|middle|bottom|top|lowest}{ one|rail|board|post}? {is|in|at|=|as|from}? ?{a }?{[0-9]+ ?x ?[0-9]|{two|four|six} by}`), Ask: whichOfThem},
	{Looks: hear.Stated(solver.OpeningSide), Way: asWay(`\b{two|three|four|[2-9]} {openings|doorways|walk - throughs} ?{,|and|with|:} {and|with }*{the }?{left|right}{ one|opening}? {is|at|=}? ?{Number}`), Ask: hear.OpenQuestion("Where the openings are, or how wide that one is?", "opening 1 36")},
	// A rule for those that are so long is none for the wall.
	{Looks: limitsLength, Way: asWay(`\b{in|split|cut|divide|halve|{for|on|to|with|at|put|of} {any|every|each|all}} {any|every|each|all|the|those|a|an|one }*{bays?|openings?|gaps?|sections?|walls?|panels?|stretch|stretches|spans?} {that are|that is|which is|which are }?{longer than|wider than|bigger than|larger than|shorter than|narrower than|smaller than|higher than|taller than|lower than|more than|less than|over|under|above|below|beyond|past|exceeding} {Number}`), Ask: ruleOrSize},
	{Looks: limitsLength, Way: asWay(`\b{bays?|openings?|gaps?|sections?|walls?|panels?|stretch|stretches|spans?} {that are|that is|which is|which are }?{longer than|wider than|bigger than|larger than|shorter than|narrower than|smaller than|higher than|taller than|lower than|more than|less than|over|under|above|below|beyond|past|exceeding} {about }?{Number}( {feet|foot|ft|inches|inch|in|'|"|mm|cm|m}| high| long| wide)* {should|must|has to|have to|shall|will|would|always|then }*{needs?|takes?|gets?|requires?|calls? for|wants?|has|have|get|sags?|bows?|sag|bow|droops?|bends?|bounces?|flex|flexes|looks?|is too|are too}\b`), Ask: ruleOrSize},
	{Looks: limitsLength, Way: asWay(`^{so|and|but|well|then }*for {bays?|openings?|sections?|panels?|walls?|a bay|a wall|an opening|a gap} {longer than|wider than|bigger than|larger than|shorter than|narrower than|smaller than|higher than|taller than|over|under|above|below|beyond|past} {Number}`), Ask: ruleOrSize},
	{Looks: setsBoth, Way: asWay(`^{so|and|but|well|then }*{a|an|any|every|each} {Number}( - )?( inch| inches| foot| feet| ft| in)? {bay|opening|gap|section|panel|wall|span} {needs|takes|gets|requires|wants|calls for|should have|must have|has to have} `), Ask: ruleOrSize},
	{Looks: setsALength, Way: asWay(`{,|and|then|but} drop it {a|an|by|half|Number}`), Ask: dropByOrTo},
}

// changesSome reports whether something is changed by an amount, in earnest or to try it.
func changesSome(a act.Act) bool {
	return (a.Kind == act.State || a.Kind == act.WhatIf || a.Kind == act.WhyNot) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return parse.Changes(s.Op) })
}

// lowestLeft: the gap at the bottom is a quantity of its own, and is not changed with the others.
var lowestLeft = asWay(`\bgaps\b.* {bottom|lowest} {one|gap|space}\b`)

// fallsBy reports whether the floor is told to fall from left to right, by the foot or in all.
func fallsBy(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.FloorFalls || s.Name.Quantity == solver.FloorAtRight && s.Value.Num.Sign() < 0
	})
}

// narrowsIt reports whether an opening, or bays, are made narrower.
func narrowsIt(a act.Act) bool {
	return changesSome(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Op == solver.Minus && (s.Name.Quantity == solver.Opening || s.Name.Quantity == solver.Bay)
	})
}

// countOfParts reports whether a count is set or changed.
func countOfParts(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return solver.KindOf(s.Name.Quantity) == solver.Count })
}

// setsCountTo reports whether a count of parts is set.
func setsCountTo(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Op == solver.Eq && solver.KindOf(s.Name.Quantity) == solver.Count
	})
}

// limitsLength reports whether a length is limited.
func limitsLength(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return solver.KindOf(s.Name.Quantity) == solver.Length && (s.Op == solver.LT || s.Op == solver.GT || s.Op == solver.LE || s.Op == solver.GE)
	})
}

// setsBoth asks after nothing, and sets a length.
func setsBoth(a act.Act) bool {
	return a.Kind == act.State && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// onlyChanged asks where nothing but changes was heard: of "bays 60 except bay 2 an inch less" both halves were told.
func onlyChanged(ask func(act.Act, []act.Act) solver.Question) func(act.Act, []act.Act) solver.Question {
	return func(a act.Act, all []act.Act) solver.Question {
		for _, b := range all {
			if slices.ContainsFunc(b.Statements, func(s solver.Statement) bool { return !parse.Changes(s.Op) }) {
				return solver.Question{}
			}
		}
		return ask(a, all)
	}
}

// notOfGaps reports whether something else than a gap is told: of gaps the lowest is a quantity of its own.
func notOfGaps(a act.Act) bool {
	return valued(a) && !slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Gap || s.Name.Quantity == solver.BottomGap
	})
}

// ofEveryBay reports whether all bays, or all openings, are told of or changed.
func ofEveryBay(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name == (solver.Name{Quantity: solver.Bay}) || s.Name == (solver.Name{Quantity: solver.Opening})
	})
}

// inchesOfBay reports whether the width of a bay is changed by a few inches.
func inchesOfBay(a act.Act) bool {
	return changesSome(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Bay && s.Op != solver.Times && s.Value.Num.Less(exact.Int(4))
	})
}

// tooManyRails reports whether there would be more rails than any wall has: it is how long they are.
func tooManyRails(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Value.Of == nil && exact.Int(15).Less(s.Value.Num)
	})
}

// relatesBay reports whether a bay is told by another quantity, or is multiplied.
func relatesBay(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Bay && (s.Value.Of != nil || s.Op == solver.Times)
	})
}
