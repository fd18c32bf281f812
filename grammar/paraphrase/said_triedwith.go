package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// triesWhatStands tries the figures that stand before a question for what they would do: "six rails with a gap of two, what would that do to the wall
// height".
func triesWhatStands(atoms []scan.Atom) []scan.Atom {
	for i := 2; i+5 < len(atoms); i++ {
		if w := atoms[i+1].Text; atoms[i].Text != "what" && atoms[i].Text != "how" || w != "would" && w != "might" && w != "could" || !idiom.ThatOrIt[atoms[i+2].Text] || atoms[i+3].Text != "do" && atoms[i+3].Text != "mean" && atoms[i+3].Text != "change" && atoms[i+3].Text != "affect" {
			continue
		}
		if before := atoms[:i]; !chunk.Figured(before) && !phrase.SaidBeforeOf(idiom.ChangesWorded)(before, nil) || phrase.SaidBeforeOf(idiom.AsksOrDoubts)(before, nil) || phrase.SaidBeforeOf(idiom.SupposingWords)(before, nil) || !idiom.TrialWorded(before) {
			return atoms
		}
		return InARow([]scan.Atom{chunk.Worded(atoms[0], "what"), chunk.Worded(atoms[0], "if")}, atoms)
	}
	return atoms
}
