package hear

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What a line leaves open is asked back, and not guessed at: from which post the opening starts, half of what is taken off.

var (
	startsAt      = regexp.MustCompile(`\b(?:opening|doorway|walkthrough|entry|entrance|passage|gateway|gate|passageway|walkway)(?: should| will| would| has to| wants to| needs to| to| can| must)? (?:start|starts|begin|begins|starting|beginning|commences)(?: about| around| at| out| roughly| maybe| some)* (?:[0-9]|[a-z]+ty\b|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen)`)
	movedAwayFrom = regexp.MustCompile(`\b(?:move|moved|slide|shift|push|nudge|scoot|bring|get) .* away from the (?:left|right)\b`)
	halfOff       = regexp.MustCompile(`\b(?:knock|take|cut|shave|lop|trim|chop|drop|get|bring)(?: off)? (?:a|one) half(?: off| from| out of)?(?: of)? (?:the|my|our|that|this|every|each)\b|\bhalf off (?:of )?(?:the|my|our|that|this|every|each)\b`)
)

// LeftOpenToGuess asks back what a reading could only have guessed.
func LeftOpenToGuess(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil || len(r.Acts) == 0 {
		return r
	}
	said := ""
	for i, a := range r.Acts {
		if len(a.Statements) != 1 {
			continue
		}
		st := a.Statements[0]
		away := st.Op == solver.Eq && (st.Name.Quantity == solver.OpeningFromLeft || st.Name.Quantity == solver.OpeningFromRight)
		if k := st.Op; (k == solver.GT || k == solver.Plus && i > 0 && r.Acts[i-1].Kind == act.Check) && byMoreThan.MatchString(scan.Text(chunk.Fold(atoms))) {
			at := a.At
			return askback.ComesTo.AskAt(at)
		}
		boards := st.Name.Quantity == solver.Rails && st.Op == solver.Eq
		if (st.Name.Quantity == solver.Stock) && countedFooters.MatchString(scan.Text(chunk.Fold(atoms))) {
			at := a.At
			return act.Reading{Ask: &solver.Question{At: &at, Text: "One number, or several?", Example: "they sell 8, 10 and 12 footers"}}
		}
		if !boards && st.Name.Quantity != solver.Opening && st.Name.Quantity != solver.Trim && !away && st.Op != solver.Minus {
			continue
		}
		if said == "" {
			said = scan.Text(chunk.Fold(atoms))
		}
		switch {
		case boards && boardsLeft.MatchString(said):
			at := a.At
			return act.Reading{Ask: &solver.Question{At: &at, Text: "Which size are they, and how long?", Example: "I have six 2x6s, 12 ft long"}}
		case away && movedAwayFrom.MatchString(said) && !strings.Contains(said, " to "):
			return movedAwayAsked(r.Acts[i], st)
		case st.Name.Quantity == solver.Opening && !parse.Changes(st.Op) && startsAt.MatchString(said) && !strings.Contains(said, " wide") && !strings.Contains(said, " clear"):
			return startAsked(r.Acts[i], st)
		case (st.Op == solver.Minus || st.Op == solver.Eq && strings.Contains(said, "half off the ")) && st.Value.Num.Mul(measure.WordInt(2).Val) == lex.OneRat && halfOff.MatchString(said) && !strings.Contains(said, "half inch") && !strings.Contains(said, "half an inch"):
			return halfAsked(r.Acts[i], st)
		}
	}
	return r
}

// byMoreThan: "make the wall a foot higher than him".
var byMoreThan = regexp.MustCompile(`(?:[0-9]|inch|inches|in|foot|feet|mm|cm|half|quarter|hand|two|three|four|five|six|eight|ten) (?:higher|taller|wider|bigger|larger|longer|deeper|broader) than (?:him|her|it|them|that|this|he|she|they|those)(?: [.,!?]|$)`)

// countedFooters: "they sell eight footers and four twelve footers". Nobody sells lengths of four feet beside those of twelve.
var countedFooters = regexp.MustCompile(`(?:and|,|only|just|have|has|sell|sells|of) (?:two|three|four|for|2|3|4) (?:[0-9]+|eight|ten|twelve|fourteen|sixteen|twenty)(?: foot |-foot | )(?:footers?|er)`)

// boardsLeft: "we have two boards left over", "there are four boards in the garage".
var boardsLeft = regexp.MustCompile(`(?:^| )(?:have|has|got|had|are|is|kept|found|'ve)(?: about| only| still| just| already| some)* [a-z0-9]+ (?:more |old |extra |good |long |nice )?(?:boards?|planks?|slats?|rails?|sticks) (?:already |still |just )*(?:left|leftover|lying|sitting|laying|at home|out back|from (?:the|my|our|an|a) (?:old|last|other|fence|deck)|in (?:the|my|our) (?:garage|shed|barn|basement|cellar|truck|van|yard|house|attic|loft|workshop|shop|pile|rack)|on (?:the|my|our) (?:rack|truck|pile|trailer))(?: |$)`)

// startAsked asks from which post the opening starts.
func startAsked(a act.Act, st solver.Statement) act.Reading {
	at := a.At
	left, right := st, st
	left.Name.Quantity, right.Name.Quantity = solver.OpeningFromLeft, solver.OpeningFromRight
	return act.Reading{Ask: &solver.Question{At: &at, Text: "From which end post does it start?", Choices: []string{left.String(), right.String()}, Example: left.String()}}
}

// halfAsked asks whether half an inch or one half of it all is taken off.
func halfAsked(a act.Act, st solver.Statement) act.Reading {
	at := a.At
	half := st
	st.Op = solver.Minus
	half.Op, half.Value = solver.Times, solver.Value{Num: st.Value.Num}
	return act.Reading{Ask: &solver.Question{At: &at, Text: "Half an inch less, or half as much?", Choices: []string{st.String(), half.String()}, Example: st.String()}}
}

// movedAwayAsked asks whether "six inches away from the left post" is where it goes, or how far it is moved.
func movedAwayAsked(a act.Act, st solver.Statement) act.Reading {
	at := a.At
	moved := st
	moved.Op = solver.Plus
	return act.Reading{Ask: &solver.Question{At: &at, Text: "That far from the post, or that much farther?", Choices: []string{st.String(), moved.String()}, Example: st.String()}}
}
