package guard

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// Lines with two halves of which the first is only the case in which the second holds; what is hoped, read and had by others; and questions after things
// that are no wall. What was heard of them is asked back. Plain English, no source.

const (
	overIt   = `{under|over|above|below|past|beyond|(more|less|fewer|greater|bigger|larger|smaller|wider|higher|taller|narrower|lower|longer|shorter) than|at least|at most|exceeds?|tops}`
	thenDo   = `{make|add|use|put|drop|take|set|go|give|cut|keep|get|throw|remove|lose|do|call|change|bring|raise|lower|switch|move|let|try|build|leave|pull|widen|narrow|reduce|i (want|need)|we (want|need)|i (will|would) (want|need|like|have|go|add|use|take)}`
	doorways = `{opening|doorway|walk - through|walkthrough|entrance|passage|gateway|entry}`
	// Things round a wall that have a height, a length and a depth of their own.
	aroundIt = `{deck|porch|patio|dog|cat|kid|truck|car|van|saw|step|steps|stairs?|stoop|hole|holes|post hole|post holes|footing|footings|ladder|house|shed|garage|barn|tree|table|bench|grill|mower|wheelbarrow|barrow|cart|trailer|hedge|roof|ceiling|driveway|yard|lawn|garden|pool|tape|drill|level|hammer|pencil|ramp|trench|ditch|bucket|sawhorse|sawhorses|workbench|couch|sofa|fridge|bed|desk|chair|window|chimney|road|street|lot|truck bed|pickup|boat|horse|goat|baby|child|toddler|inspector|wife|husband|boss|neighbor|helper|counter|countertop}`
)

