package guard

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// What somebody else does with a figure is no wish: "he stretches a gap of two and a half", "she ended up with six rails". Only what he wants, asks, decides or
// is owed is one. Plain English, no source.

// HeDoes asks back where what is stated stands behind what another does.
func HeDoes(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil || !slices.ContainsFunc(r.Acts, statesOfWall) {
		return r
	}
	for i := 0; i+1 < len(atoms); i++ {
		if w := atoms[i].Text; w != "he" && w != "she" && !(w == "they" && possibly[atoms[i+1].Text]) || !chunk.ClauseBeginsAt(atoms, i) {
			continue
		}
		v := i + 1
		for v < len(atoms) && (reread.SlotDegrees[atoms[v].Text] || aside.ThingAdverbs[atoms[v].Text] || strings.HasSuffix(atoms[v].Text, "ly")) {
			v++
		}
		if v >= len(atoms) || atoms[v].Kind != scan.Word || ways.WishingVerbs[atoms[v].Text] || possibly[atoms[v].Text] && v+1 < len(atoms) && atoms[v+1].Text == "not" || atoms[i].Text == "she" && wallDoes[atoms[v].Text] {
			continue
		}
		end := v
		for end < len(atoms) && !chunk.BreaksClause(atoms, end) && !chunk.Joints[atoms[end].Text] {
			end++
		}
		for _, a := range r.Acts {
			if statesOfWall(a) && a.At >= atoms[i].At && a.At < atoms[end-1].End {
				q := thisWallToo(a, r.Acts)
				return act.Reading{Ask: &q}
			}
		}
	}
	return r
}

// possibly are verbs by which something is only held to be possible: "they could go to five rails".
var possibly = scan.WordSet("can could may might")

// wallDoes are verbs of a wall, which some call "she": "she tops out at forty".
var wallDoes = scan.WordSet("tops comes stands sits finishes ends goes runs works turns")

// statesOfWall reports whether an act states something of the wall itself, not of a shop.
func statesOfWall(a act.Act) bool {
	if a.Kind != act.State || len(a.Statements) == 0 {
		return false
	}
	switch a.Statements[0].Name.Quantity {
	case solver.Price, solver.Stock, solver.Have, solver.Budget, solver.Extra, solver.Spare, solver.Measured, solver.Kerf:
		return false
	}
	return true
}
