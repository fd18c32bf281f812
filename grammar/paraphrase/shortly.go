package paraphrase

import (
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

var (
	leaving    = scan.WordSet("leave leaves give gives make makes mean means")
	leftByRows = scan.WordSet("gap gaps space spaces spacing daylight air")
)

// rowsMeant sets "rails" behind a number that leaves a gap or gives a height: "what gap would eight leave" is after eight rails.
func rowsMeant(atoms []scan.Atom) []scan.Atom {
	asked, left := false, false
	for i := range atoms {
		switch w := atoms[i].Text; {
		case w == "what", w == "which", w == "how":
			asked, left = true, false
		case leftByRows[w]:
			left = true
		case asked && left && lex.Helping[w] != "":
			n, next, ok := measure.Reader{Atoms: atoms}.Whole(i + 1)
			if !ok || n.Frac || next >= len(atoms) || !leaving[atoms[next].Text] {
				continue
			}
			rails := scan.Atom{Kind: scan.Word, Text: "rails", At: atoms[next-1].End, End: atoms[next-1].End}
			return append(append(append([]scan.Atom{}, atoms[:next]...), rails), atoms[next:]...)
		}
	}
	return atoms
}
