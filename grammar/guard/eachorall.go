package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// A post in each bay is as many posts as there are bays; what goes off each end of a board goes off twice; and boards that are enough, or to be fetched,
// are those of the whole wall, not the rails of a bay. A board is bought by its length, and the next "one" counts the next board.
// Everyday speech, no source.

const (
	eachBay    = `{each|every|either|both|all}( one)?( of)?{ the|my|our|these|those}? {bays?|sections?|stretch|stretches|panels?|openings?|spans?}`
	boardsSold = `({boards|planks|pieces|sticks|lengths}|[0-9]+ x [0-9]+ ?s?( {boards|planks|pieces|sticks})?)`
	byItsSize  = `[0-9]+ x [0-9]+s?( {boards?|posts?|sticks?|pieces?})?`
)

var (
	postsInAll   = hear.OpenQuestion("How many posts is that in all, between the end posts?", "two added posts")
	buyOrBuild   = hear.OpenQuestion("So many to buy, or so many rails in each bay?", "they quoted ten 12 ft 2x6")
	howLongEach  = hear.OpenQuestion("How long is each of them?", "two extra 2x6 twelve footers")
	spareOrAdded = hear.OpenQuestion("One more in the wall, or one more to buy, and how long?", "one added post")
)

// eachOrAll are such lines, each with what is heard of it.
var eachOrAll = []hear.OpenWay{
	// A post in each bay.
	{Looks: postsOrBays, Way: asWay(`\bposts?{ more|less|fewer|extra}?( (in|at|near) {the |my }?{middle|center|centre} of)?{ in|into|to|for|of|at|per}? {` + eachBay + `|{a |the }?{bay|section|stretch|panel}}{ Stop|please|too|now|\?}*$|\bposts? per {bay|section|stretch|panel}\b|\bposts? {in|into|to|for|in the middle of|in the center of} ` + eachBay + `\b`), Not: asWay(`\bin (bay|section) {Number}`), Ask: postsInAll},
	{Looks: postsOrBays, Way: asWay(`\b` + eachBay + ` {to }?{gets?|has|have|had|needs?|takes?|wants?|got|is getting|should {have|get}} {another|an extra|an added|one more|one extra|its own|an|a|one|one less|two} {added |middle |extra |more }?posts?\b`), Ask: postsInAll},
	// Boards of the whole wall.
	{Looks: railsBeyond, Way: asWay(`\b{[0-9]+|Number|a dozen|two dozen} ` + boardsSold + ` {is|are|'s|will|would|should|ought to|might|could|to|'ll|be|is going to|are going to|would be|will be|should be}*{ be|just|really|more than}* ?{enough|plenty|do|cover|suffice|see me through|get me there|make it}\b|\b{will|would|should|could|are|is} {[0-9]+|Number|a dozen} ` + boardsSold + ` {be }?{enough|plenty|do|cover|suffice}\b`), Not: ofOneBay, Ask: buyOrBuild},
	{Looks: railsBeyond, Way: asWay(`\b{need|needs|needed|figured|figure|reckon|reckoned|{yard|store|list|shop|clerk|counter|lumberyard|mill|cut list|shopping list} {says?|said|has|had|shows?|showed|lists?|wants?|puts?|figures?}}( {that|i|we|you|me|us|need|needs|to|buy|have|about|for|only|really|all of|just|it takes})* {[0-9]+|Number|a dozen} ` + boardsSold + `\b`), Not: ofOneBay, Ask: buyOrBuild},
	{Looks: setsRails, Way: asWay(`\b{get|pick|grab|fetch|bring|haul|load}( {me|us|him|up|out|in|home})+ {[0-9]+|Number|a dozen|half a dozen} ` + boardsSold + `\b`), Not: ofOneBay, Ask: buyOrBuild},
	// A board more.
	{Looks: hear.Stated(solver.Extra), Way: asWay(`\b{extra|more|spare|another} ` + byItsSize + ` {and|,|plus|, and} {[0-9]+|Number|an|a|another} {extra|more|spare|other }*` + byItsSize), Ask: howLongEach},
	{Looks: hear.Stated(solver.Extra), Way: asWay(`\bextra [0-9]+ x [0-9]+ x [1-5]{ Stop}*$`), Ask: howLongEach},
	{Looks: extraStub, Way: anyWordOf(`extra|extras|more|spare|another`), Not: anyWordOf(`inch|inches|in`), Ask: howLongEach},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{an|one|two|another} {extra|spare} ([0-9]+ x [0-9]+ )?{Number|[0-9]+} ?-? ?{foot|footers?|ft}{ Stop|please|too|just in case}*$`), Ask: hear.OpenQuestion("One more to buy, or on sale as well?", "one extra 2x6 at 12 ft")},
	{Looks: hear.Stated(solver.AddedPostSize, solver.PostSize), Way: asWay(`\b{extra|spare} [0-9]+ x [0-9]+ posts?{ Stop|please|too|just in case}*$`), Not: asWay(`\b{is|are|as|be|'s|with|from} (a |an |the |of )*extra`), Ask: spareOrAdded},
	// Both ends of a board.
	{Looks: hear.Stated(solver.Trim), Way: asWay(`\b{each|both|either|every|all}( of)?{ the|my|our}? {board|plank|stick|boards|planks}( 's)? ends?\b`), Not: asWay(`\bin all\b|\btogether\b`), Ask: hear.OpenQuestion("How much of a board in all, both ends together?", "trim an inch a board")},
}

// ofOneBay tells that boards are counted in a bay.
var ofOneBay = asWay(`\b{high|tall|bays?|sections?|stack|stacked|panels?|gaps?|apart|between|spaced|instead|rails|more|fewer|less|cover boards}\b`)

// extraStub reports whether boards to buy are as short as no board is: the figure may count the next ones.
func extraStub(a act.Act) bool {
	return hear.Stated(solver.Extra)(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Long != nil && s.Name.Long.Num.Less(exact.Int(6))
	})
}

// postsOrBays are acts that set, change or try how many posts there are, or change a bay by an inch: the "one" may be of the posts.
func postsOrBays(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.AddedPosts || s.Name.Quantity == solver.Bay && (s.Op == solver.Plus || s.Op == solver.Minus)
	})
}

// setsRails are acts that tell or try how many rails there are.
func setsRails(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Op == solver.Eq && s.Value.Of == nil
	})
}

// railsBeyond are acts of more rails than are mostly in a bay.
func railsBeyond(a act.Act) bool {
	return setsRails(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Rails && s.Value.Of == nil && !s.Value.Num.Less(exact.Int(10))
	})
}
