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

// A word of size says which measure is meant: a wall that gets longer grows no higher, a bay that gets lower grows no narrower, rails twice as thick are no
// more of them, and what is "less than they have" is no limit. Where a measure that the word does not fit was heard it is asked back. Common ways of speech, no source.

const (
	fewOrOne  = `{one|two|three|four|1|2|3|4|another}`
	ownFigure = `{an? {inch|foot|half|quarter|eighth|sixteenth|bit|little|yard}|half an? {inch|foot}|Number{ inches|feet|foot|inch}?|[0-9/ ]+( inches| feet| foot| inch)?}`
	asPosts   = `as {wide|thick|big|broad|deep|high|tall|long} as {the|a|an|my|our|one|those|end|added|of }*posts?`
)

var (
	alongFloor  = hear.OpenQuestion("Along the floor: the span between the posts, or overall?", "span 12 ft")
	lowerOrWide = hear.OpenQuestion("Is that how high it is there, or how wide?", "bay 1 a foot narrower")
	railMoved   = hear.OpenQuestion("Where it sits, how long it is, or how wide?", "rail 3 top 1 inch higher")
	howThick    = hear.OpenQuestion("Which size are they to be?", "rails are 2x6")
	postWide    = hear.OpenQuestion("How wide is that, in inches?", "gap 3-1/2")
	dropOrFewer = hear.OpenQuestion("The drop to the ground, or so many fewer?", "one rail less")
	offWhich    = hear.OpenQuestion("So much shorter, or lost per board squaring its end?", "trim 1/2")
	setOrMore   = hear.OpenQuestion("Is that what it shall be, or by how much it changes?", "gap 1/8 more")
	thanWhat    = askback.ComesTo.Open("six rails")
	topOneOf    = hear.OpenQuestion("The top rail, or the top gap?", "wall 48 high")
	partOfWall  = hear.OpenQuestion("All of the wall has one gap. What shall it be?", "gap 2-1/2")
)

