package lumberlist

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// FeetThenPrice sets "2x6 12' 11.85 ea" to "2x6 12' is 11.85 ea": what has two decimals behind feet, for each, is a price and no inches.
func FeetThenPrice(atoms []scan.Atom) []scan.Atom {
	m := phrase.Match{Atoms: atoms}
	for i := 3; i+1 < len(atoms); i++ {
		if atoms[i].Kind != scan.Digits || !hasCents(atoms[i].Text) || !forEachOne[atoms[i+1].Text] || !measure.FootWords[atoms[i-1].Text] && atoms[i-1].Text != "'" || atoms[i-2].Kind != scan.Digits {
			continue
		}
		for k := max(0, i-8); k < i-2; k++ {
			if next, ok := m.FigureAt(k, '@'); ok && next == i-2 {
				return append(append(atoms[:i:i], chunk.Worded(atoms[i], "is")), atoms[i:]...)
			}
		}
	}
	return atoms
}

// forEachOne tells that a price is for one.
var forEachOne = scan.WordSet("ea each apiece per")

// hasCents reports whether figures are written as money is, with two decimals.
func hasCents(digits string) bool {
	dot := strings.IndexByte(digits, '.')
	return dot > 0 && dot == len(digits)-3
}
