package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// notedTurns are turns of notes written on the job, in few words, and of those who think in millimeters.
var notedTurns = []phrase.Placed{
	// Figured again.
	{"^ ?then|and|so|now|please recalculate|recompute|refigure|rerun|(re - run|re - calculate|re - figure|re - do) ?the ?it|all|everything|layout|wall|numbers|(whole thing) ?now|again|please $", "show me the layout", nil},
	{"^ ?then|and|so redo|rework layout $", "show me the layout", nil},
	{"recalculate|recompute|refigure|rerun|(re - run|re - calculate|re - figure|re - do) !ASKED ?please|now|again $", "what is the $1", nil},
	{"recalculate|recompute|refigure|rerun|redo|rework|(re - run|re - calculate|re - figure|re - do) ?it|this|that|all|everything|layout with|for|using|at", "what if", figureToCome},
	{"^^ watch ?- outs", "cautions", nil},
	{"^^ ?what ?to watch ?out for \\? $$", "what should i watch out for ?", nil},
	{"^^ keep|take|use the what ?- if $$", "take that", nil},
	{"^^ ?any other|different counts|numbers|choices ?\\? $$", "what are the options ?", nil},
	{"pull|pick|takeoff list", "shopping list", nil},
	{"^ piece|pieces list $", "cut list", nil},
	// About so much.
	{"# ?, +/- ?by smidge|smidgen|hair|tad|touch|bit|skosh|whisker|trifle|shade|little", "about $1", nil},
	// What the saw and the yard take.
	{"square|squaring ?off|up ?cut ?the ends|end ?cuts|cut ?:|,|=|- ?is|takes|take|at # ?(a|per|each|every|ea ?single RAIL)", "trim $1 per board", nil},
	{"allow|allowing|figure|leave|lose # a|per|each|every|off RAIL to|for square|squaring ?up|off ?the|its|their ?end|ends|it|them", "trim $1 per board", nil},
	{"^ spare|spares ?: ## $", "$1 spare boards", nil},
	{"!kerf|trim|fit !eighth|sixteenth|quarter|half ?inch $", "$1 a $2", nil},
	{"^ ?post base|bases ?:|is|are|sits|at # off|above|over|from FLOOR $", "base height $1", nil},
	{"^^ ?work|all|everything|marks to nearest #", "mark to the nearest $1", nil},
	{"^ HEIGHT # overall|(o / a) $", "wall height $1", nil},
	{"they|yard|SELLER have|has|got|carry|stock|sell ?got # ?ones|lengths|boards again $", "they have $1 too", nil},
	{"(rails|boards|rls|bds|pieces|they|them) # short|shy|clear of|between BRACKET $", "the fit is $1", nil},
	{"lose|losing|allow|allowing # ?for|to|on|in square|squaring ?up|off ?(each|every|per|a|the ?single RAIL) $", "trim $1 per board", nil},
	// So many of a size, and what is at hand.
	{"^ @ !RAIL|STIFF x ## $", "$1 $2 , $3 $2", nil},
	{"^ ## x @ RAIL $", "$1 rails , rail size $2", nil},
	{"^ ##  !(## x ## x ## ?ft|foot) ?left ?over in|at|on|out ?my|our shop|garage|truck|barn|shed|pile $", "i have $1 $2", nil},
	{"gaps|spaces equal|eq|even \\@|at #", "gap $1", nil},
	{", mid|middle|inner|intermediate ?POST @ $", ", added posts $1", endPostsSized},
	{"^ right end|side # hi|high|up $", "floor at right $1 higher", nil},
	{"!LENQ ## times !LENQ min|minimum $", "$1 at least $2 times $3", nil},
	{"!LENQ ## times !LENQ max|maximum $", "$1 at most $2 times $3", nil},
	{"not|no ?any|RAIL closer|nearer than # to|from next|other|neighbor|(next|other RAIL|one)|(one above|below)", "gap at least $1", nil},
	{"^^ ?the|my|our ?local SELLER|yard has|keeps|stocks ?got", "they sell", metersListed},
	{", thk|thick|thickness # $", ", bracket thickness $1", phrase.SaidBeforeOf(scan.WordSet("bracket brackets brkt brkts"))},
	{"fit # total|overall|(in all)|altogether $", "fit $1", nil},
	{"^ bottom # $", "bottom gap $1", notMeasured},
	{"RAIL @ measured|meas|actual|act|really # $", "rail size $1 , rail face $2", nil},
	{"^ ends @ , adds|added|mids|mid|middles @ $", "end posts $1 , added posts $2", nil},
	{"^^ got|have # ?ones|lengths|boards again $", "they have $1 too", nil},
	{"^^ ## times|x !ASKED $$", "$2 x $1", nil},
	{"^^ ?new|resulting !ASKED if|with ?(there are)|only|just !((##|no) (RAIL|STIFF|bays|(added posts)|(extra posts)|(additional posts)|(new posts))) ?\\? $$", "what is the $1 if $2 ?", nil},
	{"^^ ?new|resulting|total cost|price|total|bill if|with ?(there are) !.. ?\\? $$", "what does it cost if $1 ?", nil},
	{"^^ !((cut list)|(cutting list)|(shopping list)|(buy list)|(lumber list)|(materials list)) , !((# kerf)|(## % (spare|waste|extra))) $$", "$2 , $1", nil},
	{"^^ !posts|rails|bays|stiffs|stiffeners -|--|: why ## ?\\? $$", "why $2 $1 ?", nil},
	{"^^ first|next step ?\\? $$", "what is the first step ?", nil},
	{"^^ less|tighter|smaller !LENQ , ?by|say # $$", "decrease $1 by $2", nil},
	{"^^ more|bigger|larger !LENQ , ?by|say # $$", "increase $1 by $2", nil},
	{"^^ ?the yard|store|shop :", "they sell", pluralLengths},
	{"^^ ## m !costs|runs|is £ and|,|; ## m £ $$", "$1 m boards are $3 , $4 m boards are $5", nil},
	{"# up from FLOOR up to ?very top ?of ?WALL $", "wall height $1", nil},
	{"# from FLOOR ?up to ?very top ?of ?WALL $", "wall height $1", nil},
	{"^^ it|wall|halfwall is|has to end|finish|stop|top ?out ?at # over|above|off FLOOR", "wall height $1 above the floor", nil},
	{"!RAIL ,|; ?each|all ## ?mm !wide|broad|deep and|by|, ## ?mm thick", "$1 , rail size $4 x $2", nil},
	{"end posts leave|leaves|give # clear|free|open ?space ?between ?them $", "the span is $1", nil},
	{"^ ?the|our ?two|both|outer posts leave # clear|free|open ?space ?between ?them $", "the span is $1", nil},
	{"recalculate|recompute|refigure|rerun|redo|rework ?it|this|that|all|everything|layout without ?any !STIFF|((added|extra|new) posts)", "what if no $1", nil},
	{"# clear \\@|at bottom $", "bottom gap $1", nil},
	{"span # between|btwn ?end|post|inside faces|posts $", "span $1", nil},
	{"^^ add !rail|rl|board|bd|slat|stiffener|stiff $$", "add one $1", nil},
	{"then !ASKED ?= \\? $$", ", what is the $1 ?", trialBefore},
	{"- !ASKED ?= \\? $$", ", what is the $1 ?", figuresBefore},
	{"^^ ## !(## x ## x ## ?ft|foot) left ?over $$", "i have $1 $2", nil},
	{"till|until ?next mon|tue|wed|thu|fri|monday|tuesday|wednesday|thursday|friday|week $", "", figuresBefore},
	{"# net|nett $", "$1", nil},
	{"# inside|within ?two ?end posts $", "span $1", nil},
	{"^ inside to inside # $", "span $1", nil},
	{"^ right end|side ?is|sits # low|lower|down $", "floor at right $1 lower", nil},
	// Asked in short.
	{"!ASKED \\@ ## RAIL ?\\?", "what is the $1 if $2 rails", alone},
	{"^^ ## RAIL = what !ASKED ?\\? $$", "what is the $2 if $1 rails ?", nil},
	{"^ new|resulting|revised !ASKED ?\\? $$", "what is the $1", figuresBefore},
	{"^ check cost|price|total ?please $", "what does it cost", figuresBefore},
	{"^ check !layout|marks|cuts ?please $", "show me the $1", figuresBefore},
	{"^^ show math $$", "show me the math", nil},
	{"marks off|from|up ?off|from FLOOR $", "marks", nil},
	// A trial, and what comes of it.
	{"how would|will|does|do|might|could it|that|this|things|everything ?all come|turn|work|look|end|pan|shape ?out|up with|at|if", "what if", figureToCome},
	{", ?then|so|and !ASKED ?= \\? $$", ", what is the $1 ?", trialBefore},
	{", ?then|so|and !RAIL|STIFF|bays ?= \\? $$", ", how many $1 ?", trialBefore},
	{"^ top of WALL|RAIL \\@|at|:|= # aff|(above|off|over FLOOR) $", "wall height $1", nil},
	{"bump !LENQ ?by #", "increase $1 by $2", nil},
	{"# clear|clr|free !OPENING at|by|beside|on|against", "$1 $2 at", nil},
	{"!POST|RAIL|STIFF : @ throughout", "$1 $2", nil},
	// Gaps made smaller and larger.
	{"close|tighten|squeeze ?up|in|together rails|boards|slats|planks ?up|in|together ?by|another # ?together", "reduce the gap by $1", nil},
	{"spread|ease|open ?out|up|apart rails|boards|slats|planks ?out|up|apart by|another # ?apart", "increase the gap by $1", nil},
	{"spread|ease|open ?out|up|apart rails|boards|slats|planks ?out|up|apart #", "increase the gap by $1", nil},
	{"?, and|, underside ?is|at # $", ", bottom gap $1", gapToldBefore},
	{"!BRACKET is|are £ ?each|apiece $", "$1 cost $2", nil},
	{"added|new|extra post ends|stops|finishes|tops|quits ?out|up|off at #", "post height $1", nil},
	{"^^ ?back|return ?to feet and inches ?please|now ?again|(once more) ?please|now ?, $$", "use inches", nil},
	{"^^ ?back|return ?to feet and inches ?please|now ?again|(once more) ?please|now ,", "use inches ,", nil},
}

