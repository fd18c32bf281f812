package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// wallPhrases are ways to say how high, how wide and how far apart things are.
var wallPhrases = []phrase.Placed{
	{"turned|turn|turns|came|come out to be", "were", nil},
	{"!RAIL come|came|end|ended out|up # !apart|high|wide|tall", "$1 are $2 $3", nil},
	{"!to|off|from|of|in|into|onto every|each !gap|space|opening|slot", "$1 the $2", nil},
	{"?the|my|our|his|her|their|a|some|an i|we|he|she|they|PERSON|ORG will|would|do|does|did|can|could not (stand for|allow|accept|put up with|hear of|go for|permit|tolerate|like|want|take|have|approve of|approve|let (me|us) (have|build)) anything !taller|higher|wider|bigger|larger|longer|lower|shorter|narrower|smaller|over|under|above|below|more|less", "nothing $1", nil},
	{"(a third|another|one more|an extra|a second|a fourth|a new) !_ ?!((per|in|to) [each|every] _) ?, so|making|for|giving|((that|which) makes)|(to make) ## ?(of them) ?((in all|altogether|all told|total|in total) [in [every] bay|in each|per bay])", "$3 $1 $2", nil},
	{"!inch|inches - !thick|wide|high|tall|long|deep", "$1 $2", nil},
	{"pinch|pinches|pinched !the|my|our|that !opening|walkthrough|doorway|gap|gaps|entrance|gate|gateway", "narrow $1 $2", nil},
	{"!:|,|. top at", "$1 the top is at", nil},
	{"go !up|down !(##|_) more", "go $1 $2", nil},
	{"as !wide|big|high|tall|small|tight|narrow|low|close|far as it|they ((will|can|could|would|may) [possibly] (go|get|be|come)|goes|gets|comes|go|get)", "as $1 as possible", nil},
	{", ?and|but|otherwise as wide|big|large as possible|(it ((will|can|could|would|may) (go|get|be)|goes|gets)) $$", ", largest opening", openingBefore},
	{", ?and|but|otherwise as small|tight|narrow as possible|(they|it ((will|can|could|would|may) (go|get|be)|goes|gets|go|get)) $$", ", smallest gap", phrase.SaidBeforeOf(scan.WordSet("gap gaps"))},
	{"!floor|slab|deck|patio|ground|concrete|terrace drops|falls|slopes|runs|slants|tilts|dips|pitches|drop|fall|slope ?away|off|down # ?per|in|to|for ?every|each|a !metre|meter|foot|yard ?going|heading|running|(as you go) ?over|toward|towards to the !left|right", "$1 falls $2 per $3 to the $4", nil},
	{"in every|each !metre|meter|foot|yard|(ten feet)|(10 feet)", "per $1", nil},
	{"^^ !(so [his|her|their] _ ((stay|stays) [in|home|inside|put]|(can|does|will|could) not (get|slip|squeeze|climb|fall|wriggle|crawl) [out|through|in|over|under])) !nothing|no|keep|make|(i want)|(we want)", "$1 , $2", nil},
	{"?the left|right|first|second|last|near|far bay|panel|section , !((bay|panel|section) ##) ,", "$1", nil},
	{"!under|over|below|above # limit|rule|cap|max|restriction !on|for", "$1 $2 $3", nil},
	{"?, since|because|as|for (i|we|[his|her|their|some] _) ?just|really|do|rather|both|all ?really like|likes|love|loves|prefer|prefers|adore|adores|enjoy|enjoys|want|wants|fancy|fancies * look|looks|style $", "", nil},
	{"!it|that|this feels ?just (a little|a bit|a touch|a tad|rather|somewhat|slightly|kind of|pretty|too|much too|way too) ?too !tall|high|low|wide|narrow|tight|big|small|long|short|deep|large|close ?((to|for) (me|us))", "$1 is too $2", soOrClauseEnds},
	{"!(measured [..]) (twice|two times|three times|a few times|several times|again and again) ?, ?and ?both|each|every|all ?three time|times (it (came to|was|read|came out at|came out to|came out|measured|is)|(i|we) (got|came up with|had|read|get))", "$1 , it is", nil},
	{"twice ?, and !got|both|each|(it (came to|was|is))", "and $1", measuredBefore},
	{"each|both|every time|times $", "", measuredBefore},
	{"(level|even|flush|in line|lined up) with * ?, which is|sits|stands|comes ?at|(up to) !##", "at $1", nil},
	{"has|is|was ?already ?been ?already (put up|up|in place|fastened|screwed in|screwed on|installed|attached) ?already ?, ?and with top ?edge ?being|sitting at|being|is", "is up already , its top is at", nil},
	{"little|tiny bit !bigger|smaller|wider|narrower|taller|shorter|higher|lower|longer|tighter|larger ?, (by|say|maybe by|about|perhaps by) ##", "$1 by $2", nil},
	{", bottom # $", ", bottom gap $1", bottomNoted},
	{"^^ ?but ?my|our|the|his|her|their ?next ?- ?door PERSON|neighbors|neighbours ('s|') ?own ?old|new WALL|porch|deck|one has|had|uses|got ## !RAIL , and|but|so|while|yet !((i|we) would ?(want|need|like|prefer)) ## $$", "$3 $4 $2", nil},
	{"^^ ?but ?my|our|the|his|her|their ?next ?- ?door PERSON|neighbors|neighbours ('s|') ?own ?old|new WALL|porch|deck|one has|had|uses|got ## !RAIL , and|but|so|while|yet !((i|we) (want|need|prefer)) ## $$", "$3 $4 $2", nil},
	{"^^ ?but ?my|our|the|his|her|their ?next ?- ?door PERSON|neighbors|neighbours ('s|') ?own ?old|new|back|front WALL|porch|deck|one|place has|have|is|was|had|uses|got|stands .. , and|but|so|while|yet !i|we", "$1", nothingCompared},
	{"^^ ?but ?my|our|the|his|her|their ?next ?- ?door PERSON|neighbors|neighbours built|made|did|has|have|put|got ?up his|hers|theirs .. , and|but|so|while|yet !i|we", "$1", nothingCompared},
	{"bit !bigger|smaller|wider|narrower|taller|shorter|higher|lower|longer|tighter|larger ?, (by|say|maybe by|about|perhaps by) ##", "$1 by $2", nil},
	{"!works|worked out ?(fine|ok|okay|nicely|well|great|right|perfectly|just fine|just right|all right|evenly|exactly|good|perfect) $", "$1", worksOut},
	{"!high|tall ,|and|(, and) ?and ?it ?is|(should be)|starts|sits|begins|hangs|stands|goes ?up # ?up off ?of ground|floor|patio|slab|deck|concrete|terrace|pavement", "$1 , bottom gap $2", clauseOrAndEnds},
	{"!opening|((walk|pass|step) [-] (through|thru))|walkthrough|doorway|gateway|gate|entrance|entry|passage (has to|must|should|needs to|will have to|ought to|has got to|better|had better|wants to) ?still|also|easily ?(be able to) (fit|take|clear|pass|admit|accommodate|handle|let in|let through|let) ?his|her # ?- ?inch ?- ?wide ?_ _ ?(through|in|past|go by|pass|in and out) $", "$1 must be at least $2", nil},
	{"!mother|father|sister|brother|son|daughter ?- in ?- law", "$1", nil},
	{"and gets|takes|receives|wants", "and has", baySizedBefore},
	{"?pressure ?- treated @", "$1", nil},
	{"!(@ [s]) stuff", "$1", nil},
	{"!rails|boards|slats|planks|lumber|posts|stock|(@ [s]) from yard|mill|sawmill|store|shop|lumberyard|supplier|merchant|truck|barn|shed|pile ?actually|really|all|(in fact) !measure|come|are|is|run|mike|measured", "$1 $3", nil},
	{"?the|my|our|a|his ((water|spirit|laser|line|hose|long|bubble|four foot|two foot|builder 's|torpedo) level|laser|level|string line|transit) ?'s|is|has telling|tells|told|saying|says|said|showing|shows|reading|reads|showed ?me|us ?that the !floor|slab|deck|patio|ground|concrete|terrace|porch", "the $1", nil},
	{"?on|to|at|out either|both|each side|sides|edge|edges of ?every rail|rails|board|boards", "above and below the rail", phrase.SaidBeforeOf(scan.WordSet("bracket brackets"))},
	{"!base|bases|standoff|standoffs !holds|lifts|raises|keeps|carries|puts|sets|hold|lift|raise|keep ?his|her|their !([new|added] (post|posts)) up", "$1 $2 the $3 up", nil},
	{"!openings ?with !(([one|left] one|first) [is|goes] [being] (on|at|against|by|to) (left|right) [side|end|post]) ?and !(([other|right] one|second|other) [is|goes] [being] (on|at|against|by|to|in) (left|right|middle|center) [side|end|post]) $", "$1 , $2 , $3", nil},
	{"!dirt|ground|grass|lawn|soil|yard|gravel|earth|grade out front", "$1 outside", nil},
	{"!wide|broad|high|tall enough (for|to (take|pass|fit|admit|let|clear|get)) * ?, ?(say|so say|so make it|so|which is|that is|that means|call it|meaning) ?!(at least|about|around) # $$", "$2 $3 $1", nil},
	{"big|large|roomy|generous enough (for|to (take|pass|fit|admit|let|clear|get)) * ?, ?(say|so say|so make it|so|which is|that is|that means|call it|meaning) ?!(at least|about|around) # $$", "$1 $2", nil},
	{"^^ my|our|the _ ?((that|who) (taught|trained|raised|showed|learned) (me|us)) (always|usually|used to) left|used|put|had|ran|set|kept|leave|use|have|run|keep !.. ?, so !(## [..]) it is $$", "$1 , that is $2", nil},
	{"^ ?his|her|their _ have|has|had|'s already painted|stained|sanded|primed|varnished|oiled|decorated|carved ?all ## $$", "", signBefore},
}

