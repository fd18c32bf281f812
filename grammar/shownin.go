package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// lastingUnits are words by which a unit is meant for all that is still to be said, not for one answer alone.
var lastingUnits = scan.WordSet("work working works everything all always now on onward onwards hence switch use using keep stay go change set convert speak talk think measure am again back")

// readShownIn reads a question without the unit in which its answer is wanted: "can I have the marks in millimeters". What is said beside the
// question is in the units of the talk: the gap of "gap 2, how high is the wall in mm" is in inches.
func readShownIn(line string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	i, units := askedUnit(atoms)
	if units == "" {
		return act.Reading{}, false
	}
	from, to := clauseAsking(atoms, i)
	beside := to > from && (chunk.Figured(atoms[:from]) || chunk.Figured(atoms[to:]))
	if !beside {
		if i > 0 && points[atoms[i-1].Text] {
			return act.Reading{}, false
		}
		from, to = 0, len(atoms)
	}
	for k := from; k < to; k++ {
		if lastingUnits[atoms[k].Text] && !(atoms[k].Text == "on" && k+1 < to && lexicon.Vocab().Articles[atoms[k+1].Text]) { // "the ears on the brackets"
			return act.Reading{}, false
		}
	}
	r := readHeld(line, scan.CutOut(atoms, i, i+2), c)
	shown := false
	for k := range r.Acts {
		switch a := &r.Acts[k]; {
		case answersIn(*a) && (beside || len(a.Statements) == 0):
			a.Units, shown = units, true
		case !beside:
			return act.Reading{}, false
		}
	}
	if beside && r.Ask == nil && !shown {
		return askback.AskedBack(atoms[i].At, "Is everything in "+atoms[i+1].Text+", or only what is asked for?", "units = "+units), true
	}
	return r, r.Ask == nil || beside
}

// clauseAsking returns from where to where the clause with a unit at its end, or at its head, asks or has something shown; the same place twice where it does not.
func clauseAsking(atoms []scan.Atom, unit int) (from, to int) {
	asks := false
	for to = unit + 2; to < len(atoms) && !chunk.BreaksClause(atoms, to-1) && !chunk.Joints[atoms[to].Text]; to++ {
		asks = asks || asksForUnit[atoms[to].Text]
	}
	for i := unit - 1; i >= 0 && !chunk.BreaksClause(atoms, i) && !phrase.MayBeginFigure(atoms[i]); i-- {
		if asksForUnit[atoms[i].Text] {
			return i, to
		}
	}
	if asks {
		return unit, to
	}
	return to, to
}

// asksForUnit are words that ask for what is then wanted in a unit.
var asksForUnit = scan.WordSet("what how where which why tell show give list read print draw")

// askedUnit returns where "in" and a unit stand that no figure is beside, and the unit; "" where they stand nowhere.
func askedUnit(atoms []scan.Atom) (int, string) {
	for i := 0; i+1 < len(atoms); i++ {
		if atoms[i].Text != "in" || i > 0 && phrase.MayBeginFigure(atoms[i-1]) || i+2 < len(atoms) && phrase.MayBeginFigure(atoms[i+2]) && !lexicon.Vocab().Articles[atoms[i+2].Text] {
			continue
		}
		switch w := atoms[i+1].Text; {
		case w == "metric" || w == "customary":
			return i, w
		case measure.InchWords[w] && w != "in":
			return i, "customary"
		default:
			if _, metric := measure.MetricWords[w]; metric && w != "m" {
				return i, "metric"
			}
		}
	}
	return 0, ""
}

// points are words for what was answered before: its unit is that of the talk.
var points = scan.WordSet("it that this those these")

// shownIn takes a unit that belongs to a question ("how wide is bay 2, in millimeters") for that answer alone: what is said later is
// read and shown as before.
func shownIn(r act.Reading, atoms []scan.Atom) act.Reading {
	units, lasts := "", slices.ContainsFunc(atoms, func(a scan.Atom) bool { return lastingUnits[a.Text] })
	var acts []act.Act
	for _, a := range r.Acts {
		switch {
		case a.Kind == act.State && a.Statements[0].Name.Quantity == solver.Units && !lasts && saidInUnit(atoms, a):
			units = a.Statements[0].Value.Word
			continue
		case a.Kind == act.WhatIf && !lasts && saidInUnit(atoms, a):
			at := slices.IndexFunc(a.Statements, func(st solver.Statement) bool { return st.Name.Quantity == solver.Units })
			if at >= 0 && len(a.Statements) > 1 {
				units = a.Statements[at].Value.Word
				a.Statements = slices.Delete(slices.Clone(a.Statements), at, at+1)
			}
		case !answersIn(a) || len(a.Statements) > 0:
			return r
		}
		acts = append(acts, a)
	}
	if units == "" || len(acts) == 0 {
		return r
	}
	for i := range acts {
		acts[i].Units = units
	}
	r.Acts = acts
	return r
}

// answersIn are the acts whose answers can be shown in another unit.
var answersIn = hear.KindOf(act.Ask, act.Why, act.WhyNot, act.WhatIf, act.Check, act.ShowAll, act.Next)

// saidInUnit reports whether "in" and a unit stand in the words of an act, or its words begin with the unit behind an "in".
func saidInUnit(atoms []scan.Atom, a act.Act) bool {
	for i := 1; i < len(atoms); i++ {
		_, metric := measure.MetricWords[atoms[i].Text]
		if atoms[i].At >= a.At && atoms[i].At < a.End && atoms[i-1].Text == "in" && (metric || atoms[i].Text == "metric" || measure.InchWords[atoms[i].Text] || measure.FootWords[atoms[i].Text]) {
			return true
		}
	}
	return false
}
