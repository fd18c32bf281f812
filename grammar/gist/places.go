package gist

import (
	"strconv"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// A bay or a board that is named by its number is one item, whichever way it is said: "bay 2", "the second bay", "slat 3 from the bottom",
// "the third board up". So its number is no figure that could be taken for a length or a count. The plain words of a frame
// hold it as @bayno or @railno.

// placeAt finds what names one bay or one board at an atom.
func placeAt(r measure.Reader, i int) (sense, plain string, next int) {
	n, next := measure.Ordinals[r.Word(i)], i+1
	if n == 0 {
		n, next = lex.OrdinalAt(r, i)
	}
	if n > 0 {
		if r.Word(next) == "one" && boardCounted(r, next+1) > next+1 {
			return "railno", "rail " + strconv.Itoa(n), boardCounted(r, next+1)
		}
		sense = placeWord(r.Word(next))
		next++
	} else if sense = placeWord(r.Word(i)); sense != "" {
		next = i + 1
		if r.Word(next) == "number" || r.Word(next) == "no" || r.Word(next) == "#" {
			next++
			if r.Word(next) == "." {
				next++
			}
		}
		a, end, ok := r.Length(next)
		if _, _, size := r.Size(next); size || !ok || end != next+1 || a.Unit != measure.Bare || a.Frac || a.Bad != "" || !a.Val.IsInt() || !a.Val.Less(exact.Int(13)) {
			return "", "", i
		}
		v, _ := a.Val.Int64()
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

// placeWord reports what a word in the singular names: a bay or a board.
func placeWord(w string) string {
	switch {
	case strings.HasSuffix(w, "s"):
	case chunk.IsClass(w, "BAY"):
		return "bayno"
	case chunk.IsClass(w, "RAIL"):
		return "railno"
	}
	return ""
}

// boardCounted steps over how a board was counted, as all are counted here: "from the bottom", "up from the floor".
func boardCounted(r measure.Reader, i int) int {
	j := i
	for _, w := range []string{"counting", "counted"} {
		if r.Word(j) == w {
			j++
		}
	}
	if r.Word(j) == "up" {
		j++
		i = j
	}
	if r.Word(j) != "from" {
		return i
	}
	j++
	for lexicon.Vocab().Articles[r.Word(j)] {
		j++
	}
	if w := r.Word(j); chunk.IsClass(w, "LOWEST") || chunk.IsClass(w, "FLOOR") || w == "below" || chunk.IsClass(w, "EARTH") {
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
func plainAtoms(words []string, at scan.Atom) []scan.Atom {
	out := WordAtoms(words, at)
	for i, w := range words {
		switch c := w[0]; {
		case c >= '0' && c <= '9':
			out[i].Kind = scan.Digits
		case len(w) == 1 && (c < 'a' || c > 'z'):
			out[i].Kind = scan.Sign
		}
	}
	return out
}
