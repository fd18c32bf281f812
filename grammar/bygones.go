package grammar

import (
	"strings"
	"sync"

	"saywright/solver"
)

// What was done in the old days is told and not wished: "in my day we'd have used five rails. Would five do here?" A sentence
// that begins so is left out; what it spoke of stays in mind, as if it had been said before.

// bygone is how such a sentence begins.
var bygone = []entry{{kind: kFill, key: "bygone", loose: true, ways: `
	[back] in (my|his|her|our|their|old|olden|good old|those|those old|father|dad|grandfather|grandpa|granddad) (day|days|time|times)
	[(some|many|few|thirty|forty|fifty|twenty|ten)] years (ago|back)
	when (i|we|he|she) (was|were) [(just|only|still)] (boy|young|lad|kid|child|little|small|apprentice|girl|learning|youngster|younger)
	once upon a time
	[old] (father|dad|daddy|grandfather|grandpa|granddad|old man|boss|master|teacher|uncle|grandad|foreman) (always|never|used to|would always|would have|would never)
	time was`}}

// bygoneVocab holds the ways to speak of the old days.
var bygoneVocab = sync.OnceValue(func() *vocabulary { return compile(nil, bygone) })

// readWithoutBygones reads a line without its sentences that tell of the old days, where something else is said. It is asked
// only where the line as a whole could not be read.
func readWithoutBygones(atoms []atom, c Context) (Reading, bool) {
	var left []atom
	for from := 0; from < len(atoms); {
		to := sentenceEnd(atoms, from)
		if part := atoms[from:to]; atoms[to-1].text != "?" && tellsOfOldDays(part) {
			c.Subject = spokenIn(part, c)
		} else {
			left = append(left, part...)
		}
		from = to
	}
	if len(left) == 0 || len(left) == len(atoms) || pointsBack[left[0].text] {
		return Reading{}, false
	}
	r := readAtoms(left, c)
	if r.Ask != nil {
		r = reread(left, c, r)
	}
	return r, r.Ask == nil
}

// sentenceEnd returns the atom after the sentence that begins at an atom.
func sentenceEnd(atoms []atom, from int) int {
	for i := from; i < len(atoms); i++ {
		switch atoms[i].text {
		case ".", "?", "!", ";":
			if breaksClause(atoms, i) {
				return i + 1
			}
		}
	}
	return len(atoms)
}

// tellsOfOldDays reports whether a sentence begins as such tales do.
func tellsOfOldDays(part []atom) bool {
	return bygoneEnd(part) > 0
}

// bygoneEnd returns the atom after such a beginning, 0 where there is none.
func bygoneEnd(part []atom) int {
	i := 0
	for i < len(part) && (joints[part[0].text] || part[i].text == "well" || part[i].text == "now" || part[i].text == "," || owned[part[i].text]) {
		i++
	}
	for _, at := range []int{i, i - 1} {
		if at < 0 {
			break
		}
		if f := bygoneVocab().match(part, at); len(f) > 0 {
			return f[0].next
		}
	}
	return 0
}

// isNow tells what was as what is.
func isNow(part []atom) []atom {
	out := append([]atom{}, part...)
	for i := range out {
		switch out[i].text {
		case "was":
			out[i].text = "is"
		case "were":
			out[i].text = "are"
		}
	}
	return out
}

// spokenIn is the one thing that a sentence says something of, nil where it is none or not known.
func spokenIn(part []atom, c Context) *solver.Name {
	for i := range part {
		if w := part[i].text; w == "was" || w == "were" {
			if r := readAtoms(isNow(part[bygoneEnd(part):]), c); r.Ask == nil && len(r.Acts) == 1 && len(r.Acts[0].Statements) == 1 {
				return &r.Acts[0].Statements[0].Name // "in my day the gap was two"
			}
		}
		for _, have := range []string{"have used", "have had", "have put", "had", "used", "put", "made", "built", "have built", "have made", "left", "set"} {
			words := strings.Fields(have)
			if !standAt(part, i, words...) {
				continue
			}
			r := readAtoms(part[i+len(words):], c)
			if r.Ask == nil && len(r.Acts) == 1 && r.Acts[0].Kind == State && len(r.Acts[0].Statements) == 1 {
				return &r.Acts[0].Statements[0].Name
			}
		}
	}
	return nil
}
