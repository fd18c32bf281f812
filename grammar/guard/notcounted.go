package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// A figure or a part may be named where nothing of the wall is counted or decided: somebody has yet to choose, parts are taken one at a
// time, the work of others is to be paid, and what is added is another thing that only ends in "board". Common ways of speech, no source.

// materialOrWork asks what is meant where the work of others is spoken of beside a cost.
var materialOrWork = hear.OpenQuestion("What the material costs, or the work?", "what does the lumber cost", "ask cost")

// countsOther are the lines that count something else, or decide nothing.
var countsOther = []hear.OpenWay{
	// Somebody has yet to choose, or talks of something else than a wall.
	{Looks: valuedButStock, Way: asWay(`\b{Deciding} between\b`), Not: asWay(`\b{what|how|which|why|where|if} |\?`), Ask: hear.OpenQuestion("Which of them shall it be?", "six rails")},
	{Looks: setsCount, Way: asWay(`\b{Number|a|each|every|just one|only one} {more|single }?{rails?|boards?|slats?|planks?|posts?|bays?|stiffeners?|brackets?|courses?|pieces?} {at (a|one|any one|the same) (time|go)|per (trip|day|hour|load|person|man|pass)|by (one|two)|after (the other|another)|a (day|trip|time|go|minute|load)}\b`), Ask: wantedHere},
	{Looks: valued, Way: asWay(`\b{store|shop|yard|market|library|restaurant|pool|museum|show|school}( ?'s)? {grand|summer|season }?opening\b|\bopening {day|night|hours|time|ceremony}\b`), Ask: wantedHere},
	{Looks: valued, Way: asWay(`\b{rails?|boards?|two by [a-z]+|2 ?x ?[0-9]+|one by [a-z]+|four by four|plank|block|post} to {stand|sit|lean|kneel|step|climb|rest|set|put|lay} {on|my|the|a}\b`), Ask: wantedHere},
	{Looks: asksAny, Way: asWay(`\bhow {tall|high|long|wide|old|big|heavy|short} {are|is} {you|he|she|your|my (boy|girl|kid|son|daughter|wife|husband|dog)}\b`), Ask: hear.OpenQuestion("Of the wall, or of somebody?", "how high is the wall")},
	{Looks: setsNone, Way: asWay(`\bnot {the|my|our|that} [a-z]+{ [a-z]+}? {that is|that 's|which is|that was|that has} `), Ask: wantedHere},
	{Looks: valued, Way: asWay(`\b{scratch|strike|forget|cancel|delete|hold} {that|it}{ one}? ,? ?{i|we} {will|am going to|are going to|shall|can|need to|have to|want to} {tell|let|get|come|think|check|ask|measure|see|say|decide|find|call|look}\b[^0-9]*$`), Ask: wantedHere},
	{Looks: setsCount, Way: asWay(`\b{one|two|three|[1-3]} {one|two|1|2} ?{by|x} ?{four|six|eight|two|three|[2-8]}s? {in each bay|per bay|each }?{for|as} {a|the }?{stiffeners?|uprights?}\b`), Ask: hear.OpenQuestion("Stiffeners, and how many?", "one stiffener of 1x4")},
	{Looks: onOtherWall, Way: asWay(`\b{as|like} {on|at|in|with|over at} {the|my|our|his|her|that} {[a-z]+ }{0,2}{wall|fence|side}\b`), Ask: thisWallToo},
	{Looks: measuresOpening, Way: asWay(`\b{gate|mower|barrow|wheelbarrow|cart|grill|stroller|pram|chair|wheelchair|sofa|couch|fridge|door} {we [a-z]+ }?{is|measures|measured|reads}\b`), Ask: thisWallToo},
	{Looks: changesOrForgets, Way: asWay(`, {but|so|and|just }?{leave it|let it be|leave that|live with it|we can live with (it|that)|it is (fine|ok|okay)|no matter|so what|never mind}{ like that|as is|be|alone|so|then}?{ Stop}*$`), Ask: hear.OpenQuestion("Change it, or leave it?", "gap 2-1/2")},
	{Looks: multiplies, Way: asWay(`\b{half|third|quarter} too [a-z]+\b|\btoo [a-z]+ by {a|one }?{half|third|quarter}\b`), Ask: hear.OpenQuestion("Half an inch, or half of it?", "gap 1/2 in less")},
	{Looks: func(a act.Act) bool { return valued(a) && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count }, Way: asWay(`\b{someone|somebody|anyone|anybody|people|folks} {could|can|may|might} {go|come|get|run|drop}\b|^{and|so|but|well }*{Others} {took|pulled|threw|knocked|tore|cut} {out|off|down|up|away} `), Ask: wantedHere},
	{Looks: setsOneLength, Way: asWay(`{ and a half| and half a|[0-9] ?-? ?1 ?/ ?[248]|[0-9]\.[0-9]+|½} {rails|boards|slats|planks|stiffeners|posts|bays|courses|rows} {in|per|to|for|on|between|high|each|every|a|across}\b`), Not: asWay(`\bapart\b|\b{gaps?|spac(e|es|ing)|room} `), Ask: hear.OpenQuestion("How many, in whole numbers?", "six rails")},
	// The work of others.
	{Looks: hear.AsksTopic("cost"), Way: asWay(`\b{have|having|get|getting|hire|hiring|pay|paying|bring in|call in|employ|engage} {somebody|someone|anybody|anyone|some ?(guy|body|one)|people|you|him|her|them|a Worker|the Workers|(my|our) [a-z]+|pros|professionals|carpenters|contractors|builders|labor|help}{ [a-z]+}{0,2} ?({to|come|do|for} |{build|put|install|make|cut|haul|deliver|set|hang|paint|finish|assemble|erect})`), Not: asWay(`\b{tell|show|figure|add up|work out|email|send} `), Ask: materialOrWork},
	{Looks: hear.AsksTopic("cost"), Way: asWay(`\b{labor|installation|delivery|workmanship|a (carpenter|contractor|handyman|builder|pro)'?s?} {costs?|run|charge|rates?|included|fees?}\b|\b{costs?|price|charge|much} {of|for|of the|for the|is|is the} {labor|delivery|installation|installing}\b`), Ask: materialOrWork},
	{Looks: valued, Way: asWay(`\b{boogie|body|diving|surf|cutting|ironing|chess|dart|skirting|paddle|skate|wake|snow|bulletin|notice|score|ceiling|circuit|chopping|drawing|bread|cheese|white|black|key|school|floor|emery|mother|running|sounding|switch} boards?\b`), Not: asWay(`\b{for|are|is|of|rails?} {the }?{floor|ceiling|skirting|white|black|running} boards?\b|\bcutting boards? {to|at}\b`), Ask: wantedHere},
}

