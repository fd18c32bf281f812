package lumberlist

import (
	"slices"
	"strconv"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// RailsInTurn gives each of several rails of a bay what was measured at it: "in bay 2 I get 70 1/2, 70 9/16 and 70 11/16 for rails 2, 3
// and 4", "bay 1, rails 2 and 3: 68 1/8 and 68 1/4".
func RailsInTurn(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "bay" || a.Text == "section" }) {
		return atoms
	}
	for i := 2; i+3 < len(atoms); i++ {
		if !railsNamed[atoms[i].Text] {
			continue
		}
		rails, end := railNumbers(atoms, i+1)
		if len(rails) < 2 {
			continue
		}
		m := phrase.Match{Atoms: atoms}
		if w := atoms[i-1].Text; (w == "for" || w == "at" || w == "on") && chunk.EndsPart(atoms, end) && (end >= len(atoms) || atoms[end].Text != ":") {
			for from := 2; from < i-1; from++ {
				if found, last := figuresFrom(&m, from); last == i-1 && len(found) == len(rails) && measureLight[atoms[from-1].Text] {
					return eachRail(atoms, from, end, rails, found)
				}
			}
		}
		from := end
		for from < len(atoms) && measureLight[atoms[from].Text] {
			from++
		}
		if from == end || from >= len(atoms) {
			continue
		}
		if found, last := figuresFrom(&m, from); len(found) == len(rails) && chunk.EndsPart(atoms, last) {
			start := i
			for start > 0 && (atoms[start-1].Text == "for" || atoms[start-1].Text == "at" || atoms[start-1].Text == "on" || lexicon.Vocab().Articles[atoms[start-1].Text]) {
				start--
			}
			return eachRail(atoms, start, last, rails, found)
		}
	}
	return atoms
}

var (
	railsNamed   = scan.WordSet("rails boards slats planks")
	measureLight = scan.WordSet("i we get got have read reads measure measured measures is are at : , came comes come to find found")
)

// railNumbers reads "2, 3 and 4" and "2 through 4".
func railNumbers(atoms []scan.Atom, i int) (rails []int, end int) {
	for end = i; i < len(atoms); {
		n, next := countTold(atoms, i)
		if n < 1 || n > 15 || next < len(atoms) && (atoms[next].Text == "/" || atoms[next].Kind == scan.Vulgar) {
			return rails, end
		}
		rails, end = append(rails, n), next
		if i = next; i >= len(atoms) {
			return rails, end
		}
		switch w := atoms[i].Text; {
		case w == "," || w == "and" || w == "&":
			if i++; i < len(atoms) && atoms[i].Text == "and" {
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
func figuresFrom(m *phrase.Match, i int) (found [][2]int, end int) {
	for i < len(m.Atoms) {
		next, ok := m.FigureAt(i, phrase.OpFigure)
		if !ok {
			return found, end
		}
		found, end = append(found, [2]int{i, next}), next
		if i = next; i+1 < len(m.Atoms) && m.Atoms[i].Text == "," {
			i++
		}
		if i < len(m.Atoms) && m.Atoms[i].Text == "and" {
			i++
		}
		if i == next {
			return found, end
		}
	}
	return found, end
}

// eachRail puts "rail 2 is 70 1/2 , rail 3 is …" for the atoms from one on.
func eachRail(atoms []scan.Atom, from, end int, rails []int, found [][2]int) []scan.Atom {
	out := append(make([]scan.Atom, 0, len(atoms)+16), atoms[:from]...)
	for k, n := range rails {
		at := atoms[found[k][0]]
		if k > 0 {
			out = append(out, scan.Atom{Text: ",", Kind: scan.Sign, At: at.At, End: at.End})
		}
		out = append(out, chunk.Worded(at, "rail"), scan.Atom{Text: strconv.Itoa(n), Kind: scan.Digits, At: at.At, End: at.End}, chunk.Worded(at, "is"))
		out = append(out, atoms[found[k][0]:found[k][1]]...)
	}
	return append(out, atoms[end:]...)
}
