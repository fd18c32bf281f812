package grammar

import (
	"strconv"
	"strings"

	"saywright/solver/exact"
)

// A bay or a board that is named by its number is one item, whichever way it is said: "bay 2", "the second bay", "slat 3 from the bottom",
// "the third board up". So its number is no figure that could be taken for a length or a count. The plain words of a frame
// hold it as @bayno or @railno.

// placeAt finds what names one bay or one board at an atom.
func placeAt(r reader, i int) (sense, plain string, next int) {
	n, next := ordinals[r.word(i)], i+1
	if n == 0 {
		n, next = ordinalAt(r, i)
	}
	if n > 0 {
		if r.word(next) == "one" && boardCounted(r, next+1) > next+1 {
			return "railno", "rail " + strconv.Itoa(n), boardCounted(r, next+1)
		}
		sense = placeWord(r.word(next))
		next++
	} else if sense = placeWord(r.word(i)); sense != "" {
		next = i + 1
		if r.word(next) == "number" || r.word(next) == "no" || r.word(next) == "#" {
			next++
			if r.word(next) == "." {
				next++
			}
		}
		a, end, ok := r.length(next)
		if _, _, size := r.size(next); size || !ok || end != next+1 || a.unit != bare || a.frac || a.bad != "" || !a.val.IsInt() || !a.val.Less(exact.Int(13)) {
			return "", "", i
		}
		v, _ := a.val.Int64()
		if n, next = int(v), end; n < 1 {
			return "", "", i
		}
	}
	switch sense {
	case "bayno":
		return sense, "bay " + strconv.Itoa(n), next
	case "railno":
		return sense, "rail " + strconv.Itoa(n), boardCounted(r, next)
	}
	return "", "", i
}

// ordinalAt is the ordinal that stands in digits at an atom of a line, 0 where none does, and the atom behind it.
func ordinalAt(r reader, i int) (n, next int) { return (&lexing{reader: r}).ordinalFigure(i) }

// ordinalFigure is the number of "3rd".
func (l *lexing) ordinalFigure(i int) (n, next int) {
	if l.kind(i) != aDigits {
		return 0, i + 1
	}
	if n, next = l.figureOrdinal(i); n == 0 {
		return 0, i + 1
	}
	return n, next
}

// placeWord reports what a word in the singular names: a bay or a board.
func placeWord(w string) string {
	switch {
	case strings.HasSuffix(w, "s"):
	case isClass(w, "BAY"):
		return "bayno"
	case isClass(w, "RAIL"):
		return "railno"
	}
	return ""
}

// boardCounted steps over how a board was counted, as all are counted here: "from the bottom", "up from the floor".
func boardCounted(r reader, i int) int {
	j := i
	for _, w := range []string{"counting", "counted"} {
		if r.word(j) == w {
			j++
		}
	}
	if r.word(j) == "up" {
		j++
		i = j
	}
	if r.word(j) != "from" {
		return i
	}
	j++
	for vocab().articles[r.word(j)] {
		j++
	}
	if w := r.word(j); isClass(w, "LOWEST") || isClass(w, "FLOOR") || w == "below" || isClass(w, "EARTH") {
		return j + 1
	}
	return i
}

// withPlaces puts what is named by its number into plain words: "@bayno" is "bay 2".
func (g *gist) withPlaces(plain string, items []gistItem) (out []string) {
	for _, w := range strings.Fields(plain) {
		sense, named := strings.CutPrefix(w, "@")
		if !named {
			out = append(out, w)
			continue
		}
		for i := range items {
			if items[i].plain != "" && items[i].senses.has(g.book.sense(sense)) {
				out = append(out, strings.Fields(items[i].plain)...)
				break
			}
		}
	}
	return out
}

// plainAtoms are the atoms of plain words, which may be numbers and signs.
func plainAtoms(words []string, at atom) []atom {
	out := wordAtoms(words, at)
	for i, w := range words {
		switch c := w[0]; {
		case c >= '0' && c <= '9':
			out[i].kind = aDigits
		case len(w) == 1 && (c < 'a' || c > 'z'):
			out[i].kind = aSign
		}
	}
	return out
}
