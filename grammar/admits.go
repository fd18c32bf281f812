package grammar

import "slices"

// admitting are verbs of what an opening is for, and obliging the words before them.
var (
	admitting = wordSet("admit fit take let allow pass handle accommodate clear swallow hold accept suit serve welcome fits takes admits lets allows passes clears")
	obliging  = wordSet("has have needs need must should will ought got gotta is to can just also really be able in through past by out")
)

// admits leaves out whom or what an opening is to let through: "the entrance has to fit a wheelchair, so 38 inches" is an entrance of
// 38 inches, whatever was spoken of before.
func admits(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return admitting[a.text] }) {
		return atoms
	}
	for i := 0; i+4 < len(atoms); i++ {
		if !vocab().articles[atoms[i].text] && !owned[atoms[i].text] {
			continue
		}
		f := vocab().match(atoms, i+1)
		if len(f) == 0 || f[0].entry.kind != kPart || f[0].entry.key != "opening" {
			continue
		}
		from := f[0].next
		to := admitted(atoms, from)
		if to > from && figureAhead(atoms[to:]) {
			return append(append([]atom{}, atoms[:from]...), atoms[to:]...)
		}
	}
	return atoms
}

// admitted finds the end of "has to fit a wheelchair", and from where there is none.
func admitted(atoms []atom, from int) int {
	j, verb := from, false
	for j < len(atoms) && atoms[j].kind == aWord && (obliging[atoms[j].text] || admitting[atoms[j].text]) {
		verb = verb || admitting[atoms[j].text]
		j++
	}
	if !verb {
		return from
	}
	whom := 0
	for j < len(atoms) && atoms[j].kind == aWord && atoms[j].text != "so" {
		switch w := atoms[j].text; {
		case outsiders[w] || creatures[w]:
			whom++
		case vocab().articles[w] || owned[w] || leadingWords[w] || w == "and" || w == "through" || w == "in" || w == "by" || w == "past":
		default:
			return from
		}
		j++
	}
	if whom == 0 || j >= len(atoms) {
		return from
	}
	return j
}

// figureAhead reports whether a figure comes before the next full stop.
func figureAhead(atoms []atom) bool {
	for i, a := range atoms {
		if a.kind == aSign && (a.text == "." || a.text == "?") && i > 0 {
			return false
		}
		if a.kind == aDigits || a.kind == aVulgar || spelledNumber(a.text) {
			return true
		}
	}
	return false
}
