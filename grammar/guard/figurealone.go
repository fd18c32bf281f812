package guard

import (
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// A figure that stands alone behind a word of correction, of moving, of cutting or of counting out may be the whole of something or a part of it, where a thing
// sits or how wide it is: "gap two and a quarter, no, a half", "change the six to a five", "move the opening to 24", "cut them at 6", "two rails per board".
// Where nothing tells which it is, it is asked. Everyday speech, no source.

const (
	// setAnew are words behind which a figure takes the place of the one before.
	setAnew = `{no|nope|sorry|wait|actually|rather|i mean|make (it|that)|call it|scratch that|,|[.;]}`
	// partOfInch is a figure of less than an inch, and lessThanTen a whole one of one word.
	partOfInch  = `(?:(a|an|one|three|five|seven|[0-9]+) )?{half|quarters?|eighths?|sixteenths?|thirds?|1 ?/ ?2|[0-9]+ ?/ ?[0-9]+}`
	lessThanTen = `{one|two|three|four|five|six|seven|eight|nine|[1-9]}`
	// lumberSize is a size of lumber as it is said or written.
	lumberSize = `{[1-9] ?x ?[0-9]+|{one|two|four|six|five quarter} by {[a-z]+}}( ?s)?\b`
	// railsNamed are rails, however they are named.
	railsNamed = `{rails?|boards?|slats?|planks?|pieces?|them|they|those|it|each|all|all of them}`
	// fewInches is a length of some inches at the end of a line.
	fewInches = `(?:(about|only|just|exactly) )?[a-z0-9 /.-]+?( inch| inches| in)?{ Stop}*$`
)

var (
	wholeOrPart = hear.OpenQuestion("Is that the whole figure now, or a part of it?", "gap 2-1/4")
	cutLength   = hear.OpenQuestion("Is that how long they are cut, or how much shorter?", "cut the rails 1/8 short")
	whoCutThem  = hear.OpenQuestion("Are they cut so already, or shall they be?", "cut the rails 1/8 short")
	perBoard    = hear.OpenQuestion("Is that how many the wall has? How boards are cut is worked out.", "six rails")
	onePrice    = hear.OpenQuestion("Is that for one, or for how many?", "anchors 2.50 each")
	placeOrWide = hear.OpenQuestion("Is that how wide it is, or how far from an end post?", "opening 36, opening 24 from left")
	forgetOrNot = hear.OpenQuestion("Shall I forget that, or undo the last change?", "forget gap")
	floorOrTop  = hear.OpenQuestion("Is that how high the wall is, or what lies under it?", "wall 48 high, bottom gap 4")
)

// figureAlone are such lines, each with what is heard of it.
var figureAlone = []hear.OpenWay{
	// A correction by a figure that may be a part of the one before.
	{Looks: hear.KindOf(act.Take, act.State), Way: asWay(`\b{change|swap|switch|turn} {the|that|those|my }?{Number}( one)? {to|into|for|with} {a|an }?{Number}{ Stop}*$`), Ask: hear.OpenQuestion("What is that figure of?", "rails 5")},
	{Looks: hear.KindOf(act.Take), Way: asWay(`\btake {the|that }?{first|second|third|fourth|fifth|last|next}( one)? {down|out|off|away|up|back|apart}\b`), Not: anyWordOf(`list|page|sheet`), Ask: hear.OpenQuestion("Take what away? Please name it.", "one fewer rail")},
	{Looks: hear.AsksTopic("shopping"), Way: asWay(`\btake {one|them|it|that|this|those|these|all|both|some|a few|a couple|Number|that one|this one|the {top|bottom|last|other|end} one}( of them| all)? {off|out|down|away|back}\b`), Not: anyWordOf(`list|page|sheet`), Ask: hear.OpenQuestion("Take what away? Please name it.", "one fewer rail")},
	{Looks: lessThanInch, Way: asWay(`( and (a |an |one |three |five |seven |[0-9]+ )?{half|quarters?|eighths?|sixteenths?|thirds?}|[0-9] ?-? ?[0-9]+ ?/ ?[0-9]+|[0-9]\.[0-9]+)( inch| inches| in)? ` + setAnew + `( ` + setAnew + `)* (and )?` + partOfInch + `( inch| an inch| of an inch)?{ Stop}*$`), Ask: wholeOrPart},
	{Looks: lessThanTenInches, Way: asWay(`{{twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety} (- )?{one|two|three|four|five|six|seven|eight|nine}|[2-9][1-9]} ` + setAnew + `( ` + setAnew + `)* ` + lessThanTen + `{ Stop}*$`), Ask: wholeOrPart},
	{Looks: hear.Stated(solver.WallHeight), Way: asWay(`\b{gaps?|spacing|bottom} .*\b{foot|feet|ft} {, }?{no|wait|sorry} {, }?{one|two|three|[1-3]}\b`), Ask: hear.OpenQuestion("Which of the figures does that set right?", "gap 2-1/4")},
	{Looks: hear.Stated(solver.Measured), Way: asWay(`\b{Number|a} {rails?|boards?|slats?} no {Number} bays? {Number}\b`), Ask: hear.OpenQuestion("How many rails, and how many bays?", "rails 6, bays 2")},
	// What is taken back, and what goes down.
	{Looks: hear.KindOf(act.Undo), Way: asWay(`\bundo {the|my|our|those|these }?{{Number} }?{gaps?|bottom gap|spacing|opening|doorway|wall|height|span|bays?|rails?|boards?|posts?|stiffeners?|spare|budget|fit|drop|stock|kerf|trim}\b`), Ask: besidesIt(forgetOrNot)},
	{Looks: forgetsLimit, Way: asWay(`\bdrop {the|my|our|that }?{gaps?|bottom gap|spacing|opening|wall|height|span|bays?|drop|fit|spaces?} {to|down to }?{under|below|over|above|less than}\b`), Ask: hear.OpenQuestion("Shall I forget that limit, or keep to it?", "gap under 3")},
	{Looks: oneFigure, Way: asWay(`^{so|and|but|ok|well }*{low|high} {gaps?|wall|spacing|opening} {Number}\b`), Ask: hear.OpenQuestion("Is that what it shall be, or by how much it changes?", "gap 2")},
	{Looks: dropsLittle, Way: asWay(`^{ok|so|and|then|now|please|let us }*drop ({it|them|that|down|back|to|by} )+({Number}|a|an|half)\b`), Ask: hear.OpenQuestion("What goes down, and how far?", "wall 2 in lower")},
	{Looks: setsOneLength, Way: asWay(`[0-9] ?x{ Stop}*$`), Ask: hear.OpenQuestion("So many inches, or so many times as much?", "gap times 1.5")},
	{Looks: func(a act.Act) bool { return asksPieces(a) || a.Kind == act.SameAs }, Way: asWay(`\bposts? ({is|are|at|be|go|stand|the|exactly|just} )*{same as|same height as|like|level with|as} {the|my|our} wall\b`), Ask: hear.OpenQuestion("Are the posts to be as high as the wall?", "post height = wall height")},
	// Pieces told by the board, by the rail, and boards they are cut from.
	{Looks: valued, Way: asWay(`\b{Number|a|one} {rails?|boards?|slats?|planks?|pieces?|posts?|stiffeners?|bays?|courses?} {per|from each|from every|out of each|out of every|out of a|out of an|off each|off a|from a|from an|to a|to each|to every|a|an} {{Number|eight|ten} }?{board|stick|length|plank|(eight|ten|twelve|fourteen|sixteen|twenty)? ?{ - }?footers?|[0-9]+ ?(ft|foot|footer)|sheet|pack|bundle}\b`), Ask: perBoard},
	{Looks: hear.Stated(solver.Price), Way: asWay(`\b{dollars?|bucks?|hundred|each|apiece|box|pop|fifty|[0-9]\.[0-9]+} {one|two|three|four|five|six|seven|eight|nine|[1-9]} {{rails?|boards?|brackets?|screws?|pieces?|anchors?} }?{per|to a|to each|to every|in each|in every} {rail|bracket|base|post|board|hole|joint|end|bay|cap|stick|length}\b`), Ask: hear.OpenQuestion("Is that for one? How many are needed is worked out.", "brackets 3.50 each")},
	{Looks: hear.Stated(solver.Rails, solver.Price), Way: asWay(`\b{brackets?|screws?|anchors?|caps?|bases?}\b.* {one|two|three|four|five|six|seven|eight|nine|[1-9]} {{rails?|boards?|brackets?|screws?|pieces?|anchors?} }?{per|on each|in each|on every|to each|to a|for each|for every} {rail|bracket|base|post|board|end|bay}\b`), Not: asWay(`{price|cost|costs|paid|at|are|is|for|and a|\$|run|pay} {Number} {per|for each|for every}\b`), Ask: hear.OpenQuestion("Is that for one? How many are needed is worked out.", "brackets 3.50 each")},
	{Looks: lessStock, Way: asWay(`\b{cut|make|rip|get|saw|mill|build|making|cutting}( the| my| our| all)? ` + railsNamed + `( of them| all| both| here)? out of \b|\b{rails?|boards?|posts?|stiffeners?|cut|made|cuts|slats?}( come| both)? out of\b`), Ask: hear.OpenQuestion("Are those what they are cut from, or not to be had?", "stock 12 ft")},
	{Looks: hear.Stated(solver.Spare), Way: asWay(`\b{Number} {rails|boards|slats|planks} {,|and|plus} (spare|and a spare){ Stop}*$`), Ask: hear.OpenQuestion("How many to spare, beside how many rails?", "six rails, spare 1")},
	{Looks: hear.Stated(solver.Rails), Way: asWay(`\b{Number} {rails|boards|slats|planks} {and|plus|with} {an|one|another} extra( one)?{ Stop}*$`), Ask: hear.OpenQuestion("One board to spare, or one more rail?", "six rails, spare 1")},
	// Where things sit.
	{Looks: opensTo, Way: asWay(`\b{move|shift|slide|push|scoot|bring|put|nudge} {the|my|our }?{opening|doorway|walk - through}( over| along| across| up)? to {about|around }?{Number}`), Ask: placeOrWide},
	{Looks: setsOpeningAnd, Way: asWay(`\b{move|shift|slide|push|scoot|nudge} {the|my|our }?({[a-z0-9]+} )?{opening|doorway}( {[0-9a-z]+})?( over| across| along)?( to)?( the)? {left|right}( by)? {{Number}|a|half}[a-z0-9 /]*{ Stop}*$`), Ask: hear.OpenQuestion("Which opening goes where, and how far?", "move opening 2 two feet to the left")},
	{Looks: hear.Stated(solver.OpeningFromLeft, solver.OpeningFromRight), Way: asWay(`\b({Number}|half)( foot| feet| ft| inch| inches| in)?( wide)? {opening|doorway|walk - through} {one|two|three|[123]} {in|over|in from|away }?{from|off|from off}( of)?( the| my)? {left|right}`), Ask: placeOrWide},
	{Looks: hear.Stated(solver.BottomGap), Way: asWay(`\b{from|between} {the }?{floor|slab|ground|deck|concrete} {to|and|up to|all the way to|all the way up to|through} {about }?{Number}`), Not: asWay(`\bbottom {rail|board|one|gap|edge}\b|\bunderside\b|\blowest\b`), Ask: floorOrTop},
	{Looks: hear.Stated(solver.BottomGap, solver.RailTop), Way: asWay(`\b{bottom|lowest|first} {rail|board|slat|plank|one} {is|sits|starts|goes|set }*{at|from} ({Number}|a|an)[a-z0-9 /]* {,|and|;} {and|with }?{the|my }?top{ rail| one| board}? {is|sits|ends|goes }*{at|to} {Number}`), Ask: hear.OpenQuestion("Is that the top of the bottom rail, or the space under it?", "bottom gap 4, wall 48 high")},
	{Looks: manyRailsEither, Way: asWay(`\b{rails?|boards?|slats?|planks?} {go|run|are|stack }?{from|between|up from}\b`), Ask: hear.OpenQuestion("So many rails, or how high they stand?", "bottom gap 4, wall 48 high")},
	{Looks: hear.Stated(solver.Drop), Way: asWay(`^{so|and|but|the|my|our|its|ok|well }*{wall|half wall|wall height|top|it|top of the wall|top rail} ({is|'s|stands|sits|comes|at|to|should be|will be|goes|up|about} )*{Number}[a-z0-9 /]* {above|over|off|from|up from} {the|my|our }?{grade|lawn|ground|grass|yard|dirt|soil|earth|turf|patio|gravel|drive|walk|path}\b`), Ask: hear.OpenQuestion("Is that how high the wall is, or how far the ground lies below?", "wall 48 high", "drop 20")},
	// Cut, or to be cut.
	{Looks: fitTold, Way: asWay(`\b{cut|saw|trim}( (the|my|our|all|of))* ` + railsNamed + `?( all| up| off| down)? {at|to|be|is|are}? ?` + fewInches + `|\b` + railsNamed + ` {are|be|get|is }?{cut|sawn} {at|to }?` + fewInches), Not: asWay(`\b{short|shorter|shy|under|less|longer|long|smaller|more|loose|off|play|fit|tight|snug|clearance|free|leave|leaving|allow|gap|slack|spare|room|back|scant|light|full|strong|heavy|oversize|proud|over|room|tolerance|within|give|apiece|per}\b`), Ask: cutLength},
	{Looks: hear.Stated(solver.RailFace), Way: asWay(`\b{rails?|boards?|slats?|planks?|them|they|those}( {is|are|be|should|shall|must|will|cut|came|come|need|to|a|an|about})* .*\b{longer|long|less|more}{ Stop}*$`), Not: anyWordOf(`wider|narrower|wide|face|high|height|tall|thick|thicker|broad|measures?|actual|width|deep`), Ask: cutLength},
	{Looks: fitTold, Way: asWay(`\b{rails?|boards?|slats?|planks?|them|they|those|all|each} {{are|be|should|shall|must|will|cut|need|to|all|about|just|only} }*[a-z0-9 /]+( inch| inches| of an inch| an inch)? shorter{ Stop}*$`), Not: anyWordOf(`than|space|fit|play|clearance|opening`), Ask: hear.OpenQuestion("Shorter than the space, or shorter than they are now?", "cut the rails 1/8 short")},
	{Looks: fitTold, Way: asWay(`\b{came|turned|ended|worked|wound} {out|up|in|back} .*\b{short|shy|shorter|long}\b|\b{of the|of my|of our|of them|of those|of these}( rails| boards| slats| pieces)? {are|is|were|was|came} .*\b{short|shy|shorter}\b|^{so|and|but|well|oh|ok }*({he|she|they|somebody|someone|you|we all}|{my|the|our} [a-z]+) ({has|have|had|went and|just|only} )*cuts? .*\b{short|shy|shorter}\b|^{so|and|but|well|oh|ok }*{i|we} ({am|are|'m|'re|was|were|come|came}) .*\b{short|shy}\b`), Not: asWay(`\b{should|shall|want|wants|make|need|must|let|please|supposed|would like|wish}\b`), Ask: whoCutThem},
	{Looks: hear.Stated(solver.Rails), Way: asWay(`\b{put|hung|mounted|installed|screwed|fixed|fastened|nailed|set} {the|my }?{Number} {rails|boards|slats|planks|rail|board} up\b|\b{already|have already|now|just} {have|got|had} (got )?{Number} {rails|boards|slats|planks|rail|board} (up|on|in|mounted|hung)\b`), Not: asWay(`\b{want|to|would like|let us|should|please} {put|have|got}\b`), Ask: hear.OpenQuestion("Are they up already, or is that how many there shall be?", "six rails")},
}

// figureBesideLumber are lines where a figure beside a size, a part or a price is heard as another's.
var figureBesideLumber = []hear.OpenWay{
	{Looks: hear.Stated(solver.Price), Way: asWay(`[a-z0-9] {two|three|four|five|six|eight|ten|twelve|[234568]|10|12} for ({Number} ?)+{ Stop}*$`), Ask: onePrice},
	{Looks: hear.Stated(solver.Budget), Way: asWay(`^{so|and|but|the|my|our|for }*{lumber|wood|timber|boards|material|materials} {Number}{ Stop}*$|\b{Number} of {wood|lumber|timber|board|material}\b`), Not: asWay(`[$]|\b{dollars?|bucks|covers?|grant|budget}\b`), Ask: hear.OpenQuestion("Is that what it may cost?", "budget 120")},
	{Looks: hear.Stated(solver.RailSize, solver.AddedPostSize, solver.PostSize), Way: asWay(`\b{gaps?|bottom gap|spacing|spaces?|room|clearance|rails?|boards?|opening|drop}( {is|are|of|to|at|be|=|about|should|just})* ({Number and a }?{half|third|quarter}|one|1|{Number} thirds)( {of|a|an|the})* ` + lumberSize + `{ wide| thick| high| flat| on edge}?{ Stop}*$`), Ask: hear.OpenQuestion("And that in inches?", "gap 1-3/4, rails 2x6")},
	{Looks: hear.Stated(solver.AddedPostSize), Way: asWay(`({with|and|put} |, ){a|an|one|the }?` + lumberSize + ` {in|laid|set|placed }?{between|in there|as a spacer}`), Not: anyWordOf(`ends?|posts?|corners?|outside`), Ask: hear.OpenQuestion("Is that a post, or what keeps the rails apart?", "gap 1-1/2")},
	{Looks: hear.Stated(solver.WallHeight, solver.Span, solver.Overall), Way: asWay(`\b{foot|feet|ft} {Number} {rails|boards|slats|planks} {Number}{ Stop}*$|\b{foot|feet|ft} {Number} {two|one|[12]} ?{by|x} ?(four|six|eight|ten|[0-9]+)( s)? {rails|boards|slats|planks|stiffeners|posts}\b`), Ask: hear.OpenQuestion("Are those inches, or how many?", "wall 4 ft, six rails")},
	{Looks: hear.Stated(solver.Rails), Way: asWay(`\b{number|#|grade|no \.} {one|two|three|[123]} {rails|boards|lumber|slats|planks|wood|pine|fir|cedar}\b`), Ask: hear.OpenQuestion("Is that the grade of the lumber, or how many?", "six rails")},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`[1-9] ?x ?[0-9]+ {are|come|is|only }?{in|at} {[a-z]+|[0-9]+( ft| foot)?}( {,|and|or} {[a-z]+|[0-9]+( ft| foot)?})* [1-9] ?x ?[0-9]+ {in|at}\b`), Ask: hear.OpenQuestion("Which lengths are sold of which size?", "stock 2x6 12 ft, 16 ft; stock 4x4 8 ft")},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{to|through} [a-z0-9 ]+ by {twos|fours|2 ?s|4 ?s|two|2}{ Stop}*$`), Ask: hear.OpenQuestion("Which lengths are sold?", "stock 8 ft, 10 ft, 12 ft")},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{stock|stocks|lumber|lengths} ({is|are|comes in|at|of} )*{eight|ten|twelve|fourteen|sixteen|[0-9]+} and a half{ Stop}*$`), Ask: hear.OpenQuestion("Half a foot, or half an inch?", "stock 12 ft 6")},
}

