package grammar

import (
	"slices"
	"strconv"
	"strings"

	"saywright/solver"
)

// sharedPrice sets what several pieces cost together to the price of one: "brackets are three for 10.50", "four twelve foot 2x6s come to
// 48 dollars", "brackets come ten to a bag, a bag is 38 dollars". A sum that does not come out in whole cents is left as it was said.
func sharedPrice(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return sharingWords[a.text] }) || slices.ContainsFunc(atoms, func(a atom) bool { return a.text == "?" || a.text == "says" || a.text == "said" || a.text == "quote" }) {
		return atoms
	}
	for i := range atoms {
		n, next := countTold(atoms, i)
		if n < 2 || i > 0 && (atoms[i-1].text == "x" || atoms[i-1].text == "by" || atoms[i-1].text == "$") || next >= len(atoms) {
			continue
		}
		if at := i - 1; at > 0 && sharedVerbs[atoms[at].text] { // "brackets are three for 10.50"
			sum := next
			switch {
			case atoms[next].text == "for":
				sum++
			case next+3 < len(atoms) && atoms[next].text == "to" && vocab().articles[atoms[next+1].text] && packedIn[atoms[next+2].text]:
				if sum = inABox(atoms, next+3); sum == 0 {
					continue
				}
			default:
				continue
			}
			if each, end := shareOf(atoms, sum, n); end > 0 && (piecesBefore(atoms[:at]) || yardItemIn(atoms[max(0, at-9):at])) {
				return eachCosts(atoms, at, end, each)
			}
			continue
		}
		if i > 0 && !endsPart(atoms, i-1) && !joints[atoms[i-1].text] {
			continue
		}
		end := piecesEnd(atoms, next)
		if end == 0 || end+1 >= len(atoms) {
			continue
		}
		sum := end
		switch w := atoms[end].text; {
		case w == "for" && piecesBefore(atoms[:end]):
			sum++
		case w == "come" || w == "comes" || w == "came":
			if sum++; atoms[sum].text == "out" {
				sum++
			}
			if sum >= len(atoms) || atoms[sum].text != "to" {
				continue
			}
			sum++
		default:
			continue
		}
		if each, last := shareOf(atoms, sum, n); last > 0 {
			out := append(append(make([]atom, 0, len(atoms)), atoms[:i]...), atoms[next:]...)
			return eachCosts(out, end-(next-i), last-(next-i), each)
		}
	}
	return atoms
}

var (
	sharingWords = wordSet("for come comes came")
	packedIn     = wordSet("bag box pack packet tub carton package")
	sharedVerbs  = wordSet("are is come run go cost sell")
)

// countTold reads a count in figures or in words.
func countTold(atoms []atom, i int) (n, next int) {
	if atoms[i].kind == aDigits {
		n, _ = strconv.Atoi(atoms[i].text)
		return n, i + 1
	}
	return spokenUpTo99(atoms, i)
}

// piecesBefore reports whether something that is sold by the piece stands right before.
func piecesBefore(before []atom) bool {
	switch lastOf(before, 1) {
	case "bracket", "brackets", "hanger", "hangers", "anchor", "anchors":
		return true
	case "base", "bases", "cap", "caps":
		return lastOf(before, 2) == "post"
	}
	return false
}

// piecesEnd is the atom behind the pieces that begin at an atom: "brackets", "post bases", "twelve foot 2x6s"; 0 where there are none.
func piecesEnd(atoms []atom, i int) int {
	for end := i + 1; end <= min(i+2, len(atoms)); end++ {
		if piecesBefore(atoms[i:end]) {
			return end
		}
	}
	r, m := reader{atoms}, phraseMatch{atoms: atoms}
	long, sized := false, false
	for i < len(atoms) {
		if next, ok := m.figureAt(i, opSize); ok && !sized {
			if i, sized = next, true; i < len(atoms) && atoms[i].text == "s" {
				i++
			}
		} else if _, _, next := lumberTold(r, i, ""); next > i && !long {
			i, long = next, true
		} else if boardWords[atoms[i].text] {
			i++
		} else {
			break
		}
	}
	if !long || !sized {
		return 0
	}
	return i
}

