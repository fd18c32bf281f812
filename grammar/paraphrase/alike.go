package paraphrase

import "saywright/grammar/scan"

// CountsNext are words after which a number is likelier than a "to" or a "for" before a noun in the plural.
var CountsNext = scan.WordSet("have had got want need needs use using are is there take takes buy bought put set add adds make only just with and has")

// Be are forms of "be", after which a "too" at the end is no number.
var Be = scan.WordSet("be is are was were")

// toBuy sets "what do I have to by" right: no size and no figure follows.
func toBuy(atoms []scan.Atom) []scan.Atom {
	for i := 2; i < len(atoms); i++ {
		if atoms[i].Text == "bye" && Buyers[atoms[i-1].Text] {
			atoms = append([]scan.Atom{}, atoms...)
			atoms[i].Text = "buy" // "what do I need to bye"
			continue
		}
		if atoms[i].Text != "by" || atoms[i-1].Text != "to" || !CountsNext[atoms[i-2].Text] || i+1 < len(atoms) && (atoms[i+1].Kind == scan.Digits || atoms[i+1].Kind == scan.Vulgar || scan.Ones[atoms[i+1].Text] > 0) {
			continue
		}
		atoms = append([]scan.Atom{}, atoms...)
		atoms[i].Text = "buy"
	}
	return atoms
}

// Buyers are words after which nobody says farewell.
var Buyers = scan.WordSet("to i we you should must can could will would gotta")
