package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// Two things may be named of which only one was heard: "wall and opening twice as big" changed the opening alone, "gap about 2 and the bottom gap
// twice that" changed the bottom gap by what it was. What idiom/said_together.go does not set plain is asked back. Common ways of speech, no source.

const (
	// besideName is what may be told beside another, besideChange a change of it.
	besideName = `(?:bottom gap|gaps?|wall height|walls?|openings?|doorways?|spans?|bays?|posts?|post height|height|rails?|boards?|slats?|stiffeners?|stiffener spacing|budget|kerf|drop)`
	moreThan   = `(?:more|less|fewer|extra|additional|higher|taller|lower|shorter|wider|narrower|bigger|larger|smaller|tighter|looser|longer|deeper)`
	ownArticle = `(?:the |my |our |a )?`
)

// besideIt are such lines, each with what is heard of it.
var besideIt = []hear.OpenWay{
	// Two that are named together, and one that changes.
	{Looks: changesOne, Way: regexp.MustCompile(`\b` + besideName + ` and ` + ownArticle + besideName + `\b`), Not: regexp.MustCompile(`\b(?:between|keep|leave|same|without)\b`), Ask: ofBoth("wall 2 higher, opening 2 wider")},
	{Looks: hear.ValuedAny, Way: regexp.MustCompile(`\b(?:two|three|four|five|six|couple|few|[2-9]) ` + moreThan + ` ` + besideName + ` and ` + ownArticle + besideName + `\b`), Ask: countsMore(hear.OpenQuestion("Is that for both of them?", "two more rails, two more stiffeners"))},
	{Looks: changesOne, Way: regexp.MustCompile(`\b(?:one|another|an?) (?:more |less |fewer |extra |additional )?` + besideName + `(?: more| less| extra| fewer)? and (?:just |only )?(?:an?|one|two|three|[1-3]) (?:rails?|stiffeners?|posts?|bays?|boards?|slats?)(?: [.!])*$`), Ask: countsMore(hear.OpenQuestion("Is the second how many there are, or how many more?", "one more rail, one more stiffener"))},
	{Looks: changesOne, Way: regexp.MustCompile(`\b(?:two|three|[23]) (?:more |less |fewer |extra |additional )?` + besideName + `(?: more| less| extra| fewer)? and (?:just |only )?(?:an?|one|two|three|[1-3]) (?:rails?|stiffeners?|posts?|bays?|boards?|slats?)(?: more| less| extra| fewer)?(?: [.!])*$`), Ask: countsMore(hear.OpenQuestion("Is that how many there are, or how many more?", "two more rails, one more stiffener"))},
	{Looks: hear.Sets, Way: regexp.MustCompile(`\b(?:raise|lower|lift|drop|widen|narrow|set|make|bring|take|increase|reduce) (?:both )?` + ownArticle + besideName + ` and ` + ownArticle + besideName + ` (?:up |down )?(?:to|at) `), Not: regexp.MustCompile(`\b(?:between|keep|leave|same|without)\b`), Ask: ofBoth("wall 48, post 48")},
	{Looks: changesOne, Way: regexp.MustCompile(`\b(?:raise|lower|lift|drop|widen|narrow|increase|reduce|tighten|loosen|shrink)\b [^,.;]* and ` + ownArticle + besideName + ` (?:a|an|one|two|half a) (?:foot|feet|inch|inches)(?: [.!])*$`), Ask: setsSecond(hear.OpenQuestion("Is the second what it shall be, or by how much it changes?", "raise the wall by 2 and the gap by 1/4"))},
	// What is as much as another, and was taken for a change.
	{Looks: changesAny, Way: regexp.MustCompile(`\b(?:twice|double|half|triple|third|quarter|tenth|times)(?: of| as much as)? (?:that|this|it)\b|\bthan (?:that|this|it)\b|\bsame (?:plus|minus|less)\b|\b(?:double|half|twice)(?: [.!])*$`), Ask: besideValue(hear.OpenQuestion("As much of the other, or of what it was?", "gap 2, bottom gap twice the gap"))},
	{Looks: hear.ValuedAny, Way: regexp.MustCompile(`\btimes (?:that|this|it)\b|\b` + besideName + ` (?:a )?half(?: [.!])*$`), Ask: besideValue(hear.OpenQuestion("As much of the other, or of what it was?", "gap 2, bottom gap three times the gap"))},
	{Looks: changesAny, Way: regexp.MustCompile(`\b` + moreThan + `\b`), Ask: ofItsKind(hear.OpenQuestion("More than the other, or than it was?", "gap 2, bottom gap 1 more than the gap"))},
	{Looks: changesAny, Way: regexp.MustCompile(`(?: and|,) .*\b` + moreThan + ` than (?:that|this|it)(?: [.!])*$`), Not: regexp.MustCompile(`\bby\b`), Ask: alone(hear.OpenQuestion("More than what, and by how much?", "bottom gap more than the gap"))},
	{Looks: hear.ValuedAny, Way: regexp.MustCompile(`\b(?:add|more|another|extra|double|raise|widen|increase)\b.*\b(?:but|and) (?:no|not)\b`), Ask: changesOfNone(hear.OpenQuestion("Shall there be none of those, or does it stay as it is?", "no stiffeners"))},
	// What stays, or does the same.
	{Looks: roundsEach, Way: regexp.MustCompile(`\bsame (?:gap|space|spacing)(?: [.!])*$`), Ask: besideAny(hear.OpenQuestion("Shall the gap stay what it was, or all gaps be alike?", "gap 2-1/2"))},
	{Looks: changesOne, Way: regexp.MustCompile(`\b` + moreThan + `(?: ?,)? (?:and |but |with )?` + ownArticle + besideName + ` (?:is |are )?(?:the )?same(?: [.!])*$`), Ask: hear.OpenQuestion("Does it stay as it is, or change as much?", "wall 2 higher")},
	{Looks: hear.Stated(solver.BottomGap), Way: regexp.MustCompile(`\b` + moreThan + `\b.*\b(?:same|too|likewise|as well|ditto)\b`), Ask: changesToo(hear.OpenQuestion("Is the bottom gap as wide as the others, or wider by that?", "bottom gap the same as the gap"))},
}

