package grammar

import "saywright/solver/exact"

// moneyWords are words and signs of money.
var moneyWords = map[string]bool{"dollar": true, "dollars": true, "bucks": true, "buck": true, "euro": true, "euros": true, "usd": true, "cents": true, "cent": true, "€": true, "£": true}

func (r reader) dollarWord(i int) int {
	if r.word(i) == "dollars" || r.word(i) == "bucks" || r.word(i) == "usd" {
		return i + 1
	}
	return i
}

// cash reads "four dollars and ten cents", "12 bucks", "85 cents".
func (r reader) cash(a amount, i int) (amount, int, bool) {
	a.unit = money
	if w := r.word(i); w == "cents" || w == "cent" {
		a.val = a.val.Div(exact.Int(100))
		return a, i + 1, true
	}
	j := i + 1
	if r.word(j) == "and" {
		j++
	}
	n, k, ok := r.whole(j)
	if ok && n.bad == "" && !n.point && n.val.Less(exact.Int(100)) && (r.word(k) == "cents" || r.word(k) == "cent" || j == i+1 && !exact.Int(9).Less(exact.Int(0)) && exact.Int(9).Less(n.val) && !r.countFollows(k, n) && !r.sizeAt(j) && r.endsPhrase(k)) {
		a.val = a.val.Add(n.val.Div(exact.Int(100)))
		if r.word(k) == "cents" || r.word(k) == "cent" {
			k++
		}
		return a, k, true
	}
	return a, i + 1, true
}

// endsPhrase reports whether nothing that a number could belong to follows.
func (r reader) endsPhrase(i int) bool {
	switch r.word(i) {
	case "", ",", ".", ";", "each", "apiece", "and", "a", "per", "!", "?":
		return true
	}
	return false
}

// sizeWords are figures of a lumber size as they end a size in words: "two by sixes".
var sizeWords = map[string]int{"ones": 1, "twos": 2, "threes": 3, "fours": 4, "fives": 5, "sixes": 6, "eights": 8, "tens": 10, "twelves": 12, "for": 4, "to": 2, "fors": 4, "tos": 2, "ate": 8, "ates": 8}

// size reads a lumber size: "2x6", "2 by 6", "two by sixes", "90x45", "2x6s".
func (r reader) size(i int) (a amount, next int, ok bool) {
	x, j, ok := r.sizeFigure(i, true)
	if !ok {
		return a, i, false
	}
	if next, ok := r.fiveQuarters(i); ok {
		return r.fiveQuartersBy(next)
	}
	j = r.skip(j)
	glued := r.glued(j)
	w := r.word(j)
	if w != "x" && w != "by" && w != "buy" && w != "*" {
		return a, i, false
	}
	j = r.skip(j + 1)
	y, k, ok := r.sizeFigure(j, false)
	if !ok {
		return a, i, false
	}
	if w != "x" && w != "*" && ofBay(r.word(i-1)) {
		_, _, _, unit := r.unit(k)
		if unit || r.word(k) == "and" || widening[r.word(i-2)] {
			return amount{}, i, false // "widen bay 3 by two and a quarter"
		}
	}
	a.size = itoa(x) + "x" + itoa(y)
	if !plausibleSize(x, y) {
		if w == "*" || !glued && w == "x" {
			return amount{}, i, false
		}
		a.bad = "size"
	}
	return a, r.sizeEnd(k), true
}

func (r reader) sizeFigure(i int, first bool) (int, int, bool) {
	w := r.word(i)
	if r.kind(i) == aDigits {
		n, ok := atoi(w)
		return n, i + 1, ok
	}
	if n, ok := sizeWords[w]; ok && (!first || homophones[w] > 0 && len(w) < 4) {
		if first && (r.word(i+1) != "by" && r.word(i+1) != "buy") {
			return 0, i, false
		}
		return n, i + 1, true
	}
	n, j, ok := r.below100(i)
	return n, j, ok
}

func (r reader) sizeEnd(i int) int {
	j := i
	if r.word(j) == "'" && r.glued(j) && r.word(j+1) == "s" && r.glued(j+1) {
		return j + 2
	}
	if r.word(j) == "is" && r.glued(j) {
		return j + 1
	}
	if r.word(j) == "s" && r.glued(j) {
		return j + 1
	}
	if r.word(j) == "mm" {
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
var widening = wordSet("widen narrow lengthen shorten stretch shrink grow enlarge increase reduce expand tighten")
