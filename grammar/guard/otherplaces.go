package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
)

// Where something is, or is not, is told of one place: "no opening at the end" may still want one, the bay by the house is one of several, the gap over a
// rail is no limit, the other side of a wall of 48 inches is no drop of 46, and "right there" is no side. Common ways of speech, no source.

const (
	thePart   = `{opening|doorway|door|walk - through|openings|posts?|stiffeners?|rails?|boards?|slats?}`
	byAPlace  = `{at|next to|by|beside|near|against|in front of|close to|on|under|across from}{ right|just}? {the|our|my|that|any|either|each|this} {house|end|ends|end post|left|right|bottom|top|middle|center|corner|street|road|steps|stairs|door|garage|driveway|opening|added post|first post|post|last bay|first bay|outside|edge}`
	oneOfBays = `{next|inner|inside|near|nearest|far|long|short|wide|narrow|big|small|large|tight}`
	rightNot  = `{there|here|where|by|near|beside|next|as|about|around|over|outside|behind|opposite|across}`
)

var (
	whereThen   = hear.OpenQuestion("None at all, or only not there?", "opening 30 from the left post")
	whichGap    = hear.OpenQuestion("Of all gaps, or of the bottom gap?", "bottom gap 3")
	whichSide   = hear.OpenQuestion("What is that figure of?", "drop 24")
	fromFloor   = hear.OpenQuestion("From the floor, or from the ground beyond the wall?", "wall 48 high, drop 24")
	sideOrThere = hear.OpenQuestion("Is that the right end, or where it stands?", "opening on the right", "opening side = right")
	leftOrThere = hear.OpenQuestion("Is that the left end, or as it is?", "opening on the left", "opening side = left")
	groundOr    = hear.OpenQuestion("Does the floor fall, or is that the ground beyond it?", "the floor drops 1 in to the right")
)

