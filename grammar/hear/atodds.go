package hear

import (
	"strconv"

	"saywright/solver"
	"saywright/solver/exact"
)

// noOneWidth asks for the width of a bay where a line tells two that no bay has at once: "bay 1 is 60 wide, 40 high and 38 low". Wide holds those that
// were told.
func noOneWidth(st solver.Statement, wide map[int]solver.Statement) *solver.Question {
	bay := st.Name.Bay
	if bay == 0 || st.Op != solver.Eq || st.Name.Quantity != solver.Bay && (st.Name.Quantity != solver.Measured || st.Name.At != "top" && st.Name.At != "bottom") {
		return nil
	}
	was, ok := wide[bay]
	wide[bay] = st
	if !ok || was.Value.Unit != st.Value.Unit {
		return nil
	}
	small, large := was.Value.Num, st.Value.Num
	if large.Less(small) {
		small, large = large, small
	}
	if large.Less(small.Mul(exact.New(5, 4))) {
		return nil // posts lean, and a tape is read; never by so much
	}
	return &solver.Question{Text: "How wide is bay " + strconv.Itoa(bay) + ", and what is the other figure?", Choices: []string{was.String(), st.String()}, Example: st.String()}
}
