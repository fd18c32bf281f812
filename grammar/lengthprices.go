package grammar

import "strings"

// priceByLength sets "two by sixes are 8.40 for a ten footer and 10.20 for a twelve" to "two by six ten footers are 8.40, two by six twelve
// footers are 10.20".
func priceByLength(atoms []atom) []atom {
	m := phraseMatch{atoms: atoms}
	for i := 0; i+5 < len(atoms); i++ {
		next, ok := m.figureAt(i, opSize)
		if !ok {
			continue
		}
		size := atoms[i:next]
		if next < len(atoms) && lengthPriceVerbs[atoms[next].text] {
			next++
		} else {
			continue
		}
		said, end := pricesBehind(size, atoms, next)
		if said == nil || end < len(atoms) && !endsPart(atoms, end) {
			return atoms
		}
		out := append(append(make([]atom, 0, len(atoms)+8), atoms[:i]...), said...)
		return append(out, atoms[end:]...)
	}
	return atoms
}

// pricesBehind reads what a size costs length by length, and returns it price by price, with the atom behind the last.
func pricesBehind(size, atoms []atom, next int) (said []atom, end int) {
	for end = next; ; {
		at := end
		if said != nil && at < len(atoms) && (atoms[at].text == "and" || atoms[at].text == ",") {
			at++
		}
		money := yardFigureEnd(atoms, at)
		if money == at || money+2 >= len(atoms) || atoms[money].text != "for" && !(said != nil && atoms[money].text == "a") {
			return said, end
		}
		from := money + 1
		if w := atoms[from].text; w == "a" || w == "an" || w == "the" || w == "each" {
			from++
		} else if atoms[money].text == "for" {
			return said, end
		}
		to := yardFigureEnd(atoms, from)
		if to == from || figureIsMoney(atoms[from:to]) {
			return said, end
		}
		length := atoms[from:to]
		if to < len(atoms) && (footWords[atoms[to].text] || atoms[to].text == "footer" || atoms[to].text == "-" && to+1 < len(atoms) && (footWords[atoms[to+1].text] || atoms[to+1].text == "footer")) {
			if to++; atoms[to-1].text == "-" {
				to++
			}
		}
		if said != nil {
			said = append(said, atom{text: ",", kind: aSign, at: atoms[at].at, end: atoms[at].end})
		}
		said = append(append(said, size...), length...)
		for _, w := range [...]string{"footers", "are"} {
			said = append(said, atom{text: w, kind: aWord, at: atoms[to-1].at, end: atoms[to-1].end})
		}
		said = append(said, atoms[at:money]...)
		end = to
	}
}

// lengthPriceVerbs stand between a size and what it costs.
var lengthPriceVerbs = wordSet("are is cost costs run runs")

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