// inABox is where a sum begins that a box costs: ", a bag is 38 dollars"; 0 where there is none.
func inABox(atoms []atom, i int) int {
	for i < len(atoms) && (atoms[i].text == "," || atoms[i].text == "and" || atoms[i].text == "at" || vocab().articles[atoms[i].text] || atoms[i].text == "each" || packedIn[atoms[i].text] || atoms[i].text == "is" || atoms[i].text == "costs" || atoms[i].text == "runs") {
		i++
	}
	if i >= len(atoms) {
		return 0
	}
	return i
}

// shareOf is the price of one of n pieces that cost the sum at an atom, and the atom behind it; 0 where no sum stands there, where each
// is said to cost it, or where it cannot be shared.
func shareOf(atoms []atom, i, n int) (each string, end int) {
	if i >= len(atoms) {
		return "", 0
	}
	end = moneyEnd(atoms, i)
	if end == i {
		return "", 0
	}
	cents := 0
	for k, a := range atoms[i:end] {
		switch v, _ := spokenUpTo99(atoms, i+k); {
		case a.kind == aDigits && strings.ContainsAny(a.text, ".,"):
			if !centsWritten(a.text) {
				return "", 0
			}
			cents, _ = strconv.Atoi(a.text[:len(a.text)-3] + a.text[len(a.text)-2:])
		case a.kind == aDigits && cents == 0:
			v, _ = strconv.Atoi(a.text)
			cents = 100 * v
		case v > 0 && k == 0:
			_, next := spokenUpTo99(atoms, i)
			rest, last := spokenUpTo99(atoms, next)
			if cents = 100*v + rest; last < end && !coinNames[atoms[last].text] {
				return "", 0
			}
		}
	}
	if cents == 0 || cents%n != 0 {
		return "", 0
	}
	for end < len(atoms) && sharedTail[atoms[end].text] {
		end++
	}
	if !endsPart(atoms, end) && !joints[atoms[end].text] {
		return "", 0
	}
	cents /= n
	return strconv.Itoa(cents/100) + "." + strconv.Itoa(cents/10%10) + strconv.Itoa(cents%10), end
}

// sharedTail are words behind what several pieces cost together.
var sharedTail = wordSet("even flat total altogether together in all told at the yard store shop lot")

// eachCosts puts "cost … each" for the atoms of a sum.
func eachCosts(atoms []atom, from, end int, each string) []atom {
	out := reworded(atoms, from, end, "cost", each, "each")
	out[from+1].kind = aDigits
	return out
}

// pieceUnsaid asks which bay a short piece is of, and how long a board is that is priced by the metre.
func pieceUnsaid(said []solver.Statement, atoms []atom) *solver.Question {
	for _, s := range said {
		switch {
		case s.Name.Quantity == solver.Short && s.Name.Bay == 0 && s.Name.Rail > 0:
			return new(qInWhichBay.ask())
		case s.Name.Quantity == solver.Rails && spoiltBoards(atoms):
			return new(qHowManyRails.ask())
		case s.Name.Quantity == solver.Price && s.Name.Long != nil && s.Name.Long.String() == "1000 mm":
			return new(qLengthCosts.offering("3 m 90x45 are 9.50"))
		case s.Name.Quantity == solver.Price && s.Name.Long != nil && neverSold(*s.Name.Long):
			return new(qLengthCosts.offering("8 foot 1x4 are 3.85"))
		}
	}
	return nil
}

// spoiltBoards reports whether boards are told to be split, and no more: "two boards are split".
func spoiltBoards(atoms []atom) bool {
	for i := 2; i < len(atoms); i++ {
		if atoms[i].text == "split" && (atoms[i-1].text == "are" || atoms[i-1].text == "is" || atoms[i-1].text == "were") && isClass(atoms[i-2].text, "RAIL") && endsPart(atoms, i+1) {
			return true
		}
	}
	return false
}
