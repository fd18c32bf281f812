package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// spelledNext: "a further nine", "and left 2 inches".
func spelledNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Kind == scan.Digits || chunk.SpelledNumber(after[0].Text))
}

// behindFigure: "8.40 the hundred".
func behindFigure(before, _ []scan.Atom) bool {
	return len(before) > 1 && before[len(before)-1].Kind == scan.Digits
}

// floorBefore: "the patio slops down an inch".
func floorBefore(before, _ []scan.Atom) bool { return chunk.IsFloor(chunk.LastOf(before, 1)) }

// cutTo: "what length do I cut the rails too".
func cutTo(before, after []scan.Atom) bool {
	if len(after) > 1 || len(after) == 1 && after[0].Text != "?" && after[0].Text != "." {
		return false
	}
	asked := false
	for i, a := range before {
		asked = asked || a.Text == "what" || a.Text == "how" && i+1 < len(before) && before[i+1].Text == "long"
		if asked && (a.Text == "cut" || a.Text == "saw" || a.Text == "trim") && i+1 < len(before) {
			return true
		}
	}
	return false
}

// sizedBy: "they are to by six". Whoever is "to buy six" is named by "I" or "we".
func sizedBy(before, after []scan.Atom) bool {
	if len(after) == 0 || after[0].Kind != scan.Digits && !chunk.SpelledNumber(after[0].Text) && measure.SizeWords[after[0].Text] == 0 {
		return false
	}
	switch chunk.LastOf(before, 1) {
	case "are", "is", "were", "be":
		return chunk.LastOf(before, 2) != "we" && chunk.LastOf(before, 2) != "i" && chunk.LastOf(before, 2) != "you"
	case "of", "from", "as":
		return true
	}
	return false
}
