package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// At the counter and at the pile much is said of boards that is neither on sale nor at hand: they were used up or sold, they are for a shelf, they come
// tomorrow, they are counted. It is asked back. Everyday speech, no source.

// soldBy are boards by their lengths, as they are named at the counter.
const soldBy = `{sixes|eights|tens|twelves|fourteens|sixteens|eighteens|twenties|({six|eight|ten|twelve|fourteen|sixteen|eighteen|twenty|[0-9]+} ?(- )?{footers|foot {boards|ones|lengths}})|(8|10|12|14|16|18|20) '? ?s}`

var (
	onSaleOrCounted = hear.OpenQuestion("Lengths on sale, or so many boards of a length?", "they sell tens and twelves")
	saleOrNot       = hear.OpenQuestion("Which lengths are on sale now?", "they sell tens and twelves")
	railsOrBoards   = hear.OpenQuestion("How many rails, or how long the boards are?", "they sell eights and twelves")
	whatOfThem      = hear.OpenQuestion("Rails of the wall, or boards to buy or at hand?", "6 rails")
	twoOrOne        = hear.OpenQuestion("Are those two figures, or one with a decimal comma?", "gap 2, 5 rails")
)

// atTheCounter are such lines, each with what is heard of it.
var atTheCounter = []hear.OpenWay{
	// Used up, sold, or there once.
	{Looks: tells(solver.Have), Way: asWay(`\b{i|we|he|she|they|dad|mom}{ have|has|had}?{ only|just|already|all|nearly|about|since|now|got}* {used|used up|sold|cut|cut up|burned|burnt|given away|gave away|lent|lost|ruined|wasted|spent|returned|installed|put up|hung|gone through|went through|finished|nailed up} {up|about|only|almost|just|all|of|my|the|our }*{a|Number|[0-9]+|some|most}\b`), Ask: forThisWall},
	{Looks: tells(solver.Have), Way: asWay(`^{Lead|well|, }*there {was|were|used to be|had been} `), Not: anyWordOf(`still|now|left`), Ask: forThisWall},
	{Looks: tells(solver.Have), Way: asWay(`\bto go{ Stop}*$`), Ask: forThisWall},
	{Looks: tells(solver.Have), Way: asWay(`\b{got|gets|getting|went|turned} {all|pretty|rather|soaking|really|a bit }?{wet|soaked|damp|rotten|bad|mouldy|moldy|missing}\b`), Not: anyWordOf(`still|but|anyway|one|some|rest`), Ask: forThisWall},
	{Looks: tells(solver.Have), Way: asWay(`\b{he|she|they|somebody|someone|(the|my|our|his) [a-z]+} {brought|took|carried|hauled|sent|drove|gave|wants|wanted} .*\b{back|away|off}{ Stop}*$`), Ask: forThisWall},
	// For something else, or somebody else's.
	{Looks: tells(solver.Have), Way: asWay(`\bfor {the|a|an|my|our|his|her|their|another|some|that}{ [a-z]+}? {OtherWork|planters|sandbox|benches|frame|desk|neighbor|kids|boat|cabin|cottage|loft|attic|closet|pantry|kitchen|roof}{ Stop|, [a-z ]+}*$|\bfor {himself|herself|themselves|him|her|them|dad|mom|grandpa|grandma|somebody else|someone else|something else|another {job|wall|project}|later}{ Stop}*$`), Ask: forThisWall},
	{Looks: tells(solver.Have), Way: asWay(`^{Lead|well|, }*{he|she|(the|my|our|his|her) {neighbors?|guy|fellow|crew|other [a-z]+|contractor|builder|foreman|boss|landlord}|{the|my|our|his|her} {Kin}|{dad|mom|grandpa|grandma}} {just|also|already|once|only|has|have|had|'s|really }*{bought|got|picked up|ordered|found|owns|needs|wants|took|keeps|has|have} `), Not: regexp.MustCompile(`\b(?:for me|for us|i can|we can|gave|give|gives|mine|ours|me|us)\b`), Ask: forThisWall},
	{Looks: tells(solver.Have), Way: asWay(`^{Lead|well|, }*{my|our }?{dad|mom|grandpa|grandma|uncle|aunt|brother|sister|neighbor|cousin} 's (got )?`), Not: regexp.MustCompile(`\b(?:for me|for us|i can|we can|gave|give|gives|mine|ours|me|us)\b`), Ask: forThisWall},
	{Looks: tells(solver.Have), Way: asWay(`^{Lead|well|, }*{his|her|their|your|{my|the|our }?{dad|mom|brother|sister|neighbor|uncle|aunt|grandpa|cousin|son|boss} 's} {other|own|old }?{Number|[0-9]+} `), Not: regexp.MustCompile(`\b(?:for me|for us|i can|we can|gave|mine|ours|me|us)\b`), Ask: forThisWall},
	{Looks: boardsTold, Way: asWay(`\b{coming|on order|on backorder|on the way|on their way|arriving|being delivered|due|due in}{ in|for}?{ today|tomorrow|next [a-z]+|on [a-z]+|friday|monday|soon}?{ Stop}*$`), Not: anyWordOf(`shopping|list|cut`), Ask: forThisWall},
	// Counted boards are no lengths.
	{Looks: countsAsFeet, Way: asWay(`(^|[a-z] |, ){two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[0-9]+} ` + soldBy + `( |$)`), Not: asWay(`\b{got|have|own} {Number|[0-9]+} [0-9] ?x ?[0-9]`), Ask: onSaleOrCounted},
	{Looks: tells(solver.Stock), Way: asWay(`^{Lead|only|just|they have|there are|about|well|, }*{Number|[0-9]+} {in stock|left in stock|on hand|in store|available}{ Stop}*$`), Ask: onSaleOrCounted},
	{Looks: tells(solver.Stock), Way: asWay(`\b{on sale|on special|on offer|marked down|reduced|discounted|on clearance|knocked down} {at|for|to} `), Not: regexp.MustCompile(`\bfor (?:today|now|the)\b`), Ask: hear.OpenQuestion("Is that what they cost, or other lengths?", "16 ft 2x6 are 12.00")},
	{Looks: checksOrTriesRails, Way: asWay(`\b{out of|from} {Number|[0-9]+} {boards|planks|sticks|pieces}{ \?|\.}*$`), Not: asWay(`\b{high|stack|tall|each bay|a bay|per bay}\b`), Ask: whatOfThem},
	{Looks: checksOrTriesRails, Way: asWay(`^{Lead|well|, }*{i|we }?{have|got|have got|bought} {Number|[0-9]+} {boards|planks|sticks|pieces} ?, .*{enough|do|more|plenty|suffice}\b`), Ask: whatOfThem},
	{Looks: tells(solver.Extra, solver.Have), Way: asWay(`^{Lead|well|, }*{i|we} {have|got|have got|bought|own}\b.*\b{do|will|would|should} {i|we} {still }?{need|buy|want}{ any|some}? more\b`), Not: regexp.MustCompile(`\balready\b`), Ask: hear.OpenQuestion("Are those at hand, or to be cut besides?", "I have ten 2x6 twelves, what do I need to buy")},
	// How long boards are is no count of them.
	{Looks: limitsRails, Way: asWay(`\b{boards?|planks?|sticks?|pieces?|lengths?|lumber|rails?|slats?} {is|are|be|that is|that are|must be|can be|should be }*{no|not|any }*{longer|shorter|over|past|above|beyond|under|bigger than|larger than}\b`), Not: asWay(`\b{over|under|above|beyond} {the|a|my|our|that|there|here|one another|each other}\b|\b{high|tall}\b`), Ask: railsOrBoards},
	{Looks: limitsRails, Way: asWay(`\b{longest|shortest|biggest|largest|maximum|max|minimum} {board|plank|stick|piece|length|rail|slat}\b|\b{boards|planks|sticks|lengths|lumber} {are|is|only|just|come|go }*{up to|of at most|of up to|of no more than|of at least} `), Not: asWay(`\b{rail|board|slat|plank|piece} {count|number}\b`), Ask: railsOrBoards},
	// What is kept, left, or put off is not said to be sold.
	{Looks: setsStock, Way: asWay(`\b{keep|leave|save|hold|hold on to|hold back|set aside|put aside|spare} {the|those|these|all the|all|my|our|them|some|any }*` + soldBy + `( |$)`), Not: asWay(`\b{they|he|she|yard|store|shop|merchant|lumberyard|place}{ do|also|only|just|always|still|usually}* {keep|keeps}\b`), Ask: saleOrNot},
	{Looks: setsStock, Way: asWay(`^{Lead|the|my|, }*` + soldBy + ` {later|go|go first|first|last|next|last of all|for now|after|maybe|perhaps|someday}{ Stop}*$`), Ask: saleOrNot},
	// Not yet, or not for sure.
	{Looks: setsStock, Way: asWay(`\b{when|once|if|as soon as|whenever|unless} {they|he|she|it|the {yard|store|shop|truck}|i|we|there|you} {have|has|get|gets|got|carry|sell|can|come|comes|are|is}\b|\b{tomorrow|next {week|month|monday|tuesday|wednesday|thursday|friday|saturday|sunday|time|year}|on {monday|tuesday|wednesday|thursday|friday|saturday}|in a {week|month|few days|day|couple of days}|by {friday|monday|the weekend}|this weekend|later this week|eventually|on order|on backorder|back - ordered|backordered|on the way|hopefully|maybe|perhaps|with luck|with any luck|fingers crossed|i hope|i think|i guess|i believe|supposedly|probably|possibly|might|may|could|{is|are} getting}\b`), Not: regexp.MustCompile(`\b(?:what if|suppose|now|not)\b|^(?:can|could|would|do|does|will|what|how) `), Ask: saleOrNot},
	{Looks: setsStock, Way: asWay(`\b{i|we|he|she|they} {have|had|just|only|also|already }*{asked for|ordered|requested|asked about|was after|were after|want|wanted|am after|are after|would like|'d like|looked for|am looking for|are looking for|hoped for}\b`), Ask: saleOrNot},
	{Looks: setsStock, Way: asWay(`\b{starts?|begins?|go|goes|run|runs|top out|tops out|max out|maxes out|stops?|ends?}{ only|just|all the way}? {at|up to|to|down to|with|from}\b|\b{up to|at most|at least|at the most|or longer|or shorter|or more|or less|or bigger|or better|and up|and over|and longer|upwards|maximum|minimum|max|min|tops|and under|and shorter|and down}{ Stop}*$|\b{no|nothing|none|not} {longer|shorter|over|under|past|above|below} `), Ask: saleOrNot},
	// What was told of a length asks for what stands.
	{Looks: hear.KindOf(act.Recap), Way: asWay(`\bwhat {did|have|had} {i|we} {say|said|give|given|tell|told|put|get|have|enter|entered|pay|paid}( you)?( down)?{ for|about|on|of}? {the|my|those }*` + soldBy + `( |$)`), Ask: hear.OpenQuestion("What was told so far, or what they cost?", "what have I told you", "recap")},
	// Lengths of fifty feet and more are millimeters.
	{Looks: soldFar, Way: asWay(`\b[0-9]{4,5}\b`), Ask: inchesOrMetric},
	// Left over, done, to go.
	{Looks: tells(solver.Rails), Way: asWay(`\b{Many|[0-9]+} {more|other|last }*{left over|left - over|leftover} {boards?|planks?|rails?|slats?|sticks?}\b|\b{boards?|planks?|rails?|slats?|sticks?} {are|is|is now|all|were|now }*{left over|left - over|leftover|to go|done|finished|behind (me|us)|remaining|left to {do|go|cut|hang}}\b`), Ask: whatOfThem},
	{Looks: hear.Stated(solver.Rails), Way: asWay(`\b{i|we}{ have|'ve|am|are}?{ only|just|already|all|now}* {done|finished|completed|got done|did|hung|mounted|put up|fixed|installed} {with }?{Many|[0-9]+} {of the|more }?{boards?|planks?|rails?|slats?}`), Not: anyWordOf(`change|make|instead|if|this time|now`), Ask: whatOfThem},
	{Looks: hear.KindOf(act.WhatIf), Way: asWay(`\b{Many|[0-9]+} {of the|of my|more }?{boards?|planks?|rails?|slats?|sticks?|posts?|stiffeners?} {is|are|was|were|turns? out|comes? out|goes|go|gets?|turn out to be|turns out to be} {a|all|no }?{Damaged}\b`), Ask: hear.OpenQuestion("So many bad, or so many in all?", "what if five rails")},
	// A comma between two figures may be a pause.
	{Looks: valued, Way: asWay(`\b[0-9]+,[0-9]+ {rails?|boards?|slats?|planks?|posts?|stiffeners?|bays?|openings?|footers?|foot|feet|ft}\b`), Not: asWay(`[0-9],[0-9]+ {rails?|boards?|slats?|planks?|posts?|stiffeners?|bays?|openings?} {=|:|are|is|at|of }*{Number|[0-9]}`), Ask: twoOrOne},
	{Looks: tells(solver.Stock, solver.Have), Way: asWay(`\b{room|space|place|spot|rack|use|need} for {Number|[0-9]+|a|some} `), Ask: hear.OpenQuestion("Do you have them, or are they to be bought?", "I have six 2x6 twelve footers")},
	{Looks: tells(solver.Spare), Way: asWay(`\b{i|we} {can|could|have got|have|got}{ not}?{ spare}? {a|an|any|Number|[0-9]+} {boards?|planks?|sticks?|pieces?|rails?}( to spare)?{ Stop}*$|\b{do not|never|no need to|need not} {put|add|buy|get|order|include|throw in|count|want|need} {a|one|any|the|my }*spare {board|plank|stick|piece}\b|\b{can not|could not|can|could} spare\b`), Ask: hear.OpenQuestion("Boards to buy besides, or boards that you have?", "two spare boards")},
	{Looks: changesRails, Way: asWay(`\b{buy|get|order|grab|pick up|purchase|fetch} {me|us }?{Many|[0-9]+|another|an extra} {more|other|extra }?{boards?|planks?|sticks?|pieces?}\b|\b{on|off|from} {the|my|our} {shopping|buying }?{list|order|cart|quote}\b`), Ask: railsOrSpare},
}