// notedSwaps are set plain first of all.
var notedSwaps = []phrase.Placed{
	{"floor|ground|slab|concrete - to - bottom|lowest ?- ?RAIL space|gap|clearance|distance|room", "bottom gap", nil},
	{"bottom|lowest ?- RAIL - to - floor|ground|slab|concrete space|gap|clearance|distance|room", "bottom gap", nil},
	{"per arch|architect|engineer|engr|designer", "per drawing", figureToCome},
	{"as per arch|architect|engineer|engr|designer", "per drawing", figureToCome},
	{"in - to - in", "inside to inside", nil},
	{"w - through", "walk through", nil},
	{"l - r", "left to right", nil},
	{"door gap", "doorway", nil},
	{"arch drawing|drawings|dwg|dwgs|plan|plans|prints|sheet", "per drawing", figureToCome},
	{"help gaps", "help gap", nil},
	{"face - face", "face to face", nil},
	{"post - post", "post to post", nil},
	{"with h", "wall height", opensWithFigure},
	{"post|posts|pst|psts = !wh|wall|wallheight", "post height = $1", nil},
	{"a . ff ?.", "aff", nil},
	{"o . a . length|width|dimension|dim", "overall", nil},
	{"o . a .", "overall", figureToCome},
	{"in to in|inside", "inside to inside", nil},
	{"outs to outs|out", "outside to outside", nil},
	{"sp . between|btwn|btw", "gap between", nil},
	{"sp between|btwn|btw", "gap between", nil},
	{"lay - out", "layout", nil},
	{"what 1 st", "what first", nil},
	{"layout marks|mrks", "marks", nil},
}

