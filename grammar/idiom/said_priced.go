package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// pricedTurns are ways to speak of what things cost, of what one has already, of other pieces, of units, and of what is asked for at a saw.
var pricedTurns = []phrase.Placed{
	// Prices.
	{"they|SELLER|PERSON ?are want|wants|charge|charges|ask|asks|asking|get|gets|charging ## and ?a quarter for|per|on ?a|an|one|each|every|the !(PRICEDONE)", "a $2 costs $1 dollars and twenty five cents", yardClauseEnds},
	{"they|SELLER|PERSON ?are want|wants|charge|charges|ask|asks|asking|get|gets|charging ## and a half for|per|on ?a|an|one|each|every|the !(PRICEDONE)", "a $2 costs $1 dollars and fifty cents", yardClauseEnds},
	{"they|SELLER|PERSON ?are want|wants|charge|charges|ask|asks|asking|get|gets|charging ## and three quarters for|per|on ?a|an|one|each|every|the !(PRICEDONE)", "a $2 costs $1 dollars and seventy five cents", yardClauseEnds},
	{"?metal|steel|iron|galvanized|galvanised|little|adjustable foot|feet|shoe|shoes|boot|boots|saddle|saddles ?that ?goes|go for|under|of|beneath ?the|each|a|every|my post|posts", "post base", moneyAheadHere},
	{"^ thing|things|bit|bits|part|parts|piece|pieces|gizmo|doodad|jobs .. , ?the|a !(post (base|bases|cap|caps))|bracket|brackets|anchor|anchors|hanger|hangers , ?that|it|they|those|which is|are|'s|costs|cost|runs|run", "$1 cost", moneyAheadHere},
	{"anchors|anchor ?bolt|bolts for|in|into|on ?the|my|our slab|concrete|floor|deck|patio|ground", "anchors", moneyAheadHere},
	{"slab|concrete|floor|deck|patio anchors|anchor ?bolts", "anchors", moneyAheadHere},
	{"?has|have went|gone|goes|jumped|moved|risen|climbed ?up|down from ##|£ to £", "cost $2", yardBoth(yardItemsBehind, yardClauseEnds)},
	// What one has already.
	{"^ ?there|it|so|and ?is|do|you ?do ?no|not|need ?not ?necessary|need|point ?for|in ?me ?to ?make|having ?me|us ?to buy|buying|get|getting|order|ordering|purchase ?me|us ?a|an|one|another|any|more ?of ?the POST|LUMBER|RAIL|STIFF|@ , ?because|since|as i|we ?already ?still have|own|got ?already|got|still", "i have", noNeedHere},
	{"have|got|own ## @ ?s ?boards|LUMBER|of ?at|that|which ?are # ?long|each ?each ?, and ## ?more|others ?of|at ?them ?that|which ?are|is ?at # ?long|each", "have $1 $3 $2 and $4 $5 $2", nil},
	{"have|got|own ## ## foot|feet|ft @ ?s ?boards|LUMBER ?, and ## ?more|others ?of|at ?them ?that|which ?are|is ?at ## foot|feet|ft ?long|ones|each", "have $1 $2 foot $3 and $4 $5 foot $3", nil},
	{"i|we have|own|got a|an ## foot|feet|ft @ ?LUMBER|post", "i have one $1 foot $2", yardBoth(yardClauseOpens, yardClauseEnds)},
	// Pieces beside the wall.
	{"include|add|cut|buy|need|want ## additional|more|extra|further|other @ ?s ?boards|pieces|LUMBER , each|all # ?long|each|apiece ?, ?for a|an|the|my|our !(MADE)", "add $1 more $2 $3 long for a $4", nil},
	{"include|add|cut|buy|need|want ## additional|more|extra|further|other @ ?s ?boards|pieces|LUMBER , each|all # ?long|each|apiece", "add $1 more $2 $3 long", yardClauseEnds},
	{"for a|an|the|my|our ?new|old gate|mailbox|fence|lamp|clothesline|sign|birdhouse|feeder|swing post|posts|pole|frame", "", yardBoth(piecesMore, yardClauseEnds)},
	{"^ ?i|we ?also need|want|add another|(one more) @ at # $", "one more $1 at $2", nil},
	// What is measured.
	{"^ ?because|since ?the|my|our|these|both post|posts|wall|walls|ends is|are not ?quite|really|exactly|perfectly plumb|straight|true|parallel|vertical|upright|square|even ,|;|so|- ?and|so", "", baysMeasured},
	// Units.
	{"^ ?please|just|use ?all ?use !mm|millimeters|millimetres|centimeters|cm|inches|(feet and inches) for|on|with|throughout ?the everything|(all of it)|(all my numbers)|(the lot)|(whole thing)|all|(all the numbers)", "work in $1", yardClauseEnds},
	{"^ !drawings|plans|sheets|blueprints|sketches over|round|around|out|(in these)|here ?here|there|parts ?all are|come ?all in", "the $1 are in", nil},
	// Goals.
	{"^ ?please|and|just use|finish ?up ?all ?the|my|our lumber|wood|boards|timber|stock|everything ?up with ?the least|minimum|littlest|lowest|smallest ?possible|amount ?of waste|scrap|offcuts", "least waste", yardClauseEnds},
	{"minimise|minimize ?the ?amount ?of waste|scrap ?of timber|wood|lumber|boards|material", "minimize the waste", yardClauseEnds},
	{", ?because|since|as|so i|we ?am|are|can|will|just|have ?just|be|only use|using|have|got|set|setting|clamp|clamping|running|cut|cutting|need ?up|to|it|them|against ?a|an|the|my|one ?single|simple stop ?block|stops ?((on|at|for) [the|my] (saw|bench|fence|miter saw|chop saw))", "", yardBoth(alikeTold, yardClauseEnds)},
	{"^ ?please|just set|clamp|put|fix|screw ?up|on|down a|an|one|the|my ?single stop ?block ?((on|at|to) [the|my] (saw|bench|fence)) ?, and|then|so ?then ?i|we ?can", "", cutAhead},
	{"^ ?i|we|have ?want|need|make|cut each|every|all ?the|of|my ?the ?single RAIL|board|boards ?to|be ?the|exactly same|equal length ?as ?every|all|each|the|one other|others|rest|next|another ?one|RAIL|boards", "all rails the same length", yardClauseEnds},
	{"the|this|that whole|entire|full lot|bunch|stack|pile|batch|set|bundle of ?the|my|these RAIL|boards", "all the rails", phrase.SaidBeforeOf(scan.WordSet("cut make saw chop trim"))},
	{"^ are # ?, ?and # the|my right|correct marks", "are the marks $1 and $2", asksHere},
	{"^ are # , # ?, ?and # the|my right|correct marks", "are the marks $1 , $2 and $3", asksHere},
	{"^ are # , # , # ?, ?and # the|my right|correct marks", "are the marks $1 , $2 , $3 and $4", asksHere},
	// What is quoted, held against the list.
	{"^ is|are ## !(## (foot|feet|ft|footers|footer)) ?of @ ?s ?boards|LUMBER ?the|about ?really right|correct|proper|enough|sufficient|necessary ?number|amount|count|quantity|many ?(to (buy|get|order)) ?for ?this|it|the|me ?wall|job", "is it true that i need $1 $2 $4", asksHere},
	{"^ is|are ## @ ?s ?boards|LUMBER ?at|of !(## (foot|feet|ft|')) ?long|lengths ?the|about ?really right|correct|proper|enough|sufficient|necessary ?number|amount|count|quantity|many ?(to (buy|get|order)) ?for ?this|it|the|me ?wall|job", "is it true that i need $1 $3 $2", asksHere},
	{"^ is|are ## !(## (foot|feet|ft)) @ ?s ?boards|LUMBER ?the|about ?really right|correct|proper|enough|sufficient|necessary ?number|amount|count|quantity|many ?(to (buy|get|order)) ?for ?this|it|the|me ?wall|job", "is it true that i need $1 $2 $4", asksHere},
	// What is asked for at a saw.
	{"^ ?so|now|ok ?i|we ?am|are at|by|beside ?the|my saw|bench ?now|already , ?so|and ?now what is|are my|our|the ?next|first number|figure|measurement|cut|length|numbers|lengths|setting", "what do i cut", yardClauseEnds},
	{"where do|should|must|shall|would i|we chop|cut|saw|slice ?off|all ?of ?all these|those|the|my|them|all boards|RAIL|pieces ?to|off ?length", "what lengths do i cut", yardClauseEnds},
}

