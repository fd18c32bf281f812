package idiom

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is said of one thing beside another: a change is not of what shall stay as it is ("wall two higher, keep the opening"), one figure changes
// both of two that are named ("wall and opening a foot more"), and "twice that" is of the figure before it. Common ways of speech, no source.

const (
	// anyOne is a quantity that may be told beside another, or a part that is counted.
	anyOne  = "!(BESIDEQ)"
	stayOne = "(STAYQ)"
	sameAs  = "[exactly|just|right] [(the same)|same|alone|be|unchanged|untouched|constant|steady|fixed|put|(as [it|they] (is|are|was|were))|(where (it|they) (is|are|was|were))|(the way (it|they) (is|are|was|were))|(how (it|they) (is|are|was|were))|(like (it|they) (is|are|was|were))]"
	oneMore = "[(a further)] #"
	asMuch  = "!(higher|taller|lower|shorter|wider|narrower|bigger|larger|smaller|tighter|looser|longer|deeper|broader|closer|more|less|extra)"
	eachOf  = "[each|both|apiece|(both of them)]"
	partsN  = "!(RAIL|STIFF|POST|BAY|OPENING)"
	ofThat  = "that|this|it"
	toldAt  = "?is|are|at|of|to|="
	timesOf = "!((twice|double|half|triple)|(## times))"
	// keepsIt are verbs of keeping, stayMany what is kept, forgetting the verbs that take a figure or a part back.
	keepsIt    = "keep|keeping|leave|leaving|hold|holding|retain|retaining|((hold|hang|hanging|holding) on to)|(stick with)"
	stayNoGap  = "([the|my|our|your|these|those] (OPENING|STIFF|(WALL [height])|bays|span|overall|(post height)|budget|fit|drop|trim|spare|kerf|centers|brackets|anchors|tape|(bottom gap)|posts))"
	stayMany   = stayOne + " [[,] and " + stayOne + "]"
	keptIn     = "?in ?there ?alone|be|unchanged|(as is)|(as it is)|(the same)"
	forgetting = "!(FORGETS|cancel|remove|(take (out|away))|kill|strike|(do (without|away with)))"
)

// stayTurns tell what shall stay.
var stayTurns = []phrase.Placed{
	{"?, ?and|but|while|with|then|only|just|so|yet ?please " + keepsIt + " " + stayMany + " " + sameAs + " $", "", besideChange},
	{"?, ?and|but|while|with|yet ?keeping|at|on same|unchanged " + stayMany + " " + sameAs + " $", "", besideMore},
	{"?, ?and|but|while|with|yet " + stayMany + " ?should|must|can|to|just|is|are|has|have ?to stay|stays|staying|remain|remains|remaining|kept ?exactly|just " + sameAs + " $", "", besideChange},
	{"?, ?and|but|while|with|yet " + stayMany + " ?is|are|be unchanged|untouched|(as [it|they] (is|are|was|were))|([the] same as (now|before|(it was)|(they were)|(it is)|(they are)))|(the way (it|they) (is|are|was|were)) $", "", besideChange},
	{"?, but|and not ?touch ?change " + stayOne + " $", "", besideMore},
	{"^^ ?with keeping|keep|leaving|leave|holding|hold " + stayMany + " " + sameAs + " ,|and|but ?but|and|then", "", changeBehind},
	{"^^ ?with same " + stayMany + " " + sameAs + " ,|and|but ?but|and|then", "", changeBehind},
	{"^^ ?with keeping|keep|leaving|leave|holding|hold " + stayNoGap + " " + sameAs + " ,|but ?but|and|then", "", figureBehind},
	{"^^ " + stayMany + " ?should|must|can|to|just|is|are ?to stay|stays|staying|remain|remains|remaining ?exactly|just " + sameAs + " ,|and|but ?but|and|then", "", changeBehind},
	{"^^ " + stayNoGap + " ?should|must|can|to|just|is|are ?to stay|stays|staying|remain|remains|remaining ?exactly|just " + sameAs + " ,|but ?but|and|then", "", figureBehind},
	{", ?and|but|while|with|yet " + stayMany + " ?exactly|just|is|are the same $", "", besideMore},
	{"and|but|while|with|yet " + stayMany + " ?exactly|just|is|are the same $", "", besideMore},
	{", ?and|but|while|with|yet|then ?the same " + stayMany + " $", "", besideMore},
	{"^ " + forgetting + " " + anyOne + " ?, ?but|and|then ?please " + keepsIt + " " + stayMany + " " + keptIn + " $", "$1 the $2", endsPlain},
	{"^ " + forgetting + " " + anyOne + " ?, but|and ?do not ?" + "forget|drop|lose|remove " + stayOne + " $", "$1 the $2", endsPlain},
	{"^ " + forgetting + " " + anyOne + " and " + anyOne + " ?, ?but|then ?please " + keepsIt + " " + stayMany + " " + keptIn + " $", "$1 the $2 and the $3", endsPlain},
	{"^ " + forgetting + " " + anyOne + " and " + anyOne + " ?, but|and not " + stayOne + " $", "$1 the $2 and the $3", endsPlain},
	{"^ " + forgetting + " !(COUNTQ|([the] (OPENING|STIFF|bays))) ?, ?but|and|then ?please " + keepsIt + " " + stayMany + " " + keptIn + " $", "$1 the $2", endsPlain},
	{"^ " + forgetting + " !(COUNTQ|([the] (OPENING|STIFF|bays))) ?, but|and not " + stayOne + " $", "$1 the $2", endsPlain},
}

