package parse

import (
	"strings"

	"saywright/grammar/measure"
	"saywright/solver"
)

// unitOfOther gives the bare figure of one bound the unit of the other, where both can stand together only so: "bays more than 4 ft
// wide, less than 6".
func (s *Speech) unitOfOther(list []made) {
	for i := 1; i < len(list); i++ {
		a, b := &list[i-1], &list[i]
		if a.st.Name.String() != b.st.Name.String() || a.kind != solver.Length || !(lower(a.st.Op) && upper(b.st.Op) || upper(a.st.Op) && lower(b.st.Op)) {
			continue
		}
		if !bareBeside(b, a) && !bareBeside(a, b) {
			continue
		}
		if bareBeside(a, b) {
			a, b = b, a
		}
		if agree(a.st, b.st) {
			continue
		}
		lo := inUnitOf(*b.lim.lo, *a.lim.lo)
		v, ok := s.value(lo, b.kind)
		st := b.st
		if st.Value = v; !ok || !agree(a.st, st) {
			continue
		}
		lim := *b.lim
		lim.lo = &lo
		b.st, b.lim = st, &lim
		b.doubt = s.doubt(*b, lo, measure.Amount{})
	}
}

// bareBeside reports whether one bound is told without a unit and the other in feet or in a metric unit.
func bareBeside(b, a *made) bool {
	if a.lim == nil || b.lim == nil || a.lim.hi != nil || b.lim.hi != nil || a.lim.of != nil || b.lim.of != nil || b.st.Value.Of != nil {
		return false
	}
	return b.lim.lo.Unit == measure.Bare && (a.lim.lo.Unit == measure.Feet || a.lim.lo.Unit == measure.Metric)
}

// agree reports whether a lower and an upper bound leave anything between them.
func agree(a, b solver.Statement) bool {
	if upper(a.Op) {
		a, b = b, a
	}
	return a.Value.Num.Less(b.Value.Num)
}

// doneTo reports whether a question is what becomes of something.
func doneTo(head string) bool {
	return strings.Contains(head, "do to") || strings.Contains(head, "happen") || strings.Contains(head, "affect") || strings.Contains(head, "becomes of")
}
