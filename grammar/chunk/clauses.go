package chunk

import (
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Joints begin a clause that goes on from the one before it.
var Joints = map[string]bool{"and": true, "but": true, "so": true, "then": true}

// BreaksClause reports whether a sign parts clauses: no decimal point, no dash between figures.
func BreaksClause(atoms []scan.Atom, i int) bool {
	switch atoms[i].Text {
	case ",", ";", "!", "?", ":", "--", "(", ")":
		return atoms[i].Kind == scan.Sign
	case ".":
		return atoms[i].Kind == scan.Sign && (i+1 == len(atoms) || !atoms[i+1].Glued)
	}
	return false
}

// Noun are words behind which a noun stands.
var Noun = map[string]bool{"the": true, "a": true, "an": true, "some": true, "these": true, "those": true, "one": true, "most": true}

// IsFloor reports whether a word is one for the floor.
func IsFloor(w string) bool {
	for _, c := range lexicon.Vocab().Classes[w] {
		if c == lexicon.Vocab().Ids["FLOOR"] {
			return true
		}
	}
	return false
}

// ClauseBeginsAt reports whether a clause begins at i.
func ClauseBeginsAt(atoms []scan.Atom, i int) bool {
	return i == 0 || BreaksClause(atoms, i-1) || Joints[atoms[i-1].Text]
}

// EndsSentence reports whether a sentence ends with the sign at i.
func EndsSentence(atoms []scan.Atom, i int) bool {
	switch atoms[i].Text {
	case ".", "!", "?", ";":
		return BreaksClause(atoms, i)
	}
	return false
}

// Breaks reports whether an atom parts clauses.
func Breaks(a scan.Atom) bool {
	if a.Kind != scan.Sign {
		return false
	}
	switch a.Text {
	case ",", ".", ";", "?", "!", ":", "--":
		return true
	}
	return false
}
