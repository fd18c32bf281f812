package grammar

import "slices"

// spokenFresh are more turns of phrase of the site, the yard and the kitchen table, with the plain words for each.
var spokenFresh = []placedPhrase{
	// Lists that are asked for.
	{"measurements|measures|sizes|dimensions|lengths for ?the cutting ?up ?(RAIL|pieces|wood|lumber|timber|everything)", "the cut lengths", nil},
	{"^ ?and|so|then ?please list|(write (out|down))|(jot down)|name|(spell out)|(set out) ?all ?of boards|lumber|wood|timber|pieces|materials|stuff|things ?that i|we ?still|will have|need|must|want|ought ?to ?(get|buy|order|(pick up)|fetch|purchase)", "show me the shopping list", nil},
	{"?please|(could|can|would|will you) ?also ?please give|gimme me|us ?some|an ?rough|general ?idea|feel|sense|notion|inkling of|about", "tell me", nil},
	{"^^ METRICS ?please|thanks ,|:|;|-", "use metric ,", nil},
	// What is stacked, and what is where.
	{"i|we (am|are) stacking|hanging|running|putting|fixing|mounting ?up|in ## of them", "$1 rails", nil},
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
	{"?the|an|my|our estimate|quote|bid|quotation|bill|invoice ?that i|we got|have|received|(was given)|(were given)|(have (got|here|received)) is|was|says|reads £", "the quote comes to $1 dollars", nil},
	{"a couple of extra|more|spare|further boards|rails|lengths|planks , ?let ?us say|(that is)|meaning|so|(call it) ?about ## spare|spares|extra", "$1 spare boards", nil},
	{"# is all|most ?of ?the money|cash|dosh ?that i|we|they can|could|want|wish|am|are|will|dare ?(able|willing|allowed|prepared) ?to put|spend|lay|sink|spare|find|scrape ?out|up|together ?into|on|for|toward|towards ?the|this materials|material|it|lumber|timber|wood|job|wall|this", "the budget is $1 dollars", nil},
}

// spokenFreshEarly are turns that other phrases lean on.
var spokenFreshEarly = []placedPhrase{
	{"what is|'s ?the reason|cause ?that|why|for !LENQ|COUNTQ can not|never", "why can not $1", nil},
	{"step by step|(one step at a time)|slowly how", "how", nil},
	{"if you ?(can|do|are to) believe|trust|(listen to)|ask him|her|them|(the|his|her|their PAPER|PERSON) ,", "he says", figureToCome},
	{", can|could|may|might he|she|they ?(get away with) do|have|manage that|this|it|so $$", ", is that right ?", figuresBefore},
	{"out of # ,|;|and add|plus|now # ?too|(as well) $$", "out of $1 . they have $2 too", nil},
	{"?, ?and|then|so shove|push|slide|jam|butt|tuck|snug|ram|stick|slam|shift ?it ?right|hard|tight|all|close ?(the way) ?up|over ?up against|to|beside !left|right ?hand ?- ?hand ?end ?post|side|end|wall", ", the opening is on the $1", openingLast},
	{"deck|decking|exterior|outdoor|stainless|galvanized|structural|timber|coated|construction !screws", "$1", nil},
	{"?, is|are that|this|it|they ?just about|roughly|(more or less)|(close to)|(in line with) what you ?would ?also ((come|came) up with)|get|got|make|have|figure|reckon ?it ?too|(as well) $$", ", is that right ?", nil},
}

// heightFigure: the figure is told to be above something, or ends its clause.
func heightFigure(_, after []atom) bool {
	return len(after) == 0 || after[0].kind == aSign || after[0].text == "above" || after[0].text == "off" || after[0].text == "from" || after[0].text == "over"
}

// afterEndPosts: the two end posts were spoken of just before.
func afterEndPosts(before, _ []atom) bool {
	for i := len(before) - 1; i > 0; i-- {
		if before[i].text == "posts" {
			switch before[i-1].text {
			case "end", "two", "both", "the", "outer", "outside":
				return true
			}
		}
	}
	return false
}

// clearBehind: so much clear space was told before.
func clearBehind(before, _ []atom) bool {
	return figured(before) && slices.ContainsFunc(before, func(a atom) bool {
		return a.text == "daylight" || a.text == "clear" || a.text == "space" || a.text == "room" || a.text == "air"
	})
}

// openingLast: the opening was spoken of last.
func openingLast(before, _ []atom) bool {
	for i := len(before) - 1; i >= 0; i-- {
		switch before[i].text {
		case "opening", "doorway", "gate", "gateway", "entrance", "through", "walkthrough", "door":
			return true
		case "post", "posts", "rail", "rails", "board", "boards", "stiffener", "wall":
			return false
		}
	}
	return false
}

func figuresBefore(before, _ []atom) bool { return figured(before) }

func figureToCome(_, after []atom) bool { return figured(after) }

// moneyOrScrews: a price stands just before.
func moneyOrScrews(before, _ []atom) bool {
	n := len(before)
	return n > 1 && (before[n-1].kind == aDigits || before[n-1].text == "dollars" || before[n-1].text == "bucks")
}
