package guard

import (
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// A word of limit, or an "about", that stands between two figures with no pause ("wall 48 max three inch gaps", "span 144 about six rails") may be of either.
// Where it was taken for the one before it, it is asked of which of them it is. Common ways of speech, no source.

// limitAmid are such lines.
var limitAmid = []hear.OpenWay{
	{Looks: limitedFirst, Way: asWay(`(^| ){[0-9]+|Number|half|quarters?|eighths?|sixteenths?|inch|inches|in|"|foot|feet|ft|'|mm|cm|high|tall|wide|long|rails?|boards|posts?|stiffeners?|bays?}( \.)? {max|maximum|min|minimum|about|around|roughly|approx|approximately|circa}( \.)? {[0-9]|Number|half|a |an |the |my |gaps?|bays?|rails?|boards|slats|opening|doorway|bottom gap|posts?|stiffeners?|wall|span|spacing}`), Not: asWay(`\b{max|maximum|min|minimum} {about|around}\b|\b{at|a|the|as a|of} {max|maximum|min|minimum}\b|\band about\b`), Ask: whichIsLimited},
}

// limitedFirst reports whether a value is told as a limit, or about.
func limitedFirst(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) > 0 && loose(a.Statements[len(a.Statements)-1])
}

// loose reports whether a statement is a limit, or about.
func loose(s solver.Statement) bool {
	switch s.Op {
	case solver.LE, solver.LT, solver.GE, solver.GT, solver.Near:
		return s.Value.Of == nil && s.Name.Quantity != solver.Goal
	}
	return false
}

// whichIsLimited asks which of two values that follow each other is the limit, where the second of them was taken as it stands.
func whichIsLimited(a act.Act, all []act.Act) solver.Question {
	var told []solver.Statement
	for _, b := range all {
		if b.Kind != act.State {
			return solver.Question{}
		}
		told = append(told, b.Statements...)
	}
	last := a.Statements[len(a.Statements)-1]
	for i := 0; i+1 < len(told); i++ {
		next := told[i+1]
		if told[i].Name != last.Name || !loose(told[i]) || next.Op != solver.Eq || next.Value.Of != nil || next.Name.Quantity == solver.Goal || next.Name == last.Name {
			continue
		}
		told[i].Op, told[i+1].Op = next.Op, told[i].Op
		turned := make([]act.Act, 0, len(told))
		for _, s := range told {
			turned = append(turned, act.Act{Kind: act.State, Statements: []solver.Statement{s}})
		}
		text := "Which of the two is the limit?"
		if last.Op == solver.Near {
			text = "Which of the two is only about that?"
		}
		choices := []string{parse.Normal(turned), parse.Normal(all)}
		return solver.Question{Text: text, Choices: choices, Example: choices[0]}
	}
	return solver.Question{}
}