// otherPlaces are such lines, each with what is heard of it.
var otherPlaces = []hear.OpenWay{
	// Not at one place.
	{Looks: setsToNone, Way: asWay(`\b{not|no|never|none|without|nor}\b[^,;]*\b` + thePart + `{ [a-z]+}? ` + byAPlace + `\b`), Not: asWay(`\b{gap|gaps|space|room|clearance|in the {wall|middle bay}}\b`), Ask: whereThen},
	{Looks: setsToNone, Way: asWay(`\b{the|my|our}? ?{opening|doorway|added post|post|stiffeners?} {is|are|should be|goes|go|must be|will be}? ?not ` + byAPlace + `\b`), Ask: whereThen},

	// One of the bays.
	{Looks: everyBay, Way: asWay(`\bbays? {at|by|nearest|closest to|next to|near|beside|over by|over at|facing|toward|under|behind} {the|our|my|that}\b`), Not: anyWordOf(`every|each|all|any|no bay|opening`), Ask: askback.WhichBayIs.Open("bay 2 is 50")},
	{Looks: everyBay, Way: asWay(`\b{next|inner|inside|near|this|that|those|these|corner} bays?\b|\bbays? {next|over} {door|over|along|up|down }?{is|are|at|to be}|\bthe bay over\b`), Not: asWay(`\b{every|each|all|any|no} |{in|of|for|across|per} {this|that|those|these} bays?|{this|that} bay {limit|width|figure|rule}|\bover {each|every|that|this}`), Ask: askback.WhichBayIs.Open("bay 2 is 50")},
	{Looks: timesBay, Way: asWay(`\b{split|cut|halve|divide|part|double}{ up}? {the|that|this|my|our|a}{ [a-z]+}? bay\b`), Not: asWay(`\bbay {to|down to|back to} `), Ask: askback.WhichBayIs.Open("two stiffeners in bay 1")},
	{Looks: asksBay, Way: asWay(`\bbay {by|at|next to|near|nearest|closest to|beside|facing|behind|under|over|on} {the|our|my|that}\b|\b{the|that|this} {next|inner|near|far|long|short|wide|narrow|big|small|large|tight} bay\b`), Not: anyWordOf(`how {long|wide|big} {may|can|could|should|must}|moment`), Ask: askback.WhichBayIs.Open("how wide is bay 1")},

	// A gap by its place.
	{Looks: tells(solver.Gap, solver.BottomGap), Way: asWay(`\b{gap|space|room} {above|over|on top of} {the|that|my|our}? ?{bottom|lowest|first} {rail|board|slat|plank|one}\b`), Ask: whichGap},
	{Looks: sets(solver.Gap), Way: asWay(`\bgaps? {between {the|both|two|all }?bays|{at|by|near} {the|that|either|each} {left|right|far|near|other }?{end|house|post|opening|corner}|{on|at} {both|each|either|all} {sides?|ends?}}\b|\b{next|other} gap {up|down|over}\b`), Ask: hear.OpenQuestion("Between the rails, or where?", "gap 2-1/2")},
	{Looks: tells(solver.BottomGap), Way: asWay(`\b{lower|upper} gaps\b`), Ask: whichGap},
	{Looks: sets(solver.Span), Way: asWay(`\b{gap|space|distance|room} between {the|both|two }?posts {at|by|of|beside|around|in|on} {the|that|each|either|our|my} {opening|doorway|walk - through}\b`), Ask: hear.OpenQuestion("Is that the opening, or the span?", "opening 36")},

	// The other side.
	{Looks: sets(solver.Drop), Way: asWay(`{[0-9a-z]|,}{ on|at|and|but}? {the|its|my|our }?{other|far|outer|back|street|yard} side\b|{,|and|but} {on the|the }?outside\b|[0-9a-z] on the outside\b`), Not: anyWordOf(`drops?|dropped|falls?|down|lower|below|grade|ground|deeper|deep|step|dip`), Ask: whichSide},
	{Looks: sets(solver.FloorAtRight), Way: asWay(`{,|and|but} {on the|at the|the }?{other|far} {side|end} {is|at|it is|= }?{[0-9]|[a-z]+ty}`), Not: anyWordOf(`drops?|dropped|falls?|down|lower|below|higher|up|floor|slab|patio|deck|rises?`), Ask: whichSide},
	{Looks: sets(solver.Span), Way: asWay(`\b` + theWall + `\b[^;.]*\b{{on|from} the inside|inside|inside face}\b`), Not: anyWordOf(`posts?|long|span|faces|face to face|ends|length|inside (measure|measurement|to|dimension)`), Ask: hear.OpenQuestion("Is that the height, or the span?", "span 12 ft")},
	{Looks: sets(solver.Opening, solver.Bay), Way: asWay(`\b{the|that|my|our} {one|ones|fellow|other one} {next door|next to it|beside it}\b`), Ask: whichSide},

	// Above the yard.
	{Looks: sets(solver.Drop), Way: asWay(`\b` + theWall + `\b[^,;]* {above|over|off|from}{ the|our|my}? {grade|lawn|yard|grass|garden|dirt|soil|turf|flower bed|beds?|street|road|sidewalk|driveway|ground}\b`), Not: anyWordOf(`drops?|falls?|floor|slab|patio|deck|sits|stands on|base`), Ask: fromFloor},
	{Looks: sets(solver.Drop), Way: asWay(`^{Lead }*{it is|it 's|be|make it|{[a-z]+ }?` + wayDigits + `}[a-z0-9 /-]{0,12} {above|over} {the|our|my }?{grade|lawn|yard|grass|garden|dirt|street|road|sidewalk|driveway}{ Stop}*$`), Ask: fromFloor},
	{Looks: sets(solver.BottomGap), Way: asWay(`\b{top|upper|highest} {rail|board|slat|plank|one|edge}\b[^,;]* {above|over|off|from}{ the|our|my}? {grade|lawn|yard|grass|garden|dirt|soil|turf|street|road|sidewalk|driveway|ground}\b`), Ask: fromFloor},
	{Looks: tells(solver.FloorAtRight), Way: asWay(`\b{the|our|my|a}? ?drop {is|'s|of|at|=}\b[^,;]*\b{at|on|by|to} {the|its }?{right|left|far|near|other}\b|\bground {drops|falls|is}\b[^,;]*{foot|feet|'|yard}{ down|lower}? {at|on|by} {the|its }?{right|left|far|near|other}\b`), Ask: groundOr},

	// Words that are no sides.
	{Looks: onTheRight, Way: asWay(`\b` + theOpen + `{ is|goes|stays|stands|sits}? right ` + rightNot + `\b`), Not: asWay(`\bright {over|up|next|by|near|beside|about|around}{ on|to|at|in|against}* {the }?{left|right|middle|center}\b|\bon the right\b|\bright (hand|side|end)\b`), Ask: sideOrThere},
	{Looks: hear.Stated(solver.OpeningSide), Way: asWay(`\b` + theOpen + `{ of|is|at|to|be}* {[0-9/ ]+|[a-z]+}{ inches|inch|wide|in}* {is|'s|was|looks|sounds|feels|seems} {about|just|quite|all|exactly }?right{ Stop}*$`), Ask: hear.OpenQuestion("Is that right, or at the right end?", "opening 36 on the right")},
	{Looks: onTheRight, Way: asWay(`^{Lead|Lead , }*right {,|so|then|and} `), Not: asWay(`\bright\b.*\bright\b`), Ask: hear.OpenQuestion("Is the opening on the right, too?", "opening 36 on the right")},
	{Looks: hear.Stated(solver.OpeningSide), Way: asWay(`\b` + theOpen + ` left {where|as|how|at [0-9]|alone|for now|until|till|over|out|off|open|in (place|peace)}`), Ask: leftOrThere},

	// Where it is, not how wide.
	{Looks: tells(solver.Opening), Way: asWay(`\b{move|moves|moved|moving|shift|shifts|slide|slides|put|push|bring} {the|my|our|it }?{` + theOpen + ` }?{over|back|along|up|left|right|all the way }*to {` + wayDigits + `}`), Not: anyWordOf(`from|by|wide|width|up to|opened|size`), Ask: whereOrHow},
	{Looks: tells(solver.Opening), Way: asWay(`\b` + theOpen + `{ is|goes|moves|be|to go}* {Number|a|one|half a|[0-9/ ]+}{{ foot|feet|inch|inches|yard|yards} {{more|further|farther|over|to the }+{left|right}|left|right|over|along|back}|{ foot|feet|inch|inches|yard|yards}? {closer|nearer|further|farther}}\b`), Not: anyWordOf(`wide|from|wider|against`), Ask: whereOrHow},
	{Looks: changesTheOpening, Way: asWay(`\b{drop|put|take|bring|bump|set|run} {the|my|our|that }?` + theOpen + ` [^,;]* {left|right|over|along|back}{ Stop}*$`), Not: anyWordOf(`wider|narrower|from`), Ask: whereOrHow},
	{Looks: tells(solver.Opening), Way: asWay(`\b` + theOpen + `{ is|to be|goes|must be|be}* {within|inside of|no more than|less than|at most|at least|more than} {` + wayDigits + `}( [a-z]+)? {of|from} {the|our|my} {house|left|right|end|corner|street|steps|middle|post|wall|garage|driveway|road}\b`), Ask: whereOrHow},
	{Looks: tells(solver.Opening), Way: asWay(`\b{opening|doorway} {Number|one|two} at {` + wayDigits + `}.*\b{opening|doorway} {Number|one|two} at {` + wayDigits + `}`), Ask: whereOrHow},
	{Looks: tells(solver.Bay), Way: asWay(`\b{move|shift|slide|push} {the }?{bay Number|[a-z]+ bay} {over }?to |\bbay {Number} {is }?from {` + wayDigits + `}[^,;]* to {` + wayDigits + `}`), Ask: hear.OpenQuestion("How wide is that bay, or where is its post?", "bay 2 is 50")},
	{Looks: tells(solver.Bay), Way: asWay(`\bbay {Number} {starts|begins|ends|stops|finishes|runs out} {at|on} `), Ask: hear.OpenQuestion("How wide is that bay, or where is its post?", "bay 2 is 50")},
	{Looks: tells(solver.WallHeight), Way: asWay(`\b{move|shift|slide|put|set|run|place} {the|my|our }?` + theWall + ` {out|back|over|along }*{to|at|by|a|Number|[0-9]}[^,;]*\b{from|off|away from|further|farther|over|closer|nearer|toward|along}\b`), Not: anyWordOf(`floor|ground|slab|high|up|down|height|deck|patio|over (it|the)`), Ask: hear.OpenQuestion("How high it is, or where it stands?", "wall 48 high")},
	{Looks: tells(solver.OpeningFromLeft, solver.OpeningFromRight), Way: asWay(`^{Lead }*from {the|its }?{left|right} {to {the }?{left|right} }?[:,-] ?{opening|doorway|bay}`), Ask: hear.OpenQuestion("Do they stand in that order?", "bay 1 60, opening 36")},
}