// othersHeard are such lines, each with what is heard of it.
var othersHeard = []hear.OpenWay{
	// The one half is the case in which the other holds.
	{Looks: valued, Way: asWay(`^{Lead|, }*{if|should|in case|whenever|once|where} .*\b` + overIt + ` {[a-z]+ }{0,2}{Number|[0-9]|Figure|that|this|it}.*\b{then|just|please|you|to }*` + thenDo + ` `), Not: asWay(`^{Lead|, }*what if\b|\b{how|what|where|which|why|would|will|does|do|can|could|is} {the|it|that|i|we|many|much|wide|high|long|happens|about}\b`), Ask: onlyThen},
	{Looks: valued, Way: asWay(`^{Lead|please|, }*{add|make|use|put|drop|take|set|give|cut|get|throw|remove|lose|change} .*\b{if|should|in case|whenever} .*\b` + overIt + ` `), Not: asWay(`\b{what|how|would|see|tell|show|check} `), Ask: onlyThen},
	{Looks: setsBottomGap, Way: asWay(`\bif {the|that|our|my }?{floor|ground|slab|concrete|deck|patio|porch} {falls|drops|sinks|slopes|dips|goes down|is lower|runs down|is off|rises} `), Ask: askback.HowItFalls.Open("the floor drops 1 in to the right")},
	{Looks: dropsStock, Way: asWay(`\b{out of|no|do not (have|sell|carry|stock|keep)|does not (have|sell|carry|stock|keep)|will not have|sold out}\b.*\b{get|buy|take|order|grab|go with|pick up|bring|substitute|try|switch to|go for} `), Not: asWay(`\b{what|which|how}\b|\b{they|he|she|yard|did|do|will} {[a-z]+ }?{get|bring|take|try} `), Ask: boughtInstead},
	{Looks: dropsStock, Way: asWay(`\b{no|out of} [a-z]+s{ left| now| today}? ?{,|so|but|then} {just|then|so|it is|make it }?[a-z]+s{ then| instead| will do| it is| please| now}*{ \.| !}*$|^{Lead|, }*{get|buy|take|order|grab|use|go with} [a-z]+s ?,? .*\b{out of|no|not have|not sell} `), Not: asWay(`\b{or|nor|and}\b`), Ask: boughtInstead},
	{Looks: func(a act.Act) bool { return a.Kind == act.WhatIf }, Way: asWay(`^{Lead|, }*if .* {do|does|will|can|would} not {fit|work|hold|do|go|come out}( in)? ?,? {then|just }*` + thenDo + ` `), Ask: onlyThen},
	{Looks: triesStock, Way: asWay(`^{Lead|, }*if .* {have|has|sell|sells|stock|stocks|carry|carries|got} [a-z]+s ?,? {then|just }*{get|buy|take|order|grab|use|go with|pick up} `), Ask: boughtInstead},
	{Looks: triesOnce, Way: asWay(`^{Lead|, }*if .* {is|are|'s|comes out|comes to|comes out at} {Number|[0-9]}.* make {it|them|that} {Number|[0-9]}`), Ask: onlyThen},
	{Looks: railsLikeInches, Way: asWay(`^{Lead|, }*{do|does|did|will|would} .*\b{go|come|reach|stand|stop|get|run}( up| out)? {to|at} `), Ask: hear.OpenQuestion("How many rails, or where they end?", "is the wall 48 high")},
	{Looks: dropsStock, Way: asWay(`^{Lead|, }*{if|when|in case|should|once} .*\b{get|buy|use|take|order|grab|go with|pick up|bring|substitute|try|switch to|make do|go for} {the|some}? ?{[a-z]+s|[0-9]}`), Not: asWay(`\b{what|which|how|would|will} {if|do|should|i|we|would|much|many|does|it|that}\b`), Ask: boughtInstead},
	{Looks: takesTheWay, Way: asWay(`^{Lead|, }*{do|does|are|is|will|would|did} `), Ask: askback.Meant.Open("sixteens are 18.00")},

	// What others want, pay and have, and what is only hoped.
	{Looks: hear.Stated(solver.Price), Way: asWay(`\b{want|wants|wanted|need|needs|needed|order|orders|ordered|asked for|asks for|would like|likes|takes|took|got|gets|has|had|have|bought|buys|buy} {[a-z]+ }?{Number|dozen|couple of|couple} {[a-z0-9]+}\b`), Not: asWay(`\.[0-9][0-9]|\b{for|at|each|apiece|per|dollars?|bucks|cents|a piece|price|cost|costs|charge|charges|a board|a stick}\b|\$|£`), Ask: hear.OpenQuestion("Boards to buy, or a price?", "2x6 12 ft are 14.50")},
	{Looks: hear.Stated(solver.Price), Way: asWay(`\b{neighbors?|brother|cousin|uncle|friend|buddy|others|other people|everybody else|guy next door|folks next door} {[a-z]+ }?{pay|pays|paid|gets?|got|bought|spent|was paying|is paying} `), Ask: hear.AskedWhether("Is that what you pay, too?", "brackets are 3.49")},
	{Looks: hear.Stated(solver.Stock, solver.Have, solver.Price), Way: asWay(`\b{might|may|could|should|hope|hopes|hoping|hopefully|bet|guess|probably|possibly|likely|wish|with luck|with any luck} {[a-z']+ }{0,4}{have|has|had|sell|sells|stock|carry|carries|keep|get|got|be|cost|run|are|is|go}\b|\b{have|sell|stock|carry|be|cost}, (i hope|hopefully|i think)\b`), Not: asWay(`\b{should (be able|know)|i guess (i|we) will|you (may|should|could|might)|(may|should|could) (have to|be able)|may as well|might as well} |\b{what|how|which}\b`), Ask: wantedHere},
	{Looks: setsLength, Way: asWay(`\b{it|wall|gap|opening|span|doorway|height|gaps|bays?|posts?|stiffeners?|rails?|walk - through} {may|could} {well|just|even|also }?be {about|around|only }?{Number|[0-9]}`), Not: asWay(`\b{no|not|at most|up to|under|over|between|\?|anything|please}\b|\?|\b{how|what|if|grateful|would|that|so|can}\b|^{Lead|, }*could\b`), Ask: wantedHere},
	{Looks: valued, Way: asWay(opensClause + `{the|our|that|his|her|their|my} {deck|gate|ladder|pen|barn|dock|shed|fence|porch|patio|pool|trellis|corral|stair|stairs} {has|have|had|'s got|has got|got|uses?} {[a-z]+ }?{Number|[0-9]}`), Not: oursToo, Ask: thisWallToo},
	{Looks: hear.KindOf(act.Check), Way: asWay(opensClause + `{the|my|our }?neighbors?{ here|there}? {has|have|had|uses?|used|built|has got|have got|got} {[a-z]+ }?{Number|[0-9]+} `), Not: orWay(oursToo, `\b{says?|said|claims?|right|true|check|drew|drawing|sketch|quote|paper|plan}\b|\?|\bfine by me\b`), Ask: thisWallToo},
	{Looks: hear.KindOf(act.Check), Way: asWay(opensClause + `{his|her|their} {own|old|new }?{wall|fence|railing|deck|porch} {is|are|has|have|stands|was|measures|'s} `), Not: orWay(oursToo, `\b{says?|said|claims?|right|true|check|drawing|sketch|quote|paper|plan}\b|\?`), Ask: thisWallToo},
	{Looks: valued, Way: asWay(`\b{in|on} {a|the|that|this|my|our|some|one} {magazine|book|catalog|movie|show|video|picture|photo|ad|article|program}{ i (saw|read|have)}?{ ,}? {they|he|she|it|the wall|people|the guy} {had|have|has|used|use|uses|was|were|is|showed|put|did|made} `), Not: orWay(oursToo, `\b{right|true|check|work|fit|works|fits}\b|\?`), Ask: thisWallToo},
	{Looks: valued, Way: asWay(`\b{told|tells|made|asked|warned|wrote|showed|has told|had told} {the|my|our|his|her} {neighbors?|brother|cousin|uncle|friend|buddy|folks next door|guy next door|people next door|other (crew|guy|fellow|people)} `), Not: oursToo, Ask: thisWallToo},
	{Looks: hear.KindOf(act.SameAs), Way: asWay(`\b{neighbors?|next door|across the (street|road)|brother|cousin|friend|buddy|uncle|dad|mom|church|school|library|down the (street|road)|everybody|everyone|others}\b`), Ask: sameAsSaved},

	// What is tried of no wall, and what was.
	{Looks: aimsCheap, Way: asWay(`\b{low|lower|lowest|shortest|short}\b`), Not: asWay(`\b{costs?|prices?|priced|bills?|money|budget|totals?|spend|spending|expenses?|dollars?|bucks|pay|quote|sum|tab|figure|outlay|damage|bottom line|materials?}\b`), Ask: hear.OpenQuestion("How low is the wall to be, or how little shall it cost?", "wall at least 36 high")},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\bwhat {is|'s|would be|will be} the {lowest|highest|smallest|biggest|widest|narrowest|largest|shortest|longest|least|most|fewest|tightest|tallest} `), Ask: askback.WhatToKnow.Open("smallest gap")},
	{Looks: triesCheapest, Way: asWay(`^{Lead|, }*{would|will|does|do|is|could|might} {that|it|this|they|those|these} `), Ask: hear.OpenQuestion("Cheaper than what?", "what if five rails, what does it cost")},
	{Looks: setsNone, Way: asWay(`{do|does|will|would|should|could|did|is|are|can} not {i|we|you|they|it|there|the wall|this|that|he|she} {[a-z]+ }{0,2}{need|have|want|be|get|require|take|use|put|going}\b|^{Lead|, }*{do|does|will|would|should|could|did|is|are|can} not {the|my|our|these|both} [a-z]+ {need|have|want|get|require|take|use}\b`), Not: asWay(`\bwhy\b`), Ask: howManyOrNone},
	{Looks: valued, Way: asWay(opensClause + `.*\b{[a-z]+} {was|were} {just|really|perfectly|quite|all|so much|much|a lot|always }?{fine|good|ok|okay|better|nice|great|plenty|enough|right|nicer|perfect|alright|best|all right}{ Stop}*$`), Not: asWay(`\b{says?|said|if|what|would|wish|i thought|no}\b|\?`), Ask: wantedHere},
	{Looks: valued, Way: asWay(`\b{looks|look|looked|seems|feels} {just|really|pretty|so|kind of|very|a lot|much }?{good|nice|great|best|better|nicer|lovely|pretty|fine}{ here}?{ Stop}*$`), Not: asWay(`\b{says?|said|if|what|would|does|do}\b|\?|^{[a-z]+ , }?{please |just |so |let us |let me |ok |then }*{make|set|put|keep|give|use|go|have|leave|open|raise|lower|hang|want} [^,;]*[,;-] {it|that|they|this|because|as|since}\b`), Ask: wantedHere},

	{Looks: countsFar, Way: asWay(`\b{rails|boards|slats|planks}\b.*\b{longer|shorter|wider|higher|taller|narrower|thicker|thinner} than\b`), Ask: hear.OpenQuestion("How long the rails are, or the bays?", "bay at least 60")},

	// What is asked of other things.
	{Looks: asksAny, Way: asWay(`\bhow {high|tall|long|wide|deep|big|thick|far|old|heavy|short|low|large} {is|are|was|were|'s} {the|my|our|a|that|this|your|his|her|their|those|these} {[a-z]+ }?` + aroundIt + `{ itself|now|here|there|then|anyway|again|off the ground|above the ground}*{ \?|\.|!}*$`), Not: asWay(`\b{opening|wall|walk - through|floor at|rails?|gaps?|bays?}\b`), Ask: askback.OnlyTheWall.Open("how high is the wall")},
	{Looks: asksAny, Way: asWay(`\bhow {high|tall|long|wide|deep|big|old|short} {am i|are we|was i|were we|is he|is she}{ \?|!|now|anyway|again}*$`), Ask: askback.OnlyTheWall.Open("how high is the wall")},
	{Looks: asksAny, Way: asWay(`\bhow {high|tall|deep|thick|low} {is|are|will|was} {the|my|our|that|this} ` + doorways + `{s|es}?{ be}?{ \?|\.|!}*$`), Ask: hear.OpenQuestion("How wide the opening, or how high the wall?", "how wide is the opening", "ask opening", "ask wall height")},
	{Looks: asksAny, Way: asWay(`\bhow {high|tall|deep|thick|low} {is|are|will|was} {the|my|our|that|this|each|every|a} {gaps?|spaces?}{ be}?{ \?|\.|!}*$`), Ask: hear.OpenQuestion("The gap between the rails, or the one at the floor?", "what is the gap", "ask gap", "ask bottom gap")},
	{Looks: hear.KindOf(act.Why, act.Teach, act.Check), Way: asWay(`\bhow {do|can|could|would|should|might|will} {i|we|one} {[a-z]+ }?{get|reach|hit|make|have|keep|end up|come|arrive|go|land|fit|squeeze}{ up|down|it|out|in|with|at|to}* {a|an|the }?{Number|[0-9]+|half|even|equal}\b`), Not: asWay(`\b{did|figure|calculate|work out|compute|find}\b`), Ask: askback.Meant.Open("what if gap 3")},
	{Looks: asksAny, Way: asWay(`\bhow many {rails?|boards?|slats?|planks?|posts?|stiffeners?|bays?|gaps?|brackets?}{ are|is|go|do i need|do we need|will be|stand|sit|are there|there are}? {on|to|at|left|right} {the|of }?{left|right|north|south|east|west|other|far|near|one|front|back}{ side|end|hand side|half|of the (opening|doorway|walk - through)}?{ \?|\.|!}*$`), Ask: askback.WhatToKnow.Open("how many rails")},
	{Looks: asksAny, Way: asWay(`\bwhat {does|do|did|will} {the|his|her|their|my|our|that|this} {[a-z]+ }?{drawing|plan|plans|sketch|paper|sheet|blueprint|blueprints|print|drawings|picture|note|notes} {say|show|have|read|call for|tell|give|want}\b`), Ask: hear.OpenQuestion("I have not seen that. Which figures are on it?", "the drawing has six rails")},
	{Looks: asksAny, Way: asWay(`\b{what|how (many|much|high|wide|long|tall)} {[a-z]+ }?{was|were|did|had} .*\b{before|earlier|previously|originally|at first|last time|yesterday|back then|used to be|use to be|to begin with|in the beginning|a minute ago|until now}\b`), Not: asWay(`\bbefore {i|we|you|the|it|he|she|they}\b`), Ask: hear.OpenQuestion("That was so before. What is so now, or take the last change back?", "what is the gap", "undo")},
}

// onlyThen asks whether something is wanted in one case alone.
func onlyThen(act.Act, []act.Act) solver.Question { return parse.OnlyThen }

// sameAsSaved asks whether what it is to be like was saved.
func sameAsSaved(_ act.Act, all []act.Act) solver.Question {
	return solver.Question{Text: "Is that a wall that you saved?", Choices: []string{strings.ReplaceAll(parse.Normal(all), " 's", "'s")}, Example: "wall 48 high, gap 2-1/2"}
}

// howManyOrNone asks whether "don't I need stiffeners" asks how many there are.
func howManyOrNone(a act.Act, _ []act.Act) solver.Question {
	name := a.Statements[0].Name.String()
	return solver.Question{Text: "How many there are, or that there shall be none?", Choices: []string{"ask " + name, name + " = 0"}, Example: "how many stiffeners"}
}

// boughtInstead asks what a line says of boards that are not on sale and of others.
var boughtInstead = hear.OpenQuestion("Which of them are on sale?", "they sell 10 and 16 footers")

// setsBottomGap reports whether the gap at the floor is set or tried.
func setsBottomGap(a act.Act) bool {
	return valued(a) && a.Statements[0].Name.Quantity == solver.BottomGap
}

// setsLength reports whether a quantity of the wall is set to a value.
func setsLength(a act.Act) bool { return statesOfWall(a) && a.Statements[0].Op == solver.Eq }

// triesStock reports whether lengths on sale are tried.
func triesStock(a act.Act) bool {
	return a.Kind == act.WhatIf && len(a.Statements) > 0 && a.Statements[0].Name.Quantity == solver.Stock
}

// triesOnce reports whether one thing alone is tried.
func triesOnce(a act.Act) bool { return a.Kind == act.WhatIf && len(a.Statements) == 1 }

// railsLikeInches reports whether more rails are held against the wall than it commonly has: as a height it is likelier.
func railsLikeInches(a act.Act) bool {
	return valued(a) && a.Statements[0].Name.Quantity == solver.Rails && a.Statements[0].Value.Of == nil && exact.Int(10).Less(a.Statements[0].Value.Num)
}

// dropsStock reports whether lengths are taken off what is sold.
func dropsStock(a act.Act) bool {
	if !valued(a) {
		return false
	}
	for _, st := range a.Statements {
		if st.Name.Quantity == solver.Stock && st.Op == solver.Minus {
			return true
		}
	}
	return false
}

// takesTheWay reports whether a way out is taken that has a higher number than any answer offers: "do sixteens go for 18".
func takesTheWay(a act.Act) bool { return a.Kind == act.Take && a.N > 9 }

// aimsCheap reports whether the least cost is aimed for, or that aim forgotten.
func aimsCheap(a act.Act) bool {
	return strings.HasSuffix(a.String(), "cheapest") && (a.Kind == act.State || a.Kind == act.Forget || a.Kind == act.WhatIf)
}

func triesCheapest(a act.Act) bool { return a.Kind == act.WhatIf && aimsCheap(a) }
