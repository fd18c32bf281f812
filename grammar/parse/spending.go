package parse

import "saywright/grammar/lexicon"

// changesBudget reports whether a stretch puts the budget up or down by so much: whoever speaks sets it, and tries nothing.
func changesBudget(list []Item) bool {
	budget, changed, by := false, false, false
	for _, it := range list {
		if it.value() {
			by = !it.lim.to
			continue
		}
		budget = budget || it.Kind == lexicon.Part && it.Key() == "budget"
		changed = changed || it.Kind == lexicon.Move || it.Kind == lexicon.Change
	}
	return budget && changed && by
}