// otherSizes are such lines, each with what is heard of it.
var otherSizes = []hear.OpenWay{
	// A wall's length is not its height.
	{Looks: tells(solver.WallHeight), Way: asWay(`\b` + theWall + `\b[^,;]* {{as|no|not|any|half as|twice as|much } ?{long|wide|broad}|{no|not|any}? ?{longer|wider|broader} than|{twice|half|double|three times} {the|its} {length|width}}\b`), Not: anyWordOf(`high|tall|height|up|gap|opening is|top`), Ask: alongFloor},
	{Looks: tells(solver.WallHeight), Way: asWay(`\b{extend|continue|carry on|lengthen|prolong|stretch} {the|my|our|this }?` + theWall + `{ out|on|along}? {by }?` + ownFigure), Not: anyWordOf(`up|upward|upwards|high|higher|height|down`), Ask: itsLength},

	// A bay's height is not its width, and an opening has no height.
	{Looks: statesBy([]solver.Op{solver.Plus, solver.Minus, solver.Times}, solver.Bay), Way: asWay(`\b{lower|raise|lift|sink|heighten} {the }?{[a-z]+ }?{bays?|bay Number}\b|\bbays?\b[^,;]* {lower|higher|taller}\b`), Not: anyWordOf(`wider|width|limit|max|maximum|minimum|narrower|longer|shorter|end|lower end`), Ask: lowerOrWide},
	{Looks: sets(solver.Bay), Way: asWay(`\b{lower|raise|lift|sink|heighten} {the|my|our }?{[a-z]+ bay|bay Number|bays} to `), Not: anyWordOf(`limit|width|max|maximum|minimum`), Ask: lowerOrWide},
	{Looks: tells(solver.Bay), Way: asWay(`\bbays?\b[^,;]* {higher|lower|taller} than\b|\bbays?\b[^,;]* {as|how} {high|tall} as\b`), Ask: lowerOrWide},
	{Looks: tells(solver.Opening), Way: asWay(`\b` + theOpen + `\b[^,;]* as {high|tall} as {the|our|my|a} `), Ask: lowerOrWide},
	{Looks: tells(solver.Gap), Way: asWay(`\b{raise|lift|lower|drop|sink|move|shift} {the|all|my|our|those|up|down }*{rails|boards|slats|planks} in {the|that }?{[a-z]+ }?bay\b|\b{rails|boards|slats|planks} in {the|that }?{[a-z]+ }?bay\b[^,;]* {lower|higher|up|down|shorter|longer}{ Stop}*$`), Not: anyWordOf(`gaps?|apart|closer|spacing|together`), Ask: railMoved},

	// One rail that is moved or cut anew.
	{Looks: tells(solver.RailFace), Way: asWay(`\b{{first|second|third|fourth|fifth|sixth|seventh|1 st|2 nd|3 rd|4 th|5 th} {rail|board|slat|plank}|{rail|board|slat|plank} Number}\b[^,;]* {higher|lower|up|down|longer|shorter}\b`), Not: anyWordOf(`wide|wider|face|narrower`), Ask: railMoved},
	{Looks: tells(solver.WallHeight, solver.BottomGap), Way: asWay(`\b{top|bottom|lowest|highest} {rail|board|slat|plank}\b[^,;]* {longer|shorter}\b`), Not: anyWordOf(`gap|from|off`), Ask: railMoved},

	// A size is no count, and a post no bay.
	{Looks: statesBy([]solver.Op{solver.Times}, solver.Rails, solver.Stiffeners, solver.Bays, solver.AddedPosts), Way: asWay(`\b{as|times as|the} {thick|wide|long|high|deep|broad|big|large|tall|heavy|thickness|width|length}\b`), Not: anyWordOf(`as many|number`), Ask: howThick},
	{Looks: tells(solver.Gap, solver.Opening, solver.RailFace, solver.Bay, solver.BottomGap, solver.Bays), Way: asWay(`\b` + asPosts + `{ is|are}?{ wide|thick}?{ Stop}*$`), Ask: postWide},
	{Looks: hear.Stated(solver.Goal), Way: asWay(`\bas {wide|big|large|roomy|broad|high|tall} as {the|a|an|my|our|that|this|his|her|their|one} {front|back|other|old|new|garden|side }?{gate|door|doorway|window|car|truck|mower|wheelbarrow|barrow|table|couch|sofa|bed|stroller|wheelchair|house|steps|stairs|path|walk|sidewalk|driveway}\b`), Not: anyWordOf(`allows|needs|lets|permits|will|can`), Ask: postWide},

	// The top one of the gaps, and half of the wall.
	{Looks: tells(solver.WallHeight), Way: asWay(`\bgaps?\b.*\btop {one|gap|space}\b`), Not: anyWordOf(`rails?|boards?|slats?|planks?`), Ask: topOneOf},
	{Looks: tells(solver.WallHeight), Way: asWay(`^{Lead }*{the|my|our }?top one measures? `), Ask: topOneOf},
	{Looks: tells(solver.BottomGap), Way: asWay(`\btop {gap|space}\b`), Not: anyWordOf(`(at|to|from) {the }?top`), Ask: topOneOf},
	{Looks: tells(solver.WallHeight, solver.BottomGap), Way: asWay(`\b{lower|bottom|upper|top|left|right|first|second} half of {the|my|our }?{fence|bays?|` + theWall + `}\b|^{Lead }*half {of }?{the|my|our} ` + theWall + ` {is|at|= }?{[0-9]|[a-z]+ty}`), Ask: partOfWall},

	// What drops, stays or is trimmed.
	{Looks: dropsFew, Way: asWay(`\b{drop|drops|dropping} ` + fewOrOne + `{ more|of them|of those}?{ Stop}*$`), Ask: dropOrFewer},
	{Looks: tells(solver.Trim), Way: asWay(`\b{trim|cut|shave|saw|take|trims} ` + ownFigure + ` {off|off of|from} {each|every|the|all|all the|my|our|both|a} {rails?|slats?|stiffeners?|posts?}\b|\btrim {it|them|that|those|the rails|all the rails} {by }?` + ownFigure), Not: anyWordOf(`ends?|square|squaring|true|truing|per board|lose|i trim|we trim`), Ask: offWhich},
	{Looks: tells(solver.Stiffeners), Way: asWay(`\b{opening|bay|post|rail|gap|wall}( [0-9]+| one| two| three)? stays{ put|as is|the same|so|as it is}?{ Stop}*$`), Ask: hear.OpenQuestion("All of them, or which ones not?", "opening 2 36")},
	{Looks: hear.KindOf(act.Quit), Way: asWay(`\b{knock|take|drop|lop|chop|leave|break} ` + fewOrOne + ` off\b`), Ask: askback.HowManyOf.Open("one rail less")},
	{Looks: hear.AsksTopic("shopping"), Way: asWay(`\b{take|knock|drop|put|leave|lop} ` + fewOrOne + ` {off|out|away|back}{ Stop}*$`), Ask: askback.HowManyOf.Open("one rail less")},
	{Looks: sets(solver.Rails, solver.Stiffeners, solver.AddedPosts), Way: asWay(`{,|;|and|then} {and|then|but|now }*{take|knock|leave|pull|lop|lose} ` + fewOrOne + ` {off|out|away|of them|again}{ Stop}*$`), Ask: takeWhat},

	// Set, or changed.
	{Looks: sets(solver.Gap, solver.Opening, solver.Bay, solver.Span, solver.WallHeight, solver.BottomGap), Way: asWay(`\bput {another }?` + ownFigure + `{ more|extra|further}? {on|onto} {the|my|our|each|every|all the|both|that }?{gaps?|opening|doorway|bays?|span|wall|bottom gap|end bays?|first bay|last bay}\b|\b{gaps?|openings?|bays?|spaces?} {in|out} {by }?` + ownFigure + `{ Stop}*$`), Not: anyWordOf(`between|limit|of`), Ask: setOrMore},
	{Looks: sets(solver.Bay, solver.WallHeight, solver.Span), Way: asWay(`\b{stretch|extend|lengthen} {the|my|our|each|every|all the|that }?{bays?|span|end bays?|first bay|last bay}( [0-9])? {out }?{by }?` + ownFigure), Ask: setOrMore},
	{Looks: sets(solver.FloorAtRight), Way: asWay(`\b{another|further|more|again}\b[^,;]* {lower|higher|down|up}\b|\b{lower|higher}\b.*\bthan i {said|told|gave|thought|had}\b`), Ask: floorAnew},
	{Looks: statesBy([]solver.Op{solver.Plus, solver.Minus}, solver.Gap, solver.BottomGap, solver.Opening, solver.Bay), Way: asWay(`\b{starts?|starting|begins?|beginning} {at|from|with} [0-9a-z].*\b{grows?|growing|widens?|increas[a-z]+|shrinks?|narrows?|gets|up|down}\b|\b{gaps?|openings?|bays?} from {` + wayDigits + `} {up|down|on|upwards?|downwards?}{ Stop}*$`), Ask: setOrMore},
	{Looks: statesBy([]solver.Op{solver.Plus}, solver.Fit), Way: asWay(`\b{add|put|allow} ` + ownFigure + ` {at|on|to} {each|both|either|every} {ends?|sides?}\b`), Ask: hear.OpenQuestion("Room at each end, or a longer rail?", "leave 1/16 at each end")},
	{Looks: railsFar, Way: asWay(`\b{rails|boards|slats|planks} {go|run|start|reach|sit|are|stack|stretch}{ up}? from\b`), Ask: hear.OpenQuestion("How many rails, or where they sit?", "six rails", "bottom gap 2, wall 48 high")},

	// More or less than others have.
	{Looks: limitsByOther, Way: asWay(`{[0-9a-z]+} {more|less|fewer|higher|lower|taller|wider|narrower|bigger|smaller|tighter|longer|shorter} than {they|we|he|she|you|the {other|old|last|neighbors?|previous|next} [a-z]+|the house|the neighbor|{my|our|his|her|their} {neighbor|old|other|last|house}|a {board|rail|post|slat|brick|hand|finger|foot and}|next door|ours?|theirs|his|hers|yours|before|now|last time}\b`), Ask: thanWhat},
	{Looks: statesBy([]solver.Op{solver.GT, solver.GE, solver.LT}, solver.Bay), Way: asWay(`\b{add|put|put in|another|set} {a|one|another}? ?{bay|bays} {past|over|beyond|after|before|next to|behind|under|below}\b`), Ask: hear.OpenQuestion("One more bay, on which side?", "two added posts")},

	// Other things.
	{Looks: hear.KindOf(act.Why), Way: asWay(`\bbay {Number} {a }?{half|third|quarter} of {the }?{bay Number|[a-z]+ bay}`), Ask: askback.WhatToKnow.Open("why bay 1")},
	{Looks: asksOfPosts, Way: asWay(`^{Lead }*how much {is|are|do|does|would|will} {the|my|our|a|one|those|these|each|all }*posts?{ cost|be|run|go for}?\b`), Not: anyWordOf(`apart|between|wide|lean|leans?|off|taller|higher|sizes?|heights?`), Ask: askback.WhatToKnow.Open("what will it cost")},
	{Looks: hear.AsksQuantity, Way: asWay(`\b{gap|space|distance|room} between {bay {Number}|the {first|left|second|right} bay} and {bay {Number}|the {first|left|second|right} bay}`), Ask: askback.WhatToKnow.Open("where does the post go")},
	{Looks: sets(solver.Opening), Way: asWay(`\b{door|gate|opening|doorway} {by|next to|near|beside|across from} the {opening|doorway|walk - through}\b|\b{door|gate|opening|doorway} next door\b|\b{opening|doorway|gap} in {the|our|my|their|his|her} {fence|hedge|house|deck rail|railing|garage|shed}\b`), Not: asWay(`\b{ours|mine|this one}\b`), Ask: hear.OpenQuestion("Is that the opening in this wall?", "opening 36")},
	{Looks: sets(solver.PostSize), Way: asWay(`\b{roof|porch|corner|gate|fence|lamp|mail|bed|house|carport|deck} posts? `), Not: anyWordOf(`end|all|added`), Ask: whichPosts},
	{Looks: tells(solver.PostHeight), Way: asWay(`\b{slab|floor|ground|concrete|patio|deck} {is|'s|sits|lies|drops|falls} [^,;]*{lower|down|higher|low|up|high|below} {at|by|under|near} {the|that|our|my} `), Ask: askback.HowItFalls.Open("the floor drops 1 in to the right")},
}