// moneyAheadHere: money, or a verb of price and a figure, follows at once.
func moneyAheadHere(_, after []scan.Atom) bool {
	for len(after) > 0 && priceVerb[after[0].Text] {
		after = after[1:]
	}
	end := yardFigureEnd(after, 0)
	return end > 0 && (figureIsMoney(after[:end]) || CentsWritten(after[0].Text) && chunk.EndsPart(after, end) || end < len(after) && (after[end].Text == "each" || after[end].Text == "apiece"))
}

var priceVerb = scan.WordSet("cost costs is are run runs go goes for at now ring rings up come comes to priced")

// noNeedHere: what was taken for a denial of buying is one.
func noNeedHere(_, after []scan.Atom) bool {
	return yardSizeIn(after) && LengthsIn(yardClauseAhead(after)) || yardSizeIn(after) && slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "foot" || a.Text == "feet" || a.Text == "ft" })
}

// piecesMore: more pieces of lumber were told.
func piecesMore(before, _ []scan.Atom) bool {
	return yardSizeIn(before) && slices.ContainsFunc(before, func(a scan.Atom) bool { return piecesBesideWords[a.Text] })
}

// baysMeasured: what a bay measures at its bottom or its top follows.
func baysMeasured(_, after []scan.Atom) bool {
	bay := slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "bay" })
	return bay && slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "bottom" || a.Text == "top" })
}

