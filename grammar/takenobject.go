package grammar

import (
	"strings"

	"saywright/solver"
)

// What is to be forgotten is named by words that all must be understood; a figure among them that is no place is never lost.

// namesAPlace reports whether the figures among what is forgotten may be places: "the reading on rail 3 in bay 1".
func namesAPlace(a Act) bool {
	n := a.Name
	return n != nil && (n.Bay+n.Rail+n.Post+n.Opening > 0 || n.Item != "")
}

// clearOf reports whether what stands behind a "clear" is no order: "clear space from rail to rail has to stay below four".
func clearOf(what []atom) bool {
	switch what[0].text {
	case "space", "opening", "span", "width", "distance", "height", "run", "gap":
		for _, a := range what {
			if auxiliary[a.text] {
				return true
			}
		}
	}
	return false
}

// movesTo reports whether words end in a figure that something is brought to: "lift | the wall to 50".
func movesTo(what []atom) bool {
	for i := range what {
		if (what[i].text == "to" || what[i].text == "at" || what[i].text == "by" || what[i].text == "is" || what[i].text == "are" || what[i].text == "=") && hasFigures(what[i+1:]) {
			return true
		}
	}
	return false
}

// ofThem puts what was spoken of in place of the "them" in "as few of them as you can": "posts are dear this year, so …".
func ofThem(kept, dropped []atom, c Context) []atom {
	at := -1
	for i := 1; i < len(kept); i++ {
		if kept[i].text == "them" && kept[i-1].text == "of" {
			at = i
		}
	}
	if at < 0 {
		return kept
	}
	var noun *token
	for _, x := range lex(dropped, c) {
		if x.kind == kPart && x.plural() || x.kind == kQuest && x.text == "posts" {
			if noun != nil {
				return kept
			}
			noun = &x
		}
	}
	if noun == nil {
		return kept
	}
	one := kept[at]
	one.text = noun.text
	return append(append(append([]atom{}, kept[:at-1]...), one), kept[at+1:]...)
}

// valueGiven returns the atom at which a value stands behind a bare verb of setting, 0 where it says more.
func valueGiven(w []atom) int {
	i := 0
	for i < len(w) && (w[i].text == "put" || w[i].text == "make" || w[i].text == "enter" || w[i].text == "use" || w[i].text == "it" || w[i].text == "in" || w[i].text == "set" || w[i].text == "to" || w[i].text == "at" || w[i].text == "is" || w[i].text == "say" || i > 0 && w[0].text == "it" && readsAs[w[i].text]) {
		i++
	}
	if i == 0 || i == len(w) {
		return 0
	}
	l := reader{w}
	if _, next, ok := l.length(i); ok && next == len(w) {
		return i
	}
	return 0
}

// nameAtoms writes a name as its normal form, in the place of an atom.
func nameAtoms(n solver.Name, at atom) []atom {
	return writtenAt(n.String(), at)
}

// writtenAt are the atoms of a text, all at the place of one.
func writtenAt(text string, at atom) []atom {
	letters, _ := foldLine(text)
	out := split(letters)
	for i := range out {
		out[i].at, out[i].end = at.at, at.end
	}
	return out
}

// named reads a clause that only names something that was said: "the second rail in bay two".
func (t *takingBack) named(w []atom) (Act, bool) {
	if len(w) < 2 || len(w) > 9 {
		return Act{}, false
	}
	for _, a := range w {
		if a.text == "'s" || auxiliary[a.text] {
			return Act{}, false
		}
	}
	for _, x := range lex(w, t.c) {
		switch x.kind {
		case kPart, kLoc, kDim, kStockWord, kOrdinal, kNum, kMeasured, kTop, kLim, kAt, kOut, kItem, kSize, kUnit:
		default:
			return Act{}, false
		}
		for _, v := range strings.Fields(x.before) {
			if !vocab().articles[v] && v != "of" && v != "in" && v != "on" && v != "for" && v != "at" && v != "that" && v != "this" {
				return Act{}, false
			}
		}
	}
	return t.forgotten(w)
}

