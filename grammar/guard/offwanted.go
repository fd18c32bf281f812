package guard

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// What something is more or less than it was wanted is by how much it is off, whoever wanted it: no figure of the plan, and no change by so much the same way.
// What said_deviations.go can set plain is set before; anything else that was read beside such words is asked back, but for an order ("give me a quarter
// more than I asked for"). Plain English, no source.

const (
	whoWants  = `(?:i|we|he|she|they|you|people|(?:my|our|the|his|her|your) [a-z]+)`
	wantsSaid = `(?:wants?|wanted|ask|asks|asked|wish|wished|hoped|hoping|likes?|liked|needs?|needed|plan|planned|specified|ordered|after|meant|intended|shooting|aiming|looking|going for|bargained|requested|in mind|called for|prefers?|preferred)`
	asItWas   = `(?:it|that|this|they|there|those|these) (?:should|must|ought|needs?|has to|have to|(?:is|was|are|were|'s) (?:supposed|meant|to be))`
)

var (
	offWish = regexp.MustCompile(`\b(?:than|(?:over|under|above|below|beyond|beneath|past|short of|shy of|off) what)(?: what)? (?:` + whoWants + `(?: (?:had|has|have|really|actually|originally|ever|would|did|do|am|are|was|were|is|been|always|first))* ` + wantsSaid + `\b|` + asItWas + `\b|(?:wanted|planned|intended|asked for|called for|specified)\b)`)
	// offDegree is a figure by which something is too much or too little.
	offDegree = regexp.MustCompile(`(?:(?:[0-9]"?|` + anyFigure + `|inch|inches|"|half|quarters?|eighths?|sixteenths?|foot|feet|cm|mm|centimeters?|millimeters?) too (?:wide|narrow|big|small|large|high|low|tall|short|tight|loose|long|far|close|much|little)\b|(?:rails?|boards?|slats?|planks?|posts?|stiffeners?|bays?) too (?:many|few)(?:[^,.;]*[^,.; ])?(?: [.!?])*$)`)
	// offAlone is a figure that is over, or short, of nothing that is named.
	offAlone = regexp.MustCompile(`\b(?:gaps?|wall|opening|doorway|walk - through|walkthrough|bays?|span|height|spacing|space|distance|clearance|overall) (?:[a-z]+ ){0,3}?(?:is|are|'s|looks|seems|comes out|came out|come out|runs|ran|turns out|turned out|ends up|ended up|works out) [^,.;?]*\b(?:(?:over|under|short|shy|off|out)|(?:over|under|above|below|past) (?:the )?(?:limit|code|maximum|max|minimum|min|spec|budget|plan|drawing|allowance))(?: [.!])*$`)
	// offBare is a figure by which something is low or narrow: too low, and no less of it.
	offBare = regexp.MustCompile(`(?:[0-9]"?|` + anyFigure + `|inch|inches|"|half|quarters?|eighths?|sixteenths?|foot|feet|cm|mm) (?:low|narrow)(?: [.!])*$`)
	// countOver are parts that are over, or short.
	countOver = regexp.MustCompile(`^[^,.;?]*\b(?:is|are|'s|have|got|has) ` + hear.HowMany + ` (?:rails?|boards?|slats?|planks?|posts?|stiffeners?|bays?|openings?) (?:over|short|shy|out|off|under)(?: in there| there)?(?: [.!])*$`)
	// railsOver are rails over a gap of so much: where that is, is not told.
	railsOver = regexp.MustCompile(hear.HowMany + ` (?:rails|boards|slats|planks) (?:[a-z]+ )?(?:over|above|on top of) (?:a |an )?` + anyFigure + `(?: [a-z0-9/-]+){0,4} (?:gap|space|of air|of space|of daylight)(?: [.!])*$`)
	// ordersIt are words of an order before it.
	ordersIt = regexp.MustCompile(`^(?:(?:please|just|so|and|ok|okay|now|well|then|,) )*(?:(?:can|could|would|will) (?:you|we) |(?:i|we) (?:want|would like|need) (?:you )?(?:to )?|let (?:us|me) |go ahead and |please |just )*(?:make|give|add|put|set|take|leave|use|keep|have|let|raise|lower|buy|get|order|bring|cut|run|do not|never|no)\b`)
	// ordersBehind is an order behind it, of the same thing: "take it out".
	ordersBehind = regexp.MustCompile(`[,;.] (?:and |so |please |just )*(?:take|trim|cut|shave|knock|add|bring|let|open|close|make|widen|narrow|lower|raise|fix) (?:it|that|them|this|the difference)(?: [a-z]+){0,3}(?: [.!])*$`)
	offAsked     = regexp.MustCompile(`^(?:(?:so|and|but|well|ok) )*(?:is|are|was|were|would|will|do|does|should) (?:about |really |only |just )?(?:a |an )?` + anyFigure + `|\bwhy\b`)
)

// OffWanted asks back where what was read stands behind by how much something is off.
func OffWanted(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil || !slices.ContainsFunc(r.Acts, ofWallItself) {
		return r
	}
	text := scan.Text(atoms)
	off := func(way *regexp.Regexp) bool { return ways.MatchesWay(way, text) }
	wishedFor := func(a act.Act) bool { return ofWallItself(a) && a.Statements[0].Name.Quantity != solver.Spare }
	if (!off(offWish) || !slices.ContainsFunc(r.Acts, wishedFor)) && (!off(offDegree) || offAsked.MatchString(text)) && (!off(offAlone) || strings.HasPrefix(text, "anything ")) && !off(countOver) && (!off(railsOver) || strings.Contains(text, " bottom ") || strings.Contains(text, " floor ")) && (!off(offBare) || !slices.ContainsFunc(r.Acts, lessens)) || ordersIt.MatchString(text) || ways.MatchesWay(ordersBehind, text) {
		return r
	}
	i := slices.IndexFunc(r.Acts, ofWallItself)
	at := r.Acts[i].At
	return act.Reading{Ask: &solver.Question{At: &at, Text: "What is it to be?", Example: "gap 2-1/2"}}
}

// ofWallItself reports whether an act states, tries or claims how much something of the wall is or changes.
func ofWallItself(a act.Act) bool {
	if a.Kind != act.State && a.Kind != act.WhatIf && a.Kind != act.Check || len(a.Statements) == 0 {
		return false
	}
	switch a.Statements[0].Name.Quantity {
	case solver.Price, solver.Stock, solver.Have, solver.Extra, solver.Measured, solver.Kerf, solver.Goal, solver.Short:
		return false
	}
	return true
}

// lessens reports whether an act takes from a length that is wished.
func lessens(a act.Act) bool {
	if a.Kind != act.State && a.Kind != act.Check || len(a.Statements) == 0 || a.Statements[0].Op != solver.Minus {
		return false
	}
	switch a.Statements[0].Name.Quantity {
	case solver.FloorAtRight, solver.Drop, solver.RailFace:
		return false // "the boards run a sixteenth narrow"
	}
	return true
}