// notedEarly are turns that other phrases lean on.
var notedEarly = []phrase.Placed{
	{"should|ought|must ?to be|read|say # $$", ", no , $1", figureToldOf},
	{"^^ ?the|our|my architect|engineer|neighbor|contractor|builder|helper|student|apprentice|salesman|clerk|boss|foreman : ", "he says", askedAtEnd},
	{"set|put|fix|keep|bring|take|lay !LENQ to|at|as|equal ?to ?be ?just|exactly !half|twice|double ?of !LENQ", "$1 is $2 the $3", nil},
	{"as !tall|high|wide|narrow|tight|big|low|long|short as that|this|(it is)|(they are) $", "so $1", whyBeforeIt},
	{", step by step ,", "", nil},
	{", ?and|but|so why|(how come) not ## ?then|though ?\\? $$", ", and why not $1 rails ?", railsLast},
	{"^^ ?the|our|my ?new|first|house rule|law|order ?of|for|is today|now|(the day)|(this (job|wall|one)) ?is ?that :|,|-", "", figureToCome},
	{"^^ ?the|our|my ?new|first|house rule|law|order ?of|for|is today|now|(the day)|(this (job|wall|one)) is ?that", "", figureToCome},
	{"!mark|line|division on our|their|these|your rulers|tapes", "$1 on my tape", nil},
}