// setsToNone reports whether there is to be none of something, or a gap of nothing.
func setsToNone(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		k := solver.KindOf(s.Name.Quantity)
		return s.Op == solver.Eq && (k == solver.Count || k == solver.Length) && s.Value.Of == nil && s.Value.Num.Sign() == 0
	})
}

// onTheRight reports whether the opening is set at the right end.
func onTheRight(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.OpeningSide && s.Value.Word == "right"
	})
}

// everyBay reports whether all bays are told to be of a width, or alike.
func everyBay(a act.Act) bool {
	if !valued(a) {
		return false
	}
	for _, s := range a.Statements {
		if s.Name.Quantity == solver.Bay && s.Name.Bay == 0 || s.Value.Word == "equal bays" {
			return true
		}
	}
	return false
}

// timesBay reports whether the width of a bay is multiplied.
func timesBay(a act.Act) bool { return statesBy([]solver.Op{solver.Times}, solver.Bay)(a) }

// asksBay reports whether it is asked how wide bays are, and of none by its name.
func asksBay(a act.Act) bool {
	return a.Kind == act.Ask && a.Name != nil && a.Name.Quantity == solver.Bay && a.Name.Bay == 0
}

// changesTheOpening reports whether the opening is made wider or narrower.
func changesTheOpening(a act.Act) bool {
	return statesBy([]solver.Op{solver.Plus, solver.Minus}, solver.Opening)(a)
}
