package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/contrast"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// readNotAsked reads a line without what it says is not asked for.
func readNotAsked(line string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return contrast.NotAskedKeys[a.Text] }) {
		return act.Reading{}, false
	}
	parts := contrast.ContrastParts(atoms)
	if len(parts) < 2 {
		return act.Reading{}, false
	}
	var rest, dropped []scan.Atom
	for _, part := range parts {
		if len(dropped) == 0 && contrast.Needless(part) {
			dropped = part
			continue
		}
		rest = append(rest, part...)
	}
	if len(dropped) == 0 || len(rest) == 0 {
		return act.Reading{}, false
	}
	rest = contrast.WhatIsAsked(aside.WithoutJoint(rest), dropped)
	if rest == nil {
		return act.Reading{}, false
	}
	for i, a := range rest {
		if i == 0 && rest[0].At < dropped[0].At || rest[0].Text == "save" {
			break // it was said before
		}
		if contrast.PointsAtDropped[a.Text] && !(i > 0 && (rest[i-1].Text == "how" || a.Text == "it" && measure.Reader{Atoms: rest}.Word(i+1) == "is")) {
			return act.Reading{}, false
		}
	}
	r := readHeld(line, rest, c)
	return r, r.Ask == nil && len(r.Acts) > 0 && !slices.ContainsFunc(r.Acts, func(a act.Act) bool {
		return a.Kind == act.Check || a.Kind == act.Forget && a.Topic == "" && len(a.Statements) == 0
	})
}
