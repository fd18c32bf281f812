package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// Orders that are somebody else's, or of one piece where all would be forgotten; what would come of a count and not be wished; what is asked of the work and
// not of the wall. Where such a line was heard as an order, a wish or a question of something else, it is asked back. Common ways of speech, no source.

// takenAmiss are such lines, each with what is heard of it.
var takenAmiss = []hear.OpenWay{
	// What others say is to be done.
	{Looks: hear.KindOf(act.Forget, act.ForgetAllBut, act.Undo, act.Redo, act.StartOver, act.TakeThat, act.Take), Way: asWay(`^{Lead|, }*{they|he|she|(the|my|our) [a-z]+} ({says?|said} |{says?|said} (i|we) {should|must|ought to|have to|need to} ){to|just|go ahead and }*{undo|forget|drop|scrap|scratch|lose|ditch|dump|start|take|redo|toss|delete|remove}\b`), Ask: hear.OpenQuestion("Shall I do that? Please say it by itself.", "undo")},
	{Looks: hear.ChangesLength, Way: asWay(`^{Lead|, }*{they|he|she|(the|my|our) [a-z]+} {says?|said} {to |just }*{drop|lose|skip|remove|ditch|scrap|take out} `), Not: asWay(`[,;]|\b{so|and|but}\b`), Ask: checkOrSet},
	// What comes of a count is told, not wished.
	{Looks: setsOfWall, Way: asWay(`^{Lead|, }*{[0-9]+|Number} {rails|boards|slats|posts|stiffeners} {gets?|brings?|takes?} {me|us|you} {to }?{a|an|the|[0-9]+|Number}\b|\b{bays|gaps|spaces} {come out|come to|end up|work out} .*\b{with|at|using} {Number|[0-9]+} {rails?|boards?|slats?|posts?|bays?|stiffeners?}\b`), Not: asWay(`\b{please|want|make|should|must|if}\b|\?`), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`^{Lead|, }*with {a|an|the|only|just }?[a-z0-9/ -]+?,? ?{that|this|it|i|we|you} ?{would|'d|'ll|will} {then|only|just|also|still }?{be|have|get|need|want|end up|come|take}\b`), Not: asWay(`\b{please|like|rather|prefer|have to have|be great|be good|be nice|be fine|be perfect|be ideal}\b|\?`), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`\b{gaps?|opening|bays?|wall|rails|spaces?} ({would|'d|'ll} {then|only|just }?{be|get|come|end up}|{gets|comes out|comes to|ends up|works out|came out}) .*\b{with|at|if i use|using} {Number|[0-9]+} {rails?|boards?|slats?|posts?|bays?|stiffeners?}\b`), Not: asWay(`\b{please|want|make|provided|providing|none|no|if|as long as|so long as|unless|until|happy}\b|\?`), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`^{Lead|, }*{i|we|you} {get|end up with|come to|come out with|wind up with} [^?]*\b{with|at|using|from} {Number|[0-9]+} {rails?|boards?|slats?|posts?|bays?|stiffeners?}\b|^{Lead|, }*{i|we} {should|ought to|must|might|may} {be getting|be ending up with|be seeing|end up with|get} `), Not: asWay(`\b{please|want|make}\b|\?`), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`\b{gaps?|opening|bays?|spaces?} {came out|comes out|came|works out|worked out|ended up|ends up} {at|to|as} [^,;]*[,;] {and|but|so }?{why|how come|how so}\b`), Ask: checkOrSet},
	// Of others' walls.
	{Looks: valued, Way: asWay(`\b{wall|one|fence|gate|house} {Nearby} ({Has}|[0-9]|{Number})|\b{is|are|was} the {wall|one|fence|gate|house} {Nearby}\b`), Not: orWay(oursToo, `\b{says?|said|told|tells|reckons?|thinks?|claims?}\b|[,;]`), Ask: thisWallToo},
	{Looks: valued, Way: asWay(`\bthe {wall|fence} next door\b`), Not: asWay(`[,;]|\b{and|but}\b`), Ask: thisWallToo},
	{Looks: hear.KindOf(act.Ask, act.Why, act.WhyNot), Way: asWay(`\bthe {wall|fence} next door\b`), Not: asWay(`[,;]|\b{and|but}\b`), Ask: askback.OnlyTheWall.Open("how many rails")},
	{Looks: hear.KindOf(act.Check), Way: asWay(`\b{my|our|his|her} {Kin} {used|built|put in} `), Not: orWay(theirsToo, `\b{says?|said|told|tells|drew|sheet|quote|plan|drawing|sketch|check|right}\b|[,;]`), Ask: thisWallToo},
	// What is taken back or forgotten is one change, or one piece.
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b({undo|revert|reverse|cancel|retract|roll back} (that|the|this|my|our|last) |take back (that|the|this|my|our|last) )(last )?([a-z]+ ){1,2}?{changes?|one|edit|adjustment|tweak}\b|\b{undo|take back|revert|reverse|cancel|retract|roll back} (that|the|this|my|our|last) {last }?{change|edit|adjustment|tweak} {to|of|in} `), Ask: undoneOrForgotten},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{undo|revert|reverse|cancel|take back} {what|whatever|that thing|the thing|everything} {i|we} {just |last }?{did|changed|was doing} `), Ask: undoneOrForgotten},
	{Looks: forgetsOf(solver.Rails), Way: asWay(`\b{forget|never mind|drop|scrap|scratch|ignore|lose|ditch} {about }?(the|that|this|my) ({last|top|bottom|first|second|third|fourth|fifth|sixth|lowest|highest|upper|lower} {rail|board|slat|plank}|{rail|board|slat|plank} {at|on|up|under|over|above|below|by|near}\b)`), Ask: hear.OpenQuestion("All rails, or that one's place?", "forget rail 3 top")},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{my|our|the|all the|those|all my} {rails?|boards?|slats?|planks?|posts?|stiffeners?|brackets?|anchors?} {are|is|have|has|'re|'s} {all|both|now|already }?{gone|missing|stolen|vanished|disappeared}\b`), Ask: hear.OpenQuestion("Used up or lost, or not wanted?", "no stiffeners")},
	{Looks: forgetsOf(solver.Bay), Way: asWay(`\b{measurements?|measures?|measured|readings?|reading}\b`), Ask: hear.OpenQuestion("What was measured there, or its width?", "forget measured bay 1 top")},
	{Looks: hear.KindOf(act.StartOver), Way: asWay(`\b{can|could|should|may|do|must|would|shall} {i|we|you} {start|begin|work|go} {at|from} the {top|bottom|left|right|front|back}\b`), Ask: hear.OpenQuestion("Set the rails from there, or forget all that was said?", "start over")},
	{Looks: hear.KindOf(act.TakeThat), Way: asWay(`\b{use|go with|build with|work with|make do with|build it from|build it with} {up }?{what|whatever|all|anything|the stuff|the wood|the lumber|the boards} {that }?{i|we} ?{have|'ve got|'ve|got|already have|have got|had|own}\b`), Ask: hear.OpenQuestion("Which boards do you have, and how many?", "I have six ten foot 2x6")},
	{Looks: asksAny, Way: asWay(`\b{i|we|he|she} {do not|don ?'t|dont|could not|couldn ?'t} {really|much|honestly }?{care|mind} {about }?{how|what|which|where}\b|\b{it does not|it doesn ?'t|does not|doesn ?'t} matter {to me|to us }?{how|what|which|where}\b`), Not: asWay(`[,;]|\bbut\b`), Ask: notCared},
	{Looks: func(a act.Act) bool { return a.As != "" || a.Kind == act.WhatIf || a.Kind == act.Ask }, Way: asWay(`\bhow many {[a-z]+ }*?{do|does|did|would|will|can|could|'d} {i|we|you|it|that|this|they|a [a-z]+|[a-z]+ing [a-z ]+} save\b`), Not: asWay(`\bsave {it|this|that|them|the|a} {as|to|in|into|under}\b|\bas csv\b|\bcsv\b|\bspreadsheet\b`), Ask: hear.OpenQuestion("What to buy then, or what it costs?", "what if five rails, then what do I buy")},
	{Looks: asksAny, Way: asWay(`\bhow much {higher|lower} {up|down }?{do|does|can|should} {i|we} `), Ask: askback.HowMuchOf.Open("how high is the post")},
	// What is asked of the work.
	{Looks: hear.AsksTopic("posts"), Way: asWay(`\b{rails?|boards?|slats?|planks?|stiffeners?|brackets?} ?{[0-9]+|Number}?{[a-z0-9]+ }*,? {and|so|then }?where {do|does|should|would|will|must|shall|could|can} {it|they|that|this|those|he|she|that one|this one} {go|be|sit|belong|stand|end up|land}\b`), Ask: askback.WhereGoes.Open("where do my marks go")},
	{Looks: asksOf(solver.OpeningSide), Way: asWay(`\bwhere {does|do|will|would|should} [^,;?]* {end|stop|finish|start|begin}\b|\bwhere ?{is|'s} the [a-z]+ {edge|end|face|corner} of the\b`), Ask: hear.OpenQuestion("From which end post?", "opening 2 from left")},
	{Looks: hear.KindOf(act.Why), Way: asWay(`\bwhy {is|are|'s} {the|my|our }{top|bottom|lowest|highest|second|third|upper|lower} {rails?|boards?|slats?|planks?|one} {a|an }?{[0-9]+|Number} {by|x} {[0-9]+|Number}`), Ask: hear.OpenQuestion("Why what, of those?", "why rail size")},
	{Looks: asksOf(solver.WallHeight), Way: asWay(`\bhow {far|high} {up|down} {do|should|must|can|would|shall} {i|we|you|it|they} {start|begin|go first|set off}\b`), Ask: hear.OpenQuestion("How high the bottom rail sits?", "what is the bottom gap")},
	{Looks: asksAny, Way: asWay(`\bhow much {room|space|clearance|gap }?{do|should|must|shall|would|will} {i|we|you} leave {open|free|clear }?{at|on|along|near|by|above|over} (the )?{top|sides?|left|right|end|ends|middle|front|back}\b`), Ask: askback.HowMuchOf.Open("what is the gap")},
	{Looks: asksOf(solver.Gap), Way: asWay(`\bhow many {gaps|spaces|spacings|openings between}\b`), Not: asWay(`\bwide\b`), Ask: hear.OpenQuestion("How many rails, or how wide the gaps?", "how many rails")},
	{Looks: asksAny, Way: asWay(`\bhow long {have i got|have we got|do i have|do we have|before|until|till|since|ago|has it|have i|have we}\b`), Not: asWay(`\bhow long {have|do} {i|we} {got|have }?{to|my|the}? ?{cut|make|saw|cuts}\b`), Ask: notOurTrade},
	{Looks: hear.AsksQuantity, Way: asWay(`\b{room|margin|leeway|allowance|slack|play} {is there|do i have|have i got|do we have|have we got|left }?for {error|errors|mistakes?|slop|wobble|bad cuts|a bad cut|a slip}\b`), Ask: hear.OpenQuestion("How much shorter to cut, or spare boards?", "what is the fit")},
	{Looks: hear.Stated(solver.Kerf), Way: asWay(`\b{good|accurate|true|exact|precise|right|sure} {to|within|to within|down to} `), Ask: orElse("Is that the saw cut, or how fine you measure?", solver.Tape)},
	{Looks: triesAny, Way: asWay(`\bif {i|we|it} ?{am|'m|are|'re|is|'s} {out|off} {by|about|only|just }*[a-z0-9/ -]+ {at|on|near|along} {the|my|one }?[a-z]+\b`), Ask: hear.OpenQuestion("Off in the marks, or in the cuts?", "what if each is off a sixteenth")},
	// Which of two it is.
	{Looks: valued, Way: asWay(`\b{but|and|though|yet} {not|never|no} {over|above|more than|under|below|less than|past|beyond|bigger than|smaller than|wider than|higher than} {the|my|our|its} {other }?{gaps?|opening|bay|wall|bottom gap|post|span|rails?|others?}\b`), Ask: hear.OpenQuestion("Which figure, and which limit?", "bottom gap 3, bottom gap at most the gap")},
	{Looks: setsOfWall, Way: asWay(`^{Lead|, }*with [^,]*, {and|but|then|so }?{it|that|this} {is|'s|does|comes|would|will} ?{not|n't|never} {to|come to|be|come out at|reach|get to }?{[0-9]+|Number}\b`), Ask: askback.Meant.Open("what if six rails, then how tall is the wall")},
	{Looks: hear.Stated(solver.Fit), Way: asWay(`\b{gaps?|opening|bays?|wall|span|spaces?|post|posts}\b[^,;]*\b{half|quarter|eighth|sixteenth|inch|inches|[0-9/]+|Number} {shy|short|under|light|scant}{ Stop}*$`), Not: asWay(`\b{rails?|boards?|cut|cuts|slats?}\b|,`), Ask: hear.OpenQuestion("A little less than that, or that much less?", "gap 2-3/8")},
	{Looks: hear.Stated(solver.Bays), Way: asWay(`\bposts?,? {[0-9]+|Number}(?:$|[ .!])`), Not: asWay(`\b{bays?|panels?|sections?|stretch|stretches}\b`), Ask: hear.OpenQuestion("Two with the end posts, or besides them?", "2 added posts")},
	{Looks: changesOf(solver.WallHeight), Way: asWay(`\b{add|put|tack|stick} {another|an extra|an|a|about|on }*[a-z0-9/ -]*{foot|feet|ft|yard|meter|'} {more|on|extra }?{to|on|onto} {the|my|our|this|that} {wall|half wall|fence}\b|\b{wall|half wall|fence} {gets|get|needs|wants} {another|an extra|a|an} {foot|[a-z0-9]+ feet} {more}?{ Stop}*$`), Not: asWay(`\b{high|higher|height|tall|taller|top|up|raise|long|longer|length|end|wide|wider}\b|[,;]`), Ask: orElse("Higher, or longer?", solver.Span)},
	{Looks: changesOf(solver.Opening), Way: asWay(`\b{push|move|bring|slide|shove|nudge|pull|shift} {the|my|our|that }?{opening|doorway|gateway|walk - through|walkthrough|walkway|entrance|gate}{ on}? {out|over|along|in|back}\b`), Not: asWay(`\b{wide|wider|width|narrower|clear}\b`), Ask: hear.OpenQuestion("Wider, or moved over?", "opening a foot wider")},
	{Looks: hear.Stated(solver.Measured), Way: asWay(`\b(at )?{a|one|two|three|four|five|six|ten|twelve|half a|[0-9/-]+} ?{foot|feet|ft|inch|inches|in|'|"}? {and a half }?{off|above|from|over|up from|up off|up} (of )?{the }?{floor|ground|slab|concrete|deck}\b`), Not: asWay(`\b{rail|board|slat|plank} {[0-9]+|Number}|\btop\b`), Ask: hear.OpenQuestion("At the bottom, at the top, or at which rail?", "bay 1 bottom measures 68")},
}

