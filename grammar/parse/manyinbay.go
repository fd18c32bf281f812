package parse

import (
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// manyInBay reports whether the boards or the stiffeners of a bay are multiplied: "double the stiffeners in bay 2", "twice the boards per bay". Beside a bay
// they would be taken for what is measured along it or between them, and twice the space would be half as many.
func (k *clause) manyInBay() bool {
	many, in := false, k.bay > 0
	for _, i := range k.things {
		switch t := k.items[i]; t.Key() {
		case "rail", "stiffener":
			many = many || t.Plural() && counts(t.Token)
		case "bay":
		case "per bay":
			in = true
		default:
			return false
		}
	}
	return many && in && len(k.dims) == 0
}

// counts reports whether a word is of the boards themselves: no measure of them is named before it.
func counts(t *lex.Token) bool {
	for _, w := range strings.Fields(t.Before) {
		if !beforeMany[w] {
			return false
		}
	}
	return true
}

var beforeMany = scan.WordSet("the of number count amount all many my our those these")
