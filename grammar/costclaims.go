package grammar

import "strings"

// costsAtMost reports whether a claim tells what the whole may cost, rather than what anybody may spend.
func costsAtMost(list []item) bool {
	for _, it := range list {
		if !it.value() && it.kind == kPart && it.key() == "budget" && strings.Contains(it.text, "cost") {
			return true
		}
	}
	return false
}

// saysMeasured reports whether something was measured, and not only drawn, in what is told beside a claim.
func saysMeasured(list []item) bool {
	for _, it := range list {
		if !it.value() && it.kind == kMeasured {
			return true
		}
	}
	return false
}
