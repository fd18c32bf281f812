package grammar

import (
	"slices"
	"strings"
)

// whichWall are words that tell a wall from others of the same place: "our north wall" is one of several.
var whichWall = wordSet(`north south east west northern southern eastern western northeast northwest southeast southwest front back rear left right side upper lower inner outer other second first third
	upstream downstream uphill downhill landing`)

// ownWall takes the place of somebody's only wall for what it is, no name: "our patio wall ought to be 46 high", as long as no wall is called so.
func ownWall(in []atom, c Context) []atom {
	walls, at := 0, -1
	for i := range in {
		if namesPlans[in[i].text] {
			return in // "save our porch wall", "the same as our porch wall"
		}
		if in[i].text != "wall" && in[i].text != "walls" {
			continue
		}
		walls++
		if i > 1 && (in[i-2].text == "our" || in[i-2].text == "my") && wallNames[in[i-1].text] && !whichWall[in[i-1].text] {
			at = i - 1
		}
	}
	if at < 0 || walls > 1 || slices.ContainsFunc(slices.Concat(c.Walls, c.Saved), func(name string) bool { return strings.HasPrefix(name, in[at].text) }) || at+2 < len(in) && in[at+2].text == ":" {
		return in
	}
	return append(append([]atom{}, in[:at]...), in[at+1:]...)
}

// namesPlans are words beside which a wall is a plan's name.
var namesPlans = wordSet("save saved open compare same like call called name named plan keep under as copy")
