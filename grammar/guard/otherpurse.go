package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// A figure beside money or lumber may be something else than the sum or the count that it is heard as: a price that rose by it, a budget that
// was passed by it, boards that a quote lists, the price of one board that somebody will pay, a share of a sum. The same holds of a count of
// all there are, where another of each bay is told. It is asked back. Common ways of speech, no source.

const (
	// ofLengths are boards by their lengths, and oneOfThem is one thing that is bought.
	ofLengths = `{sixes|eights|tens|twelves|fourteens|sixteens|eighteens|twenties|{six|eight|ten|twelve|fourteen|sixteen|eighteen|twenty|[0-9]+} ?- ?footers|{eight|ten|twelve|fourteen|sixteen|twenty|[0-9]+} footers}`
	oneOfThem = `{six|eight|ten|twelve|fourteen|sixteen|eighteen|twenty|footer|bracket|board|post|rail|stick|piece|length|plank|slat|stiffener|screw|base|post base|cap|anchor|two by [a-z]+|2 ?x ?[0-9]+|4 ?x ?4|box}`
	moneyWord = `{dollars?|bucks?|cents?|pounds?|quid|euros?|\$|money|cash|budget|spend|spent|pay|cost|costs}`
)

// inAll tells of all there are, and perBay of each bay, or of the only one.
const inAll = `{total|in all|altogether|all together|all told|in total|combined|for the whole|across the whole}`

var (
	perBay        = asWay(`\b{one|a single|the only} bay\b|\b1 bay\b|\b{in|per|each|every|a} {each|every }?bay\b`)
	moneyOrBoards = hear.OpenQuestion("So many boards, or so much money?", "the quote comes to 380")
	inAllOrEach   = hear.OpenQuestion("So many in all, or in each bay?", "one stiffener in each bay")
)