// wallBegun are sentences that begin with what is built and where, before its height: "we're closing in the end of the boat shed with a low wall, 42
// inches to the top".
var wallBegun = []phrase.Placed{
	{"^^ ?hi|hello|morning|ok|so|right|well|(good (morning|afternoon)) ?, ?this|that|there|it ?is|'s|(will be)|(going to be) ?a|the|our|my low|half|short|little|knee|waist|partial|(waist high) wall|halfwall|screen ?((on|in|at|by|round|around|along|across|for|against|to|beside|outside|off) _ ?_ ?_) ,|:|-|;|--", "the wall is", heightToldNext},
	{"^^ ?hi|hello|morning|ok|so|right|well|(good (morning|afternoon)) ?, i|we ((am|are|(have been)) (building|closing|fencing|screening|putting|making|planning|adding|doing|finishing|after|having|wanting|wrapping|filling))|want|need|(would like)|plan|(are (going|about) to)|(am (going|about) to) low|half|short|little|knee|waist|partial wall|halfwall|screen ?((on|in|at|by|round|around|along|across|for|against|to|beside|outside|off) _ ?_ ?_) ,|:|-|;|--", "the wall is", heightToldNext},
	{"^^ ?hi|hello|morning|ok|so|right|well|(good (morning|afternoon)) ?, i|we ((am|are|(have been)) (building|closing|fencing|screening|putting|making|planning|adding|doing|finishing|after|having|wanting|wrapping|filling))|want|need|(would like)|plan|(are (going|about) to)|(am (going|about) to) * low|half|short|little|knee|waist|partial wall|halfwall|screen ?((on|in|at|by|round|around|along|across|for|against|to|beside|outside|off) _ ?_ ?_) ,|:|-|;|--", "the wall is", heightToldNext},
}

