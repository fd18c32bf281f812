package measure

import (
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// Boards are sold in eights and sixteens, and so the parts of an inch are written by who hears them: "gap seven eights", "fit three sixteens".
// Beside a short length they are parts of an inch.

// soundParts are such words, with the denominators that they sound like.
var soundParts = map[string]int{"eights": 8, "sixteens": 16}

// shortLengths are names of lengths of which parts of an inch are commonly told.
var shortLengths = scan.WordSet("gap gaps spacing space spaces fit kerf ear ears reach clearance")

// leadsToLength are words that may stand between such a name and its figure.
var leadsToLength = scan.WordSet("is are at of to up down by a be should goes it - = : about around")

// soundPart reads "seven eights" and "7 8s" behind a short length: the number of parts that stands at atom i, with the word behind it at j.
func (r Reader) soundPart(i, j int, n Number) (den, next int, ok bool) {
	w := r.Word(j)
	d, next := soundParts[w], j+1
	if d == 0 && (w == "8" || w == "16") && r.Glued(j+1) && r.Word(j+1) == "s" {
		d, _ = Atoi(w)
		next = j + 2
	}
	v, whole := n.Val.Int64()
	if d == 0 || !whole || !n.Val.Less(exact.Int(d)) || v < 1 {
		return 0, 0, false
	}
	if r.Word(i-1) == "and" {
		for i--; r.Kind(i-1) == scan.Digits || scan.Ones[r.Word(i-1)] > 0; i-- { // "two and 7 8s"
		}
	}
	for k := i - 1; k >= 0 && k > i-5; k-- {
		if shortLengths[r.Word(k)] {
			return d, next, true
		}
		if !leadsToLength[r.Word(k)] {
			break
		}
	}
	return 0, 0, false
}