// asksOpen is a question of such a line.
type asksOpen = func(act.Act, []act.Act) solver.Question

// statementsOf are all statements of a line.
func statementsOf(all []act.Act) (out []solver.Statement) {
	for _, a := range all {
		out = append(out, a.Statements...)
	}
	return out
}

// when asks a question only of lines of which something holds.
func when(ask asksOpen, holds func([]solver.Statement) bool) asksOpen {
	return func(a act.Act, all []act.Act) solver.Question {
		if !holds(statementsOf(all)) {
			return solver.Question{}
		}
		return ask(a, all)
	}
}

func isChange(s solver.Statement) bool { return parse.Changes(s.Op) }

// changesAny reports whether an act changes something; changesOne whether it does so of no more than one quantity.
func changesAny(a act.Act) bool {
	return hear.ValuedAny(a) && slices.ContainsFunc(a.Statements, isChange)
}

func changesOne(a act.Act) bool { return changesAny(a) && len(a.Statements) <= 2 }

// roundsEach: all gaps are to be alike.
func roundsEach(a act.Act) bool { return a.Kind == act.State && a.String() == "even gaps" }

// ofBoth asks whether both change where only one was heard to.
func ofBoth(example string) asksOpen {
	return when(hear.OpenQuestion("Is that for both of them?", example), func(told []solver.Statement) bool {
		return len(told) == 1
	})
}

// countsMore asks where a count is changed, and no other one is, too.
func countsMore(ask asksOpen) asksOpen {
	return when(ask, func(told []solver.Statement) bool {
		changed := 0
		for _, s := range told {
			if isChange(s) && solver.KindOf(s.Name.Quantity) == solver.Count {
				changed++
			}
		}
		return changed == 1
	})
}

// besideValue asks where a value of another quantity is told before, and none leans on it.
func besideValue(ask asksOpen) asksOpen {
	return when(ask, func(told []solver.Statement) bool {
		return len(told) > 1 && !isChange(told[0]) && !slices.ContainsFunc(told, func(s solver.Statement) bool { return s.Value.Of != nil })
	})
}

// ofItsKind asks where a value of one gap or bay is told, and the next changes.
func ofItsKind(ask asksOpen) asksOpen {
	return when(ask, func(told []solver.Statement) bool {
		for i := 1; i < len(told); i++ {
			a, b := told[i-1].Name, told[i].Name
			if told[i-1].Op == solver.Eq && isChange(told[i]) && a != b && (a.Quantity == b.Quantity || a.Quantity == solver.Gap && b.Quantity == solver.BottomGap) {
				return true
			}
		}
		return false
	})
}

// besideAny asks where something else is told, too.
func besideAny(ask asksOpen) asksOpen {
	return func(a act.Act, all []act.Act) solver.Question {
		if len(all) < 2 {
			return solver.Question{}
		}
		return ask(a, all)
	}
}

// changesToo asks where the gap changes, and the bottom gap leans on it.
func changesToo(ask asksOpen) asksOpen {
	return when(ask, func(told []solver.Statement) bool {
		return slices.ContainsFunc(told, isChange) && slices.ContainsFunc(told, func(s solver.Statement) bool { return s.Name.Quantity == solver.BottomGap && s.Value.Of != nil })
	})
}

// alone asks where nothing else is told.
func alone(ask asksOpen) asksOpen {
	return when(ask, func(told []solver.Statement) bool { return len(told) == 1 && told[0].Name.Quantity != solver.Gap })
}

// changesOfNone asks where something changes, and another is to be none.
func changesOfNone(ask asksOpen) asksOpen {
	return when(ask, func(told []solver.Statement) bool {
		return slices.ContainsFunc(told, isChange) && slices.ContainsFunc(told, func(s solver.Statement) bool {
			return s.Op == solver.Eq && s.Value.Of == nil && s.Value.Word == "" && s.Value.Num.Eq(exact.Int(0))
		})
	})
}

// setsSecond asks where one is changed, and the other set.
func setsSecond(ask asksOpen) asksOpen {
	return when(ask, func(told []solver.Statement) bool { return len(told) == 2 && isChange(told[0]) && !isChange(told[1]) })
}
