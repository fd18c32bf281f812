package grammar

// phrasePieces are pieces that many phrases share, under a name in capitals.
var phrasePieces = map[string]string{
	"CLIENT":  "he|she|they|i|we|([the|my|our|this] (customer|client|fella|fellow|lady|gentleman|couple|guy|homeowner))",
	"PRINTED": "it|this|that|mine|ours|them|everything|lot|thing|whole|me|us|of|up|out|down|please|wall|layout|plan|job|findings|results|result|report|notes|summary|numbers|figures|answer|answers|work|sheet|steps|what|we|have|got|there|one|copy|full|picture|drawing|sketch|elevation|diagram|view|image",
	"METRICS": "METRIC|millimeter|millimetre|centimeter|centimetre",
	"VISIT":   "?this|(today 's) ?site|little|final|whole|first ?site inspection|visit|review|check|checking|report|session|questions|business|work|day|lesson|class|survey|audit|round|shift|appointment|checks",
	"RECORD":  "inspection|inspections|inspecting|measurement|measurements|report|reports|notes|measuring|figuring|work|checks|checking|drawing|drawings|layout|layouts|sums|math|building|woodwork|woodworking|carpentry|records|sketches|surveys|surveying|planning|calculations",
	"FIGURES": "(every|each|all|any|my|the|these|those|everything|whatever|anything) ?*",
	"MEASURE": "?and (they are|it is|(they|it) (come|comes|came) to|(they|it) (measure|measures|read|reads)|they were|it was)",
}

