package grammar

// Words of correction that stand where others do not expect them are put where they do: "forty four, forty five sorry, inches high".

// fixWords are words of correction that may stand behind the value that they put right.
var fixWords = wordSet("sorry oops whoops pardon rather")

// fixBehind puts a word of correction that stands behind its value before it.
func fixBehind(in []atom) []atom {
	for i := 2; i+1 < len(in); i++ {
		if !fixWords[in[i].text] || !numeric(in[i-1]) || in[i+1].text != "," {
			continue
		}
		from := i - 1
		for from > 0 && numeric(in[from-1]) {
			from--
		}
		if from < 2 || in[from-1].text != "," || !numeric(in[from-2]) {
			continue
		}
		out := append([]atom{}, in[:from]...)
		fix := in[i]
		fix.at, fix.end = in[from].at, in[from].at
		comma := in[from-1]
		comma.at, comma.end = in[from].at, in[from].at
		out = append(out, fix, comma)
		out = append(out, in[from:i]...)
		rest := in[i+1:]
		if len(rest) > 1 {
			if _, metric := metricWords[rest[1].text]; metric || inchWords[rest[1].text] || footWords[rest[1].text] {
				rest = rest[1:] // "forty five sorry, inches high"
			}
		}
		return append(out, rest...)
	}
	return in
}

// numeric reports whether an atom is part of a number.
func numeric(a atom) bool {
	return a.kind == aDigits || a.kind == aVulgar || a.kind == aWord && (spelledNumber(a.text) || a.text == "hundred") || a.text == "/" || inchWords[a.text] || footWords[a.text]
}

// lookAgain are clauses by which one looks again before one puts a value right.
var lookAgain = []entry{{kind: kFill, key: "look", ways: `
	(let me|let us|i will|i will just|lemme|allow me to|need to|i need to|let me just|i had better) (check|look|measure|see|think|count|verify|have a look|take a look) [(that|it|again|here|once more|that again|it again|my notes|the tape|my tape|a second|a moment)] [(again|first)]
	(hang|hold) on (while|till|until) i (check|look|measure|see|think|count) [(that|it|again)]
	(checking|looking|thinking|measuring) [(again|here)]
	where is my (tape|note|notes|pencil)`}}

// lookedAgain leaves out such a clause between a value and a word of correction: "a hundred and thirty, let me check, no, a hundred and
// thirty two".
func lookedAgain(in []atom) []atom {
	for i := 2; i+2 < len(in); i++ {
		if !breaksClause(in, i-1) || in[i].kind != aWord || !lookStarts[in[i].text] {
			continue
		}
		for _, f := range clauseTables().look.match(in, i) {
			n := f.next
			if n+1 < len(in) && breaksClause(in, n) && in[n].text != "?" && (in[n+1].text == "no" || in[n+1].text == "sorry" || in[n+1].text == "nope" || in[n+1].text == "actually" || in[n+1].text == "oops" || in[n+1].text == "ah" || in[n+1].text == "oh" || in[n+1].text == "hmm" || in[n+1].text == "make" || in[n+1].text == "correction") {
				return append(append([]atom{}, in[:i]...), in[n+1:]...)
			}
		}
	}
	return in
}

var lookStarts = wordSet("let i lemme allow need hang hold checking looking thinking measuring where")

// spelledNext: "a further nine", "and left 2 inches".
func spelledNext(_, after []atom) bool {
	return len(after) > 1 && (after[0].kind == aDigits || spelledNumber(after[0].text))
}

// behindFigure: "8.40 the hundred".
func behindFigure(before, _ []atom) bool {
	return len(before) > 1 && before[len(before)-1].kind == aDigits
}

// floorBefore: "the patio slops down an inch".
func floorBefore(before, _ []atom) bool { return isFloor(lastOf(before, 1)) }

// cutTo: "what length do I cut the rails too".
func cutTo(before, after []atom) bool {
	if len(after) > 1 || len(after) == 1 && after[0].text != "?" && after[0].text != "." {
		return false
	}
	asked := false
	for i, a := range before {
		asked = asked || a.text == "what" || a.text == "how" && i+1 < len(before) && before[i+1].text == "long"
		if asked && (a.text == "cut" || a.text == "saw" || a.text == "trim") && i+1 < len(before) {
			return true
		}
	}
	return false
}

// sizedBy: "they are to by six". Whoever is "to buy six" is named by "I" or "we".
func sizedBy(before, after []atom) bool {
	if len(after) == 0 || after[0].kind != aDigits && !spelledNumber(after[0].text) && sizeWords[after[0].text] == 0 {
		return false
	}
	switch lastOf(before, 1) {
	case "are", "is", "were", "be":
		return lastOf(before, 2) != "we" && lastOf(before, 2) != "i" && lastOf(before, 2) != "you"
	case "of", "from", "as":
		return true
	}
	return false
}

// furtherPieces reads "another nine two-by-sixes" as "nine more two-by-sixes".
func furtherPieces(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if w := in[i].text; w != "another" && w != "additional" && w != "extra" || in[i].kind != aWord {
			continue
		}
		if in[i+1].kind != aDigits && !spelledNumber(in[i+1].text) || in[i+2].kind != aDigits && !spelledNumber(in[i+2].text) {
			continue
		}
		if s := in[i+3].text; s != "x" && s != "by" && s != "-" {
			continue
		}
		out := append([]atom{}, in...)
		out[i], out[i+1] = in[i+1], in[i+1]
		out[i].at = in[i].at
		out[i+1].text, out[i+1].kind, out[i+1].at = "more", aWord, in[i+1].end
		return out
	}
	return in
}
