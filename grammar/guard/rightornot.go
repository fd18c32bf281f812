package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// A "right" that says that something is correct is no side: "36 was the right opening". And in "cut one a half inch short" the first number counts a
// rail, or stands for one; it belongs to no fraction. Everyday speech, no source.

// soMuch are the fractions of an inch, with their article.
const soMuch = `{a|an} {half|quarter|eighth|sixteenth|third|hair|inch|touch|bit|smidge}`

var whichCut = hear.OpenQuestion("Is that one rail, or how much shorter all of them are cut?", "cut the rails 1/8 short")

// rightOrNot are such lines, each with what is heard of it.
var rightOrNot = []hear.OpenWay{
	{Looks: onSide("right"), Way: asWay(`({Figure}{ inch|inches|in|feet|foot|ft|cm|mm|"|'}?{ [0-9/]+}* [,.;-]+ right{ ,.*}?|right on|for the {opening|doorway|walk - through|walkthrough} is right|{should|would|must|may|might|could|has to|ought to|will|is bound to} be right|{was|is|'s} {about|just|quite|exactly|dead|probably|all}* right){ Stop}*$`), Not: sideToo, Ask: isItRight},
	{Looks: onSide("right"), Way: asWay(`\b{was|is|'s|be|were|are} {just|exactly|probably}*{ }?the right {one|opening|doorway|size|width|figure|number|length|call|choice|way|walk - through}\b`), Not: sideToo, Ask: isItRight},
	{Looks: onSide("right"), Way: asWay(`\b{hear|heard|remember|remembered|recall|recalled|got|get|understand|understood|read|reading|hearing|saw|has|had|have|did|done|wrote|measured|added|counted|think} {it|that|this|you|him|her|them|things}? ?right\b`), Not: sideToo, Ask: isItRight},
	{Looks: onSide("right"), Way: asWay(`\b{you|he|she|they|we|i|boss|that|it|this} {are|is|was|were|am|'s|'re} {so|quite|all|probably|absolutely|always|both|dead|just|about }*right\b`), Not: sideToo, Ask: isItRight},
	{Looks: onSide("right"), Way: asWay(`\bright {where {it|that|they} {is|was|are|belongs|sits}|{at|under|over|around|about|above|below|near} {Figure}|on the {nose|dot|money|button|mark}}\b`), Not: sideToo, Ask: isItRight},
	{Looks: onSide("right"), Way: asWay(`^({yes|yeah|yep|ok|okay|oh|ah} ,? ?)*right {sir|boss|on|oh|you are|enough|buddy|so|well|yes|, so|, well}\b`), Not: sideToo, Ask: isItRight},
	{Looks: onSide("left"), Way: asWay(`^left {the|my|our|an }?{opening|doorway|walk - through|walkthrough} {at|as|alone}\b`), Ask: hear.OpenQuestion("On the left, or did you leave it so?", "opening 36 on the left")},
	{Looks: hear.Sets, Way: asWay(`{Figure}{ inch|inches|in|feet|foot|ft|cm|mm|"|'}? [,;-]+ {that is|it is|but that is|which is }?not {quite|really|at all }?{right|correct|true|so|it|good}{ Stop}*$`), Ask: whatThen},
	// One of the rails, or one by its number.
	{Looks: hear.Stated(solver.Fit), Way: asWay(`\b{one|two|three|four|five|six|seven|eight|[1-9]} ` + soMuch + `\b`), Not: asWay(`\b{each|every|any|all} one a\b|\b{number|rail|one|two} {one|two|three|four|five|six|[1-9]} and a\b`), Ask: whichCut},
	{Looks: hear.Stated(solver.Fit), Way: asWay(`\b{cut|make|made|trim|trimmed|sawed} one half an inch\b`), Ask: whichCut},
	// How long a post is has nothing to do with a bay.
	{Looks: asksBay, Way: asWay(`\b{how {long|wide|big}|what {length|width}|length|width}\b.*\b{posts?|uprights?}\b`), Not: asWay(`\b{bays?|between|apart|from|rails?|space|gap}\b`), Ask: hear.OpenQuestion("How long a post is cut, or how wide a bay is?", "how long are the posts", "ask cuts", "ask bay")},
	// Two numbers of boards are tried one after the other.
	{Looks: hear.KindOf(act.WhatIf), Way: asWay(`^{Lead }*with {Number} {rails|boards|slats|planks} .*\b{what|how} .*\band {what }?if {it|we|there|i} {is|are|do|use|have|had|go with|make it} {Number}{ Stop}*( \?)?$`), Ask: hear.OpenQuestion("So many rails, or is it something else?", "what if 5 rails")},
	// A span that was measured is told with its figure, and not with what it is just short of.
	{Looks: limitsSite, Way: asWay(`({span|wall|drop|overall|posts|it|that|slab|porch}|\b{is|are|was|runs|measures|comes to|comes out|at}|'s) {only }?just {over|under|shy of|short of|above|below|past|more than|less than|beyond|inside|wider than|longer than|shorter than} {Figure}\b`), Not: asWay(`\b{keep|make|must|should|has to|want|needs? to|no|at (most|least)}\b`), Ask: hear.OpenQuestion("Measured to the fraction, it is how long?", "span 144-1/4")},
}

// sideToo is said where a side is named beyond doubt.
var sideToo = asWay(`\b{(on|to|at|against|by|from|off|toward) (the |my |our )?(far |very )?right|right (hand|side|end|post|corner|of|next|against|beside|up)|hard right|far right|right - hand|not (the )?left|no left|rightmost}\b`)

// isItRight asks whether an opening is to be on the right, or what is said of it is only called correct.
func isItRight(_ act.Act, all []act.Act) solver.Question {
	q := solver.Question{Text: "On the right, or is that only correct?", Example: "opening 36 on the right"}
	var rest []act.Act
	for _, a := range all {
		if a.Kind != act.State {
			return q
		}
		if !onSide("right")(a) {
			rest = append(rest, a)
		}
	}
	if len(rest) > 0 {
		q.Choices = []string{parse.Normal(all), parse.Normal(rest)}
		q.Example = q.Choices[0]
	}
	return q
}

// onSide reports whether an act puts an opening at a side: told, tried or checked.
func onSide(side string) func(act.Act) bool {
	return func(a act.Act) bool {
		return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
			return s.Name.Quantity == solver.OpeningSide && s.Value.Word == side
		})
	}
}

// limitsSite reports whether a length that the site has is told as a limit.
func limitsSite(a act.Act) bool {
	if a.Kind != act.State || len(a.Statements) == 0 {
		return false
	}
	switch s := a.Statements[0]; s.Name.Quantity {
	case solver.Span, solver.Overall, solver.Centers, solver.Drop:
		return s.Op != solver.Eq && loose(s) && s.Op != solver.Near
	}
	return false
}
