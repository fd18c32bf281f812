package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// What somebody else does with a figure is no wish: "he stretches a gap of two and a half", "she ended up with six rails". Only what he wants, asks, decides or
// is owed is one. Plain English, no source.

// heDoes asks back where what is stated stands behind what another does.
func heDoes(r Reading, atoms []atom) Reading {
	if r.Ask != nil || !slices.ContainsFunc(r.Acts, statesOfWall) {
		return r
	}
	for i := 0; i+1 < len(atoms); i++ {
		if w := atoms[i].text; w != "he" && w != "she" && !(w == "they" && possibly[atoms[i+1].text]) || !clauseBeginsAt(atoms, i) {
			continue
		}
		v := i + 1
		for v < len(atoms) && (slotDegrees[atoms[v].text] || thingAdverbs[atoms[v].text] || strings.HasSuffix(atoms[v].text, "ly")) {
			v++
		}
		if v >= len(atoms) || atoms[v].kind != aWord || wishingVerbs[atoms[v].text] || possibly[atoms[v].text] && v+1 < len(atoms) && atoms[v+1].text == "not" || atoms[i].text == "she" && wallDoes[atoms[v].text] {
			continue
		}
		end := v
		for end < len(atoms) && !breaksClause(atoms, end) && !joints[atoms[end].text] {
			end++
		}
		for _, a := range r.Acts {
			if statesOfWall(a) && a.At >= atoms[i].at && a.At < atoms[end-1].end {
				q := thisWallToo(a, r.Acts)
				return Reading{Ask: &q}
			}
		}
	}
	return r
}

// possibly are verbs by which something is only held to be possible: "they could go to five rails".
var possibly = wordSet("can could may might")

// wallDoes are verbs of a wall, which some call "she": "she tops out at forty".
var wallDoes = wordSet("tops comes stands sits finishes ends goes runs works turns")

// statesOfWall reports whether an act states something of the wall itself, not of a shop.
func statesOfWall(a Act) bool {
	if a.Kind != State || len(a.Statements) == 0 {
		return false
	}
	switch a.Statements[0].Name.Quantity {
	case solver.Price, solver.Stock, solver.Have, solver.Budget, solver.Extra, solver.Spare, solver.Measured, solver.Kerf:
		return false
	}
	return true
}
