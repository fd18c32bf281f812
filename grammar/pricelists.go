package grammar

import (
	"slices"
	"strconv"
	"strings"
)

// pricedTogether sets what lumber costs length by length, however it is told, to one plain price after the other: "paying 8.60 for a ten
// foot 2x6 and 13.95 for a fourteen", "the three metre 140x45 is 14.90 and the 3.6 is 18.20", "6x6s in ten foot are 31.60". Every
// word of the clauses must be one of a price, of a length, or of the lead of such a clause, so that what is denied, tried or claimed is
// left as it is.
func pricedTogether(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return pricingWords[a.text] }) || slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "?" }) {
		return atoms
	}
	for i := range atoms {
		if i > 0 && !endsPart(atoms, i-1) && !joints[atoms[i-1].text] {
			continue
		}
		told, end := pricesFrom(atoms, i)
		if len(told) == 0 || !slices.ContainsFunc(atoms[i:end], func(a atom) bool { return pricingWords[a.text] }) || len(told) == 1 && told[0].size == nil && !told[0].paidFor && !saidBeforeOf(colonSaid)(atoms[i:end], nil) {
			continue
		}
		if len(told) == 1 && slices.ContainsFunc(atoms[end:], func(a atom) bool { return themWords[a.text] }) {
			continue // "and I've got four of those"
		}
		out := append(make([]atom, 0, len(atoms)+8), atoms[:i]...)
		for k, p := range told {
			at := atoms[p.price[0]]
			if k > 0 {
				out = append(out, atom{text: ",", kind: aSign, at: at.at, end: at.end})
			}
			if p.size != nil {
				out = append(out, atoms[p.size[0]:p.size[1]]...)
			}
			out = append(out, p.length...)
			if p.size == nil {
				out = append(out, worded(at, "boards"))
			}
			out = append(append(out, atom{text: "cost", kind: aWord, at: at.at, end: at.end}), atoms[p.price[0]:p.price[1]]...)
		}
		return append(out, atoms[end:]...)
	}
	return atoms
}

// pricingWords tell that something is priced; without one no line is looked at.
var pricingWords = wordSet("for is are cost costs run runs comes come goes go each apiece ea : paying paid pay charge charges $ dollars bucks at in footers footer eights tens twelves fourteens sixteens eighteens twenties")

// pricedLength is a length of lumber and what it costs: places of atoms, and the length in plain words.
type pricedLength struct {
	size, price []int
	length      []atom
	paidFor     bool // the price was told first
}

func (p pricedLength) whole() bool { return p.length != nil && p.price != nil }

// pricesFrom reads prices from an atom on, up to the last that is whole, and returns the atom behind it.
func pricesFrom(atoms []atom, from int) (told []pricedLength, end int) {
	r, m := reader{atoms}, phraseMatch{atoms: atoms}
	var now pricedLength
	var size []int
	unit, begun, parted := "", false, false
	keep := func(at int) {
		if now.size == nil {
			now.size = size
		}
		told, size, now, end = append(told, now), now.size, pricedLength{}, at
	}
	i := from
	for i < len(atoms) && !endsSentence(atoms, i) {
		a := atoms[i]
		if a.text == "," || a.text == "and" || a.text == "but" || a.text == "while" || a.text == "/" && !a.glued {
			if now.whole() {
				keep(i)
			}
			parted, i = true, i+1
			continue
		}
		if begun && a.text == "got" {
			i++ // "twelve foot two by sixes they got at eleven eighty"
			continue
		}
		if !begun && priceLeads[a.text] || priceLight[a.text] || begun && !parted && (a.text == "one" || a.text == "ones") {
			i++
			continue
		}
		if next, ok := m.figureAt(i, opSize); ok {
			if now.size != nil || now.whole() && parted {
				return told, end
			}
			now.size, begun, i = []int{i, next}, true, next
			if i < len(atoms) && atoms[i].text == "s" {
				i++
			}
		} else if next := moneyEnd(atoms, i); next > i {
			if now.whole() {
				keep(i)
			} else if now.price != nil {
				return told, end
			}
			now.price, begun, i = []int{i, next}, true, next
		} else if next := moneyAndHalf(atoms, i); next > i && len(told) > 0 && now.length != nil && now.price == nil {
			now.price, i = []int{i, next}, next
		} else if length, u, next := lumberTold(r, i, unit); next > i {
			if now.whole() {
				keep(i)
			} else if now.length != nil {
				return told, end
			}
			now.length, now.paidFor, unit, begun, i = length, now.price != nil, u, true, next
		} else {
			return told, end
		}
		parted = false
	}
	if now.whole() {
		keep(i)
	}
	if len(told) > 1 && told[0].size == nil && size != nil {
		return nil, 0 // of what size the first is has not been told
	}
	return told, end
}

