package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// A wall named behind several things said in one clause is the wall of all of them: "2 bays and a 2 inch gap on the north wall". Behind a
// comma it may be that of the last one alone, and is left so.

// WallBehind gives all that is set in one clause the wall that its end names.
func WallBehind(acts []act.Act, atoms []scan.Atom) []act.Act {
	n := len(acts)
	if n < 2 || !setsOnWall(acts[n-1]) {
		return acts
	}
	wall := acts[n-1].Statements[0].Name.Wall
	if wall == "" {
		return acts
	}
	for _, a := range acts[:n-1] {
		if !setsOnWall(a) || a.Statements[0].Name.Wall != "" {
			return acts
		}
	}
	end := len(atoms)
	for end > 0 && atoms[end-1].Kind == scan.Sign {
		end--
	}
	if end < 4 || atoms[end-1].Text != "wall" {
		return acts
	}
	from := end - 1
	for from > 0 && !takeback.WallSet[atoms[from].Text] {
		from--
	}
	if from == 0 || end-from > 5 {
		return acts
	}
	for _, a := range atoms[:from] {
		if a.Text == "," || a.Text == ";" || a.Text == "." || a.Text == "?" || a.Text == ":" || apartFromWall[a.Text] {
			return acts
		}
	}
	out := slices.Clone(acts)
	for i := range out[:n-1] {
		sts := slices.Clone(out[i].Statements)
		for k := range sts {
			sts[k].Name.Wall = wall
			if sts[k].Value.Of != nil {
				of := *sts[k].Value.Of
				of.Wall = wall
				sts[k].Value.Of = &of
			}
		}
		out[i].Statements = sts
	}
	return out
}

// setsOnWall reports whether an act sets something of a wall.
func setsOnWall(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) > 0 && a.Statements[0].Name.Quantity != ""
}

// apartFromWall are words by which what is said before them is of another place than what is said behind them.
var apartFromWall = scan.WordSet("here but instead this while whereas price cost costs stock budget they as like from by near beside behind before")
