package grammar

import "strings"

// fiveQuarters reports whether the thickness of deck boards is said at an atom, "5/4", "five quarter", and returns the atom behind it.
func (r reader) fiveQuarters(i int) (next int, ok bool) {
	if w := r.word(i); w != "5" && w != "five" {
		return i, false
	}
	switch w := r.word(i + 1); {
	case w == "/" && r.word(i+2) == "4":
		return i + 3, true
	case w == "quarter", w == "quarters", w == "fourths", w == "fourth":
		return i + 2, true
	}
	return i, false
}

// fiveQuartersBy reads the width behind that thickness: "5/4x6", "five quarter by six".
func (r reader) fiveQuartersBy(i int) (a amount, next int, ok bool) {
	if w := r.word(i); w != "x" && w != "by" && w != "*" {
		return a, i, false
	}
	y, k, ok := r.sizeFigure(r.skip(i+1), false)
	if !ok || y != 4 && y != 6 {
		return a, i, false
	}
	a.size = "5/4x" + itoa(y)
	return a, r.sizeEnd(k), true
}

// asMany reports whether a factor is told of a number of things: "twice as many".
func (k *clause) asMany() bool {
	for _, w := range k.words {
		if t := k.items[w].token; t.as(kFactor) != nil || t.kind == kTimes {
			for _, v := range strings.Fields(t.text) {
				if v == "many" {
					return true
				}
			}
		}
	}
	return false
}