// boardsTold reports whether boards are told to be at hand, or counted in a quote.
func boardsTold(a act.Act) bool { return tells(solver.Have, solver.Boards)(a) }

// setsStock reports whether lengths are told to be on sale.
func setsStock(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Stock && s.Op != solver.Minus })
}

// countsAsFeet reports whether the first of two lengths is shorter than any that is sold, or counts like the lengths themselves: "six twelves".
func countsAsFeet(a act.Act) bool {
	return setsStock(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Stock && len(s.Value.List) > 1
	})
}

// limitsRails reports whether rails are limited.
func limitsRails(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Op != solver.Eq && s.Op != solver.Near && !parse.Changes(s.Op)
	})
}

// checksOrTriesRails reports whether a count of rails is held against the wall, or tried.
func checksOrTriesRails(a act.Act) bool {
	return (a.Kind == act.Check || a.Kind == act.WhatIf) && tells(solver.Rails)(a)
}

// changesRails reports whether there shall be more rails, or fewer.
func changesRails(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Rails && parse.Changes(s.Op) })
}

// fiftyFeet is longer than any board that is sold.
var fiftyFeet = exact.Int(600)

// soldFar reports whether boards are told to be longer than any that is sold.
func soldFar(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Stock && slices.ContainsFunc(lengthsIn(s.Value), func(v solver.Value) bool { return v.Unit == solver.Inch && fiftyFeet.Less(v.Num) })
	})
}