// longestObject is the most words that name what is to be forgotten.
const longestObject = 20

// object reads what is to be forgotten.
func (t *takingBack) object(what []atom) (Act, bool) {
	what, limits := asObject(atEnd(what))
	if len(what) == 0 || len(what) > longestObject {
		return Act{}, false
	}
	if a, ok := t.limit(what, limits); ok && len(a.Statements) > 0 && hasFigures(what) {
		return a, true
	}
	if a, ok := t.forgotten(what); ok && !(limits && a.Name != nil && hasFigures(what)) {
		return a, true
	}
	return t.limit(what, limits)
}

// forgotten reads words behind a plain "forget".
func (t *takingBack) forgotten(what []atom) (Act, bool) {
	verb := atom{text: "forget", kind: aWord, at: what[0].at, end: what[0].at}
	r := readAtoms(append([]atom{verb}, what...), t.c)
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != Forget {
		return Act{}, false
	}
	return r.Acts[0], true
}

// limit reads a limit that is told as it was said: "the gap can't go over three inches".
func (t *takingBack) limit(what []atom, told bool) (Act, bool) {
	r := readAtoms(what, t.c)
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != State || len(r.Acts[0].Statements) != 1 {
		return Act{}, false
	}
	a := r.Acts[0]
	a.Kind = Forget
	switch st := a.Statements[0]; st.Op {
	case solver.LE, solver.LT, solver.GE, solver.GT, solver.In:
	case solver.Eq, solver.Near:
		if !told || st.Name.Quantity == solver.Stock {
			return Act{}, false // "forget the twelve footers": one length of the list, not all of it
		}
		a.Name, a.Statements = &st.Name, nil
	default:
		return Act{}, false
	}
	return a, true
}

// withoutSigns leaves out commas, and puts the word that says what is meant by a place in front: "the measurement".
func withoutSigns(in []atom) (out []atom) {
	for _, a := range bareClause(in) {
		switch {
		case a.kind == aSign && (a.text == "," || a.text == "-" || a.text == "--" || a.text == ":"):
		case a.text == "measurement" || a.text == "reading":
			out = append([]atom{a}, out...)
		default:
			out = append(out, a)
		}
	}
	return out
}

// hasFigures reports whether a figure is among atoms.
func hasFigures(what []atom) bool {
	for _, a := range what {
		if a.kind == aDigits || a.kind == aVulgar || units[a.text] > 0 || tens[a.text] > 0 || partsOfAnInch[a.text] {
			return true
		}
	}
	return false
}

// partsOfAnInch are the words of fractions.
var partsOfAnInch = wordSet("quarter quarters eighth eighths sixteenth sixteenths")

func onlyPronoun(what []atom) bool {
	for len(what) > 1 && (what[len(what)-1].text == "one" || what[len(what)-1].text == "limit" || what[len(what)-1].text == "measurement" || what[len(what)-1].text == "figure" || what[len(what)-1].text == "number" || what[len(what)-1].text == "rule") {
		what = what[:len(what)-1]
	}
	if len(what) != 1 {
		return false
	}
	switch strings.ToLower(what[0].text) {
	case "it", "that", "this", "them", "those":
		return true
	}
	return false
}

// wipesWhatWasNamed reports whether a clause is a verb that takes back, and a pronoun for what was named before: "wipe it out".
func wipesWhatWasNamed(w []atom) bool {
	if len(w) < 2 || !takeBackVerb[w[0].text] || w[1].text != "it" && w[1].text != "that" && w[1].text != "them" && w[1].text != "those" {
		return false
	}
	end := 2
	for end < len(w) && !breaksClause(w, end) && !joints[w[end].text] {
		end++
	}
	switch rest := bareClause(w[2:end]); {
	case len(rest) == 0:
		return true
	case len(rest) == 1:
		return rest[0].text == "out" || rest[0].text == "off" || rest[0].text == "away" || rest[0].text == "clean"
	}
	return false
}
