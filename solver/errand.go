package solver

import "slices"

// buy adds what to buy, from what plan, and what it costs. A budget that blocks gets the ways that the layout has too.
func (v *solved) buy(a *Answer) {
	v.site(a).Buying().AddTo(a)
	v.withinBudget(a)
}

// quoted are the claims that are held against the cut list and the plan.
func quoted(s Statement) bool {
	return slices.Contains([]Quantity{CutOf, Boards, CostOf}, s.Name.Quantity)
}

// holdQuote judges the claims about cuts, boards and cost, in their places.
func (v *solved) holdQuote(a *Answer, claims []Statement) {
	var ours []Statement
	for _, c := range claims {
		if quoted(c) {
			ours = append(ours, c)
		}
	}
	if len(ours) == 0 {
		return
	}
	f := v.site(a).HoldQuote(ours)
	for i, c := range claims {
		for _, told := range f.Check {
			if quoted(c) && told.Claim == c.String() {
				a.Check[i] = told
			}
		}
	}
	f.Check = nil
	f.AddTo(a)
}