// changesOf are acts that change one quantity by an amount.
func changesOf(q solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool { return hear.ChangesLength(a) && a.Statements[0].Name.Quantity == q }
}

// orElse asks whether what was heard is meant, or the same of another quantity.
func orElse(text string, other solver.Quantity) func(act.Act, []act.Act) solver.Question {
	return func(a act.Act, all []act.Act) solver.Question {
		b := a
		b.Statements = slices.Clone(a.Statements)
		b.Statements[0].Name = solver.Name{Quantity: other}
		q := solver.Question{Text: text, Example: parse.Normal([]act.Act{a})}
		if len(all) == 1 {
			q.Choices = []string{q.Example, parse.Normal([]act.Act{b})}
		}
		return q
	}
}

// triesAny reports whether something is tried.
func triesAny(a act.Act) bool { return a.Kind == act.WhatIf }

// undoneOrForgotten asks whether the last change is taken back, or all that was said of it forgotten.
func undoneOrForgotten(a act.Act, all []act.Act) solver.Question {
	if len(all) > 1 {
		return askback.ForgetWhat.Open("undo")(a, all)
	}
	forget := parse.Normal(all)
	return solver.Question{Text: "Take back the last change, or forget all that was said of it?", Choices: []string{"undo", forget}, Example: "undo"}
}

// notCared asks whether what nobody cares for is to be forgotten.
func notCared(a act.Act, all []act.Act) solver.Question {
	q := solver.Question{Text: "Shall I forget what was said of it?", Example: "forget rails"}
	if len(all) == 1 && a.Name != nil {
		q.Choices = []string{parse.Normal([]act.Act{{Kind: act.Forget, Name: a.Name}})}
		q.Example = q.Choices[0]
	}
	return q
}