// shopTalk are ways in which those talk who shop for the wall, and whoever serves them.
var shopTalk = []phrasing{
	// What a yard has, and what it costs.
	{"(all|everything|whatever|what|only ones|only lengths|lengths|only thing|only things) ?that they|we|you|yard|store|shop|(this place) (have got|have|has|stock|stocks|carry|carries|sell|sells|keep|keeps|got) ?left ?(here|out back|on the (racks|rack)|in stock|at this place|today|right now) in @ ?(here|today|right now) is|are", "in $1 they only have", nil},
	{"round|around|out|in|over back ?!too|also|(as well) $$", "$1", nil},
	{"boards|lumber|rails|planks|sticks|they (come|comes|are sold|is sold) ?in !(## [..]) ?long|lengths at|in this|the yard|store|shop|place|lumberyard", "they sell $1 long", nil},
	{"!footer|footers|eights|tens|twelves|fourteens|sixteens|long|feet|foot ?!lengths at|in|from this yard|store|shop|place|lumberyard $$", "$1 $2", nil},
	{"@ at|of !(_|##) foot|feet|ft !are|is|cost|costs|run|runs|went|were|go|goes", "$2 foot $1 $4", nil},
	{"!are|is marked|knocked|priced|reduced|cut|dropped|lowered down to £", "$1 now $2", nil},
	{"went up to £", "are now $1", nil},
	{"^^ CLIENT|(the [yard|store] boss)|yard|store ?have|has ?just|now dropped|lowered|raised|bumped|marked|reduced|cut|knocked|slashed|upped|moved|brought|took|put ?up|down ?(price (of|on|for)) ?all !.. ?up|down to £ ?(each|apiece) ?,|and !.. ?up|down to £", "$1 are $2 , $3 are $4", nil},
	{"^^ CLIENT|(the [yard|store] boss)|yard|store ?have|has ?just|now dropped|lowered|raised|bumped|marked|reduced|cut|knocked|slashed|upped|moved|brought|took|put ?up|down ?(price (of|on|for)) ?all !.. ?up|down to £", "$1 are $2", nil},
	{"all|what ?that (is|they have got|they have|we have got|we have) left is|are", "they only have", nil},
	{"!they|we do|does not have|carry|stock|sell|keep anything in @ but|except|besides|(other than)", "in $2 $1 only have", nil},
	{"!a|the half !dozen", "half $1 $2", nil},
	{"bits of !##", "pieces of $1", nil},
	{"!extra|spare|more !board|boards|stick|sticks|piece|pieces|one|lumber for knots|splits|mistakes|screwups|culls|(bad ones)|cracks|(warped ones)|(mess - ups)|goofs $$", "$1 $2", nil},
	{"in case (one|some|any|a board|a few|a couple|one or two) ?(of them) (is|are|turns out|turn out|comes|come|gets|get|'s|be) twisted|warped|cracked|split|crooked|bad|bowed|cupped|checked|knotty|damaged|broken|ruined|(no good)|rotten|dinged|junk", "", nil},
	{"we get ## !spare|extra", "we have $1 $2", nil},
	{"!(## %|percent|(per cent)) extra|spare|more|over|waste|((extra|spare) for waste)|(for waste) ?lumber|wood on|onto|in|into|for|of ?all (lumber order|shopping list|lumber|wood|timber|boards|planks|material|materials|order|list)", "$1 spare", clauseOrAndEnds},
	{"spare !(## %|percent) on|for|of ?all lumber|wood|timber|boards|planks|material|materials", "$1 spare", clauseOrAndEnds},
	{"!is|are|was|were|'s tagged|ticketed|stickered|(price tagged) ?at|for ##", "$1 marked $2", nil},
	{"!is|are on special|sale|clearance|offer ?(today|this week|now) at|for", "$1", nil},
	{"!(onhand|on hand|in stock) ?: !.. ?-|,|: ## pcs|pc|pieces|ea|each|boards|bds $$", "$1 $2 x $3", nil},
	{", ?and|but it|they|that|those used to (be|cost|go for|sell for) .. $$", "", nil},
	{"^^ * left me|us ?with !((_|##) (@|(_|##) [-] foot))", "i have $1", nil},
	// Money.
	{"budget ?has|have|had|was|is|got ?been ?just come|came|gone|went|go|dropped|down|up|shrunk|shrank|grown|grew|cut|slashed|trimmed|raised|upped|bumped|lowered|reduced|increased|risen|fallen|fell|rose ?down|up|back ?down|up|back to", "budget is", nil},
	{"to spend ?, tops", "to spend", nil},
	{`i|we|he|she|they have|has ?only ?got ?only ?\$ !(## hundred [and _]|##) ?dollars|bucks on me|us|him|her|them ?(today|right now) $$`, "budget $1 dollars", nil},
	// What is measured at the yard, what hangs already, and what somebody has picked.
	{"?i|we ?have ?just put|ran|laid|held|took|pulled|stretched (tape measure|tape|ruler|rule|calipers|caliper) on|to|across|over|against|along ?((one|some|few) of) ?their|these|those|his ?_ board|boards|rail|rails|plank|planks|them|(@ [s]) ?, MEASURE", "the rails are", nil},
	{"i|we ?have ?just measured ?((one|some|few) of) ?their|these|those|his board|boards|rail|rails|(@ [s]) ?, MEASURE", "the rails are", nil},
	{"when|after|once i|we ?had|have|finally|actually measured ?((one|some|couple|two) of) ?these|those ?(## x ## [s]) board|boards|rail|rails|one|ones|plank|planks ?, it|they|that (turned out to be|came out at|came out to|came to|was|were|measured|is|are|proved to be) ?!really|only|actually|just !##", "the boards are $3 $4", nil},
	{"CLIENT ?already is|has|have ?already ?got ?already !([_] (rail|board|slat|plank) [##]) up|mounted|hung|fastened|installed|(in place) ?already|now !,|and|.|;", "$1 is up already $3", nil},
	{"!bracket|brackets|base|bases|post|posts|boards|rails|anchors|caps|stiffeners|hanger|hangers ?that|which he|she|they|(the customer) ?is|are|has|have ?just|already picked|chose|chosen|bought|buying|getting|ordered|using|uses|selected|likes|liked|found|grabbed|brought|(went with)|(settled on)|(decided on) ?out|up|in !stick|sticks|stand|stands|are|is|measure|need|needs|reach|reaches|hold|holds|cost|costs|run|runs|take|takes|go|goes|have|has|come|rise|rises", "$1 $2", nil},
	{"^ ?(with [these|those|his|her|their] (bracket|brackets) [[that] (he|she|they|i|we) [is|are|has|have] _ [_]] [,]) anything under|below|(less than)|(tighter than)|(smaller than)|(closer than)|(narrower than) # ?((of gap)|gap|(between (boards|rails|them))|apart) and|,|then they|brackets ?will|would|(start to) (run into|hit|touch|collide|clash|foul|bump|overlap|bang into|meet|interfere) ?with|into ?(each other|one another|other) $$", "bracket clearance is $1", nil},
	// Who serves, and who is served.
	{"^^ ?(thanks [,]) (he|she|they|[the|this] customer) is|are all set|done|(taken care of) $$", "i am all set", nil},
	{"^^ CLIENT have|has ?got ?a|an|two|three|some ?_ toddler|toddlers|baby|babies|kid|kids|child|children|dog|dogs|puppy|cat|cats|grandkids|grandchildren|twins|wheelchair|stroller|mower|wheelbarrow|walker|scooter ?(at home) ?, ?so", "", nil},
}

// clauseOrAndEnds: a clause ends here, or "and" leads on.
func clauseOrAndEnds(_, after []atom) bool { return endsPart(after, 0) || after[0].text == "and" }
