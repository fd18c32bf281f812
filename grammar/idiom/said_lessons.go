package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// lessonPhrases are turns of joiners, teachers, inspectors and clerks that set plain what is fixed, reckoned, supposed, measured or pulled from the rack.
var lessonPhrases = []phrase.Placed{
	// Old joiners.
	{"shade|hair|whisker|touch|tad|bit|trifle|fraction ?of ?an ?inch under|over|above|below|(less than)|(more than)|(short of) # of GAP will|would not do|serve|suit|(be enough) ?, ?so ?and make|let|have ?us ?have ?it|that ?be # ?exactly|full|even", "gap is $2", nil},
	{"!first|second|third|fourth|fifth|sixth|seventh|eighth|top|bottom|lowest RAIL ?up is|was|has|'s|are ?already ?been ?now screwed|nailed|bolted|driven|pinned|spiked|pegged|hammered|fastened|fixed home|fast ?already|now", "$1 rail is fixed already", nil},
	{"!first|second|third|fourth|fifth|sixth|seventh|eighth RAIL up is|was|has|'s ?already ?been ?now screwed|nailed|bolted|driven|pinned|spiked|pegged|hammered|fastened|fixed ?in|on ?already|now", "$1 rail is fixed already", nil},
	{", ?and ?for ?as i|we will|am|are|would|want|shall|can ?not ?to ?be not|no|never ?be ?going ?to cutting|cut|sawing|saw|having|have|making|make|using|use ?any|no|a odd|different|uneven|mixed|separate|special|stray|oddball ones|lengths|sizes|pieces|bits|boards $", "", phrase.SaidBeforeOf(scan.WordSet("length lengths"))},
	{"## pounds|quid", "$1 dollars", spokenOfPrice},
	{"distance|space|room|clearance between ?the ?two ?end post|posts faces ?myself|ourselves", "distance between the end posts", nil},
	// Teachers.
	{"sum|sums|arithmetic|working|workings|calculation|calculations|math|maths|reckoning|figuring ?be ?all written|set|laid|spelled|spelt|worked|chalked out ?line ?by ?line ?in ?full", "whole sum", phrase.SaidBeforeOf(scan.WordSet("see show have want need like get"))},
	{", ?and|so ?then what|how would|will|does|do|might|could ?then happen|become|change ?of|to|with ?it|that|this|us|everything|layout|wall ?then $", "", supposedAhead},
	{"^ imagine|picture|suppose|say|pretend ?that class|PERSON !doubles|halves|doubled|halved", "what if we $1", nil},
	// Inspectors.
	{"!and|,|with|has|have|shows|show|lists|gives top ?edge|line at|of #", "$1 wall height $2", topOfNoRail},
	// Clerks.
	{"what|which ?of ?these ?the items|pieces|materials|things|parts|sticks|boards|lumber|stuff ?all do|should|must|shall|need|would i|we|they ?have|need ?to pull|pick|fetch|grab|load|gather|collect ?up ?out ?off|from ?our ?rack|racks|shelf|shelves|yard|stock ?for ?this|his|her|their|that|my ?order|job|ticket|customer|wall ?please $", "what do i need to buy", nil},
	// Parents.
	{"?left|leftover|remaining|saved|salvaged ?over from|off ?my|our|his|her ?old|kids|kid ?'s MADE|treehouse|trampoline|loft|bunkbed|bed $", "", boardsAtHand},
	{"!extra|new|added|more !post|posts ?set|standing|going in|between|inbetween ?between those|these|them ?two ?posts|ends $", "$1 $2", nil},
	{"!i|we ?just happen|happened to have", "$1 have", nil},
	{"!(post (cap|caps|base|bases))|bracket|brackets|anchors is|are|run|runs|cost|costs|at !(## and ?one (half|quarter))|(## and three quarters) each|apiece|(a piece)|(the piece)|(a pop)", "$1 are $2 dollars each", nil},
	// What was told first, and is told anew.
	{"^ ?i|we ?had said|told|asked ?you|for ?we ?want|need no ?added|new|extra !POST|OPENING|STIFF ?at ?all , but|however|yet|now ?let|i|we ?us ?will|would|want|do ?to ?like ?have|take|add|put|use|want|try|need !one|two|three|# ?after ?all", "$2 $1", nil},
	{", but|however ?now let us ?have|take|try|use|do|go ?with # ?instead ?after ?all $", ", no , $1", saidByOneself},
}

