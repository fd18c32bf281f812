package hear

import (
	"saywright/grammar/chunk"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// BareClause is a clause without the signs round it, the joints before it and the words of courtesy.
func BareClause(part []scan.Atom) []scan.Atom {
	for len(part) > 0 && (part[0].Kind == scan.Sign || chunk.Joints[part[0].Text] || paraphrase.Courtesy[part[0].Text] && !(len(part) > 1 && part[0].Text == "no" && part[1].Text == "need")) {
		part = part[1:]
	}
	for len(part) > 0 && (part[len(part)-1].Kind == scan.Sign && part[len(part)-1].Text != `"` || paraphrase.Courtesy[part[len(part)-1].Text] || part[len(part)-1].Text == "now") {
		part = part[:len(part)-1]
	}
	return part
}

// AtomAt is the number of the atom at a place in the line.
func AtomAt(atoms []scan.Atom, at int) int {
	for i := range atoms {
		if atoms[i].At == at {
			return i
		}
	}
	return -1
}
