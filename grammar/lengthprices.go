package grammar

import "strings"

// feetThenPrice sets "2x6 12' 11.85 ea" to "2x6 12' is 11.85 ea": what has two decimals behind feet, for each, is a price and no inches.
func feetThenPrice(atoms []atom) []atom {
	m := phraseMatch{atoms: atoms}
	for i := 3; i+1 < len(atoms); i++ {
		if atoms[i].kind != aDigits || !hasCents(atoms[i].text) || !forEachOne[atoms[i+1].text] || !footWords[atoms[i-1].text] && atoms[i-1].text != "'" || atoms[i-2].kind != aDigits {
			continue
		}
		for k := max(0, i-8); k < i-2; k++ {
			if next, ok := m.figureAt(k, '@'); ok && next == i-2 {
				return append(append(atoms[:i:i], worded(atoms[i], "is")), atoms[i:]...)
			}
		}
	}
	return atoms
}

// forEachOne tells that a price is for one.
var forEachOne = wordSet("ea each apiece per")

// hasCents reports whether figures are written as money is, with two decimals.
func hasCents(digits string) bool {
	dot := strings.IndexByte(digits, '.')
	return dot > 0 && dot == len(digits)-3
}
