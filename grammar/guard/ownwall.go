package guard

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// whichWall are words that tell a wall from others of the same place: "our north wall" is one of several.
var whichWall = scan.WordSet(`north south east west northern southern eastern western northeast northwest southeast southwest front back rear left right side upper lower inner outer other second first third
	upstream downstream uphill downhill landing`)

// OwnWall takes the place of somebody's only wall for what it is, no name: "our patio wall ought to be 46 high", as long as no wall is called so.
func OwnWall(in []scan.Atom, c act.Context) []scan.Atom {
	walls, at := 0, -1
	for i := range in {
		if namesPlans[in[i].Text] {
			return in // "save our porch wall", "the same as our porch wall"
		}
		if in[i].Text != "wall" && in[i].Text != "walls" {
			continue
		}
		walls++
		if i > 1 && (in[i-2].Text == "our" || in[i-2].Text == "my") && lex.WallNames[in[i-1].Text] && !whichWall[in[i-1].Text] {
			at = i - 1
		}
	}
	if at < 0 || walls > 1 || slices.ContainsFunc(slices.Concat(c.Walls, c.Saved), func(name string) bool { return strings.HasPrefix(name, in[at].Text) }) || at+2 < len(in) && in[at+2].Text == ":" {
		return in
	}
	return append(append([]scan.Atom{}, in[:at]...), in[at+1:]...)
}

// namesPlans are words beside which a wall is a plan's name.
var namesPlans = scan.WordSet("save saved open compare same like call called name named plan keep under as copy")
