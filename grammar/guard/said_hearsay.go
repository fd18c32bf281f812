package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/solver"
)

// ofHeight: the height of the wall or of a post is set, tried or claimed.
func ofHeight(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.WallHeight || s.Name.Quantity == solver.PostHeight
	})
}
