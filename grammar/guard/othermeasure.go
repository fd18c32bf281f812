package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// A length that stands behind a part need not be how large it is: it may tell where the part stands ("opening two feet over"), how high it was
// measured ("bay one at four feet up is 68"), what all of them come to ("the gaps total 10"), how many there are ("five gaps"), or be a
// share of another part ("gap half the rail"). It is asked back. Common ways of speech, no source.

const (
	// someLength is a length as it is said; someUnit is its unit.
	someUnit   = `{feet|foot|ft|inches|inch|in|'|"|cm|mm|meters?|metres?|yards?}`
	someLength = `{an?|half an?|(a |an |one )?(half|quarter|third|eighth|sixteenth)|[a-z]+ (quarters|thirds|eighths|sixteenths)|([0-9][0-9.]* - )?[0-9][0-9.]*(( - | and | )?[0-9]+ / [0-9]+)?|Number|Number and a half}( ?` + someUnit + `)?( and a half|{ and}?{ Number}( inches| inch)?)?`
	theDoorway = `{opening|doorway|walk - through|walkthrough|walkway|entry|entrance|gate|gateway|passage}`
)

// otherMeasure are such lines, each with what is heard of it.
var otherMeasure = []hear.OpenWay{
	// Sums of a length and a part.
	{Looks: valued, Way: asWay(`\b{span|overall|openings?|doorway|walkway|bays?|wall|length|height|centers|distance|gaps?|clear|between|wide|high|long}\b[^,;]* {minus|less|plus|not counting|without|subtracting|after|deducting} {a|one|two|the|both|my|our|each|half a|half the|the width of}( two| both| end| one| a| the| of the)* {posts?|rails?|boards?|stiffeners?|slats?|planks?|uprights?|brackets?}\b`), Not: anyWordOf(`more or less|{plus|without|after} {one|two|a} {rails?|boards?|slats?|planks?|stiffeners?}`), Ask: askback.ComesTo.Open("span 137")},
	// Where an edge is that nothing is measured from.
	{Looks: tells(solver.BottomGap), Way: asWay(`\b{top|second|third|fourth|fifth|sixth|next|upper|uppermost|topmost|highest|last|middle} {rail|board|slat|plank|course|one}( ?'s)? {bottom|underside|lower|low}\b|\b{bottom|underside|{bottom|lower|low|under} {edge|side|face}} of {the|my|our|that }?{top|second|third|fourth|fifth|sixth|next|upper|uppermost|topmost|highest|last|middle} |\b{top|upper|uppermost|topmost|highest} {rail|board|slat|plank|one}( [a-z]+){0,3} its {bottom|underside|lower edge|bottom edge}\b|\b{rail|board|slat} {[2-9]|two|three|four|five|six|seven|eight}( ?'s)? {bottom|underside}\b`), Ask: askback.Meant.Open("rail 6 top 48")},
	{Looks: tells(solver.RailTop, solver.FixedRail), Way: asWay(`\b{from|below|under|beneath|off|shy of|short of} {the|my|our }?{very }?{top|cap|head|ceiling|upper edge|top edge}\b|\bdown {from|off|of|to}\b|\b{down|below}{ from there|from it}?{ Stop}*$`), Ask: hear.OpenQuestion("How high is that above the floor?", "rail 3 top 24")},
	// How high up a bay was measured.
	{Looks: setsBay, Way: asWay(`\bbay {[0-9]|Number} at [a-z0-9 /.-]+ {is|are|measures|reads} [0-9a-z]|\bbay\b.*\b{Number|half|halfway|part ?way|[0-9]}( ?` + someUnit + `)?( and a half)? {up|high|above the (floor|slab|ground|deck)|off the (floor|slab|ground|deck)|from the {floor|slab|ground|deck|top|bottom}|down}{ [^,;]*[0-9a-z][^,;]*|,.*|Stop}*$`), Ask: hear.OpenQuestion("Which is the width of the bay, and where was it measured?", "bay 1 bottom measures 68 3/8")},
	// Where an opening or a wall stands.
	{Looks: tells(solver.Opening), Way: asWay(`\b` + theDoorway + `( is| 's| goes| starts| sits| stands| begins| to be)* ` + someLength + ` {down|along|up|into|off|from|in from|over from|away from|across} {the|my|our }?{wall|line|run|slab|porch|deck|center|middle|house|corner|edge|fence|end|side|centerline|center line}\b|\b` + theDoorway + `( is| 's| goes| starts| sits| stands| begins| to be)* ` + someLength + ` {over|off|along|down|in there|away|out|off center|off to one side|off to the side|over to the (left|right)}{ Stop}*$|\b` + theDoorway + `( is| 's| goes| sits| stands)* [a-z0-9 /.-]*{feet|foot|ft|'} ({further|farther|more|over} )?to the {left|right}{ Stop}*$|\b` + theDoorway + `( is| 's| goes| sits| starts)* [a-z0-9 /.-]*{feet|foot|ft|inches|inch|'|"} in{ Stop}*$`), Not: asWay(`\b{clear|wide|floor|ground}\b`), Ask: hear.OpenQuestion("Is that how wide the opening is, or where it starts?", "opening 36, 24 from the left post")},
	{Looks: tells(solver.Gap, solver.Bay), Way: asWay(`\b{gaps?|bays?}( is| 's| are)? ` + someLength + ` off{ Stop}*$`), Ask: hear.OpenQuestion("Less by that much, or wrong by that much?", "gap 1/4 less")},
	{Looks: tells(solver.WallHeight, solver.Span, solver.EdgeDistance, solver.Drop), Way: asWay(`\bwall( is| 's| sits| stands| runs| goes| to be| starts)* ` + someLength + ` {off|from|away from|back from|in from|back off|out from|inside|behind|beyond} {of }?{the|my|our|that|a }?[a-z]+`), Not: asWay(`\b{off|from|above} {of }?{the|my|our|that }?{floor|slab|ground|grade|deck|concrete|patio|porch|boards|decking|sidewalk|walk|dirt|top|post|left|right|inside|outside|face}\b|\b{high|tall|long}\b`), Ask: askback.Meant.Open("wall 48 high")},
	// On both sides of the opening.
	{Looks: tells(solver.Opening), Way: asWay(`(^|[^a-z] ?|\b{bays?|walls?|have|want|leave|with|is|are|be|about|of} )` + someLength + `{ bays?|wall|of wall|of rails?|clear|long|wide}? {on|at|to|for }?{both sides|either side|each side|both ends|two sides} of {the|my|an|our|a|that|it}\b`), Not: asWay(`\b` + theDoorway + `{ is|of|at|,}* {[0-9]|Number}|{[0-9]|Number}( ?` + someUnit + `)? {wide|clear }?` + theDoorway + `\b`), Ask: hear.OpenQuestion("Is that the bays, or the opening?", "bays 48, opening 36")},
	{Looks: nearBay, Way: anyWordOf(`either side`), Not: anyWordOf(`about|around|roughly|some|or so|approximately|near|nearly`), Ask: hear.OpenQuestion("Is that the bays, or the opening?", "bays 48, opening 30")},
	{Looks: tells(solver.Opening, solver.Bay, solver.Span, solver.Overall, solver.Gap), Way: asWay(`\b{wider|narrower|bigger|smaller|larger|tighter|longer|shorter|widen|narrow|enlarge|shrink|open|more|less|off|add|lose|gain|increase|reduce|grow|extend}\b.*\b{both|each|either|every} {sides?|ends?|way|ways|edges?|directions?}\b`), Not: anyWordOf(`total|altogether|in all`), Ask: eachSide},
	// Shares of another part, and what is smaller by a factor.
	{Looks: scales, Way: asWay(`\b{twice|times|double|triple|quadruple}( as)? {smaller|less|narrower|tighter|shorter|lower|closer|thinner|fewer|small|narrow|tight|short|low|little|few|close|thin}\b|\b{half|third|quarter} as {small|narrow|tight|low|short|little|few|close}\b`), Not: asWay(`\b{gap|opening|bay|wall|span|rails?|boards?|stiffeners?}{ is|at}? {no|not|never} {more|less} than\b`), Ask: askback.HowMuchIs.Open("half the gap", "that")},
	{Looks: ofNothing, Way: asWay(`\b{half|twice|double|thirds?|quarters?|fourths?|times|triple}( of| that of| what it is for| as [a-z]+ as| the (width|face|size|height|thickness) of)? {a|the|one|my|our|each|another} {single|whole|bottom|top|end }?{rail|board|plank|slat|post|stiffener|upright|bracket|brick|block}( ?'s ?[a-z]*)?\b`), Ask: askback.HowMuchFor.Open("gap half the rail face", "part")},
	{Looks: ofNothing, Way: asWay(`^{gaps?|the gaps?|bottom gap|the bottom gap|opening|the opening|spacing|spaces?}( is| are| 's| of| to be| at)* [a-z0-9 /.-]*{and a half|half|quarters?|thirds?} {rails?|boards?|planks?|slats?}{ wide}?{ Stop}*$`), Ask: askback.HowMuchFor.Open("gap half the rail face", "part")},
	{Looks: evenOrGap, Way: asWay(`\b{same|equal|equals|identical|alike|match|matches|matching|even}( size| gap| spacing| space| width| thing| height| as wide| as big)? {as|to|with }?{the|a|my|our|each|one} {rails?|boards?|slats?|planks?|posts?}( ?'s)?( (is|are)( wide| high| tall)?| width| face| faces| themselves)?{ Stop}*$`), Ask: askback.HowMuchFor.Open("gap as wide as a rail", "gap")},
	{Looks: setsPart, Way: asWay(`\b{cut|cuts|bring|reduce|take|drop|shrink|trim|knock|lower|get|go|narrow|tighten|squeeze|halve|close|raise|change|slash|down|back|up}\b[^,;]* to {a|an|one|only|just|about|two }?{half|thirds?|quarters?|fourths?|fifths?|tenths?|1 / [2-5]}( of (it|that|what it is|what it was))?{ Stop}*$`), Not: asWay(`(^|[^a-z]){inch|inches|in|"}\b`), Ask: shareOrInch},
	{Looks: scalesNot, Way: asWay(`\b{half|third|quarter} again\b|\b{and a half|half|[0-9]|Number} times( that| it|{ {the|my|our }?Length}| the (size|width|height)| as [a-z]+)?{ Stop}*$`), Ask: unlessScaled(hear.OpenQuestion("One and a half times what it is, or half an inch?", "gap half as much again"))},
	{Looks: scalesNot, Way: asWay(`\b{Number|a|half} times {a|an|the }?{[0-9]|Number}`), Ask: askback.ComesTo.Open("span 144")},
	{Looks: scales, Way: asWay(`\b{down|up|back|cut|reduce|raise|bring|take} to {a |one |just |only |about }*{half|third|quarter|twice|double}( of)? {the|my|our} {Length|rails?|posts?}\b`), Ask: askback.Meant.Open("bottom gap half the gap")},
	// What all of them come to, and how many there are.
	{Looks: tells(solver.Gap, solver.Bay, solver.Opening, solver.BottomGap), Way: asWay(`\b{gaps?|spaces|bays|openings}( ,| :)? total\b|\b{gaps?|spaces?|spacing|bays|openings}\b([^,;]* {total|totals|totaling|in total|in all|all told|altogether|all together|together|combined|add up to|adds up to|adding up to|add to|adds to|sum to|sums to|overall}\b)|\b{total|sum|all|combined|add|together}{ up|of}?{ all}?{ of}?{ the|my|our}? {gaps?|spaces|spacing|bays|openings}{ together|combined|total|totals|in all|add|adds|come to|comes to|make|makes|is [0-9]|are [0-9]+ (total|together)}`), Not: asWay(`\b{rails?|boards?|slats?|planks?|posts?|stiffeners?} {total|in total|in all|all told|altogether|all together|together|combined|overall}\b|\b{go|goes|work|works|fit|fits|get along} {all }?together\b`), Ask: hear.OpenQuestion("Is that one of them, or all together?", "gap 2-1/2")},
	{Looks: wholeGap, Way: asWay(`(^|[^/.0-9 ] |[^/.0-9 ]){and|with|of|have|want|, }*{[3-9]|1[0-9]|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve} {even|equal|clear|open }?{gaps|spaces|openings between}\b`), Ask: hear.OpenQuestion("How many gaps, or how wide?", "six rails")},
}