// OtherThingAdded asks back where somebody round the wall is counted, and where a part is added that an unknown word before it makes another thing: "tack on a boogie board", "add a
// curtain rail".
func OtherThingAdded(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil {
		return r
	}
	for i := 1; i < len(atoms); i++ {
		if i > 1 && LivesThere[atoms[i-2].Text] && (atoms[i-1].Text == "is" || atoms[i-1].Text == "are" || atoms[i-1].Text == "turns" || atoms[i-1].Text == "turned") && slices.ContainsFunc(r.Acts, func(a act.Act) bool { return valued(a) && a.At == atoms[i].At }) {
			at := atoms[i].At
			return act.Reading{Ask: &solver.Question{At: &at, Text: "Is that a figure of the wall?", Example: "gap 2-1/2"}}
		}
		if LivesThere[atoms[i].Text] && !(i+1 < len(atoms) && idiom.SaysBefore[atoms[i+1].Text]) && (chunk.SpelledNumber(atoms[i-1].Text) || atoms[i-1].Kind == scan.Digits) && slices.ContainsFunc(r.Acts, func(a act.Act) bool { return valued(a) && a.At == atoms[i-1].At }) {
			at := atoms[i-1].At
			return act.Reading{Ask: &solver.Question{At: &at, Text: "Is that a figure of the wall?", Example: "gap 2-1/2"}}
		}
	}
	if !slices.ContainsFunc(r.Acts, plusCount) {
		return r
	}
	for i := 2; i < len(atoms); i++ {
		w := atoms[i-1]
		if w.Kind != scan.Word || !chunk.IsClass(atoms[i].Text, "RAIL") && !chunk.IsClass(atoms[i].Text, "POST") {
			continue
		}
		switch atoms[i-2].Text {
		case "a", "an", "one", "another", "some", "my", "our", "the":
		default:
			continue
		}
		if !bedsAndKicks[w.Text] && (lexicon.Vocab().Known[w.Text] || lexicon.Vocab().Neutral[w.Text] || scan.Ones[w.Text] > 0 || len(w.Text) < 3) {
			continue
		}
		q := askback.UnknownWord.Ask(parse.Quoted(w.Text))
		q.Example = "one more rail"
		return askback.BackAt(w.At, q)
	}
	return r
}

// bedsAndKicks are words that mean something of the wall elsewhere, and before a part another thing.
var bedsAndKicks = scan.WordSet("bed kick floor hand guard grab safety stair towel curtain fence gate lamp sign flag")

// LivesThere are those who live round a wall: so many of them are no figure of it.
var LivesThere = scan.WordSet("dog dogs cat cats kid kids child children toddler toddlers baby babies puppy puppies rabbit rabbits hen hens chicken chickens grandkids grandchildren boy boys girl girls son sons daughter daughters goat goats horse horses people men women guys friends helpers neighbors visitors guests brothers sisters")

// valuedButStock: "we can pick between ten and sixteen foot boards" tells what is sold.
func valuedButStock(a act.Act) bool {
	return valued(a) && a.Statements[0].Name.Quantity != solver.Stock
}

// onOtherWall reports whether an act sets something of a wall that is named.
func onOtherWall(a act.Act) bool {
	return a.Kind == act.State && a.Statements[0].Name.Wall != ""
}

func measuresOpening(a act.Act) bool {
	return a.Kind == act.State && a.Statements[0].Name.Quantity == solver.Measured && a.Statements[0].Name.At == "opening"
}

// changesOrForgets reports whether an act changes what stands by an amount, or forgets it.
func changesOrForgets(a act.Act) bool {
	return a.Kind == act.Forget || a.Kind == act.State && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)
}

func multiplies(a act.Act) bool { return a.Kind == act.State && a.Statements[0].Op == solver.Times }
