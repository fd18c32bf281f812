package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// everydayTurns are more turns of phrase of the site, the yard and the kitchen table, with the plain words for each.
var everydayTurns = []phrase.Placed{
	// Lists that are asked for.
	{"measurements|measures|sizes|dimensions|lengths for ?the cutting ?up ?(RAIL|pieces|wood|lumber|timber|everything)", "the cut lengths", nil},
	{"^ ?and|so|then ?please list|(write (out|down))|(jot down)|name|(spell out)|(set out) ?all ?of boards|lumber|wood|timber|pieces|materials|stuff|things ?that i|we ?still|will have|need|must|want|ought ?to ?(get|buy|order|(pick up)|fetch|purchase)", "show me the shopping list", nil},
	{"?please|(could|can|would|will you) ?also ?please give|gimme me|us ?some|an ?rough|general ?idea|feel|sense|notion|inkling of|about", "tell me", nil},
	{"^^ METRICS ?please|thanks ,|:|;|-", "use metric ,", nil},
	// What is thrown or dropped in is added, not thrown out.
	{"throw|toss|chuck|pop|stick|slip|drop|bring|pull|move|shove|jam|slam|tuck|park|ram|stuff|wedge|fling|draw|sneak in|(on in) another !rail|board|slat|plank|post|stiffener|rails|boards|slats|planks|posts|stiffeners", "add another $1", nil},
	{"throw|toss|chuck|pop|stick|slip|drop|bring|pull|move|shove|jam|slam|tuck|park|ram|stuff|wedge|fling|draw|sneak in|(on in) ## more !rail|board|slat|plank|post|stiffener|rails|boards|slats|planks|posts|stiffeners", "add $1 more $2", nil},
	{"throw|toss|chuck|pop|stick|slip|drop|bring|pull|move|shove|jam|slam|tuck|park|ram|stuff|wedge|fling|draw|sneak another !rail|board|slat|plank|post|stiffener|rails|boards|slats|planks|posts|stiffeners in", "add another $1", nil},
	{"throw|toss|chuck|pop|stick|slip|drop|bring|pull|move|shove|jam|slam|tuck|park|ram|stuff|wedge|fling|draw|sneak ## more !rail|board|slat|plank|post|stiffener|rails|boards|slats|planks|posts|stiffeners in", "add $1 more $2", nil},
	// What is stacked, and what is where.
	{"i|we (am|are) stacking|hanging|running|putting|fixing|mounting ?up|in ## of them", "$1 rails", ofThisWall},
	{"drop|lower|raise|lift|bring|let|put|set|shift|move ?that|this low|lowest|bottom RAIL ?right ?down|up so|until|till ?that it is|sits|ends ?up ?only|just|exactly ?at # off|above|over|from|clear GROUND|FLOOR|ground|floor", "the bottom gap is $1", nil},
	{"keep|stop|prevent ?any ?single|one !LENQ from going|getting|running|coming|being|reaching ?out|up past|over|above|beyond|(wider than)|(longer than)|(bigger than)|(higher than)|(taller than) #", "$1 no more than $2", nil},
	{"wall|halfwall|screen that|which ?will|would|should|shall ?(have to) reaches|goes|stands|rises|comes|reach|go|stand|rise|come ?up ?to #", "wall $1 high", heightFigure},
	{"there is|are # of empty|clear|open|free space|room|air|daylight between them", "the span is $1", afterEndPosts},
	{"# of daylight|sunlight|(clear (space|air|room))|(open (space|air))|(free (space|air)) between end posts", "the span is $1", nil},
	{"from ?one ?end|side post ?over|across|through|along to other ?one|post|side|end", "between the end posts", clearBehind},
	{"clear|open|free width|distance|space|run|length ?from post|(end post) to post|(end post)", "the span", nil},
	{"!WALL ?'s|is|are finishing|ending|topping|stopping|landing|coming ?up|out|off ?at|on #", "$1 height is $2", nil},
	{"!first|second|third|fourth|fifth|sixth|seventh rail|board|slat|plank ?up|counting|counted from bottom|floor|ground|slab", "$1 rail", figureToCome},
	{"!(# ?s) space|spaces add|adds up", "$1 spaces , is that right ?", nil},
	// Prices and money.
	{"?the sign|tag|sticker|label|ticket|shelf|website|flyer|catalog|catalogue says|reads|shows|has|gives ?me £ for|on ?one|each", "i pay $1 for", nil},
	{"a|per|for|the box|tub|pack|packet|bag|carton|bucket|pail|jar of 100|(one hundred)|hundred", "per hundred", moneyOrScrews},
	{"?the|an|my|our estimate|quote|bid|quotation|bill|invoice ?that i|we got|have|received|(was given)|(were given)|(have (got|here|received)) is|was|says|reads|(came (in|back) at)|(comes (in|back) at)|(came to)|(ran to) £", "the quote comes to $1 dollars", nil},
	{"a couple of extra|more|spare|further boards|rails|lengths|planks , ?let ?us say|(that is)|meaning|so|(call it) ?about ## spare|spares|extra", "$1 spare boards", nil},
	{"# is all|most ?of ?the money|cash|dosh ?that i|we|they can|could|want|wish|am|are|will|dare ?(able|willing|allowed|prepared) ?to put|spend|lay|sink|spare|find|scrape ?out|up|together ?into|on|for|toward|towards ?the|this materials|material|it|lumber|timber|wood|job|wall|this", "the budget is $1 dollars", nil},
}