// lengthsIn are the lengths of a value.
func lengthsIn(v solver.Value) []solver.Value {
	if len(v.List) > 0 {
		return v.List
	}
	return []solver.Value{v}
}

// inchesOrMetric asks whether such lengths are in millimeters.
func inchesOrMetric(a act.Act, all []act.Act) solver.Question {
	q := solver.Question{Text: "Is that in millimeters?", Example: "they sell 2400 mm and 3000 mm"}
	for _, b := range all {
		if !soldFar(b) {
			return q
		}
	}
	metric := make([]act.Act, len(all))
	for i, b := range all {
		b.Statements = slices.Clone(b.Statements)
		for k, s := range b.Statements {
			if s.Name.Quantity != solver.Stock {
				continue
			}
			s.Value.Num, s.Value.Unit = s.Value.Num.Div(solver.PerInch), solver.Millimeter
			s.Value.List = slices.Clone(s.Value.List)
			for j, v := range s.Value.List {
				s.Value.List[j] = solver.Value{Num: v.Num.Div(solver.PerInch), Unit: solver.Millimeter}
			}
			b.Statements[k] = s
		}
		metric[i] = b
	}
	q.Choices = []string{parse.Normal(metric), parse.Normal(all)}
	return q
}

// railsOrSpare asks whether boards that are bought besides are rails of the wall, or spare ones.
func railsOrSpare(a act.Act, all []act.Act) solver.Question {
	spare := a
	spare.Statements = slices.Clone(a.Statements)
	for i := range spare.Statements {
		spare.Statements[i].Name = solver.Name{Quantity: solver.Spare}
	}
	q := solver.Question{Text: "More or fewer rails, or spare boards?", Example: "two spare boards"}
	if len(all) == 1 && len(a.Statements) == 1 {
		q.Choices = []string{parse.Normal([]act.Act{a}), parse.Normal([]act.Act{spare})}
	}
	return q
}
