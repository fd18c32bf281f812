package guard

import (
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// What was so or may once be so is not set, and what is taken out is gone: that nothing more is said of how many or how wide there are is another thing.
// Where the one was heard for the other it is asked back. Common ways of speech, no source.

const (
	anyPlace    = `{on|at|in|to|by|against} {the }?{left|right|middle|center|far|near|end|house|other}|{left|right} {side|of}`
	takesOut    = `{remove|take out|take away|get rid of|lose|scrap|pull|pull out|rip out|tear out|cut out|do away with|ditch|eliminate|omit|leave out|skip}`
	takesOutAll = `{take out|take away|get rid of|rip out|tear out|cut out|do away with|eliminate|omit|leave out|skip}` // "remove" and "lose" are of what was said
	moreTimes   = `{twice|double|half|three times|triple|a third|equal|the same|as wide|as high|as big}`
)

var (
	stillSo     = hear.OpenQuestion("Was it so, or is it still?", "the floor is level")
	wantedMaybe = hear.OpenQuestion("Is that wanted, or only tried?", "what if one stiffener in bay 1")
)

// onceOrMaybe are such lines, each with what is heard of it.
var onceOrMaybe = []hear.OpenWay{
	// What was so, or was going to be.
	{Looks: valued, Way: asWay(`^{Lead }*{the|my|our }?{wall|gaps?|spacing|bottom gap|opening|doorway|opening Number|rails|boards|posts|stiffeners|bays|bay Number|span|drop|overall|floor} {was|were|had been}{ once|always|first|originally|all}* {{going|meant|to be going} to be|to be|` + anyPlace + `|` + moreTimes + `}\b[^,;?]*$`), Not: anyWordOf(`but|now|make|instead|today|want|wanted|should|says|said|if|what|measured|already|still|before|may|were to|(i|we) {think|thought|wish}`), Ask: wasOrShall},
	{Looks: valued, Way: asWay(`\b{on|at|for} {the|my|our|that|his|her|their} {old|last|previous|former} {one|wall|fence|job|screen|deck|porch|patio|build|project|house|place}{ Stop}*$|\b{was|were} [^,;?]*\bon that {job|one|build|project|house}{ Stop}*$`), Not: anyWordOf(`but|now|make|instead|today|want|wanted|here|like|same|as|use|set it|keep|need|measured`), Ask: wasOrShall},
	{Looks: hear.Stated(solver.FloorAtRight, solver.FloorFalls), Way: asWay(`^{Lead }*{the|my|our }?{floor|slab|patio|deck|ground} {was|had been}{ once|always|first|originally|all|dead|perfectly}* {level|flat|even}{ Stop}*$`), Ask: stillSo},
	{Looks: hear.Stated(solver.PostLeans), Way: asWay(`\b{leaned|leant|was leaning|was out of plumb|used to lean}\b.*\b{now|today|since} {it|that one|that|both|they} {is|are|'s|'re|stands?}`), Ask: hear.OpenQuestion("Does it still lean, and how far?", "left post leans 3/8 in right in 48 in")},
	// What may be so.
	{Looks: hear.Stated(solver.OpeningSide), Way: asWay(`^{Lead }*{the|my|our }?` + theOpen + ` {might|may|could}{ just|also|maybe|even|well|as well|yet|still}* {go|be|sit|stand|move|shift|end up|come|land}\b`), Not: anyWordOf(`you|not`), Ask: wantedMaybe},
	{Looks: valued, Way: asWay(`^{Lead }*possibly |[a-z] possibly {[0-9]|one|two|three|four|five|six|seven|eight|nine|ten|thirty|forty|on the|at the|in the}| possibly{ Stop}*$|^{Lead }*{it|that|there}? ?could be {[0-9]|one|two|three|four|five|six|seven|eight|nine|ten|thirty|forty|on the|at the|in the}`), Not: asWay(`\?|\b{can|as|you|low|high}\b.* possibly`), Ask: wantedMaybe},
	{Looks: tells(solver.Drop), Way: asWay(`\b` + theWall + ` {might|may|could|can|would}{ just|also|maybe|even|well|as well|yet|still}* drop `), Ask: hear.OpenQuestion("Is the wall to be lower, or the ground beyond it?", "what if the wall is 1 inch lower")},

	// What is taken out.
	{Looks: forgetsOf(solver.Rails), Way: asWay(`\b` + takesOut + ` {a|one|the|that|another} {rail|board|slat|plank} {in|from|of|at|out of} {the|that }?{[a-z]+ }?bay\b`), Ask: fewerThere},
	{Looks: forgetsOf(solver.Stiffeners), Way: asWay(`\b` + takesOut + `{ all|all of}? {the|those|my|our|any }?stiffeners {in|from|of|at|out of} |\b` + takesOut + ` {the|those|all|all the }*{bay Number|[a-z]+ bay} ?'s stiffeners\b`), Ask: noneOrOpen},
	{Looks: forgetsOf(solver.Rails), Way: asWay(`\b` + takesOut + `{ all|all of}? {the|those|my|our|any }?{rails|boards|slats|planks} {in|from|of|at|out of} {the }?{bay Number|[a-z]+ bay}\b`), Ask: bayEmptied},
	{Looks: forgetsOf(solver.OpeningSide), Way: asWay(`\b{` + takesOut + `|take} {the|that|my|our }?{opening|doorway|walk - through} {on|at|in} the {left|right|middle|center}`), Not: anyWordOf(`side`), Ask: hear.OpenQuestion("No opening at all, or may it be anywhere?", "no opening", "openings = 0", "forget opening side")},
	{Looks: forgetsOf(solver.Bay), Way: asWay(`\b{drop|lower|sink} {bay Number|the [a-z]+ bay} {by }?{` + wayDigits + `}`), Ask: hear.OpenQuestion("Is the wall to be lower, or that bay narrower?", "bay 1 a foot narrower")},
	{Looks: forgetsOf(solver.BottomGap), Way: asWay(`\b{drop|lower|set|sink|bring|bring down} {the|my|our }?` + bottomOne + ` {down|all the way|right }*{to|on|onto} {the }?{floor|slab|ground|deck|concrete|patio}\b`), Ask: onFloor},
	{Looks: triesNoBottomGap, Way: asWay(`\b{lose|drop|remove|take out|take off|take away|leave out|skip|omit|pull|scrap|cut out|get rid of}{ out|off|away}? ` + bottomOne + `\b`), Ask: hear.OpenQuestion("One rail fewer?", "what if one rail less", "what if rails -= 1")},
}

// onlyTries reports whether a quantity is tried.
func onlyTries(q solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool {
		return a.Kind == act.WhatIf && len(a.Statements) > 0 && a.Statements[0].Name.Quantity == q
	}
}

// triesNoBottomGap reports whether it is tried to have no gap at the bottom.
func triesNoBottomGap(a act.Act) bool {
	return onlyTries(solver.BottomGap)(a) && a.Statements[0].Op == solver.Eq && a.Statements[0].Value.Num.Sign() == 0
}

// fewerThere asks whether a bay is to have one rail fewer.
func fewerThere(a act.Act, _ []act.Act) solver.Question {
	return goneThere(a, "One fewer there?", " -= 1")
}

// noneOrOpen asks whether there is to be none of what is taken out, or as many or as wide as may be.
func noneOrOpen(a act.Act, _ []act.Act) solver.Question {
	return goneThere(a, "None there, or is the number open again?", " = 0", parse.Normal([]act.Act{a}))
}

// bayEmptied asks what becomes of a bay whose rails are taken out.
func bayEmptied(a act.Act, _ []act.Act) solver.Question {
	return solver.Question{Text: "Is there to be an opening, or is the number open again?", Choices: []string{parse.Normal([]act.Act{a})}, Example: "opening in bay 2"}
}

// onFloor asks whether a rail that is let down to the floor lies on it.
func onFloor(act.Act, []act.Act) solver.Question {
	return solver.Question{Text: "No gap at the bottom at all?", Choices: []string{"bottom gap = 0 in"}, Example: "bottom gap 0"}
}

// goneThere asks a question to which what is forgotten, in another relation, is the first answer.
func goneThere(a act.Act, text, relation string, more ...string) solver.Question {
	return solver.Question{Text: text, Choices: append([]string{a.Name.String() + relation}, more...), Example: "one stiffener in bay 2"}
}
