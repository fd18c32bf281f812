package aside

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// TellsAge reports whether a clause tells how old somebody is: "my daughter is 3", "our twins just turned two".
func TellsAge(part []scan.Atom) bool {
	w := lex.WordsOf(part)
	for len(w) > 0 && (lex.Owned[w[0]] || chunk.Joints[w[0]] || paraphrase.Causes[w[0]] || StepBefore[w[0]]) {
		w = w[1:]
	}
	if len(w) < 3 || !lex.Young[w[0]] {
		return false
	}
	i := 1
	for i < len(w) && (w[i] == "is" || w[i] == "are" || w[i] == "'s" || w[i] == "just" || w[i] == "only" || w[i] == "turned" || w[i] == "turns" || w[i] == "about" || w[i] == "almost") {
		i++
	}
	figures := 0
	for ; i < len(w); i++ {
		switch {
		case scan.Ones[w[i]] > 0 || w[i][0] >= '0' && w[i][0] <= '9':
			figures++
		case w[i] == "years", w[i] == "year", w[i] == "old", w[i] == "months", w[i] == "yrs", w[i] == "and", w[i] == "now", w[i] == "half", w[i] == "a":
		default:
			return false
		}
	}
	return figures > 0
}
