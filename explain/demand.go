package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// sideOf says one side: what wants a length to be at least (lower) or at most so much.
func (d dispute) sideOf(x exact.Rat, name, of string, lower bool) string {
	other := ">" // an upper end is not stated by what only bounds from below
	if lower {
		other = "<"
	}
	r, ok := d.bounding(name, x, other)
	if !ok || name != "" && r.Rule != name {
		return d.unnamed(x, of, lower)
	}
	f := read(r.Says)
	thing := d.v.the(of)
	most := "no more than "
	if lower {
		most = "no less than "
	}
	switch {
	case r.Rule == string(solver.Stock):
		return "the longest board on sale fills no more than " + d.amount(x, of)
	case leans(f.value) && f.name == of:
		return thing + " comes to " + d.amount(x, of)
	case leans(f.value):
		return d.v.the(f.name) + " leaves " + thing + " " + most + d.amount(x, of)
	}
	if d.has(r.Rule, x) || !isLength(f.value) {
		if s := d.v.demand(r, x, of); s != "" {
			return s
		}
	}
	if f.name == of {
		return thing + " comes to " + d.amount(x, of)
	}
	return d.v.the(f.name) + " leaves " + thing + " " + most + d.amount(x, of)
}

// unnamed says a side that no single rule states.
func (d dispute) unnamed(x exact.Rat, of string, lower bool) string {
	what, most := "it takes ", " at the most"
	if lower {
		most = " at the least"
	}
	switch solver.Quantity(of) {
	case solver.WallHeight, solver.PostHeight:
		what = "rails and gaps take "
	case solver.Span:
		what = "bays, openings and posts take "
	case solver.Gap, solver.BottomGap, solver.Opening, solver.Bay:
		return d.v.the(of) + " comes to " + d.amount(x, of) + most
	}
	return what + d.amount(x, of) + most
}

// amount says a figure of what a line is about: a count of a count, a length of a length.
func (d dispute) amount(x exact.Rat, of string) string {
	if t, _, _ := thingOf(of); t.one != "" {
		return number(x)
	}
	return d.v.both(x)
}

// demand says what a rule wants, as a clause of its own: "the brackets need 2 between rails", "the wall is 50".
func (v *voice) demand(r solver.Rule, x exact.Rat, of string) string {
	switch r.Rule {
	case "bracket clearance":
		return "the brackets need " + v.both(x) + " between rails"
	case "bracket ear":
		if of == string(solver.PostHeight) {
			return "the top bracket wants a post up to " + v.both(x)
		}
		return "the lowest bracket stands " + v.both(x) + " below its rail"
	case "guard gap", "guard bottom gap":
		return "a guard lets no " + v.ball(x) + " ball through"
	case "guard height":
		return "a guard is " + v.length(x) + " high or more"
	case "pool barrier height":
		return "a pool barrier is " + v.length(x) + " high or more"
	}
	f := read(r.Says)
	thing := v.the(f.name)
	switch f.op {
	case "=":
		if leans(f.value) {
			return v.phrase(r.Says)
		}
		if _, q, _ := thingOf(f.name); q == solver.OpeningSide {
			return v.phrase(r.Says)
		}
		if t, q, _ := thingOf(f.name); solver.KindOf(q) == solver.Size {
			return "the " + strings.TrimPrefix(t.a, "a ") + isOrAre(t.a) + v.figureOf(f.value)
		}
		return thing + isOrAre(thing) + v.figureOf(f.value)
	case "":
		return v.phrase(r.Says)
	}
	if leans(f.value) {
		return v.phrase(r.Says)
	}
	return thing + isOrAre(thing) + "to be " + v.held(f)
}
