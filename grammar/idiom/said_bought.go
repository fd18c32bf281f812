package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// boughtTurns are ways to speak of what is on sale and bought, of what a saw eats and what comes off a board, of spares and of prices.
var boughtTurns = []phrase.Placed{
	// What is left out, and taken for nothing.
	{"ignore|forget|disregard|skip|neglect|drop|(leave out) !(QUANT) ?out , ?and ?just call|make|take|count|treat ?it|that ?as|at", "$1", yardFigureAhead},
	{"ignore|forget|disregard|skip|neglect|drop|(leave out) !(QUANT) ?out , ?and ?just call|make|take|count|treat ?it|that ?as|at nothing|nil|none|naught", "$1 zero", nil},
	{"no spares|spare|((spare|extra) BOARDWORD) , ?none|zero|nil|naught ?at ?all", "zero spare boards", yardClauseEnds},
	// What a budget is for.
	{", ?and|with|for ?all ?the|my|our materials|material|lumber|wood|timber|hardware|screws|brackets|fasteners|fixings|everything|all ?and|& all|everything|included|inclusive|too ?else|included", "", yardBoth(budgetOnly, yardClauseEnds)},
	// Why so much is bought.
	{"what makes|made you|it|them|ME ?even say|think|claim|believe|figure|reckon|decide ?that i|we|you ?will|would|must|should|do ?need|have|ought ?to buy|get|order|purchase so|that|this|all many|much|that|this ?of ?the|these|those ?LUMBER", "why am i buying so many boards", yardClauseEnds},
	{"why do|did|would|should you say|think|claim|reckon|tell ?me ?that i|we|you ?will|would|must|should|do ?need|have|ought ?to buy|get|order|purchase so|that|this|all many|much|that|this ?of ?the|these|those ?LUMBER", "why am i buying so many boards", yardClauseEnds},
	{"walk|talk|take|run|lead me|us through why|(the reason why) ?it ?is ?that i|we|you ?am|are|will|would|must|should|do ?need|have|has|got|ought ?to buy|buying|get|getting|order|ordering|purchase|purchasing|need so|that|this|all many|much|that|this ?of ?the|these|those LUMBER|boards", "why am i buying so many boards", yardClauseEnds},
	{"why|(how come) do|must|should|would|am|are i|we need|have|buy|buying|get|getting|ordering|order ?to ?buy|get|order ## LUMBER|boards from|at ?the SELLER", "why am i buying so many boards", yardClauseEnds},
	{"i|we can|could|will only|just do|go|manage|swing|handle|stretch ?to ## dollars|bucks|euros|pounds ?((on|for) [the] (this|it|job|wall|LUMBER))", "the budget is $1 dollars", yardClauseEnds},
	{"^ ?there ?is no limit|cap|ceiling ?at ?all on|to what|(how much) i|we|it ?can|may|will spend|pay|cost|costs", "forget the budget", yardClauseEnds},
	// What is on sale.
	{", ?and that|those|these|this|it is|are|'s it|all|everything|(the lot) for|by|as ?way ?of ?the|my|our choices|choice|lengths|options|sizes|pickings|selection|stock", "", yardBoth(lengthsBehind, yardClauseEnds)},
	{"^ ?because|since|as ?my|our|the|his|her car|truck|van|trailer|pickup|ute|wagon|minivan|jeep|suv|elevator|stairwell|(roof rack) can|could|will|would|does not ?even ?really take|hold|carry|fit|haul|handle|manage|bear ?a anything|boards|lengths|lumber|more|much ?any longer|bigger|(longer than that) ,|;|so ?and ?so", "", lengthsAhead},
	{"they|SELLER ?can|could|will|do ?now also|even ?now get|order|bring|have|stock|sell|carry|offer|(special order) ?in ## foot|feet|ft boards|lengths|lumber|ones|sticks|planks|timber", "they also sell $1 footers", nil},
	{"?you can|could|may|might ?now ?please ?also include|add|use|allow|consider|figure ?in|on|for !(FOOTERS) ?in (as well)|too|also", "they also sell $1", nil},
	{"^ ?please ?also include !(FOOTERS) ?in (as well)|too|also", "they also sell $1", nil},
	{"^ ?please ?also include !(FOOTERS) ?in ?the|my|our ?as|among|with|to ?the ?stock lengths|choices|options|stock", "they also sell $1", nil},
	{"they|SELLER ?have|just|did ?just got|took|had ?in some|(a few)|(a bunch of)|(a load of)|(a stack of) !(FOOTERS) ?back in ?again ?this|today|yesterday ?morning|afternoon|week", "they also sell $1", nil},
	{"^ besides|(apart from)|(aside from)|(on top of)|(in addition to)|(over and above)|beyond what|all|everything|whatever ?that i|we ?have ?already|just told|said|gave|mentioned|listed|named ?to ?you ?already|before|earlier ?,", "", alsoSold},
	{"^ besides|(apart from)|(aside from)|(on top of)|(in addition to)|(over and above)|beyond what|all|everything|whatever ?that i|we ?have ?already|just told|said|gave|mentioned|listed|named ?to ?you ?already|before|earlier ?, they|SELLER !sell|sells|have|has|carry|carries|stock|stocks", "they also $1", lengthsAhead},
	{"?there ?is|are no|(not any)|(no more)|(not a single)|(not one)|none ?of ?the|those !(FOOTERS) left|remaining|(to be had)|(in stock)|(on the rack)|anymore|(any more) ?((at|in|on) [the] (SELLER|here|town|stock))", "they are out of $1", noneLeft},
	{", ?because|since|as they|those|these will|do|would|can|could not ?even|really fit|go|travel ?in|into|on|onto|through|up ?the|my|our ?car|truck|van|trailer|stairs|pickup|door|elevator", "", yardBoth(droppedBefore, yardAsideEnds)},
	{"drop|remove|delete|strike|scratch|cut|cross|lose|knock|take ?all ?the !(FOOTERS) ?out|off from|of|(out of) ?the|my|our ?available|stock ?list ?of lengths|choices|options|stock|list|selection", "they are out of $1", yardClauseEnds},
	{", ?because|since|as ?i|we|you|they ?just|simply can|could|will|would|do not ?even|really haul|carry|transport|fetch|lug|load|fit|lift|get|move|handle|manage|tow|bring|go those|them|it|any|home|in ?home ?in|into|on|onto|with ?the|my|our ?car|truck|van|trailer|stairs|pickup", "", yardBoth(droppedBefore, yardAsideEnds)},
	{", ?they|those|that ?is|are|'s ?just ?far too heavy|long|dear|pricey|big|warped|crooked|unwieldy ?((for|to) (me|us|my car|my truck|the van|carry|haul|lift|handle))", "", yardBoth(droppedBefore, yardAsideEnds)},
	{"^ @ ?s|LUMBER , ?in !SOLDFEET ?foot|feet|ft ?, and|or|& !SOLDFEET foot|feet|ft|footers ?lengths|boards only $", "they only sell $1 in $2 and $3 foot lengths", nil},
	{"^ @ ?s|LUMBER ?: ?only ?come|comes|sold|available|stocked ?only in !SOLDFEET ?foot|feet|ft|' ?, and|or|,|& !SOLDFEET ?foot|feet|ft|footers|' ?lengths|long $", "they sell $1 in $2 and $3 foot lengths", nil},
	{"^ @ ?s|LUMBER ?: ?only ?come|comes|sold|available|stocked ?only in !SOLDFEET ?' , !SOLDFEET ?' ?, and|or|,|& !SOLDFEET ?foot|feet|ft|footers|' ?lengths|long $", "they sell $1 in $2 , $3 and $4 foot lengths", nil},
	{"(no one)|nobody|(no SELLER)|(not one SELLER) ?(around here)|here|local|nearby|(in town) sells|has|carries|stocks|offers|keeps ?a|an|any ?of ?the @ ?s ?LUMBER in|as|at ?any anything|length|lengths but|except|(other than)|save|besides", "they only sell $1 in", lengthsAhead},
	{"they|SELLER|you|i|we ?just do|does|can|could|will not ?really|ever sell|have|carry|stock|get|find|buy|do|offer ?a|an|any ?of ?the @ ?s ?LUMBER in|as|at ?any anything|length|lengths but|except|(other than)|save|besides", "they only sell $1 in", lengthsAhead},
	{"come|comes !(## (foot|feet|ft)) ?, ?and|or|& !(## (foot|feet|ft)) long", "come in $1 and $3", lumberBefore},
	{"come|comes !(## (foot|feet|ft)) , !(## (foot|feet|ft)) ?, ?and|or !(## (foot|feet|ft)) long", "come in $1 , $3 and $5", lumberBefore},
	{"come|comes ?only !(## (foot|feet|ft)) long", "come in $1 lengths", lumberBefore},
	// The saw, and the ends of boards.
	{"blade|saw on|in|of this|my|that|the|our ?old|new|big|little thing|machine|one|contraption|beast|rig|unit|table|bench", "blade", eatsAhead},
	{"each|every|one|a ?single ?saw cut ?that|which i|we|you make|do|saw|take ?with ?it ?,", "each cut", eatsAhead},
	{"^ ?i|we|so ?always|usually|i|we ?will figure|count|plan|reckon|bank on losing|wasting|trimming|(cutting off)|(taking off) # ?off ?of a|per|each|every board|stick|length|plank|piece", "trim $1 per board", nil},
	{"^ ?so ?i|we|you ?always|usually|will ?always|usually lose|waste # ?off ?of a|per|each|every board|stick|length|plank", "trim $1 per board", yardClauseEnds},
	{"?i|we ?always|usually|generally|just cut|saw|nip|lop|chop|whack|slice|shave|snip|hack|take|trim # off ?of the|one|an|each ?ragged|rough|split end|ends of each|every|all|the|a ?single board|boards|stick|sticks|length|lengths|plank|planks", "trim $1 per board", nil},
	{"?i|we ?always|usually|generally nip|lop|chop|whack|slice|shave|snip|hack # off ?of each|every|all ?the board|boards|stick|sticks|length|lengths|plank|planks", "trim $1 per board", nil},
	{"before i|we|you ?ever|even measure|mark|cut|start|use|lay ?anything|it|them|out ?out", "", yardBoth(trimTold, yardClauseEnds)},
	{", ?because|since|as|for ?the factory|mill|store|yard|sawn|cut|lumberyard END|ends is|are ?never|not ?ever|quite|really|always true|square|straight|clean|even|good|flat|rough|ragged|split|checked", "", yardBoth(trimTold, yardClauseEnds)},
	{"^ ?because|since|as ?the factory|mill|store|yard|sawn|lumberyard END|ends is|are ?never|not ?ever|quite|really|always true|square|straight|clean|even|good|flat|rough|ragged|split|checked ,|;|so|and ?so ?i|we|you ?will|have|must ?to", "", boardLoses},
	{"^ ?the|all|my|our|these boards|sticks|lumber|ends|planks need|needs|want|wants|require|requires ?the|their ?end|ends|to cleaning|squaring|trimming|cleaned|squared|trimmed|trued|be ?cleaned|squared|trimmed|trued ?up|off ,|; ?and|so ?i|we|just ?will take|cut|trim|saw|lop # off each|(each one)|(every one)|(each end)|them|(each board)|(every board)", "trim $1 per board", nil},
	{"^ ?the|those|these ?my|our|bad END checks|cracks|splits|checking|rot mean|means ?that", "", boardLoses},
	{"# gets|is|has|must ?to ?be trimmed|cut|sawn|lopped|nipped|sliced off ?of ?the ?end ?ends ?of each|every board|stick|length|plank", "trim $1 per board", yardClauseEnds},
	{"^ ?please|we|i do not|never trim|square ?off|up ?any anything|ends|boards|them|(of them)|lumber ?at ?all", "no trim", yardClauseEnds},
	// Spares.
	{"^ ?please|and ?throw|add|put|toss|chuck|allow ?in|on ## %|percent|(per cent) for luck|insurance|safety|(good luck)|(good measure)|(my peace of mind)", "$1 percent spare", yardClauseEnds},
	{"a|an|one board|stick|length|plank to spare", "one spare board", yardClauseEnds},
	{"## boards|sticks|lengths|planks to spare", "$1 spare boards", yardClauseEnds},
	{"and|or|& screwups|(screw ups)|miscuts|goofs|(goof ups)|blunders|(bad cuts)|(bad boards)|(foul ups)|(mess ups)|(wrong cuts)|oopses|botches|(dumb mistakes)|(my mistakes)|(bad wood)", "and mistakes", phrase.SaidBeforeOf(scan.WordSet("percent %"))},
	{"?please include|add|build|figure|put|work|factor|plan|bring ?in ?a|an ## %|percent|(per cent) allowance|cushion|margin|buffer|overage|contingency|reserve ?in ?for|on", "allow $1 percent for", spareAhead},
	{"?please include|add|build|figure|put|work|factor|plan|bring ?in ?a|an ## %|percent|(per cent) allowance|cushion|margin|buffer|overage|contingency|reserve ?in ?(on (LUMBER))", "$1 percent spare", yardClauseEnds},
	{"?please include|factor|figure|build|work|plan ?in ## %|percent|(per cent) for", "allow $1 percent for", spareAhead},
	{"?please ?keep|have|hold|want|leave ?me|us ## %|percent|(per cent) in hand|reserve|(the bank) ?for|as ?spares|spare|mistakes|insurance|waste|luck", "$1 percent spare", yardClauseEnds},
	{"^ ?i ?we ?please ?will|should ?also grab|buy|get|order|fetch|(pick up)|snag|pull|want|need ?me|us ?in a|an|one ?single ?extra|spare|additional ?of board|length|stick|plank|one (on top of)|(over and above)|over|above|beyond what ?ever i|we|it|the|this|you ?wall|job|list ?actually|really need|needs|want|wants|is|have|take|takes|require|requires|(calls for) ?needed|required|to", "buy one spare board", yardClauseEnds},
	{"^ ?i ?we ?please ?will|should ?also grab|buy|get|order|fetch|(pick up)|snag|pull|want|need ?me|us ?in ## ?extra|spare|additional|more ?of boards|lengths|sticks|planks (on top of)|(over and above)|over|above|beyond what ?ever i|we|it|the|this|you ?wall|job|list ?actually|really need|needs|want|wants|is|have|take|takes|require|requires|(calls for) ?needed|required|to", "buy $1 spare boards", yardClauseEnds},
	{"^ ?please ?also grab|(pick up)|snag|fetch ?me|us a|an|one ?single extra|spare|additional board|length|stick|plank", "buy one spare board", yardClauseEnds},
	{"^ ?please ?also grab|(pick up)|snag|fetch ?me|us ## extra|spare|additional boards|lengths|sticks|planks", "buy $1 spare boards", yardClauseEnds},
	{"a|an|one|single spare length|stick|plank", "one spare board", yardClauseEnds},
	{"## spare lengths|sticks|planks", "$1 spare boards", yardClauseEnds},
	{"^ ?would|could|can|will ?you ?please|kindly include ## %|percent|(per cent) extra|more|over|spare", "buy $1 percent extra", yardClauseEnds},
	// The tape.
	{"keep|hold|stick|limit|leave|round ?it|things|everything|this|them|all|down ?down to ?whole ?nearest !(thirty - seconds)|thirtyseconds|sixteenths|eighths|quarters|halves", "round everything to $1", yardClauseEnds},
	{"^ ?my|because|since ?i|eyes ?eyes can|could|do|will not ?even|really see|read|make|tell ?out ?the (thirty - seconds)|(thirty seconds)|(32 nds)|(64 ths)|(sixty - fourths)|sixteenths|eighths ?very|too ?well|anymore|(any more)|now|easily ?now ,|;|so|- ?so|and", "", nil},
	{"?all ?the|my measurements|numbers|figures|dimensions|lengths|everything|sizes|cuts|marks ?all|rounded|taken|given to ?the|nearest|closest nearest|closest ?whole !half|quarter|eighth|sixteenth|(thirty - second)|millimeter|millimetre ?inch|(of an inch)", "round to the nearest $1", phrase.StartsClause},
	{"^ ?just|please|round|and ?it ?everything ?to to ?the nearest|closest ?whole !half|quarter|eighth|sixteenth|(thirty - second)|millimeter|millimetre ?inch|(of an inch)", "round to the nearest $1", nil},
	{"^ # is|are ?about ?the ?very finest|smallest|closest|least ?mark|thing|line|size ?that ?i|we ?can|could|ever|will|do ?ever|usually|even mark|read|see|measure|go|work|cut|use|scribe ?to|out|with|off", "tape $1", nil},
	{"blade|saw ?cut ?kerf is|'s|takes|cuts|eats # too|also|(as well)", "kerf is $1", yardClauseEnds},
}

