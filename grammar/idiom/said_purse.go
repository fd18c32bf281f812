package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// purseTurns are turns of phrase of money and the yard, and of what is measured, with the plain words for each.
var purseTurns = []phrase.Placed{
	// What may be spent, and what it comes to.
	{"^ ?i|we ?can|must|do|could|may|shall not let ?all|our|my|whole materials|material|lumber|wood|timber|total|bill|cost|costs|things|this|it|everything|lot|job|order top|exceed|pass|((go|run|get|creep|climb) (over|past|above|beyond))|(come to more than)", "the budget is", sumAhead},
	{"i|we ?can|could ?still spare|find|add|scrape|afford|(put in)|(throw in)|(chip in) ?up|together another|(an extra) # ?dollars|bucks ,|; ?so|and ?please put|add|throw|lump|tack|count that|it|them ?in|on|onto|to|toward ?top ?of ?the|our|my budget", "add $1 to the budget", nil},
	{"i|we ?can|could ?still spare|find|add|scrape|afford|(put in)|(throw in)|(chip in) ?up|together # more ?dollars|bucks ,|; ?so|and ?please put|add|throw|lump|tack|count that|it|them ?in|on|onto|to|toward ?top ?of ?the|our|my budget", "add $1 to the budget", nil},
	{"^ !([\\$] ## [##] [dollars|bucks]) is all|most ?of ?the money|cash|funds ?that there is|was ?left ?(for|to spend on) ?all|the this|it|everything|materials|material|lumber|wood|wall|job", "budget $1", nil},
	{"^ ?the|my|our wife|husband|boss|missus|hubby|partner|landlord|landlady|treasurer says|said|insists|(told me)|(tells me) ?that ?(it is|to spend) ?absolutely no|not|nothing ?a ?penny|cent|dollar more|over|above ?than # ?dollars|bucks ?for|on the|this|all lot|job|wall|materials|lumber|wood|material", "the budget is $1", nil},
	{"how much|what ?money do|will|am|are|would|'ll i|we ?be ?going ?to handing|hand|paying|pay|giving|give|forking|fork|shelling|shell|owe|owing ?over|out ?to|at|for the cashier|till|register|checkout|clerk", "what does it cost", yardClauseEnds},
	{"which|what lumber|wood|timber|boards|materials i|we should|must|need|have|ought ?to purchase|buy|get|order|acquire", "what i need to buy", nil},
	{"budget ?has|is grown|shrunk|risen|gone|come|fallen|increased|decreased|crept ?up|down a little|bit|touch|lot|(little bit)|smidge|tad , to", "budget is", sumAhead},
	{"^ if it|this|that|things|everything|(the [total|bill|cost|lot]) goes|runs|comes|gets|climbs|costs ?to ?in over|above|past|(more than) # ?dollars|bucks ?, ?then ?the|my|our PERSON .. (a fit)|(the roof)|kill|kills|murder|divorce|mad|skin|scalp|(heart attack) .. $$", "the budget is $1 dollars", nil},
	{"says|said|reckons|claims|thinks ?that we|you|i|one can|could|will|would|'ll do|build|make|manage|finish ?it|this|(the [wall|job|lot]) ?all for under|below|(less than) #", "says the total stays under $1", yardClauseEnds},
	{"says|said|reckons|claims|thinks ?that it|this|(the [wall|job|lot]) can|could|will|would be done|built|made|finished ?all for # ?dollars|bucks", "says the total is $1 dollars", yardClauseEnds},
	{"i|we ?am|is|are|do|does not got|have (any more than)|(nothing but)|(more than)|over|but|(nothing more than) !([\\$] ## [##]) ?dollars|bucks for ?the LUMBER|materials|this|it|everything", "budget $1", nil},
	{"not ?ever go past|over|above|beyond !(## hundred [and] [##] [##]) ?dollars|bucks on|for|with ?the|this thing|job|wall|project|one|it|lot", "the budget is $1 dollars", nil},
	{"keep|hold|have ?the|our|my total|bill|cost|spending ?((for|of|on) [the|all] (materials|lumber|wood|material)) at|to # ?dollars|bucks or less|under|below|lower", "the budget is $1 dollars", nil},
	// What is priced.
	{"mark|put|write|note|enter|list|jot|pencil|book|set ?the|them !(bracket|brackets|(post [base|bases|cap|caps])|anchor|anchors) ?down|in at|as|for £ ?each|apiece", "$1 cost $2 each", nil},
	{"i|we ?have got|had|have|received|(was given)|(were given) a|an quote|price|offer of £|# ?dollars|bucks for|on each|a|one|every !(bracket|(post base)|(post cap)|anchor)", "a $3 costs $1 $2", nil},
	{"^ ?the|my|our PERSON|quote|tag|sticker|list ?((at|behind) the (counter|desk|register|yard)) says|said|(told (me|us))|(tells (me|us))|quoted|quotes ?me|us ?that ?the !(bracket|brackets|(post [base|bases|cap|caps])|anchor|anchors) ?now are|is|cost|costs|run|go|at ?now ?for|at £ ?each|apiece ?now", "$1 cost $2 each", nil},
	{"but|and|so|, there is|are ?some !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)) ?back now|again|too ?in|on ?stock|hand|the ?rack|racks|shelf , ?they|those ?are £ ?each|apiece", ", they have $1 too , $1 cost $3", nil},
	{"there is|are ?some !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)) ?back on|in|at the rack|racks|shelf|shelves|yard|store|shop again|(once more)", "they have $1 too", nil},
	{"!(bracket|brackets|(post [base|bases|cap|caps])|anchor|anchors) is|are|run|runs # even|flat", "$1 cost $2 each", yardClauseEnds},
	{"!(bracket|brackets|(post [base|bases|cap|caps])|anchor|anchors) ?have|has|are|is went|gone|go ?up|down ?again ?in ?price ,|and|; ?so ?they|it ?are|is|cost|costs ?now # apiece|each ?now", "$1 cost $2 each", nil},
	{"^ ?the|my|our|this PERSON|guy gave|sold|did|(let me have)|(let us have) ?me|us ?the !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)) for|at", "$1 cost", nil},
	{"?have|has|are|is went|gone|jumped|dropped|rose|fell|crept|risen|fallen ?up|down from £ ?up|down to £", "cost $2", nil},
	{"^ ?i|we ?have found|spotted|saw|got|bought|ordered ?some|the !(bracket|brackets|(post [base|bases|cap|caps])|anchor|anchors) online|((at|in) the (yard|store|shop|market))|(in town)|(on sale) at|for £ ?each|apiece", "$1 cost $2 each", nil},
	{"^ what is the bottom line $$", "what does it cost", nil},
	{"how many @ ?s do|must|should|will i|we ?have|need|want ?to buy|get|order|purchase", "what do i need to buy", nil},
	// What there is at the yard.
	{"all|everything|whatever|what ?that they|we|SELLER have|has|'ve|'s ?got ?left in|on the|stock|lumber|wood|timber ?bin|bins|rack|racks|shelf|shelves|pile|yard|stock|store ?(right now)|today is|are", "they only have", nil},
	{"nothing but|except !.. in|on|at the racks|rack|shelf|shelves|yard|bin|bins|store|shop|stock ?today|(right now)|now", "they only have $1", phrase.StartsClause},
	{"they|SELLER also|even do|does|make|makes|offer|offers ## !m|metre|metres|meter|meters|foot|footers|ft ?lengths|boards|ones|planks", "they also sell $1 $2 boards", nil},
	{"skip|forget|drop|scratch|scrap ?all ?the !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)) , ?because|since|as ?they|SELLER ?have ?just|all sold|(ran out)|(run out)|(are out)|(got rid) ?of ?the|all ?last ?of|one|ones ?them|those ?one|ones", "they are out of $1", yardClauseEnds},
	{"^ ?i|we can|could only fit|haul|carry|transport|take|get|load !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)) in|into|on|onto|with ?the|my|our|a ?little|small van|car|truck|trailer|pickup|ute|wagon|roof|hatchback", "they only have $1", yardClauseEnds},
	{"a|the ?good|wide choice|pick|selection|range of !(.. or ..) lengths|boards", "they sell $1 lengths", behindHas},
	{"a|an|one @ , ## foot|feet|ft ?long ,", "1 $2 foot $1", behindHas},
	{"put|mark|note me|us down as|for owning|having", "i have", nil},
	{"all ?the|our boards|lumber|lengths|timber come ## foot|feet|ft long", "they only have $1 footers", yardClauseEnds},
	{"skip|forget|drop|scratch ?all ?the !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)) , ?because|since|as ?i|we|they can|could|will not haul|carry|transport|fetch|lug|load|fit|lift|get those|them ?home|in|into|on|onto ?the|my|our ?car|truck|van|trailer|stairs", "they are out of $1", nil},
	// What is bought besides.
	{"include|add|order|buy|get|plan|figure|count|take ?on ## %|percent|(per cent) more|extra LUMBER than|beyond|over ?what i|we|it|is|the|this ?job|wall|(strictly) need|needs|needed|require|requires|required|takes|(calls for)|necessary ?strictly", "$1 percent spare", nil},
	{"not add|include|order|buy|get|want|need|put ?to ?buy|order|get any|anything extra|spare|spares ?LUMBER|ones ?((to|in|on) the (order|list|shopping|bill))", "no spare", yardClauseEnds},
	{"## board|boards|plank|planks over|extra|spare ?((just in case)|(for safety)) is|are|will|would|'ll|should ?be plenty|enough|sufficient|fine|do", "buy $1 spare boards", phrase.StartsClause},
	{"include|add ## %|percent|(per cent) extra|more|spare LUMBER", "$1 percent spare", yardClauseEnds},
	{"round|bump|pad|top|fill it|things|everything|that|the ?order up|out with ## %|percent|(per cent) extra|more|spare LUMBER", "$1 percent spare", nil},
	{"^ ?please|and allow|include|plan|figure ?for|on ## spare|extra|spares ?board|boards", "buy $1 spare boards", yardClauseEnds},
	{"?give|leave|allow|keep ?me|us a|an cushion|allowance|margin|buffer|overage of ## %|percent|(per cent) ?((on|for|of) [the] LUMBER)", "$1 percent spare", yardClauseEnds},
	// What the tape tells.
	{"^ !eighths|sixteenths|quarters|halves is|are as fine|close|small|far ?down as i|we|it|mine|(my tape) ?can|will ?ever go|goes|get|gets|read|reads", "round everything to $1", yardClauseEnds},
	{"i|we can|could not|barely|hardly read|see|make|mark ?out anything|any ?thing ?any finer|smaller|closer than # off|on|from|with|of this|my|the|a tape|ruler|rule ?measure", "the tape reads to $1", nil},
	{"give|tell|show|quote|put ?me|us every|each|all ?the|my|of ?your figure|figures|number|numbers|length|lengths|measurement|measurements|dimension|dimensions to the nearest", "round to the nearest", nil},
	// Units.
	{"?, inches|feet|fractions|imperial ?(and inches) mean|means|say|says|are|is ?just|absolutely|little|next ?to nothing|gibberish|greek|chinese to me|us", "", metricSaid},
	{"^ ?that|it|i is|have|'ve ?had ?quite enough ?of ?the METRICS ,|. ?back|let's|now|so ?to ?use inches|feet|imperial ?(and inches) ?from ?here|now ?on ?again ?please", "use inches", nil},
	{"^ ?that|it|i is|have|'ve ?had ?quite enough ?of ?the inches|feet|fractions|imperial ?(and inches) ,|. ?back|let's|now|so ?to ?use METRICS ?from ?here|now ?on ?again ?please", "use metric", nil},
	{"## m|metre|meter and ## cm|centimetre|centimetres|centimeter|centimeters", "$1 m $2 cm", nil},
	{"# along|over|in|across from the post on|at the|my !left|right ?side|end|hand ?side", "$1 from the $2 post", nil},
	{"# along|over|in|across from the !left|right ?hand ?end post ?to ?where ?the ?(opening|doorway) ?(starts|begins)", "$1 from the $2 post", openingAlone},
	{"^ ?please show|give|put|display|print|write|list ?me|us ?the|all|my|your ?the|my results|result|answers|dimensions|output|lengths|sizes in !inches|millimeters|millimetres|centimeters|centimetres|metric ?((instead of|rather than|not|and not) METRICS|inches) ?please", "use $1", yardClauseEnds},
	// Bays that are measured, and measured again.
	{"^ ?i|we ?have ?just checked|rechecked|measured|remeasured|taped|retaped|reread !(bay ..|bottom of bay ..|top of bay ..|rail ## ..) again|over|(once more)|(a second time)|afresh ?, ?and|now ?it|that|they is|are|reads|read|(comes to)|(came to)|(comes out at)", "$1 is", nil},
	{", i|we had|read|wrote|got|put|said # before|earlier|previously|originally|(the first time)|(last time)|(the last time)|(first time round)|down $$", "", figuresBefore},
	{"takes|treats|counts ?the|my|our|all RAIL|boards as|at # ?wide|across", "says the rails are $1 wide", nil},
	{"^ figure|reckon|say|assume|count ?on ?that ?the saw|blade", "the saw", nil},
	// The width of the boards as it is.
	{"^ when|if|whenever i|we put|hold|held|lay|laid|set|run|ran|stretch a|my|the tape|ruler|rule|calipers|caliper|yardstick to|on|across|over|against|along ?one|each ?of ?my|the|these|our|a RAIL|boards , ?and ?it|they|that|each|one ?actually|really turn|turns|turned|come|comes|came|measure|measures|read|reads|is|are|show|shows ?out ?up ?to|at ?be # ?wide|across", "rail face $1", nil},
	{"@ ?LUMBER|stock , ?although|though|but|and mine|ours|these|those|they ?really|actually ?only measure|measures|are|come|is|run ?really|actually|only ?out ?at|to # across|wide|on ?the ?face", "$1 , rail face $2", nil},
	{"^ ?the|this|my|our stuff ?((on my (cart|truck|trailer|bench))|(i (have|bought|got))|(they sold me)|(in my (garage|shop|shed))) is|measures|runs|comes ?really|only|actually|just ?out ?at|to # ?wide across|on|over the face", "the rails are $1 across the face", nil},
	{"RAIL|boards ?actually|really measure|measures|are|is|run|come ?out|in ?at|to # on|across|over ?the|their wide|broad|flat|face side|face", "rails are $1 across the face", nil},
	{"with ?a|my|the caliper|calipers|micrometer ?the|my|our|these RAIL|boards come|comes|are|is|measure|measures|read|turn ?out|in ?at|to|be # ?wide|across ?the ?face", "the rails are $1 across the face", nil},
	{"@ battens|laths|strips|slats|planks for|as ?the|our|my RAIL|boards", "$1 rails", nil},
}