// everydayEarly are turns that other phrases lean on.
var everydayEarly = []phrase.Placed{
	{"what is|'s ?the reason|cause ?that|why|for !LENQ|COUNTQ can not|never", "why can not $1", nil},
	{"step by step|(one step at a time)|slowly how", "how", nil},
	{"if you ?(can|do|are to) believe|trust|(listen to)|ask him|her|them|(the|his|her|their PAPER|PERSON) ,", "he says", figureToCome},
	{", can|could|may|might he|she|they ?(get away with) do|have|manage that|this|it|so $$", ", is that right ?", figuresBefore},
	{"out of # ,|;|and add|plus|now # ?too|(as well) $$", "out of $1 . they have $2 too", nil},
	{"?, ?and|then|so shove|push|slide|jam|butt|tuck|snug|ram|stick|slam|shift ?it ?right|hard|tight|all|close ?(the way) ?up|over ?up against|to|beside !left|right ?hand ?- ?hand ?end ?post|side|end|wall", ", the opening is on the $1", openingLast},
	// Notes: "gap 2 3/8 s/b 2 1/8", "w/ 2nd option", "gap if 5 rails?".
	{"s / b", ", no ,", figuresBefore},
	{"chg", "change", nil},
	{", ?it was # $$", "", figuresBefore},
	{"then|, wh \\?", ", what is the wall height ?", nil},
	{"not under|below|(less than) # ,|and not over|above|(more than) #", "at least $1 and at most $2", nil},
	{"!ASKED if|with|at|for ## RAIL|boards ?\\?", "what would the $1 be with $2 rails", alone},
	{"^^ ?these|here ?are|is my|our own figures|numbers|measurements|sizes ?are ?now :|,|;", "", figureToCome},
	{"^ ?my|our|the|this patio|slab|porch|terrace|deck|floor|concrete|yard|ground slopes|tilts|falls|drops|runs|dips ?away|down|off ?a little|bit|touch|hair|slightly|somewhat ,|:|;|- ?so|and|because", "", figureToCome},
	{"for safety|looks|appearance|neatness|strength|sanity|peace|heaven|goodness|pity|baby|dog|cat|kids|children|toddler|neighbors|PERSON 's sake ?,", "", figureToCome},
	{"^ ?so|ok|well|(hi there) ?, i|we have ?now|finally|both|all decided|agreed|settled|concluded that", "", figureToCome},
	// What is put beside what was said.
	{", i|we would have guessed|expected|thought|said|figured ?on ?far fewer|more|less|bigger|smaller|wider|narrower|taller|lower|otherwise $$", "", nil},
	{"ignore|disregard|(never mind) what|whatever he|she|they|PERSON drew|wrote|sketched|planned ,|and|.|; ?just", "", tableBehind},
	{"leaving|putting|setting his|her|their|the !(## RAIL|boards) aside|(to one side)|(out of it) ,", "", moreBehind},
	{"nah|nope|no|wait|actually|(scratch that)|(no wait) call|make|say it|that #", ", no , $1", figuresBefore},
	{"scratch|scrap|strike|nix that !(one and (a|one|three|five|seven) (half|quarter|eighth|quarters|eighths|sixteenths))", ", no , $1", figuresBefore},
	{"^^ nope|no|nah ?, ?nope|no|nah ?, that is|'s ?all wrong|off|(not right)|(not it) ?,|.|;|-", "", figureToCome},
	{"his|her|their !LENQ is ?all wrong|off|(no good)|(not right)|mistaken ,|.|; it has|must|should|needs|ought ?to be # $$", "$1 is $2", nil},
	// Money, and what is bought.
	{"do not|never let it|things|total|bill|cost|price|lot ?ever go|run|get|come|climb ?up ?to over|past|above|beyond \\$ ##", "the budget is $1 dollars", nil},
	{"do not|never let it|things|total|bill|cost|price|lot ?ever go|run|get|come|climb ?up ?to over|past|above|beyond ## bucks|dollars", "the budget is $1 dollars", nil},
	{"he|she|they|PERSON ?has|have|had ?just ordered|bought|((want|wants|told|tells|tell) (me|us) to (buy|get|order))|((picked|put) (up|down))", "they say we need", askedIfRight},
	{", is|was|would that|it ?be right|correct|proper number|count|amount|quantity ?\\? $$", ", is that right ?", nil},
	{"which|what lumber|wood|boards|timber|material|materials has|have|needs|need|must|should ?to go|be|end ?up in|on cart|trolley|truck|basket|order ?\\?", "what do i need to buy", nil},
	{"use|using|waste|wasting as little lumber|wood|timber|material as (you|we|i can)|possible", "least waste", nil},
	{"least|less|fewest|lowest scrap|waste|offcuts wins ,|.|; ?so", "", moreBehind},
	// Where it stands, and how wide it is.
	{"there is|are # of clear|open|free|empty width|space|room|distance|run inside|within|between ?two|both end posts", "the span is $1", nil},
	{"with|leaving # of empty|clear|open|free space|room|air|daylight between them", ", the span is $1", afterEndPosts},
	{"# ?up from terrace|patio|floor|deck|ground|slab|concrete to top of WALL", "the wall is $1 high", nil},
	{"where people|folks|you|we|they|everybody walk|go|pass|come|get through ?i|we ?need|want|(must have) ?at ?least # ?clear|wide|free ,|and not|never hair|inch|smidgen|bit|fraction less", "the opening is at least $1", nil},
	{"would be|look|sit|work nicer|better|best|happier|handier|good|great !(against|by|beside|at|on|(next to)) ?the !left|right", "should be $1 the $2", openingLast},
	{"i|we would be ?so|very|most|ever grateful|thankful|obliged|glad|pleased if it|they could|would|can ?please be", "it should be", nil},
	{"wheelbarrow|wheelchair|mower|stroller|pram|barrow|cart|trolley|bike needs|wants|requires|takes !opening|doorway|gate|gateway|walkway|(walk through)|(walk - through) of", "$1 is", figureToCome},
	{"post|posts quits|dies|peters|conks ?out|off #", "post ends $1", nil},
	{"post|posts ?has|have|had got|was|were|is|are|been chopped|sawn|sawed|lopped|trimmed|hacked ?off|down to|at #", "post was cut to $1", nil},
	{"nail|screw|tack|fasten|pin ?me ## STIFF on|to|onto|across|in each|every panel|bay|section", "$1 stiffeners", nil},
	{"clear|open|free space|distance|room|width of # from|between", "a gap of $1 from", railsBehind},
	{"stack|hang|run|fit|mount ?me|up ## of them in every|each bay|section|panel", "$1 rails", nil},
	{"# of daylight|air|space|room between one|each RAIL|boards and ?the next|other|another", "gap $1", nil},
	{"what|how will|would|does|do|might ?all that|it|this do|mean to|for|with !LENQ", ", what is $1 ?", figuresBefore},
	{"each of gaps|spaces", "the gap", nil},
	{"by time|when that|you|we|it get|gets|reach|reaches|are|is ?to|at !left|right", "to the $1", figuresBefore},
	{"along|together with ?total|whole|full price|cost|bill", "and the cost", nil},
	{"list materials|lumber|boards|wood ?needed for me", "show me the shopping list", nil},
	{"read|call|tell|give ?me off|out where ?all RAIL|boards land|lands|sit|sits|go|goes", "read me the marks", nil},
	{"i|we would rather|sooner ?work|talk|think|go|speak in METRICS ?(than (inches|feet|imperial))", "use metric", nil},
	{"he|she|they|it left out|forgot|missed|omitted brackets ,|. ?and they|these are # thick", "the brackets are $1 thick", nil},
	{"i|we do not need|want|care to know|hear|see why|how ,|;|. ?but ?just|only", "", moreBehind},
	// Whose word it is, and what takes the place of what.
	{"whoever drew|made|designed|planned|sketched this|that|it|PAPER", "the drawing", figureToCome},
	{"according to ?(the|his|her|our|my) PERSON ?'s note|notes|sheet|sketch|figures|message|text ,", "according to the drawing", nil},
	{"^^ scratch|scrap|strike|nix ?that # ,|;|.", "", figureToCome},
	{"!LENQ (need not)|(does not (need|have) to) be # ?wide|high|tall|long|apart ,|;|. ?so|and ?(let us) make it # $$", "$1 is $3", nil},
	{"i|we (am|are) showing|reading|seeing #", "it is $1", phrase.EndsLine},
	{"# ?'s|is skinniest|narrowest|smallest|least|lowest|tightest|shortest ?that i|we will|would|can ?ever go|take|have|accept|(put up with) on|for|in !LENQ", "$2 at least $1", nil},
	{"# ?'s|is widest|biggest|most|highest|tallest|longest|largest ?that i|we will|would|can ?ever go|take|have|accept|(put up with) on|for|in !LENQ", "$2 at most $1", nil},
	{"# btwn|betw", "gap $1", phrase.EndsLine},
	{"who came up with|picked|chose|(decided on)|(settled on) # for|on !LENQ ?, ?and ?how|why", "why $2", phrase.EndsLine},
	{"would it|that ?still|also|even work|fit|do|go|hold ?up with !LENQ at|being|of|set ?(to) # ?\\?", "what if $1 is $2", phrase.EndsLine},
	// Questions and orders.
	{"is|was there anything|something|(any reason)|(a reason) that|which|why|to keeps|stops|prevents|holds|keep|stop|prevent us|me|you ?back from dropping|going|getting|having|using|doing|running ?down|up ?to ## RAIL|boards ?\\?", "why can not we have $1 rails", nil},
	{"how many !RAIL|boards you|ya figure|reckon|think|guess that|it|this|we takes|take|needs|need", "how many $1 do we need", nil},
	{"how close|tight|near can|could|may i|we|you get|put|set|run|go|bring|hang ?RAIL|boards|them ?together before|till|until ?them|these|those brackets ?start|begin|will ?to hitting|hit|touching|touch|clashing|clash|fouling|foul|meeting|meet|colliding|collide", "what is the bracket clearance", nil},
	{"what can|could|might|may go wrong ?here ?(with (this|that|it)) ?(that (i|we) (should|ought to|need to|have to) (know|(watch|look) ?out) ?about|for|of)", "what should i be careful of", nil},
	{"?is ?there anything i|we should|ought|need|have|must ?to be scared|afraid|frightened|worried|nervous|careful|wary of|about ?on|with ?this|the ?job|wall", "what should i be careful of", nil},
	{"if everything|(every cut)|(each cut)|(all the cuts) ?i|we ?cut|make|saw is|are|comes|come # out|off ?(of true)", "if each is off $1", nil},
	{"never mind|forget|scrap|scratch|drop|disregard|ignore what i|we read|measured|took|got ?off|out for|at|on", "forget the measurement of", nil},
	{"put|set|bring|switch|change that ?last one|change|thing back", "undo that", clauseEnds},
	{"^^ ?ok|yeah|yes ?, that|this ?last one|try|version|idea|change|trial|layout makes|is|was|looks|works ?just|all|really|quite sense|fine|good|great|nice|ok|perfect|right ?((by|with|for) (me|us)) ,|.|; ?so ?(let us) keep|use|take it|that|this ?one", "take that", nil},
	{"deck|decking|exterior|outdoor|stainless|galvanized|structural|timber|coated|construction !screws", "$1", nil},
	{"no|skip|(never mind) ?the|a drawing|picture|sketch|diagram ?, just|only ?give|show ?me the", "the", phrase.StartsClause},
	{"?, is|are that|this|it|they ?just about|roughly|(more or less)|(close to)|(in line with) what you ?would ?also ((come|came) up with)|get|got|make|have|figure|reckon ?it ?too|(as well) $$", ", is that right ?", nil},
}