var togetherTurns = []phrase.Placed{
	// A limit at the other end.
	{"?, but|and|yet not over|above|beyond|past|exceeding #", "and at most $1", nil},
	{"?, but|and|yet not under|below #", "and at least $1", nil},
	// What goes down is lowered; the floor falls. A budget goes down, too.
	{anyOne + " goes|go|went down ?by #", "$1 down by $2", nil},
	// One change of two.
	{"^ ?both " + anyOne + " and " + anyOne + " " + eachOf + " ?by|a " + oneMore + " " + asMuch + " " + eachOf + " $", "$1 $3 $4 , $2 $3 $4", endsPlain},
	{"^ what if ?both " + anyOne + " and " + anyOne + " ?is|are|was|were|be " + eachOf + " ?by|a " + oneMore + " " + asMuch + " " + eachOf + " $", "what if $1 $3 $4 and $2 $3 $4", endsPlain},
	{"^ make|have|get|set|take|want ?both " + anyOne + " and " + anyOne + " " + eachOf + " ?be ?by " + oneMore + " " + asMuch + " " + eachOf + " $", "$1 $3 $4 , $2 $3 $4", endsPlain},
	{"^ make|have|get ?both " + anyOne + " and " + anyOne + " " + eachOf + " " + asMuch + " by " + oneMore + " " + eachOf + " $", "$1 $4 $3 , $2 $4 $3", endsPlain},
	{"^ ?both " + anyOne + " and " + anyOne + " should|must|shall|can|to ?both ?be " + oneMore + " " + asMuch + " " + eachOf + " $", "$1 $3 $4 , $2 $3 $4", endsPlain},
	{"^ ?both " + anyOne + " and " + anyOne + " " + eachOf + " !(up|down) ?by " + oneMore + " " + eachOf + " $", "$1 $3 $4 , $2 $3 $4", endsPlain},
	{"^ " + anyOne + " ,|and " + anyOne + " ?, and " + anyOne + " " + eachOf + " ?by " + oneMore + " " + asMuch + " " + eachOf + " $", "$1 $4 $5 , $2 $4 $5 , $3 $4 $5", endsPlain},
	{"^ # !(more|less) on|for|to|in|off|of ?both " + anyOne + " and ?on|for|to|in|off|of " + anyOne + " " + eachOf + " $", "$3 $1 $2 , $4 $1 $2", endsPlain},
	{"^ ?please !(raise|lower|lift|widen|narrow|increase|decrease|reduce|shrink|enlarge|grow|tighten|loosen|shorten|lengthen|heighten|extend|bump) ?both " + anyOne + " and " + anyOne + " " + eachOf + " ?up|down ?by # " + eachOf + " $", "$1 $2 by $4 , $1 $3 by $4", endsPlain},
	{"^ ?please !(double|halve|triple) ?both " + anyOne + " and " + anyOne + " " + eachOf + " $", "$1 $2 , $1 $3", endsPlain},
	{"^ ?add another|(one more)|(one extra)|(an extra) " + partsN + " and ?another|(one more) " + partsN + " " + eachOf + " $", "one more $1 , one more $2", endsPlain},
	{"^ (one less)|(one fewer) " + partsN + " and ?(one less)|(one fewer) " + partsN + " " + eachOf + " $", "one fewer $1 , one fewer $2", endsPlain},
	{"^ a|one " + partsN + " and a|one " + partsN + " more|extra " + eachOf + " $", "one more $1 , one more $2", endsPlain},
	{"^ a|one " + partsN + " and a|one " + partsN + " less|fewer " + eachOf + " $", "one fewer $1 , one fewer $2", endsPlain},
	// As much of the one as of the other.
	{"WALL ?height " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " ?just " + timesOf + " ?of|as ?much " + ofThat + " ?much $", "wall height $1 , $2 is $3 the wall height", endsPlain},
	{"?bracket ear|ears " + toldAt + " # ?, ?and|with|but ?bracket clearance " + toldAt + " ?just " + timesOf + " ?of|as ?much " + ofThat + " ?much $", "bracket ear $1 , bracket clearance is $2 the bracket ear", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " ?just " + timesOf + " ?of|as ?much " + ofThat + " ?much $", "$1 $2 , $3 is $4 the $1", endsPlain},
	{"GAP " + toldAt + " # ?, ?and|with|but bottom|lowest one|rail|board " + toldAt + " ?just " + timesOf + " ?of|as ?much " + ofThat + " ?much $", "gap $1 , bottom gap is $2 the gap", endsPlain},
	{"GAP " + toldAt + " # ?, ?and|with|but " + timesOf + " ?of " + ofThat + " UNDER|at|for bottom|lowest ?rail|board|one|gap $", "gap $1 , bottom gap is $2 the gap", endsPlain},
	{"GAP " + toldAt + " # ?, ?and|with|but UNDER|at|for bottom|lowest ?rail|board|one|gap " + timesOf + " ?of " + ofThat + " $", "gap $1 , bottom gap is $2 the gap", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " ?just ?a|one !(third|quarter|fifth|sixth|eighth|tenth) ?of " + ofThat + " $", "$1 $2 , $3 is a $4 of $1", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " same !(plus|minus|less) # $", "$1 $2 , $3 is $1 $4 $5", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " # more|bigger|wider|higher|larger|longer|taller|over than ?" + ofThat + " $", "$1 $2 , $3 is $1 plus $4", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " # less|smaller|narrower|lower|shorter|under than ?" + ofThat + " $", "$1 $2 , $3 is $1 minus $4", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " !(((more|less) than)|(at (least|most))|(no (more|less|bigger|smaller) than)) ?" + ofThat + " $", "$1 $2 , $3 is $4 the $1", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " bigger|wider|higher|larger|longer|taller than " + ofThat + " $", "$1 $2 , $3 is more than the $1", endsPlain},
	{anyOne + " " + toldAt + " # ?, ?and|with|but " + anyOne + " " + toldAt + " smaller|narrower|lower|shorter|tighter than " + ofThat + " $", "$1 $2 , $3 is less than the $1", endsPlain},
	{"^ " + anyOne + " !(at most|no more than|no bigger than|under|below|less than|at least|no less than|over|above|more than) # ?, and|with " + anyOne + " ?is|too same|(as well)|likewise|ditto|too $", "$1 $2 $3 , $4 $2 $3", endsPlain},
	// What is not so at the bottom.
	{"?, ?but|and|just|only not|except|excluding ?for ?at|under|below|beneath|for|the bottom|lowest|floor ?one|rail|board|gap|space $", "", besideGap},
	// A bay of its own.
	{"^ # STIFF ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in bay ## ?has|gets|have|get|is|needs|with just|only ## ?STIFF $", "$1 stiffeners per bay , bay $2 gets $3 stiffeners", endsPlain},
	{"^ # STIFF ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in bay ## ?has|gets|have|get|is|needs|with none|zero $", "$1 stiffeners per bay , bay $2 gets 0 stiffeners", endsPlain},
	{"^ # STIFF ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in !(first|second|third|left|right|middle) bay ?has|gets|have|get|is|needs|with just|only ## ?STIFF $", "$1 stiffeners per bay , the $2 bay gets $3 stiffeners", endsPlain},
	{"^ # STIFF ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in !(first|second|third|left|right|middle) bay ?has|gets|have|get|is|needs|with none|zero $", "$1 stiffeners per bay , the $2 bay gets 0 stiffeners", endsPlain},
	{"^ STIFF ?:|at|= # ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in bay ## ?has|gets|have|get|is|needs|with just|only ## ?STIFF $", "$1 stiffeners per bay , bay $2 gets $3 stiffeners", endsPlain},
	{"^ STIFF ?:|at|= # ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in bay ## ?has|gets|have|get|is|needs|with none|zero $", "$1 stiffeners per bay , bay $2 gets 0 stiffeners", endsPlain},
	{"^ STIFF ?:|at|= # ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in !(first|second|third|left|right|middle) bay ?has|gets|have|get|is|needs|with just|only ## ?STIFF $", "$1 stiffeners per bay , the $2 bay gets $3 stiffeners", endsPlain},
	{"^ STIFF ?:|at|= # ?per|(in each)|(in every)|each|every|a ?bay ?, ?but|and|except|with ?in !(first|second|third|left|right|middle) bay ?has|gets|have|get|is|needs|with none|zero $", "$1 stiffeners per bay , the $2 bay gets 0 stiffeners", endsPlain},
	{"^ ## !(less|fewer|more|extra) STIFF in bay ## and ## !(less|fewer|more|extra) in bay ## $", "$1 $2 stiffener in bay $3 , $4 $5 stiffener in bay $6", endsPlain},
}