// purseSwaps are words misheard and misspelled, set plain before figures are heard by their sound.
var purseSwaps = []phrase.Placed{
	{"calliper", "caliper", nil},
	{"callipers", "calipers", nil},
	{"switch|change|go|swap|flip|turn ?it|everything|this|things|us ?back over ?back to feet|foot|ft and inches", "use inches", phrase.StartsClause},
	{"switch|change|go|swap|flip|turn ?it|everything|this|things|us ?back over ?back to !inches|feet|imperial|millimeters|millimetres|metric ?and ?inches", "use $1", phrase.StartsClause},
	{"!foot|feet|ft stuff|material", "$1 boards", nil},
	{"would|will it ?be|come|work|turn ?out ?to ?be !cheaper|dearer to go|use|do|have|make|take|buy|try ?with", "would it be $1 with", nil},
	{"wall hide", "wall height", figureToCome},
	{"!one|two|three|four|five|six|seven|eight|nine in a|an !half|quarter|eighth|sixteenth", "$1 and a $2", noWallNext},
	{"an a !half|quarter", "and a $1", nil},
	{"a|an|the|each|every ## foot|feet|ft one|ones", "a $1 footer", phrase.BothHold(pricesBefore, noInchesNext)},
	{"centimeters|centimetres|cm or|and millimeters|millimetres|mm", "millimeters", figuresNone},
	{"at lease|leased", "at least", figureToCome},
	{"!added|new|end|extra|middle|corner pose", "$1 post", nil},
	{"pose size", "post size", nil},
	{"stiff ners|nors|nurs", "stiffeners", nil},
	{"two the !right|left|ground|floor", "to the $1", nil},
	{"quart of an inch", "quarter of an inch", nil},
	{"the wholes", "the holes", nil},
	{"and quite", "and quit", saveFirst},
	{"too !inches|feet|foot", "two $1", figuresNone},
	{"bey !(##)", "bay $1", nil},
	{"!rail|board|slat ate|eat in|of", "$1 eight in", nil},
	{"!rail|board|slat for in|of bay", "$1 four in bay", nil},
	{"!rail|board|slat to|too in|of bay", "$1 two in bay", nil},
	{"!rail|board|slat won in|of bay", "$1 one in bay", nil},
	{"for !rails|boards|slats|planks in|per|to each|every|a bay|section", "four $1 in each bay", purseAlone},
	{"builders|builder|builder's|timber ?' ?s merchant|merchants", "merchant", nil},
}