// budgetOnly: money was told that is spent in all, and nothing that has a price of its own.
func budgetOnly(before, _ []scan.Atom) bool {
	sum := slices.ContainsFunc(before, func(a scan.Atom) bool { return sumWords[a.Text] }) || figureIsMoney(before)
	return sum && yardFigureBehind(before, nil) && !YardItemIn(before) && !slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "price" || a.Text == "each" })
}

// sumWords are words of what may be spent.
var sumWords = scan.WordSet("budget spend limit cap max maximum")

// alsoSold: lengths follow that somebody sells, and that they are others.
func alsoSold(_, after []scan.Atom) bool {
	return (lengthsAhead(nil, after) || footersBehind(after, nil)) && slices.ContainsFunc(yardClauseAhead(after), func(a scan.Atom) bool {
		return a.Text == "also" || a.Text == "too" || a.Text == "as"
	})
}

// noneLeft: a clause ends, and it does not ask: "are there no tens left?".
func noneLeft(before, after []scan.Atom) bool {
	asks := func(w string) bool { return w == "are" || w == "is" }
	return yardClauseEnds(nil, after) && !asks(chunk.LastOf(before, 1)) && !asks(chunk.LastOf(before, 2)) && (len(after) == 0 || after[0].Text != "?")
}

// droppedBefore: lengths on sale were struck out.
func droppedBefore(before, _ []scan.Atom) bool {
	return LengthsIn(before) && slices.ContainsFunc(before, func(a scan.Atom) bool { return dropsWord[a.Text] })
}

