package lumberlist

import (
	"slices"
	"strconv"
	"strings"

	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// SharedPrice sets what several pieces cost together to the price of one: "brackets are three for 10.50", "four twelve foot 2x6s come to
// 48 dollars", "brackets come ten to a bag, a bag is 38 dollars". A sum that does not come out in whole cents is left as it was said.
func SharedPrice(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return sharingWords[a.Text] }) || slices.ContainsFunc(atoms, func(a scan.Atom) bool {
		return a.Text == "?" || a.Text == "says" || a.Text == "said" || a.Text == "quote"
	}) {
		return atoms
	}
	for i := range atoms {
		n, next := countTold(atoms, i)
		if n < 2 || i > 0 && (atoms[i-1].Text == "x" || atoms[i-1].Text == "by" || atoms[i-1].Text == "$") || next >= len(atoms) {
			continue
		}
		if at := i - 1; at > 0 && sharedVerbs[atoms[at].Text] { // "brackets are three for 10.50"
			sum := next
			switch {
			case atoms[next].Text == "for":
				sum++
			case next+3 < len(atoms) && atoms[next].Text == "to" && lexicon.Vocab().Articles[atoms[next+1].Text] && packedIn[atoms[next+2].Text]:
				if sum = inABox(atoms, next+3); sum == 0 {
					continue
				}
			default:
				continue
			}
			if each, end := shareOf(atoms, sum, n); end > 0 && (piecesBefore(atoms[:at]) || idiom.YardItemIn(atoms[max(0, at-9):at])) {
				return eachCosts(atoms, at, end, each)
			}
			continue
		}
		if i > 0 && !chunk.EndsPart(atoms, i-1) && !chunk.Joints[atoms[i-1].Text] {
			continue
		}
		end := piecesEnd(atoms, next)
		if end == 0 || end+1 >= len(atoms) {
			continue
		}
		sum := end
		switch w := atoms[end].Text; {
		case w == "for" && piecesBefore(atoms[:end]):
			sum++
		case w == "come" || w == "comes" || w == "came":
			if sum++; atoms[sum].Text == "out" {
				sum++
			}
			if sum >= len(atoms) || atoms[sum].Text != "to" {
				continue
			}
			sum++
		default:
			continue
		}
		if each, last := shareOf(atoms, sum, n); last > 0 {
			out := append(append(make([]scan.Atom, 0, len(atoms)), atoms[:i]...), atoms[next:]...)
			return eachCosts(out, end-(next-i), last-(next-i), each)
		}
	}
	return atoms
}

var (
	sharingWords = scan.WordSet("for come comes came")
	packedIn     = scan.WordSet("bag box pack packet tub carton package")
	sharedVerbs  = scan.WordSet("are is come run go cost sell")
)

// countTold reads a count in figures or in words.
func countTold(atoms []scan.Atom, i int) (n, next int) {
	if atoms[i].Kind == scan.Digits {
		n, _ = strconv.Atoi(atoms[i].Text)
		return n, i + 1
	}
	return SpokenUpTo99(atoms, i)
}

// piecesBefore reports whether something that is sold by the piece stands right before.
func piecesBefore(before []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "bracket", "brackets", "hanger", "hangers", "anchor", "anchors":
		return true
	case "base", "bases", "cap", "caps":
		return chunk.LastOf(before, 2) == "post"
	}
	return false
}

