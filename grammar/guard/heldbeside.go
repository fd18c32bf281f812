package guard

import (
	"regexp"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
)

// What is to stay as it is is not what changes ("keep the gap, an inch off the wall"); what is to be left where it
// is, out of it, or is known already ("leave the marks where they are", "I know the cost") is not asked for. Everyday speech, no source.

const (
	heldLead = `{the|my|our|that|those|all the }?`
	// shownWhat are the tables and places that somebody asks to see.
	shownWhat = `{marks|cuts|cut list|cutting list|shopping list|materials list|shopping|drawing|sketch|layout|steps|cost|costs|price|cautions|options|posts?|uprights?|end posts?|added posts?|new posts?|opening|doorway|walk - through|walkthrough}`
	ourThing  = `{the|my|our|that|those|this|these|your}`
)

var (
	givesWay  = hear.OpenQuestion("And what may change for it: the height, the gap or the boards?", "7 rails, gap 2-1/2")
	nothingTo = hear.OpenQuestion("Then it stays so. What would you like to see, or change?", "show me the cuts")
)

// heldBeside are such lines, each with what is heard of it.
var heldBeside = []hear.OpenWay{
	// What is held, and heard to change: it is something else that is to.
	{Looks: changesQuantity(solver.Gap), Way: heldSo(`{gaps?|spacing|spaces}`), Not: asWay(`\?|\bas (is|it is)\b`), Ask: givesWay},
	{Looks: changesQuantity(solver.WallHeight), Way: heldSo(`{height|wall height|wall}`), Not: asWay(`\?|\bas (is|it is)\b`), Ask: givesWay},
	{Looks: changesQuantity(solver.Rails), Way: heldSo(`{number of {boards|rails}|board count|rail count|boards|rails}`), Not: asWay(`\?|\bas (is|it is)\b`), Ask: givesWay},
	{Looks: changesQuantity(solver.Rails), Way: asWay(`^{the }?same {gaps?|spacing|spaces} , {Number|[0-9]+} {boards|rails|slats|planks}{ Stop}*$`), Ask: givesWay},
	// What is left where it is, and left out.
	{Looks: asksAny, Way: asWay(`\b{leave|leaving|keep|keeping} ` + ourThing + ` ` + shownWhat + `( ({where|as|the way|like|how} {it|they|i|we|he|she} .*|{alone|out|off|aside|be|in}( of {it|this|that})?))?{ please}?{ Stop}*$`), Not: asksToo, Ask: nothingTo},
	{Looks: asksAny, Way: asWay(`\b` + shownWhat + ` {can|should|must|just|may }*{stays?|remains?|{is|are} staying} {where|as|the way|put}\b`), Not: asksToo, Ask: nothingTo},
	{Looks: asksAny, Way: asWay(`^{the|my|our }?{opening|doorway|walk - through|posts?} {right|back }?where {it|they} {is|are|was|were}( {before|now|already|then})?{ Stop}*$`), Ask: nothingTo},
	// What somebody has, did or knows already.
	{Looks: asksAny, Way: asWay(`^{Lead|i see|thanks }*{,? }?{i|we} {have|had|'ve|already|just|also }*{got|have|did|done|made|know|knew|wrote down|printed|checked|finished|saw|seen|have the} ` + ourThing + ` ` + shownWhat + `{ already| now| down| done| here| too| thanks| on}*{ Stop}*$`), Not: asksToo, Ask: nothingTo},
	{Looks: asksAny, Way: asWay(`^{Lead }*{,? }?{{the|my|our|your|those|that} }?` + shownWhat + ` {is|are|'s|looks?|seems?|sounds?|came out} {all|just|so|very|pretty|really|quite|already }*{fine|good|nice|great|right|ok|okay|lovely|perfect|on|done|set|clear|up|there|correct|alright}{ now| to me| already| thanks| by me}*{ Stop}*$`), Not: asWay(`\?`), Ask: nothingTo},
	{Looks: asksAny, Way: asWay(`^{Lead }*{,? }?that is all {of }?` + ourThing + ` ` + shownWhat + `{ Stop}*$`), Not: asWay(`\?`), Ask: nothingTo},
	// All of them but some: what it is at those is not said. The gap under the bottom rail is none of the gaps.
	{Looks: valued, Way: asWay(`\b{except|except for|excepting|but not|apart from|other than|bar|barring} {at|under|for|on|in|below }*{the|my|our }?{ends?|end ones|end posts|corners}{ Stop}*$`), Ask: whatThere},
	{Looks: limitsBay, Way: asWay(` [,;.]+ {no ,|no|but }?{just|only} {for|in|on }?the {left|right|first|second|third|last|middle|end}( {one|bay})?{ Stop}*$`), Not: asWay(`\bbay {one|two|three|[1-4]}\b`), Ask: askback.InWhichBay.Open("bay 1 at most 60")},
	{Looks: noneOf, Way: asWay(`[,.;]+ no {, }?{just|only|wait }*the( [a-z]+){1,3}{ Stop}*$`), Not: asWay(`\bno {bottom|stiffeners?|posts?|added|openings?}\b`), Ask: askback.Meant.Open("bottom gap 3")},
}

// heldSo tells that a quantity, by its names, is to stay.
func heldSo(names string) *regexp.Regexp {
	return asWay(`\b{keep|keeping|hold|holding|leave|leaving|without changing|without touching|do not change|not changing|same} ` + heldLead + `{same }?` + names + `{ the same| put| where it is| alone| too}?( ,| and\b|{ Stop}*$)`)
}

// asksToo is said where a line asks for something besides.
var asksToo = asWay(`\?|\b{what|how|show|tell|give|draw|where (do|does|should)|print|which|{can|could} {i|we|you}}\b`)

// changesQuantity reports whether an act sets or changes one quantity.
func changesQuantity(q solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool {
		return (a.Kind == act.State || a.Kind == act.WhatIf) && len(a.Statements) > 0 && a.Statements[0].Name.Quantity == q && a.Statements[0].Value.Of == nil
	}
}

// limitsBay reports whether something is told of all bays.
func limitsBay(a act.Act) bool {
	return hear.Stated(solver.Bay)(a) && a.Statements[0].Name.Bay == 0
}

// noneOf reports whether something is set to none, in number or in length.
func noneOf(a act.Act) bool {
	if a.Kind != act.State || !setsNone(a) {
		return false
	}
	kind := solver.KindOf(a.Statements[0].Name.Quantity)
	return kind == solver.Count || kind == solver.Length
}
