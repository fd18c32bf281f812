package hear

import (
	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// wipesWhatWasNamed reports whether a clause is a verb that takes back, and a pronoun for what was named before: "wipe it out".
func wipesWhatWasNamed(w []scan.Atom) bool {
	if len(w) < 2 || !TakeBackVerb[w[0].Text] || w[1].Text != "it" && w[1].Text != "that" && w[1].Text != "them" && w[1].Text != "those" {
		return false
	}
	end := 2
	for end < len(w) && !chunk.BreaksClause(w, end) && !chunk.Joints[w[end].Text] {
		end++
	}
	switch rest := BareClause(w[2:end]); {
	case len(rest) == 0:
		return true
	case len(rest) == 1:
		return rest[0].Text == "out" || rest[0].Text == "off" || rest[0].Text == "away" || rest[0].Text == "clean"
	}
	return false
}