// alikeTold: pieces of one length were asked for.
func alikeTold(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "same" || a.Text == "one" || a.Text == "alike" || a.Text == "equal" || a.Text == "single"
	}) && slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "length" || a.Text == "cut" || a.Text == "alike" })
}

// cutAhead: all are cut alike.
func cutAhead(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "cut" || a.Text == "saw" || a.Text == "chop" }) &&
		slices.ContainsFunc(after, func(a scan.Atom) bool {
			return a.Text == "same" || a.Text == "alike" || a.Text == "one" || a.Text == "equal"
		})
}

// asksHere: nothing more is asked.
func asksHere(_, after []scan.Atom) bool { return phrase.EndsLine(nil, after) }

// boughtSwaps are turns of buying that are set plain before anything else is.
var boughtSwaps = []phrase.Placed{
	{"xtra", "extra", nil},
	{"xtra bds|bd", "extra boards", nil},
	{"also include ## @", "also add $1 $2", nil},
	{"put|add|have|include|get|stick|throw|write|jot|note a|an|one ?single spare|extra board|length|stick|plank on|in|onto|to|down ?on ?the|my|our ?shopping|buying|materials|lumber|yard list ?, ?and ?then|also show|give|read|tell|print|get ?me|us the|that|whole list", "buy one spare board , show me the shopping list", yardBoth(biddenHere, phrase.EndsLine)},
	{"put|have|include|get|stick|throw|write|jot|note ## spare|extra boards|lengths|sticks|planks|spares on|in|onto|to|down ?on ?the|my|our ?shopping|buying|materials|lumber|yard list ?, ?and ?then|also show|give|read|tell|print|get ?me|us the|that|whole list", "buy $1 spare boards , show me the shopping list", yardBoth(biddenHere, phrase.EndsLine)},
	{"cutlist|(cut - list)", "cut list", nil},
	{"cutlists", "cut list", nil},
	{"extra|spare bds|bd", "extra boards", nil},
	{"rail|metal|steel brackets|bracket", "bracket", yardFigureAhead},
	{"standoff|(stand off)|(stand - off) ?post base|bases", "post base", moneyAheadHere},
	{"how many bucks|euros|quid|dollars", "how much money", nil},
	{"what is that|this|it do|mean", "what does that do", phrase.EndsLine},
	{"put|add|have|include|get|stick|throw|write|jot|note a|an|one ?single spare|extra board|length|stick|plank on|in|onto|to|down ?on ?the|my|our ?shopping|buying|materials|lumber|yard ?list|order|tab|bill|slip", "buy one spare board", biddenHere},
	{"put|have|include|get|stick|throw|write|jot|note ## spare|extra boards|lengths|sticks|planks|spares on|in|onto|to|down ?on ?the|my|our ?shopping|buying|materials|lumber|yard list|order|tab|bill|slip", "buy $1 spare boards", biddenHere},
	{"put|add|have|include|get|stick|throw|write ## boards|lengths|sticks|planks on|in|onto|to|down ?on ?the|my|our ?shopping|buying|materials|lumber|yard list|order|tab|bill|slip as ?a spares|spare|extras|extra|backup|backups|insurance", "buy $1 spare boards", biddenHere},
	{"says|said ?ME to buy|get|order ## spare|extra boards|lengths|sticks|planks", "says buy $1 spare boards", nil},
	{"says|said ?ME to buy|get|order|put|add a|an|one ?single spare|extra board|length|stick|plank ?((on|in|to) [the|my] (list|order|bill))", "says buy one spare board", nil},
	{"says|said ?ME to put|add ## spare|extra boards|lengths|sticks|planks on|in|to ?the|my list|order|bill|tab", "says buy $1 spare boards", nil},
	{"bump|raise|pad|increase|up|boost ?up ?the ?amount ?of lumber|wood|timber|material|materials|order ?order ?up by ## %|percent|(per cent)", "$1 percent spare", yardClauseEnds},
	{"(on top of)|besides|beyond|(in addition to)|(over and above) that|this|those|it|them|all ?that|this ?, i|we ?will|would|do|shall want|need|like|have|require ?to|have ?have ## @", "i also need $1 $2", nil},
	{"^^ !(TABLED) please ,", "$1 please .", tellsAfter},
	{"!inches|feet|imperial and|& fractions ?((of an inch)|too)", "$1", nil},
}

// biddenHere: an order begins, and no talk of what somebody did.
func biddenHere(before, _ []scan.Atom) bool {
	if len(before) == 0 || yardClauseOpens(before, nil) {
		return true
	}
	switch chunk.LastOf(before, 1) {
	case "please", "just", "also", "kindly", "better", "so", "then", "should":
		return true
	case "you":
		return Beggars[chunk.LastOf(before, 2)]
	}
	return false
}

// tellsAfter: a value is told behind what was asked for, and not what it would be with: "cut list please, kerf an eighth".
func tellsAfter(_, after []scan.Atom) bool {
	return saidFigureAhead(after, nil) && !triesWith[after[0].Text]
}

var triesWith = scan.WordSet("with if for using at without assuming given suppose supposing but and so not no")
