package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// FiguredAny reports whether one of some clauses holds a figure.
func FiguredAny(parts [][]scan.Atom) bool {
	for _, p := range parts {
		if chunk.Figured(p) || slices.ContainsFunc(p, func(a scan.Atom) bool { return chunk.SpelledNumber(a.Text) }) {
			return true
		}
	}
	return false
}

// WordsAt reports whether words stand at an atom.
func WordsAt(atoms []scan.Atom, i int, words []string) bool {
	if i+len(words) > len(atoms) {
		return false
	}
	for k, w := range words {
		if atoms[i+k].Text != w {
			return false
		}
	}
	return true
}

// WrittenAt are the atoms of a text, all at the place of one.
func WrittenAt(text string, at scan.Atom) []scan.Atom {
	letters, _ := scan.Fold(text)
	out := scan.Split(letters)
	for i := range out {
		out[i].At, out[i].End = at.At, at.End
	}
	return out
}

// InARow puts parts one behind another.
func InARow(parts ...[]scan.Atom) (out []scan.Atom) {
	for _, p := range parts {
		out = append(out, p...)
	}
	return out
}
