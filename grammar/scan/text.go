package scan

import "strings"

// CutOut leaves out the atoms from one place up to another.
func CutOut(atoms []Atom, from, to int) []Atom {
	return append(append(make([]Atom, 0, len(atoms)), atoms[:from]...), atoms[to:]...)
}

// Reworded puts words in the place of the atoms from one place up to another.
func Reworded(atoms []Atom, from, to int, words ...string) []Atom {
	out := append(make([]Atom, 0, len(atoms)+len(words)), atoms[:from]...)
	for _, w := range words {
		out = append(out, Atom{Text: w, Kind: Word, At: atoms[from].At, End: atoms[to-1].End})
	}
	return append(out, atoms[to:]...)
}

// StandAt reports whether words stand at an atom.
func StandAt(atoms []Atom, i int, words ...string) bool {
	if i < 0 || i+len(words) > len(atoms) {
		return false
	}
	for k, w := range words {
		if atoms[i+k].Text != w {
			return false
		}
	}
	return true
}

// Text is a stretch word by word, one blank between any two.
func Text(atoms []Atom) string {
	n := len(atoms)
	for i := range atoms {
		n += len(atoms[i].Text)
	}
	var b strings.Builder
	b.Grow(n)
	for i := range atoms {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(atoms[i].Text)
	}
	return b.String()
}

// WordSet makes a set of the words of a text.
func WordSet(text string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(text) {
		m[w] = true
	}
	return m
}
