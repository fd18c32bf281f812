package parse

import (
	"saywright/grammar/act"
	"saywright/solver"
)

// OfTheSite are quantities that are as they are: of the floor, the posts that stand, what was measured, bought, or is sold. Nobody tries them
// by telling them behind a question.
var OfTheSite = map[solver.Quantity]bool{
	solver.Measured: true, solver.Have: true, solver.Extra: true, solver.Price: true, solver.Stock: true, solver.Kerf: true, solver.Tape: true, solver.FixedRail: true, solver.PostLeans: true,
	solver.RailFace: true, solver.BracketEar: true, solver.BracketReach: true, solver.BracketThickness: true, solver.Drop: true, solver.FloorAtRight: true, solver.FloorFalls: true, solver.SlabThickness: true,
}

// toldBehind states what was told behind a question rather than tries it, where all of it is of the site.
func (s *Speech) toldBehind(g *group, asked act.Act, found []made) bool {
	for _, m := range found {
		if !OfTheSite[m.st.Name.Quantity] {
			return false
		}
	}
	asked.Kind = act.Ask
	s.act(g, asked)
	for _, m := range found {
		s.Acts = append(s.Acts, act.Act{Kind: act.State, Statements: []solver.Statement{m.st}, At: m.at, End: g.endOf(m.at)})
	}
	return true
}
