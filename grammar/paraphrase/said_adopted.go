package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/scan"
)

// soItIs takes up a figure that somebody else told and that is said again: "my uncle says five boards, so five it is".
func soItIs(atoms []scan.Atom) []scan.Atom {
	n := len(atoms)
	for n > 0 && (atoms[n-1].Text == "." || atoms[n-1].Text == "!" || atoms[n-1].Text == "then") {
		n--
	}
	if n < 6 || atoms[n-1].Text != "is" || atoms[n-2].Text != "it" || atoms[n-4].Text != "so" && atoms[n-4].Text != "," || !idiom.TheirsTold(atoms) {
		return atoms
	}
	if at, end := idiom.LastFigure(atoms[:n-4]); at < 0 || scan.Text(atoms[at:end]) != atoms[n-3].Text {
		return atoms
	}
	return InARow(atoms[:n-4], []scan.Atom{chunk.Worded(atoms[n-4], "so"), chunk.Worded(atoms[n-3], "use"), chunk.Worded(atoms[n-2], "that")})
}
