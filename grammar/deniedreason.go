package grammar

// What must not happen is told before what is wanted because of it: "we can't have kids stuck so keep the gap below four". The denial is of the reason alone.

var deniesReason = wordSet("not no nobody never none nothing cannot")

// withoutDeniedReason leaves out such a reason, which names no figure, where a figure stands behind its "so".
func withoutDeniedReason(in []atom) []atom {
	if !holdsWord(in, "so") {
		return in
	}
	from, denied := 0, false
	for i := range in {
		switch w := in[i].text; {
		case endsSentence(in, i):
			from, denied = i+1, false
		case w != "a" && w != "an" && w != "in" && (numeric(in[i]) || units[w] > 0 || tens[w] > 0) || w == "if" || w == "why" || w == "how" || w == "what" || w == "?":
			return in
		case deniesReason[w]:
			denied = true
		case w == "so" && denied && i-from > 2 && i+2 < len(in) && in[i+1].text != "as":
			next := i + 1
			manner := soDone(in[from:i])
			if in[next].text == "that" {
				if !manner {
					return in
				}
				next++
			}
			for k := next; k < len(in); k++ {
				if _, _, _, ok := sideAt(in, k); !ok {
					continue
				}
				out := append([]atom{}, in[:from]...)
				if manner {
					out = append(append(out, in[next:k]...), worded(in[k], "not"))
					return append(out, in[k:]...)
				}
				return append(out, in[next:]...)
			}
			return in
		}
	}
	return in
}

// soDone reports whether a "so" behind a stretch tells how something is done: "set it up so", "build them so".
func soDone(part []atom) bool {
	n := len(part)
	if n > 0 && (part[n-1].text == "up" || part[n-1].text == "out" || part[n-1].text == "down" || part[n-1].text == "together") {
		n--
	}
	if n < 2 {
		return false
	}
	switch part[n-1].text {
	case "it", "them", "this", "that", "things", "everything":
		return doneSo[part[n-2].text]
	}
	return false
}

// staysWithin reads the verb of "stay under 300" as a verb: a stay is a stiffener, too.
func staysWithin(in []atom) []atom {
	for i := 0; i+1 < len(in); i++ {
		if in[i].text != "stay" || !clauseBeginsAt(in, i) && !wordsBeforeStay[in[i-1].text] && !(in[i+1].text == "with" && wishBeforeStay[in[i-1].text]) {
			continue
		}
		switch in[i+1].text {
		case "under", "below", "over", "above", "within", "beneath", "inside", "between", "around", "near", "close", "at", "less", "more":
			out := append([]atom{}, in...)
			out[i] = worded(in[i], "keep")
			return out
		case "with":
			out := append([]atom{}, in...)
			out[i] = worded(in[i], "stick") // "no, let's stay with 2x6"
			return out
		}
	}
	return in
}

// wordsBeforeStay may stand before the verb.
var wordsBeforeStay = wordSet("so and but")

// wishBeforeStay may stand before "stay with".
var wishBeforeStay = wordSet("us we i will to please just should rather")

// whoCannot puts back who is meant where a line only begins with what cannot be: "can't be four inches or more between boards" asks nothing.
func whoCannot(in []atom) []atom {
	if len(in) < 4 || holdsWord(in, "?") || in[len(in)-1].kind == aSign && in[len(in)-1].text != "." {
		return in
	}
	for i := 0; i+3 < len(in); i++ {
		if in[i].text != "can" || in[i+1].text != "not" || i > 0 && !joinsBefore(in, i) {
			continue
		}
		if who := cannotWhat[in[i+2].text]; who != "" && (i == 0 || who == "we") {
			return append(append(in[:i:i], worded(in[i], who)), in[i:]...)
		}
	}
	return in
}

// cannotWhat is who is meant where nobody is named, by what cannot be done. Behind another clause, an "it" would be of that one.
var cannotWhat = map[string]string{"be": "it", "go": "it", "have": "we", "let": "we", "spend": "we", "exceed": "it"}

// joinsBefore reports whether a clause begins at atom i, behind a break or a word that joins.
func joinsBefore(in []atom, i int) bool {
	return breaksClause(in, i-1) || in[i-1].text == "and" || in[i-1].text == "plus" || in[i-1].text == "also" || in[i-1].text == "then"
}
