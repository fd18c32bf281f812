package parse

import (
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// Topics lists what Help knows: every quantity, then the tables that can be asked for.
func Topics() []string {
	var list []string
	for _, a := range solver.Vocabulary {
		list = append(list, string(a.Quantity))
	}
	return append(list, lexicon.Tables...)
}

func isTopic(s string) bool {
	if s == string(solver.Price) {
		return true
	}
	for _, t := range Topics() {
		if t == s {
			return true
		}
	}
	return false
}
