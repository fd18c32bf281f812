package idiom

import (
	"slices"
	"strconv"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// whichRail is one of the rails.
const whichRail = `(RAIL ##)|(RAIL number ##)|((first|second|third|fourth|fifth|sixth|seventh|eighth|1st|2nd|3rd|4th|5th|6th|7th|8th|bottom|lowest|top) RAIL)`

// stackedTurns are further ways to speak of what stacks up: how high, how many, how close and how even, and of what size the rails are.
var stackedTurns = []phrase.Placed{
	// How high.
	{"^ since|because|as|seeing my|our|the|his|her|their _ ?_ is|sits|stands|comes|runs|tops ?up ?out ?at|to|on # ?HIGH|tall ?, ?so ?then WALL|this|that|it should|must|has|needs|ought|wants ?to match|agree|follow|(line up)|(be (the same|level|flush)) ?with ?that|it ?too ?, ?so ?make ?it # ?HIGH|tall", "wall height $2", noDoubtBefore},
	{"^ since|because|as|seeing my|our|the _ ?_ is|sits|stands|comes|runs|tops ?up ?out ?at|to|on # ?HIGH|tall ?, ?so ?then WALL|this|that|it should|must|has|needs|ought|wants ?to match|agree|(line up)|(be (the same|level|flush)) ?with ?that|it ?too $", "wall height $1", noDoubtBefore},
	{"make|have|build|run|take|carry it|her|er|him|'er # ?HIGH ?even ?right|all|clear ?way ?up to very|the top $", "wall height $1", phrase.StartsClause},
	{"from FLOOR ?right|all|clear|straight ?way ?up to very top ?edge ?, ?it ?is|=|: #", "wall height $1", noPartsBefore},
	{"# from FLOOR ?right|all|clear|straight ?way ?up to very top ?edge $", "wall height $1", noPartsBefore},
	{"^ i|we ?have measured|measure|taped|tape|went|go ?straight|right ?up from FLOOR ?up ,|and|; !(top|wall|BOTTOM)", "$1", figureFollows},
	{"elevation|elev at|of|on|to top ?edge ?of ?the ?top RAIL|WALL ?is|at|:|=|, #", "wall height $1", noDoubtBefore},
	{"top ?of RAIL|WALL elevation|elev|el ?is|at|:|= #", "wall height $1", noDoubtBefore},
	{"let (us|me) run|take|carry|bring|build|put|have|do|go it|her|this|that|'er # !HIGH", "make it $1 $2", phrase.StartsClause},
	{"^ ?it|this|that|they does|need not ?have|need ?to be ?so ?dead|bang|spot|right|quite on|exact|perfect|precise|accurate|(to the (inch|hair|mm|millimeter)) ?, but ?make|keep|have|want !LENQ ?'s|is|at # ?HIGH|wide ?(give or take)|(or so)|ish|(or thereabouts)|roughly", "$1 about $2", noDoubtBefore},
	{"(do not)|never ?ever let top ?edge ?(of (it|WALL)) drop|fall|go|get|dip|come|sink|sag|end ?up|down below|under|(lower than)|(less than) #", "wall height at least $1", phrase.StartsClause},
	{"(do not)|never ?ever let top ?edge ?(of (it|WALL)) rise|climb|creep|go|get|come|run|end ?up over|above|past|beyond|(higher than)|(more than) #", "wall height at most $1", phrase.StartsClause},
	{"top|cap|stop|max|end|finish|hold|keep it|that|her|things ?out|off|up ?at|to !(wall height|LENQ) !(at (most|least)) #", "$1 $2 $3", phrase.StartsClause},
	{"?, ?and|as|because|since that|this|it is ?what ?the|a|an|our|my rule|law|limit|ordinance|bylaw|covenant|restriction|requirement|(rules (say|call for)) ?here|(around|round here)|((on|in|for|of) (my|our|this|the) (street|block|town|city|county|neighborhood|village|place|lane|road|subdivision|development|association))", "", ruleBehind},
	{"^ so ?that|(in order that) !(it|she|he|they|we|i|((the|my|our) *)) !(hides|hide|covers|cover|screens|screen|blocks|block|clears|clear|meets|meet|matches|match|meet|reaches|reach|stays|stay|drains|drain|dries|dry|lines|line|fits|fit|swings|swing|shuts|shut|misses|miss|shades|shade) * !(make|set|keep|have|build|put|hold|leave|hang|run|raise|mount) !(LENQ|BOTTOM|RAIL|BRACKET|POST|ADDED)", "$3 $4", figureFollows},
	{"^ so ?that|(in order that) !(it|she|he|they|we|i|((the|my|our) *)) !(hides|hide|covers|cover|screens|screen|blocks|block|clears|clear|meets|meet|matches|match|reaches|reach|lines|line) * !((top of RAIL ##)|((top of) (" + whichRail + "))|((top of) WALL))", "$3", figureFollows},
	{"^ so ?that|(in order that) ?the|my|our ?end grain|wood|lumber|post|bottom|end|foot stays|keeps|is|remains|sits|drains|dries ?nice|good|well|up ?and dry|clear|fresh|out|(off (the ground|the floor)|(out of (the wet|water))) ?, !(base|post|ADDED|BOTTOM)", "$1", nil},
	{"could|can|would|might WALL|HEIGHT ?of ?WALL go|come|rise|be|get ?built ?up another|(an extra)|(a further) # ?higher|taller|more|up", "what if the wall is $1 higher", phrase.StartsClause},
	{"WALL|wallheight h ?is|=|:|at #", "wall height $1", noDoubtBefore},
	{"WALL|wallheight h|ht|hgt ?is|=|:|at !(approx|about|around|roughly|at|min|max|over|under|~) #", "wall height $1 $2", noDoubtBefore},
	// How many.
	{"stack|pile ?me ## of them|those|these|em ?up ?in|into|to ?each|every|a|per BAY", "$1 rails per bay", stackBegun},
	{"run|hang|put|set|nail|screw ?me ## of them|those|these|em up each|every|a|per BAY", "$1 rails per bay", stackBegun},
	{"it|that|this takes|needs|wants ## RAIL ?high ?to fill|cover|close|build|(make up)|do ?up|in|out ?each|every|one|a|per BAY", "$1 rails per bay", noDoubtBefore},
	{"## ?RAIL fill|fills|cover|covers ?up|in|out each|every|one|a BAY", "$1 rails per bay", noDoubtBefore},
	// Of what size, and how wide the face.
	{"?these|those|the|my|our RAIL is|are|came ?all ?still|pretty|kinda|real|very|fairly wet|damp|green|soaked|swollen|fresh|dry ?, ?and ?so they|it ?is|are ?all ?now|right|actually running|coming|measuring|taping|reading ?in|out ?at # ?wide|across", "rails measure $1 wide", oursBefore},
	{"?my|our|these|those RAIL came|come|comes|went ?back ?out|off|from ?of planer|jointer|mill|saw|tablesaw|sander|kiln|drum|thicknesser|sawmill ?at|measuring|to|reading # ?wide|across", "rails measure $1 wide", oursBefore},
	{"^ they|boards|they've ?have ?all ?really shrank|shrunk|swelled|swollen ?up|some|bit ?, ?so|and|now RAIL ?now is|are|measure|'re ?only|just|now|now only ?at # ?wide ?now|across", "rails measure $1 wide", noDoubtBefore},
	// How far apart.
	{"space|spread|lay|set RAIL ?all out at|to|with|by # ?apart|clear|between|gaps", "gap $1", noMoreNext},
	{"spread|space|lay RAIL ?all ?out # apart|(from one another)|(from each other)", "gap $1", noMoreNext},
	{"leave|leaving|(i want) ?the|a @ ?laid|stood|stand|standing ?on|its edge|flat|side|face ?'s worth|thickness ?of ?space|gap|room ?between ?them|RAIL ?, ?so|and|(that is)|(which is)|(that makes) # gaps|gap|spaces|spacing", "gap $2", noDoubtBefore},
	{"reveal|reveals ?that|which i|we ?would want|like|need|prefer|(am after)|(are after)|(have in mind) ?(in between)|between ?the ?RAIL|them", "the gap", noOpeningBefore},
	{"reveal|reveals ?(in between)|between RAIL", "gap", noOpeningBefore},
	{"!RAIL sit|sits|stand|go|are|hang|run|set|lie # apart|(from each other)|(from one another) ?, ?with|and ## of them|those|these ?in ?each|every|a|the ?BAY", "gap $2 , $3 rails", noDoubtBefore},
	{"^ RAIL at|\\@ # clear|spacing|spaced|(clear between)", "gap $1", noDoubtBefore},
	{"anything|anyplace|anywhere|whatever ?that|is !(below|under|over|above|(less than)|(more than)|(smaller than)|(bigger than)|(up to)|(at least)|(at most)|(no more than)|(no less than)) # for|on|with|as !LENQ is|will|would|does|should ?be ?just ?do ?just ?perfectly fine|ok|okay|good|great|alright|acceptable|do|suits|works|work ?with|by|for ?me|us", "$3 $1 $2", noDoubtBefore},
	{"anything|anyplace|anywhere|whatever ?that|is !(below|under|over|above|(less than)|(more than)|(smaller than)|(bigger than)|(up to)|(at least)|(at most)|(no more than)|(no less than)) # is|will|would|does|should ?be ?just ?do ?just ?perfectly fine|ok|okay|good|great|alright|acceptable|do|suits|works|work ?with|by ?me|us for|on|with|as !LENQ", "$3 $1 $2", noDoubtBefore},
	{"toe|kick ?- gap|gaps|space|kick|room|clearance ?is|of|:|=|at #", "bottom gap $1", noDoubtBefore},
	{"for|to ?suit|let ?the|my|our|his|her|a leaf|shop|snow|robot|wet blower|vac|vacuum|shovel|broom|mower|rake ?to ?(get|go|pass|fit|reach|blow) ?under|underneath|through|in|there", "", afterFigure},
	{"treat|handle|do|make|set|keep BOTTOM|floor|lower GAP ?just ?exactly like|as|same|(same as)|(the same as)|(no different than)|(no different from) ?you ?do ?every|any|all|each|the|of ?the ?other|others|rest|ones ?gap|gaps|space|spaces ?between", "the bottom gap is the same as the gap", phrase.StartsClause},
	{"start|begin|come|lift|raise|set ?it|them|(BOTTOM RAIL) ?up off|from|above FLOOR ?up with|by|at same GAP ?that|as|which ?you|we|i|they ?use|have|put|leave|get|is|are BETWEEN RAIL|them|others", "the bottom gap is the same as the gap", phrase.StartsClause},
	{"GAP|gap UNDER BOTTOM RAIL|one (is not)|(is no)|(ai not)|aint|ain't ?any|no ?to ?be different|bigger|wider from|than|to others|rest|gaps|spaces|(other (ones|gaps|spaces)) ?, ?so ?and ?just ?keep|make|leave|have|hold ?it|that|them ?all ?the ?same", "the bottom gap is the same as the gap", noDoubtBefore},
	{"let|have|make BOTTOM|floor|lower GAP ?to follow|track|copy|mirror|echo|match|mimic|repeat|equal ?whatever ?the ?other ?rest ?of ?the gap|gaps|spacing|others|spaces ?is|are ?above|between|rails", "the bottom gap is the same as the gap", phrase.StartsClause},
	// How even.
	{"?i|we ?would (do not)|(not) want|like|need|care|have one|any|a|single|some ?GAP ?of ?them ?to ?be ?come ?out ?any fatter|bigger|wider|larger|tighter|smaller|narrower|skinnier|different than|from|then another|(any other)|other|next|rest|others ?one|GAP", "even gaps", plainWish},
	{"(no one)|no|none ?of ?the GAP ?should|may|must|can|is ?to ?be ?come ?out fatter|bigger|wider|larger|tighter|smaller|narrower|skinnier|different than|from another|(any other)|other|next|rest|others ?one|GAP", "even gaps", plainWish},
	{"(do not)|never ?ever let ?the ?any ?of ?that rounding|error|errors|slop|remainder ?error|errors ?all ?go ?get ?and pile|piled|build|built|add|creep|collect|gather|land|end|go|stack|run|fall|bunch ?up ?in|into|on|at ?the one|a|any|single|last|top|bottom|same|just ?one ?single GAP|spot|place|mark|gap|end", "even gaps", plainWish},
	{"?the gaps|spaces|spacing|gap ?BETWEEN ?RAIL should|must|will|ought|need|have|are|has ?to ?all ?be|come|look|stay|end ?up|out ?exactly|all ?the same|equal|even|alike|uniform|identical , !please|(thank you)|thanks", "even gaps , $1", plainWish},
	{"make|have|get|let|keep|want ?all ?of GAP|spacing ?in BETWEEN RAIL ?all|to come|turn|work|end ?up|out even|equal|same|alike|uniform|identical", "even gaps", plainWish},
	{"no odd|uneven|fat|skinny|leftover|oddball|weird|funny|unequal GAP|gaps ?anywhere ?left ?over ?at ?the ?very ?top|bottom|end|ends ?, ?so ?and ?just ?keep|make|have|leave them|(em)|everything|it ?all uniform|even|equal|same|alike|identical", "even gaps", plainWish},
	{"no odd|uneven|oddball|unequal GAP|gaps ?anywhere ?left ?over ?at ?the ?very ?top|bottom|end|ends $", "even gaps", plainWish},
	{"## evenly|equally|uniformly spaced !RAIL", "$1 $2 , even gaps", plainWish},
	{"evenly|equally|uniformly spaced RAIL", "even gaps", plainWish},
	{"RAIL evenly|equally|uniformly spaced", "even gaps", noCountBefore},
	{"## !RAIL ?all evenly|equally|uniformly spaced|spread|distributed ?out|apart", "$1 $2 , even gaps", plainWish},
	{"spread|distribute|space|arrange|lay|set|divide ?out ?all ?of RAIL ?out|up ?all evenly|equally|uniformly", "even gaps", plainWish},
	// As close, as few and as many as can be.
	{"?can|could|may|might|pack|put|set|space|squeeze|hang|mount|push|place|crowd|get ?all ?the|my|our RAIL ?be|go|sit|stand|hang|get ?put|set|placed|spaced|hung ?just as near|close|tight ?to ?together ?as|(one another)|(each other) ?as (is possible)|possible|(they (can|will|could) [be|go|get])|((you|we|i) can [get|put|set] ?them)", "smallest gap", noDoubtBefore},
	{"find|get|pick|give|choose ?me|us ?please ?the smallest|tightest|narrowest ?possible GAP ?between ?RAIL ?that|which (fits|works|goes|(will|can) fit|work|go)", "smallest gap", orderedPlainly},
	{"find|get|pick|choose ?me|us ?please ?the fewest|(least (number of))|(smallest number of) ?possible RAIL ?that|which (fit|work|does|fits|works|do|(will|can) fit|work|do)", "fewest rails", orderedPlainly},
	{"?find|get|pick|choose|use|with|have|put ?me|us|in ?please ?the most ?possible RAIL ?that|which (fit|work|fits|works|(will|can) fit|work|go)", "most rails", plainWish},
	{"use|take|have|buy|put|run|hang|with|make|do ?it ?with ?in ?up ?the least ?number|amount ?of RAIL ?that ?(you|we|i|it) ?possibly can|possible ?get|make|do|manage ?away|by|it ?with", "fewest rails", plainWish},
	{"cram|pack|pile|load|jam|stuff|squeeze|fit|put|get|shove|stick|wedge|use ?in|up all|(every [single|last]) ?of RAIL ?that you|we|i|it|they|one ?possibly can|could|will ?possibly ?fit|hold|take|get|go|use|cram|squeeze ?in ?there|it", "most rails", plainWish},
	{"cram|pack|pile|load|jam|stuff|squeeze|fit|put|get|shove|stick|wedge ?in|up all|(every [single|last]) ?of RAIL ?that (there is)|(there 's) ?any room|space for", "most rails", plainWish},
	{"cram|pack|pile|load|jam|stuff|squeeze|fit|put|get|shove|stick|wedge ?in|up all|(every [single|last]) ?of RAIL that fit|fits|(will fit)|(can fit)|(will go) ?in ?there", "most rails", plainWish},
	// Where one of them is.
	{"make|have|let|get|put ?the !(" + whichRail + ") ?' 's|s top ?edge ?to fall|land|hit|strike|come|sit|be|end|finish|go ?up|out|in ?at|on #", "top of $1 at $4", phrase.StartsClause},
	{"!(" + whichRail + ") ?' 's|s top ?edge falls|lands|hits|strikes ?right ?at|on #", "top of $1 at $4", noDoubtBefore},
	{"^ ?i|we|have|they|we've ?have ?have ?already ?have ?got|have|put|hung !(" + whichRail + ") ?already ?up ?there ?on|to|at|in ?the ?WALL|place|posts|there ?already ,|and ?and ?the ?its top ?edge ?(of (it|that)) ?'s|is|comes|sits|at ?at|to #", "$1 is already up , its top is at $4", alreadyTold},
}

// noPartsBefore: nothing was named before it of which the figure might be, and nothing is doubted.
func noPartsBefore(before, after []scan.Atom) bool {
	if !noDoubtBefore(before, after) || len(after) > 0 && (after[0].Text == "of" || after[0].Text == "edge") {
		return false
	}
	return !phrase.SaidBeforeOf(otherParts)(before, nil)
}

// stackBegun: an order begins with it, and no part but rails was spoken of.
func stackBegun(before, after []scan.Atom) bool {
	return phrase.StartsClause(before, after) && railsOnly(before, after) && !slices.ContainsFunc(before, func(a scan.Atom) bool { return chunk.IsClass(a.Text, "STIFF") })
}

// oursBefore: nothing is doubted, and the boards are not those of others.
func oursBefore(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && !phrase.SaidBeforeOf(othersSay)(before, nil)
}

// orderedPlainly: an order begins with it, and nothing is asked.
func orderedPlainly(before, after []scan.Atom) bool {
	return phrase.StartsClause(before, after) && plainWish(before, after)
}

// ruleBehind: a figure was told before it, and a clause ends behind it.
func ruleBehind(before, after []scan.Atom) bool {
	return figureStands(before, after) && phrase.EndsClause(before, after)
}

// eitherNext are two counts next to each other of which either will do, and so a range: of "five or eight" either may do, and six would not.
var eitherNext = func() (out []phrase.Placed) {
	counts := strings.Fields("two three four five six seven eight nine ten eleven twelve")
	for i, n := range counts[:len(counts)-1] {
		low, high := n+"|"+strconv.Itoa(i+2), counts[i+1]+"|"+strconv.Itoa(i+3)
		out = append(out, phrase.Placed{"!" + low + " or !" + high + " !(RAIL|STIFF|bays|([ADDED] posts)) ?, ?and|but either|both|any ?one|way|number|count ?(of (them|those)) ?'s|is|are|will|would|does ?be|do ?just fine|good|ok|okay|alright|great|works|work|do|suits|suit|acceptable ?with|by|for ?me|us", "from $1 to $2 $3", noDoubtBefore}, phrase.Placed{"either !" + low + " or !" + high + " !(RAIL|STIFF|bays|([ADDED] posts)) 's|is|are|will|would|does ?be|do ?just fine|good|ok|okay|alright|great|do|suits|acceptable ?with|by|for ?me|us", "from $1 to $2 $3", noDoubtBefore})
	}
	return out
}()

// afterFigure: a figure was told before it, a clause ends behind it, and nothing is asked.
func afterFigure(before, after []scan.Atom) bool {
	return figureStands(before, after) && phrase.EndsClause(before, after) && noDoubtBefore(before, after)
}

// noMoreNext: the figure before it is not by how much more or less, and nothing is doubted.
func noMoreNext(before, after []scan.Atom) bool {
	if len(after) > 0 {
		switch after[0].Text {
		case "more", "less", "further", "farther", "wider", "closer", "tighter", "over", "extra", "additional", "from", "than", "longer", "percent", "%":
			return false
		}
	}
	return noDoubtBefore(before, after)
}

// noOpeningBefore: no other part was spoken of that has a reveal.
func noOpeningBefore(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && !phrase.SaidBeforeOf(scan.WordSet("opening doorway door window bracket brackets post posts bay bays"))(before, nil)
}

// noCountBefore: no count stands before it, and nothing is asked.
func noCountBefore(before, after []scan.Atom) bool {
	return plainWish(before, after) && !AmountOrCountBefore(before)
}

// AmountOrCountBefore reports whether a number stands right before a place.
func AmountOrCountBefore(before []scan.Atom) bool {
	n := len(before)
	return n > 0 && (before[n-1].Kind == scan.Digits || chunk.SpelledNumber(before[n-1].Text))
}

// alreadyTold: a word tells that it is there, and nothing is asked.
func alreadyTold(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && !asksAtEnd(after)
}
