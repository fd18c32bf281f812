package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/grammar/ways"
	"saywright/solver"
	"saywright/solver/exact"
)

// "Make the opening a little wider, say 34": the figure behind the pause is what the opening shall be, for nobody calls 34 in a little. "Two inches wider",
// "wider by 2" tell by how much. Which of the two a figure is shows by what was said before it, and by what stands. Common ways of speech, no source.

const (
	bySome    = `(?:a|some|just a|a (?:wee|tiny|little)) (?:little|bit|few|couple|tad|touch|smidge|smidgen|hair|trifle|shade)|slightly|somewhat|some|marginally`
	changesSo = `(?:wider|bigger|taller|higher|larger|longer|more|looser|tighter|narrower|smaller|shorter|lower|less|fewer|closer|broader|deeper|up|down)`
	figureSo  = `(?:[0-9]|half|quarter|three|one|two|four|five|six|seven|eight|nine|ten|eleven|twelve|thir|fif|twen|for|a hundred|hundred|an? )`
)

var (
	// someSo is a vague amount of a change, and a figure behind a pause.
	someSo = regexp.MustCompile(`\b(?:` + bySome + `) ` + changesSo + `\b(?: (?:the |my |our )?[a-z]+){0,3}? (?:[,:;-]|say|at|to|like|maybe|so|make it)(?: (?:,|:|say|at|to|like|maybe|about|around|make it|make that|perhaps|call it|let us say))* ` + figureSo)
	// pausedSo is a change, and a figure behind a pause.
	pausedSo = regexp.MustCompile(`\b` + changesSo + `\b(?: (?:the |my |our )?[a-z]+){0,2}? (?:[,:;]|say|at)(?: (?:,|:|say|at|like|maybe|about|around|make it|make that|perhaps|call it|let us say))* ` + figureSo)
	// toldBy tells plainly by how much.
	toldBy = regexp.MustCompile(`\bby\b|\b(?:another|extra|add|adding|plus|more than|less than|wider than|over|under)\b|\+`)
	// figuredSo is a figure right before the change that it tells.
	figuredSo = regexp.MustCompile(`(?:[0-9]"?|\b(?:inch|inches|foot|feet|ft|in|mm|cm|half|halves|quarters?|eighths?|sixteenths?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|[a-z]+ty)) ` + changesSo + `\b`)
	// unitSo is a unit of length behind a figure.
	unitSo = regexp.MustCompile(`\b(?:inch|inches|in|foot|feet|ft|mm|cm|millimeters?|centimeters?|meters?|halfs?|half|quarters?|eighths?|sixteenths?)\b|["']`)
)

// NewSize takes the figure of a change for what the part shall be where the line shows that it is that, and asks where it may be both.
func NewSize(r act.Reading, said string, c act.Context) act.Reading {
	if r.Ask != nil {
		return r
	}
	did, at := changeAlone(r.Acts)
	if did < 0 {
		return r
	}
	st := r.Acts[did].Statements[at]
	some := ways.MatchesWay(someSo, said)
	told := ways.MatchesWay(toldBy, said)
	paused := some || !told && ways.MatchesWay(pausedSo, said) && !figuredSo.MatchString(said)
	if !paused && (told || solver.KindOf(st.Name.Quantity) == solver.Count || ways.MatchesWay(unitSo, said)) {
		return r
	}
	now, known := exact.Rat{}, false
	if c.Now != nil {
		now, known = c.Now(st.Name)
	}
	becomes, changes := sizesOf(st, now, known)
	if v := st.Value.Num; some && known && now.Less(v.Add(v)) {
		changes = false // that is more than a little
	}
	switch {
	case changes && !(paused && becomes), !paused && !known && st.Value.Num.Less(exact.Int(12)):
		return r
	case paused && becomes && !changes && (some || known):
		r.Acts = withOp(r.Acts, did, at, solver.Eq)
		return r
	}
	set := parse.Normal(withOp(r.Acts, did, at, solver.Eq))
	place := r.Acts[did].At
	return act.Reading{Ask: &solver.Question{At: &place, Text: "Is that how much it shall be, or by how much it changes?", Choices: []string{set, parse.Normal(r.Acts)}, Example: set}}
}

// changeAlone finds the one part that a line changes by a plain figure; -1 where there is none, or more than one.
func changeAlone(acts []act.Act) (did, at int) {
	did = -1
	for i, a := range acts {
		if a.Kind != act.State && a.Kind != act.WhatIf {
			continue
		}
		for j, s := range a.Statements {
			if s.Op != solver.Plus && s.Op != solver.Minus || s.Value.Of != nil || s.Value.Unit == solver.PercentOf || leastSize[s.Name.Quantity] == 0 {
				continue
			}
			if did >= 0 {
				return -1, 0
			}
			did, at = i, j
		}
	}
	return did, at
}

// leastSize are the least lengths, in inches, that a part is made where it is not known what it measures, and mostChange the most that it is changed by: a carpenter's
// feel for half walls, used only to ask or to tell a size from a change.
var (
	leastSize = map[solver.Quantity]int{solver.Opening: 20, solver.WallHeight: 20, solver.Span: 48, solver.Overall: 48, solver.Centers: 48, solver.PostHeight: 20, solver.Gap: 1, solver.BottomGap: 1, solver.Bay: 20, solver.StiffenerSpacing: 10,
		solver.Rails: 2, solver.Stiffeners: 1, solver.AddedPosts: 1}
	mostChange = map[solver.Quantity]int{solver.Opening: 16, solver.WallHeight: 16, solver.Span: 40, solver.Overall: 40, solver.Centers: 40, solver.PostHeight: 16, solver.Gap: 1, solver.BottomGap: 4, solver.Bay: 24, solver.StiffenerSpacing: 12,
		solver.Rails: 20, solver.Stiffeners: 20, solver.AddedPosts: 20}
)

// sizesOf tells whether the figure of a change may be what the part shall measure, and whether it may be by how much that changes: what more than doubles a
// length, or leaves less than a third of it, is no change that anybody asks for in passing.
func sizesOf(st solver.Statement, now exact.Rat, known bool) (becomes, changes bool) {
	v := st.Value.Num
	if !known || now.Sign() <= 0 {
		least, ok := leastSize[st.Name.Quantity]
		return !ok || !v.Less(exact.Int(least)), !ok || !exact.Int(mostChange[st.Name.Quantity]).Less(v)
	}
	then := now.Add(v)
	becomes = now.Less(v)
	if st.Op == solver.Minus {
		then, becomes = now.Sub(v), v.Less(now)
	}
	within := func(x exact.Rat) bool { return !now.Add(now).Less(x) && !x.Add(x).Add(x).Less(now) }
	return becomes && within(v), within(then)
}

// withOp is a copy of acts in which one statement has another operator.
func withOp(acts []act.Act, act, at int, op solver.Op) []act.Act {
	acts = slices.Clone(acts)
	acts[act].Statements = slices.Clone(acts[act].Statements)
	acts[act].Statements[at].Op = op
	return acts
}
