package takeback

import (
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// ReadLed reads a line without what leads it on and what ends it, and as a whole where that says nothing.
func ReadLed(atoms []scan.Atom, c act.Context) (act.Reading, []scan.Atom) {
	rest, also := idiom.PastLead(atoms)
	rest = paraphrase.PastTail(rest)
	if _, ok := paraphrase.PastOK(rest); len(rest) == len(atoms) && !ok {
		return hear.Atoms(atoms, c), atoms
	}
	if agreed, ok := paraphrase.PastOK(rest); ok {
		if r := hear.Atoms(agreed, c); r.Ask == nil && !paraphrase.States(r) {
			return r, agreed // "save this as porch, ok"; "gap 2, ok" asks whether it is
		}
	}
	rest = paraphrase.SetPlain(rest) // what begins and what ends a line is known only now
	if len(rest) == 0 {
		return hear.Atoms(atoms, c), atoms
	}
	if r := hear.Atoms(rest, c); r.Ask == nil && !(also && paraphrase.SetsStock(r)) {
		return r, rest
	}
	if back, ok := Read(rest, c, false); ok {
		return back, rest // "next, all but the opening can go"
	}
	if r := hear.Atoms(atoms, c); r.Ask == nil {
		return r, atoms
	}
	return hear.Atoms(rest, c), rest
}