// heightFigure: the figure is told to be above something, or ends its clause.
func heightFigure(_, after []scan.Atom) bool {
	return len(after) == 0 || after[0].Kind == scan.Sign || after[0].Text == "above" || after[0].Text == "off" || after[0].Text == "from" || after[0].Text == "over"
}

// afterEndPosts: the two end posts were spoken of just before.
func afterEndPosts(before, _ []scan.Atom) bool {
	for i := len(before) - 1; i > 0; i-- {
		if before[i].Text == "posts" {
			switch before[i-1].Text {
			case "end", "two", "both", "the", "outer", "outside":
				return true
			}
		}
	}
	return false
}

// clearBehind: so much clear space was told before.
func clearBehind(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "daylight" || a.Text == "clear" || a.Text == "space" || a.Text == "room" || a.Text == "air"
	})
}

// openingLast: the opening was spoken of last.
func openingLast(before, _ []scan.Atom) bool {
	for i := len(before) - 1; i >= 0; i-- {
		switch before[i].Text {
		case "opening", "doorway", "gate", "gateway", "entrance", "through", "walkthrough", "door":
			return true
		case "post", "posts", "rail", "rails", "board", "boards", "stiffener", "wall":
			return false
		}
	}
	return false
}

// ofThisWall: the clause ends, goes on with an "and", or tells that it is so in each bay.
func ofThisWall(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text == "and" || after[0].Text == "per" || len(after) > 1 && after[0].Text == "in" && (after[1].Text == "each" || after[1].Text == "every" || after[1].Text == "a")
}