// piecesEnd is the atom behind the pieces that begin at an atom: "brackets", "post bases", "twelve foot 2x6s"; 0 where there are none.
func piecesEnd(atoms []scan.Atom, i int) int {
	for end := i + 1; end <= min(i+2, len(atoms)); end++ {
		if piecesBefore(atoms[i:end]) {
			return end
		}
	}
	r, m := measure.Reader{Atoms: atoms}, phrase.Match{Atoms: atoms}
	long, sized := false, false
	for i < len(atoms) {
		if next, ok := m.FigureAt(i, phrase.OpSize); ok && !sized {
			if i, sized = next, true; i < len(atoms) && atoms[i].Text == "s" {
				i++
			}
		} else if _, _, next := lumberTold(r, i, ""); next > i && !long {
			i, long = next, true
		} else if idiom.BoardWords[atoms[i].Text] {
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
func inABox(atoms []scan.Atom, i int) int {
	for i < len(atoms) && (atoms[i].Text == "," || atoms[i].Text == "and" || atoms[i].Text == "at" || lexicon.Vocab().Articles[atoms[i].Text] || atoms[i].Text == "each" || packedIn[atoms[i].Text] || atoms[i].Text == "is" || atoms[i].Text == "costs" || atoms[i].Text == "runs") {
		i++
	}
	if i >= len(atoms) {
		return 0
	}
	return i
}

// shareOf is the price of one of n pieces that cost the sum at an atom, and the atom behind it; 0 where no sum stands there, where each
// is said to cost it, or where it cannot be shared.
func shareOf(atoms []scan.Atom, i, n int) (each string, end int) {
	if i >= len(atoms) {
		return "", 0
	}
	end = moneyEnd(atoms, i)
	if end == i {
		return "", 0
	}
	cents := 0
	for k, a := range atoms[i:end] {
		switch v, _ := SpokenUpTo99(atoms, i+k); {
		case a.Kind == scan.Digits && strings.ContainsAny(a.Text, ".,"):
			if !idiom.CentsWritten(a.Text) {
				return "", 0
			}
			cents, _ = strconv.Atoi(a.Text[:len(a.Text)-3] + a.Text[len(a.Text)-2:])
		case a.Kind == scan.Digits && cents == 0:
			v, _ = strconv.Atoi(a.Text)
			cents = 100 * v
		case v > 0 && k == 0:
			_, next := SpokenUpTo99(atoms, i)
			rest, last := SpokenUpTo99(atoms, next)
			if cents = 100*v + rest; last < end && !idiom.CoinNames[atoms[last].Text] {
				return "", 0
			}
		}
	}
	if cents == 0 || cents%n != 0 {
		return "", 0
	}
	for end < len(atoms) && sharedTail[atoms[end].Text] {
		end++
	}
	if !chunk.EndsPart(atoms, end) && !chunk.Joints[atoms[end].Text] {
		return "", 0
	}
	cents /= n
	return strconv.Itoa(cents/100) + "." + strconv.Itoa(cents/10%10) + strconv.Itoa(cents%10), end
}

// sharedTail are words behind what several pieces cost together.
var sharedTail = scan.WordSet("even flat total altogether together in all told at the yard store shop lot")

// eachCosts puts "cost … each" for the atoms of a sum.
func eachCosts(atoms []scan.Atom, from, end int, each string) []scan.Atom {
	out := scan.Reworded(atoms, from, end, "cost", each, "each")
	out[from+1].Kind = scan.Digits
	return out
}

// PieceUnsaid asks which bay a short piece is of, and how long a board is that is priced by the metre.
func PieceUnsaid(said []solver.Statement, atoms []scan.Atom) *solver.Question {
	for _, s := range said {
		switch {
		case s.Name.Quantity == solver.Short && s.Name.Bay == 0 && s.Name.Rail > 0:
			return new(askback.InWhichBay.Ask())
		case s.Name.Quantity == solver.Rails && spoiltBoards(atoms):
			return new(askback.HowManyRails.Ask())
		case s.Name.Quantity == solver.Price && s.Name.Long != nil && s.Name.Long.String() == "1000 mm":
			return new(askback.LengthCosts.Offering("3 m 90x45 are 9.50"))
		case s.Name.Quantity == solver.Price && s.Name.Long != nil && neverSold(*s.Name.Long):
			return new(askback.LengthCosts.Offering("8 foot 1x4 are 3.85"))
		}
	}
	return nil
}

// spoiltBoards reports whether boards are told to be split, and no more: "two boards are split".
func spoiltBoards(atoms []scan.Atom) bool {
	for i := 2; i < len(atoms); i++ {
		if atoms[i].Text == "split" && (atoms[i-1].Text == "are" || atoms[i-1].Text == "is" || atoms[i-1].Text == "were") && chunk.IsClass(atoms[i-2].Text, "RAIL") && chunk.EndsPart(atoms, i+1) {
			return true
		}
	}
	return false
}