// dropsFew reports whether the drop is set to a few inches.
func dropsFew(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Drop && s.Op == solver.Eq && s.Value.Of == nil && s.Value.Num.Less(exact.Int(5))
	})
}

// floorAnew asks whether an end is so much lower, or lower by so much more than was told.
func floorAnew(a act.Act, _ []act.Act) solver.Question {
	was := ""
	for _, s := range a.Statements {
		if s.Name.Quantity == solver.FloorAtRight {
			was = s.String()
		}
	}
	more := strings.Replace(strings.Replace(was, "= -", "-= ", 1), "right = ", "right += ", 1)
	return solver.Question{Text: "In all, or so much more than was said?", Choices: []string{was, more}, Example: was}
}

// railsFar reports whether the number of rails is left open far beyond what a wall has.
func railsFar(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Op == solver.In && exact.Int(15).Less(s.Upper.Num)
	})
}

// limitsByOther reports whether something is limited to a figure.
func limitsByOther(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return (s.Op == solver.LT || s.Op == solver.GT) && s.Value.Of == nil
	})
}

// asksOfPosts reports whether posts, or a bay between them, are asked after.
func asksOfPosts(a act.Act) bool {
	return a.Kind == act.Ask && (a.Name != nil && (a.Name.Quantity == solver.Bay || a.Name.Quantity == solver.PostSize) || a.Topic == "posts")
}