// whyBeforeIt: why it is so is asked.
func whyBeforeIt(before, _ []scan.Atom) bool {
	for i, a := range before {
		if a.Text == "why" || a.Text == "how" && i+1 < len(before) && before[i+1].Text == "come" {
			return true
		}
	}
	return false
}

// railsLast: the rails were counted last.
func railsLast(before, _ []scan.Atom) bool {
	for i := len(before) - 1; i >= 0; i-- {
		switch before[i].Text {
		case "rail", "rails", "options", "board", "boards", "slat", "slats":
			return true
		case "post", "posts", "bay", "bays", "stiffeners", "gap", "opening", "wall", "bottom":
			return false
		}
	}
	return false
}

// gapToldBefore: the gap was told before it, and nothing that has another underside.
func gapToldBefore(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && phrase.SaidBeforeOf(scan.WordSet("gap gaps spacing apart between"))(before, nil) && !phrase.SaidBeforeOf(scan.WordSet("post posts top bracket"))(before, nil)
}

// endPostsSized: the size of the end posts was told before it.
func endPostsSized(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && (scan.StandAt(before, 0, "end", "posts") || scan.StandAt(before, 0, "end", "psts") || scan.StandAt(before, 0, "end", "post"))
}

// metersListed: lengths in meters follow, the unit behind the last.
func metersListed(_, after []scan.Atom) bool {
	for len(after) > 0 && after[len(after)-1].Kind == scan.Sign {
		after = after[:len(after)-1]
	}
	return len(after) > 4 && after[0].Kind == scan.Digits && (after[1].Text == "," || after[1].Text == "and") && after[2].Kind == scan.Digits && after[len(after)-1].Text == "m"
}

// opensWithFigure: it opens the line, and a figure follows.
func opensWithFigure(before, after []scan.Atom) bool {
	return len(before) == 0 && len(after) > 0 && after[0].Kind == scan.Digits
}

// notMeasured: nothing was measured before it that has a bottom and a top, and no list of heights goes on.
func notMeasured(before, _ []scan.Atom) bool {
	return !phrase.SaidBeforeOf(scan.WordSet("top bay bays b1 b2 measured meas measures tapes reads post posts rail middle"))(before, nil)
}

// figureToldOf: the figure right before it is that of a length, and no number of a rail or a bay.
func figureToldOf(before, _ []scan.Atom) bool {
	for k := len(before) - 1; k > 0 && k > len(before)-9; k-- {
		if figureNames[before[k-1].Text] {
			_, end, ok := measure.Reader{Atoms: before}.Length(k)
			return ok && end == len(before)
		}
	}
	return false
}

// figureNames are lengths right behind which their figure is told.
var figureNames = scan.WordSet("height gap span overall kerf wallheight wh ht hgt spacing trim fit")

// askedAtEnd: figures follow, and the line asks.
func askedAtEnd(_, after []scan.Atom) bool {
	return chunk.Figured(after) && after[len(after)-1].Text == "?"
}

// pluralLengths: lengths of lumber follow, "10s, 12s".
func pluralLengths(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Kind == scan.Digits && after[1].Text == "s" && after[1].Glued || SoldLengths[after[0].Text])
}

// trialBefore: something is tried out before it.
func trialBefore(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && (before[0].Text == "if" || before[0].Text == "try" || before[0].Text == "suppose" || scan.StandAt(before, 0, "what", "if"))
}