var dropsWord = scan.WordSet("drop strike scratch skip forget remove cross cut out no longer lose nix delete scrap ditch leave take off")

// lumberBefore: lumber stands right before, by its name or its size.
func lumberBefore(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return BoardWords[w] || soldByFeet[w] || yardSizeIn(before[max(0, len(before)-4):])
}

// eatsAhead: a verb follows of what a saw takes.
func eatsAhead(_, after []scan.Atom) bool {
	for len(after) > 0 && (after[0].Text == "only" || after[0].Text == "just" || after[0].Text == "about") {
		after = after[1:]
	}
	return len(after) > 0 && eatsWord[after[0].Text]
}

var eatsWord = scan.WordSet("eats takes chews loses costs wastes burns removes kills uses turns destroys devours")

// trimTold: what comes off each board was said.
func trimTold(before, _ []scan.Atom) bool {
	return saidFigureAhead(before, nil) && boardLoses(nil, before)
}

// boardLoses: something comes off each board.
func boardLoses(_, after []scan.Atom) bool {
	for i := 1; i < len(after); i++ {
		if (BoardWords[after[i].Text] || after[i].Text == "end") && perEach[after[i-1].Text] {
			return slices.ContainsFunc(after, func(a scan.Atom) bool { return losesWord[a.Text] })
		}
	}
	for i := 1; i < len(after); i++ {
		if after[i].Text == "each" && after[i-1].Text == "off" {
			return chunk.EndsPart(after, i+1)
		}
	}
	return false
}

var (
	perEach   = scan.WordSet("a per each every the")
	losesWord = scan.WordSet("lose loses off trim trims trimming squaring waste")
)

// spareAhead: what is bought over is for slips and bad wood.
func spareAhead(_, after []scan.Atom) bool {
	return slices.ContainsFunc(yardClauseAhead(after), func(a scan.Atom) bool { return slipWords[a.Text] })
}

var slipWords = scan.WordSet("mistakes mistake waste errors miscuts knots screwups screw goofs spoilage breakage blunders oopses warping splits defects scrap offcuts")