// lessThanInch reports whether a length of less than an inch is set.
func lessThanInch(a act.Act) bool { return setsALength(a) && setsBelow(a, 1) }

// lessThanTenInches reports whether a length of less than ten inches is set.
func lessThanTenInches(a act.Act) bool { return setsALength(a) && setsBelow(a, 10) }

func setsBelow(a act.Act, most int) bool {
	v := a.Statements[0].Value
	return v.Of == nil && v.Num.Less(exact.Int(most))
}

// forgetsLimit reports whether a limit is forgotten.
func forgetsLimit(a act.Act) bool {
	return a.Kind == act.Forget && len(a.Statements) > 0 && a.Statements[0].Op != "" && a.Statements[0].Op != solver.Eq
}

// setsOpeningAnd reports whether an opening is given a width or a side.
func setsOpeningAnd(a act.Act) bool { return hear.Stated(solver.Opening, solver.OpeningSide)(a) }

// dropsLittle reports whether the ground is set to lie less than a foot lower.
func dropsLittle(a act.Act) bool {
	return hear.Stated(solver.Drop)(a) && setsBelow(a, 12)
}

// manyRailsEither reports whether rails may be any number up to more than a wall commonly has.
func manyRailsEither(a act.Act) bool {
	return valued(a) && a.Statements[0].Name.Quantity == solver.Rails && a.Statements[0].Op == solver.In && exact.Int(15).Less(a.Statements[0].Upper.Num)
}

// fitTold: how much shorter rails are cut.
var fitTold = hear.Stated(solver.Fit)

// besidesIt asks where something else was heard besides.
func besidesIt(ask func(act.Act, []act.Act) solver.Question) func(act.Act, []act.Act) solver.Question {
	return func(a act.Act, all []act.Act) solver.Question {
		if len(all) < 2 {
			return solver.Question{}
		}
		return ask(a, all)
	}
}