// tells returns what reports whether an act states, tries or claims one of some quantities.
func tells(of ...solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool {
		return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return slices.Contains(of, s.Name.Quantity) })
	}
}

// setsBay reports whether bays are told to be of a length.
func setsBay(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Bay && s.Op == solver.Eq && s.Value.Of == nil
	})
}

// nearBay reports whether bays are told to be about as long as something.
func nearBay(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Bay && s.Op == solver.Near })
}

// scales reports whether something is made larger or smaller by a factor.
func scales(a act.Act) bool { return valued(a) && a.Statements[0].Op == solver.Times }

// scalesNot reports whether something is told, and not made larger by a factor.
func scalesNot(a act.Act) bool {
	return valued(a) && a.Statements[0].Op != solver.Times && a.Statements[0].Value.Of == nil
}

// unlessScaled asks where nothing that is told beside it is made larger by a factor, or leans on another quantity: "gap 2, opening twelve times the gap".
func unlessScaled(ask func(act.Act, []act.Act) solver.Question) func(act.Act, []act.Act) solver.Question {
	return func(a act.Act, all []act.Act) solver.Question {
		if slices.ContainsFunc(all, func(b act.Act) bool { return valued(b) && !scalesNot(b) }) {
			return solver.Question{}
		}
		return ask(a, all)
	}
}