// alone: nothing stands before it or behind it.
func alone(before, after []scan.Atom) bool {
	return len(before) == 0 && (len(after) == 0 || len(after) == 1 && after[0].Kind == scan.Sign)
}

// moreBehind: the sentence goes on.
func moreBehind(_, after []scan.Atom) bool { return len(after) > 2 }

// tableBehind: a question, or a call for a table, follows.
func tableBehind(_, after []scan.Atom) bool { return len(after) > 1 && AsksNext[after[0].Text] }

// askedIfRight: whether it is right is asked behind it.
func askedIfRight(_, after []scan.Atom) bool {
	return chunk.Figured(after) && phrase.SaidBeforeOf(scan.WordSet("that"))(after, nil) && phrase.SaidBeforeOf(scan.WordSet("right correct enough"))(after, nil)
}

func figuresBefore(before, _ []scan.Atom) bool { return chunk.Figured(before) }

// railsBehind: the space is told to be between rails.
func railsBehind(_, after []scan.Atom) bool {
	return len(after) > 1 && phrase.SaidBeforeOf(scan.WordSet("slat slats rail rails board boards plank planks next"))(after[:min(len(after), 6)], nil)
}

func figureToCome(_, after []scan.Atom) bool { return chunk.Figured(after) }

// moneyOrScrews: a price stands just before.
func moneyOrScrews(before, _ []scan.Atom) bool {
	n := len(before)
	return n > 1 && (before[n-1].Kind == scan.Digits || before[n-1].Text == "dollars" || before[n-1].Text == "bucks")
}
