package grammar

import "slices"

// withoutBadOnes takes the boards that are no good off those that somebody has: "of the five eight foot 1x4s I own one is rotten, the
// rest I can use", "I've got six ten foot 2x6s but two are warped".
func withoutBadOnes(atoms []atom) []atom {
	bad := slices.IndexFunc(atoms, func(a atom) bool { return badBoards[a.text] })
	if bad < 3 || slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "?" || a.text == "if" || a.text == "not" }) {
		return atoms
	}
	from := bad
	for from > 0 && badLeads[atoms[from-1].text] {
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
	owned := slices.ContainsFunc(atoms[:from], func(a atom) bool { return ownsBoards[a.text] })
	for i := 1; i < from; i++ {
		n, next := countTold(atoms, i)
		if n <= less || !ownsBoards[atoms[i-1].text] && !(i > 1 && atoms[i-2].text == "of") {
			continue
		}
		end := piecesEnd(atoms, next)
		if !owned || end == 0 || end > from {
			return atoms
		}
		for k := end; k < from; k++ {
			if key, _ := partKey(atoms, k); atoms[k].text == "." || atoms[k].text == "wall" || key != "" && key != "rail" {
				return atoms // other pieces, or another place
			}
		}
		behind := bad + 1
		for behind < len(atoms) && restUsed[atoms[behind].text] {
			behind++
		}
		if behind > bad+1 && behind < len(atoms) && !endsPart(atoms, behind) {
			behind = bad + 1
		}
		out := append(make([]atom, 0, len(atoms)), worded(atoms[i], "i"), worded(atoms[i], "have"), atom{text: itoa(n - less), kind: aDigits, at: atoms[i].at, end: atoms[i].end})
		return append(append(out, atoms[next:end]...), atoms[behind:]...)
	}
	return atoms
}

var (
	badBoards  = wordSet("rotten rotted warped split cracked twisted junk ruined bowed cupped crooked broken")
	badLeads   = wordSet("is are was were turned out to be of them those the too got been 's all")
	ownsBoards = wordSet("have got own 've has")
	restUsed   = wordSet(", ; and but the rest others other i we can use are is fine good ok okay usable sound so")
)