// ofNothing reports whether a value that is told leans on no other quantity.
func ofNothing(a act.Act) bool {
	return valued(a) && !slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Value.Of != nil })
}

// evenOrGap reports whether the gaps are told to be exact, or as large as another.
func evenOrGap(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		switch s.Name.Quantity {
		case solver.Goal:
			return true
		case solver.Gap, solver.BottomGap, solver.Opening, solver.Bay:
			return s.Value.Of != nil && s.Value.Of.Quantity != solver.RailFace
		}
		return false
	})
}

// setsPart reports whether a short length is set.
func setsPart(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Op == solver.Eq && s.Value.Of == nil && solver.KindOf(s.Name.Quantity) == solver.Length && s.Value.Num.Less(exact.Int(20))
	})
}

// wholeGap reports whether gaps of whole inches are set.
func wholeGap(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return (s.Name.Quantity == solver.Gap || s.Name.Quantity == solver.BottomGap) && s.Op == solver.Eq && s.Value.Of == nil && s.Value.Num.IsInt()
	})
}

// eachSide asks whether an amount is in all, or on each of two sides.
func eachSide(a act.Act, _ []act.Act) solver.Question {
	q := solver.Question{Text: "In all, or on each side?", Example: "opening 4 wider"}
	if len(a.Statements) != 1 || a.Kind != act.State || a.Statements[0].Op != solver.Plus && a.Statements[0].Op != solver.Minus || a.Statements[0].Value.Of != nil {
		return q
	}
	twice := a.Statements[0]
	twice.Value.Num = twice.Value.Num.Mul(exact.Int(2))
	q.Choices = []string{a.String(), act.Act{Kind: act.State, Statements: []solver.Statement{twice}}.String()}
	return q
}

// shareOrInch asks whether a share of an inch is meant, or of what there is.
func shareOrInch(a act.Act, _ []act.Act) solver.Question {
	q := solver.Question{Text: "That much of an inch, or of what it is?", Example: "cut the gap in half"}
	if len(a.Statements) != 1 || a.Kind != act.State || !a.Statements[0].Value.Num.Less(exact.Int(1)) {
		return q
	}
	of := a.Statements[0]
	of.Op = solver.Times
	of.Value = solver.Value{Num: of.Value.Num}
	q.Choices = []string{a.String(), act.Act{Kind: act.State, Statements: []solver.Statement{of}}.String()}
	return q
}
