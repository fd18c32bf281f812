package grammar

import (
	"slices"

	"saywright/solver"
)

// lastingUnits are words by which a unit is meant for all that is still to be said, not for one answer alone.
var lastingUnits = wordSet("work working works everything all always now on onward onwards hence switch use using keep stay go change set convert speak talk think measure am again back")

// readShownIn reads a question without the unit in which its answer is wanted: "can I have the marks in millimeters". What is said beside the
// question is in the units of the talk: the gap of "gap 2, how high is the wall in mm" is in inches.
func readShownIn(line string, atoms []atom, c Context) (Reading, bool) {
	i, units := askedUnit(atoms)
	if units == "" {
		return Reading{}, false
	}
	from, to := clauseAsking(atoms, i)
	beside := to > from && (figured(atoms[:from]) || figured(atoms[to:]))
	if !beside {
		if i > 0 && points[atoms[i-1].text] {
			return Reading{}, false
		}
		from, to = 0, len(atoms)
	}
	if slices.ContainsFunc(atoms[from:to], func(a atom) bool { return lastingUnits[a.text] }) {
		return Reading{}, false
	}
	r := readHeld(line, cutOut(atoms, i, i+2), c)
	shown := false
	for k := range r.Acts {
		switch a := &r.Acts[k]; {
		case answersIn(*a) && (beside || len(a.Statements) == 0):
			a.Units, shown = units, true
		case !beside:
			return Reading{}, false
		}
	}
	if beside && r.Ask == nil && !shown {
		return askedBack(atoms[i].at, "Is everything in "+atoms[i+1].text+", or only what is asked for?", "units = "+units), true
	}
	return r, r.Ask == nil || beside
}

// clauseAsking returns from where to where the clause with a unit at its end, or at its head, asks or has something shown; the same place twice where it does not.
func clauseAsking(atoms []atom, unit int) (from, to int) {
	asks := false
	for to = unit + 2; to < len(atoms) && !breaksClause(atoms, to-1) && !joints[atoms[to].text]; to++ {
		asks = asks || asksForUnit[atoms[to].text]
	}
	for i := unit - 1; i >= 0 && !breaksClause(atoms, i) && !mayBeginFigure(atoms[i]); i-- {
		if asksForUnit[atoms[i].text] {
			return i, to
		}
	}
	if asks {
		return unit, to
	}
	return to, to
}

// asksForUnit are words that ask for what is then wanted in a unit.
var asksForUnit = wordSet("what how where which why tell show give list read print draw")

// askedUnit returns where "in" and a unit stand that no figure is beside, and the unit; "" where they stand nowhere.
func askedUnit(atoms []atom) (int, string) {
	for i := 0; i+1 < len(atoms); i++ {
		if atoms[i].text != "in" || i > 0 && mayBeginFigure(atoms[i-1]) || i+2 < len(atoms) && mayBeginFigure(atoms[i+2]) && !vocab().articles[atoms[i+2].text] {
			continue
		}
		switch w := atoms[i+1].text; {
		case w == "metric" || w == "customary":
			return i, w
		case inchWords[w] && w != "in":
			return i, "customary"
		default:
			if _, metric := metricWords[w]; metric && w != "m" {
				return i, "metric"
			}
		}
	}
	return 0, ""
}

// points are words for what was answered before: its unit is that of the talk.
var points = wordSet("it that this those these")

// shownIn takes a unit that belongs to a question ("how wide is bay 2, in millimeters") for that answer alone: what is said later is
// read and shown as before.
func shownIn(r Reading, atoms []atom) Reading {
	units, lasts := "", slices.ContainsFunc(atoms, func(a atom) bool { return lastingUnits[a.text] })
	var acts []Act
	for _, a := range r.Acts {
		switch {
		case a.Kind == State && a.Statements[0].Name.Quantity == solver.Units && !lasts && saidInUnit(atoms, a):
			units = a.Statements[0].Value.Word
			continue
		case a.Kind == WhatIf && !lasts && saidInUnit(atoms, a):
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
var answersIn = kindOf(Ask, Why, WhyNot, WhatIf, Check, ShowAll, Next)

// saidInUnit reports whether "in" and a unit stand in the words of an act, or its words begin with the unit behind an "in".
func saidInUnit(atoms []atom, a Act) bool {
	for i := 1; i < len(atoms); i++ {
		_, metric := metricWords[atoms[i].text]
		if atoms[i].at >= a.At && atoms[i].at < a.End && atoms[i-1].text == "in" && (metric || atoms[i].text == "metric" || inchWords[atoms[i].text] || footWords[atoms[i].text]) {
			return true
		}
	}
	return false
}