// heightToldNext: a figure follows, and is said to be a height.
func heightToldNext(_, after []scan.Atom) bool {
	r := measure.Reader{Atoms: after}
	i := 0
	if r.Word(i) == "about" || r.Word(i) == "around" || r.Word(i) == "roughly" {
		i++
	}
	_, end, ok := r.Length(i)
	if !ok || end == i {
		return false
	}
	switch r.Word(end) {
	case "high", "tall", "off":
		return true
	case "to", "at":
		return r.Word(end+1) == "the" && (r.Word(end+2) == "top" || r.Word(end+2) == "cap") || r.Word(end+1) == "top"
	}
	return false
}

// talkTurns are what leads on, what ends a talk, and the units that are used.
var talkTurns = []phrase.Placed{
	{"i|we (am|are|have been|was|were) ?here ?to checking|inspecting|reviewing|(looking (at|over))|building|planning|designing|(working on)|(putting up)|(laying out)|check|inspect|review|(look (at|over))|(going over)|(figuring out)|pricing ?this|some|another ?_ (half wall|halfwall|half|wall|screen|job|project|bid|quote|plan|drawing|submittal|submission) ?wall ?((for|at|on|by|with|of|over|down|in) *) .|!|;", "", greetedBefore},
	{"(^|-) ?so|and|because|since|as|now ?((i|we) (am|are|will be|have to|need to|must|have got to|want to|should|will|can)) ?moving|going|heading|off|getting|starting|driving|move|go|head|drive|get (on to|onto|over to|off to|to|on|with) next site|job|house|place|property|address|customer|client|project|inspection|call|visit|lot $", "", nil},
	{", ?(it is) ?a new site|house|property|address|customer|client|day $", "", nil},
	{"that|this|which (concludes|completes|finishes up|finishes off|finishes|ends|closes|wraps up|winds up|rounds off) VISIT", "that is it", nil},
	{"that|there is|'s VISIT (done|over and done with|over with|over|finished|complete|completed|wrapped up)", "that is it", nil},
	{"i|we ?always|usually (do|make|write up|write|run|take|keep|record|carry out|file|conduct) ?all ?of my|our RECORD in METRICS", "use metric", nil},
	{"i|we ?always|usually (do|make|write up|write|run|take|keep|record|carry out|file|conduct) ?all ?of my|our RECORD in (feet and inches|inch|inches|feet|imperial)", "use inches", nil},
	{"my|our RECORD are|is ?all|always ?done|kept|written|made|taken in METRICS", "use metric", nil},
	{"treat|take|read|consider|regard|understand|count|interpret|hear FIGURES as|(to be)|(as being)|(as if (it|they) were) ?in METRICS", "use metric", nil},
	{"treat|take|read|consider|regard|understand|count|interpret|hear FIGURES as|(to be)|(as being)|(as if (it|they) were) ?in (feet and inches|inch|inches|feet|imperial)", "use inches", nil},
	{"^^ ?((i|we) have had) enough ?of|with|(is enough with) ?these|this METRICS|inch|inches|feet|imperial ?talk|stuff|nonsense|business ,", "", nil},
}

