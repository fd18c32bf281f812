package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// shopTalk are ways in which those talk who shop for the wall, and whoever serves them.
var shopTalk = []phrase.Placed{
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
	{"all|what ?that (is|they have got|they have|we have got|we have) left is|are", "they only have", noPartNext},
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
	// What costs most, and comes out lowest.
	{"?((buying|(paying for)|adding|setting|installing|(digging in)) [all|more|extra|the]) POST is|are ?just COSTLY FEW ?please $", "fewest posts", nil},
	{"what|(the [one] (part|bit|thing) that) ?really hurts|kills|costs|stings|bites ?ME ?most ?(the most) ?here is|are ?((buying|(paying for)|adding|setting|installing|(digging in)) [all|more|extra|the]) ?the ?all POST FEW $", "fewest posts", nil},
	{"it is ?the ?all POST that|which ?really hurt|hurts|kill|kills|cost|costs|sting|bite|add ?up ?ME ?most ?(the most) FEW $", "fewest posts", nil},
	{"?find|get|give|show|pick|choose|use|take|want ?ME ?(go with) whatever|whichever|(the way that)|(which ever) ?way|option|one|layout|combination|mix|choice ?that comes|works|runs|turns|ends|is|costs ?out|up|in|to ?(to|at|being) ?the least|cheapest ?((on|at|for|in) [the|my|his|her|our] (receipt|register|bill|till|ticket|total|invoice|tab|end)) $", "cheapest", nil},
	{"?find|get|give|show|pick|choose|use|take|want ?ME ?(go with) whatever|whichever|(the way that)|(which ever) ?way|option|one|layout|combination|mix|choice ?that comes|works|runs|turns|ends|is ?out|up|in|to ?(to|at|being) ?the lowest|smallest on|at|for|in the|my|his|her|our receipt|register|bill|till|ticket|total|invoice|tab $", "cheapest", nil},
	{"?find|get|give|show|pick|choose|use|take|want ?ME ?(go with) whatever|whichever|(the way that)|(which ever) ?way|option|one|layout|combination|mix|choice ?that rings|totals|adds ?out|up|in|to ?(to|at|being) ?the lowest|least|cheapest|smallest ?((on|at|for|in) [the|my|his|her|our] (receipt|register|bill|till|ticket|total|invoice|tab|end)) $", "cheapest", nil},
	{"^ what really|kills|hurts|stings|bites|pains ?kills|hurts|stings|bites|pains ME|most ?most is|are", "trouble is", nil},
	{"what|how ?much does|would|will|might it|that|this|everything|(the (lot|wall|job|thing)) come|run|add ?up ?out to|CLIENT ?to with @ ?for ?the ?!RAIL|POST", "what does it cost with $1 $2", nil},
	{"would|will|do|does CLIENT ?then need|buy|use|(get by with) fewer|less|more boards|lumber|wood|material with|(if CLIENT (used|use|bought|went with)) !.. $", "what if $1 , what do i need to buy", nil},
	{"split|splitting the difference between", "between", nil},
	{"^^ ?our|a truck|delivery|shipment|supplier ?has ?just dropped|brought|delivered|unloaded ?off|in ?us ?some|more !eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?(today|this morning|just now) $$", "they have $1 too", nil},
	{"an|one|(half an) hour ago $", "", phrase.SaidBeforeOf(scan.WordSet("sold ran"))},
	{"hard|firm|strict|absolute|real !limit|cap|ceiling|maximum of !(## dollars|bucks)", "$1 of $2", nil},
	{"^ ?just give|tell|show ME the bottom line $", "what does it cost", nil},
	{"^ run|go through|over the|this|my|his|her TICKET with|for ME ?again|(once more)|(one more time) ?please $", "recap", nil},
	{"^ ?let ?us split the difference :|,|.|-|; ?so|and", "", moreFollows},
	// What others could do, and what it would save them.
	{"could|can|would|might|may|will he|she|they|one|((the|this|that|my|our) PERSON) get by|away with", "could i get by with", nil},
	{"would|will|does it save|pay ?ME|anyone ?any anything|money|much|cash|something|(a (lot|bit|little|penny|dime)) to|if ?CLIENT use|buy|used|bought|(go with)|(went with)|try|take|have|had", "what does it cost with", nil},
	{"would|will|do|does !.. save|saves ME|anyone ?any anything|money|much|cash|(a (lot|bit|little|penny|dime)) $", "what if $1 , what does it cost", nil},
	{"CLIENT|PERSON ?(is|are|am|will [be]|would be) bringing|bring|hauling|supplying|lugging|(carrying in) ?along|in|over !(.. @ [s]) ?(from ([his|her|their|my|our] (home|house|garage|shed|place|barn|truck))) ?([that|which] (he|she|they|i|we) [already] (have|has|own|owns|bought|got|(has got)|(have got)|(is got)) [already])", "i have $1", nil},
	{"^ ?my|our|this PERSON ?has|have ?just changed his|her|their mind|minds ?again ?,|.|; ?so|and", "", moreFollows},
	{"CLIENT|SELLER is|are|am|have|has|ran|run|sold ?just|all ?ran|run|sold ?clean|plumb|right|fresh ?completely out of @ ?s ?lumber|posts|stock ?today|now ?, so ?please", "", moreFollows},
	{"CLIENT|SELLER is|are|am|have|has|ran|run|sold ?just|all ?ran|run|sold ?clean|plumb|right|fresh ?completely out of @ ?s ?lumber|posts|stock ?today|now ,|; ?so ?please !use|make|go", "$2", moreFollows},
	{"out of !(_|(## [foot|ft|feet|footers])) ?now|today ?,|; ?so|and|but ?((we|i|you|he|she|they|let us) ?will ?just) ?please ?just use|buy|take|(go with)|(make it)|do !eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?(instead|then|for [now|this|him|her]) $", "out of $1 , so only use $3", nil},
	{"scratch|scrap|forget|drop|wipe|ditch|toss all ?of that|it|this ?out ?,|.|; next one|customer|order|client|up ?please $$", "start over", nil},
	// What is liked is kept.
	{"like|likes|love|loves|prefer|prefers|with|fancy|liked that|this last|latest one ?best ?better ?,", "like that one ,", nil},
	// Orders at a counter.
	{"wipe|clear|void|scrap|trash|toss|shred|bin|ditch|erase|cancel|(tear|rip up)|(throw out|away) ?out|up (the whole|entire)|this|that ?whole|entire|old TICKET ?out|up|away|clean|now ?please ?,|.|;|- ?((i have [got]|there is|here is|it is) [a|the]) ?((new|next|another|different|other) (customer|client)) ?now|here $", "start over", nil},
	{"wipe|clear|void|shred|erase|(tear|rip up) the TICKET ?out|up|away|clean|now ?please ?,|.|;|- ?((i have [got]|there is|here is|it is) [a|the]) ?((new|next|another|different|other) (customer|client)) ?now|here $", "start over", nil},
	{"^^ next|another customer|client ?please|now $$", "", nil},
	{"read|repeat|recite|say|play ?ME ?back the|this|that|my|his|her|their|whole|entire ?whole|entire|full TICKET ?right|all back ?to|for ?ME ?please|now", "recap", nil},
	{"repeat|recite the|this|that|my|his|her|their|whole|entire ?whole|entire|full TICKET ?to|for ?ME ?please|now $", "recap", nil},
	{"read|repeat|recite|say ?ME back|over what|everything ?that ?all CLIENT have|has|had ?just ordered|requested ?(so far) $", "recap", nil},
	{"for this|his|her|their|that TICKET|sale|job $", "", behindSomething},
	{"CLIENT|PERSON am|is|are|will|would ?only|just ?((willing|going|ready|prepared|happy) to) paying|pay|springing|spring|buying|buy|shelling|forking|shell|fork ?out|up ?for # !extra|added|additional|more|new !post|posts", "i want $1 added $3", nil},
	// What was measured, and what is to be put in for it.
	{"center|centre|middle of ?one|each|the POST to ?the center|centre|middle of ?other|next|the POST", "center to center", nil},
	{"!CLIENT|PERSON ?has|have measured ?it ?from|off ?the center|centre|middle ?(of [one|each] post) to center|centre|middle ?(of [(the other)|each|next] post) ,|and ?and|but|so ?he|she|they says|said|tells|told|wants|asks|asked ?ME ?to put|enter|use|write|type|key|punch ?in|down ?at|as #", "i want centers $2", nil},
	{"!CLIENT|PERSON ?has|have measured !(* [post [s]]|outside to outside|inside to inside) ,|and ?and|but|so ?he|she|they says|said|tells|told|wants|asks|asked ?ME ?to put|enter|use|write|type|key|punch ?in|down ?at|as #", "i want $2 at $3", nil},
	{"it is|(comes to) ?!about|around|roughly # ?straight|right ?down from his|her|my|our|their|(the customer 's)|this|that deck|porch|floor|stoop|landing|patio|platform ?floor|boards|surface|top|edge ?straight|right ?down ?on to|onto EARTH ?below", "it is $1 $2 from the deck down to the lawn", nil},
	// What is claimed to come of it.
	{"# RAIL leaves|leave|gives|give|gets|get|yields|makes|nets ?you|ME ?with # ?gap|gaps ?between|apart ?(between them) $", "$1 rails at $2", phrase.BothHold(sayingBefore, behindNoSize)},
	// What is to be priced, and what is concluded.
	{"quote|requote|reprice|rebid ?it|this|that ?(for ME)|ME ?again|anew|afresh|(one more time)|(once more) $", "what does it cost", notNoun},
	{"quote ME a|the|your ?new|fresh|updated|revised|final|total price|total|figure|cost $", "what does it cost", notNoun},
	{", so say #", ", so $1", nil},
	{", so say about|around|roughly|maybe #", ", so about $1", nil},
	{"^^ CLIENT|((my|our|his|her|their|the) PERSON) OWNS ?a|an|two|three|some|small|little ?_ WITHUS ?(at home|there|now|(running around)) ?,|;|. ?so|and|(which means)", "", moreFollows},
	{"?,|;|.|-|-- ?because|since|as|cause|and|cuz|but CLIENT|((my|our|his|her|their|the) PERSON) ?already|also OWNS ?a|an|two|three|some|small|little ?_ WITHUS ?(at home|there|now|(running around)) $$", "", behindSomething},
}

// clauseOrAndEnds: a clause ends here, or "and" leads on.
func clauseOrAndEnds(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text == "and"
}

// notNoun: a verb may stand here, and no noun: "his quote again".
func notNoun(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return !lexicon.Vocab().Articles[w] && w != "this" && w != "that" && !lex.Owned[w] && w != "'s" && !chunk.IsClass(w, "PERSON") && !chunk.IsClass(w, "PAPERKIND")
}

// behindNoSize: the figure is no second half of a lumber size: "six 2x6 boards".
func behindNoSize(before, _ []scan.Atom) bool {
	return chunk.LastOf(before, 1) != "x" && chunk.LastOf(before, 1) != "by"
}

// sayingBefore: somebody says what follows.
func sayingBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		if lex.Saying[a.Text] || lex.SayAll[a.Text] || lex.Tellings[a.Text] {
			return true
		}
	}
	return false
}

// noPartNext: no part of the wall stands next: "what's left is the gap" tells no stock.
func noPartNext(_, after []scan.Atom) bool {
	i := 0
	for i < len(after) && (lexicon.Vocab().Articles[after[i].Text] || lex.Owned[after[i].Text]) {
		i++
	}
	return i < len(after) && !chunk.PartAt(after, i)
}
