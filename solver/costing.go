package solver

import "saywright/solver/exact"

// Costing returns what the material for a layout costs, everything else at the site being the same. It is not ok when
// something on its list has no price, or when it cannot be cut: such costs are not to be compared.
func (s *Site) Costing(l *Layout) (total exact.Rat, ok bool) {
	trial := *s
	trial.Layout, trial.Budget = l, nil
	f := trial.Buying()
	if f.Ask != nil || len(f.Conflicts) > 0 || f.Cost == nil {
		return total, false
	}
	for _, fact := range f.Facts {
		if fact.Key == "no price" {
			return total, false
		}
	}
	return f.Cost.Total.Rat, true
}