// soOrClauseEnds: a clause ends here, or "so" leads on.
func soOrClauseEnds(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text == "so"
}

var measuredBefore = phrase.SaidBeforeOf(scan.WordSet("measured"))

var outcomes = scan.WordSet(`rail rails board boards slat slats plank planks gap gaps space spaces inch inches mm cm feet half quarter eighth eighths quarters it that they those which`)

// worksOut: "five boards works out fine".
func worksOut(before, _ []scan.Atom) bool {
	n := len(before)
	return n > 0 && (outcomes[before[n-1].Text] || before[n-1].Kind == scan.Digits)
}

var baySizes = scan.WordSet("is measures comes will should")

// baySizedBefore: "bay 2 is 40 wide and gets two stiffeners".
func baySizedBefore(before, _ []scan.Atom) bool {
	for i := 2; i < len(before); i++ {
		if baySizes[before[i].Text] && measure.OfBay(before[i-2].Text) && numberAhead(before[i-1:i]) {
			return true
		}
	}
	return false
}

var greetings = scan.WordSet("good morning afternoon evening hello hi hey there , .")

// greetedBefore: nothing but a greeting stands before.
func greetedBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		if !greetings[a.Text] {
			return false
		}
	}
	return true
}

var bottomsElse = scan.WordSet("measured measure measures measuring meas top bay bays section b1 b2 b3 b4 up far already panel cut cuts check says")

// bottomNoted: "wall 47, six 2x6, btm 2": the note tells other figures of the wall, and speaks of no measuring.
func bottomNoted(before, _ []scan.Atom) bool {
	return len(before) > 1 && numberAhead(before) && !phrase.SaidBeforeOf(bottomsElse)(before, nil)
}

var besideTheirs = scan.WordSet("more less fewer higher lower taller shorter wider narrower bigger smaller longer tighter closer same like likewise too also as match copy that those his theirs hers it")

// nothingCompared: "our neighbor's wall has six boards, but we want seven" measures by nothing that is theirs.
func nothingCompared(_, after []scan.Atom) bool {
	return numberAhead(after) && !slices.ContainsFunc(after, func(a scan.Atom) bool { return besideTheirs[a.Text] || a.Text == "?" })
}