// otherPurse are such lines, each with what is heard of it.
var otherPurse = []hear.OpenWay{
	{Looks: tells(solver.Bay), Way: asWay(`^{Lead|only|just|about|at|make it|that is|and|, }*{[0-9][0-9.]*|Number|a hundred}{ Number}? {a|per|each|every|for each|for every|to a|to each|apiece per} bay{ Stop|please}*$`), Ask: hear.OpenQuestion("How long is each bay, or what does it cost?", "bays 60 long")},
	{Looks: tells(solver.Bay), Way: asWay(`\b{stretch|run|go|come up|manage|afford|climb|push it}{ up|as far|as high}? {to|as} `), Not: asWay(`\b{bays?|posts?|long|wide|feet|foot|inch|inches|ft|between|rails?}\b`), Ask: hear.OpenQuestion("Is that the budget, or how long a bay is?", "budget 400")},
	{Looks: tells(solver.Price), Way: asWay(`\b{went|gone|go|goes|come|came|crept|shot|jumped|rose|climbed|dropped|fell|are|is|'s|got|gotten|have|been|now|being|bumped|moved|marked} {all |back |way |now |already }*{up|down|higher|lower|dearer|cheaper|more|less} {by|another|like|about|some|almost|nearly|over }*{\$ ?}?{a|an|half a|[0-9][0-9.]*|Number}{ Number}? ?{dollars?|bucks?|cents?|pounds?|quid|euros?|\$|apiece|each|now|since|from|this|$}|[a-z0-9] {up|down} {a|[0-9][0-9.]*|Number} ?{dollars?|bucks?|cents?|quid}{ Stop}*$|\b{went|gone|go|goes|come|came|crept|shot|jumped|rose|climbed|dropped|fell|are|is|'s} {up|down}{ by}? {\$ ?}?[0-9][0-9.]*{ Stop}*$|\b{[0-9][0-9.]*|Number|a} ?{dollars?|bucks?|cents?|\$} {a (board|piece)|each|apiece }?{more|higher|dearer|less|cheaper|lower|up|down|extra}\b`), Not: asWay(`\b{up|down} to\b|\b{no|not|never} {more|less|higher|lower}\b|\bdown the {road|street}\b`), Ask: hear.OpenQuestion("Is that the new price, or by how much it changed?", "16 ft 2x6 are 16.50")},
	{Looks: tells(solver.Budget), Way: asWay(`\bbudget{ is|'s|was|runs|ran|comes|went|goes|got|,}* {already|now|about|by|only|at }*{\$ ?}?{[0-9][0-9.]*|Number|a}{ Number}*( hundred)?( (dollars?|bucks?|\$))? {over|under|short|shy|out|off|too [a-z]+|in the red|past|beyond|overdrawn|blown|overrun|left|gone|spent}{ already|now|by now|on it}?{ Stop}*$`), Ask: hear.OpenQuestion("Is that the budget, or how far off it is?", "budget 400")},
	{Looks: tells(solver.Stock), Way: asWay(`\b{on sale|on special|on offer|for sale|marked down|reduced|discounted|on clearance|knocked down|on promotion|a deal|going|a bargain} {at|for|to|,|:} {only|just|about }?{\$ ?}?{[0-9][0-9.]*|Number}{ Number}?( (each|apiece|a piece|today|this week|now|a stick|a board))*{ Stop}*$`), Ask: hear.OpenQuestion("Is that what they cost, or another length?", "16 ft 2x6 are 12.00")},
	{Looks: tells(solver.Budget), Way: asWay(`\b{half|thirds?|quarters?|fourths?|eighths?|sixteenths?|[0-9] / [0-9]+|Number|[0-9][0-9.]*}( an?| of an)?( inch| inches| or so| or less)? {to {play|work|spare|fool|mess|fiddle|go|build|fit|squeeze|fill}|left|spare}\b`), Not: asWay(`(^|[^a-z])` + moneyWord), Ask: hear.OpenQuestion("Is that the budget, or a length?", "budget 400")},
	// What a quote, a bid or a receipt lists.
	{Looks: claimsTwo, Way: asWay(`\b{[0-9]+|Number|a dozen|a|an} {two by [a-z]+|2 x [0-9]+|good|more|of the }?` + ofLengths + `\b|\b{for|per|an|each|apiece|every|a} {an?|each|one|every }?` + oneOfThem + `\b`), Ask: moneyOrBoards},
	{Looks: tells(solver.Stock), Way: asWay(`\b{quoted?|quotes|quoting|bids?|estimated?|estimates|invoiced?|billed|priced|listed}\b.*\b{[0-9]+|Number|a dozen} ` + ofLengths + `\b`), Ask: moneyOrBoards},
	{Looks: claimsRails, Way: asWay(`\b{quoted?|quotes|quoting|bids?|estimated?|estimates|invoiced?|invoice|billed|bill|receipt}\b.*\b{[0-9]+|Number|a dozen} {boards|planks|pieces|sticks|lengths|footers}{ Stop}*$`), Not: asWay(`\b{high|stack|stacked|each bay|a bay|per bay}\b`), Ask: hear.OpenQuestion("So many to buy, or so many rails?", "they quoted ten 12 ft 2x6")},
	{Looks: tells(solver.CostOf), Way: asWay(`\b{[0-9]+|Number} {Part|brackets?|gaps} {total|in all|altogether|all told}\b`), Ask: askback.Meant.Open("one stiffener in each bay")},
	{Looks: claimsLittle, Way: asWay(`\b{quot(e|es|ed|ing)|estimates?|estimated|invoiced?|bids?|bill|billed|receipt|says?|said|claims?}\b`), Not: asWay(`(^|[^a-z])` + moneyWord), Ask: hear.OpenQuestion("Is that what it costs in all, or how many?", "the quote comes to 380")},
	{Looks: tells(solver.CostOf), Way: asWay(`\b{each|apiece|a piece}{ Stop}*$|\b{for|per|each|every|on} {an?|each|one|every|the }?` + oneOfThem + `{ Stop|\?}*$|\b{a|an} ` + oneOfThem + `{ Stop|\?}*$`), Not: anyWordOf(`in all|total|altogether|all told`), Ask: hear.OpenQuestion("Is that the price of one, or of all?", "16 ft 2x6 are 14.50")},
	{Looks: tells(solver.Budget), Way: asWay(`\b{for|per|each|every|on} {an?|each|one|every }?` + oneOfThem + `{ Stop}*$|[0-9a-z] {a|an} ` + oneOfThem + `{ Stop}*$|\b{pay|spend|give|go}\b.*\b{each|apiece|a piece|a pop|a stick|a board}{ Stop}*$`), Ask: hear.OpenQuestion("Is that for one, or for all of it?", "budget 400")},
	// Counted boards with their price are bought, and do not stack up.
	{Looks: tells(solver.Rails), Way: asWay(`\b{Many|[0-9]+} ({[124] x [0-9]+|five quarter by [a-z]+} x [0-9]+( s| 's)?|{two by [a-z]+|2 x [0-9]+}( s| 's)? ` + ofLengths + `|{two by [a-z]+|2 x [0-9]+} by [a-z0-9]+) ?,? {at|for|@|costs?|cost|run|come to|are} {me|us|you }?{\$ ?}?{[0-9]|Number}`), Ask: hear.OpenQuestion("Are those to buy, or the rails of a bay?", "12 ft 2x6 are 14.50")},
	{Looks: tells(solver.Price), Way: asWay(`\b{of it|of that|of this|of which|of them|out of that|out of it|out of which|set aside|included|including|goes|going}\b.*\b{screws|brackets?|posts?|bases?|anchors?|caps?}\b`), Ask: hear.OpenQuestion("Is that the budget, or a price?", "budget 400")},
	{Looks: dearScrews, Way: asWay(`\b{with|and|plus|incl|minus|less|for}\b.*\bscrews\b|, screws\b`), Ask: hear.OpenQuestion("Is that the budget, or a price?", "budget 400")},
	// How many there are in all, or in each bay.
	{Looks: someStiffeners, Way: asWay(`\b{stiffeners?|uprights?|verticals?|battens?}( [a-z]+){0,3} {total|in all|altogether|all together|all told|in total|combined|overall|for {the|this|my|our }?{whole|entire|complete|full}|across the {whole|entire|full}|{on|in|over|along} the {whole|entire|full}|for the {lot|wall|job}|between {the|both|my|our }*{two|three }?bays|{shared|split|spread|divided} {between|over|among|across|by}|for {both|all|the two|two|all the} bays}\b|\b{total of|total|in all|altogether|all told} ,? ?{of }?{Many|[0-9]+} {stiffeners?|uprights?}\b|\b{stiffeners?|uprights?}{ :|,}? {Many|[0-9]+} {total|in all|altogether|all told}`), Not: perBay, Ask: inAllOrEach},
	{Looks: tells(solver.Rails), Way: asWay(`\b{rails|boards|slats|planks}( [a-z]+){0,2} ` + inAll + `\b.*\bbays\b|\bbays\b.*\b{rails|boards|slats|planks}( [a-z]+){0,2} ` + inAll + `\b|\b{rails|boards|slats|planks} {between|over|across|for|among} {the|both|my|our }*{two|three }?bays\b`), Not: perBay, Ask: inAllOrEach},
	{Looks: manyRails, Way: asWay(`\b{rails|boards|slats|planks}( [a-z]+){0,2} ` + inAll + `\b`), Not: perBay, Ask: inAllOrEach},
}

// claimsTwo reports whether a cost is claimed together with lengths that are sold.
func claimsTwo(a act.Act) bool {
	return a.Kind == act.Check && tells(solver.CostOf)(a) && tells(solver.Stock)(a)
}

// claimsLittle reports whether less is claimed to be the cost than any wall costs.
func claimsLittle(a act.Act) bool {
	return a.Kind == act.Check && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.CostOf && s.Value.Num.Less(exact.Int(40)) && s.Value.Num.IsInt()
	})
}

// dearScrews reports whether screws are told to cost more than any do.
func dearScrews(a act.Act) bool {
	return tells(solver.Price)(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return !s.Value.Num.Less(exact.Int(60)) })
}

// someStiffeners reports whether stiffeners are told of, and not that there be none.
func someStiffeners(a act.Act) bool {
	return tells(solver.Stiffeners)(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Stiffeners && s.Value.Num.Sign() > 0
	})
}

// manyRails reports whether more rails are told of than commonly stack up in a bay.
func manyRails(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Value.Of == nil && exact.Int(9).Less(s.Value.Num)
	})
}

// claimsRails reports whether a count of rails is claimed.
func claimsRails(a act.Act) bool { return a.Kind == act.Check && tells(solver.Rails)(a) }