// metricSaid: metric units were spoken of before.
var metricSaid = phrase.SaidBeforeOf(scan.WordSet("metric mm cm millimeters millimetres centimeters centimetres"))

// purseAlone: nothing stands before it, and nothing behind.
func purseAlone(before, after []scan.Atom) bool {
	return len(before) == 0 && yardClauseEnds(before, after)
}

// behindHas: somebody has it, or it can be had.
func behindHas(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return w == "have" || w == "got" || w == "'ve" || w == "is" || w == "has"
}

// noWallNext: no half wall is meant.
func noWallNext(_, after []scan.Atom) bool {
	return len(after) == 0 || after[0].Text != "wall" && after[0].Text != "hour" && after[0].Text != "day"
}

// saveFirst: something is saved before, and nothing comes behind.
func saveFirst(before, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("save store"))(before, nil) && phrase.EndsLine(before, after)
}

// figuresNone: a word that is no figure stands right before.
func figuresNone(before, _ []scan.Atom) bool {
	n := len(before)
	return n > 0 && before[n-1].Kind == scan.Word && !chunk.SpelledNumber(before[n-1].Text)
}

// noInchesNext: a board is meant, and no inch.
func noInchesNext(_, after []scan.Atom) bool {
	return len(after) == 0 || !measure.InchWords[after[0].Text] && after[0].Text != "and" && after[0].Text != "-"
}

// pricesBefore: something was priced before.
var pricesBefore = phrase.SaidBeforeOf(scan.WordSet("$ dollars bucks price priced cost costs costing pay paid paying"))
