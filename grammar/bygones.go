package grammar

import (
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/paraphrase"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
)

// readWithoutBygones reads a line without its sentences that tell of the old days, where something else is said. It is asked
// only where the line as a whole could not be read.
func readWithoutBygones(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	var left []scan.Atom
	for from := 0; from < len(atoms); {
		to := paraphrase.SentenceEnd(atoms, from)
		if part := atoms[from:to]; atoms[to-1].Text != "?" && reread.TellsOfOldDays(part) {
			c.Subject = reread.SpokenIn(part, c)
		} else {
			left = append(left, part...)
		}
		from = to
	}
	if len(left) == 0 || len(left) == len(atoms) || idiom.PointsBack[left[0].Text] {
		return act.Reading{}, false
	}
	r := hear.Atoms(left, c)
	if r.Ask != nil {
		r = readAgain(left, c, r)
	}
	return r, r.Ask == nil
}
