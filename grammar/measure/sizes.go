package measure

import (
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// MoneyWords are words and signs of money.
var MoneyWords = map[string]bool{"dollar": true, "dollars": true, "bucks": true, "buck": true, "euro": true, "euros": true, "usd": true, "cents": true, "cent": true, "€": true, "£": true}

func (r Reader) dollarWord(i int) int {
	if r.Word(i) == "dollars" || r.Word(i) == "bucks" || r.Word(i) == "usd" {
		return i + 1
	}
	return i
}

// cash reads "four dollars and ten cents", "12 bucks", "85 cents".
func (r Reader) cash(a Amount, i int) (Amount, int, bool) {
	a.Unit = Money
	if w := r.Word(i); w == "cents" || w == "cent" {
		a.Val = a.Val.Div(exact.Int(100))
		return a, i + 1, true
	}
	j := i + 1
	if r.Word(j) == "and" {
		j++
	}
	n, k, ok := r.Whole(j)
	if ok && n.Bad == "" && !n.Point && n.Val.Less(exact.Int(100)) && (r.Word(k) == "cents" || r.Word(k) == "cent" || j == i+1 && !exact.Int(9).Less(exact.Int(0)) && exact.Int(9).Less(n.Val) && !r.countFollows(k, n) && !r.SizeAt(j) && r.endsPhrase(k)) {
		a.Val = a.Val.Add(n.Val.Div(exact.Int(100)))
		if r.Word(k) == "cents" || r.Word(k) == "cent" {
			k++
		}
		return a, k, true
	}
	return a, i + 1, true
}

// endsPhrase reports whether nothing that a number could belong to follows.
func (r Reader) endsPhrase(i int) bool {
	switch r.Word(i) {
	case "", ",", ".", ";", "each", "apiece", "and", "a", "per", "!", "?":
		return true
	}
	return false
}

// SizeWords are figures of a lumber size as they end a size in words: "two by sixes".
var SizeWords = map[string]int{"ones": 1, "twos": 2, "threes": 3, "fours": 4, "fives": 5, "sixes": 6, "eights": 8, "tens": 10, "twelves": 12, "for": 4, "to": 2, "fors": 4, "tos": 2, "ate": 8, "ates": 8}

// Size reads a lumber size: "2x6", "2 by 6", "two by sixes", "90x45", "2x6s".
func (r Reader) Size(i int) (a Amount, next int, ok bool) {
	x, j, ok := r.sizeFigure(i, true)
	if !ok {
		return a, i, false
	}
	if next, ok := r.fiveQuarters(i); ok {
		return r.fiveQuartersBy(next)
	}
	j = r.Skip(j)
	glued := r.Glued(j)
	w := r.Word(j)
	if w != "x" && w != "by" && w != "buy" && w != "*" {
		return a, i, false
	}
	j = r.Skip(j + 1)
	y, k, ok := r.sizeFigure(j, false)
	if !ok {
		return a, i, false
	}
	if w != "x" && w != "*" && OfBay(r.Word(i-1)) {
		_, _, _, unit := r.Unit(k)
		if unit || r.Word(k) == "and" || widening[r.Word(i-2)] {
			return Amount{}, i, false // "widen bay 3 by two and a quarter"
		}
	}
	a.Size = Itoa(x) + "x" + Itoa(y)
	if !plausibleSize(x, y) {
		if w == "*" || !glued && w == "x" {
			return Amount{}, i, false
		}
		a.Bad = "size"
	}
	return a, r.sizeEnd(k), true
}

func (r Reader) sizeFigure(i int, first bool) (int, int, bool) {
	w := r.Word(i)
	if r.Kind(i) == scan.Digits {
		n, ok := Atoi(w)
		return n, i + 1, ok
	}
	if n, ok := SizeWords[w]; ok && (!first || Homophones[w] > 0 && len(w) < 4) {
		if first && (r.Word(i+1) != "by" && r.Word(i+1) != "buy") {
			return 0, i, false
		}
		return n, i + 1, true
	}
	n, j, ok := r.below100(i)
	return n, j, ok
}

func (r Reader) sizeEnd(i int) int {
	j := i
	if r.Word(j) == "'" && r.Glued(j) && r.Word(j+1) == "s" && r.Glued(j+1) {
		return j + 2
	}
	if r.Word(j) == "is" && r.Glued(j) {
		return j + 1
	}
	if r.Word(j) == "s" && r.Glued(j) {
		return j + 1
	}
	if r.Word(j) == "mm" {
		return j + 1
	}
	return j
}

// plausibleSize reports whether two figures can be a lumber size: nominal inches, or millimeters.
func plausibleSize(x, y int) bool {
	lo, hi := min(x, y), max(x, y)
	return lo >= 1 && hi <= 16 && hi >= 2 || lo >= 12 && hi <= 450
}

// widening are verbs that change a width by what is told behind "by".
var widening = scan.WordSet("widen narrow lengthen shorten stretch shrink grow enlarge increase reduce expand tighten")
