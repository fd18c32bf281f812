package grammar

// Places where phrases can mean nothing else.

// beggedFor takes the question mark behind a wish, and the one at the end of the line, for a full stop.
func beggedFor(atoms []atom, from int) []atom {
	for i := from; i < len(atoms) && atoms[i].text != "."; i++ {
		if atoms[i].text == "?" && atoms[i].kind == aSign {
			atoms[i].text = "."
			break
		}
	}
	return unasked(atoms)
}

// phraseEndsLine: nothing but a stop or a courtesy comes behind it.
func phraseEndsLine(_, after []atom) bool {
	return len(after) == 0 || after[0].kind == aSign && (len(after) == 1 || after[0].text == "." || after[0].text == "!" || after[0].text == ";")
}

// phraseEndsClause: a clause ends behind it, and something stands before it.
func phraseEndsClause(before, after []atom) bool {
	return len(before) > 0 && (endsPart(after, 0) || after[0].text == "so" || after[0].text == "and" || after[0].text == "but")
}

// phraseStartsClause: a clause begins with it.
func phraseStartsClause(before, _ []atom) bool {
	return len(before) == 0 || before[len(before)-1].kind == aSign && breaksClause(before, len(before)-1) || joints[lastOf(before, 1)] || lastOf(before, 1) == "okay" || lastOf(before, 1) == "ok"
}

// amountNext: a length follows, past a comma or an "is".
func amountNext(_, after []atom) bool {
	for len(after) > 0 && (after[0].text == "," || after[0].text == ":" || after[0].text == "is" || after[0].text == "=" || after[0].text == "at" || after[0].text == "about") {
		after = after[1:]
	}
	return startsLength(reader{after}, 0)
}

// amountBefore: a figure stands right before it.
func amountBefore(before, _ []atom) bool {
	n := len(before)
	for k := 1; k <= 3 && k <= n; k++ {
		if startsLength(reader{before}, n-k) {
			return true
		}
	}
	return false
}

// saidBeforeOf reports whether one of some words stands before a place.
func saidBeforeOf(words map[string]bool) func(before, after []atom) bool {
	return func(before, _ []atom) bool {
		for _, a := range before {
			if words[a.text] {
				return true
			}
		}
		return false
	}
}

// bothHold is the place where two conditions hold.
func bothHold(a, b func(before, after []atom) bool) func(before, after []atom) bool {
	return func(before, after []atom) bool { return a(before, after) && b(before, after) }
}
