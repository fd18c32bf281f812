package takeback

import (
	"saywright/grammar/aside"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// WithoutSizes leaves out the clauses that tell how big an outsider is, so that no figure in them is taken for one of the
// wall. It reports false where nothing else is said.
func WithoutSizes(atoms []scan.Atom) ([]scan.Atom, bool) {
	cuts := ClauseStarts(atoms)
	var left []scan.Atom
	dropped := false
	for k, from := range cuts {
		to := len(atoms)
		if k+1 < len(cuts) {
			to = cuts[k+1]
		}
		part := atoms[from:to]
		if paraphrase.TellsSize(part) {
			if !dropped {
				left = append(left, atoms[:from]...)
			}
			dropped = true
			continue
		}
		if !dropped {
			continue
		}
		if len(left) == 0 {
			part = aside.WithoutJoint(part)
		}
		left = append(left, part...)
	}
	if !dropped {
		return atoms, true
	}
	return left, len(left) > 0 && !paraphrase.ThanThatOne(left)
}
