package grammar

import (
	"slices"
	"strconv"
)

// railsInTurn gives each of several rails of a bay what was measured at it: "in bay 2 I get 70 1/2, 70 9/16 and 70 11/16 for rails 2, 3
// and 4", "bay 1, rails 2 and 3: 68 1/8 and 68 1/4".
func railsInTurn(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "bay" || a.text == "section" }) {
		return atoms
	}
	for i := 2; i+3 < len(atoms); i++ {
		if !railsNamed[atoms[i].text] {
			continue
		}
		rails, end := railNumbers(atoms, i+1)
		if len(rails) < 2 {
			continue
		}
		m := phraseMatch{atoms: atoms}
		if w := atoms[i-1].text; (w == "for" || w == "at" || w == "on") && endsPart(atoms, end) && (end >= len(atoms) || atoms[end].text != ":") {
			for from := 2; from < i-1; from++ {
				if found, last := figuresFrom(&m, from); last == i-1 && len(found) == len(rails) && measureLight[atoms[from-1].text] {
					return eachRail(atoms, from, end, rails, found)
				}
			}
		}
		from := end
		for from < len(atoms) && measureLight[atoms[from].text] {
			from++
		}
		if from == end || from >= len(atoms) {
			continue
		}
		if found, last := figuresFrom(&m, from); len(found) == len(rails) && endsPart(atoms, last) {
			start := i
			for start > 0 && (atoms[start-1].text == "for" || atoms[start-1].text == "at" || atoms[start-1].text == "on" || vocab().articles[atoms[start-1].text]) {
				start--
			}
			return eachRail(atoms, start, last, rails, found)
		}
	}
	return atoms
}

var (
	railsNamed   = wordSet("rails boards slats planks")
	measureLight = wordSet("i we get got have read reads measure measured measures is are at : , came comes come to find found")
)

// railNumbers reads "2, 3 and 4" and "2 through 4".
func railNumbers(atoms []atom, i int) (rails []int, end int) {
	for end = i; i < len(atoms); {
		n, next := countTold(atoms, i)
		if n < 1 || n > 15 || next < len(atoms) && (atoms[next].text == "/" || atoms[next].kind == aVulgar) {
			return rails, end
		}
		rails, end = append(rails, n), next
		if i = next; i >= len(atoms) {
			return rails, end
		}
		switch w := atoms[i].text; {
		case w == "," || w == "and" || w == "&":
			if i++; i < len(atoms) && atoms[i].text == "and" {
				i++
			}
		case w == "through" || w == "thru" || w == "to":
			last, next := countTold(atoms, min(i+1, len(atoms)-1))
			if last <= n || last > 15 || len(rails) > 1 {
				return nil, end
			}
			for n++; n <= last; n++ {
				rails = append(rails, n)
			}
			return rails, next
		default:
			return rails, end
		}
	}
	return rails, end
}

// figuresFrom reads figures one after the other, parted by commas and "and".
func figuresFrom(m *phraseMatch, i int) (found [][2]int, end int) {
	for i < len(m.atoms) {
		next, ok := m.figureAt(i, opFigure)
		if !ok {
			return found, end
		}
		found, end = append(found, [2]int{i, next}), next
		if i = next; i+1 < len(m.atoms) && m.atoms[i].text == "," {
			i++
		}
		if i < len(m.atoms) && m.atoms[i].text == "and" {
			i++
		}
		if i == next {
			return found, end
		}
	}
	return found, end
}

// eachRail puts "rail 2 is 70 1/2 , rail 3 is …" for the atoms from one on.
func eachRail(atoms []atom, from, end int, rails []int, found [][2]int) []atom {
	out := append(make([]atom, 0, len(atoms)+16), atoms[:from]...)
	for k, n := range rails {
		at := atoms[found[k][0]]
		if k > 0 {
			out = append(out, atom{text: ",", kind: aSign, at: at.at, end: at.end})
		}
		out = append(out, worded(at, "rail"), atom{text: strconv.Itoa(n), kind: aDigits, at: at.at, end: at.end}, worded(at, "is"))
		out = append(out, atoms[found[k][0]:found[k][1]]...)
	}
	return append(out, atoms[end:]...)
}