// saidByOneself: who speaks tells what was said by no one else.
func saidByOneself(before, _ []scan.Atom) bool {
	for i := 1; i < len(before); i++ {
		if before[i].Text == "said" || before[i].Text == "told" || before[i].Text == "asked" {
			w := before[i-1].Text
			return w == "i" || w == "we" || i > 1 && w == "had" && (before[i-2].Text == "i" || before[i-2].Text == "we")
		}
	}
	return false
}

// boardsAtHand: somebody has boards of a size.
func boardsAtHand(before, _ []scan.Atom) bool {
	has, sized := false, false
	for i := range before {
		has = has || before[i].Text == "have" || before[i].Text == "got" || before[i].Text == "has"
		sized = sized || measure.Reader{Atoms: before}.SizeAt(i)
	}
	return has && sized
}

// leastWasted are questions that bid for the way that wastes least.
var leastWasted = []phrase.Placed{
	{"^ ?please ?can|could|would|will ?you ?please find|pick|choose|give|work|figure|go|want|take|use ?out ?ME ?with way|method|approach|arrangement|layout ?of|to ?doing|cutting|building|making|do|cut|build|make|lay ?it|this|them|wall|job ?out ?up that|which wastes|throws|leaves|loses|scraps ?away least|(the least) ?amount ?of lumber|wood|timber|material|waste|scrap|stuff $", "please waste as little lumber as you can", nil},
	{"^ which|what way|method|approach|arrangement|layout ?of|to ?doing|cutting|building|making|do|cut|build|make|lay ?it|this|them|wall|job ?out ?up wastes|throws|leaves|loses|scraps ?away least|(the least) ?amount ?of lumber|wood|timber|material|waste|scrap|stuff $", "please waste as little lumber as you can", nil},
}

// lessonTurns are more of them: what somebody does not mind any more, how she would look, what is off, and what it is kept under.
var lessonTurns = []phrase.Placed{
	// Those who think again.
	{"never ?you mind ?about ?that|my|those #", "forget the $1", partComesNext},
	{"never ?you mind ?about the|my|our|his|her|their|your|that|this ?old ?little ?bit ?of mess|dog|dogs|cat|cats|puppy|kid|kids|child|children|baby|toddler|boys|girls|dust|sawdust|dirt|mud|noise|racket|smell|weather|rain|wind|cold|heat|sun|neighbors|neighbor|handwriting|writing|scrawl|spelling|typos|typing|accent|phone|radio|interruption|delay|clutter|paint|color|stain|looks|crowd|traffic ?,", "", nil},
	{"never ?you mind what i|we ?have ?just said|told ?you ?before|earlier|just ?now $", "never mind that", nil},
	{"^^ not # !(_ ?_) , ?but ?just make|call it|that # $$", "$3 $2", nil},
	{"no|nope|nah|hmm|wait ?, ?(no|wait|hmm) ?, ?let ?us ?go back to #", "no , $1", saidFigureAhead},
	{"^ !forget|drop|skip|scrap ?about !STIFF ?then , ?and ?for i|we do|will not want|need|like any|them|those ?of ?them ?at ?after ?all ?now ?anymore $", "$1 the $2", nil},
	{"^ no !STIFF ?then , ?and ?for i|we do|will not want|need|like any|them|those ?of ?them ?at ?after ?all ?now ?anymore $", "no $1", nil},
	{"^ ?a bit|little|touch|tad|shade|smidge more|extra !GAP|OPENING|spare|kerf|fit , ?say|call ?it ?just # more|extra ?of ?it|that $", "$2 more $1", nil},
	{"^ ?a bit|little|touch|tad|shade|smidge wider|bigger|larger|roomier !GAP|OPENING , ?say|call ?it ?just # more|extra|wider ?of ?it|that $", "$2 more $1", nil},
	// Old joiners.
	{"!what|how !would|will|does|did she look ?like !with|if", "$1 $2 it look like $3", nil},
	{"!left|right ?hand ?end post nods|bows|cants|rakes|heels|slouches ?over !inward|inwards|in|outward|outwards|out|left|right|(to the left)|(to the right) ?by #", "$1 post leans $2 $3", nil},
	{"# ?footers|foot|feet ?long the|all lot|(of them)", "$1 long", boardsAtHand},
	// Teachers.
	{"mismarks|mismark|mismarked|miscuts|miscut|mismeasures|mismeasure|mismeasured ?it|them|everything|each|every ?one|board|mark|rail ?by #", "is off by $1", nil},
	{", what becomes|happens of|to top ?edge ?of ?it|wall $", "", phrase.SaidBeforeOf(scan.WordSet("off out wrong"))},
	{"^ ?please remind|tell ?ME ?whole class|pupils|students|children ?of what|everything has|have ?been ?we|i|you ?all settled|decided|agreed|told|said|fixed ?you ?on|upon ?so|until|up ?to ?far|now $", "what have i told you", nil},
	{"clear space|spaces !exceeds|exceed|exceeding|tops|surpasses", "gap $1", nil},
	{"what|anything ?is ?there|here ?in|about|with ?this|my|our ?layout|plan|design|wall ?that would|might|could|will inspector|reviewer|examiner|official question|challenge|query|flag|dispute|(object to)|(pick on)|(frown at) ?here ?about ?in ?this|it ?layout|plan|wall $", "any cautions", nil},
	// Clerks.
	{"keep|hold|bring|get ?whole|entire bill|order|ticket|total|material|materials under|below|within|(no more than)|(less than) !(## ?## ?##) ?dollars|bucks ?all|in|told ?told $", "budget $1", nil},
	{"^ can|could|would|may|is ?i|we|you|one|it do|build|make|get|manage|possible ?to ?do ?build ?it|this|that|wall|job|lot ?all ?done|built for under|below|(less than)|within !(## ?##) ?dollars|bucks ?all ?in|told $", "what if budget is $1 dollars", nil},
	{"boards|pieces|lengths|sticks thrown|tossed|chucked in ?, ?just for|against|(in case of) ?any mistakes|mishaps|accidents|errors|goofs|knots", "boards just in case", nil},
	{"boards|pieces|lengths|sticks ?, ?just in case of ?any mistakes|mishaps|accidents|errors|goofs|knots", "boards just in case", nil},
	{"print ?out the|that|this|my|our ?shopping|material|materials|lumber|cut|cutting list|order|sheet|page to|into|as", "print this to", nil},
	{"read|give|say|write|print|show|hand|get ?out ?off ?up ?ME the|a|that|my ?whole list for ?my|our ?lumber truck|driver|van|pickup|trailer|store|yard|lumberyard|shop|clerk|counter|trip|run $", "what do i need to buy", nil},
	{"no more # ?left till|until|before|(not till) next|spring|summer|fall|winter|monday|tuesday|wednesday|thursday|friday|month|week ?month|week|spring|year", "out of $1", nil},
	// Parents.
	{"pleas", "please", phrase.StartsClause},
	{"forgott|forgat", "forgot", nil},
}

