package guard

import (
	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
)

// What is told of some pieces ("three rails are cut", "I cut one short") is no allowance for all of them, a question is no wish ("shouldn't bay 2
// have a stiffener"), and a figure that is held against something else ("a two inch gap is bigger than the bottom gap") is no limit of that.
// Everyday speech, no source.

const (
	somePieces = `{` + countWord + `|a couple|some|a few|half|both|one more} {of {the|my|our|those }?}?{them|rails?|boards?|slats?|planks?|pieces?|ones?}`
	// suchA is a thing with its figure: "a two inch gap".
	suchA = `\b{a|an|every|each|any} {Number|[0-9]+} {[a-z0-9/.-]+ }*{gap|space|opening|doorway|bay|post|wall|rail|board|bottom gap|height|span|drop}`
)

// saidOfSome are such lines, each with what is heard of it.
var saidOfSome = []hear.OpenWay{
	{Looks: hear.Stated(solver.Fit), Way: asWay(`\b` + somePieces + ` {that|have|all|is|are|was|were|got|been|now|already|just }*{cut|sawn|sawed|trimmed}\b`), Ask: askback.Meant.Open("what do I do next")},
	{Looks: hear.Stated(solver.Fit), Way: asWay(`\b{i|we|he|she|they|{have|has|had|just|accidentally|already}} cut {` + somePieces + `|` + countWord + `} {too|a bit|a little|way|far }?{short|long}\b`), Ask: askback.Meant.Open("cut the rails 1/8 short")},
	{Looks: hear.Stated(solver.Fit), Way: asWay(`\b` + somePieces + ` {is|are|was|were|came|come|comes|turned|ended|measures?|runs?|ran} .*\b{short|shy|long|over|off|out}\b`), Ask: askback.Meant.Open("cut the rails 1/8 short")},
	{Looks: setsNone, Way: asWay(`^{Lead|, }*{do|does|will|would|should|could|did|can} not {bay {Number|[0-9]+}|bays?|rails?|boards?|slats?|posts?|walls?|it|there} {be|need|have|want|get|require|take|use}\b`), Ask: countOrNone},
	{Looks: ofEachBay, Way: asWay(`\b{bay|opening} ([1-4]|{one|two|three|four}) ([0-9]+ ?/ ?[0-9]+|{quarter|eighth|sixteenth|eighths|quarters|sixteenths})\b`), Not: asWay(`\b{max|min|maximum|minimum|feet|foot|ft|least|most}\b|'`), Ask: hear.OpenQuestion("Which one, and by how much?", "bay 2 += 1/2 in")},
	{Looks: cutsShorter, Way: asWay(`^{Lead|, }*cut {them|those|these|it|all of them|the rails|the boards} .*{longer|more|bigger}\b`), Not: asWay(`\b{less|shorter|shy}\b`), Ask: askback.Meant.Open("cut the rails 1/8 short")},
	{Looks: hear.Stated(solver.Bay), Way: asWay(`\bbay {Number|[0-9]+} {is|was|comes out|came out|runs|measures} {over|under} by\b`), Ask: hear.OpenQuestion("How wide is it, then?", "bay 1 measures 68-3/8")},
	{Looks: changesCount, Way: asWay(`\b{{Number|[0-9]+} {rails?|boards?|slats?|planks?|posts?|stiffeners?} }{would|might|could|may|will|do|does|all|also }*{take|takes|took|look|looks|last|lasts|seem|seems|feel|feels|weigh|cost} {longer|more|less|lower|higher|taller|shorter|better|heavier}\b`), Ask: askback.Meant.Open("what if six rails")},
	{Looks: statesBrackets, Way: asWay(`^{Lead|, }*{with .*}?{do|does|will|would|are|can|could|is} {the|my|our|any|those }?{brackets?|ears?} `), Ask: askback.Meant.Open("what if gap 2")},
	{Looks: hear.Stated(solver.RailFace), Way: asWay(`\b{longer|shorter}\b`), Not: asWay(`\b{wide|wider|face|narrower|across}\b`), Ask: askback.Meant.Open("cut the rails 1/8 short")},
	{Looks: besidesUnder, Way: asWay(suchA + `{ is|would be|will be}? {wider|bigger|larger|taller|higher|longer|more|greater} than\b`), Ask: askback.Meant.Open("gap wider than the bottom gap")},
	{Looks: besidesOver, Way: asWay(suchA + `{ is|would be|will be}? {narrower|smaller|shorter|lower|tighter|less} than\b`), Ask: askback.Meant.Open("gap smaller than the bottom gap")},
}

// countOrNone asks how many there are, or what else is asked where the thing is not counted.
func countOrNone(a act.Act, all []act.Act) solver.Question {
	if solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count {
		return howManyOrNone(a, all)
	}
	return askback.Meant.Open("what do I need to buy")(a, all)
}

// cutsShorter reports whether the rails are to be so much shorter than they were.
func cutsShorter(a act.Act) bool {
	return hear.Stated(solver.Fit)(a) && a.Statements[0].Op == solver.Plus
}

// ofEachBay reports whether something is told of all bays, or of how many openings there are.
func ofEachBay(a act.Act) bool {
	return hear.Stated(solver.Bay, solver.Openings)(a) && a.Statements[0].Name.Bay == 0
}

// statesBrackets reports whether what brackets need is set.
func statesBrackets(a act.Act) bool {
	return a.Kind == act.State && hear.Stated(solver.BracketClearance, solver.BracketEar)(a)
}

// besidesUnder reports whether something else is set than that one thing is under another.
func besidesUnder(a act.Act) bool { return valued(a) && a.Statements[0].Op != solver.LT }

// besidesOver reports whether something else is set than that one thing is over another.
func besidesOver(a act.Act) bool { return valued(a) && a.Statements[0].Op != solver.GT }
