package measure

// fiveQuarters reports whether the thickness of deck boards is said at an atom, "5/4", "five quarter", and returns the atom behind it.
func (r Reader) fiveQuarters(i int) (next int, ok bool) {
	if w := r.Word(i); w != "5" && w != "five" {
		return i, false
	}
	switch w := r.Word(i + 1); {
	case w == "/" && r.Word(i+2) == "4":
		return i + 3, true
	case w == "quarter", w == "quarters", w == "fourths", w == "fourth":
		return i + 2, true
	}
	return i, false
}

// fiveQuartersBy reads the width behind that thickness: "5/4x6", "five quarter by six".
func (r Reader) fiveQuartersBy(i int) (a Amount, next int, ok bool) {
	if w := r.Word(i); w != "x" && w != "by" && w != "*" {
		return a, i, false
	}
	y, k, ok := r.sizeFigure(r.Skip(i+1), false)
	if !ok || y != 4 && y != 6 {
		return a, i, false
	}
	a.Size = "5/4x" + Itoa(y)
	return a, r.sizeEnd(k), true
}
