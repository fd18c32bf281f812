package parse

import (
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

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

// tellsBudget reports whether the head of a claim brings in what somebody told about the money there is, which is a fact whoever tells it: "he
// says the budget is 300". Who asks whether it is so ("is it right that the budget is 300", "is 300 right for the budget") tells nothing.
func tellsBudget(head *lex.Token) bool {
	return head != nil && !lex.OnPaper(head.Text) && !asksWhether[lex.FirstWord(head.Text)]
}

// asksWhether are first words of heads that ask whether a claim holds, or to have it checked.
var asksWhether = scan.WordSet("is are am was were isn't ain't check verify confirm double-check re-check validate compare please kindly double can could does do did would whether tell see make")