var (
	stayBook     = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(stayTurns, leftOneTurns) })
	togetherBook = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(togetherTurns) })
)

// ToldTogether sets plain what is said of one thing beside another.
func ToldTogether(atoms []scan.Atom) []scan.Atom {
	return togetherBook().SetIn(stayBook().SetIn(keptBook().SetIn(ratherThan(atoms))))
}

// besideChange: a figure or a change stands before, and nothing that is taken back or left but for what is kept: "forget everything, keep the gap".
func besideChange(before, after []scan.Atom) bool {
	if len(before) > 2 && before[0].Text == "what" && before[1].Text == "if" {
		before = before[2:] // what is tried is changed, too
	}
	if !endsPlain(before, after) || len(before) == 0 {
		return false
	}
	for _, a := range before {
		if keepsRest[a.Text] || a.Text == "if" {
			return false
		}
	}
	return tellsFigure(before)
}

// tellsFigure reports whether a figure is among atoms, or a word that changes by one: "an inch", "another".
func tellsFigure(atoms []scan.Atom) bool {
	for i, a := range atoms {
		if _, ok := FigureEnd(atoms, i); ok || HasFigures(atoms[i:i+1]) || addsOne[a.Text] {
			return true
		}
	}
	return false
}

// keepsRest are words by which all or something is taken back, and addsOne words that change by one.
var (
	keepsRest = scan.WordSet("everything all rest others else lot forget scrap scratch clear delete erase wipe undo cancel remove start over never not without unless")
	addsOne   = scan.WordSet("another a an double halve triple")
)

// besideMore: what stands before is changed, not only set: "the same gap" is then the one that was.
func besideMore(before, after []scan.Atom) bool {
	return besideChange(before, after) && changesHere(before, after)
}

var changesHere = phrase.SaidBeforeOf(scan.WordSet("more less fewer extra another higher taller lower shorter wider narrower bigger larger smaller tighter looser longer raise lift widen increase reduce shrink add up down + double halve triple"))

// besideGap: the gap is what stands before, with its figure.
func besideGap(before, after []scan.Atom) bool {
	gap := false
	for _, a := range before {
		gap = gap || chunk.IsClass(a.Text, "GAP") || a.Text == "apart"
	}
	return gap && endsPlain(before, after) && len(after) == 0 && HasFigures(before)
}

// changeBehind: what follows is changed, by a figure that is told: "same gap, wall two higher".
func changeBehind(before, after []scan.Atom) bool {
	return figureBehind(before, after) && changesHere(after, nil)
}

// figureBehind: what follows is told with a figure: "keep the opening, wall 46".
func figureBehind(before, after []scan.Atom) bool {
	return len(before) == 0 && len(after) > 1 && tellsFigure(after) && endsPlain(after, nil)
}