// partComesNext: a part of the wall is named right behind it.
func partComesNext(_, after []scan.Atom) bool {
	key, _ := chunk.PartKey(after, 0)
	return key != ""
}

// saidFigureAhead: a figure was told before.
func saidFigureAhead(before, _ []scan.Atom) bool {
	for i := range before {
		if phrase.StartsLength(measure.Reader{Atoms: before}, i) {
			return true
		}
	}
	return false
}

// notMoney are words by which pounds are a weight.
var notMoney = scan.WordSet("weigh weighs weight load loads hold holds carry carries bear push pushes lean force pressure square foot heavy lift")

// moneyTalk are words by which pounds are money.
var moneyTalk = scan.WordSet("cost costs costing price priced prices pay paid pays spend budget charge charges quote quoted each apiece charged total bill sells hundred")

// spokenOfPrice: what is told in pounds is a price, and no weight.
func spokenOfPrice(before, after []scan.Atom) bool {
	price := false
	for _, part := range [][]scan.Atom{before, after} {
		for _, a := range part {
			if notMoney[a.Text] {
				return false
			}
			price = price || moneyTalk[a.Text]
		}
	}
	return price
}

// supposedWords are words that begin what is only supposed.
var supposedWords = scan.WordSet("suppose supposing imagine picture pretend if")

// supposedAhead: the line begins with what is supposed.
func supposedAhead(before, _ []scan.Atom) bool {
	for _, a := range before[:min(len(before), 3)] {
		if supposedWords[a.Text] {
			return true
		}
	}
	return false
}

// railNamed are words by which a top is that of one rail.
var railNamed = scan.WordSet("first second third fourth fifth sixth seventh eighth bottom lowest fixed screwed nailed up already bracket post posts rail board")

// topOfNoRail: how many rails there are was told, and no one of them is spoken of.
func topOfNoRail(before, _ []scan.Atom) bool {
	for _, a := range before {
		if railNamed[a.Text] {
			return false
		}
	}
	return true
}
