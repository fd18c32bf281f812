package idiom

import (
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// OpensWholeQuestion reports whether a question that says all by itself begins with an atom, or an order to show something.
func OpensWholeQuestion(in []scan.Atom) bool {
	w := measure.Reader{Atoms: in}
	next := w.Word(1)
	switch w.Word(0) {
	case "where", "what", "why", "how", "which":
		for k := 1; k < min(len(in), 6); k++ {
			if VerbAsks(in[k].Text) {
				return true
			}
			if in[k].Kind != scan.Word || lex.Speakers[in[k].Text] || in[k].Text == "if" || in[k].Text == "the" {
				return false
			}
		}
		return false
	case "show", "tell", "give", "draw", "teach", "do":
		return next == "me" || next == "us"
	case "list", "explain", "print":
		return next == "the" || next == "it" || next == "that"
	case "work":
		return next == "it" && w.Word(2) == "out"
	}
	return false
}

// VerbAsks reports whether a word is the verb of a question.
func VerbAsks(w string) bool {
	return lex.Auxiliary[w] || lex.Helping[w] != "" || w == "am" || w == "'s"
}
