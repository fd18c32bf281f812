package parse

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// costsAtMost reports whether a claim tells what the whole may cost, rather than what anybody may spend.
func costsAtMost(list []Item) bool {
	for _, it := range list {
		if !it.value() && it.Kind == lexicon.Part && it.Key() == "budget" && strings.Contains(it.Text, "cost") {
			return true
		}
	}
	return false
}

// saysMeasured reports whether something was measured, and not only drawn, in what is told beside a claim.
func saysMeasured(list []Item) bool {
	for _, it := range list {
		if !it.value() && it.Kind == lexicon.Measured {
			return true
		}
	}
	return false
}

// countsPriced reports whether what looks like a total only counts what is priced behind it: "the quote has 12 brackets at 3.10 each".
func countsPriced(found []made) bool {
	for i, m := range found {
		if m.st.Name.Quantity == solver.CostOf && m.lim != nil && m.lim.lo != nil && m.lim.lo.Unit == measure.Bare && m.st.Value.Num.IsInt() && m.st.Value.Num.Less(exact.Int(100)) && i+1 < len(found) && found[i+1].st.Name.Quantity == solver.Price {
			return true
		}
	}
	return false
}
