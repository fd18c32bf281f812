package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/solver"
)

// "As much as three inches" and "as few as five" are limits as often as values, and what a truck takes is the longest board that it takes home. Where a value
// was heard, it is asked. Common ways of speech, no source.

var (
	justOrLimit  = hear.OpenQuestion("Just that, or is that a limit?", "gap at most 3")
	longestTaken = hear.OpenQuestion("Is that the longest board that you can take home?", "stock 6, 8 feet")
)

// asFarAs are such lines, each with what is heard of it.
var asFarAs = []hear.OpenWay{
	{Looks: setsExactly, Way: asWay(`\b{gaps?|opening|doorway|wall|rails?|boards|slats|bays?|span|posts?|stiffeners?|spacing|height}( is| are| 's| to be| goes)? as {much|wide|high|big|large|tall|many|long|small|low|few|little|narrow|short|tight|close} as {about|a|an }*{[0-9]|Number|half}`), Not: asWay(`\b{twice|times|half|make|just|exactly|same|can|could|may|might}\b[^,;]* as [a-z]+ as\b`), Ask: justOrLimit},
	{Looks: hear.Stated(solver.BottomGap), Way: asWay(`\b{gaps?|spaces?|spacing}( is| are| 's)? lowest {at|of }?{a|an }?{[0-9]|Number|half}`), Ask: justOrLimit},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{truck|van|car|pickup|trunk|trailer|wagon|rack|bed|minivan|jeep|hatchback|sedan|suv}( bed)?( can| will| 'll| only| just)* {takes?|hauls?|carry|carries|fits?|holds?|manages?|handles?|has room for}\b|\b{i|we|he|she} {can|could}( only| just| barely)? {haul|carry|fit|transport|move|bring home|take home|manage|handle|get home}\b`), Not: asWay(`\b{footers|tens|twelves|fourteens|sixteens|eights}\b`), Ask: longestTaken},
}

// setsExactly reports whether a value is told, and no limit.
func setsExactly(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Op == solver.Eq && s.Value.Of == nil })
}
