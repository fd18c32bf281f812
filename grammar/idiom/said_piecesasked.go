package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is asked of single pieces, of one bay, of the purse and of what would be, and what goes from one figure to another. A question for
// one piece is answered by the table that has it. Common ways of speech, no source.

var piecesAsked = []phrase.Placed{
	// Of pieces: how long they are is on the cut list.
	{"how long is|are|'s|will|should|must|shall ?the|my|our|each|every|a|those|these|that|this ?new|added|end|extra|middle post|posts|upright|uprights ?(going|supposed to)|gonna ?(have|need|has|needs to)|(to) ?be|(come out)|(end up)", "how long do i cut the posts", asksEnd},
	{"how long do|does|did ?the|my|our|each|every|a|those|these|that|this ?new|added|end|extra|middle post|posts|upright|uprights have|need|get|want|come|end|got ?out ?up ?to ?be", "how long do i cut the posts", asksEnd},
	{"what is|are|'s ?the length|lengths of|for|on ?the|my|our|each|every|a|those|these|that|this ?new|added|end|extra|middle post|posts|upright|uprights", "how long do i cut the posts", asksEnd},
	{"what is|are|'s ?the width|widths|thickness of|for|on ?the|my|our|each|every|a|those|these|that|this ?end post|posts|upright|uprights", "what size are the posts", asksEnd},
	{"what length is|are|will|should|do|does|must ?the|my|our|each|every|a|those|these|that|this ?new|added|end|extra|middle post|posts|upright|uprights ?(have|need to) ?be", "how long do i cut the posts", asksEnd},
	{"how long is|are|will|should|does ?the|my|each|every|a top|bottom|lowest|highest|longest|shortest|first|second|third|fourth|fifth|last|middle|next RAIL|one ?be|(come out) ?in|of ?bay ?one|two|three|1|2|3", "how long do i cut the rails", asksEnd},
	{"how long is|are|will|should ?the RAIL ##|one|two|three|four|five ?be ?in|of ?bay ?one|two|three|1|2|3", "how long do i cut the rails", asksEnd},
	{"how wide|thick|big|stout is|are|'s|will|should ?the|my|each|every|those|these|that|this post|posts|upright|uprights ?be", "what size are the posts", asksEnd},
	{"how wide|thick|big|stout is|are|'s|will|should ?the|my|each|every|those|these|that|this ?new|added|extra post|posts|upright|uprights ?be", "what size is the added post", asksEnd},
	{"!cuts|marks|(cut list)|(cut lengths) for|of|in bay ##|one|two|three|four", "show me the $1", asksNoFigure},
	{"!cuts|(cut list)|(cut lengths) for|of ?just ?only ?the|my ?new|added RAIL|STIFF|post|posts|upright|uprights ?(and|& [the] (RAIL|STIFF|posts|post))", "show me the $1", asksNoFigure},
	{"where is|are|does|do ?the|my first|second|third|fourth|fifth|sixth|next|last|lowest|highest|top|bottom mark|marks ?go|land|fall|sit", "where do my marks go", asksEnd},
	{"how far|wide ?(it is)|(is it) ?from !((outside to outside)|(center to center)|(face to face)|(inside to inside)|(out to out)) ?of|over|across|between ?the ?two|both ?end posts", "how wide is it $1", asksEnd},
	{"what is ?the|your reason ?that|why|(for the fact that) i|we|you|they|there ?have|has|are|is|need|take|use ?got that|so|this many !RAIL", "why that many $1", asksEnd},
	{"what !LENQ|COUNTQ do|did|would|will|does you|i|we|it obtain|calculate|compute|find|reckon|determine", "what $1 do you get", asksEnd},
	{"how many RAIL do|will|can|should|must|would i|we|you|it|they need|have|put|stack|get|take|set ?up over|above|(on top of) ?one another|(each other)|other", "how many rails", asksEnd},
	{"can|could|may|might|would !LENQ also|too|equally|((just) as well) be #", "can $1 be $2", nil},
	// What goes with a count of rails.
	{"is|are !LENQ with|for|at ## RAIL #", "is $1 $3 with $2 rails", clauseEnds},
	{"!LENQ with|for|at|of ## RAIL is|are|was|comes|works|makes ?out ?to|at #", "$1 is $3 with $2 rails", nil},
	// Of the purse.
	{"^ ?and|so|but|well ?, am|are i|we ?still ?now over|under|within|inside|above|below ?the|my|our budget", "what does it cost", asksEnd},
	{"^ ?and|so|but|well ?, is|does|will|would|can ?it|that|this|everything|((the|this|my) (wall|job|lot|plan)) ?all ?still ?be|stay|stays|come|fit|keep|remain ?in over|under|within|inside|above|below|in|into|to ?the|my|our budget", "what does it cost", asksEnd},
	{"how far|much over|under|above|below ?the|my|our budget am|are|is|would|will i|we|it|that|this ?be", "what does it cost", asksEnd},
	{"how far|much am|are|is i|we|it|that|this over|under|above|below ?the|my|our budget", "what does it cost", asksEnd},
	{"what would ?the|a @ ?RAIL cost|run ?me|us ?instead", "what if the rails were $1 , what does it cost", leadsAndEnds},
	{"cost|price|total for|with|at ?just ?only ## !RAIL ?instead", "what if $1 $2 , what does it cost", leadsAndEnds},
	{"what is|are ?the|our|my cost|price|total for|with|at ?just ?only ## !RAIL ?instead", "what if $1 $2 , what does it cost", asksEnd},
	{"cost|price of|for ?the|all ?the|my brackets|posts|lumber|wood|timber|hardware|screws|material|materials", "what does it cost", leadsAndEnds},
	{"what do|will|would ?the|my|all ?the brackets|screws|posts|anchors ?all cost|run|(come to) ?me|us in all|altogether|together|total|(all told)|(all in)", "what does it cost", asksEnd},
	{"i|we ?really ?just need|want ?for this|that|our|my WALL to", "need the wall to", nil},
	{"lay|arrange|nest|plan|set|sort|work ?out ?the|my|all cuts|pieces|(cut list)|cutting ?out|up for|with|to|at ?the least|smallest|minimum waste ?of ?lumber|wood", "least waste", clauseEnds},
	{"?, ?and have|let|make|with them|it|those|(the two) stand|rise|standing|come|go|run|sticking|stick ?up # over|above|past|(higher than)|(taller than) WALL", ", post height $1 over the wall", phrase.SaidBeforeOf(scan.WordSet("post posts upright uprights"))},
	{"^^ ?well|so between us|ourselves|(the two of us)|(you and me)|(the wife and me) ?, ?we have ?now|finally|all settled|decided|agreed on", "we have settled on", nil},
	{"knocked|kicked|pulled|yanked|threw|tossed|chucked a|one !RAIL|STIFF out|off|away", "took out one $1", inSupposition},
	{"!LENQ is|was|at # ?, ?and so is|was !LENQ", "$1 is $2 and $3 is $2", nil},
	{"nothing|none ?to ?be ?any longer|wider than # between ?the ?any ?two uprights|posts", "no bay longer than $1", nil},
	{"how much space|room|air|daylight is there ?then from one ?RAIL to ?the next|another|other|following ?one|RAIL", "what is the gap", asksEnd},
	{"!GAP ?just as small|close|narrow|tight|fine|little as you|i|we|they can|could ?possibly get|make|have|manage ?it|them", "smallest $1", clauseEnds},
	{"each|every ?single ?saw cut ?takes|costs|eats another|(a further) #", "each saw cut takes $1", nil},
	{", ?and after that|then|afterwards i|we want|(would like) to start over|again|fresh|anew ?again", ". start over", clauseEnds},
	{"a|one !RAIL|STIFF|POST !more|fewer|less ?(and|plus|but) ?, ?and a|one !RAIL|STIFF|POST !more|fewer|less", "one $1 $2 and one $3 $4", nil},
	{",|;|and ?and bottom|lower|lowest|floor one|gap as well|too|also|likewise", ", bottom gap the same", phrase.BothHold(clauseEnds, phrase.SaidBeforeOf(scan.WordSet("gap gaps spacing")))},
	{"both ?of ?the ?my gaps ?should ?is|are|be|at|to|of #", "gap $1 , bottom gap $1", nil},
	// What a rail has to spare at its ends.
	{"^ # ?of clearance|slack|play|room|wiggle|air ?at|on|to ?the both|each|either ends|end", "cut the boards $1 short at both ends", clauseEnds},
	// How many fit under a height.
	{"how many RAIL ?will|would|can|could|do ?i|we|you ?get|fit|go|have|stack|put ?in under|below|inside|within # ?high|tall", "what if the wall height is $1 , how many rails", asksEnd},
	{"how many RAIL will|would|do|can|could fit|go in|into|inside|within # ?high|tall", "what if the wall height is $1 , how many rails", asksEnd},
	{"how many RAIL fit|go|stack in|into|inside|within # ?high|tall", "what if the wall height is $1 , how many rails", asksEnd},
	// From one figure to another.
	{"closer|nearer to #", "about $1", lengthNamedBefore},
	{"tighter|smaller|narrower|wider|bigger|larger|higher|taller|shorter|looser ?down|up to #", "to $1", lengthNamedBefore},
	{"squeezes|slips|slots|sneaks ?right|just|still|even in|(in there)|(in here)", "fits", phrase.EndsClause},
}

// leadsAndEnds: it is all that is said.
func leadsAndEnds(before, after []scan.Atom) bool { return len(before) == 0 && asksEnd(before, after) }

// lengthNamedBefore: what is so large stands right before it, and nothing tells by how much it changes.
func lengthNamedBefore(before, after []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	if w == "is" || w == "be" {
		w = chunk.LastOf(before, 2)
	}
	return chunk.EndsPart(after, 0) && (chunk.IsClass(w, "GAP") || chunk.IsClass(w, "OPENING") || chunk.IsClass(w, "WALL") || chunk.IsClass(w, "BAY") || chunk.IsClass(w, "HEIGHT"))
}

// asksNoFigure: the clause ends behind it, and no figure was said before it, which may be claimed of it.
func asksNoFigure(before, after []scan.Atom) bool {
	return asksEnd(before, after) && !slices.ContainsFunc(before, func(a scan.Atom) bool { return OfFigure(a) || chunk.SpelledNumber(a.Text) })
}
