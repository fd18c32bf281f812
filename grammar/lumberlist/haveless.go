package lumberlist

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// WithoutBadOnes takes the boards that are no good off those that somebody has: "of the five eight foot 1x4s I own one is rotten, the
// rest I can use", "I've got six ten foot 2x6s but two are warped".
func WithoutBadOnes(atoms []scan.Atom) []scan.Atom {
	bad := slices.IndexFunc(atoms, func(a scan.Atom) bool { return badBoards[a.Text] })
	if bad < 3 || slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "?" || a.Text == "if" || a.Text == "not" }) {
		return atoms
	}
	from := bad
	for from > 0 && badLeads[atoms[from-1].Text] {
		from--
	}
	var less int
	if from > 1 {
		if n, next := countTold(atoms, from-1); next == from {
			less, from = n, from-1
		}
	}
	if less == 0 || from < 4 {
		return atoms
	}
	owned := slices.ContainsFunc(atoms[:from], func(a scan.Atom) bool { return ownsBoards[a.Text] })
	for i := 1; i < from; i++ {
		n, next := countTold(atoms, i)
		if n <= less || !ownsBoards[atoms[i-1].Text] && !(i > 1 && atoms[i-2].Text == "of") {
			continue
		}
		end := piecesEnd(atoms, next)
		if !owned || end == 0 || end > from {
			return atoms
		}
		for k := end; k < from; k++ {
			if key, _ := chunk.PartKey(atoms, k); atoms[k].Text == "." || atoms[k].Text == "wall" || key != "" && key != "rail" {
				return atoms // other pieces, or another place
			}
		}
		behind := bad + 1
		for behind < len(atoms) && restUsed[atoms[behind].Text] {
			behind++
		}
		if behind > bad+1 && behind < len(atoms) && !chunk.EndsPart(atoms, behind) {
			behind = bad + 1
		}
		out := append(make([]scan.Atom, 0, len(atoms)), chunk.Worded(atoms[i], "i"), chunk.Worded(atoms[i], "have"), scan.Atom{Text: measure.Itoa(n - less), Kind: scan.Digits, At: atoms[i].At, End: atoms[i].End})
		return append(append(out, atoms[next:end]...), atoms[behind:]...)
	}
	return atoms
}

var (
	badBoards  = scan.WordSet("rotten rotted warped split cracked twisted junk ruined bowed cupped crooked broken")
	badLeads   = scan.WordSet("is are was were turned out to be of them those the too got been 's all")
	ownsBoards = scan.WordSet("have got own 've has kept saved pulled salvaged scrounged rescued reclaimed stripped pried dug dragged hauled inherited")
	restUsed   = scan.WordSet(", ; and but the rest others other i we can use are is fine good ok okay usable sound so")
)
