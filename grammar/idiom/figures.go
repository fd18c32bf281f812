package idiom

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// countedNext: "take of one stiffener" takes one off.
func countedNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Kind == scan.Digits || chunk.SpelledNumber(after[0].Text) || after[0].Text == "a" || after[0].Text == "won" || after[0].Text == "another")
}

// askedWhatWould: "what would five rails due to the gap".
func askedWhatWould(before, _ []scan.Atom) bool {
	for i := range before {
		if before[i].Text == "what" && (chunk.TextAt(before, i+1) == "would" || chunk.TextAt(before, i+1) == "will" || chunk.TextAt(before, i+1) == "wood") {
			return true
		}
	}
	return false
}

// OfFigure reports whether a word is, or may be, a part of a figure or its unit.
func OfFigure(a scan.Atom) bool {
	_, metric := measure.MetricWords[a.Text]
	return chunk.Numeric(a) || measure.Denominators[a.Text] > 0 || a.Text == "half" || metric || measure.InchWords[a.Text] && a.Text != "in" || measure.FootWords[a.Text] || measure.MoneyWords[a.Text] || soldBy[a.Text]
}

// soldBy are signs and words of a price or a share beside those of money.
var soldBy = scan.WordSet("$ % percent apiece each per")

// LastFigure finds the last figure of a clause, -1 where there is none.
func LastFigure(part []scan.Atom) (at, end int) {
	at = -1
	for i := 0; i < len(part); {
		if e, ok := FigureEnd(part, i); ok && (part[i].Text != "a" && part[i].Text != "an" || e > i+1) {
			if part[max(i-1, 0)].Text != "bay" && part[max(i-1, 0)].Text != "rail" {
				at, end = i, e
			}
			i = e
			continue
		}
		i++
	}
	return at, end
}

// HasFigures reports whether a figure is among atoms.
func HasFigures(what []scan.Atom) bool {
	for _, a := range what {
		if a.Kind == scan.Digits || a.Kind == scan.Vulgar || scan.Ones[a.Text] > 0 || measure.Tens[a.Text] > 0 || partsOfAnInch[a.Text] {
			return true
		}
	}
	return false
}

// partsOfAnInch are the words of fractions.
var partsOfAnInch = scan.WordSet("quarter quarters eighth eighths sixteenth sixteenths")

// FigureEnd returns the atom after the value that stands at an atom.
func FigureEnd(atoms []scan.Atom, i int) (int, bool) {
	r := measure.Reader{Atoms: atoms}
	if _, next, ok := r.Size(i); ok {
		return next, true
	}
	a, next, ok := r.Length(i)
	return next, ok && a.Bad == ""
}

// FractionWord reports whether a word ends a fraction.
func FractionWord(w string) bool {
	switch strings.TrimSuffix(w, "s") {
	case "half", "third", "quarter", "eighth", "sixteenth", "thirty-second", "fourth":
		return true
	}
	return false
}
