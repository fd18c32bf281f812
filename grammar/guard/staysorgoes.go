package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// What stays, what goes and what changes with it are said in half sentences: "rails stay, gap goes", "one board in, one stiffener out", "wall up two, an inch
// of it at the bottom". Where such a half was heard as a question, as a value or as the other half, it is asked. Common ways of speech, no source.

var (
	outOrFree   = hear.OpenQuestion("Shall that be left out, or may it be what it likes?", "no opening, or forget opening")
	staysHow    = hear.OpenQuestion("Does it stay as it is, or change as much?", "wall 1 in lower, gap 2-1/2")
	boardOrInch = hear.OpenQuestion("One more rail, and the gap as it is?", "one more rail")
	howMuchEach = hear.OpenQuestion("How much of it does each of them get?", "wall 2 in higher, bottom gap 3")
	inOrOut     = hear.OpenQuestion("How many more, and how many fewer?", "one more rail, one stiffener fewer")
	sameAsGap   = hear.OpenQuestion("The same as the gap, or as it was?", "bottom gap = gap")
	onlyIf      = hear.OpenQuestion("Only if it fits? I can try it for you.", "what if six rails")
)

const (
	aPartOf  = `{rails?|boards?|slats?|planks?|stiffeners?|posts?|openings?|doorway|gaps?|bottom gap|spare|cap|bays?}`
	theOne   = `{the|my|our|that|an|a|one|added|new|all|those }*`
	staysAs  = `{stays?|kept|as before|as it was|as is|unchanged}\b`
	staysAt  = `\b{stays?|kept} {at|under|over|between|below|within|above|[a-z]+er than [0-9]|[0-9]}` // a figure is told
	clauseAt = `(^|{,|;|and|but|then} ){and|but|then }*`
)

