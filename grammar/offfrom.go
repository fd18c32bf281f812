package grammar

// offFrom reads "4 inches less than 36", "an eighth over two", "50 dollars over 400" at token i: one figure and how far it is from
// another. A fall or a lean of so much over a length is none.
func (l *lexing) offFrom(i int) bool {
	a, w, b := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
	sign := farFrom[w.text]
	if sign == 0 || a.amt.unit == percent || b.amt.unit == percent || a.amt.unit == bare && !a.amt.frac || !a.amt.val.Less(b.amt.val) || a.amt.footer || b.amt.footer {
		return false
	}
	if (a.amt.unit == money) != (b.amt.unit == money) && b.amt.unit != bare || (a.amt.unit == metric) != (b.amt.unit == metric) {
		return false
	}
	if sign > 0 && a.amt.unit != money && (i == 0 || !offFromOthers[l.tokens[i-1].key()]) {
		return false
	}
	sum := *b.amt
	sum.val, sum.plain, sum.frac = b.amt.val.Sub(a.amt.val), "", true
	if sign > 0 {
		sum.val = b.amt.val.Add(a.amt.val)
	}
	if sum.unit == bare {
		sum.unit = a.amt.unit
	}
	a.amt, a.end = &sum, b.end
	l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
	return true
}

// farFrom are the words between how far a figure is from another and that one: below it, or above.
var farFrom = map[string]int{"less than": -1, "under": -1, "below": -1, "shorter than": -1, "narrower than": -1, "smaller than": -1, "over": 1, "more than": 1, "above": 1, "greater than": 1, "wider than": 1, "taller than": 1}

// offFromOthers are the quantities that may be so much over a figure; a fall of so much over a length is another thing.
var offFromOthers = wordSet("gap opening bay span overall wall width bottom")
