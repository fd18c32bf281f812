package hear

import "saywright/grammar/scan"

// endOfTalk is where a line ends but for the sounds that people make while they think: "between two and, uh".
func endOfTalk(atoms []scan.Atom) int {
	n := len(atoms)
	for n > 1 && soundsOnly[atoms[n-1].Text] {
		n--
		for n > 1 && n < len(atoms) && (atoms[n-1].Text == "," || atoms[n-1].Text == "-" || atoms[n-1].Text == "...") {
			n--
		}
	}
	if n == 0 {
		return 0
	}
	return atoms[n-1].End
}

// soundsOnly are sounds that people make while they think.
var soundsOnly = scan.WordSet("uh um er erm hmm hm uhm")