// staysOrGoes are such lines, each with what is heard of it.
var staysOrGoes = []hear.OpenWay{
	{Looks: asksAny, Way: asWay(clauseAt + theOne + aPartOf + ` {stays?|goes?|remains?|gone|go away|as before|with it|with them|come along}\b`), Not: asWay(`\b{what|how|which|why|where|when|if|show|tell|does|do|would|will|is} |\?`), Ask: outOrFree},
	{Looks: asksAny, Way: asWay(clauseAt + theOne + aPartOf + ` {as before|as it was|as they were|with it|with them|along with it|too|as well|likewise}{ Stop}*$`), Not: asWay(`\b{what|how|which|why|where|when|show|tell|list|give} |\?`), Ask: staysHow},
	{Looks: valued, Way: asWay(clauseAt + `{the|my|our|that }*` + aPartOf + ` {goes|go|gone|is gone|are gone|out|is out|are out|off}{ Stop}*$`), Not: asWay(`\b{opening|doorway|stiffeners} {is|are} gone\b|\b{in|and} {left|far} out\b|\bof stock\b|\b{cut|leave|take|left|took|leaving|taking} {the|all|out }*`), Ask: outOrFree},
	{Looks: valued, Way: asWay(`^` + theOne + aPartOf + ` {goes|go|gone|is gone|are gone|out|is out|are out} {,|and|;}`), Ask: outOrFree},
	// What stays is not changed, nor set.
	{Looks: valuedOf(solver.Gap), Way: asWay(`\b{gaps?|spacing} ` + staysAs), Not: asWay(`\bbottom {gaps?|one }*{stays?|kept|as before}\b|\b{stays?|kept} {at|under|over|between|below|within|above|[a-z]+er than [0-9]|the same|even|equal|[0-9]}`), Ask: staysHow},
	{Looks: valuedOf(solver.BottomGap), Way: asWay(`\b{bottom|lowest|first}{ one| gap| board| rail}? ` + staysAs + `|\b{leave|keep} the {bottom|lowest}{ one| gap}? {,|and|but|as}`), Not: asWay(staysAt), Ask: staysHow},
	{Looks: valuedOf(solver.Opening), Way: asWay(`\b{opening|doorway|walk - through} ` + staysAs), Not: asWay(staysAt), Ask: staysHow},
	{Looks: valuedOf(solver.WallHeight), Way: asWay(`\b{wall|wall height} ` + staysAs), Not: asWay(`\bpost height\b|` + staysAt), Ask: staysHow},
	{Looks: changesOneGap, Way: asWay(`\b{same|keep|keeping|with} {the|same }*{gaps?|spacing|width|height|opening|wall}{ do| work| hold}? {with|,|but with|and} {just }?{one|a|another|two|1|2}{ more| less| fewer| extra}? {rails?|boards?|slats?|planks?|posts?|stiffeners?}\b`), Ask: boardOrInch},
	{Looks: changesOneGap, Way: asWay(`{same|keep the} {gaps?|spacing|width} .*\b{rails?|boards?|slats?|planks?}( {more|less})?\b`), Not: asWay(`\bbetween\b|\b{inch|inches|in|eighth|quarter|half|mm} (more|less)\b`), Ask: unlessTwo(valued, boardOrInch)},
	{Looks: valued, Way: asWay(`\b{of it|of that|of them} {at|under|below|goes|to|for|from|off|in} {the }?{bottom|top|floor|lowest|gap|wall|opening}\b`), Not: asWay(`\b{half|rest|none|each} of {it|them} was\b`), Ask: howMuchEach},
	{Looks: valued, Way: asWay(`{and|,} {so is|so does|so are|so do} {the }?{bottom|top|lowest|other|opening|wall|rest|post|height}{ one| gap}?{ Stop}*$`), Ask: unlessTwo(valued, staysHow)},
	{Looks: valued, Way: asWay(`\bcomes? {up|down} with it\b|\bgoes? {up|down} with it\b`), Ask: staysHow},
	{Looks: valued, Way: asWay(`{wall|opening|height|span|gap} {up|down|wider|narrower|higher|lower|taller} [^,;]*{,|and|but|with} {with|and }*{the }?{wall|opening|gap|post height|height|bottom gap|span} {as well|too|likewise|also|ditto|as before}{ Stop}*$`), Ask: unlessTwo(changesIt, staysHow)},
	{Looks: valued, Way: asWay(`^{the }?[a-z ]+ {up|down} [^,;]*{,|and} {same|ditto} {on|for|with|to} {the }?[a-z ]+$`), Ask: unlessTwo(changesIt, staysHow)},
	{Looks: bottomAsGap, Way: asWay(`{,|and|;|^} {and }?{the }?{bottom gap|bottom} {is|stays|at }?{the }?same{ ,|Stop|$}`), Ask: asGapOrWas},
	{Looks: bottomAsGap, Way: asWay(`^.* , {the }?{bottom gap|bottom} {the }?{same|as well|too|likewise|also}{ Stop}*$`), Ask: asGapOrWas},
	{Looks: valued, Way: asWay(`^{the }?{height|opening|doorway|wall|wall height|span|gap|post height|bottom gap}{ is|stays}? {the }?same{ now| there}? ,`), Ask: staysHow},
	{Looks: valued, Way: asWay(`\b{Number|a} {boards?|rails?|slats?|stiffeners?|posts?} {in|out} {,|and|but|;}.*\b{Number|a} {boards?|rails?|slats?|stiffeners?|posts?} {in|out}{ Stop}*$`), Ask: inOrOut},
	{Looks: valued, Way: asWay(`\b{put|stick|throw|pop} in {one|a|two|1|2} {boards?|rails?|slats?|stiffeners?|posts?} {and|,|but} .*\b{take|pull|leave|lose|drop}\b|\bpull {one|a|two|1|2|Number} {boards?|rails?|slats?|stiffeners?|posts?} , {and }?{add|put}\b`), Ask: inOrOut},
	{Looks: setsALength, Way: asWay(`\b{up|down|wider|narrower|more|less} {by }?{a|an|one}? ?[a-z0-9/ ]+ {instead of|rather than|and not|not} {a|an|one|the}? ?{quarter|half|eighth|inch|sixteenth|foot}\b`), Ask: hear.OpenQuestion("By how much, and from what?", "gap 1/4 in more")},
	{Looks: changesOneGap, Way: asWay(`\ball the way {up|down}\b`), Ask: askback.Meant.Open("gap 2")},
	{Looks: hear.Stated(solver.BottomGap), Way: asWay(`\b{wider|bigger|larger|narrower|smaller|tighter} {gaps?|spaces|spacing} {but|with|and|,} {the }?bottom\b`), Ask: hear.OpenQuestion("What shall the gap be, and what at the bottom?", "gap 2-1/2, bottom gap 3")},
	{Looks: func(a act.Act) bool { return setsNone(a) || a.Kind == act.Save }, Way: asWay(`\binstead of {the|a|my} [a-z]+ {set|make|change|give}\b|\bforget the {gap|rails|opening|bottom gap} and keep\b|\bput {it|that|them} {under|over} the {bottom|lowest|floor|top}\b|^{so|just|but }*stay {under|over|below|above|within|at|in|with}\b`), Ask: askback.Meant.Open("gap 2, bottom gap 3")},
	{Looks: hear.KindOf(act.Why), Way: asWay(`^{so|i am|we are|well|just|still|, }*{thinking|considering|dreaming|talking} {of|about}\b`), Ask: onlyIf},
	{Looks: hear.KindOf(act.TakeThat), Way: asWay(`\bif {it|that|they|six|five|seven|[0-9]+|the}{ [a-z]+}* {fits?|works?|does|goes|holds?|is right|is ok}\b`), Ask: onlyIf},
	{Looks: valued, Way: asWay(`^only if\b|\bif {that|it|this} {gives|makes|leaves|gets|keeps|means|comes to|allows|lets}\b|^if {Number} {rails?|boards?|slats?|posts?|bays?|stiffeners?} {fit|work|will fit|go in|do} {,|then }*{do|use|make|go|put|take|have|keep}\b`), Not: asWay(`\b{what|how|would|could|can|does|do} .*\bif {that|it|this}\b`), Ask: onlyIf},
	{Looks: valued, Way: asWay(`\b{limit|cap on it|maximum|minimum} {gone|off|goes|is gone|is off}\b`), Ask: hear.OpenQuestion("Shall I forget the limit, and set what?", "forget gap, gap 4")},
	{Looks: hear.Stated(solver.Goal), Way: asWay(`^{the }?same {gaps?|spacing|length|width}{ of wall| of the wall| here| there}? {,|but|and|with}`), Not: asWay(`\b{all|every|each|everywhere|cut|rails|boards}\b`), Ask: hear.OpenQuestion("All alike, or as it was before?", "even gaps")},
}

// asGapOrWas asks where no gap was told that the space at the bottom could be the same as.
func asGapOrWas(a act.Act, all []act.Act) solver.Question {
	if slices.ContainsFunc(all, func(b act.Act) bool {
		return valued(b) && b.Statements[0].Name.Quantity == solver.Gap && !parse.Changes(b.Statements[0].Op)
	}) {
		return solver.Question{}
	}
	return sameAsGap(a, all)
}

// valuedOf tells acts that give a quantity a value.
func valuedOf(q solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool {
		return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == q })
	}
}

// changesIt reports whether an act changes something by an amount.
func changesIt(a act.Act) bool {
	return hear.ChangesLength(a) || valued(a) && a.Statements[0].Op == solver.Times
}

// changesOneGap reports whether a length is changed, or tried to be.
func changesOneGap(a act.Act) bool {
	return valued(a) && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus) && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// bottomAsGap reports whether the space at the bottom is made as the gap.
func bottomAsGap(a act.Act) bool {
	return valued(a) && a.Statements[0].Name.Quantity == solver.BottomGap && a.Statements[0].Value.Of != nil
}