// priceLeads may stand before the first price, priceLight anywhere beside one.
var (
	priceLeads = wordSet("he she says said told quoted quotes us that clerk man lady guy fellow counter desk i we they am are is the yard store shop merchant lumberyard place want wants charge charges charging ask asks asking pay paying paid timber lumber wood price prices : 's")
	priceLight = wordSet("a an the for of in at to is are be cost costs costing run runs running come comes go goes going sell sells each apiece ea per every piece length lengths long board boards plank planks stick sticks pieces post posts timber : - @ it they 's me us now today")
)

// moneyEnd is the atom behind a sum that can be nothing but money: "$8", "8.60", "eight sixty", "nine dollars and ten cents".
func moneyEnd(atoms []atom, i int) int {
	from := i
	if atoms[i].text == "$" {
		if i++; i < len(atoms) && atoms[i].kind == aDigits {
			return i + 1
		}
		return from
	}
	next := i
	if atoms[i].kind == aDigits {
		if next++; centsWritten(atoms[i].text) {
			if next < len(atoms) && coinNames[atoms[next].text] {
				next++
			}
			if next < len(atoms) && (measuredIn(atoms[next].text) || atoms[next].text == "x" || atoms[next].text == "by") {
				return from
			}
			return next
		}
	} else if _, next = spokenUpTo99(atoms, i); next == i {
		return from
	}
	named := next < len(atoms) && coinNames[atoms[next].text]
	if named {
		next++
	} else if atoms[i].kind == aDigits {
		return from
	}
	rest := next
	if rest < len(atoms) && named && atoms[rest].text == "and" {
		rest++
	}
	cents, last := spokenUpTo99(atoms, rest)
	if last == rest && named && rest < len(atoms) && atoms[rest].kind == aDigits && len(atoms[rest].text) == 2 {
		cents, last = 10, rest+1
	}
	if last < len(atoms) && (atoms[last].text == "cents" || atoms[last].text == "cent") {
		return last + 1
	}
	if cents >= 10 && (last == len(atoms) || atoms[last].kind != aDigits && atoms[last].text != "-" && atoms[last].text != "x" && atoms[last].text != "by" && !measuredIn(atoms[last].text) && !spelledNumber(atoms[last].text)) {
		return last
	}
	if named {
		return next
	}
	return from
}

var coinNames = wordSet("dollars dollar bucks buck")

// centsWritten reports whether figures are written as money is, with two decimals.
func centsWritten(digits string) bool {
	dot := strings.IndexAny(digits, ".,")
	return dot > 0 && dot == len(digits)-3
}

// measuredIn reports whether a word is a unit of length.
func measuredIn(w string) bool {
	_, metric := metricWords[w]
	return metric || footWords[w] || footerWords[w] || inchWords[w] || yardWords[w]
}

// lumberTold reads a length of lumber, and gives it in plain words: "ten foot", "4.2 m", "fourteens"; once a unit was told, a bare figure, too.
func lumberTold(r reader, i int, unit string) (plain []atom, u string, next int) {
	atoms := r.atoms
	figure := atoms[i]
	var long float64
	if feet := lumberFeet[figure.text]; feet > 0 {
		long, next, u = float64(feet), i+1, "footers"
	} else {
		if figure.kind == aDigits {
			long, _ = strconv.ParseFloat(strings.Replace(figure.text, ",", ".", 1), 64)
			next = i + 1
		} else {
			var n int
			n, next = spokenUpTo99(atoms, i)
			long = float64(n)
		}
		if next == i || long == 0 {
			return nil, "", i
		}
		if next < len(atoms) && atoms[next].text == "-" && next+1 < len(atoms) && measuredIn(atoms[next+1].text) {
			next++
		}
		switch w := r.word(next); {
		case footWords[w] || footerWords[w]:
			u, next = "footers", next+1
		case w == "m" || w == "meter" || w == "meters" || w == "metre" || w == "metres":
			u, next = "m", next+1
		case w == "mm" || w == "cm":
			u, next = w, next+1
		default:
			u = unit
		}
		if u != "" && next < len(atoms) && footerWords[atoms[next].text] {
			next++
		}
	}
	if r := soldBetween[u]; u == "" || long < r[0] || long > r[1] {
		return nil, "", i
	}
	figure.text, figure.kind = strconv.FormatFloat(long, 'f', -1, 64), aDigits
	return []atom{figure, {text: u, kind: aWord, at: figure.at, end: figure.end}}, u, next
}

// soldBetween are the lengths that lumber is sold in.
var soldBetween = map[string][2]float64{"footers": {4, 24}, "m": {1, 8}, "cm": {100, 800}, "mm": {1000, 8000}}

// colonSaid parts what is priced from its price.
var colonSaid = wordSet(":")

// moneyAndHalf is the atom behind "nine and a quarter".
func moneyAndHalf(atoms []atom, i int) int {
	_, next := countTold(atoms, i)
	if next == i || next+2 >= len(atoms) || atoms[next].text != "and" || atoms[next+1].text != "a" || atoms[next+2].text != "half" && atoms[next+2].text != "quarter" {
		return i
	}
	return next + 3
}
